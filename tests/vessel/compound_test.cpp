// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/compound.hpp>

#include <cmath>
#include <numbers>

#include <tankwright/core/units.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

constexpr double pi = std::numbers::pi;
const evidence beside{"tankwright::vessel::side_by_side", kind::identity, "sum of the parts"};
const evidence on_top{"tankwright::vessel::stacked", kind::identity, "sum of the parts"};
const evidence back{"tankwright::vessel::depth_of", kind::identity, "V(depth_of(V)) = V, compound shapes"};
const evidence order{"tankwright::vessel::depth_of", kind::property, "grows with the volume"};

vs::inside m(double x) { return vs::inside{metres(x)}; }
vs::shape box(double l, double w, double h) { return vs::box({.length = m(l), .width = m(w), .height = m(h)}); }

}  // namespace

TEST_CASE("compound: chambers side by side") {
  const auto sump =
      vs::side_by_side({{.what = box(1, 0.5, 0.5)}, {.what = box(0.4, 0.5, 0.4), .floor = metres(0.2)}}, "sump");
  CHECK(sump.label() == "sump");
  TW_CHECK(beside, sump.height(), metres(0.5), relative(1e-15));  // the lower rim
  TW_CHECK(beside, sump.capacity(), litres(250 + 60), relative(1e-15));
  TW_CHECK(beside, vs::filled_volume(sump, metres(0.2)), litres(100), relative(1e-15));
  TW_CHECK(beside, vs::filled_volume(sump, metres(0.3)), litres(150 + 20), relative(1e-15));
  TW_CHECK(beside, vs::plan_area(sump, metres(0.1)), square_metres(0.5), relative(1e-15));
  TW_CHECK(beside, vs::plan_area(sump, metres(0.3)), square_metres(0.7), relative(1e-15));
  TW_CHECK(beside, vs::wetted_area(sump, metres(0.3)), square_metres(0.5 + 3 * 0.3 + 0.2 + 1.8 * 0.1), relative(1e-15));
}

TEST_CASE("compound: stacked shapes wet only the ledge between them") {
  const auto tub = vs::stacked({vs::frustum({.bottom_diameter = m(0.2), .top_diameter = m(1), .height = m(0.3)}),
                                vs::upright_cylinder({.diameter = m(1), .height = m(0.5)})});
  TW_CHECK(on_top, tub.height(), metres(0.8), relative(1e-15));
  TW_CHECK(on_top, tub.capacity(), cubic_metres(pi * 0.3 / 3 * (0.01 + 0.05 + 0.25) + pi / 4 * 0.5), relative(1e-15));
  TW_CHECK(on_top, vs::plan_area(tub, metres(0.3)), square_metres(pi / 4), relative(1e-12));
  TW_CHECK(on_top, vs::wetted_area(tub, metres(0.8)), square_metres(pi * 0.01 + pi * 0.6 * 0.5 + pi * 0.5),
           relative(1e-12));
  const auto step = vs::stacked({box(0.5, 0.5, 0.2), box(1, 0.5, 0.3)});
  TW_CHECK(on_top, vs::wetted_area(step, metres(0.2)), square_metres(0.25 + 0.4), relative(1e-15));
  TW_CHECK(on_top, vs::wetted_area(step, metres(0.5)), square_metres(0.25 + 0.4 + 0.25 + 3 * 0.3), relative(1e-15));
  const auto bottle = vs::stacked({box(1, 0.5, 0.3), box(0.5, 0.5, 0.2)});
  TW_CHECK(on_top, vs::wetted_area(bottle, metres(0.5)), square_metres(0.5 + 3 * 0.3 + 0.25 + 2 * 0.2),
           relative(1e-15));
  TW_CHECK(on_top, vs::plan_area(bottle, metres(0.3)), square_metres(0.5), relative(1e-15));
  TW_CHECK(on_top, vs::plan_area(bottle, metres(0.31)), square_metres(0.25), relative(1e-15));
}

TEST_CASE("compound: the ledge is counted once, whatever stands on the joint") {
  // On a well of 0.6 m2 two chambers of 0.2 m2 that open onto it, and one of 0.15 m2 with a floor of its own above it. What
  // gets wet: floor and walls of the well, its ledge of 0.6 - 0.4, the walls of the chambers and the floor of the third.
  const auto chambers = vs::side_by_side(
      {{.what = box(0.4, 0.5, 0.4)}, {.what = box(0.4, 0.5, 0.4)}, {.what = box(0.3, 0.5, 0.3), .floor = metres(0.1)}});
  const auto both = vs::stacked({box(1.2, 0.5, 0.2), chambers});
  TW_CHECK(on_top, vs::wetted_area(both, metres(0.6)),
           square_metres(0.6 + 3.4 * 0.2 + 0.2 + 2 * 1.8 * 0.4 + 0.15 + 1.6 * 0.3), relative(1e-14));
  TW_CHECK(on_top, vs::wetted_area(both, metres(0.25)), square_metres(0.6 + 3.4 * 0.2 + 0.2 + 2 * 1.8 * 0.05),
           relative(1e-14));
  // A cone that widens from the joint on: the ledge is as wide as its floor leaves it, not as it is a little higher.
  const auto flask = vs::stacked({vs::upright_cylinder({.diameter = m(1), .height = m(0.5)}),
                                  vs::frustum({.bottom_diameter = m(0.6), .top_diameter = m(1), .height = m(0.3)})});
  TW_CHECK(on_top, vs::wetted_area(flask, metres(0.8)),
           square_metres(pi / 4 + pi * 0.5 + pi / 4 * (1 - 0.36) + pi * (0.3 + 0.5) * std::hypot(0.3, 0.2)),
           relative(1e-14));
  // An opening of 4 cm2 is one.
  TW_CHECK(on_top, vs::stacked({box(0.02, 0.02, 0.1), box(0.02, 0.02, 0.1)}).capacity(), cubic_metres(8e-5),
           relative(1e-14));
}

TEST_CASE("compound: depth from volume, compounds of compounds included") {
  const auto drum = vs::lying_cylinder({.diameter = m(0.6), .length = m(1), .head_depth = m(0.1)});
  const auto tub = vs::stacked({vs::frustum({.bottom_diameter = m(0.0), .top_diameter = m(1), .height = m(0.3)}),
                                vs::upright_cylinder({.diameter = m(1), .height = m(0.5)})});
  const auto both = vs::side_by_side(
      {{.what = tub}, {.what = drum, .floor = metres(0.1)}, {.what = box(1, 1, 2), .floor = metres(0.25)}});
  const auto tower = vs::stacked({both, box(0.3, 0.3, 1.0 / 3.0), box(0.1, 0.1, 0.1)});
  for (const auto& s : {tub, both, tower}) {
    length last = metres(-1);
    for (int i = 0; i <= 400; ++i) {
      const volume v = s.capacity() * (i / 400.0);
      const length depth = vs::depth_of(s, v);
      TW_CHECK(back, vs::filled_volume(s, depth), v, relative(1e-14));
      TW_HOLDS(order, depth > last);
      last = depth;
    }
    CHECK(vs::depth_of(s, s.capacity()) == s.height());
  }
}

TEST_CASE("compound: what does not make a vessel is refused") {
  CHECK_THROWS_WITH_AS((void)vs::side_by_side({}, "sump"),
                       "tankwright::vessel::side_by_side: sump: number of shapes = 0 makes no vessel", invalid_input);
  CHECK_THROWS_WITH_AS((void)vs::stacked({}, "tower"),
                       "tankwright::vessel::stacked: tower: number of shapes = 0 makes no vessel", invalid_input);
  CHECK_THROWS_WITH_AS(
      (void)vs::side_by_side({{.what = box(1, 1, 1), .floor = metres(0.1)}}, "sump"),
      "tankwright::vessel::side_by_side: sump: lowest floor = 0.1 m must be at 0, from where the depth is counted",
      invalid_input);
  CHECK_THROWS_WITH_AS(
      (void)vs::side_by_side({{.what = box(1, 1, 1)}, {.what = box(1, 1, 1), .floor = metres(1)}}, "sump"),
      "tankwright::vessel::side_by_side: sump: floor of 'box' = 1 m is not below the lowest rim, which is at 1 m",
      invalid_input);
  CHECK_THROWS_AS((void)vs::side_by_side({{.what = box(1, 1, 1)}, {.what = box(1, 1, 1), .floor = metres(-1)}}),
                  invalid_input);
  CHECK_THROWS_AS(
      (void)vs::side_by_side({{.what = box(1, 1, 1)}, {.what = box(1, 1, 1), .floor = metres(std::nan(""))}}),
      invalid_input);
  CHECK_THROWS_WITH_AS(
      (void)vs::stacked({vs::lying_cylinder({.diameter = m(1), .length = m(1)}), box(1, 1, 1)}, "tower"),
      "tankwright::vessel::stacked: tower: opening under 'box' = 0 m2 joins nothing: one of the two shapes is closed "
      "there",
      invalid_input);
}

TEST_CASE("compound: depth from volume where a cone stands on or beside a prism") {
  const auto tub = [](double height) {
    return vs::frustum({.bottom_diameter = m(0.4), .top_diameter = m(1), .height = m(height)});
  };
  const auto over = vs::stacked({vs::upright_cylinder({.diameter = m(0.4), .height = m(0.2)}), tub(0.5)});
  const auto next = vs::side_by_side({{.what = tub(0.5)}, {.what = box(0.5, 0.5, 0.6)}});
  for (const auto& s : {over, next}) {
    for (int i = 1; i < 40; ++i) {
      const volume v = s.capacity() * (i / 40.0);
      TW_CHECK(back, vs::filled_volume(s, vs::depth_of(s, v)), v, relative(1e-13));
    }
  }
}

TEST_CASE("compound: floors that differ by little, in vessels small and large") {
  // Two chambers of 1 m2 and 10 um high, the floor of one 10 nm higher: 5 um of water are 5e-6 + 4.99e-6 m3.
  const auto thin = vs::side_by_side({{.what = box(1, 1, 1e-5)}, {.what = box(1, 1, 1e-5), .floor = metres(1e-8)}});
  TW_CHECK(back, vs::depth_of(thin, cubic_metres(9.99e-6)), metres(5e-6), relative(1e-12));
  // At the very bottom only the lower floor is there, half a millimetre below the other one.
  const auto step = vs::side_by_side({{.what = box(1, 1, 1)}, {.what = box(2, 1, 1), .floor = metres(0.0005)}});
  TW_CHECK(beside, vs::plan_area(step, metres(0)), square_metres(1), relative(1e-15));
  // Heights whose sums round differently: 54.2 + 53.6 is a digit above 107.8. From there on a cone beside a box.
  REQUIRE(54.2 + 53.6 > 107.8);
  const auto tower = vs::side_by_side(
      {{.what = vs::stacked({box(1, 1, 54.2), box(1, 1, 53.6),
                             vs::frustum({.bottom_diameter = m(1), .top_diameter = m(3), .height = m(800)})})},
       {.what = vs::stacked({box(1, 1, 107.8), box(2, 1, 800)})}});
  const double radius = 0.5 + 392.2 / 800;  // of the cone 500 m up, 392.2 m above its floor
  const double content = 2 * 107.8 + pi * 392.2 / 3 * (0.25 + 0.5 * radius + radius * radius) + 2 * 392.2;
  TW_CHECK(back, vs::depth_of(tower, cubic_metres(content)), metres(500), relative(1e-12));
  // At a joint the surface is that just below, though 212.9 + 247.2 - 212.9 is a digit above 247.2.
  REQUIRE(212.9 + 247.2 - 212.9 > 247.2);
  const auto joint = vs::stacked({box(1, 1, 212.9), box(3, 1, 247.2), box(2, 1, 400)});
  TW_CHECK(on_top, vs::plan_area(joint, metres(212.9 + 247.2)), square_metres(3), relative(1e-15));
  // The rim is the lowest one to the last digit, not the top of its last part, which rounds to a digit less.
  REQUIRE(0.15 + 0.34 + 0.23 < 0.15 + (0.34 + 0.23));
  const auto sump = vs::side_by_side(
      {{.what = box(1, 1, 2)}, {.what = vs::stacked({box(1, 1, 0.34), box(2, 1, 0.23)}), .floor = metres(0.15)}});
  CHECK(sump.height() == metres(0.15 + (0.34 + 0.23)));
}

TEST_CASE("compound: depths of boxes to the last digit, of cones however little is in them") {
  const evidence exact{"tankwright::vessel::depth_of", kind::identity, "on 1 m2 the depth is the volume"};
  const auto tank = box(1, 1, 1);
  for (int i = 1; i < 300; ++i)
    TW_CHECK(exact, vs::depth_of(tank, cubic_metres(i / 300.0)), metres(i / 300.0), tolerance{});
  // A cone as wide as high under a cylinder: V = pi h^3 / 12.
  const evidence tip{"tankwright::vessel::depth_of", kind::identity, "cube root of 12 V / pi"};
  const auto hopper = vs::stacked({vs::frustum({.bottom_diameter = m(0), .top_diameter = m(1), .height = m(1)}),
                                   vs::upright_cylinder({.diameter = m(1), .height = m(0.5)})});
  for (const double v : {0.1, 1e-9, 1e-30, 1e-90}) {
    CAPTURE(v);
    TW_CHECK(tip, vs::depth_of(hopper, cubic_metres(v)), metres(std::cbrt(12 * v / pi)), relative(1e-14));
  }
}
