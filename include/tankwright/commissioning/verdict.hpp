// SPDX-License-Identifier: BSL-1.0
/// @file
/// The words in which a decision is answered.
#pragma once

#include <string_view>

namespace tankwright::commissioning {

/// How a number stands against its limit, once its band is taken into account.
enum class verdict {
  holds,             ///< the whole band is on the safe side
  thin_margin,       ///< the central value is safe, an end of the band is not, or the room left is small
  does_not_hold,     ///< the central value is on the wrong side
  not_enough_known,  ///< something is missing, or the band is too wide to say
  for_information,   ///< a number without a limit
};

/// The words for a verdict: "holds", "thin margin", "does not hold", "not enough known", "for information".
///
/// @param says the verdict
/// @return     its words
/// @accuracy   exact
/// @source     this library
[[nodiscard]] constexpr std::string_view words(verdict says) noexcept {
  switch (says) {
    case verdict::holds:
      return "holds";
    case verdict::thin_margin:
      return "thin margin";
    case verdict::does_not_hold:
      return "does not hold";
    case verdict::not_enough_known:
      return "not enough known";
    case verdict::for_information:
      break;
  }
  return "for information";
}

}  // namespace tankwright::commissioning
