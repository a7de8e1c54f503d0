// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/amount.hpp>

#include <tankwright/core/temperature.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

TEST_CASE("amount: the SI number under the name of the quantity") {
  const evidence si{"tankwright::amount_of", kind::identity, "definition of the units"};
  TW_CHECK(si, amount_of(litres(2150.0)).central, 2.15, relative(3e-16));
  TW_CHECK(si, amount_of(celsius(25.0)).central, 298.15, tolerance{});
  TW_CHECK(si, amount_of(percent(60.0)).central, 0.6, tolerance{});
  TW_CHECK(si, amount_of(absolute_salinity::from_grams_per_kilogram(35.2)).central, 35.2, tolerance{});
  CHECK(amount_of(litres(2150.0)).quantity == "volume");
  CHECK(amount_of(celsius(25.0)).quantity == "temperature");
  CHECK(amount_of(kelvin_steps(2.0)).quantity == "temperature_difference");
  CHECK(amount_of(gauge_pressure{kilopascals(3.0)}).quantity == "gauge_pressure");
  CHECK(amount_of(practical_salinity{35.0}).quantity == "practical_salinity");
  CHECK(amount_of(1.0264).quantity == "number");
  CHECK(amount_of(litres(2150.0)).is_sharp());

  const amount leak =
      amount_of(estimate<flow_rate>{litres_per_day(2.0), litres_per_day(3.0), litres_per_day(5.0), "gauge"});
  TW_CHECK(si, leak.low, 2e-3 / 86400.0, relative(3e-16));
  TW_CHECK(si, leak.high, 5e-3 / 86400.0, relative(3e-16));
  CHECK(leak.quantity == "flow_rate");
  CHECK(leak.reason == "gauge");
  CHECK_FALSE(leak.is_sharp());
}
