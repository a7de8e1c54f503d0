// SPDX-License-Identifier: BSL-1.0
// The matcher is what everything else rests on: it must accept, and it must refuse.
#include "check.hpp"
#include "reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;

TEST_CASE("the matcher accepts what is within the tolerance and refuses what is not") {
  CHECK(compare(litres(1.0), litres(1.0001), within(litres(0.0002))).good);
  CHECK_FALSE(compare(litres(1.0), litres(1.0003), within(litres(0.0002))).good);
  CHECK(compare(litres(1000.0), litres(1001.0), relative(1.1e-3)).good);
  CHECK_FALSE(compare(litres(1000.0), litres(1001.0), relative(0.9e-3)).good);
  CHECK(compare(1.0, 1.0, tolerance{}).good);
  CHECK_FALSE(compare(1.0, std::nextafter(1.0, 2.0), tolerance{}).good);
}

TEST_CASE("the matcher is not fooled by small numbers, zero, NaN or infinity") {
  constexpr double nan = std::numeric_limits<double>::quiet_NaN();
  constexpr double inf = std::numeric_limits<double>::infinity();
  CHECK_FALSE(compare(0.0, 1e-6, relative(1e-3)).good);
  CHECK_FALSE(compare(1e-6, 0.0, relative(1e-3)).good);
  CHECK_FALSE(compare(nan, 1.0, relative(1.0)).good);
  CHECK_FALSE(compare(1.0, nan, relative(1.0)).good);
  CHECK_FALSE(compare(nan, nan, relative(1.0)).good);
  CHECK_FALSE(compare(inf, 1.0, tolerance{.absolute = 1e300}).good);
  CHECK_FALSE(compare(1.0, 1.0 + 1e-9, tolerance{.absolute = nan}).good);
  CHECK_FALSE(compare(1.0, 2.0, tolerance{.absolute = -1.0}).good);
}

TEST_CASE("the matcher reads the number of every kind of type, in SI") {
  CHECK(raw(litres(2.0)) == 0.002);
  CHECK(raw(celsius(25.0)) == 298.15);
  CHECK(raw(practical_salinity{35.0}) == 35.0);
  CHECK(raw(absolute_salinity::from_grams_per_kilogram(35.2)) == 35.2);
  CHECK(raw(relative_humidity::from_fraction(0.6)) == 0.6);
  CHECK(raw(fraction(0.87)) == 0.87);
  CHECK(raw(gauge_pressure{kilopascals(3.0)}) == 3000.0);
  CHECK(si_symbol<mass_density>() == "kg/m3");
  CHECK(si_symbol<temperature>() == "K");
}

TEST_CASE("a malformed reference table is refused") {
  CHECK_THROWS((void)reference_rows("no/such/table.csv"));
  CHECK_THROWS((void)kind_from_text("gospel"));
}
