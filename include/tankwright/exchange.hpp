// SPDX-License-Identifier: BSL-1.0
/// @file
/// Plans from and to TOML and JSON. Opt-in: toml++ and nlohmann-json are needed where the bodies are compiled.
#pragma once

#include <tankwright/exchange/read.hpp>
#include <tankwright/exchange/write.hpp>
