// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/sand.hpp>

#include "some_items.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

TEST_CASE("sand: reference table") {
  check_rows(reference_rows("vessel/sand.csv"),
             {{"tankwright::vessel::sand_bed",
               [](const reference_row& row) {
                 const auto bed = vs::sand_bed({.floor = feet(row["L"]) * feet(row["W"]),
                                                .depth = inches(row["d"]),
                                                .sand = exact_grains(row["n"], row["rho"])});
                 return row.text("give") == "solids" ? in_litres(bed.solids.central.value())
                                                     : in_kilograms(bed.dry_mass.central);
               }},
              {"tankwright::vessel::slope_run", [](const reference_row& row) {
                 return in_inches(vs::slope_run(inches(row["rise"]), degrees(row["repose"])));
               }}});
}

TEST_CASE("sand: a bed by its depth and by its mass is the same bed") {
  const evidence by_mass{"tankwright::vessel::sand_by_mass", kind::identity, "m/rho_g and m/rho_b"};
  const evidence depth{"tankwright::vessel::bed_depth", kind::identity, "envelope over floor"};
  const auto sand = exact_grains(0.45, 2850);
  const area floor = square_metres(2);
  const auto bed = vs::sand_bed({.floor = floor, .depth = centimetres(8), .sand = sand});
  const auto bags = vs::sand_by_mass({.dry_mass = bed.dry_mass.central, .sand = sand});
  TW_CHECK(by_mass, bags.solids.central, bed.solids.central, relative(1e-14));
  TW_CHECK(by_mass, bags.pores.central, bed.pores.central, relative(1e-14));
  TW_CHECK(by_mass, bags.envelope.central.value(), litres(160), relative(1e-14));
  TW_CHECK(by_mass, bags.dry_mass.central, kilograms(160 * 1.5675), relative(1e-14));
  TW_CHECK(depth, vs::bed_depth(bags, floor).central, centimetres(8), relative(1e-14));
}

TEST_CASE("sand: bands") {
  const evidence band{"tankwright::vessel::sand_bed", kind::property, "low <= central <= high"};
  const evidence ends{"tankwright::vessel::sand_bed", kind::identity, "the ends of the porosities and densities"};
  const auto bed = vs::sand_bed({.floor = square_metres(1), .depth = metres(0.1)});
  check_item(band, bed);
  check_item(band, vs::sand_by_mass({.dry_mass = kilograms(100)}));
  check_item(band, vs::sand_by_mass({.dry_mass = kilograms(100), .sand = vs::quartz_sand}));
  TW_CHECK(ends, bed.solids.low.value(), litres(50), relative(1e-14));
  TW_CHECK(ends, bed.solids.high.value(), litres(60), relative(1e-14));
  TW_CHECK(ends, bed.dry_mass.low, kilograms(50 * 2.71), relative(1e-14));
  TW_CHECK(ends, bed.dry_mass.high, kilograms(60 * 2.94), relative(1e-14));
  TW_CHECK(ends, bed.envelope.low, bed.envelope.high, tolerance{});
}

TEST_CASE("sand: slopes") {
  const evidence slope{"tankwright::vessel::sloped_bed", kind::identity, "trapezium"};
  const auto bed = vs::sloped_bed({.shallow_end = centimetres(5), .deep_end = centimetres(20), .run = centimetres(90)});
  TW_CHECK(slope, bed.mean_depth, centimetres(12.5), relative(1e-14));
  TW_CHECK(slope, bed.slope, radians(std::atan(15.0 / 90.0)), relative(1e-14));
  CHECK_FALSE(bed.steeper_than_repose);
  const auto from_zero = [](double deep, length run) {
    return vs::sloped_bed({.shallow_end = metres(0), .deep_end = metres(deep), .run = run});
  };
  CHECK(from_zero(0.3, metres(0.4)).steeper_than_repose);
  const length run = vs::slope_run(metres(0.2));
  CHECK_FALSE(from_zero(0.2, run * 1.001).steeper_than_repose);
  CHECK(from_zero(0.2, run * 0.999).steeper_than_repose);
  // As steep as the sand lies, and the next smaller angle of repose.
  const auto lying = [&](angle repose) {
    return vs::sloped_bed(
        {.shallow_end = centimetres(5), .deep_end = centimetres(20), .run = centimetres(90), .repose = repose});
  };
  CHECK_FALSE(lying(bed.slope).steeper_than_repose);
  CHECK(lying(radians(std::nextafter(bed.slope.value(), 0.0))).steeper_than_repose);
  CHECK_THROWS_AS((void)vs::sloped_bed({.shallow_end = metres(0.2), .deep_end = metres(0.1), .run = metres(1)}),
                  invalid_input);
  CHECK_THROWS_AS((void)vs::sloped_bed({.shallow_end = metres(-0.1), .deep_end = metres(0.1), .run = metres(1)}),
                  invalid_input);
  CHECK_THROWS_AS((void)from_zero(0.2, metres(0)), invalid_input);
  CHECK_THROWS_AS((void)vs::slope_run(metres(0.1), degrees(90)), invalid_input);
  CHECK_THROWS_AS((void)vs::slope_run(metres(-0.1)), invalid_input);
}

TEST_CASE("sand: impossible beds are refused by name") {
  const double nan = std::nan("");
  const auto bed = [](double floor, double depth, double n, double rho) {
    return vs::sand_bed(
        {.floor = square_metres(floor), .depth = metres(depth), .sand = exact_grains(n, rho), .label = "back slope"});
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
  CHECK_THROWS_AS((void)vs::sand_by_mass({.dry_mass = kilograms(-1)}), invalid_input);
  CHECK_THROWS_AS((void)vs::bed_depth(vs::sand_by_mass({.dry_mass = kilograms(1)}), square_metres(0)), invalid_input);
}
