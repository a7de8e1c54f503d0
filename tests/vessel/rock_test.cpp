// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/rock.hpp>

#include "some_items.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

vs::shape tank() {
  const auto m = [](double x) { return vs::inside{metres(x)}; };
  return vs::box({.length = m(2), .width = m(1), .height = m(1), .label = "display"});
}

}  // namespace

TEST_CASE("rock: reference table") {
  check_rows(
      reference_rows("vessel/rock.csv"),
      {{"tankwright::vessel::rock_by_mass",
        [](const reference_row& row) {
          const auto rock = vs::rock_by_mass({.dry_mass = pounds(row["m"]), .rock = exact_grains(0.4, row["rho"])});
          return in_litres(rock.solids.central.value());
        }},
       {"tankwright::vessel::rock_weighed_under_water",
        [](const reference_row& row) {
          const auto rock = vs::rock_weighed_under_water({.dry_mass = kilograms(row["dry"]),
                                                          .submerged_mass = kilograms(row["sub"]),
                                                          .water_density = kilograms_per_cubic_metre(row["rho"])});
          return in_litres(rock.solids.central.value());
        }},
       {"tankwright::vessel::dry_mass_from_submerged", [](const reference_row& row) {
          return in_kilograms(vs::dry_mass_from_submerged({.submerged_mass = kilograms(row["sub"]),
                                                           .grain_density = kilograms_per_cubic_metre(row["grain"]),
                                                           .water_density = kilograms_per_cubic_metre(row["rho"])}));
        }}});
}

TEST_CASE("rock: one rock of known parts, found three ways") {
  const evidence archimedes{"tankwright::vessel::rock_weighed_under_water", kind::identity,
                            "Archimedes: a rock made of known parts"};
  const evidence rise{"tankwright::vessel::rock_by_level_rise", kind::identity, "horizontal area times rise"};
  const evidence part_dry{"tankwright::vessel::rock_by_mass", kind::identity, "pores full of air keep water out"};
  // 2 L of solids at 2830 kg/m3 with 1.5 L of pores.
  const mass dry = kilograms(5.66), sub = dry - sea * litres(2), soaked = dry + sea * litres(1.5);
  const auto rock = vs::rock_weighed_under_water(
      {.dry_mass = dry, .submerged_mass = sub, .water_density = sea, .soaked_mass = soaked});
  TW_CHECK(archimedes, rock.solids.central.value(), litres(2), relative(1e-13));
  TW_CHECK(archimedes, rock.pores.low.value(), litres(1.5), relative(1e-13));
  TW_CHECK(archimedes, rock.pores.high.value(), litres(1.5), relative(1e-13));
  TW_CHECK(archimedes, rock.envelope.central.value(), litres(3.5), relative(1e-13));
  const auto raised = vs::rock_by_level_rise(tank(), {.before = metres(0.5), .after = metres(0.501)});
  TW_CHECK(rise, raised.solids.central.value(), litres(2), relative(1e-12));
  const auto known = exact_grains(1.5 / 3.5, 2830);
  TW_CHECK(part_dry, vs::rock_by_mass({.dry_mass = dry, .rock = known}).pores.central.value(), litres(1.5),
           relative(1e-13));
  const auto fresh = vs::rock_by_mass({.dry_mass = dry, .rock = known, .flooded_pores = percent(20)});
  TW_CHECK(part_dry, fresh.solids.central.value(), litres(2 + 0.8 * 1.5), relative(1e-13));
  TW_CHECK(part_dry, fresh.pores.central.value(), litres(0.2 * 1.5), relative(1e-13));
  TW_CHECK(part_dry, fresh.envelope.central.value(), litres(3.5), relative(1e-13));
}

TEST_CASE("rock: bands") {
  const evidence band{"tankwright::vessel::rock_by_mass", kind::property, "low <= central <= high"};
  const evidence habit{"tankwright::vessel::rock_by_mass", kind::common_practice, "15 % either way"};
  const auto rock = vs::rock_by_mass({.dry_mass = kilograms(80)});
  check_item(band, rock);
  check_item(band, vs::rock_by_mass({.dry_mass = kilograms(80), .flooded_pores = percent(40)}));
  check_item(band, vs::rock_weighed_under_water(
                       {.dry_mass = kilograms(10), .submerged_mass = kilograms(6.38), .water_density = sea}));
  check_item(band, vs::rock_by_level_rise(tank(), {.before = metres(0.5), .after = metres(0.52)}));
  TW_CHECK(habit, rock.solids.high.value(), rock.solids.central.value() * 1.15, relative(1e-14));
  TW_CHECK(habit, rock.solids.low.value(), rock.solids.central.value() * 0.85, relative(1e-14));
}

TEST_CASE("rock: buoyant weighing finds the dry mass again") {
  const evidence back{"tankwright::vessel::dry_mass_from_submerged", kind::identity,
                      "the inverse of the submerged weight"};
  const auto rock = vs::rock_by_mass({.dry_mass = kilograms(50), .rock = exact_grains(0.4, 2830)});
  TW_CHECK(back,
           vs::dry_mass_from_submerged({.submerged_mass = vs::weight_of(rock, sea).submerged.central,
                                        .grain_density = kilograms_per_cubic_metre(2830),
                                        .water_density = sea}),
           kilograms(50), relative(1e-14));
}

TEST_CASE("rock: impossible rocks are refused by name") {
  const double nan = std::nan("");
  CHECK_THROWS_AS((void)vs::rock_by_mass({.dry_mass = kilograms(nan)}), invalid_input);
  CHECK_THROWS_AS((void)vs::rock_by_mass({.dry_mass = kilograms(-1)}), invalid_input);
  CHECK_THROWS_AS((void)vs::rock_by_mass({.dry_mass = kilograms(1), .flooded_pores = percent(101)}), invalid_input);
  CHECK_THROWS_AS((void)vs::rock_by_mass({.dry_mass = kilograms(1), .rock = exact_grains(1.0, 2800)}), invalid_input);
  const auto weighed = [](double dry, double sub, double water = 1023.5) {
    return vs::rock_weighed_under_water({.dry_mass = kilograms(dry),
                                         .submerged_mass = kilograms(sub),
                                         .water_density = kilograms_per_cubic_metre(water),
                                         .label = "arch"});
  };
  CHECK_THROWS_WITH_AS(
      (void)weighed(10, 11),
      "tankwright::vessel::rock_weighed_under_water: arch: submerged mass = 11 kg is not below the dry "
      "mass, 10 kg: water carries part of every rock",
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
  CHECK_THROWS_AS(
      (void)vs::dry_mass_from_submerged({.submerged_mass = kilograms(1), .grain_density = sea, .water_density = sea}),
      invalid_input);
  CHECK_THROWS_AS((void)vs::dry_mass_from_submerged(
                      {.submerged_mass = kilograms(-1), .grain_density = sea * 2.0, .water_density = sea}),
                  invalid_input);
}
