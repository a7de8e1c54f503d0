// SPDX-License-Identifier: BSL-1.0
/// @file
/// Every formula of the library by name: what a front end calls that cannot call C++.
///
/// `formulas.json` beside this file is the list that `list` gives; `make.py` writes it and the glue in `generated/` from
/// the headers, so nobody keeps it up to date by hand.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace tankwright_formulas {

/// The list as JSON: the formulas, the types that their fields have, the units of each quantity, the constants that can
/// be named, and what is not here and why.
[[nodiscard]] std::string list();

/// One formula by name with named fields.
///
/// A field is a number in SI, a number in a unit, or text; a word; an object of fields; a list; the name of a constant;
/// or another formula that makes it: {"water": {"seawater": {"practical_salinity": 35, "temperature": "25 degC"}}}.
/// What is left out keeps its default. "extrapolate": true goes past the published ranges.
///
/// @param name "water.salt_for_new_water", as in the list; as in C++; or without its folder where that is no question
/// @param json the fields: {"volume": "2150 L", "target": 35, "temperature": {"value": 24, "unit": "degC"}, ...}
/// @return     JSON: {"formula", "result", "cautions", "source"}, or {"error"} with everything that the library says,
///             or with the field, what is wrong with it and the nearest name that there is. Never throws for bad input.
[[nodiscard]] std::string call(std::string_view name, std::string_view json);

/// @return the number of a formula for the functions below, -1 where there is none of that name
[[nodiscard]] int find(std::string_view name) noexcept;

/// How many plain numbers a formula takes and gives, in the order of the list, each in SI; an estimate is three (low,
/// central, high), a word its place in its list, a flag 0 or 1. Not every formula can be called by numbers alone.
struct numbers {
  bool can = false;
  std::size_t in = 0;
  std::size_t out = 0;
};
[[nodiscard]] numbers numbers_of(int formula) noexcept;

/// Fills `in` with the defaults; not a number, which every formula refuses, where a number must be given.
void defaults(int formula, double* in);

/// The formula on plain numbers.
///
/// @throws tankwright::error as the C++ function does; tankwright::invalid_input for a formula that cannot
void call_numbers(int formula, const double* in, double* out, bool extrapolate = false);

/// The error that is being handled as the JSON that `call` gives. Call it inside a `catch`.
[[nodiscard]] std::string current_error();

}  // namespace tankwright_formulas
