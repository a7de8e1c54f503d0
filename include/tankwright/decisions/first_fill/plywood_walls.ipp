// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/first_fill/plywood_walls.hpp>
#include <tankwright/decisions/first_fill/wall_parts.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/vessel/hydrostatic.hpp>
#include <tankwright/vessel/plywood.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_plywood_walls(const situation& s, answers& out) {
  if (!s.plan().vessel || s.plan().vessel->plywood.empty()) return;
  finding& f = out.ask(plywood_walls);
  const vessel_case& c = s.vessel();
  const auto& all = s.plan().vessel->plywood;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const plan::plywood_wall& one = all[i];
    const std::string name = detail::part_name(one.label, "plywood", i, all.size());
    const double t = one.thickness.get().value();
    const auto load = vessel::hydrostatic_pressure(detail::under_the_rim(c, *one.lower_edge), c.density());
    const auto spans =
        *one.spans == plan::sheet_spans::one ? vessel::strip_spans::one : vessel::strip_spans::three_or_more;
    const auto r = vessel::strip_between_frames(
        {.spacing = *one.spacing,
         .load = load,
         .spans = spans,
         .bending_capacity = moment_per_width::from_value(one.strength.get().value() * t * t / 6.0),
         .rigidity = vessel::rigidity_per_width::from_value(one.modulus.get().value() * t * t * t / 12.0),
         .label = name});
    const length allowed = *one.spacing / *one.span_over_sag;
    f.detail("load", "water presses at its lower edge with", load, name);
    f.answer("used", "part of its strength used", fraction(r.utilisation), name);
    f.margin("strength_left", "part of its strength left", fraction(1.0 - r.utilisation), least_strength_left, name);
    f.detail("sag", "bulges between the frames after years by", r.long_term_sag, name);
    f.limit("allowed", "may bulge by", allowed, name);
    f.margin("sag_left", "part of that left", fraction(1.0 - r.long_term_sag / allowed), fraction(0.0), name);
  }
  f.note =
      "With water to the rim. Where the coating cracks the wood gets wet, and loses a third of its strength: watch "
      "for a change of the bulge.";
  if (f.verdict == verdict::does_not_hold) {
    const number& worst = *f.margin();
    f.happens = worst.id == "sag_left" ? worst.place + " bulges so far that coating and corners crack: more frames."
                                       : worst.place + " breaks between its frames: more of them, or a thicker sheet.";
  }
  f.source(vessel::nds_wood);
}

}  // namespace tankwright::decisions
