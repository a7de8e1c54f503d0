// SPDX-License-Identifier: BSL-1.0
/// @file
/// How sure is the result? First-order propagation of measured values through any function, after the GUM: standard
/// uncertainty, coverage interval, and the share of each input, which tells what to measure better.
///
/// `propagate([](length l, length w, length h) { return volume{l * w * h}; }, l, w, h)`. Where the function bends
/// within the uncertainties (see `nonlinearity`), or the spreads matter, use `monte_carlo.hpp`.
#pragma once

#include <array>
#include <cmath>
#include <concepts>
#include <limits>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/measured.hpp>
#include <tankwright/numerics/student_t.hpp>

namespace tankwright::numerics {

/// Two inputs that are not independent: their places in the list of inputs, from 0, and their correlation coefficient.
struct correlation {
  std::size_t first;
  std::size_t second;
  double coefficient;  ///< -1 to 1
};

/// How to propagate. `propagate({.coverage = 0.99}, f, a, b)`.
struct propagation {
  double coverage = 0.95;                   ///< probability of the interval between `low` and `high`
  std::vector<correlation> correlations{};  ///< pairs that are not named are independent
};

/// What one input does to the result.
template <class Q>
struct contribution {
  step_of<Q> uncertainty;  ///< of the result, if this input alone were uncertain
  double share;            ///< of the variance of the result; the shares add up to 1, correlations split evenly
};

/// A result with what is known about it.
template <class Q, std::size_t N>
struct propagated {
  Q value;
  step_of<Q> uncertainty;  ///< combined standard uncertainty
  Q low;                   ///< coverage interval: value -/+ factor x uncertainty
  Q high;
  double coverage;
  double factor;              ///< coverage factor k, Student's t for `degrees_of_freedom`
  double degrees_of_freedom;  ///< effective degrees of freedom (Welch-Satterthwaite)
  /// How far the function bends within the uncertainties: the higher-order part of the standard uncertainty over the
  /// first-order part. Above 0.1, rather simulate. Infinite where the function refuses values one uncertainty away.
  double nonlinearity;
  std::array<contribution<Q>, N> inputs;  ///< in the order of the arguments
};

namespace detail {

template <class F, class... Q>
using result_of = std::remove_cvref_t<std::invoke_result_t<F&, const Q&...>>;

inline constexpr limits coverage_limits{"coverage", "", {0.0, 1.0, edge::open, edge::open}};
inline constexpr limits coefficient_limits{"correlation coefficient", "", {-1.0, 1.0}};

/// A symmetric matrix with ones on the diagonal, row by row.
[[nodiscard]] inline std::vector<double> correlation_matrix(std::string_view function, std::size_t size,
                                                            const std::vector<correlation>& pairs) {
  std::vector<double> matrix(size * size, 0.0);
  for (std::size_t i = 0; i < size; ++i) matrix[i * size + i] = 1.0;
  for (const auto& pair : pairs) {
    for (const std::size_t place : {pair.first, pair.second}) {
      if (place >= size) {
        core::fail<invalid_input>(function, "correlated input", static_cast<double>(place), "",
                                  "does not exist; there are " + std::to_string(size) + " inputs, counted from 0");
      }
    }
    if (pair.first == pair.second) {
      core::fail<invalid_input>(function, "correlated input", static_cast<double>(pair.first), "",
                                "is named as both of a pair");
    }
    core::check(function, coefficient_limits, pair.coefficient);
    matrix[pair.first * size + pair.second] = matrix[pair.second * size + pair.first] = pair.coefficient;
  }
  return matrix;
}

/// The lower triangle L with L L^T = matrix (Cholesky); refuses correlations that contradict each other.
[[nodiscard]] inline std::vector<double> cholesky(std::string_view function, std::size_t size,
                                                  const std::vector<double>& matrix) {
  constexpr double slack = 1e-12;
  std::vector<double> lower(size * size, 0.0);
  for (std::size_t i = 0; i < size; ++i) {
    for (std::size_t j = 0; j <= i; ++j) {
      double rest = matrix[i * size + j];
      for (std::size_t k = 0; k < j; ++k) rest -= lower[i * size + k] * lower[j * size + k];
      const double pivot = lower[j * size + j];
      if ((i == j && rest < -slack) || (i != j && pivot == 0.0 && std::fabs(rest) > std::sqrt(slack))) {
        core::fail<invalid_input>(function, "correlation with input", static_cast<double>(i), "",
                                  "contradicts the other correlations: no set of values can have them all");
      }
      lower[i * size + j] = i == j ? (rest > slack ? std::sqrt(rest) : 0.0) : pivot == 0.0 ? 0.0 : rest / pivot;
    }
  }
  return lower;
}

/// The slope along one input, by Ridders' extrapolation (Adv. Eng. Softw. 4:75, 1982): differences with halved steps,
/// extrapolated to step zero until the estimate gets worse. They are central and start at `step`; where the function
/// refuses that far a move they start smaller, and at the very end of its range they are one-sided.
///
/// `moved(dx)` gives the result with the input moved by dx, or nothing where it is refused; `middle` is moved(0).
template <class Moved>
[[nodiscard]] std::optional<double> slope(Moved moved, double middle, double step) {
  double one_sided_step = 0.0;
  bool central = false;
  for (int halvings = 0; halvings < 12 && !central; ++halvings) {
    const bool up = moved(step).has_value();
    const bool down = moved(-step).has_value();
    central = up && down;
    if (one_sided_step == 0.0 && up != down) one_sided_step = up ? step : -step;
    if (!central) step *= 0.5;
  }
  if (!central && one_sided_step == 0.0) return std::nullopt;
  if (!central) step = one_sided_step;

  constexpr std::size_t levels = 12;
  const double order = central ? 4.0 : 2.0;  // by which a halved step reduces the leading error
  std::array<double, levels> before{};
  double best = 0.0;
  double error = std::numeric_limits<double>::infinity();
  std::size_t rows = 0;
  for (std::size_t level = 0; level < levels; ++level, step *= 0.5) {
    const auto ahead = moved(step);
    const auto behind = central ? moved(-step) : std::optional{middle};
    if (!ahead || !behind) continue;
    std::array<double, levels> now{(*ahead - *behind) / (central ? 2.0 * step : step)};
    if (rows == 0) best = now[0];
    double weight = order;
    for (std::size_t k = 1; k <= rows; ++k, weight *= order) {
      now[k] = (weight * now[k - 1] - before[k - 1]) / (weight - 1.0);
      const double change = std::fmax(std::fabs(now[k] - now[k - 1]), std::fabs(now[k] - before[k - 1]));
      if (change <= error) error = change, best = now[k];
    }
    if (rows > 0 && (error <= 1e-14 * std::fabs(best) || std::fabs(now[rows] - before[rows - 1]) > 2.0 * error)) break;
    before = now;
    ++rows;
  }
  return best;
}

/// `propagated` in numbers.
template <std::size_t N>
struct raw_propagated {
  double value = 0.0;
  double uncertainty = 0.0;
  double degrees_of_freedom = 0.0;
  double factor = 0.0;
  double nonlinearity = 0.0;
  std::array<double, N> effects{};  ///< slope times uncertainty
  std::array<double, N> shares{};
};

/// First-order propagation in numbers. `f(x)` may throw and may give what is not finite.
template <std::size_t N, class F>
[[nodiscard]] raw_propagated<N> propagate_numbers(const propagation& how, F f, const std::array<double, N>& x,
                                                  const std::array<double, N>& u,
                                                  const std::array<double, N>& degrees_of_freedom) {
  constexpr std::string_view here = "tankwright::numerics::propagate";
  core::check(here, coverage_limits, how.coverage);
  const auto r = correlation_matrix(here, N, how.correlations);
  (void)cholesky(here, N, r);  // only to refuse contradictions

  const auto finite = [&](const std::array<double, N>& at) {
    const double result = f(at);
    core::check(here, {"result", "", core::any_double}, result);
    return result;
  };
  const auto attempt = [&](const std::array<double, N>& at) -> std::optional<double> {
    try {
      return finite(at);
    } catch (const error&) {
      return std::nullopt;
    }
  };
  raw_propagated<N> out;
  out.value = finite(x);

  for (std::size_t i = 0; i < N; ++i) {
    if (u[i] == 0.0) continue;
    const auto moved = [&](double by) {
      auto at = x;
      at[i] += by;
      return attempt(at);
    };
    const double step = std::fmax(u[i], 1e-5 * std::fabs(x[i]));
    const auto found = slope(moved, out.value, step);
    if (!found) {
      auto at = x;
      at[i] += u[i];
      (void)finite(at);  // throws what the function has against it
      core::fail<no_convergence>(here, "input", static_cast<double>(i), "", "can be moved neither up nor down");
    }
    out.effects[i] = *found * u[i];
  }

  double variance = 0.0;
  double squares_over_degrees = 0.0;
  bool correlated = false;
  double least_degrees = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < N; ++i) {
    for (std::size_t j = 0; j < N; ++j) {
      const double part = r[i * N + j] * out.effects[i] * out.effects[j];
      out.shares[i] += part;
      correlated = correlated || (i != j && part != 0.0);
    }
    variance += out.shares[i];
    squares_over_degrees += std::pow(out.effects[i], 4) / degrees_of_freedom[i];
    if (out.effects[i] != 0.0) least_degrees = std::fmin(least_degrees, degrees_of_freedom[i]);
  }
  variance = std::fmax(variance, 0.0);
  for (double& share : out.shares) share = variance > 0.0 ? share / variance : 0.0;
  out.uncertainty = std::sqrt(variance);
  // Welch-Satterthwaite holds for independent inputs; with correlations, the least of the inputs is safe.
  out.degrees_of_freedom =
      correlated || squares_over_degrees == 0.0 ? least_degrees : variance * variance / squares_over_degrees;
  out.factor = student_t_quantile(0.5 + 0.5 * how.coverage, std::fmax(1.0, std::floor(out.degrees_of_freedom)));

  // How far f leaves the tangent within the uncertainties: its curvature, what the slope misses of the way across, and
  // for pairs of inputs what they do together.
  double bend = 0.0;
  std::array<double, N> up{};
  for (std::size_t i = 0; i < N; ++i) {
    if (u[i] == 0.0) continue;
    const auto at = [&](double by_i, std::size_t j, double by_j) {
      auto point = x;
      point[i] += by_i;
      point[j] += by_j;
      return attempt(point).value_or(std::numeric_limits<double>::infinity());
    };
    up[i] = at(u[i], i, 0.0);
    const double down = at(-u[i], i, 0.0);
    const double curvature = up[i] + down - 2.0 * out.value;
    const double missed = 0.5 * (up[i] - down) - out.effects[i];
    bend += 0.5 * curvature * curvature + missed * missed;
    for (std::size_t j = 0; j < i; ++j) {
      if (u[j] == 0.0) continue;
      const double joint = at(u[i], j, u[j]) - up[i] - up[j] + out.value;
      bend += joint * joint;
    }
  }
  out.nonlinearity = bend == 0.0           ? 0.0
                     : std::isfinite(bend) ? std::sqrt(bend) / out.uncertainty
                                           : std::numeric_limits<double>::infinity();
  return out;
}

/// Call `f` with the quantities that the numbers stand for; its result as a number.
template <class F, class... Q, std::size_t... I>
[[nodiscard]] double call_with_numbers(F& f, const std::array<double, sizeof...(Q)>& x, std::index_sequence<I...>) {
  return core::si_number<result_of<F, Q...>>(f(core::from_si_number<Q>(x[I])...));
}

}  // namespace detail

/// Propagate measured values through a function, to first order.
///
///   u^2 = sum_i sum_j r_ij c_i u_i c_j u_j,   c_i = df/dx_i;   low, high = y -/+ k u,   k = t((1 + p)/2, nu_eff)
///
/// The slopes are found numerically with a step that is chosen as it goes. The degrees of freedom nu_eff are cut to a
/// whole number, as the GUM does. A function that refuses values near the measured one is met with smaller or
/// one-sided steps.
///
/// @param how    coverage (0 to 1, default 0.95) and correlations between inputs
/// @param f      any callable on the quantities, in the order of the inputs; called about 10 times for each input
/// @param inputs measured values
/// @return       value, standard uncertainty, coverage interval, share of each input, and how far f bends
/// @throws       invalid_input for a bad input or contradicting correlations; what f throws at the measured values
/// @accuracy     slopes to about 1e-10 relative where f is smooth and keeps its digits; first order, see `nonlinearity`
/// @source       JCGM 100:2008, 5.1.2, 5.2.2, G.4
template <class F, class... Q>
[[nodiscard]] auto propagate(const propagation& how, F&& f, const measured<Q>&... inputs) {
  using R = detail::result_of<F, Q...>;
  constexpr std::size_t count = sizeof...(Q);
  (core::check_measured("tankwright::numerics::propagate", inputs), ...);
  const auto numbers = [&](const std::array<double, count>& x) {
    return detail::call_with_numbers<F, Q...>(f, x, std::index_sequence_for<Q...>{});
  };
  const detail::raw_propagated<count> raw =
      detail::propagate_numbers<count>(how, numbers, {core::si_number(inputs.value.get())...},
                                       {core::si_number(inputs.uncertainty.get())...}, {inputs.degrees_of_freedom...});

  const auto step = [](double si) { return core::from_si_number<step_of<R>>(si); };
  const auto point = [](double si) { return core::from_si_number<R>(si); };
  const double half_width = raw.factor * raw.uncertainty;
  const auto contributions = [&]<std::size_t... I>(std::index_sequence<I...>) {
    return std::array<contribution<R>, count>{contribution<R>{step(std::fabs(raw.effects[I])), raw.shares[I]}...};
  };
  return propagated<R, count>{point(raw.value),
                              step(raw.uncertainty),
                              point(raw.value - half_width),
                              point(raw.value + half_width),
                              how.coverage,
                              raw.factor,
                              raw.degrees_of_freedom,
                              raw.nonlinearity,
                              contributions(std::make_index_sequence<count>{})};
}

/// The same for independent inputs and a coverage of 95 %.
///
///   u^2 = sum_i (c_i u_i)^2
///
/// @param f      any callable on the quantities, in the order of the inputs
/// @param inputs measured values
/// @return       value, standard uncertainty, coverage interval, share of each input, and how far f bends
/// @throws       invalid_input for a bad input; what f throws at the measured values
/// @accuracy     slopes to about 1e-10 relative where f is smooth and keeps its digits; first order, see `nonlinearity`
/// @source       JCGM 100:2008, 5.1.2, G.4
template <class F, class... Q>
requires std::invocable<F&, const Q&...>
[[nodiscard]] auto propagate(F&& f, const measured<Q>&... inputs) {
  return propagate(propagation{}, std::forward<F>(f), inputs...);
}

/// A propagated result as the input of the next step.
///
/// @param result of `propagate`
/// @return       a normally spread measured value with its effective degrees of freedom
/// @throws       nothing of its own
/// @accuracy     exact; what the result shares with other inputs is lost: where those meet again, propagate the whole
/// @source       JCGM 100:2008, 4.3.3
template <class Q, std::size_t N>
[[nodiscard]] measured<Q> as_measured(const propagated<Q, N>& result) {
  return {.value = result.value, .uncertainty = result.uncertainty, .degrees_of_freedom = result.degrees_of_freedom};
}

/// A propagated result as an estimate with its coverage interval as the band.
///
/// @param result of `propagate`
/// @return       low, value and high
/// @throws       nothing of its own
/// @accuracy     exact
/// @source       JCGM 100:2008, 6.2
template <class Q, std::size_t N>
[[nodiscard]] estimate<Q> as_estimate(const propagated<Q, N>& result) {
  return {result.low, result.value, result.high, "uncertainty of the measured inputs"};
}

}  // namespace tankwright::numerics
