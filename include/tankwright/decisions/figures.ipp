// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/cases/hold_case.hpp>
#include <tankwright/decisions/figures.hpp>
#include <tankwright/decisions/figures/hold_figures.hpp>
#include <tankwright/decisions/figures/life_figures.hpp>
#include <tankwright/decisions/figures/plumbing_figures.hpp>
#include <tankwright/decisions/figures/room_figures.hpp>
#include <tankwright/decisions/figures/vessel_figures.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/plan/inputs/hold_inputs.hpp>
#include <tankwright/plan/validate.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE std::vector<figure> figures_of(const plan::build& build) {
  if (auto mistakes = plan::validate(build); !mistakes.empty()) throw plan::invalid_plan{std::move(mistakes)};
  std::vector<figure> all;
  const situation s{build};
  const auto draw = [&](auto make) {
    try {
      for (figure& f : make()) all.push_back(std::move(f));
    } catch (const error&) {
      // its finding says why
    }
  };
  draw([&] { return display_figures_of(build); });
  if (build.hold) draw([&] { return figures_of(case_of(plan::inputs_of(*build.hold))); });
  if (build.plumbing) draw([&] { return figures_of(s.plumbing()); });
  if (build.room) draw([&] { return figures_of(s.room()); });
  if (build.life) draw([&] { return figures_of(s.life()); });
  return all;
}

}  // namespace tankwright::decisions
