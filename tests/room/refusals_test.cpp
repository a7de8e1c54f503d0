// SPDX-License-Identifier: BSL-1.0
// What is refused, in whose name and words, and the last number before it; what is given up when no answer is found.
#include <cmath>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {

relative_humidity humid(double x) { return relative_humidity::from_fraction(x); }

twr::building_element pane(double u, double inside, double outside) {
  return {.transmittance = watts_per_square_metre_kelvin(u), .inside = celsius(inside), .outside = celsius(outside)};
}

}  // namespace

TEST_CASE("refusals: a humidity in percent is told from one that is too much") {
  const auto said = [](double x) {
    return message_of([&] { (void)twr::enthalpy({.temperature = celsius(22.0), .humidity = humid(x)}); });
  };
  CHECK(said(1.0) == "nothing was thrown");
  CHECK(said(1.0005).ends_with("is more than saturated, 100.05 %; expected 0 to 1, which is 0 to 100 %"));
  CHECK(said(1.999).ends_with("is more than saturated, 199.9 %; expected 0 to 1, which is 0 to 100 %"));
  CHECK(said(2.0).ends_with("For 2 % write relative_humidity::from_percent(2)"));
  CHECK(said(100.0).ends_with("For 100 % write relative_humidity::from_percent(100)"));
  CHECK(said(100.05).ends_with("is not possible; expected 0 to 1"));
  CHECK(said(-0.5).ends_with("is not possible; expected 0 to 1"));
}

TEST_CASE("refusals: an air pressure in kilopascals is told from one that is too low") {
  const auto said = [](double x) {
    return message_of([&] {
      (void)twr::dry_air_density(
          {.temperature = celsius(22.0), .humidity = humid(0.0), .pressure = absolute_pressure{pascals(x)}});
    });
  };
  CHECK(said(20.0).find("is outside the published range") != std::string::npos);
  CHECK(said(20.01).ends_with("write absolute_pressure(kilopascals(20.01))"));
  CHECK(said(179.9).ends_with("write absolute_pressure(kilopascals(179.9))"));
  CHECK(said(180.0).find("is outside the published range") != std::string::npos);
  CHECK(said(180.1).find("is outside the published range") != std::string::npos);
  CHECK(said(10.0).find("is outside the published range") != std::string::npos);
}

TEST_CASE("refusals: grams in a kilogram, both ways") {
  CHECK(twr::humidity_ratio::from_grams_per_kilogram(12.0).value() == 12.0 * 1e-3);
  CHECK(twr::in_grams_per_kilogram(twr::humidity_ratio::from_kilograms_per_kilogram(0.0125)) == 12.5);
}

TEST_CASE("refusals: windows, in the name of the function and of the number that is wrong") {
  check_refusals(
      {TW_REFUSED("room::temperature_factor", "transmittance", twr::temperature_factor(pane(9.0, 20.0, 0.0))),
       TW_REFUSED("room::lowest_temperature_factor", "relative humidity",
                  twr::lowest_temperature_factor(air_of(22.0, 90.0), celsius(0.0))),
       TW_REFUSED("room::lowest_temperature_factor", "outside temperature",
                  twr::lowest_temperature_factor(air_of(22.0, 50.0), celsius(22.0))),
       TW_REFUSED("room::judge_surface", "inside temperature",
                  twr::judge_surface(pane(1.0, 22.0 + 1.0005e-6, 0.0), air_of(22.0, 50.0)))});
  CHECK_NOTHROW((void)twr::judge_surface(pane(1.0, 22.0 + 0.9995e-6, 0.0), air_of(22.0, 50.0)));
}

TEST_CASE("refusals: the verdict on a window at its ends") {
  // As warm as the room: as moist as the room, and no more.
  const auto even = twr::judge_surface(pane(1.0, 22.0, 22.0), air_of(22.0, 100.0));
  CHECK_FALSE(even.drips);
  CHECK(even.humidity.value() == 1.0);
  CHECK(even.mould);
  const auto at_80 = twr::judge_surface(pane(1.0, 22.0, 22.0), air_of(22.0, 80.0));
  CHECK(compare(at_80.humidity.value(), 0.8, relative(1e-14)).good);
  CHECK(twr::judge_surface(pane(5.0, 22.0, -10.0), air_of(22.0, 60.0)).humidity.value() == 1.0);  // it drips
  const auto dry = twr::judge_surface(pane(1.0, 22.0, 0.0), air_of(22.0, 40.0));
  const double surface = 22.0 - 0.13 * 22.0;
  CHECK(compare(dry.humidity.value(),
                0.4 * (twr::saturation_pressure(celsius(22.0)) / twr::saturation_pressure(celsius(surface))),
                relative(1e-10))
            .good);
  // A window that is warmer than the room never drips; dry air needs no insulation.
  CHECK(twr::highest_humidity(pane(1.0, 20.0, 35.0)).value() == 1.0);
  CHECK(twr::lowest_temperature_factor(air_of(22.0, 5.0), celsius(10.0)).value() == 0.0);
  // As cold as the formula goes.
  CHECK_NOTHROW((void)twr::judge_surface(pane(1.0, -99.9, -99.9), air_of(-99.9, 100.0)));
  CHECK_NOTHROW((void)twr::highest_humidity(pane(1.0, -99.9, -99.9)));
}

TEST_CASE("refusals: machines of which little is said") {
  const twr::dehumidifier unsaid{.capacity = kilograms_per_day(10.0)};
  CHECK(twr::dehumidifier_output(unsaid, celsius(24.0), humid(0.5)).electrical.value() == 0.0);
  const auto reason = [&](double t) {
    return std::string{twr::dehumidifier_output(unsaid, celsius(t), humid(0.5)).removal.reason};
  };
  for (const double t : {21.0, 24.0, 32.2199}) CHECK(reason(t).starts_with("machines of one label differ"));
  CHECK(reason(20.9).starts_with("below 21 degC"));
  CHECK(reason(32.3).starts_with("above 32 degC"));
  // The least share of the rating point is taken at its word; none at all is read from the curve.
  const auto with_share = [](double share) {
    const twr::dehumidifier m{.capacity = kilograms_per_day(1.0),
                              .rated_at = {"rated", celsius(26.7), humid(0.6), share}};
    return in_kilograms_per_day(twr::dehumidifier_output(m, celsius(26.7), humid(0.6)).removal.central);
  };
  CHECK(compare(with_share(0.01), 100.0, relative(1e-10)).good);
  CHECK(compare(with_share(0.0), 1.0, relative(1e-10)).good);
}

TEST_CASE("refusals: what has no answer is given up") {
  const double nan = std::nan("");
  CHECK_THROWS_AS((void)twr::detail::wet_bulb<double>("tankwright::test", nan, 1e3, 101325.0), no_convergence);
  CHECK_THROWS_AS((void)twr::detail::saturation_temperature<double>("tankwright::test", nan), no_convergence);
  CHECK(twr::detail::evaporation_rate(static_cast<twr::evaporation_law>(99),
                                      twr::detail::across<double>{298.15, 295.15, 3000.0, 1300.0, 101325.0, 0.0}) ==
        0.0);
  int steps = 120'000;
  const twr::detail::moisture_model m{.surface = {298.15, 295.15, 3000.0, 1300.0, 101325.0, 0.0},
                                      .volume = 100.0,
                                      .changes = 1e-4,
                                      .outdoor = 0.005,
                                      .saturation = 2600.0};
  CHECK_THROWS_AS((void)twr::detail::go_on("tankwright::test", m, {.vapour = 1300.0}, 10.0, 1.0, steps),
                  no_convergence);
  steps = 120'000 - 9;
  CHECK_THROWS_AS((void)twr::detail::go_on("tankwright::test", m, {.vapour = 1300.0}, 10.0, 1.0, steps),
                  no_convergence);
  steps = 120'000 - 10;
  CHECK_NOTHROW((void)twr::detail::go_on("tankwright::test", m, {.vapour = 1300.0}, 10.0, 1.0, steps));
}

TEST_CASE("refusals: bone-dry air, and the reasons of moving water") {
  twr::tank_room dry = cellar(22.0, air_of(10.0, 0.0));
  dry.surfaces.clear();
  CHECK(twr::humidity_balance(dry).central.air.humidity.get().value() == 0.0);
  auto tank = display_tank(25.0, 20.0, 50.0);
  tank.surfaces[0].agitation = twr::lively;
  const auto c = twr::heat_capacity_of(seawater(25.0), litres(1000.0));
  const twr::uncontrolled_tank alone{.tank = tank, .heat_capacity = c};
  CHECK(twr::largest_change(alone, hours(2.0)).largest.reason == twr::agitated_band);
  CHECK(twr::temperature_course_of(alone, hours(1.0)).settles_at->reason == twr::agitated_band);
  const auto stuck =
      twr::heater_stuck_on({.tank = tank, .heat_capacity = c, .heater = watts(300.0), .highest = celsius(30.0)});
  CHECK(stuck.settles_at->reason == twr::agitated_band);
  CHECK(stuck.in_an_hour.reason == twr::agitated_band);
  CHECK(stuck.in_a_day.reason == twr::agitated_band);
}

TEST_CASE("refusals: a surface of next to no area, and water that hardly moves") {
  const auto of = [](double area, double agitation) {
    return twr::evaporation({.water = seawater(25.0),
                             .air = air_of(22.0, 50.0),
                             .surfaces = {{.area = square_metres(area), .agitation = twr::agitation{agitation}}}})
        .surfaces[0];
  };
  for (const double area : {0.0005, 2.0}) {
    CHECK(compare(of(area, 1.0).per_area.central.value(), of(1.0, 1.0).rate.central.value(), relative(1e-12)).good);
  }
  CHECK(of(0.0, 1.0).per_area.central.value() == 0.0);
  CHECK(of(1.0, 1.0).rate.reason == twr::still_band);
  CHECK(of(1.0, 1.001).rate.reason == twr::agitated_band);
}

TEST_CASE("refusals: water too salt, and water that boils, in the name of the law that was asked") {
  const auto rate = [](double t, double salinity, double pressure) {  // in still air
    return twr::evaporation_rate(
        twr::evaporation_law::carrier,
        {.water = seawater(t, salinity),
         .air = {
             .temperature = celsius(22.0), .humidity = humid(0.5), .pressure = absolute_pressure{pascals(pressure)}}});
  };
  check_refusals({TW_REFUSED("room::evaporation_rate", "practical salinity", rate(25.0, 43.0, 101325.0))});
  check_refusals({TW_REFUSED("room::evaporation_rate", "vapour pressure", rate(99.0, 0.0, 80000.0))});
  twr::open_water water{.water = seawater(25.0), .air = air_of(22.0, 50.0)};
  const auto unsaid = twr::evaporation_rate(twr::evaporation_law::carrier, water);
  water.air_speed = metres_per_second(0.0);
  CHECK(unsaid == twr::evaporation_rate(twr::evaporation_law::carrier, water));
}

TEST_CASE("refusals: half a milliwatt is heated and cooled, and nothing is not") {
  twr::tank_heat t{.water = seawater(25.0), .air = air_of(20.0, 50.0), .surfaces = {}};
  CHECK_FALSE(twr::heater_for(t).is_needed);
  CHECK_FALSE(twr::chiller_for(t, t.air).is_needed);
  t.walls = {{.area = square_metres(1.0), .transmittance = watts_per_square_metre_kelvin(1e-4)}};
  CHECK(twr::heater_for(t).is_needed);
  t.walls.clear();
  t.sources = {{.label = "clock", .heat = watts(5e-4)}};
  CHECK(twr::chiller_for(t, t.air).is_needed);
}

TEST_CASE("refusals: half a milliwatt costs something, and what is said comes with the answer") {
  const auto of = [](double w) {
    const twr::running_device one[] = {{.label = "clock", .draws = estimate<power>{watts(w)}}};
    return twr::running_costs(one, twr::electricity_price{1.0}).all;
  };
  CHECK(compare(in_joules(of(5e-4).per_day.central), 43.2, relative(1e-12)).good);
  CHECK_FALSE(of(1.0).per_day.reason.empty());
  const auto heat = twr::running_cost({.heat = estimate<power>{watts(5e-4)}, .price = twr::electricity_price{1.0}});
  CHECK(compare(in_joules(heat.per_day.central), 43.2, relative(1e-12)).good);
  const estimate<electric_current> leaks[] = {{milliamperes(0.1), milliamperes(0.2), milliamperes(0.5), "measured"},
                                              milliamperes(1.0)};
  CHECK(twr::leakage_of(leaks).reason == "measured");
  CHECK_FALSE(twr::battery_feeds({.capacity = joules(1.0)}, watts(1.0)).reason.empty());
  const twr::reservoir_request r{.water = seawater(25.0),
                                 .volume = litres(1000.0),
                                 .lowest = practical_salinity{33.0},
                                 .free_volume = litres(10.0)};
  CHECK_FALSE(twr::largest_reservoir(r).caution.text.empty());
  CHECK_FALSE(twr::stuck_valve(r, litres(1.0)).caution.text.empty());
  CHECK_FALSE(twr::return_level({.surface = square_metres(0.3),
                                 .top_off = estimate<flow_rate>{litres_per_day(5.0)},
                                 .running_level = metres(0.3),
                                 .lowest_level = metres(0.2)})
                  .caution.text.empty());
}

TEST_CASE("refusals: a room of which little is said is its outdoor air; saturated air is just that") {
  const auto ratio = [](double w) { return twr::humidity_ratio::from_kilograms_per_kilogram(w); };
  const twr::well_mixed_room r{.dry_air = kilograms_per_hour(10.0), .outdoor = ratio(0.004)};
  CHECK(compare(twr::settled_humidity_ratio(r).value(), 0.004, relative(1e-14)).good);
  CHECK(compare(twr::humidity_time_constant(r, kilograms(20.0)), hours(2.0), relative(1e-14)).good);
  const auto full = twr::air_from(twr::air_of_dew_point{.temperature = celsius(18.0), .dew_point = celsius(18.0)});
  CHECK(full.humidity.get().value() == 1.0);
  CHECK_NOTHROW((void)twr::air_from(
      twr::air_of_humidity_ratio{.temperature = celsius(18.0), .ratio = twr::humidity_ratio_of(full)}));
  CHECK(message_of([] {
          (void)twr::air_from(twr::air_of_dew_point{.temperature = celsius(18.0), .dew_point = celsius(18.00001)});
        }).ends_with(": water would condense"));
}

TEST_CASE("refusals: cold water dries a warm room, and the band is in order all the same") {
  twr::tank_room r = cellar(26.0, air_of(28.0, 75.0), 0.4);
  r.water = seawater(9.0);
  for (const double agitation : {1.0, 2.5}) {
    r.surfaces[0].agitation = twr::agitation{agitation};
    const auto found = twr::humidity_balance(r);
    CHECK(found.central.evaporation.value() < 0.0);
    CHECK(found.low.air.humidity.get() < found.central.air.humidity.get());
    CHECK(found.central.air.humidity.get() < found.high.air.humidity.get());
    CHECK_FALSE(found.caution.text.empty());
  }
}

TEST_CASE("refusals: rooms that settle nowhere, or have no air left") {
  auto closed = cellar(24.0, air_of(5.0, 80.0), 0.0);
  closed.surfaces.clear();
  try {
    (void)twr::humidity_balance(closed);
    CHECK(false);
  } catch (const invalid_input& e) {
    CHECK(e.details().function == "tankwright::room::humidity_balance");
    CHECK(e.details().argument == "air changes");
    CHECK(e.details().value == 0.0);
  }
  check_refusals({TW_REFUSED("room::humidity_balance", "vapour pressure",
                             twr::humidity_balance(cellar(105.0, air_of(5.0, 80.0)), extrapolate))});
  // Humid air outdoors: the two ratios are said in grams.
  const auto outdoor = air_of(28.0, 60.0);
  try {
    (void)twr::ventilation_for(cellar(24.0, outdoor), humid(0.5));
    CHECK(false);
  } catch (const invalid_input& e) {
    CHECK(e.details().argument == "outdoor humidity ratio");
    CHECK(compare(e.details().value, 1e3 * twr::humidity_ratio_of(outdoor).value(), relative(1e-12)).good);
    const double wanted = 1e3 * twr::humidity_ratio_of(air_of(24.0, 50.0)).value();
    CHECK(std::string{e.what()}.find("shall be, " + core::number_with_unit(wanted, "g/kg") + ":") != std::string::npos);
  }
}

TEST_CASE("refusals: machines that rest, and a quarter more than is needed") {
  auto dry = cellar(22.0, air_of(10.0, 0.0));
  dry.surfaces.clear();
  CHECK(twr::humidity_balance(dry).central.duty.value() == 0.0);
  dry.dehumidifier =
      twr::controlled_dehumidifier{.machine = {.capacity = kilograms_per_day(10.0)}, .set_point = humid(0.5)};
  CHECK(twr::humidity_balance(dry).central.duty.value() == 0.0);
  auto washing = cellar(24.0, air_of(24.0, 60.0), 0.1);  // no band: no open water
  washing.surfaces.clear();
  washing.sources = {{.label = "washing", .rate = grams_per_hour(500.0)}};
  const auto size = twr::dehumidifier_for(washing, humid(0.55));
  CHECK(compare(size.suggested, 1.25 * size.rated.central, relative(1e-14)).good);
  // Water so cold that it dries the room asks for no air.
  auto cold = cellar(26.0, air_of(5.0, 50.0));
  cold.water = seawater(9.0);
  CHECK(twr::ventilation_for(cold, humid(0.8)).air_changes.high.value() == 0.0);
  const auto hourly =
      twr::humidity_course({.room = cellar(24.0, air_of(10.0, 50.0)), .start = humid(0.5), .time = hours(2.0)});
  CHECK(hourly.size() == 3);
  CHECK(hourly[1].time.value() == 3600.0);
}

TEST_CASE("refusals: a heater that is stuck is looked at for a week") {
  const auto stuck = [](double days_to_reach) {
    // No open water, 12 W/K to 18 degC, 8e6 J/K: from 25 to 30 degC in that time.
    const double left = std::exp(-days_to_reach * 86400.0 * 12.0 / 8e6);
    return twr::heater_stuck_on(
        {.tank = {.water = seawater(25.0),
                  .air = air_of(18.0, 50.0),
                  .surfaces = {},
                  .walls = {{.area = square_metres(10.0), .transmittance = watts_per_square_metre_kelvin(1.2)}}},
         .heat_capacity = joules_per_kelvin(8e6),
         .heater = watts(12.0 * (12.0 - 7.0 * left) / (1.0 - left)),
         .highest = celsius(30.0)});
  };
  CHECK(stuck(6.997).reaches_highest.expected);
  CHECK_FALSE(stuck(7.003).reaches_highest.expected);
  CHECK(stuck(6.0).settles_at->reason == twr::still_band);
}

TEST_CASE("refusals: air that cannot be, in the name of what was given") {
  const auto by_ratio = [](double w) {
    return twr::air_from(twr::air_of_humidity_ratio{.temperature = celsius(20.0),
                                                    .ratio = twr::humidity_ratio::from_kilograms_per_kilogram(w)});
  };
  const auto by_dew_point = [](double t, double dew) {
    return twr::air_from(twr::air_of_dew_point{.temperature = celsius(t), .dew_point = celsius(dew)});
  };
  check_refusals(
      {TW_REFUSED("room::air_from", "humidity ratio", by_ratio(0.02)),
       TW_REFUSED("room::air_from", "dew point", by_dew_point(18.0, 19.0)),
       TW_REFUSED("room::air_from", "vapour pressure", by_dew_point(150.0, 110.0)),
       TW_REFUSED("room::pressure_at_altitude", "altitude", twr::pressure_at_altitude(metres(50e3), extrapolate)),
       TW_REFUSED("room::dew_point", "temperature", twr::dew_point(air_of(201.0, 0.1)))});
  // How wet it would be.
  const double percent_there =
      100.0 * (twr::saturation_pressure(celsius(19.0)) / twr::saturation_pressure(celsius(18.0)));
  CHECK(message_of([&] {
          (void)by_dew_point(18.0, 19.0);
        }).find("would be " + core::number_text(percent_there) + " % relative humidity at 18 degC") !=
        std::string::npos);
  // A dew point a rounding above the temperature is saturated air, and no more.
  const temperature warm = celsius(18.0);
  const auto full =
      twr::air_from(twr::air_of_dew_point{.temperature = warm, .dew_point = kelvins(in_kelvins(warm) + 3e-13)});
  CHECK(full.humidity.get().value() == 1.0);
}

TEST_CASE(
    "refusals: a room with a machine is held to what evaporation was measured at, which is well within the machine's") {
  auto r = cellar(46.0, air_of(20.0, 40.0));
  check_refusals({TW_REFUSED("room::dehumidifier_for", "air temperature", twr::dehumidifier_for(r, humid(0.5)))});
  const auto measured = twr::about(twr::evaporation_law::shah).air_celsius;
  CHECK(twr::dehumidifier_temperature_limits.published.contains(measured.low));
  CHECK(twr::dehumidifier_temperature_limits.published.contains(measured.high));
  CHECK(twr::dehumidifier_temperature_limits.possible.low <= twr::possible_air.low);
  CHECK(twr::dehumidifier_temperature_limits.possible.high >= twr::possible_air.high);
}

TEST_CASE("refusals: ventilation with air that is next to as wet as the room") {
  const double inside = twr::humidity_ratio_of(air_of(24.0, 50.0)).value();
  // 150 m3 of air, 177 kg: half a gram more or less is carried by each change of it.
  const auto with = [&](double grams) {
    const double dry = twr::dry_air_density(air_of(24.0, 50.0)).value() * 150.0;
    const auto outdoor = twr::air_from(twr::air_of_humidity_ratio{
        .temperature = celsius(24.0),
        .ratio = twr::humidity_ratio::from_kilograms_per_kilogram(inside - 1e-3 * grams / dry)});
    return twr::ventilation_for(cellar(24.0, outdoor), humid(0.5));
  };
  const auto drier = with(0.5);
  const auto rate =
      twr::evaporation({.water = seawater(25.0), .air = air_of(24.0, 50.0), .surfaces = {{.area = square_metres(3.0)}}})
          .rate.central;
  CHECK(compare(drier.air_changes.central.value(), rate.value() / 5e-4, relative(1e-6)).good);
  CHECK_THROWS_AS((void)with(-0.5), invalid_input);
  CHECK_THROWS_AS((void)twr::ventilation_for(cellar(24.0, air_of(24.0, 0.0)), humid(0.0)), invalid_input);
}

TEST_CASE("refusals: a room that gains nothing needs no machine") {
  auto r = cellar(24.0, air_of(24.0, 50.0), 0.0);
  r.surfaces.clear();
  const auto size = twr::dehumidifier_for(r, humid(0.55));
  CHECK(size.load.high.value() == 0.0);
  CHECK_FALSE(size.needed);
}

TEST_CASE("refusals: half a milliwatt the other way costs nothing") {
  const auto heat = twr::running_cost({.heat = estimate<power>{watts(-5e-4)}, .price = twr::electricity_price{1.0}});
  CHECK(heat.per_day.central.value() == 0.0);
  const twr::running_device one[] = {{.label = "clock", .draws = estimate<power>{watts(-5e-4)}}};
  CHECK(twr::running_costs(one, twr::electricity_price{1.0}).all.per_day.central.value() == 0.0);
}

TEST_CASE("refusals: top-off at its ends") {
  const auto rim = [](double lowest) {
    return twr::reservoir_request{.water = seawater(25.0),
                                  .volume = litres(1000.0),
                                  .lowest = practical_salinity{lowest},
                                  .free_volume = litres(10.0)};
  };
  // Nothing runs in: as salt as it was, and no less is allowed.
  CHECK_FALSE(twr::stuck_valve(rim(35.0), litres(0.0)).too_fresh);
  CHECK(twr::stuck_valve(rim(35.0), litres(0.1)).too_fresh);
  CHECK(message_of([&] { (void)twr::largest_reservoir(rim(1000.5)); }).find("is not possible") != std::string::npos);
  CHECK(message_of([&] { (void)twr::largest_reservoir(rim(999.5)); }).find("is above that of the system") !=
        std::string::npos);
  const auto chamber = [](double running, double lowest) {
    return message_of([&] {
      (void)twr::return_level({.surface = square_metres(0.3),
                               .top_off = estimate<flow_rate>{litres_per_day(5.0)},
                               .running_level = metres(running),
                               .lowest_level = metres(lowest)});
    });
  };
  CHECK(chamber(0.3, 0.3) == "nothing was thrown");
  CHECK(chamber(0.3, 0.3005).find("is above the running level") != std::string::npos);
  CHECK(chamber(1000.0, 1000.5).find("lowest level = 1000.5 m is not possible") != std::string::npos);
}

TEST_CASE("refusals: wet surfaces of which nothing is said are dry, and the least flow is a flow") {
  const auto ratio = [](double w) { return twr::humidity_ratio::from_kilograms_per_kilogram(w); };
  const twr::well_mixed_room r{
      .dry_air = kilograms_per_hour(10.0), .outdoor = ratio(0.004), .transfer = kilograms_per_hour(30.0)};
  CHECK(compare(twr::settled_humidity_ratio(r).value(), 0.001, relative(1e-14)).good);
  CHECK_NOTHROW(
      (void)twr::settled_humidity_ratio({.dry_air = mass_flow::from_value(core::tiny), .outdoor = ratio(0.004)}));
}
