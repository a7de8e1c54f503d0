// SPDX-License-Identifier: BSL-1.0
/// @file
/// When does the hose reach each mark? Filling in stages, with stops to look at seams, panels and the floor.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include <tankwright/plumbing/vessel_shapes.hpp>

namespace tankwright::plumbing {

inline constexpr limits fill_flow_limits{"flow", "m3/s", positive};

/// A height at which to stop the hose and look: at seams, at panels, at the floor.
struct fill_stop {
  std::string label;
  required<length> level;
  duration hold = seconds(0.0);
};

/// A vessel filled from a hose, in stages.
struct staged_fill {
  any_vessel vessel;
  required<flow_rate> flow;      ///< measured with a bucket and a watch
  std::vector<fill_stop> stops;  ///< heights over the floor, rising
};

/// One stage of a fill: from the stop before it to this one.
struct fill_stage {
  std::string label;
  length level;
  volume added;      ///< in this stage
  volume in_vessel;  ///< at its end
  duration reached;  ///< from the start, holds before it included
  duration resumed;  ///< after the hold
};

/// When a hose reaches each stop of a staged fill.
///
///   t = V(level) / Q, and the holds before it
///
/// @param fill vessel; flow Q [m^3/s] > 0; stops with rising levels [m] > 0 within the vessel and holds [s] >= 0
/// @return     the stages, one a stop
/// @throws     invalid_input (names the stop by its label)
/// @accuracy   exact for the shape; a hose keeps its flow to a few per cent
/// @source     continuity
[[nodiscard]] inline std::vector<fill_stage> fill_stages(const staged_fill& fill) {
  constexpr std::string_view here = "tankwright::plumbing::fill_stages";
  static constexpr limits stop_level_limits{"level", "m", positive};
  static constexpr limits stop_hold_limits{"hold", "s", not_negative};
  core::check(here, fill_flow_limits, fill.flow->value());
  return std::visit(
      [&](const auto& v) {
        const double top = detail::top_of(here, v);
        std::vector<fill_stage> stages;
        double level = 0.0, water = 0.0, clock = 0.0;
        for (const fill_stop& stop : fill.stops) {
          core::check_element(here, stop.label, stop_level_limits, stop.level->value());
          core::check_element(here, stop.label, stop_hold_limits, stop.hold.value());
          if (stop.level->value() <= level) core::refuse_element(here, stop.label, "is not above the stop before it");
          if (stop.level->value() > top) core::refuse_element(here, stop.label, "stands above the vessel");
          level = stop.level->value();
          const double now = detail::volume_to(v, level);
          clock += (now - water) / fill.flow->value();
          stages.push_back({stop.label, stop.level, volume::from_value(now - water), volume::from_value(now),
                            duration::from_value(clock), duration::from_value(clock + stop.hold.value())});
          clock += stop.hold.value();
          water = now;
        }
        return stages;
      },
      fill.vessel);
}

}  // namespace tankwright::plumbing
