// SPDX-License-Identifier: BSL-1.0
/// @file
/// What if every drain is blocked? The pump goes on until its chamber runs dry, and all of that stands in the display.
#pragma once

#include <algorithm>
#include <optional>
#include <tankwright/plumbing/restart.hpp>
#include <vector>

namespace tankwright::plumbing {

/// A display whose drains are all blocked while the pump runs.
struct drains_blocked_input {
  power_cut_input system;
  required<length> edge_to_rim;       ///< from the overflow edge up to the rim of the display
  std::optional<pump_inlet> inlet{};  ///< where the pump stops drawing; none: at the floor of its chamber
  volume top_off = litres(0.0);       ///< that a top-off adds meanwhile, for the level in the sump falls
};

/// What stands in the display then.
struct drains_blocked_answer {
  estimate<volume> delivered;     ///< out of the sump, until the pump draws air
  estimate<length> over_edge;     ///< how high the display stands over its edge at the end
  estimate<length> margin;        ///< from there up to its rim; negative is water on the floor
  estimate<volume> on_the_floor;  ///< over the rim of the display
  duration until_dry;             ///< at the least, until the pump draws air
  tankwright::caution caution;
};

inline constexpr caution drains_blocked_caution{
    "A leaf, a snail or a fish can shut a drain. A sump that holds no more than the display takes is the only guard "
    "that cannot fail; a float switch that stops the pump is none."};

inline constexpr limits edge_to_rim_limits{"edge_to_rim", "m", {0.0, 20.0}};

namespace detail {

/// Where the chambers stand once the pump has drawn its chamber down to `stop`: each at the highest crest below it that
/// it has water for.
inline void drawn_down(const sump& plan, double stop, std::vector<double>& levels) {
  std::size_t i = levels.size() - 1;
  levels[i] = std::min(levels[i], stop);
  while (i > 0) {
    --i;
    const baffle& b = plan.baffles[i];
    const double barrier = b.gap.value() > 0.0 ? levels[i + 1] : std::max(b.crest->value(), levels[i + 1]);
    levels[i] = std::min(levels[i], barrier);
  }
}

}  // namespace detail

/// How high the display stands when all its drains are blocked and the pump has run its chamber dry.
///
///   V = water of the sump above the pump's inlet and the crests + drain pipes + top-off,   z = h(Q) + V/A,
///   margin = edge_to_rim - z;   the band: areas, levels, flow and weir heads all at one end together
///
/// @param in system as for `power_cut`; room over the edge [m] >= 0; inlet: height [m] >= 0, bore [m] > 0; top-off
///           [m^3] >= 0
/// @return   volume that the pump delivers, height over the edge, margin to the rim, with their bands; a caution
/// @throws   invalid_input (names the element by its label)
/// @accuracy the bands; the box's own room is left out, and the pump is taken to deliver to the last drop: both are on
///           the safe side
/// @source   geometry; the formulas of `weirs.hpp`
[[nodiscard]] inline drains_blocked_answer all_drains_blocked(const drains_blocked_input& in) {
  constexpr std::string_view here = "tankwright::plumbing::all_drains_blocked";
  const power_cut_input& system = in.system;
  detail::check_power_cut(here, system);
  core::check(here, edge_to_rim_limits, in.edge_to_rim->value());
  core::check(here, topped_up_limits, in.top_off.value());
  double stop = 0.0, half_bore = 0.0;
  if (in.inlet) {
    core::check(here, inlet_height_limits, in.inlet->above_floor->value());
    core::check(here, inlet_bore_limits, in.inlet->bore->diameter().value());
    stop = in.inlet->above_floor->value();
    half_bore = 0.5 * in.inlet->bore->diameter().value();
  }
  const detail::sump_shape shape{system.sump};
  const std::size_t n = shape.size();
  const double flow = detail::total_flow(system.returns);
  if (flow == 0.0) core::refuse_element(here, system.display.label, "has returns without flow: nothing fills it");
  double pipes = 0.0;
  for (const pipe_run& pipe : system.display.drains) pipes += detail::contents(pipe);

  struct state {
    double delivered, over_edge, area;
  };
  std::vector<double> running(n), drawn(n);
  const auto at_end = [&](int sign) {
    const detail::power_cut_moves by = detail::moved_to_end(system, sign);
    detail::run(system.sump, system.drains_into, flow * by.flow, by.side, by.running_level, running);
    drawn = running;
    // At the worst end air comes in only at the lowest point of the inlet.
    detail::drawn_down(system.sump, std::max(0.0, stop - sign * half_bore), drawn);
    double delivered = pipes + in.top_off.value();
    for (std::size_t i = 0; i < n; ++i) {
      // A sump that is larger than it was measured has more to deliver.
      delivered += (2.0 - by.sump_area) * (shape.below(i, running[i]) - shape.below(i, drawn[i]));
    }
    const double area = system.display.surface->value() * (2.0 - by.display_area);
    const double q = flow * by.flow;
    const double head =
        std::visit([&](const auto& e) { return detail::edge_head(here, e, q, by.side, detail::guess_head(e, q)); },
                   system.display.edge);
    return state{delivered, head + delivered / area, area};
  };
  const state mild = at_end(-1), middle = at_end(0), worst = at_end(1);
  const double room = in.edge_to_rim->value();
  const auto floor = [&](const state& s) { return std::max(0.0, s.over_edge - room) * s.area; };
  constexpr std::string_view why = "areas, levels, flow and weir heads, all at one end of their bands together";
  const double fastest = flow * (1.0 + system.flow_uncertainty.value());
  return {.delivered = detail::banded<volume>(mild.delivered, middle.delivered, worst.delivered, why),
          .over_edge = detail::banded<length>(mild.over_edge, middle.over_edge, worst.over_edge, why),
          .margin = detail::banded<length>(room - worst.over_edge, room - middle.over_edge, room - mild.over_edge, why),
          .on_the_floor = detail::banded<volume>(floor(mild), floor(middle), floor(worst), why),
          .until_dry = duration::from_value((middle.delivered - in.top_off.value()) / fastest),
          .caution = drains_blocked_caution};
}

}  // namespace tankwright::plumbing
