// SPDX-License-Identifier: BSL-1.0
/// @file
/// Quantities as text: read what people write ("7 ft 10 1/2 in", "25 °C", "300 US gal"), and write what they like to
/// read.
///
/// Opt-in: `core.hpp` does not include this header. Units and factors are those of the unit table. Nothing here depends
/// on the locale: the decimal mark is a point, a comma is refused (it means two things), thousands may be grouped with
/// spaces. What has two readings is refused with both shown: a bare "gal" or "gph", "25°", "ton".
#pragma once

#include <cmath>
#include <numeric>
#include <string>
#include <string_view>
#include <type_traits>

#include <tankwright/core/amount.hpp>
#include <tankwright/text/detail/read.hpp>

namespace tankwright::text {

/// A type that can be read and written as text: the quantities of the unit table, temperatures, the thin types of
/// `thin_types.hpp`, and `double` for a pure number.
template <class Q>
concept has_text = !core::quantity_name<Q>().empty();

namespace detail {

/// A number of a quantity in a unit that is given as text; refuses a unit of something else.
[[nodiscard]] inline double number_in_unit(double si, std::string_view quantity, std::string_view symbol) {
  std::string expected = "a unit of ";
  const std::string_view words = words_of(quantity).words;
  expected.append(words.substr(words.find(' ') + 1)).append(units_text(quantity));
  scanner in{symbol, "tankwright::text::in", expected};
  const unit_product product = unit_reader{in, quantity}.read();
  if (!in.at_end()) in.fail(in.place(), in.found());
  if (product.empty()) {
    if (words_of(quantity).si.empty()) return si;  // a pure number
    in.fail(0, "no unit given");
  }
  const unit_row* unit = find_unit(product);
  if (!unit && product.has("gal")) in.fail(0, std::string{symbol} + " can be US or imperial");
  if (!unit) in.fail(0, std::string{symbol} + " is not a unit known here");
  if (unit->quantity != quantity && unit->quantity != measured_as(quantity)) {
    in.fail(0, std::string{symbol} + " measures " + std::string{words_of(unit->quantity).words});
  }
  const double number = number_from_si(*unit, quantity, si);
  // The zero of a temperature scale lies far from 0 K, so 0 degC may come back as 6e-14.
  return unit->quantity == "temperature" && std::fabs(number) < 1e-10 ? 0.0 : number;
}

[[nodiscard]] inline std::string with_unit(std::string number, std::string_view symbol) {
  if (!symbol.empty()) number.append(symbol == "°" ? "" : " ").append(symbol);
  return number;
}

}  // namespace detail

// ---- reading --------------------------------------------------------------------------------------------------------

/// Read a quantity from text: `parse<volume>("300 US gal")`, `parse<temperature>("77 F")`, `parse<double>("1.0264")`.
///
/// A number, with a unit unless `Q` has none; also "7 ft 10 1/2 in", "7' 10 1/2\"", "1 h 30 min", "2 150 L", "½ in".
///
/// @param text at most 160 bytes of UTF-8; bytes of any kind are safe
/// @return     the quantity, finite; a temperature is not below absolute zero, a proportion is from 0 to 1
/// @throws     text_error: carries the text, the position, what is wrong there and what was expected
/// @accuracy   the number is rounded once, then converted as the makers do: parse<length>("95 in") == inches(95)
/// @source     unit table
template <has_text Q>
[[nodiscard]] Q parse(std::string_view text) {
  return core::from_si_number<Q>(detail::si_from_text(text, core::quantity_name<Q>()));
}

// ---- writing --------------------------------------------------------------------------------------------------------

/// How many digits a written number gets. Make it with `significant(4)` or `decimals(1)`.
struct digits {
  int count;
  bool after_point;
};
/// So many digits from the first that is not zero; zeros at the end are not written.
///
/// @param count 1 to 17; the nearer end where it lies outside
/// @return      how to write a number
/// @accuracy    not a computation
/// @source      none: a choice of form
[[nodiscard]] constexpr digits significant(int count) noexcept { return {count, false}; }
/// So many digits after the point, zeros written too, for columns. Below 0: rounded to tens, hundreds, ...
///
/// @param count -15 to 17; the nearer end where it lies outside
/// @return      how to write a number
/// @accuracy    not a computation
/// @source      none: a choice of form
[[nodiscard]] constexpr digits decimals(int count) noexcept { return {count, true}; }

/// A pure number: "1.026", "2150", "0.00012". An exponent only below 0.0001 and from a thousand million on.
///
/// @param number any number; "nan", "inf" and "-inf" where it is none
/// @param with   how many digits
/// @return       the text
/// @throws       nothing of its own
/// @accuracy     correctly rounded to the digits asked for
/// @source       ISO/IEC 14882:2020, charconv
[[nodiscard]] inline std::string of(double number, digits with = significant(4)) {
  return with.after_point ? detail::decimals_text(number, with.count) : detail::significant_text(number, with.count);
}

/// The number of a quantity in a unit given as text, as the reader for that unit gives it.
///
/// @param quantity any quantity that `parse` can read
/// @param unit     a unit of that quantity, spelled in any way that `parse` understands
/// @return         the number, in `unit`
/// @throws         text_error for a unit that is not known or measures something else
/// @accuracy       that of the readers: one rounding
/// @source         unit table
template <has_text Q>
[[nodiscard]] double number_in(const Q& quantity, std::string_view unit) {
  return detail::number_in_unit(core::si_number(quantity), core::quantity_name<Q>(), unit);
}

/// The central number of an amount in a unit given as text.
///
/// @param value any quantity, as data
/// @param unit  as for `number_in` of a quantity
/// @return      the number, in `unit`
/// @throws      text_error for a unit that is not known or measures something else
/// @accuracy    that of the readers: one rounding
/// @source      unit table
[[nodiscard]] inline double number_in(const amount& value, std::string_view unit) {
  return detail::number_in_unit(value.central, value.quantity, unit);
}

/// A quantity in a unit given as text, which is printed as it is given: in(v, "m³") is "2.15 m³".
///
/// @param quantity any quantity that `parse` can read
/// @param unit     as for `number_in`; empty for a pure number and for practical salinity
/// @param with     how many digits
/// @return         number and unit; "nan" or "inf" and unit for what is not a number
/// @throws         text_error for a unit that is not known or measures something else
/// @accuracy       correctly rounded to the digits asked for
/// @source         unit table
template <has_text Q>
[[nodiscard]] std::string in(const Q& quantity, std::string_view unit, digits with = significant(4)) {
  return detail::with_unit(of(number_in(quantity, unit), with), unit);
}

/// An amount with its band, to two digits of its half width: "3.7 L/d (2.3 to 4.6)"; without a band "3.7 L/d".
///
/// @param value any quantity with its band, as data
/// @param unit  as for `number_in`
/// @param sharp how many digits where there is no band
/// @return      central value, unit, and the band in the same unit
/// @throws      text_error for a unit that is not known or measures something else
/// @accuracy    correctly rounded to the digits written
/// @source      unit table
[[nodiscard]] inline std::string in(const amount& value, std::string_view unit, digits sharp = significant(4)) {
  const double low = detail::number_in_unit(value.low, value.quantity, unit);
  const double central = detail::number_in_unit(value.central, value.quantity, unit);
  const double high = detail::number_in_unit(value.high, value.quantity, unit);
  const double half_width = 0.5 * std::fabs(high - low);
  if (value.is_sharp()) return detail::with_unit(of(central, sharp), unit);
  digits with = significant(4);
  if (half_width > 0.0 && std::isfinite(half_width)) {
    with = decimals(1 - static_cast<int>(std::floor(std::log10(half_width))));
  }
  return detail::with_unit(of(central, with), unit) + " (" + of(low, with) + " to " + of(high, with) + ")";
}

/// An estimate with its band, as `in` of an amount.
///
/// @param value an estimate of any quantity that `parse` can read
/// @param unit  as for `number_in`
/// @return      central value, unit, and the band in the same unit
/// @throws      text_error for a unit that is not known or measures something else
/// @accuracy    correctly rounded to the digits written
/// @source      unit table
template <has_text Q>
[[nodiscard]] std::string in(const estimate<Q>& value, std::string_view unit) {
  return in(amount_of(value), unit);
}

/// The two sets of everyday units.
enum class unit_system { si, us };

/// A unit symbol as it is printed: "m2" is "m²", "degC" is "°C", "ug/L" is "µg/L".
///
/// @param symbol of the unit table, or one that is printed so already
/// @return       the symbol as people write it by hand
/// @throws       nothing but std::bad_alloc
/// @accuracy     not a computation
/// @source       this library
[[nodiscard]] inline std::string shown_unit(std::string_view symbol) {
  std::string all;
  if (symbol.starts_with("deg")) {
    all = "°";
    symbol.remove_prefix(3);
  } else if (symbol.size() > 1 && symbol.front() == 'u' && (symbol[1] == 'g' || symbol[1] == 'm' || symbol[1] == 'S')) {
    all = "µ";
    symbol.remove_prefix(1);
  }
  for (const char c : symbol) {
    switch (c) {
      case '2':
        all += "²";
        break;
      case '3':
        all += "³";
        break;
      case '4':
        all += "⁴";
        break;
      default:
        all += c;
    }
  }
  return all;
}

/// The unit in which an amount of this size is shown from day to day: millimetres or metres, inches or feet.
///
/// @param value  any quantity, as data; the size of its central value counts
/// @param system SI or US customary units; where the trade has no US unit, the SI one
/// @return       a unit for `in` and `number_in`; empty for a pure number
/// @throws       nothing of its own
/// @accuracy     not a computation
/// @source       common practice
[[nodiscard]] inline std::string_view everyday_unit(const amount& value, unit_system system) {
  const detail::quantity_words words = detail::words_of(value.quantity);
  std::string_view ladder = system == unit_system::us ? words.us : words.si;
  std::string_view unit = ladder.substr(0, ladder.find('|'));
  for (std::size_t bar = ladder.find('|'); bar != std::string_view::npos; bar = ladder.find('|')) {
    ladder.remove_prefix(bar + 1);
    const detail::rung larger = detail::rung_of(ladder.substr(0, ladder.find('|')));
    if (!(std::fabs(detail::number_in_unit(value.central, value.quantity, larger.unit)) >= larger.from)) return unit;
    unit = larger.unit;
  }
  return unit;
}

/// The unit in which a quantity of this size is shown from day to day.
///
/// @param quantity any quantity that `parse` can read
/// @param system   SI or US customary units; where the trade has no US unit, the SI one
/// @return         a unit for `in` and `number_in`; empty for a pure number
/// @throws         nothing of its own
/// @accuracy       not a computation
/// @source         common practice
template <has_text Q>
[[nodiscard]] std::string_view everyday_unit(const Q& quantity, unit_system system) {
  return everyday_unit(amount_of(quantity), system);
}

/// An amount with its band, in its everyday unit.
///
/// @param value  any quantity with its band, as data
/// @param system SI or US customary units
/// @return       "3.7 L/d (2.3 to 4.6)", "24 °C"
/// @throws       nothing of its own
/// @accuracy     correctly rounded to the digits written
/// @source       unit table
[[nodiscard]] inline std::string of(const amount& value, unit_system system) {
  // A tenth of a degree; a specific gravity to the fourth decimal, a density of water to a tenth of a kilogram.
  const bool heavy = value.quantity == "mass_density" && value.central >= 100.0;
  const digits sharp = value.quantity == "temperature"        ? significant(3)
                       : value.quantity == "specific_gravity" ? decimals(4)
                       : heavy                                ? significant(5)
                                                              : significant(4);
  return in(value, everyday_unit(value, system), sharp);
}

/// A quantity in its everyday unit: "240 mm", "7.5 ft", "24 °C".
///
/// @param quantity any quantity that `parse` can read
/// @param system   SI or US customary units
/// @param with     how many digits
/// @return         number and unit
/// @throws         nothing of its own
/// @accuracy       correctly rounded to the digits asked for
/// @source         unit table
template <has_text Q>
[[nodiscard]] std::string of(const Q& quantity, unit_system system, digits with = significant(4)) {
  return in(quantity, everyday_unit(quantity, system), with);
}

/// An estimate with its band, in the everyday unit of its central value.
///
/// @param value  an estimate of any quantity that `parse` can read
/// @param system SI or US customary units
/// @return       "3.7 L/d (2.3 to 4.6)"
/// @throws       nothing of its own
/// @accuracy     correctly rounded to the digits written
/// @source       unit table
template <has_text Q>
[[nodiscard]] std::string of(const estimate<Q>& value, unit_system system) {
  return of(amount_of(value), system);
}

/// A length as a tape measure shows it: "7 ft 10 1/2 in", "3/4 in".
///
/// @param size     a length; one that is not finite or is beyond 1e9 ft is written in feet
/// @param smallest the smallest part of an inch: 16 for sixteenths; at least 1
/// @return         feet, inches and a fraction in lowest terms, rounded to the nearest part
/// @throws         invalid_input when `smallest` is below 1
/// @accuracy       half a part
/// @source         unit table
[[nodiscard]] inline std::string feet_and_inches(length size, int smallest = 16) {
  if (smallest < 1) {
    core::fail<invalid_input>("tankwright::text::feet_and_inches", "smallest", smallest, "", "must be at least 1");
  }
  if (!(std::fabs(in_feet(size)) < 1e9)) return text::in(size, "ft");
  const auto parts = std::llround(std::fabs(in_inches(size)) * smallest);
  const auto feet = parts / (12LL * smallest);
  const auto inches = parts / smallest % 12;
  const auto rest = parts % smallest;
  std::string text = in_inches(size) < 0.0 && parts > 0 ? "-" : "";
  if (feet > 0) text += std::to_string(feet) + " ft";
  if (feet > 0 && inches == 0 && rest == 0) return text;
  if (feet > 0) text += " ";
  if (inches > 0 || rest == 0) text += std::to_string(inches);
  if (inches > 0 && rest > 0) text += " ";
  if (rest > 0) {
    const auto common = std::gcd(rest, static_cast<long long>(smallest));
    text += std::to_string(rest / common) + "/" + std::to_string(smallest / common);
  }
  return text + " in";
}

}  // namespace tankwright::text
