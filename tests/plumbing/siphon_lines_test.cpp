// SPDX-License-Identifier: BSL-1.0
/// @file
/// What runs back through the returns, piece by piece. Losses without friction have closed forms.
#include <tankwright/plumbing/detail/siphon_lines.hpp>

#include <cmath>
#include <limits>

#include "plumbing/plain_power_cut.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;
using tp::detail::siphon_lines;

namespace {

const evidence by_hand{"tankwright::plumbing::power_cut", kind::identity, "siphons of its returns: A sqrt(2 g h/K)"};
const evidence falling{"tankwright::plumbing::power_cut", kind::identity, "a column falls as V (1 - q t/2V)^2"};
const evidence friction{"tankwright::plumbing::power_cut", kind::identity, "Colebrook and White solved again"};

constexpr double nothing = std::numeric_limits<double>::infinity();

double bore_area(double bore) { return plain::pi / 4.0 * bore * bore; }
/// Flow through a bore whose losses are K velocity heads.
double through(double bore, double k, double height) {
  return bore_area(bore) * std::sqrt(2.0 * plain::g * height / k);
}
/// Head over the square of the flow.
double resistance(double bore, double k) { return k / (2.0 * plain::g * bore_area(bore) * bore_area(bore)); }

tp::pipe_run pipe(const char* label, double bore, double length, double k) {
  return {.label = label, .bore = tp::pipe_bore{metres(bore)}, .length = metres(length), .fittings = tp::known_loss(k)};
}
tp::return_line line(const char* label, double depth, const tp::pipe_run& run) {
  return {.label = label, .flow = litres_per_second(1.0), .outlet_below_edge = metres(depth), .pipe = run};
}
tp::power_cut_input system_of(std::vector<tp::return_line> returns, std::vector<tp::shared_pipe> shared = {}) {
  return {.display = {.surface = square_metres(1.0), .edge = tp::standpipe{tp::pipe_bore{millimetres(100.0)}}},
          .sump = {.rim = metres(0.4),
                   .running_level = metres(0.2),
                   .chambers = {{.label = "sump", .horizontal_area = square_metres(0.5)}}},
          .returns = std::move(returns),
          .edge_above_floor = metres(1.5),
          .shared_pipes = std::move(shared)};
}
siphon_lines started(const tp::power_cut_input& in, double over = 0.0, double height = 1.0, double deeper = 0.0) {
  siphon_lines lines{"here", in};
  lines.start(over, deeper, height);
  return lines;
}

}  // namespace

TEST_CASE("siphon lines: one pipe spends the height between both surfaces") {
  auto lines = started(system_of({line("A", 0.02, pipe("A", 0.03, 0.0, 4.0))}));
  for (const double height : {0.04, 1.0, 1.7}) {  // four velocity heads in fittings and one at the exit
    TW_CHECK(by_hand, lines.flow(height), through(0.03, 5.0, height), relative(1e-12));
  }
  TW_CHECK(by_hand, lines.flow(0.0), 0.0, tolerance{});
  TW_CHECK(by_hand, lines.flow(-0.3), 0.0, tolerance{});
  TW_CHECK(by_hand, lines.flow(0.0004), through(0.03, 5.0, 0.0004), relative(1e-12));
  // Less than 0.36 L/h is still.
  const double drop = 5.0 / (2.0 * plain::g) * std::pow(1e-7 / bore_area(0.03), 2.0);
  TW_CHECK(by_hand, lines.flow(1.001 * drop), 1e-7 * std::sqrt(1.001), relative(1e-12));
  TW_CHECK(by_hand, lines.flow(0.9995 * drop), 0.0, tolerance{});
  TW_CHECK(by_hand, lines.flow(1.0), through(0.03, 5.0, 1.0), relative(1e-12));
}

TEST_CASE("siphon lines: two returns and the pipe they share, by their conductances") {
  const auto a = line("A", 0.02, pipe("A", 0.03, 0.0, 4.0)), b = line("B", 0.05, pipe("B", 0.02, 0.0, 3.0));
  const double side_by_side = 1.0 / std::sqrt(resistance(0.03, 4.0)) + 1.0 / std::sqrt(resistance(0.02, 3.0));
  const auto total = [&](double trunk) { return std::sqrt(0.9 / (1.0 / (side_by_side * side_by_side) + trunk)); };
  // The exit is at the end of the trunk, and nowhere else.
  auto shared = started(system_of({a, b}, {{.pipe = pipe("trunk", 0.04, 0.0, 2.0)}}));
  TW_CHECK(by_hand, shared.flow(0.9), total(resistance(0.04, 3.0)), relative(1e-12));
  // Two of them side by side carry half of the flow each.
  auto two = started(system_of({a, b}, {{.pipe = pipe("trunk", 0.04, 0.0, 2.0), .side_by_side = 2}}));
  TW_CHECK(by_hand, two.flow(0.9), total(resistance(0.04, 3.0) / 4.0), relative(1e-12));
  // Without it each runs by itself.
  auto apart = started(system_of({a, b}));
  TW_CHECK(by_hand, apart.flow(0.9), through(0.03, 5.0, 0.9) + through(0.02, 4.0, 0.9), relative(1e-12));
  // Only one of both passes it.
  auto one = started(system_of({a, b}, {{.pipe = pipe("riser", 0.04, 0.0, 2.0), .returns = {"B"}}}));
  TW_CHECK(by_hand, one.flow(0.9),
           through(0.03, 5.0, 0.9) + std::sqrt(0.9 / (resistance(0.02, 3.0) + resistance(0.04, 3.0))), relative(1e-12));
  // A and B meet, then C joins; the pipes may be given in any order.
  const auto c = line("C", 0.03, pipe("C", 0.025, 0.0, 6.0));
  const tp::shared_pipe first{.pipe = pipe("first", 0.035, 0.0, 1.0), .returns = {"A", "B"}};
  const tp::shared_pipe all{.pipe = pipe("all", 0.05, 0.0, 2.5)};
  const double ab = 1.0 / std::sqrt(1.0 / (side_by_side * side_by_side) + resistance(0.035, 1.0));
  const double abc = ab + 1.0 / std::sqrt(resistance(0.025, 6.0));
  for (const auto& pipes : {std::vector{first, all}, std::vector{all, first}}) {
    auto tree = started(system_of({a, b, c}, pipes));
    TW_CHECK(by_hand, tree.flow(0.9), std::sqrt(0.9 / (1.0 / (abc * abc) + resistance(0.05, 3.5))), relative(1e-12));
  }
}

TEST_CASE("siphon lines: pipes in which only the wall resists, and what passes next to nothing") {
  // A riser without any loss of its own but its exit: the returns before it have all of the rest.
  const auto a = line("A", 0.02, pipe("A", 0.03, 0.0, 4.0));
  auto wide = started(system_of({a}, {{.pipe = pipe("trunk", 10.0, 0.0, 0.0)}}));
  TW_CHECK(by_hand, wide.flow(0.9), std::sqrt(0.9 / (resistance(0.03, 4.0) + resistance(10.0, 1.0))), relative(1e-9));
}

TEST_CASE("siphon lines: a return that resists nothing before a shared pipe leaves it all of the height") {
  auto lines =
      started(system_of({line("A", 0.02, pipe("A", 0.03, 0.0, 0.0))}, {{.pipe = pipe("trunk", 0.04, 0.0, 2.0)}}));
  TW_CHECK(by_hand, lines.flow(0.9), through(0.04, 3.0, 0.9), relative(1e-9));
}

TEST_CASE("siphon lines: friction is that of the flow that runs, and follows it") {
  const plain_pipe p{0.034, 2.0, 4.0};
  const auto solved = [&](double height) {
    double q = 1e-3;
    for (int i = 0; i < 60; ++i) q = std::sqrt(height / plain::resistance(p, q, 1.0));
    return q;
  };
  // One litre a second among others, at which no factor is known before it is asked for.
  const double litre = plain::resistance(p, 1e-3, 1.0) * 1e-6;
  for (const double height : {0.2, litre, 1.3}) {
    auto lines = started(system_of({line("A", 0.02, pipe("A", p.bore, p.length, p.k))}), 0.0, height);
    TW_CHECK(friction, lines.flow(height), solved(height), relative(1e-4));
    for (const double fall : {0.99, 0.5, 0.2}) {  // the factor is that of the flow before this
      for (int i = 0; i < 3; ++i) (void)lines.flow(fall * height);
      TW_CHECK(friction, lines.flow(fall * height), solved(fall * height), relative(3e-4));
    }
  }
  // Two returns with walls, before a shared pipe that takes half of the height.
  {
    const plain_pipe a{0.026, 3.0, 0.5}, b{0.034, 1.0, 2.0};
    const auto own = [](const plain_pipe& p, double left) {
      double q = 1e-3;
      for (int i = 0; i < 60; ++i) q = std::sqrt(left / plain::resistance(p, q, 0.0));
      return q;
    };
    double low = 0.0, high = 1.0;  // of what the shared pipe leaves them
    for (int i = 0; i < 60; ++i) {
      const double left = 0.5 * (low + high), q = own(a, left) + own(b, left);
      (left + resistance(0.04, 21.0) * q * q < 1.0 ? low : high) = left;
    }
    const double both = own(a, low) + own(b, low);
    auto lines = started(system_of({line("A", 0.02, pipe("A", a.bore, a.length, a.k)),
                                    line("B", 0.02, pipe("B", b.bore, b.length, b.k))},
                                   {{.pipe = pipe("trunk", 0.04, 0.0, 20.0)}}),
                         0.0, 1.0);
    TW_CHECK(friction, lines.flow(1.0), both, relative(1e-4));
  }
  // Two pipes with half of the flow each, as one return.
  auto two = started(system_of({line("A", 0.02, pipe("A", 0.05, 0.0, 0.5))},
                               {{.pipe = pipe("trunk", p.bore, p.length, p.k), .side_by_side = 2}}),
                     0.0, 1.0);
  double q = 2e-3;
  for (int i = 0; i < 60; ++i) {
    q = std::sqrt(1.0 / (plain::resistance(p, 0.5 * q, 1.0) / 4.0 + resistance(0.05, 0.5)));
  }
  TW_CHECK(friction, two.flow(1.0), q, relative(1e-5));
}

TEST_CASE("siphon lines: what check valves do, in a return and in a pipe that is shared") {
  auto in = system_of({line("A", 0.02, pipe("A", 0.03, 1.0, 4.0)), line("B", 0.05, pipe("B", 0.02, 1.0, 3.0))},
                      {{.pipe = pipe("trunk", 0.04, 1.0, 2.0)}});
  const double a = bore_area(0.03), b = bore_area(0.02), trunk = bore_area(0.04);  // litres, as each is a metre long
  const auto contents = [&](tp::check_valve_state state, bool in_a, bool in_trunk) {
    in.check_valves = state;
    in.returns[0].check_valve = in_a;
    in.shared_pipes[0].check_valve = in_trunk;
    return siphon_lines{"here", in};
  };
  using state = tp::check_valve_state;
  TW_CHECK(by_hand, contents(state::open, true, true).contents_of_all(), a + b + trunk, relative(1e-14));
  TW_CHECK(by_hand, contents(state::leak, true, true).contents_of_all(), a + b + trunk, relative(1e-14));
  TW_CHECK(by_hand, contents(state::hold, false, false).contents_of_all(), a + b + trunk, relative(1e-14));
  const auto a_held = contents(state::hold, true, false);
  TW_CHECK(by_hand, a_held.contents_of_all(), b + trunk, relative(1e-14));
  TW_CHECK(by_hand, a_held.deepest_opening(), 0.05, tolerance{});
  const auto all_held = contents(state::hold, false, true);
  TW_CHECK(by_hand, all_held.contents_of_all(), 0.0, tolerance{});
  CHECK(all_held.deepest_opening() == -core::largest);
  // A pipe that only a held return passes holds its water too; one that another passes as well does not.
  in.shared_pipes[0].returns = {"A"};
  TW_CHECK(by_hand, contents(state::hold, true, false).contents_of_all(), b, relative(1e-14));
  in.shared_pipes[0].returns = {"A", "B"};
  TW_CHECK(by_hand, contents(state::hold, true, false).contents_of_all(), b + trunk, relative(1e-14));
  in.returns[1].check_valve = true;
  TW_CHECK(by_hand, contents(state::hold, true, false).contents_of_all(), 0.0, tolerance{});

  // A flap that shuts all but 2 % of the bore is a hole in a wall: (1/(0.6 x 0.02))^2 velocity heads.
  auto leaks = system_of({line("A", 0.02, pipe("A", 0.03, 0.0, 4.0))});
  leaks.check_valves = state::leak;
  TW_CHECK(by_hand, started(leaks).flow(1.0), through(0.03, 5.0, 1.0), relative(1e-12));
  leaks.returns[0].check_valve = true;
  TW_CHECK(by_hand, started(leaks).flow(1.0), through(0.03, 5.0 + 1.0 / (0.012 * 0.012), 1.0), relative(1e-12));
  leaks.check_valves = state::open;
  TW_CHECK(by_hand, started(leaks).flow(1.0), through(0.03, 5.0, 1.0), relative(1e-12));
  leaks.check_valves = state::hold;
  TW_CHECK(by_hand, started(leaks).flow(1.0), 0.0, tolerance{});
}

TEST_CASE("siphon lines: the openings draw air one by one, and the last lets the shared pipe fall") {
  const auto a = line("A", 0.02, pipe("A", 0.03, 1.0, 4.0)), b = line("B", 0.05, pipe("B", 0.02, 2.0, 3.0));
  const double in_a = bore_area(0.03), in_b = 2.0 * bore_area(0.02), in_trunk = 1.5 * bore_area(0.04);
  // So wide a bore that its wall counts for nothing would be no pipe: the friction is taken with its factor.
  auto lines = started(system_of({a, b}, {{.pipe = pipe("trunk", 0.04, 1.5, 2.0)}}));
  TW_CHECK(by_hand, lines.next_opening(), 0.02, tolerance{});
  TW_CHECK(by_hand, lines.standing(), in_a + in_b + in_trunk, relative(1e-14));
  TW_CHECK(falling, lines.falling(), 0.0, tolerance{});
  const double before = lines.flow(1.0);
  lines.draw_air(0.02, 1.0);
  TW_CHECK(by_hand, lines.next_opening(), 0.05, tolerance{});
  TW_CHECK(by_hand, lines.standing(), in_b + in_trunk, relative(1e-14));
  TW_CHECK(falling, lines.falling(), in_a, relative(1e-14));
  const double alone = lines.flow(1.0);
  CHECK(alone < before);
  CHECK(alone > 0.0);
  lines.draw_air(0.0499, 1.0);  // nothing lies so high
  TW_CHECK(by_hand, lines.standing(), in_b + in_trunk, relative(1e-14));
  lines.draw_air(0.05, 1.0);
  CHECK(lines.next_opening() == -nothing);
  TW_CHECK(by_hand, lines.standing(), 0.0, tolerance{});
  TW_CHECK(falling, lines.falling(), in_a + in_b + in_trunk, relative(1e-14));
  TW_CHECK(by_hand, lines.flow(1.0), 0.0, tolerance{});
  TW_CHECK(by_hand, lines.flow(1.0), 0.0, tolerance{});
}

TEST_CASE("siphon lines: a column falls slower and slower, and ends") {
  // A pipe of 40 mm with a loss of 200: its wall is a thousandth of that.
  auto lines = started(system_of({line("A", 0.02, pipe("A", 0.04, 0.5, 200.0))}), 0.0, 0.64);
  const double full = 0.5 * bore_area(0.04), siphon = lines.flow(0.64);
  TW_CHECK(falling, siphon, through(0.04, 201.3, 0.64), relative(2e-3));
  lines.draw_air(0.02, 0.64);
  const double q = lines.falling_flow();
  TW_CHECK(falling, q, siphon, relative(1e-3));  // it starts as the siphon ran
  const double end = 2.0 * full / q;             // s
  TW_CHECK(falling, lines.falls_in(0.5 * end), full * 0.75, relative(1e-12));
  TW_CHECK(falling, lines.falls_in(end), full, relative(1e-12));
  TW_CHECK(falling, lines.falls_in(3.0 * end), full, relative(1e-12));
  lines.fall(0.25 * end);
  TW_CHECK(falling, lines.falling(), full * 0.5625, relative(1e-12));
  TW_CHECK(falling, lines.falling_flow(), 0.75 * q, relative(1e-12));
  TW_CHECK(falling, lines.falls_in(0.25 * end), full * (0.5625 - 0.25), relative(1e-12));
  const auto now = lines.columns_at(0.64);
  TW_CHECK(falling, now.flow, 0.75 * q, relative(1e-12));
  TW_CHECK(falling, now.water, full * 0.5625, relative(1e-12));
  lines.fall(end);
  TW_CHECK(falling, lines.falling(), 0.0, tolerance{});
  TW_CHECK(falling, lines.falling_flow(), 0.0, tolerance{});
  const auto ended = lines.columns_at(0.64);
  TW_CHECK(falling, ended.flow, 0.0, tolerance{});
  TW_CHECK(falling, ended.water, 0.0, tolerance{});
}

TEST_CASE("siphon lines: of several columns the flow and the water that ends with it") {
  // (q1 + q2)^2/(q1^2/V1 + q2^2/V2), of what falls and of what would fall now.
  const auto a = line("A", 0.02, pipe("A", 0.04, 0.5, 200.0)), b = line("B", 0.05, pipe("B", 0.03, 0.8, 300.0));
  const double va = 0.5 * bore_area(0.04), vb = 0.8 * bore_area(0.03), h = 0.64;
  const auto flow_of = [&](const tp::return_line& one) {
    auto lines = started(system_of({one}), 0.0, h);
    return lines.flow(h);
  };
  const double qa = flow_of(a), qb = flow_of(b);
  const auto both = [&](double one, double v1, double two, double v2) {
    return (one + two) * (one + two) / (one * one / v1 + two * two / v2);
  };
  auto lines = started(system_of({a, b}), 0.0, h);
  const auto running = lines.columns_at(h);
  TW_CHECK(falling, running.flow, qa + qb, relative(1e-4));
  TW_CHECK(falling, running.water, both(qa, va, qb, vb), relative(1e-4));
  lines.draw_air(0.02, h);
  const double end = 2.0 * va / qa;
  lines.fall(0.5 * end);
  const auto one_falls = lines.columns_at(h);
  TW_CHECK(falling, one_falls.flow, 0.5 * qa + qb, relative(1e-4));
  TW_CHECK(falling, one_falls.water, both(0.5 * qa, 0.25 * va, qb, vb), relative(1e-4));
  auto ended = lines;
  ended.fall(end);  // the first is empty, and counts no longer
  TW_CHECK(falling, ended.columns_at(h).flow, qb, relative(1e-4));
  TW_CHECK(falling, ended.columns_at(h).water, vb, relative(1e-4));
  // From no height nothing falls but what is falling.
  const auto level = lines.columns_at(0.0);
  TW_CHECK(falling, level.flow, 0.5 * qa, relative(1e-4));
  TW_CHECK(falling, level.water, 0.25 * va, relative(1e-4));
  // In a quarter of the height half as much.
  TW_CHECK(falling, lines.columns_at(0.25 * h).flow, 0.5 * qa + 0.5 * qb, relative(1e-4));
  // What holds no water ends at once: its flow counts, and no water is left to go with.
  auto empty = started(system_of({a, line("C", 0.03, pipe("C", 0.03, 0.0, 5.0))}), 0.0, h);
  const auto with_fitting = empty.columns_at(h);
  TW_CHECK(falling, with_fitting.flow, qa + through(0.03, 6.0, h), relative(1e-4));
  TW_CHECK(falling, with_fitting.water, 0.0, tolerance{});
  // The resistance of a shared pipe counts for each.
  auto shared = started(
      system_of({line("A", 0.02, pipe("A", 0.04, 0.0, 200.0))}, {{.pipe = pipe("trunk", 0.04, 0.0, 99.0)}}), 0.0, h);
  TW_CHECK(falling, shared.columns_at(h).flow, through(0.04, 300.0, h), relative(1e-9));
}

TEST_CASE("siphon lines: an opening at the surface or above it does not siphon, its column falls at once") {
  const auto above = line("A", -0.03, pipe("A", 0.04, 0.5, 200.0));
  // Edge 1 m over the sump's water, 20 mm over the edge; the opening stands 30 mm above the edge: the column is 1.03 m.
  auto lines = started(system_of({above}), 0.02, 1.02);
  TW_CHECK(by_hand, lines.flow(1.02), 0.0, tolerance{});
  TW_CHECK(falling, lines.falling(), 0.5 * bore_area(0.04), relative(1e-14));
  TW_CHECK(falling, lines.falling_flow(), through(0.04, 201.0 + 0.02 * 0.5 / 0.04, 1.03), relative(1e-9));
  // One below the edge that lies dry: its column is as high as the edge.
  auto dry = started(system_of({line("A", 0.01, pipe("A", 0.04, 0.5, 200.0))}), -0.02, 0.98);
  TW_CHECK(falling, dry.falling_flow(), through(0.04, 201.0 + 0.02 * 0.5 / 0.04, 1.0), relative(1e-9));
  // Exactly at the surface it draws air; moved down by a millimetre it runs.
  auto at_surface = started(system_of({above}), 0.03, 1.03);
  TW_CHECK(by_hand, at_surface.flow(1.03), 0.0, tolerance{});
  auto deeper = started(system_of({above}), 0.03, 1.03, 0.001);
  CHECK(deeper.flow(1.03) > 0.0);
  TW_CHECK(by_hand, deeper.next_opening(), -0.029, relative(1e-14));
  // A display that stands no higher than the sump lets its columns creep: ten times what counts as still.
  auto creeping = started(system_of({above}), 0.02, -0.02);
  TW_CHECK(falling, creeping.falling_flow(), 1e-6, relative(1e-12));
  // A fitting holds nothing that could fall.
  auto fitting = started(system_of({line("A", -0.03, pipe("A", 0.04, 0.0, 5.0))}), 0.02, 1.02);
  TW_CHECK(falling, fitting.falling_flow(), 0.0, tolerance{});
  // So does one with a litre in a thousand metres of capillary: what it holds falls.
  auto thin = started(system_of({line("A", -0.03, pipe("A", 0.002, 300.0, 5.0))}), 0.02, 1.02);
  TW_CHECK(falling, thin.falling(), 300.0 * bore_area(0.002), relative(1e-12));
}

TEST_CASE("siphon lines: a return above the water falls with the shared pipe only when none other fills it") {
  const auto above = line("A", -0.03, pipe("A", 0.04, 0.5, 200.0));
  const auto below = line("B", 0.05, pipe("B", 0.03, 0.8, 300.0));
  const tp::shared_pipe trunk{.pipe = pipe("trunk", 0.05, 1.0, 100.0)};
  const double in_a = 0.5 * bore_area(0.04), in_trunk = bore_area(0.05), in_b = 0.8 * bore_area(0.03);
  TW_CHECK(falling, started(system_of({above, below}, {trunk}), 0.02, 1.02).falling(), in_a, relative(1e-14));
  TW_CHECK(falling, started(system_of({above, below}, {trunk}), 0.02, 1.02).standing(), in_b + in_trunk,
           relative(1e-14));
  TW_CHECK(falling, started(system_of({above}, {trunk}), 0.02, 1.02).falling(), in_a + in_trunk, relative(1e-14));
  // A pipe that only the other one passes stays with it.
  tp::shared_pipe of_b = trunk;
  of_b.returns = {"B"};
  TW_CHECK(falling, started(system_of({above, below}, {of_b}), 0.02, 1.02).falling(), in_a, relative(1e-14));
  // Both above: what they share falls with the first, once.
  auto second = above;
  second.label = "C";
  TW_CHECK(falling, started(system_of({above, second}, {trunk}), 0.02, 1.02).falling(), 2.0 * in_a + in_trunk,
           relative(1e-14));
}

TEST_CASE("siphon lines: how fast a return without a pipe siphons is not known") {
  auto in = system_of({{.label = "A", .flow = litres_per_second(1.0), .outlet_below_edge = metres(0.02)}});
  siphon_lines lines{"here", in};
  CHECK_THROWS_WITH_AS(lines.start(0.0, 0.0, 1.0), "here: A has no pipe: how fast it siphons back is not known",
                       invalid_input);
  in.returns[0].outlet_below_edge = metres(-0.02);  // above the water nobody asks
  siphon_lines above{"here", in};
  CHECK_NOTHROW(above.start(0.0, 0.0, 1.0));
  TW_CHECK(falling, above.falling(), 0.0, tolerance{});
}
