// SPDX-License-Identifier: BSL-1.0
/// @file
/// Loops over spans: what the batch overloads share.
///
/// They check first and write second, and work through blocks small enough for the cache, so that every pass over a
/// block is a plain loop over arrays that the compiler turns into vector instructions, at -O2 too.
#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <span>

#include <tankwright/core/errors.hpp>
#include <tankwright/core/validity.hpp>

namespace tankwright::core {

inline constexpr std::size_t block_size = 64;

/// A block of raw numbers on the stack.
struct alignas(64) block {
  double at[block_size];
  constexpr double& operator[](std::size_t i) noexcept { return at[i]; }
  constexpr double operator[](std::size_t i) const noexcept { return at[i]; }
};

#if defined(__has_builtin)
#if __has_builtin(__builtin_elementwise_sqrt)
#define TANKWRIGHT_VECTOR_SQRT(x) __builtin_elementwise_sqrt(x)
#define TANKWRIGHT_VECTOR_BYTES 64
#elif defined(__AVX__) && __has_builtin(__builtin_ia32_sqrtpd256)
#define TANKWRIGHT_VECTOR_SQRT(x) __builtin_ia32_sqrtpd256(x)
#define TANKWRIGHT_VECTOR_BYTES 32
#elif defined(__SSE2__) && __has_builtin(__builtin_ia32_sqrtpd)
#define TANKWRIGHT_VECTOR_SQRT(x) __builtin_ia32_sqrtpd(x)
#define TANKWRIGHT_VECTOR_BYTES 16
#endif
#endif

/// Square roots in place. std::sqrt may set errno, which keeps compilers from vectorising the loop; the instruction
/// cannot, and rounds the same. (The builtins are those behind <immintrin.h>, which costs as much as Boost.Units.)
inline void square_roots(block& values) noexcept {
#if defined(TANKWRIGHT_VECTOR_SQRT)
  using lanes [[gnu::vector_size(TANKWRIGHT_VECTOR_BYTES), gnu::may_alias]] = double;
  for (std::size_t i = 0; i < block_size; i += sizeof(lanes) / sizeof(double)) {
    lanes& group = *reinterpret_cast<lanes*>(values.at + i);
    group = TANKWRIGHT_VECTOR_SQRT(group);
  }
#undef TANKWRIGHT_VECTOR_SQRT
#undef TANKWRIGHT_VECTOR_BYTES
#else
  for (std::size_t i = 0; i < block_size; ++i) values.at[i] = std::sqrt(values.at[i]);
#endif
}

/// Refuse spans of different lengths: element i of each belongs together.
inline void check_same_size(std::string_view function, std::size_t first, std::size_t other) {
  if (first != other) {
    fail<invalid_input>(function, "size of a span", static_cast<double>(other), "",
                        "differs from the size of the first span, " + number_text(static_cast<double>(first)));
  }
}

/// The narrowest closed interval that a value must lie in: what `contains` says, without its branches.
[[nodiscard]] inline interval closed_interval(const limits& limit, range_policy policy) noexcept {
  const auto narrow = [](interval into, const interval& by) {
    const double low = by.low_edge == edge::open ? std::nextafter(by.low, largest) : by.low;
    const double high = by.high_edge == edge::open ? std::nextafter(by.high, -largest) : by.high;
    return interval{low > into.low ? low : into.low, high < into.high ? high : into.high};
  };
  const interval possible = narrow({}, limit.possible);
  return policy == range_policy::extrapolate ? possible : narrow(possible, limit.published);
}

/// Whether every `read(i)` lies in a closed interval: one branch-free pass, counted in 64-bit integers because they are
/// as wide as the numbers compared. NaN lies in none.
template <class Read>
[[nodiscard]] bool all_within(interval closed, std::size_t size, Read read) noexcept {
  const double low = closed.low;
  const double high = closed.high;
  std::int64_t good = 0;
  for (std::size_t i = 0; i < size; ++i) {
    const double x = read(i);
    good += std::int64_t{x >= low} & std::int64_t{x <= high};
  }
  return good == static_cast<std::int64_t>(size);
}

/// Hold every element against a range; `read(i)` gives the number.
template <class Read>
void check_all(std::string_view function, const limits& limit, std::size_t size, Read read,
               range_policy policy = range_policy::published) {
  if (all_within(closed_interval(limit, policy), size, read)) [[likely]]
    return;
  for (std::size_t i = 0; i < size; ++i) check(function, limit, read(i), policy);
}

}  // namespace tankwright::core
