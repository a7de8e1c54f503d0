// SPDX-License-Identifier: BSL-1.0
// Shapes filled in part, and drums whose heads are nearly, or more than, half a sphere: closed forms.
#include <cmath>
#include <numbers>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/shape.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

constexpr double pi = std::numbers::pi;
vs::inside m(double x) { return vs::inside{metres(x)}; }
vs::shape drum(double diameter, double length, double head) {
  return vs::lying_cylinder({.diameter = m(diameter), .length = m(length), .head_depth = m(head)});
}

}  // namespace

TEST_CASE("shape partly: wall and surface of a tub at half its height") {
  const evidence cone{"tankwright::vessel::wetted_area", kind::identity, "pi (r1 + r2) times the slant height"};
  const auto tub = vs::frustum({.bottom_diameter = m(0.2), .top_diameter = m(1), .height = m(0.3)});
  // Radius 0.1 at the floor, 0.3 half-way up.
  TW_CHECK(cone, vs::wetted_area(tub, metres(0.15)), square_metres(pi * 0.01 + pi * 0.4 * std::hypot(0.15, 0.2)),
           relative(1e-14));
  TW_CHECK((evidence{"tankwright::vessel::plan_area", kind::identity, "pi r2"}), vs::plan_area(tub, metres(0.15)),
           square_metres(pi * 0.09), relative(1e-14));
}

TEST_CASE("shape partly: the surface in a drum is as long as the drum") {
  const evidence chord{"tankwright::vessel::plan_area", kind::identity,
                       "chord times length, and an ellipse for the heads"};
  TW_CHECK(chord, vs::plan_area(drum(2, 3, 0), metres(1)), square_metres(6), relative(1e-14));
  TW_CHECK(chord, vs::plan_area(drum(2, 3, 0.5), metres(0.4)), square_metres(2 * 0.8 * 3 + pi * 0.8 * 0.8 * 0.5),
           relative(1e-14));  // half chord 0.8
}

TEST_CASE("shape partly: heads that make a spheroid") {
  const evidence area{"tankwright::vessel::wetted_area", kind::identity, "area of a spheroid"};
  // A long one: 2 pi r^2 (1 + a/(r e) asin e), e^2 = 1 - r^2/a^2.
  const double r = 0.3, a = 0.5, e = std::sqrt(1 - r * r / (a * a));
  TW_CHECK(area, vs::wetted_area(drum(2 * r, 0.7, a), metres(2 * r)),
           square_metres(2 * pi * r * 0.7 + 2 * pi * r * r * (1 + a / (r * e) * std::asin(e))), relative(1e-13));
  // A flat one: 2 pi r^2 (1 + (1 - e^2)/e atanh e), e^2 = 1 - a^2/r^2.
  const double flat = 0.2, f = std::sqrt(1 - flat * flat / (r * r));
  TW_CHECK(area, vs::wetted_area(drum(2 * r, 0.7, flat), metres(2 * r)),
           square_metres(2 * pi * r * 0.7 + 2 * pi * r * r * (1 + (1 - f * f) / f * std::atanh(f))), relative(1e-13));
  // Almost a sphere, a = 1 + x: the surface moves outwards by x cos^2, on the average x/3, so the area is
  // 4 pi (1 + 2 x/3), to x^2.
  for (const double x : {-4e-9, 4e-9, 0.0}) {
    for (const double radius : {1.0, 0.3}) {
      CAPTURE(x);
      CAPTURE(radius);
      TW_CHECK(area, vs::wetted_area(drum(2 * radius, 1, radius * (1 + x)), metres(2 * radius)),
               square_metres(2 * pi * radius + 4 * pi * radius * radius * (1 + 2 * x / 3)), relative(1e-12));
    }
  }
}
