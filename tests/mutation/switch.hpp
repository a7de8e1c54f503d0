// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the rewritten headers call in each place that a mutant changes: one number, read from the environment at the
/// start of the program, says which place is changed. No mutant is on when it is absent.
///
/// TANKWRIGHT_MUTANT_ON       the mutant that is on
/// TANKWRIGHT_MUTANT_REACHED  file for what was run: a byte for each mutant, 1 reached, 2 reached where it changes nothing;
///                            then the seconds of the processor, as text
/// TANKWRIGHT_MUTANT_FIXED    macro: the mutant that is on in places that must be constant expressions
#pragma once

#include <concepts>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#ifndef TANKWRIGHT_MUTANT_FIXED
#define TANKWRIGHT_MUTANT_FIXED -1
#endif

namespace mut {

/// Where a place stands: in code that always runs; in a constexpr function, which answers as written while the compiler
/// evaluates it; in what must be a constant, which the compiler is told.
enum mode { now, guarded, fixed };

struct reached_places {
  std::vector<unsigned char> marks;
  const char* file = std::getenv("TANKWRIGHT_MUTANT_REACHED");
  reached_places() {
    if (file != nullptr) marks.resize(200'000);  // MARKS of mutate.py
  }
  ~reached_places() {
    if (file == nullptr) return;
    if (std::FILE* out = std::fopen(file, "wb")) {
      std::fwrite(marks.data(), 1, marks.size(), out);
      std::fprintf(out, "%.4f", static_cast<double>(std::clock()) / CLOCKS_PER_SEC);
      std::fclose(out);
    }
  }
};
inline reached_places reached;
inline const int active = [] {
  const char* text = std::getenv("TANKWRIGHT_MUTANT_ON");
  return text == nullptr ? -1 : std::atoi(text);
}();

inline bool on_now(int id, bool viable) {
  if (!reached.marks.empty()) {
    unsigned char& mark = reached.marks[static_cast<std::size_t>(id)];
    mark = static_cast<unsigned char>(mark | (viable ? 1 : 2));
  }
  return viable && active == id;
}

template <mode M>
constexpr bool on(int id, bool viable = true) {
  if constexpr (M == fixed) return viable && TANKWRIGHT_MUTANT_FIXED == id;
  if constexpr (M == guarded) {
    if (std::is_constant_evaluated()) return false;
  }
  if constexpr (M != fixed) return on_now(id, viable);
}

/// A number: a thousandth more, the other sign; an integer: its neighbours.
template <mode M, class T>
constexpr T number(int id, T x) {
  if constexpr (std::is_integral_v<T>) {
    if (on<M>(id)) return static_cast<T>(x + 1);
    if (on<M>(id + 1)) return static_cast<T>(x - 1);
  } else {
    if (on<M>(id)) return x == T(0) ? T(0.001L) : x * T(1.001L);
    if (on<M>(id + 1)) return x == T(0) ? T(-0.001L) : -x;
  }
  return x;
}
template <mode M>
constexpr bool flag(int id, bool x) {
  return on<M>(id) ? !x : x;
}
template <mode M>
constexpr std::string_view text(int id, std::string_view x) {
  return on<M>(id) ? std::string_view{} : x;
}
/// A caution, a source, the reason of a band: dropped.
template <mode M, class T>
constexpr T cleared(int id, const T& x) {
  return on<M>(id) ? T{} : x;
}
template <mode M, class T>
constexpr bool negate(int id, const T& x) {
  return on<M>(id) ? static_cast<bool>(x) : !static_cast<bool>(x);
}

#define TM_COMPARE(name, written, near, other)                                 \
  template <mode M, class A, class B>                                          \
  constexpr auto name(int id, const A& a, const B& b)->decltype(a written b) { \
    constexpr bool can_near = requires {                                       \
      { a near b } -> std::same_as<decltype(a written b)>;                     \
    };                                                                         \
    constexpr bool can_other = requires {                                      \
      { a other b } -> std::same_as<decltype(a written b)>;                    \
    };                                                                         \
    if (on<M>(id, can_near)) {                                                 \
      if constexpr (can_near) return a near b;                                 \
    }                                                                          \
    if (on<M>(id + 1, can_other)) {                                            \
      if constexpr (can_other) return a other b;                               \
    }                                                                          \
    return a written b;                                                        \
  }
TM_COMPARE(lt, <, <=, >)
TM_COMPARE(le, <=, <, >=)
TM_COMPARE(gt, >, >=, <)
TM_COMPARE(ge, >=, >, <=)
#undef TM_COMPARE

#define TM_OTHER(name, written, other)                                         \
  template <mode M, class A, class B>                                          \
  constexpr auto name(int id, const A& a, const B& b)->decltype(a written b) { \
    constexpr bool can = requires {                                            \
      { a other b } -> std::same_as<decltype(a written b)>;                    \
    };                                                                         \
    if (on<M>(id, can)) {                                                      \
      if constexpr (can) return a other b;                                     \
    }                                                                          \
    return a written b;                                                        \
  }
TM_OTHER(eq, ==, !=)
TM_OTHER(ne, !=, ==)
TM_OTHER(add, +, -)
TM_OTHER(sub, -, +)
TM_OTHER(mul, *, /)
TM_OTHER(div, /, *)
#undef TM_OTHER

}  // namespace mut
