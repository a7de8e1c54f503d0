// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/life_inputs.hpp>
#include <tankwright/plan/inputs/reading_inputs.hpp>

namespace tankwright::plan {

namespace detail {

namespace tl = tankwright::life;

[[nodiscard]] inline std::string or_else(const std::string& label, std::string_view otherwise) {
  return label.empty() ? std::string{otherwise} : label;
}

[[nodiscard]] inline std::vector<meal> meals_of(const std::vector<food>& all) {
  std::vector<meal> meals;
  for (const food& f : all) {
    meals.push_back({or_else(f.name, "food"), {.food = *f.amount, .protein = *f.protein}, *f.kind, *f.every});
  }
  return meals;
}

[[nodiscard]] inline seasoned_rock rock_of(const moved_rock& r) {
  const proportion share = fraction(r.moved.get() / r.whole.get());
  if (!r.nitrogen) return {load_of(meals_of(r.food)), share};
  const auto n = tl::nitrogen_load::from_nitrogen(*r.nitrogen);
  return {{n, n, n, "measured"}, share};
}

[[nodiscard]] inline area wet_area_of(const filter_surface& s) {
  if (s.area) return *s.area;
  if (s.volume) return s.volume.get() * s.specific_surface.get();
  if (s.rock) {
    return tl::rock_surface({.dry = *s.rock, .piece = *s.piece, .density = *s.density, .roughness = *s.roughness});
  }
  return s.bed.get() * s.breathing_depth.get() * tl::grain_surface(*s.grain, *s.porosity);
}

[[nodiscard]] inline tl::schedule schedule_of(const repeated& r) {
  return {.at = *r.first, .every = *r.every, .times = static_cast<int>(*r.times)};
}

[[nodiscard]] inline std::vector<wet_surface> surfaces_of(const std::vector<filter_surface>& all) {
  std::vector<wet_surface> surfaces;
  for (const filter_surface& one : all) {
    surfaces.push_back({or_else(one.name, "surface"), wet_area_of(one), *one.seeded});
  }
  return surfaces;
}

[[nodiscard]] inline filter_inputs filter_of(const life_section& s) {
  const start_up_weeks otherwise{};
  filter_inputs in{.food = meals_of(s.food),
                   .survives = *(s.start_up ? *s.start_up : otherwise).survives,
                   .stay_below = water::total_ammonia::from_nitrogen(*s.ammonia_below),
                   .free_below = water::free_ammonia::from_ammonia(*s.free_ammonia_below)};
  if (s.moved_rock) in.rock = rock_of(*s.moved_rock);
  in.surfaces = surfaces_of(s.surface);
  return in;
}

[[nodiscard]] inline forecast_inputs weeks_of(const life_section& s) {
  const start_up_weeks otherwise{};
  const start_up_weeks& w = s.start_up ? *s.start_up : otherwise;
  forecast_inputs in{.wanted = s.forecast, .horizon = *w.horizon, .rock_on = *w.rock_on};
  for (const stocking_step& step : w.animals) in.animals.push_back({*step.on, *step.share});
  for (const bottled_culture& c : w.culture) {
    in.cultures.push_back({schedule_of(c.when), tl::nitrogen_load::from_nitrogen(*c.oxidises)});
  }
  for (const dosed_ammonia& d : w.ammonia_dose) {
    in.doses.push_back({.when = schedule_of(d.when), .rise = water::total_ammonia::from_nitrogen(*d.rise)});
  }
  for (const changed_water& c : w.water_change) {
    in.water_changes.push_back({.when = schedule_of(c.when), .part = *c.part});
  }
  return in;
}

[[nodiscard]] inline alkalinity_inputs alkalinity_of(const alkalinity_watch& a) {
  const auto level = [&](double number) {
    switch (*a.unit) {
      case alkalinity_unit::degrees_kh:
        return water::alkalinity::from_degrees_kh(number);
      case alkalinity_unit::milliequivalents_per_litre:
        break;
      case alkalinity_unit::milligrams_caco3_per_litre:
        return water::alkalinity::from_milligrams_caco3_per_litre(number);
    }
    return water::alkalinity::from_milliequivalents_per_litre(number);
  };
  return {level(*a.now), level(*a.lowest), *a.measured_every};
}

[[nodiscard]] inline animal_inputs animals_of(const animal_kind& a) {
  animal_inputs in{.label = or_else(a.name, "animals"),
                   .breathing = {.each = *a.each,
                                 .count = *a.count,
                                 .measured = tl::specific_oxygen_use::from_milligrams_per_kilogram_hour(*a.oxygen_use),
                                 .measured_at_mass = *a.measured_at_mass,
                                 .measured_at = *a.measured_at,
                                 .mass_exponent = *a.mass_exponent,
                                 .q10 = *a.q10,
                                 .activity = *a.activity},
                   .run_multiple = *a.run_multiple,
                   .width_multiple = *a.width_multiple};
  if (a.adult) {
    in.adult = *a.adult;
    in.speed = *a.speed;
  }
  return in;
}

[[nodiscard]] inline oxygen_inputs oxygen_of(const power_cut_watch& p) {
  oxygen_inputs in{.help_within = p.help_within.maybe(), .lowest = *p.lowest_oxygen, .start = *p.start};
  if (const auto& b = p.battery_air) in.battery = battery_inputs{*b->kla, *b->alpha, b->runs.maybe()};
  return in;
}

[[nodiscard]] inline circulation_inputs circulation_of(const circulation& c) {
  circulation_inputs in{.clear_within = c.clear_within.maybe()};
  for (const treatment& t : c.treatment) in.treatments.push_back({or_else(t.name, "treatment"), *t.flow, *t.removes});
  return in;
}

[[nodiscard]] inline arrival_inputs arrivals_of(const arrivals& a) {
  return {.bag = {.total = total_ammonia_of(a.ammonia).value(),
                  .ph = ph_of(a.ph).value(),
                  .salinity = *a.practical_salinity,
                  .temperature = *a.temperature},
          .vessel = *a.vessel,
          .salinity_per_hour = *a.salinity_per_hour,
          .temperature_per_hour = *a.temperature_per_hour,
          .drip_into = *a.drip_into,
          .step = *a.step};
}

[[nodiscard]] inline quarantine_inputs quarantine_of(const quarantine_tank& q, const life_inputs& in) {
  quarantine_inputs made{.net = *q.volume,
                         .lasts = *q.lasts,
                         .part = *q.part,
                         .every = *q.every,
                         .ph = q.ph.ph ? ph_of(q.ph) : in.ph,
                         .filter = {.food = meals_of(q.food),
                                    .survives = in.filter.survives,
                                    .stay_below = in.filter.stay_below,
                                    .free_below = in.filter.free_below}};
  made.filter.surfaces = surfaces_of(q.surface);
  return made;
}

}  // namespace detail

TANKWRIGHT_INLINE estimate<tankwright::life::nitrogen_load> load_of(std::span<const meal> meals) {
  mass_flow low = {}, central = {}, high = {};
  for (const meal& m : meals) {
    const auto made = tankwright::life::nitrogen_from_feed(m.fed);
    const bool dry = m.kind == food_kind::dry;
    low += made.ammonia.low.as_nitrogen();
    central += (dry ? made.ammonia.central : made.bound).as_nitrogen();
    high += (dry ? made.ammonia.high : made.bound).as_nitrogen();
  }
  using tankwright::life::nitrogen_load;
  return {nitrogen_load::from_nitrogen(low), nitrogen_load::from_nitrogen(central), nitrogen_load::from_nitrogen(high),
          "digestion differs by about 25 %; of wet food all nitrogen is counted"};
}

TANKWRIGHT_INLINE life_inputs inputs_of(const life_section& s) {
  life_inputs in{.ph = ph_of(s.ph),
                 .filter = detail::filter_of(s),
                 .weeks = detail::weeks_of(s),
                 .power_cut = detail::oxygen_of(s.power_cut ? *s.power_cut : power_cut_watch{}),
                 .has_power_cut = s.power_cut.has_value()};
  if (s.alkalinity) in.alkalinity = detail::alkalinity_of(*s.alkalinity);
  for (const animal_kind& a : s.animals) in.animals.push_back(detail::animals_of(a));
  if (s.circulation) in.circulation = detail::circulation_of(*s.circulation);
  if (s.arrivals) in.arrivals = detail::arrivals_of(*s.arrivals);
  if (s.room) in.room = swim_run{*s.room->run, *s.room->width};
  if (s.quarantine) in.quarantine = detail::quarantine_of(*s.quarantine, in);
  return in;
}

}  // namespace tankwright::plan
