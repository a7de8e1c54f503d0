// SPDX-License-Identifier: BSL-1.0
/// @file
/// Plans from and to TOML and JSON, reports as JSON, files. Opt-in: toml++ and nlohmann-json are needed where the
/// bodies are compiled.
#pragma once

#include <tankwright/exchange/files.hpp>
#include <tankwright/exchange/read.hpp>
#include <tankwright/exchange/report.hpp>
#include <tankwright/exchange/write.hpp>
