// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/measure_first.hpp>

namespace tankwright::decisions {

namespace detail {

/// How open a finding is, 0 to 2: what a better measurement could change about it.
///
/// A margin that decides, or an answer, whose band lies on both sides of zero may turn out either way (1 to 2, most where
/// both sides are alike). Without the parts there is no answer (1). A thin margin may become a good one (0.75). The rest
/// only gets sharper: half the share of its band in what it says, below 0.5.
[[nodiscard]] inline double openness(const finding& f) noexcept {
  double sharper = 0.0, either = 0.0;
  for (const number& n : f.numbers) {
    const double width = n.value.high - n.value.low;
    if (!(width > 0.0) || !std::isfinite(width)) continue;
    const bool judged = &n == f.margin();
    if ((judged || n.as == role::answer) && n.value.low < 0.0 && n.value.high > 0.0) {
      either = std::fmax(either, 1.0 + 2.0 * std::fmin(-n.value.low, n.value.high) / width);
    }
    if (n.as == role::answer) sharper = std::fmax(sharper, 0.5 * width / (width + std::fabs(n.value.central)));
  }
  if (either > 0.0) return either;
  if (f.verdict == verdict::not_enough_known) return 1.0;
  return f.verdict == verdict::thin_margin ? 0.75 : sharper;
}

}  // namespace detail

TANKWRIGHT_INLINE std::vector<next_measurement> measure_first(const assessment& all, std::size_t most) {
  std::vector<const finding*> open;
  for (const finding& f : all.findings) {
    if (!f.measure_next.empty()) open.push_back(&f);
  }
  std::stable_sort(open.begin(), open.end(), [](const finding* a, const finding* b) {
    const double one = detail::openness(*a), other = detail::openness(*b);
    return one != other ? one > other : a->consequence < b->consequence;
  });
  std::vector<next_measurement> first;
  for (const finding* f : open) {
    if (first.size() == most) break;
    const std::string& what = f->measure_next.front();
    const bool known = std::any_of(first.begin(), first.end(), [&](const auto& m) { return m.what == what; });
    if (!known) first.push_back({f->id, f->question, f->verdict, what});
  }
  return first;
}

}  // namespace tankwright::decisions
