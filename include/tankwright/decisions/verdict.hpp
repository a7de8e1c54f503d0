// SPDX-License-Identifier: BSL-1.0
/// @file
/// The words in which a decision is answered, in one ranked order, and the one function that judges a margin.
#pragma once

#include <string_view>
#include <tankwright/core/amount.hpp>

namespace tankwright::decisions {

/// How a margin stands, from the least to the most serious.
enum class verdict {
  for_information,   ///< a number without a limit
  holds,             ///< the whole band is on the safe side, with room to spare
  thin_margin,       ///< the middle is safe, an end of the band is not, or the room left is small
  not_enough_known,  ///< something is missing or cannot be worked out
  does_not_hold,     ///< the middle is not on the safe side
};

/// The words for a verdict: "holds", "thin margin", "does not hold", "not enough known", "for information".
///
/// @param v  the verdict
/// @return   its words
/// @accuracy exact
/// @source   this library
[[nodiscard]] constexpr std::string_view words(verdict v) noexcept {
  switch (v) {
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

/// The more serious of two verdicts.
///
/// @param a a verdict
/// @param b another
/// @return  the one that is later in the order
/// @accuracy exact
/// @source  this library
[[nodiscard]] constexpr verdict worse_of(verdict a, verdict b) noexcept { return a < b ? b : a; }

/// How a margin stands. This is the only rule of verdict in the library (docs/theory/verdicts.md):
///
///   the whole band positive, and its low end more than the smallest useful room: holds;
///   the middle not positive: does not hold; otherwise thin margin
///
/// A margin of zero does not hold.
///
/// @param margin the room left in the worst moment, negative when there is none
/// @param useful the smallest room that is of use, >= 0, in the unit of the margin (SI)
/// @return       holds, thin_margin or does_not_hold; not_enough_known when a number of it is not finite
/// @accuracy     exact
/// @source       this library
[[nodiscard]] constexpr verdict judge(const amount& margin, double useful) noexcept {
  constexpr double most = 1.7976931348623157e308;
  const bool known = margin.low >= -most && margin.low <= margin.central && margin.central <= most;  // false for NaN
  if (!known) return verdict::not_enough_known;
  if (!(margin.central > 0.0)) return verdict::does_not_hold;
  return margin.low > 0.0 && margin.low > useful ? verdict::holds : verdict::thin_margin;
}

}  // namespace tankwright::decisions
