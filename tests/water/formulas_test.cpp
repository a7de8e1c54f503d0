// SPDX-License-Identifier: BSL-1.0
// Every coefficient against a second transcription of the printed formulas (tests/live/water_formulas.py), at the corners of
// the ranges and at random states, to rounding. What a printed table of four digits cannot see is seen here.
#include <tankwright/water.hpp>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {

practical_salinity sp(const reference_row& row) { return practical_salinity{row["S_P"]}; }
absolute_salinity sa(const reference_row& row) { return absolute_salinity::from_grams_per_kilogram(row["SA"]); }
temperature t90(const reference_row& row) { return celsius(row["t90"]); }
tww::lit_seawater lit(const reference_row& row) {
  return {.salinity = sp(row), .temperature = t90(row), .wavelength = nanometres(row["nm"])};
}

}  // namespace

TEST_CASE("formulas: light") {
  check_rows(live_rows("water_formulas_light.csv"),
             {{"tankwright::water::refractive_index_millard_seaver",
               [](const auto& row) { return tww::refractive_index_millard_seaver(lit(row), extrapolate).value(); }},
              {"tankwright::water::refractive_index_quan_fry",
               [](const auto& row) { return tww::refractive_index_quan_fry(lit(row), extrapolate).value(); }}});
}

TEST_CASE("formulas: heat, viscosity, conduction") {
  check_rows(
      live_rows("water_formulas_heat.csv"),
      {{"tankwright::water::specific_heat_eos80",
        [](const auto& row) { return tww::specific_heat_eos80(sp(row), t90(row)).value(); }},
       {"tankwright::water::specific_heat_sharqawy",
        [](const auto& row) { return tww::specific_heat_sharqawy(sa(row), t90(row)).value(); }},
       {"tankwright::water::latent_heat_of_water",
        [](const auto& row) { return tww::latent_heat_of_water(t90(row)).value(); }},
       {"tankwright::water::viscosity", [](const auto& row) { return tww::viscosity(sa(row), t90(row)).value(); }},
       {"tankwright::water::thermal_conductivity_jamieson_tudhope",
        [](const auto& row) { return tww::thermal_conductivity_jamieson_tudhope(sa(row), t90(row)).value(); }}});
}

TEST_CASE("formulas: vapour over seawater") {
  check_rows(
      live_rows("water_formulas_vapour.csv"),
      {{"tankwright::water::vapour_pressure_weiss_price",
        [](const auto& row) { return tww::vapour_pressure_weiss_price(sp(row), t90(row)).value(); }},
       {"tankwright::water::vapour_pressure_nayar",
        [](const auto& row) { return tww::vapour_pressure_nayar(sa(row), t90(row)).value(); }},
       {"tankwright::water::vapour_pressure", [](const auto& row) { return tww::vapour_pressure(t90(row)).value(); }}});
}

TEST_CASE("formulas: ammonium and oxygen") {
  check_rows(
      live_rows("water_formulas_ions.csv"),
      {{"tankwright::water::ammonium_pka_total",
        [](const auto& row) { return tww::ammonium_pka_total(sp(row), t90(row)).value(); }},
       {"tankwright::water::ammonium_pka_free",
        [](const auto& row) { return tww::ammonium_pka_free(sp(row), t90(row)).value(); }},
       {"tankwright::water::ammonium_pka_khoo",
        [](const auto& row) { return tww::ammonium_pka_khoo(sp(row), t90(row)).value(); }},
       {"tankwright::water::ammonium_pka_bell",
        [](const auto& row) { return tww::ammonium_pka_bell(sp(row), t90(row)).value(); }},
       {"tankwright::water::oxygen_saturation_concentration",
        [](const auto& row) { return tww::detail::oxygen_pressure_factor(row["atm"], row["vapour"], row["t90"]); }},
       {"tankwright::water::oxygen_saturation_benson_krause",
        [](const auto& row) {
          return in_milligrams_per_litre(tww::oxygen_saturation_benson_krause(sp(row), t90(row)));
        }},
       {"tankwright::water::oxygen_saturation_weiss",
        [](const auto& row) { return tww::oxygen_saturation_weiss(sp(row), t90(row)).value(); }}});
}

TEST_CASE("formulas: remembered") {
  check_rows(live_rows("water_formulas_remembered.csv"),
             {{"tankwright::water::water_activity", [](const auto& row) { return raw(tww::water_activity(sp(row))); }},
              {"tankwright::water::osmotic_coefficient",
               [](const auto& row) { return tww::osmotic_coefficient(sa(row), t90(row)); }},
              {"tankwright::water::viscosity_millero",
               [](const auto& row) { return tww::detail::viscosity_millero(row["S_P"], row["t68"], row["rho"]); }}});
}

TEST_CASE("formulas: the slopes of the saturation pressure are those of its logarithm") {
  const evidence slopes{"tankwright::water::vapour_pressure", kind::identity, "slope and curvature by differences"};
  for (long double kelvin = 273.15L; kelvin < 473.0L; kelvin += 10.0L) {
    const long double h = 0.01L;
    const auto at = [&](long double x) { return tww::kernel::ln_saturation_hyland_wexler(x); };
    const auto middle = at(kelvin), above = at(kelvin + h), below = at(kelvin - h);
    TW_CHECK(slopes, static_cast<double>(middle.slope), static_cast<double>((above.value - below.value) / (2 * h)),
             relative(1e-8));
    TW_CHECK(slopes, static_cast<double>(middle.curvature), static_cast<double>((above.slope - below.slope) / (2 * h)),
             relative(1e-7));
  }
}
