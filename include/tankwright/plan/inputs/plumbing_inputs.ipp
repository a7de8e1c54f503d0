// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/plumbing_inputs.hpp>
#include <tankwright/plan/usual.hpp>

namespace tankwright::plan {

namespace detail {

namespace tp = tankwright::plumbing;

/// The overflow edge: a full-width edge, or a comb where gaps are given.
[[nodiscard]] inline tp::overflow_edge edge_of(const overflow& o) {
  if (o.gaps) {
    return tp::toothed_edge{.gap_width = *o.gap_width,
                            .gaps = static_cast<int>(*o.gaps),
                            .tooth_width = *o.tooth_width,
                            .gap_height = *o.gap_height,
                            .crest_height = *o.crest_height};
  }
  return tp::full_width_edge{.width = *o.width, .crest_height = *o.crest_height, .thickness = *o.thickness};
}

[[nodiscard]] inline tp::sump sump_of(const sump& s) {
  tp::sump made{.rim = *s.rim, .running_level = *s.running_level, .chambers = {}};
  for (const chamber& c : s.chamber) made.chambers.push_back({.label = c.label, .plan = *c.area, .gear = *c.gear});
  for (const baffle& b : s.baffle) {
    made.baffles.push_back({.crest = *b.crest, .width = *b.width, .gap = *b.gap, .thickness = *b.thickness});
  }
  return made;
}

[[nodiscard]] inline tp::pump_curve curve_of(const pump& p, const std::string& label) {
  std::vector<tp::curve_point> points;
  for (std::size_t i = 0; i < p.flows.size(); ++i) points.push_back({.flow = p.flows[i], .head = p.heads[i]});
  return tp::curve_from_points(label, points);
}

/// Pump, trunk and returns as a circuit: sump - pump - (trunk -) returns.
inline void make_circuit(const plumbing_section& s, plumbing_inputs& in) {
  const length lift = *s.lift;
  std::string branch = "pump outlet";
  if (s.pump) {
    const std::string label = s.pump->label.empty() ? "pump" : s.pump->label;
    in.circuit.sources.push_back({.label = "sump", .level = in.sump.running_level});
    in.circuit.pumps.push_back({.label = label,
                                .from = "sump",
                                .to = branch,
                                .curve = curve_of(*s.pump, label),
                                .check_valve = tp::check_valve{}});
    in.circuit.pumps.back().speed = tp::speed_ratio{*s.pump->speed};
  }
  if (s.trunk) {
    tp::pipe_run run = run_of(s.trunk->pipe, "trunk");
    run.from = branch;
    run.to = branch = "branching";
    in.shared_pipes.push_back({.pipe = run, .check_valve = s.trunk->check_valve});
    if (s.pump) in.circuit.runs.push_back(run);
  }
  for (const return_pipe& r : s.returns) {
    tp::pipe_run run = run_of(r.pipe, r.label + " pipe");
    run.from = branch;
    run.to = r.label;
    const bool open = *r.kind == tp::outlet_kind::open;
    const length below = *r.below_edge;
    if (s.pump) {
      in.circuit.runs.push_back(run);
      in.circuit.outlets.push_back({.label = r.label, .kind = *r.kind, .level = open ? lift - below : lift});
    }
    in.returns.push_back({.label = r.label,
                          .below_edge = below,
                          .siphon_break = r.siphon_break.maybe(),
                          .pipe = std::move(run),
                          .check_valve = r.check_valve,
                          .nozzle = r.nozzle.maybe(),
                          .to_sand = r.to_sand.maybe(),
                          .to_wall = r.to_wall.maybe()});
  }
}

}  // namespace detail

TANKWRIGHT_INLINE proportion doubt_of_areas(const plumbing_section& s) {
  if (!s.overflow || !s.overflow->surface) return fraction(usual::surfaces.size);
  const value<area>& surface = s.overflow->surface;
  return fraction(half_width(surface, usual::surfaces) / surface.si());
}
TANKWRIGHT_INLINE length doubt_of_levels(const plumbing_section& s) {
  if (!s.sump) return usual::water_mark;
  return length::from_value(half_width(s.sump->running_level, usual::doubt_of(usual::water_mark)));
}

TANKWRIGHT_INLINE plumbing_inputs inputs_of(const plumbing_section& s) {
  namespace tp = tankwright::plumbing;
  const overflow& o = s.overflow.value();
  plumbing_inputs in{.display = {.surface = *o.surface, .edge = detail::edge_of(o)},
                     .sump = detail::sump_of(s.sump.value()),
                     .edge_above_floor = *s.lift,
                     .area_uncertainty = doubt_of_areas(s),
                     .level_uncertainty = doubt_of_levels(s),
                     .reserve = *s.reserve,
                     .surge = s.surge.maybe()};
  if (s.box) in.display.box = tp::overflow_box{.plan = *s.box->area, .falls_by = *s.box->falls_by};
  detail::make_circuit(s, in);
  for (const drain_pipe& d : s.drain) {
    const std::string label = d.label.empty() ? "drain " + std::to_string(in.drains.size() + 1) : d.label;
    in.drains.push_back({.pipe = run_of(d.pipe, label),
                         .drop = *d.drop,
                         .inlet_head = *d.inlet_head,
                         .strainer = d.strainer,
                         .runs_full = d.runs_full});
    if (d.runs_full) in.display.drains.push_back(in.drains.back().pipe);
  }
  in.drains_into = static_cast<std::size_t>(*s.drains_into) - 1;
  in.edge_to_rim = s.edge_to_rim.maybe();
  in.wanted_turnover = s.wanted_turnover.maybe();
  if (s.pump_inlet) {
    in.inlet = tp::pump_inlet{.above_floor = *s.pump_inlet->above_floor, .bore = bore_of(s.pump_inlet->bore)};
    in.npsh_required = s.pump_inlet->npsh_required.maybe();
  }
  return in;
}

}  // namespace tankwright::plan
