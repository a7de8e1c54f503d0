// SPDX-License-Identifier: BSL-1.0
/// @file
/// What assessing a plan gives: its findings in the order of the job.
#pragma once

#include <string>
#include <vector>

#include <tankwright/commissioning/finding.hpp>

namespace tankwright::commissioning {

/// The findings of a plan. Their pictures are `figure`s, which carry the id of their finding.
struct assessment {
  std::string title;
  std::vector<finding> findings{};
};

}  // namespace tankwright::commissioning
