// SPDX-License-Identifier: BSL-1.0
/// @file
/// A plan while it is being assessed: what its sections make of it, worked out once and kept for all decisions.
#pragma once

#include <tankwright/decisions/cases/hold_case.hpp>
#include <tankwright/decisions/cases/life_case.hpp>
#include <tankwright/decisions/cases/plumbing_case.hpp>
#include <tankwright/decisions/cases/room_case.hpp>
#include <tankwright/decisions/cases/vessel_case.hpp>
#include <tankwright/decisions/cases/water_case.hpp>
#include <tankwright/decisions/once.hpp>
#include <tankwright/decisions/system_state.hpp>
#include <tankwright/plan/build.hpp>

namespace tankwright::decisions {

/// The plan, the shared state, and the cases of its sections. A case is asked for only where the plan has its section;
/// each throws what kept it from being worked out, which silences the findings that need it and no others.
class situation {
 public:
  explicit situation(const plan::build& build) : plan_{&build} {}
  /// With the shared state as the caller knows it, whatever the sections would make of it.
  situation(const plan::build& build, system_state known) : plan_{&build} {
    (void)state_.get([&] { return std::move(known); });
  }
  situation(const situation&) = delete;
  situation& operator=(const situation&) = delete;

  [[nodiscard]] const plan::build& plan() const noexcept { return *plan_; }
  /// Volumes, surfaces, flow and water as the sections give them; what cannot be worked out is missing.
  [[nodiscard]] const system_state& state() const;
  /// Temperature, salinity and air alone, which need no volumes.
  [[nodiscard]] const water_basis& basis() const;
  [[nodiscard]] const leak_test_case& hold() const;
  [[nodiscard]] const vessel_case& vessel() const;
  [[nodiscard]] const plumbing_case& plumbing() const;
  [[nodiscard]] const water_case& water() const;
  [[nodiscard]] const room_case& room() const;
  [[nodiscard]] const life_case& life() const;

 private:
  const plan::build* plan_;
  once<system_state> state_{};
  once<water_basis> basis_{};
  once<leak_test_case> hold_{};
  once<vessel_case> vessel_{};
  once<plumbing_case> plumbing_{};
  once<water_case> water_{};
  once<room_case> room_{};
  once<life_case> life_{};
};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/situation.ipp>
#endif
