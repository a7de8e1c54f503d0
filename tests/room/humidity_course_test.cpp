// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/humidity_course.hpp>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {
relative_humidity humid(double percent_number) { return relative_humidity::from_percent(percent_number); }

/// Independent: masses of dry air and vapour in the room, stepped by the midpoint rule, outflow by what does not fit.
double vapour_by_stepping(const twr::tank_room& r, double start_fraction, double time, double h) {
  constexpr double rd = 287.042, rv = 287.042 / 0.621945;
  const double t = in_kelvins(r.room.temperature);
  const double v = r.room.volume.get().value();
  const double total = in_pascals(r.room.outdoor.pressure.value());
  const double wo = twr::humidity_ratio_of(r.room.outdoor).value();
  const double saturation = in_pascals(twr::saturation_pressure(r.room.temperature));
  struct masses {
    double dry, vapour;
  };
  const auto rates = [&](masses m) -> masses {
    const double p = m.vapour * rv * t / v;
    const twr::air a{.temperature = r.room.temperature,
                     .humidity = relative_humidity::from_fraction(p / saturation),
                     .pressure = r.room.outdoor.pressure};
    const double e =
        twr::evaporation({.water = r.water, .air = a, .surfaces = r.surfaces}, extrapolate).rate.central.value();
    const double in_dry = r.room.air_changes.get().value() * (total - p) * v / (rd * t);
    // Volume in = volume out: dry air and vapour that arrive take room, the same volume of room air leaves.
    const double volume_in = in_dry * rd * t / total + (in_dry * wo + e) * rv * t / total;
    return {in_dry - volume_in * m.dry / v, in_dry * wo + e - volume_in * m.vapour / v};
  };
  const double p0 = start_fraction * saturation;
  masses m{(total - p0) * v / (rd * t), p0 * v / (rv * t)};
  for (double now = 0.0; now < time - 0.5 * h; now += h) {
    const masses k = rates(m);
    const masses k2 = rates({m.dry + 0.5 * h * k.dry, m.vapour + 0.5 * h * k.vapour});
    m = {m.dry + h * k2.dry, m.vapour + h * k2.vapour};
  }
  return m.vapour;
}

double gained(const twr::humidity_point& p) {
  return (p.evaporated + p.from_sources - p.ventilated - p.dehumidified - p.condensed).value();
}
}  // namespace

TEST_CASE("humidity course: against an independent stepping of the masses in the room") {
  const evidence stepped{"tankwright::room::humidity_course", kind::identity,
                         "independent time-stepping of dry air and vapour, step 2 s"};
  const twr::tank_room r = cellar(22.0, air_of(0, 80));
  for (const double start : {30.0, 90.0}) {
    const auto course =
        twr::humidity_course({.room = r, .start = humid(start), .time = hours(4.0), .step = hours(2.0)});
    CHECK(course.size() == 3);
    TW_CHECK(stepped, course[1].vapour.value(), vapour_by_stepping(r, start / 100.0, 7200.0, 2.0), relative(1e-6));
    TW_CHECK(stepped, course[2].vapour.value(), vapour_by_stepping(r, start / 100.0, 14400.0, 2.0), relative(1e-6));
  }
}

TEST_CASE("humidity course: moisture is conserved, and it ends in the balance") {
  const evidence conserved{"tankwright::room::humidity_course", kind::identity,
                           "gain of the vapour = sum of the flows"};
  const evidence ends{"tankwright::room::humidity_course", kind::identity, "comes to rest at humidity_balance"};
  const evidence refined{"tankwright::room::humidity_course", kind::property,
                         "the same with points ten times as dense"};
  for (const double changes : {0.0, 0.3, 1.5}) {
    for (const double capacity : {0.0, 6.0, 40.0}) {
      for (const double start : {35.0, 55.0, 70.0, 98.0}) {
        CAPTURE(changes);
        CAPTURE(capacity);
        CAPTURE(start);
        twr::tank_room r = cellar(24.0, air_of(20, 60), changes);
        r.sources = {{.label = "drying", .rate = grams_per_hour(100.0)}};
        if (capacity > 0.0)
          r.dehumidifier = twr::controlled_dehumidifier{.machine = {.capacity = kilograms_per_day(capacity)},
                                                        .set_point = humid(55.0)};
        const auto course =
            twr::humidity_course({.room = r, .start = humid(start), .time = days(4.0), .step = hours(6.0)});
        for (const auto& p : course) {
          TW_CHECK(conserved, p.vapour.value() - course[0].vapour.value(), gained(p),
                   tolerance{.absolute = 1e-9 * course[0].vapour.value()});
          CHECK(p.air.humidity.get().value() <= 1.0);
        }
        const auto rest = twr::humidity_balance(r).central;
        TW_CHECK(ends, in_percent(course.back().air.humidity.get()), in_percent(rest.air.humidity.get()),
                 relative(1e-6));
        if (rest.saturated) CHECK(course.back().condensed.value() > 0.0);
        const auto dense =
            twr::humidity_course({.room = r, .start = humid(start), .time = days(1.0), .step = hours(0.6)});
        TW_CHECK(refined, dense.back().vapour.value(), course[4].vapour.value(), relative(1e-7));
      }
    }
  }
}

TEST_CASE("humidity course: work is bounded, and the totals still balance") {
  const evidence conserved{"tankwright::room::humidity_course", kind::identity,
                           "vapour gained = evaporated + sources - ventilated - dehumidified - condensed"};
  const evidence settled{"tankwright::room::humidity_course", kind::identity, "ends where humidity_balance rests"};
  for (const double changes : {0.5, 100.0, 3600.0}) {
    for (const bool machine : {false, true}) {
      twr::tank_room r = cellar(24.0, air_of(20, 60), changes);
      if (machine) {
        r.dehumidifier =
            twr::controlled_dehumidifier{.machine = {.capacity = kilograms_per_day(30.0)}, .set_point = humid(50.0)};
      }
      const auto course =
          twr::humidity_course({.room = r, .start = humid(90.0), .time = days(30.0), .step = days(1.0)});
      const auto &first = course.front(), &last = course.back();
      const mass in = last.evaporated + last.from_sources;
      TW_CHECK(conserved, (in - last.ventilated - last.dehumidified - last.condensed).value(),
               (last.vapour - first.vapour).value(), (tolerance{.absolute = 1e-11 * in.value()}));
      TW_CHECK(settled, last.air.humidity.get().value(), twr::humidity_balance(r).central.air.humidity.get().value(),
               relative(1e-8));
    }
  }
  const twr::tank_room r = cellar(24.0, air_of(20, 60));
  CHECK_THROWS_AS((void)twr::humidity_course(
                      {.room = cellar(24.0, air_of(20, 60), 1e4), .start = humid(50.0), .time = hours(24.0)}),
                  invalid_input);
  CHECK_THROWS_AS(
      (void)twr::humidity_course({.room = r, .start = humid(50.0), .time = hours(24.0), .step = seconds(1e-6)}),
      invalid_input);
}

TEST_CASE("humidity course: mistakes") {
  const twr::tank_room r = cellar(24.0, air_of(20, 60));
  CHECK_THROWS_AS(
      (void)twr::humidity_course({.room = r, .start = relative_humidity::from_fraction(50.0), .time = hours(1.0)}),
      invalid_input);
  CHECK_THROWS_AS((void)twr::humidity_course({.room = r, .start = humid(50.0), .time = hours(-1.0)}), invalid_input);
  CHECK_THROWS_AS((void)twr::humidity_course({.room = r, .start = humid(50.0), .time = hours(1.0), .step = hours(0.0)}),
                  invalid_input);
  CHECK(twr::humidity_course({.room = r, .start = humid(50.0), .time = hours(0.0)}).size() == 1);
}

TEST_CASE("humidity course: a room without water takes on the outdoor humidity ratio, in a pure exponential") {
  const evidence closed{"tankwright::room::humidity_course", kind::identity,
                        "W = W_o + (W_0 - W_o) exp(-n t): what ventilation alone does, for any amount of vapour"};
  for (const double changes : {0.5, 4.0}) {
    auto r = cellar(30.0, air_of(12.0, 70.0), changes);
    r.surfaces.clear();
    const auto course =
        twr::humidity_course({.room = r, .start = humid(95.0), .time = hours(3.0), .step = minutes(45.0)});
    const double from = twr::humidity_ratio_of(air_of(30.0, 95.0)).value();
    const double to = twr::humidity_ratio_of(r.room.outdoor).value();
    for (const auto& p : course) {
      const double left = std::exp(-in_hours(p.time) * changes);
      TW_CHECK(closed, twr::humidity_ratio_of(p.air).value(), to + (from - to) * left,
               tolerance{.absolute = 1e-8 * (from - to)});
    }
    CHECK(course[0].time.value() == 0.0);
  }
}

TEST_CASE("humidity course: a strong source in a closed box") {
  const evidence closed{"tankwright::room::humidity_course", kind::identity,
                        "P - p = (P - p_0) exp(-G t/(eps V P/(R T))): vapour pushes out the mixture that is there"};
  // At 35 degC and 22.7 kPa there is room for a quarter of vapour.
  auto r = cellar(
      35.0, {.temperature = celsius(20.0), .humidity = humid(0.0), .pressure = absolute_pressure{pascals(22700.0)}},
      0.0);
  r.room.volume = cubic_metres(1.0);
  r.surfaces.clear();
  const double air = 0.621945 * 22700.0 / (287.042 * 308.15);  // kg of vapour that would fill the box
  r.sources = {{.label = "steam", .rate = kilograms_per_second(0.22 * air / 3600.0)}};
  const auto course = twr::humidity_course({.room = r, .start = humid(0.0), .time = hours(1.0)});
  TW_CHECK(closed, in_pascals(twr::vapour_pressure(course.back().air)), 22700.0 * -std::expm1(-0.22), relative(1e-8));
}

TEST_CASE("humidity course: strong machines, little water and small rooms are as exact as they say") {
  const evidence refined{"tankwright::room::humidity_course", kind::property,
                         "the same with points a thousand times as dense"};
  for (const double cubic : {2.0, 20.0, 150.0}) {
    for (const double capacity : {0.0, 10.0, 50.0, 300.0}) {
      for (const double area : {0.1, 1.0, 6.0}) {
        twr::tank_room r = cellar(24.0, air_of(16.0, 60.0), 0.3);
        r.room.volume = cubic_metres(cubic);
        r.surfaces[0].area = square_metres(area);
        if (capacity > 0.0)
          r.dehumidifier = twr::controlled_dehumidifier{.machine = {.capacity = kilograms_per_day(capacity)},
                                                        .set_point = humid(30.0)};
        const auto after = [&](double seconds_long, int parts) {
          return twr::humidity_course(
              {.room = r, .start = humid(90.0), .time = seconds(seconds_long), .step = seconds(seconds_long / parts)});
        };
        for (const double t : {300.0, 1800.0}) {
          const auto coarse = after(t, 1), dense = after(t, 1000);
          const double change = std::fabs((dense.back().vapour - dense.front().vapour).value());
          TW_CHECK(refined, coarse.back().vapour.value(), dense.back().vapour.value(),
                   tolerance{.absolute = 2e-5 * change});
          TW_CHECK(refined, coarse.back().dehumidified.value(), dense.back().dehumidified.value(),
                   (tolerance{.absolute = 2e-5 * change, .relative = 2e-5}));
        }
      }
    }
  }
}

TEST_CASE("humidity course: from saturated air, and from the set point, dry air leads away") {
  auto r = cellar(24.0, air_of(5.0, 60.0), 0.5);
  r.surfaces.clear();
  const auto airing = twr::humidity_course({.room = r, .start = humid(100.0), .time = hours(1.0)}).back();
  CHECK(airing.condensed.value() == 0.0);
  CHECK(in_percent(airing.air.humidity.get()) < 80.0);
  r.dehumidifier =
      twr::controlled_dehumidifier{.machine = {.capacity = kilograms_per_day(20.0)}, .set_point = humid(55.0)};
  const auto idle = twr::humidity_course({.room = r, .start = humid(55.0), .time = hours(1.0)}).back();
  CHECK(idle.dehumidified.value() == 0.0);
  CHECK(in_percent(idle.air.humidity.get()) < 50.0);
  // A strong machine dries saturated air in which water evaporates all the same.
  auto wet = cellar(24.0, air_of(24.0, 100.0), 0.5);
  wet.dehumidifier =
      twr::controlled_dehumidifier{.machine = {.capacity = kilograms_per_day(100.0)}, .set_point = humid(55.0)};
  const auto dried = twr::humidity_course({.room = wet, .start = humid(100.0), .time = hours(1.0)}).back();
  CHECK(dried.condensed.value() == 0.0);
  CHECK(in_percent(dried.air.humidity.get()) < 90.0);
}

TEST_CASE("humidity course: half a millisecond is gone through too") {
  const auto r = cellar(24.0, air_of(5.0, 60.0), 0.5);
  const auto course = twr::humidity_course({.room = r, .start = humid(50.0), .time = seconds(5e-4)});
  const auto rate =
      twr::evaporation({.water = r.water, .air = air_of(24.0, 50.0), .surfaces = r.surfaces}).rate.central;
  CHECK(course.size() == 2);
  CHECK(compare(course[1].evaporated.value(), 5e-4 * rate.value(), relative(1e-6)).good);
}

TEST_CASE("humidity course: steps are counted: a crossing is charged as fifty, and rounding takes none") {
  const twr::detail::moisture_model m{.surface = {298.15, 295.15, 3000.0, 1300.0, 101325.0, 0.0},
                                      .volume = 100.0,
                                      .changes = 1e-4,
                                      .outdoor = 0.02,
                                      .saturation = 2600.0};
  int steps = 0;
  (void)twr::detail::go_on("tankwright::test", m, {.vapour = 1300.0}, 10.0 * (1.0 + 1e-12), 1.0, steps);
  CHECK(steps == 10);
  steps = 0;  // saturated after a while: one long step that crosses, and one at rest
  const auto end = twr::detail::go_on("tankwright::test", m, {.vapour = 2599.0}, 1000.0, 1000.0, steps);
  CHECK(end.vapour == 2600.0);
  CHECK(steps == 52);
}
