// SPDX-License-Identifier: BSL-1.0
/// @file
/// What will the weeks of the start-up look like? Ammonia, nitrite and nitrate while moved rock and bottled culture
/// take hold: the shape, never the dates. Only a measured challenge test clears the tank.
#pragma once

#include <algorithm>
#include <string>
#include <tankwright/commissioning/figure.hpp>
#include <tankwright/commissioning/filter_plan.hpp>
#include <tankwright/life/start_up.hpp>
#include <utility>
#include <vector>

namespace tankwright::commissioning {

/// From a day on, this share of the animals is in and fed.
struct move_in_step {
  required<duration> on;
  required<proportion> share;
};

/// Bottled culture. Hardly any bottle says how much is alive in it.
struct bottled_culture {
  life::schedule when;
  required<life::nitrogen_load> oxidises;  ///< that a dose keeps up with: a guess, or tried out
};

/// What is planned for the weeks.
struct start_up_forecast {
  std::vector<move_in_step> animals{};  ///< none: all of them on the first day
  duration rock_on = {};                ///< when the moved rock arrives
  std::vector<bottled_culture> cultures{};
  std::vector<life::ammonia_dose> doses{};
  std::vector<life::water_change> water_changes{};
  life::bacteria trace{milligrams(2.0), milligrams(2.0)};  ///< that come with any sand and water
  duration horizon = days(60.0);
};

namespace detail {

/// Bacteria of the sea against those of fresh water: taken as the rates of their films (Nijhof and Bovendeur 1990).
inline constexpr double speed_in_the_sea =
    life::seawater_film.plateau->value() / life::freshwater_film.plateau->value();

/// Everything that the forecast starts from.
struct forecast_basis {
  const filter_plan& filter;
  const start_up_forecast& weeks;
  const system_state& state;
  const estimate<life::nitrogen_load>& load;
  volume net;
  mass_concentration oxygen;
};

/// Bacteria that do everything at this share of the speed: they carry what they carried, and take longer to grow.
[[nodiscard]] inline life::nitrifier at_speed(const life::nitrifier& group, double share) {
  life::nitrifier slow = life::slowed(group, fraction(share));
  slow.decay = slow.decay.get() * share;
  return slow;
}

[[nodiscard]] inline life::start_up start_up_of(const forecast_basis& from, double speed) {
  const auto& [filter, weeks, state, load, net, oxygen] = from;
  const life::nitrifier first = at_speed(life::ammonia_oxidisers_2014, speed);
  const life::nitrifier second = at_speed(life::nitrite_oxidisers_2014, speed);
  const auto on = [&](const life::nitrogen_load& carried, proportion moved) {
    return life::bacteria_on({.load = carried,
                              .temperature = state.water,
                              .moved = moved,
                              .ammonia_oxidisers = first,
                              .nitrite_oxidisers = second});
  };
  life::start_up plan{.net = net,
                      .temperature = state.water,
                      .oxygen = oxygen,
                      .seedings = {{.when = {.at = days(0.0)}, .added = weeks.trace}},
                      .doses = weeks.doses,
                      .water_changes = weeks.water_changes,
                      .horizon = weeks.horizon,
                      .every = days(0.5),
                      .ammonia_limit = filter.stay_below,
                      .ammonia_oxidisers = first,
                      .nitrite_oxidisers = second};
  if (filter.rock) {
    plan.seedings.push_back(
        {.when = {.at = weeks.rock_on}, .added = on(filter.rock->proven->central, filter.rock->moved)});
  }
  for (const bottled_culture& culture : weeks.cultures) {
    plan.seedings.push_back({.when = culture.when, .added = on(culture.oxidises, fraction(1.0))});
  }
  for (const move_in_step& step : weeks.animals) {
    plan.loads.push_back(
        {.from = step.on,
         .load = life::nitrogen_load::from_nitrogen(load.central.as_nitrogen() * step.share->value())});
  }
  if (weeks.animals.empty()) plan.loads.push_back({.from = days(0.0), .load = load.central});
  return plan;
}

/// The same start-up with the published constants, and at the speed of the sea.
struct forecast_pair {
  life::start_up_result published;
  life::start_up_result sea;
};
[[nodiscard]] inline forecast_pair simulate_both(const forecast_basis& from) {
  return {life::simulate_start_up(start_up_of(from, 1.0)),
          life::simulate_start_up(start_up_of(from, speed_in_the_sea))};
}

/// What the two simulations say: the slow one is central.
template <class Q>
[[nodiscard]] estimate<Q> between(const Q& published, const Q& sea) {
  const auto ordered = std::minmax(published, sea);
  return {ordered.first, sea, ordered.second,
          "constants of fresh water as published, or all at 0.41 of the speed, as films of the sea"};
}

[[nodiscard]] inline figure start_up_figure(const forecast_basis& from, const forecast_pair& runs) {
  figure f{.id = "life.start_up",
           .title = "The weeks of the start-up: the shape, not the dates",
           .across = {"time from the first day", "duration"},
           .up = {"as nitrogen", "mass_density"}};
  const auto course = [&](std::string label, const life::start_up_result& run, stroke as, auto level) {
    curve c{.label = std::move(label), .as = as};
    c.x.reserve(run.samples.size());
    c.y.reserve(run.samples.size());
    for (const life::start_up_sample& s : run.samples) {
      c.x.push_back(s.at.value());
      c.y.push_back(level(s).as_nitrogen().value());
    }
    f.curves.push_back(std::move(c));
  };
  const auto ammonia = [](const life::start_up_sample& s) { return s.ammonia; };
  const auto nitrite = [](const life::start_up_sample& s) { return s.nitrite; };
  const auto nitrate = [](const life::start_up_sample& s) { return s.nitrate; };
  course("ammonia", runs.sea, stroke::line, ammonia);
  course("nitrite", runs.sea, stroke::line, nitrite);
  course("nitrate, until it leaves the picture", runs.sea, stroke::line, nitrate);
  course("ammonia, at the speed of fresh water", runs.published, stroke::dashed, ammonia);
  course("nitrite, at the speed of fresh water", runs.published, stroke::dashed, nitrite);
  // Nitrate only rises: shown whole it would press the others to the floor.
  double top = 2.0 * from.filter.stay_below.as_nitrogen().value();
  for (const std::size_t i : {0U, 1U, 3U, 4U}) {
    top = std::fmax(top, 1.25 * *std::max_element(f.curves[i].y.begin(), f.curves[i].y.end()));
  }
  curve& leaving = f.curves[2];
  const auto end = std::find_if(leaving.y.begin(), leaving.y.end(), [&](double y) { return y > top; });
  leaving.x.resize(static_cast<std::size_t>(end - leaving.y.begin()));
  leaving.y.erase(end, leaving.y.end());
  const double limit = from.filter.stay_below.as_nitrogen().value();
  f.curves.push_back({.label = "ammonia and nitrite stay below",
                      .x = {0.0, from.weeks.horizon.value()},
                      .y = {limit, limit},
                      .as = stroke::dashed});
  return f;
}

[[nodiscard]] inline finding start_up_finding(const forecast_basis& from, const forecast_pair& runs) {
  const life::start_up_summary& published = runs.published.summary;
  const life::start_up_summary& sea = runs.sea.summary;
  finding f{.id = "life.start_up", .day = moving_in, .question = "What may the weeks of the start-up look like?"};
  f.numbers.push_back({"highest ammonia, as nitrogen",
                       amount_of(between(published.ammonia.level.as_nitrogen(), sea.ammonia.level.as_nitrogen()))});
  f.numbers.push_back({"  after", amount_of(between(published.ammonia.at, sea.ammonia.at)), role::detail});
  f.numbers.push_back({"highest nitrite, as nitrogen",
                       amount_of(between(published.nitrite.level.as_nitrogen(), sea.nitrite.level.as_nitrogen())),
                       role::detail});
  f.numbers.push_back({"  after", amount_of(between(published.nitrite.at, sea.nitrite.at)), role::detail});
  f.numbers.push_back({"both should stay below", amount_of(from.filter.stay_below.as_nitrogen()), role::limit});
  f.numbers.push_back({"ammonia at the end, as nitrogen",
                       amount_of(between(runs.published.samples.back().ammonia.as_nitrogen(),
                                         runs.sea.samples.back().ammonia.as_nitrogen())),
                       role::detail});
  f.numbers.push_back({"nitrate at the end, as nitrogen",
                       amount_of(between(runs.published.samples.back().nitrate.as_nitrogen(),
                                         runs.sea.samples.back().nitrate.as_nitrogen())),
                       role::detail});
  f.numbers.push_back({"alkalinity it uses, dKH",
                       amount_of(between(published.alkalinity_used.degrees_kh(), sea.alkalinity_used.degrees_kh())),
                       role::detail});
  f.note =
      "THIS IS A SHAPE, NOT A DATE, AND IT CLEARS NO TANK. Only a measured challenge test does: ammonia and nitrite "
      "both "
      "zero a day after a dose, every time. The equations come to rest at an ammonia level of their own, whatever the "
      "surfaces are.";
  if (!from.weeks.cultures.empty()) f.note += " How much of a bottled culture is alive is a guess.";
  f.sources = {life::metcalf_eddy_2014, life::nijhof_bovendeur_1990};
  f.before_acting = sea.caution.text;
  f.measure_next.emplace_back(challenge_test);
  f.measure_next.emplace_back("measure ammonia and nitrite every day for the first weeks with animals");
  return f;
}

}  // namespace detail

}  // namespace tankwright::commissioning
