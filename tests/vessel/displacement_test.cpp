// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/displacement.hpp>

#include <random>
#include <vector>

#include <tankwright/vessel/rock.hpp>
#include <tankwright/vessel/sand.hpp>

#include "some_items.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

TEST_CASE("displacement: net, free and total water of a scene, and what it weighs") {
  const evidence net{"tankwright::vessel::water_in", kind::identity, "volumes and masses add up"};
  const evidence total{"tankwright::vessel::total_water", kind::identity, "sum of the vessels"};
  const auto sand = vs::sand_bed({.floor = square_metres(2), .depth = metres(0.1), .sand = exact_grains(0.45, 2850)});
  const vs::item items[]{sand, vs::equipment({.outside = litres(3), .mass = kilograms(4)})};
  const auto content = vs::water_in({.gross = litres(1800), .items = items, .water_density = sea});
  TW_CHECK(net, content.net.central.value(), litres(1800 - 110 - 3), relative(1e-14));
  TW_CHECK(net, content.free.central.value(), litres(1800 - 200 - 3), relative(1e-14));
  TW_CHECK(net, content.pores.central.value(), litres(90), relative(1e-14));
  TW_CHECK(net, content.water.central, kilograms(1687 * 1.0235), relative(1e-14));
  TW_CHECK(net, content.on_the_floor.central, kilograms(1687 * 1.0235 + 110 * 2.85 + 4), relative(1e-14));
  TW_CHECK(net, content.contents_dry.central, kilograms(110 * 2.85 + 4), relative(1e-14));
  TW_CHECK(net, content.contents_submerged.central, kilograms(110 * (2.85 - 1.0235) + 4 - 3 * 1.0235), relative(1e-14));
  CHECK(content.caution.text.find("15 %") != std::string_view::npos);
  const auto sump = vs::water_in({.gross = litres(200), .items = std::span<const vs::item>{}, .water_density = sea});
  TW_CHECK(net, sump.net.low.value(), litres(200), relative(1e-15));
  const vs::water_content both[]{content, sump};
  TW_CHECK(total, vs::total_water(both).central.value(), litres(1887), relative(1e-14));
  TW_CHECK(net, content.on_the_floor.low, content.on_the_floor.central, relative(1e-14));  // all is known exactly
  TW_CHECK(net, content.on_the_floor.high, content.on_the_floor.central, relative(1e-14));
  TW_CHECK(total, vs::total_water(std::span{both}.first(1)).central.value(), litres(1687), relative(1e-14));
  CHECK_THROWS_WITH_AS((void)vs::total_water({}),
                       "tankwright::vessel::total_water: number of vessels = 0 holds no water", invalid_input);
}

TEST_CASE("displacement: bands of a scene are in order and end at no water") {
  const evidence band{"tankwright::vessel::water_in", kind::property, "low <= central <= high"};
  const std::vector<vs::item> items{vs::sand_bed({.floor = square_metres(1), .depth = metres(0.1)}),
                                    vs::rock_by_mass({.dry_mass = kilograms(80)})};
  for (const double gross : {1500.0, 160.0}) {
    const auto content = vs::water_in({.gross = litres(gross), .items = items, .water_density = sea});
    in_order(band, content.solids);
    in_order(band, content.net);
    in_order(band, content.free);
    in_order(band, content.pores);
    in_order(band, content.water);
    in_order(band, content.on_the_floor);
    in_order(band, content.contents_submerged);
    TW_HOLDS(band, content.free.low.value() >= litres(0));
    // 100 L of sand and rock of up to 127 L do not fit into 160 L: at the least nothing is left.
    CHECK((content.free.low.value() == litres(0)) == (gross == 160.0));
  }
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

TEST_CASE("displacement: impossible scenes are refused") {
  const double nan = std::nan("");
  const std::vector<vs::item> pump{vs::equipment({.outside = litres(300), .mass = kilograms(1)})};
  const auto content = [](const std::vector<vs::item>& items, double gross, double rho = 1023.5) {
    return vs::water_in({.gross = litres(gross), .items = items, .water_density = kilograms_per_cubic_metre(rho)});
  };
  CHECK_THROWS_WITH_AS((void)content(pump, 200),
                       "tankwright::vessel::water_in: equipment: volume = 0.3 m3 is not possible; expected 0 to 0.2 m3",
                       invalid_input);
  const std::vector<vs::item> two_pumps{pump[0], pump[0]};
  CHECK_THROWS_WITH_AS(
      (void)content(two_pumps, 400),
      "tankwright::vessel::water_in: volume of all items = 0.6 m3 is not possible; expected 0 to 0.4 m3",
      invalid_input);
  CHECK_NOTHROW((void)content(two_pumps, 600));
  CHECK_THROWS_AS((void)content(pump, 0), invalid_input);
  CHECK_THROWS_AS((void)content(pump, nan), invalid_input);
  CHECK_THROWS_AS((void)content(pump, 500, nan), invalid_input);
  auto made = pump;  // by hand
  made[0].solids = exactly(vs::solid_volume{litres(-1)});
  CHECK_THROWS_WITH_AS((void)content(made, 500), doctest::Contains("water_in: equipment: solids = -0.001 m3"),
                       invalid_input);
  // An item that is no number cannot be made.
  CHECK_THROWS_AS((void)exactly(vs::solid_volume{litres(nan)}), invalid_input);
  CHECK_THROWS_AS((void)exactly(vs::envelope_volume{litres(nan)}), invalid_input);
}
