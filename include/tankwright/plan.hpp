// SPDX-License-Identifier: BSL-1.0
/// @file
/// The build as data: the plan, its keys by name and by list, what is wrong with it, and what the engines make of it.
#pragma once

#include <tankwright/plan/build.hpp>
#include <tankwright/plan/keys.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/plan/validate.hpp>
