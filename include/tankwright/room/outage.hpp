// SPDX-License-Identifier: BSL-1.0
/// @file
/// How cold, or how warm, is the tank some hours after the power fails, and when does it reach a limit? An open tank
/// does not settle at room temperature but below it, towards the wet bulb.
#pragma once

#include <optional>

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

struct checked_outage {
  heat_model start;
  double capacity;
  double water;  ///< K
  double room_start;
  double room_end;
  double room_tau;  ///< s; 0: the room stays as it is

  /// The surroundings at a time. Air that cools below its dew point loses the water that it cannot hold.
  [[nodiscard]] heat_model at(double time) const noexcept {
    heat_model m = start;
    if (room_tau > 0.0) {
      m.air = room_end + (room_start - room_end) * std::exp(-time / room_tau);
      m.vapour = std::min(start.vapour, saturation_pressure(m.air));
    }
    return m;
  }
  [[nodiscard]] heat_model finally() const noexcept {
    heat_model m = start;
    if (room_tau > 0.0) {
      m.air = room_end;
      m.vapour = std::min(start.vapour, saturation_pressure(room_end));
    }
    return m;
  }
  /// The water cannot pass a temperature at which it gains heat, or for a limit above it loses heat, from first to last.
  /// The surroundings drift one way, and warmer air always takes less heat: their first and last state bound the rest.
  [[nodiscard]] bool never_passes(double kelvin, double conductances<double>::*end) const noexcept {
    const double first = start.net(kelvin, end);
    const double last = finally().net(kelvin, end);
    return kelvin < water ? std::max(first, last) <= 0.0 : std::min(first, last) >= 0.0;
  }
  [[nodiscard]] double slope(double time, double kelvin, double conductances<double>::*end) const noexcept {
    if (room_tau > 0.0) return -at(time).net(kelvin, end) / capacity;
    return -start.net(kelvin, end) / capacity;
  }
  /// The longest step whose error stays below 1e-9 of the way while the losses are smooth.
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
  check(function, heat_capacity_limits, c.capacity);
  c.start.specific_heat = 0.0;  // no make-up
  if (o.room) {
    c.room_end = in_kelvins(o.room->settles_at);
    c.room_tau = o.room->time_constant.get().value();
    check(function,
          {"final room temperature", "degC", above_absolute_zero_celsius, about(evaporation_law::shah).air_celsius,
           about(evaporation_law::shah).name},
          c.room_end - 273.15, policy);
    check(function, room_time_constant_limits, c.room_tau);
  }
  return c;
}

/// Go on from `time` to `to` in equal steps of at most `longest`.
[[nodiscard]] inline double go_on(const checked_outage& o, double conductances<double>::*end, double time,
                                  double kelvin, double to, double longest) noexcept {
  const double steps = std::ceil((to - time) / longest);
  const double h = (to - time) / steps;
  const auto slope = [&](double at, double t) { return o.slope(at, t, end); };
  for (double i = 0.0; i < steps; i += 1.0) kelvin = runge_kutta(slope, time + i * h, kelvin, h);
  return kelvin;
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
/// @accuracy     1e-8 K for the losses given, 1e-5 K where an end of the band changes from one correlation to another;
///               the band is that of the evaporation. Still water layers: the top of a deep tank cools first
/// @source       energy balance; classical Runge-Kutta
[[nodiscard]] inline outage_course outage_curve(const outage& o, duration time, duration step = minutes(30.0),
                                                range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::outage_curve";
  using ends = detail::conductances<double>;
  const detail::checked_outage c = detail::checked(here, o, policy);
  detail::check(here, outage_time_limits, time.value());
  detail::check(here, outage_step_limits, step.value());
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
  const double longest_low = c.longest_step(&ends::low);
  const double longest_central = c.longest_step(&ends::central);
  const double longest_high = c.longest_step(&ends::high);
  double low = c.water;
  double central = c.water;
  double high = c.water;
  course.points.reserve(static_cast<std::size_t>(to / dt) + 2);
  course.points.push_back({.time = seconds(0.0), .water = detail::temperature_estimate(low, central, high, why)});
  for (std::size_t i = 0; dt * static_cast<double>(i) < to; ++i) {
    const double now = dt * static_cast<double>(i);
    const double next = std::min(to, dt * static_cast<double>(i + 1));
    low = detail::go_on(c, &ends::low, now, low, next, longest_low);
    central = detail::go_on(c, &ends::central, now, central, next, longest_central);
    high = detail::go_on(c, &ends::high, now, high, next, longest_high);
    course.points.push_back({.time = seconds(next), .water = detail::temperature_estimate(low, central, high, why)});
  }
  detail::check(
      here,
      {"water temperature", "degC", {}, about(evaporation_law::shah).water_celsius, about(evaporation_law::shah).name},
      std::min({low, central, high}) - 273.15, policy);
  return course;
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
/// @source       energy balance; classical Runge-Kutta
[[nodiscard]] inline outage_limit time_to_limit(const outage& o, temperature limit, duration within = days(7.0),
                                                range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::time_to_limit";
  using ends = detail::conductances<double>;
  const detail::checked_outage c = detail::checked(here, o, policy);
  detail::check(here, limit_temperature_limits, in_celsius(limit), policy);
  detail::check(here, outage_time_limits, within.value());
  const double wanted = in_kelvins(limit);
  const auto when = [&](double ends::*end) -> std::optional<duration> {
    const double h = c.longest_step(end);
    const auto slope = [&](double at, double t) { return c.slope(at, t, end); };
    const bool below = wanted < c.water;
    double t = c.water;
    if (t == wanted) return seconds(0.0);
    if (c.never_passes(wanted, end)) return {};
    for (double now = 0.0; now < within.value(); now += h) {
      const double next = detail::runge_kutta(slope, now, t, h);
      if (below ? next <= wanted : next >= wanted) {
        const double part = detail::bracketed_root<double>(
            here, "time", [&](double x) { return detail::runge_kutta(slope, now, t, x) - wanted; }, 0.0, h,
            {.absolute = 1e-6});
        if (now + part > within.value()) return {};
        return seconds(now + part);
      }
      t = next;
    }
    return {};
  };
  const std::optional<duration> a = when(&ends::low);
  const std::optional<duration> b = when(&ends::high);
  const bool a_first = a && (!b || *a < *b);
  return {.soonest = a_first ? a : b,
          .expected = when(&ends::central),
          .latest = a_first ? b : a,
          .caution = outage_caution};
}

}  // namespace tankwright::room
