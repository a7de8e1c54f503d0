// SPDX-License-Identifier: BSL-1.0
/// @file
/// How fast do the bacteria of the filter grow, and how many of them does a working filter carry? Monod growth of the
/// ammonia and the nitrite oxidisers, and the bacteria that come along with moved rock.
#pragma once

#include <cmath>
#include <string_view>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/detail/nitrogen_cycle.hpp>
#include <tankwright/life/nitrogen.hpp>

namespace tankwright::life {

inline constexpr citation metcalf_eddy_2014{"Tchobanoglous G., Stensel H.D., Tsuchihashi R., Burton F.", 2014,
                                            "Wastewater Engineering: Treatment and Resource Recovery (Metcalf & Eddy)",
                                            "5th ed., table 8-14, p. 755", standing::secondary};

/// One group of bacteria: how it grows and dies. Rates at 20 degC.
struct nitrifier {
  required<rate> growth;                       ///< largest growth rate mu
  required<mass_concentration> half_nitrogen;  ///< nitrogen at half of that rate, K
  required<double> yield;                      ///< [1] dry organic mass grown for a mass of nitrogen oxidised, Y
  required<rate> decay;                        ///< b
  required<mass_concentration> half_oxygen;    ///< oxygen at half of the largest rate, K_O
  required<double> growth_per_kelvin;          ///< [1] theta of the growth
  required<double> decay_per_kelvin;           ///< [1] theta of the decay
};

/// Fresh-water activated sludge: the first were read in a reproduction; of the second, which grow on nitrite, only
/// 1.029, the others are from memory. In the sea start-up takes much longer (Nijhof and Bovendeur 1990): use `slowed`
/// to see what that does.
inline constexpr nitrifier ammonia_oxidisers_2014{.growth = per_day(0.90),
                                                  .half_nitrogen = milligrams_per_litre(0.50),
                                                  .yield = 0.15,
                                                  .decay = per_day(0.17),
                                                  .half_oxygen = milligrams_per_litre(0.50),
                                                  .growth_per_kelvin = 1.072,
                                                  .decay_per_kelvin = 1.029};
inline constexpr nitrifier nitrite_oxidisers_2014{.growth = per_day(1.00),
                                                  .half_nitrogen = milligrams_per_litre(0.20),
                                                  .yield = 0.05,
                                                  .decay = per_day(0.17),
                                                  .half_oxygen = milligrams_per_litre(0.90),
                                                  .growth_per_kelvin = 1.063,
                                                  .decay_per_kelvin = 1.029};

/// Where the growth rates are used.
inline constexpr limits nitrifier_temperature_limits{"temperature", "degC", possible_water, celsius_range(5.0, 35.0),
                                                     "this library, around the 20 degC of the rates"};
inline constexpr limits nitrifier_oxygen_limits{"oxygen", "mg/L", possible_level};

namespace detail {

inline void check_nitrifier(std::string_view label, std::string_view here, const nitrifier& group) {
  const auto require = [&](const limits& limit, double value) { core::check_element(here, label, limit, value); };
  require({"growth", "1/d", {1e-6, 1e3}}, in_per_day(group.growth));
  require({"half-saturation of nitrogen", "mg/L", some_level}, in_milligrams_per_litre(group.half_nitrogen));
  require({"yield", "", {1e-6, 10.0}}, group.yield);
  require({"decay", "1/d", {0.0, 1e3}}, in_per_day(group.decay));
  require({"half-saturation of oxygen", "mg/L", possible_level}, in_milligrams_per_litre(group.half_oxygen));
  require({"growth per kelvin", "", {0.5, 2.0}}, group.growth_per_kelvin);
  require({"decay per kelvin", "", {0.5, 2.0}}, group.decay_per_kelvin);
}

/// The group at a temperature [degC] and an oxygen level [mg/L], per day.
template <class T>
[[nodiscard]] growth<T> growth_at(const nitrifier& group, T t, T oxygen) noexcept {
  using std::pow;
  const auto warmed = [&](double at_20_celsius, double theta) { return T(at_20_celsius) * pow(T(theta), t - T(20)); };
  const T half_oxygen = T(in_milligrams_per_litre(group.half_oxygen));
  const T breathing = oxygen > T(0) ? oxygen / (half_oxygen + oxygen) : T(0);
  return {.mu = warmed(in_per_day(group.growth), group.growth_per_kelvin) * breathing,
          .half = T(in_milligrams_per_litre(group.half_nitrogen)),
          .yield = T(group.yield.get()),
          .decay = warmed(in_per_day(group.decay), group.decay_per_kelvin)};
}

}  // namespace detail

/// The same bacteria growing at a share of the rate: the sea, a low pH, a guess to try.
///
///   mu = share mu0
///
/// @param group bacteria
/// @param share of the growth rate, more than 0 to 1
/// @return      bacteria
/// @throws      invalid_input
/// @accuracy    exact
/// @source      definition
[[nodiscard]] inline nitrifier slowed(nitrifier group, proportion share) {
  detail::check_nitrifier("bacteria", "tankwright::life::slowed", group);
  core::check("tankwright::life::slowed", {"share of the growth rate", "", {1e-6, 1.0}}, share.value());
  group.growth = group.growth.get() * share.value();
  return group;
}

/// What bacteria live in.
struct growth_conditions {
  required<mass_concentration> nitrogen;  ///< of the form they oxidise, as nitrogen
  required<mass_concentration> oxygen;
  required<tankwright::temperature> temperature;
};

/// Net growth rate of a group of bacteria: growth less decay. Its inverse is the time they must stay in the system.
///
///   mu theta_mu^(T-20) S/(K + S) O/(K_O + O) - b theta_b^(T-20)
///
/// @param group  bacteria
/// @param in     nitrogen >= 0, oxygen >= 0, temperature 5 to 35 degC
/// @param policy `extrapolate` to go past these temperatures
/// @return       rate [1/s]; negative where they starve
/// @throws       invalid_input, out_of_range
/// @accuracy     the constants vary by half between sludges
/// @source       Metcalf & Eddy 2014
[[nodiscard]] inline rate net_growth(const nitrifier& group, const growth_conditions& in,
                                     range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::life::net_growth";
  detail::check_nitrifier("bacteria", here, group);
  core::check(here, {"nitrogen", "mg/L", possible_level}, in_milligrams_per_litre(in.nitrogen));
  core::check(here, nitrifier_oxygen_limits, in_milligrams_per_litre(in.oxygen));
  core::check(here, nitrifier_temperature_limits, in_celsius(in.temperature), policy);
  const auto g = detail::growth_at(group, in_celsius(in.temperature), in_milligrams_per_litre(in.oxygen));
  const double s = in_milligrams_per_litre(in.nitrogen);
  return per_day(g.mu * s / (g.half + s) - g.decay);
}

/// Living bacteria, as dry organic mass in the whole system (rock, sand, media and water together).
struct bacteria {
  mass ammonia_oxidisers = {};
  mass nitrite_oxidisers = {};
};

/// A filter that has kept up with a load for weeks, or the share of it that moves: rock, sand or media.
struct working_filter {
  required<nitrogen_load> load;  ///< the nitrogen it has oxidised day by day
  required<tankwright::temperature> temperature;
  proportion share_moved = fraction(1.0);
  nitrifier ammonia_oxidisers = ammonia_oxidisers_2014;
  nitrifier nitrite_oxidisers = nitrite_oxidisers_2014;
};

/// The bacteria on a working filter, or on the share of it that is moved wet and unharmed.
///
///   growth equals decay, so X = Y P / b
///
/// @param filter load >= 0, temperature 5 to 35 degC, share moved 0 to 1
/// @param policy `extrapolate` to go past these temperatures
/// @return       dry organic mass of each group [kg]
/// @throws       invalid_input, out_of_range
/// @accuracy     exact for the equations; the mass itself cannot be checked at home, only its effect
/// @source       steady state of the Monod equations; Metcalf & Eddy 2014
[[nodiscard]] inline bacteria bacteria_on(const working_filter& filter, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::life::bacteria_on";
  core::check(here, nitrogen_load_limits, in_grams_per_day(filter.load->as_nitrogen()));
  core::check(here, nitrifier_temperature_limits, in_celsius(filter.temperature), policy);
  core::check(here, {"share moved", "", zero_to_one}, filter.share_moved.value());
  const auto grown = [&](std::string_view label, const nitrifier& group) {
    detail::check_nitrifier(label, here, group);
    core::check_element(here, label, {"decay", "1/d", {1e-6, 1e3}}, in_per_day(group.decay));
    const auto g = detail::growth_at(group, in_celsius(filter.temperature), 1.0);
    return filter.load->as_nitrogen() * (g.yield * filter.share_moved.value()) / per_day(g.decay);
  };
  return {grown("ammonia oxidisers", filter.ammonia_oxidisers), grown("nitrite oxidisers", filter.nitrite_oxidisers)};
}

}  // namespace tankwright::life
