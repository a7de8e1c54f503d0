// SPDX-License-Identifier: BSL-1.0
/// @file
/// What descriptions share: how well things are usually known, and what can exist at all. The doubts are common
/// practice, no source; a plan that knows better says so beside the number.
#pragma once

#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/plan/description.hpp>

namespace tankwright::plan::usual {

// ---- doubts ----
inline constexpr length tape = millimetres(3.0);                    ///< a tape measure over a built thing
inline constexpr length rule = millimetres(0.5);                    ///< a steel rule or calliper on a part
inline constexpr length water_mark = millimetres(4.0);              ///< a water level that moves
inline const usual_doubt surfaces = known_within(percent(3.0));     ///< an area from two lengths
inline const usual_doubt weighed = known_within(percent(2.0));      ///< a bathroom or kitchen scale
inline const usual_doubt metered = known_within(percent(2.0));      ///< a volume by water meter or marked vessel
inline const usual_doubt label_flow = known_within(percent(10.0));  ///< what a label says of a pump
inline const usual_doubt fittings = known_within(percent(30.0));    ///< a sum of loss coefficients
inline const usual_doubt label_power = known_within(percent(10.0));
inline const usual_doubt given_evaporation = known_within(percent(35.0));  ///< as good as the law that gives it
inline const usual_doubt filled_flask = known_within(percent(0.1));        ///< a measuring flask to its mark
inline constexpr mass weighed_flask = grams(0.5);                          ///< on a kitchen scale that shows grams
inline const temperature_difference thermometer = kelvin_steps(0.5);
inline constexpr practical_salinity read_salinity{0.5};  ///< that somebody read and wrote down

/// A doubt of so much either way, without its type.
///
/// @param half half of its width
/// @return     the doubt
/// @accuracy   exact
/// @source     this library
template <class Q>
[[nodiscard]] constexpr usual_doubt doubt_of(const Q& half) noexcept {
  return {doubt_kind::distance, core::si_number(half)};
}

// ---- what can exist ----
inline const range_of<length> building{metres(0.0), metres(100.0)};    ///< any length of a build, nothing included
inline const range_of<length> built{millimetres(1.0), metres(100.0)};  ///< any length of a build
inline const range_of<length> part{millimetres(0.1), metres(10.0)};    ///< thickness or bore of a part
inline const range_of<area> surface{square_metres(1e-6), square_metres(1e4)};
inline const range_of<area> surface_or_none{square_metres(0.0), square_metres(1e4)};
inline const range_of<volume> water{litres(0.001), litres(1e7)};
inline const range_of<volume> water_or_none{litres(0.0), litres(1e7)};
inline const range_of<mass> weight{grams(0.001), kilograms(1e6)};
inline const range_of<mass> weight_or_none{grams(0.0), kilograms(1e6)};
inline const range_of<temperature> liquid_water{celsius(-5.0), celsius(60.0)};
inline const range_of<temperature> air{celsius(-60.0), celsius(60.0)};
inline const range_of<duration> time{seconds(0.0), days(36500.0)};
inline const range_of<duration> span{seconds(1.0), days(36500.0)};
inline const range_of<proportion> part_of_whole{fraction(0.0), fraction(1.0)};
inline const range_of<practical_salinity> salinity{practical_salinity{0.0}, practical_salinity{300.0}};  ///< to brine
inline const range_of<power> electricity{watts(0.0), watts(1e6)};

}  // namespace tankwright::plan::usual
