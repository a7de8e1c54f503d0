// SPDX-License-Identifier: BSL-1.0
/// @file
/// Closing the top: does the cross-brace carry its load, do the lids sag, and will the rock look close to the glass?
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tankwright/commissioning/finding.hpp>
#include <tankwright/commissioning/system_state.hpp>
#include <tankwright/vessel/brace.hpp>
#include <tankwright/vessel/lid.hpp>
#include <tankwright/vessel/panel.hpp>
#include <tankwright/vessel/view.hpp>
#include <tankwright/water/density.hpp>
#include <vector>

namespace tankwright::commissioning {

/// Equal cross-braces between the rails along the top of two walls.
struct brace_plan {
  required<length> rail;         ///< along the wall, between its ends
  required<length> rail_height;  ///< above the floor inside
  required<int> braces;          ///< between the ends of the rail
  required<length> span;         ///< of a brace, from rail to rail
  required<length> breadth;
  required<length> depth;  ///< upright
  required<vessel::panel_material> material;
  std::vector<vessel::point_load> on_it{};  ///< lights and what else stands or hangs on it; places from one end
  std::optional<force> joint{};             ///< the pull that the fixing at each end holds for good
  std::string label = "brace";
};

/// The nearest rock behind the front panel.
struct view_plan {
  required<vessel::underwater_view> rock;            ///< its distance from the inner face, and the panel
  length least_clearance = vessel::usual_clearance;  ///< in the water: what the animals need to turn
};

/// What goes on top and is looked at last. What is not given is not asked.
struct closing_plan {
  length water_to{};  ///< the highest that water can stand above the floor inside: the rim
  std::optional<brace_plan> brace{};
  std::vector<vessel::lid> lids{};
  double lid_span_over_sag = 240.0;  ///< usual for the whole load, from memory
  std::optional<view_plan> view{};
};

namespace detail {

inline constexpr std::string_view closing_the_top = "Closing the top";

/// A structure that uses more than this of what it may carry has a thin margin.
inline constexpr double well_used = 0.9;

template <class Q>
[[nodiscard]] constexpr estimate<Q> without_band(const Q& q) noexcept {
  return {q, q, q, {}};
}

/// The worse of two verdicts on parts of one thing.
[[nodiscard]] constexpr verdict worse_of(verdict a, verdict b) noexcept {
  const auto rank = [](verdict v) {
    return v == verdict::does_not_hold      ? 4
           : v == verdict::not_enough_known ? 3
           : v == verdict::thin_margin      ? 2
           : v == verdict::holds            ? 1
                                            : 0;
  };
  return rank(a) < rank(b) ? b : a;
}

/// What is left of a limit, and how it stands when the last tenth counts as thin.
template <class Q>
[[nodiscard]] constexpr verdict within(const Q& value, const Q& limit) noexcept {
  return verdict_of_margin(without_band(limit - value), limit * (1.0 - well_used));
}

[[nodiscard]] inline bool is_glass(const vessel::panel_material& m) noexcept {
  return m.name == vessel::annealed_glass.name;
}

[[nodiscard]] inline finding brace_finding(const closing_plan& plan, const brace_plan& brace,
                                           mass_density water_density) {
  finding f{.id = "vessel.brace", .day = closing_the_top, .question = "Will the cross-brace carry its load?"};
  const auto rails = vessel::rails_of(
      {.height = brace.rail_height, .level = plan.water_to, .water_density = water_density, .label = brace.label});
  const auto pull = vessel::pull_of_braces({.rail = brace.rail, .braces = brace.braces, .load = rails.top});
  const auto section = vessel::rectangular_section({.breadth = brace.breadth, .depth = brace.depth});
  const vessel::panel_material& material = brace.material;
  const line_load own_weight = section.area.get() * material.density * standard_gravity;
  const auto bent = vessel::bend({.span = brace.span,
                                  .section = section,
                                  .modulus = material.modulus,
                                  .supports = std::vector<vessel::beam_support>{{.at = length{}}, {.at = brace.span}},
                                  .points = brace.on_it,
                                  .spreads = {{.at_start = own_weight,
                                               .at_end = own_weight,
                                               .from = length{},
                                               .to = brace.span,
                                               .label = "its own weight"}},
                                  .pull = pull.largest,
                                  .label = brace.label});
  const stress allowable = material.allowable.value;
  f.says = within(bent.combined, allowable);
  f.numbers =
      entries(entry{"pull in the brace", amount_of(pull.largest)},
              entry{"by its share of the length alone (too little)", amount_of(pull.by_tributary_length), role::detail},
              entry{"stress, pull and bending together", amount_of(bent.combined)},
              entry{"allowable stress, " + std::string{material.allowable.name}, amount_of(allowable), role::limit},
              entry{"stress to spare", amount_of(allowable - bent.combined), role::margin});
  if (brace.joint) {
    f.says = worse_of(f.says, within(pull.largest, *brace.joint));
    f.numbers.push_back({"the fixing at its end holds", amount_of(*brace.joint), role::limit});
    f.numbers.push_back({"pull to spare in the fixing", amount_of(*brace.joint - pull.largest), role::margin});
  } else {
    f.says = worse_of(f.says, verdict::not_enough_known);
    f.measure_next.push_back("find out what pull the fixing at each end holds: it fails before the brace does");
  }
  f.numbers.push_back({"sag", amount_of(bent.deflection), role::detail});
  f.numbers.push_back({"with the water at", amount_of(plan.water_to), role::detail});
  f.note = "With water to the rim, as when the overflow is blocked.";
  if (is_glass(material)) f.sources.push_back(vessel::astm_e1300);
  f.before_acting = bent.caution.text;
  return f;
}

[[nodiscard]] inline finding lids_finding(const closing_plan& plan) {
  finding f{.id = "vessel.lids", .day = closing_the_top, .question = "Will the lids sag?"};
  bool bow_is_larger = false;
  for (const vessel::lid& lid : plan.lids) {
    const auto result = vessel::sag_of(lid);
    const length allowed = lid.span.get() / plan.lid_span_over_sag;
    // Wet below and dry above, a lid bows downwards: the two add.
    const auto lowest = map_rising(result.long_term_sag, [&](length sag) { return sag + result.moisture_bow; });
    const auto margin = map_falling(lowest, [&](length down) { return allowed - down; });
    f.says = worse_of(f.says, verdict_of_margin(margin, length{}));
    f.says = worse_of(f.says, within(result.stress, result.allowable.value));
    const std::string of = lid.label + ": ";
    f.numbers.push_back({of + "down in the middle after years", amount_of(lowest)});
    f.numbers.push_back({of + "allowed", amount_of(allowed), role::limit});
    f.numbers.push_back({of + "to spare", amount_of(margin), role::margin});
    f.numbers.push_back({of + "of it bow from damp below", amount_of(result.moisture_bow), role::detail});
    f.numbers.push_back({of + "sag at first", amount_of(result.sag), role::detail});
    f.numbers.push_back({of + "part of the allowable stress", amount_of(fraction(result.utilisation)), role::detail});
    bow_is_larger = bow_is_larger || result.moisture_bow > result.long_term_sag.central;
    if (is_glass(lid.material) && f.sources.empty()) f.sources.push_back(vessel::astm_e1300);
    f.before_acting = result.caution.text;
  }
  if (bow_is_larger && f.says != verdict::holds) {
    f.note = "Most of it is bow from damp below: turn the lid over now and then, or take a thicker sheet or glass.";
  }
  return f;
}

[[nodiscard]] inline finding view_finding(const view_plan& plan) {
  finding f{.id = "vessel.view", .day = closing_the_top, .question = "Will the rock look close to the glass?"};
  const vessel::underwater_view& rock = plan.rock;
  const length margin = rock.water.get() - plan.least_clearance;
  f.says = verdict_of_margin(without_band(margin), length{});
  f.numbers = entries(entry{"it seems behind the glass by", amount_of(vessel::apparent_distance(rock))},
                      entry{"nearest rock to the inner face", amount_of(rock.water.get()), role::detail},
                      entry{"least clearance", amount_of(plan.least_clearance), role::limit},
                      entry{"clearance to spare", amount_of(margin), role::margin},
                      entry{"that clearance would seem",
                            amount_of(vessel::apparent_distance({.water = plan.least_clearance,
                                                                 .panel = rock.panel,
                                                                 .water_index = rock.water_index,
                                                                 .panel_index = rock.panel_index})),
                            role::detail});
  f.note = "Straight on; seen at an angle everything seems nearer still.";
  return f;
}

}  // namespace detail

/// The decisions of closing the top that are about strength and sight.
///
///   brace by `rails_of`, `pull_of_braces` and `bend`; lids by `sag_of`; rock by `apparent_distance`
///
/// @param plan  braces, lids, view; what is not given is not asked
/// @param state salinity and temperature of the water, for its density
/// @return      findings vessel.brace, vessel.lids and vessel.view, as far as the plan asks for them
/// @throws      invalid_input, out_of_range (from the functions used)
/// @accuracy    as its parts; a screening of strength, not a design
/// @source      the sources of `vessel/brace.hpp`, `lid.hpp` and `view.hpp`
[[nodiscard]] inline std::vector<finding> assess_closing(const closing_plan& plan, const system_state& state) {
  std::vector<finding> all;
  if (plan.brace) {
    all.push_back(detail::brace_finding(plan, *plan.brace, water::density(state.salinity, state.water)));
  }
  if (!plan.lids.empty()) all.push_back(detail::lids_finding(plan));
  if (plan.view) all.push_back(detail::view_finding(*plan.view));
  return all;
}

}  // namespace tankwright::commissioning
