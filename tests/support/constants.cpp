// SPDX-License-Identifier: BSL-1.0
#include "constants.hpp"

#include <charconv>
#include <cstdlib>
#include <fstream>
#include <stdexcept>

#include "reference.hpp"

namespace tankwright::testing {
namespace fields {

std::string number(double x) {
  char buffer[40];
  const auto [end, error] = std::to_chars(buffer, buffer + sizeof buffer, x);
  return {buffer, end};
}

}  // namespace fields

namespace {

/// Whether two texts are the same, each number in them to rounding.
bool same(std::string_view a, std::string_view b) {
  const auto number_at = [](std::string_view text, double& x) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), x);
    return error == std::errc{} ? static_cast<std::size_t>(end - text.data()) : 0;
  };
  const auto starts = [](std::string_view text) { return text.find_first_of("-0123456789"); };
  while (true) {
    const std::size_t at_a = starts(a), at_b = starts(b);
    if (a.substr(0, at_a) != b.substr(0, at_b)) return false;
    if (at_a == std::string_view::npos || at_b == std::string_view::npos) return at_a == at_b;
    a.remove_prefix(at_a);
    b.remove_prefix(at_b);
    double x = 0.0, y = 0.0;
    std::size_t of_a = number_at(a, x), of_b = number_at(b, y);
    if ((of_a == 0) != (of_b == 0)) return false;
    if (of_a == 0) of_a = of_b = 1;  // a dash
    if (of_a > 0 && !(std::fabs(x - y) <= 1e-12 * std::fmax(std::fabs(x), std::fabs(y)))) return false;
    a.remove_prefix(of_a);
    b.remove_prefix(of_b);
  }
}

/// Which fields are there: a text with each run of other letters than the separator as one.
std::string shape(std::string_view text) {
  std::string all;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool separator = text.substr(i).starts_with(" | ") || text.substr(i).starts_with(" ; ");
    const char c = separator ? '|' : 'x';
    if (separator) i += 2;
    if (separator || all.empty() || all.back() != c) all += c;
  }
  return all;
}

}  // namespace

void check_constants(std::string_view folder, const constants_by_name& constants) {
  const std::string path = std::string{TANKWRIGHT_REFERENCE_DIR "/"} + std::string{folder} + "/constants.csv";
  const char* wanted = std::getenv("TANKWRIGHT_CONSTANTS_TO");
  if (wanted != nullptr) {  // for the lint, which writes rows for new constants
    std::ofstream out{wanted};
    for (const auto& [name, value] : constants) out << name << '\t' << value << '\n';
    return;
  }
  const bool evidence_only = std::getenv("TANKWRIGHT_EVIDENCE_ONLY") != nullptr;
  std::map<std::string, constant_row> rows;
  for (const auto& line : table_of<4>(path, "name,value,source,kind")) {
    CHECK_MESSAGE(!line[2].empty(), line[0], ": no source in ", path);
    const bool is_new = rows.try_emplace(line[0], constant_row{line[1], line[2], kind_from_text(line[3])}).second;
    CHECK_MESSAGE(is_new, line[0], " twice in ", path);
  }
  for (const auto& constant : constants) {
    const auto row = rows.find(constant.first);
    if (row == rows.end()) {
      FAIL_CHECK(constant.first << ": no row in " << path << "; it is " << constant.second);
      continue;
    }
    const kind rests_on = row->second.rests_on;
    const bool mere_record = rests_on == kind::regression || rests_on == kind::from_memory || rests_on == kind::chosen;
    const bool good = mere_record && evidence_only ? shape(constant.second) == shape(row->second.value)
                                                   : same(constant.second, row->second.value);
    CHECK_MESSAGE(good, constant.first, " is\n  ", constant.second, "\nand should be\n  ", row->second.value, "\nby ",
                  row->second.source);
    rows.erase(row);
  }
  for (const auto& row : rows) CHECK_MESSAGE(false, row.first, ": a row of ", path, " for no constant");
}

}  // namespace tankwright::testing
