// SPDX-License-Identifier: BSL-1.0
/// @file
/// The name of a quantity type as text, and its number in SI: what turns a quantity into data and back.
#pragma once

#include <string_view>
#include <type_traits>

#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/unit_table.hpp>

namespace tankwright::core {

/// The name of a quantity type, as in quantities.hpp; empty for a type that has no text form.
template <class Q>
[[nodiscard]] consteval std::string_view quantity_name() {
#define TANKWRIGHT_QUANTITY_NAME(quantity_type, unit_name, symbol, factor) \
  if (std::is_same_v<Q, quantity_type>) return #quantity_type;
  TANKWRIGHT_UNIT_TABLE(TANKWRIGHT_QUANTITY_NAME)
#undef TANKWRIGHT_QUANTITY_NAME
  if (std::is_same_v<Q, double>) return "number";
  if (std::is_same_v<Q, temperature>) return "temperature";
  if (std::is_same_v<Q, temperature_difference>) return "temperature_difference";
  if (std::is_same_v<Q, proportion>) return "proportion";
  if (std::is_same_v<Q, porosity>) return "porosity";
  if (std::is_same_v<Q, relative_humidity>) return "relative_humidity";
  if (std::is_same_v<Q, absolute_salinity>) return "absolute_salinity";
  if (std::is_same_v<Q, practical_salinity>) return "practical_salinity";
  if (std::is_same_v<Q, gauge_pressure>) return "gauge_pressure";
  if (std::is_same_v<Q, absolute_pressure>) return "absolute_pressure";
  return {};
}

/// The number of a quantity in SI; thin types by their own scale (g/kg, fractions).
template <class Q>
[[nodiscard]] constexpr double si_number(const Q& q) noexcept {
  if constexpr (std::is_same_v<Q, double>) {
    return q;
  } else if constexpr (std::is_same_v<Q, gauge_pressure> || std::is_same_v<Q, absolute_pressure>) {
    return q.value().value();
  } else {
    return q.value();
  }
}

/// The quantity with this number in SI.
template <class Q>
[[nodiscard]] constexpr Q from_si_number(double si) noexcept {
  if constexpr (std::is_same_v<Q, absolute_salinity>) {
    return Q::from_grams_per_kilogram(si);
  } else if constexpr (std::is_same_v<Q, relative_humidity>) {
    return Q::from_fraction(si);
  } else if constexpr (std::is_same_v<Q, proportion>) {
    return tankwright::fraction(si);
  } else if constexpr (std::is_same_v<Q, gauge_pressure> || std::is_same_v<Q, absolute_pressure>) {
    return Q{pressure::from_value(si)};
  } else if constexpr (requires { Q::from_value(si); }) {
    return Q::from_value(si);
  } else {
    return Q{si};
  }
}

/// What two values of a quantity differ by: a pressure between two gauge pressures, the quantity itself for most.
template <class Q>
struct step_type {
  using type = Q;
};
template <>
struct step_type<temperature> {
  using type = temperature_difference;
};
template <>
struct step_type<gauge_pressure> {
  using type = pressure;
};
template <>
struct step_type<absolute_pressure> {
  using type = pressure;
};

/// The name of `step_type` of a quantity, from its name.
[[nodiscard]] constexpr std::string_view step_quantity_name(std::string_view quantity) noexcept {
  if (quantity == "temperature") return "temperature_difference";
  if (quantity == "gauge_pressure" || quantity == "absolute_pressure") return "pressure";
  return quantity;
}

}  // namespace tankwright::core
