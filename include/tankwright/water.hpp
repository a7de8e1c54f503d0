// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the water is and how it is made.
#pragma once

#include <tankwright/water/adjust.hpp>
#include <tankwright/water/alkalinity.hpp>
#include <tankwright/water/ammonia.hpp>
#include <tankwright/water/ammonium_pka.hpp>
#include <tankwright/water/blend.hpp>
#include <tankwright/water/composition.hpp>
#include <tankwright/water/conductivity.hpp>
#include <tankwright/water/conductivity_meter.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/density_at_depth.hpp>
#include <tankwright/water/density_eos80.hpp>
#include <tankwright/water/drift.hpp>
#include <tankwright/water/exchange.hpp>
#include <tankwright/water/freezing.hpp>
#include <tankwright/water/gravity_scale.hpp>
#include <tankwright/water/heat.hpp>
#include <tankwright/water/hydrometer.hpp>
#include <tankwright/water/liquid.hpp>
#include <tankwright/water/mass_concentration.hpp>
#include <tankwright/water/oxygen.hpp>
#include <tankwright/water/ph.hpp>
#include <tankwright/water/refractive_index.hpp>
#include <tankwright/water/refractometer.hpp>
#include <tankwright/water/refractometer_scale.hpp>
#include <tankwright/water/salinity.hpp>
#include <tankwright/water/salt_mix.hpp>
#include <tankwright/water/specific_gravity.hpp>
#include <tankwright/water/surface_tension.hpp>
#include <tankwright/water/thermal_conductivity.hpp>
#include <tankwright/water/vapour.hpp>
#include <tankwright/water/viscosity.hpp>
#include <tankwright/water/well_mixed.hpp>
