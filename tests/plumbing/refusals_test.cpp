// SPDX-License-Identifier: BSL-1.0
// What is no number is refused in the caller's words, by the function that was called: every argument of every function.
#include <array>
#include <limits>
#include <tankwright/plumbing.hpp>

#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using namespace tankwright::plumbing;

namespace {

constexpr double none = std::numeric_limits<double>::quiet_NaN();
const water::liquid sea{.density = kilograms_per_cubic_metre(1023.0), .viscosity = millipascal_seconds(0.96)};
const water::liquid bad_water{.density = kilograms_per_cubic_metre(none), .viscosity = millipascal_seconds(0.96)};
const pipe_bore d50{metres(0.05)};
const flow_rate some = litres_per_hour(1000.0);

length m(double x) { return metres(x); }
area m2(double x) { return square_metres(x); }
flow_rate q(double x) { return cubic_metres_per_second(x); }
pipe_bore bore(double x) { return pipe_bore{metres(x)}; }
pipe_run run(double d, double l = 1.0, double e = 0.0) {
  return {.label = "r", .bore = bore(d), .length = m(l), .roughness = m(e), .fittings = known_loss(1.0)};
}

}  // namespace

TEST_CASE("plumbing: drains refuse in their own name") {
  const auto level = [](double d, double slope, double n) {
    return part_full_drain{.bore = bore(d), .slope = slope, .manning_n = n};
  };
  const auto pipe = [](double d, double slope, double e) {
    return part_full_pipe{.bore = bore(d), .slope = slope, .roughness = m(e), .water = sea};
  };
  const auto mode = [](double d, double drop, double head, double flow) {
    return drain_mode_for({.pipe = run(d), .drop = m(drop), .inlet_head = m(head)}, q(flow), sea);
  };
  const std::vector<drain> two(2, {.pipe = run(0.05), .drop = m(1), .inlet_head = m(0.1)});
  check_refusals({
      TW_REFUSED("plumbing::drain_number", "bore", drain_number(bore(none), some)),
      TW_REFUSED("plumbing::drain_number", "flow", drain_number(d50, q(none))),
      TW_REFUSED("plumbing::flow_at_drain_number", "bore", flow_at_drain_number(bore(none), 0.3)),
      TW_REFUSED("plumbing::flow_at_drain_number", "drain number", flow_at_drain_number(d50, none)),
      TW_REFUSED("plumbing::stack_capacity", "bore", stack_capacity(bore(none))),
      TW_REFUSED("plumbing::part_full", "bore", part_full(bore(none), m(0.01))),
      TW_REFUSED("plumbing::part_full", "depth / bore", part_full(d50, m(none))),
      TW_REFUSED("plumbing::part_full_flow", "bore", part_full_flow(level(none, 0.01, 0.01), m(0.01))),
      TW_REFUSED("plumbing::part_full_flow", "slope", part_full_flow(level(0.05, none, 0.01), m(0.01))),
      TW_REFUSED("plumbing::part_full_flow", "manning_n", part_full_flow(level(0.05, 0.01, none), m(0.01))),
      TW_REFUSED("plumbing::part_full_flow", "slope", part_full_flow(pipe(0.05, none, 0.0), m(0.01))),
      TW_REFUSED("plumbing::part_full_flow", "roughness", part_full_flow(pipe(0.05, 0.01, none), m(0.01))),
      TW_REFUSED("plumbing::part_full_flow", "relative roughness", part_full_flow(pipe(0.05, 0.01, 0.01), m(0.01))),
      TW_REFUSED("plumbing::part_full_depth", "bore", part_full_depth(level(none, 0.01, 0.01), some)),
      TW_REFUSED("plumbing::part_full_depth", "slope", part_full_depth(level(0.05, none, 0.01), some)),
      TW_REFUSED("plumbing::part_full_depth", "manning_n", part_full_depth(level(0.05, 0.01, none), some)),
      TW_REFUSED("plumbing::part_full_depth", "flow", part_full_depth(level(0.05, 0.01, 0.01), q(none))),
      TW_REFUSED("plumbing::part_full_depth", "flow", part_full_depth(level(0.05, 0.01, 0.01), q(0.0))),
      TW_REFUSED("plumbing::drain_mode_for", "r: bore", mode(none, 1, 0.1, 0)),
      TW_REFUSED("plumbing::drain_mode_for", "r: drop", mode(0.05, none, 0.1, 0)),
      TW_REFUSED("plumbing::drain_mode_for", "r: inlet_head", mode(0.05, 1, none, 0)),
      TW_REFUSED("plumbing::drain_mode_for", "r: flow", mode(0.05, 1, 0.1, none)),
      TW_REFUSED("plumbing::drain_mode_for", "density of the liquid", drain_mode_for(two[0], some, bad_water)),
      TW_REFUSED("plumbing::one_drain_blocked", "number of drains", one_drain_blocked({two[0]}, some, sea)),
      TW_REFUSED("plumbing::one_drain_blocked", "flow", one_drain_blocked(two, q(none), sea)),
      TW_REFUSED("plumbing::primes_itself", "r: bore",
                 primes_itself({.pipe = run(none), .drop = m(1), .inlet_head = m(1)}, some)),
      TW_REFUSED("plumbing::primes_itself", "r: drop",
                 primes_itself({.pipe = run(0.05), .drop = m(none), .inlet_head = m(1)}, some)),
      TW_REFUSED("plumbing::held_up_while_priming", "priming", held_up_while_priming(two, some, sea, seconds(none))),
      TW_REFUSED("plumbing::held_up_while_priming", "flow", held_up_while_priming(two, q(-1.0), sea)),
      TW_REFUSED("plumbing::held_up_while_priming", "density of the liquid",
                 held_up_while_priming({}, some, bad_water)),
  });
}

TEST_CASE("plumbing: siphons, jets and surges refuse in their own name") {
  const auto crest = [](double z, double v, double rho, double k, double air) {
    return siphon_crest_pressure({.above_surface = m(z),
                                  .speed = metres_per_second(v),
                                  .density = kilograms_per_cubic_metre(rho),
                                  .loss_before = k,
                                  .air = absolute_pressure{pascals(air)}});
  };
  const auto highest = [](double v, double rho, double vapour, double k, double air) {
    return highest_siphon_crest({.speed = metres_per_second(v),
                                 .density = kilograms_per_cubic_metre(rho),
                                 .vapour_pressure = absolute_pressure{pascals(vapour)},
                                 .loss_before = k,
                                 .air = absolute_pressure{pascals(air)}});
  };
  const auto exposed = [](double a, double d, double from, double to) {
    return siphon_until_exposed({.horizontal_area = m2(a), .run = run(d), .from = m(from), .to = m(to), .water = sea});
  };
  const auto wave = [](double d, double wall, double e, double k, double c) {
    return wave_speed(
        {.bore = bore(d), .wall = m(wall), .modulus = pascals(e), .bulk_modulus = pascals(k), .restraint = c}, sea);
  };
  const auto stop = [](double a, double v, double l) {
    return surge_on_closure({.wave_speed = metres_per_second(a), .change = metres_per_second(v), .pipe = m(l)}, sea);
  };
  const auto jet = [](double d, double flow) { return submerged_jet{.bore = bore(d), .flow = q(flow)}; };
  const std::string pressure = "plumbing::siphon_crest_pressure", top = "plumbing::highest_siphon_crest",
                    until = "plumbing::siphon_until_exposed";
  check_refusals({
      TW_REFUSED("plumbing::siphon_flow", "r: drop", siphon_flow(run(0.05), m(none), sea)),
      TW_REFUSED("plumbing::siphon_flow", "density of the liquid",
                 siphon_flow(run(0.05), m(1),
                             {.density = kilograms_per_cubic_metre(none), .viscosity = millipascal_seconds(1)})),
      TW_REFUSED(pressure, "above_surface", crest(none, 1, 1000, 0, 1e5)),
      TW_REFUSED(pressure, "speed", crest(1, none, 1000, 0, 1e5)),
      TW_REFUSED(pressure, "density", crest(1, 1, none, 0, 1e5)),
      TW_REFUSED(pressure, "loss_before", crest(1, 1, 1000, none, 1e5)),
      TW_REFUSED(pressure, "air", crest(1, 1, 1000, 0, none)),
      TW_REFUSED(top, "speed", highest(none, 1000, 3000, 0, 1e5)),
      TW_REFUSED(top, "density", highest(1, none, 3000, 0, 1e5)),
      TW_REFUSED(top, "vapour_pressure", highest(1, 1000, none, 0, 1e5)),
      TW_REFUSED(top, "loss_before", highest(1, 1000, 3000, none, 1e5)),
      TW_REFUSED(top, "air", highest(1, 1000, 3000, 0, none)),
      TW_REFUSED(until, "r: horizontal area", exposed(none, 0.05, 1, 0.5)),
      TW_REFUSED(until, "r: from", exposed(1, 0.05, none, 0.5)),
      TW_REFUSED(until, "r: to", exposed(1, 0.05, 1, none)),
      TW_REFUSED(until, "r: bore", exposed(1, none, 1, 0.5)),
      TW_REFUSED("plumbing::wave_speed", "bore", wave(none, 0.003, 1e9, 1e9, 1)),
      TW_REFUSED("plumbing::wave_speed", "wall", wave(0.05, none, 1e9, 1e9, 1)),
      TW_REFUSED("plumbing::wave_speed", "modulus", wave(0.05, 0.003, none, 1e9, 1)),
      TW_REFUSED("plumbing::wave_speed", "bulk modulus", wave(0.05, 0.003, 1e9, none, 1)),
      TW_REFUSED("plumbing::wave_speed", "restraint", wave(0.05, 0.003, 1e9, 1e9, none)),
      TW_REFUSED("plumbing::wave_speed", "density of the liquid",
                 wave_speed({.bore = d50, .wall = m(0.003)},
                            {.density = kilograms_per_cubic_metre(none), .viscosity = millipascal_seconds(1)})),
      TW_REFUSED("plumbing::surge_on_closure", "wave speed", stop(none, 1, 1)),
      TW_REFUSED("plumbing::surge_on_closure", "change", stop(400, none, 1)),
      TW_REFUSED("plumbing::surge_on_closure", "pipe", stop(400, 1, none)),
      TW_REFUSED("plumbing::surge_on_closure", "density of the liquid",
                 surge_on_closure({.wave_speed = metres_per_second(400), .change = metres_per_second(1), .pipe = m(1)},
                                  {.density = kilograms_per_cubic_metre(none), .viscosity = millipascal_seconds(1)})),
      TW_REFUSED("plumbing::jet_reach", "drive", jet_reach({.drive = m(none), .fall = m(1)})),
      TW_REFUSED("plumbing::jet_reach", "fall", jet_reach({.drive = m(1), .fall = m(none)})),
      TW_REFUSED("plumbing::jet_reach", "velocity coefficient",
                 jet_reach({.drive = m(1), .fall = m(1), .velocity_coefficient = none})),
      TW_REFUSED("plumbing::velocity_coefficient", "drive",
                 velocity_coefficient({.drive = m(none), .fall = m(1), .reach = m(1)})),
      TW_REFUSED("plumbing::velocity_coefficient", "fall",
                 velocity_coefficient({.drive = m(1), .fall = m(none), .reach = m(1)})),
      TW_REFUSED("plumbing::velocity_coefficient", "reach",
                 velocity_coefficient({.drive = m(1), .fall = m(1), .reach = m(none)})),
      TW_REFUSED("plumbing::jet_height", "pressure", jet_height(gauge_pressure{pascals(none)}, sea)),
      TW_REFUSED("plumbing::jet_height", "density of the liquid",
                 jet_height(gauge_pressure{pascals(1)},
                            {.density = kilograms_per_cubic_metre(none), .viscosity = millipascal_seconds(1)})),
      TW_REFUSED("plumbing::jet_speed_at", "bore of the opening", jet_speed_at(jet(none, 1e-3), m(1))),
      TW_REFUSED("plumbing::jet_speed_at", "flow", jet_speed_at(jet(0.02, none), m(1))),
      TW_REFUSED("plumbing::jet_speed_at", "distance", jet_speed_at(jet(0.02, 1e-3), m(none))),
      TW_REFUSED("plumbing::jet_reaches", "bore of the opening", jet_reaches(jet(none, 1e-3), metres_per_second(1))),
      TW_REFUSED("plumbing::jet_reaches", "flow", jet_reaches(jet(0.02, none), metres_per_second(1))),
      TW_REFUSED("plumbing::jet_reaches", "speed", jet_reaches(jet(0.02, 1e-3), metres_per_second(none))),
      TW_REFUSED("plumbing::friction_velocity_that_moves", "grain",
                 friction_velocity_that_moves({.size = m(none)}, sea)),
      TW_REFUSED("plumbing::friction_velocity_that_moves", "density of the grains",
                 friction_velocity_that_moves({.size = m(1e-3), .density = kilograms_per_cubic_metre(1023.0)}, sea)),
      TW_REFUSED("plumbing::friction_velocity_that_moves", "viscosity of the liquid",
                 friction_velocity_that_moves({.size = m(1e-3)}, {.density = kilograms_per_cubic_metre(1000),
                                                                  .viscosity = millipascal_seconds(none)})),
  });
}

TEST_CASE("plumbing: weirs refuse in their own name") {
  const auto rehbock = [](double b, double p, double t, double h) {
    return rehbock_weir({.width = m(b), .crest_height = m(p), .thickness = m(t)}, m(h));
  };
  const auto kindsvater = [](double b, double channel, double p, double h) {
    return kindsvater_carter_weir({.width = m(b), .channel_width = m(channel), .crest_height = m(p)}, m(h));
  };
  const auto plain = [](double b, double h, double c, double n, double v) {
    return rectangular_weir({.width = m(b),
                             .head = m(h),
                             .discharge_coefficient = c,
                             .contractions = n,
                             .approach_velocity = metres_per_second(v)});
  };
  const auto toothed = [](double gap, int n, double tooth, double high, double crest, double h) {
    return toothed_weir({m(gap), n, m(tooth), m(high), m(crest)}, m(h));
  };
  const auto share = [](double up, double down, double n) { return submerged_share({m(up), m(down), n}); };
  const std::string r = "plumbing::rehbock_weir", k = "plumbing::kindsvater_carter_weir",
                    p = "plumbing::rectangular_weir", t = "plumbing::toothed_weir";
  check_refusals({
      TW_REFUSED(r, "width", rehbock(none, 0.5, 0, 0.1)),
      TW_REFUSED(r, "thickness", rehbock(1, 0.5, none, 0.1)),
      TW_REFUSED(r, "crest_height", rehbock(1, none, 0, 0.1)),
      TW_REFUSED(r, "head", rehbock(1, 0.5, 0, none)),
      TW_REFUSED(r, "head / crest_height", rehbock(1, 0.2, 0, 0.3)),
      TW_REFUSED(k, "width", kindsvater(none, 1, 0.5, 0.1)),
      TW_REFUSED(k, "channel_width", kindsvater(0.5, none, 0.5, 0.1)),
      TW_REFUSED(k, "width / channel_width", kindsvater(1.5, 1, 0.5, 0.1)),
      TW_REFUSED(k, "crest_height", kindsvater(0.5, 1, none, 0.1)),
      TW_REFUSED(k, "head", kindsvater(0.5, 1, 0.5, none)),
      TW_REFUSED(k, "head / crest_height", kindsvater(0.5, 1, 0.1, 0.3)),
      TW_REFUSED(p, "width", plain(none, 0.1, 0.6, 0, 0)),
      TW_REFUSED(p, "head", plain(1, none, 0.6, 0, 0)),
      TW_REFUSED(p, "discharge_coefficient", plain(1, 0.1, none, 0, 0)),
      TW_REFUSED(p, "contractions", plain(1, 0.1, 0.6, none, 0)),
      TW_REFUSED(p, "contractions", plain(1, 0.1, 0.6, 2.01, 0)),
      TW_REFUSED(p, "approach_velocity", plain(1, 0.1, 0.6, 0, none)),
      TW_REFUSED(p, "width - 0.1 contractions head", plain(0.1, 1, 0.6, 1, 0)),
      TW_REFUSED("plumbing::francis_weir", "width", francis_weir({.width = m(none), .head = m(0.1)})),
      TW_REFUSED("plumbing::francis_weir", "head", francis_weir({.width = m(1), .head = m(none)})),
      TW_REFUSED("plumbing::francis_weir", "head / width", francis_weir({.width = m(0.29), .head = m(0.1)})),
      TW_REFUSED("plumbing::bazin_weir", "width", bazin_weir({m(none), m(0.1)})),
      TW_REFUSED("plumbing::bazin_weir", "head", bazin_weir({m(1), m(none)})),
      TW_REFUSED(t, "gap_width", toothed(none, 3, 0.01, 0.02, 0.5, 0.01)),
      TW_REFUSED(t, "gaps", toothed(0.01, 0, 0.01, 0.02, 0.5, 0.01)),
      TW_REFUSED(t, "tooth_width", toothed(0.01, 3, none, 0.02, 0.5, 0.01)),
      TW_REFUSED(t, "gap_height", toothed(0.01, 3, 0.01, none, 0.5, 0.01)),
      TW_REFUSED(t, "crest_height", toothed(0.01, 3, 0.01, 0.02, none, 0.01)),
      TW_REFUSED(t, "head", toothed(0.01, 3, 0.01, 0.02, 0.5, none)),
      TW_REFUSED("plumbing::v_notch_weir", "opening", v_notch_weir({degrees(none), m(0.1), 0.6})),
      TW_REFUSED("plumbing::v_notch_weir", "head", v_notch_weir({degrees(60), m(none), 0.6})),
      TW_REFUSED("plumbing::v_notch_weir", "discharge_coefficient", v_notch_weir({degrees(60), m(0.1), none})),
      TW_REFUSED("plumbing::shen_weir", "opening", shen_weir({degrees(none)}, m(0.1))),
      TW_REFUSED("plumbing::shen_weir", "head", shen_weir({degrees(60)}, m(none))),
      TW_REFUSED("plumbing::standpipe_inlet", "bore", standpipe_inlet({bore(none)}, m(0.1))),
      TW_REFUSED("plumbing::standpipe_inlet", "head", standpipe_inlet({d50}, m(none))),
      TW_REFUSED("plumbing::submerged_share", "upstream_head", share(none, 0.1, 1.5)),
      TW_REFUSED("plumbing::submerged_share", "downstream_head", share(0.1, none, 1.5)),
      TW_REFUSED("plumbing::submerged_share", "exponent", share(0.1, 0.05, none)),
      TW_REFUSED("plumbing::submerged_share", "downstream_head / upstream_head", share(0.1, 0.2, 1.5)),
  });
}

TEST_CASE("plumbing: overflow edges refuse in the name of both functions") {
  const auto both = [](std::string argument, overflow_edge edge) {
    return std::vector<refusal>{{"plumbing::flow_over", argument, [=] { (void)flow_over(edge, m(0.05)); }},
                                {"plumbing::head_over", argument, [=] { (void)head_over(edge, some); }}};
  };
  check_refusals(both("width", full_width_edge{m(none), m(0.5)}));
  check_refusals(both("crest_height", full_width_edge{m(1), m(none)}));
  check_refusals(both("thickness", full_width_edge{m(1), m(0.5), m(none)}));
  check_refusals(both("width", contracted_edge{m(none), m(1), m(0.5)}));
  check_refusals(both("channel_width", contracted_edge{m(0.5), m(none), m(0.5)}));
  check_refusals(both("width / channel_width", contracted_edge{m(1.5), m(1), m(0.5)}));
  check_refusals(both("crest_height", contracted_edge{m(0.5), m(1), m(none)}));
  check_refusals(both("gap_width", toothed_edge{m(none), 3, m(0.01), m(0.02), m(0.5)}));
  check_refusals(both("gaps", toothed_edge{m(0.01), 0, m(0.01), m(0.02), m(0.5)}));
  check_refusals(both("tooth_width", toothed_edge{m(0.01), 3, m(none), m(0.02), m(0.5)}));
  check_refusals(both("gap_height", toothed_edge{m(0.01), 3, m(0.01), m(none), m(0.5)}));
  check_refusals(both("crest_height", toothed_edge{m(0.01), 3, m(0.01), m(0.02), m(none)}));
  check_refusals(both("opening", v_notch{degrees(none)}));
  check_refusals(both("bore", standpipe{bore(none)}));
  check_refusals({
      TW_REFUSED("plumbing::flow_over", "head", flow_over(standpipe{d50}, m(none))),
      TW_REFUSED("plumbing::head_over", "flow", head_over(standpipe{d50}, q(none))),
      TW_REFUSED("plumbing::flow_over", "head / crest_height", flow_over(full_width_edge{m(1), m(0.1)}, m(0.11))),
      TW_REFUSED("plumbing::flow_over", "head", flow_over(full_width_edge{m(1), m(2)}, m(0.76))),
      TW_REFUSED("plumbing::flow_over", "head / crest_height",
                 flow_over(contracted_edge{m(0.5), m(1), m(0.1)}, m(0.21))),
  });
}

TEST_CASE("plumbing: vessels and their outlets refuse in the name of what was asked") {
  const effective_area hole{square_metres(1e-4)};
  const auto both = [&](std::string argument, any_vessel vessel) {
    return std::vector<refusal>{
        {"plumbing::emptying_time", argument, [=] { (void)emptying_time(vessel, {.outlet = hole, .from = m(0.1)}); }},
        {"plumbing::fill_stages", argument, [=] {
           (void)fill_stages({.vessel = vessel, .flow = some, .stops = {{"s", m(0.1)}}});
         }}};
  };
  for (const double bad : {none, 0.0, -1.0}) {
    check_refusals(both("radius", bowl{m(bad)}));
    check_refusals(both("height", cone{m(bad), m(1)}));
    check_refusals(both("radius", cone{m(1), m(bad)}));
    check_refusals(both("diameter", lying_cylinder{m(bad), m(1)}));
    check_refusals(both("axial_length", lying_cylinder{m(1), m(bad)}));
  }
  CHECK(message_of([&] { (void)emptying_time(any_vessel{bowl{m(-1)}}, {.outlet = hole, .from = m(0.1)}); }) ==
        "tankwright::plumbing::emptying_time: radius = -1 m is not possible; expected more than 0 m");
  CHECK(message_of([&] {
          (void)emptying_time(any_vessel{cone{m(-1), m(1)}}, {.outlet = hole, .from = m(0.1)});
        }) == "tankwright::plumbing::emptying_time: height = -1 m is not possible; expected more than 0 m");
  CHECK(message_of([&] {
          (void)emptying_time(any_vessel{lying_cylinder{m(-1), m(1)}}, {.outlet = hole, .from = m(0.1)});
        }) == "tankwright::plumbing::emptying_time: diameter = -1 m is not possible; expected more than 0 m");
  CHECK(message_of([&] {
          (void)emptying_time(any_vessel{lying_cylinder{m(1), m(-1)}}, {.outlet = hole, .from = m(0.1)});
        }) == "tankwright::plumbing::emptying_time: axial_length = -1 m is not possible; expected more than 0 m");
  const auto laminar = [](double l) {
    return laminar_emptying_time({.horizontal_area = m2(0.06),
                                  .bore = bore(0.004),
                                  .pipe_length = m(l),
                                  .from = m(0.4),
                                  .to = m(0.2),
                                  .water = sea});
  };
  const inflow_and_outlet tank{.horizontal_area = m2(1), .inflow = some, .outlet = hole};
  check_refusals({
      TW_REFUSED("plumbing::laminar_emptying_time", "pipe_length", laminar(none)),
      TW_REFUSED("plumbing::laminar_emptying_time", "pipe_length", laminar(-1.0)),
      TW_REFUSED("plumbing::level_change_time", "from", level_change_time(tank, {m(none), m(0.1)})),
      TW_REFUSED("plumbing::level_change_time", "from", level_change_time(tank, {m(-0.1), m(0.1)})),
      TW_REFUSED("plumbing::level_change_time", "to", level_change_time(tank, {m(0.1), m(none)})),
      TW_REFUSED("plumbing::edge_tail_time", "bore",
                 edge_tail_time({.horizontal_area = m2(1), .edge = standpipe{bore(-1)}, .from = m(0.02)})),
      TW_REFUSED("plumbing::fill_stages", "s: hold",
                 fill_stages({.vessel = m2(1.0), .flow = some, .stops = {{"s", m(0.1), seconds(-1.0)}}})),
  });
}

TEST_CASE("plumbing: friction and losses refuse in their own name") {
  const auto factors = [](std::size_t re, std::size_t e, std::size_t result) {
    return message_of([=] {
      std::vector<darcy_factor> f(result, darcy_factor{0.0});
      friction_factor(std::vector<reynolds_number>(re, reynolds_number{1e5}),
                      std::vector<relative_roughness>(e, relative_roughness{0.0}), f);
    });
  };
  const std::string sizes = "tankwright::plumbing::friction_factor: size of a span = ";
  CHECK(factors(2, 3, 2) == sizes + "3 differs from the size of the first span, 2");
  CHECK(factors(2, 2, 1) == sizes + "1 differs from the size of the first span, 2");
  const auto rough = [](double e) {
    std::vector<darcy_factor> f(2, darcy_factor{0.0});
    friction_factor(std::vector<reynolds_number>(2, reynolds_number{1e5}),
                    std::vector<relative_roughness>{relative_roughness{0.0}, relative_roughness{e}}, f);
  };
  const pipe_run nothing{.label = "r", .bore = d50}, straight{.label = "r", .bore = d50, .length = m(1)};
  check_refusals({
      {"plumbing::friction_factor", "relative roughness", [&] { rough(-0.1); }},
      TW_REFUSED("plumbing::friction_factor_haaland", "relative roughness",
                 friction_factor_haaland(reynolds_number{1e5}, relative_roughness{-0.1})),
      TW_REFUSED("plumbing::friction_factor_churchill", "relative roughness",
                 friction_factor_churchill(reynolds_number{1e5}, relative_roughness{-0.1})),
      TW_REFUSED("plumbing::friction_factor_serghides", "relative roughness",
                 friction_factor_serghides(reynolds_number{1e5}, relative_roughness{-0.1})),
      TW_REFUSED("plumbing::head_loss_hazen_williams", "r: flow",
                 head_loss_hazen_williams(straight, q(none), hazen_williams_c{150.0})),
      TW_REFUSED("plumbing::flow_for_head", "density of the liquid", flow_for_head(straight, m(1), bad_water)),
      // 4 Q/(pi D nu) = 4 x 10/(pi 0.05 9.4e-7) = 2.7e8, and 100 km of head through a bore of 20 m.
      TW_REFUSED("plumbing::head_loss", "r: Reynolds number", head_loss(straight, q(10.0), sea)),
      TW_REFUSED("plumbing::flow_for_head", "r: Reynolds number",
                 flow_for_head({.label = "r", .bore = bore(20.0), .length = m(100)}, m(1000), sea)),
      TW_REFUSED("plumbing::head_loss", "r: loss coefficient",
                 head_loss({.label = "r",
                            .bore = d50,
                            .fittings = {loss_coefficient{0}, loss_coefficient{0}, loss_coefficient{1.1e15}, ""}},
                           some, sea)),
  });
  CHECK(message_of([&] { (void)flow_for_head(nothing, m(1), sea); }) ==
        "tankwright::plumbing::flow_for_head: r resists nothing: give it a length or a loss coefficient");
}
