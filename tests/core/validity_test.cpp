// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/validity.hpp>

#include <cmath>

#include <tankwright/core/temperature.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

template <class Error>
std::string message(const limits& limit, double value, range_policy policy = range_policy::published) {
  try {
    core::check("tankwright::there", limit, value, policy);
  } catch (const Error& e) {
    CHECK(e.details().function == "tankwright::there");
    CHECK(e.details().argument == limit.argument);
    CHECK(e.details().unit == limit.unit);
    CHECK((e.details().value == value || std::isnan(value)));
    return e.what();
  }
  return "nothing thrown";
}

constexpr limits salinity{"salinity", "", not_negative, {0.0, 42.0}, "UNESCO 1981"};

}  // namespace

TEST_CASE("validity: intervals contain what they say, and never NaN") {
  CHECK(interval{0.0, 1.0}.contains(0.0));
  CHECK(interval{0.0, 1.0}.contains(1.0));
  CHECK_FALSE(interval{0.0, 1.0}.contains(std::nextafter(1.0, 2.0)));
  CHECK_FALSE(interval{0.0, 1.0}.contains(std::nextafter(0.0, -1.0)));
  CHECK_FALSE(interval{0.0, 1.0, edge::open, edge::open}.contains(0.0));
  CHECK_FALSE(interval{0.0, 1.0, edge::open, edge::open}.contains(1.0));
  CHECK(interval{0.0, 1.0, edge::open, edge::open}.contains(std::nextafter(0.0, 1.0)));
  CHECK(interval{}.contains(infinity));
  for (const interval& range : {interval{}, any_finite, not_negative, positive, zero_to_one, above_zero_to_one,
                                zero_to_below_one, above_absolute_zero_celsius}) {
    CHECK_FALSE(range.contains(not_a_number));
  }
  for (const interval& range : {any_finite, not_negative, positive, above_absolute_zero_celsius}) {
    CHECK_FALSE(range.contains(infinity));
    CHECK_FALSE(range.contains(-infinity));
    CHECK_FALSE(range.contains(std::numeric_limits<double>::max()));
  }
  // What can exist has two ends: a panel's stiffness is 1e11 Pa, a free ion's share 1e-14.
  for (const interval& range : {any_finite, not_negative, positive}) {
    CHECK(range.contains(1e15));
    CHECK_FALSE(range.contains(std::nextafter(1e15, 1e16)));
  }
  CHECK(any_finite.contains(-1e15));
  CHECK_FALSE(any_finite.contains(-1.1e15));
  CHECK(above_absolute_zero_celsius.contains(1e4));
  CHECK_FALSE(above_absolute_zero_celsius.contains(1.1e4));
  CHECK(not_negative.contains(-0.0));
  CHECK_FALSE(positive.contains(0.0));
  CHECK(positive.contains(1e-30));
  CHECK_FALSE(positive.contains(std::numeric_limits<double>::denorm_min()));
  CHECK_FALSE(above_zero_to_one.contains(std::numeric_limits<double>::denorm_min()));
  CHECK_FALSE(above_absolute_zero_celsius.contains(-273.15));
  CHECK_FALSE(zero_to_below_one.contains(1.0));
  CHECK_FALSE(above_zero_to_one.contains(0.0));
}

TEST_CASE("validity: a range of Celsius temperatures admits its own ends, held in kelvin") {
  const evidence ends{"tankwright::celsius_range", kind::identity, "in_celsius(celsius(t)) = t within rounding"};
  for (double low = -10.0; low < 100.0; low += 0.1) {
    const interval range = celsius_range(low, low + 30.0);
    TW_HOLDS(ends, range.contains(in_celsius(celsius(low))) && range.contains(in_celsius(celsius(low + 30.0))));
    CHECK(range.contains(in_celsius(fahrenheit(low * 1.8 + 32.0))));
    CHECK_FALSE(range.contains(in_celsius(celsius(low - 1e-6))));
    CHECK_FALSE(range.contains(in_celsius(celsius(low + 30.0 + 1e-6))));
  }
}

TEST_CASE("validity: what is refused, and in which words") {
  CHECK(message<invalid_input>(salinity, -1.0) ==
        "tankwright::there: salinity = -1 is not possible; expected at least 0");
  CHECK(message<invalid_input>(salinity, not_a_number) ==
        "tankwright::there: salinity = nan is not possible; expected at least 0");
  CHECK(message<invalid_input>(salinity, infinity) ==
        "tankwright::there: salinity = inf is not possible; expected at least 0");
  CHECK(message<out_of_range>(salinity, 43.0) ==
        "tankwright::there: salinity = 43 is outside the published range 0 to 42 (UNESCO 1981); "
        "pass tankwright::extrapolate to go past it");
  CHECK(message<error>(salinity, 42.0) == "nothing thrown");
  CHECK(message<error>(salinity, 43.0, extrapolate) == "nothing thrown");
  CHECK(message<invalid_input>(salinity, -1.0, extrapolate) ==
        "tankwright::there: salinity = -1 is not possible; expected at least 0");

  const limits bore{"bore", "m", positive};
  CHECK(message<invalid_input>(bore, 0.0) == "tankwright::there: bore = 0 m is not possible; expected more than 0 m");
  // The ends that everything has are named to those who go past them, and to nobody else.
  CHECK(message<error>(bore, 1e15) == "nothing thrown");
  CHECK(message<invalid_input>(bore, 1e300) ==
        "tankwright::there: bore = 1e+300 m is not possible; expected at most 1e+15 m");
  CHECK(message<invalid_input>(bore, 1e-300) ==
        "tankwright::there: bore = 1e-300 m is not possible; expected at least 1e-30 m");
  CHECK(message<invalid_input>(bore, infinity) ==
        "tankwright::there: bore = inf m is not possible; expected more than 0 m");
  const limits share{"share", "", above_zero_to_one};
  CHECK(message<invalid_input>(share, 0.0) ==
        "tankwright::there: share = 0 is not possible; expected more than 0 and at most 1");

  const limits part{"porosity", "", zero_to_below_one};
  CHECK(message<invalid_input>(part, 1.0) ==
        "tankwright::there: porosity = 1 is not possible; expected at least 0 and below 1");
  const limits any{"offset", "m", any_finite};
  CHECK(message<invalid_input>(any, -1e300) ==
        "tankwright::there: offset = -1e+300 m is not possible; expected at least -1e+15 m");
  CHECK(message<invalid_input>(any, not_a_number) ==
        "tankwright::there: offset = nan m is not possible; expected a finite number");
  const limits high{"share", "", interval{-infinity, 1.0, edge::closed, edge::closed}};
  CHECK(message<invalid_input>(high, 2.0) == "tankwright::there: share = 2 is not possible; expected at most 1");
  const limits t{"temperature", "degC", above_absolute_zero_celsius, celsius_range(0.0, 40.0), "Weiss 1970"};
  CHECK(message<out_of_range>(t, 41.0) ==
        "tankwright::there: temperature = 41 degC is outside the published range 0 to 40 degC (Weiss 1970); "
        "pass tankwright::extrapolate to go past it");
}

TEST_CASE("validity: the error carries the limits that were crossed") {
  try {
    core::check("tankwright::there", salinity, 43.0);
    FAIL("nothing thrown");
  } catch (const out_of_range& e) {
    CHECK(e.details().low == 0.0);
    CHECK(e.details().high == 42.0);
    CHECK(e.details().source == "UNESCO 1981");
  }
  try {
    core::check("tankwright::there", salinity, -1.0);
    FAIL("nothing thrown");
  } catch (const invalid_input& e) {
    CHECK(e.details().low == 0.0);
    CHECK(e.details().source.empty());
  }
}
