// SPDX-License-Identifier: BSL-1.0
/// @file
/// How is a panel held? A word that a plan needs without the mechanics of plates.
#pragma once

namespace tankwright::vessel {

/// How the four edges of a panel are held. The two upright edges always rest on something that keeps them flat.
enum class panel_edges {
  all_supported,            ///< a stiff frame or brace holds the top too
  top_free,                 ///< rimless: bottom and sides rest, the top edge is free
  bottom_clamped,           ///< as `all_supported`, but the bottom cannot turn
  bottom_clamped_top_free,  ///< as `top_free`, but the bottom cannot turn
};

}  // namespace tankwright::vessel
