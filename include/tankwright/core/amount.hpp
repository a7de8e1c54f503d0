// SPDX-License-Identifier: BSL-1.0
/// @file
/// Any quantity of the library as data: what a report, a file or a front end carries instead of a type.
#pragma once

#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantity_name.hpp>

namespace tankwright {

/// SI numbers, and the name of the quantity ("flow_rate") that tells the unit. Temperatures are in kelvin, proportions
/// and humidities are fractions, salinities are numbers of their own scale.
struct amount {
  std::string_view quantity;
  double low;
  double central;
  double high;
  std::string_view reason{};  ///< of the band; empty for a sharp number, whose three values agree

  [[nodiscard]] constexpr bool is_sharp() const noexcept { return low == high; }
};

/// A quantity as an amount without a band.
///
/// @param q any quantity or thin type of the library
/// @return  its SI number under its name
/// @accuracy exact
/// @source  unit table
template <class Q>
[[nodiscard]] constexpr amount amount_of(const Q& q) noexcept {
  const double si = core::si_number(q);
  return {core::quantity_name<Q>(), si, si, si};
}

/// An estimate as an amount with its band.
///
/// @param e an estimate of any quantity or thin type of the library
/// @return  its SI numbers under its name, with the reason of the band
/// @accuracy exact
/// @source  unit table
template <class Q>
[[nodiscard]] constexpr amount amount_of(const estimate<Q>& e) noexcept {
  return {core::quantity_name<Q>(), core::si_number(e.low), core::si_number(e.central), core::si_number(e.high),
          e.reason};
}

}  // namespace tankwright
