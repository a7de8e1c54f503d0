// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <array>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/year_of_room.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/text/quantity.hpp>

namespace tankwright::decisions {

namespace detail {

inline constexpr std::array<const char*, 12> months{"January",   "February", "March",    "April",
                                                    "May",       "June",     "July",     "August",
                                                    "September", "October",  "November", "December"};
inline constexpr duration month_length = days(365.25 / 12.0);

/// The room in one month.
struct solved_month {
  estimate<relative_humidity> humidity;
  estimate<mass_flow> evaporation;
  estimate<power> heat;  ///< to be put into the water; none where it needs none
};

[[nodiscard]] inline solved_month solve_month(const room_case& c, const plan::months_of_year& y, std::size_t i) {
  const temperature indoors = y.indoors.size() == 1 ? y.indoors[0] : y.indoors[i];
  const solved_season month =
      season_of(c, season::summer, {.indoors = indoors, .outdoors = y.outdoors[i], .outdoor_humidity = y.humidity[i]});
  solved_month m{month.settles_at(), evaporation_of(month.humidity), power{}};
  if (!c.in.heating || c.in.heating->walls.empty()) return m;
  const room::tank_heat t = heat_of(c, month, powered::on_average);
  const auto net = room::heat_balance(t, policy_for(t.air)).net;
  m.heat = map_rising(net, [](power p) { return p.value() > 0.0 ? p : power{}; });
  return m;
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_year_of_room(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->year) return;
  finding& f = out.ask(year_of_room);
  const plan::months_of_year& y = *s.plan().room->year;
  const room_case& c = s.room();
  if (c.surfaces.empty()) {
    f.unknown(detail::needs_surfaces);
    return;
  }
  std::size_t wettest = 0, driest = 0;
  std::vector<detail::solved_month> all;
  all.reserve(12);
  estimate<mass> water = mass{};
  estimate<energy> heat = energy{};
  for (std::size_t i = 0; i < 12; ++i) {
    all.push_back(detail::solve_month(c, y, i));
    const auto& m = all.back();
    water = water + map_rising(m.evaporation, [](mass_flow e) { return e * detail::month_length; });
    heat = heat + map_rising(m.heat, [](power p) { return p * detail::month_length; });
    if (m.humidity.central > all[wettest].humidity.central) wettest = i;
    if (m.humidity.central < all[driest].humidity.central) driest = i;
  }
  f.answer("wettest", std::string{"wettest month, "} + detail::months[wettest], all[wettest].humidity);
  f.limit("highest", "may have", c.in.target);
  f.margin("left", "left in the wettest month", detail::points_below(c.in.target, all[wettest].humidity),
           detail::useful_humidity);
  f.answer("driest", std::string{"driest month, "} + detail::months[driest], all[driest].humidity);
  for (std::size_t i = 0; i < 12; ++i) {
    f.detail("evaporation", std::string{"evaporates in "} + detail::months[i],
             detail::top_off_amount(all[i].evaporation), detail::months[i]);
  }
  f.answer("water", "evaporates in the year", water);
  if (c.in.heating && !c.in.heating->walls.empty()) f.answer("heat", "heat for the water in the year", heat);
  if (f.verdict == verdict::does_not_hold) {
    f.happens = std::string{"In "} + detail::months[wettest] + " the room is wetter than it may be.";
  }
  detail::add_evaporation_sources(f);
}

}  // namespace tankwright::decisions
