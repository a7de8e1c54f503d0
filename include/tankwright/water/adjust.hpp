// SPDX-License-Identifier: BSL-1.0
/// @file
/// How to correct a salinity? Dry mix to raise it, fresh water to lower it, or part of the water replaced by other
/// water.
#pragma once

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/salinity.hpp>
#include <tankwright/water/salt_mix.hpp>

namespace tankwright::water {

inline constexpr caution adjusting_caution{
    "Correct slowly where animals live: about 1 of salinity a day upwards is common practice, downwards a few a day "
    "for fish and not at all in a hurry for invertebrates. Dissolve dry mix in water taken from the system, never in "
    "the tank. Measure after each step, and before the first one check the instrument."};

/// Existing water, and where its salinity is to go.
struct salinity_step {
  required<tankwright::volume> volume;  ///< of the water that is there, without rock and sand
  required<practical_salinity> from;
  required<practical_salinity> target;
  required<tankwright::temperature> temperature;
};

/// The same, with the mix that raises it.
struct salinity_rise {
  required<tankwright::volume> volume;
  required<practical_salinity> from;
  required<practical_salinity> target;
  required<tankwright::temperature> temperature;
  required<proportion> mix_yield;
};

/// The same, with the water that replaces part of it.
struct salinity_replacement {
  required<tankwright::volume> volume;
  required<practical_salinity> from;
  required<practical_salinity> target;
  required<practical_salinity> replacement;  ///< of the water that comes in; 0 for fresh water
  required<tankwright::temperature> temperature;
};

struct mix_to_add {
  mass mix;
  volume finished;  ///< of all the water afterwards
  tankwright::caution caution = adjusting_caution;
};

struct water_to_add {
  volume fresh_water;
  mass fresh_water_mass;
  volume finished;  ///< of all the water afterwards
  tankwright::caution caution = adjusting_caution;
};

struct water_to_replace {
  volume taken_out;  ///< of the water that is there
  volume put_in;     ///< of the replacement; differs a little, so that the volume stays
  proportion part;   ///< of the mass that is there
  tankwright::caution caution = adjusting_caution;
};

namespace detail {

/// What all adjustments need: a volume of water, two salinities and a temperature that can be.
template <class Step>
void check_step(std::string_view function, const Step& step, range_policy policy) {
  core::check(function, water_volume_limits, in_litres(step.volume), policy);
  core::check(function, renamed(practical_salinity_limits, "present salinity"), step.from->value(), policy);
  core::check(function, renamed(practical_salinity_limits, "target"), step.target->value(), policy);
  refuse_gravity(function, "present salinity", step.from, policy);
  refuse_gravity(function, "target", step.target, policy);
  core::check(function, gibbs_temperature_limits, in_celsius(step.temperature), policy);
  const double fresher = step.from->value() < step.target->value() ? step.from->value() : step.target->value();
  check_liquid(function, fresher, in_celsius(step.temperature), policy);
}

}  // namespace detail

/// Dry mix to raise the salinity of water that is there.
///
///   m = M (S2 - S1) / (1000 y - S2),   M the mass of the water, S absolute salinity in g/kg, y the yield
///
/// @param rise   volume > 0; from and target, practical salinity 0 to 42, target not below from; temperature, from
///               freezing to 80 degC; mix yield, above 0 to 1
/// @param policy `extrapolate` to go past the published ranges
/// @return       mass of mix, the volume afterwards and a caution
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     the balance is exact; the volume of the water, the readings and the yield decide
/// @source       conservation of mass; density by TEOS-10
[[nodiscard]] inline mix_to_add raise_salinity(const salinity_rise& rise,
                                               range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::raise_salinity";
  detail::check_step(here, rise, policy);
  detail::check_mix(here, rise.volume, rise.target, rise.temperature, rise.mix_yield, policy);
  if (rise.target->value() < rise.from->value()) {
    core::fail<invalid_input>(here, "target", rise.target->value(), "",
                              "is below the present salinity, " + core::number_text(rise.from->value()) +
                                  "; use lower_salinity or replace_to_reach");
  }
  const mass water = density(rise.from, rise.temperature, policy) * rise.volume.get();
  const double now = detail::u_ps<double> * rise.from->value();
  const double then = detail::u_ps<double> * rise.target->value();
  const mass mix = (then - now) / (1000.0 * rise.mix_yield->value() - then) * water;
  return {mix, (water + mix) / density(rise.target, rise.temperature, policy)};
}

/// Fresh water to add to water that is there, to lower its salinity.
///
///   m_w = M (S1 / S2 - 1),   M the mass of the water
///
/// @param step   volume > 0; from and target, practical salinity 0 to 42, target above 0 and not above from;
///               temperature, from freezing to 80 degC
/// @param policy `extrapolate` to go past the published ranges
/// @return       fresh water, the volume afterwards and a caution
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     the balance is exact; the volume of the water and the readings decide
/// @source       conservation of mass; density by TEOS-10
[[nodiscard]] inline water_to_add lower_salinity(const salinity_step& step,
                                                 range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::lower_salinity";
  detail::check_step(here, step, policy);
  if (step.target->value() > step.from->value()) {
    core::fail<invalid_input>(here, "target", step.target->value(), "",
                              "is above the present salinity, " + core::number_text(step.from->value()) +
                                  "; use raise_salinity or replace_to_reach");
  }
  if (!(step.target->value() >= core::tiny)) {
    core::fail<invalid_input>(here, "target", step.target->value(), "",
                              "cannot be reached by adding water to salt water; expected more than 0");
  }
  const mass water = density(step.from, step.temperature, policy) * step.volume.get();
  const mass added = (step.from->value() / step.target->value() - 1.0) * water;
  return {added / density(practical_salinity{0.0}, step.temperature, range_policy::extrapolate), added,
          (water + added) / density(step.target, step.temperature, policy)};
}

/// Water to take out and to put in, so that the salinity changes and the volume does not. Fresh water lowers it,
/// saltier water raises it.
///
///   m_in = rho2 V (S2 - S1) / (S_in - S1),   m_out = rho1 V + m_in - rho2 V
///
/// @param step   volume > 0; from, target and replacement, practical salinity 0 to 42, target between the other two;
///               temperature, from freezing to 80 degC
/// @param policy `extrapolate` to go past the published ranges
/// @return       volumes out and in, the part of the water replaced, and a caution
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     the balance is exact; the volume of the water and the readings decide
/// @source       conservation of mass; density by TEOS-10
[[nodiscard]] inline water_to_replace replace_to_reach(const salinity_replacement& step,
                                                       range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::replace_to_reach";
  detail::check_step(here, step, policy);
  const double now = step.from->value(), then = step.target->value(), in = step.replacement->value();
  core::check(here, detail::renamed(practical_salinity_limits, "salinity of the replacement"), in, policy);
  const auto between = [](double x, double a, double b) { return (a <= x && x <= b) || (b <= x && x <= a); };
  if (!between(then, now, in) || (now == in && now != then)) {
    core::fail<invalid_input>(here, "target", then, "",
                              "does not lie between the present salinity, " + core::number_text(now) +
                                  ", and that of the replacement, " + core::number_text(in));
  }
  const mass_density before = density(step.from, step.temperature, policy);
  const mass_density replacement = density(step.replacement, step.temperature, range_policy::extrapolate);
  const mass present = before * step.volume.get();
  const mass finished = density(step.target, step.temperature, policy) * step.volume.get();
  const double share = now == then ? 0.0 : (then - now) / (in - now);
  const mass put_in = share * finished;
  const mass taken_out = present + put_in - finished;
  return {taken_out / before, put_in / replacement, fraction(taken_out / present)};
}

}  // namespace tankwright::water
