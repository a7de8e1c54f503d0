// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/drain.hpp>

#include <cmath>
#include <functional>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

const water::liquid sea{kilograms_per_cubic_metre(1023.3), millipascal_seconds(0.96)};

tp::pipe_bore bore_of(const reference_row& row) {
  return tp::pipe_bore{row.text("D").find("in") != std::string::npos ? inches(row["D"]) : millimetres(row["D"])};
}

tp::drain drain(const char* label, double bore_mm, double inlet_mm = 60.0) {
  return {.pipe = {.label = label,
                   .bore = tp::pipe_bore{millimetres(bore_mm)},
                   .length = metres(1.2),
                   .fittings = tp::known_loss(1.1)},
          .drop = metres(0.8),
          .inlet_head = millimetres(inlet_mm)};
}

}  // namespace

TEST_CASE("drain: reference table") {
  const auto number = [](const reference_row& row) {
    return tp::drain_number(bore_of(row), cubic_metres_per_hour(row["Q"]));
  };
  const auto flow = [](const reference_row& row) {
    return in_cubic_metres_per_hour(tp::flow_at_drain_number(bore_of(row), row["J"]));
  };
  const auto stack = [](const reference_row& row) {
    return in_us_gallons_per_minute(tp::stack_capacity(bore_of(row), fraction(row["r"]), extrapolate));
  };
  const tp::part_full_drain unit{.bore = tp::pipe_bore{metres(1.0)}, .slope = 0.01};
  const auto section = [&](const reference_row& row) {
    const auto wet = tp::part_full(unit.bore, metres(row["y"])), full = tp::part_full(unit.bore, metres(1.0));
    if (row.text("ratio") == "A") return wet.area.value() / full.area.value();
    return wet.hydraulic_radius.value() / full.hydraulic_radius.value();
  };
  const auto part = [&](const reference_row& row) {
    if (row.has("n")) {
      const tp::part_full_drain level{.bore = bore_of(row), .slope = row["S"], .manning_n = row["n"]};
      return in_cubic_feet_per_second(tp::part_full_flow(level, level.bore->diameter()).flow);
    }
    if (row.has("eD")) {
      const length y = bore_of(row).diameter() * row["y"];
      const length hydraulic = 4.0 * tp::part_full(bore_of(row), y).hydraulic_radius;
      const tp::part_full_pipe pipe{.bore = bore_of(row),
                                    .slope = row["S"],
                                    .roughness = hydraulic * row["eD"],
                                    .water = {kilograms_per_cubic_metre(999.0), millipascal_seconds(1.1)}};
      return in_us_gallons_per_minute(tp::part_full_flow(pipe, y).flow);
    }
    const auto wet = tp::part_full_flow(unit, metres(row["y"])), full = tp::part_full_flow(unit, metres(1.0));
    if (row.text("ratio") == "Q") return wet.flow.value() / full.flow.value();
    return wet.velocity.value() / full.velocity.value();
  };
  check_rows(reference_rows("plumbing/drain.csv"), {{"tankwright::plumbing::drain_number", number},
                                                    {"tankwright::plumbing::flow_at_drain_number", flow},
                                                    {"tankwright::plumbing::stack_capacity", stack},
                                                    {"tankwright::plumbing::part_full", section},
                                                    {"tankwright::plumbing::part_full_flow", part}});
}

TEST_CASE("drain: identities") {
  // Half full: half the area, the same hydraulic radius; full: D/4.
  const evidence geometry{"tankwright::plumbing::part_full", kind::identity, "half and full circle"};
  const tp::pipe_bore d{millimetres(50.0)};
  const auto half = tp::part_full(d, millimetres(25.0)), full = tp::part_full(d, millimetres(50.0));
  TW_CHECK(geometry, half.area * 2.0, full.area, relative(1e-14));
  TW_CHECK(geometry, full.hydraulic_radius, millimetres(12.5), relative(1e-14));
  TW_CHECK(geometry, half.hydraulic_radius, millimetres(12.5), relative(1e-14));
  TW_CHECK(geometry, half.surface_width, millimetres(50.0), relative(1e-14));
  TW_CHECK(geometry, half.wetted_perimeter, metres(0.025 * 3.14159265358979323846), relative(1e-14));

  const evidence inverse{"tankwright::plumbing::part_full_depth", kind::identity, "inverse of part_full_flow"};
  const tp::part_full_drain level{.bore = d, .slope = 0.02};
  for (double part = 0.02; part < 0.93; part += 0.07) {
    const length y = d.diameter() * part;
    TW_CHECK(inverse, tp::part_full_depth(level, tp::part_full_flow(level, y).flow), y, relative(1e-11));
  }
  const evidence number{"tankwright::plumbing::drain_number", kind::identity, "inverse of flow_at_drain_number"};
  TW_CHECK(number, tp::drain_number(d, tp::flow_at_drain_number(d, 0.42)), 0.42, relative(1e-14));
  const evidence back{"tankwright::plumbing::flow_at_drain_number", kind::identity, "inverse of drain_number"};
  TW_CHECK(back, tp::flow_at_drain_number(d, tp::drain_number(d, litres_per_hour(900.0))), litres_per_hour(900.0),
           relative(1e-14));
  // Wyly and Eaton in the units of the formula: 1 in, filled by 1/27 (r^(5/3) = 1/243): 27.8/243 US gpm.
  const evidence stack{"tankwright::plumbing::stack_capacity", kind::identity, "27.8/243 US gpm at 1 in and r = 1/27"};
  TW_CHECK(stack, tp::stack_capacity(tp::pipe_bore{inches(1.0)}, fraction(1.0 / 27.0), extrapolate),
           us_gallons_per_minute(27.8 / 243.0), relative(1e-13));
}

TEST_CASE("drain: the most a level drain carries lies where it is said to") {
  const evidence most{"tankwright::plumbing::part_full_flow", kind::property, "largest at y/D = 0.938"};
  const tp::part_full_drain level{.bore = tp::pipe_bore{metres(1.0)}, .slope = 0.01};
  const auto q = [&](double y) { return tp::part_full_flow(level, metres(y)).flow.value(); };
  TW_HOLDS(most, (q(0.93818) > q(0.937) && q(0.93818) > q(0.939) && q(0.93818) > q(1.0)));
  CHECK_THROWS_AS((void)tp::part_full_depth(level, cubic_metres_per_second(1.001 * q(0.93818))), out_of_range);
}

TEST_CASE("drain: the mode for a flow") {
  const evidence mode{"tankwright::plumbing::drain_mode_for", kind::identity,
                      "the capacities are those of their functions"};
  const evidence order{"tankwright::plumbing::drain_mode_for", kind::property, "modes in order of the flow"};
  const tp::drain d = drain("main", 40.9);
  const auto at = [&](flow_rate q) { return tp::drain_mode_for(d, q, sea); };
  const auto answer = at(litres_per_hour(500.0));
  TW_CHECK(mode, answer.full.central, tp::siphon_flow(d.pipe, d.drop, sea).central, tolerance{});
  TW_CHECK(mode, answer.self_venting, tp::flow_at_drain_number(d.pipe.bore), tolerance{});
  TW_CHECK(mode, answer.inlet.central, tp::standpipe_inlet({d.pipe.bore}, d.inlet_head), tolerance{});
  TW_CHECK(mode, answer.stack, tp::stack_capacity(d.pipe.bore), tolerance{});
  TW_CHECK(mode, answer.surely, std::min(answer.full.low, answer.inlet.low), tolerance{});
  // 40.9 mm: 0.899 m3/h quietly, 3.0 m3/h at J* = 1, 11.5 m3/h as a full siphon (192 L/min); its top lets in
  // 40.9^2 sqrt(60)/15000 = 0.8638 L/s = 3.11 m3/h at 60 mm.
  TW_HOLDS(order, answer.mode == tp::drain_mode::self_venting);
  TW_HOLDS(order, at(cubic_metres_per_hour(0.95)).mode == tp::drain_mode::surging);
  TW_HOLDS(order, at(cubic_metres_per_hour(3.05)).mode == tp::drain_mode::full);
  TW_HOLDS(order, at(cubic_metres_per_hour(3.2)).mode == tp::drain_mode::overloaded);
  TW_CHECK(mode, answer.inlet.central, cubic_metres_per_hour(3.11), relative(1e-3));
  CHECK(answer.caution.text.find("second drain") != std::string_view::npos);
  // A strainer halves what the top lets in: the inlet governs before the pipe does.
  tp::drain strained = d;
  strained.strainer = true;
  TW_CHECK(mode, tp::drain_mode_for(strained, litres_per_hour(500.0), sea).inlet.central, answer.inlet.central * 0.5,
           relative(1e-14));
}

TEST_CASE("drain: one of several blocked") {
  const evidence left{"tankwright::plumbing::one_drain_blocked", kind::identity, "sums over the others"};
  const std::vector<tp::drain> drains{drain("siphon", 40.9, 120.0), drain("open", 40.9), drain("emergency", 52.5)};
  std::vector<tp::drain_answer> each;
  for (const auto& d : drains) each.push_back(tp::drain_mode_for(d, flow_rate{}, sea));
  const auto answer = tp::one_drain_blocked(drains, cubic_metres_per_hour(6.0), sea);
  REQUIRE(answer.cases.size() == 3);
  CHECK(answer.cases[0].blocked == "siphon");
  TW_CHECK(left, answer.cases[0].surely, each[1].surely + each[2].surely, relative(1e-14));
  TW_CHECK(left, answer.cases[1].surely, each[0].surely + each[2].surely, relative(1e-14));
  TW_CHECK(left, answer.cases[2].self_venting, each[0].self_venting + each[1].self_venting, relative(1e-14));
  // The open drain and the emergency drain let in 0.85 (0.8638 + 1.4233) L/s = 7.0 m3/h at 60 mm: they hold 6, not 7.1.
  CHECK(answer.holds);
  CHECK_FALSE(answer.cases[0].quiet);
  const auto more = tp::one_drain_blocked(drains, cubic_metres_per_hour(7.1), sea);
  CHECK_FALSE(more.holds);
  CHECK_FALSE(more.cases[0].holds);
  CHECK(tp::one_drain_blocked(drains, cubic_metres_per_hour(1.5), sea).cases[2].quiet);
}

TEST_CASE("drain: what cannot be is refused by name") {
  const auto message = [](tp::drain d, flow_rate q = litres_per_hour(100.0)) {
    try {
      (void)tp::drain_mode_for(d, q, sea);
    } catch (const error& e) {
      return std::string{e.what()};
    }
    return std::string{"accepted"};
  };
  const std::string here = "tankwright::plumbing::drain_mode_for: ";
  CHECK(message(drain("main", 0.0)) == here + "main: bore = 0 m is not possible; expected 0.0001 to 20 m");
  CHECK(message(drain("main", 40.0, -1.0)) ==
        here + "main: inlet_head = -0.001 m is not possible; expected at least 0 m");
  CHECK(message(drain("main", 40.0), litres_per_hour(-3600.0)) ==
        here + "main: flow = -0.001 m3/s is not possible; expected at least 0 m3/s");
  tp::drain uphill = drain("main", 40.0);
  uphill.drop = metres(-0.1);
  CHECK(message(uphill).find("main: drop = -0.1 m is not possible") != std::string::npos);
  CHECK_THROWS_WITH_AS(
      (void)tp::one_drain_blocked({drain("only", 40.0)}, litres_per_hour(1.0), sea),
      "tankwright::plumbing::one_drain_blocked: number of drains = 1 is not possible; expected at least 2",
      invalid_input);
  const tp::pipe_bore d{millimetres(50.0)};
  CHECK_THROWS_AS((void)tp::part_full(d, millimetres(51.0)), invalid_input);
  CHECK_THROWS_AS((void)tp::part_full(d, millimetres(0.0)), invalid_input);
  CHECK_THROWS_AS((void)tp::part_full_flow(tp::part_full_drain{.bore = d, .slope = 0.0}, millimetres(10.0)),
                  invalid_input);
  CHECK_THROWS_AS(
      (void)tp::part_full_flow(tp::part_full_drain{.bore = d, .slope = 0.1, .manning_n = 0.0}, millimetres(10.0)),
      invalid_input);
  CHECK_THROWS_AS((void)tp::flow_at_drain_number(d, -0.1), invalid_input);
  check_edges(tp::stack_share_limits,
              [&](double r, range_policy policy) { return tp::stack_capacity(d, fraction(r), policy); });
}

TEST_CASE("drain: a pipe is taken as smooth plastic unless said otherwise") {
  // Full, 1 m: R = 0.25 m, V = 0.25^(2/3) sqrt(0.01)/0.010 = 3.9685026 m/s.
  const evidence manning{"tankwright::plumbing::part_full_flow", kind::identity, "Manning by hand, n = 0.010"};
  const tp::part_full_drain level{.bore = tp::pipe_bore{metres(1.0)}, .slope = 0.01};
  TW_CHECK(manning, tp::part_full_flow(level, metres(1.0)).velocity, metres_per_second(3.9685026), relative(1e-7));
}

TEST_CASE("drain: the most a level drain carries, it carries; more is refused") {
  // theta = 2 acos(1 - 2 x 0.93818): there the flow is the most, and the depth is found up to it.
  const evidence most{"tankwright::plumbing::part_full_depth", kind::property, "up to the most flow"};
  const tp::part_full_drain level{.bore = tp::pipe_bore{metres(1.0)}, .slope = 0.01};
  const double q = tp::part_full_flow(level, metres(0.93818)).flow.value();
  TW_CHECK(most, tp::part_full_depth(level, cubic_metres_per_second(q)), metres(0.93818), relative(1e-12));
  TW_CHECK(most, tp::part_full_depth(level, cubic_metres_per_second(q * (1.0 - 1e-7))), metres(0.93818),
           relative(1e-3));
  CHECK_THROWS_AS((void)tp::part_full_depth(level, cubic_metres_per_second(q * (1.0 + 1e-12))), out_of_range);
}

TEST_CASE("drain: at the limit of a mode the next one begins, and what it carries is not too much") {
  const evidence limit{"tankwright::plumbing::drain_mode_for", kind::property, "below 0.3, below 1, up to what counts"};
  const auto mode = [](const tp::drain& d, double q) {
    return tp::drain_mode_for(d, flow_rate::from_value(q), sea).mode;
  };
  const auto up = [](double q) { return std::nextafter(q, 1.0); };
  const auto down = [](double q) { return std::nextafter(q, 0.0); };
  const tp::drain d = drain("main", 40.9, 100.0);
  const double most = tp::drain_mode_for(d, flow_rate{}, sea).carries.central.value();
  TW_HOLDS(limit, mode(d, most) == tp::drain_mode::full);
  TW_HOLDS(limit, mode(d, up(most)) == tp::drain_mode::overloaded);
  // Flows of which J* is 0.3 and 1 to the last digit: some bore near this one has them.
  for (const double number : {0.3, 1.0}) {
    int found = 0;
    for (double bore = 40.0; bore < 42.0; bore += 0.01) {
      const tp::drain one = drain("main", bore, 100.0);
      const double q = tp::flow_at_drain_number(one.pipe.bore, number).value();
      if (tp::drain_number(one.pipe.bore, flow_rate::from_value(q)) != number) continue;
      ++found;
      TW_HOLDS(limit, mode(one, q) == (number < 1.0 ? tp::drain_mode::surging : tp::drain_mode::full));
      TW_HOLDS(limit,
               mode(one, down(down(q))) == (number < 1.0 ? tp::drain_mode::self_venting : tp::drain_mode::surging));
    }
    REQUIRE(found > 0);
  }
}

TEST_CASE("drain: what the others carry exactly they hold, and a last digit more they do not") {
  const evidence left{"tankwright::plumbing::one_drain_blocked", kind::property, "up to what the others carry"};
  // Little water over the tops: they let in less than the pipes carry quietly. Much of it: more.
  const std::vector<tp::drain> shallow{drain("a", 40.9, 10.0), drain("b", 40.9, 10.0), drain("c", 40.9, 12.0)};
  const std::vector<tp::drain> deep{drain("a", 40.9, 90.0), drain("b", 40.9, 90.0), drain("c", 40.9, 100.0)};
  for (const auto& drains : {shallow, deep}) {
    const auto first = tp::one_drain_blocked(drains, flow_rate{}, sea);
    CHECK(first.caution.text == tp::drain_caution.text);
    const auto& least = first.cases[2];  // the best of them is shut
    const flow_rate quiet = std::min(least.self_venting, least.surely);
    const auto more = [](flow_rate q) { return flow_rate::from_value(std::nextafter(q.value(), 1.0)); };
    const auto at = [&](flow_rate q) { return tp::one_drain_blocked(drains, q, sea); };
    TW_HOLDS(left, at(least.surely).holds);
    TW_HOLDS(left, at(least.surely).cases[2].holds);
    TW_HOLDS(left, !at(more(least.surely)).holds);
    TW_HOLDS(left, !at(more(least.surely)).cases[2].holds);
    TW_HOLDS(left, at(quiet).cases[2].quiet);
    TW_HOLDS(left, !at(more(quiet)).cases[2].quiet);
  }
  CHECK(tp::one_drain_blocked(shallow, flow_rate{}, sea).cases[2].surely <
        tp::one_drain_blocked(shallow, flow_rate{}, sea).cases[2].self_venting);
  CHECK(tp::one_drain_blocked(deep, flow_rate{}, sea).cases[2].surely >
        tp::one_drain_blocked(deep, flow_rate{}, sea).cases[2].self_venting);
}
