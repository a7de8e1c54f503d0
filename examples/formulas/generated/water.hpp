// SPDX-License-Identifier: BSL-1.0
// Written by examples/formulas/make.py from the headers. Do not edit.
#pragma once

#include "../glue.hpp"
#include <tankwright/water/adjust.hpp>
#include <tankwright/water/alkalinity.hpp>
#include <tankwright/water/ammonia.hpp>
#include <tankwright/water/ammonium_pka.hpp>
#include <tankwright/water/blend.hpp>
#include <tankwright/water/brine.hpp>
#include <tankwright/water/carbonate.hpp>
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
#include <tankwright/water/hardness_drift.hpp>
#include <tankwright/water/heat.hpp>
#include <tankwright/water/hydrometer.hpp>
#include <tankwright/water/kernel.hpp>
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
#include <tankwright/water/weighed_volume.hpp>
#include <tankwright/water/well_mixed.hpp>

namespace tankwright_formulas {

template <>
struct io<::tankwright::edge> {
  static void write(answer& out, const ::tankwright::edge& v);
  static ::tankwright::edge take(const double*& at) { return static_cast<::tankwright::edge>(whole_number(*at++, 0, 1)); }
  static void put(::tankwright::edge v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::standing> {
  static ::tankwright::standing read(const given& in);
  static void write(answer& out, const ::tankwright::standing& v);
  static ::tankwright::standing take(const double*& at) { return static_cast<::tankwright::standing>(whole_number(*at++, 0, 3)); }
  static void put(::tankwright::standing v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::water::constituent> {
  static ::tankwright::water::constituent read(const given& in);
  static ::tankwright::water::constituent take(const double*& at) { return static_cast<::tankwright::water::constituent>(whole_number(*at++, 0, 14)); }
  static void put(::tankwright::water::constituent v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::water::refractometer_scale> {
  static ::tankwright::water::refractometer_scale read(const given& in);
  static ::tankwright::water::refractometer_scale take(const double*& at) { return static_cast<::tankwright::water::refractometer_scale>(whole_number(*at++, 0, 1)); }
  static void put(::tankwright::water::refractometer_scale v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::water::temperature_compensation> {
  static ::tankwright::water::temperature_compensation read(const given& in);
  static ::tankwright::water::temperature_compensation take(const double*& at) { return static_cast<::tankwright::water::temperature_compensation>(whole_number(*at++, 0, 1)); }
  static void put(::tankwright::water::temperature_compensation v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::water::alkalinity> {
  static ::tankwright::water::alkalinity read(const given& in);
  static void write(answer& out, const ::tankwright::water::alkalinity& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::water::alkalinity>& v) {
    out.band("alkalinity", "", {tw::core::si_number(::tankwright::water::in_milliequivalents_per_litre(v.low)), tw::core::si_number(::tankwright::water::in_milliequivalents_per_litre(v.central)), tw::core::si_number(::tankwright::water::in_milliequivalents_per_litre(v.high))}, v.reason);
  }
  static ::tankwright::water::alkalinity take(const double*& at) { return ::tankwright::water::alkalinity::from_milliequivalents_per_litre(io<double>::take(at)); }
  static void put(const ::tankwright::water::alkalinity& v, double*& at) { io<double>::put(::tankwright::water::in_milliequivalents_per_litre(v), at); }
};

template <>
struct io<::tankwright::water::conductivity_at_25> {
  static ::tankwright::water::conductivity_at_25 read(const given& in);
  static void write(answer& out, const ::tankwright::water::conductivity_at_25& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::water::conductivity_at_25>& v) {
    out.band("conductivity_at_25", "S/m", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::water::conductivity_at_25 take(const double*& at) { return ::tankwright::water::conductivity_at_25{io<::tankwright::electrical_conductivity>::take(at)}; }
  static void put(const ::tankwright::water::conductivity_at_25& v, double*& at) { io<::tankwright::electrical_conductivity>::put(v.value(), at); }
};

template <>
struct io<::tankwright::water::conductivity_ratio> {
  static ::tankwright::water::conductivity_ratio read(const given& in);
  static void write(answer& out, const ::tankwright::water::conductivity_ratio& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::water::conductivity_ratio>& v) {
    out.band("conductivity_ratio", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::water::conductivity_ratio take(const double*& at) { return ::tankwright::water::conductivity_ratio{io<double>::take(at)}; }
  static void put(const ::tankwright::water::conductivity_ratio& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::water::conservative_temperature> {
  static ::tankwright::water::conservative_temperature read(const given& in);
  static void write(answer& out, const ::tankwright::water::conservative_temperature& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::water::conservative_temperature>& v) {
    out.band("conservative_temperature", "K", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::water::conservative_temperature take(const double*& at) { return ::tankwright::water::conservative_temperature{io<::tankwright::temperature>::take(at)}; }
  static void put(const ::tankwright::water::conservative_temperature& v, double*& at) { io<::tankwright::temperature>::put(v.value(), at); }
};

template <>
struct io<::tankwright::water::free_ammonia> {
  static ::tankwright::water::free_ammonia read(const given& in);
  static void write(answer& out, const ::tankwright::water::free_ammonia& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::water::free_ammonia>& v) {
    out.band("free_ammonia", "kg/m3", {tw::core::si_number(v.low.as_nitrogen()), tw::core::si_number(v.central.as_nitrogen()), tw::core::si_number(v.high.as_nitrogen())}, v.reason);
  }
  static ::tankwright::water::free_ammonia take(const double*& at) { return ::tankwright::water::free_ammonia::from_nitrogen(io<::tankwright::mass_density>::take(at)); }
  static void put(const ::tankwright::water::free_ammonia& v, double*& at) { io<::tankwright::mass_density>::put(v.as_nitrogen(), at); }
};

template <>
struct io<::tankwright::water::ph_free> {
  static ::tankwright::water::ph_free read(const given& in);
  static void write(answer& out, const ::tankwright::water::ph_free& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::water::ph_free>& v) {
    out.band("ph_free", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::water::ph_free take(const double*& at) { return ::tankwright::water::ph_free{io<double>::take(at)}; }
  static void put(const ::tankwright::water::ph_free& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::water::ph_nbs> {
  static ::tankwright::water::ph_nbs read(const given& in);
  static void write_band(answer& out, const tw::estimate<::tankwright::water::ph_nbs>& v) {
    out.band("ph_nbs", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::water::ph_nbs take(const double*& at) { return ::tankwright::water::ph_nbs{io<double>::take(at)}; }
  static void put(const ::tankwright::water::ph_nbs& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::water::ph_reading> {
  static ::tankwright::water::ph_reading read(const given& in);
};

template <>
struct io<::tankwright::water::ph_total> {
  static ::tankwright::water::ph_total read(const given& in);
  static void write(answer& out, const ::tankwright::water::ph_total& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::water::ph_total>& v) {
    out.band("ph_total", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::water::ph_total take(const double*& at) { return ::tankwright::water::ph_total{io<double>::take(at)}; }
  static void put(const ::tankwright::water::ph_total& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::water::refractive_index> {
  static ::tankwright::water::refractive_index read(const given& in);
  static void write(answer& out, const ::tankwright::water::refractive_index& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::water::refractive_index>& v) {
    out.band("refractive_index", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::water::refractive_index take(const double*& at) { return ::tankwright::water::refractive_index{io<double>::take(at)}; }
  static void put(const ::tankwright::water::refractive_index& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::water::specific_gravity> {
  static ::tankwright::water::specific_gravity read(const given& in);
  static void write(answer& out, const ::tankwright::water::specific_gravity& v);
};

template <>
struct io<::tankwright::water::total_ammonia> {
  static ::tankwright::water::total_ammonia read(const given& in);
  static void write(answer& out, const ::tankwright::water::total_ammonia& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::water::total_ammonia>& v) {
    out.band("total_ammonia", "kg/m3", {tw::core::si_number(v.low.as_nitrogen()), tw::core::si_number(v.central.as_nitrogen()), tw::core::si_number(v.high.as_nitrogen())}, v.reason);
  }
  static ::tankwright::water::total_ammonia take(const double*& at) { return ::tankwright::water::total_ammonia::from_nitrogen(io<::tankwright::mass_density>::take(at)); }
  static void put(const ::tankwright::water::total_ammonia& v, double*& at) { io<::tankwright::mass_density>::put(v.as_nitrogen(), at); }
};

template <>
struct io<::tankwright::citation> {
  static ::tankwright::citation read(const given& in);
  static ::tankwright::citation fields(const given& in);
  static void write(answer& out, const ::tankwright::citation& v);
};

template <>
struct io<::tankwright::interval> {
  static void write(answer& out, const ::tankwright::interval& v);
  static void put(const ::tankwright::interval& v, double*& at) {
    io<double>::put(v.low, at);
    io<double>::put(v.high, at);
    io<::tankwright::edge>::put(v.low_edge, at);
    io<::tankwright::edge>::put(v.high_edge, at);
  }
};

template <>
struct io<::tankwright::water::alkalinity_dose> {
  static void write(answer& out, const ::tankwright::water::alkalinity_dose& v);
  static void put(const ::tankwright::water::alkalinity_dose& v, double*& at) {
    io<::tankwright::mass>::put(v.sodium_bicarbonate, at);
    io<::tankwright::mass>::put(v.sodium_carbonate, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::water::alkalinity_step> {
  static ::tankwright::water::alkalinity_step read(const given& in);
  static ::tankwright::water::alkalinity_step fields(const given& in);
  static ::tankwright::water::alkalinity_step take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .from = io<::tankwright::water::alkalinity>::take(at), .target = io<::tankwright::water::alkalinity>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::alkalinity_step& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::water::alkalinity>::put(v.from, at);
    io<::tankwright::water::alkalinity>::put(v.target, at);
  }
};

template <>
struct io<::tankwright::water::ammonia_sample> {
  static ::tankwright::water::ammonia_sample read(const given& in);
  static ::tankwright::water::ammonia_sample fields(const given& in);
};

template <>
struct io<::tankwright::water::batch_changes> {
  static ::tankwright::water::batch_changes read(const given& in);
  static ::tankwright::water::batch_changes fields(const given& in);
  static ::tankwright::water::batch_changes take(const double*& at) {
    return {.part = io<::tankwright::proportion>::take(at), .times = io<int>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::batch_changes& v, double*& at) {
    io<::tankwright::proportion>::put(v.part, at);
    io<int>::put(v.times, at);
  }
};

template <>
struct io<::tankwright::water::batch_goal> {
  static ::tankwright::water::batch_goal read(const given& in);
  static ::tankwright::water::batch_goal fields(const given& in);
  static ::tankwright::water::batch_goal take(const double*& at) {
    return {.part = io<::tankwright::proportion>::take(at), .left = io<::tankwright::proportion>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::batch_goal& v, double*& at) {
    io<::tankwright::proportion>::put(v.part, at);
    io<::tankwright::proportion>::put(v.left, at);
  }
};

template <>
struct io<::tankwright::water::blended_water> {
  static void write(answer& out, const ::tankwright::water::blended_water& v);
  static void put(const ::tankwright::water::blended_water& v, double*& at) {
    io<::tankwright::practical_salinity>::put(v.salinity, at);
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::mass>::put(v.mass, at);
    io<::tankwright::volume>::put(v.volume, at);
  }
};

template <>
struct io<::tankwright::water::body_material> {
  static ::tankwright::water::body_material read(const given& in);
  static ::tankwright::water::body_material fields(const given& in);
};

template <>
struct io<::tankwright::water::breathed_water> {
  static void write(answer& out, const ::tankwright::water::breathed_water& v);
  static void put(const ::tankwright::water::breathed_water& v, double*& at) {
    io<double>::put(v.ph, at);
    io<::tankwright::mass_density>::put(v.carbon_dioxide, at);
    io<double>::put(v.partial_pressure, at);
  }
};

template <>
struct io<::tankwright::water::carbonate_constants> {
  static void write(answer& out, const ::tankwright::water::carbonate_constants& v);
  static void put(const ::tankwright::water::carbonate_constants& v, double*& at) {
    io<double>::put(v.pk1, at);
    io<double>::put(v.pk2, at);
    io<double>::put(v.solubility, at);
  }
};

template <>
struct io<::tankwright::water::change_routine> {
  static ::tankwright::water::change_routine read(const given& in);
  static ::tankwright::water::change_routine fields(const given& in);
  static ::tankwright::water::change_routine take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .every = io<::tankwright::duration>::take(at), .part = io<::tankwright::proportion>::take(at), .made = io<::tankwright::mass_flow>::take(at), .in_new_water = io<::tankwright::mass_density>::take(at), .dose = io<::tankwright::mass>::take(at), .cleared = io<::tankwright::flow_rate>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::change_routine& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::duration>::put(v.every, at);
    io<::tankwright::proportion>::put(v.part, at);
    io<::tankwright::mass_flow>::put(v.made, at);
    io<::tankwright::mass_density>::put(v.in_new_water, at);
    io<::tankwright::mass>::put(v.dose, at);
    io<::tankwright::flow_rate>::put(v.cleared, at);
  }
};

template <>
struct io<::tankwright::water::closed_water> {
  static ::tankwright::water::closed_water read(const given& in);
  static ::tankwright::water::closed_water fields(const given& in);
  static ::tankwright::water::closed_water take(const double*& at) {
    return {.ph = io<double>::take(at), .alkalinity = io<double>::take(at), .salinity = io<::tankwright::practical_salinity>::take(at), .temperature = io<::tankwright::temperature>::take(at), .gas_over_water = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::closed_water& v, double*& at) {
    io<double>::put(v.ph, at);
    io<double>::put(v.alkalinity, at);
    io<::tankwright::practical_salinity>::put(v.salinity, at);
    io<::tankwright::temperature>::put(v.temperature, at);
    io<double>::put(v.gas_over_water, at);
  }
};

template <>
struct io<::tankwright::water::compensated_reading> {
  static ::tankwright::water::compensated_reading read(const given& in);
  static ::tankwright::water::compensated_reading fields(const given& in);
  static void write(answer& out, const ::tankwright::water::compensated_reading& v);
  static ::tankwright::water::compensated_reading take(const double*& at) {
    return {.shown = io<::tankwright::electrical_conductivity>::take(at), .water = io<::tankwright::temperature>::take(at), .coefficient = io<::tankwright::temperature_coefficient>::take(at), .reference = io<::tankwright::temperature>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::compensated_reading& v, double*& at) {
    io<::tankwright::electrical_conductivity>::put(v.shown, at);
    io<::tankwright::temperature>::put(v.water, at);
    io<::tankwright::temperature_coefficient>::put(v.coefficient, at);
    io<::tankwright::temperature>::put(v.reference, at);
  }
};

template <>
struct io<::tankwright::water::deep_seawater> {
  static ::tankwright::water::deep_seawater read(const given& in);
  static ::tankwright::water::deep_seawater fields(const given& in);
  static ::tankwright::water::deep_seawater take(const double*& at) {
    return {.salinity = io<::tankwright::absolute_salinity>::take(at), .temperature = io<::tankwright::water::conservative_temperature>::take(at), .pressure = io<::tankwright::gauge_pressure>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::deep_seawater& v, double*& at) {
    io<::tankwright::absolute_salinity>::put(v.salinity, at);
    io<::tankwright::water::conservative_temperature>::put(v.temperature, at);
    io<::tankwright::gauge_pressure>::put(v.pressure, at);
  }
};

template <>
struct io<::tankwright::water::drifted_system> {
  static void write(answer& out, const ::tankwright::water::drifted_system& v);
  static void put(const ::tankwright::water::drifted_system& v, double*& at) {
    io<::tankwright::practical_salinity>::put(v.salinity, at);
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::water::drifting_system> {
  static ::tankwright::water::drifting_system read(const given& in);
  static ::tankwright::water::drifting_system fields(const given& in);
  static ::tankwright::water::drifting_system take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .salinity = io<::tankwright::practical_salinity>::take(at), .temperature = io<::tankwright::temperature>::take(at), .evaporation = io<::tankwright::flow_rate>::take(at), .top_off = io<::tankwright::flow_rate>::take(at), .top_off_salinity = io<::tankwright::practical_salinity>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::drifting_system& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::practical_salinity>::put(v.salinity, at);
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::flow_rate>::put(v.evaporation, at);
    io<::tankwright::flow_rate>::put(v.top_off, at);
    io<::tankwright::practical_salinity>::put(v.top_off_salinity, at);
  }
};

template <>
struct io<::tankwright::water::evaporated_water> {
  static void write(answer& out, const ::tankwright::water::evaporated_water& v);
  static void put(const ::tankwright::water::evaporated_water& v, double*& at) {
    io<::tankwright::mass>::put(v.mass, at);
    io<::tankwright::volume>::put(v.volume, at);
  }
};

template <>
struct io<::tankwright::water::evaporation_between> {
  static ::tankwright::water::evaporation_between read(const given& in);
  static ::tankwright::water::evaporation_between fields(const given& in);
  static ::tankwright::water::evaporation_between take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .first = io<::tankwright::practical_salinity>::take(at), .second = io<::tankwright::practical_salinity>::take(at), .temperature = io<::tankwright::temperature>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::evaporation_between& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::practical_salinity>::put(v.first, at);
    io<::tankwright::practical_salinity>::put(v.second, at);
    io<::tankwright::temperature>::put(v.temperature, at);
  }
};

template <>
struct io<::tankwright::water::falling_level> {
  static ::tankwright::water::falling_level read(const given& in);
  static ::tankwright::water::falling_level fields(const given& in);
  static ::tankwright::water::falling_level take(const double*& at) {
    return {.start = io<double>::take(at), .falls_a_day = io<double>::take(at), .time = io<::tankwright::duration>::take(at), .changed = io<::tankwright::proportion>::take(at), .every = io<::tankwright::duration>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::falling_level& v, double*& at) {
    io<double>::put(v.start, at);
    io<double>::put(v.falls_a_day, at);
    io<::tankwright::duration>::put(v.time, at);
    io<::tankwright::proportion>::put(v.changed, at);
    io<::tankwright::duration>::put(v.every, at);
  }
};

template <>
struct io<::tankwright::water::finished_water> {
  static ::tankwright::water::finished_water read(const given& in);
  static ::tankwright::water::finished_water fields(const given& in);
  static ::tankwright::water::finished_water take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .target = io<::tankwright::practical_salinity>::take(at), .temperature = io<::tankwright::temperature>::take(at), .mix_yield = io<::tankwright::proportion>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::finished_water& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::practical_salinity>::put(v.target, at);
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::proportion>::put(v.mix_yield, at);
  }
};

template <>
struct io<::tankwright::water::free_ammonia_result> {
  static void write(answer& out, const ::tankwright::water::free_ammonia_result& v);
  static void put(const ::tankwright::water::free_ammonia_result& v, double*& at) {
    io<::tankwright::estimate<::tankwright::water::free_ammonia>>::put(v.concentration, at);
    io<::tankwright::estimate<::tankwright::proportion>>::put(v.fraction, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::water::gravity_scale> {
  static ::tankwright::water::gravity_scale read(const given& in);
  static ::tankwright::water::gravity_scale fields(const given& in);
  static void write(answer& out, const ::tankwright::water::gravity_scale& v);
  static ::tankwright::water::gravity_scale take(const double*& at) {
    return {.sample = io<::tankwright::temperature>::take(at), .reference = io<::tankwright::temperature>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::gravity_scale& v, double*& at) {
    io<::tankwright::temperature>::put(v.sample, at);
    io<::tankwright::temperature>::put(v.reference, at);
  }
};

template <>
struct io<::tankwright::water::hydrometer> {
  static ::tankwright::water::hydrometer read(const given& in);
  static ::tankwright::water::hydrometer fields(const given& in);
};

template <>
struct io<::tankwright::water::hydrometer_observation> {
  static ::tankwright::water::hydrometer_observation read(const given& in);
  static ::tankwright::water::hydrometer_observation fields(const given& in);
};

template <>
struct io<::tankwright::water::liquid> {
  static ::tankwright::water::liquid read(const given& in);
  static ::tankwright::water::liquid fields(const given& in);
  static void write(answer& out, const ::tankwright::water::liquid& v);
  static ::tankwright::water::liquid take(const double*& at) {
    return {.density = io<::tankwright::mass_density>::take(at), .viscosity = io<::tankwright::dynamic_viscosity>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::liquid& v, double*& at) {
    io<::tankwright::mass_density>::put(v.density, at);
    io<::tankwright::dynamic_viscosity>::put(v.viscosity, at);
  }
};

template <>
struct io<::tankwright::water::lit_seawater> {
  static ::tankwright::water::lit_seawater read(const given& in);
  static ::tankwright::water::lit_seawater fields(const given& in);
  static ::tankwright::water::lit_seawater take(const double*& at) {
    return {.salinity = io<::tankwright::practical_salinity>::take(at), .temperature = io<::tankwright::temperature>::take(at), .wavelength = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::lit_seawater& v, double*& at) {
    io<::tankwright::practical_salinity>::put(v.salinity, at);
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::length>::put(v.wavelength, at);
  }
};

template <>
struct io<::tankwright::water::mix_to_add> {
  static void write(answer& out, const ::tankwright::water::mix_to_add& v);
  static void put(const ::tankwright::water::mix_to_add& v, double*& at) {
    io<::tankwright::mass>::put(v.mix, at);
    io<::tankwright::volume>::put(v.finished, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::water::mixed_substance> {
  static ::tankwright::water::mixed_substance read(const given& in);
  static ::tankwright::water::mixed_substance fields(const given& in);
  static ::tankwright::water::mixed_substance take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .start = io<::tankwright::mass_density>::take(at), .made = io<::tankwright::mass_flow>::take(at), .new_water = io<::tankwright::flow_rate>::take(at), .in_new_water = io<::tankwright::mass_density>::take(at), .cleared = io<::tankwright::flow_rate>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::mixed_substance& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::mass_density>::put(v.start, at);
    io<::tankwright::mass_flow>::put(v.made, at);
    io<::tankwright::flow_rate>::put(v.new_water, at);
    io<::tankwright::mass_density>::put(v.in_new_water, at);
    io<::tankwright::flow_rate>::put(v.cleared, at);
  }
};

template <>
struct io<::tankwright::water::new_water> {
  static ::tankwright::water::new_water read(const given& in);
  static ::tankwright::water::new_water fields(const given& in);
  static ::tankwright::water::new_water take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .target = io<::tankwright::practical_salinity>::take(at), .temperature = io<::tankwright::temperature>::take(at), .mix_yield = io<::tankwright::proportion>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::new_water& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::practical_salinity>::put(v.target, at);
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::proportion>::put(v.mix_yield, at);
  }
};

template <>
struct io<::tankwright::water::new_water_unmeasured> {
  static ::tankwright::water::new_water_unmeasured read(const given& in);
  static ::tankwright::water::new_water_unmeasured fields(const given& in);
  static ::tankwright::water::new_water_unmeasured take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .target = io<::tankwright::practical_salinity>::take(at), .temperature = io<::tankwright::temperature>::take(at), .mix_yield = io<::tankwright::estimate<::tankwright::proportion>>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::new_water_unmeasured& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::practical_salinity>::put(v.target, at);
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::estimate<::tankwright::proportion>>::put(v.mix_yield, at);
  }
};

template <>
struct io<::tankwright::water::portion> {
  static ::tankwright::water::portion read(const given& in);
  static ::tankwright::water::portion fields(const given& in);
};

template <>
struct io<::tankwright::water::recipe_amounts> {
  static void write(answer& out, const ::tankwright::water::recipe_amounts& v);
};

template <>
struct io<::tankwright::water::recipe_batch> {
  static ::tankwright::water::recipe_batch read(const given& in);
  static ::tankwright::water::recipe_batch fields(const given& in);
  static ::tankwright::water::recipe_batch take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .target = io<::tankwright::practical_salinity>::take(at), .temperature = io<::tankwright::temperature>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::recipe_batch& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::practical_salinity>::put(v.target, at);
    io<::tankwright::temperature>::put(v.temperature, at);
  }
};

template <>
struct io<::tankwright::water::refraction> {
  static ::tankwright::water::refraction read(const given& in);
  static ::tankwright::water::refraction fields(const given& in);
  static ::tankwright::water::refraction take(const double*& at) {
    return {.index = io<::tankwright::water::refractive_index>::take(at), .temperature = io<::tankwright::temperature>::take(at), .wavelength = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::refraction& v, double*& at) {
    io<::tankwright::water::refractive_index>::put(v.index, at);
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::length>::put(v.wavelength, at);
  }
};

template <>
struct io<::tankwright::water::refractometer> {
  static ::tankwright::water::refractometer read(const given& in);
  static ::tankwright::water::refractometer fields(const given& in);
  static ::tankwright::water::refractometer take(const double*& at) {
    return {.scale = io<::tankwright::water::refractometer_scale>::take(at), .compensation = io<::tankwright::water::temperature_compensation>::take(at), .division = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::refractometer& v, double*& at) {
    io<::tankwright::water::refractometer_scale>::put(v.scale, at);
    io<::tankwright::water::temperature_compensation>::put(v.compensation, at);
    io<double>::put(v.division, at);
  }
};

template <>
struct io<::tankwright::water::refractometer_observation> {
  static ::tankwright::water::refractometer_observation read(const given& in);
  static ::tankwright::water::refractometer_observation fields(const given& in);
  static ::tankwright::water::refractometer_observation take(const double*& at) {
    return {.reading = io<double>::take(at), .prism = io<::tankwright::temperature>::take(at), .instrument = io<::tankwright::water::refractometer>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::refractometer_observation& v, double*& at) {
    io<double>::put(v.reading, at);
    io<::tankwright::temperature>::put(v.prism, at);
    io<::tankwright::water::refractometer>::put(v.instrument, at);
  }
};

template <>
struct io<::tankwright::water::salinity_replacement> {
  static ::tankwright::water::salinity_replacement read(const given& in);
  static ::tankwright::water::salinity_replacement fields(const given& in);
  static ::tankwright::water::salinity_replacement take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .from = io<::tankwright::practical_salinity>::take(at), .target = io<::tankwright::practical_salinity>::take(at), .replacement = io<::tankwright::practical_salinity>::take(at), .temperature = io<::tankwright::temperature>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::salinity_replacement& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::practical_salinity>::put(v.from, at);
    io<::tankwright::practical_salinity>::put(v.target, at);
    io<::tankwright::practical_salinity>::put(v.replacement, at);
    io<::tankwright::temperature>::put(v.temperature, at);
  }
};

template <>
struct io<::tankwright::water::salinity_rise> {
  static ::tankwright::water::salinity_rise read(const given& in);
  static ::tankwright::water::salinity_rise fields(const given& in);
  static ::tankwright::water::salinity_rise take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .from = io<::tankwright::practical_salinity>::take(at), .target = io<::tankwright::practical_salinity>::take(at), .temperature = io<::tankwright::temperature>::take(at), .mix_yield = io<::tankwright::proportion>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::salinity_rise& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::practical_salinity>::put(v.from, at);
    io<::tankwright::practical_salinity>::put(v.target, at);
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::proportion>::put(v.mix_yield, at);
  }
};

template <>
struct io<::tankwright::water::salinity_step> {
  static ::tankwright::water::salinity_step read(const given& in);
  static ::tankwright::water::salinity_step fields(const given& in);
  static ::tankwright::water::salinity_step take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .from = io<::tankwright::practical_salinity>::take(at), .target = io<::tankwright::practical_salinity>::take(at), .temperature = io<::tankwright::temperature>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::salinity_step& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::practical_salinity>::put(v.from, at);
    io<::tankwright::practical_salinity>::put(v.target, at);
    io<::tankwright::temperature>::put(v.temperature, at);
  }
};

template <>
struct io<::tankwright::water::salt_batch> {
  static void write(answer& out, const ::tankwright::water::salt_batch& v);
  static void put(const ::tankwright::water::salt_batch& v, double*& at) {
    io<::tankwright::mass>::put(v.mix, at);
    io<::tankwright::volume>::put(v.fresh_water, at);
    io<::tankwright::mass>::put(v.fresh_water_mass, at);
    io<::tankwright::volume>::put(v.finished, at);
    io<::tankwright::mass>::put(v.finished_mass, at);
    io<::tankwright::mass>::put(v.anhydrous_salt, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::water::salt_standard> {
  static ::tankwright::water::salt_standard read(const given& in);
  static ::tankwright::water::salt_standard fields(const given& in);
  static ::tankwright::water::salt_standard take(const double*& at) {
    return {.salt = io<::tankwright::mass>::take(at), .water = io<::tankwright::mass>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::salt_standard& v, double*& at) {
    io<::tankwright::mass>::put(v.salt, at);
    io<::tankwright::mass>::put(v.water, at);
  }
};

template <>
struct io<::tankwright::water::saw_tooth> {
  static void write(answer& out, const ::tankwright::water::saw_tooth& v);
  static void put(const ::tankwright::water::saw_tooth& v, double*& at) {
    io<::tankwright::mass_density>::put(v.before_change, at);
    io<::tankwright::mass_density>::put(v.after_change, at);
  }
};

template <>
struct io<::tankwright::water::steady_flow> {
  static ::tankwright::water::steady_flow read(const given& in);
  static ::tankwright::water::steady_flow fields(const given& in);
  static ::tankwright::water::steady_flow take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .flow = io<::tankwright::flow_rate>::take(at), .time = io<::tankwright::duration>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::steady_flow& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::flow_rate>::put(v.flow, at);
    io<::tankwright::duration>::put(v.time, at);
  }
};

template <>
struct io<::tankwright::water::steady_goal> {
  static ::tankwright::water::steady_goal read(const given& in);
  static ::tankwright::water::steady_goal fields(const given& in);
  static ::tankwright::water::steady_goal take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .flow = io<::tankwright::flow_rate>::take(at), .left = io<::tankwright::proportion>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::steady_goal& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::flow_rate>::put(v.flow, at);
    io<::tankwright::proportion>::put(v.left, at);
  }
};

template <>
struct io<::tankwright::water::trial_batch> {
  static ::tankwright::water::trial_batch read(const given& in);
  static ::tankwright::water::trial_batch fields(const given& in);
  static ::tankwright::water::trial_batch take(const double*& at) {
    return {.mix = io<::tankwright::mass>::take(at), .fresh_water = io<::tankwright::mass>::take(at), .reached = io<::tankwright::practical_salinity>::take(at), .reading_error = io<::tankwright::practical_salinity>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::trial_batch& v, double*& at) {
    io<::tankwright::mass>::put(v.mix, at);
    io<::tankwright::mass>::put(v.fresh_water, at);
    io<::tankwright::practical_salinity>::put(v.reached, at);
    io<::tankwright::practical_salinity>::put(v.reading_error, at);
  }
};

template <>
struct io<::tankwright::water::unmeasured_batch> {
  static void write(answer& out, const ::tankwright::water::unmeasured_batch& v);
  static void put(const ::tankwright::water::unmeasured_batch& v, double*& at) {
    io<::tankwright::estimate<::tankwright::mass>>::put(v.mix, at);
    io<::tankwright::volume>::put(v.fresh_water, at);
    io<::tankwright::mass>::put(v.fresh_water_mass, at);
    io<::tankwright::estimate<::tankwright::volume>>::put(v.finished, at);
    io<::tankwright::estimate<::tankwright::mass>>::put(v.finished_mass, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::water::water_to_add> {
  static void write(answer& out, const ::tankwright::water::water_to_add& v);
  static void put(const ::tankwright::water::water_to_add& v, double*& at) {
    io<::tankwright::volume>::put(v.fresh_water, at);
    io<::tankwright::mass>::put(v.fresh_water_mass, at);
    io<::tankwright::volume>::put(v.finished, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::water::water_to_replace> {
  static void write(answer& out, const ::tankwright::water::water_to_replace& v);
  static void put(const ::tankwright::water::water_to_replace& v, double*& at) {
    io<::tankwright::volume>::put(v.taken_out, at);
    io<::tankwright::volume>::put(v.put_in, at);
    io<::tankwright::proportion>::put(v.part, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::water::weighed_portion> {
  static ::tankwright::water::weighed_portion read(const given& in);
  static ::tankwright::water::weighed_portion fields(const given& in);
};

template <>
struct io<::tankwright::water::weighed_volume> {
  static ::tankwright::water::weighed_volume read(const given& in);
  static ::tankwright::water::weighed_volume fields(const given& in);
  static ::tankwright::water::weighed_volume take(const double*& at) {
    return {.volume = io<::tankwright::volume>::take(at), .shown = io<::tankwright::mass>::take(at), .volume_error = io<::tankwright::proportion>::take(at), .scale_error = io<::tankwright::mass>::take(at), .air = io<::tankwright::mass_density>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::water::weighed_volume& v, double*& at) {
    io<::tankwright::volume>::put(v.volume, at);
    io<::tankwright::mass>::put(v.shown, at);
    io<::tankwright::proportion>::put(v.volume_error, at);
    io<::tankwright::mass>::put(v.scale_error, at);
    io<::tankwright::mass_density>::put(v.air, at);
  }
};

}  // namespace tankwright_formulas
