// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the sections of an assessment share, so that one net volume feeds salt, heat, drain-down and animals.
#pragma once

#include <optional>
#include <string>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>

namespace tankwright::decisions {

/// The water itself.
struct water_basis {
  tankwright::temperature temperature = celsius(25.0);
  practical_salinity salinity{35.0};
  absolute_pressure air = standard_atmosphere;
};

/// The system as the sections make it; each decision reads what it needs and says what is missing.
struct system_state {
  water_basis water{};
  std::optional<estimate<volume>> display_water{};  ///< in the display, net of rock and sand
  std::optional<estimate<volume>> solids{};         ///< that the display's water goes round: sand, rock, equipment
  std::optional<estimate<volume>> sump_water{};     ///< in the sump while the pump runs
  std::optional<area> display_surface{};            ///< free surface of the display
  std::optional<area> sump_surface{};
  std::optional<length> display_depth{};      ///< of the water
  std::optional<estimate<flow_rate>> flow{};  ///< of all returns together
  std::string why_no_display{};  ///< what kept the display's water from being worked out; empty where nothing did
  std::string why_no_sump{};     ///< the same of the sump's water and of the flow

  /// All the water, where at least the display is known.
  [[nodiscard]] std::optional<estimate<volume>> all_water() const {
    if (!display_water || !sump_water) return display_water;
    return estimate<volume>{display_water->low + sump_water->low, display_water->central + sump_water->central,
                            display_water->high + sump_water->high, display_water->reason};
  }
};

}  // namespace tankwright::decisions
