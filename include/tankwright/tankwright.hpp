// SPDX-License-Identifier: BSL-1.0
/// @file
/// The whole library, except text (`core/text.hpp`).
#pragma once

#include <tankwright/core.hpp>
#include <tankwright/version.hpp>
#include <tankwright/water.hpp>
