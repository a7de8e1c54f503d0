// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/lights.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_lights(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->lights) return;
  finding& f = out.ask(lights);
  const plan::lights& l = *s.plan().room->lights;
  const length width = room::lit_width(*l.height, *l.beam);
  f.answer("width", "each lights a width of, at the water", width);
  if (l.spacing) {
    f.detail("spacing", "from one to the next", *l.spacing);
    f.margin("overlap", "wider than that by", width - *l.spacing, length{});
  }
  std::optional<length> depth = s.state().display_depth;
  if (l.depth) depth = *l.depth;
  if (!depth) {
    f.unknown("give the depth down to where light is wanted, or the display");
    return;
  }
  const proportion in_water =
      room::light_at_depth({.height = *l.height, .depth = *depth, .through_a_metre = *l.through_a_metre});
  const proportion share = fraction(in_water.value() * l.through_cover.get().value());
  f.answer("share", "of the light at the water that reaches the depth, lids counted", share);
  f.detail("depth", "depth", *depth);
  if (l.least_share) {
    f.limit("least", "wanted there, at least", *l.least_share);
    f.margin("left", "more than that by", fraction(share.value() - l.least_share.get().value()),
             proportion{fraction(0.0)});
  }
  f.note =
      "Higher lamps light wider and more evenly from top to bottom, and weaker everywhere. Counted for one small lamp "
      "on "
      "its axis; long rows fall off less.";
  if (f.verdict == verdict::does_not_hold) {
    f.happens = f.margin()->id == "overlap" ? "Between the lamps it stays dark: hang them higher, or nearer together."
                                            : "Only " + said(s, share) + " of the light reaches the depth.";
  }
  f.source(room::kirk_1994);
  f.next("hold a light meter in a bag at the surface and at the depth: the second over the first is this share");
}

}  // namespace tankwright::decisions
