// SPDX-License-Identifier: BSL-1.0
// Keys of one section that cannot all be true.
#include "contradictions.hpp"

namespace plan_file {

namespace {

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

}  // namespace

void refuse_within(section in, const twc::plumbing_plan& plan, const sump_seen& sump) {
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

void refuse_within(section in, const twc::start_up_forecast& weeks, bool forecast) {
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

void refuse_within(const display& vessel) {
  refuse_in_sand(vessel);
  refuse_in_walls(vessel);
  refuse_in_stages(vessel);
}

}  // namespace plan_file
