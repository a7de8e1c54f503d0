// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/quantities.hpp>

#include <type_traits>

#include <boost/units/systems/si/dimensionless.hpp>

namespace tankwright {

// What the arithmetic must give: a flow for a while is a volume, a flux on an area is a mass flow, and so on.
static_assert(std::is_same_v<decltype(flow_rate{} * duration{}), volume>);
static_assert(std::is_same_v<decltype(volume{} / duration{}), flow_rate>);
static_assert(std::is_same_v<decltype(velocity{} * area{}), flow_rate>);
static_assert(std::is_same_v<decltype(flow_rate{} * mass_density{}), mass_flow>);
static_assert(std::is_same_v<decltype(mass_flux{} * area{}), mass_flow>);
static_assert(std::is_same_v<decltype(mass_flow{} * duration{}), mass>);
static_assert(std::is_same_v<decltype(mass_per_area{} * area{}), mass>);
static_assert(std::is_same_v<decltype(mass{} * specific_energy{}), energy>);
static_assert(std::is_same_v<decltype(mass{} * specific_heat_capacity{}), heat_capacity>);
static_assert(std::is_same_v<decltype(heat_capacity{} * temperature_difference{}), energy>);
static_assert(std::is_same_v<decltype(heat_flux{} * area{}), power>);
static_assert(std::is_same_v<decltype(thermal_transmittance{} * temperature_difference{}), heat_flux>);
static_assert(std::is_same_v<decltype(thermal_transmittance{} * area{}), heat_loss_coefficient>);
static_assert(std::is_same_v<decltype(thermal_conductivity{} / length{}), thermal_transmittance>);
static_assert(std::is_same_v<decltype(length{} / thermal_conductivity{}), thermal_resistance>);
static_assert(std::is_same_v<decltype(dynamic_viscosity{} / mass_density{}), kinematic_viscosity>);
static_assert(std::is_same_v<decltype(force{} / length{}), line_load>);
static_assert(std::is_same_v<decltype(force{} / area{}), pressure>);
static_assert(std::is_same_v<decltype(volume{} / mass{}), specific_volume>);
static_assert(std::is_same_v<decltype(amount_content{} * mass_density{}), amount_concentration>);
static_assert(std::is_same_v<decltype(area{} * area{}), second_moment_of_area>);
static_assert(std::is_same_v<decltype(duration{} * rate{}), boost::units::quantity<boost::units::si::dimensionless>>);

}  // namespace tankwright
