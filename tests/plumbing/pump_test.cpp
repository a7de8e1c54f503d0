// SPDX-License-Identifier: BSL-1.0
#include <math.h>  // pchip.hpp of Boost 1.74 needs a global isnan

#include <boost/math/interpolators/pchip.hpp>
#include <charconv>
#include <string>
#include <tankwright/plumbing/pump.hpp>
#include <vector>

#include "support/edges.hpp"
#include "support/reference.hpp"
#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twp = tankwright::plumbing;

namespace {

evidence about(const char* function, kind rests_on, const char* source) {
  return {std::string{"tankwright::plumbing::"} + function, rests_on, source};
}

twp::curve_point point(double cubic_metres_per_hour_, double head_metres) {
  return {.flow = cubic_metres_per_hour(cubic_metres_per_hour_), .head = metres(head_metres)};
}

// The pumps of the reference circuit.
const auto p1 = twp::curve_from_three_points(
    {.label = "P1", .shutoff_head = metres(6.0), .middle = point(8.0, 4.5), .last = point(14.0, 1.0)});
const auto p2 = twp::curve_from_three_points(
    {.label = "P2", .shutoff_head = metres(4.5), .middle = point(5.0, 3.2), .last = point(9.0, 0.8)});
const auto eight_points =
    twp::curve_from_points("test pump", {point(0.0, 9.0), point(1.0, 8.9), point(2.5, 8.3), point(4.0, 7.0),
                                         point(5.5, 6.6), point(7.0, 3.0), point(8.0, 2.9), point(9.0, 1.0)});

water::liquid of_density(mass_density rho) { return {.density = rho, .viscosity = millipascal_seconds(1.0)}; }

}  // namespace

TEST_CASE("pump: reference table") {
  const auto faster = [](const reference_row& row) {
    const auto at = twp::at_speed(
        twp::pump_performance{
            .flow = us_gallons_per_minute(row["Q"]), .head = feet(row["H"]), .power = horsepower(row["P"])},
        twp::speed_ratio{row["to"] / row["from"]});
    if (row.text("give") == "flow") return in_us_gallons_per_minute(at.flow);
    return row.text("give") == "head" ? in_feet(at.head) : in_horsepower(at.power);
  };
  const auto gauges = [](const reference_row& row) {
    return in_feet(twp::head_from_gauges({.suction = gauge_pressure{psi(row["ps"])},
                                          .discharge = gauge_pressure{psi(row["pd"])},
                                          .suction_gauge_height = feet(row["zs"]),
                                          .discharge_gauge_height = feet(row["zd"])},
                                         of_density(pounds_per_cubic_foot(row["rho"]))));
  };
  const auto drawn = [](const reference_row& row) {
    const auto p = twp::power_drawn({.flow = us_gallons_per_minute(row["Q"]),
                                     .head = feet(row["H"]),
                                     .pump_efficiency = fraction(row["eta"]),
                                     .motor_efficiency = fraction(row.has("motor") ? row["motor"] : 1.0)},
                                    of_density(pounds_per_cubic_foot(row["rho"])));
    if (row.text("give") == "cost") return in_kilowatt_hours(p.electrical * hours(8000.0)) * 0.12;
    return in_horsepower(p.shaft);
  };
  const auto npsh = [](const reference_row& row) {
    head losses = row.has("loss") ? feet(row["loss"]) : metres(0.0);
    if (row.has("K")) {
      const auto v = twp::mean_velocity(cubic_feet_per_second(row["Q"]), twp::pipe_bore{inches(row["D"])});
      losses = metres(row["K"] * v.value() * v.value() / (2 * 9.80665));
    }
    return in_feet(twp::npsh_available({.surface_pressure = absolute_pressure{psi(row["p"])},
                                        .level_above_pump = feet(row["level"]),
                                        .losses = losses,
                                        .vapour_pressure = absolute_pressure{psi(row["pv"])}},
                                       of_density(pounds_per_cubic_foot(row["rho"]))));
  };
  const auto three = [](const reference_row& row) {
    const auto curve = twp::curve_from_three_points({.shutoff_head = metres(row["h0"]),
                                                     .middle = point(row["q1"], row["h1"]),
                                                     .last = point(row["q2"], row["h2"])});
    const auto& data = curve.data();
    if (row.text("give") == "A") return data.shutoff;
    return row.text("give") == "C" ? data.c : data.b / std::pow(3600.0, data.c);  // B for m^3/h
  };
  const auto one = [](const reference_row& row) {
    const auto curve = twp::curve_from_one_point("guess", point(row["Q0"], row["H0"]));
    return in_metres(*twp::head_at(curve, cubic_metres_per_hour(row["Q"])).head);
  };
  check_rows(reference_rows("plumbing/pump.csv"), {{"tankwright::plumbing::at_speed", faster},
                                                   {"tankwright::plumbing::head_from_gauges", gauges},
                                                   {"tankwright::plumbing::power_drawn", drawn},
                                                   {"tankwright::plumbing::npsh_available", npsh},
                                                   {"tankwright::plumbing::curve_from_three_points", three},
                                                   {"tankwright::plumbing::curve_from_one_point", one}});
}

TEST_CASE("pump: random curves against scipy's monotone cubic") {
  const auto head = [](const reference_row& row) {
    std::vector<twp::curve_point> points;
    const std::string text = row.text("points");
    const char* at = text.data();
    const char* const end = at + text.size();
    while (at < end) {
      double q = 0.0, h = 0.0;
      at = std::from_chars(at, end, q).ptr + 1;
      at = std::from_chars(at, end, h).ptr + 1;
      points.push_back({.flow = cubic_metres_per_second(q), .head = metres(h)});
    }
    return in_metres(*twp::head_at(twp::curve_from_points("random", points), cubic_metres_per_second(row["Q"])).head);
  };
  check_rows(live_rows("plumbing_pump.csv"), {{"tankwright::plumbing::head_at", head}});
}

TEST_CASE("pump: the cubic through points is that of Boost.Math, falls, and has its slope") {
  const auto boost_cubic = about("curve_from_points", kind::library, "Boost.Math pchip with the same end slopes");
  const auto falls = about("curve_from_points", kind::property, "passes the points and falls between them");
  const auto slope = about("curve_from_points", kind::identity, "slope by differences");
  const auto& data = eight_points.data();
  const boost::math::interpolators::pchip<std::vector<double>> pchip{
      std::vector<double>(data.q), std::vector<double>(data.h), data.m.front(), data.m.back()};
  double before = 1e9;
  for (double share = 0.0; share <= 1.0; share += 1.0 / 1024) {
    const double q = share * data.end_flow;
    const auto here = twp::detail::value_on_curve(data, q);
    TW_CHECK(boost_cubic, here.head, pchip(q), within(1e-12));
    TW_HOLDS(falls, here.head < before && here.gradient <= 0.0);
    before = here.head;
    if (share > 0.0 && share < 1.0) {
      const double step = data.end_flow * 1e-6;
      const double rise =
          twp::detail::value_on_curve(data, q + step).head - twp::detail::value_on_curve(data, q - step).head;
      TW_CHECK(slope, here.gradient, rise / (2 * step), within(data.shutoff / data.end_flow * 1e-4));
    }
  }
  for (std::size_t i = 0; i < data.q.size(); ++i) {
    TW_CHECK(falls, in_metres(*twp::head_at(eight_points, cubic_metres_per_second(data.q[i])).head), data.h[i],
             within(1e-12));
  }
}

TEST_CASE("pump: two points make a straight line, three a power law through them") {
  const auto line = about("curve_from_points", kind::identity, "straight line through two points");
  const auto power_law = about("curve_from_three_points", kind::identity, "passes its points");
  const auto two = twp::curve_from_points("two", {point(0.0, 5.0), point(10.0, 0.0)});
  TW_CHECK(line, *twp::head_at(two, cubic_metres_per_hour(4.0)).head, metres(3.0), relative(1e-14));
  TW_CHECK(power_law, *twp::head_at(p1, cubic_metres_per_hour(0.0)).head, metres(6.0), relative(1e-14));
  TW_CHECK(power_law, *twp::head_at(p1, cubic_metres_per_hour(8.0)).head, metres(4.5), relative(1e-14));
  TW_CHECK(power_law, *twp::head_at(p1, cubic_metres_per_hour(14.0)).head, metres(1.0), relative(1e-13));
}

TEST_CASE("pump: head and flow are inverse, and off the curve there is no number") {
  const auto back = about("flow_at", kind::identity, "inverse of head_at");
  const auto off = about("flow_at", kind::property, "off the curve");
  const auto off_head = about("head_at", kind::property, "off the curve");
  for (const auto* curve : {&p1, &p2, &eight_points}) {
    for (double share = 0.0; share <= 1.0; share += 1.0 / 64) {
      const auto q = share * curve->end_flow();
      const auto answer = twp::flow_at(*curve, *twp::head_at(*curve, q).head);
      TW_CHECK(back, *answer.flow, q, within(curve->end_flow() * 2e-9));  // flat at shut-off
    }
    const auto above = twp::flow_at(*curve, curve->shutoff_head() + metres(1e-9));
    TW_HOLDS(off, above.region == twp::curve_region::above_shutoff && above.flow->value() == 0.0);
    const auto below = twp::flow_at(*curve, curve->end_head() - metres(1e-9));
    TW_HOLDS(off, below.region == twp::curve_region::past_end && !below.flow);
    const auto past = twp::head_at(*curve, curve->end_flow() * (1 + 1e-9));
    TW_HOLDS(off_head, past.region == twp::curve_region::past_end && !past.head);
  }
}

TEST_CASE("pump: series adds heads, parallel adds flows behind check valves") {
  const auto series = about("head_in_series", kind::identity, "sum of the heads");
  const auto parallel = about("flow_in_parallel", kind::identity, "sum of the flows");
  const std::vector<twp::pump_curve> both{p1, p2};
  const auto q = cubic_metres_per_hour(6.0);
  TW_CHECK(series, *twp::head_in_series(both, q).head, *twp::head_at(p1, q).head + *twp::head_at(p2, q).head,
           relative(1e-15));
  TW_HOLDS(series, twp::head_in_series(both, cubic_metres_per_hour(10.0)).region == twp::curve_region::past_end);
  const head h = metres(3.0);
  TW_CHECK(parallel, *twp::flow_in_parallel(both, h).flow, *twp::flow_at(p1, h).flow + *twp::flow_at(p2, h).flow,
           relative(1e-15));
  TW_CHECK(parallel, *twp::flow_in_parallel(both, metres(5.0)).flow, *twp::flow_at(p1, metres(5.0)).flow,
           relative(1e-15));
  const auto none = twp::flow_in_parallel(both, metres(6.1));
  TW_HOLDS(parallel, none.region == twp::curve_region::above_shutoff && none.flow->value() == 0.0);
  TW_HOLDS(parallel, twp::flow_in_parallel(both, metres(0.9)).region == twp::curve_region::past_end);
}

TEST_CASE("pump: a curve at another speed") {
  const auto affinity = about("at_speed", kind::identity, "H(Q) = s^2 H_1(Q/s), at any point");
  for (const auto* curve : {&p1, &eight_points}) {
    for (const double s : {0.4, 0.8, 1.0, 1.3}) {
      const auto slow = twp::at_speed(*curve, twp::speed_ratio{s});
      TW_CHECK(affinity, slow.end_flow(), s * curve->end_flow(), relative(1e-15));
      TW_CHECK(affinity, slow.shutoff_head(), s * s * curve->shutoff_head(), relative(1e-15));
      for (double share = 0.0; share <= 1.0; share += 1.0 / 32) {
        const auto q = share * curve->end_flow();
        TW_CHECK(affinity, *twp::head_at(slow, std::min(s * q, slow.end_flow())).head,
                 s * s * *twp::head_at(*curve, q).head, within(metres(1e-12)));
      }
    }
  }
  check_edges(twp::turning_speed_limits, [](double s, range_policy) {
    return twp::at_speed(twp::pump_performance{.flow = litres_per_hour(1.0), .head = metres(1.0), .power = watts(1.0)},
                         twp::speed_ratio{s});
  });
}

TEST_CASE("pump: seawater takes more power, in proportion to its density") {
  const auto ratio = about("power_in", kind::identity, "ratio of the densities");
  const auto hydraulic = about("power_drawn", kind::identity, "rho g Q H");
  const auto fresh = water::fresh_water(celsius(25.0));
  const auto sea = water::seawater(practical_salinity{35.0}, celsius(25.0));
  TW_CHECK(ratio, twp::power_in(watts(100.0), fresh.density, sea),
           watts(100.0 * sea.density->value() / fresh.density->value()), relative(1e-15));
  const twp::pump_duty duty{.flow = cubic_metres_per_hour(9.0),
                            .head = metres(4.0),
                            .pump_efficiency = percent(50.0),
                            .motor_efficiency = percent(80.0)};
  const auto drawn = twp::power_drawn(duty, sea);
  TW_CHECK(hydraulic, drawn.hydraulic, watts(sea.density->value() * 9.80665 * 0.0025 * 4.0), relative(1e-14));
  TW_CHECK(hydraulic, drawn.electrical, drawn.hydraulic / 0.4, relative(1e-14));
  CHECK(drawn.caution.text.find("licensed electrician") != std::string_view::npos);
}

TEST_CASE("pump: gauges and suction in still water") {
  const auto still = about("head_from_gauges", kind::identity, "a column at rest gives no head; Bernoulli");
  const auto surface = about("npsh_available", kind::identity, "an open tank at the pump's level");
  const auto sea = of_density(kilograms_per_cubic_metre(1023.0));
  const auto column = [&](double z) { return gauge_pressure{pascals(1023.0 * 9.80665 * (5.0 - z))}; };
  const auto at_rest = twp::head_from_gauges({.suction = column(1.0),
                                              .discharge = column(3.0),
                                              .suction_gauge_height = metres(1.0),
                                              .discharge_gauge_height = metres(3.0)},
                                             sea);
  TW_CHECK(still, at_rest, metres(0.0), within(metres(1e-12)));
  const auto faster = twp::head_from_gauges({.suction = column(1.0),
                                             .discharge = column(1.0),
                                             .suction_velocity = metres_per_second(1.0),
                                             .discharge_velocity = metres_per_second(2.0)},
                                            sea);
  TW_CHECK(still, faster, metres(3.0 / (2 * 9.80665)), relative(1e-14));
  TW_CHECK(
      surface,
      twp::npsh_available(
          {.level_above_pump = metres(0.0), .losses = metres(0.0), .vapour_pressure = absolute_pressure{pascals(0.0)}},
          sea),
      metres(101325.0 / (1023.0 * 9.80665)), relative(1e-14));
}

TEST_CASE("pump: a curve that cannot be is refused by name") {
  const std::string points = "tankwright::plumbing::curve_from_points: ";
  CHECK(message_of<invalid_input>([] { (void)twp::curve_from_points("big pump", {point(0.0, 5.0)}); }) ==
        points +
            "big pump has 1 points; a curve needs at least two (curve_from_one_point guesses one from its duty point)");
  CHECK(message_of<invalid_input>([] {
          (void)twp::curve_from_points("big pump", {point(0.0, 5.0), point(3.6, 5.0)});
        }) ==
        points +
            "big pump point 2 has a head of 5 m, not less than the point before it; the head of a pump must fall with "
            "the flow");
  CHECK(message_of<invalid_input>([] {
          (void)twp::curve_from_points("big pump", {point(0.0, 5.0), point(7.2, 3.0), point(3.6, 2.0)});
        }) ==
        points +
            "big pump point 3 has a flow of 0.001 m3/s, not more than the point before it; sort the points by flow");
  CHECK(message_of<invalid_input>([] {
          (void)twp::curve_from_points("big pump", {point(3.6, 5.0), point(7.2, 3.0)});
        }) ==
        points + "big pump begins at a flow of 0.001 m3/s; the first point must be at zero flow, the shut-off head");
  CHECK(message_of<invalid_input>([] {
          (void)twp::curve_from_points("big pump", {point(0.0, 5.0), point(3.6, std::nan(""))});
        }) == points + "big pump: point 2: head = nan m is not possible; expected -100000 to 100000 m");
  CHECK(
      message_of<invalid_input>([] {
        (void)twp::curve_from_three_points(
            {.label = "P", .shutoff_head = metres(6.0), .middle = point(8.0, 1.01), .last = point(14.0, 1.0)});
      }) ==
      "tankwright::plumbing::curve_from_three_points: P has points that only a power of 0.00357745924 joins (expected "
      "0.1 to 20); give more points, curve_from_points");  // ln(5/4.99)/ln(14/8)
  CHECK_THROWS_AS((void)twp::curve_from_one_point("P", point(0.0, 3.0)), invalid_input);
  CHECK_THROWS_AS((void)twp::head_at(p1, litres_per_hour(-1.0)), invalid_input);
  check_edges(twp::pump_efficiency_limits, [](double eta, range_policy) {
    return twp::power_drawn({.flow = litres_per_hour(1.0), .head = metres(1.0), .pump_efficiency = fraction(eta)},
                            of_density(kilograms_per_cubic_metre(1000.0)));
  });
}

TEST_CASE("pump: both ends of a curve belong to it, and a last digit beyond them does not") {
  const auto end = about("flow_at", kind::property, "shut-off head and last point are on the curve");
  for (const auto* curve : {&p1, &p2, &eight_points}) {
    const auto at = [&](head h) { return twp::flow_at(*curve, h); };
    TW_HOLDS(end, at(curve->shutoff_head()).region == twp::curve_region::on_curve);
    TW_CHECK(end, *at(curve->shutoff_head()).flow, flow_rate{}, tolerance{});
    TW_HOLDS(end, at(head::from_value(std::nextafter(curve->shutoff_head().value(), 1e9))).region ==
                      twp::curve_region::above_shutoff);
    TW_HOLDS(end, at(curve->end_head()).region == twp::curve_region::on_curve);
    TW_CHECK(end, *at(curve->end_head()).flow, curve->end_flow(), tolerance{});
  }
}

TEST_CASE("pump: a flow too small to be a second point, and what an idle pump is taken to lose") {
  CHECK_THROWS_WITH_AS((void)twp::curve_from_three_points({.label = "P",
                                                           .shutoff_head = metres(6.0),
                                                           .middle = {flow_rate::from_value(1e-10), metres(5.0)},
                                                           .last = point(14.0, 1.0)}),
                       doctest::Contains("P point 2 has a flow of 1e-10 m3/s, not more than the point before it"),
                       invalid_input);
  // Decisions of this library, written a second time.
  const twp::idle_pump_losses idle;
  CHECK(idle.backwards.low.value() == 0.69);
  CHECK(idle.backwards.central.value() == 1.3);
  CHECK(idle.backwards.high.value() == 2.4);
  CHECK(idle.forwards.low.value() == 0.22);
  CHECK(idle.forwards.central.value() == 0.35);
  CHECK(idle.forwards.high.value() == 0.56);
}

TEST_CASE("pump: a curve hardly steeper than a straight line is followed down to the smallest flows") {
  // H = 10 - Q^1.0005, in m and m3/h, to 2 m3/h: at a millionth of a cubic metre an hour too.
  const auto back = about("flow_at", kind::identity, "the power law by hand");
  const auto curve = twp::curve_from_three_points({.label = "P",
                                                   .shutoff_head = metres(10.0),
                                                   .middle = point(1.0, 9.0),
                                                   .last = point(2.0, 10.0 - std::pow(2.0, 1.0005))});
  for (const double q : {1e-6, 1e-3, 0.5}) {
    TW_CHECK(back, in_cubic_metres_per_hour(*twp::flow_at(curve, metres(10.0 - std::pow(q, 1.0005))).flow), q,
             relative(1e-5));
  }
}
