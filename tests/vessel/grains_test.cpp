// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/grains.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

double read(const vs::phases& p, const std::string& what) {
  if (what == "e") return p.void_ratio;
  if (what == "n") return p.pores.value();
  if (what == "S") return p.saturation;
  if (what == "water content %") return 100.0 * p.water_content;
  if (what == "dry density") return p.dry_density.value();
  return p.wet_density.value();
}

double in_unit(double kilograms_per_cubic_metre, const std::string& unit) {
  const mass_density d = mass_density::from_value(kilograms_per_cubic_metre);
  return unit == "lb/ft3" ? in_pounds_per_cubic_foot(d) : unit == "g/mL" ? in_grams_per_millilitre(d) : d.value();
}

mass_density density_of(const reference_row& row, const char* input) {
  return row.text(input).ends_with("lb/ft3") ? pounds_per_cubic_foot(row[input])
                                             : kilograms_per_cubic_metre(row[input]);
}

}  // namespace

TEST_CASE("grains: reference table") {
  const auto wet_mass = [](const reference_row& row, const char* input) {
    return row.text(input).ends_with("lb") ? pounds(row[input]) : grams(row[input]);
  };
  check_rows(
      reference_rows("vessel/grains.csv"),
      {{"tankwright::vessel::phases_when_saturated",
        [](const reference_row& row) {
          const mass_density water = row.has("water") ? density_of(row, "water") : kilograms_per_cubic_metre(1000);
          const auto p = vs::phases_when_saturated(
              {.water_content = row["w"], .grain_density = water * row["G"], .water_density = water});
          return in_unit(read(p, row.text("give")), row.unit);
        }},
       {"tankwright::vessel::phases_of",
        [&](const reference_row& row) {
          const mass_density water = density_of(row, "water");
          const bool feet = row.text("V").ends_with("ft3");
          const auto p = vs::phases_of({.wet = wet_mass(row, "wet"),
                                        .dry = wet_mass(row, "dry"),
                                        .whole = feet ? cubic_feet(row["V"]) : millilitres(row["V"]),
                                        .grain_density = water * row["G"],
                                        .water_density = water});
          return in_unit(read(p, row.text("give")), row.unit);
        }},
       {"tankwright::vessel::coral_branch_tips",
        [](const reference_row& row) {
          const auto& g = vs::coral_branch_tips;
          const std::string what = row.text("give");
          if (what == "density high") return in_grams_per_millilitre(g.grain_density.high);
          if (what == "density low") return in_grams_per_millilitre(g.grain_density.low);
          return 100.0 * (what == "porosity low" ? g.pores.low : g.pores.high).value();
        }},
       {"tankwright::vessel::simple_cubic_packing",
        [](const reference_row&) { return vs::simple_cubic_packing.value(); }},
       {"tankwright::vessel::closest_packing", [](const reference_row&) { return vs::closest_packing.value(); }},
       {"tankwright::vessel::aragonite", [](const reference_row&) { return in_grams_per_millilitre(vs::aragonite); }}});
}

TEST_CASE("grains: volumes of one kind are compared by size") {
  CHECK(vs::solid_volume{litres(2)} == vs::solid_volume{cubic_metres(0.002)});
  CHECK_FALSE(vs::pore_volume{litres(2)} == vs::pore_volume{litres(3)});
  CHECK(vs::envelope_volume{litres(2)} < vs::envelope_volume{litres(3)});
}

TEST_CASE("grains: porosity from two densities") {
  const evidence definition{"tankwright::vessel::porosity_of", kind::identity, "1 - bulk/grain"};
  const auto n =
      vs::porosity_of({.dry_bulk = kilograms_per_cubic_metre(1567.5), .grain = kilograms_per_cubic_metre(2850)});
  TW_CHECK(definition, n, porosity{0.45}, relative(1e-14));
  check_edges({"dry bulk density", "kg/m3", {2.85, 2850.0}}, [](double x, range_policy) {
    return vs::porosity_of({.dry_bulk = kilograms_per_cubic_metre(x), .grain = kilograms_per_cubic_metre(2850)});
  });
  check_edges(vs::detail::grain_density_limits, [](double x, range_policy) {
    return vs::porosity_of({.dry_bulk = kilograms_per_cubic_metre(0.1 * x), .grain = kilograms_per_cubic_metre(x)});
  });
}

TEST_CASE("grains: the phases of one sample agree, whichever way they were found") {
  const evidence both{"tankwright::vessel::phases_of", kind::property,
                      "a full sample by weighing and by water content"};
  const mass_density grain = kilograms_per_cubic_metre(2700), water = kilograms_per_cubic_metre(1024);
  for (const double w : {0.05, 0.3, 0.9}) {
    const auto full = vs::phases_when_saturated({.water_content = w, .grain_density = grain, .water_density = water});
    const auto weighed = vs::phases_of({.wet = kilograms(1 + w),
                                        .dry = kilograms(1),
                                        .whole = kilograms(1) / full.dry_density,
                                        .grain_density = grain,
                                        .water_density = water});
    TW_CHECK(both, weighed.pores, full.pores, relative(1e-13));
    TW_CHECK(both, weighed.void_ratio, full.void_ratio, relative(1e-13));
    TW_CHECK(both, weighed.saturation, 1.0, relative(1e-13));
    TW_CHECK(both, weighed.wet_density, full.wet_density, relative(1e-13));
    TW_CHECK(both, full.saturation, 1.0, tolerance{});
    CHECK_FALSE(full.more_water_than_pores);
  }
}

TEST_CASE("grains: impossible samples") {
  const auto sample = [](double wet, double dry, double whole_litres, double grain = 2700, double water = 1000) {
    return vs::phases_of({.wet = kilograms(wet),
                          .dry = kilograms(dry),
                          .whole = litres(whole_litres),
                          .grain_density = kilograms_per_cubic_metre(grain),
                          .water_density = kilograms_per_cubic_metre(water)});
  };
  CHECK_NOTHROW((void)sample(1.2, 1.0, 0.8));
  const double nan = std::nan("");
  CHECK_THROWS_AS((void)sample(0.9, 1.0, 0.8), invalid_input);  // dry above wet
  CHECK_THROWS_AS((void)sample(1.2, 1.0, 0.3), invalid_input);  // grains do not fit
  CHECK_FALSE(sample(1.2, 1.0, 0.8).more_water_than_pores);
  CHECK(sample(1.9, 1.0, 0.8).more_water_than_pores);
  CHECK_FALSE(sample(3072, 2048, 2000, 2048, 1024).more_water_than_pores);  // 1 m3 of grains, 1 m3 of pores: just full
  CHECK_THROWS_AS((void)sample(nan, 1.0, 0.8), invalid_input);
  CHECK_THROWS_AS((void)sample(1.2, nan, 0.8), invalid_input);
  CHECK_THROWS_AS((void)sample(1.2, 0.0, 0.8), invalid_input);
  CHECK_THROWS_AS((void)sample(1.2, 1.0, nan), invalid_input);
  CHECK_THROWS_AS((void)sample(1.2, 1.0, 0.8, 0), invalid_input);
  CHECK_THROWS_AS((void)sample(1.2, 1.0, 0.8, 2700, 0), invalid_input);
  const auto full = [](double w, double grain, double water) {
    return vs::phases_when_saturated({.water_content = w,
                                      .grain_density = kilograms_per_cubic_metre(grain),
                                      .water_density = kilograms_per_cubic_metre(water)});
  };
  CHECK_THROWS_AS((void)full(0.0, 2700, 1000), invalid_input);
  CHECK_THROWS_AS((void)full(nan, 2700, 1000), invalid_input);
  CHECK_THROWS_AS((void)full(0.3, 0, 1000), invalid_input);
  CHECK_THROWS_AS((void)full(0.3, 2700, nan), invalid_input);
}
