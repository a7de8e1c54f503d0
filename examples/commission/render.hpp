// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the example does with an assessment: a report for an 80-column terminal, and a page.
#pragma once

#include <string>
#include <vector>

#include <tankwright/decisions/assessment.hpp>
#include <tankwright/decisions/figure.hpp>
#include <tankwright/decisions/first_screen.hpp>
#include <tankwright/decisions/measure_first.hpp>
#include <tankwright/text/quantity.hpp>

namespace report {

using tankwright::decisions::assessment;
using figures = std::vector<tankwright::decisions::figure>;

[[nodiscard]] std::string as_text(const assessment& all, tankwright::text::unit_system units);
/// One page that needs nothing else: no script, no network, its own style for light, dark and print.
[[nodiscard]] std::string as_html(const assessment& all, const figures& pictures, tankwright::text::unit_system units);

/// What a row of the first screen says of a finding: what happens where that is said, otherwise its question.
[[nodiscard]] std::string row_of(const tankwright::decisions::finding& f);
/// The number of that row; empty where there is none, or where what happens says it.
[[nodiscard]] std::string answer_of(const tankwright::decisions::finding& f, tankwright::text::unit_system units);

/// "Feistel 2008", "Millero et al. 2008 (from memory)".
[[nodiscard]] std::string source_text(const tankwright::citation& source);

}  // namespace report
