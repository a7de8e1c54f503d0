// SPDX-License-Identifier: BSL-1.0
/// @file
/// Which part leaks, is it the evaporation, and how much is a drip? Several parts tested at once, a test with the cover
/// on and off, and drops counted by the minute.
#pragma once

#include <cmath>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <tankwright/core/citation.hpp>
#include <tankwright/vessel/leak_test.hpp>
#include <vector>

namespace tankwright::vessel {

/// One of several parts that were tested at the same time, shut off from the others.
struct part_leak {
  std::string label;
  leak_test_result result;         ///< with limits that hold for all parts together
  proportion chance_without_leak;  ///< that the tightest of so many tight parts gives such readings
};

struct parts_result {
  std::vector<part_leak> parts;  ///< in the order given
  estimate<flow_rate> total;     ///< of all parts, with its one-sided limits
  leak_answer answer;            ///< for the total
  tankwright::caution caution;
};

namespace detail {

/// A sum of independent errors: its size, and the degrees of freedom behind it (Welch and Satterthwaite).
class pooled_error {
 public:
  void add(double error, double freedom) noexcept {
    squares_ += error * error;
    fourths_ += error * error * error * error / freedom;
  }
  [[nodiscard]] double size() const noexcept { return std::sqrt(squares_); }
  /// No error is zero: a gauge has steps.
  [[nodiscard]] double freedom() const noexcept { return squares_ * squares_ / fourths_; }

 private:
  double squares_ = 0.0, fourths_ = 0.0;
};

[[nodiscard]] inline double slope_error(const leak_test_result& r) noexcept {
  return (r.fall.high - r.fall.central).value();
}

}  // namespace detail

/// Several leak tests done at the same time: display, sump, a return run that was capped and filled.
///
///   each part by `read_leak_test` with confidence 1 - (1 - c)/k for k parts, so that all limits hold together with c;
///   total = sum of leaks,  u^2 = sum of (A s)^2 + (sum of A u_E)^2,  t with the degrees of Welch and Satterthwaite
///
/// @param tests 1 to 100 tests as for `read_leak_test`, all with the confidence and the leak that matters of the first.
///              The parts must be shut off from each other: connected vessels are one surface in one test
/// @return      each part with its limits, the total and its answer
/// @throws      invalid_input (names the part), out_of_range (temperature)
/// @accuracy    as `read_leak_test`; the evaporation of all parts is taken to err the same way
/// @source      Bonferroni's inequality; Welch-Satterthwaite formula, GUM (JCGM 100:2008), G.4
[[nodiscard]] inline parts_result read_leak_tests(std::span<const leak_test> tests) {
  constexpr std::string_view here = "tankwright::vessel::read_leak_tests";
  const double k = static_cast<double>(tests.size());
  core::check(here, {"number of parts", "", {1.0, 100.0}}, k);
  const proportion confidence = tests[0].confidence;
  core::check_element(here, tests[0].label, detail::confidence_limits, confidence.value());
  parts_result all{{}, {}, leak_answer::undecided, leak_test_caution};
  detail::pooled_error slopes;
  double sum = 0.0, evaporation = 0.0;
  for (const leak_test& given : tests) {
    leak_test test = given;
    test.confidence = fraction(1.0 - (1.0 - confidence.value()) / k);
    test.leak_that_matters = tests[0].leak_that_matters;
    leak_test_result result = read_leak_test(test);
    const double surface = test.surface->value(), slope = detail::slope_error(result);
    slopes.add(surface * slope, static_cast<double>(result.degrees_of_freedom));
    const double whole = result.standard_error.value();
    evaporation += surface * std::sqrt(std::fmax(whole * whole - slope * slope, 0.0));
    sum += result.leak.central.value();
    const double chance = std::fmin(k * result.chance_without_leak.value(), 1.0);
    all.parts.push_back({test.label, std::move(result), fraction(chance)});
  }
  const double half =
      numerics::student_t_quantile(confidence.value(), slopes.freedom()) * std::hypot(slopes.size(), evaporation);
  all.total = {flow_rate::from_value(sum - half), flow_rate::from_value(sum), flow_rate::from_value(sum + half),
               "one-sided limits at the chosen confidence"};
  all.answer = detail::answer_of(all.total, tests[0].leak_that_matters);
  return all;
}

/// The same tank tested twice: covered, and open.
struct cover_comparison {
  required<leak_test> covered;
  required<leak_test> open;
  required<estimate<proportion>> let_through;  ///< part of the evaporation that the cover lets pass; 0 for film that
                                               ///< lies on the water and is taped down
};

struct cover_result {
  estimate<flow_rate> leak;        ///< with its one-sided limits
  estimate<velocity> evaporation;  ///< of the open surface, with one standard error
  proportion chance_without_leak;
  leak_answer answer;
  tankwright::caution caution;
};

/// Leak and evaporation told apart by covering the water for a while: no evaporation needs to be known.
///
///   fall_covered = L/A + f E,  fall_open = L/A + E;   L/A = (fall_covered - f fall_open)/(1 - f),  E from the
///   difference;   u^2 = (s_c^2 + f^2 s_o^2)/(1 - f)^2 + (E u_f/(1 - f))^2
///
/// @param pair two tests as for `read_leak_test`, of the same surface, without pan or evaporation, in the same air; the
///             part f that the cover lets through, 0 to 0.9. Confidence and leak that matters of the covered test count
/// @return     leak with limits, evaporation, the answer
/// @throws     invalid_input (names the test), out_of_range (temperature)
/// @accuracy   exact where the air is the same in both tests; f is taken as a rectangle over its band
/// @source     two linear equations; GUM (JCGM 100:2008), 5.1.2 and G.4
[[nodiscard]] inline cover_result compare_covered(const cover_comparison& pair) {
  constexpr std::string_view here = "tankwright::vessel::compare_covered";
  const leak_test &covered = pair.covered, &open = pair.open;
  detail::check_estimate(here, covered.label, {"part that the cover lets through", "", {0.0, 0.9}},
                         pair.let_through.get());
  for (const leak_test* test : {&covered, &open}) {
    if (test->evaporation || (!test->readings.empty() && test->readings[0].pan)) {
      core::refuse_element(here, test->label,
                           "has its evaporation given or a pan; here the two tests find the evaporation themselves");
    }
  }
  if (covered.surface->value() != open.surface->value()) {
    core::refuse_element(here, open.label, "has another surface than the covered test; compare the same water");
  }
  const leak_test_result c = read_leak_test(covered), o = read_leak_test(open);
  const auto& f_band = pair.let_through.get();
  const double f = f_band.central.value(), u_f = (f_band.high.value() - f_band.low.value()) / std::sqrt(12.0);
  const double surface = covered.surface->value(), part = 1.0 - f;
  const double fall_c = c.fall.central.value(), fall_o = o.fall.central.value();
  const double s_c = detail::slope_error(c), s_o = detail::slope_error(o);
  const double e = (fall_o - fall_c) / part, leak = (fall_c - f * fall_o) / part;
  detail::pooled_error errors;
  errors.add(s_c / part, static_cast<double>(c.degrees_of_freedom));
  errors.add(f * s_o / part, static_cast<double>(o.degrees_of_freedom));
  const double by_cover = e * u_f / part, freedom = errors.freedom();
  const double u = std::hypot(errors.size(), by_cover);
  const double half = surface * u * numerics::student_t_quantile(covered.confidence.value(), freedom);
  const double u_e = std::hypot(std::hypot(s_c, s_o) / part, by_cover);
  const auto flow = [](double q) { return flow_rate::from_value(q); };
  const auto rate = [](double v) { return velocity::from_value(v); };
  const estimate<flow_rate> band{flow(surface * leak - half), flow(surface * leak), flow(surface * leak + half),
                                 "one-sided limits at the chosen confidence"};
  return {band,
          {rate(e - u_e), rate(e), rate(e + u_e), "one standard error"},
          fraction(numerics::student_t_above(leak / u, freedom)),
          detail::answer_of(band, covered.leak_that_matters),
          leak_test_caution};
}

/// Volume of a drop of water: twenty to the millilitre is the standard drop of pharmacies (from memory); one that hangs
/// from a narrow tip is smaller, one from a broad edge up to twice as large (weight held by surface tension).
inline constexpr estimate<volume> water_drop{
    millilitres(0.03), millilitres(0.05), millilitres(0.10),
    "20 drops a millilitre, less from a tip, more from a broad edge; from memory"};

/// Drops counted under a seam or a fitting.
struct counted_drops {
  required<int> drops;  ///< [1]
  required<duration> over;
  estimate<volume> drop = water_drop;  ///< count some into a measuring spoon to do better
};

struct drip_result {
  estimate<flow_rate> leak;
  tankwright::caution caution;
};

/// A drip as a flow: drops by the minute as litres a day.
///
///   Q = n V / t, counted to one drop either way;  1 drop a minute is 0.07 L/d
///
/// @param count drops n, 1 to 100 000; the time t [s] > 0, up to ten years; volume V of a drop [m^3], 1 to 1000 uL
/// @return      leak [m^3/s] with its band
/// @throws      invalid_input
/// @accuracy    a factor of two for drops that were not measured
/// @source      definition; volume of a drop from memory
[[nodiscard]] inline drip_result drip_rate(const counted_drops& count) {
  constexpr std::string_view here = "tankwright::vessel::drip_rate";
  const double n = count.drops.get(), t = count.over->value();
  core::check(here, {"drops", "", {1.0, 1e5}}, n);
  core::check(here, {"time", "s", {1.0, 3.2e8}}, t);
  detail::check_estimate(here, "drip", {"volume of a drop", "m3", {1e-9, 1e-6}}, count.drop);
  const auto flow = [&](double drops, volume v) { return flow_rate::from_value(drops * v.value() / t); };
  return {
      {flow(n - 1.0, count.drop.low), flow(n, count.drop.central), flow(n + 1.0, count.drop.high), count.drop.reason},
      leak_test_caution};
}

}  // namespace tankwright::vessel
