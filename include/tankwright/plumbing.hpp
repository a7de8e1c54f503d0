// SPDX-License-Identifier: BSL-1.0
/// @file
/// What moves the water: friction, fittings, sizes, pumps, circuits, weirs, drains, sumps, emptying.
#pragma once

#include <tankwright/plumbing/overflow.hpp>
#include <tankwright/plumbing/weirs.hpp>
