// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much water is really in it, with the sand, the rock and the equipment, and what does all that weigh?
///
/// Each maker below turns what was measured (depth, mass, mass under water, a rise of the level) into an `item` with
/// its solids, pores and envelope; `water_in` adds them up.
#pragma once

#include <cmath>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/vessel/detail/check.hpp>
#include <tankwright/vessel/grains.hpp>
#include <tankwright/vessel/shape.hpp>

namespace tankwright::vessel {

/// All the water in a vessel, that in the pores included: for salt, for dosing, for water changes.
class net_volume : public detail::kind_of_volume<net_volume> {
  using kind_of_volume::kind_of_volume;
};
/// The water that moves, outside sand and rock: for turnover and oxygen.
class free_volume : public detail::kind_of_volume<free_volume> {
  using kind_of_volume::kind_of_volume;
};

inline constexpr caution displacement_caution{
    "Displacement by rock is good to about 15 % unless a sample was weighed under water. The honest net volume is the "
    "one measured while filling."};

/// Something in the water. Low solids, low envelope and low dry mass are one case, and so are the high ones.
struct item {
  std::string label;
  estimate<solid_volume> solids;
  estimate<pore_volume> pores;
  estimate<envelope_volume> envelope;
  estimate<mass> dry_mass;
};

namespace detail {

struct band {
  double low;
  double central;
  double high;
};

template <class Q>
[[nodiscard]] band numbers(const estimate<Q>& e) noexcept {
  if constexpr (requires { e.low.value().value(); }) {
    return {e.low.value().value(), e.central.value().value(), e.high.value().value()};
  } else {
    return {e.low.value(), e.central.value(), e.high.value()};
  }
}

/// An estimate of a thin volume or of a quantity, from numbers in SI.
template <class Q>
[[nodiscard]] estimate<Q> quantities(const band& b, std::string_view reason) noexcept {
  const auto make = [](double x) {
    if constexpr (requires { Q::from_value(x); }) {
      return Q::from_value(x);
    } else {
      return Q{volume::from_value(x)};
    }
  };
  return {make(b.low), make(b.central), make(b.high), reason};
}

[[nodiscard]] inline item make_item(const std::string& label, const band& solids, const band& pores,
                                    const band& envelope, const band& dry, std::string_view reason) {
  return {label, quantities<solid_volume>(solids, reason), quantities<pore_volume>(pores, reason),
          quantities<envelope_volume>(envelope, reason), quantities<mass>(dry, reason)};
}

inline void check_grains(std::string_view function, std::string_view label, const grains& kind) {
  const band density = numbers(kind.grain_density), n = numbers(kind.pores);
  for (const double x : {density.low, density.central, density.high}) {
    check_of(function, label, grain_density_limits, x);
  }
  for (const double x : {n.low, n.central, n.high}) check_of(function, label, porosity_limits, x);
  if (!(density.low <= density.central && density.central <= density.high)) {
    refuse_of(function, label, "grain density", density.central, "kg/m3", "is not between its low and its high value");
  }
  if (!(n.low <= n.central && n.central <= n.high)) {
    refuse_of(function, label, "porosity", n.central, "", "is not between its low and its high value");
  }
}

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
  detail::check_of(here, bed.label, {"floor area", "m2", positive}, bed.floor->value());
  detail::check_of(here, bed.label, detail::length_from_zero("depth"), bed.depth->value());
  detail::check_grains(here, bed.label, bed.sand);
  const double v = bed.floor->value() * bed.depth->value();
  const detail::band n = detail::numbers(bed.sand.pores), rho = detail::numbers(bed.sand.grain_density);
  const detail::band solids{(1.0 - n.high) * v, (1.0 - n.central) * v, (1.0 - n.low) * v};
  return detail::make_item(bed.label, solids, {n.low * v, n.central * v, n.high * v}, {v, v, v},
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
  detail::check_of(here, bags.label, {"dry mass", "kg", not_negative}, m);
  detail::check_grains(here, bags.label, bags.sand);
  const detail::band n = detail::numbers(bags.sand.pores), rho = detail::numbers(bags.sand.grain_density);
  const detail::band solids{m / rho.high, m / rho.central, m / rho.low};
  const detail::band envelope{solids.low / (1.0 - n.low), solids.central / (1.0 - n.central),
                              solids.high / (1.0 - n.high)};
  return detail::make_item(bags.label, solids,
                           {envelope.low - solids.low, envelope.central - solids.central, envelope.high - solids.high},
                           envelope, {m, m, m}, "porosity and grain density of the sand");
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
  detail::check_of("tankwright::vessel::bed_depth", bed.label, {"floor area", "m2", positive}, floor.value());
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
  detail::check(here, detail::length_from_zero("shallow end"), shallow);
  detail::check(here, {"deep end", "m", {shallow, detail::largest}}, deep);
  detail::check(here, detail::positive_length("run"), run);
  detail::check(here, {"angle of repose", "rad", {0.0, std::numbers::pi / 2.0, edge::open, edge::open}},
                bed.repose.value());
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
  detail::check(here, detail::length_from_zero("rise"), rise.value());
  detail::check(here, {"angle of repose", "rad", {0.0, std::numbers::pi / 2.0, edge::open, edge::open}},
                repose.value());
  return rise / std::tan(repose.value());
}

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
  detail::check_of(here, rock.label, {"dry mass", "kg", not_negative}, m);
  detail::check_of(here, rock.label, {"flooded pores", "", zero_to_one}, flooded);
  detail::check_grains(here, rock.label, rock.rock);
  const detail::band n = detail::numbers(rock.rock.pores);
  const double central = m / rock.rock.grain_density.central.value();
  const detail::band solids{0.85 * central, central, 1.15 * central};
  const detail::band pores{solids.low * n.low / (1.0 - n.low), solids.central * n.central / (1.0 - n.central),
                           solids.high * n.high / (1.0 - n.high)};
  const double dry = 1.0 - flooded;
  return detail::make_item(
      rock.label, {solids.low + dry * pores.low, solids.central + dry * pores.central, solids.high + dry * pores.high},
      {flooded * pores.low, flooded * pores.central, flooded * pores.high},
      {solids.low + pores.low, solids.central + pores.central, solids.high + pores.high}, {m, m, m},
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
  detail::check_of(here, rock.label, {"dry mass", "kg", positive}, dry);
  detail::check_of(here, rock.label, detail::water_density_limits, water);
  if (sub >= dry) {
    detail::refuse_of(
        here, rock.label, "submerged mass", sub, "kg",
        "is not below the dry mass, " + detail::number_text(dry) + " kg: water carries part of every rock");
  }
  detail::check_of(here, rock.label, {"submerged mass", "kg", {0.0, dry}}, sub);
  const double solids = (dry - sub) / water;
  detail::band pores;
  if (rock.soaked_mass) {
    const double soaked = rock.soaked_mass->value();
    detail::check_of(here, rock.label, {"soaked mass", "kg", {dry, detail::largest}}, soaked);
    const double filled = (soaked - dry) / water;
    pores = {filled, filled, filled};
  } else {
    detail::check_grains(here, rock.label, rock.rock);
    const detail::band n = detail::numbers(rock.rock.pores);
    pores = {solids * n.low / (1.0 - n.low), solids * n.central / (1.0 - n.central), solids * n.high / (1.0 - n.high)};
  }
  return detail::make_item(rock.label, {solids, solids, solids}, pores,
                           {solids + pores.low, solids + pores.central, solids + pores.high}, {dry, dry, dry},
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
  detail::check_of(here, rise.label, {"level after", "m", {before, detail::largest}}, after);
  detail::check_grains(here, rise.label, rise.rock);
  const double solids =
      detail::volume_at(detail::parts_of(vessel), after) - detail::volume_at(detail::parts_of(vessel), before);
  const detail::band n = detail::numbers(rise.rock.pores), rho = detail::numbers(rise.rock.grain_density);
  const detail::band pores{solids * n.low / (1.0 - n.low), solids * n.central / (1.0 - n.central),
                           solids * n.high / (1.0 - n.high)};
  return detail::make_item(
      rise.label, {solids, solids, solids}, pores, {solids + pores.low, solids + pores.central, solids + pores.high},
      {rho.low * solids, rho.central * solids, rho.high * solids}, "porosity and density of the rock");
}

/// A pump, a heater, a wave box: something without pores.
struct equipment_size {
  required<volume> outside;  ///< what it keeps the water out of
  required<tankwright::mass> mass;
  std::string label = "equipment";
};

/// Equipment by its outside volume.
///
///   solids = envelope = its volume
///
/// @param thing outside volume [m^3] >= 0; mass [kg] >= 0
/// @return      the item, without a band
/// @throws      invalid_input
/// @accuracy    exact for the inputs
/// @source      definition
[[nodiscard]] inline item equipment(const equipment_size& thing) {
  constexpr std::string_view here = "tankwright::vessel::equipment";
  const double v = thing.outside->value(), m = thing.mass->value();
  detail::check_of(here, thing.label, {"volume", "m3", not_negative}, v);
  detail::check_of(here, thing.label, {"mass", "kg", not_negative}, m);
  return detail::make_item(thing.label, {v, v, v}, {0.0, 0.0, 0.0}, {v, v, v}, {m, m, m}, "measured");
}

/// What one item weighs.
struct item_weight {
  estimate<mass> dry;
  estimate<mass> wet;        ///< with its pores full, as it stands on the floor
  estimate<mass> submerged;  ///< what it presses on what lies under it in the water
};

namespace detail {

/// dry + rho_w (part of the envelope - solids), case by case.
[[nodiscard]] inline band weight(const item& thing, double water, const band& held) noexcept {
  const band dry = numbers(thing.dry_mass), solids = numbers(thing.solids);
  const double at_low = dry.low + water * (held.low - solids.low);
  const double at_high = dry.high + water * (held.high - solids.high);
  return {std::fmin(at_low, at_high), dry.central + water * (held.central - solids.central),
          std::fmax(at_low, at_high)};
}

}  // namespace detail

/// Dry, wet and submerged weight of an item.
///
///   wet = dry + rho_w pores,   submerged = dry - rho_w solids
///
/// @param thing         the item
/// @param water_density [kg/m^3] > 0
/// @return              the three masses [kg] with their bands; a submerged mass below zero floats
/// @throws              invalid_input
/// @accuracy            the band of the item
/// @source              Archimedes
[[nodiscard]] inline item_weight weight_of(const item& thing, mass_density water_density) {
  const double water = water_density.value();
  detail::check_of("tankwright::vessel::weight_of", thing.label, detail::water_density_limits, water);
  const std::string_view reason = thing.solids.reason;
  const detail::band full = detail::numbers(thing.envelope);
  return {thing.dry_mass, detail::quantities<mass>(detail::weight(thing, water, full), reason),
          detail::quantities<mass>(detail::weight(thing, water, {}), reason)};
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
/// @param weighing mass under water [kg] >= 0; grain density above the water's [kg/m^3]
/// @return         dry mass [kg]
/// @throws         invalid_input
/// @accuracy       exact for the inputs; 1 % of grain density is about 0.5 % of the result
/// @source         Davies 1989, Mar. Biol. 101:389-395 (from memory)
[[nodiscard]] inline mass dry_mass_from_submerged(const buoyant_weighing& weighing) {
  constexpr std::string_view here = "tankwright::vessel::dry_mass_from_submerged";
  const double sub = weighing.submerged_mass->value(), grain = weighing.grain_density->value();
  const double water = weighing.water_density->value();
  detail::check(here, {"submerged mass", "kg", not_negative}, sub);
  detail::check(here, detail::water_density_limits, water);
  detail::check(here, {"grain density", "kg/m3", {water, detail::largest, edge::open}}, grain);
  return mass::from_value(sub / (1.0 - water / grain));
}

/// A vessel with what is in it.
struct scene {
  required<volume> gross;  ///< to the water line, from `filled_volume`
  required<std::span<const item>> items;
  required<mass_density> water_density;
};

struct water_content {
  volume gross;
  estimate<solid_volume> solids;
  estimate<pore_volume> pores;
  estimate<envelope_volume> envelope;
  estimate<net_volume> net;    ///< all the water: for salt, dosing, water changes
  estimate<free_volume> free;  ///< the water that moves: for turnover and oxygen
  estimate<mass> contents_dry;
  estimate<mass> contents_submerged;
  estimate<mass> water;
  estimate<mass> on_the_floor;  ///< water and contents; add the tank and its stand
  tankwright::caution caution;
};

/// The water in a vessel with sand, rock and equipment, and what it all weighs.
///
///   net = gross - sum of solids,  free = gross - sum of envelopes,
///   on the floor = rho_w gross + sum of (dry - rho_w solids)
///
/// The bands add up as if all items erred the same way, which those of one kind do.
///
/// @param scene gross volume [m^3] > 0, the items, water density [kg/m^3] > 0
/// @return      volumes and masses with their bands
/// @throws      invalid_input, also when the items do not fit into the gross volume
/// @accuracy    the bands
/// @source      Archimedes
[[nodiscard]] inline water_content water_in(const scene& scene) {
  constexpr std::string_view here = "tankwright::vessel::water_in";
  const double gross = scene.gross->value(), water = scene.water_density->value();
  detail::check(here, {"gross volume", "m3", positive}, gross);
  detail::check(here, detail::water_density_limits, water);
  detail::band solids{}, pores{}, envelope{}, dry{}, under{};
  const auto add = [](detail::band& sum, const detail::band& part) {
    sum.low += part.low, sum.central += part.central, sum.high += part.high;
  };
  for (const item& i : scene.items.get()) {
    add(solids, detail::numbers(i.solids));
    add(pores, detail::numbers(i.pores));
    add(envelope, detail::numbers(i.envelope));
    add(dry, detail::numbers(i.dry_mass));
    add(under, detail::weight(i, water, {}));
  }
  detail::check(here, {"volume of all items", "m3", {0.0, gross}}, envelope.central);
  for (const double x : {solids.low, solids.high, pores.high, dry.high, under.low}) {
    detail::check(here, {"sum over the items", "", any_finite}, x);
  }
  constexpr std::string_view reason = "the items, as if all erred the same way";
  // The band of very porous rock may reach past what fits: there is no less than no water.
  const auto left = [&](double part) { return std::fmax(gross - part, 0.0); };
  const detail::band net{left(solids.high), left(solids.central), left(solids.low)};
  return {scene.gross,
          detail::quantities<solid_volume>(solids, reason),
          detail::quantities<pore_volume>(pores, reason),
          detail::quantities<envelope_volume>(envelope, reason),
          detail::quantities<net_volume>(net, reason),
          detail::quantities<free_volume>({left(envelope.high), left(envelope.central), left(envelope.low)}, reason),
          detail::quantities<mass>(dry, reason),
          detail::quantities<mass>(under, reason),
          detail::quantities<mass>({water * net.low, water * net.central, water * net.high}, reason),
          detail::quantities<mass>(
              {water * gross + under.low, water * gross + under.central, water * gross + under.high}, reason),
          displacement_caution};
}

/// All the water of a system: the net volumes of its vessels together.
///
///   sum of net
///
/// @param vessels what `water_in` gave for each
/// @return        total water [m^3] with its band
/// @throws        invalid_input when there is none
/// @accuracy      the bands of the parts, added
/// @source        definition
[[nodiscard]] inline estimate<net_volume> total_water(std::span<const water_content> vessels) {
  if (vessels.empty()) {
    detail::fail<invalid_input>("tankwright::vessel::total_water", "number of vessels", 0.0, "", "holds no water");
  }
  detail::band sum{};
  for (const water_content& v : vessels) {
    const detail::band net = detail::numbers(v.net);
    sum.low += net.low, sum.central += net.central, sum.high += net.high;
  }
  return detail::quantities<net_volume>(sum, vessels[0].net.reason);
}

}  // namespace tankwright::vessel
