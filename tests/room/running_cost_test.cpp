// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/running_cost.hpp>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

TEST_CASE("running cost: arithmetic") {
  const evidence sum{"tankwright::room::running_cost", kind::identity, "1 kW for a day is 24 kWh"};
  const estimate<power> heat{watts(500.0), watts(1000.0), watts(2000.0), "test"};
  const auto c = twr::running_cost({.heat = heat, .price = twr::electricity_price{0.30}});
  TW_CHECK(sum, in_kilowatt_hours(c.per_day.central), 24.0, relative(1e-14));
  TW_CHECK(sum, c.cost_per_day.high, 48.0 * 0.30, relative(1e-14));
  TW_CHECK(sum, in_kilowatt_hours(c.per_year.high), 48.0 * 365.25, relative(1e-14));
  TW_CHECK(sum, c.cost_per_year.low, 12.0 * 0.30 * 365.25, relative(1e-14));
  const auto pump =
      twr::running_cost({.heat = heat, .price = twr::electricity_price{0.30}, .performance = 3.0, .on = percent(50.0)});
  TW_CHECK(sum, pump.cost_per_day.central, 24.0 / 3.0 / 2.0 * 0.30, relative(1e-14));
  CHECK(c.cost_per_day.reason == "test");
  // What needs no heat costs nothing.
  const auto none = twr::running_cost(
      {.heat = estimate<power>{watts(-50.0), watts(-20.0), watts(10.0), ""}, .price = twr::electricity_price{0.30}});
  CHECK(none.cost_per_day.central == 0.0);
  CHECK(none.cost_per_day.high > 0.0);
}

TEST_CASE("running cost: devices, each by itself and in all") {
  const evidence sum{"tankwright::room::running_costs", kind::identity, "power times hours times price, and their sum"};
  const auto draws = [](double w) { return estimate<power>{watts(0.9 * w), watts(w), watts(1.1 * w), "meter"}; };
  const twr::running_device devices[] = {{.label = "return pump", .draws = draws(100.0)},
                                         {.label = "light", .draws = draws(300.0), .on = fraction(1.0 / 3.0)},
                                         {.label = "heater", .draws = draws(-20.0)}};
  const auto c = twr::running_costs(devices, twr::electricity_price{0.25});
  CHECK(c.devices.size() == 3);
  CHECK(c.devices[1].label == "light");
  TW_CHECK(sum, in_kilowatt_hours(c.devices[0].cost.per_day.central), 2.4, relative(1e-14));
  TW_CHECK(sum, in_kilowatt_hours(c.devices[1].cost.per_year.high), 2.64 * 365.25, relative(1e-14));
  TW_CHECK(sum, c.devices[2].cost.cost_per_year.high, 0.0, tolerance{});
  TW_CHECK(sum, in_kilowatt_hours(c.all.per_day.central), 4.8, relative(1e-14));
  TW_CHECK(sum, c.all.cost_per_year.central, 4.8 * 0.25 * 365.25, relative(1e-14));
  TW_CHECK(sum, c.all.cost_per_day.low, 0.9 * 4.8 * 0.25, relative(1e-14));
  CHECK(twr::running_costs({}, twr::electricity_price{0.25}).all.cost_per_year.high == 0.0);
  const twr::running_device wrong[] = {{.label = "light", .draws = draws(300.0), .on = fraction(1.5)}};
  CHECK(message_of([&] {
          (void)twr::running_costs(wrong, twr::electricity_price{0.25});
        }).find("light: part of the time") != std::string::npos);
}

TEST_CASE("running cost: mistakes") {
  const estimate<power> heat{watts(500.0), watts(1000.0), watts(2000.0), ""};
  CHECK_THROWS_AS((void)twr::running_cost({.heat = heat, .price = twr::electricity_price{-0.30}}), invalid_input);
  CHECK_THROWS_AS((void)twr::running_cost({.heat = heat, .price = twr::electricity_price{0.30}, .performance = 0.0}),
                  invalid_input);
  CHECK_THROWS_AS((void)twr::running_cost({.heat = heat, .price = twr::electricity_price{0.30}, .performance = 12.0}),
                  out_of_range);
  CHECK_THROWS_AS((void)twr::running_cost({.heat = heat, .price = twr::electricity_price{0.30}, .on = fraction(1.5)}),
                  invalid_input);
  CHECK_THROWS_AS((void)twr::running_cost({.heat = estimate<power>{watts(std::nan("")), watts(1.0), watts(2.0), ""},
                                           .price = twr::electricity_price{0.30}}),
                  invalid_input);
}
