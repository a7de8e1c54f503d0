// SPDX-License-Identifier: BSL-1.0
/// @file
/// The two salinity scales and the way between them.
///
/// Practical salinity S_P (PSS-78) is what conductivity gives: no unit. Absolute salinity S_A is the mass of salt in
/// the water, g/kg. For water of standard composition they differ by a fixed factor, exact by definition.
#pragma once

#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/validity.hpp>

namespace tankwright::water {

inline constexpr citation millero_2008{
    "Millero F.J., Feistel R., Wright D.G., McDougall T.J.", 2008,
    "The composition of Standard Seawater and the definition of the Reference-Composition Salinity Scale",
    "Deep-Sea Research I 55:50-72, eq. 6.11"};

/// Where PSS-78 holds on salinity; the scale is not defined above 42.
inline constexpr limits practical_salinity_limits{
    "practical salinity", "", {0.0, 400.0}, {0.0, 42.0}, "PSS-78, UNESCO 1981"};
/// Where the saline Gibbs function holds.
inline constexpr limits absolute_salinity_limits{
    "absolute salinity", "g/kg", {0.0, 400.0}, {0.0, 120.0}, "Feistel 2008"};

/// Whether a number that was given as a salinity is rather a specific gravity, 0.99 to 1.10, as a hydrometer shows it.
///
/// @param s  practical salinity as somebody wrote it
/// @return   true from 0.99 to 1.10
/// @accuracy common practice; water of salinity 1 exists, and hardly anybody wants it
/// @source   none: a convention of this library
[[nodiscard]] constexpr bool looks_like_a_gravity(practical_salinity s) noexcept {
  return s.value() >= 0.99 && s.value() <= 1.10;
}

/// A volume of water, where there must be some.
inline constexpr limits water_volume_limits{"volume", "L", positive};

namespace detail {

/// u_PS = 35.16504/35 g/kg, exact by definition of the Reference-Composition Salinity Scale.
template <class T>
inline constexpr T u_ps = T(35.16504L) / T(35.0L);

/// The same range under the name that the caller knows: "target" among several salinities.
[[nodiscard]] constexpr limits renamed(limits range, std::string_view argument) noexcept {
  range.argument = argument;
  return range;
}

/// A salinity that was worked out: what rounding put a little past the end of the scale is the end, so that 42 comes
/// back as 42.
[[nodiscard]] constexpr double within_rounding(double s) noexcept {
  constexpr double end = practical_salinity_limits.published.high, rounding = 1e-8;
  return s > end && s <= end + rounding ? end : s;
}

/// Refuse a wanted salinity that is a specific gravity; whoever wants water that fresh says `extrapolate`.
inline void refuse_gravity(std::string_view function, std::string_view argument, practical_salinity s,
                           range_policy policy) {
  if (policy == range_policy::extrapolate || !looks_like_a_gravity(s)) [[likely]]
    return;
  core::fail<invalid_input>(function, argument, s.value(), "",
                            "looks like a specific gravity; a practical salinity is about 35 in the sea. Make one of "
                            "it with salinity_from_hydrometer, or pass tankwright::extrapolate for water that fresh");
}

}  // namespace detail

/// Absolute salinity of water of reference composition, from its practical salinity.
///
///   S_R = u_PS S_P,   u_PS = 35.16504/35 g/kg
///
/// @param s      practical salinity, 0 to 42
/// @param policy `extrapolate` to go past 42
/// @return       absolute salinity [g/kg]
/// @throws       invalid_input, out_of_range
/// @accuracy     exact by definition for reference composition; a synthetic mix can differ by about 0.2 %
/// @source       Millero et al. 2008, eq. 6.11
[[nodiscard]] constexpr absolute_salinity absolute_from_practical(practical_salinity s,
                                                                  range_policy policy = range_policy::published) {
  core::check("tankwright::water::absolute_from_practical", practical_salinity_limits, s.value(), policy);
  return absolute_salinity::from_grams_per_kilogram(detail::u_ps<double> * s.value());
}

/// Practical salinity from absolute salinity, for water of reference composition.
///
///   S_P = S_R / u_PS
///
/// @param s      absolute salinity [g/kg], 0 to 42.198 (S_P 42)
/// @param policy `extrapolate` to go past S_P 42
/// @return       practical salinity
/// @throws       invalid_input, out_of_range
/// @accuracy     exact by definition for reference composition
/// @source       Millero et al. 2008, eq. 6.11
[[nodiscard]] constexpr practical_salinity practical_from_absolute(absolute_salinity s,
                                                                   range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::practical_from_absolute";
  core::check(here, absolute_salinity_limits, in_grams_per_kilogram(s), policy);
  const practical_salinity result{detail::within_rounding(in_grams_per_kilogram(s) / detail::u_ps<double>)};
  core::check(here, practical_salinity_limits, result.value(), policy);
  return result;
}

}  // namespace tankwright::water
