// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does it cost to run? Energy and money for a power that is drawn day and night, or for part of the time.
#pragma once

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/core/validity.hpp>

namespace tankwright::room {

/// Money per kilowatt-hour, in whatever currency the bill is in.
class electricity_price : public core::scalar<electricity_price> {
  using scalar::scalar;
};

/// A heat that is held, and how it is made.
struct running_load {
  required<estimate<power>> heat;  ///< a heat balance; what is negative costs nothing
  required<electricity_price> price;
  double performance = 1.0;       ///< heat per electricity: 1 for a heater, 3 for a heat pump
  proportion on = fraction(1.0);  ///< part of the time
};

struct running_cost_result {
  estimate<energy> per_day;
  estimate<double> cost_per_day;
  estimate<double> cost_per_year;  ///< of 365.25 days like this one
};

inline constexpr limits price_limits{"price per kWh", "", not_negative};
inline constexpr limits performance_limits{"performance", "", positive, {0.5, 8.0}, "heaters, chillers, heat pumps"};
inline constexpr limits on_limits{"part of the time", "", zero_to_one};

/// Energy and cost of a load.
///
///   energy = heat / performance * time;   cost = energy * price
///
/// @param load   heat [W], negative parts count as 0; price per kWh >= 0; performance 0.5 to 8; part of the time 0 to 1
/// @param policy `extrapolate` for another performance
/// @return       electricity [J] a day, cost a day and a year in the currency of the price
/// @throws       invalid_input, out_of_range
/// @accuracy     that of the heat
/// @source       arithmetic
[[nodiscard]] inline running_cost_result running_cost(const running_load& load,
                                                      range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::running_cost";
  const estimate<power>& heat = load.heat;
  for (const power& p : {heat.low, heat.central, heat.high}) core::check(here, {"heat", "W", any_finite}, p.value());
  const double price = load.price.get().value();
  core::check(here, price_limits, price);
  core::check(here, performance_limits, load.performance, policy);
  core::check(here, on_limits, load.on.value());
  const auto in_a_day = [&](power p) {
    return energy::from_value(p.value() > 0.0 ? p.value() / load.performance * load.on.value() * 86400.0 : 0.0);
  };
  const auto cost = [&](energy e) { return in_kilowatt_hours(e) * price; };
  const estimate<energy> day = map_rising(heat, in_a_day);
  const estimate<double> daily = map_rising(day, cost);
  return {
      .per_day = day, .cost_per_day = daily, .cost_per_year = map_rising(daily, [](double c) { return 365.25 * c; })};
}

}  // namespace tankwright::room
