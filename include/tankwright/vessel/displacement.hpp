// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much water is really in it, with the sand, the rock and the equipment, and what does all that weigh?
#pragma once

#include <cmath>
#include <span>
#include <string_view>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/vessel/detail/check.hpp>
#include <tankwright/vessel/grains.hpp>
#include <tankwright/vessel/item.hpp>

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
/// The bands add up as if all items erred the same way, which those of one kind do; the least water is none.
///
/// @param scene gross volume [m^3] > 0, the items, water density [kg/m^3] > 0
/// @return      volumes and masses with their bands
/// @throws      invalid_input, also when the items do not fit into the gross volume
/// @accuracy    the bands
/// @source      Archimedes
[[nodiscard]] inline water_content water_in(const scene& scene) {
  constexpr std::string_view here = "tankwright::vessel::water_in";
  const double gross = scene.gross->value(), water = scene.water_density->value();
  core::check(here, {"gross volume", "m3", detail::possible_volume}, gross);
  core::check(here, detail::water_density_limits, water);
  detail::band solids{}, pores{}, envelope{}, dry{}, under{};
  for (const item& i : scene.items.get()) {
    detail::check_item(here, i);
    core::check_element(here, i.label, {"volume", "m3", {0.0, gross}}, detail::numbers(i.envelope).central);
    solids = solids + detail::numbers(i.solids);
    pores = pores + detail::numbers(i.pores);
    envelope = envelope + detail::numbers(i.envelope);
    dry = dry + detail::numbers(i.dry_mass);
    under = under + detail::weight(i, water, {});
  }
  core::check(here, {"volume of all items", "m3", {0.0, gross}}, envelope.central);
  constexpr std::string_view reason = "the items, as if all erred the same way";
  // The band of very porous rock may reach past what fits.
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
  constexpr std::string_view here = "tankwright::vessel::total_water";
  if (vessels.empty()) core::fail<invalid_input>(here, "number of vessels", 0.0, "", "holds no water");
  detail::band all{};
  for (const water_content& v : vessels) {
    detail::check_band(here, "vessel", {"net volume", "m3", detail::possible_volume_from_zero}, detail::numbers(v.net));
    all = all + detail::numbers(v.net);
  }
  return detail::quantities<net_volume>(all, vessels[0].net.reason);
}

}  // namespace tankwright::vessel
