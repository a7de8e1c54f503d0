// SPDX-License-Identifier: BSL-1.0
/// @file
/// How sure is the result, when the function bends or a probability is asked for? Propagation of measured values by
/// simulation, after JCGM 101: draw the inputs many times, and look at what comes out.
///
/// The same seed gives the same result, on any machine and in any thread; there is no state.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numbers>
#include <string>
#include <utility>
#include <vector>

#include <tankwright/numerics/counter_random.hpp>
#include <tankwright/numerics/uncertainty.hpp>

namespace tankwright::numerics {

inline constexpr citation gum_supplement_1{
    "BIPM, IEC, IFCC, ILAC, ISO, IUPAC, IUPAP and OIML", 2008,
    "Evaluation of measurement data: Supplement 1 to the GUM, propagation of distributions using a Monte Carlo method",
    "JCGM 101:2008; clauses 6 and 7", standing::secondary};

/// How to simulate. `simulate({.samples = 1'000'000, .seed = 7}, f, a, b)`.
struct simulation {
  std::size_t samples = 100'000;
  std::uint64_t seed = 1;
  double coverage = 0.95;
  /// Pairs that are not named are independent. The coefficient is that of the normal variables behind the inputs (a
  /// Gaussian copula): exact for normal inputs, up to 4 % too large for what rectangular ones then show.
  std::vector<correlation> correlations{};
  /// The largest share of draws that the function may refuse with an error; they are then left out and counted.
  proportion refused_allowed = fraction(0.0);
};

/// What came out of a simulation.
template <class Q, std::size_t N>
struct simulated {
  Q value;                 ///< mean of the results
  step_of<Q> uncertainty;  ///< their standard deviation
  Q low;                   ///< coverage interval with as much probability below it as above
  Q high;
  Q shortest_low;  ///< the shortest interval of the same coverage; another one where the results lean to a side
  Q shortest_high;
  double coverage;
  std::array<double, N> shares;  ///< of the variance, by each input alone, as far as the result follows it in a line
  std::size_t refused;           ///< draws that the function refused
  std::vector<double> results;   ///< in SI, rising

  /// The share of results below a limit.
  [[nodiscard]] double probability_below(const Q& limit) const {
    const auto end = std::lower_bound(results.begin(), results.end(), core::si_number(limit));
    return static_cast<double>(end - results.begin()) / static_cast<double>(results.size());
  }
  /// The value that a share of the results does not exceed.
  [[nodiscard]] Q quantile(proportion share) const {
    core::check("tankwright::numerics::simulated::quantile", {"share", "", zero_to_one}, share.value());
    const double place = share.value() * static_cast<double>(results.size() - 1);
    return core::from_si_number<Q>(results[static_cast<std::size_t>(std::lround(place))]);
  }
};

namespace detail {

/// One input in numbers.
struct raw_input {
  double value;
  double uncertainty;
  spread shape;
  double degrees_of_freedom;
  bool correlated = false;

  /// Number n of this input, drawn on its own.
  [[nodiscard]] double drawn(const counter_random& random, std::uint64_t n) const noexcept {
    switch (shape) {
      case spread::normal:
        return value + uncertainty * random.normal(n);
      case spread::student:
        return value + uncertainty * random.student(n, degrees_of_freedom);
      case spread::rectangular:
        return value + uncertainty * std::sqrt(3.0) * (2.0 * random.uniform(2 * n) - 1.0);
      case spread::triangular:
        return value + uncertainty * std::sqrt(6.0) * (random.uniform(2 * n) + random.uniform(2 * n + 1) - 1.0);
      case spread::arcsine:
        return value + uncertainty * std::sqrt(2.0) * std::cos(std::numbers::pi * random.uniform(2 * n));
    }
    return value;
  }

  /// The value that lies as deep in this input's spread as z does in the normal one.
  [[nodiscard]] double at_normal(double z) const noexcept {
    const double p = 0.5 * std::erfc(-z / std::numbers::sqrt2);  // probability below z
    switch (shape) {
      case spread::rectangular:
        return value + uncertainty * std::sqrt(3.0) * (2.0 * p - 1.0);
      case spread::triangular:
        return value +
               uncertainty * std::sqrt(6.0) * (p < 0.5 ? std::sqrt(2.0 * p) - 1.0 : 1.0 - std::sqrt(2.0 - 2.0 * p));
      case spread::arcsine:
        return value + uncertainty * std::sqrt(2.0) * std::sin(std::numbers::pi * (p - 0.5));
      default:
        return value + uncertainty * z;
    }
  }
};

/// Sums for the variance of the results and the share that follows each input.
template <std::size_t N>
class running_moments {
 public:
  void add(const std::array<double, N>& x, double y) noexcept {
    count_ += 1.0;
    const double dy = y - mean_y_;
    mean_y_ += dy / count_;
    yy_ += dy * (y - mean_y_);
    for (std::size_t i = 0; i < N; ++i) {
      const double dx = x[i] - mean_x_[i];
      mean_x_[i] += dx / count_;
      xx_[i] += dx * (x[i] - mean_x_[i]);
      xy_[i] += dx * (y - mean_y_);
    }
  }
  [[nodiscard]] double mean() const noexcept { return mean_y_; }
  [[nodiscard]] double deviation() const noexcept { return std::sqrt(yy_ / (count_ - 1.0)); }
  [[nodiscard]] double share(std::size_t i) const noexcept {
    return xx_[i] > 0.0 && yy_ > 0.0 ? xy_[i] * xy_[i] / (xx_[i] * yy_) : 0.0;
  }

 private:
  double count_ = 0.0;
  double mean_y_ = 0.0;
  double yy_ = 0.0;
  std::array<double, N> mean_x_{}, xx_{}, xy_{};
};

/// Draws all inputs of one sample.
template <std::size_t N>
class sampler {
 public:
  sampler(std::string_view function, const simulation& how, const std::array<raw_input, N>& inputs)
      : random_{how.seed},
        inputs_{inputs},
        lower_{cholesky(function, N, correlation_matrix(function, N, how.correlations))} {
    for (const auto& pair : how.correlations) {
      for (const std::size_t place : {pair.first, pair.second}) {
        inputs_[place].correlated = true;
        if (inputs_[place].shape == spread::student) {
          core::fail<invalid_input>(
              function, "correlated input", static_cast<double>(place), "",
              "is the mean of a few readings; give correlated means as normal (with_uncertainty)");
        }
      }
    }
  }

  [[nodiscard]] std::array<double, N> operator()(std::size_t sample) const noexcept {
    const std::uint64_t first = static_cast<std::uint64_t>(sample) * N;
    std::array<double, N> x{}, z{};
    for (std::size_t i = 0; i < N; ++i) {
      if (!inputs_[i].correlated) {
        x[i] = inputs_[i].drawn(random_, first + i);
        continue;
      }
      z[i] = random_.normal(first + i);
      double joint = 0.0;
      for (std::size_t k = 0; k <= i; ++k) joint += lower_[i * N + k] * z[k];
      x[i] = inputs_[i].at_normal(joint);
    }
    return x;
  }

 private:
  counter_random random_;
  std::array<raw_input, N> inputs_;
  std::vector<double> lower_;
};

inline constexpr limits samples_limits{"samples", "", {100.0, 1e9}};

}  // namespace detail

/// Propagate measured values through a function by simulation.
///
///   y_s = f(x_1s, ..., x_Ns),   s = 1 ... samples
///
/// @param how    number of samples, seed, coverage, correlations, and what share of draws the function may refuse
/// @param f      any callable on the quantities, in the order of the inputs; called once for each sample
/// @param inputs measured values with their spreads; those of a few readings follow Student's t
/// @return       mean, standard deviation, two coverage intervals, shares, and all results in rising order
/// @throws       invalid_input for a bad input, contradicting correlations, or samples too few for the coverage; the
///               error of f when it refuses more draws than allowed
/// @accuracy     with 100 000 samples: mean to about 0.3 % of the uncertainty, the uncertainty to 0.2 %, the ends of a
///               95 % interval to 1 % of it
/// @source       JCGM 101:2008, 6.4, 7.5 to 7.7
template <class F, class... Q>
[[nodiscard]] auto simulate(const simulation& how, F&& f, const measured<Q>&... inputs) {
  using R = detail::result_of<F, Q...>;
  constexpr std::size_t count = sizeof...(Q);
  constexpr std::string_view here = "tankwright::numerics::simulate";
  (core::check_measured(here, inputs), ...);
  core::check(here, detail::coverage_limits, how.coverage);
  core::check(here, detail::samples_limits, static_cast<double>(how.samples));
  const detail::sampler<count> draw{
      here,
      how,
      {detail::raw_input{core::si_number(inputs.value.get()), core::si_number(inputs.uncertainty.get()), inputs.shape,
                         inputs.degrees_of_freedom}...}};
  std::vector<double> results;
  results.reserve(how.samples);
  detail::running_moments<count> moments;
  const double most_refused = how.refused_allowed.value() * static_cast<double>(how.samples);
  for (std::size_t s = 0; s < how.samples; ++s) {
    const auto x = draw(s);
    try {
      const double y = detail::call_with_numbers<F, Q...>(f, x, std::index_sequence_for<Q...>{});
      core::check(here, {"result", "", core::any_double}, y);
      results.push_back(y);
      moments.add(x, y);
    } catch (const error&) {
      if (static_cast<double>(s + 1 - results.size()) > most_refused) throw;
    }
  }
  // An interval reaches from one result to the one `inside` places on (JCGM 101, 7.7).
  const std::size_t size = results.size();
  const auto inside = static_cast<std::size_t>(std::lround(how.coverage * static_cast<double>(size)));
  if (inside < 1 || size - inside < 2) {
    core::fail<invalid_input>(here, "samples", static_cast<double>(how.samples), "", "are too few for the coverage");
  }
  std::sort(results.begin(), results.end());
  std::size_t shortest = 0;
  for (std::size_t start = 1; start + inside < size; ++start) {
    if (results[start + inside] - results[start] < results[shortest + inside] - results[shortest]) shortest = start;
  }
  const std::size_t below = (size - inside + 1) / 2 - 1;
  const auto point = [](double si) { return core::from_si_number<R>(si); };
  simulated<R, count> out{.value = point(moments.mean()),
                          .uncertainty = core::from_si_number<step_of<R>>(moments.deviation()),
                          .low = point(results[below]),
                          .high = point(results[below + inside]),
                          .shortest_low = point(results[shortest]),
                          .shortest_high = point(results[shortest + inside]),
                          .coverage = how.coverage,
                          .shares = {},
                          .refused = how.samples - size,
                          .results = std::move(results)};
  for (std::size_t i = 0; i < count; ++i) out.shares[i] = moments.share(i);
  return out;
}

/// A simulated result as an estimate with its coverage interval as the band.
///
/// @param result of `simulate`
/// @return       low, mean and high
/// @throws       nothing of its own
/// @accuracy     exact
/// @source       JCGM 101:2008, 5.3
template <class Q, std::size_t N>
[[nodiscard]] estimate<Q> as_estimate(const simulated<Q, N>& result) {
  return {result.low, result.value, result.high, "uncertainty of the measured inputs"};
}

}  // namespace tankwright::numerics
