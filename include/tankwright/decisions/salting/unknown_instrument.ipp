// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/salting/unknown_instrument.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/water/brine.hpp>
#include <tankwright/water/hydrometer.hpp>

namespace tankwright::decisions {

namespace detail {

/// The salinity behind a reading, by every scale that such instruments usually have.
[[nodiscard]] inline estimate<practical_salinity> by_usual_scales(const plan::unknown_instrument& u) {
  constexpr water::gravity_scale usual[] = {water::scale_60f_60f, water::scale_25_25, water::scale_20_20,
                                            water::scale_20_4, water::scale_25_4};
  std::optional<double> low, high;
  for (const water::gravity_scale& scale : usual) {
    const auto s = water::salinity_from_hydrometer(
        {.reading = *u.reading, .water = *u.at, .instrument = {.scale = scale, .division = *u.division}}, extrapolate);
    low = std::min(low.value_or(s.low.value()), s.low.value());
    high = std::max(high.value_or(s.high.value()), s.high.value());
  }
  return {practical_salinity{*low}, practical_salinity{0.5 * (*low + *high)}, practical_salinity{*high},
          "its scale may be any of five"};
}

/// The salinity through what it shows in purified water and in a weighed standard.
[[nodiscard]] inline estimate<practical_salinity> by_two_points(const plan::unknown_instrument& u) {
  const temperature t = *u.at;
  const double rho_0 = water::density(practical_salinity{0.0}, t).value();
  const double rho_1 = water::brine_density({.salt = *u.standard_salt, .water = *u.standard_water}, t).value();
  const double r_0 = *u.in_fresh_water, r_1 = *u.in_standard, r = *u.reading, half = 0.5 * *u.division;
  if (!(r_1 - r_0 > 2.0 * half)) {
    core::fail<invalid_input>("tankwright::decisions::by_two_points", "reading in the standard", r_1, "",
                              "is not above that in purified water; the two points do not tell them apart");
  }
  const auto at = [&](double sign) {
    // A reading that is too high, against points that are too low, is the worst.
    const double part = (r + sign * half - (r_0 - sign * half)) / (r_1 - sign * half - (r_0 - sign * half));
    return water::salinity_from_density(mass_density::from_value(std::max(rho_0, rho_0 + part * (rho_1 - rho_0))), t,
                                        extrapolate);
  };
  return {at(-1.0), at(0.0), at(1.0), "half a division on each of the three readings"};
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_unknown_instrument(const situation& s, answers& out) {
  if (!s.plan().water || !s.plan().water->unknown_instrument) return;
  finding& f = out.ask(unknown_instrument);
  const plan::unknown_instrument& u = *s.plan().water->unknown_instrument;
  const water_case& c = s.water();
  const practical_salinity target = c.target().central;
  const bool checked = u.in_standard.known();
  const auto before = detail::by_usual_scales(u);
  const auto says = checked ? detail::by_two_points(u) : before;
  f.answer("salinity", "practical salinity behind its reading", says);
  if (checked) f.detail("unchecked", "without the two checks it would be", before);
  f.detail("wanted", "wanted", target);
  const double near = c.in.match_within.value();
  const double low = says.low.value() - target.value(), high = says.high.value() - target.value();
  const double most = std::max(std::fabs(low), std::fabs(high)),
               middle = std::fabs(says.central.value() - target.value());
  const double least = low <= 0.0 && high >= 0.0 ? 0.0 : std::min(std::fabs(low), std::fabs(high));
  f.margin("left", "nearer to what is wanted than is needed by",
           estimate<practical_salinity>{practical_salinity{near - most}, practical_salinity{near - middle},
                                        practical_salinity{near - least}, says.reason},
           practical_salinity{0.0});
  if (f.verdict == verdict::does_not_hold) f.happens = "By this instrument the water is not what is wanted.";
  f.source(water::feistel_2008);
  if (checked) {
    f.source(water::brine_table_1974);
    f.note =
        "Good for readings between the two points and a little beyond. A swing arm: rinse it, tap off the bubbles, "
        "read it level, three times.";
  } else {
    f.next("read it in purified water and in a standard of table salt at the same temperature, and give both");
  }
}

}  // namespace tankwright::decisions
