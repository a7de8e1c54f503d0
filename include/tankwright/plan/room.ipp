// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/reading.hpp>
#include <tankwright/plan/room.hpp>
#include <tankwright/plan/usual.hpp>

// Keys read as a list: name, value and what is said of it.
// clang-format off

namespace tankwright::plan {

namespace detail {

// Sizes as they are sold: common practice, no source.
inline constexpr double sold_heaters[] = {25.0,  50.0,  75.0,  100.0, 150.0,  200.0,  250.0,  300.0,  400.0, 500.0,
                                          600.0, 700.0, 800.0, 900.0, 1000.0, 1200.0, 1500.0, 2000.0, 3000.0};
inline constexpr double litre_a_day = 1e-3 / 86400.0;
inline constexpr double sold_dehumidifiers[] = {10.0 * litre_a_day, 12.0 * litre_a_day, 16.0 * litre_a_day,
                                                20.0 * litre_a_day, 25.0 * litre_a_day, 30.0 * litre_a_day,
                                                40.0 * litre_a_day, 50.0 * litre_a_day, 70.0 * litre_a_day,
                                                90.0 * litre_a_day};

inline const range_of<electric_current> leaks_to_earth{milliamperes(0.0), amperes(1.0)};
inline const range_of<temperature> indoors{celsius(-30.0), celsius(50.0)};
inline const range_of<rate> exchange_of_air{per_hour(0.0), per_hour(100.0)};
inline const range_of<relative_humidity> humidities{relative_humidity::from_percent(0.0),
                                                    relative_humidity::from_percent(100.0)};
/// Even without any wall the air at its two faces holds heat back.
inline const range_of<thermal_transmittance> transmittances{watts_per_square_metre_kelvin(0.01),
                                                            watts_per_square_metre_kelvin(7.5)};
inline const usual_doubt transmittance_doubt = known_within(percent(15.0));
/// Known worst of all, and it decides the most.
inline const usual_doubt air_change_doubt = known_within_factor(2.0);
inline const relative_humidity hygrometer = relative_humidity::from_percent(3.0);
inline const temperature_difference room_thermometer = kelvin_steps(1.0);

}  // namespace detail

TANKWRIGHT_INLINE void describe(visitor& key, season& s) {
  key("indoors", s.indoors, {.means = "temperature of the room", .limits = detail::indoors, .needed = true,
                             .doubt = detail::room_thermometer});
  key("outdoors", s.outdoors, {.means = "mean temperature outdoors", .limits = usual::air, .needed = true,
                               .doubt = kelvin_steps(2.0)});
  key("outdoor_humidity", s.outdoor_humidity, {.means = "mean relative humidity outdoors",
                                               .limits = detail::humidities, .needed = true,
                                               .doubt = relative_humidity::from_percent(5.0)});
  key("air_changes", s.air_changes, {.means = "of outdoor air, where the windows stand otherwise than in the rest of "
                                              "the year",
                                     .limits = detail::exchange_of_air, .set_by = chosen,
                                     .choose_between = {{per_hour(0.1), per_hour(5.0)}}, .step = per_hour(0.1),
                                     .doubt = detail::air_change_doubt});
  key("coldest_night", s.coldest_night, {.means = "for the window; the mean outdoors where it is not given",
                                         .limits = usual::air, .doubt = kelvin_steps(3.0)});
  key("hottest_day", s.hottest_day, {.means = "of the room on its hottest day, which sizes a chiller; that of the room "
                                              "where it is not given",
                                     .limits = detail::indoors, .doubt = kelvin_steps(2.0)});
  describe_note(key, s.note);
}

namespace detail {

inline void describe_surface(visitor& key, water_surface& s, bool needed) {
  key("area", s.area, {.means = "free surface of the water", .limits = usual::surface_or_none, .needed = needed,
                       .doubt = usual::surfaces});
  key("movement", s.movement, {"still", "gentle", "lively", "splashing"}, {.means = "how the water moves"});
  key("air_speed", s.air_speed, {.means = "of the air over the water; up to 0.1 m/s is a quiet room",
                                 .limits = {metres_per_second(0.0), metres_per_second(20.0)},
                                 .doubt = known_within_factor(1.5)});
  key("covered", s.covered, {.means = "part of the surface under the cover; gaps are not covered",
                             .limits = usual::part_of_whole, .set_by = chosen,
                             .choose_between = {{percent(0.0), percent(100.0)}}, .step = percent(5.0),
                             .doubt = percent(3.0)});
  key("cover", s.cover, {"lid", "foam", "bubble sheet", "floating discs"},
      {.means = "what lies over the water", .set_by = chosen});
}

}  // namespace detail

TANKWRIGHT_INLINE void describe(visitor& key, open_water& s) {
  detail::describe_surface(key, s.surface, false);
  key("gap", s.gap, {.means = "open area of the gaps for pipes and cables in its cover", .limits = usual::surface_or_none,
                     .set_by = chosen,
                     .choose_between = {{square_centimetres(0.0), square_centimetres(2000.0)}},
                     .step = square_centimetres(20.0), .doubt = known_within(percent(15.0))});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, further_surface& s) {
  key("label", s.label, {.means = "what the report calls it"});
  detail::describe_surface(key, s.surface, true);
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, moisture_source& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("rate", s.rate, {.means = "water that it gives off; a person at rest about 50 g/h",
                       .limits = {grams_per_hour(0.0), kilograms_per_day(10000.0)}, .needed = true,
                       .doubt = known_within_factor(1.5)});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, dehumidifier& s) {
  key("capacity", s.capacity, {.means = "water that it removes in a day, by its label",
                               .limits = {litres_per_day(0.01), litres_per_day(100000.0)}, .needed = true,
                               .set_by = chosen, .sizes = detail::sold_dehumidifiers,
                               .doubt = known_within(percent(15.0))});
  key("set_point", s.set_point, {.means = "relative humidity that its hygrostat holds", .limits = detail::humidities,
                                 .needed = true, .set_by = chosen,
                                 .choose_between = {{relative_humidity::from_percent(40.0),
                                                     relative_humidity::from_percent(80.0)}},
                                 .step = relative_humidity::from_percent(5.0), .doubt = detail::hygrometer});
  key("rated_at", s.rated_at, {.means = "air for which the label holds, as in its small print; 80 F, 60 % where it is "
                                        "not given"});
  key("power", s.power, {.means = "electricity that it draws, by its label", .limits = usual::electricity,
                         .doubt = usual::label_power});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, cold_surface& s) {
  key("transmittance", s.transmittance, {.means = "its U-value, surface resistances included",
                                         .limits = detail::transmittances, .needed = true,
                                         .doubt = detail::transmittance_doubt});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, appliance& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("power", s.power, {.means = "electricity that it draws while it is on", .limits = usual::electricity,
                         .needed = true, .doubt = usual::label_power});
  key("into_water", s.into_water, {.means = "part of it that ends as heat in the water",
                                   .limits = usual::part_of_whole, .doubt = percent(10.0)});
  key("on", s.on, {.means = "part of the day that it is on", .limits = usual::part_of_whole, .set_by = chosen,
                   .choose_between = {{percent(0.0), percent(100.0)}}, .step = percent(5.0)});
  key("circuit", s.circuit, {.means = "label of the circuit that it is plugged into", .set_by = chosen});
  key("leakage", s.leakage, {.means = "current that it leaks to earth, by its papers or an electrician's clamp",
                             .limits = detail::leaks_to_earth, .doubt = known_within_factor(1.5)});
  key("power_factor", s.power_factor, {.means = "of its watts to its volt-amperes; motors and drivers 0.5 to 1",
                                       .limits = {0.1, 1.0}, .doubt = 0.05});
  key("kept_as", s.kept_as, {.means = "its place among what is kept running when the power fails: 1 comes first",
                             .limits = {1.0, 9.0}, .whole = true, .set_by = chosen});
  key("over_water", s.over_water, {.means = "whether it is a light over the water, judged by what it gives to the water"});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, lights& s) {
  key("height", s.height, {.means = "of the lamps over the water", .limits = {millimetres(10.0), metres(20.0)},
                           .needed = true, .set_by = chosen, .choose_between = {{metres(0.1), metres(2.0)}},
                           .step = millimetres(50.0), .doubt = usual::tape});
  key("beam", s.beam, {.means = "full angle of their beam, by the data sheet", .limits = {degrees(1.0), degrees(179.0)},
                       .needed = true, .doubt = degrees(5.0)});
  key("spacing", s.spacing, {.means = "from the middle of one lamp to the next", .limits = usual::built,
                             .set_by = chosen, .choose_between = {{metres(0.1), metres(2.0)}},
                             .step = millimetres(50.0), .doubt = usual::tape});
  key("depth", s.depth, {.means = "down to where light is wanted; the bottom of the display, where none is given",
                         .limits = usual::building, .doubt = usual::tape});
  key("through_a_metre", s.through_a_metre, {.means = "light that a metre of the water lets through",
                                             .limits = {percent(0.01), percent(100.0)}, .doubt = percent(8.0)});
  key("through_cover", s.through_cover, {.means = "light that the lids under the lamps let through; clean glass 90 %",
                                         .limits = {percent(0.1), percent(100.0)}, .doubt = percent(3.0)});
  key("least_share", s.least_share, {.means = "part of the light at the water that is wanted at that depth",
                                     .limits = usual::part_of_whole, .set_by = wanted});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, circuit& s) {
  key("label", s.label, {.means = "what appliances call it", .needed = true});
  key("voltage", s.voltage, {.means = "of the circuit", .limits = {volts(1.0), volts(1000.0)}, .needed = true,
                             .doubt = known_within(percent(5.0))});
  key("breaker", s.breaker, {.means = "rating of its breaker or fuse", .limits = {milliamperes(10.0), amperes(1000.0)},
                             .needed = true});
  key("trips_at", s.trips_at, {.means = "rated residual current of its protection: 30 mA, or 5 mA of a class A",
                               .limits = {milliamperes(0.1), amperes(10.0)}});
  key("continuous", s.continuous, {.means = "part of the rating that what runs for hours may take",
                                   .limits = {percent(1.0), percent(100.0)}, .set_by = wanted});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, backup& s) {
  key("capacity", s.capacity, {.means = "energy that the battery holds when new and full: volts times ampere-hours",
                               .limits = {watt_hours(0.01), kilowatt_hours(10000.0)}, .needed = true,
                               .set_by = chosen, .choose_between = {{watt_hours(50.0), kilowatt_hours(20.0)}},
                               .step = watt_hours(50.0), .doubt = known_within(percent(10.0))});
  key("usable", s.usable, {.means = "part of it that may be drawn: about half of lead, most of lithium iron phosphate",
                           .limits = usual::part_of_whole, .doubt = known_within(percent(15.0))});
  key("inverter", s.inverter, {.means = "part of that which comes out of the inverter; 100 % without one",
                               .limits = {percent(1.0), percent(100.0)}, .doubt = percent(5.0)});
  key("lasts", s.lasts, {.means = "time until help; that of [life.power_cut] where not given", .limits = usual::span,
                         .set_by = wanted});
  key("generator", s.generator, {.means = "what a generator gives for as long as it runs",
                                 .limits = usual::electricity, .set_by = chosen,
                                 .choose_between = {{watts(300.0), kilowatts(10.0)}}, .step = watts(100.0),
                                 .doubt = known_within(percent(10.0))});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, months_of_year& s) {
  key("outdoors", s.outdoors, {.means = "mean temperature outdoors of the twelve months, from January",
                               .limits = usual::air, .needed = true, .doubt = kelvin_steps(1.5)});
  key("humidity", s.humidity, {.means = "mean relative humidity outdoors of the twelve months",
                               .limits = detail::humidities, .needed = true,
                               .doubt = relative_humidity::from_percent(4.0)});
  key("indoors", s.indoors, {.means = "temperature of the room in the twelve months, or one for all",
                             .limits = detail::indoors, .needed = true, .doubt = detail::room_thermometer});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, heat_week& s) {
  key("indoors", s.indoors, {.means = "mean temperature of the room in such a week", .limits = detail::indoors,
                             .needed = true, .doubt = detail::room_thermometer});
  key("humidity", s.humidity, {.means = "mean relative humidity of the room in such a week",
                               .limits = detail::humidities, .needed = true,
                               .doubt = relative_humidity::from_percent(5.0)});
  key("highest", s.highest, {.means = "highest temperature that the animals stand", .limits = usual::liquid_water,
                             .needed = true, .set_by = wanted});
  key("fan", s.fan, {.means = "speed of the air that fans blow over the open water",
                     .limits = {metres_per_second(0.0), metres_per_second(20.0)}, .set_by = chosen,
                     .doubt = known_within_factor(1.5)});
  key("chiller", s.chiller, {.means = "heat that a chiller takes out", .limits = usual::electricity,
                             .set_by = chosen, .choose_between = {{watts(100.0), kilowatts(5.0)}},
                             .step = watts(50.0), .doubt = usual::label_power});
  key("night", s.night, {.means = "temperature that the room goes down to in the mean with the windows open at night",
                         .limits = detail::indoors, .doubt = kelvin_steps(1.5)});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, consumable& s) {
  key("label", s.label, {.means = "what is bought", .needed = true});
  key("price", s.price, {.means = "of one, in your currency", .limits = {0.0, 1e9}, .needed = true});
  key("every", s.every, {.means = "from one to the next", .limits = {hours(1.0), days(36500.0)}, .needed = true,
                         .set_by = chosen, .doubt = known_within(percent(20.0))});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, running_year& s) {
  key("water_change", s.water_change, {.means = "part of all the water that is changed at a time",
                                       .limits = usual::part_of_whole, .set_by = chosen,
                                       .choose_between = {{percent(0.0), percent(50.0)}}, .step = percent(1.0)});
  key("every", s.every, {.means = "from one water change to the next", .limits = {hours(1.0), days(3650.0)},
                         .set_by = chosen});
  key("price_of_water", s.price_of_water, {.means = "of a cubic metre, waste water included, in your currency",
                                           .limits = {0.0, 1e6}});
  key("price_of_salt", s.price_of_salt, {.means = "of a kilogram of mix", .limits = {0.0, 1e6}});
  key("recovery", s.recovery, {.means = "purified water as a part of what the unit is fed; all where not given",
                               .limits = {percent(1.0), percent(100.0)}, .doubt = known_within(percent(20.0))});
  key("consumable", s.consumable, {.means = "what is used up and bought again: carbon, membranes, lamps, test kits"});
  describe_note(key, s.note);
  key.together({"water_change", "every"});
}

TANKWRIGHT_INLINE void describe(visitor& key, tank_wall& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("area", s.area, {.means = "of the wall, where water stands behind it", .limits = usual::surface_or_none,
                       .needed = true, .doubt = usual::surfaces});
  key("transmittance", s.transmittance, {.means = "its U-value from water to air",
                                         .limits = {watts_per_square_metre_kelvin(0.0),
                                                    watts_per_square_metre_kelvin(1000.0)},
                                         .doubt = detail::transmittance_doubt});
  key("material", s.material, {"glass", "acrylic", "plywood", "glass fibre", "polystyrene"},
      {.means = "of a wall of one sheet, in place of its U-value", .set_by = chosen});
  key("thickness", s.thickness, {.means = "of that sheet", .limits = usual::part, .set_by = chosen,
                                 .choose_between = {{millimetres(4.0), millimetres(100.0)}}, .step = millimetres(1.0),
                                 .doubt = usual::rule});
  key("outside", s.outside, {.means = "temperature of what is behind it, where that is not the room",
                             .limits = usual::air, .doubt = kelvin_steps(2.0)});
  describe_note(key, s.note);
  key.alternatives({"transmittance", "material"}, true);
  key.together({"material", "thickness"});
}

TANKWRIGHT_INLINE void describe(visitor& key, heat_outage& s) {
  key("lasts", s.lasts, {.means = "how long the power is away", .limits = usual::span, .needed = true,
                         .set_by = wanted});
  key("lowest", s.lowest, {.means = "lowest temperature that the animals stand", .limits = usual::liquid_water,
                           .needed = true, .set_by = wanted});
  key("room_settles_at", s.room_settles_at, {.means = "temperature that the room goes to without its heating",
                                             .limits = usual::air, .doubt = kelvin_steps(2.0)});
  key("room_time_constant", s.room_time_constant,
      {.means = "time in which the room goes two thirds of that way: a light building some hours, a heavy one days",
       .limits = usual::span, .doubt = known_within_factor(1.5)});
  describe_note(key, s.note);
  key.together({"room_settles_at", "room_time_constant"});
}

TANKWRIGHT_INLINE void describe(visitor& key, heating& s) {
  key("heater", s.heater, {.means = "power of the heaters together, there or chosen",
                           .limits = {watts(0.1), kilowatts(1000.0)}, .set_by = chosen,
                           .sizes = detail::sold_heaters, .doubt = known_within(percent(5.0))});
  key("margin", s.margin, {.means = "heater to fit over the high estimate of what is needed", .limits = {1.0, 10.0},
                           .set_by = wanted});
  key("highest", s.highest, {.means = "highest temperature that the animals stand: on a summer's day without power, and "
                                      "when the heater sticks on",
                             .limits = usual::liquid_water, .set_by = wanted});
  key("filled_at", s.filled_at, {.means = "temperature of the water as it comes in; asks for the warm-up",
                                 .limits = usual::liquid_water, .doubt = usual::thermometer});
  key("looked_every", s.looked_every, {.means = "from one look at the thermometer to the next, or until an alarm is "
                                                "answered",
                                       .limits = usual::span, .set_by = chosen,
                                       .choose_between = {{hours(1.0), days(7.0)}}, .step = hours(1.0)});
  key("wall", s.wall, {.means = "each wall, pane or floor of the tank that heat goes through"});
  key("outage", s.outage, {.means = "hours without power"});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, pump_chamber& s) {
  key("surface", s.surface, {.means = "free surface of the chamber; with [plumbing] that of the sump's last chamber",
                             .limits = usual::surface, .doubt = usual::surfaces});
  key("running_level", s.running_level, {.means = "level while the pump runs; with [plumbing] that of the sump",
                                         .limits = usual::built, .set_by = chosen,
                                         .choose_between = {{millimetres(80), metres(0.6)}}, .step = millimetres(5),
                                         .doubt = usual::water_mark});
  key("lowest_level", s.lowest_level, {.means = "level at which the pump still draws no air, from the same mark",
                                       .limits = usual::building, .needed = true, .doubt = usual::water_mark});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, top_off& s) {
  key("reservoir", s.reservoir, {.means = "fresh water that can run in", .limits = usual::water, .needed = true,
                                 .set_by = chosen, .choose_between = {{litres(5.0), litres(500.0)}},
                                 .step = litres(5.0), .doubt = usual::metered});
  key("unattended", s.unattended, {.means = "how long nobody looks", .limits = usual::span, .set_by = wanted});
  key("lowest_salinity", s.lowest_salinity, {.means = "lowest practical salinity that the animals stand",
                                             .limits = usual::salinity, .set_by = wanted});
  key("highest_salinity", s.highest_salinity, {.means = "highest practical salinity that the animals stand",
                                               .limits = usual::salinity, .set_by = wanted});
  key("free_volume", s.free_volume, {.means = "room up to the rim where the fresh water runs in",
                                     .limits = usual::water_or_none, .doubt = known_within(percent(5.0))});
  key("fresh_water", s.fresh_water, {.means = "temperature of the fresh water", .limits = usual::liquid_water,
                                     .doubt = kelvin_steps(2.0)});
  key("chamber", s.chamber, {.means = "the chamber of the return pump, whose level shows all that evaporates"});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, room_section& s) {
  key("volume", s.volume, {.means = "of the room", .limits = {litres(100.0), cubic_metres(1e6)},
                           .doubt = known_within(percent(5.0))});
  key("length", s.length, {.means = "of the room, in place of its volume", .limits = usual::built,
                           .doubt = millimetres(20.0)});
  key("width", s.width, {.means = "of the room", .limits = usual::built, .doubt = millimetres(20.0)});
  key("height", s.height, {.means = "of the room", .limits = usual::built, .doubt = millimetres(20.0)});
  key.alternatives({"volume", "length"}, true);
  key.together({"length", "width", "height"});
  key("air_changes", s.air_changes, {.means = "of outdoor air; known worst of all, and it decides the most",
                                     .limits = detail::exchange_of_air, .set_by = chosen,
                                     .choose_between = {{per_hour(0.1), per_hour(5.0)}}, .step = per_hour(0.1),
                                     .doubt = detail::air_change_doubt});
  key("highest_humidity", s.highest_humidity, {.means = "relative humidity that the room may have",
                                               .limits = detail::humidities, .set_by = wanted});
  key("price_per_kwh", s.price_per_kwh, {.means = "price of a kilowatt-hour, in your currency",
                                         .limits = {0.0, 1e6}});
  key("heating_performance", s.heating_performance, {.means = "heat per electricity: 1 for a heater, 3 for a heat pump",
                                                     .limits = {0.1, 20.0}, .doubt = known_within(percent(15.0))});
  key("water_temperature", s.water_temperature, {.means = "of the running tank; that of [water] where it is not given",
                                                 .limits = usual::liquid_water, .doubt = usual::thermometer});
  key("salinity", s.salinity, {.means = "practical salinity of the running tank; that of [water] where it is not given",
                               .limits = usual::salinity, .doubt = usual::read_salinity});
  key("water_volume", s.water_volume, {.means = "all the water; that of vessel and sump where it is not given",
                                       .limits = usual::water, .doubt = usual::metered});
  key.replaced("water_volume_uncertainty", "write it with the volume: water_volume = \"2 m3 +/- 3 %\"");
  key("winter", s.winter, {.means = "the room in winter"});
  key("summer", s.summer, {.means = "the room in summer"});
  key("display", s.display, {.means = "how the water of the display meets the air"});
  key("sump", s.sump, {.means = "how the water of the sump meets the air"});
  key("surface", s.surface, {.means = "each other wet surface: a weir, a trickling filter"});
  key("moisture", s.moisture, {.means = "anything else that gives off moisture"});
  key("dehumidifier", s.dehumidifier, {.means = "a dehumidifier that is there, or considered"});
  key("window", s.window, {.means = "the window, judged against dripping on the coldest night"});
  key("wall", s.wall, {.means = "the outside wall, judged against mould in the mean of the winter"});
  key("appliance", s.appliance, {.means = "each pump or light; the return pump too"});
  key("lights", s.lights, {.means = "how the lights hang over the display"});
  key("circuit", s.circuit, {.means = "each circuit that something of it is plugged into"});
  key("backup", s.backup, {.means = "battery or generator for the hours until help"});
  key("year", s.year, {.means = "the climate month by month"});
  key("heat_week", s.heat_week, {.means = "a week of heat"});
  key("running", s.running, {.means = "water changes and what is used up, for the running year"});
  key("heating", s.heating, {.means = "what keeps the water warm"});
  key("top_off", s.top_off, {.means = "the reservoir of fresh water"});
  describe_note(key, s.note);
}

}  // namespace tankwright::plan
