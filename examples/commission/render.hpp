// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the example does with an assessment: a report for an 80-column terminal, a page, and data for programs.
#pragma once

#include <string>
#include <vector>

#include <tankwright/commissioning/assessment.hpp>
#include <tankwright/commissioning/figure.hpp>
#include <tankwright/commissioning/measure_first.hpp>
#include <tankwright/text/quantity.hpp>

namespace report {

using tankwright::commissioning::assessment;
using figures = std::vector<tankwright::commissioning::figure>;

[[nodiscard]] std::string as_text(const assessment& all, tankwright::text::unit_system units);
[[nodiscard]] std::string as_json(const assessment& all, const figures& pictures);
/// One page that needs nothing else: no script, no network, its own style for light, dark and print.
[[nodiscard]] std::string as_html(const assessment& all, const figures& pictures, tankwright::text::unit_system units);

/// The order in which a report opens.
inline constexpr tankwright::commissioning::verdict gravest_first[] = {
    tankwright::commissioning::verdict::does_not_hold, tankwright::commissioning::verdict::not_enough_known,
    tankwright::commissioning::verdict::thin_margin, tankwright::commissioning::verdict::holds,
    tankwright::commissioning::verdict::for_information};

/// The first number that answers a finding; empty when there is none.
[[nodiscard]] std::string answer_of(const tankwright::commissioning::finding& f, tankwright::text::unit_system units);

/// "Feistel 2008", "Millero et al. 2008 (from memory)".
[[nodiscard]] std::string source_text(const tankwright::citation& source);

}  // namespace report
