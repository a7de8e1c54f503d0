// SPDX-License-Identifier: BSL-1.0
/// @file
/// A worked example of a theory page: given, wanted, steps, result, and what it means. Each line with a number has a symbol,
/// so that tests/handbook/worked.py finds the number and works it out again from the numbers that were given.
#pragma once

#include <cmath>
#include <cstdio>
#include <map>
#include <stdexcept>
#include <string>
#include <string_view>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/validity.hpp>

namespace worked {

/// A limits constant in the unit of the line: "0 to 42 (PSS-78)". `scale` turns the unit of the constant into it.
inline std::string range_of(const tankwright::limits& limit, double scale = 1.0) {
  const bool printed = std::isfinite(limit.published.low) && limit.published.low > -tankwright::core::largest;
  const tankwright::interval& in = printed ? limit.published : limit.possible;
  const auto number = [&](double x) {
    char text[40];
    std::snprintf(text, sizeof text, std::fabs(x * scale) < 1e5 ? "%.6g" : "%.0f",
                  std::fabs(x * scale) < 1e-6 ? 0.0 : x * scale);
    return std::string{text};
  };
  const std::string from = (in.low_edge == tankwright::edge::open ? "above " : "") + number(in.low);
  const std::string least = in.low > 0.0 && in.low * scale < 1e-5 ? "above 0" : from;
  if (in.high * scale < 1e12) return least + " to " + number(in.high);
  return least.starts_with("above") ? least : least + " and more";
}

/// One example, written line by line.
class sheet {
 public:
  explicit sheet(std::string title) : text_{std::move(title) + "\n"} {}

  /// A number that is given; the same number comes back.
  double given(std::string_view symbol, std::string_view what, double value, int digits, std::string_view unit = "",
               std::string_view range = "") {
    heading("Given");
    line(symbol, what, value, digits, unit);
    if (!range.empty()) ranges_.append(ranges_.empty() ? "Ranges: " : ", ").append(symbol).append(" ").append(range);
    return value;
  }
  void given(std::string_view what) {
    heading("Given");
    wrapped(what, "  ");
  }
  void wanted(std::string_view what) {
    heading("Wanted");
    wrapped(what, "  ");
  }
  /// A number on the way; `how` says from what. Digits below zero round to tens and hundreds.
  void step(std::string_view symbol, std::string_view how, double value, int digits, std::string_view unit = "") {
    heading("Steps");
    line(symbol, how, value, digits, unit);
  }
  void result(std::string_view symbol, std::string_view what, double value, int digits, std::string_view unit = "") {
    heading("Result");
    line(symbol, what, value, digits, unit);
  }
  /// What another way to reckon would have given.
  void compare(std::string_view symbol, std::string_view what, double value, int digits, std::string_view unit = "") {
    heading("For comparison");
    line(symbol, what, value, digits, unit);
  }
  void means(std::string_view what) {
    heading("What it means");
    wrapped(what, "  ");
  }
  void caution(const tankwright::caution& c) {
    heading("Caution");
    wrapped(c.text, "  ");
  }
  [[nodiscard]] const std::string& text() const noexcept { return text_; }

 private:
  void heading(std::string_view name) {
    if (name == section_) return;
    if (!ranges_.empty()) wrapped(ranges_ + ".", "  ");
    ranges_.clear();
    section_ = name;
    text_.append("\n").append(name).append("\n");
  }
  static std::size_t width(std::string_view s) {
    std::size_t n = 0;
    for (const char c : s) n += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U ? 1U : 0U;
    return n;
  }
  static std::string padded(std::string_view s, std::size_t to) {
    std::string out{s};
    if (width(s) < to) out.append(to - width(s), ' ');
    return out;
  }
  void line(std::string_view symbol, std::string_view what, double value, int digits, std::string_view unit) {
    // The columns are what worked.py reads by.
    if (width(symbol) > 6 || width(what) > 49) throw std::logic_error("too long for its column: " + std::string{what});
    char number[40];
    // Digits below zero: rounded to tens or hundreds, and "about" says so. "-0.0" is no number that a person writes.
    const double step = std::pow(10.0, -digits), rounded = digits < 0 ? step * std::round(value / step) : value;
    std::snprintf(number, sizeof number, "%.*f", digits < 0 ? 0 : digits,
                  std::fabs(rounded) < 0.5 * step ? 0.0 : rounded);
    const std::string figure = (digits < 0 ? "about " : "") + std::string{number};
    const std::string gap(figure.size() < 12 ? 12 - figure.size() : 1, ' ');
    std::string row = "  " + padded(symbol, 7) + padded(what, 50) + gap + figure;
    if (!unit.empty()) row.append(" ").append(unit);
    text_.append(row).append("\n");
  }
  void wrapped(std::string_view what, std::string_view indent) {
    std::string row;
    std::size_t from = 0;
    while (from < what.size()) {
      const std::size_t end = what.find(' ', from) == std::string_view::npos ? what.size() : what.find(' ', from);
      const std::string_view word = what.substr(from, end - from);
      if (!row.empty() && width(row) + 1 + width(word) > 80) {
        text_.append(indent).append(row).append("\n");
        row.clear();
      }
      if (!row.empty()) row.append(" ");
      row.append(word);
      from = end + 1;
    }
    text_.append(indent).append(row).append("\n");
  }
  std::string text_;
  std::string_view section_{};
  std::string ranges_;  // of the numbers given so far
};

using writer = void (*)(sheet&);
struct entry {
  std::string title;
  writer write;
};
inline std::map<std::string, entry>& examples() {
  static std::map<std::string, entry> all;
  return all;
}
struct registered {
  registered(const char* page, const char* title, writer write) { examples()[page] = {title, write}; }
};

}  // namespace worked

/// The one example of a page: WORKED_EXAMPLE(salt_mix, "salt_mix", "How much salt for the lagoon?") { ... s.given(...) ... }
#define WORKED_EXAMPLE(name, page, title)                                          \
  static void worked_##name(::worked::sheet& s);                                   \
  static const ::worked::registered registered_##name{page, title, worked_##name}; \
  static void worked_##name(::worked::sheet& s)
