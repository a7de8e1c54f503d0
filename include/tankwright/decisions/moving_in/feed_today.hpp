// SPDX-License-Identifier: BSL-1.0
/// @file
/// What may they be fed today?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/life/nitrification.hpp>

namespace tankwright::decisions {

/// The part of the planned food whose ammonia today's filter takes at the level to stay below.
///
///   takes/needed, at most all of it
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of the filter
/// @source    as `filter_today`
void answer_feed_today(const situation& s, answers& out);

inline constexpr decision feed_today{.id = "life.feed_today",
                                     .day = day::moving_in,
                                     .question = "What may they be fed today?",
                                     .consequence = consequence::animals,
                                     .caution = life::film_caution.text,
                                     .answer = &answer_feed_today};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/feed_today.ipp>
#endif
