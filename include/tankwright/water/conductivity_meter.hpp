// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does the meter show, and what does the water conduct? Readings that a meter has referred to 25 degC.
///
/// Three kinds of number are called conductivity, and each has its own type: what the water conducts at its own
/// temperature (`electrical_conductivity`); the same referred to 25 degC along the true curve of seawater
/// (`conductivity_at_25`); and what a meter shows that takes off so many percent per kelvin (`compensated_reading`).
#pragma once

#include <tankwright/core/required.hpp>
#include <tankwright/water/conductivity.hpp>

namespace tankwright::water {

/// Percent per kelvin that a meter can be set to. Much more would make the factor zero in cold water.
inline constexpr limits compensation_limits{"temperature coefficient", "%/K", {0.0, 3.0}};
/// Less than this, in percent per kelvin, no meter is set to, but for none at all: it is a part per kelvin taken for
/// percent.
inline constexpr double least_compensation = 0.1;

/// Conductivity referred to 25 degC along the curve of seawater, as a meter in its seawater mode does. Not for a meter
/// with a linear compensation: that is a `compensated_reading`.
class conductivity_at_25 {
 public:
  constexpr explicit conductivity_at_25(electrical_conductivity value) noexcept : value_{value} {}
  [[nodiscard]] constexpr electrical_conductivity value() const noexcept { return value_; }

 private:
  electrical_conductivity value_;
};

/// What a meter shows that refers its reading to another temperature by a fixed part per kelvin.
struct compensated_reading {
  required<electrical_conductivity> shown;
  required<temperature> water;                    ///< the water's own temperature
  required<temperature_coefficient> coefficient;  ///< as set in the meter: often `percent_per_kelvin(2.0)`
  temperature reference = celsius(25.0);          ///< to which the meter refers
};

namespace detail {

/// 1 + a (t - t_ref): what a linear compensation divides by.
[[nodiscard]] inline double linear_factor(std::string_view function, temperature t, temperature reference,
                                          temperature_coefficient a, range_policy policy) {
  core::check(function, pss78_temperature_limits, in_celsius(t), policy);
  core::check(function, {"reference temperature", "degC", {0.0, 25.0}}, in_celsius(reference));
  const double percent = in_percent_per_kelvin(a);
  core::check(function, compensation_limits, percent);
  if (percent > 0.0 && percent < least_compensation) {
    core::fail<invalid_input>(function, compensation_limits.argument, percent, compensation_limits.unit,
                              "is next to none; meters are set to about 2 %/K. A coefficient of 0.02 is " +
                                  std::string{"percent_per_kelvin(2.0)"});
  }
  return 1.0 + a.value() * (in_celsius(t) - in_celsius(reference));
}

}  // namespace detail

/// Conductivity referred to 25 degC along the curve of seawater.
///
///   C25 = C rt(25 degC) / rt(t)
///
/// @param c      conductivity at temperature `t` [S/m]
/// @param t      temperature [ITS-90; converted to IPTS-68 inside], -2 to 35 degC
/// @param policy `extrapolate` to go past this range
/// @return       conductivity at 25 degC
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     exact at salinity 35; the salinity read from it is within 0.012 at salinity 32 to 38 and 18 to 30
///               degC, within 0.031 at 30 to 40 and 15 to 35 degC
/// @source       Perkin and Lewis 1980; Fofonoff and Millard 1983, eq. 3
[[nodiscard]] inline conductivity_at_25 referred_to_25(electrical_conductivity c, temperature t,
                                                       range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::referred_to_25";
  core::check(here, conductivity_limits, in_millisiemens_per_centimetre(c), policy);
  core::check(here, pss78_temperature_limits, in_celsius(t), policy);
  return conductivity_at_25{c * (detail::pss78_rt(core::t68_from_t90(25.0)) / detail::pss78_rt(detail::t68_of(t)))};
}

/// What the water conducts at its own temperature, from its conductivity referred to 25 degC along the curve of
/// seawater.
///
///   C = C25 rt(t) / rt(25 degC)
///
/// @param c      conductivity at 25 degC [S/m]
/// @param t      temperature of the water [ITS-90; converted to IPTS-68 inside], -2 to 35 degC
/// @param policy `extrapolate` to go past this range
/// @return       conductivity at temperature `t` [S/m]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     exact at salinity 35
/// @source       Perkin and Lewis 1980; Fofonoff and Millard 1983, eq. 3
[[nodiscard]] inline electrical_conductivity raw_conductivity(conductivity_at_25 c, temperature t,
                                                              range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::raw_conductivity";
  core::check(here, conductivity_limits, in_millisiemens_per_centimetre(c.value()), policy);
  core::check(here, pss78_temperature_limits, in_celsius(t), policy);
  return c.value() * (detail::pss78_rt(detail::t68_of(t)) / detail::pss78_rt(core::t68_from_t90(25.0)));
}

/// What a meter with linear compensation to 25 degC shows.
///
///   C_shown = C / (1 + a (t - 25 degC))
///
/// @param c           conductivity at temperature `t` [S/m]
/// @param t           temperature of the water [ITS-90], -2 to 35 degC
/// @param coefficient a as set in the meter, 0 or 0.1 to 3 %/K
/// @param policy      `extrapolate` to go past this range of temperatures
/// @return            the reading, with what is needed to undo the compensation
/// @throws            invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy          exact: it does what the meter does
/// @source            the definition of linear compensation (as in ISO 7888:1985, from memory)
[[nodiscard]] inline compensated_reading linearly_compensated(electrical_conductivity c, temperature t,
                                                              temperature_coefficient coefficient,
                                                              range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::linearly_compensated";
  core::check(here, conductivity_limits, in_millisiemens_per_centimetre(c), policy);
  const double factor = detail::linear_factor(here, t, celsius(25.0), coefficient, policy);
  return {.shown = c / factor, .water = t, .coefficient = coefficient};
}

/// Practical salinity from a conductivity that was referred to 25 degC along the curve of seawater.
///
///   S = S(C25, t = 25 degC)
///
/// @param c      conductivity at 25 degC [S/m]; the salinity must come out at 0 to 42
/// @param policy `extrapolate` to go past this range
/// @return       practical salinity
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     as from a raw conductivity when the water was at 25 degC; else see `referred_to_25`
/// @source       Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-5
[[nodiscard]] inline practical_salinity salinity_from_conductivity(conductivity_at_25 c,
                                                                   range_policy policy = range_policy::published) {
  return salinity_from_conductivity(c.value(), celsius(25.0), policy);
}

/// What the water conducts at its own temperature, from a reading with linear compensation.
///
///   C = C_shown (1 + a (t - t_ref))
///
/// @param reading conductivity shown [S/m]; temperature of the water, -2 to 35 degC; coefficient a, 0 or 0.1 to 3 %/K;
///                the temperature to which the meter refers, 0 to 25 degC
/// @param policy  `extrapolate` to go past this range of temperatures
/// @return        conductivity at the water's temperature [S/m]
/// @throws        invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy      exact: it undoes what the meter did
/// @source        the definition of linear compensation (as in ISO 7888:1985, from memory)
[[nodiscard]] inline electrical_conductivity raw_conductivity(const compensated_reading& reading,
                                                              range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::raw_conductivity";
  const electrical_conductivity shown = reading.shown;
  core::check(here, conductivity_limits, in_millisiemens_per_centimetre(shown), policy);
  return shown * detail::linear_factor(here, reading.water, reading.reference, reading.coefficient, policy);
}

/// Practical salinity from a reading with linear compensation.
///
///   S = S(C, t),   C = C_shown (1 + a (t - t_ref))
///
/// @param reading conductivity shown [S/m]; temperature of the water, from freezing to 35 degC; coefficient a, 0 or 0.1
///                to 3 %/K; the temperature to which the meter refers, 0 to 25 degC
/// @param policy  `extrapolate` to go past these ranges
/// @return        practical salinity
/// @throws        invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy      as from a raw conductivity
/// @source        Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-5
[[nodiscard]] inline practical_salinity salinity_from_conductivity(const compensated_reading& reading,
                                                                   range_policy policy = range_policy::published) {
  return salinity_from_conductivity(raw_conductivity(reading, policy), reading.water, policy);
}

}  // namespace tankwright::water
