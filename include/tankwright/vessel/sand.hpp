// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much sand, and what does it weigh? A bed by its depth or by the bag, level or sloped.
#pragma once

#include <cmath>
#include <string>
#include <string_view>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/detail/check.hpp>
#include <tankwright/vessel/grains.hpp>
#include <tankwright/vessel/item.hpp>

namespace tankwright::vessel {

namespace detail {

inline constexpr limits floor_area_limits{"floor area", "m2", possible_area};
inline constexpr limits repose_limits{"angle of repose", "rad", {0.001, 1.57}};

}  // namespace detail

/// A bed of sand, measured with a ruler.
struct sand_bed_size {
  required<area> floor;
  required<length> depth;  ///< mean depth; of an even slope, that in the middle of the floor
  grains sand = aragonite_sand;
  std::string label = "sand";
};

/// A bed of sand from its floor area and depth.
///
///   envelope = A d,  solids = (1 - n) A d,  dry mass = rho_g (1 - n) A d
///
/// @param bed floor area [m^2] > 0, mean depth [m] >= 0; the kind of sand
/// @return    the item; band from porosity and grain density
/// @throws    invalid_input (porosity of 1 or more, negative depth ...)
/// @accuracy  exact for the inputs; the band says what porosity and density leave open
/// @source    phase relations of soil mechanics
[[nodiscard]] inline item sand_bed(const sand_bed_size& bed) {
  constexpr std::string_view here = "tankwright::vessel::sand_bed";
  core::check_element(here, bed.label, detail::floor_area_limits, bed.floor->value());
  core::check_element(here, bed.label, detail::length_from_zero("depth"), bed.depth->value());
  detail::check_grains(here, bed.label, bed.sand);
  const double v = bed.floor->value() * bed.depth->value();
  const detail::band n = detail::numbers(bed.sand.pores), rho = detail::numbers(bed.sand.grain_density);
  const detail::band solids{(1.0 - n.high) * v, (1.0 - n.central) * v, (1.0 - n.low) * v};
  return detail::make_item(bed.label, solids, {n.low * v, n.central * v, n.high * v}, detail::exactly(v),
                           {rho.low * solids.low, rho.central * solids.central, rho.high * solids.high},
                           "porosity and grain density of the sand");
}

/// Sand by the bag.
struct sand_mass {
  required<mass> dry_mass;
  grains sand = aragonite_sand;
  std::string label = "sand";
};

/// A bed of sand from the dry mass that went in.
///
///   solids = m / rho_g,  envelope = m / (rho_g (1 - n))
///
/// @param bags dry mass [kg] >= 0; the kind of sand. Sand weighed wet counts its water twice: dry a sample first
/// @return     the item; band from porosity and grain density
/// @throws     invalid_input
/// @accuracy   exact for the inputs; the band says what porosity and density leave open
/// @source     phase relations of soil mechanics
[[nodiscard]] inline item sand_by_mass(const sand_mass& bags) {
  constexpr std::string_view here = "tankwright::vessel::sand_by_mass";
  const double m = bags.dry_mass->value();
  core::check_element(here, bags.label, {"dry mass", "kg", detail::possible_mass_from_zero}, m);
  detail::check_grains(here, bags.label, bags.sand);
  const detail::band n = detail::numbers(bags.sand.pores), rho = detail::numbers(bags.sand.grain_density);
  const detail::band solids{m / rho.high, m / rho.central, m / rho.low};
  const detail::band pores = detail::pores_of(solids, n);
  return detail::make_item(bags.label, solids, pores, solids + pores, detail::exactly(m),
                           "porosity and grain density of the sand");
}

/// Depth that an item makes when it is spread over a floor.
///
///   d = envelope / A
///
/// @param bed   the item, usually from `sand_by_mass`
/// @param floor area [m^2] > 0
/// @return      mean depth [m] with its band
/// @throws      invalid_input
/// @accuracy    exact for the inputs
/// @source      geometry
[[nodiscard]] inline estimate<length> bed_depth(const item& bed, area floor) {
  constexpr std::string_view here = "tankwright::vessel::bed_depth";
  detail::check_item(here, bed);
  core::check_element(here, bed.label, detail::floor_area_limits, floor.value());
  return map_rising(bed.envelope, [&](envelope_volume v) { return v.value() / floor; });
}

/// The steepest that a heap of sand lies under water: 30 to 35 degrees, sharp aragonite up to about 40 (from memory).
inline constexpr angle default_repose = degrees(33.0);

/// A bed that slopes evenly along one direction of a rectangular floor.
struct bed_slope {
  required<length> shallow_end;  ///< depth of sand where it is least
  required<length> deep_end;     ///< depth of sand where it is most
  required<length> run;          ///< horizontal distance between the two
  angle repose = default_repose;
};

struct slope_result {
  length mean_depth;  ///< for `sand_bed`
  angle slope;
  bool steeper_than_repose;  ///< it will not stay like that
};

/// Mean depth and steepness of a sloped bed.
///
///   mean = (shallow + deep)/2,  slope = atan((deep - shallow)/run)
///
/// @param bed depths [m] >= 0, the deep end not the less; run [m] > 0; angle of repose [rad], above 0 to below a right
///            angle
/// @return    mean depth [m], slope [rad], and whether it is steeper than the sand lies
/// @throws    invalid_input
/// @accuracy  exact on a rectangular floor; on any other, the mean depth is the depth at `polygon_middle`
/// @source    geometry
[[nodiscard]] inline slope_result sloped_bed(const bed_slope& bed) {
  constexpr std::string_view here = "tankwright::vessel::sloped_bed";
  const double shallow = bed.shallow_end->value(), deep = bed.deep_end->value(), run = bed.run->value();
  core::check(here, detail::length_from_zero("shallow end"), shallow);
  core::check(here, {"deep end", "m", {shallow, detail::possible_length.high}}, deep);
  core::check(here, detail::positive_length("run"), run);
  core::check(here, detail::repose_limits, bed.repose.value());
  const double slope = std::atan2(deep - shallow, run);
  return {length::from_value(0.5 * (shallow + deep)), angle::from_value(slope), slope > bed.repose.value()};
}

/// Horizontal distance that a slope of sand needs to rise by a height.
///
///   run = rise / tan(repose)
///
/// @param rise   [m] >= 0
/// @param repose angle of repose [rad], above 0 to below a right angle
/// @return       run [m]
/// @throws       invalid_input
/// @accuracy     exact for the inputs
/// @source       geometry
[[nodiscard]] inline length slope_run(length rise, angle repose = default_repose) {
  constexpr std::string_view here = "tankwright::vessel::slope_run";
  core::check(here, detail::length_from_zero("rise"), rise.value());
  core::check(here, detail::repose_limits, repose.value());
  return rise / std::tan(repose.value());
}

}  // namespace tankwright::vessel
