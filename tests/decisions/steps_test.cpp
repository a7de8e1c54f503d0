// SPDX-License-Identifier: BSL-1.0
// The steps that decisions share, each against what is worked out by hand.
#include <cmath>
#include <tankwright/decisions/bottom/items.hpp>
#include <tankwright/decisions/cases/filter_balance.hpp>
#include <tankwright/decisions/cases/life_case.hpp>
#include <tankwright/decisions/cases/plumbing_case.hpp>
#include <tankwright/decisions/closing/outage.hpp>
#include <tankwright/decisions/figures/vessel_figures.hpp>
#include <tankwright/decisions/first_fill/panel_load.hpp>
#include <tankwright/plan/rules/rules.hpp>
#include <tankwright/plumbing/circuit.hpp>

#include "decisions/moving_in_plan.hpp"
#include "decisions/some_room.hpp"
#include "plumbing/circuits.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace td = tankwright::decisions;
namespace vs = tankwright::vessel;

namespace {

evidence by_hand(const std::string& function, const char* how, kind rests_on = kind::identity) {
  return {"tankwright::" + function, rests_on, how};
}

vs::item rocks(double low, double central, double high, std::string_view reason) {
  const auto solid = [](double x) { return vs::solid_volume{litres(x)}; };
  const vs::pore_volume pores{litres(0.0)};
  const auto whole = [](double x) { return vs::envelope_volume{litres(x)}; };
  return {.label = "rocks",
          .solids = {solid(low), solid(central), solid(high), reason},
          .pores = {pores, pores, pores, {}},
          .envelope = {whole(low), whole(central), whole(high), reason},
          .dry_mass = exactly(kilograms(1.0))};
}

/// Water from a basin through one pipe into the open: h = (K + 1) v^2/2g without friction worth speaking of.
plumbing::circuit short_pipe(double least, double central, double most) {
  plumbing::circuit c{.sources = {{.label = "basin", .level = metres(2.0)}},
                      .runs = {run("pipe", "basin", "end", 0.001, 40.0, central)},
                      .outlets = {outlet("end", 0.0, true)}};
  c.outlets[0].exit = plumbing::known_loss(1.0);
  const auto k = [](double x) { return plumbing::known_loss(x).central; };
  if (least < most) c.runs[0].fittings = {k(least), k(central), k(most), "tables differ"};
  return c;
}

/// A window of glass, 0.6 m high.
vs::panel window(vs::panel_edges edges) {
  return {.width = metres(1.0),
          .height = metres(0.6),
          .thickness = millimetres(15.0),
          .edges = edges,
          .material = vs::annealed_glass};
}

}  // namespace

TEST_CASE("steps: the water behind a panel runs out over a free top and stands over a held one") {
  const evidence about = by_hand("decisions::water_behind", "heights by hand");
  plan::wall_panel wall{.panel = window(vs::panel_edges::all_supported), .lower_edge = metres(0.2)};
  const auto held = [&](double level) { return td::water_behind(wall, metres(level)); };
  TW_CHECK(about, held(0.1), metres(0.0), tolerance{});
  TW_CHECK(about, held(0.2), metres(0.0), tolerance{});
  TW_CHECK(about, held(0.7), metres(0.5), relative(1e-15));
  TW_CHECK(about, held(0.9), metres(0.7), relative(1e-15));
  for (const auto free : {vs::panel_edges::top_free, vs::panel_edges::bottom_clamped_top_free}) {
    wall.panel = window(free);
    TW_CHECK(about, held(0.1), metres(0.0), tolerance{});
    TW_CHECK(about, held(0.7), metres(0.5), relative(1e-15));
    TW_CHECK(about, held(0.9), metres(0.6), relative(1e-15));
  }
}

TEST_CASE("steps: volumes of several items add up end by end, for the reason of the first") {
  const evidence sums = by_hand("decisions::sum_over", "sums by hand");
  const evidence thin = by_hand("decisions::as_volume", "the same numbers");
  const std::vector<vs::item> items{rocks(1.0, 2.0, 4.0, "weighed"), rocks(10.0, 10.0, 10.0, "measured")};
  const auto all = td::sum_over<volume>(items, [](const vs::item& i) { return td::as_volume(i.solids); });
  TW_CHECK(sums, all.low, litres(11.0), relative(1e-15));
  TW_CHECK(sums, all.central, litres(12.0), relative(1e-15));
  TW_CHECK(sums, all.high, litres(14.0), relative(1e-15));
  CHECK(all.reason == "weighed");
  const auto one = td::as_volume(items[0].solids);
  TW_CHECK(thin, one.low, litres(1.0), tolerance{});
  TW_CHECK(thin, one.central, litres(2.0), tolerance{});
  TW_CHECK(thin, one.high, litres(4.0), tolerance{});
  CHECK(one.reason == "weighed");
}

TEST_CASE("steps: what comes together in a day") {
  const evidence about = by_hand("decisions::in_a_day", "86400 s");
  TW_CHECK(about, td::in_a_day(kilograms_per_second(1.0)), kilograms(86400.0), relative(1e-15));
  TW_CHECK(about, td::in_a_day(kilograms_per_second(0.0)), kilograms(0.0), tolerance{});
}

TEST_CASE("steps: the food of a plan at the ends of its rule, and what moved rock carried of it") {
  const evidence about =
      by_hand("decisions::food_at", "Timmons and Ebeling 2007: 0.092 of dry protein, by hand; 0.16 of wet");
  const plan::build build = moving_in();  // 24 g of wet food with 11 %, 4 g of dry with 48 %; 30 of 40 kg of rock
  const td::situation s{build, known_state()};
  const auto& filter = s.life().in.filter;
  using ends = estimate<life::nitrogen_load>;
  const td::food_end middle = td::food_at(filter, &ends::central);
  REQUIRE(middle.meals.size() == 2);
  TW_CHECK(about, middle.meals[0].mean.get().as_nitrogen(), grams_per_day(24.0 * 0.11 * 0.16), relative(1e-12));
  TW_CHECK(about, middle.meals[1].mean.get().as_nitrogen(), grams_per_day(4.0 * 0.48 * 0.092), relative(1e-12));
  TW_CHECK(about, middle.rock, grams_per_day(0.75 * (24.0 * 0.11 * 0.16 + 4.0 * 0.48 * 0.092)), relative(1e-12));
  const td::food_end least = td::food_at(filter, &ends::low), most = td::food_at(filter, &ends::high);
  TW_CHECK(about, least.meals[1].mean.get().as_nitrogen(), grams_per_day(0.75 * 4.0 * 0.48 * 0.092), relative(1e-12));
  TW_CHECK(about, most.meals[1].mean.get().as_nitrogen(), grams_per_day(1.25 * 4.0 * 0.48 * 0.092), relative(1e-12));
  CHECK(least.rock < middle.rock);
  CHECK(middle.rock < most.rock);
}

TEST_CASE("steps: a start-up with less food peaks lower, one with more food and less rock alive peaks higher") {
  const evidence about =
      by_hand("decisions::simulate", "less food, faster films, more of them: a lower peak", kind::property);
  plan::build build = moving_in();
  plan::set(build, "life.start_up.survives", "50 %");
  const td::situation s{build, known_state()};
  const td::forecast_runs runs = td::simulate(s.life());
  const auto peak = [](const life::start_up_result& r) { return r.summary.ammonia.level; };
  TW_HOLDS(about, peak(runs.fast) < peak(runs.central));
  TW_HOLDS(about, peak(runs.central) < peak(runs.harmed));
  // 0.75, 1 and 1.25 of the dry food; the low end of the wet food is 0.092 of its protein, the others 0.16 of it.
  TW_HOLDS(about, runs.fast.summary.nitrogen_added < runs.central.summary.nitrogen_added);
  TW_HOLDS(about, runs.central.summary.nitrogen_added < runs.harmed.summary.nitrogen_added);
}

TEST_CASE("steps: a circuit is solved three times where its fittings are doubtful, and once where they are known") {
  const evidence about = by_hand("decisions::circuit_band_of", "h = (K + 1) v^2/2g, a pipe of a millimetre");
  const water::liquid water = water::seawater(practical_salinity{35.0}, celsius(25.0));
  const auto by_hand_at = [](double k) {
    const double speed = std::sqrt(2.0 * 9.80665 * 2.0 / (k + 1.0));
    return cubic_metres_per_second(speed * 3.14159265358979 * 0.04 * 0.04 / 4.0);
  };
  const td::circuit_band doubtful = td::circuit_band_of(short_pipe(5.0, 10.0, 20.0), water);
  // Friction of the millimetre is below 0.0005 of ten velocity heads.
  TW_CHECK(about, doubtful.least.delivered, by_hand_at(20.0), relative(1e-4));
  TW_CHECK(about, doubtful.central.delivered, by_hand_at(10.0), relative(1e-4));
  TW_CHECK(about, doubtful.most.delivered, by_hand_at(5.0), relative(2e-4));
  const td::circuit_band known = td::circuit_band_of(short_pipe(10.0, 10.0, 10.0), water);
  TW_CHECK(about, known.central.delivered, by_hand_at(10.0), relative(1e-4));
  CHECK(known.least.delivered == known.central.delivered);
  CHECK(known.most.delivered == known.central.delivered);
}

TEST_CASE("steps: the display in a picture, to scale") {
  const evidence about = by_hand("decisions::display_figures_of", "the measures of the plan");
  plan::build build;
  CHECK(td::display_figures_of(build).empty());
  give(build, {{"vessel.length", "2 m"},
               {"vessel.width", "1 m"},
               {"vessel.height", "0.6 m"},
               {"vessel.water_level", "0.5 m"},
               {"vessel.sand[1].depth", "0.1 m"},
               {"plumbing.overflow.crest_height", "0.48 m"},
               {"plumbing.return[1].label", "left"},
               {"plumbing.return[1].below_edge", "30 mm"}});
  const auto figures = td::display_figures_of(build);
  REQUIRE(figures.size() == 1);
  const auto& f = figures[0];
  REQUIRE(f.rectangles.size() == 3);
  const auto is = [](const td::rectangle& r, double width, double height, std::string_view fill) {
    return r.left == 0.0 && r.bottom == 0.0 && r.width == width && r.height == height && r.fill == fill;
  };
  TW_HOLDS(about, is(f.rectangles[0], 2.0, 0.5, "water"));
  TW_HOLDS(about, is(f.rectangles[1], 2.0, 0.1, "sand"));
  TW_HOLDS(about, is(f.rectangles[2], 2.0, 0.6, "wall"));
  REQUIRE(f.marks.size() == 4);
  const std::pair<const char*, double> levels[] = {
      {"water", 0.5}, {"overflow edge", 0.48}, {"left", 0.45}, {"rim", 0.6}};
  for (std::size_t i = 0; i < 4; ++i) {
    CHECK(f.marks[i].label == levels[i].first);
    TW_CHECK(about, f.marks[i].height, levels[i].second, relative(1e-15));
    CHECK(f.marks[i].limit == (i == 3));
  }
}

TEST_CASE("steps: keys that cannot all be true, and a plan that asks nothing") {
  const evidence about = by_hand("plan::hold_rules", "water above the rim; a plan without tables");
  const auto of = [](const plan::build& build) {
    std::vector<plan::mistake> all;
    plan::hold_rules(build, all);
    return all;
  };
  const auto nothing = of({});
  REQUIRE(nothing.size() == 1);
  TW_HOLDS(about, nothing[0].path.empty());
  plan::build build;
  give(build, {{"vessel.length", "2 m"}, {"vessel.width", "1 m"}, {"vessel.height", "0.6 m"}});
  plan::set(build, "vessel.water_level", "0.6 m");
  TW_HOLDS(about, of(build).empty());
  plan::set(build, "vessel.water_level", "0.601 m");
  const auto over = of(build);
  REQUIRE(over.size() == 1);
  TW_HOLDS(about, over[0].path == "vessel.water_level");
  TW_HOLDS(about, over[0].clashes == "vessel.height");
}

TEST_CASE("steps: what is on in the tank, all of it, what never stops, nothing, and in the mean") {
  const evidence about = by_hand("decisions::heat_of", "power times the part that ends in the water");
  const plan::build build =
      some_room();  // a pump of 150 W, 80 % into the water; lights of 200 W, 30 %, 40 % of the day
  const td::situation s{build};
  const td::room_case& c = s.room();
  const auto heat = [&](td::powered which) {
    double sum = 0.0;
    for (const auto& one : td::heat_of(c, c.solved(td::season::winter), which).sources) sum += one.heat.get().value();
    return watts(sum);
  };
  TW_CHECK(about, heat(td::powered::all), watts(120.0 + 60.0), relative(1e-14));
  TW_CHECK(about, heat(td::powered::always), watts(120.0), relative(1e-14));
  TW_CHECK(about, heat(td::powered::none), watts(0.0), tolerance{});
  TW_CHECK(about, heat(td::powered::on_average), watts(120.0 + 24.0), relative(1e-14));
  const auto tank = td::heat_of(c, c.solved(td::season::winter), td::powered::all);
  REQUIRE(tank.walls.size() == 1);
  TW_CHECK(about, tank.walls[0].area.get(), square_metres(6.0), tolerance{});
  CHECK(tank.surfaces.size() == 3);
}

TEST_CASE("steps: without power every surface lies still, and nothing warms the water") {
  const evidence about = by_hand("decisions::outage_of", "rho c V of 2000 L; still water");
  const plan::build build = some_room();
  const td::situation s{build};
  const room::uncontrolled_tank tank = td::outage_of(s.room());
  TW_HOLDS(about, tank.tank.sources.empty());
  REQUIRE(tank.tank.surfaces.size() == 3);
  for (const auto& surface : tank.tank.surfaces) CHECK(surface.agitation == room::still_surface);
  // Sea water of 35 at 25 degC: 1023.3 kg/m3 and 4.00 kJ/(kg K), from tables to their last digit.
  TW_CHECK(about, tank.heat_capacity.get(), joules_per_kelvin(2.0 * 1023.3 * 4000.0), relative(2e-3));
  REQUIRE(tank.room);
  TW_CHECK(about, tank.room->settles_at.get(), celsius(8.0), tolerance{});
  TW_CHECK(about, tank.room->time_constant.get(), hours(18.0), tolerance{});
}

TEST_CASE("steps: a season settles where what evaporates leaves with the air") {
  const evidence about = by_hand("decisions::season_of", "the balance of moisture closes", kind::property);
  const plan::build build = some_room();
  const td::situation s{build};
  const plan::season_inputs march{
      .indoors = celsius(21.0), .outdoors = celsius(8.0), .outdoor_humidity = relative_humidity::from_percent(75.0)};
  const td::solved_season spring = td::season_of(s.room(), td::season::winter, march);
  for (const auto* room : {&spring.humidity, &spring.humidity_uncovered}) {
    const auto& b = room->central;
    CHECK(b.evaporation.value() > 0.0);
    TW_CHECK(about, b.evaporation + b.sources, b.ventilation + b.dehumidified + b.condensing, relative(1e-9));
    TW_CHECK(about, b.sources, grams_per_hour(100.0), relative(1e-14));
  }
  TW_HOLDS(about, spring.humidity_uncovered.central.evaporation > spring.humidity.central.evaporation);
  TW_CHECK(about, spring.as_planned.room.temperature.get(), celsius(21.0), tolerance{});
  CHECK(spring.uncovered.surfaces[0].covered.value() == 0.0);
}

TEST_CASE("steps: air whose humidity was measured is within what is published, other air is not") {
  const evidence about = by_hand("decisions::policy_for", "Shah 2014: 28 to 95 %");
  const auto at = [](double percent) {
    return td::policy_for({.temperature = celsius(22.0), .humidity = relative_humidity::from_percent(percent)});
  };
  TW_HOLDS(about, at(27.999) == extrapolate);
  TW_HOLDS(about, at(28.0) == range_policy::published);
  TW_HOLDS(about, at(95.0) == range_policy::published);
  TW_HOLDS(about, at(95.001) == extrapolate);
}
