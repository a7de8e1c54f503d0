// SPDX-License-Identifier: BSL-1.0
/// @file
/// Circuits as numbers and back: names, states and flags of circuits whose flows are closed formulas.
#include <tankwright/plumbing/detail/circuit_equations.hpp>

#include <cmath>
#include <cstddef>
#include <string>
#include <tankwright/plumbing/circuit.hpp>
#include <vector>

#include "circuits.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twp = tankwright::plumbing;
using twp::detail::circuit_equations;
using twp::detail::name_table;

namespace {

constexpr double pi = 3.141592653589793, g = 9.80665;

const evidence names{"tankwright::plumbing::operating_point", kind::property, "each name has the number it got first"};
const evidence by_hand{"tankwright::plumbing::operating_point", kind::identity,
                       "runs without friction: Q = A sqrt(2 g h/K)"};
const evidence flags{"tankwright::plumbing::operating_point", kind::identity,
                     "velocities from the flow at the end of the curve"};

double opening(double bore_mm) { return pi / 4.0 * bore_mm * bore_mm * 1e-6; }
double through(double bore_mm, double k, double h) { return opening(bore_mm) * std::sqrt(2.0 * g * h / k); }
/// The bore in mm that a flow passes at a velocity.
double bore_for(double q, double v) { return 1000.0 * std::sqrt(4.0 * q / (pi * v)); }

twp::pipe_run pipe(std::string label, std::string from, std::string to, double bore_mm, double k) {
  return run(std::move(label), std::move(from), std::move(to), 0.0, bore_mm, k);
}
twp::pipe_run closed(std::string label, std::string from, std::string to) {
  twp::pipe_run one = pipe(std::move(label), std::move(from), std::move(to), 20.0, 1.0);
  one.valve = twp::flow_coefficient::from_kv(0.0);
  return one;
}
twp::circuit between(double source, double there) {
  return {.sources = {{.label = "S", .level = metres(source)}}, .outlets = {outlet("T", there)}};
}
twp::circuit_solution solved(const twp::circuit& c) { return twp::operating_point(c, reference_water); }

}  // namespace

TEST_CASE("circuit equations: few names and many get their numbers in order, and keep them") {
  for (const std::size_t most : {std::size_t{1}, std::size_t{3}, name_table::few, name_table::few + 1, std::size_t{33},
                                 std::size_t{64}, std::size_t{1000}}) {
    name_table table{most};
    std::vector<std::string> given;
    for (std::size_t i = 0; i < most;
         ++i) {  // they differ in their last letter, in their first, or in how long they are
      const std::string letter(1, static_cast<char>('a' + i % 3)), rest = std::to_string(i / 3);
      given.push_back(i % 2 == 0 ? "pipe " + rest + letter : letter + " pipe " + rest);
    }
    for (int again = 0; again < 2; ++again) {
      for (std::size_t i = 0; i < most; ++i) {
        CHECK(table.number(given[i]) == static_cast<int>(i));
        CHECK(table.size() == (again == 0 ? i + 1 : most));
      }
    }
    for (std::size_t i = most; i-- > 0;) TW_HOLDS(names, table.number(given[i]) == static_cast<int>(i));
    for (std::size_t i = 0; i < most; ++i) TW_HOLDS(names, table.name(i) == given[i]);
  }
}

TEST_CASE("circuit equations: pipes side by side carry what each would alone, be they few or many") {
  for (const int count : {1, 5, 24, 25, 60}) {
    twp::circuit c = between(3.0, 1.0);
    for (int i = 0; i < count; ++i) {
      // Each by a junction of its own, so that there are many names.
      c.runs.push_back(pipe(numbered("to ", i), "S", numbered("J", i), 20.0 + i, 3.0));
      c.runs.push_back(pipe(numbered("from ", i), numbered("J", i), "T", 20.0 + i, 1.0));
    }
    const auto s = solved(c);
    double sum = 0.0;
    for (int i = 0; i < count; ++i) {
      const double q = through(20.0 + i, 4.0, 2.0);
      sum += q;
      TW_CHECK(by_hand, s.run(numbered("to ", i)).flow.value(), q, relative(1e-9));
      TW_CHECK(by_hand, s.junction(numbered("J", i)).head->value(), 1.5, relative(1e-9));  // a quarter of 2 m is left
    }
    TW_CHECK(by_hand, s.delivered.value(), sum, relative(1e-9));
  }
}

TEST_CASE("circuit equations: a label that stands twice is refused among few and among many") {
  for (const int count : {2, 3, 24, 25, 40}) {
    for (const int first : {0, (count - 1) / 2, count - 2}) {
      twp::circuit c = between(3.0, 1.0);
      for (int i = 0; i < count; ++i) c.runs.push_back(pipe(numbered("R", i), "S", "T", 20.0, 3.0));
      CHECK_NOTHROW((void)solved(c));
      c.runs.back().label = numbered("R", first);
      const std::string text =
          "tankwright::plumbing::operating_point: " + numbered("R", first) + " is the label of two runs";
      CHECK_THROWS_WITH_AS((void)solved(c), text.c_str(), invalid_input);
    }
  }
}

TEST_CASE("circuit equations: flow, velocity and loss of a run, forwards, backwards and shut") {
  const double q = through(25.0, 4.0, 2.0);
  for (const double way : {1.0, -1.0}) {
    twp::circuit c = way > 0.0 ? between(3.0, 1.0) : between(1.0, 3.0);
    c.runs = {pipe("A", "S", "T", 25.0, 4.0), closed("B", "S", "T")};
    const auto s = solved(c);
    TW_CHECK(by_hand, s.run("A").flow.value(), way * q, relative(1e-10));
    TW_CHECK(by_hand, s.run("A").velocity.value(), way * q / opening(25.0), relative(1e-10));
    TW_CHECK(by_hand, s.run("A").loss.value(), way * 2.0, relative(1e-14));
    TW_HOLDS(by_hand, s.run("A").reversed == (way < 0.0) && !s.run("A").shut);
    TW_CHECK(by_hand, s.run("B").flow.value(), 0.0, tolerance{});
    TW_CHECK(by_hand, s.run("B").loss.value(), 0.0, tolerance{});
    TW_HOLDS(by_hand, s.run("B").shut && !s.run("B").reversed);
  }
  // A nozzle of half the bore: its exit counts sixteen times on the run, of a third eighty-one times.
  for (const double part : {2.0, 3.0}) {
    twp::circuit c = between(3.0, 1.0);
    c.runs = {pipe("A", "S", "T", 24.0, 4.0)};
    c.outlets[0].exit = twp::known_loss(1.0);
    c.outlets[0].opening = twp::pipe_bore{millimetres(24.0 / part)};
    TW_CHECK(by_hand, solved(c).run("A").flow.value(), through(24.0, 4.0 + std::pow(part, 4.0), 2.0), relative(1e-10));
  }
}

TEST_CASE("circuit equations: junctions that nothing open leads to are cut off, and no others") {
  twp::circuit c = between(3.0, 1.0);
  c.runs = {closed("A", "S", "J"), closed("B", "J", "T")};
  auto s = solved(c);
  TW_HOLDS(by_hand, s.junction("J").state == twp::junction_state::cut_off && !s.junction("J").head);
  c.runs = {pipe("A", "S", "J0", 25.0, 3.0), pipe("B", "J0", "T", 25.0, 1.0), closed("C", "J0", "J1"),
            pipe("D", "J1", "J2", 25.0, 1.0), pipe("E", "T", "J3", 25.0, 1.0)};
  s = solved(c);
  TW_HOLDS(by_hand, s.junction("J0").state == twp::junction_state::joined);
  TW_CHECK(by_hand, s.junction("J0").head->value(), 1.5, relative(1e-9));
  TW_HOLDS(by_hand, s.junction("J1").state == twp::junction_state::cut_off);
  TW_HOLDS(by_hand, s.junction("J2").state == twp::junction_state::cut_off);
  TW_HOLDS(by_hand, s.junction("J3").state == twp::junction_state::dead_end);
  TW_CHECK(by_hand, s.junction("J3").head->value(), 1.0, relative(1e-9));
}

TEST_CASE("circuit equations: more outlets than anything else, and no run to any of them") {
  twp::circuit c = between(3.0, 1.0);
  for (int i = 0; i < 4; ++i) c.outlets.push_back(outlet(numbered("T", i), 1.0));
  const auto s = solved(c);
  TW_HOLDS(by_hand, s.outlets.size() == 5 && s.junctions.empty());
  for (const auto& one : s.outlets) TW_HOLDS(by_hand, one.state == twp::outlet_state::still);
  TW_CHECK(by_hand, s.delivered.value(), 0.0, tolerance{});
}

TEST_CASE("circuit equations: pumps at the end of their curve, slow ones, and ones that stand") {
  // 10 m against 3 m is beyond what half a litre a second loses.
  twp::circuit c = between(10.0, 3.0);
  const auto curve = three("P", 6.0, 1.2, 4.0, 1.8, 1.0);
  c.pumps = {{.label = "P", .from = "S", .to = "J", .curve = curve}};
  c.runs = {pipe("A", "J", "T", 40.0, 1.0)};
  auto s = solved(c);
  TW_HOLDS(by_hand, s.pump("P").state == twp::pump_state::past_end);
  TW_CHECK(by_hand, s.pump("P").flow.value(), 0.5e-3, relative(1e-13));
  TW_CHECK(by_hand, s.pump("P").head.value(), 1.0, relative(1e-13));
  c.pumps[0].speed = twp::speed_ratio{0.0005};
  s = solved(c);
  TW_HOLDS(by_hand, s.pump("P").state == twp::pump_state::past_end);
  TW_CHECK(by_hand, s.pump("P").flow.value(), 0.25e-6, relative(1e-13));
  // It stands: 35 % of its best head at its best flow, and the run, in a row.
  c.pumps[0].speed = twp::speed_ratio{0.0};
  s = solved(c);
  const auto best = twp::best_point(curve);
  const double pump = 0.35 * best.head->value() / (best.flow->value() * best.flow->value());
  const double q = std::sqrt(7.0 / (pump + 1.0 / (2.0 * g * opening(40.0) * opening(40.0))));
  TW_HOLDS(by_hand, s.pump("P").state == twp::pump_state::standing);
  TW_CHECK(by_hand, s.pump("P").flow.value(), q, relative(1e-9));
  TW_CHECK(by_hand, s.pump("P").head.value(), -pump * q * q, relative(1e-9));
  c.sources[0].level = metres(3.0);
  c.outlets[0].level = metres(10.0);  // and back through it
  s = solved(c);
  const double back = 1.3 / 0.35 * pump,
               reversed = std::sqrt(7.0 / (back + 1.0 / (2.0 * g * opening(40.0) * opening(40.0))));
  TW_HOLDS(by_hand, s.pump("P").state == twp::pump_state::reversed);
  TW_CHECK(by_hand, s.pump("P").flow.value(), -reversed, relative(1e-9));
  TW_CHECK(by_hand, s.pump("P").head.value(), back * reversed * reversed, relative(1e-9));
  c.pumps[0].check_valve = twp::check_valve{};  // which holds 7 m
  s = solved(c);
  TW_HOLDS(by_hand, s.pump("P").state == twp::pump_state::standing);
  TW_CHECK(by_hand, s.pump("P").flow.value(), 0.0, tolerance{});
  TW_CHECK(by_hand, s.pump("P").head.value(), 7.0, relative(1e-6));
}

TEST_CASE("circuit equations: runs before a pump have their own limit of velocity, others have not") {
  // Past its end the pump passes 2 L/s: 1.3 m/s is too fast before it (1.2 m/s), not behind it (1.5 m/s).
  const auto p = three("P", 6.0, 5.0, 4.0, 7.2, 1.0);
  const auto flagged = [&](double behind, double before) {
    twp::circuit c = between(0.0, -20.0);
    c.pumps = {{.label = "P", .from = "J1", .to = "J2", .curve = p}};
    c.runs = {pipe("behind", "J2", "J3", bore_for(2e-3, behind), 1.0), pipe("last", "J3", "T", 100.0, 1.0),
              pipe("before", "S", "J1", bore_for(2e-3, before), 1.0)};
    const auto s = solved(c);
    TW_CHECK(flags, s.run("behind").velocity.value(), behind, relative(1e-8));
    return std::pair{s.run("behind").faster_than_recommended, s.run("before").faster_than_recommended};
  };
  TW_HOLDS(flags, flagged(1.3, 1.3) == std::pair(false, true));
  TW_HOLDS(flags, flagged(1.6, 1.1) == std::pair(true, false));
  // A pump that draws from the tank itself has no run before it: not the other run from that tank.
  twp::circuit c = between(0.0, -20.0);
  const double bore = 25.0, k = 20.0 * 2.0 * g / (1.3 * 1.3);
  c.pumps = {{.label = "P", .from = "S", .to = "J", .curve = p}};
  c.runs = {pipe("A", "J", "T", 60.0, 1.0), pipe("B", "S", "T", bore, k)};
  const auto s = solved(c);
  TW_CHECK(flags, s.run("B").velocity.value(), 1.3, relative(1e-9));
  TW_HOLDS(flags, !s.run("B").faster_than_recommended);
}

TEST_CASE("circuit equations: the losses of an idle pump that are asked for are held against their range") {
  twp::circuit c = between(3.0, 1.0);
  c.pumps = {{.label = "P", .from = "S", .to = "J", .curve = three("P", 6.0, 1.2, 4.0, 1.8, 1.0)}};
  c.runs = {pipe("A", "J", "T", 40.0, 1.0)};
  const auto with = [&](bool back, double central, double high, twp::losses which) {
    const estimate<twp::head_ratio> loss{twp::head_ratio{1.0}, twp::head_ratio{central}, twp::head_ratio{high}};
    c.pumps[0].idle = {};
    (back ? c.pumps[0].idle.backwards : c.pumps[0].idle.forwards) = loss;
    (void)twp::operating_point(c, reference_water, which);
  };
  const char* const text =
      "tankwright::plumbing::operating_point: P: loss of the idle pump = 2000 is not possible; expected 0.001 to 1000";
  for (const bool back : {true, false}) {
    CHECK_THROWS_WITH_AS(with(back, 2000.0, 3000.0, twp::losses::central), text, invalid_input);
    CHECK_THROWS_WITH_AS(with(back, 500.0, 2000.0, twp::losses::most), text, invalid_input);
    CHECK_NOTHROW(with(back, 500.0, 2000.0, twp::losses::central));
    CHECK_NOTHROW(with(back, 2000.0, 3000.0, twp::losses::least));
  }
}

TEST_CASE("circuit equations: what does not converge names the link that lacks most") {
  // A straight curve is met in one step, a square is not; and the other way round where the run hardly resists.
  const auto message = [](const twp::pump_curve& curve, double bore, bool alone = false) {
    twp::circuit c = between(0.0, 3.0);
    c.sources.push_back({.label = "S0", .level = metres(5.0)});
    c.pumps = {{.label = "P0", .from = "S0", .to = "J0", .curve = curve, .speed = twp::speed_ratio{0.0}},
               {.label = "P1", .from = "S", .to = "J1", .curve = curve}};
    c.runs = {pipe("R0", "J0", "T", 40.0, 1.0), pipe("R1", "J1", "T", bore, 4.0)};
    if (alone) {  // the first run then stands right behind the last pump
      c.pumps.erase(c.pumps.begin());
      c.runs.erase(c.runs.begin());
    }
    circuit_equations built{"here", c, reference_water};
    try {
      built.solve({.iterations = 1});
    } catch (const no_convergence& e) {
      CHECK(e.details().value > 1e-6);
      return std::string{e.what()}.substr(0, 28);
    }
    return std::string{"converged"};
  };
  CHECK(message(three("straight", 8.0, 5.0, 4.0, 9.0, 0.8), 25.0, true) == "here: R1: error of the head ");
  CHECK(message(three("straight", 8.0, 5.0, 4.0, 9.0, 0.8), 25.0) == "here: R1: error of the head ");
  CHECK(message(three("bent", 6.0, 5.0, 5.5, 9.0, 0.5), 200.0) == "here: P1: error of the head ");
}
