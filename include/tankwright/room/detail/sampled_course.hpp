// SPDX-License-Identifier: BSL-1.0
/// @file
/// Many values of a course at even times, without a step to each of them.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <string_view>

namespace tankwright::room::detail {

/// The value at a time between three points of a course: on the polynomial of the fifth degree through them with their
/// slopes (Hermite).
template <class Point>
[[nodiscard]] double value_between(const std::array<Point, 3>& p, double time) noexcept {
  for (const Point& point : p) {
    if (point.time == time) return point.value;
  }
  const double base = p[0].value;  // sums of small differences keep their digits
  double sum = 0.0;
  for (std::size_t i = 0; i < 3; ++i) {
    double weight = 1.0, slope = 0.0;
    for (std::size_t j = 0; j < 3; ++j) {
      if (j == i) continue;
      const double apart = p[i].time - p[j].time;
      weight *= (time - p[j].time) / apart;
      slope += 1.0 / apart;
    }
    const double since = time - p[i].time;
    sum += weight * weight * ((1.0 - 2.0 * since * slope) * (p[i].value - base) + since * p[i].slope);
  }
  return base + sum;
}

/// The values of a course at `every`, twice `every` ... and at last at `to`: use(value), in this order.
///
/// Where they are close together they are read between steps of a fifth of the longest, a 25th of the time in which
/// the value forgets where it was: steps and reading leave 1e-11 of the way. They are two a stretch, and none goes past
/// a kink. Where both results of the method differ by more than `smooth` there is an unknown kink, and a step
/// goes to each value.
template <class Course, class Use>
void sample(std::string_view function, Course& course, double every, double to, double smooth, Use use) {
  std::size_t taken = 0;
  const auto time_of = [&](std::size_t i) { return std::min(to, every * static_cast<double>(i)); };
  const auto step_to_each = [&](double until) {
    for (; every * static_cast<double>(taken) < to && time_of(taken + 1) <= until; ++taken) {
      course.go_to(function, time_of(taken + 1));
      use(course.value());
    }
    course.go_to(function, until);
  };
  const auto stride = static_cast<std::size_t>(std::min(0.2 * course.options().longest / every, 1e6));
  if (stride < 2) return step_to_each(to);
  const auto read_between = [&](double until) {
    std::array points{course.now(), course.now(), course.now()};
    for (const std::size_t i : {std::size_t(1), std::size_t(2)}) {
      const double stop = i == 2 ? until : 0.5 * (points[0].time + until);
      course.step(function, stop);
      if (course.time() != stop || course.error() > smooth) return false;
      points[i] = course.now();
    }
    for (; every * static_cast<double>(taken) < to && time_of(taken + 1) <= until; ++taken) {
      use(value_between(points, time_of(taken + 1)));
    }
    return true;
  };
  while (course.time() < to) {
    double until = time_of(taken + 2 * stride);
    if (course.time() < course.options().kink && course.options().kink < until) until = course.options().kink;
    const auto from = course.here();
    if (read_between(until)) continue;
    course.back_to(from);
    step_to_each(until);
  }
}

}  // namespace tankwright::room::detail
