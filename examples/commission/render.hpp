// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the example does with an assessment: a report for an 80-column terminal, and a page.
#pragma once

#include <string>
#include <vector>

#include <tankwright/decisions/advice.hpp>
#include <tankwright/decisions/assessment.hpp>
#include <tankwright/decisions/figure.hpp>
#include <tankwright/decisions/first_screen.hpp>
#include <tankwright/text/quantity.hpp>

namespace report {

using tankwright::decisions::assessment;
using figures = std::vector<tankwright::decisions::figure>;

using tankwright::decisions::advice;
using tankwright::decisions::finding;
using tankwright::text::unit_system;

[[nodiscard]] std::string as_text(const advice& all, unit_system units);
/// The same by central values, without chances and cures.
[[nodiscard]] std::string as_text(const assessment& all, unit_system units);
/// One page that needs nothing else: no script, no network, its own style for light, dark and print.
[[nodiscard]] std::string as_html(const advice& all, const figures& pictures, unit_system units);
[[nodiscard]] std::string as_html(const assessment& all, const figures& pictures, unit_system units);

/// A page with the same style about something else.
[[nodiscard]] std::string page_of(std::string_view title, std::string_view body);

/// What a row of the first screen says of a finding, each a sentence or empty.
struct row {
  std::string happens;  ///< what happens, and what to do
  std::string number;   ///< the one that decides, with its name and the chance that it holds
  std::string caution;  ///< the first sentence of it
};
[[nodiscard]] row row_of(const advice& all, const finding& f, unit_system units);

/// What the report assumed, in one line.
[[nodiscard]] std::string assumed_in(const advice& all);

/// What to do about a finding, as sentences; empty by central values and where it holds.
[[nodiscard]] std::string cures_of(const advice& all, const finding& f, unit_system units);

/// With its full stop.
[[nodiscard]] std::string sentence(std::string_view text);

/// "38 %", "below 1 %".
[[nodiscard]] std::string chance_text(double chance);
/// What makes a part of a band: the path of a key, or how well a law is known.
[[nodiscard]] std::string made_by(const tankwright::decisions::share& s);

/// A number of a finding as a person reads it: answers, limits and margins of one quantity in one unit, days as days,
/// zero as "none" where it counts something, the load of a floor in pounds a square foot.
[[nodiscard]] std::string shown(const finding& f, const tankwright::decisions::number& n, unit_system units);

/// Places of a finding that have the same numbers, as a table: the stages of the first fill.
struct place_table {
  std::string title;
  std::vector<std::string> labels{};  ///< of the columns
  std::vector<std::string> places{};  ///< the rows
};
[[nodiscard]] std::vector<place_table> tables_in(const finding& f);
/// One cell of it; "-" where the place has no such number.
[[nodiscard]] std::string cell_of(const finding& f, std::string_view place, std::string_view label, unit_system units);

/// "Feistel 2008", "Millero et al. 2008 (from memory)".
[[nodiscard]] std::string source_text(const tankwright::citation& source);

}  // namespace report
