// SPDX-License-Identifier: BSL-1.0
/// @file
/// What assessing a plan gives: its findings in the order of the job, and the figures that go with them.
#pragma once

#include <string>
#include <vector>

#include <tankwright/commissioning/figure.hpp>
#include <tankwright/commissioning/finding.hpp>

namespace tankwright::commissioning {

/// The findings of a plan. A figure carries the id of the finding that it belongs to.
struct assessment {
  std::string title;
  std::vector<finding> findings{};
  std::vector<figure> figures{};
};

}  // namespace tankwright::commissioning
