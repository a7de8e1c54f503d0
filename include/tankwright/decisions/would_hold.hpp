// SPDX-License-Identifier: BSL-1.0
/// @file
/// Questions asked backwards: what would make a finding hold, which value of one key does, how a finding runs while
/// a key runs, and what changes between two plans.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tankwright/decisions/cure.hpp>
#include <tankwright/plan/build.hpp>
#include <vector>

namespace tankwright::decisions {

/// What would make a finding hold, of everything that can still be chosen.
///
///   each chosen key by itself, the same key over its whole list, a missing optional key, then pairs. First on the
///   central margins, less what the doubts take from them: where they change sign, or come nearest to it. Then by chance
///   on the same samples as `assess_with_doubts`, on the key's steps, the step nearest to the plan
///
/// @param build the plan
/// @param id    of a finding with a margin
/// @param how   how hard to look
/// @return      cures, those that spoil nothing first, then the smallest change; none for a finding that holds, or that
///              nothing mends
/// @throws      invalid_plan as `assess`; invalid_input for a finding that the plan does not bring or that has no
///              margin
/// @accuracy    a cure holds with its chance; one step of the key less does not. A window narrower than what a search
///              for the largest margin between 24 values finds may be missed
/// @source      this library (docs/theory/verdicts.md)
[[nodiscard]] cures_of_finding what_would_hold(const plan::build& build, std::string_view id, const search& how = {});

/// What would make each finding hold that does not, or is thin: all of them at once, with one grid for each key.
///
/// @param build  the plan
/// @param judged the same plan, assessed with its doubts
/// @param how    how hard to look
/// @return       for each open finding with a margin, in the order of the job; without cures: nothing that can still be
///               chosen does it
/// @throws       invalid_plan as `assess`
/// @accuracy     as `what_would_hold`
/// @source       this library
[[nodiscard]] std::vector<cures_of_finding> what_would_hold(const plan::build& build, const banded_assessment& judged,
                                                            const search& how = {});

/// The value of one key that is nearest to the plan and makes a finding hold by its chance.
///
/// @param build the plan
/// @param path  of a key that can be chosen, as for `plan::set`; "[]" for the same over a whole list
/// @param id    of a finding with a margin
/// @param how   how hard to look
/// @return      the cure by this key alone; nothing where no value does it
/// @throws      as `what_would_hold`; invalid_input for a key that is measured, wanted, or no number, and for one that
///              the finding does not depend on
/// @accuracy    as `what_would_hold`
/// @source      this library
[[nodiscard]] std::optional<cure> value_that_holds(const plan::build& build, std::string_view path, std::string_view id,
                                                   const search& how = {});

/// A finding at one value of a key.
struct at_value {
  double key;  ///< SI
  std::optional<finding> answer{};  ///< nothing where the plan with this value is refused
};

/// A finding while a key runs from one value to another.
///
/// @param build the plan
/// @param path  of a key that holds a number
/// @param from  first value, SI
/// @param to    last value, SI
/// @param steps number of values, 2 to 10,000
/// @param id    of the finding
/// @return      the finding at each value, by central values
/// @throws      invalid_input for a path that names no number, an unknown finding, or steps out of range
/// @accuracy    as the finding
/// @source      this library
[[nodiscard]] std::vector<at_value> finding_while(const plan::build& build, std::string_view path, double from,
                                                  double to, std::size_t steps, std::string_view id);

/// What differs between two plans, and which verdicts moved.
struct comparison {
  std::vector<change> changed{};
  std::vector<moved_verdict> moved{};
};

/// Two plans side by side.
///
/// @param before a plan
/// @param after  another
/// @return       keys that differ, in the order of the descriptions, and findings whose verdicts differ
/// @throws       invalid_plan for either
/// @accuracy     exact
/// @source       this library
[[nodiscard]] comparison compare(const plan::build& before, const plan::build& after);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/would_hold.ipp>
#endif
