// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/condensation.hpp>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {
twr::building_element pane(double u, double inside, double outside, double resistance = 0.13) {
  return {.transmittance = watts_per_square_metre_kelvin(u),
          .inside = celsius(inside),
          .outside = celsius(outside),
          .surface_resistance = square_metre_kelvins_per_watt(resistance)};
}
}  // namespace

TEST_CASE("condensation: reference table") {
  const auto lowest = [](const reference_row& row) {
    return in_celsius(twr::lowest_surface_temperature(air_of(row["t"], row["RH"])));
  };
  const auto factor = [](const reference_row& row) {
    return twr::lowest_temperature_factor(air_of(row["t"], row["RH"]), celsius(row["outside"])).value();
  };
  const auto highest = [](const reference_row& row) {
    return twr::highest_humidity(pane(row["U"], row["t"], row["outside"], row["Rsi"])).value();
  };
  check_rows(reference_rows("room/condensation.csv"), {{"tankwright::room::lowest_surface_temperature", lowest},
                                                       {"tankwright::room::lowest_temperature_factor", factor},
                                                       {"tankwright::room::highest_humidity", highest}});
}

TEST_CASE("condensation: the plane element") {
  const evidence definition{"tankwright::room::temperature_factor", kind::identity, "(T_si - T_e)/(T_i - T_e)"};
  const evidence flux{"tankwright::room::surface_temperature", kind::identity,
                      "the heat through the surface film is that through the pane"};
  for (const double u : {0.3, 1.1, 2.8, 5.8}) {
    for (const double outside : {-15.0, 0.0, 12.0, 35.0}) {
      const auto e = pane(u, 22.0, outside);
      const double surface = in_celsius(twr::surface_temperature(e));
      TW_CHECK(definition, twr::temperature_factor(e).value(), (surface - outside) / (22.0 - outside), relative(1e-12));
      TW_CHECK(flux, (22.0 - surface) / 0.13, u * (22.0 - outside), relative(1e-11));
    }
  }
  // Cengel, Heat and Mass Transfer, example 3-2: 8 mm glass, k 0.78, films 10 and 40 W/(m2 K), 20 and -10 degC.
  const evidence cengel{"tankwright::room::surface_temperature", kind::from_memory, "Cengel, example 3-2: -2.2 degC"};
  const double u = 1.0 / (0.1 + 0.008 / 0.78 + 0.025);
  TW_CHECK(cengel, in_celsius(twr::surface_temperature(pane(u, 20.0, -10.0, 0.1))), -2.2, tolerance{.absolute = 0.05});
}

TEST_CASE("condensation: verdicts agree with the highest humidity") {
  const evidence ratio{"tankwright::room::highest_humidity", kind::identity,
                       "p_sat(surface)/p_sat(air) by the public functions"};
  const evidence agree{"tankwright::room::judge_surface", kind::identity,
                       "drips above highest_humidity and not below; mould likewise at 80 %"};
  const evidence margin{"tankwright::room::judge_surface", kind::identity, "margin = surface - dew point"};
  const evidence inverse{"tankwright::room::lowest_surface_temperature", kind::identity,
                         "the surface then has the wanted humidity"};
  for (const double u : {0.5, 1.1, 2.8, 5.8}) {
    const auto e = pane(u, 22.0, -5.0);
    const double drip = in_percent(twr::highest_humidity(e));
    const double mould = in_percent(twr::highest_humidity(e, twr::mould_humidity));
    TW_CHECK(
        ratio, drip,
        100.0 *
            (twr::saturation_pressure(twr::surface_temperature(e)) / twr::saturation_pressure(celsius(22.0))).value(),
        relative(1e-12));
    TW_CHECK(ratio, mould, 0.8 * drip, relative(1e-12));
    TW_HOLDS(agree, twr::judge_surface(e, air_of(22.0, drip + 1e-6)).drips);
    TW_HOLDS(agree, !twr::judge_surface(e, air_of(22.0, drip - 1e-6)).drips);
    TW_HOLDS(agree, twr::judge_surface(e, air_of(22.0, mould + 1e-6)).mould);
    TW_HOLDS(agree, !twr::judge_surface(e, air_of(22.0, mould - 1e-6)).mould);
    const auto v = twr::judge_surface(e, air_of(22.0, 40.0));
    TW_CHECK(margin, in_kelvin_steps(v.margin), in_kelvins(v.surface) - in_kelvins(twr::dew_point(air_of(22.0, 40.0))),
             relative(1e-9));
    CHECK(v.drips == (in_kelvin_steps(v.margin) < 0.0));
    CHECK(v.humidity.value() <= 1.0);
    CHECK(!v.caution.text.empty());
  }
  for (const double h : {35.0, 50.0, 70.0}) {
    const temperature t = twr::lowest_surface_temperature(air_of(24.0, h));
    TW_CHECK(inverse, in_pascals(twr::vapour_pressure(air_of(24.0, h))) / in_pascals(twr::saturation_pressure(t)), 0.8,
             relative(1e-11));
  }
}

TEST_CASE("condensation: mistakes") {
  CHECK(message_of([] {
          (void)twr::surface_temperature(pane(9.0, 20.0, 0.0));
        }).ends_with("leaves nothing for the wall: the surface resistance alone, 0.13 m2 K/W, is more than 1/U"));
  CHECK_THROWS_AS((void)twr::surface_temperature(pane(-1.0, 20.0, 0.0)), invalid_input);
  CHECK_THROWS_AS((void)twr::surface_temperature(pane(1.0, std::nan(""), 0.0)), invalid_input);
  CHECK_THROWS_AS((void)twr::temperature_factor(pane(1.0, 20.0, 0.0, -0.1)), invalid_input);
  CHECK(message_of([] {
          (void)twr::judge_surface(pane(1.0, 20.0, 0.0), air_of(22.0, 50.0));
        }).ends_with("is not that of the air, 22 degC"));
  CHECK(message_of([] {
          (void)twr::lowest_temperature_factor(air_of(22.0, 50.0), celsius(25.0));
        }).ends_with("is not below the room's, 22 degC: no wall is cooled"));
  CHECK(message_of([] {
          (void)twr::lowest_temperature_factor(air_of(22.0, 90.0), celsius(0.0));
        }).ends_with("is above what any surface may have, 0.8: dry the air first"));
  CHECK_THROWS_AS((void)twr::highest_humidity(pane(1.0, 20.0, 0.0), relative_humidity::from_percent(0.0)),
                  invalid_input);
  CHECK_THROWS_AS((void)twr::lowest_surface_temperature(air_of(22.0, 50.0), relative_humidity::from_fraction(80.0)),
                  invalid_input);
  CHECK_THROWS_AS((void)twr::lowest_surface_temperature(air_of(22.0, 0.0)), invalid_input);
}
