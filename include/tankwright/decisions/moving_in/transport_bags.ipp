// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/transport_bags.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// Least oxygen in the water of a bag: common practice, no source.
inline constexpr mass_concentration bag_oxygen = milligrams_per_litre(5.0);
/// Free ammonia from which an opened bag is no water to wait in: as for the tank, for a mean of four days.
inline constexpr mass_concentration bag_free_ammonia = micrograms_per_litre(35.0);

[[nodiscard]] inline temperature bag_temperature(const plan::transport_bag& b, duration time) {
  const double start = in_kelvins(*b.filled_at);
  if (!b.surroundings) return *b.filled_at;
  const double end = in_kelvins(*b.surroundings);
  return kelvins(end + (start - end) * std::exp(-time / *b.time_constant));
}

inline void show_bag(finding& f, const plan::transport_bag& b, const std::string& name) {
  const life::closed_bag bag{.water = *b.water,
                             .gas = *b.gas,
                             .oxygen = *b.oxygen,
                             .uses = milligrams_per_hour(*b.oxygen_use * in_kilograms(*b.animals)),
                             .salinity = *b.practical_salinity,
                             .temperature = *b.filled_at,
                             .ph = *b.ph,
                             .alkalinity = *b.alkalinity};
  const duration closed = *b.closed_for;
  const double tank_ph = *b.ph;
  const auto after = life::bag_after(bag, closed, tank_ph);
  f.limit("closed", "is closed for", closed, name);
  if (const auto lasts = life::oxygen_lasts(bag, bag_oxygen)) {
    f.answer("lasts", "its oxygen lasts", *lasts, name);
    f.margin("oxygen", "longer than that by", *lasts - closed, duration{}, name);
  }
  f.detail("oxygen_end", "oxygen when it is opened", after.oxygen, name);
  f.detail("carbon_dioxide", "carbon dioxide then", after.carbon_dioxide, name);
  f.detail("ph", "its pH then", after.ph, name);
  f.detail("ammonia", "its ammonia then, as nitrogen",
           map_rising(after.ammonia, [](water::total_ammonia t) { return t.as_nitrogen(); }), name);
  f.detail("free", "free ammonia while it is closed, as NH3", after.free_closed, name);
  f.answer("freed", "free ammonia once it is opened to air", after.free_opened, name);
  if (after.free_opened.central > bag_free_ammonia)
    f.note = "Do not drip tank water into an opened bag: move them over. ";
  const temperature end = bag_temperature(b, closed);
  f.detail("temperature", "its temperature then", end, name);
  // The extreme is reached at the end, for it drifts one way.
  if (b.lowest) {
    f.margin("warm", "warmer than the lowest that they stand by",
             kelvin_steps(std::fmin(in_kelvins(end), in_kelvins(*b.filled_at)) - in_kelvins(*b.lowest)),
             temperature_difference{}, name);
  }
  if (b.highest) {
    f.margin("cool", "cooler than the highest that they stand by",
             kelvin_steps(in_kelvins(*b.highest) - std::fmax(in_kelvins(end), in_kelvins(*b.filled_at))),
             temperature_difference{}, name);
  }
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_transport_bags(const situation& s, answers& out) {
  if (!s.plan().life || s.plan().life->bag.empty()) return;
  finding& f = out.ask(transport_bags);
  const auto& all = s.plan().life->bag;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const std::string name = !all[i].label.empty() ? all[i].label
                             : all.size() > 1      ? "bag " + std::to_string(i + 1)
                                                   : "bag";
    detail::show_bag(f, all[i], name);
  }
  f.note +=
      "Taken as stirred: a bag that lies still has least oxygen where they rest. Carbon dioxide stuns before oxygen "
      "runs out; open it at once where they roll over.";
  if (f.verdict == verdict::does_not_hold) {
    const number& worst = *f.margin();
    f.happens = worst.id == "oxygen" ? "The oxygen of " + worst.place + " is gone before it is opened."
                : worst.id == "warm" ? worst.place + " gets too cold on the way."
                                     : worst.place + " gets too warm on the way.";
  }
  f.source(water::lueker_2000).source(water::weiss_1974);
}

}  // namespace tankwright::decisions
