// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is the circulation enough to clear the water, and how long does it take after a dose or a spill? Turnover and
/// removal by one or several treatment loops. What production, water changes and doses come to with them is in
/// `water/exchange.hpp`, whose `cleared` is `flow_cleared` of the loops.
#pragma once

#include <cmath>
#include <optional>
#include <span>
#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/ranges.hpp>
#include <tankwright/water/exchange.hpp>

namespace tankwright::life {

inline constexpr citation gage_bidwell_1926{"Gage S., Bidwell H.F.", 1926,
                                            "The law of purification of swimming pools by consecutive dilution",
                                            "as treated by Simmonds et al. 2021, Water 13:2350", standing::secondary};
inline constexpr citation losordo_hobbs_2000{
    "Losordo T.M., Hobbs A.O.", 2000,
    "Using computer spreadsheets for water flow and biofilter sizing in recirculating aquaculture production systems",
    "Aquacultural Engineering 23:95-102"};

inline constexpr caution perfect_mixing_caution{
    "Assumes a perfectly mixed tank, the net volume of water and the measured, not the rated, flow. Dead corners "
    "behind rock clear more slowly."};

inline constexpr limits loop_flow_limits{"flow", "L/h", {0.0, 1e10}};
inline constexpr limits removal_efficiency_limits{"efficiency", "", zero_to_one};
inline constexpr limits some_efficiency_limits{"efficiency", "", {1e-6, 1.0}};
inline constexpr limits share_removed_limits{"share removed", "", zero_to_below_one};
inline constexpr limits turnovers_limits{"turnovers", "", {0.0, 1e12}};
inline constexpr limits kept_level_limits{"level to stay at", "mg/L", {1e-8, 1e7}};

/// Water taken from the tank, treated, and given back.
struct loop {
  std::string_view label = "loop";
  required<flow_rate> flow;               ///< measured, not rated
  proportion efficiency = fraction(1.0);  ///< share removed in one pass
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

}  // namespace detail

/// Water that the loops together free of a substance in a time.
///
///   sum(eta Q)
///
/// @param loops  flow 0 to 1e10 L/h and efficiency 0 to 1, each; none clear nothing
/// @return       flow [m^3/s]
/// @throws       invalid_input (names the loop)
/// @accuracy     exact for perfect mixing
/// @source       Gage and Bidwell 1926
[[nodiscard]] inline flow_rate flow_cleared(std::span<const loop> loops) {
  return flow_rate::from_value(detail::treated_flow("tankwright::life::flow_cleared", loops));
}

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
/// @param turnovers  [1] n >= 0
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
/// @return           [1] turnovers
/// @throws           invalid_input
/// @accuracy         exact for perfect mixing
/// @source           Gage and Bidwell 1926
[[nodiscard]] inline double turnovers_for(proportion removed, proportion efficiency = fraction(1.0)) {
  constexpr std::string_view here = "tankwright::life::turnovers_for";
  core::check(here, share_removed_limits, removed.value());
  core::check(here, some_efficiency_limits, efficiency.value());
  return -std::log1p(-removed.value()) / efficiency.value();
}

/// How long clearing takes.
struct clearing {
  std::optional<duration> time;  ///< empty where the loops take nothing out: it never clears
  double turnovers;              ///< [1] of all loops, in that time
  tankwright::caution caution;
};

/// How long the loops need to take a share of a dose or a spill out of the water.
///
///   t = -ln(1 - p) V / sum(eta Q)
///
/// @param tank    net volume 1e-3 L to 1e10 L; loops with flow 0 to 1e10 L/h and efficiency 0 to 1
/// @param removed share to remove, 0 <= p < 1
/// @return        time [s] and the turnovers in it, with the caution; no time where nothing is removed
/// @throws        invalid_input (names the loop)
/// @accuracy      exact for perfect mixing
/// @source        Gage and Bidwell 1926
[[nodiscard]] inline clearing time_to_remove(const circulation& tank, proportion removed) {
  constexpr std::string_view here = "tankwright::life::time_to_remove";
  core::check(here, net_volume_limits, in_litres(tank.net));
  core::check(here, share_removed_limits, removed.value());
  const double treated = detail::treated_flow(here, tank.loops);
  const double time = -std::log1p(-removed.value()) * tank.net->value() / treated;
  if (!(time <= core::vast)) return {std::nullopt, 0.0, perfect_mixing_caution};  // longer than anything lasts
  return {seconds(time), turnover_rate(tank).value() * time, perfect_mixing_caution};
}

/// What a flow must carry away.
struct removal_task {
  required<mass_flow> made;
  required<mass_concentration> level;     ///< to stay at in the tank
  proportion efficiency = fraction(1.0);  ///< share removed in one pass
};

/// The flow through a treatment that keeps a steady production at a level (no water change).
///
///   Q = P / (eta C)
///
/// @param task   production >= 0, level > 0, efficiency more than 0 to 1
/// @return       flow [m^3/s]
/// @throws       invalid_input
/// @accuracy     exact for perfect mixing
/// @source       mass balance; Losordo and Hobbs 2000
[[nodiscard]] inline flow_rate treatment_flow_for(const removal_task& task) {
  constexpr std::string_view here = "tankwright::life::treatment_flow_for";
  core::check(here, water::made_limits, in_grams_per_day(task.made));
  core::check(here, kept_level_limits, in_milligrams_per_litre(task.level));
  core::check(here, some_efficiency_limits, task.efficiency.value());
  return flow_rate::from_value(task.made->value() / (task.efficiency.value() * task.level->value()));
}

}  // namespace tankwright::life
