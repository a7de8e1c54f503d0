// SPDX-License-Identifier: BSL-1.0
/// @file
/// How cold, or how warm, is the tank some hours after nothing controls its temperature any more, how fast does it
/// change, and when does it reach a limit? In a power cut, in winter or in a summer's heat, and with a heater that
/// sticks on. An open tank does not settle at room temperature but below it, towards the wet bulb.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>
#include <vector>

#include <tankwright/numerics/course.hpp>
#include <tankwright/room/detail/sampled_course.hpp>
#include <tankwright/room/warm_up.hpp>

namespace tankwright::room {

/// A room that loses its own heating or cooling: T(t) = T_end + (T_0 - T_end) exp(-t / tau), its moisture unchanged.
struct drifting_room {
  required<tankwright::temperature> settles_at;
  required<duration> time_constant;  ///< a light building some hours, a heavy one days
};

/// A tank whose temperature nothing controls. Give the `sources` that run: in a power cut those on a battery, with a
/// heater stuck on the heater too. Nothing is topped off. Walls without an outside temperature follow the room.
struct uncontrolled_tank {
  tank_heat tank;
  required<tankwright::heat_capacity> heat_capacity;  ///< of water, rock, sand and tank; see `heat_capacity_of`
  std::optional<drifting_room> room = {};             ///< left out: the room stays as it is
};

struct temperature_point {
  duration time;
  estimate<tankwright::temperature> water;
};

struct temperature_course {
  std::vector<temperature_point> points;
  /// In the room as it will be; empty: above 90 degC, or below -2 degC, where sea water is ice.
  std::optional<estimate<tankwright::temperature>> settles_at;
  tankwright::caution caution;
};

/// When the water passes a limit; empty where it never does.
struct temperature_crossing {
  std::optional<duration> soonest;
  std::optional<duration> expected;
  std::optional<duration> latest;
  tankwright::caution caution;
};

/// How much the water changes within a given time, where it changes most; falling where negative.
struct temperature_change {
  estimate<temperature_difference> largest;
  tankwright::caution caution;
};

inline constexpr caution uncontrolled_caution{
    "Temperature is seldom what kills in a power cut: without circulation oxygen runs out first, and warm water holds "
    "less of it. Have a battery air pump and watch the animals, not this curve. Keep generators and inverters away "
    "from the water, and have their connection made to local code. A heater stuck on is stopped by an independent "
    "thermostat that cuts its supply, not by its own."};

inline constexpr limits uncontrolled_time_limits{"time", "s", {0.0, 1e7}};
inline constexpr limits uncontrolled_step_limits{"step", "s", {0.0, 1e7, edge::open}};
inline constexpr limits uncontrolled_points_limits{"points (time over step)", "", {0.0, 1e5}};
inline constexpr limits change_window_limits{"time of the change", "s", {60.0, 1e7}};
inline constexpr limits room_time_constant_limits{"time constant of the room", "s", {1.0, 1e9}};
inline constexpr limits limit_temperature_limits{"limit temperature", "degC", water_temperature_limits.possible,
                                                 celsius_range(-2.0, 100.0), "liquid water"};

namespace detail {

/// The temperature moves so slowly that this many steps in a time constant leave an error of 1e-7 of the way.
inline constexpr double steps_per_time_constant = 5.0;
/// What a step may be wrong by where its slope has a kink [K].
inline constexpr double kelvins_per_step = 2e-6;

struct checked_course {
  heat_model start;
  double capacity;
  double water;  ///< K
  double room_start;
  double room_end;
  double room_tau;                                                  ///< s; 0: the room stays as it is
  double condenses_from = std::numeric_limits<double>::infinity();  ///< s, when the air is cooled to its dew point

  [[nodiscard]] double air_at(double time) const noexcept {
    return room_end + (room_start - room_end) * std::exp(-time / room_tau);
  }
  [[nodiscard]] heat_model finally() const noexcept {
    heat_model m = start;
    m.air = room_end;
    m.vapour = std::min(start.vapour, saturation_pressure(room_end));
    return m;
  }
  /// The water cannot pass a temperature at which it gains heat (above: loses heat) from first to last. The
  /// surroundings drift one way, and warmer air always takes less heat: their first and last state bound the rest.
  [[nodiscard]] bool never_passes(double kelvin, double conductances<double>::*end) const noexcept {
    const double first = start.net(kelvin, end);
    const double last = finally().net(kelvin, end);
    return (kelvin < water ? std::max(first, last) : -std::min(first, last)) <= 0.0;
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
    if (room_tau == 0.0) return -start.net(kelvin, end) / capacity;
    const double air = air_at(time);  // cooled below its dew point it loses the water that it cannot hold
    const double vapour = time > condenses_from ? saturation_pressure(air) : start.vapour;
    return -start.net(kelvin, air, vapour, end) / capacity;
  }
  /// The longest step while the losses are smooth.
  [[nodiscard]] double longest_step(double conductances<double>::*end) const noexcept {
    const double tau = std::fabs(capacity / (start.net(water + 1.0, end) - start.net(water, end)));
    return (room_tau == 0.0 ? tau : std::min(tau, room_tau)) / steps_per_time_constant;
  }
};

[[nodiscard]] inline checked_course checked(std::string_view function, const uncontrolled_tank& o,
                                            range_policy policy) {
  checked_course c{.start = checked(function, o.tank, policy),
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
                {"final room temperature", "degC", possible_surroundings, about(evaporation_law::shah).air_celsius,
                 about(evaporation_law::shah).name},
                c.room_end - 273.15, policy);
    core::check(function, room_time_constant_limits, c.room_tau);
    if (saturation_pressure(c.room_end) < c.start.vapour) {
      const double dew = std::max(saturation_temperature(function, std::log(c.start.vapour)), c.room_end);
      c.condenses_from = c.room_tau * std::log((c.room_start - c.room_end) / (dew - c.room_end));
    }
  }
  return c;
}

/// The course of the water at one end of the band, from the start.
[[nodiscard]] inline auto course_of(const checked_course& o, double conductances<double>::*end) {
  const auto slope = [&o, end](double time, double kelvin) { return o.slope(time, kelvin, end); };
  // After forty time constants the room has settled, and the losses follow the water alone.
  return numerics::course{slope,
                          {.longest = o.longest_step(end),
                           .tolerance = kelvins_per_step,
                           .kink = o.condenses_from,
                           .steady_from = 40.0 * o.room_tau},
                          o.water};
}

/// Where the water settles at the three ends of the band; empty above 90 degC, and below -2 degC, where sea water is
/// ice.
[[nodiscard]] inline std::optional<estimate<temperature>> settles_in(std::string_view here, const checked_course& c,
                                                                     std::string_view why) {
  using ends = conductances<double>;
  const heat_model last = c.finally();
  constexpr double hottest = 363.15;
  const ends lost = last.net(hottest), gained = last.net(coldest_settled);
  if (!(std::min(lost.low, lost.high) > 0.0 && std::max(gained.low, gained.high) < 0.0)) return std::nullopt;
  const auto settled = [&](double ends::*end) { return settled_temperature(here, last, end, hottest); };
  return band_of<temperature>(settled(&ends::low), settled(&ends::central), settled(&ends::high), why);
}

/// The three courses of the band at even times: the start, `every`, twice `every` ... and at last `to`. Refuses where
/// the water ends outside the temperatures at which evaporation was measured.
[[nodiscard]] inline std::vector<conductances<double>> three_courses(std::string_view here, const checked_course& c,
                                                                     double every, double to, range_policy policy) {
  constexpr limits measured{
      "water temperature", "degC", {}, about(evaporation_law::shah).water_celsius, about(evaporation_law::shah).name};
  std::vector<conductances<double>> at{{c.water, c.water, c.water}};
  for (const auto end : {&conductances<double>::low, &conductances<double>::central, &conductances<double>::high}) {
    auto course = course_of(c, end);
    std::size_t count = 1;
    sample(here, course, every, to, 2e-10, [&](double value) {
      if (count == at.size()) at.push_back({});
      at[count++].*end = value;
    });
    core::check(here, measured, course.value() - 273.15, policy);
  }
  return at;
}

}  // namespace detail

/// The temperature of water that nothing controls.
///
///   C dT/dt = -Q(T),   Q as in heat_balance; three courses, for the low, central and high evaporation
///
/// @param o      the tank as for heat_balance, its water at the start; heat capacity [J/K]; the room as it is, or
///               drifting to a temperature with a time constant [s] > 0
/// @param time   to look ahead [s], 0 to 1e7
/// @param step   between the points of the answer [s] > 0; at most 1e5 points
/// @param policy `extrapolate` to go past the published ranges
/// @return       points from 0 to `time`, and where the water settles
/// @throws       invalid_input, out_of_range (also when the water leaves the range of the evaporation), no_convergence
/// @accuracy     1e-6 K for the losses given, 1e-5 K where an end of the band changes from one correlation to another;
///               the band is that of the evaporation. Still water layers: the top of a deep tank cools first
/// @source       energy balance; Dormand & Prince 1980
[[nodiscard]] inline temperature_course temperature_course_of(const uncontrolled_tank& o, duration time,
                                                              duration step = minutes(30.0),
                                                              range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::temperature_course_of";
  const detail::checked_course c = detail::checked(here, o, policy);
  const double to = time.value(), dt = step.value();
  core::check(here, uncontrolled_time_limits, to);
  core::check(here, uncontrolled_step_limits, dt);
  core::check(here, uncontrolled_points_limits, to / dt);
  const std::string_view why = c.start.areas.agitated ? agitated_band : still_band;
  temperature_course course{
      .points = {}, .settles_at = detail::settles_in(here, c, why), .caution = uncontrolled_caution};
  const auto water = detail::three_courses(here, c, dt, to, policy);
  course.points.reserve(water.size());
  for (std::size_t i = 0; i < water.size(); ++i) {
    course.points.push_back(
        {.time = seconds(std::min(to, dt * static_cast<double>(i))),
         .water = detail::band_of<temperature>(water[i].low, water[i].central, water[i].high, why)});
  }
  return course;
}

/// How much water that nothing controls changes within an hour, or within a day, where it changes most: what animals
/// feel is not only how cold or warm it gets.
///
///   T(t + w) - T(t) of the courses of temperature_course_of, at the t where it is largest, looked for in steps of w/8
///
/// @param o      the tank and room, as for temperature_course_of
/// @param within how far to look ahead [s], 0 to 1e7
/// @param window w, the time of the change [s], 60 to 1e7; at most 1e4 of them
/// @param policy `extrapolate` to go past the published ranges
/// @return       change [K] with the band of the evaporation, negative where the water falls
/// @throws       invalid_input, out_of_range (also when the water leaves the range of the evaporation), no_convergence
/// @accuracy     1 % of the change for losses that are smooth within the window
/// @source       energy balance; Dormand & Prince 1980
[[nodiscard]] inline temperature_change largest_change(const uncontrolled_tank& o, duration within,
                                                       duration window = hours(1.0),
                                                       range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::largest_change";
  constexpr std::size_t parts = 8;
  const detail::checked_course c = detail::checked(here, o, policy);
  const double to = within.value(), w = window.value();
  core::check(here, uncontrolled_time_limits, to);
  core::check(here, change_window_limits, w);
  core::check(here, {"time over the time of the change", "", {0.0, 1e4}}, to / w);
  const std::string_view why = c.start.areas.agitated ? agitated_band : still_band;
  const auto water = detail::three_courses(here, c, w / static_cast<double>(parts), to, policy);
  detail::conductances<double> largest{0.0, 0.0, 0.0};
  const auto widen = [](double& most, double change) {
    if (std::fabs(change) > std::fabs(most)) most = change;
  };
  for (std::size_t i = 1; i < water.size(); ++i) {
    const auto& before = water[i > parts ? i - parts : 0];
    widen(largest.low, water[i].low - before.low);
    widen(largest.central, water[i].central - before.central);
    widen(largest.high, water[i].high - before.high);
  }
  return {.largest = detail::band_of<temperature_difference>(largest.low, largest.central, largest.high, why),
          .caution = uncontrolled_caution};
}

namespace detail {

/// When a course of the water meets a limit; nothing where it does not within `within` [s].
[[nodiscard]] inline std::optional<duration> meets(std::string_view here, const checked_course& o,
                                                   double conductances<double>::*end, double limit, double within) {
  if (o.water == limit) return seconds(0.0);
  if (o.never_passes(limit, end)) return {};
  auto water = course_of(o, end);
  const bool below = limit < o.water;
  while (water.time() < within) {
    water.step(here, within);
    if ((water.value() < limit) == below) return seconds(water.met(here, limit));
  }
  return {};
}

}  // namespace detail

/// When water that nothing controls reaches a limit: soonest, expected, latest. For water that is known within limits.
///
///   the time at which the courses of temperature_course_of meet the limit: soonest with the least water, latest with
///   the most
///
/// @param o             the tank and room, as for temperature_course_of; its own heat capacity is not used
/// @param heat_capacity of the least, the expected and the most water [J/K] > 0
/// @param limit         temperature that must not be passed, below or above the start
/// @param within        how far to look ahead [s], 0 to 1e7
/// @param policy        `extrapolate` to go past the published ranges
/// @return              times [s]; empty where the limit is not reached within that time. Plan on the soonest
/// @throws              invalid_input, out_of_range, no_convergence
/// @accuracy            1e-6 of the time for the losses given; the band is that of the evaporation and of the water
/// @source              energy balance; Dormand & Prince 1980
[[nodiscard]] inline temperature_crossing time_to_temperature(uncontrolled_tank o,
                                                              const estimate<heat_capacity>& heat_capacity,
                                                              temperature limit, duration within = days(7.0),
                                                              range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::time_to_temperature";
  using ends = detail::conductances<double>;
  core::check(here, limit_temperature_limits, in_celsius(limit), policy);
  core::check(here, uncontrolled_time_limits, within.value());
  o.heat_capacity = heat_capacity.low;
  const detail::checked_course least = detail::checked(here, o, policy);
  const auto with = [&](tankwright::heat_capacity c) {
    detail::checked_course other = least;
    other.capacity = c.value();
    core::check(here, heat_capacity_limits, other.capacity);
    return other;
  };
  const auto when = [&](const detail::checked_course& c, double ends::*end) {
    return detail::meets(here, c, end, in_kelvins(limit), within.value());
  };
  // Which end of the evaporation gets there first: above its wet bulb water cools faster by evaporating more.
  const auto strong = when(least, &ends::high);
  const bool strong_loses = least.loses_more_at(in_kelvins(limit));
  const auto weak = strong && strong_loses ? std::nullopt : when(least, &ends::low);
  const auto before = [](const std::optional<duration>& a, const std::optional<duration>& b) {
    return a && (!b || *a < *b);
  };
  const bool strong_first = before(strong, weak);
  const auto first = strong_first ? strong : weak;
  const auto expected = when(with(heat_capacity.central), &ends::central);
  const auto latest = when(with(heat_capacity.high), strong_first ? &ends::low : &ends::high);
  // Where one law of evaporation gives way to another the middle may come before, or after, both ends.
  const auto later = [](const std::optional<duration>& a, const std::optional<duration>& b) {
    return a && b ? std::optional{std::max(*a, *b)} : std::nullopt;
  };
  return {.soonest = before(first, expected) ? first : expected,
          .expected = expected,
          .latest = later(latest, expected),
          .caution = uncontrolled_caution};
}

/// When water that nothing controls reaches a limit: soonest, expected, latest.
///
///   the time at which the courses of temperature_course_of meet the limit
///
/// @param o      the tank and room, as for temperature_course_of
/// @param limit  temperature that must not be passed, below or above the start
/// @param within how far to look ahead [s], 0 to 1e7
/// @param policy `extrapolate` to go past the published ranges
/// @return       times [s]; empty where the limit is not reached within that time. Plan on the soonest
/// @throws       invalid_input, out_of_range, no_convergence
/// @accuracy     1e-6 of the time for the losses given; the band is that of the evaporation
/// @source       energy balance; Dormand & Prince 1980
[[nodiscard]] inline temperature_crossing time_to_temperature(const uncontrolled_tank& o, temperature limit,
                                                              duration within = days(7.0),
                                                              range_policy policy = range_policy::published) {
  const heat_capacity c = o.heat_capacity;
  return time_to_temperature(o, {c, c, c, {}}, limit, within, policy);
}

}  // namespace tankwright::room
