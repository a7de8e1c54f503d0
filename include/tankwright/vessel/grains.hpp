// SPDX-License-Identifier: BSL-1.0
/// @file
/// What are sand and rock made of? Grain density and porosity as data with their bands, and the phase relations that
/// lead from a weighed sample to them.
///
/// Three volumes must not be mixed, so they are three types: the solids (keep water out), the pores (hold water), and
/// the envelope around both (what a tape or a bucket measures).
#pragma once

#include <numbers>
#include <string_view>
#include <tankwright/core/citation.hpp>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/detail/check.hpp>

namespace tankwright::vessel {

namespace detail {

template <class Self>
class kind_of_volume {
 public:
  constexpr explicit kind_of_volume(volume value) noexcept : value_{value} {}
  [[nodiscard]] constexpr volume value() const noexcept { return value_; }

  friend constexpr auto operator<=>(const Self& a, const Self& b) noexcept {
    return a.value().value() <=> b.value().value();
  }
  friend constexpr bool operator==(const Self& a, const Self& b) noexcept {
    return a.value().value() == b.value().value();
  }

 private:
  volume value_;
};

/// The limits of what grains can be.
inline constexpr limits porosity_limits{"porosity", "", zero_to_below_one};
inline constexpr limits grain_density_limits{"grain density", "kg/m3", possible_density};

}  // namespace detail

/// Volume of grains or rock without any pores: the water that it displaces when the pores are flooded.
class solid_volume : public detail::kind_of_volume<solid_volume> {
  using kind_of_volume::kind_of_volume;
};
/// Volume of the pores between grains or within rock: water when flooded.
class pore_volume : public detail::kind_of_volume<pore_volume> {
  using kind_of_volume::kind_of_volume;
};
/// Volume of the outline, solids and pores together: area times depth of a bed, the bucket that a rock fills.
class envelope_volume : public detail::kind_of_volume<envelope_volume> {
  using kind_of_volume::kind_of_volume;
};

inline constexpr citation bucher_1998{"Bucher D.J., Harriott V.J., Roberts L.G.", 1998,
                                      "Skeletal micro-density, porosity and bulk density of acroporid corals",
                                      "J. Exp. Mar. Biol. Ecol. 228:117-136, abstract"};
inline constexpr citation crane_2007{"Crane M.J., Burke C.D.", 2007, "Porosity of dead patch-reef rock",
                                     "AAPG abstract 90067"};

// Densities of the minerals themselves.
inline constexpr mass_density aragonite = kilograms_per_cubic_metre(2940.0);  ///< Bucher et al. 1998
inline constexpr mass_density calcite = kilograms_per_cubic_metre(2710.0);    ///< from memory
inline constexpr mass_density quartz = kilograms_per_cubic_metre(2650.0);     ///< from memory

/// Porosity of equal spheres, mathematics: in a simple cubic heap, the loosest regular one, and in the closest packing.
/// A bed of clean round grains lies between them.
inline constexpr porosity simple_cubic_packing{1.0 - std::numbers::pi / 6.0};
inline constexpr porosity closest_packing{1.0 - std::numbers::pi / (3.0 * std::numbers::sqrt2)};

/// A kind of sand or rock. Copy one and change a field where a sample says otherwise.
struct grains {
  std::string_view name;
  estimate<mass_density> grain_density;
  estimate<porosity> pores;
  standing read_as;
  std::string_view source;
};

inline constexpr grains aragonite_sand{
    "aragonite sand",
    {calcite, kilograms_per_cubic_metre(2850.0), aragonite, "from calcite to aragonite"},
    {porosity{0.40}, porosity{0.45}, porosity{0.50}, "loose carbonate sand"},
    standing::from_memory,
    "porosity: Enos & Sawatsky 1981, mean 44.5 %; upper density: Bucher et al. 1998"};
inline constexpr grains quartz_sand{"quartz sand",
                                    {quartz, quartz, quartz, "one mineral"},
                                    {porosity{0.35}, porosity{0.40}, porosity{0.45}, "loose quartz sand"},
                                    standing::from_memory,
                                    "handbooks"};
inline constexpr grains reef_rock{
    "porous reef rock",
    {kilograms_per_cubic_metre(2781.0), kilograms_per_cubic_metre(2830.0), kilograms_per_cubic_metre(2873.0),
     "coral skeletons"},
    {porosity{0.337}, porosity{0.435}, porosity{0.745}, "dead patch-reef rock, piece by piece"},
    standing::published,
    "densities: Bucher et al. 1998; porosities: Crane & Burke 2007 (abstracts)"};
inline constexpr grains coral_branch_tips{
    "branch tips of Acropora",
    {kilograms_per_cubic_metre(2781.0), kilograms_per_cubic_metre(2827.0), kilograms_per_cubic_metre(2873.0),
     "range of the measured skeletons"},
    {porosity{0.33}, porosity{0.515}, porosity{0.70}, "range of the measured skeletons; central is its middle"},
    standing::published,
    "Bucher et al. 1998 (abstract)"};

/// Two densities of one heap: as it lies, and of the grains alone.
struct bulk_and_grain {
  required<mass_density> dry_bulk;
  required<mass_density> grain;
};

/// Porosity from the dry bulk density and the grain density.
///
///   n = 1 - rho_b / rho_g
///
/// @param densities dry bulk density [kg/m^3] and grain density [kg/m^3] > 0, the first not above the second and
///                  at least a thousandth of it
/// @return          porosity, 0 to below 1
/// @throws          invalid_input
/// @accuracy        exact
/// @source          definition
[[nodiscard]] constexpr porosity porosity_of(const bulk_and_grain& densities) {
  constexpr std::string_view here = "tankwright::vessel::porosity_of";
  const double bulk = densities.dry_bulk->value(), grain = densities.grain->value();
  core::check(here, detail::grain_density_limits, grain);
  core::check(here, {"dry bulk density", "kg/m3", {0.001 * grain, grain}}, bulk);
  return porosity{1.0 - bulk / grain};
}

/// How the volume and the mass of a sample divide into grains, water and air (phase relations of soil mechanics).
struct phases {
  porosity pores;            ///< pores over the whole
  double void_ratio;         ///< [1] pores over solids
  double water_content;      ///< [1] mass of water over dry mass
  double saturation;         ///< [1] water over pores
  mass_density dry_density;  ///< dry mass over the whole
  mass_density wet_density;  ///< mass with its water over the whole
  mass_density grain_density;
  bool more_water_than_pores;  ///< saturation above 1: a dripping sample, or a wrong volume or density
};

/// A sample that was weighed wet, dried and weighed again.
struct weighed_sample {
  required<mass> wet;
  required<mass> dry;
  required<volume> whole;  ///< envelope of the sample
  required<mass_density> grain_density;
  required<mass_density> water_density;
};

/// Phases of a sample from its wet and dry mass.
///
///   V_s = m_dry/rho_g,  e = (V - V_s)/V_s,  n = e/(1 + e),  w = (m_wet - m_dry)/m_dry,  S = V_w/(V - V_s)
///
/// @param sample wet and dry mass [kg] > 0, whole volume [m^3] > 0, grain and water density [kg/m^3] > 0
/// @return       the phases
/// @throws       invalid_input: dry above wet, grains that do not fit into the whole
/// @accuracy     exact for the inputs
/// @source       phase relations of soil mechanics
[[nodiscard]] inline phases phases_of(const weighed_sample& sample) {
  constexpr std::string_view here = "tankwright::vessel::phases_of";
  const double dry = sample.dry->value(), wet = sample.wet->value(), whole = sample.whole->value();
  const double grain = sample.grain_density->value(), water = sample.water_density->value();
  core::check(here, {"dry mass", "kg", detail::possible_mass}, dry);
  core::check(here, {"wet mass", "kg", {dry, detail::possible_mass.high}}, wet);
  core::check(here, detail::grain_density_limits, grain);
  core::check(here, detail::water_density_limits, water);
  const double solids = dry / grain;
  core::check(here, {"whole volume", "m3", {solids, 1000.0 * solids, edge::open}}, whole);
  const double pores = whole - solids, liquid = (wet - dry) / water;
  return {porosity{pores / whole},
          pores / solids,
          (wet - dry) / dry,
          liquid / pores,
          mass_density::from_value(dry / whole),
          mass_density::from_value(wet / whole),
          sample.grain_density,
          liquid > pores};
}

/// A sample whose pores are full of water.
struct saturated_sample {
  required<double> water_content;  ///< [1] mass of water over dry mass
  required<mass_density> grain_density;
  required<mass_density> water_density;
};

/// Phases of a sample whose pores are full, from its water content alone.
///
///   e = w rho_g / rho_w,  n = e/(1 + e),  rho_d = rho_g/(1 + e)
///
/// @param sample water content w > 0, grain and water density [kg/m^3] > 0
/// @return       the phases
/// @throws       invalid_input
/// @accuracy     exact for the inputs
/// @source       phase relations of soil mechanics
[[nodiscard]] inline phases phases_when_saturated(const saturated_sample& sample) {
  constexpr std::string_view here = "tankwright::vessel::phases_when_saturated";
  const double w = sample.water_content, grain = sample.grain_density->value(), water = sample.water_density->value();
  core::check(here, {"water content", "", {1e-6, 100.0}}, w);
  core::check(here, detail::grain_density_limits, grain);
  core::check(here, detail::water_density_limits, water);
  const double e = w * grain / water;
  const double dry = grain / (1.0 + e);
  return {
      porosity{e / (1.0 + e)}, e,    w, 1.0, mass_density::from_value(dry), mass_density::from_value(dry * (1.0 + w)),
      sample.grain_density,    false};
}

}  // namespace tankwright::vessel
