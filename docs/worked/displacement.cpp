// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/displacement.hpp>
#include <tankwright/vessel/rock.hpp>
#include <tankwright/vessel/sand.hpp>
#include <tankwright/vessel/shape.hpp>
#include <vector>

#include "worked.hpp"

WORKED_EXAMPLE(displacement, "displacement", "How much water is in the lagoon, with its sand and rock?") {
  using namespace tankwright;
  const double l = s.given("L", "length inside", 2.40, 2, "m");
  const double w = s.given("W", "width inside", 1.00, 2, "m");
  const double h = s.given("H", "depth of the water", 0.80, 2, "m");
  const double d = s.given("d", "mean depth of aragonite sand, 8 to 24 cm", 0.16, 2, "m");
  const double m1 = s.given("m1", "rock on the bathroom scale, dry", 46, 0, "kg");
  const double m2 = s.given("m2", "arch, dry", 14.2, 1, "kg");
  const double m3 = s.given("m3", "arch, hanging in seawater", 9.1, 1, "kg");
  const double rho = s.given("rho", "density of the seawater", 1024, 0, "kg/m3");
  s.wanted("The water for salting, and the sand to buy.");
  const auto tank = vessel::box({.length = vessel::inside{metres(l)},
                                 .width = vessel::inside{metres(w)},
                                 .height = vessel::inside{metres(h + 0.05)}});
  const auto sand = vessel::sand_bed({.floor = square_metres(l * w), .depth = metres(d)});
  const auto rock = vessel::rock_by_mass({.dry_mass = kilograms(m1)});
  const auto arch = vessel::rock_weighed_under_water(
      {.dry_mass = kilograms(m2), .submerged_mass = kilograms(m3), .water_density = kilograms_per_cubic_metre(rho)});
  const std::vector<vessel::item> items{sand, rock, arch};
  const auto found = vessel::water_in({.gross = vessel::filled_volume(tank, metres(h)),
                                       .items = items,
                                       .water_density = kilograms_per_cubic_metre(rho)});
  s.step("G", "gross volume = L W H", in_litres(found.gross), 0, "L");
  s.step("Vs", "grains of the sand = (1 - 0.45) L W d", in_litres(sand.solids.central.value()), 0, "L");
  s.step("V1", "rock = m1/2830", in_litres(rock.solids.central.value()), 1, "L");
  s.step("V2", "arch = (m2 - m3)/rho, by Archimedes", in_litres(arch.solids.central.value()), 1, "L");
  s.result("N", "water for salting = G - Vs - V1 - V2", in_litres(found.net.central.value()), -1, "L");
  s.result("low", "with the bands of sand and rock", in_litres(found.net.low.value()), -1, "L");
  s.result("high", "to", in_litres(found.net.high.value()), -1, "L");
  s.result("M", "sand to buy = 2850 Vs", in_kilograms(sand.dry_mass.central), -1, "kg");
  s.means(
      "An eighth of the tank is sand. Whoever salts for the gross volume salts one part in eight too much; whoever "
      "fills from a metered "
      "hose and writes the meter down knows it better than any calculation.");
  s.caution(found.caution);
}
