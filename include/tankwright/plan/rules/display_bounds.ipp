// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/vessel_inputs.hpp>
#include <tankwright/plan/rules/display_bounds.hpp>

namespace tankwright::plan::rules {

namespace detail {

/// Whether the keys that the shape of the display is made of are there.
[[nodiscard]] inline bool has_outline(const vessel_section& v) {
  const bool outside = v.measured && *v.measured == measured_at::outside;
  if (!v.shape || !v.height || (outside && !(v.wall_thickness && v.floor_thickness))) return false;
  if (*v.shape == display_shape::cylinder) return v.diameter.known();
  return v.length && v.width && (*v.shape != display_shape::bow_front || v.bow);
}

}  // namespace detail

TANKWRIGHT_INLINE std::optional<display_bounds> bounds_of(const build& build) {
  if (!build.vessel || !detail::has_outline(*build.vessel)) return std::nullopt;
  const vessel_section& v = *build.vessel;
  try {
    const tankwright::vessel::shape shape = shape_of(v);
    const bool outside = *v.measured == measured_at::outside;
    const length walls = 2.0 * (outside ? v.wall_thickness.get() : thickest_wall);
    const auto across = [&](const value<length>& key) { return outside ? *key - walls : *key; };
    const bound<length> rim{shape.height(), "vessel.height"};
    const auto seen = [&](length wall, length line, length around, const std::string& path) {
      return display_bounds{shape, rim, {wall, path}, {line, path}, {line, path, walls}, {around, path}};
    };
    if (*v.shape == display_shape::cylinder) {
      const length round = across(v.diameter);
      return seen(std::numbers::pi * round, round, std::numbers::pi * round, "vessel.diameter");
    }
    const length front = across(v.length), deep = across(v.width);
    const length bow = v.bow.value_or(length{});  // its arc is shorter than chord and twice the bow
    return seen(std::max(front + 2.0 * bow, deep), metres(std::hypot(in_metres(front), in_metres(deep + bow))),
                2.0 * (front + deep + 2.0 * bow), front >= deep ? "vessel.length" : "vessel.width");
  } catch (const error&) {
    return std::nullopt;  // the checks of its keys say why
  }
}

TANKWRIGHT_INLINE bound<area> display_bounds::floor() const {
  return about(tankwright::vessel::plan_area(shape, length{}), wall.path);
}
TANKWRIGHT_INLINE bound<area> display_bounds::surface_at(length level, proportion doubt) const {
  const length within = level > rim.most ? rim.most : level > length{} ? level : length{};  // of NaN: the floor
  return about(tankwright::vessel::plan_area(shape, within), wall.path, doubt);
}
TANKWRIGHT_INLINE bound<volume> display_bounds::capacity() const {
  return {shape.capacity(), rim.path, shape.capacity() * areas_agree};
}

TANKWRIGHT_INLINE std::optional<sump_bounds> sump_bounds_of(const build& build) {
  if (!build.plumbing || !build.plumbing->sump) return std::nullopt;
  const sump& s = *build.plumbing->sump;
  if (!s.rim || !((*s.rim).value() > 0.0) || !std::isfinite((*s.rim).value()) || s.chamber.empty()) return std::nullopt;
  sump_bounds seen{.chambers = {}, .free = {}, .rim = {*s.rim, "plumbing.sump.rim"}};
  for (const chamber& one : s.chamber) {
    if (!one.area || !((*one.area).value() > 0.0) || !(*one.gear < *one.area)) return std::nullopt;
    seen.chambers += *one.area;
    seen.free += *one.area - *one.gear;
  }
  if (!std::isfinite(seen.free.value())) return std::nullopt;
  if (s.running_level) seen.running_level = bound<length>{*s.running_level, "plumbing.sump.running_level"};
  return seen;
}

TANKWRIGHT_INLINE bound<area> sump_bounds::floor(proportion doubt) const {
  return about(chambers, "plumbing.sump.chamber", doubt);
}
TANKWRIGHT_INLINE bound<volume> sump_bounds::capacity() const { return {free * rim.most, rim.path}; }

}  // namespace tankwright::plan::rules
