// SPDX-License-Identifier: BSL-1.0
/// @file
/// The course of a power cut, piece by piece: what has a closed form by that, the rest by small steps written here.
#include <tankwright/plumbing/detail/power_cut_case.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

#include "plumbing/random_power_cut.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;
using tp::detail::above_rim;

namespace {

const evidence closed{"tankwright::plumbing::power_cut_transient", kind::identity, "closed form"};
const evidence stepped{"tankwright::plumbing::power_cut_transient", kind::identity, "Runge-Kutta with steps of 1 ms"};
const evidence by_hand{"tankwright::plumbing::power_cut", kind::identity, "worked by hand"};
const evidence ends_early{"tankwright::plumbing::power_cut", kind::property,
                          "a course that is ended early has passed its highest level"};

constexpr double flow = 6.0 / 3600.0;  // 6000 L/h over a standpipe of 100 mm: 25 mm
constexpr double over = 0.025;
double over_standpipe(double h) { return h > 0.0 ? flow * std::pow(h / over, 1.5) : 0.0; }

tp::return_line fitting(double depth, double q = flow) {
  return {
      .label = "A",
      .flow = cubic_metres_per_second(q),
      .outlet_below_edge = metres(depth),
      .pipe = tp::pipe_run{.label = "A", .bore = tp::pipe_bore{millimetres(30.0)}, .fittings = tp::known_loss(4.0)}};
}
/// What the fitting passes under a height: 4 velocity heads and one at its end.
double through(double height) {
  return plain::pi / 4.0 * 9e-4 * std::sqrt(2.0 * plain::g * std::max(height, 0.0) / 5.0);
}

tp::power_cut_input system_of(std::vector<double> areas, std::vector<tp::baffle> baffles = {}, double running = 0.2) {
  tp::power_cut_input in{
      .display = {.surface = square_metres(1.0), .edge = tp::standpipe{tp::pipe_bore{millimetres(100.0)}}},
      .sump = {.rim = metres(0.5), .running_level = metres(running), .chambers = {}, .baffles = std::move(baffles)},
      .returns = {fitting(-0.5)},
      .edge_above_floor = metres(1.5),
      .area_uncertainty = percent(0.0),
      .level_uncertainty = metres(0.0)};
  for (const double a : areas) in.sump.chambers.push_back({.label = "c", .horizontal_area = square_metres(a)});
  return in;
}
tp::baffle made(double crest, double width, double gap = 0.0) {
  return {.crest = metres(crest), .width = metres(width), .gap = metres(gap)};
}

/// A power cut that has been worked out as far as its start.
class cut {
 public:
  explicit cut(tp::power_cut_input in, const tp::detail::power_cut_moves& by = {})
      : in_{std::move(in)}, engine_{"here", in_}, by_{by}, numbers_(2 * engine_.shape().size()) {
    const std::size_t n = engine_.shape().size();
    c.running = {numbers_.data(), n};
    c.settled = {numbers_.data() + n, n};
    engine_.run_moved(by_, c);
    engine_.fall_moved(by_, c);
  }
  cut(const cut&) = delete;
  cut& operator=(const cut&) = delete;
  [[nodiscard]] tp::detail::power_cut_course course(double fineness = 30.0, above_rim rim = above_rim::walls_continue) {
    return engine_.start(by_, c, rim, fineness);
  }
  tp::detail::power_cut_engine& engine() { return engine_; }
  tp::detail::power_cut_case c{};

 private:
  tp::power_cut_input in_;
  tp::detail::power_cut_engine engine_;
  tp::detail::power_cut_moves by_;
  std::vector<double> numbers_;
};

void go_to(tp::detail::power_cut_course& course, double& t, double end) {
  while (t < end) t += course.step(end - t);
}

/// y' = f(y) by the classical Runge-Kutta method.
template <class State, class F>
State advance(State y, double time, F f) {
  const int steps = static_cast<int>(std::ceil(time / 1e-3));
  const double dt = time / steps;
  const auto moved = [](State a, const State& k, double h) {
    for (std::size_t i = 0; i < a.size(); ++i) a[i] += h * k[i];
    return a;
  };
  for (int i = 0; i < steps; ++i) {
    const State k1 = f(y), k2 = f(moved(y, k1, 0.5 * dt)), k3 = f(moved(y, k2, 0.5 * dt)), k4 = f(moved(y, k3, dt));
    for (std::size_t j = 0; j < y.size(); ++j) y[j] += dt / 6.0 * (k1[j] + 2.0 * k2[j] + 2.0 * k3[j] + k4[j]);
  }
  return y;
}

}  // namespace

TEST_CASE("power cut course: the display falls over its edge by the closed form, into one chamber") {
  cut one{system_of({0.5})};
  auto course = one.course();
  TW_CHECK(by_hand, course.over_edge(), over, relative(1e-12));
  TW_CHECK(by_hand, course.coming(), flow, relative(1e-12));
  TW_CHECK(by_hand, course.to_come_by_drains(), 0.025, relative(1e-12));
  TW_CHECK(by_hand, course.to_come_back(), 0.0, tolerance{});
  TW_CHECK(by_hand, course.under_way(), 0.0, tolerance{});
  TW_CHECK(by_hand, course.bound(), 0.25, relative(1e-12));  // 25 L more on half a square metre
  double t = 0.0;
  for (const double end : {1.0, 5.0, 20.0, 100.0, 400.0}) {
    go_to(course, t, end);
    // dh/dt = -Q/A with Q = Q0 (h/h0)^1.5: h = h0/(1 + Q0 t/(2 A h0))^2
    const double h = over / std::pow(1.0 + flow * t / (2.0 * over), 2.0);
    CAPTURE(end);
    TW_CHECK(closed, course.over_edge(), h, (tolerance{2e-7, 3e-5}));
    TW_CHECK(closed, course.level_in(0), 0.2 + 2.0 * (over - h), within(4e-7));
    TW_CHECK(closed, course.volume_in(0), 0.1 + (over - h), within(2e-7));
    TW_CHECK(closed, course.highest(), course.level_in(0), tolerance{});
    TW_CHECK(closed, course.coming(), over_standpipe(h), relative(2e-3));
    TW_CHECK(closed, course.bound(), 0.25, relative(1e-9));
    CHECK(course.trickles() == (over_standpipe(h) < 0.01 * flow));
  }
}

TEST_CASE("power cut course: box and drain pipes hold water back, and let it go with what they carry") {
  auto in = system_of({0.5});
  in.display.box = tp::overflow_box{.horizontal_area = square_metres(0.05), .falls_by = millimetres(100.0)};
  in.display.drains = {
      {.label = "drain", .bore = tp::pipe_bore{millimetres(40.0)}, .length = metres(1.5)}};  // 1.884956 L
  const double full = 0.005, drain = 1.5 * plain::pi / 4.0 * 0.0016;
  cut one{in};
  auto course = one.course();
  TW_CHECK(by_hand, course.under_way(), full + drain, relative(1e-12));
  TW_CHECK(by_hand, course.to_come_by_drains(), 0.025 + full + drain, relative(1e-12));
  TW_CHECK(by_hand, course.coming(), 2.0 * flow, relative(1e-9));  // over the edge and out of the box
  cut more{in, {.flow = 1.1}};
  TW_CHECK(by_hand, more.course().coming(), 2.2 * flow, relative(1e-9));
  double t = 0.0;
  // h' = -Q(h)/A, V' = Q(h) - Q0 (V/V0)^1.5; the pipes hold in proportion to what they carry.
  const auto change = [&](const std::array<double, 2>& y) {
    const double q = over_standpipe(y[0]);
    return std::array<double, 2>{-q, q - flow * std::pow(std::max(y[1], 0.0) / full, 1.5)};
  };
  std::array<double, 2> y{over, full};
  double before = 0.0;
  for (const double end : {1.0, 5.0, 20.0, 60.0, 300.0, 600.0}) {
    go_to(course, t, end);
    y = advance(y, end - before, change);
    before = end;
    const double carried = std::pow(y[1] / full, 1.5), holds = drain * carried;
    CAPTURE(end);
    TW_CHECK(stepped, course.over_edge(), y[0], (tolerance{4e-7, 1e-4}));
    TW_CHECK(stepped, course.under_way(), y[1] + holds, relative(3e-3));
    TW_CHECK(stepped, course.level_in(0), 0.2 + 2.0 * (over - y[0] + full - y[1] + drain - holds), within(4e-6));
  }
  // A quarter of the flow, and a box of half a litre.
  in.display.box->falls_by = millimetres(10.0);
  cut small{in, {.flow = 0.25}};
  auto little = small.course();
  const double quarter = 0.25 * flow, half_a_litre = 0.0005;
  TW_CHECK(by_hand, little.coming(), 2.0 * quarter, relative(1e-9));
  y = {over * std::pow(0.25, 2.0 / 3.0), half_a_litre};
  t = 0.0;
  go_to(little, t, 20.0);
  y = advance(y, 20.0, [&](const std::array<double, 2>& x) {
    const double q = over_standpipe(x[0]);
    return std::array<double, 2>{-q, q - quarter * std::pow(std::max(x[1], 0.0) / half_a_litre, 1.5)};
  });
  TW_CHECK(stepped, little.under_way(), y[1] + drain * std::pow(y[1] / half_a_litre, 1.5), relative(1e-3));
  // Without a box the pipes carry what comes over the edge.
  in.display.box.reset();
  cut bare{in};
  auto second = bare.course();
  TW_CHECK(by_hand, second.under_way(), drain, relative(1e-12));
  t = 0.0;
  go_to(second, t, 10.0);
  const double h = over / std::pow(1.0 + flow * t / (2.0 * over), 2.0), holds = drain * over_standpipe(h) / flow;
  TW_CHECK(closed, second.under_way(), holds, relative(1e-4));
  TW_CHECK(closed, second.level_in(0), 0.2 + 2.0 * (over - h + drain - holds), within(1e-6));
}

TEST_CASE("power cut course: a siphon levels two tanks until its opening draws air") {
  // Nothing ran; the opening lies 10 mm below the edge, at which the water stands.
  auto in = system_of({0.5});
  in.returns = {fitting(0.01, 0.0)};
  cut one{in};
  auto course = one.course();
  TW_CHECK(by_hand, course.to_come_back(), 0.010, relative(1e-12));
  TW_CHECK(by_hand, course.bound(), 0.22, relative(1e-12));
  TW_CHECK(by_hand, course.coming(), through(1.3), relative(1e-9));
  // H' = -q (1/A + 1/As), q = c sqrt H: sqrt H falls evenly.
  const double c = through(1.0), k = 0.5 * c * (1.0 + 2.0);
  const double root = std::sqrt(1.3) - k * 4.0;
  double t = 0.0;
  go_to(course, t, 4.0);
  TW_CHECK(closed, course.over_edge(), -(1.3 - root * root) / 3.0, relative(1e-5));
  TW_CHECK(closed, course.level_in(0), 0.2 + 2.0 * (1.3 - root * root) / 3.0, within(1e-7));
  TW_CHECK(closed, course.coming(), c * root, relative(1e-6));
  // All 10 L are out after (sqrt 1.3 - sqrt 1.27)/k.
  const double end = (std::sqrt(1.3) - std::sqrt(1.27)) / k;
  while (course.coming() > 0.0) t += course.step(100.0);
  TW_CHECK(closed, t, end, relative(1e-3));
  TW_CHECK(closed, course.over_edge(), -0.01, within(1e-12));
  TW_CHECK(closed, course.level_in(0), 0.22, within(1e-12));
  TW_CHECK(by_hand, course.to_come_back(), 0.0, within(1e-15));
  CHECK(course.still());
}

TEST_CASE("power cut course: what comes is told of the edge, of a siphon and of a column that falls") {
  auto in = system_of({0.4});
  in.returns = {fitting(0.03), fitting(-0.03, 0.0)};
  in.returns[1].pipe->length = metres(0.001);
  cut one{in};
  // The column stands 1.53 m over the sump, whose water is 0.2 m high; its wall counts for a thousandth.
  TW_CHECK(by_hand, one.course().coming(), flow + through(1.525 - 0.2) + through(1.53 - 0.2), relative(2e-3));
}

TEST_CASE("power cut course: edge and siphon together, by small steps") {
  auto in = system_of({0.4});
  in.returns = {fitting(0.03)};
  cut one{in};
  auto course = one.course();
  TW_CHECK(by_hand, course.coming(), flow + through(1.5 + over - 0.2), relative(1e-9));
  // h' = -(Q(h) + q(1.5 + h - z))/A, z' = the same over the area of the sump
  const auto change = [&](const std::array<double, 2>& y) {
    const double q = over_standpipe(y[0]) + through(1.5 + y[0] - y[1]);
    return std::array<double, 2>{-q, q / 0.4};
  };
  double t = 0.0, before = 0.0;
  std::array<double, 2> y{over, 0.2};
  for (const double end : {3.0, 10.0, 20.0}) {
    go_to(course, t, end);
    y = advance(y, end - before, change);
    before = end;
    CAPTURE(end);
    TW_CHECK(stepped, course.over_edge(), y[0], within(6e-6));
    TW_CHECK(stepped, course.level_in(0), y[1], within(1.5e-5));
    TW_CHECK(by_hand, course.to_come_back(), std::min(y[0], 0.0) + 0.03, within(6e-6));
    TW_CHECK(by_hand, course.to_come_by_drains(), std::max(y[0], 0.0), within(6e-6));
  }
}

TEST_CASE("power cut course: two chambers level through a gap, and over a crest, by small steps") {
  for (const double gap : {0.02, 0.0}) {
    const tp::baffle b = made(0.25, 0.4, gap);
    auto in = system_of({0.12, 0.3}, {b}, 0.15);
    cut one{in};
    auto course = one.course(60.0);
    const plain_baffle plain_one{0.25, 0.4, gap};
    const auto change = [&](const std::array<double, 3>& y) {
      const double q = over_standpipe(y[0]);
      const double p = y[1] >= y[2] ? plain::passes(plain_one, y[1], y[2]) : -plain::passes(plain_one, y[2], y[1]);
      return std::array<double, 3>{-q, (q - p) / 0.12, p / 0.3};
    };
    std::array<double, 3> y{over, plain::level_for(plain_one, flow, 0.15), 0.15};
    TW_CHECK(by_hand, course.level_in(0), y[1], relative(1e-9));
    double t = 0.0, before = 0.0;
    for (const double end : {2.0, 10.0, 40.0, 120.0}) {
      go_to(course, t, end);
      y = advance(y, end - before, change);
      before = end;
      CAPTURE(gap);
      CAPTURE(end);
      TW_CHECK(stepped, course.level_in(0), y[1], within(3e-6));
      TW_CHECK(stepped, course.level_in(1), y[2], within(3e-6));
      CHECK(course.highest_chamber() == (course.level_in(1) > course.level_in(0) ? 1u : 0u));
      TW_CHECK(stepped, 0.12 * course.level_in(0) + 0.3 * course.level_in(1) + course.over_edge(),
               0.12 * one.c.running[0] + 0.3 * 0.15 + over, relative(1e-12));
    }
  }
}

TEST_CASE("power cut course: what comes back into the last of three chambers runs upstream over the crests") {
  auto in = system_of({0.1, 0.08, 0.12}, {made(0.25, 0.3), made(0.22, 0.3)}, 0.21);
  in.returns = {fitting(0.06)};
  cut one{in};
  auto course = one.course(60.0);
  // Drowned by little they follow Villemonte drawn straighter: the passages that sump_water_test.cpp holds.
  const tp::detail::baffle_passage first{made(0.25, 0.3), tp::detail::band_side::central};
  const tp::detail::baffle_passage second{made(0.22, 0.3), tp::detail::band_side::central};
  const auto signed_flow = [](const tp::detail::baffle_passage& b, double up, double down) {
    return up >= down ? b(up, down).flow : -b(down, up).flow;
  };
  const auto change = [&](const std::array<double, 4>& y) {
    const double q = over_standpipe(y[0]), back = through(1.5 + y[0] - y[3]);
    const double p1 = signed_flow(first, y[1], y[2]), p2 = signed_flow(second, y[2], y[3]);
    return std::array<double, 4>{-q - back, (q - p1) / 0.1, (p1 - p2) / 0.08, (p2 + back) / 0.12};
  };
  const double second_level = plain::level_for({0.22, 0.3, 0.0}, flow, 0.21);
  std::array<double, 4> y{over, plain::level_for({0.25, 0.3, 0.0}, flow, second_level), second_level, 0.21};
  double t = 0.0, before = 0.0;
  for (const double end : {2.0, 8.0, 20.0}) {
    go_to(course, t, end);
    y = advance(y, end - before, change);
    before = end;
    CAPTURE(end);
    for (std::size_t i = 0; i < 3; ++i) TW_CHECK(stepped, course.level_in(i), y[i + 1], within(3e-5));
  }
}

TEST_CASE("power cut course: above the rim the water leaves, or stands as if the walls went on") {
  auto in = system_of({0.5}, {}, 0.49);
  cut one{in};
  auto walls = one.course(), floor = one.course(30.0, above_rim::runs_over);
  double t = 0.0;
  go_to(walls, t, 400.0);
  t = 0.0;
  go_to(floor, t, 400.0);
  const double h = over / std::pow(1.0 + flow * t / (2.0 * over), 2.0);
  TW_CHECK(closed, walls.level_in(0), 0.49 + 2.0 * (over - h), within(1e-6));
  TW_CHECK(closed, walls.on_the_floor(), 0.0, tolerance{});
  TW_CHECK(closed, floor.level_in(0), 0.5, tolerance{});
  TW_CHECK(closed, floor.on_the_floor(), over - h - 0.005, within(1e-6));
  CHECK(floor.full());
  CHECK(walls.full());  // at the rim or above it
  auto at_start = one.course();
  CHECK_FALSE(at_start.full());
  // A siphon is held back by the rim and not by walls that are not there: the water it ends in stands at the rim.
  auto siphons = system_of({0.02}, {}, 0.49);
  siphons.returns = {fitting(0.05)};
  siphons.edge_above_floor = metres(0.9);
  cut small{siphons};
  auto back = small.course();
  t = 0.0;
  go_to(back, t, 10.0);
  REQUIRE(back.level_in(0) > 0.6);
  TW_CHECK(by_hand, back.coming(), over_standpipe(back.over_edge()) + through(0.9 + back.over_edge() - 0.5),
           relative(1e-9));
}

TEST_CASE("power cut course: what bounds all later levels, by hand") {
  // Into the first of two: 25 L over the edge, 5 L in the box; into the last: 10 L back. Chambers of 0.1 and 0.25 m2.
  auto in = system_of({0.1, 0.25}, {made(0.3, 0.4)}, 0.2);
  in.display.box = tp::overflow_box{.horizontal_area = square_metres(0.05), .falls_by = millimetres(100.0)};
  in.returns = {fitting(0.01)};
  cut one{in};
  auto course = one.course();
  const double up = plain::level_for({0.3, 0.4, 0.0}, flow, 0.2);
  TW_CHECK(by_hand, course.highest(), up, relative(1e-12));
  // Poured into both at once: the highest and 30 L on 0.1 m2 and 10 L on 0.25 m2. Or all into the last, with what stands
  // over the crest, and 30 L on the first once more: more than the first is high.
  const double last = 0.2 + (0.040 + (up - 0.3) * 0.1) / 0.25;
  CHECK(last > up);
  TW_CHECK(by_hand, course.bound(), std::min(up + 0.030 / 0.1 + 0.010 / 0.25, last + 0.030 / 0.1), relative(1e-12));
  // With a small last chamber the first way is the lower.
  in.sump.chambers[1].horizontal_area = square_metres(0.06);
  cut small{in};
  TW_CHECK(by_hand, small.course().bound(), up + 0.030 / 0.1 + 0.010 / 0.06, relative(1e-12));
  // Joined by a gap, all that stands above the last chamber may run into it.
  auto joined = system_of({0.1, 0.3}, {made(0.3, 0.4, 0.02)}, 0.2);
  cut gap{joined};
  const double before = plain::level_for({0.3, 0.4, 0.02}, flow, 0.2);
  const double in_last = 0.2 + (0.025 + (before - 0.2) * 0.1) / 0.3;
  CHECK(in_last < 0.3);
  TW_CHECK(by_hand, gap.course().bound(), std::min(before + 0.25, std::max(before, in_last) + 0.25), relative(1e-12));
  // 5 L down and 40 L back, into three chambers that hold more than their crests: all of it in the last stands higher
  // than the first does, and lower than both ways at once would.
  auto thrice = system_of({0.1, 0.08, 0.25}, {made(0.35, 0.4), made(0.3, 0.4)}, 0.2);
  thrice.display.surface = square_metres(0.2);
  thrice.returns = {fitting(0.2)};
  cut three{thrice};
  const double middle = plain::level_for({0.3, 0.4, 0.0}, flow, 0.2);
  const double top = plain::level_for({0.35, 0.4, 0.0}, flow, middle);
  const double above = 0.1 * (top - 0.35) + 0.08 * (middle - 0.3), all = 0.2 + (0.045 + above) / 0.25;
  CHECK(all > top);
  TW_CHECK(by_hand, three.course().bound(), all + 0.005 / 0.1, relative(1e-12));
  // Through a gap of a millimetre the second may run down to the last, and not below it.
  thrice.sump.baffles[1] = made(0.3, 0.4, 0.001);
  thrice.returns[0].flow = cubic_metres_per_second(1e-4);
  cut narrow{thrice};
  const plain_baffle slit{0.3, 0.4, 0.001};
  const double second = plain::level_for(slit, 1e-4, 0.2), first = plain::level_for({0.35, 0.4, 0.0}, 1e-4, second);
  const double head = over * std::pow(1e-4 / flow, 2.0 / 3.0), down = 0.2 * head;
  const double in_all = 0.2 + (0.040 + down + 0.1 * (first - 0.35) + 0.08 * (second - 0.2)) / 0.25;
  CHECK(in_all > first);
  TW_CHECK(by_hand, narrow.course().bound(), in_all + down / 0.1, relative(1e-9));
  // The drains lead to the last chamber: nothing is counted twice.
  auto direct = system_of({0.1, 0.25}, {made(0.3, 0.4)}, 0.2);
  direct.drains_into = 1;
  cut behind{direct};
  TW_CHECK(by_hand, behind.course().bound(), 0.3, relative(1e-12));  // the first stands at its crest, the last below it
  direct.sump.chambers[1].horizontal_area = square_metres(0.2);
  cut higher{direct};
  TW_CHECK(by_hand, higher.course().bound(), 0.2 + 0.025 / 0.2, relative(1e-12));
}

TEST_CASE("power cut course: where nothing ran, box and drains come down at once, and a sump stays at its rim") {
  auto in = system_of({0.1, 0.25}, {made(0.3, 0.4)}, 0.2);
  in.display.box = tp::overflow_box{.horizontal_area = square_metres(0.05), .falls_by = millimetres(100.0)};
  in.display.drains = {{.label = "drain", .bore = tp::pipe_bore{millimetres(40.0)}, .length = metres(1.5)}};
  in.returns = {fitting(-0.5, 0.0)};
  in.drains_into = 1;
  cut behind{in};
  TW_CHECK(by_hand, behind.course().level_in(1), 0.2 + 0.00688496 / 0.25, within(1e-7));
  CHECK(behind.course().highest_chamber() == 0);
  in.display.box->horizontal_area = square_metres(1.0);
  cut much{in};  // 101.884956 L on 0.25 m2
  TW_CHECK(by_hand, much.course().highest(), 0.2 + 0.10188496 / 0.25, within(1e-7));
  CHECK(much.course().highest_chamber() == 1);
  in.display.box->horizontal_area = square_metres(0.05);
  in.drains_into = 0;
  cut one{in};
  auto course = one.course();
  // 5 L of the box and 1.884956 L of the drain on 0.1 m2, whose level was its crest.
  TW_CHECK(by_hand, course.level_in(0), 0.3 + 0.06884956, within(1e-8));
  TW_CHECK(by_hand, course.volume_in(0), 0.03688496, within(1e-8));
  TW_CHECK(by_hand, course.highest(), course.level_in(0), tolerance{});
  CHECK(course.highest_chamber() == 0);
  TW_CHECK(by_hand, course.under_way(), 0.0, tolerance{});
  TW_CHECK(by_hand, course.coming(), 0.0, tolerance{});
  CHECK(course.still());
}

TEST_CASE("power cut course: chambers whose walls lean, by small steps") {
  // A = 0.1 + 0.4 z and 0.2 + 0.3 z, half of a square metre and more of gear in neither; all areas 3 % smaller.
  auto in = system_of({0.1, 0.2}, {made(0.25, 0.4, 0.015)}, 0.15);
  const auto leaning = [](double at_floor, double slope) {
    return tp::area_profile{{metres(0.0), square_metres(at_floor)},
                            {metres(2.0), square_metres(at_floor + 2.0 * slope)}};
  };
  in.sump.chambers[0].horizontal_area = leaning(0.1, 0.4);
  in.sump.chambers[1].horizontal_area = leaning(0.2, 0.3);
  in.sump.chambers[1].gear = square_metres(0.03);
  cut one{in, {.sump_area = 0.97}};
  auto course = one.course(60.0);
  const plain_baffle plain_one{0.25, 0.4, 0.015};
  const auto change = [&](const std::array<double, 3>& y) {
    const double q = over_standpipe(y[0]);
    const double p = y[1] >= y[2] ? plain::passes(plain_one, y[1], y[2]) : -plain::passes(plain_one, y[2], y[1]);
    return std::array<double, 3>{-q, (q - p) / (0.97 * (0.1 + 0.4 * y[1])), p / (0.97 * (0.17 + 0.3 * y[2]))};
  };
  std::array<double, 3> y{over, plain::level_for(plain_one, flow, 0.15), 0.15};
  TW_CHECK(by_hand, course.level_in(0), y[1], relative(1e-9));
  TW_CHECK(by_hand, course.volume_in(1), 0.97 * (0.17 * 0.15 + 0.15 * 0.0225), relative(1e-12));
  // 25 L more over the least areas there are: 0.1 m2, and the highest is the first.
  TW_CHECK(by_hand, course.bound(), y[1] + 0.025 / 0.097, relative(1e-9));
  double t = 0.0, before = 0.0;
  for (const double end : {2.0, 10.0, 40.0, 120.0}) {
    go_to(course, t, end);
    y = advance(y, end - before, change);
    before = end;
    CAPTURE(end);
    TW_CHECK(stepped, course.level_in(0), y[1], within(6e-6));
    TW_CHECK(stepped, course.level_in(1), y[2], within(6e-6));
  }
}

TEST_CASE("power cut course: a hundredth of the flow is a trickle") {
  // Q/Q0 = r at h = h0 r^(2/3), which is after 2 A h0/Q0 (r^(-1/3) - 1).
  for (const double r : {0.01005, 0.00995}) {
    cut one{system_of({0.5})};
    auto course = one.course();
    double t = 0.0;
    go_to(course, t, 2.0 * over / flow * (std::cbrt(1.0 / r) - 1.0));
    TW_CHECK(closed, course.coming(), r * flow, relative(1e-3));
    CHECK(course.trickles() == (r < 0.01));
    CHECK_FALSE(course.still());
  }
  // What comes to four times what counts as none is still: 1.44 L/h.
  for (const double r : {4.2e-7, 3.8e-7}) {
    cut one{system_of({0.5})};
    auto course = one.course();
    double t = 0.0;
    go_to(course, t, 2.0 * over / flow * (std::cbrt(flow / r) - 1.0));
    CHECK(course.still() == (r < 4e-7));
  }
}

TEST_CASE("power cut course: whether the level at rest is never passed, at the gap that decides it") {
  const evidence decides{"tankwright::plumbing::power_cut", kind::identity, "falls over the gaps, by hand"};
  // A flow Q needs a fall of (Q/(0.61 s w))^2/2g through a gap; it passes the rest nowhere while all falls together are at
  // most half of what R, which is still to come with it, lifts all chambers by. The gap at which they are:
  const auto gap_for = [](double q, double to_come, double area, double baffles) {
    return q / (0.61 * 0.4 * std::sqrt(2.0 * plain::g * 0.5 * to_come / area / baffles));
  };
  const auto decided_at = [&](tp::power_cut_input in, double gap, double apart = 2e-4) {
    for (const double part : {1.0 + apart, 1.0 - apart}) {
      for (tp::baffle& b : in.sump.baffles) b.gap = metres(part * gap);
      cut one{in};
      CAPTURE(part);
      TW_HOLDS(decides, one.course().never_above(0.3) == (part > 1.0));
    }
  };
  const auto three = [](std::size_t drains_into) {
    auto in = system_of({0.2, 0.15, 0.25}, {made(0.45, 0.4, 0.1), made(0.45, 0.4, 0.1)});
    in.drains_into = drains_into;
    return in;
  };
  // 25 L over the edge into 0.6 m2, through two gaps, from wherever the drains end.
  for (const std::size_t into : {0u, 1u, 2u}) decided_at(three(into), gap_for(flow, 0.025, 0.6, 2.0));
  // The box holds 5 L: it lets out no more than what runs in once they are gone, so they alone decide.
  auto boxed = three(0);
  boxed.display.box = tp::overflow_box{.horizontal_area = square_metres(0.05), .falls_by = millimetres(100.0)};
  decided_at(boxed, gap_for(flow, 0.005, 0.6, 2.0));
  boxed.display.surface = square_metres(0.1);  // the display 2.5 L
  decided_at(boxed, gap_for(flow, 0.0025, 0.6, 2.0));
  // Drain pipes let go what they held as the box does: (V/V0)^1.5 of it, 1.5 H Q/V0 at first.
  const double drain = 1.5 * plain::pi / 4.0 * 0.0016;
  boxed.display.surface = square_metres(1.0);
  boxed.display.drains = {{.label = "drain", .bore = tp::pipe_bore{millimetres(40.0)}, .length = metres(1.5)}};
  decided_at(boxed, gap_for(flow * (1.0 + 1.5 * drain / 0.005), 0.005, 0.6, 2.0));
  boxed.display.box->falls_by = millimetres(10.0);  // half a litre, and half a litre in the pipe
  boxed.display.drains[0].length = metres(0.4);
  const double short_drain = 0.4 * plain::pi / 4.0 * 0.0016;
  decided_at(boxed, gap_for(flow * (1.0 + 1.5 * short_drain / 0.0005), 0.0005, 0.6, 2.0));
  // Without a box no steeper than h^2.5 over the edge: 2.5 H Q/(A h).
  auto piped = three(0);
  piped.display.drains = boxed.display.drains;
  piped.display.drains[0].length = metres(6.0);
  decided_at(piped, gap_for(flow * (1.0 + 2.5 * 4.0 * drain / 0.025), 0.025, 0.6, 2.0));
  // What comes back takes its column with it: two metres of 30 mm.
  auto siphons = three(0);
  siphons.returns[0].outlet_below_edge = metres(0.04);
  siphons.returns[0].pipe->length = metres(0.001);
  const double back = through(1.5 + over - 0.2), column = 0.001 * plain::pi / 4.0 * 9e-4;
  cut short_column{siphons};
  TW_CHECK(by_hand, short_column.course().coming(), flow + back, relative(2e-3));
  decided_at(siphons, gap_for(short_column.course().coming() - flow, column, 0.6, 2.0), 2e-3);
}

TEST_CASE("power cut course: which way the water runs to the lowest chamber decides too") {
  const evidence decides{"tankwright::plumbing::power_cut", kind::identity, "falls over gap and crest, by hand"};
  // A gap that needs 20 mm, and a crest at 0.3 m. From the crest's side the head over it comes on top of the fall; from
  // the gap's side the fall ends below the crest.
  const double gap = flow / (0.61 * 0.4 * std::sqrt(2.0 * plain::g * 0.02));
  const double over_crest = plain::level_for({0.3, 0.4, 0.0}, flow, 0.2) - 0.3;
  const double rest = 0.3 + over_crest + 0.01;
  const auto decided = [&](bool gap_first, std::size_t drains_into, double depth = -0.5) {
    const tp::baffle slit = made(0.6, 0.4, gap), crest = made(0.3, 0.4);
    auto in = system_of({0.2, 0.2, 0.2}, {gap_first ? slit : crest, gap_first ? crest : slit}, 0.25);
    in.drains_into = drains_into;
    in.display.surface = square_metres(4.0);  // 100 L still to come: the lowest chamber stands 83 mm below the rest
    in.returns[0].outlet_below_edge = metres(depth);
    cut one{in};
    return one.course().never_above(rest);
  };
  // Downstream the flow is asked from the last chamber upwards: over the crest, then through the gap, or the other way.
  CHECK(rest - 0.5 * 0.1 / 0.6 + 0.02 < 0.3);
  TW_HOLDS(decides, !decided(true, 0));
  TW_HOLDS(decides, decided(false, 0));
  // Where the drains end further on, it runs upstream too.
  TW_HOLDS(decides, !decided(true, 1));
  TW_HOLDS(decides, !decided(false, 1));
  TW_HOLDS(decides, !decided(false, 2));
  // What comes back into the last chamber runs upstream: through the gap first, or over the crest first. Its pipe of
  // 200 mm and two metres holds 62.8 L; a loss of 9000 lets as much through as the pump brought in the other cases.
  const auto back_decided = [&](bool gap_first) {
    auto in = system_of({0.2, 0.2, 0.2}, {}, 0.2);
    in.display.surface = square_metres(4.0);
    in.returns = {fitting(0.02, 1e-4)};
    in.returns[0].pipe = tp::pipe_run{.label = "A",
                                      .bore = tp::pipe_bore{millimetres(200.0)},
                                      .length = metres(2.0),
                                      .fittings = tp::known_loss(9000.0)};
    in.sump.baffles = {made(0.6, 0.4, 0.1), made(0.6, 0.4, 0.1)};
    const double back = cut{in}.course().coming() - 1e-4;
    CHECK(std::fabs(back - flow) < 0.1 * flow);
    const tp::baffle slit = made(0.6, 0.4, back / (0.61 * 0.4 * std::sqrt(2.0 * plain::g * 0.02))),
                     crest = made(0.3, 0.4);
    in.sump.baffles = {gap_first ? slit : crest, gap_first ? crest : slit};
    cut one{in};
    const double over_it = plain::level_for({0.3, 0.4, 0.0}, back, 0.2) - 0.3;
    return one.course().never_above(0.3 + over_it + 0.01);
  };
  TW_HOLDS(decides, back_decided(true));
  TW_HOLDS(decides, !back_decided(false));
}

TEST_CASE("power cut course: a course that is ended early has passed its highest level, in random systems") {
  constexpr unsigned seed = 20261131;
  MESSAGE("seed ", seed);
  std::mt19937 random{seed};
  int seen = 0, on_the_way = 0;
  while (seen < 400) {
    const auto made_one = random_power_cut(random);
    if (!made_one) continue;
    ++seen;
    cut one{made_one->in};
    // To the very end, with steps that are fine everywhere.
    auto course = one.course(3.0);
    double highest = std::max(course.highest(), *std::max_element(one.c.settled.begin(), one.c.settled.end()));
    const double rest = highest;
    while (!course.still()) {
      (void)course.step(core::largest);
      highest = std::max(highest, course.highest());
    }
    one.engine().follow({}, one.c);
    CAPTURE(seen);
    TW_HOLDS(ends_early, one.c.highest >= highest - 2e-4);
    TW_HOLDS(ends_early, one.c.highest <= highest + 2e-4);
    on_the_way += highest > rest + 1e-3;
  }
  MESSAGE("of ", seen, ", ", on_the_way, " peak on the way");
  CHECK(on_the_way > 20);
}

TEST_CASE("power cut course: some 65 steps are enough, for chambers of all sizes") {
  // Newton's method that goes the wrong way still gets there, with many more and shorter steps.
  std::mt19937 random{20261202};
  int seen = 0, steps = 0;
  while (seen < 100) {
    const auto made_one = random_power_cut(random);
    if (!made_one) continue;
    ++seen;
    cut one{made_one->in};
    for (auto course = one.course(1.0); !course.trickles(); ++steps) (void)course.step(core::largest);
  }
  CHECK(steps < 6700);
}
