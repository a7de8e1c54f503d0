// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/bands.hpp>
#include <tankwright/decisions/sampler.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE std::vector<doubtful> doubts_of(const plan::build& build) {
  detail::doubt_finder finder;
  plan::look_at(finder, build);
  return std::move(finder.named);
}

TANKWRIGHT_INLINE banded_assessment assess_with_doubts(const plan::build& build, const sampling& how) {
  banded_assessment result{.all = assess(build)};
  const std::vector<finding> middle = result.all.findings;
  const detail::sampler moves{build, middle, how.samples};
  detail::sample_table table{middle, how.samples};
  moves.run(table, middle, all_decisions(), detail::first_numbers(how.samples), how);
  for (std::size_t k = 0; k < middle.size(); ++k) {
    const std::size_t samples = detail::samples_of(middle[k].id, how.samples);
    result.sampled.push_back(detail::settle(result.all.findings[k], table, k, samples));
  }
  result.doubts = moves.doubts();
  for (const law* l : moves.laws().all()) {
    if (l) result.laws.push_back(l);
  }
  return result;
}

}  // namespace tankwright::decisions
