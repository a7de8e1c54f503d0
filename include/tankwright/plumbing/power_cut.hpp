// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the floor stay dry when the pump stops? What falls, how far the sump rises, what is left below its rim.
///
/// What falls: the water above the overflow edge, the box behind it, the pipes that stand full, and what runs back
/// through the returns until the last opening that is under water draws air. Check valves and siphon breaks are extras:
/// a check valve is taken to fail always, and the margin with blocked siphon breaks is given beside the others.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/plumbing/pipe_run.hpp>
#include <tankwright/plumbing/sump.hpp>

namespace tankwright::plumbing {

/// The box behind the overflow edge.
struct overflow_box {
  required<area> plan;
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
  std::optional<pipe_run> pipe{};            ///< from the water in the sump to the outlet; none leaves its contents out
};

/// What to know about a system before its power is cut.
struct power_cut_input {
  display_tank display;
  tankwright::plumbing::sump sump;
  std::vector<return_line> returns;
  std::size_t drains_into = 0;                  ///< chamber that the drains end in, counted from 0
  proportion area_uncertainty = percent(3.0);   ///< of every plan area
  length level_uncertainty = millimetres(3.0);  ///< of the running level, the box's fall and the outlets' depth
  proportion flow_uncertainty = percent(0.0);   ///< of what the returns bring together
  length reserve = metres(0.0);                 ///< height to keep free below the rim, for the last two answers
};

/// The volumes that come down.
struct falling_water {
  estimate<volume> over_edge;    ///< display, down to its overflow edge
  estimate<volume> back_siphon;  ///< display, from there down to the deepest opening
  estimate<volume> box;
  volume drain_pipes;
  volume return_pipes;
  estimate<volume> total;
};

/// What happens when the pump stops.
struct power_cut_answer {
  estimate<length> head_over_edge;  ///< while the pump runs
  falling_water falls;
  std::vector<chamber_level> running;  ///< levels before, in each chamber
  std::vector<chamber_level> settled;  ///< levels after
  estimate<length> margin;  ///< from the highest level, before or after, up to the rim; negative is water on the floor
  estimate<volume> spare;   ///< what the sump would still hold; negative is water on the floor
  length margin_if_breaks_block;                     ///< the worst credible margin when no siphon break works
  std::optional<length> highest_safe_running_level;  ///< of the last chamber; none: no level is safe
  std::optional<length> deepest_safe_outlet;  ///< below the overflow edge; none: no outlet is safe, at any height
  bool extrapolated;                          ///< some weir head is outside its published range
  tankwright::caution caution;
};

inline constexpr caution power_cut_caution{
    "Test it with real water before trusting a number: fill, run, switch off at the plug, watch the sump to the end, "
    "with the check valves held open. Electricity near water needs residual-current protection and a licensed "
    "electrician; local codes come first."};

namespace detail {

inline constexpr limits surface_limits{"surface", "m2", positive};
inline constexpr limits box_plan_limits{"plan area of the box", "m2", positive};
inline constexpr limits box_fall_limits{"falls_by of the box", "m", not_negative};
inline constexpr limits return_flow_limits{"flow", "m3/s", not_negative};
inline constexpr limits outlet_depth_limits{"outlet_below_edge", "m", any_finite};
inline constexpr limits break_depth_limits{"break_below_edge", "m", any_finite};
inline constexpr limits area_uncertainty_limits{"area_uncertainty", "", zero_to_below_one};
inline constexpr limits flow_uncertainty_limits{"flow_uncertainty", "", zero_to_below_one};
inline constexpr limits level_uncertainty_limits{"level_uncertainty", "m", not_negative};
inline constexpr limits reserve_limits{"reserve", "m", not_negative};

[[nodiscard]] inline pipe_run labelled(pipe_run pipe, const std::string& label) {
  pipe.label = label;
  return pipe;
}

inline void check_power_cut(std::string_view here, const power_cut_input& in) {
  const display_tank& d = in.display;
  core::check_element(here, d.label, surface_limits, d.surface->value());
  std::visit([&](const auto& e) { check_edge(here, e); }, d.edge);
  if (d.box) {
    core::check_element(here, d.label, box_plan_limits, d.box->plan->value());
    core::check_element(here, d.label, box_fall_limits, d.box->falls_by->value());
  }
  for (const pipe_run& pipe : d.drains) (void)numbers_of(here, pipe);
  if (in.returns.empty()) core::refuse_element(here, d.label, "has no return lines: nothing runs over its edge");
  for (const return_line& r : in.returns) {
    core::check_element(here, r.label, return_flow_limits, r.flow->value());
    core::check_element(here, r.label, outlet_depth_limits, r.outlet_below_edge->value());
    if (r.break_below_edge) core::check_element(here, r.label, break_depth_limits, r.break_below_edge->value());
    if (r.pipe) (void)numbers_of(here, r.pipe->label.empty() ? labelled(*r.pipe, r.label) : *r.pipe);
  }
  check_sump(here, in.sump);
  if (in.drains_into >= in.sump.chambers.size()) {
    core::fail<invalid_input>(here, "drains_into", static_cast<double>(in.drains_into), "",
                        "is not a chamber; they count from 0");
  }
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

/// Depth below the edge at which the last return draws air.
[[nodiscard]] inline double deepest_opening(const std::vector<return_line>& returns, bool breaks_work) noexcept {
  double deepest = -core::largest;
  for (const return_line& r : returns) {
    double depth = r.outlet_below_edge->value();
    if (breaks_work && r.break_below_edge && r.break_below_edge->value() < depth) depth = r.break_below_edge->value();
    if (depth > deepest) deepest = depth;
  }
  return deepest;
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
          .side = sign > 0 ? band_side::least : sign < 0 ? band_side::most : band_side::central};
}

/// One case of a power cut.
struct power_cut_case {
  std::span<double> running, settled;  // one level a chamber
  double head = 0.0;
  double over_edge = 0.0, back_siphon = 0.0, box = 0.0;
  double sump_scale = 1.0, display_area = 0.0;
  double highest = 0.0;  // level, before or after
  double spare = 0.0;
  bool extrapolated = false;
};

/// The parts that are the same in every case.
struct power_cut_fixed {
  double flow;
  double drain_pipes, return_pipes;
  double depth;  // of the deepest opening
};

[[nodiscard]] inline double contents(const pipe_run& pipe) noexcept {
  return circle(pipe.bore->diameter().value()) * pipe.length.value();
}

[[nodiscard]] inline power_cut_fixed fixed_parts(const power_cut_input& in, bool breaks_work) {
  power_cut_fixed f{total_flow(in.returns), 0.0, 0.0, deepest_opening(in.returns, breaks_work)};
  for (const pipe_run& pipe : in.display.drains) f.drain_pipes += contents(pipe);
  for (const return_line& r : in.returns) f.return_pipes += r.pipe ? contents(*r.pipe) : 0.0;
  return f;
}

/// Levels and head while the pump runs.
inline void run_moved(std::string_view here, const power_cut_input& in, const power_cut_fixed& fixed,
                      const power_cut_moves& by, power_cut_case& c) {
  const double flow = fixed.flow * by.flow;
  c.extrapolated = run(here, in.sump, flow, by.side, by.running_level, c.running);
  std::visit(
      [&](const auto& e) {
        c.head = edge_head(here, e, flow, by.side, guess_head(e, flow));
        c.extrapolated = c.extrapolated || outside_published(e, c.head);
      },
      in.display.edge);
}

/// What comes down from there, and where it settles; `water` is scratch, one number a chamber.
inline void stop_moved(std::string_view here, const power_cut_input& in, const sump_shape& shape,
                       const power_cut_fixed& fixed, const power_cut_moves& by, std::span<double> water,
                       power_cut_case& c) {
  const std::size_t n = shape.size();
  c.sump_scale = by.sump_area;
  c.display_area = in.display.surface->value() * by.display_area;
  c.back_siphon = c.display_area * std::fmax(0.0, fixed.depth + by.outlets);
  c.box = 0.0;
  if (in.display.box) {
    const double falls = std::fmax(0.0, in.display.box->falls_by->value() + by.box_falls);
    c.box = in.display.box->plan->value() * by.display_area * falls;
  }
  c.over_edge = c.display_area * c.head;
  double before = 0.0, highest = 0.0;
  for (std::size_t i = 0; i < n; ++i) {
    water[i] = c.sump_scale * shape.below(i, c.running[i]);
    before += water[i];
    highest = std::fmax(highest, c.running[i]);
  }
  const double first = c.over_edge + c.box + fixed.drain_pipes, last = c.back_siphon + fixed.return_pipes;
  water[in.drains_into] += first;
  water[n - 1] += last;
  c.spare = c.sump_scale * shape.below_all(in.sump.rim->value()) - before - first - last;
  c.highest = std::fmax(highest, settle(here, shape, c.sump_scale, water, c.settled));
}

/// The power cut of the plan, moved.
inline void work_out(std::string_view here, const power_cut_input& in, const sump_shape& shape,
                     const power_cut_fixed& fixed, const power_cut_moves& by, std::span<double> water,
                     power_cut_case& c) {
  run_moved(here, in, fixed, by, c);
  stop_moved(here, in, shape, fixed, by, water, c);
}

}  // namespace detail

/// What a power cut brings down, how far the sump rises and what is left below its rim.
///
///   falls = A (h over the edge + depth of the deepest opening) + box + pipes, poured into the running sump;
///   margin = rim - highest level;  the band: all areas, levels, the flow and the weir
///   heads at their mild or worst end together
///
/// The highest safe running level and the deepest safe outlet are those at which the worst case just keeps the reserve.
///
/// @param in display, sump and returns: lengths [m], areas [m^2], flows [m^3/s]; see the fields
/// @return   volumes, levels, margins, the two limits, and a caution
/// @throws   invalid_input (names the element by its label: chamber, baffle, return, pipe)
/// @accuracy volume conserved to 1e-12; the band is that of the areas, levels, flow and weir formulas as given, no
///           more: it knows nothing of a leaking siphon break, a blocked drain or a sump that is not level
/// @source   geometry; Rehbock 1929 and the formulas of `weirs.hpp` for the heads
[[nodiscard]] inline power_cut_answer power_cut(const power_cut_input& in) {
  constexpr std::string_view here = "tankwright::plumbing::power_cut";
  detail::check_power_cut(here, in);
  const detail::sump_shape shape{in.sump};
  const detail::power_cut_fixed fixed = detail::fixed_parts(in, true);
  const std::size_t n = shape.size();
  std::vector<double> numbers(8 * n);  // seven rows of levels, one of volumes, one number a chamber
  const auto row = [&](std::size_t k) { return std::span<double>(numbers.data() + k * n, n); };
  const std::span<double> water = row(6), levels = row(7);
  detail::power_cut_case mild{.running = row(0), .settled = row(1)};
  detail::power_cut_case middle{.running = row(2), .settled = row(3)};
  detail::power_cut_case worst{.running = row(4), .settled = row(5)};
  const detail::power_cut_moves at_worst = detail::moved_to_end(in, 1);
  detail::work_out(here, in, shape, fixed, {}, water, middle);
  for (std::size_t i = 0; i < n; ++i) detail::check_below_rim(here, in.sump, i, middle.running[i]);
  detail::work_out(here, in, shape, fixed, detail::moved_to_end(in, -1), water, mild);
  detail::work_out(here, in, shape, fixed, at_worst, water, worst);

  constexpr std::string_view why = "plan areas, levels, flow and weir heads, all at one end of their bands together";
  const auto lengths = [&](double low, double central, double high) {
    return estimate<length>{length::from_value(low), length::from_value(central), length::from_value(high), why};
  };
  const auto volumes = [&](double low, double central, double high) {
    return estimate<volume>{volume::from_value(low), volume::from_value(central), volume::from_value(high), why};
  };
  const auto falling = [&](double detail::power_cut_case::*part) {
    return volumes(mild.*part, middle.*part, worst.*part);
  };
  const auto total = [&](const detail::power_cut_case& c) {
    return c.over_edge + c.back_siphon + c.box + fixed.drain_pipes + fixed.return_pipes;
  };
  const double rim = in.sump.rim->value(), shift = in.level_uncertainty.value();

  power_cut_answer answer{
      .head_over_edge = lengths(mild.head, middle.head, worst.head),
      .falls = {falling(&detail::power_cut_case::over_edge), falling(&detail::power_cut_case::back_siphon),
                falling(&detail::power_cut_case::box), volume::from_value(fixed.drain_pipes),
                volume::from_value(fixed.return_pipes), volumes(total(mild), total(middle), total(worst))},
      .running = {},
      .settled = {},
      .margin = lengths(rim - worst.highest, rim - middle.highest, rim - mild.highest),
      .spare = volumes(worst.spare, middle.spare, mild.spare),
      .margin_if_breaks_block = length::from_value(rim - worst.highest),
      .highest_safe_running_level = {},
      .deepest_safe_outlet = {},
      .extrapolated = middle.extrapolated,
      .caution = power_cut_caution};
  answer.running.reserve(n);
  answer.settled.reserve(n);
  for (std::size_t i = 0; i < n; ++i) {
    answer.running.push_back(
        {detail::chamber_name(in.sump, i), lengths(mild.running[i], middle.running[i], worst.running[i])});
    answer.settled.push_back(
        {detail::chamber_name(in.sump, i), lengths(mild.settled[i], middle.settled[i], worst.settled[i])});
  }
  const double blocked = detail::deepest_opening(in.returns, false);
  if (blocked > fixed.depth) {
    detail::power_cut_fixed without = fixed;
    without.depth = blocked;
    detail::power_cut_case c{.running = levels, .settled = levels};  // its levels are not asked for
    detail::work_out(here, in, shape, without, at_worst, water, c);
    answer.margin_if_breaks_block = length::from_value(rim - c.highest);
  }

  // Both limits: in the worst case the water just fills the sump to the rim less the reserve, and no chamber stands
  // higher than that while the pump runs.
  const double target = rim - in.reserve.value();
  const double room = worst.sump_scale * shape.below_all(target) - total(worst);
  const auto height_left = [&](double running) {
    const double raised = shift + running - in.sump.running_level->value();
    detail::run(here, in.sump, fixed.flow * at_worst.flow, at_worst.side, raised, levels);
    double held = 0.0, free = target;
    for (std::size_t i = 0; i < n; ++i) {
      held += worst.sump_scale * shape.below(i, levels[i]);
      free = std::fmin(free, target - levels[i]);
    }
    return std::fmin(free, (room - held) / worst.display_area);
  };
  const std::size_t pool = shape.first_joined(n - 1);
  const double top = pool > 0 ? in.sump.baffles[pool - 1].crest->value() : rim;
  if (height_left(top) >= 0.0) {
    answer.highest_safe_running_level = length::from_value(top);
  } else if (height_left(0.0) >= 0.0) {
    answer.highest_safe_running_level =
        length::from_value(numerics::bracketed_root(here, "highest safe running level", height_left, 0.0, top));
  }
  // As things stand, the spare volume below the reserve may run back beside what runs back already.
  const double for_siphon =
      worst.spare - worst.sump_scale * (shape.below_all(rim) - shape.below_all(target)) + worst.back_siphon;
  bool below = true;
  for (const double level : worst.running) below = below && level <= target;
  if (below && for_siphon >= 0.0) {
    answer.deepest_safe_outlet = length::from_value(for_siphon / worst.display_area - shift);
  }
  return answer;
}

}  // namespace tankwright::plumbing
