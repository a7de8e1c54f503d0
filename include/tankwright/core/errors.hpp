// SPDX-License-Identifier: BSL-1.0
/// @file
/// The errors of the library: three, and a form of the first for text. Each carries what happened as data, and says it
/// in one readable line.
#pragma once

#include <cstddef>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>

#include <tankwright/core/charconv.hpp>

namespace tankwright {

/// What was wrong, where. Empty strings and NaN where a part does not apply.
struct diagnosis {
  std::string function;  ///< "tankwright::water::density"
  std::string argument;  ///< "temperature"
  double value;          ///< the offending number, in `unit`
  double low;            ///< the limits, in `unit`
  double high;
  std::string unit;    ///< "degC"; empty for a pure number
  std::string source;  ///< whose limits they are: "Feistel 2008"
};

/// Base of every exception thrown by the library.
class error : public std::runtime_error {
 public:
  error(const std::string& line, diagnosis what_was_wrong)
      : std::runtime_error{line}, diagnosis_{std::move(what_was_wrong)} {}
  [[nodiscard]] const diagnosis& details() const noexcept { return diagnosis_; }

 private:
  diagnosis diagnosis_;
};

/// The input describes nothing that can exist: not a number, a negative length, a porosity of one.
class invalid_input : public error {
  using error::error;
};

/// The input can exist, but lies outside the range for which the correlation was published.
class out_of_range : public error {
  using error::error;
};

/// A solver did not reach its tolerance. The diagnosis carries the last value and its bracket.
class no_convergence : public error {
  using error::error;
};

/// A text that is not the quantity it should be (`text.hpp`). Everything a front end needs to point at the mistake.
class text_error : public invalid_input {
 public:
  text_error(const std::string& line, diagnosis what_was_wrong, std::string text, std::size_t position,
             std::string reason, std::string expected)
      : invalid_input{line, std::move(what_was_wrong)},
        text_{std::move(text)},
        position_{position},
        reason_{std::move(reason)},
        expected_{std::move(expected)} {}

  [[nodiscard]] const std::string& text() const noexcept { return text_; }          ///< what was read
  [[nodiscard]] std::size_t position() const noexcept { return position_; }         ///< byte of `text`, from 0
  [[nodiscard]] const std::string& reason() const noexcept { return reason_; }      ///< "kg is a unit of mass"
  [[nodiscard]] const std::string& expected() const noexcept { return expected_; }  ///< "a length such as 2.40 m"

 private:
  std::string text_;
  std::size_t position_;
  std::string reason_;
  std::string expected_;
};

namespace core {

/// A number as text that reads well in a message: shortest form, at most 9 digits, never depending on the locale.
[[nodiscard]] inline std::string number_text(double value) {
  if (value != value) return "nan";  // digits would keep the sign bit
  if (value == 0.0) value = 0.0;     // and not "-0"
  digits_buffer buffer;
  return std::string{digits_of(buffer, value, digit_style::general, 9)};
}

/// "25 degC", or "0.3" for a pure number.
[[nodiscard]] inline std::string number_with_unit(double value, std::string_view unit) {
  std::string text = number_text(value);
  if (!unit.empty()) text.append(" ").append(unit);
  return text;
}

/// Throw `Error` for a mistake that is not about one range: `reason` completes "function: argument = value ...".
template <class Error>
[[noreturn]] inline void fail(std::string_view function, std::string_view argument, double value, std::string_view unit,
                              std::string_view reason) {
  std::string line{function};
  line.append(": ").append(argument).append(" = ").append(number_with_unit(value, unit));
  line.append(" ").append(reason);
  constexpr double none = __builtin_nan("");
  throw Error{line, {std::string{function}, std::string{argument}, value, none, none, std::string{unit}, {}}};
}

}  // namespace core
}  // namespace tankwright
