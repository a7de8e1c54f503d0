// SPDX-License-Identifier: BSL-1.0
// Keys that are each possible and cannot all be true. Refused is what cannot be built, filled or dated that way; what
// is only unusual passes, and what fails its purpose is a finding of the report.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "plan_file.hpp"

namespace plan_file {

using namespace tankwright;
namespace twc = tankwright::commissioning;

namespace {

/// Sums of rounded dimensions: 72 in and 182.88 cm are one length.
constexpr double rounding = 1e-9;
/// How well plan areas agree that were worked out from different measures, where the plan does not say.
constexpr proportion areas_agree = percent(3.0);
/// A lid, a rail or a brace may lie on the walls; where the plan does not give them, they are not thicker than this.
constexpr length thickest_wall = metres(0.15);
/// A rail lies on the rim or below it, so its middle is never this far above.
constexpr length thickest_rail = metres(0.15);

constexpr duration duration_without_end = days(1e9);

constexpr digits exactly_said = significant(6);
std::string said(length l) { return text_in(l, "m", exactly_said); }
std::string said(area a) { return text_in(a, "m²", exactly_said); }
std::string said(volume v) { return text_in(v, "L", exactly_said); }
std::string said(duration d) { return text_in(d, "d", exactly_said); }
std::string said(practical_salinity s) { return text_of(s.value(), exactly_said); }
std::string said(temperature t) { return text_in(t, "°C", exactly_said); }

/// The most that something can be, where that is said, and how much more passes: for walls, for the doubt of a measure.
template <class Q>
struct bound {
  Q most;
  std::string place;
  Q slack{};
};

/// Hold `value`, read from `key`, to a bound: "0.9 m is above the rim of the display, 0.85 m (vessel.height, line 4)".
template <class Q>
void at_most(const section& in, std::string_view key, const Q& value, const bound<Q>& limit, std::string_view is_past) {
  const double most = limit.most.value();
  if (value.value() <= most + limit.slack.value() + rounding * std::fabs(most)) return;
  in.fail_key(key, said(value) + " " + std::string{is_past} + " " + said(limit.most) + " (" + limit.place + ")");
}

/// An area, and the doubt that such areas agree with.
bound<area> about(area most, std::string place, proportion doubt = areas_agree) {
  return {most, std::move(place), most * doubt.value()};
}

/// The display as the other sections see it. Its outline comes from the keys that the shape was read from.
struct display {
  const twc::vessel_plan& plan;
  section keys;
  bound<length> rim;         ///< above the floor inside
  bound<length> wall;        ///< the longest, along the inside
  bound<length> line;        ///< the longest straight line over the floor
  bound<length> over_walls;  ///< the same, with the walls at its two ends
  bound<length> around;      ///< along all walls

  [[nodiscard]] bound<area> floor() const { return about(vessel::plan_area(plan.display, length{}), wall.place); }
  [[nodiscard]] bound<area> surface_at(length level) const {
    return about(vessel::plan_area(plan.display, level), wall.place);
  }
  [[nodiscard]] volume capacity() const { return plan.display->capacity(); }
};

display display_of(section keys, const twc::vessel_plan& plan) {
  const bool outside = keys.text("measured") == "outside";
  const length walls = 2.0 * (outside ? keys.need<length>("wall_thickness") : thickest_wall);
  const auto across = [&](std::string_view key) {
    return outside ? keys.need<length>(key) - walls : keys.need<length>(key);
  };
  const bound<length> rim{plan.display->height(), keys.place_of("height")};
  const auto seen = [&](length wall, length line, length around, const std::string& place) {
    return display{plan, keys, rim, {wall, place}, {line, place}, {line, place, walls}, {around, place}};
  };
  if (keys.has("diameter")) {
    const length round = across("diameter");
    return seen(std::numbers::pi * round, round, std::numbers::pi * round, keys.place_of("diameter"));
  }
  const length front = across("length");
  const length deep = across("width");
  const length bow = keys.value_or<length>("bow", length{});  // its arc is shorter than chord and twice the bow
  return seen(std::max(front + 2.0 * bow, deep), metres(std::hypot(in_metres(front), in_metres(deep + bow))),
              2.0 * (front + deep + 2.0 * bow), keys.place_of(front >= deep ? "length" : "width"));
}

/// The sump as the other sections see it.
struct sump_seen {
  const plumbing::sump& plan;
  section keys;

  [[nodiscard]] bound<area> floor(proportion doubt = areas_agree) const {
    area sum{};
    for (const plumbing::chamber& one : plan.chambers) sum += one.plan.at(length{});
    return about(sum, keys.place_of("chamber"), doubt);
  }
  [[nodiscard]] bound<length> rim() const { return {plan.rim, keys.place_of("rim")}; }
  [[nodiscard]] bound<length> running_level() const { return {plan.running_level, keys.place_of("running_level")}; }
  [[nodiscard]] volume capacity() const { return plumbing::sump_capacity(plan); }
};

/// All that display and sump can hold.
volume tanks_hold(const display* d, const sump_seen* sump) {
  return (d ? d->capacity() : volume{}) + (sump ? sump->capacity() : volume{});
}

// ---- within a section ---------------------------------------------------------------------------------------------

void refuse_in_sand(const display& d) {
  section keys = d.keys;
  for (section& sand : keys.sections("sand")) {
    for (const std::string_view key : {"depth", "shallow_end", "deep_end"}) {
      if (const auto deep = sand.maybe<length>(key)) {
        at_most(sand, key, *deep, d.rim, "of sand is above the rim of the display,");
      }
    }
    if (const auto run = sand.maybe<length>("run")) {
      at_most(sand, "run", *run, d.line, "is longer than the display inside,");
    }
    if (const auto bed = sand.maybe<area>("area")) {
      at_most(sand, "area", *bed, d.floor(), "is more than the floor of the display,");
    }
  }
}

void refuse_in_walls(const display& d) {
  section keys = d.keys;
  for (section& panel : keys.sections("panel")) {
    at_most(panel, "width", panel.need<length>("width"), d.wall,
            "is wider than the longest wall inside (give the clear width),");
  }
  if (auto brace = keys.sub("brace")) {
    const bound<length> rail{brace->need<length>("rail"), brace->place_of("rail")};
    const bound<length> wall_outside{d.wall.most, d.wall.place, d.over_walls.slack};
    const bound<length> on_the_rim{d.rim.most, d.rim.place, thickest_rail};
    at_most(*brace, "rail", rail.most, wall_outside, "is longer than the longest wall,");
    at_most(*brace, "rail_height", brace->need<length>("rail_height"), on_the_rim,
            "is off the walls, above the rim of the display,");
    at_most(*brace, "span", brace->need<length>("span"), d.over_walls, "is longer than the display,");
    at_most(*brace, "depth", brace->need<length>("depth"), {brace->need<length>("span"), brace->place_of("span")},
            "upright is more than the brace is long,");
    at_most(*brace, "breadth", brace->need<length>("breadth") * static_cast<double>(d.plan.brace->braces.get()), rail,
            "of braces side by side is more than their rail,");
  }
  for (section& lid : keys.sections("lid")) {
    at_most(lid, "span", lid.need<length>("span"), d.over_walls, "is longer than the display,");
  }
  if (auto view = keys.sub("view")) {
    at_most(*view, "nearest_rock", view->need<length>("nearest_rock"), d.line, "is farther than the display reaches,");
    at_most(*view, "thickness", view->value_or<length>("thickness", {}), d.line, "of pane is more than the display,");
  }
}

void refuse_in_stages(const display& d) {
  const std::vector<length>& stages = d.plan.stages;
  for (std::size_t i = 1; i < stages.size(); ++i) {
    if (stages[i] > stages[i - 1]) continue;
    d.keys.fail_key("stages", said(stages[i]) + " does not stand above the stage before it, " + said(stages[i - 1]) +
                                  "; a fill rises");
  }
}

void refuse_in_returns(section& in, const twc::plumbing_plan& plan) {
  section overflow = *in.sub("overflow");
  const bound<length> edge{overflow.need<length>("crest_height"), overflow.place_of("crest_height")};
  constexpr std::string_view under_the_floor =
      "below the overflow edge is under the floor of the display; the edge is at";
  for (section& one : in.sections("return")) {
    const length below = one.need<length>("below_edge");
    at_most(one, "below_edge", below, edge, under_the_floor);
    if (const auto hole = one.maybe<length>("siphon_break")) at_most(one, "siphon_break", *hole, edge, under_the_floor);
    const bool open = one.word("kind", {"submerged", "open"}).value_or(0) == 1;
    if (open && below > plan.level_uncertainty) {
      one.fail_key("kind", "\"open\" ends in the air, but its opening is " + said(below) +
                               " below the overflow edge, under water (" + one.place_of("below_edge") + ")");
    }
    if (!open && plan.edge_to_rim) {
      at_most(one, "below_edge", -below, {*plan.edge_to_rim, in.place_of("edge_to_rim")},
              "above the overflow edge is out of the water (kind = \"open\", where it is); edge to rim is");
    }
  }
}

/// A pipe is not wider than the display. A nominal size is among those that are made.
void refuse_in_bores(section& in, const twc::plumbing_plan& plan) {
  const bound<area> surface{plan.display.surface, in.sub("overflow")->place_of("surface")};
  const auto held = [&](section& pipe) {
    if (!pipe.has("bore")) return;
    const length bore = pipe.need<length>("bore");
    at_most(pipe, "bore", 0.25 * std::numbers::pi * bore * bore, surface, "of opening is more than the whole display,");
  };
  for (const std::string_view one : {"trunk", "pump_inlet"}) {
    if (auto pipe = in.sub(one)) held(*pipe);
  }
  for (const std::string_view many : {"return", "drain"}) {
    for (section& pipe : in.sections(many)) held(pipe);
  }
}

void refuse_in_plumbing(section in, const twc::plumbing_plan& plan, const sump_seen& sump) {
  const bound<length> lift{in.need<length>("lift"), in.place_of("lift")};
  if (lift.most <= sump.plan.running_level.get()) {
    in.fail_key("lift", said(lift.most) + " puts the overflow edge no higher than the water in the sump, " +
                            said(sump.running_level().most) + " (" + sump.running_level().place + ")");
  }
  at_most(in, "reserve", plan.reserve, sump.rim(), "to keep free is more than the sump is high,");
  at_most(in, "level_uncertainty", plan.level_uncertainty, sump.rim(), "of doubt is more than the sump is high,");
  refuse_in_bores(in, plan);
  refuse_in_returns(in, plan);
  constexpr std::string_view under_the_sump = "ends below the floor of the sump; from the overflow edge it is";
  for (section& drain : in.sections("drain")) {
    const bound<length> drop{drain.need<length>("drop"), drain.place_of("drop")};
    at_most(drain, "drop", drop.most, lift, under_the_sump);
    at_most(drain, "inlet_head", drain.need<length>("inlet_head"), drop, "is more than the whole drop of the drain,");
  }
  if (auto box = in.sub("box")) at_most(*box, "falls_by", box->need<length>("falls_by"), lift, under_the_sump);
  if (auto inlet = in.sub("pump_inlet")) {
    at_most(*inlet, "above_floor", inlet->need<length>("above_floor"), sump.running_level(),
            "is not under water; the sump runs at");
  }
}

void refuse_in_start_up(section in, const twc::start_up_forecast& weeks, bool forecast) {
  const bound<duration> end{forecast ? weeks.horizon : duration_without_end,
                            in.has("horizon") ? in.place_of("horizon") : "horizon, where it is not given"};
  constexpr std::string_view too_late = "is after the end of the forecast,";
  at_most(in, "rock_on", weeks.rock_on, end, too_late);
  std::optional<bound<duration>> before;
  for (section& step : in.sections("animals")) {
    const duration on = step.need<duration>("on");
    if (before && on <= before->most) {
      step.fail_key("on", said(on) + " is not after the step before it, " + said(before->most) + " (" + before->place +
                              "); put the steps in order");
    }
    at_most(step, "on", on, end, too_late);
    before = {on, step.place_of("on")};
  }
  for (const std::string_view kind : {"culture", "ammonia_dose", "water_change"}) {
    for (section& one : in.sections(kind)) at_most(one, "first", one.value_or<duration>("first", {}), end, too_late);
  }
}

// ---- between sections ---------------------------------------------------------------------------------------------

/// The overflow edge and the surface it skims, in the display that they belong to.
void refuse_overflow(section in, const twc::plumbing_plan& plan, const display& d) {
  section overflow = *in.sub("overflow");
  const length edge = overflow.need<length>("crest_height");
  at_most(overflow, "crest_height", edge, d.rim, "is above the rim of the display,");
  if (!plan.circuit.pumps.empty()) {
    const bound<length> water{d.plan.water_level, d.keys.place_of("water_level"), plan.level_uncertainty};
    at_most(overflow, "crest_height", edge, water, "is above the water, which runs over it; that is at");
  }
  if (plan.edge_to_rim) {
    at_most(in, "edge_to_rim", *plan.edge_to_rim, {d.rim.most - edge, d.rim.place, plan.level_uncertainty},
            "is more than the display has above its overflow edge,");
  }
  if (overflow.has("gaps")) {
    const double gaps = overflow.need<double>("gaps");
    const length comb = gaps * overflow.need<length>("gap_width") + (gaps - 1.0) * overflow.need<length>("tooth_width");
    at_most(overflow, "gaps", comb, d.around, "of comb is more than all walls of the display,");
  } else {
    at_most(overflow, "width", overflow.need<length>("width"), d.around, "is wider than all walls of the display,");
    at_most(overflow, "thickness", overflow.value_or<length>("thickness", {}), d.line, "is more than the display,");
  }
  const area has = d.surface_at(std::min(edge, d.rim.most)).most;
  at_most(overflow, "surface", plan.display.surface.get(), about(has, d.wall.place, plan.area_uncertainty),
          "is more than the display has at its overflow edge,");
}

/// A sump within the footprint of the stand is not larger than it.
void refuse_sump_below(const display& d, const sump_seen& sump) {
  if (!d.plan.floor || !d.plan.floor->sump_below) return;
  section floor = *section{d.keys}.sub("floor");
  at_most(sump.keys, "chamber", sump.floor().most, {d.plan.floor->footprint, floor.place_of("footprint")},
          "of chambers is more than the footprint it stands in (sump_below = false, where it stands elsewhere),");
}

void refuse_hold(section in, const display& d) {
  at_most(in, "surface", in.need<area>("surface"), d.surface_at(d.plan.water_level), "is more than the display has,");
  if (const auto depth = in.maybe<length>("depth")) {
    at_most(in, "depth", *depth, d.rim, "is above the rim of the display,");
  }
  if (const auto held = in.maybe<volume>("capacity")) {
    at_most(in, "capacity", *held, {d.capacity(), d.rim.place, d.capacity() * areas_agree.value()},
            "is more than the display holds up to its rim,");
  }
}

/// The room by its three sides, and what stands on its floor.
void refuse_on_the_floor(section in, const twc::plan& build, const display* d, const sump_seen* sump) {
  const length across = in.need<length>("length");
  const length deep = in.need<length>("width");
  const length high = in.need<length>("height");
  const bound<area> floor{across * deep, in.place_of("length")};
  const bound<length> corner_to_corner{metres(std::hypot(in_metres(across), in_metres(deep))), floor.place};
  const bound<length> ceiling{high, in.place_of("height")};
  if (d) {
    section vessel = d->keys;
    const std::string_view size = vessel.has("diameter") ? "diameter" : "length";
    at_most(vessel, size, d->line.most, corner_to_corner, "of display, corner to corner, is more than the room,");
    at_most(vessel, size, d->floor().most, floor, "of display is more than the floor of the room,");
    at_most(vessel, "height", d->rim.most, ceiling, "is higher than the room,");
    if (build.vessel->floor) {
      at_most(*vessel.sub("floor"), "footprint", build.vessel->floor->footprint.get(), floor,
              "is more than the floor of the room,");
    }
  }
  if (sump) {
    section keys = sump->keys;
    at_most(keys, "chamber", sump->floor().most, floor, "of chambers is more than the floor of the room,");
    at_most(keys, "rim", sump->plan.rim.get(), ceiling, "is higher than the room,");
    for (section& baffle : keys.sections("baffle")) {
      at_most(baffle, "width", baffle.need<length>("width"), corner_to_corner, "is wider than the room,");
    }
  }
}

/// Walls, floor and cover of the display, as far as heat goes through them.
void refuse_heated_walls(section in, const display& d) {
  auto heating = in.sub("heating");
  if (!heating) return;
  // Twice as much passes: the outside of thick walls, and the sump.
  const area all = d.around.most * d.rim.most + 2.0 * d.floor().most;
  for (section& wall : heating->sections("wall")) {
    at_most(wall, "area", wall.need<area>("area"), {all, d.wall.place, all}, "is more than all of the display,");
    at_most(wall, "thickness", wall.value_or<length>("thickness", {}), d.line, "of wall is more than the display,");
  }
}

/// The room, and what stands in it.
void refuse_room(section in, const twc::plan& build, const display* d, const sump_seen* sump) {
  const volume tanks = tanks_hold(d, sump);
  const volume room = build.room->volume;
  if (in.has("volume") && tanks >= room) {
    in.fail_key("volume", said(room) + " does not hold its tanks, " + said(tanks) + " (" +
                              (d ? d->rim.place : sump->rim().place) + ")");
  }
  if (!in.has("volume")) refuse_on_the_floor(in, build, d, sump);
  if (d) refuse_heated_walls(in, *d);
  const auto open = [&](std::string_view key, const bound<area>& has, std::string_view is_past) {
    auto surface = in.sub(key);
    if (!surface) return;
    if (const auto wet = surface->maybe<area>("area")) at_most(*surface, "area", *wet, has, is_past);
  };
  if (d) open("display", d->surface_at(d->plan.water_level), "is more than the display has,");
  if (sump) open("sump", sump->floor(), "is more than the sump has,");
}

/// What the animals stand without power, against the water as it runs.
void refuse_outage(section in, const twc::room_plan& room, std::optional<section> water) {
  auto heating = in.sub("heating");
  if (!heating || !room.heating->outage || !(room.water || water)) return;
  const section& from = room.water ? in : *water;
  const std::string_view key = room.water ? "water_temperature" : "temperature";
  const temperature now = room.water ? *room.water : water->need<temperature>(key);
  const temperature lowest = room.heating->outage->lowest;
  if (lowest < now) return;
  heating->sub("outage")->fail_key(
      "lowest", said(lowest) + " is not below the water as it runs, " + said(now) + " (" + from.place_of(key) + ")");
}

/// What the animals stand, against the salinity of the water they are to live in.
void refuse_salinities(section in, const twc::room_plan& room, const std::optional<twc::water_plan>& planned,
                       std::optional<section> water) {
  auto top_off = in.sub("top_off");
  if (!top_off || !(room.salinity || planned)) return;
  const practical_salinity now = room.salinity ? *room.salinity : twc::detail::target_of(*planned).central;
  const auto refuse = [&](std::string_view key, practical_salinity limit, const std::string& relation) {
    const std::string place = room.salinity         ? in.place_of("salinity")
                              : planned->older_tank ? water->place_of("older_tank")
                                                    : water->place_of("target");
    top_off->fail_key(key, said(limit) + " is " + relation + " the water has, " + said(now) + " (" + place + ")");
  };
  if (room.top_off->lowest > now) refuse("lowest_salinity", room.top_off->lowest, "above what");
  if (room.top_off->highest < now) refuse("highest_salinity", room.top_off->highest, "below what");
}

/// The chamber of the return pump, as the top-off and as the sump give it.
void refuse_top_off(section in, const twc::plumbing_plan& plan, section of_plumbing, const sump_seen& sump) {
  auto top_off = in.sub("top_off");
  auto chamber = top_off ? top_off->sub("chamber") : std::nullopt;
  if (!chamber) return;
  at_most(*chamber, "surface", chamber->need<area>("surface"), sump.floor(plan.area_uncertainty),
          "is more than all chambers of the sump,");
  at_most(*chamber, "running_level", chamber->need<length>("running_level"), sump.rim(),
          "is above the rim of the sump,");
  const length lowest = chamber->need<length>("lowest_level");
  if (plan.inlet && lowest < plan.inlet->above_floor.get()) {
    chamber->fail_key("lowest_level", said(lowest) + " leaves the inlet of the pump in the air, which reaches up to " +
                                          said(plan.inlet->above_floor.get()) + " (" +
                                          of_plumbing.sub("pump_inlet")->place_of("above_floor") + ")");
  }
}

/// What lives in the display is not larger than it.
void refuse_life(section in, const display& d, const sump_seen* sump) {
  const area floors = d.floor().most + (sump ? sump->floor().most : area{});
  for (section& one : in.sections("surface")) {
    if (const auto bed = one.maybe<area>("bed")) {
      at_most(one, "bed", *bed, about(floors, d.wall.place), "of sand is more than the floor of display and sump,");
      at_most(one, "breathing_depth", one.need<length>("breathing_depth"), d.rim,
              "of sand is above the rim of the display,");
    }
    if (const auto media = one.maybe<volume>("volume")) {
      at_most(one, "volume", *media, {tanks_hold(&d, sump), d.rim.place},
              "of media is more than display and sump hold,");
    }
  }
  if (auto room = in.sub("room")) {
    at_most(*room, "run", room->need<length>("run"), d.line, "is longer than the display inside,");
  }
}

}  // namespace

void refuse_contradictions(section top, const twc::plan& build) {
  std::optional<display> tank;
  std::optional<sump_seen> below;
  auto plumbing = top.sub("plumbing");
  if (auto keys = top.sub("vessel")) tank.emplace(display_of(*keys, *build.vessel));
  if (plumbing) below.emplace(sump_seen{build.plumbing->sump, *plumbing->sub("sump")});
  const display* const d = tank ? &*tank : nullptr;
  const sump_seen* const sump = below ? &*below : nullptr;

  if (d) {
    refuse_in_sand(*d);
    refuse_in_walls(*d);
    refuse_in_stages(*d);
    if (sump) refuse_sump_below(*d, *sump);
  }
  if (auto hold = top.sub("hold"); hold && d) refuse_hold(*hold, *d);
  if (plumbing) {
    refuse_in_plumbing(*plumbing, *build.plumbing, *sump);
    if (d) refuse_overflow(*plumbing, *build.plumbing, *d);
  }
  if (auto room = top.sub("room")) {
    refuse_room(*room, build, d, sump);
    refuse_outage(*room, *build.room, top.sub("water"));
    refuse_salinities(*room, *build.room, build.water, top.sub("water"));
    if (auto top_off = room->sub("top_off"); top_off && d && sump && top_off->has("free_volume")) {
      at_most(*top_off, "free_volume", top_off->need<volume>("free_volume"), {tanks_hold(d, sump), d->rim.place},
              "to run into is more than display and sump hold,");
    }
    if (plumbing) refuse_top_off(*room, *build.plumbing, *plumbing, *sump);
  }
  if (auto life = top.sub("life")) {
    if (auto weeks = life->sub("start_up")) refuse_in_start_up(*weeks, build.life->weeks, build.life->forecast);
    if (d) refuse_life(*life, *d, sump);
  }
}

}  // namespace plan_file
