// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is the circulation enough to clear the water, and how long does it take after a dose or a spill? Turnover and
/// first-order removal in a well-mixed tank with one or several treatment loops.
#pragma once

#include <cmath>
#include <span>
#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/detail/checks.hpp>

namespace tankwright::life {

inline constexpr citation gage_bidwell_1926{
    "Gage S., Bidwell H.F.", 1926, "The law of purification of swimming pools by consecutive dilution",
    "as treated by Simmonds et al. 2021, Water 13:2350", standing::secondary};
inline constexpr citation losordo_hobbs_2000{
    "Losordo T.M., Hobbs A.O.", 2000,
    "Using computer spreadsheets for water flow and biofilter sizing in recirculating aquaculture production systems",
    "Aquacultural Engineering 23:95-102"};

inline constexpr caution perfect_mixing_caution{
    "Assumes a perfectly mixed tank, the net volume of water and the measured, not the rated, flow. Dead corners "
    "behind rock clear more slowly."};

inline constexpr limits loop_flow_limits{"flow", "L/h", not_negative};
inline constexpr limits removal_efficiency_limits{"efficiency", "", zero_to_one};
inline constexpr limits share_removed_limits{"share removed", "", zero_to_below_one};
inline constexpr limits turnovers_limits{"turnovers", "", not_negative};

/// Water taken from the tank, treated, and given back.
struct loop {
  std::string_view label = "loop";
  required<flow_rate> flow;                 ///< measured, not rated
  proportion efficiency = fraction(1.0);    ///< share removed in one pass
};

/// A tank and its loops.
struct circulation {
  required<volume> net;                   ///< net volume of water
  required<std::span<const loop>> loops;  ///< of an array that outlives the call
};

namespace detail {

/// The sum of the flows, each times `share(loop)`, m^3/s; `check`s every loop.
template <class Share>
double sum_of_flows(std::string_view here, std::span<const loop> loops, Share share) {
  double sum = 0.0;
  for (const loop& l : loops) {
    core::check_element(here, l.label, loop_flow_limits, in_litres_per_hour(l.flow));
    core::check_element(here, l.label, removal_efficiency_limits, l.efficiency.value());
    sum += l.flow->value() * share(l);
  }
  return sum;
}

inline double treated_flow(std::string_view here, std::span<const loop> loops) {
  return sum_of_flows(here, loops, [](const loop& l) { return l.efficiency.value(); });
}

inline constexpr limits removal_limits{"removal by all loops together (flow times efficiency)", "L/h", positive};

/// The same, refused when the loops together remove nothing.
inline double some_treated_flow(std::string_view here, std::span<const loop> loops) {
  const double treated = treated_flow(here, loops);
  core::check(here, removal_limits, in_litres_per_hour(flow_rate::from_value(treated)));
  return treated;
}

/// (1 - exp(-k t))/k, and t where k is zero.
template <class T>
[[nodiscard]] T decaying_time(T k, T t) noexcept {
  using std::expm1;
  return k * t < T(1e-18L) ? t : -expm1(-k * t) / k;
}

}  // namespace detail

/// How often the loops pass the whole tank's volume.
///
///   sum(Q) / V
///
/// @param tank   net volume > 0; loops with flow >= 0 and efficiency 0 to 1
/// @return       turnovers per time [1/s]
/// @throws       invalid_input (names the loop)
/// @accuracy     exact by definition
/// @source       definition
[[nodiscard]] inline rate turnover_rate(const circulation& tank) {
  constexpr std::string_view here = "tankwright::life::turnover_rate";
  core::check(here, net_volume_limits, in_litres(tank.net));
  return rate::from_value(detail::sum_of_flows(here, tank.loops, [](const loop&) { return 1.0; }) / tank.net->value());
}

/// The rate at which the loops together take a substance out of a well-mixed tank.
///
///   k = sum(eta Q) / V
///
/// @param tank   net volume > 0; loops with flow >= 0 and efficiency 0 to 1
/// @return       first-order rate [1/s]
/// @throws       invalid_input (names the loop)
/// @accuracy     exact for perfect mixing
/// @source       Gage and Bidwell 1926
[[nodiscard]] inline rate removal_rate(const circulation& tank) {
  constexpr std::string_view here = "tankwright::life::removal_rate";
  core::check(here, net_volume_limits, in_litres(tank.net));
  return rate::from_value(detail::treated_flow(here, tank.loops) / tank.net->value());
}

/// The share of a substance that a number of turnovers takes out. Six turnovers of a perfect filter reach 99.75 %.
///
///   1 - exp(-eta n)
///
/// @param turnovers  n >= 0
/// @param efficiency share removed in one pass, 0 to 1
/// @return           share removed
/// @throws           invalid_input
/// @accuracy         exact for perfect mixing
/// @source           Gage and Bidwell 1926
[[nodiscard]] inline proportion share_removed(double turnovers, proportion efficiency = fraction(1.0)) {
  constexpr std::string_view here = "tankwright::life::share_removed";
  core::check(here, turnovers_limits, turnovers);
  core::check(here, removal_efficiency_limits, efficiency.value());
  return fraction(-std::expm1(-efficiency.value() * turnovers));
}

/// How many turnovers it takes to remove a share.
///
///   n = -ln(1 - p) / eta
///
/// @param removed    share to remove, 0 <= p < 1
/// @param efficiency share removed in one pass, more than 0 to 1
/// @return           turnovers
/// @throws           invalid_input
/// @accuracy         exact for perfect mixing
/// @source           Gage and Bidwell 1926
[[nodiscard]] inline double turnovers_for(proportion removed, proportion efficiency = fraction(1.0)) {
  constexpr std::string_view here = "tankwright::life::turnovers_for";
  core::check(here, share_removed_limits, removed.value());
  core::check(here, {"efficiency", "", above_zero_to_one}, efficiency.value());
  return -std::log1p(-removed.value()) / efficiency.value();
}

/// How long clearing takes.
struct clearing {
  duration time;
  double turnovers;  ///< of all loops, in that time
  tankwright::caution caution;
};

/// How long the loops need to take a share of a dose or a spill out of the water.
///
///   t = -ln(1 - p) V / sum(eta Q)
///
/// @param tank    net volume > 0; the loops together must remove something
/// @param removed share to remove, 0 <= p < 1
/// @return        time [s] and the turnovers in it, with the caution
/// @throws        invalid_input (names the loop)
/// @accuracy      exact for perfect mixing
/// @source        Gage and Bidwell 1926
[[nodiscard]] inline clearing time_to_remove(const circulation& tank, proportion removed) {
  constexpr std::string_view here = "tankwright::life::time_to_remove";
  core::check(here, net_volume_limits, in_litres(tank.net));
  core::check(here, share_removed_limits, removed.value());
  const double treated = detail::some_treated_flow(here, tank.loops);
  const duration time = duration::from_value(-std::log1p(-removed.value()) * tank.net->value() / treated);
  return {time, turnover_rate(tank).value() * time.value(), perfect_mixing_caution};
}

inline constexpr limits production_limits{"production", "g/d", not_negative};
inline constexpr limits time_limits{"time", "h", not_negative};

/// A substance that comes in steadily and goes out through the loops.
struct production {
  required<volume> net;              ///< net volume of water
  mass_flow made = {};               ///< added per time
  mass_concentration at_start = {};  ///< in the water at time zero
  std::span<const loop> loops = {};  ///< none is possible: the concentration then only rises
};

/// The concentration after some time of steady production and removal.
///
///   C = C0 exp(-k t) + (P/V) (1 - exp(-k t))/k,   k = sum(eta Q)/V
///
/// @param tank   net volume > 0, production >= 0, concentration at the start >= 0, loops
/// @param time   t >= 0
/// @return       concentration [kg/m^3]
/// @throws       invalid_input (names the loop)
/// @accuracy     exact for perfect mixing
/// @source       mass balance; Losordo and Hobbs 2000
[[nodiscard]] inline mass_concentration concentration_after(const production& tank, duration time) {
  constexpr std::string_view here = "tankwright::life::concentration_after";
  const double v = tank.net->value();
  core::check(here, net_volume_limits, in_litres(tank.net));
  core::check(here, production_limits, in_grams_per_day(tank.made));
  core::check(here, concentration_limits, in_milligrams_per_litre(tank.at_start));
  core::check(here, time_limits, in_hours(time));
  const double k = detail::treated_flow(here, tank.loops) / v;
  return mass_concentration::from_value(tank.at_start.value() * std::exp(-k * time.value()) +
                                        tank.made.value() / v * detail::decaying_time(k, time.value()));
}

/// Where the concentration settles under steady production. It is never zero.
///
///   C = P / sum(eta Q)
///
/// @param made   production P >= 0
/// @param loops  the loops; together they must remove something
/// @return       concentration [kg/m^3]
/// @throws       invalid_input (names the loop)
/// @accuracy     exact for perfect mixing
/// @source       mass balance; Losordo and Hobbs 2000
[[nodiscard]] inline mass_concentration steady_concentration(mass_flow made, std::span<const loop> loops) {
  constexpr std::string_view here = "tankwright::life::steady_concentration";
  core::check(here, production_limits, in_grams_per_day(made));
  return mass_concentration::from_value(made.value() / detail::some_treated_flow(here, loops));
}

/// What a flow must carry away.
struct removal_task {
  required<mass_flow> made;
  required<mass_concentration> hold_at;     ///< the level to hold in the tank
  proportion efficiency = fraction(1.0);    ///< share removed in one pass
};

/// The flow through a treatment that holds a steady production at a level (no water change).
///
///   Q = P / (eta C)
///
/// @param task   production >= 0, level > 0, efficiency more than 0 to 1
/// @return       flow [m^3/s]
/// @throws       invalid_input
/// @accuracy     exact for perfect mixing
/// @source       mass balance; Losordo and Hobbs 2000
[[nodiscard]] inline flow_rate flow_to_hold(const removal_task& task) {
  constexpr std::string_view here = "tankwright::life::flow_to_hold";
  core::check(here, production_limits, in_grams_per_day(task.made));
  core::check(here, {"level to hold", "mg/L", positive}, in_milligrams_per_litre(task.hold_at));
  core::check(here, {"efficiency", "", above_zero_to_one}, task.efficiency.value());
  return flow_rate::from_value(task.made->value() / (task.efficiency.value() * task.hold_at->value()));
}

/// Water changes or doses at equal intervals, with steady production between them.
struct water_change_routine {
  required<volume> net;
  required<mass_flow> made;
  required<duration> every;
  required<proportion> part;                ///< share of the water changed each time
  mass_concentration in_new_water = {};
  mass dose = {};                           ///< added at once, right after each change
  std::span<const loop> loops = {};         ///< at work between the changes; none is possible
};

/// The saw-tooth that a routine settles into.
struct saw_tooth {
  mass_concentration before_change;
  mass_concentration after_change;  ///< and after the dose
};

/// Where a routine of water changes or doses settles, with loops at work between them or without.
///
///   before = after exp(-k T) + (P/V)(1 - exp(-k T))/k,   after = (1 - f) before + f C_new + m/V
///   (without loops and doses: before = C_new + P T/(V f))
///
/// @param routine net volume > 0; production, dose, concentration in new water >= 0; interval > 0; part 0 to 1; loops
/// @return        concentrations just before and just after a change [kg/m^3]
/// @throws        invalid_input; also when nothing is ever taken out, because the level then never settles
/// @accuracy      exact for perfect mixing
/// @source        mass balance
[[nodiscard]] inline saw_tooth steady_saw_tooth(const water_change_routine& routine) {
  constexpr std::string_view here = "tankwright::life::steady_saw_tooth";
  const double f = routine.part->value();
  const double v = routine.net->value();
  const double t = routine.every->value();
  core::check(here, net_volume_limits, in_litres(routine.net));
  core::check(here, production_limits, in_grams_per_day(routine.made));
  core::check(here, {"interval", "d", positive}, in_days(routine.every));
  core::check(here, {"part changed", "", zero_to_one}, f);
  core::check(here, {"concentration in the new water", "mg/L", not_negative},
                in_milligrams_per_litre(routine.in_new_water));
  core::check(here, {"dose", "g", not_negative}, in_grams(routine.dose));
  const double k = detail::treated_flow(here, routine.loops) / v;
  const double lost = 1.0 - (1.0 - f) * std::exp(-k * t);  // share taken out in one round
  if (!(lost > 0.0)) {
    core::fail<invalid_input>(here, "part changed", f, "",
                                "and no loop that removes anything: the level rises for ever");
  }
  const double gained = routine.made->value() / v * detail::decaying_time(k, t);
  const double brought = f * routine.in_new_water.value() + routine.dose.value() / v;
  const double before = (brought * std::exp(-k * t) + gained) / lost;
  return {mass_concentration::from_value(before), mass_concentration::from_value((1.0 - f) * before + brought)};
}

}  // namespace tankwright::life
