// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/moist_air.hpp>
#include <tankwright/room/wet_bulb.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {

absolute_pressure pressure_of(const reference_row& row) {
  return row.has("P") ? absolute_pressure{pascals(row["P"])} : standard_atmosphere;
}

/// The air of a row: by relative humidity, humidity ratio or vapour pressure.
twr::air air_of(const reference_row& row) {
  if (row.has("W")) {
    return twr::air_from(twr::air_of_humidity_ratio{.temperature = celsius(row["t"]),
                                                    .ratio = twr::humidity_ratio::from_kilograms_per_kilogram(row["W"]),
                                                    .pressure = pressure_of(row)});
  }
  return {.temperature = celsius(row["t"]),
          .humidity = relative_humidity::from_percent(row["RH"]),
          .pressure = pressure_of(row)};
}

double altitude(const reference_row& row) { return in_pascals(twr::pressure_at_altitude(metres(row["z"])).value()); }
double ratio(const reference_row& row) { return twr::humidity_ratio_of(air_of(row)).value(); }
double dew(const reference_row& row) {
  const temperature t = twr::dew_point(air_of(row));
  return row.unit == "F" ? in_fahrenheit(t) : in_celsius(t);
}
double volume_of(const reference_row& row) {
  return in_cubic_metres_per_kilogram(twr::specific_volume_of(air_of(row)));
}
double density_of(const reference_row& row) {
  return in_kilograms_per_cubic_metre(twr::moist_air_density(air_of(row)));
}
double enthalpy_of(const reference_row& row) {
  const specific_energy h = twr::enthalpy(air_of(row));
  return row.unit == "J/kg" ? in_joules_per_kilogram(h) : in_kilojoules_per_kilogram(h);
}
double vapour_density(const reference_row& row) {
  const double here = in_grams_per_litre(twr::absolute_humidity(air_of(row)));
  if (!row.has("minus_t")) return 1e3 * here;
  const twr::air other{.temperature = celsius(row["minus_t"]),
                       .humidity = relative_humidity::from_percent(row["minus_RH"])};
  return 1e3 * (here - in_grams_per_litre(twr::absolute_humidity(other)));
}
double ratio_of_vapour(const reference_row& row) {
  const pressure vapour =
      row.has("p") ? pascals(row["p"]) : row["factor"] * twr::saturation_pressure(celsius(row["t"]));
  return twr::humidity_ratio_from_vapour_pressure(vapour, pressure_of(row)).value();
}

}  // namespace

TEST_CASE("moist air: reference table") {
  check_rows(reference_rows("room/moist_air.csv"),
             {{"tankwright::room::humidity_ratio_of", ratio},
              {"tankwright::room::humidity_ratio_from_vapour_pressure", ratio_of_vapour},
              {"tankwright::room::dew_point", dew},
              {"tankwright::room::specific_volume_of", volume_of},
              {"tankwright::room::moist_air_density", density_of},
              {"tankwright::room::enthalpy", enthalpy_of},
              {"tankwright::room::absolute_humidity", vapour_density},
              {"tankwright::room::pressure_at_altitude", altitude}});
}

TEST_CASE("moist air: random states against PsychroLib") {
  const auto saturation = [](const reference_row& row) {
    return in_pascals(twr::saturation_pressure(celsius(row["t"])));
  };
  const auto vapour = [](const reference_row& row) { return in_pascals(twr::vapour_pressure(air_of(row))); };
  const auto wet = [](const reference_row& row) { return in_celsius(twr::wet_bulb(air_of(row))); };
  const auto from = [](const reference_row& row) {
    if (row.text("by") == "W") return air_of(row).humidity.get().value();
    if (row.text("by") == "dew") {
      return twr::air_from(twr::air_of_dew_point{.temperature = celsius(row["t"]),
                                                 .dew_point = celsius(row["dew"]),
                                                 .pressure = pressure_of(row)})
          .humidity.get()
          .value();
    }
    return twr::air_from(twr::air_of_wet_bulb{.temperature = celsius(row["t"]),
                                              .wet_bulb = celsius(row["wb"]),
                                              .pressure = pressure_of(row)})
        .humidity.get()
        .value();
  };
  check_rows(live_rows("room_moist_air.csv"), {{"tankwright::room::saturation_pressure", saturation},
                                               {"tankwright::room::vapour_pressure", vapour},
                                               {"tankwright::room::humidity_ratio_of", ratio},
                                               {"tankwright::room::dew_point", dew},
                                               {"tankwright::room::specific_volume_of", volume_of},
                                               {"tankwright::room::moist_air_density", density_of},
                                               {"tankwright::room::enthalpy", enthalpy_of},
                                               {"tankwright::room::wet_bulb", wet},
                                               {"tankwright::room::air_from", from},
                                               {"tankwright::room::pressure_at_altitude", altitude}});
}

TEST_CASE("moist air: inverses, and the two densities") {
  const evidence dew_back{"tankwright::room::air_from", kind::identity, "inverse of dew_point"};
  const evidence ratio_back{"tankwright::room::air_from", kind::identity, "inverse of humidity_ratio_of"};
  const evidence dry{"tankwright::room::dry_air_density", kind::identity, "moist density / (1 + W), and 1 / v"};
  const evidence below{"tankwright::room::dew_point", kind::property, "not above the temperature"};
  for (double t = -40.0; t <= 60.0; t += 4.7) {
    for (double h = 0.02; h <= 1.0; h += 0.07) {
      for (const double p : {70e3, 101325.0, 106e3}) {
        const twr::air a{.temperature = celsius(t),
                         .humidity = relative_humidity::from_fraction(h),
                         .pressure = absolute_pressure{pascals(p)}};
        const temperature d = twr::dew_point(a);
        TW_HOLDS(below, in_celsius(d) <= t + 1e-10);
        const auto by_dew =
            twr::air_from(twr::air_of_dew_point{.temperature = a.temperature, .dew_point = d, .pressure = a.pressure});
        TW_CHECK(dew_back, by_dew.humidity.get(), a.humidity.get(), relative(2e-12));
        const auto by_ratio = twr::air_from(twr::air_of_humidity_ratio{
            .temperature = a.temperature, .ratio = twr::humidity_ratio_of(a), .pressure = a.pressure});
        TW_CHECK(ratio_back, by_ratio.humidity.get(), a.humidity.get(), relative(1e-13));
        const double rho = twr::dry_air_density(a).value();
        TW_CHECK(dry, rho * (1.0 + twr::humidity_ratio_of(a).value()), twr::moist_air_density(a).value(),
                 relative(1e-14));
        TW_CHECK(dry, rho * twr::specific_volume_of(a).value(), 1.0, relative(1e-14));
      }
    }
  }
}

TEST_CASE("moist air: edges of the ranges") {
  const auto with_temperature = [](double t, range_policy policy) {
    return twr::air{.temperature = celsius(t),
                    .humidity = relative_humidity::from_percent(policy == extrapolate ? 0.0 : 1.0)};
  };
  check_edges(twr::saturation_temperature_limits,
              [&](double t, range_policy policy) { return twr::vapour_pressure(with_temperature(t, policy), policy); });
  check_edges(twr::relative_humidity_limits, [](double h, range_policy policy) {
    return twr::enthalpy({.temperature = celsius(22.0), .humidity = relative_humidity::from_fraction(h)}, policy);
  });
  check_edges(twr::air_pressure_limits, [](double p, range_policy policy) {
    return twr::moist_air_density({.temperature = celsius(-90.0),
                                   .humidity = relative_humidity::from_percent(0.0),
                                   .pressure = absolute_pressure{pascals(p)}},
                                  policy);
  });
  for (const double bad : {std::nan(""), -1.0 / 0.0, 1.0 / 0.0}) {
    CHECK_THROWS_AS((void)twr::pressure_at_altitude(metres(bad), extrapolate), invalid_input);
    CHECK_THROWS_AS((void)twr::air_from(twr::air_of_dew_point{.temperature = celsius(20.0), .dew_point = celsius(bad)}),
                    invalid_input);
    CHECK_THROWS_AS((void)twr::air_from(twr::air_of_humidity_ratio{
                        .temperature = celsius(20.0), .ratio = twr::humidity_ratio::from_kilograms_per_kilogram(bad)}),
                    invalid_input);
    CHECK_THROWS_AS((void)twr::humidity_ratio_from_vapour_pressure(pascals(bad), standard_atmosphere), invalid_input);
  }
  CHECK_THROWS_AS((void)twr::pressure_at_altitude(metres(11001.0)), out_of_range);
  CHECK_THROWS_AS((void)twr::pressure_at_altitude(metres(-5001.0)), out_of_range);
  CHECK_THROWS_AS((void)twr::air_from(twr::air_of_humidity_ratio{
                      .temperature = celsius(20.0), .ratio = twr::humidity_ratio::from_kilograms_per_kilogram(-1e-6)}),
                  invalid_input);
  CHECK_THROWS_AS(
      (void)twr::air_from(twr::air_of_dew_point{.temperature = celsius(20.0), .dew_point = celsius(-101.0)}),
      out_of_range);
  CHECK_THROWS_AS((void)twr::pressure_at_altitude(metres(50e3), extrapolate), invalid_input);
}

TEST_CASE("moist air: a mistake is named with what to write instead") {
  const auto message = [](auto call) -> std::string {
    try {
      call();
    } catch (const error& e) {
      return e.what();
    }
    return "nothing was thrown";
  };
  CHECK(message([] {
          (void)twr::dew_point({.temperature = celsius(22.0), .humidity = relative_humidity::from_fraction(60.0)});
        }) ==
        "tankwright::room::dew_point: relative humidity = 60 is not possible; expected 0 to 1. "
        "For 60 % write relative_humidity::from_percent(60)");
  CHECK(message([] {
          (void)twr::wet_bulb({.temperature = celsius(22.0),
                               .humidity = relative_humidity::from_percent(60.0),
                               .pressure = absolute_pressure{pascals(101.325)}});
        }) ==
        "tankwright::room::wet_bulb: air pressure = 101.325 Pa is nearly a vacuum; "
        "for 101.325 kPa write absolute_pressure(kilopascals(101.325))");
  CHECK(message([] {
          (void)twr::dew_point({.temperature = celsius(22.0), .humidity = relative_humidity::from_percent(0.0)});
        }) == "tankwright::room::dew_point: relative humidity = 0 is air without water: it has no dew point");
  CHECK(message([] {
          (void)twr::air_from(twr::air_of_humidity_ratio{.temperature = celsius(20.0),
                                                         .ratio = twr::humidity_ratio::from_grams_per_kilogram(20.0)});
        }).ends_with(" % relative humidity at 20 degC: water would condense"));
  CHECK(message([] {
          (void)twr::vapour_pressure(
              {.temperature = celsius(120.0), .humidity = relative_humidity::from_percent(100.0)});
        }).ends_with("is not below the air pressure, 101325 Pa: no air is left"));
  CHECK(message([] {
          (void)twr::vapour_pressure(
              {.temperature = celsius(-120.0), .humidity = relative_humidity::from_percent(50.0)});
        }) ==
        "tankwright::room::vapour_pressure: temperature = -120 degC is outside the published range -100 to 200 degC "
        "(Hyland and Wexler 1983); pass tankwright::extrapolate to go past it");
}
