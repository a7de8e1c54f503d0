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
