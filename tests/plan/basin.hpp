// SPDX-License-Identifier: BSL-1.0
/// @file
/// The smallest plumbing that can be worked out by hand: one return, one drain, a sump of one chamber.
#pragma once

#include "plan/lagoon.hpp"

namespace tankwright::testing {

[[nodiscard]] inline plan::build basin() {
  plan::build build;
  give(build, {{"plumbing.lift", "1.45 m"},
               {"plumbing.edge_to_rim", "50 mm"},
               {"plumbing.overflow.surface", "2.4 m2"},
               {"plumbing.overflow.crest_height", "0.8 m"},
               {"plumbing.overflow.width", "0.8 m"},
               {"plumbing.pump.label", "pump"},
               {"plumbing.pump.flows", "0 L/h, 5000 L/h, 10000 L/h"},
               {"plumbing.pump.heads", "4 m, 3 m, 1 m"},
               {"plumbing.return[1].label", "return"},
               {"plumbing.return[1].bore", "57 mm"},
               {"plumbing.return[1].length", "1.6 m"},
               {"plumbing.return[1].loss", "5"},
               {"plumbing.return[1].below_edge", "20 mm"},
               {"plumbing.drain[1].label", "drain"},
               {"plumbing.drain[1].bore", "100 mm"},
               {"plumbing.drain[1].length", "1.3 m"},
               {"plumbing.drain[1].loss", "2"},
               {"plumbing.drain[1].drop", "0.95 m"},
               {"plumbing.drain[1].inlet_head", "80 mm"},
               {"plumbing.sump.rim", "450 mm"},
               {"plumbing.sump.running_level", "250 mm"},
               {"plumbing.sump.chamber[1].label", "pump"},
               {"plumbing.sump.chamber[1].area", "0.9 m2"}});
  return build;
}

}  // namespace tankwright::testing
