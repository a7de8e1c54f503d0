// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is it safe to move the animals? Whether the two waters match, what the ammonia in the bag turns into, and whether
/// the rock that moves along carries the load.
#pragma once

#include <cmath>
#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/levels.hpp>
#include <tankwright/life/nitrogen.hpp>
#include <tankwright/life/ranges.hpp>
#include <tankwright/water/ammonia.hpp>

namespace tankwright::life {

inline constexpr caution transfer_caution{
    "When a shipping bag is opened its carbon dioxide leaves, the pH rises, the ammonia in it turns poisonous. After "
    "a long journey match salinity and temperature in advance and move quickly; a slow drip in fouled water is worse. "
    "Limits are starting values for healthy adults of common species; ask an aquatic veterinarian."};

/// How far two waters may lie apart. Starting values of the trade, from memory.
struct match_limits {
  double salinity = 1.0;  ///< [1]
  temperature_difference temperature = celsius_steps(1.0);
  double ph = 0.2;  ///< [1]
  water::free_ammonia ammonia = free_ammonia_harm.level;
};

/// The water that animals are in, and the tank's that they go to. Both pH on one scale.
struct water_pair {
  water::ammonia_sample bag;
  water::ammonia_sample tank;
  match_limits limits = {};
};

/// The animals' water against the tank's.
struct water_match {
  double salinity;                                   ///< [1] tank less bag
  temperature_difference temperature;                ///< tank less bag
  double ph;                                         ///< [1] tank less bag
  estimate<water::free_ammonia> ammonia_as_is;       ///< in the animals' water, at its own pH
  estimate<water::free_ammonia> ammonia_at_tank_ph;  ///< in the animals' water, once its pH has come up to the tank's
  bool salinity_matches;
  bool temperature_matches;
  bool ph_matches;
  bool ammonia_safe;  ///< the high end, at both pH values
  tankwright::caution caution;
};

/// Does the water that the animals are in match the tank's, and what of its ammonia when its pH follows the tank's?
///
///   differences against limits; NH3 = f(pH, S, t) TAN at both pH values
///
/// @param pair   both waters, their pH on one scale; how far they may lie apart
/// @param policy `extrapolate` to go past the ranges of the free ammonia
/// @return       differences, free ammonia at both pH values, verdicts and the caution
/// @throws       invalid_input, out_of_range; also when the two pH values are on different scales
/// @accuracy     as water::free_ammonia_in
/// @source       Clegg and Whitfield 1995 (free ammonia); limits from memory
[[nodiscard]] inline water_match match_waters(const water_pair& pair, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::life::match_waters";
  const auto& [bag, tank, limits] = pair;
  if (bag.ph.on() != tank.ph.on()) {
    core::fail<invalid_input>(here, "pH", bag.ph.value(), "",
                              "is on another scale than the tank's pH: measure both with one probe");
  }
  core::check(here, {"salinity limit", "", {0.0, 100.0}}, limits.salinity);
  core::check(here, {"temperature limit", "K", {0.0, 100.0}}, in_kelvin_steps(limits.temperature));
  core::check(here, {"pH limit", "", {0.0, 14.0}}, limits.ph);
  core::check(here, {"ammonia limit", "mg/L", possible_level}, in_milligrams_per_litre(limits.ammonia.as_ammonia()));
  water::ammonia_sample opened = bag;
  opened.ph = tank.ph;
  const auto as_is = water::free_ammonia_in(bag, policy).concentration;
  const auto at_tank_ph = water::free_ammonia_in(opened, policy).concentration;
  (void)water::free_ammonia_in(tank, policy);  // its numbers are held against their ranges
  const double salinity = tank.salinity->value() - bag.salinity->value();
  const auto warmer = temperature_difference::from_value(tank.temperature->value() - bag.temperature->value());
  const double ph = tank.ph.value() - bag.ph.value();
  return {salinity,
          warmer,
          ph,
          as_is,
          at_tank_ph,
          std::fabs(salinity) <= limits.salinity,
          std::fabs(warmer.value()) <= limits.temperature.value(),
          std::fabs(ph) <= limits.ph,
          as_is.high <= limits.ammonia && at_tank_ph.high <= limits.ammonia,
          transfer_caution};
}

/// Rock (or sand, or media) that moves from a tank that has kept up with a load.
struct moved_rock {
  required<nitrogen_load> proven;    ///< load that the whole of it has kept up with
  required<proportion> share_moved;  ///< share of it that moves, wet and without delay
  required<nitrogen_load> new_load;  ///< load of the animals that go with it
  required<volume> net;              ///< net volume of the new system
};

/// Whether the rock carries the load on the first day.
struct rock_balance {
  nitrogen_load carried;            ///< as before, at the ammonia level of the old tank
  nitrogen_load shortfall;          ///< of the new load; zero when all is carried
  double share_needed;              ///< [1] of the old rock, for the new load; above one rock alone cannot do it
  water::total_ammonia daily_rise;  ///< of ammonia in the new system, until bacteria grow
  tankwright::caution caution;
};

/// Does moved rock carry the load that moves with it, and how fast does ammonia rise if not?
///
///   carried = share proven,   shortfall = new - carried,   rise = shortfall/V
///
/// @param rock   proven load > 0, share 0 to 1, new load >= 0, net volume > 0
/// @return       loads [nitrogen per time], the share needed, the rise of ammonia in a day, and the caution
/// @throws       invalid_input
/// @accuracy     a first-day balance without growth and without the higher rate at higher ammonia: the safe side; for
///               the course see simulate_start_up
/// @source       mass balance; common practice: rock and animals move together, so that the bacteria keep their ammonia
[[nodiscard]] inline rock_balance balance_of_moved_rock(const moved_rock& rock) {
  constexpr std::string_view here = "tankwright::life::balance_of_moved_rock";
  const mass_flow proven = rock.proven->as_nitrogen();
  const mass_flow wanted = rock.new_load->as_nitrogen();
  core::check(here, {"proven load", "g/d", {1e-6, 1e9}}, in_grams_per_day(proven));
  core::check(here, {"share moved", "", zero_to_one}, rock.share_moved->value());
  core::check(here, {"new load", "g/d", nitrogen_load_limits.possible}, in_grams_per_day(wanted));
  core::check(here, net_volume_limits, in_litres(rock.net));
  const mass_flow carried = proven * rock.share_moved->value();
  const mass_flow shortfall = wanted > carried ? wanted - carried : mass_flow{};
  return {nitrogen_load::from_nitrogen(carried),
          nitrogen_load::from_nitrogen(shortfall),
          wanted / proven,
          water::total_ammonia::from_nitrogen(shortfall * days(1.0) / rock.net.get()),
          {"Rock loses bacteria when it dries, cools or stands without flow. Measure ammonia and nitrite every day, "
           "feed little, and keep matched water ready to change. Ask an aquatic veterinarian."}};
}

}  // namespace tankwright::life
