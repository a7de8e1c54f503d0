// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <limits>
#include <random>

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

TEST_CASE("transport: random bags against the gas law and the moles, written a second time") {
  const evidence again{"tankwright::life::bag_after", kind::identity, "gas law, Henry's law and moles, by hand"};
  const evidence lasts{"tankwright::life::oxygen_lasts", kind::identity, "gas law and Henry's law, by hand"};
  std::mt19937 random{11};
  const auto between = [&](double a, double b) { return std::uniform_real_distribution<double>{a, b}(random); };
  for (int i = 0; i < 40; ++i) {
    const double water_l = between(0.5, 40.0), gas_l = between(0.0, 80.0), part = between(0.2, 1.0);
    const double use = between(10.0, 2000.0), celsius_in = between(15.0, 28.0), h = between(0.0, 20.0);
    const practical_salinity s{between(20.0, 38.0)};
    const twl::closed_bag b{.water = litres(water_l),
                            .gas = litres(gas_l),
                            .oxygen = fraction(part),
                            .uses = milligrams_per_hour(use),
                            .salinity = s,
                            .temperature = celsius(celsius_in),
                            .ph = between(7.6, 8.4),
                            .alkalinity = between(1.5, 4.0),
                            .quotient = between(0.7, 1.0)};
    const double tank_ph = between(7.8, 8.4);
    CAPTURE(i);
    // Air is 20.946 % oxygen; at saturation with wet air (0.031 atm of vapour) a litre holds c*. So at an atmosphere of
    // oxygen it holds c*/(0.20946 (1 - 0.031)), and a litre of gas 1 atm x 1 L x 31.998 g/mol/(R T).
    const double wet = 1.0 - 0.031;
    const double milligrams_per_litre_atm =
        in_milligrams_per_litre(water::oxygen_saturation_concentration(s, celsius(celsius_in), standard_atmosphere)) /
        (0.20946 * wet);
    const double gas_constant = 8.314462618 / 101.325;  // L atm/(mol K)
    const double milligrams_per_atm =
        gas_l * 31998.0 / (gas_constant * (celsius_in + 273.15)) + water_l * milligrams_per_litre_atm;
    const double first = milligrams_per_atm * part * wet, used = std::fmin(use * h, first), left = first - used;
    const auto after = twl::bag_after(b, hours(h), tank_ph);
    TW_CHECK(again, after.oxygen_left, milligrams(left), (tolerance{.absolute = 1e-15, .relative = 1e-8}));
    TW_CHECK(again, after.oxygen, milligrams_per_litre(left / milligrams_per_atm * milligrams_per_litre_atm),
             (tolerance{.absolute = 1e-15, .relative = 1e-8}));
    const double millimoles = used / 31.998 / water_l;  // of oxygen, in each litre
    const auto breath = water::ph_after_breath({.ph = b.ph,
                                                .alkalinity = b.alkalinity,
                                                .salinity = s,
                                                .temperature = celsius(celsius_in),
                                                .gas_over_water = gas_l / water_l},
                                               b.quotient * millimoles);
    TW_CHECK(again, after.ph, breath.ph, relative(1e-9));
    TW_CHECK(again, after.carbon_dioxide, breath.carbon_dioxide, relative(1e-7));
    const auto nitrogen = [&](double quotient) { return milligrams_per_litre(quotient * millimoles * 14.0067); };
    TW_CHECK(again, after.ammonia.low.as_nitrogen(), nitrogen(0.08), relative(1e-8));
    TW_CHECK(again, after.ammonia.central.as_nitrogen(), nitrogen(0.15), relative(1e-8));
    TW_CHECK(again, after.ammonia.high.as_nitrogen(), nitrogen(0.30), relative(1e-8));
    CHECK(after.ammonia.reason == "fasted to fed; from memory");
    const auto free = [&](const estimate<mass_concentration>& found, double ph) {
      const auto p = water::free_ammonia_fraction(water::ph_total{ph}, s, celsius(celsius_in));
      const double to_gas = 17.031 / 14.007;  // NH3 for N
      TW_CHECK(again, found.low, nitrogen(0.08) * (to_gas * p.low.value()), relative(1e-6));
      TW_CHECK(again, found.central, nitrogen(0.15) * (to_gas * p.central.value()), relative(1e-6));
      TW_CHECK(again, found.high, nitrogen(0.30) * (to_gas * p.high.value()), relative(1e-6));
      CHECK(found.reason == "fasted to fed; from memory");
    };
    free(after.free_closed, breath.ph);
    free(after.free_opened, tank_ph);
    const double lowest = between(0.0, 8.0);
    TW_CHECK(lasts, *twl::oxygen_lasts(b, milligrams_per_litre(lowest)),
             hours(std::fmax(0.0, first - lowest / milligrams_per_litre_atm * milligrams_per_atm) / use),
             (tolerance{.absolute = 1e-6, .relative = 1e-8}));
  }
}

TEST_CASE("transport: a bag of which nothing more is said") {
  auto said = bag();
  said.ph = 8.1;
  said.alkalinity = 2.4;
  said.quotient = 0.9;
  CHECK(twl::bag_after(bag(), hours(3.0), 8.2).ph == twl::bag_after(said, hours(3.0), 8.2).ph);
  // 1e-30 kg/s is the least that counts as use.
  auto hardly = bag();
  hardly.uses = mass_flow::from_value(1e-30);
  CHECK(twl::oxygen_lasts(hardly, milligrams_per_litre(5.0)));
  hardly.uses = mass_flow::from_value(0.9e-30);
  CHECK_FALSE(twl::oxygen_lasts(hardly, milligrams_per_litre(5.0)));
  // 32 mg/L at first: 33 and 40 are there no longer.
  CHECK(*twl::oxygen_lasts(bag(), milligrams_per_litre(33.0)) == hours(0.0));
  CHECK(*twl::oxygen_lasts(bag(), milligrams_per_litre(40.0)) == hours(0.0));
}

TEST_CASE("transport: what is taken and what is refused") {
  const auto after = [](auto change, double x) {
    auto one = bag();
    change(one, x);
    return twl::bag_after(one, hours(1.0), 8.1);
  };
  const auto last = [](auto change, double x) {
    auto one = bag();
    change(one, x);
    return twl::oxygen_lasts(one, milligrams_per_litre(5.0));
  };
  const auto water_of = [](auto& b, double x) { b.water = litres(x); };
  const auto gas_of = [](auto& b, double x) { b.gas = litres(x); };
  const auto oxygen_of = [](auto& b, double x) { b.oxygen = fraction(x); };
  const auto use_of = [](auto& b, double x) { b.uses = milligrams_per_hour(x); };
  const auto quotient_of = [](auto& b, double x) { b.quotient = x; };
  const auto ph_of = [](auto& b, double x) { b.ph = x; };
  const auto alkalinity_of = [](auto& b, double x) { b.alkalinity = x; };
  check_ranges(
      "life::bag_after",
      {TW_RANGE("water", 1e-3, 1e6, after(water_of, x)), TW_RANGE("gas", 0.0, 1e6, after(gas_of, x)),
       TW_RANGE("oxygen of the gas", 0.0, 1.0, after(oxygen_of, x)),
       TW_RANGE("oxygen used", 0.0, 1e9, after(use_of, x)),
       TW_RANGE("respiratory quotient", 0.1, 2.0, after(quotient_of, x)), TW_RANGE("pH", 4.0, 10.0, after(ph_of, x)),
       TW_RANGE("alkalinity", 0.01, 100.0, after(alkalinity_of, x)),
       TW_RANGE("time", 0.0, 1e4, twl::bag_after(bag(), hours(x), 8.1)),
       TW_RANGE("pH when opened", 4.0, 10.0, twl::bag_after(bag(), hours(1.0), x))});
  check_ranges(
      "life::oxygen_lasts",
      {TW_RANGE("water", 1e-3, 1e6, last(water_of, x)), TW_RANGE("gas", 0.0, 1e6, last(gas_of, x)),
       TW_RANGE("oxygen of the gas", 0.0, 1.0, last(oxygen_of, x)), TW_RANGE("oxygen used", 0.0, 1e9, last(use_of, x)),
       TW_RANGE("lowest oxygen", 0.0, 100.0, twl::oxygen_lasts(bag(), milligrams_per_litre(x)))});
}
