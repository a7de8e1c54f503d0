// SPDX-License-Identifier: BSL-1.0
// The curves of docs/theory/start_up.md as columns of text. Usage: start_up course|seeding
#include <cstdio>
#include <string_view>
#include <vector>

#include <tankwright/life/start_up.hpp>

namespace tw = tankwright;
namespace life = tankwright::life;

namespace {

life::start_up tank() {
  return {
      .net = tw::litres(2000.0),
      .temperature = tw::celsius(25.0),
      .oxygen = tw::milligrams_per_litre(6.5),
      .seedings = {{.when = {.at = tw::days(0.0)}, .added = life::bacteria{tw::milligrams(2.0), tw::milligrams(2.0)}}}};
}

double number(tw::mass_concentration level) { return tw::in_milligrams_per_litre(level); }

// Without animals: 2 mg/L of ammonia nitrogen, with the constants as published and with growth at 0.4 of it.
void course() {
  auto plan = tank();
  plan.every = tw::days(0.5);
  plan.ammonia = tw::water::total_ammonia::from_nitrogen(tw::milligrams_per_litre(2.0));
  const auto fast = life::simulate_start_up(plan);
  plan.ammonia_oxidisers = life::slowed(plan.ammonia_oxidisers, tw::fraction(0.4));
  plan.nitrite_oxidisers = life::slowed(plan.nitrite_oxidisers, tw::fraction(0.4));
  const auto slow = life::simulate_start_up(plan);
  for (std::size_t i = 0; i < fast.samples.size(); ++i) {
    const auto& f = fast.samples[i];
    const auto& s = slow.samples[i];
    std::printf("%.2f %.4f %.4f %.4f %.4f %.4f %.4f\n", tw::in_days(f.at), number(f.ammonia.as_nitrogen()),
                number(f.nitrite.as_nitrogen()), number(f.nitrate.as_nitrogen()), number(s.ammonia.as_nitrogen()),
                number(s.nitrite.as_nitrogen()), number(s.nitrate.as_nitrogen()));
  }
}

// Fish move in on the first day with a share of the rock that has carried them: ammonia, then nitrite, for each share.
void seeding() {
  const auto load =
      life::nitrogen_from_feed({.food = tw::grams_per_day(40.0), .protein = tw::fraction(0.45)}).ammonia.central;
  std::vector<life::start_up_result> runs;
  for (const double share : {0.0, 0.1, 0.25, 0.5, 1.0}) {
    auto plan = tank();
    plan.loads = {{.from = tw::days(0.0), .load = load}};
    plan.seedings.push_back(
        {.when = {.at = tw::days(0.0)},
         .added =
             life::bacteria_on({.load = load, .temperature = tw::celsius(25.0), .share_moved = tw::fraction(share)})});
    plan.horizon = tw::days(16.0);
    plan.every = tw::days(0.2);
    runs.push_back(life::simulate_start_up(plan));
  }
  for (std::size_t i = 0; i < runs.front().samples.size(); ++i) {
    std::printf("%.2f", tw::in_days(runs.front().samples[i].at));
    for (const auto& run : runs) std::printf(" %.4f", number(run.samples[i].ammonia.as_nitrogen()));
    for (const auto& run : runs) std::printf(" %.4f", number(run.samples[i].nitrite.as_nitrogen()));
    std::printf("\n");
  }
}

}  // namespace

int main(int count, char** arguments) {
  const std::string_view what = count == 2 ? arguments[1] : "";
  if (what == "course") return course(), 0;
  if (what == "seeding") return seeding(), 0;
  std::fprintf(stderr, "usage: start_up course|seeding\n");
  return 2;
}
