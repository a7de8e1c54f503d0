// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/lid_lift.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// What people lift together, over what one may: two do not share evenly (common practice, no source).
[[nodiscard]] inline double hands(double people) noexcept {
  return people < 2.0 ? 1.0 : people < 3.0 ? 4.0 / 3.0 : 0.5 * people;
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_lid_lift(const situation& s, answers& out) {
  if (!s.plan().vessel) return;
  const auto& given = s.plan().vessel->lid;
  bool asked = false;
  for (const plan::lid& one : given) asked = asked || one.width;
  if (!asked) return;
  finding& f = out.ask(lid_lift);
  const vessel_case& c = s.vessel();
  for (std::size_t i = 0; i < given.size(); ++i) {
    const plan::lid& one = given[i];
    if (!one.width) continue;
    const vessel::lid& lid = c.in.lids[i];
    const auto weighs =
        mass::from_value(lid.material->density.value() * (*one.span * *one.width * *one.thickness).value());
    const auto alone = vessel::recommended_lift({.reach = *one.reach, .height = *one.above_feet});
    const auto most = alone * detail::hands(*one.lifted_by);
    f.answer("mass", "weighs", weighs, lid.label);
    f.limit("most", "should be lifted there at most", most, lid.label);
    f.margin("left", "less than that by", most - weighs, kilograms(0.5), lid.label);
  }
  f.note =
      "One lid, between its supports: what lies on them comes on top. Cut in two it is lifted by one; a handle makes a "
      "poor grip a good one.";
  if (f.verdict == verdict::does_not_hold)
    f.happens = f.margin()->place + " is too heavy to lift there: cut it in parts.";
  f.source(vessel::niosh_94_110);
}

}  // namespace tankwright::decisions
