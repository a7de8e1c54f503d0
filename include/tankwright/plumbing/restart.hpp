// SPDX-License-Identifier: BSL-1.0
/// @file
/// When the power comes back, does the pump run dry? The lowest level of its chamber while the display refills, and how
/// much water it needs over its inlet.
#pragma once

#include <algorithm>
#include <cmath>
#include <optional>

#include <tankwright/plumbing/power_cut.hpp>

namespace tankwright::plumbing {

inline constexpr citation hydraulic_institute_9_8{"Hydraulic Institute", 1998, "ANSI/HI 9.8: Pump intake design",
                                                  "section 9.8.7: S = D + 0.574 Q/D^1.5 (in, US gpm)",
                                                  standing::secondary};
inline constexpr citation gordon_1970{"Gordon J.L.", 1970, "Vortices at intakes", "Water Power 22(4):137-138",
                                      standing::from_memory};

/// The opening through which the pump draws.
struct pump_inlet {
  required<length> above_floor;  ///< highest point of the opening above the floor of the sump
  required<pipe_bore> bore;      ///< of the opening
};

inline constexpr limits inlet_height_limits{"above_floor of the inlet", "m", {0.0, 20.0}};
inline constexpr limits inlet_bore_limits{"bore of the inlet", "m", {1e-4, 10.0}};
inline constexpr limits inlet_flow_limits{"flow", "m3/s", {0.0, 10.0}};
inline constexpr limits box_surge_limits{"surge", "m", {0.0, 20.0}};
inline constexpr limits priming_limits{"priming", "s", {0.0, 86400.0}};
inline constexpr limits taken_limits{"taken", "m3/s", {0.0, 1e3}};

/// Water that an inlet needs above it so that no vortex draws air.
///
///   S = D (1 + 2.3 Fr), Fr = V/sqrt(g D)   (ANSI/HI 9.8, the high value)
///   S = 0.54 V sqrt(D), 0.72 V sqrt(D)     (Gordon, SI: straight and sideways approach)
///
/// @param bore D [m] > 0 of the opening
/// @param flow Q [m^3/s] >= 0
/// @return     depth [m] over the opening: Gordon's two as low and central value, ANSI/HI as high
/// @throws     invalid_input
/// @accuracy   the band; made for large intakes, and a strainer or a grating over the inlet needs less
/// @source     ANSI/HI 9.8-1998; Gordon 1970
[[nodiscard]] inline estimate<length> vortex_submergence(pipe_bore bore, flow_rate flow) {
  constexpr std::string_view here = "tankwright::plumbing::vortex_submergence";
  const double d = bore.diameter().value();
  core::check(here, inlet_bore_limits, d);
  core::check(here, inlet_flow_limits, flow.value());
  const double v = flow.value() / detail::circle(d), froude = v / std::sqrt(standard_gravity.value() * d);
  return {length::from_value(0.54 * v * std::sqrt(d)), length::from_value(0.72 * v * std::sqrt(d)),
          length::from_value(d * (1.0 + 2.3 * froude)), "different rules for large intakes"};
}

/// A restart after a power cut.
struct restart_input {
  power_cut_input system;
  pump_inlet inlet;
  /// How long the drains hold the flow back until they find their siphon; common practice, no source.
  duration priming = seconds(30.0);
  /// What they take meanwhile (`priming.hpp`); nothing, unless given.
  estimate<flow_rate> taken{flow_rate{}, flow_rate{}, flow_rate{}, "not given"};
  /// Where it was seen: how far the box, or the display where there is none, rises above its running level meanwhile.
  /// It then counts instead of `priming`. Zero for drains that take the flow from the start.
  std::optional<length> surge{};
};

/// What happens when the pump starts again.
struct restart_answer {
  estimate<length> lowest_level;  ///< of the pump chamber while the display refills, above the floor
  estimate<length> submergence;   ///< needed over the inlet
  estimate<length> margin;        ///< lowest level less inlet and submergence; negative draws air
  volume held_up;                 ///< by the drains, above what stands there while the pump runs
  bool runs_dry;                  ///< in the worst case the chamber does not hold what the surge and the floor take
  duration until_it_runs_over;    ///< until water comes over the overflow edge again
  duration until_steady;          ///< at the earliest, until all levels are the running ones
  tankwright::caution caution;
};

inline constexpr caution restart_caution{
    "Watch the first restart with a hand on the switch: a pump that draws air or runs dry can be ruined, and a float "
    "switch is no substitute. Electricity near water needs residual-current protection and a licensed electrician."};

/// A restart after a power cut that is worked out already.
///
///   as `restart`, without its power cut once more
///
/// @param cut  what `power_cut(task.system)` answered: levels, what came down, water over the rim
/// @param task as for `restart`
/// @return     lowest level, submergence, margin [m] with their bands, times [s], a caution
/// @throws     invalid_input (names the element by its label; also when the answer is that of another sump)
/// @accuracy   the bands: all areas and levels at one end together, and the rules for the submergence
/// @source     geometry; ANSI/HI 9.8-1998; Gordon 1970
[[nodiscard]] inline restart_answer restart_after(const power_cut_answer& cut, const restart_input& task) {
  constexpr std::string_view here = "tankwright::plumbing::restart";
  const power_cut_input& in = task.system;
  detail::check_power_cut(here, in);
  core::check_same_size(here, cut.running.size(), in.sump.chambers.size());
  core::check(here, inlet_height_limits, task.inlet.above_floor->value());
  core::check(here, priming_limits, task.priming.value());
  for (const flow_rate& q : {task.taken.low, task.taken.central, task.taken.high}) {
    core::check(here, taken_limits, q.value());
  }
  if (task.surge) core::check(here, box_surge_limits, task.surge->value());
  const double flow = detail::total_flow(in.returns);
  if (flow == 0.0) core::refuse_element(here, in.display.label, "has returns without flow: nothing refills it");
  const auto submergence = vortex_submergence(task.inlet.bore, flow_rate::from_value(flow));

  const detail::sump_shape shape{in.sump};
  const std::size_t last = shape.size() - 1, pool = shape.first_joined(last);
  const double surface = in.display.box ? in.display.box->horizontal_area->value() : in.display.surface->value();
  const auto held_up = [&](int sign) {
    if (task.surge) return surface * (1.0 + sign * in.area_uncertainty.value()) * task.surge->value();
    const flow_rate taken = sign > 0 ? task.taken.low : sign < 0 ? task.taken.high : task.taken.central;
    const double comes = flow * (1.0 + sign * in.flow_uncertainty.value());
    return std::fmax(0.0, comes - taken.value()) * task.priming.value();
  };
  // `sign` as in the power cut: 1 is the worst, here with the running level at its low end.
  const auto lowest = [&](int sign, double on_the_floor) {
    const double u = sign * in.area_uncertainty.value();
    const double level = in.sump.running_level->value() - sign * in.level_uncertainty.value();
    const double lost = held_up(sign) + on_the_floor;
    // The chambers joined to the last one stand above it by the heads of the gaps, and fall with it.
    const auto held = [&](double z) {
      double sum = 0.0;
      for (std::size_t i = pool; i <= last; ++i) {
        const length above = cut.running[i].level.central - cut.running[last].level.central;
        sum += (1.0 - u) * shape.below(i, z + above.value());
      }
      return sum;
    };
    if (level <= 0.0 || held(level) - lost <= held(0.0)) return 0.0;
    return numerics::bracketed_root(
        here, "lowest level", [&](double z) { return held(z) - (held(level) - lost); }, 0.0, level);
  };
  const double worst = lowest(1, cut.on_the_floor.high.value());
  const double central = lowest(0, cut.on_the_floor.central.value());
  const double mild = lowest(-1, cut.on_the_floor.low.value());
  constexpr std::string_view why = "areas and levels, all at one end of their bands together";
  const auto margin = [&](double level, length depth) {
    return (length::from_value(level) - task.inlet.above_floor.get() - depth).value();
  };
  const double back = (cut.falls.back_siphon.central + cut.falls.return_pipes).value();
  return {.lowest_level = detail::banded<length>(worst, central, mild, why),
          .submergence = submergence,
          .margin = detail::banded<length>(margin(worst, submergence.high), margin(central, submergence.central),
                                           margin(mild, submergence.low), why),
          .held_up = volume::from_value(held_up(0)),
          .runs_dry = worst <= 0.0,
          .until_it_runs_over = duration::from_value(back / flow),
          .until_steady = duration::from_value((cut.falls.total.central.value() + held_up(0)) / flow),
          .caution = restart_caution};
}

/// Lowest level of the pump chamber when the pump starts and the display refills, and its margin against drawing air.
///
///   While the display, the box and the chambers upstream refill, each of them only gains; the pump chamber falls to
///   its running level, less what the drains hold up and what the power cut put on the floor: V_pump(lowest) =
///   V_pump(running) - (flow - taken) x priming (or surge x area) - water over the rim
///
/// @param task system as for `power_cut`; inlet height [m] >= 0 and bore [m] > 0; priming [s] >= 0, 30 s unless given,
///             and what the drains take meanwhile [m^3/s] >= 0, or the surge [m] >= 0 as it was seen
/// @return     lowest level, submergence, margin [m] with their bands, times [s], a caution
/// @throws     invalid_input (names the element by its label)
/// @accuracy   the bands: all areas and levels at one end together, and the rules for the submergence
/// @source     geometry; ANSI/HI 9.8-1998; Gordon 1970
[[nodiscard]] inline restart_answer restart(const restart_input& task) {
  return restart_after(power_cut(task.system), task);
}

}  // namespace tankwright::plumbing
