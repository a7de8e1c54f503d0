// SPDX-License-Identifier: BSL-1.0
/// @file
/// A quantity in text: numbers and units together, held against what is wanted.
#pragma once

#include <cmath>
#include <string>
#include <string_view>

#include <tankwright/text/detail/units.hpp>
#include <tankwright/text/number.hpp>

namespace tankwright::text::detail {

// ---- between a number with its unit and SI --------------------------------------------------------------------------
// The same makers and readers as in code, so that parse<length>("95 in") == inches(95) to the last bit.

[[nodiscard]] inline double si_from_number(const unit_row& unit, std::string_view quantity, double number) noexcept {
  if (unit.symbol == "%" || unit.symbol == "% RH") return percent(number).value();
  if (unit.symbol == "degC" && quantity == "temperature") return in_kelvins(celsius(number));
  if (unit.symbol == "degF") {
    return quantity == "temperature" ? in_kelvins(fahrenheit(number)) : in_kelvin_steps(fahrenheit_steps(number));
  }
  return number * unit.factor;
}

[[nodiscard]] inline double number_from_si(const unit_row& unit, std::string_view quantity, double si) noexcept {
  if (unit.symbol == "%" || unit.symbol == "% RH") return in_percent(fraction(si));
  if (unit.symbol == "degC" && quantity == "temperature") return in_celsius(kelvins(si));
  if (unit.symbol == "degF") {
    return quantity == "temperature" ? in_fahrenheit(kelvins(si)) : in_fahrenheit_steps(kelvin_steps(si));
  }
  return si / unit.factor;
}

// ---- what is expected, in words -------------------------------------------------------------------------------------

/// "a length such as 2.40 m"
[[nodiscard]] inline std::string expected_text(std::string_view quantity) {
  const quantity_words about = words_of(quantity);
  std::string text{about.words};
  if (!about.example.empty()) text.append(" such as ").append(about.example);
  return text;
}

/// The quantity whose units a text may use for `quantity`.
[[nodiscard]] constexpr std::string_view measured_as(std::string_view quantity) noexcept {
  if (quantity == "gauge_pressure" || quantity == "absolute_pressure") return "pressure";
  if (quantity == "temperature_difference") return "temperature";
  if (quantity == "porosity" || quantity == "relative_humidity") return "proportion";
  return quantity;
}

/// " (m, cm, mm, um, nm, in, ft)"
[[nodiscard]] inline std::string units_text(std::string_view quantity) {
  std::string text;
  for (const auto& unit : unit_rows) {
    if (unit.quantity == measured_as(quantity)) text.append(text.empty() ? " (" : ", ").append(unit.symbol);
  }
  return text.empty() ? text : text + ")";
}

// ---- units ----------------------------------------------------------------------------------------------------------

[[nodiscard]] inline bool is_word(std::string_view written, std::string_view lower_case) noexcept {
  if (written.size() != lower_case.size()) return false;
  for (std::size_t i = 0; i < written.size(); ++i) {
    if (lower(written[i]) != lower_case[i]) return false;
  }
  return true;
}

/// Reads one unit; stops at what cannot belong to it.
class unit_reader {
 public:
  unit_reader(scanner& in, std::string_view wanted) : in_{in}, wanted_{wanted} {}

  [[nodiscard]] unit_product read() {
    while (step()) {
    }
    in_.skip_spaces();
    if (open_ > 0) in_.fail(in_.place(), "an opening bracket is never closed");
    return product_;
  }

 private:
  /// Read one word or sign; whether it belonged to the unit.
  bool step() {
    in_.skip_spaces();
    switch (const character c = in_.peek(); c) {
      case '/':
        in_.advance();
        below_ = true;
        return true;
      case '*':
        in_.advance();
        return true;
      case '(':
        in_.advance();
        ++open_;
        return true;
      case ')':
        if (open_ == 0) in_.fail(in_.place(), "a closing bracket without an opening one");
        in_.advance();
        --open_;
        return true;
      case '1':  // "1/h"
        if (!product_.empty() || in_.peek(1) != '/') return false;
        in_.advance();
        return true;
      case '\'':
      case '"':
        return prime(c);
      case degree_sign:
        in_.advance();
        return multiply(degrees());
      case 0x2103:
        in_.advance();
        return multiply("degC");  // ℃
      case 0x2109:
        in_.advance();
        return multiply("degF");  // ℉
      case '%':
        in_.advance();
        return multiply("%");
      case 0x2030:
        in_.advance();
        return multiply("g/kg");  // ‰
      default:
        return is_letter(c) && word();
    }
  }

  /// 7' and 10" (also 10''): a unit of their own.
  bool prime(character c) {
    if (!product_.empty()) return false;
    in_.advance();
    const bool inches_mark = c == '"' || in_.accept('\'');
    product_.multiply(inches_mark ? "in" : "ft", 1);
    return false;
  }

  [[nodiscard]] std::string take_letters() {
    std::string letters;
    for (; is_letter(in_.peek()); in_.advance()) letters += static_cast<char>(in_.peek());
    return letters;
  }

  /// After a degree sign or the word: which scale; an angle when none follows.
  [[nodiscard]] std::string_view degrees() {
    const std::size_t start = in_.place();
    in_.skip_spaces();
    const std::string_view scale = meaning_of(take_letters());
    if (scale == "degC" || scale == "degF" || scale == "K") return scale;
    in_.go_to(start);
    return "deg";
  }

  bool word() {
    const std::size_t start = in_.place();
    std::string letters = take_letters();
    if (is_word(letters, "u") && in_.peek() == '.' && (in_.peek(1) == 's' || in_.peek(1) == 'S')) {  // U.S.
      in_.advance();
      letters += take_letters();
    }
    if (in_.peek() == '.' && !is_digit(in_.peek(1))) in_.advance();  // "in.", "ft."
    if (is_word(letters, "per")) {
      in_.skip_spaces();
      const std::size_t after = in_.place();
      if (is_word(take_letters(), "cent")) return multiply("%");
      in_.go_to(after);
      below_ = true;
      return true;
    }
    const bool square = is_word(letters, "sq") || is_word(letters, "square");
    if (square || is_word(letters, "cu") || is_word(letters, "cubic")) {
      next_power_ = square ? 2 : 3;
      return true;
    }
    for (const auto& refused : refused_words) {
      const bool plural = letters.size() > 1 && is_word(letters.substr(0, letters.size() - 1), refused.written) &&
                          lower(letters.back()) == 's';
      if (plural || is_word(letters, refused.written)) {
        in_.fail(start, letters + " " + std::string{refused.meaning});
      }
    }
    std::string_view meaning = meaning_of(letters);
    if (is_word(letters, "us") && letters != "US" && letters != "uS") {  // gallons, or microsiemens per ...
      in_.skip_spaces();
      meaning = in_.peek() == '/' ? "uS" : "US";
    }
    if (meaning == "deg") meaning = degrees();
    if (meaning.empty()) in_.fail(start, letters + " is not a unit known here", units_text(wanted_));
    return multiply(meaning);
  }

  bool multiply(std::string_view meaning) {
    if (++words_ > 8) in_.fail(in_.place(), "the unit has too many parts");
    int power = next_power_;
    next_power_ = 1;
    if (const int written = exponent(meaning == "ft"); written != 0) power *= written;
    multiply_by(product_, meaning, below_ ? -power : power);
    return true;
  }

  /// "2", "^2", "²", "-1", "⁻¹" behind a word; 0 when there is none. Behind feet a hyphen leads on to the inches, and
  /// so does the digit of "7ft3in".
  [[nodiscard]] int exponent(bool feet) {
    const std::size_t start = in_.place();
    const bool marked = in_.accept('^');
    const bool below = in_.accept(0x207B) || ((marked || !feet) && in_.accept('-'));
    int value = 0;
    switch (in_.peek()) {
      case 0xB9:
        value = 1;
        break;
      case 0xB2:
        value = 2;
        break;
      case 0xB3:
        value = 3;
        break;
      case 0x2074:
        value = 4;
        break;
      default: {
        const character after = in_.peek(1);
        const bool stands_alone = !is_digit(after) && after != '.' && after != '\'' && after != '"' &&
                                  !(feet && (after == 'i' || (after == ' ' && in_.peek(2) == 'i')));
        const character lowest = marked || below ? '1' : '2';
        if (in_.peek() >= lowest && in_.peek() <= '4' && stands_alone) {
          value = static_cast<int>(in_.peek() - '0');
        }
      }
    }
    if (value == 0) {
      if (marked) in_.fail(start, "^ without a power from 1 to 4");
      in_.go_to(start);
      return 0;
    }
    in_.advance();
    return below ? -value : value;
  }

  scanner& in_;
  std::string_view wanted_;
  unit_product product_;
  bool below_ = false;
  int open_ = 0;
  int next_power_ = 1;
  int words_ = 0;
};

// ---- a number with its unit -----------------------------------------------------------------------------------------

struct text_part {
  written_number number;
  std::string_view quantity = "number";
  const unit_row* unit = nullptr;  ///< none for a pure number
  std::size_t start = 0;           ///< of the number
  std::size_t unit_start = 0;
  std::size_t end = 0;

  [[nodiscard]] double si() const noexcept {
    return unit ? si_from_number(*unit, quantity, number.value) : number.value;
  }
};

/// Say both readings of a gallon that is not said to be US or imperial.
inline void refuse_bare_gallon(const scanner& in, const unit_product& product, const text_part& part) {
  std::string readings;
  for (const std::string_view country : {"US", "imp"}) {
    unit_product full = product;
    full.multiply(country, 1);
    const unit_row* unit = find_unit(full);
    if (!unit) return;
    readings.append(readings.empty() ? "write " : " or ").append(in.written(part.start, part.unit_start));
    readings.append(" ").append(unit->symbol);
    const std::string_view metric = unit->quantity == "volume" ? "L" : unit->quantity == "flow_rate" ? "L/h" : "";
    if (const unit_row* known = row_of(metric)) {
      readings.append(" (").append(significant_text(part.number.value * unit->factor / known->factor, 4));
      readings.append(" ").append(metric).append(")");
    }
  }
  in.fail(part.unit_start, std::string{in.written(part.unit_start, part.end)} + " can be US or imperial; " + readings);
}

[[nodiscard]] inline text_part read_part(scanner& in, std::string_view wanted) {
  text_part part{};
  part.start = in.place();
  part.number = read_number(in);
  in.skip_spaces();
  part.unit_start = in.place();
  unit_product product = unit_reader{in, wanted}.read();
  part.end = in.place();
  if (product.empty()) return part;
  if (product.has("gal") && !product.has("US") && !product.has("imp")) refuse_bare_gallon(in, product, part);
  const bool gauge = product.remove("gauge");
  const bool absolute = product.remove("abs");
  part.unit = find_unit(product);
  if (part.unit && (gauge || absolute)) {
    if (part.unit->quantity != "pressure" || (gauge && absolute)) part.unit = nullptr;
    part.quantity = gauge ? "gauge_pressure" : "absolute_pressure";
  } else if (part.unit) {
    part.quantity = part.unit->quantity;
  }
  if (!part.unit) {
    in.fail(part.unit_start, std::string{in.written(part.unit_start, part.end)} + " is not a unit known here",
            units_text(wanted));
  }
  return part;
}

/// "7 ft 10 1/2 in": the sum of the parts behind the first, each in a smaller unit and less than one of the unit before
/// it.
[[nodiscard]] inline double rest_of_compound(scanner& in, std::string_view wanted, const text_part& first) {
  double total = 0.0;
  for (text_part before = first; !in.at_end();) {
    if (in.peek() == '-') {  // 7'-10"
      in.advance();
      in.skip_spaces();
    }
    if (!is_digit(in.peek()) && vulgar_fraction(in.peek()) == 0.0) in.fail(in.place(), in.found());
    if (!first.unit) in.fail(in.place(), "a second number; thousands are three digits each (2 150), fractions 10 1/2");
    const text_part next = read_part(in, wanted);
    const auto text_of_part = [&](const text_part& part) { return std::string{in.written(part.start, part.end)}; };
    if (!next.unit) in.fail(next.start, "a second number without a unit");
    const bool smaller = next.quantity == before.quantity && next.unit->factor < before.unit->factor;
    if (!smaller || next.quantity == "temperature") {
      in.fail(next.start, text_of_part(next) + " cannot follow " + text_of_part(before));
    }
    if (!before.number.whole) {
      in.fail(next.start, text_of_part(before) + " is not whole, so no smaller unit can follow");
    }
    if (next.si() >= before.unit->factor) {
      in.fail(next.start, text_of_part(next) + " is not less than 1 " + std::string{before.unit->symbol});
    }
    total += next.si();
    before = next;
  }
  return total;
}

/// Refuse a part that is not what is wanted.
inline void check_quantity(const scanner& in, std::string_view wanted, const text_part& part) {
  if (part.quantity == wanted || part.quantity == measured_as(wanted)) return;
  const std::string number = significant_text(part.number.value, 9);
  if (wanted == "temperature" && (!part.unit || part.quantity == "angle")) {
    const double x = part.number.value;
    in.fail(part.unit_start, "degrees of which scale? write " + number + " °C (" +
                                 significant_text(in_fahrenheit(celsius(x)), 4) + " °F) or " + number + " °F (" +
                                 significant_text(in_celsius(fahrenheit(x)), 4) + " °C)");
  }
  if (part.unit) {
    in.fail(part.unit_start,
            std::string{in.written(part.start, part.end)} + " is " + std::string{words_of(part.quantity).words});
  }
  if (measured_as(wanted) == "proportion") {
    if (part.number.value <= 1.0) return;
    in.fail(part.start,
            number + " is more than 1; write " + number + " % or " + significant_text(part.number.value / 100.0, 9));
  }
  if (wanted != "practical_salinity") in.fail(part.unit_start, "no unit after the number", units_text(wanted));
}

/// The SI number of the quantity from the place on, to the end. A number without a unit takes `shared_unit`, if any;
/// `seen` is given the unit of the first number.
[[nodiscard]] inline double read_quantity(scanner& in, std::string_view quantity, const unit_row* shared_unit = nullptr,
                                          const unit_row** seen = nullptr) {
  in.skip_spaces();
  if (in.at_end()) in.fail(in.place(), "there is nothing to read");
  const std::size_t start = in.place();
  const bool negative = in.accept('-');
  if (!negative) in.accept('+');
  in.skip_spaces();
  text_part first = read_part(in, quantity);
  if (!first.unit && shared_unit) {
    first.unit = shared_unit;
    first.quantity = shared_unit->quantity;
  }
  if (seen) *seen = first.unit;
  const double rest = rest_of_compound(in, quantity, first);
  if (negative) first.number.value = -first.number.value;
  check_quantity(in, quantity, first);
  if (quantity == "temperature_difference") first.quantity = quantity;
  const double si = first.si() + (negative ? -rest : rest);
  if (!std::isfinite(si)) in.fail(start, "too large to be held");
  if (quantity == "temperature" && si < 0.0) in.fail(start, "below absolute zero");
  if (measured_as(quantity) == "proportion" && !(si >= 0.0 && si <= 1.0)) in.fail(start, "not between 0 and 100 %");
  return si;
}

/// The SI number that a text gives for a quantity.
[[nodiscard]] inline double si_from_text(std::string_view text, std::string_view quantity) {
  scanner in{text, "tankwright::text::parse", expected_text(quantity)};
  return read_quantity(in, quantity);
}

}  // namespace tankwright::text::detail
