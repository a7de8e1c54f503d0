// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/life.hpp>
#include <tankwright/plan/usual.hpp>

// Keys read as a list: name, value and what is said of it.
// clang-format off

namespace tankwright::plan {

namespace detail {

// How well these are usually known: common practice, no source.
inline const usual_doubt food_by_a_scale = known_within(percent(5.0));
inline const usual_doubt protein_of_a_label = known_within(percent(10.0));
inline const usual_doubt nitrogen_measured = known_within(percent(20.0));
inline const usual_doubt share_of_a_film = known_within_factor(2.0);
inline const usual_doubt alive_in_a_bottle = known_within_factor(3.0);
inline const usual_doubt protected_surface = known_within(percent(25.0));
inline const usual_doubt breathing = known_within_factor(1.5);
inline const usual_doubt use_of_a_kind = known_within(percent(30.0));
inline const usual_doubt mass_of_an_animal = known_within(percent(10.0));
inline const usual_doubt air_of_a_stone = known_within(percent(30.0));
inline const usual_doubt share_of_a_pass = known_within(percent(20.0));
inline constexpr double alkalinity_kit = 0.3;  ///< in the unit of the kit, as for dKH

inline const range_of<mass_flow> food_range{grams_per_day(0.0), kilograms_per_day(1000.0)};
inline const range_of<mass_concentration> levels_to_stay_below{micrograms_per_litre(0.01),
                                                               milligrams_per_litre(1000.0)};

inline void describe_repeated(visitor& key, repeated& s) {
  key("first", s.first, {.means = "day of the first", .limits = usual::time, .set_by = chosen,
                         .choose_between = {{days(0.0), days(60.0)}}, .step = days(1.0)});
  key("times", s.times, {.means = "how often in all", .limits = {1.0, 1000.0}, .whole = true, .set_by = chosen,
                         .choose_between = {{1.0, 20.0}}, .step = 1.0});
  key("every", s.every, {.means = "from one to the next", .limits = {minutes(1.0), days(36500.0)}, .set_by = chosen,
                         .choose_between = {{days(1.0), days(14.0)}}, .step = days(1.0)});
}

}  // namespace detail

TANKWRIGHT_INLINE void describe(visitor& key, food& s) {
  key("name", s.name, {.means = "what the report calls it"});
  key("amount", s.amount, {.means = "food as given, in the mean of the days", .limits = detail::food_range,
                           .needed = true, .set_by = chosen,
                           .choose_between = {{grams_per_day(1.0), grams_per_day(500.0)}}, .step = grams_per_day(1.0),
                           .doubt = detail::food_by_a_scale});
  key("protein", s.protein, {.means = "protein in the food as given", .limits = usual::part_of_whole, .needed = true,
                             .doubt = detail::protein_of_a_label});
  key("kind", s.kind, {"dry", "wet"},
      {.means = "dry for pellets and flakes for bony fish; wet for frozen and live food, and all "
                "that sharks and rays get",
       .needed = true});
  key("every", s.every, {.means = "from one meal to the next; a day where they are fed daily",
                         .limits = {minutes(1.0), days(365.0)}, .set_by = chosen,
                         .choose_between = {{days(1.0), days(7.0)}}, .step = days(1.0)});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, moved_rock& s) {
  key("moved", s.moved, {.means = "rock that moves, wet and without delay", .limits = usual::weight_or_none,
                         .needed = true, .set_by = chosen, .choose_between = {{kilograms(0.0), kilograms(500.0)}},
                         .step = kilograms(1.0), .doubt = usual::weighed});
  key("of", s.whole, {.means = "all the rock of the older tank", .limits = usual::weight, .needed = true,
                      .doubt = usual::weighed});
  key("nitrogen", s.nitrogen, {.means = "ammonia nitrogen that all of it has kept up with, where it was measured",
                               .limits = {milligrams_per_hour(0.001), kilograms_per_day(100.0)},
                               .doubt = detail::nitrogen_measured});
  key("food", s.food, {.means = "what the older tank was fed while it stayed clear"});
  describe_note(key, s.note);
  key.alternatives({"nitrogen", "food"}, true);
}

TANKWRIGHT_INLINE void describe(visitor& key, filter_surface& s) {
  key("name", s.name, {.means = "what the report calls it"});
  key("area", s.area, {.means = "the wet surface itself", .limits = {square_metres(0.0), square_metres(1e7)},
                       .set_by = chosen, .choose_between = {{square_metres(0.0), square_metres(200.0)}},
                       .step = square_metres(1.0), .doubt = detail::protected_surface});
  key("volume", s.volume, {.means = "volume of media", .limits = usual::water_or_none, .set_by = chosen,
                           .choose_between = {{litres(0.0), litres(500.0)}}, .step = litres(1.0),
                           .doubt = usual::metered});
  key("specific_surface", s.specific_surface,
      {.means = "protected surface of the media for their volume, not the nominal one",
       .limits = {square_metres_per_cubic_metre(0.0), square_metres_per_cubic_metre(1e6)},
       .doubt = detail::protected_surface});
  key("bed", s.bed, {.means = "horizontal area of a bed of sand", .limits = usual::surface_or_none,
                     .doubt = usual::surfaces});
  key("breathing_depth", s.breathing_depth, {.means = "the upper sand that breathes", .limits = usual::building,
                                             .doubt = detail::breathing});
  key("grain", s.grain, {.means = "diameter of its grains", .limits = {micrometres(1.0), metres(1.0)},
                         .doubt = known_within(percent(20.0))});
  key("porosity", s.porosity, {.means = "pores between the grains, of the whole",
                               .limits = {porosity{0.0}, porosity{0.99}},
                               .doubt = porosity{0.03}});
  key("rock", s.rock, {.means = "dry rock by its weight", .limits = usual::weight_or_none, .set_by = chosen,
                       .choose_between = {{kilograms(0.0), kilograms(500.0)}}, .step = kilograms(1.0),
                       .doubt = usual::weighed});
  key("piece", s.piece, {.means = "mean diameter of its pieces", .limits = {millimetres(1.0), metres(5.0)},
                         .doubt = known_within(percent(25.0))});
  key("density", s.density, {.means = "of a dry piece of rock with its pores",
                             .limits = {kilograms_per_cubic_metre(100.0), kilograms_per_cubic_metre(5000.0)},
                             .doubt = known_within(percent(15.0))});
  key("roughness", s.roughness, {.means = "wet outside of the rock over that of a smooth ball as large",
                                 .limits = {1.0, 100.0}, .doubt = known_within_factor(2.0)});
  key("seeded", s.seeded, {.means = "share of the mature film that is there today", .limits = usual::part_of_whole,
                           .doubt = detail::share_of_a_film});
  describe_note(key, s.note);
  key.alternatives({"area", "volume", "bed", "rock"}, true);
  key.together({"volume", "specific_surface"});
  key.together({"bed", "breathing_depth", "grain"});
  key.together({"rock", "piece"});
}

TANKWRIGHT_INLINE void describe(visitor& key, stocking_step& s) {
  key("on", s.on, {.means = "from this day on", .limits = usual::time, .needed = true, .set_by = chosen,
                   .choose_between = {{days(0.0), days(120.0)}}, .step = days(1.0)});
  key("share", s.share, {.means = "this share of the animals is in and fed", .limits = usual::part_of_whole,
                         .needed = true, .set_by = chosen, .choose_between = {{percent(0.0), percent(100.0)}},
                         .step = percent(5.0)});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, bottled_culture& s) {
  key("oxidises", s.oxidises, {.means = "nitrogen that a dose keeps up with; hardly any bottle says it",
                               .limits = {grams_per_day(0.0), kilograms_per_day(100.0)}, .needed = true,
                               .doubt = detail::alive_in_a_bottle});
  detail::describe_repeated(key, s.when);
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, dosed_ammonia& s) {
  key("rise", s.rise, {.means = "rise of the total ammonia in the whole tank, as nitrogen",
                       .limits = {milligrams_per_litre(0.0), milligrams_per_litre(1000.0)}, .needed = true,
                       .set_by = chosen, .choose_between = {{milligrams_per_litre(0.1), milligrams_per_litre(2.0)}},
                       .step = milligrams_per_litre(0.1), .doubt = usual::metered});
  detail::describe_repeated(key, s.when);
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, changed_water& s) {
  key("part", s.part, {.means = "part of the water that is changed", .limits = usual::part_of_whole, .needed = true,
                       .set_by = chosen, .choose_between = {{percent(1.0), percent(50.0)}}, .step = percent(1.0),
                       .doubt = usual::metered});
  detail::describe_repeated(key, s.when);
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, start_up_weeks& s) {
  key("horizon", s.horizon, {.means = "how long to look ahead", .limits = {hours(1.0), days(3650.0)},
                             .set_by = wanted});
  key("rock_on", s.rock_on, {.means = "day on which the moved rock arrives", .limits = usual::time, .set_by = chosen,
                             .choose_between = {{days(0.0), days(60.0)}}, .step = days(1.0)});
  key("survives", s.survives,
      {.means = "bacteria on moved rock and in bottles that live on after a bad move, the worst that is allowed for",
       .limits = usual::part_of_whole});
  key("animals", s.animals, {.means = "the steps in which they come, in order; without any, all on the first day"});
  key("culture", s.culture, {.means = "bottled bacteria"});
  key("ammonia_dose", s.ammonia_dose, {.means = "ammonia added to feed or to test the bacteria"});
  key("water_change", s.water_change, {.means = "water changed for new water"});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, alkalinity_watch& s) {
  key("unit", s.unit, {"dKH", "meq/L", "mg/L CaCO3"}, {.means = "unit of the two numbers, as the kit shows it",
                                                       .needed = true});
  key("now", s.now, {.means = "alkalinity of the water", .limits = {0.0, 10000.0}, .needed = true,
                     .doubt = detail::alkalinity_kit});
  key("lowest", s.lowest, {.means = "alkalinity that it may fall to", .limits = {0.0, 10000.0}, .needed = true,
                           .set_by = wanted});
  key("measured_every", s.measured_every,
      {.means = "from one measurement to the next, when it is put back", .limits = {hours(1.0), days(365.0)},
       .set_by = chosen, .choose_between = {{days(1.0), days(30.0)}}, .step = days(1.0)});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, animal_kind& s) {
  key("name", s.name, {.means = "what the report calls them"});
  key("each", s.each, {.means = "mass of one animal", .limits = {milligrams(1.0), kilograms(10000.0)}, .needed = true,
                       .doubt = detail::mass_of_an_animal});
  key("count", s.count, {.means = "how many there are", .limits = {0.0, 1e6}, .needed = true, .whole = true,
                         .set_by = chosen, .choose_between = {{0.0, 200.0}}, .step = 1.0});
  key("oxygen_use", s.oxygen_use,
      {.means = "measured on animals like them, in milligrams of oxygen for a kilogram and hour",
       .limits = {0.0, 100000.0}, .needed = true, .doubt = detail::use_of_a_kind});
  key("measured_at_mass", s.measured_at_mass, {.means = "mass of the animals measured",
                                               .limits = {milligrams(1.0), kilograms(10000.0)}, .needed = true,
                                               .doubt = detail::mass_of_an_animal});
  key("measured_at", s.measured_at, {.means = "temperature of that measurement", .limits = usual::liquid_water,
                                     .needed = true, .doubt = usual::thermometer});
  key("mass_exponent", s.mass_exponent, {.means = "how the use of an animal goes with its mass", .limits = {0.0, 2.0},
                                         .doubt = 0.05});
  key("q10", s.q10, {.means = "how the use rises with ten kelvin", .limits = {1.0, 10.0}, .doubt = 0.5});
  key("activity", s.activity, {.means = "use over the measured one; 2 to 3 when handled, moved or just fed",
                               .limits = {0.0, 100.0}});
  key("adult", s.adult, {.means = "length of the adult, to judge the room to swim",
                         .limits = {millimetres(1.0), metres(20.0)},
                         .doubt = detail::mass_of_an_animal});
  key("speed", s.speed, {.means = "routine speed of the species",
                         .limits = {metres_per_second(0.0001), metres_per_second(30.0)},
                         .doubt = detail::use_of_a_kind});
  key("run_multiple", s.run_multiple, {.means = "body lengths that the straight run should have; informal",
                                       .limits = {0.01, 1000.0}, .set_by = wanted});
  key("width_multiple", s.width_multiple, {.means = "body lengths that the width should have; informal",
                                           .limits = {0.01, 1000.0}, .set_by = wanted});
  key("adult_mass", s.adult_mass, {.means = "mass of one when it is grown",
                                   .limits = {milligrams(1.0), kilograms(10000.0)},
                                   .doubt = known_within(percent(20.0))});
  describe_note(key, s.note);
  key.together({"adult", "speed"});
}

TANKWRIGHT_INLINE void describe(visitor& key, transport_bag& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("animals", s.animals, {.means = "mass of all animals in it", .limits = {milligrams(1.0), kilograms(1000.0)},
                             .needed = true, .doubt = detail::mass_of_an_animal});
  key("water", s.water, {.means = "in it", .limits = usual::water, .needed = true, .set_by = chosen,
                         .choose_between = {{litres(0.5), litres(100.0)}}, .step = litres(0.5),
                         .doubt = usual::metered});
  key("gas", s.gas, {.means = "over the water", .limits = usual::water_or_none, .needed = true, .set_by = chosen,
                     .choose_between = {{litres(0.5), litres(200.0)}}, .step = litres(0.5),
                     .doubt = known_within(percent(10.0))});
  key("oxygen", s.oxygen, {.means = "part of that gas: 100 % from a cylinder, 21 % of air",
                           .limits = usual::part_of_whole, .set_by = chosen, .doubt = percent(5.0)});
  key("oxygen_use", s.oxygen_use, {.means = "of the handled animals, in milligrams for a kilogram and hour",
                                   .limits = {0.0, 100000.0}, .needed = true, .doubt = detail::use_of_a_kind});
  key("closed_for", s.closed_for, {.means = "from closing to opening, with the worst delay", .limits = usual::span,
                                   .needed = true, .set_by = chosen,
                                   .choose_between = {{hours(1.0), hours(72.0)}}, .step = hours(1.0)});
  key("ph", s.ph, {.means = "of its water on the total scale", .limits = {5.0, 9.5}, .doubt = 0.1});
  key("alkalinity", s.alkalinity, {.means = "of its water, in milliequivalents per litre", .limits = {0.1, 10.0},
                                   .doubt = 0.1});
  key("practical_salinity", s.practical_salinity, {.means = "of its water", .limits = usual::salinity,
                                                   .doubt = usual::read_salinity});
  key("filled_at", s.filled_at, {.means = "temperature of its water at first", .limits = usual::liquid_water,
                                 .needed = true, .doubt = usual::thermometer});
  key("surroundings", s.surroundings, {.means = "temperature around it on the way", .limits = usual::air,
                                       .doubt = kelvin_steps(2.0)});
  key("time_constant", s.time_constant,
      {.means = "time in which it goes two thirds of the way to that: a bag an hour or two, a good box ten",
       .limits = usual::span, .doubt = known_within_factor(1.5)});
  key("lowest", s.lowest, {.means = "lowest temperature that they stand", .limits = usual::liquid_water,
                           .set_by = wanted});
  key("highest", s.highest, {.means = "highest temperature that they stand", .limits = usual::liquid_water,
                             .set_by = wanted});
  describe_note(key, s.note);
  key.together({"surroundings", "time_constant"});
}

TANKWRIGHT_INLINE void describe(visitor& key, skimmer_cup& s) {
  key("room", s.room, {.means = "of the empty cup, or of the bucket that it drains to", .limits = usual::water,
                       .needed = true, .set_by = chosen, .choose_between = {{litres(0.2), litres(50.0)}},
                       .step = litres(0.1), .doubt = usual::metered});
  key("fills", s.fills, {.means = "what it collects, in the mean of a week",
                         .limits = {litres_per_day(0.0001), litres_per_day(1000.0)}, .needed = true,
                         .doubt = known_within_factor(2.0)});
  key("unattended", s.unattended, {.means = "how long nobody empties it", .limits = usual::span, .needed = true,
                                   .set_by = wanted});
  key("overflows_to_floor", s.overflows_to_floor, {.means = "whether what runs over goes onto the floor, not back into "
                                                            "the sump"});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, hardness_drift& s) {
  key("unattended", s.unattended, {.means = "how long nobody doses", .limits = usual::span, .set_by = wanted});
  key("alkalinity_now", s.alkalinity_now, {.means = "in dKH", .limits = {0.1, 100.0}, .needed = true,
                                           .doubt = detail::alkalinity_kit});
  key("alkalinity_lowest", s.alkalinity_lowest, {.means = "that it may fall to, in dKH", .limits = {0.1, 100.0},
                                                 .needed = true, .set_by = wanted});
  key("alkalinity_a_day", s.alkalinity_a_day, {.means = "what it falls in a day without dosing, in dKH, from two "
                                                        "measurements",
                                               .limits = {0.0, 20.0}, .needed = true,
                                               .doubt = known_within(percent(25.0))});
  key("calcium_now", s.calcium_now, {.means = "calcium of the water",
                                     .limits = {milligrams_per_litre(1.0), milligrams_per_litre(2000.0)},
                                     .doubt = milligrams_per_litre(15.0)});
  key("calcium_lowest", s.calcium_lowest, {.means = "that it may fall to",
                                           .limits = {milligrams_per_litre(1.0), milligrams_per_litre(2000.0)},
                                           .set_by = wanted});
  key("water_change", s.water_change, {.means = "part of the water that is changed at a time meanwhile, by a machine",
                                       .limits = usual::part_of_whole, .set_by = chosen});
  key("every", s.every, {.means = "from one water change to the next", .limits = {hours(1.0), days(365.0)},
                         .set_by = chosen});
  describe_note(key, s.note);
  key.together({"calcium_now", "calcium_lowest"});
  key.together({"water_change", "every"});
}

TANKWRIGHT_INLINE void describe(visitor& key, stocking_timetable& s) {
  key("start", s.start, {.means = "part of the food that today's filter is fed for", .limits = usual::part_of_whole,
                         .set_by = chosen, .choose_between = {{percent(5.0), percent(100.0)}}, .step = percent(5.0)});
  key("step", s.step, {.means = "part of the whole food that each step adds at most", .limits = {percent(1.0),
                                                                                               percent(100.0)},
                       .set_by = chosen, .choose_between = {{percent(5.0), percent(50.0)}}, .step = percent(5.0)});
  key("rest", s.rest, {.means = "least time from one step to the next", .limits = usual::span, .set_by = chosen,
                       .choose_between = {{days(2.0), days(28.0)}}, .step = days(1.0)});
  key("ready_by", s.ready_by, {.means = "day on which all are wanted in, counted from the first", .limits = usual::span,
                               .set_by = wanted});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, battery_air& s) {
  key("kla", s.kla, {.means = "rate that its air stones reach in the display's water at 20 °C",
                     .limits = {per_hour(0.0), per_hour(1000.0)}, .needed = true, .set_by = chosen,
                     .choose_between = {{per_hour(0.0), per_hour(10.0)}}, .step = per_hour(0.1),
                     .doubt = detail::air_of_a_stone});
  key("alpha", s.alpha, {.means = "part of that in sea water with animals; 60 to 90 %", .limits = usual::part_of_whole,
                         .doubt = percent(15.0)});
  key("runs", s.runs, {.means = "until its battery is empty; as long as needed where it is not given",
                       .limits = usual::time, .set_by = chosen, .choose_between = {{hours(0.0), hours(72.0)}},
                       .step = hours(1.0), .doubt = known_within(percent(20.0))});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, power_cut_watch& s) {
  key("help_within", s.help_within, {.means = "until somebody is there, or the power is back", .limits = usual::time,
                                     .needed = true, .set_by = wanted});
  key("lowest_oxygen", s.lowest_oxygen, {.means = "oxygen that the animals need at least",
                                         .limits = {milligrams_per_litre(0.0), milligrams_per_litre(100.0)},
                                         .set_by = wanted});
  key("start", s.start, {.means = "oxygen when the power fails, of saturation; a stocked tank has 85 to "
                                  "90 % before dawn",
                         .limits = usual::part_of_whole, .doubt = percent(5.0)});
  key("battery_air", s.battery_air, {.means = "air stones on a battery"});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, treatment& s) {
  key("name", s.name, {.means = "what the report calls it"});
  key("flow", s.flow, {.means = "flow through it, measured and not rated",
                       .limits = {litres_per_hour(0.0), cubic_metres_per_hour(1000.0)}, .needed = true,
                       .set_by = chosen, .choose_between = {{litres_per_hour(50.0), litres_per_hour(20000.0)}},
                       .step = litres_per_hour(50.0), .doubt = usual::label_flow});
  key("removes", s.removes, {.means = "share that one pass takes out", .limits = usual::part_of_whole, .needed = true,
                             .doubt = detail::share_of_a_pass});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, circulation& s) {
  key("clear_within", s.clear_within, {.means = "in which 99 % of a dose should be out again", .limits = usual::span,
                                       .set_by = wanted});
  key("treatment", s.treatment, {.means = "what takes it out; without any, all of the flow of the returns at "
                                          "its best"});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, arrivals& s) {
  describe_ammonia(key, s.ammonia, true);
  describe_ph(key, s.ph, true);
  key("practical_salinity", s.practical_salinity,
      {.means = "of their water",
       .limits = {tankwright::practical_salinity{0.0}, tankwright::practical_salinity{300.0}},
       .needed = true, .doubt = tankwright::practical_salinity{0.5}});
  key("temperature", s.temperature, {.means = "of their water", .limits = usual::liquid_water, .needed = true,
                                     .doubt = usual::thermometer});
  key("vessel", s.vessel, {.means = "water that they start in", .limits = usual::water, .needed = true,
                           .set_by = chosen, .doubt = usual::metered});
  key("salinity_per_hour", s.salinity_per_hour,
      {.means = "fastest change of salinity that they get; no general one is published", .limits = {0.001, 100.0},
       .needed = true, .set_by = wanted});
  key("temperature_per_hour", s.temperature_per_hour,
      {.means = "fastest change of temperature that they get", .limits = {kelvin_steps(0.001), kelvin_steps(50.0)},
       .set_by = wanted});
  key("drip_into", s.drip_into, {"filling", "overflowing"},
      {.means = "whether the vessel fills up, or stays full and runs over", .set_by = chosen});
  key("step", s.step, {.means = "part of the water, where it is changed in steps instead",
                       .limits = {percent(0.1), percent(100.0)}, .set_by = chosen});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, quarantine_tank& s) {
  key("volume", s.volume, {.means = "water in it", .limits = usual::water, .needed = true, .set_by = chosen,
                           .choose_between = {{litres(20.0), litres(1000.0)}}, .step = litres(10.0),
                           .doubt = usual::metered});
  key("lasts", s.lasts, {.means = "how long the animals stay in it", .limits = {hours(1.0), days(3650.0)},
                         .needed = true, .set_by = wanted});
  key("part", s.part, {.means = "part of its water that a change takes out", .limits = usual::part_of_whole,
                       .needed = true, .set_by = chosen, .choose_between = {{percent(5.0), percent(90.0)}},
                       .step = percent(5.0), .doubt = usual::metered});
  key("every", s.every, {.means = "from one change to the next", .limits = {minutes(10.0), days(365.0)},
                         .needed = true, .set_by = chosen, .choose_between = {{days(0.5), days(7.0)}},
                         .step = days(0.5)});
  describe_ph(key, s.ph);
  key("food", s.food, {.means = "what is fed there", .needed = true});
  key("surface", s.surface, {.means = "each seeded surface that moves into it: a sponge from the sump"});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, swim_room& s) {
  key("run", s.run, {.means = "longest straight run free of obstacles", .limits = usual::built, .needed = true,
                     .doubt = millimetres(20.0)});
  key("width", s.width, {.means = "clear width there", .limits = usual::built, .needed = true,
                         .doubt = millimetres(20.0)});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, life_section& s) {
  describe_ph(key, s.ph);
  key("ammonia_below", s.ammonia_below, {.means = "total ammonia to stay below, as nitrogen",
                                         .limits = detail::levels_to_stay_below, .set_by = wanted});
  key("free_ammonia_below", s.free_ammonia_below, {.means = "free ammonia to stay below, as NH3",
                                                   .limits = detail::levels_to_stay_below, .set_by = wanted});
  key("forecast", s.forecast, {.means = "whether the weeks of the start-up are simulated"});
  key("food", s.food, {.means = "each food that the animals will get"});
  key("moved_rock", s.moved_rock, {.means = "rock that moves from a tank that stayed clear"});
  key("surface", s.surface, {.means = "each surface that carries bacteria or will, but that rock"});
  key("start_up", s.start_up, {.means = "what is planned for the first weeks"});
  key("alkalinity", s.alkalinity, {.means = "the alkalinity that the bacteria use"});
  key("animals", s.animals, {.means = "each kind of animal"});
  key("power_cut", s.power_cut, {.means = "a power cut, as the animals see it"});
  key("circulation", s.circulation, {.means = "how fast a dose or a spill should be out again"});
  key("arrivals", s.arrivals, {.means = "new animals in the water that they came in"});
  key("quarantine", s.quarantine, {.means = "a tank in which newcomers wait, by its water changes"});
  key("room", s.room, {.means = "room to swim"});
  key("bag", s.bag, {.means = "each bag or box in which animals travel"});
  key("skimmer", s.skimmer, {.means = "the cup of the skimmer"});
  key("drift", s.drift, {.means = "alkalinity and calcium while nobody doses"});
  key("timetable", s.timetable, {.means = "how food and animals are added, step by step"});
  describe_note(key, s.note);
}

}  // namespace tankwright::plan
