// SPDX-License-Identifier: BSL-1.0
#include <cmath>

#include <tankwright/life/aeration.hpp>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {
const evidence ways_add{"tankwright::life::aeration_rate", kind::identity,
                        "ways in add: 0.0207 m/h x 3 m2/2 m3 + 0.7 x 2/h"};
const evidence at_twenty{"tankwright::life::transfer_at", kind::identity, "unchanged at 20 degC"};

rate of(const twl::aeration& way, double t = 20.0, double net = 2000.0) {
  return twl::aeration_rate({.net = litres(net), .temperature = celsius(t), .ways = std::span{&way, 1}});
}
}  // namespace

TEST_CASE("aeration: ways in add up") {
  const twl::aeration ways[] = {
      {.label = "surface", .surface = square_metres(3.0), .transfer = twl::still_surface_transfer},
      {.label = "air stone", .bubbles = per_hour(2.0), .alpha = fraction(0.7)},
  };
  TW_CHECK(ways_add, twl::aeration_rate({.net = litres(2000.0), .temperature = celsius(20.0), .ways = ways}),
           per_hour(0.0207 * 3.0 / 2.0 + 1.4), relative(1e-14));
  TW_CHECK(at_twenty, twl::transfer_at(per_hour(2.0), celsius(20.0)), per_hour(2.0), relative(1e-13));
  CHECK(twl::aeration_rate(
            {.net = litres(2000.0), .temperature = celsius(20.0), .ways = std::span<const twl::aeration>{}}) ==
        per_hour(0.0));
}

TEST_CASE("aeration: bad input") {
  CHECK_THROWS_WITH_AS(
      (void)of({.label = "air stone", .bubbles = per_hour(-1.0)}),
      "tankwright::life::aeration_rate: air stone: KLa = -1 1/h is not possible; expected 0 to 100000 1/h",
      invalid_input);
  CHECK_THROWS_AS((void)of({.surface = square_metres(-1.0)}), invalid_input);
  CHECK_THROWS_AS((void)of({.transfer = metres_per_second(-1.0)}), invalid_input);
  CHECK_THROWS_AS((void)of({.alpha = fraction(1.5)}), invalid_input);
  CHECK_THROWS_AS((void)of({}, 20.0, 0.0), invalid_input);
  check_edges(twl::bubbles_limits, [](double x, range_policy) { return twl::transfer_at(per_hour(x), celsius(20.0)); });
  check_edges(twl::water_temperature_limits,
              [](double t, range_policy) { return twl::transfer_at(per_hour(1.0), celsius(t)); });
}

TEST_CASE("aeration: 1.024 a kelvin, and velocities that are said") {
  const evidence warm{"tankwright::life::transfer_at", kind::from_memory, "ASCE/EWRI 2-06: theta 1.024"};
  const evidence ways{"tankwright::life::aeration_rate", kind::identity, "k_L A/V + alpha KLa 1.024^(T - 20)"};
  TW_CHECK(warm, twl::transfer_at(per_hour(2.0), celsius(27.5)), per_hour(2.0 * std::pow(1.024, 7.5)), relative(1e-12));
  TW_CHECK(warm, twl::transfer_at(per_hour(2.0), celsius(12.0)), per_hour(2.0 / std::pow(1.024, 8.0)), relative(1e-12));
  // 5 cm/h over 2 m2 in 1000 L is 0.1/h whatever the temperature; half of 4/h at 30 degC.
  TW_CHECK(ways,
           of({.surface = square_metres(2.0),
               .transfer = metres_per_second(0.05 / 3600.0),
               .bubbles = per_hour(4.0),
               .alpha = fraction(0.5)},
              30.0, 1000.0),
           per_hour(0.1 + 2.0 * std::pow(1.024, 10.0)), relative(1e-12));
  TW_CHECK(ways, of({.bubbles = per_hour(4.0)}), per_hour(4.0), relative(1e-13));  // clean water, when nothing is said
}

TEST_CASE("aeration: what is taken and what is refused") {
  const auto way = [](double surface, double cm_per_hour, double kla, double alpha) {
    return of({.label = "stone",
               .surface = square_metres(surface),
               .transfer = metres_per_second(cm_per_hour / 3.6e5),
               .bubbles = per_hour(kla),
               .alpha = fraction(alpha)});
  };
  check_ranges("life::aeration_rate",
               {TW_RANGE("stone: surface", 0.0, 1e6, way(x, 1.0, 1.0, 1.0)),
                TW_RANGE("stone: transfer velocity", 0.0, 1e6, way(1.0, x, 1.0, 1.0)),
                TW_RANGE("stone: KLa", 0.0, 1e5, way(1.0, 1.0, x, 1.0)),
                TW_RANGE("stone: alpha", 0.0, 1.0, way(1.0, 1.0, 1.0, x)),
                TW_RANGE("net volume", 1e-3, 1e10, of({}, 20.0, x)), TW_RANGE("temperature", -5.0, 100.0, of({}, x))});
  check_ranges("life::transfer_at",
               {TW_RANGE("KLa", 0.0, 1e5, twl::transfer_at(per_hour(x), celsius(20.0))),
                TW_RANGE("temperature", -5.0, 100.0, twl::transfer_at(per_hour(1.0), celsius(x)))});
}
