// SPDX-License-Identifier: BSL-1.0
/// @file
/// What an assessment with its doubts is: what is doubtful, what the samples tell of a finding, and the rule that
/// judges a chance.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <tankwright/decisions/assessment.hpp>
#include <tankwright/decisions/laws.hpp>
#include <vector>

namespace tankwright::decisions {

/// Runs `one(0)` to `one(parts - 1)`, in any order and at once if it likes, and returns when all are done. The parts do
/// not depend on each other, and the result not on their order.
using executor = std::function<void(std::size_t parts, const std::function<void(std::size_t part)>& one)>;

/// How many samples, who is told how far it is, and who does the work.
struct sampling {
  std::size_t samples = 1024;  ///< a power of two; 1,024 keep the promise, fewer are quicker
  std::function<void(std::size_t done, std::size_t of)> progress{};  ///< called now and then, from where a part ran
  executor run{};                                                    ///< none: one part after the other
};

/// One doubtful thing of a plan.
struct doubtful {
  std::string path;             ///< of the key
  double half_width;            ///< of its doubt at the given value, SI (of a factor: towards above)
  bool assumed;                 ///< nobody gave it: the description's usual doubt
  std::string_view means{};     ///< what the key says of itself
  std::string_view quantity{};  ///< "length"
  double value = 0.0;           ///< given, SI
};

/// What sampling tells of one finding.
struct sampled_finding {
  std::string_view id;
  std::optional<double> chance{};     ///< that the deciding margin is positive, 0 to 1; none without a margin
  double refused = 0.0;               ///< part of the samples that an engine refused, 0 to 1
  std::size_t samples = 0;            ///< that it rests on
  double mean = 0.0;                  ///< of the deciding margin, else of the headline, SI
  double spread = 0.0;                ///< its standard deviation
  std::vector<std::size_t> lowest{};  ///< of a margin: the samples with the least room, an eighth of all
};

/// An assessment whose bands are the central 95 % of what its numbers are.
struct banded_assessment {
  assessment all{};                        ///< numbers with their bands, verdicts by chance
  std::vector<sampled_finding> sampled{};  ///< one for each finding, in the same order
  std::vector<doubtful> doubts{};
  std::vector<const law*> laws{};  ///< known only within a band, that moved
};

/// From this chance on a margin holds.
inline constexpr double least_chance_to_hold = 0.975;

/// The verdict of a margin by its chance.
///
///   holds from a chance of 97.5 % with more than the smallest useful room at the low end of the band; does not hold
///   below 50 %; thin between
///
/// @param chance that the margin is positive, 0 to 1
/// @param low    low end of the margin's band, SI
/// @param useful smallest useful room, SI
/// @return       holds, thin_margin or does_not_hold; not_enough_known where a number is not finite
/// @accuracy     exact
/// @source       this library (docs/theory/verdicts.md)
[[nodiscard]] constexpr verdict judge_by_chance(double chance, double low, double useful) noexcept {
  constexpr double most = 1.7976931348623157e308;
  if (!(chance >= 0.0 && chance <= 1.0 && low >= -most && low <= most)) return verdict::not_enough_known;
  if (chance < 0.5) return verdict::does_not_hold;
  return chance >= least_chance_to_hold && low > 0.0 && low > useful ? verdict::holds : verdict::thin_margin;
}

}  // namespace tankwright::decisions
