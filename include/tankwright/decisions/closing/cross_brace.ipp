// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/cross_brace.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/vessel/brace.hpp>
#include <vector>

namespace tankwright::decisions {

namespace detail {

/// The brace as a beam under what stands on it and its own weight, with the rails' pull along it.
[[nodiscard]] inline vessel::beam_result bent_brace(const plan::brace_inputs& b, force pull) {
  const auto section = vessel::rectangular_section({.breadth = b.breadth, .depth = b.depth});
  const line_load own_weight = section.area.get() * b.material.density * standard_gravity;
  return vessel::bend(
      {.span = b.span,
       .section = section,
       .modulus = b.material.modulus,
       .supports = std::vector<vessel::beam_support>{{.at = length{}}, {.at = b.span}},
       .points = b.on_it,
       .spreads =
           {{.at_start = own_weight, .at_end = own_weight, .from = length{}, .to = b.span, .label = "its own weight"}},
       .pull = pull,
       .label = b.label});
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_cross_brace(const situation& s, answers& out) {
  if (!s.plan().vessel || !s.plan().vessel->brace) return;
  finding& f = out.ask(cross_brace);
  const vessel_case& c = s.vessel();
  const plan::brace_inputs& b = *c.in.brace;
  const length rim = c.in.display.height();
  const auto rails =
      vessel::rails_of({.height = b.rail_height, .level = rim, .water_density = c.density(), .label = b.label});
  const auto pull = vessel::pull_of_braces({.rail = b.rail, .braces = b.braces, .load = rails.top});
  const auto bent = detail::bent_brace(b, pull.largest);
  const vessel::allowable_stress& allowable = b.material.allowable;
  const auto left = [](double used) { return fraction(1.0 - used); };
  if (!b.joint) f.unknown("find out what pull the fixing at each end holds: it fails before the brace does");
  f.answer("pull", "pull in the brace", pull.largest);
  f.detail("tributary", "by its share of the length alone (too little)", pull.by_tributary_length);
  f.answer("stress", "stress, pull and bending together", bent.combined);
  f.limit("allowable", "allowable stress, " + std::string{allowable.name}, allowable.value);
  f.margin("stress_left", "part of the allowable stress left", left(bent.combined.value() / allowable.value.value()),
           least_strength_left, b.label);
  if (b.joint) {
    f.limit("joint", "the fixing at its end holds", *b.joint);
    f.margin("joint_left", "part of what the fixing holds left", left(pull.largest.value() / b.joint->value()),
             least_strength_left, "fixing of " + b.label);
  }
  f.detail("sag", "sag", bent.deflection);
  f.detail("water", "with the water at", rim);
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "The " + f.margin()->place + " gives way, and the walls with it.";
  }
  f.note = "With water to the rim, as when the overflow is blocked.";
  if (b.material.name == vessel::annealed_glass.name) f.source(vessel::astm_e1300);
}

}  // namespace tankwright::decisions
