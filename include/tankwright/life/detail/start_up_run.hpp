// SPDX-License-Identifier: BSL-1.0
/// @file
/// How does one stretch of a start-up run? Adaptive steps over the Monod equations, held positive, with the peaks and
/// the crossings of the limits found inside the steps. Numbers are in days and mg/L.
#pragma once

#include <cmath>
#include <cstddef>
#include <limits>
#include <optional>

#include <tankwright/life/detail/nitrogen_cycle.hpp>
#include <tankwright/numerics/root.hpp>

namespace tankwright::life::detail {

/// The highest level of one pool, when it came, and since when it is at or below its limit.
struct pool_watch {
  double limit;
  double highest = std::numeric_limits<double>::lowest();
  double highest_at{};
  std::optional<double> clear_since{};

  void rise(double to, double at) {
    if (to > highest) {
      highest = to;
      highest_at = at;
    }
    if (to > limit) clear_since.reset();
  }
  /// A steady rise or fall to a level; `crossing` finds when it met the limit.
  template <class Crossing>
  void move(double from, double to, double at, Crossing crossing) {
    rise(to, at);
    if (from > limit && to <= limit) clear_since = crossing();
  }
  /// A sudden level: the start, a dose, a water change.
  void jump(double to, double at) {
    rise(to, at);
    if (to <= limit && !clear_since) clear_since = at;
  }
};

/// The state without what a step left below zero, which the error control keeps far below the tolerance. It comes out
/// of the fullest pool: no nitrogen is made.
[[nodiscard]] inline pools<double> positive_part(pools<double> y) noexcept {
  double missing = 0.0;
  pool fullest = ammonia;
  for (const pool p : {ammonia, nitrite, nitrate}) {
    if (y[p] > y[fullest]) fullest = p;
    if (y[p] < 0.0) {
      missing += y[p];
      y[p] = 0.0;
    }
  }
  y[fullest] += missing;
  return y;
}

/// Integrates the pools from stop to stop.
class start_up_run {
 public:
  start_up_run(const nitrogen_cycle<double>& cycle, const pools<double>& start, pool_watch a, pool_watch n)
      : system{cycle}, state{start}, ammonia_watch{a}, nitrite_watch{n} {}

  /// What runs, and where it is. Say `jumped` at the start, and after a change between stretches.
  nitrogen_cycle<double> system;
  pools<double> state;
  pool_watch ammonia_watch;
  pool_watch nitrite_watch;

  [[nodiscard]] double now() const noexcept { return time_; }

  void jumped() {
    ammonia_watch.jump(state[ammonia], time_);
    nitrite_watch.jump(state[nitrite], time_);
  }

  void run_until(std::string_view here, double end) {
    while (time_ < end) {
      const bool last = time_ + step_ >= end;
      const double h = last ? end - time_ : step_;
      const auto result = rosenbrock_step(system, state, h);
      const double error = error_of(result);
      // The error grows with h^4, where the two orders part. What is no number shrinks the step.
      const double next = h * std::fmin(5.0, std::fmax(0.2, 0.9 * std::pow(error, -0.25)));
      if (++steps_ > most_steps) {
        core::fail<no_convergence>(here, "time", time_, "d",
                                   "is as far as the simulation gets: its steps become too small");
      }
      if (!(error <= 1.0)) {
        step_ = next;
        continue;
      }
      watch(here, ammonia_watch, ammonia, result.state, h);
      watch(here, nitrite_watch, nitrite, result.state, h);
      state = positive_part(result.state);
      time_ = last ? end : time_ + h;
      step_ = last ? std::fmax(step_, next) : next;
    }
  }

 private:
  static constexpr double relative_tolerance = 1e-8;
  static constexpr double absolute_tolerance = 1e-10;  ///< mg/L, of nitrogen; bacteria are held relatively
  static constexpr int most_steps = 250'000;           // a second's work

  double time_ = 0.0;
  double step_ = 1e-3;
  int steps_ = 0;

  /// The largest error over its tolerance.
  [[nodiscard]] double error_of(const rosenbrock_result<double>& r) const noexcept {
    double worst = 0.0;
    for (std::size_t i = 0; i < state.size(); ++i) {
      const bool living = i == ammonia_oxidisers || i == nitrite_oxidisers;
      const double floor = living ? std::numeric_limits<double>::min() : absolute_tolerance;
      const double allowed = floor + relative_tolerance * std::fmax(std::fabs(state[i]), std::fabs(r.state[i]));
      worst = std::fmax(worst, std::fabs(r.error[i]) / allowed);
      if (!std::isfinite(r.error[i])) return std::fabs(r.error[i]);
    }
    return worst;
  }

  /// Follow one pool over an accepted step: to its top, if that lies inside, and on to the end.
  void watch(std::string_view here, pool_watch& on, pool p, const pools<double>& after, double h) {
    const auto at = [&](double x) { return x == 0.0 ? state : rosenbrock_step(system, state, x * h).state; };
    const auto slope = [&](const pools<double>& y) { return system.derivative(y)[p]; };
    const auto crossing = [&](double from) {
      const auto over = [&](double x) { return at(x)[p] - on.limit; };
      const double part =
          numerics::bracketed_root<double>(here, "time of the limit", over, from, 1.0, {.absolute = 1e-12});
      return time_ + h * part;
    };
    double from = 0.0;
    double level = state[p];
    if (slope(state) > 0.0 && slope(after) < 0.0) {
      const auto slope_at = [&](double x) { return slope(at(x)); };
      from = numerics::bracketed_root<double>(here, "time of the peak", slope_at, 0.0, 1.0, {.absolute = 1e-9});
      level = at(from)[p];
      on.rise(level, time_ + from * h);
    }
    on.move(level, after[p], time_ + h, [&] { return crossing(from); });
  }
};

}  // namespace tankwright::life::detail
