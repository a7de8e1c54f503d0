// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much may be added at a time, and when the next? A filter that keeps up with a load grows into a larger one;
/// until it has, ammonia is left over. Small steps with rests keep that below a level.
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/estimate.hpp>
#include <tankwright/life/nitrification.hpp>
#include <vector>

namespace tankwright::life {

/// Net growth of nitrifying films in the sea: they double in 2 to 14 days. Start-up in the sea takes much longer than
/// in fresh water (Nijhof and Bovendeur 1990); the rates are from memory.
inline constexpr estimate<rate> film_growth{per_day(0.05), per_day(0.12), per_day(0.35),
                                            "films in the sea double in 2 to 14 days; from memory"};

/// A step from one load to a larger one.
struct larger_load {
  required<nitrogen_load> before;  ///< that the filter keeps up with
  required<nitrogen_load> after;
  required<rate> growth;  ///< of the filter, net
  required<volume> net;
};

struct step_answer {
  water::total_ammonia left_over;  ///< highest, above the level that it settles at
  duration catches_up;             ///< until the filter takes the new load
};

/// Steps to a whole load.
struct stocking_question {
  required<nitrogen_load> whole;
  required<proportion> start;  ///< of the whole, that the filter keeps up with on the first day
  required<proportion> step;   ///< of the whole, that a step adds at most
  required<duration> rest;     ///< least time from one step to the next
  required<rate> growth;
  required<volume> net;
  required<water::total_ammonia> below;  ///< what a step may leave over
};

struct stocking_date {
  duration on;
  proportion share;  ///< of the whole, from this day on
  water::total_ammonia left_over;
};

inline constexpr limits step_growth_limits{"growth", "1/d", {1e-6, 1e3}};
inline constexpr limits step_share_limits{"share", "", above_zero_to_one};
inline constexpr limits step_rest_limits{"rest", "d", {0.0, 36500.0}};
inline constexpr limits step_level_limits{"ammonia", "mg/L", {1e-9, 1e6}};
inline constexpr std::size_t most_steps = 400;

namespace kernel {

/// What is left over while a capacity a grows with rate mu into a load b > a: (b (ln(b/a) - 1) + a)/mu.
template <class T>
[[nodiscard]] inline T left_over(T a, T b, T mu) noexcept {
  using std::log;
  // 1 - x + ln x near 1 loses all digits: its series there.
  const T x = a / b, d = T(1) - x;
  if (d < T(1e-4L)) return b / mu * d * d * (T(0.5L) + d * (T(1) / T(3) + d * T(0.25L)));
  return (b * (-log(x) - T(1)) + a) / mu;
}

}  // namespace kernel

/// Ammonia that a step leaves over, and how long.
///
///   C(t) = C_0 e^(mu t),   t = ln(N/C_0)/mu,   S = (N (ln(N/C_0) - 1) + C_0)/(mu V)
///
/// @param step loads before and after > 0, the second not below the first; growth mu 1e-6 to 1000 1/d; net volume V > 0
/// @return     the highest ammonia beyond what the filter settles at, and the time until it takes all
/// @throws     invalid_input
/// @accuracy   exact for even growth; growth in the sea is known within a factor of three either way
/// @source     exponential growth; mass balance
[[nodiscard]] inline step_answer ammonia_of_step(const larger_load& step) {
  constexpr std::string_view here = "tankwright::life::ammonia_of_step";
  const double a = step.before->as_nitrogen().value(), b = step.after->as_nitrogen().value();
  core::check(here, {"load before", "kg/s", positive}, a);
  core::check(here, {"load after", "kg/s", {a, core::vast}}, b);
  core::check(here, step_growth_limits, in_per_day(step.growth));
  core::check(here, net_volume_limits, in_litres(step.net));
  const double mu = step.growth->value();
  return {water::total_ammonia::from_nitrogen(
              mass_concentration::from_value(kernel::left_over(a, b, mu) / step.net->value())),
          duration::from_value(std::log(b / a) / mu)};
}

/// Dates on which food or animals may be added, so that no step leaves more ammonia over than a level.
///
///   each step: the largest with S <= level, at most `step`; the next after `rest` and when the filter has caught up
///
/// @param ask whole load > 0; start and step, above 0 to 1; rest 0 to a century; growth 1e-6 to 1000 1/d; net volume
///            > 0; level 1e-9 to 1e6 mg/L
/// @return    the steps from the first day on, the last with the whole; at most 400
/// @throws    invalid_input; no_convergence (steps so small that 400 do not do)
/// @accuracy  as `ammonia_of_step`
/// @source    as `ammonia_of_step`
[[nodiscard]] inline std::vector<stocking_date> stocking_dates(const stocking_question& ask) {
  constexpr std::string_view here = "tankwright::life::stocking_dates";
  core::check(here, {"whole load", "kg/s", positive}, ask.whole->as_nitrogen().value());
  core::check(here, step_share_limits, ask.start->value());
  core::check(here, step_share_limits, ask.step->value());
  core::check(here, step_rest_limits, in_days(ask.rest));
  core::check(here, step_growth_limits, in_per_day(ask.growth));
  core::check(here, net_volume_limits, in_litres(ask.net));
  core::check(here, step_level_limits, in_milligrams_per_litre(ask.below->as_nitrogen()));
  const double mu = ask.growth->value(), v = ask.net->value(), whole = ask.whole->as_nitrogen().value();
  const double level = ask.below->as_nitrogen().value(), widest = ask.step->value();
  const auto left = [&](double from, double to) { return kernel::left_over(from * whole, to * whole, mu) / v; };
  const auto of = [](double c) { return water::total_ammonia::from_nitrogen(mass_concentration::from_value(c)); };
  std::vector<stocking_date> dates{{duration{}, ask.start, of(0.0)}};
  double share = ask.start->value(), day = ask.rest->value();  // the first day, and a rest
  while (share < 1.0) {
    if (dates.size() > most_steps) {
      core::fail<no_convergence>(here, "steps", static_cast<double>(dates.size()), "",
                                 "do not reach the whole: each may add too little");
    }
    double to = std::min(1.0, share + widest);
    if (left(share, to) > level) {
      double low = share, high = to;
      const auto middle = [&] { return 0.5 * (low + high); };
      for (double m = middle(); low < m && m < high; m = middle()) (left(share, m) > level ? high : low) = m;
      to = low;
    }
    dates.push_back({duration::from_value(day), fraction(to), of(left(share, to))});
    day += std::max(ask.rest->value(), std::log(to / share) / mu);
    share = to;
  }
  return dates;
}

}  // namespace tankwright::life
