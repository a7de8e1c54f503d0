// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <tankwright/room/lighting.hpp>

#include "support/check.hpp"
#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence traced{"tankwright::room::light_at_depth", kind::identity, "rays traced by Snell's law"};
const evidence by_hand{"tankwright::room::light_at_depth", kind::identity, "worked by hand"};
const evidence width{"tankwright::room::lit_width", kind::identity, "worked by hand"};

/// Area of a narrow cone at the surface over that at a depth below it, its outermost ray bent by Snell's law.
double narrow_cone(double height, double depth, double index) {
  const double out = 1e-4, in = std::asin(std::sin(out) / index);
  const double above = height * std::tan(out), below = above + depth * std::tan(in);
  return above * above / (below * below);
}

}  // namespace

TEST_CASE("light: what a narrow cone keeps, ray by ray, and what the water takes") {
  for (const double h : {0.05, 0.2, 0.7, 3.0}) {
    for (const double depth : {0.0, 0.1, 0.75, 2.5}) {
      for (const double n : {1.0, 1.333, 1.34}) {
        const room::lamp_over_water clear{.height = metres(h),
                                          .depth = metres(depth),
                                          .through_a_metre = fraction(1.0),
                                          .index = water::refractive_index{n}};
        TW_CHECK(traced, room::light_at_depth(clear).value(), narrow_cone(h, depth, n), relative(1e-6));
      }
    }
  }
  // A lamp far away does not spread: two metres of water that let 80 % through leave 64 %.
  const room::lamp_over_water sun{.height = metres(100.0), .depth = metres(2.0), .through_a_metre = fraction(0.8)};
  TW_CHECK(by_hand, room::light_at_depth(sun).value(), 0.64 / std::pow(1.0 + 0.02 / 1.34, 2.0), relative(1e-12));
}

TEST_CASE("light: what a beam is wide") {
  TW_CHECK(width, room::lit_width(metres(0.5), degrees(90.0)), metres(1.0), relative(1e-12));
  TW_CHECK(width, room::lit_width(metres(0.3), degrees(60.0)), metres(0.6 / std::sqrt(3.0)), relative(1e-12));
}

TEST_CASE("light: what cannot be is refused") {
  const auto refused = [](auto change) {
    room::lamp_over_water lamp{.height = metres(0.4), .depth = metres(0.7)};
    change(lamp);
    CHECK_THROWS_AS((void)room::light_at_depth(lamp), invalid_input);
  };
  refused([](auto& l) { l.height = metres(0.0); });
  refused([](auto& l) { l.depth = metres(-0.1); });
  refused([](auto& l) { l.depth = metres(std::nan("")); });
  refused([](auto& l) { l.through_a_metre = fraction(0.0); });
  refused([](auto& l) { l.through_a_metre = fraction(1.1); });
  refused([](auto& l) { l.index = water::refractive_index{0.9}; });
  CHECK_THROWS_AS((void)room::lit_width(metres(0.4), degrees(180.0)), invalid_input);
  CHECK_THROWS_AS((void)room::lit_width(metres(0.0), degrees(60.0)), invalid_input);
}
