// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does the top frame carry, and what does a cross-brace pull? A panel held at its top leans on the rail along its
/// edge, and the rail hangs on the braces as a continuous beam: a brace gets more than "its share" of the length.
#pragma once

#include <string>
#include <vector>

#include <tankwright/vessel/beam.hpp>
#include <tankwright/vessel/hydrostatic.hpp>

namespace tankwright::vessel {

/// Load along the two horizontal rails that hold a panel.
struct rail_loads {
  line_load top;
  line_load bottom;
  tankwright::caution caution;
};

/// A panel between a bottom and a top rail.
struct railed_panel {
  required<length> height;  ///< between the rails
  required<length> level;   ///< of the water above the bottom rail
  required<mass_density> water_density;
  std::string label = "panel";
};

/// What a panel puts on the rails along its bottom and top edge.
///
///   top = F c / H,  bottom = F - top;   with the water at the top rail: rho g H^2/6 and rho g H^2/3
///
/// @param panel height [m] > 0, level [m] >= 0, water density [kg/m^3] > 0
/// @return      load along each rail [N/m]
/// @throws      invalid_input
/// @accuracy    exact for a strip between the rails; near the corners the side panels take a part of it
/// @source      statics
[[nodiscard]] inline rail_loads rails_of(const railed_panel& panel) {
  const length metre = length::from_value(1.0);
  const water_push push = push_on({.width = metre,
                                   .height = panel.height,
                                   .level = panel.level,
                                   .water_density = panel.water_density,
                                   .label = panel.label});
  const line_load all = push.force / metre;
  const line_load top = all * (push.centre.value() / panel.height->value());
  return {top, all - top, structural_caution};
}

/// A rail that is held at both ends and by braces at equal distances between.
struct braced_rail {
  required<length> rail;     ///< from end to end
  required<int> braces;      ///< [1] between the ends
  required<line_load> load;  ///< along it, from `rails_of`
};

struct brace_pull {
  std::vector<force> braces;  ///< tension in each, along the rail
  force largest;
  force by_tributary_length;  ///< load times spacing: what a share of the length would give, too little
  line_load load;
  tankwright::caution caution;
};

/// Tension in the cross-braces that hold a rail.
///
///   reactions of a continuous beam on equal spans; one brace: 5/4 of load times half the rail
///
/// @param rail length [m] > 0; number of braces, 1 to 20; load [N/m] >= 0
/// @return     tension in each brace [N]
/// @throws     invalid_input
/// @accuracy   exact for a rail that runs through over stiff braces
/// @source     Euler-Bernoulli beam theory
[[nodiscard]] inline brace_pull pull_of_braces(const braced_rail& rail) {
  constexpr std::string_view here = "tankwright::vessel::pull_of_braces";
  const double l = rail.rail->value(), spans = rail.braces.get() + 1.0;
  core::check(here, detail::positive_length("rail"), l);
  core::check(here, {"number of braces", "", {1.0, 20.0}}, rail.braces.get());
  core::check(here, {"load", "N/m", detail::possible_force_from_zero}, rail.load->value());
  std::vector<beam_support> supports;
  for (int i = 0; i <= rail.braces.get() + 1; ++i) supports.push_back({.at = length::from_value(l * (i / spans))});
  // The reactions do not depend on the section.
  const auto result =
      bend({.span = rail.rail,
            .section = rectangular_section({.breadth = rail.rail, .depth = rail.rail}),
            .modulus = stress::from_value(1.0),
            .supports = supports,
            .spreads = {{.at_start = rail.load, .at_end = rail.load, .from = length::from_value(0.0), .to = rail.rail}},
            .label = "rail"});
  brace_pull pull{
      {}, force::from_value(0.0), rail.load.get() * length::from_value(l / spans), rail.load, structural_caution};
  for (std::size_t i = 1; i + 1 < result.reactions.size(); ++i) {
    pull.braces.push_back(result.reactions[i].up);
    if (result.reactions[i].up > pull.largest) pull.largest = result.reactions[i].up;
  }
  return pull;
}

}  // namespace tankwright::vessel
