// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <tankwright/core/inline.hpp>
#include <tankwright/core/span_of.hpp>
#include <tankwright/decisions/moving_in/oxygen_in_power_cut.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/life/aeration.hpp>
#include <tankwright/life/oxygen.hpp>
#include <tankwright/water/oxygen.hpp>
#include <vector>

namespace tankwright::decisions {

namespace detail {

/// The rate of animals is scaled to within about this part (`life::oxygen_use`).
inline constexpr double oxygen_use_band = 0.30;
inline constexpr std::string_view air_reason =
    "animals use 30 % more or less than scaled; the surface brings nothing under lids, what a lake's does at best";

/// One power cut: how much the animals use over what was computed, and how much of a lake's surface the display has.
struct breathing_case {
  double use;
  double surface;
};
inline constexpr breathing_case worst_air{1.0 + oxygen_use_band, 0.0};  ///< under lids nothing crosses the surface
/// Indoors there is no wind; the middle between none and a lake's, for want of a source.
inline constexpr breathing_case middle_air{1.0, 0.5};
inline constexpr breathing_case best_air{1.0 - oxygen_use_band, 1.0};

class power_cut_air {
 public:
  power_cut_air(const life_case& c, mass_flow animals, mass_flow filter)
      : in_{&c.in.power_cut},
        net_{c.state.display_water->central},
        temperature_{c.state.water.temperature},
        surface_{c.state.display_surface.value_or(area{})},
        animals_{animals},
        filter_{filter},
        saturation_{water::oxygen_saturation_concentration(c.state.water.salinity, c.state.water.temperature,
                                                           c.state.water.air)} {}

  [[nodiscard]] mass_concentration saturation() const noexcept { return saturation_; }
  [[nodiscard]] mass_concentration start() const { return saturation_ * in_->start.value(); }

  /// While the battery runs, or without it.
  [[nodiscard]] life::oxygen_course course(const breathing_case& as, bool battery) const {
    std::vector<life::aeration> ways{
        {.label = "surface", .surface = surface_ * as.surface, .transfer = life::still_surface_transfer}};
    if (battery) {
      ways.push_back({.label = "battery air", .bubbles = in_->battery->bubbles, .alpha = in_->battery->alpha});
    }
    const rate aeration = life::aeration_rate({.net = net_, .temperature = temperature_, .ways = core::span_of(ways)});
    return {.tank = {.net = net_, .use = animals_ * as.use + filter_, .saturation = saturation_, .aeration = aeration},
            .start = start()};
  }
  /// The course once the battery is empty.
  [[nodiscard]] life::oxygen_course after_battery(const breathing_case& as) const {
    life::oxygen_course then = course(as, false);
    then.start = life::oxygen_after(course(as, true), *in_->battery->runs);
    return then;
  }

  /// Time to the limit; empty when it is never reached.
  [[nodiscard]] std::optional<duration> lasts(const breathing_case& as, bool battery) const {
    auto first = life::time_to_oxygen_limit(course(as, battery), in_->lowest).time;
    if (!battery || !in_->battery->runs || (first && *first <= *in_->battery->runs)) return first;
    const auto rest = life::time_to_oxygen_limit(after_battery(as), in_->lowest).time;
    if (!rest) return std::nullopt;
    return *in_->battery->runs + *rest;
  }
  /// The lowest level until a time; each course is steady, so it stands at an end of one.
  [[nodiscard]] mass_concentration lowest_until(const breathing_case& as, duration time) const {
    const bool battery = in_->battery.has_value();
    const auto& runs = battery ? in_->battery->runs : std::optional<duration>{};
    if (!runs || *runs >= time) return std::min(start(), life::oxygen_after(course(as, battery), time));
    const life::oxygen_course then = after_battery(as);
    return std::min({start(), then.start.get(), life::oxygen_after(then, time - *runs)});
  }

 private:
  const plan::oxygen_inputs* in_;
  volume net_;
  temperature temperature_;
  area surface_;
  mass_flow animals_, filter_;
  mass_concentration saturation_;
};

/// As far as anybody looks ahead; a time that never comes counts as this one.
inline constexpr duration longest_without_power = days(7.0);

/// The times of the three cases. None where even the worst stays.
[[nodiscard]] inline std::optional<estimate<duration>> band_of_times(const power_cut_air& air, bool battery) {
  const auto low = air.lasts(worst_air, battery);
  if (!low || *low >= longest_without_power) return std::nullopt;
  const duration central =
      std::min(air.lasts(middle_air, battery).value_or(longest_without_power), longest_without_power);
  const duration high = std::min(air.lasts(best_air, battery).value_or(longest_without_power), longest_without_power);
  return estimate<duration>{*low, std::max(*low, central), std::max({*low, central, high}), air_reason};
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_oxygen_in_power_cut(const situation& s, answers& out) {
  if (!s.plan().life || (!s.plan().life->power_cut && s.plan().life->animals.empty())) return;
  finding& f = out.ask(oxygen_in_power_cut);
  const life_case& c = s.life();
  if (c.in.animals.empty()) f.unknown("give the animals: mass, number, and a measured oxygen use of their kind");
  if (!c.state.display_water) {
    f.unknown(c.state.why_no_display.empty() ? std::string{needs_net_volume} : c.state.why_no_display);
  }
  if (!f.measure_next.empty()) return;
  mass_flow animals = {};
  for (const plan::animal_inputs& group : c.in.animals) {
    life::animals named = group.breathing;
    named.label = group.label;
    const auto demand = life::oxygen_use(named, c.state.water.temperature);
    animals += demand.use;
    f.note = demand.caution.text;
  }
  // The filter works hardest on the day of a large meal.
  const food_end food = food_at(c.in.filter, &estimate<life::nitrogen_load>::central);
  const auto oxidised = life::capacity_for_meals(core::span_of(food.meals), c.in.filter.stay_below, c.net->central);
  const mass_flow filter = life::needs_of_nitrification(oxidised).oxygen.central;
  const detail::power_cut_air air{c, animals, filter};
  const auto half = [](duration t) { return duration{t * 0.5}; };
  if (const auto band = detail::band_of_times(air, false)) {
    f.answer("bare", "oxygen lasts, by the surface alone", *band);
    f.detail("half_bare", "plan for half of it", map_rising(*band, half));
  }
  const bool battery = c.in.power_cut.battery.has_value();
  if (const auto band = battery ? detail::band_of_times(air, true) : std::nullopt) {
    f.answer("aided", "oxygen lasts, with battery air", *band);
    f.detail("half_aided", "plan for half of that", map_rising(*band, half));
  }
  const mass_concentration lowest = c.in.power_cut.lowest;
  f.detail("from", "from", air.start());
  f.limit("lowest", "down to", lowest);
  if (c.in.power_cut.help_within) {
    const duration help = *c.in.power_cut.help_within;
    f.detail("help", "until help", help);
    const auto left = [&](const detail::breathing_case& as) {
      return mass_concentration{air.lowest_until(as, help * 2.0) - lowest};
    };
    const mass_concentration worst = left(detail::worst_air), central = left(detail::middle_air),
                             best = left(detail::best_air);
    // From above saturation a surface lets oxygen out, and the order is another.
    const estimate<mass_concentration> margin{std::min({worst, central, best}), central,
                                              std::max({worst, central, best}), detail::air_reason};
    f.margin("left", "above that in twice the time until help", margin, mass_concentration{});
    const auto time = air.lasts(detail::middle_air, battery);
    if (!(central.value() > 0.0) && time) {
      f.happens = "The oxygen is down to " + said(s, lowest) + " after " + said(s, *time) +
                  (*time < help ? ", before anybody comes." : ", and only half of that is safe to count on.");
    }
  } else {
    f.next("say within how many hours somebody is there when the power fails");
  }
  if (!air.lasts(detail::middle_air, battery)) {
    f.note.insert(0, "With the air that is left the oxygen stays above its limit. ");
    const bool emptied = battery && c.in.power_cut.battery->runs;
    if (const auto level = life::steady_oxygen(air.course(detail::middle_air, battery && !emptied).tank)) {
      f.detail("settles", "where it settles in the end", *level);
    }
  }
  f.detail("animals_use", "the animals use in an hour", mass{animals * hours(1.0)});
  f.detail("filter_uses", "the filter uses in an hour", mass{filter * hours(1.0)});
  if (lowest < air.saturation()) {
    const life::oxygen_balance tank = air.course(detail::middle_air, false).tank;
    f.detail("kla", "air that would keep it there, KLa",
             rate{tank.use.get() / tank.net.get() / (air.saturation() - lowest)});
  }
  f.sources = {water::garcia_gordon_1992, life::cole_caraco_1998, life::asce_2006};
  if (!c.state.display_surface) f.next("give the surface of the display: without it no air is counted");
  f.next("try it by day: pumps off, somebody watching, oxygen measured every ten minutes for an hour");
}

}  // namespace tankwright::decisions
