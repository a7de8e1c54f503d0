// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/hold.hpp>
#include <tankwright/plan/usual.hpp>

// Keys read as a list: name, value and what is said of it.
// clang-format off

namespace tankwright::plan {

namespace detail {

inline const range_of<flow_rate> leaks{litres_per_day(1e-6), cubic_metres_per_hour(1000.0)};
inline const range_of<length> gauge_steps{millimetres(1e-6), metres(1.0)};
inline const range_of<length> marks{metres(-100.0), metres(100.0)};  ///< a level from any mark

}  // namespace detail

TANKWRIGHT_INLINE void describe(visitor& key, planned_leak_test& s) {
  key("leak", s.leak, {.means = "leak that would matter, where [hold] does not give it", .limits = detail::leaks,
                       .set_by = wanted});
  key("resolution", s.resolution, {.means = "smallest step that the gauge shows", .limits = detail::gauge_steps,
                                   .needed = true, .set_by = chosen,
                                   .choose_between = {{millimetres(0.02), millimetres(1.0)}},
                                   .step = millimetres(0.01)});
  key("scatter", s.scatter, {.means = "of a reading beyond its rounding, as a standard deviation",
                             .limits = {metres(0.0), metres(1.0)}, .doubt = known_within_factor(2.0)});
  key("readings_per_day", s.readings_per_day, {.means = "readings a day", .limits = {0.01, 100000.0},
                                               .set_by = chosen, .choose_between = {{1.0, 24.0}}, .step = 1.0});
  key("pan", s.pan, {.means = "whether a pan with the same water is read each time", .set_by = chosen});
  key("evaporation", s.evaporation, {.means = "fall by evaporation, where there is no pan",
                                     .limits = {millimetres_per_day(0.0), millimetres_per_day(1000.0)},
                                     .doubt = usual::given_evaporation, .doubt_asked = true});
  key.replaced("evaporation_uncertainty", "write it with the evaporation: evaporation = \"3 mm/d +/- 35 %\"");
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, counted_drip& s) {
  key("label", s.label, {.means = "where it drips", .needed = true});
  key("drops", s.drops, {.means = "drops that were counted", .limits = {1.0, 100000.0}, .needed = true,
                         .whole = true});
  key("over", s.over, {.means = "time in which they fell", .limits = {seconds(1.0), days(365.0)}, .needed = true,
                       .doubt = seconds(1.0)});
  key("drop", s.drop, {.means = "volume of one drop, from some caught in a measure; about 0.05 mL where not given",
                       .limits = {millilitres(0.001), millilitres(1.0)}, .doubt = known_within(percent(10.0))});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, tested_part& s) {
  key("label", s.label, {.means = "what the report calls it", .needed = true});
  key("surface", s.surface, {.means = "horizontal area of its water", .limits = usual::surface, .needed = true,
                             .doubt = usual::surfaces});
  key("depth", s.depth, {.means = "of its water, for the swelling as it warms", .limits = usual::built, .needed = true,
                         .doubt = usual::tape});
  key("levels", s.levels, {.means = "of its water at the times of [hold], counted upwards from any mark",
                           .limits = detail::marks, .needed = true});
  key("pan", s.pan, {.means = "levels in a pan that floats in it", .limits = detail::marks});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, hold_section& s) {
  key("surface", s.surface, {.means = "horizontal area of the water, of all vessels that are connected",
                             .limits = usual::surface, .needed = true, .doubt = usual::surfaces});
  key("capacity", s.capacity, {.means = "water in the tank, for the criterion of a reservoir", .limits = usual::water,
                               .doubt = usual::metered});
  key("depth", s.depth, {.means = "of the water, for its swelling as it warms", .limits = usual::built,
                         .doubt = usual::tape});
  key("resolution", s.resolution, {.means = "smallest step that the gauge shows", .limits = detail::gauge_steps});
  key("leak", s.leak, {.means = "leak that would matter; a litre a day where not given", .limits = detail::leaks,
                       .set_by = wanted});
  key("criterion", s.criterion, {"AWWA D110", "AWWA 1978", "BS 5337", "ACI 350.1 class 025"},
      {.means = "of a reservoir, to be shown beside the answer", .set_by = wanted});
  key("times", s.times, {.means = "of the readings, in order", .limits = usual::time});
  key("levels", s.levels, {.means = "of the water at those times, counted upwards from any mark",
                           .limits = detail::marks});
  key("pan", s.pan, {.means = "levels in a pan that floats in the tank, which takes evaporation out",
                     .limits = detail::marks});
  key("water", s.water, {.means = "temperature of the water at those times, which swells it",
                         .limits = usual::liquid_water, .doubt = usual::thermometer});
  key("reader", s.reader, {.means = "who read each level, as a number from 1; two people read a little differently",
                           .limits = {1.0, 20.0}, .whole = true});
  key("salinity", s.salinity, {.means = "practical salinity of the water in the tank",
                               .limits = {practical_salinity{0.0}, practical_salinity{300.0}}});
  key("confidence", s.confidence, {.means = "of each one-sided limit", .limits = {percent(50.1), percent(99.9999)},
                                   .set_by = wanted});
  key("water_temperature", s.water_temperature,
      {.means = "for the evaporation; the first of the readings where not given, else 20 degrees Celsius",
       .limits = usual::liquid_water, .doubt = usual::thermometer});
  key("air_temperature", s.air_temperature, {.means = "of the room, for the evaporation where there is no pan",
                                             .limits = usual::air, .doubt = kelvin_steps(1.0)});
  key("air_humidity", s.air_humidity,
      {.means = "relative humidity of the room",
       .limits = {relative_humidity::from_percent(0.0), relative_humidity::from_percent(100.0)},
       .doubt = relative_humidity::from_percent(5.0)});
  key("drip", s.drip, {.means = "drops that were counted under a seam or a fitting"});
  key("part", s.part, {.means = "each other part that was tested at the same times, shut off from the rest"});
  key("planned", s.planned, {.means = "a test that is still to be done"});
  describe_note(key, s.note);
  key.together({"times", "levels"});
  key.together({"air_temperature", "air_humidity"});
}

}  // namespace tankwright::plan
