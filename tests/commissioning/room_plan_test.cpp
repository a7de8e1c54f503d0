// SPDX-License-Identifier: BSL-1.0
#include <tankwright/commissioning/room_plan.hpp>

#include <algorithm>
#include <set>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twc = tankwright::commissioning;

namespace {

const evidence by_hand{"tankwright::commissioning::assess_room", kind::identity, "the same calls by hand"};
const evidence pictured{"tankwright::commissioning::figures_of", kind::identity, "the numbers of the finding"};
const evidence property{"tankwright::commissioning::assess_room", kind::property, "order and limits"};

const twc::finding* look_for(const std::vector<twc::finding>& all, std::string_view id) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const auto& f) { return f.id == id; });
  return found == all.end() ? nullptr : &*found;
}

const twc::finding& find(const std::vector<twc::finding>& all, std::string_view id) {
  const twc::finding* const found = look_for(all, id);
  REQUIRE_MESSAGE(found, id);
  return *found;
}

const amount& number(const twc::finding& f, std::string_view label) {
  const auto found = std::find_if(f.numbers.begin(), f.numbers.end(), [&](const auto& e) { return e.label == label; });
  REQUIRE_MESSAGE(found != f.numbers.end(), label);
  return found->value;
}

bool has_number(const twc::finding& f, std::string_view label) {
  return std::any_of(f.numbers.begin(), f.numbers.end(), [&](const auto& e) { return e.label == label; });
}

estimate<volume> water_of(double litre_low, double litre, double litre_high) {
  return {litres(litre_low), litres(litre), litres(litre_high), "tape measure"};
}

twc::system_state some_system() {
  twc::system_state state;
  state.water = celsius(25.0);
  state.salinity = practical_salinity{35.0};
  state.display_surface = square_metres(2.4);
  state.sump_surface = square_metres(0.8);
  state.display_water = water_of(1700.0, 1750.0, 1800.0);
  state.sump_water = water_of(240.0, 250.0, 260.0);
  return state;
}

/// A room that asks for everything.
twc::room_plan some_room() {
  twc::room_plan plan{.volume = cubic_metres(60.0)};
  plan.winter = twc::room_season{.indoors = celsius(22.0), .outdoors = celsius(3.0),
                                 .outdoor_humidity = relative_humidity::from_percent(85.0),
                                 .coldest_night = celsius(-8.0)};
  plan.summer = twc::room_season{.indoors = celsius(26.0), .outdoors = celsius(24.0),
                                 .outdoor_humidity = relative_humidity::from_percent(70.0),
                                 .air_changes = per_hour(1.0)};
  plan.display.covered = percent(80.0);
  plan.more_surfaces = {{.label = "weir", .area = square_metres(0.1), .moved = room::lively}};
  plan.sources = {{.label = "two people", .rate = grams_per_hour(100.0)}};
  plan.window = twc::cold_surface{.transmittance = watts_per_square_metre_kelvin(2.8)};
  plan.wall = twc::cold_surface{.transmittance = watts_per_square_metre_kelvin(0.6)};
  plan.appliances = {{.label = "pump", .electricity = watts(150.0), .into_water = percent(80.0)},
                     {.label = "lights", .electricity = watts(200.0), .into_water = percent(30.0), .on = percent(40.0)}};
  plan.heating = twc::heating_plan{
      .walls = {{.label = "sides", .area = square_metres(6.0), .transmittance = watts_per_square_metre_kelvin(3.0)}},
      .heater = watts(900.0),
      .filled_at = celsius(12.0),
      .outage = twc::outage_plan{.lasts = hours(12.0), .lowest = celsius(20.0),
                                 .room = room::drifting_room{.settles_at = celsius(8.0), .time_constant = hours(18.0)}}};
  plan.top_off = twc::top_off_plan{.reservoir = litres(60.0), .unattended = days(3.0),
                                   .lowest = practical_salinity{33.0}, .highest = practical_salinity{37.0},
                                   .free_volume = litres(90.0),
                                   .chamber = twc::chamber_levels{.surface = square_metres(0.3),
                                                                  .running = centimetres(26.0),
                                                                  .lowest = centimetres(15.0)}};
  plan.price = room::electricity_price{0.30};
  return plan;
}

/// The room of `some_room` in `some_system`, written out.
room::tank_room winter_by_hand() {
  return {.room = {.volume = cubic_metres(60.0),
                   .air_changes = per_hour(0.5),
                   .temperature = celsius(22.0),
                   .outdoor = {.temperature = celsius(3.0), .humidity = relative_humidity::from_percent(85.0)}},
          .water = {.temperature = celsius(25.0), .salinity = practical_salinity{35.0}},
          .surfaces = {{.label = "display", .area = square_metres(2.4), .moved = room::gently_moving,
                        .covered = percent(80.0)},
                       {.label = "sump", .area = square_metres(0.8), .moved = room::gently_moving},
                       {.label = "weir", .area = square_metres(0.1), .moved = room::lively}},
          .sources = {{.label = "two people", .rate = grams_per_hour(100.0)}}};
}

room::tank_room summer_by_hand() {
  room::tank_room r = winter_by_hand();
  r.room.air_changes = per_hour(1.0);
  r.room.temperature = celsius(26.0);
  r.room.outdoor = {.temperature = celsius(24.0), .humidity = relative_humidity::from_percent(70.0)};
  return r;
}

room::tank_heat heat_by_hand(std::vector<room::heat_source> sources) {
  const room::tank_room r = winter_by_hand();
  return {.water = r.water,
          .air = room::humidity_balance(r).central.air,
          .surfaces = r.surfaces,
          .walls = {{.label = "sides", .area = square_metres(6.0), .transmittance = watts_per_square_metre_kelvin(3.0)}},
          .sources = std::move(sources)};
}

}  // namespace

TEST_CASE("room: air, by hand") {
  const auto all = twc::assess_room(some_room(), some_system());
  const auto winter = room::humidity_balance(winter_by_hand());
  const auto summer = room::humidity_balance(summer_by_hand());
  room::tank_room open = winter_by_hand();
  for (auto& s : open.surfaces) s.covered = fraction(0.0);

  const auto& left = find(all, "room.evaporation");
  const auto rate = room::top_off_rate(
      {winter.low.evaporation, winter.central.evaporation, winter.high.evaporation, winter.reason});
  TW_CHECK(by_hand, number(left, "covered as planned, in winter").low, rate.low.value(), relative(1e-14));
  TW_CHECK(by_hand, number(left, "covered as planned, in winter").high, rate.high.value(), relative(1e-14));
  TW_CHECK(by_hand, number(left, "without covers, in winter").central,
           in_kilograms_per_second(room::humidity_balance(open).central.evaporation) /
               in_kilograms_per_cubic_metre(water::density(practical_salinity{0.0}, celsius(20.0))),
           relative(1e-12));

  const auto& air = find(all, "room.humidity");
  TW_CHECK(by_hand, number(air, "settles in winter at").high, winter.high.air.humidity.get().fraction(),
           relative(1e-14));
  TW_CHECK(by_hand, number(air, "settles in summer at").central, summer.central.air.humidity.get().fraction(),
           relative(1e-14));
  TW_CHECK(by_hand, number(air, "points below the limit, winter").central,
           0.6 - winter.central.air.humidity.get().fraction(), relative(1e-12));

  const auto limit = relative_humidity::from_percent(60.0);
  const auto& drying = find(all, "room.drying");
  const auto machine = room::dehumidifier_for(summer_by_hand(), limit);
  TW_CHECK(by_hand, number(drying, "dehumidifier by its label, summer").central,
           in_kilograms_per_second(machine.suggested) / 1000.0, relative(1e-14));
  TW_CHECK(by_hand, number(drying, "or air changes in winter").central,
           room::ventilation_for(winter_by_hand(), limit).air_changes.central.value(), relative(1e-14));
  CHECK_FALSE(has_number(drying, "or air changes in summer"));  // 24 degC and 70 % outdoors is no drier than the limit
  CHECK_FALSE(drying.note.empty());

  const room::building_element pane{.transmittance = watts_per_square_metre_kelvin(2.8), .inside = celsius(22.0),
                                    .outside = celsius(-8.0)};
  const room::building_element wall{.transmittance = watts_per_square_metre_kelvin(0.6), .inside = celsius(22.0),
                                    .outside = celsius(3.0), .surface_resistance = room::mould_surface_resistance};
  TW_CHECK(by_hand, number(find(all, "room.window"), "it drips from").central, room::highest_humidity(pane).fraction(),
           relative(1e-14));
  TW_CHECK(by_hand, number(find(all, "room.wall"), "80 % at the wall from").central,
           room::highest_humidity(wall, room::mould_humidity).fraction(), relative(1e-14));
  TW_CHECK(by_hand, number(find(all, "room.window"), "its inside face").central,
           in_kelvins(room::surface_temperature(pane)), relative(1e-14));
}

TEST_CASE("room: heat, by hand") {
  const auto all = twc::assess_room(some_room(), some_system());
  const auto steady = heat_by_hand({{.label = "pump", .heat = watts(120.0)}});
  const auto heater = room::heater_for(steady);
  const auto& fit = find(all, "room.heater");
  TW_CHECK(by_hand, number(fit, "heater to fit").central, in_watts(heater.suggested), relative(1e-13));
  TW_CHECK(by_hand, number(fit, "left over").low, 900.0 - in_watts(heater.needed.high), relative(1e-13));

  auto cold = steady;
  cold.water.temperature = celsius(12.0);
  const room::tank_water sea{.temperature = celsius(25.0), .salinity = practical_salinity{35.0}};
  const auto warm = room::warm_up({.tank = cold, .heat_capacity = room::heat_capacity_of(sea, litres(2000.0)),
                                   .target = celsius(25.0), .heater = watts(900.0)});
  TW_CHECK(by_hand, number(find(all, "room.warm_up"), "warm-up").central, in_seconds(warm.time.central),
           relative(1e-13));

  room::outage dark{.tank = heat_by_hand({}), .heat_capacity = room::heat_capacity_of(sea, litres(2000.0)),
                    .room = room::drifting_room{.settles_at = celsius(8.0), .time_constant = hours(18.0)}};
  for (auto& s : dark.tank.surfaces) s.moved = room::still_surface;
  const auto& outage = find(all, "room.outage");
  const auto end = room::outage_curve(dark, hours(12.0), hours(12.0)).points.back().water;
  TW_CHECK(by_hand, number(outage, "water at the end of the power cut").central, in_kelvins(end.central),
           relative(1e-10));
  TW_CHECK(by_hand, number(outage, "water at the end of the power cut").low, in_kelvins(end.low), relative(1e-10));
  TW_CHECK(by_hand, number(outage, "the limit is reached after").central,
           in_seconds(*room::time_to_limit(dark, celsius(20.0)).expected), relative(1e-10));
  dark.heat_capacity = room::heat_capacity_of(sea, litres(1940.0));  // the least water cools soonest
  TW_CHECK(by_hand, number(outage, "the limit is reached after").low,
           in_seconds(*room::time_to_limit(dark, celsius(20.0)).soonest), relative(1e-10));

  // Half winter, half summer; lights on for 40 % of the day.
  const auto& cost = find(all, "room.running");
  const auto net = room::heat_balance(
                       heat_by_hand({{.label = "pump", .heat = watts(120.0)}, {.label = "lights", .heat = watts(24.0)}}))
                       .net;
  const auto heating = room::running_cost({.heat = net, .price = room::electricity_price{0.30}});
  TW_CHECK(by_hand, number(cost, "electricity a day in winter").central,
           in_joules(heating.per_day.central) + (150.0 + 80.0) * 86400.0, relative(1e-12));
  TW_CHECK(by_hand, number(cost, "cost a day in winter").high,
           heating.cost_per_day.high + (0.150 + 0.080) * 24.0 * 0.30, relative(1e-12));
}

TEST_CASE("room: top-off, by hand") {
  const auto all = twc::assess_room(some_room(), some_system());
  const auto winter = room::humidity_balance(winter_by_hand());
  const auto rate = room::top_off_rate(
      {winter.low.evaporation, winter.central.evaporation, winter.high.evaporation, winter.reason});
  TW_CHECK(by_hand, number(find(all, "room.reservoir"), "it lasts").low,
           in_seconds(room::reservoir_lasts(litres(60.0), rate).low), relative(1e-13));

  const auto& dry = find(all, "room.dry");
  const auto level = room::return_level({.surface = square_metres(0.3), .top_off = rate,
                                         .running_level = centimetres(26.0), .lowest_level = centimetres(15.0)});
  TW_CHECK(by_hand, number(dry, "return chamber falls by").high, level.fall.high.value(), relative(1e-13));
  TW_CHECK(by_hand, number(dry, "until the pump draws air").low, in_seconds(level.until_lowest.low), relative(1e-13));
  TW_CHECK(by_hand, number(dry, "practical salinity by then").high,
           water::drift({.volume = litres(1940.0), .salinity = practical_salinity{35.0}, .temperature = celsius(25.0),
                         .evaporation = rate.high, .top_off = litres_per_day(0.0)},
                        days(3.0))
               .salinity.value(),
           relative(1e-13));

  const auto& stuck = find(all, "room.stuck");
  const room::reservoir_request request{
      .water = {.temperature = celsius(25.0), .salinity = practical_salinity{35.0}},
      .volume = litres(2000.0),
      .lowest = practical_salinity{33.0},
      .free_volume = litres(90.0)};
  TW_CHECK(by_hand, number(stuck, "practical salinity when all has run in").central,
           room::stuck_valve(request, litres(60.0)).salinity.value(), relative(1e-13));
  TW_CHECK(by_hand, number(stuck, "largest reservoir without harm").central,
           in_cubic_metres(room::largest_reservoir(request).largest), relative(1e-13));
}

TEST_CASE("room: every finding that can hurt carries its caution, and all their sources") {
  const auto all = twc::assess_room(some_room(), some_system());
  CHECK(all.size() == 13);
  std::set<std::string_view> ids;
  for (const twc::finding& f : all) {
    CHECK_MESSAGE(!f.before_acting.empty(), f.id);
    CHECK_MESSAGE(!f.sources.empty(), f.id);
    CHECK_MESSAGE(!f.numbers.empty(), f.id);
    CHECK_MESSAGE((f.day == "Closing the top" || f.day == "Running"), f.id);
    CHECK_MESSAGE(ids.insert(f.id).second, f.id);
    for (const twc::entry& e : f.numbers) {
      INFO(f.id, ": ", e.label);
      CHECK(e.value.low <= e.value.central);
      CHECK(e.value.central <= e.value.high);
      CHECK_FALSE(e.value.quantity.empty());
    }
  }
  CHECK(find(all, "room.outage").before_acting == room::outage_caution.text);
  CHECK(find(all, "room.heater").before_acting == room::water_and_electricity_caution.text);
  CHECK(find(all, "room.running").before_acting == room::water_and_electricity_caution.text);
  CHECK(find(all, "room.stuck").before_acting == room::top_off_caution.text);
  CHECK(find(all, "room.dry").before_acting == room::starving_pump_caution.text);
  CHECK(find(all, "room.window").before_acting == room::mould_caution.text);
}

TEST_CASE("room: the figures belong to findings and end where the numbers say") {
  const auto plan = some_room();
  const auto all = twc::assess_room(plan, some_system());
  const auto figures = twc::figures_of(plan, some_system());
  REQUIRE(figures.size() == 2);
  for (const twc::figure& f : figures) {
    CHECK(look_for(all, f.id));
    for (const twc::curve& c : f.curves) {
      CHECK(c.x.size() == c.y.size());
      CHECK(std::is_sorted(c.x.begin(), c.x.end()));
    }
  }
  const auto& humidity = figures[0];
  CHECK(humidity.id == "room.humidity");
  CHECK(humidity.curves.size() == 5);  // two seasons, covers on and off, and the limit
  TW_CHECK(property, humidity.curves[0].y.front(), 0.60, relative(1e-12));
  CHECK(humidity.curves[0].x.back() == 86400.0);
  const auto& outage = figures[1];
  CHECK(outage.id == "room.outage");
  const auto& water = outage.curves[0];
  REQUIRE(water.x.size() == 49);
  TW_CHECK(property, water.y.front(), 298.15, relative(1e-14));
  TW_CHECK(property, water.x[24], 12.0 * 3600.0, relative(1e-12));
  TW_CHECK(pictured, water.y[24], number(find(all, "room.outage"), "water at the end of the power cut").central, within(1e-6));
  CHECK(water.low.back() < water.high.back());
}

TEST_CASE("room: verdicts on both sides of their limits") {
  using twc::verdict;
  const auto state = some_system();
  const auto with = [&](auto change, std::string_view id) {
    twc::room_plan plan = some_room();
    change(plan);
    return find(twc::assess_room(plan, state), id).says;
  };
  const auto base = twc::assess_room(some_room(), state);

  // The humidity: the wetter season decides, in the band and in the middle.
  const double wettest = std::max(number(find(base, "room.humidity"), "settles in summer at").high,
                                  number(find(base, "room.humidity"), "settles in winter at").high);
  const double likely = number(find(base, "room.humidity"), "settles in summer at").central;
  const auto target = [](double h) {
    return [h](twc::room_plan& p) { p.target = relative_humidity::from_fraction(h); };
  };
  CHECK(with(target(wettest + 0.051), "room.humidity") == verdict::holds);
  CHECK(with(target(wettest + 0.049), "room.humidity") == verdict::thin_margin);
  CHECK(with(target(likely + 0.001), "room.humidity") == verdict::thin_margin);
  CHECK(with(target(likely - 0.001), "room.humidity") == verdict::does_not_hold);

  // The heater, against its high estimate with the margin, and its central one.
  const amount& needed = number(find(base, "room.heater"), "heat to hold the water in winter");
  const auto heater = [](double w) { return [w](twc::room_plan& p) { p.heating->heater = watts(w); }; };
  CHECK(with(heater(1.25 * needed.high + 0.01), "room.heater") == verdict::holds);
  CHECK(with(heater(1.25 * needed.high - 0.01), "room.heater") == verdict::thin_margin);
  CHECK(with(heater(needed.central + 0.01), "room.heater") == verdict::thin_margin);
  CHECK(with(heater(needed.central - 0.01), "room.heater") == verdict::does_not_hold);
  CHECK(with(heater(needed.high - 0.01), "room.warm_up") == verdict::does_not_hold);
  CHECK(with(heater(needed.high + 50.0), "room.warm_up") == verdict::for_information);

  // The outage: a kelvin above the limit in the whole band.
  const amount& cold = number(find(base, "room.outage"), "water at the end of the power cut");
  const auto lowest = [](double k) { return [k](twc::room_plan& p) { p.heating->outage->lowest = kelvins(k); }; };
  CHECK(with(lowest(cold.low - 1.001), "room.outage") == verdict::holds);
  CHECK(with(lowest(cold.low - 0.999), "room.outage") == verdict::thin_margin);
  CHECK(with(lowest(cold.central + 0.001), "room.outage") == verdict::does_not_hold);

  // The reservoir: whether it lasts, and what it does when its valve sticks.
  const amount& lasts = number(find(base, "room.reservoir"), "it lasts");
  const auto away = [](double s) { return [s](twc::room_plan& p) { p.top_off->unattended = seconds(s); }; };
  CHECK(with(away(0.999 * lasts.low), "room.reservoir") == verdict::holds);
  CHECK(with(away(1.001 * lasts.low), "room.reservoir") == verdict::thin_margin);
  CHECK(with(away(1.001 * lasts.central), "room.reservoir") == verdict::does_not_hold);
  const amount& starves = number(find(base, "room.dry"), "until the pump draws air");
  CHECK(with(away(0.999 * starves.low), "room.dry") == verdict::holds);
  CHECK(with(away(1.001 * starves.low), "room.dry") == verdict::thin_margin);
  CHECK(with(away(1.001 * starves.central), "room.dry") == verdict::does_not_hold);
  const auto reservoir = [](double l) { return [l](twc::room_plan& p) { p.top_off->reservoir = litres(l); }; };
  CHECK(with(reservoir(81.0), "room.stuck") == verdict::holds);
  CHECK(with(reservoir(89.0), "room.stuck") == verdict::thin_margin);
  CHECK(with(reservoir(91.0), "room.stuck") == verdict::does_not_hold);  // one litre on the floor

  // A highest salinity that is passed while nobody looks.
  const amount& salty = number(find(base, "room.dry"), "practical salinity by then");
  const auto highest = [](double s) { return [s](twc::room_plan& p) { p.top_off->highest = practical_salinity{s}; }; };
  CHECK(with(highest(salty.high + 0.001), "room.dry") == verdict::holds);
  CHECK(with(highest(salty.high - 0.001), "room.dry") == verdict::thin_margin);
  CHECK(with(highest(salty.central - 0.001), "room.dry") == verdict::does_not_hold);
}

TEST_CASE("room: a dehumidifier holds its set point, or is too small") {
  using twc::verdict;
  twc::room_plan plan = some_room();
  plan.dehumidifier = room::controlled_dehumidifier{
      .machine = {.capacity = kilograms_per_day(60.0), .electrical = watts(500.0)},
      .set_point = relative_humidity::from_percent(60.0)};
  const auto state = some_system();
  auto all = twc::assess_room(plan, state);
  CHECK(find(all, "room.humidity").says == verdict::holds);  // exactly at the limit, and held there
  CHECK(find(all, "room.drying").says == verdict::holds);
  CHECK(has_number(find(all, "room.humidity"), "without the dehumidifier, summer"));
  const auto needed = room::dehumidifier_for(summer_by_hand(), plan.target).rated;
  TW_CHECK(by_hand, number(find(all, "room.drying"), "spare capacity in summer").low,
           (60.0 - in_kilograms_per_day(needed.high)) * 1e-3 / 86400.0, relative(1e-12));
  // It costs what it draws while it runs.
  room::tank_room summer = summer_by_hand();
  summer.dehumidifier = plan.dehumidifier;
  const auto settled = room::humidity_balance(summer).central;
  const auto drawn = room::dehumidifier_output(plan.dehumidifier->machine, celsius(26.0), settled.air.humidity);
  plan.heating.reset();
  all = twc::assess_room(plan, state);
  TW_CHECK(by_hand, number(find(all, "room.running"), "electricity a day in summer").central,
           (150.0 + 80.0 + settled.duty.value() * in_watts(drawn.electrical)) * 86400.0, relative(1e-12));

  plan.dehumidifier->machine.capacity = kilograms_per_day(2.0);
  all = twc::assess_room(plan, state);
  CHECK(find(all, "room.humidity").says == verdict::does_not_hold);
  CHECK(find(all, "room.drying").says == verdict::does_not_hold);

  // Below 21 degC the machine is not counted, and that is said.
  plan.winter->indoors = celsius(18.0);
  all = twc::assess_room(plan, state);
  CHECK_FALSE(has_number(find(all, "room.humidity"), "dehumidifier runs in winter"));
  CHECK(find(all, "room.humidity").note.find("21 to 32") != std::string::npos);
}

TEST_CASE("room: what is missing is said, and what the plan gives goes before the system") {
  using twc::verdict;
  // No surface, then no season, then no winter, then no water.
  for (const auto& [plan, state] : {std::pair{some_room(), twc::system_state{}},
                                    std::pair{twc::room_plan{.volume = cubic_metres(60.0)}, some_system()}}) {
    twc::room_plan bare = plan;
    bare.more_surfaces.clear();
    const auto all = twc::assess_room(bare, state);
    REQUIRE(all.size() >= 2);
    CHECK(twc::figures_of(bare, state).empty());
    for (const twc::finding& f : all) {
      CHECK(f.says == verdict::not_enough_known);
      CHECK_FALSE(f.measure_next.empty());
    }
  }
  twc::room_plan no_winter = some_room();
  no_winter.winter.reset();
  auto all = twc::assess_room(no_winter, some_system());
  for (const char* id : {"room.window", "room.wall", "room.heater", "room.warm_up", "room.outage"}) {
    CHECK(find(all, id).says == verdict::not_enough_known);
    CHECK_FALSE(find(all, id).measure_next.empty());
  }
  CHECK(find(all, "room.reservoir").says != verdict::not_enough_known);

  twc::system_state no_water = some_system();
  no_water.display_water.reset();
  all = twc::assess_room(some_room(), no_water);
  for (const char* id : {"room.warm_up", "room.outage", "room.dry", "room.stuck"}) {
    CHECK(find(all, id).says == verdict::not_enough_known);
  }
  CHECK(find(all, "room.heater").says != verdict::not_enough_known);

  twc::room_plan itself = some_room();
  itself.display.area = square_metres(2.4);
  itself.sump.area = square_metres(0.8);
  itself.water = celsius(25.0);
  itself.salinity = practical_salinity{35.0};
  itself.water_volume = water_of(1940.0, 2000.0, 2060.0);
  twc::system_state other;
  other.water = celsius(27.0);
  other.display_surface = square_metres(9.0);
  const auto from_plan = twc::assess_room(itself, other);
  const auto from_system = twc::assess_room(some_room(), some_system());
  REQUIRE(from_plan.size() == from_system.size());
  for (std::size_t i = 0; i < from_plan.size(); ++i) {
    const auto& a = from_plan[i];
    const auto& b = from_system[i];
    REQUIRE(a.numbers.size() == b.numbers.size());
    for (std::size_t k = 0; k < a.numbers.size(); ++k) CHECK(a.numbers[k].value.central == b.numbers[k].value.central);
  }

  // What is not asked is not answered.
  const auto air_only = twc::assess_room({.volume = cubic_metres(60.0), .winter = some_room().winter}, some_system());
  CHECK(air_only.size() == 3);
  twc::room_plan no_free_volume = some_room();
  no_free_volume.top_off->free_volume.reset();
  CHECK(find(twc::assess_room(no_free_volume, some_system()), "room.stuck").says == verdict::not_enough_known);
}

TEST_CASE("room: extremes are answered, not refused") {
  using twc::verdict;
  // Water colder than the dew point: nothing to top off.
  twc::room_plan plan = some_room();
  plan.winter.reset();
  plan.heating.reset();
  twc::system_state cold = some_system();
  cold.water = celsius(10.0);
  CHECK(find(twc::assess_room(plan, cold), "room.reservoir").says == verdict::not_enough_known);

  // Away for ever.
  plan = some_room();
  plan.top_off->unattended = days(5000.0);
  CHECK(find(twc::assess_room(plan, some_system()), "room.dry").says == verdict::does_not_hold);

  // Fresher than the animals stand already.
  plan = some_room();
  twc::system_state fresh = some_system();
  fresh.salinity = practical_salinity{30.0};
  CHECK(find(twc::assess_room(plan, fresh), "room.stuck").says == verdict::does_not_hold);

  // Frost, and a draughty room: drier than evaporation was measured in.
  plan.winter->outdoors = celsius(-20.0);
  plan.air_changes = per_hour(6.0);
  plan.sources.clear();
  const auto dry = twc::assess_room(plan, some_system());
  CHECK(find(dry, "room.humidity").note.find("28 to 95") != std::string::npos);
  CHECK(find(dry, "room.heater").note.find("extrapolated") != std::string::npos);

  // Water that comes in warm enough.
  plan = some_room();
  plan.heating->filled_at = celsius(26.0);
  CHECK_FALSE(find(twc::assess_room(plan, some_system()), "room.warm_up").note.empty());

  CHECK_THROWS_AS((void)twc::assess_room({.volume = cubic_metres(-1.0), .winter = some_room().winter}, some_system()),
                  invalid_input);
}
