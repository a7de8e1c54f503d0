// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the findings about a power cut with one more failure share.
#pragma once

#include <algorithm>
#include <initializer_list>
#include <string>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/decisions/useful.hpp>

namespace tankwright::decisions {

namespace detail {

/// The cases of one kind of failure as the parts of a finding. `if_it`: "the check valve of the ".
inline bool add_failures(finding& f, const situation& s, std::initializer_list<plumbing::power_cut_failure> kinds,
                         std::string_view of_all, const std::string& if_it) {
  const plumbing_case& c = s.plumbing();
  estimate<volume> most{};
  std::string worst;
  for (const auto& one : c.failures) {
    if (std::find(kinds.begin(), kinds.end(), one.failure) == kinds.end()) continue;
    const std::string place = one.label.empty() ? std::string{of_all} : one.label;
    f.margin("left", "left below the rim in the worst moment", one.margin, std::max(c.in.reserve, useful_level), place);
    if (one.on_the_floor.central >= most.central) {
      most = one.on_the_floor;
      worst = place;
    }
  }
  if (!f.deciding) return false;
  if (most.central.value() > 0.0) {
    f.detail("floor", "runs onto the floor", most, worst);
    f.happens = "If " + (worst == of_all ? std::string{"all of them fail"} : if_it + worst + " fails") + ", " +
                said(s, most.central) + " run onto the floor when the power does";
  }
  f.source(plumbing::rehbock_1929);
  return true;
}

}  // namespace detail

}  // namespace tankwright::decisions
