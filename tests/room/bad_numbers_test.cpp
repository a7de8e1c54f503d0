// SPDX-License-Identifier: BSL-1.0
// Every numeric argument of every public function of room/.
#include "support/edges.hpp"

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {

using policy = range_policy;

relative_humidity humid(double x) { return relative_humidity::from_fraction(x); }
temperature warm(double x) { return kelvins(x); }
twr::humidity_ratio ratio(double x) { return twr::humidity_ratio::from_kilograms_per_kilogram(x); }
template <class Q>
estimate<Q> three(double x, std::size_t which) {
  return {Q::from_value(which == 0 ? x : 1.0), Q::from_value(which == 1 ? x : 1.0), Q::from_value(which == 2 ? x : 1.0),
          ""};
}

/// Each number of the air in turn.
void with_bad_air(std::string_view what, any_call<const twr::air&, policy> call) {
  CAPTURE(what);
  refuses_bad_numbers("temperature", [&](double x, policy p) {
    return call(twr::air{.temperature = warm(x), .humidity = humid(0.5)}, p);
  });
  refuses_bad_numbers("humidity", [&](double x, policy p) {
    return call(twr::air{.temperature = celsius(22.0), .humidity = humid(x)}, p);
  });
  refuses_bad_numbers("pressure", [&](double x, policy p) {
    return call(
        twr::air{.temperature = celsius(22.0), .humidity = humid(0.5), .pressure = absolute_pressure{pascals(x)}}, p);
  });
}

/// Each number of the open surfaces in turn.
void with_bad_surface(std::string_view what, any_call<const std::vector<twr::wet_surface>&, policy> call) {
  CAPTURE(what);
  const auto one = [](auto change) {
    twr::wet_surface s{.area = square_metres(1.0), .covered = fraction(0.5)};
    change(s);
    return std::vector<twr::wet_surface>{s};
  };
  using surface = twr::wet_surface;
  refuses_bad_numbers("area",
                      [&](double x, policy p) { return call(one([&](surface& s) { s.area = square_metres(x); }), p); });
  refuses_bad_numbers("agitation", [&](double x, policy p) {
    return call(one([&](surface& s) { s.agitation = twr::agitation{x}; }), p);
  });
  refuses_bad_numbers("air speed", [&](double x, policy p) {
    return call(one([&](surface& s) { s.air_speed = metres_per_second(x); }), p);
  });
  refuses_bad_numbers("covered",
                      [&](double x, policy p) { return call(one([&](surface& s) { s.covered = fraction(x); }), p); });
  refuses_bad_numbers("cover", [&](double x, policy p) {
    return call(one([&](surface& s) { s.cover = {"cover", fraction(x)}; }), p);
  });
}

/// Each number of the water in turn. Salinity belongs to water/; past 42 only `extrapolate` gets through to it.
void with_bad_water(std::string_view what, any_call<const twr::tank_water&, policy> call) {
  CAPTURE(what);
  refuses_bad_numbers("water temperature", [&](double x, policy p) {
    return call(twr::tank_water{.temperature = warm(x), .salinity = practical_salinity{35.0}}, p);
  });
}

void with_bad_tank(std::string_view what, any_call<const twr::tank_heat&, policy> call) {
  CAPTURE(what);
  const auto tank = [](auto change) {
    twr::tank_heat t = display_tank(25.0, 22.0, 50.0);
    t.sources = {{.label = "pump", .heat = watts(50.0)}};
    change(t);
    return t;
  };
  using heat = twr::tank_heat;
  with_bad_air(what, [&](const twr::air& a, policy p) { return call(tank([&](heat& t) { t.air = a; }), p); });
  with_bad_water(what,
                 [&](const twr::tank_water& w, policy p) { return call(tank([&](heat& t) { t.water = w; }), p); });
  with_bad_surface(what, [&](const auto& s, policy p) { return call(tank([&](heat& t) { t.surfaces = s; }), p); });
  refuses_bad_numbers("wall area", [&](double x, policy p) {
    return call(tank([&](heat& t) { t.walls[0].area = square_metres(x); }), p);
  });
  refuses_bad_numbers("wall transmittance", [&](double x, policy p) {
    return call(tank([&](heat& t) { t.walls[0].transmittance = watts_per_square_metre_kelvin(x); }), p);
  });
  refuses_bad_numbers(
      "outside", [&](double x, policy p) { return call(tank([&](heat& t) { t.walls[0].outside = warm(x); }), p); });
  refuses_bad_numbers(
      "source", [&](double x, policy p) { return call(tank([&](heat& t) { t.sources[0].heat = watts(x); }), p); });
  refuses_bad_numbers("surroundings",
                      [&](double x, policy p) { return call(tank([&](heat& t) { t.surroundings = warm(x); }), p); });
  refuses_bad_numbers("make-up",
                      [&](double x, policy p) { return call(tank([&](heat& t) { t.make_up = warm(x); }), p); });
}

void with_bad_room(std::string_view what, bool its_own_air_changes, any_call<const twr::tank_room&, policy> call) {
  CAPTURE(what);
  const auto room = [](auto change) {
    twr::tank_room r = cellar(24.0, air_of(18, 60));
    r.sources = {{.label = "people", .rate = grams_per_hour(50.0)}};
    change(r);
    return r;
  };
  using tank_room = twr::tank_room;
  with_bad_air(what,
               [&](const twr::air& a, policy p) { return call(room([&](tank_room& r) { r.room.outdoor = a; }), p); });
  with_bad_water(what,
                 [&](const twr::tank_water& w, policy p) { return call(room([&](tank_room& r) { r.water = w; }), p); });
  with_bad_surface(what, [&](const auto& s, policy p) { return call(room([&](tank_room& r) { r.surfaces = s; }), p); });
  refuses_bad_numbers("room volume", [&](double x, policy p) {
    return call(room([&](tank_room& r) { r.room.volume = cubic_metres(x); }), p);
  });
  if (its_own_air_changes) {
    refuses_bad_numbers("air changes", [&](double x, policy p) {
      return call(room([&](tank_room& r) { r.room.air_changes = per_second(x); }), p);
    });
  }
  refuses_bad_numbers("room temperature", [&](double x, policy p) {
    return call(room([&](tank_room& r) { r.room.temperature = warm(x); }), p);
  });
  refuses_bad_numbers("source", [&](double x, policy p) {
    return call(room([&](tank_room& r) { r.sources[0].rate = kilograms_per_second(x); }), p);
  });
}

twr::dehumidifier machine() { return {.capacity = kilograms_per_day(20.0), .electrical = watts(300.0)}; }

void with_bad_machine(std::string_view what, any_call<const twr::dehumidifier&, policy> call) {
  CAPTURE(what);
  const auto with = [](auto change) {
    twr::dehumidifier m = machine();
    change(m);
    return m;
  };
  using dehumidifier = twr::dehumidifier;
  refuses_bad_numbers("capacity", [&](double x, policy p) {
    return call(with([&](dehumidifier& m) { m.capacity = kilograms_per_second(x); }), p);
  });
  refuses_bad_numbers("electricity", [&](double x, policy p) {
    return call(with([&](dehumidifier& m) { m.electrical = watts(x); }), p);
  });
  refuses_bad_numbers("rating temperature", [&](double x, policy p) {
    return call(with([&](dehumidifier& m) { m.rated_at.temperature = warm(x); }), p);
  });
  refuses_bad_numbers("rating humidity", [&](double x, policy p) {
    return call(with([&](dehumidifier& m) { m.rated_at.humidity = humid(x); }), p);
  });
  refuses_bad_numbers("rating share", [&](double x, policy p) {
    return call(with([&](dehumidifier& m) { m.rated_at.share = x; }), p);
  });
}

}  // namespace

TEST_CASE("bad numbers: moist air") {
  refuses_bad_numbers("saturation_pressure", [](double x, policy p) { return twr::saturation_pressure(warm(x), p); });
  refuses_bad_numbers("saturation_temperature",
                      [](double x, policy p) { return twr::saturation_temperature(pascals(x), p); });
  refuses_bad_numbers("pressure_at_altitude",
                      [](double x, policy p) { return twr::pressure_at_altitude(metres(x), p); });
  with_bad_air("vapour_pressure", [](const twr::air& a, policy p) { return twr::vapour_pressure(a, p); });
  with_bad_air("humidity_ratio_of", [](const twr::air& a, policy p) { return twr::humidity_ratio_of(a, p); });
  with_bad_air("absolute_humidity", [](const twr::air& a, policy p) { return twr::absolute_humidity(a, p); });
  with_bad_air("dew_point", [](const twr::air& a, policy p) { return twr::dew_point(a, p); });
  with_bad_air("enthalpy", [](const twr::air& a, policy p) { return twr::enthalpy(a, p); });
  with_bad_air("specific_volume_of", [](const twr::air& a, policy p) { return twr::specific_volume_of(a, p); });
  with_bad_air("moist_air_density", [](const twr::air& a, policy p) { return twr::moist_air_density(a, p); });
  with_bad_air("dry_air_density", [](const twr::air& a, policy p) { return twr::dry_air_density(a, p); });
  with_bad_air("wet_bulb", [](const twr::air& a, policy p) { return twr::wet_bulb(a, p); });
  refuses_bad_numbers("vapour", [](double x, policy p) {
    return twr::humidity_ratio_from_vapour_pressure(pascals(x), standard_atmosphere, p);
  });
  refuses_bad_numbers("total", [](double x, policy p) {
    return twr::humidity_ratio_from_vapour_pressure(pascals(1e3), absolute_pressure{pascals(x)}, p);
  });
  refuses_bad_numbers("air_from ratio", [](double x, policy p) {
    return twr::air_from(twr::air_of_humidity_ratio{.temperature = celsius(20.0), .ratio = ratio(x)}, p);
  });
  refuses_bad_numbers("air_from ratio, temperature", [](double x, policy p) {
    return twr::air_from(twr::air_of_humidity_ratio{.temperature = warm(x), .ratio = ratio(0.005)}, p);
  });
  refuses_bad_numbers("air_from dew point", [](double x, policy p) {
    return twr::air_from(twr::air_of_dew_point{.temperature = celsius(20.0), .dew_point = warm(x)}, p);
  });
  refuses_bad_numbers("air_from dew point, temperature", [](double x, policy p) {
    return twr::air_from(twr::air_of_dew_point{.temperature = warm(x), .dew_point = celsius(10.0)}, p);
  });
  refuses_bad_numbers("air_from wet bulb", [](double x, policy p) {
    return twr::air_from(twr::air_of_wet_bulb{.temperature = celsius(20.0), .wet_bulb = warm(x)}, p);
  });
  refuses_bad_numbers("air_from wet bulb, temperature", [](double x, policy p) {
    return twr::air_from(twr::air_of_wet_bulb{.temperature = warm(x), .wet_bulb = celsius(15.0)}, p);
  });
  refuses_bad_numbers("air_from pressure", [](double x, policy p) {
    const absolute_pressure total{pascals(x)};
    (void)twr::air_from(
        twr::air_of_wet_bulb{.temperature = celsius(20.0), .wet_bulb = celsius(15.0), .pressure = total}, p);
    return twr::air_from(
        twr::air_of_dew_point{.temperature = celsius(20.0), .dew_point = celsius(15.0), .pressure = total}, p);
  });
  refuses_bad_numbers("vapour_diffusivity",
                      [](double x, policy p) { return twr::vapour_diffusivity(warm(x), standard_atmosphere, p); });
  refuses_bad_numbers("vapour_diffusivity, pressure", [](double x, policy p) {
    return twr::vapour_diffusivity(celsius(20.0), absolute_pressure{pascals(x)}, p);
  });
}

TEST_CASE("bad numbers: walls and windows") {
  const auto wall = [](double thickness, double conductivity, double inside, double outside) {
    return twr::transmittance(
        {.layers = {{.thickness = metres(thickness), .conductivity = watts_per_metre_kelvin(conductivity)}},
         .inside = watts_per_square_metre_kelvin(inside),
         .outside = watts_per_square_metre_kelvin(outside)});
  };
  refuses_bad_numbers("thickness", [&](double x, policy) { return wall(x, 1.0, 8.0, 8.0); });
  refuses_bad_numbers("conductivity", [&](double x, policy) { return wall(0.01, x, 8.0, 8.0); });
  refuses_bad_numbers("inside", [&](double x, policy) { return wall(0.01, 1.0, x, 8.0); });
  refuses_bad_numbers("outside", [&](double x, policy) { return wall(0.01, 1.0, 8.0, x); });

  const auto element = [](std::size_t which, double x) {
    twr::building_element e{
        .transmittance = watts_per_square_metre_kelvin(1.1), .inside = celsius(22.0), .outside = celsius(-5.0)};
    if (which == 0) e.transmittance = watts_per_square_metre_kelvin(x);
    if (which == 1) e.surface_resistance = square_metre_kelvins_per_watt(x);
    if (which == 2) e.inside = warm(x);
    if (which == 3) e.outside = warm(x);
    return e;
  };
  for (std::size_t which = 0; which < 4; ++which) {
    CAPTURE(which);
    refuses_bad_numbers("temperature_factor",
                        [&](double x, policy) { return twr::temperature_factor(element(which, x)); });
    refuses_bad_numbers("surface_temperature",
                        [&](double x, policy) { return twr::surface_temperature(element(which, x)); });
    refuses_bad_numbers("judge_surface", [&](double x, policy p) {
      return twr::judge_surface(element(which, x), air_of(22.0, 50.0), p);
    });
    refuses_bad_numbers("highest_humidity", [&](double x, policy p) {
      return twr::highest_humidity(element(which, x), twr::mould_humidity, p);
    });
  }
  refuses_bad_numbers("surface humidity",
                      [&](double x, policy p) { return twr::highest_humidity(element(4, 0.0), humid(x), p); });
  with_bad_air("judge_surface", [&](const twr::air& a, policy p) {
    auto e = element(4, 0.0);
    e.inside = a.temperature;
    return twr::judge_surface(e, a, p);
  });
  with_bad_air("lowest_surface_temperature",
               [](const twr::air& a, policy p) { return twr::lowest_surface_temperature(a, twr::mould_humidity, p); });
  refuses_bad_numbers("lowest_surface_temperature, surface", [](double x, policy p) {
    return twr::lowest_surface_temperature(air_of(22.0, 50.0), humid(x), p);
  });
  with_bad_air("lowest_temperature_factor", [](const twr::air& a, policy p) {
    return twr::lowest_temperature_factor(a, celsius(-5.0), twr::mould_humidity, p);
  });
  refuses_bad_numbers("lowest_temperature_factor, outside", [](double x, policy p) {
    return twr::lowest_temperature_factor(air_of(22.0, 50.0), warm(x), twr::mould_humidity, p);
  });
  refuses_bad_numbers("lowest_temperature_factor, surface", [](double x, policy p) {
    return twr::lowest_temperature_factor(air_of(22.0, 50.0), celsius(-5.0), humid(x), p);
  });
}

TEST_CASE("bad numbers: evaporation") {
  for (const auto& law : twr::evaporation_laws) {
    CAPTURE(law.name);
    with_bad_air("evaporation_rate", [&](const twr::air& a, policy p) {
      return twr::evaporation_rate(law.law, {.water = seawater(25.0), .air = a}, p);
    });
    with_bad_water("evaporation_rate", [&](const twr::tank_water& w, policy p) {
      return twr::evaporation_rate(law.law, {.water = w, .air = air_of(22.0, 50.0)}, p);
    });
    refuses_bad_numbers("air speed", [&](double x, policy p) {
      return twr::evaporation_rate(
          law.law, {.water = seawater(25.0), .air = air_of(22.0, 50.0), .air_speed = metres_per_second(x)}, p);
    });
  }
  const std::vector<twr::wet_surface> one{{.area = square_metres(1.0)}};
  with_bad_air("evaporation", [&](const twr::air& a, policy p) {
    return twr::evaporation({.water = seawater(25.0), .air = a, .surfaces = one}, p);
  });
  with_bad_water("evaporation", [&](const twr::tank_water& w, policy p) {
    return twr::evaporation({.water = w, .air = air_of(22.0, 50.0), .surfaces = one}, p);
  });
  with_bad_surface("evaporation", [](const auto& s, policy p) {
    return twr::evaporation({.water = seawater(25.0), .air = air_of(22.0, 50.0), .surfaces = s}, p);
  });
}

TEST_CASE("bad numbers: humidity of the room") {
  with_bad_room("humidity_balance", true,
                [](const twr::tank_room& r, policy p) { return twr::humidity_balance(r, p); });
  with_bad_room("humidity_course", true, [](const twr::tank_room& r, policy p) {
    return twr::humidity_course({.room = r, .start = humid(0.5), .time = hours(2.0)}, p);
  });
  with_bad_room("dehumidifier_for", true, [](const twr::tank_room& r, policy p) {
    return twr::dehumidifier_for(r, humid(0.5), twr::rated_80F_60, p);
  });
  with_bad_room("ventilation_for", true,
                [](const twr::tank_room& r, policy p) { return twr::ventilation_for(r, humid(0.9), p); });
  const twr::tank_room r = cellar(24.0, air_of(18, 60));
  refuses_bad_numbers("start", [&](double x, policy p) {
    return twr::humidity_course({.room = r, .start = humid(x), .time = hours(1.0)}, p);
  });
  refuses_bad_numbers("time", [&](double x, policy p) {
    return twr::humidity_course({.room = r, .start = humid(0.5), .time = seconds(x)}, p);
  });
  refuses_bad_numbers("step", [&](double x, policy p) {
    return twr::humidity_course({.room = r, .start = humid(0.5), .time = hours(1.0), .step = seconds(x)}, p);
  });
  refuses_bad_numbers("target",
                      [&](double x, policy p) { return twr::dehumidifier_for(r, humid(x), twr::rated_80F_60, p); });
  refuses_bad_numbers("target of ventilation",
                      [&](double x, policy p) { return twr::ventilation_for(r, humid(x), p); });
  with_bad_machine("humidity_balance", [&](const twr::dehumidifier& m, policy p) {
    auto with = r;
    with.dehumidifier = twr::controlled_dehumidifier{.machine = m, .set_point = humid(0.5)};
    return twr::humidity_balance(with, p);
  });
  refuses_bad_numbers("set point", [&](double x, policy p) {
    auto with = r;
    with.dehumidifier = twr::controlled_dehumidifier{.machine = machine(), .set_point = humid(x)};
    return twr::humidity_balance(with, p);
  });
  with_bad_machine("dehumidifier_output", [](const twr::dehumidifier& m, policy p) {
    return twr::dehumidifier_output(m, celsius(24.0), humid(0.5), p);
  });
  refuses_bad_numbers("temperature of the machine",
                      [](double x, policy p) { return twr::dehumidifier_output(machine(), warm(x), humid(0.5), p); });
  refuses_bad_numbers("humidity at the machine", [](double x, policy p) {
    return twr::dehumidifier_output(machine(), celsius(24.0), humid(x), p);
  });

  const auto hand = [](std::size_t which, double x) {
    twr::well_mixed_room room{.dry_air = kilograms_per_hour(80.0), .outdoor = ratio(0.005)};
    if (which == 0) room.dry_air = kilograms_per_second(x);
    if (which == 1) room.outdoor = ratio(x);
    if (which == 2) room.source = kilograms_per_second(x);
    if (which == 3) room.transfer = kilograms_per_second(x);
    if (which == 4) room.surface = ratio(x);
    return room;
  };
  const twr::humidity_start from{.ratio = ratio(0.006), .dry_air = kilograms(180.0), .time = hours(1.0)};
  for (std::size_t which = 0; which < 5; ++which) {
    CAPTURE(which);
    refuses_bad_numbers("settled_humidity_ratio",
                        [&](double x, policy) { return twr::settled_humidity_ratio(hand(which, x)); });
    refuses_bad_numbers("humidity_time_constant", [&](double x, policy) {
      return twr::humidity_time_constant(hand(which, x), kilograms(180.0));
    });
    refuses_bad_numbers("humidity_ratio_after",
                        [&](double x, policy) { return twr::humidity_ratio_after(hand(which, x), from); });
  }
  refuses_bad_numbers("air mass",
                      [&](double x, policy) { return twr::humidity_time_constant(hand(9, 0.0), kilograms(x)); });
  refuses_bad_numbers("start ratio", [&](double x, policy) {
    auto f = from;
    f.ratio = ratio(x);
    return twr::humidity_ratio_after(hand(9, 0.0), f);
  });
  refuses_bad_numbers("start mass", [&](double x, policy) {
    auto f = from;
    f.dry_air = kilograms(x);
    return twr::humidity_ratio_after(hand(9, 0.0), f);
  });
  refuses_bad_numbers("start time", [&](double x, policy) {
    auto f = from;
    f.time = seconds(x);
    return twr::humidity_ratio_after(hand(9, 0.0), f);
  });
}

TEST_CASE("bad numbers: heat of the tank") {
  with_bad_tank("heat_balance", [](const twr::tank_heat& t, policy p) { return twr::heat_balance(t, p); });
  with_bad_tank("heater_for", [](const twr::tank_heat& t, policy p) { return twr::heater_for(t, 1.25, p); });
  const twr::tank_heat tank = display_tank(25.0, 22.0, 50.0);
  refuses_bad_numbers("margin", [&](double x, policy p) { return twr::heater_for(tank, x, p); });
  refuses_bad_numbers("duty",
                      [&](double x, policy p) { return twr::chiller_for(tank, air_of(30, 60), fraction(x), p); });
  with_bad_air("chiller_for",
               [&](const twr::air& a, policy p) { return twr::chiller_for(tank, a, fraction(0.65), p); });

  const auto capacity = twr::heat_capacity_of(seawater(25.0), litres(1809.0));
  with_bad_tank("warm_up", [&](twr::tank_heat t, policy p) {
    return twr::warm_up(
        {.tank = std::move(t), .heat_capacity = capacity, .target = celsius(27.0), .heater = watts(3e3)}, p);
  });
  const auto warming = [&](std::size_t which, double x) {
    twr::warm_up_request w{.tank = tank, .heat_capacity = capacity, .target = celsius(27.0), .heater = watts(3e3)};
    if (which == 0) w.heat_capacity = joules_per_kelvin(x);
    if (which == 1) w.target = warm(x);
    if (which == 2) w.heater = watts(x);
    return w;
  };
  for (std::size_t which = 0; which < 3; ++which) {
    CAPTURE(which);
    refuses_bad_numbers("warm_up", [&](double x, policy p) { return twr::warm_up(warming(which, x), p); });
  }
  const auto line = [](std::size_t which, double x) {
    twr::linear_warm_up w{.heat_capacity = joules_per_kelvin(8e6),
                          .from = celsius(16.0),
                          .to = celsius(26.0),
                          .heater = watts(500.0),
                          .loss = watts_per_kelvin(12.0)};
    if (which == 0) w.heat_capacity = joules_per_kelvin(x);
    if (which == 1) w.from = warm(x);
    if (which == 2) w.to = warm(x);
    if (which == 3) w.heater = watts(x);
    if (which == 4) w.loss = watts_per_kelvin(x);
    if (which == 5) w.stands_at = warm(x);
    return w;
  };
  for (std::size_t which = 0; which < 6; ++which) {
    CAPTURE(which);
    refuses_bad_numbers("linear_warm_up_time",
                        [&](double x, policy) { return twr::linear_warm_up_time(line(which, x)); });
  }

  const twr::uncontrolled_tank alone{.tank = tank, .heat_capacity = capacity};
  with_bad_tank("temperature_course_of", [&](twr::tank_heat t, policy p) {
    if (t.make_up) (void)twr::heat_balance(t, p);
    return twr::temperature_course_of({.tank = std::move(t), .heat_capacity = capacity}, hours(2.0), hours(1.0), p);
  });
  const auto drifting = [&](std::size_t which, double x) {
    auto o = alone;
    o.room = twr::drifting_room{.settles_at = celsius(15.0), .time_constant = hours(10.0)};
    if (which == 0) o.heat_capacity = joules_per_kelvin(x);
    if (which == 1) o.room->settles_at = warm(x);
    if (which == 2) o.room->time_constant = seconds(x);
    return o;
  };
  for (std::size_t which = 0; which < 3; ++which) {
    CAPTURE(which);
    refuses_bad_numbers("temperature_course_of", [&](double x, policy p) {
      return twr::temperature_course_of(drifting(which, x), hours(2.0), hours(1.0), p);
    });
    refuses_bad_numbers("largest_change", [&](double x, policy p) {
      return twr::largest_change(drifting(which, x), hours(2.0), hours(1.0), p);
    });
    refuses_bad_numbers("time_to_temperature", [&](double x, policy p) {
      return twr::time_to_temperature(drifting(which, x), celsius(20.0), hours(2.0), p);
    });
  }
  refuses_bad_numbers("time",
                      [&](double x, policy p) { return twr::temperature_course_of(alone, seconds(x), hours(1.0), p); });
  refuses_bad_numbers("step",
                      [&](double x, policy p) { return twr::temperature_course_of(alone, hours(1.0), seconds(x), p); });
  refuses_bad_numbers("within",
                      [&](double x, policy p) { return twr::largest_change(alone, seconds(x), hours(1.0), p); });
  refuses_bad_numbers("window",
                      [&](double x, policy p) { return twr::largest_change(alone, hours(1.0), seconds(x), p); });
  refuses_bad_numbers("limit",
                      [&](double x, policy p) { return twr::time_to_temperature(alone, warm(x), days(1.0), p); });
  refuses_bad_numbers(
      "look ahead", [&](double x, policy p) { return twr::time_to_temperature(alone, celsius(20.0), seconds(x), p); });
  for (std::size_t which = 0; which < 3; ++which) {
    refuses_bad_numbers("heat capacity band", [&](double x, policy p) {
      const auto raw = three<heat_capacity>(x, which);
      const auto sound = [&](heat_capacity c) { return c.value() == 1.0 ? capacity : c; };
      const estimate<heat_capacity> band{sound(raw.low), sound(raw.central), sound(raw.high), raw.reason};
      return twr::time_to_temperature(alone, band, celsius(20.0), hours(2.0), p);
    });
  }
  const auto fault = [&](std::size_t which, double x) {
    twr::stuck_heater s{.tank = tank, .heat_capacity = capacity, .heater = watts(800.0), .highest = celsius(30.0)};
    if (which == 0) s.heat_capacity = joules_per_kelvin(x);
    if (which == 1) s.heater = watts(x);
    if (which == 2) s.highest = warm(x);
    if (which == 3) s.within = seconds(x);
    return s;
  };
  for (std::size_t which = 0; which < 4; ++which) {
    CAPTURE(which);
    refuses_bad_numbers("heater_stuck_on",
                        [&](double x, policy p) { return twr::heater_stuck_on(fault(which, x), p); });
  }
  refuses_bad_numbers("volume",
                      [](double x, policy p) { return twr::heat_capacity_of(seawater(25.0), cubic_metres(x), p); });
  refuses_bad_numbers("water", [](double x, policy p) {
    return twr::heat_capacity_of(twr::tank_water{.temperature = celsius(25.0), .salinity = practical_salinity{35.0}},
                                 cubic_metres(x), p);
  });
  for (std::size_t which = 0; which < 3; ++which) {
    refuses_bad_numbers("volume of rock",
                        [&](double x, policy) { return twr::heat_capacity_of_solids(three<volume>(x, which)); });
    refuses_bad_numbers("sheet", [&](double x, policy) {
      return twr::heat_capacity_of_sheet({.area = square_metres(which == 0 ? x : 1.0),
                                          .thickness = metres(which == 1 ? x : 0.01),
                                          .heat = which == 2 ? twr::volumetric_heat{x} : twr::heat_of_glass});
    });
  }
}

TEST_CASE("bad numbers: top-off and cost") {
  const auto request = [](std::size_t which, double x) {
    twr::reservoir_request r{.water = seawater(25.0),
                             .volume = litres(1800.0),
                             .lowest = practical_salinity{31.0},
                             .free_volume = litres(60.0)};
    if (which == 0) r.volume = cubic_metres(x);
    if (which == 1) r.lowest = practical_salinity{x};
    if (which == 2) r.free_volume = cubic_metres(x);
    if (which == 3) r.fresh_water = warm(x);
    return r;
  };
  for (std::size_t which = 0; which < 4; ++which) {
    CAPTURE(which);
    refuses_bad_numbers("stuck_valve",
                        [&](double x, policy p) { return twr::stuck_valve(request(which, x), litres(40.0), p); });
    refuses_bad_numbers("largest_reservoir",
                        [&](double x, policy p) { return twr::largest_reservoir(request(which, x), p); });
  }
  refuses_bad_numbers("reservoir",
                      [&](double x, policy p) { return twr::stuck_valve(request(9, 0.0), cubic_metres(x), p); });
  for (std::size_t which = 0; which < 3; ++which) {
    CAPTURE(which);
    refuses_bad_numbers("top_off_rate", [&](double x, policy p) {
      return twr::top_off_rate(three<mass_flow>(x, which), celsius(20.0), p);
    });
    refuses_bad_numbers("reservoir_lasts", [&](double x, policy) {
      return twr::reservoir_lasts(litres(40.0), three<flow_rate>(x, which));
    });
    refuses_bad_numbers("return_level", [&](double x, policy) {
      return twr::return_level({.surface = square_metres(0.3),
                                .top_off = three<flow_rate>(x, which),
                                .running_level = metres(0.3),
                                .lowest_level = metres(0.2)});
    });
    refuses_bad_numbers("running_cost", [&](double x, policy p) {
      return twr::running_cost({.heat = three<power>(x, which), .price = twr::electricity_price{0.3}}, p);
    });
    refuses_bad_numbers("running_costs", [&](double x, policy) {
      const twr::running_device d[] = {{.draws = three<power>(x, which)}};
      return twr::running_costs(d, twr::electricity_price{0.3});
    });
  }
  const estimate<mass_flow> evaporation{kilograms_per_day(5.0), kilograms_per_day(8.0), kilograms_per_day(10.0), ""};
  refuses_bad_numbers("fresh water", [&](double x, policy p) { return twr::top_off_rate(evaporation, warm(x), p); });
  const auto rate = twr::top_off_rate(evaporation);
  refuses_bad_numbers("reservoir", [&](double x, policy) { return twr::reservoir_lasts(cubic_metres(x), rate); });
  const auto level = [&](double area, double run, double low) {
    return twr::return_level(
        {.surface = square_metres(area), .top_off = rate, .running_level = metres(run), .lowest_level = metres(low)});
  };
  refuses_bad_numbers("chamber", [&](double x, policy) { return level(x, 0.3, 0.2); });
  refuses_bad_numbers("running level", [&](double x, policy) { return level(0.3, x, 0.2); });
  refuses_bad_numbers("lowest level", [&](double x, policy) { return level(0.3, 0.3, x); });
  const estimate<power> heat{watts(100.0), watts(200.0), watts(300.0), ""};
  refuses_bad_numbers("price", [&](double x, policy p) {
    return twr::running_cost({.heat = heat, .price = twr::electricity_price{x}}, p);
  });
  refuses_bad_numbers("price of devices",
                      [](double x, policy) { return twr::running_costs({}, twr::electricity_price{x}); });
  refuses_bad_numbers("performance", [&](double x, policy p) {
    return twr::running_cost({.heat = heat, .price = twr::electricity_price{0.3}, .performance = x}, p);
  });
  refuses_bad_numbers("part of the time", [&](double x, policy p) {
    const twr::running_device d[] = {{.draws = heat, .on = fraction(x)}};
    (void)twr::running_cost({.heat = heat, .price = twr::electricity_price{0.3}, .on = fraction(x)}, p);
    return twr::running_costs(d, twr::electricity_price{0.3});
  });
}
