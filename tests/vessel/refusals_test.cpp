// SPDX-License-Identifier: BSL-1.0
// Ends of sand, rock, light, shapes, beams and leak tests, written as numbers, and who refuses what.
#include <numbers>
#include <tankwright/vessel.hpp>

#include "some_items.hpp"
#include "support/edges.hpp"
#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

constexpr interval lengths{1e-6, 1e3}, lengths_from_zero{0.0, 1e3}, densities{0.01, 3e4}, areas{1e-12, 1e6};
constexpr interval masses{1e-9, 1e12}, masses_from_zero{0.0, 1e12},
    right_angle{0.0, std::numbers::pi / 2.0, edge::closed, edge::open};
const mass_density fresh = kilograms_per_cubic_metre(1000.0);

mass_density density(double x) { return kilograms_per_cubic_metre(x); }
vs::inside in(double x) { return vs::inside{metres(x)}; }
vs::refractive_index index(double n) { return vs::refractive_index{n}; }
vs::shape tank() { return vs::box({.length = in(2), .width = in(1), .height = in(900)}); }

vs::beam joist() {
  return {.span = metres(2),
          .section = vs::rectangular_section({.breadth = metres(0.05), .depth = metres(0.15)}),
          .modulus = pascals(1e10),
          .supports = std::vector<vs::beam_support>{{.at = metres(0)}, {.at = metres(2)}},
          .label = "j"};
}
template <class Change>
vs::beam_result bent(Change change) {
  vs::beam b = joist();
  change(b);
  return vs::bend(b);
}
template <class Change>
vs::beam_result of_section(Change change) {
  vs::beam_section s = vs::rectangular_section({.breadth = metres(0.05), .depth = metres(0.15)});
  change(s);
  return bent([&](vs::beam& b) { b.section = s; });
}

}  // namespace

TEST_CASE("vessel refusals: sand and its slopes") {
  const auto bed = [](double floor, double depth, vs::grains sand = vs::aragonite_sand) {
    return vs::sand_bed({.floor = square_metres(floor), .depth = metres(depth), .sand = sand});
  };
  check_edges("sand: floor area", "m2", areas, [&](double x) { return bed(x, 0.1); });
  check_edges("sand: depth", "m", lengths_from_zero, [&](double x) { return bed(1, x); });
  check_edges("sand: porosity", "", {0.0, 1.0, edge::closed, edge::open},
              [&](double x) { return bed(1, 0.1, exact_grains(x, 2800)); });
  check_edges("sand: grain density", "kg/m3", densities, [&](double x) { return bed(1, 0.1, exact_grains(0.4, x)); });
  check_edges("sand: dry mass", "kg", masses_from_zero,
              [](double x) { return vs::sand_by_mass({.dry_mass = kilograms(x)}); });
  check_edges("sand: floor area", "m2", areas,
              [](double x) { return vs::bed_depth(vs::sand_by_mass({.dry_mass = kilograms(1)}), square_metres(x)); });
  const auto slope = [](double shallow, double deep, double run, double repose) {
    return vs::sloped_bed(
        {.shallow_end = metres(shallow), .deep_end = metres(deep), .run = metres(run), .repose = radians(repose)});
  };
  check_edges("shallow end", "m", {0.0, 1e3}, [&](double x) { return slope(x, 1e3, 1, 0.5); });
  check_edges("deep end", "m", {0.25, 1e3}, [&](double x) { return slope(0.25, x, 1, 0.5); });
  check_edges("run", "m", lengths, [&](double x) { return slope(0, 1, x, 0.5); });
  check_edges("angle of repose", "rad", {0.001, 1.57}, [&](double x) { return slope(0, 1, 1, x); });
  check_edges("rise", "m", lengths_from_zero, [](double x) { return vs::slope_run(metres(x)); });
  check_edges("angle of repose", "rad", {0.001, 1.57}, [](double x) { return vs::slope_run(metres(1), radians(x)); });
  CHECK_THROWS_WITH_AS((void)vs::sand_by_mass({.dry_mass = kilograms(1), .sand = exact_grains(1.0, 2800)}),
                       doctest::Contains("sand_by_mass: sand: porosity"), invalid_input);
}

TEST_CASE("vessel refusals: rock") {
  check_edges("rock: dry mass", "kg", masses_from_zero,
              [](double x) { return vs::rock_by_mass({.dry_mass = kilograms(x)}); });
  check_edges("rock: flooded pores", "", {0.0, 1.0},
              [](double x) { return vs::rock_by_mass({.dry_mass = kilograms(1), .flooded_pores = fraction(x)}); });
  const auto weighed = [](double dry, double sub, double water, double soaked) {
    return vs::rock_weighed_under_water({.dry_mass = kilograms(dry),
                                         .submerged_mass = kilograms(sub),
                                         .water_density = density(water),
                                         .soaked_mass = kilograms(soaked)});
  };
  check_edges("rock: dry mass", "kg", masses, [&](double x) { return weighed(x, 0, 1000, 1e12); });
  check_edges("rock: water density", "kg/m3", densities, [&](double x) { return weighed(10, 6, x, 11); });
  check_edges("rock: submerged mass", "kg", {0.0, 10.0, edge::closed, edge::open},
              [&](double x) { return weighed(10, x, 1000, 11); });
  check_edges("rock: soaked mass", "kg", {10.0, 1e12}, [&](double x) { return weighed(10, 6, 1000, x); });
  CHECK_THROWS_WITH_AS((void)vs::rock_weighed_under_water({.dry_mass = kilograms(10),
                                                           .submerged_mass = kilograms(6),
                                                           .water_density = fresh,
                                                           .rock = exact_grains(1.0, 2800)}),
                       doctest::Contains("rock_weighed_under_water: rock: porosity"), invalid_input);
  const auto rise = [](double before, double after, vs::grains rock = vs::reef_rock) {
    return vs::rock_by_level_rise(tank(), {.before = metres(before), .after = metres(after), .rock = rock});
  };
  check_edges("box: depth", "m", {0.0, 900.0}, [&](double x) { return rise(x, 900.0); });
  CHECK_NOTHROW((void)rise(0.5, 0.5));
  CHECK_THROWS_WITH_AS((void)rise(0.5, 0.5 - 1e-12), doctest::Contains("rock_by_level_rise: rock: level after"),
                       invalid_input);
  CHECK_THROWS_WITH_AS((void)rise(0.5, 900.1), doctest::Contains("rock_by_level_rise: box: depth"), invalid_input);
  CHECK_THROWS_WITH_AS((void)rise(0.5, 0.6, exact_grains(1.0, 2800)), doctest::Contains("rock: porosity"),
                       invalid_input);
  const auto dry = [](double sub, double grain, double water) {
    return vs::dry_mass_from_submerged(
        {.submerged_mass = kilograms(sub), .grain_density = density(grain), .water_density = density(water)});
  };
  check_edges("submerged mass", "kg", masses_from_zero, [&](double x) { return dry(x, 2800, 1000); });
  check_edges("water density", "kg/m3", {0.01}, [&](double x) { return dry(1, 2.5e4, x); });
  check_edges("grain density", "kg/m3", {1001.0, 3e4}, [&](double x) { return dry(1, x, 1000); });
}

TEST_CASE("vessel refusals: samples of sand") {
  const auto porosity = [](double bulk, double grain) {
    return vs::porosity_of({.dry_bulk = density(bulk), .grain = density(grain)});
  };
  check_edges("dry bulk density", "kg/m3", {2.85, 2850.0}, [&](double x) { return porosity(x, 2850.0); });
  check_edges("grain density", "kg/m3", densities, [&](double x) { return porosity(0.1 * x, x); });
  const auto sample = [](double wet, double dry, double whole, double grain, double water) {
    return vs::phases_of({.wet = kilograms(wet),
                          .dry = kilograms(dry),
                          .whole = cubic_metres(whole),
                          .grain_density = density(grain),
                          .water_density = density(water)});
  };
  check_edges("dry mass", "kg", masses, [&](double x) { return sample(1e12, x, x / 2000.0, 2500.0, 1000.0); });
  check_edges("wet mass", "kg", {2.0, 1e12}, [&](double x) { return sample(x, 2.0, 0.001, 2500.0, 1000.0); });
  check_edges("grain density", "kg/m3", densities,
              [&](double x) { return sample(2, 2, x > 0 ? 4.0 / x : 1, x, 1000); });
  check_edges("water density", "kg/m3", densities, [&](double x) { return sample(3, 2, 0.001, 2500.0, x); });
  check_edges("whole volume", "m3", {0.0008, 0.8, edge::open},
              [&](double x) { return sample(2, 2, x, 2500.0, 1000.0); });
  const auto full = [](double w, double grain, double water) {
    return vs::phases_when_saturated(
        {.water_content = w, .grain_density = density(grain), .water_density = density(water)});
  };
  check_edges("water content", "", {1e-6, 100.0}, [&](double x) { return full(x, 2700, 1000); });
  check_edges("grain density", "kg/m3", densities, [&](double x) { return full(0.3, x, 1000); });
  check_edges("water density", "kg/m3", densities, [&](double x) { return full(0.3, 2700, x); });
}

TEST_CASE("vessel refusals: light through panels") {
  const angle some = degrees(30);
  const vs::surface out{.from = index(1.5), .into = index(1.0)};
  check_edges("angle from the normal", "rad", right_angle,
              [&](double a) { return vs::refracted({.from = index(1.0), .into = index(1.5)}, radians(a)); });
  for (const auto& wrong :
       {vs::surface{.from = index(0.9), .into = index(0.8)}, {.from = index(1.5), .into = index(0.8)}}) {
    CHECK_THROWS_WITH_AS((void)vs::critical_angle(wrong), doctest::Contains("critical_angle: refractive index"),
                         invalid_input);
    CHECK_THROWS_WITH_AS((void)vs::refracted(wrong, some), doctest::Contains("refracted: refractive index"),
                         invalid_input);
    CHECK_THROWS_WITH_AS((void)vs::reflectance(wrong), doctest::Contains("reflectance: refractive index"),
                         invalid_input);
  }
  check_edges("refractive index", "", {1.0, 4.0},
              [](double n) { return vs::reflectance({.from = index(n), .into = index(1.0)}); });
  check_edges("refractive index", "", {1.0, 4.0},
              [](double n) { return vs::reflectance({.from = index(1.0), .into = index(n)}); });
  // At the critical angle itself the ray runs along the surface.
  CHECK_NOTHROW((void)vs::refracted(out, radians(std::asin(1.0 / 1.5) * (1.0 - 1e-12))));
  CHECK_THROWS_AS((void)vs::critical_angle({.from = index(1.5), .into = index(1.5)}), invalid_input);
  const auto view = [](double d, double t, double nw, double np) {
    return vs::underwater_view{
        .water = metres(d), .panel = metres(t), .water_index = index(nw), .panel_index = index(np)};
  };
  const auto each = [&](auto call) {
    check_edges("distance in the water", "m", lengths_from_zero, [&](double x) { return call(view(x, 0, 1.3, 1.5)); });
    check_edges("panel thickness", "m", lengths_from_zero, [&](double x) { return call(view(1e3, x, 1.3, 1.5)); });
    check_edges("refractive index", "", {1.0, 4.0}, [&](double x) { return call(view(1, 0.1, x, 1.5)); });
    check_edges("refractive index", "", {1.0, 4.0}, [&](double x) { return call(view(1, 0.1, 1.3, x)); });
  };
  each([](const vs::underwater_view& v) { return vs::apparent_distance(v); });
  each([&](const vs::underwater_view& v) { return vs::apparent_distance(v, some); });
  each([](const vs::underwater_view& v) { return vs::lateral_magnification(v, metres(1)); });
  each([](const vs::underwater_view& v) {
    return vs::clearance_for(
        {.apparent = v.water, .panel = v.panel, .water_index = v.water_index, .panel_index = v.panel_index});
  });
  check_edges("angle from the normal", "rad", right_angle,
              [&](double a) { return vs::apparent_distance(view(1, 0, 1.3, 1.5), radians(a)); });
  check_edges("distance of the eye", "m", lengths,
              [&](double e) { return vs::lateral_magnification(view(1, 0, 1.3, 1.5), metres(e)); });
  const auto shift = [](double t, double n, double a) {
    return vs::ray_shift({.thickness = metres(t), .panel_index = index(n)}, radians(a));
  };
  check_edges("panel thickness", "m", lengths_from_zero, [&](double x) { return shift(x, 1.5, 0.5); });
  check_edges("refractive index", "", {1.0, 4.0}, [&](double x) { return shift(0.1, x, 0.5); });
  check_edges("angle from the normal", "rad", right_angle, [&](double x) { return shift(0.1, 1.5, x); });
  // A thing that should seem to stand where the outer face is: as far as the panel alone seems thick, nothing is left.
  CHECK(vs::clearance_for({.apparent = metres(0.25), .panel = metres(0.5), .panel_index = index(2.0)}) == metres(0));
}

TEST_CASE("vessel refusals: shapes") {
  const auto box = [](double l, double w, double h) {
    return vs::box({.length = in(l), .width = in(w), .height = in(h)});
  };
  check_edges("box: length", "m", lengths, [&](double x) { return box(x, 1, 1); });
  check_edges("box: width", "m", lengths, [&](double x) { return box(1, x, 1); });
  check_edges("box: height", "m", lengths, [&](double x) { return box(1, 1, x); });
  check_edges("cylinder: diameter", "m", lengths,
              [](double x) { return vs::upright_cylinder({.diameter = in(x), .height = in(1)}); });
  check_edges("cylinder: height", "m", lengths,
              [](double x) { return vs::upright_cylinder({.diameter = in(1), .height = in(x)}); });
  const auto drum = [](double d, double l, double a) {
    return vs::lying_cylinder({.diameter = in(d), .length = in(l), .head_depth = in(a)});
  };
  check_edges("lying cylinder: diameter", "m", lengths, [&](double x) { return drum(x, 1, 0); });
  check_edges("lying cylinder: length", "m", lengths, [&](double x) { return drum(1, x, 0); });
  check_edges("lying cylinder: head depth", "m", lengths_from_zero, [&](double x) { return drum(1, 1, x); });
  const auto hexagon = [](int n, double s, double h) {
    return vs::regular_prism({.sides = n, .side = in(s), .height = in(h)});
  };
  check_edges("regular prism: side", "m", lengths, [&](double x) { return hexagon(6, x, 1); });
  check_edges("regular prism: height", "m", lengths, [&](double x) { return hexagon(6, 1, x); });
  CHECK_NOTHROW((void)hexagon(3, 1, 1));
  CHECK_NOTHROW((void)hexagon(1000, 1, 1));
  for (const int n : {2, 1001}) {
    CHECK_THROWS_WITH_AS((void)hexagon(n, 1, 1), doctest::Contains("expected 3 to 1000"), invalid_input);
  }
  const auto bow = [](double c, double d, double s, double h) {
    return vs::bow_front({.width = in(c), .depth_at_ends = in(d), .bow = in(s), .height = in(h)});
  };
  check_edges("bow front: width", "m", lengths, [&](double x) { return bow(x, 1, 0, 1); });
  check_edges("bow front: depth at the ends", "m", lengths, [&](double x) { return bow(1, x, 0.1, 1); });
  check_edges("bow front: bow", "m", {0.0, 0.5}, [&](double x) { return bow(1, 1, x, 1); });
  check_edges("bow front: height", "m", lengths, [&](double x) { return bow(1, 1, 0.1, x); });
  const auto tub = [](double b, double t, double h) {
    return vs::frustum({.bottom_diameter = in(b), .top_diameter = in(t), .height = in(h)});
  };
  check_edges("frustum: bottom diameter", "m", lengths_from_zero, [&](double x) { return tub(x, 1, 1); });
  check_edges("frustum: top diameter", "m", lengths_from_zero, [&](double x) { return tub(1, x, 1); });
  check_edges("frustum: larger diameter", "m", {1e-6}, [&](double x) { return tub(0, x, 1); });
  check_edges("frustum: height", "m", lengths, [&](double x) { return tub(1, 1, x); });
  const std::vector<vs::corner> plan{
      {.x = metres(0), .y = metres(0)}, {.x = metres(1), .y = metres(0)}, {.x = metres(0), .y = metres(1)}};
  check_edges("prism: height", "m", lengths,
              [&](double x) { return vs::prism({.inside_corners = plan, .height = in(x)}); });
  check_edges("thickness", "m", {0.0}, [&](double x) { return vs::inside_corners(plan, metres(x)); });
  const auto s = box(2, 1, 0.5);
  check_edges("box: depth", "m", {0.0, 0.5}, [&](double x) { return vs::filled_volume(s, metres(x)); });
  check_edges("box: depth", "m", {0.0, 0.5}, [&](double x) { return vs::plan_area(s, metres(x)); });
  check_edges("box: depth", "m", {0.0, 0.5}, [&](double x) { return vs::wetted_area(s, metres(x)); });
  check_edges("box: volume", "m3", {0.0, 1.0}, [&](double x) { return vs::depth_of(s, cubic_metres(x)); });
  check_edges("vessel: floor of a chamber", "m", {0.0}, [&](double x) {
    return vs::side_by_side({{.what = s}, {.what = s, .floor = metres(x)}});
  });
}

TEST_CASE("vessel refusals: beams") {
  check_edges("breadth", "m", lengths,
              [](double x) { return vs::rectangular_section({.breadth = metres(x), .depth = metres(1)}); });
  check_edges("depth", "m", lengths,
              [](double x) { return vs::rectangular_section({.breadth = metres(1), .depth = metres(x)}); });
  check_edges("j: area", "m2", areas, [](double x) { return of_section([x](auto& s) { s.area = square_metres(x); }); });
  check_edges("j: second moment of area", "m4", {1e-30, 1e12},
              [](double x) { return of_section([x](auto& s) { s.second_moment = metres_to_the_fourth(x); }); });
  check_edges("j: extreme fibre", "m", {1e-9, 1e3},
              [](double x) { return of_section([x](auto& s) { s.extreme_fibre = metres(x); }); });
  check_edges("j: modulus", "Pa", {1.0, 1e13},
              [](double x) { return bent([x](vs::beam& b) { b.modulus = pascals(x); }); });
  check_edges("j: pull", "N", {0.0, 1e12}, [](double x) { return bent([x](vs::beam& b) { b.pull = newtons(x); }); });
  CHECK_NOTHROW((void)bent([](vs::beam& b) { b.span = metres(1e3); }));
  CHECK_THROWS_WITH_AS((void)bent([](vs::beam& b) { b.span = metres(1e3 * (1.0 + 1e-9)); }),
                       doctest::Contains("j: span"), invalid_input);
  const auto lamp = [](double p, double x) {
    return bent([&](vs::beam& b) { b.points = {{.load = newtons(p), .at = metres(x), .label = "lamp"}}; });
  };
  check_edges("j: lamp: load", "N", {-1e12, 1e12}, [&](double p) { return lamp(p, 1); });
  check_edges("j: lamp: place", "m", {0.0, 2.0}, [&](double x) { return lamp(1, x); });
  const auto books = [](double first, double last, double from, double to) {
    return bent([&](vs::beam& b) {
      b.spreads = {{.at_start = newtons_per_metre(first),
                    .at_end = newtons_per_metre(last),
                    .from = metres(from),
                    .to = metres(to),
                    .label = "books"}};
    });
  };
  check_edges("j: books: load", "N/m", {-1e12, 1e12}, [&](double q) { return books(q, 1, 0, 2); });
  check_edges("j: books: load", "N/m", {-1e12, 1e12}, [&](double q) { return books(1, q, 0, 2); });
  check_edges("j: books: place", "m", {0.0}, [&](double x) { return books(1, 1, x, 2); });
  check_edges("j: books: end of the load", "m", {0.5, core::largest, edge::open},
              [&](double x) { return books(1, 1, 0.5, x); });
  check_edges("j: support: place", "m", {0.0, 2.0}, [](double x) {
    return bent([x](vs::beam& b) { b.supports = std::vector<vs::beam_support>{{.at = metres(1)}, {.at = metres(x)}}; });
  });
  const auto crowd = [](std::size_t supports, std::size_t points, std::size_t spreads) {
    return bent([&](vs::beam& b) {
      std::vector<vs::beam_support> all;
      for (std::size_t i = 0; i < supports; ++i)
        all.push_back({.at = metres(2.0 * static_cast<double>(i) / static_cast<double>(supports - 1))});
      b.supports = all;
      b.points.assign(points, {.load = newtons(0), .at = metres(1)});
      b.spreads.assign(
          spreads,
          {.at_start = newtons_per_metre(0), .at_end = newtons_per_metre(0), .from = metres(0), .to = metres(2)});
    });
  };
  CHECK_NOTHROW((void)crowd(30, 0, 0));
  CHECK_THROWS_WITH_AS((void)crowd(31, 0, 0), doctest::Contains("number of supports = 31"), invalid_input);
  CHECK_NOTHROW((void)crowd(2, 150, 150));
  CHECK_THROWS_WITH_AS((void)crowd(2, 151, 150), doctest::Contains("number of loads = 301"), invalid_input);
  const auto r = vs::bend(joist());
  check_edges("place", "m", {0.0, 2.0}, [&](double x) { return vs::along(r, metres(x)); });
}
