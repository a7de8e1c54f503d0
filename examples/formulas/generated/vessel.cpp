// SPDX-License-Identifier: BSL-1.0
// Written by examples/formulas/make.py from the headers. Do not edit.
#include "vessel.hpp"

namespace tankwright_formulas {

namespace {
constexpr std::string_view words_of_vessel_leak_answer[] = {"proven", "excluded", "undecided", "contradictory"};
}  // namespace
void io<::tankwright::vessel::leak_answer>::write(answer& out, const ::tankwright::vessel::leak_answer& v) { out.text(words_of_vessel_leak_answer[static_cast<std::size_t>(v)]); }

namespace {
constexpr std::string_view words_of_vessel_load_basis[] = {"short_term", "permanent"};
}  // namespace
::tankwright::vessel::load_basis io<::tankwright::vessel::load_basis>::read(const given& in) { return static_cast<::tankwright::vessel::load_basis>(in.word(words_of_vessel_load_basis)); }
void io<::tankwright::vessel::load_basis>::write(answer& out, const ::tankwright::vessel::load_basis& v) { out.text(words_of_vessel_load_basis[static_cast<std::size_t>(v)]); }

namespace {
constexpr std::string_view words_of_vessel_panel_edges[] = {"all_supported", "top_free", "bottom_clamped", "bottom_clamped_top_free"};
}  // namespace
::tankwright::vessel::panel_edges io<::tankwright::vessel::panel_edges>::read(const given& in) { return static_cast<::tankwright::vessel::panel_edges>(in.word(words_of_vessel_panel_edges)); }

namespace {
constexpr std::string_view words_of_vessel_panel_remark[] = {"allowable_above_usual", "allowable_below_usual", "modulus_unusual", "poisson_unusual", "density_unusual", "thinner_than_sold", "thicker_than_sold", "nominal_thickness", "large_pane", "thick_for_its_size"};
}  // namespace
void io<::tankwright::vessel::panel_remark>::write(answer& out, const ::tankwright::vessel::panel_remark& v) { out.text(words_of_vessel_panel_remark[static_cast<std::size_t>(v)]); }

namespace {
constexpr std::string_view words_of_vessel_strip_spans[] = {"one", "three_or_more"};
}  // namespace
::tankwright::vessel::strip_spans io<::tankwright::vessel::strip_spans>::read(const given& in) { return static_cast<::tankwright::vessel::strip_spans>(in.word(words_of_vessel_strip_spans)); }

namespace {
constexpr std::string_view words_of_vessel_support_kind[] = {"pinned", "fixed"};
}  // namespace
::tankwright::vessel::support_kind io<::tankwright::vessel::support_kind>::read(const given& in) { return static_cast<::tankwright::vessel::support_kind>(in.word(words_of_vessel_support_kind)); }

::tankwright::vessel::envelope_volume io<::tankwright::vessel::envelope_volume>::read(const given& in) {
  if (std::optional<::tankwright::vessel::envelope_volume> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::vessel::envelope_volume(io<::tankwright::volume>::read(in));
}
void io<::tankwright::vessel::envelope_volume>::write(answer& out, const ::tankwright::vessel::envelope_volume& v) {
  out.quantity("envelope_volume", "m3", tw::core::si_number(v.value()));
}

::tankwright::vessel::free_volume io<::tankwright::vessel::free_volume>::read(const given& in) {
  if (std::optional<::tankwright::vessel::free_volume> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::vessel::free_volume(io<::tankwright::volume>::read(in));
}
void io<::tankwright::vessel::free_volume>::write(answer& out, const ::tankwright::vessel::free_volume& v) {
  out.quantity("free_volume", "m3", tw::core::si_number(v.value()));
}

::tankwright::vessel::inside io<::tankwright::vessel::inside>::read(const given& in) {
  if (std::optional<::tankwright::vessel::inside> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::vessel::inside(io<::tankwright::length>::read(in));
}
void io<::tankwright::vessel::inside>::write(answer& out, const ::tankwright::vessel::inside& v) {
  out.quantity("inside", "m", tw::core::si_number(v.value()));
}

::tankwright::vessel::net_volume io<::tankwright::vessel::net_volume>::read(const given& in) {
  if (std::optional<::tankwright::vessel::net_volume> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::vessel::net_volume(io<::tankwright::volume>::read(in));
}
void io<::tankwright::vessel::net_volume>::write(answer& out, const ::tankwright::vessel::net_volume& v) {
  out.quantity("net_volume", "m3", tw::core::si_number(v.value()));
}

::tankwright::vessel::outside io<::tankwright::vessel::outside>::read(const given& in) {
  if (std::optional<::tankwright::vessel::outside> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::vessel::outside(io<::tankwright::length>::read(in));
}

::tankwright::vessel::pore_volume io<::tankwright::vessel::pore_volume>::read(const given& in) {
  if (std::optional<::tankwright::vessel::pore_volume> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::vessel::pore_volume(io<::tankwright::volume>::read(in));
}
void io<::tankwright::vessel::pore_volume>::write(answer& out, const ::tankwright::vessel::pore_volume& v) {
  out.quantity("pore_volume", "m3", tw::core::si_number(v.value()));
}

::tankwright::vessel::shape io<::tankwright::vessel::shape>::read(const given& in) {
  if (std::optional<::tankwright::vessel::shape> by_formula; made(in, by_formula)) return *std::move(by_formula);
  in.only({});
  in.refuse_name({});
}
void io<::tankwright::vessel::shape>::write(answer& out, const ::tankwright::vessel::shape& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label());
  out.key("height");
  io<::tankwright::length>::write(out, v.height());
  out.key("capacity");
  io<::tankwright::volume>::write(out, v.capacity());
  out.end();
}

::tankwright::vessel::solid_volume io<::tankwright::vessel::solid_volume>::read(const given& in) {
  if (std::optional<::tankwright::vessel::solid_volume> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return ::tankwright::vessel::solid_volume(io<::tankwright::volume>::read(in));
}
void io<::tankwright::vessel::solid_volume>::write(answer& out, const ::tankwright::vessel::solid_volume& v) {
  out.quantity("solid_volume", "m3", tw::core::si_number(v.value()));
}

::tankwright::vessel::allowable_stress io<::tankwright::vessel::allowable_stress>::read(const given& in) {
  if (std::optional<::tankwright::vessel::allowable_stress> by_formula; made(in, by_formula)) return *std::move(by_formula);
  for (const auto& one : ::tankwright::vessel::annealed_glass_allowables) {
    if (in.is_named(one.name)) return one;
  }
  for (const auto& one : ::tankwright::vessel::annealed_glass_edges) {
    if (in.is_named(one.name)) return one;
  }
  return fields(in);
}
::tankwright::vessel::allowable_stress io<::tankwright::vessel::allowable_stress>::fields(const given& in) {
  static constexpr std::string_view known[] = {"name", "value", "basis", "read_as", "source"};
  in.only(known);
  const ::tankwright::vessel::allowable_stress v{.name = may_or<std::string_view>(in, "name", [] { return std::string_view{}; }), .value = must<::tankwright::pressure>(in, "value"), .basis = must<::tankwright::vessel::load_basis>(in, "basis"), .read_as = must<::tankwright::standing>(in, "read_as"), .source = may_or<std::string_view>(in, "source", [] { return std::string_view{}; })};
  return v;
}
void io<::tankwright::vessel::allowable_stress>::write(answer& out, const ::tankwright::vessel::allowable_stress& v) {
  out.begin();
  out.key("name");
  io<std::string_view>::write(out, v.name);
  out.key("value");
  io<::tankwright::pressure>::write(out, v.value);
  out.key("basis");
  io<::tankwright::vessel::load_basis>::write(out, v.basis);
  out.key("read_as");
  io<::tankwright::standing>::write(out, v.read_as);
  out.key("source");
  io<std::string_view>::write(out, v.source);
  out.end();
}

::tankwright::vessel::beam_section io<::tankwright::vessel::beam_section>::read(const given& in) {
  if (std::optional<::tankwright::vessel::beam_section> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::beam_section io<::tankwright::vessel::beam_section>::fields(const given& in) {
  static constexpr std::string_view known[] = {"area", "second_moment", "extreme_fibre"};
  in.only(known);
  const ::tankwright::vessel::beam_section v{.area = must<::tankwright::area>(in, "area"), .second_moment = must<::tankwright::second_moment_of_area>(in, "second_moment"), .extreme_fibre = must<::tankwright::length>(in, "extreme_fibre")};
  return v;
}
void io<::tankwright::vessel::beam_section>::write(answer& out, const ::tankwright::vessel::beam_section& v) {
  out.begin();
  out.key("area");
  io<::tankwright::area>::write(out, v.area);
  out.key("second_moment");
  io<::tankwright::second_moment_of_area>::write(out, v.second_moment);
  out.key("extreme_fibre");
  io<::tankwright::length>::write(out, v.extreme_fibre);
  out.end();
}
void io<::tankwright::vessel::beam_section>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::beam_support io<::tankwright::vessel::beam_support>::read(const given& in) {
  if (std::optional<::tankwright::vessel::beam_support> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::beam_support io<::tankwright::vessel::beam_support>::fields(const given& in) {
  static constexpr std::string_view known[] = {"at", "kind"};
  in.only(known);
  ::tankwright::vessel::beam_support v{.at = must<::tankwright::length>(in, "at")};
  if (in.has("kind")) v.kind = must<::tankwright::vessel::support_kind>(in, "kind");
  return v;
}
void io<::tankwright::vessel::beam_support>::defaults(double*& at) {
  constexpr double zeros[2] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::vessel::beam_support v{.at = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  io<::tankwright::vessel::support_kind>::put(v.kind, at);
}

::tankwright::vessel::point_load io<::tankwright::vessel::point_load>::read(const given& in) {
  if (std::optional<::tankwright::vessel::point_load> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::point_load io<::tankwright::vessel::point_load>::fields(const given& in) {
  static constexpr std::string_view known[] = {"load", "at", "label"};
  in.only(known);
  ::tankwright::vessel::point_load v{.load = must<::tankwright::force>(in, "load"), .at = must<::tankwright::length>(in, "at")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::spread_load io<::tankwright::vessel::spread_load>::read(const given& in) {
  if (std::optional<::tankwright::vessel::spread_load> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::spread_load io<::tankwright::vessel::spread_load>::fields(const given& in) {
  static constexpr std::string_view known[] = {"at_start", "at_end", "from", "to", "label"};
  in.only(known);
  ::tankwright::vessel::spread_load v{.at_start = must<::tankwright::line_load>(in, "at_start"), .at_end = must<::tankwright::line_load>(in, "at_end"), .from = must<::tankwright::length>(in, "from"), .to = must<::tankwright::length>(in, "to")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::beam io<::tankwright::vessel::beam>::read(const given& in) {
  if (std::optional<::tankwright::vessel::beam> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::beam io<::tankwright::vessel::beam>::fields(const given& in) {
  static constexpr std::string_view known[] = {"span", "section", "modulus", "supports", "points", "spreads", "pull", "label"};
  in.only(known);
  ::tankwright::vessel::beam v{.span = must<::tankwright::length>(in, "span"), .section = must<::tankwright::vessel::beam_section>(in, "section"), .modulus = must<::tankwright::pressure>(in, "modulus"), .supports = may_or<std::vector<::tankwright::vessel::beam_support>>(in, "supports", [] { return std::vector<::tankwright::vessel::beam_support>{}; })};
  if (in.has("points")) v.points = must<std::vector<::tankwright::vessel::point_load>>(in, "points");
  if (in.has("spreads")) v.spreads = must<std::vector<::tankwright::vessel::spread_load>>(in, "spreads");
  if (in.has("pull")) v.pull = must<::tankwright::force>(in, "pull");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::support_reaction io<::tankwright::vessel::support_reaction>::read(const given& in) {
  if (std::optional<::tankwright::vessel::support_reaction> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::support_reaction io<::tankwright::vessel::support_reaction>::fields(const given& in) {
  static constexpr std::string_view known[] = {"at", "up", "holding"};
  in.only(known);
  const ::tankwright::vessel::support_reaction v{.at = must<::tankwright::length>(in, "at"), .up = must<::tankwright::force>(in, "up"), .holding = must<::tankwright::energy>(in, "holding")};
  return v;
}
void io<::tankwright::vessel::support_reaction>::write(answer& out, const ::tankwright::vessel::support_reaction& v) {
  out.begin();
  out.key("at");
  io<::tankwright::length>::write(out, v.at);
  out.key("up");
  io<::tankwright::force>::write(out, v.up);
  out.key("holding");
  io<::tankwright::energy>::write(out, v.holding);
  out.end();
}
void io<::tankwright::vessel::support_reaction>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::detail::curve_term io<::tankwright::vessel::detail::curve_term>::read(const given& in) {
  if (std::optional<::tankwright::vessel::detail::curve_term> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::detail::curve_term io<::tankwright::vessel::detail::curve_term>::fields(const given& in) {
  static constexpr std::string_view known[] = {"a", "power", "coefficient"};
  in.only(known);
  const ::tankwright::vessel::detail::curve_term v{.a = must<double>(in, "a"), .power = must<int>(in, "power"), .coefficient = must<double>(in, "coefficient")};
  return v;
}
void io<::tankwright::vessel::detail::curve_term>::write(answer& out, const ::tankwright::vessel::detail::curve_term& v) {
  out.begin();
  out.key("a");
  io<double>::write(out, v.a);
  out.key("power");
  io<int>::write(out, v.power);
  out.key("coefficient");
  io<double>::write(out, v.coefficient);
  out.end();
}
void io<::tankwright::vessel::detail::curve_term>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::detail::deflection_curve io<::tankwright::vessel::detail::deflection_curve>::read(const given& in) {
  if (std::optional<::tankwright::vessel::detail::deflection_curve> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::detail::deflection_curve io<::tankwright::vessel::detail::deflection_curve>::fields(const given& in) {
  static constexpr std::string_view known[] = {"start", "slope", "terms"};
  in.only(known);
  ::tankwright::vessel::detail::deflection_curve v{.terms = may_or<std::vector<::tankwright::vessel::detail::curve_term>>(in, "terms", [] { return std::vector<::tankwright::vessel::detail::curve_term>{}; })};
  if (in.has("start")) v.start = must<double>(in, "start");
  if (in.has("slope")) v.slope = must<double>(in, "slope");
  return v;
}
void io<::tankwright::vessel::detail::deflection_curve>::write(answer& out, const ::tankwright::vessel::detail::deflection_curve& v) {
  out.begin();
  out.key("start");
  io<double>::write(out, v.start);
  out.key("slope");
  io<double>::write(out, v.slope);
  out.key("terms");
  io<std::vector<::tankwright::vessel::detail::curve_term>>::write(out, v.terms);
  out.end();
}

::tankwright::vessel::detail::solved_beam io<::tankwright::vessel::detail::solved_beam>::read(const given& in) {
  if (std::optional<::tankwright::vessel::detail::solved_beam> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::detail::solved_beam io<::tankwright::vessel::detail::solved_beam>::fields(const given& in) {
  static constexpr std::string_view known[] = {"curve", "span", "rigidity"};
  in.only(known);
  const ::tankwright::vessel::detail::solved_beam v{.curve = must<::tankwright::vessel::detail::deflection_curve>(in, "curve"), .span = must<double>(in, "span"), .rigidity = must<double>(in, "rigidity")};
  return v;
}
void io<::tankwright::vessel::detail::solved_beam>::write(answer& out, const ::tankwright::vessel::detail::solved_beam& v) {
  out.begin();
  out.key("curve");
  io<::tankwright::vessel::detail::deflection_curve>::write(out, v.curve);
  out.key("span");
  io<double>::write(out, v.span);
  out.key("rigidity");
  io<double>::write(out, v.rigidity);
  out.end();
}

::tankwright::vessel::beam_result io<::tankwright::vessel::beam_result>::read(const given& in) {
  if (std::optional<::tankwright::vessel::beam_result> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::beam_result io<::tankwright::vessel::beam_result>::fields(const given& in) {
  static constexpr std::string_view known[] = {"reactions", "largest_moment", "moment_at", "deflection", "deflection_at", "bending", "axial", "combined", "caution", "solved"};
  in.only(known);
  const ::tankwright::vessel::beam_result v{.reactions = may_or<std::vector<::tankwright::vessel::support_reaction>>(in, "reactions", [] { return std::vector<::tankwright::vessel::support_reaction>{}; }), .largest_moment = must<::tankwright::energy>(in, "largest_moment"), .moment_at = must<::tankwright::length>(in, "moment_at"), .deflection = must<::tankwright::length>(in, "deflection"), .deflection_at = must<::tankwright::length>(in, "deflection_at"), .bending = must<::tankwright::pressure>(in, "bending"), .axial = must<::tankwright::pressure>(in, "axial"), .combined = must<::tankwright::pressure>(in, "combined"), .caution = {}, .solved = must<::tankwright::vessel::detail::solved_beam>(in, "solved")};
  return v;
}
void io<::tankwright::vessel::beam_result>::write(answer& out, const ::tankwright::vessel::beam_result& v) {
  out.begin();
  out.key("reactions");
  io<std::vector<::tankwright::vessel::support_reaction>>::write(out, v.reactions);
  out.key("largest_moment");
  io<::tankwright::energy>::write(out, v.largest_moment);
  out.key("moment_at");
  io<::tankwright::length>::write(out, v.moment_at);
  out.key("deflection");
  io<::tankwright::length>::write(out, v.deflection);
  out.key("deflection_at");
  io<::tankwright::length>::write(out, v.deflection_at);
  out.key("bending");
  io<::tankwright::pressure>::write(out, v.bending);
  out.key("axial");
  io<::tankwright::pressure>::write(out, v.axial);
  out.key("combined");
  io<::tankwright::pressure>::write(out, v.combined);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.key("solved");
  io<::tankwright::vessel::detail::solved_beam>::write(out, v.solved);
  out.end();
}

void io<::tankwright::vessel::beam_station>::write(answer& out, const ::tankwright::vessel::beam_station& v) {
  out.begin();
  out.key("deflection");
  io<::tankwright::length>::write(out, v.deflection);
  out.key("slope");
  io<::tankwright::angle>::write(out, v.slope);
  out.key("moment");
  io<::tankwright::energy>::write(out, v.moment);
  out.key("shear");
  io<::tankwright::force>::write(out, v.shear);
  out.end();
}

::tankwright::vessel::bed_slope io<::tankwright::vessel::bed_slope>::read(const given& in) {
  if (std::optional<::tankwright::vessel::bed_slope> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::bed_slope io<::tankwright::vessel::bed_slope>::fields(const given& in) {
  static constexpr std::string_view known[] = {"shallow_end", "deep_end", "run", "repose"};
  in.only(known);
  ::tankwright::vessel::bed_slope v{.shallow_end = must<::tankwright::length>(in, "shallow_end"), .deep_end = must<::tankwright::length>(in, "deep_end"), .run = must<::tankwright::length>(in, "run")};
  if (in.has("repose")) v.repose = must<::tankwright::angle>(in, "repose");
  return v;
}
void io<::tankwright::vessel::bed_slope>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::vessel::bed_slope v{.shallow_end = io<::tankwright::length>::take(zero), .deep_end = io<::tankwright::length>::take(zero), .run = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::angle>::put(v.repose, at);
}

::tankwright::vessel::bow_front_size io<::tankwright::vessel::bow_front_size>::read(const given& in) {
  if (std::optional<::tankwright::vessel::bow_front_size> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::bow_front_size io<::tankwright::vessel::bow_front_size>::fields(const given& in) {
  static constexpr std::string_view known[] = {"width", "depth_at_ends", "bow", "height", "label"};
  in.only(known);
  ::tankwright::vessel::bow_front_size v{.width = must<::tankwright::vessel::inside>(in, "width"), .depth_at_ends = must<::tankwright::vessel::inside>(in, "depth_at_ends"), .bow = must<::tankwright::vessel::inside>(in, "bow"), .height = must<::tankwright::vessel::inside>(in, "height")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::box_size io<::tankwright::vessel::box_size>::read(const given& in) {
  if (std::optional<::tankwright::vessel::box_size> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::box_size io<::tankwright::vessel::box_size>::fields(const given& in) {
  static constexpr std::string_view known[] = {"length", "width", "height", "label"};
  in.only(known);
  ::tankwright::vessel::box_size v{.length = must<::tankwright::vessel::inside>(in, "length"), .width = must<::tankwright::vessel::inside>(in, "width"), .height = must<::tankwright::vessel::inside>(in, "height")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

void io<::tankwright::vessel::brace_pull>::write(answer& out, const ::tankwright::vessel::brace_pull& v) {
  out.begin();
  out.key("braces");
  io<std::vector<::tankwright::force>>::write(out, v.braces);
  out.key("largest");
  io<::tankwright::force>::write(out, v.largest);
  out.key("by_tributary_length");
  io<::tankwright::force>::write(out, v.by_tributary_length);
  out.key("load");
  io<::tankwright::line_load>::write(out, v.load);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::vessel::braced_rail io<::tankwright::vessel::braced_rail>::read(const given& in) {
  if (std::optional<::tankwright::vessel::braced_rail> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::braced_rail io<::tankwright::vessel::braced_rail>::fields(const given& in) {
  static constexpr std::string_view known[] = {"rail", "braces", "load"};
  in.only(known);
  const ::tankwright::vessel::braced_rail v{.rail = must<::tankwright::length>(in, "rail"), .braces = must<int>(in, "braces"), .load = must<::tankwright::line_load>(in, "load")};
  return v;
}
void io<::tankwright::vessel::braced_rail>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::breakage_question io<::tankwright::vessel::breakage_question>::read(const given& in) {
  if (std::optional<::tankwright::vessel::breakage_question> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::breakage_question io<::tankwright::vessel::breakage_question>::fields(const given& in) {
  static constexpr std::string_view known[] = {"breakage_probability", "stressed_area", "lasting"};
  in.only(known);
  const ::tankwright::vessel::breakage_question v{.breakage_probability = must<::tankwright::proportion>(in, "breakage_probability"), .stressed_area = must<::tankwright::area>(in, "stressed_area"), .lasting = must<::tankwright::duration>(in, "lasting")};
  return v;
}
void io<::tankwright::vessel::breakage_question>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::bulge_gauge io<::tankwright::vessel::bulge_gauge>::read(const given& in) {
  if (std::optional<::tankwright::vessel::bulge_gauge> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("straight_edge_with_feelers")) return ::tankwright::vessel::straight_edge_with_feelers;
  if (in.is_named("straight_edge_by_eye")) return ::tankwright::vessel::straight_edge_by_eye;
  if (in.is_named("dial_indicator")) return ::tankwright::vessel::dial_indicator;
  static constexpr std::string_view known[] = {"straight_edge_with_feelers", "straight_edge_by_eye", "dial_indicator"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::vessel::bulge_gauge io<::tankwright::vessel::bulge_gauge>::fields(const given& in) {
  static constexpr std::string_view known[] = {"name", "resolution", "read_as", "source"};
  in.only(known);
  const ::tankwright::vessel::bulge_gauge v{.name = may_or<std::string_view>(in, "name", [] { return std::string_view{}; }), .resolution = must<::tankwright::length>(in, "resolution"), .read_as = must<::tankwright::standing>(in, "read_as"), .source = may_or<std::string_view>(in, "source", [] { return std::string_view{}; })};
  return v;
}

::tankwright::vessel::bulge_question io<::tankwright::vessel::bulge_question>::read(const given& in) {
  if (std::optional<::tankwright::vessel::bulge_question> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::bulge_question io<::tankwright::vessel::bulge_question>::fields(const given& in) {
  static constexpr std::string_view known[] = {"expected", "gauge"};
  in.only(known);
  ::tankwright::vessel::bulge_question v{.expected = must<::tankwright::length>(in, "expected")};
  if (in.has("gauge")) v.gauge = must<::tankwright::vessel::bulge_gauge>(in, "gauge");
  return v;
}

void io<::tankwright::vessel::bulge_reading>::write(answer& out, const ::tankwright::vessel::bulge_reading& v) {
  out.begin();
  out.key("expected");
  io<std::optional<::tankwright::length>>::write(out, v.expected);
  out.key("stop_at");
  io<::tankwright::length>::write(out, v.stop_at);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::vessel::bulk_and_grain io<::tankwright::vessel::bulk_and_grain>::read(const given& in) {
  if (std::optional<::tankwright::vessel::bulk_and_grain> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::bulk_and_grain io<::tankwright::vessel::bulk_and_grain>::fields(const given& in) {
  static constexpr std::string_view known[] = {"dry_bulk", "grain"};
  in.only(known);
  const ::tankwright::vessel::bulk_and_grain v{.dry_bulk = must<::tankwright::mass_density>(in, "dry_bulk"), .grain = must<::tankwright::mass_density>(in, "grain")};
  return v;
}
void io<::tankwright::vessel::bulk_and_grain>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::bulkhead_hole io<::tankwright::vessel::bulkhead_hole>::read(const given& in) {
  if (std::optional<::tankwright::vessel::bulkhead_hole> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::bulkhead_hole io<::tankwright::vessel::bulkhead_hole>::fields(const given& in) {
  static constexpr std::string_view known[] = {"depth", "diameter", "water_density", "label"};
  in.only(known);
  ::tankwright::vessel::bulkhead_hole v{.depth = must<::tankwright::length>(in, "depth"), .diameter = must<::tankwright::length>(in, "diameter"), .water_density = must<::tankwright::mass_density>(in, "water_density")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

void io<::tankwright::vessel::bulkhead_result>::write(answer& out, const ::tankwright::vessel::bulkhead_result& v) {
  out.begin();
  out.key("pressure");
  io<::tankwright::pressure>::write(out, v.pressure);
  out.key("blow_off");
  io<::tankwright::force>::write(out, v.blow_off);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::vessel::buoyant_weighing io<::tankwright::vessel::buoyant_weighing>::read(const given& in) {
  if (std::optional<::tankwright::vessel::buoyant_weighing> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::buoyant_weighing io<::tankwright::vessel::buoyant_weighing>::fields(const given& in) {
  static constexpr std::string_view known[] = {"submerged_mass", "grain_density", "water_density"};
  in.only(known);
  const ::tankwright::vessel::buoyant_weighing v{.submerged_mass = must<::tankwright::mass>(in, "submerged_mass"), .grain_density = must<::tankwright::mass_density>(in, "grain_density"), .water_density = must<::tankwright::mass_density>(in, "water_density")};
  return v;
}
void io<::tankwright::vessel::buoyant_weighing>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::corner io<::tankwright::vessel::corner>::read(const given& in) {
  if (std::optional<::tankwright::vessel::corner> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::corner io<::tankwright::vessel::corner>::fields(const given& in) {
  static constexpr std::string_view known[] = {"x", "y"};
  in.only(known);
  const ::tankwright::vessel::corner v{.x = must<::tankwright::length>(in, "x"), .y = must<::tankwright::length>(in, "y")};
  return v;
}
void io<::tankwright::vessel::corner>::write(answer& out, const ::tankwright::vessel::corner& v) {
  out.begin();
  out.key("x");
  io<::tankwright::length>::write(out, v.x);
  out.key("y");
  io<::tankwright::length>::write(out, v.y);
  out.end();
}
void io<::tankwright::vessel::corner>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::counted_drops io<::tankwright::vessel::counted_drops>::read(const given& in) {
  if (std::optional<::tankwright::vessel::counted_drops> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::counted_drops io<::tankwright::vessel::counted_drops>::fields(const given& in) {
  static constexpr std::string_view known[] = {"drops", "over", "drop"};
  in.only(known);
  ::tankwright::vessel::counted_drops v{.drops = must<int>(in, "drops"), .over = must<::tankwright::duration>(in, "over")};
  if (in.has("drop")) v.drop = must<::tankwright::estimate<::tankwright::volume>>(in, "drop");
  return v;
}
void io<::tankwright::vessel::counted_drops>::defaults(double*& at) {
  constexpr double zeros[5] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::vessel::counted_drops v{.drops = io<int>::take(zero), .over = io<::tankwright::duration>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::estimate<::tankwright::volume>>::put(v.drop, at);
}

::tankwright::vessel::level_reading io<::tankwright::vessel::level_reading>::read(const given& in) {
  if (std::optional<::tankwright::vessel::level_reading> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::level_reading io<::tankwright::vessel::level_reading>::fields(const given& in) {
  static constexpr std::string_view known[] = {"at", "level", "water", "pan", "reader"};
  in.only(known);
  ::tankwright::vessel::level_reading v{.at = must<::tankwright::duration>(in, "at"), .level = must<::tankwright::length>(in, "level")};
  if (in.has("water")) v.water = must<std::optional<::tankwright::temperature>>(in, "water");
  if (in.has("pan")) v.pan = must<std::optional<::tankwright::length>>(in, "pan");
  if (in.has("reader")) v.reader = must<std::string>(in, "reader");
  return v;
}

::tankwright::vessel::tightness_criterion io<::tankwright::vessel::tightness_criterion>::read(const given& in) {
  if (std::optional<::tankwright::vessel::tightness_criterion> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("awwa_d110")) return ::tankwright::vessel::awwa_d110;
  if (in.is_named("awwa_1978")) return ::tankwright::vessel::awwa_1978;
  if (in.is_named("bs_5337")) return ::tankwright::vessel::bs_5337;
  if (in.is_named("aci_350_025")) return ::tankwright::vessel::aci_350_025;
  static constexpr std::string_view known[] = {"awwa_d110", "awwa_1978", "bs_5337", "aci_350_025"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::vessel::tightness_criterion io<::tankwright::vessel::tightness_criterion>::fields(const given& in) {
  static constexpr std::string_view known[] = {"name", "share_per_day", "total_fall", "least_duration", "source"};
  in.only(known);
  ::tankwright::vessel::tightness_criterion v{.name = may_or<std::string_view>(in, "name", [] { return std::string_view{}; }), .least_duration = must<::tankwright::duration>(in, "least_duration"), .source = must<::tankwright::citation>(in, "source")};
  if (in.has("share_per_day")) v.share_per_day = must<std::optional<::tankwright::proportion>>(in, "share_per_day");
  if (in.has("total_fall")) v.total_fall = must<std::optional<::tankwright::length>>(in, "total_fall");
  return v;
}

::tankwright::vessel::leak_test io<::tankwright::vessel::leak_test>::read(const given& in) {
  if (std::optional<::tankwright::vessel::leak_test> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::leak_test io<::tankwright::vessel::leak_test>::fields(const given& in) {
  static constexpr std::string_view known[] = {"surface", "depth", "resolution", "readings", "evaporation", "salinity", "confidence", "leak_that_matters", "criterion", "capacity", "label"};
  in.only(known);
  ::tankwright::vessel::leak_test v{.surface = must<::tankwright::area>(in, "surface"), .depth = must<::tankwright::length>(in, "depth"), .resolution = must<::tankwright::length>(in, "resolution")};
  if (in.has("readings")) v.readings = must<std::vector<::tankwright::vessel::level_reading>>(in, "readings");
  if (in.has("evaporation")) v.evaporation = must<std::optional<::tankwright::estimate<::tankwright::velocity>>>(in, "evaporation");
  if (in.has("salinity")) v.salinity = must<::tankwright::practical_salinity>(in, "salinity");
  if (in.has("confidence")) v.confidence = must<::tankwright::proportion>(in, "confidence");
  if (in.has("leak_that_matters")) v.leak_that_matters = must<::tankwright::flow_rate>(in, "leak_that_matters");
  if (in.has("criterion")) v.criterion = must<std::optional<::tankwright::vessel::tightness_criterion>>(in, "criterion");
  if (in.has("capacity")) v.capacity = must<std::optional<::tankwright::volume>>(in, "capacity");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::cover_comparison io<::tankwright::vessel::cover_comparison>::read(const given& in) {
  if (std::optional<::tankwright::vessel::cover_comparison> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::cover_comparison io<::tankwright::vessel::cover_comparison>::fields(const given& in) {
  static constexpr std::string_view known[] = {"covered", "open", "let_through"};
  in.only(known);
  const ::tankwright::vessel::cover_comparison v{.covered = must<::tankwright::vessel::leak_test>(in, "covered"), .open = must<::tankwright::vessel::leak_test>(in, "open"), .let_through = must<::tankwright::estimate<::tankwright::proportion>>(in, "let_through")};
  return v;
}

void io<::tankwright::vessel::cover_result>::write(answer& out, const ::tankwright::vessel::cover_result& v) {
  out.begin();
  out.key("leak");
  io<::tankwright::estimate<::tankwright::flow_rate>>::write(out, v.leak);
  out.key("evaporation");
  io<::tankwright::estimate<::tankwright::velocity>>::write(out, v.evaporation);
  out.key("chance_without_leak");
  io<::tankwright::proportion>::write(out, v.chance_without_leak);
  out.key("answer");
  io<::tankwright::vessel::leak_answer>::write(out, v.answer);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::vessel::criterion_outcome>::write(answer& out, const ::tankwright::vessel::criterion_outcome& v) {
  out.begin();
  out.key("allowed");
  io<::tankwright::flow_rate>::write(out, v.allowed);
  out.key("room");
  io<::tankwright::flow_rate>::write(out, v.room);
  out.key("missing");
  io<::tankwright::duration>::write(out, v.missing);
  out.end();
}

::tankwright::vessel::deflection_limit io<::tankwright::vessel::deflection_limit>::read(const given& in) {
  if (std::optional<::tankwright::vessel::deflection_limit> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("glass_deflection_limit")) return ::tankwright::vessel::glass_deflection_limit;
  if (in.is_named("acrylic_deflection_limit")) return ::tankwright::vessel::acrylic_deflection_limit;
  static constexpr std::string_view known[] = {"glass_deflection_limit", "acrylic_deflection_limit"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::vessel::deflection_limit io<::tankwright::vessel::deflection_limit>::fields(const given& in) {
  static constexpr std::string_view known[] = {"span_over_deflection", "read_as", "source", "at_most"};
  in.only(known);
  ::tankwright::vessel::deflection_limit v{.span_over_deflection = must<double>(in, "span_over_deflection"), .read_as = must<::tankwright::standing>(in, "read_as"), .source = may_or<std::string_view>(in, "source", [] { return std::string_view{}; })};
  if (in.has("at_most")) v.at_most = must<std::optional<::tankwright::length>>(in, "at_most");
  return v;
}

void io<::tankwright::vessel::drip_result>::write(answer& out, const ::tankwright::vessel::drip_result& v) {
  out.begin();
  out.key("leak");
  io<::tankwright::estimate<::tankwright::flow_rate>>::write(out, v.leak);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::vessel::empty_sump io<::tankwright::vessel::empty_sump>::read(const given& in) {
  if (std::optional<::tankwright::vessel::empty_sump> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::empty_sump io<::tankwright::vessel::empty_sump>::fields(const given& in) {
  static constexpr std::string_view known[] = {"horizontal_area", "flood_depth", "mass_of_sump", "water_density", "label"};
  in.only(known);
  ::tankwright::vessel::empty_sump v{.horizontal_area = must<::tankwright::area>(in, "horizontal_area"), .flood_depth = must<::tankwright::length>(in, "flood_depth"), .mass_of_sump = must<::tankwright::mass>(in, "mass_of_sump"), .water_density = must<::tankwright::mass_density>(in, "water_density")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::equipment_size io<::tankwright::vessel::equipment_size>::read(const given& in) {
  if (std::optional<::tankwright::vessel::equipment_size> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::equipment_size io<::tankwright::vessel::equipment_size>::fields(const given& in) {
  static constexpr std::string_view known[] = {"outside", "mass", "label"};
  in.only(known);
  ::tankwright::vessel::equipment_size v{.outside = must<::tankwright::volume>(in, "outside"), .mass = must<::tankwright::mass>(in, "mass")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

void io<::tankwright::vessel::moment_at>::write(answer& out, const ::tankwright::vessel::moment_at& v) {
  out.begin();
  out.key("value");
  io<::tankwright::force>::write(out, v.value);
  out.key("from_side");
  io<::tankwright::length>::write(out, v.from_side);
  out.key("from_below");
  io<::tankwright::length>::write(out, v.from_below);
  out.end();
}

void io<::tankwright::vessel::panel_result>::write(answer& out, const ::tankwright::vessel::panel_result& v) {
  out.begin();
  out.key("at_bottom");
  io<::tankwright::pressure>::write(out, v.at_bottom);
  out.key("at_top");
  io<::tankwright::pressure>::write(out, v.at_top);
  out.key("force");
  io<::tankwright::force>::write(out, v.force);
  out.key("centre");
  io<::tankwright::length>::write(out, v.centre);
  out.key("across");
  io<::tankwright::vessel::moment_at>::write(out, v.across);
  out.key("up");
  io<::tankwright::vessel::moment_at>::write(out, v.up);
  out.key("twist");
  io<::tankwright::vessel::moment_at>::write(out, v.twist);
  out.key("governing");
  io<::tankwright::vessel::moment_at>::write(out, v.governing);
  out.key("stress");
  io<::tankwright::pressure>::write(out, v.stress);
  out.key("deflection");
  io<::tankwright::length>::write(out, v.deflection);
  out.key("deflection_from_below");
  io<::tankwright::length>::write(out, v.deflection_from_below);
  out.key("long_term_deflection");
  io<::tankwright::estimate<::tankwright::length>>::write(out, v.long_term_deflection);
  out.key("allowable");
  io<::tankwright::vessel::allowable_stress>::write(out, v.allowable);
  out.key("utilisation");
  io<double>::write(out, v.utilisation);
  out.key("thickness_needed");
  io<::tankwright::length>::write(out, v.thickness_needed);
  out.key("deflection_limit");
  io<::tankwright::length>::write(out, v.deflection_limit);
  out.key("deflection_utilisation");
  io<double>::write(out, v.deflection_utilisation);
  out.key("thickness_for_deflection");
  io<::tankwright::length>::write(out, v.thickness_for_deflection);
  out.key("deflection_governs");
  io<bool>::write(out, v.deflection_governs);
  out.key("beyond_small_deflection");
  io<bool>::write(out, v.beyond_small_deflection);
  out.key("too_thick_for_theory");
  io<bool>::write(out, v.too_thick_for_theory);
  out.key("note");
  io<std::string_view>::write(out, v.note);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::vessel::fill_stage>::write(answer& out, const ::tankwright::vessel::fill_stage& v) {
  out.begin();
  out.key("level");
  io<::tankwright::length>::write(out, v.level);
  out.key("panel");
  io<::tankwright::vessel::panel_result>::write(out, v.panel);
  out.end();
}

::tankwright::vessel::floor_live_load io<::tankwright::vessel::floor_live_load>::read(const given& in) {
  if (std::optional<::tankwright::vessel::floor_live_load> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("living_rooms")) return ::tankwright::vessel::living_rooms;
  if (in.is_named("sleeping_rooms")) return ::tankwright::vessel::sleeping_rooms;
  static constexpr std::string_view known[] = {"living_rooms", "sleeping_rooms"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::vessel::floor_live_load io<::tankwright::vessel::floor_live_load>::fields(const given& in) {
  static constexpr std::string_view known[] = {"name", "value", "read_as", "source"};
  in.only(known);
  const ::tankwright::vessel::floor_live_load v{.name = may_or<std::string_view>(in, "name", [] { return std::string_view{}; }), .value = must<::tankwright::pressure>(in, "value"), .read_as = must<::tankwright::standing>(in, "read_as"), .source = may_or<std::string_view>(in, "source", [] { return std::string_view{}; })};
  return v;
}
void io<::tankwright::vessel::floor_live_load>::write(answer& out, const ::tankwright::vessel::floor_live_load& v) {
  out.begin();
  out.key("name");
  io<std::string_view>::write(out, v.name);
  out.key("value");
  io<::tankwright::pressure>::write(out, v.value);
  out.key("read_as");
  io<::tankwright::standing>::write(out, v.read_as);
  out.key("source");
  io<std::string_view>::write(out, v.source);
  out.end();
}

::tankwright::vessel::floor_question io<::tankwright::vessel::floor_question>::read(const given& in) {
  if (std::optional<::tankwright::vessel::floor_question> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::floor_question io<::tankwright::vessel::floor_question>::fields(const given& in) {
  static constexpr std::string_view known[] = {"total", "footprint", "bearing", "code", "label"};
  in.only(known);
  ::tankwright::vessel::floor_question v{.total = must<::tankwright::mass>(in, "total"), .footprint = must<::tankwright::area>(in, "footprint")};
  if (in.has("bearing")) v.bearing = must<std::optional<::tankwright::area>>(in, "bearing");
  if (in.has("code")) v.code = must<::tankwright::vessel::floor_live_load>(in, "code");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

void io<::tankwright::vessel::floor_result>::write(answer& out, const ::tankwright::vessel::floor_result& v) {
  out.begin();
  out.key("weight");
  io<::tankwright::force>::write(out, v.weight);
  out.key("spread");
  io<::tankwright::pressure>::write(out, v.spread);
  out.key("under_feet");
  io<::tankwright::pressure>::write(out, v.under_feet);
  out.key("code");
  io<::tankwright::vessel::floor_live_load>::write(out, v.code);
  out.key("times_code");
  io<double>::write(out, v.times_code);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::vessel::frustum_size io<::tankwright::vessel::frustum_size>::read(const given& in) {
  if (std::optional<::tankwright::vessel::frustum_size> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::frustum_size io<::tankwright::vessel::frustum_size>::fields(const given& in) {
  static constexpr std::string_view known[] = {"bottom_diameter", "top_diameter", "height", "label"};
  in.only(known);
  ::tankwright::vessel::frustum_size v{.bottom_diameter = must<::tankwright::vessel::inside>(in, "bottom_diameter"), .top_diameter = must<::tankwright::vessel::inside>(in, "top_diameter"), .height = must<::tankwright::vessel::inside>(in, "height")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::gasket_material io<::tankwright::vessel::gasket_material>::read(const given& in) {
  if (std::optional<::tankwright::vessel::gasket_material> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("soft_elastomer")) return ::tankwright::vessel::soft_elastomer;
  if (in.is_named("hard_elastomer")) return ::tankwright::vessel::hard_elastomer;
  static constexpr std::string_view known[] = {"soft_elastomer", "hard_elastomer"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::vessel::gasket_material io<::tankwright::vessel::gasket_material>::fields(const given& in) {
  static constexpr std::string_view known[] = {"name", "factor", "seating", "read_as", "source"};
  in.only(known);
  const ::tankwright::vessel::gasket_material v{.name = may_or<std::string_view>(in, "name", [] { return std::string_view{}; }), .factor = must<double>(in, "factor"), .seating = must<::tankwright::pressure>(in, "seating"), .read_as = must<::tankwright::standing>(in, "read_as"), .source = may_or<std::string_view>(in, "source", [] { return std::string_view{}; })};
  return v;
}

void io<::tankwright::vessel::gasket_result>::write(answer& out, const ::tankwright::vessel::gasket_result& v) {
  out.begin();
  out.key("in_service");
  io<::tankwright::force>::write(out, v.in_service);
  out.key("to_seat");
  io<::tankwright::force>::write(out, v.to_seat);
  out.key("governing");
  io<::tankwright::force>::write(out, v.governing);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::vessel::gasket_ring io<::tankwright::vessel::gasket_ring>::read(const given& in) {
  if (std::optional<::tankwright::vessel::gasket_ring> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::gasket_ring io<::tankwright::vessel::gasket_ring>::fields(const given& in) {
  static constexpr std::string_view known[] = {"mean_diameter", "effective_width", "pressure", "material", "label"};
  in.only(known);
  ::tankwright::vessel::gasket_ring v{.mean_diameter = must<::tankwright::length>(in, "mean_diameter"), .effective_width = must<::tankwright::length>(in, "effective_width"), .pressure = must<::tankwright::pressure>(in, "pressure"), .material = must<::tankwright::vessel::gasket_material>(in, "material")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::grains io<::tankwright::vessel::grains>::read(const given& in) {
  if (std::optional<::tankwright::vessel::grains> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("aragonite_sand")) return ::tankwright::vessel::aragonite_sand;
  if (in.is_named("quartz_sand")) return ::tankwright::vessel::quartz_sand;
  if (in.is_named("reef_rock")) return ::tankwright::vessel::reef_rock;
  if (in.is_named("coral_branch_tips")) return ::tankwright::vessel::coral_branch_tips;
  static constexpr std::string_view known[] = {"aragonite_sand", "quartz_sand", "reef_rock", "coral_branch_tips"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::vessel::grains io<::tankwright::vessel::grains>::fields(const given& in) {
  static constexpr std::string_view known[] = {"name", "grain_density", "pores", "read_as", "source"};
  in.only(known);
  const ::tankwright::vessel::grains v{.name = may_or<std::string_view>(in, "name", [] { return std::string_view{}; }), .grain_density = must<::tankwright::estimate<::tankwright::mass_density>>(in, "grain_density"), .pores = must<::tankwright::estimate<::tankwright::porosity>>(in, "pores"), .read_as = must<::tankwright::standing>(in, "read_as"), .source = may_or<std::string_view>(in, "source", [] { return std::string_view{}; })};
  return v;
}

::tankwright::vessel::hand_lift io<::tankwright::vessel::hand_lift>::read(const given& in) {
  if (std::optional<::tankwright::vessel::hand_lift> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::hand_lift io<::tankwright::vessel::hand_lift>::fields(const given& in) {
  static constexpr std::string_view known[] = {"reach", "height", "travel", "coupling"};
  in.only(known);
  ::tankwright::vessel::hand_lift v{.reach = must<::tankwright::length>(in, "reach"), .height = must<::tankwright::length>(in, "height")};
  if (in.has("travel")) v.travel = must<::tankwright::length>(in, "travel");
  if (in.has("coupling")) v.coupling = must<double>(in, "coupling");
  return v;
}
void io<::tankwright::vessel::hand_lift>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::vessel::hand_lift v{.reach = io<::tankwright::length>::take(zero), .height = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::length>::put(v.travel, at);
  io<double>::put(v.coupling, at);
}

::tankwright::vessel::hole io<::tankwright::vessel::hole>::read(const given& in) {
  if (std::optional<::tankwright::vessel::hole> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::hole io<::tankwright::vessel::hole>::fields(const given& in) {
  static constexpr std::string_view known[] = {"diameter", "depth", "discharge_coefficient"};
  in.only(known);
  ::tankwright::vessel::hole v{.diameter = must<::tankwright::length>(in, "diameter"), .depth = must<::tankwright::length>(in, "depth")};
  if (in.has("discharge_coefficient")) v.discharge_coefficient = must<double>(in, "discharge_coefficient");
  return v;
}
void io<::tankwright::vessel::hole>::defaults(double*& at) {
  constexpr double zeros[3] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::vessel::hole v{.diameter = io<::tankwright::length>::take(zero), .depth = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<double>::put(v.discharge_coefficient, at);
}

::tankwright::vessel::item io<::tankwright::vessel::item>::read(const given& in) {
  if (std::optional<::tankwright::vessel::item> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::item io<::tankwright::vessel::item>::fields(const given& in) {
  static constexpr std::string_view known[] = {"label", "solids", "pores", "envelope", "dry_mass"};
  in.only(known);
  const ::tankwright::vessel::item v{.label = may_or<std::string>(in, "label", [] { return std::string{}; }), .solids = must<::tankwright::estimate<::tankwright::vessel::solid_volume>>(in, "solids"), .pores = must<::tankwright::estimate<::tankwright::vessel::pore_volume>>(in, "pores"), .envelope = must<::tankwright::estimate<::tankwright::vessel::envelope_volume>>(in, "envelope"), .dry_mass = must<::tankwright::estimate<::tankwright::mass>>(in, "dry_mass")};
  return v;
}
void io<::tankwright::vessel::item>::write(answer& out, const ::tankwright::vessel::item& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("solids");
  io<::tankwright::estimate<::tankwright::vessel::solid_volume>>::write(out, v.solids);
  out.key("pores");
  io<::tankwright::estimate<::tankwright::vessel::pore_volume>>::write(out, v.pores);
  out.key("envelope");
  io<::tankwright::estimate<::tankwright::vessel::envelope_volume>>::write(out, v.envelope);
  out.key("dry_mass");
  io<::tankwright::estimate<::tankwright::mass>>::write(out, v.dry_mass);
  out.end();
}

void io<::tankwright::vessel::item_weight>::write(answer& out, const ::tankwright::vessel::item_weight& v) {
  out.begin();
  out.key("dry");
  io<::tankwright::estimate<::tankwright::mass>>::write(out, v.dry);
  out.key("wet");
  io<::tankwright::estimate<::tankwright::mass>>::write(out, v.wet);
  out.key("submerged");
  io<::tankwright::estimate<::tankwright::mass>>::write(out, v.submerged);
  out.end();
}

::tankwright::vessel::leak_test_plan io<::tankwright::vessel::leak_test_plan>::read(const given& in) {
  if (std::optional<::tankwright::vessel::leak_test_plan> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::leak_test_plan io<::tankwright::vessel::leak_test_plan>::fields(const given& in) {
  static constexpr std::string_view known[] = {"surface", "resolution", "scatter", "readings_per_day", "pan", "evaporation", "confidence", "power"};
  in.only(known);
  ::tankwright::vessel::leak_test_plan v{.surface = must<::tankwright::area>(in, "surface"), .resolution = must<::tankwright::length>(in, "resolution")};
  if (in.has("scatter")) v.scatter = must<::tankwright::length>(in, "scatter");
  if (in.has("readings_per_day")) v.readings_per_day = must<double>(in, "readings_per_day");
  if (in.has("pan")) v.pan = must<bool>(in, "pan");
  if (in.has("evaporation")) v.evaporation = must<::tankwright::estimate<::tankwright::velocity>>(in, "evaporation");
  if (in.has("confidence")) v.confidence = must<::tankwright::proportion>(in, "confidence");
  if (in.has("power")) v.power = must<::tankwright::proportion>(in, "power");
  return v;
}
void io<::tankwright::vessel::leak_test_plan>::defaults(double*& at) {
  constexpr double zeros[10] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::vessel::leak_test_plan v{.surface = io<::tankwright::area>::take(zero), .resolution = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  not_given(at, 1);
  io<::tankwright::length>::put(v.scatter, at);
  io<double>::put(v.readings_per_day, at);
  io<bool>::put(v.pan, at);
  io<::tankwright::estimate<::tankwright::velocity>>::put(v.evaporation, at);
  io<::tankwright::proportion>::put(v.confidence, at);
  io<::tankwright::proportion>::put(v.power, at);
}

void io<::tankwright::vessel::reader_offset>::write(answer& out, const ::tankwright::vessel::reader_offset& v) {
  out.begin();
  out.key("reader");
  io<std::string>::write(out, v.reader);
  out.key("higher");
  io<::tankwright::length>::write(out, v.higher);
  out.key("readings");
  io<std::size_t>::write(out, v.readings);
  out.end();
}

void io<::tankwright::vessel::leak_test_result>::write(answer& out, const ::tankwright::vessel::leak_test_result& v) {
  out.begin();
  out.key("fall");
  io<::tankwright::estimate<::tankwright::velocity>>::write(out, v.fall);
  out.key("evaporation");
  io<::tankwright::estimate<::tankwright::velocity>>::write(out, v.evaporation);
  out.key("leak_fall");
  io<::tankwright::estimate<::tankwright::velocity>>::write(out, v.leak_fall);
  out.key("leak");
  io<::tankwright::estimate<::tankwright::flow_rate>>::write(out, v.leak);
  out.key("chance_without_leak");
  io<::tankwright::proportion>::write(out, v.chance_without_leak);
  out.key("answer");
  io<::tankwright::vessel::leak_answer>::write(out, v.answer);
  out.key("leak_that_matters");
  io<::tankwright::flow_rate>::write(out, v.leak_that_matters);
  out.key("chance_to_show");
  io<::tankwright::proportion>::write(out, v.chance_to_show);
  out.key("minimum_detectable_leak");
  io<::tankwright::flow_rate>::write(out, v.minimum_detectable_leak);
  out.key("standard_error");
  io<::tankwright::velocity>::write(out, v.standard_error);
  out.key("lasted");
  io<::tankwright::duration>::write(out, v.lasted);
  out.key("degrees_of_freedom");
  io<std::size_t>::write(out, v.degrees_of_freedom);
  out.key("readers");
  io<std::vector<::tankwright::vessel::reader_offset>>::write(out, v.readers);
  out.key("against_criterion");
  io<std::optional<::tankwright::vessel::criterion_outcome>>::write(out, v.against_criterion);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::vessel::leak_test_stage>::write(answer& out, const ::tankwright::vessel::leak_test_stage& v) {
  out.begin();
  out.key("depth");
  io<::tankwright::length>::write(out, v.depth);
  out.key("leak");
  io<::tankwright::flow_rate>::write(out, v.leak);
  out.key("required");
  io<std::optional<::tankwright::duration>>::write(out, v.required);
  out.end();
}

::tankwright::vessel::leaning_wall io<::tankwright::vessel::leaning_wall>::read(const given& in) {
  if (std::optional<::tankwright::vessel::leaning_wall> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::leaning_wall io<::tankwright::vessel::leaning_wall>::fields(const given& in) {
  static constexpr std::string_view known[] = {"width", "depth", "water_density", "label"};
  in.only(known);
  ::tankwright::vessel::leaning_wall v{.width = must<::tankwright::length>(in, "width"), .depth = must<::tankwright::length>(in, "depth"), .water_density = must<::tankwright::mass_density>(in, "water_density")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::level_rise io<::tankwright::vessel::level_rise>::read(const given& in) {
  if (std::optional<::tankwright::vessel::level_rise> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::level_rise io<::tankwright::vessel::level_rise>::fields(const given& in) {
  static constexpr std::string_view known[] = {"before", "after", "rock", "label"};
  in.only(known);
  ::tankwright::vessel::level_rise v{.before = must<::tankwright::length>(in, "before"), .after = must<::tankwright::length>(in, "after")};
  if (in.has("rock")) v.rock = must<::tankwright::vessel::grains>(in, "rock");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::panel_material io<::tankwright::vessel::panel_material>::read(const given& in) {
  if (std::optional<::tankwright::vessel::panel_material> by_formula; made(in, by_formula)) return *std::move(by_formula);
  if (in.is_named("annealed_glass")) return ::tankwright::vessel::annealed_glass;
  if (in.is_named("cast_acrylic")) return ::tankwright::vessel::cast_acrylic;
  static constexpr std::string_view known[] = {"annealed_glass", "cast_acrylic"};
  if (in.is_text()) in.refuse_name(known);
  return fields(in);
}
::tankwright::vessel::panel_material io<::tankwright::vessel::panel_material>::fields(const given& in) {
  static constexpr std::string_view known[] = {"name", "modulus", "long_term_modulus", "poisson", "density", "allowable", "read_as", "source", "bulge"};
  in.only(known);
  ::tankwright::vessel::panel_material v{.name = may_or<std::string_view>(in, "name", [] { return std::string_view{}; }), .modulus = must<::tankwright::pressure>(in, "modulus"), .long_term_modulus = must<::tankwright::estimate<::tankwright::pressure>>(in, "long_term_modulus"), .poisson = must<double>(in, "poisson"), .density = must<::tankwright::mass_density>(in, "density"), .allowable = must<::tankwright::vessel::allowable_stress>(in, "allowable"), .read_as = must<::tankwright::standing>(in, "read_as"), .source = may_or<std::string_view>(in, "source", [] { return std::string_view{}; })};
  if (in.has("bulge")) v.bulge = must<::tankwright::vessel::deflection_limit>(in, "bulge");
  return v;
}

::tankwright::vessel::lid io<::tankwright::vessel::lid>::read(const given& in) {
  if (std::optional<::tankwright::vessel::lid> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::lid io<::tankwright::vessel::lid>::fields(const given& in) {
  static constexpr std::string_view known[] = {"span", "thickness", "material", "extra", "moisture_strain", "label"};
  in.only(known);
  ::tankwright::vessel::lid v{.span = must<::tankwright::length>(in, "span"), .thickness = must<::tankwright::length>(in, "thickness"), .material = must<::tankwright::vessel::panel_material>(in, "material")};
  if (in.has("extra")) v.extra = must<::tankwright::pressure>(in, "extra");
  if (in.has("moisture_strain")) v.moisture_strain = must<double>(in, "moisture_strain");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

void io<::tankwright::vessel::lid_result>::write(answer& out, const ::tankwright::vessel::lid_result& v) {
  out.begin();
  out.key("load");
  io<::tankwright::pressure>::write(out, v.load);
  out.key("sag");
  io<::tankwright::length>::write(out, v.sag);
  out.key("long_term_sag");
  io<::tankwright::estimate<::tankwright::length>>::write(out, v.long_term_sag);
  out.key("moisture_bow");
  io<::tankwright::length>::write(out, v.moisture_bow);
  out.key("stress");
  io<::tankwright::pressure>::write(out, v.stress);
  out.key("allowable");
  io<::tankwright::vessel::allowable_stress>::write(out, v.allowable);
  out.key("utilisation");
  io<double>::write(out, v.utilisation);
  out.key("span_over_sag");
  io<double>::write(out, v.span_over_sag);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::vessel::load_spell io<::tankwright::vessel::load_spell>::read(const given& in) {
  if (std::optional<::tankwright::vessel::load_spell> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::load_spell io<::tankwright::vessel::load_spell>::fields(const given& in) {
  static constexpr std::string_view known[] = {"load", "lasting"};
  in.only(known);
  const ::tankwright::vessel::load_spell v{.load = must<::tankwright::pressure>(in, "load"), .lasting = must<::tankwright::duration>(in, "lasting")};
  return v;
}
void io<::tankwright::vessel::load_spell>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::lying_cylinder_size io<::tankwright::vessel::lying_cylinder_size>::read(const given& in) {
  if (std::optional<::tankwright::vessel::lying_cylinder_size> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::lying_cylinder_size io<::tankwright::vessel::lying_cylinder_size>::fields(const given& in) {
  static constexpr std::string_view known[] = {"diameter", "length", "head_depth", "label"};
  in.only(known);
  ::tankwright::vessel::lying_cylinder_size v{.diameter = must<::tankwright::vessel::inside>(in, "diameter"), .length = must<::tankwright::vessel::inside>(in, "length")};
  if (in.has("head_depth")) v.head_depth = must<::tankwright::vessel::inside>(in, "head_depth");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::outside_measure io<::tankwright::vessel::outside_measure>::read(const given& in) {
  if (std::optional<::tankwright::vessel::outside_measure> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::outside_measure io<::tankwright::vessel::outside_measure>::fields(const given& in) {
  static constexpr std::string_view known[] = {"measured", "near_panel", "far_panel"};
  in.only(known);
  const ::tankwright::vessel::outside_measure v{.measured = must<::tankwright::vessel::outside>(in, "measured"), .near_panel = must<::tankwright::length>(in, "near_panel"), .far_panel = must<::tankwright::length>(in, "far_panel")};
  return v;
}
void io<::tankwright::vessel::outside_measure>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::pane_hole io<::tankwright::vessel::pane_hole>::read(const given& in) {
  if (std::optional<::tankwright::vessel::pane_hole> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::pane_hole io<::tankwright::vessel::pane_hole>::fields(const given& in) {
  static constexpr std::string_view known[] = {"diameter", "thickness", "glass", "label"};
  in.only(known);
  ::tankwright::vessel::pane_hole v{.diameter = must<::tankwright::length>(in, "diameter"), .thickness = must<::tankwright::length>(in, "thickness")};
  if (in.has("glass")) v.glass = must<bool>(in, "glass");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::panel io<::tankwright::vessel::panel>::read(const given& in) {
  if (std::optional<::tankwright::vessel::panel> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::panel io<::tankwright::vessel::panel>::fields(const given& in) {
  static constexpr std::string_view known[] = {"width", "height", "thickness", "edges", "material", "allowable", "label"};
  in.only(known);
  ::tankwright::vessel::panel v{.width = must<::tankwright::length>(in, "width"), .height = must<::tankwright::length>(in, "height"), .thickness = must<::tankwright::length>(in, "thickness"), .edges = must<::tankwright::vessel::panel_edges>(in, "edges"), .material = must<::tankwright::vessel::panel_material>(in, "material")};
  if (in.has("allowable")) v.allowable = must<std::optional<::tankwright::vessel::allowable_stress>>(in, "allowable");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

void io<::tankwright::vessel::part_leak>::write(answer& out, const ::tankwright::vessel::part_leak& v) {
  out.begin();
  out.key("label");
  io<std::string>::write(out, v.label);
  out.key("result");
  io<::tankwright::vessel::leak_test_result>::write(out, v.result);
  out.key("chance_without_leak");
  io<::tankwright::proportion>::write(out, v.chance_without_leak);
  out.end();
}

void io<::tankwright::vessel::parts_result>::write(answer& out, const ::tankwright::vessel::parts_result& v) {
  out.begin();
  out.key("parts");
  io<std::vector<::tankwright::vessel::part_leak>>::write(out, v.parts);
  out.key("total");
  io<::tankwright::estimate<::tankwright::flow_rate>>::write(out, v.total);
  out.key("answer");
  io<::tankwright::vessel::leak_answer>::write(out, v.answer);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

void io<::tankwright::vessel::phases>::write(answer& out, const ::tankwright::vessel::phases& v) {
  out.begin();
  out.key("pores");
  io<::tankwright::porosity>::write(out, v.pores);
  out.key("void_ratio");
  io<double>::write(out, v.void_ratio);
  out.key("water_content");
  io<double>::write(out, v.water_content);
  out.key("saturation");
  io<double>::write(out, v.saturation);
  out.key("dry_density");
  io<::tankwright::mass_density>::write(out, v.dry_density);
  out.key("wet_density");
  io<::tankwright::mass_density>::write(out, v.wet_density);
  out.key("grain_density");
  io<::tankwright::mass_density>::write(out, v.grain_density);
  out.key("more_water_than_pores");
  io<bool>::write(out, v.more_water_than_pores);
  out.end();
}

::tankwright::vessel::placed_shape io<::tankwright::vessel::placed_shape>::read(const given& in) {
  if (std::optional<::tankwright::vessel::placed_shape> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::placed_shape io<::tankwright::vessel::placed_shape>::fields(const given& in) {
  static constexpr std::string_view known[] = {"what", "floor"};
  in.only(known);
  ::tankwright::vessel::placed_shape v{.what = must<::tankwright::vessel::shape>(in, "what")};
  if (in.has("floor")) v.floor = must<::tankwright::length>(in, "floor");
  return v;
}

::tankwright::vessel::prism_size io<::tankwright::vessel::prism_size>::read(const given& in) {
  if (std::optional<::tankwright::vessel::prism_size> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::prism_size io<::tankwright::vessel::prism_size>::fields(const given& in) {
  static constexpr std::string_view known[] = {"inside_corners", "height", "label"};
  in.only(known);
  ::tankwright::vessel::prism_size v{.inside_corners = may_or<std::vector<::tankwright::vessel::corner>>(in, "inside_corners", [] { return std::vector<::tankwright::vessel::corner>{}; }), .height = must<::tankwright::vessel::inside>(in, "height")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

void io<::tankwright::vessel::rail_loads>::write(answer& out, const ::tankwright::vessel::rail_loads& v) {
  out.begin();
  out.key("top");
  io<::tankwright::line_load>::write(out, v.top);
  out.key("bottom");
  io<::tankwright::line_load>::write(out, v.bottom);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::vessel::railed_panel io<::tankwright::vessel::railed_panel>::read(const given& in) {
  if (std::optional<::tankwright::vessel::railed_panel> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::railed_panel io<::tankwright::vessel::railed_panel>::fields(const given& in) {
  static constexpr std::string_view known[] = {"height", "level", "water_density", "label"};
  in.only(known);
  ::tankwright::vessel::railed_panel v{.height = must<::tankwright::length>(in, "height"), .level = must<::tankwright::length>(in, "level"), .water_density = must<::tankwright::mass_density>(in, "water_density")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::ray_panel io<::tankwright::vessel::ray_panel>::read(const given& in) {
  if (std::optional<::tankwright::vessel::ray_panel> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::ray_panel io<::tankwright::vessel::ray_panel>::fields(const given& in) {
  static constexpr std::string_view known[] = {"thickness", "panel_index"};
  in.only(known);
  ::tankwright::vessel::ray_panel v{.thickness = must<::tankwright::length>(in, "thickness")};
  if (in.has("panel_index")) v.panel_index = must<::tankwright::water::refractive_index>(in, "panel_index");
  return v;
}
void io<::tankwright::vessel::ray_panel>::defaults(double*& at) {
  constexpr double zeros[2] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::vessel::ray_panel v{.thickness = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  io<::tankwright::water::refractive_index>::put(v.panel_index, at);
}

::tankwright::vessel::rectangle io<::tankwright::vessel::rectangle>::read(const given& in) {
  if (std::optional<::tankwright::vessel::rectangle> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::rectangle io<::tankwright::vessel::rectangle>::fields(const given& in) {
  static constexpr std::string_view known[] = {"breadth", "depth"};
  in.only(known);
  const ::tankwright::vessel::rectangle v{.breadth = must<::tankwright::length>(in, "breadth"), .depth = must<::tankwright::length>(in, "depth")};
  return v;
}
void io<::tankwright::vessel::rectangle>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::regular_prism_size io<::tankwright::vessel::regular_prism_size>::read(const given& in) {
  if (std::optional<::tankwright::vessel::regular_prism_size> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::regular_prism_size io<::tankwright::vessel::regular_prism_size>::fields(const given& in) {
  static constexpr std::string_view known[] = {"sides", "side", "height", "label"};
  in.only(known);
  ::tankwright::vessel::regular_prism_size v{.sides = must<int>(in, "sides"), .side = must<::tankwright::vessel::inside>(in, "side"), .height = must<::tankwright::vessel::inside>(in, "height")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

void io<::tankwright::vessel::remark>::write(answer& out, const ::tankwright::vessel::remark& v) {
  out.begin();
  out.key("about");
  io<::tankwright::vessel::panel_remark>::write(out, v.about);
  out.key("text");
  io<std::string>::write(out, v.text);
  out.key("value");
  io<double>::write(out, v.value);
  out.end();
}

::tankwright::vessel::rock_mass io<::tankwright::vessel::rock_mass>::read(const given& in) {
  if (std::optional<::tankwright::vessel::rock_mass> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::rock_mass io<::tankwright::vessel::rock_mass>::fields(const given& in) {
  static constexpr std::string_view known[] = {"dry_mass", "rock", "flooded_pores", "label"};
  in.only(known);
  ::tankwright::vessel::rock_mass v{.dry_mass = must<::tankwright::mass>(in, "dry_mass")};
  if (in.has("rock")) v.rock = must<::tankwright::vessel::grains>(in, "rock");
  if (in.has("flooded_pores")) v.flooded_pores = must<::tankwright::proportion>(in, "flooded_pores");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::rock_weighing io<::tankwright::vessel::rock_weighing>::read(const given& in) {
  if (std::optional<::tankwright::vessel::rock_weighing> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::rock_weighing io<::tankwright::vessel::rock_weighing>::fields(const given& in) {
  static constexpr std::string_view known[] = {"dry_mass", "submerged_mass", "water_density", "soaked_mass", "rock", "label"};
  in.only(known);
  ::tankwright::vessel::rock_weighing v{.dry_mass = must<::tankwright::mass>(in, "dry_mass"), .submerged_mass = must<::tankwright::mass>(in, "submerged_mass"), .water_density = must<::tankwright::mass_density>(in, "water_density")};
  if (in.has("soaked_mass")) v.soaked_mass = must<std::optional<::tankwright::mass>>(in, "soaked_mass");
  if (in.has("rock")) v.rock = must<::tankwright::vessel::grains>(in, "rock");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::sand_bed_size io<::tankwright::vessel::sand_bed_size>::read(const given& in) {
  if (std::optional<::tankwright::vessel::sand_bed_size> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::sand_bed_size io<::tankwright::vessel::sand_bed_size>::fields(const given& in) {
  static constexpr std::string_view known[] = {"floor", "depth", "sand", "label"};
  in.only(known);
  ::tankwright::vessel::sand_bed_size v{.floor = must<::tankwright::area>(in, "floor"), .depth = must<::tankwright::length>(in, "depth")};
  if (in.has("sand")) v.sand = must<::tankwright::vessel::grains>(in, "sand");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::sand_mass io<::tankwright::vessel::sand_mass>::read(const given& in) {
  if (std::optional<::tankwright::vessel::sand_mass> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::sand_mass io<::tankwright::vessel::sand_mass>::fields(const given& in) {
  static constexpr std::string_view known[] = {"dry_mass", "sand", "label"};
  in.only(known);
  ::tankwright::vessel::sand_mass v{.dry_mass = must<::tankwright::mass>(in, "dry_mass")};
  if (in.has("sand")) v.sand = must<::tankwright::vessel::grains>(in, "sand");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::saturated_sample io<::tankwright::vessel::saturated_sample>::read(const given& in) {
  if (std::optional<::tankwright::vessel::saturated_sample> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::saturated_sample io<::tankwright::vessel::saturated_sample>::fields(const given& in) {
  static constexpr std::string_view known[] = {"water_content", "grain_density", "water_density"};
  in.only(known);
  const ::tankwright::vessel::saturated_sample v{.water_content = must<double>(in, "water_content"), .grain_density = must<::tankwright::mass_density>(in, "grain_density"), .water_density = must<::tankwright::mass_density>(in, "water_density")};
  return v;
}
void io<::tankwright::vessel::saturated_sample>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::scene io<::tankwright::vessel::scene>::read(const given& in) {
  if (std::optional<::tankwright::vessel::scene> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::scene io<::tankwright::vessel::scene>::fields(const given& in) {
  static constexpr std::string_view known[] = {"gross", "items", "water_density"};
  in.only(known);
  const ::tankwright::vessel::scene v{.gross = must<::tankwright::volume>(in, "gross"), .items = may_or<std::span<const ::tankwright::vessel::item>>(in, "items", [] { return std::span<const ::tankwright::vessel::item>{}; }), .water_density = must<::tankwright::mass_density>(in, "water_density")};
  return v;
}

::tankwright::vessel::sheet_strip io<::tankwright::vessel::sheet_strip>::read(const given& in) {
  if (std::optional<::tankwright::vessel::sheet_strip> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::sheet_strip io<::tankwright::vessel::sheet_strip>::fields(const given& in) {
  static constexpr std::string_view known[] = {"spacing", "load", "spans", "bending_capacity", "rigidity", "duration_factor", "creep_factor", "label"};
  in.only(known);
  ::tankwright::vessel::sheet_strip v{.spacing = must<::tankwright::length>(in, "spacing"), .load = must<::tankwright::pressure>(in, "load"), .spans = must<::tankwright::vessel::strip_spans>(in, "spans"), .bending_capacity = must<::tankwright::force>(in, "bending_capacity"), .rigidity = must<::tankwright::energy>(in, "rigidity")};
  if (in.has("duration_factor")) v.duration_factor = must<double>(in, "duration_factor");
  if (in.has("creep_factor")) v.creep_factor = must<double>(in, "creep_factor");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

void io<::tankwright::vessel::slope_result>::write(answer& out, const ::tankwright::vessel::slope_result& v) {
  out.begin();
  out.key("mean_depth");
  io<::tankwright::length>::write(out, v.mean_depth);
  out.key("slope");
  io<::tankwright::angle>::write(out, v.slope);
  out.key("steeper_than_repose");
  io<bool>::write(out, v.steeper_than_repose);
  out.end();
}

void io<::tankwright::vessel::strip_result>::write(answer& out, const ::tankwright::vessel::strip_result& v) {
  out.begin();
  out.key("moment");
  io<::tankwright::force>::write(out, v.moment);
  out.key("capacity");
  io<::tankwright::force>::write(out, v.capacity);
  out.key("utilisation");
  io<double>::write(out, v.utilisation);
  out.key("sag");
  io<::tankwright::length>::write(out, v.sag);
  out.key("long_term_sag");
  io<::tankwright::length>::write(out, v.long_term_sag);
  out.key("span_over_sag");
  io<double>::write(out, v.span_over_sag);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::vessel::surface io<::tankwright::vessel::surface>::read(const given& in) {
  if (std::optional<::tankwright::vessel::surface> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::surface io<::tankwright::vessel::surface>::fields(const given& in) {
  static constexpr std::string_view known[] = {"from", "into"};
  in.only(known);
  const ::tankwright::vessel::surface v{.from = must<::tankwright::water::refractive_index>(in, "from"), .into = must<::tankwright::water::refractive_index>(in, "into")};
  return v;
}
void io<::tankwright::vessel::surface>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::underwater_view io<::tankwright::vessel::underwater_view>::read(const given& in) {
  if (std::optional<::tankwright::vessel::underwater_view> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::underwater_view io<::tankwright::vessel::underwater_view>::fields(const given& in) {
  static constexpr std::string_view known[] = {"water", "panel", "water_index", "panel_index"};
  in.only(known);
  ::tankwright::vessel::underwater_view v{.water = must<::tankwright::length>(in, "water")};
  if (in.has("panel")) v.panel = must<::tankwright::length>(in, "panel");
  if (in.has("water_index")) v.water_index = must<::tankwright::water::refractive_index>(in, "water_index");
  if (in.has("panel_index")) v.panel_index = must<::tankwright::water::refractive_index>(in, "panel_index");
  return v;
}
void io<::tankwright::vessel::underwater_view>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::vessel::underwater_view v{.water = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  io<::tankwright::length>::put(v.panel, at);
  io<::tankwright::water::refractive_index>::put(v.water_index, at);
  io<::tankwright::water::refractive_index>::put(v.panel_index, at);
}

void io<::tankwright::vessel::uplift_result>::write(answer& out, const ::tankwright::vessel::uplift_result& v) {
  out.begin();
  out.key("buoyancy");
  io<::tankwright::force>::write(out, v.buoyancy);
  out.key("net_up");
  io<::tankwright::force>::write(out, v.net_up);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::vessel::upright_cylinder_size io<::tankwright::vessel::upright_cylinder_size>::read(const given& in) {
  if (std::optional<::tankwright::vessel::upright_cylinder_size> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::upright_cylinder_size io<::tankwright::vessel::upright_cylinder_size>::fields(const given& in) {
  static constexpr std::string_view known[] = {"diameter", "height", "label"};
  in.only(known);
  ::tankwright::vessel::upright_cylinder_size v{.diameter = must<::tankwright::vessel::inside>(in, "diameter"), .height = must<::tankwright::vessel::inside>(in, "height")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::wanted_view io<::tankwright::vessel::wanted_view>::read(const given& in) {
  if (std::optional<::tankwright::vessel::wanted_view> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::wanted_view io<::tankwright::vessel::wanted_view>::fields(const given& in) {
  static constexpr std::string_view known[] = {"apparent", "panel", "water_index", "panel_index"};
  in.only(known);
  ::tankwright::vessel::wanted_view v{.apparent = must<::tankwright::length>(in, "apparent")};
  if (in.has("panel")) v.panel = must<::tankwright::length>(in, "panel");
  if (in.has("water_index")) v.water_index = must<::tankwright::water::refractive_index>(in, "water_index");
  if (in.has("panel_index")) v.panel_index = must<::tankwright::water::refractive_index>(in, "panel_index");
  return v;
}
void io<::tankwright::vessel::wanted_view>::defaults(double*& at) {
  constexpr double zeros[4] = {};
  const double* zero = zeros;
  static_cast<void>(zero);
  const ::tankwright::vessel::wanted_view v{.apparent = io<::tankwright::length>::take(zero)};
  not_given(at, 1);
  io<::tankwright::length>::put(v.panel, at);
  io<::tankwright::water::refractive_index>::put(v.water_index, at);
  io<::tankwright::water::refractive_index>::put(v.panel_index, at);
}

::tankwright::vessel::water_behind io<::tankwright::vessel::water_behind>::read(const given& in) {
  if (std::optional<::tankwright::vessel::water_behind> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::water_behind io<::tankwright::vessel::water_behind>::fields(const given& in) {
  static constexpr std::string_view known[] = {"level", "water_density"};
  in.only(known);
  const ::tankwright::vessel::water_behind v{.level = must<::tankwright::length>(in, "level"), .water_density = must<::tankwright::mass_density>(in, "water_density")};
  return v;
}
void io<::tankwright::vessel::water_behind>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::water_content io<::tankwright::vessel::water_content>::read(const given& in) {
  if (std::optional<::tankwright::vessel::water_content> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::water_content io<::tankwright::vessel::water_content>::fields(const given& in) {
  static constexpr std::string_view known[] = {"gross", "solids", "pores", "envelope", "net", "free", "contents_dry", "contents_submerged", "water", "on_the_floor", "caution"};
  in.only(known);
  const ::tankwright::vessel::water_content v{.gross = must<::tankwright::volume>(in, "gross"), .solids = must<::tankwright::estimate<::tankwright::vessel::solid_volume>>(in, "solids"), .pores = must<::tankwright::estimate<::tankwright::vessel::pore_volume>>(in, "pores"), .envelope = must<::tankwright::estimate<::tankwright::vessel::envelope_volume>>(in, "envelope"), .net = must<::tankwright::estimate<::tankwright::vessel::net_volume>>(in, "net"), .free = must<::tankwright::estimate<::tankwright::vessel::free_volume>>(in, "free"), .contents_dry = must<::tankwright::estimate<::tankwright::mass>>(in, "contents_dry"), .contents_submerged = must<::tankwright::estimate<::tankwright::mass>>(in, "contents_submerged"), .water = must<::tankwright::estimate<::tankwright::mass>>(in, "water"), .on_the_floor = must<::tankwright::estimate<::tankwright::mass>>(in, "on_the_floor"), .caution = {}};
  return v;
}
void io<::tankwright::vessel::water_content>::write(answer& out, const ::tankwright::vessel::water_content& v) {
  out.begin();
  out.key("gross");
  io<::tankwright::volume>::write(out, v.gross);
  out.key("solids");
  io<::tankwright::estimate<::tankwright::vessel::solid_volume>>::write(out, v.solids);
  out.key("pores");
  io<::tankwright::estimate<::tankwright::vessel::pore_volume>>::write(out, v.pores);
  out.key("envelope");
  io<::tankwright::estimate<::tankwright::vessel::envelope_volume>>::write(out, v.envelope);
  out.key("net");
  io<::tankwright::estimate<::tankwright::vessel::net_volume>>::write(out, v.net);
  out.key("free");
  io<::tankwright::estimate<::tankwright::vessel::free_volume>>::write(out, v.free);
  out.key("contents_dry");
  io<::tankwright::estimate<::tankwright::mass>>::write(out, v.contents_dry);
  out.key("contents_submerged");
  io<::tankwright::estimate<::tankwright::mass>>::write(out, v.contents_submerged);
  out.key("water");
  io<::tankwright::estimate<::tankwright::mass>>::write(out, v.water);
  out.key("on_the_floor");
  io<::tankwright::estimate<::tankwright::mass>>::write(out, v.on_the_floor);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}
void io<::tankwright::vessel::water_content>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 3);
  not_given(at, 3);
  not_given(at, 3);
  not_given(at, 3);
  not_given(at, 3);
  not_given(at, 3);
  not_given(at, 3);
  not_given(at, 3);
  not_given(at, 3);
}

void io<::tankwright::vessel::water_push>::write(answer& out, const ::tankwright::vessel::water_push& v) {
  out.begin();
  out.key("at_bottom");
  io<::tankwright::pressure>::write(out, v.at_bottom);
  out.key("at_top");
  io<::tankwright::pressure>::write(out, v.at_top);
  out.key("force");
  io<::tankwright::force>::write(out, v.force);
  out.key("centre");
  io<::tankwright::length>::write(out, v.centre);
  out.key("about_lower_edge");
  io<::tankwright::energy>::write(out, v.about_lower_edge);
  out.key("caution");
  io<::tankwright::caution>::write(out, v.caution);
  out.end();
}

::tankwright::vessel::weighed_sample io<::tankwright::vessel::weighed_sample>::read(const given& in) {
  if (std::optional<::tankwright::vessel::weighed_sample> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::weighed_sample io<::tankwright::vessel::weighed_sample>::fields(const given& in) {
  static constexpr std::string_view known[] = {"wet", "dry", "whole", "grain_density", "water_density"};
  in.only(known);
  const ::tankwright::vessel::weighed_sample v{.wet = must<::tankwright::mass>(in, "wet"), .dry = must<::tankwright::mass>(in, "dry"), .whole = must<::tankwright::volume>(in, "whole"), .grain_density = must<::tankwright::mass_density>(in, "grain_density"), .water_density = must<::tankwright::mass_density>(in, "water_density")};
  return v;
}
void io<::tankwright::vessel::weighed_sample>::defaults(double*& at) {
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
  not_given(at, 1);
}

::tankwright::vessel::wetted_wall io<::tankwright::vessel::wetted_wall>::read(const given& in) {
  if (std::optional<::tankwright::vessel::wetted_wall> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::wetted_wall io<::tankwright::vessel::wetted_wall>::fields(const given& in) {
  static constexpr std::string_view known[] = {"width", "height", "level", "water_density", "label"};
  in.only(known);
  ::tankwright::vessel::wetted_wall v{.width = must<::tankwright::length>(in, "width"), .height = must<::tankwright::length>(in, "height"), .level = must<::tankwright::length>(in, "level"), .water_density = must<::tankwright::mass_density>(in, "water_density")};
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

::tankwright::vessel::wood_screw io<::tankwright::vessel::wood_screw>::read(const given& in) {
  if (std::optional<::tankwright::vessel::wood_screw> by_formula; made(in, by_formula)) return *std::move(by_formula);
  return fields(in);
}
::tankwright::vessel::wood_screw io<::tankwright::vessel::wood_screw>::fields(const given& in) {
  static constexpr std::string_view known[] = {"gravity", "diameter", "penetration", "duration_factor", "wet_factor", "label"};
  in.only(known);
  ::tankwright::vessel::wood_screw v{.gravity = must<double>(in, "gravity"), .diameter = must<::tankwright::length>(in, "diameter"), .penetration = must<::tankwright::length>(in, "penetration")};
  if (in.has("duration_factor")) v.duration_factor = must<double>(in, "duration_factor");
  if (in.has("wet_factor")) v.wet_factor = must<double>(in, "wet_factor");
  if (in.has("label")) v.label = must<std::string>(in, "label");
  return v;
}

namespace {

// vessel.rectangular_section
constexpr std::string_view fields_0[] = {"breadth", "depth"};
constexpr std::string_view required_0[] = {"breadth", "depth"};
auto call_0([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::beam_section> {
  return ::tankwright::vessel::rectangular_section(io<::tankwright::vessel::rectangle>::fields(in));
}
void numbers_0(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::rectangle>::take(in);
  io<::tankwright::vessel::beam_section>::put(::tankwright::vessel::rectangular_section(a0), out);
}
void defaults_0(double* at) {
  io<::tankwright::vessel::rectangle>::defaults(at);
}

// vessel.bend
constexpr std::string_view fields_1[] = {"span", "section", "modulus", "supports", "points", "spreads", "pull", "label"};
constexpr std::string_view required_1[] = {"span", "section", "modulus"};
auto call_1([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::beam_result> {
  return ::tankwright::vessel::bend(io<::tankwright::vessel::beam>::fields(in));
}

// vessel.along
constexpr std::string_view fields_2[] = {"result", "length"};
constexpr std::string_view required_2[] = {"result", "length"};
auto call_2([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::beam_station> {
  in.only(fields_2);
  const auto a0 = must<::tankwright::vessel::beam_result>(in, "result");
  const auto a1 = must<::tankwright::length>(in, "length");
  return ::tankwright::vessel::along(a0, a1);
}

// vessel.rails_of
constexpr std::string_view fields_3[] = {"height", "level", "water_density", "label"};
constexpr std::string_view required_3[] = {"height", "level", "water_density"};
auto call_3([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::rail_loads> {
  return ::tankwright::vessel::rails_of(io<::tankwright::vessel::railed_panel>::fields(in));
}

// vessel.pull_of_braces
constexpr std::string_view fields_4[] = {"rail", "braces", "load"};
constexpr std::string_view required_4[] = {"rail", "braces", "load"};
auto call_4([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::brace_pull> {
  return ::tankwright::vessel::pull_of_braces(io<::tankwright::vessel::braced_rail>::fields(in));
}

// vessel.bulge_to_see
constexpr std::string_view fields_5[] = {"expected", "gauge"};
constexpr std::string_view required_5[] = {"expected"};
auto call_5([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::bulge_reading> {
  return ::tankwright::vessel::bulge_to_see(io<::tankwright::vessel::bulge_question>::fields(in));
}

// vessel.side_by_side
constexpr std::string_view fields_6[] = {"chambers", "label"};
constexpr std::string_view required_6[] = {"chambers"};
auto call_6([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::shape> {
  in.only(fields_6);
  const auto a0 = must<std::vector<::tankwright::vessel::placed_shape>>(in, "chambers");
  const auto a1 = may_or<std::string>(in, "label", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::vessel;
    return std::string("vessel");
  });
  return ::tankwright::vessel::side_by_side(a0, a1);
}

// vessel.stacked
constexpr std::string_view fields_7[] = {"from_the_bottom", "label"};
constexpr std::string_view required_7[] = {"from_the_bottom"};
auto call_7([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::shape> {
  in.only(fields_7);
  const auto a0 = must<std::vector<::tankwright::vessel::shape>>(in, "from_the_bottom");
  const auto a1 = may_or<std::string>(in, "label", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::vessel;
    return std::string("vessel");
  });
  return ::tankwright::vessel::stacked(a0, a1);
}

// vessel.inside_of
constexpr std::string_view fields_8[] = {"measured", "near_panel", "far_panel"};
constexpr std::string_view required_8[] = {"measured", "near_panel", "far_panel"};
auto call_8([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::inside> {
  return ::tankwright::vessel::inside_of(io<::tankwright::vessel::outside_measure>::fields(in));
}
void numbers_8(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::outside_measure>::take(in);
  io<::tankwright::vessel::inside>::put(::tankwright::vessel::inside_of(a0), out);
}
void defaults_8(double* at) {
  io<::tankwright::vessel::outside_measure>::defaults(at);
}

// vessel.water_in
constexpr std::string_view fields_9[] = {"gross", "items", "water_density"};
constexpr std::string_view required_9[] = {"gross", "water_density"};
auto call_9([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::water_content> {
  return ::tankwright::vessel::water_in(io<::tankwright::vessel::scene>::fields(in));
}

// vessel.total_water
constexpr std::string_view fields_10[] = {"vessels"};
constexpr std::string_view required_10[] = {"vessels"};
auto call_10([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::vessel::net_volume>> {
  in.only(fields_10);
  const auto a0 = must<std::span<const ::tankwright::vessel::water_content>>(in, "vessels");
  return ::tankwright::vessel::total_water(a0);
}

// vessel.blow_off
constexpr std::string_view fields_11[] = {"depth", "diameter", "water_density", "label"};
constexpr std::string_view required_11[] = {"depth", "diameter", "water_density"};
auto call_11([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::bulkhead_result> {
  return ::tankwright::vessel::blow_off(io<::tankwright::vessel::bulkhead_hole>::fields(in));
}

// vessel.gasket_force
constexpr std::string_view fields_12[] = {"mean_diameter", "effective_width", "pressure", "material", "label"};
constexpr std::string_view required_12[] = {"mean_diameter", "effective_width", "pressure", "material"};
auto call_12([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::gasket_result> {
  return ::tankwright::vessel::gasket_force(io<::tankwright::vessel::gasket_ring>::fields(in));
}

// vessel.gasket_takes_up
constexpr std::string_view fields_13[] = {"thickness"};
constexpr std::string_view required_13[] = {"thickness"};
auto call_13([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_13);
  const auto a0 = must<::tankwright::length>(in, "thickness");
  return ::tankwright::vessel::gasket_takes_up(a0);
}
void numbers_13(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::length>::take(in);
  io<::tankwright::length>::put(::tankwright::vessel::gasket_takes_up(a0), out);
}
void defaults_13(double* at) {
  not_given(at, 1);
}

// vessel.uplift_of
constexpr std::string_view fields_14[] = {"horizontal_area", "flood_depth", "mass_of_sump", "water_density", "label"};
constexpr std::string_view required_14[] = {"horizontal_area", "flood_depth", "mass_of_sump", "water_density"};
auto call_14([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::uplift_result> {
  return ::tankwright::vessel::uplift_of(io<::tankwright::vessel::empty_sump>::fields(in));
}

// vessel.load_on_floor
constexpr std::string_view fields_15[] = {"total", "footprint", "bearing", "code", "label"};
constexpr std::string_view required_15[] = {"total", "footprint"};
auto call_15([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::floor_result> {
  return ::tankwright::vessel::load_on_floor(io<::tankwright::vessel::floor_question>::fields(in));
}

// vessel.least_thickness
constexpr std::string_view fields_16[] = {"nominal"};
constexpr std::string_view required_16[] = {"nominal"};
auto call_16([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::optional<::tankwright::length>> {
  in.only(fields_16);
  const auto a0 = must<::tankwright::length>(in, "nominal");
  return ::tankwright::vessel::least_thickness(a0);
}

// vessel.porosity_of
constexpr std::string_view fields_17[] = {"dry_bulk", "grain"};
constexpr std::string_view required_17[] = {"dry_bulk", "grain"};
auto call_17([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::porosity> {
  return ::tankwright::vessel::porosity_of(io<::tankwright::vessel::bulk_and_grain>::fields(in));
}
void numbers_17(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::bulk_and_grain>::take(in);
  io<::tankwright::porosity>::put(::tankwright::vessel::porosity_of(a0), out);
}
void defaults_17(double* at) {
  io<::tankwright::vessel::bulk_and_grain>::defaults(at);
}

// vessel.phases_of
constexpr std::string_view fields_18[] = {"wet", "dry", "whole", "grain_density", "water_density"};
constexpr std::string_view required_18[] = {"wet", "dry", "whole", "grain_density", "water_density"};
auto call_18([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::phases> {
  return ::tankwright::vessel::phases_of(io<::tankwright::vessel::weighed_sample>::fields(in));
}
void numbers_18(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::weighed_sample>::take(in);
  io<::tankwright::vessel::phases>::put(::tankwright::vessel::phases_of(a0), out);
}
void defaults_18(double* at) {
  io<::tankwright::vessel::weighed_sample>::defaults(at);
}

// vessel.phases_when_saturated
constexpr std::string_view fields_19[] = {"water_content", "grain_density", "water_density"};
constexpr std::string_view required_19[] = {"water_content", "grain_density", "water_density"};
auto call_19([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::phases> {
  return ::tankwright::vessel::phases_when_saturated(io<::tankwright::vessel::saturated_sample>::fields(in));
}
void numbers_19(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::saturated_sample>::take(in);
  io<::tankwright::vessel::phases>::put(::tankwright::vessel::phases_when_saturated(a0), out);
}
void defaults_19(double* at) {
  io<::tankwright::vessel::saturated_sample>::defaults(at);
}

// vessel.hydrostatic_pressure
constexpr std::string_view fields_20[] = {"depth", "water_density"};
constexpr std::string_view required_20[] = {"depth", "water_density"};
auto call_20([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::pressure> {
  in.only(fields_20);
  const auto a0 = must<::tankwright::length>(in, "depth");
  const auto a1 = must<::tankwright::mass_density>(in, "water_density");
  return ::tankwright::vessel::hydrostatic_pressure(a0, a1);
}
void numbers_20(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::length>::take(in);
  const auto a1 = io<::tankwright::mass_density>::take(in);
  io<::tankwright::pressure>::put(::tankwright::vessel::hydrostatic_pressure(a0, a1), out);
}
void defaults_20(double* at) {
  not_given(at, 1);
  not_given(at, 1);
}

// vessel.push_on
constexpr std::string_view fields_21[] = {"width", "height", "level", "water_density", "label"};
constexpr std::string_view required_21[] = {"width", "height", "level", "water_density"};
auto call_21([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::water_push> {
  return ::tankwright::vessel::push_on(io<::tankwright::vessel::wetted_wall>::fields(in));
}

// vessel.equipment
constexpr std::string_view fields_22[] = {"outside", "mass", "label"};
constexpr std::string_view required_22[] = {"outside", "mass"};
auto call_22([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::item> {
  return ::tankwright::vessel::equipment(io<::tankwright::vessel::equipment_size>::fields(in));
}

// vessel.weight_of
constexpr std::string_view fields_23[] = {"thing", "water_density"};
constexpr std::string_view required_23[] = {"thing", "water_density"};
auto call_23([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::item_weight> {
  in.only(fields_23);
  const auto a0 = must<::tankwright::vessel::item>(in, "thing");
  const auto a1 = must<::tankwright::mass_density>(in, "water_density");
  return ::tankwright::vessel::weight_of(a0, a1);
}

// vessel.pull_on_joint
constexpr std::string_view fields_24[] = {"width", "depth", "water_density", "label"};
constexpr std::string_view required_24[] = {"width", "depth", "water_density"};
auto call_24([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::line_load> {
  return ::tankwright::vessel::pull_on_joint(io<::tankwright::vessel::leaning_wall>::fields(in));
}

// vessel.withdrawal_of
constexpr std::string_view fields_25[] = {"gravity", "diameter", "penetration", "duration_factor", "wet_factor", "label"};
constexpr std::string_view required_25[] = {"gravity", "diameter", "penetration"};
auto call_25([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::force> {
  return ::tankwright::vessel::withdrawal_of(io<::tankwright::vessel::wood_screw>::fields(in));
}

// vessel.hole_to_edge
constexpr std::string_view fields_26[] = {"diameter", "thickness", "glass", "label"};
constexpr std::string_view required_26[] = {"diameter", "thickness"};
auto call_26([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  return ::tankwright::vessel::hole_to_edge(io<::tankwright::vessel::pane_hole>::fields(in));
}

// vessel.read_leak_tests
constexpr std::string_view fields_27[] = {"tests"};
constexpr std::string_view required_27[] = {"tests"};
auto call_27([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::parts_result> {
  in.only(fields_27);
  const auto a0 = must<std::span<const ::tankwright::vessel::leak_test>>(in, "tests");
  return ::tankwright::vessel::read_leak_tests(a0);
}

// vessel.compare_covered
constexpr std::string_view fields_28[] = {"covered", "open", "let_through"};
constexpr std::string_view required_28[] = {"covered", "open", "let_through"};
auto call_28([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::cover_result> {
  return ::tankwright::vessel::compare_covered(io<::tankwright::vessel::cover_comparison>::fields(in));
}

// vessel.drip_rate
constexpr std::string_view fields_29[] = {"drops", "over", "drop"};
constexpr std::string_view required_29[] = {"drops", "over"};
auto call_29([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::drip_result> {
  return ::tankwright::vessel::drip_rate(io<::tankwright::vessel::counted_drops>::fields(in));
}
void numbers_29(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::counted_drops>::take(in);
  io<::tankwright::vessel::drip_result>::put(::tankwright::vessel::drip_rate(a0), out);
}
void defaults_29(double* at) {
  io<::tankwright::vessel::counted_drops>::defaults(at);
}

// vessel.read_leak_test
constexpr std::string_view fields_30[] = {"surface", "depth", "resolution", "readings", "evaporation", "salinity", "confidence", "leak_that_matters", "criterion", "capacity", "label"};
constexpr std::string_view required_30[] = {"surface", "depth", "resolution"};
auto call_30([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::leak_test_result> {
  return ::tankwright::vessel::read_leak_test(io<::tankwright::vessel::leak_test>::fields(in));
}

// vessel.minimum_detectable_leak
constexpr std::string_view fields_31[] = {"plan", "lasting"};
constexpr std::string_view required_31[] = {"plan", "lasting"};
auto call_31([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  in.only(fields_31);
  const auto a0 = must<::tankwright::vessel::leak_test_plan>(in, "plan");
  const auto a1 = must<::tankwright::duration>(in, "lasting");
  return ::tankwright::vessel::minimum_detectable_leak(a0, a1);
}
void numbers_31(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::leak_test_plan>::take(in);
  const auto a1 = io<::tankwright::duration>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::vessel::minimum_detectable_leak(a0, a1), out);
}
void defaults_31(double* at) {
  io<::tankwright::vessel::leak_test_plan>::defaults(at);
  not_given(at, 1);
}

// vessel.required_duration
constexpr std::string_view fields_32[] = {"plan", "leak"};
constexpr std::string_view required_32[] = {"plan", "leak"};
auto call_32([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::optional<::tankwright::duration>> {
  in.only(fields_32);
  const auto a0 = must<::tankwright::vessel::leak_test_plan>(in, "plan");
  const auto a1 = must<::tankwright::flow_rate>(in, "leak");
  return ::tankwright::vessel::required_duration(a0, a1);
}

// vessel.required_resolution
constexpr std::string_view fields_33[] = {"plan", "lasting", "leak"};
constexpr std::string_view required_33[] = {"plan", "lasting", "leak"};
auto call_33([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::optional<::tankwright::length>> {
  in.only(fields_33);
  const auto a0 = must<::tankwright::vessel::leak_test_plan>(in, "plan");
  const auto a1 = must<::tankwright::duration>(in, "lasting");
  const auto a2 = must<::tankwright::flow_rate>(in, "leak");
  return ::tankwright::vessel::required_resolution(a0, a1, a2);
}

// vessel.leak_through_hole
constexpr std::string_view fields_34[] = {"diameter", "depth", "discharge_coefficient"};
constexpr std::string_view required_34[] = {"diameter", "depth"};
auto call_34([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::flow_rate> {
  return ::tankwright::vessel::leak_through_hole(io<::tankwright::vessel::hole>::fields(in));
}
void numbers_34(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::hole>::take(in);
  io<::tankwright::flow_rate>::put(::tankwright::vessel::leak_through_hole(a0), out);
}
void defaults_34(double* at) {
  io<::tankwright::vessel::hole>::defaults(at);
}

// vessel.leak_test_stages
constexpr std::string_view fields_35[] = {"plan", "depths", "leak_at_full"};
constexpr std::string_view required_35[] = {"plan", "depths", "leak_at_full"};
auto call_35([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::vector<::tankwright::vessel::leak_test_stage>> {
  in.only(fields_35);
  const auto a0 = must<::tankwright::vessel::leak_test_plan>(in, "plan");
  const auto a1 = must<std::span<const ::tankwright::length>>(in, "depths");
  const auto a2 = must<::tankwright::flow_rate>(in, "leak_at_full");
  return ::tankwright::vessel::leak_test_stages(a0, a1, a2);
}

// vessel.sag_of
constexpr std::string_view fields_36[] = {"span", "thickness", "material", "extra", "moisture_strain", "label"};
constexpr std::string_view required_36[] = {"span", "thickness", "material"};
auto call_36([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::lid_result> {
  return ::tankwright::vessel::sag_of(io<::tankwright::vessel::lid>::fields(in));
}

// vessel.recommended_lift
constexpr std::string_view fields_37[] = {"reach", "height", "travel", "coupling"};
constexpr std::string_view required_37[] = {"reach", "height"};
auto call_37([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass> {
  const auto policy = in.policy();
  return ::tankwright::vessel::recommended_lift(io<::tankwright::vessel::hand_lift>::fields(in), policy);
}
void numbers_37(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::hand_lift>::take(in);
  io<::tankwright::mass>::put(::tankwright::vessel::recommended_lift(a0, policy), out);
}
void defaults_37(double* at) {
  io<::tankwright::vessel::hand_lift>::defaults(at);
}

// vessel.glass_load_duration_factor
constexpr std::string_view fields_38[] = {"lasting"};
constexpr std::string_view required_38[] = {"lasting"};
auto call_38([[maybe_unused]] const given& in) -> std::remove_cvref_t<double> {
  in.only(fields_38);
  const auto a0 = must<::tankwright::duration>(in, "lasting");
  const auto policy = in.policy();
  return ::tankwright::vessel::glass_load_duration_factor(a0, policy);
}
void numbers_38(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::duration>::take(in);
  io<double>::put(::tankwright::vessel::glass_load_duration_factor(a0, policy), out);
}
void defaults_38(double* at) {
  not_given(at, 1);
}

// vessel.glass_equivalent_load
constexpr std::string_view fields_39[] = {"spells"};
constexpr std::string_view required_39[] = {"spells"};
auto call_39([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::pressure> {
  in.only(fields_39);
  const auto a0 = must<std::span<const ::tankwright::vessel::load_spell>>(in, "spells");
  return ::tankwright::vessel::glass_equivalent_load(a0);
}

// vessel.glass_stress_for_breakage
constexpr std::string_view fields_40[] = {"breakage_probability", "stressed_area", "lasting"};
constexpr std::string_view required_40[] = {"breakage_probability", "stressed_area", "lasting"};
auto call_40([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::pressure> {
  return ::tankwright::vessel::glass_stress_for_breakage(io<::tankwright::vessel::breakage_question>::fields(in));
}
void numbers_40(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::breakage_question>::take(in);
  io<::tankwright::pressure>::put(::tankwright::vessel::glass_stress_for_breakage(a0), out);
}
void defaults_40(double* at) {
  io<::tankwright::vessel::breakage_question>::defaults(at);
}

// vessel.for_permanent_load
constexpr std::string_view fields_41[] = {"name", "value", "basis", "read_as", "source"};
constexpr std::string_view required_41[] = {"value", "basis", "read_as"};
auto call_41([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::allowable_stress> {
  return ::tankwright::vessel::for_permanent_load(io<::tankwright::vessel::allowable_stress>::fields(in));
}

// vessel.water_on
constexpr std::string_view fields_42[] = {"panel", "water"};
constexpr std::string_view required_42[] = {"panel", "water"};
auto call_42([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::panel_result> {
  in.only(fields_42);
  const auto a0 = must<::tankwright::vessel::panel>(in, "panel");
  const auto a1 = must<::tankwright::vessel::water_behind>(in, "water");
  const auto policy = in.policy();
  return ::tankwright::vessel::water_on(a0, a1, policy);
}

// vessel.uniform_on
constexpr std::string_view fields_43[] = {"panel", "load"};
constexpr std::string_view required_43[] = {"panel", "load"};
auto call_43([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::panel_result> {
  in.only(fields_43);
  const auto a0 = must<::tankwright::vessel::panel>(in, "panel");
  const auto a1 = must<::tankwright::pressure>(in, "load");
  const auto policy = in.policy();
  return ::tankwright::vessel::uniform_on(a0, a1, policy);
}

// vessel.first_fill
constexpr std::string_view fields_44[] = {"panel", "levels", "water_density"};
constexpr std::string_view required_44[] = {"panel", "levels", "water_density"};
auto call_44([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::vector<::tankwright::vessel::fill_stage>> {
  in.only(fields_44);
  const auto a0 = must<::tankwright::vessel::panel>(in, "panel");
  const auto a1 = must<std::span<const ::tankwright::length>>(in, "levels");
  const auto a2 = must<::tankwright::mass_density>(in, "water_density");
  const auto policy = in.policy();
  return ::tankwright::vessel::first_fill(a0, a1, a2, policy);
}

// vessel.unusual_in
constexpr std::string_view fields_45[] = {"width", "height", "thickness", "edges", "material", "allowable", "label"};
constexpr std::string_view required_45[] = {"width", "height", "thickness", "edges", "material"};
auto call_45([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::vector<::tankwright::vessel::remark>> {
  return ::tankwright::vessel::unusual_in(io<::tankwright::vessel::panel>::fields(in));
}

// vessel.strip_between_frames
constexpr std::string_view fields_46[] = {"spacing", "load", "spans", "bending_capacity", "rigidity", "duration_factor", "creep_factor", "label"};
constexpr std::string_view required_46[] = {"spacing", "load", "spans", "bending_capacity", "rigidity"};
auto call_46([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::strip_result> {
  return ::tankwright::vessel::strip_between_frames(io<::tankwright::vessel::sheet_strip>::fields(in));
}

// vessel.polygon_area
constexpr std::string_view fields_47[] = {"corners"};
constexpr std::string_view required_47[] = {"corners"};
auto call_47([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::area> {
  in.only(fields_47);
  const auto a0 = must<std::span<const ::tankwright::vessel::corner>>(in, "corners");
  return ::tankwright::vessel::polygon_area(a0);
}

// vessel.polygon_outline
constexpr std::string_view fields_48[] = {"corners"};
constexpr std::string_view required_48[] = {"corners"};
auto call_48([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_48);
  const auto a0 = must<std::span<const ::tankwright::vessel::corner>>(in, "corners");
  return ::tankwright::vessel::polygon_outline(a0);
}

// vessel.polygon_middle
constexpr std::string_view fields_49[] = {"corners"};
constexpr std::string_view required_49[] = {"corners"};
auto call_49([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::corner> {
  in.only(fields_49);
  const auto a0 = must<std::span<const ::tankwright::vessel::corner>>(in, "corners");
  return ::tankwright::vessel::polygon_middle(a0);
}

// vessel.inside_corners
constexpr std::string_view fields_50[] = {"outer", "thickness"};
constexpr std::string_view required_50[] = {"outer", "thickness"};
auto call_50([[maybe_unused]] const given& in) -> std::remove_cvref_t<std::vector<::tankwright::vessel::corner>> {
  in.only(fields_50);
  const auto a0 = must<std::span<const ::tankwright::vessel::corner>>(in, "outer");
  const auto a1 = must<::tankwright::length>(in, "thickness");
  return ::tankwright::vessel::inside_corners(a0, a1);
}

// vessel.rock_by_mass
constexpr std::string_view fields_51[] = {"dry_mass", "rock", "flooded_pores", "label"};
constexpr std::string_view required_51[] = {"dry_mass"};
auto call_51([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::item> {
  return ::tankwright::vessel::rock_by_mass(io<::tankwright::vessel::rock_mass>::fields(in));
}

// vessel.rock_weighed_under_water
constexpr std::string_view fields_52[] = {"dry_mass", "submerged_mass", "water_density", "soaked_mass", "rock", "label"};
constexpr std::string_view required_52[] = {"dry_mass", "submerged_mass", "water_density"};
auto call_52([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::item> {
  return ::tankwright::vessel::rock_weighed_under_water(io<::tankwright::vessel::rock_weighing>::fields(in));
}

// vessel.rock_by_level_rise
constexpr std::string_view fields_53[] = {"vessel", "rise"};
constexpr std::string_view required_53[] = {"vessel", "rise"};
auto call_53([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::item> {
  in.only(fields_53);
  const auto a0 = must<::tankwright::vessel::shape>(in, "vessel");
  const auto a1 = must<::tankwright::vessel::level_rise>(in, "rise");
  return ::tankwright::vessel::rock_by_level_rise(a0, a1);
}

// vessel.dry_mass_from_submerged
constexpr std::string_view fields_54[] = {"submerged_mass", "grain_density", "water_density"};
constexpr std::string_view required_54[] = {"submerged_mass", "grain_density", "water_density"};
auto call_54([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::mass> {
  return ::tankwright::vessel::dry_mass_from_submerged(io<::tankwright::vessel::buoyant_weighing>::fields(in));
}
void numbers_54(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::buoyant_weighing>::take(in);
  io<::tankwright::mass>::put(::tankwright::vessel::dry_mass_from_submerged(a0), out);
}
void defaults_54(double* at) {
  io<::tankwright::vessel::buoyant_weighing>::defaults(at);
}

// vessel.sand_bed
constexpr std::string_view fields_55[] = {"floor", "depth", "sand", "label"};
constexpr std::string_view required_55[] = {"floor", "depth"};
auto call_55([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::item> {
  return ::tankwright::vessel::sand_bed(io<::tankwright::vessel::sand_bed_size>::fields(in));
}

// vessel.sand_by_mass
constexpr std::string_view fields_56[] = {"dry_mass", "sand", "label"};
constexpr std::string_view required_56[] = {"dry_mass"};
auto call_56([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::item> {
  return ::tankwright::vessel::sand_by_mass(io<::tankwright::vessel::sand_mass>::fields(in));
}

// vessel.bed_depth
constexpr std::string_view fields_57[] = {"bed", "floor"};
constexpr std::string_view required_57[] = {"bed", "floor"};
auto call_57([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::estimate<::tankwright::length>> {
  in.only(fields_57);
  const auto a0 = must<::tankwright::vessel::item>(in, "bed");
  const auto a1 = must<::tankwright::area>(in, "floor");
  return ::tankwright::vessel::bed_depth(a0, a1);
}

// vessel.sloped_bed
constexpr std::string_view fields_58[] = {"shallow_end", "deep_end", "run", "repose"};
constexpr std::string_view required_58[] = {"shallow_end", "deep_end", "run"};
auto call_58([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::slope_result> {
  return ::tankwright::vessel::sloped_bed(io<::tankwright::vessel::bed_slope>::fields(in));
}
void numbers_58(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::bed_slope>::take(in);
  io<::tankwright::vessel::slope_result>::put(::tankwright::vessel::sloped_bed(a0), out);
}
void defaults_58(double* at) {
  io<::tankwright::vessel::bed_slope>::defaults(at);
}

// vessel.slope_run
constexpr std::string_view fields_59[] = {"rise", "repose"};
constexpr std::string_view required_59[] = {"rise"};
auto call_59([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_59);
  const auto a0 = must<::tankwright::length>(in, "rise");
  const auto a1 = may_or<::tankwright::angle>(in, "repose", [] {
    using namespace ::tankwright;
    using namespace ::tankwright::vessel;
    return ::tankwright::angle(default_repose);
  });
  return ::tankwright::vessel::slope_run(a0, a1);
}
void numbers_59(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::length>::take(in);
  const auto a1 = io<::tankwright::angle>::take(in);
  io<::tankwright::length>::put(::tankwright::vessel::slope_run(a0, a1), out);
}
void defaults_59(double* at) {
  not_given(at, 1);
  const auto a1 = [] {
    using namespace ::tankwright;
    using namespace ::tankwright::vessel;
    return ::tankwright::angle(default_repose);
  }();
  io<::tankwright::angle>::put(a1, at);
}

// vessel.box
constexpr std::string_view fields_60[] = {"length", "width", "height", "label"};
constexpr std::string_view required_60[] = {"length", "width", "height"};
auto call_60([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::shape> {
  return ::tankwright::vessel::box(io<::tankwright::vessel::box_size>::fields(in));
}

// vessel.upright_cylinder
constexpr std::string_view fields_61[] = {"diameter", "height", "label"};
constexpr std::string_view required_61[] = {"diameter", "height"};
auto call_61([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::shape> {
  return ::tankwright::vessel::upright_cylinder(io<::tankwright::vessel::upright_cylinder_size>::fields(in));
}

// vessel.lying_cylinder
constexpr std::string_view fields_62[] = {"diameter", "length", "head_depth", "label"};
constexpr std::string_view required_62[] = {"diameter", "length"};
auto call_62([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::shape> {
  return ::tankwright::vessel::lying_cylinder(io<::tankwright::vessel::lying_cylinder_size>::fields(in));
}

// vessel.prism
constexpr std::string_view fields_63[] = {"inside_corners", "height", "label"};
constexpr std::string_view required_63[] = {"height"};
auto call_63([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::shape> {
  return ::tankwright::vessel::prism(io<::tankwright::vessel::prism_size>::fields(in));
}

// vessel.regular_prism
constexpr std::string_view fields_64[] = {"sides", "side", "height", "label"};
constexpr std::string_view required_64[] = {"sides", "side", "height"};
auto call_64([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::shape> {
  return ::tankwright::vessel::regular_prism(io<::tankwright::vessel::regular_prism_size>::fields(in));
}

// vessel.bow_front
constexpr std::string_view fields_65[] = {"width", "depth_at_ends", "bow", "height", "label"};
constexpr std::string_view required_65[] = {"width", "depth_at_ends", "bow", "height"};
auto call_65([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::shape> {
  return ::tankwright::vessel::bow_front(io<::tankwright::vessel::bow_front_size>::fields(in));
}

// vessel.frustum
constexpr std::string_view fields_66[] = {"bottom_diameter", "top_diameter", "height", "label"};
constexpr std::string_view required_66[] = {"bottom_diameter", "top_diameter", "height"};
auto call_66([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::vessel::shape> {
  return ::tankwright::vessel::frustum(io<::tankwright::vessel::frustum_size>::fields(in));
}

// vessel.filled_volume
constexpr std::string_view fields_67[] = {"vessel", "depth"};
constexpr std::string_view required_67[] = {"vessel", "depth"};
auto call_67([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::volume> {
  in.only(fields_67);
  const auto a0 = must<::tankwright::vessel::shape>(in, "vessel");
  const auto a1 = must<::tankwright::length>(in, "depth");
  return ::tankwright::vessel::filled_volume(a0, a1);
}

// vessel.plan_area
constexpr std::string_view fields_68[] = {"vessel", "depth"};
constexpr std::string_view required_68[] = {"vessel", "depth"};
auto call_68([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::area> {
  in.only(fields_68);
  const auto a0 = must<::tankwright::vessel::shape>(in, "vessel");
  const auto a1 = must<::tankwright::length>(in, "depth");
  return ::tankwright::vessel::plan_area(a0, a1);
}

// vessel.wetted_area
constexpr std::string_view fields_69[] = {"vessel", "depth"};
constexpr std::string_view required_69[] = {"vessel", "depth"};
auto call_69([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::area> {
  in.only(fields_69);
  const auto a0 = must<::tankwright::vessel::shape>(in, "vessel");
  const auto a1 = must<::tankwright::length>(in, "depth");
  return ::tankwright::vessel::wetted_area(a0, a1);
}

// vessel.depth_of
constexpr std::string_view fields_70[] = {"vessel", "content"};
constexpr std::string_view required_70[] = {"vessel", "content"};
auto call_70([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_70);
  const auto a0 = must<::tankwright::vessel::shape>(in, "vessel");
  const auto a1 = must<::tankwright::volume>(in, "content");
  return ::tankwright::vessel::depth_of(a0, a1);
}

// vessel.refracted
constexpr std::string_view fields_71[] = {"between", "incoming"};
constexpr std::string_view required_71[] = {"between", "incoming"};
auto call_71([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::angle> {
  in.only(fields_71);
  const auto a0 = must<::tankwright::vessel::surface>(in, "between");
  const auto a1 = must<::tankwright::angle>(in, "incoming");
  return ::tankwright::vessel::refracted(a0, a1);
}
void numbers_71(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::surface>::take(in);
  const auto a1 = io<::tankwright::angle>::take(in);
  io<::tankwright::angle>::put(::tankwright::vessel::refracted(a0, a1), out);
}
void defaults_71(double* at) {
  io<::tankwright::vessel::surface>::defaults(at);
  not_given(at, 1);
}

// vessel.critical_angle
constexpr std::string_view fields_72[] = {"from", "into"};
constexpr std::string_view required_72[] = {"from", "into"};
auto call_72([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::angle> {
  return ::tankwright::vessel::critical_angle(io<::tankwright::vessel::surface>::fields(in));
}
void numbers_72(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::surface>::take(in);
  io<::tankwright::angle>::put(::tankwright::vessel::critical_angle(a0), out);
}
void defaults_72(double* at) {
  io<::tankwright::vessel::surface>::defaults(at);
}

// vessel.reflectance
constexpr std::string_view fields_73[] = {"from", "into"};
constexpr std::string_view required_73[] = {"from", "into"};
auto call_73([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::proportion> {
  return ::tankwright::vessel::reflectance(io<::tankwright::vessel::surface>::fields(in));
}
void numbers_73(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::surface>::take(in);
  io<::tankwright::proportion>::put(::tankwright::vessel::reflectance(a0), out);
}
void defaults_73(double* at) {
  io<::tankwright::vessel::surface>::defaults(at);
}

// vessel.apparent_distance_with_underwater_view
constexpr std::string_view fields_74[] = {"water", "panel", "water_index", "panel_index"};
constexpr std::string_view required_74[] = {"water"};
auto call_74([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  return ::tankwright::vessel::apparent_distance(io<::tankwright::vessel::underwater_view>::fields(in));
}
void numbers_74(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::underwater_view>::take(in);
  io<::tankwright::length>::put(::tankwright::vessel::apparent_distance(a0), out);
}
void defaults_74(double* at) {
  io<::tankwright::vessel::underwater_view>::defaults(at);
}

// vessel.apparent_distance_with_view_and_angle_in_air
constexpr std::string_view fields_75[] = {"view", "angle_in_air"};
constexpr std::string_view required_75[] = {"view", "angle_in_air"};
auto call_75([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_75);
  const auto a0 = must<::tankwright::vessel::underwater_view>(in, "view");
  const auto a1 = must<::tankwright::angle>(in, "angle_in_air");
  return ::tankwright::vessel::apparent_distance(a0, a1);
}
void numbers_75(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::underwater_view>::take(in);
  const auto a1 = io<::tankwright::angle>::take(in);
  io<::tankwright::length>::put(::tankwright::vessel::apparent_distance(a0, a1), out);
}
void defaults_75(double* at) {
  io<::tankwright::vessel::underwater_view>::defaults(at);
  not_given(at, 1);
}

// vessel.clearance_for
constexpr std::string_view fields_76[] = {"apparent", "panel", "water_index", "panel_index"};
constexpr std::string_view required_76[] = {"apparent"};
auto call_76([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  return ::tankwright::vessel::clearance_for(io<::tankwright::vessel::wanted_view>::fields(in));
}
void numbers_76(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::wanted_view>::take(in);
  io<::tankwright::length>::put(::tankwright::vessel::clearance_for(a0), out);
}
void defaults_76(double* at) {
  io<::tankwright::vessel::wanted_view>::defaults(at);
}

// vessel.lateral_magnification
constexpr std::string_view fields_77[] = {"view", "eye"};
constexpr std::string_view required_77[] = {"view", "eye"};
auto call_77([[maybe_unused]] const given& in) -> std::remove_cvref_t<double> {
  in.only(fields_77);
  const auto a0 = must<::tankwright::vessel::underwater_view>(in, "view");
  const auto a1 = must<::tankwright::length>(in, "eye");
  return ::tankwright::vessel::lateral_magnification(a0, a1);
}
void numbers_77(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::underwater_view>::take(in);
  const auto a1 = io<::tankwright::length>::take(in);
  io<double>::put(::tankwright::vessel::lateral_magnification(a0, a1), out);
}
void defaults_77(double* at) {
  io<::tankwright::vessel::underwater_view>::defaults(at);
  not_given(at, 1);
}

// vessel.ray_shift
constexpr std::string_view fields_78[] = {"panel", "angle_in_air"};
constexpr std::string_view required_78[] = {"panel", "angle_in_air"};
auto call_78([[maybe_unused]] const given& in) -> std::remove_cvref_t<::tankwright::length> {
  in.only(fields_78);
  const auto a0 = must<::tankwright::vessel::ray_panel>(in, "panel");
  const auto a1 = must<::tankwright::angle>(in, "angle_in_air");
  return ::tankwright::vessel::ray_shift(a0, a1);
}
void numbers_78(const double* in, double* out, [[maybe_unused]] tw::range_policy policy) {
  const auto a0 = io<::tankwright::vessel::ray_panel>::take(in);
  const auto a1 = io<::tankwright::angle>::take(in);
  io<::tankwright::length>::put(::tankwright::vessel::ray_shift(a0, a1), out);
}
void defaults_78(double* at) {
  io<::tankwright::vessel::ray_panel>::defaults(at);
  not_given(at, 1);
}

const row rows[] = {
  {"vessel.rectangular_section", "tankwright::vessel::rectangular_section", "geometry", required_0, fields_0, false, &key_of_type<::tankwright::vessel::beam_section>, &answer_with<&call_0>, &make_with<&call_0>, {true, 2, 3}, &numbers_0, &defaults_0},
  {"vessel.bend", "tankwright::vessel::bend", "Euler-Bernoulli beam theory", required_1, fields_1, false, &key_of_type<::tankwright::vessel::beam_result>, &answer_with<&call_1>, &make_with<&call_1>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.along", "tankwright::vessel::along", "Euler-Bernoulli beam theory", required_2, fields_2, false, &key_of_type<::tankwright::vessel::beam_station>, &answer_with<&call_2>, &make_with<&call_2>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.rails_of", "tankwright::vessel::rails_of", "statics", required_3, fields_3, false, &key_of_type<::tankwright::vessel::rail_loads>, &answer_with<&call_3>, &make_with<&call_3>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.pull_of_braces", "tankwright::vessel::pull_of_braces", "Euler-Bernoulli beam theory", required_4, fields_4, false, &key_of_type<::tankwright::vessel::brace_pull>, &answer_with<&call_4>, &make_with<&call_4>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.bulge_to_see", "tankwright::vessel::bulge_to_see", "common practice", required_5, fields_5, false, &key_of_type<::tankwright::vessel::bulge_reading>, &answer_with<&call_5>, &make_with<&call_5>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.side_by_side", "tankwright::vessel::side_by_side", "geometry", required_6, fields_6, false, &key_of_type<::tankwright::vessel::shape>, &answer_with<&call_6>, &make_with<&call_6>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.stacked", "tankwright::vessel::stacked", "geometry", required_7, fields_7, false, &key_of_type<::tankwright::vessel::shape>, &answer_with<&call_7>, &make_with<&call_7>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.inside_of", "tankwright::vessel::inside_of", "definition", required_8, fields_8, false, &key_of_type<::tankwright::vessel::inside>, &answer_with<&call_8>, &make_with<&call_8>, {true, 3, 1}, &numbers_8, &defaults_8},
  {"vessel.water_in", "tankwright::vessel::water_in", "Archimedes", required_9, fields_9, false, &key_of_type<::tankwright::vessel::water_content>, &answer_with<&call_9>, &make_with<&call_9>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.total_water", "tankwright::vessel::total_water", "definition", required_10, fields_10, false, nullptr, &answer_with<&call_10>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.blow_off", "tankwright::vessel::blow_off", "hydrostatics", required_11, fields_11, false, &key_of_type<::tankwright::vessel::bulkhead_result>, &answer_with<&call_11>, &make_with<&call_11>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.gasket_force", "tankwright::vessel::gasket_force", "ASME VIII-1, App. 2 (form and rows from memory)", required_12, fields_12, false, &key_of_type<::tankwright::vessel::gasket_result>, &answer_with<&call_12>, &make_with<&call_12>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.gasket_takes_up", "tankwright::vessel::gasket_takes_up", "squeeze of static seals, from memory", required_13, fields_13, false, nullptr, &answer_with<&call_13>, nullptr, {true, 1, 1}, &numbers_13, &defaults_13},
  {"vessel.uplift_of", "tankwright::vessel::uplift_of", "Archimedes", required_14, fields_14, false, &key_of_type<::tankwright::vessel::uplift_result>, &answer_with<&call_14>, &make_with<&call_14>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.load_on_floor", "tankwright::vessel::load_on_floor", "statics; IRC Table R301.5", required_15, fields_15, false, &key_of_type<::tankwright::vessel::floor_result>, &answer_with<&call_15>, &make_with<&call_15>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.least_thickness", "tankwright::vessel::least_thickness", "EN 572-2 (from memory), ASTM E1300 Table 4 (read in reproductions)", required_16, fields_16, false, nullptr, &answer_with<&call_16>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.porosity_of", "tankwright::vessel::porosity_of", "definition", required_17, fields_17, false, nullptr, &answer_with<&call_17>, nullptr, {true, 2, 1}, &numbers_17, &defaults_17},
  {"vessel.phases_of", "tankwright::vessel::phases_of", "phase relations of soil mechanics", required_18, fields_18, false, &key_of_type<::tankwright::vessel::phases>, &answer_with<&call_18>, &make_with<&call_18>, {true, 5, 8}, &numbers_18, &defaults_18},
  {"vessel.phases_when_saturated", "tankwright::vessel::phases_when_saturated", "phase relations of soil mechanics", required_19, fields_19, false, &key_of_type<::tankwright::vessel::phases>, &answer_with<&call_19>, &make_with<&call_19>, {true, 3, 8}, &numbers_19, &defaults_19},
  {"vessel.hydrostatic_pressure", "tankwright::vessel::hydrostatic_pressure", "hydrostatics", required_20, fields_20, false, nullptr, &answer_with<&call_20>, nullptr, {true, 2, 1}, &numbers_20, &defaults_20},
  {"vessel.push_on", "tankwright::vessel::push_on", "hydrostatics", required_21, fields_21, false, &key_of_type<::tankwright::vessel::water_push>, &answer_with<&call_21>, &make_with<&call_21>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.equipment", "tankwright::vessel::equipment", "definition", required_22, fields_22, false, &key_of_type<::tankwright::vessel::item>, &answer_with<&call_22>, &make_with<&call_22>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.weight_of", "tankwright::vessel::weight_of", "Archimedes", required_23, fields_23, false, &key_of_type<::tankwright::vessel::item_weight>, &answer_with<&call_23>, &make_with<&call_23>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.pull_on_joint", "tankwright::vessel::pull_on_joint", "statics", required_24, fields_24, false, nullptr, &answer_with<&call_24>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.withdrawal_of", "tankwright::vessel::withdrawal_of", "NDS 2018, 12.2.2", required_25, fields_25, false, nullptr, &answer_with<&call_25>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.hole_to_edge", "tankwright::vessel::hole_to_edge", "ASTM C1048 for two thicknesses (from memory)", required_26, fields_26, false, nullptr, &answer_with<&call_26>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.read_leak_tests", "tankwright::vessel::read_leak_tests", "Bonferroni's inequality; Welch-Satterthwaite formula, GUM (JCGM 100:2008), G.4", required_27, fields_27, false, &key_of_type<::tankwright::vessel::parts_result>, &answer_with<&call_27>, &make_with<&call_27>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.compare_covered", "tankwright::vessel::compare_covered", "two linear equations; GUM (JCGM 100:2008), 5.1.2 and G.4", required_28, fields_28, false, &key_of_type<::tankwright::vessel::cover_result>, &answer_with<&call_28>, &make_with<&call_28>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.drip_rate", "tankwright::vessel::drip_rate", "definition; volume of a drop from memory", required_29, fields_29, false, &key_of_type<::tankwright::vessel::drip_result>, &answer_with<&call_29>, &make_with<&call_29>, {true, 5, 3}, &numbers_29, &defaults_29},
  {"vessel.read_leak_test", "tankwright::vessel::read_leak_test", "ordinary least squares; one-sided t test as in US EPA tank tightness protocols; GUM (JCGM 100:2008), 4.3.7", required_30, fields_30, false, &key_of_type<::tankwright::vessel::leak_test_result>, &answer_with<&call_30>, &make_with<&call_30>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.minimum_detectable_leak", "tankwright::vessel::minimum_detectable_leak", "the sum of two t quantiles times the standard error, usual in tank tightness testing (from memory)", required_31, fields_31, false, nullptr, &answer_with<&call_31>, nullptr, {true, 11, 1}, &numbers_31, &defaults_31},
  {"vessel.required_duration", "tankwright::vessel::required_duration", "as `minimum_detectable_leak`", required_32, fields_32, false, nullptr, &answer_with<&call_32>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.required_resolution", "tankwright::vessel::required_resolution", "as `minimum_detectable_leak`", required_33, fields_33, false, nullptr, &answer_with<&call_33>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.leak_through_hole", "tankwright::vessel::leak_through_hole", "Torricelli's law with a discharge coefficient; any textbook of hydraulics", required_34, fields_34, false, nullptr, &answer_with<&call_34>, nullptr, {true, 3, 1}, &numbers_34, &defaults_34},
  {"vessel.leak_test_stages", "tankwright::vessel::leak_test_stages", "Torricelli's law", required_35, fields_35, false, nullptr, &answer_with<&call_35>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.sag_of", "tankwright::vessel::sag_of", "Euler-Bernoulli beam theory", required_36, fields_36, false, &key_of_type<::tankwright::vessel::lid_result>, &answer_with<&call_36>, &make_with<&call_36>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.recommended_lift", "tankwright::vessel::recommended_lift", "NIOSH 94-110", required_37, fields_37, true, nullptr, &answer_with<&call_37>, nullptr, {true, 4, 1}, &numbers_37, &defaults_37},
  {"vessel.glass_load_duration_factor", "tankwright::vessel::glass_load_duration_factor", "ASTM E1300-12a, Table X4.1", required_38, fields_38, true, nullptr, &answer_with<&call_38>, nullptr, {true, 1, 1}, &numbers_38, &defaults_38},
  {"vessel.glass_equivalent_load", "tankwright::vessel::glass_equivalent_load", "ASTM E1300-12a, eq. X5.1", required_39, fields_39, false, nullptr, &answer_with<&call_39>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.glass_stress_for_breakage", "tankwright::vessel::glass_stress_for_breakage", "ASTM E1300-12a, eq. X6.1", required_40, fields_40, false, nullptr, &answer_with<&call_40>, nullptr, {true, 3, 1}, &numbers_40, &defaults_40},
  {"vessel.for_permanent_load", "tankwright::vessel::for_permanent_load", "ASTM E1300-12a, Table X4.1, \"beyond 1 year\"", required_41, fields_41, false, &key_of_type<::tankwright::vessel::allowable_stress>, &answer_with<&call_41>, &make_with<&call_41>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.water_on", "tankwright::vessel::water_on", "Timoshenko & Woinowsky-Krieger 1959, ch. 5 (Levy's solution); published tables in the theory page", required_42, fields_42, true, &key_of_type<::tankwright::vessel::panel_result>, &answer_with<&call_42>, &make_with<&call_42>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.uniform_on", "tankwright::vessel::uniform_on", "Timoshenko & Woinowsky-Krieger 1959, ch. 5 (Levy's solution); published tables in the theory page", required_43, fields_43, true, &key_of_type<::tankwright::vessel::panel_result>, &answer_with<&call_43>, &make_with<&call_43>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.first_fill", "tankwright::vessel::first_fill", "as `water_on`", required_44, fields_44, true, nullptr, &answer_with<&call_44>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.unusual_in", "tankwright::vessel::unusual_in", "the sources of `materials.hpp` and `glass_sizes.hpp`; common practice", required_45, fields_45, false, nullptr, &answer_with<&call_45>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.strip_between_frames", "tankwright::vessel::strip_between_frames", "Euler-Bernoulli beam theory; factors: NDS (from memory)", required_46, fields_46, false, &key_of_type<::tankwright::vessel::strip_result>, &answer_with<&call_46>, &make_with<&call_46>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.polygon_area", "tankwright::vessel::polygon_area", "shoelace formula", required_47, fields_47, false, nullptr, &answer_with<&call_47>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.polygon_outline", "tankwright::vessel::polygon_outline", "geometry", required_48, fields_48, false, nullptr, &answer_with<&call_48>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.polygon_middle", "tankwright::vessel::polygon_middle", "geometry", required_49, fields_49, false, &key_of_type<::tankwright::vessel::corner>, &answer_with<&call_49>, &make_with<&call_49>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.inside_corners", "tankwright::vessel::inside_corners", "geometry", required_50, fields_50, false, nullptr, &answer_with<&call_50>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.rock_by_mass", "tankwright::vessel::rock_by_mass", "phase relations of soil mechanics; band: common practice", required_51, fields_51, false, &key_of_type<::tankwright::vessel::item>, &answer_with<&call_51>, &make_with<&call_51>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.rock_weighed_under_water", "tankwright::vessel::rock_weighed_under_water", "Archimedes; buoyant weighing as in Jokiel, Maragos & Franzisket 1978 (from memory)", required_52, fields_52, false, &key_of_type<::tankwright::vessel::item>, &answer_with<&call_52>, &make_with<&call_52>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.rock_by_level_rise", "tankwright::vessel::rock_by_level_rise", "geometry", required_53, fields_53, false, &key_of_type<::tankwright::vessel::item>, &answer_with<&call_53>, &make_with<&call_53>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.dry_mass_from_submerged", "tankwright::vessel::dry_mass_from_submerged", "Davies 1989, Mar. Biol. 101:389-395 (from memory)", required_54, fields_54, false, nullptr, &answer_with<&call_54>, nullptr, {true, 3, 1}, &numbers_54, &defaults_54},
  {"vessel.sand_bed", "tankwright::vessel::sand_bed", "phase relations of soil mechanics", required_55, fields_55, false, &key_of_type<::tankwright::vessel::item>, &answer_with<&call_55>, &make_with<&call_55>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.sand_by_mass", "tankwright::vessel::sand_by_mass", "phase relations of soil mechanics", required_56, fields_56, false, &key_of_type<::tankwright::vessel::item>, &answer_with<&call_56>, &make_with<&call_56>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.bed_depth", "tankwright::vessel::bed_depth", "geometry", required_57, fields_57, false, nullptr, &answer_with<&call_57>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.sloped_bed", "tankwright::vessel::sloped_bed", "geometry", required_58, fields_58, false, &key_of_type<::tankwright::vessel::slope_result>, &answer_with<&call_58>, &make_with<&call_58>, {true, 4, 3}, &numbers_58, &defaults_58},
  {"vessel.slope_run", "tankwright::vessel::slope_run", "geometry", required_59, fields_59, false, nullptr, &answer_with<&call_59>, nullptr, {true, 2, 1}, &numbers_59, &defaults_59},
  {"vessel.box", "tankwright::vessel::box", "geometry", required_60, fields_60, false, &key_of_type<::tankwright::vessel::shape>, &answer_with<&call_60>, &make_with<&call_60>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.upright_cylinder", "tankwright::vessel::upright_cylinder", "geometry", required_61, fields_61, false, &key_of_type<::tankwright::vessel::shape>, &answer_with<&call_61>, &make_with<&call_61>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.lying_cylinder", "tankwright::vessel::lying_cylinder", "geometry; heads as in Jones 2004, Calculating Tank Volume", required_62, fields_62, false, &key_of_type<::tankwright::vessel::shape>, &answer_with<&call_62>, &make_with<&call_62>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.prism", "tankwright::vessel::prism", "geometry", required_63, fields_63, false, &key_of_type<::tankwright::vessel::shape>, &answer_with<&call_63>, &make_with<&call_63>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.regular_prism", "tankwright::vessel::regular_prism", "geometry", required_64, fields_64, false, &key_of_type<::tankwright::vessel::shape>, &answer_with<&call_64>, &make_with<&call_64>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.bow_front", "tankwright::vessel::bow_front", "geometry", required_65, fields_65, false, &key_of_type<::tankwright::vessel::shape>, &answer_with<&call_65>, &make_with<&call_65>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.frustum", "tankwright::vessel::frustum", "geometry", required_66, fields_66, false, &key_of_type<::tankwright::vessel::shape>, &answer_with<&call_66>, &make_with<&call_66>, {false, 0, 0}, nullptr, nullptr},
  {"vessel.filled_volume", "tankwright::vessel::filled_volume", "geometry", required_67, fields_67, false, nullptr, &answer_with<&call_67>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.plan_area", "tankwright::vessel::plan_area", "geometry", required_68, fields_68, false, nullptr, &answer_with<&call_68>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.wetted_area", "tankwright::vessel::wetted_area", "geometry", required_69, fields_69, false, nullptr, &answer_with<&call_69>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.depth_of", "tankwright::vessel::depth_of", "geometry", required_70, fields_70, false, nullptr, &answer_with<&call_70>, nullptr, {false, 0, 0}, nullptr, nullptr},
  {"vessel.refracted", "tankwright::vessel::refracted", "Snell's law", required_71, fields_71, false, nullptr, &answer_with<&call_71>, nullptr, {true, 3, 1}, &numbers_71, &defaults_71},
  {"vessel.critical_angle", "tankwright::vessel::critical_angle", "Snell's law", required_72, fields_72, false, nullptr, &answer_with<&call_72>, nullptr, {true, 2, 1}, &numbers_72, &defaults_72},
  {"vessel.reflectance", "tankwright::vessel::reflectance", "Fresnel's equations", required_73, fields_73, false, nullptr, &answer_with<&call_73>, nullptr, {true, 2, 1}, &numbers_73, &defaults_73},
  {"vessel.apparent_distance_with_underwater_view", "tankwright::vessel::apparent_distance", "Snell's law", required_74, fields_74, false, nullptr, &answer_with<&call_74>, nullptr, {true, 4, 1}, &numbers_74, &defaults_74},
  {"vessel.apparent_distance_with_view_and_angle_in_air", "tankwright::vessel::apparent_distance", "Snell's law", required_75, fields_75, false, nullptr, &answer_with<&call_75>, nullptr, {true, 5, 1}, &numbers_75, &defaults_75},
  {"vessel.clearance_for", "tankwright::vessel::clearance_for", "Snell's law", required_76, fields_76, false, nullptr, &answer_with<&call_76>, nullptr, {true, 4, 1}, &numbers_76, &defaults_76},
  {"vessel.lateral_magnification", "tankwright::vessel::lateral_magnification", "Snell's law", required_77, fields_77, false, nullptr, &answer_with<&call_77>, nullptr, {true, 5, 1}, &numbers_77, &defaults_77},
  {"vessel.ray_shift", "tankwright::vessel::ray_shift", "Snell's law", required_78, fields_78, false, nullptr, &answer_with<&call_78>, nullptr, {true, 3, 1}, &numbers_78, &defaults_78},
};

}  // namespace

std::span<const row> vessel_rows() { return rows; }

std::span<const constant> vessel_constants() {
  static const constant all[] = {
    named("silicone_sustained_tension", ::tankwright::vessel::silicone_sustained_tension),
    named("aragonite", ::tankwright::vessel::aragonite),
    named("calcite", ::tankwright::vessel::calcite),
    named("quartz", ::tankwright::vessel::quartz),
    named("simple_cubic_packing", ::tankwright::vessel::simple_cubic_packing),
    named("closest_packing", ::tankwright::vessel::closest_packing),
    named("silicone_seam_tension", ::tankwright::vessel::silicone_seam_tension),
    named("water_drop", ::tankwright::vessel::water_drop),
    named("household_leak", ::tankwright::vessel::household_leak),
    named("cast_acrylic_long_term_stress", ::tankwright::vessel::cast_acrylic_long_term_stress),
    named("usual_largest_width", ::tankwright::vessel::usual_largest_width),
    named("usual_largest_height", ::tankwright::vessel::usual_largest_height),
    named("default_repose", ::tankwright::vessel::default_repose),
    named("usual_clearance", ::tankwright::vessel::usual_clearance),
  };
  return all;
}

}  // namespace tankwright_formulas
