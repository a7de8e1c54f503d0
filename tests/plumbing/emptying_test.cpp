// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/emptying.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

constexpr double pi = 3.14159265358979323846;

/// Times shrink as 1/sqrt(g); books use their own g.
double book_gravity(const reference_row& row) { return std::sqrt(9.80665 / (row.has("g") ? row["g"] : 9.80665)); }

tp::effective_area outlet_of(const reference_row& row) {
  if (row.has("resistance"))
    return tp::outlet_through(tp::resisting_pipe{tp::pipe_bore{metres(row["bore"])}, row["resistance"]});
  return tp::outlet_through(tp::orifice{metres(row["bore"]), row["Cd"]});
}

/// An outlet that passes a flow at a head.
tp::effective_area passing(double q, double h) {
  return tp::effective_area{square_metres(q / std::sqrt(2.0 * 9.80665 * h))};
}

const tp::effective_area hole = tp::outlet_through(tp::orifice{millimetres(20.0)});

}  // namespace

TEST_CASE("emptying: reference table") {
  const auto emptying = [](const reference_row& row) {
    tp::any_vessel v = row.has("bowl") ? tp::any_vessel{tp::bowl{metres(row["bowl"])}}
                                       : tp::any_vessel{tp::area_profile{square_metres(row["A"])}};
    return book_gravity(row) *
           tp::emptying_time(v, {.outlet = outlet_of(row), .from = metres(row["from"]), .to = metres(row["to"])})
               .value();
  };
  const auto levelling = [](const reference_row& row) {
    return book_gravity(row) * tp::levelling_time({.first = square_metres(row["first"]),
                                                   .second = square_metres(row["second"]),
                                                   .opening = tp::effective_area{square_metres(row["opening"])},
                                                   .from = metres(row["from"]),
                                                   .to = metres(row["to"])})
                                   .value();
  };
  const auto tank = [](const reference_row& row) {
    return tp::inflow_and_outlet{.horizontal_area = square_metres(row["A"]),
                                 .inflow = cubic_metres_per_second(row["Q"]),
                                 .outlet = passing(row["Qout"], row["at"])};
  };
  const auto change = [&](const reference_row& row) {
    return tp::level_change_time(tank(row), {metres(row["from"]), metres(row["to"])}).value();
  };
  const auto steady = [&](const reference_row& row) { return tp::steady_level(tank(row)).value(); };
  const auto laminar = [](const reference_row& row) {
    const duration t =
        tp::laminar_emptying_time({.horizontal_area = square_metres(row["A"]),
                                   .bore = tp::pipe_bore{metres(row["bore"])},
                                   .pipe_length = metres(row["L"]),
                                   .from = metres(row["from"]),
                                   .to = metres(row["to"]),
                                   .water = {kilograms_per_cubic_metre(row["rho"]), pascal_seconds(row["mu"])}});
    return t.value() * 9.80665 / row["g"];
  };
  const auto coefficient = [](const reference_row& row) {
    return book_gravity(row) * tp::discharge_coefficient_from({.horizontal_area = square_metres(row["A"]),
                                                               .bore = metres(row["bore"]),
                                                               .from = metres(row["from"]),
                                                               .to = metres(row["to"]),
                                                               .time = seconds(row["time"])});
  };
  const auto weir_tail = [](const reference_row& row) {
    return tp::plain_weir_tail_time({.horizontal_area = square_metres(row["A"]),
                                     .width = metres(row["b"]),
                                     .discharge_coefficient = row["C"] / (2.0 / 3.0 * std::sqrt(2.0 * 9.80665)),
                                     .from = metres(row["from"]),
                                     .to = metres(row["to"])})
        .value();
  };
  const auto outflow = [](const reference_row& row) {
    return in_litres_per_hour(tp::outflow(outlet_of(row), metres(row["h"])));
  };
  check_rows(reference_rows("plumbing/emptying.csv"),
             {{"tankwright::plumbing::emptying_time", emptying},
              {"tankwright::plumbing::levelling_time", levelling},
              {"tankwright::plumbing::level_change_time", change},
              {"tankwright::plumbing::steady_level", steady},
              {"tankwright::plumbing::laminar_emptying_time", laminar},
              {"tankwright::plumbing::discharge_coefficient_from", coefficient},
              {"tankwright::plumbing::plain_weir_tail_time", weir_tail},
              {"tankwright::plumbing::outflow", outflow}});
}

TEST_CASE("emptying: closed forms against the quadrature, shape by shape") {
  const evidence closed{"tankwright::plumbing::emptying_time", kind::identity, "closed form = quadrature"};
  const auto both = [&](const tp::any_vessel& v, auto plan_at, double from, double to, double allowed) {
    TW_CHECK(closed, tp::emptying_time(v, {.outlet = hole, .from = metres(from), .to = metres(to)}),
             tp::emptying_time(plan_at, {hole, metres(from), metres(to)}), relative(allowed));
  };
  both(
      square_metres(1.3), [](length) { return square_metres(1.3); }, 0.9, 0.0, 1e-14);
  both(
      tp::bowl{metres(0.8)}, [](length h) { return square_metres(pi * h.value() * (1.6 - h.value())); }, 1.2, 0.1,
      1e-13);
  both(
      tp::cone{metres(2.0), metres(0.5)}, [](length h) { return square_metres(pi * h.value() * h.value() / 16.0); },
      1.7, 0.2, 1e-13);
  both(
      tp::lying_cylinder{metres(1.2), metres(3.0)},
      [](length h) { return square_metres(6.0 * std::sqrt(h.value() * (1.2 - h.value()))); }, 1.0, 0.1, 1e-9);
  // Walls that lean out: 1 m2 at the floor, 1.6 m2 at 0.6 m, then upright.
  const tp::area_profile leaning{{metres(0.0), square_metres(1.0)}, {metres(0.6), square_metres(1.6)}};
  both(
      leaning, [](length h) { return square_metres(1.0 + h.value()); }, 0.55, 0.05, 1e-13);
  // A step: 1 m2 up to 0.3 m, 0.7 m2 above; by hand 2 [0.7 (sqrt .8 - sqrt .3) + 1 (sqrt .3)] / (Cd a sqrt 2g).
  const tp::area_profile stepped{
      {metres(0.0), square_metres(1.0)}, {metres(0.3), square_metres(1.0)}, {metres(0.3), square_metres(0.7)}};
  const double by_hand = 2.0 * (0.7 * (std::sqrt(0.8) - std::sqrt(0.3)) + std::sqrt(0.3)) /
                         (0.61 * pi / 4.0 * 4e-4 * std::sqrt(2.0 * 9.80665));
  TW_CHECK(closed, tp::emptying_time(stepped, {.outlet = hole, .from = metres(0.8)}), seconds(by_hand),
           relative(1e-13));
}

TEST_CASE("emptying: outlets") {
  const evidence effective{"tankwright::plumbing::outlet_through", kind::identity, "definition"};
  TW_CHECK(effective, hole.value(), square_metres(0.61 * pi / 4.0 * 4e-4), relative(1e-14));
  TW_CHECK(effective, tp::outlet_through(tp::resisting_pipe{tp::pipe_bore{millimetres(20.0)}, 4.0}).value(),
           square_metres(pi / 8.0 * 4e-4), relative(1e-14));
  const evidence flow{"tankwright::plumbing::outflow", kind::identity, "Torricelli, Cd 1: 1 m2 passes sqrt(2gh)"};
  TW_CHECK(flow, tp::outflow(tp::effective_area{square_metres(1.0)}, metres(1.0)),
           cubic_metres_per_second(std::sqrt(19.6133)), relative(1e-15));
  // The coefficient that the fall of emptying_time gives back.
  const evidence back{"tankwright::plumbing::discharge_coefficient_from", kind::identity, "inverse of emptying_time"};
  const duration t = tp::emptying_time(square_metres(2.0), {.outlet = hole, .from = metres(0.7), .to = metres(0.4)});
  TW_CHECK(back,
           tp::discharge_coefficient_from({.horizontal_area = square_metres(2.0),
                                           .bore = millimetres(20.0),
                                           .from = metres(0.7),
                                           .to = metres(0.4),
                                           .time = t}),
           0.61, relative(1e-14));
}

TEST_CASE("emptying: the vessel loses what the outlet passes, and time adds up") {
  const evidence rate{"tankwright::plumbing::emptying_time", kind::property, "dt/dh = A/Q"};
  const tp::any_vessel bowl = tp::bowl{metres(0.8)};
  for (double h = 0.2; h < 1.5; h += 0.1) {
    const duration t = tp::emptying_time(bowl, {.outlet = hole, .from = metres(h + 5e-5), .to = metres(h - 5e-5)});
    const double expected = pi * h * (1.6 - h) * 1e-4 / tp::outflow(hole, metres(h)).value();
    TW_CHECK(rate, t, seconds(expected), relative(1e-6));
  }
  const auto part = [&](double a, double b) {
    return tp::emptying_time(bowl, {.outlet = hole, .from = metres(a), .to = metres(b)});
  };
  TW_CHECK(rate, part(1.5, 0.7) + part(0.7, 0.1), part(1.5, 0.1), relative(1e-13));
}

TEST_CASE("emptying: two tanks, inflow and a fall to nothing") {
  // A second tank without end is an outlet at a fixed height.
  const evidence level{"tankwright::plumbing::levelling_time", kind::identity, "an endless second tank"};
  TW_CHECK(level,
           tp::levelling_time({.first = square_metres(1.3),
                               .second = square_metres(1e12),
                               .opening = hole,
                               .from = metres(0.5),
                               .to = metres(0.1)}),
           tp::emptying_time(square_metres(1.3), {.outlet = hole, .from = metres(0.5), .to = metres(0.1)}),
           relative(1e-11));
  const evidence none{"tankwright::plumbing::level_change_time", kind::identity, "no inflow: plain emptying"};
  const tp::inflow_and_outlet dry{
      .horizontal_area = square_metres(1.3), .inflow = litres_per_hour(0.0), .outlet = hole};
  TW_CHECK(none, tp::level_change_time(dry, {metres(0.5), metres(0.0)}),
           tp::emptying_time(square_metres(1.3), {.outlet = hole, .from = metres(0.5)}), relative(1e-14));
  // The steady level of the smallest inflow, (Q/k)^2/2g, is 0 in double precision; the fall down to 1 mm ends.
  tp::inflow_and_outlet seep = dry;
  seep.inflow = flow_rate::from_value(1e-300);
  TW_CHECK(none, tp::level_change_time(seep, {metres(0.5), metres(0.001)}),
           tp::emptying_time(square_metres(1.3), {.outlet = hole, .from = metres(0.5), .to = metres(0.001)}),
           relative(1e-14));
  // Rising and falling against the quadrature of A dh / (Q - k sqrt h).
  const evidence both{"tankwright::plumbing::level_change_time", kind::identity, "quadrature"};
  const tp::inflow_and_outlet tank{
      .horizontal_area = square_metres(1.3), .inflow = litres_per_minute(20.0), .outlet = hole};
  const double steady = tp::steady_level(tank).value(), k = hole.value().value() * std::sqrt(19.6133);
  for (const double from : {0.05, 0.8}) {
    const double to = 0.9 * steady + 0.1 * from;
    const double sum = tankwright::numerics::integral(
        [&](double u) { return 1.3 * 2.0 * u / (tank.inflow->value() - k * u); }, std::sqrt(from), std::sqrt(to), 64);
    TW_CHECK(both, tp::level_change_time(tank, {metres(from), metres(to)}), seconds(sum), relative(1e-12));
  }
}

TEST_CASE("emptying: laminar pipe, against its own law") {
  // Exponential: halving takes the same time from any height.
  const evidence half{"tankwright::plumbing::laminar_emptying_time", kind::identity, "exponential decay"};
  const auto time = [](double from, double to) {
    return tp::laminar_emptying_time({.horizontal_area = square_metres(0.06),
                                      .bore = tp::pipe_bore{millimetres(4.0)},
                                      .pipe_length = metres(8.0),
                                      .from = metres(from),
                                      .to = metres(to),
                                      .water = {kilograms_per_cubic_metre(1023.3), millipascal_seconds(0.96)}});
  };
  TW_CHECK(half, time(0.4, 0.2), time(0.2, 0.1), relative(1e-14));
  // 32 nu L A / (g d^2 a) ln 2 = 32 9.3814e-7 8 0.06 / (9.80665 1.6e-5 1.256637e-5) 0.693147 = 5065.6 s
  TW_CHECK(half, time(0.4, 0.2), seconds(5065.6), relative(1e-4));
}

TEST_CASE("emptying: over an edge") {
  // A plain weir by closed form and by quadrature of the same law.
  const evidence plain{"tankwright::plumbing::plain_weir_tail_time", kind::identity, "quadrature of A/Q"};
  const double c = 2.0 / 3.0 * std::sqrt(19.6133) * 0.62;
  const double sum = tankwright::numerics::integral([&](double w) { return 2.0 * 2.16 / (c * 0.4) + 0.0 * w; },
                                                    1.0 / std::sqrt(0.02), 1.0 / std::sqrt(0.001), 4);
  TW_CHECK(plain,
           tp::plain_weir_tail_time({.horizontal_area = square_metres(2.16),
                                     .width = metres(0.4),
                                     .discharge_coefficient = 0.62,
                                     .from = millimetres(20.0)}),
           seconds(sum), relative(1e-13));
  const evidence notch{"tankwright::plumbing::v_notch_tail_time", kind::identity, "quadrature of A/Q"};
  const double k = 8.0 / 15.0 * 0.6 * std::sqrt(19.6133);  // 90 degrees: tan 45 = 1
  const double slow =
      tankwright::numerics::integral([&](double h) { return 2.16 / (k * std::pow(h, 2.5)); }, 0.01, 0.03, 64);
  TW_CHECK(notch,
           tp::v_notch_tail_time({.horizontal_area = square_metres(2.16),
                                  .opening = degrees(90.0),
                                  .discharge_coefficient = 0.6,
                                  .from = millimetres(30.0),
                                  .to = millimetres(10.0)}),
           seconds(slow), relative(1e-10));

  // A standpipe up to half its bore is a plain weir with C b = k D sqrt(1000)^3 / 7500 / 1000 (SI), so the closed form
  // holds.
  const evidence edge{"tankwright::plumbing::edge_tail_time", kind::identity, "closed form of a constant coefficient"};
  const double cb = 53.0 * std::pow(1000.0, 1.5) / 7500.0 * 1e-3;
  const double exact = 2.0 * 2.16 / cb * (1.0 / std::sqrt(0.001) - 1.0 / std::sqrt(0.02));
  TW_CHECK(edge,
           tp::edge_tail_time({.horizontal_area = square_metres(2.16),
                               .edge = tp::standpipe{tp::pipe_bore{millimetres(53.0)}},
                               .from = millimetres(20.0)}),
           seconds(exact), relative(1e-12));
  // A wall, with the bend at 5 mm: a finer quadrature in h itself.
  const evidence wall{"tankwright::plumbing::edge_tail_time", kind::property, "finer quadrature"};
  const tp::full_width_edge over{.width = metres(0.4), .crest_height = metres(0.5)};
  const auto area_over_flow = [&](double h) { return 2.16 / tp::rehbock_weir(over, metres(h), extrapolate).value(); };
  const double fine = tankwright::numerics::integral(area_over_flow, 0.001, 0.005, 200) +
                      tankwright::numerics::integral(area_over_flow, 0.005, 0.02, 200);
  TW_CHECK(wall, tp::edge_tail_time({.horizontal_area = square_metres(2.16), .edge = over, .from = millimetres(20.0)}),
           seconds(fine), relative(1e-5));
}

TEST_CASE("emptying: what cannot be is refused by name") {
  const auto empty = [](const tp::any_vessel& v, length from, length to) {
    return [=] { (void)tp::emptying_time(v, {.outlet = hole, .from = from, .to = to}); };
  };
  CHECK_THROWS_WITH_AS(empty(square_metres(1.0), metres(0.2), metres(0.5))(),
                       "tankwright::plumbing::emptying_time: to = 0.5 m is higher than from, 0.2 m", invalid_input);
  CHECK_THROWS_WITH_AS(empty(tp::bowl{metres(0.4)}, metres(0.9), metres(0.0))(),
                       "tankwright::plumbing::emptying_time: from = 0.9 m stands above the vessel, 0.8 m",
                       invalid_input);
  CHECK_THROWS_WITH_AS(
      empty(square_metres(0.0), metres(0.9), metres(0.0))(),
      "tankwright::plumbing::emptying_time: vessel: horizontal area = 0 m2 is not possible; expected more "
      "than 0 and at most 1000000 m2",
      invalid_input);
  CHECK_THROWS_WITH_AS(
      empty(tp::area_profile{{metres(0.1), square_metres(1.0)}}, metres(0.9), metres(0.0))(),
      "tankwright::plumbing::emptying_time: vessel has a plan profile that does not start at the floor", invalid_input);
  CHECK_THROWS_WITH_AS(empty(tp::area_profile{{metres(0.0), square_metres(1.0)}, {metres(-0.1), square_metres(1.0)}},
                             metres(0.9), metres(0.0))(),
                       "tankwright::plumbing::emptying_time: vessel has a plan profile whose heights do not rise",
                       invalid_input);
  CHECK_THROWS_WITH_AS(empty(tp::area_profile{std::vector<tp::area_slice>{}}, metres(0.9), metres(0.0))(),
                       "tankwright::plumbing::emptying_time: vessel has a plan profile without slices", invalid_input);
  CHECK_THROWS_AS(empty(square_metres(1.0), metres(-0.2), metres(-0.5))(), invalid_input);
  CHECK_THROWS_AS((void)tp::outlet_through(tp::orifice{millimetres(20.0), 1.2}), invalid_input);
  CHECK_THROWS_AS((void)tp::outlet_through(tp::resisting_pipe{tp::pipe_bore{millimetres(20.0)}, 0.0}), invalid_input);
  CHECK_THROWS_AS((void)tp::outflow(hole, metres(-0.1)), invalid_input);
  CHECK_THROWS_AS((void)tp::emptying_time([](length) { return square_metres(0.0); }, {hole, metres(0.5), metres(0.1)}),
                  invalid_input);
  const tp::inflow_and_outlet tank{
      .horizontal_area = square_metres(1.3), .inflow = litres_per_minute(20.0), .outlet = hole};
  CHECK_THROWS_WITH_AS(
      (void)tp::level_change_time(tank, {metres(0.5), metres(0.1)}),
      doctest::Contains("to = 0.1 m is not reached: the water goes from 0.5 m towards its steady level"),
      invalid_input);
  tp::inflow_and_outlet seep = tank;
  seep.inflow = flow_rate::from_value(1e-300);
  CHECK_THROWS_WITH_AS((void)tp::level_change_time(seep, {metres(0.5), metres(0.0)}),
                       doctest::Contains("to = 0 m is not reached"), invalid_input);
  CHECK_THROWS_AS((void)tp::edge_tail_time({.horizontal_area = square_metres(2.0),
                                            .edge = tp::standpipe{tp::pipe_bore{millimetres(53.0)}},
                                            .from = millimetres(20.0),
                                            .to = metres(0.0)}),
                  invalid_input);
  CHECK_THROWS_AS(
      (void)tp::laminar_emptying_time({.horizontal_area = square_metres(0.06),
                                       .bore = tp::pipe_bore{millimetres(20.0)},
                                       .pipe_length = metres(2.0),
                                       .from = metres(0.4),
                                       .to = metres(0.2),
                                       .water = {kilograms_per_cubic_metre(1023.3), millipascal_seconds(0.96)}}),
      out_of_range);
}

TEST_CASE("emptying: a profile that leans above a straight part, and shapes of another size") {
  const evidence closed{"tankwright::plumbing::emptying_time", kind::identity, "closed form = quadrature"};
  // 1 m2 up to 0.3 m, then growing by 2 m2 a metre: A = 0.4 + 2 z; the integral of A/sqrt(z) is 0.8 sqrt(z) + 4/3 z^1.5.
  const tp::area_profile vessel{
      {metres(0.0), square_metres(1.0)}, {metres(0.3), square_metres(1.0)}, {metres(0.6), square_metres(1.6)}};
  const auto upper = [](double z) { return 0.8 * std::sqrt(z) + 4.0 / 3.0 * z * std::sqrt(z); };
  const double sum = upper(0.5) - upper(0.3) + 2.0 * (std::sqrt(0.3) - std::sqrt(0.1));
  TW_CHECK(closed, tp::emptying_time(vessel, {.outlet = hole, .from = metres(0.5), .to = metres(0.1)}),
           seconds(sum / (hole.value().value() * std::sqrt(2.0 * 9.80665))), relative(1e-13));
  // A full tank on its side, to the brim: 4/3 L d^1.5.
  const double brim = 4.0 / 3.0 * 3.0 * 0.7 * std::sqrt(0.7);
  TW_CHECK(closed,
           tp::emptying_time(tp::lying_cylinder{metres(0.7), metres(3.0)}, {.outlet = hole, .from = metres(0.7)}),
           seconds(brim / (hole.value().value() * std::sqrt(2.0 * 9.80665))), relative(1e-13));
}

TEST_CASE("emptying: two tanks level out all the way unless a rest is given") {
  const evidence level{"tankwright::plumbing::levelling_time", kind::identity, "closed form by hand"};
  // 2 x 1 x 3/4 x sqrt(0.25) = 0.75 over the opening's a sqrt(2g).
  TW_CHECK(level,
           tp::levelling_time(
               {.first = square_metres(1.0), .second = square_metres(3.0), .opening = hole, .from = metres(0.25)}),
           seconds(0.75 / (hole.value().value() * std::sqrt(2.0 * 9.80665))), relative(1e-13));
}

TEST_CASE("emptying: the steady level itself is never reached, and where it stands the water is at once") {
  const evidence still{"tankwright::plumbing::level_change_time", kind::property, "no change takes no time"};
  tp::inflow_and_outlet tank{
      .horizontal_area = square_metres(1.3), .inflow = tp::outflow(hole, metres(1.0)), .outlet = hole};
  for (const double from : {2.0, 0.5}) {
    CHECK_THROWS_WITH_AS((void)tp::level_change_time(tank, {metres(from), metres(1.0)}),
                         doctest::Contains("to = 1 m is not reached"), invalid_input);
    CHECK_NOTHROW((void)tp::level_change_time(tank, {metres(from), metres(1.0 + 1e-9 * (from - 1.0))}));
  }
  CHECK_THROWS_WITH_AS((void)tp::level_change_time(tank, {metres(0.5), metres(-0.1)}),
                       "tankwright::plumbing::level_change_time: to = -0.1 m is not possible; expected at least 0 m",
                       invalid_input);
  for (const double h : {0.0, 0.001, 0.5, 1.0, 2.0}) {
    TW_CHECK(still, tp::level_change_time(tank, {metres(h), metres(h)}), seconds(0.0), tolerance{});
  }
}
