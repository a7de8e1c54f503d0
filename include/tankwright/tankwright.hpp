// SPDX-License-Identifier: BSL-1.0
/// @file
/// The whole library, except what is opt-in because it costs compile time: text (`text.hpp`) and the propagation and
/// simulation of uncertainties (`numerics.hpp`).
#pragma once

#include <tankwright/commissioning.hpp>
#include <tankwright/core.hpp>
#include <tankwright/life.hpp>
#include <tankwright/plumbing.hpp>
#include <tankwright/room.hpp>
#include <tankwright/version.hpp>
#include <tankwright/vessel.hpp>
#include <tankwright/water.hpp>
