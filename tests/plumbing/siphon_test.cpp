// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/siphon.hpp>

#include <tankwright/plumbing/emptying.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

water::liquid liquid_of(double nu, double rho = 1000.0) {
  return {kilograms_per_cubic_metre(rho), pascal_seconds(nu * rho)};
}

tp::pipe_run pipe(double bore, double metre, double k) {
  return {
      .label = "siphon", .bore = tp::pipe_bore{metres(bore)}, .length = metres(metre), .fittings = tp::known_loss(k)};
}

}  // namespace

TEST_CASE("siphon: reference table") {
  const auto crest = [](const reference_row& row) {
    // Without loss the speed is that of the whole drop. The book's g enters through the heights.
    const double scale = row["g"] / 9.80665;
    const tp::siphon_crest at{.above_surface = metres(row["z"] * scale),
                              .speed = metres_per_second(std::sqrt(2.0 * row["g"] * row["drop"])),
                              .density = kilograms_per_cubic_metre(row["rho"]),
                              .air = absolute_pressure{kilopascals(row["air"])}};
    return in_kilopascals(tp::siphon_crest_pressure(at).value());
  };
  const auto time = [](const reference_row& row) {
    const auto opening = tp::outlet_through(tp::orifice{millimetres(row["bore"]), 1.0});
    const flow_rate q = tp::outflow(opening, metres(row["drop"])) * std::sqrt(row["g"] / 9.80665);
    return (litres(row["litres"]) / q).value();
  };
  const auto highest = [](const reference_row& row) {
    const tp::siphon_limit limit{.speed = metres_per_second(std::sqrt(2.0 * 9.80665 * row["drop"] * 0.3048)),
                                 .density = pounds_per_cubic_foot(row["gamma"]),
                                 .vapour_pressure = absolute_pressure{psi(row["vapour"])},
                                 .air = absolute_pressure{psi(row["air"])}};
    return row["z1"] + in_feet(tp::highest_siphon_crest(limit));
  };
  const auto flow = [](const reference_row& row) {
    return in_litres_per_minute(
        tp::siphon_flow(pipe(row["D"] * 1e-3, row["L"], row["K"]), metres(row["H"]), liquid_of(row["nu"])).central);
  };
  const auto exposed = [](const reference_row& row) {
    auto run = pipe(row["D"] * 1e-3, row["L"], row["K"]);
    run.roughness = metres(row["eps"]);
    return tp::siphon_until_exposed({.horizontal_area = square_metres(row["A"]),
                                     .run = run,
                                     .from = metres(row["from"]),
                                     .to = metres(row["to"]),
                                     .water = liquid_of(row["nu"])})
        .time.value();
  };
  check_rows(reference_rows("plumbing/siphon.csv"), {{"tankwright::plumbing::siphon_crest_pressure", crest},
                                                     {"tankwright::plumbing::outflow", time},
                                                     {"tankwright::plumbing::highest_siphon_crest", highest},
                                                     {"tankwright::plumbing::siphon_flow", flow},
                                                     {"tankwright::plumbing::siphon_until_exposed", exposed}});
}

TEST_CASE("siphon: the flow spends the whole drop") {
  // Friction and fittings by head_loss, and the exit's velocity head.
  const evidence spends{"tankwright::plumbing::siphon_flow", kind::identity, "head_loss + V^2/2g = drop"};
  const auto water = liquid_of(0.95e-6, 1023.0);
  for (const double drop : {0.01, 0.2, 0.8, 2.0}) {
    const auto run = pipe(0.0266, 1.8, 1.7);
    const flow_rate q = tp::siphon_flow(run, metres(drop), water).central;
    const double v = tp::mean_velocity(q, run.bore).value();
    TW_CHECK(spends, tp::head_loss(run, q, water) + metres(v * v / (2.0 * 9.80665)), metres(drop), relative(1e-12));
  }
  auto loose = pipe(0.0266, 1.8, 0.0);
  loose.fittings = {tp::loss_coefficient{1.0}, tp::loss_coefficient{1.7}, tp::loss_coefficient{2.5}, "elbows"};
  const auto band = tp::siphon_flow(loose, metres(0.8), water);
  TW_CHECK(spends, band.low, tp::siphon_flow(pipe(0.0266, 1.8, 2.5), metres(0.8), water).central, tolerance{});
  TW_CHECK(spends, band.high, tp::siphon_flow(pipe(0.0266, 1.8, 1.0), metres(0.8), water).central, tolerance{});
  TW_CHECK(spends, tp::siphon_flow(loose, metres(0.0), water).high, litres_per_hour(0.0), tolerance{});
}

TEST_CASE("siphon: at the highest crest the water boils") {
  const evidence boils{"tankwright::plumbing::highest_siphon_crest", kind::identity,
                       "crest pressure = vapour pressure"};
  const absolute_pressure vapour{kilopascals(3.1)};
  const velocity v = metres_per_second(1.8);
  const mass_density rho = kilograms_per_cubic_metre(1023.3);
  const length z =
      tp::highest_siphon_crest({.speed = v, .density = rho, .vapour_pressure = vapour, .loss_before = 0.7});
  const auto p = tp::siphon_crest_pressure({.above_surface = z, .speed = v, .density = rho, .loss_before = 0.7});
  TW_CHECK(boils, p.value(), vapour.value(), relative(1e-12));
}

TEST_CASE("siphon: until it draws air") {
  // A long rough pipe has a constant factor: then t = 2A (sqrt H1 - sqrt H2)/(a sqrt(2g/(sum of K)) ), the closed form.
  const evidence closed{"tankwright::plumbing::siphon_until_exposed", kind::identity, "closed form with losses alone"};
  const auto run = pipe(0.034, 0.0, 6.0);
  const tp::siphon_draw draw{.horizontal_area = square_metres(2.16),
                             .run = run,
                             .from = metres(1.2),
                             .to = metres(1.1),
                             .water = liquid_of(1e-6)};
  const auto ran = tp::siphon_until_exposed(draw);
  TW_CHECK(closed, ran.time,
           tp::emptying_time(square_metres(2.16), {.outlet = tp::outlet_through(tp::resisting_pipe{run.bore, 7.0}),
                                                   .from = metres(1.2),
                                                   .to = metres(1.1)}),
           relative(1e-12));
  TW_CHECK(closed, ran.volume, litres(216.0), relative(1e-13));
}

TEST_CASE("siphon: what cannot be is refused by name") {
  const auto water = liquid_of(1e-6);
  CHECK_THROWS_WITH_AS((void)tp::siphon_flow(pipe(0.0, 1.0, 1.0), metres(0.5), water),
                       doctest::Contains("siphon: bore = 0 m is not possible; expected 0.0001 to 20 m"), invalid_input);
  CHECK_THROWS_WITH_AS(
      (void)tp::siphon_flow(pipe(0.03, 1.0, 1.0), metres(-0.5), water),
      "tankwright::plumbing::siphon_flow: siphon: drop = -0.5 m is not possible; expected at least 0 m", invalid_input);
  const tp::siphon_draw draw{.horizontal_area = square_metres(2.16),
                             .run = pipe(0.034, 1.0, 1.0),
                             .from = metres(1.0),
                             .to = metres(1.1),
                             .water = water};
  CHECK_THROWS_WITH_AS((void)tp::siphon_until_exposed(draw),
                       "tankwright::plumbing::siphon_until_exposed: siphon: to = 1.1 m is higher than from, 1 m",
                       invalid_input);
  auto shut = draw;
  shut.to = metres(0.5);
  shut.run.valve = tp::flow_coefficient::from_kv(0.0);
  CHECK_THROWS_WITH_AS((void)tp::siphon_until_exposed(shut),
                       "tankwright::plumbing::siphon_until_exposed: siphon has its valve shut: nothing runs",
                       invalid_input);
  CHECK_THROWS_AS((void)tp::siphon_crest_pressure({.above_surface = metres(1.0),
                                                   .speed = metres_per_second(-1.0),
                                                   .density = kilograms_per_cubic_metre(1023.0)}),
                  invalid_input);
  CHECK_THROWS_AS((void)tp::highest_siphon_crest({.speed = metres_per_second(1.0),
                                                  .density = kilograms_per_cubic_metre(0.0),
                                                  .vapour_pressure = absolute_pressure{kilopascals(3.0)}}),
                  invalid_input);
}

TEST_CASE("siphon: nothing is lost before the crest unless said otherwise") {
  // p = air - rho (g z + v^2/2) with nothing lost: 101325 - 1000 (9.80665 + 0.5) Pa.
  const evidence by_hand{"tankwright::plumbing::siphon_crest_pressure", kind::identity, "by hand"};
  const evidence highest{"tankwright::plumbing::highest_siphon_crest", kind::identity, "by hand"};
  const absolute_pressure air{pascals(101325.0)};
  const mass_density rho = kilograms_per_cubic_metre(1000.0);
  TW_CHECK(by_hand,
           tp::siphon_crest_pressure(
               {.above_surface = metres(1.0), .speed = metres_per_second(1.0), .density = rho, .air = air})
               .value(),
           pascals(101325.0 - 1000.0 * 10.30665), relative(1e-12));
  TW_CHECK(highest,
           tp::highest_siphon_crest({.speed = metres_per_second(1.0),
                                     .density = rho,
                                     .vapour_pressure = absolute_pressure{pascals(3000.0)},
                                     .air = air}),
           metres((98325.0 / 1000.0 - 0.5) / 9.80665), relative(1e-12));
}

TEST_CASE("siphon: down to where it starts it runs no time at all") {
  const evidence none{"tankwright::plumbing::siphon_until_exposed", kind::identity, "nothing between equal drops"};
  const auto ran = tp::siphon_until_exposed({.horizontal_area = square_metres(2.16),
                                             .run = pipe(0.034, 1.0, 1.0),
                                             .from = metres(1.0),
                                             .to = metres(1.0),
                                             .water = liquid_of(1e-6)});
  TW_CHECK(none, ran.time, seconds(0.0), tolerance{});
  TW_CHECK(none, ran.volume, litres(0.0), tolerance{});
}
