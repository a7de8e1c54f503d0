// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/drain_share.hpp>
#include <tankwright/decisions/plumbing/drains.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

[[nodiscard]] inline std::string_view words_of(plumbing::drain_mode mode) noexcept {
  switch (mode) {
    case plumbing::drain_mode::self_venting:
      return "quiet, with air in the middle";
    case plumbing::drain_mode::surging:
      return "surging: gulps air, noisy, with a swinging level";
    case plumbing::drain_mode::full:
      return "full of water, as a siphon";
    case plumbing::drain_mode::overloaded:
      break;
  }
  return "overloaded: the box runs over";
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_drains(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().in.has_circuit()) return;
  finding& f = out.ask(drains);
  const plumbing_case& c = s.plumbing();
  if (c.in.drains.empty()) {
    f.unknown("give each drain: bore, length, drop, and how high the water may stand over its top");
    return;
  }
  const auto flow = c.solved().band([](const auto& one) { return one.delivered; });
  const auto first = plumbing::drain_mode_for(c.in.drains.front(), flow.high, c.liquid);
  const auto carried = detail::sum_of(detail::drain_shares(c, flow.high), [](std::size_t) { return true; });
  f.answer("carry", "all drains carry", carried);
  f.limit("brought", "the returns bring", flow);
  f.margin("left", "they could take more", detail::beyond(carried, flow), flow_rate{});
  f.note = c.in.drains.front().pipe.label + " alone with this flow: " + std::string{detail::words_of(first.mode)} + ".";
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "The drains cannot take what the returns bring: " + said(s, flow.central - carried.central) +
                " run over the rim";
  }
  f.source(plumbing::hills_1983);
}

}  // namespace tankwright::decisions
