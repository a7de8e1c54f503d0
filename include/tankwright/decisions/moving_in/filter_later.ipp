// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/filter_finding.hpp>
#include <tankwright/decisions/moving_in/filter_later.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_filter_later(const situation& s, answers& out) {
  if (detail::describes_filter(s.plan())) detail::tell_filter(s, out.ask(filter_later), filter_at::mature);
}

}  // namespace tankwright::decisions
