// SPDX-License-Identifier: BSL-1.0
/// @file
/// How deep may a return outlet sit?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/power_cut.hpp>

namespace tankwright::decisions {

/// The deepest opening of a return that keeps the reserve in the worst case of a power cut.
///
///   `plumbing::deepest_safe_outlet`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/power_cut.hpp`
/// @source    the sources of `plumbing/power_cut.hpp`
void answer_outlet_depth(const situation& s, answers& out);

inline constexpr decision outlet_depth{.id = "sump.outlet_depth",
                                       .day = day::power_cut,
                                       .question = "How deep may a return outlet sit?",
                                       .consequence = consequence::flood,
                                       .caution = plumbing::power_cut_caution.text,
                                       .answer = &answer_outlet_depth};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/power_cut/outlet_depth.ipp>
#endif
