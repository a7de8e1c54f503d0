// SPDX-License-Identifier: BSL-1.0
/// @file
/// On which scale is this pH? In seawater the scales differ by up to 0.15, which is 30 % of the free ammonia; so each
/// has its own type.
#pragma once

#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/validity.hpp>

namespace tankwright::water {

namespace detail {}

inline constexpr limits ph_limits{"pH", "", {0.0, 14.0}};

/// pH on the total hydrogen ion scale: what a probe reads that was calibrated with Tris buffer in artificial seawater.
class ph_total : public core::scalar<ph_total> {
  using scalar::scalar;
};
/// pH on the free hydrogen ion scale; about 0.11 above the total scale in seawater.
class ph_free : public core::scalar<ph_free> {
  using scalar::scalar;
};
/// pH of a probe calibrated with the ordinary (NBS, NIST) buffers, the usual case. In seawater it reads near the free
/// scale.
class ph_nbs : public core::scalar<ph_nbs> {
  using scalar::scalar;
};

/// A pH on any of the three scales. Made from one of their types, never from a bare number.
class ph_reading {
 public:
  enum class scale { total, free, nbs };
  constexpr ph_reading(ph_total ph) noexcept : value_{ph.value()}, on_{scale::total} {}
  constexpr ph_reading(ph_free ph) noexcept : value_{ph.value()}, on_{scale::free} {}
  constexpr ph_reading(ph_nbs ph) noexcept : value_{ph.value()}, on_{scale::nbs} {}
  [[nodiscard]] constexpr double value() const noexcept { return value_; }
  [[nodiscard]] constexpr scale on() const noexcept { return on_; }

 private:
  double value_;
  scale on_;
};

}  // namespace tankwright::water
