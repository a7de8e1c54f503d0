// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/plan/rules/book.hpp>
#include <tankwright/plan/rules/display_bounds.hpp>
#include <tankwright/plan/rules/reading_rules.hpp>

namespace tankwright::plan::rules {

namespace detail {

/// The series of a test stand side by side, in the order of time.
inline void hold_series(const hold_section& h, book& all) {
  const std::size_t count = h.times.size();
  const auto beside = [&](const std::string& key, const values_base& series) {
    if (!series.given() || series.size() == count) return;
    all.refuse("hold." + key, "has " + std::to_string(series.size()) + " entries, times has " + std::to_string(count),
               "hold.times");
  };
  if (count > 0) beside("levels", h.levels);
  beside("pan", h.pan);
  beside("water", h.water);
  beside("reader", h.reader);
  const bool named = h.reader.size() == count;
  for (std::size_t i = 1; i < count; ++i) {
    const bool together = named && h.reader[i] != h.reader[i - 1];  // two people at one time
    if (together ? h.times[i] >= h.times[i - 1] : h.times[i] > h.times[i - 1]) continue;
    all.refuse("hold.times[" + std::to_string(i + 1) + "]",
               all.said(h.times[i]) + " is not later than the reading before it, " + all.said(h.times[i - 1]) +
                   "; put the readings in order",
               "hold.times[" + std::to_string(i) + "]");
  }
}

/// A level does not move by more than the water is deep.
inline void hold_moves(const hold_section& h, book& all) {
  if (!h.depth) return;
  const auto within = [&](const std::string& path, const values<length>& series, std::string_view what) {
    if (!series.given()) return;
    double low = series[0].value(), high = low;
    for (std::size_t i = 1; i < series.size(); ++i) {
      low = std::min(low, series[i].value());
      high = std::max(high, series[i].value());
    }
    all.at_most(path, metres(high - low), {*h.depth, "hold.depth"}, what);
  };
  within("hold.levels", h.levels, "between the readings (is one in another unit?) is more than the water is deep,");
  within("hold.pan", h.pan, "between the readings (is one in another unit?) is more than the water is deep,");
  all.at_most("hold.resolution", h.resolution, {*h.depth, "hold.depth"}, "is more than the water is deep,");
}

}  // namespace detail

TANKWRIGHT_INLINE void hold_leak_test(const build& build, book& all) {
  if (!build.hold) return;
  const hold_section& h = *build.hold;
  if (h.times.given()) {
    for (const auto& [key, given] :
         {std::pair{"depth", h.depth.known()}, std::pair{"resolution", h.resolution.known()}}) {
      if (!given) all.refuse(std::string{"hold."} + key, "is missing: readings need it", "hold.times");
    }
  } else if (!h.planned && h.drip.empty()) {
    all.refuse("hold", "needs the readings of a test (times, levels) or a test that is planned ([hold.planned])");
  }
  for (std::size_t i = 0; i < h.part.size(); ++i) {
    const std::string path = element("hold.part", h.part, i);
    const auto beside = [&](const char* key, const values<length>& series) {
      if (!series.given() || series.size() == h.times.size()) return;
      all.refuse(path + key,
                 "has " + std::to_string(series.size()) + " entries, times has " + std::to_string(h.times.size()),
                 "hold.times");
    };
    beside(".levels", h.part[i].levels);
    beside(".pan", h.part[i].pan);
  }
  if (h.criterion && !h.capacity) all.refuse("hold.capacity", "is missing: a criterion needs it", "hold.criterion");
  hold_salinity("hold.salinity", h.salinity, all);
  detail::hold_series(h, all);
  detail::hold_moves(h, all);
  if (h.planned) {
    if (h.leak && h.planned->leak) {
      all.refuse("hold.planned.leak", "is given beside the leak of [hold]; give one of them, not both", "hold.leak");
    }
  }
  const auto d = bounds_of(build);
  if (!d) return;
  if (build.vessel->water_level) {
    all.at_most("hold.surface", h.surface, d->surface_at(*build.vessel->water_level), "is more than the display has,");
  }
  all.at_most("hold.depth", h.depth, d->rim, "is above the rim of the display,");
  all.at_most("hold.capacity", h.capacity, d->capacity(), "is more than the display holds up to its rim,");
}

}  // namespace tankwright::plan::rules
