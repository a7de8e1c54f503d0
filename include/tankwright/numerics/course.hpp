// SPDX-License-Identifier: BSL-1.0
/// @file
/// Steps along a slow course of a tank, and the moment at which it meets a value: the fifth-order method of Dormand &
/// Prince 1980 (J. Comput. Appl. Math. 6:19), coefficients in the order of its tableau.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>
#include <string_view>

#include <tankwright/core/errors.hpp>

namespace tankwright::numerics {

/// Where a step ends: the value, the slope there, and how far the embedded fourth-order result is from it.
struct step_end {
  double value;
  double slope;
  double error;
};

/// A step along dy/dt = f(t, y) from a point where the slope is known.
///
/// @param f  dy/dt, any callable on t and y; called six times
/// @param t  where the step starts
/// @param y  the value there
/// @param k1 the slope there
/// @param h  its length
/// @return   value and slope at the end, and how far the embedded fourth-order result is from it
/// @throws   what f throws
/// @accuracy fifth order: for dy/dt = -y/tau the error of a step is (h/tau)^6/3600 of y
/// @source   Dormand and Prince 1980
template <class F>
[[nodiscard]] step_end dormand_prince(F f, double t, double y, double k1, double h) {
  const double k2 = f(t + h / 5.0, y + h * k1 / 5.0);
  const double k3 = f(t + h * 3.0 / 10.0, y + h * (k1 * (3.0 / 40.0) + k2 * (9.0 / 40.0)));
  const double k4 = f(t + h * 4.0 / 5.0, y + h * (k1 * (44.0 / 45.0) - k2 * (56.0 / 15.0) + k3 * (32.0 / 9.0)));
  const double k5 = f(t + h * 8.0 / 9.0, y + h * (k1 * (19372.0 / 6561.0) - k2 * (25360.0 / 2187.0) +
                                                  k3 * (64448.0 / 6561.0) - k4 * (212.0 / 729.0)));
  const double k6 = f(t + h, y + h * (k1 * (9017.0 / 3168.0) - k2 * (355.0 / 33.0) + k3 * (46732.0 / 5247.0) +
                                      k4 * (49.0 / 176.0) - k5 * (5103.0 / 18656.0)));
  const double end = y + h * (k1 * (35.0 / 384.0) + k3 * (500.0 / 1113.0) + k4 * (125.0 / 192.0) -
                              k5 * (2187.0 / 6784.0) + k6 * (11.0 / 84.0));
  const double k7 = f(t + h, end);
  const double error = h * (k1 * (71.0 / 57600.0) - k3 * (71.0 / 16695.0) + k4 * (71.0 / 1920.0) -
                            k5 * (17253.0 / 339200.0) + k6 * (22.0 / 525.0) - k7 / 40.0);
  return {end, k7, std::fabs(error)};
}

/// What is known of a course before it runs.
struct course_options {
  double longest;    ///< step: a fifth of the time in which the value forgets where it was, or less
  double tolerance;  ///< by which the two results of the method may differ in a step
  double kink = std::numeric_limits<double>::infinity();         ///< a time at which the slope has one: it is met
  double steady_from = std::numeric_limits<double>::infinity();  ///< the slope then depends on the value alone
};

/// A course from time 0 and y. Its steps are at most `longest`, and shorter where one law of evaporation gives way to
/// another and the slope has a kink: until both results of the method agree within `tolerance`. Where nothing moves any
/// more it goes on in one step; where it would take more than `most_steps` it gives up.
template <class F>
class course {
 public:
  static constexpr int most_steps = 400'000;

  struct point {
    double time, value, slope;
  };
  /// Where a course has got to.
  struct place {
    point now, before;
    double next, error;
  };

  course(F f, const course_options& options, double y)
      : f_{f}, now_{0.0, y, f(0.0, y)}, options_{options}, next_{options.longest} {}

  [[nodiscard]] double time() const noexcept { return now_.time; }
  [[nodiscard]] double value() const noexcept { return now_.value; }
  [[nodiscard]] const point& now() const noexcept { return now_; }
  /// By how much both results of the method differed in the last step.
  [[nodiscard]] double error() const noexcept { return error_; }
  [[nodiscard]] const course_options& options() const noexcept { return options_; }
  [[nodiscard]] place here() const noexcept { return {now_, before_, next_, error_}; }
  void back_to(const place& p) noexcept { now_ = p.now, before_ = p.before, next_ = p.next, error_ = p.error; }

  /// One step, at most to `end`.
  void step(std::string_view function, double end) {
    if (++steps_ > most_steps) {
      core::fail<no_convergence>(function, "time", now_.time, "s",
                                 "is as far as the simulation gets: it changes too fast for so long a time");
    }
    if (now_.time < options_.kink && options_.kink < end) end = options_.kink;
    if (now_.time >= options_.steady_from && std::fabs(now_.slope) * options_.longest <= 1e-4 * options_.tolerance) {
      now_.time = end;
      before_ = now_;
      error_ = 0.0;
      return;
    }
    const double rest = end - now_.time;
    double h = std::min(next_, rest);
    step_end to = dormand_prince(f_, now_.time, now_.value, now_.slope, h);
    while (to.error > options_.tolerance && h > least_part * options_.longest) {
      h = next_ = 0.5 * h;
      to = dormand_prince(f_, now_.time, now_.value, now_.slope, h);
    }
    if (!std::isfinite(to.value)) {
      core::fail<no_convergence>(function, "time", now_.time, "s", "is as far as the simulation gets: it runs away");
    }
    if (h == next_ && to.error < 0.01 * options_.tolerance) next_ = std::min(options_.longest, 2.0 * h);
    before_ = now_;
    now_ = {h == rest ? end : now_.time + h, to.value, to.slope};
    error_ = to.error;
  }
  void go_to(std::string_view function, double end) {
    while (now_.time < end) step(function, end);
  }

  /// When, within the last step, the course met `wanted`: Newton's method from the cubic through both ends of the step.
  [[nodiscard]] double met(std::string_view function, double wanted) const {
    const double h = now_.time - before_.time;
    double part = h * cubic_part(wanted, h);
    for (int i = 0; i < 50; ++i) {
      const step_end there = dormand_prince(f_, before_.time, before_.value, before_.slope, part);
      const double by = (there.value - wanted) / there.slope;
      if (!std::isfinite(by)) break;
      part = std::clamp(part - by, 0.0, h);
      if (std::fabs(by) <= 1e-4 * h) return before_.time + part;  // the next one would be below 1e-8
    }
    core::fail<no_convergence>(function, "time", before_.time, "s", "did not converge");
  }

 private:
  static constexpr double least_part = 1e-4;

  /// Part of the last step at which the cubic with its values and slopes is `wanted`.
  [[nodiscard]] double cubic_part(double wanted, double h) const noexcept {
    const double rise = now_.value - before_.value, a = h * before_.slope, b = h * now_.slope;
    const double second = 3.0 * rise - 2.0 * a - b, third = a + b - 2.0 * rise;
    double x = (wanted - before_.value) / rise;
    for (int i = 0; i < 4; ++i) {
      const double value = before_.value + x * (a + x * (second + x * third));
      x = std::clamp(x - (value - wanted) / (a + x * (2.0 * second + x * 3.0 * third)), 0.0, 1.0);
    }
    return std::isfinite(x) ? x : (wanted - before_.value) / rise;
  }

  F f_;
  point now_;
  point before_{};
  course_options options_;
  double next_, error_ = 0.0;
  int steps_ = 0;
};

}  // namespace tankwright::numerics
