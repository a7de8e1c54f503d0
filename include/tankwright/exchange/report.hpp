// SPDX-License-Identifier: BSL-1.0
/// @file
/// A report as data: every number with its id, the numbers of several places as a table, mistakes as data too. Its form
/// is docs/report.schema.json.
#pragma once

#include <string>
#include <tankwright/decisions/advice.hpp>
#include <tankwright/decisions/assessment.hpp>
#include <tankwright/decisions/figure.hpp>
#include <tankwright/exchange/json_text.hpp>
#include <tankwright/exchange/read.hpp>
#include <vector>

namespace tankwright::exchange {

/// How a report is written as JSON.
struct report_style {
  std::size_t indent = 2;  ///< spaces a level; 0: compact, all in one line
};

/// A report as JSON, with chances, cures, shares and what to measure first.
///
/// @param all      what `decisions::advise` found
/// @param pictures of it; none: the report has no figures
/// @param style    indented or compact
/// @return         a JSON document in UTF-8, numbers in SI
/// @throws         nothing but std::bad_alloc
/// @accuracy       numbers read back to the last bit
/// @source         RFC 8259
[[nodiscard]] std::string report_to_json(const decisions::advice& all,
                                         const std::vector<decisions::figure>& pictures = {},
                                         const report_style& style = {});

/// A report as JSON, by central values.
///
/// @param all      the assessment
/// @param pictures of it; none: the report has no figures
/// @param style    indented or compact
/// @return         a JSON document in UTF-8, numbers in SI
/// @throws         nothing but std::bad_alloc
/// @accuracy       numbers read back to the last bit
/// @source         RFC 8259
[[nodiscard]] std::string report_to_json(const decisions::assessment& all,
                                         const std::vector<decisions::figure>& pictures = {},
                                         const report_style& style = {});

/// Mistakes of a plan as JSON: {"mistakes": [{"path", "reason", "line", "pointer", "clashes"}]}.
///
/// @param mistakes of a reading
/// @return         a JSON document in UTF-8
/// @throws         nothing but std::bad_alloc
/// @accuracy       exact
/// @source         RFC 8259
[[nodiscard]] std::string mistakes_to_json(const std::vector<located_mistake>& mistakes);

/// Mistakes of a plan as the key "mistakes" of an object that is being written.
///
/// @param out      the object, open
/// @param mistakes of a reading
/// @throws         nothing but std::bad_alloc
/// @accuracy       exact
/// @source         RFC 8259
void write_mistakes(json_text& out, const std::vector<located_mistake>& mistakes);

/// The JSON Schema of plans, from the descriptions.
///
/// @return   a document of JSON Schema draft-07 (docs/plan.schema.json)
/// @throws   nothing but std::bad_alloc
/// @accuracy exact in keys and kinds; limits of quantities are said in words, since they are texts with units
/// @source   the descriptions of `plan/`
[[nodiscard]] std::string plan_schema();

}  // namespace tankwright::exchange

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/exchange/report.ipp>
#endif
