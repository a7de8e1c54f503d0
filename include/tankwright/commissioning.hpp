// SPDX-License-Identifier: BSL-1.0
/// @file
/// The job itself: leak test, power cut, changeover, and one assessment of a whole plan.
#pragma once

#include <tankwright/commissioning/animals_plan.hpp>
#include <tankwright/commissioning/assess.hpp>
#include <tankwright/commissioning/assessment.hpp>
#include <tankwright/commissioning/closing_plan.hpp>
#include <tankwright/commissioning/figure.hpp>
#include <tankwright/commissioning/filter_plan.hpp>
#include <tankwright/commissioning/finding.hpp>
#include <tankwright/commissioning/hold_section.hpp>
#include <tankwright/commissioning/joint.hpp>
#include <tankwright/commissioning/life_plan.hpp>
#include <tankwright/commissioning/measure_first.hpp>
#include <tankwright/commissioning/plan.hpp>
#include <tankwright/commissioning/plumbing_plan.hpp>
#include <tankwright/commissioning/power_cut_plan.hpp>
#include <tankwright/commissioning/room_parts.hpp>
#include <tankwright/commissioning/room_plan.hpp>
#include <tankwright/commissioning/salinity_reading.hpp>
#include <tankwright/commissioning/start_up_forecast.hpp>
#include <tankwright/commissioning/system_state.hpp>
#include <tankwright/commissioning/verdict.hpp>
#include <tankwright/commissioning/vessel_plan.hpp>
#include <tankwright/commissioning/water_plan.hpp>
