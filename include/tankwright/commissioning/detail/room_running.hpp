// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the room and the tank draw in a day of each season, and what that costs.
#pragma once

#include <tankwright/commissioning/detail/room_heat.hpp>
#include <tankwright/room/running_cost.hpp>

namespace tankwright::commissioning::detail::closing {

[[nodiscard]] inline bool asks_for_running(const room_plan& plan) noexcept {
  return plan.price || !plan.appliances.empty();
}

template <class Q>
[[nodiscard]] constexpr estimate<Q> sum_of(const estimate<Q>& a, const estimate<Q>& b) noexcept {
  return {a.low + b.low, a.central + b.central, a.high + b.high, a.reason};
}

/// What runs by itself: pumps, lights, the dehumidifier as often as the room needs it.
[[nodiscard]] inline power machines_of(const room_case& c, const solved_season& s) {
  power sum = watts(0.0);
  for (const appliance& a : c.plan.appliances) sum += a.electricity.get() * a.on.value();
  const room::moisture_balance& settled = s.humidity.central;
  if (s.as_planned.dehumidifier && settled.duty.value() > 0.0) {
    // Above 80 % it is credited with what it does at 80 %, as in the balance; below 40 % it does not run.
    const double humidity = std::fmin(settled.air.humidity.get().fraction(), 0.8);
    sum += settled.duty.value() * room::dehumidifier_output(s.as_planned.dehumidifier->machine, s.given->indoors,
                                                            relative_humidity::from_fraction(humidity))
                                      .electrical;
  }
  return sum;
}

[[nodiscard]] inline finding running_finding(const room_case& c) {
  finding f = asked(running_question);
  const room::electricity_price price = c.plan.price.value_or(room::electricity_price{0.0});
  std::vector<estimate<double>> years;
  for (const solved_season& s : c.seasons) {
    const power machines = machines_of(c, s);
    const estimate<power> steady{machines, machines, machines, {}};
    room::running_cost_result cost = room::running_cost({.heat = steady, .price = price});
    if (c.plan.heating) {
      const room::tank_heat t = heat_of(c, s, powered::on_average);
      const room::running_cost_result heat = room::running_cost({.heat = room::heat_balance(t, policy_for(t.air)).net,
                                                                 .price = price,
                                                                 .performance = c.plan.heating_performance});
      f.numbers.push_back(
          {s.words("  of it heating in winter", "  of it heating in summer"), amount_of(heat.per_day), role::detail});
      cost = {sum_of(heat.per_day, cost.per_day), sum_of(heat.cost_per_day, cost.cost_per_day),
              sum_of(heat.cost_per_year, cost.cost_per_year)};
    }
    f.numbers.push_back(
        {s.words("electricity a day in winter", "electricity a day in summer"), amount_of(cost.per_day)});
    if (c.plan.price) {
      f.numbers.push_back(
          {s.words("cost a day in winter", "cost a day in summer"), amount_of(cost.cost_per_day), role::detail});
    }
    years.push_back(cost.cost_per_year);
  }
  if (c.plan.price && years.size() == 2) {
    const auto year = map_rising(sum_of(years[0], years[1]), [](double both) { return 0.5 * both; });
    f.numbers.insert(f.numbers.begin(), {"cost a year, in the currency of the price", amount_of(year)});
  }
  f.note = "A year is half winter and half summer. Warming, cooling and drying of the room beyond this are left out.";
  if (c.plan.heating) f.sources = heat_sources();
  if (c.plan.dehumidifier) f.sources.push_back(room::energyplus_dehumidifier);
  f.before_acting = room::water_and_electricity_caution.text;
  if (!c.plan.price) f.measure_next.push_back("give the price of a kilowatt-hour");
  if (c.plan.dehumidifier && c.plan.dehumidifier->machine.electrical.value() == 0.0) {
    f.measure_next.push_back("give the power on the dehumidifier's label");
  }
  return f;
}

}  // namespace tankwright::commissioning::detail::closing
