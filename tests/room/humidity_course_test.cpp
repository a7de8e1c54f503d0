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
