// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much does each return really get? Pumps, runs of pipe and outlets in any graph: the flow of every run, the head
/// of every junction, and what has gone wrong (a pump that lifts nothing, a branch that runs backwards).
#pragma once

#include <string_view>
#include <tankwright/plumbing/circuit_parts.hpp>
#include <tankwright/plumbing/detail/circuit_equations.hpp>
#include <tankwright/plumbing/friction.hpp>

namespace tankwright::plumbing {

inline constexpr citation todini_pilati_1988{
    "Todini E., Pilati S.", 1988, "A gradient algorithm for the analysis of pipe networks",
    "Computer Applications in Water Supply, vol. 1, Research Studies Press, pp. 1-20", standing::secondary};

/// Steady flow in a circuit of pumps, runs and outlets, whatever its shape.
///
///   every run: H_from - H_to = (f L/D + sum K) V|V|/2g;   every pump: H_to - H_from = H(Q);
///   every junction: what flows in flows out.   Newton's method on all of it, with exact derivatives.
///   No water passes a check valve backwards beyond its leak, nor enters an open outlet. Backwards through a pump
///   without one: H_to - H_from = s^2 H(0) + c H_b (Q/Q_b)^2 with its best point H_b, Q_b and c of `idle_pump_losses`
///
/// A dead end has its head and no flow, a part that nothing joins to a source or outlet has flows and no heads; neither
/// is an error.
///
/// @param plan   sources, pumps, runs and outlets, joined by their labels
/// @param water  density and viscosity in the pipes
/// @param which  which end of the bands of the loss coefficients to take
/// @param policy `extrapolate` to go past Re 1e8 or e/D 0.05
/// @return       flow, velocity and loss of each run, head of each junction, flow and state of each pump and outlet,
/// and
///               what all outlets deliver
/// @throws       invalid_input, out_of_range (name the culprit by its label); no_convergence (with the state)
/// @accuracy     1e-10 of the total flow against the equations; in the world 5 to 10 %, mostly by the loss coefficients
/// and
///               the pump's curve
/// @source       Todini and Pilati 1988; Colebrook 1939
[[nodiscard]] inline circuit_solution operating_point(const circuit& plan, const water::liquid& water,
                                                      losses which = losses::central,
                                                      range_policy policy = range_policy::published) {
  detail::circuit_equations built{"tankwright::plumbing::operating_point", plan, water, which, policy};
  built.solve();
  return built.solution();
}

/// Flow through one run with the band that the loss coefficients give it.
///
///   the flow with all K at the high, the central and the low end of their bands
///
/// @param plan   as for `operating_point`
/// @param water  density and viscosity in the pipes
/// @param run    label of the run
/// @param policy `extrapolate` to go past Re 1e8 or e/D 0.05
/// @return       flow [m^3/s] with its band
/// @throws       invalid_input, out_of_range (name the culprit by its label); no_convergence (with the state)
/// @accuracy     the band covers the loss coefficients, all erring the same way, and not the pump's curve
/// @source       as `operating_point`
[[nodiscard]] inline estimate<flow_rate> flow_with_band(const circuit& plan, const water::liquid& water,
                                                        std::string_view run,
                                                        range_policy policy = range_policy::published) {
  const flow_rate least = operating_point(plan, water, losses::most, policy).run(run).flow;
  const flow_rate central = operating_point(plan, water, losses::central, policy).run(run).flow;
  const flow_rate most = operating_point(plan, water, losses::least, policy).run(run).flow;
  // A branch can lose where the others gain.
  const auto smaller = [](flow_rate a, flow_rate b) { return a < b ? a : b; };
  const auto larger = [](flow_rate a, flow_rate b) { return a < b ? b : a; };
  return {smaller(least, smaller(central, most)), central, larger(most, larger(central, least)),
          "loss coefficients at the ends of their bands"};
}

}  // namespace tankwright::plumbing
