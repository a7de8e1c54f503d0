// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/pump_choice.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/decisions/useful.hpp>

namespace tankwright::decisions {

namespace detail {

/// What a candidate does in the place of the return pump.
struct tried_pump {
  const plan::candidate_pump* given;
  estimate<flow_rate> flow;
  std::optional<estimate<length>> left{};  ///< below the rim in a power cut
  bool stays_dry = false;
  bool brings_enough = true;
};

[[nodiscard]] inline tried_pump try_pump(const situation& s, const plan::candidate_pump& one,
                                         std::optional<flow_rate> wanted) {
  const plumbing_case& present = s.plumbing();
  const auto judged = [&](tried_pump& tried, const plumbing::power_cut_answer& cut) {
    tried.left = cut.margin;
    const length reserve = std::max(present.in.reserve, useful_level);
    tried.stays_dry = judge(amount_of(*tried.left), reserve.value()) == verdict::holds;
  };
  if (!present.cut_input) {  // no return pump yet: all of it from the plan with this one
    plan::plumbing_section with = *s.plan().plumbing;
    with.pump = plan::pump{one.label, one.flows, one.heads, one.speed, {}};
    const plumbing_case c = case_of(with, s.basis());
    tried_pump tried{&one, c.solved().band([](const auto& at) { return at.delivered; })};
    if (c.cut) judged(tried, *c.cut);
    if (wanted) tried.brings_enough = tried.flow.central >= *wanted;
    return tried;
  }
  std::vector<plumbing::curve_point> points;
  for (std::size_t i = 0; i < one.flows.size(); ++i) points.push_back({.flow = one.flows[i], .head = one.heads[i]});
  plumbing::circuit circuit = present.in.circuit;
  circuit.pumps.front().curve = plumbing::curve_from_points(one.label, points);
  circuit.pumps.front().speed = plumbing::speed_ratio{*one.speed};
  const circuit_band band = circuit_band_of(circuit, present.liquid);
  tried_pump tried{&one, band.band([](const auto& at) { return at.delivered; })};
  if (band.central.delivered.value() > 0.0) {
    plumbing::power_cut_input in = *present.cut_input;
    const double between = (band.most.delivered - band.least.delivered).value();
    in.flow_uncertainty = fraction(0.5 * between / band.central.delivered.value());
    for (auto& line : in.returns) line.flow = std::max(flow_rate{}, band.central.outlet(line.label).flow);
    judged(tried, plumbing::power_cut(in));
  }
  if (wanted) tried.brings_enough = tried.flow.central >= *wanted;
  return tried;
}

/// What decides among those that are as good otherwise: the power, or the flow where a power is not known.
[[nodiscard]] inline bool is_better(const tried_pump& a, const tried_pump& b) {
  const auto good = [](const tried_pump& p) { return (p.stays_dry ? 2 : 0) + (p.brings_enough ? 1 : 0); };
  if (good(a) != good(b)) return good(a) > good(b);
  if (!a.brings_enough) return a.flow.central > b.flow.central;
  if (!a.stays_dry && a.left && b.left) return a.left->central > b.left->central;
  if (a.given->power && b.given->power) return *a.given->power < *b.given->power;
  return a.flow.central < b.flow.central;
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_pump_choice(const situation& s, answers& out) {
  if (!s.plan().plumbing || s.plan().plumbing->candidate.empty()) return;
  finding& f = out.ask(pump_choice);
  const plan::plumbing_section& p = *s.plan().plumbing;
  if (p.returns.empty()) {
    f.unknown("give each return and how far its opening lies below the overflow edge");
    return;
  }
  std::optional<flow_rate> wanted;
  const auto& held = s.state().display_water;
  if (p.wanted_turnover && held) {
    wanted = flow_rate::from_value(p.wanted_turnover.get().value() * held->central.value());
  }
  const bool priced = s.plan().room && s.plan().room->price_per_kwh;
  const detail::tried_pump* best = nullptr;
  std::vector<detail::tried_pump> all;
  all.reserve(p.candidate.size());
  for (const plan::candidate_pump& one : p.candidate) all.push_back(detail::try_pump(s, one, wanted));
  for (const detail::tried_pump& one : all) {
    const std::string& place = one.given->label;
    f.answer("flow", "brings", one.flow, place);
    if (one.left) f.detail("cut", "left below the rim in a power cut", *one.left, place);
    if (one.given->power) {
      const power drawn = *one.given->power;
      f.detail("power", "draws", drawn, place);
      if (priced) {
        f.detail("cost", "costs a year, in the currency of the price",
                 in_kilowatt_hours(drawn * days(365.25)) * s.plan().room->price_per_kwh.get(), place);
      }
    }
    if (one.given->price) f.detail("price", "costs to buy", *one.given->price, place);
    if (!best || detail::is_better(one, *best)) best = &one;
  }
  const std::string& name = best->given->label;
  if (wanted) {
    f.limit("wanted", "flow of the wanted turnover", *wanted);
    f.margin("more", "the best of them brings more than that by",
             map_rising(best->flow, [&](flow_rate q) { return q - *wanted; }), flow_rate{});
  }
  if (best->left) {
    f.margin("left", "with the best of them left below the rim in a power cut", *best->left,
             std::max(s.plumbing().in.reserve, useful_level));
  }
  f.note = "The best of them: " + name + ".";
  if (!best->stays_dry) f.note += " None of them leaves the reserve free when the power fails.";
  if (!best->brings_enough) f.happens = "None of them brings the wanted flow: " + name + " comes nearest.";
  if (best->brings_enough && f.verdict == verdict::does_not_hold) {
    f.happens = "With " + name + " the sump runs over when the power fails.";
  }
  f.source(plumbing::todini_pilati_1988).source(plumbing::rehbock_1929);
  if (!best->given->power) f.next("measure or ask for the power of each pump: over years it costs more than the pump");
}

}  // namespace tankwright::decisions
