// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cases/hold_case.hpp>
#include <tankwright/decisions/first_fill/leak.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/room/evaporation.hpp>
#include <tankwright/text/quantity.hpp>

namespace tankwright::decisions {

namespace detail {

inline void measure_leak_next(finding& f, const leak_test_case& c) {
  if (!c.has_pan()) {
    f.next("float a pan with the same water in the tank and read both: evaporation then drops out");
  }
  if (!c.test.readings.front().water) f.next("read the water's temperature with every level");
}

inline void show_criterion(finding& f, const leak_test_case& c) {
  if (!c.result.against_criterion) return;
  const auto& against = *c.result.against_criterion;
  const std::string name{c.test.criterion->name};
  f.detail("criterion", "a reservoir may lose, by " + name, against.allowed);
  f.detail("criterion_room", "left of that beyond what may still hide", against.room);
  if (against.missing.value() > 0.0) f.detail("criterion_missing", "still to be read for " + name, against.missing);
  f.source(c.test.criterion->source);
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_leak(const situation& s, answers& out) {
  if (!s.plan().hold || !s.plan().hold->times.given()) return;
  finding& f = out.ask(leak);
  const leak_test_case c = case_of(plan::inputs_of(*s.plan().hold));
  const vessel::leak_test_result& r = c.result;
  if (r.answer == vessel::leak_answer::undecided) {
    f.unknown("go on reading: one that matters may still hide in these readings");
  } else if (r.answer == vessel::leak_answer::contradictory) {
    f.unknown("find out why the level falls by less than evaporation alone would lower it");
    f.note = "Somebody topped it up, the gauge counts the other way, or there is less evaporation than given.";
  }
  f.answer("leak", "leak", r.leak);
  f.limit("matters", "leak that matters", r.leak_that_matters);
  f.margin("unproven", "short of a proven leak by", -r.leak.low, flow_rate{});
  f.detail("fall", c.has_pan() ? "fall of the level beyond the pan's" : "fall of the level", r.fall);
  if (!c.has_pan()) f.detail("evaporation", "of it evaporation", r.evaporation);
  f.detail("chance_tight", "chance of such readings from a tight tank", r.chance_without_leak);
  f.detail("chance_shown", "chance that this test proves a leak that matters", r.chance_to_show);
  f.detail("detectable", "smallest leak that this test proves", r.minimum_detectable_leak);
  f.detail("lasted", "days of readings", r.lasted);
  for (const vessel::reader_offset& one : r.readers)
    f.detail("reads_higher", "reads higher by", one.higher, one.reader);
  detail::show_criterion(f, c);
  if (!c.has_pan() && c.test.evaporation) f.source(room::about(room::evaporation_law::shah).source);
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "It leaks: " + said(s, r.leak.central) + ", at the least " + said(s, r.leak.low) +
                "; find the place before it is filled further";
  }
  if (f.verdict != verdict::holds) detail::measure_leak_next(f, c);
}

}  // namespace tankwright::decisions
