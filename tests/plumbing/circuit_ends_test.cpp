// SPDX-License-Identifier: BSL-1.0
// Circuits: the ends of every argument, by the name of the part that has it, and exits in both directions by hand.
#include <cmath>
#include <tankwright/plumbing/circuit.hpp>
#include <tankwright/plumbing/circuit_tuning.hpp>
#include <tankwright/plumbing/power_cut_transient.hpp>

#include "circuits.hpp"
#include "support/edges.hpp"
#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twp = tankwright::plumbing;

namespace {

template <class Change>
twp::circuit_solution with(Change change, const char* name = "E2") {
  twp::circuit c = reference_circuit(name);
  change(c);
  return twp::operating_point(c, reference_water, twp::losses::central, extrapolate);
}
estimate<twp::loss_coefficient> loss(double low, double central, double high) {
  return {twp::loss_coefficient{low}, twp::loss_coefficient{central}, twp::loss_coefficient{high}, ""};
}
estimate<twp::head_ratio> ratio(double x) { return {twp::head_ratio{x}, twp::head_ratio{x}, twp::head_ratio{x}, ""}; }
twp::flow_coefficient kv(double x) { return twp::flow_coefficient::from_kv(x); }

}  // namespace

TEST_CASE("circuit ends: sources, outlets, pumps") {
  check_edges("sump: level", "m", {-1e4, 1e4}, [](double x) {
    return with([x](auto& c) {
      c.sources[0].level = metres(x);
      c.outlets[0].level = c.outlets[1].level = metres(x);
    });
  });
  check_edges("T1: level", "m", {-1e4, 1e4}, [](double x) {
    return with([x](auto& c) {
      c.outlets[0].level = metres(x);
      c.outlets[1].level = c.sources[0].level = metres(x < -1e4 ? -1e4 : x > 1e4 ? 1e4 : x);
    });
  });
  check_edges("T1: exit loss", "", {0.0},
              [](double x) { return with([x](auto& c) { c.outlets[0].exit = loss(x, x, x); }); });
  check_edges("T1: opening", "m", {1e-4, 20.0}, [](double x) {
    return with([x](auto& c) { c.outlets[0].exit = loss(1, 1, 1), c.outlets[0].opening = twp::pipe_bore{metres(x)}; });
  });
  CHECK_THROWS_WITH_AS((void)with([](auto& c) { c.outlets[0].exit = loss(-1.1e6, 1, 1); }),
                       doctest::Contains("T1: loss coefficient = -1100000"), invalid_input);
  CHECK_THROWS_WITH_AS((void)with([](auto& c) { c.outlets[0].exit = loss(1, 1, 1.1e15); }),
                       doctest::Contains("T1: loss coefficient = 1.1e+15"), invalid_input);
  check_edges("P1: speed", "", {0.0, 10.0},
              [](double x) { return with([x](auto& c) { c.pumps[0].speed = twp::speed_ratio{x}; }); });
  check_edges("P1: loss of the idle pump", "", {1e-3, 1e3},
              [](double x) { return with([x](auto& c) { c.pumps[0].idle.backwards = ratio(x); }); });
  check_edges("P1: loss of the idle pump", "", {1e-3, 1e3},
              [](double x) { return with([x](auto& c) { c.pumps[0].idle.forwards = ratio(x); }); });
  CHECK_THROWS_WITH_AS(
      (void)with([](auto& c) {
        c.pumps[0].idle.backwards = {twp::head_ratio{1e-4}, twp::head_ratio{1}, twp::head_ratio{2}, ""};
      }),
      doctest::Contains("P1: loss of the idle pump"), invalid_input);
  check_edges("P1: Kv of the check valve's leak", "m3/h at 1 bar", {0.0, 1e8},
              [](double x) { return with([x](auto& c) { c.pumps[0].check_valve = twp::check_valve{kv(x)}; }); });
  const auto words = [](std::string_view what, auto change) {
    CAPTURE(what);
    CHECK_THROWS_WITH_AS((void)with(change), doctest::Contains(std::string{what}.c_str()), invalid_input);
  };
  words("a source or outlet needs a label", [](auto& c) { c.outlets[0].label = ""; });
  words("a source or outlet needs a label", [](auto& c) { c.sources[0].label = ""; });
  words("sump is the label of two sources or outlets", [](auto& c) { c.outlets[0].label = "sump"; });
  words("B needs both", [](auto& c) { c.runs[2].to = ""; });
  words("P1 needs both", [](auto& c) { c.pumps[0].from = ""; });
  words("P1 begins and ends at 'J1'", [](auto& c) { c.pumps[0].from = "J1"; });
  words("pump needs a label", [](auto& c) { c.pumps[0].label = ""; });
  words("P1 is the label of two pumps", [](auto& c) { c.pumps.push_back(c.pumps[0]); });
  words("P1 is set against outlet 'T1'", [](auto& c) { c.pumps[0].from = "T1"; });
}

TEST_CASE("circuit ends: what is asked of a circuit is refused in its own name") {
  const twp::circuit c = reference_circuit("E2");
  const auto q = [](double x) { return cubic_metres_per_second(x); };
  const std::vector<twp::pump_curve> curves{three("P", 6.0, 8.0, 4.5, 14.0, 1.0)};
  const auto speed = [&](std::string pump, std::string run, double flow, double fastest = 1.0) {
    return twp::speed_for_flow(
        c, reference_water,
        {.pump = pump, .through = {.run = run, .flow = q(flow)}, .fastest = twp::speed_ratio{fastest}});
  };
  const auto rank = [&](std::string pump, std::string run, double flow) {
    return twp::rank_pumps(c, reference_water,
                           {.pump = pump, .through = {.run = run, .flow = q(flow)}, .candidates = curves});
  };
  const auto refused = [](std::string_view what, auto call) {
    CAPTURE(what);
    CHECK_THROWS_WITH_AS((void)call(), doctest::Contains(("tankwright::plumbing::" + std::string{what}).c_str()),
                         invalid_input);
  };
  for (const double bad : {0.0, -1.0, std::nan(""), 1.1e15}) {
    refused("valve_for_flow: A: wanted flow",
            [&] { return twp::valve_for_flow(c, reference_water, {.run = "A", .flow = q(bad)}); });
    refused("speed_for_flow: A: wanted flow", [&] { return speed("P1", "A", bad); });
    refused("speed_for_flow: P1: fastest speed", [&] { return speed("P1", "A", 1e-4, bad); });
    refused("rank_pumps: A: wanted flow", [&] { return rank("P1", "A", bad); });
  }
  refused("speed_for_flow: C is no run", [&] { return speed("P1", "C", 1e-4); });
  refused("rank_pumps: C is no run", [&] { return rank("P1", "C", 1e-4); });
  refused("rank_pumps: P9 is no pump", [&] { return rank("P9", "A", 1e-4); });
  auto bad_valve = c;
  bad_valve.runs[1].valve = kv(-1.0);  // the valve that is to be set must be one already
  refused("valve_for_flow: A: Kv of the valve",
          [&] { return twp::valve_for_flow(bad_valve, reference_water, {.run = "A", .flow = q(1e-4)}); });
  for (const double tiny : {1e-12, 1e-17, 1e-25}) {
    CHECK_THROWS_WITH_AS((void)twp::valve_for_flow(c, reference_water, {.run = "A", .flow = q(tiny)}),
                         doctest::Contains("tankwright::plumbing::valve_for_flow: A: flow"), out_of_range);
  }
  // In the order of merit: those that reach it, the smallest first; then off their curve; then the largest of the others.
  const std::vector<twp::pump_curve> many{three("c", 4.0, 6.0, 3.0, 10.0, 0.5), three("b", 7.0, 9.0, 5.0, 16.0, 1.0),
                                          three("a", 6.5, 8.5, 4.8, 15.0, 1.0), three("d", 3.0, 4.0, 2.2, 7.0, 0.3)};
  const auto ranking = twp::rank_pumps(
      c, reference_water,
      {.pump = "P1", .through = {.run = "trunk", .flow = cubic_metres_per_hour(9.3)}, .candidates = many});
  for (std::size_t i = 1; i < ranking.pumps.size(); ++i) {
    const auto &x = ranking.pumps[i - 1], &y = ranking.pumps[i];
    CHECK((x.reaches || !y.reaches));
    if (x.reaches == y.reaches) CHECK((x.reaches ? x.flow < y.flow : x.flow > y.flow));
  }
  CHECK(ranking.pumps.size() == 4);
}

TEST_CASE("circuit ends: between two tanks the exit is where the water leaves") {
  // A run of 2 m and 30 mm between two tanks, no pump: head loss and the exit's velocity heads make the difference.
  const evidence energy{"tankwright::plumbing::operating_point", kind::identity, "energy from surface to surface"};
  const auto between = [](double level_a, double level_b) {
    twp::circuit c{.runs = {run("pipe", "a", "b", 2.0, 30.0, 1.5)},
                   .outlets = {outlet("a", level_a), outlet("b", level_b)}};
    c.outlets[0].exit = loss(2, 2, 2), c.outlets[1].exit = loss(1, 1, 1);
    c.outlets[1].opening = twp::pipe_bore{millimetres(25.0)};
    return twp::operating_point(c, reference_water).run("pipe").flow;
  };
  twp::pipe_run bare = run("pipe", "a", "b", 2.0, 30.0, 1.5);
  const auto lost = [&](flow_rate q, double k) {
    const double v = twp::mean_velocity(q, bare.bore).value();
    return twp::head_loss(bare, q, reference_water).value() + k * v * std::fabs(v) / (2 * 9.80665);
  };
  const flow_rate down = between(1.0, 0.4), up = between(0.4, 1.0);
  TW_CHECK(energy, lost(down, std::pow(30.0 / 25.0, 4)), 0.6, relative(1e-9));
  TW_CHECK(energy, lost(up, 2.0), -0.6, relative(1e-9));
}

TEST_CASE("circuit ends: a flow beyond the formula of friction, and runs without any resistance") {
  // 20 m3/s through 0.2 m: Re = 4 Q/(pi d nu) = 1.2e8.
  twp::circuit c{.sources = {{.label = "sea", .level = metres(0.0)}},
                 .pumps = {{.label = "P",
                            .from = "sea",
                            .to = "J",
                            .curve = twp::curve_from_one_point(
                                "P", {.flow = cubic_metres_per_second(20.0), .head = metres(60000.0)})}},
                 .runs = {run("main", "J", "end", 0.1, 200.0, 1.0)},
                 .outlets = {outlet("end", 0.0)}};
  CHECK_THROWS_WITH_AS((void)twp::operating_point(c, reference_water), doctest::Contains("main: Reynolds number"),
                       out_of_range);
  CHECK_NOTHROW((void)twp::operating_point(c, reference_water, twp::losses::central, extrapolate));
  // Between two tanks one exit may be without loss; a run without any other resistance then has none one way.
  const auto between = [](double metre, double k_a, double k_b) {
    twp::circuit two{.runs = {run("pipe", "a", "b", metre, 30.0, 0.0)},
                     .outlets = {outlet("a", 1.0), outlet("b", 0.5)}};
    two.outlets[0].exit = loss(k_a, k_a, k_a), two.outlets[1].exit = loss(k_b, k_b, k_b);
    return twp::operating_point(two, reference_water).run("pipe").flow.value();
  };
  for (const auto& [k_a, k_b] : {std::pair{0.0, 0.0}, {1.0, 0.0}, {0.0, 1.0}}) {
    CHECK_THROWS_WITH_AS((void)between(0.0, k_a, k_b), doctest::Contains("pipe resists nothing"), invalid_input);
    CHECK(between(0.001, k_a, k_b) > 0.0);
  }
  CHECK(between(0.0, 1.0, 1.0) > 0.0);
  CHECK(between(0.0, 0.001, 0.001) > 0.0);
}

TEST_CASE("circuit ends: courses in time refuse what is no number") {
  twp::power_cut_transient_input in{
      .system = {.display = {.surface = square_metres(1.0), .edge = twp::standpipe{twp::pipe_bore{metres(0.1)}}},
                 .sump = {.rim = metres(0.4),
                          .running_level = metres(0.1),
                          .chambers = {{.label = "pump", .horizontal_area = square_metres(0.5)}}},
                 .returns =
                     {{.label = "A",
                       .flow = litres_per_hour(6000.0),
                       .outlet_below_edge = metres(0.01),
                       .pipe = twp::pipe_run{.label = "A", .bore = twp::pipe_bore{metres(0.03)}, .length = metres(2)}}},
                 .edge_above_floor = metres(1.5)},
      .until = seconds(10.0),
      .sample_every = seconds(1.0)};
  CHECK(twp::power_cut_transient(in).time.size() == 11);
  const auto bad = [&](std::string_view what, auto change) {
    auto one = in;
    change(one);
    CHECK_THROWS_WITH_AS((void)twp::power_cut_transient(one), doctest::Contains(std::string{what}.c_str()),
                         invalid_input);
  };
  bad("power_cut_transient: until", [](auto& x) { x.until = seconds(0.0); });
  bad("power_cut_transient: sample_every", [](auto& x) { x.sample_every = seconds(0.0); });
  bad("power_cut_transient: number of samples", [](auto& x) { x.sample_every = seconds(0.99e-4); });
}

TEST_CASE("circuit ends: water that leaves loses its velocity head unless another exit is given") {
  const twp::circuit_outlet end{.label = "T1", .kind = twp::outlet_kind::submerged, .level = metres(2.0)};
  CHECK(end.exit.low.value() == 1.0);
  CHECK(end.exit.central.value() == 1.0);
  CHECK(end.exit.high.value() == 1.0);
}

TEST_CASE("circuit ends: a part that a solution does not have is refused, with those that it has") {
  const auto solved = with([](auto&) {});
  const std::string here = "tankwright::plumbing::circuit_solution: X is no ";
  CHECK(message_of<invalid_input>([&] { (void)solved.run("X"); }) ==
        here + "run of this circuit; there are 'trunk' 'A' 'B'");
  CHECK(message_of<invalid_input>([&] { (void)solved.outlet("X"); }) ==
        here + "outlet of this circuit; there are 'T1' 'T2'");
  CHECK(message_of<invalid_input>([&] { (void)solved.pump("X"); }) == here + "pump of this circuit; there are 'P1'");
  CHECK(message_of<invalid_input>([&] { (void)solved.source("X"); }) ==
        here + "source of this circuit; there are 'sump'");
}
