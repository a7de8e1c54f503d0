// SPDX-License-Identifier: BSL-1.0
/// @file
/// The formulas: core to life. What works on a whole plan is in `plan.hpp`, `decisions.hpp` and `exchange.hpp`; text
/// (`text.hpp`) and uncertainty (`numerics.hpp`) are opt-in, because they cost compile time.
#pragma once

#include <tankwright/core.hpp>
#include <tankwright/life.hpp>
#include <tankwright/plumbing.hpp>
#include <tankwright/room.hpp>
#include <tankwright/version.hpp>
#include <tankwright/vessel.hpp>
#include <tankwright/water.hpp>
