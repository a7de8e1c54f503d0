// SPDX-License-Identifier: BSL-1.0
/// @file
/// The water of the tank, as the room sees it.
#pragma once

#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>

namespace tankwright::room {

/// The water at the surface. Its skin is 0.1 to 0.5 K cooler than the water below, worth 2 to 8 % of the evaporation.
struct tank_water {
  required<tankwright::temperature> temperature;
  required<practical_salinity> salinity;
};

}  // namespace tankwright::room
