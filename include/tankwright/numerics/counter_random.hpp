// SPDX-License-Identifier: BSL-1.0
/// @file
/// Random numbers by counting: number n of a seed is a function of the two, so there is no state to share between
/// threads, no order to keep, and the same numbers on every machine.
///
/// It is SplitMix64 (Steele, Lea and Flood, OOPSLA 2014) addressed by its counter.
#pragma once

#include <cmath>
#include <cstdint>
#include <numbers>

namespace tankwright::numerics {

namespace detail {

/// Scrambles 64 bits; any change of one bit changes every other with probability one half.
[[nodiscard]] constexpr std::uint64_t scrambled(std::uint64_t bits) noexcept {
  bits = (bits ^ (bits >> 30)) * 0xBF58476D1CE4E5B9u;
  bits = (bits ^ (bits >> 27)) * 0x94D049BB133111EBu;
  return bits ^ (bits >> 31);
}

}  // namespace detail

class counter_random {
 public:
  constexpr explicit counter_random(std::uint64_t seed) noexcept : start_{detail::scrambled(seed + golden)} {}

  /// Number n, between 0 and 1, never one of them.
  [[nodiscard]] constexpr double uniform(std::uint64_t n) const noexcept {
    const std::uint64_t bits = detail::scrambled(start_ + (n + 1) * golden);
    return (static_cast<double>(bits >> 12) + 0.5) * 0x1p-52;
  }
  /// A normal number (mean 0, deviation 1) from numbers 2n and 2n + 1 (Box and Muller 1958).
  [[nodiscard]] double normal(std::uint64_t n) const noexcept {
    return std::sqrt(-2.0 * std::log(uniform(2 * n))) * std::cos(2.0 * std::numbers::pi * uniform(2 * n + 1));
  }
  /// Student's t with so many degrees of freedom, from the same two numbers (Bailey, Math. Comp. 62:779, 1994).
  [[nodiscard]] double student(std::uint64_t n, double degrees_of_freedom) const noexcept {
    return std::sqrt(degrees_of_freedom * (std::pow(uniform(2 * n), -2.0 / degrees_of_freedom) - 1.0)) *
           std::cos(2.0 * std::numbers::pi * uniform(2 * n + 1));
  }

 private:
  static constexpr std::uint64_t golden = 0x9E3779B97F4A7C15u;
  std::uint64_t start_;
};

}  // namespace tankwright::numerics
