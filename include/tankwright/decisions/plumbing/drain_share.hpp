// SPDX-License-Identifier: BSL-1.0
/// @file
/// What each drain carries, for the findings about all of them and about one that is blocked.
#pragma once

#include <tankwright/decisions/situation.hpp>
#include <vector>

namespace tankwright::decisions::detail {

/// What each drain carries.
[[nodiscard]] inline std::vector<estimate<flow_rate>> drain_shares(const plumbing_case& c, flow_rate flow) {
  std::vector<estimate<flow_rate>> shares;
  for (const auto& d : c.in.drains) shares.push_back(plumbing::drain_mode_for(d, flow, c.liquid).carries);
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

/// What drains could take beyond what comes: both at their worst, moved by what they carry.
[[nodiscard]] inline estimate<flow_rate> beyond(const estimate<flow_rate>& carried, const estimate<flow_rate>& comes) {
  return {carried.low - comes.high, carried.central - comes.central, carried.high - comes.low, carried.reason};
}

}  // namespace tankwright::decisions::detail
