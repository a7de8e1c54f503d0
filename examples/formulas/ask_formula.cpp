// SPDX-License-Identifier: BSL-1.0
/// @file
/// Any formula from the command line:
///
///   ask_formula density '{"practical_salinity": 35, "temperature": "25 degC"}'
///   ask_formula --list
///   ask_formula < questions        a line each: name, tab, fields
#include <iostream>
#include <string>
#include <string_view>

#include "formulas.hpp"

int main(int count, char** words) {
  namespace f = tankwright_formulas;
  if (count == 2 && std::string_view{words[1]} == "--list") {
    std::cout << f::list();
    return 0;
  }
  if (count == 3) {
    const std::string answer = f::call(words[1], words[2]);
    std::cout << answer << '\n';
    return answer.starts_with("{\"error\"") ? 1 : 0;
  }
  if (count != 1) {
    std::cerr << "usage: ask_formula NAME FIELDS, ask_formula --list, or lines of NAME, tab, FIELDS on standard input\n";
    return 2;
  }
  for (std::string line; std::getline(std::cin, line);) {
    const std::size_t tab = line.find('\t');
    std::cout << f::call(line.substr(0, tab), tab == std::string::npos ? "{}" : line.substr(tab + 1)) << '\n';
  }
}
