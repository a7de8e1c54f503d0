// SPDX-License-Identifier: BSL-1.0
// Circuits of any shape: loops, pipes side by side, several pumps, check valves, and what is not joined to anything.
#include <algorithm>
#include <map>
#include <optional>
#include <random>
#include <string>
#include <tankwright/plumbing/circuit.hpp>
#include <tankwright/plumbing/fittings.hpp>
#include <vector>

#include "plain_circuit.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twp = tankwright::plumbing;

namespace {

constexpr double g = 9.80665;

evidence about(kind rests_on, const char* source) {
  return {"tankwright::plumbing::operating_point", rests_on, source};
}

/// h/Q^2 of a loss coefficient on a bore, from h = K V^2/2g.
double square_of(double k, double bore_mm) {
  const double area = 3.141592653589793 / 4.0 * bore_mm * bore_mm * 1e-6;
  return k / (2.0 * g * area * area);
}
/// h/Q^2 of a Kv, from its definition: Kv m3/h of water of 1000 kg/m3 lose 1 bar.
double square_of_kv(double kv) { return 1e5 / (1000.0 * g) / (kv / 3600.0 * kv / 3600.0); }

/// A run that resists by its loss coefficient alone.
twp::pipe_run loss_only(const char* label, const char* from, const char* to, double bore_mm, double k) {
  return run(label, from, to, 0.0, bore_mm, k);
}

/// Flows of pumps and runs in this order.
std::vector<double> flows_of(const twp::circuit_solution& s) {
  std::vector<double> q;
  for (const auto& p : s.pumps) q.push_back(p.flow.value());
  for (const auto& r : s.runs) q.push_back(r.flow.value());
  return q;
}

double bisected(const std::function<double(double)>& rising, double low, double high) {
  for (int i = 0; i < 200; ++i) (rising(0.5 * (low + high)) < 0.0 ? low : high) = 0.5 * (low + high);
  return 0.5 * (low + high);
}

}  // namespace

TEST_CASE("circuit of any shape: flows balance, and every link obeys the plain equations or stands at its limit") {
  const auto equations = about(kind::identity, "the equations of the circuit, written out in the test");
  std::mt19937 numbers{20260804};
  std::map<twp::pump_state, int> pumps;
  std::map<twp::outlet_state, int> outlets;
  std::map<twp::junction_state, int> junctions;
  int looped = 0;
  for (int trial = 0; trial < 2000; ++trial) {
    const random_circuit c = make_random_circuit(numbers, {});
    const auto s = twp::operating_point(c.given, reference_water);
    const std::vector<double> q = flows_of(s);
    double total = 0.0;
    for (const double one : q) total += std::fabs(one);
    const double stray = 1e-10 + 1e-9 * total;  // the accuracy that is promised
    std::vector<double> sum(static_cast<std::size_t>(c.plain.junctions), 0.0);
    const auto head = [&](int node) -> std::optional<double> {
      if (node >= c.plain.junctions) return c.plain.fixed[static_cast<std::size_t>(node - c.plain.junctions)];
      for (const auto& j : s.junctions) {
        if (j.label == numbered("J", node) && j.head) return j.head->value();
      }
      return std::nullopt;
    };
    for (std::size_t i = 0; i < q.size(); ++i) {
      const plain_link& k = c.plain.links[i];
      if (k.from < c.plain.junctions) sum[static_cast<std::size_t>(k.from)] -= q[i];
      if (k.to < c.plain.junctions) sum[static_cast<std::size_t>(k.to)] += q[i];
      TW_HOLDS(equations, q[i] >= k.least && q[i] <= k.most * (1.0 + 1e-14));
      const auto a = head(k.from), b = head(k.to);
      if (!a || !b || k.least == k.most) continue;
      // An exponent below 1 begins infinitely steep; the library takes it straight up to a millionth of the end.
      if (i < c.given.pumps.size() && q[i] > 0.0 && q[i] < 2e-6 * k.most) continue;
      const double drop = *a - *b;
      const double low = k.loss(std::max(k.least, q[i] - stray)), high = k.loss(std::min(k.most, q[i] + stray));
      const double slack = 1e-9 * (1.0 + std::fabs(drop)) + 1e-3 * std::fabs(q[i]);
      TW_HOLDS(equations, drop >= low - slack || q[i] <= k.least);
      TW_HOLDS(equations, drop <= high + slack || q[i] >= k.most * (1.0 - 1e-14));
    }
    for (const double one : sum) TW_CHECK(equations, one, 0.0, within(static_cast<double>(q.size()) * stray));
    for (const auto& p : s.pumps) ++pumps[p.state];
    for (const auto& o : s.outlets) ++outlets[o.state];
    for (const auto& j : s.junctions) ++junctions[j.state];
    looped += static_cast<int>(c.given.runs.size() + c.given.pumps.size()) > c.plain.junctions + 2;
  }
  // They must have been through every state.
  CHECK(looped > 500);
  for (const auto state : {twp::pump_state::running, twp::pump_state::shut, twp::pump_state::past_end,
                           twp::pump_state::reversed, twp::pump_state::standing}) {
    CHECK(pumps[state] > 50);
  }
  for (const auto state : {twp::outlet_state::flowing, twp::outlet_state::still, twp::outlet_state::reversed}) {
    CHECK(outlets[state] > 50);
  }
  for (const auto state : {twp::junction_state::joined, twp::junction_state::dead_end, twp::junction_state::cut_off}) {
    CHECK(junctions[state] > 50);
  }
}

TEST_CASE("circuit of any shape: the flows are those of an independent model solved for the heads") {
  const auto model = about(kind::identity, "the same equations solved for the heads, densely, in the test");
  std::mt19937 numbers{20260805};
  int compared = 0;
  for (int trial = 0; trial < 60; ++trial) {
    random_circuit c = make_random_circuit(numbers, {.most_junctions = 5, .most_extra_runs = 4});
    c.plain.solve();
    const double surplus = c.plain.worst_surplus();
    if (surplus > 1e-8) continue;  // the model has not found its answer; it is counted below
    ++compared;
    const std::vector<double> q = flows_of(twp::operating_point(c.given, reference_water));
    double total = 1e-6;
    for (const double one : q) total += std::fabs(one);
    for (std::size_t i = 0; i < q.size(); ++i)
      TW_CHECK(model, q[i], c.plain.flow(i), within(1e-7 * total + 10.0 * surplus));
  }
  CHECK(compared >= 55);
}

TEST_CASE("circuit of any shape: two pipes side by side share the flow as the roots of what they resist") {
  const auto split = about(kind::identity, "Q1/Q2 = sqrt(K2 A1^2/(K1 A2^2)); sqrt(H) over the sum of the roots");
  twp::circuit c{.sources = {{.label = "high", .level = metres(3.0)}},
                 .runs = {loss_only("A", "high", "J", 40.0, 2.0), loss_only("B", "high", "J", 25.0, 3.0),
                          loss_only("down", "J", "low", 50.0, 1.5)},
                 .outlets = {outlet("low", 1.0)}};
  const auto s = twp::operating_point(c, reference_water);
  const double a = square_of(2.0, 40.0), b = square_of(3.0, 25.0), down = square_of(1.5, 50.0);
  const double both = 1.0 / std::pow(1.0 / std::sqrt(a) + 1.0 / std::sqrt(b), 2.0);
  const double total = std::sqrt(2.0 / (both + down));
  TW_CHECK(split, s.run("down").flow.value(), total, relative(1e-10));
  TW_CHECK(split, s.run("A").flow.value(), total * std::sqrt(both / a), relative(1e-10));
  TW_CHECK(split, s.run("B").flow.value(), total * std::sqrt(both / b), relative(1e-10));
  TW_CHECK(split, s.source("high").flow.value(), total, relative(1e-10));
  c.runs.push_back(loss_only("C", "low", "J", 30.0, 4.0));  // written the other way round, into the same outlet
  const auto three = twp::operating_point(c, reference_water);
  TW_CHECK(split, three.run("C").flow.value() / three.run("down").flow.value(), -std::sqrt(down / square_of(4.0, 30.0)),
           relative(1e-10));
  TW_CHECK(split, three.outlet("low").flow, three.run("down").flow - three.run("C").flow, relative(1e-14));
}

TEST_CASE("circuit of any shape: a balanced bridge carries nothing") {
  const auto bridge = about(kind::identity, "Wheatstone's bridge");
  twp::circuit c{.sources = {{.label = "high", .level = metres(2.0)}},
                 .runs = {loss_only("1", "high", "L", 40.0, 2.0), loss_only("2", "high", "R", 30.0, 2.0),
                          loss_only("3", "L", "low", 40.0, 6.0), loss_only("4", "R", "low", 30.0, 6.0),
                          loss_only("bridge", "L", "R", 20.0, 1.0)},
                 .outlets = {outlet("low", 0.0)}};
  const auto s = twp::operating_point(c, reference_water);
  TW_CHECK(bridge, s.run("bridge").flow.value(), 0.0, within(1e-9));
  TW_CHECK(bridge, *s.junction("L").head, metres(1.5), relative(1e-9));
  TW_CHECK(bridge, s.run("1").flow.value(), std::sqrt(2.0 / square_of(8.0, 40.0)), relative(1e-9));
  c.runs[2].fittings = twp::known_loss(5.0);
  TW_HOLDS(bridge, twp::operating_point(c, reference_water).run("bridge").flow.value() < -1e-6);
}

TEST_CASE("circuit of any shape: a check valve that holds, leaks, or is not there") {
  const auto leak = about(kind::identity, "Kv by its definition, in series with the loss of the run");
  twp::circuit c{.sources = {{.label = "sump", .level = metres(0.0)}},
                 .runs = {loss_only("return", "sump", "display", 40.0, 5.0)},
                 .outlets = {outlet("display", 1.2)}};
  const double pipe = square_of(5.0, 40.0);
  const auto back = [&] { return -twp::operating_point(c, reference_water).source("sump").flow.value(); };
  TW_CHECK(leak, back(), std::sqrt(1.2 / pipe), relative(1e-10));
  c.runs[0].check_valve = twp::check_valve{};
  const auto held = twp::operating_point(c, reference_water);
  TW_HOLDS(leak, held.run("return").flow.value() == 0.0 && held.run("return").shut);
  TW_HOLDS(leak, held.outlet("display").state == twp::outlet_state::still && held.delivered.value() == 0.0);
  c.runs[0].check_valve = twp::check_valve{.leak = twp::flow_coefficient::from_kv(0.4)};
  TW_CHECK(leak, back(), std::sqrt(1.2 / (pipe + square_of_kv(0.4))), relative(1e-10));
  c.runs[0].check_valve = twp::leaking_check_valve(twp::loss_coefficient{900.0}, twp::pipe_bore{millimetres(25.0)});
  TW_CHECK(leak, back(), std::sqrt(1.2 / (pipe + square_of(900.0, 25.0))), relative(1e-9));
  c.outlets[0].level = metres(-1.0);  // forwards neither counts
  TW_CHECK(leak, back(), -std::sqrt(1.0 / pipe), relative(1e-10));
}

TEST_CASE("circuit of any shape: water runs back through a pump without a check valve") {
  const auto falls = about(kind::identity, "H = (c + K/(2 g A^2)) Q^2 backwards, c from the pump's best point");
  const auto curve = three("P", 6.0, 8.0, 4.5, 14.0, 1.0);
  twp::circuit c{.sources = {{.label = "sump", .level = metres(0.0)}},
                 .pumps = {{.label = "P", .from = "sump", .to = "J", .curve = curve, .speed = twp::speed_ratio{0.0}}},
                 .runs = {loss_only("return", "J", "display", 40.0, 5.0)},
                 .outlets = {outlet("display", 1.5)}};
  // The best point of H = A - B Q^C: A = (C + 1) B Q^C.
  const double power = std::log(5.0 / 1.5) / std::log(14.0 / 8.0), b = 1.5 / std::pow(8.0 / 3600.0, power);
  const double best = std::pow(6.0 / ((power + 1.0) * b), 1.0 / power);
  const double square = (6.0 - b * std::pow(best, power)) / (best * best);
  TW_CHECK((evidence{"tankwright::plumbing::best_point", kind::identity, "d(Q H)/dQ = 0"}),
           twp::best_point(curve).flow->value(), best, relative(1e-12));
  for (const auto& [which, factor] :
       {std::pair{twp::losses::least, 0.69}, {twp::losses::central, 1.3}, {twp::losses::most, 2.4}}) {
    const auto stands = twp::operating_point(c, reference_water, which);
    const double q = std::sqrt(1.5 / (factor * square + square_of(5.0, 40.0)));
    TW_CHECK(falls, stands.pump("P").flow.value(), -q, relative(1e-10));
    TW_CHECK(falls, stands.pump("P").head.value(), factor * square * q * q, relative(1e-9));
    TW_HOLDS(falls, stands.pump("P").state == twp::pump_state::reversed && stands.run("return").reversed);
    TW_HOLDS(falls, stands.outlet("display").state == twp::outlet_state::reversed);
  }
  // A pump that turns and is too weak: it holds its shut-off head, and costs what one with its rotor held does.
  c.pumps[0].speed = twp::speed_ratio{0.4};
  const auto weak = twp::operating_point(c, reference_water);
  const double against = 1.5 - 0.16 * 6.0;
  TW_CHECK(falls, weak.pump("P").flow.value(), -std::sqrt(against / (0.69 * square + square_of(5.0, 40.0))),
           relative(1e-10));
  TW_HOLDS(falls, weak.pump("P").state == twp::pump_state::reversed);
  const double through = against / (0.69 * square + square_of(5.0, 40.0));  // Q^2
  TW_CHECK(falls, weak.pump("P").head.value(), 0.16 * 6.0 + 0.69 * square * through, relative(1e-9));
  // Behind a check valve both stand.
  c.pumps[0].check_valve = twp::check_valve{};
  TW_HOLDS(falls, twp::operating_point(c, reference_water).pump("P").state == twp::pump_state::shut);
  c.pumps[0].speed = twp::speed_ratio{0.0};
  const auto held = twp::operating_point(c, reference_water);
  TW_HOLDS(falls, held.pump("P").state == twp::pump_state::standing && held.pump("P").flow.value() == 0.0);
  // One that leaks adds its own loss.
  c.pumps[0].check_valve = twp::check_valve{.leak = twp::flow_coefficient::from_kv(1.0)};
  TW_CHECK(falls, twp::operating_point(c, reference_water).pump("P").flow.value(),
           -std::sqrt(1.5 / (1.3 * square + square_of_kv(1.0) + square_of(5.0, 40.0))), relative(1e-10));
  // Forwards through a pump that stands, from a sump higher than the display.
  c.outlets[0].level = metres(-1.0);
  TW_CHECK(falls, twp::operating_point(c, reference_water).pump("P").flow.value(),
           std::sqrt(1.0 / (0.35 * square + square_of(5.0, 40.0))), relative(1e-10));
}

TEST_CASE("circuit of any shape: the spare pump stands, and the water runs in a ring through it") {
  const auto ring = about(kind::property, "a check valve that fails costs the display its flow");
  const auto curve = three("P", 6.0, 8.0, 4.5, 14.0, 1.0);
  twp::circuit c = reference_circuit("E2");
  c.pumps.push_back({.label = "spare",
                     .from = "sump",
                     .to = "J1",
                     .curve = curve,
                     .speed = twp::speed_ratio{0.0},
                     .check_valve = twp::check_valve{}});
  const auto holds = twp::operating_point(c, reference_water);
  TW_CHECK(ring, holds.delivered, twp::operating_point(reference_circuit("E2"), reference_water).delivered,
           relative(1e-9));
  TW_HOLDS(ring, holds.pump("spare").flow.value() == 0.0);
  c.pumps[1].check_valve->leak = twp::flow_coefficient::from_kv(2.0);
  const auto leaks = twp::operating_point(c, reference_water);
  c.pumps[1].check_valve.reset();
  const auto fails = twp::operating_point(c, reference_water);
  TW_HOLDS(ring, fails.delivered < leaks.delivered && leaks.delivered < holds.delivered);
  TW_HOLDS(ring, fails.pump("spare").state == twp::pump_state::reversed);
  TW_CHECK(ring, fails.source("sump").flow, fails.delivered, relative(1e-9));
  TW_CHECK(ring, fails.pump("P1").flow + fails.pump("spare").flow, fails.delivered, relative(1e-9));
}

TEST_CASE("circuit of any shape: a curve that falls at once, with an exponent below 1") {
  const auto root = about(kind::identity, "A - B Q^C = lift + K Q^2 by bisection, in the test");
  for (const double exponent : {0.15, 0.4, 0.8, 1.0}) {
    const double q1 = 4.0 / 3600.0, q2 = 10.0 / 3600.0, h0 = 5.0, h2 = 0.5;
    const double h1 = h0 - (h0 - h2) * std::pow(q1 / q2, exponent);
    twp::circuit c{
        .sources = {{.label = "sump", .level = metres(0.0)}},
        .pumps = {{.label = "P", .from = "sump", .to = "J", .curve = three("P", h0, q1 * 3600.0, h1, q2 * 3600.0, h2)}},
        .runs = {loss_only("return", "J", "display", 30.0, 5.0)},
        .outlets = {outlet("display", 0.0)}};
    for (const double lift : {0.2, 1.0, 2.5, 4.0, 4.9}) {
      c.outlets[0].level = metres(lift);
      const double expected = bisected(
          [&](double q) { return lift + square_of(5.0, 30.0) * q * q - (h0 - (h0 - h2) * std::pow(q / q2, exponent)); },
          0.0, q2);
      if (expected < 2e-6 * q2) continue;
      TW_CHECK(root, twp::operating_point(c, reference_water).pump("P").flow.value(), expected,
               (tolerance{2e-10, 1e-9}));
    }
    c.outlets[0].level = metres(5.1);
    c.pumps[0].check_valve = twp::check_valve{};
    TW_HOLDS(root, twp::operating_point(c, reference_water).pump("P").state == twp::pump_state::shut);
  }
}

TEST_CASE("circuit of any shape: dead ends, parts on their own and parts that are missing have answers") {
  const auto answers = about(kind::property, "what is not joined is still");
  twp::circuit c = reference_circuit("E2");
  const auto whole = twp::operating_point(c, reference_water);
  c.runs.push_back(run("stub", "J2", "cap", 1.0, 30.0, 1.0));
  c.runs.push_back(run("loose", "nowhere", "nothing", 1.0, 30.0, 1.0));
  c.outlets.push_back(outlet("T3", 4.0));
  c.sources.push_back({.label = "rain barrel", .level = metres(1.0)});
  const auto s = twp::operating_point(c, reference_water);
  TW_CHECK(answers, s.delivered, whole.delivered, relative(1e-12));
  TW_HOLDS(answers, s.run("stub").flow.value() == 0.0 && s.junction("cap").state == twp::junction_state::dead_end);
  TW_CHECK(answers, *s.junction("cap").head, *s.junction("J2").head, within(metres(1e-9)));
  TW_HOLDS(answers, s.junction("nowhere").state == twp::junction_state::cut_off && !s.junction("nowhere").head);
  TW_HOLDS(answers, s.outlet("T3").state == twp::outlet_state::still);
  TW_HOLDS(answers, s.source("rain barrel").flow.value() == 0.0);

  // Behind a shut valve nothing sets the head.
  c.runs[1].valve = twp::flow_coefficient::from_kv(0.0);
  c.runs.push_back(run("A1", "J2", "A0", 1.0, 34.0, 1.0));
  c.runs[1].from = "A0";
  const auto shut = twp::operating_point(c, reference_water);
  TW_HOLDS(answers, shut.run("A").shut && shut.run("A1").flow.value() == 0.0);
  TW_CHECK(answers, *shut.junction("A0").head, *shut.junction("J2").head, within(metres(1e-9)));

  // Two tanks joined by a pipe, without a pump.
  const twp::circuit level{.runs = {loss_only("pipe", "left", "right", 50.0, 3.0)},
                           .outlets = {outlet("left", 1.0), outlet("right", 0.6)}};
  TW_CHECK(about(kind::identity, "sqrt(2 g H/K) A"),
           twp::operating_point(level, reference_water).outlet("right").flow.value(),
           std::sqrt(0.4 / square_of(3.0, 50.0)), relative(1e-10));
  TW_CHECK(about(kind::identity, "sqrt(2 g H/K) A"),
           twp::operating_point(level, reference_water).outlet("left").flow.value(),
           -std::sqrt(0.4 / square_of(3.0, 50.0)), relative(1e-10));

  // A pump that drives water round in a loop of its own: no source, no heads, but a flow.
  const twp::circuit ring{
      .pumps = {{.label = "P", .from = "a", .to = "b", .curve = three("P", 6.0, 8.0, 4.5, 14.0, 1.0)}},
      .runs = {loss_only("round", "b", "a", 30.0, 8.0)}};
  const auto round = twp::operating_point(ring, reference_water);
  const double q = bisected(
      [&](double x) {
        const double power = std::log(5.0 / 1.5) / std::log(14.0 / 8.0);
        return square_of(8.0, 30.0) * x * x - (6.0 - 1.5 * std::pow(x * 3600.0 / 8.0, power));
      },
      0.0, 14.0 / 3600.0);
  TW_CHECK(about(kind::identity, "A - B Q^C = K Q^2"), round.run("round").flow.value(), q, relative(1e-9));
  TW_HOLDS(answers, !round.junction("a").head && round.junction("b").state == twp::junction_state::cut_off);

  const auto nothing = twp::operating_point(twp::circuit{}, reference_water);
  TW_HOLDS(answers, nothing.delivered.value() == 0.0 && nothing.runs.empty());
}

TEST_CASE("circuit of any shape: a ladder of a thousand runs passes equal flows in equal rails") {
  const auto ladder = about(kind::property, "symmetry; balance of the whole");
  twp::circuit c{.sources = {{.label = "high", .level = metres(3.0)}}, .outlets = {outlet("low", 0.0)}};
  for (int i = 0; i < 333; ++i) {
    const auto left = [](int at) { return at == 0 ? std::string{"high"} : numbered("L", at); };
    const auto right = [](int at) { return at == 0 ? std::string{"high"} : numbered("R", at); };
    c.runs.push_back(run(numbered("left ", i), left(i), i == 332 ? "low" : left(i + 1), 0.5, 40.0, 0.2));
    c.runs.push_back(run(numbered("right ", i), right(i), i == 332 ? "low" : right(i + 1), 0.5, 40.0, 0.2));
    if (i > 0) c.runs.push_back(run(numbered("rung ", i), left(i), right(i), 0.3, 25.0, 0.5));
  }
  const auto even = twp::operating_point(c, reference_water);
  TW_HOLDS(ladder, even.iterations < 15);
  for (int i = 1; i < 333; ++i) TW_HOLDS(ladder, even.run(numbered("rung ", i)).flow.value() == 0.0);
  TW_CHECK(ladder, even.run("left 0").flow, even.run("right 0").flow, relative(1e-10));
  c.runs[0].bore = twp::pipe_bore{millimetres(20.0)};
  const auto odd = twp::operating_point(c, reference_water);
  TW_HOLDS(ladder, odd.run("rung 1").flow.value() < -1e-6);
  TW_CHECK(ladder, odd.source("high").flow, odd.outlet("low").flow, relative(1e-9));
}
