// SPDX-License-Identifier: BSL-1.0
/// @file
/// The whole build, described once. Every section may be missing: what cannot be answered then says what it needs.
#pragma once

#include <optional>
#include <string>

#include <tankwright/commissioning/hold_section.hpp>
#include <tankwright/commissioning/life_plan.hpp>
#include <tankwright/commissioning/plumbing_plan.hpp>
#include <tankwright/commissioning/room_plan.hpp>
#include <tankwright/commissioning/vessel_plan.hpp>
#include <tankwright/commissioning/water_plan.hpp>

namespace tankwright::commissioning {

/// A plan, section by section, in the order of the job.
struct plan {
  std::string title{};
  std::optional<hold_section> hold{};
  std::optional<vessel_plan> vessel{};
  std::optional<plumbing_plan> plumbing{};
  std::optional<water_plan> water{};
  std::optional<room_plan> room{};
  std::optional<life_plan> life{};
};

}  // namespace tankwright::commissioning
