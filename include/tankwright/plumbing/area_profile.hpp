// SPDX-License-Identifier: BSL-1.0
/// @file
/// How large is the water surface at each height? The horizontal area of a vessel against height, and the volume below.
#pragma once

#include <cmath>
#include <initializer_list>
#include <limits>
#include <string_view>
#include <vector>

#include <tankwright/core/labelled.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>

namespace tankwright::plumbing {

namespace detail {}

/// The free horizontal area at one height above the floor.
struct area_slice {
  required<length> height;
  required<area> horizontal_area;
};

inline constexpr limits horizontal_area_limits{"horizontal area", "m2", {0.0, 1e6, edge::open}};

class area_profile;

namespace detail {

/// A profile on raw SI numbers: straight pieces from the floor up.
class profile_numbers {
 public:
  explicit profile_numbers(double vertical_walls) noexcept : base_{0.0, vertical_walls, 0.0, 0.0} {}
  explicit profile_numbers(const std::vector<area_slice>& slices) {
    if (slices.empty()) return;  // refused by `check`
    base_ = {slices.front().height->value(), slices.front().horizontal_area->value(), 0.0, 0.0};
    for (std::size_t i = 1; i < slices.size(); ++i) {
      piece& below = above_.empty() ? base_ : above_.back();
      const double z = slices[i].height->value(), a = slices[i].horizontal_area->value();
      const double rise = z - below.z;
      below.slope = rise > 0.0 ? (a - below.a) / rise : 0.0;
      ordered_ = ordered_ && rise >= 0.0;
      above_.push_back({z, a, 0.0, below.volume + 0.5 * (below.a + a) * rise});
    }
  }

  [[nodiscard]] bool vertical() const noexcept { return above_.empty(); }
  [[nodiscard]] double at(double z) const noexcept {
    const piece& p = piece_at(z);
    return p.a + p.slope * (z - p.z);
  }
  [[nodiscard]] double below(double z) const noexcept {
    const piece& p = piece_at(z);
    const double up = z - p.z;
    return p.volume + (p.a + 0.5 * p.slope * up) * up;
  }
  [[nodiscard]] double filled_by(double v) const noexcept {
    const piece* p = &base_;
    for (const piece& next : above_) {
      if (next.volume <= v) p = &next;
    }
    const double more = v - p->volume;
    return p->z + 2.0 * more / (p->a + std::sqrt(p->a * p->a + 2.0 * p->slope * more));
  }
  [[nodiscard]] double smallest() const noexcept {
    double least = base_.a;
    for (const piece& p : above_) least = p.a < least ? p.a : least;
    return least;
  }

  [[nodiscard]] double largest() const noexcept {
    double most = base_.a;
    for (const piece& p : above_) most = p.a > most ? p.a : most;
    return most;
  }

  /// For every straight piece: f(z from, z to, area at `from`, slope); the last ends at `top`.
  template <class F>
  void for_each_piece(double top, F f) const {
    const piece* p = &base_;
    for (const piece& next : above_) {
      f(p->z, next.z, p->a, p->slope);
      p = &next;
    }
    f(p->z, top, p->a, p->slope);
  }

  /// Whether `check` accepts it.
  [[nodiscard]] bool sound() const noexcept {
    return base_.z == 0.0 && ordered_ && horizontal_area_limits.possible.contains(smallest()) &&
           horizontal_area_limits.possible.contains(largest());
  }
  /// Refuse a profile that describes no vessel; the message begins with `label`.
  void check(std::string_view function, std::string_view label) const {
    if (std::isnan(base_.z)) core::refuse_element(function, label, "has a plan profile without slices");
    if (base_.z != 0.0) core::refuse_element(function, label, "has a plan profile that does not start at the floor");
    if (!ordered_) core::refuse_element(function, label, "has a plan profile whose heights do not rise");
    core::check_element(function, label, horizontal_area_limits, base_.a);
    for (const piece& p : above_) core::check_element(function, label, horizontal_area_limits, p.a);
  }

 private:
  struct piece {
    double z;       // from here up
    double a;       // area at z
    double slope;   // dA/dz
    double volume;  // below z
  };

  [[nodiscard]] const piece& piece_at(double z) const noexcept {
    const piece* p = &base_;
    for (const piece& next : above_) {
      if (next.z <= z) p = &next;
    }
    return *p;
  }

  piece base_{std::numeric_limits<double>::quiet_NaN(), {}, {}, {}};
  std::vector<piece> above_;
  bool ordered_ = true;
};

[[nodiscard]] inline const profile_numbers& numbers_of(const area_profile& profile) noexcept;

}  // namespace detail

/// Plan area against height. An area alone stands for vertical walls. Slices start at the floor; between two the area
/// runs straight, two at one height are a step, and above the last the walls are vertical.
class area_profile {
 public:
  area_profile(area vertical_walls) noexcept : numbers_{vertical_walls.value()} {}
  area_profile(std::initializer_list<area_slice> slices) : numbers_{std::vector<area_slice>(slices)} {}
  area_profile(const std::vector<area_slice>& slices) : numbers_{slices} {}

  /// Free area at a height, above a step where there is one.
  [[nodiscard]] area at(length height) const noexcept { return area::from_value(numbers_.at(height.value())); }
  /// Volume between the floor and a height.
  [[nodiscard]] volume below(length height) const noexcept {
    return volume::from_value(numbers_.below(height.value()));
  }
  /// Height that a volume reaches.
  [[nodiscard]] length filled_by(volume water) const noexcept {
    return length::from_value(numbers_.filled_by(water.value()));
  }

 private:
  friend const detail::profile_numbers& detail::numbers_of(const area_profile&) noexcept;
  detail::profile_numbers numbers_;
};

namespace detail {

inline const profile_numbers& numbers_of(const area_profile& profile) noexcept { return profile.numbers_; }

}  // namespace detail
}  // namespace tankwright::plumbing
