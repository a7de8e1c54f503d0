// SPDX-License-Identifier: BSL-1.0
// What a vessel and its parts can be, as numbers: from a micrometre to a kilometre, from a bubble to a reservoir, from a gas
// to osmium, from rubber foam to diamond. The ends are decisions of this library; here they are written a second time.
#include <array>
#include <tankwright/vessel.hpp>

#include "some_items.hpp"
#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

constexpr interval lengths{1e-6, 1e3}, lengths_from_zero{0.0, 1e3}, densities{0.01, 3e4}, pressures{0.0, 1e9};
constexpr interval masses_from_zero{0.0, 1e12}, forces_from_zero{0.0, 1e12}, areas{1e-12, 1e6}, volumes{1e-18, 1e9};
const mass_density fresh = kilograms_per_cubic_metre(1000.0);

vs::panel pane(double width, double height, double thickness = 0.01) {
  return {.width = metres(width),
          .height = metres(height),
          .thickness = metres(thickness),
          .edges = vs::panel_edges::all_supported,
          .material = vs::annealed_glass,
          .label = "p"};
}
template <class Change>
auto glass_with(Change change) {
  auto p = pane(1.0, 1.0);
  vs::panel_material m = vs::annealed_glass;
  change(m);
  p.material = m;
  return vs::unusual_in(p);
}

}  // namespace

TEST_CASE("vessel ends: water and walls") {
  const auto wall = [](double w, double h, double level, double rho) {
    return vs::push_on({.width = metres(w),
                        .height = metres(h),
                        .level = metres(level),
                        .water_density = kilograms_per_cubic_metre(rho)});
  };
  check_edges("wall: width", "m", lengths, [&](double x) { return wall(x, 1, 1, 1000); });
  check_edges("wall: height", "m", lengths, [&](double x) { return wall(1, x, 1, 1000); });
  check_edges("wall: level", "m", lengths_from_zero, [&](double x) { return wall(1, 1, x, 1000); });
  check_edges("wall: water density", "kg/m3", densities, [&](double x) { return wall(1, 1, 1, x); });
  check_edges("depth", "m", lengths_from_zero, [](double x) { return vs::hydrostatic_pressure(metres(x), fresh); });
  check_edges("water density", "kg/m3", densities,
              [](double x) { return vs::hydrostatic_pressure(metres(1), kilograms_per_cubic_metre(x)); });
}

TEST_CASE("vessel ends: rails and braces") {
  const auto rails = [](double h, double level, double rho) {
    return vs::rails_of({.height = metres(h), .level = metres(level), .water_density = kilograms_per_cubic_metre(rho)});
  };
  check_edges("panel: height", "m", lengths, [&](double x) { return rails(x, 1, 1000); });
  check_edges("panel: level", "m", lengths_from_zero, [&](double x) { return rails(1, x, 1000); });
  check_edges("panel: water density", "kg/m3", densities, [&](double x) { return rails(1, 1, x); });
  const auto pull = [](double l, int n, double q) {
    return vs::pull_of_braces({.rail = metres(l), .braces = n, .load = newtons_per_metre(q)});
  };
  check_edges("rail", "m", lengths, [&](double x) { return pull(x, 1, 1); });
  check_edges("load", "N/m", forces_from_zero, [&](double x) { return pull(1, 1, x); });
  CHECK_NOTHROW((void)pull(1, 1, 1));
  CHECK_NOTHROW((void)pull(1, 20, 1));
  CHECK_THROWS_WITH_AS((void)pull(1, 21, 1), doctest::Contains("expected 1 to 20"), invalid_input);
  CHECK_THROWS_WITH_AS((void)pull(1, 0, 1), doctest::Contains("number of braces = 0 is not possible"), invalid_input);
}

TEST_CASE("vessel ends: sheets, lids, gauges") {
  const auto sheet = [](auto change) {
    vs::sheet_strip s{.spacing = metres(0.4),
                      .load = pascals(100),
                      .spans = vs::strip_spans::one,
                      .bending_capacity = newtons(600),
                      .rigidity = joules(2500)};
    change(s);
    return vs::strip_between_frames(s);
  };
  check_edges("sheet: spacing", "m", lengths,
              [&](double x) { return sheet([x](vs::sheet_strip& s) { s.spacing = metres(x); }); });
  check_edges("sheet: load", "Pa", pressures,
              [&](double x) { return sheet([x](vs::sheet_strip& s) { s.load = pascals(x); }); });
  check_edges("sheet: bending capacity", "N m/m", {1e-9, 1e12},
              [&](double x) { return sheet([x](vs::sheet_strip& s) { s.bending_capacity = newtons(x); }); });
  check_edges("sheet: rigidity", "N m2/m", {1e-9, 1e15},
              [&](double x) { return sheet([x](vs::sheet_strip& s) { s.rigidity = joules(x); }); });
  check_edges("sheet: duration factor", "", {0.01, 1.0},
              [&](double x) { return sheet([x](vs::sheet_strip& s) { s.duration_factor = x; }); });
  check_edges("sheet: creep factor", "", {1.0, 100.0},
              [&](double x) { return sheet([x](vs::sheet_strip& s) { s.creep_factor = x; }); });

  const auto lid = [](auto change) {
    vs::lid l{.span = metres(0.6), .thickness = metres(0.012), .material = vs::cast_acrylic};
    change(l);
    return vs::sag_of(l);
  };
  check_edges("lid: extra load", "Pa", pressures,
              [&](double x) { return lid([x](vs::lid& l) { l.extra = pascals(x); }); });
  check_edges("lid: moisture strain", "", {0.0, 0.05},
              [&](double x) { return lid([x](vs::lid& l) { l.moisture_strain = x; }); });
  check_edges("lid: thickness", "m", {1e-6, 0.6, edge::closed, edge::open},
              [&](double x) { return lid([x](vs::lid& l) { l.thickness = metres(x); }); });
  CHECK_NOTHROW((void)lid([](vs::lid& l) { l.span = metres(1e3); }));
  for (const double bad : {1e3 * (1.0 + 1e-9), 0.0, -1.0}) {
    CHECK_THROWS_WITH_AS((void)lid([bad](vs::lid& l) { l.span = metres(bad); }), doctest::Contains("lid: span"),
                         invalid_input);
  }

  check_edges("expected bulge", "m", lengths_from_zero,
              [](double x) { return vs::bulge_to_see({.expected = metres(x)}); });
  check_edges("resolution of the gauge", "m", {1e-7, 1.0}, [](double x) {
    vs::bulge_gauge gauge = vs::dial_indicator;
    gauge.resolution = metres(x);
    return vs::bulge_to_see({.expected = millimetres(1), .gauge = gauge});
  });
  check_edges("nominal thickness", "m", lengths, [](double x) { return vs::least_thickness(metres(x)); });
  check_edges("outside dimension", "m", lengths, [](double x) {
    return vs::inside_of({.measured = vs::outside{metres(x)}, .near_panel = metres(0.0), .far_panel = metres(0.0)});
  });
  const auto inner = [](double near, double far) {
    return vs::inside_of({.measured = vs::outside{metres(1.0)}, .near_panel = metres(near), .far_panel = metres(far)});
  };
  CHECK(inner(0.0, 0.0).value() == metres(1.0));
  CHECK_THROWS_WITH_AS((void)inner(-1e-12, 0.0), doctest::Contains("near panel"), invalid_input);
  CHECK_THROWS_WITH_AS((void)inner(0.0, -1e-12), doctest::Contains("far panel"), invalid_input);
}

TEST_CASE("vessel ends: floor, fixings, joints") {
  const auto load = [](double m, double a, double feet, double code = 2000.0) {
    auto live = vs::living_rooms;
    live.value = pascals(code);
    return vs::load_on_floor(
        {.total = kilograms(m), .footprint = square_metres(a), .bearing = square_metres(feet), .code = live});
  };
  check_edges("tank: total mass", "kg", masses_from_zero, [&](double x) { return load(x, 1, 1); });
  check_edges("tank: footprint", "m2", areas, [&](double x) { return load(1, x, x); });
  check_edges("tank: bearing area", "m2", {2e-6, 2.0}, [&](double x) { return load(1, 2, x); });
  check_edges("tank: code live load", "Pa", {1.0, 1e9}, [&](double x) { return load(1, 1, 1, x); });

  const auto hole = [](double h, double d, double rho) {
    return vs::blow_off({.depth = metres(h), .diameter = metres(d), .water_density = kilograms_per_cubic_metre(rho)});
  };
  check_edges("bulkhead: depth", "m", lengths_from_zero, [&](double x) { return hole(x, 0.1, 1000); });
  check_edges("bulkhead: diameter", "m", lengths, [&](double x) { return hole(1, x, 1000); });
  check_edges("bulkhead: water density", "kg/m3", densities, [&](double x) { return hole(1, 0.1, x); });

  const auto gasket = [](double g, double b, double p, double m, double y) {
    return vs::gasket_force({.mean_diameter = metres(g),
                             .effective_width = metres(b),
                             .pressure = pascals(p),
                             .material = vs::gasket_material{"", m, pascals(y), standing::from_memory, ""}});
  };
  check_edges("gasket: mean diameter", "m", lengths, [&](double x) { return gasket(x, 0.5e-6, 1, 1, 1); });
  check_edges("gasket: effective width", "m", {0.0, 0.1, edge::open, edge::open},
              [&](double x) { return gasket(0.1, x, 1, 1, 1); });
  check_edges("gasket: pressure", "Pa", pressures, [&](double x) { return gasket(0.1, 0.01, x, 1, 1); });
  check_edges("gasket: gasket factor", "", {0.0, 100.0}, [&](double x) { return gasket(0.1, 0.01, 1, x, 1); });
  check_edges("gasket: seating stress", "Pa", pressures, [&](double x) { return gasket(0.1, 0.01, 1, 1, x); });
  check_edges("gasket thickness", "mm", {0.05, 1000.0}, [](double x) { return vs::gasket_takes_up(millimetres(x)); });

  const auto sump = [](double a, double h, double m, double rho) {
    return vs::uplift_of({.horizontal_area = square_metres(a),
                          .flood_depth = metres(h),
                          .mass_of_sump = kilograms(m),
                          .water_density = kilograms_per_cubic_metre(rho)});
  };
  check_edges("sump: horizontal area", "m2", areas, [&](double x) { return sump(x, 1, 1, 1000); });
  check_edges("sump: flood depth", "m", lengths_from_zero, [&](double x) { return sump(1, x, 1, 1000); });
  check_edges("sump: mass", "kg", masses_from_zero, [&](double x) { return sump(1, 1, x, 1000); });
  check_edges("sump: water density", "kg/m3", densities, [&](double x) { return sump(1, 1, 1, x); });

  const auto joint = [](double w, double z, double rho) {
    return vs::pull_on_joint({.width = metres(w), .depth = metres(z), .water_density = kilograms_per_cubic_metre(rho)});
  };
  check_edges("wall: width", "m", lengths, [&](double x) { return joint(x, 1, 1000); });
  check_edges("wall: depth", "m", lengths_from_zero, [&](double x) { return joint(1, x, 1000); });
  check_edges("wall: water density", "kg/m3", densities, [&](double x) { return joint(1, 1, x); });
  const auto screw = [](double g, double d, double p, double time = 0.9, double wet = 1.0) {
    return vs::withdrawal_of(
        {.gravity = g, .diameter = metres(d), .penetration = metres(p), .duration_factor = time, .wet_factor = wet});
  };
  check_edges("screw: specific gravity", "", {0.05, 1.3}, [&](double x) { return screw(x, 0.005, 0.03); });
  check_edges("screw: diameter", "m", {1e-4, 0.1}, [&](double x) { return screw(0.5, x, 0.03); });
  check_edges("screw: penetration", "m", {0.0, 1.0}, [&](double x) { return screw(0.5, 0.005, x); });
  check_edges("screw: factor", "", {1e-30, 1.0}, [&](double x) { return screw(0.5, 0.005, 0.03, x); });
  check_edges("screw: factor", "", {1e-30, 1.0}, [&](double x) { return screw(0.5, 0.005, 0.03, 0.9, x); });
  check_edges("hole: diameter", "m", lengths,
              [](double x) { return vs::hole_to_edge({.diameter = metres(x), .thickness = metres(0.01)}); });
  check_edges("hole: thickness", "m", lengths,
              [](double x) { return vs::hole_to_edge({.diameter = metres(0.05), .thickness = metres(x)}); });
}

TEST_CASE("vessel ends: materials and panels") {
  check_edges("p: density", "kg/m3", densities, [](double x) {
    return glass_with([x](vs::panel_material& m) { m.density = kilograms_per_cubic_metre(x); });
  });
  check_edges("p: Poisson ratio", "", {0.0, 0.5},
              [](double x) { return glass_with([x](vs::panel_material& m) { m.poisson = x; }); });
  check_edges("p: Young's modulus", "Pa", {1.0, 1e13},
              [](double x) { return glass_with([x](vs::panel_material& m) { m.modulus = pascals(x); }); });
  check_edges("p: long-term modulus", "Pa", {1.0, 1e13}, [](double x) {
    return glass_with([x](vs::panel_material& m) { m.long_term_modulus = {pascals(x), pascals(x), pascals(x), ""}; });
  });
  check_edges("p: allowable stress", "Pa", {1.0, 1e12},
              [](double x) { return glass_with([x](vs::panel_material& m) { m.allowable.value = pascals(x); }); });
  check_edges("p: span over deflection", "", {1.0, 1e6},
              [](double x) { return glass_with([x](vs::panel_material& m) { m.bulge.span_over_deflection = x; }); });
  check_edges("p: largest deflection", "m", {1e-6, 1e3},
              [](double x) { return glass_with([x](vs::panel_material& m) { m.bulge.at_most = metres(x); }); });
  // Each of the three values of an estimate by itself; two may be one.
  const auto later = [](double low, double central, double high) {
    return glass_with([&](vs::panel_material& m) {
      m.long_term_modulus = {pascals(low), pascals(central), pascals(high), ""};
    });
  };
  CHECK_NOTHROW((void)later(2e9, 3e9, 4e9));
  CHECK_NOTHROW((void)later(2e9, 2e9, 4e9));
  CHECK_NOTHROW((void)later(2e9, 4e9, 4e9));
  CHECK_THROWS_WITH_AS((void)later(0.5, 3e9, 4e9), doctest::Contains("modulus = 0.5 Pa"), invalid_input);
  CHECK_THROWS_WITH_AS((void)later(2e9, 3e9, 1e14), doctest::Contains("modulus = 1e+14 Pa"), invalid_input);

  const auto across = [](double x, range_policy policy) {
    return outcome_of(
        {"p: width over height", "", {0.02, 20.0}, {0.1, 10.0}, ""}, x, policy,
        [](double ratio, auto how) { return vs::uniform_on(pane(10.0 * ratio, 10.0, 1e-3), pascals(1), how); });
  };
  for (const double x : {0.02, 20.0, 0.1, 10.0}) {
    const bool low = x < 1.0, possible = x == 0.02 || x == 20.0;
    const auto policy = possible ? extrapolate : range_policy::published;
    const auto beyond = possible ? outcome::invalid : outcome::outside;
    CAPTURE(x);
    CHECK(across(x * (low ? 1.0 + 1e-9 : 1.0 - 1e-9), policy) == outcome::accepted);
    CHECK(across(x * (low ? 1.0 - 1e-9 : 1.0 + 1e-9), policy) == beyond);
  }
  check_edges("p: load", "Pa", pressures, [](double x) { return vs::uniform_on(pane(1, 1), pascals(x)); });
  check_edges("p: level", "m", lengths_from_zero,
              [](double x) { return vs::water_on(pane(1, 1), {.level = metres(x), .water_density = fresh}); });
  check_edges("p: water density", "kg/m3", densities, [](double x) {
    return vs::water_on(pane(1, 1), {.level = metres(1), .water_density = kilograms_per_cubic_metre(x)});
  });
  CHECK_THROWS_WITH_AS((void)vs::unusual_in(pane(1e-7, 1.0, 1e-8)), doctest::Contains("p: width"), invalid_input);
  CHECK_THROWS_WITH_AS((void)vs::unusual_in(pane(1.0, 1e-7, 1e-8)), doctest::Contains("p: height"), invalid_input);
  check_edges("p: thickness", "m", {1e-6, 1.0, edge::closed, edge::open},
              [](double x) { return vs::uniform_on(pane(1, 1, x), pascals(1)); });
  // A height at the end of what can be, with a density at the end: only the stages themselves are counted.
  const std::vector<length> most(10'000, metres(0.0)), too_many(10'001, metres(0.0));
  CHECK(vs::first_fill(pane(1, 1), most, fresh).size() == 10'000);
  CHECK_THROWS_WITH_AS((void)vs::first_fill(pane(1, 1), too_many, fresh), doctest::Contains("number of stages"),
                       invalid_input);
  CHECK(vs::first_fill(pane(1, 1), {}, fresh).empty());
  // What is wrong is said by the function that was asked, before any stage.
  CHECK_THROWS_WITH_AS((void)vs::first_fill(pane(1, 1, 1), {}, fresh),
                       doctest::Contains("tankwright::vessel::first_fill"), invalid_input);
  CHECK_THROWS_WITH_AS((void)vs::first_fill(pane(1, 1), {}, kilograms_per_cubic_metre(0.0)),
                       doctest::Contains("tankwright::vessel::first_fill: water density"), invalid_input);
}

TEST_CASE("vessel ends: loads of glass by time") {
  const double years = 13.0 * 365.0 * 24.0 * 3600.0;
  check_edges(
      {"duration of load", "s", {1e-3, 1e11}, {3.0, years}, ""},
      [](double x, range_policy policy) { return vs::glass_load_duration_factor(seconds(x), policy); }, ends_of::test);
  const auto stress = [](double p, double a, double d) {
    return vs::glass_stress_for_breakage(
        {.breakage_probability = fraction(p), .stressed_area = square_metres(a), .lasting = seconds(d)});
  };
  check_edges("breakage probability", "", {1e-9, 1.0, edge::closed, edge::open},
              [&](double x) { return stress(x, 1, 3); });
  check_edges("stressed area", "m2", areas, [&](double x) { return stress(0.1, x, 3); });
  check_edges("duration of load", "s", {1e-3, 1e11}, [&](double x) { return stress(0.1, 1, x); });
  const auto spell = [](double q, double d) {
    return vs::glass_equivalent_load(std::array{vs::load_spell{.load = pascals(q), .lasting = seconds(d)}});
  };
  check_edges("load", "Pa", pressures, [&](double x) { return spell(x, 3); });
  check_edges("duration of load", "s", {1e-3, 1e11}, [&](double x) { return spell(1, x); });
  const std::vector<vs::load_spell> most(100'000, {.load = pascals(0), .lasting = seconds(3)});
  CHECK(vs::glass_equivalent_load(most) == pascals(0));
  auto more = most;
  more.push_back(most[0]);
  CHECK_THROWS_WITH_AS((void)vs::glass_equivalent_load(more), doctest::Contains("number of spells"), invalid_input);
  check_edges("e: allowable stress", "Pa", {1.0, 1e12}, [](double x) {
    return vs::for_permanent_load({"e", pascals(x), vs::load_basis::short_term, standing::from_memory, ""});
  });
}

TEST_CASE("vessel ends: drips and holes") {
  const auto drip = [](int n, double t, double low, double central, double high) {
    return vs::drip_rate({.drops = n,
                          .over = seconds(t),
                          .drop = {cubic_metres(low), cubic_metres(central), cubic_metres(high), "spoon"}});
  };
  check_edges("time", "s", {1.0, 3.2e8}, [&](double x) { return drip(3, x, 1e-8, 1e-8, 1e-8); });
  check_edges("drip: volume of a drop", "m3", {1e-9, 1e-6}, [&](double x) { return drip(3, 60, x, x, x); });
  CHECK_NOTHROW((void)drip(1, 60, 1e-8, 1e-8, 1e-8));
  CHECK_NOTHROW((void)drip(100'000, 60, 1e-8, 1e-8, 1e-8));
  CHECK(drip(3, 60, 1e-8, 2e-8, 3e-8).leak.reason == "spoon");
  const auto hole = [](double d, double h, double c) {
    return vs::leak_through_hole({.diameter = metres(d), .depth = metres(h), .discharge_coefficient = c});
  };
  check_edges("diameter", "m", lengths, [&](double x) { return hole(x, 1, 0.6); });
  check_edges("depth", "m", lengths_from_zero, [&](double x) { return hole(0.01, x, 0.6); });
  check_edges("discharge coefficient", "", {1e-30, 1.0}, [&](double x) { return hole(0.01, 1, x); });
}

TEST_CASE("vessel ends: things in the water") {
  const std::vector<vs::item> nothing;
  check_edges("gross volume", "m3", volumes, [&](double x) {
    return vs::water_in({.gross = cubic_metres(x), .items = nothing, .water_density = fresh});
  });
  check_edges("water density", "kg/m3", densities, [&](double x) {
    return vs::water_in({.gross = litres(100), .items = nothing, .water_density = kilograms_per_cubic_metre(x)});
  });
  check_edges("equipment: volume", "m3", {0.0, 1e9},
              [](double x) { return vs::equipment({.outside = cubic_metres(x), .mass = kilograms(1)}); });
  check_edges("equipment: mass", "kg", masses_from_zero,
              [](double x) { return vs::equipment({.outside = litres(1), .mass = kilograms(x)}); });
  check_edges("equipment: water density", "kg/m3", densities, [](double x) {
    return vs::weight_of(vs::equipment({.outside = litres(1), .mass = kilograms(1)}), kilograms_per_cubic_metre(x));
  });
}
