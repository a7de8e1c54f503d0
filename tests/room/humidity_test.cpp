// SPDX-License-Identifier: BSL-1.0
#include <cmath>

#include <tankwright/room/humidity.hpp>

#include <array>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {

/// An independent way to the same air: the humidity ratio stepped through time by the midpoint rule until it rests,
/// with the public functions for air and evaporation. Central evaporation, no machine.
double settled_by_stepping(const twr::tank_room& r, double start) {
  const absolute_pressure total = r.room.outdoor.pressure;
  const double outdoor = twr::humidity_ratio_of(r.room.outdoor).value();
  double sources = 0.0;
  for (const auto& s : r.sources) sources += s.rate.get().value();
  const auto slope = [&](double ratio) {
    const twr::air a =
        twr::air_from(twr::air_of_humidity_ratio{.temperature = r.room.temperature,
                                                 .ratio = twr::humidity_ratio::from_kilograms_per_kilogram(ratio),
                                                 .pressure = total});
    const double dry = twr::dry_air_density(a).value();
    const double in =
        r.surfaces.empty()
            ? 0.0
            : twr::evaporation({.water = r.water, .air = a, .surfaces = r.surfaces}, extrapolate).rate.central.value();
    return r.room.air_changes.get().value() * (outdoor - ratio) + (in + sources) / (dry * r.room.volume.get().value());
  };
  double w = start;
  const double h = 200.0;
  for (int i = 0; i < 2000; ++i) w += h * slope(w + 0.5 * h * slope(w));
  return w;
}

double imbalance(const twr::moisture_balance& b) {
  return (b.evaporation + b.sources - b.ventilation - b.dehumidified - b.condensing).value();
}

}  // namespace

TEST_CASE("humidity: the coupled balance is where an independent stepping through time comes to rest") {
  const evidence rests{"tankwright::room::humidity_balance", kind::identity,
                       "independent time-stepping to rest, from above and below"};
  for (const double room_temperature : {18.0, 22.0, 24.0, 27.0}) {
    for (const double changes : {0.2, 0.5, 2.0}) {
      for (const twr::air& outdoor : {air_of(-10, 90), air_of(0, 80), air_of(12, 70)}) {
        twr::tank_room r = cellar(room_temperature, outdoor, changes);
        r.sources = {{.label = "people", .rate = grams_per_hour(100.0)}};
        r.surfaces[0].covered = percent(changes < 0.5 ? 80.0 : 20.0);
        const auto b = twr::humidity_balance(r);
        if (b.central.saturated) continue;
        const double ratio = twr::humidity_ratio_of(b.central.air).value();
        TW_CHECK(rests, ratio, settled_by_stepping(r, 0.3 * ratio), relative(1e-6));
        TW_CHECK(rests, ratio, settled_by_stepping(r, twr::humidity_ratio_of(air_of(room_temperature, 99)).value()),
                 relative(1e-6));
      }
    }
  }
}

TEST_CASE("humidity: moisture is conserved, low to high") {
  const evidence conserved{"tankwright::room::humidity_balance", kind::identity, "what comes in goes somewhere"};
  const evidence order{"tankwright::room::humidity_balance", kind::property,
                       "low <= central <= high; never above saturation; wetter with fewer air changes"};
  for (const double room_temperature : {20.0, 24.0, 30.0}) {
    double last = 2.0;
    for (const double changes : {0.0, 0.05, 0.3, 1.0, 5.0}) {
      for (const bool machine : {false, true}) {
        if (machine && room_temperature < 21.0) continue;
        twr::tank_room r = cellar(room_temperature, air_of(5, 80), changes);
        r.sources = {{.label = "drying", .rate = grams_per_hour(250.0)},
                     {.label = "people", .rate = grams_per_hour(50.0)}};
        if (machine)
          r.dehumidifier = twr::controlled_dehumidifier{.machine = {.capacity = kilograms_per_day(15.0)},
                                                        .set_point = relative_humidity::from_percent(55.0)};
        const auto b = twr::humidity_balance(r);
        for (const auto* end : {&b.low, &b.central, &b.high}) {
          TW_CHECK(conserved, imbalance(*end), 0.0, tolerance{.absolute = 1e-9 * end->evaporation.value() + 1e-13});
          TW_HOLDS(order, end->air.humidity.get().value() <= 1.0);
          TW_HOLDS(order, end->saturated == (end->condensing.value() > 0.0));
          TW_HOLDS(order, end->duty.value() >= 0.0 && end->duty.value() <= 1.0);
        }
        TW_HOLDS(order, b.low.air.humidity.get() <= b.central.air.humidity.get() &&
                            b.central.air.humidity.get() <= b.high.air.humidity.get());
        if (!machine) {
          TW_HOLDS(order, b.central.air.humidity.get().value() <= last);
          last = b.central.air.humidity.get().value();
        }
      }
    }
  }
}

TEST_CASE("humidity: a closed room with a source is saturated, and says what condenses") {
  const auto closed = twr::humidity_balance(cellar(24.0, air_of(28, 60), 0.0));
  CHECK(closed.central.saturated);
  CHECK(closed.central.air.humidity.get().value() == 1.0);
  CHECK(closed.central.condensing.value() > 0.0);
  CHECK(closed.central.ventilation.value() == 0.0);
  CHECK(!closed.within_data);
  CHECK(!closed.caution.text.empty());

  // Warmer air over the water: evaporation stops before the air is saturated, where p = a_w p_sat(water).
  const evidence equilibrium{"tankwright::room::humidity_balance", kind::identity,
                             "a closed room over colder water rests at the vapour pressure of the water"};
  const auto warm = twr::humidity_balance(cellar(28.0, air_of(28, 60), 0.0));
  CHECK(!warm.central.saturated);
  TW_CHECK(equilibrium, in_pascals(twr::vapour_pressure(warm.central.air)),
           water::water_activity(practical_salinity{35.0}).value() * in_pascals(water::vapour_pressure(celsius(25.0))),
           relative(1e-9));

  // Dry outdoor air, nothing evaporating: the room becomes outdoor air.
  twr::tank_room empty = cellar(22.0, air_of(0, 80));
  empty.surfaces.clear();
  TW_CHECK(equilibrium, twr::humidity_ratio_of(twr::humidity_balance(empty).central.air).value(),
           twr::humidity_ratio_of(air_of(0, 80)).value(), relative(1e-9));
}

TEST_CASE("humidity: the hygrostat holds its set point while the machine is strong enough") {
  twr::tank_room r = cellar(24.0, air_of(28, 60));
  const auto with = [&](double capacity) {
    r.dehumidifier = twr::controlled_dehumidifier{.machine = {.capacity = kilograms_per_day(capacity)},
                                                  .set_point = relative_humidity::from_percent(55.0)};
    return twr::humidity_balance(r);
  };
  const evidence held{"tankwright::room::humidity_balance", kind::identity, "the set point, while the duty is below 1"};
  const auto strong = with(40.0);
  TW_CHECK(held, in_percent(strong.high.air.humidity.get()), 55.0, relative(1e-12));
  CHECK(strong.set_point_kept);
  CHECK(strong.central.duty.value() < 1.0);
  const auto weak = with(8.0);
  CHECK(!weak.set_point_kept);
  CHECK(weak.central.duty.value() == 1.0);
  CHECK(in_percent(weak.central.air.humidity.get()) > 55.0);
  // In winter it never runs.
  r.room.outdoor = air_of(-5, 80);
  r.room.air_changes = per_hour(1.0);
  CHECK(with(8.0).central.dehumidified.value() == 0.0);
  CHECK(with(8.0).set_point_kept);
}

TEST_CASE("humidity: a dehumidifier in a cool room, on both sides of where its curve ends") {
  const evidence smooth{"tankwright::room::humidity_balance", kind::property,
                        "a step of 1e-6 K across 21 degC moves the humidity by less than 1e-5"};
  const evidence helps{"tankwright::room::humidity_balance", kind::property, "a machine never makes a room wetter"};
  const evidence weaker{"tankwright::room::humidity_balance", kind::property,
                        "the wettest room of the band has the poorest machine"};
  const auto with = [](double t, double capacity) {
    twr::tank_room r = cellar(t, air_of(t - 2.0, 80));
    if (capacity > 0.0) {
      r.dehumidifier = twr::controlled_dehumidifier{.machine = {.capacity = kilograms_per_day(capacity)},
                                                    .set_point = relative_humidity::from_percent(55.0)};
    }
    const auto h = twr::humidity_balance(r);
    return std::array{h.low.air.humidity.get().value(), h.central.air.humidity.get().value(),
                      h.high.air.humidity.get().value()};
  };
  for (const double t : {8.0, 15.0, 18.0, 20.999999, 21.0, 24.0, 32.22}) {
    for (const double capacity : {4.0, 12.0, 60.0}) {
      const auto bare = with(t, 0.0), left = with(t - 1e-6, capacity), right = with(t + 1e-6, capacity);
      for (std::size_t i = 0; i < 3; ++i) {
        TW_HOLDS(smooth, std::fabs(left[i] - right[i]) < 1e-5);
        TW_HOLDS(helps, right[i] <= bare[i] + 1e-6);
      }
      TW_HOLDS(weaker, right[0] <= right[1] && right[1] <= right[2]);
    }
  }
  CHECK(with(18.0, 12.0)[1] < with(18.0, 0.0)[1] - 0.05);
}

TEST_CASE("humidity: a closed dry room settles nowhere") {
  twr::tank_room r = cellar(24.0, air_of(5, 80), 0.0);
  r.surfaces.clear();
  CHECK_THROWS_AS((void)twr::humidity_balance(r), invalid_input);
  r.sources = {{.label = "people", .rate = grams_per_hour(50.0)}};
  CHECK(message_of([&] { (void)twr::humidity_balance(r); }).find("until its sources saturate it") != std::string::npos);
}

TEST_CASE("humidity: mistakes") {
  const auto said = [](auto change) {
    twr::tank_room r = cellar(24.0, air_of(5, 80));
    change(r);
    return message_of([&] { (void)twr::humidity_balance(r); });
  };
  CHECK(said([](auto& r) { r.room.volume = cubic_metres(0.0); }) ==
        "tankwright::room::humidity_balance: room volume = 0 m3 is not possible; expected 0.1 to 1e+09 m3");
  CHECK(said([](auto& r) { r.room.air_changes = per_hour(-1.0); }).find("air changes") != std::string::npos);
  CHECK(said([](auto& r) {
          r.room.temperature = celsius(2.0);
        }).find("air temperature = 2 degC is outside the published range 6 to 35 degC (Shah)") != std::string::npos);
  CHECK(said([](auto& r) { r.sources = {{.label = "laundry", .rate = grams_per_hour(-5.0)}}; }).find("laundry: rate") !=
        std::string::npos);
  CHECK(said([](auto& r) {
          r.room.outdoor = {.temperature = celsius(5.0), .humidity = relative_humidity::from_fraction(80.0)};
        }).ends_with("For 80 % write relative_humidity::from_percent(80)"));
  CHECK(said([](auto& r) {
          r.room.outdoor.pressure = absolute_pressure{pascals(101.3)};
        }).ends_with("write absolute_pressure(kilopascals(101.3))"));
  CHECK(said([](auto& r) { r.surfaces[0].area = square_metres(std::nan("")); }).find("all: area = nan m2") !=
        std::string::npos);
}

TEST_CASE("humidity: both ends of the band, with and without a machine, by halving") {
  const evidence ends{"tankwright::room::humidity_balance", kind::identity,
                      "evaporation at its end against the machine at its other end, balanced by halving"};
  for (const double litres_a_day : {0.0, 5.0, 9.0}) {
    for (const double t : {17.0, 23.0, 29.0}) {
      twr::tank_room r = cellar(t, air_of(t - 4.0, 75), 0.35);
      r.sources = {{.label = "people", .rate = grams_per_hour(80.0)}};
      r.surfaces[0].agitation = twr::agitation{t > 25.0 ? 1.2 : 1.0};
      const twr::dehumidifier machine{.label = "dryer", .capacity = kilograms_per_day(std::fmax(litres_a_day, 1.0))};
      if (litres_a_day > 0.0) {
        r.dehumidifier =
            twr::controlled_dehumidifier{.machine = machine, .set_point = relative_humidity::from_percent(45.0)};
      }
      const double saturation = in_pascals(twr::saturation_pressure(celsius(t)));
      const double outdoor = twr::humidity_ratio_of(r.room.outdoor).value();
      const auto rest = [&](int end) {
        const auto pick = [&](const auto& band, int which) {
          return (which < 0 ? band.low : which > 0 ? band.high : band.central).value();
        };
        double low = 0.45, high = 1.0;
        for (int i = 0; i < 60; ++i) {
          const double h = 0.5 * (low + high), p = h * saturation;
          const twr::air a{.temperature = celsius(t), .humidity = relative_humidity::from_fraction(h)};
          const auto e = twr::evaporation({.water = r.water, .air = a, .surfaces = r.surfaces}, extrapolate).rate;
          const double out =
              0.35 / 3600.0 * 150.0 / (287.042 * (t + 273.15)) * (0.621945 * p - (101325.0 - p) * outdoor);
          double gain = pick(e, end) + 80e-3 / 3600.0 - out;
          if (litres_a_day > 0.0) {
            gain -= pick(twr::dehumidifier_output(machine, celsius(t), a.humidity.get()).removal, -end);
          }
          (gain > 0.0 ? low : high) = h;
        }
        return low;
      };
      const auto found = twr::humidity_balance(r);
      CAPTURE(t);
      CAPTURE(litres_a_day);
      const auto check = [&](const twr::moisture_balance& b, int end) {
        const double h = rest(end);
        TW_CHECK(ends, b.air.humidity.get().value(), h, relative(1e-8));
        CHECK(b.saturated == (h > 1.0 - 1e-12));
        CHECK(compare(b.sources, grams_per_hour(80.0), relative(1e-12)).good);
      };
      check(found.low, -1);
      check(found.central, 0);
      check(found.high, 1);
      CHECK(found.set_point_kept == (litres_a_day > 0.0 && found.high.air.humidity.get().value() <= 0.45 + 1e-9));
      CHECK(found.within_data ==
            (found.low.air.humidity.get().value() >= 0.28 && found.high.air.humidity.get().value() <= 0.95));
      CHECK_FALSE(found.reason.empty());
      CHECK((found.reason == twr::still_band) == (litres_a_day == 0.0 && t <= 25.0));
      CHECK((found.reason == twr::agitated_band) == (litres_a_day == 0.0 && t > 25.0));
    }
  }
}

TEST_CASE("humidity: where all ends hold the set point, the low one has the least evaporation") {
  twr::tank_room r = cellar(24.0, air_of(28, 60));
  r.dehumidifier = twr::controlled_dehumidifier{.machine = {.capacity = kilograms_per_day(60.0)},
                                                .set_point = relative_humidity::from_percent(55.0)};
  const evidence ends{"tankwright::room::humidity_balance", kind::identity,
                      "the three rates of `evaporation` at the set point"};
  const auto b = twr::humidity_balance(r);
  REQUIRE(b.set_point_kept);
  const auto rate = twr::evaporation({.water = r.water, .air = air_of(24.0, 55.0), .surfaces = r.surfaces}).rate;
  TW_CHECK(ends, b.low.evaporation, rate.low, relative(1e-12));
  TW_CHECK(ends, b.central.evaporation, rate.central, relative(1e-12));
  TW_CHECK(ends, b.high.evaporation, rate.high, relative(1e-12));
}

TEST_CASE("humidity: a machine that is set to saturation takes what would condense") {
  const evidence balance{"tankwright::room::humidity_balance", kind::identity,
                         "evaporation less ventilation at saturation, up to what the machine removes there"};
  twr::tank_room r = cellar(22.0, air_of(22, 99), 0.1);
  r.water = seawater(28.0);
  const auto with = [&](double capacity) {
    r.dehumidifier = twr::controlled_dehumidifier{.machine = {.capacity = kilograms_per_day(capacity)},
                                                  .set_point = relative_humidity::from_percent(100.0)};
    return twr::humidity_balance(r, extrapolate).central;
  };
  const double p = in_pascals(twr::saturation_pressure(celsius(22.0)));
  const double outdoor = twr::humidity_ratio_of(r.room.outdoor).value();
  const double out = 0.1 / 3600.0 * 150.0 / (287.042 * 295.15) * (0.621945 * p - (101325.0 - p) * outdoor);
  const double wet =
      twr::evaporation({.water = r.water, .air = air_of(22.0, 100.0), .surfaces = r.surfaces}, extrapolate)
          .rate.central.value();
  TW_CHECK(balance, with(60.0).dehumidified.value(), wet - out, relative(1e-9));
  CHECK(with(60.0).condensing.value() == 0.0);
  CHECK(with(60.0).air.humidity.get().value() == 1.0);
  const double most = twr::dehumidifier_output({.capacity = kilograms_per_day(1.0)}, celsius(22.0),
                                               relative_humidity::from_percent(100.0))
                          .removal.central.value();
  TW_CHECK(balance, with(1.0).dehumidified.value(), most, relative(1e-12));
  TW_CHECK(balance, with(1.0).condensing.value(), wet - out - most, relative(1e-9));
  CHECK(with(1.0).duty.value() == 1.0);
}

TEST_CASE("humidity: bone-dry air outside and no water inside leave bone-dry air, with a machine and without") {
  twr::tank_room r = cellar(22.0, air_of(5, 0), 0.5);
  r.surfaces.clear();
  CHECK(twr::humidity_balance(r).high.air.humidity.get().value() == 0.0);
  r.dehumidifier = twr::controlled_dehumidifier{.machine = {.capacity = kilograms_per_day(10.0)},
                                                .set_point = relative_humidity::from_percent(50.0)};
  CHECK(twr::humidity_balance(r).high.air.humidity.get().value() == 0.0);
  CHECK(twr::humidity_balance(r).high.dehumidified.value() == 0.0);
}
