// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the engines take of the section [vessel]: a shape, what lies in it, panels, floor, braces, lids, and the view.
#pragma once

#include <optional>
#include <string>
#include <tankwright/plan/vessel.hpp>
#include <tankwright/vessel/beam.hpp>
#include <tankwright/vessel/floor.hpp>
#include <tankwright/vessel/item.hpp>
#include <tankwright/vessel/lid.hpp>
#include <tankwright/vessel/panel.hpp>
#include <tankwright/vessel/sand.hpp>
#include <tankwright/vessel/shape.hpp>
#include <tankwright/vessel/view.hpp>
#include <vector>

namespace tankwright::plan {

/// A sloped bed, by the label of its sand.
struct sloped_sand {
  std::string label;
  tankwright::vessel::bed_slope slope;
};

/// A panel and where it sits in its wall.
struct wall_panel {
  tankwright::vessel::panel panel;
  length lower_edge;  ///< above the floor inside; more than 0 for a window in a wall
};

/// What the display stands on.
struct floor_inputs {
  mass tank_and_stand;  ///< empty
  area footprint;       ///< outline of the stand
  std::optional<area> bearing{};
  tankwright::vessel::floor_live_load code = tankwright::vessel::living_rooms;
  bool sump_below = true;  ///< the sump stands within the footprint
};

/// Equal cross-braces between the rails along the top of two walls.
struct brace_inputs {
  length rail;         ///< along the wall, between its ends
  length rail_height;  ///< above the floor inside
  int braces;          ///< between the ends of the rail
  length span;         ///< of a brace, from rail to rail
  length breadth;
  length depth;  ///< upright
  tankwright::vessel::panel_material material;
  std::vector<tankwright::vessel::point_load> on_it{};  ///< places from one end
  std::optional<force> joint{};                         ///< the pull that the fixing at each end holds for good
  std::string label = "brace";
};

/// The nearest rock behind the front panel.
struct view_inputs {
  tankwright::vessel::underwater_view rock;
  length least_clearance;
};

/// The display with what is in it and on it.
struct vessel_inputs {
  tankwright::vessel::shape display;  ///< inside
  length water_level;                 ///< above the floor inside, while the pump runs
  std::vector<tankwright::vessel::item> sand{};
  std::vector<sloped_sand> slopes{};
  std::vector<tankwright::vessel::item> rock{};
  std::vector<tankwright::vessel::item> equipment{};
  std::vector<wall_panel> panels{};
  std::vector<length> stages{};  ///< levels at which the first fill pauses, rising
  std::optional<floor_inputs> floor{};
  std::optional<brace_inputs> brace{};
  std::vector<tankwright::vessel::lid> lids{};
  double lid_span_over_sag = 240.0;
  std::optional<view_inputs> view{};

  /// Sand, rock and equipment, one after the other.
  [[nodiscard]] std::vector<tankwright::vessel::item> items() const;
};

/// The hollow that holds the water.
///
/// @param s a section with the keys of its shape
/// @return  the shape between the inner faces
/// @throws  invalid_input (a key of the outline is missing, or nothing is left between the walls)
/// @accuracy exact
/// @source  geometry
[[nodiscard]] tankwright::vessel::shape shape_of(const vessel_section& s);

/// The slope of a bed that has one.
///
/// @param s a bed of sand
/// @return  its slope; none for a level bed
/// @throws  invalid_input (a depth of the slope is missing)
/// @accuracy exact
/// @source  this library
[[nodiscard]] std::optional<tankwright::vessel::bed_slope> slope_of(const sand& s);

/// A bed of sand as the engines take it.
///
/// @param s       by depth, by mass, or by its slope
/// @param display the hollow that it lies in
/// @param label   what it is called
/// @return        the item
/// @throws        invalid_input (a key is missing, or cannot be)
/// @accuracy      as `sand_bed` and `sand_by_mass`
/// @source        this library
[[nodiscard]] tankwright::vessel::item item_of(const sand& s, const tankwright::vessel::shape& display,
                                               std::string label);

/// Rock as the engines take it.
///
/// @param s       by mass, by its weight under water, or by the rise of the level
/// @param display the hollow that it lies in
/// @param label   what it is called
/// @return        the item
/// @throws        invalid_input (a key is missing, or cannot be), out_of_range (the water that it hung in)
/// @accuracy      as `rock_by_mass`, `rock_weighed_under_water` and `rock_by_level_rise`
/// @source        this library
[[nodiscard]] tankwright::vessel::item item_of(const rock& s, const tankwright::vessel::shape& display,
                                               std::string label);

/// Equipment as the engines take it.
///
/// @param s     by its outside volume
/// @param label what it is called
/// @return      the item
/// @throws      invalid_input (a key is missing, or cannot be)
/// @accuracy    exact
/// @source      this library
[[nodiscard]] tankwright::vessel::item item_of(const equipment& s, std::string label);

/// The section as the engines take it.
///
/// @param s a section that `validate` accepts
/// @return  the shape, and what is in it and on it
/// @throws  invalid_input, out_of_range (names the key that is missing, or the thing that cannot be)
/// @accuracy exact
/// @source  this library
[[nodiscard]] vessel_inputs inputs_of(const vessel_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/inputs/vessel_inputs.ipp>
#endif
