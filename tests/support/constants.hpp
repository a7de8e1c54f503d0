// SPDX-License-Identifier: BSL-1.0
/// @file
/// What a header says as data, held against a table: limits, presets, defaults, cautions, sources.
///
/// `tests/reference/<folder>/constants.csv`: name, value, source, kind. The value of a constant is its fields in their
/// order, " | " between them: numbers in SI, an interval as `low..high` with `(` or `)` at an open end, an enumerator as
/// its place, nothing where a field is empty. `limits` have two rows: what the source covers, and what is possible. The
/// source of a `chosen` one is the reason for it.
#pragma once

#include <array>
#include <cmath>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "check.hpp"

namespace tankwright::testing {

struct constant_row {
  std::string value;
  std::string source;
  kind rests_on;
};

/// The fields of constants by name.
using constants_by_name = std::vector<std::pair<std::string, std::string>>;

/// Hold every constant against `tests/reference/<folder>/constants.csv`: a constant without a row, a row without a
/// constant and a row without a source fail. With TANKWRIGHT_EVIDENCE_ONLY a row that nobody could hold against a source
/// (chosen, from memory, regression) only says which fields there are: the tests then notice what is dropped, not what
/// is changed.
void check_constants(std::string_view folder, const constants_by_name& constants);

namespace fields {

std::string number(double x);

/// Converts to anything: counts the fields of a struct.
struct anything {
  template <class T>
  operator T() const;
};
template <class T, std::size_t... I>
constexpr bool takes(std::index_sequence<I...>) {
  return requires { T{((void)I, anything{})...}; };
}
template <class T, std::size_t N = 12>
constexpr std::size_t count() {
  if constexpr (N == 0 || takes<T>(std::make_index_sequence<N>{})) {
    return N;
  } else {
    return count<T, N - 1>();
  }
}

template <class T>
std::string text(const T& x);

template <class... F>
std::string joined(const F&... f) {
  std::string all;
  ((all += (all.empty() ? "" : " | ") + text(f)), ...);
  return all;
}

template <class T>
std::string text(const T& x) {
  if constexpr (std::is_same_v<T, bool>) {
    return x ? "true" : "false";
  } else if constexpr (std::is_arithmetic_v<T>) {
    return number(static_cast<double>(x));
  } else if constexpr (std::is_convertible_v<const T&, std::string_view>) {
    return std::string{std::string_view{x}};
  } else if constexpr (std::is_enum_v<T>) {
    return std::to_string(static_cast<int>(x));
  } else if constexpr (std::is_same_v<T, interval>) {
    if (x.low == interval{}.low && x.high == interval{}.high) return "any";
    return (x.low_edge == edge::open ? "(" : "") + number(x.low) + ".." + number(x.high) +
           (x.high_edge == edge::open ? ")" : "");
  } else if constexpr (requires {
                         x.low;
                         x.central;
                         x.high;
                         x.reason;
                       }) {
    return joined(x.low, x.central, x.high, x.reason);
  } else if constexpr (requires {
                         x.has_value();
                         *x;
                       }) {
    return x.has_value() ? text(*x) : "none";
  } else if constexpr (std::is_array_v<T> || requires {
                         x.begin();
                         x.end();
                       }) {
    std::string all;
    for (const auto& each : x) all += (all.empty() ? "" : " ; ") + text(each);
    return all;
  } else if constexpr (requires { x.as_nitrogen(); }) {
    return text(x.as_nitrogen());
  } else if constexpr (requires { x.get(); }) {
    return text(x.get());
  } else if constexpr (
      requires { x.value(); } || requires { x.percent(); } || requires { x.grams_per_kilogram(); }) {
    return number(raw(x));
  } else {
    constexpr std::size_t n = count<T>();
    static_assert(n >= 1 && n <= 9, "a struct of more fields: add a line here");
    if constexpr (n == 1) {
      const auto& [a] = x;
      return joined(a);
    } else if constexpr (n == 2) {
      const auto& [a, b] = x;
      return joined(a, b);
    } else if constexpr (n == 3) {
      const auto& [a, b, c] = x;
      return joined(a, b, c);
    } else if constexpr (n == 4) {
      const auto& [a, b, c, d] = x;
      return joined(a, b, c, d);
    } else if constexpr (n == 5) {
      const auto& [a, b, c, d, e] = x;
      return joined(a, b, c, d, e);
    } else if constexpr (n == 6) {
      const auto& [a, b, c, d, e, f] = x;
      return joined(a, b, c, d, e, f);
    } else if constexpr (n == 7) {
      const auto& [a, b, c, d, e, f, g] = x;
      return joined(a, b, c, d, e, f, g);
    } else if constexpr (n == 8) {
      const auto& [a, b, c, d, e, f, g, h] = x;
      return joined(a, b, c, d, e, f, g, h);
    } else {
      const auto& [a, b, c, d, e, f, g, h, i] = x;
      return joined(a, b, c, d, e, f, g, h, i);
    }
  }
}

}  // namespace fields
}  // namespace tankwright::testing

namespace tankwright::testing {

/// A constant as rows: name and fields.
template <class T>
void add_constant(constants_by_name& all, std::string name, const T& x) {
  if constexpr (std::is_same_v<T, limits>) {
    all.emplace_back(name, fields::joined(x.argument, x.unit, x.published, x.source));
    all.emplace_back(name + " possible", fields::text(x.possible));
  } else {
    all.emplace_back(std::move(name), fields::text(x));
  }
}

}  // namespace tankwright::testing

#define TW_CONSTANT(constant) ::tankwright::testing::add_constant(all, #constant, ::tankwright::constant)
