// SPDX-License-Identifier: BSL-1.0
/// @file
/// What do elbows, tees, valves and openings cost? Loss coefficients K of h = K V^2/2g, as estimates with their bands.
///
/// Crane's method: K = n f_T, where f_T belongs to the size of a fitting in steel and stays the same in plastic. A
/// solvent-weld elbow is Crane's "standard" one, n = 30, not the long-radius one.
#pragma once

#include <cmath>
#include <initializer_list>
#include <tankwright/plumbing/friction.hpp>
#include <tankwright/plumbing/pipe_sizes.hpp>

namespace tankwright::plumbing {

inline constexpr citation crane_tp410{"Crane Co.", 2009, "Flow of fluids through valves, fittings, and pipe",
                                      "Technical Paper 410, appendix A and ch. 2", standing::secondary};
inline constexpr citation hooper_1981{"Hooper W.B.", 1981, "The two-K method predicts head losses in pipe fittings",
                                      "Chem. Eng. 88(17):96-100", standing::secondary};
inline constexpr citation darby_2001{"Darby R.", 2001, "Correlate pressure drops through fittings",
                                     "Chem. Eng. 108(4):127-130", standing::secondary};

/// What is screwed, glued or welded into a run. A tee as the water goes through it: straight on, or round the corner.
enum class fitting {
  elbow_90,
  elbow_45,
  return_bend,
  tee_through_run,
  tee_through_branch,
  mitre_90,
  mitre_45,
  union_or_coupling,
  gate_valve,
  ball_valve,
  butterfly_valve,
  plug_valve,
  swing_check,
  lift_check,
  foot_valve_hinged,
  foot_valve_poppet,
};

/// A loss of a kind, and how often it comes.
struct fitted {
  estimate<loss_coefficient> loss;
  int count = 1;  ///< [1]
};

/// Where water enters a pipe from a tank.
struct pipe_entrance {
  required<pipe_bore> bore;
  bool projecting = false;  ///< the pipe stands into the tank; its lip does not count then
  length lip_radius{};      ///< of a flush, rounded edge
};

/// A change from one bore to another in the direction of the flow.
struct section_change {
  required<pipe_bore> from;
  required<pipe_bore> to;
  angle included_angle = degrees(180.0);  ///< of the cone; 180 degrees is a step
};

enum class tee_direction { joining, dividing };
enum class tee_branch_angle { forty_five, ninety };

/// A tee or wye with its flows. The run is straight through and of one bore.
struct tee {
  required<tee_direction> direction;
  tee_branch_angle angle = tee_branch_angle::ninety;
  required<pipe_bore> run_bore;
  required<pipe_bore> branch_bore;    ///< not larger than the run
  required<proportion> branch_share;  ///< flow in the branch over the combined flow
};

/// Losses of a tee, on the velocity of the combined flow. Joining streams can gain head: a negative K is real.
struct tee_loss {
  estimate<loss_coefficient> run;
  estimate<loss_coefficient> branch;
};

/// Hooper's two constants of a fitting.
struct two_k {
  double k1;          ///< [1]
  double k_infinity;  ///< [1]
};

/// Darby's three constants of a fitting.
struct three_k {
  double k1;   ///< [1]
  double k_i;  ///< [1]
  double k_d;  ///< [in^0.3]
};

inline constexpr two_k hooper_elbow_90{800.0, 0.40};
inline constexpr two_k hooper_elbow_90_long{800.0, 0.20};
inline constexpr two_k hooper_elbow_45{500.0, 0.20};
inline constexpr two_k hooper_tee_through_branch{500.0, 0.70};
inline constexpr two_k hooper_tee_through_run{200.0, 0.10};
inline constexpr two_k hooper_swing_check{1500.0, 1.50};
inline constexpr three_k darby_elbow_90{800.0, 0.14, 4.0};
inline constexpr three_k darby_elbow_90_long{800.0, 0.071, 4.2};
inline constexpr three_k darby_elbow_45{500.0, 0.071, 4.2};
inline constexpr three_k darby_tee_through_branch{500.0, 0.274, 4.0};
inline constexpr three_k darby_tee_through_run{200.0, 0.091, 4.0};
inline constexpr three_k darby_ball_valve{300.0, 0.017, 3.5};
inline constexpr three_k darby_swing_check{1500.0, 0.46, 4.0};

/// Water leaving a pipe, into air or into a tank: its velocity head is gone, whatever the shape of the end.
inline constexpr estimate<loss_coefficient> exit_loss = known_loss(1.0);

/// Between which two bores a loss coefficient is carried over.
struct basis_change {
  required<pipe_bore> from;  ///< the bore it was given for
  required<pipe_bore> to;    ///< the bore it is wanted for
};

inline constexpr limits fitting_bore_limits{"bore", "m", {2e-4, core::vast, edge::open}};
inline constexpr limits lip_radius_limits{"lip radius", "m", not_negative};
inline constexpr limits cone_angle_limits{"included angle", "deg", {0.0, 180.0 + 1e-9, edge::open}};
inline constexpr limits branch_ratio_limits{"branch bore over run bore", "", above_zero_to_one};
inline constexpr limits branch_share_limits{"branch share", "", zero_to_one};
inline constexpr limits positive_loss_limits{"loss coefficient", "", positive};
/// Of Hooper's and Darby's constants: what rules at low Reynolds numbers, and what rules at high ones.
inline constexpr limits laminar_constant_limits{"K_1", "", {0.0, 1e9}};
inline constexpr limits fitting_constant_limits{"K_infinity, K_i", "", {0.0, 1e6}};
inline constexpr limits count_limits{"count", "", not_negative};
inline constexpr limits leak_gap_limits{"open area", "m2", {0.0, 1.0}};
inline constexpr limits kv_limits{"Kv", "m3/h at 1 bar", positive};
inline constexpr limits darcy_limits{"friction factor", "", positive};
inline constexpr limits nominal_size_limits{"nominal size", "in", positive};

namespace detail {

/// Fully turbulent factor of a fitting of bore d [m]: f of Colebrook-White as Re goes to infinity, in commercial steel.
template <class T>
[[nodiscard]] inline T fully_turbulent(T d) noexcept {
  using std::log10;
  const T roots = log10(T(0.0018L) * T(0.0254L) / (T(3.7L) * d));
  return T(0.25L) / (roots * roots);
}

/// A K with a band of `share` of itself on both sides.
[[nodiscard]] constexpr estimate<loss_coefficient> with_band(double k, double share, std::string_view reason) noexcept {
  return {loss_coefficient{k * (1.0 - share)}, loss_coefficient{k}, loss_coefficient{k * (1.0 + share)}, reason};
}

inline constexpr std::string_view bend_reason =
    "Crane's coefficients are for steel fittings; others differ by some 30 %, and two close together interact";
inline constexpr std::string_view valve_reason =
    "valves of one kind differ by some 50 % between makers: prefer the Kv of yours";

/// Crane's n of K = n f_T and the band of it.
struct crane_row {
  double n;
  double band;
};
[[nodiscard]] constexpr crane_row crane_row_of(fitting kind) noexcept {
  switch (kind) {
    case fitting::elbow_90:
      return {30.0, 0.3};
    case fitting::elbow_45:
      return {16.0, 0.3};
    case fitting::return_bend:
      return {50.0, 0.3};
    case fitting::tee_through_run:
      return {20.0, 0.3};
    case fitting::tee_through_branch:
      return {60.0, 0.3};
    case fitting::mitre_90:
      return {60.0, 0.3};
    case fitting::mitre_45:
      return {15.0, 0.3};
    case fitting::gate_valve:
      return {8.0, 0.5};
    case fitting::ball_valve:
      return {3.0, 0.5};
    case fitting::butterfly_valve:
      return {45.0, 0.5};
    case fitting::plug_valve:
      return {18.0, 0.5};
    case fitting::swing_check:
      return {100.0, 0.5};
    case fitting::lift_check:
      return {600.0, 0.5};
    case fitting::foot_valve_hinged:
      return {75.0, 0.5};
    case fitting::foot_valve_poppet:
      return {420.0, 0.5};
    case fitting::union_or_coupling:
      break;
  }
  return {};  // has a K of its own
}

/// Crane's tee coefficients; y is the branch's share of the flow, b2 the square of the ratio of bores. Crane's pieces
/// differ by up to 7 % where they meet; here each gives way to the next where the two are equal.
template <class T>
struct tee_numbers {
  T run;
  T branch;
};
template <class T>
[[nodiscard]] inline tee_numbers<T> tee_joining(bool ninety, T b2, T y) noexcept {
  const T c = b2 <= T(0.35L) ? T(1) : std::fmax(T(0.55L), T(0.9L) * (T(1) - y));
  const T f = ninety ? T(0) : T(1.41L);
  const T rest = T(1) - y;
  const T branch = c * (T(1) + (y / b2) * (y / b2) - T(2) * rest * rest - f / b2 * y * y);
  const T run = ninety ? T(1.55L) * y - y * y : T(1) - rest * rest - f / b2 * y * y;
  return {run, branch};
}
template <class T>
[[nodiscard]] inline tee_numbers<T> tee_dividing(bool ninety, T b2, T y) noexcept {
  T branch;
  if (ninety) {
    branch = b2 <= T(4) / T(9) ? T(1) + (y / b2) * (y / b2)
                               : (T(1) + T(0.3L) * y * y) * (T(1) + T(0.3L) * (y / b2) * (y / b2));
  } else {
    const T g = b2 <= T(0.35L) ? std::fmax(T(0.85L), T(1.1L) - T(0.7L) * y) : std::fmax(T(0.6L), T(1) - T(0.6L) * y);
    constexpr T root_two = T(1.414213562373095048801688724209698079L);  // 2 cos 45 degrees
    branch = g * (T(1) + (y / b2) * (y / b2) - root_two * y / b2);
  }
  const T m = b2 <= T(0.4L) ? T(0.4L) : (y <= T(0.5L) ? T(2) : T(0.3L)) * (T(2) * y - T(1));
  return {m * y * y, branch};
}

[[nodiscard]] inline double checked_fitting_bore(std::string_view function, pipe_bore bore) {
  core::check(function, fitting_bore_limits, bore.diameter().value());
  return bore.diameter().value();
}

}  // namespace detail

/// Friction factor of a fitting's size in fully turbulent flow, Crane's f_T. It is that of steel, whatever the fitting
/// is made of.
///
///   f_T = 0.25 / log10(0.0018 in / (3.7 D))^2
///
/// @param bore   D [m] > 0.2 mm
/// @return       Darcy friction factor
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     3 % against Crane's table
/// @source       Crane TP-410 (2009) appendix A; limit of Colebrook-White
[[nodiscard]] inline darcy_factor fully_turbulent_factor(pipe_bore bore) {
  return darcy_factor{
      detail::fully_turbulent(detail::checked_fitting_bore("tankwright::plumbing::fully_turbulent_factor", bore))};
}

/// Loss coefficient of a fitting, on the velocity in its own bore, in turbulent flow.
///
///   K = n f_T;   a union or coupling has K = 0.08 (from memory)
///
/// @param kind   what it is; valves fully open
/// @param bore   D [m] > 0.2 mm
/// @return       K with its band
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     the band: 30 % for bends and tees, 50 % for valves and couplings; too low below Re 1e4 (`darby_loss`)
/// @source       Crane TP-410 (2009) appendix A, values of n from memory
[[nodiscard]] inline estimate<loss_coefficient> fitting_loss(fitting kind, pipe_bore bore) {
  const double d = detail::checked_fitting_bore("tankwright::plumbing::fitting_loss", bore);
  if (kind == fitting::union_or_coupling) return detail::with_band(0.08, 0.5, "depends on how it is put together");
  const detail::crane_row row = detail::crane_row_of(kind);
  return detail::with_band(row.n * detail::fully_turbulent(d), row.band,
                           row.band > 0.4 ? detail::valve_reason : detail::bend_reason);
}

/// Loss coefficient of the entrance from a tank into a pipe, on the velocity in the pipe.
///
///   projecting 0.78; flush by r/D: 0 0.50, 0.02 0.28, 0.04 0.24, 0.06 0.15, 0.10 0.09, 0.15 and more 0.04
///   (linear between)
///
/// @param opening bore D [m] > 0.2 mm; projecting or flush; radius r [m] >= 0 of a flush lip
/// @return        K with its band
/// @throws        invalid_input (names the argument, its value and the limits)
/// @accuracy      the band: 15 %
/// @source        Crane TP-410 (2009) appendix A
[[nodiscard]] inline estimate<loss_coefficient> entrance_loss(const pipe_entrance& opening) {
  constexpr std::string_view here = "tankwright::plumbing::entrance_loss";
  constexpr std::string_view reason = "measured edges and published values spread by some 15 %";
  const double d = detail::checked_fitting_bore(here, opening.bore);
  core::check(here, lip_radius_limits, opening.lip_radius.value());
  if (opening.projecting) return detail::with_band(0.78, 0.15, reason);
  constexpr double ratio[] = {0.0, 0.02, 0.04, 0.06, 0.10, 0.15, core::largest};
  constexpr double k[] = {0.50, 0.28, 0.24, 0.15, 0.09, 0.04, 0.04};
  const double r = opening.lip_radius.value() / d;
  int i = 0;
  while (r >= ratio[i + 1]) ++i;
  const double found = k[i] + (k[i + 1] - k[i]) * (r - ratio[i]) / (ratio[i + 1] - ratio[i]);
  return detail::with_band(found, 0.15, reason);
}

/// Loss coefficient of a change of bore, on the velocity in the smaller bore.
///
///   b = smaller/larger bore, s = sin(angle/2);
///   widening:  min(1, 2.6 s) (1 - b^2)^2;   narrowing: min(0.8 s, 0.5 sqrt s) (1 - b^2)
///
/// @param change  bores [m] > 0 in the direction of the flow; included angle of the cone, above 0 to 180 degrees
///                (a step)
/// @return        K with its band
/// @throws        invalid_input (names the argument, its value and the limits)
/// @accuracy      the band: 20 %; a sudden widening is Borda and Carnot's, good to a few per cent
/// @source        Crane TP-410 (2009) ch. 2, from memory; Crane changes formula at 45 degrees, here they meet at 45.2
///                and 46.0
[[nodiscard]] inline estimate<loss_coefficient> section_change_loss(const section_change& change) {
  constexpr std::string_view here = "tankwright::plumbing::section_change_loss";
  const double from = change.from->diameter().value();
  const double to = change.to->diameter().value();
  core::check(here, bore_limits, from);
  core::check(here, bore_limits, to);
  core::check(here, cone_angle_limits, in_degrees(change.included_angle));
  const double s = std::sin(0.5 * change.included_angle.value());
  constexpr std::string_view reason = "depends on the edges and on what lies upstream";
  if (to >= from) {
    const double step = 1.0 - from * from / (to * to);
    return detail::with_band(std::fmin(1.0, 2.6 * s) * step * step, 0.2, reason);
  }
  return detail::with_band(std::fmin(0.8 * s, 0.5 * std::sqrt(s)) * (1.0 - to * to / (from * from)), 0.2, reason);
}

/// Loss coefficients of a tee or a 45 degree wye by its flows, on the velocity of the combined flow in the run.
///
///   joining:  K_branch = C (1 + (y/b^2)^2 - 2 (1 - y)^2 - F (y/b)^2);   K_run = 1.55 y - y^2 at 90 degrees
///   dividing: K_branch = G (1 + H (y/b^2)^2 - J (y/b^2) cos a);         K_run = M y^2
///   with y the branch's share of the flow, b = branch/run bore, and C, F, G, H, J, M as Crane tabulates them
///
/// @param flows  direction, angle, bores [m] > 0 with branch <= run, share of the branch 0 to 1
/// @return       K of the way through the run and of the way through the branch; either may be negative
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     the band: 0.1 and 20 % of K, about the spread between published tee formulas
/// @source       Crane TP-410 (2009) ch. 2 with its errata
[[nodiscard]] inline tee_loss tee_losses(const tee& flows) {
  constexpr std::string_view here = "tankwright::plumbing::tee_losses";
  const double run = flows.run_bore->diameter().value();
  core::check(here, bore_limits, run);
  const double b = flows.branch_bore->diameter().value() / run;
  core::check(here, branch_ratio_limits, b);
  const double y = flows.branch_share->value();
  core::check(here, branch_share_limits, y);
  const bool ninety = flows.angle == tee_branch_angle::ninety;
  const auto k = flows.direction == tee_direction::joining ? detail::tee_joining(ninety, b * b, y)
                                                           : detail::tee_dividing(ninety, b * b, y);
  const auto banded = [](double central) {
    const double half = 0.1 + 0.2 * std::fabs(central);
    return estimate<loss_coefficient>{loss_coefficient{central - half}, loss_coefficient{central},
                                      loss_coefficient{central + half}, "published tee formulas spread this far"};
  };
  return {banded(k.run), banded(k.branch)};
}

/// Loss coefficient of a fitting at any Reynolds number by Hooper's two constants.
///
///   K = K_1/Re + K_inf (1 + 1 in/D)
///
/// @param constants of the fitting, for instance `hooper_elbow_90`
/// @param re        Reynolds number > 0 in the fitting's bore
/// @param bore      D [m] > 0.2 mm
/// @return          K with its band
/// @throws          invalid_input (names the argument, its value and the limits)
/// @accuracy        the band: 30 %
/// @source          Hooper 1981
[[nodiscard]] inline estimate<loss_coefficient> hooper_loss(const two_k& constants, reynolds_number re,
                                                            pipe_bore bore) {
  constexpr std::string_view here = "tankwright::plumbing::hooper_loss";
  core::check(here, reynolds_limits, re.value());
  core::check(here, laminar_constant_limits, constants.k1);
  core::check(here, fitting_constant_limits, constants.k_infinity);
  const double d = detail::checked_fitting_bore(here, bore) / 0.0254;
  return detail::with_band(constants.k1 / re.value() + constants.k_infinity * (1.0 + 1.0 / d), 0.3,
                           detail::bend_reason);
}

/// Loss coefficient of a fitting at any Reynolds number by Darby's three constants: the choice below Re 1e4.
///
///   K = K_1/Re + K_i (1 + K_d / NPS^0.3),   NPS the nominal size in inches
///
/// @param constants of the fitting, for instance `darby_elbow_90`
/// @param re        Reynolds number > 0 in the fitting's bore
/// @param size      nominal size [in] > 0
/// @return          K with its band
/// @throws          invalid_input (names the argument, its value and the limits)
/// @accuracy        the band: 30 %
/// @source          Darby 2001
[[nodiscard]] inline estimate<loss_coefficient> darby_loss(const three_k& constants, reynolds_number re,
                                                           nominal_size size) {
  constexpr std::string_view here = "tankwright::plumbing::darby_loss";
  core::check(here, reynolds_limits, re.value());
  core::check(here, nominal_size_limits, size.value());
  core::check(here, laminar_constant_limits, constants.k1);
  core::check(here, fitting_constant_limits, constants.k_i);
  core::check(here, {"K_d", "in^0.3", {0.0, 1e6}}, constants.k_d);
  return detail::with_band(
      constants.k1 / re.value() + constants.k_i * (1.0 + constants.k_d / std::pow(size.value(), 0.3)), 0.3,
      detail::bend_reason);
}

/// Loss coefficient of a valve from its Kv (or Cv), as its maker gives it for a position of the handle.
///
///   K = 2 (1 bar / 1000 kg/m^3) A^2 / Kv^2 = 1.599e9 D^4/Kv^2   (m, m^3/h)
///
/// @param valve  Kv > 0
/// @param bore   D [m] > 0 whose velocity K belongs to
/// @return       K
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     exact by the definition of Kv, up to the density of the water it was measured with (0.1 %)
/// @source       definition, IEC 60534; Crane TP-410M rounds the factor to 1.6e9
[[nodiscard]] inline loss_coefficient loss_from_flow_coefficient(flow_coefficient valve, pipe_bore bore) {
  constexpr std::string_view here = "tankwright::plumbing::loss_from_flow_coefficient";
  core::check(here, kv_limits, in_kv(valve));
  core::check(here, bore_limits, bore.diameter().value());
  return loss_coefficient{detail::loss_from_kv(in_kv(valve), bore.diameter().value())};
}

/// Kv of the valve that has a loss coefficient: the inverse of `loss_from_flow_coefficient`.
///
///   Kv = sqrt(1.599e9 D^4/K)   (m, m^3/h)
///
/// @param loss   K > 0
/// @param bore   D [m] > 0 whose velocity K belongs to
/// @return       Kv
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     as `loss_from_flow_coefficient`
/// @source       definition, IEC 60534
[[nodiscard]] inline flow_coefficient flow_coefficient_from_loss(loss_coefficient loss, pipe_bore bore) {
  constexpr std::string_view here = "tankwright::plumbing::flow_coefficient_from_loss";
  core::check(here, positive_loss_limits, loss.value());
  core::check(here, bore_limits, bore.diameter().value());
  return flow_coefficient::from_kv(std::sqrt(detail::loss_from_kv(1.0, bore.diameter().value()) / loss.value()));
}

/// A check valve that leaks like a loss coefficient backwards.
///
///   the Kv of K on the bore: sqrt(1.599e9 D^4/K)   (m, m^3/h)
///
/// @param loss   K > 0 of the valve against the flow; the larger, the better it holds
/// @param bore   D [m] > 0 whose velocity K belongs to
/// @return       the valve
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     exact for K; what K a worn valve has nobody knows: try a range
/// @source       definition of Kv, IEC 60534
[[nodiscard]] inline check_valve leaking_check_valve(loss_coefficient loss, pipe_bore bore) {
  constexpr std::string_view here = "tankwright::plumbing::leaking_check_valve";
  core::check(here, positive_loss_limits, loss.value());
  core::check(here, bore_limits, bore.diameter().value());
  return {.leak =
              flow_coefficient::from_kv(std::sqrt(detail::loss_from_kv(1.0, bore.diameter().value()) / loss.value()))};
}

/// A check valve that leaks through a gap: a flap that a grain of sand or a tubeworm holds open.
///
///   Kv = Cd a sqrt(2 (1 bar)/(1000 kg/m^3)),   Cd = 0.61 of a sharp-edged opening
///
/// @param gap    open area a [m^2], 0 (it holds) to 1
/// @return       the valve
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     30 %, by the shape of the gap
/// @source       orifice formula; definition of Kv, IEC 60534
[[nodiscard]] inline check_valve leaking_check_valve(area gap) {
  core::check("tankwright::plumbing::leaking_check_valve", leak_gap_limits, gap.value());
  return {.leak = flow_coefficient::from_kv(0.61 * gap.value() * std::sqrt(200.0) * 3600.0)};
}

/// A loss coefficient carried over to the velocity in another bore. Forgetting it is the commonest mistake with K.
///
///   K_2 = K_1 (D_2/D_1)^4
///
/// @param loss   K with its band
/// @param bores  the bore it was given for, and the one it is wanted for, [m] > 0
/// @return       K with its band, on the other bore
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     exact
/// @source       continuity; Crane TP-410 (2009) ch. 2
[[nodiscard]] inline estimate<loss_coefficient> on_bore(const estimate<loss_coefficient>& loss,
                                                        const basis_change& bores) {
  constexpr std::string_view here = "tankwright::plumbing::on_bore";
  const double from = bores.from->diameter().value();
  const double to = bores.to->diameter().value();
  core::check(here, bore_limits, from);
  core::check(here, bore_limits, to);
  const double ratio = to / from * (to / from);
  return map_rising(loss, [&](loss_coefficient k) {
    core::check(here, loss_limits, k.value());
    return loss_coefficient{k.value() * ratio * ratio};
  });
}

/// Sum of the losses of a run. All must be on the same bore.
///
///   K = sum of count_i K_i;   the bands are added too, as if all fittings erred the same way
///
/// @param parts  losses and how often each comes, count >= 0
/// @return       K with its band
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     that of the parts
/// @source       definition
[[nodiscard]] inline estimate<loss_coefficient> total_loss(std::initializer_list<fitted> parts) {
  constexpr std::string_view here = "tankwright::plumbing::total_loss";
  double low = 0.0, central = 0.0, high = 0.0;
  for (const fitted& part : parts) {
    core::check(here, count_limits, part.count);
    core::check(here, loss_limits, part.loss.central.value());
    low += part.count * part.loss.low.value();
    central += part.count * part.loss.central.value();
    high += part.count * part.loss.high.value();
  }
  return {loss_coefficient{low}, loss_coefficient{central}, loss_coefficient{high},
          "sum over the fittings, their bands added"};
}

/// Length of straight pipe that would cost the same head.
///
///   L = K D/f
///
/// @param loss   K, on the velocity in the pipe
/// @param bore   D [m] > 0
/// @param f      friction factor of that pipe > 0
/// @return       length [m]
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     exact; but a length found for steel is too short a penalty in plastic, whose f is smaller: use K
/// @source       Crane TP-410 (2009) ch. 2
[[nodiscard]] inline length equivalent_length(loss_coefficient loss, pipe_bore bore, darcy_factor f) {
  constexpr std::string_view here = "tankwright::plumbing::equivalent_length";
  core::check(here, loss_limits, loss.value());
  core::check(here, bore_limits, bore.diameter().value());
  core::check(here, darcy_limits, f.value());
  return length::from_value(loss.value() * bore.diameter().value() / f.value());
}

}  // namespace tankwright::plumbing
