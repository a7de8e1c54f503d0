// SPDX-License-Identifier: BSL-1.0
/// @file
/// Where does the heat of the tank go, and what heater or chiller holds it? Evaporation, convection, radiation, covers,
/// walls and make-up water against pumps and lights.
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include <tankwright/room/detail/heat.hpp>
#include <tankwright/room/wall.hpp>

namespace tankwright::room {

inline constexpr citation bowen_1926{
    "Bowen I.S.", 1926, "The ratio of heat losses by conduction and by evaporation from any water surface",
    "Physical Review 27:779-787; psychrometric constant of FAO-56", standing::secondary};

/// A wall, pane or base of the tank.
struct tank_wall {
  std::string label = "wall";
  required<tankwright::area> area;
  required<thermal_transmittance> transmittance;        ///< see `transmittance`
  std::optional<tankwright::temperature> outside = {};  ///< of what is behind it; the room's air when left out
};

/// Heat that ends up in the water: all the electricity of a submerged pump, the shaft power of a dry one, the light
/// that the water absorbs.
struct heat_source {
  std::string label = "source";
  required<power> heat;
};

/// A tank and its surroundings.
struct tank_heat {
  tank_water water;
  room::air air;
  std::vector<wet_surface> surfaces;
  std::vector<tank_wall> walls = {};
  std::vector<heat_source> sources = {};
  std::optional<tankwright::temperature> surroundings = {};  ///< that the open water sees; the air's when left out
  std::optional<tankwright::temperature> make_up = {};       ///< of the top-off water; the air's when left out
};

/// What leaves the water, and what must be put in to hold its temperature. Where a part is negative, heat comes in.
struct heat_budget {
  estimate<power> evaporation;
  estimate<power> convection;
  estimate<power> make_up;
  power radiation;
  power covers;
  power walls;
  power gains;          ///< of pumps and lights
  estimate<power> net;  ///< all losses less the gains: to be heated; negative: to be cooled
};

inline constexpr caution water_and_electricity_caution{
    "Heaters, chillers and pumps are electricity next to salt water: residual-current protection, drip loops and an "
    "installation by a licensed electrician to local code. A heater stuck on, or off, is the commonest way to lose the "
    "animals: use two smaller ones, an independent thermostat and an alarm."};

/// A heater or chiller.
struct heat_equipment {
  estimate<power> needed;  ///< to hold the temperature
  power suggested;
  bool is_needed;
  tankwright::caution caution;
};

inline constexpr limits heat_limits{"heat", "W", possible_power};
inline constexpr limits tank_transmittance_limits{"transmittance", "W/(m2 K)", possible_transmittance};
inline constexpr limits duty_limits{"duty", "", {0.01, 1.0}};
inline constexpr limits margin_limits{"margin", "", {1.0, 100.0}, {1.0, 3.0}, "a margin, not another size"};

namespace detail {

[[nodiscard]] inline heat_model checked(std::string_view function, const tank_heat& t, range_policy policy) {
  const across<double> s = checked(function, open_water{t.water, t.air}, policy);
  check_law(function, about(evaporation_law::shah), s, t.air.humidity.get().value(), policy);
  heat_model m;
  m.activity = water::water_activity(t.water.salinity, policy).value();
  m.air = s.air;
  m.vapour = s.in_air;
  m.total = s.total;
  if (t.surroundings) {
    core::check(function, {"temperature of the surroundings", "degC", possible_surroundings},
                in_celsius(*t.surroundings));
    m.radiant = in_kelvins(*t.surroundings);
  }
  const tankwright::temperature refill = t.make_up.value_or(t.air.temperature);
  core::check(function, {"make-up temperature", "degC", possible_water, celsius_range(0.0, 80.0)}, in_celsius(refill),
              policy);
  if (t.make_up) m.make_up = in_kelvins(*t.make_up);
  m.specific_heat = water::specific_heat(practical_salinity{0.0}, refill, extrapolate).value();
  m.areas = checked_areas(function, t.surfaces, policy);
  for (const wet_surface& w : t.surfaces) {
    const double covered = w.area.get().value() * w.covered.value();
    m.open_area += w.area.get().value() - covered;
    // The underside of a lid is wet and as warm as the water; its top passes heat to the room like any wall.
    m.cover_conductance += covered * indoor_film.value();
  }
  for (const tank_wall& w : t.walls) {
    core::check_element(function, w.label, area_limits, w.area.get().value());
    core::check_element(function, w.label, tank_transmittance_limits, w.transmittance.get().value());
    const double conductance = w.area.get().value() * w.transmittance.get().value();
    if (!w.outside) {
      m.walls_to_air += conductance;
    } else {
      core::check_element(function, w.label, {"outside temperature", "degC", possible_surroundings},
                          in_celsius(*w.outside));
      m.walls_elsewhere += conductance;
      m.walls_inflow += conductance * in_kelvins(*w.outside);
    }
  }
  for (const heat_source& h : t.sources) {
    core::check_element(function, h.label, heat_limits, h.heat.get().value());
    m.gains += h.heat.get().value();
  }
  return m;
}

[[nodiscard]] inline estimate<power> power_estimate(const conductances<double>& c, std::string_view reason) {
  return band_of<power>(c.low, c.central, c.high, reason);
}

}  // namespace detail

/// Heat that the tank loses and gains, with the band of the evaporation.
///
///   evaporation E h_fg;   convection: Bowen's ratio, gamma (t_w - t_a)/(p_w - p_a) of it, gamma = 0.000665 P
///   radiation 0.95 sigma A (T_w^4 - T_s^4) of the open water;   covers 8.3 A (t_w - t_a);   walls U A (t_w - t_o)
///   make-up E c (t_w - t_m)
///
/// @param t      water and air as for evaporation; surfaces; walls: area [m^2] >= 0, U [W/(m^2 K)] >= 0; sources [W]
///               >= 0; make-up 0 to 80 degC
/// @param policy `extrapolate` to go past the published ranges
/// @return       parts and sum [W]
/// @throws       invalid_input, out_of_range (names the element, the argument, its value and the limits)
/// @accuracy     evaporation and convection: their band; walls 10 %; the sum of the parts is exact
/// @source       Bowen 1926; FAO-56; EN ISO 6946
[[nodiscard]] inline heat_budget heat_balance(const tank_heat& t, range_policy policy = range_policy::published) {
  const detail::heat_model m = detail::checked("tankwright::room::heat_balance", t, policy);
  const double kelvin = in_kelvins(t.water.temperature);
  const detail::heat_parts p = m.parts(kelvin);
  const std::string_view why = m.areas.agitated ? agitated_band : still_band;
  using ends = detail::conductances<double>;
  return {.evaporation = detail::power_estimate(p.evaporation, why),
          .convection = detail::power_estimate(p.convection, why),
          .make_up = detail::power_estimate(p.make_up, why),
          .radiation = power::from_value(p.radiation),
          .covers = power::from_value(p.covers),
          .walls = power::from_value(p.walls),
          .gains = power::from_value(m.gains),
          .net = detail::power_estimate(
              {m.net(kelvin, &ends::low), m.net(kelvin, &ends::central), m.net(kelvin, &ends::high)}, why)};
}

/// The heater that holds the temperature in the coldest room that is to be expected.
///
///   needed = net heat loss;   suggested = margin times its high end
///
/// @param t      the tank in the coldest, driest room: as for heat_balance; leave out lights that are off at night
/// @param margin [1] over the high estimate, 1 to 3
/// @param policy `extrapolate` to go past the published ranges
/// @return       power [W]; not needed where pumps and lights are enough
/// @throws       invalid_input, out_of_range
/// @accuracy     that of heat_balance
/// @source       heat balance
[[nodiscard]] inline heat_equipment heater_for(const tank_heat& t, double margin = 1.25,
                                               range_policy policy = range_policy::published) {
  core::check("tankwright::room::heater_for", margin_limits, margin, policy);
  const estimate<power> net = heat_balance(t, policy).net;
  const power most = std::max(net.high, watts(0.0));
  return {.needed = net,
          .suggested = margin * most,
          .is_needed = net.high > watts(0.0),
          .caution = water_and_electricity_caution};
}

/// The chiller that holds the temperature in the hottest room that is to be expected. The room gets its heat back, and
/// the chiller's electricity.
///
///   needed = -net heat loss;   suggested = its high end, of the least evaporation, over the duty
///
/// @param t           the tank, as for heat_balance; its own air is not used
/// @param hottest_day the air of the room on the hottest, most humid day that is to be expected: not a summer's mean
/// @param duty        part of the time that the chiller is to run, 0.01 to 1
/// @param policy      `extrapolate` to go past the published ranges
/// @return            cooling power [W]; not needed where evaporation is enough
/// @throws            invalid_input, out_of_range
/// @accuracy          that of heat_balance; a chiller's label is for water of about 20 degC
/// @source            heat balance
[[nodiscard]] inline heat_equipment chiller_for(tank_heat t, const air& hottest_day, proportion duty = fraction(0.65),
                                                range_policy policy = range_policy::published) {
  core::check("tankwright::room::chiller_for", duty_limits, duty.value());
  t.air = hottest_day;
  const estimate<power> net = heat_balance(t, policy).net;
  const estimate<power> cooling{-net.high, -net.central, -net.low, net.reason};
  const power most = std::max(cooling.high, watts(0.0));
  return {.needed = cooling,
          .suggested = most / duty.value(),
          .is_needed = cooling.high > watts(0.0),
          .caution = water_and_electricity_caution};
}

}  // namespace tankwright::room
