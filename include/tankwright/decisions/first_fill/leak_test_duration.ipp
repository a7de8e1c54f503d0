// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/first_fill/leak_test_duration.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/plan/inputs/hold_inputs.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_leak_test_duration(const situation& s, answers& out) {
  if (!s.plan().hold || !s.plan().hold->planned) return;
  finding& f = out.ask(leak_test_duration);
  const plan::hold_inputs in = plan::inputs_of(*s.plan().hold);
  const auto needed = vessel::required_duration(*in.planned, in.leak_that_matters);
  if (needed) f.answer("days", "days of readings", *needed);
  f.limit("leak", "leak to find", in.leak_that_matters);
  f.detail("step", "step of the gauge", in.planned->resolution.get());
  if (!needed) {
    f.note = "No number of days is enough: the evaporation is not known well enough to see so small a leak behind it.";
    f.unknown("float a pan with the same water in the tank and read both: evaporation then drops out");
    return;
  }
  if (const auto gauge = vessel::required_resolution(*in.planned, *needed * 0.5, in.leak_that_matters)) {
    f.detail("finer", "gauge that does it in half the time", *gauge);
  }
}

}  // namespace tankwright::decisions
