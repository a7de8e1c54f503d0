// SPDX-License-Identifier: BSL-1.0
/// @file
/// Will my drains take it, and how will they sound? The capacity of a drain in every mode, the mode for a flow, and
/// what is left when one of several is blocked.
///
/// A drain has several capacities, and quoting one without its mode is the classic error: a pipe of one inch carries
/// eight times as much as a full siphon as it does quietly, with air in it.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include <tankwright/numerics/solids.hpp>
#include <tankwright/plumbing/overflow.hpp>
#include <tankwright/plumbing/siphon.hpp>

namespace tankwright::plumbing {

inline constexpr citation hills_1983{"Hills P.D.", 1983, "Designing piping for gravity flow",
                                     "Chemical Engineering 90(18):111; self-venting below J* = 0.3",
                                     standing::secondary};
inline constexpr citation wyly_eaton_1961{
    "Wyly R.S., Eaton H.N.", 1961, "Capacities of stacks in sanitary drainage systems for buildings",
    "NBS Monograph 31; Q = 27.8 r^(5/3) d^(8/3) in US gpm and inches", standing::from_memory};

inline constexpr limits drain_flow_limits{"flow", "m3/s", not_negative};
inline constexpr limits drain_number_limits{"drain number", "", not_negative};
inline constexpr limits stack_share_limits{
    "filled", "", zero_to_one, {0.25, 1.0 / 3.0}, "Wyly and Eaton 1961 (from memory)"};
inline constexpr limits fill_ratio_limits{"depth / bore", "", above_zero_to_one};
inline constexpr limits slope_limits{"slope", "", positive};
inline constexpr limits manning_limits{"manning_n", "", positive};

/// Below it a vertical drain carries its air back up beside the water, quietly.
inline constexpr double self_venting_drain_number = 0.3;
/// Above it the water sweeps all air along and the pipe runs full.
inline constexpr double full_drain_number = 1.0;

/// The drain number J* of the flow in a vertical pipe.
///
///   J* = V / sqrt(g D) = 4 Q / (pi D^2 sqrt(g D))
///
/// @param bore D [m] > 0
/// @param flow Q [m^3/s] >= 0
/// @return     [1] J*: self-venting below 0.3, surging to 1, full above
/// @throws     invalid_input
/// @accuracy   exact; the limits of the modes are soft, about 20 %
/// @source     Hills 1983
[[nodiscard]] inline double drain_number(pipe_bore bore, flow_rate flow) {
  constexpr std::string_view here = "tankwright::plumbing::drain_number";
  const double d = bore.diameter().value();
  core::check(here, bore_limits, d);
  core::check(here, drain_flow_limits, flow.value());
  return flow.value() / (detail::circle(d) * std::sqrt(standard_gravity.value() * d));
}

/// Flow in a vertical pipe at a drain number: at 0.3, what a drain carries quietly.
///
///   Q = J* (pi/4) D^2.5 sqrt(g)
///
/// @param bore   D [m] > 0
/// @param number [1] J* >= 0
/// @return       flow [m^3/s]
/// @throws       invalid_input
/// @accuracy     as `drain_number`
/// @source       Hills 1983
[[nodiscard]] inline flow_rate flow_at_drain_number(pipe_bore bore, double number = self_venting_drain_number) {
  constexpr std::string_view here = "tankwright::plumbing::flow_at_drain_number";
  const double d = bore.diameter().value();
  core::check(here, bore_limits, d);
  core::check(here, drain_number_limits, number);
  return flow_rate::from_value(number * detail::circle(d) * std::sqrt(standard_gravity.value() * d));
}

/// Flow down a tall vented stack, as a sheet on its wall that fills part of its section.
///
///   Q = 27.8 r^(5/3) d^(8/3)   (US gallons per minute, inches)
///
/// @param bore   d [m] > 0
/// @param filled share r of the section, 1/4 to 1/3
/// @param policy `extrapolate` to go past this range
/// @return       flow [m^3/s]
/// @throws       invalid_input, out_of_range
/// @accuracy     about 10 % where the fall is longer than a few metres and the stack is vented (from memory); a short
/// drain
///               from the top of a box follows `flow_at_drain_number`
/// @source       Wyly and Eaton 1961
[[nodiscard]] inline flow_rate stack_capacity(pipe_bore bore, proportion filled = fraction(1.0 / 3.0),
                                              range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::stack_capacity";
  core::check(here, bore_limits, bore.diameter().value());
  core::check(here, stack_share_limits, filled.value(), policy);
  return us_gallons_per_minute(27.8 * std::pow(filled.value(), 5.0 / 3.0) *
                               std::pow(in_inches(bore.diameter()), 8.0 / 3.0));
}

// ---- a drain that runs nearly level, part full ----------------------------------------------------------------------

/// The wet section of a round pipe.
struct wet_section {
  tankwright::area area;
  length wetted_perimeter;
  length hydraulic_radius;
  length surface_width;
};

/// Geometry of the water in a part-full round pipe.
///
///   theta = 2 acos(1 - 2 y/D),   A = D^2 (theta - sin theta)/8,   P = theta D/2,   R = A/P
///
/// @param bore  D [m] > 0
/// @param depth y [m], above 0, to D
/// @return      area [m^2], wetted perimeter, hydraulic radius and width of the surface [m]
/// @throws      invalid_input
/// @accuracy    exact
/// @source      geometry
[[nodiscard]] inline wet_section part_full(pipe_bore bore, length depth) {
  constexpr std::string_view here = "tankwright::plumbing::part_full";
  const double d = bore.diameter().value();
  core::check(here, bore_limits, d);
  core::check(here, fill_ratio_limits, depth.value() / d);
  const double theta = numerics::kernel::chord_angle(0.5 * d, depth.value());
  const double a = d * d * numerics::kernel::x_minus_sin(theta) / 8.0, p = 0.5 * theta * d;
  return {area::from_value(a), length::from_value(p), length::from_value(a / p),
          length::from_value(d * std::sin(0.5 * theta))};
}

/// A nearly level drain, by Manning.
struct part_full_drain {
  required<pipe_bore> bore;
  required<double> slope;    ///< [1] fall over length
  double manning_n = 0.010;  ///< [s/m^(1/3)] smooth plastic 0.009 to 0.011 (from memory)
};

/// What runs in a nearly level drain.
struct part_full_answer {
  flow_rate flow;
  tankwright::velocity velocity;
};

namespace detail {

inline void check_part_full(std::string_view here, const part_full_drain& drain) {
  core::check(here, bore_limits, drain.bore->diameter().value());
  core::check(here, slope_limits, drain.slope);
  core::check(here, manning_limits, drain.manning_n);
}

[[nodiscard]] inline double manning_velocity(double r, double slope, double n) noexcept {
  return std::cbrt(r * r) * std::sqrt(slope) / n;
}

}  // namespace detail

/// Flow in a nearly level drain at a depth (Manning).
///
///   V = R^(2/3) S^(1/2) / n,   Q = V A
///
/// @param drain bore D [m] > 0; slope S > 0; n > 0
/// @param depth y [m], above 0, to D
/// @return      flow [m^3/s] and velocity [m/s]
/// @throws      invalid_input
/// @accuracy    10 % with a constant n (from memory); most flow, 7.6 % more than full, at y/D = 0.938
/// @source      Manning 1891; Chow 1959 (from memory)
[[nodiscard]] inline part_full_answer part_full_flow(const part_full_drain& drain, length depth) {
  detail::check_part_full("tankwright::plumbing::part_full_flow", drain);
  const wet_section wet = part_full(drain.bore, depth);
  const double v = detail::manning_velocity(wet.hydraulic_radius.value(), drain.slope, drain.manning_n);
  return {flow_rate::from_value(v * wet.area.value()), velocity::from_value(v)};
}

/// Depth at which a nearly level drain carries a flow (Manning): the lower of the two where there are two.
///
///   y with part_full_flow(y) = Q
///
/// @param drain bore D [m] > 0; slope S > 0; n > 0
/// @param flow  Q [m^3/s] > 0
/// @return      depth [m]
/// @throws      invalid_input; out_of_range when the drain cannot carry the flow at any depth
/// @accuracy    1e-12 against `part_full_flow`
/// @source      Manning 1891
[[nodiscard]] inline length part_full_depth(const part_full_drain& drain, flow_rate flow) {
  constexpr std::string_view here = "tankwright::plumbing::part_full_depth";
  static constexpr limits some_flow_limits{"flow", "m3/s", positive};
  constexpr double fullest = 0.93818;  // y/D of the most flow
  detail::check_part_full(here, drain);
  core::check(here, some_flow_limits, flow.value());
  const double d = drain.bore->diameter().value();
  const auto at = [&](double y) { return part_full_flow(drain, length::from_value(y)).flow.value() - flow.value(); };
  const double most = at(fullest * d) + flow.value();
  if (flow.value() > most) {
    core::fail<out_of_range>(here, "flow", flow.value(), "m3/s",
                             "is more than the drain carries at any depth, " + core::number_with_unit(most, "m3/s"));
  }
  return length::from_value(numerics::bracketed_root(here, "depth", at, 1e-9 * d, fullest * d));
}

/// A nearly level drain, by Darcy and Weisbach.
struct part_full_pipe {
  required<pipe_bore> bore;
  required<double> slope;             ///< [1] fall over length
  length roughness = smooth_plastic;  ///< of the wall
  water::liquid water;
};

/// Flow in a nearly level drain at a depth (Darcy-Weisbach with Colebrook-White on the hydraulic diameter).
///
///   V = sqrt(8 g R S / f),   f at Re = 4 R V/nu and roughness over 4 R
///
/// @param pipe   bore D [m] > 0; slope S > 0; roughness [m] >= 0; density and viscosity
/// @param depth  y [m], above 0, to D
/// @param policy `extrapolate` to go past relative roughness 0.05
/// @return       flow [m^3/s] and velocity [m/s]
/// @throws       invalid_input, out_of_range
/// @accuracy     5 % (from memory)
/// @source       Colebrook 1939; Crane TP-410, ex. 7.26
[[nodiscard]] inline part_full_answer part_full_flow(const part_full_pipe& pipe, length depth,
                                                     range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::part_full_flow";
  core::check(here, slope_limits, pipe.slope);
  core::check(here, roughness_limits, pipe.roughness.value());
  const wet_section wet = part_full(pipe.bore, depth);
  const double hydraulic = 4.0 * wet.hydraulic_radius.value();
  core::check(here, relative_roughness_limits, pipe.roughness.value() / hydraulic, policy);
  // A full pipe of the hydraulic diameter, one metre long, that loses the slope.
  const pipe_run same{
      .bore = pipe_bore{length::from_value(hydraulic)}, .length = metres(1.0), .roughness = pipe.roughness};
  const flow_rate full = flow_for_head(same, metres(pipe.slope), pipe.water, policy);
  const velocity v = mean_velocity(full, same.bore);
  return {flow_rate::from_value(v.value() * wet.area.value()), v};
}

// ---- the drains of a display ----------------------------------------------------------------------------------------

/// One drain from the display or its overflow box.
struct drain {
  pipe_run pipe;                ///< from its open top to its end; fittings without the exit
  required<length> drop;        ///< from the water in the box to the water in the sump, or to the pipe's end
  required<length> inlet_head;  ///< how high the water may stand over its top before the box runs over
  bool strainer = false;        ///< over its top
  bool runs_full = false;       ///< set up to run full: its top lies deep enough that no air comes in
};

inline constexpr limits inlet_head_limits{"inlet_head", "m", not_negative};

namespace detail {

inline void check_drain(std::string_view here, const drain& drain) {
  (void)numbers_of(here, drain.pipe);
  core::check_element(here, drain.pipe.label, siphon_drop_limits, drain.drop->value());
  core::check_element(here, drain.pipe.label, inlet_head_limits, drain.inlet_head->value());
}

}  // namespace detail

/// How a drain runs.
enum class drain_mode {
  self_venting,  ///< quiet, with air in the middle
  surging,       ///< gulps air: noise, swinging level; a siphon that starts passes through it
  full,          ///< full of water
  overloaded,    ///< takes less than the flow: the box runs over
};

/// What a drain carries in each mode, and which one a flow puts it in.
struct drain_answer {
  drain_mode mode;
  double number;              ///< [1] J* of the flow
  flow_rate self_venting;     ///< what it carries quietly
  flow_rate stack;            ///< as a tall vented stack, one third full
  estimate<flow_rate> full;   ///< as a full siphon
  estimate<flow_rate> inlet;  ///< what its top lets in at the inlet head, with air in it
  /// What counts: of a drain that runs full the siphon, of every other the lower of both.
  estimate<flow_rate> carries;
  flow_rate surely;  ///< the low end of that
  tankwright::caution caution;
};

inline constexpr caution drain_caution{
    "A drain that must run full has no reserve: give the display a second drain that can carry the whole flow, and "
    "test it with the first one shut, pump running and someone at the switch."};

/// Capacity of a drain in all modes, and the mode for a flow.
///
///   overloaded above what counts (central): the siphon of a drain that runs full, for which its top is an entrance
///   loss and no weir, and the least of inlet and siphon of every other; else full where it runs full, and by J* where
///   it does not: self-venting below 0.3, surging below 1, full above
///
/// @param drain  pipe, drop and inlet head [m] >= 0
/// @param flow   Q [m^3/s] >= 0 that it is to carry
/// @param water  density and viscosity
/// @return       the mode, the capacities [m^3/s], a caution
/// @throws       invalid_input, out_of_range (names the drain by the label of its pipe)
/// @accuracy     limits of the modes about 20 %; bands as given
/// @source       Hills 1983; EN 12056-3; Wyly and Eaton 1961; energy equation
[[nodiscard]] inline drain_answer drain_mode_for(const drain& drain, flow_rate flow, const water::liquid& water) {
  constexpr std::string_view here = "tankwright::plumbing::drain_mode_for";
  core::check_element(here, drain.pipe.label, drain_flow_limits, flow.value());
  detail::check_drain(here, drain);
  water::kernel::check_flowing(here, water);
  const pipe_bore bore = drain.pipe.bore;
  const auto full = siphon_flow(drain.pipe, drain.drop, water);
  const auto inlet = flow_over(standpipe{.bore = bore, .strainer = drain.strainer}, drain.inlet_head).flow;
  const double number = drain_number(bore, flow);
  const estimate<flow_rate> carries =
      drain.runs_full ? full
                      : estimate<flow_rate>{std::min(full.low, inlet.low), std::min(full.central, inlet.central),
                                            std::min(full.high, inlet.high),
                                            "siphon formula, inlets and the losses of the fittings"};
  const drain_mode mode = flow > carries.central               ? drain_mode::overloaded
                          : drain.runs_full                    ? drain_mode::full
                          : number < self_venting_drain_number ? drain_mode::self_venting
                          : number < full_drain_number         ? drain_mode::surging
                                                               : drain_mode::full;
  return {mode,        number,       flow_at_drain_number(bore), stack_capacity(bore), full, inlet, carries,
          carries.low, drain_caution};
}

/// What the other drains make of the flow when one is blocked.
struct blocked_drain {
  std::string blocked;     ///< label of the drain that is shut
  flow_rate self_venting;  ///< what the others carry quietly
  flow_rate surely;        ///< what they carry full, each at the low end of its bands
  bool quiet;              ///< they take the flow quietly
  bool holds;              ///< they take the flow
};

/// The drains of a display, each blocked in turn.
struct blocked_answer {
  std::vector<blocked_drain> cases;  ///< one a drain
  bool holds;                        ///< in every case
  tankwright::caution caution;
};

namespace detail {

/// The cases of blocked drains from what each drain by itself does; `each` in the order of the drains.
[[nodiscard]] inline blocked_answer blocked_cases(const std::vector<drain>& drains,
                                                  const std::vector<drain_answer>& each, flow_rate flow) {
  flow_rate self_venting{}, surely{};
  for (const drain_answer& d : each) {
    self_venting += d.self_venting;
    surely += d.surely;
  }
  blocked_answer answer{{}, true, drain_caution};
  for (std::size_t i = 0; i < drains.size(); ++i) {
    const flow_rate quiet = self_venting - each[i].self_venting, sure = surely - each[i].surely;
    answer.cases.push_back({drains[i].pipe.label, quiet, sure, flow <= quiet && flow <= sure, flow <= sure});
    answer.holds = answer.holds && flow <= sure;
  }
  return answer;
}

}  // namespace detail

/// Whether the drains carry the flow with any one of them blocked.
///
///   sum over the others of what each carries, at the low ends of their bands, against the flow
///
/// @param drains two or more
/// @param flow   Q [m^3/s] >= 0 of all returns
/// @param water  density and viscosity
/// @return       one case a drain, and whether all hold
/// @throws       invalid_input, out_of_range (names the drain by the label of its pipe)
/// @accuracy     as `drain_mode_for`; drains that share a pipe further down are not two drains
/// @source       as `drain_mode_for`
[[nodiscard]] inline blocked_answer one_drain_blocked(const std::vector<drain>& drains, flow_rate flow,
                                                      const water::liquid& water) {
  constexpr std::string_view here = "tankwright::plumbing::one_drain_blocked";
  static constexpr limits count_of_drains_limits{"number of drains", "", {2.0, core::vast}};
  core::check(here, count_of_drains_limits, static_cast<double>(drains.size()));
  core::check(here, drain_flow_limits, flow.value());
  std::vector<drain_answer> each;
  for (const drain& d : drains) each.push_back(drain_mode_for(d, flow_rate{}, water));
  return detail::blocked_cases(drains, each, flow);
}

}  // namespace tankwright::plumbing
