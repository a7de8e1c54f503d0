// SPDX-License-Identifier: BSL-1.0
// Ends: the last number that each function of this folder takes and the first that it refuses, in its own name.
#include <cmath>
#include <functional>
#include <type_traits>

#include "room/samples.hpp"
#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {

relative_humidity humid(double x) { return relative_humidity::from_fraction(x); }
twr::humidity_ratio ratio(double x) { return twr::humidity_ratio::from_kilograms_per_kilogram(x); }
absolute_pressure of_pascals(double x) { return absolute_pressure{pascals(x)}; }

/// What a change of one number in a sample makes of a call.
template <class Sample>
using change_of = std::function<void(Sample&, double)>;
template <class Sample>
using call_of = std::function<void(const Sample&)>;
template <class Sample>
range_of varied(const char* argument, double low, double high, const Sample& sample,
                const change_of<std::type_identity_t<Sample>>& change,
                const call_of<std::type_identity_t<Sample>>& call) {
  return {argument, low, high, [=](double x) {
            auto one = sample;
            change(one, x);
            call(one);
          }};
}

/// The ranges of the open surfaces of a tank or a room.
template <class Sample>
std::vector<range_of> surface_ranges(Sample sample, const call_of<std::type_identity_t<Sample>>& call) {
  sample.surfaces = {{.label = "sump", .area = square_metres(1.0), .covered = fraction(0.5)}};
  const auto of = [&](const char* argument, double low, double high, const change_of<twr::wet_surface>& change) {
    return varied(
        argument, low, high, sample, [=](Sample& s, double x) { change(s.surfaces[0], x); }, call);
  };
  return {of("sump: area", 0.0, 1e6, [](auto& s, double x) { s.area = square_metres(x); }),
          of("sump: agitation", 1.0, 3.0, [](auto& s, double x) { s.agitation = twr::agitation{x}; }),
          of("sump: air speed", 0.0, 1.0, [](auto& s, double x) { s.air_speed = metres_per_second(x); }),
          of("sump: covered part", 0.0, 1.0, [](auto& s, double x) { s.covered = fraction(x); }),
          of("sump: effectiveness of the cover", 0.0, 1.0, [](auto& s, double x) {
            s.cover = {"", fraction(x)};
          })};
}

twr::tank_heat heated() {
  auto t = display_tank(25.0, 22.0, 50.0);
  t.sources = {{.label = "pump", .heat = watts(50.0)}};
  return t;
}

/// The ranges of a tank that loses heat.
void check_tank(const char* function, const call_of<twr::tank_heat>& call) {
  const auto of = [&](const char* argument, double low, double high, const change_of<twr::tank_heat>& change) {
    return varied(argument, low, high, heated(), change, call);
  };
  check_ranges(
      function,
      {of("water temperature", 7.0, 94.0, [](auto& t, double x) { t.water.temperature = celsius(x); }),
       of("air temperature", 6.0, 35.0, [](auto& t, double x) { t.air.temperature = celsius(x); }),
       of("relative humidity", 0.28, 0.95, [](auto& t, double x) { t.air.humidity = humid(x); }),
       of("air pressure", 22631.0, 177700.0, [](auto& t, double x) { t.air.pressure = of_pascals(x); }),
       of("temperature of the surroundings", -100.0, 200.0, [](auto& t, double x) { t.surroundings = celsius(x); }),
       of("make-up temperature", 0.0, 80.0, [](auto& t, double x) { t.make_up = celsius(x); }),
       of("glass: area", 0.0, 1e6, [](auto& t, double x) { t.walls[0].area = square_metres(x); }),
       of("glass: transmittance", 0.0, 1e5,
          [](auto& t, double x) { t.walls[0].transmittance = watts_per_square_metre_kelvin(x); }),
       of("glass: outside temperature", -100.0, 200.0, [](auto& t, double x) { t.walls[0].outside = celsius(x); }),
       of("pump: heat", 0.0, 1e9, [](auto& t, double x) { t.sources[0].heat = watts(x); })});
  check_ranges(function, surface_ranges(heated(), call));
}

twr::tank_room damp() {
  auto r = cellar(24.0, air_of(18, 60));
  r.sources = {{.label = "people", .rate = grams_per_hour(50.0)}};
  return r;
}

/// The ranges of a room with open water.
void check_room(const char* function, const call_of<twr::tank_room>& call) {
  const auto of = [&](const char* argument, double low, double high, const change_of<twr::tank_room>& change) {
    return varied(argument, low, high, damp(), change, call);
  };
  check_ranges(function,
               {of("room volume", 0.1, 1e9, [](auto& r, double x) { r.room.volume = cubic_metres(x); }),
                of("air changes", 0.0, 1.0, [](auto& r, double x) { r.room.air_changes = per_second(x); }),
                of("air temperature", 6.0, 35.0, [](auto& r, double x) { r.room.temperature = celsius(x); }),
                of("water temperature", 7.0, 94.0, [](auto& r, double x) { r.water.temperature = celsius(x); }),
                of("temperature", -100.0, 200.0,
                   [](auto& r, double x) {
                     r.room.outdoor.humidity = humid(0.0);
                     r.room.outdoor.temperature = celsius(x);
                   }),
                of("relative humidity", 0.0, 1.0, [](auto& r, double x) { r.room.outdoor.humidity = humid(x); }),
                of("people: rate", 0.0, 1e4, [](auto& r, double x) { r.sources[0].rate = kilograms_per_second(x); })});
  check_ranges(function, surface_ranges(damp(), call));
}

/// The ranges of a machine on its own.
void check_machine(const char* function, const call_of<twr::dehumidifier>& call) {
  const twr::dehumidifier machine{.label = "dryer", .capacity = kilograms_per_day(20.0), .electrical = watts(300.0)};
  const auto of = [&](const char* argument, double low, double high, const change_of<twr::dehumidifier>& change) {
    return varied(argument, low, high, machine, change, call);
  };
  check_ranges(function,
               {of("dryer: capacity", 1e-8, 1e4, [](auto& m, double x) { m.capacity = kilograms_per_second(x); }),
                of("dryer: electrical power", 0.0, 1e9, [](auto& m, double x) { m.electrical = watts(x); }),
                of("dryer: temperature of the rating point", 18.0, 35.0,
                   [](auto& m, double x) { m.rated_at.temperature = celsius(x); }),
                of("dryer: relative humidity of the rating point", 0.4, 1.0,
                   [](auto& m, double x) { m.rated_at.humidity = humid(x); }),
                of("dryer: share of the rating point", 0.0, 10.0, [](auto& m, double x) { m.rated_at.share = x; })});
}

}  // namespace

TEST_CASE("ends: evaporation") {
  const twr::evaporating_water w{.water = seawater(25.0), .air = air_of(22.0, 50.0), .surfaces = {}};
  const auto call = [](const auto& x) { (void)twr::evaporation(x); };
  check_ranges("room::evaporation", surface_ranges(w, call));
  check_ranges(
      "room::evaporation",
      {varied(
           "water temperature", 7.0, 94.0, w, [](auto& s, double x) { s.water.temperature = celsius(x); }, call),
       varied(
           "air temperature", 6.0, 35.0, w, [](auto& s, double x) { s.air.temperature = celsius(x); }, call),
       varied(
           "relative humidity", 0.28, 0.95, w, [](auto& s, double x) { s.air.humidity = humid(x); }, call)});
  const auto past = [](double agitation, double speed) {
    return twr::evaporation({.water = seawater(25.0),
                             .air = air_of(22.0, 50.0),
                             .surfaces = {{.label = "s",
                                           .area = square_metres(1.0),
                                           .agitation = twr::agitation{agitation},
                                           .air_speed = metres_per_second(speed)}}},
                            extrapolate);
  };
  check_ranges("room::evaporation", {TW_RANGE("s: agitation", 1.0, 100.0, past(x, 0.1)),
                                     TW_RANGE("s: air speed", 0.0, 100.0, past(1.0, x))});
  const auto rate = [](double speed) {
    return twr::evaporation_rate(
        twr::evaporation_law::carrier,
        {.water = seawater(25.0), .air = air_of(22.0, 50.0), .air_speed = metres_per_second(speed)});
  };
  const auto water_at = [](double t, range_policy p) {
    return twr::evaporation_rate(
        twr::evaporation_law::carrier,
        {.water = seawater(t),
         .air = {.temperature = celsius(22.0), .humidity = humid(0.5), .pressure = absolute_pressure{pascals(1.7e5)}}},
        p);
  };
  check_ranges("room::evaporation_rate",
               {TW_RANGE("air speed", 0.0, 100.0, rate(x)),
                TW_RANGE("water temperature", -2.0, 100.0, water_at(x, range_policy::published)),
                TW_RANGE("water temperature", -10.0, 150.0, water_at(x, extrapolate))});
  const auto diffusion = [](double t, double p, range_policy policy = range_policy::published) {
    return twr::vapour_diffusivity(celsius(t), of_pascals(p), policy);
  };
  check_ranges("room::vapour_diffusivity", {TW_RANGE("temperature", 6.85, 176.85, diffusion(x, 101325.0)),
                                            TW_RANGE("temperature", -150.0, 370.0, diffusion(x, 101325.0, extrapolate)),
                                            TW_RANGE("air pressure", 22631.0, 177700.0, diffusion(20.0, x)),
                                            TW_RANGE("air pressure", 1.0, 1e8, diffusion(20.0, x, extrapolate))});
}

TEST_CASE("ends: heat of the tank") {
  check_tank("room::heat_balance", [](const auto& t) { (void)twr::heat_balance(t); });
  check_ranges("room::heater_for", {TW_RANGE("margin", 1.0, 3.0, twr::heater_for(heated(), x)),
                                    TW_RANGE("margin", 1.0, 100.0, twr::heater_for(heated(), x, extrapolate))});
  check_ranges("room::chiller_for",
               {TW_RANGE("duty", 0.01, 1.0, twr::chiller_for(heated(), air_of(30, 60), fraction(x)))});
  check_ranges("room::heat_capacity_of",
               {TW_RANGE("volume", 1e-6, 1e9, twr::heat_capacity_of(seawater(25.0), cubic_metres(x)))});
  const auto line = [](auto change) {
    return [change](double x) {
      twr::linear_warm_up w{.heat_capacity = joules_per_kelvin(8e6),
                            .from = celsius(16.0),
                            .to = celsius(26.0),
                            .heater = watts(500.0),
                            .loss = watts_per_kelvin(0.0)};
      change(w, x);
      (void)twr::linear_warm_up_time(w);
    };
  };
  check_ranges("room::linear_warm_up_time",
               {{"start temperature", -10.0, 150.0, line([](auto& w, double x) { w.from = celsius(x); })},
                {"target temperature", -10.0, 150.0,
                 line([](auto& w, double x) { w.from = celsius(-10.0), w.to = celsius(x); })},
                {"standing temperature", -100.0, 200.0, line([](auto& w, double x) { w.stands_at = celsius(x); })},
                {"loss coefficient", 0.0, 1e9,
                 line([](auto& w, double x) { w.loss = watts_per_kelvin(x), w.heater = watts(1e9); })}});
}

TEST_CASE("ends: water that is warmed, or left alone") {
  const auto capacity = twr::heat_capacity_of(seawater(25.0), litres(1809.0));
  const auto warm = [&](const twr::tank_heat& t, double target = 27.0, double heater = 3e3,
                        range_policy p = range_policy::published) {
    return twr::warm_up({.tank = t, .heat_capacity = capacity, .target = celsius(target), .heater = watts(heater)}, p);
  };
  const auto capacity_and_heater = [&](double c, double p) {
    return twr::warm_up(
        {.tank = heated(), .heat_capacity = joules_per_kelvin(c), .target = celsius(27.0), .heater = watts(p)});
  };
  check_ranges("room::warm_up", surface_ranges(heated(), [&](const auto& t) { (void)warm(t); }));
  const auto highest = [&](double target) { return warm(heated(), target, 1e6); };
  CHECK_NOTHROW((void)highest(99.9));
  CHECK_THROWS_AS((void)highest(100.1), out_of_range);
  check_ranges("room::warm_up", {TW_RANGE("heat capacity", 1.0, 1e15, capacity_and_heater(x, 1e8))});
  CHECK(message_of([&] {
          (void)capacity_and_heater(1e6, 0.999e-3);
        }).ends_with("is not possible; expected 0.001 to 1e+09 W"));
  CHECK(message_of([&] { (void)capacity_and_heater(1e6, 1.001e-3); }).find("is too small") != std::string::npos);
  CHECK_NOTHROW((void)capacity_and_heater(1e6, 1e9));
  CHECK_THROWS_AS((void)capacity_and_heater(1e6, 1.000001e9), invalid_input);
  const twr::uncontrolled_tank alone{.tank = heated(), .heat_capacity = capacity};
  const auto course = [&](double time, double step) {
    return twr::temperature_course_of(alone, seconds(time), seconds(step));
  };
  check_ranges("room::temperature_course_of", surface_ranges(heated(), [&](const auto& t) {
                 (void)twr::temperature_course_of({.tank = t, .heat_capacity = capacity}, hours(1.0), hours(1.0));
               }));
  check_ranges("room::temperature_course_of",
               {TW_RANGE("time", 0.0, 1e7, course(x, 1e6)),
                {"step", 0.0, 1e7, [&](double x) { (void)course(x == 0.0 ? 1.0 : 10.0, x); }, true}});
  CHECK_THROWS_AS((void)course(1.00001e3, 1e-2), invalid_input);
}

TEST_CASE("ends: what drifts, and what is looked for") {
  const auto capacity = twr::heat_capacity_of(seawater(25.0), litres(1809.0));
  const auto drifting = [&](double end, double tau, range_policy p = range_policy::published) {
    return twr::temperature_course_of(
        {.tank = heated(),
         .heat_capacity = capacity,
         .room = twr::drifting_room{.settles_at = celsius(end), .time_constant = seconds(tau)}},
        hours(1.0), hours(1.0), p);
  };
  check_ranges("room::temperature_course_of", {TW_RANGE("final room temperature", 6.0, 35.0, drifting(x, 3600.0)),
                                               TW_RANGE("time constant of the room", 1.0, 1e9, drifting(20.0, x))});
  CHECK_THROWS_AS((void)drifting(-101.0, 3600.0, extrapolate), invalid_input);
  CHECK_THROWS_AS((void)drifting(201.0, 3600.0, extrapolate), invalid_input);
  const twr::uncontrolled_tank alone{.tank = heated(), .heat_capacity = capacity};
  const auto change = [&](double within, double window) {
    return twr::largest_change(alone, seconds(within), seconds(window));
  };
  check_ranges("room::largest_change", {TW_RANGE("time", 0.0, 1e7, change(x, 1e5)),
                                        TW_RANGE("time of the change", 60.0, 1e7, change(600.0, x))});
  CHECK_THROWS_AS((void)change(600.1e3, 60.0), invalid_input);
  const auto meet = [&](double limit, double within, range_policy p = range_policy::published) {
    return twr::time_to_temperature(alone, celsius(limit), seconds(within), p);
  };
  check_ranges("room::time_to_temperature", {TW_RANGE("limit temperature", -2.0, 100.0, meet(x, 60.0)),
                                             TW_RANGE("limit temperature", -10.0, 150.0, meet(x, 60.0, extrapolate)),
                                             TW_RANGE("time", 0.0, 1e7, meet(24.0, x))});
  const auto stuck = [&](double heater, double highest, double within) {
    return twr::heater_stuck_on({.tank = heated(),
                                 .heat_capacity = capacity,
                                 .heater = watts(heater),
                                 .highest = celsius(highest),
                                 .within = seconds(within)});
  };
  check_ranges(
      "room::heater_stuck_on",
      {TW_RANGE("heater", twr::heater_limits.possible.low, twr::heater_limits.possible.high, stuck(x, 30.0, 60.0)),
       {"highest temperature", 25.0, 150.0, [&](double x) { (void)stuck(300.0, x, 60.0); }, true},
       TW_RANGE("time", 0.0, 1e7, stuck(300.0, 26.0, x))});
}

TEST_CASE("ends: humidity of the room") {
  check_room("room::humidity_balance", [](const auto& r) { (void)twr::humidity_balance(r); });
  check_room("room::dehumidifier_for", [](const auto& r) { (void)twr::dehumidifier_for(r, humid(0.5)); });
  check_ranges("room::ventilation_for",
               {TW_RANGE("relative humidity", 0.0, 1.0, twr::ventilation_for(damp(), humid(x)))});
  check_ranges("room::dehumidifier_for",
               {TW_RANGE("relative humidity", 0.0, 1.0, twr::dehumidifier_for(damp(), humid(x)))});
  check_machine("room::humidity_balance", [](const auto& m) {
    auto r = damp();
    r.dehumidifier = twr::controlled_dehumidifier{.machine = m, .set_point = humid(0.5)};
    (void)twr::humidity_balance(r);
  });
  check_machine("room::dehumidifier_output",
                [](const auto& m) { (void)twr::dehumidifier_output(m, celsius(24.0), humid(0.5)); });
  const twr::dehumidifier dryer{.label = "dryer", .capacity = kilograms_per_day(20.0)};
  check_ranges("room::dehumidifier_output",
               {TW_RANGE("dryer: temperature", -30.0, 45.0, twr::dehumidifier_output(dryer, celsius(x), humid(0.5))),
                TW_RANGE("dryer: temperature", -150.0, 370.0,
                         twr::dehumidifier_output(dryer, celsius(x), humid(0.5), extrapolate)),
                TW_RANGE("relative humidity", 0.0, 1.0, twr::dehumidifier_output(dryer, celsius(24.0), humid(x)))});
  const auto course = [](double start, double time, double step) {
    return twr::humidity_course({.room = damp(), .start = humid(start), .time = seconds(time), .step = seconds(step)});
  };
  check_ranges("room::humidity_course",
               {TW_RANGE("relative humidity", 0.0, 1.0, course(x, 10.0, 10.0)),
                TW_RANGE("time", 0.0, 1e8, course(0.5, x, 1e7)),
                {"step", 0.0, 1e8, [&](double x) { (void)course(0.5, x == 0.0 ? 1.0 : 10.0, x); }, true}});
  CHECK_THROWS_AS((void)course(0.5, 1.00001e2, 1e-3), invalid_input);
}

TEST_CASE("ends: a room worked by hand") {
  const auto hand = [](auto change) {
    return [change](double x) {
      twr::well_mixed_room r{.dry_air = kilograms_per_second(1.0), .outdoor = ratio(0.5)};
      change(r, x);
      (void)twr::settled_humidity_ratio(r);
    };
  };
  check_ranges("room::settled_humidity_ratio",
               {{"dry-air flow", 0.0, 1e6, hand([](auto& r, double x) {
                   r.dry_air = kilograms_per_second(x), r.transfer = kilograms_per_second(1.0);
                 })},
                {"outdoor humidity ratio", 0.0, 1e3, hand([](auto& r, double x) { r.outdoor = ratio(x); })},
                {"moisture source", -1e6, 1e6, hand([](auto& r, double x) { r.source = kilograms_per_second(x); })},
                {"moisture transfer", 0.0, 1e6, hand([](auto& r, double x) { r.transfer = kilograms_per_second(x); })},
                {"humidity ratio at the surface", 0.0, 1e3, hand([](auto& r, double x) { r.surface = ratio(x); })}});
  const twr::well_mixed_room r{.dry_air = kilograms_per_second(1.0), .outdoor = ratio(0.5)};
  check_ranges("room::humidity_time_constant",
               {TW_RANGE("mass of dry air", 1e-6, 1e9, twr::humidity_time_constant(r, kilograms(x)))});
  const auto after = [&](double start, double kg, double time) {
    return twr::humidity_ratio_after(r, {.ratio = ratio(start), .dry_air = kilograms(kg), .time = seconds(time)});
  };
  check_ranges("room::humidity_ratio_after", {TW_RANGE("humidity ratio at the start", 0.0, 1e3, after(x, 1.0, 1.0)),
                                              TW_RANGE("mass of dry air", 1e-6, 1e9, after(0.1, x, 1.0)),
                                              TW_RANGE("time", 0.0, 1e10, after(0.1, 1.0, x))});
}

TEST_CASE("ends: walls, windows and light") {
  const auto wall = [](double thickness, double conductivity, double inside, double outside) {
    return twr::transmittance({.label = "side",
                               .layers = {{.label = "ply",
                                           .thickness = metres(thickness),
                                           .conductivity = watts_per_metre_kelvin(conductivity)}},
                               .inside = watts_per_square_metre_kelvin(inside),
                               .outside = watts_per_square_metre_kelvin(outside)});
  };
  check_ranges("room::transmittance",
               {{"side: ply: thickness", 0.0, 100.0, [&](double x) { (void)wall(x, 1.0, 8.0, 8.0); }, true},
                TW_RANGE("side: ply: conductivity", 1e-4, 1e4, wall(0.01, x, 8.0, 8.0)),
                TW_RANGE("side: inside: film coefficient", 1e-3, 1e6, wall(0.01, 1.0, x, 8.0)),
                TW_RANGE("side: outside: film coefficient", 1e-3, 1e6, wall(0.01, 1.0, 8.0, x))});
  const auto pane = [](double u, double r, double inside, double outside) {
    return twr::building_element{.transmittance = watts_per_square_metre_kelvin(u),
                                 .inside = celsius(inside),
                                 .outside = celsius(outside),
                                 .surface_resistance = square_metre_kelvins_per_watt(r)};
  };
  check_ranges("room::temperature_factor",
               {TW_RANGE("transmittance", 1e-6, 1e5, twr::temperature_factor(pane(x, 0.0, 22.0, 0.0))),
                TW_RANGE("surface resistance", 0.0, 1e3, twr::temperature_factor(pane(1e-6, x, 22.0, 0.0))),
                TW_RANGE("inside temperature", -100.0, 200.0, twr::temperature_factor(pane(1.0, 0.1, x, 0.0))),
                TW_RANGE("outside temperature", -100.0, 200.0, twr::temperature_factor(pane(1.0, 0.1, 22.0, x)))});
  CHECK_NOTHROW((void)twr::temperature_factor(pane(4.0, 0.25, 22.0, 0.0)));  // the resistance is all of 1/U
  CHECK(twr::temperature_factor(pane(4.0, 0.25, 22.0, 0.0)).value() == 0.0);
  CHECK_THROWS_AS((void)twr::temperature_factor(pane(4.001, 0.25, 22.0, 0.0)), invalid_input);
  check_ranges("room::highest_humidity",
               {TW_RANGE("surface humidity", 1e-6, 1.0, twr::highest_humidity(pane(1.0, 0.1, 22.0, 0.0), humid(x)))});
  check_ranges("room::lowest_surface_temperature",
               {TW_RANGE("surface humidity", 1e-6, 1.0,
                         twr::lowest_surface_temperature(air_of(22.0, 1e-3), humid(x), extrapolate))});
  CHECK_THROWS_AS((void)twr::lowest_temperature_factor(air_of(22.0, 50.0), celsius(-101.0)), invalid_input);
  CHECK_NOTHROW((void)twr::lowest_temperature_factor(air_of(22.0, 50.0), celsius(-100.0)));
  const auto lamp = [](double h, double depth, double through, double index) {
    return twr::light_at_depth({.height = metres(h),
                                .depth = metres(depth),
                                .through_a_metre = fraction(through),
                                .index = water::refractive_index{index}});
  };
  check_ranges("room::light_at_depth", {TW_RANGE("height of the lamp", 1e-3, 100.0, lamp(x, 1.0, 0.9, 1.34)),
                                        TW_RANGE("depth", 0.0, 100.0, lamp(1.0, x, 0.9, 1.34)),
                                        TW_RANGE("light through a metre of water", 1e-6, 1.0, lamp(1.0, 1.0, x, 1.34)),
                                        TW_RANGE("refractive index", 1.0, 4.0, lamp(1.0, 1.0, 0.9, x))});
  check_ranges(
      "room::lit_width",
      {TW_RANGE("height of the lamp", 1e-3, 100.0, twr::lit_width(metres(x), degrees(60.0))),
       {"beam", 1e-3, std::acos(-1.0), [](double x) { (void)twr::lit_width(metres(1.0), radians(x)); }, false, true}});
}

TEST_CASE("ends: top-off, supply and cost") {
  const auto band = [](double x) { return estimate<flow_rate>{flow_rate::from_value(x)}; };
  const estimate<mass_flow> evaporation{kilograms_per_day(5.0)};
  check_ranges("room::top_off_rate",
               {TW_RANGE("evaporation", 0.0, 1e4, twr::top_off_rate(estimate<mass_flow>{kilograms_per_second(x)})),
                TW_RANGE("temperature of the fresh water", 0.0, 40.0, twr::top_off_rate(evaporation, celsius(x))),
                TW_RANGE("temperature of the fresh water", -10.0, 150.0,
                         twr::top_off_rate(evaporation, celsius(x), extrapolate))});
  check_ranges("room::reservoir_lasts",
               {TW_RANGE("reservoir", 0.0, 1e9, twr::reservoir_lasts(cubic_metres(x), band(1e-6))),
                TW_RANGE("top-off rate", 1e-15, 10.0, twr::reservoir_lasts(litres(1.0), band(x)))});
  const auto request = [](double volume, double lowest, double room, double fresh) {
    return twr::reservoir_request{.water = seawater(25.0),
                                  .volume = cubic_metres(volume),
                                  .lowest = practical_salinity{lowest},
                                  .free_volume = cubic_metres(room),
                                  .fresh_water = celsius(fresh)};
  };
  check_ranges("room::stuck_valve",
               {TW_RANGE("volume of the system", 1e-6, 1e9, twr::stuck_valve(request(x, 30.0, 1.0, 20.0), litres(1.0))),
                TW_RANGE("free volume", 0.0, 1e9, twr::stuck_valve(request(1.0, 30.0, x, 20.0), litres(1.0))),
                TW_RANGE("reservoir", 0.0, 1e9, twr::stuck_valve(request(1.0, 30.0, 1.0, 20.0), cubic_metres(x))),
                TW_RANGE("lowest salinity", 0.0, 1e3, twr::stuck_valve(request(1.0, x, 1.0, 20.0), litres(1.0))),
                TW_RANGE("temperature of the fresh water", 0.0, 40.0,
                         twr::stuck_valve(request(1.0, 30.0, 1.0, x), litres(1.0)))});
  check_ranges(
      "room::largest_reservoir",
      {TW_RANGE("volume of the system", 1e-6, 1e9, twr::largest_reservoir(request(x, 30.0, 1.0, 20.0))),
       {"lowest salinity", 1e-6, 35.0, [&](double x) { (void)twr::largest_reservoir(request(1.0, x, 1.0, 20.0)); }},
       TW_RANGE("temperature of the fresh water", 0.0, 40.0, twr::largest_reservoir(request(1.0, 30.0, 1.0, x)))});
  const auto chamber = [&](double area, double rate, double running, double lowest) {
    return twr::return_level({.surface = square_metres(area),
                              .top_off = band(rate),
                              .running_level = metres(running),
                              .lowest_level = metres(lowest)});
  };
  check_ranges("room::return_level", {TW_RANGE("area of the return chamber", 1e-6, 1e6, chamber(x, 1e-6, 0.3, 0.2)),
                                      TW_RANGE("top-off rate", 1e-15, 10.0, chamber(1.0, x, 0.3, 0.2)),
                                      TW_RANGE("running level", -1e3, 1e3, chamber(1.0, 1e-6, x, -1e3)),
                                      TW_RANGE("lowest level", -1e3, 1e3, chamber(1.0, 1e-6, 1e3, x))});
  CHECK(chamber(1.0, 1e-6, 0.2, 0.2).until_lowest.central.value() == 0.0);
  const auto battery = [](double joule, double usable, double inverter, double load) {
    return twr::battery_feeds({.capacity = joules(joule), .usable = fraction(usable), .inverter = fraction(inverter)},
                              watts(load));
  };
  check_ranges("room::battery_feeds", {TW_RANGE("capacity", 0.0, 1e15, battery(x, 0.5, 0.9, 1.0)),
                                       TW_RANGE("usable part", 0.0, 1.0, battery(1.0, x, 0.9, 1.0)),
                                       TW_RANGE("usable part", 0.0, 1.0, battery(1.0, 0.5, x, 1.0)),
                                       TW_RANGE("load", 1e-30, 1e15, battery(1.0, 0.5, 0.9, x))});
  const auto leak = [](double i) {
    const estimate<electric_current> one[] = {amperes(i)};
    return twr::leakage_of(one);
  };
  check_ranges("room::leakage_of", {TW_RANGE("leakage", 0.0, 1e6, leak(x))});
  const auto cost = [](double heat, double price, double performance, double on,
                       range_policy p = range_policy::published) {
    return twr::running_cost({.heat = estimate<power>{watts(heat)},
                              .price = twr::electricity_price{price},
                              .performance = performance,
                              .on = fraction(on)},
                             p);
  };
  check_ranges("room::running_cost", {TW_RANGE("power", -1e9, 1e9, cost(x, 0.3, 1.0, 1.0)),
                                      TW_RANGE("price per kWh", 0.0, 1e9, cost(1.0, x, 1.0, 1.0)),
                                      TW_RANGE("performance", 0.5, 8.0, cost(1.0, 0.3, x, 1.0)),
                                      TW_RANGE("performance", 1e-3, 1e3, cost(1.0, 0.3, x, 1.0, extrapolate)),
                                      TW_RANGE("part of the time", 0.0, 1.0, cost(1.0, 0.3, 1.0, x))});
  const auto devices = [](double draws, double price, double on) {
    const twr::running_device one[] = {{.label = "pump", .draws = estimate<power>{watts(draws)}, .on = fraction(on)}};
    return twr::running_costs(one, twr::electricity_price{price});
  };
  check_ranges("room::running_costs", {TW_RANGE("pump: power", -1e9, 1e9, devices(x, 0.3, 1.0)),
                                       TW_RANGE("price per kWh", 0.0, 1e9, devices(1.0, x, 1.0)),
                                       TW_RANGE("pump: part of the time", 0.0, 1.0, devices(1.0, 0.3, x))});
}

TEST_CASE("ends: moist air") {
  const auto altitude = [](double x, range_policy p) { return twr::pressure_at_altitude(metres(x), p); };
  check_ranges("room::pressure_at_altitude",
               {TW_RANGE("altitude", -5000.0, 11000.0, altitude(x, range_policy::published))});
  CHECK_NOTHROW((void)altitude(-2e4, extrapolate));
  CHECK_THROWS_AS((void)altitude(-20000.1, extrapolate), invalid_input);
  // 1 - 2.25577e-5 z is nothing at 44 330.8 m: there is no air above.
  CHECK_NOTHROW((void)altitude(44330.7, extrapolate));
  CHECK(message_of([&] { (void)altitude(44330.9, extrapolate); }).ends_with("is above the atmosphere"));
  CHECK(message_of([&] { (void)altitude(99999.0, extrapolate); }).ends_with("is above the atmosphere"));
  CHECK(message_of([&] { (void)altitude(100001.0, extrapolate); }).find("is not possible") != std::string::npos);
  const auto from_ratio = [](double t, double w, double p) {
    return twr::air_from(
        twr::air_of_humidity_ratio{.temperature = celsius(t), .ratio = ratio(w), .pressure = of_pascals(p)});
  };
  const auto from_dew = [](double t, double dew, double p) {
    return twr::air_from(
        twr::air_of_dew_point{.temperature = celsius(t), .dew_point = celsius(dew), .pressure = of_pascals(p)});
  };
  const auto from_wet = [](double t, double wet, double p) {
    return twr::air_from(
        twr::air_of_wet_bulb{.temperature = celsius(t), .wet_bulb = celsius(wet), .pressure = of_pascals(p)});
  };
  check_ranges("room::air_from", {TW_RANGE("temperature", -100.0, 200.0, from_ratio(x, 0.0, 101325.0)),
                                  TW_RANGE("air pressure", 22631.0, 177700.0, from_ratio(20.0, 0.001, x)),
                                  {"humidity ratio", 0.0, 1e3, [&](double x) { (void)from_ratio(199.0, x, 101325.0); }},
                                  TW_RANGE("temperature", -100.0, 200.0, from_dew(x, -100.0, 101325.0)),
                                  TW_RANGE("air pressure", 22631.0, 177700.0, from_dew(20.0, 10.0, x)),
                                  {"dew point", -100.0, 20.0, [&](double x) { (void)from_dew(20.0, x, 101325.0); }},
                                  TW_RANGE("air pressure", 22631.0, 177700.0, from_wet(20.0, 18.0, x)),
                                  TW_RANGE("temperature", -100.0, 200.0, from_wet(x, -100.0, 101325.0))});
  const auto wet = [&](double t, double s) { return message_of([&] { (void)from_wet(t, s, 101325.0); }); };
  CHECK_NOTHROW((void)from_wet(20.0, 20.0, 101325.0));
  CHECK(wet(20.0, 20.001).find("is above the dry bulb, 20 degC") != std::string::npos);
  CHECK(wet(20.0, 0.0).find("is lower than dry air of 20 degC") != std::string::npos);
  CHECK(wet(20.0, -100.001).find("outside the published range -100 to 100 degC") != std::string::npos);
  CHECK(wet(150.0, 100.001).find("outside the published range -100 to 100 degC") != std::string::npos);
  CHECK(wet(20.0, -150.001).find("is not possible; expected -150 to 370 degC") != std::string::npos);
  const auto of_vapour = [](double p, double total) {
    return twr::humidity_ratio_from_vapour_pressure(pascals(p), of_pascals(total));
  };
  check_ranges("room::humidity_ratio_from_vapour_pressure",
               {TW_RANGE("air pressure", 22631.0, 177700.0, of_vapour(1.0, x))});
  CHECK_NOTHROW((void)of_vapour(0.0, 101325.0));
  CHECK_NOTHROW((void)of_vapour(101324.9, 101325.0));
  CHECK_THROWS_AS((void)of_vapour(-1e-6, 101325.0), invalid_input);
  CHECK_THROWS_AS((void)of_vapour(101325.0, 101325.0), invalid_input);
  CHECK(message_of([&] { (void)of_vapour(1.000001e8, 101325.0); }).find("is not possible") != std::string::npos);
  const auto dew = [](double t, double h, double p) {
    return twr::dew_point({.temperature = celsius(t), .humidity = humid(h), .pressure = of_pascals(p)});
  };
  check_ranges("room::dew_point", {TW_RANGE("air pressure", 22631.0, 177700.0, dew(20.0, 0.5, x))});
  CHECK_NOTHROW((void)dew(20.0, 1.0, 101325.0));
  CHECK_THROWS_AS((void)dew(20.0, 1.000001, 101325.0), invalid_input);
  CHECK_THROWS_AS((void)dew(20.0, 0.0, 101325.0), invalid_input);
  CHECK_THROWS_AS((void)dew(-99.0, 0.5, 101325.0), out_of_range);  // its frost point is below -100 degC
}

TEST_CASE("ends: as many points as are taken") {
  const auto capacity = twr::heat_capacity_of(seawater(25.0), litres(1809.0));
  const twr::uncontrolled_tank alone{.tank = heated(), .heat_capacity = capacity};
  CHECK(twr::temperature_course_of(alone, seconds(1e3), seconds(1e-2)).points.size() == 100001);
  CHECK_NOTHROW((void)twr::largest_change(alone, seconds(600e3), seconds(60.0)));
  CHECK(
      twr::humidity_course({.room = damp(), .start = humid(0.5), .time = seconds(1e2), .step = seconds(1e-3)}).size() ==
      100001);
}

TEST_CASE("ends: what stores heat") {
  check_ranges("room::heat_capacity_of_solids",
               {TW_RANGE("volume of the solids", 0.0, 1e9, twr::heat_capacity_of_solids(cubic_metres(x)))});
  const auto sheet = [](double area, double thickness, double heat) {
    return twr::heat_capacity_of_sheet(
        {.area = square_metres(area), .thickness = metres(thickness), .heat = twr::volumetric_heat{heat}});
  };
  check_ranges("room::heat_capacity_of_sheet", {TW_RANGE("area of the sheet", 0.0, 1e6, sheet(x, 0.01, 2e6)),
                                                TW_RANGE("thickness of the sheet", 0.0, 100.0, sheet(1.0, x, 2e6)),
                                                TW_RANGE("heat of the sheet", 0.0, 1e9, sheet(1.0, 0.01, x))});
}
