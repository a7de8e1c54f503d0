// SPDX-License-Identifier: BSL-1.0
/// @file
/// The salting day: how much mix, what every instrument should then read, how far from the older tank, and what the
/// water holds for animals.
#pragma once

#include <optional>
#include <vector>

#include <tankwright/commissioning/finding.hpp>
#include <tankwright/commissioning/salinity_reading.hpp>
#include <tankwright/water/adjust.hpp>
#include <tankwright/water/ammonia.hpp>
#include <tankwright/water/oxygen.hpp>
#include <tankwright/water/salt_mix.hpp>

namespace tankwright::commissioning {

/// The water of the new display, and the tank it is to match. What is not given is not asked.
struct water_plan {
  std::optional<estimate<tankwright::volume>> new_water{};  ///< seawater to be made
  required<tankwright::temperature> temperature;            ///< of the new water
  std::optional<estimate<proportion>> mix_yield{};          ///< measured; otherwise what dry mixes usually yield
  std::optional<salinity_reading> older_tank{};             ///< whose salinity is to be matched
  std::optional<practical_salinity> target{};               ///< where there is no older tank
  std::optional<salinity_reading> now{};                    ///< what the new water measures so far
  practical_salinity match_within{0.5};                     ///< how near is near enough
  std::optional<water::hydrometer> hydrometer{};            ///< instruments that will judge the new water
  std::optional<water::refractometer> refractometer{};
  bool probe = false;
  std::optional<water::total_ammonia> ammonia{};
  std::optional<water::ph_reading> ph{};
  absolute_pressure air = standard_atmosphere;
};

namespace detail {

inline constexpr std::string_view salting = "Salting";

[[nodiscard]] inline estimate<practical_salinity> target_of(const water_plan& plan) {
  if (plan.older_tank) return salinity_of(*plan.older_tank);
  const practical_salinity s = plan.target.value_or(practical_salinity{35.0});
  return {s, s, s, "chosen"};
}

[[nodiscard]] inline finding target_finding(const water_plan& plan, const estimate<practical_salinity>& target) {
  finding f{.id = "salt.target", .day = salting, .question = "What salinity must the new water have?"};
  f.numbers.push_back({"practical salinity", amount_of(target)});
  f.numbers.push_back({"density at the water's temperature",
                       amount_of(water::density(target.central, plan.temperature)), role::detail});
  f.sources = {water::feistel_2008, water::millero_2008};
  if (!plan.older_tank && !plan.target) {
    f.note = "Neither an older tank nor a target is given: natural seawater, 35, is taken.";
    f.measure_next.push_back("measure the older tank that the animals come from");
  }
  return f;
}

[[nodiscard]] inline finding mix_finding(const water_plan& plan, const estimate<practical_salinity>& target) {
  finding f{.id = "salt.mix", .day = salting, .question = "How much salt mix for the new water?"};
  if (!plan.new_water) {
    f.says = verdict::not_enough_known;
    f.measure_next.push_back("give the volume of new water, or the display so that it can be computed");
    return f;
  }
  const auto yield = plan.mix_yield.value_or(water::typical_mix_yield);
  const auto batch = [&](volume v, practical_salinity s, proportion y) {
    return water::salt_for_finished_volume(
        {.volume = v, .target = s, .temperature = plan.temperature, .mix_yield = y});
  };
  const auto least = batch(plan.new_water->low, target.low, yield.high);
  const auto middle = batch(plan.new_water->central, target.central, yield.central);
  const auto most = batch(plan.new_water->high, target.high, yield.low);
  constexpr std::string_view why = "volume, salinity to be matched and yield, each at its worst";
  f.numbers.push_back({"mix to weigh out", amount_of(estimate<mass>{least.mix, middle.mix, most.mix, why})});
  f.numbers.push_back({"fresh water to pour it into", amount_of(middle.fresh_water), role::detail});
  f.numbers.push_back({"seawater it makes", amount_of(*plan.new_water), role::detail});
  f.numbers.push_back({"salt in the mix (its yield)", amount_of(yield), role::detail});
  f.note = "Weigh out the low figure first, let it clear, measure, and add the rest in steps: it is enough when the "
           "instruments read what stands below.";
  f.sources = {water::feistel_2008, water::millero_2008};
  f.before_acting = water::mixing_caution.text;
  if (!plan.mix_yield) f.measure_next.push_back("measure the yield of the mix with a trial batch of a few litres");
  return f;
}

[[nodiscard]] inline finding readings_finding(const water_plan& plan, const estimate<practical_salinity>& target) {
  finding f{.id = "salt.readings", .day = salting, .question = "What should the instruments read when it is right?"};
  const practical_salinity s = target.central;
  f.numbers.push_back({"at the water's temperature of", amount_of(plan.temperature.get()), role::detail});
  if (plan.hydrometer) {
    const double reading = water::hydrometer_reading(s, plan.temperature, *plan.hydrometer);
    f.numbers.push_back({"hydrometer", amount{"specific_gravity", reading, reading, reading}});
    f.numbers.push_back({"  whose scale is made for", amount_of(plan.hydrometer->scale->sample.get()), role::detail});
    f.sources.push_back(water::feistel_2008);
  }
  if (plan.refractometer) {
    f.numbers.push_back({"refractometer (parts per thousand)",
                         amount_of(water::refractometer_reading(s, plan.temperature, *plan.refractometer))});
    f.sources.push_back(water::millard_seaver_1990);
  }
  if (plan.probe || !(plan.hydrometer || plan.refractometer)) {
    const auto raw = water::conductivity_from_salinity(s, plan.temperature);
    f.numbers.push_back({"conductivity, not compensated", amount_of(raw)});
    f.numbers.push_back({"conductivity, referred to 25 °C",
                         amount_of(water::referred_to_25(raw, plan.temperature).value()), role::detail});
    f.sources.push_back(water::pss78);
  }
  f.note = "Judge both tanks with the same instrument on the same day.";
  return f;
}

[[nodiscard]] inline finding match_finding(const water_plan& plan, const estimate<practical_salinity>& target) {
  finding f{.id = "salt.match", .day = salting, .question = "Does the new water match the older tank?"};
  const auto now = salinity_of(*plan.now);
  const double difference = now.central.value() - target.central.value();
  const double apart_low = now.low.value() - target.high.value();
  const double apart_high = now.high.value() - target.low.value();
  const double most = std::fmax(std::fabs(apart_low), std::fabs(apart_high));
  const double near_enough = plan.match_within.value();
  f.says = most <= near_enough                     ? verdict::holds
           : std::fabs(difference) <= near_enough ? verdict::thin_margin
                                                   : verdict::does_not_hold;
  f.numbers.push_back({"new water minus older tank",
                       amount{"practical_salinity", apart_low, difference, apart_high, "the bands of both readings"}});
  f.numbers.push_back({"may differ by", amount_of(plan.match_within), role::limit});
  f.numbers.push_back({"new water now", amount_of(now), role::detail});
  f.sources = {water::feistel_2008, water::millero_2008};
  f.before_acting = water::adjusting_caution.text;
  if (plan.new_water && difference < 0.0) {
    const auto yield = plan.mix_yield.value_or(water::typical_mix_yield);
    const auto add = map_falling(yield, [&](proportion y) {
      return water::raise_salinity({.volume = plan.new_water->central, .from = now.central, .target = target.central,
                                    .temperature = plan.temperature, .mix_yield = y})
          .mix;
    });
    f.numbers.push_back({"mix to add", amount_of(add), role::detail});
  } else if (plan.new_water && difference > 0.0) {
    const auto step = water::salinity_replacement{.volume = plan.new_water->central, .from = now.central,
                                                  .target = target.central, .replacement = practical_salinity{0.0},
                                                  .temperature = plan.temperature};
    f.numbers.push_back({"to take out", amount_of(water::replace_to_reach(step).taken_out), role::detail});
    f.numbers.push_back({"fresh water to put in", amount_of(water::replace_to_reach(step).put_in), role::detail});
  }
  if (f.says == verdict::thin_margin) {
    f.measure_next.push_back("measure both waters with one instrument that has finer divisions");
  }
  return f;
}

[[nodiscard]] inline finding oxygen_finding(const water_plan& plan, practical_salinity s) {
  finding f{.id = "water.oxygen", .day = salting, .question = "How much oxygen can this water hold?"};
  f.numbers.push_back({"oxygen at saturation",
                       amount_of(water::oxygen_saturation_concentration(s, plan.temperature, plan.air))});
  f.sources = {water::garcia_gordon_1992};
  return f;
}

[[nodiscard]] inline finding ammonia_finding(const water_plan& plan, practical_salinity s) {
  finding f{.id = "water.ammonia", .day = salting, .question = "How much of the ammonia is free?"};
  const auto free = water::free_ammonia_in(
      {.total = *plan.ammonia, .ph = *plan.ph, .salinity = s, .temperature = plan.temperature});
  f.numbers.push_back({"free part of the total", amount_of(free.fraction)});
  f.numbers.push_back({"free ammonia, as NH3", amount_of(map_rising(free.concentration, [](water::free_ammonia c) {
                         return c.as_ammonia();
                       }))});
  f.numbers.push_back({"total ammonia, as nitrogen", amount_of(plan.ammonia->as_nitrogen()), role::detail});
  f.sources = {water::clegg_whitfield_1995};
  f.before_acting = free.caution.text;
  return f;
}

}  // namespace detail

/// The decisions of the salting day.
///
///   target salinity from the older tank; mass of mix by `salt_for_finished_volume`; readings of each instrument at
///   the water's temperature; distance from the older tank; oxygen and free ammonia
///
/// @param plan the water as planned and measured; what is not given is not asked
/// @return     findings salt.target, salt.mix, salt.readings, and where the plan asks for them salt.match,
///             water.oxygen and water.ammonia
/// @throws     invalid_input, out_of_range (names the argument of the function that refused it)
/// @accuracy   the bands of the findings
/// @source     the sources of the functions of `water/`, carried by each finding
[[nodiscard]] inline std::vector<finding> assess_water(const water_plan& plan) {
  const estimate<practical_salinity> target = detail::target_of(plan);
  std::vector<finding> all;
  all.push_back(detail::target_finding(plan, target));
  all.push_back(detail::mix_finding(plan, target));
  all.push_back(detail::readings_finding(plan, target));
  if (plan.now) all.push_back(detail::match_finding(plan, target));
  all.push_back(detail::oxygen_finding(plan, target.central));
  if (plan.ammonia && plan.ph) all.push_back(detail::ammonia_finding(plan, target.central));
  return all;
}

}  // namespace tankwright::commissioning
