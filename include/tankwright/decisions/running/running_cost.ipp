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
[[nodiscard]] inline std::vector<room::running_device> devices_of(const room_case& c, const solved_season& s) {
  const auto steady = [](power p) { return estimate<power>{p, p, p, {}}; };
  std::vector<room::running_device> all;
  for (const plan::appliance_inputs& a : c.in.appliances) {
    all.push_back({.label = a.label, .draws = steady(a.electricity), .on = a.on});
  }
  const room::moisture_balance& settled = s.humidity.central;
  if (s.as_planned.dehumidifier && settled.duty.value() > 0.0) {
    // Above 80 % it is credited with what it does at 80 %, as in the balance; below 40 % it does not run.
    const double humidity = std::fmin(settled.air.humidity.get().value(), 0.8);
    const power drawn = room::dehumidifier_output(s.as_planned.dehumidifier->machine, s.given.indoors,
                                                  relative_humidity::from_fraction(humidity))
                            .electrical;
    all.push_back({.label = "dehumidifier", .draws = steady(drawn), .on = settled.duty});
  }
  return all;
}

/// A season's electricity and money, and how much of it is heating.
struct season_cost {
  season when;
  std::optional<estimate<energy>> heating;
  room::running_cost_result all;
};

/// A pump of [plumbing], where no appliance of the room stands for it.
struct pump_of_the_plan {
  std::string label;
  std::optional<power> draws{};
};

[[nodiscard]] inline std::vector<pump_of_the_plan> pumps_without_appliance(const situation& s) {
  std::vector<pump_of_the_plan> pumps;
  if (!s.plan().plumbing) return pumps;
  const auto& all = s.plan().room->appliance;
  const auto add = [&](const plan::pump& pump) {
    const std::string named = plan::label_of(pump);
    const bool counted =
        std::any_of(all.begin(), all.end(), [&](const plan::appliance& a) { return a.label == named; });
    if (!counted) pumps.push_back({named, pump.power.maybe()});
  };
  if (s.plan().plumbing->pump) add(*s.plan().plumbing->pump);
  for (const plan::pump& further : s.plan().plumbing->further_pump) add(further);
  return pumps;
}

[[nodiscard]] inline season_cost cost_of(const room_case& c, const solved_season& s,
                                         const std::vector<pump_of_the_plan>& pumps) {
  const room::electricity_price price = c.in.price.value_or(room::electricity_price{0.0});
  std::vector<room::running_device> devices = devices_of(c, s);
  for (const pump_of_the_plan& pump : pumps) {
    if (!pump.draws) continue;
    const power p = *pump.draws;
    devices.push_back({.label = pump.label, .draws = estimate<power>{p, p, p, "its label"}});
  }
  if (c.in.heating) {
    const room::tank_heat t = heat_of(c, s, powered::on_average);
    const auto electricity =
        map_rising(room::heat_balance(t, policy_for(t.air)).net, [&](power p) { return p / c.in.heating_performance; });
    devices.push_back({.label = "heating", .draws = electricity});
  }
  const auto costs = room::running_costs(devices, price);
  season_cost cost{s.when, {}, costs.all};
  if (c.in.heating) cost.heating = costs.devices.back().cost.per_day;
  return cost;
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
  const auto pumps = detail::pumps_without_appliance(s);
  std::vector<detail::season_cost> costs;
  c.for_each_season(f, [&](const solved_season& one) { costs.push_back(detail::cost_of(c, one, pumps)); });
  const bool priced = c.in.price.has_value();
  if (priced && costs.size() == 2) {
    const auto half = [&](double a, double b) { return 0.5 * (a + b); };
    const auto& winter = costs[0].all.cost_per_year;
    const auto& summer = costs[1].all.cost_per_year;
    f.answer("year_cost", "cost a year, in the currency of the price",
             estimate<double>{half(winter.low, summer.low), half(winter.central, summer.central),
                              half(winter.high, summer.high), winter.reason});
  }
  if (priced) {
    for (const auto& one : costs) {
      f.detail("day_cost", detail::in_season("cost a day", one.when), one.all.cost_per_day, words(one.when));
    }
  }
  for (const auto& one : costs) {
    f.answer("day", detail::in_season("electricity a day", one.when), one.all.per_day, words(one.when));
    if (one.heating) f.detail("heating", detail::in_season("  of it heating", one.when), *one.heating, words(one.when));
  }
  f.note = "A year is half winter and half summer. Warming, cooling and drying of the room beyond this are left out.";
  if (c.in.heating) detail::add_heat_sources(f);
  if (c.in.dehumidifier) f.source(room::energyplus_dehumidifier);
  for (const detail::pump_of_the_plan& pump : pumps) {
    if (pump.draws) continue;
    f.unknown("give the power of the pump, or a [[room.appliance]] with the label \"" + pump.label + "\"");
  }
  if (c.in.heating && c.in.heating->walls.empty()) f.unknown(detail::needs_walls);
  if (!priced) f.next("give the price of a kilowatt-hour");
  if (c.in.dehumidifier && c.in.dehumidifier->machine.electrical.value() == 0.0) {
    f.next("give the power on the dehumidifier's label");
  }
}

}  // namespace tankwright::decisions
