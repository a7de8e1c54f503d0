// SPDX-License-Identifier: BSL-1.0
#include <algorithm>
#include <array>
#include <cmath>

#include <tankwright/room/heat_balance.hpp>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {
double part_of(const reference_row& row) {
  const std::string want = row.text("want");
  if (want == "radiation") {
    const twr::tank_heat pool{.water = seawater(row["tw"], 0.0),
                              .air = air_of(20.0, 50.0),
                              .surfaces = {{.area = square_metres(row["area"])}},
                              .surroundings = celsius(row["surroundings"])};
    return in_watts(twr::heat_balance(pool).radiation);
  }
  twr::tank_heat t = display_tank(row["tw"], row["ta"], row["RH"]);
  if (want == "base") t.walls.erase(t.walls.begin());
  const twr::heat_budget b = twr::heat_balance(t);
  if (want == "evaporation") return in_watts(b.evaporation.central);
  if (want == "convection") return in_watts(b.convection.central);
  if (want == "base") return in_watts(b.walls);
  return in_watts(b.net.central - b.make_up.central);
}
}  // namespace

TEST_CASE("heat balance: reference table") {
  const auto ton = [](const reference_row& row) { return in_kilowatts(btu_per_hour(row["number"])); };
  check_rows(reference_rows("room/heat_balance.csv"),
             {{"tankwright::room::heat_balance", part_of}, {"tankwright::btu_per_hour", ton}});
}

TEST_CASE("heat balance: the parts are what they are said to be, and add up") {
  const evidence sum{"tankwright::room::heat_balance", kind::identity, "net = sum of the parts less the gains"};
  const evidence latent{"tankwright::room::heat_balance", kind::identity, "evaporation times latent heat"};
  const evidence bowen{"tankwright::room::heat_balance", kind::identity, "Bowen's ratio, gamma = 0.000665 P"};
  const evidence boltzmann{"tankwright::room::heat_balance", kind::identity,
                           "0.95 sigma A (T^4 - T_s^4), sigma of CODATA 2018"};
  for (const condition& c : conditions) {
    twr::tank_heat t = display_tank(c.water, c.air, c.humidity);
    t.surfaces[1].covered = percent(60.0);
    t.sources = {{.label = "pump", .heat = watts(85.0)}, {.label = "light", .heat = watts(120.0)}};
    t.make_up = celsius(15.0);
    const auto b = twr::heat_balance(t);
    const double others = (b.radiation + b.covers + b.walls - b.gains).value();
    TW_CHECK(sum, b.net.central.value(),
             (b.evaporation.central + b.convection.central + b.make_up.central).value() + others, relative(1e-12));
    TW_CHECK(sum, b.gains, watts(205.0), relative(1e-15));
    const auto e = twr::evaporation({.water = t.water, .air = t.air, .surfaces = t.surfaces});
    const double h = in_joules_per_kilogram(water::latent_heat_of_water(t.water.temperature));
    TW_CHECK(latent, b.evaporation.low.value(), e.rate.low.value() * h, relative(1e-12));
    TW_CHECK(latent, b.evaporation.central.value(), e.rate.central.value() * h, relative(1e-12));
    TW_CHECK(latent, b.evaporation.high.value(), e.rate.high.value() * h, relative(1e-12));
    const double p_w = water::water_activity(practical_salinity{35.0}).value() *
                       in_pascals(water::vapour_pressure(t.water.temperature));
    const double ratio = 0.000665 * 101325.0 * (c.water - c.air) / (p_w - in_pascals(twr::vapour_pressure(t.air)));
    TW_CHECK(bowen, b.convection.central.value() / b.evaporation.central.value(), ratio, relative(1e-12));
    const double tw = c.water + 273.15, ta = c.air + 273.15, open = 2.16 + 0.4 * 0.54;
    TW_CHECK(boltzmann, b.radiation.value(), 0.95 * 5.670374419e-8 * open * (std::pow(tw, 4) - std::pow(ta, 4)),
             relative(1e-11));
    TW_CHECK(latent, b.covers.value(), 8.3 * 0.6 * 0.54 * (c.water - c.air), relative(1e-12));
    TW_CHECK(latent, b.make_up.central.value(),
             e.rate.central.value() * water::specific_heat(practical_salinity{0.0}, celsius(15.0)).value() *
                 (c.water - 15.0),
             relative(1e-12));
  }
}

TEST_CASE("heat balance: nothing special happens where evaporation turns into condensation") {
  const evidence smooth{"tankwright::room::heat_balance", kind::property,
                        "continuous where the vapour pressures are equal"};
  double last = twr::heat_balance(display_tank(20.0, 24.0, 70.0)).net.central.value();
  for (double h = 70.0; h < 90.0; h += 0.01) {
    const double now = twr::heat_balance(display_tank(20.0, 24.0, h)).net.central.value();
    TW_HOLDS(smooth, std::fabs(now - last) < 0.5);
    last = now;
  }
}

TEST_CASE("heat balance: heater and chiller") {
  const evidence heater{"tankwright::room::heater_for", kind::identity, "margin times the high end of the net loss"};
  const evidence chiller{"tankwright::room::chiller_for", kind::identity, "least evaporation over the duty"};
  const auto cold = display_tank(25.0, 18.0, 40.0);
  const auto need = twr::heater_for(cold, 1.3);
  TW_CHECK(heater, need.suggested.value(), 1.3 * twr::heat_balance(cold).net.high.value(), relative(1e-14));
  CHECK(need.is_needed);
  CHECK(need.caution.text.find("licensed electrician") != std::string_view::npos);
  CHECK(!twr::chiller_for(cold, cold.air).is_needed);
  CHECK(twr::chiller_for(cold, cold.air).suggested.value() == 0.0);

  twr::tank_heat hot = display_tank(25.0, 32.0, 70.0);
  hot.sources = {{.label = "pumps and lights", .heat = watts(400.0)}};
  const auto cool = twr::chiller_for(hot, hot.air, fraction(0.5));
  TW_CHECK(chiller, cool.suggested.value(), -twr::heat_balance(hot).net.low.value() / 0.5, relative(1e-14));
  CHECK(cool.is_needed);
  CHECK(!twr::heater_for(hot).is_needed);
}

TEST_CASE("heat balance: mistakes are named") {
  const auto said = [](auto change) {
    twr::tank_heat t = display_tank(25.0, 22.0, 50.0);
    change(t);
    return message_of([&] { (void)twr::heat_balance(t); });
  };
  CHECK(said([](auto& t) { t.walls[0].area = square_metres(-4.0); }) ==
        "tankwright::room::heat_balance: glass: area = -4 m2 is not possible; expected 0 to 1000000 m2");
  CHECK(said([](auto& t) { t.sources = {{.label = "pump", .heat = watts(-5.0)}}; }).find("pump: heat = -5 W") !=
        std::string::npos);
  CHECK(said([](auto& t) { t.surroundings = celsius(-300.0); }).find("temperature of the surroundings") !=
        std::string::npos);
  CHECK(said([](auto& t) { t.make_up = celsius(-3.0); }).find("make-up temperature = -3 degC is outside") !=
        std::string::npos);
  CHECK(said([](auto& t) { t.walls[1].outside = celsius(std::nan("")); }).find("base: outside temperature = nan") !=
        std::string::npos);
  CHECK_THROWS_AS((void)twr::heater_for(display_tank(25, 22, 50), 0.8), invalid_input);
  CHECK_THROWS_AS((void)twr::chiller_for(display_tank(25, 22, 50), air_of(30, 60), fraction(0.0)), invalid_input);
}

TEST_CASE("heat balance: both ends of every part, walls to elsewhere, and what is taken when nothing is said") {
  const evidence ends{"tankwright::room::heat_balance", kind::identity,
                      "the ends of the evaporation times latent heat, Bowen's ratio and the heat of the make-up"};
  const evidence walls{"tankwright::room::heat_balance", kind::identity, "U A of the difference, by hand"};
  for (const condition& c : {conditions[0], conditions[1], conditions[2], condition{16.0, 30.0, 80.0}}) {
    for (const bool said : {false, true}) {
      twr::tank_heat t = display_tank(c.water, c.air, c.humidity);
      t.surfaces[0].agitation = twr::gently_moving;
      t.surfaces[1].covered = percent(60.0);
      t.sources = {{.label = "pump", .heat = watts(85.0)}, {.label = "light", .heat = watts(120.0)}};
      if (said) {
        t.make_up = celsius(12.0);
        t.surroundings = celsius(19.0);
        t.walls[1].outside = celsius(8.0);
      }
      const auto b = twr::heat_balance(t);
      const auto e = twr::evaporation({.water = t.water, .air = t.air, .surfaces = t.surfaces}).rate;
      const double difference = water::water_activity(practical_salinity{35.0}).value() *
                                    in_pascals(water::vapour_pressure(celsius(c.water))) -
                                in_pascals(twr::vapour_pressure(t.air));
      const double latent = in_joules_per_kilogram(water::latent_heat_of_water(celsius(c.water)));
      const double refill = said ? 12.0 : c.air;
      const double cp = water::specific_heat(practical_salinity{0.0}, celsius(refill)).value();
      const double tw = c.water + 273.15, seen = (said ? 19.0 : c.air) + 273.15, open = 2.16 + 0.4 * 0.54;
      const double radiation = 0.95 * 5.670374419e-8 * open * (std::pow(tw, 4) - std::pow(seen, 4));
      const double covers = 8.3 * 0.6 * 0.54 * (c.water - c.air);
      const double glass = 1.0 / (1.0 / 200.0 + 0.015 / 1.0 + 1.0 / 8.3) * 4.95 * (c.water - c.air);
      const double base = 1.0 / (1.0 / 200.0 + 0.018 / 0.12 + 1.0 / 8.3) * 2.16 * (c.water - (said ? 8.0 : c.air));
      TW_CHECK(walls, b.radiation, watts(radiation), relative(1e-10));
      TW_CHECK(walls, b.covers, watts(covers), relative(1e-11));
      TW_CHECK(walls, b.walls, watts(glass + base), relative(1e-10));
      std::array<double, 3> net{};
      const auto parts = [&](mass_flow rate) {
        const double evaporated = rate.value();
        return std::array{evaporated * latent,
                          evaporated / difference * latent * 0.000665 * 101325.0 * (c.water - c.air),
                          difference > 0.0 ? evaporated * cp * (c.water - refill) : 0.0};
      };
      const std::array each{parts(e.low), parts(e.central), parts(e.high)};
      for (std::size_t i = 0; i < 3; ++i) {
        net[i] = each[i][0] + each[i][1] + each[i][2] + radiation + covers + glass + base - 205.0;
      }
      const auto check = [&](const estimate<power>& found, std::size_t part) {
        const auto sorted = std::minmax({each[0][part], each[1][part], each[2][part]});
        const tolerance close{.absolute = 1e-9, .relative = 1e-10};
        TW_CHECK(ends, found.low, watts(sorted.first), close);
        TW_CHECK(ends, found.central, watts(each[1][part]), close);
        TW_CHECK(ends, found.high, watts(sorted.second), close);
        CHECK(found.reason == twr::agitated_band);
      };
      check(b.evaporation, 0);
      check(b.convection, 1);
      check(b.make_up, 2);
      TW_CHECK(ends, b.net.low, watts(std::min({net[0], net[1], net[2]})), relative(1e-9));
      TW_CHECK(ends, b.net.central, watts(net[1]), relative(1e-9));
      TW_CHECK(ends, b.net.high, watts(std::max({net[0], net[1], net[2]})), relative(1e-9));
      CHECK(twr::heat_balance(display_tank(c.water, c.air, c.humidity)).net.reason == twr::still_band);
      // A quarter more than the high end, and two thirds of the time, when nothing is said.
      CHECK(compare(twr::heater_for(t).suggested, 1.25 * std::max(b.net.high, watts(0.0)), relative(1e-12)).good);
      CHECK(
          compare(twr::chiller_for(t, t.air).suggested, std::max(-1.0 * b.net.low, watts(0.0)) / 0.65, relative(1e-12))
              .good);
      const auto chiller = twr::chiller_for(t, t.air);
      CHECK(chiller.needed.low.value() == -b.net.high.value());
      CHECK(chiller.needed.central.value() == -b.net.central.value());
      CHECK(chiller.needed.high.value() == -b.net.low.value());
      CHECK_FALSE(chiller.caution.text.empty());
      CHECK(chiller.needed.reason == b.net.reason);
    }
  }
}
