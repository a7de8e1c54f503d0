// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/carbonate.hpp>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

TEST_CASE("carbonate: constants at 25 degrees and 35, as in the guide of best practices") {
  const evidence guide{"tankwright::water::carbonate_in", kind::from_memory,
                       "Dickson, Sabine and Christian 2007, check values at S 35 and 25 degC"};
  const auto k = tww::carbonate_in(practical_salinity{35.0}, celsius(25.0));
  TW_CHECK(guide, k.pk1, 5.8472, within(5e-5));
  TW_CHECK(guide, k.pk2, 8.9660, within(5e-5));
  TW_CHECK(guide, std::log(k.solubility), -3.5617, within(5e-5));
  // By hand, term by term.
  const evidence hand{"tankwright::water::carbonate_in", kind::identity, "the printed formula, term by term"};
  const double t = 288.15, s = 30.0;
  const auto other = tww::carbonate_in(practical_salinity{s}, celsius(15.0));
  TW_CHECK(hand, other.pk1, 3633.86 / t - 61.2172 + 9.6777 * std::log(t) - 0.011555 * s + 0.0001152 * s * s,
           within(1e-12));
  TW_CHECK(hand, other.pk2, 471.78 / t + 25.929 - 3.16967 * std::log(t) - 0.01781 * s + 0.0001122 * s * s,
           within(1e-12));
  const double h = t / 100.0;
  TW_CHECK(hand, std::log(other.solubility),
           93.4517 / h - 60.2409 + 23.3585 * std::log(h) + s * (0.023517 - 0.023656 * h + 0.0047036 * h * h),
           within(1e-12));
}

TEST_CASE("carbonate: nothing breathed leaves the pH, and what is breathed is found again in water and gas") {
  const evidence balance{"tankwright::water::ph_after_breath", kind::identity, "carbon is conserved, by hand"};
  const tww::closed_water closed{
      .ph = 8.1, .alkalinity = 2.4, .salinity = practical_salinity{35.0}, .temperature = celsius(25.0)};
  TW_CHECK(balance, tww::ph_after_breath(closed, 0.0).ph, 8.1, within(1e-9));
  const auto k = tww::carbonate_in(closed.salinity, closed.temperature);
  const auto inorganic = [&](double ph) {
    const double hydrogen = std::pow(10.0, -ph), k1 = std::pow(10.0, -k.pk1), k2 = std::pow(10.0, -k.pk2);
    const double bicarbonate = 2.4 / (1.0 + 2.0 * k2 / hydrogen);
    return bicarbonate * (1.0 + hydrogen / k1 + k2 / hydrogen);
  };
  for (const double gas : {0.0, 3.0}) {
    for (const double added : {0.5, 2.0, 8.0}) {
      auto with = closed;
      with.gas_over_water = gas;
      const auto after = tww::ph_after_breath(with, added);
      const double in_gas = gas * after.partial_pressure * 1e3 / (0.082057366 * 298.15);  // mmol for a litre of water
      TW_CHECK(balance, inorganic(after.ph) + in_gas, inorganic(8.1) + added, relative(1e-9));
      TW_CHECK(balance, in_milligrams_per_litre(after.carbon_dioxide),
               44.009 * after.partial_pressure * k.solubility * 1.0247 * 1e3, relative(1e-9));
    }
  }
  // Two millimoles in a litre: well below 7, and gas over it takes its share.
  const double alone = tww::ph_after_breath(closed, 2.0).ph;
  TW_HOLDS(balance, alone < 7.0);
  auto with = closed;
  with.gas_over_water = 3.0;
  TW_HOLDS(balance, tww::ph_after_breath(with, 2.0).ph > alone);
}

TEST_CASE("carbonate: edges of the ranges") {
  check_edges(tww::carbonate_salinity_limits,
              [](double s, range_policy p) { return tww::carbonate_in(practical_salinity{s}, celsius(25.0), p); });
  check_edges(tww::carbonate_temperature_limits,
              [](double t, range_policy p) { return tww::carbonate_in(practical_salinity{35.0}, celsius(t), p); });
  const auto with = [](double ph, double alkalinity, double gas, double added) {
    return tww::ph_after_breath({.ph = ph,
                                 .alkalinity = alkalinity,
                                 .salinity = practical_salinity{35.0},
                                 .temperature = celsius(25.0),
                                 .gas_over_water = gas},
                                added);
  };
  check_edges(tww::carbonate_ph_limits, [&](double x, range_policy) { return with(x, 2.4, 0.0, 0.1); });
  check_edges(tww::carbonate_alkalinity_limits, [&](double x, range_policy) { return with(8.0, x, 0.0, 0.1); });
  check_edges(tww::carbonate_gas_limits, [&](double x, range_policy) { return with(8.0, 2.4, x, 0.1); });
  check_edges(tww::carbonate_added_limits, [&](double x, range_policy) { return with(8.0, 2.4, 0.0, x); });
}
