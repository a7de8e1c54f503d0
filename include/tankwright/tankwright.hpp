// SPDX-License-Identifier: BSL-1.0
/// @file
/// The whole library, except what is opt-in because it costs compile time: text (`core/text.hpp`,
/// `core/measured_text.hpp`) and simulation (`core/monte_carlo.hpp`).
#pragma once

#include <tankwright/commissioning.hpp>
#include <tankwright/core.hpp>
#include <tankwright/life.hpp>
#include <tankwright/plumbing.hpp>
#include <tankwright/room.hpp>
#include <tankwright/version.hpp>
#include <tankwright/vessel.hpp>
#include <tankwright/water.hpp>
