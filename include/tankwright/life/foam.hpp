// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the water stay long enough in the foam fractionator, and does all of it get there? Contact time, passes and
/// bubble surface are physics; how much is enough is only a habit of the trade, and is labelled so.
#pragma once

#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/ranges.hpp>
#include <tankwright/water/mass_concentration.hpp>

namespace tankwright::life {

inline constexpr citation hadfield_clayton_2021{"Hadfield C.A., Clayton L.A. (eds.)", 2021,
                                                "Clinical Guide to Fish Medicine", "Wiley, chapter A3"};
inline constexpr citation timmons_1995{"Timmons M.B., Chen S., Weeks N.C.", 1995,
                                       "Mathematical model of a foam fractionator used in aquaculture",
                                       "Journal of the World Aquaculture Society 26"};

/// Foam forms above this content of salt.
inline constexpr limits foam_salt_limits{
    "salt in the water", "g/L", possible_salt, {15.0, core::vast, edge::open}, "Clinical Guide to Fish Medicine"};

/// Rules of the trade, from memory: not limits of any formula.
inline constexpr duration foam_contact_rule_low = minutes(1.5);
inline constexpr duration foam_contact_rule_high = minutes(2.0);
inline constexpr rate foam_passes_rule_low = per_hour(1.0);
inline constexpr rate foam_passes_rule_high = per_hour(2.0);

/// A foam fractionator on a tank.
struct foam_column {
  required<volume> water_in_column;  ///< water volume of the contact column
  required<flow_rate> flow;          ///< through the column
  required<volume> net;              ///< net volume of the whole system
  required<practical_salinity> salinity;
  required<tankwright::temperature> temperature;
};

/// How the water meets the bubbles.
struct foam_contact {
  duration time;          ///< in the column
  rate passes;            ///< of the whole system per time
  bool long_enough;       ///< contact time at least the low end of the rule
  bool often_enough;      ///< passes at least the low end of the rule
  std::string_view rule;  ///< what the two verdicts rest on
  tankwright::caution caution;
};

/// Contact time and passes of a foam fractionator, beside the rules of the trade.
///
///   t = V_column / Q,   passes = Q / V
///
/// @param column water volume of the column > 0, flow > 0, net volume > 0, salinity and temperature of the water
/// @param policy `extrapolate` to go below 15 g/L of salt, where foam hardly forms, or past the ranges of the density
/// @return       contact time [s], passes [1/s], two verdicts with the rule they rest on, and the caution
/// @throws       invalid_input, out_of_range
/// @accuracy     contact time and passes are exact; the rules are habits, and published models call foam fractionation
///               erratic
/// @source       definitions; Clinical Guide to Fish Medicine 2021 (salt); rules from memory
[[nodiscard]] inline foam_contact foam_contact_of(const foam_column& column,
                                                  range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::life::foam_contact_of";
  core::check(here, {"water in the column", "L", {1e-6, 1e10}}, in_litres(column.water_in_column));
  core::check(here, {"flow", "L/h", {1e-6, 1e10}}, in_litres_per_hour(column.flow));
  core::check(here, net_volume_limits, in_litres(column.net));
  const auto salt = water::mass_concentration_from_salinity(column.salinity, column.temperature, policy);
  core::check(here, foam_salt_limits, in_grams_per_litre(salt), policy);
  const duration time = column.water_in_column.get() / column.flow.get();
  const rate passes = column.flow.get() / column.net.get();
  return {time,
          passes,
          time >= foam_contact_rule_low,
          passes >= foam_passes_rule_low,
          "Rule of the trade, from memory: 1.5 to 2 minutes of contact, the whole system 1 to 2 times an hour, about "
          "as much air as water.",
          {"Foam fractionation is erratic: it follows pH, bubble size, air flow and what is dissolved. Judge it by "
           "what it takes out, not by a rated volume."}};
}

/// Surface of the bubbles in a volume of water and air.
///
///   a = 6 phi / d
///
/// @param gas_share  share of gas in the volume, 0 <= phi < 1
/// @param bubble     diameter of the bubbles > 0
/// @return           surface per volume [1/m]
/// @throws           invalid_input
/// @accuracy         exact for equal spheres
/// @source           geometry
[[nodiscard]] inline specific_surface bubble_surface(proportion gas_share, length bubble) {
  constexpr std::string_view here = "tankwright::life::bubble_surface";
  core::check(here, {"gas share", "", zero_to_below_one}, gas_share.value());
  core::check(here, {"bubble diameter", "mm", {1e-6, 1e3}}, in_millimetres(bubble));
  return specific_surface::from_value(6.0 * gas_share.value() / bubble.value());
}

}  // namespace tankwright::life
