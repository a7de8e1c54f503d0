// SPDX-License-Identifier: BSL-1.0
/// @file
/// Reference tables: check values as data, in `tests/reference/<folder>/<topic>.csv`, one row a value.
///
/// Columns: id, function, inputs, value, unit, tolerance, source, kind, note. `inputs` is "S_P=35; t90=25"; `tolerance`
/// is a number in the unit of the value, or "rel 1e-6"; `kind` is one of the words of `kind_text`.
#pragma once

#include <array>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "check.hpp"

namespace tankwright::testing {

struct reference_row {
  std::string id;
  std::string function;
  std::map<std::string, std::string> inputs;
  double value;
  std::string unit;
  tolerance allowed;
  evidence about;

  /// The number of an input; throws when the row has no such input or it is not a number.
  [[nodiscard]] double operator[](std::string_view input) const;
  /// The text of an input; empty when the row has no such input.
  [[nodiscard]] std::string text(std::string_view input) const;
  [[nodiscard]] bool has(std::string_view input) const;
};

/// The rows of `tests/reference/<name>`; throws when the file is missing or malformed.
[[nodiscard]] std::vector<reference_row> reference_rows(std::string_view name);
/// The same for a table that a fixture made in this run (see tests/live/), in TANKWRIGHT_LIVE_DIR.
[[nodiscard]] std::vector<reference_row> live_rows(std::string_view name);

/// The lines of a table of texts with N columns, after a line that must be `header`; throws as `reference_rows` does.
[[nodiscard]] std::vector<std::vector<std::string>> table_rows(const std::string& path, std::string_view header);
template <std::size_t N>
[[nodiscard]] std::vector<std::array<std::string, N>> table_of(const std::string& path, std::string_view header) {
  std::vector<std::array<std::string, N>> lines;
  for (auto& fields : table_rows(path, header)) {
    auto& line = lines.emplace_back();
    for (std::size_t i = 0; i < N; ++i) line[i] = fields.at(i);
  }
  return lines;
}

/// Computes the value of a row, in the row's unit.
using row_handler = std::function<double(const reference_row&)>;

/// Check every row; a row whose function has no handler, and a handler without a row, fail.
void check_rows(const std::vector<reference_row>& rows, const std::map<std::string, row_handler>& handlers);

}  // namespace tankwright::testing
