// SPDX-License-Identifier: BSL-1.0
/// @file
/// What heat do sand, rock and the walls of the tank take up beside the water? All of it is warmed with the water, and
/// cools with it.
#pragma once

#include <algorithm>
#include <tankwright/core/citation.hpp>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/core/validity.hpp>

namespace tankwright::room {

inline constexpr citation en_iso_10456{
    "ISO", 2007, "ISO 10456, Building materials and products: hygrothermal properties, tabulated design values",
    "densities and specific heats of Table 3", standing::from_memory};
inline constexpr citation heat_of_minerals{
    "Lide D.R. (editor)", 2005, "CRC Handbook of Chemistry and Physics",
    "calcite 2710 kg/m3 and 835 J/(kg K), quartz 2648 kg/m3 and 742 J/(kg K), near 25 degC", standing::from_memory};

/// Heat that a solid takes up for each cubic metre and kelvin [J/(m^3 K)], without its pores.
class volumetric_heat {
 public:
  constexpr explicit volumetric_heat(double joules_per_cubic_metre_kelvin) noexcept
      : value_{joules_per_cubic_metre_kelvin} {}
  [[nodiscard]] constexpr double value() const noexcept { return value_; }

 private:
  double value_;
};

/// Sand and rock of carbonate or quartz; the ends are quartz and calcite.
inline constexpr estimate<volumetric_heat> heat_of_stone{volumetric_heat{2648.0 * 742.0},
                                                         volumetric_heat{0.5 * (2648.0 * 742.0 + 2710.0 * 835.0)},
                                                         volumetric_heat{2710.0 * 835.0}, "the mineral"};
// Sheets of tanks (ISO 10456, from memory).
inline constexpr volumetric_heat heat_of_glass{2500.0 * 750.0};
inline constexpr volumetric_heat heat_of_acrylic{1180.0 * 1500.0};
inline constexpr volumetric_heat heat_of_plywood{500.0 * 1600.0};
inline constexpr volumetric_heat heat_of_glass_fibre{1400.0 * 1200.0};
inline constexpr volumetric_heat heat_of_polystyrene{30.0 * 1450.0};

/// A sheet between the water and something cooler.
struct warm_sheet {
  required<tankwright::area> area;
  required<length> thickness;
  required<volumetric_heat> heat;
};

inline constexpr limits solids_volume_limits{"volume of the solids", "m3", not_negative};
inline constexpr limits sheet_area_limits{"area of the sheet", "m2", not_negative};
inline constexpr limits sheet_thickness_limits{"thickness of the sheet", "m", not_negative};
inline constexpr limits volumetric_heat_limits{"heat of the sheet", "J/(m3 K)", not_negative};

/// Heat that solids in the water take up for each kelvin.
///
///   C = (rho c) V,   V what they displace
///
/// @param displaced volume V [m^3] >= 0 of water that sand, rock and gear take the place of
/// @return          heat capacity [J/K], from quartz to carbonate
/// @throws          invalid_input
/// @accuracy        7 % about the middle, for stone; plastics lie at the low end
/// @source          densities and specific heats of calcite and quartz, CRC Handbook (from memory)
[[nodiscard]] inline estimate<heat_capacity> heat_capacity_of_solids(const estimate<volume>& displaced) {
  for (const volume& v : {displaced.low, displaced.central, displaced.high}) {
    core::check("tankwright::room::heat_capacity_of_solids", solids_volume_limits, v.value());
  }
  const auto held = [](volumetric_heat h, volume v) { return heat_capacity::from_value(h.value() * v.value()); };
  return {held(heat_of_stone.low, displaced.low), held(heat_of_stone.central, displaced.central),
          held(heat_of_stone.high, displaced.high), "the volume of the solids, and their mineral"};
}

/// Heat that a sheet takes up for each kelvin of the water on its inside: across it the temperature falls in a straight
/// line to that of its outside, so half of it counts.
///
///   C = (rho c) A d / 2
///
/// @param s area A [m^2] >= 0, thickness d [m] >= 0, rho c [J/(m^3 K)] >= 0
/// @return  heat capacity [J/K]
/// @throws  invalid_input
/// @accuracy 10 %, the design values; the film of air outside makes it a little more than half
/// @source  conduction in a plane wall
[[nodiscard]] inline heat_capacity heat_capacity_of_sheet(const warm_sheet& s) {
  constexpr std::string_view here = "tankwright::room::heat_capacity_of_sheet";
  core::check(here, sheet_area_limits, s.area->value());
  core::check(here, sheet_thickness_limits, s.thickness->value());
  core::check(here, volumetric_heat_limits, s.heat->value());
  return heat_capacity::from_value(0.5 * s.heat->value() * s.area->value() * s.thickness->value());
}

}  // namespace tankwright::room
