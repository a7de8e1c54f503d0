// SPDX-License-Identifier: BSL-1.0
/// @file
/// When the power comes back, does the pump run dry? The lowest level of its chamber while the display refills, and how
/// much water it needs over its inlet.
#pragma once

#include <algorithm>
#include <cmath>

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

inline constexpr limits inlet_height_limits{"above_floor of the inlet", "m", not_negative};
inline constexpr limits inlet_bore_limits{"bore of the inlet", "m", positive};
inline constexpr limits inlet_flow_limits{"flow", "m3/s", not_negative};
inline constexpr limits box_surge_limits{"surge", "m", not_negative};

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
  /// How far the box, or the display where there is none, rises above its running level before the drains take the
  /// whole flow: drains that must find their siphon hold water back.
  length surge = metres(0.0);
};

/// What happens when the pump starts again.
struct restart_answer {
  estimate<length> lowest_level;  ///< of the pump chamber while the display refills, above the floor
  estimate<length> submergence;   ///< needed over the inlet
  estimate<length> margin;        ///< lowest level less inlet and submergence; negative draws air
  bool runs_dry;                  ///< in the worst case the chamber does not hold what the surge and the floor take
  duration until_it_runs_over;    ///< until water comes over the overflow edge again
  duration until_steady;          ///< at the earliest, until all levels are the running ones
  tankwright::caution caution;
};

inline constexpr caution restart_caution{
    "Watch the first restart with a hand on the switch: a pump that draws air or runs dry can be ruined, and a float "
    "switch is no substitute. Electricity near water needs residual-current protection and a licensed electrician."};

namespace detail {

/// The restart after a power cut that is worked out already.
[[nodiscard]] inline restart_answer restart_after(const power_cut_answer& cut, const power_cut_input& in,
                                                  const pump_inlet& pump, length surge_height) {
  constexpr std::string_view here = "tankwright::plumbing::restart";
  core::check(here, inlet_height_limits, pump.above_floor->value());
  core::check(here, box_surge_limits, surge_height.value());
  const double flow = total_flow(in.returns);
  if (flow == 0.0) core::refuse_element(here, in.display.label, "has returns without flow: nothing refills it");
  const auto submergence = vortex_submergence(pump.bore, flow_rate::from_value(flow));

  const sump_shape shape{in.sump};
  const std::size_t last = shape.size() - 1, pool = shape.first_joined(last);
  const double surface = in.display.box ? in.display.box->plan->value() : in.display.surface->value();
  // `sign` as in the power cut: 1 is the worst, here with the running level at its low end.
  const auto lowest = [&](int sign, double on_the_floor) {
    const double u = sign * in.area_uncertainty.value();
    const double level = in.sump.running_level->value() - sign * in.level_uncertainty.value();
    const double lost = surface * (1.0 + u) * surge_height.value() + std::fmax(0.0, on_the_floor);
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
    if (lost == 0.0) return level;
    return numerics::bracketed_root(
        here, "lowest level", [&](double z) { return held(z) - (held(level) - lost); }, 0.0, level);
  };
  const double worst = lowest(1, -cut.spare.low.value());
  const double central = lowest(0, -cut.spare.central.value());
  const double mild = lowest(-1, -cut.spare.high.value());
  constexpr std::string_view why = "plan areas and levels, all at one end of their bands together";
  const length inlet = pump.above_floor;
  const auto margin = [&](double level, length depth) { return length::from_value(level) - inlet - depth; };
  const double back = (cut.falls.back_siphon.central + cut.falls.return_pipes).value();
  const double surge = surface * surge_height.value();
  return {.lowest_level = {length::from_value(worst), length::from_value(central), length::from_value(mild), why},
          .submergence = submergence,
          .margin = {margin(worst, submergence.high), margin(central, submergence.central),
                     margin(mild, submergence.low), "levels, and different rules for the submergence"},
          .runs_dry = worst == 0.0,
          .until_it_runs_over = duration::from_value(back / flow),
          .until_steady = duration::from_value((cut.falls.total.central.value() + surge) / flow),
          .caution = restart_caution};
}

}  // namespace detail

/// Lowest level of the pump chamber when the pump starts and the display refills, and its margin against drawing air.
///
///   While the display, the box and the chambers upstream refill, each of them only gains; the pump chamber falls to
///   its running level, less what the drains hold up (surge) and what the power cut put on the floor: V_pump(lowest) =
///   V_pump(running) - surge x area - water over the rim
///
/// @param task system as for `power_cut`; inlet height [m] >= 0 and bore [m] > 0; surge [m] >= 0
/// @return     lowest level, submergence, margin [m] with their bands, times [s], a caution
/// @throws     invalid_input (names the element by its label)
/// @accuracy   the bands: all areas and levels at one end together, and the rules for the submergence
/// @source     geometry; ANSI/HI 9.8-1998; Gordon 1970
[[nodiscard]] inline restart_answer restart(const restart_input& task) {
  return detail::restart_after(power_cut(task.system), task.system, task.inlet, task.surge);
}

}  // namespace tankwright::plumbing
