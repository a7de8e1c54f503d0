// SPDX-License-Identifier: BSL-1.0
// The decisions of the day the animals move in, each by hand, and on both sides of its limit.
#include <algorithm>
#include <array>
#include <cmath>
#include <tankwright/decisions/figures/life_figures.hpp>
#include <tankwright/life/aeration.hpp>
#include <tankwright/life/circulation.hpp>
#include <tankwright/life/oxygen.hpp>
#include <tankwright/water/oxygen.hpp>

#include "decisions/moving_in_plan.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::finding;
using decisions::verdict;

namespace {

evidence by_hand(const char* answer) {
  return {std::string{"tankwright::decisions::answer_"} + answer, kind::identity, "the equations by hand"};
}
evidence by_calls(const char* answer) {
  return {std::string{"tankwright::decisions::answer_"} + answer, kind::identity, "the functions of life/ by hand"};
}

// Of the two foods, in grams of nitrogen a day: the rule for dry food, and all nitrogen of wet food.
constexpr double wet_protein = 24.0 * 0.11, dry_protein = 4.0 * 0.48;
constexpr double load = wet_protein * 0.16 + dry_protein * 0.092;
constexpr double load_low = 0.75 * 0.092 * (wet_protein + dry_protein);
constexpr double load_high = wet_protein * 0.16 + 1.25 * 0.092 * dry_protein;

// Films at 24 degC (Nijhof and Bovendeur 1990) and 0.1 mg/L, in g/(m2 d), and the band of films.
constexpr double per_film = 0.28 * 0.1, poor = 0.2 / 0.69, good = 1.0 / 0.69;

double grams_of(double kilograms) { return 1e3 * kilograms; }

}  // namespace

TEST_CASE("the load of dry and of wet food") {
  const finding f = answered(moving_in(), "life.load");
  const amount& n = value_of(f, "nitrogen");
  TW_CHECK(by_hand("nitrogen_load"), grams_of(n.low), load_low, relative(1e-12));
  TW_CHECK(by_hand("nitrogen_load"), grams_of(n.central), load, relative(1e-12));
  TW_CHECK(by_hand("nitrogen_load"), grams_of(n.high), load_high, relative(1e-12));
  TW_CHECK(by_hand("nitrogen_load"), grams_of(value_of(f, "bound").central), 0.16 * (wet_protein + dry_protein),
           relative(1e-12));
  TW_CHECK(by_hand("nitrogen_load"), grams_of(value_of(f, "food").central), 28.0, relative(1e-12));
  CHECK(f.verdict == verdict::for_information);
}

TEST_CASE("the filter today: films as far as seeded, the rock as it survived its move") {
  const finding f = answered(moving_in(), "life.filter_today");
  const amount &takes = value_of(f, "takes"), &left = value_of(f, "left");
  const double sand = 26.0 * 0.02 * per_film;
  TW_CHECK(by_hand("filter_today"), grams_of(takes.central), sand + 0.75 * load, relative(1e-12));
  TW_CHECK(by_hand("filter_today"), grams_of(takes.high), good * sand + 0.75 * load_high, relative(1e-12));
  TW_CHECK(by_hand("filter_today"), grams_of(takes.low), poor * sand + 0.5 * 0.75 * load_low, relative(1e-12));
  // The food of both tanks stands at one end of its rule: the rock is short by a quarter of the load, or five eighths.
  TW_CHECK(by_hand("filter_today"), grams_of(left.central), sand - 0.25 * load, relative(1e-12));
  TW_CHECK(by_hand("filter_today"), grams_of(left.low), poor * sand - 0.625 * load_high, relative(1e-12));
  TW_CHECK(by_hand("filter_today"), grams_of(left.high), good * sand - 0.25 * load_low, relative(1e-12));
  // Where it settles: in proportion to the load, 0.1 mg/L where it is what the filter takes there.
  const amount& level = value_of(f, "settles");
  TW_CHECK(by_hand("filter_today"), level.central, 1e-4 * load / (sand + 0.75 * load), relative(1e-10));
  TW_CHECK(by_hand("filter_today"), level.high, 1e-4 * load_high / (poor * sand + 0.375 * load_high), relative(1e-10));
  TW_CHECK(by_hand("filter_today"), value_of(f, "rise").central, -left.central / 1.95, relative(1e-12));
  CHECK(f.verdict == verdict::does_not_hold);
  CHECK(f.happens.starts_with("The ammonia rises by "));
  CHECK(f.sources.size() == 4);
}

TEST_CASE("the filter when mature: every film, and all of what the rock carried") {
  const finding f = answered(moving_in(), "life.filter_later");
  const double films = (26.0 + 15.0) * per_film;
  TW_CHECK(by_hand("filter_later"), grams_of(value_of(f, "takes").low), poor * films + 0.75 * load_low,
           relative(1e-12));
  TW_CHECK(by_hand("filter_later"), grams_of(value_of(f, "left").central), films - 0.25 * load, relative(1e-12));
  TW_CHECK(by_hand("filter_later"), grams_of(value_of(f, "left").low), poor * films - 0.25 * load_high,
           relative(1e-12));
  CHECK(f.verdict == verdict::holds);
}

TEST_CASE("a filter that takes just its load does not hold; a margin of zero is none") {
  plan::build b = moving_in();
  plan::clear(b, "life.surface");
  plan::set(b, "life.start_up.survives", "100 %");
  plan::set(b, "life.moved_rock.moved", "40 kg");
  finding f = answered(b, "life.filter_today");
  TW_CHECK(by_hand("filter_today"), value_of(f, "left").central, 0.0, relative(0.0));
  CHECK(f.verdict == verdict::does_not_hold);
  // A little more film: the same food and all of the rock, so the band of the rule does not count twice.
  plan::set(b, "life.surface[1].area", "1 m2");
  plan::set(b, "life.surface[1].seeded", "1 %");
  CHECK(answered(b, "life.filter_today").verdict == verdict::holds);
  plan::set(b, "life.start_up.survives", "99 %");  // one in a hundred may be lost, which the film does not make good
  CHECK(answered(b, "life.filter_today").verdict == verdict::thin_margin);
  plan::set(b, "life.moved_rock.moved", "39 kg");
  CHECK(answered(b, "life.filter_today").verdict == verdict::does_not_hold);
}

TEST_CASE("new surfaces alone take nothing today: no level balances the load") {
  plan::build b = moving_in();
  plan::clear(b, "life.moved_rock");
  plan::set(b, "life.surface[1].seeded", "0 %");
  const auto all = answered(b);
  CHECK(all.at("life.filter_today").verdict == verdict::does_not_hold);
  CHECK(all.at("life.filter_today").note.starts_with("No ammonia level balances this load"));
  CHECK(all.at("life.filter_today").happens.ends_with("without end."));
  CHECK(all.at("life.free_ammonia").verdict == verdict::does_not_hold);
  CHECK(all.at("life.filter_later").verdict == verdict::thin_margin);
}

TEST_CASE("the filter's margin and the level it settles at say the same, for daily food and for large meals") {
  const evidence property{"tankwright::decisions::balance_of", kind::property, "two ways to say one thing"};
  for (const double every : {1.0, 3.0, 7.0, 14.0}) {
    for (const double square_metres : {1.0, 5.0, 20.0, 40.0, 80.0, 300.0}) {
      plan::build b = moving_in();
      plan::set(b, "life.food[1].every", days(every));
      plan::set(b, "life.surface[1].seeded", "60 %");
      plan::set_si(b, "life.surface[1].area", square_metres);
      const finding f = answered(b, "life.filter_today");
      const amount& left = value_of(f, "left");
      TW_HOLDS(property, left.low <= left.central && left.central <= left.high);
      if (const auto* level = f.find("settles")) {
        TW_HOLDS(property, (level->value.central < 1e-4) == (left.central > 0.0));
        if (level->value.low < level->value.high) {
          TW_HOLDS(property, level->value.low <= level->value.central && level->value.central <= level->value.high);
          TW_HOLDS(property, (level->value.high < 1e-4) == (left.low > 0.0));
        }
      } else {
        TW_HOLDS(property, left.central < 0.0);
      }
    }
  }
}

TEST_CASE("more film, more rock, more of it alive: never less to spare; rarer meals: never more") {
  const evidence property{"tankwright::decisions::balance_of", kind::property, "what must be monotone"};
  const auto spare = [](std::string_view key, double si) {
    plan::build b = moving_in();
    plan::set(b, "life.food[1].every", "4 d");
    plan::set_si(b, key, si);
    return value_of(answered(b, "life.filter_today"), "left");
  };
  const auto rises = [&](std::string_view key, std::initializer_list<double> values, double sign) {
    amount before = spare(key, *values.begin());
    for (const double v : values) {
      const amount now = spare(key, v);
      TW_HOLDS(property, sign * (now.low - before.low) >= 0.0);
      TW_HOLDS(property, sign * (now.central - before.central) >= 0.0);
      TW_HOLDS(property, sign * (now.high - before.high) >= 0.0);
      before = now;
    }
  };
  rises("life.surface[1].area", {0.0, 1.0, 10.0, 100.0}, 1.0);
  rises("life.surface[1].seeded", {0.0, 0.1, 0.5, 1.0}, 1.0);
  rises("life.moved_rock.moved", {0.0, 10.0, 40.0}, 1.0);
  rises("life.start_up.survives", {0.0, 0.5, 1.0}, 1.0);
  rises("life.ammonia_below", {5e-5, 1e-4, 2e-4, 1e-3}, 1.0);
  rises("life.food[1].amount", {1e-8, 1e-7, 1e-6}, -1.0);
  rises("life.food[1].every", {3600.0, 86400.0, 86401.0, 3.0 * 86400.0, 30.0 * 86400.0}, -1.0);
}

TEST_CASE("a large meal a week: the filter is asked for its day, not for the mean of the week") {
  plan::build b = moving_in();
  plan::clear(b, "life.food[2]");
  plan::set(b, "life.food[1].every", "7 d");
  const finding f = answered(b, "life.filter_today");
  const double mean = wet_protein * 0.16;
  const double needed = grams_of(value_of(f, "needed").central);
  CHECK(needed > mean);
  CHECK(needed < 7.0 * mean);
  // By its own equation: N = 7 P (1 - e^-k)/(1 - e^-7k), k = N/(0.1 mg/L 1 950 L) a day.
  const double k = needed / 0.195;
  TW_CHECK(by_hand("filter_today"), needed, 7.0 * mean * (1.0 - std::exp(-k)) / (1.0 - std::exp(-7.0 * k)),
           relative(1e-10));
  TW_CHECK(by_hand("filter_today"), grams_of(value_of(f, "made").central), mean, relative(1e-12));
  CHECK(value_of(f, "settles").central > value_of(answered(moving_in(), "life.filter_today"), "settles").central);
}

TEST_CASE("free ammonia against the mean of four days, at the total whose free part it is") {
  const finding f = answered(moving_in(), "life.free_ammonia");
  const auto part = water::free_ammonia_fraction(water::ph_nbs{8.1}, practical_salinity{35.0}, celsius(24.0));
  const double as_nitrogen = 0.035e-3 * 14.0067 / 17.03052;
  const amount &alarm = value_of(f, "alarm"), &left = value_of(f, "left");
  TW_CHECK(by_calls("free_ammonia"), alarm.central, as_nitrogen / part.central.value(), relative(1e-12));
  TW_CHECK(by_calls("free_ammonia"), alarm.low, as_nitrogen / part.high.value(), relative(1e-12));
  const double more = alarm.central / 1e-4;  // films and rock work in proportion
  const double takes = (26.0 * 0.02 * per_film + 0.75 * load) * more;
  TW_CHECK(by_calls("free_ammonia"), grams_of(left.central), takes - load, relative(1e-10));
  const amount total = value_of(answered(moving_in(), "life.filter_today"), "settles");
  TW_CHECK(by_calls("free_ammonia"), value_of(f, "settles").central,
           total.central * part.central.value() * 17.03052 / 14.0067, relative(1e-10));
  TW_CHECK(by_hand("free_ammonia"), value_of(f, "limit").central, 35e-6, relative(1e-12));
  CHECK(f.verdict == verdict::holds);
  plan::build b = moving_in();
  plan::set(b, "life.ph", "9.5");
  const finding harmed = answered(b, "life.free_ammonia");
  CHECK(harmed.verdict == verdict::does_not_hold);
  CHECK(harmed.happens.starts_with("The free ammonia comes to "));
  CHECK(value_of(harmed, "left").low <= value_of(harmed, "left").central);
}

TEST_CASE("the weeks are three simulations, and may be left out") {
  plan::build b = moving_in();
  const finding f = answered(b, "life.start_up");
  const double share = 0.28 / 0.69;
  std::vector<life::start_up_result> runs;  // sea; fresh water with the least food; sea, half dead, with the most
  const double loads[] = {load, load_low, load_high};
  for (const std::size_t which : {0U, 1U, 2U}) {
    life::nitrifier a = life::ammonia_oxidisers_2014, n = life::nitrite_oxidisers_2014;
    const auto oxygen = water::oxygen_saturation_concentration(practical_salinity{35.0}, celsius(24.0)) * 0.85;
    // Rest at 0.1 mg/L at most: K' = 0.1 (mu - b)/b, rates at 24 degC in this oxygen.
    const double o = in_milligrams_per_litre(oxygen);
    const double mu = 0.90 * std::pow(1.072, 4.0) * o / (0.5 + o), decay = 0.17 * std::pow(1.029, 4.0);
    CHECK(0.5 * decay / (mu - decay) > 0.1);  // the sludge of the source rests above that
    a.half_nitrogen = milligrams_per_litre(0.1 * (mu - decay) / decay);
    for (life::nitrifier* g : {&a, &n}) {
      if (which != 1) {
        g->growth = g->growth.get() * share;
        g->decay = g->decay.get() * share;
      }
    }
    const double alive = which == 2 ? 0.5 : 1.0;
    const auto on = [&](double grams) {
      return life::bacteria_on({.load = life::nitrogen_load::from_nitrogen(grams_per_day(grams * alive)),
                                .temperature = celsius(24.0),
                                .ammonia_oxidisers = a,
                                .nitrite_oxidisers = n});
    };
    const auto fed = [&](double grams) { return life::nitrogen_load::from_nitrogen(grams_per_day(grams)); };
    runs.push_back(life::simulate_start_up(
        {.net = all_the_water,
         .temperature = celsius(24.0),
         .oxygen = oxygen,
         .seedings = {{.when = {.at = days(0.0)}, .added = life::bacteria{milligrams(2.0), milligrams(2.0)}},
                      {.when = {.at = days(0.0)}, .added = on(0.75 * loads[which])},
                      {.when = {.at = days(0.0), .every = days(7.0), .times = 6}, .added = on(0.02)}},
         .loads = {{.from = days(0.0), .load = fed(0.5 * loads[which])},
                   {.from = days(28.0), .load = fed(loads[which])}},
         .every = days(0.5),
         .ammonia_oxidisers = a,
         .nitrite_oxidisers = n}));
  }
  const auto peak_of = [&](std::size_t i) { return runs[i].summary.ammonia.level.as_nitrogen().value(); };
  const amount& peak = value_of(f, "ammonia");
  TW_CHECK(by_calls("start_up"), peak.central, peak_of(0), relative(1e-9));
  TW_CHECK(by_calls("start_up"), peak.low, std::min({peak_of(0), peak_of(1), peak_of(2)}), relative(1e-9));
  TW_CHECK(by_calls("start_up"), peak.high, std::max({peak_of(0), peak_of(1), peak_of(2)}), relative(1e-9));
  CHECK(f.verdict == verdict::for_information);  // a simulation never clears a tank
  CHECK(f.note.find("Only a measured challenge test") != std::string::npos);

  const decisions::situation s{b, known_state()};
  const auto figures = decisions::figures_of(s.life());
  REQUIRE(figures.size() == 1);
  REQUIRE(figures[0].curves.size() == 4);
  const evidence drawn{"tankwright::decisions::figures_of", kind::identity, "the simulations by hand"};
  for (const std::size_t i : {0U, 40U, 120U}) {
    TW_CHECK(drawn, figures[0].curves[0].y[i], runs[0].samples[i].ammonia.as_nitrogen().value(), relative(1e-9));
  }
  CHECK(figures[0].curves[2].y.size() < runs[0].samples.size());  // nitrate leaves the picture
  plan::set(b, "life.forecast", "false");
  CHECK(answered(b).find("life.start_up") == nullptr);
  CHECK(decisions::figures_of(decisions::situation{b, known_state()}.life()).empty());
}

TEST_CASE("the forecast and the filter share what they assume of the rock") {
  // All of the rock, the same food, nothing lost: it stays at or below the level that the older tank kept.
  plan::build b = moving_in();
  plan::clear(b, "life.start_up");
  plan::set(b, "life.start_up.survives", "100 %");
  plan::set(b, "life.start_up.horizon", "300 d");
  plan::set(b, "life.moved_rock.moved", "40 kg");
  finding f = answered(b, "life.start_up");
  const evidence property{"tankwright::decisions::answer_start_up", kind::property, "at rest where the older tank was"};
  TW_HOLDS(property, value_of(f, "ammonia_end").central <= 1e-4 * (1.0 + 1e-6));
  // They starve a little while the ammonia comes up from nothing, and pass the level by little before they are back.
  TW_HOLDS(property, value_of(f, "ammonia").high <= 1.1e-4);
  plan::set(b, "life.start_up.survives", "30 %");
  TW_HOLDS(property, value_of(answered(b, "life.start_up"), "ammonia").high > 1.5e-4);
  CHECK(answered(b, "life.filter_today").verdict != verdict::holds);
}

TEST_CASE("a large meal a week is a saw-tooth in the forecast too") {
  plan::build b = moving_in();
  plan::clear(b, "life.food[2]");
  const double daily = value_of(answered(b, "life.start_up"), "ammonia").central;
  plan::set(b, "life.food[1].every", "7 d");
  const finding weekly = answered(b, "life.start_up");
  const evidence property{"tankwright::decisions::start_up_of", kind::property, "the same food, less often"};
  TW_HOLDS(property, value_of(weekly, "ammonia").central > 2.0 * daily);
  // As much nitrogen in all: what was oxidised and what is left.
  const decisions::situation s{b, known_state()};
  const auto run = life::simulate_start_up(
      decisions::start_up_of(s.life(), {.speed = 1.0, .alive = 1.0, .food = &estimate<life::nitrogen_load>::central}));
  const double mean = wet_protein * 0.16;
  // Half of them from day 0, all from day 28: meals on days 0, 7, 14, 21, then 28, 35, 42, 49, 56 of the sixty.
  TW_CHECK(property, run.summary.nitrogen_added, grams(7.0 * mean * (4 * 0.5 + 5)), relative(1e-9));
  plan::set(b, "life.food[1].every", "1.01 d");
  plan::set(b, "life.start_up.horizon", "3650 d");
  CHECK(answered(b, "life.start_up").verdict == verdict::not_enough_known);  // thousands of meals: the work is bounded
}

TEST_CASE("alkalinity by hand, at its limit and beyond") {
  plan::build b = moving_in();
  const double litres_of_water = 1950.0, degree = 56.0774 / 20.0;  // dKH a meq/L
  const auto fall = [&](double grams_a_day, double equivalents) {
    return grams_a_day * 1e3 / 14.007 * equivalents / litres_of_water * degree;
  };
  const finding f = answered(b, "life.alkalinity");
  const amount &per_day = value_of(f, "fall"), &left = value_of(f, "left");
  TW_CHECK(by_hand("alkalinity"), per_day.low, fall(load_low, 1.97), relative(1e-12));
  TW_CHECK(by_hand("alkalinity"), per_day.central, fall(load, 2.0), relative(1e-12));
  TW_CHECK(by_hand("alkalinity"), per_day.high, fall(load_high, 2.0), relative(1e-12));
  TW_CHECK(by_hand("alkalinity"), left.low, 1.0 - 7.0 * fall(load_high, 2.0), relative(1e-9));
  TW_CHECK(by_hand("alkalinity"), value_of(f, "lasts").central, 86400.0 / fall(load, 2.0), relative(1e-12));
  TW_CHECK(by_hand("alkalinity"), grams_of(value_of(f, "dose").central),
           fall(load, 2.0) / degree * 1e-3 * litres_of_water * 84.0066, relative(1e-9));
  CHECK(f.note.find(water::alkalinity_caution.text) != std::string::npos);
  const auto every = [&](double d) {
    plan::set(b, "life.alkalinity.measured_every", days(d));
    return answered(b, "life.alkalinity");
  };
  CHECK(every(0.999 / fall(load_high, 2.0)).verdict == verdict::holds);
  CHECK(every(1.001 / fall(load_high, 2.0)).verdict == verdict::thin_margin);
  CHECK(every(0.999 / fall(load, 2.0)).verdict == verdict::thin_margin);
  const finding low = every(1.001 / fall(load, 2.0));
  CHECK(low.verdict == verdict::does_not_hold);
  CHECK(low.happens.starts_with("The alkalinity is at its lowest after "));
  // Fed nothing it lasts for ever; the margin is what is there.
  plan::set(b, "life.food[1].amount", "0 g/d");
  plan::set(b, "life.food[2].amount", "0 g/d");
  const finding idle = every(7.0);
  CHECK(idle.find("lasts") == nullptr);
  TW_CHECK(by_hand("alkalinity"), value_of(idle, "left").central, 1.0, relative(1e-12));
  CHECK(idle.verdict == verdict::holds);
}

TEST_CASE("the oxygen of a power cut by hand") {
  plan::build b = moving_in();
  const double v = 1600.0;  // the display alone, L
  const double saturation =
      in_milligrams_per_litre(water::oxygen_saturation_concentration(practical_salinity{35.0}, celsius(24.0)));
  const double animals = 40.0 * 0.028 * 180.0 * std::pow(28.0 / 40.0, -0.2) * std::pow(2.5, -0.1);  // mg/h
  const double filter = load * 1e3 * 2.0 * 31.998 / 14.007 / 24.0;
  const double lake = 2.4 * 0.0207 / (v * 1e-3), battery = 0.3 * 0.7 * std::pow(1.024, 4.0);  // 1/h
  // dC/dt = k (C* - C) - R/V
  const auto after = [&](double c, double k, double use, double hours) {
    const double settles = saturation - use / v / k;
    return settles + (c - settles) * std::exp(-k * hours);
  };
  const auto until = [&](double c, double k, double use, double limit) {
    const double settles = saturation - use / v / k;
    return std::log((c - settles) / (limit - settles)) / k;
  };
  const double start = 0.85 * saturation, use = animals + filter, k = 0.5 * lake;
  const finding f = answered(b, "life.power_cut");
  TW_CHECK(by_hand("oxygen_in_power_cut"), value_of(f, "bare").central, 3600.0 * until(start, k, use, 4.0),
           relative(1e-9));
  // Closed, and the animals at 1.3 of their use: a straight line.
  TW_CHECK(by_hand("oxygen_in_power_cut"), value_of(f, "bare").low,
           3600.0 * (start - 4.0) * v / (1.3 * animals + filter), relative(1e-9));
  const double at_ten = after(start, k + battery, use, 10.0);
  TW_CHECK(by_hand("oxygen_in_power_cut"), value_of(f, "aided").central, 3600.0 * (10.0 + until(at_ten, k, use, 4.0)),
           relative(1e-9));
  // Help after 8 h: judged after 16, the last six of them without the battery.
  TW_CHECK(by_hand("oxygen_in_power_cut"), value_of(f, "left").central, 1e-3 * (after(at_ten, k, use, 6.0) - 4.0),
           relative(1e-8));
  CHECK(f.note.find("two to three times") != std::string::npos);

  const auto helped = [&](double hours) {
    plan::set(b, "life.power_cut.help_within", tankwright::hours(hours));
    return answered(b, "life.power_cut");
  };
  const amount aided = value_of(f, "aided");
  CHECK(helped(0.5 * aided.low / 3600.0 * 0.999).verdict == verdict::holds);
  CHECK(helped(0.5 * aided.low / 3600.0 * 1.001).verdict == verdict::thin_margin);
  CHECK(helped(0.5 * aided.central / 3600.0 * 0.999).verdict == verdict::thin_margin);
  const finding late = helped(0.5 * aided.central / 3600.0 * 1.001);
  CHECK(late.verdict == verdict::does_not_hold);
  CHECK(late.happens.find("only half of that is safe to count on") != std::string::npos);
  CHECK(helped(40.0).happens.find("before anybody comes") != std::string::npos);

  // Air that keeps the level for as long as it is needed.
  plan::clear(b, "life.power_cut.battery_air.runs");
  plan::set(b, "life.power_cut.battery_air.kla", "3 1/h");
  const finding held = helped(48.0);
  CHECK(held.verdict == verdict::holds);
  CHECK(held.note.starts_with("With the air that is left the oxygen stays above its limit."));
  TW_CHECK(by_hand("oxygen_in_power_cut"), value_of(held, "settles").central,
           1e-3 * (saturation - use / v / (k + 10.0 * battery)), relative(1e-9));
  // Nobody said when help comes: the times are answered, and nothing is judged.
  plan::clear(b, "life.power_cut");
  const finding open = answered(b, "life.power_cut");
  CHECK(open.verdict == verdict::for_information);
  CHECK(open.find("bare") != nullptr);
  CHECK(open.measure_next.front().starts_with("say within how many hours"));
  // Without a surface there is no air at all.
  auto closed = known_state();
  closed.display_surface.reset();
  const finding no_surface = answered(b, "life.power_cut", closed);
  TW_CHECK(by_hand("oxygen_in_power_cut"), value_of(no_surface, "bare").central, 3600.0 * (start - 4.0) * v / use,
           relative(1e-9));
}

TEST_CASE("circulation: the flow that clears it against the flow that is needed") {
  plan::build b = moving_in();
  const finding f = answered(b, "life.circulation");
  const double rounds = std::log(100.0);
  TW_CHECK(by_hand("dose_cleared"), value_of(f, "time").central, 3600.0 * rounds * 1950.0 / 540.0, relative(1e-12));
  TW_CHECK(by_hand("dose_cleared"), value_of(f, "needed").high, rounds * 2.010 / 86400.0, relative(1e-12));
  TW_CHECK(by_hand("dose_cleared"), value_of(f, "left").central, (0.54 - rounds * 1.95 / 24.0) / 3600.0,
           relative(1e-11));
  TW_CHECK(by_hand("dose_cleared"), value_of(f, "turnover").central, 6.0 / 1.95 / 3600.0, relative(1e-12));
  CHECK(f.verdict == verdict::holds);
  plan::set(b, "life.circulation.clear_within", seconds(3600.0 * rounds * 1950.0 / 540.0 * 1.001));
  CHECK(answered(b, "life.circulation").verdict == verdict::thin_margin);
  plan::set(b, "life.circulation.clear_within", "16 h");
  CHECK(answered(b, "life.circulation").verdict == verdict::does_not_hold);
  plan::clear(b, "life.circulation.treatment");
  TW_CHECK(by_hand("dose_cleared"), value_of(answered(b, "life.circulation"), "time").central,
           3600.0 * rounds * 1950.0 / 6000.0, relative(1e-12));
  // A pump that lifts nothing is an answer, and spoils nothing else.
  auto still = known_state();
  still.flow = estimate<flow_rate>{};
  const auto all = answered(b, still);
  CHECK(all.at("life.circulation").verdict == verdict::does_not_hold);
  CHECK(all.at("life.circulation").happens.starts_with("Nothing takes it out"));
  CHECK(all.at("life.filter_later").verdict == verdict::holds);
  plan::clear(b, "life.circulation");
  CHECK(answered(b).find("life.circulation") == nullptr);  // what the plan does not describe is not asked
}

TEST_CASE("arrivals: each difference against its limit, and the ammonia once the bag is open") {
  plan::build b = moving_in();
  const finding f = answered(b, "life.arrivals");
  const auto free = water::free_ammonia_in({.total = water::total_ammonia::from_nitrogen(milligrams_per_litre(1.2)),
                                            .ph = water::ph_nbs{8.1},
                                            .salinity = practical_salinity{32.5},
                                            .temperature = celsius(22.5)})
                        .concentration;
  TW_CHECK(by_calls("new_arrivals"), value_of(f, "opened").central, free.central.as_ammonia().value(), relative(1e-12));
  TW_CHECK(by_calls("new_arrivals"), value_of(f, "ammonia_left").low, 50e-6 - free.high.as_ammonia().value(),
           relative(1e-9));
  TW_CHECK(by_hand("new_arrivals"), value_of(f, "salinity_left").central, 1.0 - 2.5, relative(1e-12));
  TW_CHECK(by_hand("new_arrivals"), value_of(f, "temperature_left").central, 1.0 - 1.5, relative(1e-9));
  TW_CHECK(by_hand("new_arrivals"), value_of(f, "ph_left").central, 0.2 - 0.9, relative(1e-9));
  CHECK(f.verdict == verdict::does_not_hold);
  CHECK(f.margin()->id == "ammonia_left");
  CHECK(f.happens.starts_with("Once the bag is open"));
  CHECK(f.note.find("Apart too far: salinity temperature pH.") != std::string::npos);

  // Clean water of their own salinity a little off: each limit from both sides, and at equality.
  with(b, {{"life.arrivals.ammonia_nitrogen", "0 mg/L"},
           {"life.arrivals.ph", "8.1"},
           {"life.arrivals.temperature", "24 °C"}});
  const auto at = [&](double salinity) {
    plan::set(b, "life.arrivals.practical_salinity", practical_salinity{salinity});
    return answered(b, "life.arrivals").verdict;
  };
  CHECK(at(35.0) == verdict::holds);
  CHECK(at(34.001) == verdict::holds);
  CHECK(at(34.0) == verdict::does_not_hold);
  CHECK(at(36.0) == verdict::does_not_hold);
  CHECK(at(35.999) == verdict::holds);
  plan::clear(b, "life.ph");
  plan::clear(b, "life.ph_scale");
  CHECK(answered(b, "life.arrivals").verdict == verdict::not_enough_known);
}

TEST_CASE("acclimation: the drip that keeps to the pace, and a rise takes days") {
  plan::build b = moving_in();
  const finding f = answered(b, "life.acclimation");
  TW_CHECK(by_hand("acclimation"), value_of(f, "drip").central, 0.012 / (2.5 * 3600.0), relative(1e-12));
  // 1 of 2.5 of salinity may be left: V0/Q ln(2.5); in quarters, 0.75^4 = 0.32 <= 0.4 < 0.75^3.
  TW_CHECK(by_hand("acclimation"), value_of(f, "time").central, 2.5 * 3600.0 * std::log(2.5), relative(1e-9));
  TW_HOLDS(by_hand("acclimation"), value_of(f, "steps").central == 4.0);
  TW_CHECK(by_hand("acclimation"), value_of(f, "days").central, 2.5 * 86400.0, relative(1e-12));
  CHECK(f.note.find("Their salinity rises") != std::string::npos);
  plan::set(b, "life.arrivals.practical_salinity", "37.5");
  const finding falls = answered(b, "life.acclimation");
  CHECK(falls.find("days") == nullptr);
  CHECK(falls.note.find("rises") == std::string::npos);
  with(b, {{"life.arrivals.practical_salinity", "35"}, {"life.arrivals.temperature", "24 °C"}});
  CHECK(answered(b, "life.acclimation").numbers.empty());
}

TEST_CASE("room to swim is that of the animals with the least of it, and a recommendation") {
  plan::build b = moving_in();
  finding f = answered(b, "life.room");
  TW_CHECK(by_hand("room_to_swim"), value_of(f, "run").central, 2.0 / 0.38, relative(1e-12));
  TW_CHECK(by_hand("room_to_swim"), value_of(f, "run_left").central, 2.0 - 3.0 * 0.38, relative(1e-12));
  TW_CHECK(by_hand("room_to_swim"), value_of(f, "width_left").central, 0.8 - 2.0 * 0.38, relative(1e-10));
  TW_CHECK(by_hand("room_to_swim"), value_of(f, "crossing").central, 40.0, relative(1e-12));
  CHECK(f.verdict == verdict::holds);
  CHECK(decisions::verdict_words(f) == "as recommended");
  CHECK(f.margin()->id == "width_left");
  with(b, {{"life.animals[2].name", "rays"},
           {"life.animals[2].each", "3 kg"},
           {"life.animals[2].count", "1"},
           {"life.animals[2].oxygen_use", "100"},
           {"life.animals[2].measured_at_mass", "3 kg"},
           {"life.animals[2].measured_at", "24 °C"},
           {"life.animals[2].adult", "40 cm"},
           {"life.animals[2].speed", "0.2 m/s"}});
  f = answered(b, "life.room");
  CHECK(f.note.starts_with("Tightest for the rays."));
  CHECK(f.verdict == verdict::does_not_hold);  // 0.8 m is just two lengths: nothing to spare
  plan::set(b, "life.room.width", "0.801 m");
  CHECK(answered(b, "life.room").verdict == verdict::holds);
  plan::clear(b, "life.room");
  CHECK(answered(b, "life.room").verdict == verdict::not_enough_known);
}

TEST_CASE("what is missing is said, what is not described is not asked, and nothing is thrown") {
  plan::build b;
  b.life.emplace();
  CHECK(answered(b, decisions::system_state{}).findings.empty());
  plan::set(b, "life.surface[1].area", "2 m2");
  const auto surfaces = answered(b, decisions::system_state{});
  for (const std::string_view id : {"life.filter_today", "life.filter_later", "life.free_ammonia", "life.feed_today"}) {
    CHECK(surfaces.at(id).verdict == verdict::not_enough_known);
    CHECK_FALSE(surfaces.at(id).measure_next.empty());
  }
  CHECK(surfaces.findings.size() == 4);
  auto hot = known_state();
  hot.water.temperature = celsius(33.0);  // past the range of films: those findings alone are silent
  const auto silenced = answered(moving_in(), hot);
  CHECK(silenced.at("life.filter_today").verdict == verdict::not_enough_known);
  CHECK(silenced.at("life.filter_today").note.find("outside the published range 10 to 30 degC") != std::string::npos);
  CHECK(silenced.at("life.power_cut").verdict != verdict::not_enough_known);
  auto why = known_state();
  why.display_water.reset();
  why.why_no_display = "the display leaks through its description";
  CHECK(answered(moving_in(), "life.filter_today", why).measure_next.front() == why.why_no_display);
}

TEST_CASE("every finding about animals or chemicals carries its caution, its day and what is at stake") {
  for (const finding& f : answered(moving_in()).findings) {
    CAPTURE(std::string{f.id});
    CHECK(f.day == decisions::day::moving_in);
    CHECK(f.consequence == decisions::consequence::animals);
    CHECK_FALSE(f.caution.empty());
    CHECK_FALSE(f.sources.empty());
    const bool judged =
        f.verdict == verdict::holds || f.verdict == verdict::thin_margin || f.verdict == verdict::does_not_hold;
    CHECK(judged == (f.margin() != nullptr));
    CHECK((f.verdict != verdict::does_not_hold || f.recommendation || !f.happens.empty()));
    for (const decisions::number& n : f.numbers) {
      CAPTURE(n.label);
      CHECK(std::isfinite(n.value.low));
      CHECK(n.value.low <= n.value.central);
      CHECK(n.value.central <= n.value.high);
      CHECK(std::count_if(f.numbers.begin(), f.numbers.end(),
                          [&](const auto& m) { return m.id == n.id && m.place == n.place; }) == 1);
    }
  }
}
