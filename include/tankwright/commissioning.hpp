// SPDX-License-Identifier: BSL-1.0
/// @file
/// The job itself: hold test, power cut, changeover, and one assessment of a whole plan.
#pragma once

#include <tankwright/commissioning/hold_plan.hpp>
#include <tankwright/commissioning/hold_test.hpp>
#include <tankwright/commissioning/verdict.hpp>
