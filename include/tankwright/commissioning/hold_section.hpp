// SPDX-License-Identifier: BSL-1.0
/// @file
/// The first-fill day: is it holding, and how many more days until one can say so?
#pragma once

#include <optional>
#include <tankwright/commissioning/figure.hpp>
#include <tankwright/commissioning/finding.hpp>
#include <tankwright/room/evaporation.hpp>
#include <tankwright/vessel/leak_test_planning.hpp>
#include <tankwright/water/density.hpp>
#include <utility>
#include <vector>

namespace tankwright::commissioning {

/// The hold test as done, as planned, or both.
struct hold_section {
  std::optional<vessel::leak_test> done{};
  std::optional<room::air> air{};     ///< of the room, for the evaporation where there is no pan
  temperature water = celsius(20.0);  ///< of the water, for the evaporation
  std::optional<vessel::leak_test_plan> planned{};
  std::optional<flow_rate> leak_to_see{};  ///< the leak that would matter
};

namespace detail {

inline constexpr std::string_view first_fill = "First fill";

/// Fall of the level by evaporation from a still open surface in this air.
[[nodiscard]] inline estimate<velocity> evaporation_fall(temperature water, practical_salinity s,
                                                         const room::air& air) {
  const auto flux = room::evaporation({.water = {.temperature = water, .salinity = s},
                                       .air = air,
                                       .surfaces = {{.label = "display", .area = square_metres(1.0)}}})
                        .surfaces.front()
                        .per_area;
  const double rho = water::density(practical_salinity{0.0}, water).value();
  return map_rising(flux, [&](mass_flux m) { return velocity::from_value(m.value() / rho); });
}

[[nodiscard]] inline vessel::leak_test with_evaporation(vessel::leak_test test, const hold_section& section) {
  const bool has_pan = !test.readings.empty() && test.readings.front().pan.has_value();
  if (!has_pan && !test.evaporation && section.air) {
    test.evaporation = evaporation_fall(section.water, test.salinity, *section.air);
  }
  return test;
}

/// The answer of a test as a verdict: a proven leak does not hold, whatever a reservoir might lose.
[[nodiscard]] constexpr verdict verdict_of(vessel::leak_answer answer) noexcept {
  return answer == vessel::leak_answer::proven     ? verdict::does_not_hold
         : answer == vessel::leak_answer::excluded ? verdict::holds
                                                   : verdict::not_enough_known;
}

[[nodiscard]] inline finding leak_finding(const vessel::leak_test& test, const vessel::leak_test_result& result) {
  const bool has_pan = test.readings.front().pan.has_value();
  finding f{.id = "hold.leak", .day = first_fill, .question = "Is it holding?", .says = verdict_of(result.answer)};
  f.numbers = entries(
      entry{"leak", amount_of(result.leak)}, entry{"leak that matters", amount_of(test.leak_that_matters), role::limit},
      entry{has_pan ? "fall of the level beyond the pan's" : "fall of the level", amount_of(result.fall), role::detail},
      entry{"chance of such readings from a tight tank", amount_of(result.chance_without_leak), role::detail},
      entry{"chance that this test proves a leak that matters", amount_of(result.chance_to_show), role::detail},
      entry{"days of readings", amount_of(result.lasted), role::detail},
      entry{"smallest leak that this test proves", amount_of(result.minimum_detectable_leak), role::detail});
  if (!has_pan) f.numbers.push_back({"of it evaporation", amount_of(result.evaporation), role::detail});
  if (result.against_criterion) {
    f.numbers.push_back({"allowed by " + std::string{test.criterion->name},
                         amount_of(result.against_criterion->allowed), role::detail});
    f.sources = {test.criterion->source};
  }
  if (result.answer == vessel::leak_answer::contradictory) {
    f.note = "The level falls by less than evaporation alone would lower it: somebody topped it up, the gauge counts "
             "the other way, or there is less evaporation than given.";
  }
  if (!has_pan && test.evaporation) f.sources.push_back(room::about(room::evaporation_law::shah).source);
  f.before_acting = result.caution.text;
  if (f.says != verdict::holds) {
    if (!has_pan) {
      f.measure_next.push_back("float a pan with the same water in the tank and read both: evaporation then drops out");
    }
    if (!test.readings.front().water) f.measure_next.push_back("read the water's temperature with every level");
    if (result.answer == vessel::leak_answer::undecided) f.measure_next.push_back("go on reading: time shows less");
  }
  return f;
}

[[nodiscard]] inline finding days_finding(const vessel::leak_test_plan& plan, flow_rate leak) {
  finding f{.id = "hold.days", .day = first_fill, .question = "How many days until a leak that matters shows?"};
  const auto needed = vessel::required_duration(plan, leak);
  if (needed) f.numbers.push_back({"days of readings", amount_of(*needed)});
  f.numbers.push_back({"leak to find", amount_of(leak), role::limit});
  f.numbers.push_back({"step of the gauge", amount_of(plan.resolution.get()), role::detail});
  if (needed) {
    if (const auto gauge = vessel::required_resolution(plan, *needed * 0.5, leak)) {
      f.numbers.push_back({"gauge that does it in half the time", amount_of(*gauge), role::detail});
    }
  } else {
    f.says = verdict::not_enough_known;
    f.note = "No number of days is enough: the evaporation is not known well enough to see so small a leak behind it.";
    f.measure_next.push_back("float a pan with the same water in the tank and read both: evaporation then drops out");
  }
  f.before_acting = vessel::leak_test_caution.text;
  return f;
}

/// Readings, fitted line, and what a tight tank would have done, all as heights above the last reading.
[[nodiscard]] inline figure hold_figure(const vessel::leak_test& test, const vessel::leak_test_result& result) {
  const auto height = [](const vessel::level_reading& r) { return r.level->value() - (r.pan ? r.pan->value() : 0.0); };
  const bool has_pan = test.readings.front().pan.has_value();
  figure picture{.id = "hold.leak",
                 .title = has_pan ? "Level less the pan's, the fitted line, and a tight tank"
                                  : "Level, the fitted line, and a tight tank with evaporation alone",
                 .across = {"time", "duration"},
                 .up = {"above the last reading", "length"}};
  const double last = height(test.readings.back());
  const double start = test.readings.front().at->value();
  curve seen{.label = "readings", .as = stroke::points};
  curve fitted{.label = "fitted line"};
  curve tight{.label = "tight tank", .as = stroke::dashed};
  double mean_x = 0.0;
  double mean_y = 0.0;
  for (const vessel::level_reading& r : test.readings) {
    seen.x.push_back(r.at->value() - start);
    seen.y.push_back(height(r) - last);
    mean_x += seen.x.back();
    mean_y += seen.y.back();
  }
  mean_x /= static_cast<double>(seen.x.size());
  mean_y /= static_cast<double>(seen.y.size());
  const double top = mean_y + result.fall.central.value() * mean_x;
  for (const double x : {0.0, result.lasted.value()}) {
    fitted.x.push_back(x);
    fitted.y.push_back(top - result.fall.central.value() * x);
    tight.x.push_back(x);
    tight.y.push_back(top - result.evaporation.central.value() * x);
    tight.low.push_back(top - result.evaporation.high.value() * x);
    tight.high.push_back(top - result.evaporation.low.value() * x);
  }
  picture.curves = {std::move(fitted), std::move(tight), std::move(seen)};
  return picture;
}

}  // namespace detail

/// The decisions of the first fill: the leak with its confidence, and the days that a leak of a given size needs.
///
///   `read_leak_test` and `required_duration`; evaporation from `room::evaporation` where there is neither a pan nor a figure
///
/// @param section the test as done, as planned, or both; the air of the room
/// @return        findings hold.leak and hold.days
/// @throws        invalid_input, out_of_range (from the functions used)
/// @accuracy      as its parts
/// @source        the sources of `vessel/leak_test.hpp` and `room/evaporation.hpp`, carried by each finding
[[nodiscard]] inline std::vector<finding> assess_hold(const hold_section& section) {
  std::vector<finding> all;
  if (section.done) {
    const vessel::leak_test test = detail::with_evaporation(*section.done, section);
    all.push_back(detail::leak_finding(test, vessel::read_leak_test(test)));
  }
  if (section.planned && section.leak_to_see) {
    all.push_back(detail::days_finding(*section.planned, *section.leak_to_see));
  }
  return all;
}

/// The readings of the hold test, drawn: hold.leak.
///
///   the line fitted by `read_leak_test`, and what a tight tank would have done
///
/// @param section the test as done; without one there is no figure
/// @return        the figure hold.leak, heights above the last reading [m] over time [s]
/// @throws        invalid_input, out_of_range (from the functions used)
/// @accuracy      as its parts
/// @source        the sources of `vessel/leak_test.hpp` and `room/evaporation.hpp`
[[nodiscard]] inline std::vector<figure> figures_of(const hold_section& section) {
  if (!section.done) return {};
  const vessel::leak_test test = detail::with_evaporation(*section.done, section);
  return {detail::hold_figure(test, vessel::read_leak_test(test))};
}

}  // namespace tankwright::commissioning
