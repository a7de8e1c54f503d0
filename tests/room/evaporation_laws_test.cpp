// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/evaporation_laws.hpp>

#include <map>

#include "room/samples.hpp"
#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;
using twr::evaporation_law;

namespace {

evaporation_law law_named(const std::string& name) {
  static const std::map<std::string, evaporation_law> names{
      {"shah", evaporation_law::shah},
      {"ashrae_quiet", evaporation_law::ashrae_quiet},
      {"ashrae_in_use", evaporation_law::ashrae_in_use},
      {"carrier", evaporation_law::carrier},
      {"smith_1993", evaporation_law::smith_1993},
      {"smith_1994", evaporation_law::smith_1994},
      {"smith_1998", evaporation_law::smith_1998},
      {"vdi_2089_still", evaporation_law::vdi_2089_still},
      {"vdi_2089_covered", evaporation_law::vdi_2089_covered},
      {"vdi_1994", evaporation_law::vdi_1994},
      {"humidity_ratio_25_19", evaporation_law::humidity_ratio_25_19},
      {"rafferty", evaporation_law::rafferty},
      {"pauken", evaporation_law::pauken},
      {"box", evaporation_law::box},
      {"biasin_krumme", evaporation_law::biasin_krumme},
      {"iso_12596", evaporation_law::iso_12596},
      {"analogy", evaporation_law::analogy}};
  return names.at(name);
}

double per_hour_and_area(evaporation_law law, const twr::open_water& w) {
  return in_kilograms_per_square_metre_hour(twr::evaporation_rate(law, w));
}

twr::open_water fresh(double water, double air, double humidity, double speed = 0.0) {
  return {.water = seawater(water, 0.0), .air = air_of(air, humidity), .air_speed = metres_per_second(speed)};
}

/// The raw state of a condition, for what the public function does not ask: another water activity or diffusivity.
twr::detail::across<double> raw_of(double water, double air, double humidity, double activity) {
  return {water + 273.15,
          air + 273.15,
          activity * in_pascals(twr::saturation_pressure(celsius(water))),
          in_pascals(twr::vapour_pressure(air_of(air, humidity))),
          101325.0,
          0.0};
}

double rate_of(const reference_row& row) {
  const evaporation_law law = law_named(row.text("law"));
  if (row.has("W_water")) {  // water and air that have these humidity ratios
    const auto saturated = [](double ratio) {
      return twr::saturation_temperature(pascals(twr::detail::vapour_pressure(ratio, 101325.0)));
    };
    const auto in_air = twr::air_from(twr::air_of_humidity_ratio{
        .temperature = celsius(25.0), .ratio = twr::humidity_ratio::from_kilograms_per_kilogram(row["W_air"])});
    const twr::open_water w{.water = {.temperature = saturated(row["W_water"]), .salinity = practical_salinity{0.0}},
                            .air = in_air,
                            .air_speed = metres_per_second(row["v"])};
    return in_kilograms_per_square_metre_hour(twr::evaporation_rate(law, w)) * row["area"] / 3600.0;
  }
  if (row.has("psi_water")) {
    const double metric = twr::detail::rafferty_rate(row["psi_water"] - row["psi_air"], row["F"], row["ft_s"]);
    return in_pounds_per_hour(kilograms_per_hour(metric * in_square_metres(square_feet(row["ft2"]))));
  }
  if (row.text("want") == "speed coefficient") {
    const double rise = per_hour_and_area(law, fresh(25, 22, 50, 1.0)) - per_hour_and_area(law, fresh(25, 22, 50, 0.0));
    const double difference =
        in_pascals(twr::saturation_pressure(celsius(25.0)) - twr::vapour_pressure(air_of(22, 50)));
    return rise / 3600.0 * in_joules_per_kilogram(water::latent_heat_of_water(celsius(25.0))) / difference;
  }
  const double water = row["tw"];
  const double air = row["ta"];
  const double humidity = row["RH"];
  if (row.has("activity")) {
    return twr::detail::evaporation_rate(law, raw_of(water, air, humidity, row["activity"])) /
           twr::detail::evaporation_rate(law, raw_of(water, air, humidity, 1.0));
  }
  if (row.has("diffusivity")) {  // Sherwood and Pigford in place of Marrero and Mason
    const double film = 0.5 * (water + air) + 273.15;
    return twr::detail::analogy_rate(raw_of(water, air, humidity, 1.0),
                                     0.926e-6 * std::pow(film, 2.5) / ((film + 245.0) * 101.325));
  }
  const double rate = per_hour_and_area(law, fresh(water, air, humidity));
  if (row.text("want") == "rise per kelvin of water")
    return per_hour_and_area(law, fresh(water + 1, air, humidity)) / rate - 1;
  return row.has("area") ? rate * row["area"] : rate;
}

double density_difference(const reference_row& row) {
  return in_kilograms_per_cubic_metre(twr::dry_air_density(air_of(row["ta"], row["RH"])) -
                                      twr::dry_air_density(air_of(row["tw"], 100.0)));
}

double transfer_coefficient(const reference_row& row) {
  const double difference = in_kilograms_per_cubic_metre(twr::absolute_humidity(air_of(row["t"], 100.0)) -
                                                         twr::absolute_humidity(air_of(row["t"], row["RH"])));
  if (row.has("pan")) return row["E"] / (0.25 * std::numbers::pi * row["pan"] * row["pan"]) / difference;
  return row["E"] / 3600.0 / difference;
}

}  // namespace

TEST_CASE("evaporation laws: reference table") {
  const auto diffusivity = [](const reference_row& row) {
    return in_square_metres_per_second(
        twr::vapour_diffusivity(kelvins(row["T"]), absolute_pressure{pascals(row["P"])}));
  };
  const auto pounds = [](const reference_row& row) {
    return in_kilograms_per_hour(pounds_per_hour(row["lb_h_ft2"])) / in_square_metres(square_feet(1.0));
  };
  check_rows(reference_rows("room/evaporation_laws.csv"),
             {{"tankwright::room::evaporation_rate", rate_of},
              {"tankwright::room::dry_air_density", density_difference},
              {"tankwright::room::vapour_diffusivity", diffusivity},
              {"tankwright::room::absolute_humidity", transfer_coefficient},
              {"tankwright::pounds_per_hour", pounds}});
}

TEST_CASE("evaporation laws: Carrier's two unit systems, as printed, agree") {
  // (0.425 Btu/(h ft2 inHg)) per (ft/min) is printed as 0.0782 W s/(m3 Pa).
  const evidence carrier{"tankwright::room::evaporation_rate", kind::published,
                         "Carrier 1918 via Smith, Lof and Jones 1998, eq. 1: both unit systems printed"};
  const double inch_of_mercury = 3386.389;
  const double from_inches = in_watts(btu_per_hour(0.425)) / in_square_metres(square_feet(1.0)) / inch_of_mercury /
                             (in_metres(feet(1.0)) / 60.0);
  const auto rise = twr::detail::carrier_conductance(raw_of(25, 22, 50, 1.0), 1.0) -
                    twr::detail::carrier_conductance(raw_of(25, 22, 50, 1.0), 0.0);
  const double ours = rise / 3600.0 * 1e3 * twr::detail::latent_heat_kilojoules(298.15);
  TW_CHECK(carrier, ours, from_inches, relative(0.007));
}

TEST_CASE("evaporation laws: ASHRAE's two unit systems, as printed, agree") {
  // w = 4.0e-5 A (p_w - p_a) F_a in kg/s, m2, kPa; w = 0.1 A (p_w - p_a) F_a in lb/h, ft2, inHg.
  const evidence ashrae{"tankwright::room::evaporation_rate", kind::published,
                        "ASHRAE Handbook-HVAC Applications, natatoriums: 0.1 lb/(h ft2 inHg)"};
  const auto state = raw_of(25, 22, 50, 1.0);
  const double inches = (state.at_water - state.in_air) / 3386.389;
  const double pounds = 0.1 * inches;  // lb/(h ft2)
  TW_CHECK(ashrae, per_hour_and_area(evaporation_law::ashrae_in_use, fresh(25, 22, 50)),
           in_kilograms_per_hour(pounds_per_hour(pounds)) / in_square_metres(square_feet(1.0)), relative(0.002));
}

TEST_CASE("evaporation laws: the table is complete, and every law has an answer") {
  const evidence row{"tankwright::room::about", kind::identity, "the row of each law names that law"};
  const evidence order{"tankwright::room::evaporation_rate", kind::property,
                       "falls with the humidity of the air, and with salt"};
  for (std::size_t i = 0; i < twr::evaporation_laws.size(); ++i) {
    const auto law = static_cast<evaporation_law>(i);
    const auto& data = twr::about(law);
    CAPTURE(data.name);
    TW_HOLDS(row, data.law == law && &data == &twr::evaporation_laws[i]);
    CHECK(!data.formula.empty());
    CHECK(!data.source.authors.empty());
    CHECK(data.source.title.size() > 5);
    double last = 1e9;
    for (double h = 30.0; h <= 60.0; h += 5.0) {
      const double rate = per_hour_and_area(law, fresh(26, 24, h));
      TW_HOLDS(order, rate < last && rate > 0.0);
      last = rate;
      const twr::open_water salt{.water = seawater(26.0), .air = air_of(24, h)};
      TW_HOLDS(order, per_hour_and_area(law, salt) < rate);
    }
  }
}

TEST_CASE(
    "evaporation laws: condensation is signed, not clamped; Shah is continuous through it and through its floor") {
  const evidence sign{"tankwright::room::evaporation_rate", kind::property, "negative where vapour condenses"};
  for (const auto law : {evaporation_law::shah, evaporation_law::carrier, evaporation_law::vdi_2089_still,
                         evaporation_law::ashrae_quiet, evaporation_law::humidity_ratio_25_19}) {
    TW_HOLDS(sign, per_hour_and_area(law, fresh(15, 30, 80)) < 0.0);
    TW_HOLDS(sign, per_hour_and_area(law, fresh(25, 22, 50)) > 0.0);
  }
  const evidence smooth{"tankwright::room::evaporation_rate", kind::property, "Shah is continuous in the humidity"};
  double last = per_hour_and_area(evaporation_law::shah, fresh(20, 30, 28));
  for (double h = 28.0; h <= 95.0; h += 0.01) {
    const double rate = per_hour_and_area(evaporation_law::shah, fresh(20, 30, h));
    TW_HOLDS(smooth, std::fabs(rate - last) < 4e-4);
    last = rate;
  }
}

TEST_CASE("evaporation laws: what a formula cannot answer is refused") {
  CHECK_THROWS_AS((void)twr::evaporation_rate(evaporation_law::pauken, fresh(15, 30, 80)), out_of_range);
  CHECK_THROWS_AS((void)twr::evaporation_rate(evaporation_law::biasin_krumme, fresh(25, 25, 90)), out_of_range);
  CHECK(message_of([] {
          (void)twr::evaporation_rate(evaporation_law::analogy, fresh(25, 28, 40));
        }).ends_with("is outside what the formula can answer (heat and mass transfer analogy)"));
  CHECK(
      message_of([] { (void)twr::evaporation_rate(evaporation_law::shah, fresh(25, 22, 20)); }) ==
      "tankwright::room::evaporation_rate: relative humidity = 0.2 is outside the published range 0.28 to 0.95 (Shah); "
      "pass tankwright::extrapolate to go past it");
  CHECK(twr::evaporation_rate(evaporation_law::shah, fresh(25, 22, 20), extrapolate) >
        twr::evaporation_rate(evaporation_law::shah, fresh(25, 22, 30)));
  CHECK_THROWS_AS((void)twr::evaporation_rate(evaporation_law::shah, fresh(5, 22, 50)), out_of_range);
  CHECK_THROWS_AS((void)twr::evaporation_rate(evaporation_law::shah, fresh(25, 36, 50)), out_of_range);
  CHECK_THROWS_AS((void)twr::evaporation_rate(evaporation_law::carrier, fresh(25, 22, 50, -0.1)), invalid_input);
  CHECK_THROWS_AS((void)twr::evaporation_rate(evaporation_law::carrier, fresh(25, 22, 50, std::nan(""))),
                  invalid_input);
  CHECK_THROWS_AS((void)twr::evaporation_rate(evaporation_law::carrier, fresh(std::nan(""), 22, 50)), invalid_input);
  CHECK_THROWS_AS(
      (void)twr::evaporation_rate(evaporation_law::carrier, {.water = seawater(25, 43), .air = air_of(22, 50)}),
      out_of_range);
  CHECK_THROWS_AS((void)twr::evaporation_rate(evaporation_law::carrier, fresh(101, 22, 50)), out_of_range);
  CHECK_THROWS_AS((void)twr::vapour_diffusivity(celsius(0.0), standard_atmosphere), out_of_range);
}
