// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/polygon.hpp>

#include <numbers>
#include <random>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

const evidence outline{"tankwright::vessel::polygon_outline", kind::identity, "sum of the sides"};
const evidence middle{"tankwright::vessel::polygon_middle", kind::identity, "centres of the parts, weighed"};
const evidence inset{"tankwright::vessel::inside_corners", kind::identity,
                     "squares and regular polygons one into the other"};
const evidence moved{"tankwright::vessel::polygon_area", kind::property,
                     "does not change when moved, turned or walked round the other way"};

std::vector<vs::corner> corners(std::initializer_list<std::pair<double, double>> points) {
  std::vector<vs::corner> result;
  for (const auto& [x, y] : points) result.push_back({.x = metres(x), .y = metres(y)});
  return result;
}

std::vector<vs::corner> regular(int n, double radius) {
  std::vector<vs::corner> result;
  for (int i = 0; i < n; ++i) {
    const double a = 2.0 * std::numbers::pi * i / n;
    result.push_back({.x = metres(radius * std::cos(a)), .y = metres(radius * std::sin(a))});
  }
  return result;
}

const auto l_shape = corners({{0, 0}, {2, 0}, {2, 1}, {1, 1}, {1, 2}, {0, 2}});

std::string message(const std::vector<vs::corner>& plan) {
  try {
    (void)vs::polygon_area(plan);
  } catch (const invalid_input& e) {
    return e.what();
  }
  return "accepted";
}

}  // namespace

TEST_CASE("polygon: reference table") {
  check_rows(reference_rows("vessel/polygon.csv"), {{"tankwright::vessel::polygon_area", [](const reference_row&) {
                                                       return in_square_metres(vs::polygon_area(l_shape));
                                                     }}});
}

TEST_CASE("polygon: outline and middle of an L") {
  TW_CHECK(outline, vs::polygon_outline(l_shape), metres(8.0), relative(1e-15));
  // Two unit squares beside one: centres (0.5, 0.5), (1.5, 0.5), (0.5, 1.5).
  const auto c = vs::polygon_middle(l_shape);
  TW_CHECK(middle, c.x.get(), metres(2.5 / 3.0), relative(1e-15));
  TW_CHECK(middle, c.y.get(), metres(2.5 / 3.0), relative(1e-15));
}

TEST_CASE("polygon: area and middle move with the plan") {
  std::mt19937 random{20260801};
  std::uniform_real_distribution<double> anything(-100.0, 100.0), turn(0.0, 6.28);
  for (int i = 0; i < 100; ++i) {
    const double dx = anything(random), dy = anything(random), a = turn(random);
    std::vector<vs::corner> plan;
    const auto place = [&](double x, double y) {
      return vs::corner{.x = metres(dx + std::cos(a) * x - std::sin(a) * y),
                        .y = metres(dy + std::sin(a) * x + std::cos(a) * y)};
    };
    for (const auto& c : l_shape) plan.push_back(place(c.x->value(), c.y->value()));
    TW_CHECK(moved, vs::polygon_area(plan), square_metres(3.0), relative(1e-12));
    const auto c = vs::polygon_middle(plan), expected = place(2.5 / 3.0, 2.5 / 3.0);
    TW_CHECK(middle, c.x.get(), expected.x.get(), within(metres(1e-12)));
    TW_CHECK(middle, c.y.get(), expected.y.get(), within(metres(1e-12)));
    std::vector<vs::corner> back(plan.rbegin(), plan.rend());
    TW_CHECK(moved, vs::polygon_area(back), vs::polygon_area(plan), relative(1e-12));
  }
}

TEST_CASE("polygon: the inside of panels") {
  const auto square = corners({{0, 0}, {1, 0}, {1, 1}, {0, 1}});
  TW_CHECK(inset, vs::polygon_area(vs::inside_corners(square, metres(0.1))), square_metres(0.64), relative(1e-14));
  const std::vector<vs::corner> back(square.rbegin(), square.rend());
  TW_CHECK(inset, vs::polygon_area(vs::inside_corners(back, metres(0.1))), square_metres(0.64), relative(1e-14));
  // An L loses a strip along its outline, less a square at five corners, plus one at the re-entrant corner: 3 - 8 t +
  // 4 t^2.
  TW_CHECK(inset, vs::polygon_area(vs::inside_corners(l_shape, metres(0.1))), square_metres(3.0 - 0.8 + 0.04),
           relative(1e-14));
  for (const int n : {3, 5, 6, 8, 60}) {  // the inner one is similar: the distance to a side shrinks by t
    const double apothem = std::cos(std::numbers::pi / n);
    const double scale = (apothem - 0.05) / apothem;
    TW_CHECK(inset, vs::polygon_area(vs::inside_corners(regular(n, 1.0), metres(0.05))),
             vs::polygon_area(regular(n, 1.0)) * scale * scale, relative(1e-13));
  }
  // A corner in the middle of a straight side stays on the moved side.
  const auto extra = vs::inside_corners(corners({{0, 0}, {0.5, 0}, {1, 0}, {1, 1}, {0, 1}}), metres(0.1));
  TW_CHECK(inset, extra[1].x.get(), metres(0.5), relative(1e-15));
  TW_CHECK(inset, extra[1].y.get(), metres(0.1), relative(1e-15));
  CHECK_THROWS_AS((void)vs::inside_corners(square, metres(0.5)), invalid_input);
  CHECK_THROWS_AS((void)vs::inside_corners(square, metres(0.6)), invalid_input);
  CHECK_THROWS_AS((void)vs::inside_corners(square, metres(-0.1)), invalid_input);
  // Two rooms with a passage of 0.1 m between: no side turns round, but the walls of the passage change places.
  const auto rooms = corners(
      {{0, 0}, {1, 0}, {1, 0.45}, {2, 0.45}, {2, 0}, {3, 0}, {3, 1}, {2, 1}, {2, 0.55}, {1, 0.55}, {1, 1}, {0, 1}});
  CHECK(vs::inside_corners(rooms, metres(0.04)).size() == 12);
  CHECK_THROWS_WITH_AS((void)vs::inside_corners(rooms, metres(0.06)),
                       "tankwright::vessel::inside_corners: thickness = 0.06 m leaves no inside in this polygon",
                       invalid_input);
  CHECK_THROWS_AS((void)vs::inside_corners(square, metres(std::nan(""))), invalid_input);
}

TEST_CASE("polygon: what is not a simple polygon is refused, by its corners") {
  const std::string start = "tankwright::vessel::polygon_area: polygon: ";
  CHECK(message(corners({{0, 0}, {1, 1}})) == start + "number of corners = 2 does not enclose an area");
  CHECK(message(corners({{0, 0}, {1, 1}, {1, 0}, {0, 1}})) ==
        start + "corners = 4 form a polygon that crosses itself: side 1-2 meets side 3-4");
  CHECK(message(corners({{0, 0}, {1, 0}, {1, 0}, {0, 1}})) ==
        start + "corner 2 = 1 m (its x) is the same as the next corner");
  for (const double size : {1.0, 1e-3}) {
    CHECK(message(corners({{0, 0}, {size, 0}, {2 * size, 0}})) ==
          start + "corner 3 = " + core::number_text(2 * size) + " m (its x) is the tip of a fold without area");
  }
  CHECK(message(corners({{0, 0}, {2, 0}, {2, 2}, {1, 0}, {0, 2}})).find("meets side") != std::string::npos);  // touches
  CHECK(vs::detail::meet({0, 0}, {1, 0}, {1, 0}, {2, 0}));          // on one line, end to end
  CHECK_FALSE(vs::detail::meet({0, 0}, {1, 0}, {1.1, 0}, {2, 0}));  // on one line, apart
  CHECK_FALSE(vs::detail::meet({0, 0}, {1, 0}, {2, -1}, {2, 1}));   // one beside the other's line
  CHECK(message(corners({{0, 0}, {std::nan(""), 0}, {0, 1}})) ==
        start + "corner 2 = nan m is not possible; expected a finite number");
  CHECK(message(corners({{std::nan(""), 0}, {1, 0}, {0, 1}})).starts_with(start + "corner 1 = nan m"));
  CHECK(message(corners({{1, 0}, {1, 0}, {0, 1}})).starts_with(start + "corner 1 = 1 m (its x) is the same"));
  CHECK(message(l_shape) == "accepted");
  CHECK_THROWS_AS((void)vs::polygon_outline(corners({{0, 0}, {1, 1}})), invalid_input);
  CHECK_THROWS_AS((void)vs::polygon_middle(corners({{0, 0}, {1, 1}})), invalid_input);
}

TEST_CASE("polygon: two segments meet or not, on either side, in any order, large or small") {
  using vs::detail::meet;
  for (const double size : {1.0, 1e-3}) {
    const auto at = [size](double x, double y) { return vs::detail::point{size * x, size * y}; };
    const auto a = at(0, 0), b = at(1, 0);
    for (const double side : {-1.0, 1.0}) {
      CAPTURE(size);
      CAPTURE(side);
      // One stands over the middle of the other and does not come down to it.
      const auto foot = at(0.5, 0.1 * side), tip = at(0.5, side);
      CHECK_FALSE(meet(a, b, foot, tip));
      CHECK_FALSE(meet(a, b, tip, foot));
      CHECK_FALSE(meet(foot, tip, a, b));
      CHECK_FALSE(meet(tip, foot, a, b));
      CHECK(meet(a, b, at(0.5, 0), tip));            // comes down to it
      CHECK(meet(a, b, at(0.5, -0.1 * side), tip));  // and through it
    }
    // On one line: overlapping, one within the other, end to end, apart.
    CHECK(meet(a, b, at(0.5, 0), at(2, 0)));
    CHECK(meet(a, b, at(2, 0), at(0.5, 0)));
    CHECK(meet(a, b, at(0.4, 0), at(0.6, 0)));
    CHECK(meet(at(0.4, 0), at(0.6, 0), a, b));
    CHECK(meet(a, b, b, at(2, 0)));
    CHECK_FALSE(meet(a, b, at(1.1, 0), at(2, 0)));
    CHECK_FALSE(meet(at(1.1, 0), at(2, 0), a, b));
  }
}

TEST_CASE("polygon: the inside of a plan of a centimetre, and of one whose shortest side is eaten up") {
  const auto small = corners({{0, 0}, {0.01, 0}, {0.01, 0.01}, {0, 0.01}});
  TW_CHECK(inset, vs::polygon_area(vs::inside_corners(small, metres(0.001))), square_metres(0.64e-4), relative(1e-13));
  const std::vector<vs::corner> back(small.rbegin(), small.rend());
  TW_CHECK(inset, vs::polygon_area(vs::inside_corners(back, metres(0.001))), square_metres(0.64e-4), relative(1e-13));
  // The first side, of 0.1, runs from a right angle to a corner that bends outwards by 45 degrees: it loses t at one
  // end and gains t tan(22.5 deg) at the other, so it is gone at t = 0.1/(1 - 0.4142) = 0.1707. Its neighbours do not
  // cross then.
  for (const double size : {1.0, 0.1}) {
    CAPTURE(size);
    const auto plan = corners({{0, 0}, {0.1 * size, 0}, {1.1 * size, -size}, {1.1 * size, 2 * size}, {0, 2 * size}});
    CHECK(vs::inside_corners(plan, metres(0.17 * size)).size() == 5);
    CHECK_THROWS_WITH_AS((void)vs::inside_corners(plan, metres(0.2 * size)),
                         doctest::Contains("leaves no inside in this polygon"), invalid_input);
  }
  CHECK_THROWS_WITH_AS(
      (void)vs::inside_corners(corners({{0, 0}, {1, 1}, {1, 0}, {0, 1}}), metres(0.1)),
      "tankwright::vessel::inside_corners: polygon: corners = 4 form a polygon that crosses itself: side "
      "1-2 meets side 3-4",
      invalid_input);
}
