// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much heat goes through this wall? Heat transmittance of layers, for tank walls and room walls alike.
#pragma once

#include <string>
#include <vector>

#include <tankwright/core/labelled.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>

namespace tankwright::room {

inline constexpr citation en_iso_6946{
    "CEN", 2017,
    "EN ISO 6946, Building components and building elements - Thermal resistance and thermal transmittance",
    "sum of resistances; surface resistances", standing::from_memory};
inline constexpr citation en_iso_10077{
    "CEN", 2003, "EN ISO 10077-2 and EN ISO 10456, Thermal conductivities of building materials",
    "soda-lime glass, PMMA, softwood, glass fibre polyester, PVC, foams; excerpts", standing::secondary};
inline constexpr citation mechanical_engineers_handbook{"Kutz M. (ed.)", 2006, "Mechanical Engineers' Handbook, vol. 4",
                                                        "table 3, plywood at 300 K", standing::secondary};

// Conductivities at room temperature.
inline constexpr thermal_conductivity glass_conductivity = watts_per_metre_kelvin(1.0);
inline constexpr thermal_conductivity acrylic_conductivity = watts_per_metre_kelvin(0.18);
inline constexpr thermal_conductivity plywood_conductivity = watts_per_metre_kelvin(0.12);  ///< 545 kg/m3
inline constexpr thermal_conductivity softwood_conductivity = watts_per_metre_kelvin(0.13);
inline constexpr thermal_conductivity glass_fibre_conductivity = watts_per_metre_kelvin(0.40);  ///< polyester
inline constexpr thermal_conductivity pvc_conductivity = watts_per_metre_kelvin(0.17);
inline constexpr thermal_conductivity polystyrene_conductivity = watts_per_metre_kelvin(0.0375);  ///< 0.035 to 0.040
inline constexpr thermal_conductivity polyurethane_conductivity = watts_per_metre_kelvin(0.029);  ///< 0.028 to 0.030

// What the fluid at a face passes on, convection and radiation together.
inline constexpr thermal_transmittance indoor_film = watts_per_square_metre_kelvin(8.3);    ///< still air
inline constexpr thermal_transmittance water_film = watts_per_square_metre_kelvin(200.0);   ///< 100 to 300
inline constexpr thermal_transmittance outdoor_film = watts_per_square_metre_kelvin(25.0);  ///< EN ISO 6946, 4 m/s wind

struct wall_layer {
  std::string label = "layer";
  required<length> thickness;
  required<thermal_conductivity> conductivity;
};

/// Layers between two fluids. The defaults are a tank wall: water inside, still air outside.
struct layered_wall {
  std::string label = "wall";
  std::vector<wall_layer> layers;
  thermal_transmittance inside = water_film;
  thermal_transmittance outside = indoor_film;
};

inline constexpr limits thickness_limits{"thickness", "m", {0.0, 100.0, edge::open}};
inline constexpr limits conductivity_limits{"conductivity", "W/(m K)", {1e-4, 1e4}};
inline constexpr limits film_limits{"film coefficient", "W/(m2 K)", {1e-3, 1e6}};

/// Heat transmittance (U-value) of a wall of layers.
///
///   U = 1 / (1/h_in + sum of t/k + 1/h_out)
///
/// @param wall layers: thickness t [m] > 0, conductivity k [W/(m K)] > 0; films h [W/(m^2 K)] > 0
/// @return     transmittance [W/(m^2 K)]
/// @throws     invalid_input (names the wall, the layer, the argument and its value)
/// @accuracy   3 % against tables of acrylic sheet; films and foams are known to 10 %; edges and studs are left out
/// @source     EN ISO 6946
[[nodiscard]] inline thermal_transmittance transmittance(const layered_wall& wall) {
  constexpr std::string_view here = "tankwright::room::transmittance";
  core::check_element(here, wall.label + ": inside", film_limits, wall.inside.value());
  core::check_element(here, wall.label + ": outside", film_limits, wall.outside.value());
  double resistance = 1.0 / wall.inside.value() + 1.0 / wall.outside.value();
  for (const wall_layer& layer : wall.layers) {
    const std::string label = wall.label + ": " + layer.label;
    core::check_element(here, label, thickness_limits, layer.thickness.get().value());
    core::check_element(here, label, conductivity_limits, layer.conductivity.get().value());
    resistance += layer.thickness.get().value() / layer.conductivity.get().value();
  }
  return thermal_transmittance::from_value(1.0 / resistance);
}

}  // namespace tankwright::room
