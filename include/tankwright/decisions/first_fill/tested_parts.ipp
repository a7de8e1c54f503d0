// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cases/hold_case.hpp>
#include <tankwright/decisions/first_fill/tested_parts.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/text/quantity.hpp>
#include <tankwright/vessel/leak_parts.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_tested_parts(const situation& s, answers& out) {
  if (!s.plan().hold || s.plan().hold->part.empty() || !s.plan().hold->times.given()) return;
  finding& f = out.ask(tested_parts);
  const leak_test_case first = case_of(plan::inputs_of(*s.plan().hold));
  std::vector<vessel::leak_test> tests{first.test};
  tests.front().label = "display";
  for (const plan::tested_part& one : s.plan().hold->part) {
    vessel::leak_test test = first.test;
    test.label = one.label;
    test.surface = *one.surface;
    test.depth = *one.depth;
    test.criterion.reset();
    for (std::size_t i = 0; i < test.readings.size(); ++i) {
      test.readings[i].level = one.levels[i];
      if (one.pan.given()) {
        test.readings[i].pan = one.pan[i];
      } else if (first.has_pan()) {
        // The pan of the display stands in the same air: what it loses, this loses.
        test.readings[i].pan = first.test.readings[i].pan;
      }
    }
    tests.push_back(std::move(test));
  }
  const auto all = vessel::read_leak_tests(tests);
  for (const vessel::part_leak& one : all.parts) {
    f.answer("leak", "leaks", one.result.leak, one.label);
    f.detail("chance_tight", "chance of such readings where all are tight", one.chance_without_leak, one.label);
    f.margin("unproven", "short of a proven leak by", -one.result.leak.low, flow_rate{}, one.label);
  }
  f.answer("total", "all of them leak", all.total);
  f.limit("matters", "leak that matters", tests.front().leak_that_matters);
  f.note = "The limits hold for all parts together, so each is wider than by itself.";
  if (f.verdict == verdict::does_not_hold) {
    const number& worst = *f.margin();
    f.happens = "It is " + worst.place + " that leaks, at the least " +
                text::in(flow_rate::from_value(-worst.value.central), "L/d") + ".";
  } else if (all.answer == vessel::leak_answer::undecided) {
    f.unknown("go on reading: a leak that matters may still hide in these readings");
  }
}

}  // namespace tankwright::decisions
