// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/figures/plumbing_figures.hpp>

namespace tankwright::decisions {

namespace detail {

/// Pump curve, and what the pipes ask for at each flow: the circuit solved with the pump at many speeds.
[[nodiscard]] inline figure flow_figure(const plumbing_case& c) {
  const auto& pump = c.in.circuit.pumps.front();
  figure picture{.id = "plumbing.flow",
                 .title = "What the pump gives, what the pipes ask for, and where they meet",
                 .x_axis = {"flow", "flow_rate"},
                 .y_axis = {"head", "length"}};
  curve gives{.label = pump.curve->label().empty() ? "pump" : pump.curve->label()};
  curve asks{.label = "pipes and lift", .as = stroke::dashed};
  const auto shown = plumbing::at_speed(pump.curve, pump.speed);
  for (int i = 0; i <= 40; ++i) {
    const flow_rate q = shown.end_flow() * (i / 40.0);
    if (const auto h = plumbing::head_at(shown, q).head) {
      gives.x.push_back(q.value());
      gives.y.push_back(h->value());
    }
  }
  plumbing::circuit at = c.in.circuit;
  for (int i = 0; i <= 24; ++i) {
    at.pumps.front().speed = plumbing::speed_ratio{pump.speed.value() * (0.3 + 0.05 * i)};
    const auto point = plumbing::operating_point(at, c.liquid).pumps.front();
    if (point.state != plumbing::pump_state::running || point.flow > shown.end_flow()) continue;
    asks.x.push_back(point.flow.value());
    asks.y.push_back(point.head.value());
  }
  const auto& meets = c.circuit->central.pumps.front();
  curve here{.label = "operating point", .x = {meets.flow.value()}, .y = {meets.head.value()}, .as = stroke::points};
  picture.curves = {std::move(gives), std::move(asks), std::move(here)};
  return picture;
}

/// The rim, the level in each chamber while it runs, and the flood mark: the highest that the water comes in the worst
/// moment, where the demanded reserve ends.
inline void add_levels(figure& picture, const plumbing::sump& sump, const plumbing::power_cut_answer& cut,
                       double depth) {
  const double rim = sump.rim->value();
  double left = 0.0;
  for (std::size_t i = 0; i < sump.chambers.size(); ++i) {
    const double width = sump.chambers[i].horizontal_area.at(metres(0.5 * rim)).value() / depth;
    const double before = cut.running[i].level.central.value(), after = cut.settled[i].level.central.value();
    picture.marks.push_back({left, left + width, before, "runs at"});
    if (after > before) picture.marks.push_back({left, left + width, after, "after the power cut"});
    left += width;
  }
  picture.marks.push_back({0.0, left, rim - cut.worst.margin.value(), "flood mark: highest in the worst moment"});
  picture.marks.push_back({0.0, left, rim, "rim", true});
}

/// The sump to scale: walls, the water while it runs, and the rise after the power has failed.
[[nodiscard]] inline figure sump_figure(const plumbing::sump& sump, const plumbing::power_cut_answer& cut) {
  figure picture{.id = "sump.power_cut",
                 .title = "The sump while the pump runs, and above it the rise after a power cut, to scale"};
  double depth = 0.0;  // of the sump seen from the side: chambers are drawn as wide as their area over one common depth
  for (const auto& baffle : sump.baffles) depth = std::max(depth, baffle.width->value());
  if (depth == 0.0) depth = 0.5;
  double left = 0.0;
  const double rim = sump.rim->value();
  for (std::size_t i = 0; i < sump.chambers.size(); ++i) {
    const double width = sump.chambers[i].horizontal_area.at(metres(0.5 * rim)).value() / depth;
    const double before = std::min(cut.running[i].level.central.value(), rim);
    const double after = std::min(cut.settled[i].level.central.value(), rim);
    picture.rectangles.push_back({left, 0.0, width, std::min(before, after), "water", {}});
    if (after > before) picture.rectangles.push_back({left, before, width, after - before, "rise", {}});
    picture.rectangles.push_back({left, 0.0, width, rim, "room", cut.running[i].label});
    left += width;
  }
  double at = 0.0;
  for (std::size_t i = 0; i + 1 < sump.chambers.size(); ++i) {
    at += sump.chambers[i].horizontal_area.at(metres(0.5 * rim)).value() / depth;
    const double gap = sump.baffles[i].gap.value();
    picture.rectangles.push_back({at - 0.004, gap, 0.008, sump.baffles[i].crest->value() - gap, "wall", {}});
  }
  picture.rectangles.push_back({0.0, 0.0, left, rim, "wall", {}});
  add_levels(picture, sump, cut, depth);
  return picture;
}

}  // namespace detail

TANKWRIGHT_INLINE std::vector<figure> figures_of(const plumbing_case& c) {
  std::vector<figure> all;
  if (!c.circuit) return all;
  if (c.in.circuit.pumps.size() == 1) all.push_back(detail::flow_figure(c));
  if (c.cut) all.push_back(detail::sump_figure(c.in.sump, *c.cut));
  return all;
}

}  // namespace tankwright::decisions
