// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does a hydrometer show, and how salt is the water by its reading?
///
/// A hydrometer is right at one temperature, the first of its scale. In warmer water it floats in lighter water and is
/// itself larger: the reading is not the specific gravity on its scale until both are taken out.
#pragma once

#include <tankwright/core/estimate.hpp>
#include <tankwright/water/specific_gravity.hpp>

namespace tankwright::water {

/// What a hydrometer is made of, and how much its volume grows with temperature.
struct body_material {
  std::string_view name;
  temperature_coefficient expansion;
  std::string_view source;
  standing read_as;
};

inline constexpr body_material hydrometer_glass{"glass", per_kelvin(25e-6),
                                                "ISO 1768:1975, clause 3: conventional value for glass hydrometers",
                                                standing::secondary};
inline constexpr body_material hydrometer_plastic{
    "plastic", per_kelvin(2e-4), "polycarbonate, three times its linear expansion", standing::from_memory};

struct hydrometer {
  required<gravity_scale> scale;  ///< as printed on it: `scale_60f_60f`, `scale_25_25`, ...
  body_material body = hydrometer_glass;
  double division = 0.001;  ///< [1] smallest division of its scale
};

/// One reading.
struct hydrometer_observation {
  required<double> reading;     ///< [1] as shown, "1.0245"
  required<temperature> water;  ///< temperature of the water it floats in
  hydrometer instrument;
};

inline constexpr limits hydrometer_reading_limits{"reading", "", {0.5, 2.0}};
inline constexpr limits division_limits{"division", "", {0.0, 0.05, edge::open}};
inline constexpr limits body_expansion_limits{"cubic expansion of the body", "1/K", {0.0, 1e-3}};

namespace detail {

inline constexpr std::string_view hydrometer_band =
    "half a division of the scale either way; a wet stem, bubbles and a misplaced scale are not in it";

/// Density [kg/m^3] for each 1 of the reading of a hydrometer in water at t [degC].
[[nodiscard]] inline double density_per_reading(std::string_view function, const hydrometer& instrument, double t,
                                                range_policy policy) {
  const gravity_scale& scale = instrument.scale;
  core::check(function, body_expansion_limits, instrument.body.expansion.value());
  core::check(function, division_limits, instrument.division);
  core::check(function, gibbs_temperature_limits, t, policy);
  const double reference_density = checked_reference_density(function, scale, policy);
  return reference_density / (1.0 + instrument.body.expansion.value() * (t - in_celsius(scale.sample)));
}

/// `of(density)` for the reading and for half a division below and above it. The reading itself is refused when no
/// seawater has it within half a division: in fresh water, where instruments are checked, it may stand a little below.
/// The ends of the band stop where seawater does.
template <class Q, class Of>
[[nodiscard]] estimate<Q> hydrometer_estimate(std::string_view function, const hydrometer_observation& seen,
                                              range_policy policy, Of of) {
  const double t = in_celsius(seen.water);
  const double half = 0.5 * seen.instrument.division;
  core::check(function, hydrometer_reading_limits, seen.reading);
  const double unit = density_per_reading(function, seen.instrument, t, policy);
  const double fresh = kernel::density_teos10(0.0, t) / unit;  // what it shows in fresh water
  const double read = seen.reading, shown = read < fresh && read + half >= fresh ? fresh : read;
  const practical_salinity central =
      salinity_of({function, hydrometer_reading_limits.argument, "", shown, unit}, t, policy);
  const auto edge_of_band = [&](double reading) {
    return practical_salinity{absolute_from_density(reading * unit, t, absolute_salinity_limits.published.high) /
                              u_ps<double>};
  };
  return {of(edge_of_band(seen.reading - half)), of(central), of(edge_of_band(seen.reading + half)), hydrometer_band};
}

}  // namespace detail

/// What a hydrometer shows in water of a known salinity.
///
///   R = rho(S, t) / rho(0, t_r) (1 + b (t - t_s)),   b the cubic expansion of its body, t_s/t_r its scale
///
/// @param s          practical salinity, 0 to 42
/// @param water      temperature t of the water [ITS-90], from freezing to 80 degC
/// @param instrument its scale; body b 0 to 0.001 /K (glass when not said); smallest division (not used here)
/// @param policy     `extrapolate` to go past these ranges
/// @return           [1] the reading, like 1.0245
/// @throws           invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy         1e-5 for a glass body; a cheap scale may be misplaced by a division or more
/// @source           the definition, with the densities of TEOS-10 (Feistel 2008); ISO 1768:1975 for glass
[[nodiscard]] inline double hydrometer_reading(practical_salinity s, temperature water, const hydrometer& instrument,
                                               range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::hydrometer_reading";
  const double t = in_celsius(water);
  core::check(here, practical_salinity_limits, s.value(), policy);
  const double unit = detail::density_per_reading(here, instrument, t, policy);
  detail::check_liquid(here, s.value(), t, policy);
  return kernel::density_teos10(detail::u_ps<double> * s.value(), t) / unit;
}

/// Practical salinity from a hydrometer's reading at the temperature of the water.
///
///   rho(S, t) = R rho(0, t_r) / (1 + b (t - t_s)), solved for S
///
/// @param seen   reading R; temperature t of the water, from freezing to 80 degC; the instrument: its scale t_s/t_r,
///               its body b 0 to 0.001 /K (glass when not said), its smallest division up to 0.05 (0.001 when not said)
/// @param policy `extrapolate` to go past salinity 42
/// @return       practical salinity; the band is half a division either way. A reading up to half a division below that
///               of fresh water is 0 with its band.
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.01 for the formula; half a division of 0.001 is 0.65
/// @source       the definition, with the densities of TEOS-10 (Feistel 2008); ISO 1768:1975 for glass
[[nodiscard]] inline estimate<practical_salinity> salinity_from_hydrometer(
    const hydrometer_observation& seen, range_policy policy = range_policy::published) {
  return detail::hydrometer_estimate<practical_salinity>("tankwright::water::salinity_from_hydrometer", seen, policy,
                                                         [](practical_salinity s) { return s; });
}

/// The true specific gravity behind a hydrometer's reading: what it would show at the temperature of its scale.
///
///   SG(t_s/t_r) of the salinity from the reading
///
/// @param seen   as for `salinity_from_hydrometer`
/// @param policy `extrapolate` to go past salinity 42
/// @return       specific gravity on the scale of the instrument; the band is half a division either way
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1e-5 for a glass body
/// @source       the definition, with the densities of TEOS-10 (Feistel 2008); ISO 1768:1975 for glass
[[nodiscard]] inline estimate<specific_gravity> specific_gravity_from_hydrometer(
    const hydrometer_observation& seen, range_policy policy = range_policy::published) {
  return detail::hydrometer_estimate<specific_gravity>(
      "tankwright::water::specific_gravity_from_hydrometer", seen, policy,
      [&](practical_salinity s) { return specific_gravity_from_salinity(s, seen.instrument.scale, extrapolate); });
}

}  // namespace tankwright::water
