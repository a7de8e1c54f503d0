// SPDX-License-Identifier: BSL-1.0
/// @file
/// Which pump, which speed, which position of the valve gives the flow I want? Answers found by solving the circuit
/// again and again; where there is none, the answer says how far the circuit can go.
#pragma once

#include <cmath>
#include <optional>
#include <span>
#include <string>
#include <tankwright/numerics/root.hpp>
#include <tankwright/plumbing/circuit.hpp>
#include <tankwright/plumbing/fittings.hpp>
#include <vector>

namespace tankwright::plumbing {

/// A flow that one run should carry, in the direction it is written in.
struct wanted_flow {
  std::string run{};  ///< its label
  required<flow_rate> flow;
};

/// A speed of one pump that should give a flow.
struct wanted_speed {
  std::string pump{};  ///< its label
  wanted_flow through;
  speed_ratio fastest{1.0};
};

/// A place for a pump, and pumps to try there.
struct pump_choice {
  std::string pump{};  ///< label of the pump in the circuit whose place is to be filled; its speed is kept
  wanted_flow through;
  std::span<const pump_curve> candidates{};
};

struct valve_setting {
  std::optional<flow_coefficient> valve;  ///< none where the run gets less than wanted even wide open
  flow_rate wide_open;                    ///< what it gets without the valve
};

struct speed_setting {
  std::optional<speed_ratio> speed;  ///< none where the pump is too small even at its fastest
  flow_rate at_fastest;
  pump_state at_setting;  ///< of the pump; `past_end` means its curve ends before this duty
};

/// What a pump would do in the place.
struct ranked_pump {
  std::string label;
  flow_rate flow;  ///< through the run
  tankwright::head head;
  pump_state state;
  bool reaches;           ///< at least the wanted flow
  double share_of_curve;  ///< [1] its flow over the flow at the end of its curve: best between about 0.3 and 0.8
};

struct pump_ranking {
  std::vector<ranked_pump> pumps;  ///< best first
  tankwright::caution caution;
};

inline constexpr limits wanted_limits{"wanted flow", "m3/s", positive};
inline constexpr limits fastest_limits{"fastest speed", "", turning_speed_limits.possible};

namespace detail {

/// The position of the part with a label.
template <class Part>
[[nodiscard]] std::size_t position_of(std::string_view function, const std::vector<Part>& parts, std::string_view label,
                                      std::string_view what) {
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (parts[i].label == label) return i;
  }
  core::refuse_element(function, label, std::string{"is no "}.append(what).append(" of this circuit"));
}

}  // namespace detail

/// The position of a valve that gives a run its flow, as a Kv.
///
///   the Kv with Q_run(Kv) = Q
///
/// @param plan   as for `operating_point`; a valve that the run already has is taken as the one to set
/// @param water  density and viscosity in the pipes
/// @param wanted label of the run, and the flow it should get [m^3/s] > 0
/// @param policy `extrapolate` to go past e/D 0.05
/// @return       Kv of the valve, or none where even wide open is too little; and the flow wide open
/// @throws       invalid_input, out_of_range (name the culprit by its label); no_convergence (with the state)
/// @accuracy     1e-8 of the flow; a real valve is set by watching the flow, not by its Kv
/// @source       as `operating_point`
[[nodiscard]] inline valve_setting valve_for_flow(const circuit& plan, const water::liquid& water,
                                                  const wanted_flow& wanted,
                                                  range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::valve_for_flow";
  const double target = wanted.flow->value();
  core::check_element(here, wanted.run, wanted_limits, target);
  circuit open = plan;
  const std::size_t run = detail::position_of(here, open.runs, wanted.run, "run");
  (void)detail::numbers_of(here, open.runs[run], losses::central, policy);  // with the valve that it has
  open.runs[run].valve.reset();
  detail::circuit_equations built{here, open, water, losses::central, policy};
  const auto flow_with = [&](double k) {
    built.set_extra_loss(run, k);
    built.solve();
    return built.flow_of_run(run);
  };
  const double wide_open = flow_with(0.0);
  if (wide_open < target) return {std::nullopt, flow_rate::from_value(wide_open)};
  constexpr double greatest = positive_loss_limits.possible.high;
  double most = 1.0;
  while (flow_with(most) > target) {
    if (most == greatest) {
      core::fail<out_of_range>(here, wanted.run + ": flow", target, "m3/s", "is less than any valve lets through");
    }
    most = std::fmin(16.0 * most, greatest);
  }
  const double k =
      numerics::bracketed_root<double>(here, "loss coefficient", [&](double x) { return flow_with(x) - target; }, 0.0,
                                       most, {.absolute = 1e-9, .relative = 1e-10});
  const pipe_bore bore = open.runs[run].bore;
  // Wide open already gives just this: a valve without resistance.
  const double least = 1e-9;
  return {flow_coefficient_from_loss(loss_coefficient{k > least ? k : least}, bore), flow_rate::from_value(wide_open)};
}

/// The speed of a pump that gives a run its flow.
///
///   the s with Q_run(s) = Q
///
/// @param plan   as for `operating_point`
/// @param water  density and viscosity in the pipes
/// @param wanted label of the pump; label of the run and the flow it should get [m^3/s] > 0; fastest speed,
///               0.001 to 10
/// @param policy `extrapolate` to go past e/D 0.05
/// @return       speed over the speed the curve is given for, or none where even the fastest is too little
/// @throws       invalid_input, out_of_range (name the culprit by its label); no_convergence (with the state)
/// @accuracy     1e-8 of the speed for the curve as given; the affinity laws hold within some per cent
/// @source       as `operating_point`; affinity laws
[[nodiscard]] inline speed_setting speed_for_flow(const circuit& plan, const water::liquid& water,
                                                  const wanted_speed& wanted,
                                                  range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::speed_for_flow";
  const double target = wanted.through.flow->value();
  core::check_element(here, wanted.through.run, wanted_limits, target);
  core::check_element(here, wanted.pump, fastest_limits, wanted.fastest.value());
  const std::size_t pump = detail::position_of(here, plan.pumps, wanted.pump, "pump");
  const std::size_t run = detail::position_of(here, plan.runs, wanted.through.run, "run");
  detail::circuit_equations built{here, plan, water, losses::central, policy};
  const auto flow_at_speed = [&](double s) {
    built.set_speed(pump, s);
    built.solve();
    return built.flow_of_run(run);
  };
  const double most = flow_at_speed(wanted.fastest.value());
  if (most < target) return {std::nullopt, flow_rate::from_value(most), built.flow_of_pump(pump).state};
  const double slowest = 1e-3 * wanted.fastest.value();
  if (flow_at_speed(slowest) >= target) {
    core::refuse_element(here, wanted.through.run, "gets the wanted flow without this pump");
  }
  const double s = numerics::bracketed_root<double>(here, "speed", [&](double x) { return flow_at_speed(x) - target; },
                                                    slowest, wanted.fastest.value(), {.relative = 1e-10});
  (void)flow_at_speed(s);
  return {speed_ratio{s}, flow_rate::from_value(most), built.flow_of_pump(pump).state};
}

/// Pumps tried in one place of a circuit, the best first.
///
///   those that reach the wanted flow, the least excess first; then those that reach it past the end of their curve;
///   then those that fall short, the most flow first
///
/// @param plan   as for `operating_point`
/// @param water  density and viscosity in the pipes
/// @param choice label of the pump whose place is to be filled; label of the run and the flow it should get [m^3/s] >
/// 0;
///               curves of the candidates
/// @param policy `extrapolate` to go past e/D 0.05
/// @return       each candidate with its flow, head and state; with a caution
/// @throws       invalid_input, out_of_range (name the culprit by its label); no_convergence (with the state)
/// @accuracy     as `operating_point`; makers' curves are often 5 to 10 % high
/// @source       as `operating_point`
[[nodiscard]] inline pump_ranking rank_pumps(const circuit& plan, const water::liquid& water, const pump_choice& choice,
                                             range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::rank_pumps";
  const double target = choice.through.flow->value();
  core::check_element(here, choice.through.run, wanted_limits, target);
  const std::size_t place = detail::position_of(here, plan.pumps, choice.pump, "pump");
  const std::size_t run = detail::position_of(here, plan.runs, choice.through.run, "run");
  if (choice.candidates.empty()) core::refuse_element(here, choice.pump, "has no candidates to choose from");
  detail::circuit_equations built{here, plan, water, losses::central, policy};
  pump_ranking ranking{{}, circuit_caution};
  ranking.pumps.reserve(choice.candidates.size());
  for (const pump_curve& candidate : choice.candidates) {
    built.set_curve(place, candidate);
    built.solve();
    const pump_flow pump = built.flow_of_pump(place);
    const double flow = built.flow_of_run(run);
    ranking.pumps.push_back({candidate.label(), flow_rate::from_value(flow), pump.head, pump.state, flow >= target,
                             pump.flow.value() / (candidate.end_flow().value() * plan.pumps[place].speed.value())});
  }
  // The list is short: each goes up past those that are worse.
  const auto group = [](const ranked_pump& p) { return !p.reaches ? 2 : p.state == pump_state::past_end ? 1 : 0; };
  const auto better = [&](const ranked_pump& a, const ranked_pump& b) {
    if (group(a) != group(b)) return group(a) < group(b);
    return a.reaches ? a.flow < b.flow : a.flow > b.flow;
  };
  for (std::size_t i = 1; i < ranking.pumps.size(); ++i) {
    for (std::size_t j = i; j > 0 && better(ranking.pumps[j], ranking.pumps[j - 1]); --j) {
      std::swap(ranking.pumps[j], ranking.pumps[j - 1]);
    }
  }
  return ranking;
}

}  // namespace tankwright::plumbing
