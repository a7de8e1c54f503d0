// SPDX-License-Identifier: BSL-1.0
/// @file
/// Was it measured inside or outside? Water fills the inside, a tape measures mostly the outside, and the panels
/// between them are volume. The two are different types, and the panels are the way from one to the other.
#pragma once

#include <compare>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/vessel/detail/check.hpp>

namespace tankwright::vessel {

namespace detail {

/// The common part of the two: a length that says where it was measured.
template <class Self>
class measured_length {
 public:
  constexpr explicit measured_length(length value) noexcept : value_{value} {}
  [[nodiscard]] constexpr length value() const noexcept { return value_; }

  friend constexpr auto operator<=>(const Self& a, const Self& b) noexcept {
    return a.value().value() <=> b.value().value();
  }
  friend constexpr bool operator==(const Self& a, const Self& b) noexcept {
    return a.value().value() == b.value().value();
  }

 private:
  length value_;
};

}  // namespace detail

/// A dimension between the inner faces of the panels: what the water sees. `inside{centimetres(240)}`.
class inside : public detail::measured_length<inside> {
  using measured_length::measured_length;
};

/// A dimension between the outer faces: what a tape laid along the tank reads. `outside{inches(96)}`.
class outside : public detail::measured_length<outside> {
  using measured_length::measured_length;
};

/// An outside dimension with the panels at its two ends. An open top has a far panel of zero thickness.
struct outside_measure {
  required<outside> measured;
  required<length> near_panel;
  required<length> far_panel;
};

/// The inside dimension that is left between two panels.
///
///   inside = outside - near panel - far panel
///
/// @param measure outside dimension [m] > 0; thickness of the panel at each end [m] >= 0
/// @return        inside dimension [m]
/// @throws        invalid_input, also when the panels are as thick as the whole
/// @accuracy      exact
/// @source        definition
[[nodiscard]] constexpr inside inside_of(const outside_measure& measure) {
  constexpr std::string_view here = "tankwright::vessel::inside_of";
  const length whole = measure.measured->value();
  core::check(here, detail::positive_length("outside dimension"), whole.value());
  core::check(here, detail::length_from_zero("near panel"), measure.near_panel->value());
  core::check(here, detail::length_from_zero("far panel"), measure.far_panel->value());
  const length left = whole - measure.near_panel.get() - measure.far_panel.get();
  if (!(left.value() > 0.0)) {
    core::fail<invalid_input>(here, "outside dimension", whole.value(), "m",
                              "leaves nothing between panels of " + core::number_text(measure.near_panel->value()) +
                                  " m and " + core::number_text(measure.far_panel->value()) + " m");
  }
  return inside{left};
}

}  // namespace tankwright::vessel
