// SPDX-License-Identifier: BSL-1.0
// Keys of two sections that cannot all be true.
#include "contradictions.hpp"

namespace plan_file {

namespace {

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
    refuse_within(*d);
    if (sump) refuse_sump_below(*d, *sump);
  }
  if (auto hold = top.sub("hold"); hold && d) refuse_hold(*hold, *d);
  if (plumbing) {
    refuse_within(*plumbing, *build.plumbing, *sump);
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
    if (auto weeks = life->sub("start_up")) refuse_within(*weeks, build.life->weeks, build.life->forecast);
    if (d) refuse_life(*life, *d, sump);
  }
}

}  // namespace plan_file
