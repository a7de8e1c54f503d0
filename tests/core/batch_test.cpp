// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/batch.hpp>

#include <bit>
#include <cmath>
#include <random>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::core;

TEST_CASE("batch: square roots are those of std::sqrt, to the last bit") {
  std::mt19937_64 random{20260801};
  MESSAGE("seed 20260801");
  const double odd_ones[] = {0.0,
                             -0.0,
                             1.0,
                             std::numeric_limits<double>::denorm_min(),
                             std::numeric_limits<double>::min(),
                             std::numeric_limits<double>::max(),
                             std::numeric_limits<double>::infinity()};
  for (int round = 0; round < 2000; ++round) {
    block values{};
    for (std::size_t i = 0; i < block_size; ++i) {
      // Any positive double: 11 bits of exponent, 52 of mantissa.
      values[i] = std::bit_cast<double>(random() >> 1);
      if (std::isnan(values[i])) values[i] = 2.0;
    }
    if (round == 0) std::copy(std::begin(odd_ones), std::end(odd_ones), values.at);
    const block before = values;
    square_roots(values);
    for (std::size_t i = 0; i < block_size; ++i) {
      const double wanted = std::sqrt(before[i]);
      if (std::bit_cast<std::uint64_t>(values[i]) != std::bit_cast<std::uint64_t>(wanted)) {
        FAIL("sqrt(" << before[i] << ") gave " << values[i]);
      }
    }
  }
  block negative{};
  negative[3] = -1.0;
  square_roots(negative);
  CHECK(std::isnan(negative[3]));
}

TEST_CASE("batch: check_all refuses what check refuses, for the first bad element") {
  const double inf = std::numeric_limits<double>::infinity();
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const limits cases[] = {
      {"a", "m", not_negative, {0.0, 42.0}, "somebody"},
      {"b", "", positive},
      {"c", "", zero_to_below_one},
      {"d", "", {0.0, 1.0, edge::open, edge::open}, {0.2, 0.8, edge::open, edge::open}, "somebody"},
      {"e", "degC", above_absolute_zero_celsius, celsius_range(-6.0, 80.0), "somebody"},
      {"f", "", any_finite},
  };
  for (const auto& limit : cases) {
    for (const range_policy policy : {range_policy::published, extrapolate}) {
      for (const double end : {limit.possible.low, limit.possible.high, limit.published.low, limit.published.high, 0.0,
                               nan, inf, -inf, 0.5, std::numeric_limits<double>::max()}) {
        for (const double x : {std::nextafter(end, -inf), end, std::nextafter(end, inf)}) {
          const auto outcome = [&](auto&& call) -> std::string {
            try {
              call();
              return "accepted";
            } catch (const error& e) {
              return e.what();
            }
          };
          const std::vector<double> batch{0.5, 0.5, x, x, 0.5};
          CHECK(outcome([&] { check("f", limit, x, policy); }) == outcome([&] {
                  check_all(
                      "f", limit, batch.size(), [&](std::size_t i) { return batch[i]; }, policy);
                }));
        }
      }
    }
  }
  CHECK_NOTHROW(check_all("f", cases[0], 0, [](std::size_t) { return -1.0; }));
}

TEST_CASE("batch: spans of different lengths are refused") {
  CHECK_NOTHROW(check_same_size("tankwright::f", 3, 3));
  CHECK_THROWS_WITH_AS(check_same_size("tankwright::f", 3, 2),
                       "tankwright::f: size of a span = 2 differs from the size of the first span, 3", invalid_input);
}
