// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/salting/doses.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_doses(const situation& s, answers& out) {
  if (!s.plan().water || s.plan().water->dose.empty()) return;
  finding& f = out.ask(doses);
  const auto water = s.state().all_water();
  if (!water) {
    const std::string& why = s.state().why_no_display;
    f.unknown(why.empty() ? "give the volume of all the water, or the display so that it can be computed" : why);
    return;
  }
  f.detail("water", "water that it goes into", *water);
  for (std::size_t i = 0; i < s.plan().water->dose.size(); ++i) {
    const plan::dose& one = s.plan().water->dose[i];
    const std::string name = one.label.empty() ? "dose " + std::to_string(i + 1) : one.label;
    const auto weighed = map_rising(*water, [&](volume v) { return mass{v * one.rise.get()}; });
    if (one.stock) {
      f.answer("amount", "measure of its solution",
               map_rising(weighed, [&](mass m) { return volume{m / one.stock.get()}; }), name);
    } else {
      f.answer("amount", "weigh of it", weighed, name);
    }
  }
  f.note =
      "Give the low figure first, where a test exists measure, and add the rest after it. Water that was changed "
      "since, "
      "and what rock and sand took up, are not counted.";
  f.next("read the water meter while filling: it narrows the dose as nothing else does");
}

}  // namespace tankwright::decisions
