// SPDX-License-Identifier: BSL-1.0
/// @file
/// How many days, how fine a gauge? Planning a hold test so that it can see the leak that matters.
#pragma once

#include <cmath>
#include <limits>
#include <tankwright/commissioning/hold_test.hpp>
#include <utility>

namespace tankwright::commissioning {

/// A hold test that is still to be done, read evenly from its first to its last hour.
struct hold_plan {
  required<area> surface;
  required<length> resolution;  ///< smallest step the gauge shows
  length scatter{};             ///< of a reading beyond its rounding: ripples, parallax; standard deviation
  double readings_per_day = 4.0;
  bool pan = false;                        ///< an evaporation pan is read each time, so evaporation drops out
  estimate<velocity> evaporation{};        ///< to be deducted where there is no pan
  proportion confidence = fraction(0.95);  ///< that a tight tank is not called leaking
  proportion power = fraction(0.95);       ///< that the leak is found
};

namespace detail {

inline constexpr limits readings_per_day_limits{"readings per day", "1/d", positive};
inline constexpr limits power_limits{"power", "", {0.5, 1.0, edge::closed, edge::open}};
inline constexpr limits test_duration_limits{"duration", "d", positive};
inline constexpr limits leak_limits{"leak", "m3/s", positive};
inline constexpr limits scatter_limits{"scatter", "m", not_negative};
inline constexpr limits evaporation_limits{"evaporation", "m/s", not_negative};

inline void check_plan(std::string_view here, const hold_plan& plan) {
  core::check(here, surface_limits, plan.surface->value());
  core::check(here, resolution_limits, plan.resolution->value());
  core::check(here, readings_per_day_limits, plan.readings_per_day);
  core::check(here, confidence_limits, plan.confidence.value());
  core::check(here, power_limits, plan.power.value());
  core::check(here, scatter_limits, plan.scatter.value());
  core::check(here, evaporation_limits, plan.evaporation.low.value());
}

/// Number of evenly spaced readings in `days`, the first and the last included; three at least.
[[nodiscard]] inline double readings_in(double days, double per_day) noexcept {
  return std::fmax(3.0, std::floor(days * per_day) + 1.0);
}

/// Standard error [m/s] of the fall that `days` of readings with scatter `sigma` [m] find.
[[nodiscard]] inline double fall_error(const hold_plan& plan, double days, double sigma) noexcept {
  const double n = readings_in(days, plan.readings_per_day);
  const double seconds = days * 86400.0;
  const double sxx = seconds * seconds * n * (n + 1.0) / (12.0 * (n - 1.0));  // evenly spaced
  const double evaporation_error =
      plan.pan ? 0.0 : (plan.evaporation.high - plan.evaporation.low).value() / std::sqrt(12.0);
  return std::hypot(sigma / std::sqrt(sxx), evaporation_error);
}

/// How many standard errors a leak must be above none to be found: t(confidence) + t(power).
[[nodiscard]] inline double errors_to_see(const hold_plan& plan, double freedom) {
  const double confidence = numerics::student_t_quantile(plan.confidence.value(), freedom);
  return confidence + (plan.power == plan.confidence ? confidence : numerics::student_t_quantile(plan.power.value(), freedom));
}

/// Smallest leak [m^3/s] that `days` of readings with scatter `sigma` [m] find.
[[nodiscard]] inline double detectable(const hold_plan& plan, double days, double sigma) {
  const double freedom = readings_in(days, plan.readings_per_day) - 2.0;
  return plan.surface->value() * fall_error(plan, days, sigma) * errors_to_see(plan, freedom);
}

/// Standard deviation [m] of one reading, of the difference to the pan where there is one.
[[nodiscard]] inline double plan_scatter(const hold_plan& plan, double resolution) noexcept {
  return std::hypot(rounding_scatter(resolution), plan.scatter.value()) * (plan.pan ? std::sqrt(2.0) : 1.0);
}

}  // namespace detail

/// Smallest leak that a planned hold test finds.
///
///   Q = (t(confidence) + t(power)) A u,  u^2 = s^2 / Sxx + u_E^2,
///   Sxx = D^2 n (n + 1) / (12 (n - 1)) for n even readings over D; t with n - 2 degrees of freedom
///
/// @param plan   surface A > 0, resolution > 0, readings per day > 0, scatter >= 0, confidence 0.5 to 1, power 0.5 to 1
/// @param lasting D > 0
/// @return       leak [m^3/s]
/// @throws       invalid_input
/// @accuracy     the power is approximated by two central t quantiles: within 0.01 of the exact one for n >= 10
/// @source       the sum of two t quantiles times the standard error, usual in tank tightness testing (from memory)
[[nodiscard]] inline flow_rate smallest_leak_seen(const hold_plan& plan, duration lasting) {
  constexpr std::string_view here = "tankwright::commissioning::smallest_leak_seen";
  detail::check_plan(here, plan);
  core::check(here, detail::test_duration_limits, in_days(lasting));
  return flow_rate::from_value(
      detail::detectable(plan, in_days(lasting), detail::plan_scatter(plan, plan.resolution->value())));
}

/// How many days of readings find a leak.
///
///   the least D with smallest_leak_seen(D) <= leak, in steps of one reading, up to a year
///
/// @param plan as for `smallest_leak_seen`
/// @param leak the leak to find, > 0
/// @return     the days; nothing when no number of days is enough because the evaporation is too uncertain
/// @throws     invalid_input
/// @accuracy   as `smallest_leak_seen`
/// @source     as `smallest_leak_seen`
[[nodiscard]] inline std::optional<duration> days_to_see(const hold_plan& plan, flow_rate leak) {
  constexpr std::string_view here = "tankwright::commissioning::days_to_see";
  detail::check_plan(here, plan);
  core::check(here, detail::leak_limits, leak.value());
  const double sigma = detail::plan_scatter(plan, plan.resolution->value());
  const auto seen = [&](double steps) {
    return detail::detectable(plan, steps / plan.readings_per_day, sigma) <= leak.value();
  };
  const double most = 366.0 * plan.readings_per_day;
  if (!seen(most)) return std::nullopt;
  if (seen(2.0)) return days(2.0 / plan.readings_per_day);
  const auto halve = [](double too_few, double enough, auto sees) {
    while (enough - too_few > 1.0) {
      const double middle = std::floor((enough + too_few) / 2.0);
      (sees(middle) ? enough : too_few) = middle;
    }
    return std::pair{too_few, enough};
  };
  // With the normal law instead of Student's it takes a few readings less: from there on, in doubled strides.
  const double normal = detail::errors_to_see(plan, std::numeric_limits<double>::infinity());
  double too_few = halve(1.0, most, [&](double steps) {
                     const double error = detail::fall_error(plan, steps / plan.readings_per_day, sigma);
                     return plan.surface->value() * error * normal <= leak.value();
                   }).first;
  double stride = 1.0, enough = std::fmin(too_few + stride, most);
  while (!seen(enough)) {
    too_few = enough;
    stride *= 2.0;
    enough = std::fmin(too_few + stride, most);
  }
  enough = halve(too_few, enough, seen).second;
  return days(std::ceil(enough) / plan.readings_per_day);
}

/// How coarse a gauge may be and still find a leak in a given time.
///
///   from smallest_leak_seen = leak, solved for the resolution: s^2 = (Q / (A (t + t)))^2 - u_E^2, times Sxx
///
/// @param plan    as for `smallest_leak_seen`; its own resolution is not used
/// @param lasting length of the test, > 0
/// @param leak    the leak to find, > 0
/// @return        the coarsest resolution [m]; nothing when even a perfect gauge would not do
/// @throws        invalid_input
/// @accuracy      as `smallest_leak_seen`
/// @source        as `smallest_leak_seen`
[[nodiscard]] inline std::optional<length> gauge_to_see(const hold_plan& plan, duration lasting, flow_rate leak) {
  constexpr std::string_view here = "tankwright::commissioning::gauge_to_see";
  detail::check_plan(here, plan);
  core::check(here, detail::test_duration_limits, in_days(lasting));
  core::check(here, detail::leak_limits, leak.value());
  const double d = in_days(lasting);
  const double perfect = detail::detectable(plan, d, detail::plan_scatter(plan, 0.0));
  if (!(perfect < leak.value())) return std::nullopt;
  // The square of what is seen is linear in the square of the resolution.
  const double at_one_mm = detail::detectable(plan, d, detail::plan_scatter(plan, 1e-3));
  const double slope = (at_one_mm * at_one_mm - perfect * perfect) / 1e-6;
  return metres(std::sqrt((leak.value() * leak.value() - perfect * perfect) / slope));
}

/// A hole and the water above it.
struct hole {
  required<length> diameter;
  required<length> depth;               ///< of the water above it
  double discharge_coefficient = 0.62;  ///< sharp edge
};

/// What runs out through a small round hole.
///
///   Q = Cd (pi/4) d^2 sqrt(2 g h)
///
/// @param in diameter d > 0, depth h >= 0, discharge coefficient 0 to 1
/// @return   flow [m^3/s]; a crack or a porous seam is laminar and goes with h instead of its root
/// @throws   invalid_input
/// @accuracy 3 % for a clean sharp-edged hole; a real leak has another shape
/// @source   Torricelli's law with a discharge coefficient; any textbook of hydraulics
[[nodiscard]] inline flow_rate leak_through_hole(const hole& in) {
  constexpr std::string_view here = "tankwright::commissioning::leak_through_hole";
  core::check(here, {"diameter", "m", positive}, in.diameter->value());
  core::check(here, {"depth", "m", not_negative}, in.depth->value());
  core::check(here, {"discharge coefficient", "", above_zero_to_one}, in.discharge_coefficient);
  const double d = in.diameter->value();
  return flow_rate::from_value(in.discharge_coefficient * 0.78539816339744831 * d * d *
                               std::sqrt(2.0 * standard_gravity.value() * in.depth->value()));
}

/// One stage of a fill that is held at several depths.
struct hold_stage {
  length depth;
  flow_rate leak;                       ///< that the same hole would give at this depth
  std::optional<duration> days_needed;  ///< to see it; nothing when it cannot be seen
};

/// A staged first fill: how long to hold at each depth to see the leak that would matter when full.
///
///   Q(h) = Q_full sqrt(h / h_full): a hole at the floor; then days_to_see(Q(h))
///
/// @param plan         as for `days_to_see`
/// @param depths       of the stages, rising, > 0; the last one is full
/// @param leak_at_full the leak to find at the last depth, > 0
/// @return             a stage for each depth
/// @throws             invalid_input
/// @accuracy           as `days_to_see`; a laminar seam leaks less at small depth, so the early stages are optimistic
/// @source             Torricelli's law
[[nodiscard]] inline std::vector<hold_stage> hold_stages(const hold_plan& plan, std::span<const length> depths,
                                                         flow_rate leak_at_full) {
  constexpr std::string_view here = "tankwright::commissioning::hold_stages";
  core::check(here, detail::leak_limits, leak_at_full.value());
  std::vector<hold_stage> stages;
  for (std::size_t i = 0; i < depths.size(); ++i) {
    core::check(here, {"depth of a stage", "m", positive}, depths[i].value());
    if (i > 0 && !(depths[i] > depths[i - 1])) {
      core::fail<invalid_input>(here, "depth of stage", static_cast<double>(i + 1), "",
                                  "is not above the stage before it");
    }
    const flow_rate leak =
        flow_rate::from_value(leak_at_full.value() * std::sqrt(depths[i].value() / depths.back().value()));
    stages.push_back({depths[i], leak, days_to_see(plan, leak)});
  }
  return stages;
}

}  // namespace tankwright::commissioning
