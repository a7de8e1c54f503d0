// SPDX-License-Identifier: BSL-1.0
// Written by examples/formulas/make.py from the headers. Do not edit.
#pragma once

#include "../glue.hpp"
#include "water.hpp"
#include <tankwright/room/air.hpp>
#include <tankwright/room/condensation.hpp>
#include <tankwright/room/dehumidifier.hpp>
#include <tankwright/room/evaporation.hpp>
#include <tankwright/room/evaporation_laws.hpp>
#include <tankwright/room/heat_balance.hpp>
#include <tankwright/room/heat_store.hpp>
#include <tankwright/room/heater_fault.hpp>
#include <tankwright/room/humidity.hpp>
#include <tankwright/room/humidity_control.hpp>
#include <tankwright/room/humidity_course.hpp>
#include <tankwright/room/lighting.hpp>
#include <tankwright/room/moist_air.hpp>
#include <tankwright/room/ranges.hpp>
#include <tankwright/room/rating_point.hpp>
#include <tankwright/room/running_cost.hpp>
#include <tankwright/room/saturation.hpp>
#include <tankwright/room/supply.hpp>
#include <tankwright/room/tank_water.hpp>
#include <tankwright/room/temperature_course.hpp>
#include <tankwright/room/top_off.hpp>
#include <tankwright/room/wall.hpp>
#include <tankwright/room/warm_up.hpp>
#include <tankwright/room/well_mixed.hpp>
#include <tankwright/room/wet_bulb.hpp>

namespace tankwright_formulas {

template <>
struct io<::tankwright::room::evaporation_law> {
  static ::tankwright::room::evaporation_law read(const given& in);
  static void write(answer& out, const ::tankwright::room::evaporation_law& v);
  static ::tankwright::room::evaporation_law take(const double*& at) { return static_cast<::tankwright::room::evaporation_law>(whole_number(*at++, 0, 17)); }
  static void put(::tankwright::room::evaporation_law v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::room::agitation> {
  static ::tankwright::room::agitation read(const given& in);
  static void write_band(answer& out, const tw::estimate<::tankwright::room::agitation>& v) {
    out.band("agitation", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::room::agitation take(const double*& at) { return ::tankwright::room::agitation{io<double>::take(at)}; }
  static void put(const ::tankwright::room::agitation& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::room::electricity_price> {
  static ::tankwright::room::electricity_price read(const given& in);
  static void write_band(answer& out, const tw::estimate<::tankwright::room::electricity_price>& v) {
    out.band("electricity_price", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::room::electricity_price take(const double*& at) { return ::tankwright::room::electricity_price{io<double>::take(at)}; }
  static void put(const ::tankwright::room::electricity_price& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::room::humidity_ratio> {
  static ::tankwright::room::humidity_ratio read(const given& in);
  static void write(answer& out, const ::tankwright::room::humidity_ratio& v);
};

template <>
struct io<::tankwright::room::volumetric_heat> {
  static ::tankwright::room::volumetric_heat read(const given& in);
  static void write_band(answer& out, const tw::estimate<::tankwright::room::volumetric_heat>& v) {
    out.band("volumetric_heat", "J/(m^3 K)", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::room::volumetric_heat take(const double*& at) { return ::tankwright::room::volumetric_heat{io<double>::take(at)}; }
  static void put(const ::tankwright::room::volumetric_heat& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::room::air> {
  static ::tankwright::room::air read(const given& in);
  static ::tankwright::room::air fields(const given& in);
  static void write(answer& out, const ::tankwright::room::air& v);
  static ::tankwright::room::air take(const double*& at) {
    return {.temperature = io<::tankwright::temperature>::take(at), .humidity = io<::tankwright::relative_humidity>::take(at), .pressure = io<::tankwright::absolute_pressure>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::air& v, double*& at) {
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::relative_humidity>::put(v.humidity, at);
    io<::tankwright::absolute_pressure>::put(v.pressure, at);
  }
};

template <>
struct io<::tankwright::room::air_of_dew_point> {
  static ::tankwright::room::air_of_dew_point read(const given& in);
  static ::tankwright::room::air_of_dew_point fields(const given& in);
  static ::tankwright::room::air_of_dew_point take(const double*& at) {
    return {.temperature = io<::tankwright::temperature>::take(at), .dew_point = io<::tankwright::temperature>::take(at), .pressure = io<::tankwright::absolute_pressure>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::air_of_dew_point& v, double*& at) {
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::temperature>::put(v.dew_point, at);
    io<::tankwright::absolute_pressure>::put(v.pressure, at);
  }
};

template <>
struct io<::tankwright::room::air_of_humidity_ratio> {
  static ::tankwright::room::air_of_humidity_ratio read(const given& in);
  static ::tankwright::room::air_of_humidity_ratio fields(const given& in);
};

template <>
struct io<::tankwright::room::air_of_wet_bulb> {
  static ::tankwright::room::air_of_wet_bulb read(const given& in);
  static ::tankwright::room::air_of_wet_bulb fields(const given& in);
  static ::tankwright::room::air_of_wet_bulb take(const double*& at) {
    return {.temperature = io<::tankwright::temperature>::take(at), .wet_bulb = io<::tankwright::temperature>::take(at), .pressure = io<::tankwright::absolute_pressure>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::air_of_wet_bulb& v, double*& at) {
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::temperature>::put(v.wet_bulb, at);
    io<::tankwright::absolute_pressure>::put(v.pressure, at);
  }
};

template <>
struct io<::tankwright::room::building_element> {
  static ::tankwright::room::building_element read(const given& in);
  static ::tankwright::room::building_element fields(const given& in);
  static ::tankwright::room::building_element take(const double*& at) {
    return {.transmittance = io<::tankwright::thermal_transmittance>::take(at), .inside = io<::tankwright::temperature>::take(at), .outside = io<::tankwright::temperature>::take(at), .surface_resistance = io<::tankwright::thermal_resistance>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::building_element& v, double*& at) {
    io<::tankwright::thermal_transmittance>::put(v.transmittance, at);
    io<::tankwright::temperature>::put(v.inside, at);
    io<::tankwright::temperature>::put(v.outside, at);
    io<::tankwright::thermal_resistance>::put(v.surface_resistance, at);
  }
};

template <>
struct io<::tankwright::room::rating_point> {
  static ::tankwright::room::rating_point read(const given& in);
  static ::tankwright::room::rating_point fields(const given& in);
};

template <>
struct io<::tankwright::room::dehumidifier> {
  static ::tankwright::room::dehumidifier read(const given& in);
  static ::tankwright::room::dehumidifier fields(const given& in);
};

template <>
struct io<::tankwright::room::controlled_dehumidifier> {
  static ::tankwright::room::controlled_dehumidifier read(const given& in);
  static ::tankwright::room::controlled_dehumidifier fields(const given& in);
};

template <>
struct io<::tankwright::room::cover_material> {
  static ::tankwright::room::cover_material read(const given& in);
  static ::tankwright::room::cover_material fields(const given& in);
};

template <>
struct io<::tankwright::room::dehumidifier_duty> {
  static void write(answer& out, const ::tankwright::room::dehumidifier_duty& v);
  static void put(const ::tankwright::room::dehumidifier_duty& v, double*& at) {
    io<::tankwright::estimate<::tankwright::mass_flow>>::put(v.removal, at);
    io<::tankwright::power>::put(v.electrical, at);
    io<::tankwright::estimate<::tankwright::power>>::put(v.heat_to_room, at);
  }
};

template <>
struct io<::tankwright::room::dehumidifier_size> {
  static void write(answer& out, const ::tankwright::room::dehumidifier_size& v);
  static void put(const ::tankwright::room::dehumidifier_size& v, double*& at) {
    io<::tankwright::estimate<::tankwright::mass_flow>>::put(v.load, at);
    io<::tankwright::estimate<::tankwright::mass_flow>>::put(v.rated, at);
    io<::tankwright::estimate<double>>::put(v.share_of_label, at);
    io<::tankwright::mass_flow>::put(v.suggested, at);
    io<::tankwright::estimate<::tankwright::power>>::put(v.latent_heat_to_room, at);
    io<bool>::put(v.needed, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::room::running_cost_result> {
  static void write(answer& out, const ::tankwright::room::running_cost_result& v);
  static void put(const ::tankwright::room::running_cost_result& v, double*& at) {
    io<::tankwright::estimate<::tankwright::energy>>::put(v.per_day, at);
    io<::tankwright::estimate<::tankwright::energy>>::put(v.per_year, at);
    io<::tankwright::estimate<double>>::put(v.cost_per_day, at);
    io<::tankwright::estimate<double>>::put(v.cost_per_year, at);
  }
};

template <>
struct io<::tankwright::room::device_cost> {
  static void write(answer& out, const ::tankwright::room::device_cost& v);
};

template <>
struct io<::tankwright::room::drifting_room> {
  static ::tankwright::room::drifting_room read(const given& in);
  static ::tankwright::room::drifting_room fields(const given& in);
  static ::tankwright::room::drifting_room take(const double*& at) {
    return {.settles_at = io<::tankwright::temperature>::take(at), .time_constant = io<::tankwright::duration>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::drifting_room& v, double*& at) {
    io<::tankwright::temperature>::put(v.settles_at, at);
    io<::tankwright::duration>::put(v.time_constant, at);
  }
};

template <>
struct io<::tankwright::room::tank_water> {
  static ::tankwright::room::tank_water read(const given& in);
  static ::tankwright::room::tank_water fields(const given& in);
  static ::tankwright::room::tank_water take(const double*& at) {
    return {.temperature = io<::tankwright::temperature>::take(at), .salinity = io<::tankwright::practical_salinity>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::tank_water& v, double*& at) {
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::practical_salinity>::put(v.salinity, at);
  }
};

template <>
struct io<::tankwright::room::wet_surface> {
  static ::tankwright::room::wet_surface read(const given& in);
  static ::tankwright::room::wet_surface fields(const given& in);
};

template <>
struct io<::tankwright::room::evaporating_water> {
  static ::tankwright::room::evaporating_water read(const given& in);
  static ::tankwright::room::evaporating_water fields(const given& in);
};

template <>
struct io<::tankwright::room::surface_evaporation> {
  static void write(answer& out, const ::tankwright::room::surface_evaporation& v);
};

template <>
struct io<::tankwright::room::evaporation_estimate> {
  static void write(answer& out, const ::tankwright::room::evaporation_estimate& v);
};

template <>
struct io<::tankwright::room::evaporation_law_data> {
  static void write(answer& out, const ::tankwright::room::evaporation_law_data& v);
};

template <>
struct io<::tankwright::room::heat_budget> {
  static void write(answer& out, const ::tankwright::room::heat_budget& v);
  static void put(const ::tankwright::room::heat_budget& v, double*& at) {
    io<::tankwright::estimate<::tankwright::power>>::put(v.evaporation, at);
    io<::tankwright::estimate<::tankwright::power>>::put(v.convection, at);
    io<::tankwright::estimate<::tankwright::power>>::put(v.make_up, at);
    io<::tankwright::power>::put(v.radiation, at);
    io<::tankwright::power>::put(v.covers, at);
    io<::tankwright::power>::put(v.walls, at);
    io<::tankwright::power>::put(v.gains, at);
    io<::tankwright::estimate<::tankwright::power>>::put(v.net, at);
  }
};

template <>
struct io<::tankwright::room::heat_equipment> {
  static void write(answer& out, const ::tankwright::room::heat_equipment& v);
  static void put(const ::tankwright::room::heat_equipment& v, double*& at) {
    io<::tankwright::estimate<::tankwright::power>>::put(v.needed, at);
    io<::tankwright::power>::put(v.suggested, at);
    io<bool>::put(v.is_needed, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::room::heat_source> {
  static ::tankwright::room::heat_source read(const given& in);
  static ::tankwright::room::heat_source fields(const given& in);
};

template <>
struct io<::tankwright::room::ventilated_room> {
  static ::tankwright::room::ventilated_room read(const given& in);
  static ::tankwright::room::ventilated_room fields(const given& in);
  static ::tankwright::room::ventilated_room take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .air_changes = io<::tankwright::rate>::take(at), .temperature = io<::tankwright::temperature>::take(at), .outdoor = io<::tankwright::room::air>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::ventilated_room& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::rate>::put(v.air_changes, at);
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::room::air>::put(v.outdoor, at);
  }
};

template <>
struct io<::tankwright::room::moisture_source> {
  static ::tankwright::room::moisture_source read(const given& in);
  static ::tankwright::room::moisture_source fields(const given& in);
};

template <>
struct io<::tankwright::room::tank_room> {
  static ::tankwright::room::tank_room read(const given& in);
  static ::tankwright::room::tank_room fields(const given& in);
};

template <>
struct io<::tankwright::room::humidity_course_request> {
  static ::tankwright::room::humidity_course_request read(const given& in);
  static ::tankwright::room::humidity_course_request fields(const given& in);
};

template <>
struct io<::tankwright::room::humidity_point> {
  static void write(answer& out, const ::tankwright::room::humidity_point& v);
  static void put(const ::tankwright::room::humidity_point& v, double*& at) {
    io<::tankwright::duration>::put(v.time, at);
    io<::tankwright::room::air>::put(v.air, at);
    io<::tankwright::mass>::put(v.vapour, at);
    io<::tankwright::mass>::put(v.evaporated, at);
    io<::tankwright::mass>::put(v.from_sources, at);
    io<::tankwright::mass>::put(v.ventilated, at);
    io<::tankwright::mass>::put(v.dehumidified, at);
    io<::tankwright::mass>::put(v.condensed, at);
  }
};

template <>
struct io<::tankwright::room::humidity_start> {
  static ::tankwright::room::humidity_start read(const given& in);
  static ::tankwright::room::humidity_start fields(const given& in);
};

template <>
struct io<::tankwright::room::lamp_over_water> {
  static ::tankwright::room::lamp_over_water read(const given& in);
  static ::tankwright::room::lamp_over_water fields(const given& in);
  static ::tankwright::room::lamp_over_water take(const double*& at) {
    return {.height = io<::tankwright::length>::take(at), .depth = io<::tankwright::length>::take(at), .through_a_metre = io<::tankwright::proportion>::take(at), .index = io<::tankwright::water::refractive_index>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::lamp_over_water& v, double*& at) {
    io<::tankwright::length>::put(v.height, at);
    io<::tankwright::length>::put(v.depth, at);
    io<::tankwright::proportion>::put(v.through_a_metre, at);
    io<::tankwright::water::refractive_index>::put(v.index, at);
  }
};

template <>
struct io<::tankwright::room::wall_layer> {
  static ::tankwright::room::wall_layer read(const given& in);
  static ::tankwright::room::wall_layer fields(const given& in);
};

template <>
struct io<::tankwright::room::layered_wall> {
  static ::tankwright::room::layered_wall read(const given& in);
  static ::tankwright::room::layered_wall fields(const given& in);
};

template <>
struct io<::tankwright::room::linear_warm_up> {
  static ::tankwright::room::linear_warm_up read(const given& in);
  static ::tankwright::room::linear_warm_up fields(const given& in);
  static ::tankwright::room::linear_warm_up take(const double*& at) {
    return {.heat_capacity = io<::tankwright::heat_capacity>::take(at), .from = io<::tankwright::temperature>::take(at), .to = io<::tankwright::temperature>::take(at), .heater = io<::tankwright::power>::take(at), .loss = io<::tankwright::heat_loss_coefficient>::take(at), .stands_at = io<::tankwright::temperature>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::linear_warm_up& v, double*& at) {
    io<::tankwright::heat_capacity>::put(v.heat_capacity, at);
    io<::tankwright::temperature>::put(v.from, at);
    io<::tankwright::temperature>::put(v.to, at);
    io<::tankwright::power>::put(v.heater, at);
    io<::tankwright::heat_loss_coefficient>::put(v.loss, at);
    io<::tankwright::temperature>::put(v.stands_at, at);
  }
};

template <>
struct io<::tankwright::room::moisture_balance> {
  static void write(answer& out, const ::tankwright::room::moisture_balance& v);
  static void put(const ::tankwright::room::moisture_balance& v, double*& at) {
    io<::tankwright::room::air>::put(v.air, at);
    io<::tankwright::mass_flow>::put(v.evaporation, at);
    io<::tankwright::mass_flow>::put(v.sources, at);
    io<::tankwright::mass_flow>::put(v.ventilation, at);
    io<::tankwright::mass_flow>::put(v.dehumidified, at);
    io<::tankwright::mass_flow>::put(v.condensing, at);
    io<::tankwright::proportion>::put(v.duty, at);
    io<bool>::put(v.saturated, at);
  }
};

template <>
struct io<::tankwright::room::open_water> {
  static ::tankwright::room::open_water read(const given& in);
  static ::tankwright::room::open_water fields(const given& in);
  static ::tankwright::room::open_water take(const double*& at) {
    return {.water = io<::tankwright::room::tank_water>::take(at), .air = io<::tankwright::room::air>::take(at), .air_speed = io<::tankwright::velocity>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::open_water& v, double*& at) {
    io<::tankwright::room::tank_water>::put(v.water, at);
    io<::tankwright::room::air>::put(v.air, at);
    io<::tankwright::velocity>::put(v.air_speed, at);
  }
};

template <>
struct io<::tankwright::room::plugged_in> {
  static ::tankwright::room::plugged_in read(const given& in);
  static ::tankwright::room::plugged_in fields(const given& in);
};

template <>
struct io<::tankwright::room::reservoir_limit> {
  static void write(answer& out, const ::tankwright::room::reservoir_limit& v);
};

template <>
struct io<::tankwright::room::reservoir_request> {
  static ::tankwright::room::reservoir_request read(const given& in);
  static ::tankwright::room::reservoir_request fields(const given& in);
  static ::tankwright::room::reservoir_request take(const double*& at) {
    return {.water = io<::tankwright::room::tank_water>::take(at), .volume = io<::tankwright::volume>::take(at), .lowest = io<::tankwright::practical_salinity>::take(at), .free_volume = io<::tankwright::volume>::take(at), .fresh_water = io<::tankwright::temperature>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::reservoir_request& v, double*& at) {
    io<::tankwright::room::tank_water>::put(v.water, at);
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::practical_salinity>::put(v.lowest, at);
    io<::tankwright::volume>::put(v.free_volume, at);
    io<::tankwright::temperature>::put(v.fresh_water, at);
  }
};

template <>
struct io<::tankwright::room::return_chamber> {
  static ::tankwright::room::return_chamber read(const given& in);
  static ::tankwright::room::return_chamber fields(const given& in);
  static ::tankwright::room::return_chamber take(const double*& at) {
    return {.surface = io<::tankwright::area>::take(at), .top_off = io<::tankwright::estimate<::tankwright::flow_rate>>::take(at), .running_level = io<::tankwright::length>::take(at), .lowest_level = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::return_chamber& v, double*& at) {
    io<::tankwright::area>::put(v.surface, at);
    io<::tankwright::estimate<::tankwright::flow_rate>>::put(v.top_off, at);
    io<::tankwright::length>::put(v.running_level, at);
    io<::tankwright::length>::put(v.lowest_level, at);
  }
};

template <>
struct io<::tankwright::room::return_chamber_result> {
  static void write(answer& out, const ::tankwright::room::return_chamber_result& v);
  static void put(const ::tankwright::room::return_chamber_result& v, double*& at) {
    io<::tankwright::estimate<::tankwright::velocity>>::put(v.fall, at);
    io<::tankwright::estimate<::tankwright::duration>>::put(v.until_lowest, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::room::room_humidity> {
  static void write(answer& out, const ::tankwright::room::room_humidity& v);
};

template <>
struct io<::tankwright::room::running_costs_result> {
  static void write(answer& out, const ::tankwright::room::running_costs_result& v);
};

template <>
struct io<::tankwright::room::running_device> {
  static ::tankwright::room::running_device read(const given& in);
  static ::tankwright::room::running_device fields(const given& in);
};

template <>
struct io<::tankwright::room::running_load> {
  static ::tankwright::room::running_load read(const given& in);
  static ::tankwright::room::running_load fields(const given& in);
  static ::tankwright::room::running_load take(const double*& at) {
    return {.heat = io<::tankwright::estimate<::tankwright::power>>::take(at), .price = io<::tankwright::room::electricity_price>::take(at), .performance = io<double>::take(at), .on = io<::tankwright::proportion>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::running_load& v, double*& at) {
    io<::tankwright::estimate<::tankwright::power>>::put(v.heat, at);
    io<::tankwright::room::electricity_price>::put(v.price, at);
    io<double>::put(v.performance, at);
    io<::tankwright::proportion>::put(v.on, at);
  }
};

template <>
struct io<::tankwright::room::stored_energy> {
  static ::tankwright::room::stored_energy read(const given& in);
  static ::tankwright::room::stored_energy fields(const given& in);
  static ::tankwright::room::stored_energy take(const double*& at) {
    return {.capacity = io<::tankwright::energy>::take(at), .usable = io<::tankwright::proportion>::take(at), .inverter = io<::tankwright::proportion>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::stored_energy& v, double*& at) {
    io<::tankwright::energy>::put(v.capacity, at);
    io<::tankwright::proportion>::put(v.usable, at);
    io<::tankwright::proportion>::put(v.inverter, at);
  }
};

template <>
struct io<::tankwright::room::tank_wall> {
  static ::tankwright::room::tank_wall read(const given& in);
  static ::tankwright::room::tank_wall fields(const given& in);
};

template <>
struct io<::tankwright::room::tank_heat> {
  static ::tankwright::room::tank_heat read(const given& in);
  static ::tankwright::room::tank_heat fields(const given& in);
};

template <>
struct io<::tankwright::room::stuck_heater> {
  static ::tankwright::room::stuck_heater read(const given& in);
  static ::tankwright::room::stuck_heater fields(const given& in);
};

template <>
struct io<::tankwright::room::temperature_crossing> {
  static void write(answer& out, const ::tankwright::room::temperature_crossing& v);
};

template <>
struct io<::tankwright::room::stuck_heater_result> {
  static void write(answer& out, const ::tankwright::room::stuck_heater_result& v);
};

template <>
struct io<::tankwright::room::stuck_valve_result> {
  static void write(answer& out, const ::tankwright::room::stuck_valve_result& v);
  static void put(const ::tankwright::room::stuck_valve_result& v, double*& at) {
    io<::tankwright::practical_salinity>::put(v.salinity, at);
    io<::tankwright::volume>::put(v.overflow, at);
    io<bool>::put(v.too_fresh, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::room::surface_verdict> {
  static void write(answer& out, const ::tankwright::room::surface_verdict& v);
  static void put(const ::tankwright::room::surface_verdict& v, double*& at) {
    io<::tankwright::temperature>::put(v.surface, at);
    io<::tankwright::temperature>::put(v.dew_point, at);
    io<::tankwright::temperature_difference>::put(v.margin, at);
    io<::tankwright::relative_humidity>::put(v.humidity, at);
    io<bool>::put(v.drips, at);
    io<bool>::put(v.mould, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::room::temperature_change> {
  static void write(answer& out, const ::tankwright::room::temperature_change& v);
  static void put(const ::tankwright::room::temperature_change& v, double*& at) {
    io<::tankwright::estimate<::tankwright::temperature_difference>>::put(v.largest, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::room::temperature_point> {
  static void write(answer& out, const ::tankwright::room::temperature_point& v);
  static void put(const ::tankwright::room::temperature_point& v, double*& at) {
    io<::tankwright::duration>::put(v.time, at);
    io<::tankwright::estimate<::tankwright::temperature>>::put(v.water, at);
  }
};

template <>
struct io<::tankwright::room::temperature_course> {
  static void write(answer& out, const ::tankwright::room::temperature_course& v);
};

template <>
struct io<::tankwright::room::uncontrolled_tank> {
  static ::tankwright::room::uncontrolled_tank read(const given& in);
  static ::tankwright::room::uncontrolled_tank fields(const given& in);
};

template <>
struct io<::tankwright::room::ventilation_size> {
  static void write(answer& out, const ::tankwright::room::ventilation_size& v);
  static void put(const ::tankwright::room::ventilation_size& v, double*& at) {
    io<::tankwright::estimate<::tankwright::rate>>::put(v.air_changes, at);
    io<::tankwright::estimate<::tankwright::flow_rate>>::put(v.outdoor_air, at);
    io<::tankwright::estimate<::tankwright::mass_flow>>::put(v.dry_air, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::room::warm_sheet> {
  static ::tankwright::room::warm_sheet read(const given& in);
  static ::tankwright::room::warm_sheet fields(const given& in);
  static ::tankwright::room::warm_sheet take(const double*& at) {
    return {.area = io<::tankwright::area>::take(at), .thickness = io<::tankwright::length>::take(at), .heat = io<::tankwright::room::volumetric_heat>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::room::warm_sheet& v, double*& at) {
    io<::tankwright::area>::put(v.area, at);
    io<::tankwright::length>::put(v.thickness, at);
    io<::tankwright::room::volumetric_heat>::put(v.heat, at);
  }
};

template <>
struct io<::tankwright::room::warm_up_request> {
  static ::tankwright::room::warm_up_request read(const given& in);
  static ::tankwright::room::warm_up_request fields(const given& in);
};

template <>
struct io<::tankwright::room::warm_up_result> {
  static void write(answer& out, const ::tankwright::room::warm_up_result& v);
};

template <>
struct io<::tankwright::room::well_mixed_room> {
  static ::tankwright::room::well_mixed_room read(const given& in);
  static ::tankwright::room::well_mixed_room fields(const given& in);
};

}  // namespace tankwright_formulas
