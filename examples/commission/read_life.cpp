// SPDX-License-Identifier: BSL-1.0
#include "plan_file.hpp"

namespace plan_file {

using namespace tankwright;
using namespace tankwright::commissioning;

namespace {

double not_below_zero(section& in, std::string_view key, double otherwise) {
  const double number = in.value_or<double>(key, otherwise);
  in.hold(key, {key, "", not_negative}, number);
  return number;
}

duration duration_above_zero(section& in, std::string_view key, duration otherwise) {
  const duration time = in.value_or<duration>(key, otherwise);
  in.hold(key, {key, "d", positive}, in_days(time));
  return time;
}

meal meal_from(section in) {
  meal m{.label = in.text("name").value_or("food"),
         .fed = {.food = in.need<mass_flow>("amount"), .protein = in.need<proportion>("protein")}};
  in.hold("amount", life::food_limits, in_grams_per_day(m.fed.food));
  const auto kind = in.word("kind", {"dry", "wet"});
  if (!kind) in.fail_here("needs kind = \"dry\" for pellets and flakes, or \"wet\" for frozen and live food");
  m.kind = *kind == 0 ? food_kind::dry : food_kind::wet;
  in.finish();
  return m;
}

std::vector<meal> meals_from(section& in) {
  std::vector<meal> all;
  for (section& one : in.sections("food")) all.push_back(meal_from(std::move(one)));
  return all;
}

/// What moves is weighed, and what there was of it too; its load is measured, or told by what was fed.
seasoned_rock rock_from(section in) {
  const mass moved = in.need<mass>("moved");
  const mass whole = in.need<mass>("of");
  in.hold("of", {"rock", "kg", positive}, in_kilograms(whole));
  in.hold("moved", {"rock moved", "kg", {0.0, in_kilograms(whole)}}, in_kilograms(moved));
  const auto food = meals_from(in);
  const auto nitrogen = in.maybe<mass_flow>("nitrogen");
  if (nitrogen.has_value() == !food.empty()) {
    in.fail_here("needs [[life.moved_rock.food]], what it has kept up with, or nitrogen = \"0.6 g/d\"; one of them");
  }
  if (nitrogen) in.hold("nitrogen", {"nitrogen kept up with", "g/d", positive}, in_grams_per_day(*nitrogen));
  in.finish();
  const auto given = [](mass_flow n) { return life::nitrogen_load::from_nitrogen(n); };
  const auto load = nitrogen
                        ? estimate<life::nitrogen_load>{given(*nitrogen), given(*nitrogen), given(*nitrogen), "given"}
                        : load_of(food);
  if (!(load.low.as_nitrogen().value() > 0.0)) in.fail_here("the food it has kept up with is nothing");
  return {.proven = load, .moved = fraction(moved / whole)};
}

/// One of: area; volume and specific_surface; bed, breathing_depth, grain and porosity.
filter_part surface_from(section in) {
  const bool media = in.has("volume");
  const bool sand = in.has("bed");
  if (in.has("area") + media + sand != 1) {
    in.fail_here(
        "needs one of area (wet surface), volume (of media, with specific_surface), bed (area of sand, with "
        "breathing_depth, grain and porosity)");
  }
  const std::string name = in.text("name").value_or("surface");
  const proportion seeded = in.value_or<proportion>("seeded", fraction(0.0));
  area wet = {};
  if (media) {
    in.hold("volume", {"volume", "L", not_negative}, in_litres(in.need<volume>("volume")));
    in.hold("specific_surface", {"surface of the media", "m2/m3", not_negative},
            in_square_metres_per_cubic_metre(in.need<specific_surface>("specific_surface")));
    wet = in.need<volume>("volume") * in.need<specific_surface>("specific_surface");
  } else if (sand) {
    const area bed = in.need<area>("bed");
    const length depth = in.need<length>("breathing_depth");
    in.hold("bed", life::film_area_limits, in_square_metres(bed));
    in.hold("breathing_depth", {"breathing depth", "mm", not_negative}, in_millimetres(depth));
    const length grain = in.need<length>("grain");
    const porosity pores = in.value_or<porosity>("porosity", porosity{0.4});
    wet = bed * depth * in.attempt([&] { return life::grain_surface(grain, pores); });
  } else {
    wet = in.need<area>("area");
    in.hold("area", life::film_area_limits, in_square_metres(wet));
  }
  in.finish();
  return {.label = name, .wet = wet, .seeded = seeded};
}

life::schedule schedule_from(section& in) {
  life::schedule when{.at = in.value_or<duration>("first", days(0.0))};
  in.hold("first", {"first", "d", not_negative}, in_days(when.at));
  const auto times = in.maybe<double>("times");
  if (times) {
    in.hold("times", {"times", "", {1.0, 1000.0}}, *times);
    if (*times != std::floor(*times)) in.fail_key("times", "must be a whole number");
    when.times = static_cast<int>(*times);
  }
  if (when.times > 1) when.every = duration_above_zero(in, "every", days(7.0));
  return when;
}

start_up_forecast weeks_from(section in) {
  start_up_forecast weeks;
  weeks.horizon = duration_above_zero(in, "horizon", weeks.horizon);
  in.hold("horizon", {"horizon", "d", positive, {0.0, 365.0}, "a year is enough to see the shape"},
          in_days(weeks.horizon));
  weeks.rock_on = in.value_or<duration>("rock_on", duration{});
  in.hold("rock_on", {"day of the rock", "d", not_negative}, in_days(weeks.rock_on));
  weeks.survives = in.value_or<proportion>("survives", weeks.survives);
  for (section& step : in.sections("animals")) {
    weeks.animals.push_back({.on = step.need<duration>("on"), .share = step.need<proportion>("share")});
    step.hold("on", {"day of the animals", "d", not_negative}, in_days(weeks.animals.back().on));
    step.finish();
  }
  for (section& bottle : in.sections("culture")) {
    const mass_flow oxidises = bottle.need<mass_flow>("oxidises");
    bottle.hold("oxidises", life::nitrogen_load_limits, in_grams_per_day(oxidises));
    weeks.cultures.push_back({.when = schedule_from(bottle), .oxidises = life::nitrogen_load::from_nitrogen(oxidises)});
    bottle.finish();
  }
  for (section& dose : in.sections("ammonia_dose")) {
    const mass_concentration rise = dose.need<mass_concentration>("rise");
    dose.hold("rise", water::total_ammonia_limits, in_milligrams_per_litre(rise));
    weeks.doses.push_back({.when = schedule_from(dose), .rise = water::total_ammonia::from_nitrogen(rise)});
    dose.finish();
  }
  for (section& change : in.sections("water_change")) {
    const proportion part = change.need<proportion>("part");
    weeks.water_changes.push_back({.when = schedule_from(change), .part = part});
    change.finish();
  }
  in.finish();
  return weeks;
}

alkalinity_plan alkalinity_from(section in) {
  const auto unit = in.word("unit", {"dKH", "meq/L", "mg/L CaCO3"});
  if (!unit) in.fail_here("needs unit = \"dKH\", \"meq/L\" or \"mg/L CaCO3\", as the kit shows it");
  const auto level = [&](std::string_view key) {
    const double number = in.need<double>(key);
    in.hold(key, {"alkalinity", "", not_negative}, number);
    return *unit == 0   ? water::alkalinity::from_degrees_kh(number)
           : *unit == 1 ? water::alkalinity::from_milliequivalents_per_litre(number)
                        : water::alkalinity::from_milligrams_caco3_per_litre(number);
  };
  const water::alkalinity now = level("now");
  const water::alkalinity lowest = level("lowest");
  if (lowest > now) in.fail_key("lowest", "is above what the water has now");
  const duration every = duration_above_zero(in, "measured_every", days(7.0));
  in.finish();
  return {.now = now, .lowest = lowest, .measured_every = every};
}

animal_group group_from(section in) {
  animal_group group{.label = in.text("name").value_or("animals"),
                     .breathing = {.each = in.need<mass>("each"),
                                   .count = in.need<double>("count"),
                                   .measured = life::specific_oxygen_use::from_milligrams_per_kilogram_hour(
                                       in.need<double>("oxygen_use")),
                                   .measured_at_mass = in.need<mass>("measured_at_mass"),
                                   .measured_at = in.need<temperature>("measured_at")}};
  life::animals& b = group.breathing;
  in.hold("each", life::animal_mass_limits, in_kilograms(b.each));
  in.hold("count", life::animal_count_limits, b.count);
  in.hold("oxygen_use", life::specific_oxygen_use_limits, b.measured->milligrams_per_kilogram_hour());
  in.hold("measured_at_mass", {"mass of the measured animal", "kg", positive}, in_kilograms(b.measured_at_mass));
  b.mass_exponent = in.value_or<double>("mass_exponent", b.mass_exponent);
  in.hold("mass_exponent", life::mass_exponent_limits, b.mass_exponent);
  b.q10 = in.value_or<double>("q10", b.q10);
  in.hold("q10", life::q10_limits, b.q10);
  b.activity = not_below_zero(in, "activity", b.activity);
  if (const auto adult = in.maybe<length>("adult")) {
    swimmer s{.adult = *adult, .speed = in.need<velocity>("speed")};
    in.hold("adult", life::body_length_limits, in_metres(s.adult));
    in.hold("speed", life::swim_speed_limits, in_metres_per_second(s.speed));
    s.run_multiple = in.value_or<double>("run_multiple", s.run_multiple);
    in.hold("run_multiple", {"run multiple", "", positive}, s.run_multiple);
    s.width_multiple = in.value_or<double>("width_multiple", s.width_multiple);
    in.hold("width_multiple", {"width multiple", "", positive}, s.width_multiple);
    group.swims = s;
  }
  in.finish();
  return group;
}

oxygen_plan power_cut_from(section in) {
  oxygen_plan cut{.help_within = in.need<duration>("help_within")};
  in.hold("help_within", {"time until help", "h", not_negative}, in_hours(cut.help_within));
  cut.lowest = in.value_or<mass_concentration>("lowest_oxygen", cut.lowest);
  in.hold("lowest_oxygen", life::oxygen_level_limits, in_milligrams_per_litre(cut.lowest));
  cut.start = in.value_or<proportion>("start", cut.start);
  if (auto battery = in.sub("battery_air")) {
    battery_air air{.bubbles = battery->need<rate>("kla")};
    battery->hold("kla", life::bubbles_limits, in_per_hour(air.bubbles));
    air.alpha = battery->value_or<proportion>("alpha", air.alpha);
    air.runs = battery->maybe<duration>("runs");
    if (air.runs) battery->hold("runs", {"time the battery runs", "h", not_negative}, in_hours(*air.runs));
    battery->finish();
    cut.battery = air;
  }
  in.finish();
  return cut;
}

circulation_plan circulation_from(section in) {
  circulation_plan plan;
  plan.clear_within = in.maybe<duration>("clear_within");
  if (plan.clear_within) in.hold("clear_within", {"time to clear", "h", not_negative}, in_hours(*plan.clear_within));
  for (section& one : in.sections("treatment")) {
    treatment t{.label = one.text("name").value_or("treatment"),
                .flow = one.need<flow_rate>("flow"),
                .passes = one.need<proportion>("removes")};
    one.hold("flow", {"flow", "L/h", positive}, in_litres_per_hour(t.flow));
    one.hold("removes", {"share removed in a pass", "", above_zero_to_one}, t.passes->value());
    one.finish();
    plan.clears.push_back(t);
  }
  in.finish();
  return plan;
}

arrival_plan arrivals_from(section in, const std::optional<water::ph_reading>& tank) {
  const auto ammonia = read_ammonia(in);
  if (!ammonia) {
    in.fail_here("needs the ammonia of the bag: ammonia_nitrogen, ammonia or ammonium, as the kit counts it");
  }
  const auto ph = read_ph(in);
  if (!ph) in.fail_here("needs the ph of the bag, and its ph_scale");
  if (tank && tank->on() != ph->on()) in.fail_key("ph_scale", "is not that of the tank: measure both with one probe");
  arrival_plan plan{.bag = {.total = *ammonia,
                            .ph = *ph,
                            .salinity = in.need<practical_salinity>("practical_salinity"),
                            .temperature = in.need<temperature>("temperature")},
                    .vessel = in.need<volume>("vessel"),
                    .salinity_per_hour = in.need<double>("salinity_per_hour")};
  in.hold("practical_salinity", water::ammonia_salinity_limits, plan.bag.salinity->value());
  in.hold("temperature", water::ammonia_temperature_limits, in_celsius(plan.bag.temperature));
  in.hold("vessel", life::start_volume_limits, in_litres(plan.vessel));
  in.hold("salinity_per_hour", {"salinity per hour", "", positive}, plan.salinity_per_hour);
  plan.temperature_per_hour = in.value_or<temperature_difference>("temperature_per_hour", plan.temperature_per_hour);
  in.hold("temperature_per_hour", {"temperature per hour", "K", positive}, in_kelvin_steps(plan.temperature_per_hour));
  plan.drip_into = in.word("drip_into", {"overflowing", "filling"}).value_or(0) == 0 ? life::drip_vessel::overflowing
                                                                                     : life::drip_vessel::filling;
  plan.step = in.value_or<proportion>("step", plan.step);
  in.hold("step", water::changed_part_limits, plan.step.value());
  in.finish();
  return plan;
}

}  // namespace

life_plan read_life(section& in) {
  life_plan plan;
  filter_plan& filter = plan.filter;
  filter.food = meals_from(in);
  if (auto rock = in.sub("moved_rock")) filter.rock = rock_from(std::move(*rock));
  for (section& one : in.sections("surface")) filter.surfaces.push_back(surface_from(std::move(one)));
  if (const auto c = in.maybe<mass_concentration>("ammonia_below")) {
    in.hold("ammonia_below", {"ammonia", "mg/L", positive}, in_milligrams_per_litre(*c));
    filter.stay_below = water::total_ammonia::from_nitrogen(*c);
  }
  if (const auto c = in.maybe<mass_concentration>("free_ammonia_below")) {
    in.hold("free_ammonia_below", {"free ammonia", "mg/L", positive}, in_milligrams_per_litre(*c));
    filter.free_below = water::free_ammonia::from_ammonia(*c);
  }
  plan.forecast = in.flag("forecast", true);
  if (auto weeks = in.sub("start_up")) plan.weeks = weeks_from(std::move(*weeks));
  plan.ph = read_ph(in);
  if (plan.ph) in.hold("ph", water::ph_limits, plan.ph->value());
  if (auto alkalinity = in.sub("alkalinity")) plan.alkalinity = alkalinity_from(std::move(*alkalinity));
  for (section& one : in.sections("animals")) plan.animals.push_back(group_from(std::move(one)));
  if (auto cut = in.sub("power_cut")) plan.power_cut = power_cut_from(std::move(*cut));
  if (auto circulation = in.sub("circulation")) plan.circulation = circulation_from(std::move(*circulation));
  if (auto arrivals = in.sub("arrivals")) plan.arrivals = arrivals_from(std::move(*arrivals), plan.ph);
  if (auto room = in.sub("room")) {
    plan.room = swim_run{.run = room->need<length>("run"), .width = room->need<length>("width")};
    room->hold("run", life::straight_run_limits, in_metres(plan.room->run));
    room->hold("width", life::clear_width_limits, in_metres(plan.room->width));
    if (plan.room->width.get() > plan.room->run.get()) {
      room->fail_key("width", "is more than run, which is the longest straight one: they may be exchanged");
    }
    room->finish();
  }
  in.finish();
  return plan;
}

}  // namespace plan_file
