// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/usual.hpp>
#include <tankwright/plan/water.hpp>

// Keys read as a list: name, value and what is said of it.
// clang-format off

namespace tankwright::plan {

TANKWRIGHT_INLINE void describe(visitor& key, trial_batch& s) {
  key("mix", s.mix, {.means = "dry mix that was weighed out for it", .limits = usual::weight, .needed = true,
                     .doubt = usual::weighed});
  key("fresh_water", s.fresh_water, {.means = "fresh water that it was dissolved in, by weight",
                                     .limits = usual::weight, .needed = true, .doubt = usual::weighed});
  key("reached", s.reached, {.means = "practical salinity when it was clear", .limits = usual::salinity,
                             .needed = true, .doubt = usual::read_salinity});
  key.replaced("reading_error", "write it with the reading: reached = \"34.8 +/- 0.5\"");
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, mixing_schedule& s) {
  key("unit_rate", s.unit_rate, {.means = "purified water that the unit makes, measured at the temperature of the "
                                          "supply",
                                 .limits = {litres_per_day(0.1), cubic_metres_per_hour(100.0)}, .needed = true,
                                 .set_by = chosen, .choose_between = {{litres_per_day(50.0), litres_per_day(2000.0)}},
                                 .step = litres_per_day(50.0), .doubt = known_within(percent(15.0))});
  key("recovery", s.recovery, {.means = "purified water as a part of what the unit is fed", .limits = {percent(1.0),
                                                                                                      percent(100.0)},
                               .doubt = known_within(percent(20.0))});
  key("stored", s.stored, {.means = "purified water that is there already", .limits = usual::water_or_none,
                           .doubt = usual::metered});
  key("vat", s.vat, {.means = "salt water that the mixing vat makes at a time", .limits = usual::water,
                     .needed = true, .set_by = chosen, .choose_between = {{litres(20.0), litres(2000.0)}},
                     .step = litres(20.0), .doubt = usual::metered});
  key("dissolve", s.dissolve, {.means = "from the salt going in until the batch is clear, warm and measured",
                               .limits = usual::time, .set_by = chosen,
                               .choose_between = {{hours(2.0), hours(48.0)}}, .step = hours(1.0)});
  key("ready_in", s.ready_in, {.means = "time until all of it is wanted", .limits = usual::span, .set_by = wanted});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, moved_water& s) {
  key("volume", s.amount, {.means = "water that comes over from the older tank", .limits = usual::water,
                           .needed = true, .set_by = chosen,
                           .choose_between = {{litres(10.0), litres(5000.0)}}, .step = litres(10.0),
                           .doubt = usual::metered});
  key("practical_salinity", s.salinity, {.means = "its practical salinity; that of the older tank where not given",
                                         .limits = usual::salinity, .doubt = usual::read_salinity});
  describe_note(key, s.note);
}

namespace detail {
inline const range_of<double> shown_gravities{0.9, 1.2};
}  // namespace detail

TANKWRIGHT_INLINE void describe(visitor& key, unknown_instrument& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("reading", s.reading, {.means = "what it shows in the water in question, as specific gravity",
                             .limits = detail::shown_gravities, .needed = true});
  key("temperature", s.at, {.means = "of that water, and of the waters that it is checked in",
                            .limits = usual::liquid_water, .needed = true, .doubt = usual::thermometer});
  key("in_fresh_water", s.in_fresh_water, {.means = "what it shows in purified water", .limits = detail::shown_gravities});
  key("in_standard", s.in_standard, {.means = "what it shows in a solution of salt that was weighed",
                                     .limits = detail::shown_gravities});
  key("standard_salt", s.standard_salt, {.means = "pure sodium chloride in that solution, dried", .limits = usual::weight,
                                         .doubt = known_within(percent(1.0))});
  key("standard_water", s.standard_water, {.means = "purified water in that solution, by weight",
                                           .limits = usual::weight, .doubt = known_within(percent(0.5))});
  key("division", s.division, {.means = "smallest step of its scale", .limits = {0.000001, 0.01}});
  describe_note(key, s.note);
  key.together({"in_standard", "standard_salt", "standard_water", "in_fresh_water"});
}

TANKWRIGHT_INLINE void describe(visitor& key, weighed_sample& s) {
  key("volume", s.volume, {.means = "of the flask or bottle, filled to its mark; purified water in it, "
                                    "weighed, tells how well it is known", .limits = usual::water,
                           .needed = true, .doubt = usual::filled_flask});
  key("full", s.full, {.means = "what the scale shows of the full flask", .limits = usual::weight, .needed = true,
                       .doubt = usual::weighed_flask});
  key("empty", s.empty, {.means = "what it shows of the dry flask", .limits = usual::weight_or_none, .needed = true,
                         .doubt = usual::weighed_flask});
  key.replaced("volume_error", "write it with the volume: volume = \"1000 mL +/- 0.1 %\"");
  key.replaced("scale_error", "write it with the weights: full = \"1.2755 kg +/- 0.5 g\"");
  key("temperature", s.at, {.means = "of the water in it", .limits = usual::liquid_water, .needed = true,
                            .doubt = usual::thermometer});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, dose& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("rise", s.rise, {.means = "of its concentration in all the water",
                       .limits = {micrograms_per_litre(0.001), grams_per_litre(100.0)}, .needed = true,
                       .set_by = wanted});
  key("stock", s.stock, {.means = "concentration of the solution that it is measured from",
                         .limits = {milligrams_per_litre(0.001), grams_per_litre(10000.0)},
                         .doubt = known_within(percent(5.0))});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, water_section& s) {
  key("temperature", s.temperature, {.means = "of the new water when it is measured", .limits = usual::liquid_water,
                                     .needed = true, .doubt = usual::thermometer});
  key("new_water", s.new_water, {.means = "seawater to be made; what vessel and sump hold, where it is not given",
                                 .limits = usual::water, .doubt = usual::metered});
  key.replaced("new_water_uncertainty", "write it with the volume: new_water = \"2 m3 +/- 3 %\"");
  key("mix_yield", s.mix_yield, {.means = "anhydrous salt in the dry mix, where it is known",
                                 .limits = {percent(1.0), percent(100.0)}, .doubt = known_within(percent(3.0))});
  key("target", s.target, {.means = "practical salinity to make, where no older tank is to be matched",
                           .limits = usual::salinity, .set_by = wanted});
  key("match_within", s.match_within, {.means = "how near to the older tank is near enough",
                                       .limits = {practical_salinity{0.0}, practical_salinity{42.0}},
                                       .set_by = wanted});
  key("probe", s.probe, {.means = "whether a conductivity probe is at hand"});
  describe_ammonia(key, s.ammonia);
  describe_ph(key, s.ph);
  key("air_pressure", s.air_pressure, {.means = "air pressure of the place, not reduced to sea level",
                                       .limits = {absolute_pressure(kilopascals(20.0)),
                                                  absolute_pressure(kilopascals(180.0))},
                                       .doubt = kilopascals(1.0)});
  key("trial_batch", s.trial_batch, {.means = "a trial batch that tells the yield of the mix"});
  key("older_tank", s.older_tank, {.means = "a reading of the tank whose salinity is to be matched"});
  key("now", s.now, {.means = "a reading of the new water so far"});
  key("hydrometer", s.hydrometer, {.means = "a hydrometer that will judge the new water"});
  key("refractometer", s.refractometer, {.means = "a refractometer that will judge the new water"});
  key("schedule", s.schedule, {.means = "how the water is made, batch by batch"});
  key("moved", s.moved, {.means = "water of the older tank that comes over"});
  key("unknown_instrument", s.unknown_instrument, {.means = "an instrument whose scale nobody knows"});
  key("weighed", s.weighed, {.means = "a known volume of the new water on a scale"});
  key("dose", s.dose, {.means = "each thing that is dosed into all the water"});
  describe_note(key, s.note);
  key.alternatives({"mix_yield", "trial_batch"}, false);
  key.alternatives({"target", "older_tank"}, false);
}

}  // namespace tankwright::plan
