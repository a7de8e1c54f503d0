// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/temperature.hpp>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

constexpr auto celsius_definition = "t/degC = T/K - 273.15 (exact, SI Brochure 2019, 2.3.1)";
constexpr auto fahrenheit_definition = "t/degF = 1.8 T/K - 459.67 (exact)";

evidence exact(const char* function, const char* source) { return {function, kind::identity, source}; }

}  // namespace

TEST_CASE("temperature: fixed points on the three scales") {
  struct fixed_point {
    double k, c, f;
  };
  // Ice point, triple point of water, steam point (as defined before 1990), where the scales meet, the tank, 0 degF.
  for (const auto& p : {fixed_point{273.15, 0.0, 32.0},
                        {273.16, 0.01, 32.018},
                        {373.15, 100.0, 212.0},
                        {233.15, -40.0, -40.0},
                        {298.15, 25.0, 77.0},
                        {0.0, -273.15, -459.67}}) {
    const tolerance few_roundings{.absolute = 2e-13};
    TW_CHECK(exact("tankwright::kelvins", celsius_definition), kelvins(p.k), celsius(p.c), few_roundings);
    TW_CHECK(exact("tankwright::celsius", celsius_definition), celsius(p.c).value(), p.k, few_roundings);
    TW_CHECK(exact("tankwright::fahrenheit", fahrenheit_definition), fahrenheit(p.f).value(), p.k, few_roundings);
    TW_CHECK(exact("tankwright::in_kelvins", celsius_definition), in_kelvins(celsius(p.c)), p.k, few_roundings);
    TW_CHECK(exact("tankwright::in_celsius", celsius_definition), in_celsius(kelvins(p.k)), p.c, few_roundings);
    TW_CHECK(exact("tankwright::in_fahrenheit", fahrenheit_definition), in_fahrenheit(kelvins(p.k)), p.f,
             few_roundings);
  }
  static_assert(celsius(25.0) == kelvins(298.15));
  static_assert(in_celsius(celsius(25.0)) == 25.0);
}

TEST_CASE("temperature: round trips") {
  for (double t = -40.0; t <= 120.0; t += 0.37) {
    TW_CHECK((evidence{"tankwright::in_celsius", kind::property, "round trip"}), in_celsius(celsius(t)), t,
             tolerance{.absolute = 6e-14});
    TW_CHECK((evidence{"tankwright::in_fahrenheit", kind::property, "round trip"}), in_fahrenheit(fahrenheit(t)), t,
             tolerance{.absolute = 2e-13});
    TW_CHECK((evidence{"tankwright::in_kelvins", kind::property, "round trip"}), in_kelvins(kelvins(t)), t,
             tolerance{});
  }
}

TEST_CASE("temperature: a difference has no zero point") {
  TW_CHECK(exact("tankwright::kelvin_steps", "definition"), kelvin_steps(5.0), celsius_steps(5.0), tolerance{});
  TW_CHECK(exact("tankwright::celsius_steps", "difference of two points"), celsius_steps(5.0),
           celsius(30.0) - celsius(25.0), tolerance{});
  TW_CHECK(exact("tankwright::fahrenheit_steps", "difference of two points"), fahrenheit_steps(9.0),
           fahrenheit(86.0) - fahrenheit(77.0), tolerance{.absolute = 1e-13});
  TW_CHECK(exact("tankwright::fahrenheit_steps", "9 degF = 5 K"), fahrenheit_steps(9.0), kelvin_steps(5.0),
           tolerance{});
  TW_CHECK(exact("tankwright::in_kelvin_steps", "9 degF = 5 K"), in_kelvin_steps(fahrenheit_steps(9.0)), 5.0,
           tolerance{});
  TW_CHECK(exact("tankwright::in_celsius_steps", "9 degF = 5 K"), in_celsius_steps(fahrenheit_steps(9.0)), 5.0,
           tolerance{});
  TW_CHECK(exact("tankwright::in_fahrenheit_steps", "9 degF = 5 K"), in_fahrenheit_steps(kelvin_steps(5.0)), 9.0,
           tolerance{});
  // A point plus a step is a point, and two points differ by a step. (That two points do not add is a compile-fail test.)
  static_assert(std::is_same_v<decltype(celsius(25.0) + kelvin_steps(1.0)), temperature>);
  static_assert(std::is_same_v<decltype(celsius(25.0) - celsius(24.0)), temperature_difference>);
}

TEST_CASE("temperature: Celsius as printed before 1990, against the TEOS-10 toolbox") {
  check_rows(
      live_rows("core_temperature.csv"),
      {{"tankwright::ipts68_celsius", [](const reference_row& row) { return in_celsius(ipts68_celsius(row["t68"])); }},
       {"tankwright::in_ipts68_celsius",
        [](const reference_row& row) { return in_ipts68_celsius(celsius(row["t90"])); }}});
  CHECK(core::t68_from_t90(25.0) == 25.0 * 1.00024);
}
