// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/jet_reach.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/plumbing/submerged_jet.hpp>

namespace tankwright::decisions {

namespace detail {

/// A speed that is felt as a current: what `reach` is given for. Our choice, no source.
inline constexpr velocity felt_current = metres_per_second(0.10);

/// The finest grain of the beds that say so.
[[nodiscard]] inline std::optional<length> finest_grain(const plan::build& build) {
  std::optional<length> finest;
  if (!build.vessel) return finest;
  for (const plan::sand& bed : build.vessel->sand) {
    if (bed.grain && (!finest || *bed.grain < *finest)) finest = *bed.grain;
  }
  return finest;
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_jet_reach(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().in.has_circuit()) return;
  const plumbing_case& c = s.plumbing();
  if (std::none_of(c.in.returns.begin(), c.in.returns.end(), [](const auto& r) { return r.to_sand || r.to_wall; })) {
    return;
  }
  finding& f = out.ask(jet_reach);
  const circuit_band& solved = c.solved();
  const auto grain = detail::finest_grain(s.plan());
  bool sand = false;
  for (const plan::return_outlet& one : c.in.returns) {
    if (!one.to_sand && !one.to_wall) continue;
    const plumbing::pipe_bore bore = one.nozzle ? plumbing::pipe_bore{*one.nozzle} : one.pipe.bore.get();
    const auto flow = solved.band([&](const auto& at) { return std::max(flow_rate{}, at.outlet(one.label).flow); });
    const auto jet = [&](flow_rate q) { return plumbing::submerged_jet{.bore = bore, .flow = q}; };
    const auto speed_at = [&](length x) {
      return estimate<velocity>{plumbing::jet_speed_at(jet(flow.low), x).low,
                                plumbing::jet_speed_at(jet(flow.central), x).central,
                                plumbing::jet_speed_at(jet(flow.high), x).high, plumbing::jet_decay.reason};
    };
    f.answer(
        "reach", "reaches with 0.1 m/s",
        estimate<length>{plumbing::jet_reaches(jet(flow.low), detail::felt_current).low,
                         plumbing::jet_reaches(jet(flow.central), detail::felt_current).central,
                         plumbing::jet_reaches(jet(flow.high), detail::felt_current).high, plumbing::jet_decay.reason},
        one.label);
    if (one.to_wall) f.detail("at_wall", "speed at the opposite wall", speed_at(*one.to_wall), one.label);
    if (!one.to_sand) continue;
    sand = true;
    const auto at_sand = speed_at(*one.to_sand);
    f.detail("at_sand", "speed at the sand", at_sand, one.label);
    if (!grain) continue;
    const auto moves = plumbing::speed_that_moves({.size = *grain}, c.liquid);
    f.limit("moves", "speed that moves the finest sand", moves, one.label);
    f.margin("left", "slower than that by", moves - at_sand, velocity{}, one.label);
  }
  f.note = "For screening: a jet along a wall or the surface goes farther, rock turns it, and animals loosen the sand.";
  f.source(plumbing::albertson_1950);
  if (sand && grain) f.source(plumbing::soulsby_whitehouse_1997);
  if (sand && !grain) f.unknown("give the grain of the sand");
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "The jet of " + f.margin()->place + " digs the sand away where it meets it.";
  }
}

}  // namespace tankwright::decisions
