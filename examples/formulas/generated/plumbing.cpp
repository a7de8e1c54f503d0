// SPDX-License-Identifier: BSL-1.0
// Written by examples/formulas/make.py from the headers. Do not edit.
#include "plumbing.hpp"

namespace tankwright_formulas {

namespace {
constexpr std::string_view words_of_plumbing_check_valve_state[] = {"open", "leak", "hold"};
}  // namespace
::tankwright::plumbing::check_valve_state io<::tankwright::plumbing::check_valve_state>::read(const given& in) { return static_cast<::tankwright::plumbing::check_valve_state>(in.word(words_of_plumbing_check_valve_state)); }

namespace {
constexpr std::string_view words_of_plumbing_curve_region[] = {"on_curve", "above_shutoff", "past_end"};
}  // namespace
void io<::tankwright::plumbing::curve_region>::write(answer& out, const ::tankwright::plumbing::curve_region& v) { out.text(words_of_plumbing_curve_region[static_cast<std::size_t>(v)]); }

namespace {
constexpr std::string_view words_of_plumbing_drain_mode[] = {"self_venting", "surging", "full", "overloaded"};
}  // namespace
void io<::tankwright::plumbing::drain_mode>::write(answer& out, const ::tankwright::plumbing::drain_mode& v) { out.text(words_of_plumbing_drain_mode[static_cast<std::size_t>(v)]); }

namespace {
constexpr std::string_view words_of_plumbing_fitting[] = {"elbow_90", "elbow_45", "return_bend", "tee_through_run", "tee_through_branch", "mitre_90", "mitre_45", "union_or_coupling", "gate_valve", "ball_valve", "butterfly_valve", "plug_valve", "swing_check", "lift_check", "foot_valve_hinged", "foot_valve_poppet"};
}  // namespace
::tankwright::plumbing::fitting io<::tankwright::plumbing::fitting>::read(const given& in) { return static_cast<::tankwright::plumbing::fitting>(in.word(words_of_plumbing_fitting)); }

namespace {
constexpr std::string_view words_of_plumbing_junction_state[] = {"joined", "dead_end", "cut_off"};
}  // namespace
void io<::tankwright::plumbing::junction_state>::write(answer& out, const ::tankwright::plumbing::junction_state& v) { out.text(words_of_plumbing_junction_state[static_cast<std::size_t>(v)]); }

namespace {
constexpr std::string_view words_of_plumbing_losses[] = {"least", "central", "most"};
}  // namespace
::tankwright::plumbing::losses io<::tankwright::plumbing::losses>::read(const given& in) { return static_cast<::tankwright::plumbing::losses>(in.word(words_of_plumbing_losses)); }

namespace {
constexpr std::string_view words_of_plumbing_outlet_kind[] = {"open", "submerged"};
}  // namespace
::tankwright::plumbing::outlet_kind io<::tankwright::plumbing::outlet_kind>::read(const given& in) { return static_cast<::tankwright::plumbing::outlet_kind>(in.word(words_of_plumbing_outlet_kind)); }

namespace {
constexpr std::string_view words_of_plumbing_outlet_state[] = {"flowing", "still", "reversed"};
}  // namespace
void io<::tankwright::plumbing::outlet_state>::write(answer& out, const ::tankwright::plumbing::outlet_state& v) { out.text(words_of_plumbing_outlet_state[static_cast<std::size_t>(v)]); }

namespace {
constexpr std::string_view words_of_plumbing_power_cut_failure[] = {"none", "siphon_break_blocked", "all_breaks_blocked", "check_valve_leaks", "check_valve_holds", "top_off_stuck"};
}  // namespace
void io<::tankwright::plumbing::power_cut_failure>::write(answer& out, const ::tankwright::plumbing::power_cut_failure& v) { out.text(words_of_plumbing_power_cut_failure[static_cast<std::size_t>(v)]); }

namespace {
constexpr std::string_view words_of_plumbing_pressure_class[] = {"pn10", "pn16"};
}  // namespace
::tankwright::plumbing::pressure_class io<::tankwright::plumbing::pressure_class>::read(const given& in) { return static_cast<::tankwright::plumbing::pressure_class>(in.word(words_of_plumbing_pressure_class)); }

namespace {
constexpr std::string_view words_of_plumbing_pump_state[] = {"running", "shut", "past_end", "reversed", "standing"};
}  // namespace
void io<::tankwright::plumbing::pump_state>::write(answer& out, const ::tankwright::plumbing::pump_state& v) { out.text(words_of_plumbing_pump_state[static_cast<std::size_t>(v)]); }

namespace {
constexpr std::string_view words_of_plumbing_pvc_schedule[] = {"schedule_40", "schedule_80"};
}  // namespace
::tankwright::plumbing::pvc_schedule io<::tankwright::plumbing::pvc_schedule>::read(const given& in) { return static_cast<::tankwright::plumbing::pvc_schedule>(in.word(words_of_plumbing_pvc_schedule)); }

namespace {
constexpr std::string_view words_of_plumbing_tee_branch_angle[] = {"forty_five", "ninety"};
}  // namespace
::tankwright::plumbing::tee_branch_angle io<::tankwright::plumbing::tee_branch_angle>::read(const given& in) { return static_cast<::tankwright::plumbing::tee_branch_angle>(in.word(words_of_plumbing_tee_branch_angle)); }

namespace {
constexpr std::string_view words_of_plumbing_tee_direction[] = {"joining", "dividing"};
}  // namespace
::tankwright::plumbing::tee_direction io<::tankwright::plumbing::tee_direction>::read(const given& in) { return static_cast<::tankwright::plumbing::tee_direction>(in.word(words_of_plumbing_tee_direction)); }

::tankwright::plumbing::area_profile io<::tankwright::plumbing::area_profile>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::area_profile> by_formula; made(in, by_formula)) return *std::move(by_formula);
  static constexpr std::string_view ways[] = {"area", "list"};
  const std::size_t way = in.way(ways, 0, 1);
  const given one = in.along(ways, way);
  switch (way) {
    case 0: return ::tankwright::plumbing::area_profile(io<::tankwright::area>::read(one));
    default: return ::tankwright::plumbing::area_profile(io<std::vector<::tankwright::plumbing::area_slice>>::read(one));
  }
}

::tankwright::plumbing::darcy_factor io<::tankwright::plumbing::darcy_factor>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::darcy_factor> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::plumbing::darcy_factor(io<double>::read(in));
}
void io<::tankwright::plumbing::darcy_factor>::write(answer& out, const ::tankwright::plumbing::darcy_factor& v) {
  out.quantity("darcy_factor", "", tw::core::si_number(v.value()));
}

::tankwright::plumbing::effective_area io<::tankwright::plumbing::effective_area>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::effective_area> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::plumbing::effective_area(io<::tankwright::area>::read(in));
}
void io<::tankwright::plumbing::effective_area>::write(answer& out, const ::tankwright::plumbing::effective_area& v) {
  out.quantity("effective_area", "m2", tw::core::si_number(v.value()));
}

::tankwright::plumbing::flow_coefficient io<::tankwright::plumbing::flow_coefficient>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::flow_coefficient> by_formula; made(in, by_formula)) return *std::move(by_formula);
  static constexpr std::string_view ways[] = {"kv", "cv"};
  const std::size_t way = in.way(ways, -1, -1);
  const given one = in.along(ways, way);
  switch (way) {
    case 0: return ::tankwright::plumbing::flow_coefficient::from_kv(io<double>::read(one));
    default: return ::tankwright::plumbing::flow_coefficient::from_cv(io<double>::read(one));
  }
}
void io<::tankwright::plumbing::flow_coefficient>::write(answer& out, const ::tankwright::plumbing::flow_coefficient& v) {
  out.begin();
  out.key("kv");
  io<double>::write(out, ::tankwright::plumbing::in_kv(v));
  out.key("cv");
  io<double>::write(out, ::tankwright::plumbing::in_cv(v));
  out.end();
}

::tankwright::plumbing::hazen_williams_c io<::tankwright::plumbing::hazen_williams_c>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::hazen_williams_c> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::plumbing::hazen_williams_c(io<double>::read(in));
}

::tankwright::plumbing::head_ratio io<::tankwright::plumbing::head_ratio>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::head_ratio> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::plumbing::head_ratio(io<double>::read(in));
}

::tankwright::plumbing::loss_coefficient io<::tankwright::plumbing::loss_coefficient>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::loss_coefficient> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::plumbing::loss_coefficient(io<double>::read(in));
}
void io<::tankwright::plumbing::loss_coefficient>::write(answer& out, const ::tankwright::plumbing::loss_coefficient& v) {
  out.quantity("loss_coefficient", "", tw::core::si_number(v.value()));
}

::tankwright::plumbing::metric_size io<::tankwright::plumbing::metric_size>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::metric_size> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::plumbing::metric_size::from_millimetres(io<double>::read(in));
}

::tankwright::plumbing::nominal_size io<::tankwright::plumbing::nominal_size>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::nominal_size> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::plumbing::nominal_size::from_inches(io<double>::read(in));
}

::tankwright::plumbing::pipe_bore io<::tankwright::plumbing::pipe_bore>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::pipe_bore> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::plumbing::pipe_bore(io<::tankwright::length>::read(in));
}
void io<::tankwright::plumbing::pipe_bore>::write(answer& out, const ::tankwright::plumbing::pipe_bore& v) {
  out.quantity("pipe_bore", "m", tw::core::si_number(v.diameter()));
}

::tankwright::plumbing::pump_curve io<::tankwright::plumbing::pump_curve>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::pump_curve> by_formula; made(in, by_formula)) return *std::move(by_formula);
  in.only({});
  in.refuse_name({});
}
void io<::tankwright::plumbing::pump_curve>::write(answer& out, const ::tankwright::plumbing::pump_curve& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label());
  out.key("shutoff_head");
  io<::tankwright::length>::write(out, v.shutoff_head());
  out.key("end_flow");
  io<::tankwright::flow_rate>::write(out, v.end_flow());
  out.key("end_head");
  io<::tankwright::length>::write(out, v.end_head());
  out.key("data");
  io<::tankwright::plumbing::detail::curve_data>::write(out, v.data());
  out.end();
}

::tankwright::plumbing::relative_roughness io<::tankwright::plumbing::relative_roughness>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::relative_roughness> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::plumbing::relative_roughness(io<double>::read(in));
}

::tankwright::plumbing::reynolds_number io<::tankwright::plumbing::reynolds_number>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::reynolds_number> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::plumbing::reynolds_number(io<double>::read(in));
}
void io<::tankwright::plumbing::reynolds_number>::write(answer& out, const ::tankwright::plumbing::reynolds_number& v) {
  out.quantity("reynolds_number", "", tw::core::si_number(v.value()));
}

::tankwright::plumbing::speed_ratio io<::tankwright::plumbing::speed_ratio>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::speed_ratio> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::plumbing::speed_ratio(io<double>::read(in));
}
void io<::tankwright::plumbing::speed_ratio>::write(answer& out, const ::tankwright::plumbing::speed_ratio& v) {
  out.quantity("speed_ratio", "", tw::core::si_number(v.value()));
}

::tankwright::plumbing::area_slice io<::tankwright::plumbing::area_slice>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::area_slice> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::area_slice io<::tankwright::plumbing::area_slice>::fields(const given& in) {
  static constexpr std::string_view known[] = {"height", "horizontal_area"};
  in.only(known);
  const ::tankwright::plumbing::area_slice v{.height = must<::tankwright::length>(in, "height"), .horizontal_area = must<::tankwright::area>(in, "horizontal_area")};
  return v;
}
void io<::tankwright::plumbing::area_slice>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::baffle io<::tankwright::plumbing::baffle>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::baffle> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::baffle io<::tankwright::plumbing::baffle>::fields(const given& in) {
  static constexpr std::string_view known[] = {"crest", "width", "gap", "thickness"};
  in.only(known);
  ::tankwright::plumbing::baffle v{.crest = must<::tankwright::length>(in, "crest"), .width = must<::tankwright::length>(in, "width")};
  if (in.has("gap")) v.gap = must<::tankwright::length>(in, "gap");
  if (in.has("thickness")) v.thickness = must<::tankwright::length>(in, "thickness");
  return v;
}
void io<::tankwright::plumbing::baffle>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::baffle v{.crest = io<::tankwright::length>::take(zero), .width = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::length>::put(v.gap, at);
  io<::tankwright::length>::put(v.thickness, at);
}

::tankwright::plumbing::basis_change io<::tankwright::plumbing::basis_change>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::basis_change> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::basis_change io<::tankwright::plumbing::basis_change>::fields(const given& in) {
  static constexpr std::string_view known[] = {"from", "to"};
  in.only(known);
  const ::tankwright::plumbing::basis_change v{.from = must<::tankwright::plumbing::pipe_bore>(in, "from"), .to = must<::tankwright::plumbing::pipe_bore>(in, "to")};
  return v;
}
void io<::tankwright::plumbing::basis_change>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::bazin_weir_input io<::tankwright::plumbing::bazin_weir_input>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::bazin_weir_input> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::bazin_weir_input io<::tankwright::plumbing::bazin_weir_input>::fields(const given& in) {
  static constexpr std::string_view known[] = {"width", "head"};
  in.only(known);
  const ::tankwright::plumbing::bazin_weir_input v{.width = must<::tankwright::length>(in, "width"), .head = must<::tankwright::length>(in, "head")};
  return v;
}
void io<::tankwright::plumbing::bazin_weir_input>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::plumbing::blocked_drain>::write(answer& out, const ::tankwright::plumbing::blocked_drain& v) {
  out.begin();
  out.key("blocked");
  io<std::string>::write(out, v.blocked);
  out.key("self_venting");
  io<::tankwright::flow_rate>::write(out, v.self_venting);
  out.key("surely");
  io<::tankwright::flow_rate>::write(out, v.surely);
  out.key("quiet");
  io<bool>::write(out, v.quiet);
  out.key("holds");
  io<bool>::write(out, v.holds);
  out.end();
}

void io<::tankwright::plumbing::blocked_answer>::write(answer& out, const ::tankwright::plumbing::blocked_answer& v) {
  out.begin();
  out.key("cases");
  io<std::vector<::tankwright::plumbing::blocked_drain>>::write(out, v.cases);
  out.key("holds");
  io<bool>::write(out, v.holds);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::plumbing::bowl io<::tankwright::plumbing::bowl>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::bowl> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::bowl io<::tankwright::plumbing::bowl>::fields(const given& in) {
  static constexpr std::string_view known[] = {"radius"};
  in.only(known);
  const ::tankwright::plumbing::bowl v{.radius = must<::tankwright::length>(in, "radius")};
  return v;
}
void io<::tankwright::plumbing::bowl>::defaults(double*& at) {
  not_given(at, 1);
}

::tankwright::plumbing::chamber io<::tankwright::plumbing::chamber>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::chamber> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::chamber io<::tankwright::plumbing::chamber>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "horizontal_area", "gear"};
  in.only(known);
  ::tankwright::plumbing::chamber v{.label = may_or<std::string>(in, "label", [] { return std::string{}; }), .horizontal_area = must<::tankwright::plumbing::area_profile>(in, "horizontal_area")};
  if (in.has("gear")) v.gear = must<::tankwright::area>(in, "gear");
  return v;
}

void io<::tankwright::plumbing::chamber_history>::write(answer& out, const ::tankwright::plumbing::chamber_history& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("level");
  io<std::vector<::tankwright::length>>::write(out, v.level);
  out.key("peak");
  io<::tankwright::length>::write(out, v.peak);
  out.key("peak_at");
  io<::tankwright::duration>::write(out, v.peak_at);
  out.end();
}

::tankwright::plumbing::chamber_level io<::tankwright::plumbing::chamber_level>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::chamber_level> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::chamber_level io<::tankwright::plumbing::chamber_level>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "level"};
  in.only(known);
  const ::tankwright::plumbing::chamber_level v{.label = may_or<std::string>(in, "label", [] { return std::string{}; }), .level = must<::tankwright::estimate<::tankwright::length>>(in, "level")};
  return v;
}
void io<::tankwright::plumbing::chamber_level>::write(answer& out, const ::tankwright::plumbing::chamber_level& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("level");
  io<::tankwright::estimate<::tankwright::length>>::write(out, v.level);
  out.end();
}

::tankwright::plumbing::check_valve io<::tankwright::plumbing::check_valve>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::check_valve> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::check_valve io<::tankwright::plumbing::check_valve>::fields(const given& in) {
  static constexpr std::string_view known[] = {"leak"};
  in.only(known);
  ::tankwright::plumbing::check_valve v{};
  if (in.has("leak")) v.leak = must<::tankwright::plumbing::flow_coefficient>(in, "leak");
  return v;
}
void io<::tankwright::plumbing::check_valve>::write(answer& out, const ::tankwright::plumbing::check_valve& v) {
  out.begin();
  out.key("leak");
  io<::tankwright::plumbing::flow_coefficient>::write(out, v.leak);
  out.end();
}
void io<::tankwright::plumbing::check_valve>::defaults(double*& at) {
  constexpr double zeros[1] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::check_valve v{};
  io<::tankwright::plumbing::flow_coefficient>::put(v.leak, at);
}

::tankwright::plumbing::circuit_source io<::tankwright::plumbing::circuit_source>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::circuit_source> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::circuit_source io<::tankwright::plumbing::circuit_source>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "level"};
  in.only(known);
  ::tankwright::plumbing::circuit_source v{.level = must<::tankwright::length>(in, "level")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::plumbing::idle_pump_losses io<::tankwright::plumbing::idle_pump_losses>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::idle_pump_losses> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::idle_pump_losses io<::tankwright::plumbing::idle_pump_losses>::fields(const given& in) {
  static constexpr std::string_view known[] = {"backwards", "forwards"};
  in.only(known);
  ::tankwright::plumbing::idle_pump_losses v{};
  if (in.has("backwards")) v.backwards = must<::tankwright::estimate<::tankwright::plumbing::head_ratio>>(in, "backwards");
  if (in.has("forwards")) v.forwards = must<::tankwright::estimate<::tankwright::plumbing::head_ratio>>(in, "forwards");
  return v;
}
void io<::tankwright::plumbing::idle_pump_losses>::defaults(double*& at) {
  constexpr double zeros[6] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::idle_pump_losses v{};
  io<::tankwright::estimate<::tankwright::plumbing::head_ratio>>::put(v.backwards, at);
  io<::tankwright::estimate<::tankwright::plumbing::head_ratio>>::put(v.forwards, at);
}

::tankwright::plumbing::circuit_pump io<::tankwright::plumbing::circuit_pump>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::circuit_pump> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::circuit_pump io<::tankwright::plumbing::circuit_pump>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "from", "to", "curve", "speed", "check_valve", "idle"};
  in.only(known);
  ::tankwright::plumbing::circuit_pump v{.curve = must<::tankwright::plumbing::pump_curve>(in, "curve")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  if (in.has("from")) v.from = must<std::string>(in, "from");
  if (in.has("to")) v.to = must<std::string>(in, "to");
  if (in.has("speed")) v.speed = must<::tankwright::plumbing::speed_ratio>(in, "speed");
  if (in.has("check_valve")) v.check_valve = must<std::optional<::tankwright::plumbing::check_valve>>(in, "check_valve");
  if (in.has("idle")) v.idle = must<::tankwright::plumbing::idle_pump_losses>(in, "idle");
  return v;
}

::tankwright::plumbing::pipe_run io<::tankwright::plumbing::pipe_run>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::pipe_run> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::pipe_run io<::tankwright::plumbing::pipe_run>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "from", "to", "bore", "length", "roughness", "fittings", "valve", "check_valve"};
  in.only(known);
  ::tankwright::plumbing::pipe_run v{.bore = must<::tankwright::plumbing::pipe_bore>(in, "bore")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  if (in.has("from")) v.from = must<std::string>(in, "from");
  if (in.has("to")) v.to = must<std::string>(in, "to");
  if (in.has("length")) v.length = must<::tankwright::length>(in, "length");
  if (in.has("roughness")) v.roughness = must<::tankwright::length>(in, "roughness");
  if (in.has("fittings")) v.fittings = must<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>(in, "fittings");
  if (in.has("valve")) v.valve = must<std::optional<::tankwright::plumbing::flow_coefficient>>(in, "valve");
  if (in.has("check_valve")) v.check_valve = must<std::optional<::tankwright::plumbing::check_valve>>(in, "check_valve");
  return v;
}

::tankwright::plumbing::circuit_outlet io<::tankwright::plumbing::circuit_outlet>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::circuit_outlet> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::circuit_outlet io<::tankwright::plumbing::circuit_outlet>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "kind", "level", "exit", "opening"};
  in.only(known);
  ::tankwright::plumbing::circuit_outlet v{.kind = must<::tankwright::plumbing::outlet_kind>(in, "kind"), .level = must<::tankwright::length>(in, "level")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  if (in.has("exit")) v.exit = must<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>(in, "exit");
  if (in.has("opening")) v.opening = must<std::optional<::tankwright::plumbing::pipe_bore>>(in, "opening");
  return v;
}

::tankwright::plumbing::circuit io<::tankwright::plumbing::circuit>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::circuit> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::circuit io<::tankwright::plumbing::circuit>::fields(const given& in) {
  static constexpr std::string_view known[] = {"sources", "pumps", "runs", "outlets"};
  in.only(known);
  ::tankwright::plumbing::circuit v{};
  if (in.has("sources")) v.sources = must<std::vector<::tankwright::plumbing::circuit_source>>(in, "sources");
  if (in.has("pumps")) v.pumps = must<std::vector<::tankwright::plumbing::circuit_pump>>(in, "pumps");
  if (in.has("runs")) v.runs = must<std::vector<::tankwright::plumbing::pipe_run>>(in, "runs");
  if (in.has("outlets")) v.outlets = must<std::vector<::tankwright::plumbing::circuit_outlet>>(in, "outlets");
  return v;
}

void io<::tankwright::plumbing::run_flow>::write(answer& out, const ::tankwright::plumbing::run_flow& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("flow");
  io<::tankwright::flow_rate>::write(out, v.flow);
  out.key("velocity");
  io<::tankwright::velocity>::write(out, v.velocity);
  out.key("loss");
  io<::tankwright::length>::write(out, v.loss);
  out.key("reversed");
  io<bool>::write(out, v.reversed);
  out.key("shut");
  io<bool>::write(out, v.shut);
  out.key("faster_than_recommended");
  io<bool>::write(out, v.faster_than_recommended);
  out.end();
}

void io<::tankwright::plumbing::junction_head>::write(answer& out, const ::tankwright::plumbing::junction_head& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("head");
  io<std::optional<::tankwright::length>>::write(out, v.head);
  out.key("state");
  io<::tankwright::plumbing::junction_state>::write(out, v.state);
  out.end();
}

void io<::tankwright::plumbing::pump_flow>::write(answer& out, const ::tankwright::plumbing::pump_flow& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("flow");
  io<::tankwright::flow_rate>::write(out, v.flow);
  out.key("head");
  io<::tankwright::length>::write(out, v.head);
  out.key("state");
  io<::tankwright::plumbing::pump_state>::write(out, v.state);
  out.end();
}

void io<::tankwright::plumbing::outlet_flow>::write(answer& out, const ::tankwright::plumbing::outlet_flow& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("flow");
  io<::tankwright::flow_rate>::write(out, v.flow);
  out.key("state");
  io<::tankwright::plumbing::outlet_state>::write(out, v.state);
  out.end();
}

void io<::tankwright::plumbing::source_flow>::write(answer& out, const ::tankwright::plumbing::source_flow& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("flow");
  io<::tankwright::flow_rate>::write(out, v.flow);
  out.end();
}

void io<::tankwright::plumbing::circuit_solution>::write(answer& out, const ::tankwright::plumbing::circuit_solution& v) {
  out.begin();
  out.key("runs");
  io<std::vector<::tankwright::plumbing::run_flow>>::write(out, v.runs);
  out.key("junctions");
  io<std::vector<::tankwright::plumbing::junction_head>>::write(out, v.junctions);
  out.key("pumps");
  io<std::vector<::tankwright::plumbing::pump_flow>>::write(out, v.pumps);
  out.key("outlets");
  io<std::vector<::tankwright::plumbing::outlet_flow>>::write(out, v.outlets);
  out.key("sources");
  io<std::vector<::tankwright::plumbing::source_flow>>::write(out, v.sources);
  out.key("delivered");
  io<::tankwright::flow_rate>::write(out, v.delivered);
  out.key("iterations");
  io<int>::write(out, v.iterations);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::plumbing::cone io<::tankwright::plumbing::cone>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::cone> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::cone io<::tankwright::plumbing::cone>::fields(const given& in) {
  static constexpr std::string_view known[] = {"height", "top_radius"};
  in.only(known);
  const ::tankwright::plumbing::cone v{.height = must<::tankwright::length>(in, "height"), .top_radius = must<::tankwright::length>(in, "top_radius")};
  return v;
}
void io<::tankwright::plumbing::cone>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::contracted_edge io<::tankwright::plumbing::contracted_edge>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::contracted_edge> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::contracted_edge io<::tankwright::plumbing::contracted_edge>::fields(const given& in) {
  static constexpr std::string_view known[] = {"width", "channel_width", "crest_height"};
  in.only(known);
  const ::tankwright::plumbing::contracted_edge v{.width = must<::tankwright::length>(in, "width"), .channel_width = must<::tankwright::length>(in, "channel_width"), .crest_height = must<::tankwright::length>(in, "crest_height")};
  return v;
}
void io<::tankwright::plumbing::contracted_edge>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::curve_point io<::tankwright::plumbing::curve_point>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::curve_point> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::curve_point io<::tankwright::plumbing::curve_point>::fields(const given& in) {
  static constexpr std::string_view known[] = {"flow", "head"};
  in.only(known);
  const ::tankwright::plumbing::curve_point v{.flow = must<::tankwright::flow_rate>(in, "flow"), .head = must<::tankwright::length>(in, "head")};
  return v;
}
void io<::tankwright::plumbing::curve_point>::write(answer& out, const ::tankwright::plumbing::curve_point& v) {
  out.begin();
  out.key("flow");
  io<::tankwright::flow_rate>::write(out, v.flow);
  out.key("head");
  io<::tankwright::length>::write(out, v.head);
  out.end();
}
void io<::tankwright::plumbing::curve_point>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::plumbing::detail::curve_data>::write(answer& out, const ::tankwright::plumbing::detail::curve_data& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("shutoff");
  io<double>::write(out, v.shutoff);
  out.key("end_flow");
  io<double>::write(out, v.end_flow);
  out.key("end_head");
  io<double>::write(out, v.end_head);
  out.key("best_flow");
  io<double>::write(out, v.best_flow);
  out.key("best_head");
  io<double>::write(out, v.best_head);
  out.key("b");
  io<double>::write(out, v.b);
  out.key("c");
  io<double>::write(out, v.c);
  out.key("q");
  io<std::vector<double>>::write(out, v.q);
  out.end();
}

::tankwright::plumbing::overflow_box io<::tankwright::plumbing::overflow_box>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::overflow_box> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::overflow_box io<::tankwright::plumbing::overflow_box>::fields(const given& in) {
  static constexpr std::string_view known[] = {"horizontal_area", "falls_by"};
  in.only(known);
  const ::tankwright::plumbing::overflow_box v{.horizontal_area = must<::tankwright::area>(in, "horizontal_area"), .falls_by = must<::tankwright::length>(in, "falls_by")};
  return v;
}
void io<::tankwright::plumbing::overflow_box>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::display_tank io<::tankwright::plumbing::display_tank>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::display_tank> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::display_tank io<::tankwright::plumbing::display_tank>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "surface", "edge", "box", "drains"};
  in.only(known);
  ::tankwright::plumbing::display_tank v{.surface = must<::tankwright::area>(in, "surface"), .edge = must<std::variant<::tankwright::plumbing::full_width_edge, ::tankwright::plumbing::contracted_edge, ::tankwright::plumbing::toothed_edge, ::tankwright::plumbing::v_notch, ::tankwright::plumbing::standpipe>>(in, "edge")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  if (in.has("box")) v.box = must<std::optional<::tankwright::plumbing::overflow_box>>(in, "box");
  if (in.has("drains")) v.drains = must<std::vector<::tankwright::plumbing::pipe_run>>(in, "drains");
  return v;
}

::tankwright::plumbing::drain io<::tankwright::plumbing::drain>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::drain> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::drain io<::tankwright::plumbing::drain>::fields(const given& in) {
  static constexpr std::string_view known[] = {"pipe", "drop", "inlet_head", "strainer", "runs_full"};
  in.only(known);
  ::tankwright::plumbing::drain v{.pipe = must<::tankwright::plumbing::pipe_run>(in, "pipe"), .drop = must<::tankwright::length>(in, "drop"), .inlet_head = must<::tankwright::length>(in, "inlet_head")};
  if (in.has("strainer")) v.strainer = must<bool>(in, "strainer");
  if (in.has("runs_full")) v.runs_full = must<bool>(in, "runs_full");
  return v;
}

void io<::tankwright::plumbing::drain_answer>::write(answer& out, const ::tankwright::plumbing::drain_answer& v) {
  out.begin();
  out.key("mode");
  io<::tankwright::plumbing::drain_mode>::write(out, v.mode);
  out.key("number");
  io<double>::write(out, v.number);
  out.key("self_venting");
  io<::tankwright::flow_rate>::write(out, v.self_venting);
  out.key("stack");
  io<::tankwright::flow_rate>::write(out, v.stack);
  out.key("full");
  io<::tankwright::estimate<::tankwright::flow_rate>>::write(out, v.full);
  out.key("inlet");
  io<::tankwright::estimate<::tankwright::flow_rate>>::write(out, v.inlet);
  out.key("carries");
  io<::tankwright::estimate<::tankwright::flow_rate>>::write(out, v.carries);
  out.key("surely");
  io<::tankwright::flow_rate>::write(out, v.surely);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::plumbing::drains_blocked_answer>::write(answer& out, const ::tankwright::plumbing::drains_blocked_answer& v) {
  out.begin();
  out.key("delivered");
  io<::tankwright::estimate<::tankwright::volume>>::write(out, v.delivered);
  out.key("over_edge");
  io<::tankwright::estimate<::tankwright::length>>::write(out, v.over_edge);
  out.key("margin");
  io<::tankwright::estimate<::tankwright::length>>::write(out, v.margin);
  out.key("on_the_floor");
  io<::tankwright::estimate<::tankwright::volume>>::write(out, v.on_the_floor);
  out.key("until_dry");
  io<::tankwright::duration>::write(out, v.until_dry);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::plumbing::sump io<::tankwright::plumbing::sump>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::sump> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::sump io<::tankwright::plumbing::sump>::fields(const given& in) {
  static constexpr std::string_view known[] = {"rim", "running_level", "chambers", "baffles"};
  in.only(known);
  ::tankwright::plumbing::sump v{.rim = must<::tankwright::length>(in, "rim"), .running_level = must<::tankwright::length>(in, "running_level"), .chambers = may_or<std::vector<::tankwright::plumbing::chamber>>(in, "chambers", [] { return std::vector<::tankwright::plumbing::chamber>{}; })};
  if (in.has("baffles")) v.baffles = must<std::vector<::tankwright::plumbing::baffle>>(in, "baffles");
  return v;
}

::tankwright::plumbing::return_line io<::tankwright::plumbing::return_line>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::return_line> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::return_line io<::tankwright::plumbing::return_line>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "flow", "outlet_below_edge", "break_below_edge", "pipe", "check_valve"};
  in.only(known);
  ::tankwright::plumbing::return_line v{.label = may_or<std::string>(in, "label", [] { return std::string{}; }), .flow = must<::tankwright::flow_rate>(in, "flow"), .outlet_below_edge = must<::tankwright::length>(in, "outlet_below_edge")};
  if (in.has("break_below_edge")) v.break_below_edge = must<std::optional<::tankwright::length>>(in, "break_below_edge");
  if (in.has("pipe")) v.pipe = must<std::optional<::tankwright::plumbing::pipe_run>>(in, "pipe");
  if (in.has("check_valve")) v.check_valve = must<bool>(in, "check_valve");
  return v;
}

::tankwright::plumbing::shared_pipe io<::tankwright::plumbing::shared_pipe>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::shared_pipe> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::shared_pipe io<::tankwright::plumbing::shared_pipe>::fields(const given& in) {
  static constexpr std::string_view known[] = {"pipe", "returns", "check_valve", "side_by_side"};
  in.only(known);
  ::tankwright::plumbing::shared_pipe v{.pipe = must<::tankwright::plumbing::pipe_run>(in, "pipe")};
  if (in.has("returns")) v.returns = must<std::vector<std::string>>(in, "returns");
  if (in.has("check_valve")) v.check_valve = must<bool>(in, "check_valve");
  if (in.has("side_by_side")) v.side_by_side = must<int>(in, "side_by_side");
  return v;
}

::tankwright::plumbing::power_cut_input io<::tankwright::plumbing::power_cut_input>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::power_cut_input> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::power_cut_input io<::tankwright::plumbing::power_cut_input>::fields(const given& in) {
  static constexpr std::string_view known[] = {"display", "sump", "returns", "edge_above_floor", "shared_pipes", "water", "drains_into", "breaks_blocked", "check_valves", "check_valve_leak", "topped_up", "area_uncertainty", "level_uncertainty", "flow_uncertainty", "reserve"};
  in.only(known);
  ::tankwright::plumbing::power_cut_input v{.display = must<::tankwright::plumbing::display_tank>(in, "display"), .sump = must<::tankwright::plumbing::sump>(in, "sump"), .returns = may_or<std::vector<::tankwright::plumbing::return_line>>(in, "returns", [] { return std::vector<::tankwright::plumbing::return_line>{}; }), .edge_above_floor = must<::tankwright::length>(in, "edge_above_floor")};
  if (in.has("shared_pipes")) v.shared_pipes = must<std::vector<::tankwright::plumbing::shared_pipe>>(in, "shared_pipes");
  if (in.has("water")) v.water = must<::tankwright::water::liquid>(in, "water");
  if (in.has("drains_into")) v.drains_into = must<std::size_t>(in, "drains_into");
  if (in.has("breaks_blocked")) v.breaks_blocked = must<bool>(in, "breaks_blocked");
  if (in.has("check_valves")) v.check_valves = must<::tankwright::plumbing::check_valve_state>(in, "check_valves");
  if (in.has("check_valve_leak")) v.check_valve_leak = must<::tankwright::proportion>(in, "check_valve_leak");
  if (in.has("topped_up")) v.topped_up = must<::tankwright::volume>(in, "topped_up");
  if (in.has("area_uncertainty")) v.area_uncertainty = must<::tankwright::proportion>(in, "area_uncertainty");
  if (in.has("level_uncertainty")) v.level_uncertainty = must<::tankwright::length>(in, "level_uncertainty");
  if (in.has("flow_uncertainty")) v.flow_uncertainty = must<::tankwright::proportion>(in, "flow_uncertainty");
  if (in.has("reserve")) v.reserve = must<::tankwright::length>(in, "reserve");
  return v;
}

::tankwright::plumbing::pump_inlet io<::tankwright::plumbing::pump_inlet>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::pump_inlet> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::pump_inlet io<::tankwright::plumbing::pump_inlet>::fields(const given& in) {
  static constexpr std::string_view known[] = {"above_floor", "bore"};
  in.only(known);
  const ::tankwright::plumbing::pump_inlet v{.above_floor = must<::tankwright::length>(in, "above_floor"), .bore = must<::tankwright::plumbing::pipe_bore>(in, "bore")};
  return v;
}
void io<::tankwright::plumbing::pump_inlet>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::drains_blocked_input io<::tankwright::plumbing::drains_blocked_input>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::drains_blocked_input> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::drains_blocked_input io<::tankwright::plumbing::drains_blocked_input>::fields(const given& in) {
  static constexpr std::string_view known[] = {"system", "edge_to_rim", "inlet", "top_off"};
  in.only(known);
  ::tankwright::plumbing::drains_blocked_input v{.system = must<::tankwright::plumbing::power_cut_input>(in, "system"), .edge_to_rim = must<::tankwright::length>(in, "edge_to_rim")};
  if (in.has("inlet")) v.inlet = must<std::optional<::tankwright::plumbing::pump_inlet>>(in, "inlet");
  if (in.has("top_off")) v.top_off = must<::tankwright::volume>(in, "top_off");
  return v;
}

::tankwright::plumbing::edge_tail io<::tankwright::plumbing::edge_tail>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::edge_tail> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::edge_tail io<::tankwright::plumbing::edge_tail>::fields(const given& in) {
  static constexpr std::string_view known[] = {"horizontal_area", "edge", "from", "to"};
  in.only(known);
  ::tankwright::plumbing::edge_tail v{.horizontal_area = must<::tankwright::area>(in, "horizontal_area"), .edge = must<std::variant<::tankwright::plumbing::full_width_edge, ::tankwright::plumbing::contracted_edge, ::tankwright::plumbing::toothed_edge, ::tankwright::plumbing::v_notch, ::tankwright::plumbing::standpipe>>(in, "edge"), .from = must<::tankwright::length>(in, "from")};
  if (in.has("to")) v.to = must<::tankwright::length>(in, "to");
  return v;
}

::tankwright::plumbing::elastic_pipe io<::tankwright::plumbing::elastic_pipe>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::elastic_pipe> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::elastic_pipe io<::tankwright::plumbing::elastic_pipe>::fields(const given& in) {
  static constexpr std::string_view known[] = {"bore", "wall", "modulus", "bulk_modulus", "restraint"};
  in.only(known);
  ::tankwright::plumbing::elastic_pipe v{.bore = must<::tankwright::plumbing::pipe_bore>(in, "bore"), .wall = must<::tankwright::length>(in, "wall")};
  if (in.has("modulus")) v.modulus = must<::tankwright::pressure>(in, "modulus");
  if (in.has("bulk_modulus")) v.bulk_modulus = must<::tankwright::pressure>(in, "bulk_modulus");
  if (in.has("restraint")) v.restraint = must<double>(in, "restraint");
  return v;
}
void io<::tankwright::plumbing::elastic_pipe>::defaults(double*& at) {
  constexpr double zeros[5] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::elastic_pipe v{.bore = io<::tankwright::plumbing::pipe_bore>::take(zero), .wall = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::pressure>::put(v.modulus, at);
  io<::tankwright::pressure>::put(v.bulk_modulus, at);
  io<double>::put(v.restraint, at);
}

::tankwright::plumbing::fall_through io<::tankwright::plumbing::fall_through>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::fall_through> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::fall_through io<::tankwright::plumbing::fall_through>::fields(const given& in) {
  static constexpr std::string_view known[] = {"outlet", "from", "to"};
  in.only(known);
  ::tankwright::plumbing::fall_through v{.outlet = must<::tankwright::plumbing::effective_area>(in, "outlet"), .from = must<::tankwright::length>(in, "from")};
  if (in.has("to")) v.to = must<::tankwright::length>(in, "to");
  return v;
}
void io<::tankwright::plumbing::fall_through>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::fall_through v{.outlet = io<::tankwright::plumbing::effective_area>::take(zero), .from = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::length>::put(v.to, at);
}

::tankwright::plumbing::falling_water io<::tankwright::plumbing::falling_water>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::falling_water> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::falling_water io<::tankwright::plumbing::falling_water>::fields(const given& in) {
  static constexpr std::string_view known[] = {"over_edge", "back_siphon", "box", "drain_pipes", "return_pipes", "total"};
  in.only(known);
  const ::tankwright::plumbing::falling_water v{.over_edge = must<::tankwright::estimate<::tankwright::volume>>(in, "over_edge"), .back_siphon = must<::tankwright::estimate<::tankwright::volume>>(in, "back_siphon"), .box = must<::tankwright::estimate<::tankwright::volume>>(in, "box"), .drain_pipes = must<::tankwright::volume>(in, "drain_pipes"), .return_pipes = must<::tankwright::volume>(in, "return_pipes"), .total = must<::tankwright::estimate<::tankwright::volume>>(in, "total")};
  return v;
}
void io<::tankwright::plumbing::falling_water>::write(answer& out, const ::tankwright::plumbing::falling_water& v) {
  out.begin();
  out.key("over_edge");
  io<::tankwright::estimate<::tankwright::volume>>::write(out, v.over_edge);
  out.key("back_siphon");
  io<::tankwright::estimate<::tankwright::volume>>::write(out, v.back_siphon);
  out.key("box");
  io<::tankwright::estimate<::tankwright::volume>>::write(out, v.box);
  out.key("drain_pipes");
  io<::tankwright::volume>::write(out, v.drain_pipes);
  out.key("return_pipes");
  io<::tankwright::volume>::write(out, v.return_pipes);
  out.key("total");
  io<::tankwright::estimate<::tankwright::volume>>::write(out, v.total);
  out.end();
}
void io<::tankwright::plumbing::falling_water>::defaults(double*& at) {
  not_given(at, 3);
  not_given(at, 3);
  not_given(at, 3);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 3);
}

void io<::tankwright::plumbing::fill_stage>::write(answer& out, const ::tankwright::plumbing::fill_stage& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("level");
  io<::tankwright::length>::write(out, v.level);
  out.key("added");
  io<::tankwright::volume>::write(out, v.added);
  out.key("in_vessel");
  io<::tankwright::volume>::write(out, v.in_vessel);
  out.key("reached");
  io<::tankwright::duration>::write(out, v.reached);
  out.key("resumed");
  io<::tankwright::duration>::write(out, v.resumed);
  out.end();
}

::tankwright::plumbing::fill_stop io<::tankwright::plumbing::fill_stop>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::fill_stop> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::fill_stop io<::tankwright::plumbing::fill_stop>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "level", "hold"};
  in.only(known);
  ::tankwright::plumbing::fill_stop v{.label = may_or<std::string>(in, "label", [] { return std::string{}; }), .level = must<::tankwright::length>(in, "level")};
  if (in.has("hold")) v.hold = must<::tankwright::duration>(in, "hold");
  return v;
}

void io<::tankwright::plumbing::flow_answer>::write(answer& out, const ::tankwright::plumbing::flow_answer& v) {
  out.begin();
  out.key("region");
  io<::tankwright::plumbing::curve_region>::write(out, v.region);
  out.key("flow");
  io<std::optional<::tankwright::flow_rate>>::write(out, v.flow);
  out.end();
}

::tankwright::plumbing::francis_weir_input io<::tankwright::plumbing::francis_weir_input>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::francis_weir_input> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::francis_weir_input io<::tankwright::plumbing::francis_weir_input>::fields(const given& in) {
  static constexpr std::string_view known[] = {"width", "head", "contractions", "approach_velocity"};
  in.only(known);
  ::tankwright::plumbing::francis_weir_input v{.width = must<::tankwright::length>(in, "width"), .head = must<::tankwright::length>(in, "head")};
  if (in.has("contractions")) v.contractions = must<double>(in, "contractions");
  if (in.has("approach_velocity")) v.approach_velocity = must<::tankwright::velocity>(in, "approach_velocity");
  return v;
}
void io<::tankwright::plumbing::francis_weir_input>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::francis_weir_input v{.width = io<::tankwright::length>::take(zero), .head = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<double>::put(v.contractions, at);
  io<::tankwright::velocity>::put(v.approach_velocity, at);
}

::tankwright::plumbing::free_jet io<::tankwright::plumbing::free_jet>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::free_jet> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::free_jet io<::tankwright::plumbing::free_jet>::fields(const given& in) {
  static constexpr std::string_view known[] = {"drive", "fall", "velocity_coefficient"};
  in.only(known);
  ::tankwright::plumbing::free_jet v{.drive = must<::tankwright::length>(in, "drive"), .fall = must<::tankwright::length>(in, "fall")};
  if (in.has("velocity_coefficient")) v.velocity_coefficient = must<double>(in, "velocity_coefficient");
  return v;
}
void io<::tankwright::plumbing::free_jet>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::free_jet v{.drive = io<::tankwright::length>::take(zero), .fall = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<double>::put(v.velocity_coefficient, at);
}

::tankwright::plumbing::full_width_edge io<::tankwright::plumbing::full_width_edge>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::full_width_edge> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::full_width_edge io<::tankwright::plumbing::full_width_edge>::fields(const given& in) {
  static constexpr std::string_view known[] = {"width", "crest_height", "thickness"};
  in.only(known);
  ::tankwright::plumbing::full_width_edge v{.width = must<::tankwright::length>(in, "width"), .crest_height = must<::tankwright::length>(in, "crest_height")};
  if (in.has("thickness")) v.thickness = must<::tankwright::length>(in, "thickness");
  return v;
}
void io<::tankwright::plumbing::full_width_edge>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::full_width_edge v{.width = io<::tankwright::length>::take(zero), .crest_height = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::length>::put(v.thickness, at);
}

::tankwright::plumbing::gauge_readings io<::tankwright::plumbing::gauge_readings>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::gauge_readings> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::gauge_readings io<::tankwright::plumbing::gauge_readings>::fields(const given& in) {
  static constexpr std::string_view known[] = {"suction", "discharge", "suction_gauge_height", "discharge_gauge_height", "suction_velocity", "discharge_velocity"};
  in.only(known);
  ::tankwright::plumbing::gauge_readings v{.suction = must<::tankwright::gauge_pressure>(in, "suction"), .discharge = must<::tankwright::gauge_pressure>(in, "discharge")};
  if (in.has("suction_gauge_height")) v.suction_gauge_height = must<::tankwright::length>(in, "suction_gauge_height");
  if (in.has("discharge_gauge_height")) v.discharge_gauge_height = must<::tankwright::length>(in, "discharge_gauge_height");
  if (in.has("suction_velocity")) v.suction_velocity = must<::tankwright::velocity>(in, "suction_velocity");
  if (in.has("discharge_velocity")) v.discharge_velocity = must<::tankwright::velocity>(in, "discharge_velocity");
  return v;
}
void io<::tankwright::plumbing::gauge_readings>::defaults(double*& at) {
  constexpr double zeros[6] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::gauge_readings v{.suction = io<::tankwright::gauge_pressure>::take(zero), .discharge = io<::tankwright::gauge_pressure>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::length>::put(v.suction_gauge_height, at);
  io<::tankwright::length>::put(v.discharge_gauge_height, at);
  io<::tankwright::velocity>::put(v.suction_velocity, at);
  io<::tankwright::velocity>::put(v.discharge_velocity, at);
}

void io<::tankwright::plumbing::head_answer>::write(answer& out, const ::tankwright::plumbing::head_answer& v) {
  out.begin();
  out.key("region");
  io<::tankwright::plumbing::curve_region>::write(out, v.region);
  out.key("head");
  io<std::optional<::tankwright::length>>::write(out, v.head);
  out.end();
}

::tankwright::plumbing::inflow_and_outlet io<::tankwright::plumbing::inflow_and_outlet>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::inflow_and_outlet> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::inflow_and_outlet io<::tankwright::plumbing::inflow_and_outlet>::fields(const given& in) {
  static constexpr std::string_view known[] = {"horizontal_area", "inflow", "outlet"};
  in.only(known);
  const ::tankwright::plumbing::inflow_and_outlet v{.horizontal_area = must<::tankwright::area>(in, "horizontal_area"), .inflow = must<::tankwright::flow_rate>(in, "inflow"), .outlet = must<::tankwright::plumbing::effective_area>(in, "outlet")};
  return v;
}
void io<::tankwright::plumbing::inflow_and_outlet>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::laminar_emptying io<::tankwright::plumbing::laminar_emptying>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::laminar_emptying> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::laminar_emptying io<::tankwright::plumbing::laminar_emptying>::fields(const given& in) {
  static constexpr std::string_view known[] = {"horizontal_area", "bore", "pipe_length", "from", "to", "water"};
  in.only(known);
  const ::tankwright::plumbing::laminar_emptying v{.horizontal_area = must<::tankwright::area>(in, "horizontal_area"), .bore = must<::tankwright::plumbing::pipe_bore>(in, "bore"), .pipe_length = must<::tankwright::length>(in, "pipe_length"), .from = must<::tankwright::length>(in, "from"), .to = must<::tankwright::length>(in, "to"), .water = must<::tankwright::water::liquid>(in, "water")};
  return v;
}
void io<::tankwright::plumbing::laminar_emptying>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::water::liquid>::defaults(at);
}

::tankwright::plumbing::level_change io<::tankwright::plumbing::level_change>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::level_change> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::level_change io<::tankwright::plumbing::level_change>::fields(const given& in) {
  static constexpr std::string_view known[] = {"from", "to"};
  in.only(known);
  const ::tankwright::plumbing::level_change v{.from = must<::tankwright::length>(in, "from"), .to = must<::tankwright::length>(in, "to")};
  return v;
}
void io<::tankwright::plumbing::level_change>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::levelling io<::tankwright::plumbing::levelling>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::levelling> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::levelling io<::tankwright::plumbing::levelling>::fields(const given& in) {
  static constexpr std::string_view known[] = {"first", "second", "opening", "from", "to"};
  in.only(known);
  ::tankwright::plumbing::levelling v{.first = must<::tankwright::area>(in, "first"), .second = must<::tankwright::area>(in, "second"), .opening = must<::tankwright::plumbing::effective_area>(in, "opening"), .from = must<::tankwright::length>(in, "from")};
  if (in.has("to")) v.to = must<::tankwright::length>(in, "to");
  return v;
}
void io<::tankwright::plumbing::levelling>::defaults(double*& at) {
  constexpr double zeros[5] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::levelling v{.first = io<::tankwright::area>::take(zero), .second = io<::tankwright::area>::take(zero), .opening = io<::tankwright::plumbing::effective_area>::take(zero), .from = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::length>::put(v.to, at);
}

::tankwright::plumbing::loose_grains io<::tankwright::plumbing::loose_grains>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::loose_grains> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::loose_grains io<::tankwright::plumbing::loose_grains>::fields(const given& in) {
  static constexpr std::string_view known[] = {"size", "density"};
  in.only(known);
  ::tankwright::plumbing::loose_grains v{.size = must<::tankwright::length>(in, "size")};
  if (in.has("density")) v.density = must<::tankwright::mass_density>(in, "density");
  return v;
}
void io<::tankwright::plumbing::loose_grains>::defaults(double*& at) {
  constexpr double zeros[2] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::loose_grains v{.size = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  io<::tankwright::mass_density>::put(v.density, at);
}

::tankwright::plumbing::lying_cylinder io<::tankwright::plumbing::lying_cylinder>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::lying_cylinder> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::lying_cylinder io<::tankwright::plumbing::lying_cylinder>::fields(const given& in) {
  static constexpr std::string_view known[] = {"diameter", "axial_length"};
  in.only(known);
  const ::tankwright::plumbing::lying_cylinder v{.diameter = must<::tankwright::length>(in, "diameter"), .axial_length = must<::tankwright::length>(in, "axial_length")};
  return v;
}
void io<::tankwright::plumbing::lying_cylinder>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::measured_jet io<::tankwright::plumbing::measured_jet>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::measured_jet> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::measured_jet io<::tankwright::plumbing::measured_jet>::fields(const given& in) {
  static constexpr std::string_view known[] = {"drive", "fall", "reach"};
  in.only(known);
  const ::tankwright::plumbing::measured_jet v{.drive = must<::tankwright::length>(in, "drive"), .fall = must<::tankwright::length>(in, "fall"), .reach = must<::tankwright::length>(in, "reach")};
  return v;
}
void io<::tankwright::plumbing::measured_jet>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::plumbing::metric_dimensions>::write(answer& out, const ::tankwright::plumbing::metric_dimensions& v) {
  out.begin();
  out.key("outside_diameter");
  io<::tankwright::length>::write(out, v.outside_diameter);
  out.key("wall");
  io<::tankwright::length>::write(out, v.wall);
  out.key("bore");
  io<::tankwright::plumbing::pipe_bore>::write(out, v.bore);
  out.end();
}

::tankwright::plumbing::orifice io<::tankwright::plumbing::orifice>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::orifice> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::orifice io<::tankwright::plumbing::orifice>::fields(const given& in) {
  static constexpr std::string_view known[] = {"bore", "discharge_coefficient"};
  in.only(known);
  ::tankwright::plumbing::orifice v{.bore = must<::tankwright::length>(in, "bore")};
  if (in.has("discharge_coefficient")) v.discharge_coefficient = must<double>(in, "discharge_coefficient");
  return v;
}
void io<::tankwright::plumbing::orifice>::defaults(double*& at) {
  constexpr double zeros[2] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::orifice v{.bore = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  io<double>::put(v.discharge_coefficient, at);
}

void io<::tankwright::plumbing::overflow_flow>::write(answer& out, const ::tankwright::plumbing::overflow_flow& v) {
  out.begin();
  out.key("flow");
  io<::tankwright::estimate<::tankwright::flow_rate>>::write(out, v.flow);
  out.key("extrapolated");
  io<bool>::write(out, v.extrapolated);
  out.end();
}

void io<::tankwright::plumbing::overflow_head>::write(answer& out, const ::tankwright::plumbing::overflow_head& v) {
  out.begin();
  out.key("head");
  io<::tankwright::estimate<::tankwright::length>>::write(out, v.head);
  out.key("extrapolated");
  io<bool>::write(out, v.extrapolated);
  out.end();
}

void io<::tankwright::plumbing::part_full_answer>::write(answer& out, const ::tankwright::plumbing::part_full_answer& v) {
  out.begin();
  out.key("flow");
  io<::tankwright::flow_rate>::write(out, v.flow);
  out.key("velocity");
  io<::tankwright::velocity>::write(out, v.velocity);
  out.end();
}

::tankwright::plumbing::part_full_drain io<::tankwright::plumbing::part_full_drain>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::part_full_drain> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::part_full_drain io<::tankwright::plumbing::part_full_drain>::fields(const given& in) {
  static constexpr std::string_view known[] = {"bore", "slope", "manning_n"};
  in.only(known);
  ::tankwright::plumbing::part_full_drain v{.bore = must<::tankwright::plumbing::pipe_bore>(in, "bore"), .slope = must<double>(in, "slope")};
  if (in.has("manning_n")) v.manning_n = must<double>(in, "manning_n");
  return v;
}
void io<::tankwright::plumbing::part_full_drain>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::part_full_drain v{.bore = io<::tankwright::plumbing::pipe_bore>::take(zero), .slope = io<double>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<double>::put(v.manning_n, at);
}

::tankwright::plumbing::part_full_pipe io<::tankwright::plumbing::part_full_pipe>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::part_full_pipe> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::part_full_pipe io<::tankwright::plumbing::part_full_pipe>::fields(const given& in) {
  static constexpr std::string_view known[] = {"bore", "slope", "roughness", "water"};
  in.only(known);
  ::tankwright::plumbing::part_full_pipe v{.bore = must<::tankwright::plumbing::pipe_bore>(in, "bore"), .slope = must<double>(in, "slope"), .water = must<::tankwright::water::liquid>(in, "water")};
  if (in.has("roughness")) v.roughness = must<::tankwright::length>(in, "roughness");
  return v;
}
void io<::tankwright::plumbing::part_full_pipe>::defaults(double*& at) {
  constexpr double zeros[5] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::part_full_pipe v{.bore = io<::tankwright::plumbing::pipe_bore>::take(zero), .slope = io<double>::take(zero), .water = io<::tankwright::water::liquid>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::length>::put(v.roughness, at);
  io<::tankwright::water::liquid>::defaults(at);
}

::tankwright::plumbing::pipe_entrance io<::tankwright::plumbing::pipe_entrance>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::pipe_entrance> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::pipe_entrance io<::tankwright::plumbing::pipe_entrance>::fields(const given& in) {
  static constexpr std::string_view known[] = {"bore", "projecting", "lip_radius"};
  in.only(known);
  ::tankwright::plumbing::pipe_entrance v{.bore = must<::tankwright::plumbing::pipe_bore>(in, "bore")};
  if (in.has("projecting")) v.projecting = must<bool>(in, "projecting");
  if (in.has("lip_radius")) v.lip_radius = must<::tankwright::length>(in, "lip_radius");
  return v;
}
void io<::tankwright::plumbing::pipe_entrance>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::pipe_entrance v{.bore = io<::tankwright::plumbing::pipe_bore>::take(zero)};
  not_given(at, 1);
  io<bool>::put(v.projecting, at);
  io<::tankwright::length>::put(v.lip_radius, at);
}

::tankwright::plumbing::plain_weir_tail io<::tankwright::plumbing::plain_weir_tail>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::plain_weir_tail> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::plain_weir_tail io<::tankwright::plumbing::plain_weir_tail>::fields(const given& in) {
  static constexpr std::string_view known[] = {"horizontal_area", "width", "discharge_coefficient", "from", "to"};
  in.only(known);
  ::tankwright::plumbing::plain_weir_tail v{.horizontal_area = must<::tankwright::area>(in, "horizontal_area"), .width = must<::tankwright::length>(in, "width"), .discharge_coefficient = must<double>(in, "discharge_coefficient"), .from = must<::tankwright::length>(in, "from")};
  if (in.has("to")) v.to = must<::tankwright::length>(in, "to");
  return v;
}
void io<::tankwright::plumbing::plain_weir_tail>::defaults(double*& at) {
  constexpr double zeros[5] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::plain_weir_tail v{.horizontal_area = io<::tankwright::area>::take(zero), .width = io<::tankwright::length>::take(zero), .discharge_coefficient = io<double>::take(zero), .from = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::length>::put(v.to, at);
}

::tankwright::plumbing::worst_moment io<::tankwright::plumbing::worst_moment>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::worst_moment> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::worst_moment io<::tankwright::plumbing::worst_moment>::fields(const given& in) {
  static constexpr std::string_view known[] = {"margin", "chamber", "at"};
  in.only(known);
  const ::tankwright::plumbing::worst_moment v{.margin = must<::tankwright::length>(in, "margin"), .chamber = may_or<std::string>(in, "chamber", [] { return std::string{}; }), .at = may_or<std::optional<::tankwright::duration>>(in, "at", [] { return std::optional<::tankwright::duration>{}; })};
  return v;
}
void io<::tankwright::plumbing::worst_moment>::write(answer& out, const ::tankwright::plumbing::worst_moment& v) {
  out.begin();
  out.key("margin");
  io<::tankwright::length>::write(out, v.margin);
  out.key("chamber");
  io<std::string>::write(out, v.chamber);
  out.key("at");
  io<std::optional<::tankwright::duration>>::write(out, v.at);
  out.end();
}

::tankwright::plumbing::power_cut_answer io<::tankwright::plumbing::power_cut_answer>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::power_cut_answer> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::power_cut_answer io<::tankwright::plumbing::power_cut_answer>::fields(const given& in) {
  static constexpr std::string_view known[] = {"head_over_edge", "falls", "running", "settled", "margin", "worst", "on_the_floor", "spare", "floods_after", "extrapolated", "caution"};
  in.only(known);
  const ::tankwright::plumbing::power_cut_answer v{.head_over_edge = must<::tankwright::estimate<::tankwright::length>>(in, "head_over_edge"), .falls = must<::tankwright::plumbing::falling_water>(in, "falls"), .running = may_or<std::vector<::tankwright::plumbing::chamber_level>>(in, "running", [] { return std::vector<::tankwright::plumbing::chamber_level>{}; }), .settled = may_or<std::vector<::tankwright::plumbing::chamber_level>>(in, "settled", [] { return std::vector<::tankwright::plumbing::chamber_level>{}; }), .margin = must<::tankwright::estimate<::tankwright::length>>(in, "margin"), .worst = must<::tankwright::plumbing::worst_moment>(in, "worst"), .on_the_floor = must<::tankwright::estimate<::tankwright::volume>>(in, "on_the_floor"), .spare = must<::tankwright::estimate<::tankwright::volume>>(in, "spare"), .floods_after = may_or<std::optional<::tankwright::duration>>(in, "floods_after", [] { return std::optional<::tankwright::duration>{}; }), .extrapolated = must<bool>(in, "extrapolated"), .caution = {}};
  return v;
}
void io<::tankwright::plumbing::power_cut_answer>::write(answer& out, const ::tankwright::plumbing::power_cut_answer& v) {
  out.begin();
  out.key("head_over_edge");
  io<::tankwright::estimate<::tankwright::length>>::write(out, v.head_over_edge);
  out.key("falls");
  io<::tankwright::plumbing::falling_water>::write(out, v.falls);
  out.key("running");
  io<std::vector<::tankwright::plumbing::chamber_level>>::write(out, v.running);
  out.key("settled");
  io<std::vector<::tankwright::plumbing::chamber_level>>::write(out, v.settled);
  out.key("margin");
  io<::tankwright::estimate<::tankwright::length>>::write(out, v.margin);
  out.key("worst");
  io<::tankwright::plumbing::worst_moment>::write(out, v.worst);
  out.key("on_the_floor");
  io<::tankwright::estimate<::tankwright::volume>>::write(out, v.on_the_floor);
  out.key("spare");
  io<::tankwright::estimate<::tankwright::volume>>::write(out, v.spare);
  out.key("floods_after");
  io<std::optional<::tankwright::duration>>::write(out, v.floods_after);
  out.key("extrapolated");
  io<bool>::write(out, v.extrapolated);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::plumbing::power_cut_failure_case>::write(answer& out, const ::tankwright::plumbing::power_cut_failure_case& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("failure");
  io<::tankwright::plumbing::power_cut_failure>::write(out, v.failure);
  out.key("margin");
  io<::tankwright::estimate<::tankwright::length>>::write(out, v.margin);
  out.key("worst");
  io<::tankwright::plumbing::worst_moment>::write(out, v.worst);
  out.key("on_the_floor");
  io<::tankwright::estimate<::tankwright::volume>>::write(out, v.on_the_floor);
  out.key("floods_after");
  io<std::optional<::tankwright::duration>>::write(out, v.floods_after);
  out.end();
}

void io<::tankwright::plumbing::power_cut_history>::write(answer& out, const ::tankwright::plumbing::power_cut_history& v) {
  out.begin();
  out.key("time");
  io<std::vector<::tankwright::duration>>::write(out, v.time);
  out.key("display");
  io<std::vector<::tankwright::length>>::write(out, v.display);
  out.key("under_way");
  io<std::vector<::tankwright::volume>>::write(out, v.under_way);
  out.key("on_the_floor");
  io<std::vector<::tankwright::volume>>::write(out, v.on_the_floor);
  out.key("chambers");
  io<std::vector<::tankwright::plumbing::chamber_history>>::write(out, v.chambers);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::plumbing::power_cut_transient_input io<::tankwright::plumbing::power_cut_transient_input>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::power_cut_transient_input> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::power_cut_transient_input io<::tankwright::plumbing::power_cut_transient_input>::fields(const given& in) {
  static constexpr std::string_view known[] = {"system", "until", "sample_every"};
  in.only(known);
  ::tankwright::plumbing::power_cut_transient_input v{.system = must<::tankwright::plumbing::power_cut_input>(in, "system")};
  if (in.has("until")) v.until = must<::tankwright::duration>(in, "until");
  if (in.has("sample_every")) v.sample_every = must<::tankwright::duration>(in, "sample_every");
  return v;
}

void io<::tankwright::plumbing::priming_answer>::write(answer& out, const ::tankwright::plumbing::priming_answer& v) {
  out.begin();
  out.key("taken");
  io<::tankwright::estimate<::tankwright::flow_rate>>::write(out, v.taken);
  out.key("held_up");
  io<::tankwright::estimate<::tankwright::volume>>::write(out, v.held_up);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::plumbing::wanted_flow io<::tankwright::plumbing::wanted_flow>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::wanted_flow> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::wanted_flow io<::tankwright::plumbing::wanted_flow>::fields(const given& in) {
  static constexpr std::string_view known[] = {"run", "flow"};
  in.only(known);
  ::tankwright::plumbing::wanted_flow v{.flow = must<::tankwright::flow_rate>(in, "flow")};
  if (in.has("run")) v.run = must<std::string>(in, "run");
  return v;
}

::tankwright::plumbing::pump_choice io<::tankwright::plumbing::pump_choice>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::pump_choice> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::pump_choice io<::tankwright::plumbing::pump_choice>::fields(const given& in) {
  static constexpr std::string_view known[] = {"pump", "through", "candidates"};
  in.only(known);
  ::tankwright::plumbing::pump_choice v{.through = must<::tankwright::plumbing::wanted_flow>(in, "through")};
  if (in.has("pump")) v.pump = must<std::string>(in, "pump");
  if (in.has("candidates")) v.candidates = must<std::span<const ::tankwright::plumbing::pump_curve>>(in, "candidates");
  return v;
}

::tankwright::plumbing::pump_duty io<::tankwright::plumbing::pump_duty>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::pump_duty> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::pump_duty io<::tankwright::plumbing::pump_duty>::fields(const given& in) {
  static constexpr std::string_view known[] = {"flow", "head", "pump_efficiency", "motor_efficiency"};
  in.only(known);
  ::tankwright::plumbing::pump_duty v{.flow = must<::tankwright::flow_rate>(in, "flow"), .head = must<::tankwright::length>(in, "head"), .pump_efficiency = must<::tankwright::proportion>(in, "pump_efficiency")};
  if (in.has("motor_efficiency")) v.motor_efficiency = must<::tankwright::proportion>(in, "motor_efficiency");
  return v;
}
void io<::tankwright::plumbing::pump_duty>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::pump_duty v{.flow = io<::tankwright::flow_rate>::take(zero), .head = io<::tankwright::length>::take(zero), .pump_efficiency = io<::tankwright::proportion>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::proportion>::put(v.motor_efficiency, at);
}

::tankwright::plumbing::pump_performance io<::tankwright::plumbing::pump_performance>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::pump_performance> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::pump_performance io<::tankwright::plumbing::pump_performance>::fields(const given& in) {
  static constexpr std::string_view known[] = {"flow", "head", "power"};
  in.only(known);
  const ::tankwright::plumbing::pump_performance v{.flow = must<::tankwright::flow_rate>(in, "flow"), .head = must<::tankwright::length>(in, "head"), .power = must<::tankwright::power>(in, "power")};
  return v;
}
void io<::tankwright::plumbing::pump_performance>::write(answer& out, const ::tankwright::plumbing::pump_performance& v) {
  out.begin();
  out.key("flow");
  io<::tankwright::flow_rate>::write(out, v.flow);
  out.key("head");
  io<::tankwright::length>::write(out, v.head);
  out.key("power");
  io<::tankwright::power>::write(out, v.power);
  out.end();
}
void io<::tankwright::plumbing::pump_performance>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::plumbing::pump_power>::write(answer& out, const ::tankwright::plumbing::pump_power& v) {
  out.begin();
  out.key("hydraulic");
  io<::tankwright::power>::write(out, v.hydraulic);
  out.key("shaft");
  io<::tankwright::power>::write(out, v.shaft);
  out.key("electrical");
  io<::tankwright::power>::write(out, v.electrical);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::plumbing::ranked_pump>::write(answer& out, const ::tankwright::plumbing::ranked_pump& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("flow");
  io<::tankwright::flow_rate>::write(out, v.flow);
  out.key("head");
  io<::tankwright::length>::write(out, v.head);
  out.key("state");
  io<::tankwright::plumbing::pump_state>::write(out, v.state);
  out.key("reaches");
  io<bool>::write(out, v.reaches);
  out.key("share_of_curve");
  io<double>::write(out, v.share_of_curve);
  out.end();
}

void io<::tankwright::plumbing::pump_ranking>::write(answer& out, const ::tankwright::plumbing::pump_ranking& v) {
  out.begin();
  out.key("pumps");
  io<std::vector<::tankwright::plumbing::ranked_pump>>::write(out, v.pumps);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::plumbing::pvc_dimensions>::write(answer& out, const ::tankwright::plumbing::pvc_dimensions& v) {
  out.begin();
  out.key("outside_diameter");
  io<::tankwright::length>::write(out, v.outside_diameter);
  out.key("minimum_wall");
  io<::tankwright::length>::write(out, v.minimum_wall);
  out.key("average_bore");
  io<::tankwright::plumbing::pipe_bore>::write(out, v.average_bore);
  out.key("minimum_wall_bore");
  io<::tankwright::plumbing::pipe_bore>::write(out, v.minimum_wall_bore);
  out.end();
}

::tankwright::plumbing::rectangular_weir_input io<::tankwright::plumbing::rectangular_weir_input>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::rectangular_weir_input> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::rectangular_weir_input io<::tankwright::plumbing::rectangular_weir_input>::fields(const given& in) {
  static constexpr std::string_view known[] = {"width", "head", "discharge_coefficient", "contractions", "approach_velocity"};
  in.only(known);
  ::tankwright::plumbing::rectangular_weir_input v{.width = must<::tankwright::length>(in, "width"), .head = must<::tankwright::length>(in, "head"), .discharge_coefficient = must<double>(in, "discharge_coefficient")};
  if (in.has("contractions")) v.contractions = must<double>(in, "contractions");
  if (in.has("approach_velocity")) v.approach_velocity = must<::tankwright::velocity>(in, "approach_velocity");
  return v;
}
void io<::tankwright::plumbing::rectangular_weir_input>::defaults(double*& at) {
  constexpr double zeros[5] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::rectangular_weir_input v{.width = io<::tankwright::length>::take(zero), .head = io<::tankwright::length>::take(zero), .discharge_coefficient = io<double>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<double>::put(v.contractions, at);
  io<::tankwright::velocity>::put(v.approach_velocity, at);
}

::tankwright::plumbing::resisting_pipe io<::tankwright::plumbing::resisting_pipe>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::resisting_pipe> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::resisting_pipe io<::tankwright::plumbing::resisting_pipe>::fields(const given& in) {
  static constexpr std::string_view known[] = {"bore", "resistance"};
  in.only(known);
  const ::tankwright::plumbing::resisting_pipe v{.bore = must<::tankwright::plumbing::pipe_bore>(in, "bore"), .resistance = must<double>(in, "resistance")};
  return v;
}
void io<::tankwright::plumbing::resisting_pipe>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::plumbing::restart_answer>::write(answer& out, const ::tankwright::plumbing::restart_answer& v) {
  out.begin();
  out.key("lowest_level");
  io<::tankwright::estimate<::tankwright::length>>::write(out, v.lowest_level);
  out.key("submergence");
  io<::tankwright::estimate<::tankwright::length>>::write(out, v.submergence);
  out.key("margin");
  io<::tankwright::estimate<::tankwright::length>>::write(out, v.margin);
  out.key("held_up");
  io<::tankwright::volume>::write(out, v.held_up);
  out.key("runs_dry");
  io<bool>::write(out, v.runs_dry);
  out.key("until_it_runs_over");
  io<::tankwright::duration>::write(out, v.until_it_runs_over);
  out.key("until_steady");
  io<::tankwright::duration>::write(out, v.until_steady);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::plumbing::restart_input io<::tankwright::plumbing::restart_input>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::restart_input> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::restart_input io<::tankwright::plumbing::restart_input>::fields(const given& in) {
  static constexpr std::string_view known[] = {"system", "inlet", "priming", "taken", "surge"};
  in.only(known);
  ::tankwright::plumbing::restart_input v{.system = must<::tankwright::plumbing::power_cut_input>(in, "system"), .inlet = must<::tankwright::plumbing::pump_inlet>(in, "inlet")};
  if (in.has("priming")) v.priming = must<::tankwright::duration>(in, "priming");
  if (in.has("taken")) v.taken = must<::tankwright::estimate<::tankwright::flow_rate>>(in, "taken");
  if (in.has("surge")) v.surge = must<std::optional<::tankwright::length>>(in, "surge");
  return v;
}

void io<::tankwright::plumbing::running_sump>::write(answer& out, const ::tankwright::plumbing::running_sump& v) {
  out.begin();
  out.key("chambers");
  io<std::vector<::tankwright::plumbing::chamber_level>>::write(out, v.chambers);
  out.key("water");
  io<::tankwright::volume>::write(out, v.water);
  out.key("margin");
  io<::tankwright::estimate<::tankwright::length>>::write(out, v.margin);
  out.key("extrapolated");
  io<bool>::write(out, v.extrapolated);
  out.end();
}

::tankwright::plumbing::section_change io<::tankwright::plumbing::section_change>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::section_change> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::section_change io<::tankwright::plumbing::section_change>::fields(const given& in) {
  static constexpr std::string_view known[] = {"from", "to", "included_angle"};
  in.only(known);
  ::tankwright::plumbing::section_change v{.from = must<::tankwright::plumbing::pipe_bore>(in, "from"), .to = must<::tankwright::plumbing::pipe_bore>(in, "to")};
  if (in.has("included_angle")) v.included_angle = must<::tankwright::angle>(in, "included_angle");
  return v;
}
void io<::tankwright::plumbing::section_change>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::section_change v{.from = io<::tankwright::plumbing::pipe_bore>::take(zero), .to = io<::tankwright::plumbing::pipe_bore>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::angle>::put(v.included_angle, at);
}

::tankwright::plumbing::siphon_crest io<::tankwright::plumbing::siphon_crest>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::siphon_crest> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::siphon_crest io<::tankwright::plumbing::siphon_crest>::fields(const given& in) {
  static constexpr std::string_view known[] = {"above_surface", "speed", "density", "loss_before", "air"};
  in.only(known);
  ::tankwright::plumbing::siphon_crest v{.above_surface = must<::tankwright::length>(in, "above_surface"), .speed = must<::tankwright::velocity>(in, "speed"), .density = must<::tankwright::mass_density>(in, "density")};
  if (in.has("loss_before")) v.loss_before = must<double>(in, "loss_before");
  if (in.has("air")) v.air = must<::tankwright::absolute_pressure>(in, "air");
  return v;
}
void io<::tankwright::plumbing::siphon_crest>::defaults(double*& at) {
  constexpr double zeros[5] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::siphon_crest v{.above_surface = io<::tankwright::length>::take(zero), .speed = io<::tankwright::velocity>::take(zero), .density = io<::tankwright::mass_density>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<double>::put(v.loss_before, at);
  io<::tankwright::absolute_pressure>::put(v.air, at);
}

::tankwright::plumbing::siphon_draw io<::tankwright::plumbing::siphon_draw>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::siphon_draw> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::siphon_draw io<::tankwright::plumbing::siphon_draw>::fields(const given& in) {
  static constexpr std::string_view known[] = {"horizontal_area", "run", "from", "to", "water"};
  in.only(known);
  const ::tankwright::plumbing::siphon_draw v{.horizontal_area = must<::tankwright::area>(in, "horizontal_area"), .run = must<::tankwright::plumbing::pipe_run>(in, "run"), .from = must<::tankwright::length>(in, "from"), .to = must<::tankwright::length>(in, "to"), .water = must<::tankwright::water::liquid>(in, "water")};
  return v;
}

::tankwright::plumbing::siphon_limit io<::tankwright::plumbing::siphon_limit>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::siphon_limit> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::siphon_limit io<::tankwright::plumbing::siphon_limit>::fields(const given& in) {
  static constexpr std::string_view known[] = {"speed", "density", "vapour_pressure", "loss_before", "air"};
  in.only(known);
  ::tankwright::plumbing::siphon_limit v{.speed = must<::tankwright::velocity>(in, "speed"), .density = must<::tankwright::mass_density>(in, "density"), .vapour_pressure = must<::tankwright::absolute_pressure>(in, "vapour_pressure")};
  if (in.has("loss_before")) v.loss_before = must<double>(in, "loss_before");
  if (in.has("air")) v.air = must<::tankwright::absolute_pressure>(in, "air");
  return v;
}
void io<::tankwright::plumbing::siphon_limit>::defaults(double*& at) {
  constexpr double zeros[5] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::siphon_limit v{.speed = io<::tankwright::velocity>::take(zero), .density = io<::tankwright::mass_density>::take(zero), .vapour_pressure = io<::tankwright::absolute_pressure>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<double>::put(v.loss_before, at);
  io<::tankwright::absolute_pressure>::put(v.air, at);
}

void io<::tankwright::plumbing::siphon_run>::write(answer& out, const ::tankwright::plumbing::siphon_run& v) {
  out.begin();
  out.key("time");
  io<::tankwright::duration>::write(out, v.time);
  out.key("volume");
  io<::tankwright::volume>::write(out, v.volume);
  out.end();
}

void io<::tankwright::plumbing::speed_setting>::write(answer& out, const ::tankwright::plumbing::speed_setting& v) {
  out.begin();
  out.key("speed");
  io<std::optional<::tankwright::plumbing::speed_ratio>>::write(out, v.speed);
  out.key("at_fastest");
  io<::tankwright::flow_rate>::write(out, v.at_fastest);
  out.key("at_setting");
  io<::tankwright::plumbing::pump_state>::write(out, v.at_setting);
  out.end();
}

::tankwright::plumbing::staged_fill io<::tankwright::plumbing::staged_fill>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::staged_fill> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::staged_fill io<::tankwright::plumbing::staged_fill>::fields(const given& in) {
  static constexpr std::string_view known[] = {"vessel", "flow", "stops"};
  in.only(known);
  const ::tankwright::plumbing::staged_fill v{.vessel = must<std::variant<::tankwright::plumbing::area_profile, ::tankwright::plumbing::bowl, ::tankwright::plumbing::cone, ::tankwright::plumbing::lying_cylinder>>(in, "vessel"), .flow = must<::tankwright::flow_rate>(in, "flow"), .stops = may_or<std::vector<::tankwright::plumbing::fill_stop>>(in, "stops", [] { return std::vector<::tankwright::plumbing::fill_stop>{}; })};
  return v;
}

::tankwright::plumbing::standpipe io<::tankwright::plumbing::standpipe>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::standpipe> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::standpipe io<::tankwright::plumbing::standpipe>::fields(const given& in) {
  static constexpr std::string_view known[] = {"bore", "strainer"};
  in.only(known);
  ::tankwright::plumbing::standpipe v{.bore = must<::tankwright::plumbing::pipe_bore>(in, "bore")};
  if (in.has("strainer")) v.strainer = must<bool>(in, "strainer");
  return v;
}
void io<::tankwright::plumbing::standpipe>::defaults(double*& at) {
  constexpr double zeros[2] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::standpipe v{.bore = io<::tankwright::plumbing::pipe_bore>::take(zero)};
  not_given(at, 1);
  io<bool>::put(v.strainer, at);
}

::tankwright::plumbing::stopped_flow io<::tankwright::plumbing::stopped_flow>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::stopped_flow> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::stopped_flow io<::tankwright::plumbing::stopped_flow>::fields(const given& in) {
  static constexpr std::string_view known[] = {"wave_speed", "change", "pipe"};
  in.only(known);
  const ::tankwright::plumbing::stopped_flow v{.wave_speed = must<::tankwright::velocity>(in, "wave_speed"), .change = must<::tankwright::velocity>(in, "change"), .pipe = must<::tankwright::length>(in, "pipe")};
  return v;
}
void io<::tankwright::plumbing::stopped_flow>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::submerged_jet io<::tankwright::plumbing::submerged_jet>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::submerged_jet> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::submerged_jet io<::tankwright::plumbing::submerged_jet>::fields(const given& in) {
  static constexpr std::string_view known[] = {"bore", "flow"};
  in.only(known);
  const ::tankwright::plumbing::submerged_jet v{.bore = must<::tankwright::plumbing::pipe_bore>(in, "bore"), .flow = must<::tankwright::flow_rate>(in, "flow")};
  return v;
}
void io<::tankwright::plumbing::submerged_jet>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::submergence_input io<::tankwright::plumbing::submergence_input>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::submergence_input> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::submergence_input io<::tankwright::plumbing::submergence_input>::fields(const given& in) {
  static constexpr std::string_view known[] = {"upstream_head", "downstream_head", "exponent"};
  in.only(known);
  ::tankwright::plumbing::submergence_input v{.upstream_head = must<::tankwright::length>(in, "upstream_head"), .downstream_head = must<::tankwright::length>(in, "downstream_head")};
  if (in.has("exponent")) v.exponent = must<double>(in, "exponent");
  return v;
}
void io<::tankwright::plumbing::submergence_input>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::submergence_input v{.upstream_head = io<::tankwright::length>::take(zero), .downstream_head = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<double>::put(v.exponent, at);
}

::tankwright::plumbing::suction_side io<::tankwright::plumbing::suction_side>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::suction_side> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::suction_side io<::tankwright::plumbing::suction_side>::fields(const given& in) {
  static constexpr std::string_view known[] = {"surface_pressure", "level_above_pump", "losses", "vapour_pressure"};
  in.only(known);
  ::tankwright::plumbing::suction_side v{.level_above_pump = must<::tankwright::length>(in, "level_above_pump"), .losses = must<::tankwright::length>(in, "losses"), .vapour_pressure = must<::tankwright::absolute_pressure>(in, "vapour_pressure")};
  if (in.has("surface_pressure")) v.surface_pressure = must<::tankwright::absolute_pressure>(in, "surface_pressure");
  return v;
}
void io<::tankwright::plumbing::suction_side>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::suction_side v{.level_above_pump = io<::tankwright::length>::take(zero), .losses = io<::tankwright::length>::take(zero), .vapour_pressure = io<::tankwright::absolute_pressure>::take(zero)};
  io<::tankwright::absolute_pressure>::put(v.surface_pressure, at);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::plumbing::sump_at_rest>::write(answer& out, const ::tankwright::plumbing::sump_at_rest& v) {
  out.begin();
  out.key("levels");
  io<std::vector<::tankwright::length>>::write(out, v.levels);
  out.key("margin");
  io<::tankwright::length>::write(out, v.margin);
  out.key("over_the_rim");
  io<::tankwright::volume>::write(out, v.over_the_rim);
  out.end();
}

::tankwright::plumbing::sump_evaporation io<::tankwright::plumbing::sump_evaporation>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::sump_evaporation> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::sump_evaporation io<::tankwright::plumbing::sump_evaporation>::fields(const given& in) {
  static constexpr std::string_view known[] = {"sump", "evaporated"};
  in.only(known);
  const ::tankwright::plumbing::sump_evaporation v{.sump = must<::tankwright::plumbing::sump>(in, "sump"), .evaporated = must<::tankwright::volume>(in, "evaporated")};
  return v;
}

::tankwright::plumbing::sump_pour io<::tankwright::plumbing::sump_pour>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::sump_pour> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::sump_pour io<::tankwright::plumbing::sump_pour>::fields(const given& in) {
  static constexpr std::string_view known[] = {"sump", "levels", "added", "into"};
  in.only(known);
  ::tankwright::plumbing::sump_pour v{.sump = must<::tankwright::plumbing::sump>(in, "sump"), .levels = may_or<std::vector<::tankwright::length>>(in, "levels", [] { return std::vector<::tankwright::length>{}; }), .added = must<::tankwright::volume>(in, "added")};
  if (in.has("into")) v.into = must<std::size_t>(in, "into");
  return v;
}

void io<::tankwright::plumbing::surge>::write(answer& out, const ::tankwright::plumbing::surge& v) {
  out.begin();
  out.key("rise");
  io<::tankwright::length>::write(out, v.rise);
  out.key("pressure_rise");
  io<::tankwright::pressure>::write(out, v.pressure_rise);
  out.key("rapid");
  io<::tankwright::duration>::write(out, v.rapid);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::plumbing::tee io<::tankwright::plumbing::tee>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::tee> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::tee io<::tankwright::plumbing::tee>::fields(const given& in) {
  static constexpr std::string_view known[] = {"direction", "angle", "run_bore", "branch_bore", "branch_share"};
  in.only(known);
  ::tankwright::plumbing::tee v{.direction = must<::tankwright::plumbing::tee_direction>(in, "direction"), .run_bore = must<::tankwright::plumbing::pipe_bore>(in, "run_bore"), .branch_bore = must<::tankwright::plumbing::pipe_bore>(in, "branch_bore"), .branch_share = must<::tankwright::proportion>(in, "branch_share")};
  if (in.has("angle")) v.angle = must<::tankwright::plumbing::tee_branch_angle>(in, "angle");
  return v;
}
void io<::tankwright::plumbing::tee>::defaults(double*& at) {
  constexpr double zeros[5] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::tee v{.direction = io<::tankwright::plumbing::tee_direction>::take(zero), .run_bore = io<::tankwright::plumbing::pipe_bore>::take(zero), .branch_bore = io<::tankwright::plumbing::pipe_bore>::take(zero), .branch_share = io<::tankwright::proportion>::take(zero)};
  not_given(at, 1);
  io<::tankwright::plumbing::tee_branch_angle>::put(v.angle, at);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::plumbing::tee_loss>::write(answer& out, const ::tankwright::plumbing::tee_loss& v) {
  out.begin();
  out.key("run");
  io<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>::write(out, v.run);
  out.key("branch");
  io<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>::write(out, v.branch);
  out.end();
}

::tankwright::plumbing::three_k io<::tankwright::plumbing::three_k>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::three_k> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("darby_elbow_90")) return ::tankwright::plumbing::darby_elbow_90;
  if (in.is_named("darby_elbow_90_long")) return ::tankwright::plumbing::darby_elbow_90_long;
  if (in.is_named("darby_elbow_45")) return ::tankwright::plumbing::darby_elbow_45;
  if (in.is_named("darby_tee_through_branch")) return ::tankwright::plumbing::darby_tee_through_branch;
  if (in.is_named("darby_tee_through_run")) return ::tankwright::plumbing::darby_tee_through_run;
  if (in.is_named("darby_ball_valve")) return ::tankwright::plumbing::darby_ball_valve;
  if (in.is_named("darby_swing_check")) return ::tankwright::plumbing::darby_swing_check;
  static constexpr std::string_view known[] = {"darby_elbow_90", "darby_elbow_90_long", "darby_elbow_45", "darby_tee_through_branch", "darby_tee_through_run", "darby_ball_valve", "darby_swing_check"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::plumbing::three_k io<::tankwright::plumbing::three_k>::fields(const given& in) {
  static constexpr std::string_view known[] = {"k1", "k_i", "k_d"};
  in.only(known);
  const ::tankwright::plumbing::three_k v{.k1 = must<double>(in, "k1"), .k_i = must<double>(in, "k_i"), .k_d = must<double>(in, "k_d")};
  return v;
}
void io<::tankwright::plumbing::three_k>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::three_points io<::tankwright::plumbing::three_points>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::three_points> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::three_points io<::tankwright::plumbing::three_points>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "shutoff_head", "middle", "last"};
  in.only(known);
  ::tankwright::plumbing::three_points v{.shutoff_head = must<::tankwright::length>(in, "shutoff_head"), .middle = must<::tankwright::plumbing::curve_point>(in, "middle"), .last = must<::tankwright::plumbing::curve_point>(in, "last")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::plumbing::timed_fall io<::tankwright::plumbing::timed_fall>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::timed_fall> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::timed_fall io<::tankwright::plumbing::timed_fall>::fields(const given& in) {
  static constexpr std::string_view known[] = {"horizontal_area", "bore", "from", "to", "time"};
  in.only(known);
  const ::tankwright::plumbing::timed_fall v{.horizontal_area = must<::tankwright::area>(in, "horizontal_area"), .bore = must<::tankwright::length>(in, "bore"), .from = must<::tankwright::length>(in, "from"), .to = must<::tankwright::length>(in, "to"), .time = must<::tankwright::duration>(in, "time")};
  return v;
}
void io<::tankwright::plumbing::timed_fall>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::toothed_edge io<::tankwright::plumbing::toothed_edge>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::toothed_edge> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::toothed_edge io<::tankwright::plumbing::toothed_edge>::fields(const given& in) {
  static constexpr std::string_view known[] = {"gap_width", "gaps", "tooth_width", "gap_height", "crest_height"};
  in.only(known);
  const ::tankwright::plumbing::toothed_edge v{.gap_width = must<::tankwright::length>(in, "gap_width"), .gaps = must<int>(in, "gaps"), .tooth_width = must<::tankwright::length>(in, "tooth_width"), .gap_height = must<::tankwright::length>(in, "gap_height"), .crest_height = must<::tankwright::length>(in, "crest_height")};
  return v;
}
void io<::tankwright::plumbing::toothed_edge>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::two_k io<::tankwright::plumbing::two_k>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::two_k> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("hooper_elbow_90")) return ::tankwright::plumbing::hooper_elbow_90;
  if (in.is_named("hooper_elbow_90_long")) return ::tankwright::plumbing::hooper_elbow_90_long;
  if (in.is_named("hooper_elbow_45")) return ::tankwright::plumbing::hooper_elbow_45;
  if (in.is_named("hooper_tee_through_branch")) return ::tankwright::plumbing::hooper_tee_through_branch;
  if (in.is_named("hooper_tee_through_run")) return ::tankwright::plumbing::hooper_tee_through_run;
  if (in.is_named("hooper_swing_check")) return ::tankwright::plumbing::hooper_swing_check;
  static constexpr std::string_view known[] = {"hooper_elbow_90", "hooper_elbow_90_long", "hooper_elbow_45", "hooper_tee_through_branch", "hooper_tee_through_run", "hooper_swing_check"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::plumbing::two_k io<::tankwright::plumbing::two_k>::fields(const given& in) {
  static constexpr std::string_view known[] = {"k1", "k_infinity"};
  in.only(known);
  const ::tankwright::plumbing::two_k v{.k1 = must<double>(in, "k1"), .k_infinity = must<double>(in, "k_infinity")};
  return v;
}
void io<::tankwright::plumbing::two_k>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::plumbing::v_notch io<::tankwright::plumbing::v_notch>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::v_notch> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::v_notch io<::tankwright::plumbing::v_notch>::fields(const given& in) {
  static constexpr std::string_view known[] = {"opening"};
  in.only(known);
  const ::tankwright::plumbing::v_notch v{.opening = must<::tankwright::angle>(in, "opening")};
  return v;
}
void io<::tankwright::plumbing::v_notch>::defaults(double*& at) {
  not_given(at, 1);
}

::tankwright::plumbing::v_notch_tail io<::tankwright::plumbing::v_notch_tail>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::v_notch_tail> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::v_notch_tail io<::tankwright::plumbing::v_notch_tail>::fields(const given& in) {
  static constexpr std::string_view known[] = {"horizontal_area", "opening", "discharge_coefficient", "from", "to"};
  in.only(known);
  ::tankwright::plumbing::v_notch_tail v{.horizontal_area = must<::tankwright::area>(in, "horizontal_area"), .opening = must<::tankwright::angle>(in, "opening"), .discharge_coefficient = must<double>(in, "discharge_coefficient"), .from = must<::tankwright::length>(in, "from")};
  if (in.has("to")) v.to = must<::tankwright::length>(in, "to");
  return v;
}
void io<::tankwright::plumbing::v_notch_tail>::defaults(double*& at) {
  constexpr double zeros[5] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::plumbing::v_notch_tail v{.horizontal_area = io<::tankwright::area>::take(zero), .opening = io<::tankwright::angle>::take(zero), .discharge_coefficient = io<double>::take(zero), .from = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::length>::put(v.to, at);
}

::tankwright::plumbing::v_notch_weir_input io<::tankwright::plumbing::v_notch_weir_input>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::v_notch_weir_input> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::v_notch_weir_input io<::tankwright::plumbing::v_notch_weir_input>::fields(const given& in) {
  static constexpr std::string_view known[] = {"opening", "head", "discharge_coefficient"};
  in.only(known);
  const ::tankwright::plumbing::v_notch_weir_input v{.opening = must<::tankwright::angle>(in, "opening"), .head = must<::tankwright::length>(in, "head"), .discharge_coefficient = must<double>(in, "discharge_coefficient")};
  return v;
}
void io<::tankwright::plumbing::v_notch_weir_input>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

void io<::tankwright::plumbing::valve_setting>::write(answer& out, const ::tankwright::plumbing::valve_setting& v) {
  out.begin();
  out.key("valve");
  io<std::optional<::tankwright::plumbing::flow_coefficient>>::write(out, v.valve);
  out.key("wide_open");
  io<::tankwright::flow_rate>::write(out, v.wide_open);
  out.end();
}

::tankwright::plumbing::wanted_speed io<::tankwright::plumbing::wanted_speed>::read(const given& in) {
  if (std::optional<::tankwright::plumbing::wanted_speed> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::plumbing::wanted_speed io<::tankwright::plumbing::wanted_speed>::fields(const given& in) {
  static constexpr std::string_view known[] = {"pump", "through", "fastest"};
  in.only(known);
  ::tankwright::plumbing::wanted_speed v{.through = must<::tankwright::plumbing::wanted_flow>(in, "through")};
  if (in.has("pump")) v.pump = must<std::string>(in, "pump");
  if (in.has("fastest")) v.fastest = must<::tankwright::plumbing::speed_ratio>(in, "fastest");
  return v;
}

void io<::tankwright::plumbing::wet_section>::write(answer& out, const ::tankwright::plumbing::wet_section& v) {
  out.begin();
  out.key("area");
  io<::tankwright::area>::write(out, v.area);
  out.key("wetted_perimeter");
  io<::tankwright::length>::write(out, v.wetted_perimeter);
  out.key("hydraulic_radius");
  io<::tankwright::length>::write(out, v.hydraulic_radius);
  out.key("surface_width");
  io<::tankwright::length>::write(out, v.surface_width);
  out.end();
}

std::variant<::tankwright::plumbing::area_profile, ::tankwright::plumbing::bowl, ::tankwright::plumbing::cone, ::tankwright::plumbing::lying_cylinder> io<std::variant<::tankwright::plumbing::area_profile, ::tankwright::plumbing::bowl, ::tankwright::plumbing::cone, ::tankwright::plumbing::lying_cylinder>>::read(const given& in) {
  static constexpr std::string_view ways[] = {"area_profile", "bowl", "cone", "lying_cylinder"};
  switch (const std::size_t way = in.way(ways, -1, -1); way) {
    case 0: return io<::tankwright::plumbing::area_profile>::read(in.along(ways, way));
    case 1: return io<::tankwright::plumbing::bowl>::read(in.along(ways, way));
    case 2: return io<::tankwright::plumbing::cone>::read(in.along(ways, way));
    default: return io<::tankwright::plumbing::lying_cylinder>::read(in.along(ways, way));
  }
}

std::variant<::tankwright::plumbing::full_width_edge, ::tankwright::plumbing::contracted_edge, ::tankwright::plumbing::toothed_edge, ::tankwright::plumbing::v_notch, ::tankwright::plumbing::standpipe> io<std::variant<::tankwright::plumbing::full_width_edge, ::tankwright::plumbing::contracted_edge, ::tankwright::plumbing::toothed_edge, ::tankwright::plumbing::v_notch, ::tankwright::plumbing::standpipe>>::read(const given& in) {
  static constexpr std::string_view ways[] = {"full_width_edge", "contracted_edge", "toothed_edge", "v_notch", "standpipe"};
  switch (const std::size_t way = in.way(ways, -1, -1); way) {
    case 0: return io<::tankwright::plumbing::full_width_edge>::read(in.along(ways, way));
    case 1: return io<::tankwright::plumbing::contracted_edge>::read(in.along(ways, way));
    case 2: return io<::tankwright::plumbing::toothed_edge>::read(in.along(ways, way));
    case 3: return io<::tankwright::plumbing::v_notch>::read(in.along(ways, way));
    default: return io<::tankwright::plumbing::standpipe>::read(in.along(ways, way));
  }
}

namespace {

// plumbing.operating_point
constexpr std::string_view fields_0[] = {"plan", "water", "which"};
constexpr std::string_view required_0[] = {"plan", "water"};
auto call_0([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::circuit_solution> {
  in.only(fields_0);
  const auto a0 = must<::tankwright::plumbing::circuit>(in, "plan");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  const auto a2 = may_or<::tankwright::plumbing::losses>(in, "which", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::plumbing;
    return ::tankwright::plumbing::losses(losses::central);
  });
  const auto policy = in.policy();
  return ::tankwright::plumbing::operating_point(a0, a1, a2, policy);
}

// plumbing.flow_with_band
constexpr std::string_view fields_1[] = {"plan", "water", "run"};
constexpr std::string_view required_1[] = {"plan", "water", "run"};
auto call_1([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::flow_rate>> {
  in.only(fields_1);
  const auto a0 = must<::tankwright::plumbing::circuit>(in, "plan");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  const auto a2 = must<std::string_view>(in, "run");
  const auto policy = in.policy();
  return ::tankwright::plumbing::flow_with_band(a0, a1, a2, policy);
}

// plumbing.valve_for_flow
constexpr std::string_view fields_2[] = {"plan", "water", "wanted"};
constexpr std::string_view required_2[] = {"plan", "water", "wanted"};
auto call_2([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::valve_setting> {
  in.only(fields_2);
  const auto a0 = must<::tankwright::plumbing::circuit>(in, "plan");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  const auto a2 = must<::tankwright::plumbing::wanted_flow>(in, "wanted");
  const auto policy = in.policy();
  return ::tankwright::plumbing::valve_for_flow(a0, a1, a2, policy);
}

// plumbing.speed_for_flow
constexpr std::string_view fields_3[] = {"plan", "water", "wanted"};
constexpr std::string_view required_3[] = {"plan", "water", "wanted"};
auto call_3([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::speed_setting> {
  in.only(fields_3);
  const auto a0 = must<::tankwright::plumbing::circuit>(in, "plan");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  const auto a2 = must<::tankwright::plumbing::wanted_speed>(in, "wanted");
  const auto policy = in.policy();
  return ::tankwright::plumbing::speed_for_flow(a0, a1, a2, policy);
}

// plumbing.rank_pumps
constexpr std::string_view fields_4[] = {"plan", "water", "choice"};
constexpr std::string_view required_4[] = {"plan", "water", "choice"};
auto call_4([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::pump_ranking> {
  in.only(fields_4);
  const auto a0 = must<::tankwright::plumbing::circuit>(in, "plan");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  const auto a2 = must<::tankwright::plumbing::pump_choice>(in, "choice");
  const auto policy = in.policy();
  return ::tankwright::plumbing::rank_pumps(a0, a1, a2, policy);
}

// plumbing.drain_number
constexpr std::string_view fields_5[] = {"bore", "flow"};
constexpr std::string_view required_5[] = {"bore", "flow"};
auto call_5([[maybe_unused]] const given& in) -> std::remove_cvref_t<double> {
  in.only(fields_5);
  const auto a0 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  const auto a1 = must<::tankwright::flow_rate>(in, "flow");
  return ::tankwright::plumbing::drain_number(a0, a1);
}
void numbers_5(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::pipe_bore>::take(in);
  const auto a1 = io<::tankwright::flow_rate>::take(in);
  io<double>::put(::tankwright::plumbing::drain_number(a0, a1), out);
}
void defaults_5(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.flow_at_drain_number
constexpr std::string_view fields_6[] = {"bore", "number"};
constexpr std::string_view required_6[] = {"bore"};
auto call_6([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  in.only(fields_6);
  const auto a0 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  const auto a1 = may_or<double>(in, "number", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::plumbing;
    return double(self_venting_drain_number);
  });
  return ::tankwright::plumbing::flow_at_drain_number(a0, a1);
}
void numbers_6(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::pipe_bore>::take(in);
  const auto a1 = io<double>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::plumbing::flow_at_drain_number(a0, a1), out);
}
void defaults_6(double* at) {
  not_given(at, 1);
  const auto a1 = [] {
    using namespace ::tankwright;
    using namespace ::tankwright::plumbing;
    return double(self_venting_drain_number);
  }();
  io<double>::put(a1, at);
}

// plumbing.stack_capacity
constexpr std::string_view fields_7[] = {"bore", "filled"};
constexpr std::string_view required_7[] = {"bore"};
auto call_7([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  in.only(fields_7);
  const auto a0 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  const auto a1 = may_or<::tankwright::proportion>(in, "filled", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::plumbing;
    return ::tankwright::proportion(fraction(1.0 / 3.0));
  });
  const auto policy = in.policy();
  return ::tankwright::plumbing::stack_capacity(a0, a1, policy);
}
void numbers_7(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::pipe_bore>::take(in);
  const auto a1 = io<::tankwright::proportion>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::plumbing::stack_capacity(a0, a1, policy), out);
}
void defaults_7(double* at) {
  not_given(at, 1);
  const auto a1 = [] {
    using namespace ::tankwright;
    using namespace ::tankwright::plumbing;
    return ::tankwright::proportion(fraction(1.0 / 3.0));
  }();
  io<::tankwright::proportion>::put(a1, at);
}

// plumbing.part_full
constexpr std::string_view fields_8[] = {"bore", "depth"};
constexpr std::string_view required_8[] = {"bore", "depth"};
auto call_8([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::wet_section> {
  in.only(fields_8);
  const auto a0 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  const auto a1 = must<::tankwright::length>(in, "depth");
  return ::tankwright::plumbing::part_full(a0, a1);
}
void numbers_8(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::pipe_bore>::take(in);
  const auto a1 = io<::tankwright::length>::take(in);
  io<::tankwright::plumbing::wet_section>::put(::tankwright::plumbing::part_full(a0, a1), out);
}
void defaults_8(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.part_full_flow_with_drain
constexpr std::string_view fields_9[] = {"drain", "depth"};
constexpr std::string_view required_9[] = {"drain", "depth"};
auto call_9([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::part_full_answer> {
  in.only(fields_9);
  const auto a0 = must<::tankwright::plumbing::part_full_drain>(in, "drain");
  const auto a1 = must<::tankwright::length>(in, "depth");
  return ::tankwright::plumbing::part_full_flow(a0, a1);
}
void numbers_9(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::part_full_drain>::take(in);
  const auto a1 = io<::tankwright::length>::take(in);
  io<::tankwright::plumbing::part_full_answer>::put(::tankwright::plumbing::part_full_flow(a0, a1), out);
}
void defaults_9(double* at) {
  io<::tankwright::plumbing::part_full_drain>::defaults(at);
  not_given(at, 1);
}

// plumbing.part_full_depth
constexpr std::string_view fields_10[] = {"drain", "flow"};
constexpr std::string_view required_10[] = {"drain", "flow"};
auto call_10([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_10);
  const auto a0 = must<::tankwright::plumbing::part_full_drain>(in, "drain");
  const auto a1 = must<::tankwright::flow_rate>(in, "flow");
  return ::tankwright::plumbing::part_full_depth(a0, a1);
}
void numbers_10(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::part_full_drain>::take(in);
  const auto a1 = io<::tankwright::flow_rate>::take(in);
  io<::tankwright::length>::put(::tankwright::plumbing::part_full_depth(a0, a1), out);
}
void defaults_10(double* at) {
  io<::tankwright::plumbing::part_full_drain>::defaults(at);
  not_given(at, 1);
}

// plumbing.part_full_flow_with_pipe
constexpr std::string_view fields_11[] = {"pipe", "depth"};
constexpr std::string_view required_11[] = {"pipe", "depth"};
auto call_11([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::part_full_answer> {
  in.only(fields_11);
  const auto a0 = must<::tankwright::plumbing::part_full_pipe>(in, "pipe");
  const auto a1 = must<::tankwright::length>(in, "depth");
  const auto policy = in.policy();
  return ::tankwright::plumbing::part_full_flow(a0, a1, policy);
}
void numbers_11(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::part_full_pipe>::take(in);
  const auto a1 = io<::tankwright::length>::take(in);
  io<::tankwright::plumbing::part_full_answer>::put(::tankwright::plumbing::part_full_flow(a0, a1, policy), out);
}
void defaults_11(double* at) {
  io<::tankwright::plumbing::part_full_pipe>::defaults(at);
  not_given(at, 1);
}

// plumbing.drain_mode_for
constexpr std::string_view fields_12[] = {"drain", "flow", "water"};
constexpr std::string_view required_12[] = {"drain", "flow", "water"};
auto call_12([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::drain_answer> {
  in.only(fields_12);
  const auto a0 = must<::tankwright::plumbing::drain>(in, "drain");
  const auto a1 = must<::tankwright::flow_rate>(in, "flow");
  const auto a2 = must<::tankwright::water::liquid>(in, "water");
  return ::tankwright::plumbing::drain_mode_for(a0, a1, a2);
}

// plumbing.one_drain_blocked
constexpr std::string_view fields_13[] = {"drains", "flow", "water"};
constexpr std::string_view required_13[] = {"drains", "flow", "water"};
auto call_13([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::blocked_answer> {
  in.only(fields_13);
  const auto a0 = must<std::vector<::tankwright::plumbing::drain>>(in, "drains");
  const auto a1 = must<::tankwright::flow_rate>(in, "flow");
  const auto a2 = must<::tankwright::water::liquid>(in, "water");
  return ::tankwright::plumbing::one_drain_blocked(a0, a1, a2);
}

// plumbing.all_drains_blocked
constexpr std::string_view fields_14[] = {"system", "edge_to_rim", "inlet", "top_off"};
constexpr std::string_view required_14[] = {"system", "edge_to_rim"};
auto call_14([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::drains_blocked_answer> {
  return ::tankwright::plumbing::all_drains_blocked(io<::tankwright::plumbing::drains_blocked_input>::fields(in));
}

// plumbing.outlet_through_with_orifice
constexpr std::string_view fields_15[] = {"bore", "discharge_coefficient"};
constexpr std::string_view required_15[] = {"bore"};
auto call_15([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::effective_area> {
  return ::tankwright::plumbing::outlet_through(io<::tankwright::plumbing::orifice>::fields(in));
}
void numbers_15(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::orifice>::take(in);
  io<::tankwright::plumbing::effective_area>::put(::tankwright::plumbing::outlet_through(a0), out);
}
void defaults_15(double* at) {
  io<::tankwright::plumbing::orifice>::defaults(at);
}

// plumbing.outlet_through_with_resisting_pipe
constexpr std::string_view fields_16[] = {"bore", "resistance"};
constexpr std::string_view required_16[] = {"bore", "resistance"};
auto call_16([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::effective_area> {
  return ::tankwright::plumbing::outlet_through(io<::tankwright::plumbing::resisting_pipe>::fields(in));
}
void numbers_16(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::resisting_pipe>::take(in);
  io<::tankwright::plumbing::effective_area>::put(::tankwright::plumbing::outlet_through(a0), out);
}
void defaults_16(double* at) {
  io<::tankwright::plumbing::resisting_pipe>::defaults(at);
}

// plumbing.outflow
constexpr std::string_view fields_17[] = {"outlet", "head"};
constexpr std::string_view required_17[] = {"outlet", "head"};
auto call_17([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  in.only(fields_17);
  const auto a0 = must<::tankwright::plumbing::effective_area>(in, "outlet");
  const auto a1 = must<::tankwright::length>(in, "head");
  return ::tankwright::plumbing::outflow(a0, a1);
}
void numbers_17(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::effective_area>::take(in);
  const auto a1 = io<::tankwright::length>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::plumbing::outflow(a0, a1), out);
}
void defaults_17(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.emptying_time
constexpr std::string_view fields_18[] = {"vessel", "fall"};
constexpr std::string_view required_18[] = {"vessel", "fall"};
auto call_18([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::duration> {
  in.only(fields_18);
  const auto a0 = must<std::variant<::tankwright::plumbing::area_profile, ::tankwright::plumbing::bowl, ::tankwright::plumbing::cone, ::tankwright::plumbing::lying_cylinder>>(in, "vessel");
  const auto a1 = must<::tankwright::plumbing::fall_through>(in, "fall");
  return ::tankwright::plumbing::emptying_time(a0, a1);
}

// plumbing.discharge_coefficient_from
constexpr std::string_view fields_19[] = {"horizontal_area", "bore", "from", "to", "time"};
constexpr std::string_view required_19[] = {"horizontal_area", "bore", "from", "to", "time"};
auto call_19([[maybe_unused]] const given& in) -> std::remove_cvref_t<double> {
  return ::tankwright::plumbing::discharge_coefficient_from(io<::tankwright::plumbing::timed_fall>::fields(in));
}
void numbers_19(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::timed_fall>::take(in);
  io<double>::put(::tankwright::plumbing::discharge_coefficient_from(a0), out);
}
void defaults_19(double* at) {
  io<::tankwright::plumbing::timed_fall>::defaults(at);
}

// plumbing.laminar_emptying_time
constexpr std::string_view fields_20[] = {"horizontal_area", "bore", "pipe_length", "from", "to", "water"};
constexpr std::string_view required_20[] = {"horizontal_area", "bore", "pipe_length", "from", "to", "water"};
auto call_20([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::duration> {
  const auto policy = in.policy();
  return ::tankwright::plumbing::laminar_emptying_time(io<::tankwright::plumbing::laminar_emptying>::fields(in), policy);
}
void numbers_20(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::laminar_emptying>::take(in);
  io<::tankwright::duration>::put(::tankwright::plumbing::laminar_emptying_time(a0, policy), out);
}
void defaults_20(double* at) {
  io<::tankwright::plumbing::laminar_emptying>::defaults(at);
}

// plumbing.levelling_time
constexpr std::string_view fields_21[] = {"first", "second", "opening", "from", "to"};
constexpr std::string_view required_21[] = {"first", "second", "opening", "from"};
auto call_21([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::duration> {
  return ::tankwright::plumbing::levelling_time(io<::tankwright::plumbing::levelling>::fields(in));
}
void numbers_21(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::levelling>::take(in);
  io<::tankwright::duration>::put(::tankwright::plumbing::levelling_time(a0), out);
}
void defaults_21(double* at) {
  io<::tankwright::plumbing::levelling>::defaults(at);
}

// plumbing.steady_level
constexpr std::string_view fields_22[] = {"horizontal_area", "inflow", "outlet"};
constexpr std::string_view required_22[] = {"horizontal_area", "inflow", "outlet"};
auto call_22([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  return ::tankwright::plumbing::steady_level(io<::tankwright::plumbing::inflow_and_outlet>::fields(in));
}
void numbers_22(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::inflow_and_outlet>::take(in);
  io<::tankwright::length>::put(::tankwright::plumbing::steady_level(a0), out);
}
void defaults_22(double* at) {
  io<::tankwright::plumbing::inflow_and_outlet>::defaults(at);
}

// plumbing.level_change_time
constexpr std::string_view fields_23[] = {"tank", "change"};
constexpr std::string_view required_23[] = {"tank", "change"};
auto call_23([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::duration> {
  in.only(fields_23);
  const auto a0 = must<::tankwright::plumbing::inflow_and_outlet>(in, "tank");
  const auto a1 = must<::tankwright::plumbing::level_change>(in, "change");
  return ::tankwright::plumbing::level_change_time(a0, a1);
}
void numbers_23(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::inflow_and_outlet>::take(in);
  const auto a1 = io<::tankwright::plumbing::level_change>::take(in);
  io<::tankwright::duration>::put(::tankwright::plumbing::level_change_time(a0, a1), out);
}
void defaults_23(double* at) {
  io<::tankwright::plumbing::inflow_and_outlet>::defaults(at);
  io<::tankwright::plumbing::level_change>::defaults(at);
}

// plumbing.edge_tail_time
constexpr std::string_view fields_24[] = {"horizontal_area", "edge", "from", "to"};
constexpr std::string_view required_24[] = {"horizontal_area", "edge", "from"};
auto call_24([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::duration> {
  return ::tankwright::plumbing::edge_tail_time(io<::tankwright::plumbing::edge_tail>::fields(in));
}

// plumbing.plain_weir_tail_time
constexpr std::string_view fields_25[] = {"horizontal_area", "width", "discharge_coefficient", "from", "to"};
constexpr std::string_view required_25[] = {"horizontal_area", "width", "discharge_coefficient", "from"};
auto call_25([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::duration> {
  return ::tankwright::plumbing::plain_weir_tail_time(io<::tankwright::plumbing::plain_weir_tail>::fields(in));
}
void numbers_25(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::plain_weir_tail>::take(in);
  io<::tankwright::duration>::put(::tankwright::plumbing::plain_weir_tail_time(a0), out);
}
void defaults_25(double* at) {
  io<::tankwright::plumbing::plain_weir_tail>::defaults(at);
}

// plumbing.v_notch_tail_time
constexpr std::string_view fields_26[] = {"horizontal_area", "opening", "discharge_coefficient", "from", "to"};
constexpr std::string_view required_26[] = {"horizontal_area", "opening", "discharge_coefficient", "from"};
auto call_26([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::duration> {
  return ::tankwright::plumbing::v_notch_tail_time(io<::tankwright::plumbing::v_notch_tail>::fields(in));
}
void numbers_26(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::v_notch_tail>::take(in);
  io<::tankwright::duration>::put(::tankwright::plumbing::v_notch_tail_time(a0), out);
}
void defaults_26(double* at) {
  io<::tankwright::plumbing::v_notch_tail>::defaults(at);
}

// plumbing.fill_stages
constexpr std::string_view fields_27[] = {"vessel", "flow", "stops"};
constexpr std::string_view required_27[] = {"vessel", "flow"};
auto call_27([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::vector<::tankwright::plumbing::fill_stage>> {
  return ::tankwright::plumbing::fill_stages(io<::tankwright::plumbing::staged_fill>::fields(in));
}

// plumbing.fully_turbulent_factor
constexpr std::string_view fields_28[] = {"bore"};
constexpr std::string_view required_28[] = {"bore"};
auto call_28([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::darcy_factor> {
  in.only(fields_28);
  const auto a0 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  return ::tankwright::plumbing::fully_turbulent_factor(a0);
}
void numbers_28(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::pipe_bore>::take(in);
  io<::tankwright::plumbing::darcy_factor>::put(::tankwright::plumbing::fully_turbulent_factor(a0), out);
}
void defaults_28(double* at) {
  not_given(at, 1);
}

// plumbing.fitting_loss
constexpr std::string_view fields_29[] = {"kind", "bore"};
constexpr std::string_view required_29[] = {"kind", "bore"};
auto call_29([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>> {
  in.only(fields_29);
  const auto a0 = must<::tankwright::plumbing::fitting>(in, "kind");
  const auto a1 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  return ::tankwright::plumbing::fitting_loss(a0, a1);
}
void numbers_29(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::fitting>::take(in);
  const auto a1 = io<::tankwright::plumbing::pipe_bore>::take(in);
  io<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>::put(::tankwright::plumbing::fitting_loss(a0, a1), out);
}
void defaults_29(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.entrance_loss
constexpr std::string_view fields_30[] = {"bore", "projecting", "lip_radius"};
constexpr std::string_view required_30[] = {"bore"};
auto call_30([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>> {
  return ::tankwright::plumbing::entrance_loss(io<::tankwright::plumbing::pipe_entrance>::fields(in));
}
void numbers_30(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::pipe_entrance>::take(in);
  io<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>::put(::tankwright::plumbing::entrance_loss(a0), out);
}
void defaults_30(double* at) {
  io<::tankwright::plumbing::pipe_entrance>::defaults(at);
}

// plumbing.section_change_loss
constexpr std::string_view fields_31[] = {"from", "to", "included_angle"};
constexpr std::string_view required_31[] = {"from", "to"};
auto call_31([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>> {
  return ::tankwright::plumbing::section_change_loss(io<::tankwright::plumbing::section_change>::fields(in));
}
void numbers_31(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::section_change>::take(in);
  io<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>::put(::tankwright::plumbing::section_change_loss(a0), out);
}
void defaults_31(double* at) {
  io<::tankwright::plumbing::section_change>::defaults(at);
}

// plumbing.tee_losses
constexpr std::string_view fields_32[] = {"direction", "angle", "run_bore", "branch_bore", "branch_share"};
constexpr std::string_view required_32[] = {"direction", "run_bore", "branch_bore", "branch_share"};
auto call_32([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::tee_loss> {
  return ::tankwright::plumbing::tee_losses(io<::tankwright::plumbing::tee>::fields(in));
}
void numbers_32(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::tee>::take(in);
  io<::tankwright::plumbing::tee_loss>::put(::tankwright::plumbing::tee_losses(a0), out);
}
void defaults_32(double* at) {
  io<::tankwright::plumbing::tee>::defaults(at);
}

// plumbing.hooper_loss
constexpr std::string_view fields_33[] = {"constants", "reynolds_number", "bore"};
constexpr std::string_view required_33[] = {"constants", "reynolds_number", "bore"};
auto call_33([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>> {
  in.only(fields_33);
  const auto a0 = must<::tankwright::plumbing::two_k>(in, "constants");
  const auto a1 = must<::tankwright::plumbing::reynolds_number>(in, "reynolds_number");
  const auto a2 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  return ::tankwright::plumbing::hooper_loss(a0, a1, a2);
}
void numbers_33(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::two_k>::take(in);
  const auto a1 = io<::tankwright::plumbing::reynolds_number>::take(in);
  const auto a2 = io<::tankwright::plumbing::pipe_bore>::take(in);
  io<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>::put(::tankwright::plumbing::hooper_loss(a0, a1, a2), out);
}
void defaults_33(double* at) {
  io<::tankwright::plumbing::two_k>::defaults(at);
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.darby_loss
constexpr std::string_view fields_34[] = {"constants", "reynolds_number", "size"};
constexpr std::string_view required_34[] = {"constants", "reynolds_number", "size"};
auto call_34([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>> {
  in.only(fields_34);
  const auto a0 = must<::tankwright::plumbing::three_k>(in, "constants");
  const auto a1 = must<::tankwright::plumbing::reynolds_number>(in, "reynolds_number");
  const auto a2 = must<::tankwright::plumbing::nominal_size>(in, "size");
  return ::tankwright::plumbing::darby_loss(a0, a1, a2);
}
void numbers_34(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::three_k>::take(in);
  const auto a1 = io<::tankwright::plumbing::reynolds_number>::take(in);
  const auto a2 = io<::tankwright::plumbing::nominal_size>::take(in);
  io<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>::put(::tankwright::plumbing::darby_loss(a0, a1, a2), out);
}
void defaults_34(double* at) {
  io<::tankwright::plumbing::three_k>::defaults(at);
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.loss_from_flow_coefficient
constexpr std::string_view fields_35[] = {"valve", "bore"};
constexpr std::string_view required_35[] = {"valve", "bore"};
auto call_35([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::loss_coefficient> {
  in.only(fields_35);
  const auto a0 = must<::tankwright::plumbing::flow_coefficient>(in, "valve");
  const auto a1 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  return ::tankwright::plumbing::loss_from_flow_coefficient(a0, a1);
}
void numbers_35(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::flow_coefficient>::take(in);
  const auto a1 = io<::tankwright::plumbing::pipe_bore>::take(in);
  io<::tankwright::plumbing::loss_coefficient>::put(::tankwright::plumbing::loss_from_flow_coefficient(a0, a1), out);
}
void defaults_35(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.flow_coefficient_from_loss
constexpr std::string_view fields_36[] = {"loss", "bore"};
constexpr std::string_view required_36[] = {"loss", "bore"};
auto call_36([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::flow_coefficient> {
  in.only(fields_36);
  const auto a0 = must<::tankwright::plumbing::loss_coefficient>(in, "loss");
  const auto a1 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  return ::tankwright::plumbing::flow_coefficient_from_loss(a0, a1);
}
void numbers_36(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::loss_coefficient>::take(in);
  const auto a1 = io<::tankwright::plumbing::pipe_bore>::take(in);
  io<::tankwright::plumbing::flow_coefficient>::put(::tankwright::plumbing::flow_coefficient_from_loss(a0, a1), out);
}
void defaults_36(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.leaking_check_valve_with_loss_and_bore
constexpr std::string_view fields_37[] = {"loss", "bore"};
constexpr std::string_view required_37[] = {"loss", "bore"};
auto call_37([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::check_valve> {
  in.only(fields_37);
  const auto a0 = must<::tankwright::plumbing::loss_coefficient>(in, "loss");
  const auto a1 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  return ::tankwright::plumbing::leaking_check_valve(a0, a1);
}
void numbers_37(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::loss_coefficient>::take(in);
  const auto a1 = io<::tankwright::plumbing::pipe_bore>::take(in);
  io<::tankwright::plumbing::check_valve>::put(::tankwright::plumbing::leaking_check_valve(a0, a1), out);
}
void defaults_37(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.leaking_check_valve_with_gap
constexpr std::string_view fields_38[] = {"gap"};
constexpr std::string_view required_38[] = {"gap"};
auto call_38([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::check_valve> {
  in.only(fields_38);
  const auto a0 = must<::tankwright::area>(in, "gap");
  return ::tankwright::plumbing::leaking_check_valve(a0);
}
void numbers_38(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::area>::take(in);
  io<::tankwright::plumbing::check_valve>::put(::tankwright::plumbing::leaking_check_valve(a0), out);
}
void defaults_38(double* at) {
  not_given(at, 1);
}

// plumbing.on_bore
constexpr std::string_view fields_39[] = {"loss", "bores"};
constexpr std::string_view required_39[] = {"loss", "bores"};
auto call_39([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>> {
  in.only(fields_39);
  const auto a0 = must<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>(in, "loss");
  const auto a1 = must<::tankwright::plumbing::basis_change>(in, "bores");
  return ::tankwright::plumbing::on_bore(a0, a1);
}
void numbers_39(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>::take(in);
  const auto a1 = io<::tankwright::plumbing::basis_change>::take(in);
  io<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>::put(::tankwright::plumbing::on_bore(a0, a1), out);
}
void defaults_39(double* at) {
  not_given(at, 3);
  io<::tankwright::plumbing::basis_change>::defaults(at);
}

// plumbing.equivalent_length
constexpr std::string_view fields_40[] = {"loss", "bore", "darcy_factor"};
constexpr std::string_view required_40[] = {"loss", "bore", "darcy_factor"};
auto call_40([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_40);
  const auto a0 = must<::tankwright::plumbing::loss_coefficient>(in, "loss");
  const auto a1 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  const auto a2 = must<::tankwright::plumbing::darcy_factor>(in, "darcy_factor");
  return ::tankwright::plumbing::equivalent_length(a0, a1, a2);
}
void numbers_40(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::loss_coefficient>::take(in);
  const auto a1 = io<::tankwright::plumbing::pipe_bore>::take(in);
  const auto a2 = io<::tankwright::plumbing::darcy_factor>::take(in);
  io<::tankwright::length>::put(::tankwright::plumbing::equivalent_length(a0, a1, a2), out);
}
void defaults_40(double* at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.mean_velocity
constexpr std::string_view fields_41[] = {"flow", "bore"};
constexpr std::string_view required_41[] = {"flow", "bore"};
auto call_41([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::velocity> {
  in.only(fields_41);
  const auto a0 = must<::tankwright::flow_rate>(in, "flow");
  const auto a1 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  return ::tankwright::plumbing::mean_velocity(a0, a1);
}
void numbers_41(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::flow_rate>::take(in);
  const auto a1 = io<::tankwright::plumbing::pipe_bore>::take(in);
  io<::tankwright::velocity>::put(::tankwright::plumbing::mean_velocity(a0, a1), out);
}
void defaults_41(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.reynolds
constexpr std::string_view fields_42[] = {"flow", "bore", "water"};
constexpr std::string_view required_42[] = {"flow", "bore", "water"};
auto call_42([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::reynolds_number> {
  in.only(fields_42);
  const auto a0 = must<::tankwright::flow_rate>(in, "flow");
  const auto a1 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  const auto a2 = must<::tankwright::water::liquid>(in, "water");
  return ::tankwright::plumbing::reynolds(a0, a1, a2);
}
void numbers_42(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::flow_rate>::take(in);
  const auto a1 = io<::tankwright::plumbing::pipe_bore>::take(in);
  const auto a2 = io<::tankwright::water::liquid>::take(in);
  io<::tankwright::plumbing::reynolds_number>::put(::tankwright::plumbing::reynolds(a0, a1, a2), out);
}
void defaults_42(double* at) {
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::water::liquid>::defaults(at);
}

// plumbing.friction_factor
constexpr std::string_view fields_43[] = {"reynolds_number", "relative_roughness"};
constexpr std::string_view required_43[] = {"reynolds_number", "relative_roughness"};
auto call_43([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::darcy_factor> {
  in.only(fields_43);
  const auto a0 = must<::tankwright::plumbing::reynolds_number>(in, "reynolds_number");
  const auto a1 = must<::tankwright::plumbing::relative_roughness>(in, "relative_roughness");
  const auto policy = in.policy();
  return ::tankwright::plumbing::friction_factor(a0, a1, policy);
}
void numbers_43(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::reynolds_number>::take(in);
  const auto a1 = io<::tankwright::plumbing::relative_roughness>::take(in);
  io<::tankwright::plumbing::darcy_factor>::put(::tankwright::plumbing::friction_factor(a0, a1, policy), out);
}
void defaults_43(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.head_loss
constexpr std::string_view fields_44[] = {"run", "flow", "water"};
constexpr std::string_view required_44[] = {"run", "flow", "water"};
auto call_44([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_44);
  const auto a0 = must<::tankwright::plumbing::pipe_run>(in, "run");
  const auto a1 = must<::tankwright::flow_rate>(in, "flow");
  const auto a2 = must<::tankwright::water::liquid>(in, "water");
  const auto policy = in.policy();
  return ::tankwright::plumbing::head_loss(a0, a1, a2, policy);
}

// plumbing.head_loss_gradient
constexpr std::string_view fields_45[] = {"run", "flow", "water"};
constexpr std::string_view required_45[] = {"run", "flow", "water"};
auto call_45([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::hydraulic_resistance> {
  in.only(fields_45);
  const auto a0 = must<::tankwright::plumbing::pipe_run>(in, "run");
  const auto a1 = must<::tankwright::flow_rate>(in, "flow");
  const auto a2 = must<::tankwright::water::liquid>(in, "water");
  const auto policy = in.policy();
  return ::tankwright::plumbing::head_loss_gradient(a0, a1, a2, policy);
}

// plumbing.flow_for_head
constexpr std::string_view fields_46[] = {"run", "drive", "water"};
constexpr std::string_view required_46[] = {"run", "drive", "water"};
auto call_46([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  in.only(fields_46);
  const auto a0 = must<::tankwright::plumbing::pipe_run>(in, "run");
  const auto a1 = must<::tankwright::length>(in, "drive");
  const auto a2 = must<::tankwright::water::liquid>(in, "water");
  const auto policy = in.policy();
  return ::tankwright::plumbing::flow_for_head(a0, a1, a2, policy);
}

// plumbing.friction_factor_haaland
constexpr std::string_view fields_47[] = {"reynolds_number", "relative_roughness"};
constexpr std::string_view required_47[] = {"reynolds_number", "relative_roughness"};
auto call_47([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::darcy_factor> {
  in.only(fields_47);
  const auto a0 = must<::tankwright::plumbing::reynolds_number>(in, "reynolds_number");
  const auto a1 = must<::tankwright::plumbing::relative_roughness>(in, "relative_roughness");
  const auto policy = in.policy();
  return ::tankwright::plumbing::friction_factor_haaland(a0, a1, policy);
}
void numbers_47(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::reynolds_number>::take(in);
  const auto a1 = io<::tankwright::plumbing::relative_roughness>::take(in);
  io<::tankwright::plumbing::darcy_factor>::put(::tankwright::plumbing::friction_factor_haaland(a0, a1, policy), out);
}
void defaults_47(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.friction_factor_churchill
constexpr std::string_view fields_48[] = {"reynolds_number", "relative_roughness"};
constexpr std::string_view required_48[] = {"reynolds_number", "relative_roughness"};
auto call_48([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::darcy_factor> {
  in.only(fields_48);
  const auto a0 = must<::tankwright::plumbing::reynolds_number>(in, "reynolds_number");
  const auto a1 = must<::tankwright::plumbing::relative_roughness>(in, "relative_roughness");
  const auto policy = in.policy();
  return ::tankwright::plumbing::friction_factor_churchill(a0, a1, policy);
}
void numbers_48(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::reynolds_number>::take(in);
  const auto a1 = io<::tankwright::plumbing::relative_roughness>::take(in);
  io<::tankwright::plumbing::darcy_factor>::put(::tankwright::plumbing::friction_factor_churchill(a0, a1, policy), out);
}
void defaults_48(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.friction_factor_serghides
constexpr std::string_view fields_49[] = {"reynolds_number", "relative_roughness"};
constexpr std::string_view required_49[] = {"reynolds_number", "relative_roughness"};
auto call_49([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::darcy_factor> {
  in.only(fields_49);
  const auto a0 = must<::tankwright::plumbing::reynolds_number>(in, "reynolds_number");
  const auto a1 = must<::tankwright::plumbing::relative_roughness>(in, "relative_roughness");
  const auto policy = in.policy();
  return ::tankwright::plumbing::friction_factor_serghides(a0, a1, policy);
}
void numbers_49(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::reynolds_number>::take(in);
  const auto a1 = io<::tankwright::plumbing::relative_roughness>::take(in);
  io<::tankwright::plumbing::darcy_factor>::put(::tankwright::plumbing::friction_factor_serghides(a0, a1, policy), out);
}
void defaults_49(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.friction_factor_blasius
constexpr std::string_view fields_50[] = {"reynolds_number"};
constexpr std::string_view required_50[] = {"reynolds_number"};
auto call_50([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::darcy_factor> {
  in.only(fields_50);
  const auto a0 = must<::tankwright::plumbing::reynolds_number>(in, "reynolds_number");
  const auto policy = in.policy();
  return ::tankwright::plumbing::friction_factor_blasius(a0, policy);
}
void numbers_50(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::reynolds_number>::take(in);
  io<::tankwright::plumbing::darcy_factor>::put(::tankwright::plumbing::friction_factor_blasius(a0, policy), out);
}
void defaults_50(double* at) {
  not_given(at, 1);
}

// plumbing.head_loss_hazen_williams
constexpr std::string_view fields_51[] = {"run", "flow", "hazen_williams_c"};
constexpr std::string_view required_51[] = {"run", "flow", "hazen_williams_c"};
auto call_51([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_51);
  const auto a0 = must<::tankwright::plumbing::pipe_run>(in, "run");
  const auto a1 = must<::tankwright::flow_rate>(in, "flow");
  const auto a2 = must<::tankwright::plumbing::hazen_williams_c>(in, "hazen_williams_c");
  return ::tankwright::plumbing::head_loss_hazen_williams(a0, a1, a2);
}

// plumbing.jet_reach
constexpr std::string_view fields_52[] = {"drive", "fall", "velocity_coefficient"};
constexpr std::string_view required_52[] = {"drive", "fall"};
auto call_52([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  return ::tankwright::plumbing::jet_reach(io<::tankwright::plumbing::free_jet>::fields(in));
}
void numbers_52(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::free_jet>::take(in);
  io<::tankwright::length>::put(::tankwright::plumbing::jet_reach(a0), out);
}
void defaults_52(double* at) {
  io<::tankwright::plumbing::free_jet>::defaults(at);
}

// plumbing.velocity_coefficient
constexpr std::string_view fields_53[] = {"drive", "fall", "reach"};
constexpr std::string_view required_53[] = {"drive", "fall", "reach"};
auto call_53([[maybe_unused]] const given& in) -> std::remove_cvref_t<double> {
  return ::tankwright::plumbing::velocity_coefficient(io<::tankwright::plumbing::measured_jet>::fields(in));
}
void numbers_53(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::measured_jet>::take(in);
  io<double>::put(::tankwright::plumbing::velocity_coefficient(a0), out);
}
void defaults_53(double* at) {
  io<::tankwright::plumbing::measured_jet>::defaults(at);
}

// plumbing.jet_height
constexpr std::string_view fields_54[] = {"behind", "water"};
constexpr std::string_view required_54[] = {"behind", "water"};
auto call_54([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_54);
  const auto a0 = must<::tankwright::gauge_pressure>(in, "behind");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  return ::tankwright::plumbing::jet_height(a0, a1);
}
void numbers_54(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::gauge_pressure>::take(in);
  const auto a1 = io<::tankwright::water::liquid>::take(in);
  io<::tankwright::length>::put(::tankwright::plumbing::jet_height(a0, a1), out);
}
void defaults_54(double* at) {
  not_given(at, 1);
  io<::tankwright::water::liquid>::defaults(at);
}

// plumbing.flow_over
constexpr std::string_view fields_55[] = {"edge", "head"};
constexpr std::string_view required_55[] = {"edge", "head"};
auto call_55([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::overflow_flow> {
  in.only(fields_55);
  const auto a0 = must<std::variant<::tankwright::plumbing::full_width_edge, ::tankwright::plumbing::contracted_edge, ::tankwright::plumbing::toothed_edge, ::tankwright::plumbing::v_notch, ::tankwright::plumbing::standpipe>>(in, "edge");
  const auto a1 = must<::tankwright::length>(in, "head");
  const auto policy = in.policy();
  return ::tankwright::plumbing::flow_over(a0, a1, policy);
}

// plumbing.head_over
constexpr std::string_view fields_56[] = {"edge", "flow"};
constexpr std::string_view required_56[] = {"edge", "flow"};
auto call_56([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::overflow_head> {
  in.only(fields_56);
  const auto a0 = must<std::variant<::tankwright::plumbing::full_width_edge, ::tankwright::plumbing::contracted_edge, ::tankwright::plumbing::toothed_edge, ::tankwright::plumbing::v_notch, ::tankwright::plumbing::standpipe>>(in, "edge");
  const auto a1 = must<::tankwright::flow_rate>(in, "flow");
  const auto policy = in.policy();
  return ::tankwright::plumbing::head_over(a0, a1, policy);
}

// plumbing.known_loss
constexpr std::string_view fields_57[] = {"k"};
constexpr std::string_view required_57[] = {"k"};
auto call_57([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>> {
  in.only(fields_57);
  const auto a0 = must<double>(in, "k");
  return ::tankwright::plumbing::known_loss(a0);
}
void numbers_57(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<double>::take(in);
  io<::tankwright::estimate<::tankwright::plumbing::loss_coefficient>>::put(::tankwright::plumbing::known_loss(a0), out);
}
void defaults_57(double* at) {
  not_given(at, 1);
}

// plumbing.pvc_pipe
constexpr std::string_view fields_58[] = {"size", "schedule"};
constexpr std::string_view required_58[] = {"size", "schedule"};
auto call_58([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::pvc_dimensions> {
  in.only(fields_58);
  const auto a0 = must<::tankwright::plumbing::nominal_size>(in, "size");
  const auto a1 = must<::tankwright::plumbing::pvc_schedule>(in, "schedule");
  return ::tankwright::plumbing::pvc_pipe(a0, a1);
}
void numbers_58(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::nominal_size>::take(in);
  const auto a1 = io<::tankwright::plumbing::pvc_schedule>::take(in);
  io<::tankwright::plumbing::pvc_dimensions>::put(::tankwright::plumbing::pvc_pipe(a0, a1), out);
}
void defaults_58(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.metric_pvc_pipe
constexpr std::string_view fields_59[] = {"size", "rating"};
constexpr std::string_view required_59[] = {"size", "rating"};
auto call_59([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::metric_dimensions> {
  in.only(fields_59);
  const auto a0 = must<::tankwright::plumbing::metric_size>(in, "size");
  const auto a1 = must<::tankwright::plumbing::pressure_class>(in, "rating");
  return ::tankwright::plumbing::metric_pvc_pipe(a0, a1);
}
void numbers_59(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::metric_size>::take(in);
  const auto a1 = io<::tankwright::plumbing::pressure_class>::take(in);
  io<::tankwright::plumbing::metric_dimensions>::put(::tankwright::plumbing::metric_pvc_pipe(a0, a1), out);
}
void defaults_59(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.power_cut
constexpr std::string_view fields_60[] = {"display", "sump", "returns", "edge_above_floor", "shared_pipes", "water", "drains_into", "breaks_blocked", "check_valves", "check_valve_leak", "topped_up", "area_uncertainty", "level_uncertainty", "flow_uncertainty", "reserve"};
constexpr std::string_view required_60[] = {"display", "sump", "edge_above_floor"};
auto call_60([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::power_cut_answer> {
  return ::tankwright::plumbing::power_cut(io<::tankwright::plumbing::power_cut_input>::fields(in));
}

// plumbing.worst_moment_of
constexpr std::string_view fields_61[] = {"display", "sump", "returns", "edge_above_floor", "shared_pipes", "water", "drains_into", "breaks_blocked", "check_valves", "check_valve_leak", "topped_up", "area_uncertainty", "level_uncertainty", "flow_uncertainty", "reserve"};
constexpr std::string_view required_61[] = {"display", "sump", "edge_above_floor"};
auto call_61([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::worst_moment> {
  return ::tankwright::plumbing::worst_moment_of(io<::tankwright::plumbing::power_cut_input>::fields(in));
}

// plumbing.power_cut_breaks_blocked
constexpr std::string_view fields_62[] = {"display", "sump", "returns", "edge_above_floor", "shared_pipes", "water", "drains_into", "breaks_blocked", "check_valves", "check_valve_leak", "topped_up", "area_uncertainty", "level_uncertainty", "flow_uncertainty", "reserve"};
constexpr std::string_view required_62[] = {"display", "sump", "edge_above_floor"};
auto call_62([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::vector<::tankwright::plumbing::power_cut_failure_case>> {
  return ::tankwright::plumbing::power_cut_breaks_blocked(io<::tankwright::plumbing::power_cut_input>::fields(in));
}

// plumbing.power_cut_check_valves
constexpr std::string_view fields_63[] = {"display", "sump", "returns", "edge_above_floor", "shared_pipes", "water", "drains_into", "breaks_blocked", "check_valves", "check_valve_leak", "topped_up", "area_uncertainty", "level_uncertainty", "flow_uncertainty", "reserve"};
constexpr std::string_view required_63[] = {"display", "sump", "edge_above_floor"};
auto call_63([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::vector<::tankwright::plumbing::power_cut_failure_case>> {
  return ::tankwright::plumbing::power_cut_check_valves(io<::tankwright::plumbing::power_cut_input>::fields(in));
}

// plumbing.power_cut_failures
constexpr std::string_view fields_64[] = {"power_cut_input", "top_off"};
constexpr std::string_view required_64[] = {"power_cut_input"};
auto call_64([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::vector<::tankwright::plumbing::power_cut_failure_case>> {
  in.only(fields_64);
  const auto a0 = must<::tankwright::plumbing::power_cut_input>(in, "power_cut_input");
  const auto a1 = may_or<::tankwright::volume>(in, "top_off", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::plumbing;
    return ::tankwright::volume(litres(0.0));
  });
  return ::tankwright::plumbing::power_cut_failures(a0, a1);
}

// plumbing.highest_safe_running_level
constexpr std::string_view fields_65[] = {"display", "sump", "returns", "edge_above_floor", "shared_pipes", "water", "drains_into", "breaks_blocked", "check_valves", "check_valve_leak", "topped_up", "area_uncertainty", "level_uncertainty", "flow_uncertainty", "reserve"};
constexpr std::string_view required_65[] = {"display", "sump", "edge_above_floor"};
auto call_65([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::optional<::tankwright::length>> {
  return ::tankwright::plumbing::highest_safe_running_level(io<::tankwright::plumbing::power_cut_input>::fields(in));
}

// plumbing.deepest_safe_outlet
constexpr std::string_view fields_66[] = {"display", "sump", "returns", "edge_above_floor", "shared_pipes", "water", "drains_into", "breaks_blocked", "check_valves", "check_valve_leak", "topped_up", "area_uncertainty", "level_uncertainty", "flow_uncertainty", "reserve"};
constexpr std::string_view required_66[] = {"display", "sump", "edge_above_floor"};
auto call_66([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::optional<::tankwright::length>> {
  return ::tankwright::plumbing::deepest_safe_outlet(io<::tankwright::plumbing::power_cut_input>::fields(in));
}

// plumbing.power_cut_transient
constexpr std::string_view fields_67[] = {"system", "until", "sample_every"};
constexpr std::string_view required_67[] = {"system"};
auto call_67([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::power_cut_history> {
  return ::tankwright::plumbing::power_cut_transient(io<::tankwright::plumbing::power_cut_transient_input>::fields(in));
}

// plumbing.carried_while_priming
constexpr std::string_view fields_68[] = {"drain", "water"};
constexpr std::string_view required_68[] = {"drain", "water"};
auto call_68([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::flow_rate>> {
  in.only(fields_68);
  const auto a0 = must<::tankwright::plumbing::drain>(in, "drain");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  return ::tankwright::plumbing::carried_while_priming(a0, a1);
}

// plumbing.primes_itself
constexpr std::string_view fields_69[] = {"drain", "flow"};
constexpr std::string_view required_69[] = {"drain", "flow"};
auto call_69([[maybe_unused]] const given& in) -> std::remove_cvref_t<bool> {
  in.only(fields_69);
  const auto a0 = must<::tankwright::plumbing::drain>(in, "drain");
  const auto a1 = must<::tankwright::flow_rate>(in, "flow");
  return ::tankwright::plumbing::primes_itself(a0, a1);
}

// plumbing.held_up_while_priming
constexpr std::string_view fields_70[] = {"drains", "flow", "water", "time"};
constexpr std::string_view required_70[] = {"drains", "flow", "water"};
auto call_70([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::priming_answer> {
  in.only(fields_70);
  const auto a0 = must<std::vector<::tankwright::plumbing::drain>>(in, "drains");
  const auto a1 = must<::tankwright::estimate<::tankwright::flow_rate>>(in, "flow");
  const auto a2 = must<::tankwright::water::liquid>(in, "water");
  const auto a3 = may_or<::tankwright::duration>(in, "time", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::plumbing;
    return ::tankwright::duration(usual_priming);
  });
  return ::tankwright::plumbing::held_up_while_priming(a0, a1, a2, a3);
}

// plumbing.curve_from_points
constexpr std::string_view fields_71[] = {"label", "points"};
constexpr std::string_view required_71[] = {"label", "points"};
auto call_71([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::pump_curve> {
  in.only(fields_71);
  const auto a0 = must<std::string>(in, "label");
  const auto a1 = must<std::span<const ::tankwright::plumbing::curve_point>>(in, "points");
  return ::tankwright::plumbing::curve_from_points(a0, a1);
}

// plumbing.curve_from_three_points
constexpr std::string_view fields_72[] = {"label", "shutoff_head", "middle", "last"};
constexpr std::string_view required_72[] = {"shutoff_head", "middle", "last"};
auto call_72([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::pump_curve> {
  return ::tankwright::plumbing::curve_from_three_points(io<::tankwright::plumbing::three_points>::fields(in));
}

// plumbing.curve_from_one_point
constexpr std::string_view fields_73[] = {"label", "duty"};
constexpr std::string_view required_73[] = {"label", "duty"};
auto call_73([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::pump_curve> {
  in.only(fields_73);
  const auto a0 = must<std::string>(in, "label");
  const auto a1 = must<::tankwright::plumbing::curve_point>(in, "duty");
  return ::tankwright::plumbing::curve_from_one_point(a0, a1);
}

// plumbing.head_at
constexpr std::string_view fields_74[] = {"curve", "flow"};
constexpr std::string_view required_74[] = {"curve", "flow"};
auto call_74([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::head_answer> {
  in.only(fields_74);
  const auto a0 = must<::tankwright::plumbing::pump_curve>(in, "curve");
  const auto a1 = must<::tankwright::flow_rate>(in, "flow");
  return ::tankwright::plumbing::head_at(a0, a1);
}

// plumbing.flow_at
constexpr std::string_view fields_75[] = {"curve", "against"};
constexpr std::string_view required_75[] = {"curve", "against"};
auto call_75([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::flow_answer> {
  in.only(fields_75);
  const auto a0 = must<::tankwright::plumbing::pump_curve>(in, "curve");
  const auto a1 = must<::tankwright::length>(in, "against");
  return ::tankwright::plumbing::flow_at(a0, a1);
}

// plumbing.best_point
constexpr std::string_view fields_76[] = {"curve"};
constexpr std::string_view required_76[] = {"curve"};
auto call_76([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::curve_point> {
  in.only(fields_76);
  const auto a0 = must<::tankwright::plumbing::pump_curve>(in, "curve");
  return ::tankwright::plumbing::best_point(a0);
}

// plumbing.head_in_series
constexpr std::string_view fields_77[] = {"curves", "flow"};
constexpr std::string_view required_77[] = {"curves", "flow"};
auto call_77([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::head_answer> {
  in.only(fields_77);
  const auto a0 = must<std::span<const ::tankwright::plumbing::pump_curve>>(in, "curves");
  const auto a1 = must<::tankwright::flow_rate>(in, "flow");
  return ::tankwright::plumbing::head_in_series(a0, a1);
}

// plumbing.flow_in_parallel
constexpr std::string_view fields_78[] = {"curves", "against"};
constexpr std::string_view required_78[] = {"curves", "against"};
auto call_78([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::flow_answer> {
  in.only(fields_78);
  const auto a0 = must<std::span<const ::tankwright::plumbing::pump_curve>>(in, "curves");
  const auto a1 = must<::tankwright::length>(in, "against");
  return ::tankwright::plumbing::flow_in_parallel(a0, a1);
}

// plumbing.at_speed_with_curve
constexpr std::string_view fields_79[] = {"curve", "speed"};
constexpr std::string_view required_79[] = {"curve", "speed"};
auto call_79([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::pump_curve> {
  in.only(fields_79);
  const auto a0 = must<::tankwright::plumbing::pump_curve>(in, "curve");
  const auto a1 = must<::tankwright::plumbing::speed_ratio>(in, "speed");
  return ::tankwright::plumbing::at_speed(a0, a1);
}

// plumbing.at_speed_with_point
constexpr std::string_view fields_80[] = {"point", "speed"};
constexpr std::string_view required_80[] = {"point", "speed"};
auto call_80([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::pump_performance> {
  in.only(fields_80);
  const auto a0 = must<::tankwright::plumbing::pump_performance>(in, "point");
  const auto a1 = must<::tankwright::plumbing::speed_ratio>(in, "speed");
  return ::tankwright::plumbing::at_speed(a0, a1);
}
void numbers_80(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::pump_performance>::take(in);
  const auto a1 = io<::tankwright::plumbing::speed_ratio>::take(in);
  io<::tankwright::plumbing::pump_performance>::put(::tankwright::plumbing::at_speed(a0, a1), out);
}
void defaults_80(double* at) {
  io<::tankwright::plumbing::pump_performance>::defaults(at);
  not_given(at, 1);
}

// plumbing.power_drawn
constexpr std::string_view fields_81[] = {"duty", "water"};
constexpr std::string_view required_81[] = {"duty", "water"};
auto call_81([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::pump_power> {
  in.only(fields_81);
  const auto a0 = must<::tankwright::plumbing::pump_duty>(in, "duty");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  return ::tankwright::plumbing::power_drawn(a0, a1);
}
void numbers_81(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::pump_duty>::take(in);
  const auto a1 = io<::tankwright::water::liquid>::take(in);
  io<::tankwright::plumbing::pump_power>::put(::tankwright::plumbing::power_drawn(a0, a1), out);
}
void defaults_81(double* at) {
  io<::tankwright::plumbing::pump_duty>::defaults(at);
  io<::tankwright::water::liquid>::defaults(at);
}

// plumbing.power_in
constexpr std::string_view fields_82[] = {"measured", "density_of_test", "water"};
constexpr std::string_view required_82[] = {"measured", "density_of_test", "water"};
auto call_82([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::power> {
  in.only(fields_82);
  const auto a0 = must<::tankwright::power>(in, "measured");
  const auto a1 = must<::tankwright::mass_density>(in, "density_of_test");
  const auto a2 = must<::tankwright::water::liquid>(in, "water");
  return ::tankwright::plumbing::power_in(a0, a1, a2);
}
void numbers_82(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::power>::take(in);
  const auto a1 = io<::tankwright::mass_density>::take(in);
  const auto a2 = io<::tankwright::water::liquid>::take(in);
  io<::tankwright::power>::put(::tankwright::plumbing::power_in(a0, a1, a2), out);
}
void defaults_82(double* at) {
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::water::liquid>::defaults(at);
}

// plumbing.npsh_available
constexpr std::string_view fields_83[] = {"side", "water"};
constexpr std::string_view required_83[] = {"side", "water"};
auto call_83([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_83);
  const auto a0 = must<::tankwright::plumbing::suction_side>(in, "side");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  return ::tankwright::plumbing::npsh_available(a0, a1);
}
void numbers_83(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::suction_side>::take(in);
  const auto a1 = io<::tankwright::water::liquid>::take(in);
  io<::tankwright::length>::put(::tankwright::plumbing::npsh_available(a0, a1), out);
}
void defaults_83(double* at) {
  io<::tankwright::plumbing::suction_side>::defaults(at);
  io<::tankwright::water::liquid>::defaults(at);
}

// plumbing.head_from_gauges
constexpr std::string_view fields_84[] = {"read", "water"};
constexpr std::string_view required_84[] = {"read", "water"};
auto call_84([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_84);
  const auto a0 = must<::tankwright::plumbing::gauge_readings>(in, "read");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  return ::tankwright::plumbing::head_from_gauges(a0, a1);
}
void numbers_84(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::gauge_readings>::take(in);
  const auto a1 = io<::tankwright::water::liquid>::take(in);
  io<::tankwright::length>::put(::tankwright::plumbing::head_from_gauges(a0, a1), out);
}
void defaults_84(double* at) {
  io<::tankwright::plumbing::gauge_readings>::defaults(at);
  io<::tankwright::water::liquid>::defaults(at);
}

// plumbing.vortex_submergence
constexpr std::string_view fields_85[] = {"bore", "flow"};
constexpr std::string_view required_85[] = {"bore", "flow"};
auto call_85([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::length>> {
  in.only(fields_85);
  const auto a0 = must<::tankwright::plumbing::pipe_bore>(in, "bore");
  const auto a1 = must<::tankwright::flow_rate>(in, "flow");
  return ::tankwright::plumbing::vortex_submergence(a0, a1);
}
void numbers_85(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::pipe_bore>::take(in);
  const auto a1 = io<::tankwright::flow_rate>::take(in);
  io<::tankwright::estimate<::tankwright::length>>::put(::tankwright::plumbing::vortex_submergence(a0, a1), out);
}
void defaults_85(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// plumbing.restart_after
constexpr std::string_view fields_86[] = {"cut", "task"};
constexpr std::string_view required_86[] = {"cut", "task"};
auto call_86([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::restart_answer> {
  in.only(fields_86);
  const auto a0 = must<::tankwright::plumbing::power_cut_answer>(in, "cut");
  const auto a1 = must<::tankwright::plumbing::restart_input>(in, "task");
  return ::tankwright::plumbing::restart_after(a0, a1);
}

// plumbing.restart
constexpr std::string_view fields_87[] = {"system", "inlet", "priming", "taken", "surge"};
constexpr std::string_view required_87[] = {"system", "inlet"};
auto call_87([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::restart_answer> {
  return ::tankwright::plumbing::restart(io<::tankwright::plumbing::restart_input>::fields(in));
}

// plumbing.siphon_flow
constexpr std::string_view fields_88[] = {"run", "drop", "water"};
constexpr std::string_view required_88[] = {"run", "drop", "water"};
auto call_88([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::flow_rate>> {
  in.only(fields_88);
  const auto a0 = must<::tankwright::plumbing::pipe_run>(in, "run");
  const auto a1 = must<::tankwright::length>(in, "drop");
  const auto a2 = must<::tankwright::water::liquid>(in, "water");
  const auto policy = in.policy();
  return ::tankwright::plumbing::siphon_flow(a0, a1, a2, policy);
}

// plumbing.siphon_crest_pressure
constexpr std::string_view fields_89[] = {"above_surface", "speed", "density", "loss_before", "air"};
constexpr std::string_view required_89[] = {"above_surface", "speed", "density"};
auto call_89([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::absolute_pressure> {
  return ::tankwright::plumbing::siphon_crest_pressure(io<::tankwright::plumbing::siphon_crest>::fields(in));
}
void numbers_89(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::siphon_crest>::take(in);
  io<::tankwright::absolute_pressure>::put(::tankwright::plumbing::siphon_crest_pressure(a0), out);
}
void defaults_89(double* at) {
  io<::tankwright::plumbing::siphon_crest>::defaults(at);
}

// plumbing.highest_siphon_crest
constexpr std::string_view fields_90[] = {"speed", "density", "vapour_pressure", "loss_before", "air"};
constexpr std::string_view required_90[] = {"speed", "density", "vapour_pressure"};
auto call_90([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  return ::tankwright::plumbing::highest_siphon_crest(io<::tankwright::plumbing::siphon_limit>::fields(in));
}
void numbers_90(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::siphon_limit>::take(in);
  io<::tankwright::length>::put(::tankwright::plumbing::highest_siphon_crest(a0), out);
}
void defaults_90(double* at) {
  io<::tankwright::plumbing::siphon_limit>::defaults(at);
}

// plumbing.siphon_until_exposed
constexpr std::string_view fields_91[] = {"horizontal_area", "run", "from", "to", "water"};
constexpr std::string_view required_91[] = {"horizontal_area", "run", "from", "to", "water"};
auto call_91([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::siphon_run> {
  const auto policy = in.policy();
  return ::tankwright::plumbing::siphon_until_exposed(io<::tankwright::plumbing::siphon_draw>::fields(in), policy);
}

// plumbing.jet_speed_at
constexpr std::string_view fields_92[] = {"jet", "distance"};
constexpr std::string_view required_92[] = {"jet", "distance"};
auto call_92([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::velocity>> {
  in.only(fields_92);
  const auto a0 = must<::tankwright::plumbing::submerged_jet>(in, "jet");
  const auto a1 = must<::tankwright::length>(in, "distance");
  return ::tankwright::plumbing::jet_speed_at(a0, a1);
}
void numbers_92(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::submerged_jet>::take(in);
  const auto a1 = io<::tankwright::length>::take(in);
  io<::tankwright::estimate<::tankwright::velocity>>::put(::tankwright::plumbing::jet_speed_at(a0, a1), out);
}
void defaults_92(double* at) {
  io<::tankwright::plumbing::submerged_jet>::defaults(at);
  not_given(at, 1);
}

// plumbing.jet_reaches
constexpr std::string_view fields_93[] = {"jet", "speed"};
constexpr std::string_view required_93[] = {"jet", "speed"};
auto call_93([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::length>> {
  in.only(fields_93);
  const auto a0 = must<::tankwright::plumbing::submerged_jet>(in, "jet");
  const auto a1 = must<::tankwright::velocity>(in, "speed");
  return ::tankwright::plumbing::jet_reaches(a0, a1);
}
void numbers_93(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::submerged_jet>::take(in);
  const auto a1 = io<::tankwright::velocity>::take(in);
  io<::tankwright::estimate<::tankwright::length>>::put(::tankwright::plumbing::jet_reaches(a0, a1), out);
}
void defaults_93(double* at) {
  io<::tankwright::plumbing::submerged_jet>::defaults(at);
  not_given(at, 1);
}

// plumbing.friction_velocity_that_moves
constexpr std::string_view fields_94[] = {"grains", "water"};
constexpr std::string_view required_94[] = {"grains", "water"};
auto call_94([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::velocity> {
  in.only(fields_94);
  const auto a0 = must<::tankwright::plumbing::loose_grains>(in, "grains");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  return ::tankwright::plumbing::friction_velocity_that_moves(a0, a1);
}
void numbers_94(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::loose_grains>::take(in);
  const auto a1 = io<::tankwright::water::liquid>::take(in);
  io<::tankwright::velocity>::put(::tankwright::plumbing::friction_velocity_that_moves(a0, a1), out);
}
void defaults_94(double* at) {
  io<::tankwright::plumbing::loose_grains>::defaults(at);
  io<::tankwright::water::liquid>::defaults(at);
}

// plumbing.speed_that_moves
constexpr std::string_view fields_95[] = {"grains", "water"};
constexpr std::string_view required_95[] = {"grains", "water"};
auto call_95([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::velocity>> {
  in.only(fields_95);
  const auto a0 = must<::tankwright::plumbing::loose_grains>(in, "grains");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  return ::tankwright::plumbing::speed_that_moves(a0, a1);
}
void numbers_95(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::loose_grains>::take(in);
  const auto a1 = io<::tankwright::water::liquid>::take(in);
  io<::tankwright::estimate<::tankwright::velocity>>::put(::tankwright::plumbing::speed_that_moves(a0, a1), out);
}
void defaults_95(double* at) {
  io<::tankwright::plumbing::loose_grains>::defaults(at);
  io<::tankwright::water::liquid>::defaults(at);
}

// plumbing.water_in_sump
constexpr std::string_view fields_96[] = {"plan", "levels"};
constexpr std::string_view required_96[] = {"plan", "levels"};
auto call_96([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::volume> {
  in.only(fields_96);
  const auto a0 = must<::tankwright::plumbing::sump>(in, "plan");
  const auto a1 = must<std::vector<::tankwright::length>>(in, "levels");
  return ::tankwright::plumbing::water_in_sump(a0, a1);
}

// plumbing.sump_capacity
constexpr std::string_view fields_97[] = {"rim", "running_level", "chambers", "baffles"};
constexpr std::string_view required_97[] = {"rim", "running_level"};
auto call_97([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::volume> {
  return ::tankwright::plumbing::sump_capacity(io<::tankwright::plumbing::sump>::fields(in));
}

// plumbing.running_levels
constexpr std::string_view fields_98[] = {"plan", "flow", "drains_into"};
constexpr std::string_view required_98[] = {"plan", "flow"};
auto call_98([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::running_sump> {
  in.only(fields_98);
  const auto a0 = must<::tankwright::plumbing::sump>(in, "plan");
  const auto a1 = must<::tankwright::flow_rate>(in, "flow");
  const auto a2 = may_or<std::size_t>(in, "drains_into", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::plumbing;
    return std::size_t(0);
  });
  return ::tankwright::plumbing::running_levels(a0, a1, a2);
}

// plumbing.pour_into_sump
constexpr std::string_view fields_99[] = {"sump", "levels", "added", "into"};
constexpr std::string_view required_99[] = {"sump", "added"};
auto call_99([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::sump_at_rest> {
  return ::tankwright::plumbing::pour_into_sump(io<::tankwright::plumbing::sump_pour>::fields(in));
}

// plumbing.level_after_evaporation
constexpr std::string_view fields_100[] = {"sump", "evaporated"};
constexpr std::string_view required_100[] = {"sump", "evaporated"};
auto call_100([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  return ::tankwright::plumbing::level_after_evaporation(io<::tankwright::plumbing::sump_evaporation>::fields(in));
}

// plumbing.wave_speed
constexpr std::string_view fields_101[] = {"pipe", "water"};
constexpr std::string_view required_101[] = {"pipe", "water"};
auto call_101([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::velocity> {
  in.only(fields_101);
  const auto a0 = must<::tankwright::plumbing::elastic_pipe>(in, "pipe");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  return ::tankwright::plumbing::wave_speed(a0, a1);
}
void numbers_101(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::elastic_pipe>::take(in);
  const auto a1 = io<::tankwright::water::liquid>::take(in);
  io<::tankwright::velocity>::put(::tankwright::plumbing::wave_speed(a0, a1), out);
}
void defaults_101(double* at) {
  io<::tankwright::plumbing::elastic_pipe>::defaults(at);
  io<::tankwright::water::liquid>::defaults(at);
}

// plumbing.surge_on_closure
constexpr std::string_view fields_102[] = {"stop", "water"};
constexpr std::string_view required_102[] = {"stop", "water"};
auto call_102([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::plumbing::surge> {
  in.only(fields_102);
  const auto a0 = must<::tankwright::plumbing::stopped_flow>(in, "stop");
  const auto a1 = must<::tankwright::water::liquid>(in, "water");
  return ::tankwright::plumbing::surge_on_closure(a0, a1);
}
void numbers_102(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::stopped_flow>::take(in);
  const auto a1 = io<::tankwright::water::liquid>::take(in);
  io<::tankwright::plumbing::surge>::put(::tankwright::plumbing::surge_on_closure(a0, a1), out);
}
void defaults_102(double* at) {
  io<::tankwright::plumbing::stopped_flow>::defaults(at);
  io<::tankwright::water::liquid>::defaults(at);
}

// plumbing.rehbock_weir
constexpr std::string_view fields_103[] = {"edge", "head"};
constexpr std::string_view required_103[] = {"edge", "head"};
auto call_103([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  in.only(fields_103);
  const auto a0 = must<::tankwright::plumbing::full_width_edge>(in, "edge");
  const auto a1 = must<::tankwright::length>(in, "head");
  const auto policy = in.policy();
  return ::tankwright::plumbing::rehbock_weir(a0, a1, policy);
}
void numbers_103(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::full_width_edge>::take(in);
  const auto a1 = io<::tankwright::length>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::plumbing::rehbock_weir(a0, a1, policy), out);
}
void defaults_103(double* at) {
  io<::tankwright::plumbing::full_width_edge>::defaults(at);
  not_given(at, 1);
}

// plumbing.kindsvater_carter_weir
constexpr std::string_view fields_104[] = {"edge", "head"};
constexpr std::string_view required_104[] = {"edge", "head"};
auto call_104([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  in.only(fields_104);
  const auto a0 = must<::tankwright::plumbing::contracted_edge>(in, "edge");
  const auto a1 = must<::tankwright::length>(in, "head");
  const auto policy = in.policy();
  return ::tankwright::plumbing::kindsvater_carter_weir(a0, a1, policy);
}
void numbers_104(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::contracted_edge>::take(in);
  const auto a1 = io<::tankwright::length>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::plumbing::kindsvater_carter_weir(a0, a1, policy), out);
}
void defaults_104(double* at) {
  io<::tankwright::plumbing::contracted_edge>::defaults(at);
  not_given(at, 1);
}

// plumbing.rectangular_weir
constexpr std::string_view fields_105[] = {"width", "head", "discharge_coefficient", "contractions", "approach_velocity"};
constexpr std::string_view required_105[] = {"width", "head", "discharge_coefficient"};
auto call_105([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  return ::tankwright::plumbing::rectangular_weir(io<::tankwright::plumbing::rectangular_weir_input>::fields(in));
}
void numbers_105(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::rectangular_weir_input>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::plumbing::rectangular_weir(a0), out);
}
void defaults_105(double* at) {
  io<::tankwright::plumbing::rectangular_weir_input>::defaults(at);
}

// plumbing.francis_weir
constexpr std::string_view fields_106[] = {"width", "head", "contractions", "approach_velocity"};
constexpr std::string_view required_106[] = {"width", "head"};
auto call_106([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  const auto policy = in.policy();
  return ::tankwright::plumbing::francis_weir(io<::tankwright::plumbing::francis_weir_input>::fields(in), policy);
}
void numbers_106(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::francis_weir_input>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::plumbing::francis_weir(a0, policy), out);
}
void defaults_106(double* at) {
  io<::tankwright::plumbing::francis_weir_input>::defaults(at);
}

// plumbing.bazin_weir
constexpr std::string_view fields_107[] = {"width", "head"};
constexpr std::string_view required_107[] = {"width", "head"};
auto call_107([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  const auto policy = in.policy();
  return ::tankwright::plumbing::bazin_weir(io<::tankwright::plumbing::bazin_weir_input>::fields(in), policy);
}
void numbers_107(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::bazin_weir_input>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::plumbing::bazin_weir(a0, policy), out);
}
void defaults_107(double* at) {
  io<::tankwright::plumbing::bazin_weir_input>::defaults(at);
}

// plumbing.toothed_weir
constexpr std::string_view fields_108[] = {"edge", "head"};
constexpr std::string_view required_108[] = {"edge", "head"};
auto call_108([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  in.only(fields_108);
  const auto a0 = must<::tankwright::plumbing::toothed_edge>(in, "edge");
  const auto a1 = must<::tankwright::length>(in, "head");
  return ::tankwright::plumbing::toothed_weir(a0, a1);
}
void numbers_108(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::toothed_edge>::take(in);
  const auto a1 = io<::tankwright::length>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::plumbing::toothed_weir(a0, a1), out);
}
void defaults_108(double* at) {
  io<::tankwright::plumbing::toothed_edge>::defaults(at);
  not_given(at, 1);
}

// plumbing.v_notch_weir
constexpr std::string_view fields_109[] = {"opening", "head", "discharge_coefficient"};
constexpr std::string_view required_109[] = {"opening", "head", "discharge_coefficient"};
auto call_109([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  return ::tankwright::plumbing::v_notch_weir(io<::tankwright::plumbing::v_notch_weir_input>::fields(in));
}
void numbers_109(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::v_notch_weir_input>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::plumbing::v_notch_weir(a0), out);
}
void defaults_109(double* at) {
  io<::tankwright::plumbing::v_notch_weir_input>::defaults(at);
}

// plumbing.shen_weir
constexpr std::string_view fields_110[] = {"edge", "head"};
constexpr std::string_view required_110[] = {"edge", "head"};
auto call_110([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  in.only(fields_110);
  const auto a0 = must<::tankwright::plumbing::v_notch>(in, "edge");
  const auto a1 = must<::tankwright::length>(in, "head");
  const auto policy = in.policy();
  return ::tankwright::plumbing::shen_weir(a0, a1, policy);
}
void numbers_110(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::v_notch>::take(in);
  const auto a1 = io<::tankwright::length>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::plumbing::shen_weir(a0, a1, policy), out);
}
void defaults_110(double* at) {
  io<::tankwright::plumbing::v_notch>::defaults(at);
  not_given(at, 1);
}

// plumbing.standpipe_inlet
constexpr std::string_view fields_111[] = {"edge", "head"};
constexpr std::string_view required_111[] = {"edge", "head"};
auto call_111([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  in.only(fields_111);
  const auto a0 = must<::tankwright::plumbing::standpipe>(in, "edge");
  const auto a1 = must<::tankwright::length>(in, "head");
  return ::tankwright::plumbing::standpipe_inlet(a0, a1);
}
void numbers_111(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::standpipe>::take(in);
  const auto a1 = io<::tankwright::length>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::plumbing::standpipe_inlet(a0, a1), out);
}
void defaults_111(double* at) {
  io<::tankwright::plumbing::standpipe>::defaults(at);
  not_given(at, 1);
}

// plumbing.submerged_share
constexpr std::string_view fields_112[] = {"upstream_head", "downstream_head", "exponent"};
constexpr std::string_view required_112[] = {"upstream_head", "downstream_head"};
auto call_112([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  return ::tankwright::plumbing::submerged_share(io<::tankwright::plumbing::submergence_input>::fields(in));
}
void numbers_112(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::plumbing::submergence_input>::take(in);
  io<::tankwright::proportion>::put(::tankwright::plumbing::submerged_share(a0), out);
}
void defaults_112(double* at) {
  io<::tankwright::plumbing::submergence_input>::defaults(at);
}

const row rows[] = {
  {"plumbing.operating_point", "tankwright::plumbing::operating_point", "Todini and Pilati 1988; Colebrook 1939", required_0, fields_0, true, &key_of_type<::tankwright::plumbing::circuit_solution>, &answer_with<&call_0>, &make_with<&call_0>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.flow_with_band", "tankwright::plumbing::flow_with_band", "as `operating_point`", required_1, fields_1, true, nullptr, &answer_with<&call_1>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.valve_for_flow", "tankwright::plumbing::valve_for_flow", "as `operating_point`", required_2, fields_2, true, &key_of_type<::tankwright::plumbing::valve_setting>, &answer_with<&call_2>, &make_with<&call_2>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.speed_for_flow", "tankwright::plumbing::speed_for_flow", "as `operating_point`; affinity laws", required_3, fields_3, true, &key_of_type<::tankwright::plumbing::speed_setting>, &answer_with<&call_3>, &make_with<&call_3>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.rank_pumps", "tankwright::plumbing::rank_pumps", "as `operating_point`", required_4, fields_4, true, &key_of_type<::tankwright::plumbing::pump_ranking>, &answer_with<&call_4>, &make_with<&call_4>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.drain_number", "tankwright::plumbing::drain_number", "Hills 1983", required_5, fields_5, false, nullptr, &answer_with<&call_5>, nullptr, {true, 2, 1}, &numbers_5, &defaults_5},
  {"plumbing.flow_at_drain_number", "tankwright::plumbing::flow_at_drain_number", "Hills 1983", required_6, fields_6, false, nullptr, &answer_with<&call_6>, nullptr, {true, 2, 1}, &numbers_6, &defaults_6},
  {"plumbing.stack_capacity", "tankwright::plumbing::stack_capacity", "Wyly and Eaton 1961", required_7, fields_7, true, nullptr, &answer_with<&call_7>, nullptr, {true, 2, 1}, &numbers_7, &defaults_7},
  {"plumbing.part_full", "tankwright::plumbing::part_full", "geometry", required_8, fields_8, false, &key_of_type<::tankwright::plumbing::wet_section>, &answer_with<&call_8>, &make_with<&call_8>, {true, 2, 4}, &numbers_8, &defaults_8},
  {"plumbing.part_full_flow_with_drain", "tankwright::plumbing::part_full_flow", "Manning 1891; Chow 1959 (from memory)", required_9, fields_9, false, &key_of_type<::tankwright::plumbing::part_full_answer>, &answer_with<&call_9>, &make_with<&call_9>, {true, 4, 2}, &numbers_9, &defaults_9},
  {"plumbing.part_full_depth", "tankwright::plumbing::part_full_depth", "Manning 1891", required_10, fields_10, false, nullptr, &answer_with<&call_10>, nullptr, {true, 4, 1}, &numbers_10, &defaults_10},
  {"plumbing.part_full_flow_with_pipe", "tankwright::plumbing::part_full_flow", "Colebrook 1939; Crane TP-410, ex. 7.26", required_11, fields_11, true, &key_of_type<::tankwright::plumbing::part_full_answer>, &answer_with<&call_11>, &make_with<&call_11>, {true, 6, 2}, &numbers_11, &defaults_11},
  {"plumbing.drain_mode_for", "tankwright::plumbing::drain_mode_for", "Hills 1983; EN 12056-3; Wyly and Eaton 1961; energy equation", required_12, fields_12, false, &key_of_type<::tankwright::plumbing::drain_answer>, &answer_with<&call_12>, &make_with<&call_12>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.one_drain_blocked", "tankwright::plumbing::one_drain_blocked", "as `drain_mode_for`", required_13, fields_13, false, &key_of_type<::tankwright::plumbing::blocked_answer>, &answer_with<&call_13>, &make_with<&call_13>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.all_drains_blocked", "tankwright::plumbing::all_drains_blocked", "geometry; the formulas of `weirs.hpp`", required_14, fields_14, false, &key_of_type<::tankwright::plumbing::drains_blocked_answer>, &answer_with<&call_14>, &make_with<&call_14>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.outlet_through_with_orifice", "tankwright::plumbing::outlet_through", "textbook formula (Torricelli 1644 with a coefficient)", required_15, fields_15, false, &key_of_type<::tankwright::plumbing::effective_area>, &answer_with<&call_15>, &make_with<&call_15>, {true, 2, 1}, &numbers_15, &defaults_15},
  {"plumbing.outlet_through_with_resisting_pipe", "tankwright::plumbing::outlet_through", "energy equation", required_16, fields_16, false, &key_of_type<::tankwright::plumbing::effective_area>, &answer_with<&call_16>, &make_with<&call_16>, {true, 2, 1}, &numbers_16, &defaults_16},
  {"plumbing.outflow", "tankwright::plumbing::outflow", "textbook formula (Torricelli 1644 with a coefficient)", required_17, fields_17, false, nullptr, &answer_with<&call_17>, nullptr, {true, 2, 1}, &numbers_17, &defaults_17},
  {"plumbing.emptying_time", "tankwright::plumbing::emptying_time", "textbook formula: Schaschke, ex. 6.3 and 6.4", required_18, fields_18, false, nullptr, &answer_with<&call_18>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.discharge_coefficient_from", "tankwright::plumbing::discharge_coefficient_from", "textbook formula: Lal, ex. 3.6", required_19, fields_19, false, nullptr, &answer_with<&call_19>, nullptr, {true, 5, 1}, &numbers_19, &defaults_19},
  {"plumbing.laminar_emptying_time", "tankwright::plumbing::laminar_emptying_time", "Hagen-Poiseuille: Schaschke, ex. 6.10", required_20, fields_20, true, nullptr, &answer_with<&call_20>, nullptr, {true, 7, 1}, &numbers_20, &defaults_20},
  {"plumbing.levelling_time", "tankwright::plumbing::levelling_time", "textbook formula: Schaschke, ex. 6.6; Lal, ex. 3.11", required_21, fields_21, false, nullptr, &answer_with<&call_21>, nullptr, {true, 5, 1}, &numbers_21, &defaults_21},
  {"plumbing.steady_level", "tankwright::plumbing::steady_level", "textbook formula: Schaschke, ex. 6.8", required_22, fields_22, false, nullptr, &answer_with<&call_22>, nullptr, {true, 3, 1}, &numbers_22, &defaults_22},
  {"plumbing.level_change_time", "tankwright::plumbing::level_change_time", "textbook formula: Schaschke, ex. 6.8", required_23, fields_23, false, nullptr, &answer_with<&call_23>, nullptr, {true, 5, 1}, &numbers_23, &defaults_23},
  {"plumbing.edge_tail_time", "tankwright::plumbing::edge_tail_time", "the formulas of `weirs.hpp`, integrated in 1/sqrt(h)", required_24, fields_24, false, nullptr, &answer_with<&call_24>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.plain_weir_tail_time", "tankwright::plumbing::plain_weir_tail_time", "textbook formula: Lal, ex. 4.9", required_25, fields_25, false, nullptr, &answer_with<&call_25>, nullptr, {true, 5, 1}, &numbers_25, &defaults_25},
  {"plumbing.v_notch_tail_time", "tankwright::plumbing::v_notch_tail_time", "textbook formula", required_26, fields_26, false, nullptr, &answer_with<&call_26>, nullptr, {true, 5, 1}, &numbers_26, &defaults_26},
  {"plumbing.fill_stages", "tankwright::plumbing::fill_stages", "continuity", required_27, fields_27, false, nullptr, &answer_with<&call_27>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.fully_turbulent_factor", "tankwright::plumbing::fully_turbulent_factor", "Crane TP-410 (2009) appendix A; limit of Colebrook-White", required_28, fields_28, false, &key_of_type<::tankwright::plumbing::darcy_factor>, &answer_with<&call_28>, &make_with<&call_28>, {true, 1, 1}, &numbers_28, &defaults_28},
  {"plumbing.fitting_loss", "tankwright::plumbing::fitting_loss", "Crane TP-410 (2009) appendix A, values of n from memory", required_29, fields_29, false, nullptr, &answer_with<&call_29>, nullptr, {true, 2, 3}, &numbers_29, &defaults_29},
  {"plumbing.entrance_loss", "tankwright::plumbing::entrance_loss", "Crane TP-410 (2009) appendix A", required_30, fields_30, false, nullptr, &answer_with<&call_30>, nullptr, {true, 3, 3}, &numbers_30, &defaults_30},
  {"plumbing.section_change_loss", "tankwright::plumbing::section_change_loss", "Crane TP-410 (2009) ch. 2, from memory; Crane changes formula at 45 degrees, here they meet at 45.2 and 46.0", required_31, fields_31, false, nullptr, &answer_with<&call_31>, nullptr, {true, 3, 3}, &numbers_31, &defaults_31},
  {"plumbing.tee_losses", "tankwright::plumbing::tee_losses", "Crane TP-410 (2009) ch. 2 with its errata", required_32, fields_32, false, &key_of_type<::tankwright::plumbing::tee_loss>, &answer_with<&call_32>, &make_with<&call_32>, {true, 5, 6}, &numbers_32, &defaults_32},
  {"plumbing.hooper_loss", "tankwright::plumbing::hooper_loss", "Hooper 1981", required_33, fields_33, false, nullptr, &answer_with<&call_33>, nullptr, {true, 4, 3}, &numbers_33, &defaults_33},
  {"plumbing.darby_loss", "tankwright::plumbing::darby_loss", "Darby 2001", required_34, fields_34, false, nullptr, &answer_with<&call_34>, nullptr, {true, 5, 3}, &numbers_34, &defaults_34},
  {"plumbing.loss_from_flow_coefficient", "tankwright::plumbing::loss_from_flow_coefficient", "definition, IEC 60534; Crane TP-410M rounds the factor to 1.6e9", required_35, fields_35, false, &key_of_type<::tankwright::plumbing::loss_coefficient>, &answer_with<&call_35>, &make_with<&call_35>, {true, 2, 1}, &numbers_35, &defaults_35},
  {"plumbing.flow_coefficient_from_loss", "tankwright::plumbing::flow_coefficient_from_loss", "definition, IEC 60534", required_36, fields_36, false, &key_of_type<::tankwright::plumbing::flow_coefficient>, &answer_with<&call_36>, &make_with<&call_36>, {true, 2, 1}, &numbers_36, &defaults_36},
  {"plumbing.leaking_check_valve_with_loss_and_bore", "tankwright::plumbing::leaking_check_valve", "definition of Kv, IEC 60534", required_37, fields_37, false, &key_of_type<::tankwright::plumbing::check_valve>, &answer_with<&call_37>, &make_with<&call_37>, {true, 2, 1}, &numbers_37, &defaults_37},
  {"plumbing.leaking_check_valve_with_gap", "tankwright::plumbing::leaking_check_valve", "orifice formula; definition of Kv, IEC 60534", required_38, fields_38, false, &key_of_type<::tankwright::plumbing::check_valve>, &answer_with<&call_38>, &make_with<&call_38>, {true, 1, 1}, &numbers_38, &defaults_38},
  {"plumbing.on_bore", "tankwright::plumbing::on_bore", "continuity; Crane TP-410 (2009) ch. 2", required_39, fields_39, false, nullptr, &answer_with<&call_39>, nullptr, {true, 5, 3}, &numbers_39, &defaults_39},
  {"plumbing.equivalent_length", "tankwright::plumbing::equivalent_length", "Crane TP-410 (2009) ch. 2", required_40, fields_40, false, nullptr, &answer_with<&call_40>, nullptr, {true, 3, 1}, &numbers_40, &defaults_40},
  {"plumbing.mean_velocity", "tankwright::plumbing::mean_velocity", "continuity", required_41, fields_41, false, nullptr, &answer_with<&call_41>, nullptr, {true, 2, 1}, &numbers_41, &defaults_41},
  {"plumbing.reynolds", "tankwright::plumbing::reynolds", "definition", required_42, fields_42, false, &key_of_type<::tankwright::plumbing::reynolds_number>, &answer_with<&call_42>, &make_with<&call_42>, {true, 4, 1}, &numbers_42, &defaults_42},
  {"plumbing.friction_factor", "tankwright::plumbing::friction_factor", "Colebrook 1939; Hagen-Poiseuille; range of Moody 1944", required_43, fields_43, true, &key_of_type<::tankwright::plumbing::darcy_factor>, &answer_with<&call_43>, &make_with<&call_43>, {true, 2, 1}, &numbers_43, &defaults_43},
  {"plumbing.head_loss", "tankwright::plumbing::head_loss", "Colebrook 1939; Crane TP-410 (2009) ch. 1", required_44, fields_44, true, nullptr, &answer_with<&call_44>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.head_loss_gradient", "tankwright::plumbing::head_loss_gradient", "Colebrook 1939, differentiated", required_45, fields_45, true, nullptr, &answer_with<&call_45>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.flow_for_head", "tankwright::plumbing::flow_for_head", "Colebrook 1939", required_46, fields_46, true, nullptr, &answer_with<&call_46>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.friction_factor_haaland", "tankwright::plumbing::friction_factor_haaland", "Haaland 1983", required_47, fields_47, true, &key_of_type<::tankwright::plumbing::darcy_factor>, &answer_with<&call_47>, &make_with<&call_47>, {true, 2, 1}, &numbers_47, &defaults_47},
  {"plumbing.friction_factor_churchill", "tankwright::plumbing::friction_factor_churchill", "Churchill 1977", required_48, fields_48, true, &key_of_type<::tankwright::plumbing::darcy_factor>, &answer_with<&call_48>, &make_with<&call_48>, {true, 2, 1}, &numbers_48, &defaults_48},
  {"plumbing.friction_factor_serghides", "tankwright::plumbing::friction_factor_serghides", "Serghides 1984", required_49, fields_49, true, &key_of_type<::tankwright::plumbing::darcy_factor>, &answer_with<&call_49>, &make_with<&call_49>, {true, 2, 1}, &numbers_49, &defaults_49},
  {"plumbing.friction_factor_blasius", "tankwright::plumbing::friction_factor_blasius", "Blasius 1913", required_50, fields_50, true, &key_of_type<::tankwright::plumbing::darcy_factor>, &answer_with<&call_50>, &make_with<&call_50>, {true, 1, 1}, &numbers_50, &defaults_50},
  {"plumbing.head_loss_hazen_williams", "tankwright::plumbing::head_loss_hazen_williams", "Williams and Hazen 1905", required_51, fields_51, false, nullptr, &answer_with<&call_51>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.jet_reach", "tankwright::plumbing::jet_reach", "Torricelli; ballistics", required_52, fields_52, false, nullptr, &answer_with<&call_52>, nullptr, {true, 3, 1}, &numbers_52, &defaults_52},
  {"plumbing.velocity_coefficient", "tankwright::plumbing::velocity_coefficient", "Torricelli; ballistics", required_53, fields_53, false, nullptr, &answer_with<&call_53>, nullptr, {true, 3, 1}, &numbers_53, &defaults_53},
  {"plumbing.jet_height", "tankwright::plumbing::jet_height", "Bernoulli's equation", required_54, fields_54, false, nullptr, &answer_with<&call_54>, nullptr, {true, 3, 1}, &numbers_54, &defaults_54},
  {"plumbing.flow_over", "tankwright::plumbing::flow_over", "the formulas of `weirs.hpp`; thick edge: EPA SWMM Reference Manual II, table 6-3", required_55, fields_55, true, &key_of_type<::tankwright::plumbing::overflow_flow>, &answer_with<&call_55>, &make_with<&call_55>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.head_over", "tankwright::plumbing::head_over", "the formulas of `weirs.hpp`", required_56, fields_56, true, &key_of_type<::tankwright::plumbing::overflow_head>, &answer_with<&call_56>, &make_with<&call_56>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.known_loss", "tankwright::plumbing::known_loss", "the caller", required_57, fields_57, false, nullptr, &answer_with<&call_57>, nullptr, {true, 1, 3}, &numbers_57, &defaults_57},
  {"plumbing.pvc_pipe", "tankwright::plumbing::pvc_pipe", "ASTM D1785 Tables 1 and 2", required_58, fields_58, false, &key_of_type<::tankwright::plumbing::pvc_dimensions>, &answer_with<&call_58>, &make_with<&call_58>, {true, 2, 4}, &numbers_58, &defaults_58},
  {"plumbing.metric_pvc_pipe", "tankwright::plumbing::metric_pvc_pipe", "EN ISO 1452-2 Table 2, from memory", required_59, fields_59, false, &key_of_type<::tankwright::plumbing::metric_dimensions>, &answer_with<&call_59>, &make_with<&call_59>, {true, 2, 3}, &numbers_59, &defaults_59},
  {"plumbing.power_cut", "tankwright::plumbing::power_cut", "geometry; the formulas of `weirs.hpp`; orifice formula; energy equation with Colebrook 1939", required_60, fields_60, false, &key_of_type<::tankwright::plumbing::power_cut_answer>, &answer_with<&call_60>, &make_with<&call_60>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.worst_moment_of", "tankwright::plumbing::worst_moment_of", "as `power_cut`", required_61, fields_61, false, &key_of_type<::tankwright::plumbing::worst_moment>, &answer_with<&call_61>, &make_with<&call_61>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.power_cut_breaks_blocked", "tankwright::plumbing::power_cut_breaks_blocked", "as `power_cut`", required_62, fields_62, false, nullptr, &answer_with<&call_62>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.power_cut_check_valves", "tankwright::plumbing::power_cut_check_valves", "as `power_cut`", required_63, fields_63, false, nullptr, &answer_with<&call_63>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.power_cut_failures", "tankwright::plumbing::power_cut_failures", "as `power_cut`", required_64, fields_64, false, nullptr, &answer_with<&call_64>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.highest_safe_running_level", "tankwright::plumbing::highest_safe_running_level", "as `power_cut`", required_65, fields_65, false, nullptr, &answer_with<&call_65>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.deepest_safe_outlet", "tankwright::plumbing::deepest_safe_outlet", "as `power_cut`", required_66, fields_66, false, nullptr, &answer_with<&call_66>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.power_cut_transient", "tankwright::plumbing::power_cut_transient", "the formulas of `weirs.hpp`; orifice formula; energy equation with Colebrook 1939; the laws of box, drain pipes and falling columns are rules of this library", required_67, fields_67, false, &key_of_type<::tankwright::plumbing::power_cut_history>, &answer_with<&call_67>, &make_with<&call_67>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.carried_while_priming", "tankwright::plumbing::carried_while_priming", "Hills 1983; Wyly and Eaton 1961; EN 12056-3", required_68, fields_68, false, nullptr, &answer_with<&call_68>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.primes_itself", "tankwright::plumbing::primes_itself", "Hills 1983", required_69, fields_69, false, nullptr, &answer_with<&call_69>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.held_up_while_priming", "tankwright::plumbing::held_up_while_priming", "Hills 1983; Wyly and Eaton 1961", required_70, fields_70, false, &key_of_type<::tankwright::plumbing::priming_answer>, &answer_with<&call_70>, &make_with<&call_70>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.curve_from_points", "tankwright::plumbing::curve_from_points", "Fritsch and Butland 1984", required_71, fields_71, false, &key_of_type<::tankwright::plumbing::pump_curve>, &answer_with<&call_71>, &make_with<&call_71>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.curve_from_three_points", "tankwright::plumbing::curve_from_three_points", "EPANET 2.2 user manual, three-point curve", required_72, fields_72, false, &key_of_type<::tankwright::plumbing::pump_curve>, &answer_with<&call_72>, &make_with<&call_72>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.curve_from_one_point", "tankwright::plumbing::curve_from_one_point", "EPANET 2.2 user manual, single-point curve", required_73, fields_73, false, &key_of_type<::tankwright::plumbing::pump_curve>, &answer_with<&call_73>, &make_with<&call_73>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.head_at", "tankwright::plumbing::head_at", "the pump's maker", required_74, fields_74, false, &key_of_type<::tankwright::plumbing::head_answer>, &answer_with<&call_74>, &make_with<&call_74>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.flow_at", "tankwright::plumbing::flow_at", "the pump's maker", required_75, fields_75, false, &key_of_type<::tankwright::plumbing::flow_answer>, &answer_with<&call_75>, &make_with<&call_75>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.best_point", "tankwright::plumbing::best_point", "d(Q H)/dQ = 0", required_76, fields_76, false, &key_of_type<::tankwright::plumbing::curve_point>, &answer_with<&call_76>, &make_with<&call_76>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.head_in_series", "tankwright::plumbing::head_in_series", "continuity and addition of heads", required_77, fields_77, false, &key_of_type<::tankwright::plumbing::head_answer>, &answer_with<&call_77>, &make_with<&call_77>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.flow_in_parallel", "tankwright::plumbing::flow_in_parallel", "addition of flows", required_78, fields_78, false, &key_of_type<::tankwright::plumbing::flow_answer>, &answer_with<&call_78>, &make_with<&call_78>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.at_speed_with_curve", "tankwright::plumbing::at_speed", "affinity laws; Crane TP-410 (2009) ch. 5", required_79, fields_79, false, &key_of_type<::tankwright::plumbing::pump_curve>, &answer_with<&call_79>, &make_with<&call_79>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.at_speed_with_point", "tankwright::plumbing::at_speed", "affinity laws; Crane TP-410 (2009) ch. 5", required_80, fields_80, false, &key_of_type<::tankwright::plumbing::pump_performance>, &answer_with<&call_80>, &make_with<&call_80>, {true, 4, 3}, &numbers_80, &defaults_80},
  {"plumbing.power_drawn", "tankwright::plumbing::power_drawn", "Crane TP-410 (2009) ch. 5", required_81, fields_81, false, &key_of_type<::tankwright::plumbing::pump_power>, &answer_with<&call_81>, &make_with<&call_81>, {true, 6, 3}, &numbers_81, &defaults_81},
  {"plumbing.power_in", "tankwright::plumbing::power_in", "head and efficiency do not depend on density", required_82, fields_82, false, nullptr, &answer_with<&call_82>, nullptr, {true, 4, 1}, &numbers_82, &defaults_82},
  {"plumbing.npsh_available", "tankwright::plumbing::npsh_available", "Crane TP-410 (2009) ch. 5", required_83, fields_83, false, nullptr, &answer_with<&call_83>, nullptr, {true, 6, 1}, &numbers_83, &defaults_83},
  {"plumbing.head_from_gauges", "tankwright::plumbing::head_from_gauges", "Bernoulli's equation", required_84, fields_84, false, nullptr, &answer_with<&call_84>, nullptr, {true, 8, 1}, &numbers_84, &defaults_84},
  {"plumbing.vortex_submergence", "tankwright::plumbing::vortex_submergence", "ANSI/HI 9.8-1998; Gordon 1970", required_85, fields_85, false, nullptr, &answer_with<&call_85>, nullptr, {true, 2, 3}, &numbers_85, &defaults_85},
  {"plumbing.restart_after", "tankwright::plumbing::restart_after", "geometry; ANSI/HI 9.8-1998; Gordon 1970", required_86, fields_86, false, &key_of_type<::tankwright::plumbing::restart_answer>, &answer_with<&call_86>, &make_with<&call_86>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.restart", "tankwright::plumbing::restart", "geometry; ANSI/HI 9.8-1998; Gordon 1970", required_87, fields_87, false, &key_of_type<::tankwright::plumbing::restart_answer>, &answer_with<&call_87>, &make_with<&call_87>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.siphon_flow", "tankwright::plumbing::siphon_flow", "energy equation; Colebrook 1939", required_88, fields_88, true, nullptr, &answer_with<&call_88>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.siphon_crest_pressure", "tankwright::plumbing::siphon_crest_pressure", "energy equation: Cengel and Cimbala, ex. 5-7", required_89, fields_89, false, nullptr, &answer_with<&call_89>, nullptr, {true, 5, 1}, &numbers_89, &defaults_89},
  {"plumbing.highest_siphon_crest", "tankwright::plumbing::highest_siphon_crest", "energy equation: Munson et al., ex. 3.10", required_90, fields_90, false, nullptr, &answer_with<&call_90>, nullptr, {true, 5, 1}, &numbers_90, &defaults_90},
  {"plumbing.siphon_until_exposed", "tankwright::plumbing::siphon_until_exposed", "energy equation; Colebrook 1939", required_91, fields_91, true, &key_of_type<::tankwright::plumbing::siphon_run>, &answer_with<&call_91>, &make_with<&call_91>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.jet_speed_at", "tankwright::plumbing::jet_speed_at", "Albertson et al. 1950", required_92, fields_92, false, nullptr, &answer_with<&call_92>, nullptr, {true, 3, 3}, &numbers_92, &defaults_92},
  {"plumbing.jet_reaches", "tankwright::plumbing::jet_reaches", "Albertson et al. 1950", required_93, fields_93, false, nullptr, &answer_with<&call_93>, nullptr, {true, 3, 3}, &numbers_93, &defaults_93},
  {"plumbing.friction_velocity_that_moves", "tankwright::plumbing::friction_velocity_that_moves", "Soulsby and Whitehouse 1997", required_94, fields_94, false, nullptr, &answer_with<&call_94>, nullptr, {true, 4, 1}, &numbers_94, &defaults_94},
  {"plumbing.speed_that_moves", "tankwright::plumbing::speed_that_moves", "Soulsby and Whitehouse 1997; law of the wall", required_95, fields_95, false, nullptr, &answer_with<&call_95>, nullptr, {true, 4, 3}, &numbers_95, &defaults_95},
  {"plumbing.water_in_sump", "tankwright::plumbing::water_in_sump", "geometry", required_96, fields_96, false, nullptr, &answer_with<&call_96>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.sump_capacity", "tankwright::plumbing::sump_capacity", "geometry", required_97, fields_97, false, nullptr, &answer_with<&call_97>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.running_levels", "tankwright::plumbing::running_levels", "Rehbock 1929; Villemonte 1947; orifice formula", required_98, fields_98, false, &key_of_type<::tankwright::plumbing::running_sump>, &answer_with<&call_98>, &make_with<&call_98>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.pour_into_sump", "tankwright::plumbing::pour_into_sump", "geometry", required_99, fields_99, false, &key_of_type<::tankwright::plumbing::sump_at_rest>, &answer_with<&call_99>, &make_with<&call_99>, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.level_after_evaporation", "tankwright::plumbing::level_after_evaporation", "geometry", required_100, fields_100, false, nullptr, &answer_with<&call_100>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"plumbing.wave_speed", "tankwright::plumbing::wave_speed", "Joukowsky 1898; Korteweg 1878", required_101, fields_101, false, nullptr, &answer_with<&call_101>, nullptr, {true, 7, 1}, &numbers_101, &defaults_101},
  {"plumbing.surge_on_closure", "tankwright::plumbing::surge_on_closure", "Joukowsky 1898", required_102, fields_102, false, &key_of_type<::tankwright::plumbing::surge>, &answer_with<&call_102>, &make_with<&call_102>, {true, 5, 3}, &numbers_102, &defaults_102},
  {"plumbing.rehbock_weir", "tankwright::plumbing::rehbock_weir", "Rehbock 1929", required_103, fields_103, true, nullptr, &answer_with<&call_103>, nullptr, {true, 4, 1}, &numbers_103, &defaults_103},
  {"plumbing.kindsvater_carter_weir", "tankwright::plumbing::kindsvater_carter_weir", "Kindsvater and Carter 1957", required_104, fields_104, true, nullptr, &answer_with<&call_104>, nullptr, {true, 4, 1}, &numbers_104, &defaults_104},
  {"plumbing.rectangular_weir", "tankwright::plumbing::rectangular_weir", "Francis 1883", required_105, fields_105, false, nullptr, &answer_with<&call_105>, nullptr, {true, 5, 1}, &numbers_105, &defaults_105},
  {"plumbing.francis_weir", "tankwright::plumbing::francis_weir", "Francis 1883", required_106, fields_106, true, nullptr, &answer_with<&call_106>, nullptr, {true, 4, 1}, &numbers_106, &defaults_106},
  {"plumbing.bazin_weir", "tankwright::plumbing::bazin_weir", "Bazin 1888", required_107, fields_107, true, nullptr, &answer_with<&call_107>, nullptr, {true, 2, 1}, &numbers_107, &defaults_107},
  {"plumbing.toothed_weir", "tankwright::plumbing::toothed_weir", "own rule, after Kindsvater and Carter 1957", required_108, fields_108, false, nullptr, &answer_with<&call_108>, nullptr, {true, 6, 1}, &numbers_108, &defaults_108},
  {"plumbing.v_notch_weir", "tankwright::plumbing::v_notch_weir", "textbook formula: Sarkar, ex. 5.3; Schaschke, ex. 7.10", required_109, fields_109, false, nullptr, &answer_with<&call_109>, nullptr, {true, 3, 1}, &numbers_109, &defaults_109},
  {"plumbing.shen_weir", "tankwright::plumbing::shen_weir", "Shen 1981", required_110, fields_110, true, nullptr, &answer_with<&call_110>, nullptr, {true, 2, 1}, &numbers_110, &defaults_110},
  {"plumbing.standpipe_inlet", "tankwright::plumbing::standpipe_inlet", "EN 12056-3 (from memory)", required_111, fields_111, false, nullptr, &answer_with<&call_111>, nullptr, {true, 3, 1}, &numbers_111, &defaults_111},
  {"plumbing.submerged_share", "tankwright::plumbing::submerged_share", "Villemonte 1947", required_112, fields_112, false, nullptr, &answer_with<&call_112>, nullptr, {true, 3, 1}, &numbers_112, &defaults_112},
};

}  // namespace

std::span<const row> plumbing_rows() { return rows; }

std::span<const constant> plumbing_constants() {
  static const constant all[] = {
    named("recommended_velocity", ::tankwright::plumbing::recommended_velocity),
    named("recommended_suction_velocity", ::tankwright::plumbing::recommended_suction_velocity),
    named("smooth_plastic", ::tankwright::plumbing::smooth_plastic),
    named("usual_priming", ::tankwright::plumbing::usual_priming),
    named("pvc_modulus", ::tankwright::plumbing::pvc_modulus),
    named("water_bulk_modulus", ::tankwright::plumbing::water_bulk_modulus),
  };
  return all;
}

}  // namespace tankwright_formulas
