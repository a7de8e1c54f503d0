// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the bucket that new animals are dripped in run over or fill up? A word that a plan needs.
#pragma once

namespace tankwright::life {

/// What happens to the water that a drip adds.
enum class drip_vessel {
  filling,      ///< it stays: the vessel fills up
  overflowing,  ///< it pushes mixed water out: constant volume
};

}  // namespace tankwright::life
