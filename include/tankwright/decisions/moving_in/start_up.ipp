// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/start_up.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/life/levels.hpp>

namespace tankwright::decisions {

namespace detail {

/// What the three cases say, as `read` from each.
template <class Read>
[[nodiscard]] auto over_cases(const forecast_runs& runs, Read read) {
  const auto central = read(runs.central);
  const auto [least, most] = std::minmax({central, read(runs.fast), read(runs.harmed)});
  return estimate<std::remove_const_t<decltype(central)>>{
      least, central, most,
      "bacteria as fast as in fresh water with the least food, or slow, a part of those brought in "
      "dead and the most food"};
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_start_up(const situation& s, answers& out) {
  if (!s.plan().life || !s.plan().life->forecast) return;
  if (s.plan().life->food.empty() && !s.plan().life->start_up) return;
  finding& f = out.ask(start_up);
  const life_case& c = s.life();
  if (c.in.filter.food.empty()) f.unknown(std::string{needs_food});
  if (!c.net) f.unknown(c.state.why_no_display.empty() ? std::string{needs_net_volume} : c.state.why_no_display);
  if (!f.measure_next.empty()) return;
  const forecast_runs runs = simulate(c);
  const auto peak = [&](auto read) {
    return detail::over_cases(runs, [&](const life::start_up_result& r) { return read(r.summary); });
  };
  const auto end = [&](auto read) {
    return detail::over_cases(runs, [&](const life::start_up_result& r) { return read(r.samples.back()); });
  };
  using summary = life::start_up_summary;
  f.answer("ammonia", "highest ammonia, as nitrogen",
           peak([](const summary& r) { return r.ammonia.level.as_nitrogen(); }));
  f.detail("ammonia_after", "after", peak([](const summary& r) { return r.ammonia.at; }), "ammonia");
  f.detail("nitrite", "highest nitrite, as nitrogen",
           peak([](const summary& r) { return r.nitrite.level.as_nitrogen(); }));
  f.detail("nitrite_after", "after", peak([](const summary& r) { return r.nitrite.at; }), "nitrite");
  f.limit("limit", "both should stay below", c.in.filter.stay_below.as_nitrogen());
  f.detail("ammonia_end", "ammonia at the end, as nitrogen",
           end([](const life::start_up_sample& r) { return r.ammonia.as_nitrogen(); }));
  f.detail("nitrate", "nitrate at the end, as nitrogen",
           end([](const life::start_up_sample& r) { return r.nitrate.as_nitrogen(); }));
  f.limit("nitrate_limit", "sensitive animals should have less than",
          life::nitrate_limit_sensitive.level.as_nitrogen());
  f.detail("alkalinity", "alkalinity used until then, dKH",
           peak([](const summary& r) { return in_degrees_kh(r.alkalinity_used); }));
  f.note =
      "THIS IS A SHAPE, NOT A DATE, AND IT CLEARS NO TANK. Only a measured challenge test does: ammonia and nitrite "
      "both zero a day after a dose, every time. The equations come to rest at the level that the older tank kept, or "
      "below, whatever the surfaces are; what these can take is said above.";
  if (!c.in.weeks.cultures.empty()) f.note += " How much of a bottled culture is alive is a guess.";
  f.sources = {life::metcalf_eddy_2014, life::nijhof_bovendeur_1990, life::nitrate_limit_sensitive.source};
  f.next(std::string{challenge_test}).next("measure ammonia and nitrite every day for the first weeks with animals");
}

}  // namespace tankwright::decisions
