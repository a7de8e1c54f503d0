// SPDX-License-Identifier: BSL-1.0
/// @file
/// How fast does the water come down after a power cut, and how high does each chamber rise on the way?
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include <tankwright/plumbing/power_cut.hpp>

namespace tankwright::plumbing {

/// A power cut over time.
struct power_cut_transient_input {
  power_cut_input system;
  duration until = minutes(10.0);
  duration sample_every = seconds(5.0);
};

/// The level in one chamber over time.
struct chamber_history {
  std::string label;
  std::vector<length> level;  ///< one a sample; at most the rim
  length peak;                ///< highest, between samples too
  duration peak_at;
};

/// What happens after the pump stops, sample by sample, with central values.
struct power_cut_history {
  std::vector<duration> time;
  std::vector<length> display;       ///< level over the overflow edge; negative below it
  std::vector<volume> under_way;     ///< in box and pipes, still to come down
  std::vector<volume> on_the_floor;  ///< has run over the rim
  std::vector<chamber_history> chambers;
  tankwright::caution caution;
};

inline constexpr limits until_limits{"until", "s", {0.0, 1e6, edge::open}};
inline constexpr limits sample_limits{"sample_every", "s", {0.0, 1e6, edge::open}};
inline constexpr limits samples_limits{"number of samples", "", {0.0, 1e5}};

/// Levels in display and sump over time after the pump stops.
///
///   display: A dz/dt = -Q_edge(z) - sum of the back-siphons;  box: Q_drain = Q0 (V/V0)^1.5;  chambers: over and under
///   their baffles, free or drowned;  back-siphons: Darcy and Weisbach through their own pipes and those they share,
///   from the display to the water in the last chamber, which stands no higher than the rim
///
/// Drain pipes hold water in proportion to what they carry; a return pipe that has drawn air empties as q0 (V/V0)^0.5.
/// Above the rim water leaves. Flows below 0.36 L/h are none.
///
/// @param task system as for `power_cut`; end and sampling [s] > 0, at most 100 000 samples
/// @return     samples from 0 to the end, peaks, a caution
/// @throws     invalid_input (names the element by its label; a return that can siphon must have its pipe)
/// @accuracy   volume conserved to 1e-12; about 0.5 % in time against the closed forms; central values without a band
/// @source     the formulas of `weirs.hpp`; orifice formula; energy equation with Colebrook 1939; the laws of box,
///             drain pipes and falling columns are rules of this library
[[nodiscard]] inline power_cut_history power_cut_transient(const power_cut_transient_input& task) {
  constexpr std::string_view here = "tankwright::plumbing::power_cut_transient";
  detail::check_power_cut(here, task.system);
  core::check(here, until_limits, task.until.value());
  core::check(here, sample_limits, task.sample_every.value());
  core::check(here, samples_limits, task.until.value() / task.sample_every.value());
  const auto samples = static_cast<std::size_t>(task.until.value() / task.sample_every.value() * (1.0 + 1e-12));
  detail::power_cut_engine engine{here, task.system};
  const std::size_t n = engine.shape().size();
  std::vector<double> levels(2 * n);
  detail::power_cut_case c{.running = {levels.data(), n}, .settled = {levels.data() + n, n}};
  engine.run_moved({}, c);
  engine.fall_moved({}, c);
  detail::power_cut_course course = engine.start({}, c, detail::above_rim::runs_over, 4.0);

  power_cut_history history{
      .time = {}, .display = {}, .under_way = {}, .on_the_floor = {}, .chambers = {}, .caution = power_cut_caution};
  history.time.reserve(samples + 1);
  history.display.reserve(samples + 1);
  history.under_way.reserve(samples + 1);
  history.on_the_floor.reserve(samples + 1);
  for (std::size_t i = 0; i < n; ++i) {
    history.chambers.push_back({detail::chamber_name(task.system.sump, i), {}, {}, {}});
    history.chambers.back().level.reserve(samples + 1);
  }
  const auto note_peaks = [&](double t) {
    for (std::size_t i = 0; i < n; ++i) {
      const length level = length::from_value(course.level_in(i));
      if (level > history.chambers[i].peak) {
        history.chambers[i].peak = level;
        history.chambers[i].peak_at = duration::from_value(t);
      }
    }
  };
  const auto sample = [&](double t) {
    history.time.push_back(duration::from_value(t));
    history.display.push_back(length::from_value(course.over_edge()));
    history.under_way.push_back(volume::from_value(course.under_way()));
    history.on_the_floor.push_back(volume::from_value(course.on_the_floor()));
    for (std::size_t i = 0; i < n; ++i) {
      history.chambers[i].level.push_back(length::from_value(course.level_in(i)));
    }
  };
  note_peaks(0.0);
  sample(0.0);
  double t = 0.0;
  constexpr int most_steps = 1000000;
  int steps = 0;
  for (std::size_t s = 1; s <= samples; ++s) {
    const double end = static_cast<double>(s) * task.sample_every.value();
    while (t < end) {
      if (++steps > most_steps) core::fail<no_convergence>(here, "time", t, "s", "is as far as the course gets");
      const double left = end - t, dt = course.step(left);
      t = dt < left ? t + dt : end;
      note_peaks(t);
    }
    sample(end);
  }
  return history;
}

}  // namespace tankwright::plumbing
