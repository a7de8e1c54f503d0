// SPDX-License-Identifier: BSL-1.0
/// @file
/// The quantities of the library: Boost.Units quantities in SI, held as `double`.
///
/// A public function takes and returns these by name, so a volume given for a flow does not compile.
/// Make them with the makers of `units.hpp` and `temperature.hpp`, read them with the readers there.
#pragma once

#include <boost/units/absolute.hpp>
#include <boost/units/derived_dimension.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/acceleration.hpp>
#include <boost/units/systems/si/amount.hpp>
#include <boost/units/systems/si/area.hpp>
#include <boost/units/systems/si/base.hpp>
#include <boost/units/systems/si/conductivity.hpp>
#include <boost/units/systems/si/current.hpp>
#include <boost/units/systems/si/dynamic_viscosity.hpp>
#include <boost/units/systems/si/electric_potential.hpp>
#include <boost/units/systems/si/energy.hpp>
#include <boost/units/systems/si/force.hpp>
#include <boost/units/systems/si/frequency.hpp>
#include <boost/units/systems/si/kinematic_viscosity.hpp>
#include <boost/units/systems/si/length.hpp>
#include <boost/units/systems/si/mass.hpp>
#include <boost/units/systems/si/mass_density.hpp>
#include <boost/units/systems/si/plane_angle.hpp>
#include <boost/units/systems/si/power.hpp>
#include <boost/units/systems/si/pressure.hpp>
#include <boost/units/systems/si/surface_tension.hpp>
#include <boost/units/systems/si/temperature.hpp>
#include <boost/units/systems/si/time.hpp>
#include <boost/units/systems/si/velocity.hpp>
#include <boost/units/systems/si/volume.hpp>

namespace tankwright {

namespace core {

namespace bu = boost::units;

/// The SI quantity of a dimension. The dimensions below name only what is in them: Boost.Units takes one with an
/// exponent of zero for a different dimension.
template <class Dimension>
using si_quantity = bu::quantity<bu::unit<Dimension, bu::si::system>>;

template <int L, int T>
using length_time = typename bu::derived_dimension<bu::length_base_dimension, L, bu::time_base_dimension, T>::type;
template <int M, int T>
using mass_time = typename bu::derived_dimension<bu::mass_base_dimension, M, bu::time_base_dimension, T>::type;
template <int L, int M>
using length_mass = typename bu::derived_dimension<bu::length_base_dimension, L, bu::mass_base_dimension, M>::type;
template <int L, int M, int T>
using length_mass_time = typename bu::derived_dimension<bu::length_base_dimension, L, bu::mass_base_dimension, M,
                                                        bu::time_base_dimension, T>::type;
template <int L>
using amount_length = typename bu::derived_dimension<bu::length_base_dimension, L, bu::amount_base_dimension, 1>::type;
template <int M>
using amount_mass = typename bu::derived_dimension<bu::mass_base_dimension, M, bu::amount_base_dimension, 1>::type;
template <int M, int T, int K>
using mass_time_temperature = typename bu::derived_dimension<bu::mass_base_dimension, M, bu::time_base_dimension, T,
                                                             bu::temperature_base_dimension, K>::type;
template <int L, int T, int K>
using length_time_temperature = typename bu::derived_dimension<bu::length_base_dimension, L, bu::time_base_dimension, T,
                                                               bu::temperature_base_dimension, K>::type;
template <int L, int M, int T, int K>
using length_mass_time_temperature =
    typename bu::derived_dimension<bu::length_base_dimension, L, bu::mass_base_dimension, M, bu::time_base_dimension, T,
                                   bu::temperature_base_dimension, K>::type;

}  // namespace core

// Geometry and time.
using length = boost::units::quantity<boost::units::si::length>;
using head = length;  ///< metres of the flowing liquid
using area = boost::units::quantity<boost::units::si::area>;
using volume = boost::units::quantity<boost::units::si::volume>;
using second_moment_of_area =
    core::si_quantity<core::bu::derived_dimension<core::bu::length_base_dimension, 4>::type>;  ///< m^4
using specific_surface =
    core::si_quantity<core::bu::derived_dimension<core::bu::length_base_dimension, -1>::type>;  ///< m^2 per m^3
using angle = boost::units::quantity<boost::units::si::plane_angle>;
using duration = boost::units::quantity<boost::units::si::time>;
using rate = boost::units::quantity<boost::units::si::frequency>;  ///< 1/s; air changes, decay rates

// Motion and flow.
using velocity = boost::units::quantity<boost::units::si::velocity>;
using acceleration = boost::units::quantity<boost::units::si::acceleration>;
using flow_rate = core::si_quantity<core::length_time<3, -1>>;  ///< volume per time, m^3/s
using hydraulic_resistance =
    core::si_quantity<core::length_time<-2, 1>>;                         ///< head per flow, s/m^2; slope of a head loss
using mass_flow = core::si_quantity<core::mass_time<1, -1>>;             ///< kg/s
using mass_flux = core::si_quantity<core::length_mass_time<-2, 1, -1>>;  ///< kg/(m^2 s); evaporation, areal removal

// Mass, force, stress.
using mass = boost::units::quantity<boost::units::si::mass>;
using mass_density = boost::units::quantity<boost::units::si::mass_density>;  ///< kg/m^3
using mass_concentration = mass_density;  ///< mass of a solute per volume of water, kg/m^3
using mass_per_area = core::si_quantity<core::length_mass<-2, 1>>;
using force = boost::units::quantity<boost::units::si::force>;
using line_load = boost::units::quantity<boost::units::si::surface_tension>;  ///< N/m
using surface_tension = line_load;
using moment = boost::units::quantity<boost::units::si::energy>;  ///< bending moment, N m
using moment_per_width = force;  ///< bending moment of a plate per metre of width, N m/m
/// A pressure difference, a stress or a modulus, Pa. A pressure against a datum is `gauge_pressure` or
/// `absolute_pressure` (thin_types.hpp).
using pressure = boost::units::quantity<boost::units::si::pressure>;
using stress = pressure;

// Heat.
using temperature_difference = boost::units::quantity<boost::units::si::temperature>;  ///< K
/// Relative change per kelvin, 1/K.
using temperature_coefficient =
    core::si_quantity<core::bu::derived_dimension<core::bu::temperature_base_dimension, -1>::type>;
using energy = boost::units::quantity<boost::units::si::energy>;
using power = boost::units::quantity<boost::units::si::power>;
using specific_energy = core::si_quantity<core::length_time<2, -2>>;  ///< J/kg; latent heat, enthalpy
using specific_heat_capacity = core::si_quantity<core::length_time_temperature<2, -2, -1>>;        ///< J/(kg K)
using heat_capacity = core::si_quantity<core::length_mass_time_temperature<2, 1, -2, -1>>;         ///< J/K
using heat_flux = core::si_quantity<core::mass_time<1, -3>>;                                       ///< W/m^2
using thermal_conductivity = core::si_quantity<core::length_mass_time_temperature<1, 1, -3, -1>>;  ///< W/(m K)
using thermal_transmittance = core::si_quantity<core::mass_time_temperature<1, -3, -1>>;  ///< U-value, W/(m^2 K)
using thermal_resistance = core::si_quantity<core::mass_time_temperature<-1, 3, 1>>;      ///< m^2 K/W
using heat_loss_coefficient = core::si_quantity<core::length_mass_time_temperature<2, 1, -3, -1>>;  ///< W/K

// Electricity.
using electric_current = boost::units::quantity<boost::units::si::current>;    ///< A
using voltage = boost::units::quantity<boost::units::si::electric_potential>;  ///< V

// Properties of the water.
using dynamic_viscosity = boost::units::quantity<boost::units::si::dynamic_viscosity>;      ///< Pa s
using kinematic_viscosity = boost::units::quantity<boost::units::si::kinematic_viscosity>;  ///< m^2/s
using electrical_conductivity = boost::units::quantity<boost::units::si::conductivity>;     ///< S/m
using specific_volume = core::si_quantity<core::length_mass<3, -1>>;                        ///< m^3/kg
using amount_concentration = core::si_quantity<core::amount_length<-3>>;                    ///< mol/m^3
using amount_content = core::si_quantity<core::amount_mass<-1>>;                            ///< mol per kg of water

/// A temperature is a point on a scale, not an amount; a step of temperature is `temperature_difference`.
using temperature = boost::units::quantity<boost::units::absolute<boost::units::si::temperature>>;

}  // namespace tankwright
