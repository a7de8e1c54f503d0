// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the tests of sand, rock and displacement share.
#pragma once

#include <tankwright/core/units.hpp>
#include <tankwright/vessel/item.hpp>

#include "support/check.hpp"

namespace tankwright::testing {

inline constexpr mass_density sea = kilograms_per_cubic_metre(1023.5);

/// Grains that are known exactly.
inline vessel::grains exact_grains(double n, double rho) {
  vessel::grains g = vessel::aragonite_sand;
  g.pores = {porosity{n}, porosity{n}, porosity{n}, ""};
  const mass_density d = kilograms_per_cubic_metre(rho);
  g.grain_density = {d, d, d, ""};
  return g;
}

template <class Q>
void in_order(const evidence& about, const estimate<Q>& e) {
  TW_HOLDS(about, e.low <= e.central);
  TW_HOLDS(about, e.central <= e.high);
}

/// What every item must hold: bands in order, solids and pores fill the envelope, weights in order.
inline void check_item(const evidence& about, const vessel::item& i) {
  CAPTURE(i.label);
  in_order(about, i.solids);
  in_order(about, i.pores);
  in_order(about, i.envelope);
  in_order(about, i.dry_mass);
  const auto weight = vessel::weight_of(i, sea);
  in_order(about, weight.wet);
  in_order(about, weight.submerged);
  TW_CHECK(about, i.solids.central.value() + i.pores.central.value(), i.envelope.central.value(), relative(1e-14));
}

}  // namespace tankwright::testing
