// SPDX-License-Identifier: BSL-1.0
/// @file
/// What an assessment gives: the findings in the order of the job, found by their id.
#pragma once

#include <string>
#include <string_view>
#include <tankwright/core/errors.hpp>
#include <tankwright/decisions/finding.hpp>
#include <vector>

namespace tankwright::decisions {

/// All decisions that a plan asks for, answered.
struct assessment {
  std::string title{};
  std::vector<finding> findings{};

  /// The finding with an id; null where the plan does not ask it.
  [[nodiscard]] const finding* find(std::string_view id) const noexcept {
    for (const finding& f : findings) {
      if (f.id == id) return &f;
    }
    return nullptr;
  }
  /// The same where it must be there: throws invalid_input that names the id.
  [[nodiscard]] const finding& at(std::string_view id) const {
    if (const finding* f = find(id)) return *f;
    constexpr double none = __builtin_nan("");
    throw invalid_input{"the assessment has no finding " + std::string{id},
                        {"tankwright::decisions::assessment::at", std::string{id}, none, none, none, {}, {}}};
  }
};

/// The gravest verdict of some findings.
///
/// @param all findings
/// @return    the last in the order of verdicts; for_information for none
/// @accuracy  exact
/// @source    this library
[[nodiscard]] inline verdict worst_of(const std::vector<finding>& all) noexcept {
  verdict worst = verdict::for_information;
  for (const finding& f : all) worst = worse_of(worst, f.verdict);
  return worst;
}

}  // namespace tankwright::decisions
