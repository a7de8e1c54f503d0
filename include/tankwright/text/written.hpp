// SPDX-License-Identifier: BSL-1.0
/// @file
/// A quantity as somebody wrote it: its number in SI, the unit it was written in, and how far the truth may lie from
/// it.
/// "35 mm", "35 mm +/- 5 mm", "35 mm ± 10 %", "30 mm .. 40 mm". And back, so that what was read is written the same.
#pragma once

#include <string>
#include <string_view>

#include <tankwright/text/measured.hpp>

namespace tankwright::text {

/// What a written quantity says: its number in SI, and how far the truth may lie to either side.
struct written {
  double si = 0.0;
  std::string_view unit{};  ///< symbol of the unit table; empty for a pure number
  bool has_doubt = false;
  double half_width = 0.0;  ///< in SI
};

namespace detail {

/// "30 mm .. 40 mm", "30 .. 40 mm": the middle, and half of what lies between.
[[nodiscard]] inline written read_range(std::string_view text, std::size_t dots, std::string_view quantity) {
  constexpr std::string_view here = "tankwright::text::parse";
  const std::string expected = expected_text(quantity);
  const unit_row* unit = nullptr;
  scanner upper{text.substr(dots + 2), here, expected};
  const double high = read_quantity(upper, quantity, nullptr, &unit);
  scanner lower{text.substr(0, dots), here, expected};
  const double low = read_quantity(lower, quantity, unit);
  if (!(low <= high)) scanner{text, here, expected}.fail(0, "a range begins with its lower end");
  const double half_width = 0.5 * (high - low);
  return {low + half_width, unit ? unit->symbol : std::string_view{}, true, half_width};
}

}  // namespace detail

/// Read a quantity by the name of its kind, with its unit and its doubt.
///
/// @param text     as for `parse`; then "±", "+/-" or "+-" and a half width or a share in per cent; or two, joined by
///                 " .. " (low .. high, whose middle is the number)
/// @param quantity name of the kind, as in `quantities.hpp`: "length", "flow_rate", "number"
/// @return         number in SI, unit symbol, limits of the doubt
/// @throws         text_error: carries the text, the position, what is wrong there and what was expected
/// @accuracy       as `parse`
/// @source         unit table
[[nodiscard]] inline written read_written(std::string_view text, std::string_view quantity) {
  if (const auto dots = text.find(".."); dots != std::string_view::npos) {
    return detail::read_range(text, dots, quantity);
  }
  detail::scanner in{text, "tankwright::text::parse", detail::expected_text(quantity)};
  if (detail::find_plus_minus(in).from == in.size()) {
    const detail::unit_row* unit = nullptr;
    in.go_to(0);
    const double si = detail::read_quantity(in, quantity, nullptr, &unit);
    return {si, unit ? unit->symbol : std::string_view{}};
  }
  const auto read = detail::limits_from_text(text, quantity, core::step_quantity_name(quantity));
  return {read.value, read.unit ? read.unit->symbol : std::string_view{}, true, read.half_width};
}

/// An example of how a quantity is written: "2.40 m", "25 °C or 77 °F".
///
/// @param quantity name of its kind
/// @return         a text that `read_written` reads (of two, joined by " or ", each)
/// @accuracy       not a computation
/// @source         this library
[[nodiscard]] inline std::string_view example_of(std::string_view quantity) noexcept {
  return detail::words_of(quantity).example;
}

/// The SI unit of a quantity, in the spelling of the unit table; empty for a pure number.
///
/// @param quantity name of its kind
/// @return         a symbol whose factor is 1: "m", "m3/s"
/// @accuracy       exact
/// @source         unit table
[[nodiscard]] inline std::string_view si_unit(std::string_view quantity) noexcept {
  for (const auto& row : detail::unit_rows) {
    if (row.factor == 1.0 && row.quantity == detail::measured_as(quantity)) return row.symbol;
  }
  return {};
}

namespace detail {

/// Whether a text is read as this number; a number that cannot exist (120 % of a proportion) is read as none.
[[nodiscard]] inline bool reads_as(std::string_view text, std::string_view quantity, double si) {
  try {
    return si_from_text(text, quantity) == si;
  } catch (const text_error&) {
    return false;
  }
}

}  // namespace detail

/// Write a number in SI so that `read_written` gives it back to the last bit: in `unit` with the fewest digits that do,
/// otherwise in SI with 17 digits.
///
/// @param si       the number in SI
/// @param unit     symbol of the unit table; empty: everyday SI unit, or a pure number
/// @param quantity name of its kind
/// @return         "35 mm"; "0.0350000000000001 m" where no decimal number of millimetres is the same. A number that
///                 cannot exist is written too, and refused when it is read
/// @throws         text_error for a unit that does not measure the quantity
/// @accuracy       exact there and back
/// @source         unit table
[[nodiscard]] inline std::string write_exactly(double si, std::string_view unit, std::string_view quantity) {
  const auto words = detail::words_of(quantity);
  const bool pure = words.si.empty();
  if (unit.empty() && !pure) unit = everyday_unit(amount{quantity, si, si, si}, unit_system::si);
  for (const std::string_view in : {unit, si_unit(quantity)}) {
    if (in.empty() && !pure) continue;
    const double number = detail::number_in_unit(si, quantity, in);
    for (int count = 1; count <= 17; ++count) {
      std::string text = detail::with_unit(of(number, significant(count)), in);
      if (detail::reads_as(text, quantity, si)) return text;
    }
  }
  // A factor of 1 leaves every double as it is, and so does no unit, where a quantity may stand without: 0.6 for 60 %.
  std::string text = detail::with_unit(of(si, significant(17)), si_unit(quantity));
  if (detail::reads_as(text, quantity, si) || unit.empty()) return text;
  return detail::with_unit(of(detail::number_in_unit(si, quantity, unit), significant(17)), unit);
}

}  // namespace tankwright::text
