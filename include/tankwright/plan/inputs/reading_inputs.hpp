// SPDX-License-Identifier: BSL-1.0
/// @file
/// What instruments and kits read, as the engines take it.
#pragma once

#include <optional>
#include <tankwright/core/estimate.hpp>
#include <tankwright/plan/reading.hpp>
#include <tankwright/water/ammonia.hpp>
#include <tankwright/water/conductivity_meter.hpp>
#include <tankwright/water/hydrometer.hpp>
#include <tankwright/water/refractometer.hpp>
#include <variant>

namespace tankwright::plan {

/// What a conductivity probe shows at the water's own temperature, without compensation.
struct probe_observation {
  required<electrical_conductivity> shown;
  required<temperature> water;
};

/// A salinity that is simply known, or a reading of an instrument.
using salinity_input = std::variant<practical_salinity, water::hydrometer_observation, water::refractometer_observation,
                                    probe_observation, water::compensated_reading>;

/// How far a good probe is off after a calibration, in practical salinity.
inline constexpr double probe_uncertainty = 0.3;

/// A hydrometer as the engines take it.
///
/// @param h  a hydrometer that `validate` accepts
/// @return   scale, body and division
/// @throws   invalid_input where the scale is missing
/// @accuracy exact
/// @source   this library
[[nodiscard]] water::hydrometer inputs_of(const hydrometer& h);

/// A refractometer as the engines take it.
///
/// @param r  a refractometer that `validate` accepts
/// @return   scale, compensation and division
/// @throws   invalid_input where scale or compensation are missing
/// @accuracy exact
/// @source   this library
[[nodiscard]] water::refractometer inputs_of(const refractometer& r);

/// A reading as the engines take it.
///
/// @param r  a reading that `validate` accepts
/// @return   the salinity, or what the instrument shows, where and at which temperature
/// @throws   invalid_input (names what is missing)
/// @accuracy exact
/// @source   this library
[[nodiscard]] salinity_input inputs_of(const salinity_reading& r);

/// The practical salinity behind a reading, with the band of its instrument.
///
///   hydrometer: density; refractometer: index; probe: PSS-78; a known salinity has no band
///
/// @param reading one of the kinds of reading; ranges as in the header of its instrument
/// @return        practical salinity with its band
/// @throws        invalid_input, out_of_range (names the argument of the instrument's function)
/// @accuracy      half a division of a hydrometer or refractometer, 0.3 for a probe (common practice)
/// @source        the sources of `water/hydrometer.hpp`, `water/refractometer.hpp` and `water/conductivity.hpp`
[[nodiscard]] estimate<practical_salinity> salinity_of(const salinity_input& reading);

/// Total ammonia by the way that the kit counts it.
///
/// @param r  a reading that `validate` accepts
/// @return   total ammonia; nothing where none of its keys is given
/// @throws   invalid_input where a key is known and not usable
/// @accuracy molar masses
/// @source   `water/ammonia.hpp`
[[nodiscard]] std::optional<water::total_ammonia> total_ammonia_of(const ammonia_reading& r);

/// The pH on its scale.
///
/// @param r  a pH that `validate` accepts
/// @return   the pH; nothing where it is not given
/// @throws   invalid_input where the scale is missing
/// @accuracy exact
/// @source   this library
[[nodiscard]] std::optional<water::ph_reading> ph_of(const ph_with_scale& r);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/inputs/reading_inputs.ipp>
#endif
