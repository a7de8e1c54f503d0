// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the floor stay dry when something else fails along with the power? Each failure by itself, judged in itself.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include <tankwright/plumbing/power_cut.hpp>

namespace tankwright::plumbing {

/// What fails along with the power.
enum class power_cut_failure {
  none,                  ///< check valves stuck open, siphon breaks working: the power cut as it is always judged
  siphon_break_blocked,  ///< one siphon break is blocked
  all_breaks_blocked,
  check_valve_leaks,  ///< they shut but for a leak
  check_valve_holds,  ///< no failure: what it would be if they could be trusted
  top_off_stuck,      ///< the top-off has put its reservoir into the sump before the power fails
};

/// A power cut with one failure.
struct power_cut_failure_case {
  std::string label;  ///< of the part that fails; empty where it is all of them
  power_cut_failure failure;
  estimate<length> margin;  ///< of the worst moment, up to the rim
  worst_moment worst;
  estimate<volume> on_the_floor;         ///< what runs over the rim
  std::optional<duration> floods_after;  ///< from when on, in the worst credible case
};

namespace detail {

[[nodiscard]] inline power_cut_failure_case failed(const power_cut_input& state, power_cut_failure failure,
                                                   std::string label = {}) {
  power_cut_answer cut = power_cut(state);
  return {std::move(label), failure, cut.margin, std::move(cut.worst), cut.on_the_floor, cut.floods_after};
}

}  // namespace detail

/// A power cut with each siphon break blocked in turn, then with all of them where there are several.
///
///   `power_cut` of the system in that state
///
/// @param in as for `power_cut`
/// @return   one case a break; none without breaks, or where `in` says already that they are blocked
/// @throws   invalid_input (names the element by its label)
/// @accuracy as `power_cut`
/// @source   as `power_cut`
[[nodiscard]] inline std::vector<power_cut_failure_case> power_cut_breaks_blocked(const power_cut_input& in) {
  detail::check_power_cut("tankwright::plumbing::power_cut_breaks_blocked", in);
  std::vector<power_cut_failure_case> cases;
  if (in.breaks_blocked) return cases;
  power_cut_input state = in;
  for (std::size_t i = 0; i < in.returns.size(); ++i) {
    if (!in.returns[i].break_below_edge) continue;
    state.returns[i].break_below_edge.reset();
    cases.push_back(detail::failed(state, power_cut_failure::siphon_break_blocked, in.returns[i].label));
    state.returns[i].break_below_edge = in.returns[i].break_below_edge;
  }
  if (cases.size() > 1) {
    state.breaks_blocked = true;
    cases.push_back(detail::failed(state, power_cut_failure::all_breaks_blocked));
  }
  return cases;
}

/// A power cut with check valves that leak, and with check valves that hold.
///
///   `power_cut` of the system in that state
///
/// @param in as for `power_cut`
/// @return   two cases; none where there is no check valve
/// @throws   invalid_input (names the element by its label)
/// @accuracy as `power_cut`; how far a check valve leaks is common practice without a source
/// @source   as `power_cut`
[[nodiscard]] inline std::vector<power_cut_failure_case> power_cut_check_valves(const power_cut_input& in) {
  detail::check_power_cut("tankwright::plumbing::power_cut_check_valves", in);
  bool valves = false;
  for (const return_line& r : in.returns) valves = valves || r.check_valve;
  for (const shared_pipe& s : in.shared_pipes) valves = valves || s.check_valve;
  std::vector<power_cut_failure_case> cases;
  if (!valves) return cases;
  power_cut_input state = in;
  state.check_valves = check_valve_state::leak;
  cases.push_back(detail::failed(state, power_cut_failure::check_valve_leaks));
  state.check_valves = check_valve_state::hold;
  cases.push_back(detail::failed(state, power_cut_failure::check_valve_holds));
  return cases;
}

/// A power cut with each failure in turn: without one, each siphon break blocked, all of them, check valves leaking and
/// holding (where there are any), and the top-off stuck open (where its reservoir is given).
///
///   `power_cut` of the system in that state
///
/// @param in      as for `power_cut`; what its own fields say fails goes on top
/// @param top_off volume [m^3] >= 0 that a top-off can put in before somebody notices; zero leaves the case out
/// @return        one case a failure, none first
/// @throws        invalid_input (names the element by its label)
/// @accuracy      as `power_cut`; how far a check valve leaks is common practice without a source
/// @source        as `power_cut`
[[nodiscard]] inline std::vector<power_cut_failure_case> power_cut_failures(const power_cut_input& in,
                                                                            volume top_off = litres(0.0)) {
  constexpr std::string_view here = "tankwright::plumbing::power_cut_failures";
  static constexpr limits top_off_limits{"top_off", "m3", {0.0, 1e4}};
  core::check(here, top_off_limits, top_off.value());
  std::vector<power_cut_failure_case> cases;
  cases.push_back(detail::failed(in, power_cut_failure::none));
  for (auto& one : power_cut_breaks_blocked(in)) cases.push_back(std::move(one));
  for (auto& one : power_cut_check_valves(in)) cases.push_back(std::move(one));
  if (top_off.value() > 0.0) {
    power_cut_input state = in;
    state.topped_up = in.topped_up + top_off;
    cases.push_back(detail::failed(state, power_cut_failure::top_off_stuck));
  }
  return cases;
}

}  // namespace tankwright::plumbing
