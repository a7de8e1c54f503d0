// SPDX-License-Identifier: BSL-1.0
/// @file
/// How long does it take to warm the water, and what energy? With the losses as they are, and by the straight line of
/// the hand calculation.
#pragma once

#include <cmath>
#include <limits>

#include <tankwright/core/thin_types.hpp>
#include <tankwright/room/detail/integrate.hpp>
#include <tankwright/room/heat_balance.hpp>

namespace tankwright::room {

/// A tank with its heater. The water's temperature is the start.
struct warm_up_request {
  tank_heat tank;
  required<tankwright::heat_capacity> heat_capacity;  ///< of water and what is in it; see `heat_capacity_of`
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

inline constexpr limits heat_capacity_limits{"heat capacity", "J/K", positive};
inline constexpr limits heater_limits{"heater", "W", positive};
inline constexpr limits loss_coefficient_limits{"loss coefficient", "W/K", not_negative};
inline constexpr limits water_volume_limits{"volume", "m3", positive};

namespace detail {

/// The temperature moves so slowly that this many steps in a time constant leave an error of 1e-9.
inline constexpr double steps_per_time_constant = 12.0;
/// What a step may be wrong by where its slope has a kink [K].
inline constexpr double kelvins_per_step = 3e-8;

/// A tank whose heat content changes; at one end of the evaporation band.
struct heat_course {
  const heat_model& model;
  double capacity;
  double heater;
  double conductances<double>::*end;
  [[nodiscard]] double operator()(double, double kelvin) const noexcept {
    return (heater - model.net(kelvin, end)) / capacity;
  }
  /// Loss coefficient at a temperature [W/K].
  [[nodiscard]] double slope(double kelvin) const noexcept {
    return 0.5 * (model.net(kelvin + 1.0, end) - model.net(kelvin - 1.0, end));
  }
};

/// When a course that starts at `from` meets `to` [s]. The caller knows that it does.
[[nodiscard]] inline double time_to_reach(std::string_view function, const heat_course& heat, double from,
                                          double to) {
  const double tau = heat.capacity / std::max(heat.slope(from), heat.slope(to));
  const double straight = std::fabs((to - from) / heat(0.0, from));
  course<heat_course> water{heat, 0.0, from, std::min(tau, 10.0 * straight) / steps_per_time_constant,
                            kelvins_per_step};
  const bool rising = to > from;
  for (int i = 0; i < 100000; ++i) {
    water.step(std::numeric_limits<double>::infinity());
    if (rising ? water.value() >= to : water.value() <= to) return water.met(function, to);
  }
  fail<no_convergence>(function, "time", water.time(), "s", "is not enough to get there: the target is where it settles");
}

}  // namespace detail

/// Heat that a volume of the tank's water takes up for each kelvin.
///
///   C = rho V c_p   (TEOS-10)
///
/// @param w      practical salinity 0 to 42; temperature -6 to 80 degC
/// @param volume of water V [m^3] > 0. Rock and sand hold about as much per volume as half the water they displace
/// @param policy `extrapolate` to go past these ranges
/// @return       heat capacity [J/K]
/// @throws       invalid_input, out_of_range
/// @accuracy     0.01 %
/// @source       Feistel 2008
[[nodiscard]] inline heat_capacity heat_capacity_of(const tank_water& w, volume volume,
                                                    range_policy policy = range_policy::published) {
  detail::check("tankwright::room::heat_capacity_of", water_volume_limits, volume.value());
  const tankwright::temperature t = w.temperature;
  const practical_salinity s = w.salinity;
  return heat_capacity::from_value(water::density(s, t, policy).value() * volume.value() *
                                   water::specific_heat(s, t, policy).value());
}

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
  detail::check(here, heat_capacity_limits, c);
  detail::check(here, heater_limits, p);
  detail::check(here, loss_coefficient_limits, h);
  detail::check(here, {"start temperature", "degC", above_absolute_zero_celsius}, in_celsius(w.from));
  detail::check(here, {"target temperature", "degC", above_absolute_zero_celsius}, in_celsius(w.to));
  detail::check(here, {"standing temperature", "degC", above_absolute_zero_celsius}, in_celsius(w.stands_at));
  const double from = in_kelvins(w.from) - in_kelvins(w.stands_at);
  const double to = in_kelvins(w.to) - in_kelvins(w.stands_at);
  if (!(to >= from)) {
    detail::fail<invalid_input>(here, "target temperature", in_celsius(w.to), "degC", "is below the start");
  }
  if (h == 0.0) return duration::from_value(c * (to - from) / p);
  if (!(p > h * to)) {
    detail::fail<invalid_input>(
        here, heater_limits.argument, p, "W",
        "is too small: it settles at " + detail::number_with_unit(in_celsius(w.stands_at) + p / h, "degC"));
  }
  return duration::from_value(c / h * std::log1p(h * (to - from) / (p - h * to)));
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
/// @accuracy     1e-8 of the time for the losses given; the band is that of the evaporation
/// @source       energy balance; Dormand & Prince 1980
[[nodiscard]] inline warm_up_result warm_up(const warm_up_request& w, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::warm_up";
  using ends = detail::conductances<double>;
  const detail::heat_model m = detail::checked(here, w.tank, policy);
  const double c = w.heat_capacity.get().value();
  const double p = w.heater.get().value();
  const double from = in_kelvins(w.tank.water.temperature);
  const double to = in_kelvins(w.target);
  detail::check(here, heat_capacity_limits, c);
  detail::check(here, heater_limits, p);
  detail::check(here, water_temperature_limits, to - 273.15, policy);
  if (!(to > from)) {
    detail::fail<invalid_input>(here, "target temperature", to - 273.15, "degC",
                                "is not above the start, " + detail::number_with_unit(from - 273.15, "degC"));
  }
  detail::heat_model heated = m;
  heated.gains += p;
  if (!(heated.net(to, &ends::high) < 0.0)) {
    const double t = detail::settled_temperature(here, heated, &ends::high);
    detail::fail<invalid_input>(
        here, heater_limits.argument, p, "W",
        "is too small: where evaporation is strong it settles at " + detail::number_with_unit(t - 273.15, "degC"));
  }
  std::optional<temperature> stuck_on;
  if (heated.net(363.15, &ends::low) > 0.0) {
    stuck_on = kelvins(detail::settled_temperature(here, heated, &ends::low));
  }
  const auto time = [&](double ends::*end) {
    return duration::from_value(detail::time_to_reach(here, detail::heat_course{m, c, p, end}, from, to));
  };
  const std::string_view why = m.areas.agitated ? agitated_band : still_band;
  const duration a = time(&ends::low);
  const duration b = time(&ends::high);
  const estimate<duration> needed{std::min(a, b), time(&ends::central), std::max(a, b), why};
  const auto spent = [&](duration t) { return energy::from_value(p * t.value()); };
  return {.time = needed,
          .heater_energy = map_rising(needed, spent),
          .stuck_on = stuck_on,
          .caution = water_and_electricity_caution};
}

}  // namespace tankwright::room
