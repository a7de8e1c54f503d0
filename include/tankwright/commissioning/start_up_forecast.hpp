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
  proportion survives = fraction(0.5);  ///< of rock and cultures after a bad move: the band's far end, a guess
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

/// How fast the bacteria are, and how many of those brought in are alive.
struct forecast_case {
  double speed;
  double alive;
};

[[nodiscard]] inline life::start_up start_up_of(const forecast_basis& from, const forecast_case& as) {
  const auto& [filter, weeks, state, load, net, oxygen] = from;
  const life::nitrifier first = at_speed(life::ammonia_oxidisers_2014, as.speed);
  const life::nitrifier second = at_speed(life::nitrite_oxidisers_2014, as.speed);
  const auto on = [&](const life::nitrogen_load& carried, proportion moved) {
    return life::bacteria_on({.load = carried,
                              .temperature = from.state.water,
                              .moved = fraction(moved.value() * as.alive),
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

/// The start-up in three cases; the first is central.
struct forecast_runs {
  life::start_up_result sea;     ///< at the speed of the sea, everything alive
  life::start_up_result fresh;   ///< at that of fresh water
  life::start_up_result harmed;  ///< at the speed of the sea, with what survived a bad move
};
[[nodiscard]] inline forecast_runs simulate_cases(const forecast_basis& from) {
  const auto run = [&](const forecast_case& as) { return life::simulate_start_up(start_up_of(from, as)); };
  return {run({speed_in_the_sea, 1.0}), run({1.0, 1.0}), run({speed_in_the_sea, from.weeks.survives.value()})};
}

/// What the three say, as `read` from each.
template <class Read>
[[nodiscard]] auto over_cases(const forecast_runs& runs, Read read) {
  const auto central = read(runs.sea);
  const auto [least, most] = std::minmax({central, read(runs.fresh), read(runs.harmed)});
  return estimate<std::remove_const_t<decltype(central)>>{
      least, central, most, "bacteria as fast as in fresh water, or slow and a part of those brought in dead"};
}

[[nodiscard]] inline figure start_up_figure(const forecast_basis& from, const forecast_runs& runs) {
  figure f{.id = "life.start_up",
           .title = "The weeks of the start-up: the shape, not the dates",
           .across = {"time from the first day", "duration"},
           .up = {"as nitrogen", "mass_density"}};
  const auto course = [&](std::string label, auto level) {
    curve c{.label = std::move(label)};
    const auto number = [&](const life::start_up_sample& s) { return level(s).as_nitrogen().value(); };
    for (std::size_t i = 0; i < runs.sea.samples.size(); ++i) {
      const double central = number(runs.sea.samples[i]);
      const auto [least, most] = std::minmax({central, number(runs.fresh.samples[i]), number(runs.harmed.samples[i])});
      c.x.push_back(runs.sea.samples[i].at.value());
      c.y.push_back(central);
      c.low.push_back(least);
      c.high.push_back(most);
    }
    f.curves.push_back(std::move(c));
  };
  course("ammonia", [](const life::start_up_sample& s) { return s.ammonia; });
  course("nitrite", [](const life::start_up_sample& s) { return s.nitrite; });
  course("nitrate, until it leaves the picture", [](const life::start_up_sample& s) { return s.nitrate; });
  // Nitrate only rises: shown whole it would press the others to the floor.
  double top = 2.0 * from.filter.stay_below.as_nitrogen().value();
  for (const std::size_t i : {0U, 1U}) {
    top = std::fmax(top, 1.25 * *std::max_element(f.curves[i].high.begin(), f.curves[i].high.end()));
  }
  curve& leaving = f.curves[2];
  const auto end = std::find_if(leaving.high.begin(), leaving.high.end(), [&](double y) { return y > top; });
  const auto kept = static_cast<std::size_t>(end - leaving.high.begin());
  for (auto* values : {&leaving.x, &leaving.y, &leaving.low, &leaving.high}) values->resize(kept);
  const double limit = from.filter.stay_below.as_nitrogen().value();
  f.curves.push_back({.label = "ammonia and nitrite stay below",
                      .x = {0.0, from.weeks.horizon.value()},
                      .y = {limit, limit},
                      .as = stroke::dashed});
  return f;
}

[[nodiscard]] inline finding start_up_question() {
  return {.id = "life.start_up",
          .day = moving_in,
          .question = "What may the weeks of the start-up look like?",
          .before_acting = life::start_up_caution.text};
}

[[nodiscard]] inline finding start_up_finding(const forecast_basis& from, const forecast_runs& runs) {
  finding f = start_up_question();
  const auto in_summary = [&](auto read) {
    return amount_of(over_cases(runs, [&](const life::start_up_result& r) { return read(r.summary); }));
  };
  const auto at_the_end = [&](auto read) {
    return amount_of(over_cases(runs, [&](const life::start_up_result& r) { return read(r.samples.back()); }));
  };
  using summary = life::start_up_summary;
  using sample = life::start_up_sample;
  f.numbers.push_back(
      {"highest ammonia, as nitrogen", in_summary([](const summary& s) { return s.ammonia.level.as_nitrogen(); })});
  f.numbers.push_back({"  after", in_summary([](const summary& s) { return s.ammonia.at; }), role::detail});
  f.numbers.push_back({"highest nitrite, as nitrogen",
                       in_summary([](const summary& s) { return s.nitrite.level.as_nitrogen(); }), role::detail});
  f.numbers.push_back({"  after", in_summary([](const summary& s) { return s.nitrite.at; }), role::detail});
  f.numbers.push_back({"both should stay below", amount_of(from.filter.stay_below.as_nitrogen()), role::limit});
  f.numbers.push_back({"nitrate at the end, as nitrogen",
                       at_the_end([](const sample& s) { return s.nitrate.as_nitrogen(); }), role::detail});
  f.numbers.push_back({"alkalinity used until then, dKH",
                       in_summary([](const summary& s) { return s.alkalinity_used.degrees_kh(); }), role::detail});
  f.note =
      "THIS IS A SHAPE, NOT A DATE, AND IT CLEARS NO TANK. Only a measured challenge test does: ammonia and nitrite "
      "both zero a day after a dose, every time. The equations come to rest at an ammonia level of their own, "
      "whatever the surfaces are.";
  if (!from.weeks.cultures.empty()) f.note += " How much of a bottled culture is alive is a guess.";
  f.sources = {life::metcalf_eddy_2014, life::nijhof_bovendeur_1990};
  f.measure_next.emplace_back(challenge_test);
  f.measure_next.push_back("measure ammonia and nitrite every day for the first weeks with animals");
  return f;
}

}  // namespace detail

}  // namespace tankwright::commissioning
