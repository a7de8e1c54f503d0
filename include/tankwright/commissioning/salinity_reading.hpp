// SPDX-License-Identifier: BSL-1.0
/// @file
/// How the salinity of some water is known: by any of the instruments that a person may hold.
#pragma once

#include <variant>

#include <tankwright/water/conductivity_meter.hpp>
#include <tankwright/water/hydrometer.hpp>
#include <tankwright/water/refractometer.hpp>

namespace tankwright::commissioning {

/// What a conductivity probe shows at the water's own temperature, without compensation.
struct probe_observation {
  required<electrical_conductivity> shown;
  required<temperature> water;
};

/// A salinity that is simply known, or a reading of an instrument.
using salinity_reading = std::variant<practical_salinity, water::hydrometer_observation,
                                      water::refractometer_observation, probe_observation, water::compensated_reading>;

/// How far a good probe is off after a calibration, in practical salinity.
inline constexpr double probe_uncertainty = 0.3;

namespace detail {

[[nodiscard]] inline estimate<practical_salinity> probe_band(practical_salinity s) {
  const double low = s.value() > probe_uncertainty ? s.value() - probe_uncertainty : 0.0;
  return {practical_salinity{low}, s, practical_salinity{s.value() + probe_uncertainty},
          "a calibrated probe, 0.3 of salinity (common practice)"};
}

}  // namespace detail

/// The practical salinity behind a reading, with the band of its instrument.
///
///   hydrometer: density; refractometer: index; probe: PSS-78; a known salinity has no band
///
/// @param reading one of the kinds of reading; ranges as in the header of its instrument
/// @return        practical salinity with its band
/// @throws        invalid_input, out_of_range (names the argument of the instrument's function)
/// @accuracy      half a division of a hydrometer or refractometer, 0.3 for a probe (common practice)
/// @source        the sources of `water/hydrometer.hpp`, `water/refractometer.hpp` and `water/conductivity.hpp`
[[nodiscard]] inline estimate<practical_salinity> salinity_of(const salinity_reading& reading) {
  struct reader {
    estimate<practical_salinity> operator()(practical_salinity s) const {
      core::check("tankwright::commissioning::salinity_of", water::practical_salinity_limits, s.value());
      return {s, s, s, "given"};
    }
    estimate<practical_salinity> operator()(const water::hydrometer_observation& seen) const {
      return water::salinity_from_hydrometer(seen);
    }
    estimate<practical_salinity> operator()(const water::refractometer_observation& seen) const {
      return water::salinity_from_refractometer(seen);
    }
    estimate<practical_salinity> operator()(const probe_observation& seen) const {
      return detail::probe_band(water::salinity_from_conductivity(seen.shown, seen.water));
    }
    estimate<practical_salinity> operator()(const water::compensated_reading& seen) const {
      return detail::probe_band(water::salinity_from_conductivity(seen));
    }
  };
  return std::visit(reader{}, reading);
}

}  // namespace tankwright::commissioning
