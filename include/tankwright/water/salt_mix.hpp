// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much salt? Dry mix for a volume of new water poured in, or for a volume of finished seawater; and what a trial
/// batch says about the mix.
///
/// A dry mix is not all salt: part of its weight is water of hydration and moisture. Its *yield* is the anhydrous salt
/// in a kilogram of it. Salt is sold by weight and salinity is by weight, so everything here is a balance of masses;
/// volumes follow from the densities.
#pragma once

#include <algorithm>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr limits mix_mass_limits{"mix", "kg", positive};
inline constexpr limits mix_water_limits{"fresh water", "kg", positive};
inline constexpr limits mix_yield_limits{"mix yield", "", above_zero_to_one};

/// What a dry mix yields when nobody has measured it.
inline constexpr estimate<proportion> typical_mix_yield{
    fraction(0.85), fraction(0.92), fraction(1.0),
    "the yield of this mix was not measured; dry mixes hold 85 to 100 % salt (common practice)"};

inline constexpr caution mixing_caution{
    "Add salt to water, not water to salt, in a vessel without animals, with strong flow and at room temperature. Hold "
    "back a tenth of the mix, let the rest dissolve until the water is clear, measure, then finish. Aerate and heat, "
    "usually for a day, and measure again before it meets any animal. Dry mix makes dust and can warm the water: wear "
    "goggles and gloves."};

/// Fresh water that is there and is to become seawater.
struct new_water {
  required<tankwright::volume> volume;  ///< of the fresh water
  required<practical_salinity> target;
  required<tankwright::temperature> temperature;  ///< of the water, then and after
  required<proportion> mix_yield;
};

/// Seawater that is wanted.
struct finished_water {
  required<tankwright::volume> volume;  ///< of the seawater
  required<practical_salinity> target;
  required<tankwright::temperature> temperature;
  required<proportion> mix_yield;
};

/// What to weigh out, what to pour it into, and what comes of it.
struct salt_batch {
  mass mix;            ///< to weigh out
  volume fresh_water;  ///< to pour it into
  mass fresh_water_mass;
  volume finished;  ///< what it makes
  mass finished_mass;
  mass anhydrous_salt;  ///< what the mix brings
  tankwright::caution caution = mixing_caution;
};

namespace detail {

/// A batch from the mass of finished water and from the mass of mix in it.
[[nodiscard]] inline salt_batch batch_of(mass finished, mass mix, practical_salinity target, temperature t,
                                         range_policy policy) {
  const mass water = finished - mix;
  const double salt = in_grams_per_kilogram(absolute_from_practical(target, policy)) * 1e-3;
  return {mix,      water / density(practical_salinity{0.0}, t, range_policy::extrapolate),
          water,    finished / density(target, t, policy),
          finished, salt * finished};
}

/// Salt in the mix over salt in the water, both as parts of mass. Refuses a mix too poor to reach the target.
inline void check_mix(std::string_view function, volume v, practical_salinity target, temperature t, proportion yield,
                      range_policy policy) {
  core::check(function, water_volume_limits, in_litres(v), policy);
  core::check(function, renamed(practical_salinity_limits, "target"), target.value(), policy);
  refuse_gravity(function, "target", target, policy);
  core::check(function, gibbs_temperature_limits, in_celsius(t), policy);
  check_liquid(function, target.value(), in_celsius(t), policy);
  core::check(function, mix_yield_limits, yield.value(), policy);
  if (!(yield.value() > u_ps<double> * target.value() * 1e-3)) {
    core::fail<invalid_input>(function, mix_yield_limits.argument, yield.value(), "",
                              "is too low: even the undiluted mix would not reach practical salinity " +
                                  core::number_text(target.value()) +
                                  "; a yield is a part of one, 0.87 and not 0.0087");
  }
}

}  // namespace detail

/// Dry mix for a volume of fresh water that is poured in: it comes to more than that volume in the end.
///
///   m = M_w S / (1000 y - S),   M_w = rho_w V the mass of the fresh water, S absolute salinity in g/kg, y the yield
///
/// @param in     fresh water volume > 0; target, practical salinity 0 to 42; temperature, from freezing to 80 degC;
///               mix yield, above 0 to 1
/// @param policy `extrapolate` to go past the published ranges
/// @return       mass of mix; volumes and masses of the water before and after; a caution
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     the balance is exact; the yield decides: 1 % of yield is 1 % of mix
/// @source       conservation of mass; density by TEOS-10
[[nodiscard]] inline salt_batch salt_for_new_water(const new_water& in, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::salt_for_new_water";
  detail::check_mix(here, in.volume, in.target, in.temperature, in.mix_yield, policy);
  const mass water = density(practical_salinity{0.0}, in.temperature, range_policy::extrapolate) * in.volume.get();
  const double salt = in_grams_per_kilogram(absolute_from_practical(in.target, policy));
  const mass mix = salt / (1000.0 * in.mix_yield->value() - salt) * water;
  return detail::batch_of(water + mix, mix, in.target, in.temperature, policy);
}

/// Dry mix, and fresh water to pour it into, for a volume of finished seawater.
///
///   m = rho V S / (1000 y),   fresh water = rho V - m, S absolute salinity in g/kg, y the yield
///
/// @param in     seawater volume > 0; target, practical salinity 0 to 42; temperature, from freezing to 80 degC;
///               mix yield, above 0 to 1
/// @param policy `extrapolate` to go past the published ranges
/// @return       mass of mix; volumes and masses of the water before and after; a caution
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     the balance is exact; the yield decides: 1 % of yield is 1 % of mix
/// @source       conservation of mass; density by TEOS-10
[[nodiscard]] inline salt_batch salt_for_finished_volume(const finished_water& in,
                                                         range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::salt_for_finished_volume";
  detail::check_mix(here, in.volume, in.target, in.temperature, in.mix_yield, policy);
  const mass finished = density(in.target, in.temperature, policy) * in.volume.get();
  const double salt = in_grams_per_kilogram(absolute_from_practical(in.target, policy)) * 1e-3;
  return detail::batch_of(finished, salt / in.mix_yield->value() * finished, in.target, in.temperature, policy);
}

/// Fresh water that is there, and a mix that nobody has measured.
struct new_water_unmeasured {
  required<tankwright::volume> volume;  ///< of the fresh water
  required<practical_salinity> target;
  required<tankwright::temperature> temperature;
  estimate<proportion> mix_yield = typical_mix_yield;
};

/// What to buy, and what to start with, where the yield is known only within a band.
struct unmeasured_batch {
  estimate<mass> mix;  ///< its low end needs the least: start with that, measure, and go on
  volume fresh_water;  ///< to pour it into
  mass fresh_water_mass;
  estimate<volume> finished;
  estimate<mass> finished_mass;
  tankwright::caution caution = mixing_caution;
};

/// Dry mix for a volume of fresh water when the yield is known only within a band: how much to buy, and how much to
/// start with.
///
///   `salt_for_new_water` at the high, central and low yield
///
/// @param in     as for `salt_for_new_water`, with a band for the yield
/// @param policy `extrapolate` to go past the published ranges
/// @return       mass of mix, the volumes and masses of the water before and after, with their bands; a caution
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     the band of the yield
/// @source       conservation of mass; density by TEOS-10
[[nodiscard]] inline unmeasured_batch salt_for_new_water_unmeasured(const new_water_unmeasured& in,
                                                                    range_policy policy = range_policy::published) {
  const auto made_at = [&](proportion yield) {
    return salt_for_new_water(
        {.volume = in.volume, .target = in.target, .temperature = in.temperature, .mix_yield = yield}, policy);
  };
  const salt_batch rich = made_at(in.mix_yield.high), likely = made_at(in.mix_yield.central),
                   poor = made_at(in.mix_yield.low);
  const auto band = [&](auto part) { return estimate{part(rich), part(likely), part(poor), in.mix_yield.reason}; };
  return {band([](const salt_batch& b) { return b.mix; }), likely.fresh_water, likely.fresh_water_mass,
          band([](const salt_batch& b) { return b.finished; }),
          band([](const salt_batch& b) { return b.finished_mass; })};
}

/// A small batch, weighed and measured: what tells the yield of a mix.
struct trial_batch {
  required<mass> mix;                     ///< weighed in
  required<mass> fresh_water;             ///< weighed in; a kilogram is a litre within half a percent
  required<practical_salinity> reached;   ///< measured when clear, with the instrument that will judge the tank
  practical_salinity reading_error{1.0};  ///< how far the reading may be off; 1.0 is a good hydrometer or refractometer
};

/// The yield of a mix from a trial batch.
///
///   y = S (M_w + m) / (1000 m),   S the absolute salinity that m of mix gave M_w of water
///
/// @param trial  mix > 0; fresh water > 0; salinity reached, 0 to 42; error of the reading >= 0
/// @param policy `extrapolate` to go past practical salinity 42
/// @return       yield with the band that the reading leaves it; never above one, for a mix is not more than all salt
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     that of the reading: 1 in 35 is 3 %
/// @source       conservation of mass
[[nodiscard]] inline estimate<proportion> measured_yield(const trial_batch& trial,
                                                         range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::measured_yield";
  core::check(here, mix_mass_limits, in_kilograms(trial.mix), policy);
  core::check(here, mix_water_limits, in_kilograms(trial.fresh_water), policy);
  core::check(here, practical_salinity_limits, trial.reached->value(), policy);
  detail::refuse_gravity(here, "salinity reached", trial.reached, policy);
  core::check(here, {"error of the reading", "", not_negative}, trial.reading_error.value(), policy);
  const double per_salinity = detail::u_ps<double> * 1e-3 *
                              (in_kilograms(trial.fresh_water) + in_kilograms(trial.mix)) / in_kilograms(trial.mix);
  const double yield = per_salinity * trial.reached->value();
  if (!(yield > 0.0 && yield <= 1.0 + 1e-9)) {  // a pure salt may round a little past one
    core::fail<invalid_input>(here, "salinity reached", trial.reached->value(), "",
                              "would make the yield of the mix " + core::number_text(yield) +
                                  "; a yield lies above 0 and at most at 1: check the scale, the reading and its "
                                  "temperature, and that the water was fresh");
  }
  const double band = per_salinity * trial.reading_error.value();
  return {fraction(std::max(yield - band, 0.0)), fraction(std::min(yield, 1.0)), fraction(std::min(yield + band, 1.0)),
          "the reading of the trial batch, within its error"};
}

}  // namespace tankwright::water
