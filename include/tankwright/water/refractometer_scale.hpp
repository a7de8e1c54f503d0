// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is printed on a refractometer? Its scale and its compensation, as words that a plan needs.
#pragma once

namespace tankwright::water {

/// What the scale assumes is dissolved.
enum class refractometer_scale {
  seawater,         ///< sea salt: the reading is a practical salinity
  sodium_chloride,  ///< kitchen salt: the reading is grams of it per kilogram of solution
};

/// What the instrument does about a temperature other than 20 degC.
enum class temperature_compensation {
  none,       ///< nothing: the scale is right at 20 degC only
  automatic,  ///< it shifts its scale as the index of its salt water shifts
};

}  // namespace tankwright::water
