// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/salting/readings.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_instrument_readings(const situation& s, answers& out) {
  if (!s.plan().water) return;
  finding& f = out.ask(instrument_readings);
  const water_case& c = s.water();
  const practical_salinity target = c.target().central;
  const temperature t = c.in.temperature;
  f.detail("temperature", "at the water's temperature of", t);
  if (c.in.hydrometer) {
    const double reading = water::hydrometer_reading(target, t, *c.in.hydrometer);
    f.answer("hydrometer", "hydrometer", amount{"specific_gravity", reading, reading, reading});
    f.detail("hydrometer_scale", "  whose scale is made for", c.in.hydrometer->scale->sample.get());
    f.source(water::feistel_2008);
  }
  if (c.in.refractometer) {
    f.answer("refractometer", "refractometer (parts per thousand)",
             water::refractometer_reading(target, t, *c.in.refractometer));
    f.source(water::millard_seaver_1990);
  }
  if (c.in.probe || !(c.in.hydrometer || c.in.refractometer)) {
    const auto raw = water::conductivity_from_salinity(target, t);
    f.answer("conductivity", "conductivity, not compensated", raw);
    f.detail("conductivity_at_25", "conductivity, referred to 25 °C", water::referred_to_25(raw, t).value());
    f.source(water::pss78);
  }
  f.note = "Judge both tanks with the same instrument on the same day.";
}

}  // namespace tankwright::decisions
