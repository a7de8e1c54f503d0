// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is the filter ready for these animals, today and in six weeks? The food and the ammonia it becomes, against what
/// moved rock, sand and media take away; and how much of that ammonia is free.
#pragma once

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <tankwright/commissioning/finding.hpp>
#include <tankwright/commissioning/system_state.hpp>
#include <tankwright/core/span_of.hpp>
#include <tankwright/life/circulation.hpp>
#include <tankwright/life/levels.hpp>
#include <tankwright/life/nitrification.hpp>
#include <tankwright/life/transfer.hpp>
#include <vector>

namespace tankwright::commissioning {

/// How the nitrogen of a food is counted.
enum class food_kind {
  dry,  ///< pellets and flakes for bony fish: by the rule
  wet,  ///< frozen or live food, and everything for sharks and rays: all of it
};

/// A food of the day.
struct meal {
  std::string label = "food";
  life::feeding fed;
  food_kind kind = food_kind::wet;  ///< the safe side
};

/// Rock from a tank where it has kept the ammonia at or below the level to stay below for weeks, moved wet and without
/// delay.
struct seasoned_rock {
  required<estimate<life::nitrogen_load>> proven;  ///< load that the whole of it kept up with: `load_of` its food
  required<proportion> moved;                      ///< share of it that moves
};

/// A surface that carries a film, or will.
struct filter_part {
  std::string label = "surface";
  required<area> wet;                 ///< protected surface, not nominal
  proportion seeded = fraction(0.0);  ///< share of the mature film that is there today
};

/// The filter and its load.
struct filter_plan {
  std::vector<meal> food{};
  std::optional<seasoned_rock> rock{};
  std::vector<filter_part> surfaces{};  ///< all but that rock
  life::film film = life::seawater_film;
  water::total_ammonia stay_below = life::total_ammonia_limit.level;
  water::free_ammonia free_below = life::free_ammonia_harm.level;
};

/// The nitrogen that a day's food becomes, as ammonia.
///
///   dry: 0.092 F PC within 25 %;   wet: 0.16 F PC, of which the low end of the rule comes at once
///
/// @param meals food >= 0 and its protein, 0 to 1, each with its kind
/// @return      nitrogen per time with its band; zero for no food
/// @throws      invalid_input
/// @accuracy    as life::nitrogen_from_feed
/// @source      Timmons and Ebeling 2007 (from memory)
[[nodiscard]] inline estimate<life::nitrogen_load> load_of(std::span<const meal> meals) {
  mass_flow low = {};
  mass_flow central = {};
  mass_flow high = {};
  for (const meal& m : meals) {
    const auto made = life::nitrogen_from_feed(m.fed);
    const bool dry = m.kind == food_kind::dry;
    low += made.ammonia.low.as_nitrogen();
    central += (dry ? made.ammonia.central : made.bound).as_nitrogen();
    high += (dry ? made.ammonia.high : made.bound).as_nitrogen();
  }
  return {life::nitrogen_load::from_nitrogen(low), life::nitrogen_load::from_nitrogen(central),
          life::nitrogen_load::from_nitrogen(high),
          "digestion differs by about 25 %; of wet food all nitrogen is counted"};
}

namespace detail {

inline constexpr std::string_view moving_in = "Moving in";
inline constexpr std::string_view challenge_test =
    "challenge test, without animals: dose ammonia to 1 to 2 mg/L as nitrogen; ready means that ammonia and nitrite "
    "are both zero a day later, every time";
inline constexpr std::string_view needs_net_volume =
    "give the volume of water, or the display so that it can be computed";
inline constexpr std::string_view needs_food = "give what is fed in a day, and the protein in it";

inline constexpr std::string_view film_and_food = "the food, and mature films from a third to one and a half";

/// What comes together in a day: easier to read than a flow of so little.
[[nodiscard]] inline mass in_a_day(mass_flow flow) { return flow * days(1.0); }
[[nodiscard]] inline amount nitrogen_in_a_day(const estimate<life::nitrogen_load>& load) {
  return amount_of(map_rising(load, [](life::nitrogen_load n) { return in_a_day(n.as_nitrogen()); }));
}

/// The surfaces as `life/` takes them; they borrow their labels from the plan.
[[nodiscard]] inline std::vector<life::filter_surface> surfaces_of(const filter_plan& plan, bool mature) {
  std::vector<life::filter_surface> all;
  all.reserve(plan.surfaces.size());
  for (const filter_part& part : plan.surfaces) {
    all.push_back({.label = part.label, .wet = part.wet, .seeded = mature ? fraction(1.0) : part.seeded});
  }
  return all;
}

/// What the moved rock carries as before: nothing without it.
[[nodiscard]] inline estimate<life::nitrogen_load> carried_by_rock(const filter_plan& plan,
                                                                   const estimate<life::nitrogen_load>& load,
                                                                   volume net) {
  const auto none = life::nitrogen_load::from_nitrogen({});
  if (!plan.rock) return {none, none, none, load.reason};
  const auto carried = [&](const life::nitrogen_load& proven) {
    return life::balance_of_moved_rock(
               {.proven = proven, .moved = plan.rock->moved, .new_load = load.central, .net = net})
        .carried;
  };
  return map_rising(plan.rock->proven.get(), carried);
}

/// Where the ammonia settles; an empty end does not.
struct settled_levels {
  std::optional<water::total_ammonia> low, central, high;
};

/// The rock counts as the film that would carry its load at the level to stay below; what is known of it is the load,
/// so a poorer film means more of it. Food of the old tank and of the new one is judged by one rule, so both stand at
/// the same end of their bands together.
[[nodiscard]] inline settled_levels settled_on(const filter_plan& plan, const system_state& state,
                                               const estimate<life::nitrogen_load>& load,
                                               const estimate<life::nitrogen_load>& carried, bool mature) {
  auto surfaces = surfaces_of(plan, mature);
  const life::film_water water{.ammonia = plan.stay_below, .temperature = state.water, .film = plan.film};
  surfaces.push_back({.label = "moved rock", .wet = area{}});
  const auto on = [&](const life::nitrogen_load& made, area rock) -> life::settled_ammonia {
    surfaces.back().wet = rock;
    const bool alive = std::any_of(surfaces.begin(), surfaces.end(), [](const life::filter_surface& s) {
      return s.wet->value() * s.seeded.value() > 0.0;
    });
    if (!alive) return {};
    return life::steady_ammonia({.load = made,
                                 .surfaces = core::span_of(surfaces),
                                 .temperature = state.water,
                                 .film = plan.film});
  };
  return {on(load.low, life::film_area_for(carried.low, water).low).low,
          on(load.central, life::film_area_for(carried.central, water).central).central,
          on(load.high, life::film_area_for(carried.high, water).high).high};
}

[[nodiscard]] inline std::optional<estimate<water::total_ammonia>> whole_band(const settled_levels& at) {
  if (!at.low || !at.central || !at.high) return std::nullopt;
  return estimate<water::total_ammonia>{*at.low, *at.central, *at.high, film_and_food};
}

[[nodiscard]] inline finding load_finding(const filter_plan& plan, const estimate<life::nitrogen_load>& load) {
  finding f{.id = "life.load", .day = moving_in, .question = "How much ammonia will the feeding make?"};
  if (plan.food.empty()) {
    f.says = verdict::not_enough_known;
    f.measure_next.emplace_back(needs_food);
    return f;
  }
  f.numbers.push_back({"ammonia in a day, as nitrogen", nitrogen_in_a_day(load)});
  mass_flow food = {};
  mass_flow bound = {};
  std::string_view warning;
  for (const meal& m : plan.food) {
    const auto made = life::nitrogen_from_feed(m.fed);
    food += m.fed.food.get();
    bound += made.bound.as_nitrogen();
    warning = made.caution.text;
  }
  f.numbers.push_back({"all nitrogen in the food", amount_of(in_a_day(bound)), role::detail});
  f.numbers.push_back({"food in a day, as given", amount_of(in_a_day(food)), role::detail});
  f.note = "After feeding it is 1.2 to 1.5 times the daily mean.";
  f.sources = {life::timmons_ebeling_2007};
  f.before_acting = warning;
  f.measure_next.push_back("weigh the food of a week");
  return f;
}

/// Capacity at the level to stay below, against the load: today, or once every surface is mature.
[[nodiscard]] inline finding filter_finding(const filter_plan& plan, const system_state& state,
                                            const estimate<life::nitrogen_load>& load, bool mature) {
  finding f = mature ? finding{.id = "life.filter_later",
                               .day = moving_in,
                               .question = "Will it be enough in six weeks, when mature?"}
                     : finding{.id = "life.filter_today",
                               .day = moving_in,
                               .question = "Is the filter ready for these animals today?"};
  f.before_acting = life::film_caution.text;
  f.sources = {life::nijhof_bovendeur_1990, life::zhu_chen_2002, life::malone_pfeiffer_2006,
               life::timmons_ebeling_2007};
  const auto net = state.all_water();
  if (plan.food.empty()) f.measure_next.emplace_back(needs_food);
  if (!net) f.measure_next.emplace_back(needs_net_volume);
  if (!plan.rock && plan.surfaces.empty()) {
    f.measure_next.push_back(
        "give the rock that moves and the food it has kept up with, or the surfaces of sand and "
        "media");
  }
  if (!f.measure_next.empty()) {
    f.says = verdict::not_enough_known;
    return f;
  }
  const auto carried = carried_by_rock(plan, load, net->central);
  const auto surfaces = surfaces_of(plan, mature);
  const auto films = life::capacity_of(core::span_of(surfaces),
                                       {.ammonia = plan.stay_below, .temperature = state.water, .film = plan.film})
                         .today;
  const auto together = [&](auto end) -> mass_flow {
    return (carried.*end).as_nitrogen() + (films.*end).as_nitrogen();
  };
  using ends = estimate<life::nitrogen_load>;
  const estimate<mass_flow> capacity{together(&ends::low), together(&ends::central), together(&ends::high),
                                     film_and_food};
  // One rule judges the food of both tanks, so the rock is held against the load at the same end of both.
  const auto left_by_rock = [&](auto end) -> mass_flow {
    return (carried.*end).as_nitrogen() - (load.*end).as_nitrogen();
  };
  const auto [least, most] =
      std::minmax({left_by_rock(&ends::low), left_by_rock(&ends::central), left_by_rock(&ends::high)},
                  [](const mass_flow& a, const mass_flow& b) { return a.value() < b.value(); });
  const estimate<mass_flow> margin{least + films.low.as_nitrogen(),
                                   left_by_rock(&ends::central) + films.central.as_nitrogen(),
                                   most + films.high.as_nitrogen(), film_and_food};
  f.numbers.push_back({"taken away in a day, as nitrogen", amount_of(map_rising(capacity, in_a_day))});
  f.numbers.push_back({"  while the total ammonia is", amount_of(plan.stay_below.as_nitrogen()), role::detail});
  if (plan.rock) f.numbers.push_back({"  of that, by the moved rock", nitrogen_in_a_day(carried), role::detail});
  f.numbers.push_back({"made in a day, as nitrogen", nitrogen_in_a_day(load), role::limit});
  f.numbers.push_back({"left over; short where negative", amount_of(map_rising(margin, in_a_day)), role::margin});
  const settled_levels level = settled_on(plan, state, load, carried, mature);
  if (const auto band = whole_band(level)) {
    f.numbers.push_back({"total ammonia settles at",
                         amount_of(map_rising(*band, [](water::total_ammonia c) { return c.as_nitrogen(); })),
                         role::detail});
  } else if (level.central) {
    f.numbers.push_back({"total ammonia settles at", amount_of(level.central->as_nitrogen()), role::detail});
    f.note = "With the poorest films it does not settle but rises. ";
  } else {
    f.note = "No ammonia level balances this load: it rises for as long as the animals are fed like this. ";
  }
  if (margin.central.value() < 0.0) {
    f.numbers.push_back(
        {"until bacteria grow, rises in a day by",
         amount_of(water::concentration_after({.volume = net->central, .made = -margin.central}, days(1.0))),
         role::detail});
  }
  if (plan.rock) {
    f.note += life::balance_of_moved_rock({.proven = plan.rock->proven->central,
                                           .moved = plan.rock->moved,
                                           .new_load = load.central,
                                           .net = net->central})
                  .caution.text;
  }
  f.says = verdict_of_margin(margin, mass_flow{});
  f.measure_next.emplace_back(challenge_test);
  return f;
}

[[nodiscard]] inline finding free_ammonia_finding(const filter_plan& plan, const std::optional<water::ph_reading>& ph,
                                                  const system_state& state,
                                                  const estimate<life::nitrogen_load>& load) {
  finding f{.id = "life.free_ammonia", .day = moving_in, .question = "Will its free ammonia harm them at this pH?"};
  f.before_acting = water::ammonia_caution.text;
  f.sources = {water::clegg_whitfield_1995, life::free_ammonia_harm.source};
  const auto net = state.all_water();
  if (!ph) f.measure_next.push_back("measure the pH of the tank, and say on which scale");
  if (plan.food.empty()) f.measure_next.emplace_back(needs_food);
  if (!net) f.measure_next.emplace_back(needs_net_volume);
  if (!plan.rock && plan.surfaces.empty()) f.measure_next.push_back("give the surfaces of the filter");
  if (!f.measure_next.empty()) {
    f.says = verdict::not_enough_known;
    return f;
  }
  const auto as_ammonia = [](water::free_ammonia c) { return c.as_ammonia(); };
  const auto free = [&](water::total_ammonia total) {
    return water::free_ammonia_in({.total = total, .ph = *ph, .salinity = state.salinity, .temperature = state.water});
  };
  const auto at_limit = free(plan.stay_below);
  const settled_levels level = settled_on(plan, state, load, carried_by_rock(plan, load, net->central), false);
  if (const auto band = whole_band(level)) {
    const estimate<water::free_ammonia> settled{
        free(band->low).concentration.low, free(band->central).concentration.central,
        free(band->high).concentration.high, "food, films, dissociation constant and pH probe"};
    const mass_concentration limit = plan.free_below.as_ammonia();
    const estimate<mass_concentration> margin{limit - settled.high.as_ammonia(), limit - settled.central.as_ammonia(),
                                              limit - settled.low.as_ammonia(), settled.reason};
    f.numbers.push_back({"free ammonia where it settles, as NH3", amount_of(map_rising(settled, as_ammonia))});
    f.numbers.push_back({"stay below", amount_of(limit), role::limit});
    f.numbers.push_back({"left", amount_of(margin), role::margin});
    f.says = verdict_of_margin(margin, mass_concentration{});
  } else {
    f.says = level.central && free(*level.central).concentration.central < plan.free_below ? verdict::thin_margin
                                                                                           : verdict::does_not_hold;
    f.numbers.push_back({"stay below, as NH3", amount_of(plan.free_below.as_ammonia()), role::limit});
    f.note = "The total ammonia need not settle, see the filter above, and the free part rises with it.";
  }
  f.numbers.push_back({"free at the level to stay below, as NH3",
                       amount_of(map_rising(at_limit.concentration, as_ammonia)), role::detail});
  f.numbers.push_back({"free part of the total", amount_of(at_limit.fraction), role::detail});
  f.numbers.push_back({"a kit reading of this, as nitrogen, is harm",
                       amount_of(map_falling(at_limit.fraction,
                                             [&](proportion part) -> mass_concentration {
                                               return plan.free_below.as_nitrogen() / part.value();
                                             })),
                       role::detail});
  return f;
}

}  // namespace detail

}  // namespace tankwright::commissioning
