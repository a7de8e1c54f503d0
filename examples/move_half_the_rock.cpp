// SPDX-License-Identifier: BSL-1.0
// Fish move into a new 2 000 L system with half of the rock that has kept up with them. What happens to the ammonia in
// the first days? Against no rock at all, and against the rock in two steps a week apart.
#include <cstdio>
#include <vector>

#include <tankwright/life.hpp>

namespace tw = tankwright;
namespace life = tankwright::life;

int main() {
  const tw::temperature water = tw::celsius(25.0);
  const auto fed = life::nitrogen_from_feed({.food = tw::grams_per_day(40.0), .protein = tw::fraction(0.45)});
  const auto load = fed.ammonia.central;

  // [balance]
  const auto first_day = life::balance_of_moved_rock(
      {.proven = load, .share_moved = tw::fraction(0.5), .new_load = load, .net = tw::litres(2000.0)});
  // [/balance]
  std::printf(
      "by the balance of the first day, half of the rock is short of %.2f g of nitrogen:\n"
      "ammonia would rise by %.2f mg/L a day if no bacteria grew and none worked harder\n\n",
      tw::in_grams_per_day(first_day.shortfall.as_nitrogen()),
      tw::in_milligrams_per_litre(first_day.daily_rise.as_nitrogen()));

  // [ways]
  const auto rock = [&](double day, double share) {
    return life::seeding{
        .when = {.at = tw::days(day)},
        .added = life::bacteria_on({.load = load, .temperature = water, .share_moved = tw::fraction(share)})};
  };
  const auto way = [&](const char* label, double fish_on_day, std::vector<life::seeding> rocks) {
    // New sand is never sterile: a trace of bacteria is there in any case.
    rocks.push_back({.when = {.at = tw::days(0.0)}, .added = life::bacteria{tw::milligrams(2.0), tw::milligrams(2.0)}});
    return life::start_up{.label = label,
                          .net = tw::litres(2000.0),
                          .temperature = water,
                          .oxygen = tw::milligrams_per_litre(6.5),
                          .seedings = rocks,
                          .loads = {{.from = tw::days(fish_on_day), .load = load}}};
  };
  const std::vector<life::start_up> ways{
      way("fish, no rock", 0.0, {}),
      way("fish and half of the rock", 0.0, {rock(0.0, 0.5)}),
      way("fish and a quarter, then a quarter", 0.0, {rock(0.0, 0.25), rock(7.0, 0.25)}),
      way("half of the rock, fish a week later", 7.0, {rock(0.0, 0.5)}),
  };
  const auto compared = life::compare_start_ups(ways);
  // [/ways]

  std::printf("%-38s %-25s %s\n", "", "highest ammonia", "highest nitrite");
  for (const auto& one : compared) {
    std::printf("%-38s %.2f mg N/L on day %4.1f  %.2f mg N/L on day %4.1f\n", one.label.c_str(),
                tw::in_milligrams_per_litre(one.ammonia.level.as_nitrogen()), tw::in_days(one.ammonia.at),
                tw::in_milligrams_per_litre(one.nitrite.level.as_nitrogen()), tw::in_days(one.nitrite.at));
  }
  const auto worst = compared.front().ammonia.level;
  const auto free = tw::water::free_ammonia_in({.total = worst,
                                                .ph = tw::water::ph_nbs{8.2},
                                                .salinity = tw::practical_salinity{35.0},
                                                .temperature = water})
                        .concentration;
  std::printf("\nat pH 8.2 the first way's peak is %.3f mg/L of free NH3 (%.3f to %.3f); harm begins about %.2f\n",
              tw::in_milligrams_per_litre(free.central.as_ammonia()),
              tw::in_milligrams_per_litre(free.low.as_ammonia()), tw::in_milligrams_per_litre(free.high.as_ammonia()),
              tw::in_milligrams_per_litre(life::free_ammonia_harm.level.as_ammonia()));
  const auto caution = compared.front().caution.text;
  std::printf("\n%.*s\n", static_cast<int>(caution.size()), caution.data());
}
