// SPDX-License-Identifier: BSL-1.0
/// @file
/// The display and the sump as other sections see them: what fits into them, over them and between their walls, and
/// which key says so.
#pragma once

#include <optional>
#include <string>
#include <tankwright/plan/rules/book.hpp>
#include <tankwright/vessel/shape.hpp>

namespace tankwright::plan::rules {

/// An area as a bound, and how well such areas agree.
///
/// @param most  the area
/// @param path  the key that it comes from
/// @param doubt how much more passes, as a part of it
/// @return      the bound
/// @throws      nothing but std::bad_alloc
/// @accuracy    exact
/// @source      this library
[[nodiscard]] inline bound<area> about(area most, std::string path, proportion doubt = fraction(areas_agree)) {
  return {most, std::move(path), most * doubt.value()};
}

/// The display by its outline.
struct display_bounds {
  tankwright::vessel::shape shape;
  bound<length> rim;         ///< above the floor inside
  bound<length> wall;        ///< the longest, along the inside
  bound<length> line;        ///< the longest straight line over the floor
  bound<length> over_walls;  ///< the same, with the walls at its two ends
  bound<length> around;      ///< along all walls

  [[nodiscard]] bound<area> floor() const;
  /// The surface of water at a level; levels below the floor and above the rim count as these.
  [[nodiscard]] bound<area> surface_at(length level, proportion doubt = fraction(areas_agree)) const;
  [[nodiscard]] bound<volume> capacity() const;
};

/// The sump by its chambers.
struct sump_bounds {
  area chambers;  ///< all of them together
  area free;      ///< the same, less what stands in them
  bound<length> rim;
  std::optional<bound<length>> running_level{};

  [[nodiscard]] bound<area> floor(proportion doubt = fraction(areas_agree)) const;
  [[nodiscard]] bound<volume> capacity() const;
};

/// The display of a plan; none where the plan has none, or where its outline is not known or not possible.
///
/// @param build the plan
/// @return      its bounds, with the paths of the keys that they come from
/// @throws      nothing but std::bad_alloc
/// @accuracy    exact
/// @source      this library
[[nodiscard]] std::optional<display_bounds> bounds_of(const build& build);

/// The sump of a plan; none where the plan has none, or where its rim or a chamber is not known or not possible.
///
/// @param build the plan
/// @return      its bounds, with the paths of the keys that they come from
/// @throws      nothing but std::bad_alloc
/// @accuracy    exact
/// @source      this library
[[nodiscard]] std::optional<sump_bounds> sump_bounds_of(const build& build);

/// All that display and sump can hold.
///
/// @param d  the display; none counts as nothing
/// @param s  the sump; none counts as nothing
/// @return   the volume up to their rims
/// @throws   nothing but std::bad_alloc
/// @accuracy exact
/// @source   this library
[[nodiscard]] inline volume tanks_hold(const std::optional<display_bounds>& d, const std::optional<sump_bounds>& s) {
  return (d ? d->capacity().most : volume{}) + (s ? s->capacity().most : volume{});
}

}  // namespace tankwright::plan::rules

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/rules/display_bounds.ipp>
#endif
