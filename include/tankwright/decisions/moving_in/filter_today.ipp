// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/filter_finding.hpp>
#include <tankwright/decisions/moving_in/filter_today.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_filter_today(const situation& s, answers& out) {
  if (detail::describes_filter(s.plan())) detail::tell_filter(s, out.ask(filter_today), filter_at::today);
}

}  // namespace tankwright::decisions
