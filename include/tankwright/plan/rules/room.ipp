// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <cmath>
#include <optional>
#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/reading_inputs.hpp>
#include <tankwright/plan/rules/display_bounds.hpp>
#include <tankwright/plan/rules/reading_rules.hpp>
#include <tankwright/plan/rules/rules.hpp>
#include <tankwright/plan/usual.hpp>
#include <tankwright/water/freezing.hpp>

namespace tankwright::plan::rules {

namespace detail {

/// Salt of the running tank where the plan says it, and the key that does.
struct known_salinity {
  practical_salinity is;
  std::string path;
};

[[nodiscard]] inline std::optional<known_salinity> salinity_of(const build& build) {
  const room_section& r = *build.room;
  if (r.salinity) return known_salinity{*r.salinity, "room.salinity"};
  if (!build.water) return std::nullopt;
  if (!build.water->older_tank) {
    return known_salinity{build.water->target.value_or(practical_salinity{35.0}), "water.target"};
  }
  try {
    return known_salinity{plan::salinity_of(inputs_of(*build.water->older_tank)).central, "water.older_tank"};
  } catch (const error&) {
    return std::nullopt;  // the reading is told off by itself
  }
}

inline void hold_season(const std::string& path, const season& s, book& all) {
  if (s.coldest_night && s.outdoors && *s.coldest_night > *s.outdoors) {
    all.refuse(path + ".coldest_night",
               all.said(s.coldest_night) + " is warmer than the mean of the season, " + all.said(s.outdoors),
               path + ".outdoors");
  }
}

/// The room by its three sides, and what stands on its floor.
inline void hold_on_the_floor(const build& build, const std::optional<display_bounds>& d,
                              const std::optional<sump_bounds>& sump, book& all) {
  const room_section& r = *build.room;
  const length across = *r.length, deep = *r.width;
  const bound<area> floor{across * deep, "room.length"};
  const bound<length> corner_to_corner{metres(std::hypot(in_metres(across), in_metres(deep))), "room.length"};
  const bound<length> ceiling{*r.height, "room.height"};
  if (d) {
    all.at_most(d->line.path, d->line.most, corner_to_corner, "of display, corner to corner, is more than the room,");
    all.at_most(d->line.path, d->floor().most, floor, "of display is more than the floor of the room,");
    all.at_most(d->rim.path, d->rim.most, ceiling, "is higher than the room,");
    if (build.vessel->floor) {
      all.at_most("vessel.floor.footprint", build.vessel->floor->footprint, floor,
                  "is more than the floor of the room,");
    }
  }
  if (sump) {
    all.at_most("plumbing.sump.chamber", sump->chambers, floor, "of chambers is more than the floor of the room,");
    all.at_most(sump->rim.path, sump->rim.most, ceiling, "is higher than the room,");
    const auto& baffles = build.plumbing->sump->baffle;
    for (std::size_t i = 0; i < baffles.size(); ++i) {
      all.at_most(element("plumbing.sump.baffle", baffles, i) + ".width", baffles[i].width, corner_to_corner,
                  "is wider than the room,");
    }
  }
}

/// The room holds its tanks.
inline void hold_size(const build& build, const std::optional<display_bounds>& d,
                      const std::optional<sump_bounds>& sump, book& all) {
  const room_section& r = *build.room;
  if (r.length && r.width && r.height) hold_on_the_floor(build, d, sump, all);
  const volume tanks = tanks_hold(d, sump);
  if (r.volume && (d || sump) && tanks >= *r.volume) {
    all.refuse("room.volume", all.said(r.volume) + " does not hold its tanks, " + all.said(tanks),
               d ? d->rim.path : sump->rim.path);
  }
}

/// Surfaces that other sections know are not given again.
inline void hold_surfaces(const build& build, book& all) {
  const room_section& r = *build.room;
  const bool overflow = build.plumbing && build.plumbing->overflow;
  if (r.display && r.display->surface.area.given() && (build.vessel || overflow)) {
    const std::string from = build.vessel ? "vessel" : "plumbing.overflow.surface";
    all.refuse("room.display.area", "is what " + from + " gives; leave it out", from);
  }
  if (r.sump && r.sump->surface.area.given() && build.plumbing && build.plumbing->sump) {
    all.refuse("room.sump.area", "is what plumbing.sump.chamber gives; leave it out", "plumbing.sump.chamber");
  }
}

/// Walls, floor and cover of the display, as far as heat goes through them.
inline void hold_tank_walls(const room_section& r, const std::optional<display_bounds>& d, book& all) {
  if (!r.heating || !d) return;
  // Twice as much passes: the outside of thick walls, and the sump.
  const area most = d->around.most * d->rim.most + 2.0 * d->floor().most;
  const auto& walls = r.heating->wall;
  for (std::size_t i = 0; i < walls.size(); ++i) {
    const std::string path = element("room.heating.wall", walls, i);
    all.at_most(path + ".area", walls[i].area, {most, d->wall.path, most}, "is more than all of the display,");
    all.at_most(path + ".thickness", walls[i].thickness, d->line, "of wall is more than the display,");
  }
}

/// What the animals stand without power, or with too much of it, against the water as it runs.
inline void hold_outage(const build& build, book& all) {
  const room_section& r = *build.room;
  const bool own = r.water_temperature.known();
  if (!r.heating || (!own && !(build.water && build.water->temperature))) return;
  const temperature now = own ? *r.water_temperature : *build.water->temperature;
  const std::string from = own ? "room.water_temperature" : "water.temperature";
  const auto& highest = r.heating->highest;
  if (highest && !(*highest > now)) {
    all.refuse("room.heating.highest", all.said(*highest) + " is not above the water as it runs, " + all.said(now),
               from);
  }
  if (!r.heating->outage || !r.heating->outage->lowest) return;
  const temperature lowest = *r.heating->outage->lowest;
  if (lowest < now) return;
  all.refuse("room.heating.outage.lowest", all.said(lowest) + " is not below the water as it runs, " + all.said(now),
             from);
}

/// What the animals stand, against the salinity of the water they are to live in.
inline void hold_salinities(const build& build, book& all) {
  const top_off& t = *build.room->top_off;
  if (!(*t.highest_salinity > *t.lowest_salinity)) {
    all.refuse("room.top_off.highest_salinity",
               all.said(t.highest_salinity) + " is not above lowest_salinity, " + all.said(t.lowest_salinity),
               "room.top_off.lowest_salinity");
    return;
  }
  const auto now = salinity_of(build);
  if (!now) return;
  const auto refuse = [&](const char* key, const value<practical_salinity>& limit, const char* relation) {
    all.refuse(std::string{"room.top_off."} + key,
               all.said(limit) + (limit.given() ? "" : ", which is taken where nobody says otherwise,") + " is " +
                   relation + " what the water has, " + all.said(now->is),
               now->path);
  };
  if (*t.lowest_salinity > now->is) refuse("lowest_salinity", t.lowest_salinity, "above");
  if (*t.highest_salinity < now->is) refuse("highest_salinity", t.highest_salinity, "below");
}

/// The chamber of the return pump: with a sump its surface and its running level are the sump's.
inline void hold_pump_chamber(const build& build, book& all) {
  if (!build.room->top_off->chamber) return;
  const pump_chamber& c = *build.room->top_off->chamber;
  const std::string path = "room.top_off.chamber";
  const bool has_sump = build.plumbing && build.plumbing->sump;
  const auto once = [&](const char* key, bool given, const std::string& from, const char* example) {
    if (has_sump && given) {
      all.refuse(path + "." + key, "is that of the sump; leave it out", from);
    } else if (!has_sump && !given) {
      all.refuse(path + "." + key,
                 std::string{"is missing: without [plumbing] nothing else gives it, for instance "} + example);
    }
  };
  once("surface", c.surface.given(), "plumbing.sump.chamber", "\"0.3 m2\"");
  once("running_level", c.running_level.given(), "plumbing.sump.running_level", "\"25 cm\"");
  const value<length>& running = has_sump ? build.plumbing->sump->running_level : c.running_level;
  if (!c.lowest_level) return;
  if (running && *c.lowest_level > *running) {
    const std::string from = has_sump ? "plumbing.sump.running_level" : path + ".running_level";
    all.refuse(path + ".lowest_level", all.said(c.lowest_level) + " is above the running level, " + all.said(running),
               from);
  }
  if (!build.plumbing || !build.plumbing->pump_inlet || !build.plumbing->pump_inlet->above_floor) return;
  const length inlet = *build.plumbing->pump_inlet->above_floor;
  if (*c.lowest_level < inlet) {
    all.refuse(path + ".lowest_level",
               all.said(c.lowest_level) + " leaves the inlet of the pump in the air, which reaches up to " +
                   all.said(inlet, c.lowest_level),
               "plumbing.pump_inlet.above_floor");
  }
}

/// Circuits have labels of their own, and what is plugged in names one of them.
inline void hold_circuits(const room_section& r, book& all) {
  for (std::size_t i = 0; i < r.circuit.size(); ++i) {
    hold_label("room.circuit", r.circuit, i, "circuits", all);
  }
  for (std::size_t i = 0; i < r.appliance.size(); ++i) {
    const std::string& named = r.appliance[i].circuit;
    bool found = named.empty();
    for (const circuit& one : r.circuit) found = found || one.label == named;
    if (!found) {
      all.refuse(element("room.appliance", r.appliance, i) + ".circuit", named + " is no circuit of the plan",
                 "room.circuit");
    }
  }
}

/// A year has twelve months.
inline void hold_year(const months_of_year& y, book& all) {
  const auto twelve = [&](const char* key, std::size_t count, bool one_will_do) {
    if (count == 12 || (one_will_do && count == 1)) return;
    all.refuse(std::string{"room.year."} + key, "has " + std::to_string(count) + " entries, a year has 12 months" +
                                                    (one_will_do ? "; one stands for all" : ""));
  };
  twelve("outdoors", y.outdoors.size(), false);
  twelve("humidity", y.humidity.size(), false);
  twelve("indoors", y.indoors.size(), true);
}

}  // namespace detail

TANKWRIGHT_INLINE void hold_room(const build& build, book& all) {
  if (!build.room) return;
  const room_section& r = *build.room;
  const auto d = bounds_of(build);
  const auto sump = sump_bounds_of(build);
  if (r.winter) detail::hold_season("room.winter", *r.winter, all);
  if (r.summer) detail::hold_season("room.summer", *r.summer, all);
  detail::hold_size(build, d, sump, all);
  detail::hold_surfaces(build, all);
  detail::hold_tank_walls(r, d, all);
  detail::hold_outage(build, all);
  detail::hold_circuits(r, all);
  if (r.year) detail::hold_year(*r.year, all);
  hold_salinity("room.salinity", r.salinity, all);
  if (r.water_volume && half_width(r.water_volume, usual::metered) >= r.water_volume.si()) {
    all.refuse("room.water_volume", "has a doubt that leaves no water");
  }
  if (!r.top_off) return;
  hold_salinity("room.top_off.lowest_salinity", r.top_off->lowest_salinity, all);
  hold_salinity("room.top_off.highest_salinity", r.top_off->highest_salinity, all);
  detail::hold_salinities(build, all);
  detail::hold_pump_chamber(build, all);
  if (d && sump) {
    all.at_most("room.top_off.free_volume", r.top_off->free_volume, {tanks_hold(d, sump), d->rim.path},
                "to run into is more than display and sump hold,");
  }
}

}  // namespace tankwright::plan::rules
