// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <numbers>
#include <tankwright/decisions/plumbing/one_pump_stops.hpp>
#include <tankwright/decisions/plumbing/return_flow.hpp>
#include <tankwright/decisions/power_cut/dry_floor.hpp>
#include <tankwright/plan/validate.hpp>

#include "decisions/asked.hpp"
#include "plan/basin.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

constexpr const char* answer = "tankwright::decisions::answer_one_pump_stops";
const evidence alone{answer, kind::identity, "the same plan with the other pump alone"};
const evidence by_hand{answer, kind::identity, "worked by hand"};
constexpr double pi = std::numbers::pi, g = 9.80665;

const key_texts second_pump = {{"plumbing.further_pump[1].label", "second"},
                               {"plumbing.further_pump[1].flows", "0 L/h, 5000 L/h, 10000 L/h"},
                               {"plumbing.further_pump[1].heads", "4 m, 3 m, 1 m"}};

/// Another return like the first, which the second pump feeds.
plan::build each_with_its_own() {
  plan::build build = basin();
  give(build, second_pump);
  give(build, {{"plumbing.return[2].label", "other return"},
               {"plumbing.return[2].bore", "57 mm"},
               {"plumbing.return[2].length", "1.6 m"},
               {"plumbing.return[2].loss", "5"},
               {"plumbing.return[2].below_edge", "20 mm"},
               {"plumbing.return[2].fed_by", "second"}});
  return build;
}

/// What runs back through a pipe of 57 mm and a standing pump under a height: friction by Colebrook's law by repeated
/// substitution, losses of 5 (the pipe's, with its end in the sump 1 more) and 1.3 of the pump's best head.
double runs_back(double height, double best_flow, double best_head, double viscosity) {
  const double d = 0.057, length = 1.6, area = 0.25 * pi * d * d, roughness = 1.5e-6;
  double q = 1e-3, f = 0.02;
  for (int i = 0; i < 200; ++i) {
    const double re = q / area * d / viscosity;
    for (int j = 0; j < 50; ++j) {
      const double x = -2.0 * std::log10(roughness / (3.7 * d) + 2.51 / (re * std::sqrt(f)));
      f = 1.0 / (x * x);
    }
    const double pipe = (f * length / d + 5.0 + 1.0) / (2.0 * g * area * area);
    q = std::sqrt(height / (pipe + 1.3 * best_head / (best_flow * best_flow)));
  }
  return q;
}

}  // namespace

TEST_CASE("one pump stops: with check valves what is left is the other pump alone") {
  plan::build build = each_with_its_own();
  give(build, {{"plumbing.pump.check_valve", "true"}, {"plumbing.further_pump[1].check_valve", "true"}});
  CHECK(plan::validate(build).empty());
  const auto f = answered(decisions::one_pump_stops, build);
  const double one = number(answered(decisions::return_flow, basin()), "total");
  TW_CHECK(alone, number(f, "over", "pump stands"), one, relative(1e-9));
  TW_CHECK(alone, number(f, "over", "second stands"), one, relative(1e-9));
  TW_CHECK(alone, number(f, "all"), 2.0 * one, relative(1e-9));
  CHECK(f.verdict == verdict::holds);
  CHECK(f.note.find("return when pump stands") != std::string::npos);
}

TEST_CASE("one pump stops: without a check valve water runs back through it, and may take all") {
  const plan::build build = each_with_its_own();
  const auto f = answered(decisions::one_pump_stops, build);
  const double one = number(answered(decisions::return_flow, basin()), "total");
  const double back = number(f, "back", "second stands");
  TW_CHECK(by_hand, number(f, "over", "second stands"), one - back, relative(1e-9));
  // The best point of the pump is where flow times head is most, looked for in small steps. The display stands 1.2 m
  // over the sump.
  double best_flow = 0.0, best_head = 0.0;
  const auto in = plan::inputs_of(*build.plumbing);
  for (int step = 0; step < 10000; ++step) {
    const double q = 10.0 / 3600.0 * step / 10000.0;
    const double h = plumbing::head_at(in.circuit.pumps.back().curve, flow_rate::from_value(q)).head->value();
    if (q * h > best_flow * best_head) best_flow = q, best_head = h;
  }
  TW_CHECK(by_hand, back, runs_back(1.2, best_flow, best_head, 0.96e-3 / 1023.3), relative(5e-3));
  // A pump that runs slowly brings less than runs back: the display falls.
  const auto slow = answered(decisions::one_pump_stops, build, {{"plumbing.pump.speed", "0.6"}});
  judged(slow, verdict::does_not_hold, "over", "second stands");
  CHECK(slow.happens.find("falls") != std::string::npos);
  // A check valve cures it, at the pump or in the return of its own, but for the day when it sticks.
  const auto in_pipe = answered(decisions::one_pump_stops, build,
                                {{"plumbing.pump.speed", "0.6"}, {"plumbing.return[2].check_valve", "true"}});
  CHECK(number(in_pipe, "over", "second stands") > 0.0);
  const auto held = answered(decisions::one_pump_stops, build,
                             {{"plumbing.pump.speed", "0.6"}, {"plumbing.further_pump[1].check_valve", "true"}});
  CHECK(number(held, "over", "second stands") > 0.0);
  TW_CHECK(by_hand, number(held, "stuck", "second stands"), number(slow, "over", "second stands"), relative(1e-9));
}

TEST_CASE("one pump stops: two into one pipe, and through the one that stands") {
  plan::build build = basin();
  give(build, second_pump);
  const auto both = answered(decisions::return_flow, build);
  const double one = number(answered(decisions::return_flow, basin()), "total");
  CHECK(number(both, "total") > one);
  CHECK(number(both, "total") < 2.0 * one);  // the pipe resists more
  const auto held = answered(decisions::one_pump_stops, build,
                             {{"plumbing.pump.check_valve", "true"}, {"plumbing.further_pump[1].check_valve", "true"}});
  TW_CHECK(alone, number(held, "over", "pump stands"), one, relative(1e-9));
  // A check valve in the pipe that both use holds nothing back while one of them runs; one in the only return does not
  // either.
  const auto riser = answered(decisions::one_pump_stops, build, {{"plumbing.return[1].check_valve", "true"}});
  const auto open = answered(decisions::one_pump_stops, build);
  TW_CHECK(by_hand, number(riser, "over", "pump stands"), number(open, "over", "pump stands"), relative(1e-9));
  CHECK(number(open, "over", "pump stands") < number(held, "over", "pump stands"));
  TW_CHECK(by_hand, number(open, "over", "pump stands"), number(held, "stuck", "pump stands"), relative(1e-9));
  CHECK(asked(decisions::one_pump_stops, basin()).empty());
}

TEST_CASE("several pumps: a power cut empties the pipes of all of them") {
  const evidence pipes{"tankwright::plan::inputs_of", kind::identity, "worked by hand"};
  const auto build = each_with_its_own();
  const auto in = plan::inputs_of(*build.plumbing);
  REQUIRE(in.returns.size() == 2);
  REQUIRE(in.circuit.pumps.size() == 2);
  const decisions::situation s{build};
  REQUIRE(s.plumbing().cut);
  TW_CHECK(pipes, s.plumbing().cut->falls.return_pipes, litres(2.0 * 1000.0 * 0.25 * pi * 0.057 * 0.057 * 1.6),
           relative(1e-9));
}

TEST_CASE("several pumps: trunks side by side share the flow, and belong to the return pump alone") {
  plan::build build = each_with_its_own();
  give(build, {{"plumbing.trunk.bore", "40 mm"},
               {"plumbing.trunk.length", "1 m"},
               {"plumbing.trunk.loss", "2"},
               {"plumbing.trunk.side_by_side", "2"},
               {"plumbing.further_pump[1].check_valve", "true"},
               {"plumbing.pump.check_valve", "true"}});
  const decisions::situation s{build};
  const auto& solved = s.plumbing().solved().central;
  const evidence half{"tankwright::plan::inputs_of", kind::identity, "equal pipes share equally"};
  TW_CHECK(half, solved.run("trunk 1").flow, 0.5 * solved.outlet("return").flow, relative(1e-9));
  TW_CHECK(half, solved.run("trunk 2").flow, 0.5 * solved.outlet("return").flow, relative(1e-9));
  const auto in = plan::inputs_of(*build.plumbing);
  REQUIRE(in.shared_pipes.size() == 1);
  CHECK(in.shared_pipes.front().side_by_side == 2);
  CHECK(in.shared_pipes.front().returns == std::vector<std::string>{"return"});
  CHECK(in.shared_pipes.front().check_valve);  // that of its pump
  CHECK(in.returns.back().check_valve);
}

TEST_CASE("several pumps: what cannot be says so") {
  const auto mistakes = [](key_texts changes) {
    plan::build build = each_with_its_own();
    give(build, changes);
    std::string all;
    for (const auto& m : plan::validate(build)) all += m.path + " " + m.reason + "; ";
    return all;
  };
  CHECK(mistakes({}) == "");
  CHECK(mistakes({{"plumbing.return[2].fed_by", "third"}}) ==
        "plumbing.return[other return].fed_by third is not the label of a pump; ");
  const auto misspelt = mistakes({{"plumbing.return[2].fed_by", "secnod"}});
  CHECK(misspelt == "plumbing.return[other return].fed_by secnod is not the label of a pump; did you mean second?; ");
  CHECK(mistakes({{"plumbing.return[1].fed_by", "second"}}) ==
        "plumbing.pump feeds no return: each of them names another pump; ");
  CHECK(mistakes({{"plumbing.further_pump[1].label", "pump"}})
            .find("plumbing.further_pump[pump].label pump is the "
                  "label of two pumps") == 0);
  CHECK(mistakes({{"plumbing.further_pump[1].heads", "4 m, 3 m, 3 m"}}).find("is not below") != std::string::npos);
  plan::build build = each_with_its_own();
  plan::clear(build, "plumbing.pump");
  const auto none = plan::validate(build);
  REQUIRE(none.size() == 1);
  CHECK(none.front().path == "plumbing.further_pump");
}
