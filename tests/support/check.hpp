// SPDX-License-Identifier: BSL-1.0
/// @file
/// The matcher of the tests, and the evidence it leaves behind.
///
/// `TW_CHECK(evidence, actual, expected, tolerance)` compares two quantities of the same type and records the outcome for
/// the ledger `docs/validation.md`. `TW_HOLDS(evidence, condition)` does the same for a property.
/// NaN never matches. There is no default tolerance.
#pragma once

#include <cmath>
#include <limits>
#include <string>
#include <string_view>
#include <type_traits>

#include <doctest/doctest.h>

#include <tankwright/core.hpp>

namespace tankwright::testing {

/// What a check rests on. The first three are evidence; the same calls by hand (wiring), what this library decided (chosen:
/// a constant with its reason) and a regression never are.
enum class kind { published, library, identity, property, wiring, common_practice, from_memory, chosen, regression };

[[nodiscard]] std::string_view kind_text(kind k) noexcept;
[[nodiscard]] kind kind_from_text(std::string_view text);

/// Which public function a check is about, what it rests on, and the source of the expected value.
struct evidence {
  std::string function;  ///< fully qualified: "tankwright::water::density"
  kind rests_on;
  std::string source;
};

/// How far the actual value may lie from the expected one: the larger of the two parts.
struct tolerance {
  double absolute = 0.0;
  double relative = 0.0;
};

template <class Q>
[[nodiscard]] constexpr double raw(const Q& q);

/// An absolute tolerance, in the quantity's own type.
template <class Q>
[[nodiscard]] tolerance within(const Q& q) {
  return {.absolute = raw(q)};
}
[[nodiscard]] inline tolerance relative(double part) { return {.relative = part}; }

/// The SI number inside a quantity or a thin type.
template <class Q>
[[nodiscard]] constexpr double raw(const Q& q) {
  if constexpr (std::is_arithmetic_v<Q>) {
    return static_cast<double>(q);
  } else {
    return raw(q.value());
  }
}

/// Symbol of the SI unit of a quantity, from the unit table; empty for a pure number.
template <class Q>
[[nodiscard]] constexpr std::string_view si_symbol() {
#define TANKWRIGHT_SYMBOL(quantity_name, unit_name, symbol, factor) \
  if (std::is_same_v<Q, quantity_name> && (factor) == 1.0) return symbol;
  TANKWRIGHT_UNIT_TABLE(TANKWRIGHT_SYMBOL)
#undef TANKWRIGHT_SYMBOL
  if (std::is_same_v<Q, temperature> || std::is_same_v<Q, temperature_difference>) return "K";
  if (std::is_same_v<Q, absolute_salinity>) return "g/kg";
  return "";
}

struct comparison {
  bool good;
  double deviation;  ///< |actual - expected|
  double allowed;
  std::string text;  ///< what to say where it is not good
};

[[nodiscard]] comparison compare_numbers(double actual, double expected, tolerance allowed, std::string_view unit);

template <class Q>
[[nodiscard]] comparison compare(const Q& actual, const std::type_identity_t<Q>& expected, tolerance allowed) {
  return compare_numbers(raw(actual), raw(expected), allowed, si_symbol<Q>());
}

/// Where a check stands in a test, and what it is about.
struct place {
  const char* file;
  int line;
  const char* expression;
};

/// Leave evidence of one comparison, or of one property (which has no deviation).
void record(const evidence& about, const comparison& outcome);
void record_property(const evidence& about, bool holds);

/// The same, and the test case fails where it does not hold.
void hold(const evidence& about, const comparison& outcome, const place& at);
void hold(const evidence& about, bool holds, const place& at);

/// Write what was recorded to `<directory>/<program>.tsv`.
void write_evidence(const std::string& directory, const std::string& program);

}  // namespace tankwright::testing

// Calls, not code in each place: what a thousand checks have in common is compiled once.
#define TW_CHECK(about, actual, expected, allowed)                                                      \
  ::tankwright::testing::hold((about), ::tankwright::testing::compare((actual), (expected), (allowed)), \
                              {__FILE__, __LINE__, #actual})

#define TW_HOLDS(about, condition) \
  ::tankwright::testing::hold((about), static_cast<bool>(condition), {__FILE__, __LINE__, #condition})
