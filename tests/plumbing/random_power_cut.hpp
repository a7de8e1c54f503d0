// SPDX-License-Identifier: BSL-1.0
/// @file
/// Random systems, as the library and as the plain simulation see them. Every input is fixed: nothing is uncertain.
#pragma once

#include <optional>
#include <random>

#include <tankwright/plumbing/power_cut.hpp>

#include "plumbing/plain_power_cut.hpp"

namespace tankwright::testing {

struct random_system {
  plumbing::power_cut_input in;
  plain_system plain;
};

/// A system, or none where its sump is so small that it fills to near the display.
inline std::optional<random_system> random_power_cut(std::mt19937& random) {
  namespace tp = plumbing;
  const auto uniform = [&](double a, double b) { return std::uniform_real_distribution<double>{a, b}(random); };
  const auto chance = [&](double p) { return uniform(0.0, 1.0) < p; };
  plain_system s;
  s.surface = uniform(0.4, 4.0);
  s.edge_width = uniform(0.3, 1.5);
  s.height = uniform(0.8, 2.5);
  s.flow = uniform(2.0, 15.0) / 3600.0;
  if (chance(0.6)) s.box_area = uniform(0.02, 0.12), s.box_fall = uniform(0.05, 0.25);
  const plain_pipe drain{uniform(0.03, 0.07), uniform(0.5, 3.0), 0.0};
  if (chance(0.7)) s.drain_contents = plain::contents(drain);
  const auto n = static_cast<std::size_t>(1 + random() % 5);
  double lowest = 0.45;
  for (std::size_t i = 0; i < n; ++i) {
    s.areas.push_back(uniform(0.02, 0.4));
    if (i + 1 == n) break;
    const double crest = uniform(0.15, 0.40), gap = chance(0.3) ? uniform(0.015, 0.06) : 0.0;
    s.baffles.push_back({crest, uniform(0.15, 0.6), gap});
    if (gap == 0.0 || i + 2 < n) lowest = std::fmin(lowest, crest);
  }
  s.running = uniform(0.05, lowest);
  s.drains_into = chance(0.2) ? random() % n : 0;
  const auto m = static_cast<std::size_t>(1 + random() % 3);
  for (std::size_t i = 0; i < m; ++i) {
    s.returns.push_back({uniform(-0.03, 0.06), {uniform(0.02, 0.055), uniform(0.5, 4.0), uniform(0.5, 8.0)}});
  }
  s.shared = chance(0.5);
  s.trunk = {uniform(0.03, 0.07), uniform(0.5, 3.0), uniform(0.5, 6.0)};

  const auto run = [](const char* label, const plain_pipe& p) {
    return tp::pipe_run{.label = label,
                        .bore = tp::pipe_bore{metres(p.bore)},
                        .length = metres(p.length),
                        .fittings = tp::known_loss(p.k)};
  };
  tp::power_cut_input in{
      .display = {.surface = square_metres(s.surface),
                  .edge = tp::full_width_edge{.width = metres(s.edge_width), .crest_height = metres(s.edge_crest)}},
      .sump = {.rim = metres(0.5), .running_level = metres(s.running), .chambers = {}, .baffles = {}},
      .returns = {},
      .edge_above_floor = metres(s.height),
      .drains_into = s.drains_into,
      .area_uncertainty = percent(0.0),
      .level_uncertainty = metres(0.0)};
  if (s.box_area > 0.0) in.display.box = tp::overflow_box{square_metres(s.box_area), metres(s.box_fall)};
  if (s.drain_contents > 0.0) in.display.drains = {run("drain", drain)};
  for (const double a : s.areas) in.sump.chambers.push_back({.label = "chamber", .horizontal_area = square_metres(a)});
  for (const auto& b : s.baffles) {
    in.sump.baffles.push_back({.crest = metres(b.crest), .width = metres(b.width), .gap = metres(b.gap)});
  }
  const char* names[] = {"A", "B", "C"};
  for (std::size_t i = 0; i < m; ++i) {
    in.returns.push_back({.label = names[i],
                          .flow = flow_rate::from_value(s.flow / static_cast<double>(m)),
                          .outlet_below_edge = metres(s.returns[i].opening),
                          .pipe = run(names[i], s.returns[i].pipe)});
  }
  if (s.shared) in.shared_pipes = {{.pipe = run("trunk", s.trunk)}};
  // A rim near what the water reaches: there a margin means most.
  const double at_rest = 0.5 - in_metres(tp::worst_moment_of(in).margin);
  if (at_rest > 0.6) return std::nullopt;
  double highest_crest = 0.0;
  for (const auto& b : s.baffles) highest_crest = std::fmax(highest_crest, b.crest);
  s.rim = std::fmax(highest_crest, std::fmax(s.running, at_rest + uniform(-0.02, 0.05)));
  in.sump.rim = metres(s.rim);
  return random_system{in, s};
}

}  // namespace tankwright::testing
