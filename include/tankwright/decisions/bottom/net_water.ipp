// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/bottom/items.hpp>
#include <tankwright/decisions/bottom/net_water.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_net_water(const situation& s, answers& out) {
  if (!s.plan().vessel) return;
  finding& f = out.ask(net_water);
  const vessel_case& c = s.vessel();
  const vessel::water_content& content = c.contents();
  const auto net = as_volume(content.net);
  f.answer("net", "net, for salt and dosing", net);
  f.answer("free", "free, outside sand and rock", as_volume(content.free));
  f.detail("gross", "empty, to the water line", content.gross);
  f.detail("kept_out", "kept out by what is in it", as_volume(content.solids));
  f.detail("pores", "standing in pores", as_volume(content.pores));
  if (const auto& sump = s.state().sump_water) {
    f.answer("total", "total, with the sump",
             estimate<volume>{net.low + sump->low, net.central + sump->central, net.high + sump->high, net.reason});
  }
  if (!c.in.sand.empty() || !c.in.rock.empty()) f.source(vessel::bucher_1998);
  if (!c.in.rock.empty()) f.source(vessel::crane_2007);
  if (c.in.sand.empty() && c.in.rock.empty()) f.next("give the sand and the rock: they keep water out");
  f.next("meter the water while filling: that is the honest net volume");
}

}  // namespace tankwright::decisions
