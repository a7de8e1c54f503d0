// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/salting/weighed_salinity.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/plan/usual.hpp>
#include <tankwright/water/weighed_volume.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_weighed_salinity(const situation& s, answers& out) {
  if (!s.plan().water || !s.plan().water->weighed) return;
  finding& f = out.ask(weighed_salinity);
  const plan::weighed_sample& w = *s.plan().water->weighed;
  const water_case& c = s.water();
  const temperature t = *w.at;
  const double flask = plan::half_width(w.volume, plan::usual::filled_flask);
  const auto on_scale = plan::usual::doubt_of(plan::usual::weighed_flask);
  const double scale = plan::half_width(w.full, on_scale) + plan::half_width(w.empty, on_scale);
  const auto rho = water::density_by_weighing({.volume = *w.volume,
                                               .shown = *w.full - *w.empty,
                                               .volume_error = fraction(flask / w.volume.si()),
                                               .scale_error = mass::from_value(scale)});
  const double purest = water::density(practical_salinity{0.0}, t).value();
  // The ends of the band stop at fresh water and where the formula does; the middle is refused there.
  const double saltiest = water::density(practical_salinity{42.0}, t).value();
  const auto salinity = [&](double at) {
    return water::salinity_from_density(mass_density::from_value(std::clamp(at, purest, saltiest)), t);
  };
  const estimate<practical_salinity> says{salinity(rho.low.value()), water::salinity_from_density(rho.central, t),
                                          salinity(rho.high.value()), rho.reason};
  f.answer("salinity", "practical salinity", says);
  f.detail("density", "density", rho);
  const practical_salinity target = c.target().central;
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
  f.note =
      "Weigh the same flask full of purified water too: that gives its true volume, and the largest error is gone.";
  if (f.verdict == verdict::does_not_hold) f.happens = "By its weight the water is not what is wanted.";
  f.source(water::feistel_2008).source(water::iso_8655_6);
}

}  // namespace tankwright::decisions
