// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/displacement.hpp>

#include <random>
#include <vector>

#include <tankwright/core/units.hpp>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

const mass_density sea = kilograms_per_cubic_metre(1023.5);

vs::grains sand_of(double n, double rho) {
  vs::grains g = vs::aragonite_sand;
  g.pores = {porosity{n}, porosity{n}, porosity{n}, ""};
  const mass_density d = kilograms_per_cubic_metre(rho);
  g.grain_density = {d, d, d, ""};
  return g;
}

vs::shape tank() {
  const auto m = [](double x) { return vs::inside{metres(x)}; };
  return vs::box({.length = m(2), .width = m(1), .height = m(1), .label = "display"});
}

template <class Q>
void in_order(const evidence& about, const estimate<Q>& e) {
  TW_HOLDS(about, e.low <= e.central);
  TW_HOLDS(about, e.central <= e.high);
}

}  // namespace

TEST_CASE("displacement: reference table") {
  check_rows(
      reference_rows("vessel/displacement.csv"),
      {{"tankwright::vessel::sand_bed",
        [](const reference_row& row) {
          const auto bed = vs::sand_bed({.floor = feet(row["L"]) * feet(row["W"]),
                                         .depth = inches(row["d"]),
                                         .sand = sand_of(row["n"], row["rho"])});
          return row.text("give") == "solids" ? in_litres(bed.solids.central.value())
                                              : in_kilograms(bed.dry_mass.central);
        }},
       {"tankwright::vessel::rock_by_mass",
        [](const reference_row& row) {
          const auto rock = vs::rock_by_mass({.dry_mass = pounds(row["m"]), .rock = sand_of(0.4, row["rho"])});
          return in_litres(rock.solids.central.value());
        }},
       {"tankwright::vessel::rock_weighed_under_water",
        [](const reference_row& row) {
          const auto rock = vs::rock_weighed_under_water({.dry_mass = kilograms(row["dry"]),
                                                          .submerged_mass = kilograms(row["sub"]),
                                                          .water_density = kilograms_per_cubic_metre(row["rho"])});
          return in_litres(rock.solids.central.value());
        }},
       {"tankwright::vessel::dry_mass_from_submerged",
        [](const reference_row& row) {
          return in_kilograms(vs::dry_mass_from_submerged({.submerged_mass = kilograms(row["sub"]),
                                                           .grain_density = kilograms_per_cubic_metre(row["grain"]),
                                                           .water_density = kilograms_per_cubic_metre(row["rho"])}));
        }},
       {"tankwright::vessel::slope_run", [](const reference_row& row) {
          return in_inches(vs::slope_run(inches(row["rise"]), degrees(row["repose"])));
        }}});
}

TEST_CASE("displacement: a bed by its depth and by its mass is the same bed") {
  const evidence by_mass{"tankwright::vessel::sand_by_mass", kind::identity, "m/rho_g and m/rho_b"};
  const evidence depth{"tankwright::vessel::bed_depth", kind::identity, "envelope over floor"};
  const auto sand = sand_of(0.45, 2850);
  const area floor = square_metres(2);
  const auto bed = vs::sand_bed({.floor = floor, .depth = centimetres(8), .sand = sand});
  const auto bags = vs::sand_by_mass({.dry_mass = bed.dry_mass.central, .sand = sand});
  TW_CHECK(by_mass, bags.solids.central, bed.solids.central, relative(1e-14));
  TW_CHECK(by_mass, bags.pores.central, bed.pores.central, relative(1e-14));
  TW_CHECK(by_mass, bags.envelope.central.value(), litres(160), relative(1e-14));
  TW_CHECK(by_mass, bags.dry_mass.central, kilograms(160 * 1.5675), relative(1e-14));
  TW_CHECK(depth, vs::bed_depth(bags, floor).central, centimetres(8), relative(1e-14));
}

TEST_CASE("displacement: bands are in order and hold what they say") {
  const evidence band{"tankwright::vessel::sand_bed", kind::property, "low <= central <= high"};
  const auto bed = vs::sand_bed({.floor = square_metres(1), .depth = metres(0.1)});
  TW_CHECK(band, bed.solids.low.value(), litres(50), relative(1e-14));
  const vs::item items[]{bed,
                         vs::sand_by_mass({.dry_mass = kilograms(100)}),
                         vs::rock_by_mass({.dry_mass = kilograms(80)}),
                         vs::rock_by_mass({.dry_mass = kilograms(80), .flooded_pores = percent(40)}),
                         vs::rock_weighed_under_water(
                             {.dry_mass = kilograms(10), .submerged_mass = kilograms(6.38), .water_density = sea}),
                         vs::rock_by_level_rise(tank(), {.before = metres(0.5), .after = metres(0.52)}),
                         vs::equipment({.outside = litres(3), .mass = kilograms(4)})};
  for (const auto& i : items) {
    CAPTURE(i.label);
    in_order(band, i.solids);
    in_order(band, i.pores);
    in_order(band, i.envelope);
    in_order(band, i.dry_mass);
    const auto weight = vs::weight_of(i, sea);
    in_order(band, weight.wet);
    in_order(band, weight.submerged);
    TW_CHECK(band, i.solids.central.value() + i.pores.central.value(), i.envelope.central.value(), relative(1e-14));
  }
  const auto content = vs::water_in({.gross = litres(1500), .items = items, .water_density = sea});
  in_order(band, content.net);
  in_order(band, content.free);
  in_order(band, content.pores);
  in_order(band, content.on_the_floor);
  in_order(band, content.contents_submerged);
}

TEST_CASE("displacement: rock weighed three ways") {
  const evidence archimedes{"tankwright::vessel::rock_weighed_under_water", kind::identity,
                            "Archimedes: a rock made of known parts"};
  const evidence rise{"tankwright::vessel::rock_by_level_rise", kind::identity, "plan area times rise"};
  const evidence part_dry{"tankwright::vessel::rock_by_mass", kind::identity, "pores full of air keep water out"};
  // 2 L of solids at 2830 kg/m3 with 1.5 L of pores.
  const mass dry = kilograms(5.66), sub = dry - sea * litres(2), soaked = dry + sea * litres(1.5);
  const auto rock = vs::rock_weighed_under_water(
      {.dry_mass = dry, .submerged_mass = sub, .water_density = sea, .soaked_mass = soaked});
  TW_CHECK(archimedes, rock.solids.central.value(), litres(2), relative(1e-13));
  TW_CHECK(archimedes, rock.pores.low.value(), litres(1.5), relative(1e-13));
  TW_CHECK(archimedes, rock.pores.high.value(), litres(1.5), relative(1e-13));
  TW_CHECK(archimedes, rock.envelope.central.value(), litres(3.5), relative(1e-13));
  TW_CHECK(rise, vs::rock_by_level_rise(tank(), {.before = metres(0.5), .after = metres(0.501)}).solids.central.value(),
           litres(2), relative(1e-12));
  const auto r = sand_of(1.5 / 3.5, 2830);
  TW_CHECK(part_dry, vs::rock_by_mass({.dry_mass = dry, .rock = r}).pores.central.value(), litres(1.5),
           relative(1e-13));
  const auto fresh = vs::rock_by_mass({.dry_mass = dry, .rock = r, .flooded_pores = percent(20)});
  TW_CHECK(part_dry, fresh.solids.central.value(), litres(2 + 0.8 * 1.5), relative(1e-13));
  TW_CHECK(part_dry, fresh.pores.central.value(), litres(0.2 * 1.5), relative(1e-13));
  TW_CHECK(part_dry, fresh.envelope.central.value(), litres(3.5), relative(1e-13));
}

TEST_CASE("displacement: weights follow Archimedes, and buoyant weighing finds the dry mass again") {
  const evidence weight{"tankwright::vessel::weight_of", kind::identity, "Archimedes"};
  const evidence back{"tankwright::vessel::dry_mass_from_submerged", kind::identity,
                      "the inverse of the submerged weight"};
  const auto rock = vs::rock_by_mass({.dry_mass = kilograms(50), .rock = sand_of(0.4, 2830)});
  const auto w = vs::weight_of(rock, sea);
  TW_CHECK(weight, w.dry.central, kilograms(50), relative(1e-15));
  TW_CHECK(weight, w.submerged.central, kilograms(50 * (1 - 1023.5 / 2830)), relative(1e-14));
  TW_CHECK(weight, w.wet.central, kilograms(50 + 1023.5 * 50 / 2830 * 0.4 / 0.6), relative(1e-14));
  TW_CHECK(back,
           vs::dry_mass_from_submerged({.submerged_mass = w.submerged.central,
                                        .grain_density = kilograms_per_cubic_metre(2830),
                                        .water_density = sea}),
           kilograms(50), relative(1e-14));
}

TEST_CASE("displacement: net, free and total water of a scene, and what it weighs") {
  const evidence net{"tankwright::vessel::water_in", kind::identity, "volumes and masses add up"};
  const evidence total{"tankwright::vessel::total_water", kind::identity, "sum of the vessels"};
  const evidence thing{"tankwright::vessel::equipment", kind::identity, "its own volume"};
  const auto sand = vs::sand_bed({.floor = square_metres(2), .depth = metres(0.1), .sand = sand_of(0.45, 2850)});
  const auto pump = vs::equipment({.outside = litres(3), .mass = kilograms(4)});
  TW_CHECK(thing, pump.envelope.central.value(), litres(3), relative(1e-15));
  const vs::item items[]{sand, pump};
  const volume gross = vs::filled_volume(tank(), metres(0.9));
  const auto content = vs::water_in({.gross = gross, .items = items, .water_density = sea});
  TW_CHECK(net, content.net.central.value(), litres(1800 - 110 - 3), relative(1e-14));
  TW_CHECK(net, content.free.central.value(), litres(1800 - 200 - 3), relative(1e-14));
  TW_CHECK(net, content.pores.central.value(), litres(90), relative(1e-14));
  TW_CHECK(net, content.water.central, kilograms(1687 * 1.0235), relative(1e-14));
  TW_CHECK(net, content.on_the_floor.central, kilograms(1687 * 1.0235 + 110 * 2.85 + 4), relative(1e-14));
  TW_CHECK(net, content.contents_dry.central, kilograms(110 * 2.85 + 4), relative(1e-14));
  CHECK(content.caution.text.find("15 %") != std::string_view::npos);
  const auto sump = vs::water_in({.gross = litres(200), .items = std::span<const vs::item>{}, .water_density = sea});
  TW_CHECK(net, sump.net.low.value(), litres(200), relative(1e-15));
  const vs::water_content both[]{content, sump};
  TW_CHECK(total, vs::total_water(both).central.value(), litres(1887), relative(1e-14));
  CHECK_THROWS_AS((void)vs::total_water({}), invalid_input);
}

TEST_CASE("displacement: slopes") {
  const evidence slope{"tankwright::vessel::sloped_bed", kind::identity, "trapezium"};
  const auto bed = vs::sloped_bed({.shallow_end = centimetres(5), .deep_end = centimetres(20), .run = centimetres(90)});
  TW_CHECK(slope, bed.mean_depth, centimetres(12.5), relative(1e-14));
  TW_CHECK(slope, bed.slope, radians(std::atan(15.0 / 90.0)), relative(1e-14));
  CHECK_FALSE(bed.steeper_than_repose);
  CHECK(vs::sloped_bed({.shallow_end = metres(0), .deep_end = metres(0.3), .run = metres(0.4)}).steeper_than_repose);
  const length run = vs::slope_run(metres(0.2));
  CHECK_FALSE(
      vs::sloped_bed({.shallow_end = metres(0), .deep_end = metres(0.2), .run = run * 1.001}).steeper_than_repose);
  CHECK(vs::sloped_bed({.shallow_end = metres(0), .deep_end = metres(0.2), .run = run * 0.999}).steeper_than_repose);
  CHECK_THROWS_AS((void)vs::sloped_bed({.shallow_end = metres(0.2), .deep_end = metres(0.1), .run = metres(1)}),
                  invalid_input);
  CHECK_THROWS_AS((void)vs::sloped_bed({.shallow_end = metres(-0.1), .deep_end = metres(0.1), .run = metres(1)}),
                  invalid_input);
  CHECK_THROWS_AS((void)vs::sloped_bed({.shallow_end = metres(0.1), .deep_end = metres(0.2), .run = metres(0)}),
                  invalid_input);
  CHECK_THROWS_AS((void)vs::slope_run(metres(0.1), degrees(90)), invalid_input);
  CHECK_THROWS_AS((void)vs::slope_run(metres(-0.1)), invalid_input);
}

TEST_CASE("displacement: impossible things are refused by name") {
  const double nan = std::nan("");
  const auto bed = [](double floor, double depth, double n, double rho) {
    return vs::sand_bed(
        {.floor = square_metres(floor), .depth = metres(depth), .sand = sand_of(n, rho), .label = "back slope"});
  };
  CHECK_THROWS_WITH_AS(
      (void)bed(1, 0.1, 1.0, 2850),
      "tankwright::vessel::sand_bed: back slope: porosity = 1 is not possible; expected at least 0 and below 1",
      invalid_input);
  CHECK_THROWS_AS((void)bed(0, 0.1, 0.4, 2850), invalid_input);
  CHECK_THROWS_AS((void)bed(1, -0.1, 0.4, 2850), invalid_input);
  CHECK_THROWS_AS((void)bed(1, nan, 0.4, 2850), invalid_input);
  CHECK_THROWS_AS((void)bed(1, 0.1, nan, 2850), invalid_input);
  CHECK_THROWS_AS((void)bed(1, 0.1, -0.1, 2850), invalid_input);
  CHECK_THROWS_AS((void)bed(1, 0.1, 0.4, 0), invalid_input);
  vs::grains upside_down = vs::aragonite_sand;
  upside_down.pores.low = porosity{0.6};
  CHECK_THROWS_AS((void)vs::sand_by_mass({.dry_mass = kilograms(1), .sand = upside_down}), invalid_input);
  CHECK_THROWS_AS((void)vs::sand_by_mass({.dry_mass = kilograms(-1)}), invalid_input);
  CHECK_THROWS_AS((void)vs::bed_depth(vs::sand_by_mass({.dry_mass = kilograms(1)}), square_metres(0)), invalid_input);
  CHECK_THROWS_AS((void)vs::rock_by_mass({.dry_mass = kilograms(nan)}), invalid_input);
  CHECK_THROWS_AS((void)vs::rock_by_mass({.dry_mass = kilograms(1), .flooded_pores = percent(101)}), invalid_input);
  const auto weighed = [](double dry, double sub, double water = 1023.5) {
    return vs::rock_weighed_under_water({.dry_mass = kilograms(dry),
                                         .submerged_mass = kilograms(sub),
                                         .water_density = kilograms_per_cubic_metre(water),
                                         .label = "arch"});
  };
  CHECK_THROWS_WITH_AS(
      (void)weighed(10, 11),
      "tankwright::vessel::rock_weighed_under_water: arch: submerged mass = 11 kg is not below the dry mass, 10 kg: "
      "water carries part of every rock",
      invalid_input);
  CHECK_THROWS_AS((void)weighed(10, 10), invalid_input);
  CHECK_THROWS_AS((void)weighed(10, -1), invalid_input);
  CHECK_THROWS_AS((void)weighed(10, nan), invalid_input);
  CHECK_THROWS_AS((void)weighed(0, -1), invalid_input);
  CHECK_THROWS_AS((void)weighed(10, 6, 0), invalid_input);
  CHECK_THROWS_AS((void)vs::rock_weighed_under_water({.dry_mass = kilograms(10),
                                                      .submerged_mass = kilograms(6),
                                                      .water_density = sea,
                                                      .soaked_mass = kilograms(9)}),
                  invalid_input);
  CHECK_THROWS_AS((void)vs::rock_by_level_rise(tank(), {.before = metres(0.5), .after = metres(0.4)}), invalid_input);
  CHECK_THROWS_AS((void)vs::rock_by_level_rise(tank(), {.before = metres(0.5), .after = metres(1.4)}), invalid_input);
  CHECK_THROWS_AS((void)vs::equipment({.outside = litres(-1), .mass = kilograms(1)}), invalid_input);
  CHECK_THROWS_AS((void)vs::equipment({.outside = litres(1), .mass = kilograms(nan)}), invalid_input);
  CHECK_THROWS_AS(
      (void)vs::weight_of(vs::equipment({.outside = litres(1), .mass = kilograms(1)}), kilograms_per_cubic_metre(0)),
      invalid_input);
  CHECK_THROWS_AS(
      (void)vs::dry_mass_from_submerged({.submerged_mass = kilograms(1), .grain_density = sea, .water_density = sea}),
      invalid_input);
  CHECK_THROWS_AS((void)vs::dry_mass_from_submerged(
                      {.submerged_mass = kilograms(-1), .grain_density = sea * 2.0, .water_density = sea}),
                  invalid_input);
  const std::vector<vs::item> too_much{vs::equipment({.outside = litres(300), .mass = kilograms(1)})};
  CHECK_THROWS_WITH_AS(
      (void)vs::water_in({.gross = litres(200), .items = too_much, .water_density = sea}),
      "tankwright::vessel::water_in: volume of all items = 0.3 m3 is not possible; expected 0 to 0.2 m3",
      invalid_input);
  CHECK_THROWS_AS((void)vs::water_in({.gross = litres(0), .items = too_much, .water_density = sea}), invalid_input);
  CHECK_THROWS_AS((void)vs::water_in({.gross = litres(nan), .items = too_much, .water_density = sea}), invalid_input);
  CHECK_THROWS_AS(
      (void)vs::water_in({.gross = litres(500), .items = too_much, .water_density = kilograms_per_cubic_metre(nan)}),
      invalid_input);
  std::vector<vs::item> broken = too_much;
  broken[0].solids.high = vs::solid_volume{litres(nan)};
  CHECK_THROWS_AS((void)vs::water_in({.gross = litres(500), .items = broken, .water_density = sea}), invalid_input);
}

TEST_CASE("displacement: more of anything leaves less water") {
  const evidence less{"tankwright::vessel::water_in", kind::property, "falls with every item"};
  std::mt19937 random{20260801};
  std::uniform_real_distribution<double> some(0.0, 1.0);
  std::vector<vs::item> items;
  double last = 1e9;
  for (int i = 0; i < 200; ++i) {
    items.push_back(i % 2 ? vs::rock_by_mass({.dry_mass = kilograms(5 * some(random))})
                          : vs::equipment({.outside = litres(some(random)), .mass = kilograms(1)}));
    const auto content = vs::water_in({.gross = litres(2000), .items = items, .water_density = sea});
    TW_HOLDS(less, content.net.central.value().value() < last);
    TW_HOLDS(less, content.free.central.value() <= content.net.central.value());
    last = content.net.central.value().value();
  }
}
