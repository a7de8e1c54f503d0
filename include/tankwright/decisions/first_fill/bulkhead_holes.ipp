// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/first_fill/bulkhead_holes.hpp>
#include <tankwright/decisions/first_fill/wall_parts.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/vessel/joints.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_bulkhead_holes(const situation& s, answers& out) {
  if (!s.plan().vessel || s.plan().vessel->bulkhead.empty()) return;
  finding& f = out.ask(bulkhead_holes);
  const vessel_case& c = s.vessel();
  const auto& all = s.plan().vessel->bulkhead;
  std::string low, toughened;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const plan::bulkhead& one = all[i];
    const std::string name = detail::part_name(one.label, "hole", i, all.size());
    const bool glass = *one.pane == plan::pane_material::glass;
    const length needed =
        vessel::hole_to_edge({.diameter = *one.hole, .thickness = *one.thickness, .glass = glass, .label = name});
    f.limit("needed", "its middle from the edge, at least", needed, name);
    f.margin("left", "farther than that by", *one.to_edge - needed, millimetres(2.0), name);
    const auto push = vessel::blow_off({.depth = detail::under_the_rim(c, *one.height),
                                        .diameter = *one.hole,
                                        .water_density = c.density(),
                                        .label = name});
    f.detail("push", "the water pushes its fitting out with", push.blow_off, name);
    if (glass && *one.height < c.in.display.height() / 3.0) low += (low.empty() ? "" : ", ") + name;
    if (glass && one.toughened) toughened = name;
  }
  if (!low.empty()) f.note = "In the lowest third of the glass, where it is bent most: " + low + ". ";
  f.note +=
      "The flange and its gasket sit inside, on the water's side, hand tight and a quarter turn; on a rough coating "
      "grind a flat first.";
  if (!toughened.empty()) {
    f.verdict = worse_of(f.verdict, verdict::does_not_hold);
    f.happens = "Toughened glass shatters under the drill: " + toughened + ".";
  } else if (f.verdict == verdict::does_not_hold) {
    f.happens = "A crack runs from " + f.margin()->place + " to the edge of the pane.";
  }
  f.source(vessel::astm_c1048);
}

}  // namespace tankwright::decisions
