// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/water_inputs.hpp>
#include <tankwright/plan/usual.hpp>

namespace tankwright::plan {

TANKWRIGHT_INLINE water_inputs inputs_of(const water_section& s) {
  water_inputs in{.temperature = *s.temperature};
  if (s.new_water) {
    const volume v = *s.new_water;
    const volume half = volume::from_value(half_width(s.new_water, usual::metered));
    in.new_water = estimate<volume>{v - half, v, v + half, "the volume as measured"};
  }
  in.mix_yield = s.mix_yield.maybe();
  if (s.trial_batch) {
    const trial_batch& t = *s.trial_batch;
    in.trial = water::trial_batch{.mix = *t.mix, .fresh_water = *t.fresh_water, .reached = *t.reached};
    in.trial->reading_error = practical_salinity{half_width(t.reached, usual::doubt_of(usual::read_salinity))};
  }
  if (s.older_tank) in.older_tank = inputs_of(*s.older_tank);
  in.target = s.target.maybe();
  if (s.now) in.now = inputs_of(*s.now);
  in.match_within = *s.match_within;
  if (s.hydrometer) in.hydrometer = inputs_of(*s.hydrometer);
  if (s.refractometer) in.refractometer = inputs_of(*s.refractometer);
  in.probe = s.probe;
  in.ammonia = total_ammonia_of(s.ammonia);
  in.ph = ph_of(s.ph);
  in.air = *s.air_pressure;
  return in;
}

}  // namespace tankwright::plan
