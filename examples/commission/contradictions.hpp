// SPDX-License-Identifier: BSL-1.0
/// @file
/// Keys that are each possible and cannot all be true. Refused is what cannot be built, filled or dated that way; what
/// is only unusual passes, and what fails its purpose is a finding of the report.
#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>

#include "plan_file.hpp"

namespace plan_file {

using namespace tankwright;
namespace twc = tankwright::commissioning;

/// Sums of rounded dimensions: 72 in and 182.88 cm are one length.
inline constexpr double rounding = 1e-9;
/// How well plan areas agree that were worked out from different measures, where the plan does not say.
inline constexpr proportion areas_agree = percent(3.0);
/// A lid, a rail or a brace may lie on the walls; where the plan does not give them, they are not thicker than this.
inline constexpr length thickest_wall = metres(0.15);
/// A rail lies on the rim or below it, so its middle is never this far above.
inline constexpr length thickest_rail = metres(0.15);

/// Where nobody asks for a forecast, nothing is after its end.
inline constexpr duration duration_without_end = days(1e9);

inline constexpr text::digits exactly_said = text::significant(6);
[[nodiscard]] inline std::string said(length l) { return text::in(l, "m", exactly_said); }
[[nodiscard]] inline std::string said(area a) { return text::in(a, "m²", exactly_said); }
[[nodiscard]] inline std::string said(volume v) { return text::in(v, "L", exactly_said); }
[[nodiscard]] inline std::string said(duration d) { return text::in(d, "d", exactly_said); }
[[nodiscard]] inline std::string said(practical_salinity s) { return text::of(s.value(), exactly_said); }
[[nodiscard]] inline std::string said(temperature t) { return text::in(t, "°C", exactly_said); }

/// The most that something can be, where that is said, and how much more passes: for walls, for the doubt of a measure.
template <class Q>
struct bound {
  Q most;
  std::string place;
  Q slack{};
};

/// Hold `value`, read from `key`, to a bound: "0.9 m is above the rim of the display, 0.85 m (vessel.height, line 4)".
template <class Q>
void at_most(const section& in, std::string_view key, const Q& value, const bound<Q>& limit, std::string_view is_past) {
  const double most = limit.most.value();
  if (value.value() <= most + limit.slack.value() + rounding * std::fabs(most)) return;
  in.fail_key(key, said(value) + " " + std::string{is_past} + " " + said(limit.most) + " (" + limit.place + ")");
}

/// An area, and the doubt that such areas agree with.
[[nodiscard]] inline bound<area> about(area most, std::string place, proportion doubt = areas_agree) {
  return {most, std::move(place), most * doubt.value()};
}

/// The display as the other sections see it. Its outline comes from the keys that the shape was read from.
struct display {
  const twc::vessel_plan& plan;
  section keys;
  bound<length> rim;         ///< above the floor inside
  bound<length> wall;        ///< the longest, along the inside
  bound<length> line;        ///< the longest straight line over the floor
  bound<length> over_walls;  ///< the same, with the walls at its two ends
  bound<length> around;      ///< along all walls

  [[nodiscard]] bound<area> floor() const { return about(vessel::plan_area(plan.display, length{}), wall.place); }
  [[nodiscard]] bound<area> surface_at(length level) const {
    return about(vessel::plan_area(plan.display, level), wall.place);
  }
  [[nodiscard]] volume capacity() const { return plan.display->capacity(); }
};

[[nodiscard]] inline display display_of(section keys, const twc::vessel_plan& plan) {
  const bool outside = keys.text("measured") == "outside";
  const length walls = 2.0 * (outside ? keys.need<length>("wall_thickness") : thickest_wall);
  const auto across = [&](std::string_view key) {
    return outside ? keys.need<length>(key) - walls : keys.need<length>(key);
  };
  const bound<length> rim{plan.display->height(), keys.place_of("height")};
  const auto seen = [&](length wall, length line, length around, const std::string& place) {
    return display{plan, keys, rim, {wall, place}, {line, place}, {line, place, walls}, {around, place}};
  };
  if (keys.has("diameter")) {
    const length round = across("diameter");
    return seen(std::numbers::pi * round, round, std::numbers::pi * round, keys.place_of("diameter"));
  }
  const length front = across("length");
  const length deep = across("width");
  const length bow = keys.value_or<length>("bow", length{});  // its arc is shorter than chord and twice the bow
  return seen(std::max(front + 2.0 * bow, deep), metres(std::hypot(in_metres(front), in_metres(deep + bow))),
              2.0 * (front + deep + 2.0 * bow), keys.place_of(front >= deep ? "length" : "width"));
}

/// The sump as the other sections see it.
struct sump_seen {
  const plumbing::sump& plan;
  section keys;

  [[nodiscard]] bound<area> floor(proportion doubt = areas_agree) const {
    area sum{};
    for (const plumbing::chamber& one : plan.chambers) sum += one.plan.at(length{});
    return about(sum, keys.place_of("chamber"), doubt);
  }
  [[nodiscard]] bound<length> rim() const { return {plan.rim, keys.place_of("rim")}; }
  [[nodiscard]] bound<length> running_level() const { return {plan.running_level, keys.place_of("running_level")}; }
  [[nodiscard]] volume capacity() const { return plumbing::sump_capacity(plan); }
};

/// All that display and sump can hold.
[[nodiscard]] inline volume tanks_hold(const display* d, const sump_seen* sump) {
  return (d ? d->capacity() : volume{}) + (sump ? sump->capacity() : volume{});
}

/// What cannot be within [vessel], [plumbing] and [life.start_up].
void refuse_within(const display& vessel);
void refuse_within(section in, const twc::plumbing_plan& plan, const sump_seen& sump);
void refuse_within(section in, const twc::start_up_forecast& weeks, bool forecast);

}  // namespace plan_file
