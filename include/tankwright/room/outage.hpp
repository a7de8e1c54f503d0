// SPDX-License-Identifier: BSL-1.0
/// @file
/// How cold, or how warm, is the tank some hours after the power fails, and when does it reach a limit? An open tank
/// does not settle at room temperature but below it, towards the wet bulb.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include <tankwright/numerics/course.hpp>
#include <tankwright/room/warm_up.hpp>

namespace tankwright::room {

/// A room that loses its own heating or cooling: T(t) = T_end + (T_0 - T_end) exp(-t / tau), its moisture unchanged.
struct drifting_room {
  required<tankwright::temperature> settles_at;
  required<duration> time_constant;  ///< a light building some hours, a heavy one days
};

/// A tank without power: give only `sources` that run on. Nothing is topped off. Walls without an outside temperature
/// follow the room.
struct outage {
  tank_heat tank;
  required<tankwright::heat_capacity> heat_capacity;
  std::optional<drifting_room> room = {};  ///< left out: the room stays as it is
};

struct outage_point {
  duration time;
  estimate<tankwright::temperature> water;
};

struct outage_course {
  std::vector<outage_point> points;
  estimate<tankwright::temperature> settles_at;  ///< in the room as it will be
  tankwright::caution caution;
};

/// When the water passes a limit; empty where it never does.
struct outage_limit {
  std::optional<duration> soonest;
  std::optional<duration> expected;
  std::optional<duration> latest;
  tankwright::caution caution;
};

inline constexpr caution outage_caution{
    "Temperature is seldom what kills in an outage: without circulation oxygen runs out first. Have a battery air pump "
    "and watch the animals, not this curve. Keep generators and inverters away from the water, and have their "
    "connection made to local code."};

inline constexpr limits outage_time_limits{"time", "s", {0.0, 1e8}};
inline constexpr limits outage_step_limits{"step", "s", positive};
inline constexpr limits room_time_constant_limits{"time constant of the room", "s", positive};
inline constexpr limits limit_temperature_limits{"limit temperature", "degC", above_absolute_zero_celsius,
                                                 celsius_range(-2.0, 100.0), "liquid water"};

namespace detail {

/// The temperature moves so slowly that this many steps in a time constant leave an error of 1e-7 of the way.
inline constexpr double steps_per_time_constant = 5.0;
/// What a step may be wrong by where its slope has a kink [K].
inline constexpr double kelvins_per_step = 2e-6;

struct checked_outage {
  heat_model start;
  double capacity;
  double water;  ///< K
  double room_start;
  double room_end;
  double room_tau;  ///< s; 0: the room stays as it is
  double condenses_from = std::numeric_limits<double>::infinity();  ///< s, when the air is cooled to its dew point

  [[nodiscard]] double air_at(double time) const noexcept {
    return room_end + (room_start - room_end) * std::exp(-time / room_tau);
  }
  [[nodiscard]] heat_model finally() const noexcept {
    heat_model m = start;
    if (room_tau > 0.0) {
      m.air = room_end;
      m.vapour = std::min(start.vapour, saturation_pressure(room_end));
    }
    return m;
  }
  /// The water cannot pass a temperature at which it gains heat (above: loses heat) from first to last. The
  /// surroundings drift one way, and warmer air always takes less heat: their first and last state bound the rest.
  [[nodiscard]] bool never_passes(double kelvin, double conductances<double>::*end) const noexcept {
    const double first = start.net(kelvin, end);
    const double last = finally().net(kelvin, end);
    return kelvin < water ? std::max(first, last) <= 0.0 : std::min(first, last) >= 0.0;
  }
  /// Cooling to a limit, whether more evaporation loses more heat all the way: it does at the limit, in the first and
  /// the last surroundings, and so does warmer water.
  [[nodiscard]] bool loses_more_at(double limit) const noexcept {
    const auto more = [&](const heat_model& m) {
      const conductances<double> net = m.net(limit);
      return net.high >= net.low;
    };
    return limit < water && more(start) && more(finally());
  }
  [[nodiscard]] double slope(double time, double kelvin, double conductances<double>::*end) const noexcept {
    if (!(room_tau > 0.0)) return -start.net(kelvin, end) / capacity;
    const double air = air_at(time);  // cooled below its dew point it loses the water that it cannot hold
    const double vapour = time > condenses_from ? saturation_pressure(air) : start.vapour;
    return -(start.net_of(start.parts(kelvin, air, vapour)).*end) / capacity;
  }
  /// The longest step while the losses are smooth.
  [[nodiscard]] double longest_step(double conductances<double>::*end) const noexcept {
    const double tau = 2.0 * capacity / (start.net(water + 1.0, end) - start.net(water - 1.0, end));
    const double fastest = room_tau > 0.0 ? std::min(tau, room_tau) : tau;
    return fastest > 0.0 ? fastest / steps_per_time_constant : 60.0;
  }
};

[[nodiscard]] inline checked_outage checked(std::string_view function, const outage& o, range_policy policy) {
  checked_outage c{.start = checked(function, o.tank, policy),
                   .capacity = o.heat_capacity.get().value(),
                   .water = in_kelvins(o.tank.water.temperature),
                   .room_start = in_kelvins(o.tank.air.temperature),
                   .room_end = in_kelvins(o.tank.air.temperature),
                   .room_tau = 0.0};
  core::check(function, heat_capacity_limits, c.capacity);
  c.start.specific_heat = 0.0;  // no make-up
  if (o.room) {
    c.room_end = in_kelvins(o.room->settles_at);
    c.room_tau = o.room->time_constant.get().value();
    core::check(function,
          {"final room temperature", "degC", above_absolute_zero_celsius, about(evaporation_law::shah).air_celsius,
           about(evaporation_law::shah).name},
          c.room_end - 273.15, policy);
    core::check(function, room_time_constant_limits, c.room_tau);
    if (saturation_pressure(c.room_end) < c.start.vapour) {
      // In parts of the time constant: after forty the drift has run out.
      const auto spare = [&](double x) { return saturation_pressure(c.air_at(x * c.room_tau)) - c.start.vapour; };
      c.condenses_from =
          spare(0.0) <= 0.0 ? 0.0 : c.room_tau * numerics::bracketed_root(function, "time", spare, 0.0, 40.0);
    }
  }
  return c;
}

/// The course of the water at one end of the band, from the start of the outage.
[[nodiscard]] inline auto course_of(const checked_outage& o, double conductances<double>::*end) {
  const auto slope = [&o, end](double time, double kelvin) { return o.slope(time, kelvin, end); };
  return numerics::course{slope, 0.0, o.water, o.longest_step(end), kelvins_per_step, o.condenses_from};
}

[[nodiscard]] inline estimate<temperature> temperature_estimate(double a, double central, double b,
                                                                std::string_view reason) noexcept {
  return {kelvins(std::min(a, b)), kelvins(central), kelvins(std::max(a, b)), reason};
}

}  // namespace detail

/// The temperature of the water through an outage.
///
///   C dT/dt = -Q(T),   Q as in heat_balance; three courses, for the low, central and high evaporation
///
/// @param o      the tank as for heat_balance, its water at the start; heat capacity [J/K] > 0; the room as it is, or
///               drifting to a temperature with a time constant [s] > 0
/// @param time   to look ahead [s], 0 to 1e8
/// @param step   between the points of the answer [s] > 0
/// @param policy `extrapolate` to go past the published ranges
/// @return       points from 0 to `time`, and where the water settles
/// @throws       invalid_input, out_of_range (also when the water leaves the range of the evaporation), no_convergence
/// @accuracy     1e-6 K for the losses given, 1e-5 K where an end of the band changes from one correlation to another;
///               the band is that of the evaporation. Still water layers: the top of a deep tank cools first
/// @source       energy balance; Dormand & Prince 1980
[[nodiscard]] inline outage_course outage_curve(const outage& o, duration time, duration step = minutes(30.0),
                                                range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::outage_curve";
  using ends = detail::conductances<double>;
  const detail::checked_outage c = detail::checked(here, o, policy);
  core::check(here, outage_time_limits, time.value());
  core::check(here, outage_step_limits, step.value());
  const std::string_view why = c.start.areas.agitated ? agitated_band : still_band;
  const detail::heat_model end_state = c.finally();
  outage_course course{
      .points = {},
      .settles_at = detail::temperature_estimate(detail::settled_temperature(here, end_state, &ends::low),
                                                 detail::settled_temperature(here, end_state, &ends::central),
                                                 detail::settled_temperature(here, end_state, &ends::high), why),
      .caution = outage_caution};
  const double to = time.value();
  const double dt = step.value();
  auto low = detail::course_of(c, &ends::low);
  auto central = detail::course_of(c, &ends::central);
  auto high = detail::course_of(c, &ends::high);
  const auto add = [&](double now) {
    course.points.push_back({.time = seconds(now),
                             .water = detail::temperature_estimate(low.value(), central.value(), high.value(), why)});
  };
  course.points.reserve(static_cast<std::size_t>(to / dt) + 2);
  add(0.0);
  for (std::size_t i = 0; dt * static_cast<double>(i) < to; ++i) {
    const double next = std::min(to, dt * static_cast<double>(i + 1));
    low.go_to(next);
    central.go_to(next);
    high.go_to(next);
    add(next);
  }
  core::check(
      here,
      {"water temperature", "degC", {}, about(evaporation_law::shah).water_celsius, about(evaporation_law::shah).name},
      std::min({low.value(), central.value(), high.value()}) - 273.15, policy);
  return course;
}

namespace detail {

/// When a course of the water meets a limit; nothing where it does not within `within` [s].
[[nodiscard]] inline std::optional<duration> meets(std::string_view here, const checked_outage& o,
                                                   double conductances<double>::*end, double limit, double within) {
  if (o.water == limit) return seconds(0.0);
  if (o.never_passes(limit, end)) return {};
  auto water = course_of(o, end);
  const bool below = limit < o.water;
  while (water.time() < within) {
    water.step(within);
    if (below ? water.value() <= limit : water.value() >= limit) return seconds(water.met(here, limit));
  }
  return {};
}

}  // namespace detail

/// When the water reaches a limit in an outage: soonest, expected, latest. For water that is known within limits.
///
///   the time at which the courses of outage_curve meet the limit: soonest with the least water, latest with the most
///
/// @param o             the tank and room, as for outage_curve; its own heat capacity is not used
/// @param heat_capacity of the least, the expected and the most water [J/K] > 0
/// @param limit         temperature that must not be passed, below or above the start
/// @param within        how far to look ahead [s], 0 to 1e8
/// @param policy        `extrapolate` to go past the published ranges
/// @return              times [s]; empty where the limit is not reached within that time. Plan on the soonest
/// @throws              invalid_input, out_of_range, no_convergence
/// @accuracy            1e-6 of the time for the losses given; the band is that of the evaporation and of the water
/// @source              energy balance; Dormand & Prince 1980
[[nodiscard]] inline outage_limit time_to_limit(outage o, const estimate<heat_capacity>& heat_capacity,
                                                temperature limit, duration within = days(7.0),
                                                range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::time_to_limit";
  using ends = detail::conductances<double>;
  core::check(here, limit_temperature_limits, in_celsius(limit), policy);
  core::check(here, outage_time_limits, within.value());
  o.heat_capacity = heat_capacity.low;
  const detail::checked_outage least = detail::checked(here, o, policy);
  const auto with = [&](tankwright::heat_capacity c) {
    detail::checked_outage other = least;
    other.capacity = c.value();
    core::check(here, heat_capacity_limits, other.capacity);
    return other;
  };
  const auto when = [&](const detail::checked_outage& c, double ends::*end) {
    return detail::meets(here, c, end, in_kelvins(limit), within.value());
  };
  // Which end of the evaporation gets there first: above its wet bulb water cools faster by evaporating more.
  const auto strong = when(least, &ends::high);
  const bool strong_loses = least.loses_more_at(in_kelvins(limit));
  const auto weak = strong && strong_loses ? std::nullopt : when(least, &ends::low);
  const bool strong_first = strong && (!weak || *strong < *weak);
  return {.soonest = strong_first ? strong : weak,
          .expected = when(with(heat_capacity.central), &ends::central),
          .latest = when(with(heat_capacity.high), strong_first ? &ends::low : &ends::high),
          .caution = outage_caution};
}

/// When the water reaches a limit in an outage: soonest, expected, latest.
///
///   the time at which the courses of outage_curve meet the limit
///
/// @param o      the tank and room, as for outage_curve
/// @param limit  temperature that must not be passed, below or above the start
/// @param within how far to look ahead [s], 0 to 1e8
/// @param policy `extrapolate` to go past the published ranges
/// @return       times [s]; empty where the limit is not reached within that time. Plan on the soonest
/// @throws       invalid_input, out_of_range, no_convergence
/// @accuracy     1e-6 of the time for the losses given; the band is that of the evaporation
/// @source       energy balance; Dormand & Prince 1980
[[nodiscard]] inline outage_limit time_to_limit(const outage& o, temperature limit, duration within = days(7.0),
                                                range_policy policy = range_policy::published) {
  const heat_capacity c = o.heat_capacity;
  return time_to_limit(o, {c, c, c, {}}, limit, within, policy);
}

}  // namespace tankwright::room
