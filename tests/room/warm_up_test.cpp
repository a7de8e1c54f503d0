// SPDX-License-Identifier: BSL-1.0
#include <cmath>

#include <tankwright/room/warm_up.hpp>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {
/// A dry tank: no open water, one wall. Its loss is a straight line.
twr::warm_up_request insulated(double from, double to, double heater) {
  return {.tank = {.water = seawater(from),
                   .air = air_of(18.0, 50.0),
                   .surfaces = {},
                   .walls = {{.area = square_metres(10.0), .transmittance = watts_per_square_metre_kelvin(1.2)}}},
          .heat_capacity = joules_per_kelvin(8e6),
          .target = celsius(to),
          .heater = watts(heater)};
}
}  // namespace

TEST_CASE("warm-up: reference table") {
  const auto energy_of = [](const reference_row& row) {
    const power heater = watts(row["heater"]);
    const duration t = twr::linear_warm_up_time({.heat_capacity = joules_per_kelvin(row["kg"] * row["c"]),
                                                 .from = celsius(row["from"]),
                                                 .to = celsius(row["to"]),
                                                 .heater = heater});
    return in_kilowatt_hours(heater * t);
  };
  check_rows(reference_rows("room/warm_up.csv"), {{"tankwright::room::linear_warm_up_time", energy_of}});
}

TEST_CASE("warm-up: the full calculation of a straight-line loss is the closed form") {
  const evidence closed{"tankwright::room::warm_up", kind::identity, "closed form for a loss in a straight line"};
  const evidence line{"tankwright::room::linear_warm_up_time", kind::identity,
                      "exponential approach: T(t) is the target"};
  for (const double heater : {130.0, 300.0, 2000.0}) {
    const auto request = insulated(16.0, 26.0, heater);
    const twr::linear_warm_up hand{.heat_capacity = request.heat_capacity,
                                   .from = celsius(16.0),
                                   .to = celsius(26.0),
                                   .heater = request.heater,
                                   .loss = watts_per_kelvin(12.0),
                                   .stands_at = celsius(18.0)};
    const duration t = twr::linear_warm_up_time(hand);
    TW_CHECK(line, 18.0 + heater / 12.0 + (16.0 - 18.0 - heater / 12.0) * std::exp(-t.value() * 12.0 / 8e6), 26.0,
             relative(1e-12));
    const auto full = twr::warm_up(request);
    TW_CHECK(closed, full.time.central.value(), t.value(), relative(1e-8));
    CHECK(full.stuck_on.has_value() == (18.0 + heater / 12.0 < 90.0));
    if (full.stuck_on) TW_CHECK(closed, in_celsius(*full.stuck_on), 18.0 + heater / 12.0, relative(1e-9));
    TW_CHECK(closed, full.heater_energy.central.value(), heater * t.value(), relative(1e-8));
  }
}

TEST_CASE("warm-up: energy is conserved with the real losses") {
  // The heater's energy is what the water has taken up and what was lost on the way, by an independent stepping.
  const evidence conserved{"tankwright::room::warm_up", kind::identity,
                           "heater energy = heat taken up + losses, stepped at 20 s"};
  const auto tank = display_tank(18.0, 18.0, 50.0);
  const auto c = twr::heat_capacity_of(seawater(21.0), litres(1809.0));
  const auto r = twr::warm_up({.tank = tank, .heat_capacity = c, .target = celsius(25.0), .heater = watts(1500.0)});
  const double dt = 20.0;
  double t = 18.0, lost = 0.0, time = 0.0;
  const auto loss = [&](double at) {
    auto now = tank;
    now.water = seawater(at);
    return twr::heat_balance(now).net.central.value();
  };
  while (true) {
    const double mid = loss(t + 0.5 * dt * (1500.0 - loss(t)) / c.value());
    const double next = t + dt * (1500.0 - mid) / c.value();
    if (next >= 25.0) {
      const double part = (25.0 - t) / (next - t);
      lost += part * dt * mid;
      time += part * dt;
      break;
    }
    lost += dt * mid;
    time += dt;
    t = next;
  }
  TW_CHECK(conserved, r.time.central.value(), time, relative(1e-7));
  TW_CHECK(conserved, r.heater_energy.central.value(), c.value() * 7.0 + lost, relative(1e-7));
  CHECK(r.time.low < r.time.central);
  CHECK(r.time.central < r.time.high);
  CHECK(in_celsius(*r.stuck_on) > 30.0);
}

TEST_CASE("warm-up: rock and sand make it longer in proportion, and its bands are in order") {
  const evidence longer{"tankwright::room::warm_up", kind::identity, "time is in proportion to the heat capacity"};
  const evidence ordered{"tankwright::room::warm_up", kind::property, "low <= central <= high"};
  const auto water = twr::heat_capacity_of(seawater(21.0), litres(1809.0));
  const auto both = water + twr::heat_capacity_of_solids({litres(180.0), litres(200.0), litres(220.0), ""}).central;
  const auto with = [](heat_capacity c, double humidity) {
    return twr::warm_up({.tank = display_tank(18.0, 18.0, humidity),
                         .heat_capacity = c,
                         .target = celsius(25.0),
                         .heater = watts(1500.0)})
        .time;
  };
  TW_CHECK(longer, with(both, 50.0).central / with(water, 50.0).central, both / water, relative(1e-9));
  // In some air the ends of the band cross on the way up: the estimate is in order all the same.
  for (double humidity = 30.0; humidity <= 95.0; humidity += 1.0) {
    const auto t = with(water, humidity);
    TW_HOLDS(ordered, t.low <= t.central && t.central <= t.high);
  }
}

TEST_CASE("warm-up: mistakes") {
  CHECK(message_of([] {
          (void)twr::warm_up(insulated(16.0, 26.0, 90.0));
        }).ends_with("is too small: where evaporation is strong it settles at 25.5 degC"));
  CHECK(message_of([] {
          (void)twr::linear_warm_up_time({.heat_capacity = joules_per_kelvin(8e6),
                                          .from = celsius(16.0),
                                          .to = celsius(26.0),
                                          .heater = watts(90.0),
                                          .loss = watts_per_kelvin(12.0),
                                          .stands_at = celsius(18.0)});
        }) == "tankwright::room::linear_warm_up_time: heater = 90 W is too small: it settles at 25.5 degC");
  CHECK_THROWS_AS((void)twr::warm_up(insulated(26.0, 20.0, 500.0)), invalid_input);
  CHECK_THROWS_AS((void)twr::warm_up(insulated(16.0, std::nan(""), 500.0)), invalid_input);
  auto none = insulated(16.0, 26.0, 500.0);
  none.heat_capacity = joules_per_kelvin(0.0);
  CHECK_THROWS_AS((void)twr::warm_up(none), invalid_input);
  CHECK_THROWS_AS((void)twr::warm_up(insulated(16.0, 26.0, 0.0)), invalid_input);
  CHECK_THROWS_AS((void)twr::heat_capacity_of(seawater(25.0), litres(-1.0)), invalid_input);
  CHECK_THROWS_AS(
      (void)twr::linear_warm_up_time(
          {.heat_capacity = joules_per_kelvin(8e6), .from = celsius(26.0), .to = celsius(16.0), .heater = watts(90.0)}),
      invalid_input);
}

TEST_CASE("warm-up: both ends, stepped by themselves") {
  const evidence stepped{"tankwright::room::warm_up", kind::identity,
                         "independent midpoint stepping of each end at 30 s"};
  auto tank = display_tank(17.0, 18.0, 45.0);
  tank.surfaces[0].agitation = twr::gently_moving;
  tank.surfaces[1].covered = percent(70.0);
  tank.walls[1].outside = celsius(10.0);
  tank.sources = {{.label = "pump", .heat = watts(60.0)}};
  const auto c = twr::heat_capacity_of(seawater(21.0), litres(900.0));
  const auto r = twr::warm_up({.tank = tank, .heat_capacity = c, .target = celsius(24.0), .heater = watts(1800.0)});
  const auto time_of = [&](auto end) {
    const auto slope = [&](double at) {
      auto now = tank;
      now.water = seawater(at);
      return (1800.0 - end(twr::heat_balance(now).net).value()) / c.value();
    };
    double t = 17.0, time = 0.0;
    while (true) {
      const double step = 30.0 * slope(t + 15.0 * slope(t));
      if (t + step >= 24.0) return time + 30.0 * (24.0 - t) / step;
      t += step;
      time += 30.0;
    }
  };
  const double low = time_of([](const auto& net) { return net.low; });
  const double high = time_of([](const auto& net) { return net.high; });
  TW_CHECK(stepped, r.time.low.value(), low, relative(1e-5));
  TW_CHECK(stepped, r.time.high.value(), high, relative(1e-5));
  TW_CHECK(stepped, r.heater_energy.low.value(), 1800.0 * low, relative(1e-5));
  TW_CHECK(stepped, r.heater_energy.high.value(), 1800.0 * high, relative(1e-5));
  CHECK(r.time.reason == twr::agitated_band);
  CHECK_FALSE(r.caution.text.empty());
  // A heater stuck on is hottest where evaporation is weak: nothing is left over there.
  auto hot = tank;
  hot.water = seawater(in_celsius(*r.stuck_on));
  TW_CHECK(stepped, twr::heat_balance(hot, extrapolate).net.low.value(), 1800.0, relative(1e-6));
}

TEST_CASE("warm-up: by hand, nothing to do, and no loss") {
  const twr::linear_warm_up none{
      .heat_capacity = joules_per_kelvin(8e6), .from = celsius(16.0), .to = celsius(16.0), .heater = watts(500.0)};
  CHECK(twr::linear_warm_up_time(none).value() == 0.0);
  auto warm = none;
  warm.to = celsius(26.0);
  CHECK(compare(twr::linear_warm_up_time(warm), seconds(8e7 / 500.0), relative(1e-12)).good);
  // Where it stands without the heater is 20 degC when nothing is said: with 10 W/K it settles at 70 degC.
  warm.loss = watts_per_kelvin(10.0);
  const double by_hand = 8e5 * std::log((70.0 - 16.0) / (70.0 - 26.0));
  CHECK(compare(twr::linear_warm_up_time(warm), seconds(by_hand), relative(1e-11)).good);
  warm.loss = watts_per_kelvin(500.0 / 6.0);  // it settles at the target, and never gets there
  CHECK_THROWS_AS((void)twr::linear_warm_up_time(warm), invalid_input);
}

TEST_CASE("warm-up: half a milliwatt more than the loss at the target gets there, half a milliwatt less does not") {
  const evidence closed{"tankwright::room::warm_up", kind::identity, "closed form for a loss in a straight line"};
  // 12 W/K to 18 degC: 96 W at 26 degC. The time is that of a logarithm whose argument all but vanishes.
  const auto t = twr::warm_up(insulated(16.0, 26.0, 96.0005)).time;
  TW_CHECK(closed, t.central.value(), 8e6 / 12.0 * std::log((120.0 + 5e-4) / 5e-4), relative(1e-7));
  CHECK(t.reason == twr::still_band);
  check_refusals({TW_REFUSED("room::warm_up", "heater", twr::warm_up(insulated(16.0, 26.0, 95.9995)))});
  // It settles at 93 degC, above which a stuck heater is not followed.
  CHECK(message_of([] {
          (void)twr::warm_up(insulated(16.0, 94.0, 900.0));
        }).ends_with("is too small: where evaporation is strong it settles at 93 degC"));
  // 864 W hold 90 degC.
  const auto stuck = twr::warm_up(insulated(16.0, 26.0, 863.9995)).stuck_on;
  CHECK(stuck.has_value());
  CHECK(std::fabs(in_celsius(*stuck) - (90.0 - 5e-4 / 12.0)) < 1e-8);
  CHECK_FALSE(twr::warm_up(insulated(16.0, 26.0, 864.0005)).stuck_on);
}

TEST_CASE("warm-up: a target that is not above the start is refused, with both temperatures") {
  CHECK(message_of([] { (void)twr::warm_up(insulated(26.0, 20.0, 500.0)); }) ==
        "tankwright::room::warm_up: target temperature = 20 degC is not above the start, 26 degC");
  CHECK(message_of([] {
          (void)twr::warm_up(insulated(20.0, 20.0, 500.0));
        }).ends_with("target temperature = 20 degC is not above the start, 20 degC"));
}

TEST_CASE("warm-up: losses that are no number are given up, not halved for ever") {
  twr::detail::heat_model m;
  m.gains = std::nan("");
  const twr::detail::warming warming{"tankwright::test", m, 8e6};
  try {
    (void)warming.between(289.15, 299.15);
    CHECK(false);
  } catch (const no_convergence& e) {
    CHECK(e.details().function == "tankwright::test");
    CHECK(e.details().argument == "target temperature");
    CHECK(std::fabs(e.details().value - 26.0) < 1e-9);  // what is next to the target is halved first
  }
}
