// SPDX-License-Identifier: BSL-1.0
/// @file
/// A thing in the water: how much of it keeps water out, how much holds water, and what it weighs. Sand (`sand.hpp`)
/// and rock (`rock.hpp`) become items, equipment is one; `displacement.hpp` adds them up.
#pragma once

#include <cmath>
#include <string>
#include <string_view>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/vessel/detail/check.hpp>
#include <tankwright/vessel/grains.hpp>

namespace tankwright::vessel {

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

[[nodiscard]] constexpr band exactly(double x) noexcept { return {x, x, x}; }

[[nodiscard]] constexpr band operator+(const band& a, const band& b) noexcept {
  return {a.low + b.low, a.central + b.central, a.high + b.high};
}

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

inline void check_band(std::string_view function, std::string_view label, const limits& limit, const band& b) {
  for (const double x : {b.low, b.central, b.high}) core::check_element(function, label, limit, x);
}

/// An item can be made by hand, too.
inline void check_item(std::string_view function, const item& i) {
  check_band(function, i.label, {"solids", "m3", possible_volume_from_zero}, numbers(i.solids));
  check_band(function, i.label, {"pores", "m3", possible_volume_from_zero}, numbers(i.pores));
  check_band(function, i.label, {"envelope", "m3", possible_volume_from_zero}, numbers(i.envelope));
  check_band(function, i.label, {"dry mass", "kg", possible_mass_from_zero}, numbers(i.dry_mass));
}

[[nodiscard]] inline item make_item(const std::string& label, const band& solids, const band& pores,
                                    const band& envelope, const band& dry, std::string_view reason) {
  return {label, quantities<solid_volume>(solids, reason), quantities<pore_volume>(pores, reason),
          quantities<envelope_volume>(envelope, reason), quantities<mass>(dry, reason)};
}

inline void check_grains(std::string_view function, std::string_view label, const grains& kind) {
  const band density = numbers(kind.grain_density), n = numbers(kind.pores);
  check_band(function, label, grain_density_limits, density);
  check_band(function, label, porosity_limits, n);
}

/// Pores that go with solids: n/(1 - n) of them.
[[nodiscard]] inline band pores_of(const band& solids, const band& n) noexcept {
  return {solids.low * n.low / (1.0 - n.low), solids.central * n.central / (1.0 - n.central),
          solids.high * n.high / (1.0 - n.high)};
}

/// dry + rho_w (part of the envelope - solids), case by case.
[[nodiscard]] inline band weight(const item& thing, double water, const band& held) noexcept {
  const band dry = numbers(thing.dry_mass), solids = numbers(thing.solids);
  const double at_low = dry.low + water * (held.low - solids.low);
  const double at_high = dry.high + water * (held.high - solids.high);
  return {std::fmin(at_low, at_high), dry.central + water * (held.central - solids.central),
          std::fmax(at_low, at_high)};
}

}  // namespace detail

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
  core::check_element(here, thing.label, {"volume", "m3", detail::possible_volume_from_zero}, v);
  core::check_element(here, thing.label, {"mass", "kg", detail::possible_mass_from_zero}, m);
  const detail::band all = detail::exactly(v);
  return detail::make_item(thing.label, all, {}, all, detail::exactly(m), "measured");
}

/// What one item weighs.
struct item_weight {
  estimate<mass> dry;
  estimate<mass> wet;        ///< with its pores full, as it stands on the floor
  estimate<mass> submerged;  ///< what it presses on what lies under it in the water
};

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
  constexpr std::string_view here = "tankwright::vessel::weight_of";
  const double water = water_density.value();
  detail::check_item(here, thing);
  core::check_element(here, thing.label, detail::water_density_limits, water);
  const std::string_view reason = thing.solids.reason;
  const detail::band full = detail::numbers(thing.envelope);
  return {thing.dry_mass, detail::quantities<mass>(detail::weight(thing, water, full), reason),
          detail::quantities<mass>(detail::weight(thing, water, {}), reason)};
}

}  // namespace tankwright::vessel
