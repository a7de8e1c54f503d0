// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/transport.hpp>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

/// A litre of gas and a litre of water, in oxygen, with 100 mg of it used in an hour.
twl::closed_bag bag() {
  return {.water = litres(1.0),
          .gas = litres(1.0),
          .oxygen = fraction(1.0),
          .uses = milligrams_per_hour(100.0),
          .salinity = practical_salinity{35.0},
          .temperature = celsius(25.0)};
}

}  // namespace

TEST_CASE("transport: a litre of oxygen is 1.27 g, and lasts as long as it is used") {
  const evidence gas{"tankwright::life::bag_after", kind::identity, "gas law: p V M/(R T), by hand"};
  // 0.969 atm of oxygen in a litre at 25 degC; dissolved 6.75 mg/L for 0.2095 (1 - 0.031) of it (Garcia and Gordon).
  const double in_gas = 0.969 * 0.001 * 0.031998 / (8.205736608e-5 * 298.15);
  const double at_air =
      water::oxygen_saturation_concentration(practical_salinity{35.0}, celsius(25.0), standard_atmosphere).value();
  const double in_water = 0.001 * at_air / 0.20946;
  const auto start = twl::bag_after(bag(), hours(0.0), 8.1);
  TW_CHECK(gas, start.oxygen_left.value(), in_gas + in_water, relative(1e-6));
  TW_CHECK(gas, start.oxygen.value(), at_air / 0.20946, relative(1e-9));
  TW_CHECK(gas, start.ph, 8.1, within(0.15));  // the fresh gas takes some carbon dioxide
  const auto later = twl::bag_after(bag(), hours(5.0), 8.1);
  TW_CHECK(gas, (start.oxygen_left - later.oxygen_left).value(), 500e-6, relative(1e-9));
  const evidence lasts{"tankwright::life::oxygen_lasts", kind::identity, "what is there over what is used, by hand"};
  TW_CHECK(lasts, *twl::oxygen_lasts(bag(), milligrams_per_litre(0.0)), hours((in_gas + in_water) / 100e-6),
           relative(1e-6));
  const double keeps = 5e-3 / (at_air / 0.20946);  // part of the oxygen at which 5 mg/L are left
  TW_CHECK(lasts, *twl::oxygen_lasts(bag(), milligrams_per_litre(5.0)),
           hours((1.0 - keeps) * (in_gas + in_water) / 100e-6), relative(1e-6));
  auto still = bag();
  still.uses = milligrams_per_hour(0.0);
  TW_HOLDS(lasts, !twl::oxygen_lasts(still, milligrams_per_litre(5.0)));
  TW_CHECK(lasts, *twl::oxygen_lasts(bag(), milligrams_per_litre(90.0)), hours(0.0), within(seconds(0.0)));
}

TEST_CASE("transport: breath lowers the pH, ammonia waits, and opening frees it") {
  const evidence course{"tankwright::life::bag_after", kind::property, "order"};
  const auto early = twl::bag_after(bag(), hours(2.0), 8.1), late = twl::bag_after(bag(), hours(10.0), 8.1);
  TW_HOLDS(course, late.ph < early.ph);
  TW_HOLDS(course, late.carbon_dioxide > early.carbon_dioxide);
  TW_HOLDS(course, late.free_opened.central > 5.0 * late.free_closed.central);
  // 1 g of oxygen is 31.25 mmol; 0.15 of it nitrogen is 65.7 mg in the litre.
  const evidence quotient{"tankwright::life::bag_after", kind::identity, "mole for mole, by hand"};
  TW_CHECK(quotient, in_milligrams_per_litre(late.ammonia.central.as_nitrogen()), 0.15 * 1000.0 / 31.998 * 14.0067,
           relative(1e-4));
}

TEST_CASE("transport: edges of the ranges") {
  const auto with = [](auto change) {
    auto one = bag();
    change(one);
    return twl::bag_after(one, hours(1.0), 8.1);
  };
  check_edges(twl::bag_oxygen_limits,
              [&](double x, range_policy) { return with([&](auto& b) { b.oxygen = fraction(x); }); });
  check_edges(twl::bag_quotient_limits, [&](double x, range_policy) { return with([&](auto& b) { b.quotient = x; }); });
  check_edges(twl::bag_time_limits, [](double x, range_policy) { return twl::bag_after(bag(), hours(x), 8.1); });
  CHECK_THROWS_AS((void)with([](auto& b) { b.water = litres(0.0); }), invalid_input);
  CHECK_THROWS_AS((void)with([](auto& b) { b.gas = litres(-1.0); }), invalid_input);
  CHECK_THROWS_AS((void)with([](auto& b) { b.uses = milligrams_per_hour(-1.0); }), invalid_input);
  CHECK_THROWS_AS((void)with([](auto& b) { b.temperature = celsius(38.0); }), out_of_range);
}
