// SPDX-License-Identifier: BSL-1.0
/// @file
/// Reading and writing quantities as text. Opt-in: `tankwright.hpp` does not include it.
#pragma once

#include <tankwright/text/measured.hpp>
#include <tankwright/text/quantity.hpp>
#include <tankwright/text/unit_choices.hpp>
