// SPDX-License-Identifier: BSL-1.0
/// @file
/// The display as it is built: is each panel in a sane range while it fills, how much sand and rock goes in, how much
/// water is really left, and what stands on the floor.
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <tankwright/commissioning/closing_plan.hpp>
#include <tankwright/commissioning/finding.hpp>
#include <tankwright/commissioning/system_state.hpp>
#include <tankwright/core/span_of.hpp>
#include <tankwright/vessel/bulge.hpp>
#include <tankwright/vessel/displacement.hpp>
#include <tankwright/vessel/floor.hpp>
#include <tankwright/vessel/panel.hpp>
#include <tankwright/vessel/panel_remarks.hpp>
#include <tankwright/vessel/sand.hpp>
#include <tankwright/vessel/shape.hpp>
#include <tankwright/water/density.hpp>
#include <utility>
#include <vector>

namespace tankwright::commissioning {

/// A panel and where it sits in its wall.
struct wall_panel {
  required<vessel::panel> panel;
  length lower_edge{};  ///< above the floor inside; more than 0 for a window in a wall
};

/// What the display stands on.
struct floor_plan {
  required<mass> tank_and_stand;  ///< empty
  required<area> footprint;       ///< outline of the stand
  std::optional<area> bearing{};  ///< what touches the floor, all feet together
  vessel::floor_live_load code = vessel::living_rooms;
  bool sump_below = true;  ///< the sump stands within the footprint
};

/// The display with what is in it and on it. What is not given is not asked, except what can break: panels and floor.
struct vessel_plan {
  required<vessel::shape> display;  ///< inside
  required<length> water_level;     ///< above the floor inside, while the pump runs
  std::vector<vessel::item> sand{};
  std::optional<vessel::bed_slope> sand_slope{};  ///< where the bed is not level
  std::vector<vessel::item> rock{};
  std::vector<vessel::item> equipment{};
  std::vector<wall_panel> panels{};
  std::vector<length> stages{};  ///< levels at which the first fill pauses; none: the quarters of the water level
  std::optional<floor_plan> floor{};
  std::optional<brace_plan> brace{};
  std::vector<vessel::lid> lids{};
  double lid_span_over_sag = closing_plan{}.lid_span_over_sag;
  std::optional<view_plan> view{};
};

namespace detail {

inline constexpr std::string_view filling = "First fill";
inline constexpr std::string_view bottom = "Filling the bottom";

[[nodiscard]] inline mass_density water_density(const system_state& state) {
  return water::density(state.salinity, state.water);
}

[[nodiscard]] inline vessel::water_content content_of(const vessel_plan& plan, mass_density water_density) {
  std::vector<vessel::item> items;
  items.reserve(plan.sand.size() + plan.rock.size() + plan.equipment.size());
  for (const auto* some : {&plan.sand, &plan.rock, &plan.equipment}) {
    for (const vessel::item& i : *some) items.push_back(i);
  }
  return vessel::water_in({.gross = vessel::filled_volume(plan.display, plan.water_level),
                           .items = core::span_of(items),
                           .water_density = water_density});
}

template <class Thin>
[[nodiscard]] estimate<volume> as_volume(const estimate<Thin>& v) noexcept {
  return map_rising(v, [](const Thin& thin) { return thin.value(); });
}

/// Sum of one estimate of every item, as if all erred the same way.
template <class Q, class Of>
[[nodiscard]] estimate<Q> sum_over(const std::vector<vessel::item>& items, Of of) {
  estimate<Q> sum{Q{}, Q{}, Q{}, items.front().solids.reason};
  for (const vessel::item& i : items) {
    const estimate<Q> part = of(i);
    sum.low += part.low, sum.central += part.central, sum.high += part.high;
  }
  return sum;
}

/// Where the water stands behind a panel when it stands at `level` in the display. Over a free top edge it runs out, so
/// it never stands higher than that.
[[nodiscard]] inline length behind(const wall_panel& wall, length level) noexcept {
  const vessel::panel& p = wall.panel;
  const bool free_top =
      p.edges == vessel::panel_edges::top_free || p.edges == vessel::panel_edges::bottom_clamped_top_free;
  const length above = std::max(level - wall.lower_edge, length{});
  return free_top ? std::min(above, p.height.get()) : above;
}

/// How a panel stands against its allowable stress; where the theory does not reach, nobody knows.
[[nodiscard]] inline verdict verdict_of(const vessel::panel_result& result) noexcept {
  const verdict both = worse_of(within(result.stress, result.allowable.value),
                                within(result.long_term_deflection.high, result.deflection_limit));
  return result.beyond_small_deflection ? worse_of(both, verdict::not_enough_known) : both;
}

[[nodiscard]] inline finding panels_finding(const vessel_plan& plan, mass_density water_density) {
  finding f{.id = "vessel.panels", .day = filling, .question = "Is each panel in a sane range?"};
  f.before_acting = vessel::panel_caution.text;
  f.sources = {vessel::timoshenko_1959};
  if (plan.panels.empty()) {
    f.says = verdict::not_enough_known;
    f.measure_next.push_back("give each panel: clear width and height, least thickness, material, edges");
    return f;
  }
  const length rim = plan.display->height();
  struct loaded {
    const vessel::panel& panel;
    vessel::panel_result result;
  };
  std::vector<loaded> all;
  for (const wall_panel& wall : plan.panels) {
    all.push_back(
        {wall.panel, vessel::water_on(wall.panel, {.level = behind(wall, rim), .water_density = water_density})});
  }
  std::vector<std::size_t> order;  // the most used panel first
  for (std::size_t i = 0; i < all.size(); ++i) order.push_back(i);
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return all[a].result.utilisation > all[b].result.utilisation;
  });
  for (const std::size_t i : order) {
    const auto& [panel, result] = all[i];
    f.says = worse_of(f.says, verdict_of(result));
    const std::string of = panel.label + ": ";
    f.numbers.push_back({of + "part of the allowable stress used", amount_of(fraction(result.utilisation))});
    f.numbers.push_back({of + "stress", amount_of(result.stress), role::detail});
    f.numbers.push_back(
        {of + "allowable, " + std::string{result.allowable.name}, amount_of(result.allowable.value), role::limit});
    f.numbers.push_back({of + "stress to spare", amount_of(result.allowable.value - result.stress), role::margin});
    f.numbers.push_back({of + "thickness that would use it all", amount_of(result.thickness_needed), role::detail});
    f.numbers.push_back({of + "bulge after years", amount_of(result.long_term_deflection), role::detail});
    f.numbers.push_back({of + "bulge allowed", amount_of(result.deflection_limit), role::detail});
    f.numbers.push_back({of + "push of the water", amount_of(result.force), role::detail});
    for (const vessel::remark& r : vessel::unusual_in(panel)) f.note += of + r.text + ". ";
    if (!result.note.empty()) f.note += "For " + panel.label + ", " + std::string{result.note} + ". ";
    if (result.beyond_small_deflection) {
      f.measure_next.push_back("have an engineer reckon " + panel.label + " with large deflections");
    }
    const bool has_standard = std::any_of(f.sources.begin(), f.sources.end(),
                                          [](const citation& c) { return c.title == vessel::astm_e1300.title; });
    if (is_glass(panel.material) && !has_standard) f.sources.push_back(vessel::astm_e1300);
  }
  f.note += "With water to the rim, as when the overflow is blocked.";
  return f;
}

[[nodiscard]] inline finding first_fill_finding(const vessel_plan& plan, mass_density water_density) {
  finding f{.id = "vessel.first_fill",
            .day = filling,
            .question = "What does each stage of the first fill put on the panels?"};
  std::vector<length> levels = plan.stages;
  if (levels.empty()) {
    for (const double part : {0.25, 0.5, 0.75, 1.0}) levels.push_back(plan.water_level.get() * part);
  }
  const std::size_t highest = std::size_t(std::max_element(levels.begin(), levels.end()) - levels.begin());
  std::vector<std::vector<vessel::fill_stage>> stages;  // of each panel
  double most_used = 0.0;
  for (const wall_panel& wall : plan.panels) {
    std::vector<length> behind_it;
    for (const length& level : levels) behind_it.push_back(behind(wall, level));
    stages.push_back(vessel::first_fill(wall.panel, core::span_of(behind_it), water_density));
    most_used = std::max(most_used, stages.back()[highest].panel.utilisation);
  }
  f.numbers.push_back({"most that a panel uses of its allowable stress", amount_of(fraction(most_used))});
  for (std::size_t i = 0; i < levels.size(); ++i) {
    f.numbers.push_back({"water at", amount_of(levels[i]), role::detail});
    f.numbers.push_back(
        {"  pressure on the floor", amount_of(vessel::hydrostatic_pressure(levels[i], water_density)), role::detail});
    for (std::size_t j = 0; j < stages.size(); ++j) {
      const std::string& label = plan.panels[j].panel->label;
      const vessel::panel_result& stage = stages[j][i].panel;
      f.numbers.push_back({"  stress in " + label, amount_of(stage.stress), role::detail});
      if (const auto seen = vessel::bulge_to_see({.expected = stage.deflection}).expected) {
        f.numbers.push_back({"  bulge of " + label, amount_of(*seen), role::detail});
      }
    }
  }
  f.note =
      "For the display's seawater; fresh water puts 2 to 3 % less on it. Stop at each stage, hold a straight edge "
      "to each panel, and go on only while it bulges less than twice this, or by nothing that the straight edge shows.";
  f.sources = {vessel::timoshenko_1959};
  f.before_acting = vessel::panel_caution.text;
  return f;
}

[[nodiscard]] inline finding sand_finding(const vessel_plan& plan, mass_density water_density) {
  finding f{.id = "vessel.sand", .day = bottom, .question = "How many kilograms of sand for the bed?"};
  const auto depth_of_all = [&](area floor) {
    return sum_over<length>(plan.sand, [&](const vessel::item& i) { return vessel::bed_depth(i, floor); });
  };
  f.numbers.push_back({"dry sand", amount_of(sum_over<mass>(plan.sand, [](const auto& i) { return i.dry_mass; }))});
  if (const area floor = vessel::plan_area(plan.display, length{}); floor.value() > 0.0) {
    f.numbers.push_back({"mean depth over the whole floor", amount_of(depth_of_all(floor)), role::detail});
  }
  f.numbers.push_back({"water it keeps out",
                       amount_of(sum_over<volume>(plan.sand, [](const auto& i) { return as_volume(i.solids); })),
                       role::detail});
  f.numbers.push_back({"weight under water",
                       amount_of(sum_over<mass>(
                           plan.sand, [&](const auto& i) { return vessel::weight_of(i, water_density).submerged; })),
                       role::detail});
  if (plan.sand_slope) {
    const auto slope = vessel::sloped_bed(*plan.sand_slope);
    f.says = slope.steeper_than_repose ? verdict::does_not_hold : verdict::holds;
    f.numbers.push_back({"slope of the bed", amount_of(slope.slope), role::detail});
    f.numbers.push_back({"steepest it lies", amount_of(plan.sand_slope->repose), role::limit});
    f.numbers.push_back({"to spare", amount_of(plan.sand_slope->repose - slope.slope), role::margin});
  }
  f.sources = {vessel::bucher_1998};
  f.before_acting = vessel::displacement_caution.text;
  f.measure_next.push_back("fill a bucket of known volume with the dry sand and weigh it: that settles its porosity");
  return f;
}

[[nodiscard]] inline finding rock_finding(const vessel_plan& plan, mass_density water_density) {
  finding f{.id = "vessel.rock", .day = bottom, .question = "How much rock is it, and what does it weigh?"};
  const auto weight = [&](auto member) {
    return sum_over<mass>(plan.rock, [&](const auto& i) { return vessel::weight_of(i, water_density).*member; });
  };
  const auto submerged = weight(&vessel::item_weight::submerged);
  f.says = submerged.central.value() < 0.0 ? verdict::does_not_hold
           : submerged.low.value() < 0.0   ? verdict::thin_margin
                                           : verdict::for_information;
  f.numbers = entries(
      entry{"dry", amount_of(weight(&vessel::item_weight::dry))},
      entry{"wet, pores full", amount_of(weight(&vessel::item_weight::wet))},
      entry{"weight under water", amount_of(submerged)},
      entry{"water it keeps out",
            amount_of(sum_over<volume>(plan.rock, [](const auto& i) { return as_volume(i.solids); })), role::detail},
      entry{"room it takes",
            amount_of(sum_over<volume>(plan.rock, [](const auto& i) { return as_volume(i.envelope); })), role::detail});
  if (submerged.low.value() < 0.0) f.note = "Some of it may float until its pores have filled.";
  f.sources = {vessel::bucher_1998, vessel::crane_2007};
  f.before_acting = vessel::displacement_caution.text;
  const auto volumes = sum_over<volume>(plan.rock, [](const auto& i) { return as_volume(i.solids); });
  if (volumes.low < volumes.high) {
    f.measure_next.push_back("hang the rock in water from a luggage scale, soaked through: it tells what it displaces");
  }
  return f;
}

[[nodiscard]] inline finding water_finding(const vessel_plan& plan, const system_state& state,
                                           const vessel::water_content& content) {
  finding f{.id = "vessel.water", .day = bottom, .question = "How much water is really in it?"};
  const auto net = as_volume(content.net);
  f.numbers = entries(entry{"net, for salt and dosing", amount_of(net)},
                      entry{"free, outside sand and rock", amount_of(as_volume(content.free))},
                      entry{"empty, to the water line", amount_of(content.gross), role::detail},
                      entry{"kept out by what is in it", amount_of(as_volume(content.solids)), role::detail},
                      entry{"standing in pores", amount_of(as_volume(content.pores)), role::detail});
  if (state.sump_water) {
    const estimate<volume> total{net.low + state.sump_water->low, net.central + state.sump_water->central,
                                 net.high + state.sump_water->high, net.reason};
    f.numbers.push_back({"total, with the sump", amount_of(total)});
  }
  if (!plan.sand.empty() || !plan.rock.empty()) f.sources.push_back(vessel::bucher_1998);
  if (!plan.rock.empty()) f.sources.push_back(vessel::crane_2007);
  f.before_acting = content.caution.text;
  if (plan.sand.empty() && plan.rock.empty()) {
    f.measure_next.push_back("give the sand and the rock: they keep water out");
  }
  f.measure_next.push_back("meter the water while filling: that is the honest net volume");
  return f;
}

[[nodiscard]] inline finding floor_finding(const vessel_plan& plan, const system_state& state,
                                           const vessel::water_content& content) {
  finding f{.id = "vessel.floor", .day = bottom, .question = "Does the floor carry it?"};
  f.before_acting = vessel::floor_caution.text;
  if (!plan.floor) {
    f.says = verdict::not_enough_known;
    f.numbers.push_back({"water and what is in it", amount_of(content.on_the_floor)});
    f.measure_next.push_back(
        "give the floor: footprint of the stand, mass of tank and stand, the load it is built for");
    return f;
  }
  const floor_plan& floor = *plan.floor;
  const auto load_of = [&](mass in_it) {
    return vessel::load_on_floor({.total = in_it + floor.tank_and_stand.get(),
                                  .footprint = floor.footprint,
                                  .bearing = floor.bearing,
                                  .code = floor.code,
                                  .label = plan.display->label()});
  };
  estimate<mass> in_it = content.on_the_floor;
  if (floor.sump_below && state.sump_water) {
    const auto sump = map_rising(*state.sump_water, [&](volume v) { return v * water_density(state); });
    in_it = {in_it.low + sump.low, in_it.central + sump.central, in_it.high + sump.high, in_it.reason};
  }
  const auto total = map_rising(in_it, [&](mass m) { return m + floor.tank_and_stand.get(); });
  const auto spread = map_rising(in_it, [&](mass m) { return load_of(m).spread; });
  const auto margin = map_falling(spread, [&](pressure p) { return floor.code.value - p; });
  const auto central = load_of(in_it.central);
  f.says = verdict_of_margin(margin, floor.code.value * (1.0 - well_used));
  f.numbers =
      entries(entry{"load under the footprint", amount_of(spread)},
              entry{"live load of the code: " + std::string{floor.code.name}, amount_of(floor.code.value), role::limit},
              entry{"load to spare", amount_of(margin), role::margin},
              entry{"times the code's live load", amount_of(central.times_code), role::detail},
              entry{"all of it weighs", amount_of(total), role::detail});
  if (floor.bearing) f.numbers.push_back({"load under the feet", amount_of(central.under_feet), role::detail});
  f.note = "Live load after: " + std::string{floor.code.source} + ".";
  if (floor.sump_below && !state.sump_water) {
    f.note += " The sump's water is not in it.";
    f.measure_next.push_back("give the sump: its water stands on the same floor");
  }
  if (f.says != verdict::holds) {
    f.measure_next.push_back("find span, direction and bearing of the joists, or the load the slab is built for");
  }
  return f;
}

}  // namespace detail

/// What the display adds to the shared state: its water net of sand, rock and equipment, its surface and depth.
///
///   `filled_volume`, `water_in`, `plan_area` at the water level
///
/// @param state gets display_water, display_surface and display_depth; its salinity and temperature are read
/// @param plan  the display
/// @throws      invalid_input (from the functions used; also when the level is above the rim)
/// @accuracy    the band of the items
/// @source      geometry; Archimedes
inline void describe(system_state& state, const vessel_plan& plan) {
  const auto content = detail::content_of(plan, detail::water_density(state));
  state.display_water = detail::as_volume(content.net);
  state.display_surface = vessel::plan_area(plan.display, plan.water_level);
  state.display_depth = plan.water_level;
}

/// The decisions before and while the display is filled for the first time.
///
///   each panel by `water_on` with water to the rim, and by `first_fill` at each stage
///
/// @param plan  the display with its panels
/// @param state salinity and temperature of the water, for its density
/// @return      finding vessel.panels, and where there are panels vessel.first_fill
/// @throws      invalid_input, out_of_range (from the functions used)
/// @accuracy    as `vessel/panel.hpp`; a screening of strength, not a design
/// @source      Timoshenko & Woinowsky-Krieger 1959; the allowable stresses of `vessel/materials.hpp`
[[nodiscard]] inline std::vector<finding> assess_first_fill(const vessel_plan& plan, const system_state& state) {
  const mass_density rho = detail::water_density(state);
  std::vector<finding> all{detail::panels_finding(plan, rho)};
  if (!plan.panels.empty()) all.push_back(detail::first_fill_finding(plan, rho));
  return all;
}

/// The decisions of filling the bottom: sand, rock, the water that is left, and the floor.
///
///   `weight_of` and `water_in`; `load_on_floor` with tank, stand and, where it stands below, the sump's water
///
/// @param plan  the display with sand, rock, equipment and floor
/// @param state salinity and temperature of the water, for its density; the sump's water where known
/// @return      findings vessel.sand and vessel.rock where there is any, vessel.water and vessel.floor
/// @throws      invalid_input (from the functions used)
/// @accuracy    the bands of the findings
/// @source      the sources of `vessel/displacement.hpp` and `vessel/floor.hpp`, carried by each finding
[[nodiscard]] inline std::vector<finding> assess_bottom(const vessel_plan& plan, const system_state& state) {
  const mass_density rho = detail::water_density(state);
  const auto content = detail::content_of(plan, rho);
  std::vector<finding> all;
  if (!plan.sand.empty()) all.push_back(detail::sand_finding(plan, rho));
  if (!plan.rock.empty()) all.push_back(detail::rock_finding(plan, rho));
  all.push_back(detail::water_finding(plan, state, content));
  all.push_back(detail::floor_finding(plan, state, content));
  return all;
}

/// The part of the plan that closes the top.
///
///   water to the rim; braces, lids and view as planned
///
/// @param plan the display
/// @return     the plan for `assess_closing`
/// @throws     nothing but std::bad_alloc
/// @accuracy   exact
/// @source     this library
[[nodiscard]] inline closing_plan closing_of(const vessel_plan& plan) {
  return {.water_to = plan.display->height(),
          .brace = plan.brace,
          .lids = plan.lids,
          .lid_span_over_sag = plan.lid_span_over_sag,
          .view = plan.view};
}

/// All the decisions about the display, day by day.
///
///   `assess_first_fill`, `assess_bottom`, `assess_closing`
///
/// @param plan  the display
/// @param state as `describe` left it, with the sump's water where known
/// @return      the findings of the three days
/// @throws      invalid_input, out_of_range (from the functions used)
/// @accuracy    as its parts
/// @source      as its parts
[[nodiscard]] inline std::vector<finding> assess_vessel(const vessel_plan& plan, const system_state& state) {
  std::vector<finding> all = assess_first_fill(plan, state);
  for (finding& f : assess_bottom(plan, state)) all.push_back(std::move(f));
  for (finding& f : assess_closing(closing_of(plan), state)) all.push_back(std::move(f));
  return all;
}

}  // namespace tankwright::commissioning
