// SPDX-License-Identifier: BSL-1.0
/// @file
/// What may one person lift there? The recommended weight limit of NIOSH for a lift with two hands, now and then,
/// straight ahead: what hangs over a tank at arm's length is the worst case of it.
#pragma once

#include <cmath>
#include <tankwright/core/citation.hpp>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/core/validity.hpp>

namespace tankwright::vessel {

inline constexpr citation niosh_94_110{"Waters T.R., Putz-Anderson V., Garg A.", 1994,
                                       "Applications manual for the revised NIOSH lifting equation",
                                       "DHHS (NIOSH) 94-110", standing::secondary};

inline constexpr caution lifting_caution{
    "A limit for healthy people on a dry, level floor; on a ladder or a wet floor lift far less. A pane of glass that "
    "slips cuts tendons: gloves, two people, and nobody under it."};

/// A lift with both hands.
struct hand_lift {
  required<length> reach;        ///< from between the ankles to between the hands
  required<length> height;       ///< of the hands above the feet
  length travel = metres(0.25);  ///< up or down
  double coupling = 0.90;        ///< [1] of the grip: 1 good, 0.95 fair, 0.90 poor
};

inline constexpr limits reach_limits{"reach", "m", {0.0, 10.0}, {0.0, 0.63}, "NIOSH 94-110"};
inline constexpr limits hand_height_limits{"height", "m", {0.0, 10.0}, {0.0, 1.75}, "NIOSH 94-110"};
inline constexpr limits travel_limits{"travel", "m", {0.0, 10.0}, {0.0, 1.75}, "NIOSH 94-110"};
inline constexpr limits coupling_limits{"coupling", "", {0.5, 1.0}, {0.90, 1.0}, "NIOSH 94-110"};

/// Mass that one person should lift at most.
///
///   23 kg * 0.25/max(H, 0.25) * (1 - 0.3 |V - 0.75|) * (0.82 + 0.045/max(D, 0.25)) * C     (metres)
///
/// @param lift   reach H 0 to 0.63 m; height V 0 to 1.75 m; travel D 0 to 1.75 m; coupling C 0.90 to 1
/// @param policy `extrapolate` to go past these ranges
/// @return       mass [kg]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     a recommendation for nearly all healthy people and a lift at most every five minutes
/// @source       NIOSH 94-110
[[nodiscard]] inline mass recommended_lift(const hand_lift& lift, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::vessel::recommended_lift";
  const double h = lift.reach->value(), v = lift.height->value(), d = lift.travel.value();
  core::check(here, reach_limits, h, policy);
  core::check(here, hand_height_limits, v, policy);
  core::check(here, travel_limits, d, policy);
  core::check(here, coupling_limits, lift.coupling, policy);
  const double vertical = std::fmax(0.0, 1.0 - 0.3 * std::fabs(v - 0.75));
  return mass::from_value(23.0 * (0.25 / std::fmax(h, 0.25)) * vertical * (0.82 + 0.045 / std::fmax(d, 0.25)) *
                          lift.coupling);
}

}  // namespace tankwright::vessel
