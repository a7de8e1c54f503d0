// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much oxygen do the animals use? Scaled from a measured rate of their kind; with the rule by feed as a check on
/// the sum, and the carbon dioxide that comes out for it. What the filter uses is in `nitrogen.hpp`.
#pragma once

#include <cmath>
#include <compare>
#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/ranges.hpp>

namespace tankwright::life {

inline constexpr citation carlson_1999{
    "Carlson J.K., Palmer C.L., Parsons G.R.", 1999,
    "Oxygen consumption rate and swimming efficiency of the blacknose shark, Carcharhinus acronotus",
    "Copeia 1999(1):34-39, abstract"};
inline constexpr citation dowd_2006{
    "Dowd W.W., Brill R.W., Bushnell P.G., Musick J.A.", 2006,
    "Standard and routine metabolic rates of juvenile sandbar sharks (Carcharhinus plumbeus)",
    "Fishery Bulletin 104:323-331, abstract"};

/// Mass of oxygen used per mass of animal and time: 300 mg/(kg h) is `from_milligrams_per_kilogram_hour(300)`.
class specific_oxygen_use {
 public:
  [[nodiscard]] static constexpr specific_oxygen_use from_milligrams_per_kilogram_hour(double value) noexcept {
    return specific_oxygen_use{value};
  }
  [[nodiscard]] constexpr double value() const noexcept { return value_; }  ///< mg/(kg h)
  constexpr auto operator<=>(const specific_oxygen_use&) const noexcept = default;

 private:
  constexpr explicit specific_oxygen_use(double value) noexcept : value_{value} {}
  double value_;
};
/// The number of an oxygen use in milligrams per kilogram and hour.
///
/// @param use specific oxygen use
/// @return    [mg/(kg h)]
/// @accuracy  exact
/// @source    this library
[[nodiscard]] constexpr double in_milligrams_per_kilogram_hour(specific_oxygen_use use) noexcept { return use.value(); }

/// Routine use over standard (resting) use of juvenile sandbar sharks: 1.8 +- 0.1 (Dowd et al. 2006).
inline constexpr double routine_over_standard = 1.8;
/// Rise of the standard rate of juvenile sandbar sharks for 10 K: 2.9 +- 0.2 (Dowd et al. 2006).
inline constexpr double sandbar_shark_q10 = 2.9;

/// Animals of one kind, and a measured rate of their kind to start from.
struct animals {
  std::string_view label = "animals";
  required<mass> each;                            ///< mass of one animal
  double count = 1.0;                             ///< [1]
  required<specific_oxygen_use> measured;         ///< rate of a reference animal, routine activity
  required<mass> measured_at_mass;                ///< mass of that animal
  required<tankwright::temperature> measured_at;  ///< temperature of that measurement
  double mass_exponent = 0.80;                    ///< [1] b of M^b for a whole animal; 0.79 to 0.86 from memory
  double q10 = 2.5;                               ///< [1] rise for 10 K; 2 to 3 from memory
  double activity = 1.0;                          ///< [1] over the measured rate; 2 to 3 when handled or just fed
};

/// What animals use.
struct oxygen_demand {
  mass_flow use;
  specific_oxygen_use per_mass;  ///< of these animals at this temperature
  tankwright::caution caution;
};

inline constexpr limits animal_mass_limits{"mass of one animal", "kg", {1e-8, 1e6}};
inline constexpr limits animal_count_limits{"count", "", {0.0, 1e9}};
inline constexpr limits specific_oxygen_use_limits{"measured oxygen use", "mg/(kg h)", {0.0, 1e7}};
inline constexpr limits mass_exponent_limits{"mass exponent", "", {0.0, 2.0}};
inline constexpr limits q10_limits{"q10", "", {1.0, 10.0}};
inline constexpr limits activity_limits{"activity", "", {0.0, 1e3}};

/// Oxygen that animals use, from a measured rate of their kind.
///
///   R = R_ref (M/M_ref)^(b-1) Q10^((T - T_ref)/10 K) activity,   total = n M R
///
/// @param group  masses > 0, count >= 0, measured rate >= 0, exponent 0 to 2, q10 1 to 10, activity >= 0
/// @param water  temperature of the tank
/// @return       oxygen per time [kg/s], the specific rate, and the caution
/// @throws       invalid_input (names the animals)
/// @accuracy     the scaling is good to about 30 % for small steps in mass and temperature; blacknose sharks follow
///               M^-0.38 per kilogram between 0.8 and 3.5 kg where the textbook exponent gives M^-0.2, so start from a
///               rate measured near the mass in question
/// @source       allometric and Q10 scaling; Carlson et al. 1999; Dowd et al. 2006; exponents from memory
[[nodiscard]] inline oxygen_demand oxygen_use(const animals& group, temperature water) {
  constexpr std::string_view here = "tankwright::life::oxygen_use";
  const auto require = [&](const limits& limit, double value) { core::check_element(here, group.label, limit, value); };
  require(animal_mass_limits, in_kilograms(group.each));
  require({"mass of the measured animal", "kg", {1e-8, 1e6}}, in_kilograms(group.measured_at_mass));
  require(animal_count_limits, group.count);
  require(specific_oxygen_use_limits, in_milligrams_per_kilogram_hour(group.measured));
  require({"temperature of the measurement", "degC", possible_water}, in_celsius(group.measured_at));
  require(water_temperature_limits, in_celsius(water));
  require(mass_exponent_limits, group.mass_exponent);
  require(q10_limits, group.q10);
  require(activity_limits, group.activity);
  const double rate = in_milligrams_per_kilogram_hour(group.measured) *
                      std::pow(group.each->value() / group.measured_at_mass->value(), group.mass_exponent - 1.0) *
                      std::pow(group.q10, (water.value() - group.measured_at->value()) / 10.0) * group.activity;
  return {milligrams_per_hour(rate * in_kilograms(group.each) * group.count),
          specific_oxygen_use::from_milligrams_per_kilogram_hour(rate),
          {"Animals that were handled, moved or just fed use two to three times the resting rate. Rates differ between "
           "species and individuals; ask an aquatic veterinarian."}};
}

/// Oxygen that a whole tank uses for its feed: animals, filter and the bacteria that live on waste.
///
///   0.4 to 0.5 kg of oxygen per kg of dry feed (animals 0.25, nitrification 0.12, other bacteria about 0.1)
///
/// @param dry_feed  dry feed per time >= 0
/// @return          oxygen per time [kg/s]
/// @throws          invalid_input
/// @accuracy        a rule from memory for a daily mean; a check on the sum of the parts, not a replacement
/// @source          rule of aquaculture engineering, from memory
[[nodiscard]] inline estimate<mass_flow> oxygen_for_feed(mass_flow dry_feed) {
  core::check("tankwright::life::oxygen_for_feed", {"dry feed", "g/d", {0.0, 1e9}}, in_grams_per_day(dry_feed));
  return {dry_feed * 0.40, dry_feed * 0.45, dry_feed * 0.50,
          "a rule for the daily mean of fed fish; the hours after feeding are higher"};
}

/// Carbon dioxide breathed out for the oxygen used.
///
///   m(CO2) = RQ 44.009/31.998 m(O2)
///
/// @param oxygen               oxygen used per time >= 0
/// @param respiratory_quotient [mol/mol] moles of CO2 for a mole of O2; 0.7 (fat) to 1.0 (carbohydrate)
/// @return                     carbon dioxide per time [kg/s]
/// @throws                     invalid_input
/// @accuracy                   exact by molar masses
/// @source                     stoichiometry; IUPAC standard atomic weights
[[nodiscard]] inline mass_flow carbon_dioxide_for(mass_flow oxygen, double respiratory_quotient = 1.0) {
  constexpr std::string_view here = "tankwright::life::carbon_dioxide_for";
  core::check(here, {"oxygen used", "mg/h", {0.0, 1e15}}, in_milligrams_per_hour(oxygen));
  core::check(here, {"respiratory quotient", "", {0.0, 2.0}}, respiratory_quotient);
  return oxygen * (respiratory_quotient * 44.009 / 31.998);
}

}  // namespace tankwright::life
