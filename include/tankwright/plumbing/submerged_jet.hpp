// SPDX-License-Identifier: BSL-1.0
/// @file
/// How far does a return reach under water, and does it dig the sand? A round jet into water at rest, and the speed
/// that moves grains on the bottom. For screening: rock, walls and other jets bend it.
#pragma once

#include <cmath>
#include <numbers>
#include <tankwright/plumbing/pipe_run.hpp>
#include <tankwright/water/liquid.hpp>

namespace tankwright::plumbing {

inline constexpr citation albertson_1950{"Albertson M.L., Dai Y.B., Jensen R.A., Rouse H.", 1950,
                                         "Diffusion of submerged jets", "Trans. ASCE 115:639-697; u = 6.2 u0 D/x",
                                         standing::from_memory};
inline constexpr citation soulsby_whitehouse_1997{
    "Soulsby R.L., Whitehouse R.J.S.", 1997, "Threshold of sediment motion in coastal environments",
    "Proc. Pacific Coasts and Ports '97; Soulsby 1997 eq. 77", standing::from_memory};

/// A round opening under water.
struct submerged_jet {
  required<pipe_bore> bore;  ///< of the opening
  required<flow_rate> flow;
};

/// Grains on the bottom.
struct loose_grains {
  required<length> size;  ///< that half of them is finer than
  mass_density density = kilograms_per_cubic_metre(2800.0);
};

inline constexpr limits jet_bore_limits{"bore of the opening", "m", {1e-4, 10.0}};
inline constexpr limits jet_flow_limits{"flow", "m3/s", {0.0, 10.0}};
inline constexpr limits jet_distance_limits{"distance", "m", {0.0, 1e3, edge::open}};
inline constexpr limits jet_speed_limits{"speed", "m/s", {1e-9, 1e3}};
inline constexpr limits grain_size_limits{"grain", "m", {1e-6, 1.0}};

/// How a jet decays: u/u0 = B D/x. Measured from 5.8 (Hussein, Capp and George 1994) to 6.5 (from memory).
inline constexpr estimate<double> jet_decay{5.8, 6.2, 6.5, "experiments on free round jets; a tank is not free"};

namespace kernel {

/// Shields parameter at which grains begin to move, from D* = d (g (s - 1)/nu^2)^(1/3).
template <class T>
[[nodiscard]] inline T threshold_of_motion(T d_star) noexcept {
  using std::exp;
  return T(0.30L) / (T(1) + T(1.2L) * d_star) + T(0.055L) * (T(1) - exp(T(-0.020L) * d_star));
}

}  // namespace kernel

/// Speed on the axis of a jet under water.
///
///   u = u0 min(1, B D/x),   u0 = Q/(pi D^2/4),   B = 6.2 (5.8 to 6.5)
///
/// @param jet      bore D [m] 1e-4 to 10; flow Q [m^3/s] 0 to 10
/// @param distance x [m] along the jet, above 0 to 1000
/// @return         speed [m/s] with its band
/// @throws         invalid_input (names the argument, its value and the limits)
/// @accuracy       the band, for a free jet that is turbulent: below a Reynolds number of some 10 000 at the opening it
///                 decays sooner, at 1500 four times (Abdel-Rahman et al. 1996); along a wall or the surface it goes
///                 up to 1.4 times as far
/// @source         Albertson et al. 1950
[[nodiscard]] inline estimate<velocity> jet_speed_at(const submerged_jet& jet, length distance) {
  constexpr std::string_view here = "tankwright::plumbing::jet_speed_at";
  const double d = jet.bore->diameter().value(), q = jet.flow->value(), x = distance.value();
  core::check(here, jet_bore_limits, d);
  core::check(here, jet_flow_limits, q);
  core::check(here, jet_distance_limits, x);
  const double u0 = q / (0.25 * std::numbers::pi * d * d);
  return map_rising(jet_decay, [&](double b) { return velocity::from_value(u0 * std::fmin(1.0, b * d / x)); });
}

/// How far a jet under water reaches with a speed on its axis.
///
///   x = B D u0/u;   0 where it is never so fast
///
/// @param jet   bore D [m] 1e-4 to 10; flow Q [m^3/s] 0 to 10
/// @param speed u [m/s] 1e-9 to 1000
/// @return      distance [m] with its band
/// @throws      invalid_input (names the argument, its value and the limits)
/// @accuracy    as `jet_speed_at`
/// @source      Albertson et al. 1950
[[nodiscard]] inline estimate<length> jet_reaches(const submerged_jet& jet, velocity speed) {
  constexpr std::string_view here = "tankwright::plumbing::jet_reaches";
  const double d = jet.bore->diameter().value(), q = jet.flow->value(), u = speed.value();
  core::check(here, jet_bore_limits, d);
  core::check(here, jet_flow_limits, q);
  core::check(here, jet_speed_limits, u);
  const double u0 = q / (0.25 * std::numbers::pi * d * d);
  return map_rising(jet_decay, [&](double b) { return length::from_value(u0 < u ? 0.0 : b * d * u0 / u); });
}

/// Friction velocity at which grains on a flat bottom begin to move.
///
///   theta = 0.30/(1 + 1.2 D*) + 0.055 (1 - exp(-0.020 D*)),   D* = d (g (s - 1)/nu^2)^(1/3),   s = rho_s/rho
///   u* = sqrt(theta g (s - 1) d)
///
/// @param grains size d [m] 1e-6 to 1; density [kg/m^3] above that of the water
/// @param water  density and viscosity
/// @return       friction velocity [m/s]
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     20 % for clean grains of one size; slime binds them, animals loosen them
/// @source       Soulsby and Whitehouse 1997
[[nodiscard]] inline velocity friction_velocity_that_moves(const loose_grains& grains, const water::liquid& water) {
  constexpr std::string_view here = "tankwright::plumbing::friction_velocity_that_moves";
  const double d = grains.size->value(), rho = water.density->value();
  core::check(here, grain_size_limits, d);
  water::kernel::check_flowing(here, water);
  core::check(here, {"density of the grains", "kg/m3", {rho, 23000.0, edge::open}}, grains.density.value());
  const double nu = water.viscosity->value() / rho, g = standard_gravity.value();
  const double under = g * (grains.density.value() / rho - 1.0);
  const double theta = kernel::threshold_of_motion(d * std::cbrt(under / (nu * nu)));
  return velocity::from_value(std::sqrt(theta * under * d));
}

/// Speed of a stream over a flat bottom at which its grains begin to move.
///
///   u = (u*/0.40) ln(z/z0),   z0 = d/12;   z = 50 mm (10 mm: low end, 200 mm: high end), at least 3 grains
///
/// @param grains size d [m] 1e-6 to 1; density [kg/m^3] above that of the water
/// @param water  density and viscosity
/// @return       speed [m/s] outside the layer that the bottom slows down, with its band
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     the band: how thick that layer is under a jet is not known
/// @source       Soulsby and Whitehouse 1997; law of the wall
[[nodiscard]] inline estimate<velocity> speed_that_moves(const loose_grains& grains, const water::liquid& water) {
  const double friction = friction_velocity_that_moves(grains, water).value(), d = grains.size->value();
  const auto at = [&](double z) {
    return velocity::from_value(friction / 0.40 * std::log(std::fmax(z, 3.0 * d) / (d / 12.0)));
  };
  return {at(0.010), at(0.050), at(0.200), "thickness of the layer that the bottom slows down"};
}

}  // namespace tankwright::plumbing
