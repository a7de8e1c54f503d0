// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
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
  for (const chamber& c : s.chamber)
    made.chambers.push_back({.label = c.label, .horizontal_area = *c.area, .gear = *c.gear});
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

/// Whether a further pump pushes into returns of its own.
[[nodiscard]] inline bool feeds_its_own(const pump& p, const plumbing_section& s) {
  return std::any_of(s.returns.begin(), s.returns.end(), [&](const return_pipe& r) { return r.fed_by == p.label; });
}

/// Where a pump's water begins its way.
[[nodiscard]] inline std::string outlet_of(const pump& p) { return label_of(p) + " outlet"; }

/// The pumps, all of them out of the sump's last chamber, and whether nothing runs back through those of the trunk.
inline bool add_pumps(const plumbing_section& s, plumbing_inputs& in) {
  if (!s.pump) return false;
  in.circuit.sources.push_back({.label = "sump", .level = in.sump.running_level});
  bool held = s.pump->check_valve;
  const auto add = [&](const pump& p, std::string to) {
    tp::circuit_pump made{.label = label_of(p), .from = "sump", .to = std::move(to), .curve = curve_of(p, label_of(p))};
    made.speed = tp::speed_ratio{*p.speed};
    // Alone it runs, or the power is off: no water comes back through it while there is a circuit to solve.
    if (p.check_valve || s.further_pump.empty()) made.check_valve = tp::check_valve{};
    in.circuit.pumps.push_back(std::move(made));
  };
  add(*s.pump, outlet_of(*s.pump));
  for (const pump& p : s.further_pump) {
    const bool own = feeds_its_own(p, s);
    add(p, outlet_of(own ? p : *s.pump));
    if (!own) held = held && p.check_valve;
  }
  return held;
}

/// The trunk from the return pump to where its returns part: each of its pipes as a run.
[[nodiscard]] inline std::string add_trunk(const plumbing_section& s, std::string from, bool held,
                                           plumbing_inputs& in) {
  if (!s.trunk) return from;
  const int pipes = static_cast<int>(*s.trunk->side_by_side);
  tp::pipe_run run = run_of(s.trunk->pipe, "trunk");
  run.from = std::move(from);
  run.to = "branching";
  tp::shared_pipe shared{.pipe = run, .check_valve = s.trunk->check_valve || held, .side_by_side = pipes};
  for (const return_pipe& r : s.returns) {
    if (r.fed_by.empty() || (s.pump && r.fed_by == label_of(*s.pump))) shared.returns.push_back(r.label);
  }
  in.shared_pipes.push_back(std::move(shared));
  if (s.trunk->check_valve) run.check_valve = tp::check_valve{};
  for (int i = 1; s.pump && i <= pipes; ++i) {
    if (pipes > 1) run.label = "trunk " + std::to_string(i);
    in.circuit.runs.push_back(run);
  }
  return run.to;
}

/// Pumps, trunk and returns as a circuit: sump - pump - (trunk -) returns.
inline void make_circuit(const plumbing_section& s, plumbing_inputs& in) {
  const length lift = *s.lift;
  const bool held = add_pumps(s, in);
  const std::string branch = add_trunk(s, s.pump ? outlet_of(*s.pump) : "pump outlet", held, in);
  for (const return_pipe& r : s.returns) {
    const auto own = std::find_if(s.further_pump.begin(), s.further_pump.end(),
                                  [&](const pump& p) { return !r.fed_by.empty() && p.label == r.fed_by; });
    const bool further = own != s.further_pump.end();
    tp::pipe_run run = run_of(r.pipe, r.label + " pipe");
    run.from = further ? outlet_of(*own) : branch;
    run.to = r.label;
    const bool open = *r.kind == tp::outlet_kind::open;
    const length below = *r.below_edge;
    if (s.pump) {
      in.circuit.runs.push_back(run);
      if (r.check_valve) in.circuit.runs.back().check_valve = tp::check_valve{};
      in.circuit.outlets.push_back({.label = r.label, .kind = *r.kind, .level = open ? lift - below : lift});
    }
    const bool at_pump = further ? static_cast<bool>(own->check_valve) : held && !s.trunk;
    in.returns.push_back({.label = r.label,
                          .below_edge = below,
                          .siphon_break = r.siphon_break.maybe(),
                          .pipe = std::move(run),
                          .check_valve = r.check_valve || at_pump,
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
  if (s.box) in.display.box = tp::overflow_box{.horizontal_area = *s.box->area, .falls_by = *s.box->falls_by};
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
