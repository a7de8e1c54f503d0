// SPDX-License-Identifier: BSL-1.0
/// @file
/// The whole answer to a plan: what happens and how sure that is, what would make it hold, what makes the bands, and
/// what to measure first.
#pragma once

#include <tankwright/decisions/cure.hpp>
#include <tankwright/decisions/measure_first.hpp>
#include <tankwright/plan/build.hpp>
#include <vector>

namespace tankwright::decisions {

/// What `advise` finds.
struct advice {
  banded_assessment judged{};
  bool by_chance = false;  ///< verdicts by chance; otherwise by central values, with nothing below
  std::vector<cures_of_finding> cures{};  ///< of each finding that does not hold or is thin
  std::vector<shares_of_finding> shares{};
  std::vector<next_measurement> first{};  ///< to measure

  /// The cures of a finding; none: null, which is not the same as a list without cures.
  [[nodiscard]] const cures_of_finding* cures_for(std::string_view id) const noexcept;
  [[nodiscard]] const shares_of_finding* shares_for(std::string_view id) const noexcept;
  /// The chance that a finding holds; none without a margin, or by central values.
  [[nodiscard]] std::optional<double> chance_for(std::string_view id) const noexcept;
};

/// How far `advise` has come.
enum class stage { bands, shares, cures };

/// How much work to do, and who does it.
struct effort {
  bool doubts = true;  ///< false: central values alone, in a millisecond
  std::size_t samples = 1024;
  std::size_t cures = 2;  ///< for each finding
  executor run{};
  std::function<void(stage at, std::size_t done, std::size_t of)> progress{};
};

/// Assess a plan with its doubts, and say what to do.
///
///   `assess_with_doubts`, `shares_of`, `what_would_hold`, `measure_first`; without doubts `assess`
///
/// @param build the plan
/// @param how   how much work
/// @return      all of it; the same plan gives the same
/// @throws      invalid_plan as `assess`
/// @accuracy    as its parts
/// @source      this library (docs/theory/verdicts.md)
[[nodiscard]] advice advise(const plan::build& build, const effort& how = {});

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/advice.ipp>
#endif
