// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/salting/instrument_check.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/water/brine.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_instrument_check(const situation& s, answers& out) {
  if (!s.plan().water || !s.plan().water->hydrometer) return;
  finding& f = out.ask(instrument_check);
  const water_case& c = s.water();
  const practical_salinity target = c.target().central;
  const temperature t = c.in.temperature;
  const water::hydrometer& own = *c.in.hydrometer;
  const auto reads = [&](practical_salinity in) {
    const double at = water::hydrometer_reading(in, t, own), half = 0.5 * own.division;
    return amount{"specific_gravity", at - half, at, at + half, "half a division of its scale"};
  };
  f.answer("fresh", "in purified water it should read", reads(practical_salinity{0.0}));
  f.answer("standard", "in the standard it should read", reads(target));
  const mass salt = kilograms(1.0) * water::salt_for_standard(target, t).value();
  f.answer("salt", "table salt for the standard, to a kilogram of purified water", salt);
  f.detail("temperature", "all at", t);
  const double slope = water::hydrometer_reading(practical_salinity{target.value() + 0.5}, t, own) -
                       water::hydrometer_reading(practical_salinity{target.value() - 0.5}, t, own);
  f.detail("division", "salinity of one division", own.division / slope);
  f.note =
      "Dry the salt for an hour at 150 °C; salt with iodide or anti-caking is about a hundredth weaker. The standard "
      "is for hydrometers: a refractometer or a probe sees another salt and reads wrong in it.";
  f.source(water::feistel_2008).source(water::brine_table_1974);
}

}  // namespace tankwright::decisions
