// SPDX-License-Identifier: BSL-1.0
// Written by tests/lint/constants.py. What the constants must be: tests/reference/vessel/constants.csv.
#include <tankwright/vessel.hpp>

#include "support/constants.hpp"

TEST_CASE("vessel: limits, presets, defaults, cautions and sources are what the table says") {
  tankwright::testing::constants_by_name all;
  TW_CONSTANT(vessel::straight_edge_with_feelers);
  TW_CONSTANT(vessel::straight_edge_by_eye);
  TW_CONSTANT(vessel::dial_indicator);
  TW_CONSTANT(vessel::structural_caution);
  TW_CONSTANT(vessel::panel_caution);
  TW_CONSTANT(vessel::floor_caution);
  TW_CONSTANT(vessel::displacement_caution);
  TW_CONSTANT(vessel::fixings_caution);
  TW_CONSTANT(vessel::silicone_sustained_tension);
  TW_CONSTANT(vessel::soft_elastomer);
  TW_CONSTANT(vessel::hard_elastomer);
  TW_CONSTANT(vessel::least_squeeze);
  TW_CONSTANT(vessel::most_squeeze);
  TW_CONSTANT(vessel::gasket_thickness_limits);
  TW_CONSTANT(vessel::living_rooms);
  TW_CONSTANT(vessel::sleeping_rooms);
  TW_CONSTANT(vessel::en_572);
  TW_CONSTANT(vessel::astm_e1300_thickness);
  TW_CONSTANT(vessel::float_glass_sizes);
  TW_CONSTANT(vessel::bucher_1998);
  TW_CONSTANT(vessel::crane_2007);
  TW_CONSTANT(vessel::aragonite);
  TW_CONSTANT(vessel::calcite);
  TW_CONSTANT(vessel::quartz);
  TW_CONSTANT(vessel::simple_cubic_packing);
  TW_CONSTANT(vessel::closest_packing);
  TW_CONSTANT(vessel::aragonite_sand);
  TW_CONSTANT(vessel::quartz_sand);
  TW_CONSTANT(vessel::reef_rock);
  TW_CONSTANT(vessel::coral_branch_tips);
  TW_CONSTANT(vessel::nds_wood_screws);
  TW_CONSTANT(vessel::astm_c1048);
  TW_CONSTANT(vessel::silicone_seam_tension);
  TW_CONSTANT(vessel::screw_gravity_limits);
  TW_CONSTANT(vessel::screw_diameter_limits);
  TW_CONSTANT(vessel::screw_penetration_limits);
  TW_CONSTANT(vessel::screw_factor_limits);
  TW_CONSTANT(vessel::water_drop);
  TW_CONSTANT(vessel::awwa_d110);
  TW_CONSTANT(vessel::awwa_1978);
  TW_CONSTANT(vessel::bs_5337);
  TW_CONSTANT(vessel::aci_350_025);
  TW_CONSTANT(vessel::household_leak);
  TW_CONSTANT(vessel::leak_test_caution);
  TW_CONSTANT(vessel::niosh_94_110);
  TW_CONSTANT(vessel::lifting_caution);
  TW_CONSTANT(vessel::reach_limits);
  TW_CONSTANT(vessel::hand_height_limits);
  TW_CONSTANT(vessel::travel_limits);
  TW_CONSTANT(vessel::coupling_limits);
  TW_CONSTANT(vessel::astm_e1300);
  TW_CONSTANT(vessel::glass_deflection_limit);
  TW_CONSTANT(vessel::acrylic_deflection_limit);
  TW_CONSTANT(vessel::annealed_glass_allowables);
  TW_CONSTANT(vessel::annealed_glass_edges);
  TW_CONSTANT(vessel::cast_acrylic_long_term_stress);
  TW_CONSTANT(vessel::annealed_glass);
  TW_CONSTANT(vessel::cast_acrylic);
  TW_CONSTANT(vessel::glass_permanent_load_factor);
  TW_CONSTANT(vessel::timoshenko_1959);
  TW_CONSTANT(vessel::usual_panels);
  TW_CONSTANT(vessel::usual_largest_width);
  TW_CONSTANT(vessel::usual_largest_height);
  TW_CONSTANT(vessel::nds_wood);
  TW_CONSTANT(vessel::wood_permanent_load_factor);
  TW_CONSTANT(vessel::wood_panel_creep_factor);
  TW_CONSTANT(vessel::default_repose);
  TW_CONSTANT(vessel::seawater_index);
  TW_CONSTANT(vessel::fresh_water_index);
  TW_CONSTANT(vessel::acrylic_index);
  TW_CONSTANT(vessel::glass_index);
  TW_CONSTANT(vessel::air_index);
  TW_CONSTANT(vessel::usual_clearance);
  tankwright::testing::check_constants("vessel", all);
}
