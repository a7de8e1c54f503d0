// SPDX-License-Identifier: BSL-1.0
#include <string>
#include <tankwright/plumbing/fittings.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twp = tankwright::plumbing;

namespace {

evidence about(const char* function, kind rests_on, const char* source) {
  return {std::string{"tankwright::plumbing::"} + function, rests_on, source};
}
twp::pipe_bore inch_bore(double d) { return twp::pipe_bore{inches(d)}; }
twp::pipe_bore metre_bore(double d) { return twp::pipe_bore{metres(d)}; }
bool ordered(const estimate<twp::loss_coefficient>& k) { return k.low < k.central && k.central < k.high; }

const twp::fitting all_fittings[] = {
    twp::fitting::elbow_90,         twp::fitting::elbow_45,           twp::fitting::return_bend,
    twp::fitting::tee_through_run,  twp::fitting::tee_through_branch, twp::fitting::mitre_90,
    twp::fitting::mitre_45,         twp::fitting::union_or_coupling,  twp::fitting::gate_valve,
    twp::fitting::ball_valve,       twp::fitting::butterfly_valve,    twp::fitting::plug_valve,
    twp::fitting::swing_check,      twp::fitting::lift_check,         twp::fitting::foot_valve_hinged,
    twp::fitting::foot_valve_poppet};

}  // namespace

TEST_CASE("fittings: reference table") {
  const auto entrance = [](const reference_row& row) {
    const bool projecting = row.has("projecting");
    return twp::entrance_loss({.bore = metre_bore(0.1),
                               .projecting = projecting,
                               .lip_radius = metres(projecting ? 0.0 : 0.1 * row["radius_ratio"])})
        .central.value();
  };
  const auto downstream_pressure = [](const reference_row& row) {  // K-exp: Bernoulli with the loss of the step
    const double g = 9.80665;
    const double v1 = row["Q"] / (3.14159265358979 / 4 * row["D1"] * row["D1"]);
    const double v2 = row["Q"] / (3.14159265358979 / 4 * row["D2"] * row["D2"]);
    const double k =
        twp::section_change_loss({.from = metre_bore(row["D1"]), .to = metre_bore(row["D2"])}).central.value();
    return row["p1"] + row["gamma"] * ((1.0 - k) * v1 * v1 - v2 * v2) / (2 * g);
  };
  const auto tee = [](const reference_row& row) {
    const double y = row["Qbranch"] / (row["Qrun"] + row["Qbranch"]);
    const auto k = twp::tee_losses(
        {.direction = row.text("direction") == "joining" ? twp::tee_direction::joining : twp::tee_direction::dividing,
         .angle = row["angle"] == 90.0 ? twp::tee_branch_angle::ninety : twp::tee_branch_angle::forty_five,
         .run_bore = metre_bore(0.1),
         .branch_bore = metre_bore(0.1),
         .branch_share = fraction(y)});
    return (row.text("give") == "run" ? k.run : k.branch).central.value();
  };
  const auto equivalent = [](const reference_row& row) {  // of K = n f_T in the pipe that has f_T
    const auto f = twp::fully_turbulent_factor(inch_bore(row["d"]));
    return in_feet(twp::equivalent_length(twp::loss_coefficient{row["L/D"] * f.value()}, inch_bore(row["d"]), f));
  };
  check_rows(reference_rows("plumbing/fittings.csv"),
             {{"tankwright::plumbing::fully_turbulent_factor",
               [](const reference_row& row) { return twp::fully_turbulent_factor(inch_bore(row["d"])).value(); }},
              {"tankwright::plumbing::entrance_loss", entrance},
              {"tankwright::plumbing::section_change_loss", downstream_pressure},
              {"tankwright::plumbing::tee_losses", tee},
              {"tankwright::plumbing::loss_from_flow_coefficient",
               [](const reference_row& row) {
                 return twp::loss_from_flow_coefficient(twp::flow_coefficient::from_kv(row["Kv"]), metre_bore(row["D"]))
                     .value();
               }},
              {"tankwright::plumbing::hooper_loss",
               [](const reference_row& row) {
                 return twp::hooper_loss({row["K1"], row["Kinf"]}, twp::reynolds_number{row["Re"]}, inch_bore(row["D"]))
                     .central.value();
               }},
              {"tankwright::plumbing::darby_loss",
               [](const reference_row& row) {
                 return twp::darby_loss({row["K1"], row["Ki"], row["Kd"]}, twp::reynolds_number{row["Re"]},
                                        twp::nominal_size::from_inches(row["NPS"]))
                     .central.value();
               }},
              {"tankwright::plumbing::on_bore",
               [](const reference_row& row) {
                 return twp::on_bore(twp::known_loss(row["K1"]),
                                     {.from = metre_bore(row["D1"]), .to = metre_bore(row["D2"])})
                     .central.value();
               }},
              {"tankwright::plumbing::equivalent_length", equivalent}});
}

TEST_CASE("fittings: Crane's n times f_T") {
  // Lengths over bores of the 2018 IRC table: 90 degree elbow 30, tee through the branch 60; CalebBell/fluids, Crane's
  // standard bends: 30, 16, 50.
  const auto irc = about("fitting_loss", kind::published, "2018 IRC appendix A, table A.2.2: L/D of fittings");
  const auto fluids = about("fitting_loss", kind::library, "CalebBell/fluids, bends by \"Crane standard\": n");
  for (const double d : {0.622, 1.049, 1.610, 2.067, 3.068}) {
    const double ft = twp::fully_turbulent_factor(inch_bore(d)).value();
    const auto n = [&](twp::fitting kind) { return twp::fitting_loss(kind, inch_bore(d)).central.value() / ft; };
    TW_CHECK(irc, n(twp::fitting::elbow_90), 30.0, relative(1e-14));
    TW_CHECK(irc, n(twp::fitting::tee_through_branch), 60.0, relative(1e-14));
    TW_CHECK(fluids, n(twp::fitting::elbow_90), 30.0, relative(1e-14));
    TW_CHECK(fluids, n(twp::fitting::elbow_45), 16.0, relative(1e-14));
    TW_CHECK(fluids, n(twp::fitting::return_bend), 50.0, relative(1e-14));
  }
  const auto bands = about("fitting_loss", kind::property, "the band holds the value");
  for (const twp::fitting kind : all_fittings) {
    TW_HOLDS(bands, ordered(twp::fitting_loss(kind, inch_bore(1.59))));
    TW_HOLDS(bands, twp::fitting_loss(kind, inch_bore(1.59)).low.value() > 0.0);
  }
}

TEST_CASE("fittings: a valve's Kv there and back, and its US twin") {
  const auto definition =
      about("loss_from_flow_coefficient", kind::identity, "definition: Kv m3/h of water of 1000 kg/m3 lose 1 bar");
  const auto back = about("flow_coefficient_from_loss", kind::identity, "inverse of loss_from_flow_coefficient");
  for (const double kv : {0.5, 10.0, 500.0}) {
    for (const double d : {0.02, 0.045, 0.154}) {
      const auto k = twp::loss_from_flow_coefficient(twp::flow_coefficient::from_kv(kv), metre_bore(d));
      const double v = twp::mean_velocity(cubic_metres_per_hour(kv), metre_bore(d)).value();
      TW_CHECK(definition, kilopascals(0.5 * k.value() * v * v), bars(1.0), relative(1e-14));
      TW_CHECK(back, in_kv(twp::flow_coefficient_from_loss(k, metre_bore(d))), kv, relative(1e-14));
    }
  }
  // 1 US gpm at 1 psi.
  const double kv = 3.785411784e-3 * 60.0 / std::sqrt(6894.757293168361 / 1e5);
  TW_CHECK(definition, in_kv(twp::flow_coefficient::from_cv(1.0)), kv, relative(1e-14));
  TW_CHECK(definition, in_cv(twp::flow_coefficient::from_cv(7.0)), 7.0, relative(1e-15));
}

TEST_CASE("fittings: changes of bore") {
  const auto step = about("section_change_loss", kind::identity, "Borda-Carnot, (1 - A1/A2)^2");
  const auto limit = about("section_change_loss", kind::published,
                           "Crane TP-410: sharp entrance 0.5 and exit 1, the limits of a step to and from a tank");
  const auto continuous = about("section_change_loss", kind::property, "continuous and not falling in the angle");
  for (const double b : {0.3, 0.6, 0.9, 1.0}) {
    TW_CHECK(step, twp::section_change_loss({.from = metre_bore(b), .to = metre_bore(1.0)}).central.value(),
             (1 - b * b) * (1 - b * b), within(1e-15));
  }
  const auto k = [](double from, double to, double angle) {
    return twp::section_change_loss({.from = metre_bore(from), .to = metre_bore(to), .included_angle = degrees(angle)})
        .central.value();
  };
  TW_CHECK(limit, k(1e-4, 1.0, 180.0), 1.0, within(1e-7));
  TW_CHECK(limit, k(1.0, 1e-4, 180.0), 0.5, within(1e-7));
  for (double angle = 1.0; angle < 179.9; angle += 0.05) {
    for (const bool widening : {true, false}) {
      const double here = widening ? k(0.03, 0.05, angle) : k(0.05, 0.03, angle);
      const double next = widening ? k(0.03, 0.05, angle + 0.05) : k(0.05, 0.03, angle + 0.05);
      TW_HOLDS(continuous, next >= here && next - here < 5e-4);
    }
  }
  check_edges(twp::cone_angle_limits, [&](double angle, range_policy) { return k(0.03, 0.05, angle); });
}

TEST_CASE("fittings: tees are continuous in the flows, and meet Crane where Crane has one formula") {
  const auto continuous = about("tee_losses", kind::property, "continuous in the share of the branch");
  for (const auto direction : {twp::tee_direction::joining, twp::tee_direction::dividing}) {
    for (const auto angle : {twp::tee_branch_angle::forty_five, twp::tee_branch_angle::ninety}) {
      for (const double b : {0.5, 0.62, 0.75, 1.0}) {
        const auto k = [&](double y) {
          return twp::tee_losses({.direction = direction,
                                  .angle = angle,
                                  .run_bore = metre_bore(0.05),
                                  .branch_bore = metre_bore(0.05 * b),
                                  .branch_share = fraction(y)});
        };
        for (double y = 0.0; y < 0.9995; y += 0.0005) {
          const double jump = std::fabs(k(y + 0.0005).branch.central.value() - k(y).branch.central.value());
          TW_HOLDS(continuous, jump < 0.03);
          TW_HOLDS(continuous, std::fabs(k(y + 0.0005).run.central.value() - k(y).run.central.value()) < 0.01);
        }
        CHECK(ordered(k(0.5).run));
        CHECK(ordered(k(0.5).branch));
      }
    }
  }
  const auto share = [](double y, range_policy) {
    return twp::tee_losses({.direction = twp::tee_direction::joining,
                            .run_bore = metre_bore(0.05),
                            .branch_bore = metre_bore(0.05),
                            .branch_share = fraction(y)});
  };
  check_edges(twp::branch_share_limits, share);
  CHECK_THROWS_AS((void)twp::tee_losses({.direction = twp::tee_direction::joining,
                                         .run_bore = metre_bore(0.05),
                                         .branch_bore = metre_bore(0.06),
                                         .branch_share = fraction(0.5)}),
                  invalid_input);
}

TEST_CASE("fittings: entrances fall with the radius of the lip") {
  const auto falls = about("entrance_loss", kind::property, "falls with the radius, continuous");
  const auto k = [](double r) {
    return twp::entrance_loss({.bore = metre_bore(0.1), .lip_radius = metres(0.1 * r)}).central.value();
  };
  for (double r = 0.0; r < 0.2; r += 0.001) TW_HOLDS(falls, k(r + 0.001) <= k(r) && k(r) - k(r + 0.001) < 0.012);
  TW_CHECK(about("entrance_loss", kind::library, "Crane TP-410 as coded in CalebBell/fluids: 0.04 for r/D >= 0.15"),
           k(0.3), 0.04, within(1e-15));
  check_edges(twp::lip_radius_limits, [](double r, range_policy) {
    return twp::entrance_loss({.bore = metre_bore(0.1), .lip_radius = metres(r)});
  });
}

TEST_CASE("fittings: a sum adds values and bands") {
  const auto sum = about("total_loss", kind::identity, "sum");
  const auto elbow = twp::fitting_loss(twp::fitting::elbow_90, inch_bore(1.59));
  const auto total = twp::total_loss({{elbow, 4}, {twp::exit_loss}});
  TW_CHECK(sum, total.central.value(), 4 * elbow.central.value() + 1.0, relative(1e-15));
  TW_CHECK(sum, total.low.value(), 4 * elbow.low.value() + 1.0, relative(1e-15));
  TW_CHECK(sum, total.high.value(), 4 * elbow.high.value() + 1.0, relative(1e-15));
  CHECK_THROWS_AS((void)twp::total_loss({{elbow, -1}}), invalid_input);
  const auto known = twp::known_loss(6.0);
  TW_HOLDS(about("known_loss", kind::identity, "no band"),
           known.low == known.high && known.central == twp::loss_coefficient{6.0});
}

TEST_CASE("fittings: the methods for low Reynolds numbers join Crane's at high ones, within their bands") {
  const auto near = about("darby_loss", kind::property, "within its band and Crane's at Re 1e6");
  for (const double size : {0.75, 1.0, 1.5, 2.0, 3.0}) {
    const auto pipe = twp::pvc_pipe(twp::nominal_size::from_inches(size), twp::pvc_schedule::schedule_40);
    const auto crane = twp::fitting_loss(twp::fitting::elbow_90, pipe.minimum_wall_bore);
    const auto nominal = twp::nominal_size::from_inches(size);
    const auto darby = twp::darby_loss(twp::darby_elbow_90, twp::reynolds_number{1e6}, nominal);
    TW_HOLDS(near, darby.low < crane.high && crane.low < darby.high);
    const auto slow = twp::darby_loss(twp::darby_elbow_90, twp::reynolds_number{500.0}, nominal);
    TW_HOLDS(near, slow.central.value() > 2 * darby.central.value());
  }
}

TEST_CASE("fittings: edges of the ranges") {
  check_edges(twp::fitting_bore_limits,
              [](double d, range_policy) { return twp::fully_turbulent_factor(metre_bore(d)); });
  check_edges(twp::kv_limits, [](double kv, range_policy) {
    return twp::loss_from_flow_coefficient(twp::flow_coefficient::from_kv(kv), metre_bore(0.05));
  });
  check_edges(twp::positive_loss_limits, [](double k, range_policy) {
    return twp::flow_coefficient_from_loss(twp::loss_coefficient{k}, metre_bore(0.05));
  });
  check_edges(twp::darcy_limits, [](double f, range_policy) {
    return twp::equivalent_length(twp::loss_coefficient{1.0}, metre_bore(0.05), twp::darcy_factor{f});
  });
}

TEST_CASE("check valve that leaks: by its loss on the bore, and by the gap that a grain holds open") {
  const evidence by_hand{"tankwright::plumbing::leaking_check_valve", kind::identity, "definition of Kv by hand"};
  const auto by_loss = twp::leaking_check_valve(twp::loss_coefficient{10.0}, metre_bore(0.05));
  // Kv: m3/h at 1 bar of water of 1000 kg/m3: K v^2/2 = 100 Pa m3/kg.
  const double v = std::sqrt(2.0 * 100.0 / 10.0);
  TW_CHECK(by_hand, in_kv(by_loss.leak), v * 3.14159265358979 / 4.0 * 0.05 * 0.05 * 3600.0, relative(1e-3));
  const auto by_gap = twp::leaking_check_valve(square_metres(1e-4));
  TW_CHECK(by_hand, in_kv(by_gap.leak), 0.61 * 1e-4 * std::sqrt(200.0) * 3600.0, relative(1e-9));
}

TEST_CASE("fittings: a coefficient is read in the units that it was made of") {
  const evidence metric{"tankwright::plumbing::in_kv", kind::identity, "the number that it is made of"};
  const evidence us{"tankwright::plumbing::in_cv", kind::published, "1 Cv is 0.865 Kv, as valve makers print it"};
  TW_CHECK(metric, in_kv(twp::flow_coefficient::from_kv(14.2)), 14.2, relative(1e-15));
  TW_CHECK(us, 1.0 / in_cv(twp::flow_coefficient::from_kv(1.0)), 0.865, within(0.0005));
}

TEST_CASE("fittings: every band lies around its value, as wide as it is said to be") {
  const auto width = [](const char* function, const estimate<twp::loss_coefficient>& k, double share) {
    const evidence printed = about(function, kind::identity, "the share that its accuracy names, either way");
    TW_CHECK(printed, k.low.value(), k.central.value() * (1.0 - share), relative(1e-14));
    TW_CHECK(printed, k.high.value(), k.central.value() * (1.0 + share), relative(1e-14));
    CHECK(ordered(k));
  };
  const auto is_bend = [](twp::fitting kind) {
    return kind == twp::fitting::elbow_90 || kind == twp::fitting::elbow_45 || kind == twp::fitting::return_bend ||
           kind == twp::fitting::tee_through_run || kind == twp::fitting::tee_through_branch ||
           kind == twp::fitting::mitre_90 || kind == twp::fitting::mitre_45;
  };
  for (const twp::fitting kind : all_fittings) {
    CAPTURE(static_cast<int>(kind));
    width("fitting_loss", twp::fitting_loss(kind, inch_bore(1.5)), is_bend(kind) ? 0.3 : 0.5);
  }
  const std::string_view of_bends = twp::fitting_loss(twp::fitting::elbow_90, inch_bore(1.0)).reason,
                         of_valves = twp::fitting_loss(twp::fitting::ball_valve, inch_bore(1.0)).reason;
  CHECK(of_bends.find("steel fittings") != std::string_view::npos);
  CHECK(of_valves.find("prefer the Kv of yours") != std::string_view::npos);
  width("entrance_loss", twp::entrance_loss({.bore = inch_bore(1.0), .projecting = true}), 0.15);
  width("entrance_loss", twp::entrance_loss({.bore = inch_bore(1.0)}), 0.15);
  width("section_change_loss", twp::section_change_loss({inch_bore(1.0), inch_bore(2.0)}), 0.2);
  width("section_change_loss", twp::section_change_loss({inch_bore(2.0), inch_bore(1.0)}), 0.2);
  width("hooper_loss", twp::hooper_loss(twp::hooper_elbow_90, twp::reynolds_number{5e3}, inch_bore(1.0)), 0.3);
  width("darby_loss",
        twp::darby_loss(twp::darby_elbow_90, twp::reynolds_number{5e3}, twp::nominal_size::from_inches(1.0)), 0.3);
}

TEST_CASE("fittings: Crane's rules for a tee change where he says, the lower one up to the limit itself") {
  // C = 1 up to b^2 = 0.35, else the larger of 0.9 (1 - y) and 0.55; M = 0.4 up to 0.4, else 2 (2y - 1) up to y = 0.5
  // and 0.3 (2y - 1) above; G and the two forms of a dividing 90 degree branch likewise.
  const auto branch = about("tee_losses", kind::identity, "Crane's branch by hand");
  const auto through = about("tee_losses", kind::identity, "Crane's run by hand");
  const auto tee = [](twp::tee_direction direction, twp::tee_branch_angle angle, double b2, double y) {
    return twp::tee_losses({.direction = direction,
                            .angle = angle,
                            .run_bore = metre_bore(1.0),
                            .branch_bore = metre_bore(std::sqrt(b2)),
                            .branch_share = fraction(y)});
  };
  constexpr auto joining = twp::tee_direction::joining, dividing = twp::tee_direction::dividing;
  constexpr auto ninety = twp::tee_branch_angle::ninety, wye = twp::tee_branch_angle::forty_five;
  const double y = 0.3;
  const auto joins = [&](double c, double b2) { return c * (1.0 + y * y / (b2 * b2) - 2.0 * 0.49); };
  REQUIRE(std::sqrt(0.35) * std::sqrt(0.35) == 0.35);
  REQUIRE(std::sqrt(0.4) * std::sqrt(0.4) == 0.4);
  TW_CHECK(branch, tee(joining, ninety, 0.35, y).branch.central.value(), joins(1.0, 0.35), relative(1e-12));
  TW_CHECK(branch, tee(joining, ninety, 0.3501, y).branch.central.value(), joins(0.63, 0.3501), relative(1e-12));
  const auto leaves = [&](double g, double b2) { return g * (1.0 + y * y / (b2 * b2) - std::sqrt(2.0) * y / b2); };
  TW_CHECK(branch, tee(dividing, wye, 0.35, y).branch.central.value(), leaves(1.1 - 0.21, 0.35), relative(1e-12));
  TW_CHECK(branch, tee(dividing, wye, 0.3501, y).branch.central.value(), leaves(1.0 - 0.18, 0.3501), relative(1e-12));
  const double b2 = 4.0 / 9.0;
  const auto third = twp::tee_losses({.direction = dividing,
                                      .angle = ninety,
                                      .run_bore = metre_bore(1.0),
                                      .branch_bore = metre_bore(2.0 / 3.0),
                                      .branch_share = fraction(y)});
  TW_CHECK(branch, third.branch.central.value(), 1.0 + y * y / (b2 * b2), relative(1e-12));
  TW_CHECK(through, tee(dividing, ninety, 0.4, y).run.central.value(), 0.4 * y * y, relative(1e-12));
  TW_CHECK(through, tee(dividing, ninety, 0.4001, y).run.central.value(), 2.0 * (2.0 * y - 1.0) * y * y,
           relative(1e-12));
  TW_CHECK(through, tee(dividing, ninety, 0.6, 0.50025).run.central.value(), 0.3 * 0.0005 * 0.50025 * 0.50025,
           relative(1e-9));
}

TEST_CASE("fittings: a lip rounder than the last row of the table loses what that row says") {
  const auto table = about("entrance_loss", kind::published, "Crane TP-410 appendix A: 0.04 from r/D = 0.15 on");
  for (const double r : {0.15, 0.151, 0.2, 0.3, 0.45, 0.55, 0.8, 1.0, 5.0, 100.0}) {
    TW_CHECK(table, twp::entrance_loss({.bore = metre_bore(0.1), .lip_radius = metres(0.1 * r)}).central.value(), 0.04,
             relative(1e-13));
  }
}
