// SPDX-License-Identifier: BSL-1.0
/// @file
/// What a report opens with: what does not hold, the gravest consequence first; what is not known; what is thin;
/// recommendations apart from limits; then what is merely good to know.
#pragma once

#include <algorithm>
#include <tankwright/decisions/assessment.hpp>
#include <vector>

namespace tankwright::decisions {

/// The findings of an assessment in the order in which they are read. Pointers into it.
struct first_screen {
  std::vector<const finding*> does_not_hold{};
  std::vector<const finding*> not_enough_known{};
  std::vector<const finding*> thin_margin{};
  std::vector<const finding*> recommendations{};  ///< past or close to what is recommended
  std::vector<const finding*> for_information{};
  std::size_t hold = 0;  ///< how many hold
};

/// Sort an assessment for its first screen.
///
///   by verdict, in each by consequence (injury first, money last), of equal ones the order of the job
///
/// @param all the assessment, which must outlive the result
/// @return    pointers to its findings
/// @throws    nothing but std::bad_alloc
/// @accuracy  exact
/// @source    this library
[[nodiscard]] inline first_screen screen_of(const assessment& all) {
  first_screen screen;
  for (const finding& f : all.findings) {
    const bool advice = f.recommendation && (f.verdict == verdict::does_not_hold || f.verdict == verdict::thin_margin);
    if (advice) {
      screen.recommendations.push_back(&f);
      continue;
    }
    switch (f.verdict) {
      case verdict::does_not_hold:
        screen.does_not_hold.push_back(&f);
        break;
      case verdict::not_enough_known:
        screen.not_enough_known.push_back(&f);
        break;
      case verdict::thin_margin:
        screen.thin_margin.push_back(&f);
        break;
      case verdict::for_information:
        screen.for_information.push_back(&f);
        break;
      case verdict::holds:
        ++screen.hold;
        break;
    }
  }
  for (auto* part : {&screen.does_not_hold, &screen.not_enough_known, &screen.thin_margin, &screen.recommendations}) {
    std::stable_sort(part->begin(), part->end(),
                     [](const finding* a, const finding* b) { return a->consequence < b->consequence; });
  }
  return screen;
}

/// The number that a row about a finding shows: its answer, else its deciding margin; none: null.
///
/// @param f  the finding
/// @return   a number of it, or null
/// @accuracy exact
/// @source   this library
[[nodiscard]] inline const number* headline_of(const finding& f) noexcept {
  for (const number& n : f.numbers) {
    if (n.as == role::answer) return &n;
  }
  return f.margin();
}

}  // namespace tankwright::decisions
