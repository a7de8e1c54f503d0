// SPDX-License-Identifier: BSL-1.0
/// @file
/// The heat of the tank in this room: heater, cooling, warm-up, and the hours without power.
#pragma once

#include <tankwright/commissioning/detail/room_case.hpp>
#include <tankwright/commissioning/figure.hpp>
#include <tankwright/room/outage.hpp>

namespace tankwright::commissioning::detail::closing {

/// Which of the appliances are on.
enum class powered { all, always, none, on_average };

/// Settled air outside the range where evaporation was measured: said in a note, not refused.
[[nodiscard]] inline range_policy policy_for(const room::air& a) noexcept {
  return room::about(room::evaporation_law::shah).humidity.contains(a.humidity.get().fraction())
             ? range_policy::published
             : range_policy::extrapolate;
}

[[nodiscard]] inline room::tank_heat heat_of(const room_case& c, const solved_season& season, powered which) {
  room::tank_heat t{.water = c.water, .air = season.humidity.central.air, .surfaces = c.surfaces};
  if (c.plan.heating) t.walls = c.plan.heating->walls;
  for (const appliance& a : c.plan.appliances) {
    if (which == powered::none || (which == powered::always && a.on.value() < 1.0)) continue;
    const double part = which == powered::on_average ? a.on.value() : 1.0;
    t.sources.push_back({.label = a.label, .heat = a.electricity.get() * (a.into_water.value() * part)});
  }
  return t;
}

[[nodiscard]] inline std::vector<citation> heat_sources() {
  return {room::about(room::evaporation_law::shah).source, room::bowen_1926, room::en_iso_6946};
}

[[nodiscard]] inline room::heat_equipment heater_of(const room_case& c, const solved_season& winter) {
  const room::tank_heat t = heat_of(c, winter, powered::always);
  return room::heater_for(t, c.plan.heating->margin, policy_for(t.air));
}

[[nodiscard]] inline finding heater_finding(const room_case& c, const solved_season& winter,
                                            const room::heat_equipment& heater) {
  finding f = asked(heater_question);
  const heating_plan& heating = *c.plan.heating;
  f.numbers.push_back({"heater to fit", amount_of(heater.suggested)});
  f.numbers.push_back({"heat to hold the water in winter", amount_of(heater.needed), role::detail});
  if (heating.heater) {
    const auto spare = map_falling(heater.needed, [&](power p) { return *heating.heater - p; });
    f.says = verdict_of_margin(spare, heater.suggested - (heater.is_needed ? heater.needed.high : watts(0.0)));
    f.numbers.push_back({"heater in the plan", amount_of(*heating.heater), role::limit});
    f.numbers.push_back({"left over", amount_of(spare), role::margin});
  }
  const room::tank_heat t = heat_of(c, winter, powered::always);
  const room::heat_budget parts = room::heat_balance(t, policy_for(t.air));
  f.numbers.push_back({"  of it evaporation", amount_of(parts.evaporation), role::detail});
  f.numbers.push_back({"  less pumps that never stop", amount_of(parts.gains), role::detail});
  if (!heater.is_needed) f.note = "Pumps alone hold the water warm, even in winter.";
  if (policy_for(t.air) == range_policy::extrapolate) {
    f.note.append(f.note.empty() ? "" : " ")
        .append("The room settles outside 28 to 95 %, where evaporation was measured: extrapolated.");
  }
  f.sources = heat_sources();
  f.before_acting = heater.caution.text;
  if (heating.walls.empty())
    f.measure_next.push_back("give the walls of the tank: without them their loss is left out");
  return f;
}

[[nodiscard]] inline finding cooling_finding(const room_case& c, const solved_season& summer) {
  finding f = asked(cooling_question);
  const room::tank_heat t = heat_of(c, summer, powered::all);
  const room::heat_equipment chiller = room::chiller_for(t, fraction(0.65), policy_for(t.air));
  f.numbers.push_back({"chiller to fit", amount_of(chiller.suggested)});
  f.numbers.push_back({"heat to take out with everything on", amount_of(chiller.needed), role::detail});
  if (!chiller.is_needed) f.note = "No: evaporation and the walls carry off more than pumps and lights bring.";
  f.sources = heat_sources();
  f.before_acting = chiller.caution.text;
  return f;
}

[[nodiscard]] inline finding warm_up_finding(const room_case& c, const solved_season& winter,
                                             const room::heat_equipment& needed) {
  finding f = asked(warm_up_question);
  const heating_plan& heating = *c.plan.heating;
  const power heater = heating.heater.value_or(needed.suggested);
  f.sources = heat_sources();
  f.before_acting = needed.caution.text;
  if (!(*heating.filled_at < c.water.temperature.get())) {
    f.note = "The water comes in warm enough.";
    return f;
  }
  f.numbers.push_back({"from", amount_of(*heating.filled_at), role::detail});
  f.numbers.push_back({"to", amount_of(c.water.temperature.get()), role::detail});
  f.numbers.push_back({"heater", amount_of(heater), role::detail});
  if (!(heater > needed.needed.high)) {
    f.says = verdict::does_not_hold;
    f.note = "The heater is too small to be sure of getting there.";
    return f;
  }
  room::warm_up_request request{.tank = heat_of(c, winter, powered::always),
                                .heat_capacity = room::heat_capacity_of(c.water, c.all_water->central),
                                .target = c.water.temperature,
                                .heater = heater};
  request.tank.water.temperature = *heating.filled_at;
  const auto warm = room::warm_up(request, policy_for(request.tank.air));
  f.numbers.insert(f.numbers.begin(), {"warm-up", amount_of(warm.time)});
  f.numbers.push_back({"energy", amount_of(warm.heater_energy), role::detail});
  if (warm.stuck_on) f.numbers.push_back({"stuck on, it would end at", amount_of(*warm.stuck_on), role::detail});
  return f;
}

/// The tank without power: nothing moves the surfaces, nothing is on.
[[nodiscard]] inline room::outage outage_of(const room_case& c, const solved_season& winter, volume water) {
  room::outage o{.tank = heat_of(c, winter, powered::none),
                 .heat_capacity = room::heat_capacity_of(c.water, water),
                 .room = c.plan.heating->outage->room};
  for (room::wet_surface& s : o.tank.surfaces) s.moved = room::still_surface;
  return o;
}

inline constexpr std::string_view outage_band = "the band of the evaporation, and how well the volume is known";
inline constexpr temperature_difference thin_temperature = kelvin_steps(1.0);

[[nodiscard]] inline finding outage_finding(const room_case& c, const solved_season& winter) {
  finding f = asked(outage_question);
  const outage_plan& plan = *c.plan.heating->outage;
  const estimate<volume>& water = *c.all_water;
  const room::outage central = outage_of(c, winter, water.central);
  const range_policy policy = policy_for(central.tank.air);
  const room::outage_course course = room::outage_curve(central, plan.lasts, plan.lasts, policy);
  const estimate<temperature>& cold = course.points.back().water;
  const auto left =
      map_rising(cold, [&](temperature t) { return kelvin_steps(in_kelvins(t) - in_kelvins(plan.lowest)); });
  f.says = verdict_of_margin(left, thin_temperature);
  f.numbers = entries(entry{"water at the end of the power cut", amount_of(cold)},
                      entry{"lowest that the animals stand", amount_of(plan.lowest.get()), role::limit},
                      entry{"left", amount_of(left), role::margin},
                      entry{"power cut", amount_of(plan.lasts.get()), role::detail});
  const auto heat = map_rising(water, [&](volume v) { return room::heat_capacity_of(c.water, v); });
  const auto [soonest, expected, latest, caution] = room::time_to_limit(central, heat, plan.lowest, days(7.0), policy);
  if (soonest && expected && latest) {
    f.numbers.push_back({"the limit is reached after",
                         amount_of(estimate<duration>{*soonest, *expected, *latest, outage_band}), role::detail});
  } else if (soonest) {
    f.numbers.push_back({"the limit is reached after at least", amount_of(*soonest), role::detail});
  } else {
    f.note = "The limit is not reached within a week.";
  }
  f.numbers.push_back({"in the end it settles at", amount_of(course.settles_at), role::detail});
  f.sources = heat_sources();
  f.before_acting = caution.text;
  if (!plan.room) f.measure_next.push_back("say how the room cools without power: here it stays as warm as it is");
  return f;
}

[[nodiscard]] inline figure outage_figure(const room_case& c, const solved_season& winter) {
  const outage_plan& plan = *c.plan.heating->outage;
  const room::outage central = outage_of(c, winter, c.all_water->central);
  // The end of the power cut is one of the points: as many steps before it as after it.
  const room::outage_course course =
      room::outage_curve(central, 2.0 * plan.lasts.get(), plan.lasts.get() / 24.0, policy_for(central.tank.air));
  figure picture{.id = "room.outage",
                 .title = "Water without power",
                 .across = {"time", "duration"},
                 .up = {"temperature", "temperature"}};
  curve line{.label = "water"};
  for (const room::outage_point& p : course.points) {
    line.x.push_back(p.time.value());
    line.y.push_back(in_kelvins(p.water.central));
    line.low.push_back(in_kelvins(p.water.low));
    line.high.push_back(in_kelvins(p.water.high));
  }
  const double limit = in_kelvins(plan.lowest);
  picture.curves.push_back(std::move(line));
  picture.curves.push_back({.label = "lowest that the animals stand",
                            .x = {0.0, 2.0 * plan.lasts->value()},
                            .y = {limit, limit},
                            .as = stroke::dashed});
  picture.curves.push_back({.label = "end of the power cut",
                            .x = {plan.lasts->value()},
                            .y = {in_kelvins(course.points[24].water.central)},
                            .as = stroke::points});
  return picture;
}

}  // namespace tankwright::commissioning::detail::closing
