// SPDX-License-Identifier: BSL-1.0
/// @file
/// How long does it take to warm the water, and what energy? With the losses as they are, and by the straight line of
/// the hand calculation.
#pragma once

#include <algorithm>
#include <cmath>
#include <optional>

#include <tankwright/core/thin_types.hpp>
#include <tankwright/numerics/quadrature.hpp>
#include <tankwright/room/heat_balance.hpp>
#include <tankwright/room/heat_store.hpp>
#include <tankwright/water/well_mixed.hpp>

namespace tankwright::room {

/// A tank with its heater. The water's temperature is the start.
struct warm_up_request {
  tank_heat tank;
  required<tankwright::heat_capacity> heat_capacity;  ///< of water, rock, sand and tank; see `heat_capacity_of`
  required<tankwright::temperature> target;
  required<power> heater;
};

struct warm_up_result {
  estimate<duration> time;
  estimate<energy> heater_energy;
  /// Where a heater stuck on would take it in the end, at the least evaporation; empty: above 90 degC.
  std::optional<tankwright::temperature> stuck_on;
  tankwright::caution caution;
};

/// The hand calculation: one loss coefficient, one temperature at which the tank would stand without the heater.
struct linear_warm_up {
  required<tankwright::heat_capacity> heat_capacity;
  required<tankwright::temperature> from;
  required<tankwright::temperature> to;
  required<power> heater;
  heat_loss_coefficient loss = watts_per_kelvin(0.0);
  tankwright::temperature stands_at = celsius(20.0);  ///< without the heater; of no matter when the loss is 0
};

inline constexpr limits heat_capacity_limits{"heat capacity", "J/K", {1.0, 1e15}};
inline constexpr limits heater_limits{"heater", "W", {1e-3, 1e9}};
inline constexpr limits loss_coefficient_limits{"loss coefficient", "W/K", {0.0, 1e9}};

namespace detail {

/// Times [s] to warm the water at the three ends of the band.
///
///   t = integral from T0 to T1 of C dT / (P - Q(T)),   P among the gains of the model
///
/// A panel is halved until both halves agree with it: one law of evaporation giving way to another makes a kink.
class warming {
 public:
  warming(std::string_view function, const heat_model& heated, double capacity)
      : function_{function}, heated_{heated}, capacity_{capacity} {}

  [[nodiscard]] conductances<double> between(double from, double to) const {
    const conductances<double> whole = on_panel(from, to);
    return refined(from, to, whole, 1e-5 * whole.central);
  }

 private:
  [[nodiscard]] conductances<double> on_panel(double a, double b) const {
    conductances<double> sum{};
    numerics::gauss_points(a, b, [&](double kelvin, double weight) {
      const conductances<double> net = heated_.net(kelvin);
      const double heat = -weight * capacity_;
      sum = plus(sum, {heat / net.low, heat / net.central, heat / net.high});
    });
    return sum;
  }
  [[nodiscard]] conductances<double> refined(double a, double b, const conductances<double>& whole,
                                             double tolerance) const {
    const double middle = 0.5 * (a + b);
    const conductances<double> left = on_panel(a, middle), right = on_panel(middle, b), both = plus(left, right);
    if (std::max({std::fabs(both.low - whole.low), std::fabs(both.central - whole.central),
                  std::fabs(both.high - whole.high)}) <= tolerance) {
      return both;
    }
    if (--panels_left_ == 0) {
      core::fail<no_convergence>(function_, "target temperature", b - 273.15, "degC",
                                 "is where the heater just about holds it: there is no telling when it gets there");
    }
    const conductances<double> near_target = refined(middle, b, right, tolerance);
    return plus(refined(a, middle, left, tolerance), near_target);
  }
  [[nodiscard]] static conductances<double> plus(const conductances<double>& a,
                                                 const conductances<double>& b) noexcept {
    return {a.low + b.low, a.central + b.central, a.high + b.high};
  }

  std::string_view function_;
  const heat_model& heated_;
  double capacity_;
  mutable int panels_left_ = 2000;  // a kink takes some fifty
};

}  // namespace detail

/// Time to warm water with a constant heater and a loss that grows with temperature in a straight line.
///
///   t = tau ln((P/H - (T0 - T_s)) / (P/H - (T1 - T_s))),   tau = C / H;   without losses t = C (T1 - T0) / P
///
/// @param w  heat capacity C [J/K] > 0; temperatures T0 and T1, T1 not below T0; heater P [W] > 0; loss H [W/K] >= 0;
///           temperature T_s where the tank stands without the heater
/// @return   time [s]
/// @throws   invalid_input (also when the heater is too small to get there; it says where it would settle)
/// @accuracy exact for a straight-line loss
/// @source   energy balance
[[nodiscard]] inline duration linear_warm_up_time(const linear_warm_up& w) {
  constexpr std::string_view here = "tankwright::room::linear_warm_up_time";
  const double c = w.heat_capacity.get().value();
  const double p = w.heater.get().value();
  const double h = w.loss.value();
  core::check(here, heat_capacity_limits, c);
  core::check(here, heater_limits, p);
  core::check(here, loss_coefficient_limits, h);
  core::check(here, {"start temperature", "degC", possible_water}, in_celsius(w.from));
  core::check(here, {"target temperature", "degC", possible_water}, in_celsius(w.to));
  core::check(here, {"standing temperature", "degC", possible_surroundings}, in_celsius(w.stands_at));
  const double from = in_kelvins(w.from) - in_kelvins(w.stands_at);
  const double to = in_kelvins(w.to) - in_kelvins(w.stands_at);
  if (!(to >= from)) {
    core::fail<invalid_input>(here, "target temperature", in_celsius(w.to), "degC", "is below the start");
  }
  if (!(p > h * to)) {
    core::fail<invalid_input>(
        here, heater_limits.argument, p, "W",
        "is too small: it settles at " + core::number_with_unit(in_celsius(w.stands_at) + p / h, "degC"));
  }
  return seconds(water::kernel::well_mixed<double>{p / c, h / c}.time_between(from, to));
}

/// Time and energy to warm a tank, with its losses as they grow on the way.
///
///   C dT/dt = P - Q(T),   Q as in heat_balance
///
/// @param w      the tank as for heat_balance, its water at the start; heat capacity [J/K] > 0; target above the start;
///               heater [W] > 0
/// @param policy `extrapolate` to go past the published ranges
/// @return       time [s], energy of the heater [J], and where it would go if the heater stuck
/// @throws       invalid_input (also when the heater is too small to get there; it says where it would settle),
///               out_of_range, no_convergence
/// @accuracy     1e-8 of the time for the losses given, 1e-5 where an end of the band changes from one correlation to
///               another; the band is that of the evaporation
/// @source       energy balance; Gauss and Legendre's quadrature
[[nodiscard]] inline warm_up_result warm_up(const warm_up_request& w, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::warm_up";
  using ends = detail::conductances<double>;
  const detail::heat_model m = detail::checked(here, w.tank, policy);
  const double c = w.heat_capacity.get().value();
  const double p = w.heater.get().value();
  const double from = in_kelvins(w.tank.water.temperature);
  const double to = in_kelvins(w.target);
  core::check(here, heat_capacity_limits, c);
  core::check(here, heater_limits, p);
  core::check(here, water_temperature_limits, to - 273.15, policy);
  if (!(to > from)) {
    core::fail<invalid_input>(here, "target temperature", to - 273.15, "degC",
                              "is not above the start, " + core::number_with_unit(from - 273.15, "degC"));
  }
  detail::heat_model heated = m;
  heated.gains += p;
  for (const auto end : {&ends::high, &ends::central, &ends::low}) {
    if (heated.net(to, end) < 0.0) continue;
    const double t = detail::settled_temperature(here, heated, end, to);
    core::fail<invalid_input>(
        here, heater_limits.argument, p, "W",
        "is too small: where evaporation is strong it settles at " + core::number_with_unit(t - 273.15, "degC"));
  }
  std::optional<temperature> stuck_on;
  if (constexpr double hottest = 363.15; heated.net(hottest, &ends::low) > 0.0) {
    stuck_on = kelvins(detail::settled_temperature(here, heated, &ends::low, hottest));
  }
  const ends times = detail::warming{here, heated, c}.between(from, to);
  const std::string_view why = m.areas.agitated ? agitated_band : still_band;
  const estimate<duration> needed = detail::band_of<duration>(times.low, times.central, times.high, why);
  const auto spent = [&](duration t) { return energy::from_value(p * t.value()); };
  return {.time = needed,
          .heater_energy = map_rising(needed, spent),
          .stuck_on = stuck_on,
          .caution = water_and_electricity_caution};
}

}  // namespace tankwright::room
