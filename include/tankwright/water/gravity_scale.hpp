// SPDX-License-Identifier: BSL-1.0
/// @file
/// At which two temperatures is a specific gravity meant? What is printed on a hydrometer.
#pragma once

#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>

namespace tankwright::water {

/// The two temperatures of a specific gravity: "25/4" is a sample at 25 degC over pure water at 4 degC.
struct gravity_scale {
  required<temperature> sample;
  required<temperature> reference;
};

inline constexpr gravity_scale scale_15_15{celsius(15.0), celsius(15.0)};
inline constexpr gravity_scale scale_60f_60f{fahrenheit(60.0), fahrenheit(60.0)};
inline constexpr gravity_scale scale_20_20{celsius(20.0), celsius(20.0)};
inline constexpr gravity_scale scale_25_25{celsius(25.0), celsius(25.0)};  ///< also 77 degF/77 degF
inline constexpr gravity_scale scale_15_4{celsius(15.0), celsius(4.0)};
inline constexpr gravity_scale scale_20_4{celsius(20.0), celsius(4.0)};
inline constexpr gravity_scale scale_25_4{celsius(25.0), celsius(4.0)};

}  // namespace tankwright::water
