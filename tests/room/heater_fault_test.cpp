// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/heater_fault.hpp>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {
/// A dry tank: no open water, one wall. Its loss is a straight line, 12 W/K.
twr::stuck_heater insulated(double heater, double highest) {
  return {.tank = {.water = seawater(25.0),
                   .air = air_of(18.0, 50.0),
                   .surfaces = {},
                   .walls = {{.area = square_metres(10.0), .transmittance = watts_per_square_metre_kelvin(1.2)}}},
          .heat_capacity = joules_per_kelvin(8e6),
          .heater = watts(heater),
          .highest = celsius(highest)};
}
}  // namespace

TEST_CASE("stuck heater: the closed form of a loss in a straight line") {
  const evidence closed{"tankwright::room::heater_stuck_on", kind::identity,
                        "T = 18 + P/H + (25 - 18 - P/H) exp(-t H/C), H = 12 W/K"};
  for (const double heater : {300.0, 800.0}) {
    const auto r = twr::heater_stuck_on(insulated(heater, 30.0));
    const double end = 18.0 + heater / 12.0, tau = 8e6 / 12.0;
    const double expected = -tau * std::log((30.0 - end) / (25.0 - end));
    TW_CHECK(closed, r.reaches_highest.expected->value(), expected, relative(1e-6));
    TW_CHECK(closed, r.reaches_highest.soonest->value(), expected, relative(1e-6));
    TW_CHECK(closed, in_celsius(r.settles_at->central), end, relative(1e-8));
    TW_CHECK(closed, r.in_an_hour.central.value(), (25.0 - end) * (std::exp(-3600.0 / tau) - 1.0), relative(1e-6));
    const double day = std::fmin(86400.0, expected);
    TW_CHECK(closed, r.in_a_day.central.value(), (25.0 - end) * (std::exp(-day / tau) - 1.0), relative(1e-6));
  }
  // A small heater never gets there; a large one has no end below 90 degC.
  const auto small = twr::heater_stuck_on(insulated(100.0, 30.0));
  CHECK(!small.reaches_highest.soonest);
  CHECK(!twr::heater_stuck_on(insulated(5000.0, 30.0)).settles_at);
  CHECK(small.caution.text.find("stuck on") != std::string_view::npos);
}

TEST_CASE("stuck heater: with the losses of open water, stepped by hand") {
  const evidence stepped{"tankwright::room::heater_stuck_on", kind::identity, "independent midpoint stepping at 60 s"};
  twr::stuck_heater s{.tank = display_tank(25.0, 22.0, 50.0),
                      .heat_capacity = twr::heat_capacity_of(seawater(25.0), litres(1809.0)),
                      .heater = watts(1500.0),
                      .highest = celsius(29.0)};
  const auto loss = [&](double kelvin) {
    auto tank = s.tank;
    tank.water.temperature = kelvins(kelvin);
    const auto b = twr::heat_balance(tank);
    return (b.net.central - b.make_up.central).value();  // nothing is topped off
  };
  double t = 298.15, time = 0.0;
  const double c = s.heat_capacity.get().value();
  while (t < 302.15) {
    const double middle = t + 30.0 * (1500.0 - loss(t)) / c;
    const double step = 60.0 * (1500.0 - loss(middle)) / c;
    if (t + step >= 302.15) {
      time += 60.0 * (302.15 - t) / step;
      break;
    }
    t += step;
    time += 60.0;
  }
  const auto r = twr::heater_stuck_on(s);
  TW_CHECK(stepped, r.reaches_highest.expected->value(), time, relative(1e-5));
  CHECK(*r.reaches_highest.soonest < *r.reaches_highest.expected);
  CHECK(r.settles_at->low <= r.settles_at->central);
}

TEST_CASE("stuck heater: mistakes") {
  CHECK(message_of([] {
          (void)twr::heater_stuck_on(insulated(300.0, 25.0));
        }).ends_with("highest temperature = 25 degC is not above that of the water, 25 degC"));
  CHECK_THROWS_AS((void)twr::heater_stuck_on(insulated(0.0, 30.0)), invalid_input);
  CHECK_THROWS_AS((void)twr::heater_stuck_on(insulated(300.0, std::nan(""))), invalid_input);
}

TEST_CASE("stuck heater: looked at for less than a minute") {
  const evidence closed{"tankwright::room::heater_stuck_on", kind::identity, "half a minute of 300 W less 84 W"};
  auto s = insulated(300.0, 30.0);
  s.within = seconds(30.0);
  const auto r = twr::heater_stuck_on(s);
  TW_CHECK(closed, r.in_an_hour.central.value(), 30.0 * (300.0 - 84.0) / 8e6, relative(1e-4));
  TW_CHECK(closed, r.in_a_day.central.value(), 30.0 * (300.0 - 84.0) / 8e6, relative(1e-4));
}
