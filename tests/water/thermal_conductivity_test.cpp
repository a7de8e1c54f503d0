// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/thermal_conductivity.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence rounding{"tankwright::water::thermal_conductivity_of", kind::identity,
                        "the same formula in long double"};
const evidence two_scales{"tankwright::water::thermal_conductivity_of", kind::identity, "S_A = u_PS S_P"};
const evidence second_opinion{"tankwright::water::thermal_conductivity_jamieson_tudhope", kind::property,
                              "within 3.5 % of IAPWS"};

absolute_salinity grams_per_kilogram(double s) { return absolute_salinity::from_grams_per_kilogram(s); }

/// The guideline's table is at pressures that a tank does not have: its numbers go to the kernels.
double by_pressure(const reference_row& row) {
  const double salt = tww::detail::thermal_conductivity_of_salt(1e3 * row["S"], row["T"] - 273.15, row["P"]);
  return row.has("rho") ? salt + tww::detail::thermal_conductivity_iapws(row["T"], row["rho"]) : salt;
}
double at_the_surface(const reference_row& row) {
  return in_watts_per_metre_kelvin(tww::thermal_conductivity_of(grams_per_kilogram(row["S_A"]), celsius(row["t90"])));
}
double jamieson_tudhope(const reference_row& row) {
  return in_watts_per_metre_kelvin(
      tww::thermal_conductivity_jamieson_tudhope(grams_per_kilogram(row["S_A"]), celsius(row["t90"])));
}
}  // namespace

TEST_CASE("thermal conductivity: reference table") {
  check_rows(reference_rows("water/thermal_conductivity.csv"),
             {{"tankwright::water::thermal_conductivity_of", by_pressure},
              {"tankwright::water::thermal_conductivity_jamieson_tudhope", jamieson_tudhope}});
}

TEST_CASE("thermal conductivity: random states against IAPWS") {
  check_rows(live_rows("water_thermal_conductivity.csv"),
             {{"tankwright::water::thermal_conductivity_of", at_the_surface}});
}

TEST_CASE("thermal conductivity: rounding, the two salinity scales and the second opinion") {
  for (double s = 0.0; s <= 42.0; s += 3.0) {
    for (double t = 0.0; t <= 79.0; t += 2.9) {
      const auto sa = tww::absolute_from_practical(practical_salinity{s});
      const auto k = tww::thermal_conductivity_of(sa, celsius(t));
      const auto celsius_exact = static_cast<long double>(in_celsius(celsius(t)));
      const auto oracle = tww::detail::thermal_conductivity_iapws(static_cast<long double>(in_kelvins(celsius(t))),
                                                                  tww::kernel::density_teos10(0.0L, celsius_exact)) +
                          tww::detail::thermal_conductivity_of_salt(static_cast<long double>(in_grams_per_kilogram(sa)),
                                                                    celsius_exact, 0.101325L);
      TW_CHECK(rounding, k, watts_per_metre_kelvin(static_cast<double>(oracle)), relative(5e-14));
      TW_CHECK(two_scales, tww::thermal_conductivity_of(practical_salinity{s}, celsius(t)), k, relative(1e-15));
      TW_CHECK(second_opinion, tww::thermal_conductivity_jamieson_tudhope(sa, celsius(t)), k, relative(0.035));
    }
  }
}

TEST_CASE("thermal conductivity: edges of the ranges") {
  check_edges(tww::thermal_conductivity_salinity_limits, [](double s, range_policy policy) {
    return tww::thermal_conductivity_of(grams_per_kilogram(s), celsius(25.0), policy);
  });
  check_edges(tww::thermal_conductivity_temperature_limits, [](double t, range_policy policy) {
    return tww::thermal_conductivity_of(practical_salinity{35.0}, celsius(t), policy);
  });
  check_edges(tww::jamieson_tudhope_salinity_limits, [](double s, range_policy policy) {
    return tww::thermal_conductivity_jamieson_tudhope(grams_per_kilogram(s), celsius(25.0), policy);
  });
  check_edges(tww::jamieson_tudhope_temperature_limits, [](double t, range_policy policy) {
    return tww::thermal_conductivity_jamieson_tudhope(grams_per_kilogram(35.0), celsius(t), policy);
  });
}
