// SPDX-License-Identifier: BSL-1.0
/// @file
/// Questions asked backwards: what would make a finding hold, which value of one key does, how a finding runs while
/// a key runs, and what changes between two plans.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tankwright/decisions/assessment.hpp>
#include <tankwright/plan/build.hpp>
#include <vector>

namespace tankwright::decisions {

/// One key, changed.
struct change {
  std::string path;  ///< "plumbing.return[left].below_edge"; of a whole list "plumbing.return[].below_edge"
  std::string from;  ///< as `plan::get` gives it; empty: not given
  std::string to;
};

/// A finding whose verdict a change moves.
struct moved_verdict {
  std::string_view id;
  verdict before;
  verdict after;
};

/// Something that can still be done, and what else it does.
struct cure {
  std::vector<change> changes{};
  double chance = 0.0;  ///< that the finding's margin is positive afterwards
  double size = 0.0;    ///< how much it changes, as a part of what could be chosen; of several keys the sum
  std::vector<moved_verdict> better{};
  std::vector<moved_verdict> worse{};
};

/// What would make one finding hold.
struct cures_of_finding {
  std::string_view id;
  std::vector<cure> cures{};  ///< the smallest change first; empty: nothing that can still be chosen does it
};

/// How hard to look.
struct search {
  std::size_t grid = 64;       ///< values tried for each key
  std::size_t samples = 128;   ///< of the doubts while looking
  std::size_t confirm = 1024;  ///< of the doubts before a cure is said
  std::size_t most = 3;        ///< cures for each finding
};

/// What would make a finding hold, of everything that can still be chosen.
///
///   each chosen key by itself, the same key over its whole list, a missing optional key, then pairs; on the central
///   margins first; then towards the value nearest to the plan at which the finding holds by its chance; each confirmed
///   with all doubts on the whole plan
///
/// @param build the plan
/// @param id    of a finding with a margin
/// @param how   how hard to look
/// @return      cures, the smallest change first; none for a finding that holds, or that nothing mends
/// @throws      invalid_plan as `assess`; invalid_input for a finding that the plan does not bring or that has no
///              margin
/// @accuracy    a cure holds with its chance; one step of the key less does not. A window narrower than a 64th of what
///              can be chosen may be missed
/// @source      this library
[[nodiscard]] cures_of_finding what_would_hold(const plan::build& build, std::string_view id, const search& how = {});

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
