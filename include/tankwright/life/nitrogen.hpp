// SPDX-License-Identifier: BSL-1.0
/// @file
/// What ammonia does this feeding make, and what does it cost to oxidise it? Nitrogen in its forms, ammonia from feed,
/// and the oxygen and alkalinity of nitrification.
///
/// "TAN" is nitrogen; a test kit may print nitrogen or the whole ion, and 1 mg of nitrate nitrogen is 4.43 mg of
/// nitrate. So levels and loads of nitrogen are types of their own, made and read by saying which is meant; total and
/// free ammonia are in `water/ammonia.hpp`.
#pragma once

#include <compare>
#include <optional>
#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/ranges.hpp>
#include <tankwright/water/alkalinity.hpp>
#include <tankwright/water/ammonia.hpp>

namespace tankwright::life {

inline constexpr citation timmons_ebeling_2007{"Timmons M.B., Ebeling J.M.", 2007, "Recirculating Aquaculture",
                                               "chapter on biofiltration", standing::from_memory};
inline constexpr citation ebeling_2006{
    "Ebeling J.M., Timmons M.B., Bisogni J.J.", 2006,
    "Engineering analysis of the stoichiometry of photoautotrophic, autotrophic, and heterotrophic removal of "
    "ammonia-nitrogen in aquaculture systems",
    "Aquaculture 257:346-358", standing::from_memory};
inline constexpr citation gujer_jenkins_1974{"Gujer W., Jenkins D.", 1974,
                                             "The contact stabilization process - oxygen and nitrogen mass balances",
                                             "University of California, Berkeley", standing::secondary};

namespace detail {

// Molar masses, g/mol: IUPAC standard atomic weights N 14.007, H 1.008, O 15.999, C 12.011.
template <class T>
struct molar {
  static constexpr T nitrogen = T(14.007L);
  static constexpr T oxygen_molecule = T(2) * T(15.999L);
  static constexpr T nitrite = nitrogen + T(2) * T(15.999L);
  static constexpr T nitrate = nitrogen + T(3) * T(15.999L);
  static constexpr T carbon_dioxide = T(12.011L) + T(2) * T(15.999L);
  static constexpr T cells = T(5) * T(12.011L) + T(7) * T(1.008L) + nitrogen + T(2) * T(15.999L);  // C5H7O2N
};

/// A concentration of nitrogen in one of its forms. `Form` gives the mass of the ion for a mass of nitrogen.
template <class Form>
class nitrogen_level {
 public:
  [[nodiscard]] static constexpr nitrogen_level from_nitrogen(mass_concentration value) noexcept {
    return nitrogen_level{value};
  }
  [[nodiscard]] static constexpr nitrogen_level from_ion(mass_concentration value) noexcept {
    return nitrogen_level{value / Form::ion_per_nitrogen};
  }
  [[nodiscard]] constexpr mass_concentration as_nitrogen() const noexcept { return value_; }
  [[nodiscard]] constexpr mass_concentration as_ion() const noexcept { return value_ * Form::ion_per_nitrogen; }

  friend constexpr auto operator<=>(const nitrogen_level& a, const nitrogen_level& b) noexcept {
    return a.value_.value() <=> b.value_.value();
  }
  friend constexpr bool operator==(const nitrogen_level& a, const nitrogen_level& b) noexcept {
    return a.value_.value() == b.value_.value();
  }

 private:
  constexpr explicit nitrogen_level(mass_concentration value) noexcept : value_{value} {}
  mass_concentration value_;
};

struct nitrite_form {
  static constexpr double ion_per_nitrogen = molar<double>::nitrite / molar<double>::nitrogen;
};
struct nitrate_form {
  static constexpr double ion_per_nitrogen = molar<double>::nitrate / molar<double>::nitrogen;
};

}  // namespace detail

/// Nitrite in the water: `nitrite_level::from_nitrogen(milligrams_per_litre(0.1))`; `from_ion` if the kit prints NO2.
using nitrite_level = detail::nitrogen_level<detail::nitrite_form>;
/// Nitrate in the water: 70 mg/L from_nitrogen is 310 mg/L as_ion.
using nitrate_level = detail::nitrogen_level<detail::nitrate_form>;

/// Nitrogen per time: what animals give off and what a filter takes away. Not the mass of feed, nor of ammonia.
class nitrogen_load {
 public:
  [[nodiscard]] static constexpr nitrogen_load from_nitrogen(mass_flow value) noexcept { return nitrogen_load{value}; }
  [[nodiscard]] constexpr mass_flow as_nitrogen() const noexcept { return value_; }

  friend constexpr auto operator<=>(const nitrogen_load& a, const nitrogen_load& b) noexcept {
    return a.value_.value() <=> b.value_.value();
  }
  friend constexpr bool operator==(const nitrogen_load& a, const nitrogen_load& b) noexcept {
    return a.value_.value() == b.value_.value();
  }

 private:
  constexpr explicit nitrogen_load(mass_flow value) noexcept : value_{value} {}
  mass_flow value_;
};

// ---- ammonia from feed ----------------------------------------------------------------------------------------------

/// Total ammonia nitrogen for the protein in dry feed: 0.16 g nitrogen in a gram of protein, 0.80 of it assimilated,
/// 0.80 of that excreted, 0.90 of that as ammonia, printed as 0.092.
inline constexpr double ammonia_nitrogen_per_protein = 0.092;
/// All nitrogen in protein: the bound for sharks and rays (whose urea turns to ammonia later), wet food and leftovers.
inline constexpr double nitrogen_per_protein = 0.16;

/// Food given, and the protein in it as given: 0.35 to 0.55 in dry pellets, 0.15 to 0.20 in wet fish, squid, shrimp.
struct feeding {
  required<mass_flow> food;
  required<proportion> protein;
};

/// The nitrogen that food becomes.
struct feed_nitrogen {
  estimate<nitrogen_load> ammonia;  ///< as ammonia, daily mean, bony fish on dry pellets
  nitrogen_load bound;              ///< all nitrogen in the food
  tankwright::caution caution;
};

inline constexpr limits food_limits{"food", "g/d", {0.0, 1e9}};
inline constexpr limits protein_limits{"protein", "", zero_to_one};

/// Nitrogen from feed: as ammonia by the rule for pellet-fed bony fish, and all of it as the bound.
///
///   P = 0.092 F PC,   bound = 0.16 F PC
///
/// @param fed    food F >= 0 and its protein PC, 0 to 1
/// @return       ammonia nitrogen per time with its band, the bound, and the caution
/// @throws       invalid_input
/// @accuracy     25 % for bony fish on dry pellets, averaged over a day; after feeding it reaches 1.2 to 1.5 times that
/// @source       Timmons and Ebeling 2007 (from memory)
[[nodiscard]] inline feed_nitrogen nitrogen_from_feed(const feeding& fed) {
  constexpr std::string_view here = "tankwright::life::nitrogen_from_feed";
  core::check(here, food_limits, in_grams_per_day(fed.food));
  core::check(here, protein_limits, fed.protein->value());
  const mass_flow protein = fed.food.get() * fed.protein->value();
  const auto rule = [&](double part) {
    return nitrogen_load::from_nitrogen(protein * (ammonia_nitrogen_per_protein * part));
  };
  return {{rule(0.75), rule(1.0), rule(1.25), "feed, species and digestion differ by about 25 %"},
          nitrogen_load::from_nitrogen(protein * nitrogen_per_protein),
          {"The rule is for bony fish on dry pellets. For sharks and rays, wet food and leftovers use the bound: their "
           "nitrogen arrives as ammonia too, only later."}};
}

// ---- what nitrification uses and makes ------------------------------------------------------------------------------

namespace detail {

/// Oxygen for a mass of nitrogen that becomes nitrate while y of dry cells grow: 2 mol O2 a mole, less what the cells
/// hold (5 mol O2 would burn a mole of C5H7O2N).
template <class T>
[[nodiscard]] constexpr T oxygen_per_oxidised_nitrogen(T y) noexcept {
  return T(2) * molar<T>::oxygen_molecule / molar<T>::nitrogen - y * T(5) * molar<T>::oxygen_molecule / molar<T>::cells;
}

// Ebeling et al. 2006, for one mole of ammonium: 1.83 O2 and 1.97 HCO3- give 0.0244 cells, 0.976 NO3- and 1.86 CO2.
inline constexpr double with_growth_oxygen = 1.83 * molar<double>::oxygen_molecule / molar<double>::nitrogen;
inline constexpr double with_growth_equivalents = 1.97;
inline constexpr double without_growth_equivalents = 2.0;
inline constexpr double with_growth_carbon_dioxide = 1.86 * molar<double>::carbon_dioxide / molar<double>::nitrogen;
inline constexpr double with_growth_cells = 0.0244 * molar<double>::cells / molar<double>::nitrogen;
// NH4+ + 2 O2 -> NO3- + 2 H+ + H2O, the two H+ turning two HCO3- into CO2.
inline constexpr double without_growth_oxygen = oxygen_per_oxidised_nitrogen(0.0);
inline constexpr double without_growth_carbon_dioxide = 2.0 * molar<double>::carbon_dioxide / molar<double>::nitrogen;

}  // namespace detail

/// What oxidising a load to nitrate uses and makes.
struct nitrification_needs {
  estimate<mass_flow> oxygen;
  estimate<mass_flow> alkalinity;      ///< as calcium carbonate
  estimate<mass_flow> carbon_dioxide;  ///< made
  estimate<mass_flow> cells;           ///< made: dry organic mass of new bacteria
  tankwright::caution caution;
};

/// Oxygen and alkalinity that nitrification of a load uses, carbon dioxide and cells that it makes.
///
///   NH4+ + 2 O2 -> NO3- + 2 H+ + H2O           4.57 g O2, 7.15 g alkalinity as CaCO3 for a gram of nitrogen
///   NH4+ + 1.83 O2 + 1.97 HCO3- -> 0.0244 C5H7O2N + 0.976 NO3- + 2.90 H2O + 1.86 CO2           4.18 g and 7.04 g
///
/// @param load   nitrogen oxidised, >= 0
/// @return       bands from the equation with cell growth to the one without; the latter, the safe side, is central
/// @throws       invalid_input
/// @accuracy     the equations to 0.5 %; real filters within 10 %
/// @source       stoichiometry (4.57 in USEPA 1975); Ebeling et al. 2006 (from memory); Gujer and Jenkins 1974
[[nodiscard]] inline nitrification_needs needs_of_nitrification(nitrogen_load load) {
  const mass_flow n = load.as_nitrogen();
  core::check("tankwright::life::needs_of_nitrification", nitrogen_load_limits, in_grams_per_day(n));
  constexpr std::string_view reason = "with and without the growth of cells";
  constexpr double per_equivalent =
      water::exact_masses.milligrams_caco3_per_milliequivalent / detail::molar<double>::nitrogen;
  const mass_flow oxygen = n * detail::without_growth_oxygen;
  const mass_flow alkalinity = n * (detail::without_growth_equivalents * per_equivalent);
  const mass_flow carbon_dioxide = n * detail::without_growth_carbon_dioxide;
  return {{n * detail::with_growth_oxygen, oxygen, oxygen, reason},
          {n * (detail::with_growth_equivalents * per_equivalent), alkalinity, alkalinity, reason},
          {n * detail::with_growth_carbon_dioxide, carbon_dioxide, carbon_dioxide, reason},
          {n * 0.0, n * detail::with_growth_cells, n * detail::with_growth_cells, reason},
          {"Oxidising a gram of nitrogen uses about seven grams of alkalinity: check the alkalinity before adding "
           "animals. Nitrification stalls when it runs out."}};
}

/// Alkalinity in a tank whose filter oxidises a load.
struct alkalinity_budget {
  required<nitrogen_load> load;
  required<volume> net;  ///< net volume of water
  required<water::alkalinity> now;
  required<water::alkalinity> lowest;  ///< that may be left
};

/// How long the alkalinity lasts.
struct alkalinity_countdown {
  estimate<water::alkalinity> daily_fall;
  std::optional<estimate<duration>> lasts;  ///< empty without a load
  tankwright::caution caution;
};

/// How long the alkalinity lasts under a load, when nothing replaces it.
///
///   fall = z n/(14.007 V),   t = (A - A_lowest)/fall,   z = 1.97 to 2 equivalents a mole
///
/// @param tank   load n >= 0, net volume V > 0, alkalinity now >= lowest >= 0
/// @return       fall in a day, time [s], and the caution; `water::alkalinity_to_add` says what puts it back
/// @throws       invalid_input
/// @accuracy     stoichiometry; corals, algae, food and calcification move alkalinity too
/// @source       stoichiometry; Ebeling et al. 2006 (from memory)
[[nodiscard]] inline alkalinity_countdown time_alkalinity_lasts(const alkalinity_budget& tank) {
  constexpr std::string_view here = "tankwright::life::time_alkalinity_lasts";
  const double now = water::in_milliequivalents_per_litre(tank.now.get());
  const double lowest = water::in_milliequivalents_per_litre(tank.lowest.get());
  core::check(here, nitrogen_load_limits, in_grams_per_day(tank.load->as_nitrogen()));
  core::check(here, net_volume_limits, in_litres(tank.net));
  core::check(here, {"alkalinity now", "meq/L", {0.0, 1e4}}, now);
  core::check(here, {"lowest alkalinity", "meq/L", {0.0, 1e4}}, lowest);
  if (lowest > now) {
    core::fail<invalid_input>(here, "lowest alkalinity", lowest, "meq/L", "is above what the water has");
  }
  const double millimoles_per_litre_day =
      in_grams_per_day(tank.load->as_nitrogen()) * 1e3 / detail::molar<double>::nitrogen / in_litres(tank.net);
  const double less = detail::with_growth_equivalents * millimoles_per_litre_day;
  const double most = detail::without_growth_equivalents * millimoles_per_litre_day;
  constexpr auto level = water::alkalinity::from_milliequivalents_per_litre;
  constexpr std::string_view reason = "with and without the growth of cells";
  alkalinity_countdown result{{level(less), level(most), level(most), reason},
                              std::nullopt,
                              {"Nitrification stalls when the alkalinity runs out, and ammonia rises. Measure it every "
                               "week while a filter works hard."}};
  if (most > core::tiny) {  // mmol/L a day: less takes nothing in the age of the world
    const duration shortest = days((now - lowest) / most);
    result.lasts = {shortest, shortest, days((now - lowest) / less), reason};
  }
  return result;
}

}  // namespace tankwright::life
