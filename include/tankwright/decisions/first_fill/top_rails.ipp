// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/first_fill/top_rails.hpp>
#include <tankwright/decisions/first_fill/wall_parts.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/vessel/brace.hpp>

namespace tankwright::decisions {

namespace detail {

/// A rail with what it takes from the brace where it does not say itself.
struct rail_as_built {
  std::optional<length> rail{}, height{};
  int braces = 0;
};

[[nodiscard]] inline rail_as_built rail_of(const plan::vessel_section& v, const plan::top_rail& one) {
  rail_as_built made{one.length.maybe(), one.height.maybe(), static_cast<int>(one.braces.value_or(0.0))};
  if (!v.brace) return made;
  if (!made.rail) made.rail = *v.brace->rail;
  if (!made.height) made.height = *v.brace->rail_height;
  if (!one.braces) made.braces = static_cast<int>(*v.brace->count);
  return made;
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_top_rails(const situation& s, answers& out) {
  if (!s.plan().vessel || s.plan().vessel->top_rail.empty()) return;
  finding& f = out.ask(top_rails);
  const vessel_case& c = s.vessel();
  const plan::vessel_section& v = *s.plan().vessel;
  for (std::size_t i = 0; i < v.top_rail.size(); ++i) {
    const plan::top_rail& one = v.top_rail[i];
    const std::string name = detail::part_name(one.label, "rail", i, v.top_rail.size());
    const detail::rail_as_built rail = detail::rail_of(v, one);
    if (!rail.rail || !rail.height) {
      f.unknown("give length and height of " + name + ", or the brace that has them");
      continue;
    }
    const auto load =
        vessel::rails_of(
            {.height = *rail.height, .level = c.in.display.height(), .water_density = c.density(), .label = name})
            .top;
    const double parts = rail.braces + 1.0;
    std::vector<vessel::beam_support> supports;
    for (int k = 0; k <= rail.braces + 1; ++k) supports.push_back({.at = *rail.rail * (k / parts)});
    const auto bent = vessel::bend(
        {.span = *rail.rail,
         .section = vessel::rectangular_section({.breadth = *one.breadth, .depth = *one.depth}),
         .modulus = *one.modulus,
         .supports = supports,
         .spreads = {{.at_start = load, .at_end = load, .from = length{}, .to = *rail.rail, .label = "water"}},
         .label = name});
    const length between = *rail.rail / parts, allowed = between / *one.span_over_sag;
    f.detail("load", "the wall leans on it with", load, name);
    f.answer("stress", "stress in it", bent.bending, name);
    f.limit("allowable", "may carry for good", *one.allowable, name);
    f.margin("stress_left", "part of that left", fraction(1.0 - bent.bending / *one.allowable), least_strength_left,
             name);
    f.answer("sag", "bends outwards by", bent.deflection, name);
    f.limit("allowed", "may bend by", allowed, name);
    f.margin("sag_left", "part of that left", fraction(1.0 - bent.deflection / allowed), fraction(0.0), name);
    f.detail("at_ends", "pull on the fixing of its end", bent.reactions.front().up, name);
  }
  f.note =
      "With water to the rim. A pane reckoned as held at its top is as weak as one with a free top where the rail "
      "gives way; wood gives way twice as far after years.";
  if (f.verdict == verdict::does_not_hold && f.margin()) {
    f.happens = f.margin()->id == "stress_left" ? f.margin()->place + " breaks, and the wall opens."
                                                : f.margin()->place +
                                                      " bends so far that what it holds counts as free: "
                                                      "a deeper rail, or one brace more.";
  }
}

}  // namespace tankwright::decisions
