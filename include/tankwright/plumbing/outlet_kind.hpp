// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does a pipe end in the air or under water? A word that a plan needs without any of the hydraulics.
#pragma once

namespace tankwright::plumbing {

/// In the open, water falls out at the height of the nozzle and none runs back. Submerged, it is the level of the water
/// over it that counts, and water runs back as easily as it came.
enum class outlet_kind { open, submerged };

}  // namespace tankwright::plumbing
