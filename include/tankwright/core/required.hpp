// SPDX-License-Identifier: BSL-1.0
/// @file
/// A field of an argument struct that must be given: leaving it out does not compile, instead of meaning zero.
#pragma once

#include <concepts>
#include <type_traits>
#include <utility>

namespace tankwright {

namespace core {
template <class Q>
Q never() noexcept;  // declared only: stands for a value where the program is refused anyway
}

/// Wraps a `Q` that the caller must give.
///
/// Leaving the field out, or giving it something that is not a `Q`, stops the compilation with a sentence at the field.
/// (Deleted constructors would stop it too, but compilers then only say that the whole braced list does not fit.)
template <class Q>
class required {
 public:
  constexpr required(Q value) : value_{std::move(value)} {}

  template <std::convertible_to<Q> Other>
  requires(!std::same_as<std::remove_cvref_t<Other>, Q> &&
           !std::same_as<std::remove_cvref_t<Other>, required>) constexpr required(Other&& value)
      : value_{static_cast<Q>(std::forward<Other>(value))} {}

  template <class Missing = Q>
  required() : value_{core::never<Q>()} {
    static_assert(sizeof(Missing) == 0, "tankwright: a required field was left out; Missing names its type");
  }

  template <class Given>
  requires(!std::convertible_to<Given, Q> && !std::same_as<std::remove_cvref_t<Given>, required>) required(Given&&)
      : value_{core::never<Q>()} {
    static_assert(sizeof(std::remove_cvref_t<Given>) == 0,
                  "tankwright: a field was given another quantity, unit or type");
  }

  [[nodiscard]] constexpr const Q& get() const noexcept { return value_; }
  constexpr operator const Q&() const noexcept { return value_; }
  [[nodiscard]] constexpr const Q* operator->() const noexcept { return &value_; }

 private:
  Q value_;
};

}  // namespace tankwright
