// SPDX-License-Identifier: BSL-1.0
/// @file
/// Measured values as text: "2.40 m ± 5 mm", "24 °C ± 0.5 °C", "(2.40 ± 0.005) m", "2150 L +/- 2 %".
#pragma once

#include <cmath>
#include <string>
#include <string_view>

#include <tankwright/core/measured.hpp>
#include <tankwright/text/quantity.hpp>

namespace tankwright::text {

namespace detail {

struct si_with_limits {
  double value;
  double half_width;
  const unit_row* unit = nullptr;  ///< of the value
};

/// Where "±", "+/-" or "+-" stands: its first character, and the one behind it; both the size when there is none.
struct plus_minus_place {
  std::size_t from;
  std::size_t to;
};
[[nodiscard]] inline plus_minus_place find_plus_minus(scanner& in) noexcept {
  for (std::size_t i = 0; i < in.size(); ++i) {
    in.go_to(i);
    if (in.peek() == 0xB1) return {i, i + 1};
    if (in.peek() == '+' && in.peek(1) == '-') return {i, i + 2};
    if (in.peek() == '+' && in.peek(1) == '/' && in.peek(2) == '-') return {i, i + 3};
  }
  return {in.size(), in.size()};
}

[[nodiscard]] inline si_with_limits limits_from_text(std::string_view text, std::string_view quantity,
                                                     std::string_view step) {
  scanner in{text, "tankwright::text::parse_measured", expected_text(quantity) + ", with its limits behind ±"};
  const std::size_t end = in.size();
  const plus_minus_place sign = find_plus_minus(in);
  in.narrow(0, sign.from);
  const unit_row* unit = nullptr;
  if (sign.from == end) {
    const double sharp = read_quantity(in, quantity, nullptr, &unit);
    return {sharp, 0.0, unit};
  }

  // The unit of the limits may stand for both numbers.
  in.narrow(sign.to, end);
  in.skip_spaces();
  const std::size_t limits_start = in.place();
  if (in.peek() == '-') in.fail(limits_start, "limits are not negative");
  const text_part limits = read_part(in, step);
  const bool share = limits.quantity == "proportion" && measured_as(quantity) != "proportion";
  in.narrow(0, sign.from);
  const double value = read_quantity(in, quantity, share ? nullptr : limits.unit, &unit);
  if (share) {
    if (quantity == "temperature") in.fail(limits_start, "a share of a temperature; give degrees");
    return {value, std::fabs(value) * limits.si(), unit};
  }
  in.narrow(limits_start, end);
  return {value, read_quantity(in, step), unit};
}

}  // namespace detail

/// Read a measured value with the limits that it keeps: any value between them is equally likely (`rectangular`).
///
/// Without limits the value counts as exact. A percentage behind the sign is a share of the value, except for
/// proportions and humidities, where it is percentage points.
///
/// @param text as for `parse`, then "±", "+/-" or "+-" and the half width: "2.40 m ± 5 mm", "2.40 ± 0.005 m"
/// @return     the measured value
/// @throws     text_error: carries the text, the position, what is wrong there and what was expected
/// @accuracy   as `parse`; u = half width / sqrt(3)
/// @source     JCGM 100:2008, 4.3.7
template <has_text Q>
[[nodiscard]] measured<Q> parse_measured(std::string_view text) {
  const auto read = detail::limits_from_text(text, core::quantity_name<Q>(), core::quantity_name<step_of<Q>>());
  return rectangular(core::from_si_number<Q>(read.value), core::from_si_number<step_of<Q>>(read.half_width));
}

}  // namespace tankwright::text
