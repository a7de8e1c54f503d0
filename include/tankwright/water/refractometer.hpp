// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does a hand refractometer show, and how salt is the water by its reading?
///
/// A refractometer measures the bending of light and prints it as parts per thousand of a salt it assumes: of sea salt,
/// or of kitchen salt. The second shows 36.5 for seawater of 35.
#pragma once

#include <cmath>

#include <tankwright/core/estimate.hpp>
#include <tankwright/water/refractive_index.hpp>
#include <tankwright/water/refractometer_scale.hpp>

namespace tankwright::water {

struct refractometer {
  required<refractometer_scale> scale;
  required<temperature_compensation> compensation;
  double division = 1.0;  ///< [ppt] smallest division of its scale, parts per thousand
};

/// One reading.
struct refractometer_observation {
  required<double> reading;     ///< [ppt] as shown, parts per thousand
  required<temperature> prism;  ///< of the prism, which the drop takes on in half a minute
  refractometer instrument;
};

/// The temperature at which the scales are right.
inline constexpr temperature refractometer_standard = celsius(20.0);

/// Index that each g/kg of sodium chloride adds at 20 degC in sodium light. A straight line through the printed values
/// 1.3339 (0.5 %) to 1.3505 (10 %), all within half their last digit, which is 0.3 g/kg.
inline constexpr double index_per_sodium_chloride = 1.755e-4;
inline constexpr citation sodium_chloride_index{
    "Lide D.R. (editor)", 2005, "Concentrative properties of aqueous solutions: sodium chloride",
    "CRC Handbook of Chemistry and Physics, 86th edition, section 8; 20 degC, 589 nm", standing::from_memory};
/// How far the reading of a sodium chloride scale is uncertain by that table, in g/kg.
inline constexpr double sodium_chloride_uncertainty = 0.3;

inline constexpr limits refractometer_reading_limits{"reading", "ppt", {0.0, 280.0}};
inline constexpr limits refractometer_division_limits{"division", "ppt", {0.0, 20.0, edge::open}};
/// Where automatic compensations are made to work.
inline constexpr limits compensated_temperature_limits{"temperature of the prism", "degC", above_absolute_zero_celsius,
                                                       celsius_range(10.0, 30.0),
                                                       "automatic compensation, common practice"};
inline constexpr limits prism_temperature_limits{"temperature of the prism", "degC", above_absolute_zero_celsius,
                                                 celsius_range(0.0, 30.0), "Millard and Seaver 1990"};

namespace detail {

/// Index of pure water and rise per unit of salinity, in sodium light.
struct sodium_light {
  double water;
  double per_salinity;
  explicit sodium_light(double t) noexcept
      : water{millard_seaver_water(t, 0.58926)}, per_salinity{millard_seaver_per_salinity(t, 0.58926)} {}
};

/// The optics of one use: at the temperature that counts, and of the scale.
struct refractometer_optics {
  sodium_light standard;  ///< at 20 degC
  sodium_light prism;     ///< as the instrument sees the drop: at 20 degC too when it compensates
  double per_division;    ///< index for each part per thousand of the scale
};

[[nodiscard]] inline refractometer_optics optics_of(std::string_view function, const refractometer& instrument,
                                                    double t, range_policy policy) {
  const bool automatic = instrument.compensation == temperature_compensation::automatic;
  core::check(function, automatic ? compensated_temperature_limits : prism_temperature_limits, t, policy);
  core::check(function, refractometer_division_limits, instrument.division);
  const sodium_light standard{in_celsius(refractometer_standard)};
  const bool salt = instrument.scale == refractometer_scale::sodium_chloride;
  return {standard, automatic ? standard : sodium_light{t}, salt ? index_per_sodium_chloride : standard.per_salinity};
}

}  // namespace detail

/// What a refractometer shows for seawater of a known salinity.
///
///   reading = (n(S, t) - n(0, 20 degC)) / k,   k the index per part per thousand of its scale, t = 20 degC when it
///   compensates
///
/// @param s          practical salinity S, 0 to 42
/// @param prism      temperature t of the prism [ITS-90], 0 to 30 degC (10 to 30 with automatic compensation)
/// @param instrument its scale and compensation; its smallest division (not used here)
/// @param policy     `extrapolate` to go past these ranges
/// @return           the reading [parts per thousand of its scale]; below zero when warm water bends less than pure
///                   water at 20 degC, where the instrument shows nothing
/// @throws           invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy         0.03 on a seawater scale, 0.3 on a sodium chloride scale, before the error of the instrument
/// @source           Millard and Seaver 1990; index of sodium chloride from memory
[[nodiscard]] inline double refractometer_reading(practical_salinity s, temperature prism,
                                                  const refractometer& instrument,
                                                  range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::refractometer_reading";
  core::check(here, practical_salinity_limits, s.value(), policy);
  const detail::refractometer_optics optics = detail::optics_of(here, instrument, in_celsius(prism), policy);
  return (optics.prism.water - optics.standard.water + s.value() * optics.prism.per_salinity) / optics.per_division;
}

/// Practical salinity from the reading of a refractometer.
///
///   S = (n(0, 20 degC) + k reading - n(0, t)) / (dn/dS at t),   t = 20 degC when it compensates
///
/// @param seen   reading [parts per thousand of its scale], whose salinity must come out at 0 to 42; temperature of the
///               prism, 0 to 30 degC (10 to 30 with automatic compensation); the instrument: scale, compensation, its
///               smallest division up to 20 (1 when not said)
/// @param policy `extrapolate` to go past these ranges
/// @return       practical salinity; 0 with its band where it stands at most half a division below that of fresh water.
///               The band: half a division; 0.3 g/kg for the index of sodium chloride; and, when it
///               compensates, what a compensation made for pure water would miss.
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     its band, when the instrument was set to a known seawater at the temperature of use
/// @source       Millard and Seaver 1990; index of sodium chloride from memory
[[nodiscard]] inline estimate<practical_salinity> salinity_from_refractometer(
    const refractometer_observation& seen, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::salinity_from_refractometer";
  const double t = in_celsius(seen.prism);
  core::check(here, refractometer_reading_limits, seen.reading);
  const detail::refractometer_optics optics = detail::optics_of(here, seen.instrument, t, policy);
  const auto salinity_at = [&](double reading) {
    const double index = optics.standard.water + optics.per_division * reading;
    return (index - optics.prism.water) / optics.prism.per_salinity;
  };
  double uncertain = 0.5 * seen.instrument.division;
  if (seen.instrument.scale == refractometer_scale::sodium_chloride) uncertain += sodium_chloride_uncertainty;
  const double read = detail::within_rounding(salinity_at(seen.reading));
  // In fresh water, where instruments are checked, it may stand a little below.
  const practical_salinity central{read < 0.0 && salinity_at(seen.reading + uncertain) >= 0.0 ? 0.0 : read};
  if (!(central.value() >= 0.0) || (policy == range_policy::published && !(central.value() <= 42.0))) {
    core::fail<out_of_range>(here, refractometer_reading_limits.argument, seen.reading, "ppt",
                             "means practical salinity " + core::number_text(std::round(read * 100.0) / 100.0) +
                                 " with the prism at " + core::number_with_unit(t, "degC") + ", outside 0 to 42");
  }

  double half_band = salinity_at(seen.reading + uncertain) - read;
  if (seen.instrument.compensation == temperature_compensation::automatic) {
    const double actual = detail::sodium_light{t}.per_salinity;
    half_band += central.value() * std::fabs(actual / optics.prism.per_salinity - 1.0);
  }
  const double low = central.value() - half_band;
  return {practical_salinity{low > 0.0 ? low : 0.0}, central, practical_salinity{central.value() + half_band},
          "half a division of the scale, the salt it assumes, and a temperature compensation made for another liquid; "
          "an instrument that was not set to a known seawater can be further out"};
}

}  // namespace tankwright::water
