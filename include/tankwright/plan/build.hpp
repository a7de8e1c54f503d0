// SPDX-License-Identifier: BSL-1.0
/// @file
/// The build as a person describes it: a plan. Its fields are the keys of a plan file, and nothing is in it twice. What
/// is not given is not asked.
#pragma once

#include <optional>
#include <string>
#include <tankwright/plan/hold.hpp>
#include <tankwright/plan/life.hpp>
#include <tankwright/plan/plumbing.hpp>
#include <tankwright/plan/room.hpp>
#include <tankwright/plan/vessel.hpp>
#include <tankwright/plan/water.hpp>
#include <tankwright/text/quantity.hpp>

namespace tankwright::plan {

/// The newest form of plan files that this version reads; a plan may say which it was written for.
inline constexpr double newest_format = 1.0;

/// A plan. Sections that are left out are not assessed.
struct build {
  value<double> format{};
  std::string title{};
  word<text::unit_system> units = word_by_default(text::unit_system::si);  ///< of its report
  std::optional<vessel_section> vessel{};
  std::optional<hold_section> hold{};
  std::optional<plumbing_section> plumbing{};
  std::optional<water_section> water{};
  std::optional<room_section> room{};
  std::optional<life_section> life{};
  std::string note{};
};

void describe(visitor& key, build& b);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/build.ipp>
#endif
