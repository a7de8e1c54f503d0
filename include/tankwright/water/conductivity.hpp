// SPDX-License-Identifier: BSL-1.0
/// @file
/// How salt is the water by its electrical conductivity, and what should a probe read? The Practical Salinity Scale of
/// 1978 both ways, extended below salinity 2, for the conductivity at the water's own temperature. What a meter has
/// referred to 25 degC is a different number: `conductivity_meter.hpp`.
#pragma once

#include <algorithm>
#include <cmath>
#include <span>

#include <tankwright/core/batch.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/water/detail/pss78.hpp>
#include <tankwright/water/freezing.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr citation pss78{
    "Perkin R.G., Lewis E.L.", 1980, "The Practical Salinity Scale 1978: fitting the data",
    "IEEE Journal of Oceanic Engineering OE-5:9-16; as in Fofonoff and Millard 1983, UNESCO 44, eqs 1-6",
    standing::secondary};
inline constexpr citation culkin_smith_1980{
    "Culkin F., Smith N.D.", 1980,
    "Determination of the concentration of potassium chloride solution having the same electrical conductivity, at "
    "15 C and infinite frequency, as standard seawater of salinity 35",
    "IEEE Journal of Oceanic Engineering OE-5:22-23", standing::secondary};
inline constexpr citation hill_1986{
    "Hill K.D., Dauphinee T.M., Woods D.J.", 1986,
    "The extension of the Practical Salinity Scale 1978 to low salinities",
    "IEEE Journal of Oceanic Engineering OE-11:109-112; rescaled to meet the scale at 2 as in TEOS-10",
    standing::secondary};

inline constexpr limits conductivity_limits{"conductivity", "mS/cm", {0.0, 1000.0}};
inline constexpr limits conductivity_ratio_limits{"conductivity ratio", "", {0.0, 25.0}};
inline constexpr limits pss78_temperature_limits{
    "temperature", "degC", {-20.0, 100.0}, celsius_range(-2.0, 35.0), "PSS-78, UNESCO 1981"};
inline constexpr limits pss78_pressure_limits{"pressure", "dbar", not_negative, {0.0, 10000.0}, "PSS-78, UNESCO 1981"};
/// Conductivity of seawater of salinity 35 at 15 degC (IPTS-68) and atmospheric pressure: 42.914 mS/cm.
inline constexpr electrical_conductivity standard_conductivity =
    electrical_conductivity::from_value(detail::pss78_standard<double>);

/// Conductivity over that of standard seawater at 15 degC: R = C(S,t,p) / C(35,15,0). What a laboratory salinometer and
/// the old tables give.
class conductivity_ratio : public core::scalar<conductivity_ratio> {
  using scalar::scalar;
};

namespace detail {

[[nodiscard]] constexpr double t68_of(temperature t) noexcept { return core::t68_from_t90(in_celsius(t)); }

/// The salinity behind a conductivity lies past the scale: say it in the caller's terms.
[[noreturn, gnu::cold, gnu::noinline]] inline void refuse_salinity(std::string_view function, std::string_view argument,
                                                                   double value, std::string_view unit,
                                                                   double salinity) {
  std::string reason{"means practical salinity "};
  const double rounded = std::round(salinity * 100.0) / 100.0;
  const bool close = !(rounded > practical_salinity_limits.published.high);  // "42, past 42" would say nothing
  reason.append(core::number_text(close ? std::ceil(salinity * 1e4) / 1e4 : rounded));
  reason.append(", past the end of the scale, ");
  reason.append(core::number_text(practical_salinity_limits.published.high));
  reason.append("; pass tankwright::extrapolate to go past it");
  core::fail<out_of_range>(function, argument, value, unit, reason);
}

/// Both makers of salinity end here. `value` and `unit` are what the caller gave.
[[nodiscard]] inline practical_salinity checked_salinity(std::string_view function, const limits& given, double value,
                                                         double ratio, double celsius, double decibars,
                                                         range_policy policy) {
  core::check(function, given, value, policy);
  core::check(function, pss78_temperature_limits, celsius, policy);
  core::check(function, pss78_pressure_limits, decibars, policy);
  const double t68 = core::t68_from_t90(celsius);
  const double s = within_rounding(salinity_from_rt_ratio(rt_ratio_from_ratio(ratio, t68, decibars), t68));
  if (policy == range_policy::published && !(s <= practical_salinity_limits.published.high)) [[unlikely]] {
    refuse_salinity(function, given.argument, value, given.unit, s);
  }
  check_liquid(function, s, celsius, policy, decibars);
  return practical_salinity{s};
}

[[nodiscard]] inline double checked_ratio(std::string_view function, double s, double celsius, double decibars,
                                          range_policy policy) {
  core::check(function, practical_salinity_limits, s, policy);
  core::check(function, pss78_temperature_limits, celsius, policy);
  core::check(function, pss78_pressure_limits, decibars, policy);
  check_liquid(function, s, celsius, policy, decibars);
  const double t68 = core::t68_from_t90(celsius);
  return ratio_from_rt_ratio(rt_ratio_from_salinity(s, t68), t68, decibars);
}

}  // namespace detail

/// Practical salinity from the conductivity of the water at its own temperature, under pressure.
///
///   R = C / C(35,15,0) = Rp rt Rt,   S = sum a_i Rt^(i/2) + f(t) sum b_i Rt^(i/2), i = 0..5
///
/// Below S = 2 the extension of Hill et al., multiplied so that both meet at S = 2.
///
/// @param c        conductivity at temperature `t`, not compensated [S/m]; the salinity must come out at 0 to 42
/// @param t        temperature [ITS-90; converted to IPTS-68 inside], from freezing to 35 degC
/// @param pressure above the atmosphere, 0 to 10000 dbar
/// @param policy   `extrapolate` to go past these ranges
/// @return         practical salinity; 0 below about 2 uS/cm, where the extension would turn negative
/// @throws         invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy       1e-9 relative against the TEOS-10 toolbox; the scale itself 0.003 (from memory)
/// @source         Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-5; Hill et al. 1986; TEOS-10 manual, app. E
[[nodiscard]] inline practical_salinity salinity_from_conductivity(electrical_conductivity c, temperature t,
                                                                   gauge_pressure pressure,
                                                                   range_policy policy = range_policy::published) {
  return detail::checked_salinity("tankwright::water::salinity_from_conductivity", conductivity_limits,
                                  in_millisiemens_per_centimetre(c), c.value() / standard_conductivity.value(),
                                  in_celsius(t), in_decibars(pressure.value()), policy);
}

/// Practical salinity from the conductivity of the water at its own temperature, at the surface.
///
///   as under pressure, with Rp = 1
///
/// @param c      conductivity at temperature `t`, not compensated [S/m]; the salinity must come out at 0 to 42
/// @param t      temperature [ITS-90; converted to IPTS-68 inside], from freezing to 35 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       practical salinity
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1e-9 relative against the TEOS-10 toolbox; the scale itself 0.003 (from memory)
/// @source       Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-5; Hill et al. 1986; TEOS-10 manual, app. E
[[nodiscard]] inline practical_salinity salinity_from_conductivity(electrical_conductivity c, temperature t,
                                                                   range_policy policy = range_policy::published) {
  return salinity_from_conductivity(c, t, gauge_pressure{pressure::from_value(0.0)}, policy);
}

/// Practical salinity from the conductivity ratio of a salinometer or an old table.
///
///   as from a conductivity, with R given
///
/// @param r        conductivity ratio R = C(S,t,p) / C(35,15,0); the salinity must come out at 0 to 42
/// @param t        temperature [ITS-90; converted to IPTS-68 inside], from freezing to 35 degC
/// @param pressure above the atmosphere, 0 to 10000 dbar
/// @param policy   `extrapolate` to go past these ranges
/// @return         practical salinity
/// @throws         invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy       1e-6 against the printed tables, their last digit
/// @source         Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-5
[[nodiscard]] inline practical_salinity salinity_from_conductivity_ratio(
    conductivity_ratio r, temperature t, gauge_pressure pressure, range_policy policy = range_policy::published) {
  return detail::checked_salinity("tankwright::water::salinity_from_conductivity_ratio", conductivity_ratio_limits,
                                  r.value(), r.value(), in_celsius(t), in_decibars(pressure.value()), policy);
}

/// Practical salinity of many conductivities at the surface: element i of the result from element i of both inputs.
///
///   as the scalar function without pressure
///
/// @param c      conductivities at temperature `t`, not compensated [S/m]; the salinities must come out at 0 to 42
/// @param t      temperatures [ITS-90], from freezing to 35 degC; as many as `c`
/// @param result practical salinities; as many as `c`. May not overlap the inputs. Untouched when the call throws.
/// @param policy `extrapolate` to go past these ranges
/// @throws       invalid_input, out_of_range (for the first bad element)
/// @accuracy     as the scalar function, to 2e-15 relative
/// @source       Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-5; Hill et al. 1986
inline void salinity_from_conductivity(std::span<const electrical_conductivity> c, std::span<const temperature> t,
                                       std::span<practical_salinity> result,
                                       range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::salinity_from_conductivity";
  constexpr double standard = detail::pss78_standard<double>;
  const std::size_t size = c.size();
  core::check_same_size(here, size, t.size());
  core::check_same_size(here, size, result.size());
  // Rt = 1.174 is salinity 41.9 to 42 at every temperature of the scale: what keeps below these bounds is good.
  const bool plain = core::all_within({0.0, 100.0}, size, [&](std::size_t i) { return c[i].value(); }) &&
                     core::all_within({0.0, 35.0}, size, [&](std::size_t i) { return in_celsius(t[i]); }) &&
                     core::all_within({-200.0, 0.0}, size, [&](std::size_t i) {
                       return c[i].value() - 1.174 * standard * detail::pss78_rt(detail::t68_of(t[i]));
                     });
  if (!plain) [[unlikely]] {
    for (std::size_t i = 0; i < size; ++i) (void)salinity_from_conductivity(c[i], t[i], policy);
  }

  core::block x{}, f{}, s{};
  for (std::size_t start = 0; start < size; start += core::block_size) {
    const std::size_t count = std::min(core::block_size, size - start);
    for (std::size_t i = 0; i < count; ++i) {
      const double t68 = detail::t68_of(t[start + i]);
      const double at_35 = standard * detail::pss78_rt(t68);
      const double denominator = detail::pss78_f_denominator(t68);
      const double inverse = 1.0 / (at_35 * denominator);  // one division for both
      x[i] = c[start + i].value() * denominator * inverse;
      f[i] = (t68 - 15.0) * at_35 * inverse;
    }
    core::square_roots(x);
    double lowest = 2.0;
    for (std::size_t i = 0; i < core::block_size; ++i) s[i] = detail::pss78_salinity(x[i], f[i]);
    for (std::size_t i = 0; i < count; ++i) lowest = s[i] < lowest ? s[i] : lowest;
    if (lowest < 2.0) [[unlikely]] {
      for (std::size_t i = 0; i < count; ++i) {
        if (s[i] < 2.0) s[i] = detail::low_salinity(x[i], f[i]);
      }
    }
    for (std::size_t i = 0; i < count; ++i) result[start + i] = practical_salinity{detail::within_rounding(s[i])};
  }
}

/// Conductivity ratio of seawater under pressure, from its practical salinity.
///
///   R = Rp rt Rt with Rt from S by Newton's method and Rp from a quadratic equation
///
/// @param s        practical salinity, 0 to 42
/// @param t        temperature [ITS-90; converted to IPTS-68 inside], from freezing to 35 degC
/// @param pressure above the atmosphere, 0 to 10000 dbar
/// @param policy   `extrapolate` to go past these ranges
/// @return         conductivity ratio C(S,t,p) / C(35,15,0)
/// @throws         invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy       2e-6 against the printed tables, which iterate only to 1e-4 in S
/// @source         Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-6
[[nodiscard]] inline conductivity_ratio conductivity_ratio_from_salinity(
    practical_salinity s, temperature t, gauge_pressure pressure, range_policy policy = range_policy::published) {
  return conductivity_ratio{detail::checked_ratio("tankwright::water::conductivity_ratio_from_salinity", s.value(),
                                                  in_celsius(t), in_decibars(pressure.value()), policy)};
}

/// Conductivity of seawater at its own temperature, under pressure.
///
///   C = C(35,15,0) Rp rt Rt
///
/// @param s        practical salinity, 0 to 42
/// @param t        temperature [ITS-90; converted to IPTS-68 inside], from freezing to 35 degC
/// @param pressure above the atmosphere, 0 to 10000 dbar
/// @param policy   `extrapolate` to go past these ranges
/// @return         conductivity at temperature `t` [S/m]
/// @throws         invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy       1e-9 relative against the TEOS-10 toolbox; there and back to 1e-12
/// @source         Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-6; Hill et al. 1986; Culkin and Smith 1980
[[nodiscard]] inline electrical_conductivity conductivity_from_salinity(practical_salinity s, temperature t,
                                                                        gauge_pressure pressure,
                                                                        range_policy policy = range_policy::published) {
  return standard_conductivity * detail::checked_ratio("tankwright::water::conductivity_from_salinity", s.value(),
                                                       in_celsius(t), in_decibars(pressure.value()), policy);
}

/// Conductivity of seawater at its own temperature, at the surface: what an uncompensated probe should read.
///
///   as under pressure, with Rp = 1
///
/// @param s      practical salinity, 0 to 42
/// @param t      temperature [ITS-90; converted to IPTS-68 inside], from freezing to 35 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       conductivity at temperature `t` [S/m]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1e-9 relative against the TEOS-10 toolbox; there and back to 1e-12
/// @source       Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-6; Hill et al. 1986; Culkin and Smith 1980
[[nodiscard]] inline electrical_conductivity conductivity_from_salinity(practical_salinity s, temperature t,
                                                                        range_policy policy = range_policy::published) {
  return conductivity_from_salinity(s, t, gauge_pressure{pressure::from_value(0.0)}, policy);
}

/// Conductivity of many samples of seawater at the surface: element i of the result from element i of both inputs.
///
///   as the scalar function without pressure
///
/// @param s      practical salinities, 0 to 42
/// @param t      temperatures [ITS-90], from freezing to 35 degC; as many as `s`
/// @param result conductivities at temperature `t` [S/m]; as many as `s`. May not overlap the inputs. Untouched when
///               the call throws.
/// @param policy `extrapolate` to go past these ranges
/// @throws       invalid_input, out_of_range (for the first bad element)
/// @accuracy     as the scalar function, to 2e-15 relative
/// @source       Perkin and Lewis 1980; Fofonoff and Millard 1983, eqs 1-6; Hill et al. 1986; Culkin and Smith 1980
inline void conductivity_from_salinity(std::span<const practical_salinity> s, std::span<const temperature> t,
                                       std::span<electrical_conductivity> result,
                                       range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::conductivity_from_salinity";
  const std::size_t size = s.size();
  core::check_same_size(here, size, t.size());
  core::check_same_size(here, size, result.size());
  core::check_all(
      here, practical_salinity_limits, size, [&](std::size_t i) { return s[i].value(); }, policy);
  detail::check_all_liquid(
      here, pss78_temperature_limits, size, [&](std::size_t i) { return s[i].value(); },
      [&](std::size_t i) { return in_celsius(t[i]); }, policy);

  core::block x{}, f{}, salinity{};
  for (std::size_t start = 0; start < size; start += core::block_size) {
    const std::size_t count = std::min(core::block_size, size - start);
    double lowest = 2.0;
    double highest = 42.0;
    for (std::size_t i = 0; i < count; ++i) {
      x[i] = salinity[i] = s[start + i].value();
      f[i] = detail::pss78_f(detail::t68_of(t[start + i]));
      lowest = std::min(lowest, salinity[i]);
      highest = std::max(highest, salinity[i]);
    }
    core::square_roots(x);
    for (std::size_t i = 0; i < core::block_size; ++i) x[i] = detail::pss78_guess(x[i]);
    for (int step = 0; step < 3; ++step) {
      for (std::size_t i = 0; i < core::block_size; ++i) x[i] = detail::pss78_newton(x[i], f[i], salinity[i]);
    }
    if (lowest < 2.0 || highest > 42.0) [[unlikely]] {
      for (std::size_t i = 0; i < count; ++i) {
        if (salinity[i] >= 2.0 && salinity[i] <= 42.0) continue;
        x[i] = salinity[i] < 2.0 ? detail::low_salinity_x(salinity[i], f[i]) : detail::pss78_x(salinity[i], f[i]);
      }
    }
    for (std::size_t i = 0; i < count; ++i) {
      result[start + i] = standard_conductivity * (detail::pss78_rt(detail::t68_of(t[start + i])) * x[i] * x[i]);
    }
  }
}

}  // namespace tankwright::water
