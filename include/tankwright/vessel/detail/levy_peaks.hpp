// SPDX-License-Identifier: BSL-1.0
/// @file
/// Where a plate bends most: on its middle line, at its corners and anywhere. Units and signs as in `levy_modes.hpp`.
#pragma once

#include <cmath>

#include <tankwright/vessel/detail/levy_midline.hpp>
#include <tankwright/vessel/detail/levy_modes.hpp>
#include <tankwright/vessel/detail/levy_twist.hpp>

namespace tankwright::vessel::detail {

template <class T>
struct plate_peaks {
  plate_peak<T> deflection, across, up;  ///< on the middle line
  plate_peak<T> twist;                   ///< at a corner
  plate_peak<T> principal;               ///< the largest principal moment anywhere
};

/// All peaks of a plate.
template <class T>
[[nodiscard]] plate_peaks<T> solve_plate(const plate<T>& p) noexcept {
  plate_modes<T> modes(p);
  const midline_peaks<T> middle = peaks_on_midline(modes);
  plate_peaks<T> peaks{middle.deflection, middle.across, middle.up, {}, {}};
  // On the middle line there is no twist, and at a corner nothing else: both are principal moments.
  peaks.twist = {corner_twist(modes, false), T(0), T(0)};
  peaks.twist.look({corner_twist(modes, true), T(0), T(1)});
  peaks.principal = middle.across;
  peaks.principal.look(middle.up);
  peaks.principal.look(peaks.twist);
  // Where the panel is wide for its water and the top is free or far, the sides carry the load by twisting, and the
  // worst place is in between. For a thinner layer there are too few modes.
  const bool shallow = p.load.partly_filled && p.load.level < T(0.0072L) * p.width;
  if (!shallow && std::fabs(peaks.twist.value) > T(0.5L) * std::fabs(peaks.principal.value)) {
    peaks.principal = largest_principal(modes, peaks.principal);
  }
  return peaks;
}

}  // namespace tankwright::vessel::detail
