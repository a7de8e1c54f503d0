// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/running/running_cost.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/room/running_cost.hpp>

namespace tankwright::decisions {

namespace detail {

/// What runs by itself: pumps, lights, the dehumidifier as often as the room needs it.
[[nodiscard]] inline power machines_of(const room_case& c, const solved_season& s) {
  power sum = watts(0.0);
  for (const plan::appliance_inputs& a : c.in.appliances) sum += a.electricity.get() * a.on.value();
  const room::moisture_balance& settled = s.humidity.central;
  if (s.as_planned.dehumidifier && settled.duty.value() > 0.0) {
    // Above 80 % it is credited with what it does at 80 %, as in the balance; below 40 % it does not run.
    const double humidity = std::fmin(settled.air.humidity.get().fraction(), 0.8);
    sum += settled.duty.value() * room::dehumidifier_output(s.as_planned.dehumidifier->machine, s.given.indoors,
                                                            relative_humidity::from_fraction(humidity))
                                      .electrical;
  }
  return sum;
}

/// A season's electricity and money.
struct season_cost {
  season when;
  std::optional<estimate<energy>> heating;
  estimate<energy> day;
  estimate<double> day_cost;
  estimate<double> year_cost;
};

template <class Q>
[[nodiscard]] constexpr estimate<Q> sum_of(const estimate<Q>& a, const estimate<Q>& b) noexcept {
  return {a.low + b.low, a.central + b.central, a.high + b.high, a.reason};
}

[[nodiscard]] inline season_cost cost_of(const room_case& c, const solved_season& s) {
  const room::electricity_price price = c.in.price.value_or(room::electricity_price{0.0});
  const power machines = machines_of(c, s);
  const auto steady = room::running_cost({.heat = estimate<power>{machines, machines, machines, {}}, .price = price});
  season_cost cost{s.when, {}, steady.per_day, steady.cost_per_day, steady.cost_per_year};
  if (!c.in.heating) return cost;
  const room::tank_heat t = heat_of(c, s, powered::on_average);
  const auto heat = room::running_cost({.heat = room::heat_balance(t, policy_for(t.air)).net,
                                        .price = price,
                                        .performance = c.in.heating_performance});
  cost.heating = heat.per_day;
  cost.day = sum_of(heat.per_day, steady.per_day);
  cost.day_cost = sum_of(heat.cost_per_day, steady.cost_per_day);
  cost.year_cost = sum_of(heat.cost_per_year, steady.cost_per_year);
  return cost;
}

/// The pump of [plumbing.pump], where no appliance stands for it; by its label.
[[nodiscard]] inline std::optional<std::string> pump_left_out(const situation& s) {
  if (!s.plan().plumbing || !s.plan().plumbing->pump) return std::nullopt;
  const std::string& label = s.plan().plumbing->pump->label;
  const std::string named = label.empty() ? "pump" : label;
  const auto& all = s.plan().room->appliance;
  const bool counted =
      std::any_of(all.begin(), all.end(), [&](const plan::appliance& a) { return a.label == named; });
  return counted ? std::nullopt : std::optional{named};
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_running_cost(const situation& s, answers& out) {
  if (!s.plan().room) return;
  const plan::room_section& section = *s.plan().room;
  if (!section.price_per_kwh && section.appliance.empty()) return;
  finding& f = out.ask(running_cost);
  const room_case& c = s.room();
  if (!c.gives_any()) {
    f.unknown(detail::what_is_missing(c, detail::needs_seasons));
    return;
  }
  std::vector<detail::season_cost> costs;
  c.for_each_season(f, [&](const solved_season& one) { costs.push_back(detail::cost_of(c, one)); });
  const bool priced = c.in.price.has_value();
  if (priced && costs.size() == 2) {
    const auto year = map_rising(detail::sum_of(costs[0].year_cost, costs[1].year_cost),
                                 [](double both) { return 0.5 * both; });
    f.answer("year_cost", "cost a year, in the currency of the price", year);
  }
  if (priced) {
    for (const auto& one : costs) {
      f.detail("day_cost", detail::in_season("cost a day", one.when), one.day_cost, words(one.when));
    }
  }
  for (const auto& one : costs) {
    f.answer("day", detail::in_season("electricity a day", one.when), one.day, words(one.when));
    if (one.heating) f.detail("heating", detail::in_season("  of it heating", one.when), *one.heating, words(one.when));
  }
  f.note = "A year is half winter and half summer. Warming, cooling and drying of the room beyond this are left out.";
  if (c.in.heating) detail::add_heat_sources(f);
  if (c.in.dehumidifier) f.source(room::energyplus_dehumidifier);
  if (const auto pump = detail::pump_left_out(s)) {
    f.unknown("give the power of the return pump as a [[room.appliance]] with the label \"" + *pump + "\"");
  }
  if (c.in.heating && c.in.heating->walls.empty()) f.unknown(detail::needs_walls);
  if (!priced) f.next("give the price of a kilowatt-hour");
  if (c.in.dehumidifier && c.in.dehumidifier->machine.electrical.value() == 0.0) {
    f.next("give the power on the dehumidifier's label");
  }
}

}  // namespace tankwright::decisions
