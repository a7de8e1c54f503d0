// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much acid can the water take? Alkalinity in every unit that kits show, and what raises it.
#pragma once

#include <compare>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/core/validity.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

/// What a milliequivalent is called in the two other units.
struct alkalinity_factors {
  double milligrams_caco3_per_milliequivalent;  ///< [mg/meq]
  double degrees_kh_per_milliequivalent;        ///< [dKH L/meq]
};
/// From molar masses: half of CaCO3 (100.0869 g/mol), and half of CaO (56.0774 g/mol) at 10 mg/L to the degree.
inline constexpr alkalinity_factors exact_masses{100.0869 / 2.0, 56.0774 / 20.0};
/// As most labels and conversion tables round them; a degree is then 17.86 mg/L of CaCO3. 0.1 % from the exact masses.
inline constexpr alkalinity_factors rounded_factors{50.0, 2.8};

/// Alkalinity: the acid, as charge, that a volume of water takes up. Carbonate hardness (KH) in the words of the trade,
/// although in seawater it holds about 0.1 meq/L of borate too.
class alkalinity {
 public:
  [[nodiscard]] static constexpr alkalinity from_milliequivalents_per_litre(double number) noexcept {
    return alkalinity{number};
  }
  [[nodiscard]] static constexpr alkalinity from_degrees_kh(double number,
                                                            const alkalinity_factors& by = exact_masses) noexcept {
    return alkalinity{number / by.degrees_kh_per_milliequivalent};
  }
  [[nodiscard]] static constexpr alkalinity from_milligrams_caco3_per_litre(
      double number, const alkalinity_factors& by = exact_masses) noexcept {
    return alkalinity{number / by.milligrams_caco3_per_milliequivalent};
  }
  /// As laboratories report it: per kilogram of seawater.
  [[nodiscard]] static constexpr alkalinity from_milliequivalents_per_kilogram(double number,
                                                                               mass_density density) noexcept {
    return alkalinity{number * density.value() * 1e-3};
  }

  [[nodiscard]] constexpr double value() const noexcept { return value_; }  ///< meq/L

  constexpr auto operator<=>(const alkalinity&) const noexcept = default;

 private:
  constexpr explicit alkalinity(double value) noexcept : value_{value} {}
  double value_;  // meq/L
};

/// The number of an alkalinity in milliequivalents per litre.
///
/// @param level alkalinity
/// @return      [meq/L]
/// @accuracy    exact
/// @source      this library
[[nodiscard]] constexpr double in_milliequivalents_per_litre(alkalinity level) noexcept { return level.value(); }

/// The number of an alkalinity in degrees of carbonate hardness.
///
/// @param level alkalinity
/// @param by    factors between the units
/// @return      [dKH]
/// @accuracy    exact
/// @source      this library
[[nodiscard]] constexpr double in_degrees_kh(alkalinity level, const alkalinity_factors& by = exact_masses) noexcept {
  return level.value() * by.degrees_kh_per_milliequivalent;
}

/// The number of an alkalinity in milligrams of calcium carbonate per litre.
///
/// @param level alkalinity
/// @param by    factors between the units
/// @return      [mg/L]
/// @accuracy    exact
/// @source      this library
[[nodiscard]] constexpr double in_milligrams_caco3_per_litre(alkalinity level,
                                                             const alkalinity_factors& by = exact_masses) noexcept {
  return level.value() * by.milligrams_caco3_per_milliequivalent;
}

/// The number of an alkalinity in milliequivalents per kilogram of seawater.
///
/// @param level alkalinity
/// @param density of the water, above 0 [kg/m^3]
/// @return      [meq/kg]
/// @accuracy    exact
/// @source      this library
[[nodiscard]] constexpr double in_milliequivalents_per_kilogram(alkalinity level, mass_density density) noexcept {
  return level.value() / (density.value() * 1e-3);
}

inline constexpr limits alkalinity_limits{"alkalinity", "meq/L", not_negative};

inline constexpr caution alkalinity_caution{
    "Dissolve the powder in fresh water first and add it slowly where the flow is strong, spread over days: at most "
    "about 0.5 meq/L (1.4 dKH) a day where animals live. Sodium carbonate raises the pH sharply and makes ammonia more "
    "poisonous; test pH and ammonia before and after. Wear goggles and gloves."};

/// A step of alkalinity in a volume of water.
struct alkalinity_step {
  required<tankwright::volume> volume;  ///< of the water itself, without rock and sand
  required<alkalinity> from;
  required<alkalinity> target;
};

/// What makes the step: the one or the other, not both.
struct alkalinity_dose {
  mass sodium_bicarbonate;  ///< NaHCO3; lowers the pH a little
  mass sodium_carbonate;    ///< Na2CO3, dry; raises the pH
  tankwright::caution caution = alkalinity_caution;
};

/// What to add to raise the alkalinity.
///
///   m = (A2 - A1) V M / z,   M/z = 84.0066 g/eq for NaHCO3, 105.9884 / 2 g/eq for dry Na2CO3
///
/// @param step   water volume V > 0; alkalinity before and after, target not below from
/// @return       mass of bicarbonate, or of carbonate instead
/// @throws       invalid_input (names the argument, its value and what is possible)
/// @accuracy     stoichiometry; the volume of the water and the kit's reading decide
/// @source       molar masses (IUPAC)
[[nodiscard]] constexpr alkalinity_dose alkalinity_to_add(const alkalinity_step& step) {
  constexpr std::string_view here = "tankwright::water::alkalinity_to_add";
  const double from = in_milliequivalents_per_litre(step.from.get());
  const double target = in_milliequivalents_per_litre(step.target.get());
  core::check(here, water_volume_limits, in_litres(step.volume));
  core::check(here, alkalinity_limits, from);
  core::check(here, alkalinity_limits, target);
  if (target < from) {
    core::fail<invalid_input>(here, "target", target, "meq/L",
                              "is below what the water has, " + core::number_with_unit(from, "meq/L") +
                                  "; alkalinity is lowered by changing water, not by adding something");
  }
  const double equivalents = (target - from) * 1e-3 * in_litres(step.volume);
  return {grams(84.0066 * equivalents), grams(105.9884 / 2.0 * equivalents)};
}

}  // namespace tankwright::water
