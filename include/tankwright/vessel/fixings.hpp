// SPDX-License-Identifier: BSL-1.0
/// @file
/// What pulls on a bulkhead fitting, how hard must its gasket be pressed, and does an empty sump float up?
#pragma once

#include <numbers>
#include <string>
#include <string_view>

#include <tankwright/core/citation.hpp>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/cautions.hpp>
#include <tankwright/vessel/detail/check.hpp>
#include <tankwright/vessel/hydrostatic.hpp>

namespace tankwright::vessel {

inline constexpr caution fixings_caution{
    "Screening only: a fitting that lets go empties the tank. Holes in glass raise the stress about threefold: keep "
    "them two diameters from any edge and out of the lowest third, and never drill toughened glass."};

/// What structural silicone carries in tension for good, against about 138 kPa for moments (practice, from memory). A
/// panel should bear on its frame from inside, so that the water presses it on: never hang the load on the sealant.
inline constexpr estimate<stress> silicone_sustained_tension{kilopascals(7.0), kilopascals(10.0), kilopascals(14.0),
                                                             "practice, 1 to 2 psi, from memory"};

/// A hole with a fitting in it, below the water.
struct bulkhead_hole {
  required<length> depth;     ///< of its middle below the surface
  required<length> diameter;  ///< within the sealing line
  required<mass_density> water_density;
  std::string label = "bulkhead";
};

struct bulkhead_result {
  tankwright::pressure pressure;
  force blow_off;
  tankwright::caution caution;
};

/// The force that pushes a bulkhead fitting out of its hole.
///
///   F = rho g h pi D^2 / 4
///
/// @param hole depth [m] >= 0; diameter [m] > 0; water density [kg/m^3] > 0
/// @return     pressure [Pa] and force [N]
/// @throws     invalid_input (names the label)
/// @accuracy   exact for still water; a pipe that swings or is leant on does far more
/// @source     hydrostatics
[[nodiscard]] inline bulkhead_result blow_off(const bulkhead_hole& hole) {
  constexpr std::string_view here = "tankwright::vessel::blow_off";
  const double d = hole.diameter->value();
  core::check_element(here, hole.label, detail::length_from_zero("depth"), hole.depth->value());
  core::check_element(here, hole.label, detail::positive_length("diameter"), d);
  core::check_element(here, hole.label, detail::water_density_limits, hole.water_density->value());
  const pressure p = hydrostatic_pressure(hole.depth, hole.water_density);
  return {p, force::from_value(p.value() * std::numbers::pi * d * d / 4.0), fixings_caution};
}

/// How a gasket material asks to be pressed: m times the pressure in service, y to seat it.
struct gasket_material {
  std::string_view name;
  double factor;   ///< [1] m of the gasket
  stress seating;  ///< y
  standing read_as;
  std::string_view source;
};

inline constexpr gasket_material soft_elastomer{"elastomer below 75 Shore A", 0.5, megapascals(0.0),
                                                standing::from_memory, "ASME VIII-1, App. 2"};
inline constexpr gasket_material hard_elastomer{"elastomer of 75 Shore A and more", 1.0, megapascals(1.4),
                                                standing::from_memory, "ASME VIII-1, App. 2"};

/// A ring gasket under water pressure.
struct gasket_ring {
  required<length> mean_diameter;    ///< G
  required<length> effective_width;  ///< b
  required<tankwright::pressure> pressure;
  required<gasket_material> material;
  std::string label = "gasket";
};

struct gasket_result {
  force in_service;  ///< W_m1: hold the water and keep the ring tight
  force to_seat;     ///< W_m2: press the ring into shape at first
  force governing;
  tankwright::caution caution;
};

/// The clamping force that a ring gasket needs.
///
///   W_m1 = pi G^2 P/4 + 2 b pi G m P,   W_m2 = pi b G y
///
/// @param gasket mean diameter G and effective width b [m] > 0, b below G; pressure P [Pa] >= 0; material m, y >= 0
/// @return       force in service and to seat [N]; the larger governs
/// @throws       invalid_input (names the label)
/// @accuracy     of the code's rows for m and y, which are rough. In a tank seating governs, not the water
/// @source       ASME VIII-1, App. 2 (form and rows from memory)
[[nodiscard]] inline gasket_result gasket_force(const gasket_ring& gasket) {
  constexpr std::string_view here = "tankwright::vessel::gasket_force";
  const double g = gasket.mean_diameter->value(), b = gasket.effective_width->value();
  const double p = gasket.pressure->value();
  const gasket_material& m = gasket.material;
  core::check_element(here, gasket.label, detail::positive_length("mean diameter"), g);
  core::check_element(here, gasket.label, {"effective width", "m", {0.0, g, edge::open, edge::open}}, b);
  core::check_element(here, gasket.label, {"pressure", "Pa", detail::possible_pressure}, p);
  core::check_element(here, gasket.label, {"gasket factor", "", {0.0, 100.0}}, m.factor);
  core::check_element(here, gasket.label, {"seating stress", "Pa", detail::possible_pressure}, m.seating.value());
  const double service = std::numbers::pi * g * g * p / 4.0 + 2.0 * b * std::numbers::pi * g * m.factor * p;
  const double seat = std::numbers::pi * b * g * m.seating.value();
  return {force::from_value(service), force::from_value(seat), force::from_value(service > seat ? service : seat),
          fixings_caution};
}

/// How far a soft gasket is pressed together: less lets water by, more squeezes it out (static seals, from memory of
/// makers' handbooks).
inline constexpr double least_squeeze = 0.10;
inline constexpr double most_squeeze = 0.30;
inline constexpr limits gasket_thickness_limits{"gasket thickness", "mm", {0.05, 1000.0}};

/// How uneven a face may be that a soft gasket lies on: on a rough coating it bridges the hollows.
///
///   u = (e_1 - e_0) t,   e_0 = 0.10,   e_1 = 0.30
///
/// @param thickness of the gasket t, before it is pressed, 0.05 to 1000 mm
/// @return          from the lowest to the highest place under it [m]
/// @throws          invalid_input
/// @accuracy        a rule: soft rubber of up to 50 Shore A takes more, hard rubber less
/// @source          squeeze of static seals, from memory
[[nodiscard]] inline length gasket_takes_up(length thickness) {
  core::check("tankwright::vessel::gasket_takes_up", gasket_thickness_limits, in_millimetres(thickness));
  return thickness * (most_squeeze - least_squeeze);
}

/// An empty sump standing in a pit or basement that floods.
struct empty_sump {
  required<area> horizontal_area;  ///< outside
  required<length> flood_depth;    ///< above its bottom; not more than its height
  required<mass> mass_of_sump;     ///< with what is in it
  required<mass_density> water_density;
  std::string label = "sump";
};

struct uplift_result {
  force buoyancy;
  force net_up;  ///< negative: it stays down
  tankwright::caution caution;
};

/// The force that lifts an empty sump when the water stands around it.
///
///   F = rho g A h - m g
///
/// @param sump outside plan [m^2] > 0; depth of the flood above its bottom [m] >= 0; mass [kg] >= 0; water density
///             [kg/m^3] > 0
/// @return     buoyancy and net force [N], upwards positive
/// @throws     invalid_input (names the label)
/// @accuracy   exact for upright walls, with water under the bottom
/// @source     Archimedes
[[nodiscard]] inline uplift_result uplift_of(const empty_sump& sump) {
  constexpr std::string_view here = "tankwright::vessel::uplift_of";
  core::check_element(here, sump.label, {"horizontal area", "m2", detail::possible_area},
                      sump.horizontal_area->value());
  core::check_element(here, sump.label, detail::length_from_zero("flood depth"), sump.flood_depth->value());
  core::check_element(here, sump.label, {"mass", "kg", detail::possible_mass_from_zero}, sump.mass_of_sump->value());
  core::check_element(here, sump.label, detail::water_density_limits, sump.water_density->value());
  const force up = hydrostatic_pressure(sump.flood_depth, sump.water_density) * sump.horizontal_area.get();
  return {up, up - sump.mass_of_sump.get() * standard_gravity, structural_caution};
}

}  // namespace tankwright::vessel
