// SPDX-License-Identifier: BSL-1.0
/// @file
/// How high water stands behind a panel when it stands at a level in the display.
#pragma once

#include <algorithm>
#include <tankwright/plan/inputs/vessel_inputs.hpp>

namespace tankwright::decisions {

/// Water behind a panel. Over a free top edge it runs out, so it never stands higher than that.
///
///   level - lower edge, from 0, and at most the height of a panel whose top is free
///
/// @param wall  the panel and where it sits
/// @param level of the water above the floor of the display [m]
/// @return      level above the lower edge of the panel [m]
/// @accuracy    exact
/// @source      geometry
[[nodiscard]] inline length water_behind(const plan::wall_panel& wall, length level) noexcept {
  const vessel::panel& p = wall.panel;
  const bool free_top =
      p.edges == vessel::panel_edges::top_free || p.edges == vessel::panel_edges::bottom_clamped_top_free;
  const length above = std::max(level - wall.lower_edge, length{});
  return free_top ? std::min(above, p.height.get()) : above;
}

}  // namespace tankwright::decisions
