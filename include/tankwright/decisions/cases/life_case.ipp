// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cases/life_case.hpp>
#include <tankwright/water/oxygen.hpp>

namespace tankwright::decisions {

namespace detail {

/// Bacteria of the sea against those of fresh water: taken as the rates of their films (Nijhof and Bovendeur 1990).
inline constexpr double speed_in_the_sea =
    life::seawater_film.plateau->value() / life::freshwater_film.plateau->value();

/// Bacteria that come with any sand and water: a trace.
inline const life::bacteria trace{milligrams(2.0), milligrams(2.0)};

/// More changes of the load than this are not simulated: ten years of a meal every second day.
inline constexpr limits load_changes_limits{"changes of the food until the horizon", "", {0.0, 4000.0}};

/// Bacteria that do everything at this share of the speed, and rest at most at a level: K' b/(mu - b) = level.
[[nodiscard]] inline life::nitrifier resting_at(life::nitrifier group, double share, mass_concentration level,
                                                mass_concentration oxygen, temperature t) {
  const auto growth = [&](double nitrogen) {
    return life::net_growth(group, {.nitrogen = milligrams_per_litre(nitrogen), .oxygen = oxygen, .temperature = t});
  };
  // Where nitrogen is no limit: mu - b, from mu N/(K + N) - b at some N.
  constexpr double n = 1000.0;
  const double half = in_milligrams_per_litre(group.half_nitrogen.get());
  const double decay = -growth(0.0).value();
  const double net = (growth(n).value() + decay) * (half + n) / n - decay;
  if (net > 0.0) {
    const mass_concentration rests = group.half_nitrogen.get() * (decay / net);
    if (rests > level) group.half_nitrogen = group.half_nitrogen.get() * (level / rests);
  }
  group = life::slowed(group, fraction(share));
  group.decay = group.decay.get() * share;
  return group;
}

/// The loads of the weeks: the share that is in, times the food; large meals on their days.
[[nodiscard]] inline std::vector<life::load_step> loads_of(const life_case& c, const forecast_case& as) {
  const plan::forecast_inputs& weeks = c.in.weeks;
  struct fed {
    double load;   // kg/s, in the mean
    double every;  // s; none: steady
  };
  const double day = life::meal_excreted_in.value(), end = weeks.horizon.value();
  double steady = 0.0;
  std::vector<fed> meals;
  std::vector<double> times{0.0};
  for (const plan::meal& m : c.in.filter.food) {
    const double load = (plan::load_of({&m, 1}).*as.food).as_nitrogen().value();
    if (m.every.value() <= day) {
      steady += load;
      continue;
    }
    meals.push_back({load, m.every.value()});
    core::check("tankwright::decisions::start_up_of", load_changes_limits,
                static_cast<double>(times.size()) + 2.0 * end / m.every.value());
    for (int i = 0; i * m.every.value() <= end; ++i) {
      times.push_back(i * m.every.value());
      times.push_back(i * m.every.value() + day);
    }
  }
  for (const plan::stocking& step : weeks.animals) times.push_back(step.on.value());
  std::sort(times.begin(), times.end());
  times.erase(std::unique(times.begin(), times.end()), times.end());
  std::vector<life::load_step> loads;
  for (const double at : times) {
    if (at > end) break;
    double share = weeks.animals.empty() ? 1.0 : 0.0;
    for (const plan::stocking& step : weeks.animals) {
      if (step.on.value() <= at) share = step.share.value();
    }
    double load = steady;
    for (const fed& m : meals) {
      const double since = std::fmod(at + 1.0, m.every);  // a second later, past all rounding
      if (since < day) load += m.load * (m.every / day);
    }
    loads.push_back({.from = duration::from_value(at),
                     .load = life::nitrogen_load::from_nitrogen(mass_flow::from_value(load * share))});
  }
  return loads;
}

}  // namespace detail

TANKWRIGHT_INLINE life_case case_of(const plan::life_section& s, const system_state& state) {
  plan::life_inputs in = plan::inputs_of(s);
  const auto load = plan::load_of({in.filter.food.data(), in.filter.food.size()});
  return {std::move(in), state, load, state.all_water()};
}

TANKWRIGHT_INLINE filter_balance balance_of(const life_case& c, filter_at when) {
  const water::total_ammonia at = c.in.filter.stay_below;
  return balance_of(
      c.in.filter,
      {.when = when, .net = c.net->central, .temperature = c.state.water.temperature, .level = {at, at, at, {}}});
}

TANKWRIGHT_INLINE life::start_up start_up_of(const life_case& c, const forecast_case& as) {
  const plan::filter_inputs& filter = c.in.filter;
  const plan::forecast_inputs& weeks = c.in.weeks;
  const water_basis& water = c.state.water;
  const mass_concentration oxygen =
      water::oxygen_saturation_concentration(water.salinity, water.temperature, water.air) *
      std::fmin(1.0, c.in.power_cut.start.value());
  life::start_up run{.net = c.net->central, .temperature = water.temperature, .oxygen = oxygen};
  const auto bacteria = [&](const life::nitrifier& group, mass_concentration limit) {
    return detail::resting_at(group, as.speed, limit, oxygen, water.temperature);
  };
  run.ammonia_limit = filter.stay_below;
  run.ammonia_oxidisers = bacteria(life::ammonia_oxidisers_2014, filter.stay_below.as_nitrogen());
  run.nitrite_oxidisers = bacteria(life::nitrite_oxidisers_2014, run.nitrite_limit.as_nitrogen());
  const auto living_on = [&](mass_flow carried) {
    return life::bacteria_on({.load = life::nitrogen_load::from_nitrogen(carried * as.alive),
                              .temperature = water.temperature,
                              .ammonia_oxidisers = run.ammonia_oxidisers,
                              .nitrite_oxidisers = run.nitrite_oxidisers});
  };
  run.seedings.push_back({.when = {.at = days(0.0)}, .added = detail::trace});
  if (filter.rock) {
    const mass_flow carried = (filter.rock->proven.*as.food).as_nitrogen() * filter.rock->share.value();
    run.seedings.push_back({.when = {.at = weeks.rock_on}, .added = living_on(carried)});
  }
  for (const plan::culture& one : weeks.cultures) {
    run.seedings.push_back({.when = one.when, .added = living_on(one.oxidises.as_nitrogen())});
  }
  run.loads = detail::loads_of(c, as);
  run.doses = weeks.doses;
  run.water_changes = weeks.water_changes;
  run.horizon = weeks.horizon;
  run.every = days(0.5);
  return run;
}

TANKWRIGHT_INLINE forecast_runs simulate(const life_case& c) {
  using ends = estimate<life::nitrogen_load>;
  const auto run = [&](const forecast_case& as) { return life::simulate_start_up(start_up_of(c, as)); };
  return {run({detail::speed_in_the_sea, 1.0, &ends::central}), run({1.0, 1.0, &ends::low}),
          run({detail::speed_in_the_sea, c.in.filter.survives.value(), &ends::high})};
}

}  // namespace tankwright::decisions
