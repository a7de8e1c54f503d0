// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/measured.hpp>

#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {
constexpr auto variance_of_shape = "variance of the distribution";
evidence exact(const char* function) { return {function, kind::identity, variance_of_shape}; }
}  // namespace

TEST_CASE("measured: standard uncertainties of the spreads") {
  TW_CHECK(exact("tankwright::rectangular"), rectangular(metres(2.4), millimetres(6.0)).uncertainty.get(),
           millimetres(std::sqrt(12.0)), relative(1e-15));
  TW_CHECK(exact("tankwright::to_the_nearest"), to_the_nearest(metres(2.4), millimetres(6.0)).uncertainty.get(),
           millimetres(std::sqrt(3.0)), relative(1e-15));
  TW_CHECK(exact("tankwright::triangular"), triangular(metres(2.4), millimetres(6.0)).uncertainty.get(),
           millimetres(std::sqrt(6.0)), relative(1e-15));
  TW_CHECK(exact("tankwright::arcsine"), arcsine(celsius(25.0), kelvin_steps(0.5)).uncertainty.get(),
           kelvin_steps(std::sqrt(0.125)), relative(1e-15));
  TW_CHECK(exact("tankwright::with_uncertainty"), with_uncertainty(percent(60.0), percent(2.0)).uncertainty.get(),
           percent(2.0), tolerance{});
  CHECK(rectangular(metres(2.4), millimetres(6.0)).shape == spread::rectangular);
  CHECK(to_the_nearest(metres(2.4), millimetres(6.0)).shape == spread::rectangular);
  CHECK(triangular(metres(2.4), millimetres(6.0)).shape == spread::triangular);
  CHECK(arcsine(celsius(25.0), kelvin_steps(0.5)).shape == spread::arcsine);
  CHECK(std::isinf(with_uncertainty(35.0, 0.1).degrees_of_freedom));
}

TEST_CASE("measured: the worked example of the GUM for limits") {
  // 4.3.7, note, and H.1.3.3: a rectangular coefficient of expansion within 2e-6 1/K.
  const evidence h1{"tankwright::rectangular", kind::published, "JCGM 100:2008, H.1.3.3 (read in a reproduction)"};
  TW_CHECK(h1, rectangular(11.5e-6, 2e-6).uncertainty.get(), 1.2e-6, tolerance{.absolute = 0.05e-6});
  const evidence cyclic{"tankwright::arcsine", kind::published, "JCGM 100:2008, H.1.3.4 (read in a reproduction)"};
  TW_CHECK(cyclic, arcsine(0.0, 0.5).uncertainty.get(), 0.35, tolerance{.absolute = 0.005});
}

TEST_CASE("measured: the mean of readings, NIST StRD certified values") {
  struct reference_set {
    const char* name;
    std::vector<double> readings;
    double mean, deviation, allowed;
  };
  const auto thousand_and_one = [](double first, double second, double third) {
    std::vector<double> readings{first};
    for (int i = 0; i < 500; ++i) readings.insert(readings.end(), {second, third});
    return readings;
  };
  // How far the certified deviation can be reached: the readings are not exact in binary (NumAcc4 holds 0.1 to 2e-9).
  const reference_set sets[] = {
      {"NumAcc1", {10000001.0, 10000003.0, 10000002.0}, 10000002.0, 1.0, 1e-15},
      {"NumAcc2", thousand_and_one(1.2, 1.1, 1.3), 1.2, 0.1, 1e-14},
      {"NumAcc3", thousand_and_one(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1, 1e-9},
      {"NumAcc4", thousand_and_one(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1, 1e-8}};
  for (const auto& set : sets) {
    const evidence certified{"tankwright::mean_of", kind::published, std::string{"NIST StRD, "} + set.name};
    const auto n = static_cast<double>(set.readings.size());
    const auto mean = mean_of(std::span<const double>{set.readings});
    TW_CHECK(certified, mean.value.get(), set.mean, relative(3e-16));
    TW_CHECK(certified, mean.uncertainty.get() * std::sqrt(n), set.deviation, relative(set.allowed));
    CHECK(mean.degrees_of_freedom == n - 1.0);
    CHECK(mean.shape == spread::student);
  }
}

TEST_CASE("measured: readings of quantities, H.2 of the GUM") {
  const std::vector<temperature> readings{celsius(24.9), celsius(25.1), celsius(25.0)};
  const measured<temperature> mean = mean_of(std::span<const temperature>{readings});
  CHECK(compare(mean.value.get(), celsius(25.0), tolerance{.absolute = 1e-12}).good);
  CHECK(compare(mean.uncertainty.get(), kelvin_steps(0.1 / std::sqrt(3.0)), relative(1e-12)).good);
  const double volts[] = {5.007, 4.994, 5.005, 4.990, 4.999};
  const evidence h2{"tankwright::mean_of", kind::published, "JCGM 100:2008, table H.2 (read in a reproduction)"};
  TW_CHECK(h2, mean_of(std::span<const double>{volts}).value.get(), 4.9990, tolerance{.absolute = 5e-5});
  TW_CHECK(h2, mean_of(std::span<const double>{volts}).uncertainty.get(), 0.0032, tolerance{.absolute = 5e-5});
}

TEST_CASE("measured: what cannot be is refused, with the name of the maker") {
  constexpr double none = std::numeric_limits<double>::quiet_NaN();
  CHECK_THROWS_WITH_AS((void)rectangular(metres(2.4), millimetres(-5.0)),
                       doctest::Contains("tankwright::rectangular: uncertainty = -0.00288675135 is not possible"),
                       invalid_input);
  CHECK_THROWS_WITH_AS((void)with_uncertainty(metres(none), millimetres(5.0)),
                       "tankwright::with_uncertainty: value = nan is not possible; expected a finite number",
                       invalid_input);
  CHECK_THROWS_AS((void)with_uncertainty(1.0, none), invalid_input);
  const double one[] = {1.0};
  CHECK_THROWS_WITH_AS((void)mean_of(std::span<const double>{one}),
                       "tankwright::mean_of: readings = 1 are too few; two at least", invalid_input);
  const double gap[] = {1.0, none};
  CHECK_THROWS_WITH_AS((void)mean_of(std::span<const double>{gap}), doctest::Contains("reading = nan"), invalid_input);
}
