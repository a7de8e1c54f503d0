// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the example does with an assessment: a report for an 80-column terminal, and data for programs.
#pragma once

#include <string>

#include <tankwright/commissioning/finding.hpp>
#include <tankwright/core/text.hpp>

namespace report {

/// The findings of a plan, in the order of the job.
struct assessment {
  std::string title;
  std::vector<tankwright::commissioning::finding> findings;
};

[[nodiscard]] std::string as_text(const assessment& all, tankwright::unit_system units);
[[nodiscard]] std::string as_json(const assessment& all);

/// "3.7 L/d (2.3 to 4.6)" in everyday units.
[[nodiscard]] std::string amount_text(const tankwright::commissioning::amount& value, tankwright::unit_system units);

}  // namespace report
