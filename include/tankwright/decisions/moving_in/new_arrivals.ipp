// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/new_arrivals.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_new_arrivals(const situation& s, answers& out) {
  if (!s.plan().life || !s.plan().life->arrivals) return;
  finding& f = out.ask(new_arrivals);
  const life_case& c = s.life();
  if (!c.in.ph) {
    f.unknown("measure the pH of the tank and of the bag with one probe");
    return;
  }
  const water::ammonia_sample tank{.total = water::total_ammonia::from_nitrogen({}),
                                   .ph = *c.in.ph,
                                   .salinity = c.state.water.salinity,
                                   .temperature = c.state.water.temperature};
  const life::match_limits limits{};
  const auto match = life::match_waters({.bag = c.in.arrivals->bag, .tank = tank, .limits = limits});
  const auto as_ammonia = [](water::free_ammonia level) { return level.as_ammonia(); };
  const auto opened = map_rising(match.ammonia_at_tank_ph, as_ammonia);
  const auto closed = map_rising(match.ammonia_as_is, as_ammonia);
  const estimate<mass_concentration> worst{std::max(opened.low, closed.low), std::max(opened.central, closed.central),
                                           std::max(opened.high, closed.high), opened.reason};
  const mass_concentration limit = limits.ammonia.as_ammonia();
  f.answer("opened", "free ammonia in the bag, opened, as NH3", opened);
  f.detail("closed", "while the bag is closed", closed);
  f.limit("ammonia_limit", "stay below", limit);
  f.margin("ammonia_left", "left",
           map_falling(worst, [&](mass_concentration level) { return mass_concentration{limit - level}; }),
           mass_concentration{}, "free ammonia");
  const double warmer = std::fabs(in_kelvin_steps(match.temperature));
  f.detail("salinity", "salinity, tank less bag", match.salinity, "salinity");
  f.limit("salinity_limit", "may be", limits.salinity, "salinity");
  f.margin("salinity_left", "left", limits.salinity - std::fabs(match.salinity), 0.0, "salinity");
  f.detail("temperature", "temperature, tank less bag", match.temperature, "temperature");
  f.limit("temperature_limit", "may be", limits.temperature, "temperature");
  f.margin("temperature_left", "left", temperature_difference{limits.temperature - kelvin_steps(warmer)},
           temperature_difference{}, "temperature");
  f.detail("ph", "pH, tank less bag", match.ph, "pH");
  f.limit("ph_limit", "may be", limits.ph, "pH");
  f.margin("ph_left", "left", limits.ph - std::fabs(match.ph), 0.0, "pH");
  if (worst.central >= limit) {
    f.happens = opened.central > closed.central
                    ? "Once the bag is open its pH follows the tank's, and its free ammonia rises to " +
                          said(s, opened.central) + "."
                    : "The free ammonia in the bag is " + said(s, closed.central) + " already.";
    f.note =
        "No slow drip in that water. Bring a vessel of clean water to the salinity and temperature of the bag, move "
        "them into it, and bring that vessel to the tank's water. ";
  }
  std::string apart;
  for (const number& n : f.numbers) {
    if (n.as == role::margin && n.id != "ammonia_left" && !(n.value.central > 0.0)) apart += " " + n.place;
  }
  if (!apart.empty()) f.note += "Apart too far:" + apart + ".";
  f.sources = {water::clegg_whitfield_1995, life::husbandry_practice};
  f.next("measure both waters with the same instruments, the bag as soon as it is open");
}

}  // namespace tankwright::decisions
