// SPDX-License-Identifier: BSL-1.0
// Ends of what sumps, displays, pumps, fittings and pipes can be, written as numbers a second time: decisions of this
// library, and each held by the argument that it is for.
#include <array>
#include <tankwright/plumbing.hpp>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using namespace tankwright::plumbing;

namespace {

constexpr interval positive_numbers{1e-30, 1e15}, from_zero{0.0, 1e15}, any_number{-1e15, 1e15}, bores{1e-4, 20.0},
    share{1e-30, 1.0}, whole_share{0.0, 1.0};
const water::liquid sea{.density = kilograms_per_cubic_metre(1023.0), .viscosity = millipascal_seconds(0.96)};

length m(double x) { return metres(x); }
area m2(double x) { return square_metres(x); }
flow_rate q(double x) { return cubic_metres_per_second(x); }
pipe_bore bore(double x) { return pipe_bore{metres(x)}; }
estimate<loss_coefficient> loss(double k) {
  return {loss_coefficient{k}, loss_coefficient{k}, loss_coefficient{k}, ""};
}

power_cut_input system() {
  return {.display = {.surface = m2(1.0),
                      .edge = standpipe{bore(0.1)},
                      .box = overflow_box{.horizontal_area = m2(0.05), .falls_by = m(0.1)},
                      .drains = {{.label = "drain", .bore = bore(0.04), .length = m(1.5)}}},
          .sump = {.rim = m(0.4),
                   .running_level = m(0.1),
                   .chambers = {{.label = "drains", .horizontal_area = m2(0.3)},
                                {.label = "pump", .horizontal_area = m2(0.3)}},
                   .baffles = {{.crest = m(0.25), .width = m(0.4)}}},
          .returns = {{.label = "A",
                       .flow = litres_per_hour(6000.0),
                       .outlet_below_edge = m(0.01),
                       .pipe = pipe_run{.label = "A", .bore = bore(0.03), .length = m(2)}}},
          .edge_above_floor = m(1.5)};
}
template <class Change>
auto cut_with(Change change) {
  auto in = system();
  change(in);
  return power_cut(in);
}
template <class Change>
auto sump_with(Change change) {
  auto s = system().sump;
  change(s);
  return running_levels(s, litres_per_hour(1000.0));
}

}  // namespace

TEST_CASE("plumbing ends: sumps") {
  check_edges("sump: rim", "m", {.high = 20.0}, [](double x) { return sump_with([x](sump& s) { s.rim = m(x); }); });
  check_edges("pump: running level", "m", {0.0},
              [](double x) { return sump_with([x](sump& s) { s.running_level = m(x); }); });
  check_edges("drains: gear", "m2", {0.0},
              [](double x) { return sump_with([x](sump& s) { s.chambers[0].gear = m2(x); }); });
  CHECK_NOTHROW(
      (void)sump_with([](sump& s) { s.chambers[0].horizontal_area = m2(2e4), s.chambers[0].gear = m2(1e4); }));
  CHECK_THROWS_WITH_AS(
      (void)sump_with([](sump& s) { s.chambers[0].horizontal_area = m2(1.5e4), s.chambers[0].gear = m2(1e4 + 1e-4); }),
      doctest::Contains("drains: gear = 10000.0001"), invalid_input);
  CHECK_NOTHROW((void)sump_with([](sump& s) { s.chambers[0].horizontal_area = m2(1e4); }));
  CHECK_THROWS_WITH_AS((void)sump_with([](sump& s) { s.chambers[0].horizontal_area = m2(1e4 + 1e-4); }),
                       doctest::Contains("drains: free horizontal area"), invalid_input);
  CHECK_NOTHROW((void)sump_with([](sump& s) { s.chambers[0].gear = m2(0.3 - 1.0001e-6); }));
  CHECK_THROWS_WITH_AS((void)sump_with([](sump& s) { s.chambers[0].gear = m2(0.3 - 0.9999e-6); }),
                       doctest::Contains("drains: free horizontal area"), invalid_input);
  const auto named = [](std::string_view word, auto change) {
    CAPTURE(word);
    CHECK_THROWS_WITH_AS((void)sump_with(change), doctest::Contains(std::string{word}.c_str()), invalid_input);
  };
  named("crest = ", [](sump& s) { s.baffles[0].crest = m(0.9999e-3); });
  named("width = ", [](sump& s) { s.baffles[0].width = m(0.9999e-3); });
  named("width = ", [](sump& s) { s.baffles[0].width = m(100.0001); });
  named("gap = ", [](sump& s) { s.baffles[0].gap = m(-1e-12); });
  named("thickness = ", [](sump& s) { s.baffles[0].thickness = m(-1e-12); });
  named("thickness = ", [](sump& s) { s.baffles[0].thickness = m(10.00001); });
  named("running level", [](sump& s) { s.running_level = m(0.4 + 1e-9); });
  CHECK_NOTHROW((void)sump_with([](sump& s) { s.baffles[0].width = m(1e-3); }));
  CHECK_NOTHROW((void)sump_with([](sump& s) { s.baffles[0].width = m(100.0); }));
  CHECK_NOTHROW((void)sump_with([](sump& s) { s.baffles[0].thickness = m(10.0); }));
  const auto levels = [](double x) { return water_in_sump(system().sump, {m(0.1), m(x)}); };
  check_edges("pump: level", "m", {0.0}, levels);
  CHECK_NOTHROW((void)running_levels(system().sump, q(0.0)));
  for (const double bad : {-1e-12, 1.001e15}) {
    CHECK_THROWS_WITH_AS((void)running_levels(system().sump, q(bad)), doctest::Contains("running_levels: flow"),
                         invalid_input);
  }
}

TEST_CASE("plumbing ends: chambers whose walls lean") {
  using slices = std::vector<area_slice>;
  const auto leaning = [](slices profile) {
    return sump_with([&](sump& s) { s.chambers[0].horizontal_area = area_profile{profile}; });
  };
  const auto refused = [&](std::string_view word, slices profile) {
    CAPTURE(word);
    CHECK_THROWS_WITH_AS(
        (void)leaning(profile),
        doctest::Contains(("tankwright::plumbing::running_levels: drains" + std::string{word}).c_str()), invalid_input);
  };
  CHECK_NOTHROW((void)leaning({{m(0), m2(0.3)}, {m(0.2), m2(0.4)}, {m(0.2), m2(0.5)}}));
  refused(" has a plan profile without slices", {});
  refused(" has a plan profile that does not start at the floor", {{m(0.1), m2(0.3)}, {m(0.2), m2(0.4)}});
  refused(" has a plan profile whose heights do not rise", {{m(0), m2(0.3)}, {m(0.2), m2(0.4)}, {m(0.1), m2(0.5)}});
  refused(": horizontal area = 0 m2", {{m(0), m2(0.3)}, {m(0.2), m2(0)}});
  refused(": horizontal area = 0 m2", {{m(0), m2(0)}, {m(0.2), m2(0.3)}});
  refused(": horizontal area = 1000001 m2", {{m(0), m2(0.3)}, {m(0.2), m2(1000001)}});
  refused(": free horizontal area = ", {{m(0), m2(0.3)}, {m(0.2), m2(0.5e-6)}});
}

TEST_CASE("plumbing ends: power cuts") {
  check_edges("display: surface", "m2", {1e-4, 1e4},
              [](double x) { return cut_with([x](auto& in) { in.display.surface = m2(x); }); });
  check_edges("display: horizontal area of the box", "m2", {1e-6, 1e4},
              [](double x) { return cut_with([x](auto& in) { in.display.box->horizontal_area = m2(x); }); });
  check_edges("display: falls_by of the box", "m", {0.0, 20.0},
              [](double x) { return cut_with([x](auto& in) { in.display.box->falls_by = m(x); }); });
  check_edges("A: flow", "m3/s", {0.0},
              [](double x) { return cut_with([x](auto& in) { in.returns[0].flow = q(x); }); });
  CHECK_THROWS_WITH_AS((void)cut_with([](auto& in) { in.returns[0].flow = q(10.0 + 1e-6); }),
                       doctest::Contains("A: flow = 10.000001"), invalid_input);
  check_edges("A: outlet_below_edge", "m", {-20.0},
              [](double x) { return cut_with([x](auto& in) { in.returns[0].outlet_below_edge = m(x); }); });
  CHECK_THROWS_WITH_AS((void)cut_with([](auto& in) { in.returns[0].outlet_below_edge = m(20.0001); }),
                       doctest::Contains("A: outlet_below_edge"), invalid_input);
  CHECK_NOTHROW((void)cut_with([](auto& in) { in.returns[0].outlet_below_edge = m(20.0); }));
  check_edges("A: break_below_edge", "m", {-20.0, 20.0},
              [](double x) { return cut_with([x](auto& in) { in.returns[0].break_below_edge = m(x); }); });
  check_edges("edge_above_floor", "m", {0.0, 50.0, edge::open},
              [](double x) { return cut_with([x](auto& in) { in.edge_above_floor = m(x); }); });
  check_edges("check_valve_leak", "", share,
              [](double x) { return cut_with([x](auto& in) { in.check_valve_leak = fraction(x); }); });
  check_edges("topped_up", "m3", {0.0, 1e5},
              [](double x) { return cut_with([x](auto& in) { in.topped_up = cubic_metres(x); }); });
  check_edges("area_uncertainty", "", {0.0, 0.9},
              [](double x) { return cut_with([x](auto& in) { in.area_uncertainty = fraction(x); }); });
  check_edges("level_uncertainty", "m", {0.0, 1.0},
              [](double x) { return cut_with([x](auto& in) { in.level_uncertainty = m(x); }); });
  check_edges("flow_uncertainty", "", {0.0, 0.9},
              [](double x) { return cut_with([x](auto& in) { in.flow_uncertainty = fraction(x); }); });
  check_edges("reserve", "m", {0.0, 20.0}, [](double x) { return cut_with([x](auto& in) { in.reserve = m(x); }); });
  check_edges("drain: bore", "m", {1e-4},
              [](double x) { return cut_with([x](auto& in) { in.display.drains[0].bore = bore(x); }); });
  check_edges("drain: length", "m", {0.0},
              [](double x) { return cut_with([x](auto& in) { in.display.drains[0].length = m(x); }); });
  CHECK_THROWS_WITH_AS((void)cut_with([](auto& in) { in.returns.clear(); }), doctest::Contains("has no return lines"),
                       invalid_input);
  const auto shared = [](int n) {
    return cut_with([n](auto& in) {
      in.shared_pipes = {{.pipe = {.label = "main", .bore = bore(0.04), .length = m(1)}, .side_by_side = n}};
    });
  };
  CHECK_NOTHROW((void)shared(1));
  CHECK_NOTHROW((void)shared(100));
  for (const int n : {0, 101})
    CHECK_THROWS_WITH_AS((void)shared(n), doctest::Contains("main: side_by_side"), invalid_input);
  CHECK_THROWS_WITH_AS(
      (void)cut_with([](auto& in) {
        in.shared_pipes = {{.pipe = {.label = "main", .bore = bore(0.04), .length = m(1)}, .returns = {"A", "X"}}};
      }),
      doctest::Contains("main is shared by 'X', which is no return of this system"), invalid_input);
  CHECK_NOTHROW((void)cut_with([](auto& in) {
    in.shared_pipes = {{.pipe = {.label = "main", .bore = bore(0.04), .length = m(1)}, .returns = {"A"}}};
  }));
  // The same checks stand before every question about a system.
  auto bad = system();
  bad.reserve = m(-1);
  const auto names = [](std::string_view function, auto call) {
    CAPTURE(function);
    CHECK_THROWS_WITH_AS(
        (void)call(),
        doctest::Contains((std::string{"tankwright::plumbing::"} + std::string{function} + ": reserve").c_str()),
        invalid_input);
  };
  names("power_cut", [&] { return power_cut(bad); });
  names("power_cut_breaks_blocked", [&] { return power_cut_breaks_blocked(bad); });
  names("power_cut_check_valves", [&] { return power_cut_check_valves(bad); });
  names("all_drains_blocked", [&] { return all_drains_blocked({.system = bad, .edge_to_rim = m(0.1)}); });
  check_edges("top_off", "m3", {0.0, 1e4}, [](double x) { return power_cut_failures(system(), cubic_metres(x)); });
  const auto blocked = [](double room, double high, double d, double top_off) {
    return all_drains_blocked({.system = system(),
                               .edge_to_rim = m(room),
                               .inlet = pump_inlet{m(high), bore(d)},
                               .top_off = cubic_metres(top_off)});
  };
  check_edges("edge_to_rim", "m", {0.0, 20.0}, [&](double x) { return blocked(x, 0.05, 0.04, 0); });
  check_edges("above_floor of the inlet", "m", {0.0, 20.0}, [&](double x) { return blocked(0.1, x, 0.04, 0); });
  check_edges("bore of the inlet", "m", {1e-4, 10.0}, [&](double x) { return blocked(0.1, 0.05, x, 0); });
  check_edges("topped_up", "m3", {0.0, 1e5}, [&](double x) { return blocked(0.1, 0.05, 0.04, x); });
}

TEST_CASE("plumbing ends: restarts and courses in time") {
  const auto again = [](auto change) {
    restart_input in{.system = system(), .inlet = {m(0.05), bore(0.04)}};
    change(in);
    return restart(in);
  };
  check_edges("above_floor of the inlet", "m", {0.0, 20.0},
              [&](double x) { return again([x](auto& in) { in.inlet.above_floor = m(x); }); });
  check_edges("bore of the inlet", "m", {1e-4, 10.0},
              [&](double x) { return again([x](auto& in) { in.inlet.bore = bore(x); }); });
  check_edges("priming", "s", {0.0, 86400.0},
              [&](double x) { return again([x](auto& in) { in.priming = seconds(x); }); });
  check_edges("taken", "m3/s", {0.0, 1e3}, [&](double x) {
    return again([x](auto& in) { in.taken = estimate<flow_rate>{q(x), q(x), q(x), ""}; });
  });
  check_edges("surge", "m", {0.0, 20.0}, [&](double x) { return again([x](auto& in) { in.surge = m(x); }); });
  check_edges("bore of the inlet", "m", {1e-4, 10.0}, [](double x) { return vortex_submergence(bore(x), q(1e-3)); });
  check_edges("flow", "m3/s", {0.0, 10.0}, [](double x) { return vortex_submergence(bore(0.04), q(x)); });
  const auto course = [](double until, double every) {
    return power_cut_transient({.system = system(), .until = seconds(until), .sample_every = seconds(every)});
  };
  check_edges("until", "s", {0.0, 1e6, edge::open}, [&](double x) { return course(x, x < 1.0 ? 1.0 : x); });
  check_edges("sample_every", "s", {0.0, 1e6, edge::open},
              [&](double x) { return course(1e-3, x < 1e-3 && x > 0 ? 1e-3 : x); });
  CHECK_THROWS_WITH_AS((void)course(100.001, 1e-3), doctest::Contains("number of samples"), invalid_input);
}

TEST_CASE("plumbing ends: fittings") {
  check_edges("bore", "m", {2e-4, 1e15, edge::open}, [](double x) { return fully_turbulent_factor(bore(x)); });
  check_edges("bore", "m", {2e-4, 1e15, edge::open}, [](double x) { return fitting_loss(fitting::elbow_90, bore(x)); });
  check_edges("bore", "m", {2e-4, 1e15, edge::open}, [](double x) { return entrance_loss({.bore = bore(x)}); });
  check_edges("lip radius", "m", from_zero,
              [](double x) { return entrance_loss({.bore = bore(0.05), .lip_radius = m(x)}); });
  check_edges("bore", "m", bores, [](double x) { return section_change_loss({bore(x), bore(1)}); });
  check_edges("bore", "m", bores, [](double x) { return section_change_loss({bore(1), bore(x)}); });
  check_edges("included angle", "deg", {0.0, 180.0 + 1e-9, edge::open}, [](double x) {
    return section_change_loss({bore(1), bore(2), degrees(x > 180.0 && x < 180.0 + 1e-9 ? 180.0 : x)});
  });
  const auto branch = [](double run, double b, double y) {
    return tee_losses({.direction = tee_direction::joining,
                       .run_bore = bore(run),
                       .branch_bore = bore(b),
                       .branch_share = fraction(y)});
  };
  check_edges("bore", "m", bores, [&](double x) { return branch(x, 0.5 * x, 0.5); });
  check_edges("branch bore over run bore", "", {1e-30, 1.0}, [&](double x) { return branch(1.0, x, 0.5); });
  check_edges("branch share", "", whole_share, [&](double x) { return branch(1.0, 0.5, x); });
  const auto hooper = [](double k1, double k, double re, double d) {
    return hooper_loss({k1, k}, reynolds_number{re}, bore(d));
  };
  check_edges("K_1", "", {0.0, 1e9}, [&](double x) { return hooper(x, 1, 1e4, 0.05); });
  check_edges("K_infinity, K_i", "", {0.0, 1e6}, [&](double x) { return hooper(1, x, 1e4, 0.05); });
  check_edges("Reynolds number", "", {1e-30}, [&](double x) { return hooper(1, 1, x, 0.05); });
  check_edges("bore", "m", {2e-4, 1e15, edge::open}, [&](double x) { return hooper(1, 1, 1e4, x); });
  const auto darby = [](double k1, double ki, double kd, double re, double size) {
    return darby_loss({k1, ki, kd}, reynolds_number{re}, nominal_size::from_inches(size));
  };
  check_edges("K_1", "", {0.0, 1e9}, [&](double x) { return darby(x, 1, 1, 1e4, 2); });
  check_edges("K_infinity, K_i", "", {0.0, 1e6}, [&](double x) { return darby(1, x, 1, 1e4, 2); });
  check_edges("K_d", "in^0.3", {0.0, 1e6}, [&](double x) { return darby(1, 1, x, 1e4, 2); });
  check_edges("Reynolds number", "", {1e-30}, [&](double x) { return darby(1, 1, 1, x, 2); });
  check_edges("nominal size", "in", positive_numbers, [&](double x) { return darby(1, 1, 1, 1e4, x); });
  check_edges("Kv", "m3/h at 1 bar", positive_numbers,
              [](double x) { return loss_from_flow_coefficient(flow_coefficient::from_kv(x), bore(1)); });
  check_edges("bore", "m", bores,
              [](double x) { return loss_from_flow_coefficient(flow_coefficient::from_kv(1), bore(x)); });
  check_edges("loss coefficient", "", positive_numbers,
              [](double x) { return flow_coefficient_from_loss(loss_coefficient{x}, bore(1)); });
  check_edges("bore", "m", bores, [](double x) { return flow_coefficient_from_loss(loss_coefficient{1}, bore(x)); });
  check_edges("loss coefficient", "", positive_numbers,
              [](double x) { return leaking_check_valve(loss_coefficient{x}, bore(1)); });
  check_edges("bore", "m", bores, [](double x) { return leaking_check_valve(loss_coefficient{1}, bore(x)); });
  check_edges("open area", "m2", whole_share, [](double x) { return leaking_check_valve(m2(x)); });
  check_edges("bore", "m", bores, [](double x) { return on_bore(loss(1), {bore(x), bore(1)}); });
  check_edges("bore", "m", bores, [](double x) { return on_bore(loss(1), {bore(1), bore(x)}); });
  check_edges("loss coefficient", "", {-1e6, 1e15}, [](double x) { return on_bore(loss(x), {bore(1), bore(1)}); });
  check_edges("loss coefficient", "", {-1e6, 1e15}, [](double x) { return known_loss(x); });
  check_edges("loss coefficient", "", {-1e6, 1e15}, [](double x) { return total_loss({{loss(x)}}); });
  CHECK_NOTHROW((void)total_loss({{loss(1.0), 0}}));
  CHECK_THROWS_WITH_AS((void)total_loss({{loss(1.0), -1}}), doctest::Contains("count"), invalid_input);
  check_edges("loss coefficient", "", {-1e6, 1e15},
              [](double x) { return equivalent_length(loss_coefficient{x}, bore(1), darcy_factor{0.02}); });
  check_edges("bore", "m", bores,
              [](double x) { return equivalent_length(loss_coefficient{1}, bore(x), darcy_factor{0.02}); });
  check_edges("friction factor", "", positive_numbers,
              [](double x) { return equivalent_length(loss_coefficient{1}, bore(1), darcy_factor{x}); });
}

TEST_CASE("plumbing ends: pipes and their friction") {
  const auto run = [](auto change) {
    pipe_run r{.label = "r", .bore = bore(0.05), .length = m(1), .fittings = known_loss(1)};
    change(r);
    return head_loss(r, q(1e-6), sea, extrapolate);
  };
  check_edges("r: bore", "m", {1e-4, 20.0}, [&](double x) { return run([x](auto& r) { r.bore = bore(x); }); });
  check_edges("r: length", "m", {0.0, 1e5}, [&](double x) { return run([x](auto& r) { r.length = m(x); }); });
  check_edges("r: roughness", "m", {0.0}, [&](double x) { return run([x](auto& r) { r.roughness = m(x); }); });
  CHECK_THROWS_WITH_AS((void)run([](auto& r) { r.bore = bore(15), r.roughness = m(10.00001); }),
                       doctest::Contains("r: roughness"), invalid_input);
  CHECK_NOTHROW((void)run([](auto& r) { r.bore = bore(15), r.roughness = m(10); }));
  check_edges("r: sum of the loss coefficients", "", {-2.0},
              [&](double x) { return run([x](auto& r) { r.fittings = loss(x); }); });
  CHECK_THROWS_WITH_AS((void)run([](auto& r) { r.fittings = loss(1.1e15); }), doctest::Contains("loss coefficient"),
                       invalid_input);
  CHECK_THROWS_WITH_AS((void)run([](auto& r) {
                         r.fittings = {loss_coefficient{-1.1e6}, loss_coefficient{1}, loss_coefficient{2}, ""};
                       }),
                       doctest::Contains("loss coefficient = -1100000"), invalid_input);
  CHECK_THROWS_WITH_AS((void)run([](auto& r) {
                         r.fittings = {loss_coefficient{1}, loss_coefficient{1}, loss_coefficient{1.1e15}, ""};
                       }),
                       doctest::Contains("loss coefficient = 1.1e+15"), invalid_input);
  check_edges("r: Kv of the valve", "m3/h at 1 bar", {.high = 1e8},
              [&](double x) { return run([x](auto& r) { r.valve = flow_coefficient::from_kv(x); }); });
  CHECK_THROWS_WITH_AS((void)run([](auto& r) { r.valve = flow_coefficient::from_kv(-1e-12); }),
                       doctest::Contains("r: Kv of the valve"), invalid_input);
  CHECK_THROWS_WITH_AS((void)run([](auto& r) { r.valve = flow_coefficient::from_kv(0.999e-9); }),
                       doctest::Contains("has its valve shut"), invalid_input);
  check_edges("r: Kv of the check valve's leak", "m3/h at 1 bar", {0.0, 1e8}, [&](double x) {
    return run([x](auto& r) { r.check_valve = check_valve{flow_coefficient::from_kv(x)}; });
  });
  const auto rough = [](double x, range_policy policy) {
    return head_loss({.label = "r", .bore = bore(1), .length = m(1), .roughness = m(x)}, q(1e-6), sea, policy);
  };
  CHECK_NOTHROW((void)rough(0.05, range_policy::published));
  CHECK_THROWS_AS((void)rough(0.05 * (1 + 1e-9), range_policy::published), out_of_range);
  CHECK_NOTHROW((void)rough(1.0 - 1e-9, extrapolate));
  CHECK_THROWS_AS((void)rough(1.0, extrapolate), invalid_input);
  const pipe_run plain{.label = "r", .bore = bore(0.05), .length = m(1)};
  for (const double bad : {1.001e15, -1.001e15}) {
    CHECK_THROWS_WITH_AS((void)head_loss(plain, q(bad), sea, extrapolate), doctest::Contains("r: flow"), invalid_input);
    CHECK_THROWS_WITH_AS((void)flow_for_head(plain, m(bad), sea, extrapolate), doctest::Contains("r: head"),
                         invalid_input);
  }
  check_edges("flow", "m3/s", any_number, [](double x) { return mean_velocity(q(x), bore(1)); });
  check_edges("bore", "m", bores, [](double x) { return mean_velocity(q(1), bore(x)); });
  CHECK_THROWS_WITH_AS((void)flow_for_head({.label = "r", .bore = bore(1)}, m(1), sea),
                       doctest::Contains("resists nothing"), invalid_input);
}
