// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much water does the rock displace? By mass, by its weight under water, or by the rise of the level.
#pragma once

#include <optional>
#include <string>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/vessel/detail/check.hpp>
#include <tankwright/vessel/grains.hpp>
#include <tankwright/vessel/item.hpp>
#include <tankwright/vessel/shape.hpp>

namespace tankwright::vessel {

/// Rock on a bathroom scale.
struct rock_mass {
  required<mass> dry_mass;
  grains rock = reef_rock;
  proportion flooded_pores = fraction(1.0);  ///< fresh dry rock fills only over days; until then air keeps water out
  std::string label = "rock";
};

/// Rock from its dry mass.
///
///   solids = m/rho_g,  pores = solids n/(1 - n);  pores still full of air count as solids
///
/// @param rock dry mass [kg] >= 0; the kind of rock; part of its pores that is flooded, 0 to 1. Rock weighed wet counts
///             its water twice
/// @return     the item; the band of the solids is 15 % either way: moisture, closed pores and density together
/// @throws     invalid_input
/// @accuracy   the band
/// @source     phase relations of soil mechanics; band: common practice
[[nodiscard]] inline item rock_by_mass(const rock_mass& rock) {
  constexpr std::string_view here = "tankwright::vessel::rock_by_mass";
  const double m = rock.dry_mass->value(), flooded = rock.flooded_pores.value();
  core::check_element(here, rock.label, {"dry mass", "kg", detail::possible_mass_from_zero}, m);
  core::check_element(here, rock.label, {"flooded pores", "", zero_to_one}, flooded);
  detail::check_grains(here, rock.label, rock.rock);
  const double central = m / rock.rock.grain_density.central.value();
  const detail::band solids{0.85 * central, central, 1.15 * central};
  const detail::band pores = detail::pores_of(solids, detail::numbers(rock.rock.pores));
  const detail::band wet{flooded * pores.low, flooded * pores.central, flooded * pores.high};
  const detail::band dry{pores.low - wet.low, pores.central - wet.central, pores.high - wet.high};
  return detail::make_item(rock.label, solids + dry, wet, solids + pores, detail::exactly(m),
                           "rock not weighed under water: moisture, closed pores and density");
}

/// Rock weighed dry and hanging under water, soaked through.
struct rock_weighing {
  required<mass> dry_mass;
  required<mass> submerged_mass;  ///< what the scale reads while it hangs in the water
  required<mass_density> water_density;
  std::optional<mass> soaked_mass{};  ///< in air, soaked and wiped: gives the pores; else they come from `rock`
  grains rock = reef_rock;
  std::string label = "rock";
};

/// Rock from its weight under water.
///
///   solids = (m_dry - m_sub)/rho_w,  envelope = (m_soaked - m_sub)/rho_w   (Archimedes)
///
/// @param rock dry mass and mass under water [kg], the second less than the first and not negative; water density
///             [kg/m^3]; soaked mass [kg], not below the dry one
/// @return     the item; the solids (closed pores included) are as good as the scale
/// @throws     invalid_input, also when the rock weighs as much under water as dry
/// @accuracy   exact for the inputs
/// @source     Archimedes; buoyant weighing as in Jokiel, Maragos & Franzisket 1978 (from memory)
[[nodiscard]] inline item rock_weighed_under_water(const rock_weighing& rock) {
  constexpr std::string_view here = "tankwright::vessel::rock_weighed_under_water";
  const double dry = rock.dry_mass->value(), sub = rock.submerged_mass->value(), water = rock.water_density->value();
  core::check_element(here, rock.label, {"dry mass", "kg", detail::possible_mass}, dry);
  core::check_element(here, rock.label, detail::water_density_limits, water);
  if (sub >= dry) {
    detail::refuse_of(here, rock.label, "submerged mass", sub, "kg",
                      "is not below the dry mass, " + core::number_text(dry) + " kg: water carries part of every rock");
  }
  core::check_element(here, rock.label, {"submerged mass", "kg", {0.0, dry}}, sub);
  const detail::band solids = detail::exactly((dry - sub) / water);
  detail::check_grains(here, rock.label, rock.rock);
  detail::band pores;
  if (rock.soaked_mass) {
    const double soaked = rock.soaked_mass->value();
    core::check_element(here, rock.label, {"soaked mass", "kg", {dry, detail::possible_mass.high}}, soaked);
    pores = detail::exactly((soaked - dry) / water);
  } else {
    pores = detail::pores_of(solids, detail::numbers(rock.rock.pores));
  }
  return detail::make_item(rock.label, solids, pores, solids + pores, detail::exactly(dry),
                           rock.soaked_mass ? "weighed" : "porosity of the rock");
}

/// Rock known only by how far it raised the water.
struct level_rise {
  required<length> before;
  required<length> after;
  grains rock = reef_rock;
  std::string label = "rock";
};

/// Rock (or anything else) from the rise of the level when it went in.
///
///   solids = V(after) - V(before),  dry mass = rho_g solids
///
/// @param vessel the shape it went into
/// @param rise   depth of water before and after [m], the second not the less; the kind of rock. Rock that was dry
///               goes on drinking for days: read the level again when it has
/// @return       the item; the solids are as good as the reading
/// @throws       invalid_input, also when a depth is above the rim
/// @accuracy     exact for the inputs
/// @source       geometry
[[nodiscard]] inline item rock_by_level_rise(const shape& vessel, const level_rise& rise) {
  constexpr std::string_view here = "tankwright::vessel::rock_by_level_rise";
  const double before = detail::depth_in(here, vessel, rise.before), after = detail::depth_in(here, vessel, rise.after);
  core::check_element(here, rise.label, {"level after", "m", {before, detail::possible_length.high}}, after);
  detail::check_grains(here, rise.label, rise.rock);
  const auto& parts = detail::parts_of(vessel);
  const double volume = detail::volume_at(parts, after) - detail::volume_at(parts, before);
  const detail::band solids = detail::exactly(volume), rho = detail::numbers(rise.rock.grain_density);
  const detail::band pores = detail::pores_of(solids, detail::numbers(rise.rock.pores));
  return detail::make_item(rise.label, solids, pores, solids + pores,
                           {rho.low * volume, rho.central * volume, rho.high * volume},
                           "porosity and density of the rock");
}

/// Mass under water, and what it was in.
struct buoyant_weighing {
  required<mass> submerged_mass;
  required<mass_density> grain_density;
  required<mass_density> water_density;
};

/// Dry mass of rock or coral that was only weighed under water.
///
///   m = m_sub / (1 - rho_w/rho_s)
///
/// @param weighing mass under water [kg] >= 0; grain density [kg/m^3], a thousandth above the water's at least
/// @return         dry mass [kg]
/// @throws         invalid_input
/// @accuracy       exact for the inputs; 1 % of grain density is about 0.5 % of the result
/// @source         Davies 1989, Mar. Biol. 101:389-395 (from memory)
[[nodiscard]] inline mass dry_mass_from_submerged(const buoyant_weighing& weighing) {
  constexpr std::string_view here = "tankwright::vessel::dry_mass_from_submerged";
  const double sub = weighing.submerged_mass->value(), grain = weighing.grain_density->value();
  const double water = weighing.water_density->value();
  core::check(here, {"submerged mass", "kg", detail::possible_mass_from_zero}, sub);
  core::check(here, detail::water_density_limits, water);
  core::check(here, {"grain density", "kg/m3", {1.001 * water, detail::possible_density.high}}, grain);
  return mass::from_value(sub / (1.0 - water / grain));
}

}  // namespace tankwright::vessel
