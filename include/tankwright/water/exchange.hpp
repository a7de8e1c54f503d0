// SPDX-License-Identifier: BSL-1.0
/// @file
/// What do water changes and treatment do? What is left after changes in batches or by a steady flow, how many changes
/// it takes, and where production against new water, treatment or a routine of changes settles.
#pragma once

#include <cmath>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/core/validity.hpp>
#include <tankwright/water/salinity.hpp>
#include <tankwright/water/well_mixed.hpp>

namespace tankwright::water {

/// A change of less than a ten-millionth is none: the number of them would not fit an int.
inline constexpr limits changed_part_limits{"part changed", "", {1e-7, 1.0}};
inline constexpr limits part_left_limits{"part to be left", "", above_zero_to_one};
inline constexpr limits number_of_changes_limits{"number of changes", "", not_negative};
inline constexpr limits exchange_volume_limits{"volume", "L", {1e-3, 1e12}};
inline constexpr limits exchange_flow_limits{"flow", "L/h", {0.0, 1e12}};
inline constexpr limits exchange_time_limits{"time", "h", {0.0, 1e7}};

/// Equal changes of part of the water.
struct batch_changes {
  required<proportion> part;  ///< changed each time
  required<int> times;        ///< [1]
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

/// A substance in a mixed volume: what comes in steadily, and the ways out.
struct mixed_substance {
  required<tankwright::volume> volume;
  mass_concentration start = {};  ///< in the water at time zero
  mass_flow made = {};            ///< in it, or added
  flow_rate new_water = {};       ///< runs in, and as much mixed water out
  mass_concentration in_new_water = {};
  flow_rate cleared = {};  ///< that treatment frees of the substance: its flow times the share that a pass removes
};

/// What is done at equal intervals to a substance in a mixed volume that is made, and treated, all the time.
struct change_routine {
  required<tankwright::volume> volume;
  required<duration> every;
  required<proportion> part;  ///< of the water, replaced each time
  mass_flow made = {};
  mass_concentration in_new_water = {};
  mass dose = {};          ///< added at once, right after each change
  flow_rate cleared = {};  ///< by treatment, between the changes
};

/// The saw-tooth that a routine settles into.
struct saw_tooth {
  mass_concentration before_change;
  mass_concentration after_change;  ///< and after the dose
};

inline constexpr limits made_limits{"production", "g/d", {0.0, 1e12}};
inline constexpr limits concentration_limits{"concentration", "mg/L", {0.0, 1e7}};
inline constexpr limits new_water_limits{"flow of new water", "L/h", {0.0, 1e12}};
inline constexpr limits cleared_limits{"flow cleared by treatment", "L/h", {0.0, 1e12}};
inline constexpr limits change_interval_limits{"interval", "d", {0.0, 1e5, edge::open}};
inline constexpr limits routine_part_limits{"part changed", "", zero_to_one};
inline constexpr limits dose_limits{"dose", "g", {0.0, 1e12}};

/// What is left of the old water, and of what was dissolved in it, after equal changes.
///
///   (1 - f)^n
///
/// @param changes part f 1e-7 to 1; number of times n >= 0
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
/// @param goal part f changed each time, 1e-7 to 1; part r to be left, above 0 to 1
/// @return     [1] number of changes
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
/// @param flow volume V 1e-3 L to 1e12 L; flow Q 0 to 1e12 L/h; time t 0 to 1e7 h
/// @return     part left
/// @throws     invalid_input (names the argument, its value and what is possible)
/// @accuracy   exact for well mixed water; short cuts from inlet to outlet leave more
/// @source     conservation of mass
[[nodiscard]] inline proportion left_after_flow(const steady_flow& flow) {
  constexpr std::string_view here = "tankwright::water::left_after_flow";
  core::check(here, exchange_volume_limits, in_litres(flow.volume));
  core::check(here, exchange_flow_limits, in_litres_per_hour(flow.flow));
  core::check(here, exchange_time_limits, in_hours(flow.time));
  const kernel::well_mixed<double> balance{0.0, flow.flow->value() / flow.volume->value()};
  return fraction(balance.after(1.0, flow.time->value()));
}

/// How long a steady flow takes to leave no more than a part.
///
///   t = -(V / Q) ln r
///
/// @param goal volume V 1e-3 L to 1e12 L; flow Q 1e-8 to 1e12 L/h; part r to be left, 1e-30 to 1
/// @return     time
/// @throws     invalid_input (names the argument, its value and what is possible)
/// @accuracy   exact for well mixed water
/// @source     conservation of mass
[[nodiscard]] inline duration time_to_leave(const steady_goal& goal) {
  constexpr std::string_view here = "tankwright::water::time_to_leave";
  core::check(here, exchange_volume_limits, in_litres(goal.volume));
  core::check(here, {exchange_flow_limits.argument, "L/h", {1e-8, 1e12}}, in_litres_per_hour(goal.flow));
  core::check(here, {part_left_limits.argument, "", {1e-30, 1.0}}, goal.left->value());
  const kernel::well_mixed<double> balance{0.0, goal.flow->value() / goal.volume->value()};
  return seconds(balance.time_between(1.0, goal.left->value()));
}

namespace detail {

/// The balance [kg/m^3, s] of a substance whose numbers are known to be possible.
[[nodiscard]] inline kernel::well_mixed<double> checked(std::string_view function, const mixed_substance& m) {
  core::check(function, exchange_volume_limits, in_litres(m.volume));
  core::check(function, renamed(concentration_limits, "concentration at the start"), in_milligrams_per_litre(m.start));
  core::check(function, made_limits, in_grams_per_day(m.made));
  core::check(function, new_water_limits, in_litres_per_hour(m.new_water));
  core::check(function, renamed(concentration_limits, "concentration in the new water"),
              in_milligrams_per_litre(m.in_new_water));
  core::check(function, cleared_limits, in_litres_per_hour(m.cleared));
  const double v = m.volume->value();
  return {(m.made.value() + m.new_water.value() * m.in_new_water.value()) / v,
          (m.new_water.value() + m.cleared.value()) / v};
}

}  // namespace detail

/// The concentration of a substance after some time.
///
///   C = C_0 exp(-k t) + g (1 - exp(-k t))/k,   g = (P + Q C_in)/V,   k = (Q + Q_cleared)/V
///
/// @param substance volume V 1e-3 L to 1e12 L; concentrations, production P, flow of new water Q and flow cleared by
///                  treatment >= 0; without either flow the concentration only rises
/// @param time      t [s] >= 0
/// @return          concentration [kg/m^3]
/// @throws          invalid_input (names the argument, its value and what is possible)
/// @accuracy        exact for well mixed water and constant production; dead corners clear more slowly
/// @source          conservation of mass; Losordo and Hobbs 2000
[[nodiscard]] inline mass_concentration concentration_after(const mixed_substance& substance, duration time) {
  constexpr std::string_view here = "tankwright::water::concentration_after";
  const auto balance = detail::checked(here, substance);
  core::check(here, exchange_time_limits, in_hours(time));
  return mass_concentration::from_value(balance.after(substance.start.value(), time.value()));
}

/// Where the concentration of a substance settles. With production it is never zero.
///
///   C = (P + Q C_in)/(Q + Q_cleared)
///
/// @param substance as for concentration_after, with a way out; its start does not matter
/// @return          concentration [kg/m^3]
/// @throws          invalid_input (also without any way out: the concentration rises for ever)
/// @accuracy        exact for well mixed water and constant production
/// @source          conservation of mass; Losordo and Hobbs 2000
[[nodiscard]] inline mass_concentration settled_concentration(const mixed_substance& substance) {
  constexpr std::string_view here = "tankwright::water::settled_concentration";
  const auto balance = detail::checked(here, substance);
  if (!(balance.k >= core::tiny)) {  // 1/s: longer than the age of the world
    core::fail<invalid_input>(here, cleared_limits.argument, 0.0, "L/h",
                              "and no new water: nothing is taken out, and the concentration never settles");
  }
  return mass_concentration::from_value(balance.settled());
}

/// Where a routine of water changes or doses settles, with treatment at work between them or without.
///
///   before = after exp(-k T) + (P/V)(1 - exp(-k T))/k,   after = (1 - f) before + f C_new + m/V,   k = Q_cleared/V
///   (without treatment and doses: before = C_new + p/f,   p = P T/V made in an interval)
///
/// @param routine volume V 1e-3 L to 1e12 L; interval T > 0; part f 0 to 1; production P, dose m, concentration in the
///                new water and flow cleared >= 0
/// @return        concentrations just before and just after a change [kg/m^3]
/// @throws        invalid_input; also when nothing is ever taken out, because the level then never settles
/// @accuracy      exact for well mixed water and constant production
/// @source        conservation of mass
[[nodiscard]] inline saw_tooth settled_saw_tooth(const change_routine& routine) {
  constexpr std::string_view here = "tankwright::water::settled_saw_tooth";
  const auto balance = detail::checked(here, {.volume = routine.volume,
                                              .made = routine.made,
                                              .in_new_water = routine.in_new_water,
                                              .cleared = routine.cleared});
  const double f = routine.part->value();
  core::check(here, change_interval_limits, in_days(routine.every));
  core::check(here, routine_part_limits, f);
  core::check(here, dose_limits, in_grams(routine.dose));
  if (f < core::tiny && balance.k < core::tiny) {
    core::fail<invalid_input>(here, routine_part_limits.argument, f, "",
                              "and no treatment that takes anything out: the level rises for ever");
  }
  const double added = f * routine.in_new_water.value() + routine.dose.value() / routine.volume->value();
  const auto swing = balance.periodic(routine.every->value(), f, added);
  return {mass_concentration::from_value(swing.before), mass_concentration::from_value(swing.after)};
}

}  // namespace tankwright::water
