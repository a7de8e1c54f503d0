// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/density_eos80.hpp>

#include <tankwright/water/density.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence rounding{"tankwright::water::density_eos80", kind::identity, "the same formula in long double"};
const evidence fresh{"tankwright::water::pure_water_density_eos80", kind::identity, "seawater of salinity 0"};
const evidence agrees{"tankwright::water::density_eos80", kind::property, "within 0.012 kg/m3 of TEOS-10"};
const evidence to_its90{"tankwright::ipts68_celsius", kind::identity, "t68 = 1.00024 t90 (Saunders 1990)"};
const evidence from_its90{"tankwright::in_ipts68_celsius", kind::identity, "t68 = 1.00024 t90 (Saunders 1990)"};

temperature temperature_of(const reference_row& row) {
  return row.has("t68") ? ipts68_celsius(row["t68"]) : celsius(row["t90"]);
}
}  // namespace

TEST_CASE("density_eos80: reference table") {
  check_rows(
      reference_rows("water/density_eos80.csv"),
      {{"tankwright::water::density_eos80",
        [](const reference_row& row) {
          return in_kilograms_per_cubic_metre(tww::density_eos80(practical_salinity{row["S_P"]}, temperature_of(row)));
        }},
       {"tankwright::water::pure_water_density_eos80", [](const reference_row& row) {
          return in_kilograms_per_cubic_metre(tww::pure_water_density_eos80(temperature_of(row)));
        }}});
}

TEST_CASE("density_eos80: rounding, pure water, and the distance to TEOS-10") {
  for (double s = 0.0; s <= 42.0; s += 1.4) {
    for (double t = 0.0; t <= 40.0; t += 2.5) {
      const mass_density here = tww::density_eos80(practical_salinity{s}, celsius(t));
      const long double oracle = tww::detail::density_eos80<long double>(s, 1.00024L * static_cast<long double>(t));
      TW_CHECK(rounding, here, mass_density::from_value(static_cast<double>(oracle)), relative(4e-16));
      TW_CHECK(agrees, here, tww::density(practical_salinity{s}, celsius(t)), within(kilograms_per_cubic_metre(0.012)));
      if (s == 0.0) TW_CHECK(fresh, tww::pure_water_density_eos80(celsius(t)), here, tolerance{});
    }
  }
}

TEST_CASE("density_eos80: the old temperature scale") {
  TW_CHECK(to_its90, ipts68_celsius(25.006), celsius(25.0), within(kelvin_steps(1e-12)));
  TW_CHECK(from_its90, in_ipts68_celsius(celsius(25.0)), 25.006, tolerance{.absolute = 1e-12});
}

TEST_CASE("density_eos80: edges of the ranges") {
  check_edges(tww::practical_salinity_limits, [](double s, range_policy policy) {
    return tww::density_eos80(practical_salinity{s}, celsius(25.0), policy);
  });
  check_edges(tww::eos80_temperature_limits, [](double t, range_policy policy) {
    return tww::density_eos80(practical_salinity{40.0}, celsius(t), policy);
  });
  limits above_ice = tww::eos80_temperature_limits;
  above_ice.published.low = 0.0;
  check_edges(above_ice,
              [](double t, range_policy policy) { return tww::pure_water_density_eos80(celsius(t), policy); });
}
