// SPDX-License-Identifier: BSL-1.0
/// @file
/// The day the animals move in: is the filter ready, do the alkalinity, the oxygen and the circulation suffice, and how
/// do the animals come over?
#pragma once

#include <optional>
#include <string>
#include <tankwright/commissioning/animals_plan.hpp>
#include <tankwright/commissioning/filter_plan.hpp>
#include <tankwright/commissioning/start_up_forecast.hpp>
#include <tankwright/core/span_of.hpp>
#include <vector>

namespace tankwright::commissioning {

/// The alkalinity that nitrification lives on.
struct alkalinity_plan {
  required<water::alkalinity> now;
  required<water::alkalinity> lowest;
  duration measured_every = days(7.0);  ///< and put back, if need be
};

/// A treatment that a part of the water passes.
struct treatment {
  std::string label = "treatment";
  required<flow_rate> flow;     ///< measured, not rated
  required<proportion> passes;  ///< share of the substance that one pass removes
};

/// What is asked of the circulation. The flow of the returns comes from the plumbing.
struct circulation_plan {
  std::vector<treatment> clears{};  ///< what takes a dose or a spill out again; none: the whole flow, perfectly
  std::optional<duration> clear_within{};
};

/// Everything about the animals and what keeps them alive. What is not given is not asked, or said to be missing.
struct life_plan {
  filter_plan filter{};
  start_up_forecast weeks{};
  bool forecast = true;                   ///< simulate the weeks: costs milliseconds
  std::optional<water::ph_reading> ph{};  ///< of the tank
  std::optional<alkalinity_plan> alkalinity{};
  std::vector<animal_group> animals{};
  std::optional<oxygen_plan> power_cut{};
  circulation_plan circulation{};
  std::optional<arrival_plan> arrivals{};
  std::optional<swim_run> room{};
};

namespace detail {

[[nodiscard]] inline finding alkalinity_finding(const life_plan& plan, const system_state& state,
                                                const estimate<life::nitrogen_load>& load) {
  finding f{.id = "life.alkalinity", .day = moving_in, .question = "How long does the alkalinity last?"};
  f.sources = {life::ebeling_2006, life::gujer_jenkins_1974};
  const auto net = state.all_water();
  if (!plan.alkalinity) f.measure_next.push_back("measure the alkalinity, and say how low it may fall");
  if (plan.filter.food.empty()) f.measure_next.emplace_back(needs_food);
  if (!net) f.measure_next.emplace_back(needs_net_volume);
  if (!f.measure_next.empty()) {
    f.says = verdict::not_enough_known;
    f.before_acting = life::needs_of_nitrification(load.central).caution.text;
    return f;
  }
  const auto under = [&](const life::nitrogen_load& made) {
    return life::time_alkalinity_lasts(
        {.load = made, .net = net->central, .now = plan.alkalinity->now, .lowest = plan.alkalinity->lowest});
  };
  const auto least = under(load.low);
  const auto most = under(load.high);
  const auto middle = under(load.central);
  const auto degrees = [](const water::alkalinity& a) { return a.degrees_kh(); };
  f.before_acting = middle.caution.text;
  if (least.lasts && middle.lasts && most.lasts) {
    const estimate<duration> lasts{most.lasts->low, middle.lasts->central, least.lasts->high, load.reason};
    const duration every = plan.alkalinity->measured_every;
    const estimate<duration> margin{lasts.low - every, lasts.central - every, lasts.high - every, load.reason};
    f.numbers.push_back({"until the lowest that may be", amount_of(lasts)});
    f.numbers.push_back({"measured every", amount_of(every), role::limit});
    f.numbers.push_back({"left", amount_of(margin), role::margin});
    f.says = verdict_of_margin(margin, duration{});
  }
  const estimate<double> fall{degrees(least.daily_fall.low), degrees(middle.daily_fall.central),
                              degrees(most.daily_fall.high), load.reason};
  f.numbers.push_back({"falls in a day by, dKH", amount_of(fall), role::detail});
  f.numbers.push_back({"now, dKH", amount_of(degrees(plan.alkalinity->now)), role::detail});
  f.numbers.push_back({"may fall to, dKH", amount_of(degrees(plan.alkalinity->lowest)), role::detail});
  const auto dose = water::alkalinity_to_add({.volume = net->central,
                                              .from = water::alkalinity::from_degrees_kh(0.0),
                                              .target = water::alkalinity::from_degrees_kh(fall.central)});
  f.numbers.push_back({"sodium bicarbonate that puts a day back", amount_of(dose.sodium_bicarbonate), role::detail});
  f.note = "Before dosing: " + std::string{dose.caution.text};
  f.measure_next.push_back("measure the alkalinity on two days a week apart: corals and plants use and make it too");
  return f;
}

[[nodiscard]] inline finding circulation_finding(const life_plan& plan, const system_state& state) {
  finding f{.id = "life.circulation", .day = moving_in, .question = "How long until 99 % of a dose is out again?"};
  f.before_acting = life::perfect_mixing_caution.text;
  f.sources = {life::gage_bidwell_1926};
  const auto net = state.all_water();
  std::vector<life::loop> loops;
  for (const treatment& t : plan.circulation.clears) {
    loops.push_back({.label = t.label, .flow = t.flow, .efficiency = t.passes});
  }
  if (loops.empty() && state.flow) {
    loops.push_back({.label = "returns", .flow = *state.flow});
    f.note = "For a treatment of the whole flow that lets nothing past; a real one takes longer.";
  }
  if (loops.empty()) f.measure_next.push_back("give the treatment: its flow, and the share that a pass removes");
  if (!net) f.measure_next.emplace_back(needs_net_volume);
  if (!f.measure_next.empty()) {
    f.says = verdict::not_enough_known;
    return f;
  }
  const auto clear = [&](volume v) {
    return life::time_to_remove({.net = v, .loops = core::span_of(loops)}, percent(99.0));
  };
  if (!clear(net->central).time) {
    f.says = verdict::does_not_hold;
    f.note = "Nothing flows, or nothing is taken out of what flows: it stays in.";
    return f;
  }
  const auto time = map_rising(*net, [&](volume v) { return *clear(v).time; });
  f.numbers.push_back({"99 % is out after", amount_of(time)});
  if (plan.circulation.clear_within) {
    const duration within = *plan.circulation.clear_within;
    const estimate<duration> margin{within - time.high, within - time.central, within - time.low, time.reason};
    f.numbers.push_back({"wanted within", amount_of(within), role::limit});
    f.numbers.push_back({"left", amount_of(margin), role::margin});
    f.says = verdict_of_margin(margin, duration{});
  }
  f.numbers.push_back(
      {"turnovers by the treatment in that time", amount_of(clear(net->central).turnovers), role::detail});
  if (state.flow) {
    const life::loop whole[] = {{.label = "returns", .flow = *state.flow}};
    f.numbers.push_back(
        {"turnovers of all the water by the returns",
         amount_of(map_falling(*net, [&](volume v) { return life::turnover_rate({.net = v, .loops = whole}); })),
         role::detail});
  }
  f.measure_next.push_back("measure the flow with a bucket and a watch: a filter that clogs takes it first");
  return f;
}

[[nodiscard]] inline forecast_basis forecast_basis_of(const life_plan& plan, const system_state& state,
                                                      const estimate<life::nitrogen_load>& load, volume net) {
  const proportion saturated = plan.power_cut ? plan.power_cut->start : fraction(0.95);
  const auto full = water::oxygen_saturation_concentration(state.salinity, state.water, state.air);
  return {plan.filter, plan.weeks, state, load, net, full * saturated.value()};
}

}  // namespace detail

/// The decisions of the day the animals move in.
///
///   load of the food against moved rock and films; free ammonia at the tank's pH; the weeks by simulation; alkalinity;
///   oxygen in a power cut by the display's own water and surface; turnover and clearing; arrivals; room to swim
///
/// @param plan  animals, food, filter and what else keeps them alive
/// @param state water temperature 10 to 30 degC, salinity, air, volumes, surface and flow of the earlier sections
/// @return      findings life.load, life.filter_today, life.filter_later, life.free_ammonia, life.start_up (where the
///              forecast is wanted), life.alkalinity, life.power_cut, life.circulation, and
///              where the plan asks for them life.arrivals, life.acclimation and life.room
/// @throws      invalid_input, out_of_range (names the argument of the function that refused it), no_convergence
/// @accuracy    the bands of the findings
/// @source      the sources of the functions of `life/` and `water/`, carried by each finding
[[nodiscard]] inline std::vector<finding> assess_life(const life_plan& plan, const system_state& state) {
  const estimate<life::nitrogen_load> load = load_of(core::span_of(plan.filter.food));
  std::vector<finding> all;
  all.reserve(12);
  all.push_back(detail::load_finding(plan.filter, load));
  all.push_back(detail::filter_finding(plan.filter, state, load, false));
  all.push_back(detail::filter_finding(plan.filter, state, load, true));
  all.push_back(detail::free_ammonia_finding(plan.filter, plan.ph, state, load));
  const auto net = state.all_water();
  if (plan.forecast && net && !plan.filter.food.empty()) {
    const auto from = detail::forecast_basis_of(plan, state, load, net->central);
    all.push_back(detail::start_up_finding(from, detail::simulate_cases(from)));
  } else if (plan.forecast) {
    finding missing = detail::start_up_question();
    missing.says = verdict::not_enough_known;
    if (plan.filter.food.empty()) missing.measure_next.emplace_back(detail::needs_food);
    if (!net) missing.measure_next.emplace_back(detail::needs_net_volume);
    all.push_back(std::move(missing));
  }
  all.push_back(detail::alkalinity_finding(plan, state, load));
  all.push_back(detail::animals_power_cut_finding(plan.animals, plan.power_cut, state, load));
  all.push_back(detail::circulation_finding(plan, state));
  if (plan.arrivals) {
    all.push_back(detail::arrival_finding(*plan.arrivals, plan.ph, state));
    all.push_back(detail::acclimation_finding(*plan.arrivals, state));
  }
  if (auto room = detail::swim_room_finding(plan.animals, plan.room)) all.push_back(std::move(*room));
  return all;
}

/// The weeks of the start-up, drawn: life.start_up, where the forecast is wanted and there is food and water for it.
///
///   `life::simulate_start_up` in three cases, as for the finding
///
/// @param plan  animals, food and filter
/// @param state temperature, salinity, air and volumes of the earlier sections
/// @return      ammonia, nitrite and nitrate as nitrogen [kg/m^3] over time [s], with their bands
/// @throws      invalid_input, out_of_range (names the argument of the function that refused it)
/// @accuracy    the shape, never the dates
/// @source      the sources of `life/start_up.hpp`
[[nodiscard]] inline std::vector<figure> figures_of(const life_plan& plan, const system_state& state) {
  const auto net = state.all_water();
  if (!plan.forecast || !net || plan.filter.food.empty()) return {};
  const estimate<life::nitrogen_load> load = load_of(core::span_of(plan.filter.food));
  const auto from = detail::forecast_basis_of(plan, state, load, net->central);
  return {detail::start_up_figure(from, detail::simulate_cases(from))};
}

}  // namespace tankwright::commissioning
