// SPDX-License-Identifier: BSL-1.0
/// @file
/// What moves the water: pipes, fittings, pumps, circuits, overflows, drains, and the sump.
#pragma once

#include <tankwright/plumbing/area_profile.hpp>
#include <tankwright/plumbing/circuit.hpp>
#include <tankwright/plumbing/circuit_parts.hpp>
#include <tankwright/plumbing/circuit_tuning.hpp>
#include <tankwright/plumbing/drain.hpp>
#include <tankwright/plumbing/drains_blocked.hpp>
#include <tankwright/plumbing/emptying.hpp>
#include <tankwright/plumbing/filling.hpp>
#include <tankwright/plumbing/fittings.hpp>
#include <tankwright/plumbing/friction.hpp>
#include <tankwright/plumbing/friction_cross_checks.hpp>
#include <tankwright/plumbing/jet.hpp>
#include <tankwright/plumbing/outlet_kind.hpp>
#include <tankwright/plumbing/overflow.hpp>
#include <tankwright/plumbing/pipe_run.hpp>
#include <tankwright/plumbing/pipe_sizes.hpp>
#include <tankwright/plumbing/power_cut.hpp>
#include <tankwright/plumbing/power_cut_failures.hpp>
#include <tankwright/plumbing/power_cut_limits.hpp>
#include <tankwright/plumbing/power_cut_system.hpp>
#include <tankwright/plumbing/power_cut_transient.hpp>
#include <tankwright/plumbing/priming.hpp>
#include <tankwright/plumbing/pump.hpp>
#include <tankwright/plumbing/pvc_schedule.hpp>
#include <tankwright/plumbing/restart.hpp>
#include <tankwright/plumbing/siphon.hpp>
#include <tankwright/plumbing/submerged_jet.hpp>
#include <tankwright/plumbing/sump.hpp>
#include <tankwright/plumbing/sump_plan.hpp>
#include <tankwright/plumbing/vessel_shapes.hpp>
#include <tankwright/plumbing/water_hammer.hpp>
#include <tankwright/plumbing/weirs.hpp>
