// SPDX-License-Identifier: BSL-1.0
/// @file
/// One slope through the readings of several people, each of whom reads a little higher or lower than the others:
/// least squares with an intercept a reader (analysis of covariance), on raw numbers.
#pragma once

#include <cmath>
#include <cstddef>
#include <optional>
#include <vector>

namespace tankwright::vessel::detail {

struct level_point {
  double time;
  double level;     ///< corrected: what is fitted
  double as_read;   ///< of the tank
  double pan_read;  ///< of the pan
  std::size_t reader;
};

/// What belongs to one reader.
struct level_group {
  std::size_t count = 0;
  double first{}, last{};  ///< times
  double low{}, high{};    ///< as read
  double pan_low{}, pan_high{};
  double mean_time = 0.0;   ///< from the first time of all readings
  double mean_level = 0.0;  ///< from the first level
  double intercept{};       ///< level at the first time, by the common slope
};

struct level_fit {
  double slope;
  double scatter;    ///< residual standard deviation
  double sxx;        ///< sum of (t - mean of its reader)^2
  double span;       ///< longest time that one reader covers
  double moved;      ///< from the lowest to the highest level that one reader saw in the tank
  double pan_moved;  ///< the same in the pan
  std::size_t degrees_of_freedom;
  std::vector<level_group> readers;
};

/// Nothing where the readings are too few for a slope with its error. Times do not fall.
[[nodiscard]] inline std::optional<level_fit> fit_levels(const std::vector<level_point>& points, std::size_t readers) {
  if (points.size() < readers + 2) return std::nullopt;
  level_fit fit{};
  fit.readers.resize(readers);
  const double start = points[0].time, datum = points[0].level;  // about the first point, which keeps the digits
  for (const level_point& p : points) {
    level_group& g = fit.readers[p.reader];
    if (g.count++ == 0) {
      g.first = p.time;
      g.low = g.high = p.as_read;
      g.pan_low = g.pan_high = p.pan_read;
    }
    g.last = p.time;
    g.low = std::fmin(g.low, p.as_read);
    g.high = std::fmax(g.high, p.as_read);
    g.pan_low = std::fmin(g.pan_low, p.pan_read);
    g.pan_high = std::fmax(g.pan_high, p.pan_read);
    g.mean_time += p.time - start;
    g.mean_level += p.level - datum;
  }
  for (level_group& g : fit.readers) {
    g.mean_time /= static_cast<double>(g.count);
    g.mean_level /= static_cast<double>(g.count);
    fit.span = std::fmax(fit.span, g.last - g.first);
    fit.moved = std::fmax(fit.moved, g.high - g.low);
    fit.pan_moved = std::fmax(fit.pan_moved, g.pan_high - g.pan_low);
  }
  double sxy = 0.0;
  for (const level_point& p : points) {
    const level_group& g = fit.readers[p.reader];
    const double dt = p.time - start - g.mean_time;
    fit.sxx += dt * dt;
    sxy += dt * (p.level - datum - g.mean_level);
  }
  if (!(fit.sxx > 0.0)) return std::nullopt;
  fit.degrees_of_freedom = points.size() - readers - 1;
  fit.slope = sxy / fit.sxx;
  double squares = 0.0;
  for (const level_point& p : points) {
    const level_group& g = fit.readers[p.reader];
    const double residual = (p.level - datum - g.mean_level) - fit.slope * (p.time - start - g.mean_time);
    squares += residual * residual;
  }
  fit.scatter = std::sqrt(squares / static_cast<double>(fit.degrees_of_freedom));
  for (level_group& g : fit.readers) g.intercept = datum + g.mean_level - fit.slope * g.mean_time;
  return fit;
}

}  // namespace tankwright::vessel::detail
