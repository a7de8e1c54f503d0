// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is in the salt? The composition of reference seawater, what a kit should read for each constituent, and the
/// recipe of an artificial seawater.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr citation millero_2008_composition{
    "Millero F.J., Feistel R., Wright D.G., McDougall T.J.", 2008,
    "The composition of Standard Seawater and the definition of the Reference-Composition Salinity Scale",
    "Deep-Sea Research I 55:50-72, table 4", standing::secondary};
inline constexpr citation kester_1967{"Kester D.R., Duedall I.W., Connors D.N., Pytkowicz R.M.", 1967,
                                      "Preparation of artificial seawater", "Limnol. Oceanogr. 12:176-179, table 1",
                                      standing::secondary};

/// What sea salt is made of.
enum class constituent {
  sodium,
  magnesium,
  calcium,
  potassium,
  strontium,
  chloride,
  sulphate,
  bicarbonate,
  bromide,
  carbonate,
  borate,
  fluoride,
  hydroxide,
  boric_acid,
  carbon_dioxide
};

/// One line of the reference composition.
struct reference_constituent {
  constituent what;
  std::string_view name;
  std::string_view formula;
  double mass_fraction;  ///< [1] of the salt
};

/// Reference composition of sea salt (Millero et al. 2008); the mass fractions sum to one.
inline constexpr std::array<reference_constituent, 15> reference_composition{{
    {constituent::sodium, "sodium", "Na+", 0.3065958},
    {constituent::magnesium, "magnesium", "Mg2+", 0.0365055},
    {constituent::calcium, "calcium", "Ca2+", 0.0117186},
    {constituent::potassium, "potassium", "K+", 0.0113495},
    {constituent::strontium, "strontium", "Sr2+", 0.0002260},
    {constituent::chloride, "chloride", "Cl-", 0.5503396},
    {constituent::sulphate, "sulphate", "SO4 2-", 0.0771319},
    {constituent::bicarbonate, "bicarbonate", "HCO3-", 0.0029805},
    {constituent::bromide, "bromide", "Br-", 0.0019134},
    {constituent::carbonate, "carbonate", "CO3 2-", 0.0004078},
    {constituent::borate, "borate", "B(OH)4-", 0.0002259},
    {constituent::fluoride, "fluoride", "F-", 0.0000369},
    {constituent::hydroxide, "hydroxide", "OH-", 0.0000038},
    {constituent::boric_acid, "boric acid", "B(OH)3", 0.0005527},
    {constituent::carbon_dioxide, "carbon dioxide", "CO2", 0.0000121},
}};

/// What a kit should read for a constituent in seawater of reference composition.
///
///   c = w S_A rho,   w the mass fraction in the salt
///
/// @param what   the constituent
/// @param s      practical salinity, 0 to 42
/// @param t      temperature [ITS-90], from freezing to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       mass per volume [kg/m^3]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.01 % for reference seawater; salt mixes differ from it, on purpose and by accident, by 10 % and more
/// @source       Millero et al. 2008, table 4
[[nodiscard]] inline mass_concentration concentration_of(constituent what, practical_salinity s, temperature t,
                                                         range_policy policy = range_policy::published) {
  const mass_density rho = density(s, t, policy);
  const double part = reference_composition[static_cast<std::size_t>(what)].mass_fraction;
  return part * detail::u_ps<double> * s.value() * 1e-3 * rho;
}

/// One salt of a recipe: what to weigh for a kilogram of water of salinity 35, with and without its water of hydration.
struct recipe_salt {
  std::string_view name;
  std::string_view formula;
  double weighed;    ///< [g/kg] of seawater, as the salt comes
  double anhydrous;  ///< [g/kg] of seawater, without water of hydration
};

namespace detail {

/// A hydrated salt given by amount: mol/kg, molar mass without water, moles of water.
[[nodiscard]] constexpr recipe_salt hydrate(std::string_view name, std::string_view formula, double moles,
                                            double molar_mass, int waters) noexcept {
  return {name, formula, moles * (molar_mass + 18.01528 * waters), moles * molar_mass};
}

}  // namespace detail

/// The recipe of Kester et al. 1967 for artificial seawater of salinity 35. Its carbonates need a day of aeration.
inline constexpr std::array<recipe_salt, 10> kester_recipe{{
    {"sodium chloride", "NaCl", 23.926, 23.926},
    {"sodium sulphate", "Na2SO4", 4.008, 4.008},
    {"potassium chloride", "KCl", 0.677, 0.677},
    {"sodium bicarbonate", "NaHCO3", 0.196, 0.196},
    {"potassium bromide", "KBr", 0.098, 0.098},
    {"boric acid", "H3BO3", 0.026, 0.026},
    {"sodium fluoride", "NaF", 0.003, 0.003},
    detail::hydrate("magnesium chloride hexahydrate", "MgCl2.6H2O", 0.05327, 95.211, 6),
    detail::hydrate("calcium chloride dihydrate", "CaCl2.2H2O", 0.01033, 110.984, 2),
    detail::hydrate("strontium chloride hexahydrate", "SrCl2.6H2O", 0.00009, 158.526, 6),
}};

inline constexpr caution recipe_caution{
    "Use reagents of food or analytical grade and weigh the small ones on a fine scale. Dissolve the sulphate and the "
    "chlorides of calcium, strontium and magnesium apart and combine them diluted, or gypsum settles. Sodium fluoride "
    "and boric acid are poisonous: gloves, dust mask, away from food. Aerate for a day and measure salinity, pH and "
    "alkalinity before any animal meets the water."};

/// A volume of finished artificial seawater.
struct recipe_batch {
  required<tankwright::volume> volume;  ///< finished
  required<practical_salinity> target;
  required<tankwright::temperature> temperature;
};

/// What to weigh out; element i belongs to row i of `kester_recipe`.
struct recipe_amounts {
  std::array<mass, kester_recipe.size()> salts;
  mass weighed;    ///< of all salts together
  mass anhydrous;  ///< the same without water of hydration
  mass water;      ///< fresh water to add
  tankwright::caution caution = recipe_caution;
};

/// What to weigh for a volume of artificial seawater by Kester et al., scaled to the wanted salinity.
///
///   m_i = w_i (S / 35) rho V,   water = rho V - sum m_i
///
/// @param batch  finished volume > 0; target, practical salinity 0 to 42; temperature, from freezing to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       mass of each salt, of all, and of the water
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.01 % of the recipe; reagents take up water from the air
/// @source       Kester et al. 1967, table 1
[[nodiscard]] inline recipe_amounts weigh_recipe(const recipe_batch& batch,
                                                 range_policy policy = range_policy::published) {
  core::check("tankwright::water::weigh_recipe", water_volume_limits, in_litres(batch.volume), policy);
  const mass seawater = density(batch.target, batch.temperature, policy) * batch.volume.get();
  const mass nothing = grams(0.0);
  recipe_amounts out{{}, nothing, nothing, nothing};
  for (std::size_t i = 0; i < kester_recipe.size(); ++i) {
    const double scale = batch.target->value() / 35.0 * 1e-3;
    out.salts[i] = scale * kester_recipe[i].weighed * seawater;
    out.weighed += out.salts[i];
    out.anhydrous += scale * kester_recipe[i].anhydrous * seawater;
  }
  out.water = seawater - out.weighed;
  return out;
}

}  // namespace tankwright::water
