// SPDX-License-Identifier: BSL-1.0
/// @file
/// The display of a plan: what it is, what is in it and on it. The key [vessel].
#pragma once

#include <string>
#include <tankwright/core/units.hpp>
#include <tankwright/plan/description.hpp>
#include <tankwright/vessel/panel_edges.hpp>
#include <vector>

namespace tankwright::plan {

enum class display_shape { box, cylinder, bow_front };
enum class measured_at { inside, outside };
enum class sand_kind { aragonite, quartz };
enum class rock_kind { reef_rock, branch_tips };
enum class sheet_material { annealed_glass, cast_acrylic };
enum class pane_material { glass, acrylic };
enum class room_use { living, sleeping };

/// A bed of sand, by its depth, by the bag, or by the two depths of a slope.
struct sand {
  std::string label{};
  word<sand_kind> kind = word_by_default(sand_kind::aragonite);
  value<length> depth{};
  value<tankwright::mass> mass{};
  value<length> shallow_end{};
  value<length> deep_end{};
  value<length> run{};
  value<angle> repose{};
  value<tankwright::area> area{};
  value<tankwright::length> grain{};
  value<tankwright::mass> bag{};
  std::string note{};
};

/// Rock, by its mass (and by its weight under water), or by how far it raised the water.
struct rock {
  std::string label{};
  word<rock_kind> kind = word_by_default(rock_kind::reef_rock);
  value<mass> dry_mass{};
  value<mass> submerged_mass{};
  value<mass> soaked_mass{};
  value<practical_salinity> salinity{};
  value<tankwright::temperature> temperature{};
  value<proportion> flooded_pores{};
  value<length> level_before{};
  value<length> level_after{};
  std::string note{};
};

struct equipment {
  std::string label{};
  value<tankwright::volume> volume{};
  value<tankwright::mass> mass{};
  std::string note{};
};

/// A pane between its supports.
struct panel {
  std::string label{};
  value<length> width{};
  value<length> height{};
  value<length> lower_edge = by_default(metres(0.0));
  value<length> thickness{};
  word<tankwright::vessel::panel_edges> edges{};
  word<sheet_material> material{};
  value<stress> allowable{};
  std::string note{};
};

/// What the display stands on. The key [vessel.floor].
struct floor_under {
  value<mass> tank_and_stand{};
  value<area> footprint{};
  value<area> bearing{};
  value<pressure> built_for{};
  word<room_use> room{};
  flag sump_below = flag::by_default(true);
  std::string note{};
};

/// A light, or what else stands or hangs on a brace.
struct brace_load {
  std::string label{};
  value<tankwright::mass> mass{};
  value<length> at{};
  std::string note{};
};

/// Equal cross-braces between the rails along the top of two walls.
struct brace {
  std::string label{};
  value<double> count = by_default(1.0);
  value<length> rail{};
  value<length> rail_height{};
  value<length> span{};
  value<length> breadth{};
  value<length> depth{};
  word<sheet_material> material{};
  value<stress> modulus{};
  value<stress> allowable{};
  value<mass_density> density{};
  value<force> joint{};
  std::vector<brace_load> load{};
  std::string note{};
};

/// A cover on two edges.
struct lid {
  std::string label{};
  value<length> span{};
  value<length> thickness{};
  word<sheet_material> material{};
  value<stress> allowable{};
  value<pressure> extra_load = by_default(pascals(0.0));
  value<double> moisture_strain = by_default(0.0);
  value<length> width{};
  value<double> lifted_by = by_default(1.0);
  value<length> reach = by_default(metres(0.5));
  value<length> above_feet{};
  std::string note{};
};

enum class sheet_spans { one, three_or_more };

/// A wall of plywood between its frames.
struct plywood_wall {
  std::string label{};
  value<length> spacing{};
  value<length> lower_edge = by_default(metres(0.0));
  value<length> thickness{};
  value<stress> strength{};
  value<stress> modulus{};
  word<sheet_spans> spans = word_by_default(sheet_spans::one);
  value<double> span_over_sag = by_default(300.0);
  std::string note{};
};

/// A rail along the top of a wall, which the water pushes outwards.
struct top_rail {
  std::string label{};
  value<tankwright::length> length{};
  value<tankwright::length> height{};
  value<double> braces{};
  value<tankwright::length> breadth{};
  value<tankwright::length> depth{};
  value<stress> modulus{};
  value<stress> allowable{};
  value<double> span_over_sag = by_default(500.0);
  std::string note{};
};

/// A corner of wood, with its screws, its glue, or both.
struct corner_joint {
  std::string label{};
  value<length> wall_width{};
  value<length> lower_edge = by_default(metres(0.0));
  value<length> screw_diameter{};
  value<length> penetration{};
  value<length> spacing{};
  value<double> gravity{};
  value<length> glue_width{};
  value<stress> glue_shear{};
  std::string note{};
};

/// A seam of silicone that holds a pane.
struct silicone_seam {
  std::string label{};
  value<length> pane_width{};
  value<length> lower_edge = by_default(metres(0.0));
  value<length> bite{};
  value<length> gap{};
  value<length> movement{};
  value<proportion> stretches = by_default(percent(25.0));
  std::string note{};
};

/// A hole with a fitting in it.
struct bulkhead {
  std::string label{};
  value<length> hole{};
  value<length> height{};
  value<length> to_edge{};
  value<length> thickness{};
  word<pane_material> pane = word_by_default(pane_material::glass);
  flag toughened{};
  value<length> gasket{};
  value<length> unevenness{};
  std::string note{};
};

/// How the nearest rock looks through the front.
struct view_through {
  value<length> nearest_rock{};
  word<pane_material> panel = word_by_default(pane_material::glass);
  value<length> thickness = by_default(metres(0.0));
  value<length> least_clearance = by_default(inches(18.0));
  std::string note{};
};

/// [vessel]
struct vessel_section {
  std::string label{};
  word<display_shape> shape = word_by_default(display_shape::box);
  word<measured_at> measured = word_by_default(measured_at::inside);
  value<tankwright::length> wall_thickness{};
  value<tankwright::length> floor_thickness{};
  value<tankwright::length> length{};
  value<tankwright::length> width{};
  value<tankwright::length> diameter{};
  value<tankwright::length> bow{};
  value<tankwright::length> height{};
  value<tankwright::length> water_level{};
  values<tankwright::length> stages{};
  value<flow_rate> hose{};
  value<volume> metered{};
  value<proportion> metered_within = by_default(percent(3.0));
  value<tankwright::length> out_of_level{};
  value<double> lid_span_over_sag = by_default(240.0);
  std::vector<plan::sand> sand{};
  std::vector<plan::rock> rock{};
  std::vector<plan::equipment> equipment{};
  std::vector<plan::panel> panel{};
  std::optional<floor_under> floor{};
  std::optional<plan::brace> brace{};
  std::vector<plan::lid> lid{};
  std::vector<plywood_wall> plywood{};
  std::vector<plan::top_rail> top_rail{};
  std::vector<corner_joint> joint{};
  std::vector<silicone_seam> seam{};
  std::vector<plan::bulkhead> bulkhead{};
  std::optional<view_through> view{};
  std::string note{};
};

void describe(visitor& key, sand& s);
void describe(visitor& key, rock& s);
void describe(visitor& key, equipment& s);
void describe(visitor& key, panel& s);
void describe(visitor& key, floor_under& s);
void describe(visitor& key, brace_load& s);
void describe(visitor& key, brace& s);
void describe(visitor& key, lid& s);
void describe(visitor& key, plywood_wall& s);
void describe(visitor& key, top_rail& s);
void describe(visitor& key, corner_joint& s);
void describe(visitor& key, silicone_seam& s);
void describe(visitor& key, bulkhead& s);
void describe(visitor& key, view_through& s);
void describe(visitor& key, vessel_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/vessel.ipp>
#endif
