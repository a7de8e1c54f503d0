// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/salting/match.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/text/quantity.hpp>

namespace tankwright::decisions {

namespace detail {

inline constexpr std::string_view correction_band = "both readings, the volume and the yield, each at its worst";

/// Mix that brings the new water up to the older tank.
[[nodiscard]] inline estimate<mass> mix_to_add(const water_case& c, const estimate<volume>& water) {
  const auto add = [&](volume v, practical_salinity from, practical_salinity to, proportion y) {
    if (!(from < to)) return kilograms(0.0);
    return water::raise_salinity(
               {.volume = v, .from = from, .target = to, .temperature = c.in.temperature, .mix_yield = y})
        .mix;
  };
  const auto& now = c.now();
  const auto& target = c.target();
  const auto& yield = c.mix_yield();
  return {add(water.low, now.high, target.low, yield.high),
          add(water.central, now.central, target.central, yield.central),
          add(water.high, now.low, target.high, yield.low), correction_band};
}

/// Water to replace by fresh water, to bring the new water down to the older tank.
struct replaced_water {
  estimate<volume> out;
  estimate<volume> in;
};

[[nodiscard]] inline replaced_water water_to_replace(const water_case& c, const estimate<volume>& water) {
  const auto step = [&](volume v, practical_salinity from, practical_salinity to) {
    if (!(from > to)) return water::water_to_replace{litres(0.0), litres(0.0), fraction(0.0)};
    return water::replace_to_reach({.volume = v,
                                    .from = from,
                                    .target = to,
                                    .replacement = practical_salinity{0.0},
                                    .temperature = c.in.temperature});
  };
  const auto& now = c.now();
  const auto& target = c.target();
  const auto least = step(water.low, now.low, target.high);
  const auto middle = step(water.central, now.central, target.central);
  const auto most = step(water.high, now.high, target.low);
  constexpr std::string_view why = "both readings and the volume, each at its worst";
  return {{least.taken_out, middle.taken_out, most.taken_out, why}, {least.put_in, middle.put_in, most.put_in, why}};
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_salinity_match(const situation& s, answers& out) {
  if (!s.plan().water || !s.plan().water->now) return;
  finding& f = out.ask(salinity_match);
  const water_case& c = s.water();
  const estimate<practical_salinity>& now = c.now();
  const estimate<practical_salinity>& target = c.target();
  const double apart = now.central.value() - target.central.value();
  const double low = now.low.value() - target.high.value();
  const double high = now.high.value() - target.low.value();
  const double most = std::max(std::fabs(low), std::fabs(high));
  const double least = low <= 0.0 && high >= 0.0 ? 0.0 : std::min(std::fabs(low), std::fabs(high));
  const double wanted = c.in.match_within.value();
  constexpr std::string_view why = "the bands of both readings";
  f.answer("apart", "new water minus older tank", amount{"practical_salinity", low, apart, high, why});
  f.limit("near_enough", "may differ by", c.in.match_within);
  f.margin(
      "left", "nearer than that by",
      estimate<practical_salinity>{practical_salinity{wanted - most}, practical_salinity{wanted - std::fabs(apart)},
                                   practical_salinity{wanted - least}, why},
      practical_salinity{0.0});
  f.detail("now", "new water now", now);
  f.source(water::feistel_2008).source(water::millero_2008);
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "The new water is " + text::of(std::fabs(apart), text::significant(2)) +
                (apart < 0.0 ? " fresher" : " saltier") + " than the older tank.";
  }
  if (f.verdict == verdict::thin_margin) {
    f.next("measure both waters with one instrument that has finer divisions");
  }
  const auto water = water_to_make(c, s.state());
  if (!water || apart == 0.0) return;
  if (apart < 0.0) {
    f.detail("mix", "mix to add", detail::mix_to_add(c, *water));
  } else {
    const auto step = detail::water_to_replace(c, *water);
    f.detail("out", "to take out", step.out);
    f.detail("in", "fresh water to put in", step.in);
  }
}

}  // namespace tankwright::decisions
