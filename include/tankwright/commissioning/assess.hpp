// SPDX-License-Identifier: BSL-1.0
/// @file
/// One call for the whole plan: every decision of the job, in order, from one description.
#pragma once

#include <tankwright/commissioning/assessment.hpp>
#include <tankwright/commissioning/closing_plan.hpp>
#include <tankwright/commissioning/plan.hpp>
#include <tankwright/commissioning/power_cut_plan.hpp>

namespace tankwright::commissioning {

namespace detail {

inline void append(assessment& all, std::vector<finding> findings) {
  for (finding& f : findings) all.findings.push_back(std::move(f));
}

/// The salting day makes the water that the vessel and the sump hold, unless the plan says how much.
[[nodiscard]] inline water_plan with_volume(water_plan water, const system_state& state) {
  if (!water.new_water) water.new_water = state.all_water();
  return water;
}

}  // namespace detail

/// What the sections share: the water's temperature and salinity from its plan, net volumes and surfaces from vessel
/// and sump, the flow from the circuit. Without a vessel, the display holds what the sump does not of the water to be
/// made.
///
///   `describe` of the vessel, then of the plumbing
///
/// @param all the plan
/// @return    the state that every section is assessed with
/// @throws    invalid_input, out_of_range, no_convergence (from the functions used)
/// @accuracy  as its parts
/// @source    the sources of the sections
[[nodiscard]] inline system_state state_of(const plan& all) {
  system_state state;
  if (all.water) {
    state.water = all.water->temperature;
    state.salinity = detail::target_of(*all.water).central;
    state.air = all.water->air;
  }
  if (all.vessel) describe(state, *all.vessel);
  if (all.plumbing) describe(state, *all.plumbing);
  if (!state.display_water && all.water && all.water->new_water) {  // what the sump does not hold of the new water
    const auto& made = *all.water->new_water;
    const auto sump = state.sump_water.value_or(estimate<volume>{});
    if (made.low > sump.high) {
      state.display_water = {made.low - sump.high, made.central - sump.central, made.high - sump.low, made.reason};
    }
  }
  return state;
}

/// Every decision of the job that the plan allows, in the order of the job.
///
///   first fill, plumbing, power cut, filling the bottom, salting, closing the top, moving in; one `system_state` feeds
///   all of them, so that one net volume serves salt, heat, drain-down and animals
///
/// @param all the plan; missing sections are left out, missing parts are said
/// @return    the findings; their pictures are made by `figures_of`, when somebody looks
/// @throws    invalid_input, out_of_range, no_convergence (from the functions used; they name the element)
/// @accuracy  as its parts
/// @source    the sources of the sections, carried by each finding
[[nodiscard]] inline assessment assess(const plan& all) {
  assessment result{.title = all.title};
  result.findings.reserve(64);  // a whole plan has about fifty
  const system_state state = state_of(all);
  if (all.vessel) detail::append(result, assess_first_fill(*all.vessel, state));
  if (all.hold) detail::append(result, assess_hold(*all.hold));
  if (all.plumbing) {
    const auto circuit = detail::solved_circuit(*all.plumbing, state);  // both days live on one flow
    detail::append(result, detail::plumbing_findings(*all.plumbing, state, circuit));
    detail::append(result, detail::power_cut_findings(*all.plumbing, circuit));
  }
  if (all.vessel) detail::append(result, assess_bottom(*all.vessel, state));
  if (all.water) detail::append(result, assess_water(detail::with_volume(*all.water, state)));
  if (all.vessel) detail::append(result, assess_closing(closing_of(*all.vessel), state));
  if (all.room) detail::append(result, assess_room(*all.room, state));
  if (all.life) detail::append(result, assess_life(*all.life, state));
  return result;
}

/// The pictures of the findings, as data. They cost more than the findings: a slider asks for `assess` alone.
///
///   `figures_of` of the hold test, the plumbing, the room and the animals, with one `system_state`
///
/// @param all the plan
/// @return    figures that carry the id of their finding, in the order of the job
/// @throws    invalid_input, out_of_range, no_convergence (from the functions used; they name the element)
/// @accuracy  as its parts
/// @source    the sources of the sections
[[nodiscard]] inline std::vector<figure> figures_of(const plan& all) {
  std::vector<figure> figures;
  const auto append = [&](std::vector<figure> some) {
    for (figure& f : some) figures.push_back(std::move(f));
  };
  const system_state state = state_of(all);
  if (all.hold) append(figures_of(*all.hold));
  if (all.plumbing) append(figures_of(*all.plumbing, state));
  if (all.room) append(figures_of(*all.room, state));
  if (all.life) append(figures_of(*all.life, state));
  return figures;
}

}  // namespace tankwright::commissioning
