// SPDX-License-Identifier: BSL-1.0
/// @file
/// Sums over what lies in the water.
#pragma once

#include <tankwright/core/estimate.hpp>
#include <tankwright/vessel/item.hpp>
#include <vector>

namespace tankwright::decisions {

/// A thin volume (solids, pores, envelope) as a volume.
///
/// @param v   an estimate of a thin volume
/// @return    the same numbers
/// @accuracy  exact
/// @source    this library
template <class Thin>
[[nodiscard]] estimate<volume> as_volume(const estimate<Thin>& v) noexcept {
  return map_rising(v, [](const Thin& thin) { return thin.value(); });
}

/// Sum of one estimate of every item, as if all erred the same way, which those of one kind do.
///
/// @param items one or more
/// @param of    gives the estimate of an item
/// @return      the sum, with the reason of the first
/// @throws      what `of` throws
/// @accuracy    the bands of the items
/// @source      this library
template <class Q, class Of>
[[nodiscard]] estimate<Q> sum_over(const std::vector<vessel::item>& items, Of of) {
  estimate<Q> sum{Q{}, Q{}, Q{}, items.front().solids.reason};
  for (const vessel::item& i : items) {
    const estimate<Q> part = of(i);
    sum = {sum.low + part.low, sum.central + part.central, sum.high + part.high, sum.reason};
  }
  return sum;
}

}  // namespace tankwright::decisions
