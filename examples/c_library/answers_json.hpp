// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the interface gives as data beyond the library's own report: the list of keys for a form, what a plan holds,
/// findings for a slider, cures.
#pragma once

#include <string>
#include <tankwright/decisions/assessment.hpp>
#include <tankwright/decisions/would_hold.hpp>
#include <tankwright/exchange/json_text.hpp>
#include <tankwright/exchange/read.hpp>
#include <tankwright/plan/build.hpp>
#include <vector>

namespace c_library {

/// Mistakes of a plan that has no text.
[[nodiscard]] std::vector<tankwright::exchange::located_mistake> located(
    const std::vector<tankwright::plan::mistake>& mistakes);

/// Every key of a plan, its rules, and the units of every quantity among them.
[[nodiscard]] std::string keys_json();

/// What a plan holds, key by key.
[[nodiscard]] std::string values_json(const tankwright::plan::build& build);

/// Of findings only what moves while a slider moves.
[[nodiscard]] std::string moving_json(const std::vector<tankwright::decisions::finding>& findings);

/// One finding's cures.
[[nodiscard]] std::string cures_json(const tankwright::decisions::cures_of_finding& found);

/// Every decision of the library.
[[nodiscard]] std::string decisions_json();

}  // namespace c_library
