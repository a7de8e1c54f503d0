// SPDX-License-Identifier: BSL-1.0
#include "reference.hpp"

#include <charconv>
#include <cstdlib>
#include <fstream>
#include <set>
#include <stdexcept>

namespace tankwright::testing {

namespace {

std::string trimmed(std::string_view text) {
  const auto first = text.find_first_not_of(" \t\r");
  if (first == std::string_view::npos) return {};
  return std::string{text.substr(first, text.find_last_not_of(" \t\r") - first + 1)};
}

/// A number; what follows it after a space ("25 C") is for the reader of the table.
double number_from(std::string_view text, const std::string& where) {
  double value = 0.0;
  const char* const last = text.data() + text.size();
  const auto [end, error] = std::from_chars(text.data(), last, value);
  if (error != std::errc{} || (end != last && *end != ' ')) {
    throw std::runtime_error(where + ": not a number: '" + std::string{text} + "'");
  }
  return value;
}

std::vector<std::string> csv_fields(const std::string& line) {
  std::vector<std::string> fields(1);
  bool quoted = false;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const char c = line[i];
    if (c == '"') {
      if (quoted && i + 1 < line.size() && line[i + 1] == '"')
        fields.back() += line[++i];
      else
        quoted = !quoted;
    } else if (c == ',' && !quoted) {
      fields.emplace_back();
    } else {
      fields.back() += c;
    }
  }
  return fields;
}

std::map<std::string, std::string> inputs_from(const std::string& text, const std::string& where) {
  std::map<std::string, std::string> inputs;
  for (std::size_t start = 0; start < text.size();) {
    const std::size_t end = std::min(text.find(';', start), text.size());
    const std::string part = trimmed(std::string_view{text}.substr(start, end - start));
    start = end + 1;
    if (part.empty()) continue;
    const auto equals = part.find('=');
    if (equals == std::string::npos) throw std::runtime_error(where + ": input without '=': " + part);
    inputs[trimmed(part.substr(0, equals))] = trimmed(part.substr(equals + 1));
  }
  return inputs;
}

std::vector<reference_row> rows_from(const std::string& path) {
  std::ifstream in{path};
  if (!in) throw std::runtime_error("cannot read the reference table " + path);
  std::vector<reference_row> rows;
  std::string line;
  std::getline(in, line);
  if (trimmed(line) != "id,function,inputs,value,unit,tolerance,source,kind,note") {
    throw std::runtime_error(path + ": unexpected header");
  }
  for (int number = 2; std::getline(in, line); ++number) {
    if (trimmed(line).empty()) continue;
    const std::string where = path + ":" + std::to_string(number);
    const auto f = csv_fields(line);
    if (f.size() != 9) throw std::runtime_error(where + ": " + std::to_string(f.size()) + " fields, expected 9");
    const bool is_relative = f[5].starts_with("rel ");
    const double allowed = number_from(is_relative ? f[5].substr(4) : f[5], where);
    rows.push_back({f[0], f[1], inputs_from(f[2], where), number_from(f[3], where), f[4],
                    is_relative ? tolerance{.relative = allowed} : tolerance{.absolute = allowed},
                    evidence{f[1], kind_from_text(trimmed(f[7])), f[6]}});
  }
  if (rows.empty()) throw std::runtime_error(path + ": no rows");
  return rows;
}

}  // namespace

double reference_row::operator[](std::string_view input) const {
  const auto found = inputs.find(std::string{input});
  if (found == inputs.end()) throw std::runtime_error(id + ": no input '" + std::string{input} + "'");
  return number_from(found->second, id);
}

std::string reference_row::text(std::string_view input) const {
  const auto found = inputs.find(std::string{input});
  return found == inputs.end() ? std::string{} : found->second;
}

bool reference_row::has(std::string_view input) const { return inputs.contains(std::string{input}); }

std::vector<reference_row> reference_rows(std::string_view name) {
  return rows_from(std::string{TANKWRIGHT_REFERENCE_DIR "/"} + std::string{name});
}

std::vector<reference_row> live_rows(std::string_view name) {
  const char* directory = std::getenv("TANKWRIGHT_LIVE_DIR");
  if (directory == nullptr) throw std::runtime_error("TANKWRIGHT_LIVE_DIR is not set: run the tests through ctest");
  return rows_from(std::string{directory} + "/" + std::string{name});
}

std::vector<std::vector<std::string>> table_rows(const std::string& path, std::string_view header) {
  std::ifstream in{path};
  if (!in) throw std::runtime_error("cannot read the reference table " + path);
  std::string line;
  std::getline(in, line);
  if (trimmed(line) != header) throw std::runtime_error(path + ": unexpected header");
  std::vector<std::vector<std::string>> rows;
  while (std::getline(in, line)) {
    if (!trimmed(line).empty()) rows.push_back(csv_fields(line));
  }
  return rows;
}

void check_rows(const std::vector<reference_row>& rows, const std::map<std::string, row_handler>& handlers) {
  std::set<std::string> used;
  for (const auto& row : rows) {
    const auto handler = handlers.find(row.function);
    if (handler == handlers.end()) {
      FAIL_CHECK("row " << row.id << ": no handler for '" << row.function << "'");
      continue;
    }
    used.insert(row.function);
    const auto outcome = compare_numbers(handler->second(row), row.value, row.allowed, row.unit);
    record(row.about, outcome);
    CHECK_MESSAGE(outcome.good, row.id, ": ", row.function, ": ", outcome.text);
  }
  for (const auto& handler : handlers) {  // Clang 14 cannot use the names of a structured binding inside CHECK_MESSAGE
    CHECK_MESSAGE(used.contains(handler.first), "no row uses the handler for '", handler.first, "'");
  }
}

}  // namespace tankwright::testing
