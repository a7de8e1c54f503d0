// SPDX-License-Identifier: BSL-1.0
// Formulas of panels, rails, leak tests and items worked a second time, with every field of a result; where a flag turns;
// which caution goes with which result.
#include <algorithm>
#include <boost/math/distributions/students_t.hpp>
#include <tankwright/vessel.hpp>

#include "some_items.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

const mass_density fresh = kilograms_per_cubic_metre(1000.0);
constexpr double g = 9.80665;

evidence about(std::string_view function, std::string_view source) {
  return {"tankwright::vessel::" + std::string{function}, kind::identity, std::string{source}};
}

vs::panel pane(double width, double height, double thickness, vs::panel_edges edges = vs::panel_edges::all_supported,
               const vs::panel_material& material = vs::cast_acrylic) {
  return {.width = metres(width),
          .height = metres(height),
          .thickness = metres(thickness),
          .edges = edges,
          .material = material};
}
vs::panel_result full(const vs::panel& p) { return vs::water_on(p, {.level = p.height, .water_density = fresh}); }

template <class Q>
void same(const evidence& what, const estimate<Q>& band, double low, double central, double high) {
  TW_CHECK(what, raw(band.low), low, tolerance({.absolute = 1e-15, .relative = 1e-12}));
  TW_CHECK(what, raw(band.central), central, tolerance({.absolute = 1e-15, .relative = 1e-12}));
  TW_CHECK(what, raw(band.high), high, tolerance({.absolute = 1e-15, .relative = 1e-12}));
}

}  // namespace

TEST_CASE("vessel formulas: an even load pushes at the middle of a panel, water below it") {
  const auto even = about("uniform_on", "p W H at H/2");
  const auto r = vs::uniform_on(pane(3.0, 1.5, 0.05), pascals(200));
  TW_CHECK(even, r.force, newtons(200 * 3.0 * 1.5), relative(1e-14));
  TW_CHECK(even, r.centre, metres(0.75), relative(1e-14));
  TW_CHECK(even, r.at_bottom, pascals(200), relative(1e-15));
  TW_CHECK(even, r.at_top, pascals(200), relative(1e-15));
  const auto water = about("water_on", "rho g h and its integrals");
  const auto deep = vs::water_on(pane(3.0, 1.5, 0.05), {.level = metres(2.0), .water_density = fresh});
  TW_CHECK(water, deep.at_bottom, pascals(2000 * g), relative(1e-14));
  TW_CHECK(water, deep.at_top, pascals(500 * g), relative(1e-13));
  TW_CHECK(water, deep.force, newtons(1250 * g * 4.5), relative(1e-13));
  TW_CHECK(water, deep.centre, metres(0.5 * (2000 + 2 * 500) / 2500), relative(1e-13));  // H/3 (pb + 2 pt)/(pb + pt)
  // Moments of both are of one height and density: w q H^2, places in heights of the panel.
  const auto twice = vs::uniform_on(pane(6.0, 3.0, 0.1), pascals(200));
  TW_CHECK(even, twice.governing.value, r.governing.value * 4.0, relative(1e-12));
  TW_CHECK(even, twice.up.from_below, r.up.from_below * 2.0, relative(1e-12));
  TW_CHECK(even, twice.across.from_side, metres(3.0), relative(1e-12));
  TW_CHECK(even, r.stress, pascals(6.0 * std::fabs(r.governing.value.value()) / (0.05 * 0.05)), relative(1e-13));
  TW_CHECK(even, r.utilisation, r.stress / r.allowable.value, relative(1e-14));
  TW_CHECK(even, r.thickness_needed, metres(0.05 * std::sqrt(r.utilisation)), relative(1e-14));
}

TEST_CASE("vessel formulas: long-term bulge goes with the modulus of that time") {
  const auto law = about("water_on", "deflection goes with 1/E");
  const auto r = full(pane(2.4, 1.2, 0.06));
  TW_CHECK(law, r.long_term_deflection.high, r.deflection * (3.0 / 1.2), relative(1e-13));
  TW_CHECK(law, r.long_term_deflection.central, r.deflection * (3.0 / 1.35), relative(1e-13));
  TW_CHECK(law, r.long_term_deflection.low, r.deflection * (3.0 / 1.5), relative(1e-13));
  TW_CHECK(law, r.deflection_utilisation, r.long_term_deflection.high / metres(1.2 / 100.0), relative(1e-13));
  TW_CHECK(law, r.thickness_for_deflection, metres(0.06 * std::cbrt(r.deflection_utilisation)), relative(1e-13));
  // A material that stiffens: the bulge of the first minutes is the larger.
  auto stiffens = vs::cast_acrylic;
  stiffens.modulus = gigapascals(1.0);
  const auto s = full(pane(2.4, 1.2, 0.06, vs::panel_edges::all_supported, stiffens));
  TW_CHECK(law, s.deflection_utilisation, s.deflection / metres(1.2 / 100.0), relative(1e-13));
}

TEST_CASE("vessel formulas: the flags of a panel turn where they are said to") {
  for (const auto edges : {vs::panel_edges::all_supported, vs::panel_edges::top_free}) {
    // The bulge after years goes with t^-3: it is half the thickness at t* = t (2 w/t)^(1/4).
    const double start = 0.06;
    const auto r = full(pane(2.4, 1.2, start, edges));
    const double turn = start * std::pow(2.0 * r.long_term_deflection.high.value() / start, 0.25);
    const auto thin = full(pane(2.4, 1.2, turn * (1.0 - 1e-6), edges)),
               stout = full(pane(2.4, 1.2, turn * (1.0 + 1e-6), edges));
    CHECK(thin.beyond_small_deflection);
    CHECK_FALSE(stout.beyond_small_deflection);
    const bool free = edges == vs::panel_edges::top_free;
    CHECK((thin.note.find("a free edge gets no help") != std::string_view::npos) == free);
    CHECK((thin.note.find("helps a panel held on four edges") != std::string_view::npos) == !free);
    CHECK(stout.note.empty());
  }
  // The bulge of minutes alone: a material that stiffens.
  auto stiffens = vs::cast_acrylic;
  stiffens.modulus = gigapascals(0.1);
  CHECK(full(pane(2.4, 1.2, 0.06, vs::panel_edges::all_supported, stiffens)).beyond_small_deflection);
  // A tenth of the shorter side, be it width or height.
  for (const auto& [w, h] : {std::pair{1.0, 2.0}, {2.0, 1.0}}) {
    CHECK_FALSE(full(pane(w, h, 0.1 * (1.0 - 1e-9))).too_thick_for_theory);
    const auto thick = full(pane(w, h, 0.1 * (1.0 + 1e-9)));
    CHECK(thick.too_thick_for_theory);
    CHECK(thick.note.find("shear adds to the deflection") != std::string_view::npos);
  }
  // The span of a free top: the width, or twice the height.
  const auto span = about("water_on", "min(W, 2 H) with a free top, else min(W, H); over 100");
  for (const auto& [w, free, held] : {std::array{1.0, 1.0, 1.0}, {1.9, 1.9, 1.0}, {2.1, 2.0, 1.0}, {0.7, 0.7, 0.7}}) {
    TW_CHECK(span, full(pane(w, 1.0, 0.05, vs::panel_edges::top_free)).deflection_limit, metres(free / 100.0),
             relative(1e-13));
    TW_CHECK(span, full(pane(w, 1.0, 0.05, vs::panel_edges::bottom_clamped_top_free)).deflection_limit,
             metres(free / 100.0), relative(1e-13));
    TW_CHECK(span, full(pane(w, 1.0, 0.05)).deflection_limit, metres(held / 100.0), relative(1e-13));
    TW_CHECK(span, full(pane(w, 1.0, 0.05, vs::panel_edges::bottom_clamped)).deflection_limit, metres(held / 100.0),
             relative(1e-13));
  }
  CHECK(full(pane(2.4, 1.2, 0.06)).allowable.value == vs::cast_acrylic.allowable.value);
}

TEST_CASE("vessel formulas: remarks end where what is usual ends") {
  using enum vs::panel_remark;
  const auto says = [](vs::panel_remark about, double t, auto change) {
    auto p = pane(2.4, 0.8, t, vs::panel_edges::all_supported, vs::annealed_glass);
    vs::panel_material m = vs::annealed_glass;
    change(p, m);
    p.material = m;
    for (const auto& r : vs::unusual_in(p)) {
      if (r.about == about) return std::pair{true, r};
    }
    return std::pair{false, vs::remark{}};
  };
  const double near = 1e-9;
  const auto end = [&](vs::panel_remark about, double at, bool high, auto set) {
    CAPTURE(static_cast<int>(about));
    CAPTURE(at);
    const auto inside =
        says(about, 0.0182, [&](auto& p, auto& m) { set(p, m, at * (high ? 1.0 - near : 1.0 + near)); });
    const auto outside =
        says(about, 0.0182, [&](auto& p, auto& m) { set(p, m, at * (high ? 1.0 + near : 1.0 - near)); });
    CHECK_FALSE(inside.first);
    CHECK(outside.first);
    CHECK(compare(outside.second.value, at, relative(1e-6)).good);
  };
  const auto strength = [](auto&, auto& m, double x) { m.allowable.value = pascals(x); };
  end(allowable_below_usual, 2e6, false, strength);
  end(allowable_above_usual, 7.3e6, true, strength);
  const auto modulus = [](auto&, auto& m, double x) { m.modulus = pascals(x); };
  end(modulus_unusual, 68e9, false, modulus);
  end(modulus_unusual, 75e9, true, modulus);
  const auto poisson = [](auto&, auto& m, double x) { m.poisson = x; };
  end(poisson_unusual, 0.20, false, poisson);
  end(poisson_unusual, 0.25, true, poisson);
  const auto density = [](auto&, auto& m, double x) { m.density = kilograms_per_cubic_metre(x); };
  end(density_unusual, 2400.0, false, density);
  end(density_unusual, 2600.0, true, density);
  const auto thickness = [](auto& p, auto&, double x) { p.thickness = metres(x); };
  end(thinner_than_sold, 2.9e-3, false, thickness);
  end(thicker_than_sold, 25.5e-3, true, thickness);
  end(thick_for_its_size, 0.08, true, thickness);
  end(large_pane, 6.0, true, [](auto& p, auto&, double x) { p.width = metres(x); });
  end(large_pane, 3.21, true, [](auto& p, auto&, double x) { p.height = metres(x); });
  // What is said, in the units that people use.
  const auto text = [&](vs::panel_remark about, double t, auto set) {
    return says(about, t, [&](auto& p, auto& m) { set(p, m); }).second.text;
  };
  CHECK(text(modulus_unusual, 0.0182, [](auto&, auto& m) { m.modulus = gigapascals(7.17); }) ==
        "7.17 GPa is an unusual Young's modulus for annealed glass; usual is 68 to 75 GPa");
  CHECK(text(poisson_unusual, 0.0182, [](auto&, auto& m) { m.poisson = 0.4; }) ==
        "0.4 is an unusual Poisson ratio for annealed glass; usual is 0.2 to 0.25");
  CHECK(text(density_unusual, 0.0182, [](auto&, auto& m) { m.density = kilograms_per_cubic_metre(2.5); }) ==
        "2.5 kg/m3 is an unusual density for annealed glass; usual is 2400 to 2600 kg/m3");
  CHECK(text(allowable_below_usual, 0.0182, [](auto&, auto& m) {
          m.allowable.value = kilopascals(50);
        }).starts_with("0.05 MPa is an unusually low allowable stress for annealed glass: codes give"));
  CHECK(
      text(thinner_than_sold, 0.0019, [](auto&, auto&) {
      }).starts_with("1.9 mm is unusually thin for annealed glass: single sheets for tanks are sold from 3 to 25 mm"));
  CHECK(text(nominal_thickness, 0.012, [](auto&, auto&) {}) ==
        "12 mm is the name of a size: the sheet may be as thin as 11.7 mm; give the least thickness, or measure it");
  CHECK(text(large_pane, 0.0182, [](auto& p, auto&) {
          p.width = metres(6.5);
        }).starts_with("6.5 m by 0.8 m is larger than panes are usually made"));
  CHECK(text(thick_for_its_size, 0.1, [](auto&, auto&) {}) ==
        "100 mm is more than a tenth of the shorter side: check the unit");
  const auto own = says(allowable_above_usual, 0.0182, [](auto& p, auto&) {
    p.allowable = vs::allowable_stress{"own", megapascals(9), vs::load_basis::permanent, standing::from_memory, ""};
  });
  CHECK(own.first);
  // Names within a twentieth of a millimetre.
  for (const double off : {0.0499e-3, -0.0499e-3}) CHECK(vs::least_thickness(metres(0.012 + off)));
  for (const double off : {0.0501e-3, -0.0501e-3}) CHECK_FALSE(vs::least_thickness(metres(0.012 + off)));
}

TEST_CASE("vessel formulas: braces of a rail on five spans") {
  const auto five = about("pull_of_braces", "continuous beam on five equal spans: 43/38 and 37/38 of w l");
  const auto r = vs::pull_of_braces({.rail = metres(4.0), .braces = 4, .load = newtons_per_metre(950)});
  const double wl = 950 * 0.8;
  REQUIRE(r.braces.size() == 4);
  for (const std::size_t i : {0u, 3u}) TW_CHECK(five, r.braces[i], newtons(43.0 / 38.0 * wl), relative(1e-11));
  for (const std::size_t i : {1u, 2u}) TW_CHECK(five, r.braces[i], newtons(37.0 / 38.0 * wl), relative(1e-11));
  TW_CHECK(five, r.largest, newtons(43.0 / 38.0 * wl), relative(1e-11));
  TW_CHECK(five, r.by_tributary_length, newtons(wl), relative(1e-13));
  CHECK(r.load == newtons_per_metre(950));
  CHECK(vs::pull_of_braces({.rail = metres(4.0), .braces = 4, .load = newtons_per_metre(0)}).largest == newtons(0));
  const auto still = vs::strip_between_frames({.spacing = metres(0.4),
                                               .load = pascals(0),
                                               .spans = vs::strip_spans::one,
                                               .bending_capacity = newtons(600),
                                               .rigidity = joules(2500)});
  TW_CHECK(about("strip_between_frames", "without load the ratio stays finite, 1e15"), still.span_over_sag, 1e15,
           relative(1e-12));
}

TEST_CASE("vessel formulas: items and their bands, case by case") {
  const vs::grains sand{
      "s",
      {kilograms_per_cubic_metre(2500), kilograms_per_cubic_metre(2600), kilograms_per_cubic_metre(2800), ""},
      {porosity{0.3}, porosity{0.4}, porosity{0.5}, ""},
      standing::published,
      ""};
  const auto bed = vs::sand_bed({.floor = square_metres(2), .depth = metres(0.1), .sand = sand});
  const auto of_bed = about("sand_bed", "(1 - n) A d and n A d at both ends");
  same(of_bed, bed.solids, 0.1, 0.12, 0.14);
  same(of_bed, bed.pores, 0.06, 0.08, 0.1);
  same(of_bed, bed.dry_mass, 250, 312, 392);
  same(of_bed, bed.envelope, 0.2, 0.2, 0.2);
  CHECK(bed.solids.reason == "porosity and grain density of the sand");
  const auto bags = vs::sand_by_mass({.dry_mass = kilograms(364), .sand = sand});
  const auto of_bags = about("sand_by_mass", "m/rho_g and its pores, low with low");
  same(of_bags, bags.solids, 0.13, 0.14, 0.1456);
  same(of_bags, bags.pores, 0.13 * 3 / 7, 0.14 * 2 / 3, 0.1456);
  same(of_bags, bags.envelope, 0.13 * 10 / 7, 0.14 * 5 / 3, 0.2912);
  const auto deep = vs::bed_depth(bags, square_metres(2));
  same(about("bed_depth", "envelope over floor"), deep, 0.065 * 10 / 7, 0.07 * 5 / 3, 0.1456);
  const auto rock = vs::rock_by_mass({.dry_mass = kilograms(260), .rock = sand, .flooded_pores = fraction(0.25)});
  const auto of_rock = about("rock_by_mass", "15 % either way; three quarters of the pores keep water out");
  const double low = 0.085, mid = 0.1, high = 0.115;
  same(of_rock, rock.solids, low + 0.75 * low * 3 / 7, mid + 0.75 * mid * 2 / 3, high * 1.75);
  same(of_rock, rock.pores, 0.25 * low * 3 / 7, 0.25 * mid * 2 / 3, 0.25 * high);
  same(of_rock, rock.envelope, low * 10 / 7, mid * 5 / 3, high * 2);
  same(of_rock, rock.dry_mass, 260, 260, 260);
  const auto tank =
      vs::box({.length = vs::inside{metres(2)}, .width = vs::inside{metres(1)}, .height = vs::inside{metres(1)}});
  const auto rise = vs::rock_by_level_rise(tank, {.before = metres(0.5), .after = metres(0.55), .rock = sand});
  const auto of_rise = about("rock_by_level_rise", "plan times rise; the rock's own density and pores");
  same(of_rise, rise.solids, 0.1, 0.1, 0.1);
  same(of_rise, rise.pores, 0.3 / 7, 0.2 / 3, 0.1);
  same(of_rise, rise.envelope, 1.0 / 7, 0.5 / 3, 0.2);
  same(of_rise, rise.dry_mass, 250, 260, 280);
  const auto weighed = vs::rock_weighed_under_water(
      {.dry_mass = kilograms(260), .submerged_mass = kilograms(160), .water_density = fresh, .rock = sand});
  const auto of_weight = about("rock_weighed_under_water", "buoyancy over the density of water; pores of the kind");
  same(of_weight, weighed.solids, 0.1, 0.1, 0.1);
  same(of_weight, weighed.pores, 0.3 / 7, 0.2 / 3, 0.1);
  same(of_weight, weighed.envelope, 1.0 / 7, 0.5 / 3, 0.2);
  CHECK(weighed.pores.reason == "porosity of the rock");
  const auto soaked = vs::rock_weighed_under_water({.dry_mass = kilograms(260),
                                                    .submerged_mass = kilograms(160),
                                                    .water_density = fresh,
                                                    .soaked_mass = kilograms(300),
                                                    .rock = sand});
  same(of_weight, soaked.pores, 0.04, 0.04, 0.04);
  CHECK(soaked.pores.reason == "weighed");

  const vs::item items[]{bed, rock};
  const auto scene = vs::water_in({.gross = cubic_metres(1), .items = items, .water_density = fresh});
  const auto all = about("water_in", "sums of the items, low with low");
  const double s[3]{0.1 + rock.solids.low.value().value(), 0.12 + rock.solids.central.value().value(),
                    0.14 + rock.solids.high.value().value()};
  const double e[3]{0.2 + low * 10 / 7, 0.2 + mid * 5 / 3, 0.2 + high * 2};
  CHECK(scene.gross == cubic_metres(1));
  same(all, scene.solids, s[0], s[1], s[2]);
  same(all, scene.envelope, e[0], e[1], e[2]);
  same(all, scene.net, 1 - s[2], 1 - s[1], 1 - s[0]);
  same(all, scene.free, 1 - e[2], 1 - e[1], 1 - e[0]);
  same(all, scene.water, 1000 * (1 - s[2]), 1000 * (1 - s[1]), 1000 * (1 - s[0]));
  same(all, scene.contents_dry, 250 + 260, 312 + 260, 392 + 260);
  // Of each item the lighter of both ends under water: the rock's many solids weigh less.
  const double bed_under[3]{250 - 100, 312 - 120, 392 - 140};
  const double rock_under[3]{260 - 1000 * rock.solids.high.value().value(),
                             260 - 1000 * rock.solids.central.value().value(),
                             260 - 1000 * rock.solids.low.value().value()};
  same(all, scene.contents_submerged, bed_under[0] + rock_under[0], bed_under[1] + rock_under[1],
       bed_under[2] + rock_under[2]);
  same(all, scene.on_the_floor, 1000 + bed_under[0] + rock_under[0], 1000 + bed_under[1] + rock_under[1],
       1000 + bed_under[2] + rock_under[2]);
  const vs::water_content vessels[]{scene, scene};
  same(about("total_water", "twice one"), vs::total_water(vessels), 2 - 2 * s[2], 2 - 2 * s[1], 2 - 2 * s[0]);
  const auto weight = vs::weight_of(bed, fresh);
  same(about("weight_of", "dry and pores, dry less buoyancy"), weight.wet, 250 + 100, 312 + 80, 392 + 60);
  same(about("weight_of", "dry and pores, dry less buoyancy"), weight.submerged, 150, 192, 252);
}

TEST_CASE("vessel formulas: which caution goes with which result") {
  const auto is = [](const caution& got, const caution& wanted) {
    CHECK_FALSE(got.text.empty());
    CHECK(got.text == wanted.text);
  };
  const vs::railed_panel rail{.height = metres(1), .level = metres(1), .water_density = fresh};
  is(vs::rails_of(rail).caution, vs::structural_caution);
  is(vs::pull_of_braces({.rail = metres(1), .braces = 1, .load = newtons_per_metre(1)}).caution,
     vs::structural_caution);
  is(vs::push_on({.width = metres(1), .height = metres(1), .level = metres(1), .water_density = fresh}).caution,
     vs::structural_caution);
  is(vs::sag_of({.span = metres(1), .thickness = metres(0.01), .material = vs::cast_acrylic}).caution,
     vs::structural_caution);
  is(vs::load_on_floor({.total = kilograms(1), .footprint = square_metres(1)}).caution, vs::floor_caution);
  is(vs::blow_off({.depth = metres(1), .diameter = metres(0.1), .water_density = fresh}).caution, vs::fixings_caution);
  is(vs::gasket_force({.mean_diameter = metres(0.1),
                       .effective_width = metres(0.01),
                       .pressure = pascals(1),
                       .material = vs::soft_elastomer})
         .caution,
     vs::fixings_caution);
  is(vs::uplift_of({.horizontal_area = square_metres(1),
                    .flood_depth = metres(1),
                    .mass_of_sump = kilograms(1),
                    .water_density = fresh})
         .caution,
     vs::structural_caution);
  is(vs::uniform_on(pane(1, 1, 0.05), pascals(1)).caution, vs::panel_caution);
  is(full(pane(1, 1, 0.05)).caution, vs::panel_caution);
  is(vs::bulge_to_see({.expected = metres(0)}).caution, vs::panel_caution);
  is(vs::water_in({.gross = litres(1), .items = std::span<const vs::item>{}, .water_density = fresh}).caution,
     vs::displacement_caution);
  is(vs::drip_rate({.drops = 1, .over = seconds(60)}).caution, vs::leak_test_caution);
}
