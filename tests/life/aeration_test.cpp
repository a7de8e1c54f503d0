// SPDX-License-Identifier: BSL-1.0
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
