// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/pipe_velocity.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_pipe_velocity(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().in.has_circuit()) return;
  finding& f = out.ask(pipe_velocity);
  const circuit_band& solved = s.plumbing().solved();
  const auto speed = [](const auto& run) { return std::fabs(run.velocity.value()); };
  const auto& runs = solved.central.runs;
  const auto fastest =
      std::max_element(runs.begin(), runs.end(), [&](const auto& a, const auto& b) { return speed(a) < speed(b); });
  const auto place = static_cast<std::size_t>(fastest - runs.begin());
  const auto fast = solved.band([&](const auto& at) { return velocity::from_value(speed(at.runs[place])); });
  f.answer("fastest", "fastest, in " + fastest->label, fast, fastest->label);
  f.limit("recommended", "recommended at most", plumbing::recommended_velocity);
  f.margin("left", "slower than that by",
           map_falling(fast, [](velocity v) { return plumbing::recommended_velocity - v; }), velocity{});
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "In the " + fastest->label + " the water runs at " + said(s, fast.central) +
                ", where it gets loud and hard on the pipe";
  }
  if (fastest->faster_than_recommended) f.note = "Faster water is noisy and hard on the pipe: take a size larger.";
  f.source(plumbing::todini_pilati_1988);
}

}  // namespace tankwright::decisions
