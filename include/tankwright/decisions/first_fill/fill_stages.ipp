// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/first_fill/fill_stages.hpp>
#include <tankwright/decisions/first_fill/panel_load.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/vessel/bulge.hpp>
#include <vector>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_fill_stages(const situation& s, answers& out) {
  if (!s.plan().vessel || s.plan().vessel->panel.empty()) return;
  finding& f = out.ask(fill_stages);
  const vessel_case& c = s.vessel();
  const mass_density density = c.density();
  struct panel_at_highest {
    const plan::wall_panel* wall;
    length behind;
    vessel::panel_result result;
  };
  const auto on = [&](const plan::wall_panel& wall, length behind) {
    return vessel::water_on(wall.panel, {.level = behind, .water_density = density});
  };
  std::vector<panel_at_highest> within;  // the theory; of the others vessel.panels says why not
  double most_used = 0.0;
  for (const plan::wall_panel& wall : c.in.panels) {
    try {
      const length highest = water_behind(wall, *std::max_element(c.in.stages.begin(), c.in.stages.end()));
      within.push_back({&wall, highest, on(wall, highest)});
      most_used = std::max(most_used, within.back().result.utilisation);
    } catch (const error&) {
      f.note += wall.panel.label + " is left out. ";
    }
  }
  f.answer("most_used", "most that a panel uses of its allowable stress", fraction(most_used));
  for (std::size_t i = 0; i < c.in.stages.size(); ++i) {
    const length level = c.in.stages[i];
    const std::string stage = "stage " + std::to_string(i + 1);
    f.detail("level", "water at", level, stage);
    f.detail("pressure", "pressure on the floor", vessel::hydrostatic_pressure(level, density), stage);
    for (const auto& [wall, highest, at_highest] : within) {
      const std::string place = stage + ", " + wall->panel.label;
      const length behind = water_behind(*wall, level);
      const vessel::panel_result r = behind == highest ? at_highest : on(*wall, behind);
      const auto seen = vessel::bulge_to_see({.expected = r.deflection});
      f.detail("stress", "stress", r.stress, place);
      if (seen.expected) f.detail("bulge", "bulge", *seen.expected, place);
      f.detail("stop", "stop where it bulges by", seen.stop_at, place);
    }
  }
  f.note +=
      "For the display's seawater; fresh water puts 2 to 3 % less on it. Stop at each stage and hold a straight edge "
      "to "
      "each panel; a bulge that no straight edge shows is left out.";
  f.source(vessel::timoshenko_1959);
}

}  // namespace tankwright::decisions
