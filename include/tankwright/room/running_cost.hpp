// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does it cost to run? Energy and money of a power that is drawn day and night, or for part of the time; of one
/// device, and of all of them, each by itself and in all.
#pragma once

#include <algorithm>
#include <span>
#include <string>
#include <vector>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/labelled.hpp>
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
  double performance = 1.0;       ///< [1] heat per electricity: 1 for a heater, 3 for a heat pump
  proportion on = fraction(1.0);  ///< part of the time
};

/// What a device comes to. Energy and money are never mixed.
struct running_cost_result {
  estimate<energy> per_day;
  estimate<energy> per_year;       ///< of 365.25 days like this one
  estimate<double> cost_per_day;   ///< [currency/d]
  estimate<double> cost_per_year;  ///< [currency/a] of 365.25 days like this one
};

inline constexpr limits price_limits{"price per kWh", "", {0.0, 1e9}};
inline constexpr limits performance_limits{"performance", "", {1e-3, 1e3}, {0.5, 8.0}, "heaters, chillers, heat pumps"};
inline constexpr limits running_power_limits{"power", "W", {-1e9, 1e9}};
inline constexpr limits on_limits{"part of the time", "", zero_to_one};

/// A device and what it draws.
struct running_device {
  std::string label = "device";
  required<estimate<power>> draws;  ///< electricity, while it runs; what is negative costs nothing
  proportion on = fraction(1.0);    ///< part of the time
};

struct device_cost {
  std::string label;
  running_cost_result cost;
};

/// What all devices come to.
struct running_costs_result {
  std::vector<device_cost> devices;  ///< in the order given
  running_cost_result all;
};

namespace detail {

[[nodiscard]] inline running_cost_result cost_of(const estimate<energy>& day, double price) {
  const auto year = [](energy e) { return 365.25 * e; };
  const auto cost = [&](energy e) { return in_kilowatt_hours(e) * price; };
  const estimate<energy> yearly = map_rising(day, year);
  return {.per_day = day,
          .per_year = yearly,
          .cost_per_day = map_rising(day, cost),
          .cost_per_year = map_rising(yearly, cost)};
}

}  // namespace detail

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
  core::check(here, running_power_limits, heat.low.value());
  core::check(here, running_power_limits, heat.high.value());
  const double price = load.price.get().value();
  core::check(here, price_limits, price);
  core::check(here, performance_limits, load.performance, policy);
  core::check(here, on_limits, load.on.value());
  const auto in_a_day = [&](power p) {
    return energy::from_value(std::max(p.value(), 0.0) / load.performance * load.on.value() * 86400.0);
  };
  return detail::cost_of(map_rising(heat, in_a_day), price);
}

/// Energy and cost of devices, each by itself and in all.
///
///   energy = power * part of the time;   cost = energy * price
///
/// @param devices each draws [W] -1e9 to 1e9, negative parts count as 0; part of the time 0 to 1
/// @param price   per kWh, 0 to 1e9, in the currency of the bill
/// @return        electricity [J] and cost of each device and of all, a day and a year
/// @throws        invalid_input (names the device)
/// @accuracy      that of the powers; what is measured with a meter at the plug goes before a label
/// @source        arithmetic
[[nodiscard]] inline running_costs_result running_costs(std::span<const running_device> devices,
                                                        electricity_price price) {
  constexpr std::string_view here = "tankwright::room::running_costs";
  core::check(here, price_limits, price.value());
  running_costs_result result{.devices = {}, .all = {}};
  estimate<energy> sum{{}, {}, {}, "the bands of the devices, which add up"};
  for (const running_device& d : devices) {
    const estimate<power>& p = d.draws;
    core::check_element(here, d.label, running_power_limits, p.low.value());
    core::check_element(here, d.label, running_power_limits, p.high.value());
    core::check_element(here, d.label, on_limits, d.on.value());
    const auto in_a_day = [&](power each) {
      return energy::from_value(std::max(each.value(), 0.0) * d.on.value() * 86400.0);
    };
    const estimate<energy> day = map_rising(p, in_a_day);
    result.devices.push_back({.label = d.label, .cost = detail::cost_of(day, price.value())});
    sum = {sum.low + day.low, sum.central + day.central, sum.high + day.high, sum.reason};
  }
  result.all = detail::cost_of(sum, price.value());
  return result;
}

}  // namespace tankwright::room
