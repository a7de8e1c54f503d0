// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much water is in it at this depth, and how deep is it with this much water? Boxes, cylinders, prisms on any
/// plan, bow fronts, frustums. Several shapes as one vessel: `compound.hpp`.
///
/// Every dimension is taken between the inner faces; `dimensions.hpp` gets there from the outside.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/numerics/root.hpp>
#include <tankwright/vessel/detail/check.hpp>
#include <tankwright/vessel/detail/part.hpp>
#include <tankwright/vessel/dimensions.hpp>
#include <tankwright/vessel/polygon.hpp>

namespace tankwright::vessel {

class shape;

namespace detail {
[[nodiscard]] shape shape_of(std::string label, std::vector<part> parts, double rim);
[[nodiscard]] inline const std::vector<part>& parts_of(const shape& s) noexcept;
}  // namespace detail

/// The hollow that holds the water. Made by the functions below; it cannot be made wrong.
class shape {
 public:
  [[nodiscard]] const std::string& label() const noexcept { return label_; }
  /// From the lowest point of the floor to the lowest point of the rim.
  [[nodiscard]] length height() const noexcept { return length::from_value(steps_.back().depth); }
  /// Volume to the rim.
  [[nodiscard]] volume capacity() const noexcept { return volume::from_value(steps_.back().volume); }

 private:
  friend shape detail::shape_of(std::string label, std::vector<detail::part> parts, double rim);
  friend const std::vector<detail::part>& detail::parts_of(const shape& s) noexcept;
  friend length depth_of(const shape& vessel, volume content);

  /// A depth where a part begins or ends, with the volume up to there.
  struct step {
    double depth;
    double volume;
  };

  shape() = default;

  std::string label_;
  std::vector<detail::part> parts_;
  std::vector<step> steps_;
};

namespace detail {

inline const std::vector<part>& parts_of(const shape& s) noexcept { return s.parts_; }

/// Sum over the parts of what `f(part, depth in the part)` gives; parts above the water give nothing.
template <class F>
[[nodiscard]] double over_parts(const std::vector<part>& parts, double depth, F f) noexcept {
  double sum = 0.0;
  for (const part& p : parts) {
    const double local = depth - p.floor;
    if (local > 0.0) sum += f(p, std::fmin(local, p.height));
  }
  return sum;
}

/// Depths nearer to each other than this part of the height are one: sums of heights round differently.
inline constexpr double same_depth = 1e-12;

[[nodiscard]] inline double volume_at(const std::vector<part>& parts, double depth) noexcept {
  return over_parts(parts, depth, part_volume);
}

inline shape shape_of(std::string label, std::vector<part> parts, double rim) {
  shape s;
  std::vector<double> depths{rim};  // the lowest part stands at 0
  const double slack = same_depth * rim;
  for (const part& p : parts) {
    for (const double z : {p.floor, p.floor + p.height}) {
      if (z < rim - slack) depths.push_back(z);
    }
  }
  std::sort(depths.begin(), depths.end());
  for (const double z : depths) {
    if (s.steps_.empty() || z > s.steps_.back().depth + slack) s.steps_.push_back({z, volume_at(parts, z)});
  }
  s.label_ = std::move(label);
  s.parts_ = std::move(parts);
  return s;
}

[[nodiscard]] inline shape prism_of(std::string label, double plan, double outline, double height) {
  return shape_of(std::move(label), {{part_kind::prism, 0.0, height, {plan, outline}, plan}}, height);
}

}  // namespace detail

/// A rectangular tank.
struct box_size {
  required<inside> length;
  required<inside> width;
  required<inside> height;
  std::string label = "box";
};

/// A rectangular tank.
///
///   V = L W h
///
/// @param size inside length, width and height [m] > 0
/// @return     the shape
/// @throws     invalid_input (names the label and the dimension)
/// @accuracy   exact but for rounding
/// @source     geometry
[[nodiscard]] inline shape box(const box_size& size) {
  constexpr std::string_view here = "tankwright::vessel::box";
  const double l = size.length->value().value(), w = size.width->value().value(), h = size.height->value().value();
  core::check_element(here, size.label, detail::positive_length("length"), l);
  core::check_element(here, size.label, detail::positive_length("width"), w);
  core::check_element(here, size.label, detail::positive_length("height"), h);
  return detail::prism_of(size.label, l * w, 2.0 * (l + w), h);
}

/// A round tank standing on its end.
struct upright_cylinder_size {
  required<inside> diameter;
  required<inside> height;
  std::string label = "cylinder";
};

/// A round tank standing on its end.
///
///   V = pi D^2 h / 4
///
/// @param size inside diameter and height [m] > 0
/// @return     the shape
/// @throws     invalid_input (names the label and the dimension)
/// @accuracy   exact but for rounding
/// @source     geometry
[[nodiscard]] inline shape upright_cylinder(const upright_cylinder_size& size) {
  constexpr std::string_view here = "tankwright::vessel::upright_cylinder";
  const double d = size.diameter->value().value(), h = size.height->value().value();
  core::check_element(here, size.label, detail::positive_length("diameter"), d);
  core::check_element(here, size.label, detail::positive_length("height"), h);
  return detail::prism_of(size.label, 0.25 * std::numbers::pi * d * d, std::numbers::pi * d, h);
}

/// A round tank lying on its side: a drum, a pipe. Heads are flat, or half ellipsoids of the given depth beyond
/// `length`.
struct lying_cylinder_size {
  required<inside> diameter;
  required<inside> length;
  inside head_depth{tankwright::length::from_value(0.0)};
  std::string label = "lying cylinder";
};

/// A round tank lying on its side.
///
///   V = L R^2 (phi - sin phi) / 2 + pi a h^2 (1 - h/(3R)),   cos(phi/2) = 1 - h/R
///
/// @param size inside diameter and length of the straight part [m] > 0; depth a of each head [m] >= 0 (0: flat ends)
/// @return     the shape
/// @throws     invalid_input (names the label and the dimension)
/// @accuracy   volume exact but for rounding; wetted area of ellipsoidal heads to 1e-12
/// @source     geometry; heads as in Jones 2004, Calculating Tank Volume
[[nodiscard]] inline shape lying_cylinder(const lying_cylinder_size& size) {
  constexpr std::string_view here = "tankwright::vessel::lying_cylinder";
  const double d = size.diameter->value().value(), l = size.length->value().value();
  const double head = size.head_depth.value().value();
  core::check_element(here, size.label, detail::positive_length("diameter"), d);
  core::check_element(here, size.label, detail::positive_length("length"), l);
  core::check_element(here, size.label, detail::length_from_zero("head depth"), head);
  return detail::shape_of(size.label, {{detail::part_kind::lying_cylinder, 0.0, d, {0.5 * d, l, head}, 0.0}}, d);
}

/// A tank with upright walls on any plan. The corners are those of the inner faces (`inside_corners` gets them from the
/// outer ones).
struct prism_size {
  required<std::vector<corner>> inside_corners;
  required<inside> height;
  std::string label = "prism";
};

/// A tank with upright walls on any simple polygon: L-shapes, hexagons, corner tanks.
///
///   V = A h,   A by the shoelace formula
///
/// @param size three or more inside corners [m], in either sense; height [m] > 0
/// @return     the shape
/// @throws     invalid_input (a polygon that crosses itself is named by its sides)
/// @accuracy   exact but for rounding
/// @source     geometry
[[nodiscard]] inline shape prism(const prism_size& size) {
  constexpr std::string_view here = "tankwright::vessel::prism";
  const auto points = detail::points_of(size.inside_corners.get());
  detail::check_simple(here, size.label, points);
  const double h = size.height->value().value();
  core::check_element(here, size.label, detail::positive_length("height"), h);
  return detail::prism_of(size.label, std::fabs(detail::signed_area(points)), detail::outline(points), h);
}

/// A tank on a regular polygon: 6 sides for a hexagon, 8 for an octagon.
struct regular_prism_size {
  required<int> sides;  ///< [1]
  required<inside> side;
  required<inside> height;
  std::string label = "regular prism";
};

/// A tank with upright walls on a regular polygon.
///
///   V = n s^2 h / (4 tan(pi/n))
///
/// @param size number of sides, 3 to 1000; inside length of a side and height [m] > 0
/// @return     the shape
/// @throws     invalid_input (names the label and the dimension)
/// @accuracy   exact but for rounding
/// @source     geometry
[[nodiscard]] inline shape regular_prism(const regular_prism_size& size) {
  constexpr std::string_view here = "tankwright::vessel::regular_prism";
  const double n = size.sides.get(), s = size.side->value().value(), h = size.height->value().value();
  core::check_element(here, size.label, {"number of sides", "", {3.0, 1000.0}}, n);
  core::check_element(here, size.label, detail::positive_length("side"), s);
  core::check_element(here, size.label, detail::positive_length("height"), h);
  return detail::prism_of(size.label, n * s * s / (4.0 * std::tan(std::numbers::pi / n)), n * s, h);
}

/// A rectangular tank whose front panel bulges as an arc of a circle.
struct bow_front_size {
  required<inside> width;          ///< along the front, the chord of the arc
  required<inside> depth_at_ends;  ///< front to back at the side panels
  required<inside> bow;            ///< how far the middle of the front stands out
  required<inside> height;
  std::string label = "bow front";
};

/// A rectangular tank with a bowed front.
///
///   A = c d + R^2 (phi - sin phi) / 2,   R = c^2/(8s) + s/2,   tan(phi/4) = 2s/c
///
/// @param size width c, depth at the ends d and height [m] > 0; bow s [m], 0 to c/2
/// @return     the shape
/// @throws     invalid_input; a bow deeper than the radius of its arc is refused
/// @accuracy   exact but for rounding
/// @source     geometry
[[nodiscard]] inline shape bow_front(const bow_front_size& size) {
  constexpr std::string_view here = "tankwright::vessel::bow_front";
  const double c = size.width->value().value(), d = size.depth_at_ends->value().value();
  const double s = size.bow->value().value(), h = size.height->value().value();
  core::check_element(here, size.label, detail::positive_length("width"), c);
  core::check_element(here, size.label, detail::positive_length("depth at the ends"), d);
  core::check_element(here, size.label, detail::length_from_zero("bow"), s);
  core::check_element(here, size.label, detail::positive_length("height"), h);
  if (s < 1e-30) return detail::prism_of(size.label, c * d, 2.0 * (c + d), h);  // flat, to the last digit
  const double radius = c * c / (8.0 * s) + 0.5 * s;
  if (s > 0.5 * c) {
    detail::refuse_of(here, size.label, "bow", s, "m",
                      "is deeper than the radius of its arc, " + core::number_text(radius) +
                          " m; the deepest bow of a front that wide is " + core::number_text(0.5 * c) + " m");
  }
  const double phi = 4.0 * std::atan2(2.0 * s, c);
  return detail::prism_of(size.label, c * d + 0.5 * radius * radius * detail::x_minus_sin(phi),
                          c + 2.0 * d + radius * phi, h);
}

/// A round tank whose wall slopes evenly: a tub, a hopper. One of the two diameters may be zero.
struct frustum_size {
  required<inside> bottom_diameter;
  required<inside> top_diameter;
  required<inside> height;
  std::string label = "frustum";
};

/// A round tank whose wall slopes evenly from the bottom to the top.
///
///   V = pi h (R^2 + R r + r^2) / 3,   r the radius at depth h
///
/// @param size inside diameter at the bottom and at the top [m] >= 0, not both zero; height (upright) [m] > 0
/// @return     the shape
/// @throws     invalid_input (names the label and the dimension)
/// @accuracy   exact but for rounding
/// @source     geometry
[[nodiscard]] inline shape frustum(const frustum_size& size) {
  constexpr std::string_view here = "tankwright::vessel::frustum";
  const double bottom = size.bottom_diameter->value().value(), top = size.top_diameter->value().value();
  const double h = size.height->value().value();
  core::check_element(here, size.label, detail::length_from_zero("bottom diameter"), bottom);
  core::check_element(here, size.label, detail::length_from_zero("top diameter"), top);
  core::check_element(here, size.label, detail::positive_length("height"), h);
  if (bottom == 0.0) core::check_element(here, size.label, detail::positive_length("larger diameter"), top);
  const double r = 0.5 * bottom;
  return detail::shape_of(size.label, {{detail::part_kind::cone, 0.0, h, {r, 0.5 * top}, std::numbers::pi * r * r}}, h);
}

namespace detail {

/// The depth of the water, held against the rim.
[[nodiscard]] inline double depth_in(std::string_view function, const shape& vessel, length depth) {
  const double rim = vessel.height().value();
  if (depth.value() > rim) {
    refuse_of(function, vessel.label(), "depth", depth.value(), "m",
              "is above the rim, which is at " + core::number_text(rim) + " m");
  }
  core::check_element(function, vessel.label(), {"depth", "m", {0.0, rim}}, depth.value());
  return depth.value();
}

}  // namespace detail

/// Volume below a depth.
///
///   V(h), the formula of the shape
///
/// @param vessel the shape
/// @param depth  of the water above the lowest point of the floor [m], 0 to the height of the rim
/// @return       volume [m^3]
/// @throws       invalid_input, also when the water would stand above the rim
/// @accuracy     exact but for rounding
/// @source       geometry
[[nodiscard]] inline volume filled_volume(const shape& vessel, length depth) {
  const double h = detail::depth_in("tankwright::vessel::filled_volume", vessel, depth);
  return volume::from_value(detail::volume_at(detail::parts_of(vessel), h));
}

/// Area of the water's surface at a depth.
///
///   A(h) = dV/dh
///
/// @param vessel the shape
/// @param depth  of the water above the lowest point of the floor [m], 0 to the height of the rim
/// @return       free surface [m^2]; where a part begins or ends, that just below; at depth 0 that of the floor
/// @throws       invalid_input, also when the water would stand above the rim
/// @accuracy     exact but for rounding
/// @source       geometry
[[nodiscard]] inline area plan_area(const shape& vessel, length depth) {
  const double h = detail::depth_in("tankwright::vessel::plan_area", vessel, depth);
  const double slack = detail::same_depth * vessel.height().value();
  double sum = 0.0;
  for (const detail::part& p : detail::parts_of(vessel)) {
    const double local = h - p.floor;
    const bool at_the_surface = (h == 0.0 ? local >= 0.0 : local > slack) && local <= p.height + slack;
    if (at_the_surface) sum += detail::part_plan(p, std::fmin(local, p.height));
  }
  return area::from_value(sum);
}

/// Area of floor and walls below the water.
///
///   floor + walls, the formula of the shape
///
/// @param vessel the shape
/// @param depth  of the water above the lowest point of the floor [m], 0 to the height of the rim
/// @return       wetted area [m^2]; 0 when dry, with the floor from the first film of water on
/// @throws       invalid_input, also when the water would stand above the rim
/// @accuracy     exact but for rounding (ellipsoidal heads: 1e-12)
/// @source       geometry
[[nodiscard]] inline area wetted_area(const shape& vessel, length depth) {
  const double h = detail::depth_in("tankwright::vessel::wetted_area", vessel, depth);
  return area::from_value(detail::over_parts(detail::parts_of(vessel), h, [](const detail::part& p, double local) {
    return p.floor_area + detail::part_wall(p, local);
  }));
}

/// Depth of the water when the vessel holds a volume: the inverse of `filled_volume`.
///
///   V(h) = volume; closed form for prisms and cones, else a bracketed root within the part that the level is in
///
/// @param vessel  the shape
/// @param content volume of water [m^3], 0 to the capacity
/// @return        depth [m]
/// @throws        invalid_input, also when the vessel does not hold that much
/// @accuracy      1e-14 of the height where the surface is not a point or a line
/// @source        geometry
[[nodiscard]] inline length depth_of(const shape& vessel, volume content) {
  constexpr std::string_view here = "tankwright::vessel::depth_of";
  const double v = content.value(), most = vessel.capacity().value();
  if (v > most) {
    detail::refuse_of(here, vessel.label(), "volume", v, "m3",
                      "does not fit: to the rim the vessel holds " + core::number_text(most) + " m3");
  }
  core::check_element(here, vessel.label(), {"volume", "m3", {0.0, most}}, v);
  std::size_t above = 1;
  while (vessel.steps_[above].volume < v) ++above;
  const auto [low, low_volume] = vessel.steps_[above - 1];
  const auto [high, high_volume] = vessel.steps_[above];
  if (v == low_volume) return length::from_value(low);
  if (v == high_volume) return length::from_value(high);
  // Which parts are filling between these two steps, and are they simple?
  const double slack = detail::same_depth * vessel.height().value();
  bool flat = false;
  int curved = 0;
  const detail::part* cone = nullptr;
  for (const detail::part& p : vessel.parts_) {
    if (p.floor > low + slack || p.floor + p.height < high - slack) continue;
    if (p.kind == detail::part_kind::prism) {
      flat = true;
    } else {
      ++curved;
      if (p.kind == detail::part_kind::cone) cone = &p;
    }
  }
  if (curved == 0) return length::from_value(low + (high - low) * ((v - low_volume) / (high_volume - low_volume)));
  if (curved == 1 && !flat && cone != nullptr) {
    const double before = detail::part_volume(*cone, low - cone->floor);
    return length::from_value(std::fmin(cone->floor + detail::cone_depth(*cone, before + (v - low_volume)), high));
  }
  return length::from_value(numerics::bracketed_root<double>(
      here, "depth", [&](double h) { return detail::volume_at(vessel.parts_, h) - v; }, low, high));
}

}  // namespace tankwright::vessel
