// SPDX-License-Identifier: BSL-1.0
/// @file
/// Do the drains take the flow from the start? A siphon is full of air when the water comes: until it has swept the air
/// out it carries what a pipe with air in its middle carries, and the rest stands in the display.
#pragma once

#include <algorithm>
#include <tankwright/plumbing/drain.hpp>
#include <vector>

namespace tankwright::plumbing {

/// How long a drain that runs full takes to sweep its air out; common practice, no source.
inline constexpr duration usual_priming = seconds(30.0);

/// What a drain carries before it runs full.
///
///   runs_full: J* = 0.3 in the middle, 20 % either way; at most a vented stack one third full, at most what its top
///   lets in;   others: as always
///
/// @param drain pipe, drop and inlet head [m]; whether it is set up to run full
/// @param water density and viscosity
/// @return      flow [m^3/s] with its band
/// @throws      invalid_input, out_of_range (names the drain by the label of its pipe)
/// @accuracy    the band; the limits of the modes are soft
/// @source      Hills 1983; Wyly and Eaton 1961; EN 12056-3
[[nodiscard]] inline estimate<flow_rate> carried_while_priming(const drain& drain, const water::liquid& water) {
  const drain_answer d = drain_mode_for(drain, flow_rate{}, water);
  if (!drain.runs_full) return d.carries;
  const flow_rate most = std::max(d.self_venting, d.stack);
  const flow_rate central = std::min({d.self_venting, d.inlet.central, d.full.central});
  return {std::min({0.8 * d.self_venting, d.inlet.low, d.full.low, central}), central,
          std::max(central, std::min({most, d.inlet.high, d.full.high})),
          "how a pipe carries water with air in its middle"};
}

/// Whether a flow sweeps the air out of a drain: from J* = 1 on.
///
///   J* = 4 Q / (pi D^2 sqrt(g D)) >= 1
///
/// @param drain a drain that is to run full
/// @param flow  Q [m^3/s] >= 0 that comes to it
/// @return      whether it primes by itself; below, it may go on gulping
/// @throws      invalid_input
/// @accuracy    the limit is soft, about 20 %
/// @source      Hills 1983
[[nodiscard]] inline bool primes_itself(const drain& drain, flow_rate flow) {
  detail::check_drain("tankwright::plumbing::primes_itself", drain);
  return drain_number(drain.pipe.bore, flow) >= full_drain_number;
}

/// What the drains hold up until they run full.
struct priming_answer {
  estimate<flow_rate> taken;  ///< by all drains meanwhile
  estimate<volume> held_up;   ///< above what stands there while they run
  tankwright::caution caution = drain_caution;
};

inline constexpr limits priming_time_limits{"priming", "s", {0.0, 86400.0}};

/// What stands in box and display until the drains run full.
///
///   V = max(0, Q - sum of what they carry meanwhile) t
///
/// @param drains the drains; none hold up the whole flow
/// @param flow   Q [m^3/s] >= 0 of all returns, with its band
/// @param water  density and viscosity
/// @param time   t [s] >= 0, until they run full
/// @return       flow taken [m^3/s] and volume held up [m^3] with their bands
/// @throws       invalid_input, out_of_range (names the drain by the label of its pipe)
/// @accuracy     the band; the time is common practice
/// @source       Hills 1983; Wyly and Eaton 1961
[[nodiscard]] inline priming_answer held_up_while_priming(const std::vector<drain>& drains,
                                                          const estimate<flow_rate>& flow, const water::liquid& water,
                                                          duration time = usual_priming) {
  constexpr std::string_view here = "tankwright::plumbing::held_up_while_priming";
  core::check(here, priming_time_limits, time.value());
  water::kernel::check_flowing(here, water);
  for (const flow_rate& q : {flow.low, flow.central, flow.high}) core::check(here, drain_flow_limits, q.value());
  flow_rate low{}, central{}, high{};
  for (const drain& d : drains) {
    const auto one = carried_while_priming(d, water);
    low += one.low;
    central += one.central;
    high += one.high;
  }
  constexpr std::string_view why = "the flow, and how a pipe carries water with air in its middle";
  const auto held = [&](flow_rate comes, flow_rate goes) { return std::max(flow_rate{}, comes - goes) * time; };
  return {.taken = {low, central, high, "how a pipe carries water with air in its middle"},
          .held_up = {held(flow.low, high), held(flow.central, central), held(flow.high, low), why}};
}

}  // namespace tankwright::plumbing
