// SPDX-License-Identifier: BSL-1.0
/// @file
/// Where it stands: moist air, evaporation, humidity, condensation, heat, top-off.
#pragma once

#include <tankwright/room/air.hpp>
#include <tankwright/room/condensation.hpp>
#include <tankwright/room/dehumidifier.hpp>
#include <tankwright/room/evaporation.hpp>
#include <tankwright/room/evaporation_laws.hpp>
#include <tankwright/room/heat_balance.hpp>
#include <tankwright/room/heat_store.hpp>
#include <tankwright/room/heater_fault.hpp>
#include <tankwright/room/humidity.hpp>
#include <tankwright/room/humidity_control.hpp>
#include <tankwright/room/humidity_course.hpp>
#include <tankwright/room/lighting.hpp>
#include <tankwright/room/moist_air.hpp>
#include <tankwright/room/ranges.hpp>
#include <tankwright/room/rating_point.hpp>
#include <tankwright/room/running_cost.hpp>
#include <tankwright/room/saturation.hpp>
#include <tankwright/room/supply.hpp>
#include <tankwright/room/tank_water.hpp>
#include <tankwright/room/temperature_course.hpp>
#include <tankwright/room/top_off.hpp>
#include <tankwright/room/wall.hpp>
#include <tankwright/room/warm_up.hpp>
#include <tankwright/room/well_mixed.hpp>
#include <tankwright/room/wet_bulb.hpp>
