// SPDX-License-Identifier: BSL-1.0
/// @file
/// What moves the water: friction, fittings, sizes, pumps, circuits, weirs, drains, sumps, emptying.
#pragma once

#include <tankwright/plumbing/emptying.hpp>
#include <tankwright/plumbing/filling.hpp>
#include <tankwright/plumbing/overflow.hpp>
#include <tankwright/plumbing/plan_profile.hpp>
#include <tankwright/plumbing/vessel_shapes.hpp>
#include <tankwright/plumbing/weirs.hpp>
