// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much head does the wall of a pipe cost? Darcy-Weisbach with Colebrook-White, solved to rounding, from laminar to
/// fully rough flow. Other formulas, to compare with, are in friction_cross_checks.hpp.
#pragma once

#include <algorithm>
#include <cmath>
#include <span>
#include <tankwright/core/batch.hpp>
#include <tankwright/numerics/root.hpp>
#include <tankwright/plumbing/detail/friction_kernel.hpp>
#include <tankwright/plumbing/pipe_run.hpp>
#include <tankwright/water/liquid.hpp>

namespace tankwright::plumbing {

inline constexpr citation colebrook_1939{
    "Colebrook C.F.", 1939,
    "Turbulent flow in pipes, with particular reference to the transition region between the smooth and rough pipe "
    "laws",
    "J. Inst. Civ. Eng. 11:133-156; constants as in Clamond 2009, Ind. Eng. Chem. Res. 48:3665, eq. 1",
    standing::secondary};
inline constexpr citation moody_1944{"Moody L.F.", 1944, "Friction factors for pipe flow", "Trans. ASME 66:671-684",
                                     standing::from_memory};

/// Reynolds number Re = V D / nu.
class reynolds_number : public core::scalar<reynolds_number> {
  using scalar::scalar;
};

/// Height of the roughness of the wall over the bore, e/D.
class relative_roughness : public core::scalar<relative_roughness> {
  using scalar::scalar;
};

/// Darcy's friction factor, in h = f (L/D) V^2/2g. Fanning's, of many British and chemical texts, is a quarter of it.
class darcy_factor : public core::scalar<darcy_factor> {
  using scalar::scalar;
};

inline constexpr limits reynolds_limits{"Reynolds number", "", {core::tiny, core::largest}, {0.0, 1e8}, "Moody 1944"};
/// Of a flow in a pipe, which may be none.
inline constexpr limits pipe_reynolds_limits{"Reynolds number", "", not_negative, {0.0, 1e8}, "Moody 1944"};
inline constexpr limits flow_limits{"flow", "m3/s", any_finite};
inline constexpr limits head_limits{"head", "m", any_finite};

namespace detail {

/// A run as the Darcy-Weisbach law sees it: h = (friction f + minor) Q^2.
template <class T>
struct darcy_run {
  T re_per_flow;  // 4/(pi D nu)
  T e;            // relative roughness
  T friction;     // 8 L/(pi^2 g D^5)
  T minor;        // 8 K/(pi^2 g D^4)
};

template <class T>
struct loss_and_gradient {
  T h;
  T gradient;  // dh/dQ
};

/// The law of head loss that the library uses. The tests put other laws in its place.
template <class T>
struct colebrook_law {
  T g;
  T nu;
  using prepared = darcy_run<T>;
  /// 1/sqrt f of the last call, for a solver whose flows come closer to each other.
  struct memory {
    T root = T(0);
    T moved = T(0);  // by the last step; the next one would move it by about a thousandth of the cube
    [[nodiscard]] bool settled() const noexcept { return moved < T(1e-3); }
  };

  [[nodiscard]] prepared prepare(const run_numbers<T>& run) const noexcept {
    constexpr T pi = T(3.141592653589793238462643383279502884L);
    const T per_velocity_head = T(8) / (pi * pi * g * run.d * run.d * run.d * run.d);
    return {T(4) / (pi * run.d * nu), run.e / run.d, per_velocity_head * run.l / run.d, per_velocity_head * run.k};
  }

  /// Loss and gradient at a flow q >= 0.
  [[nodiscard]] loss_and_gradient<T> operator()(const prepared& run, T q) const noexcept {
    return with(run, q, [&](T re) { return friction_factor(re, run.e); });
  }
  /// The same by one step from the last call: exact when the flow has hardly changed since.
  [[nodiscard]] loss_and_gradient<T> operator()(const prepared& run, T q, memory& last) const noexcept {
    last.moved = T(0);
    return with(run, q, [&](T re) {
      const bool turbulent = re >= turbulent_start<T>;
      const T before = last.root;
      const friction<T> there = colebrook_again(turbulent ? re : turbulent_start<T>, run.e, last.root);
      last.moved = std::fabs(last.root - before);
      return turbulent ? there : transition(re, there);
    });
  }

 private:
  /// `factor(re)` gives f beyond laminar flow.
  template <class Factor>
  [[nodiscard]] loss_and_gradient<T> with(const prepared& run, T q, Factor factor) const noexcept {
    const T re = run.re_per_flow * q;
    const T minor = run.minor * q;
    if (re <= laminar_end<T>) {
      const T wall = run.friction * T(64) / run.re_per_flow;
      return {(wall + minor) * q, wall + T(2) * minor};
    }
    const auto [f, slope] = factor(re);
    const T wall = run.friction * f * q;
    return {(wall + minor) * q, wall * (T(2) + slope) + T(2) * minor};
  }
};

[[nodiscard]] inline colebrook_law<double> law_for(const water::liquid& water) {
  return {standard_gravity.value(), water::kinematic_viscosity_of(water).value()};
}

/// What head_loss and its slope have in common: the checks, then the law at |Q|.
[[nodiscard]] inline loss_and_gradient<double> loss_of_run(std::string_view function, const pipe_run& run, double q,
                                                           const water::liquid& water, range_policy policy) {
  const run_numbers<double> numbers = numbers_of(function, run, losses::central, policy);
  core::check_element(function, run.label, flow_limits, q);
  if (numbers.closed && q != 0.0) core::refuse_element(function, run.label, "has its valve shut: no flow passes");
  const colebrook_law<double> law = law_for(water);
  const darcy_run<double> prepared = law.prepare(numbers);
  const double size = std::fabs(q);
  core::check_element(function, run.label, pipe_reynolds_limits, prepared.re_per_flow * size, policy);
  return law(prepared, size);
}

}  // namespace detail

/// Mean velocity of the water in a full pipe.
///
///   V = Q / (pi D^2/4)
///
/// @param flow   Q [m^3/s], either sign
/// @param bore   D [m] > 0
/// @return       velocity [m/s], with the sign of the flow
/// @throws       invalid_input
/// @accuracy     exact
/// @source       continuity
[[nodiscard]] inline velocity mean_velocity(flow_rate flow, pipe_bore bore) {
  constexpr std::string_view here = "tankwright::plumbing::mean_velocity";
  const double d = bore.diameter().value();
  core::check(here, flow_limits, flow.value());
  core::check(here, bore_limits, d);
  return velocity::from_value(flow.value() / (0.7853981633974483 * d * d));
}

/// Reynolds number of the flow in a full pipe.
///
///   Re = V D / nu = 4 |Q| / (pi D nu)
///
/// @param flow   Q [m^3/s], either sign
/// @param bore   D [m] > 0
/// @param water  density and viscosity at the pipe's temperature
/// @return       Reynolds number
/// @throws       invalid_input
/// @accuracy     that of the viscosity
/// @source       definition
[[nodiscard]] inline reynolds_number reynolds(flow_rate flow, pipe_bore bore, const water::liquid& water) {
  const double v = std::fabs(mean_velocity(flow, bore).value());
  return reynolds_number{v * bore.diameter().value() / water::kinematic_viscosity_of(water).value()};
}

/// Friction factor of a full round pipe, laminar to rough (Colebrook-White).
///
///   Re <= 2000: f = 64/Re;   Re >= 4000: 1/sqrt(f) = -2 log10( (e/D)/3.7 + 2.51/(Re sqrt(f)) );
///   between: the cubic in Re that joins them in value and slope
///
/// @param re     Reynolds number, above 0, to 1e8
/// @param e      relative roughness e/D, 0 to 0.05
/// @param policy `extrapolate` to go past these ranges (e/D stays below 1)
/// @return       Darcy friction factor
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1e-15 against Colebrook-White and 64/Re; the formula about 5 % against measured pipes; between 2000
///               and 4000 the flow itself is undecided
/// @source       Colebrook 1939; Hagen-Poiseuille; range of Moody 1944
[[nodiscard]] inline darcy_factor friction_factor(reynolds_number re, relative_roughness e,
                                                  range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::friction_factor";
  core::check(here, reynolds_limits, re.value(), policy);
  core::check(here, relative_roughness_limits, e.value(), policy);
  return darcy_factor{detail::friction_factor(re.value(), e.value()).f};
}

/// Friction factors of many flows: element i of the result from element i of both inputs.
///
///   as the scalar function
///
/// @param re     Reynolds numbers, above 0, to 1e8
/// @param e      relative roughnesses, 0 to 0.05; as many as `re`
/// @param result Darcy friction factors; as many as `re`. May not overlap the inputs. Untouched when the call throws.
/// @param policy `extrapolate` to go past these ranges
/// @throws       invalid_input, out_of_range (for the first bad element)
/// @accuracy     as the scalar function
/// @source       Colebrook 1939
inline void friction_factor(std::span<const reynolds_number> re, std::span<const relative_roughness> e,
                            std::span<darcy_factor> result, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::friction_factor";
  const std::size_t size = re.size();
  core::check_same_size(here, size, e.size());
  core::check_same_size(here, size, result.size());
  core::check_all(
      here, reynolds_limits, size, [&](std::size_t i) { return re[i].value(); }, policy);
  core::check_all(
      here, relative_roughness_limits, size, [&](std::size_t i) { return e[i].value(); }, policy);

  // First as if all were turbulent, without a branch; then those that are not.
  for (std::size_t i = 0; i < size; ++i) {
    const double turbulent = std::max(re[i].value(), detail::turbulent_start<double>);
    result[i] = darcy_factor{detail::colebrook(turbulent, e[i].value()).f};
  }
  for (std::size_t i = 0; i < size; ++i) {
    if (re[i].value() >= detail::turbulent_start<double>) continue;
    result[i] = darcy_factor{detail::friction_factor(re[i].value(), e[i].value()).f};
  }
}

/// Head lost in a run of pipe with its fittings (Darcy-Weisbach, Colebrook-White).
///
///   h = (f L/D + K) V |V| / 2g
///
/// @param run    bore D [m] > 0; length L [m] >= 0; roughness e [m], 0 <= e/D <= 0.05; sum of K >= 0 (central value)
/// @param flow   Q [m^3/s]; the loss takes its sign
/// @param water  density and viscosity at the pipe's temperature
/// @param policy `extrapolate` to go past Re 1e8 or e/D 0.05
/// @return       head [m of the flowing water]
/// @throws       invalid_input, out_of_range (names the run by its label, the argument, its value and the limits)
/// @accuracy     1e-14 against the formula; about 5 % against measured pipes, and the fittings as their band says
/// @source       Colebrook 1939; Crane TP-410 (2009) ch. 1
[[nodiscard]] inline head head_loss(const pipe_run& run, flow_rate flow, const water::liquid& water,
                                    range_policy policy = range_policy::published) {
  const double q = flow.value();
  return head::from_value(
      std::copysign(detail::loss_of_run("tankwright::plumbing::head_loss", run, q, water, policy).h, q));
}

/// How steeply the head lost in a run grows with the flow: the derivative of `head_loss`, in closed form.
///
///   dh/dQ = ( f (2 + d ln f/d ln Re) L/D + 2 K ) |V| / (2 g A)
///
/// @param run    as for `head_loss`
/// @param flow   Q [m^3/s], either sign
/// @param water  density and viscosity at the pipe's temperature
/// @param policy `extrapolate` to go past Re 1e8 or e/D 0.05
/// @return       head per flow [s/m^2]
/// @throws       invalid_input, out_of_range (names the run by its label, the argument, its value and the limits)
/// @accuracy     1e-14 against the derivative of the formula
/// @source       Colebrook 1939, differentiated
[[nodiscard]] inline hydraulic_resistance head_loss_gradient(const pipe_run& run, flow_rate flow,
                                                             const water::liquid& water,
                                                             range_policy policy = range_policy::published) {
  return hydraulic_resistance::from_value(
      detail::loss_of_run("tankwright::plumbing::head_loss_gradient", run, flow.value(), water, policy).gradient);
}

/// Flow that a head drives through a run: the inverse of `head_loss`.
///
///   the Q with head_loss(Q) = H
///
/// @param run    as for `head_loss`; with neither length nor loss coefficient it would pass anything, and is refused
/// @param drive  H [m of the flowing water]; the flow takes its sign
/// @param water  density and viscosity at the pipe's temperature
/// @param policy `extrapolate` to go past Re 1e8 or e/D 0.05
/// @return       flow [m^3/s]; zero through a shut valve
/// @throws       invalid_input, out_of_range (names the run by its label, the argument, its value and the limits)
/// @accuracy     1e-14 against the inverse of the formula
/// @source       Colebrook 1939
[[nodiscard]] inline flow_rate flow_for_head(const pipe_run& run, head drive, const water::liquid& water,
                                             range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::flow_for_head";
  water::kernel::check_flowing(here, water);
  const detail::run_numbers<double> numbers = detail::numbers_of(here, run, losses::central, policy);
  core::check_element(here, run.label, head_limits, drive.value());
  if (numbers.l == 0.0 && numbers.k == 0.0) {
    core::refuse_element(here, run.label, "resists nothing: give it a length or a loss coefficient");
  }
  const double h = std::fabs(drive.value());
  if (h == 0.0 || numbers.closed) return flow_rate::from_value(0.0);
  const detail::colebrook_law<double> law = detail::law_for(water);
  const auto prepared = law.prepare(numbers);
  // f stays above 0.001 and above the laminar line: each gives a flow that is too large.
  const double rough_pipe = std::sqrt(h / (0.001 * prepared.friction + prepared.minor));
  const double laminar = h * prepared.re_per_flow / (64.0 * prepared.friction);  // infinite without a wall
  const double most = std::fmin(laminar, rough_pipe);
  const double q = numerics::bracketed_root<double>(
      here, "flow", [&](double x) { return law(prepared, x).h - h; }, 0.0, most * (1.0 + 1e-12));
  core::check_element(here, run.label, pipe_reynolds_limits, prepared.re_per_flow * q, policy);
  return flow_rate::from_value(std::copysign(q, drive.value()));
}

}  // namespace tankwright::plumbing
