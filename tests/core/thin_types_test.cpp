// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/thin_types.hpp>

#include <cmath>
#include <concepts>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {
template <class T>
concept addable = requires(T a, T b) {
  a + b;
};
}  // namespace

TEST_CASE("thin types: a proportion is made from a fraction or from per cent, and read as either") {
  const auto definition = [](const char* function) { return evidence{function, kind::identity, "1 % = 1/100"}; };
  for (const double p : {0.0, 7.0, 60.0, 87.0, 100.0}) {
    TW_CHECK(definition("tankwright::percent"), percent(p), fraction(p / 100.0), tolerance{});
    TW_CHECK(definition("tankwright::fraction"), fraction(p / 100.0).value(), p / 100.0, tolerance{});
    TW_CHECK(definition("tankwright::in_percent"), in_percent(percent(p)), p, relative(3e-16));
    TW_CHECK(definition("tankwright::in_percent"), in_percent(fraction(p / 100.0)), p, relative(3e-16));
    CHECK(relative_humidity::from_percent(p) == relative_humidity::from_fraction(p / 100.0));
    CHECK(compare(in_percent(relative_humidity::from_percent(p)), p, relative(3e-16)).good);
  }
  CHECK(percent(60.0) < fraction(0.87));
}

TEST_CASE("thin types: an absolute salinity is read as what it is made of") {
  const evidence same{"tankwright::in_grams_per_kilogram", kind::identity, "the number that it is made of"};
  TW_CHECK(same, in_grams_per_kilogram(absolute_salinity::from_grams_per_kilogram(35.16504)), 35.16504, tolerance{});
}

TEST_CASE("thin types: what must not be mixed does not convert") {
  static_assert(!std::convertible_to<double, practical_salinity>);
  static_assert(!std::convertible_to<double, proportion>);
  static_assert(!std::constructible_from<proportion, double>);
  static_assert(!std::constructible_from<absolute_salinity, double>);
  static_assert(!std::constructible_from<relative_humidity, double>);
  static_assert(!std::constructible_from<practical_salinity, absolute_salinity>);
  static_assert(!std::constructible_from<absolute_salinity, practical_salinity>);
  static_assert(!std::constructible_from<porosity, proportion>);
  static_assert(!std::convertible_to<pressure, gauge_pressure>);
  static_assert(!std::constructible_from<gauge_pressure, absolute_pressure>);
  static_assert(!std::equality_comparable_with<practical_salinity, porosity>);
  static_assert(!addable<practical_salinity> && !addable<proportion> && !addable<gauge_pressure>);
}

TEST_CASE("thin types: they cost nothing and compare") {
  static_assert(sizeof(practical_salinity) == sizeof(double) && sizeof(gauge_pressure) == sizeof(double));
  static_assert(practical_salinity{34.0} < practical_salinity{35.0});
  static_assert(absolute_salinity::from_grams_per_kilogram(35.2) == absolute_salinity::from_grams_per_kilogram(35.2));
  static_assert(gauge_pressure{pressure::from_value(3e3)} > gauge_pressure{pressure::from_value(2e3)});
  static_assert(standard_atmosphere.value().value() == 101325.0);
}

TEST_CASE("thin types: without a number they are not one, and a vector for results can be made") {
  const std::vector<practical_salinity> results(3);
  for (const practical_salinity s : results) CHECK(std::isnan(s.value()));
  CHECK(std::isnan(in_grams_per_kilogram(absolute_salinity{})));
  CHECK(std::isnan(proportion{}.value()));
  CHECK(std::isnan(porosity{}.value()));
  CHECK(std::isnan(relative_humidity{}.value()));
  CHECK(std::isnan(gauge_pressure{}.value().value()));
  CHECK(std::isnan(absolute_pressure{}.value().value()));
}
