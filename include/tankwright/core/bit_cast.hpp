// SPDX-License-Identifier: BSL-1.0
/// @file
/// The bits of one type as another: `std::bit_cast`, which libc++ has only from version 14 on.
#pragma once

namespace tankwright::core {

template <class To, class From>
[[nodiscard]] constexpr To bit_cast(const From& from) noexcept {
  static_assert(sizeof(To) == sizeof(From));
  return __builtin_bit_cast(To, from);
}

}  // namespace tankwright::core
