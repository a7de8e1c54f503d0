// SPDX-License-Identifier: BSL-1.0
/// @file
/// How many days, how fine a gauge? Planning a leak test so that it can see the leak that matters.
#pragma once

#include <cmath>
#include <cstddef>
#include <limits>
#include <optional>
#include <span>
#include <string_view>
#include <tankwright/numerics/student_t.hpp>
#include <tankwright/vessel/leak_test.hpp>
#include <utility>
#include <vector>

namespace tankwright::vessel {

/// A leak test that is still to be done, read evenly from its first to its last hour.
struct leak_test_plan {
  required<area> surface;
  required<length> resolution;             ///< smallest step the gauge shows
  length scatter{};                        ///< of a reading beyond its rounding: ripples, parallax; standard deviation
  double readings_per_day = 4.0;           ///< [1/d]
  bool pan = false;                        ///< an evaporation pan is read each time, so evaporation drops out
  estimate<velocity> evaporation{};        ///< to be deducted where there is no pan
  proportion confidence = fraction(0.95);  ///< that a tight tank is not called leaking
  proportion power = fraction(0.95);       ///< that the leak is found
};

namespace detail {

inline constexpr limits readings_per_day_limits{"readings per day", "1/d", {0.01, 1e6}};
inline constexpr limits power_limits{"power", "", {0.5, 0.999999}};
inline constexpr limits test_duration_limits{"duration", "d", {1e-4, 3660.0}};
inline constexpr limits scatter_limits{"scatter", "m", {0.0, 1.0}};

inline void check_plan(std::string_view here, const leak_test_plan& plan) {
  core::check(here, surface_limits, plan.surface->value());
  core::check(here, resolution_limits, plan.resolution->value());
  core::check(here, readings_per_day_limits, plan.readings_per_day);
  core::check(here, confidence_limits, plan.confidence.value());
  core::check(here, power_limits, plan.power.value());
  core::check(here, scatter_limits, plan.scatter.value());
  check_estimate(here, "plan", evaporation_limits, plan.evaporation);
}

/// Number of evenly spaced readings in `days`, the first and the last included; three at least.
[[nodiscard]] inline double readings_in(const leak_test_plan& plan, double days) noexcept {
  return std::fmax(3.0, std::floor(days * plan.readings_per_day) + 1.0);
}

/// Standard error [m/s] of the fall that `days` of readings with a gauge of such steps [m] find.
[[nodiscard]] inline double fall_error(const leak_test_plan& plan, double days, double resolution) noexcept {
  const double n = readings_in(plan, days);
  const double seconds = days * 86400.0;
  const double sxx = seconds * seconds * n * (n + 1.0) / (12.0 * (n - 1.0));  // evenly spaced
  const double sigma = std::hypot(rounding_scatter(resolution), plan.scatter.value());
  // By how much the level moves for certain: the least evaporation, and the range of three scattered readings or more.
  const double moved = plan.evaporation.low.value() * seconds + 1.7 * plan.scatter.value();
  const double slope_error =
      std::fmax(sigma / std::sqrt(sxx), rounding_of_fall(resolution, seconds, moved / resolution));
  if (plan.pan) return std::sqrt(2.0) * slope_error;  // tank and pan are both read; the evaporation drops out
  return std::hypot(slope_error, (plan.evaporation.high - plan.evaporation.low).value() / std::sqrt(12.0));
}

/// How many standard errors a leak must be above none to be found: t(confidence) + t(power).
[[nodiscard]] inline double errors_to_see(const leak_test_plan& plan, double freedom) {
  const double confidence = numerics::student_t_quantile(plan.confidence.value(), freedom);
  return confidence +
         (plan.power == plan.confidence ? confidence : numerics::student_t_quantile(plan.power.value(), freedom));
}

/// Smallest leak [m^3/s] that `days` of readings with steps of `resolution` [m] find.
[[nodiscard]] inline double detectable(const leak_test_plan& plan, double days, double resolution) {
  const double freedom = readings_in(plan, days) - 2.0;
  return plan.surface->value() * fall_error(plan, days, resolution) * errors_to_see(plan, freedom);
}

/// The least number of days that find a leak [m^3/s], in steps of one reading; infinity when a year does not.
[[nodiscard]] inline double days_to_find(const leak_test_plan& plan, double leak) {
  const double resolution = plan.resolution->value();
  const auto seen = [&](double steps) {
    return detail::detectable(plan, steps / plan.readings_per_day, resolution) <= leak;
  };
  const double most = std::floor(366.0 * plan.readings_per_day);  // three or more
  if (!seen(most)) return HUGE_VAL;
  if (seen(2.0)) return 2.0 / plan.readings_per_day;
  const auto halve = [](double too_few, double enough, auto sees) {
    const auto middle = [&] { return std::floor((enough + too_few) / 2.0); };
    for (double at = middle(); at > too_few; at = middle()) (sees(at) ? enough : too_few) = at;
    return std::pair{too_few, enough};
  };
  // With the normal law instead of Student's it takes a few readings less: from there on, in doubled strides.
  const double normal = detail::errors_to_see(plan, std::numeric_limits<double>::infinity());
  double too_few = halve(1.0, most, [&](double steps) {
                     const double error = detail::fall_error(plan, steps / plan.readings_per_day, resolution);
                     return plan.surface->value() * error * normal <= leak;
                   }).first;
  double stride = 1.0, enough = std::fmin(too_few + stride, most);
  while (!seen(enough)) {
    too_few = enough;
    stride += stride;
    enough = std::fmin(too_few + stride, most);
  }
  enough = halve(too_few, enough, seen).second;
  return enough / plan.readings_per_day;
}

}  // namespace detail

/// Smallest leak that a planned leak test finds.
///
///   Q = (t(confidence) + t(power)) A u,  u^2 = max(s / sqrt(Sxx), r)^2 + u_E^2,
///   Sxx = D^2 n (n + 1) / (12 (n - 1)) for n even readings over D; t with n - 2 degrees of freedom;
///   r = resolution/(sqrt(3) D) over the steps of the gauge that the level passes for certain (`read_leak_test`)
///
/// @param plan    surface A [m^2], resolution [m] and readings per day > 0, scatter [m] and evaporation [m/s] >= 0,
///                confidence above 0.5, power from 0.5, both below 1
/// @param lasting D [s], from seconds to ten years
/// @return        leak [m^3/s]
/// @throws        invalid_input
/// @accuracy      the power is approximated by two central t quantiles: within 0.01 of the exact one for n >= 10
/// @source        the sum of two t quantiles times the standard error, usual in tank tightness testing (from memory)
[[nodiscard]] inline flow_rate minimum_detectable_leak(const leak_test_plan& plan, duration lasting) {
  constexpr std::string_view here = "tankwright::vessel::minimum_detectable_leak";
  detail::check_plan(here, plan);
  core::check(here, detail::test_duration_limits, in_days(lasting));
  return flow_rate::from_value(detail::detectable(plan, in_days(lasting), plan.resolution->value()));
}

/// How long the readings must go on to find a leak.
///
///   the least D with minimum_detectable_leak(D) <= leak, in steps of one reading, up to a year
///
/// @param plan as for `minimum_detectable_leak`
/// @param leak the leak to find [m^3/s] > 0
/// @return     the duration [s]; nothing when none is long enough because the evaporation is too uncertain
/// @throws     invalid_input
/// @accuracy   as `minimum_detectable_leak`
/// @source     as `minimum_detectable_leak`
[[nodiscard]] inline std::optional<duration> required_duration(const leak_test_plan& plan, flow_rate leak) {
  constexpr std::string_view here = "tankwright::vessel::required_duration";
  detail::check_plan(here, plan);
  core::check(here, detail::leak_limits, leak.value());
  const double d = detail::days_to_find(plan, leak.value());
  return std::isfinite(d) ? std::optional{days(d)} : std::nullopt;
}

/// How coarse a gauge may be and still find a leak in a given time.
///
///   the coarsest resolution with minimum_detectable_leak(D) <= leak, by halving
///
/// @param plan    as for `minimum_detectable_leak`; its own resolution is not used
/// @param lasting length of the test [s], from seconds to ten years
/// @param leak    the leak to find [m^3/s] > 0
/// @return        the coarsest resolution [m], a metre at most; nothing when even a gauge of a nanometre would not do
/// @throws        invalid_input
/// @accuracy      1e-9; otherwise as `minimum_detectable_leak`
/// @source        as `minimum_detectable_leak`
[[nodiscard]] inline std::optional<length> required_resolution(const leak_test_plan& plan, duration lasting,
                                                               flow_rate leak) {
  constexpr std::string_view here = "tankwright::vessel::required_resolution";
  detail::check_plan(here, plan);
  core::check(here, detail::test_duration_limits, in_days(lasting));
  core::check(here, detail::leak_limits, leak.value());
  const double days = in_days(lasting);
  const double errors = detail::errors_to_see(plan, detail::readings_in(plan, days) - 2.0);
  const auto seen = [&](double resolution) {
    return plan.surface->value() * detail::fall_error(plan, days, resolution) * errors <= leak.value();
  };
  double fine = detail::resolution_limits.possible.low, coarse = detail::resolution_limits.possible.high;
  if (!seen(fine)) return std::nullopt;
  if (seen(coarse)) return length::from_value(coarse);
  while (coarse - fine > 1e-10 * coarse) {  // what is detectable rises with the resolution
    const double middle = std::sqrt(fine * coarse);
    (seen(middle) ? fine : coarse) = middle;
  }
  return length::from_value(fine);
}

/// A hole and the water above it.
struct hole {
  required<length> diameter;
  required<length> depth;               ///< of the water above it
  double discharge_coefficient = 0.62;  ///< [1] sharp edge
};

/// What runs out through a small round hole.
///
///   Q = Cd (pi/4) d^2 sqrt(2 g h)
///
/// @param in diameter d [m] > 0, depth h [m] >= 0, discharge coefficient, above 0 to 1
/// @return   flow [m^3/s]; a crack or a porous seam is laminar and goes with h instead of its root
/// @throws   invalid_input
/// @accuracy 3 % for a clean sharp-edged hole; a real leak has another shape
/// @source   Torricelli's law with a discharge coefficient; any textbook of hydraulics
[[nodiscard]] inline flow_rate leak_through_hole(const hole& in) {
  constexpr std::string_view here = "tankwright::vessel::leak_through_hole";
  core::check(here, detail::positive_length("diameter"), in.diameter->value());
  core::check(here, detail::length_from_zero("depth"), in.depth->value());
  core::check(here, {"discharge coefficient", "", above_zero_to_one}, in.discharge_coefficient);
  const double d = in.diameter->value();
  return flow_rate::from_value(in.discharge_coefficient * 0.78539816339744831 * d * d *
                               std::sqrt(2.0 * standard_gravity.value() * in.depth->value()));
}

/// One stage of a fill that is tested at several depths.
struct leak_test_stage {
  length depth;
  flow_rate leak;                    ///< that the same hole would give at this depth
  std::optional<duration> required;  ///< to find it; nothing when it cannot be found
};

/// A staged first fill: how long to wait at each depth to see the leak that would matter when full.
///
///   Q(h) = Q_full sqrt(h / h_full): a hole at the floor; then required_duration(Q(h))
///
/// @param plan         as for `required_duration`
/// @param depths       of the stages [m], rising, > 0; the last one is full; up to 1000 of them
/// @param leak_at_full the leak to find at the last depth [m^3/s] > 0
/// @return             a stage for each depth
/// @throws             invalid_input
/// @accuracy           as `required_duration`; a laminar seam leaks less at small depth, so the early stages are
///                     optimistic
/// @source             Torricelli's law
[[nodiscard]] inline std::vector<leak_test_stage> leak_test_stages(const leak_test_plan& plan,
                                                                   std::span<const length> depths,
                                                                   flow_rate leak_at_full) {
  constexpr std::string_view here = "tankwright::vessel::leak_test_stages";
  detail::check_plan(here, plan);
  core::check(here, detail::leak_limits, leak_at_full.value());
  core::check(here, {"number of stages", "", {0.0, 1000.0}}, static_cast<double>(depths.size()));
  std::vector<leak_test_stage> stages;
  for (std::size_t i = 0; i < depths.size(); ++i) {
    core::check(here, detail::positive_length("depth of a stage"), depths[i].value());
    if (i > 0 && !(depths[i] > depths[i - 1])) {
      core::fail<invalid_input>(here, "depth of stage", static_cast<double>(i + 1), "",
                                "is not above the stage before it");
    }
    const double leak = leak_at_full.value() * std::sqrt(depths[i].value() / depths.back().value());
    const double d = detail::days_to_find(plan, leak);
    stages.push_back(
        {depths[i], flow_rate::from_value(leak), std::isfinite(d) ? std::optional{days(d)} : std::nullopt});
  }
  return stages;
}

}  // namespace tankwright::vessel
