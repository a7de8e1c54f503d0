// SPDX-License-Identifier: BSL-1.0
/// @file
/// How long until it is empty, or level? Vessels through orifices, pipes and over edges.
///
/// Heights are those of the water over the outlet. Where a closed form exists it is used; the rest is integrated in the
/// square root of the height, in which the integrand is smooth.
#pragma once

#include <cmath>
#include <type_traits>
#include <variant>

#include <tankwright/numerics/quadrature.hpp>
#include <tankwright/plumbing/overflow.hpp>
#include <tankwright/plumbing/vessel_shapes.hpp>
#include <tankwright/water/liquid.hpp>

namespace tankwright::plumbing {

// ---- outlets --------------------------------------------------------------------------------------------------------

/// What an outlet counts for: Cd times its area. Q = effective area times sqrt(2 g h).
class effective_area {
 public:
  constexpr explicit effective_area(area value) noexcept : value_{value} {}
  [[nodiscard]] constexpr area value() const noexcept { return value_; }

 private:
  area value_;
};

inline constexpr limits outlet_bore_limits{"bore", "m", positive};
inline constexpr limits outlet_resistance_limits{"resistance", "", positive};
inline constexpr limits outlet_limits{"outlet", "m2", positive};
inline constexpr limits from_limits{"from", "m", not_negative};
inline constexpr limits to_limits{"to", "m", not_negative};
inline constexpr limits to_above_zero_limits{"to", "m", positive};
inline constexpr limits inflow_limits{"inflow", "m3/s", not_negative};

namespace detail {

/// Refuse heights out of order: the water falls from `from` to `to`.
inline void check_fall(std::string_view here, double from, double to) {
  core::check(here, from_limits, from);
  core::check(here, to_limits, to);
  if (!(to <= from))
    core::fail<invalid_input>(here, "to", to, "m", "is higher than from, " + core::number_with_unit(from, "m"));
}

}  // namespace detail

/// A sharp hole or a short tube.
struct orifice {
  required<length> bore;
  double discharge_coefficient = 0.61;  ///< [1] 0.60 to 0.62 sharp, 0.80 to 0.82 short tube, 0.97 rounded
};

/// A pipe whose resistance is known: sum of K, the exit's 1, and f L/D.
struct resisting_pipe {
  required<pipe_bore> bore;
  required<double> resistance;  ///< [1]
};

/// What an orifice counts for.
///
///   Cd pi d^2/4
///
/// @param hole bore d [m] > 0; discharge coefficient Cd, above 0, to 1
/// @return     effective area [m^2]
/// @throws     invalid_input
/// @accuracy   that of the coefficient: about 2 % for a clean sharp hole
/// @source     textbook formula (Torricelli 1644 with a coefficient)
[[nodiscard]] inline effective_area outlet_through(const orifice& hole) {
  constexpr std::string_view here = "tankwright::plumbing::outlet_through";
  core::check(here, outlet_bore_limits, hole.bore->value());
  core::check(here, discharge_coefficient_limits, hole.discharge_coefficient);
  return effective_area{area::from_value(hole.discharge_coefficient * detail::circle(hole.bore->value()))};
}

/// What a pipe of known resistance counts for.
///
///   (pi d^2/4) / sqrt(sum of K + f L/D)
///
/// @param pipe bore d [m] > 0; resistance > 0 with the exit's 1 in it
/// @return     effective area [m^2]
/// @throws     invalid_input
/// @accuracy   that of the resistance, which at low heads grows with falling Reynolds number
/// @source     energy equation
[[nodiscard]] inline effective_area outlet_through(const resisting_pipe& pipe) {
  constexpr std::string_view here = "tankwright::plumbing::outlet_through";
  core::check(here, bore_limits, pipe.bore->diameter().value());
  core::check(here, outlet_resistance_limits, pipe.resistance);
  return effective_area{area::from_value(detail::circle(pipe.bore->diameter().value()) / std::sqrt(pipe.resistance))};
}

inline constexpr limits outlet_head_limits{"head", "m", not_negative};

/// Flow through an outlet.
///
///   Q = Cd a sqrt(2 g h)
///
/// @param outlet effective area [m^2] > 0
/// @param head   h [m] >= 0
/// @return       flow [m^3/s]
/// @throws       invalid_input
/// @accuracy     that of the effective area
/// @source       textbook formula (Torricelli 1644 with a coefficient)
[[nodiscard]] inline flow_rate outflow(effective_area outlet, length head) {
  constexpr std::string_view here = "tankwright::plumbing::outflow";
  core::check(here, outlet_limits, outlet.value().value());
  core::check(here, outlet_head_limits, head.value());
  return flow_rate::from_value(outlet.value().value() * detail::sqrt_2g<double> * std::sqrt(head.value()));
}

// ---- emptying -------------------------------------------------------------------------------------------------------

/// A fall through an outlet in the floor.
struct fall_through {
  required<effective_area> outlet;
  required<length> from;  ///< height over the outlet
  length to = metres(0.0);
};

/// Time in which a vessel falls from one height to another through an outlet.
///
///   t = 1/(Cd a sqrt(2g)) integral from h2 to h1 of A(h)/sqrt(h) dh,   in closed form for every shape here
///
/// @param vessel vertical walls (an area), a profile, a bowl, a cone, a lying cylinder
/// @param fall   effective outlet [m^2] > 0; heights from h1 >= to h2 [m] >= 0 over it, within the vessel
/// @return     time [s]
/// @throws     invalid_input
/// @accuracy   1e-13 against the integral; that of the coefficient against a real outlet
/// @source     textbook formula: Schaschke, ex. 6.3 and 6.4
[[nodiscard]] inline duration emptying_time(const any_vessel& vessel, const fall_through& fall) {
  constexpr std::string_view here = "tankwright::plumbing::emptying_time";
  const double from = fall.from->value(), to = fall.to.value();
  detail::check_fall(here, from, to);
  core::check(here, outlet_limits, fall.outlet->value().value());
  return std::visit(
      [&](const auto& v) {
        const double top = detail::top_of(here, v);
        if (from > top) {
          core::fail<invalid_input>(here, "from", from, "m",
                                    "stands above the vessel, " + core::number_with_unit(top, "m"));
        }
        const double sum = detail::drain_integral(v, from) - detail::drain_integral(v, to);
        return duration::from_value(sum / (fall.outlet->value().value() * detail::sqrt_2g<double>));
      },
      vessel);
}

/// Time in which a vessel of any profile falls from one height to another: the horizontal area is a callable.
///
///   t = 2/(Cd a sqrt(2g)) integral from sqrt(h2) to sqrt(h1) of A(u^2) du
///
/// @param plan_at callable, `area plan_at(length height)`; smooth in the height
/// @param fall    effective outlet [m^2] > 0; heights from h1 >= to h2 [m] >= 0 over it
/// @return        time [s]
/// @throws        invalid_input
/// @accuracy      1e-12 for smooth profiles; a step or a kink costs up to 1e-4
/// @source        as `emptying_time`, by Gauss and Legendre's rule on 16 panels of 8 points
template <class PlanAt>
requires std::is_invocable_r_v<area, const PlanAt&, length>
[[nodiscard]] duration emptying_time(const PlanAt& plan_at, const fall_through& fall) {
  constexpr std::string_view here = "tankwright::plumbing::emptying_time";
  detail::check_fall(here, fall.from->value(), fall.to.value());
  core::check(here, outlet_limits, fall.outlet->value().value());
  const double sum = numerics::integral(
      [&](double u) {
        const area plan = plan_at(length::from_value(u * u));
        core::check(here, horizontal_area_limits, plan.value());
        return 2.0 * plan.value();
      },
      std::sqrt(fall.to.value()), std::sqrt(fall.from->value()), 16);
  return duration::from_value(sum / (fall.outlet->value().value() * detail::sqrt_2g<double>));
}

/// A vessel with vertical walls whose fall was timed.
struct timed_fall {
  required<area> horizontal_area;
  required<length> bore;
  required<length> from;
  required<length> to;
  required<duration> time;
};

inline constexpr limits time_limits{"time", "s", positive};

/// Discharge coefficient of an outlet, from the time in which the water fell: to calibrate a hole that is there.
///
///   Cd = 2 A (sqrt(h1) - sqrt(h2)) / (a sqrt(2g) t)
///
/// @param fall horizontal area A [m^2] > 0; bore [m] > 0; heights from h1 > to h2 [m] >= 0 over the outlet; time t
///             [s] > 0
/// @return     [1] discharge coefficient; above 1 the measurements contradict each other
/// @throws     invalid_input
/// @accuracy   that of the measurements
/// @source     textbook formula: Lal, ex. 3.6
[[nodiscard]] inline double discharge_coefficient_from(const timed_fall& fall) {
  constexpr std::string_view here = "tankwright::plumbing::discharge_coefficient_from";
  core::check(here, horizontal_area_limits, fall.horizontal_area->value());
  core::check(here, outlet_bore_limits, fall.bore->value());
  detail::check_fall(here, fall.from->value(), fall.to->value());
  core::check(here, time_limits, fall.time->value());
  return 2.0 * fall.horizontal_area->value() * (std::sqrt(fall.from->value()) - std::sqrt(fall.to->value())) /
         (detail::circle(fall.bore->value()) * detail::sqrt_2g<double> * fall.time->value());
}

/// A vessel with vertical walls that empties through a long, thin pipe in laminar flow.
struct laminar_emptying {
  required<area> horizontal_area;
  required<pipe_bore> bore;
  required<length> pipe_length;
  required<length> from;
  required<length> to;
  water::liquid water;
};

inline constexpr limits pipe_length_limits{"pipe_length", "m", positive};
inline constexpr limits laminar_reynolds_limits{"Reynolds number", "", not_negative, {0.0, 2300.0}, "Hagen-Poiseuille"};

/// Time in which a vessel falls through a pipe in laminar flow: a siphon of air-line tubing, a seeping crack.
///
///   t = 32 mu L A / (rho g d^2 a) ln(h1/h2)
///
/// @param task   horizontal area A [m^2] > 0; bore d, length L [m] > 0; heights from h1 >= to h2 [m] > 0; density and
/// viscosity
/// @param policy `extrapolate` to go past Reynolds number 2300 at the start
/// @return       time [s]
/// @throws       invalid_input, out_of_range
/// @accuracy     the entrance and exit of the pipe are left out: right for L much longer than 0.03 d Re
/// @source       Hagen-Poiseuille: Schaschke, ex. 6.10
[[nodiscard]] inline duration laminar_emptying_time(const laminar_emptying& task,
                                                    range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::laminar_emptying_time";
  const double d = task.bore->diameter().value(), l = task.pipe_length->value();
  const double from = task.from->value(), to = task.to->value();
  core::check(here, horizontal_area_limits, task.horizontal_area->value());
  core::check(here, bore_limits, d);
  core::check(here, pipe_length_limits, l);
  detail::check_fall(here, from, to);
  core::check(here, to_above_zero_limits, to);
  const double nu = water::kinematic_viscosity_of(task.water).value();
  const double per_head = standard_gravity.value() * d * d / (32.0 * nu * l);  // V/h
  core::check(here, laminar_reynolds_limits, per_head * from * d / nu, policy);
  return duration::from_value(task.horizontal_area->value() / (per_head * detail::circle(d)) * std::log(from / to));
}

// ---- levelling, inflow, over an edge --------------------------------------------------------------------------------

/// Two tanks with vertical walls that an opening joins below both surfaces.
struct levelling {
  required<area> first;
  required<area> second;
  required<effective_area> opening;
  required<length> from;  ///< difference of the two levels
  length to = metres(0.0);
};

inline constexpr limits first_area_limits{"first", "m2", positive};
inline constexpr limits second_area_limits{"second", "m2", positive};

/// Time in which the difference between the levels of two joined tanks falls.
///
///   t = 2 A1 A2/(A1 + A2) (sqrt(d1) - sqrt(d2)) / (Cd a sqrt(2g))
///
/// @param task horizontal areas A1, A2 [m^2] > 0; effective opening [m^2] > 0; differences from d1 >= to d2 [m] >= 0
/// @return     time [s]
/// @throws     invalid_input
/// @accuracy   exact for the formula
/// @source     textbook formula: Schaschke, ex. 6.6; Lal, ex. 3.11
[[nodiscard]] inline duration levelling_time(const levelling& task) {
  constexpr std::string_view here = "tankwright::plumbing::levelling_time";
  const double a1 = task.first->value(), a2 = task.second->value();
  core::check(here, first_area_limits, a1);
  core::check(here, second_area_limits, a2);
  core::check(here, outlet_limits, task.opening->value().value());
  detail::check_fall(here, task.from->value(), task.to.value());
  return duration::from_value(2.0 * a1 * a2 / (a1 + a2) * (std::sqrt(task.from->value()) - std::sqrt(task.to.value())) /
                              (task.opening->value().value() * detail::sqrt_2g<double>));
}

/// A tank with vertical walls that is filled while it empties through an outlet.
struct inflow_and_outlet {
  required<area> horizontal_area;
  required<flow_rate> inflow;
  required<effective_area> outlet;
};

/// Height at which an outlet passes what flows in.
///
///   h = (Q / (Cd a))^2 / 2g
///
/// @param tank horizontal area [m^2] > 0; inflow Q [m^3/s] >= 0; effective outlet [m^2] > 0
/// @return     height over the outlet [m]
/// @throws     invalid_input
/// @accuracy   exact for the formula
/// @source     textbook formula: Schaschke, ex. 6.8
[[nodiscard]] inline length steady_level(const inflow_and_outlet& tank) {
  constexpr std::string_view here = "tankwright::plumbing::steady_level";
  core::check(here, horizontal_area_limits, tank.horizontal_area->value());
  core::check(here, inflow_limits, tank.inflow->value());
  core::check(here, outlet_limits, tank.outlet->value().value());
  const double root = tank.inflow->value() / (tank.outlet->value().value() * detail::sqrt_2g<double>);
  return length::from_value(root * root);
}

/// From which height to which.
struct level_change {
  required<length> from;
  required<length> to;
};

/// Time in which a tank with inflow and outlet goes from one height to another, rising or falling towards its steady
/// level.
///
///   t = (2A/k^2) [k (sqrt(h1) - sqrt(h2)) + Q ln((Q - k sqrt(h1)) / (Q - k sqrt(h2)))],   k = Cd a sqrt(2g)
///
/// @param tank   horizontal area A [m^2] > 0; inflow Q [m^3/s] >= 0; effective outlet [m^2] > 0
/// @param change heights h1 and h2 [m] >= 0 over the outlet, h2 between h1 and the steady level, which it never reaches
/// @return       time [s]
/// @throws       invalid_input
/// @accuracy     exact for the formula; 1e-9 within a thousandth of the steady level
/// @source       textbook formula: Schaschke, ex. 6.8
[[nodiscard]] inline duration level_change_time(const inflow_and_outlet& tank, const level_change& change) {
  constexpr std::string_view here = "tankwright::plumbing::level_change_time";
  const double steady = steady_level(tank).value();
  const double k = tank.outlet->value().value() * detail::sqrt_2g<double>, q = tank.inflow->value();
  const double h1 = change.from->value(), h2 = change.to->value();
  core::check(here, from_limits, h1);
  core::check(here, to_limits, h2);
  if (h1 == h2) return duration::from_value(0.0);
  const double r1 = std::sqrt(h1), r2 = std::sqrt(h2);
  // In flows, not in heights: the steady level of the smallest inflow is 0 in double precision.
  const bool towards = h2 < h1 ? k * r2 > q || (q == 0.0 && h2 == 0.0) : k * r2 < q;
  if (!towards) {
    core::fail<invalid_input>(here, "to", h2, "m",
                              "is not reached: the water goes from " + core::number_with_unit(h1, "m") +
                                  " towards its steady level, " + core::number_with_unit(steady, "m"));
  }
  const double log_term = q == 0.0 ? 0.0 : q * std::log((q - k * r1) / (q - k * r2));
  return duration::from_value(2.0 * tank.horizontal_area->value() / (k * k) * (k * (r1 - r2) + log_term));
}

/// Water that runs out over an edge, down to a residual height: over an edge the last of it takes for ever.
struct edge_tail {
  required<area> horizontal_area;
  overflow_edge edge;
  required<length> from;  ///< height over the crest
  length to = millimetres(1.0);
};

/// Time in which water falls over an edge to a residual height.
///
///   t = integral from h2 to h1 of A/Q(h) dh,   Q(h) the central flow of `flow_over`
///
/// @param task horizontal area A [m^2] > 0; edge; heights from h1 >= to h2 [m] > 0 over the crest
/// @return     time [s]
/// @throws     invalid_input
/// @accuracy   1e-6 against the integral; that of the weir formula, extrapolated, against a real edge
/// @source     the formulas of `weirs.hpp`, integrated in 1/sqrt(h)
[[nodiscard]] inline duration edge_tail_time(const edge_tail& task) {
  constexpr std::string_view here = "tankwright::plumbing::edge_tail_time";
  const double from = task.from->value(), to = task.to.value();
  core::check(here, horizontal_area_limits, task.horizontal_area->value());
  std::visit([&](const auto& e) { detail::check_edge(here, e); }, task.edge);
  detail::check_fall(here, from, to);
  core::check(here, to_above_zero_limits, to);
  // h = 1/w^2, dh = -2/w^3 dw: over a weir the integrand is nearly constant in w.
  const double sum = numerics::integral(
      [&](double w) {
        return 2.0 / (w * w * w * detail::edge_flow(task.edge, 1.0 / (w * w), detail::band_side::central));
      },
      1.0 / std::sqrt(from), 1.0 / std::sqrt(to), 32);
  return duration::from_value(task.horizontal_area->value() * sum);
}

/// Water that runs out over a plain weir with a constant coefficient.
struct plain_weir_tail {
  required<area> horizontal_area;
  required<length> width;
  required<double> discharge_coefficient;  ///< [1]
  required<length> from;
  length to = millimetres(1.0);
};

/// Time in which water falls over a rectangular weir of constant coefficient: the closed form.
///
///   t = 2A/(C b) (1/sqrt(h2) - 1/sqrt(h1)),   C = (2/3) Cd sqrt(2g)
///
/// @param task horizontal area A [m^2] > 0; width b [m] > 0; Cd, above 0, to 1; heights from h1 >= to h2 [m] > 0
/// @return     time [s]
/// @throws     invalid_input
/// @accuracy   exact for the formula
/// @source     textbook formula: Lal, ex. 4.9
[[nodiscard]] inline duration plain_weir_tail_time(const plain_weir_tail& task) {
  constexpr std::string_view here = "tankwright::plumbing::plain_weir_tail_time";
  core::check(here, horizontal_area_limits, task.horizontal_area->value());
  core::check(here, weir_width_limits, task.width->value());
  core::check(here, discharge_coefficient_limits, task.discharge_coefficient);
  detail::check_fall(here, task.from->value(), task.to.value());
  core::check(here, to_above_zero_limits, task.to.value());
  const double per_width = detail::two_thirds<double> * detail::sqrt_2g<double> * task.discharge_coefficient;
  return duration::from_value(2.0 * task.horizontal_area->value() / (per_width * task.width->value()) *
                              (1.0 / std::sqrt(task.to.value()) - 1.0 / std::sqrt(task.from->value())));
}

/// Water that runs out through a plain V-notch.
struct v_notch_tail {
  required<area> horizontal_area;
  required<angle> opening;
  required<double> discharge_coefficient;  ///< [1]
  required<length> from;
  length to = millimetres(1.0);
};

/// Time in which water falls through a V-notch of constant coefficient: the closed form.
///
///   t = 2A/(3K) (h2^-1.5 - h1^-1.5),   K = (8/15) Cd tan(theta/2) sqrt(2g)
///
/// @param task horizontal area A [m^2] > 0; opening theta, 0 to 180 degrees; Cd, above 0, to 1; heights from h1 >= to
///             h2 [m] > 0
/// @return     time [s]
/// @throws     invalid_input
/// @accuracy   exact for the formula
/// @source     textbook formula
[[nodiscard]] inline duration v_notch_tail_time(const v_notch_tail& task) {
  constexpr std::string_view here = "tankwright::plumbing::v_notch_tail_time";
  const double h1 = task.from->value(), h2 = task.to.value();
  core::check(here, horizontal_area_limits, task.horizontal_area->value());
  core::check(here, notch_angle_limits, in_degrees(task.opening));
  core::check(here, discharge_coefficient_limits, task.discharge_coefficient);
  detail::check_fall(here, h1, h2);
  core::check(here, to_above_zero_limits, h2);
  const double k = detail::notch_flow<double>(task.discharge_coefficient, task.opening->value(), 1.0);
  return duration::from_value(2.0 * task.horizontal_area->value() / (3.0 * k) *
                              (1.0 / (h2 * std::sqrt(h2)) - 1.0 / (h1 * std::sqrt(h1))));
}

}  // namespace tankwright::plumbing
