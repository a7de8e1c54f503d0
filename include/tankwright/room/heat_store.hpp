// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much heat does a kelvin take? Of the water, and of the sand, the rock and the walls that warm and cool with it.
#pragma once

#include <algorithm>
#include <tankwright/core/citation.hpp>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/room/ranges.hpp>
#include <tankwright/room/tank_water.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/heat.hpp>

namespace tankwright::room {

inline constexpr citation en_iso_10456{
    "ISO", 2007, "ISO 10456, Building materials and products: hygrothermal properties, tabulated design values",
    "densities and specific heats of Table 3", standing::from_memory};
inline constexpr citation heat_of_minerals{
    "Lide D.R. (editor)", 2005, "CRC Handbook of Chemistry and Physics",
    "calcite 2710 kg/m3 and 835 J/(kg K), quartz 2648 kg/m3 and 742 J/(kg K), near 25 degC", standing::from_memory};

inline constexpr citation cardarelli_2018{
    "Cardarelli F.", 2018, "Materials Handbook",
    "specific heats of building stones: hard limestone 907 to 921, dry sand 753 to 799 J/(kg K); as tabulated on a "
    "public page",
    standing::secondary};
inline constexpr citation cibse_guide_a{"CIBSE", 2006, "Guide A, Environmental design",
                                        "table 3.36, soda-lime glass 2500 kg/m3 and 840 J/(kg K); excerpt",
                                        standing::secondary};

/// Heat that a solid takes up for each cubic metre and kelvin [J/(m^3 K)], without its pores.
class volumetric_heat {
 public:
  constexpr explicit volumetric_heat(double joules_per_cubic_metre_kelvin) noexcept
      : value_{joules_per_cubic_metre_kelvin} {}
  [[nodiscard]] constexpr double value() const noexcept { return value_; }

 private:
  double value_;
};

/// Sand and rock of carbonate or quartz; the ends are quartz and hard limestone, the middle lies between the minerals.
inline constexpr estimate<volumetric_heat> heat_of_stone{volumetric_heat{2648.0 * 742.0},
                                                         volumetric_heat{0.5 * (2648.0 * 742.0 + 2710.0 * 835.0)},
                                                         volumetric_heat{2710.0 * 921.0}, "the mineral"};
inline constexpr volumetric_heat heat_of_glass{2500.0 * 840.0};  ///< CIBSE Guide A; ISO 10456 has 750 J/(kg K)
// The other sheets of tanks by ISO 10456, from memory.
inline constexpr volumetric_heat heat_of_acrylic{1180.0 * 1500.0};
inline constexpr volumetric_heat heat_of_plywood{500.0 * 1600.0};
inline constexpr volumetric_heat heat_of_glass_fibre{1900.0 * 1200.0};
inline constexpr volumetric_heat heat_of_polystyrene{30.0 * 1450.0};

/// A sheet between the water and something cooler.
struct warm_sheet {
  required<tankwright::area> area;
  required<length> thickness;
  required<volumetric_heat> heat;
};

inline constexpr limits water_volume_limits{"volume", "m3", possible_volume};
inline constexpr limits solids_volume_limits{"volume of the solids", "m3", {0.0, 1e9}};
inline constexpr limits sheet_area_limits{"area of the sheet", "m2", possible_area};
inline constexpr limits sheet_thickness_limits{"thickness of the sheet", "m", {0.0, 100.0}};
inline constexpr limits volumetric_heat_limits{"heat of the sheet", "J/(m3 K)", {0.0, 1e9}};

/// Heat that a volume of the tank's water takes up for each kelvin.
///
///   C = rho V c_p   (TEOS-10)
///
/// @param w      practical salinity 0 to 42; temperature -6 to 80 degC
/// @param volume of water V [m^3] 1e-6 to 1e9, without rock and sand
/// @param policy `extrapolate` to go past these ranges
/// @return       heat capacity [J/K]
/// @throws       invalid_input, out_of_range
/// @accuracy     0.01 %
/// @source       Feistel 2008
[[nodiscard]] inline heat_capacity heat_capacity_of(const tank_water& w, volume volume,
                                                    range_policy policy = range_policy::published) {
  core::check("tankwright::room::heat_capacity_of", water_volume_limits, volume.value());
  const tankwright::temperature t = w.temperature;
  const practical_salinity s = w.salinity;
  return heat_capacity::from_value(water::density(s, t, policy).value() * volume.value() *
                                   water::specific_heat(s, t, policy).value());
}

/// Heat that solids in the water take up for each kelvin.
///
///   C = (rho c) V,   V what they displace
///
/// @param displaced volume V [m^3] >= 0 of water that sand, rock and gear take the place of
/// @return          heat capacity [J/K], from quartz to carbonate
/// @throws          invalid_input
/// @accuracy        the band, -7 to +18 % for stone; plastics lie at the low end
/// @source          densities and specific heats of calcite and quartz, CRC Handbook (from memory); Cardarelli 2018
[[nodiscard]] inline estimate<heat_capacity> heat_capacity_of_solids(const estimate<volume>& displaced) {
  constexpr std::string_view here = "tankwright::room::heat_capacity_of_solids";
  core::check(here, solids_volume_limits, displaced.low.value());
  core::check(here, solids_volume_limits, displaced.high.value());
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
