// SPDX-License-Identifier: BSL-1.0
/// @file
/// What would another formula say? Explicit friction factors and Hazen-Williams, for comparing with tables and programs
/// that use them. The library itself works with friction.hpp.
#pragma once

#include <cmath>
#include <tankwright/plumbing/friction.hpp>

namespace tankwright::plumbing {

inline constexpr citation haaland_1983{"Haaland S.E.", 1983,
                                       "Simple and explicit formulas for the friction factor in turbulent pipe flow",
                                       "J. Fluids Eng. 105:89-90", standing::secondary};
inline constexpr citation churchill_1977{"Churchill S.W.", 1977,
                                         "Friction-factor equation spans all fluid-flow regimes",
                                         "Chem. Eng. 84(24):91-92", standing::secondary};
inline constexpr citation serghides_1984{"Serghides T.K.", 1984, "Estimate friction factor accurately",
                                         "Chem. Eng. 91(5):63-64", standing::secondary};
inline constexpr citation blasius_1913{"Blasius H.", 1913,
                                       "Das Aehnlichkeitsgesetz bei Reibungsvorgaengen in Fluessigkeiten",
                                       "Forsch. Ing.-Wes. 131", standing::secondary};
inline constexpr citation williams_hazen_1905{"Williams G.S., Hazen A.", 1905, "Hydraulic tables",
                                              "Wiley; SI form, exponents 1.852 and 4.8704", standing::from_memory};

inline constexpr limits reynolds_haaland_limits{"Reynolds number", "", {100.0, core::vast}, {4e3, 1e8}, "Haaland 1983"};
inline constexpr limits reynolds_serghides_limits{
    "Reynolds number", "", {100.0, core::vast}, {2100.0, 1e8}, "Serghides 1984"};
inline constexpr limits reynolds_churchill_limits{
    "Reynolds number", "", {1e-6, core::vast}, {0.0, 1e8}, "Churchill 1977"};
inline constexpr limits reynolds_blasius_limits{"Reynolds number", "", positive, {4e3, 1e5}, "Blasius 1913"};
inline constexpr limits hazen_williams_c_limits{"Hazen-Williams C", "", positive};

/// The coefficient C of Hazen and Williams: 150 for new plastic pipe; larger is smoother.
class hazen_williams_c : public core::scalar<hazen_williams_c> {
  using scalar::scalar;
};

namespace detail {

template <class T>
[[nodiscard]] inline T friction_haaland(T re, T e) noexcept {
  using std::log10;
  using std::pow;
  const T x = T(-1.8L) * log10(pow(e / T(3.7L), T(1.11L)) + T(6.9L) / re);
  return T(1) / (x * x);
}

template <class T>
[[nodiscard]] inline T friction_churchill(T re, T e) noexcept {
  using std::log;
  using std::pow;
  const T a = pow(T(2.457L) * log(T(1) / (pow(T(7) / re, T(0.9L)) + T(0.27L) * e)), T(16));
  const T b = pow(T(37530) / re, T(16));
  return T(8) * pow(pow(T(8) / re, T(12)) + pow(a + b, T(-1.5L)), T(1) / T(12));
}

template <class T>
[[nodiscard]] inline T friction_serghides(T re, T e) noexcept {
  using std::log10;
  const T a = T(-2) * log10(e / T(3.7L) + T(12) / re);
  const T b = T(-2) * log10(e / T(3.7L) + T(2.51L) * a / re);
  const T x = T(4.781L) - (a - T(4.781L)) * (a - T(4.781L)) / (b - T(2) * a + T(4.781L));
  return T(1) / (x * x);
}

/// Head [m] lost over l [m] of pipe of bore d [m] at q [m^3/s] >= 0.
template <class T>
[[nodiscard]] inline T loss_hazen_williams(T l, T q, T c, T d) noexcept {
  using std::pow;
  return T(10.67L) * l * pow(q / c, T(1.852L)) / pow(d, T(4.8704L));
}

}  // namespace detail

/// Friction factor by Haaland's explicit formula, to compare with `friction_factor`.
///
///   1/sqrt(f) = -1.8 log10( ((e/D)/3.7)^1.11 + 6.9/Re )
///
/// @param re     Reynolds number, 4e3 to 1e8
/// @param e      relative roughness e/D, 0 to 0.05
/// @param policy `extrapolate` to go past these ranges
/// @return       Darcy friction factor
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1.5 % against Colebrook-White
/// @source       Haaland 1983
[[nodiscard]] inline darcy_factor friction_factor_haaland(reynolds_number re, relative_roughness e,
                                                          range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::friction_factor_haaland";
  core::check(here, reynolds_haaland_limits, re.value(), policy);
  core::check(here, relative_roughness_limits, e.value(), policy);
  return darcy_factor{detail::friction_haaland(re.value(), e.value())};
}

/// Friction factor by Churchill's formula for all regimes, to compare with `friction_factor`.
///
///   f = 8 ( (8/Re)^12 + (A + B)^-1.5 )^(1/12),
///   A = (2.457 ln(1/((7/Re)^0.9 + 0.27 e/D)))^16,   B = (37530/Re)^16
///
/// @param re     Reynolds number, above 0, to 1e8
/// @param e      relative roughness e/D, 0 to 0.05
/// @param policy `extrapolate` to go past these ranges
/// @return       Darcy friction factor; between 2000 and 4000 it overshoots, f(3000) > f(4000)
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     3.2 % against Colebrook-White
/// @source       Churchill 1977
[[nodiscard]] inline darcy_factor friction_factor_churchill(reynolds_number re, relative_roughness e,
                                                            range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::friction_factor_churchill";
  core::check(here, reynolds_churchill_limits, re.value(), policy);
  core::check(here, relative_roughness_limits, e.value(), policy);
  return darcy_factor{detail::friction_churchill(re.value(), e.value())};
}

/// Friction factor by Serghides' shorter formula, to compare with `friction_factor`.
///
///   1/sqrt(f) = 4.781 - (A - 4.781)^2 / (B - 2 A + 4.781),
///   A = -2 log10((e/D)/3.7 + 12/Re),   B = -2 log10((e/D)/3.7 + 2.51 A/Re)
///
/// @param re     Reynolds number, 2100 to 1e8
/// @param e      relative roughness e/D, 0 to 0.05
/// @param policy `extrapolate` to go past these ranges
/// @return       Darcy friction factor
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.4 % against Colebrook-White, 0.5 % in a smooth pipe
/// @source       Serghides 1984
[[nodiscard]] inline darcy_factor friction_factor_serghides(reynolds_number re, relative_roughness e,
                                                            range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::friction_factor_serghides";
  core::check(here, reynolds_serghides_limits, re.value(), policy);
  core::check(here, relative_roughness_limits, e.value(), policy);
  return darcy_factor{detail::friction_serghides(re.value(), e.value())};
}

/// Friction factor of a smooth pipe by Blasius' power law, to compare with `friction_factor`.
///
///   f = 0.3164 / Re^(1/4)
///
/// @param re     Reynolds number, 4e3 to 1e5
/// @param policy `extrapolate` to go past this range
/// @return       Darcy friction factor
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     3 % against Colebrook-White for a smooth pipe
/// @source       Blasius 1913
[[nodiscard]] inline darcy_factor friction_factor_blasius(reynolds_number re,
                                                          range_policy policy = range_policy::published) {
  core::check("tankwright::plumbing::friction_factor_blasius", reynolds_blasius_limits, re.value(), policy);
  return darcy_factor{0.3164 / std::sqrt(std::sqrt(re.value()))};
}

/// Head lost in the straight pipe of a run by Hazen and Williams, to compare with tables that use it. Its fittings and
/// roughness do not enter.
///
///   h = 10.67 L Q^1.852 / (C^1.852 D^4.8704)   (m, m^3/s)
///
/// @param run    bore D [m] > 0; length L [m] >= 0
/// @param flow   Q [m^3/s]; the loss takes its sign
/// @param c      C > 0: 150 for plastic
/// @return       head [m of water]
/// @throws       invalid_input (names the run by its label, the argument, its value and the limits)
/// @accuracy     made for cold water, 2 in and larger, below 3 m/s; in 1 in pipe at Re 2e4 it is 11 % low
/// @source       Williams and Hazen 1905
[[nodiscard]] inline head head_loss_hazen_williams(const pipe_run& run, flow_rate flow, hazen_williams_c c) {
  constexpr std::string_view here = "tankwright::plumbing::head_loss_hazen_williams";
  const detail::run_numbers<double> numbers = detail::numbers_of(here, run);
  core::check_element(here, run.label, flow_limits, flow.value());
  core::check(here, hazen_williams_c_limits, c.value());
  const double size = detail::loss_hazen_williams(numbers.l, std::fabs(flow.value()), c.value(), numbers.d);
  return head::from_value(std::copysign(size, flow.value()));
}

}  // namespace tankwright::plumbing
