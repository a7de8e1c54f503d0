// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is it holding? A leak test read with statistics: the fall of the level, less evaporation and the swelling of the
/// water. Is a leak proven, and would this test have shown one that matters? How to plan a test is in
/// `leak_test_planning.hpp`; several parts at once, cover on and off, and drips are in `leak_parts.hpp`.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <tankwright/core/citation.hpp>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/numerics/student_t.hpp>
#include <tankwright/vessel/cautions.hpp>
#include <tankwright/vessel/detail/check.hpp>
#include <tankwright/vessel/detail/level_fit.hpp>
#include <tankwright/water/density.hpp>
#include <utility>
#include <vector>

namespace tankwright::vessel {

/// What a reservoir may lose and still be accepted. One of the two losses applies; the other is not set. Reservoirs
/// stand in the ground: for a display in a house ask for `leak_that_matters` instead.
struct tightness_criterion {
  std::string_view name;
  std::optional<proportion> share_per_day{};  ///< of the capacity
  std::optional<length> total_fall{};         ///< over `least_duration`
  duration least_duration;
  citation source;
};

/// 0.05 % of the capacity a day over 72 hours, after a day of standing.
inline constexpr tightness_criterion awwa_d110{
    .name = "AWWA D110, 0.05 % a day",
    .share_per_day = fraction(0.0005),
    .least_duration = hours(72.0),
    .source = {"ANSI/AWWA", 2004, "D110: wire- and strand-wound circular prestressed concrete water tanks",
               "leakage test"}};
/// 0.1 % of the capacity a day over five days.
inline constexpr tightness_criterion awwa_1978{
    .name = "AWWA and ACI 350 report, 0.1 % a day",
    .share_per_day = fraction(0.001),
    .least_duration = days(5.0),
    .source = {"AWWA", 1978, "Tightness of concrete water tanks, as adopted by the ACI 350 report",
               "acceptance limit"}};
/// 10 mm in seven days, evaporation deducted.
inline constexpr tightness_criterion bs_5337{
    .name = "BS 5337, 10 mm in 7 days",
    .total_fall = millimetres(10.0),
    .least_duration = days(7.0),
    .source = {"BSI", 1976, "BS 5337: structural use of concrete for retaining aqueous liquids",
               "water-tightness test"}};
/// No more than 0.025 % of the capacity a day.
inline constexpr tightness_criterion aci_350_025{
    .name = "ACI 350.1 class 025, 0.025 % a day",
    .share_per_day = fraction(0.00025),
    .least_duration = hours(72.0),
    .source = {"ACI", 2010, "ACI 350.1: tightness testing of environmental engineering concrete structures",
               "class HST-025", standing::from_memory}};

/// A litre a day: some fourteen drops a minute, what nobody overlooks on a floor within a week. Our choice, no source.
inline constexpr flow_rate household_leak = litres_per_day(1.0);

/// One reading of the level. Levels may be from any mark, counted upwards.
struct level_reading {
  required<duration> at;
  required<length> level;
  std::optional<temperature> water{};  ///< of the display, for the swelling of the water
  std::optional<length> pan{};         ///< level in an evaporation pan standing in the same water and air
  std::string reader{};                ///< who read it: two people read a level a little differently, each the same way
};

/// A leak test as it was done.
struct leak_test {
  required<area> surface;       ///< of the water, of all vessels that are connected
  required<length> depth;       ///< of the water, for its swelling with temperature
  required<length> resolution;  ///< smallest step the gauge shows
  std::vector<level_reading> readings{};
  std::optional<estimate<velocity>> evaporation{};  ///< fall by evaporation, where there is no pan
  practical_salinity salinity{0.0};                 ///< of the water in the tank; fresh for most first fills
  proportion confidence = fraction(0.95);           ///< of each one-sided limit
  flow_rate leak_that_matters = household_leak;
  std::optional<tightness_criterion> criterion{};  ///< of a reservoir, to be held against as well
  std::optional<volume> capacity{};                ///< of water in the tank; needed for such a criterion
  std::string label = "leak test";
};

/// What the readings say.
enum class leak_answer {
  proven,         ///< the low limit is above zero: it leaks
  excluded,       ///< none is proven, and one that matters would have shown: the high limit is below it
  undecided,      ///< none is proven, but one that matters may hide: go on reading
  contradictory,  ///< the level falls by less than evaporation alone, beyond doubt, or rises
};

/// How a test stands against the criterion of a reservoir.
struct criterion_outcome {
  flow_rate allowed;
  flow_rate room;    ///< allowed less the high limit of the leak: from zero up it is met
  duration missing;  ///< of the duration that the criterion asks for; 0 when it is done
};

/// How one of several readers reads against the first one.
struct reader_offset {
  std::string reader;
  length higher;         ///< than the first reader, on the average
  std::size_t readings;  ///< [1]
};

struct leak_test_result {
  estimate<velocity> fall;         ///< of the level, temperature taken out, with one standard error
  estimate<velocity> evaporation;  ///< that was deducted
  estimate<velocity> leak_fall;    ///< what is left, with its one-sided limits
  estimate<flow_rate> leak;        ///< the same as a flow; the high limit is what may still hide
  proportion chance_without_leak;  ///< how often readings like these come from a tight tank
  leak_answer answer;
  flow_rate leak_that_matters;
  proportion chance_to_show;          ///< that a test like this one proves a leak that matters
  flow_rate minimum_detectable_leak;  ///< that a test like this one proves with the chosen confidence
  velocity standard_error;            ///< of the fall that is left, evaporation included
  duration lasted;
  std::size_t degrees_of_freedom;      ///< [1]
  std::vector<reader_offset> readers;  ///< where several people read
  std::optional<criterion_outcome> against_criterion;
  tankwright::caution caution;
};

inline constexpr caution leak_test_caution{
    "A passed leak test says that the tank was tight on those days, without its load and at that level. Watch the "
    "level and the floor through every later stage of filling; a seam or panel that fails can flood a house and hurt "
    "people."};

namespace detail {

inline constexpr limits surface_limits{"surface", "m2", possible_area};
inline constexpr limits capacity_limits{"capacity", "m3", possible_volume};
inline constexpr limits depth_limits{"depth", "m", possible_length};
inline constexpr limits resolution_limits{"resolution", "m", {1e-9, 1.0}};
inline constexpr limits confidence_limits{"confidence", "", {0.5, 0.999999, edge::open}};
inline constexpr limits level_limits{"level", "m", {-1e3, 1e3}};
inline constexpr limits reading_time_limits{"time", "s", {-1e11, 1e11}};
inline constexpr limits evaporation_limits{"evaporation", "m/s", {0.0, 1.0}};
inline constexpr limits leak_limits{"leak", "m3/s", {1e-18, 1e3}};
inline constexpr std::size_t most_readers = 20;

/// Standard deviation of a reading rounded to steps of `resolution`.
[[nodiscard]] inline double rounding_scatter(double resolution) noexcept { return resolution / std::sqrt(12.0); }

/// Least standard error of a fall over `seconds` by a gauge with steps. While the level stays within a step its
/// rounding is the same mistake in every reading and more readings do not help: the fall is known to one step either
/// way, a rectangle. Where the level passes several steps the mistakes take turns, and what is left of them falls.
[[nodiscard]] inline double rounding_of_fall(double resolution, double seconds, double steps_passed) noexcept {
  return resolution / (std::sqrt(3.0) * seconds * std::fmax(steps_passed, 1.0));
}

inline void check_readings(std::string_view here, const leak_test& test) {
  const auto& readings = test.readings;
  const double depth = test.depth->value();
  double lowest = HUGE_VAL, highest = -HUGE_VAL, pan_low = HUGE_VAL, pan_high = -HUGE_VAL;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const level_reading& r = readings[i];
    const std::string name = test.label + ", reading " + std::to_string(i + 1);
    const double level = r.level->value(), pan = r.pan.value_or(length{}).value();
    core::check_element(here, name, reading_time_limits, r.at->value());
    core::check_element(here, name, level_limits, level);
    core::check_element(here, name, {"pan", "m", level_limits.possible}, pan);
    if (r.pan.has_value() != readings[0].pan.has_value() || r.water.has_value() != readings[0].water.has_value()) {
      core::refuse_element(
          here, name, "has a pan level or a water temperature where another has none; give it for all or for none");
    }
    lowest = std::fmin(lowest, level);
    highest = std::fmax(highest, level);
    pan_low = std::fmin(pan_low, pan);
    pan_high = std::fmax(pan_high, pan);
    if (i == 0) continue;
    const double before = readings[i - 1].at->value();
    const bool other_reader = r.reader != readings[i - 1].reader;
    if (!(other_reader ? r.at->value() >= before : r.at->value() > before)) {
      core::refuse_element(here, name, "is not later than the one before it; put the readings in order");
    }
  }
  const auto within_the_depth = [&](std::string_view what, double change) {
    if (change <= depth) return;
    refuse_of(here, test.label, what, change, "m",
              "is more than the depth of the water, " + core::number_with_unit(depth, "m") +
                  ": one of the readings may be in another unit");
  };
  within_the_depth("largest change of the level", highest - lowest);
  within_the_depth("largest change in the pan", pan_high - pan_low);
}

inline void check_test(std::string_view here, const leak_test& test) {
  if (test.capacity) core::check_element(here, test.label, capacity_limits, test.capacity->value());
  core::check_element(here, test.label, surface_limits, test.surface->value());
  core::check_element(here, test.label, depth_limits, test.depth->value());
  core::check_element(here, test.label, resolution_limits, test.resolution->value());
  if (test.resolution.get() > test.depth.get()) {
    refuse_of(here, test.label, "resolution", test.resolution->value(), "m",
              "is more than the depth of the water, " + core::number_with_unit(test.depth->value(), "m"));
  }
  core::check_element(here, test.label, confidence_limits, test.confidence.value());
  core::check_element(here, test.label, {"leak that matters", "m3/s", leak_limits.possible},
                      test.leak_that_matters.value());
  core::check_element(here, test.label, water::practical_salinity_limits, test.salinity.value());
  if (test.evaporation) check_estimate(here, test.label, evaporation_limits, *test.evaporation);
  check_readings(here, test);
}

/// A fall with its error, and who read.
struct fitted_readings {
  level_fit line;
  std::vector<std::string> readers;
};

[[nodiscard]] constexpr leak_answer answer_of(const estimate<flow_rate>& leak, flow_rate that_matters) noexcept {
  if (leak.low.value() > 0.0) return leak_answer::proven;
  if (leak.high.value() < 0.0) return leak_answer::contradictory;
  return leak.high < that_matters ? leak_answer::excluded : leak_answer::undecided;
}

/// Readings brought to the temperature of the first one, less the pan's.
[[nodiscard]] inline fitted_readings fit_readings(std::string_view here, const leak_test& test) {
  std::vector<level_point> points;
  std::vector<std::string> names;
  std::optional<double> first_density;
  for (const level_reading& r : test.readings) {
    const double pan = r.pan.value_or(length{}).value();
    double level = r.level->value() - pan;
    if (r.water) {  // the same mass of water, brought back to its first temperature
      const double density = water::density(test.salinity, *r.water).value();
      if (!first_density) first_density = density;
      level -= test.depth->value() * ((*first_density - density) / density);
    }
    std::size_t who = 0;
    while (who < names.size() && names[who] != r.reader) ++who;
    if (who == names.size()) names.push_back(r.reader);
    if (names.size() > most_readers) {
      refuse_of(here, test.label, "number of readers", static_cast<double>(names.size()), "",
                "is more than " + std::to_string(most_readers) + "; one to three people read a level");
    }
    points.push_back({r.at->value(), level, r.level->value(), pan, who});
  }
  const auto fit = fit_levels(points, names.size());
  if (!fit) {
    refuse_of(here, test.label, "number of readings", static_cast<double>(points.size()), "",
              "is too few: a fall with its error needs three, and one more for every further reader, who must have "
              "read twice");
  }
  return {*fit, std::move(names)};
}

[[nodiscard]] inline criterion_outcome against(std::string_view here, const leak_test& test, flow_rate high,
                                               duration lasted) {
  const tightness_criterion& c = *test.criterion;
  core::check_element(here, c.name, {"duration", "s", possible_duration}, c.least_duration.value());
  flow_rate allowed{};
  if (c.share_per_day) {
    core::check_element(here, c.name, {"share a day", "", zero_to_one}, c.share_per_day->value());
    if (!test.capacity) {
      core::refuse_element(here, test.label, "needs the capacity of the tank, of which the criterion allows a share");
    }
    allowed = flow_rate::from_value(c.share_per_day->value() * test.capacity->value() / 86400.0);
  } else {
    const length fall = c.total_fall.value_or(length{});
    core::check_element(here, c.name, length_from_zero("fall"), fall.value());
    allowed = flow_rate::from_value(test.surface->value() * fall.value() / c.least_duration.value());
  }
  return {allowed, allowed - high, std::max(c.least_duration - lasted, duration{})};
}

}  // namespace detail

/// Reads a leak test: the rate of leakage with its one-sided confidence limits, whether it is proven, and whether this
/// test would have shown a leak that matters.
///
///   level, corrected to the first temperature, less the pan where there is one = a_reader - b t (least squares);
///   leak = A (b - E),  u^2 = max(s_b, r)^2 + u_E^2,  limits leak -+ t(confidence, n - readers - 1) A u;
///   the scatter of a reading is taken as at least resolution/sqrt(12), and the error of the fall as at least
///   r = resolution/(sqrt(3) T), divided by the number of steps of the gauge that the level passes in the time T;
///   chance to show x = P(t_(n - readers - 1) > t(confidence) - x/(A u))
///
/// @param test surface A [m^2], depth and resolution [m] > 0, the resolution not above the depth; readings in order of
///             time, three or more and one more for every further reader, that move by no more than the depth;
///             evaporation E [m/s] >= 0 (none and no pan: taken as zero, so that the leak is an upper bound);
///             confidence, above 0.5 and below 1; leak that matters [m^3/s] > 0; a criterion with the capacity [m^3]
/// @return     fall, evaporation and leak with their bands; the answer; a caution
/// @throws     invalid_input (names the reading), out_of_range (temperature)
/// @accuracy   exact for a straight line with normal scatter; the band of the evaporation is taken as rectangular; the
///             chance to show within 0.01 for ten readings and more
/// @source     ordinary least squares; one-sided t test as in US EPA tank tightness protocols; GUM (JCGM 100:2008),
///             4.3.7
[[nodiscard]] inline leak_test_result read_leak_test(const leak_test& test) {
  constexpr std::string_view here = "tankwright::vessel::read_leak_test";
  detail::check_test(here, test);
  const auto [line, names] = detail::fit_readings(here, test);
  const double surface = test.surface->value(), resolution = test.resolution->value();
  const bool has_pan = test.readings.front().pan.has_value();
  const double two = has_pan ? std::sqrt(2.0) : 1.0;  // tank and pan are both rounded
  const double slope_error = std::fmax(
      std::fmax(line.scatter, two * detail::rounding_scatter(resolution)) / std::sqrt(line.sxx),
      two * detail::rounding_of_fall(resolution, line.span,
                                     std::fmin(line.moved, has_pan ? line.pan_moved : line.moved) / resolution));
  const double fall = -line.slope;

  const estimate<velocity> none{velocity{}, velocity{}, velocity{}, has_pan ? "taken out by the pan" : "not deducted"};
  const estimate<velocity> evaporation = has_pan ? none : test.evaporation.value_or(none);
  const double evaporation_error = (evaporation.high - evaporation.low).value() / std::sqrt(12.0);
  const double leak_fall = fall - evaporation.central.value();
  const double error = std::hypot(slope_error, evaporation_error);
  const double freedom = static_cast<double>(line.degrees_of_freedom);
  const double t = numerics::student_t_quantile(test.confidence.value(), freedom);

  const auto band = [](double central, double half, std::string_view reason) {
    return estimate<velocity>{velocity::from_value(central - half), velocity::from_value(central),
                              velocity::from_value(central + half), reason};
  };
  leak_test_result result{.fall = band(fall, slope_error, "one standard error of the slope"),
                          .evaporation = evaporation,
                          .leak_fall = band(leak_fall, t * error, "one-sided limits at the chosen confidence"),
                          .leak = {},
                          .chance_without_leak = fraction(numerics::student_t_above(leak_fall / error, freedom)),
                          .answer = leak_answer::undecided,
                          .leak_that_matters = test.leak_that_matters,
                          .chance_to_show = fraction(numerics::student_t_above(
                              t - test.leak_that_matters.value() / (surface * error), freedom)),
                          .minimum_detectable_leak = flow_rate::from_value(2.0 * t * error * surface),
                          .standard_error = velocity::from_value(error),
                          .lasted = test.readings.back().at.get() - test.readings.front().at.get(),
                          .degrees_of_freedom = line.degrees_of_freedom,
                          .readers = {},
                          .against_criterion = {},
                          .caution = leak_test_caution};
  result.leak = map_rising(result.leak_fall, [&](velocity v) { return flow_rate::from_value(v.value() * surface); });
  result.answer = detail::answer_of(result.leak, test.leak_that_matters);
  for (std::size_t i = 0; names.size() > 1 && i < names.size(); ++i) {
    const detail::level_group& g = line.readers[i];
    result.readers.push_back({names[i], length::from_value(g.intercept - line.readers[0].intercept), g.count});
  }
  if (test.criterion) result.against_criterion = detail::against(here, test, result.leak.high, result.lasted);
  return result;
}

}  // namespace tankwright::vessel
