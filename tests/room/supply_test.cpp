// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/supply.hpp>

#include <vector>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {

const evidence current{"tankwright::room::current_of", kind::identity, "power over voltage and power factor, by hand"};
const evidence leak{"tankwright::room::leakage_of", kind::identity, "sum by hand"};
const evidence battery{"tankwright::room::battery_feeds", kind::identity, "energy over power, by hand"};

}  // namespace

TEST_CASE("supply: amperes are watts over volts and power factor") {
  const std::vector<twr::plugged_in> all{{.label = "pump", .draws = watts(92.0), .power_factor = 0.8},
                                         {.label = "heater", .draws = watts(345.0)}};
  TW_CHECK(current, twr::current_of(all, volts(230.0)), amperes(2.0), relative(1e-12));  // 115 + 345 VA
  TW_CHECK(current, twr::current_of({}, volts(120.0)), amperes(0.0), within(amperes(0.0)));
}

TEST_CASE("supply: leakages add, with their bands") {
  const std::vector<estimate<electric_current>> all{{milliamperes(0.1), milliamperes(0.2), milliamperes(0.5), "a"},
                                                    {milliamperes(1.0), milliamperes(1.0), milliamperes(1.0), {}}};
  const auto sum = twr::leakage_of(all);
  TW_CHECK(leak, sum.low, milliamperes(1.1), relative(1e-12));
  TW_CHECK(leak, sum.central, milliamperes(1.2), relative(1e-12));
  TW_CHECK(leak, sum.high, milliamperes(1.5), relative(1e-12));
  TW_CHECK(leak, twr::leakage_of({}).high, milliamperes(0.0), within(milliamperes(0.0)));
}

TEST_CASE("supply: a battery of 12 V and 100 Ah") {
  // Half of 1200 Wh through an inverter of 85 % is 510 Wh: 51 h of 10 W.
  const auto lasts = twr::battery_feeds({.capacity = watt_hours(1200.0)}, watts(10.0));
  TW_CHECK(battery, lasts.central, hours(51.0), relative(1e-12));
  TW_CHECK(battery, lasts.low, hours(35.7), relative(1e-12));
  TW_CHECK(battery, lasts.high, hours(56.1), relative(1e-12));
}

TEST_CASE("supply: edges of the ranges") {
  const auto one = [](double p, double factor, double u) {
    const std::vector<twr::plugged_in> all{{.draws = watts(p), .power_factor = factor}};
    return twr::current_of(all, volts(u));
  };
  check_edges({"device: power", "W", twr::drawn_power_limits.possible},
              [&](double p, range_policy) { return one(p, 1.0, 230.0); });
  check_edges({"device: power factor", "", twr::power_factor_limits.possible},
              [&](double f, range_policy) { return one(1.0, f, 230.0); });
  check_edges(twr::supply_voltage_limits, [&](double u, range_policy) { return one(1.0, 1.0, u); });
  for (const double i : {-1e-9, 2e6}) {
    const std::vector<estimate<electric_current>> all{amperes(i)};
    CHECK_THROWS_AS((void)twr::leakage_of(all), invalid_input);
  }
  for (const double low : {-1e-9, 0.0}) {
    for (const double high : {1e6, 2e6}) {
      const std::vector<estimate<electric_current>> all{{amperes(low), amperes(1.0), amperes(high), {}}};
      if (low < 0.0 || high > 1e6) {
        CHECK_THROWS_AS((void)twr::leakage_of(all), invalid_input);
      } else {
        CHECK_NOTHROW((void)twr::leakage_of(all));
      }
    }
  }
  check_edges(twr::stored_energy_limits,
              [](double e, range_policy) { return twr::battery_feeds({.capacity = joules(e)}, watts(1.0)); });
  check_edges(twr::usable_limits, [](double u, range_policy) {
    return twr::battery_feeds({.capacity = joules(1.0), .usable = fraction(u)}, watts(1.0));
  });
  CHECK_THROWS_AS((void)twr::battery_feeds({.capacity = joules(1.0)}, watts(0.0)), invalid_input);
}
