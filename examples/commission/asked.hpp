// SPDX-License-Identifier: BSL-1.0
/// @file
/// Questions asked directly: what would make a finding hold, a finding while a key runs, two plans side by side.
#pragma once

#include <string>
#include <tankwright/decisions/doubts.hpp>
#include <tankwright/plan/build.hpp>
#include <tankwright/text/quantity.hpp>

namespace report {

using tankwright::decisions::executor;
using tankwright::plan::build;

/// What would make a finding hold, by one key or by whatever can be chosen.
[[nodiscard]] std::string would_hold(const build& plan, const std::string& finding, const std::string& key,
                                     tankwright::text::unit_system units, const executor& run);

/// A finding while a key runs from one value to another: a table, and a bar for the margin.
[[nodiscard]] std::string while_it_runs(const build& plan, const std::string& finding, const std::string& key,
                                        const std::string& from, const std::string& to,
                                        tankwright::text::unit_system units);
/// The same as one picture in a page.
[[nodiscard]] std::string while_it_runs_html(const build& plan, const std::string& finding, const std::string& key,
                                             const std::string& from, const std::string& to,
                                             tankwright::text::unit_system units);

/// Two plans side by side.
[[nodiscard]] std::string side_by_side(const build& before, const build& after);

}  // namespace report
