// SPDX-License-Identifier: BSL-1.0
/// @file
/// What lives in it: nitrogen and the filter, oxygen, circulation, moving animals, room to swim.
#pragma once

#include <tankwright/life/acclimation.hpp>
#include <tankwright/life/aeration.hpp>
#include <tankwright/life/circulation.hpp>
#include <tankwright/life/drip_vessel.hpp>
#include <tankwright/life/foam.hpp>
#include <tankwright/life/levels.hpp>
#include <tankwright/life/meals.hpp>
#include <tankwright/life/nitrification.hpp>
#include <tankwright/life/nitrifiers.hpp>
#include <tankwright/life/nitrogen.hpp>
#include <tankwright/life/oxygen.hpp>
#include <tankwright/life/oxygen_use.hpp>
#include <tankwright/life/space.hpp>
#include <tankwright/life/start_up.hpp>
#include <tankwright/life/start_up_plan.hpp>
#include <tankwright/life/stocking_steps.hpp>
#include <tankwright/life/transfer.hpp>
#include <tankwright/life/transport.hpp>
#include <tankwright/life/water_changes.hpp>
