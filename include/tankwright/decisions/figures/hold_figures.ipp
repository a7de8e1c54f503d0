// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/figures/hold_figures.hpp>
#include <utility>

namespace tankwright::decisions {

TANKWRIGHT_INLINE std::vector<figure> figures_of(const leak_test_case& c) {
  const auto height = [](const vessel::level_reading& r) { return (r.level.get() - r.pan.value_or(length{})).value(); };
  figure picture{.id = "hold.leak",
                 .title = c.has_pan() ? "Level less the pan's, the fitted line, and a tight tank"
                                      : "Level, the fitted line, and a tight tank with evaporation alone",
                 .x_axis = {"time", "duration"},
                 .y_axis = {"above the last reading", "length"}};
  const auto& readings = c.test.readings;
  const double last = height(readings.back()), start = readings.front().at->value();
  curve seen{.label = "readings", .as = stroke::points};
  curve fitted{.label = "fitted line"};
  curve tight{.label = "tight tank", .as = stroke::dashed};
  double mean_x = 0.0, mean_y = 0.0;
  for (const vessel::level_reading& r : readings) {
    seen.x.push_back(r.at->value() - start);
    seen.y.push_back(height(r) - last);
    mean_x += seen.x.back() / static_cast<double>(readings.size());
    mean_y += seen.y.back() / static_cast<double>(readings.size());
  }
  const auto& evaporation = c.result.evaporation;
  const double top = mean_y + c.result.fall.central.value() * mean_x;
  for (const double x : {0.0, c.result.lasted.value()}) {
    fitted.x.push_back(x);
    fitted.y.push_back(top - c.result.fall.central.value() * x);
    tight.x.push_back(x);
    tight.y.push_back(top - evaporation.central.value() * x);
    tight.low.push_back(top - evaporation.high.value() * x);
    tight.high.push_back(top - evaporation.low.value() * x);
  }
  picture.curves = {std::move(fitted), std::move(tight), std::move(seen)};
  return {std::move(picture)};
}

}  // namespace tankwright::decisions
