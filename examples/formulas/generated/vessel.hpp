// SPDX-License-Identifier: BSL-1.0
// Written by examples/formulas/make.py from the headers. Do not edit.
#pragma once

#include "../glue.hpp"
#include "water.hpp"
#include <tankwright/vessel/beam.hpp>
#include <tankwright/vessel/brace.hpp>
#include <tankwright/vessel/bulge.hpp>
#include <tankwright/vessel/cautions.hpp>
#include <tankwright/vessel/compound.hpp>
#include <tankwright/vessel/dimensions.hpp>
#include <tankwright/vessel/displacement.hpp>
#include <tankwright/vessel/fixings.hpp>
#include <tankwright/vessel/floor.hpp>
#include <tankwright/vessel/glass_sizes.hpp>
#include <tankwright/vessel/grains.hpp>
#include <tankwright/vessel/hydrostatic.hpp>
#include <tankwright/vessel/item.hpp>
#include <tankwright/vessel/joints.hpp>
#include <tankwright/vessel/leak_parts.hpp>
#include <tankwright/vessel/leak_test.hpp>
#include <tankwright/vessel/leak_test_planning.hpp>
#include <tankwright/vessel/lid.hpp>
#include <tankwright/vessel/lifting.hpp>
#include <tankwright/vessel/materials.hpp>
#include <tankwright/vessel/panel.hpp>
#include <tankwright/vessel/panel_edges.hpp>
#include <tankwright/vessel/panel_remarks.hpp>
#include <tankwright/vessel/plywood.hpp>
#include <tankwright/vessel/polygon.hpp>
#include <tankwright/vessel/rock.hpp>
#include <tankwright/vessel/sand.hpp>
#include <tankwright/vessel/shape.hpp>
#include <tankwright/vessel/view.hpp>

namespace tankwright_formulas {

template <>
struct io<::tankwright::vessel::leak_answer> {
  static void write(answer& out, const ::tankwright::vessel::leak_answer& v);
  static ::tankwright::vessel::leak_answer take(const double*& at) { return static_cast<::tankwright::vessel::leak_answer>(whole_number(*at++, 0, 3)); }
  static void put(::tankwright::vessel::leak_answer v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::vessel::load_basis> {
  static ::tankwright::vessel::load_basis read(const given& in);
  static void write(answer& out, const ::tankwright::vessel::load_basis& v);
  static ::tankwright::vessel::load_basis take(const double*& at) { return static_cast<::tankwright::vessel::load_basis>(whole_number(*at++, 0, 1)); }
  static void put(::tankwright::vessel::load_basis v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::vessel::panel_edges> {
  static ::tankwright::vessel::panel_edges read(const given& in);
  static ::tankwright::vessel::panel_edges take(const double*& at) { return static_cast<::tankwright::vessel::panel_edges>(whole_number(*at++, 0, 3)); }
  static void put(::tankwright::vessel::panel_edges v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::vessel::panel_remark> {
  static void write(answer& out, const ::tankwright::vessel::panel_remark& v);
  static ::tankwright::vessel::panel_remark take(const double*& at) { return static_cast<::tankwright::vessel::panel_remark>(whole_number(*at++, 0, 9)); }
  static void put(::tankwright::vessel::panel_remark v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::vessel::strip_spans> {
  static ::tankwright::vessel::strip_spans read(const given& in);
  static ::tankwright::vessel::strip_spans take(const double*& at) { return static_cast<::tankwright::vessel::strip_spans>(whole_number(*at++, 0, 1)); }
  static void put(::tankwright::vessel::strip_spans v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::vessel::support_kind> {
  static ::tankwright::vessel::support_kind read(const given& in);
  static ::tankwright::vessel::support_kind take(const double*& at) { return static_cast<::tankwright::vessel::support_kind>(whole_number(*at++, 0, 1)); }
  static void put(::tankwright::vessel::support_kind v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::vessel::envelope_volume> {
  static ::tankwright::vessel::envelope_volume read(const given& in);
  static void write(answer& out, const ::tankwright::vessel::envelope_volume& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::vessel::envelope_volume>& v) {
    out.band("envelope_volume", "m3", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::vessel::envelope_volume take(const double*& at) { return ::tankwright::vessel::envelope_volume{io<::tankwright::volume>::take(at)}; }
  static void put(const ::tankwright::vessel::envelope_volume& v, double*& at) { io<::tankwright::volume>::put(v.value(), at); }
};

template <>
struct io<::tankwright::vessel::free_volume> {
  static ::tankwright::vessel::free_volume read(const given& in);
  static void write(answer& out, const ::tankwright::vessel::free_volume& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::vessel::free_volume>& v) {
    out.band("free_volume", "m3", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::vessel::free_volume take(const double*& at) { return ::tankwright::vessel::free_volume{io<::tankwright::volume>::take(at)}; }
  static void put(const ::tankwright::vessel::free_volume& v, double*& at) { io<::tankwright::volume>::put(v.value(), at); }
};

template <>
struct io<::tankwright::vessel::inside> {
  static ::tankwright::vessel::inside read(const given& in);
  static void write(answer& out, const ::tankwright::vessel::inside& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::vessel::inside>& v) {
    out.band("inside", "m", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::vessel::inside take(const double*& at) { return ::tankwright::vessel::inside{io<::tankwright::length>::take(at)}; }
  static void put(const ::tankwright::vessel::inside& v, double*& at) { io<::tankwright::length>::put(v.value(), at); }
};

template <>
struct io<::tankwright::vessel::net_volume> {
  static ::tankwright::vessel::net_volume read(const given& in);
  static void write(answer& out, const ::tankwright::vessel::net_volume& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::vessel::net_volume>& v) {
    out.band("net_volume", "m3", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::vessel::net_volume take(const double*& at) { return ::tankwright::vessel::net_volume{io<::tankwright::volume>::take(at)}; }
  static void put(const ::tankwright::vessel::net_volume& v, double*& at) { io<::tankwright::volume>::put(v.value(), at); }
};

template <>
struct io<::tankwright::vessel::outside> {
  static ::tankwright::vessel::outside read(const given& in);
  static void write_band(answer& out, const tw::estimate<::tankwright::vessel::outside>& v) {
    out.band("outside", "m", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::vessel::outside take(const double*& at) { return ::tankwright::vessel::outside{io<::tankwright::length>::take(at)}; }
  static void put(const ::tankwright::vessel::outside& v, double*& at) { io<::tankwright::length>::put(v.value(), at); }
};

template <>
struct io<::tankwright::vessel::pore_volume> {
  static ::tankwright::vessel::pore_volume read(const given& in);
  static void write(answer& out, const ::tankwright::vessel::pore_volume& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::vessel::pore_volume>& v) {
    out.band("pore_volume", "m3", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::vessel::pore_volume take(const double*& at) { return ::tankwright::vessel::pore_volume{io<::tankwright::volume>::take(at)}; }
  static void put(const ::tankwright::vessel::pore_volume& v, double*& at) { io<::tankwright::volume>::put(v.value(), at); }
};

template <>
struct io<::tankwright::vessel::shape> {
  static ::tankwright::vessel::shape read(const given& in);
  static void write(answer& out, const ::tankwright::vessel::shape& v);
};

template <>
struct io<::tankwright::vessel::solid_volume> {
  static ::tankwright::vessel::solid_volume read(const given& in);
  static void write(answer& out, const ::tankwright::vessel::solid_volume& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::vessel::solid_volume>& v) {
    out.band("solid_volume", "m3", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::vessel::solid_volume take(const double*& at) { return ::tankwright::vessel::solid_volume{io<::tankwright::volume>::take(at)}; }
  static void put(const ::tankwright::vessel::solid_volume& v, double*& at) { io<::tankwright::volume>::put(v.value(), at); }
};

template <>
struct io<::tankwright::vessel::allowable_stress> {
  static ::tankwright::vessel::allowable_stress read(const given& in);
  static ::tankwright::vessel::allowable_stress fields(const given& in);
  static void write(answer& out, const ::tankwright::vessel::allowable_stress& v);
};

template <>
struct io<::tankwright::vessel::beam_section> {
  static ::tankwright::vessel::beam_section read(const given& in);
  static ::tankwright::vessel::beam_section fields(const given& in);
  static void write(answer& out, const ::tankwright::vessel::beam_section& v);
  static ::tankwright::vessel::beam_section take(const double*& at) {
    return {.area = io<::tankwright::area>::take(at), .second_moment = io<::tankwright::second_moment_of_area>::take(at), .extreme_fibre = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::beam_section& v, double*& at) {
    io<::tankwright::area>::put(v.area, at);
    io<::tankwright::second_moment_of_area>::put(v.second_moment, at);
    io<::tankwright::length>::put(v.extreme_fibre, at);
  }
};

template <>
struct io<::tankwright::vessel::beam_support> {
  static ::tankwright::vessel::beam_support read(const given& in);
  static ::tankwright::vessel::beam_support fields(const given& in);
  static ::tankwright::vessel::beam_support take(const double*& at) {
    return {.at = io<::tankwright::length>::take(at), .kind = io<::tankwright::vessel::support_kind>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::beam_support& v, double*& at) {
    io<::tankwright::length>::put(v.at, at);
    io<::tankwright::vessel::support_kind>::put(v.kind, at);
  }
};

template <>
struct io<::tankwright::vessel::point_load> {
  static ::tankwright::vessel::point_load read(const given& in);
  static ::tankwright::vessel::point_load fields(const given& in);
};

template <>
struct io<::tankwright::vessel::spread_load> {
  static ::tankwright::vessel::spread_load read(const given& in);
  static ::tankwright::vessel::spread_load fields(const given& in);
};

template <>
struct io<::tankwright::vessel::beam> {
  static ::tankwright::vessel::beam read(const given& in);
  static ::tankwright::vessel::beam fields(const given& in);
};

template <>
struct io<::tankwright::vessel::support_reaction> {
  static ::tankwright::vessel::support_reaction read(const given& in);
  static ::tankwright::vessel::support_reaction fields(const given& in);
  static void write(answer& out, const ::tankwright::vessel::support_reaction& v);
  static ::tankwright::vessel::support_reaction take(const double*& at) {
    return {.at = io<::tankwright::length>::take(at), .up = io<::tankwright::force>::take(at), .holding = io<::tankwright::energy>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::support_reaction& v, double*& at) {
    io<::tankwright::length>::put(v.at, at);
    io<::tankwright::force>::put(v.up, at);
    io<::tankwright::energy>::put(v.holding, at);
  }
};

template <>
struct io<::tankwright::vessel::detail::curve_term> {
  static ::tankwright::vessel::detail::curve_term read(const given& in);
  static ::tankwright::vessel::detail::curve_term fields(const given& in);
  static void write(answer& out, const ::tankwright::vessel::detail::curve_term& v);
  static ::tankwright::vessel::detail::curve_term take(const double*& at) {
    return {.a = io<double>::take(at), .power = io<int>::take(at), .coefficient = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::detail::curve_term& v, double*& at) {
    io<double>::put(v.a, at);
    io<int>::put(v.power, at);
    io<double>::put(v.coefficient, at);
  }
};

template <>
struct io<::tankwright::vessel::detail::deflection_curve> {
  static ::tankwright::vessel::detail::deflection_curve read(const given& in);
  static ::tankwright::vessel::detail::deflection_curve fields(const given& in);
  static void write(answer& out, const ::tankwright::vessel::detail::deflection_curve& v);
};

template <>
struct io<::tankwright::vessel::detail::solved_beam> {
  static ::tankwright::vessel::detail::solved_beam read(const given& in);
  static ::tankwright::vessel::detail::solved_beam fields(const given& in);
  static void write(answer& out, const ::tankwright::vessel::detail::solved_beam& v);
};

template <>
struct io<::tankwright::vessel::beam_result> {
  static ::tankwright::vessel::beam_result read(const given& in);
  static ::tankwright::vessel::beam_result fields(const given& in);
  static void write(answer& out, const ::tankwright::vessel::beam_result& v);
};

template <>
struct io<::tankwright::vessel::beam_station> {
  static void write(answer& out, const ::tankwright::vessel::beam_station& v);
  static void put(const ::tankwright::vessel::beam_station& v, double*& at) {
    io<::tankwright::length>::put(v.deflection, at);
    io<::tankwright::angle>::put(v.slope, at);
    io<::tankwright::energy>::put(v.moment, at);
    io<::tankwright::force>::put(v.shear, at);
  }
};

template <>
struct io<::tankwright::vessel::bed_slope> {
  static ::tankwright::vessel::bed_slope read(const given& in);
  static ::tankwright::vessel::bed_slope fields(const given& in);
  static ::tankwright::vessel::bed_slope take(const double*& at) {
    return {.shallow_end = io<::tankwright::length>::take(at), .deep_end = io<::tankwright::length>::take(at), .run = io<::tankwright::length>::take(at), .repose = io<::tankwright::angle>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::bed_slope& v, double*& at) {
    io<::tankwright::length>::put(v.shallow_end, at);
    io<::tankwright::length>::put(v.deep_end, at);
    io<::tankwright::length>::put(v.run, at);
    io<::tankwright::angle>::put(v.repose, at);
  }
};

template <>
struct io<::tankwright::vessel::bow_front_size> {
  static ::tankwright::vessel::bow_front_size read(const given& in);
  static ::tankwright::vessel::bow_front_size fields(const given& in);
};

template <>
struct io<::tankwright::vessel::box_size> {
  static ::tankwright::vessel::box_size read(const given& in);
  static ::tankwright::vessel::box_size fields(const given& in);
};

template <>
struct io<::tankwright::vessel::brace_pull> {
  static void write(answer& out, const ::tankwright::vessel::brace_pull& v);
};

template <>
struct io<::tankwright::vessel::braced_rail> {
  static ::tankwright::vessel::braced_rail read(const given& in);
  static ::tankwright::vessel::braced_rail fields(const given& in);
  static ::tankwright::vessel::braced_rail take(const double*& at) {
    return {.rail = io<::tankwright::length>::take(at), .braces = io<int>::take(at), .load = io<::tankwright::line_load>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::braced_rail& v, double*& at) {
    io<::tankwright::length>::put(v.rail, at);
    io<int>::put(v.braces, at);
    io<::tankwright::line_load>::put(v.load, at);
  }
};

template <>
struct io<::tankwright::vessel::breakage_question> {
  static ::tankwright::vessel::breakage_question read(const given& in);
  static ::tankwright::vessel::breakage_question fields(const given& in);
  static ::tankwright::vessel::breakage_question take(const double*& at) {
    return {.breakage_probability = io<::tankwright::proportion>::take(at), .stressed_area = io<::tankwright::area>::take(at), .lasting = io<::tankwright::duration>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::breakage_question& v, double*& at) {
    io<::tankwright::proportion>::put(v.breakage_probability, at);
    io<::tankwright::area>::put(v.stressed_area, at);
    io<::tankwright::duration>::put(v.lasting, at);
  }
};

template <>
struct io<::tankwright::vessel::bulge_gauge> {
  static ::tankwright::vessel::bulge_gauge read(const given& in);
  static ::tankwright::vessel::bulge_gauge fields(const given& in);
};

template <>
struct io<::tankwright::vessel::bulge_question> {
  static ::tankwright::vessel::bulge_question read(const given& in);
  static ::tankwright::vessel::bulge_question fields(const given& in);
};

template <>
struct io<::tankwright::vessel::bulge_reading> {
  static void write(answer& out, const ::tankwright::vessel::bulge_reading& v);
};

template <>
struct io<::tankwright::vessel::bulk_and_grain> {
  static ::tankwright::vessel::bulk_and_grain read(const given& in);
  static ::tankwright::vessel::bulk_and_grain fields(const given& in);
  static ::tankwright::vessel::bulk_and_grain take(const double*& at) {
    return {.dry_bulk = io<::tankwright::mass_density>::take(at), .grain = io<::tankwright::mass_density>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::bulk_and_grain& v, double*& at) {
    io<::tankwright::mass_density>::put(v.dry_bulk, at);
    io<::tankwright::mass_density>::put(v.grain, at);
  }
};

template <>
struct io<::tankwright::vessel::bulkhead_hole> {
  static ::tankwright::vessel::bulkhead_hole read(const given& in);
  static ::tankwright::vessel::bulkhead_hole fields(const given& in);
};

template <>
struct io<::tankwright::vessel::bulkhead_result> {
  static void write(answer& out, const ::tankwright::vessel::bulkhead_result& v);
  static void put(const ::tankwright::vessel::bulkhead_result& v, double*& at) {
    io<::tankwright::pressure>::put(v.pressure, at);
    io<::tankwright::force>::put(v.blow_off, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::vessel::buoyant_weighing> {
  static ::tankwright::vessel::buoyant_weighing read(const given& in);
  static ::tankwright::vessel::buoyant_weighing fields(const given& in);
  static ::tankwright::vessel::buoyant_weighing take(const double*& at) {
    return {.submerged_mass = io<::tankwright::mass>::take(at), .grain_density = io<::tankwright::mass_density>::take(at), .water_density = io<::tankwright::mass_density>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::buoyant_weighing& v, double*& at) {
    io<::tankwright::mass>::put(v.submerged_mass, at);
    io<::tankwright::mass_density>::put(v.grain_density, at);
    io<::tankwright::mass_density>::put(v.water_density, at);
  }
};

template <>
struct io<::tankwright::vessel::corner> {
  static ::tankwright::vessel::corner read(const given& in);
  static ::tankwright::vessel::corner fields(const given& in);
  static void write(answer& out, const ::tankwright::vessel::corner& v);
  static ::tankwright::vessel::corner take(const double*& at) {
    return {.x = io<::tankwright::length>::take(at), .y = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::corner& v, double*& at) {
    io<::tankwright::length>::put(v.x, at);
    io<::tankwright::length>::put(v.y, at);
  }
};

template <>
struct io<::tankwright::vessel::counted_drops> {
  static ::tankwright::vessel::counted_drops read(const given& in);
  static ::tankwright::vessel::counted_drops fields(const given& in);
  static ::tankwright::vessel::counted_drops take(const double*& at) {
    return {.drops = io<int>::take(at), .over = io<::tankwright::duration>::take(at), .drop = io<::tankwright::estimate<::tankwright::volume>>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::counted_drops& v, double*& at) {
    io<int>::put(v.drops, at);
    io<::tankwright::duration>::put(v.over, at);
    io<::tankwright::estimate<::tankwright::volume>>::put(v.drop, at);
  }
};

template <>
struct io<::tankwright::vessel::level_reading> {
  static ::tankwright::vessel::level_reading read(const given& in);
  static ::tankwright::vessel::level_reading fields(const given& in);
};

template <>
struct io<::tankwright::vessel::tightness_criterion> {
  static ::tankwright::vessel::tightness_criterion read(const given& in);
  static ::tankwright::vessel::tightness_criterion fields(const given& in);
};

template <>
struct io<::tankwright::vessel::leak_test> {
  static ::tankwright::vessel::leak_test read(const given& in);
  static ::tankwright::vessel::leak_test fields(const given& in);
};

template <>
struct io<::tankwright::vessel::cover_comparison> {
  static ::tankwright::vessel::cover_comparison read(const given& in);
  static ::tankwright::vessel::cover_comparison fields(const given& in);
};

template <>
struct io<::tankwright::vessel::cover_result> {
  static void write(answer& out, const ::tankwright::vessel::cover_result& v);
  static void put(const ::tankwright::vessel::cover_result& v, double*& at) {
    io<::tankwright::estimate<::tankwright::flow_rate>>::put(v.leak, at);
    io<::tankwright::estimate<::tankwright::velocity>>::put(v.evaporation, at);
    io<::tankwright::proportion>::put(v.chance_without_leak, at);
    io<::tankwright::vessel::leak_answer>::put(v.answer, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::vessel::criterion_outcome> {
  static void write(answer& out, const ::tankwright::vessel::criterion_outcome& v);
  static void put(const ::tankwright::vessel::criterion_outcome& v, double*& at) {
    io<::tankwright::flow_rate>::put(v.allowed, at);
    io<::tankwright::flow_rate>::put(v.room, at);
    io<::tankwright::duration>::put(v.missing, at);
  }
};

template <>
struct io<::tankwright::vessel::deflection_limit> {
  static ::tankwright::vessel::deflection_limit read(const given& in);
  static ::tankwright::vessel::deflection_limit fields(const given& in);
};

template <>
struct io<::tankwright::vessel::drip_result> {
  static void write(answer& out, const ::tankwright::vessel::drip_result& v);
  static void put(const ::tankwright::vessel::drip_result& v, double*& at) {
    io<::tankwright::estimate<::tankwright::flow_rate>>::put(v.leak, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::vessel::empty_sump> {
  static ::tankwright::vessel::empty_sump read(const given& in);
  static ::tankwright::vessel::empty_sump fields(const given& in);
};

template <>
struct io<::tankwright::vessel::equipment_size> {
  static ::tankwright::vessel::equipment_size read(const given& in);
  static ::tankwright::vessel::equipment_size fields(const given& in);
};

template <>
struct io<::tankwright::vessel::moment_at> {
  static void write(answer& out, const ::tankwright::vessel::moment_at& v);
  static void put(const ::tankwright::vessel::moment_at& v, double*& at) {
    io<::tankwright::force>::put(v.value, at);
    io<::tankwright::length>::put(v.from_side, at);
    io<::tankwright::length>::put(v.from_below, at);
  }
};

template <>
struct io<::tankwright::vessel::panel_result> {
  static void write(answer& out, const ::tankwright::vessel::panel_result& v);
};

template <>
struct io<::tankwright::vessel::fill_stage> {
  static void write(answer& out, const ::tankwright::vessel::fill_stage& v);
};

template <>
struct io<::tankwright::vessel::floor_live_load> {
  static ::tankwright::vessel::floor_live_load read(const given& in);
  static ::tankwright::vessel::floor_live_load fields(const given& in);
  static void write(answer& out, const ::tankwright::vessel::floor_live_load& v);
};

template <>
struct io<::tankwright::vessel::floor_question> {
  static ::tankwright::vessel::floor_question read(const given& in);
  static ::tankwright::vessel::floor_question fields(const given& in);
};

template <>
struct io<::tankwright::vessel::floor_result> {
  static void write(answer& out, const ::tankwright::vessel::floor_result& v);
};

template <>
struct io<::tankwright::vessel::frustum_size> {
  static ::tankwright::vessel::frustum_size read(const given& in);
  static ::tankwright::vessel::frustum_size fields(const given& in);
};

template <>
struct io<::tankwright::vessel::gasket_material> {
  static ::tankwright::vessel::gasket_material read(const given& in);
  static ::tankwright::vessel::gasket_material fields(const given& in);
};

template <>
struct io<::tankwright::vessel::gasket_result> {
  static void write(answer& out, const ::tankwright::vessel::gasket_result& v);
  static void put(const ::tankwright::vessel::gasket_result& v, double*& at) {
    io<::tankwright::force>::put(v.in_service, at);
    io<::tankwright::force>::put(v.to_seat, at);
    io<::tankwright::force>::put(v.governing, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::vessel::gasket_ring> {
  static ::tankwright::vessel::gasket_ring read(const given& in);
  static ::tankwright::vessel::gasket_ring fields(const given& in);
};

template <>
struct io<::tankwright::vessel::grains> {
  static ::tankwright::vessel::grains read(const given& in);
  static ::tankwright::vessel::grains fields(const given& in);
};

template <>
struct io<::tankwright::vessel::hand_lift> {
  static ::tankwright::vessel::hand_lift read(const given& in);
  static ::tankwright::vessel::hand_lift fields(const given& in);
  static ::tankwright::vessel::hand_lift take(const double*& at) {
    return {.reach = io<::tankwright::length>::take(at), .height = io<::tankwright::length>::take(at), .travel = io<::tankwright::length>::take(at), .coupling = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::hand_lift& v, double*& at) {
    io<::tankwright::length>::put(v.reach, at);
    io<::tankwright::length>::put(v.height, at);
    io<::tankwright::length>::put(v.travel, at);
    io<double>::put(v.coupling, at);
  }
};

template <>
struct io<::tankwright::vessel::hole> {
  static ::tankwright::vessel::hole read(const given& in);
  static ::tankwright::vessel::hole fields(const given& in);
  static ::tankwright::vessel::hole take(const double*& at) {
    return {.diameter = io<::tankwright::length>::take(at), .depth = io<::tankwright::length>::take(at), .discharge_coefficient = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::hole& v, double*& at) {
    io<::tankwright::length>::put(v.diameter, at);
    io<::tankwright::length>::put(v.depth, at);
    io<double>::put(v.discharge_coefficient, at);
  }
};

template <>
struct io<::tankwright::vessel::item> {
  static ::tankwright::vessel::item read(const given& in);
  static ::tankwright::vessel::item fields(const given& in);
  static void write(answer& out, const ::tankwright::vessel::item& v);
};

template <>
struct io<::tankwright::vessel::item_weight> {
  static void write(answer& out, const ::tankwright::vessel::item_weight& v);
  static void put(const ::tankwright::vessel::item_weight& v, double*& at) {
    io<::tankwright::estimate<::tankwright::mass>>::put(v.dry, at);
    io<::tankwright::estimate<::tankwright::mass>>::put(v.wet, at);
    io<::tankwright::estimate<::tankwright::mass>>::put(v.submerged, at);
  }
};

template <>
struct io<::tankwright::vessel::leak_test_plan> {
  static ::tankwright::vessel::leak_test_plan read(const given& in);
  static ::tankwright::vessel::leak_test_plan fields(const given& in);
  static ::tankwright::vessel::leak_test_plan take(const double*& at) {
    return {.surface = io<::tankwright::area>::take(at), .resolution = io<::tankwright::length>::take(at), .scatter = io<::tankwright::length>::take(at), .readings_per_day = io<double>::take(at), .pan = io<bool>::take(at), .evaporation = io<::tankwright::estimate<::tankwright::velocity>>::take(at), .confidence = io<::tankwright::proportion>::take(at), .power = io<::tankwright::proportion>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::leak_test_plan& v, double*& at) {
    io<::tankwright::area>::put(v.surface, at);
    io<::tankwright::length>::put(v.resolution, at);
    io<::tankwright::length>::put(v.scatter, at);
    io<double>::put(v.readings_per_day, at);
    io<bool>::put(v.pan, at);
    io<::tankwright::estimate<::tankwright::velocity>>::put(v.evaporation, at);
    io<::tankwright::proportion>::put(v.confidence, at);
    io<::tankwright::proportion>::put(v.power, at);
  }
};

template <>
struct io<::tankwright::vessel::reader_offset> {
  static void write(answer& out, const ::tankwright::vessel::reader_offset& v);
};

template <>
struct io<::tankwright::vessel::leak_test_result> {
  static void write(answer& out, const ::tankwright::vessel::leak_test_result& v);
};

template <>
struct io<::tankwright::vessel::leak_test_stage> {
  static void write(answer& out, const ::tankwright::vessel::leak_test_stage& v);
};

template <>
struct io<::tankwright::vessel::leaning_wall> {
  static ::tankwright::vessel::leaning_wall read(const given& in);
  static ::tankwright::vessel::leaning_wall fields(const given& in);
};

template <>
struct io<::tankwright::vessel::level_rise> {
  static ::tankwright::vessel::level_rise read(const given& in);
  static ::tankwright::vessel::level_rise fields(const given& in);
};

template <>
struct io<::tankwright::vessel::panel_material> {
  static ::tankwright::vessel::panel_material read(const given& in);
  static ::tankwright::vessel::panel_material fields(const given& in);
};

template <>
struct io<::tankwright::vessel::lid> {
  static ::tankwright::vessel::lid read(const given& in);
  static ::tankwright::vessel::lid fields(const given& in);
};

template <>
struct io<::tankwright::vessel::lid_result> {
  static void write(answer& out, const ::tankwright::vessel::lid_result& v);
};

template <>
struct io<::tankwright::vessel::load_spell> {
  static ::tankwright::vessel::load_spell read(const given& in);
  static ::tankwright::vessel::load_spell fields(const given& in);
  static ::tankwright::vessel::load_spell take(const double*& at) {
    return {.load = io<::tankwright::pressure>::take(at), .lasting = io<::tankwright::duration>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::load_spell& v, double*& at) {
    io<::tankwright::pressure>::put(v.load, at);
    io<::tankwright::duration>::put(v.lasting, at);
  }
};

template <>
struct io<::tankwright::vessel::lying_cylinder_size> {
  static ::tankwright::vessel::lying_cylinder_size read(const given& in);
  static ::tankwright::vessel::lying_cylinder_size fields(const given& in);
};

template <>
struct io<::tankwright::vessel::outside_measure> {
  static ::tankwright::vessel::outside_measure read(const given& in);
  static ::tankwright::vessel::outside_measure fields(const given& in);
  static ::tankwright::vessel::outside_measure take(const double*& at) {
    return {.measured = io<::tankwright::vessel::outside>::take(at), .near_panel = io<::tankwright::length>::take(at), .far_panel = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::outside_measure& v, double*& at) {
    io<::tankwright::vessel::outside>::put(v.measured, at);
    io<::tankwright::length>::put(v.near_panel, at);
    io<::tankwright::length>::put(v.far_panel, at);
  }
};

template <>
struct io<::tankwright::vessel::pane_hole> {
  static ::tankwright::vessel::pane_hole read(const given& in);
  static ::tankwright::vessel::pane_hole fields(const given& in);
};

template <>
struct io<::tankwright::vessel::panel> {
  static ::tankwright::vessel::panel read(const given& in);
  static ::tankwright::vessel::panel fields(const given& in);
};

template <>
struct io<::tankwright::vessel::part_leak> {
  static void write(answer& out, const ::tankwright::vessel::part_leak& v);
};

template <>
struct io<::tankwright::vessel::parts_result> {
  static void write(answer& out, const ::tankwright::vessel::parts_result& v);
};

template <>
struct io<::tankwright::vessel::phases> {
  static void write(answer& out, const ::tankwright::vessel::phases& v);
  static void put(const ::tankwright::vessel::phases& v, double*& at) {
    io<::tankwright::porosity>::put(v.pores, at);
    io<double>::put(v.void_ratio, at);
    io<double>::put(v.water_content, at);
    io<double>::put(v.saturation, at);
    io<::tankwright::mass_density>::put(v.dry_density, at);
    io<::tankwright::mass_density>::put(v.wet_density, at);
    io<::tankwright::mass_density>::put(v.grain_density, at);
    io<bool>::put(v.more_water_than_pores, at);
  }
};

template <>
struct io<::tankwright::vessel::placed_shape> {
  static ::tankwright::vessel::placed_shape read(const given& in);
  static ::tankwright::vessel::placed_shape fields(const given& in);
};

template <>
struct io<::tankwright::vessel::prism_size> {
  static ::tankwright::vessel::prism_size read(const given& in);
  static ::tankwright::vessel::prism_size fields(const given& in);
};

template <>
struct io<::tankwright::vessel::rail_loads> {
  static void write(answer& out, const ::tankwright::vessel::rail_loads& v);
  static void put(const ::tankwright::vessel::rail_loads& v, double*& at) {
    io<::tankwright::line_load>::put(v.top, at);
    io<::tankwright::line_load>::put(v.bottom, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::vessel::railed_panel> {
  static ::tankwright::vessel::railed_panel read(const given& in);
  static ::tankwright::vessel::railed_panel fields(const given& in);
};

template <>
struct io<::tankwright::vessel::ray_panel> {
  static ::tankwright::vessel::ray_panel read(const given& in);
  static ::tankwright::vessel::ray_panel fields(const given& in);
  static ::tankwright::vessel::ray_panel take(const double*& at) {
    return {.thickness = io<::tankwright::length>::take(at), .panel_index = io<::tankwright::water::refractive_index>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::ray_panel& v, double*& at) {
    io<::tankwright::length>::put(v.thickness, at);
    io<::tankwright::water::refractive_index>::put(v.panel_index, at);
  }
};

template <>
struct io<::tankwright::vessel::rectangle> {
  static ::tankwright::vessel::rectangle read(const given& in);
  static ::tankwright::vessel::rectangle fields(const given& in);
  static ::tankwright::vessel::rectangle take(const double*& at) {
    return {.breadth = io<::tankwright::length>::take(at), .depth = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::rectangle& v, double*& at) {
    io<::tankwright::length>::put(v.breadth, at);
    io<::tankwright::length>::put(v.depth, at);
  }
};

template <>
struct io<::tankwright::vessel::regular_prism_size> {
  static ::tankwright::vessel::regular_prism_size read(const given& in);
  static ::tankwright::vessel::regular_prism_size fields(const given& in);
};

template <>
struct io<::tankwright::vessel::remark> {
  static void write(answer& out, const ::tankwright::vessel::remark& v);
};

template <>
struct io<::tankwright::vessel::rock_mass> {
  static ::tankwright::vessel::rock_mass read(const given& in);
  static ::tankwright::vessel::rock_mass fields(const given& in);
};

template <>
struct io<::tankwright::vessel::rock_weighing> {
  static ::tankwright::vessel::rock_weighing read(const given& in);
  static ::tankwright::vessel::rock_weighing fields(const given& in);
};

template <>
struct io<::tankwright::vessel::sand_bed_size> {
  static ::tankwright::vessel::sand_bed_size read(const given& in);
  static ::tankwright::vessel::sand_bed_size fields(const given& in);
};

template <>
struct io<::tankwright::vessel::sand_mass> {
  static ::tankwright::vessel::sand_mass read(const given& in);
  static ::tankwright::vessel::sand_mass fields(const given& in);
};

template <>
struct io<::tankwright::vessel::saturated_sample> {
  static ::tankwright::vessel::saturated_sample read(const given& in);
  static ::tankwright::vessel::saturated_sample fields(const given& in);
  static ::tankwright::vessel::saturated_sample take(const double*& at) {
    return {.water_content = io<double>::take(at), .grain_density = io<::tankwright::mass_density>::take(at), .water_density = io<::tankwright::mass_density>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::saturated_sample& v, double*& at) {
    io<double>::put(v.water_content, at);
    io<::tankwright::mass_density>::put(v.grain_density, at);
    io<::tankwright::mass_density>::put(v.water_density, at);
  }
};

template <>
struct io<::tankwright::vessel::scene> {
  static ::tankwright::vessel::scene read(const given& in);
  static ::tankwright::vessel::scene fields(const given& in);
};

template <>
struct io<::tankwright::vessel::sheet_strip> {
  static ::tankwright::vessel::sheet_strip read(const given& in);
  static ::tankwright::vessel::sheet_strip fields(const given& in);
};

template <>
struct io<::tankwright::vessel::slope_result> {
  static void write(answer& out, const ::tankwright::vessel::slope_result& v);
  static void put(const ::tankwright::vessel::slope_result& v, double*& at) {
    io<::tankwright::length>::put(v.mean_depth, at);
    io<::tankwright::angle>::put(v.slope, at);
    io<bool>::put(v.steeper_than_repose, at);
  }
};

template <>
struct io<::tankwright::vessel::strip_result> {
  static void write(answer& out, const ::tankwright::vessel::strip_result& v);
  static void put(const ::tankwright::vessel::strip_result& v, double*& at) {
    io<::tankwright::force>::put(v.moment, at);
    io<::tankwright::force>::put(v.capacity, at);
    io<double>::put(v.utilisation, at);
    io<::tankwright::length>::put(v.sag, at);
    io<::tankwright::length>::put(v.long_term_sag, at);
    io<double>::put(v.span_over_sag, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::vessel::surface> {
  static ::tankwright::vessel::surface read(const given& in);
  static ::tankwright::vessel::surface fields(const given& in);
  static ::tankwright::vessel::surface take(const double*& at) {
    return {.from = io<::tankwright::water::refractive_index>::take(at), .into = io<::tankwright::water::refractive_index>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::surface& v, double*& at) {
    io<::tankwright::water::refractive_index>::put(v.from, at);
    io<::tankwright::water::refractive_index>::put(v.into, at);
  }
};

template <>
struct io<::tankwright::vessel::underwater_view> {
  static ::tankwright::vessel::underwater_view read(const given& in);
  static ::tankwright::vessel::underwater_view fields(const given& in);
  static ::tankwright::vessel::underwater_view take(const double*& at) {
    return {.water = io<::tankwright::length>::take(at), .panel = io<::tankwright::length>::take(at), .water_index = io<::tankwright::water::refractive_index>::take(at), .panel_index = io<::tankwright::water::refractive_index>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::underwater_view& v, double*& at) {
    io<::tankwright::length>::put(v.water, at);
    io<::tankwright::length>::put(v.panel, at);
    io<::tankwright::water::refractive_index>::put(v.water_index, at);
    io<::tankwright::water::refractive_index>::put(v.panel_index, at);
  }
};

template <>
struct io<::tankwright::vessel::uplift_result> {
  static void write(answer& out, const ::tankwright::vessel::uplift_result& v);
  static void put(const ::tankwright::vessel::uplift_result& v, double*& at) {
    io<::tankwright::force>::put(v.buoyancy, at);
    io<::tankwright::force>::put(v.net_up, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::vessel::upright_cylinder_size> {
  static ::tankwright::vessel::upright_cylinder_size read(const given& in);
  static ::tankwright::vessel::upright_cylinder_size fields(const given& in);
};

template <>
struct io<::tankwright::vessel::wanted_view> {
  static ::tankwright::vessel::wanted_view read(const given& in);
  static ::tankwright::vessel::wanted_view fields(const given& in);
  static ::tankwright::vessel::wanted_view take(const double*& at) {
    return {.apparent = io<::tankwright::length>::take(at), .panel = io<::tankwright::length>::take(at), .water_index = io<::tankwright::water::refractive_index>::take(at), .panel_index = io<::tankwright::water::refractive_index>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::wanted_view& v, double*& at) {
    io<::tankwright::length>::put(v.apparent, at);
    io<::tankwright::length>::put(v.panel, at);
    io<::tankwright::water::refractive_index>::put(v.water_index, at);
    io<::tankwright::water::refractive_index>::put(v.panel_index, at);
  }
};

template <>
struct io<::tankwright::vessel::water_behind> {
  static ::tankwright::vessel::water_behind read(const given& in);
  static ::tankwright::vessel::water_behind fields(const given& in);
  static ::tankwright::vessel::water_behind take(const double*& at) {
    return {.level = io<::tankwright::length>::take(at), .water_density = io<::tankwright::mass_density>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::water_behind& v, double*& at) {
    io<::tankwright::length>::put(v.level, at);
    io<::tankwright::mass_density>::put(v.water_density, at);
  }
};

template <>
struct io<::tankwright::vessel::water_content> {
  static ::tankwright::vessel::water_content read(const given& in);
  static ::tankwright::vessel::water_content fields(const given& in);
  static void write(answer& out, const ::tankwright::vessel::water_content& v);
  static ::tankwright::vessel::water_content take(const double*& at) {
    return {.gross = io<::tankwright::volume>::take(at), .solids = io<::tankwright::estimate<::tankwright::vessel::solid_volume>>::take(at), .pores = io<::tankwright::estimate<::tankwright::vessel::pore_volume>>::take(at), .envelope = io<::tankwright::estimate<::tankwright::vessel::envelope_volume>>::take(at), .net = io<::tankwright::estimate<::tankwright::vessel::net_volume>>::take(at), .free = io<::tankwright::estimate<::tankwright::vessel::free_volume>>::take(at), .contents_dry = io<::tankwright::estimate<::tankwright::mass>>::take(at), .contents_submerged = io<::tankwright::estimate<::tankwright::mass>>::take(at), .water = io<::tankwright::estimate<::tankwright::mass>>::take(at), .on_the_floor = io<::tankwright::estimate<::tankwright::mass>>::take(at), .caution = {}};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::water_content& v, double*& at) {
    io<::tankwright::volume>::put(v.gross, at);
    io<::tankwright::estimate<::tankwright::vessel::solid_volume>>::put(v.solids, at);
    io<::tankwright::estimate<::tankwright::vessel::pore_volume>>::put(v.pores, at);
    io<::tankwright::estimate<::tankwright::vessel::envelope_volume>>::put(v.envelope, at);
    io<::tankwright::estimate<::tankwright::vessel::net_volume>>::put(v.net, at);
    io<::tankwright::estimate<::tankwright::vessel::free_volume>>::put(v.free, at);
    io<::tankwright::estimate<::tankwright::mass>>::put(v.contents_dry, at);
    io<::tankwright::estimate<::tankwright::mass>>::put(v.contents_submerged, at);
    io<::tankwright::estimate<::tankwright::mass>>::put(v.water, at);
    io<::tankwright::estimate<::tankwright::mass>>::put(v.on_the_floor, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::vessel::water_push> {
  static void write(answer& out, const ::tankwright::vessel::water_push& v);
  static void put(const ::tankwright::vessel::water_push& v, double*& at) {
    io<::tankwright::pressure>::put(v.at_bottom, at);
    io<::tankwright::pressure>::put(v.at_top, at);
    io<::tankwright::force>::put(v.force, at);
    io<::tankwright::length>::put(v.centre, at);
    io<::tankwright::energy>::put(v.about_lower_edge, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::vessel::weighed_sample> {
  static ::tankwright::vessel::weighed_sample read(const given& in);
  static ::tankwright::vessel::weighed_sample fields(const given& in);
  static ::tankwright::vessel::weighed_sample take(const double*& at) {
    return {.wet = io<::tankwright::mass>::take(at), .dry = io<::tankwright::mass>::take(at), .whole = io<::tankwright::volume>::take(at), .grain_density = io<::tankwright::mass_density>::take(at), .water_density = io<::tankwright::mass_density>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::vessel::weighed_sample& v, double*& at) {
    io<::tankwright::mass>::put(v.wet, at);
    io<::tankwright::mass>::put(v.dry, at);
    io<::tankwright::volume>::put(v.whole, at);
    io<::tankwright::mass_density>::put(v.grain_density, at);
    io<::tankwright::mass_density>::put(v.water_density, at);
  }
};

template <>
struct io<::tankwright::vessel::wetted_wall> {
  static ::tankwright::vessel::wetted_wall read(const given& in);
  static ::tankwright::vessel::wetted_wall fields(const given& in);
};

template <>
struct io<::tankwright::vessel::wood_screw> {
  static ::tankwright::vessel::wood_screw read(const given& in);
  static ::tankwright::vessel::wood_screw fields(const given& in);
};

}  // namespace tankwright_formulas
