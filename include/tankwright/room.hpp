// SPDX-License-Identifier: BSL-1.0
/// @file
/// Where it stands: moist air, evaporation, humidity, condensation, heat, top-off.
#pragma once

#include <tankwright/room/air.hpp>
#include <tankwright/room/moist_air.hpp>
#include <tankwright/room/saturation.hpp>
#include <tankwright/room/wet_bulb.hpp>
