// SPDX-License-Identifier: BSL-1.0
#include <string>
#include <tankwright/plumbing/circuit_tuning.hpp>
#include <vector>

#include "circuits.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twp = tankwright::plumbing;

namespace {

const evidence valve_back{"tankwright::plumbing::valve_for_flow", kind::identity,
                          "the circuit solved with the valve that was found"};
const evidence speed_back{"tankwright::plumbing::speed_for_flow", kind::identity,
                          "the circuit solved at the speed that was found"};
const evidence ranked{"tankwright::plumbing::rank_pumps", kind::identity, "each candidate solved on its own"};
const evidence order{"tankwright::plumbing::rank_pumps", kind::property, "order of merit"};

}  // namespace

TEST_CASE("circuit tuning: reference table") {
  const auto rpm = [](const reference_row& row) {
    const twp::circuit c = schaschke_9_10();
    const auto full = twp::operating_point(c, reference_water).run("main").flow;
    const auto set = twp::speed_for_flow(c, reference_water,
                                         {.pump = "P1", .through = {.run = "main", .flow = row["reduce"] * full}});
    return set.speed->value() * row["N"];
  };
  check_rows(reference_rows("plumbing/circuit_tuning.csv"), {{"tankwright::plumbing::speed_for_flow", rpm}});
}

TEST_CASE("circuit tuning: the valve that was found gives the flow") {
  for (const char* name : {"E2", "E3", "E5", "E8"}) {
    twp::circuit c = reference_circuit(name);
    const auto open = twp::operating_point(c, reference_water).run("A").flow;
    c.runs[1].valve = twp::flow_coefficient::from_kv(1.0);  // where it stands now does not matter
    for (const double share : {0.02, 0.3, 0.75, 0.999}) {
      const auto set = twp::valve_for_flow(c, reference_water, {.run = "A", .flow = share * open});
      TW_CHECK(valve_back, set.wide_open, open, relative(1e-12));
      twp::circuit tuned = c;
      tuned.runs[1].valve = set.valve;
      TW_CHECK(valve_back, twp::operating_point(tuned, reference_water).run("A").flow, share * open, relative(1e-8));
    }
    const auto too_much = twp::valve_for_flow(c, reference_water, {.run = "A", .flow = 1.001 * open});
    TW_HOLDS(valve_back, !too_much.valve);
    const auto just = twp::valve_for_flow(c, reference_water, {.run = "A", .flow = open});
    TW_HOLDS(valve_back, just.valve && in_kv(*just.valve) > 1000.0);
  }
}

TEST_CASE("circuit tuning: the speed that was found gives the flow") {
  const twp::circuit c = reference_circuit("E2");
  const auto full = twp::operating_point(c, reference_water).run("B").flow;
  for (const double share : {0.05, 0.5, 0.9, 1.0}) {
    const auto set =
        twp::speed_for_flow(c, reference_water, {.pump = "P1", .through = {.run = "B", .flow = share * full}});
    REQUIRE(set.speed);
    twp::circuit slow = c;
    slow.pumps[0].speed = *set.speed;
    TW_CHECK(speed_back, twp::operating_point(slow, reference_water).run("B").flow, share * full, relative(1e-7));
    TW_HOLDS(speed_back, set.at_setting == twp::pump_state::running);
    TW_CHECK(speed_back, set.at_fastest, full, relative(1e-12));
  }
  const auto slow =
      twp::speed_for_flow(c, reference_water, {.pump = "P1", .through = {.run = "B", .flow = 1.1 * full}});
  TW_HOLDS(speed_back, !slow.speed && slow.at_fastest == full);
  const auto fast = twp::speed_for_flow(
      c, reference_water,
      {.pump = "P1", .through = {.run = "B", .flow = 1.1 * full}, .fastest = twp::speed_ratio{1.5}});
  TW_HOLDS(speed_back, fast.speed && fast.speed->value() > 1.0);
}

TEST_CASE("circuit tuning: pumps in order of merit") {
  const twp::circuit c = reference_circuit("E2");
  const std::vector<twp::pump_curve> candidates{
      three("too small", 3.0, 4.0, 2.2, 7.0, 0.3), three("large", 8.0, 11.0, 6.0, 20.0, 1.0),
      three("right", 6.0, 8.0, 4.5, 14.0, 1.0), three("cannot lift", 1.9, 8.0, 1.2, 14.0, 0.2),
      three("off its curve", 9.0, 5.0, 8.7, 9.2, 8.0)};
  const auto flow = cubic_metres_per_hour(9.0);
  const auto ranking = twp::rank_pumps(
      c, reference_water, {.pump = "P1", .through = {.run = "trunk", .flow = flow}, .candidates = candidates});
  std::vector<std::string> labels;
  for (const auto& pump : ranking.pumps) labels.push_back(pump.label);
  TW_HOLDS(order, (labels == std::vector<std::string>{"right", "large", "off its curve", "too small", "cannot lift"}));
  for (const auto& pump : ranking.pumps) {
    for (const auto& curve : candidates) {
      if (curve.label() != pump.label) continue;
      twp::circuit alone = c;
      alone.pumps[0].curve = curve;
      const auto s = twp::operating_point(alone, reference_water);
      TW_CHECK(ranked, pump.flow, s.run("trunk").flow, relative(1e-14));
      TW_CHECK(ranked, pump.head, s.pump("P1").head, relative(1e-14));
      TW_HOLDS(ranked, pump.state == s.pump("P1").state && pump.reaches == (pump.flow >= flow));
      TW_CHECK(ranked, pump.share_of_curve, s.pump("P1").flow / curve.end_flow(), relative(1e-14));
    }
  }
  CHECK(ranking.caution.text.find("drains") != std::string_view::npos);
}

TEST_CASE(
    "circuit tuning: of equal pumps the first stays first; what just reaches the flow reaches it; the share is of the "
    "speed") {
  twp::circuit c = reference_circuit("E2");
  const std::vector<twp::pump_curve> candidates{
      three("one", 6.0, 8.0, 4.5, 14.0, 1.0), three("small", 3.0, 4.0, 2.2, 7.0, 0.3),
      three("two", 6.0, 8.0, 4.5, 14.0, 1.0), three("tiny", 3.0, 4.0, 2.2, 7.0, 0.3)};
  c.pumps[0].speed = twp::speed_ratio{0.9};
  const auto rank = [&](flow_rate flow) {
    return twp::rank_pumps(c, reference_water,
                           {.pump = "P1", .through = {.run = "trunk", .flow = flow}, .candidates = candidates});
  };
  twp::circuit alone = c;
  alone.pumps[0].curve = candidates[0];
  const auto solved = twp::operating_point(alone, reference_water);
  const auto just = solved.run("trunk").flow;
  const auto ranking = rank(just);
  std::vector<std::string> labels;
  for (const auto& pump : ranking.pumps) labels.push_back(pump.label);
  TW_HOLDS(order, (labels == std::vector<std::string>{"one", "two", "small", "tiny"}));
  TW_HOLDS(order, ranking.pumps[0].reaches && !ranking.pumps[2].reaches);
  TW_HOLDS(order, !rank(just * (1.0 + 1e-9)).pumps[0].reaches);
  // The curve slides along with the speed.
  TW_CHECK(ranked, ranking.pumps[0].share_of_curve, solved.pump("P1").flow / (0.9 * candidates[0].end_flow()),
           relative(1e-13));
}

TEST_CASE("circuit tuning: wishes that make no sense are refused") {
  const twp::circuit c = reference_circuit("E2");
  const auto message = [](auto call) {
    try {
      call();
    } catch (const invalid_input& e) {
      return std::string{e.what()};
    }
    return std::string{"nothing thrown"};
  };
  CHECK(message([&] { (void)twp::valve_for_flow(c, reference_water, {.run = "C", .flow = litres_per_hour(1.0)}); }) ==
        "tankwright::plumbing::valve_for_flow: C is no run of this circuit");
  CHECK(message([&] { (void)twp::valve_for_flow(c, reference_water, {.run = "A", .flow = litres_per_hour(0.0)}); }) ==
        "tankwright::plumbing::valve_for_flow: A: wanted flow = 0 m3/s is not possible; expected more than 0 m3/s");
  CHECK(message([&] {
          (void)twp::speed_for_flow(c, reference_water,
                                    {.pump = "P9", .through = {.run = "A", .flow = litres_per_hour(1.0)}});
        }) == "tankwright::plumbing::speed_for_flow: P9 is no pump of this circuit");
  CHECK(message([&] {
          (void)twp::rank_pumps(c, reference_water,
                                {.pump = "P1", .through = {.run = "A", .flow = litres_per_hour(1.0)}});
        }) == "tankwright::plumbing::rank_pumps: P1 has no candidates to choose from");
  twp::circuit two = reference_circuit("E5");
  CHECK(message([&] {
          (void)twp::speed_for_flow(two, reference_water,
                                    {.pump = "P2", .through = {.run = "A", .flow = litres_per_hour(1.0)}});
        }) == "tankwright::plumbing::speed_for_flow: A gets the wanted flow without this pump");
}
