// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/usual.hpp>
#include <tankwright/plan/water.hpp>

namespace tankwright::plan {

TANKWRIGHT_INLINE void describe(visitor& key, trial_batch& s) {
  key("mix", s.mix, {.means = "dry mix that was weighed out for it", .limits = usual::weight, .needed = true,
                     .doubt = usual::weighed});
  key("fresh_water", s.fresh_water, {.means = "fresh water that it was dissolved in, by weight",
                                     .limits = usual::weight, .needed = true, .doubt = usual::weighed});
  key("reached", s.reached, {.means = "practical salinity when it was clear", .limits = usual::salinity,
                             .needed = true, .doubt = usual::read_salinity});
  key("reading_error", s.reading_error, {.means = "how far that reading may be off", .limits = usual::salinity});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, water_section& s) {
  key("temperature", s.temperature, {.means = "of the new water when it is measured", .limits = usual::liquid_water,
                                     .needed = true, .doubt = usual::thermometer});
  key("new_water", s.new_water, {.means = "seawater to be made; what vessel and sump hold, where it is not given",
                                 .limits = usual::water, .doubt = usual::metered});
  key("new_water_uncertainty", s.new_water_uncertainty,
      {.means = "how well that volume is known", .limits = usual::part_of_whole});
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
  describe_note(key, s.note);
  key.alternatives({"mix_yield", "trial_batch"}, false);
  key.alternatives({"target", "older_tank"}, false);
}

}  // namespace tankwright::plan
