// SPDX-License-Identifier: BSL-1.0
/// @file
/// What do the animals need? Oxygen in a power cut, without and with battery air; a way from the water of their bag
/// into this one; room to swim.
#pragma once

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <tankwright/commissioning/filter_plan.hpp>
#include <tankwright/core/span_of.hpp>
#include <tankwright/life/acclimation.hpp>
#include <tankwright/life/oxygen.hpp>
#include <tankwright/life/oxygen_use.hpp>
#include <tankwright/life/space.hpp>
#include <tankwright/water/oxygen.hpp>
#include <vector>

namespace tankwright::commissioning {

/// How long and how fast animals are.
struct swimmer {
  required<length> adult;    ///< total length of the adult
  required<velocity> speed;  ///< routine speed of the species
  double run_multiple = life::informal_length_multiple;
  double width_multiple = life::informal_width_multiple;
};

/// Animals of one kind.
struct animal_group {
  std::string label = "animals";
  life::animals breathing;  ///< masses, count and measured rate; errors name it by the label above
  std::optional<swimmer> swims{};
};

/// The straight run free of obstacles, and the clear width there.
struct swim_run {
  required<length> run;
  required<length> width;
};

/// Battery air for the display.
struct battery_air {
  required<rate> bubbles;            ///< KLa of its air stones in the display's water at 20 degC
  proportion alpha = fraction(0.7);  ///< of that, in sea water with animals: 0.6 to 0.9
  std::optional<duration> runs{};    ///< until its battery is empty; none: as long as it is needed
};

/// The power cut, as the animals see it.
struct oxygen_plan {
  required<duration> help_within;  ///< until somebody is there, or the power is back
  mass_concentration lowest = life::oxygen_alarm;
  proportion start = fraction(0.95);  ///< of saturation, when the power fails
  std::optional<battery_air> battery{};
};

/// New arrivals in their water.
struct arrival_plan {
  water::ammonia_sample bag;
  required<volume> vessel;             ///< water they start in
  required<double> salinity_per_hour;  ///< pace: there is no published general one
  temperature_difference temperature_per_hour = life::temperature_change_in_an_hour.level;
  life::drip_vessel drip_into = life::drip_vessel::overflowing;
  proportion step = fraction(0.25);  ///< of the water, where it is changed in steps instead
  life::match_limits limits{};
  water::total_ammonia in_tank = water::total_ammonia::from_nitrogen({});
};

namespace detail {

/// The rate of animals is scaled to within about this part (life::oxygen_use).
inline constexpr double oxygen_use_band = 0.30;

/// Time to the limit, first with the battery's air, then without when it is empty; nothing when it is never reached.
[[nodiscard]] inline std::optional<duration> oxygen_lasts(const life::oxygen_course& with, rate without,
                                                          const std::optional<duration>& runs,
                                                          mass_concentration limit) {
  const auto first = life::time_to_oxygen_limit(with, limit).time;
  if (!runs || (first && *first <= *runs)) return first;
  life::oxygen_course then = with;
  then.tank.aeration = without;
  then.start = life::oxygen_after(with, *runs);
  const auto rest = life::time_to_oxygen_limit(then, limit).time;
  if (!rest) return std::nullopt;
  return *runs + *rest;
}

/// The times for more, for the same and for less use of oxygen than computed.
struct oxygen_times {
  std::optional<duration> low, central, high;
};

/// Half of the times, against the hours until help; a time that never comes is no reason to worry.
[[nodiscard]] inline verdict verdict_of_oxygen(const oxygen_times& lasts, duration help_within) {
  if (!lasts.low) return verdict::holds;
  if (!lasts.central) return *lasts.low * 0.5 >= help_within ? verdict::holds : verdict::thin_margin;
  const duration low = *lasts.low * 0.5 - help_within;
  const duration central = *lasts.central * 0.5 - help_within;
  return verdict_of_margin(estimate<duration>{low, central, central, {}}, duration{});
}

/// As a band, where there is a limit to it; a time that never comes is left at the one before it.
[[nodiscard]] inline std::optional<estimate<duration>> band_of(const oxygen_times& lasts) {
  if (!lasts.low) return std::nullopt;
  const duration central = lasts.central.value_or(*lasts.low);
  return estimate<duration>{*lasts.low, central, lasts.high.value_or(central),
                            "animals use 30 % more or less than scaled; with less it may stay above the limit"};
}
[[nodiscard]] inline duration half_of(duration time) { return time * 0.5; }

[[nodiscard]] inline finding animals_power_cut_finding(const std::vector<animal_group>& groups,
                                                       const std::optional<oxygen_plan>& plan,
                                                       const system_state& state,
                                                       const estimate<life::nitrogen_load>& load) {
  finding f{.id = "life.power_cut", .day = moving_in, .question = "How long do the animals live if the power fails?"};
  f.sources = {water::garcia_gordon_1992, life::cole_caraco_1998, life::asce_2006};
  if (!plan) f.measure_next.push_back("say within how many hours somebody is there when the power fails");
  if (groups.empty()) {
    f.measure_next.push_back("give the animals: mass, number, and a measured oxygen use of their kind");
  }
  if (!state.display_water) f.measure_next.emplace_back(needs_net_volume);
  if (!f.measure_next.empty()) {
    f.says = verdict::not_enough_known;
    f.before_acting = "Battery air is cheap: have it running before the first animal goes in.";
    return f;
  }
  const volume net = state.display_water->central;  // the sump stands apart once the pump has stopped
  mass_flow animals = {};
  for (const animal_group& group : groups) {
    life::animals named = group.breathing;
    named.label = group.label;
    const auto demand = life::oxygen_use(named, state.water);
    animals += demand.use;
    f.note = demand.caution.text;
  }
  const mass_flow filter = life::needs_of_nitrification(load.central).oxygen.central;
  const auto saturation = water::oxygen_saturation_concentration(state.salinity, state.water, state.air);
  std::vector<life::aeration> ways{{.label = "surface",
                                    .surface = state.display_surface.value_or(area{}),
                                    .transfer = life::still_surface_transfer}};
  const auto aerated = [&] {
    return life::aeration_rate({.net = net, .temperature = state.water, .ways = core::span_of(ways)});
  };
  const rate still = aerated();
  rate battery = still;
  if (plan->battery) {
    ways.push_back({.label = "battery air", .bubbles = plan->battery->bubbles, .alpha = plan->battery->alpha});
    battery = aerated();
  }
  const auto course = [&](double animals_use, rate aeration) -> life::oxygen_course {
    return {.tank = {.net = net, .use = animals * animals_use + filter, .saturation = saturation, .aeration = aeration},
            .start = saturation * plan->start.value()};
  };
  const auto times = [&](rate aeration, const std::optional<duration>& runs) -> oxygen_times {
    const auto at = [&](double use) { return oxygen_lasts(course(use, aeration), still, runs, plan->lowest); };
    return {at(1.0 + oxygen_use_band), at(1.0), at(1.0 - oxygen_use_band)};
  };
  const oxygen_times bare = times(still, std::nullopt);
  const oxygen_times aided = plan->battery ? times(battery, plan->battery->runs) : bare;
  f.says = verdict_of_oxygen(aided, plan->help_within);
  f.before_acting = life::time_to_oxygen_limit(course(1.0, still), plan->lowest).caution.text;
  if (const auto band = band_of(bare)) {
    f.numbers.push_back({"oxygen lasts, by the surface alone", amount_of(*band)});
    f.numbers.push_back({"  plan for half of it", amount_of(map_rising(*band, half_of)), role::detail});
  }
  if (const auto band = band_of(aided); band && plan->battery) {
    f.numbers.push_back({"oxygen lasts, with battery air", amount_of(*band)});
    f.numbers.push_back({"  plan for half of that", amount_of(map_rising(*band, half_of)), role::detail});
  }
  f.numbers.push_back({"until help", amount_of(plan->help_within.get()), role::limit});
  if (aided.central) {
    f.numbers.push_back(
        {"left of the planned half",
         amount_of(
             map_rising(*band_of(aided), [&](duration t) -> duration { return half_of(t) - plan->help_within.get(); })),
         role::margin});
  } else {
    f.note.insert(0, "With the air that is left the oxygen stays above its limit. ");
    const bool emptied = plan->battery && plan->battery->runs;
    if (const auto level = life::steady_oxygen(course(1.0, emptied ? still : battery).tank)) {
      f.numbers.push_back({"where it settles in the end", amount_of(*level), role::detail});
    }
  }
  f.numbers.push_back({"down to", amount_of(plan->lowest), role::detail});
  f.numbers.push_back({"from", amount_of(course(1.0, still).start.get()), role::detail});
  f.numbers.push_back({"the animals use in an hour", amount_of(mass{animals * hours(1.0)}), role::detail});
  f.numbers.push_back({"the filter uses in an hour", amount_of(mass{filter * hours(1.0)}), role::detail});
  if (plan->lowest < saturation) {
    f.numbers.push_back({"air that would hold the limit, KLa",
                         amount_of(life::aeration_to_hold(course(1.0, still).tank, plan->lowest)), role::detail});
  }
  if (!state.display_surface) {
    f.measure_next.push_back("give the surface of the display: without it no air is counted");
  }
  f.measure_next.push_back(
      "try it by day: pumps off, somebody watching, oxygen measured every ten minutes for an hour");
  return f;
}

[[nodiscard]] inline water::ammonia_sample tank_sample(const arrival_plan& plan, water::ph_reading ph,
                                                       const system_state& state) {
  return {.total = plan.in_tank, .ph = ph, .salinity = state.salinity, .temperature = state.water};
}

[[nodiscard]] inline finding arrival_finding(const arrival_plan& plan, const std::optional<water::ph_reading>& ph,
                                             const system_state& state) {
  finding f{.id = "life.arrivals", .day = moving_in, .question = "May the new arrivals go straight into this water?"};
  f.before_acting = life::transfer_caution.text;
  f.sources = {water::clegg_whitfield_1995, life::husbandry_practice};
  if (!ph) {
    f.says = verdict::not_enough_known;
    f.measure_next.push_back("measure the pH of the tank and of the bag with one probe");
    return f;
  }
  const auto match =
      life::match_waters({.bag = plan.bag, .tank = tank_sample(plan, *ph, state), .limits = plan.limits});
  const auto as_ammonia = [](water::free_ammonia c) { return c.as_ammonia(); };
  f.numbers.push_back(
      {"free ammonia in the bag, opened, as NH3", amount_of(map_rising(match.ammonia_at_tank_ph, as_ammonia))});
  f.numbers.push_back({"stay below", amount_of(plan.limits.ammonia.as_ammonia()), role::limit});
  f.numbers.push_back(
      {"  while the bag is closed", amount_of(map_rising(match.ammonia_as_is, as_ammonia)), role::detail});
  f.numbers.push_back({"salinity, tank less bag", amount_of(match.salinity), role::detail});
  f.numbers.push_back({"  may be", amount_of(plan.limits.salinity), role::limit});
  f.numbers.push_back({"temperature, tank less bag", amount_of(match.temperature), role::detail});
  f.numbers.push_back({"  may be", amount_of(plan.limits.temperature), role::limit});
  f.numbers.push_back({"pH, tank less bag", amount_of(match.ph), role::detail});
  f.numbers.push_back({"  may be", amount_of(plan.limits.ph), role::limit});
  const bool matches = match.salinity_matches && match.temperature_matches && match.ph_matches;
  f.says = matches && match.ammonia_safe ? verdict::holds : verdict::does_not_hold;
  if (!match.ammonia_safe) {
    f.note =
        "Once the bag is open its pH follows the tank's and the ammonia in it turns poisonous: no slow drip in that "
        "water. Bring a vessel of clean water to the salinity and temperature of the bag, move them into it, and "
        "bring that vessel to the tank's water. ";
  }
  if (!matches) {
    f.note += std::string{"Apart too far:"} + (match.salinity_matches ? "" : " salinity") +
              (match.temperature_matches ? "" : " temperature") + (match.ph_matches ? "" : " pH") + ".";
  }
  f.measure_next.push_back("measure both waters with the same instruments, the bag as soon as it is open");
  return f;
}

[[nodiscard]] inline finding acclimation_finding(const arrival_plan& plan, const system_state& state) {
  finding f{.id = "life.acclimation", .day = moving_in, .question = "How fast may they be brought over?"};
  f.before_acting = life::transfer_caution.text;
  f.sources = {life::husbandry_practice};
  const life::water_step step{.salinity_from = plan.bag.salinity,
                              .salinity_to = state.salinity,
                              .temperature_from = plan.bag.temperature,
                              .temperature_to = state.water};
  const double salinity = std::fabs(state.salinity.value() - plan.bag.salinity->value());
  const double warmth = std::fabs(state.water.value() - plan.bag.temperature->value());
  if (salinity == 0.0 && warmth == 0.0) {
    f.note = "Salinity and temperature are the same: nothing has to be brought over.";
    return f;
  }
  const flow_rate flow = life::gentle_flow({.start = plan.vessel,
                                            .step = step,
                                            .salinity_per_hour = plan.salinity_per_hour,
                                            .temperature_per_hour = plan.temperature_per_hour});
  // What may be left of the differences is what the two waters may differ by.
  double left = 1.0;
  if (salinity > 0.0) left = std::fmin(left, plan.limits.salinity / salinity);
  if (warmth > 0.0) left = std::fmin(left, in_kelvin_steps(plan.limits.temperature) / warmth);
  f.numbers.push_back({"drip, at most", amount_of(flow)});
  f.numbers.push_back({"  into a vessel of", amount_of(plan.vessel.get()), role::detail});
  f.numbers.push_back({"  pace: salinity in an hour", amount_of(plan.salinity_per_hour.get()), role::limit});
  f.numbers.push_back({"  pace: temperature in an hour", amount_of(plan.temperature_per_hour), role::limit});
  if (left > 0.0) {
    const life::drip how{.start = plan.vessel, .flow = flow, .vessel = plan.drip_into};
    const duration time = life::time_to_share(how, fraction(1.0 - left));
    f.numbers.push_back({"until the rest is small enough", amount_of(time), role::detail});
    f.numbers.push_back({"tank water for it", amount_of(volume{flow * time}), role::detail});
    f.numbers.push_back({"or in steps, each of this part of the water", amount_of(plan.step), role::detail});
    f.numbers.push_back(
        {"  so many steps",
         amount_of(static_cast<double>(water::changes_to_leave({.part = plan.step, .left = fraction(left)}))),
         role::detail});
  }
  f.note = plan.drip_into == life::drip_vessel::filling ? "The vessel fills up: see that it holds the tank water too."
                                                        : "The vessel stays full and runs over into a drain.";
  return f;
}

[[nodiscard]] inline std::optional<finding> swim_room_finding(const std::vector<animal_group>& groups,
                                                              const std::optional<swim_run>& room) {
  finding f{.id = "life.room", .day = moving_in, .question = "Is there room to swim?"};
  f.before_acting = life::space_caution.text;
  double worst = HUGE_VAL;
  for (const animal_group& group : groups) {
    if (!group.swims) continue;
    if (!room) {
      f.says = verdict::not_enough_known;
      f.measure_next.push_back("measure the longest straight run free of obstacles, and the clear width there");
      return f;
    }
    const swimmer& s = *group.swims;
    const auto has = life::swim_clearance({.animal = s.adult,
                                           .run = room->run,
                                           .width = room->width,
                                           .speed = s.speed,
                                           .run_multiple = s.run_multiple,
                                           .width_multiple = s.width_multiple});
    const double ratio = std::fmin(room->run.get() / has.run_wanted, room->width.get() / has.width_wanted);
    if (!(ratio < worst)) continue;
    worst = ratio;
    const length spare_run = room->run.get() - has.run_wanted;
    const length spare_width = room->width.get() - has.width_wanted;
    f.numbers = entries(entry{"straight run, in body lengths", amount_of(has.run_in_lengths)},
                        entry{"clear width, in body lengths", amount_of(has.width_in_lengths)},
                        entry{"run asked for", amount_of(has.run_wanted), role::limit},
                        entry{"width asked for", amount_of(has.width_wanted), role::limit},
                        entry{"run to spare", amount_of(spare_run), role::margin},
                        entry{"width to spare", amount_of(spare_width), role::margin},
                        entry{"crossing the run at routine speed takes", amount_of(has.crossing), role::detail});
    f.says = has.run_enough && has.width_enough ? verdict::holds : verdict::does_not_hold;
    f.note = "Tightest for the " + group.label + ". " + std::string{has.rule};
  }
  if (f.numbers.empty()) return std::nullopt;
  f.sources = {life::husbandry_practice};
  return f;
}

}  // namespace detail

}  // namespace tankwright::commissioning
