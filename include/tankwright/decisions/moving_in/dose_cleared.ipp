// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/core/span_of.hpp>
#include <tankwright/decisions/moving_in/dose_cleared.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <vector>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_dose_cleared(const situation& s, answers& out) {
  if (!s.plan().life || !s.plan().life->circulation) return;
  finding& f = out.ask(dose_cleared);
  const life_case& c = s.life();
  std::vector<life::loop> loops;
  estimate<double> flows{1.0, 1.0, 1.0, {}};  // of the returns, over their central flow
  for (const plan::treatment_inputs& t : c.in.circulation->treatments) {
    loops.push_back({.label = t.label, .flow = t.flow, .efficiency = t.passes});
  }
  if (loops.empty() && c.state.flow) {
    const estimate<flow_rate>& q = *c.state.flow;
    loops.push_back({.label = "returns", .flow = q.central});
    if (q.central.value() > 0.0) flows = {q.low / q.central, 1.0, q.high / q.central, q.reason};
    f.note = "For a treatment of the whole flow that lets nothing past; a real one takes longer.";
  }
  if (loops.empty()) {
    f.unknown(c.state.why_no_sump.empty() ? "give the treatment: its flow, and the share that a pass removes"
                                          : c.state.why_no_sump);
  }
  if (!c.net) f.unknown(c.state.why_no_display.empty() ? std::string{needs_net_volume} : c.state.why_no_display);
  if (!f.measure_next.empty()) return;
  const flow_rate one = life::flow_cleared(core::span_of(loops));
  const estimate<flow_rate> cleared{one * flows.low, one, one * flows.high,
                                    flows.reason.empty() ? c.net->reason : flows.reason};
  const double rounds = -std::log(0.01);  // turnovers of a perfect treatment that leave a hundredth
  const auto time = [&](volume v, flow_rate q) { return duration{rounds * v / q}; };
  if (cleared.low.value() > 0.0) {
    f.answer("time", "99 % is out after",
             estimate<duration>{time(c.net->low, cleared.high), time(c.net->central, one),
                                time(c.net->high, cleared.low), c.net->reason});
  } else if (!(one.value() > 0.0)) {
    f.happens = "Nothing takes it out: no water passes the treatment.";
  }
  f.detail("cleared", "water freed of it", cleared);
  if (c.in.circulation->clear_within) {
    const duration within = *c.in.circulation->clear_within;
    const auto needed = map_rising(*c.net, [&](volume v) { return flow_rate{rounds * v / within}; });
    f.detail("within", "wanted within", within);
    f.limit("needed", "flow to be freed of it for that", needed);
    f.margin("left", "more than that by",
             estimate<flow_rate>{cleared.low - needed.high, one - needed.central, cleared.high - needed.low,
                                 "the items, as if all erred the same way"},
             flow_rate{});
    if (one.value() > 0.0 && one <= needed.central) {
      f.happens = "A dose is out after " + said(s, time(c.net->central, one)) + ".";
    }
  }
  if (c.state.flow) {
    const life::loop whole[] = {{.label = "returns", .flow = c.state.flow->central}};
    f.detail("turnover", "turnovers of all the water by the returns",
             map_falling(*c.net, [&](volume v) { return life::turnover_rate({.net = v, .loops = whole}); }));
  }
  f.source(life::gage_bidwell_1926);
  f.next("measure the flow with a bucket and a watch: a filter that clogs takes it first");
}

}  // namespace tankwright::decisions
