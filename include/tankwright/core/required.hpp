// SPDX-License-Identifier: BSL-1.0
/// @file
/// A field of an argument struct that must be given: leaving it out does not compile, instead of meaning zero.
#pragma once

#include <concepts>
#include <utility>

namespace tankwright {

/// Wraps a `Q` without a default. Converts from and to `Q` and nothing else.
template <class Q>
class required {
 public:
  constexpr required(Q value) : value_{std::move(value)} {}
  required() = delete;

  [[nodiscard]] constexpr const Q& get() const noexcept { return value_; }
  constexpr operator const Q&() const noexcept { return value_; }
  [[nodiscard]] constexpr const Q* operator->() const noexcept { return &value_; }

 private:
  Q value_;
};

}  // namespace tankwright
