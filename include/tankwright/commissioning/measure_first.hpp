// SPDX-License-Identifier: BSL-1.0
/// @file
/// Of all that could be measured next, what first? The few measurements that could change a decision, or give one.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <string_view>
#include <tankwright/commissioning/assessment.hpp>
#include <vector>

namespace tankwright::commissioning {

/// A measurement, and the finding that it serves.
struct next_measurement {
  std::string_view id;  ///< of the finding
  std::string_view question;
  verdict says;      ///< as things stand
  std::string what;  ///< to do
};

namespace detail {

/// How open a finding is, 0 to 2: what a better measurement could change about it.
///
/// A margin, or an answer that is one, whose band lies on both sides of zero may turn out either way (1 to 2, most
/// where both sides are alike). Without the parts there is no answer (1). A thin margin may become a good one (0.75).
/// The rest only gets sharper: half the share of its band in what it says, below 0.5.
[[nodiscard]] inline double openness(const finding& f) noexcept {
  double sharper = 0.0;
  for (const entry& e : f.numbers) {
    const double width = e.value.high - e.value.low;
    if (!(width > 0.0) || !std::isfinite(width)) continue;
    if ((e.as == role::margin || e.as == role::answer) && e.value.low < 0.0 && e.value.high > 0.0) {
      return 1.0 + 2.0 * std::fmin(-e.value.low, e.value.high) / width;
    }
    if (e.as == role::answer) sharper = std::fmax(sharper, 0.5 * width / (width + std::fabs(e.value.central)));
  }
  if (f.says == verdict::not_enough_known) return 1.0;
  return f.says == verdict::thin_margin ? 0.75 : sharper;
}

}  // namespace detail

/// What to measure first, over the whole plan.
///
///   the first `measure_next` of the findings that are most open: margins that may turn out either way, then what could
///   not be answered, then thin margins, then wide bands; of equally open ones the earlier day
///
/// @param all  the assessment
/// @param most how many at most
/// @return     measurements, the most telling first; none twice
/// @throws     nothing but std::bad_alloc
/// @accuracy   an order, no number: it knows the bands, not what a measurement costs
/// @source     this library
[[nodiscard]] inline std::vector<next_measurement> measure_first(const assessment& all, std::size_t most = 3) {
  std::vector<const finding*> open;
  for (const finding& f : all.findings) {
    if (!f.measure_next.empty()) open.push_back(&f);
  }
  std::stable_sort(open.begin(), open.end(), [](const finding* a, const finding* b) {
    return detail::openness(*a) > detail::openness(*b);
  });
  std::vector<next_measurement> first;
  for (const finding* f : open) {
    if (first.size() == most) break;
    const std::string& what = f->measure_next.front();
    const bool known = std::any_of(first.begin(), first.end(), [&](const auto& m) { return m.what == what; });
    if (!known) first.push_back({f->id, f->question, f->says, what});
  }
  return first;
}

}  // namespace tankwright::commissioning
