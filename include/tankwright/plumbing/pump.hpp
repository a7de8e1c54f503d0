// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does this pump do at this flow? Its curve from its maker's points, its speed, pumps in series and in parallel,
/// the power it draws in seawater, and the suction head it needs.
///
/// A curve is in metres of the flowing liquid: in seawater H(Q) is that of fresh water, pressure and power are more.
/// Off the curve there is no number: the answer says on which side it fell off.
#pragma once

#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <tankwright/numerics/root.hpp>
#include <tankwright/plumbing/detail/curve_kernel.hpp>
#include <tankwright/plumbing/friction.hpp>
#include <utility>
#include <vector>

namespace tankwright::plumbing {

inline constexpr citation fritsch_butland_1984{
    "Fritsch F.N., Butland J.", 1984, "A method for constructing local monotone piecewise cubic interpolants",
    "SIAM J. Sci. Stat. Comput. 5:300-304; ends as in Moler 2004, Numerical computing", standing::secondary};
inline constexpr citation epanet_2_2{"Rossman L.A. et al.", 2020, "EPANET 2.2 user manual",
                                     "EPA/600/R-20/133; pump head curves, src/validate.c"};

inline constexpr citation wylie_streeter_1993{
    "Wylie E.B., Streeter V.L.", 1993, "Fluid transients in systems",
    "Prentice Hall; complete characteristics of a radial pump of specific speed 25 (SI)", standing::secondary};

/// A point of a pump curve.
struct curve_point {
  required<flow_rate> flow;
  required<tankwright::head> head;
};

/// Three points of a pump curve, the first at zero flow.
struct three_points {
  std::string label{};
  required<head> shutoff_head;
  curve_point middle;
  curve_point last;
};

/// Head against flow of one pump at one speed, from zero flow to its last point.
class pump_curve {
 public:
  explicit pump_curve(detail::curve_data data) : data_{std::move(data)} {}
  [[nodiscard]] const std::string& label() const noexcept { return data_.label; }
  [[nodiscard]] head shutoff_head() const noexcept { return head::from_value(data_.shutoff); }
  [[nodiscard]] flow_rate end_flow() const noexcept { return flow_rate::from_value(data_.end_flow); }
  [[nodiscard]] head end_head() const noexcept { return head::from_value(data_.end_head); }
  [[nodiscard]] const detail::curve_data& data() const noexcept { return data_; }

 private:
  detail::curve_data data_;
};

/// Where on a curve an answer lies.
enum class curve_region {
  on_curve,
  above_shutoff,  ///< more head than the pump has at zero flow: it lifts nothing
  past_end,       ///< beyond the last point: the maker promises nothing there
};

/// The head at a flow; without a number past the end of the curve.
struct head_answer {
  curve_region region;
  std::optional<tankwright::head> head;
};

/// The flow at a head; zero above the shut-off head, without a number past the end of the curve.
struct flow_answer {
  curve_region region;
  std::optional<flow_rate> flow;
};

/// Head over the head at the best point of a pump.
class head_ratio : public core::scalar<head_ratio> {
  using scalar::scalar;
};

/// What water loses in a pump that does not drive it: head over the head at its best point, when the flow of its best
/// point passes; at other flows as their squares. Low is a rotor that is held, high one that spins freely backwards,
/// and the other way round forwards. From the complete characteristics of one radial pump; common practice for others.
struct idle_pump_losses {
  estimate<head_ratio> backwards{head_ratio{0.69}, head_ratio{1.3}, head_ratio{2.4},
                                 "a rotor held, or spinning backwards"};
  estimate<head_ratio> forwards{head_ratio{0.22}, head_ratio{0.35}, head_ratio{0.56}, "a rotor spinning, or held"};
};

/// Speed over the speed for which a curve is given. Not the setting of a controller in per cent of power.
class speed_ratio : public core::scalar<speed_ratio> {
  using scalar::scalar;
};

/// One point of what a pump does.
struct pump_performance {
  required<flow_rate> flow;
  required<tankwright::head> head;
  required<tankwright::power> power;
};

/// A pump at work.
struct pump_duty {
  required<flow_rate> flow;
  required<tankwright::head> head;
  required<proportion> pump_efficiency;
  proportion motor_efficiency = fraction(1.0);  ///< of motor and drive together
};

struct pump_power {
  power hydraulic;   ///< what the water takes up
  power shaft;       ///< what the motor gives
  power electrical;  ///< what the socket gives; all of it ends as heat, most of it in the water
  tankwright::caution caution;
};

/// What lies before the pump.
struct suction_side {
  absolute_pressure surface_pressure = standard_atmosphere;  ///< on the water it draws from
  required<length> level_above_pump;                         ///< negative: the pump must lift
  required<head> losses;                                     ///< of the suction pipe
  required<absolute_pressure> vapour_pressure;               ///< of the water at its temperature
};

/// Pressures read at a running pump.
struct gauge_readings {
  required<gauge_pressure> suction;
  required<gauge_pressure> discharge;
  length suction_gauge_height{};    ///< over one datum
  length discharge_gauge_height{};  ///< over the same
  velocity suction_velocity{};      ///< in the pipe at the gauge; leave both out where the bores are the same
  velocity discharge_velocity{};
};

inline constexpr caution pump_power_caution{
    "Water and mains voltage: residual-current protection, drip loops and a licensed electrician. A motor sized for "
    "fresh "
    "water is loaded some 2.5 % more by seawater; watch its temperature."};

inline constexpr limits speed_limits{"speed", "", {0.0, 10.0}};
inline constexpr limits turning_speed_limits{"speed", "", {1e-3, 10.0}};
inline constexpr limits idle_loss_limits{"loss of the idle pump", "", {1e-3, 1e3}};
/// The exponent C of H = A - B Q^C. Small pumps that fall at once and then level off have less than 1.
inline constexpr interval pump_exponent_range{0.1, 20.0};
inline constexpr limits pump_flow_limits{"flow", "m3/s", {0.0, 1e4}};
inline constexpr limits duty_flow_limits{"flow", "m3/s", {1e-9, 1e4}};
inline constexpr limits pump_head_limits{"head", "m", {-1e5, 1e5}};
inline constexpr limits duty_head_limits{"head", "m", {0.0, 1e5}};
inline constexpr limits shutoff_head_limits{"shut-off head", "m", {1e-3, 1e5}};
inline constexpr limits pump_power_limits{"power", "W", {0.0, 1e9}};
inline constexpr limits pump_efficiency_limits{"pump efficiency", "", {1e-4, 1.0}};
inline constexpr limits motor_efficiency_limits{"motor efficiency", "", {1e-4, 1.0}};
inline constexpr limits suction_loss_limits{"losses", "m", {0.0, 1e5}};
inline constexpr limits level_above_pump_limits{"level above pump", "m", {-1e4, 1e4}};
inline constexpr limits surface_pressure_limits{"surface pressure", "Pa", {1.0, 1e9}};
inline constexpr limits vapour_pressure_limits{"vapour pressure", "Pa", {0.0, 1e8}};
inline constexpr limits gauge_pressure_limits{"pressure", "Pa", {-1.1e5, 1e9}};
inline constexpr limits gauge_height_limits{"height of a gauge", "m", {-1e4, 1e4}};
inline constexpr limits gauge_velocity_limits{"velocity", "m/s", {-100.0, 100.0}};
inline constexpr limits density_of_test_limits{"density of the test liquid", "kg/m3", {500.0, 3e4}};

namespace detail {

inline constexpr double least_step_of_flow = 1e-9;  // m^3/s

[[nodiscard]] inline std::string point_text(std::size_t index) {
  return "point " + core::number_text(static_cast<double>(index + 1));
}

/// Refuse a point that is not a number, or not below and to the right of the one before.
inline void check_point(std::string_view function, std::string_view label, std::size_t index, double q, double h,
                        double q_before, double h_before) {
  const std::string point = point_text(index);
  core::check_element(function, label, {point + ": flow", "m3/s", pump_flow_limits.possible}, q);
  const interval heads = index == 0 ? shutoff_head_limits.possible : pump_head_limits.possible;
  core::check_element(function, label, {point + ": head", "m", heads}, h);
  if (index == 0) return;
  if (!(q - q_before >= least_step_of_flow)) {
    core::refuse_element(function, label,
                         point + " has a flow of " + core::number_with_unit(q, "m3/s") +
                             ", not more than the point before it; sort the points by flow");
  }
  if (!(h < h_before)) {
    core::refuse_element(function, label,
                         point + " has a head of " + core::number_with_unit(h, "m") +
                             ", not less than the point before it; the head of a pump must fall with the flow");
  }
}

}  // namespace detail

/// Pump curve through its maker's points, by a monotone cubic.
///
///   piecewise cubic with the slopes of Fritsch and Butland: it passes every point and never overshoots
///
/// @param label  name of the pump, for errors and results
/// @param points at least two, the first at zero flow; flows [m^3/s] rising, heads [m of the flowing liquid] falling
/// @return       curve
/// @throws       invalid_input (names the pump and the point)
/// @accuracy     exact at the points; between them as the points allow. Two points make a straight line, which lies
/// below
///               a real pump by up to a quarter of the head in the middle
/// @source       Fritsch and Butland 1984
[[nodiscard]] inline pump_curve curve_from_points(std::string label, std::span<const curve_point> points) {
  constexpr std::string_view here = "tankwright::plumbing::curve_from_points";
  if (points.size() < 2) {
    core::refuse_element(here, label,
                         "has " + core::number_text(static_cast<double>(points.size())) +
                             " points; a curve needs at least two (curve_from_one_point guesses one "
                             "from its duty point)");
  }
  detail::curve_data data;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const double q = points[i].flow->value();
    const double h = points[i].head->value();
    detail::check_point(here, label, i, q, h, i == 0 ? 0.0 : data.q.back(), i == 0 ? 0.0 : data.h.back());
    if (i == 0 && q != 0.0) {
      core::refuse_element(here, label,
                           "begins at a flow of " + core::number_with_unit(q, "m3/s") +
                               "; the first point must be at zero flow, the shut-off head");
    }
    data.q.push_back(q);
    data.h.push_back(h);
  }
  detail::set_slopes(data);
  data.label = std::move(label);
  data.shutoff = data.h.front();
  data.end_flow = data.q.back();
  data.end_head = data.h.back();
  detail::set_best_point(data);
  return pump_curve{std::move(data)};
}

/// Pump curve through its maker's points, written where they are needed.
///
///   curve_from_points("return pump", {{.flow = ..., .head = ...}, ...})
///
/// @param label  name of the pump, for errors and results
/// @param points as for the overload on a span
/// @return       curve
/// @throws       invalid_input (names the pump and the point)
/// @accuracy     as for the overload on a span
/// @source       Fritsch and Butland 1984
[[nodiscard]] inline pump_curve curve_from_points(std::string label, std::initializer_list<curve_point> points) {
  return curve_from_points(std::move(label), std::span<const curve_point>{points.begin(), points.size()});
}

/// Pump curve through three points, by a power law.
///
///   H = A - B Q^C,   A = H_0,   C = ln((H_0 - H_2)/(H_0 - H_1)) / ln(Q_2/Q_1),   B = (H_0 - H_1)/Q_1^C
///
/// @param points label; shut-off head H_0 [m] > 0; two more points, flows [m^3/s] rising, heads [m] falling, with C
/// from
///               0.1 to 20
/// @return       curve, ending at the last point
/// @throws       invalid_input (names the pump and the point)
/// @accuracy     exact at the points
/// @source       EPANET 2.2 user manual, three-point curve
[[nodiscard]] inline pump_curve curve_from_three_points(const three_points& points) {
  constexpr std::string_view here = "tankwright::plumbing::curve_from_three_points";
  const double h0 = points.shutoff_head->value();
  const double q1 = points.middle.flow->value(), h1 = points.middle.head->value();
  const double q2 = points.last.flow->value(), h2 = points.last.head->value();
  detail::check_point(here, points.label, 0, 0.0, h0, 0.0, 0.0);
  detail::check_point(here, points.label, 1, q1, h1, 0.0, h0);
  detail::check_point(here, points.label, 2, q2, h2, q1, h1);
  const double c = std::log((h0 - h2) / (h0 - h1)) / std::log(q2 / q1);
  if (!pump_exponent_range.contains(c)) {
    core::refuse_element(here, points.label,
                         "has points that only a power of " + core::number_text(c) + " joins (expected " +
                             core::interval_text(pump_exponent_range, "") + "); give more points, curve_from_points");
  }
  detail::curve_data data;
  data.label = points.label;
  data.shutoff = h0;
  data.end_flow = q2;
  data.c = c;
  data.b = (h0 - h1) / std::pow(q1, c);
  data.end_head = detail::value_on_curve(data, q2).head;
  detail::set_best_point(data);
  return pump_curve{std::move(data)};
}

/// Pump curve guessed from its duty point alone.
///
///   H = (4/3) H_0 - (H_0/3) (Q/Q_0)^2, to twice the flow
///
/// @param label  name of the pump, for errors and results
/// @param duty   Q_0 [m^3/s] > 0, H_0 [m] > 0
/// @return       curve
/// @throws       invalid_input (names the pump and the argument)
/// @accuracy     a guess: the shut-off head of real pumps is 1.1 to 1.5 times the head at the duty point. Ask for the
/// curve
/// @source       EPANET 2.2 user manual, single-point curve
[[nodiscard]] inline pump_curve curve_from_one_point(std::string label, const curve_point& duty) {
  constexpr std::string_view here = "tankwright::plumbing::curve_from_one_point";
  const double q = duty.flow->value(), h = duty.head->value();
  core::check_element(here, label, duty_flow_limits, q);
  core::check_element(here, label, {"head", "m", shutoff_head_limits.possible}, h);
  detail::curve_data data;
  data.label = std::move(label);
  data.shutoff = 4.0 * h / 3.0;
  data.end_flow = 2.0 * q;
  data.c = 2.0;
  data.b = h / (3.0 * q * q);
  data.end_head = detail::value_on_curve(data, data.end_flow).head;
  detail::set_best_point(data);
  return pump_curve{std::move(data)};
}

/// Head of a pump at a flow.
///
///   H(Q)
///
/// @param curve  of the pump
/// @param flow   Q [m^3/s] >= 0
/// @return       head [m of the flowing liquid], or none past the end of the curve
/// @throws       invalid_input (names the pump, the argument, its value and the limits)
/// @accuracy     that of the curve
/// @source       the pump's maker
[[nodiscard]] inline head_answer head_at(const pump_curve& curve, flow_rate flow) {
  core::check_element("tankwright::plumbing::head_at", curve.label(), pump_flow_limits, flow.value());
  if (flow > curve.end_flow()) return {curve_region::past_end, std::nullopt};
  return {curve_region::on_curve, head::from_value(detail::value_on_curve(curve.data(), flow.value()).head)};
}

/// Flow of a pump against a head.
///
///   the Q with H(Q) = H
///
/// @param curve  of the pump
/// @param against H [m of the flowing liquid]
/// @return       flow [m^3/s]; zero above the shut-off head (with a check valve); none below the head of the last point
/// @throws       invalid_input (names the pump, the argument, its value and the limits)
/// @accuracy     that of the curve
/// @source       the pump's maker
[[nodiscard]] inline flow_answer flow_at(const pump_curve& curve, head against) {
  constexpr std::string_view here = "tankwright::plumbing::flow_at";
  const double h = against.value();
  const detail::curve_data& data = curve.data();
  core::check_element(here, curve.label(), pump_head_limits, h);
  if (h > data.shutoff) return {curve_region::above_shutoff, flow_rate::from_value(0.0)};
  if (h <= data.end_head) {  // to rounding, so that the head of the last point leads back to it
    if (h < data.end_head - 1e-12 * (data.shutoff - data.end_head)) return {curve_region::past_end, std::nullopt};
    return {curve_region::on_curve, curve.end_flow()};
  }
  if (data.q.empty()) {
    double q = std::pow((data.shutoff - h) / data.b, 1.0 / data.c);
    if (const double least = detail::straight_start * data.end_flow; data.c < 1.0 && q < least) {
      q = (data.shutoff - h) / (data.b * std::pow(least, data.c)) * least;
    }
    return {curve_region::on_curve, flow_rate::from_value(q)};
  }
  std::size_t i = 0;
  while (i + 2 < data.q.size() && h < data.h[i + 1]) ++i;
  const double q = numerics::bracketed_root<double>(
      here, "flow", [&](double x) { return detail::value_in_segment(data, i, x).head - h; }, data.q[i], data.q[i + 1]);
  return {curve_region::on_curve, flow_rate::from_value(q)};
}

/// The best point of a pump, where it gives the water most power: at or near its best efficiency.
///
///   the Q at which Q H(Q) is largest;   H = A - B Q^C: Q = (A/((C + 1) B))^(1/C), or the end of the curve
///
/// @param curve  of the pump
/// @return       flow [m^3/s] and head [m] there
/// @throws       nothing
/// @accuracy     1e-9 of the flow for the curve as given; the best efficiency lies within some 20 % of that flow,
/// common
///               practice without a source
/// @source       d(Q H)/dQ = 0
[[nodiscard]] inline curve_point best_point(const pump_curve& curve) {
  return {.flow = flow_rate::from_value(curve.data().best_flow), .head = head::from_value(curve.data().best_head)};
}

/// Head of pumps one after the other at one flow.
///
///   H = sum of H_i(Q)
///
/// @param curves of the pumps
/// @param flow   Q [m^3/s] >= 0
/// @return       head [m of the flowing liquid], or none past the end of any curve
/// @throws       invalid_input (names the pump, the argument, its value and the limits)
/// @accuracy     that of the curves
/// @source       continuity and addition of heads
[[nodiscard]] inline head_answer head_in_series(std::span<const pump_curve> curves, flow_rate flow) {
  core::check("tankwright::plumbing::head_in_series", pump_flow_limits, flow.value());
  head sum = head::from_value(0.0);
  for (const pump_curve& curve : curves) {
    head_answer one = head_at(curve, flow);
    if (!one.head) return one;
    sum += *one.head;
  }
  return {curve_region::on_curve, sum};
}

/// Flow of pumps side by side against one head, each behind its check valve.
///
///   Q = sum of Q_i(H);   a pump whose shut-off head is below H gives nothing
///
/// @param curves  of the pumps
/// @param against H [m of the flowing liquid]
/// @return        flow [m^3/s]; zero where no pump reaches; none where a pump is past the end of its curve
/// @throws        invalid_input (names the pump, the argument, its value and the limits)
/// @accuracy      that of the curves
/// @source        addition of flows
[[nodiscard]] inline flow_answer flow_in_parallel(std::span<const pump_curve> curves, head against) {
  core::check("tankwright::plumbing::flow_in_parallel", pump_head_limits, against.value());
  flow_answer sum{curve_region::above_shutoff, flow_rate::from_value(0.0)};
  for (const pump_curve& curve : curves) {
    flow_answer one = flow_at(curve, against);
    if (!one.flow) return one;
    if (one.region == curve_region::on_curve) sum.region = curve_region::on_curve;
    *sum.flow += *one.flow;
  }
  return sum;
}

/// The curve of a pump at another speed.
///
///   Q ~ N, H ~ N^2:   H(Q) = s^2 H_1(Q/s)
///
/// @param curve  at the speed it is given for
/// @param speed  s = new speed over that speed, > 0
/// @return       curve at the new speed
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     some per cent for s between 0.5 and 1.2; small pumps lose efficiency when slow
/// @source       affinity laws; Crane TP-410 (2009) ch. 5
[[nodiscard]] inline pump_curve at_speed(const pump_curve& curve, speed_ratio speed) {
  core::check_element("tankwright::plumbing::at_speed", curve.label(), turning_speed_limits, speed.value());
  const double s = speed.value();
  detail::curve_data data = curve.data();
  data.shutoff *= s * s;
  data.end_flow *= s;
  data.end_head *= s * s;
  data.best_flow *= s;
  data.best_head *= s * s;
  data.b *= std::pow(s, 2.0 - data.c);
  for (double& q : data.q) q *= s;
  for (double& h : data.h) h *= s * s;
  for (double& m : data.m) m *= s;
  return pump_curve{std::move(data)};
}

/// One point of a pump at another speed.
///
///   Q ~ N, H ~ N^2, P ~ N^3
///
/// @param point  flow [m^3/s], head [m] and shaft power [W] at the speed they were measured at
/// @param speed  s = new speed over that speed, > 0
/// @return       flow, head and power at the new speed, at the point that corresponds
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     some per cent for s between 0.5 and 1.2
/// @source       affinity laws; Crane TP-410 (2009) ch. 5
[[nodiscard]] inline pump_performance at_speed(const pump_performance& point, speed_ratio speed) {
  constexpr std::string_view here = "tankwright::plumbing::at_speed";
  core::check(here, pump_flow_limits, point.flow->value());
  core::check(here, pump_head_limits, point.head->value());
  core::check(here, pump_power_limits, point.power->value());
  core::check(here, turning_speed_limits, speed.value());
  const double s = speed.value();
  return {.flow = s * point.flow.get(), .head = s * s * point.head.get(), .power = s * s * s * point.power.get()};
}

/// Power that a pump draws.
///
///   P_water = rho g Q H,   P_shaft = P_water/eta_pump,   P_electrical = P_shaft/eta_motor
///
/// @param duty   flow [m^3/s] >= 0, head [m] >= 0, efficiencies above 0, to 1
/// @param water  density at the pump
/// @return       hydraulic, shaft and electrical power [W], with a caution
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     that of the efficiencies: small pumps 0.3 to 0.6 and seldom published, so measure at the socket
/// @source       Crane TP-410 (2009) ch. 5
[[nodiscard]] inline pump_power power_drawn(const pump_duty& duty, const water::liquid& water) {
  constexpr std::string_view here = "tankwright::plumbing::power_drawn";
  core::check(here, pump_flow_limits, duty.flow->value());
  core::check(here, duty_head_limits, duty.head->value());
  core::check(here, pump_efficiency_limits, duty.pump_efficiency->value());
  core::check(here, motor_efficiency_limits, duty.motor_efficiency.value());
  water::kernel::check_flowing(here, water);
  const power hydraulic =
      power::from_value(water.density->value() * standard_gravity.value() * duty.flow->value() * duty.head->value());
  const power shaft = hydraulic / duty.pump_efficiency->value();
  return {hydraulic, shaft, shaft / duty.motor_efficiency.value(), pump_power_caution};
}

/// Power of a pump in this liquid, from the power measured or printed for another at the same flow.
///
///   P = P_test rho/rho_test
///
/// @param measured        P_test [W] >= 0
/// @param density_of_test of the liquid it was measured in [kg/m^3], 500 to 30 000
/// @param water           what it pumps now
/// @return                power [W]
/// @throws                invalid_input (names the argument, its value and the limits)
/// @accuracy              exact for the hydraulic power; idle losses of the motor do not grow
/// @source                head and efficiency do not depend on density
[[nodiscard]] inline power power_in(power measured, mass_density density_of_test, const water::liquid& water) {
  constexpr std::string_view here = "tankwright::plumbing::power_in";
  core::check(here, pump_power_limits, measured.value());
  core::check(here, density_of_test_limits, density_of_test.value());
  water::kernel::check_flowing(here, water);
  return measured * (water.density->value() / density_of_test.value());
}

/// Net positive suction head available to a pump. Less than the pump requires, and the water boils in it.
///
///   NPSH_a = (p_surface - p_vapour)/(rho g) + z - h_losses
///
/// @param side   absolute pressure on the water [Pa], its level above the pump z [m], losses of the suction pipe [m] >=
/// 0,
///               vapour pressure [Pa] >= 0
/// @param water  density at the pump
/// @return       head [m of the flowing liquid]; negative where even vacuum could not lift so far
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     exact for its inputs; keep 0.5 m or 30 % over what the pump requires, whichever is more
/// @source       Crane TP-410 (2009) ch. 5
[[nodiscard]] inline head npsh_available(const suction_side& side, const water::liquid& water) {
  constexpr std::string_view here = "tankwright::plumbing::npsh_available";
  core::check(here, surface_pressure_limits, side.surface_pressure.value().value());
  core::check(here, level_above_pump_limits, side.level_above_pump->value());
  core::check(here, suction_loss_limits, side.losses->value());
  core::check(here, vapour_pressure_limits, side.vapour_pressure->value().value());
  water::kernel::check_flowing(here, water);
  const double pressure = side.surface_pressure.value().value() - side.vapour_pressure->value().value();
  return head::from_value(pressure / (water.density->value() * standard_gravity.value()) +
                          side.level_above_pump->value() - side.losses->value());
}

/// Head of a running pump from the gauges before and after it. A gauge marked in metres of water reads 2.5 % high in
/// seawater: take its pressure.
///
///   H = (p_d - p_s)/(rho g) + (z_d - z_s) + (V_d^2 - V_s^2)/2g
///
/// @param read   gauge pressures [Pa]; heights of the gauges [m] over one datum; velocities [m/s] in the pipes there
/// @param water  density at the pump
/// @return       head [m of the flowing liquid]
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     that of the gauges: 1 % of full scale of a 4 bar gauge is 0.4 m
/// @source       Bernoulli's equation
[[nodiscard]] inline head head_from_gauges(const gauge_readings& read, const water::liquid& water) {
  constexpr std::string_view here = "tankwright::plumbing::head_from_gauges";
  for (const double p : {read.suction->value().value(), read.discharge->value().value()}) {
    core::check(here, gauge_pressure_limits, p);
  }
  for (const double z : {read.suction_gauge_height.value(), read.discharge_gauge_height.value()}) {
    core::check(here, gauge_height_limits, z);
  }
  for (const double v : {read.suction_velocity.value(), read.discharge_velocity.value()}) {
    core::check(here, gauge_velocity_limits, v);
  }
  water::kernel::check_flowing(here, water);
  const double g = standard_gravity.value();
  const double pressure = read.discharge->value().value() - read.suction->value().value();
  const double vd = read.discharge_velocity.value(), vs = read.suction_velocity.value();
  return head::from_value(pressure / (water.density->value() * g) + read.discharge_gauge_height.value() -
                          read.suction_gauge_height.value() + (vd * vd - vs * vs) / (2.0 * g));
}

}  // namespace tankwright::plumbing
