// SPDX-License-Identifier: BSL-1.0
// A second transcription of the printed formulas of weirs, fittings, pumps, pipes and emptying, to rounding, with the ends of
// their bands. Tables are written as in their sources, with other steps than the headers have.
#include <algorithm>
#include <array>
#include <numbers>
#include <tankwright/plumbing.hpp>
#include <vector>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using namespace tankwright::plumbing;

namespace {

constexpr double g = 9.80665, pi = std::numbers::pi;
const water::liquid sea{.density = kilograms_per_cubic_metre(1023.0), .viscosity = millipascal_seconds(0.96)};

evidence second(std::string_view function, std::string_view source = "a second transcription") {
  return {"tankwright::plumbing::" + std::string{function}, kind::identity, std::string{source}};
}
length m(double x) { return metres(x); }
pipe_bore bore(double x) { return pipe_bore{metres(x)}; }

/// A table of (x, y), straight in between.
double read(const std::vector<std::array<double, 2>>& table, double x) {
  std::size_t i = 1;
  while (i + 1 < table.size() && x > table[i][0]) ++i;
  const auto& [x0, y0] = table[i - 1];
  const auto& [x1, y1] = table[i];
  return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
}
// Below 5 mm the addition to the head fades, so that no head passes nothing.
double effective(double h, double more) { return h < 0.005 ? h + more * h / 0.005 : h + more; }
double poleni(double c, double b, double h) { return 2.0 / 3.0 * c * b * std::sqrt(2 * g) * std::pow(h, 1.5); }
double rehbock(double h, double b, double p) { return poleni(0.602 + 0.083 * h / p, b, effective(h, 0.0012)); }
double c_of(double ratio, double h, double p) {  // Kindsvater and Carter: a + a' h/p
  return read({{0, 0.587}, {0.1, 0.588}, {0.5, 0.592}, {0.6, 0.593}, {0.8, 0.597}, {0.9, 0.599}, {1, 0.602}}, ratio) +
         read({{0, -0.0023},
               {0.1, -0.0021},
               {0.2, -0.0018},
               {0.3, 0.002},
               {0.4, 0.0058},
               {0.5, 0.011},
               {0.6, 0.018},
               {0.7, 0.030},
               {0.8, 0.045},
               {0.9, 0.064},
               {1, 0.075}},
              ratio) *
             h / p;
}
double kindsvater(double h, double b, double channel, double p) {
  const double k =
      read({{0, 0.0024}, {0.2, 0.0024}, {0.4, 0.0027}, {0.6, 0.0036}, {0.8, 0.0042}, {1, -0.0009}}, b / channel);
  return poleni(c_of(b / channel, h, p), b + k, effective(h, 0.001));
}
double notch(double c, double degree, double h) {
  return 8.0 / 15.0 * c * std::sqrt(2 * g) * std::tan(degree * pi / 360.0) * std::pow(h, 2.5);
}
double shen(double h, double degree) {
  return notch(read({{20, 0.59}, {40, 0.58}, {60, 0.575}, {80, 0.575}, {100, 0.58}}, degree), degree,
               effective(h, read({{20, 0.0028}, {40, 0.0017}, {60, 0.0012}, {80, 0.0010}, {100, 0.0010}}, degree)));
}
double comb(double h, double gap, int n, double tooth, double high, double p) {
  const double wet = std::min(h, high), over = std::max(h - high, 0.0);
  return n * 2.0 / 3.0 * std::sqrt(2 * g) * c_of(gap / (gap + tooth), wet, p) * gap *
         (std::pow(h, 1.5) - std::pow(over, 1.5));
}
double standpipe_top(double h, double d) {  // mm and L/s, EN 12056-3
  h *= 1000, d *= 1000;
  return 1e-3 * (h <= d / 2 ? d * std::pow(h, 1.5) / 7500 : d * d * std::sqrt(h) / 15000);
}
double spread(double h) {  // 3 % from 60 mm up, 10 % from 30 mm down, a millimetre of head below 10 mm
  return h >= 0.06 ? 0.03 : h >= 0.03 ? 0.10 - 0.07 * (h - 0.03) / 0.03 : h >= 0.01 ? 0.10 : std::min(0.001 / h, 0.8);
}
const std::array heads{1e-4, 0.0009, 0.00126, 0.003, 0.0049, 0.0051, 0.009, 0.011,
                       0.02, 0.029,  0.031,   0.045, 0.059,  0.061,  0.2,   0.4};

void band(std::string_view what, const overflow_edge& edge, double h, double central, double low, double high) {
  CAPTURE(h);
  CAPTURE(what);
  const auto found = flow_over(edge, m(h), extrapolate).flow;
  TW_CHECK(second("flow_over", what), found.central.value(), central, relative(1e-12));
  TW_CHECK(second("flow_over", what), found.low.value(), low, relative(1e-12));
  TW_CHECK(second("flow_over", what), found.high.value(), high, relative(1e-12));
}

}  // namespace

TEST_CASE("plumbing formulas: every edge and its band") {
  for (const double h : heads) {
    const double s = spread(h);
    const double q = rehbock(h, 0.8, 0.55);
    band("Rehbock", full_width_edge{m(0.8), m(0.55)}, h, q, q * (1 - s), q * (1 + s));
    // 12 mm thick: 2.80/3.32 up to 0.4 of the thickness, none from twice the thickness on.
    const double thick = h <= 0.0048  ? 2.80 / 3.32
                         : h >= 0.024 ? 1.0
                                      : 1 - (1 - 2.80 / 3.32) * (0.024 - h) / (0.024 - 0.0048);
    band("a thick edge", full_width_edge{m(0.8), m(0.55), m(0.012)}, h, q * thick, q * thick * (1 - s), q * (1 + s));
    for (const double ratio : {0.03, 0.15, 0.25, 0.35, 0.45, 0.55, 0.65, 0.75, 0.85, 0.95, 1.0}) {
      const double k = kindsvater(h, 0.3, 0.3 / ratio, 0.5);
      band("Kindsvater and Carter", contracted_edge{m(0.3), m(0.3 / ratio), m(0.5)}, h, k, k * (1 - s), k * (1 + s));
    }
    for (const double degree : {20.0, 33.0, 47.0, 66.0, 95.0, 100.0}) {
      const double v = shen(h, degree);
      band("Shen", v_notch{degrees(degree)}, h, v, v * (1 - s), v * (1 + s));
    }
    const double t = comb(h, 0.008, 40, 0.012, 0.025, 0.5);
    band("a comb: up to a fifth less, a tenth more", toothed_edge{m(0.008), 40, m(0.012), m(0.025), m(0.5)}, h, t,
         t * (1 - 0.2 * std::min(h / 0.008, 1.0)) * (1 - s), t * 1.1 * (1 + s));
    const double o = standpipe_top(h, 0.053);
    band("EN 12056-3, 15 %", standpipe{bore(0.053)}, h, o, 0.85 * o, 1.15 * o);
    band("EN 12056-3 with a strainer", standpipe{bore(0.053), true}, h, 0.5 * o, 0.425 * o, 0.575 * o);
    TW_CHECK(second("rehbock_weir"), rehbock_weir({m(0.8), m(0.55)}, m(h), extrapolate).value(), q, relative(1e-13));
    TW_CHECK(second("v_notch_weir"), v_notch_weir({degrees(75), m(h), 0.6}).value(), notch(0.6, 75, h),
             relative(1e-13));
    TW_CHECK(second("bazin_weir"), bazin_weir({m(0.4), m(h)}, extrapolate).value(),
             (0.405 + 0.003 / h) * 0.4 * std::sqrt(2 * g) * std::pow(h, 1.5), relative(1e-12));
    const double b = 2.0 - 0.1 * 2 * h, head_of_approach = 0.7 * 0.7 / (2 * g);
    const auto with_approach = [&](double c) {
      return poleni(c, b, h + head_of_approach) - poleni(c, b, head_of_approach);
    };
    TW_CHECK(second("rectangular_weir"),
             rectangular_weir({.width = m(2),
                               .head = m(h),
                               .discharge_coefficient = 0.61,
                               .contractions = 2,
                               .approach_velocity = metres_per_second(0.7)})
                 .value(),
             with_approach(0.61), relative(1e-10));
    TW_CHECK(second("francis_weir"),
             francis_weir({.width = m(2), .head = m(h), .contractions = 2, .approach_velocity = metres_per_second(0.7)},
                          extrapolate)
                 .value(),
             with_approach(1.838 * 1.5 / std::sqrt(2 * g)), relative(1e-10));
    for (const double n : {1.5, 2.5}) {
      for (const double part : {0.1, 0.5, 0.95}) {
        TW_CHECK(second("submerged_share"), submerged_share({m(h), m(part * h), n}).value(),
                 std::pow(1 - std::pow(part, n), 0.385), relative(1e-12));
      }
    }
  }
}

TEST_CASE("plumbing formulas: where an edge's answer is flagged") {
  const auto flags = [](const overflow_edge& inside, const overflow_edge& outside, double h_in, double h_out) {
    CHECK_FALSE(flow_over(inside, m(h_in), extrapolate).extrapolated);
    CHECK(flow_over(outside, m(h_out), extrapolate).extrapolated);
  };
  const double up = 1 + 1e-9, down = 1 - 1e-9;
  const full_width_edge wall{m(0.8), m(1.0)};
  flags(wall, wall, 0.03 * up, 0.03 * down);
  flags(wall, wall, 0.75 * down, 0.75 * up);
  flags(full_width_edge{m(0.3 * up), m(1)}, full_width_edge{m(0.3 * down), m(1)}, 0.1, 0.1);
  flags(full_width_edge{m(0.8), m(0.1 * up)}, full_width_edge{m(0.8), m(0.1 * down)}, 0.05, 0.05);
  flags(full_width_edge{m(0.8), m(0.5 * up)}, full_width_edge{m(0.8), m(0.5 * down)}, 0.5, 0.5);
  flags(full_width_edge{m(0.8), m(1), m(0.02 * down)}, full_width_edge{m(0.8), m(1), m(0.02 * up)}, 0.04, 0.04);
  const contracted_edge slot{m(0.3), m(0.8), m(0.5)};
  flags(slot, slot, 0.03 * up, 0.03 * down);
  flags(slot, slot, 1.0 * down, 1.0 * up);
  flags(contracted_edge{m(0.15 * up), m(0.8), m(0.5)}, contracted_edge{m(0.15 * down), m(0.8), m(0.5)}, 0.1, 0.1);
  flags(contracted_edge{m(0.3), m(0.8), m(0.1 * up)}, contracted_edge{m(0.3), m(0.8), m(0.1 * down)}, 0.05, 0.05);
  flags(v_notch{degrees(60)}, v_notch{degrees(60)}, 0.06 * up, 0.06 * down);
  CHECK_FALSE(flow_over(standpipe{bore(0.05)}, m(0.001)).extrapolated);
  CHECK_FALSE(head_over(standpipe{bore(0.05)}, litres_per_hour(100)).extrapolated);
  CHECK(head_over(slot, litres_per_hour(100)).extrapolated);
  // Above the range it is refused, unless asked for: on each side of both ends.
  for (const auto& [edge, h] :
       {std::pair<overflow_edge, double>{wall, 0.75}, {full_width_edge{m(0.8), m(0.4)}, 0.4}, {slot, 1.0}}) {
    CHECK_NOTHROW((void)flow_over(edge, m(h * down)));
    CHECK_THROWS_AS((void)flow_over(edge, m(h * up)), out_of_range);
    const auto q = flow_over(edge, m(h * 1.001), extrapolate).flow.central;
    CHECK_THROWS_AS((void)head_over(edge, q), out_of_range);
    CHECK_NOTHROW((void)head_over(edge, q, extrapolate));
    CHECK_NOTHROW((void)head_over(edge, flow_over(edge, m(h * 0.999)).flow.central));
  }
}

TEST_CASE("plumbing formulas: drains") {
  for (const double d : {0.02, 0.05, 0.11}) {
    for (const double part : {0.05, 0.3, 0.5, 0.8, 1.0}) {
      const double theta = 2 * std::acos(1 - 2 * part), a = d * d * (theta - std::sin(theta)) / 8, p = theta * d / 2,
                   r = a / p;
      const auto wet = part_full(bore(d), m(part * d));
      TW_CHECK(second("part_full"), wet.area.value(), a, relative(1e-12));
      TW_CHECK(second("part_full"), wet.wetted_perimeter.value(), p, relative(1e-12));
      TW_CHECK(second("part_full"), wet.hydraulic_radius.value(), r, relative(1e-12));
      TW_CHECK(second("part_full"), wet.surface_width.value(), d * std::sin(theta / 2),
               tolerance({.absolute = 1e-15, .relative = 1e-12}));
      const double v = std::pow(r, 2.0 / 3.0) * std::sqrt(0.015) / 0.011;
      const auto manning =
          part_full_flow(part_full_drain{.bore = bore(d), .slope = 0.015, .manning_n = 0.011}, m(part * d));
      TW_CHECK(second("part_full_flow"), manning.velocity.value(), v, relative(1e-12));
      TW_CHECK(second("part_full_flow"), manning.flow.value(), v * a, relative(1e-12));
      // Darcy and Weisbach: the found velocity meets V^2 = 8 g R S/f with Colebrook's f at its own Reynolds number.
      const auto darcy = part_full_flow(
          part_full_pipe{.bore = bore(d), .slope = 0.015, .roughness = m(1e-5), .water = sea}, m(part * d));
      const double u = darcy.velocity.value(), re = 4 * r * u * 1023.0 / 0.96e-3;
      const double f = friction_factor(reynolds_number{re}, relative_roughness{1e-5 / (4 * r)}).value();
      TW_CHECK(second("part_full_flow"), u * u, 8 * g * r * 0.015 / f, relative(1e-9));
      TW_CHECK(second("part_full_flow"), darcy.flow.value(), u * a, relative(1e-12));
    }
    const double unit = pi / 4 * d * d * std::sqrt(g * d);
    TW_CHECK(second("flow_at_drain_number"), flow_at_drain_number(bore(d), 0.42).value(), 0.42 * unit, relative(1e-13));
    TW_CHECK(second("flow_at_drain_number"), flow_at_drain_number(bore(d)).value(), 0.3 * unit, relative(1e-13));
    TW_CHECK(second("drain_number"), drain_number(bore(d), cubic_metres_per_second(unit)), 1.0, relative(1e-13));
    const double gpm = 3.785411784e-3 / 60;
    TW_CHECK(second("stack_capacity"), stack_capacity(bore(d)).value(),
             27.8 * std::pow(1.0 / 3.0, 5.0 / 3.0) * std::pow(d / 0.0254, 8.0 / 3.0) * gpm, relative(1e-12));
  }
  const double k = pi / 4 * 0.05 * 0.05 * std::sqrt(g * 0.05);
  const auto mode = [&](double j, bool full, double head = 1.0) {
    return drain_mode_for({.pipe = {.bore = bore(0.05), .length = m(1), .fittings = known_loss(1)},
                           .drop = m(1),
                           .inlet_head = m(head),
                           .runs_full = full},
                          cubic_metres_per_second(j * k), sea)
        .mode;
  };
  CHECK(mode(0.3 * (1 - 1e-9), false) == drain_mode::self_venting);
  CHECK(mode(0.3 * (1 + 1e-9), false) == drain_mode::surging);
  CHECK(mode(1 - 1e-9, false) == drain_mode::surging);
  CHECK(mode(1 + 1e-9, false) == drain_mode::full);
  CHECK(mode(0.1, true) == drain_mode::full);
  CHECK(mode(100, true) == drain_mode::overloaded);
  CHECK(mode(0.1, false, 0.0) == drain_mode::overloaded);
}
