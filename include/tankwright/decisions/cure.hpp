// SPDX-License-Identifier: BSL-1.0
/// @file
/// Something that can still be done about a finding, as data.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tankwright/decisions/doubts.hpp>
#include <vector>

namespace tankwright::decisions {

/// One key, changed.
struct change {
  std::string path;  ///< "plumbing.return[left].below_edge"; of a whole list "plumbing.return[].below_edge"
  std::string from;  ///< as `plan::get` gives it; empty: not given
  std::string to;
  std::string_view quantity{};  ///< "length"; empty for what is no number
  std::optional<double> was{};  ///< in SI, where it was known
  std::optional<double> is{};   ///< in SI
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
  std::string part{};  ///< words of a part that is added, %v for the size, which is the first change; empty: keys alone
};

/// Why nothing makes a finding hold: what comes nearest to it, and how near.
struct why_none {
  std::vector<change> changes{};  ///< empty: nothing that can still be chosen brings it nearer
  std::string part{};             ///< as of a cure
  amount from{};                  ///< the margin that decides, as the plan stands, by central values
  amount to{};                    ///< the same with the changes
};

/// What would make one finding hold.
struct cures_of_finding {
  std::string_view id;
  std::vector<cure> cures{};  ///< the smallest change first; empty: nothing that can still be chosen does it
  bool holds = false;         ///< as it is
  std::optional<decisions::why_none> why_none{};  ///< where there is no cure
};

/// How hard to look.
struct search {
  std::size_t grid = 24;       ///< values tried for each key
  std::size_t samples = 1024;  ///< of the doubts, in which a cure must hold
  std::size_t most = 3;        ///< cures for each finding
  executor run{};              ///< who runs the samples; none: one part after the other
};

}  // namespace tankwright::decisions
