// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/bottom/floor_load.hpp>
#include <tankwright/decisions/bottom/net_water.hpp>
#include <tankwright/decisions/bottom/rock_weight.hpp>
#include <tankwright/decisions/bottom/sand_bed.hpp>
#include <tankwright/decisions/closing/cable_gap.hpp>
#include <tankwright/decisions/closing/cooling.hpp>
#include <tankwright/decisions/closing/cross_brace.hpp>
#include <tankwright/decisions/closing/drying.hpp>
#include <tankwright/decisions/closing/evaporation.hpp>
#include <tankwright/decisions/closing/heat_week.hpp>
#include <tankwright/decisions/closing/heater.hpp>
#include <tankwright/decisions/closing/heater_sticks.hpp>
#include <tankwright/decisions/closing/heater_time.hpp>
#include <tankwright/decisions/closing/humidity.hpp>
#include <tankwright/decisions/closing/lid_lift.hpp>
#include <tankwright/decisions/closing/lid_sag.hpp>
#include <tankwright/decisions/closing/light_heat.hpp>
#include <tankwright/decisions/closing/lights.hpp>
#include <tankwright/decisions/closing/outage.hpp>
#include <tankwright/decisions/closing/outage_rate.hpp>
#include <tankwright/decisions/closing/outage_warm.hpp>
#include <tankwright/decisions/closing/reservoir.hpp>
#include <tankwright/decisions/closing/rock_view.hpp>
#include <tankwright/decisions/closing/top_off_fails.hpp>
#include <tankwright/decisions/closing/top_off_sticks.hpp>
#include <tankwright/decisions/closing/wall.hpp>
#include <tankwright/decisions/closing/warm_up.hpp>
#include <tankwright/decisions/closing/window.hpp>
#include <tankwright/decisions/closing/year_of_room.hpp>
#include <tankwright/decisions/first_fill/bulkhead_holes.hpp>
#include <tankwright/decisions/first_fill/corner_joints.hpp>
#include <tankwright/decisions/first_fill/drips.hpp>
#include <tankwright/decisions/first_fill/fill_stages.hpp>
#include <tankwright/decisions/first_fill/gaskets.hpp>
#include <tankwright/decisions/first_fill/hose_fill.hpp>
#include <tankwright/decisions/first_fill/leak.hpp>
#include <tankwright/decisions/first_fill/leak_test_duration.hpp>
#include <tankwright/decisions/first_fill/metered_water.hpp>
#include <tankwright/decisions/first_fill/out_of_level.hpp>
#include <tankwright/decisions/first_fill/panels.hpp>
#include <tankwright/decisions/first_fill/plywood_walls.hpp>
#include <tankwright/decisions/first_fill/silicone_seams.hpp>
#include <tankwright/decisions/first_fill/tested_parts.hpp>
#include <tankwright/decisions/first_fill/top_rails.hpp>
#include <tankwright/decisions/moving_in/acclimation.hpp>
#include <tankwright/decisions/moving_in/alkalinity.hpp>
#include <tankwright/decisions/moving_in/dose_cleared.hpp>
#include <tankwright/decisions/moving_in/feed_today.hpp>
#include <tankwright/decisions/moving_in/filter_later.hpp>
#include <tankwright/decisions/moving_in/filter_today.hpp>
#include <tankwright/decisions/moving_in/free_ammonia.hpp>
#include <tankwright/decisions/moving_in/grown_up.hpp>
#include <tankwright/decisions/moving_in/hardness_unattended.hpp>
#include <tankwright/decisions/moving_in/new_arrivals.hpp>
#include <tankwright/decisions/moving_in/nitrogen_load.hpp>
#include <tankwright/decisions/moving_in/oxygen_in_power_cut.hpp>
#include <tankwright/decisions/moving_in/quarantine.hpp>
#include <tankwright/decisions/moving_in/room_to_swim.hpp>
#include <tankwright/decisions/moving_in/skimmer_cup_days.hpp>
#include <tankwright/decisions/moving_in/start_up.hpp>
#include <tankwright/decisions/moving_in/timetable.hpp>
#include <tankwright/decisions/moving_in/transport_bags.hpp>
#include <tankwright/decisions/plumbing/backup_power.hpp>
#include <tankwright/decisions/plumbing/circuit_load.hpp>
#include <tankwright/decisions/plumbing/drain_blocked.hpp>
#include <tankwright/decisions/plumbing/drain_noise.hpp>
#include <tankwright/decisions/plumbing/drains.hpp>
#include <tankwright/decisions/plumbing/drains_blocked.hpp>
#include <tankwright/decisions/plumbing/fittings_cost.hpp>
#include <tankwright/decisions/plumbing/jet_reach.hpp>
#include <tankwright/decisions/plumbing/one_pump_stops.hpp>
#include <tankwright/decisions/plumbing/overflow_head.hpp>
#include <tankwright/decisions/plumbing/pipe_velocity.hpp>
#include <tankwright/decisions/plumbing/pump_choice.hpp>
#include <tankwright/decisions/plumbing/pump_suction.hpp>
#include <tankwright/decisions/plumbing/residual_current.hpp>
#include <tankwright/decisions/plumbing/return_flow.hpp>
#include <tankwright/decisions/plumbing/sump_runs_over.hpp>
#include <tankwright/decisions/plumbing/surge.hpp>
#include <tankwright/decisions/plumbing/turnover.hpp>
#include <tankwright/decisions/power_cut/break_blocked.hpp>
#include <tankwright/decisions/power_cut/check_valve_leaks.hpp>
#include <tankwright/decisions/power_cut/dry_floor.hpp>
#include <tankwright/decisions/power_cut/outlet_depth.hpp>
#include <tankwright/decisions/power_cut/pump_restart.hpp>
#include <tankwright/decisions/power_cut/running_level.hpp>
#include <tankwright/decisions/power_cut/top_off_stuck_power_cut.hpp>
#include <tankwright/decisions/running/consumables.hpp>
#include <tankwright/decisions/running/devices_of_the_year.hpp>
#include <tankwright/decisions/running/running_cost.hpp>
#include <tankwright/decisions/running/water_of_the_year.hpp>
#include <tankwright/decisions/salting/ammonia.hpp>
#include <tankwright/decisions/salting/doses.hpp>
#include <tankwright/decisions/salting/instrument_check.hpp>
#include <tankwright/decisions/salting/match.hpp>
#include <tankwright/decisions/salting/mix.hpp>
#include <tankwright/decisions/salting/mixing_schedule.hpp>
#include <tankwright/decisions/salting/moved_water.hpp>
#include <tankwright/decisions/salting/oxygen.hpp>
#include <tankwright/decisions/salting/readings.hpp>
#include <tankwright/decisions/salting/target.hpp>
#include <tankwright/decisions/salting/unknown_instrument.hpp>
#include <tankwright/decisions/salting/weighed_salinity.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/plan/names.hpp>
#include <tankwright/plan/validate.hpp>

namespace tankwright::decisions {

namespace detail {

inline constexpr const decision* every_decision[] = {
    // first fill
    &panels,
    &fill_stages,
    &hose_fill,
    &metered_water,
    &out_of_level,
    &plywood_walls,
    &top_rails,
    &corner_joints,
    &silicone_seams,
    &bulkhead_holes,
    &gaskets,
    &leak,
    &tested_parts,
    &drips,
    &leak_test_duration,
    // plumbing
    &return_flow,
    &one_pump_stops,
    &fittings_cost,
    &pump_choice,
    &pipe_velocity,
    &turnover,
    &overflow_head,
    &drains,
    &drain_noise,
    &drain_blocked,
    &drains_blocked,
    &surge,
    &sump_runs_over,
    &pump_suction,
    &jet_reach,
    &circuit_load,
    &residual_current,
    &backup_power,
    // power cut
    &dry_floor,
    &break_blocked,
    &check_valve_leaks,
    &top_off_stuck_power_cut,
    &running_level,
    &outlet_depth,
    &pump_restart,
    // filling the bottom
    &sand_bed,
    &rock_weight,
    &net_water,
    &floor_load,
    // salting
    &salt_target,
    &salt_mix,
    &mixing_schedule,
    &moved_water,
    &doses,
    &instrument_readings,
    &instrument_check,
    &unknown_instrument,
    &weighed_salinity,
    &salinity_match,
    &saturation_oxygen,
    &ammonia_free_part,
    // closing the top
    &cross_brace,
    &lid_sag,
    &lid_lift,
    &rock_view,
    &daily_evaporation,
    &cable_gap,
    &room_humidity,
    &year_of_room,
    &drying_methods,
    &dripping_window,
    &outside_wall,
    &heater_choice,
    &heater_time,
    &summer_cooling,
    &heat_week,
    &lights,
    &light_heat,
    &warm_up_time,
    &heater_sticks,
    &heat_outage,
    &outage_rate,
    &outage_warm,
    &reservoir_time,
    &top_off_fails,
    &top_off_sticks,
    // moving in
    &nitrogen_load,
    &filter_today,
    &feed_today,
    &filter_later,
    &grown_up,
    &free_ammonia,
    &start_up,
    &timetable,
    &alkalinity,
    &hardness_unattended,
    &oxygen_in_power_cut,
    &dose_cleared,
    &new_arrivals,
    &acclimation,
    &transport_bags,
    &quarantine,
    &skimmer_cup_days,
    &room_to_swim,
    // running
    &running_cost,
    &devices_of_the_year,
    &water_of_the_year,
    &consumables,
};

inline void refuse_mistakes(const plan::build& build) {
  if (auto mistakes = plan::validate(build); !mistakes.empty()) throw plan::invalid_plan{std::move(mistakes)};
}

}  // namespace detail

TANKWRIGHT_INLINE std::span<const decision* const> all_decisions() noexcept { return detail::every_decision; }

TANKWRIGHT_INLINE assessment assess(const plan::build& build) {
  detail::refuse_mistakes(build);
  const situation s{build};
  answers out;
  out.reserve(std::size(detail::every_decision));
  for (const decision* d : detail::every_decision) out.run(*d, s);
  return {build.title, out.take()};
}

TANKWRIGHT_INLINE std::vector<finding> assess_one(const plan::build& build, std::string_view id) {
  std::vector<std::string> known;
  for (const decision* d : detail::every_decision) {
    if (d->id != id) {
      known.emplace_back(d->id);
      continue;
    }
    detail::refuse_mistakes(build);
    const situation s{build};
    answers out;
    out.run(*d, s);
    return out.take();
  }
  constexpr double none = __builtin_nan("");
  const std::string nearest = plan::nearest_name(id, known);
  throw invalid_input{
      std::string{id} + " is not a decision" + (nearest.empty() ? "" : "; did you mean " + nearest + "?"),
      {"tankwright::decisions::assess_one", std::string{id}, none, none, none, {}, {}}};
}

}  // namespace tankwright::decisions
