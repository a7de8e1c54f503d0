// SPDX-License-Identifier: BSL-1.0
#include <algorithm>
#include <array>
#include <tankwright/commissioning/life_plan.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using namespace tankwright::commissioning;

namespace {

const evidence by_hand{"tankwright::commissioning::assess_life", kind::identity, "the same calls by hand"};
const evidence load_by_hand{"tankwright::commissioning::load_of", kind::identity, "the same calls by hand"};

life_plan plan() {
  life_plan p;
  p.filter.food = {
      {.label = "shrimp", .fed = {.food = grams_per_day(24.0), .protein = percent(11.0)}, .kind = food_kind::wet},
      {.label = "granulate", .fed = {.food = grams_per_day(4.0), .protein = percent(48.0)}, .kind = food_kind::dry}};
  p.filter.rock = {.proven = load_of(p.filter.food), .moved = fraction(0.75)};
  p.filter.surfaces = {{.label = "sand", .wet = square_metres(26.0), .seeded = fraction(0.02)},
                       {.label = "media", .wet = square_metres(15.0)}};
  p.weeks.animals = {{.on = days(0.0), .share = fraction(0.5)}, {.on = days(28.0), .share = fraction(1.0)}};
  p.weeks.cultures = {{.when = {.at = days(0.0), .every = days(7.0), .times = 6},
                       .oxidises = life::nitrogen_load::from_nitrogen(grams_per_day(0.02))}};
  p.ph = water::ph_nbs{8.1};
  p.alkalinity = {.now = water::alkalinity::from_degrees_kh(8.0), .lowest = water::alkalinity::from_degrees_kh(7.0)};
  p.animals = {{.label = "garden eels",
                .breathing = {.each = grams(28.0),
                              .count = 40.0,
                              .measured = life::specific_oxygen_use::from_milligrams_per_kilogram_hour(180.0),
                              .measured_at_mass = grams(40.0),
                              .measured_at = celsius(25.0)},
                .swims = swimmer{.adult = centimetres(38.0), .speed = centimetres_per_second(5.0)}}};
  p.power_cut = {.help_within = hours(8.0), .battery = battery_air{.bubbles = per_hour(0.3), .runs = hours(10.0)}};
  p.circulation = {.clears = {{.label = "carbon", .flow = litres_per_hour(900.0), .passes = fraction(0.6)}},
                   .clear_within = hours(24.0)};
  p.arrivals = {.bag = {.total = water::total_ammonia::from_nitrogen(milligrams_per_litre(1.2)),
                        .ph = water::ph_nbs{7.2},
                        .salinity = practical_salinity{32.5},
                        .temperature = celsius(22.5)},
                .vessel = litres(12.0),
                .salinity_per_hour = 1.0};
  p.room = {.run = metres(2.0), .width = metres(0.8)};
  return p;
}

system_state state() {
  return {.water = celsius(24.0),
          .salinity = practical_salinity{35.0},
          .display_water = estimate<volume>{litres(1550.0), litres(1600.0), litres(1650.0), "rock and sand"},
          .sump_water = estimate<volume>{litres(340.0), litres(350.0), litres(360.0), "levels"},
          .display_surface = square_metres(2.4),
          .flow = litres_per_hour(6000.0)};
}
constexpr volume all_water = litres(1950.0);

const finding& found(const std::vector<finding>& all, std::string_view id) {
  const auto it = std::find_if(all.begin(), all.end(), [&](const finding& f) { return f.id == id; });
  REQUIRE_MESSAGE(it != all.end(), std::string{id});
  return *it;
}

bool has(const std::vector<finding>& all, std::string_view id) {
  return std::any_of(all.begin(), all.end(), [&](const finding& f) { return f.id == id; });
}

const amount& number(const finding& f, std::string_view label) {
  const auto it = std::find_if(f.numbers.begin(), f.numbers.end(), [&](const entry& e) { return e.label == label; });
  REQUIRE_MESSAGE(it != f.numbers.end(), std::string{label});
  return it->value;
}

void same(const amount& is, const amount& wanted) {
  TW_HOLDS(by_hand, is.quantity == wanted.quantity);
  TW_CHECK(by_hand, is.low, wanted.low, relative(1e-14));
  TW_CHECK(by_hand, is.central, wanted.central, relative(1e-14));
  TW_CHECK(by_hand, is.high, wanted.high, relative(1e-14));
}

mass day_of(const life::nitrogen_load& n) { return n.as_nitrogen() * days(1.0); }

}  // namespace

TEST_CASE("moving in: the load of dry and of wet food") {
  const auto p = plan();
  const auto wet = life::nitrogen_from_feed(p.filter.food[0].fed);
  const auto dry = life::nitrogen_from_feed(p.filter.food[1].fed);
  const auto load = load_of(p.filter.food);
  TW_CHECK(load_by_hand, load.low.as_nitrogen(), wet.ammonia.low.as_nitrogen() + dry.ammonia.low.as_nitrogen(),
           relative(1e-15));
  TW_CHECK(load_by_hand, load.central.as_nitrogen(), wet.bound.as_nitrogen() + dry.ammonia.central.as_nitrogen(),
           relative(1e-15));
  TW_CHECK(load_by_hand, load.high.as_nitrogen(), wet.bound.as_nitrogen() + dry.ammonia.high.as_nitrogen(),
           relative(1e-15));
  TW_HOLDS(load_by_hand, load_of({}).high.as_nitrogen().value() == 0.0);
  // 24 g of food with 11 % of protein, which is 16 % nitrogen; 4 g with 48 %, 9.2 % of it ammonia nitrogen.
  TW_CHECK(load_by_hand, load.central.as_nitrogen(), grams_per_day(24.0 * 0.11 * 0.16 + 4.0 * 0.48 * 0.092),
           relative(1e-14));
  const auto all = assess_life(p, state());
  same(number(found(all, "life.load"), "ammonia in a day, as nitrogen"), amount_of(map_rising(load, day_of)));
}

TEST_CASE("moving in: the filter by hand, today and when mature") {
  auto p = plan();
  p.forecast = false;
  const auto load = load_of(p.filter.food);
  const life::film_water water{.ammonia = p.filter.stay_below, .temperature = celsius(24.0)};
  const auto rock = life::balance_of_moved_rock(
      {.proven = load.central, .moved = fraction(0.75), .new_load = load.central, .net = all_water});
  const auto all = assess_life(p, state());
  for (const bool mature : {false, true}) {
    CAPTURE(mature);
    const std::array surfaces{
        life::filter_surface{.wet = square_metres(26.0), .seeded = fraction(mature ? 1.0 : 0.02)},
        life::filter_surface{.wet = square_metres(15.0), .seeded = fraction(mature ? 1.0 : 0.0)},
        life::filter_surface{.wet = life::film_area_for(rock.carried, water).central, .seeded = fraction(1.0)}};
    const auto films = life::capacity_of(std::span{surfaces}.first(2), water).today;
    const finding& f = found(all, mature ? "life.filter_later" : "life.filter_today");
    const amount taken = number(f, "taken away in a day, as nitrogen");
    TW_CHECK(by_hand, taken.central, (day_of(rock.carried) + day_of(films.central)).value(), relative(1e-14));
    TW_CHECK(by_hand, taken.high, (0.75 * day_of(load.high) + day_of(films.high)).value(), relative(1e-14));
    const amount left = number(f, "left over; short where negative");
    TW_CHECK(by_hand, left.central, taken.central - day_of(load.central).value(), relative(1e-12));
    // The food of both tanks stands at the same end of its band: the rock is short by a quarter of the load, not more.
    TW_CHECK(by_hand, left.low, (day_of(films.low) - 0.25 * day_of(load.high)).value(), relative(1e-12));
    const auto settled =
        life::steady_ammonia({.load = load.central, .surfaces = surfaces, .temperature = celsius(24.0)});
    const amount level = number(f, "total ammonia settles at");
    TW_CHECK(by_hand, level.central, settled.central->as_nitrogen().value(), relative(1e-13));
    TW_HOLDS(by_hand, (level.central <= p.filter.stay_below.as_nitrogen().value()) == (left.central >= 0.0));
    TW_HOLDS(by_hand, (level.high <= p.filter.stay_below.as_nitrogen().value()) == (left.low >= 0.0));
    CHECK(f.before_acting == life::film_caution.text);
    CHECK(f.note.find(rock.caution.text) != std::string::npos);
    CHECK(f.sources.size() == 4);
  }
  CHECK(found(all, "life.filter_today").says == verdict::does_not_hold);
  same(number(found(all, "life.filter_today"), "until bacteria grow, rises in a day by"),
       amount_of(water::concentration_after(
           {.volume = all_water,
            .made = mass_flow::from_value(
                -number(found(all, "life.filter_today"), "left over; short where negative").central / 86400.0)},
           days(1.0))));
}

TEST_CASE("moving in: the filter on both sides of its limit") {
  auto p = plan();
  p.forecast = false;
  p.filter.surfaces.clear();
  const auto says = [&](double moved, const life_plan& of) {
    life_plan q = of;
    q.filter.rock->moved = fraction(moved);
    return found(assess_life(q, state()), "life.filter_today").says;
  };
  CHECK(says(1.0, p) == verdict::holds);  // the same food and all of the rock: the rule's band does not count twice
  CHECK(says(0.999, p) == verdict::does_not_hold);
  // A measured load of the old tank, against the food by the rule: the high end of the food decides between the two.
  const auto load = load_of(p.filter.food);
  p.filter.rock->proven = estimate<life::nitrogen_load>{load.central, load.central, load.central, "measured"};
  CHECK(says(1.0, p) == verdict::thin_margin);
  p.filter.rock->proven = estimate<life::nitrogen_load>{load.high, load.high, load.high, "measured"};
  CHECK(says(1.0, p) == verdict::holds);
  // New surfaces alone take nothing today: the ammonia finds no level.
  p.filter.rock.reset();
  p.filter.surfaces = {{.label = "media", .wet = square_metres(30.0)}};
  const auto all = assess_life(p, state());
  CHECK(found(all, "life.filter_today").says == verdict::does_not_hold);
  CHECK(found(all, "life.filter_today").note.starts_with("No ammonia level balances this load"));
  CHECK(found(all, "life.free_ammonia").says == verdict::does_not_hold);
  CHECK(found(all, "life.filter_later").says == verdict::thin_margin);  // holds with the central film, not the poorest
}

TEST_CASE("moving in: free ammonia by hand") {
  auto p = plan();
  p.forecast = false;
  const auto all = assess_life(p, state());
  const finding& f = found(all, "life.free_ammonia");
  const amount settled = number(found(all, "life.filter_today"), "total ammonia settles at");
  const auto free = [&](double total) {
    return water::free_ammonia_in({.total = water::total_ammonia::from_nitrogen(mass_concentration::from_value(total)),
                                   .ph = water::ph_nbs{8.1},
                                   .salinity = practical_salinity{35.0},
                                   .temperature = celsius(24.0)})
        .concentration;
  };
  const amount answer = number(f, "free ammonia where it settles, as NH3");
  TW_CHECK(by_hand, answer.low, free(settled.low).low.as_ammonia().value(), relative(1e-13));
  TW_CHECK(by_hand, answer.central, free(settled.central).central.as_ammonia().value(), relative(1e-13));
  TW_CHECK(by_hand, answer.high, free(settled.high).high.as_ammonia().value(), relative(1e-13));
  const amount alarm = number(f, "a kit reading of this, as nitrogen, is harm");
  TW_CHECK(by_hand, free(alarm.central).central.as_ammonia().value(),
           life::free_ammonia_harm.level.as_ammonia().value(), relative(1e-12));
  CHECK(f.says == verdict::holds);
  CHECK(f.before_acting == water::ammonia_caution.text);
  p.ph = water::ph_nbs{9.5};
  CHECK(found(assess_life(p, state()), "life.free_ammonia").says == verdict::does_not_hold);
}

TEST_CASE("moving in: the weeks are two simulations, and may be left out") {
  auto p = plan();
  const auto made = assess_life(p, state());
  const finding& f = found(made, "life.start_up");
  const auto load = load_of(p.filter.food);
  const double share = life::seawater_film.plateau->value() / life::freshwater_film.plateau->value();  // 0.28 / 0.69
  std::vector<life::start_up_result> runs;  // sea, fresh water, sea with half of the bacteria dead
  for (const int which : {0, 1, 2}) {
    life::nitrifier a = life::ammonia_oxidisers_2014;
    life::nitrifier n = life::nitrite_oxidisers_2014;
    for (life::nitrifier* g : {&a, &n}) {
      if (which != 1) *g = life::slowed(*g, fraction(share)), g->decay = g->decay.get() * share;
    }
    const auto on = [&](life::nitrogen_load carried, double moved) {
      return life::bacteria_on({.load = carried,
                                .temperature = celsius(24.0),
                                .moved = fraction(which == 2 ? 0.5 * moved : moved),
                                .ammonia_oxidisers = a,
                                .nitrite_oxidisers = n});
    };
    const auto bottle = on(life::nitrogen_load::from_nitrogen(grams_per_day(0.02)), 1.0);
    runs.push_back(life::simulate_start_up(
        {.net = all_water,
         .temperature = celsius(24.0),
         .oxygen = water::oxygen_saturation_concentration(practical_salinity{35.0}, celsius(24.0)) * 0.95,
         .seedings = {{.when = {.at = days(0.0)}, .added = life::bacteria{milligrams(2.0), milligrams(2.0)}},
                      {.when = {.at = days(0.0)}, .added = on(load.central, 0.75)},
                      {.when = {.at = days(0.0), .every = days(7.0), .times = 6}, .added = bottle}},
         .loads = {{.from = days(0.0), .load = life::nitrogen_load::from_nitrogen(load.central.as_nitrogen() * 0.5)},
                   {.from = days(28.0), .load = load.central}},
         .every = days(0.5),
         .ammonia_oxidisers = a,
         .nitrite_oxidisers = n}));
  }
  const amount peak = number(f, "highest ammonia, as nitrogen");
  const auto peak_of = [&](std::size_t i) { return runs[i].summary.ammonia.level.as_nitrogen().value(); };
  TW_CHECK(by_hand, peak.central, peak_of(0), relative(1e-12));
  TW_CHECK(by_hand, peak.low, std::min({peak_of(0), peak_of(1), peak_of(2)}), relative(1e-12));
  TW_CHECK(by_hand, peak.high, std::max({peak_of(0), peak_of(1), peak_of(2)}), relative(1e-12));
  CHECK(peak_of(2) > peak_of(0));             // a bad move is worse
  CHECK(f.says == verdict::for_information);  // a simulation never clears a tank
  CHECK(f.before_acting == life::start_up_caution.text);
  CHECK(f.note.find("Only a measured challenge test") != std::string::npos);
  const auto figures = figures_of(p, state());
  REQUIRE(figures.size() == 1);
  const figure& picture = figures[0];
  CHECK(picture.id == "life.start_up");
  REQUIRE(picture.curves.size() == 4);
  REQUIRE(picture.curves[0].y.size() == runs[0].samples.size());
  double worst = 0.0;
  const auto compare_with = [&](const curve& c, std::size_t i, auto level) {
    const auto at = [&](std::size_t run) { return level(runs[run].samples[i]).as_nitrogen().value(); };
    worst = std::max({worst, std::fabs(c.y[i] - at(0)), std::fabs(c.low[i] - std::min({at(0), at(1), at(2)})),
                      std::fabs(c.high[i] - std::max({at(0), at(1), at(2)}))});
  };
  for (std::size_t i = 0; i < runs[0].samples.size(); ++i) {
    compare_with(picture.curves[0], i, [](const auto& s) { return s.ammonia; });
    compare_with(picture.curves[1], i, [](const auto& s) { return s.nitrite; });
    if (i < picture.curves[2].y.size()) compare_with(picture.curves[2], i, [](const auto& s) { return s.nitrate; });
  }
  TW_CHECK(by_hand, milligrams_per_litre(worst * 1e3), milligrams_per_litre(0.0), within(milligrams_per_litre(1e-9)));
  CHECK(picture.curves[2].y.size() < runs[0].samples.size());
  for (const curve& c : picture.curves) CHECK(c.x.size() == c.y.size());

  p.forecast = false;
  const auto without = assess_life(p, state());
  CHECK_FALSE(has(without, "life.start_up"));
  CHECK(figures_of(p, state()).empty());
  CHECK(without.size() + 1 == made.size());
}

TEST_CASE("moving in: alkalinity by hand and at its limit") {
  auto p = plan();
  p.forecast = false;
  const auto load = load_of(p.filter.food);
  const auto lasts = [&](life::nitrogen_load n) {
    return life::time_alkalinity_lasts(
        {.load = n, .net = all_water, .now = p.alkalinity->now, .lowest = p.alkalinity->lowest});
  };
  const auto f = found(assess_life(p, state()), "life.alkalinity");
  const amount answer = number(f, "until the lowest that may be");
  TW_CHECK(by_hand, answer.low, lasts(load.high).lasts->low.value(), relative(1e-14));
  TW_CHECK(by_hand, answer.central, lasts(load.central).lasts->central.value(), relative(1e-14));
  TW_CHECK(by_hand, answer.high, lasts(load.low).lasts->high.value(), relative(1e-14));
  CHECK(f.before_acting == lasts(load.central).caution.text);
  CHECK(f.note.find(water::alkalinity_caution.text) != std::string::npos);
  p.alkalinity->measured_every = lasts(load.high).lasts->low;
  CHECK(found(assess_life(p, state()), "life.alkalinity").says == verdict::holds);
  p.alkalinity->measured_every = lasts(load.central).lasts->central;
  CHECK(found(assess_life(p, state()), "life.alkalinity").says == verdict::thin_margin);
  p.alkalinity->measured_every = lasts(load.central).lasts->central + hours(1.0);
  CHECK(found(assess_life(p, state()), "life.alkalinity").says == verdict::does_not_hold);
}

TEST_CASE("moving in: the oxygen of a power cut by hand") {
  auto p = plan();
  p.forecast = false;
  const volume display = litres(1600.0);
  const auto animals = life::oxygen_use(p.animals[0].breathing, celsius(24.0)).use;
  const auto filter = life::needs_of_nitrification(load_of(p.filter.food).central).oxygen.central;
  const auto saturation = water::oxygen_saturation_concentration(practical_salinity{35.0}, celsius(24.0));
  const std::array ways{life::aeration{.surface = square_metres(2.4), .transfer = life::still_surface_transfer},
                        life::aeration{.bubbles = per_hour(0.3), .alpha = fraction(0.7)}};
  const auto in = [&](std::size_t n) {
    return life::aeration_rate({.net = display, .temperature = celsius(24.0), .ways = std::span{ways}.first(n)});
  };
  const auto course = [&](double use, std::size_t n) -> life::oxygen_course {
    return {.tank = {.net = display, .use = animals * use + filter, .saturation = saturation, .aeration = in(n)},
            .start = saturation * 0.95};
  };
  const auto all = assess_life(p, state());
  const finding& f = found(all, "life.power_cut");
  const amount bare = number(f, "oxygen lasts, by the surface alone");
  TW_CHECK(by_hand, bare.central, life::time_to_oxygen_limit(course(1.0, 1)).time->value(), relative(1e-14));
  TW_CHECK(by_hand, bare.low, life::time_to_oxygen_limit(course(1.3, 1)).time->value(), relative(1e-14));
  // Ten hours on the battery, then by the surface alone from the level that is left.
  auto then = course(1.0, 1);
  then.start = life::oxygen_after(course(1.0, 2), hours(10.0));
  TW_CHECK(by_hand, number(f, "oxygen lasts, with battery air").central,
           (hours(10.0) + *life::time_to_oxygen_limit(then).time).value(), relative(1e-14));
  CHECK(f.before_acting == life::time_to_oxygen_limit(course(1.0, 1)).caution.text);
  CHECK(f.note.find("two to three times") != std::string::npos);

  const auto says = [&](duration help) {
    life_plan q = p;
    q.power_cut->help_within = help;
    return found(assess_life(q, state()), "life.power_cut").says;
  };
  const amount aided = number(f, "  plan for half of that");
  CHECK(says(duration::from_value(aided.low * 0.999)) == verdict::holds);
  CHECK(says(duration::from_value(aided.low * 1.001)) == verdict::thin_margin);
  CHECK(says(duration::from_value(aided.central * 0.999)) == verdict::thin_margin);
  CHECK(says(duration::from_value(aided.central * 1.001)) == verdict::does_not_hold);

  // Air that holds the level for as long as it is needed.
  p.power_cut->battery = battery_air{.bubbles = per_hour(3.0)};
  p.power_cut->help_within = hours(48.0);
  const auto held = assess_life(p, state());
  CHECK(found(held, "life.power_cut").says == verdict::holds);
  CHECK(found(held, "life.power_cut").note.starts_with("With the air that is left the oxygen stays above its limit."));

  // An open surface that is enough by itself: what the battery brought is gone in the end.
  auto wide = state();
  wide.display_surface = square_metres(40.0);
  const life::aeration open{.surface = square_metres(40.0), .transfer = life::still_surface_transfer};
  auto alone = course(1.0, 1).tank;
  alone.aeration = life::aeration_rate({.net = display, .temperature = celsius(24.0), .ways = std::span{&open, 1}});
  p.power_cut->battery->runs = hours(10.0);
  same(number(found(assess_life(p, wide), "life.power_cut"), "where it settles in the end"),
       amount_of(*life::steady_oxygen(alone)));

  // Without a battery the verdict is that of the surface alone.
  p.power_cut->battery.reset();
  CHECK(found(assess_life(p, state()), "life.power_cut").says == verdict::does_not_hold);

  auto unknown = state();
  unknown.display_surface.reset();
  const auto closed = found(assess_life(p, unknown), "life.power_cut");
  CHECK(number(closed, "oxygen lasts, by the surface alone").central < bare.central);
  CHECK(closed.measure_next[0].find("surface of the display") != std::string::npos);
}

TEST_CASE("moving in: circulation by hand and at its limits") {
  auto p = plan();
  p.forecast = false;
  const life::loop whole[] = {{.flow = litres_per_hour(6000.0)}};
  const life::loop carbon[] = {{.flow = litres_per_hour(900.0), .efficiency = fraction(0.6)}};
  const auto clear = found(assess_life(p, state()), "life.circulation");
  const auto hand = life::time_to_remove({.net = all_water, .loops = carbon}, percent(99.0));
  TW_CHECK(by_hand, number(clear, "99 % is out after").central, hand.time->value(), relative(1e-14));
  CHECK(clear.before_acting == hand.caution.text);
  CHECK(clear.says == verdict::holds);
  const amount turnover = number(clear, "turnovers of all the water by the returns");
  TW_CHECK(by_hand, turnover.central, life::turnover_rate({.net = all_water, .loops = whole}).value(), relative(1e-15));
  TW_CHECK(by_hand, turnover.low, life::turnover_rate({.net = litres(2010.0), .loops = whole}).value(),
           relative(1e-14));
  p.circulation.clear_within = *hand.time * 1.001;
  CHECK(found(assess_life(p, state()), "life.circulation").says == verdict::thin_margin);
  p.circulation.clears.clear();
  const auto best = found(assess_life(p, state()), "life.circulation");
  TW_CHECK(by_hand, number(best, "99 % is out after").central,
           life::time_to_remove({.net = all_water, .loops = whole}, percent(99.0)).time->value(), relative(1e-14));
}

TEST_CASE("moving in: arrivals and acclimation by hand") {
  auto p = plan();
  p.forecast = false;
  const auto match = life::match_waters({.bag = p.arrivals->bag,
                                         .tank = {.total = water::total_ammonia::from_nitrogen({}),
                                                  .ph = water::ph_nbs{8.1},
                                                  .salinity = practical_salinity{35.0},
                                                  .temperature = celsius(24.0)}});
  const auto all = assess_life(p, state());
  const finding& f = found(all, "life.arrivals");
  TW_CHECK(by_hand, number(f, "free ammonia in the bag, opened, as NH3").central,
           match.ammonia_at_tank_ph.central.as_ammonia().value(), relative(1e-15));
  TW_CHECK(by_hand, number(f, "  while the bag is closed").high, match.ammonia_as_is.high.as_ammonia().value(),
           relative(1e-15));
  TW_CHECK(by_hand, number(f, "salinity, tank less bag").central, match.salinity, relative(1e-15));
  CHECK(f.says == verdict::does_not_hold);
  CHECK(f.before_acting == match.caution.text);
  CHECK(f.note.find("no slow drip") != std::string::npos);

  const finding& drip = found(all, "life.acclimation");
  const flow_rate flow = life::gentle_flow({.start = litres(12.0),
                                            .step = {.salinity_from = practical_salinity{32.5},
                                                     .salinity_to = practical_salinity{35.0},
                                                     .temperature_from = celsius(22.5),
                                                     .temperature_to = celsius(24.0)},
                                            .salinity_per_hour = 1.0});
  TW_CHECK(by_hand, number(drip, "drip, at most").central, flow.value(), relative(1e-15));
  // 1 of 2.5 of salinity may be left.
  TW_CHECK(by_hand, number(drip, "until the rest is small enough").central,
           life::time_to_share({.start = litres(12.0), .flow = flow, .vessel = life::drip_vessel::overflowing},
                               fraction(0.6))
               .value(),
           relative(1e-12));
  TW_HOLDS(by_hand, number(drip, "  so many steps").central == 4.0);  // 0.75^4 = 0.32 <= 0.4 < 0.75^3

  // The same water: straight in, and nothing to bring over.
  p.arrivals->bag = {.total = water::total_ammonia::from_nitrogen({}),
                     .ph = water::ph_nbs{8.1},
                     .salinity = practical_salinity{35.0},
                     .temperature = celsius(24.0)};
  const auto straight = assess_life(p, state());
  CHECK(found(straight, "life.arrivals").says == verdict::holds);
  CHECK(found(straight, "life.acclimation").numbers.empty());
}

TEST_CASE("moving in: room to swim is that of the animal with the least") {
  auto p = plan();
  p.forecast = false;
  p.animals.push_back(p.animals[0]);
  p.animals[1].label = "pipefish";
  p.animals[1].swims = swimmer{.adult = centimetres(20.0), .speed = centimetres_per_second(8.0)};
  const auto room = life::swim_clearance(
      {.animal = centimetres(38.0), .run = metres(2.0), .width = metres(0.8), .speed = centimetres_per_second(5.0)});
  const auto f = found(assess_life(p, state()), "life.room");
  TW_CHECK(by_hand, number(f, "straight run, in body lengths").central, room.run_in_lengths, relative(1e-15));
  TW_CHECK(by_hand, number(f, "width asked for").central, room.width_wanted.value(), relative(1e-15));
  CHECK(f.says == verdict::holds);
  CHECK(f.note.starts_with("Tightest for the garden eels."));
  CHECK(f.before_acting == room.caution.text);
  p.room = swim_run{.run = metres(2.0), .width = metres(0.75)};
  CHECK(found(assess_life(p, state()), "life.room").says == verdict::does_not_hold);
}

TEST_CASE("moving in: what is missing is said, and never thrown") {
  const auto empty = assess_life({}, {});
  for (const std::string_view id : {"life.load", "life.filter_today", "life.filter_later", "life.free_ammonia",
                                    "life.start_up", "life.alkalinity", "life.power_cut", "life.circulation"}) {
    CAPTURE(std::string{id});
    CHECK(found(empty, id).says == verdict::not_enough_known);
    CHECK_FALSE(found(empty, id).measure_next.empty());
  }
  CHECK(empty.size() == 8);
  auto p = plan();
  p.room.reset();
  CHECK(found(assess_life(p, state()), "life.room").says == verdict::not_enough_known);
  p.ph.reset();
  CHECK(found(assess_life(p, state()), "life.arrivals").says == verdict::not_enough_known);
}

TEST_CASE("moving in: every finding about animals or chemicals carries its caution") {
  for (const auto& all : {assess_life(plan(), state()), assess_life({}, state())}) {
    for (const finding& f : all) {
      CAPTURE(std::string{f.id});
      CHECK(f.day == "Moving in");
      if (f.id != "life.load" || f.says != verdict::not_enough_known) CHECK_FALSE(f.before_acting.empty());
    }
  }
}

TEST_CASE("moving in: bad numbers are refused by the part that gets them") {
  auto p = plan();
  p.animals[0].breathing.count = -1.0;
  CHECK_THROWS_WITH_AS((void)assess_life(p, state()),
                       "tankwright::life::oxygen_use: garden eels: count = -1 is not possible; expected at least 0",
                       invalid_input);
  p = plan();
  p.filter.surfaces[1].wet = square_metres(-1.0);
  CHECK_THROWS_WITH_AS((void)assess_life(p, state()),
                       "tankwright::life::capacity_of: media: area = -1 m2 is not possible; expected at least 0 m2",
                       invalid_input);
  auto hot = state();
  hot.water = celsius(33.0);
  CHECK_THROWS_AS((void)assess_life(plan(), hot), out_of_range);
}
