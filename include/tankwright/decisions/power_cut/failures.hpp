// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the findings about a power cut with one more failure share.
#pragma once

#include <algorithm>
#include <span>
#include <string>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/decisions/useful.hpp>
#include <tankwright/plumbing/power_cut_failures.hpp>

namespace tankwright::decisions {

namespace detail {

/// The cases of one kind of failure as the parts of a finding. `if_it`: "the check valve of the ".
inline void add_failures(finding& f, const situation& s, std::span<const plumbing::power_cut_failure_case> cases,
                         std::string_view of_all, const std::string& if_it) {
  const length useful = std::max(s.plumbing().in.reserve, useful_level);
  estimate<volume> most{};
  std::string worst;
  for (const auto& one : cases) {
    const std::string place = one.label.empty() ? std::string{of_all} : one.label;
    f.margin("left", "left below the rim in the worst moment", one.margin, useful, place);
    if (one.on_the_floor.central >= most.central) {
      most = one.on_the_floor;
      worst = place;
    }
  }
  if (most.central.value() > 0.0) {
    f.detail("floor", "runs onto the floor", most, worst);
    f.happens = "If " + (worst == of_all ? std::string{"all of them fail"} : if_it + worst + " fails") + ", " +
                said(s, most.central) + " run onto the floor when the power does";
  }
  f.source(plumbing::rehbock_1929);
}

}  // namespace detail

}  // namespace tankwright::decisions
