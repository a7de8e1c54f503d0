// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does a large meal now and then come to? The ammonia of a meal arrives within about a day of it, so food given
/// twice a week is not the same to a filter as the same food given daily.
#pragma once

#include <cmath>
#include <optional>
#include <span>
#include <string_view>

#include <tankwright/life/nitrification.hpp>
#include <tankwright/life/water_changes.hpp>
#include <tankwright/numerics/root.hpp>

namespace tankwright::life {

inline constexpr citation brett_zala_1975{
    "Brett J.R., Zala C.A.", 1975,
    "Daily pattern of nitrogen excretion and oxygen consumption of sockeye salmon (Oncorhynchus nerka) under "
    "controlled conditions",
    "Journal of the Fisheries Research Board of Canada 32:2479-2486", standing::from_memory};

/// Time in which the ammonia of a meal comes out. Excretion peaks some hours after a meal and is back at its base
/// within a day (Brett and Zala 1975, from memory); large predators take longer, which is gentler.
inline constexpr duration meal_excreted_in = days(1.0);

/// A food by the nitrogen that it becomes, and how often it is given.
struct regular_meal {
  required<nitrogen_load> mean;  ///< in the mean of the days
  duration every = days(1.0);    ///< from one meal to the next; up to a day counts as steady
};

inline constexpr limits meal_interval_limits{"time between meals", "d", {0.0, 3650.0, edge::open}};
inline constexpr limits meal_level_limits{"ammonia", "mg/L", {1e-12, 1e12}};

namespace detail {

/// What all meals ask for [kg/s] of a first-order removal k [1/s]: each is fed for T1 = min(1 d, T) of every T.
[[nodiscard]] inline double asked_by(std::span<const regular_meal> meals, double k) noexcept {
  double asked = 0.0;
  for (const regular_meal& meal : meals) {
    const double every = meal.every.value(), fed = std::fmin(meal_excreted_in.value(), every);
    asked += meal.mean->as_nitrogen().value() * (kernel::mean_left(k * fed) / kernel::mean_left(k * every));
  }
  return asked;
}

inline void check_meal(std::string_view here, const regular_meal& meal) {
  core::check(here, nitrogen_load_limits, in_grams_per_day(meal.mean->as_nitrogen()));
  core::check(here, meal_interval_limits, in_days(meal.every));
}

}  // namespace detail

/// What a filter must be able to take at a level, so that the ammonia of meals stays at or below it.
///
///   N = sum( P (T/T1) (1 - e^(-k T1)) / (1 - e^(-k T)) ),   k = N/(S V),   T1 = min(1 d, T)
///
/// Food given daily asks for its mean; a meal of a week in much less water than would thin it out asks for seven times
/// that. The worst hour is taken: all meals end their day together.
///
/// @param meals  nitrogen in the mean of the days, >= 0; time between meals, more than 0 to ten years; of an array
/// @param level  total ammonia S to stay below, 1e-12 to 1e12 mg/L
/// @param net    net volume V > 0
/// @return       nitrogen per time that the filter must take at that level
/// @throws       invalid_input
/// @accuracy     exact for removal in proportion to the level and even excretion over a day; within that day it reaches
///               1.2 to 1.5 times its mean (Timmons and Ebeling 2007, from memory)
/// @source       mass balance; Brett and Zala 1975 for the day (from memory)
[[nodiscard]] inline nitrogen_load capacity_for_meals(std::span<const regular_meal> meals, water::total_ammonia level,
                                                      volume net) {
  constexpr std::string_view here = "tankwright::life::capacity_for_meals";
  core::check(here, meal_level_limits, in_milligrams_per_litre(level.as_nitrogen()));
  core::check(here, net_volume_limits, in_litres(net));
  double at_once = 0.0;  // more than each meal in one day
  for (const regular_meal& meal : meals) {
    detail::check_meal(here, meal);
    const double load = meal.mean->as_nitrogen().value();
    at_once += load + load * (meal.every / meal_excreted_in);
  }
  const double holds = level.as_nitrogen().value() * net.value();
  const auto spare = [&](double n) { return n - detail::asked_by(meals, n / holds); };
  return nitrogen_load::from_nitrogen(
      mass_flow::from_value(numerics::bracketed_root<double>(here, "capacity", spare, 0.0, at_once)));
}

/// A filter that is fed by meals.
struct fed_filter {
  required<std::span<const regular_meal>> meals;  ///< of an array that outlives the call
  required<area> film;  ///< of central film that does its work; scaled for better and poorer ones
  required<volume> net;
  required<tankwright::temperature> temperature;
  tankwright::life::film of = seawater_film;
};

/// The highest level that ammonia comes back to, meal after meal.
///
///   C with R(C) = sum P (T/T1)(1 - e^(-k T1))/(1 - e^(-k T)),  k = R(C)/(C V),  R the rate of the film times its area
///
/// The worst hour is taken: all meals end their day together. Where the film no longer works in proportion, its rate is
/// taken in proportion up to C, which is less than it does: the level is then an upper bound.
///
/// @param on     meals; area of film >= 0; net volume > 0; temperature 10 to 30 degC; film
/// @param policy `extrapolate` to go past these temperatures
/// @return       level; empty where the film cannot take the mean of the meals at any level
/// @throws       invalid_input, out_of_range
/// @accuracy     exact where the rate is in proportion, otherwise above the truth; as `nitrification_rate`
/// @source       mass balance; Nijhof and Bovendeur 1990, Malone and Pfeiffer 2006
[[nodiscard]] inline std::optional<water::total_ammonia> highest_ammonia(
    const fed_filter& on, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::life::highest_ammonia";
  core::check(here, film_area_limits, in_square_metres(on.film));
  core::check(here, net_volume_limits, in_litres(on.net));
  core::check(here, film_temperature_limits, in_celsius(on.temperature), policy);
  detail::check_film(here, on.of);
  const auto meals = on.meals.get();
  double mean = 0.0;
  for (const regular_meal& meal : meals) {
    detail::check_meal(here, meal);
    mean += meal.mean->as_nitrogen().value();
  }
  const auto level = [](double c) { return water::total_ammonia::from_nitrogen(mass_concentration::from_value(c)); };
  if (mean < core::tiny) return level(0.0);
  const auto asked = [&](double k) { return detail::asked_by(meals, k); };
  // Below the plateau: in proportion k is the same at each level; with the square root R^2/C is, which is k R V.
  const double rising = on.film->value() * detail::film_slope(on.of, on.temperature);
  const double steepest = rising / (on.of.plateau_from.as_nitrogen().value() * on.net->value());
  double k = steepest;
  if (on.of.order == film_order::square_root) {
    const auto spare = [&](double x) { return rising * steepest - x * asked(x); };
    k = numerics::bracketed_root<double>(here, "removal", spare, 0.0, 2.0 * steepest * (rising / mean));
  }
  const double most = on.film->value() * detail::film_plateau(on.of, on.temperature);
  if (asked(k) > most) {
    if (!(mean < most)) return std::nullopt;
    const auto spare = [&](double ln_k) { return most - asked(std::exp(ln_k)); };
    k = std::exp(numerics::bracketed_root<double>(here, "ln of the removal", spare, -700.0, std::log(k)));
  }
  return level(asked(k) / (k * on.net->value()));
}

}  // namespace tankwright::life
