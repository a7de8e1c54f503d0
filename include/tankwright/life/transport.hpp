// SPDX-License-Identifier: BSL-1.0
/// @file
/// How long may the bag stay closed? Oxygen that is left, carbon dioxide and pH, ammonia and how much of it is free, in
/// a bag of water, gas and animals, hour by hour.
#pragma once

#include <cmath>
#include <optional>
#include <tankwright/life/oxygen_use.hpp>
#include <tankwright/water/ammonia.hpp>
#include <tankwright/water/carbonate.hpp>
#include <tankwright/water/oxygen.hpp>

namespace tankwright::life {

/// Nitrogen that fasted fish give off as ammonia for the oxygen they use, mole for mole: 0.08 to 0.3 (from memory).
inline constexpr estimate<double> ammonia_quotient{0.08, 0.15, 0.30, "fasted to fed; from memory"};

inline constexpr caution transport_caution{
    "Fast them for two days before, big ones for three, pack them dark, cool and few. A bag that has been closed for "
    "hours is not "
    "opened and dripped into: its pH rises with the first air and frees the ammonia."};

/// A closed bag.
struct closed_bag {
  required<volume> water;
  required<volume> gas;
  required<proportion> oxygen;  ///< part of the gas
  required<mass_flow> uses;     ///< oxygen, of all animals in it
  required<practical_salinity> salinity;
  required<tankwright::temperature> temperature;
  double ph = 8.1;          ///< [1] total scale, at first
  double alkalinity = 2.4;  ///< [meq/L]
  double quotient = 0.9;    ///< [1] carbon dioxide for oxygen, mole for mole
};

struct bag_state {
  mass oxygen_left;                   ///< in gas and water
  mass_concentration oxygen;          ///< dissolved, in equilibrium with the gas
  mass_concentration carbon_dioxide;  ///< dissolved
  double ph;                          ///< [1] total scale
  estimate<water::total_ammonia> ammonia;
  estimate<mass_concentration> free_closed;  ///< free ammonia at this pH, as NH3
  estimate<mass_concentration> free_opened;  ///< at the pH of the tank: what the first air makes of it
};

inline constexpr limits bag_water_limits{"water", "L", {1e-3, 1e6}};
inline constexpr limits bag_gas_limits{"gas", "L", {0.0, 1e6}};
inline constexpr limits bag_oxygen_limits{"oxygen of the gas", "", zero_to_one};
inline constexpr limits bag_use_limits{"oxygen used", "mg/h", {0.0, 1e9}};
inline constexpr limits bag_time_limits{"time", "h", {0.0, 1e4}};
inline constexpr limits bag_quotient_limits{"respiratory quotient", "", {0.1, 2.0}};

namespace detail {

struct bag_numbers {
  double per_atm;    ///< oxygen in gas and water for an atmosphere of it [kg/atm]
  double dissolved;  ///< [kg/m3 atm]
  double at_first;   ///< [kg]
};

[[nodiscard]] inline bag_numbers oxygen_of(std::string_view here, const closed_bag& bag, range_policy policy) {
  core::check(here, bag_water_limits, in_litres(bag.water));
  core::check(here, bag_gas_limits, in_litres(bag.gas));
  core::check(here, bag_oxygen_limits, bag.oxygen->value());
  core::check(here, bag_use_limits, in_milligrams_per_hour(bag.uses));
  core::check(here, bag_quotient_limits, bag.quotient);
  core::check(here, water::carbonate_ph_limits, bag.ph);
  core::check(here, water::carbonate_alkalinity_limits, bag.alkalinity);
  constexpr double in_air = 0.20946, kg_per_mole = 0.031998, gas_constant = 8.205736608e-5;  // m3 atm/(mol K)
  const double saturated =
      water::oxygen_saturation_concentration(bag.salinity, bag.temperature, standard_atmosphere, policy).value();
  const double vapour = 0.031;  // of an atmosphere at 25 degC: what the wet gas lacks
  bag_numbers n{};
  n.dissolved = saturated / (in_air * (1.0 - vapour));
  n.per_atm =
      bag.gas->value() * kg_per_mole / (gas_constant * in_kelvins(bag.temperature)) + bag.water->value() * n.dissolved;
  n.at_first = n.per_atm * bag.oxygen->value() * (1.0 - vapour);
  return n;
}

}  // namespace detail

/// A closed bag after some hours.
///
///   oxygen: p = (m_0 - U t)/(V_g M/(R T) + V_w c*);  carbon dioxide: RQ U t by `water::ph_after_breath`;
///   ammonia: AQ U t, free by `water::free_ammonia_fraction`
///
/// @param bag    water 1 mL to 1000 m^3; gas 0 to 1000 m^3 with oxygen 0 to 1; oxygen used 0 to 1 kg/h; salinity 19 to
///               40; temperature 2 to 35 degC; pH and alkalinity at first; quotient 0.1 to 2
/// @param time   closed, 0 to 10 000 h
/// @param opened pH [1] that opening leads to, total scale: that of the tank
/// @param policy `extrapolate` to go past these ranges
/// @return       what is in gas and water
/// @throws       invalid_input, out_of_range, no_convergence
/// @accuracy     gas and water taken in equilibrium, which holds in a bag that is carried; a bag that lies still has
///               less oxygen at its bottom. Ammonia within a factor of two
/// @source       gas law; Garcia and Gordon 1992; Lueker et al. 2000; Clegg and Whitfield 1995
[[nodiscard]] inline bag_state bag_after(const closed_bag& bag, duration time, double opened,
                                         range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::life::bag_after";
  const detail::bag_numbers n = detail::oxygen_of(here, bag, policy);
  core::check(here, bag_time_limits, in_hours(time));
  core::check(here, {"pH when opened", "", {4.0, 10.0}}, opened);
  const double used = std::fmin(bag.uses->value() * time.value(), n.at_first), left = n.at_first - used;
  const double moles = used / 0.031998, litres_of_water = in_litres(bag.water);
  const auto breath = water::ph_after_breath({.ph = bag.ph,
                                              .alkalinity = bag.alkalinity,
                                              .salinity = bag.salinity,
                                              .temperature = bag.temperature,
                                              .gas_over_water = bag.gas->value() / bag.water->value()},
                                             bag.quotient * moles * 1e3 / litres_of_water, policy);
  const auto ammonia = map_rising(ammonia_quotient, [&](double quotient) {
    return water::total_ammonia::from_nitrogen(
        mass_concentration::from_value(quotient * moles * 0.0140067 / bag.water->value()));
  });
  const auto free_at = [&](double ph) {
    const auto part = water::free_ammonia_fraction(water::ph_total{ph}, bag.salinity, bag.temperature, policy);
    const auto as_gas = [](water::total_ammonia total, proportion p) {
      return total.as_nitrogen() * (17.031 / 14.007) * p.value();
    };
    return estimate<mass_concentration>{as_gas(ammonia.low, part.low), as_gas(ammonia.central, part.central),
                                        as_gas(ammonia.high, part.high), ammonia.reason};
  };
  return {.oxygen_left = mass::from_value(left),
          .oxygen = mass_concentration::from_value(n.dissolved * left / n.per_atm),
          .carbon_dioxide = breath.carbon_dioxide,
          .ph = breath.ph,
          .ammonia = ammonia,
          .free_closed = free_at(breath.ph),
          .free_opened = free_at(opened)};
}

/// How long the oxygen of a closed bag lasts.
///
///   t = (m_0 - p_lowest (V_g M/(R T) + V_w c*))/U,   p_lowest the pressure at which the water holds the lowest level
///
/// @param bag    as for `bag_after`
/// @param lowest dissolved oxygen that is still enough, 0 to 100 mg/L
/// @param policy `extrapolate` to go past these ranges
/// @return       time; 0 where there is less at first; empty where nothing is used
/// @throws       invalid_input, out_of_range
/// @accuracy     as `bag_after`
/// @source       as `bag_after`
[[nodiscard]] inline std::optional<duration> oxygen_lasts(const closed_bag& bag, mass_concentration lowest,
                                                          range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::life::oxygen_lasts";
  const detail::bag_numbers n = detail::oxygen_of(here, bag, policy);
  core::check(here, {"lowest oxygen", "mg/L", {0.0, 100.0}}, in_milligrams_per_litre(lowest));
  if (bag.uses->value() < core::tiny) return std::nullopt;
  const double spare = n.at_first - lowest.value() / n.dissolved * n.per_atm;
  return duration::from_value(spare > 0.0 ? spare / bag.uses->value() : 0.0);
}

}  // namespace tankwright::life
