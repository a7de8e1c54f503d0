// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <string>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/first_fill/hose_fill.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/vessel/shape.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_hose_fill(const situation& s, answers& out) {
  if (!s.plan().vessel) return;
  finding& f = out.ask(hose_fill);
  const vessel_case& c = s.vessel();
  const volume full = vessel::filled_volume(c.in.display, c.in.water_level);
  f.answer("full", "the meter at the water level, from the empty display", full);
  const plan::value<flow_rate>& hose = s.plan().vessel->hose;
  if (hose) f.answer("hours", "the hose runs for", full / *hose);
  for (std::size_t i = 0; i < c.in.stages.size(); ++i) {
    const std::string stage = "stage " + std::to_string(i + 1);
    f.detail("level", "water at", c.in.stages[i], stage);
    f.detail("metered", "the meter has counted", vessel::filled_volume(c.in.display, c.in.stages[i]), stage);
    if (hose) f.detail("after", "after", vessel::filled_volume(c.in.display, c.in.stages[i]) / *hose, stage);
  }
  f.detail("to_rim", "from the water level to the rim there is room for", c.in.display.capacity() - full);
  if (hose)
    f.detail("runs_over", "left alone at the water level it runs over after", (c.in.display.capacity() - full) / *hose);
  f.note =
      "Without sand, rock and equipment. A meter that has counted more than this for its level has found a leak, or "
      "a display that is not as long or as wide as the plan says.";
}

}  // namespace tankwright::decisions
