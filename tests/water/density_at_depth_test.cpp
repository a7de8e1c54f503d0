// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/density_at_depth.hpp>

#include <tankwright/water/density.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence rounding{"tankwright::water::density_at_depth", kind::identity, "the same formula in long double"};
const evidence surface{"tankwright::water::density_at_depth", kind::property,
                       "at the surface within 0.02 kg/m3 of the exact Gibbs function (0.0015 for salinity 30 to 40)"};

absolute_salinity salt(double sa) { return absolute_salinity::from_grams_per_kilogram(sa); }

mass_density density_of(double sa, double ct, double p, range_policy policy = range_policy::published) {
  return tww::density_at_depth({.salinity = salt(sa),
                                .temperature = tww::conservative_temperature{celsius(ct)},
                                .pressure = gauge_pressure{decibars(p)}},
                               policy);
}

const std::map<std::string, row_handler> handlers{
    {"tankwright::water::density_at_depth",
     [](const reference_row& row) { return in_kilograms_per_cubic_metre(density_of(row["SA"], row["CT"], row["p"])); }},
    {"tankwright::water::conservative_temperature_at_surface", [](const reference_row& row) {
       return in_celsius(tww::conservative_temperature_at_surface(salt(row["SA"]), celsius(row["t90"])).value());
     }}};
}  // namespace

TEST_CASE("density_at_depth: reference table") {
  check_rows(reference_rows("water/density_at_depth.csv"),
             {{"tankwright::water::density_at_depth", handlers.at("tankwright::water::density_at_depth")}});
}

TEST_CASE("density_at_depth: random states against the TEOS-10 toolbox") {
  check_rows(live_rows("water_density_at_depth.csv"), handlers);
}

TEST_CASE("density_at_depth: rounding, and the surface against the exact form") {
  for (double sa = 0.0; sa <= 42.0; sa += 3.0) {
    for (double t = 0.0; t <= 35.0; t += 2.5) {
      const long double v = tww::detail::specific_volume_roquet<long double>(sa, t, 500.0L);
      TW_CHECK(rounding, density_of(sa, t, 500.0), kilograms_per_cubic_metre(static_cast<double>(1.0L / v)),
               relative(2e-15));
      const auto ct = tww::conservative_temperature_at_surface(salt(sa), celsius(t));
      const mass_density polynomial = density_of(sa, in_celsius(ct.value()), 0.0);
      const double allowed = sa >= 30.0 && sa <= 40.0 ? 0.0015 : 0.02;
      TW_CHECK(surface, polynomial, tww::density(salt(sa), celsius(t)), within(kilograms_per_cubic_metre(allowed)));
    }
  }
}

TEST_CASE("density_at_depth: edges of the ranges") {
  check_edges(tww::roquet_salinity_limits,
              [](double sa, range_policy policy) { return density_of(sa, 20.0, 10.0, policy); });
  check_edges(tww::conservative_temperature_limits,
              [](double ct, range_policy policy) { return density_of(35.0, ct, 10.0, policy); });
  check_edges(tww::roquet_pressure_limits,
              [](double p, range_policy policy) { return density_of(35.0, 20.0, p, policy); });
  check_edges(tww::absolute_salinity_limits, [](double sa, range_policy policy) {
    return tww::conservative_temperature_at_surface(salt(sa), celsius(20.0), policy);
  });
  check_edges(tww::gibbs_temperature_limits, [](double t, range_policy policy) {
    return tww::conservative_temperature_at_surface(salt(35.0), celsius(t), policy);
  });
}
