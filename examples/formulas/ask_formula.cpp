// SPDX-License-Identifier: BSL-1.0
/// @file
/// Any formula from the command line:
///
///   ask_formula density '{"practical_salinity": 35, "temperature": "25 degC"}'
///   ask_formula density '[35, 298.15]'     plain numbers in SI, in the order of the list; null for a default
///   ask_formula --list
///   ask_formula < questions        a line each: name, tab, fields
#include <iostream>
#include <string>
#include <string_view>
#include <tankwright/core/charconv.hpp>
#include <vector>

#include "formulas.hpp"

namespace {

namespace f = tankwright_formulas;

/// "[1, null, 3]" into numbers that stand at their defaults; false for anything else.
[[nodiscard]] bool read_numbers(std::string_view list, std::vector<double>& into) {
  list = list.substr(1, list.size() - 2);
  for (double& number : into) {
    const std::size_t comma = list.find(',');
    std::string_view one = list.substr(0, comma);
    while (one.starts_with(' ')) one.remove_prefix(1);
    while (one.ends_with(' ')) one.remove_suffix(1);
    if (one != "null" && !tankwright::core::number_from_digits(one, number)) return false;
    list.remove_prefix(comma == std::string_view::npos ? list.size() : comma + 1);
  }
  return list.empty();
}

[[nodiscard]] std::string call_by_numbers(std::string_view name, std::string_view list) {
  const int formula = f::find(name);
  const f::numbers size = f::numbers_of(formula);
  std::vector<double> in(size.in), out(size.out);
  try {
    if (size.can) f::defaults(formula, in.data());
    if (!read_numbers(list, in))
      return "{\"error\":{\"kind\":\"not_numbers\",\"what\":\"these are not the numbers it takes\"}}";
    f::call_numbers(formula, in.data(), out.data());
  } catch (...) {
    return f::current_error();
  }
  std::string text = "[";
  for (const double number : out) {
    tankwright::core::digits_buffer buffer;
    if (text.size() > 1) text += ",";
    text += number - number == 0.0 ? tankwright::core::shortest_digits_of(buffer, number) : "null";
  }
  return text + "]";
}

[[nodiscard]] std::string answer_to(std::string_view name, std::string_view fields) {
  const bool list = fields.starts_with('[') && fields.ends_with(']');
  return list ? call_by_numbers(name, fields) : f::call(name, fields);
}

}  // namespace

int main(int count, char** words) {
  if (count == 2 && std::string_view{words[1]} == "--list") {
    std::cout << f::list();
    return 0;
  }
  if (count == 3) {
    const std::string answer = answer_to(words[1], words[2]);
    std::cout << answer << '\n';
    return answer.starts_with("{\"error\"") ? 1 : 0;
  }
  if (count != 1) {
    std::cerr
        << "usage: ask_formula NAME FIELDS, ask_formula --list, or lines of NAME, tab, FIELDS on standard input\n";
    return 2;
  }
  for (std::string line; std::getline(std::cin, line);) {
    const std::size_t tab = line.find('\t');
    std::cout << answer_to(line.substr(0, tab), tab == std::string::npos ? "{}" : line.substr(tab + 1)) << '\n';
  }
}
