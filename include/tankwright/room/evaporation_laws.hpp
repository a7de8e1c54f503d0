// SPDX-License-Identifier: BSL-1.0
/// @file
/// Eighteen published correlations for the evaporation from open water, each by its name with source and range, to
/// compare and to size to a code. They spread threefold over the same still water; for a number to plan with take the
/// estimate of `evaporation.hpp`.
#pragma once

#include <array>
#include <cmath>

#include <tankwright/room/air.hpp>
#include <tankwright/room/detail/evaporation.hpp>
#include <tankwright/room/tank_water.hpp>
#include <tankwright/water/vapour.hpp>

namespace tankwright::room {

/// Open water under air: what every correlation needs. The air is that at the tank, not that at the thermostat.
struct open_water {
  tank_water water;
  room::air air;
  velocity air_speed = metres_per_second(0.0);  ///< over the surface; only some correlations ask for it
};

enum class evaporation_law {
  shah,                  ///< natural convection or a floor, whichever is more; the default of the library
  ashrae_quiet,          ///< activity factor 0.5: residential, unoccupied
  ashrae_in_use,         ///< activity factor 1.0: public pool in use
  carrier,               ///< forced flow over an occupied pool
  smith_1993,            ///< 76 % of Carrier: measured, quiet indoor pool
  smith_1994,            ///< the same authors outdoors
  smith_1998,            ///< 74 % of Carrier: measured, undisturbed
  vdi_2089_still,        ///< transfer coefficient 7 m/h: unoccupied
  vdi_2089_covered,      ///< 0.7 m/h: covered
  vdi_2089_private,      ///< 21 m/h: private pool in use
  vdi_1994,              ///< 5 g/(m2 h hPa): the older form for still water
  humidity_ratio_25_19,  ///< (25 + 19 v)(x_s - x), common in engineering tables
  rafferty,              ///< ponds in wind
  pauken,                ///< power law, warm water in a wind tunnel
  box,                   ///< Dalton's law of 1876
  biasin_krumme,         ///< an indoor pool, with an offset
  iso_12596,             ///< swimming pool heating by the sun
  analogy                ///< first principles: turbulent natural convection over a plate
};

/// What is known of a correlation. Ranges are those of its data, where stated; an endless interval is "not stated".
struct evaporation_law_data {
  evaporation_law law;
  std::string_view name;
  std::string_view formula;
  citation source;
  interval water_celsius{};
  interval air_celsius{};
  interval humidity{};
  interval speed{};
};

/// All of them, in the order of the enumeration.
// clang-format off
inline constexpr std::array<evaporation_law_data, 18> evaporation_laws{{
    {evaporation_law::shah, "Shah",
     "max(35 rho_w (rho_r - rho_w)^(1/3) (W_w - W_r), 0.00005 (p_w - p_r)) kg/(m2 h), densities of the dry air",
     {"Shah M.M.", 2014, "Methods for calculation of evaporation from swimming pools and other water surfaces",
      "ASHRAE Transactions 120(2), SE-14-001; ranges of the data from HVAC&R Research 8(1):125-131, 2002",
      standing::secondary},
     celsius_range(7.0, 94.0), celsius_range(6.0, 35.0), {0.28, 0.95}},
    {evaporation_law::ashrae_quiet, "ASHRAE, activity 0.5", "4.0e-5 (p_w - p_a) 0.5 kg/(m2 s), kPa",
     {"ASHRAE", 2011, "Handbook-HVAC Applications, Natatoriums", "activity factors as quoted since 1995",
      standing::secondary}},
    {evaporation_law::ashrae_in_use, "ASHRAE, activity 1.0", "4.0e-5 (p_w - p_a) kg/(m2 s), kPa",
     {"ASHRAE", 2011, "Handbook-HVAC Applications, Natatoriums", "activity factors as quoted since 1995",
      standing::secondary}},
    {evaporation_law::carrier, "Carrier", "(0.089 + 0.0782 V)(p_w - p_a) / Y kg/(m2 s), kPa, kJ/kg",
     {"Carrier W.H.", 1918, "The temperature of evaporation",
      "ASHVE Transactions 24:25; as eq. 1 of Smith et al. 1998", standing::secondary}},
    {evaporation_law::smith_1993, "Smith, Jones and Lof 1993", "0.76 of Carrier at V = 0",
     {"Smith C.C., Jones R.W., Lof G.O.G.", 1993,
      "Energy requirements and potential savings for heated indoor swimming pools",
      "ASHRAE Transactions DE-93-12-3, abstract", standing::secondary}},
    {evaporation_law::smith_1994, "Smith, Lof and Jones 1994", "(30.6 + 32.1 V)(p_w - p_a) / Y kg/(m2 h), mmHg, kJ/kg",
     {"Smith C.C., Lof G.O.G., Jones R.W.", 1994,
      "Measurement and analysis of evaporation from an inactive outdoor swimming pool",
      "Solar Energy 53(1):3-7", standing::from_memory}},
    {evaporation_law::smith_1998, "Smith, Lof and Jones 1998", "0.74 of Carrier at V = 0",
     {"Smith C.C., Lof G.O.G., Jones R.W.", 1998, "Rates of evaporation from swimming pools in active use",
      "ASHRAE Transactions 104(1A), abstract and eq. 1", standing::secondary}},
    {evaporation_law::vdi_2089_still, "VDI 2089, unoccupied", "7 m/h (p_w - p_a) / (461.52 T_mean)",
     {"Verein Deutscher Ingenieure", 2006, "VDI 2089-1, Building services in swimming baths",
      "transfer coefficients as quoted by pool engineers and coded in AixLib", standing::secondary}},
    {evaporation_law::vdi_2089_covered, "VDI 2089, covered", "0.7 m/h (p_w - p_a) / (461.52 T_mean)",
     {"Verein Deutscher Ingenieure", 2006, "VDI 2089-1, Building services in swimming baths",
      "transfer coefficients as quoted by pool engineers and coded in AixLib", standing::secondary}},
    {evaporation_law::vdi_2089_private, "VDI 2089, private pool in use", "21 m/h (p_w - p_a) / (461.52 T_mean)",
     {"Verein Deutscher Ingenieure", 2006, "VDI 2089-1, Building services in swimming baths",
      "transfer coefficients as quoted by pool engineers and coded in AixLib", standing::secondary}},
    {evaporation_law::vdi_1994, "VDI 2089 of 1994, still", "5 g/(m2 h hPa) (p_w - p_a)",
     {"Verein Deutscher Ingenieure", 1994, "VDI 2089-1 (older edition)", "as quoted by pool engineers",
      standing::secondary}},
    {evaporation_law::humidity_ratio_25_19, "(25 + 19 v)(x_s - x)", "(25 + 19 v)(x_s - x) kg/(m2 h)",
     {"anonymous", 0, "Evaporation from water surfaces", "engineering tables, no first source known",
      standing::secondary}},
    {evaporation_law::rafferty, "Rafferty 1986",
     "((1 + 0.225 v)/0.018)(p_w - p_a) 144 / (85.74 (t_w + 460)) lb/(h ft2), ft/s, psi, degF",
     {"Rafferty K.", 1986, "Pond heat loss", "Geo-Heat Center Quarterly Bulletin 9(4)"}},
    {evaporation_law::pauken, "Pauken 1999", "a (p_w - p_a)^b g/(m2 h), kPa; a = 74.0 + 97.97 V + 24.91 V^2, "
                                             "b = 1.22 - 0.19 V + 0.038 V^2",
     {"Pauken M.T.", 1999, "An experimental investigation of combined turbulent free and forced evaporation",
      "Experimental Thermal and Fluid Science 18:334-340", standing::from_memory}},
    {evaporation_law::box, "Box 1876", "7.78e-5 (p_w - p_a) kg/(m2 h), Pa",
     {"Box T.", 1876, "A practical treatise on heat", "as quoted by Shah", standing::from_memory}},
    {evaporation_law::biasin_krumme, "Biasin and Krumme 1974", "-0.059 + 7.9e-5 (p_w - p_a) kg/(m2 h), Pa",
     {"Biasin K., Krumme W.", 1974, "Die Wasserverdunstung in einem Innenschwimmbad",
      "Elektrowaerme International 32(A3):115-129", standing::from_memory}},
    {evaporation_law::iso_12596, "ISO/TR 12596", "(5.64 + 5.96 V)(p_w - p_a) / Y, MJ/(m2 d), kPa",
     {"ISO", 1995, "ISO/TR 12596, Solar heating - Swimming-pool heating systems", "", standing::from_memory}},
    {evaporation_law::analogy, "heat and mass transfer analogy",
     "0.15 D (g (rho_r - rho_s) / (rho nu D))^(1/3) (rho_v,s - rho_v,r), densities of the moist air",
     {"Lloyd J.R., Moran W.R.", 1974, "Natural convection adjacent to horizontal surfaces of various planforms",
      "J. Heat Transfer 96:443-447, with D of Marrero and Mason 1972", standing::from_memory}},
}};
// clang-format on

/// The data of one correlation.
///
///   a row of `evaporation_laws`
///
/// @param law    which correlation
/// @return       its name, formula, source and ranges
/// @accuracy     exact
/// @source       the sources named in it
[[nodiscard]] constexpr const evaporation_law_data& about(evaporation_law law) noexcept {
  return evaporation_laws[static_cast<std::size_t>(law)];
}

/// Water temperatures at which a free surface is liquid; the ranges of the correlations are narrower.
inline constexpr limits water_temperature_limits{"water temperature", "degC", possible_water,
                                                 celsius_range(-2.0, 100.0), "liquid water"};
inline constexpr limits air_speed_limits{"air speed", "m/s", {0.0, 100.0}};

inline constexpr citation marrero_mason_1972{
    "Marrero T.R., Mason E.A.", 1972, "Gaseous diffusion coefficients",
    "J. Phys. Chem. Ref. Data 1:3-118; as in Cengel, Heat and Mass Transfer, eq. 14-15", standing::secondary};

namespace detail {

/// The rate of a correlation [kg/(m^2 h)].
template <class T>
[[nodiscard]] T evaporation_rate(evaporation_law law, const across<T>& s) noexcept {
  using std::pow;
  const T dp = s.at_water - s.in_air;
  switch (law) {
    case evaporation_law::shah:
      return shah_conductance(s) * dp;
    case evaporation_law::ashrae_quiet:
      return T(3600) * T(4.0e-8L) * T(0.5L) * dp;
    case evaporation_law::ashrae_in_use:
      return T(3600) * T(4.0e-8L) * dp;
    case evaporation_law::carrier:
      return carrier_conductance(s, s.speed) * dp;
    case evaporation_law::smith_1993:
      return T(0.76L) * carrier_conductance(s, T(0)) * dp;
    case evaporation_law::smith_1994:
      return smith_conductance(s, s.speed) * dp;
    case evaporation_law::smith_1998:
      return T(0.74L) * carrier_conductance(s, T(0)) * dp;
    case evaporation_law::vdi_2089_still:
      return vdi_conductance(s, T(7)) * dp;
    case evaporation_law::vdi_2089_covered:
      return vdi_conductance(s, T(0.7L)) * dp;
    case evaporation_law::vdi_2089_private:
      return vdi_conductance(s, T(21)) * dp;
    case evaporation_law::vdi_1994:
      return T(5e-5L) * dp;
    case evaporation_law::humidity_ratio_25_19:
      return (T(25) + T(19) * s.speed) * (humidity_ratio(s.at_water, s.total) - humidity_ratio(s.in_air, s.total));
    case evaporation_law::rafferty:
      return rafferty_rate(dp / T(4.4482216152605L / 0.00064516L), s.water * T(1.8L) - T(459.67L),
                           s.speed / T(0.3048L));
    case evaporation_law::pauken: {
      const T a = T(74.0L) + s.speed * (T(97.97L) + s.speed * T(24.91L));
      const T b = T(1.22L) + s.speed * (T(-0.19L) + s.speed * T(0.038L));
      return T(1e-3L) * a * pow(T(1e-3L) * dp, b);
    }
    case evaporation_law::box:
      return T(7.78e-5L) * dp;
    case evaporation_law::biasin_krumme:
      return T(-0.059L) + T(7.9e-5L) * dp;
    case evaporation_law::iso_12596:
      return (T(5.64L) + T(5.96L) * s.speed) * T(1e-3L) * dp * T(1e3L) / T(24) / latent_heat_kilojoules(s.water);
    case evaporation_law::analogy:
      return analogy_rate(s, vapour_diffusivity(T(0.5L) * (s.water + s.air), s.total));
  }
  return T(0);
}

/// The vapour pressure at the surface [Pa]: of pure water, times the water activity. Checked by the caller.
[[nodiscard]] inline double vapour_pressure_at(double kelvin, double activity) noexcept {
  return activity * water::kernel::saturation_hyland_wexler(kelvin);
}

[[nodiscard]] inline across<double> checked(std::string_view function, const open_water& w, range_policy policy) {
  const auto in_air = checked(function, w.air, policy);
  core::check(function, water_temperature_limits, in_celsius(w.water.temperature), policy);
  core::check(function, water::practical_salinity_limits, w.water.salinity.get().value(), policy);
  core::check(function, air_speed_limits, w.air_speed.value());
  const double kelvin = in_kelvins(w.water.temperature);
  const double activity = water::water_activity(w.water.salinity, policy).value();
  const double at_water = vapour_pressure_at(kelvin, activity);
  check_vapour(function, at_water, in_air.pressure);
  return {kelvin, in_air.temperature, at_water, in_air.vapour, in_air.pressure, w.air_speed.value()};
}

/// Hold a state against the range of a correlation's data.
inline void check_law(std::string_view function, const evaporation_law_data& law, const across<double>& s,
                      double humidity, range_policy policy) {
  if (policy == range_policy::extrapolate) return;
  core::check(function, {"water temperature", "degC", {}, law.water_celsius, law.name}, s.water - 273.15);
  core::check(function, {"air temperature", "degC", {}, law.air_celsius, law.name}, s.air - 273.15);
  core::check(function, {relative_humidity_limits.argument, "", {}, law.humidity, law.name}, humidity);
  core::check(function, {air_speed_limits.argument, "m/s", {}, law.speed, law.name}, s.speed);
}

}  // namespace detail

/// Diffusivity of water vapour in air.
///
///   D = 1.87e-10 T^2.072 / (P / 1 atm)   m^2/s
///
/// @param t      temperature [ITS-90], 7 to 177 degC (280 to 450 K)
/// @param total  pressure of the air [Pa], 22.6 to 177.7 kPa
/// @param policy `extrapolate` to go past these ranges
/// @return       diffusivity [m^2/s]
/// @throws       invalid_input, out_of_range
/// @accuracy     about 5 %
/// @source       Marrero and Mason 1972
[[nodiscard]] inline kinematic_viscosity vapour_diffusivity(temperature t, absolute_pressure total,
                                                            range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::vapour_diffusivity";
  constexpr limits range{"temperature", "degC", possible_air, celsius_range(6.85, 176.85),
                         "Marrero and Mason 1972, 280 to 450 K"};
  core::check(here, range, in_celsius(t), policy);
  detail::check_air_pressure(here, total, policy);
  return kinematic_viscosity::from_value(detail::vapour_diffusivity(in_kelvins(t), in_pascals(total.value())));
}

/// Evaporation from a square metre of open water by one correlation of the literature.
///
///   the formula of about(law); p_w = a_w(S) p_sat(t_w), so that salt is in all of them
///
/// @param law    which correlation
/// @param w      water: surface temperature -2 to 100 degC, practical salinity 0 to 42; air at the tank; air speed
///               [m/s] >= 0; the data of the correlation may be narrower
/// @param policy `extrapolate` to go past these ranges
/// @return       evaporation [kg/(m^2 s)]; negative where vapour of the air condenses on colder water
/// @throws       invalid_input; out_of_range (names the argument, its value and the limits), also where the formula has
///               no answer: condensation by Pauken, too small a difference for Biasin and Krumme, a stable layer in the
///               analogy
/// @accuracy     Shah: mean deviation 18 % over its data, the next best 26 %; see the theory page
/// @source       about(law).source
[[nodiscard]] inline mass_flux evaporation_rate(evaporation_law law, const open_water& w,
                                                range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::evaporation_rate";
  const detail::across<double> s = detail::checked(here, w, policy);
  detail::check_law(here, about(law), s, w.air.humidity.get().value(), policy);
  const double difference = s.at_water - s.in_air;
  const double rate = detail::evaporation_rate(law, s);
  const bool has_no_answer = (law == evaporation_law::pauken && difference < 0.0) ||
                             (law == evaporation_law::biasin_krumme && (rate < 0.0) != (difference < 0.0)) ||
                             (law == evaporation_law::analogy && rate == 0.0 && difference != 0.0);
  if (has_no_answer) {
    core::fail<out_of_range>(here, "vapour pressure difference", difference, "Pa",
                             std::string{"is outside what the formula can answer ("}.append(about(law).name) + ")");
  }
  return mass_flux::from_value(rate / 3600.0);
}

}  // namespace tankwright::room
