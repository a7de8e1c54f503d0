// SPDX-License-Identifier: BSL-1.0
/// @file
/// The vocabulary of the library: quantities, units, thin types, ranges, errors, citations, estimates.
/// Text (parsing and printing) is opt-in: include `tankwright/text/quantity.hpp` where it is needed.
#pragma once

#include <tankwright/core/amount.hpp>
#include <tankwright/core/citation.hpp>
#include <tankwright/core/errors.hpp>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/core/validity.hpp>
