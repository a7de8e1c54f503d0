// SPDX-License-Identifier: BSL-1.0
// What refusals say, word by word: function, thing, argument, number with its unit, and what is expected.
#include <array>
#include <functional>
#include <string>
#include <tankwright/vessel.hpp>
#include <vector>

#include "some_items.hpp"
#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

const mass_density fresh = kilograms_per_cubic_metre(1000.0);

/// What a call is refused with, without "tankwright::vessel::".
template <class Call>
std::string said(Call call) {
  try {
    (void)call();
  } catch (const invalid_input& e) {
    const std::string text = e.what(), start = "tankwright::vessel::";
    return text.starts_with(start) ? text.substr(start.size()) : "not of this folder: " + text;
  }
  return "accepted";
}

}  // namespace

TEST_CASE("refusal texts: how many braces") {
  for (const int braces : {0, 21}) {
    CHECK(said([&] {
            return vs::pull_of_braces({.rail = metres(1), .braces = braces, .load = newtons_per_metre(1)});
          }) == "pull_of_braces: number of braces = " + std::to_string(braces) + " is not possible; expected 1 to 20");
  }
}

TEST_CASE("refusal texts: of several values of an estimate that are impossible the low one is named") {
  const auto drip = [](double low, double central) {
    return said([&] {
      return vs::drip_rate({.drops = 3,
                            .over = seconds(60),
                            .drop = {cubic_metres(low), cubic_metres(central), cubic_metres(3e-8), "spoon"}});
    });
  };
  CHECK(drip(1e-10, 2e-10).starts_with("drip_rate: drip: volume of a drop = 1e-10 m3 is not possible"));
  CHECK(drip(1e-8, 2e-8) == "accepted");
}

TEST_CASE("refusal texts: each number stands with its unit, behind function, thing and argument") {
  struct worded {
    std::string start;
    std::string unit;
    std::function<void()> call;
  };
  const auto thing = vs::equipment({.outside = litres(1), .mass = kilograms(1)});
  const auto test = [](auto change) {
    vs::leak_test t{.surface = square_metres(2), .depth = metres(0.5), .resolution = millimetres(1), .label = "t"};
    for (int i = 0; i < 4; ++i) t.readings.push_back({.at = hours(i), .level = metres(0.4)});
    change(t);
    (void)vs::read_leak_test(t);
  };
  const auto plan = [](auto change) {
    vs::leak_test_plan p{.surface = square_metres(2), .resolution = millimetres(1)};
    change(p);
    (void)vs::minimum_detectable_leak(p, days(2));
  };
  const auto grains = [](double n, double rho) {
    (void)vs::sand_bed({.floor = square_metres(1), .depth = metres(0.1), .sand = exact_grains(n, rho)});
  };
  const vs::surface pane{.from = vs::air_index, .into = vs::glass_index};
  const vs::allowable_stress none{"edge", pascals(0), vs::load_basis::short_term, standing::from_memory, ""};
  for (const worded& wanted : std::vector<worded>{
           {"weight_of: equipment: water density = 0 kg/m3 is not possible; expected 0.01 to 30000 kg/m3", "kg/m3",
            [&] { (void)vs::weight_of(thing, kilograms_per_cubic_metre(0)); }},
           {"gasket_takes_up: gasket thickness = 0.01 mm is", "mm",
            [] { (void)vs::gasket_takes_up(millimetres(0.01)); }},
           {"withdrawal_of: screw: diameter = 1 m is", "m",
            [] { (void)vs::withdrawal_of({.gravity = 0.5, .diameter = metres(1), .penetration = metres(0.03)}); }},
           {"withdrawal_of: screw: penetration = 2 m is", "m",
            [] { (void)vs::withdrawal_of({.gravity = 0.5, .diameter = metres(0.005), .penetration = metres(2)}); }},
           {"sand_bed: sand: floor area = 0 m2 is", "m2",
            [] { (void)vs::sand_bed({.floor = square_metres(0), .depth = metres(0.1)}); }},
           {"sand_bed: sand: grain density = 0 kg/m3 is", "kg/m3", [&] { grains(0.4, 0); }},
           {"sand_bed: sand: porosity = 1 is", "", [&] { grains(1, 2700); }},
           {"slope_run: angle of repose = 0 rad is", "rad", [] { (void)vs::slope_run(metres(1), radians(0)); }},
           {"refracted: angle from the normal = 2 rad is", "rad", [&] { (void)vs::refracted(pane, radians(2)); }},
           {"recommended_lift: reach = 11 m is", "m",
            [] { (void)vs::recommended_lift({.reach = metres(11), .height = metres(1)}); }},
           {"recommended_lift: height = 11 m is", "m",
            [] { (void)vs::recommended_lift({.reach = metres(0.5), .height = metres(11)}); }},
           {"recommended_lift: travel = 11 m is", "m",
            [] { (void)vs::recommended_lift({.reach = metres(0.5), .height = metres(1), .travel = metres(11)}); }},
           {"glass_load_duration_factor: duration of load = 0 s is", "s",
            [] { (void)vs::glass_load_duration_factor(seconds(0)); }},
           {"glass_equivalent_load: duration of load = 0 s is", "s",
            [] {
              (void)vs::glass_equivalent_load(std::array{vs::load_spell{.load = pascals(1), .lasting = seconds(0)}});
            }},
           {"glass_stress_for_breakage: stressed area = 0 m2 is", "m2",
            [] {
              (void)vs::glass_stress_for_breakage(
                  {.breakage_probability = fraction(0.1), .stressed_area = square_metres(0), .lasting = seconds(3)});
            }},
           {"for_permanent_load: edge: allowable stress = 0 Pa is", "Pa", [&] { (void)vs::for_permanent_load(none); }},
           {"read_leak_test: t: surface = 0 m2 is", "m2", [&] { test([](auto& t) { t.surface = square_metres(0); }); }},
           {"read_leak_test: t: capacity = 0 m3 is", "m3", [&] { test([](auto& t) { t.capacity = litres(0); }); }},
           {"read_leak_test: t: depth = 0 m is", "m", [&] { test([](auto& t) { t.depth = metres(0); }); }},
           {"read_leak_test: t: resolution = 0 m is", "m", [&] { test([](auto& t) { t.resolution = metres(0); }); }},
           {"read_leak_test: t: resolution = 0.6 m is more than the depth of the water, 0.5 m", "m",
            [&] { test([](auto& t) { t.resolution = metres(0.6); }); }},
           {"read_leak_test: t: leak that matters = 0 m3/s is", "m3/s",
            [&] { test([](auto& t) { t.leak_that_matters = litres_per_day(0); }); }},
           {"read_leak_test: t: evaporation = 2 m/s is", "m/s",
            [&] { test([](auto& t) { t.evaporation = estimate<velocity>{metres_per_second(2)}; }); }},
           {"read_leak_test: t, reading 2: level = 2000 m is", "m",
            [&] { test([](auto& t) { t.readings[1].level = metres(2000); }); }},
           {"read_leak_test: t, reading 4: time = 1e+12 s is", "s",
            [&] { test([](auto& t) { t.readings[3].at = seconds(1e12); }); }},
           {"read_leak_test: t: largest change of the level = 0.6 m is more than the depth of the water, 0.5 m: one of "
            "the "
            "readings may be in another unit",
            "m", [&] { test([](auto& t) { t.readings[1].level = metres(1); }); }},
           {"read_leak_test: t, reading 3 is not later than the one before it", "",
            [&] { test([](auto& t) { t.readings[2].at = hours(1); }); }},
           {"read_leak_test: t, reading 2 has a pan level or a water temperature where another has none", "",
            [&] { test([](auto& t) { t.readings[1].pan = metres(0.1); }); }},
           {"read_leak_test: t, reading 2 has a pan level or a water temperature where another has none", "",
            [&] { test([](auto& t) { t.readings[1].water = celsius(20); }); }},
           {"read_leak_test: t: practical salinity = -1", "",
            [&] { test([](auto& t) { t.salinity = practical_salinity{-1}; }); }},
           {"read_leak_test: t: number of readings = 2 is too few", "",
            [&] { test([](auto& t) {
                    t.readings = {t.readings[0], t.readings[1]};
                  }); }},
           {"read_leak_test: t: number of readers = 21 is more than 20", "",
            [&] {
              test([](auto& t) {
                for (int i = 4; i < 21; ++i) t.readings.push_back({.at = hours(i), .level = metres(0.4)});
                for (auto& r : t.readings) r.reader = std::to_string(&r - t.readings.data());
              });
            }},
           {"read_leak_test: t needs the capacity of the tank, of which the criterion allows a share", "",
            [&] { test([](auto& t) { t.criterion = vs::awwa_d110; }); }},
           {"minimum_detectable_leak: readings per day = 0 1/d is", "1/d",
            [&] { plan([](auto& p) { p.readings_per_day = 0; }); }},
           {"minimum_detectable_leak: scatter = 2 m is", "m", [&] { plan([](auto& p) { p.scatter = metres(2); }); }},
           {"minimum_detectable_leak: duration = 0 d is", "d",
            [] {
              (void)vs::minimum_detectable_leak({.surface = square_metres(2), .resolution = millimetres(1)}, days(0));
            }},
           {"required_duration: leak = 0 m3/s is", "m3/s",
            [] {
              (void)vs::required_duration({.surface = square_metres(2), .resolution = millimetres(1)},
                                          litres_per_day(0));
            }},
       }) {
    CAPTURE(wanted.start);
    check_refused(wanted.call, [&](const error& e) {
      CHECK_MESSAGE(std::string{e.what()}.starts_with("tankwright::vessel::" + wanted.start), e.what());
      CHECK_MESSAGE(e.details().unit == wanted.unit, e.what());
    });
  }
}

TEST_CASE("refusal texts: shapes, rock, panels") {
  const auto box =
      vs::box({.length = vs::inside{metres(1)}, .width = vs::inside{metres(1)}, .height = vs::inside{metres(0.5)}});
  CHECK(said([&] { return vs::filled_volume(box, metres(0.6)); }) ==
        "filled_volume: box: depth = 0.6 m is above the rim, which is at 0.5 m");
  CHECK(said([&] { return vs::depth_of(box, litres(600)); }) ==
        "depth_of: box: volume = 0.6 m3 does not fit: to the rim the vessel holds 0.5 m3");
  CHECK(said([] {
          return vs::bow_front({.width = vs::inside{metres(1)},
                                .depth_at_ends = vs::inside{metres(0.5)},
                                .bow = vs::inside{metres(0.6)},
                                .height = vs::inside{metres(0.5)}});
        }).starts_with("bow_front: bow front: bow = 0.6 m is deeper than the radius of its arc"));
  CHECK(said([] {
          return vs::rock_weighed_under_water(
              {.dry_mass = kilograms(5), .submerged_mass = kilograms(5), .water_density = fresh});
        }).starts_with("rock_weighed_under_water: rock: submerged mass = 5 kg is not below the dry mass, 5 kg"));
  vs::panel pane{.width = metres(1),
                 .height = metres(1),
                 .thickness = metres(0.01),
                 .edges = vs::panel_edges::top_free,
                 .material = vs::annealed_glass,
                 .label = "pane"};
  CHECK(said([&] {
          return vs::water_on(pane, {.level = metres(1.1), .water_density = fresh});
        }).starts_with("water_on: pane: level = 1.1 m is above a free top edge at 1 m"));
  pane.thickness = metres(1);
  CHECK(said([&] {
          return vs::uniform_on(pane, pascals(1));
        }).starts_with("uniform_on: pane: thickness = 1 m is not less than the shorter side, 1 m"));
  pane.thickness = metres(0.01);
  pane.allowable = vs::allowable_stress{"gust", megapascals(20), vs::load_basis::short_term, standing::from_memory, ""};
  CHECK(said([&] {
          return vs::uniform_on(pane, pascals(1));
        }).starts_with("uniform_on: pane: allowable stress = 20000000 Pa is for a load of seconds"));
  CHECK(said([] {
          return vs::for_permanent_load({"edge", megapascals(7), vs::load_basis::permanent, standing::from_memory, ""});
        }).starts_with("for_permanent_load: edge: allowable stress = 7000000 Pa is for a permanent load already"));
}

TEST_CASE("refusal texts: how many of a thing at most") {
  const vs::leak_test_plan plan{.surface = square_metres(2), .resolution = millimetres(1)};
  const std::vector<length> depths(1001, metres(1));
  CHECK(said([&] { return vs::leak_test_stages(plan, depths, litres_per_day(1)); }) ==
        "leak_test_stages: number of stages = 1001 is not possible; expected 0 to 1000");
  CHECK(said([] {
          return vs::glass_equivalent_load(std::vector<vs::load_spell>(100'001, {pascals(0), seconds(3)}));
        }) == "glass_equivalent_load: number of spells = 100001 is not possible; expected 0 to 100000");
  const vs::panel pane{.width = metres(1),
                       .height = metres(1),
                       .thickness = metres(0.01),
                       .edges = vs::panel_edges::all_supported,
                       .material = vs::annealed_glass};
  const std::vector<length> levels(10'001, metres(0));
  CHECK(said([&] { return vs::first_fill(pane, levels, fresh); }) ==
        "first_fill: number of stages = 10001 is not possible; expected 0 to 10000");
  CHECK(said([] {
          return vs::regular_prism({.sides = 2, .side = vs::inside{metres(1)}, .height = vs::inside{metres(1)}});
        }) == "regular_prism: regular prism: number of sides = 2 is not possible; expected 3 to 1000");
}

TEST_CASE("refusal texts: by the function that was asked, though one that it calls would refuse as well") {
  vs::panel pane{.width = metres(1),
                 .height = metres(1),
                 .thickness = metres(0.01),
                 .edges = vs::panel_edges::all_supported,
                 .material = vs::annealed_glass,
                 .label = "pane"};
  CHECK(said([&] {
          return vs::water_on(pane, {.level = metres(1), .water_density = kilograms_per_cubic_metre(0)});
        }).starts_with("water_on: pane: water density = 0 kg/m3 is"));
  pane.allowable = vs::allowable_stress{"own", pascals(0), vs::load_basis::permanent, standing::from_memory, ""};
  CHECK(said([&] {
          return vs::uniform_on(pane, pascals(1));
        }).starts_with("uniform_on: pane: allowable stress = 0 Pa is"));
  vs::panel_material weak = vs::cast_acrylic;
  weak.allowable.value = pascals(0);
  CHECK(said([&] {
          return vs::sag_of({.span = metres(1), .thickness = metres(0.01), .material = weak});
        }).starts_with("sag_of: lid: allowable stress = 0 Pa is"));
  CHECK(said([] {
          return vs::rock_by_mass({.dry_mass = kilograms(5), .rock = exact_grains(1, 2700)});
        }).starts_with("rock_by_mass: rock: porosity = 1 is"));
  auto thing = vs::equipment({.outside = litres(1), .mass = kilograms(1)});
  thing.solids = vs::detail::quantities<vs::solid_volume>(vs::detail::exactly(-1), "made by hand");
  CHECK(said([&] {
          return vs::bed_depth(thing, square_metres(1));
        }).starts_with("bed_depth: equipment: solids = -1 m3 is"));
}

TEST_CASE("refusal texts: whose range it is") {
  CHECK_THROWS_WITH_AS((void)vs::glass_load_duration_factor(seconds(2)), doctest::Contains("(ASTM E1300-12a)"),
                       out_of_range);
  const vs::panel strip{.width = metres(11),
                        .height = metres(1),
                        .thickness = metres(0.01),
                        .edges = vs::panel_edges::all_supported,
                        .material = vs::annealed_glass};
  CHECK_THROWS_WITH_AS((void)vs::uniform_on(strip, pascals(1)),
                       doctest::Contains("(the series as tested; a longer panel is a strip)"), out_of_range);
}
