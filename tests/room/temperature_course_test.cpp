// SPDX-License-Identifier: BSL-1.0
#include <algorithm>
#include <cmath>
#include <limits>

#include <tankwright/room/temperature_course.hpp>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {
twr::uncontrolled_tank without_power(double water, double room, double humidity) {
  return {.tank = display_tank(water, room, humidity),
          .heat_capacity = twr::heat_capacity_of(seawater(25.0), litres(1809.0))};
}
double water_temperature(const reference_row& row) {
  const auto o = without_power(row["tw"], row["ta"], row["RH"]);
  if (row.text("want") == "settles") return in_celsius(twr::temperature_course_of(o, hours(1.0)).settles_at->central);
  return in_celsius(twr::temperature_course_of(o, hours(row["t"])).points.back().water.central);
}
/// No open water, one wall: 12 W/K to the room, 8e6 J/K.
twr::uncontrolled_tank dry(double water, double room) {
  return {.tank = {.water = seawater(water),
                   .air = air_of(room, 50.0),
                   .surfaces = {},
                   .walls = {{.area = square_metres(10.0), .transmittance = watts_per_square_metre_kelvin(1.2)}}},
          .heat_capacity = joules_per_kelvin(8e6)};
}
constexpr double dry_time_constant = 8e6 / 12.0;  // s
/// Net loss at a temperature, nothing topped off.
double loss_at(twr::tank_heat tank, double kelvin) {
  tank.water.temperature = kelvins(kelvin);
  const auto b = twr::heat_balance(tank, extrapolate);
  return (b.net.central - b.make_up.central).value();
}
}  // namespace

TEST_CASE("temperature course: reference table") {
  check_rows(reference_rows("room/temperature_course.csv"),
             {{"tankwright::room::temperature_course_of", water_temperature}});
}

TEST_CASE("temperature course: energy is conserved along the curve") {
  const evidence conserved{"tankwright::room::temperature_course_of", kind::identity,
                           "C (T_0 - T) = integral of the losses, Simpson's rule over the curve"};
  const auto o = without_power(25.0, 18.0, 50.0);
  const auto course = twr::temperature_course_of(o, hours(24.0), minutes(5.0));
  double lost = 0.0;
  for (std::size_t i = 0; i + 2 < course.points.size(); i += 2) {
    const auto at = [&](std::size_t k) { return loss_at(o.tank, in_kelvins(course.points[k].water.central)); };
    lost += 300.0 / 3.0 * (at(i) + 4.0 * at(i + 1) + at(i + 2));
  }
  const double cooled =
      in_kelvins(course.points.front().water.central) - in_kelvins(course.points.back().water.central);
  TW_CHECK(conserved, lost, o.heat_capacity.get().value() * cooled, relative(1e-9));
}

TEST_CASE("temperature course: against an independent stepping, in a room that stays and in one that cools") {
  const evidence stepped{"tankwright::room::temperature_course_of", kind::identity,
                         "independent midpoint stepping at 30 s"};
  for (const bool drifts : {false, true}) {
    auto o = without_power(25.0, 20.0, 55.0);
    if (drifts) o.room = twr::drifting_room{.settles_at = celsius(9.0), .time_constant = hours(15.0)};
    const double vapour = in_pascals(twr::vapour_pressure(o.tank.air));
    double t = 298.15;
    const auto slope = [&](double time, double kelvin) {
      auto tank = o.tank;
      if (drifts) {
        const double air = 9.0 + 11.0 * std::exp(-time / (15.0 * 3600.0));
        const double saturation = in_pascals(twr::saturation_pressure(celsius(air)));
        tank.air = {.temperature = celsius(air),
                    .humidity = relative_humidity::from_fraction(std::min(1.0, vapour / saturation))};
      }
      return -loss_at(tank, kelvin) / o.heat_capacity.get().value();
    };
    for (double time = 0.0; time < 18.0 * 3600.0 - 1.0; time += 30.0)
      t += 30.0 * slope(time + 15.0, t + 15.0 * slope(time, t));
    const auto course = twr::temperature_course_of(o, hours(18.0), hours(1.0));
    TW_CHECK(stepped, in_kelvins(course.points.back().water.central), t, tolerance{.absolute = 1e-6});
  }
}

TEST_CASE("temperature course: the answer does not depend on how densely it is asked for") {
  const evidence refined{"tankwright::room::temperature_course_of", kind::property, "steps of 1 min and of 6 h agree"};
  for (const bool drifts : {false, true}) {
    auto o = without_power(25.0, 18.0, 50.0);
    if (drifts) o.room = twr::drifting_room{.settles_at = celsius(9.0), .time_constant = hours(15.0)};
    const auto coarse = twr::temperature_course_of(o, hours(24.0), hours(6.0)).points.back().water;
    const auto fine = twr::temperature_course_of(o, hours(24.0), minutes(1.0)).points.back().water;
    TW_CHECK(refined, in_kelvins(coarse.central), in_kelvins(fine.central), tolerance{.absolute = 1e-6});
    TW_CHECK(refined, in_kelvins(coarse.low), in_kelvins(fine.low), tolerance{.absolute = 1e-5});
    TW_CHECK(refined, in_kelvins(coarse.high), in_kelvins(fine.high), tolerance{.absolute = 1e-5});
  }
}

TEST_CASE("temperature course: it settles below the room, above the wet bulb, where nothing is lost") {
  const evidence rest{"tankwright::room::temperature_course_of", kind::identity, "no net loss where it settles"};
  const evidence between{"tankwright::room::temperature_course_of", kind::property,
                         "between wet bulb and room temperature"};
  for (const double h : {35.0, 50.0, 80.0}) {
    const auto o = without_power(25.0, 20.0, h);
    const auto course = twr::temperature_course_of(o, days(20.0), days(1.0));
    TW_CHECK(rest, loss_at(o.tank, in_kelvins(course.settles_at->central)), 0.0, tolerance{.absolute = 1e-4});
    TW_CHECK(rest, in_kelvins(course.points.back().water.central), in_kelvins(course.settles_at->central),
             tolerance{.absolute = 1e-6});
    const double wet = in_celsius(twr::wet_bulb(o.tank.air));
    for (const temperature& t : {course.settles_at->low, course.settles_at->central, course.settles_at->high}) {
      TW_HOLDS(between, in_celsius(t) > wet && in_celsius(t) < 20.0);
    }
    for (const auto& p : course.points)
      TW_HOLDS(between, p.water.low <= p.water.central && p.water.central <= p.water.high);
  }
}

TEST_CASE("temperature course: time to a limit is where the curve meets it") {
  const evidence meets{"tankwright::room::time_to_temperature", kind::identity,
                       "temperature_course_of at that time is at the limit"};
  auto o = without_power(25.0, 18.0, 50.0);
  const auto limit = celsius(21.0);
  const auto when = twr::time_to_temperature(o, limit);
  TW_CHECK(meets, in_celsius(twr::temperature_course_of(o, *when.expected).points.back().water.central), 21.0,
           relative(5e-8));
  TW_CHECK(meets, in_celsius(twr::temperature_course_of(o, *when.soonest).points.back().water.low), 21.0,
           relative(5e-8));
  TW_CHECK(meets, in_celsius(twr::temperature_course_of(o, *when.latest).points.back().water.high), 21.0,
           relative(5e-8));
  CHECK(*when.soonest < *when.expected);
  CHECK(*when.expected < *when.latest);
  CHECK(!when.caution.text.empty());
  CHECK(twr::time_to_temperature(o, celsius(25.0)).soonest->value() == 0.0);
  // A limit below where it settles is never reached; one on the edge of the band is reached only in the worst case.
  CHECK(!twr::time_to_temperature(o, celsius(12.0)).soonest);
  const auto edge = *twr::temperature_course_of(o, hours(1.0)).settles_at;
  const auto only =
      twr::time_to_temperature(o, kelvins(0.5 * (in_kelvins(edge.low) + in_kelvins(edge.central))), days(30.0));
  CHECK(only.soonest.has_value());
  CHECK(!only.expected);
  CHECK(!only.latest);
  // In a heat wave the water warms, and weak evaporation is the worst case.
  auto hot = without_power(25.0, 34.0, 80.0);
  const auto warm = twr::time_to_temperature(hot, celsius(29.0));
  TW_CHECK(meets, in_celsius(twr::temperature_course_of(hot, *warm.expected).points.back().water.central), 29.0,
           relative(5e-8));
  CHECK(*warm.soonest <= *warm.expected);
}

TEST_CASE("temperature course: a limit is reached exactly where the curve passes it, in a room that drifts too") {
  const evidence same{"tankwright::room::time_to_temperature", kind::identity,
                      "the lowest or highest point of temperature_course_of"};
  for (const double room_end : {8.0, 12.0, 15.0, 18.0, 26.0, 33.0}) {
    for (const double settle_hours : {3.0, 60.0}) {
      auto o = without_power(25.0, 18.0, 50.0);
      o.room = twr::drifting_room{.settles_at = celsius(room_end), .time_constant = hours(settle_hours)};
      const auto course = twr::temperature_course_of(o, days(7.0), hours(1.0)).points;
      double lowest = 1e3, highest = 0.0;
      for (const auto& p : course) {
        lowest = std::fmin(lowest, in_celsius(p.water.central));
        highest = std::fmax(highest, in_celsius(p.water.central));
      }
      // The points are an hour apart and the courses are slow: a tenth of a kelvin to either side is enough.
      for (const double by : {-0.1, 0.1}) {
        if (lowest + by < 24.9) {
          TW_HOLDS(same, twr::time_to_temperature(o, celsius(lowest + by)).expected.has_value() == (by > 0.0));
        }
        if (highest + by > 25.1) {
          TW_HOLDS(same, twr::time_to_temperature(o, celsius(highest + by)).expected.has_value() == (by < 0.0));
        }
      }
    }
  }
}

TEST_CASE("temperature course: the largest change in an hour and in a day") {
  const evidence change{"tankwright::room::largest_change", kind::identity,
                        "the largest difference between points of temperature_course_of an hour, or a day, apart"};
  for (const double room_end : {9.0, 18.0, 33.0}) {
    auto o = without_power(25.0, 20.0, 60.0);
    o.room = twr::drifting_room{.settles_at = celsius(room_end), .time_constant = hours(6.0)};
    for (const double window : {1.0, 24.0}) {
      // Every seventh and a half minute for the hour, every three hours for the day; from the start where no window is
      // over yet.
      const auto points = twr::temperature_course_of(o, days(3.0), hours(window / 8.0)).points;
      const auto most = [&](auto end) {
        double largest = 0.0;
        for (std::size_t i = 0; i < points.size(); ++i) {
          const auto& before = points[i < 8 ? 0 : i - 8].water;
          const double d = in_kelvins(end(points[i].water)) - in_kelvins(end(before));
          if (std::fabs(d) > std::fabs(largest)) largest = d;
        }
        return largest;
      };
      const auto found = twr::largest_change(o, days(3.0), hours(window)).largest;
      const double central = most([](const auto& e) { return e.central; });
      const double low = most([](const auto&e) { return e.low; }), high = most([](const auto&e) { return e.high; });
      TW_CHECK(change, found.central.value(), central, tolerance{.absolute = 1e-7});
      TW_CHECK(change, found.low.value(), std::min({low, central, high}), tolerance{.absolute = 1e-7});
      TW_CHECK(change, found.high.value(), std::max({low, central, high}), tolerance{.absolute = 1e-7});
      CHECK(found.reason == twr::still_band);
      CHECK(found.low <= found.central);
      CHECK(found.central <= found.high);
    }
  }
  // A summer power cut: the water rises, with weak evaporation at the high end.
  const auto hot = twr::largest_change(without_power(25.0, 34.0, 80.0), days(1.0), days(1.0)).largest;
  CHECK(hot.low.value() > 0.0);
  CHECK(!twr::largest_change(without_power(25.0, 34.0, 80.0), days(1.0)).caution.text.empty());
}

TEST_CASE("temperature course: work is bounded whatever it gets") {
  const evidence bounded{"tankwright::room::temperature_course_of", kind::property,
                         "ends, or refuses, for the fastest tank and the longest time"};
  const auto o = without_power(25.0, 18.0, 50.0);
  CHECK_THROWS_AS((void)twr::temperature_course_of(o, days(1.0), seconds(1e-6)), invalid_input);
  CHECK_THROWS_AS((void)twr::temperature_course_of(o, seconds(1e8)), invalid_input);
  CHECK_THROWS_AS((void)twr::largest_change(o, seconds(1e7), minutes(1.0)), invalid_input);
  // A spoon of water behind a thousand square metres of wall: settled at once, and still after a hundred days.
  auto quick = o;
  quick.heat_capacity = joules_per_kelvin(1e3);
  quick.tank.walls[0].area = square_metres(1e3);
  const auto course = twr::temperature_course_of(quick, seconds(1e7), days(10.0));
  TW_CHECK(bounded, in_kelvins(course.points.back().water.central), in_kelvins(course.settles_at->central),
           tolerance{.absolute = 1e-4});
  quick.room = twr::drifting_room{.settles_at = celsius(9.0), .time_constant = days(30.0)};
  quick.heat_capacity = joules_per_kelvin(1.0);
  try {
    (void)twr::temperature_course_of(quick, seconds(1e7), days(10.0));
    TW_HOLDS(bounded, true);
  } catch (const no_convergence& e) {
    TW_HOLDS(bounded, std::string_view{e.what()}.find("changes too fast for so long a time") != std::string_view::npos);
  }
  // Too much heat for any water: no end below 90 degC, and no failure either.
  auto kettle = o;
  kettle.tank.sources = {{.label = "heater", .heat = kilowatts(50.0)}};
  CHECK(!twr::temperature_course_of(kettle, hours(1.0)).settles_at);
}

TEST_CASE("temperature course: mistakes") {
  auto o = without_power(25.0, 18.0, 50.0);
  CHECK_THROWS_AS((void)twr::temperature_course_of(o, hours(-1.0)), invalid_input);
  CHECK_THROWS_AS((void)twr::temperature_course_of(o, hours(1.0), seconds(0.0)), invalid_input);
  CHECK_THROWS_AS((void)twr::time_to_temperature(o, celsius(std::nan(""))), invalid_input);
  o.room = twr::drifting_room{.settles_at = celsius(2.0), .time_constant = hours(10.0)};
  CHECK(message_of([&] {
          (void)twr::temperature_course_of(o, hours(1.0));
        }).find("final room temperature = 2 degC is outside the published range 6 to 35 degC (Shah)") !=
        std::string::npos);
  CHECK(in_celsius(twr::temperature_course_of(o, hours(10.0), hours(1.0), extrapolate).points.back().water.central) <
        23.0);
  o.room = twr::drifting_room{.settles_at = celsius(10.0), .time_constant = hours(0.0)};
  CHECK_THROWS_AS((void)twr::temperature_course_of(o, hours(1.0)), invalid_input);
  CHECK(twr::temperature_course_of(without_power(25.0, 18.0, 50.0), hours(0.0)).points.size() == 1);
  CHECK_THROWS_AS((void)twr::largest_change(o, hours(1.0), seconds(0.0)), invalid_input);
}

TEST_CASE("temperature course: both ends stepped by themselves, in a room that cools below its dew point") {
  const evidence stepped{"tankwright::room::temperature_course_of", kind::identity,
                         "independent midpoint stepping of each end at 60 s"};
  for (const bool drifts : {false, true}) {
    auto o = without_power(24.0, 19.0, 70.0);
    o.tank.surfaces[0].agitation = twr::gently_moving;
    if (drifts) o.room = twr::drifting_room{.settles_at = celsius(8.0), .time_constant = hours(9.0)};
    const double vapour = in_pascals(twr::vapour_pressure(o.tank.air));
    const auto after = [&](auto end) {
      const auto slope = [&](double time, double kelvin) {
        auto tank = o.tank;
        tank.water.temperature = kelvins(kelvin);
        if (drifts) {
          const double air = 8.0 + 11.0 * std::exp(-time / (9.0 * 3600.0));
          const double saturation = in_pascals(twr::saturation_pressure(celsius(air)));
          tank.air = {.temperature = celsius(air),
                      .humidity = relative_humidity::from_fraction(std::min(1.0, vapour / saturation))};
        }
        tank.make_up = tank.water.temperature;  // no heat for a make-up
        return -end(twr::heat_balance(tank, extrapolate).net).value() / o.heat_capacity.get().value();
      };
      double t = 297.15;
      for (double time = 0.0; time < 12.0 * 3600.0 - 1.0; time += 60.0) {
        t += 60.0 * slope(time + 30.0, t + 30.0 * slope(time, t));
      }
      return t;
    };
    const auto found = twr::temperature_course_of(o, hours(12.0), hours(1.0)).points.back();
    // Least evaporation leaves it warmest.
    TW_CHECK(stepped, in_kelvins(found.water.high), after([](const auto& n) { return n.low; }),
             tolerance{.absolute = 1e-5});
    TW_CHECK(stepped, in_kelvins(found.water.low), after([](const auto& n) { return n.high; }),
             tolerance{.absolute = 1e-5});
    CHECK(found.water.reason == twr::agitated_band);
    CHECK(in_hours(found.time) == 12.0);
  }
}

TEST_CASE("temperature course: capacities in a band, for a loss in a straight line") {
  const evidence line{"tankwright::room::time_to_temperature", kind::identity, "C/H ln((T0 - Tr)/(T - Tr)), by hand"};
  // No open water, one wall: 12 W/K to a room of 18 degC.
  const twr::uncontrolled_tank dry{
      .tank = {.water = seawater(25.0),
               .air = air_of(18.0, 50.0),
               .surfaces = {},
               .walls = {{.area = square_metres(10.0), .transmittance = watts_per_square_metre_kelvin(1.2)}}},
      .heat_capacity = joules_per_kelvin(8e6)};
  const auto by_hand = [](double c) { return c / 12.0 * std::log(7.0 / 3.0); };
  const estimate<heat_capacity> band{joules_per_kelvin(6e6), joules_per_kelvin(8e6), joules_per_kelvin(9e6), "rock"};
  const auto found = twr::time_to_temperature(dry, band, celsius(21.0), days(30.0));
  TW_CHECK(line, found.soonest->value(), by_hand(6e6), relative(1e-6));
  TW_CHECK(line, found.expected->value(), by_hand(8e6), relative(1e-6));
  TW_CHECK(line, found.latest->value(), by_hand(9e6), relative(1e-6));
  // A week is looked ahead when nothing is said: 9e6 J/K take 7.35 days, 8e6 6.5.
  const auto week = twr::time_to_temperature(dry, band, celsius(21.0));
  CHECK(week.expected);
  CHECK_FALSE(week.latest);
  const auto change = twr::largest_change(dry, days(1.0)).largest;  // in an hour, when nothing is said
  TW_CHECK(line, change.central.value(), 7.0 * std::expm1(-3600.0 * 12.0 / 8e6), relative(1e-6));
  CHECK(compare(in_minutes(twr::temperature_course_of(dry, hours(3.0)).points[1].time), 30.0, relative(1e-12)).good);
}

TEST_CASE("temperature course: the largest change within no time, and within less than a part of the window") {
  const auto o = dry(25.0, 18.0);
  const auto none = twr::largest_change(o, seconds(0.0)).largest;
  CHECK(none.low.value() == 0.0);
  CHECK(none.central.value() == 0.0);
  CHECK(none.high.value() == 0.0);
  const auto soon = twr::largest_change(o, seconds(100.0), hours(1.0)).largest;
  CHECK(std::fabs(soon.central.value() - 7.0 * std::expm1(-100.0 / dry_time_constant)) < 1e-9);
}

TEST_CASE("temperature course: water at rest moves when the room does") {
  const evidence two{"tankwright::room::temperature_course_of", kind::identity,
                     "two exponentials: that of the room and that of the tank, by hand"};
  for (const double settles : {10.0, 24.0}) {
    for (const double room_hours : {2.0, 15.0}) {
      auto o = dry(20.0, 20.0);
      o.room = twr::drifting_room{.settles_at = celsius(settles), .time_constant = hours(room_hours)};
      const double tau = dry_time_constant, room_tau = 3600.0 * room_hours;
      const double of_room = (20.0 - settles) * room_tau / (room_tau - tau);
      const double t = 40.0 * 3600.0;
      const double by_hand =
          settles + of_room * std::exp(-t / room_tau) + (20.0 - settles - of_room) * std::exp(-t / tau);
      TW_CHECK(two, in_celsius(twr::temperature_course_of(o, hours(40.0), hours(40.0)).points.back().water.central),
               by_hand, tolerance{.absolute = 1e-6});
    }
  }
}

TEST_CASE("temperature course: a limit just above where it settles is reached, late") {
  const evidence line{"tankwright::room::time_to_temperature", kind::identity, "C/H ln((T0 - Tr)/(T - Tr)), by hand"};
  // At the limit half a milliwatt is lost, or gained.
  const double left = 5e-4 / 12.0;
  for (const double side : {1.0, -1.0}) {
    const auto o = dry(18.0 + 7.0 * side, 18.0);
    const auto when = twr::time_to_temperature(o, celsius(18.0 + side * left), seconds(1e7));
    CHECK(when.expected.has_value());
    if (when.expected) TW_CHECK(line, when.expected->value(), dry_time_constant * std::log(7.0 / left), relative(1e-4));
    CHECK_FALSE(twr::time_to_temperature(o, celsius(18.0 - side * left), seconds(1e7)).expected);
  }
}

TEST_CASE("temperature course: a week is looked ahead when nothing is said, to the minute") {
  const auto when = [](double days_until) {
    const double left = 7.0 * std::exp(-days_until * 86400.0 / dry_time_constant);
    return twr::time_to_temperature(dry(25.0, 18.0), celsius(18.0 + left));
  };
  const auto of_a_band = [](double days_until) {
    const double left = 7.0 * std::exp(-days_until * 86400.0 / dry_time_constant);
    return twr::time_to_temperature(dry(25.0, 18.0), estimate<heat_capacity>{joules_per_kelvin(8e6)},
                                    celsius(18.0 + left));
  };
  CHECK(when(6.9993).expected);
  CHECK_FALSE(when(7.0007).expected);
  CHECK(of_a_band(6.9993).expected);
  CHECK_FALSE(of_a_band(7.0007).expected);
}

TEST_CASE("temperature course: where the air condenses on the water, weak evaporation cools it first") {
  const evidence meets{"tankwright::room::time_to_temperature", kind::identity,
                       "the coldest of the three courses is at the limit"};
  // Cold behind the glass: the water falls through the dew point of the room, 22.3 degC.
  auto o = without_power(25.0, 24.0, 90.0);
  o.tank.walls[0].outside = celsius(3.0);
  o.tank.walls[0].area = square_metres(40.0);
  const auto when = twr::time_to_temperature(o, celsius(17.0), days(30.0));
  CHECK(when.soonest.has_value());
  CHECK(*when.soonest < *when.expected);
  const auto there = twr::temperature_course_of(o, *when.soonest, days(1.0)).points.back().water;
  TW_CHECK(meets, in_celsius(there.low), 17.0, relative(1e-7));
}

TEST_CASE("temperature course: where it settles, up to 90 degC and down to -2 degC") {
  const auto settles = [](double watts_number, double room) {
    auto o = dry(25.0, room);
    o.tank.sources = {{.label = "heater", .heat = watts(watts_number)}};
    return twr::temperature_course_of(o, minutes(1.0), minutes(1.0), extrapolate).settles_at;
  };
  const auto below = settles(12.0 * 72.0 - 5e-4, 18.0);
  CHECK(below.has_value());
  CHECK(std::fabs(in_celsius(below->central) - (90.0 - 5e-4 / 12.0)) < 1e-8);
  CHECK_FALSE(settles(12.0 * 72.0 + 5e-4, 18.0));
  CHECK(std::fabs(in_celsius(settles(0.0, -1.9)->central) + 1.9) < 1e-8);
  CHECK_FALSE(settles(0.0, -2.1));  // the course of the hours before it freezes is told all the same
  // 12 W/K of panels: half a milliwatt more or less of what keeps it at -2 degC.
  CHECK(settles(12.0 * 6.0 + 5e-4, -8.0));
  CHECK_FALSE(settles(12.0 * 6.0 - 5e-4, -8.0));
  // Between what strong and what weak evaporation loses at 90 degC.
  auto o = without_power(25.0, 18.0, 50.0);
  auto hot = o.tank;
  hot.water.temperature = celsius(90.0);
  const auto lost = twr::heat_balance(hot, extrapolate);
  const auto net = [&](auto end) { return (end(lost.net) - end(lost.make_up)).value(); };
  const double low = net([](const auto&e) { return e.low; }), high = net([](const auto&e) { return e.high; });
  CHECK(low < high);
  o.tank.sources = {{.label = "heater", .heat = watts(0.5 * (low + high))}};
  CHECK_FALSE(twr::temperature_course_of(o, minutes(1.0), minutes(1.0)).settles_at);
}

TEST_CASE("temperature course: water that cools below where evaporation was measured is refused") {
  const auto o = without_power(9.0, 6.5, 40.0);
  const auto cold = twr::temperature_course_of(o, days(10.0), days(10.0), extrapolate).points.back().water;
  CHECK(in_celsius(cold.high) < 7.0);
  try {
    (void)twr::temperature_course_of(o, days(10.0), days(10.0));
    CHECK(false);
  } catch (const out_of_range& e) {
    CHECK(e.details().function == "tankwright::room::temperature_course_of");
    CHECK(e.details().argument == "water temperature");
    CHECK(std::fabs(e.details().value - in_celsius(cold.high)) < 1e-9);  // weak evaporation is looked at first
  }
}

TEST_CASE("temperature course: what stands beside the numbers") {
  const auto course = twr::temperature_course_of(without_power(25.0, 18.0, 50.0), hours(1.0));
  CHECK(course.points[0].water.reason == twr::still_band);
  CHECK(course.settles_at->reason == twr::still_band);
  CHECK(course.caution.text == twr::uncontrolled_caution.text);
}

namespace {
/// dy/dt = -y/100 s, and from 33.31 s on a pull that grows: a kink in the slope. Held against its closed form.
struct sampled {
  double longest, every;
  std::size_t values;
  double kink = std::numeric_limits<double>::infinity();  ///< as it is told
  double pull = 0.0, hidden_pull = 0.0;                   ///< the other one from 33.3075 s on, of which nothing is told
  int slopes = 0;                                         ///< asked for: one at the start, six a step
  double worst = 0.0;                                     ///< of all values
  std::size_t taken = 0;

  double exact(double t) const {
    const auto of = [t](double from) {
      const double since = std::max(0.0, t - from);
      return 100.0 * since - 1e4 * -std::expm1(-since / 100.0);
    };
    return std::exp(-t / 100.0) + pull * of(33.31) + hidden_pull * of(33.3075);
  }
  void run() {
    const auto slope = [this](double t, double y) {
      ++slopes;
      return -y / 100.0 + pull * std::max(0.0, t - 33.31) + hidden_pull * std::max(0.0, t - 33.3075);
    };
    numerics::course course{slope, {.longest = longest, .tolerance = 1.0, .kink = kink}, 1.0};
    twr::detail::sample("tankwright::test", course, every, every * static_cast<double>(values), 1e-8, [&](double y) {
      worst = std::max(worst, std::fabs(y - exact(every * static_cast<double>(++taken))));
    });
  }
};
}  // namespace

TEST_CASE(
    "temperature course: values close together are read between two steps a stretch of two fifths of the longest") {
  // 199.9 values in a fifth of the longest step are 199: 398 a stretch, of two steps.
  sampled dense{.longest = 19.99, .every = 0.02, .values = 398 * 200};
  dense.run();
  CHECK(dense.taken == dense.values);
  CHECK(dense.slopes == 1 + 12 * 200);
  CHECK(dense.worst < 1e-9);
  // Two and a half are two: four a stretch.
  sampled few{.longest = 20.0, .every = 1.6, .values = 40};
  few.run();
  CHECK(few.taken == few.values);
  CHECK(few.slopes == 1 + 12 * 10);
  // One and a half are stepped to, each.
  sampled sparse{.longest = 20.0, .every = 8.0 / 3.0, .values = 31};
  sparse.run();
  CHECK(sparse.taken == sparse.values);
  CHECK(sparse.slopes == 1 + 6 * 31);
}

TEST_CASE("temperature course: no stretch is read across a kink, whether it was told of or not") {
  // Four stretches and one that ends at the kink, 1665 values; three from there.
  sampled told{.longest = 19.99, .every = 0.02, .values = 1665 + 3 * 398, .kink = 33.31, .pull = 0.01};
  told.run();
  CHECK(told.taken == told.values);
  CHECK(told.slopes == 1 + 12 * 8);
  CHECK(told.worst < 1e-8);
  // The fifth stretch, whose first step goes across the kink, is stepped through again, value by value.
  sampled untold{.longest = 19.99, .every = 0.02, .values = 8 * 398, .pull = 0.01};
  untold.run();
  CHECK(untold.taken == untold.values);
  CHECK(untold.slopes == 1 + 12 * 7 + 6 + 6 * 398);
  CHECK(untold.worst < 1e-5);
  // One that is not told of, between the last value before the other and that one: both are gone through.
  sampled both{.longest = 19.99, .every = 0.02, .values = 1668, .kink = 33.31, .pull = 0.01, .hidden_pull = 1000.0};
  both.run();
  CHECK(both.taken == both.values);
  CHECK(both.worst < 1e-2);
}

TEST_CASE("temperature course: soonest, expected and latest are in order, whatever laws give way on the way") {
  const evidence ordered{"tankwright::room::time_to_temperature", kind::property, "soonest <= expected <= latest"};
  for (double humidity = 28.0; humidity <= 95.0; humidity += 1.0) {
    for (const double room : {18.0, 24.5, 30.0}) {
      for (const double limit : {23.0, 24.5, 25.5, 27.0}) {
        const auto when = twr::time_to_temperature(without_power(25.0, room, humidity), celsius(limit), days(30.0));
        if (when.expected) TW_HOLDS(ordered, when.soonest && *when.soonest <= *when.expected);
        if (when.latest) TW_HOLDS(ordered, when.expected && *when.expected <= *when.latest);
      }
    }
  }
}
