// SPDX-License-Identifier: BSL-1.0
/// @file
/// In which air does a dehumidifier take out what its label says? The points that labels are made at.
#pragma once

#include <string_view>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>

namespace tankwright::room {

/// The air for which a label's capacity holds.
struct rating_point {
  std::string_view name;
  tankwright::temperature temperature;
  relative_humidity humidity;
  double share = 0.0;  ///< [1] published capacity there over that at 80 F, 60 %, 0.01 to 10; 0: take the curve
};
inline constexpr rating_point rated_80F_60{"80 F, 60 %", fahrenheit(80.0), relative_humidity::from_percent(60.0), 1.0};
inline constexpr rating_point rated_73F_60{"73 F, 60 %", fahrenheit(73.0), relative_humidity::from_percent(60.0)};
inline constexpr rating_point rated_65F_60{"65 F, 60 %", fahrenheit(65.0), relative_humidity::from_percent(60.0), 0.69};
/// Labels outside North America; a supplier's guide gives for 10, 16 and 50 L a day at this point 5.6, 8 and 30 L at
/// 27 degC and 60 %, where the curve would keep 7.7 of 10.
inline constexpr rating_point rated_30C_80{"30 C, 80 %", celsius(30.0), relative_humidity::from_percent(80.0), 1.8};

}  // namespace tankwright::room
