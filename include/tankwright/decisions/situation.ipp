// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/decision.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// What the display and the sump give. A section that cannot be worked out leaves its part missing, and says why.
[[nodiscard]] inline system_state state_of(const situation& s) {
  system_state state;
  state.water = s.basis();
  const plan::build& build = s.plan();
  if (build.vessel) {
    try {
      add_to(state, s.vessel());
    } catch (const error& mistake) {
      state.why_no_display = answers::reason_of(mistake);
    }
  }
  if (build.plumbing) {
    try {
      add_to(state, s.plumbing());
    } catch (const error& mistake) {
      state.why_no_sump = answers::reason_of(mistake);
    }
  }
  if (build.water) add_display_from(state, s.water());
  return state;
}

}  // namespace detail

TANKWRIGHT_INLINE const water_basis& situation::basis() const {
  return basis_.get([&] { return plan_->water ? basis_of(water()) : water_basis{}; });
}
TANKWRIGHT_INLINE const system_state& situation::state() const {
  return state_.get([&] { return detail::state_of(*this); });
}
TANKWRIGHT_INLINE const leak_test_case& situation::hold() const {
  return hold_.get([&] { return case_of(plan::inputs_of(plan_->hold.value())); });
}
TANKWRIGHT_INLINE const vessel_case& situation::vessel() const {
  return vessel_.get([&] { return case_of(plan_->vessel.value(), basis()); });
}
TANKWRIGHT_INLINE const plumbing_case& situation::plumbing() const {
  return plumbing_.get([&] { return case_of(plan_->plumbing.value(), basis()); });
}
TANKWRIGHT_INLINE const water_case& situation::water() const {
  return water_.get([&] { return case_of(plan_->water.value()); });
}
TANKWRIGHT_INLINE const room_case& situation::room() const {
  return room_.get([&] { return case_of(plan_->room.value(), state()); });
}
TANKWRIGHT_INLINE const life_case& situation::life() const {
  return life_.get([&] { return case_of(plan_->life.value(), state()); });
}

}  // namespace tankwright::decisions
