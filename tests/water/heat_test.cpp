// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/heat.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence rounding{"tankwright::water::specific_heat", kind::identity, "the same formula in long double"};
const evidence derivative{"tankwright::water::specific_heat", kind::identity, "the slope of the enthalpy"};
const evidence eos80_close{"tankwright::water::specific_heat_eos80", kind::property, "within 4.5 J/(kg K) of TEOS-10"};
const evidence sharqawy_close{"tankwright::water::specific_heat_sharqawy", kind::property, "within 0.28 % of TEOS-10"};
const evidence air{"tankwright::water::latent_heat", kind::property, "0.1 % below pure water at its own pressure"};

practical_salinity salinity_of(const reference_row& row) { return practical_salinity{row["S_P"]}; }
temperature temperature_of(const reference_row& row) {
  return celsius(row.has("t68") ? row["t68"] / 1.00024 : row["t90"]);
}
double specific_heat(const reference_row& row) {
  return in_joules_per_kilogram_kelvin(tww::specific_heat(salinity_of(row), temperature_of(row)));
}
double latent_heat(const reference_row& row) {
  return in_joules_per_kilogram(tww::latent_heat(salinity_of(row), temperature_of(row)));
}
double latent_heat_of_water(const reference_row& row) {
  const specific_energy heat = tww::latent_heat_of_water(temperature_of(row));
  if (row.unit == "kJ/kg") return in_kilojoules_per_kilogram(heat);
  return in_joules_per_kilogram(heat) * (1.0 - row["S"] / 1000.0);  // per kilogram of seawater dried out
}
}  // namespace

TEST_CASE("heat: reference table") {
  check_rows(reference_rows("water/heat.csv"),
             {{"tankwright::water::specific_heat", specific_heat},
              {"tankwright::water::specific_heat_eos80",
               [](const reference_row& row) {  // the printed table goes to 40 degC, the range to 35
                 return in_joules_per_kilogram_kelvin(
                     tww::specific_heat_eos80(salinity_of(row), temperature_of(row), extrapolate));
               }},
              {"tankwright::water::specific_heat_sharqawy",
               [](const reference_row& row) {
                 const auto s = absolute_salinity::from_grams_per_kilogram(row["S_A"]);
                 return in_joules_per_kilogram_kelvin(tww::specific_heat_sharqawy(s, temperature_of(row)));
               }},
              {"tankwright::water::latent_heat", latent_heat},
              {"tankwright::water::latent_heat_of_water", latent_heat_of_water}});
}

TEST_CASE("heat: random states against the TEOS-10 toolbox and IAPWS-95") {
  check_rows(live_rows("water_heat.csv"),
             {{"tankwright::water::specific_heat", specific_heat}, {"tankwright::water::latent_heat", latent_heat}});
  check_rows(live_rows("water_heat_of_water.csv"), {{"tankwright::water::latent_heat_of_water", latent_heat_of_water}});
}

TEST_CASE("heat: rounding, the slope of the enthalpy, and the distance between formulas") {
  for (double s = 0.0; s <= 40.0; s += 2.0) {
    for (double t = 0.5; t <= 34.5; t += 1.7) {
      const practical_salinity sp{s};
      const auto cp = tww::specific_heat(sp, celsius(t));
      const long double x = std::sqrt(0.0248826675584615L * 35.16504L / 35.0L * static_cast<long double>(s));
      const long double y = static_cast<long double>(in_celsius(celsius(t))) / 40.0L;
      TW_CHECK(rounding, cp, joules_per_kilogram_kelvin(static_cast<double>(tww::detail::teos10_specific_heat(x, y))),
               relative(2e-15));
      const long double step = 1e-4L;
      const long double slope =
          (tww::detail::teos10_enthalpy(x, y + step) - tww::detail::teos10_enthalpy(x, y - step)) / (80.0L * step);
      TW_CHECK(derivative, cp, joules_per_kilogram_kelvin(static_cast<double>(slope)), relative(1e-8));
      TW_CHECK(eos80_close, tww::specific_heat_eos80(sp, celsius(t)), cp, within(joules_per_kilogram_kelvin(4.5)));
      TW_CHECK(sharqawy_close, tww::specific_heat_sharqawy(tww::absolute_from_practical(sp), celsius(t)), cp,
               relative(2.8e-3));
      TW_CHECK(air, tww::latent_heat(sp, celsius(t)), tww::latent_heat_of_water(celsius(t)), relative(1.5e-3));
    }
  }
}

TEST_CASE("heat: edges of the ranges") {
  const auto edges = [](auto function, const limits& salinity, const limits& warmth) {
    check_edges(salinity, [function](double s, range_policy policy) {
      return function(practical_salinity{s}, celsius(25.0), policy);
    });
    check_edges(warmth, [function](double t, range_policy policy) {
      return function(practical_salinity{35.0}, celsius(t), policy);
    });
  };
  edges(tww::specific_heat, tww::practical_salinity_limits, tww::gibbs_temperature_limits);
  edges(tww::specific_heat_eos80, tww::specific_heat_eos80_salinity_limits,
        tww::specific_heat_eos80_temperature_limits);
  edges(tww::latent_heat, tww::latent_heat_salinity_limits, tww::latent_heat_temperature_limits);
  check_edges(tww::specific_heat_sharqawy_salinity_limits, [](double s, range_policy policy) {
    return tww::specific_heat_sharqawy(absolute_salinity::from_grams_per_kilogram(s), celsius(25.0), policy);
  });
  check_edges(tww::specific_heat_sharqawy_temperature_limits, [](double t, range_policy policy) {
    return tww::specific_heat_sharqawy(absolute_salinity::from_grams_per_kilogram(35.0), celsius(t), policy);
  });
  check_edges(tww::latent_heat_of_water_temperature_limits,
              [](double t, range_policy policy) { return tww::latent_heat_of_water(celsius(t), policy); });
}
