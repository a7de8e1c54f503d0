// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/core/span_of.hpp>
#include <tankwright/decisions/cases/vessel_case.hpp>
#include <tankwright/decisions/decision.hpp>
#include <tankwright/water/density.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE mass_density vessel_case::density() const {
  if (water_density) return *water_density;
  constexpr double none = __builtin_nan("");
  throw out_of_range{why_no_density,
                     {"tankwright::decisions::density", "density of the water", none, none, none, {}, {}}};
}

TANKWRIGHT_INLINE const vessel::water_content& vessel_case::contents() const {
  if (content) return *content;
  constexpr double none = __builtin_nan("");
  throw invalid_input{why_no_content, {"tankwright::decisions::contents", "contents", none, none, none, {}, {}}};
}

TANKWRIGHT_INLINE vessel_case case_of(const plan::vessel_section& s, const water_basis& water) {
  vessel_case c{.in = plan::inputs_of(s)};
  try {
    c.water_density = water::density(water.salinity, water.temperature);
  } catch (const error& mistake) {
    c.why_no_density = c.why_no_content = answers::reason_of(mistake);
    return c;
  }
  try {
    const std::vector<vessel::item> items = c.in.items();
    c.content = vessel::water_in({.gross = vessel::filled_volume(c.in.display, c.in.water_level),
                                  .items = core::span_of(items),
                                  .water_density = *c.water_density});
  } catch (const error& mistake) {
    c.why_no_content = answers::reason_of(mistake);
  }
  return c;
}

TANKWRIGHT_INLINE void add_to(system_state& state, const vessel_case& c) {
  if (c.content) {
    state.display_water = map_rising(c.content->net, [](const vessel::net_volume& v) { return v.value(); });
    state.solids = map_rising(c.content->solids, [](const vessel::solid_volume& v) { return v.value(); });
  } else {
    state.why_no_display = c.why_no_content;
  }
  state.display_surface = vessel::plan_area(c.in.display, c.in.water_level);
  state.display_depth = c.in.water_level;
}

}  // namespace tankwright::decisions
