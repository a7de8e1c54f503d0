// SPDX-License-Identifier: BSL-1.0
// Written by examples/formulas/make.py from the headers. Do not edit.
#pragma once

#include "../glue.hpp"
#include "water.hpp"
#include <tankwright/plumbing/area_profile.hpp>
#include <tankwright/plumbing/circuit.hpp>
#include <tankwright/plumbing/circuit_parts.hpp>
#include <tankwright/plumbing/circuit_tuning.hpp>
#include <tankwright/plumbing/drain.hpp>
#include <tankwright/plumbing/drains_blocked.hpp>
#include <tankwright/plumbing/emptying.hpp>
#include <tankwright/plumbing/filling.hpp>
#include <tankwright/plumbing/fittings.hpp>
#include <tankwright/plumbing/friction.hpp>
#include <tankwright/plumbing/friction_cross_checks.hpp>
#include <tankwright/plumbing/jet.hpp>
#include <tankwright/plumbing/outlet_kind.hpp>
#include <tankwright/plumbing/overflow.hpp>
#include <tankwright/plumbing/pipe_run.hpp>
#include <tankwright/plumbing/pipe_sizes.hpp>
#include <tankwright/plumbing/power_cut.hpp>
#include <tankwright/plumbing/power_cut_failures.hpp>
#include <tankwright/plumbing/power_cut_limits.hpp>
#include <tankwright/plumbing/power_cut_system.hpp>
#include <tankwright/plumbing/power_cut_transient.hpp>
#include <tankwright/plumbing/priming.hpp>
#include <tankwright/plumbing/pump.hpp>
#include <tankwright/plumbing/pvc_schedule.hpp>
#include <tankwright/plumbing/restart.hpp>
#include <tankwright/plumbing/siphon.hpp>
#include <tankwright/plumbing/submerged_jet.hpp>
#include <tankwright/plumbing/sump.hpp>
#include <tankwright/plumbing/sump_plan.hpp>
#include <tankwright/plumbing/vessel_shapes.hpp>
#include <tankwright/plumbing/water_hammer.hpp>
#include <tankwright/plumbing/weirs.hpp>

namespace tankwright_formulas {

template <>
struct io<::tankwright::plumbing::check_valve_state> {
  static ::tankwright::plumbing::check_valve_state read(const given& in);
  static ::tankwright::plumbing::check_valve_state take(const double*& at) { return static_cast<::tankwright::plumbing::check_valve_state>(whole_number(*at++, 0, 2)); }
  static void put(::tankwright::plumbing::check_valve_state v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::curve_region> {
  static void write(answer& out, const ::tankwright::plumbing::curve_region& v);
  static ::tankwright::plumbing::curve_region take(const double*& at) { return static_cast<::tankwright::plumbing::curve_region>(whole_number(*at++, 0, 2)); }
  static void put(::tankwright::plumbing::curve_region v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::drain_mode> {
  static void write(answer& out, const ::tankwright::plumbing::drain_mode& v);
  static ::tankwright::plumbing::drain_mode take(const double*& at) { return static_cast<::tankwright::plumbing::drain_mode>(whole_number(*at++, 0, 3)); }
  static void put(::tankwright::plumbing::drain_mode v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::fitting> {
  static ::tankwright::plumbing::fitting read(const given& in);
  static ::tankwright::plumbing::fitting take(const double*& at) { return static_cast<::tankwright::plumbing::fitting>(whole_number(*at++, 0, 15)); }
  static void put(::tankwright::plumbing::fitting v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::junction_state> {
  static void write(answer& out, const ::tankwright::plumbing::junction_state& v);
  static ::tankwright::plumbing::junction_state take(const double*& at) { return static_cast<::tankwright::plumbing::junction_state>(whole_number(*at++, 0, 2)); }
  static void put(::tankwright::plumbing::junction_state v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::losses> {
  static ::tankwright::plumbing::losses read(const given& in);
  static ::tankwright::plumbing::losses take(const double*& at) { return static_cast<::tankwright::plumbing::losses>(whole_number(*at++, 0, 2)); }
  static void put(::tankwright::plumbing::losses v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::outlet_kind> {
  static ::tankwright::plumbing::outlet_kind read(const given& in);
  static ::tankwright::plumbing::outlet_kind take(const double*& at) { return static_cast<::tankwright::plumbing::outlet_kind>(whole_number(*at++, 0, 1)); }
  static void put(::tankwright::plumbing::outlet_kind v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::outlet_state> {
  static void write(answer& out, const ::tankwright::plumbing::outlet_state& v);
  static ::tankwright::plumbing::outlet_state take(const double*& at) { return static_cast<::tankwright::plumbing::outlet_state>(whole_number(*at++, 0, 2)); }
  static void put(::tankwright::plumbing::outlet_state v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::power_cut_failure> {
  static void write(answer& out, const ::tankwright::plumbing::power_cut_failure& v);
  static ::tankwright::plumbing::power_cut_failure take(const double*& at) { return static_cast<::tankwright::plumbing::power_cut_failure>(whole_number(*at++, 0, 5)); }
  static void put(::tankwright::plumbing::power_cut_failure v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::pressure_class> {
  static ::tankwright::plumbing::pressure_class read(const given& in);
  static ::tankwright::plumbing::pressure_class take(const double*& at) { return static_cast<::tankwright::plumbing::pressure_class>(whole_number(*at++, 0, 1)); }
  static void put(::tankwright::plumbing::pressure_class v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::pump_state> {
  static void write(answer& out, const ::tankwright::plumbing::pump_state& v);
  static ::tankwright::plumbing::pump_state take(const double*& at) { return static_cast<::tankwright::plumbing::pump_state>(whole_number(*at++, 0, 4)); }
  static void put(::tankwright::plumbing::pump_state v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::pvc_schedule> {
  static ::tankwright::plumbing::pvc_schedule read(const given& in);
  static ::tankwright::plumbing::pvc_schedule take(const double*& at) { return static_cast<::tankwright::plumbing::pvc_schedule>(whole_number(*at++, 0, 1)); }
  static void put(::tankwright::plumbing::pvc_schedule v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::tee_branch_angle> {
  static ::tankwright::plumbing::tee_branch_angle read(const given& in);
  static ::tankwright::plumbing::tee_branch_angle take(const double*& at) { return static_cast<::tankwright::plumbing::tee_branch_angle>(whole_number(*at++, 0, 1)); }
  static void put(::tankwright::plumbing::tee_branch_angle v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::tee_direction> {
  static ::tankwright::plumbing::tee_direction read(const given& in);
  static ::tankwright::plumbing::tee_direction take(const double*& at) { return static_cast<::tankwright::plumbing::tee_direction>(whole_number(*at++, 0, 1)); }
  static void put(::tankwright::plumbing::tee_direction v, double*& at) { *at++ = static_cast<double>(v); }
};

template <>
struct io<::tankwright::plumbing::area_profile> {
  static ::tankwright::plumbing::area_profile read(const given& in);
};

template <>
struct io<::tankwright::plumbing::darcy_factor> {
  static ::tankwright::plumbing::darcy_factor read(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::darcy_factor& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::plumbing::darcy_factor>& v) {
    out.band("darcy_factor", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::plumbing::darcy_factor take(const double*& at) { return ::tankwright::plumbing::darcy_factor{io<double>::take(at)}; }
  static void put(const ::tankwright::plumbing::darcy_factor& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::plumbing::effective_area> {
  static ::tankwright::plumbing::effective_area read(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::effective_area& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::plumbing::effective_area>& v) {
    out.band("effective_area", "m2", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::plumbing::effective_area take(const double*& at) { return ::tankwright::plumbing::effective_area{io<::tankwright::area>::take(at)}; }
  static void put(const ::tankwright::plumbing::effective_area& v, double*& at) { io<::tankwright::area>::put(v.value(), at); }
};

template <>
struct io<::tankwright::plumbing::flow_coefficient> {
  static ::tankwright::plumbing::flow_coefficient read(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::flow_coefficient& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::plumbing::flow_coefficient>& v) {
    out.band("flow_coefficient", "", {tw::core::si_number(::tankwright::plumbing::in_kv(v.low)), tw::core::si_number(::tankwright::plumbing::in_kv(v.central)), tw::core::si_number(::tankwright::plumbing::in_kv(v.high))}, v.reason);
  }
  static ::tankwright::plumbing::flow_coefficient take(const double*& at) { return ::tankwright::plumbing::flow_coefficient::from_kv(io<double>::take(at)); }
  static void put(const ::tankwright::plumbing::flow_coefficient& v, double*& at) { io<double>::put(::tankwright::plumbing::in_kv(v), at); }
};

template <>
struct io<::tankwright::plumbing::hazen_williams_c> {
  static ::tankwright::plumbing::hazen_williams_c read(const given& in);
  static void write_band(answer& out, const tw::estimate<::tankwright::plumbing::hazen_williams_c>& v) {
    out.band("hazen_williams_c", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::plumbing::hazen_williams_c take(const double*& at) { return ::tankwright::plumbing::hazen_williams_c{io<double>::take(at)}; }
  static void put(const ::tankwright::plumbing::hazen_williams_c& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::plumbing::head_ratio> {
  static ::tankwright::plumbing::head_ratio read(const given& in);
  static void write_band(answer& out, const tw::estimate<::tankwright::plumbing::head_ratio>& v) {
    out.band("head_ratio", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::plumbing::head_ratio take(const double*& at) { return ::tankwright::plumbing::head_ratio{io<double>::take(at)}; }
  static void put(const ::tankwright::plumbing::head_ratio& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::plumbing::loss_coefficient> {
  static ::tankwright::plumbing::loss_coefficient read(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::loss_coefficient& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::plumbing::loss_coefficient>& v) {
    out.band("loss_coefficient", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::plumbing::loss_coefficient take(const double*& at) { return ::tankwright::plumbing::loss_coefficient{io<double>::take(at)}; }
  static void put(const ::tankwright::plumbing::loss_coefficient& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::plumbing::metric_size> {
  static ::tankwright::plumbing::metric_size read(const given& in);
  static void write_band(answer& out, const tw::estimate<::tankwright::plumbing::metric_size>& v) {
    out.band("metric_size", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::plumbing::metric_size take(const double*& at) { return ::tankwright::plumbing::metric_size::from_millimetres(io<double>::take(at)); }
  static void put(const ::tankwright::plumbing::metric_size& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::plumbing::nominal_size> {
  static ::tankwright::plumbing::nominal_size read(const given& in);
  static void write_band(answer& out, const tw::estimate<::tankwright::plumbing::nominal_size>& v) {
    out.band("nominal_size", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::plumbing::nominal_size take(const double*& at) { return ::tankwright::plumbing::nominal_size::from_inches(io<double>::take(at)); }
  static void put(const ::tankwright::plumbing::nominal_size& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::plumbing::pipe_bore> {
  static ::tankwright::plumbing::pipe_bore read(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::pipe_bore& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::plumbing::pipe_bore>& v) {
    out.band("pipe_bore", "m", {tw::core::si_number(v.low.diameter()), tw::core::si_number(v.central.diameter()), tw::core::si_number(v.high.diameter())}, v.reason);
  }
  static ::tankwright::plumbing::pipe_bore take(const double*& at) { return ::tankwright::plumbing::pipe_bore{io<::tankwright::length>::take(at)}; }
  static void put(const ::tankwright::plumbing::pipe_bore& v, double*& at) { io<::tankwright::length>::put(v.diameter(), at); }
};

template <>
struct io<::tankwright::plumbing::pump_curve> {
  static ::tankwright::plumbing::pump_curve read(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::pump_curve& v);
};

template <>
struct io<::tankwright::plumbing::relative_roughness> {
  static ::tankwright::plumbing::relative_roughness read(const given& in);
  static void write_band(answer& out, const tw::estimate<::tankwright::plumbing::relative_roughness>& v) {
    out.band("relative_roughness", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::plumbing::relative_roughness take(const double*& at) { return ::tankwright::plumbing::relative_roughness{io<double>::take(at)}; }
  static void put(const ::tankwright::plumbing::relative_roughness& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::plumbing::reynolds_number> {
  static ::tankwright::plumbing::reynolds_number read(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::reynolds_number& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::plumbing::reynolds_number>& v) {
    out.band("reynolds_number", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::plumbing::reynolds_number take(const double*& at) { return ::tankwright::plumbing::reynolds_number{io<double>::take(at)}; }
  static void put(const ::tankwright::plumbing::reynolds_number& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::plumbing::speed_ratio> {
  static ::tankwright::plumbing::speed_ratio read(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::speed_ratio& v);
  static void write_band(answer& out, const tw::estimate<::tankwright::plumbing::speed_ratio>& v) {
    out.band("speed_ratio", "", {tw::core::si_number(v.low.value()), tw::core::si_number(v.central.value()), tw::core::si_number(v.high.value())}, v.reason);
  }
  static ::tankwright::plumbing::speed_ratio take(const double*& at) { return ::tankwright::plumbing::speed_ratio{io<double>::take(at)}; }
  static void put(const ::tankwright::plumbing::speed_ratio& v, double*& at) { io<double>::put(v.value(), at); }
};

template <>
struct io<::tankwright::plumbing::area_slice> {
  static ::tankwright::plumbing::area_slice read(const given& in);
  static ::tankwright::plumbing::area_slice fields(const given& in);
  static ::tankwright::plumbing::area_slice take(const double*& at) {
    return {.height = io<::tankwright::length>::take(at), .horizontal_area = io<::tankwright::area>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::area_slice& v, double*& at) {
    io<::tankwright::length>::put(v.height, at);
    io<::tankwright::area>::put(v.horizontal_area, at);
  }
};

template <>
struct io<::tankwright::plumbing::baffle> {
  static ::tankwright::plumbing::baffle read(const given& in);
  static ::tankwright::plumbing::baffle fields(const given& in);
  static ::tankwright::plumbing::baffle take(const double*& at) {
    return {.crest = io<::tankwright::length>::take(at), .width = io<::tankwright::length>::take(at), .gap = io<::tankwright::length>::take(at), .thickness = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::baffle& v, double*& at) {
    io<::tankwright::length>::put(v.crest, at);
    io<::tankwright::length>::put(v.width, at);
    io<::tankwright::length>::put(v.gap, at);
    io<::tankwright::length>::put(v.thickness, at);
  }
};

template <>
struct io<::tankwright::plumbing::basis_change> {
  static ::tankwright::plumbing::basis_change read(const given& in);
  static ::tankwright::plumbing::basis_change fields(const given& in);
  static ::tankwright::plumbing::basis_change take(const double*& at) {
    return {.from = io<::tankwright::plumbing::pipe_bore>::take(at), .to = io<::tankwright::plumbing::pipe_bore>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::basis_change& v, double*& at) {
    io<::tankwright::plumbing::pipe_bore>::put(v.from, at);
    io<::tankwright::plumbing::pipe_bore>::put(v.to, at);
  }
};

template <>
struct io<::tankwright::plumbing::bazin_weir_input> {
  static ::tankwright::plumbing::bazin_weir_input read(const given& in);
  static ::tankwright::plumbing::bazin_weir_input fields(const given& in);
  static ::tankwright::plumbing::bazin_weir_input take(const double*& at) {
    return {.width = io<::tankwright::length>::take(at), .head = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::bazin_weir_input& v, double*& at) {
    io<::tankwright::length>::put(v.width, at);
    io<::tankwright::length>::put(v.head, at);
  }
};

template <>
struct io<::tankwright::plumbing::blocked_drain> {
  static void write(answer& out, const ::tankwright::plumbing::blocked_drain& v);
};

template <>
struct io<::tankwright::plumbing::blocked_answer> {
  static void write(answer& out, const ::tankwright::plumbing::blocked_answer& v);
};

template <>
struct io<::tankwright::plumbing::bowl> {
  static ::tankwright::plumbing::bowl read(const given& in);
  static ::tankwright::plumbing::bowl fields(const given& in);
  static ::tankwright::plumbing::bowl take(const double*& at) {
    return {.radius = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::bowl& v, double*& at) {
    io<::tankwright::length>::put(v.radius, at);
  }
};

template <>
struct io<::tankwright::plumbing::chamber> {
  static ::tankwright::plumbing::chamber read(const given& in);
  static ::tankwright::plumbing::chamber fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::chamber_history> {
  static void write(answer& out, const ::tankwright::plumbing::chamber_history& v);
};

template <>
struct io<::tankwright::plumbing::chamber_level> {
  static ::tankwright::plumbing::chamber_level read(const given& in);
  static ::tankwright::plumbing::chamber_level fields(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::chamber_level& v);
};

template <>
struct io<::tankwright::plumbing::check_valve> {
  static ::tankwright::plumbing::check_valve read(const given& in);
  static ::tankwright::plumbing::check_valve fields(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::check_valve& v);
  static ::tankwright::plumbing::check_valve take(const double*& at) {
    return {.leak = io<::tankwright::plumbing::flow_coefficient>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::check_valve& v, double*& at) {
    io<::tankwright::plumbing::flow_coefficient>::put(v.leak, at);
  }
};

template <>
struct io<::tankwright::plumbing::circuit_source> {
  static ::tankwright::plumbing::circuit_source read(const given& in);
  static ::tankwright::plumbing::circuit_source fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::idle_pump_losses> {
  static ::tankwright::plumbing::idle_pump_losses read(const given& in);
  static ::tankwright::plumbing::idle_pump_losses fields(const given& in);
  static ::tankwright::plumbing::idle_pump_losses take(const double*& at) {
    return {.backwards = io<::tankwright::estimate<::tankwright::plumbing::head_ratio>>::take(at), .forwards = io<::tankwright::estimate<::tankwright::plumbing::head_ratio>>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::idle_pump_losses& v, double*& at) {
    io<::tankwright::estimate<::tankwright::plumbing::head_ratio>>::put(v.backwards, at);
    io<::tankwright::estimate<::tankwright::plumbing::head_ratio>>::put(v.forwards, at);
  }
};

template <>
struct io<::tankwright::plumbing::circuit_pump> {
  static ::tankwright::plumbing::circuit_pump read(const given& in);
  static ::tankwright::plumbing::circuit_pump fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::pipe_run> {
  static ::tankwright::plumbing::pipe_run read(const given& in);
  static ::tankwright::plumbing::pipe_run fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::circuit_outlet> {
  static ::tankwright::plumbing::circuit_outlet read(const given& in);
  static ::tankwright::plumbing::circuit_outlet fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::circuit> {
  static ::tankwright::plumbing::circuit read(const given& in);
  static ::tankwright::plumbing::circuit fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::run_flow> {
  static void write(answer& out, const ::tankwright::plumbing::run_flow& v);
};

template <>
struct io<::tankwright::plumbing::junction_head> {
  static void write(answer& out, const ::tankwright::plumbing::junction_head& v);
};

template <>
struct io<::tankwright::plumbing::pump_flow> {
  static void write(answer& out, const ::tankwright::plumbing::pump_flow& v);
};

template <>
struct io<::tankwright::plumbing::outlet_flow> {
  static void write(answer& out, const ::tankwright::plumbing::outlet_flow& v);
};

template <>
struct io<::tankwright::plumbing::source_flow> {
  static void write(answer& out, const ::tankwright::plumbing::source_flow& v);
};

template <>
struct io<::tankwright::plumbing::circuit_solution> {
  static void write(answer& out, const ::tankwright::plumbing::circuit_solution& v);
};

template <>
struct io<::tankwright::plumbing::cone> {
  static ::tankwright::plumbing::cone read(const given& in);
  static ::tankwright::plumbing::cone fields(const given& in);
  static ::tankwright::plumbing::cone take(const double*& at) {
    return {.height = io<::tankwright::length>::take(at), .top_radius = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::cone& v, double*& at) {
    io<::tankwright::length>::put(v.height, at);
    io<::tankwright::length>::put(v.top_radius, at);
  }
};

template <>
struct io<::tankwright::plumbing::contracted_edge> {
  static ::tankwright::plumbing::contracted_edge read(const given& in);
  static ::tankwright::plumbing::contracted_edge fields(const given& in);
  static ::tankwright::plumbing::contracted_edge take(const double*& at) {
    return {.width = io<::tankwright::length>::take(at), .channel_width = io<::tankwright::length>::take(at), .crest_height = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::contracted_edge& v, double*& at) {
    io<::tankwright::length>::put(v.width, at);
    io<::tankwright::length>::put(v.channel_width, at);
    io<::tankwright::length>::put(v.crest_height, at);
  }
};

template <>
struct io<::tankwright::plumbing::curve_point> {
  static ::tankwright::plumbing::curve_point read(const given& in);
  static ::tankwright::plumbing::curve_point fields(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::curve_point& v);
  static ::tankwright::plumbing::curve_point take(const double*& at) {
    return {.flow = io<::tankwright::flow_rate>::take(at), .head = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::curve_point& v, double*& at) {
    io<::tankwright::flow_rate>::put(v.flow, at);
    io<::tankwright::length>::put(v.head, at);
  }
};

template <>
struct io<::tankwright::plumbing::detail::curve_data> {
  static void write(answer& out, const ::tankwright::plumbing::detail::curve_data& v);
};

template <>
struct io<::tankwright::plumbing::overflow_box> {
  static ::tankwright::plumbing::overflow_box read(const given& in);
  static ::tankwright::plumbing::overflow_box fields(const given& in);
  static ::tankwright::plumbing::overflow_box take(const double*& at) {
    return {.horizontal_area = io<::tankwright::area>::take(at), .falls_by = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::overflow_box& v, double*& at) {
    io<::tankwright::area>::put(v.horizontal_area, at);
    io<::tankwright::length>::put(v.falls_by, at);
  }
};

template <>
struct io<::tankwright::plumbing::display_tank> {
  static ::tankwright::plumbing::display_tank read(const given& in);
  static ::tankwright::plumbing::display_tank fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::drain> {
  static ::tankwright::plumbing::drain read(const given& in);
  static ::tankwright::plumbing::drain fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::drain_answer> {
  static void write(answer& out, const ::tankwright::plumbing::drain_answer& v);
  static void put(const ::tankwright::plumbing::drain_answer& v, double*& at) {
    io<::tankwright::plumbing::drain_mode>::put(v.mode, at);
    io<double>::put(v.number, at);
    io<::tankwright::flow_rate>::put(v.self_venting, at);
    io<::tankwright::flow_rate>::put(v.stack, at);
    io<::tankwright::estimate<::tankwright::flow_rate>>::put(v.full, at);
    io<::tankwright::estimate<::tankwright::flow_rate>>::put(v.inlet, at);
    io<::tankwright::estimate<::tankwright::flow_rate>>::put(v.carries, at);
    io<::tankwright::flow_rate>::put(v.surely, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::plumbing::drains_blocked_answer> {
  static void write(answer& out, const ::tankwright::plumbing::drains_blocked_answer& v);
  static void put(const ::tankwright::plumbing::drains_blocked_answer& v, double*& at) {
    io<::tankwright::estimate<::tankwright::volume>>::put(v.delivered, at);
    io<::tankwright::estimate<::tankwright::length>>::put(v.over_edge, at);
    io<::tankwright::estimate<::tankwright::length>>::put(v.margin, at);
    io<::tankwright::estimate<::tankwright::volume>>::put(v.on_the_floor, at);
    io<::tankwright::duration>::put(v.until_dry, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::plumbing::sump> {
  static ::tankwright::plumbing::sump read(const given& in);
  static ::tankwright::plumbing::sump fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::return_line> {
  static ::tankwright::plumbing::return_line read(const given& in);
  static ::tankwright::plumbing::return_line fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::shared_pipe> {
  static ::tankwright::plumbing::shared_pipe read(const given& in);
  static ::tankwright::plumbing::shared_pipe fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::power_cut_input> {
  static ::tankwright::plumbing::power_cut_input read(const given& in);
  static ::tankwright::plumbing::power_cut_input fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::pump_inlet> {
  static ::tankwright::plumbing::pump_inlet read(const given& in);
  static ::tankwright::plumbing::pump_inlet fields(const given& in);
  static ::tankwright::plumbing::pump_inlet take(const double*& at) {
    return {.above_floor = io<::tankwright::length>::take(at), .bore = io<::tankwright::plumbing::pipe_bore>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::pump_inlet& v, double*& at) {
    io<::tankwright::length>::put(v.above_floor, at);
    io<::tankwright::plumbing::pipe_bore>::put(v.bore, at);
  }
};

template <>
struct io<::tankwright::plumbing::drains_blocked_input> {
  static ::tankwright::plumbing::drains_blocked_input read(const given& in);
  static ::tankwright::plumbing::drains_blocked_input fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::edge_tail> {
  static ::tankwright::plumbing::edge_tail read(const given& in);
  static ::tankwright::plumbing::edge_tail fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::elastic_pipe> {
  static ::tankwright::plumbing::elastic_pipe read(const given& in);
  static ::tankwright::plumbing::elastic_pipe fields(const given& in);
  static ::tankwright::plumbing::elastic_pipe take(const double*& at) {
    return {.bore = io<::tankwright::plumbing::pipe_bore>::take(at), .wall = io<::tankwright::length>::take(at), .modulus = io<::tankwright::pressure>::take(at), .bulk_modulus = io<::tankwright::pressure>::take(at), .restraint = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::elastic_pipe& v, double*& at) {
    io<::tankwright::plumbing::pipe_bore>::put(v.bore, at);
    io<::tankwright::length>::put(v.wall, at);
    io<::tankwright::pressure>::put(v.modulus, at);
    io<::tankwright::pressure>::put(v.bulk_modulus, at);
    io<double>::put(v.restraint, at);
  }
};

template <>
struct io<::tankwright::plumbing::fall_through> {
  static ::tankwright::plumbing::fall_through read(const given& in);
  static ::tankwright::plumbing::fall_through fields(const given& in);
  static ::tankwright::plumbing::fall_through take(const double*& at) {
    return {.outlet = io<::tankwright::plumbing::effective_area>::take(at), .from = io<::tankwright::length>::take(at), .to = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::fall_through& v, double*& at) {
    io<::tankwright::plumbing::effective_area>::put(v.outlet, at);
    io<::tankwright::length>::put(v.from, at);
    io<::tankwright::length>::put(v.to, at);
  }
};

template <>
struct io<::tankwright::plumbing::falling_water> {
  static ::tankwright::plumbing::falling_water read(const given& in);
  static ::tankwright::plumbing::falling_water fields(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::falling_water& v);
  static ::tankwright::plumbing::falling_water take(const double*& at) {
    return {.over_edge = io<::tankwright::estimate<::tankwright::volume>>::take(at), .back_siphon = io<::tankwright::estimate<::tankwright::volume>>::take(at), .box = io<::tankwright::estimate<::tankwright::volume>>::take(at), .drain_pipes = io<::tankwright::volume>::take(at), .return_pipes = io<::tankwright::volume>::take(at), .total = io<::tankwright::estimate<::tankwright::volume>>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::falling_water& v, double*& at) {
    io<::tankwright::estimate<::tankwright::volume>>::put(v.over_edge, at);
    io<::tankwright::estimate<::tankwright::volume>>::put(v.back_siphon, at);
    io<::tankwright::estimate<::tankwright::volume>>::put(v.box, at);
    io<::tankwright::volume>::put(v.drain_pipes, at);
    io<::tankwright::volume>::put(v.return_pipes, at);
    io<::tankwright::estimate<::tankwright::volume>>::put(v.total, at);
  }
};

template <>
struct io<::tankwright::plumbing::fill_stage> {
  static void write(answer& out, const ::tankwright::plumbing::fill_stage& v);
};

template <>
struct io<::tankwright::plumbing::fill_stop> {
  static ::tankwright::plumbing::fill_stop read(const given& in);
  static ::tankwright::plumbing::fill_stop fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::flow_answer> {
  static void write(answer& out, const ::tankwright::plumbing::flow_answer& v);
};

template <>
struct io<::tankwright::plumbing::francis_weir_input> {
  static ::tankwright::plumbing::francis_weir_input read(const given& in);
  static ::tankwright::plumbing::francis_weir_input fields(const given& in);
  static ::tankwright::plumbing::francis_weir_input take(const double*& at) {
    return {.width = io<::tankwright::length>::take(at), .head = io<::tankwright::length>::take(at), .contractions = io<double>::take(at), .approach_velocity = io<::tankwright::velocity>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::francis_weir_input& v, double*& at) {
    io<::tankwright::length>::put(v.width, at);
    io<::tankwright::length>::put(v.head, at);
    io<double>::put(v.contractions, at);
    io<::tankwright::velocity>::put(v.approach_velocity, at);
  }
};

template <>
struct io<::tankwright::plumbing::free_jet> {
  static ::tankwright::plumbing::free_jet read(const given& in);
  static ::tankwright::plumbing::free_jet fields(const given& in);
  static ::tankwright::plumbing::free_jet take(const double*& at) {
    return {.drive = io<::tankwright::length>::take(at), .fall = io<::tankwright::length>::take(at), .velocity_coefficient = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::free_jet& v, double*& at) {
    io<::tankwright::length>::put(v.drive, at);
    io<::tankwright::length>::put(v.fall, at);
    io<double>::put(v.velocity_coefficient, at);
  }
};

template <>
struct io<::tankwright::plumbing::full_width_edge> {
  static ::tankwright::plumbing::full_width_edge read(const given& in);
  static ::tankwright::plumbing::full_width_edge fields(const given& in);
  static ::tankwright::plumbing::full_width_edge take(const double*& at) {
    return {.width = io<::tankwright::length>::take(at), .crest_height = io<::tankwright::length>::take(at), .thickness = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::full_width_edge& v, double*& at) {
    io<::tankwright::length>::put(v.width, at);
    io<::tankwright::length>::put(v.crest_height, at);
    io<::tankwright::length>::put(v.thickness, at);
  }
};

template <>
struct io<::tankwright::plumbing::gauge_readings> {
  static ::tankwright::plumbing::gauge_readings read(const given& in);
  static ::tankwright::plumbing::gauge_readings fields(const given& in);
  static ::tankwright::plumbing::gauge_readings take(const double*& at) {
    return {.suction = io<::tankwright::gauge_pressure>::take(at), .discharge = io<::tankwright::gauge_pressure>::take(at), .suction_gauge_height = io<::tankwright::length>::take(at), .discharge_gauge_height = io<::tankwright::length>::take(at), .suction_velocity = io<::tankwright::velocity>::take(at), .discharge_velocity = io<::tankwright::velocity>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::gauge_readings& v, double*& at) {
    io<::tankwright::gauge_pressure>::put(v.suction, at);
    io<::tankwright::gauge_pressure>::put(v.discharge, at);
    io<::tankwright::length>::put(v.suction_gauge_height, at);
    io<::tankwright::length>::put(v.discharge_gauge_height, at);
    io<::tankwright::velocity>::put(v.suction_velocity, at);
    io<::tankwright::velocity>::put(v.discharge_velocity, at);
  }
};

template <>
struct io<::tankwright::plumbing::head_answer> {
  static void write(answer& out, const ::tankwright::plumbing::head_answer& v);
};

template <>
struct io<::tankwright::plumbing::inflow_and_outlet> {
  static ::tankwright::plumbing::inflow_and_outlet read(const given& in);
  static ::tankwright::plumbing::inflow_and_outlet fields(const given& in);
  static ::tankwright::plumbing::inflow_and_outlet take(const double*& at) {
    return {.horizontal_area = io<::tankwright::area>::take(at), .inflow = io<::tankwright::flow_rate>::take(at), .outlet = io<::tankwright::plumbing::effective_area>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::inflow_and_outlet& v, double*& at) {
    io<::tankwright::area>::put(v.horizontal_area, at);
    io<::tankwright::flow_rate>::put(v.inflow, at);
    io<::tankwright::plumbing::effective_area>::put(v.outlet, at);
  }
};

template <>
struct io<::tankwright::plumbing::laminar_emptying> {
  static ::tankwright::plumbing::laminar_emptying read(const given& in);
  static ::tankwright::plumbing::laminar_emptying fields(const given& in);
  static ::tankwright::plumbing::laminar_emptying take(const double*& at) {
    return {.horizontal_area = io<::tankwright::area>::take(at), .bore = io<::tankwright::plumbing::pipe_bore>::take(at), .pipe_length = io<::tankwright::length>::take(at), .from = io<::tankwright::length>::take(at), .to = io<::tankwright::length>::take(at), .water = io<::tankwright::water::liquid>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::laminar_emptying& v, double*& at) {
    io<::tankwright::area>::put(v.horizontal_area, at);
    io<::tankwright::plumbing::pipe_bore>::put(v.bore, at);
    io<::tankwright::length>::put(v.pipe_length, at);
    io<::tankwright::length>::put(v.from, at);
    io<::tankwright::length>::put(v.to, at);
    io<::tankwright::water::liquid>::put(v.water, at);
  }
};

template <>
struct io<::tankwright::plumbing::level_change> {
  static ::tankwright::plumbing::level_change read(const given& in);
  static ::tankwright::plumbing::level_change fields(const given& in);
  static ::tankwright::plumbing::level_change take(const double*& at) {
    return {.from = io<::tankwright::length>::take(at), .to = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::level_change& v, double*& at) {
    io<::tankwright::length>::put(v.from, at);
    io<::tankwright::length>::put(v.to, at);
  }
};

template <>
struct io<::tankwright::plumbing::levelling> {
  static ::tankwright::plumbing::levelling read(const given& in);
  static ::tankwright::plumbing::levelling fields(const given& in);
  static ::tankwright::plumbing::levelling take(const double*& at) {
    return {.first = io<::tankwright::area>::take(at), .second = io<::tankwright::area>::take(at), .opening = io<::tankwright::plumbing::effective_area>::take(at), .from = io<::tankwright::length>::take(at), .to = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::levelling& v, double*& at) {
    io<::tankwright::area>::put(v.first, at);
    io<::tankwright::area>::put(v.second, at);
    io<::tankwright::plumbing::effective_area>::put(v.opening, at);
    io<::tankwright::length>::put(v.from, at);
    io<::tankwright::length>::put(v.to, at);
  }
};

template <>
struct io<::tankwright::plumbing::loose_grains> {
  static ::tankwright::plumbing::loose_grains read(const given& in);
  static ::tankwright::plumbing::loose_grains fields(const given& in);
  static ::tankwright::plumbing::loose_grains take(const double*& at) {
    return {.size = io<::tankwright::length>::take(at), .density = io<::tankwright::mass_density>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::loose_grains& v, double*& at) {
    io<::tankwright::length>::put(v.size, at);
    io<::tankwright::mass_density>::put(v.density, at);
  }
};

template <>
struct io<::tankwright::plumbing::lying_cylinder> {
  static ::tankwright::plumbing::lying_cylinder read(const given& in);
  static ::tankwright::plumbing::lying_cylinder fields(const given& in);
  static ::tankwright::plumbing::lying_cylinder take(const double*& at) {
    return {.diameter = io<::tankwright::length>::take(at), .axial_length = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::lying_cylinder& v, double*& at) {
    io<::tankwright::length>::put(v.diameter, at);
    io<::tankwright::length>::put(v.axial_length, at);
  }
};

template <>
struct io<::tankwright::plumbing::measured_jet> {
  static ::tankwright::plumbing::measured_jet read(const given& in);
  static ::tankwright::plumbing::measured_jet fields(const given& in);
  static ::tankwright::plumbing::measured_jet take(const double*& at) {
    return {.drive = io<::tankwright::length>::take(at), .fall = io<::tankwright::length>::take(at), .reach = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::measured_jet& v, double*& at) {
    io<::tankwright::length>::put(v.drive, at);
    io<::tankwright::length>::put(v.fall, at);
    io<::tankwright::length>::put(v.reach, at);
  }
};

template <>
struct io<::tankwright::plumbing::metric_dimensions> {
  static void write(answer& out, const ::tankwright::plumbing::metric_dimensions& v);
  static void put(const ::tankwright::plumbing::metric_dimensions& v, double*& at) {
    io<::tankwright::length>::put(v.outside_diameter, at);
    io<::tankwright::length>::put(v.wall, at);
    io<::tankwright::plumbing::pipe_bore>::put(v.bore, at);
  }
};

template <>
struct io<::tankwright::plumbing::orifice> {
  static ::tankwright::plumbing::orifice read(const given& in);
  static ::tankwright::plumbing::orifice fields(const given& in);
  static ::tankwright::plumbing::orifice take(const double*& at) {
    return {.bore = io<::tankwright::length>::take(at), .discharge_coefficient = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::orifice& v, double*& at) {
    io<::tankwright::length>::put(v.bore, at);
    io<double>::put(v.discharge_coefficient, at);
  }
};

template <>
struct io<::tankwright::plumbing::overflow_flow> {
  static void write(answer& out, const ::tankwright::plumbing::overflow_flow& v);
  static void put(const ::tankwright::plumbing::overflow_flow& v, double*& at) {
    io<::tankwright::estimate<::tankwright::flow_rate>>::put(v.flow, at);
    io<bool>::put(v.extrapolated, at);
  }
};

template <>
struct io<::tankwright::plumbing::overflow_head> {
  static void write(answer& out, const ::tankwright::plumbing::overflow_head& v);
  static void put(const ::tankwright::plumbing::overflow_head& v, double*& at) {
    io<::tankwright::estimate<::tankwright::length>>::put(v.head, at);
    io<bool>::put(v.extrapolated, at);
  }
};

template <>
struct io<::tankwright::plumbing::part_full_answer> {
  static void write(answer& out, const ::tankwright::plumbing::part_full_answer& v);
  static void put(const ::tankwright::plumbing::part_full_answer& v, double*& at) {
    io<::tankwright::flow_rate>::put(v.flow, at);
    io<::tankwright::velocity>::put(v.velocity, at);
  }
};

template <>
struct io<::tankwright::plumbing::part_full_drain> {
  static ::tankwright::plumbing::part_full_drain read(const given& in);
  static ::tankwright::plumbing::part_full_drain fields(const given& in);
  static ::tankwright::plumbing::part_full_drain take(const double*& at) {
    return {.bore = io<::tankwright::plumbing::pipe_bore>::take(at), .slope = io<double>::take(at), .manning_n = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::part_full_drain& v, double*& at) {
    io<::tankwright::plumbing::pipe_bore>::put(v.bore, at);
    io<double>::put(v.slope, at);
    io<double>::put(v.manning_n, at);
  }
};

template <>
struct io<::tankwright::plumbing::part_full_pipe> {
  static ::tankwright::plumbing::part_full_pipe read(const given& in);
  static ::tankwright::plumbing::part_full_pipe fields(const given& in);
  static ::tankwright::plumbing::part_full_pipe take(const double*& at) {
    return {.bore = io<::tankwright::plumbing::pipe_bore>::take(at), .slope = io<double>::take(at), .roughness = io<::tankwright::length>::take(at), .water = io<::tankwright::water::liquid>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::part_full_pipe& v, double*& at) {
    io<::tankwright::plumbing::pipe_bore>::put(v.bore, at);
    io<double>::put(v.slope, at);
    io<::tankwright::length>::put(v.roughness, at);
    io<::tankwright::water::liquid>::put(v.water, at);
  }
};

template <>
struct io<::tankwright::plumbing::pipe_entrance> {
  static ::tankwright::plumbing::pipe_entrance read(const given& in);
  static ::tankwright::plumbing::pipe_entrance fields(const given& in);
  static ::tankwright::plumbing::pipe_entrance take(const double*& at) {
    return {.bore = io<::tankwright::plumbing::pipe_bore>::take(at), .projecting = io<bool>::take(at), .lip_radius = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::pipe_entrance& v, double*& at) {
    io<::tankwright::plumbing::pipe_bore>::put(v.bore, at);
    io<bool>::put(v.projecting, at);
    io<::tankwright::length>::put(v.lip_radius, at);
  }
};

template <>
struct io<::tankwright::plumbing::plain_weir_tail> {
  static ::tankwright::plumbing::plain_weir_tail read(const given& in);
  static ::tankwright::plumbing::plain_weir_tail fields(const given& in);
  static ::tankwright::plumbing::plain_weir_tail take(const double*& at) {
    return {.horizontal_area = io<::tankwright::area>::take(at), .width = io<::tankwright::length>::take(at), .discharge_coefficient = io<double>::take(at), .from = io<::tankwright::length>::take(at), .to = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::plain_weir_tail& v, double*& at) {
    io<::tankwright::area>::put(v.horizontal_area, at);
    io<::tankwright::length>::put(v.width, at);
    io<double>::put(v.discharge_coefficient, at);
    io<::tankwright::length>::put(v.from, at);
    io<::tankwright::length>::put(v.to, at);
  }
};

template <>
struct io<::tankwright::plumbing::worst_moment> {
  static ::tankwright::plumbing::worst_moment read(const given& in);
  static ::tankwright::plumbing::worst_moment fields(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::worst_moment& v);
};

template <>
struct io<::tankwright::plumbing::power_cut_answer> {
  static ::tankwright::plumbing::power_cut_answer read(const given& in);
  static ::tankwright::plumbing::power_cut_answer fields(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::power_cut_answer& v);
};

template <>
struct io<::tankwright::plumbing::power_cut_failure_case> {
  static void write(answer& out, const ::tankwright::plumbing::power_cut_failure_case& v);
};

template <>
struct io<::tankwright::plumbing::power_cut_history> {
  static void write(answer& out, const ::tankwright::plumbing::power_cut_history& v);
};

template <>
struct io<::tankwright::plumbing::power_cut_transient_input> {
  static ::tankwright::plumbing::power_cut_transient_input read(const given& in);
  static ::tankwright::plumbing::power_cut_transient_input fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::priming_answer> {
  static void write(answer& out, const ::tankwright::plumbing::priming_answer& v);
  static void put(const ::tankwright::plumbing::priming_answer& v, double*& at) {
    io<::tankwright::estimate<::tankwright::flow_rate>>::put(v.taken, at);
    io<::tankwright::estimate<::tankwright::volume>>::put(v.held_up, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::plumbing::wanted_flow> {
  static ::tankwright::plumbing::wanted_flow read(const given& in);
  static ::tankwright::plumbing::wanted_flow fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::pump_choice> {
  static ::tankwright::plumbing::pump_choice read(const given& in);
  static ::tankwright::plumbing::pump_choice fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::pump_duty> {
  static ::tankwright::plumbing::pump_duty read(const given& in);
  static ::tankwright::plumbing::pump_duty fields(const given& in);
  static ::tankwright::plumbing::pump_duty take(const double*& at) {
    return {.flow = io<::tankwright::flow_rate>::take(at), .head = io<::tankwright::length>::take(at), .pump_efficiency = io<::tankwright::proportion>::take(at), .motor_efficiency = io<::tankwright::proportion>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::pump_duty& v, double*& at) {
    io<::tankwright::flow_rate>::put(v.flow, at);
    io<::tankwright::length>::put(v.head, at);
    io<::tankwright::proportion>::put(v.pump_efficiency, at);
    io<::tankwright::proportion>::put(v.motor_efficiency, at);
  }
};

template <>
struct io<::tankwright::plumbing::pump_performance> {
  static ::tankwright::plumbing::pump_performance read(const given& in);
  static ::tankwright::plumbing::pump_performance fields(const given& in);
  static void write(answer& out, const ::tankwright::plumbing::pump_performance& v);
  static ::tankwright::plumbing::pump_performance take(const double*& at) {
    return {.flow = io<::tankwright::flow_rate>::take(at), .head = io<::tankwright::length>::take(at), .power = io<::tankwright::power>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::pump_performance& v, double*& at) {
    io<::tankwright::flow_rate>::put(v.flow, at);
    io<::tankwright::length>::put(v.head, at);
    io<::tankwright::power>::put(v.power, at);
  }
};

template <>
struct io<::tankwright::plumbing::pump_power> {
  static void write(answer& out, const ::tankwright::plumbing::pump_power& v);
  static void put(const ::tankwright::plumbing::pump_power& v, double*& at) {
    io<::tankwright::power>::put(v.hydraulic, at);
    io<::tankwright::power>::put(v.shaft, at);
    io<::tankwright::power>::put(v.electrical, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::plumbing::ranked_pump> {
  static void write(answer& out, const ::tankwright::plumbing::ranked_pump& v);
};

template <>
struct io<::tankwright::plumbing::pump_ranking> {
  static void write(answer& out, const ::tankwright::plumbing::pump_ranking& v);
};

template <>
struct io<::tankwright::plumbing::pvc_dimensions> {
  static void write(answer& out, const ::tankwright::plumbing::pvc_dimensions& v);
  static void put(const ::tankwright::plumbing::pvc_dimensions& v, double*& at) {
    io<::tankwright::length>::put(v.outside_diameter, at);
    io<::tankwright::length>::put(v.minimum_wall, at);
    io<::tankwright::plumbing::pipe_bore>::put(v.average_bore, at);
    io<::tankwright::plumbing::pipe_bore>::put(v.minimum_wall_bore, at);
  }
};

template <>
struct io<::tankwright::plumbing::rectangular_weir_input> {
  static ::tankwright::plumbing::rectangular_weir_input read(const given& in);
  static ::tankwright::plumbing::rectangular_weir_input fields(const given& in);
  static ::tankwright::plumbing::rectangular_weir_input take(const double*& at) {
    return {.width = io<::tankwright::length>::take(at), .head = io<::tankwright::length>::take(at), .discharge_coefficient = io<double>::take(at), .contractions = io<double>::take(at), .approach_velocity = io<::tankwright::velocity>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::rectangular_weir_input& v, double*& at) {
    io<::tankwright::length>::put(v.width, at);
    io<::tankwright::length>::put(v.head, at);
    io<double>::put(v.discharge_coefficient, at);
    io<double>::put(v.contractions, at);
    io<::tankwright::velocity>::put(v.approach_velocity, at);
  }
};

template <>
struct io<::tankwright::plumbing::resisting_pipe> {
  static ::tankwright::plumbing::resisting_pipe read(const given& in);
  static ::tankwright::plumbing::resisting_pipe fields(const given& in);
  static ::tankwright::plumbing::resisting_pipe take(const double*& at) {
    return {.bore = io<::tankwright::plumbing::pipe_bore>::take(at), .resistance = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::resisting_pipe& v, double*& at) {
    io<::tankwright::plumbing::pipe_bore>::put(v.bore, at);
    io<double>::put(v.resistance, at);
  }
};

template <>
struct io<::tankwright::plumbing::restart_answer> {
  static void write(answer& out, const ::tankwright::plumbing::restart_answer& v);
  static void put(const ::tankwright::plumbing::restart_answer& v, double*& at) {
    io<::tankwright::estimate<::tankwright::length>>::put(v.lowest_level, at);
    io<::tankwright::estimate<::tankwright::length>>::put(v.submergence, at);
    io<::tankwright::estimate<::tankwright::length>>::put(v.margin, at);
    io<::tankwright::volume>::put(v.held_up, at);
    io<bool>::put(v.runs_dry, at);
    io<::tankwright::duration>::put(v.until_it_runs_over, at);
    io<::tankwright::duration>::put(v.until_steady, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::plumbing::restart_input> {
  static ::tankwright::plumbing::restart_input read(const given& in);
  static ::tankwright::plumbing::restart_input fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::running_sump> {
  static void write(answer& out, const ::tankwright::plumbing::running_sump& v);
};

template <>
struct io<::tankwright::plumbing::section_change> {
  static ::tankwright::plumbing::section_change read(const given& in);
  static ::tankwright::plumbing::section_change fields(const given& in);
  static ::tankwright::plumbing::section_change take(const double*& at) {
    return {.from = io<::tankwright::plumbing::pipe_bore>::take(at), .to = io<::tankwright::plumbing::pipe_bore>::take(at), .included_angle = io<::tankwright::angle>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::section_change& v, double*& at) {
    io<::tankwright::plumbing::pipe_bore>::put(v.from, at);
    io<::tankwright::plumbing::pipe_bore>::put(v.to, at);
    io<::tankwright::angle>::put(v.included_angle, at);
  }
};

template <>
struct io<::tankwright::plumbing::siphon_crest> {
  static ::tankwright::plumbing::siphon_crest read(const given& in);
  static ::tankwright::plumbing::siphon_crest fields(const given& in);
  static ::tankwright::plumbing::siphon_crest take(const double*& at) {
    return {.above_surface = io<::tankwright::length>::take(at), .speed = io<::tankwright::velocity>::take(at), .density = io<::tankwright::mass_density>::take(at), .loss_before = io<double>::take(at), .air = io<::tankwright::absolute_pressure>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::siphon_crest& v, double*& at) {
    io<::tankwright::length>::put(v.above_surface, at);
    io<::tankwright::velocity>::put(v.speed, at);
    io<::tankwright::mass_density>::put(v.density, at);
    io<double>::put(v.loss_before, at);
    io<::tankwright::absolute_pressure>::put(v.air, at);
  }
};

template <>
struct io<::tankwright::plumbing::siphon_draw> {
  static ::tankwright::plumbing::siphon_draw read(const given& in);
  static ::tankwright::plumbing::siphon_draw fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::siphon_limit> {
  static ::tankwright::plumbing::siphon_limit read(const given& in);
  static ::tankwright::plumbing::siphon_limit fields(const given& in);
  static ::tankwright::plumbing::siphon_limit take(const double*& at) {
    return {.speed = io<::tankwright::velocity>::take(at), .density = io<::tankwright::mass_density>::take(at), .vapour_pressure = io<::tankwright::absolute_pressure>::take(at), .loss_before = io<double>::take(at), .air = io<::tankwright::absolute_pressure>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::siphon_limit& v, double*& at) {
    io<::tankwright::velocity>::put(v.speed, at);
    io<::tankwright::mass_density>::put(v.density, at);
    io<::tankwright::absolute_pressure>::put(v.vapour_pressure, at);
    io<double>::put(v.loss_before, at);
    io<::tankwright::absolute_pressure>::put(v.air, at);
  }
};

template <>
struct io<::tankwright::plumbing::siphon_run> {
  static void write(answer& out, const ::tankwright::plumbing::siphon_run& v);
  static void put(const ::tankwright::plumbing::siphon_run& v, double*& at) {
    io<::tankwright::duration>::put(v.time, at);
    io<::tankwright::volume>::put(v.volume, at);
  }
};

template <>
struct io<::tankwright::plumbing::speed_setting> {
  static void write(answer& out, const ::tankwright::plumbing::speed_setting& v);
};

template <>
struct io<::tankwright::plumbing::staged_fill> {
  static ::tankwright::plumbing::staged_fill read(const given& in);
  static ::tankwright::plumbing::staged_fill fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::standpipe> {
  static ::tankwright::plumbing::standpipe read(const given& in);
  static ::tankwright::plumbing::standpipe fields(const given& in);
  static ::tankwright::plumbing::standpipe take(const double*& at) {
    return {.bore = io<::tankwright::plumbing::pipe_bore>::take(at), .strainer = io<bool>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::standpipe& v, double*& at) {
    io<::tankwright::plumbing::pipe_bore>::put(v.bore, at);
    io<bool>::put(v.strainer, at);
  }
};

template <>
struct io<::tankwright::plumbing::stopped_flow> {
  static ::tankwright::plumbing::stopped_flow read(const given& in);
  static ::tankwright::plumbing::stopped_flow fields(const given& in);
  static ::tankwright::plumbing::stopped_flow take(const double*& at) {
    return {.wave_speed = io<::tankwright::velocity>::take(at), .change = io<::tankwright::velocity>::take(at), .pipe = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::stopped_flow& v, double*& at) {
    io<::tankwright::velocity>::put(v.wave_speed, at);
    io<::tankwright::velocity>::put(v.change, at);
    io<::tankwright::length>::put(v.pipe, at);
  }
};

template <>
struct io<::tankwright::plumbing::submerged_jet> {
  static ::tankwright::plumbing::submerged_jet read(const given& in);
  static ::tankwright::plumbing::submerged_jet fields(const given& in);
  static ::tankwright::plumbing::submerged_jet take(const double*& at) {
    return {.bore = io<::tankwright::plumbing::pipe_bore>::take(at), .flow = io<::tankwright::flow_rate>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::submerged_jet& v, double*& at) {
    io<::tankwright::plumbing::pipe_bore>::put(v.bore, at);
    io<::tankwright::flow_rate>::put(v.flow, at);
  }
};

template <>
struct io<::tankwright::plumbing::submergence_input> {
  static ::tankwright::plumbing::submergence_input read(const given& in);
  static ::tankwright::plumbing::submergence_input fields(const given& in);
  static ::tankwright::plumbing::submergence_input take(const double*& at) {
    return {.upstream_head = io<::tankwright::length>::take(at), .downstream_head = io<::tankwright::length>::take(at), .exponent = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::submergence_input& v, double*& at) {
    io<::tankwright::length>::put(v.upstream_head, at);
    io<::tankwright::length>::put(v.downstream_head, at);
    io<double>::put(v.exponent, at);
  }
};

template <>
struct io<::tankwright::plumbing::suction_side> {
  static ::tankwright::plumbing::suction_side read(const given& in);
  static ::tankwright::plumbing::suction_side fields(const given& in);
  static ::tankwright::plumbing::suction_side take(const double*& at) {
    return {.surface_pressure = io<::tankwright::absolute_pressure>::take(at), .level_above_pump = io<::tankwright::length>::take(at), .losses = io<::tankwright::length>::take(at), .vapour_pressure = io<::tankwright::absolute_pressure>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::suction_side& v, double*& at) {
    io<::tankwright::absolute_pressure>::put(v.surface_pressure, at);
    io<::tankwright::length>::put(v.level_above_pump, at);
    io<::tankwright::length>::put(v.losses, at);
    io<::tankwright::absolute_pressure>::put(v.vapour_pressure, at);
  }
};

template <>
struct io<::tankwright::plumbing::sump_at_rest> {
  static void write(answer& out, const ::tankwright::plumbing::sump_at_rest& v);
};

template <>
struct io<::tankwright::plumbing::sump_evaporation> {
  static ::tankwright::plumbing::sump_evaporation read(const given& in);
  static ::tankwright::plumbing::sump_evaporation fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::sump_pour> {
  static ::tankwright::plumbing::sump_pour read(const given& in);
  static ::tankwright::plumbing::sump_pour fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::surge> {
  static void write(answer& out, const ::tankwright::plumbing::surge& v);
  static void put(const ::tankwright::plumbing::surge& v, double*& at) {
    io<::tankwright::length>::put(v.rise, at);
    io<::tankwright::pressure>::put(v.pressure_rise, at);
    io<::tankwright::duration>::put(v.rapid, at);
    io<::tankwright::caution>::put(v.caution, at);
  }
};

template <>
struct io<::tankwright::plumbing::tee> {
  static ::tankwright::plumbing::tee read(const given& in);
  static ::tankwright::plumbing::tee fields(const given& in);
  static ::tankwright::plumbing::tee take(const double*& at) {
    return {.direction = io<::tankwright::plumbing::tee_direction>::take(at), .angle = io<::tankwright::plumbing::tee_branch_angle>::take(at), .run_bore = io<::tankwright::plumbing::pipe_bore>::take(at), .branch_bore = io<::tankwright::plumbing::pipe_bore>::take(at), .branch_share = io<::tankwright::proportion>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::tee& v, double*& at) {
    io<::tankwright::plumbing::tee_direction>::put(v.direction, at);
    io<::tankwright::plumbing::tee_branch_angle>::put(v.angle, at);
    io<::tankwright::plumbing::pipe_bore>::put(v.run_bore, at);
    io<::tankwright::plumbing::pipe_bore>::put(v.branch_bore, at);
    io<::tankwright::proportion>::put(v.branch_share, at);
  }
};

template <>
struct io<::tankwright::plumbing::tee_loss> {
  static void write(answer& out, const ::tankwright::plumbing::tee_loss& v);
  static void put(const ::tankwright::plumbing::tee_loss& v, double*& at) {
    io<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>::put(v.run, at);
    io<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>::put(v.branch, at);
  }
};

template <>
struct io<::tankwright::plumbing::three_k> {
  static ::tankwright::plumbing::three_k read(const given& in);
  static ::tankwright::plumbing::three_k fields(const given& in);
  static ::tankwright::plumbing::three_k take(const double*& at) {
    return {.k1 = io<double>::take(at), .k_i = io<double>::take(at), .k_d = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::three_k& v, double*& at) {
    io<double>::put(v.k1, at);
    io<double>::put(v.k_i, at);
    io<double>::put(v.k_d, at);
  }
};

template <>
struct io<::tankwright::plumbing::three_points> {
  static ::tankwright::plumbing::three_points read(const given& in);
  static ::tankwright::plumbing::three_points fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::timed_fall> {
  static ::tankwright::plumbing::timed_fall read(const given& in);
  static ::tankwright::plumbing::timed_fall fields(const given& in);
  static ::tankwright::plumbing::timed_fall take(const double*& at) {
    return {.horizontal_area = io<::tankwright::area>::take(at), .bore = io<::tankwright::length>::take(at), .from = io<::tankwright::length>::take(at), .to = io<::tankwright::length>::take(at), .time = io<::tankwright::duration>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::timed_fall& v, double*& at) {
    io<::tankwright::area>::put(v.horizontal_area, at);
    io<::tankwright::length>::put(v.bore, at);
    io<::tankwright::length>::put(v.from, at);
    io<::tankwright::length>::put(v.to, at);
    io<::tankwright::duration>::put(v.time, at);
  }
};

template <>
struct io<::tankwright::plumbing::toothed_edge> {
  static ::tankwright::plumbing::toothed_edge read(const given& in);
  static ::tankwright::plumbing::toothed_edge fields(const given& in);
  static ::tankwright::plumbing::toothed_edge take(const double*& at) {
    return {.gap_width = io<::tankwright::length>::take(at), .gaps = io<int>::take(at), .tooth_width = io<::tankwright::length>::take(at), .gap_height = io<::tankwright::length>::take(at), .crest_height = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::toothed_edge& v, double*& at) {
    io<::tankwright::length>::put(v.gap_width, at);
    io<int>::put(v.gaps, at);
    io<::tankwright::length>::put(v.tooth_width, at);
    io<::tankwright::length>::put(v.gap_height, at);
    io<::tankwright::length>::put(v.crest_height, at);
  }
};

template <>
struct io<::tankwright::plumbing::two_k> {
  static ::tankwright::plumbing::two_k read(const given& in);
  static ::tankwright::plumbing::two_k fields(const given& in);
  static ::tankwright::plumbing::two_k take(const double*& at) {
    return {.k1 = io<double>::take(at), .k_infinity = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::two_k& v, double*& at) {
    io<double>::put(v.k1, at);
    io<double>::put(v.k_infinity, at);
  }
};

template <>
struct io<::tankwright::plumbing::v_notch> {
  static ::tankwright::plumbing::v_notch read(const given& in);
  static ::tankwright::plumbing::v_notch fields(const given& in);
  static ::tankwright::plumbing::v_notch take(const double*& at) {
    return {.opening = io<::tankwright::angle>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::v_notch& v, double*& at) {
    io<::tankwright::angle>::put(v.opening, at);
  }
};

template <>
struct io<::tankwright::plumbing::v_notch_tail> {
  static ::tankwright::plumbing::v_notch_tail read(const given& in);
  static ::tankwright::plumbing::v_notch_tail fields(const given& in);
  static ::tankwright::plumbing::v_notch_tail take(const double*& at) {
    return {.horizontal_area = io<::tankwright::area>::take(at), .opening = io<::tankwright::angle>::take(at), .discharge_coefficient = io<double>::take(at), .from = io<::tankwright::length>::take(at), .to = io<::tankwright::length>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::v_notch_tail& v, double*& at) {
    io<::tankwright::area>::put(v.horizontal_area, at);
    io<::tankwright::angle>::put(v.opening, at);
    io<double>::put(v.discharge_coefficient, at);
    io<::tankwright::length>::put(v.from, at);
    io<::tankwright::length>::put(v.to, at);
  }
};

template <>
struct io<::tankwright::plumbing::v_notch_weir_input> {
  static ::tankwright::plumbing::v_notch_weir_input read(const given& in);
  static ::tankwright::plumbing::v_notch_weir_input fields(const given& in);
  static ::tankwright::plumbing::v_notch_weir_input take(const double*& at) {
    return {.opening = io<::tankwright::angle>::take(at), .head = io<::tankwright::length>::take(at), .discharge_coefficient = io<double>::take(at)};
  }
  static void defaults(double*& at);
  static void put(const ::tankwright::plumbing::v_notch_weir_input& v, double*& at) {
    io<::tankwright::angle>::put(v.opening, at);
    io<::tankwright::length>::put(v.head, at);
    io<double>::put(v.discharge_coefficient, at);
  }
};

template <>
struct io<::tankwright::plumbing::valve_setting> {
  static void write(answer& out, const ::tankwright::plumbing::valve_setting& v);
};

template <>
struct io<::tankwright::plumbing::wanted_speed> {
  static ::tankwright::plumbing::wanted_speed read(const given& in);
  static ::tankwright::plumbing::wanted_speed fields(const given& in);
};

template <>
struct io<::tankwright::plumbing::wet_section> {
  static void write(answer& out, const ::tankwright::plumbing::wet_section& v);
  static void put(const ::tankwright::plumbing::wet_section& v, double*& at) {
    io<::tankwright::area>::put(v.area, at);
    io<::tankwright::length>::put(v.wetted_perimeter, at);
    io<::tankwright::length>::put(v.hydraulic_radius, at);
    io<::tankwright::length>::put(v.surface_width, at);
  }
};

template <>
struct io<std::variant<::tankwright::plumbing::area_profile, ::tankwright::plumbing::bowl, ::tankwright::plumbing::cone, ::tankwright::plumbing::lying_cylinder>> {
  static std::variant<::tankwright::plumbing::area_profile, ::tankwright::plumbing::bowl, ::tankwright::plumbing::cone, ::tankwright::plumbing::lying_cylinder> read(const given& in);
};

template <>
struct io<std::variant<::tankwright::plumbing::full_width_edge, ::tankwright::plumbing::contracted_edge, ::tankwright::plumbing::toothed_edge, ::tankwright::plumbing::v_notch, ::tankwright::plumbing::standpipe>> {
  static std::variant<::tankwright::plumbing::full_width_edge, ::tankwright::plumbing::contracted_edge, ::tankwright::plumbing::toothed_edge, ::tankwright::plumbing::v_notch, ::tankwright::plumbing::standpipe> read(const given& in);
};

}  // namespace tankwright_formulas
