// SPDX-License-Identifier: BSL-1.0
/// @file
/// What do water changes do? What is left of a substance after changes in batches or by a steady flow, how many changes
/// it takes, and where a regular routine ends.
#pragma once

#include <cmath>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/core/validity.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr limits changed_part_limits{"part changed", "", above_zero_to_one};
inline constexpr limits part_left_limits{"part to be left", "", above_zero_to_one};
inline constexpr limits number_of_changes_limits{"number of changes", "", not_negative};
inline constexpr limits exchange_flow_limits{"flow", "L/h", not_negative};
inline constexpr limits exchange_time_limits{"time", "h", not_negative};

/// Equal changes of part of the water.
struct batch_changes {
  required<proportion> part;  ///< changed each time
  required<int> times;
};
/// How much is to be left, by equal changes of part of the water.
struct batch_goal {
  required<proportion> part;  ///< changed each time
  required<proportion> left;
};
/// A steady flow through a mixed volume.
struct steady_flow {
  required<tankwright::volume> volume;
  required<flow_rate> flow;
  required<duration> time;
};
/// How much is to be left, by a steady flow.
struct steady_goal {
  required<tankwright::volume> volume;
  required<flow_rate> flow;
  required<proportion> left;
};

/// A steady flow through a mixed volume in which a substance is made all the time.
struct steady_exchange {
  required<tankwright::volume> volume;
  required<flow_rate> flow;
  required<duration> time;
  required<mass_concentration> start;
  required<mass_concentration> inflow;  ///< in the water that comes in
  required<mass_flow> production;
};
struct steady_exchange_result {
  mass_concentration now;    ///< after the time
  mass_concentration final;  ///< after a long time
};

/// A routine: the same part of the water every interval, while a substance is made.
struct exchange_routine {
  required<proportion> part;
  required<mass_concentration> made_per_interval;
  required<mass_concentration> inflow;  ///< in the water that comes in
};
/// Where the routine ends.
struct exchange_routine_result {
  mass_concentration peak;    ///< before each change
  mass_concentration trough;  ///< after it
};

/// What is left of the old water, and of what was dissolved in it, after equal changes.
///
///   (1 - f)^n
///
/// @param changes part f above 0 to 1; number of times n >= 0
/// @return        part left
/// @throws        invalid_input (names the argument, its value and what is possible)
/// @accuracy      exact for well mixed water
/// @source        conservation of mass
[[nodiscard]] inline proportion left_after_changes(const batch_changes& changes) {
  constexpr std::string_view here = "tankwright::water::left_after_changes";
  core::check(here, changed_part_limits, changes.part->value());
  core::check(here, number_of_changes_limits, changes.times);
  return fraction(std::pow(1.0 - changes.part->value(), static_cast<double>(changes.times)));
}

/// How many equal changes it takes to leave no more than a part.
///
///   n = ceil(ln r / ln(1 - f))
///
/// @param goal part f changed each time, above 0 to 1; part r to be left, above 0 to 1
/// @return     number of changes
/// @throws     invalid_input (names the argument, its value and what is possible)
/// @accuracy   exact for well mixed water
/// @source     conservation of mass
[[nodiscard]] inline int changes_to_leave(const batch_goal& goal) {
  constexpr std::string_view here = "tankwright::water::changes_to_leave";
  core::check(here, changed_part_limits, goal.part->value());
  core::check(here, part_left_limits, goal.left->value());
  if (goal.left->value() == 1.0) return 0;
  // A change of everything leaves nothing: log1p(-1) is minus infinity, and one change is enough. The margin counts
  // changes that leave exactly the goal.
  const double changes = std::log(goal.left->value()) / std::log1p(-goal.part->value());
  return changes > 0.0 ? static_cast<int>(std::ceil(changes * (1.0 - 1e-12))) : 1;
}

/// What is left of the old water after a steady flow of new water through a mixed volume.
///
///   exp(-Q t / V)
///
/// @param flow volume V > 0; flow Q >= 0; time t >= 0
/// @return     part left
/// @throws     invalid_input (names the argument, its value and what is possible)
/// @accuracy   exact for well mixed water; short cuts from inlet to outlet leave more
/// @source     conservation of mass
[[nodiscard]] inline proportion left_after_flow(const steady_flow& flow) {
  constexpr std::string_view here = "tankwright::water::left_after_flow";
  core::check(here, water_volume_limits, in_litres(flow.volume));
  core::check(here, exchange_flow_limits, in_litres_per_hour(flow.flow));
  core::check(here, exchange_time_limits, in_hours(flow.time));
  return fraction(std::exp(-flow.flow->value() * flow.time->value() / flow.volume->value()));
}

/// How long a steady flow takes to leave no more than a part.
///
///   t = -(V / Q) ln r
///
/// @param goal volume V > 0; flow Q > 0; part r to be left, above 0 to 1
/// @return     time
/// @throws     invalid_input (names the argument, its value and what is possible)
/// @accuracy   exact for well mixed water
/// @source     conservation of mass
[[nodiscard]] inline duration time_to_leave(const steady_goal& goal) {
  constexpr std::string_view here = "tankwright::water::time_to_leave";
  core::check(here, water_volume_limits, in_litres(goal.volume));
  core::check(here, {"flow", "L/h", positive}, in_litres_per_hour(goal.flow));
  core::check(here, part_left_limits, goal.left->value());
  return std::log(1.0 / goal.left->value()) * goal.volume.get() / goal.flow.get();
}

/// A substance that is made all the time, in a mixed volume with a steady flow of new water.
///
///   C_end = C_in + P / Q,   C(t) = C_end + (C_0 - C_end) exp(-Q t / V)
///
/// @param exchange volume V > 0; flow Q > 0; time t >= 0; concentrations C_0, C_in >= 0; production P >= 0
/// @return         concentration after the time, and after a long time
/// @throws         invalid_input (names the argument, its value and what is possible)
/// @accuracy       exact for well mixed water and constant production
/// @source         conservation of mass
[[nodiscard]] inline steady_exchange_result exchange_by_flow(const steady_exchange& exchange) {
  constexpr std::string_view here = "tankwright::water::exchange_by_flow";
  core::check(here, {"flow", "L/h", positive}, in_litres_per_hour(exchange.flow));
  core::check(here, {"concentration at the start", "mg/L", not_negative}, in_milligrams_per_litre(exchange.start));
  core::check(here, {"concentration of the inflow", "mg/L", not_negative}, in_milligrams_per_litre(exchange.inflow));
  core::check(here, {"production", "mg/h", not_negative}, in_milligrams_per_hour(exchange.production));
  const double left =
      left_after_flow({.volume = exchange.volume, .flow = exchange.flow, .time = exchange.time}).value();
  const mass_concentration final = exchange.inflow.get() + exchange.production.get() / exchange.flow.get();
  return {final + left * (exchange.start.get() - final), final};
}

/// Where a routine of equal changes ends: between which concentrations the water swings after many intervals.
///
///   peak = C_in + p / f,   trough = C_in + p (1 - f) / f
///
/// @param routine part f changed each interval, above 0 to 1; p made per interval >= 0; C_in of the new water >= 0
/// @return        concentration before and after each change
/// @throws        invalid_input (names the argument, its value and what is possible)
/// @accuracy      exact for well mixed water and constant production
/// @source        conservation of mass
[[nodiscard]] inline exchange_routine_result exchange_by_routine(const exchange_routine& routine) {
  constexpr std::string_view here = "tankwright::water::exchange_by_routine";
  core::check(here, changed_part_limits, routine.part->value());
  core::check(here, {"made per interval", "mg/L", not_negative},
                in_milligrams_per_litre(routine.made_per_interval));
  core::check(here, {"concentration of the inflow", "mg/L", not_negative}, in_milligrams_per_litre(routine.inflow));
  const double f = routine.part->value();
  const mass_concentration made = routine.made_per_interval;
  return {routine.inflow.get() + made / f, routine.inflow.get() + made * ((1.0 - f) / f)};
}

}  // namespace tankwright::water
