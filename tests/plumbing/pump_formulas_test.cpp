// SPDX-License-Identifier: BSL-1.0
// Pumps: ends of every argument, power laws by hand, and the best point by its derivative.
#include <array>
#include <cmath>
#include <tankwright/plumbing.hpp>
#include <vector>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using namespace tankwright::plumbing;

namespace {

const water::liquid sea{.density = kilograms_per_cubic_metre(1023.0), .viscosity = millipascal_seconds(0.96)};
constexpr interval flows{0.0, 1e4}, heads{-1e5, 1e5};

evidence second(std::string_view function, std::string_view source = "a second transcription") {
  return {"tankwright::plumbing::" + std::string{function}, kind::identity, std::string{source}};
}
flow_rate q(double x) { return cubic_metres_per_second(x); }
head h(double x) { return metres(x); }
gauge_pressure gauge(double x) { return gauge_pressure{pascals(x)}; }
absolute_pressure air(double x) { return absolute_pressure{pascals(x)}; }
curve_point at(double flow, double lift) { return {.flow = q(flow), .head = h(lift)}; }
pump_curve three(double h0, double q1, double h1, double q2, double h2) {
  return curve_from_three_points({.label = "P", .shutoff_head = h(h0), .middle = at(q1, h1), .last = at(q2, h2)});
}

}  // namespace

TEST_CASE("pump ends: points and questions") {
  check_edges("P: point 1: head", "m", {1e-3, 1e5}, [](double x) {
    return curve_from_points("P", {at(0, x), at(1, -1)});
  });
  check_edges("P: point 2: head", "m", {.low = -1e5}, [](double x) {
    return curve_from_points("P", {at(0, 1), at(1, x)});
  });
  check_edges("P: point 2: flow", "m3/s", {.high = 1e4}, [](double x) {
    return curve_from_points("P", {at(0, 1), at(x, 0)});
  });
  CHECK_THROWS_WITH_AS((void)curve_from_points("P", {at(-1, 1), at(1, 0)}), doctest::Contains("P: point 1: flow"),
                       invalid_input);
  CHECK_NOTHROW((void)curve_from_points("P", {at(0, 1), at(1e-9, 0)}));
  CHECK_THROWS_WITH_AS((void)curve_from_points("P", {at(0, 1), at(0.999e-9, 0)}),
                       doctest::Contains("point 2 has a flow of"), invalid_input);
  check_edges("P: point 1: head", "m", {1e-3, 1e5}, [](double x) { return three(x, 1, x - 1, 2, x - 3); });
  CHECK_THROWS_WITH_AS((void)three(3, 1, 3, 2, 1), doctest::Contains("P point 2 has a head"), invalid_input);
  CHECK_THROWS_WITH_AS((void)three(3, 1, 2, 2, 2.5), doctest::Contains("P point 3 has a head"), invalid_input);
  CHECK_THROWS_WITH_AS((void)three(3, -1, 2, 2, 1), doctest::Contains("P: point 2: flow"), invalid_input);
  CHECK_THROWS_WITH_AS((void)three(3, 1, 2, 1, 1), doctest::Contains("P point 3 has a flow"), invalid_input);
  // Exponents 0.1 and 20 through (1, h1) and (2, h2): (h0 - h2)/(h0 - h1) = 2^c.
  for (const auto& [c, good] : {std::pair{0.1 * (1 + 1e-9), true},
                                {0.1 * (1 - 1e-9), false},
                                {20 * (1 - 1e-9), true},
                                {20 * (1 + 1e-9), false}}) {
    const double fall = 1e-3, deep = fall * std::pow(2.0, c);
    if (good) {
      CHECK_NOTHROW((void)three(1.0, 1, 1.0 - fall, 2, 1.0 - deep));
    } else {
      CHECK_THROWS_WITH_AS((void)three(1.0, 1, 1.0 - fall, 2, 1.0 - deep), doctest::Contains("that only a power of"),
                           invalid_input);
    }
  }
  check_edges("P: flow", "m3/s", {1e-9, 1e4}, [](double x) { return curve_from_one_point("P", at(x, 1)); });
  check_edges("P: head", "m", {1e-3, 1e5}, [](double x) { return curve_from_one_point("P", at(1, x)); });
  const auto p = curve_from_one_point("P", at(1, 3));
  const std::vector<pump_curve> two(2, p);
  check_edges("P: flow", "m3/s", flows, [&](double x) { return head_at(p, q(x)); });
  check_edges("P: head", "m", heads, [&](double x) { return flow_at(p, h(x)); });
  check_edges("flow", "m3/s", flows, [&](double x) { return head_in_series(two, q(x)); });
  check_edges("head", "m", heads, [&](double x) { return flow_in_parallel(two, h(x)); });
  check_edges("P: speed", "", {1e-3, 10.0}, [&](double x) { return at_speed(p, speed_ratio{x}); });
  const auto faster = [](double flow, double lift, double power, double s) {
    return at_speed(pump_performance{.flow = q(flow), .head = h(lift), .power = watts(power)}, speed_ratio{s});
  };
  check_edges("flow", "m3/s", flows, [&](double x) { return faster(x, 1, 1, 1); });
  check_edges("head", "m", heads, [&](double x) { return faster(1, x, 1, 1); });
  check_edges("power", "W", {0.0, 1e9}, [&](double x) { return faster(1, 1, x, 1); });
  check_edges("speed", "", {1e-3, 10.0}, [&](double x) { return faster(1, 1, 1, x); });
  const auto drawn = [](double flow, double lift, double pump, double motor) {
    return power_drawn(
        {.flow = q(flow), .head = h(lift), .pump_efficiency = fraction(pump), .motor_efficiency = fraction(motor)},
        sea);
  };
  check_edges("flow", "m3/s", flows, [&](double x) { return drawn(x, 1, 0.5, 0.5); });
  check_edges("head", "m", {0.0, 1e5}, [&](double x) { return drawn(1, x, 0.5, 0.5); });
  check_edges("pump efficiency", "", {1e-4, 1.0}, [&](double x) { return drawn(1, 1, x, 0.5); });
  check_edges("motor efficiency", "", {1e-4, 1.0}, [&](double x) { return drawn(1, 1, 0.5, x); });
  check_edges("power", "W", {0.0, 1e9},
              [](double x) { return power_in(watts(x), kilograms_per_cubic_metre(1000), sea); });
  check_edges("density of the test liquid", "kg/m3", {500.0, 3e4},
              [](double x) { return power_in(watts(1), kilograms_per_cubic_metre(x), sea); });
  const auto npsh = [](double pa, double z, double loss, double vapour) {
    return npsh_available(
        {.surface_pressure = air(pa), .level_above_pump = h(z), .losses = h(loss), .vapour_pressure = air(vapour)},
        sea);
  };
  check_edges("surface pressure", "Pa", {1.0, 1e9}, [&](double x) { return npsh(x, 1, 1, 1); });
  check_edges("level above pump", "m", {-1e4, 1e4}, [&](double x) { return npsh(1e5, x, 1, 1); });
  check_edges("losses", "m", {0.0, 1e5}, [&](double x) { return npsh(1e5, 1, x, 1); });
  check_edges("vapour pressure", "Pa", {0.0, 1e8}, [&](double x) { return npsh(1e5, 1, 1, x); });
  const auto gauges = [](double a, double b, double za, double zb, double va, double vb) {
    return head_from_gauges({.suction = gauge(a),
                             .discharge = gauge(b),
                             .suction_gauge_height = h(za),
                             .discharge_gauge_height = h(zb),
                             .suction_velocity = metres_per_second(va),
                             .discharge_velocity = metres_per_second(vb)},
                            sea);
  };
  check_edges("pressure", "Pa", {-1.1e5, 1e9}, [&](double x) { return gauges(x, 1, 1, 1, 1, 1); });
  check_edges("pressure", "Pa", {-1.1e5, 1e9}, [&](double x) { return gauges(1, x, 1, 1, 1, 1); });
  check_edges("height of a gauge", "m", {-1e4, 1e4}, [&](double x) { return gauges(1, 1, x, 1, 1, 1); });
  check_edges("height of a gauge", "m", {-1e4, 1e4}, [&](double x) { return gauges(1, 1, 1, x, 1, 1); });
  check_edges("velocity", "m/s", {-100.0, 100.0}, [&](double x) { return gauges(1, 1, 1, 1, x, 1); });
  check_edges("velocity", "m/s", {-100.0, 100.0}, [&](double x) { return gauges(1, 1, 1, 1, 1, x); });
  const water::liquid nothing{.density = kilograms_per_cubic_metre(std::nan("")), .viscosity = millipascal_seconds(1)};
  CHECK_THROWS_WITH_AS((void)power_drawn({.flow = q(1), .head = h(1), .pump_efficiency = fraction(0.5)}, nothing),
                       doctest::Contains("power_drawn: density"), invalid_input);
  CHECK_THROWS_WITH_AS((void)power_in(watts(1), kilograms_per_cubic_metre(1000), nothing),
                       doctest::Contains("power_in: density"), invalid_input);
  CHECK_THROWS_WITH_AS(
      (void)npsh_available({.level_above_pump = h(1), .losses = h(1), .vapour_pressure = air(1)}, nothing),
      doctest::Contains("npsh_available: density"), invalid_input);
  CHECK_THROWS_WITH_AS((void)head_from_gauges({.suction = gauge(1), .discharge = gauge(1)}, nothing),
                       doctest::Contains("head_from_gauges: density"), invalid_input);
}

TEST_CASE("pump formulas: power laws, their slopes and best points") {
  const auto law = second("curve_from_three_points", "H = A - B Q^C; the best point where d(Q H)/dQ = 0");
  for (const double c : {0.6, 1.0, 1.7, 2.0, 3.1}) {
    CAPTURE(c);
    const double b = 9e5, end = 0.01;  // A such that the end lies at a third of the shut-off head
    const double a = 1.5 * b * std::pow(end, c);
    const auto p = three(a, 0.4 * end, a - b * std::pow(0.4 * end, c), end, a - b * std::pow(end, c));
    TW_CHECK(law, p.data().c, c, relative(1e-11));
    TW_CHECK(law, p.data().b, b, relative(1e-10));
    TW_CHECK(law, p.end_head().value(), a / 3, relative(1e-11));
    const double best = std::min(std::pow(a / ((c + 1) * b), 1 / c), end);
    TW_CHECK(law, best_point(p).flow->value(), best, relative(1e-10));
    TW_CHECK(law, best_point(p).head->value(), a - b * std::pow(best, c), relative(1e-10));
    for (const double part : {0.01, 0.2, 0.5, 0.9, 1.0}) {
      const double x = part * end;
      TW_CHECK(law, head_at(p, q(x)).head->value(), a - b * std::pow(x, c), relative(1e-11));
      TW_CHECK(law, detail::value_on_curve(p.data(), x).gradient, -b * c * std::pow(x, c - 1), relative(1e-9));
      const auto back = flow_at(p, h(a - b * std::pow(x, c)));
      CHECK(back.region == curve_region::on_curve);
      TW_CHECK(second("flow_at", "inverse"), back.flow->value(), x, relative(1e-6));
    }
    const auto slow = at_speed(p, speed_ratio{0.5});
    TW_CHECK(second("at_speed"), slow.data().b, b * std::pow(0.5, 2 - c), relative(1e-10));
    TW_CHECK(second("at_speed"), best_point(slow).flow->value(), 0.5 * best, relative(1e-10));
    TW_CHECK(second("at_speed"), best_point(slow).head->value(), 0.25 * best_point(p).head->value(), relative(1e-10));
    TW_CHECK(second("at_speed"), slow.end_head().value(), a / 12, relative(1e-10));
  }
  // A power below one is taken straight up to a millionth of the end.
  const auto steep = three(1.5 * std::pow(0.01, 0.6), 0.004, 1.5 * std::pow(0.01, 0.6) - std::pow(0.004, 0.6), 0.01,
                           0.5 * std::pow(0.01, 0.6));
  const double first = 1e-6 * 0.01, fall = std::pow(first, 0.6);
  TW_CHECK(law, detail::value_on_curve(steep.data(), 0.5 * first).gradient, -fall / first, relative(1e-9));
  TW_CHECK(law, 1.5 * std::pow(0.01, 0.6) - head_at(steep, q(0.5 * first)).head->value(), 0.5 * fall, relative(1e-6));
  TW_CHECK(second("flow_at", "straight at its start"),
           flow_at(steep, h(1.5 * std::pow(0.01, 0.6) - 0.5 * fall)).flow->value(), 0.5 * first, relative(1e-6));
  // EPANET's rule from one point: 4/3 of its head, twice its flow.
  const auto one = curve_from_one_point("P", at(2, 3));
  const auto rule = second("curve_from_one_point", "H = 4/3 H0 - H0/3 (Q/Q0)^2");
  TW_CHECK(rule, one.shutoff_head().value(), 4.0, relative(1e-14));
  TW_CHECK(rule, one.end_flow().value(), 4.0, relative(1e-14));
  TW_CHECK(rule, one.end_head().value(), 0.0, within(1e-12));
  TW_CHECK(rule, head_at(one, q(2)).head->value(), 3.0, relative(1e-14));
  TW_CHECK(rule, best_point(one).flow->value(), 4 / std::sqrt(3.0), relative(1e-12));
  TW_CHECK(rule, best_point(one).head->value(), 4 * (1 - 1.0 / 3.0), relative(1e-12));
  CHECK(detail::value_on_curve(one.data(), 0.0).gradient == 0.0);
  // Through points: the line from (0, 6) to (3, 0) has its best point in the middle.
  const auto line = curve_from_points("P", {at(0, 6), at(1, 4), at(3, 0)});
  TW_CHECK(second("best_point", "middle of a straight line"), best_point(line).flow->value(), 1.5, relative(1e-6));
  TW_CHECK(second("best_point", "middle of a straight line"), best_point(line).head->value(), 3.0, relative(1e-6));
  // Two straight pieces with a step between: the later peak is the larger, the earlier one lies within the first tenth.
  const auto late = curve_from_points("P", {at(0, 10), at(0.1, 9.9), at(0.2, 3.01), at(2, 3), at(2.01, 0)});
  CHECK(best_point(late).flow->value() > 1.9);
  // A curve that hardly falls has its best point at its end, not beyond.
  const auto flat = curve_from_points("P", {at(0, 10), at(1, 9.9), at(2, 9.5)});
  TW_CHECK(second("best_point", "the end of a flat curve"), best_point(flat).flow->value(), 2.0, relative(1e-6));
  CHECK(best_point(flat).flow->value() <= 2.0);
  const auto early = curve_from_points("P", {at(0, 10), at(1.0, 9.9), at(1.05, 2), at(2, 1.9), at(2.01, 0)});
  CHECK(best_point(early).flow->value() < 1.05);
  TW_CHECK(
      second("power_drawn"),
      power_drawn({.flow = q(0.002), .head = h(3), .pump_efficiency = fraction(0.5), .motor_efficiency = fraction(0.8)},
                  sea)
          .shaft.value(),
      1023 * 9.80665 * 0.002 * 3 / 0.5, relative(1e-13));
  TW_CHECK(
      second("npsh_available"),
      npsh_available(
          {.surface_pressure = air(9e4), .level_above_pump = h(-1.5), .losses = h(0.4), .vapour_pressure = air(3000)},
          sea)
          .value(),
      (9e4 - 3000) / (1023 * 9.80665) - 1.9, relative(1e-13));
  TW_CHECK(second("head_from_gauges"),
           head_from_gauges({.suction = gauge(-5000),
                             .discharge = gauge(40000),
                             .suction_gauge_height = h(0.2),
                             .discharge_gauge_height = h(0.5),
                             .suction_velocity = metres_per_second(1),
                             .discharge_velocity = metres_per_second(3)},
                            sea)
               .value(),
           45000 / (1023 * 9.80665) + 0.3 + 8 / (2 * 9.80665), relative(1e-13));
  const auto performance =
      at_speed(pump_performance{.flow = q(0.002), .head = h(3), .power = watts(80)}, speed_ratio{0.7});
  TW_CHECK(second("at_speed"), performance.flow->value(), 0.0014, relative(1e-13));
  TW_CHECK(second("at_speed"), performance.head->value(), 3 * 0.49, relative(1e-13));
  TW_CHECK(second("at_speed"), performance.power->value(), 80 * 0.343, relative(1e-13));
}
