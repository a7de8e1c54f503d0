// SPDX-License-Identifier: BSL-1.0
/// @file
/// The version of the library. CMake reads it from here.
#pragma once

#define TANKWRIGHT_VERSION_MAJOR 0
#define TANKWRIGHT_VERSION_MINOR 2
#define TANKWRIGHT_VERSION_PATCH 0
#define TANKWRIGHT_VERSION "0.2.0"
