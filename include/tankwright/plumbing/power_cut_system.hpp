// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is a system before its power is cut? Display, overflow, returns and the pipes they share, sump, and what works
/// when the power fails.
#pragma once

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include <tankwright/core/thin_types.hpp>
#include <tankwright/plumbing/friction.hpp>
#include <tankwright/plumbing/pipe_run.hpp>
#include <tankwright/plumbing/sump.hpp>

namespace tankwright::plumbing {

/// The box behind the overflow edge.
struct overflow_box {
  required<area> horizontal_area;
  required<length> falls_by;  ///< from its running level down to where its drain stops
};

/// The display as its overflow sees it.
struct display_tank {
  std::string label = "display";
  required<area> surface;  ///< free water surface at the overflow edge
  overflow_edge edge;
  std::optional<overflow_box> box{};
  std::vector<pipe_run> drains{};  ///< drain pipes that run full; a drain that gurgles holds next to nothing
};

/// A return line. Its pipe empties too.
struct return_line {
  std::string label;
  required<flow_rate> flow;                  ///< while the pump runs
  required<length> outlet_below_edge;        ///< top of the outlet's opening below the overflow edge; negative above it
  std::optional<length> break_below_edge{};  ///< a siphon break hole; counts only where it lies above the outlet
  /// Its own pipe, from the outlet to the sump or to where it meets a shared one. None leaves its contents out, and is
  /// refused where its opening is under water: how fast it siphons back is then not known.
  std::optional<pipe_run> pipe{};
  bool check_valve = false;  ///< one in this pipe
};

/// A pipe that the water of several returns passes: the riser before they part.
struct shared_pipe {
  pipe_run pipe;
  std::vector<std::string> returns{};  ///< labels of those that pass it; none stands for all
  bool check_valve = false;            ///< one in this pipe, or at its pump
  int side_by_side = 1;                ///< [1] this many such pipes
};

/// What becomes of the check valves that there are.
enum class check_valve_state {
  open,  ///< stuck open: everything runs back
  leak,  ///< shut but for `check_valve_leak` of the bore
  hold,  ///< shut: nothing behind them runs back
};

/// What to know about a system before its power is cut.
struct power_cut_input {
  display_tank display;
  tankwright::plumbing::sump sump;
  std::vector<return_line> returns;
  required<length> edge_above_floor;  ///< overflow edge of the display above the floor of the sump
  std::vector<shared_pipe> shared_pipes{};
  /// Sea water of 25 degC, unless given; it decides how fast pipes siphon, within a few per cent.
  water::liquid water{.density = kilograms_per_cubic_metre(1023.3), .viscosity = millipascal_seconds(0.96)};
  std::size_t drains_into = 0;  ///< [1] chamber that the drains end in, counted from 0

  bool breaks_blocked = false;  ///< no siphon break works
  check_valve_state check_valves = check_valve_state::open;
  proportion check_valve_leak = percent(2.0);  ///< of the bore; common practice, no source
  volume topped_up = litres(0.0);              ///< what a top-off that stuck open has put in too much

  proportion area_uncertainty = percent(3.0);   ///< of every horizontal area
  length level_uncertainty = millimetres(3.0);  ///< of the running level, the box's fall and the outlets' depth
  proportion flow_uncertainty = percent(0.0);   ///< of what the returns bring together
  length reserve = metres(0.0);                 ///< height to keep free below the rim, for the two limits
};

inline constexpr caution power_cut_caution{
    "Test it with real water before trusting a number: fill, run, switch off at the plug, watch the sump to the end, "
    "with the check valves held open. Electricity near water needs residual-current protection and a licensed "
    "electrician; local codes come first."};

inline constexpr limits surface_limits{"surface", "m2", {1e-4, 1e4}};
inline constexpr limits box_area_limits{"horizontal area of the box", "m2", {1e-6, 1e4}};
inline constexpr limits box_fall_limits{"falls_by of the box", "m", {0.0, 20.0}};
inline constexpr limits return_flow_limits{"flow", "m3/s", {0.0, 10.0}};
inline constexpr limits outlet_depth_limits{"outlet_below_edge", "m", {-20.0, 20.0}};
inline constexpr limits break_depth_limits{"break_below_edge", "m", {-20.0, 20.0}};
inline constexpr limits edge_above_floor_limits{"edge_above_floor", "m", {0.0, 50.0, edge::open}};
inline constexpr limits area_uncertainty_limits{"area_uncertainty", "", {0.0, 0.9}};
inline constexpr limits flow_uncertainty_limits{"flow_uncertainty", "", {0.0, 0.9}};
inline constexpr limits level_uncertainty_limits{"level_uncertainty", "m", {0.0, 1.0}};
inline constexpr limits reserve_limits{"reserve", "m", {0.0, 20.0}};
inline constexpr limits check_valve_leak_limits{"check_valve_leak", "", above_zero_to_one};
inline constexpr limits topped_up_limits{"topped_up", "m3", {0.0, 1e5}};
inline constexpr limits side_by_side_limits{"side_by_side", "", {1.0, 100.0}};
inline constexpr limits falling_pipe_length_limits{"length", "m", {0.0, 1e3}};
inline constexpr limits falling_pipe_bore_limits{"bore", "m", {1e-4, 10.0}};

namespace detail {

/// Whether the water of a return passes a shared pipe.
[[nodiscard]] inline bool is_shared_by(const shared_pipe& shared, const std::string& label) noexcept {
  const auto& names = shared.returns;
  return names.empty() || std::find(names.begin(), names.end(), label) != names.end();
}

[[nodiscard]] inline pipe_run labelled(pipe_run pipe, const std::string& label) {
  pipe.label = label;
  return pipe;
}

inline void check_pipe(std::string_view here, const pipe_run& pipe, const std::string& label) {
  (void)numbers_of(here, pipe.label.empty() ? labelled(pipe, label) : pipe);
  core::check_element(here, label, falling_pipe_bore_limits, pipe.bore->diameter().value());
  core::check_element(here, label, falling_pipe_length_limits, pipe.length.value());
}

inline void check_power_cut(std::string_view here, const power_cut_input& in) {
  const display_tank& d = in.display;
  core::check_element(here, d.label, surface_limits, d.surface->value());
  std::visit([&](const auto& e) { check_edge(here, e); }, d.edge);
  if (d.box) {
    core::check_element(here, d.label, box_area_limits, d.box->horizontal_area->value());
    core::check_element(here, d.label, box_fall_limits, d.box->falls_by->value());
  }
  for (const pipe_run& pipe : d.drains) {
    check_pipe(here, pipe, pipe.label);
  }
  if (in.returns.empty()) core::refuse_element(here, d.label, "has no return lines: nothing runs over its edge");
  for (const return_line& r : in.returns) {
    core::check_element(here, r.label, return_flow_limits, r.flow->value());
    core::check_element(here, r.label, outlet_depth_limits, r.outlet_below_edge->value());
    if (r.break_below_edge) core::check_element(here, r.label, break_depth_limits, r.break_below_edge->value());
    if (r.pipe) check_pipe(here, *r.pipe, r.label);
  }
  for (const shared_pipe& s : in.shared_pipes) {
    check_pipe(here, s.pipe, s.pipe.label);
    core::check_element(here, s.pipe.label, side_by_side_limits, s.side_by_side);
    for (const std::string& label : s.returns) {
      bool known = false;
      for (const return_line& r : in.returns) known = known || r.label == label;
      if (!known) {
        core::refuse_element(here, s.pipe.label, "is shared by '" + label + "', which is no return of this system");
      }
    }
  }
  check_sump(here, in.sump);
  check_chamber_number(here, "drains_into", in.drains_into, in.sump.chambers.size());
  core::check(here, edge_above_floor_limits, in.edge_above_floor->value());
  core::check(here, check_valve_leak_limits, in.check_valve_leak.value());
  core::check(here, topped_up_limits, in.topped_up.value());
  core::check(here, area_uncertainty_limits, in.area_uncertainty.value());
  core::check(here, level_uncertainty_limits, in.level_uncertainty.value());
  core::check(here, flow_uncertainty_limits, in.flow_uncertainty.value());
  core::check(here, reserve_limits, in.reserve.value());
}

[[nodiscard]] inline double total_flow(const std::vector<return_line>& returns) noexcept {
  double sum = 0.0;
  for (const return_line& r : returns) sum += r.flow->value();
  return sum;
}

[[nodiscard]] inline double contents(const pipe_run& pipe) noexcept {
  return circle(pipe.bore->diameter().value()) * pipe.length.value();
}

/// Depth below the edge at which a return draws air.
[[nodiscard]] inline double opening_of(const return_line& r, bool breaks_blocked) noexcept {
  const double depth = r.outlet_below_edge->value();
  if (breaks_blocked || !r.break_below_edge) return depth;
  return std::fmin(depth, r.break_below_edge->value());
}

/// How a power cut differs from the plan: factors of its areas and flow, heights added to its levels.
struct power_cut_moves {
  double display_area = 1.0;  // and that of the box
  double sump_area = 1.0;
  double flow = 1.0;
  double running_level = 0.0;
  double outlets = 0.0;  // deeper
  double box_falls = 0.0;
  band_side side = band_side::central;  // of the weir formulas
};

/// The credible ends: `sign` is -1 for the mild end, 0 for the middle, 1 for the worst. All move together.
[[nodiscard]] inline power_cut_moves moved_to_end(const power_cut_input& in, int sign) noexcept {
  const double area = sign * in.area_uncertainty.value(), level = sign * in.level_uncertainty.value();
  return {.display_area = 1.0 + area,
          .sump_area = 1.0 - area,
          .flow = 1.0 + sign * in.flow_uncertainty.value(),
          .running_level = level,
          .outlets = level,
          .box_falls = level,
          .side = sign > 0   ? band_side::least
                  : sign < 0 ? band_side::most
                             : band_side::central};
}

}  // namespace detail
}  // namespace tankwright::plumbing
