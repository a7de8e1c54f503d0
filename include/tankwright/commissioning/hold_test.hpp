// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is it holding? A hold test read with statistics: the fall of the level, less evaporation and the swelling of the
/// water, with the confidence that the readings allow. How to plan one is in `hold_plan.hpp`.
#pragma once

#include <cmath>
#include <optional>
#include <tankwright/numerics/line_fit.hpp>
#include <tankwright/commissioning/verdict.hpp>
#include <tankwright/core.hpp>
#include <tankwright/core/span_of.hpp>
#include <tankwright/numerics/student_t.hpp>
#include <tankwright/water/density.hpp>
#include <vector>

namespace tankwright::commissioning {

/// What a tank may lose and still be called tight. One of the two losses applies; the other is not set.
struct hold_criterion {
  std::string_view name;
  std::optional<proportion> share_per_day{};  ///< of the capacity
  std::optional<length> total_fall{};         ///< over `least_duration`
  duration least_duration;
  citation source;
};

/// 0.05 % of the capacity a day over 72 hours, after a day of standing.
inline constexpr hold_criterion awwa_d110{
    .name = "AWWA D110, 0.05 % a day",
    .share_per_day = fraction(0.0005),
    .least_duration = hours(72.0),
    .source = {"ANSI/AWWA", 2004, "D110: wire- and strand-wound circular prestressed concrete water tanks",
               "leakage test"}};
/// 0.1 % of the capacity a day over five days.
inline constexpr hold_criterion awwa_1978{
    .name = "AWWA and ACI 350 report, 0.1 % a day",
    .share_per_day = fraction(0.001),
    .least_duration = days(5.0),
    .source = {"AWWA", 1978, "Tightness of concrete water tanks, as adopted by the ACI 350 report",
               "acceptance limit"}};
/// 10 mm in seven days, evaporation deducted.
inline constexpr hold_criterion bs_5337{
    .name = "BS 5337, 10 mm in 7 days",
    .total_fall = millimetres(10.0),
    .least_duration = days(7.0),
    .source = {"BSI", 1976, "BS 5337: structural use of concrete for retaining aqueous liquids",
               "water-tightness test"}};
/// No more than 0.025 % of the capacity a day.
inline constexpr hold_criterion aci_350_025{
    .name = "ACI 350.1 class 025, 0.025 % a day",
    .share_per_day = fraction(0.00025),
    .least_duration = hours(72.0),
    .source = {"ACI", 2010, "ACI 350.1: tightness testing of environmental engineering concrete structures",
               "class HST-025", standing::from_memory}};

/// One reading of the level. Levels may be from any mark, counted upwards.
struct level_reading {
  required<duration> at;
  required<length> level;
  std::optional<temperature> water{};  ///< of the display, for the swelling of the water
  std::optional<length> pan{};         ///< level in an evaporation pan standing in the same water and air
};

/// A hold test as it was done.
struct hold_test {
  required<area> surface;       ///< plan area of the water
  required<volume> capacity;    ///< of water in the tank
  required<length> depth;       ///< of the water, for its swelling with temperature
  required<length> resolution;  ///< smallest step the gauge shows
  std::vector<level_reading> readings{};
  std::optional<estimate<velocity>> evaporation{};  ///< fall by evaporation, where there is no pan
  practical_salinity salinity{0.0};                 ///< of the water in the tank; fresh for most first fills
  proportion confidence = fraction(0.95);           ///< of each one-sided limit
  hold_criterion criterion = awwa_d110;
};

/// What the readings say.
struct hold_result {
  estimate<velocity> fall;         ///< of the level, temperature taken out, with one standard error
  estimate<velocity> evaporation;  ///< that was deducted
  estimate<velocity> leak_fall;    ///< what is left, with its one-sided limits
  estimate<flow_rate> leak;        ///< the same as a flow
  proportion chance_without_leak;  ///< how often readings like these come from a tight tank
  flow_rate allowed;               ///< by the criterion
  duration lasted;
  std::size_t degrees_of_freedom;
  flow_rate smallest_seen;  ///< leak that a test like this one finds with the same confidence
  verdict says;
  caution before_acting;
};

inline constexpr caution hold_test_caution{
    "A passed hold test says that the tank was tight on those days, without its load and at that level. Watch the "
    "level and the floor through every later stage of filling; a seam or panel that fails can flood a house and hurt "
    "people."};

namespace detail {


inline constexpr limits surface_limits{"surface", "m2", positive};
inline constexpr limits capacity_limits{"capacity", "m3", positive};
inline constexpr limits depth_limits{"depth", "m", positive};
inline constexpr limits resolution_limits{"resolution", "m", positive};
inline constexpr limits confidence_limits{"confidence", "", {0.5, 1.0, edge::open, edge::open}};
inline constexpr limits level_limits{"level", "m", any_finite};

/// Standard deviation of a reading rounded to steps of `resolution`.
[[nodiscard]] inline double rounding_scatter(double resolution) noexcept { return resolution / std::sqrt(12.0); }

inline void check_readings(std::string_view here, const std::vector<level_reading>& readings, double depth) {
  const double count = static_cast<double>(readings.size());
  if (readings.size() < 3) {
    core::fail<invalid_input>(here, "number of readings", count, "", "is too few; a line with its error needs three or more");
  }
  bool moved = false;
  double lowest = readings[0].level->value(), highest = lowest;
  double pan_low = readings[0].pan.value_or(length{}).value(), pan_high = pan_low;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const double level = readings[i].level->value();
    core::check(here, level_limits, level);
    lowest = std::fmin(lowest, level), highest = std::fmax(highest, level);
    const double pan = readings[i].pan.value_or(length{}).value();
    pan_low = std::fmin(pan_low, pan), pan_high = std::fmax(pan_high, pan);
    if (readings[i].pan.has_value() != readings[0].pan.has_value() ||
        readings[i].water.has_value() != readings[0].water.has_value()) {
      core::fail<invalid_input>(here, "reading number", static_cast<double>(i + 1), "",
                          "has a pan level or a water temperature where another has none; give it for all or for none");
    }
    if (i == 0) continue;
    if (!(readings[i].at->value() > readings[i - 1].at->value())) {
      core::fail<invalid_input>(here, "time of reading number", static_cast<double>(i + 1), "",
                          "is not later than the one before it; put the readings in order");
    }
    moved = moved || level != readings[0].level->value();
  }
  if (!moved) {
    core::fail<invalid_input>(here, "level", readings[0].level->value(), "m",
                        "in every reading: the gauge is stuck or too coarse to show even evaporation");
  }
  const auto within_the_depth = [&](std::string_view what, double change) {
    if (change <= depth) return;
    core::fail<invalid_input>(here, what, change, "m",
                        "is more than the depth of the water, " + core::number_with_unit(depth, "m") +
                            ": one of the readings may be in another unit");
  };
  within_the_depth("largest change of the level", highest - lowest);
  within_the_depth("largest change in the pan", pan_high - pan_low);
}

}  // namespace detail

/// Reads a hold test: the rate of leakage with its one-sided confidence limits, and how it stands against a criterion.
///
///   level, corrected to the first temperature, and less the pan where there is one = a - b t (least squares);
///   leak = A (b - E),  u^2 = se_b^2 + u_E^2,  limits leak -+ t(confidence, n - 2) A u;
///   the scatter of a reading is taken as at least resolution/sqrt(12)
///
/// @param test surface A > 0, capacity > 0, depth > 0, resolution > 0 and at most the depth, three or more readings in
///             order of time that move, as the pan does, by no more than the depth;
///             evaporation E >= 0 (none and no pan: taken as zero, so that the leak is an upper bound), confidence
///             0.5 to 1
/// @return     fall, evaporation and leak with their bands, the verdict against the criterion, a caution
/// @throws     invalid_input (names the reading), out_of_range (temperature)
/// @accuracy   exact for a straight line with normal scatter; the band of the evaporation is taken as rectangular
/// @source     ordinary least squares; one-sided t test as in US EPA tank tightness protocols; GUM (JCGM 100:2008),
///             4.3.7
[[nodiscard]] inline hold_result read_hold_test(const hold_test& test) {
  constexpr std::string_view here = "tankwright::commissioning::read_hold_test";
  const double surface = test.surface->value();
  const double depth = test.depth->value();
  const double resolution = test.resolution->value();
  core::check(here, detail::surface_limits, surface);
  core::check(here, detail::capacity_limits, test.capacity->value());
  core::check(here, detail::depth_limits, depth);
  core::check(here, detail::resolution_limits, resolution);
  core::check(here, {"resolution", "m", {0.0, depth, edge::open}}, resolution);
  core::check(here, detail::confidence_limits, test.confidence.value());
  detail::check_readings(here, test.readings, depth);

  const bool has_pan = test.readings[0].pan.has_value();
  std::vector<double> t;
  std::vector<double> y;
  std::optional<double> first_density;
  for (const level_reading& reading : test.readings) {
    double level = reading.level->value();
    if (reading.water) {  // the same mass of water, brought back to its first temperature
      const double density = water::density(test.salinity, *reading.water).value();
      if (!first_density) first_density = density;
      level -= depth * (*first_density / density - 1.0);
    }
    if (has_pan) level -= reading.pan->value();
    t.push_back(reading.at->value());
    y.push_back(level);
  }
  const auto line = numerics::fit_line<double>(core::span_of(t), core::span_of(y));
  const double freedom = static_cast<double>(t.size()) - 2.0;
  const double least_scatter = detail::rounding_scatter(resolution) * (has_pan ? std::sqrt(2.0) : 1.0);
  const double slope_error = std::fmax(line.scatter, least_scatter) / std::sqrt(line.sxx);
  const double fall = -line.slope;
  const double t_limit = numerics::student_t_quantile(test.confidence.value(), freedom);
  if (fall + t_limit * slope_error < 0.0) {
    core::fail<invalid_input>(here, "fall of the level", in_millimetres_per_day(velocity::from_value(fall)), "mm/d",
                                "means that it rises: somebody topped it up, or the gauge counts the other way");
  }

  const estimate<velocity> none{velocity{}, velocity{}, velocity{}, has_pan ? "taken out by the pan" : "not deducted"};
  const estimate<velocity> evaporation = has_pan ? none : test.evaporation.value_or(none);
  const double e_low = evaporation.low.value();
  const double e_high = evaporation.high.value();
  if (!(e_low >= 0.0 && e_low <= evaporation.central.value() && evaporation.central.value() <= e_high)) {
    core::fail<invalid_input>(here, "evaporation", in_millimetres_per_day(evaporation.central), "mm/d",
                                "must lie between its own low and high, and these must not be negative");
  }
  const double evaporation_error = (e_high - e_low) / std::sqrt(12.0);
  const double leak_fall = fall - evaporation.central.value();
  const double error = std::hypot(slope_error, evaporation_error);

  const auto velocity_band = [](double central, double half, std::string_view reason) {
    return estimate<velocity>{velocity::from_value(central - half), velocity::from_value(central),
                              velocity::from_value(central + half), reason};
  };
  const auto per_surface = [&](velocity v) { return flow_rate::from_value(v.value() * surface); };
  hold_result result{
      .fall = velocity_band(fall, slope_error, "one standard error of the slope"),
      .evaporation = evaporation,
      .leak_fall = velocity_band(leak_fall, t_limit * error, "one-sided limits at the chosen confidence"),
      .leak = {},
      .chance_without_leak = fraction(numerics::student_t_above(leak_fall / error, freedom)),
      .allowed = {},
      .lasted = duration::from_value(t.back() - t.front()),
      .degrees_of_freedom = t.size() - 2,
      .smallest_seen = flow_rate::from_value(2.0 * t_limit * error * surface),
      .says = verdict::not_enough_known,
      .before_acting = hold_test_caution};
  result.leak = map_rising(result.leak_fall, per_surface);
  const hold_criterion& criterion = test.criterion;
  result.allowed = criterion.share_per_day
                       ? flow_rate::from_value(criterion.share_per_day->value() * test.capacity->value() / 86400.0)
                       : per_surface(velocity::from_value(criterion.total_fall.value_or(length{}).value() /
                                                          criterion.least_duration.value()));
  if (result.leak.low > result.allowed) {
    result.says = verdict::does_not_hold;
  } else if (result.leak.high <= result.allowed && result.lasted >= criterion.least_duration) {
    result.says = result.leak.low.value() > 0.0 ? verdict::thin_margin : verdict::holds;
  }
  return result;
}

}  // namespace tankwright::commissioning
