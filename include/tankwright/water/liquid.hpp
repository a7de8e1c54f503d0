// SPDX-License-Identifier: BSL-1.0
/// @file
/// The two properties of the water that moving it needs, in one value.
#pragma once

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>

namespace tankwright::water {

/// What flows: density and dynamic viscosity at the pipe's temperature.
struct liquid {
  required<mass_density> density;
  required<dynamic_viscosity> viscosity;
};

}  // namespace tankwright::water
