// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is left of alkalinity and calcium when nobody doses? Corals, shells and coralline algae take both in a fixed
/// proportion; water changes bring some back.
#pragma once

#include <cmath>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/core/validity.hpp>

namespace tankwright::water {

/// A level that falls evenly, with water changes at equal intervals that bring water as it was at first.
struct falling_level {
  required<double> start;        ///< [1] in any unit
  required<double> falls_a_day;  ///< [1/d] in that unit
  required<duration> time;
  proportion changed = fraction(0.0);  ///< part of the water at a time
  duration every = days(7.0);
};

inline constexpr limits falling_limits{"fall in a day", "", {0.0, 1e6}};
inline constexpr limits falling_start_limits{"level", "", {0.0, 1e6}};
inline constexpr limits falling_time_limits{"time", "d", {0.0, 36500.0}};
inline constexpr limits falling_part_limits{"part changed", "", zero_to_one};
inline constexpr limits falling_every_limits{"time between changes", "d", {1e-3, 36500.0}};

/// Calcium that goes with alkalinity into calcium carbonate: 40.078/2 g for an equivalent.
///
///   7.147 mg/L for 1 dKH (0.35663 meq/L)
///
/// @param degrees fall of the alkalinity [dKH], -1e6 to 1e6
/// @return        fall of the calcium
/// @throws        invalid_input (names the argument, its value and the limits)
/// @accuracy      exact for calcium carbonate; magnesium takes its place for some per cent
/// @source        stoichiometry; IUPAC standard atomic weights
[[nodiscard]] constexpr mass_concentration calcium_with_alkalinity(double degrees) {
  core::check("tankwright::water::calcium_with_alkalinity", {"fall of the alkalinity", "dKH", {-1e6, 1e6}}, degrees);
  return milligrams_per_litre(degrees * 10.0 / 56.0774 * 40.078);  // 1 dKH is 10 mg CaO in a litre
}

/// The lowest level within a time.
///
///   without changes: start - fall t;   with changes: before the n-th the deficit is d_n = (1 - p) d_(n-1) + fall T
///
/// @param level start 0 to 1e6; fall in a day 0 to 1e6; time 0 to a century; part changed 0 to 1 at intervals of a
///              minute and a half to a century
/// @return      level [1], in the unit of the start; negative where it would be used up
/// @throws      invalid_input
/// @accuracy    exact for an even fall; what grows takes more each month
/// @source      mass balance
[[nodiscard]] inline double lowest_level(const falling_level& level) {
  constexpr std::string_view here = "tankwright::water::lowest_level";
  core::check(here, falling_start_limits, level.start.get());
  core::check(here, falling_limits, level.falls_a_day.get());
  core::check(here, falling_time_limits, in_days(level.time));
  core::check(here, falling_part_limits, level.changed.value());
  core::check(here, falling_every_limits, in_days(level.every));
  const double fall = level.falls_a_day, time = in_days(level.time), p = level.changed.value();
  const double every = in_days(level.every), n = std::floor(time / every);
  if (p == 0.0 || n == 0.0) return level.start - fall * time;
  const double keeps = 1.0 - p;
  // Before the n-th change, and at the end of what is left after it; the deficits rise, so the later is the larger.
  const double before = fall * every * (1.0 - std::pow(keeps, n)) / p;
  const double end = keeps * before + fall * (time - n * every);
  return level.start - (before > end ? before : end);
}

}  // namespace tankwright::water
