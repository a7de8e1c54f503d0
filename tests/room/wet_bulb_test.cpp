// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/wet_bulb.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"
#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {

absolute_pressure pressure_of(const reference_row& row) {
  return row.has("P") ? absolute_pressure{pascals(row["P"])} : standard_atmosphere;
}
double wet_bulb(const reference_row& row) {
  const bool f = row.inputs.at("t").ends_with("F");
  const temperature wb = twr::wet_bulb({.temperature = f ? fahrenheit(row["t"]) : celsius(row["t"]),
                                        .humidity = relative_humidity::from_percent(row["RH"]),
                                        .pressure = pressure_of(row)});
  return f ? in_fahrenheit(wb) : in_celsius(wb);
}
double psychrometer(const reference_row& row) {
  const twr::air a = twr::air_from(twr::air_of_wet_bulb{
      .temperature = celsius(row["t"]), .wet_bulb = celsius(row["wb"]), .pressure = pressure_of(row)});
  const std::string want = row.text("want");
  if (want == "W") return twr::humidity_ratio_of(a).value();
  if (want == "RH") return a.humidity.get().value();
  if (want == "dew point") return in_celsius(twr::dew_point(a));
  if (want == "enthalpy") return in_kilojoules_per_kilogram(twr::enthalpy(a));
  if (want == "specific volume") return in_cubic_metres_per_kilogram(twr::specific_volume_of(a));
  throw std::runtime_error("unknown wish: " + want);
}

}  // namespace

TEST_CASE("wet bulb: reference table") {
  check_rows(reference_rows("room/wet_bulb.csv"),
             {{"tankwright::room::wet_bulb", wet_bulb}, {"tankwright::room::air_from", psychrometer}});
}

TEST_CASE("wet bulb: the equation holds, there and back, over the whole range") {
  const evidence solves{"tankwright::room::wet_bulb", kind::identity, "eq. 33 or 35 at the result gives W"};
  const evidence back{"tankwright::room::air_from", kind::identity, "inverse of wet_bulb"};
  const evidence between{"tankwright::room::wet_bulb", kind::property, "between dew point and dry bulb"};
  const evidence long_double{"tankwright::room::wet_bulb", kind::identity, "the same equation solved in long double"};
  for (const double p : {70e3, 101325.0, 110e3}) {
    for (const double t :
         {-60.0, -30.0, -5.0, -0.001, 0.0, 0.005, 0.01, 1.0, 3.0, 5.0, 10.0, 22.0, 35.0, 60.0, 90.0, 130.0, 199.0}) {
      for (const double h : {0.0, 1e-4, 0.01, 0.05, 0.1, 0.3, 0.5, 0.7, 0.9, 0.99, 1.0}) {
        CAPTURE(t);
        CAPTURE(h);
        const double vapour = h * in_pascals(twr::saturation_pressure(celsius(t)));
        if (vapour >= p) continue;
        const twr::air a{.temperature = celsius(t),
                         .humidity = relative_humidity::from_fraction(h),
                         .pressure = absolute_pressure{pascals(p)}};
        const temperature wb = twr::wet_bulb(a);
        const double s = in_celsius(wb);
        const double saturated = twr::detail::humidity_ratio(twr::detail::saturation_pressure(in_kelvins(wb)), p);
        const double ratio =
            s >= 0.0 ? ((2501.0 - 2.326 * s) * saturated - 1.006 * (t - s)) / (2501.0 + 1.86 * t - 4.186 * s)
                     : ((2830.0 - 0.24 * s) * saturated - 1.006 * (t - s)) / (2830.0 + 1.86 * t - 2.1 * s);
        TW_CHECK(solves, ratio, twr::humidity_ratio_of(a).value(), (tolerance{.absolute = 2e-13, .relative = 1e-12}));
        TW_CHECK(
            back,
            twr::air_from(twr::air_of_wet_bulb{.temperature = a.temperature, .wet_bulb = wb, .pressure = a.pressure})
                .humidity.get(),
            a.humidity.get(), (tolerance{.absolute = 1e-11, .relative = 1e-11}));
        TW_HOLDS(back, twr::air_from(
                           twr::air_of_wet_bulb{.temperature = a.temperature, .wet_bulb = wb, .pressure = a.pressure})
                               .humidity.get()
                               .value() >= 0.0);
        TW_HOLDS(between, s <= in_celsius(a.temperature) + 1e-12);
        if (h >= 0.01 && (s >= 0.0 || h < 1.0)) TW_HOLDS(between, s >= in_celsius(twr::dew_point(a)) - 0.05);
        const auto exact = twr::detail::wet_bulb<long double>(
            "", static_cast<long double>(t), static_cast<long double>(vapour), static_cast<long double>(p));
        // At the triple point the step between ice and water, 6e-9 of the pressure, is all that can be asked.
        TW_CHECK(long_double, s, static_cast<double>(exact),
                 tolerance{.absolute = std::fabs(s - 0.01) < 1e-6 ? 1e-7 : 2e-10});
      }
    }
  }
}

TEST_CASE("wet bulb: near freezing the wet wick is preferred, and no air is left without an answer") {
  // At 5 degC a humidity ratio between the two equations' values at 0 degC belongs to a wet and to an iced wick.
  const double t = 5.0;
  const double saturated = twr::detail::humidity_ratio(in_pascals(twr::saturation_pressure(celsius(0.0))), 101325.0);
  const double wet = twr::detail::ratio_from_wet_bulb(twr::detail::wet_wick<double>, t, 0.0, saturated);
  const double iced = twr::detail::ratio_from_wet_bulb(twr::detail::iced_wick<double>, t, 0.0, saturated);
  CHECK(wet < iced);
  const auto at = [&](double ratio) {
    return in_celsius(twr::wet_bulb(twr::air_from(twr::air_of_humidity_ratio{
        .temperature = celsius(t), .ratio = twr::humidity_ratio::from_kilograms_per_kilogram(ratio)})));
  };
  CHECK(at(0.5 * (wet + iced)) >= 0.0);
  CHECK(at(wet + 1e-9) >= 0.0);
  CHECK(at(wet - 1e-9) < 0.0);
  // Equation 35 by halving: what a wick of ice shows there.
  double low = -1.0, high = 0.0;
  for (int i = 0; i < 60; ++i) {
    const double s = 0.5 * (low + high);
    const double w = twr::detail::humidity_ratio(in_pascals(twr::saturation_pressure(celsius(s))), 101325.0);
    (((2830.0 - 0.24 * s) * w - 1.006 * (t - s)) / (2830.0 + 1.86 * t - 2.1 * s) < wet - 1e-9 ? low : high) = s;
  }
  CHECK(low < -0.1);
  CHECK(std::fabs(at(wet - 1e-9) - low) < 1e-9);
}

TEST_CASE("wet bulb: beside the triple point too, where the slope has a kink") {
  const evidence solves{"tankwright::room::wet_bulb", kind::identity, "the inverse of eq. 33"};
  for (double t = 1.0; t <= 20.0; t += 0.5) {
    for (double s = 0.00021; s < 0.03; s += 0.0005) {
      const double saturated = twr::detail::humidity_ratio(in_pascals(twr::saturation_pressure(celsius(s))), 101325.0);
      const double w = ((2501.0 - 2.326 * s) * saturated - 1.006 * (t - s)) / (2501.0 + 1.86 * t - 4.186 * s);
      if (w < 0.0) continue;
      const auto a = twr::air_from(twr::air_of_humidity_ratio{
          .temperature = celsius(t), .ratio = twr::humidity_ratio::from_kilograms_per_kilogram(w)});
      TW_CHECK(solves, in_celsius(twr::wet_bulb(a)), s, tolerance{.absolute = 1e-10});
    }
  }
}

TEST_CASE("wet bulb: whatever is possible has one") {
  const evidence between{"tankwright::room::wet_bulb", kind::property, "not above the dry bulb"};
  for (const double p : {1e3, 22640.0, 101325.0, 1e6}) {
    for (double t = -150.0; t <= 370.0; t += 4.0) {
      for (const double h : {0.0, 1e-9, 1e-6, 1e-3, 0.01, 0.1, 0.3, 0.6, 0.9, 1.0}) {
        const double vapour = h * twr::detail::saturation_pressure(t + 273.15);
        if (vapour < p) TW_HOLDS(between, twr::detail::wet_bulb<double>("", t, vapour, p) <= t);
      }
    }
  }
}

TEST_CASE("wet bulb: at 0 degC the wick is wet, below it iced") {
  const auto ratio = [](double t, double s) {
    return twr::humidity_ratio_of(
               twr::air_from(twr::air_of_wet_bulb{.temperature = celsius(t), .wet_bulb = celsius(s)}))
        .value();
  };
  const auto saturated = [](double s) {
    return twr::detail::humidity_ratio(in_pascals(twr::saturation_pressure(celsius(s))), 101325.0);
  };
  for (const double s : {0.0, 0.0005}) {
    const double by_hand =
        ((2501.0 - 2.326 * s) * saturated(s) - 1.006 * (5.0 - s)) / (2501.0 + 1.86 * 5.0 - 4.186 * s);
    CHECK(compare(ratio(5.0, s), by_hand, relative(1e-10)).good);
  }
  const double s = -0.0005;
  const double iced = ((2830.0 - 0.24 * s) * saturated(s) - 1.006 * (5.0 - s)) / (2830.0 + 1.86 * 5.0 - 2.1 * s);
  CHECK(compare(ratio(5.0, s), iced, relative(1e-10)).good);
}

TEST_CASE("wet bulb: edges and impossible pairs") {
  const auto bulbs = [](double t, double s) {
    return twr::air_from(twr::air_of_wet_bulb{.temperature = celsius(t), .wet_bulb = celsius(s)});
  };
  check_refusals({TW_REFUSED("room::air_from", "wet bulb", bulbs(20.0, 21.0)),
                  TW_REFUSED("room::air_from", "wet bulb", bulbs(20.0, 2.0)),
                  // Saturated at the wet bulb it would be 101.4 kPa of vapour, and no air.
                  TW_REFUSED("room::air_from", "vapour pressure", bulbs(150.0, 100.0))});
  for (const double s : {-101.0, 101.0}) {
    const twr::air_of_wet_bulb state{.temperature = celsius(150.0), .wet_bulb = celsius(s)};
    CHECK_THROWS_AS((void)twr::air_from(state), out_of_range);
  }
  const auto pair = [](double t, double s) {
    return twr::air_from(twr::air_of_wet_bulb{.temperature = celsius(t), .wet_bulb = celsius(s)});
  };
  CHECK_THROWS_WITH_AS((void)pair(20.0, 21.0),
                       doctest::Contains("is above the dry bulb, 20 degC: change the thermometers over"),
                       invalid_input);
  CHECK_THROWS_WITH_AS((void)pair(20.0, 2.0), doctest::Contains("is lower than dry air of 20 degC can cool a wick"),
                       invalid_input);
  CHECK_THROWS_AS((void)twr::wet_bulb(
                      {.temperature = celsius(20.0), .humidity = relative_humidity::from_percent(__builtin_nan(""))}),
                  invalid_input);
}
