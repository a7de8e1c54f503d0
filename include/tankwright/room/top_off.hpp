// SPDX-License-Identifier: BSL-1.0
/// @file
/// How many litres a day must be topped off, how long does the reservoir last, and what if its valve sticks open, or
/// shut? How the salinity drifts meanwhile is in `water/drift.hpp`.
#pragma once

#include <algorithm>
#include <cmath>
#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/room/ranges.hpp>
#include <tankwright/room/tank_water.hpp>
#include <tankwright/water/density.hpp>

namespace tankwright::room {

struct stuck_valve_result {
  practical_salinity salinity;  ///< when all of the reservoir has run in
  tankwright::volume overflow;  ///< what the free volume does not hold: it goes on the floor
  bool too_fresh;               ///< below the lowest salinity
  tankwright::caution caution;
};

/// What a reservoir may do at worst: all of it runs into the system at once.
struct reservoir_request {
  tank_water water;
  required<tankwright::volume> volume;  ///< of all the water in the system
  required<practical_salinity> lowest;  ///< salinity that the animals still stand
  /// Above the working level, up to the rim, in the chamber where it runs in.
  required<tankwright::volume> free_volume;
  tankwright::temperature fresh_water = celsius(20.0);
};

struct reservoir_limit {
  tankwright::volume largest;
  std::string_view governed_by;  ///< "salinity" or "free volume"
  tankwright::caution caution;
};

/// The chamber whose level falls as water evaporates: the last one, with the return pump.
struct return_chamber {
  required<area> surface;                 ///< water area of the chamber
  required<estimate<flow_rate>> top_off;  ///< what the whole system evaporates, as from top_off_rate
  required<length> running_level;
  required<length> lowest_level;  ///< at which the pump still draws no air
};

struct return_chamber_result {
  estimate<velocity> fall;  ///< of the level, without top-off
  estimate<duration> until_lowest;
  tankwright::caution caution;
};

inline constexpr caution top_off_caution{
    "A top-off valve or float switch fails in time, open or shut. Size the reservoir so that all of it may run in, fit "
    "a second independent switch, and expect the animals to suffer from a fast change long before the final figure."};
inline constexpr caution starving_pump_caution{
    "A return pump that draws air stops circulation and may burn out. Fit a low-level switch that cuts the pump."};

inline constexpr limits system_volume_limits{"volume of the system", "m3", possible_volume};
inline constexpr limits free_volume_limits{"free volume", "m3", {0.0, 1e9}};
inline constexpr limits reservoir_limits{"reservoir", "m3", {0.0, 1e9}};
inline constexpr limits chamber_area_limits{"area of the return chamber", "m2", {1e-6, 1e6}};
inline constexpr limits fresh_water_temperature_limits{"temperature of the fresh water", "degC", possible_water,
                                                       celsius_range(0.0, 40.0), "liquid water"};

namespace detail {

/// Density of fresh water [kg/m^3].
[[nodiscard]] inline double checked_fresh_density(std::string_view function, temperature t, range_policy policy) {
  core::check(function, fresh_water_temperature_limits, in_celsius(t), policy);
  return water::kernel::density_teos10(0.0, in_celsius(t));
}

/// Both ends, between which the middle lies.
template <class Q>
void check_ends(std::string_view function, const limits& each, const estimate<Q>& e) {
  core::check(function, each, e.low.value());
  core::check(function, each, e.high.value());
}

/// Mass of the water in the system [kg].
[[nodiscard]] inline double checked_mass(std::string_view function, const reservoir_request& r, range_policy policy) {
  core::check(function, system_volume_limits, r.volume.get().value());
  core::check(function, free_volume_limits, r.free_volume.get().value());
  return water::density(r.water.salinity, r.water.temperature, policy).value() * r.volume.get().value();
}

}  // namespace detail

/// Fresh water to top off.
///
///   volume = evaporated mass / density of fresh water
///
/// @param evaporation of the whole system [kg/s] >= 0
/// @param fresh_water temperature of the fresh water, 0 to 40 degC
/// @param policy      `extrapolate` to go past that range
/// @return            volume per time [m^3/s]
/// @throws            invalid_input (also for condensation: nothing is to be topped off), out_of_range
/// @accuracy          the band of the evaporation
/// @source            mass balance; density by TEOS-10
[[nodiscard]] inline estimate<flow_rate> top_off_rate(const estimate<mass_flow>& evaporation,
                                                      temperature fresh_water = celsius(20.0),
                                                      range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::top_off_rate";
  detail::check_ends(here, {"evaporation", "kg/s", possible_mass_flow}, evaporation);
  const double density = detail::checked_fresh_density(here, fresh_water, policy);
  return map_rising(evaporation, [&](mass_flow e) { return flow_rate::from_value(e.value() / density); });
}

/// How long a reservoir lasts. Plan on the low end: it belongs to the high evaporation.
///
///   t = V / top-off rate
///
/// @param reservoir usable volume V [m^3] >= 0
/// @param rate      of top-off [m^3/s] > 0, as from top_off_rate
/// @return          time [s]
/// @throws          invalid_input (also when nothing evaporates: it would last for ever)
/// @accuracy        the band of the evaporation
/// @source          arithmetic
[[nodiscard]] inline estimate<duration> reservoir_lasts(volume reservoir, const estimate<flow_rate>& rate) {
  constexpr std::string_view here = "tankwright::room::reservoir_lasts";
  core::check(here, reservoir_limits, reservoir.value());
  detail::check_ends(here, {"top-off rate", "m3/s", {1e-15, 10.0}}, rate);
  return map_falling(rate, [&](flow_rate r) { return reservoir / r; });
}

/// What happens when the top-off valve sticks open and the whole reservoir runs in.
///
///   S = S_0 m_0 / (m_0 + m_f) exp(-(m - m_f)/(m_0 + m_f)),   m_f what fits below the rim, at most the reservoir m
///
/// @param r         water and volume [m^3] > 0 of the system, its lowest salinity and its free volume [m^3] >= 0
/// @param reservoir what runs in [m^3] >= 0
/// @param policy    `extrapolate` to go past the published ranges
/// @return          salinity when mixed, spilt volume [m^3], whether it is too fresh
/// @throws          invalid_input, out_of_range
/// @accuracy        exact by mass while nothing spills; what spills is taken for mixed water
/// @source          conservation of salt
[[nodiscard]] inline stuck_valve_result stuck_valve(const reservoir_request& r, volume reservoir,
                                                    range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::stuck_valve";
  const double before = detail::checked_mass(here, r, policy);
  core::check(here, reservoir_limits, reservoir.value());
  core::check(here, {"lowest salinity", "", {0.0, 1e3}}, r.lowest.get().value());
  const double density = detail::checked_fresh_density(here, r.fresh_water, policy);
  const double spilt = std::max(0.0, (reservoir - r.free_volume.get()).value());
  const double full = before + density * (reservoir.value() - spilt);
  const practical_salinity s{r.water.salinity.get().value() * before / full * std::exp(-density * spilt / full)};
  return {.salinity = s,
          .overflow = volume::from_value(spilt),
          .too_fresh = s < r.lowest.get(),
          .caution = top_off_caution};
}

/// The largest reservoir that may run in as a whole without harm: neither too fresh nor over the rim.
///
///   V = min(m_0 (S_0/S_lowest - 1) / rho_fresh, free volume)
///
/// @param r      water and volume [m^3] > 0 of the system; lowest salinity, more than 0, at most that of the system;
///               free volume [m^3] >= 0
/// @param policy `extrapolate` to go past the published ranges
/// @return       volume [m^3], and which of the two decides
/// @throws       invalid_input (also when the system is already below the lowest salinity), out_of_range
/// @accuracy     exact by mass
/// @source       conservation of salt
[[nodiscard]] inline reservoir_limit largest_reservoir(const reservoir_request& r,
                                                       range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::largest_reservoir";
  const double mass = detail::checked_mass(here, r, policy);
  const double now = r.water.salinity.get().value();
  const double lowest = r.lowest.get().value();
  core::check(here, {"lowest salinity", "", {1e-6, 1e3}}, lowest);
  if (!(lowest <= now)) {
    core::fail<invalid_input>(here, "lowest salinity", lowest, "",
                              "is above that of the system, " + core::number_text(now));
  }
  const double by_salt = mass * (now / lowest - 1.0) / detail::checked_fresh_density(here, r.fresh_water, policy);
  const double by_room = r.free_volume.get().value();
  return {.largest = volume::from_value(std::min(by_salt, by_room)),
          .governed_by = by_salt < by_room ? "salinity" : "free volume",
          .caution = top_off_caution};
}

/// How fast the level of the return chamber falls without top-off, and when the pump starves. All the evaporation of
/// the system shows there: the other levels are held by their weirs.
///
///   dh/dt = top-off rate / A;   t = (h - h_lowest) / (dh/dt)
///
/// @param c   area A [m^2] > 0; top-off rate [m^3/s] > 0; levels [m], the lowest not above the running one
/// @return    fall [m/s], time to the lowest level [s]
/// @throws    invalid_input
/// @accuracy  the band of the evaporation; water leaves seawater with the volume of fresh water to 0.1 %
/// @source    mass balance
[[nodiscard]] inline return_chamber_result return_level(const return_chamber& c) {
  constexpr std::string_view here = "tankwright::room::return_level";
  core::check(here, chamber_area_limits, c.surface.get().value());
  detail::check_ends(here, {"top-off rate", "m3/s", {1e-15, 10.0}}, c.top_off.get());
  core::check(here, {"running level", "m", {-1e3, 1e3}}, c.running_level.get().value());
  core::check(here, {"lowest level", "m", {-1e3, 1e3}}, c.lowest_level.get().value());
  const length drop = c.running_level.get() - c.lowest_level.get();
  if (!(drop.value() >= 0.0)) {
    core::fail<invalid_input>(
        here, "lowest level", c.lowest_level.get().value(), "m",
        "is above the running level, " + core::number_with_unit(c.running_level.get().value(), "m"));
  }
  const estimate<velocity> fall = map_rising(c.top_off.get(), [&](flow_rate q) { return q / c.surface.get(); });
  return {.fall = fall,
          .until_lowest = map_falling(fall, [&](velocity v) { return drop / v; }),
          .caution = starving_pump_caution};
}

}  // namespace tankwright::room
