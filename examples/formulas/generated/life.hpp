// SPDX-License-Identifier: BSL-1.0
// Written by examples/formulas/make.py from the headers. Do not edit.
#pragma once

#include "../glue.hpp"
#include "water.hpp"
#include <tankwright/life/acclimation.hpp>
#include <tankwright/life/aeration.hpp>
#include <tankwright/life/circulation.hpp>
#include <tankwright/life/drip_vessel.hpp>
#include <tankwright/life/foam.hpp>
#include <tankwright/life/levels.hpp>
#include <tankwright/life/meals.hpp>
#include <tankwright/life/nitrification.hpp>
#include <tankwright/life/nitrifiers.hpp>
#include <tankwright/life/nitrogen.hpp>
#include <tankwright/life/oxygen.hpp>
#include <tankwright/life/oxygen_use.hpp>
#include <tankwright/life/ranges.hpp>
#include <tankwright/life/space.hpp>
#include <tankwright/life/start_up.hpp>
#include <tankwright/life/start_up_plan.hpp>
#include <tankwright/life/stocking_steps.hpp>
#include <tankwright/life/transfer.hpp>
#include <tankwright/life/transport.hpp>
#include <tankwright/life/water_changes.hpp>

namespace tankwright_formulas {

template <>
struct io<::tankwright::life::drip_vessel> {
  static ::tankwright::life::drip_vessel read(const given& in);
  static ::tankwright::life::drip_vessel take(const double*& at) { return static_cast<::tankwright::life::drip_vessel>(whole_number(*at++, 0, 1)); }
  static void put(::tankwright::life::drip_vessel v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::life::film_order> {
  static ::tankwright::life::film_order read(const given& in);
  static ::tankwright::life::film_order take(const double*& at) { return static_cast<::tankwright::life::film_order>(whole_number(*at++, 0, 1)); }
  static void put(::tankwright::life::film_order v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>> {
  static ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form> read(const given& in);
  static void write(answer& out, const ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>>& v) {
    out.band("nitrate_level", "kg/m3", {tw::core::si_number(v.low.as_nitrogen()), tw::core::si_number(v.central.as_nitrogen()), tw::core::si_number(v.high.as_nitrogen())}, v.reason);
  }
  static ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form> take(const double*& at) { return ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>::from_nitrogen(io<::tankwright::mass_density>::take(at)); }
  static void put(const ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>& v, double*& at) { io<::tankwright::mass_density>::put(v.as_nitrogen(), at); }
};

template <>
struct io<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>> {
  static ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form> read(const given& in);
  static void write(answer& out, const ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>& v) {
    out.band("nitrite_level", "kg/m3", {tw::core::si_number(v.low.as_nitrogen()), tw::core::si_number(v.central.as_nitrogen()), tw::core::si_number(v.high.as_nitrogen())}, v.reason);
  }
  static ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form> take(const double*& at) { return ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>::from_nitrogen(io<::tankwright::mass_density>::take(at)); }
  static void put(const ::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>& v, double*& at) { io<::tankwright::mass_density>::put(v.as_nitrogen(), at); }
};

template <>
struct io<::tankwright::life::nitrogen_load> {
  static ::tankwright::life::nitrogen_load read(const given& in);
  static void write(answer& out, const ::tankwright::life::nitrogen_load& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::life::nitrogen_load>& v) {
    out.band("nitrogen_load", "kg/s", {tw::core::si_number(v.low.as_nitrogen()), tw::core::si_number(v.central.as_nitrogen()), tw::core::si_number(v.high.as_nitrogen())}, v.reason);
  }
  static ::tankwright::life::nitrogen_load take(const double*& at) { return ::tankwright::life::nitrogen_load::from_nitrogen(io<::tankwright::mass_flow>::take(at)); }
  static void put(const ::tankwright::life::nitrogen_load& v, double*& at) { io<::tankwright::mass_flow>::put(v.as_nitrogen(), at); }
};

template <>
struct io<::tankwright::life::specific_oxygen_use> {
  static ::tankwright::life::specific_oxygen_use read(const given& in);
  static void write(answer& out, const ::tankwright::life::specific_oxygen_use& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::life::specific_oxygen_use>& v) {
    out.band("specific_oxygen_use", "", {tw::core::si_number(::tankwright::life::in_milligrams_per_kilogram_hour(v.low)), tw::core::si_number(::tankwright::life::in_milligrams_per_kilogram_hour(v.central)), tw::core::si_number(::tankwright::life::in_milligrams_per_kilogram_hour(v.high))}, v.reason);
  }
  static ::tankwright::life::specific_oxygen_use take(const double*& at) { return ::tankwright::life::specific_oxygen_use::from_milligrams_per_kilogram_hour(io<double>::take(at)); }
  static void put(const ::tankwright::life::specific_oxygen_use& v, double*& at) { io<double>::put(::tankwright::life::in_milligrams_per_kilogram_hour(v), at); }
};

template <>
struct io<::tankwright::life::aeration> {
  static ::tankwright::life::aeration read(const given& in);
  static ::tankwright::life::aeration fields(const given& in);
};

template <>
struct io<::tankwright::life::aerated_tank> {
  static ::tankwright::life::aerated_tank read(const given& in);
  static ::tankwright::life::aerated_tank fields(const given& in);
};

template <>
struct io<::tankwright::life::alkalinity_budget> {
  static ::tankwright::life::alkalinity_budget read(const given& in);
  static ::tankwright::life::alkalinity_budget fields(const given& in);
  static ::tankwright::life::alkalinity_budget take(const double*& at) {
    return {.load = io<::tankwright::life::nitrogen_load>::take(at), .net = io<::tankwright::volume>::take(at), .now = io<::tankwright::water::alkalinity>::take(at), .lowest = io<::tankwright::water::alkalinity>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::alkalinity_budget& v, double*& at) {
    io<::tankwright::life::nitrogen_load>::put(v.load, at);
    io<::tankwright::volume>::put(v.net, at);
    io<::tankwright::water::alkalinity>::put(v.now, at);
    io<::tankwright::water::alkalinity>::put(v.lowest, at);
  }
};

template <>
struct io<::tankwright::life::alkalinity_countdown> {
  static void write(answer& out, const ::tankwright::life::alkalinity_countdown& v);
};

template <>
struct io<::tankwright::life::schedule> {
  static ::tankwright::life::schedule read(const given& in);
  static ::tankwright::life::schedule fields(const given& in);
  static ::tankwright::life::schedule take(const double*& at) {
    return {.at = io<::tankwright::duration>::take(at), .every = io<::tankwright::duration>::take(at), .times = io<int>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::schedule& v, double*& at) {
    io<::tankwright::duration>::put(v.at, at);
    io<::tankwright::duration>::put(v.every, at);
    io<int>::put(v.times, at);
  }
};

template <>
struct io<::tankwright::life::ammonia_dose> {
  static ::tankwright::life::ammonia_dose read(const given& in);
  static ::tankwright::life::ammonia_dose fields(const given& in);
  static ::tankwright::life::ammonia_dose take(const double*& at) {
    return {.when = io<::tankwright::life::schedule>::take(at), .rise = io<::tankwright::water::total_ammonia>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::ammonia_dose& v, double*& at) {
    io<::tankwright::life::schedule>::put(v.when, at);
    io<::tankwright::water::total_ammonia>::put(v.rise, at);
  }
};

template <>
struct io<::tankwright::life::animals> {
  static ::tankwright::life::animals read(const given& in);
  static ::tankwright::life::animals fields(const given& in);
};

template <>
struct io<::tankwright::life::bacteria> {
  static ::tankwright::life::bacteria read(const given& in);
  static ::tankwright::life::bacteria fields(const given& in);
  static void write(answer& out, const ::tankwright::life::bacteria& v);
  static ::tankwright::life::bacteria take(const double*& at) {
    return {.ammonia_oxidisers = io<::tankwright::mass>::take(at), .nitrite_oxidisers = io<::tankwright::mass>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::bacteria& v, double*& at) {
    io<::tankwright::mass>::put(v.ammonia_oxidisers, at);
    io<::tankwright::mass>::put(v.nitrite_oxidisers, at);
  }
};

template <>
struct io<::tankwright::life::bag_state> {
  static void write(answer& out, const ::tankwright::life::bag_state& v);
  static void put(const ::tankwright::life::bag_state& v, double*& at) {
    io<::tankwright::mass>::put(v.oxygen_left, at);
    io<::tankwright::mass_density>::put(v.oxygen, at);
    io<::tankwright::mass_density>::put(v.carbon_dioxide, at);
    io<double>::put(v.ph, at);
    io<::tankwright::estimate<::tankwright::water::total_ammonia>>::put(v.ammonia, at);
    io<::tankwright::estimate<::tankwright::mass_density>>::put(v.free_closed, at);
    io<::tankwright::estimate<::tankwright::mass_density>>::put(v.free_opened, at);
  }
};

template <>
struct io<::tankwright::life::changed_tank> {
  static ::tankwright::life::changed_tank read(const given& in);
  static ::tankwright::life::changed_tank fields(const given& in);
  static ::tankwright::life::changed_tank take(const double*& at) {
    return {.net = io<::tankwright::volume>::take(at), .load = io<::tankwright::life::nitrogen_load>::take(at), .part = io<::tankwright::proportion>::take(at), .every = io<::tankwright::duration>::take(at), .lasts = io<::tankwright::duration>::take(at), .largest_meal = io<::tankwright::mass>::take(at), .removal = io<::tankwright::rate>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::changed_tank& v, double*& at) {
    io<::tankwright::volume>::put(v.net, at);
    io<::tankwright::life::nitrogen_load>::put(v.load, at);
    io<::tankwright::proportion>::put(v.part, at);
    io<::tankwright::duration>::put(v.every, at);
    io<::tankwright::duration>::put(v.lasts, at);
    io<::tankwright::mass>::put(v.largest_meal, at);
    io<::tankwright::rate>::put(v.removal, at);
  }
};

template <>
struct io<::tankwright::life::changed_tank_course> {
  static void write(answer& out, const ::tankwright::life::changed_tank_course& v);
  static void put(const ::tankwright::life::changed_tank_course& v, double*& at) {
    io<::tankwright::water::total_ammonia>::put(v.highest, at);
    io<double>::put(v.changes, at);
    io<::tankwright::volume>::put(v.changed, at);
  }
};

template <>
struct io<::tankwright::life::loop> {
  static ::tankwright::life::loop read(const given& in);
  static ::tankwright::life::loop fields(const given& in);
};

template <>
struct io<::tankwright::life::circulation> {
  static ::tankwright::life::circulation read(const given& in);
  static ::tankwright::life::circulation fields(const given& in);
};

template <>
struct io<::tankwright::life::clearance> {
  static void write(answer& out, const ::tankwright::life::clearance& v);
};

template <>
struct io<::tankwright::life::clearing> {
  static void write(answer& out, const ::tankwright::life::clearing& v);
};

template <>
struct io<::tankwright::life::closed_bag> {
  static ::tankwright::life::closed_bag read(const given& in);
  static ::tankwright::life::closed_bag fields(const given& in);
  static ::tankwright::life::closed_bag take(const double*& at) {
    return {.water = io<::tankwright::volume>::take(at), .gas = io<::tankwright::volume>::take(at), .oxygen = io<::tankwright::proportion>::take(at), .uses = io<::tankwright::mass_flow>::take(at), .salinity = io<::tankwright::practical_salinity>::take(at), .temperature = io<::tankwright::temperature>::take(at), .ph = io<double>::take(at), .alkalinity = io<double>::take(at), .quotient = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::closed_bag& v, double*& at) {
    io<::tankwright::volume>::put(v.water, at);
    io<::tankwright::volume>::put(v.gas, at);
    io<::tankwright::proportion>::put(v.oxygen, at);
    io<::tankwright::mass_flow>::put(v.uses, at);
    io<::tankwright::practical_salinity>::put(v.salinity, at);
    io<::tankwright::temperature>::put(v.temperature, at);
    io<double>::put(v.ph, at);
    io<double>::put(v.alkalinity, at);
    io<double>::put(v.quotient, at);
  }
};

template <>
struct io<::tankwright::life::drip> {
  static ::tankwright::life::drip read(const given& in);
  static ::tankwright::life::drip fields(const given& in);
  static ::tankwright::life::drip take(const double*& at) {
    return {.start = io<::tankwright::volume>::take(at), .flow = io<::tankwright::flow_rate>::take(at), .vessel = io<::tankwright::life::drip_vessel>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::drip& v, double*& at) {
    io<::tankwright::volume>::put(v.start, at);
    io<::tankwright::flow_rate>::put(v.flow, at);
    io<::tankwright::life::drip_vessel>::put(v.vessel, at);
  }
};

template <>
struct io<::tankwright::life::regular_meal> {
  static ::tankwright::life::regular_meal read(const given& in);
  static ::tankwright::life::regular_meal fields(const given& in);
  static ::tankwright::life::regular_meal take(const double*& at) {
    return {.mean = io<::tankwright::life::nitrogen_load>::take(at), .every = io<::tankwright::duration>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::regular_meal& v, double*& at) {
    io<::tankwright::life::nitrogen_load>::put(v.mean, at);
    io<::tankwright::duration>::put(v.every, at);
  }
};

template <>
struct io<::tankwright::life::film> {
  static ::tankwright::life::film read(const given& in);
  static ::tankwright::life::film fields(const given& in);
  static ::tankwright::life::film take(const double*& at) {
    return {.plateau = io<::tankwright::mass_flux>::take(at), .plateau_at = io<::tankwright::temperature>::take(at), .plateau_from = io<::tankwright::water::total_ammonia>::take(at), .order = io<::tankwright::life::film_order>::take(at), .per_kelvin_on_plateau = io<double>::take(at), .per_kelvin_below = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::film& v, double*& at) {
    io<::tankwright::mass_flux>::put(v.plateau, at);
    io<::tankwright::temperature>::put(v.plateau_at, at);
    io<::tankwright::water::total_ammonia>::put(v.plateau_from, at);
    io<::tankwright::life::film_order>::put(v.order, at);
    io<double>::put(v.per_kelvin_on_plateau, at);
    io<double>::put(v.per_kelvin_below, at);
  }
};

template <>
struct io<::tankwright::life::fed_filter> {
  static ::tankwright::life::fed_filter read(const given& in);
  static ::tankwright::life::fed_filter fields(const given& in);
};

template <>
struct io<::tankwright::life::feed_nitrogen> {
  static void write(answer& out, const ::tankwright::life::feed_nitrogen& v);
  static void put(const ::tankwright::life::feed_nitrogen& v, double*& at) {
    io<::tankwright::estimate<::tankwright::life::nitrogen_load>>::put(v.ammonia, at);
    io<::tankwright::life::nitrogen_load>::put(v.bound, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::life::feeding> {
  static ::tankwright::life::feeding read(const given& in);
  static ::tankwright::life::feeding fields(const given& in);
  static ::tankwright::life::feeding take(const double*& at) {
    return {.food = io<::tankwright::mass_flow>::take(at), .protein = io<::tankwright::proportion>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::feeding& v, double*& at) {
    io<::tankwright::mass_flow>::put(v.food, at);
    io<::tankwright::proportion>::put(v.protein, at);
  }
};

template <>
struct io<::tankwright::life::film_water> {
  static ::tankwright::life::film_water read(const given& in);
  static ::tankwright::life::film_water fields(const given& in);
  static ::tankwright::life::film_water take(const double*& at) {
    return {.ammonia = io<::tankwright::water::total_ammonia>::take(at), .temperature = io<::tankwright::temperature>::take(at), .film = io<::tankwright::life::film>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::film_water& v, double*& at) {
    io<::tankwright::water::total_ammonia>::put(v.ammonia, at);
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::life::film>::put(v.film, at);
  }
};

template <>
struct io<::tankwright::life::filter_capacity> {
  static void write(answer& out, const ::tankwright::life::filter_capacity& v);
  static void put(const ::tankwright::life::filter_capacity& v, double*& at) {
    io<::tankwright::estimate<::tankwright::life::nitrogen_load>>::put(v.today, at);
    io<::tankwright::estimate<::tankwright::life::nitrogen_load>>::put(v.mature, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::life::filter_surface> {
  static ::tankwright::life::filter_surface read(const given& in);
  static ::tankwright::life::filter_surface fields(const given& in);
};

template <>
struct io<::tankwright::life::filter_load> {
  static ::tankwright::life::filter_load read(const given& in);
  static ::tankwright::life::filter_load fields(const given& in);
};

template <>
struct io<::tankwright::life::foam_column> {
  static ::tankwright::life::foam_column read(const given& in);
  static ::tankwright::life::foam_column fields(const given& in);
  static ::tankwright::life::foam_column take(const double*& at) {
    return {.water_in_column = io<::tankwright::volume>::take(at), .flow = io<::tankwright::flow_rate>::take(at), .net = io<::tankwright::volume>::take(at), .salinity = io<::tankwright::practical_salinity>::take(at), .temperature = io<::tankwright::temperature>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::foam_column& v, double*& at) {
    io<::tankwright::volume>::put(v.water_in_column, at);
    io<::tankwright::flow_rate>::put(v.flow, at);
    io<::tankwright::volume>::put(v.net, at);
    io<::tankwright::practical_salinity>::put(v.salinity, at);
    io<::tankwright::temperature>::put(v.temperature, at);
  }
};

template <>
struct io<::tankwright::life::foam_contact> {
  static void write(answer& out, const ::tankwright::life::foam_contact& v);
};

template <>
struct io<::tankwright::life::water_step> {
  static ::tankwright::life::water_step read(const given& in);
  static ::tankwright::life::water_step fields(const given& in);
  static ::tankwright::life::water_step take(const double*& at) {
    return {.salinity_from = io<::tankwright::practical_salinity>::take(at), .salinity_to = io<::tankwright::practical_salinity>::take(at), .temperature_from = io<::tankwright::temperature>::take(at), .temperature_to = io<::tankwright::temperature>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::water_step& v, double*& at) {
    io<::tankwright::practical_salinity>::put(v.salinity_from, at);
    io<::tankwright::practical_salinity>::put(v.salinity_to, at);
    io<::tankwright::temperature>::put(v.temperature_from, at);
    io<::tankwright::temperature>::put(v.temperature_to, at);
  }
};

template <>
struct io<::tankwright::life::gentle_drip> {
  static ::tankwright::life::gentle_drip read(const given& in);
  static ::tankwright::life::gentle_drip fields(const given& in);
  static ::tankwright::life::gentle_drip take(const double*& at) {
    return {.start = io<::tankwright::volume>::take(at), .step = io<::tankwright::life::water_step>::take(at), .salinity_per_hour = io<double>::take(at), .temperature_per_hour = io<::tankwright::temperature_difference>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::gentle_drip& v, double*& at) {
    io<::tankwright::volume>::put(v.start, at);
    io<::tankwright::life::water_step>::put(v.step, at);
    io<double>::put(v.salinity_per_hour, at);
    io<::tankwright::temperature_difference>::put(v.temperature_per_hour, at);
  }
};

template <>
struct io<::tankwright::life::growth_conditions> {
  static ::tankwright::life::growth_conditions read(const given& in);
  static ::tankwright::life::growth_conditions fields(const given& in);
  static ::tankwright::life::growth_conditions take(const double*& at) {
    return {.nitrogen = io<::tankwright::mass_density>::take(at), .oxygen = io<::tankwright::mass_density>::take(at), .temperature = io<::tankwright::temperature>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::growth_conditions& v, double*& at) {
    io<::tankwright::mass_density>::put(v.nitrogen, at);
    io<::tankwright::mass_density>::put(v.oxygen, at);
    io<::tankwright::temperature>::put(v.temperature, at);
  }
};

template <>
struct io<::tankwright::life::larger_load> {
  static ::tankwright::life::larger_load read(const given& in);
  static ::tankwright::life::larger_load fields(const given& in);
  static ::tankwright::life::larger_load take(const double*& at) {
    return {.before = io<::tankwright::life::nitrogen_load>::take(at), .after = io<::tankwright::life::nitrogen_load>::take(at), .growth = io<::tankwright::rate>::take(at), .net = io<::tankwright::volume>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::larger_load& v, double*& at) {
    io<::tankwright::life::nitrogen_load>::put(v.before, at);
    io<::tankwright::life::nitrogen_load>::put(v.after, at);
    io<::tankwright::rate>::put(v.growth, at);
    io<::tankwright::volume>::put(v.net, at);
  }
};

template <>
struct io<::tankwright::life::load_step> {
  static ::tankwright::life::load_step read(const given& in);
  static ::tankwright::life::load_step fields(const given& in);
  static ::tankwright::life::load_step take(const double*& at) {
    return {.from = io<::tankwright::duration>::take(at), .load = io<::tankwright::life::nitrogen_load>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::load_step& v, double*& at) {
    io<::tankwright::duration>::put(v.from, at);
    io<::tankwright::life::nitrogen_load>::put(v.load, at);
  }
};

template <>
struct io<::tankwright::life::loose_rock> {
  static ::tankwright::life::loose_rock read(const given& in);
  static ::tankwright::life::loose_rock fields(const given& in);
  static ::tankwright::life::loose_rock take(const double*& at) {
    return {.dry = io<::tankwright::mass>::take(at), .piece = io<::tankwright::length>::take(at), .density = io<::tankwright::mass_density>::take(at), .roughness = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::loose_rock& v, double*& at) {
    io<::tankwright::mass>::put(v.dry, at);
    io<::tankwright::length>::put(v.piece, at);
    io<::tankwright::mass_density>::put(v.density, at);
    io<double>::put(v.roughness, at);
  }
};

template <>
struct io<::tankwright::life::match_limits> {
  static ::tankwright::life::match_limits read(const given& in);
  static ::tankwright::life::match_limits fields(const given& in);
  static ::tankwright::life::match_limits take(const double*& at) {
    return {.salinity = io<double>::take(at), .temperature = io<::tankwright::temperature_difference>::take(at), .ph = io<double>::take(at), .ammonia = io<::tankwright::water::free_ammonia>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::match_limits& v, double*& at) {
    io<double>::put(v.salinity, at);
    io<::tankwright::temperature_difference>::put(v.temperature, at);
    io<double>::put(v.ph, at);
    io<::tankwright::water::free_ammonia>::put(v.ammonia, at);
  }
};

template <>
struct io<::tankwright::life::moved_rock> {
  static ::tankwright::life::moved_rock read(const given& in);
  static ::tankwright::life::moved_rock fields(const given& in);
  static ::tankwright::life::moved_rock take(const double*& at) {
    return {.proven = io<::tankwright::life::nitrogen_load>::take(at), .share_moved = io<::tankwright::proportion>::take(at), .new_load = io<::tankwright::life::nitrogen_load>::take(at), .net = io<::tankwright::volume>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::moved_rock& v, double*& at) {
    io<::tankwright::life::nitrogen_load>::put(v.proven, at);
    io<::tankwright::proportion>::put(v.share_moved, at);
    io<::tankwright::life::nitrogen_load>::put(v.new_load, at);
    io<::tankwright::volume>::put(v.net, at);
  }
};

template <>
struct io<::tankwright::life::nitrification_needs> {
  static void write(answer& out, const ::tankwright::life::nitrification_needs& v);
  static void put(const ::tankwright::life::nitrification_needs& v, double*& at) {
    io<::tankwright::estimate<::tankwright::mass_flow>>::put(v.oxygen, at);
    io<::tankwright::estimate<::tankwright::mass_flow>>::put(v.alkalinity, at);
    io<::tankwright::estimate<::tankwright::mass_flow>>::put(v.carbon_dioxide, at);
    io<::tankwright::estimate<::tankwright::mass_flow>>::put(v.cells, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::life::nitrifier> {
  static ::tankwright::life::nitrifier read(const given& in);
  static ::tankwright::life::nitrifier fields(const given& in);
  static void write(answer& out, const ::tankwright::life::nitrifier& v);
  static ::tankwright::life::nitrifier take(const double*& at) {
    return {.growth = io<::tankwright::rate>::take(at), .half_nitrogen = io<::tankwright::mass_density>::take(at), .yield = io<double>::take(at), .decay = io<::tankwright::rate>::take(at), .half_oxygen = io<::tankwright::mass_density>::take(at), .growth_per_kelvin = io<double>::take(at), .decay_per_kelvin = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::nitrifier& v, double*& at) {
    io<::tankwright::rate>::put(v.growth, at);
    io<::tankwright::mass_density>::put(v.half_nitrogen, at);
    io<double>::put(v.yield, at);
    io<::tankwright::rate>::put(v.decay, at);
    io<::tankwright::mass_density>::put(v.half_oxygen, at);
    io<double>::put(v.growth_per_kelvin, at);
    io<double>::put(v.decay_per_kelvin, at);
  }
};

template <>
struct io<::tankwright::life::oxygen_balance> {
  static ::tankwright::life::oxygen_balance read(const given& in);
  static ::tankwright::life::oxygen_balance fields(const given& in);
  static ::tankwright::life::oxygen_balance take(const double*& at) {
    return {.net = io<::tankwright::volume>::take(at), .use = io<::tankwright::mass_flow>::take(at), .saturation = io<::tankwright::mass_density>::take(at), .aeration = io<::tankwright::rate>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::oxygen_balance& v, double*& at) {
    io<::tankwright::volume>::put(v.net, at);
    io<::tankwright::mass_flow>::put(v.use, at);
    io<::tankwright::mass_density>::put(v.saturation, at);
    io<::tankwright::rate>::put(v.aeration, at);
  }
};

template <>
struct io<::tankwright::life::oxygen_countdown> {
  static void write(answer& out, const ::tankwright::life::oxygen_countdown& v);
};

template <>
struct io<::tankwright::life::oxygen_course> {
  static ::tankwright::life::oxygen_course read(const given& in);
  static ::tankwright::life::oxygen_course fields(const given& in);
  static ::tankwright::life::oxygen_course take(const double*& at) {
    return {.tank = io<::tankwright::life::oxygen_balance>::take(at), .start = io<::tankwright::mass_density>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::oxygen_course& v, double*& at) {
    io<::tankwright::life::oxygen_balance>::put(v.tank, at);
    io<::tankwright::mass_density>::put(v.start, at);
  }
};

template <>
struct io<::tankwright::life::oxygen_demand> {
  static void write(answer& out, const ::tankwright::life::oxygen_demand& v);
  static void put(const ::tankwright::life::oxygen_demand& v, double*& at) {
    io<::tankwright::mass_flow>::put(v.use, at);
    io<::tankwright::life::specific_oxygen_use>::put(v.per_mass, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::life::peak<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>> {
  static void write(answer& out, const ::tankwright::life::peak<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>& v);
  static void put(const ::tankwright::life::peak<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>& v, double*& at) {
    io<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>::put(v.level, at);
    io<::tankwright::duration>::put(v.at, at);
  }
};

template <>
struct io<::tankwright::life::peak<::tankwright::water::total_ammonia>> {
  static void write(answer& out, const ::tankwright::life::peak<::tankwright::water::total_ammonia>& v);
  static void put(const ::tankwright::life::peak<::tankwright::water::total_ammonia>& v, double*& at) {
    io<::tankwright::water::total_ammonia>::put(v.level, at);
    io<::tankwright::duration>::put(v.at, at);
  }
};

template <>
struct io<::tankwright::life::removal_task> {
  static ::tankwright::life::removal_task read(const given& in);
  static ::tankwright::life::removal_task fields(const given& in);
  static ::tankwright::life::removal_task take(const double*& at) {
    return {.made = io<::tankwright::mass_flow>::take(at), .level = io<::tankwright::mass_density>::take(at), .efficiency = io<::tankwright::proportion>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::removal_task& v, double*& at) {
    io<::tankwright::mass_flow>::put(v.made, at);
    io<::tankwright::mass_density>::put(v.level, at);
    io<::tankwright::proportion>::put(v.efficiency, at);
  }
};

template <>
struct io<::tankwright::life::rock_balance> {
  static void write(answer& out, const ::tankwright::life::rock_balance& v);
  static void put(const ::tankwright::life::rock_balance& v, double*& at) {
    io<::tankwright::life::nitrogen_load>::put(v.carried, at);
    io<::tankwright::life::nitrogen_load>::put(v.shortfall, at);
    io<double>::put(v.share_needed, at);
    io<::tankwright::water::total_ammonia>::put(v.daily_rise, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::life::seeding> {
  static ::tankwright::life::seeding read(const given& in);
  static ::tankwright::life::seeding fields(const given& in);
  static ::tankwright::life::seeding take(const double*& at) {
    return {.when = io<::tankwright::life::schedule>::take(at), .added = io<::tankwright::life::bacteria>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::seeding& v, double*& at) {
    io<::tankwright::life::schedule>::put(v.when, at);
    io<::tankwright::life::bacteria>::put(v.added, at);
  }
};

template <>
struct io<::tankwright::life::settled_ammonia> {
  static void write(answer& out, const ::tankwright::life::settled_ammonia& v);
};

template <>
struct io<::tankwright::life::water_change> {
  static ::tankwright::life::water_change read(const given& in);
  static ::tankwright::life::water_change fields(const given& in);
  static ::tankwright::life::water_change take(const double*& at) {
    return {.when = io<::tankwright::life::schedule>::take(at), .part = io<::tankwright::proportion>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::water_change& v, double*& at) {
    io<::tankwright::life::schedule>::put(v.when, at);
    io<::tankwright::proportion>::put(v.part, at);
  }
};

template <>
struct io<::tankwright::life::start_up> {
  static ::tankwright::life::start_up read(const given& in);
  static ::tankwright::life::start_up fields(const given& in);
};

template <>
struct io<::tankwright::life::start_up_summary> {
  static void write(answer& out, const ::tankwright::life::start_up_summary& v);
};

template <>
struct io<::tankwright::life::start_up_sample> {
  static void write(answer& out, const ::tankwright::life::start_up_sample& v);
  static void put(const ::tankwright::life::start_up_sample& v, double*& at) {
    io<::tankwright::duration>::put(v.at, at);
    io<::tankwright::water::total_ammonia>::put(v.ammonia, at);
    io<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrite_form>>::put(v.nitrite, at);
    io<::tankwright::life::detail::nitrogen_level<::tankwright::life::detail::nitrate_form>>::put(v.nitrate, at);
    io<::tankwright::life::bacteria>::put(v.living, at);
  }
};

template <>
struct io<::tankwright::life::start_up_result> {
  static void write(answer& out, const ::tankwright::life::start_up_result& v);
};

template <>
struct io<::tankwright::life::step_answer> {
  static void write(answer& out, const ::tankwright::life::step_answer& v);
  static void put(const ::tankwright::life::step_answer& v, double*& at) {
    io<::tankwright::water::total_ammonia>::put(v.left_over, at);
    io<::tankwright::duration>::put(v.catches_up, at);
  }
};

template <>
struct io<::tankwright::life::stocking_date> {
  static void write(answer& out, const ::tankwright::life::stocking_date& v);
  static void put(const ::tankwright::life::stocking_date& v, double*& at) {
    io<::tankwright::duration>::put(v.on, at);
    io<::tankwright::proportion>::put(v.share, at);
    io<::tankwright::water::total_ammonia>::put(v.left_over, at);
  }
};

template <>
struct io<::tankwright::life::stocking_question> {
  static ::tankwright::life::stocking_question read(const given& in);
  static ::tankwright::life::stocking_question fields(const given& in);
  static ::tankwright::life::stocking_question take(const double*& at) {
    return {.whole = io<::tankwright::life::nitrogen_load>::take(at), .start = io<::tankwright::proportion>::take(at), .step = io<::tankwright::proportion>::take(at), .rest = io<::tankwright::duration>::take(at), .growth = io<::tankwright::rate>::take(at), .net = io<::tankwright::volume>::take(at), .below = io<::tankwright::water::total_ammonia>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::stocking_question& v, double*& at) {
    io<::tankwright::life::nitrogen_load>::put(v.whole, at);
    io<::tankwright::proportion>::put(v.start, at);
    io<::tankwright::proportion>::put(v.step, at);
    io<::tankwright::duration>::put(v.rest, at);
    io<::tankwright::rate>::put(v.growth, at);
    io<::tankwright::volume>::put(v.net, at);
    io<::tankwright::water::total_ammonia>::put(v.below, at);
  }
};

template <>
struct io<::tankwright::life::swim_space> {
  static ::tankwright::life::swim_space read(const given& in);
  static ::tankwright::life::swim_space fields(const given& in);
  static ::tankwright::life::swim_space take(const double*& at) {
    return {.animal = io<::tankwright::length>::take(at), .run = io<::tankwright::length>::take(at), .width = io<::tankwright::length>::take(at), .speed = io<::tankwright::velocity>::take(at), .run_multiple = io<double>::take(at), .width_multiple = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::swim_space& v, double*& at) {
    io<::tankwright::length>::put(v.animal, at);
    io<::tankwright::length>::put(v.run, at);
    io<::tankwright::length>::put(v.width, at);
    io<::tankwright::velocity>::put(v.speed, at);
    io<double>::put(v.run_multiple, at);
    io<double>::put(v.width_multiple, at);
  }
};

template <>
struct io<::tankwright::life::water_between> {
  static void write(answer& out, const ::tankwright::life::water_between& v);
  static void put(const ::tankwright::life::water_between& v, double*& at) {
    io<::tankwright::practical_salinity>::put(v.salinity, at);
    io<::tankwright::temperature>::put(v.temperature, at);
  }
};

template <>
struct io<::tankwright::life::water_match> {
  static void write(answer& out, const ::tankwright::life::water_match& v);
  static void put(const ::tankwright::life::water_match& v, double*& at) {
    io<double>::put(v.salinity, at);
    io<::tankwright::temperature_difference>::put(v.temperature, at);
    io<double>::put(v.ph, at);
    io<::tankwright::estimate<::tankwright::water::free_ammonia>>::put(v.ammonia_as_is, at);
    io<::tankwright::estimate<::tankwright::water::free_ammonia>>::put(v.ammonia_at_tank_ph, at);
    io<bool>::put(v.salinity_matches, at);
    io<bool>::put(v.temperature_matches, at);
    io<bool>::put(v.ph_matches, at);
    io<bool>::put(v.ammonia_safe, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::life::water_pair> {
  static ::tankwright::life::water_pair read(const given& in);
  static ::tankwright::life::water_pair fields(const given& in);
};

template <>
struct io<::tankwright::life::working_filter> {
  static ::tankwright::life::working_filter read(const given& in);
  static ::tankwright::life::working_filter fields(const given& in);
  static ::tankwright::life::working_filter take(const double*& at) {
    return {.load = io<::tankwright::life::nitrogen_load>::take(at), .temperature = io<::tankwright::temperature>::take(at), .share_moved = io<::tankwright::proportion>::take(at), .ammonia_oxidisers = io<::tankwright::life::nitrifier>::take(at), .nitrite_oxidisers = io<::tankwright::life::nitrifier>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::life::working_filter& v, double*& at) {
    io<::tankwright::life::nitrogen_load>::put(v.load, at);
    io<::tankwright::temperature>::put(v.temperature, at);
    io<::tankwright::proportion>::put(v.share_moved, at);
    io<::tankwright::life::nitrifier>::put(v.ammonia_oxidisers, at);
    io<::tankwright::life::nitrifier>::put(v.nitrite_oxidisers, at);
  }
};

}  // namespace tankwright_formulas
