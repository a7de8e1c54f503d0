// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cases/hold_case.hpp>
#include <tankwright/room/evaporation.hpp>
#include <tankwright/water/density.hpp>

namespace tankwright::decisions {

namespace detail {

/// Fall of the level by evaporation from a still open surface in this air.
[[nodiscard]] inline estimate<velocity> fall_by_evaporation(temperature water, practical_salinity s,
                                                            const room::air& air) {
  const auto flux = room::evaporation({.water = {.temperature = water, .salinity = s},
                                       .air = air,
                                       .surfaces = {{.label = "display", .area = square_metres(1.0)}}})
                        .surfaces.front()
                        .per_area;
  const double rho = water::density(practical_salinity{0.0}, water).value();
  return map_rising(flux, [&](mass_flux m) { return velocity::from_value(m.value() / rho); });
}

}  // namespace detail

TANKWRIGHT_INLINE leak_test_case case_of(const plan::hold_inputs& in) {
  vessel::leak_test test = in.done.value();
  if (in.air && !test.readings.front().pan) {
    test.evaporation = detail::fall_by_evaporation(in.water, test.salinity, *in.air);
  }
  const auto result = vessel::read_leak_test(test);
  return {std::move(test), result};
}

}  // namespace tankwright::decisions
