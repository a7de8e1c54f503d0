// SPDX-License-Identifier: BSL-1.0
/// @file
/// The solver of circuits by itself: pipes between tanks whose laws are lines and squares, so that each of its steps
/// is known by hand.
#include <tankwright/plumbing/detail/network.hpp>

#include <cmath>
#include <cstddef>
#include <tankwright/plumbing/friction.hpp>
#include <utility>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using tankwright::plumbing::detail::curve_data;
using tankwright::plumbing::detail::network_options;
using tankwright::plumbing::detail::network_outcome;

namespace {

const evidence starts{"tankwright::plumbing::operating_point", kind::identity,
                      "first flows: Heron's rule for the root of head over resistance"};
const evidence converges{"tankwright::plumbing::operating_point", kind::identity,
                         "an error that each step multiplies by a known factor"};
const evidence by_hand{"tankwright::plumbing::operating_point", kind::identity,
                       "head and slope of a link written out by hand"};
const evidence cut{"tankwright::plumbing::operating_point", kind::identity, "the halvings of a step, by hand"};

/// h = resistance q, or the same times q, or a jump by `jump` at `jump_at`. It may claim another slope, never settle,
/// and count how often it is asked.
struct test_law {
  struct memory {
    bool done = true;
    [[nodiscard]] bool settled() const { return done; }
  };
  struct prepared {
    double resistance = 1.0;
    double claimed = 0.0;  // slope; zero: the true one
    bool square = false;
    bool never_settles = false;
    double jump = 0.0, jump_at = 0.0;
    int* asked = nullptr;
  };
  plumbing::detail::loss_and_gradient<double> operator()(const prepared& run, double q, memory& last) const {
    last.done = !run.never_settles;
    if (run.asked != nullptr) ++*run.asked;
    const double h = run.resistance * (run.square ? q * q : q) + (q >= run.jump_at ? run.jump : 0.0);
    return {h, run.claimed > 0.0 ? run.claimed : run.square ? 2.0 * run.resistance * q : run.resistance};
  }
};
using solver = plumbing::detail::network<test_law>;
using one_link = solver::link;

/// Each link from a tank of its own to another: heads[2i] and heads[2i + 1].
solver side_by_side(std::vector<one_link> links, const std::vector<double>& heads) {
  solver s{test_law{}};
  s.links = std::move(links);
  s.set_nodes(0, static_cast<int>(heads.size()));
  for (std::size_t i = 0; i < heads.size(); ++i) s.set_fixed_head(static_cast<int>(i), heads[i]);
  for (std::size_t i = 0; i < s.links.size(); ++i) {
    s.links[i].from = static_cast<int>(2 * i);
    s.links[i].to = static_cast<int>(2 * i + 1);
  }
  s.prepare();
  return s;
}
/// A run that begins at a first flow: the one whose square fits the drop.
one_link run_from(double first, double drop, const test_law::prepared& pipe) {
  one_link k;
  k.pipe = pipe;
  k.first_flow = std::fabs(first);
  k.square = std::fabs(drop) / (first * first);
  return k;
}
/// The same with a true resistance and an error that each step multiplies by `factor`.
one_link slow_run(double first, double drop, double resistance, double factor) {
  return run_from(first, drop, {.resistance = resistance, .claimed = resistance / (1.0 - factor)});
}
curve_data square_curve(double shutoff, double b, double end) {
  curve_data c;
  c.shutoff = shutoff;
  c.b = b;
  c.c = 2.0;
  c.end_flow = end;
  c.end_head = shutoff - b * end * end;
  return c;
}
one_link pump_on(const curve_data& curve, double speed) {
  one_link k;
  k.is_pump = true;
  k.curve = &curve;
  k.speed = speed;
  return k;
}
double first_flow_of(const one_link& k, double from, double to) {
  solver s = side_by_side({k}, {from, to});
  const auto outcome = s.solve({.iterations = 0});
  CHECK(!outcome.converged);
  CHECK(outcome.iterations == 0);
  return s.links[0].q;
}
int steps_of(const one_link& k, double from, double to = 0.0) {
  solver s = side_by_side({k}, {from, to});
  const auto outcome = s.solve();
  CHECK(outcome.converged);
  return outcome.iterations;
}
double heron(double x, double root_squared) { return 0.5 * (x + root_squared / x); }

}  // namespace

TEST_CASE("network: the first flows are those of squares, by Heron's rule from the first guess") {
  const double first = 1e-3, square = 1e5;
  one_link k;
  k.first_flow = first;
  k.square = square;
  // The root over the first guess, and the steps until one changes the flow by a tenth or less, and one more.
  struct {
    double root;
    int steps;
  } const cases[] = {
      {1.05, 2}, {0.95, 2}, {1.2, 3}, {std::sqrt(1.10005 / 0.89995), 3}, {std::sqrt(1.09995 / 0.90005), 2}};
  for (const auto& each : cases) {
    const double root = each.root * first, drop = square * root * root;
    double q = drop / (square * first);
    for (int i = 0; i < each.steps; ++i) q = heron(q, root * root);
    TW_CHECK(starts, first_flow_of(k, 3.0 + drop, 3.0), q, relative(1e-12));
    TW_CHECK(starts, first_flow_of(k, 3.0, 3.0 + drop), -q, relative(1e-12));
  }
  {  // A flow below a hundredth of the guess resists as that hundredth does.
    const double root = 0.05 * first, drop = square * root * root;
    const double one = drop / (square * first);
    const double two = one + 0.5 * (drop - square * 0.01 * first * one) / (square * 0.01 * first);
    TW_CHECK(starts, first_flow_of(k, drop, 0.0), heron(heron(two, root * root), root * root), relative(1e-12));
  }
  // What resists nothing: 1 mm per L/s at first, then half of the step is taken three times.
  TW_CHECK(starts, first_flow_of(one_link{}, 1e-6, 0.0), 2.5e-3, relative(1e-12));
  // A pump: from the end of its curve, the square through both ends of it, at its speed.
  const curve_data curve = square_curve(9.0, 1.9e6, 2e-3);
  const double s = 0.8, through_ends = (9.0 - curve.end_head) / 4e-6, head = s * s * 9.0 - 2.0;
  double q = head / (through_ends * s * 2e-3);
  for (int i = 0; i < 3; ++i) q = heron(q, head / through_ends);
  TW_CHECK(starts, first_flow_of(pump_on(curve, s), 0.5, 2.5), q, relative(1e-12));
  // What is shut both ways lets through what its wall does: 1e-13 m3/s for each metre.
  one_link shut = k;
  shut.shut_forwards = shut.shut_backwards = true;
  TW_CHECK(starts, first_flow_of(shut, 5.0, 3.0), 2e-13, relative(1e-12));
}

TEST_CASE("network: it stops when the last change and the one foreseen are small enough, and not a step before") {
  // A first change of 1e-8 is not small enough yet, however small a second would be.
  TW_CHECK(converges, steps_of(run_from(1e-3, 1.0, {.resistance = 1.0 / (1e-3 * (1.0 + 1e-8))}), 1.0), 2, tolerance{});
  TW_CHECK(converges, steps_of(run_from(1e-3, 1.0, {.resistance = 1e3}), 1.0), 1, tolerance{});
  // Steps that shrink by 1e-4: after 1e-7 only 1e-11 can follow.
  TW_CHECK(converges, steps_of(slow_run(0.999e-3, 1.0, 1e3, 1e-4), 1.0), 2, tolerance{});
  // The last change: 3e-7 of the flow.
  const auto with_last = [](double change) {
    const double f = 1e-4, error = change / (f * (1.0 - f));
    return steps_of(slow_run(1.0 - error, 1.0, 1.0, f), 1.0);
  };
  TW_CHECK(converges, with_last(2.9985e-7), 2, tolerance{});
  TW_CHECK(converges, with_last(3.0015e-7), 3, tolerance{});
  // The change that is foreseen: 1e-10 of the flow and 1e-12 m3/s.
  const auto with_foreseen = [](double change) {
    const double f = 0.01, error = change / (f * f * f * (1.0 - f));
    return steps_of(slow_run(1.0 - error, 1.0, 1.0, f), 1.0);
  };
  TW_CHECK(converges, with_foreseen(1.0095e-10), 3, tolerance{});
  TW_CHECK(converges, with_foreseen(1.0105e-10), 4, tolerance{});
  // Of next to no flow the 1e-12 m3/s: with 3e-7 of 1e-9 m3/s.
  const auto with_least = [](double change) {
    const double f = 0.01, error = change / (f * (1.0 - f));
    return steps_of(slow_run(1e-9 - error, 1.0, 1e9, f), 1.0);
  };
  TW_CHECK(converges, with_least(0.9998e-12), 2, tolerance{});
  TW_CHECK(converges, with_least(1.0008e-12), 3, tolerance{});
}

TEST_CASE("network: what only the rounding of the heads moves has settled") {
  // Heads of 1000 m are sure to 4e-12 m: through 1e-3 m per m3/s that is 4e-9 m3/s.
  const double from = 1000.0 + 1e-6, drop = from - 1000.0, flow = drop / 1e-3;
  const auto after = [&](double change) {
    return steps_of(run_from(flow - change, drop, {.resistance = 1e-3}), from, 1000.0);
  };
  TW_CHECK(converges, after(3.998e-9), 1, tolerance{});
  TW_CHECK(converges, after(4.002e-9), 2, tolerance{});
  // Through 1e6 m per m3/s much less, of higher heads too.
  const double high = 1e9 + 1e3;
  TW_CHECK(converges, steps_of(run_from(1e-3 - 1e-10, 1e3, {.resistance = 1e6}), high, 1e9), 2, tolerance{});
}

TEST_CASE("network: a check valve shuts against a flow that is more than rounding") {
  const auto shuts = [](std::vector<one_link> links, std::vector<double> heads, double back) {
    links.push_back(run_from(back, heads.back(), {.resistance = heads.back() / back}));
    links.back().shut_backwards = true;
    solver s = side_by_side(links, heads);
    (void)s.solve({.iterations = 1});
    return s.links.back().at_wall;
  };
  // 4e-12 of the greatest head as m3/s, be it of a tank or of a pump: 1000 m.
  TW_HOLDS(by_hand, !shuts({one_link{}}, {1000.0, 1000.0, 0.0, 0.1}, 3.998e-9));
  TW_HOLDS(by_hand, shuts({one_link{}}, {1000.0, 1000.0, 0.0, 0.1}, 4.002e-9));
  const curve_data curve = square_curve(250.0, 1e6, 1e-3);
  TW_HOLDS(by_hand, !shuts({pump_on(curve, 2.0)}, {0.0, 0.0, 0.0, 0.1}, 3.998e-9));
  TW_HOLDS(by_hand, shuts({pump_on(curve, 2.0)}, {0.0, 0.0, 0.0, 0.1}, 4.002e-9));
  TW_HOLDS(by_hand, shuts({}, {0.0, 1e-6}, 1e-15));
}

TEST_CASE("network: every kind of link at its solution, with its slope") {
  const auto solved = [](const one_link& k, double from, double to) {
    solver s = side_by_side({k}, {from, to});
    CHECK(s.solve().converged);
    return s.links[0];
  };
  const auto check = [](const one_link& k, double q, double h, double slope) {
    TW_CHECK(by_hand, k.q, q, relative(1e-9));
    TW_CHECK(by_hand, k.h, h, relative(1e-6));  // before the last step
    TW_CHECK(by_hand, k.gradient, 1.0 / slope, relative(1e-6));
  };
  const curve_data curve = square_curve(9.0, 1.9e6, 2e-3);
  one_link pump = pump_on(curve, 0.8);
  pump.backwards = 3e6;
  pump.square = 3e6;
  const double shutoff = 0.64 * 9.0;
  double q = std::sqrt((shutoff - 2.0) / 1.9e6);
  check(solved(pump, 0.5, 2.5), q, -2.0, 2.0 * 1.9e6 * q);
  q = std::sqrt((7.0 - shutoff) / 3e6);  // back through it
  check(solved(pump, 0.5, 7.5), -q, -7.0, 2.0 * 3e6 * q);
  {  // Beyond the end of its curve it stands at a wall, which lets 1e-13 m3/s through for each metre.
    const one_link k = solved(pump, 3.0, 1.0);
    TW_HOLDS(by_hand, k.at_wall);
    TW_CHECK(by_hand, k.at, 0.8 * 2e-3, relative(1e-15));
    TW_CHECK(by_hand, k.h, -0.64 * curve.end_head, relative(1e-14));
    TW_CHECK(by_hand, k.gradient, 1e-13, relative(1e-15));
    TW_CHECK(by_hand, k.q - k.at, (2.0 + 0.64 * curve.end_head) * 1e-13, relative(1e-5));
  }
  // At no flow a straight curve falls as it does everywhere.
  curve_data straight = square_curve(9.0, 0.0, 2e-3);
  straight.b = 2e3;
  straight.c = 1.0;
  straight.end_head = 5.0;
  const one_link still = solved(pump_on(straight, 1.0), 0.0, 9.0);
  TW_CHECK(by_hand, still.q, 0.0, tolerance{});
  TW_CHECK(by_hand, still.gradient, 1.0 / 2e3, relative(1e-14));
  // A pump that stands, forwards and backwards, with little to lose; and one that loses nothing: 1 mm per L/s.
  one_link idle;
  idle.is_pump = true;
  idle.square = 5.0;
  idle.first_flow = 1e-3;
  idle.forwards = 5.0;
  idle.backwards = 20.0;
  check(solved(idle, 2.0 + 5.0 * 25e-8, 2.0), 5e-4, 5.0 * 25e-8, 2.0 * 5.0 * 5e-4);
  check(solved(idle, 2.0 - 20.0 * 25e-8, 2.0), -5e-4, -20.0 * 25e-8, 2.0 * 20.0 * 5e-4);
  idle.forwards = idle.square = 0.0;
  check(solved(idle, 1e-6, 0.0), 1e-3, 1e-6, 1e-3);
  // A run whose valve leaks: the square of its law and the one beyond it.
  one_link leaking = run_from(1e-3, 1.0, {.resistance = 3e5, .square = true});
  leaking.forwards = 1e5;
  leaking.backwards = 6e5;
  check(solved(leaking, 1.0, 0.0), std::sqrt(1.0 / 4e5), 1.0, 2.0 * std::sqrt(4e5));
  check(solved(leaking, 0.0, 1.0), -std::sqrt(1.0 / 9e5), -1.0, 2.0 * std::sqrt(9e5));
  check(solved(run_from(1e-3, 1.0, {.resistance = 1e-9}), 1e-6, 0.0), 1e-3, 1e-6, 1e-3);
}

TEST_CASE("network: what has not converged says which link lacks most, and how much head") {
  const auto solved = [](const std::vector<one_link>& links, const std::vector<double>& heads,
                         network_options options) {
    solver s = side_by_side(links, heads);
    const network_outcome outcome = s.solve(options);
    CHECK(!outcome.converged);
    return outcome;
  };
  // One step leaves half of the error: from 3 m short to 1.5 m.
  const one_link half = slow_run(1.0, 5.0, 2.0, 0.5), quarter = slow_run(1.0, 5.0, 2.0, 0.25);
  one_link exact = run_from(1.0, 5.0, {.resistance = 5.0});
  const auto check = [](const network_outcome& outcome, std::size_t link, double residual, int iterations) {
    TW_CHECK(converges, outcome.worst_link, link, tolerance{});
    TW_CHECK(converges, outcome.worst_residual, residual, relative(1e-5));
    TW_CHECK(converges, outcome.iterations, iterations, tolerance{});
  };
  check(solved({half}, {8.0, 3.0}, {.iterations = 1}), 0, 1.5, 1);
  check(solved({half}, {8.0, 3.0}, {.iterations = 3}), 0, 0.375, 3);
  check(solved({exact, half}, {8.0, 3.0, 7.0, 2.0}, {.iterations = 1}), 1, 1.5, 1);
  check(solved({half, exact}, {8.0, 3.0, 7.0, 2.0}, {.iterations = 1}), 0, 1.5, 1);
  check(solved({quarter, half, half}, {8.0, 3.0, 7.0, 2.0, 5.0, 0.0}, {.iterations = 1}), 1, 1.5, 1);
  // What stands at a wall lacks nothing.
  const curve_data curve = square_curve(9.0, 1.9e6, 2e-3);
  check(solved({pump_on(curve, 0.8), half}, {3.0, 1.0, 7.0, 2.0}, {.iterations = 2}), 1, 0.75, 2);
  // One that is never sure of its law: 200 steps, and nothing is lacking.
  one_link unsure = run_from(1.0, 1.0, {.resistance = 1.0, .never_settles = true});
  check(solved({unsure}, {1.0, 0.0}, {}), 0, 0.0, 200);
}

TEST_CASE("network: after eight full steps a step is cut where the slope along it is a tenth of that at its start") {
  int asked = 0;
  {
    one_link unsure = run_from(1.0, 1.0, {.resistance = 1.0, .never_settles = true, .asked = &asked});
    solver s = side_by_side({unsure}, {1.0, 0.0});
    (void)s.solve({.iterations = 8});
    TW_CHECK(cut, asked, 8 + 1, tolerance{});  // once a step, and once for what is left
    asked = 0;
    (void)s.solve({.iterations = 9});
    TW_CHECK(cut, asked, 9 + 1 + 1, tolerance{});  // and once at the end of the step
  }
  // With a slope that claims 1/n of the true one, the slope along the step is t n - 1 of its start.
  const auto share = [](double n, double first, double drop) {
    const double r = 2e3;
    const one_link k = run_from(first, drop, {.resistance = r, .claimed = r / n});
    one_link there = run_from(1e-3, 4.0, {.resistance = 4e3});
    solver s = side_by_side({there, k}, {6.0, 2.0, 1.0 + drop, 1.0});
    (void)s.solve({.iterations = 1, .full_steps = 0});
    return (s.links[1].q - first) / ((drop - r * first) * n / r);
  };
  for (const auto& [first, drop] : {std::pair{1e-3, 5.0}, std::pair{4e-3, 5.0}, std::pair{1e-5, 0.05}}) {
    TW_CHECK(cut, share(1.0995, first, drop), 1.0, relative(1e-9));
    TW_CHECK(cut, share(1.09995, first, drop), 1.0, relative(1e-9));
    TW_CHECK(cut, share(1.10005, first, drop), 0.875, relative(1e-9));  // -0.45, -0.175, -0.037
    TW_CHECK(cut, share(3.0, first, drop), 0.3125, relative(1e-9));     // 0.5, -0.25, 0.125, -0.0625
  }
  // Where the loss jumps there is no such place: sixty halvings, and the end beyond the jump.
  asked = 0;
  one_link jumping =
      run_from(1e-3, 5.0, {.resistance = 1e-3, .claimed = 1e3, .jump = 10.0, .jump_at = 2e-3, .asked = &asked});
  solver s = side_by_side({jumping}, {5.0, 0.0});
  (void)s.solve({.iterations = 1, .full_steps = 0});
  TW_CHECK(cut, asked, 1 + 1 + 60 + 1, tolerance{});
  TW_CHECK(cut, s.links[0].q, 2e-3, relative(1e-14));
  TW_HOLDS(cut, s.links[0].q >= 2e-3);
}
