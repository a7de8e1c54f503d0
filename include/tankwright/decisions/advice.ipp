// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/advice.hpp>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/bands.hpp>
#include <tankwright/decisions/would_hold.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE const cures_of_finding* advice::cures_for(std::string_view id) const noexcept {
  const auto found = std::find_if(cures.begin(), cures.end(), [&](const auto& one) { return one.id == id; });
  return found == cures.end() ? nullptr : &*found;
}
TANKWRIGHT_INLINE const shares_of_finding* advice::shares_for(std::string_view id) const noexcept {
  const auto found = std::find_if(shares.begin(), shares.end(), [&](const auto& one) { return one.id == id; });
  return found == shares.end() ? nullptr : &*found;
}
TANKWRIGHT_INLINE std::optional<double> advice::chance_for(std::string_view id) const noexcept {
  for (const sampled_finding& one : judged.sampled) {
    if (one.id == id) return one.chance;
  }
  return std::nullopt;
}

TANKWRIGHT_INLINE advice advise(const plan::build& build, const effort& how) {
  advice all;
  if (!how.doubts) {
    all.judged.all = assess(build);
    return all;
  }
  const auto telling = [&](stage at) -> std::function<void(std::size_t, std::size_t)> {
    if (!how.progress) return {};
    return [&how, at](std::size_t done, std::size_t of) { how.progress(at, done, of); };
  };
  all.by_chance = true;
  all.judged = assess_with_doubts(build, {.samples = how.samples, .progress = telling(stage::bands), .run = how.run});
  if (how.progress) how.progress(stage::shares, 0, 1);
  all.shares = shares_of(build, all.judged, how.run);
  all.first = measure_first(build, all.judged, all.shares);
  if (how.progress) how.progress(stage::cures, 0, 1);
  all.cures = what_would_hold(build, all.judged, {.samples = how.samples, .most = how.cures, .run = how.run});
  return all;
}

}  // namespace tankwright::decisions
