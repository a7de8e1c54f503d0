// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is the specific gravity of this water, and how salt is water of this specific gravity?
///
/// A specific gravity is the density of the water at one temperature over that of pure water at another, and means
/// nothing without both: salinity 35 is 1.0269 on the 60 degF/60 degF scale, 1.0264 on 25/25 and 1.0234 on 25/4. The
/// type here carries them.
#pragma once

#include <algorithm>
#include <cmath>
#include <span>

#include <tankwright/core/required.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/gravity_scale.hpp>

namespace tankwright::water {

/// Density over that of pure water, with the temperatures of both.
class specific_gravity {
 public:
  constexpr specific_gravity(double value, gravity_scale scale) noexcept : value_{value}, scale_{scale} {}
  [[nodiscard]] constexpr double value() const noexcept { return value_; }
  [[nodiscard]] constexpr const gravity_scale& scale() const noexcept { return scale_; }

 private:
  double value_;
  gravity_scale scale_;
};

/// Specific gravities that salt water can have; a density or a salinity is not one.
inline constexpr limits specific_gravity_limits{"specific gravity", "", {0.5, 2.0}};
inline constexpr limits sample_temperature_limits{"sample temperature", "degC", above_absolute_zero_celsius,
                                                  celsius_range(-6.0, 80.0), "Feistel 2008"};
inline constexpr limits reference_temperature_limits{"reference temperature", "degC", above_absolute_zero_celsius,
                                                     celsius_range(0.0, 80.0), "Feistel 2008"};

namespace detail {

/// Density [kg/m^3] of the reference water of a scale, both temperatures of which are checked.
[[nodiscard]] inline double checked_reference_density(std::string_view function, const gravity_scale& scale,
                                                      range_policy policy) {
  const double reference = in_celsius(scale.reference);
  core::check(function, sample_temperature_limits, in_celsius(scale.sample), policy);
  core::check(function, reference_temperature_limits, reference, policy);
  return kernel::density_teos10(0.0, reference);
}

}  // namespace detail

/// Specific gravity of seawater on a scale.
///
///   SG(t_s/t_r) = rho(S, t_s) / rho(0, t_r)
///
/// @param s      practical salinity S, 0 to 42
/// @param scale  temperature of the sample t_s, from freezing to 80 degC, and of the reference water t_r, 0 to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       specific gravity, with its scale
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     5e-6 for seawater of standard composition; a synthetic salt mix departs by about 5e-5
/// @source       the definition, with the densities of TEOS-10 (Feistel 2008)
[[nodiscard]] inline specific_gravity specific_gravity_from_salinity(practical_salinity s, const gravity_scale& scale,
                                                                     range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::specific_gravity_from_salinity";
  const double sample = in_celsius(scale.sample);
  core::check(here, practical_salinity_limits, s.value(), policy);
  const double reference_density = detail::checked_reference_density(here, scale, policy);
  detail::check_liquid(here, s.value(), sample, policy);
  return {kernel::density_teos10(detail::u_ps<double> * s.value(), sample) / reference_density, scale};
}

/// Specific gravities of many samples on one scale: element i of the result from element i of the salinities.
///
///   SG(t_s/t_r) = rho(S, t_s) / rho(0, t_r)
///
/// @param s      practical salinities, 0 to 42
/// @param scale  temperature of the samples t_s, from freezing to 80 degC, and of the reference water t_r, 0 to 80 degC
/// @param result specific gravities; as many as `s`. Untouched when the call throws.
/// @param policy `extrapolate` to go past these ranges
/// @throws       invalid_input, out_of_range (for the first bad element)
/// @accuracy     as the scalar function, to 4e-16 relative
/// @source       the definition, with the densities of TEOS-10 (Feistel 2008)
inline void specific_gravity_from_salinity(std::span<const practical_salinity> s, const gravity_scale& scale,
                                           std::span<specific_gravity> result,
                                           range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::specific_gravity_from_salinity";
  const std::size_t size = s.size();
  const double sample = in_celsius(scale.sample);
  core::check_same_size(here, size, result.size());
  const double reference_density = detail::checked_reference_density(here, scale, policy);
  core::check_all(
      here, practical_salinity_limits, size, [&](std::size_t i) { return s[i].value(); }, policy);
  if (sample < 0.0) {
    for (std::size_t i = 0; i < size; ++i) detail::check_liquid(here, s[i].value(), sample, policy);
  }

  constexpr double x2_per_practical = detail::teos10_sfac<double> * detail::u_ps<double>;
  core::block x{}, x2{};
  for (std::size_t start = 0; start < size; start += core::block_size) {
    const std::size_t count = std::min(core::block_size, size - start);
    for (std::size_t i = 0; i < count; ++i) x[i] = x2[i] = x2_per_practical * s[start + i].value();
    core::square_roots(x);
    for (std::size_t i = 0; i < core::block_size; ++i) {
      x[i] = 1.0 / (detail::teos10_specific_volume(x[i], x2[i], sample * 0.025) * reference_density);
    }
    for (std::size_t i = 0; i < count; ++i) result[start + i] = {x[i], scale};
  }
}

/// Practical salinity from a specific gravity.
///
///   rho(S, t_s) = SG rho(0, t_r), solved for S by a bracketed root
///
/// @param sg     specific gravity on its scale; the salinity must come out at 0 to 42
/// @param policy `extrapolate` to go past these ranges, to 120 g/kg
/// @return       practical salinity
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     there and back to 4e-13; 0.0001 in specific gravity is 0.13 in salinity
/// @source       the definition, with the densities of TEOS-10 (Feistel 2008)
[[nodiscard]] inline practical_salinity salinity_from_specific_gravity(const specific_gravity& sg,
                                                                       range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::salinity_from_specific_gravity";
  core::check(here, specific_gravity_limits, sg.value(), policy);
  const double reference_density = detail::checked_reference_density(here, sg.scale(), policy);
  return detail::salinity_of({here, specific_gravity_limits.argument, "", sg.value(), reference_density},
                             in_celsius(sg.scale().sample), policy);
}

/// The specific gravity of the same water on another scale.
///
///   SG' = SG'(S, t_s'/t_r') with S from SG
///
/// @param sg     specific gravity on its scale; the salinity must come out at 0 to 42
/// @param scale  the other scale: sample from freezing to 80 degC, reference water 0 to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       specific gravity on `scale`
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     there and back to 4e-16
/// @source       the definition, with the densities of TEOS-10 (Feistel 2008)
[[nodiscard]] inline specific_gravity on_scale(const specific_gravity& sg, const gravity_scale& scale,
                                               range_policy policy = range_policy::published) {
  return specific_gravity_from_salinity(salinity_from_specific_gravity(sg, policy), scale, policy);
}

}  // namespace tankwright::water
