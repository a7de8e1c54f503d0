// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/running/devices_of_the_year.hpp>
#include <tankwright/decisions/running/running_cost.ipp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// The devices of a season, heating with them.
[[nodiscard]] inline std::vector<room::running_device> all_devices_of(const room_case& c, const solved_season& s) {
  std::vector<room::running_device> all = devices_of(c, s);
  if (c.in.heating && !c.in.heating->walls.empty()) {
    const room::tank_heat t = heat_of(c, s, powered::on_average);
    all.push_back({.label = "heating", .draws = map_rising(room::heat_balance(t, policy_for(t.air)).net, [&](power p) {
                                         return p / c.in.heating_performance;
                                       })});
  }
  return all;
}

/// A device over the year: the mean of the seasons.
struct device_year {
  std::string label;
  estimate<energy> used = energy{};
};

}  // namespace detail

TANKWRIGHT_INLINE void answer_devices_of_the_year(const situation& s, answers& out) {
  if (!s.plan().room || s.plan().room->appliance.empty()) return;
  const room_case& c = s.room();
  if (!c.gives_any()) return;
  finding& f = out.ask(devices_of_the_year);
  std::vector<detail::device_year> all;
  double seasons = 0.0;
  c.for_each_season(f, [&](const solved_season& one) {
    seasons += 1.0;
    const auto devices = detail::all_devices_of(c, one);
    for (const auto& device : room::running_costs(devices, room::electricity_price{0.0}).devices) {
      auto known = std::find_if(all.begin(), all.end(), [&](const auto& d) { return d.label == device.label; });
      if (known == all.end()) {
        all.push_back({device.label});
        known = all.end() - 1;
      }
      known->used = known->used + device.cost.per_year;
    }
  });
  const detail::device_year* most = nullptr;
  for (const detail::device_year& one : all) {
    if (!most || one.used.central > most->used.central) most = &one;
  }
  for (const detail::device_year& one : all) {
    const auto used = map_rising(one.used, [&](energy e) { return e / seasons; });
    f.answer("year", "in a year", used, one.label);
    if (c.in.price) {
      f.detail("cost", "costs, in your currency",
               map_rising(used, [&](energy e) { return in_kilowatt_hours(e) * c.in.price->value(); }), one.label);
    }
  }
  if (most) f.note = "Most goes into " + most->label + ". Labels err: a meter in the socket for a week tells.";
  if (c.in.heating && !c.in.heating->walls.empty()) detail::add_heat_sources(f);
}

}  // namespace tankwright::decisions
