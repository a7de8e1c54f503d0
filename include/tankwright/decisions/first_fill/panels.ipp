// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/first_fill/panel_load.hpp>
#include <tankwright/decisions/first_fill/panels.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/text/quantity.hpp>
#include <tankwright/vessel/panel_remarks.hpp>
#include <vector>

namespace tankwright::decisions {

namespace detail {

/// A panel with water to the rim, as when the overflow is blocked.
struct loaded_panel {
  const vessel::panel* panel;
  vessel::panel_result result;

  [[nodiscard]] double used() const noexcept { return std::max(result.utilisation, result.deflection_utilisation); }
};

inline void show_panel(finding& f, const loaded_panel& one) {
  const vessel::panel_result& r = one.result;
  const std::string& of = one.panel->label;
  f.answer("used", "part of the allowable stress used", fraction(r.utilisation), of);
  f.detail("stress", "stress", r.stress, of);
  f.limit("allowable", "allowable, " + std::string{r.allowable.name}, r.allowable.value, of);
  f.margin("stress_left", "part of the allowable stress left", fraction(1.0 - r.utilisation), least_strength_left, of);
  f.detail("thickness", "thickness that would use it all", std::max(r.thickness_needed, r.thickness_for_deflection),
           of);
  f.detail("bulge", "bulge after years", r.long_term_deflection, of);
  f.limit("bulge_allowed", "bulge allowed", r.deflection_limit, of);
  f.margin("bulge_left", "part of the allowed bulge left", fraction(1.0 - r.deflection_utilisation),
           least_strength_left, of);
  f.detail("push", "push of the water", r.force, of);
}

/// What happens to the panel that uses most of what it may.
[[nodiscard]] inline std::string breaks(const situation& s, const loaded_panel& one) {
  const vessel::panel_result& r = one.result;
  const std::string least = said(s, std::max(r.thickness_needed, r.thickness_for_deflection));
  if (r.utilisation >= 1.0) {
    return "The " + one.panel->label + " bears " + text::of(100.0 * r.utilisation, text::significant(3)) +
           " % of the stress that it may carry for good, and may break; it would take more than " + least + ".";
  }
  return "The " + one.panel->label + " bulges by " + said(s, r.long_term_deflection.high) +
         " after years, more than joints put up with; it would take more than " + least + ".";
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_panels(const situation& s, answers& out) {
  if (!s.plan().vessel) return;
  finding& f = out.ask(panels);
  const vessel_case& c = s.vessel();
  if (c.in.panels.empty()) {
    f.unknown("give each panel: clear width and height, least thickness, material, edges");
    return;
  }
  const length rim = c.in.display.height();
  const mass_density density = c.density();
  std::vector<detail::loaded_panel> all;
  bool glass = false;
  for (const plan::wall_panel& wall : c.in.panels) {
    glass = glass || wall.panel.material->name == vessel::annealed_glass.name;
    try {
      all.push_back(
          {&wall.panel, vessel::water_on(wall.panel, {.level = water_behind(wall, rim), .water_density = density})});
    } catch (const error& mistake) {  // what is said of one panel does not silence the others
      f.unknown("have an engineer look at " + wall.panel.label);
      f.note += answers::reason_of(mistake) + ". ";
      continue;
    }
    for (const vessel::remark& r : vessel::unusual_in(wall.panel)) f.note += wall.panel.label + ": " + r.text + ". ";
  }
  std::stable_sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.used() > b.used(); });
  for (const detail::loaded_panel& one : all) {
    if (!one.result.note.empty()) f.note += "For " + one.panel->label + ", " + std::string{one.result.note} + ". ";
    if (one.result.beyond_small_deflection) {
      f.unknown("have an engineer reckon " + one.panel->label + " with large deflections");
    }
  }
  for (const detail::loaded_panel& one : all) detail::show_panel(f, one);
  if (f.verdict == verdict::does_not_hold) f.happens = detail::breaks(s, all.front());
  f.note += "With water to the rim, as when the overflow is blocked.";
  f.source(vessel::timoshenko_1959);
  if (glass) f.source(vessel::astm_e1300);
}

}  // namespace tankwright::decisions
