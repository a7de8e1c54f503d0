// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cases/water_case.hpp>

namespace tankwright::decisions {

namespace detail {

inline constexpr practical_salinity natural_seawater{35.0};

}  // namespace detail

TANKWRIGHT_INLINE const estimate<practical_salinity>& water_case::target() const {
  return target_.get([&] {
    if (in.older_tank) return plan::salinity_of(*in.older_tank);
    const practical_salinity s = in.target.value_or(detail::natural_seawater);
    return estimate<practical_salinity>{s, s, s, "chosen"};
  });
}

TANKWRIGHT_INLINE const estimate<proportion>& water_case::mix_yield() const {
  return mix_yield_.get([&] {
    if (in.trial) return water::measured_yield(*in.trial);
    if (in.mix_yield) return estimate<proportion>{*in.mix_yield, *in.mix_yield, *in.mix_yield, "given"};
    return water::typical_mix_yield;
  });
}

TANKWRIGHT_INLINE const estimate<practical_salinity>& water_case::now() const {
  return now_.get([&] { return plan::salinity_of(in.now.value()); });
}

TANKWRIGHT_INLINE water_case case_of(const plan::water_section& s) { return water_case{plan::inputs_of(s)}; }

TANKWRIGHT_INLINE water_basis basis_of(const water_case& c) {
  water_basis basis{.temperature = c.in.temperature, .air = c.in.air};
  try {
    basis.salinity = c.target().central;
  } catch (const error&) {
    basis.salinity = detail::natural_seawater;
  }
  return basis;
}

TANKWRIGHT_INLINE void add_display_from(system_state& state, const water_case& c) {
  if (state.display_water || !c.in.new_water) return;
  const estimate<volume>& made = *c.in.new_water;
  if (!state.sump_water) {
    state.display_water = made;
    return;
  }
  const estimate<volume>& sump = *state.sump_water;
  if (!(made.low > sump.high)) return;
  state.display_water =
      estimate<volume>{made.low - sump.high, made.central - sump.central, made.high - sump.low, made.reason};
}

TANKWRIGHT_INLINE std::optional<estimate<volume>> water_to_make(const water_case& c, const system_state& state) {
  return c.in.new_water ? c.in.new_water : state.all_water();
}

}  // namespace tankwright::decisions
