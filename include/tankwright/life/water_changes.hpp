// SPDX-License-Identifier: BSL-1.0
/// @file
/// How high does the ammonia come in a tank that lives by its water changes? A quarantine tank has no filter, or a
/// sponge from an older one; what its animals give off stays until water is changed.
#pragma once

#include <cmath>
#include <string_view>

#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/life/nitrogen.hpp>
#include <tankwright/life/ranges.hpp>
#include <tankwright/water/ammonia.hpp>

namespace tankwright::life {

/// A tank, what is given off in it, and how its water is changed. It starts clean.
struct changed_tank {
  required<volume> net;
  required<nitrogen_load> load;  ///< in the mean of the days
  required<proportion> part;     ///< of the water that a change takes out
  required<duration> every;      ///< from one change to the next
  required<duration> lasts;
  mass largest_meal{};  ///< nitrogen of meals that come at once, rarer than daily, beside the mean
  rate removal{};       ///< of a filter that takes in proportion to the level
};

struct changed_tank_course {
  water::total_ammonia highest;  ///< before the last change, or at the end
  double changes;                ///< [1] in all
  volume changed;                ///< new water for them
};

inline constexpr limits change_interval_limits{"time between changes", "d", {1e-3, 3650.0}};
inline constexpr limits quarantine_limits{"time in it", "d", {0.0, 36500.0, edge::open}};
inline constexpr limits change_part_limits{"part changed", "", zero_to_one};
inline constexpr limits largest_meal_limits{"nitrogen of a meal", "g", {0.0, 1e9}};
inline constexpr limits removal_limits{"removal", "1/d", {0.0, 1e6}};

namespace kernel {

/// (1 - e^(-x))/x: what is left in the mean of what came in evenly while a share e^(-x) stays.
template <class T>
[[nodiscard]] inline T mean_left(T x) noexcept {
  using std::expm1;
  return x > T(0) ? -expm1(-x) / x : T(1);
}

/// 1 + a + a^2 + ... of n terms, for a = e^log_a.
template <class T>
[[nodiscard]] inline T sum_of_powers(T log_a, T n) noexcept {
  using std::expm1;
  if (n == T(0)) return n;  // of no powers, whatever they are of
  return log_a < T(0) ? expm1(n * log_a) / expm1(log_a) : n;
}

}  // namespace kernel

/// The highest ammonia between water changes.
///
///   C' = L/V - k C;   at each change C <- (1 - p) C.   Before the n-th:
///   C_n = (L/V) (1 - e^(-k T))/k (1 + a + ... + a^(n-1)),   a = (1 - p) e^(-k T)
///
/// Meals that come at once add the largest of them: no train of meals gets farther ahead of its mean than that, and
/// what is ahead is thinned like the rest.
///
/// @param tank net volume V > 0; load L >= 0; part p, 0 to 1; every T, 0.001 to 3650 d; lasts more than 0 to a century;
///             nitrogen of the largest meal >= 0; removal k, 0 to 1e6 1/d
/// @return     the highest total ammonia; the number of changes, one of which may fall on the last moment; the water
///             for them
/// @throws     invalid_input
/// @accuracy   exact for even excretion; with meals at once an upper bound, no more than one meal too high
/// @source     mass balance
[[nodiscard]] inline changed_tank_course ammonia_with_changes(const changed_tank& tank) {
  constexpr std::string_view here = "tankwright::life::ammonia_with_changes";
  core::check(here, net_volume_limits, in_litres(tank.net));
  core::check(here, nitrogen_load_limits, in_grams_per_day(tank.load->as_nitrogen()));
  core::check(here, change_part_limits, tank.part->value());
  core::check(here, change_interval_limits, in_days(tank.every));
  core::check(here, quarantine_limits, in_days(tank.lasts));
  core::check(here, largest_meal_limits, in_grams(tank.largest_meal));
  core::check(here, removal_limits, in_per_day(tank.removal));
  const double v = tank.net->value(), rise = tank.load->as_nitrogen().value() / v;
  const double every = tank.every->value(), lasts = tank.lasts->value(), p = tank.part->value();
  const double k = tank.removal.value();
  const double changes = std::floor(lasts / every * (1.0 + 1e-12));
  const double rest = std::fmax(0.0, lasts - changes * every);
  const auto comes_in = [&](double time) { return rise * time * kernel::mean_left(k * time); };
  const double before = comes_in(every) * kernel::sum_of_powers(std::log1p(-p) - k * every, changes);
  const double last = (1.0 - p) * before * std::exp(-k * rest) + comes_in(rest);
  const double highest = std::fmax(before, last) + tank.largest_meal.value() / v;
  return {water::total_ammonia::from_nitrogen(mass_concentration::from_value(highest)), changes,
          volume::from_value(changes * p * v)};
}

}  // namespace tankwright::life
