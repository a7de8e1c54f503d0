// SPDX-License-Identifier: BSL-1.0
/// @file
/// What each drain carries, for the findings about all of them and about one that is blocked.
#pragma once

#include <algorithm>
#include <tankwright/decisions/situation.hpp>
#include <vector>

namespace tankwright::decisions::detail {

/// What each drain carries: of a primed siphon the whole pipe, of every other also what its top lets in.
[[nodiscard]] inline std::vector<estimate<flow_rate>> drain_shares(const plumbing_case& c, flow_rate flow) {
  std::vector<estimate<flow_rate>> shares;
  for (std::size_t i = 0; i < c.in.drains.size(); ++i) {
    const auto one = plumbing::drain_mode_for(c.in.drains[i], flow, c.liquid);
    if (c.in.primed[i]) {
      shares.push_back(
          {one.full.low, one.full.central, one.full.high, "siphon formula and the losses of the fittings"});
    } else {
      shares.push_back({std::min(one.full.low, one.inlet.low), std::min(one.full.central, one.inlet.central),
                        std::min(one.full.high, one.inlet.high),
                        "siphon formula, inlets and the losses of the fittings"});
    }
  }
  return shares;
}

/// The sum of some of them.
template <class Wanted>
[[nodiscard]] estimate<flow_rate> sum_of(const std::vector<estimate<flow_rate>>& shares, Wanted wanted) {
  flow_rate low{}, central{}, high{};
  for (std::size_t i = 0; i < shares.size(); ++i) {
    if (!wanted(i)) continue;
    low += shares[i].low;
    central += shares[i].central;
    high += shares[i].high;
  }
  return {low, central, high, "siphon formula, inlets and the losses of the fittings"};
}

}  // namespace tankwright::decisions::detail
