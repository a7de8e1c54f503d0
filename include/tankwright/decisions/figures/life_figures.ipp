// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/figures/life_figures.hpp>

namespace tankwright::decisions {

namespace detail {

/// One level of the three cases over time.
template <class Level>
[[nodiscard]] curve course_of(std::string label, const forecast_runs& runs, Level level) {
  curve c{.label = std::move(label)};
  const auto at = [&](const life::start_up_result& run, std::size_t i) {
    return level(run.samples[i]).as_nitrogen().value();
  };
  for (std::size_t i = 0; i < runs.central.samples.size(); ++i) {
    const double central = at(runs.central, i);
    const auto [least, most] = std::minmax({central, at(runs.fast, i), at(runs.harmed, i)});
    c.x.push_back(runs.central.samples[i].at.value());
    c.y.push_back(central);
    c.low.push_back(least);
    c.high.push_back(most);
  }
  return c;
}

}  // namespace detail

TANKWRIGHT_INLINE std::vector<figure> figures_of(const life_case& c) {
  if (!c.in.weeks.wanted || !c.net || c.in.filter.food.empty()) return {};
  const forecast_runs runs = simulate(c);
  figure f{.id = "life.start_up",
           .title = "The weeks of the start-up: the shape, not the dates",
           .x_axis = {"time from the first day", "duration"},
           .y_axis = {"as nitrogen", "mass_density"}};
  using sample = life::start_up_sample;
  f.curves.push_back(detail::course_of("ammonia", runs, [](const sample& s) { return s.ammonia; }));
  f.curves.push_back(detail::course_of("nitrite", runs, [](const sample& s) { return s.nitrite; }));
  f.curves.push_back(
      detail::course_of("nitrate, until it leaves the picture", runs, [](const sample& s) { return s.nitrate; }));
  // Nitrate only rises: shown whole it would press the others to the floor.
  const double limit = c.in.filter.stay_below.as_nitrogen().value();
  double top = 2.0 * limit;
  for (const std::size_t i : {0U, 1U}) {
    top = std::fmax(top, 1.25 * *std::max_element(f.curves[i].high.begin(), f.curves[i].high.end()));
  }
  curve& leaving = f.curves[2];
  const auto end = std::find_if(leaving.high.begin(), leaving.high.end(), [&](double y) { return y > top; });
  const auto kept = static_cast<std::size_t>(end - leaving.high.begin());
  for (auto* values : {&leaving.x, &leaving.y, &leaving.low, &leaving.high}) values->resize(kept);
  f.curves.push_back({.label = "ammonia and nitrite stay below",
                      .x = {0.0, c.in.weeks.horizon.value()},
                      .y = {limit, limit},
                      .as = stroke::dashed});
  return {f};
}

}  // namespace tankwright::decisions
