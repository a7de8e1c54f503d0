// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/shape.hpp>

#include <functional>
#include <numbers>
#include <random>

#include <tankwright/core/units.hpp>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

constexpr double pi = std::numbers::pi;

vs::inside in_metres_inside(double x) { return vs::inside{metres(x)}; }
const auto m = in_metres_inside;

std::vector<vs::corner> l_plan() {
  std::vector<vs::corner> plan;
  for (const auto& [x, y] : {std::pair{0.0, 0.0}, {2.0, 0.0}, {2.0, 1.0}, {1.0, 1.0}, {1.0, 2.0}, {0.0, 2.0}}) {
    plan.push_back({.x = metres(x), .y = metres(y)});
  }
  return plan;
}

/// A shape with a way of its own to say whether a point (x, y, height) is in it, and the box around it.
struct tried {
  std::string maker;
  vs::shape shape;
  std::function<bool(double, double, double)> holds;
  double x, y;  // the box runs from -x to x and -y to y
};

std::vector<tried> all_shapes() {
  const auto arc = [](double x, double y) {  // a bow of 0.15 on a front of 1.2 at y = -0.3, depth at the ends 0.5
    const double radius = 1.2 * 1.2 / (8 * 0.15) + 0.075, centre = -0.3 - 0.15 + radius;
    return std::fabs(x) <= 0.6 && y <= 0.2 && (y >= -0.3 || x * x + (y - centre) * (y - centre) <= radius * radius);
  };
  const auto hexagon = [](double x, double y) {
    for (int i = 0; i < 6; ++i) {
      const double a = pi / 3 * i;
      if (x * std::cos(a) + y * std::sin(a) > 0.5 * std::sqrt(3.0) * 0.4) return false;
    }
    return true;
  };
  std::vector<tried> all;
  all.push_back({"box", vs::box({.length = m(1.2), .width = m(0.5), .height = m(0.6)}),
                 [](double x, double y, double) { return std::fabs(x) <= 0.6 && std::fabs(y) <= 0.25; }, 0.6, 0.5});
  all.push_back({"upright_cylinder", vs::upright_cylinder({.diameter = m(0.9), .height = m(0.7)}),
                 [](double x, double y, double) { return x * x + y * y <= 0.2025; }, 0.5, 0.5});
  all.push_back(
      {"lying_cylinder", vs::lying_cylinder({.diameter = m(0.8), .length = m(1.0)}),
       [](double x, double y, double z) { return std::fabs(x) <= 0.5 && y * y + (z - 0.4) * (z - 0.4) <= 0.16; }, 0.5,
       0.4});
  for (const double head : {0.1, 0.4, 0.9}) {
    all.push_back({"lying_cylinder", vs::lying_cylinder({.diameter = m(0.8), .length = m(1.0), .head_depth = m(head)}),
                   [head](double x, double y, double z) {
                     const double beyond = std::fmax(std::fabs(x) - 0.5, 0.0) / head;
                     return beyond * beyond + (y * y + (z - 0.4) * (z - 0.4)) / 0.16 <= 1.0;
                   },
                   0.5 + head, 0.4});
  }
  all.push_back({"prism", vs::prism({.inside_corners = l_plan(), .height = m(0.5)}),
                 [](double x, double y, double) { return x >= 0 && y >= 0 && x <= 2 && y <= 2 && (x <= 1 || y <= 1); },
                 2, 2});
  all.push_back({"regular_prism", vs::regular_prism({.sides = 6, .side = m(0.4), .height = m(0.6)}),
                 [hexagon](double x, double y, double) { return hexagon(x, y); }, 0.4, 0.4});
  all.push_back({"bow_front",
                 vs::bow_front({.width = m(1.2), .depth_at_ends = m(0.5), .bow = m(0.15), .height = m(0.6)}),
                 [arc](double x, double y, double) { return arc(x, y); }, 0.6, 0.5});
  all.push_back({"frustum", vs::frustum({.bottom_diameter = m(0.4), .top_diameter = m(1.0), .height = m(0.6)}),
                 [](double x, double y, double z) { return std::hypot(x, y) <= 0.2 + 0.5 * z; }, 0.5, 0.5});
  all.push_back({"frustum", vs::frustum({.bottom_diameter = m(1.0), .top_diameter = m(0.0), .height = m(0.6)}),
                 [](double x, double y, double z) { return std::hypot(x, y) <= 0.5 * (1 - z / 0.6); }, 0.5, 0.5});
  return all;
}

}  // namespace

TEST_CASE("shape: reference table") {
  const auto inches_inside = [](double x) { return vs::inside{inches(x)}; };
  check_rows(
      reference_rows("vessel/shape.csv"),
      {{"tankwright::vessel::lying_cylinder",
        [&](const reference_row& row) {
          if (row.text("give") == "fraction") {
            const auto drum = vs::lying_cylinder({.diameter = m(1.0), .length = m(1.0)});
            return vs::filled_volume(drum, metres(row["H_over_D"])).value() / drum.capacity().value();
          }
          const auto drum = vs::lying_cylinder({.diameter = inches_inside(row["D"]),
                                                .length = inches_inside(row["L"]),
                                                .head_depth = inches_inside(row["a"])});
          return in_us_gallons(vs::filled_volume(drum, inches(row["h"])));
        }},
       {"tankwright::vessel::box",
        [&](const reference_row& row) {
          return in_us_gallons(vs::box({.length = inches_inside(row["L"]),
                                        .width = inches_inside(row["W"]),
                                        .height = inches_inside(row["H"])})
                                   .capacity());
        }},
       {"tankwright::vessel::regular_prism",
        [&](const reference_row& row) {
          const auto tank =
              vs::regular_prism({.sides = static_cast<int>(row["n"]), .side = m(row["s"]), .height = m(1.0)});
          return in_square_metres(vs::plan_area(tank, metres(0.5)));
        }},
       {"tankwright::vessel::bow_front",
        [&](const reference_row& row) {
          const auto tank =
              vs::bow_front({.width = m(row["c"]), .depth_at_ends = m(0.4), .bow = m(row["s"]), .height = m(1.0)});
          return tank.capacity().value() - row["c"] * 0.4;
        }},
       {"tankwright::vessel::frustum",
        [&](const reference_row& row) {
          return vs::frustum(
                     {.bottom_diameter = m(2 * row["R"]), .top_diameter = m(2 * row["r"]), .height = m(row["h"])})
              .capacity()
              .value();
        }},
       {"tankwright::vessel::upright_cylinder", [&](const reference_row& row) {
          return vs::upright_cylinder({.diameter = m(row["D"]), .height = m(row["H"])}).capacity().value();
        }}});
}

TEST_CASE("shape: volumes against points thrown at random") {
  std::mt19937_64 random{20260801};
  constexpr int shots = 200'000;
  for (const auto& t : all_shapes()) {
    const evidence thrown{"tankwright::vessel::" + t.maker, kind::identity,
                          "Monte Carlo integration, 200 000 points, 4 sigma"};
    const evidence filled{"tankwright::vessel::filled_volume", kind::identity,
                          "Monte Carlo integration, 200 000 points, 4 sigma"};
    const double height = t.shape.height().value();
    std::uniform_real_distribution<double> x(-t.x, t.x), y(-t.y, t.y), z(0.0, height);
    int all = 0, below = 0;
    const double level = 0.37 * height;
    for (int i = 0; i < shots; ++i) {
      const double height_of_shot = z(random);
      if (!t.holds(x(random), y(random), height_of_shot)) continue;
      ++all;
      below += height_of_shot <= level;
    }
    const double around = 4 * t.x * t.y * height;
    const auto check = [&](const evidence& about, int hits, volume expected) {
      const double part = static_cast<double>(hits) / shots;
      const double sigma = around * std::sqrt(part * (1 - part) / shots);
      CAPTURE(t.maker);
      TW_CHECK(about, expected, cubic_metres(around * part), within(cubic_metres(4 * sigma)));
    };
    check(thrown, all, t.shape.capacity());
    check(filled, below, vs::filled_volume(t.shape, metres(level)));
  }
}

TEST_CASE("shape: the surface is how fast the volume grows, the depth is the inverse of the volume") {
  const evidence grows{"tankwright::vessel::plan_area", kind::identity, "dV/dh by central differences"};
  const evidence back{"tankwright::vessel::depth_of", kind::identity, "V(depth_of(V)) = V"};
  for (const auto& t : all_shapes()) {
    CAPTURE(t.maker);
    const double height = t.shape.height().value();
    for (const double part : {0.02, 0.1, 0.33, 0.5, 0.77, 0.98}) {
      const length h = metres(part * height), step = metres(1e-5 * height);
      const area slope = (vs::filled_volume(t.shape, h + step) - vs::filled_volume(t.shape, h - step)) / (step + step);
      TW_CHECK(grows, vs::plan_area(t.shape, h), slope, relative(2e-6));
    }
    for (int i = 0; i <= 50; ++i) {
      const volume v = t.shape.capacity() * (i / 50.0);
      TW_CHECK(back, vs::filled_volume(t.shape, vs::depth_of(t.shape, v)), v, relative(4e-15));
    }
    CHECK(vs::depth_of(t.shape, t.shape.capacity()) == t.shape.height());
    CHECK(vs::depth_of(t.shape, litres(0)) == metres(0));
    CHECK(vs::filled_volume(t.shape, t.shape.height()) == t.shape.capacity());
    CHECK(vs::wetted_area(t.shape, metres(0)) == square_metres(0));
  }
}

TEST_CASE("shape: wetted areas by hand and by cutting the surface into pieces") {
  const evidence by_hand{"tankwright::vessel::wetted_area", kind::identity, "floor and walls added by hand"};
  const evidence in_pieces{"tankwright::vessel::wetted_area", kind::identity,
                           "surface of the heads cut into 10^6 pieces"};
  TW_CHECK(by_hand, vs::wetted_area(vs::box({.length = m(2), .width = m(1), .height = m(1)}), metres(0.5)),
           square_metres(2 + 3), relative(1e-15));
  TW_CHECK(by_hand, vs::wetted_area(vs::upright_cylinder({.diameter = m(1), .height = m(1)}), metres(0.5)),
           square_metres(pi / 4 + pi / 2), relative(1e-15));
  TW_CHECK(by_hand, vs::wetted_area(vs::lying_cylinder({.diameter = m(1), .length = m(2)}), metres(0.5)),
           square_metres(pi + pi / 4), relative(1e-15));
  TW_CHECK(by_hand, vs::wetted_area(vs::lying_cylinder({.diameter = m(1), .length = m(2)}), metres(1)),
           square_metres(2 * pi + pi / 2), relative(1e-15));
  TW_CHECK(by_hand, vs::wetted_area(vs::prism({.inside_corners = l_plan(), .height = m(1)}), metres(0.5)),
           square_metres(3 + 4), relative(1e-15));
  TW_CHECK(by_hand, vs::wetted_area(vs::regular_prism({.sides = 6, .side = m(1), .height = m(1)}), metres(0.5)),
           square_metres(1.5 * std::sqrt(3.0) + 3), relative(1e-15));
  // A half circle in front: arc pi/2, chord 1.
  TW_CHECK(
      by_hand,
      vs::wetted_area(vs::bow_front({.width = m(1), .depth_at_ends = m(1), .bow = m(0.5), .height = m(1)}), metres(1)),
      square_metres(1 + pi / 8 + 3 + pi / 2), relative(1e-15));
  TW_CHECK(
      by_hand,
      vs::wetted_area(vs::bow_front({.width = m(1), .depth_at_ends = m(1), .bow = m(0), .height = m(1)}), metres(1)),
      square_metres(5), relative(1e-15));
  TW_CHECK(by_hand,
           vs::wetted_area(vs::frustum({.bottom_diameter = m(0), .top_diameter = m(6), .height = m(4)}), metres(4)),
           square_metres(pi * 3 * 5), relative(1e-15));
  // Heads that are half spheres make a sphere.
  const auto capsule = vs::lying_cylinder({.diameter = m(1), .length = m(1), .head_depth = m(0.5)});
  for (const double h : {0.01, 0.3, 0.5, 0.9999, 1.0}) {
    const double phi = 2 * std::acos(1 - 2 * h);
    TW_CHECK(by_hand, vs::wetted_area(capsule, metres(h)), square_metres(pi * h + 0.5 * phi), relative(1e-12));
  }
  for (const double head : {0.2, 0.5000001, 1.3}) {
    const auto tank = vs::lying_cylinder({.diameter = m(1), .length = m(1), .head_depth = m(head)});
    for (const double h : {0.1, 0.499, 0.5, 0.501, 0.8, 1.0}) {
      double sum = 0;
      constexpr int n = 2000;
      for (int i = 0; i < n; ++i) {  // rings of the heads, t from pole to pole: x = a cos t, radius R sin t
        const double t = pi * (i + 0.5) / n, radius = 0.5 * std::sin(t);
        const double along = std::hypot(head * std::sin(t), 0.5 * std::cos(t)) * pi / n;
        const double cosine = (0.5 - h) / radius;
        const double wet = cosine >= 1 ? 0.0 : cosine <= -1 ? 2 * pi : 2 * std::acos(cosine);
        sum += wet * radius * along;
      }
      const double shell = std::acos(1 - 2 * h);
      TW_CHECK(in_pieces, vs::wetted_area(tank, metres(h)), square_metres(shell + sum), relative(1e-4));
    }
  }
}

TEST_CASE("shape: kernels against long double") {
  const evidence rounding{"tankwright::vessel::lying_cylinder", kind::identity, "the same formula in long double"};
  for (const double h : {1e-9, 1e-4, 0.01, 0.2, 0.5, 0.9, 1.0}) {
    const double expected =
        static_cast<double>(vs::detail::segment_area<long double>(0.5L, static_cast<long double>(h)));
    TW_CHECK(rounding, vs::detail::segment_area(0.5, h), expected, relative(2e-15));
  }
  TW_CHECK(rounding, vs::detail::x_minus_sin(1e-5), 1e-15 / 6, relative(1e-11));
}

TEST_CASE("shape: impossible shapes are refused by name") {
  const double nan = std::nan("");
  for (const double bad : {0.0, -1.0, nan, HUGE_VAL}) {
    CHECK_THROWS_AS((void)vs::box({.length = m(bad), .width = m(1), .height = m(1)}), invalid_input);
    CHECK_THROWS_AS((void)vs::box({.length = m(1), .width = m(bad), .height = m(1)}), invalid_input);
    CHECK_THROWS_AS((void)vs::box({.length = m(1), .width = m(1), .height = m(bad)}), invalid_input);
    CHECK_THROWS_AS((void)vs::upright_cylinder({.diameter = m(bad), .height = m(1)}), invalid_input);
    CHECK_THROWS_AS((void)vs::upright_cylinder({.diameter = m(1), .height = m(bad)}), invalid_input);
    CHECK_THROWS_AS((void)vs::lying_cylinder({.diameter = m(bad), .length = m(1)}), invalid_input);
    CHECK_THROWS_AS((void)vs::lying_cylinder({.diameter = m(1), .length = m(bad)}), invalid_input);
    CHECK_THROWS_AS((void)vs::prism({.inside_corners = l_plan(), .height = m(bad)}), invalid_input);
    CHECK_THROWS_AS((void)vs::regular_prism({.sides = 6, .side = m(bad), .height = m(1)}), invalid_input);
    CHECK_THROWS_AS((void)vs::regular_prism({.sides = 6, .side = m(1), .height = m(bad)}), invalid_input);
    CHECK_THROWS_AS((void)vs::bow_front({.width = m(bad), .depth_at_ends = m(1), .bow = m(0.1), .height = m(1)}),
                    invalid_input);
    CHECK_THROWS_AS((void)vs::bow_front({.width = m(1), .depth_at_ends = m(bad), .bow = m(0.1), .height = m(1)}),
                    invalid_input);
    CHECK_THROWS_AS((void)vs::bow_front({.width = m(1), .depth_at_ends = m(1), .bow = m(0.1), .height = m(bad)}),
                    invalid_input);
    CHECK_THROWS_AS((void)vs::frustum({.bottom_diameter = m(1), .top_diameter = m(1), .height = m(bad)}),
                    invalid_input);
  }
  for (const double bad : {-1.0, nan, HUGE_VAL}) {
    CHECK_THROWS_AS((void)vs::lying_cylinder({.diameter = m(1), .length = m(1), .head_depth = m(bad)}), invalid_input);
    CHECK_THROWS_AS((void)vs::bow_front({.width = m(1), .depth_at_ends = m(1), .bow = m(bad), .height = m(1)}),
                    invalid_input);
    CHECK_THROWS_AS((void)vs::frustum({.bottom_diameter = m(bad), .top_diameter = m(1), .height = m(1)}),
                    invalid_input);
    CHECK_THROWS_AS((void)vs::frustum({.bottom_diameter = m(1), .top_diameter = m(bad), .height = m(1)}),
                    invalid_input);
  }
  CHECK_THROWS_AS((void)vs::frustum({.bottom_diameter = m(0), .top_diameter = m(0), .height = m(1)}), invalid_input);
  CHECK_THROWS_AS((void)vs::regular_prism({.sides = 2, .side = m(1), .height = m(1)}), invalid_input);
  CHECK_THROWS_WITH_AS((void)vs::box({.length = m(0), .width = m(1), .height = m(1), .label = "sump"}),
                       "tankwright::vessel::box: sump: length = 0 m is not possible; expected 1e-06 to 1000 m",
                       invalid_input);
  CHECK_THROWS_WITH_AS((void)vs::bow_front({.width = m(1.2), .depth_at_ends = m(0.5), .bow = m(0.8), .height = m(1)}),
                       "tankwright::vessel::bow_front: bow front: bow = 0.8 m is deeper than the radius of its arc, "
                       "0.625 m; the deepest "
                       "bow of a front that wide is 0.6 m",
                       invalid_input);
  const std::vector<vs::corner> crossing{
      {metres(0), metres(0)}, {metres(1), metres(1)}, {metres(1), metres(0)}, {metres(0), metres(1)}};
  CHECK_THROWS_WITH_AS(
      (void)vs::prism({.inside_corners = crossing, .height = m(1), .label = "corner tank"}),
      "tankwright::vessel::prism: corner tank: corners = 4 form a polygon that crosses itself: side 1-2 "
      "meets side 3-4",
      invalid_input);
}

TEST_CASE("shape: water above the rim is refused") {
  const auto tank = vs::box({.length = m(1), .width = m(1), .height = m(0.5), .label = "display"});
  CHECK_THROWS_WITH_AS((void)vs::filled_volume(tank, metres(0.6)),
                       "tankwright::vessel::filled_volume: display: depth = 0.6 m is above the rim, which is at 0.5 m",
                       invalid_input);
  CHECK_THROWS_WITH_AS(
      (void)vs::depth_of(tank, litres(600)),
      "tankwright::vessel::depth_of: display: volume = 0.6 m3 does not fit: to the rim the vessel holds "
      "0.5 m3",
      invalid_input);
  for (const double bad : {-0.1, std::nan(""), -HUGE_VAL, HUGE_VAL, 0.51}) {
    CHECK_THROWS_AS((void)vs::filled_volume(tank, metres(bad)), invalid_input);
    CHECK_THROWS_AS((void)vs::plan_area(tank, metres(bad)), invalid_input);
    CHECK_THROWS_AS((void)vs::wetted_area(tank, metres(bad)), invalid_input);
    CHECK_THROWS_AS((void)vs::depth_of(tank, cubic_metres(bad)), invalid_input);
  }
}

TEST_CASE("shape: walls and fronts whose sizes are not one") {
  const evidence by_hand{"tankwright::vessel::wetted_area", kind::identity, "floor and walls added by hand"};
  TW_CHECK(by_hand, vs::wetted_area(vs::upright_cylinder({.diameter = m(0.5), .height = m(1)}), metres(0.4)),
           square_metres(pi / 16 + pi * 0.5 * 0.4), relative(1e-14));
  TW_CHECK(by_hand, vs::wetted_area(vs::regular_prism({.sides = 6, .side = m(0.4), .height = m(1)}), metres(0.3)),
           square_metres(1.5 * std::sqrt(3.0) * 0.16 + 2.4 * 0.3), relative(1e-14));
  const auto bow = [](double c, double d, double s, double h) {
    return vs::bow_front({.width = m(c), .depth_at_ends = m(d), .bow = m(s), .height = m(h)});
  };
  // A half circle of radius 0.3 in front of 0.6 by 0.25.
  TW_CHECK(by_hand, vs::wetted_area(bow(0.6, 0.25, 0.3, 1), metres(0.5)),
           square_metres(0.15 + pi * 0.045 + (0.6 + 0.5 + pi * 0.3) * 0.5), relative(1e-14));
  TW_CHECK(by_hand, vs::wetted_area(bow(2, 0.25, 0, 1), metres(0.5)), square_metres(0.5 + 4.5 * 0.5), relative(1e-14));
  // The same front a hundred thousand times smaller: no bow is too small to count.
  const evidence scaled{"tankwright::vessel::bow_front", kind::property, "areas go with the square of the size"};
  TW_CHECK(scaled, vs::plan_area(bow(1.2e-5, 0.5e-5, 0.3e-5, 1), metres(0.5)),
           vs::plan_area(bow(1.2, 0.5, 0.3, 1), metres(0.5)) * 1e-10, relative(1e-13));
  // A bow of half a nanometre is a segment of two thirds of its chord times its height.
  const evidence shallow{"tankwright::vessel::bow_front", kind::identity, "area of a flat segment, 2/3 c s"};
  TW_CHECK(shallow, vs::plan_area(bow(1, 0.5, 5e-10, 1), metres(0.5)), square_metres(0.5 + 5e-10 * 2 / 3),
           relative(1e-15));
  for (const double s : {1e-15, 1e-29, 1e-31, 1e-300}) {
    TW_CHECK(shallow, vs::plan_area(bow(1000, 0.5, s, 1), metres(0.5)), square_metres(500 + 1000 * s * 2 / 3),
             relative(1e-15));
    TW_CHECK(by_hand, vs::wetted_area(bow(2, 0.25, s, 1), metres(0.5)), square_metres(0.5 + 4.5 * 0.5),
             relative(1e-14));
  }
  // The deepest bow is a half circle.
  CHECK_NOTHROW((void)bow(0.5, 0.3, 0.25, 1));
  CHECK_THROWS_WITH_AS((void)bow(0.5, 0.3, 0.2501, 1), doctest::Contains("is deeper than the radius"), invalid_input);
  CHECK_NOTHROW((void)bow(1.2, 0.3, 0.6, 1));
}
