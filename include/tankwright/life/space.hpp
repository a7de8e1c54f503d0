// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is there room to swim? Straight runs and widths in body lengths, against multiples that the user sets. No number
/// here permits a species: there is no published rule for tank size, and the default multiples are informal.
#pragma once

#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/ranges.hpp>

namespace tankwright::life {

inline constexpr citation trujillo_2022{
    "Trujillo J.E., Bouyoucos I., Rayment W.J., Domenici P., Planes S., Rummer J.L., Allan B.J.M.", 2022,
    "Escape response kinematics in two species of tropical shark: short escape latencies and high turning performance",
    "Journal of Experimental Biology 225:jeb243973, abstract"};
inline constexpr citation graham_1990{"Graham J.B., Dewar H., Lai N.C., Lowell W.R., Arce S.M.", 1990,
                                      "Aspects of shark swimming performance determined using a large water tunnel",
                                      "Journal of Experimental Biology 151:175-192, abstract"};

/// Critical speeds in body lengths a second (Graham et al. 1990): what these sharks could just keep up with.
inline constexpr double critical_speed_lemon_shark_70_cm = 1.1;
inline constexpr double critical_speed_leopard_shark_120_cm = 0.6;

/// Tank length and width over the animal's length. Informal: passed on in the trade without a source.
inline constexpr double informal_length_multiple = 3.0;
inline constexpr double informal_width_multiple = 2.0;

inline constexpr caution space_caution{
    "No number here licenses a species. Size for the adult; animals that must swim to breathe need a continuous path "
    "free of obstacles. The multiples are informal minima without a published source: ask a curator or an aquatic "
    "veterinarian."};

inline constexpr limits body_length_limits{"length of the animal", "m", {1e-6, 1e4}};
inline constexpr limits straight_run_limits{"run", "m", {1e-6, 1e6}};
inline constexpr limits clear_width_limits{"width", "m", {1e-6, 1e6}};
inline constexpr limits swim_speed_limits{"speed", "m/s", {1e-6, 1e3}};

/// An animal and the room it has.
struct swim_space {
  required<length> animal;                          ///< total length of the adult
  required<length> run;                             ///< longest straight run free of obstacles
  required<length> width;                           ///< clear width there
  required<velocity> speed;                         ///< routine speed of the species
  double run_multiple = informal_length_multiple;   ///< [1]
  double width_multiple = informal_width_multiple;  ///< [1]
};

/// The room in body lengths.
struct clearance {
  double run_in_lengths;    ///< [1]
  double width_in_lengths;  ///< [1]
  duration crossing;        ///< of the run at routine speed
  length run_wanted;        ///< by the multiple
  length width_wanted;
  bool run_enough;
  bool width_enough;
  std::string_view rule;  ///< what the two verdicts rest on
  tankwright::caution caution;
};

/// Room to swim in body lengths, and the time to cross it.
///
///   run/L, width/L, run/U
///
/// @param space animal, run, width and speed > 0; multiples > 0
/// @return      ratios, crossing time [s], what the multiples ask for [m], two verdicts with their rule, the caution
/// @throws      invalid_input
/// @accuracy    exact ratios; the multiples are informal
/// @source      definitions; multiples: common practice without a source
[[nodiscard]] inline clearance swim_clearance(const swim_space& space) {
  constexpr std::string_view here = "tankwright::life::swim_clearance";
  core::check(here, body_length_limits, in_metres(space.animal));
  core::check(here, straight_run_limits, in_metres(space.run));
  core::check(here, clear_width_limits, in_metres(space.width));
  core::check(here, swim_speed_limits, in_metres_per_second(space.speed));
  core::check(here, {"run multiple", "", {1e-3, 1e4}}, space.run_multiple);
  core::check(here, {"width multiple", "", {1e-3, 1e4}}, space.width_multiple);
  const length body = space.animal;
  const length run_wanted = body * space.run_multiple;
  const length width_wanted = body * space.width_multiple;
  return {space.run.get() / body,
          space.width.get() / body,
          space.run.get() / space.speed.get(),
          run_wanted,
          width_wanted,
          space.run.get() >= run_wanted,
          space.width.get() >= width_wanted,
          "Informal minimum, no published source: multiples of the adult's length set by the user.",
          space_caution};
}

/// A speed in body lengths a second.
///
///   U / L
///
/// @param speed  U > 0
/// @param animal total length L > 0
/// @return       body lengths per second [1/s]
/// @throws       invalid_input
/// @accuracy     exact
/// @source       definition
[[nodiscard]] inline rate body_lengths_per_time(velocity speed, length animal) {
  constexpr std::string_view here = "tankwright::life::body_lengths_per_time";
  core::check(here, swim_speed_limits, in_metres_per_second(speed));
  core::check(here, body_length_limits, in_metres(animal));
  return speed / animal;
}

/// The tightest turn of an escaping neonate reef shark: what bodies can do, not what is good for them.
///
///   R = 0.03 to 0.11 L
///
/// @param animal total length L > 0
/// @return       radius [m]; the central value is the middle of the range
/// @throws       invalid_input
/// @accuracy     the range of the measurements, for neonate reef sharks
/// @source       Trujillo et al. 2022
[[nodiscard]] inline estimate<length> escape_turn_radius(length animal) {
  core::check("tankwright::life::escape_turn_radius", body_length_limits, in_metres(animal));
  return {animal * 0.03, animal * 0.07, animal * 0.11, "range over individuals of two species, neonates"};
}

}  // namespace tankwright::life
