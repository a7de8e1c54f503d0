// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does a valve that slams do to the pipe? Speed of the pressure wave in an elastic pipe, and the surge when a
/// flow is stopped.
#pragma once

#include <cmath>
#include <tankwright/plumbing/pipe_run.hpp>
#include <tankwright/water/liquid.hpp>

namespace tankwright::plumbing {

inline constexpr citation joukowsky_1898{
    "Joukowsky N.", 1898, "On the hydraulic hammer in water supply pipes",
    "Mem. Imp. Acad. Sci. St. Petersburg 9(5); wave speed in an elastic pipe after Korteweg 1878", standing::secondary};

/// Stiffness of PVC-U against a fast load, 400 000 psi: from memory.
inline constexpr pressure pvc_modulus = pressure::from_value(2.76e9);
/// Stiffness of the water itself; seawater has some 2.4 GPa. From memory; in plastic pipe the wall decides.
inline constexpr pressure water_bulk_modulus = pressure::from_value(2.2e9);

/// A pipe that a pressure wave stretches.
struct elastic_pipe {
  required<pipe_bore> bore;
  required<length> wall;
  pressure modulus = pvc_modulus;              ///< of the wall
  pressure bulk_modulus = water_bulk_modulus;  ///< of the water
  /// [1] 1 for a thin pipe with joints that give, less for one held along its length; for a thick wall that is
  /// 2 (t/D)(1 + mu) + D/(D + t), with mu 0.4 of PVC 1.25 for 1 in Sch 40 and 1.55 for 1/2 in Sch 80 (from memory)
  double restraint = 1.0;
};

/// A flow that a valve stops.
struct stopped_flow {
  required<velocity> wave_speed;
  required<velocity> change;  ///< of the velocity of the water; all of it, when the valve shuts
  required<length> pipe;      ///< from the valve to the tank or the next large pipe
};

struct surge {
  head rise;               ///< over the head before, as much below it half a period later
  pressure pressure_rise;  ///< the same
  duration rapid;          ///< the rise is this where the valve shuts faster; slower shutting gives less
  tankwright::caution caution;
};

inline constexpr caution surge_caution{
    "A surge adds to the working pressure and can part a glued joint over a dry floor. Shut valves slowly, keep pipe "
    "below 1.5 m/s, and hold pressure ratings against the sum; ratings of PVC fall with temperature."};

inline constexpr limits wall_limits{"wall", "m", positive};
inline constexpr limits modulus_limits{"modulus", "Pa", positive};
inline constexpr limits bulk_modulus_limits{"bulk modulus", "Pa", positive};
inline constexpr limits restraint_limits{"restraint", "", {0.0, 3.0}};
inline constexpr limits wave_speed_limits{"wave speed", "m/s", positive};
inline constexpr limits velocity_change_limits{"change", "m/s", not_negative};
inline constexpr limits surge_pipe_limits{"pipe", "m", not_negative};

/// Speed of a pressure wave in a full pipe.
///
///   a = sqrt(K/rho) / sqrt(1 + c K D/(E t))
///
/// @param pipe   bore D, wall t [m] > 0; moduli E of the wall and K of the water [Pa] > 0; restraint c, 0 to 3
/// @param water  density in the pipe
/// @return       speed [m/s]
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     5 to 10 %, by the modulus of the wall; too high by up to 20 % for small pipe with a thick wall at
///               restraint 1; a little air in the water lowers it far more
/// @source       Joukowsky 1898; Korteweg 1878
[[nodiscard]] inline velocity wave_speed(const elastic_pipe& pipe, const water::liquid& water) {
  constexpr std::string_view here = "tankwright::plumbing::wave_speed";
  const double d = pipe.bore->diameter().value();
  core::check(here, bore_limits, d);
  core::check(here, wall_limits, pipe.wall->value());
  core::check(here, modulus_limits, pipe.modulus.value());
  core::check(here, bulk_modulus_limits, pipe.bulk_modulus.value());
  core::check(here, restraint_limits, pipe.restraint);
  water::kernel::check_flowing(here, water);
  const double k = pipe.bulk_modulus.value();
  const double stretch = pipe.restraint * k * d / (pipe.modulus.value() * pipe.wall->value());
  return velocity::from_value(std::sqrt(k / water.density->value() / (1.0 + stretch)));
}

/// Surge when a flow is stopped at once.
///
///   dh = a dV/g,   dp = rho a dV,   at once means within 2 L/a
///
/// @param stop   wave speed a [m/s] > 0; change of velocity dV [m/s] >= 0; length of pipe L [m] >= 0
/// @param water  density in the pipe
/// @return       rise of head and pressure, the time of closing below which it is reached, and a caution
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     that of the wave speed
/// @source       Joukowsky 1898
[[nodiscard]] inline surge surge_on_closure(const stopped_flow& stop, const water::liquid& water) {
  constexpr std::string_view here = "tankwright::plumbing::surge_on_closure";
  const double a = stop.wave_speed->value();
  const double dv = stop.change->value();
  core::check(here, wave_speed_limits, a);
  core::check(here, velocity_change_limits, dv);
  core::check(here, surge_pipe_limits, stop.pipe->value());
  water::kernel::check_flowing(here, water);
  return {head::from_value(a * dv / standard_gravity.value()), pressure::from_value(water.density->value() * a * dv),
          duration::from_value(2.0 * stop.pipe->value() / a), surge_caution};
}

}  // namespace tankwright::plumbing
