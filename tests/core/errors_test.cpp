// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/errors.hpp>

#include <clocale>
#include <cmath>
#include <concepts>

#include "support/check.hpp"

using namespace tankwright;

TEST_CASE("errors: one base, three kinds, and text as a form of the first") {
  static_assert(std::derived_from<error, std::runtime_error>);
  static_assert(std::derived_from<invalid_input, error>);
  static_assert(std::derived_from<out_of_range, error>);
  static_assert(std::derived_from<no_convergence, error>);
  static_assert(std::derived_from<text_error, invalid_input>);
  static_assert(!std::derived_from<out_of_range, invalid_input>);
}

TEST_CASE("errors: the line is readable and the diagnosis carries its parts") {
  try {
    core::fail<invalid_input>("tankwright::vessel::panel", "thickness", -3.0, "mm", "must be more than 0");
  } catch (const error& e) {
    CHECK(std::string{e.what()} == "tankwright::vessel::panel: thickness = -3 mm must be more than 0");
    CHECK(e.details().function == "tankwright::vessel::panel");
    CHECK(e.details().argument == "thickness");
    CHECK(e.details().value == -3.0);
    CHECK(e.details().unit == "mm");
    CHECK(std::isnan(e.details().low));
    CHECK(std::isnan(e.details().high));
    CHECK(e.details().source.empty());
  }
  CHECK_THROWS_WITH_AS(core::fail<no_convergence>("tankwright::f", "x", 0.25, "", "did not converge"),
                       "tankwright::f: x = 0.25 did not converge", no_convergence);
}

TEST_CASE("errors: an error outlives the strings it was made from, and copies") {
  std::string function = "tankwright::gone", argument = "depth";
  try {
    core::fail<out_of_range>(function, argument, 3.0, "m", "is too much");
  } catch (const out_of_range& e) {
    const out_of_range copy = e;
    function.assign(60, 'x');
    argument.assign(60, 'y');
    CHECK(copy.details().function == "tankwright::gone");
    CHECK(copy.details().argument == "depth");
  }
}

TEST_CASE("errors: numbers in messages are short and do not follow the locale") {
  const auto check_numbers = [] {
    CHECK(core::number_text(0.1 + 0.2) == "0.3");
    CHECK(core::number_text(80.00000000000006) == "80");
    CHECK(core::number_text(-273.15) == "-273.15");
    CHECK(core::number_text(1e300) == "1e+300");
    CHECK(core::number_text(std::numeric_limits<double>::infinity()) == "inf");
    CHECK(core::number_text(-std::numeric_limits<double>::quiet_NaN()) == "nan");
    CHECK(core::number_with_unit(1234567.5, "L") == "1234567.5 L");
    CHECK(core::number_with_unit(0.3, "") == "0.3");
  };
  check_numbers();
  // A locale with a decimal comma, where the system has one.
  for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "nl_NL.UTF-8"}) {
    if (std::setlocale(LC_ALL, name) == nullptr) continue;
    check_numbers();
    break;
  }
  std::setlocale(LC_ALL, "C");
}
