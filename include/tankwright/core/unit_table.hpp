// SPDX-License-Identifier: BSL-1.0
/// @file
/// The one table of units. Each row: quantity, maker, symbol, size of one unit in SI.
///
/// `units.hpp` turns every row into a maker and a reader, `text.hpp` into a unit that can be parsed and printed.
/// Factors are exact by definition (international inch 1959, pound 1959, US gallon = 231 in^3, imperial gallon 1985,
/// conventional standard gravity 1901) or products of such; the few measured in nature are not units.
#pragma once

// clang-format off
#define TANKWRIGHT_UNIT_TABLE(ROW)                                              \
  ROW(length, metres,        "m",   1.0)                                        \
  ROW(length, centimetres,   "cm",  1e-2)                                       \
  ROW(length, millimetres,   "mm",  1e-3)                                       \
  ROW(length, micrometres,   "um",  1e-6)                                       \
  ROW(length, nanometres,    "nm",  1e-9)                                       \
  ROW(length, inches,        "in",  0.0254)                                     \
  ROW(length, feet,          "ft",  0.3048)                                     \
  ROW(area, square_metres,      "m2",  1.0)                                     \
  ROW(area, square_centimetres, "cm2", 1e-4)                                    \
  ROW(area, square_millimetres, "mm2", 1e-6)                                    \
  ROW(area, square_inches,      "in2", 0.00064516)                              \
  ROW(area, square_feet,        "ft2", 0.09290304)                              \
  ROW(volume, cubic_metres,      "m3",  1.0)                                    \
  ROW(volume, litres,            "L",   1e-3)                                   \
  ROW(volume, millilitres,       "mL",  1e-6)                                   \
  ROW(volume, cubic_inches,      "in3", 1.6387064e-5)                           \
  ROW(volume, cubic_feet,        "ft3", 0.028316846592)                         \
  ROW(volume, us_gallons,        "US gal",  3.785411784e-3)                     \
  ROW(volume, imperial_gallons,  "imp gal", 4.54609e-3)                         \
  ROW(second_moment_of_area, metres_to_the_fourth, "m4", 1.0)                   \
  ROW(specific_surface, square_metres_per_cubic_metre, "m2/m3", 1.0)            \
  ROW(angle, radians, "rad", 1.0)                                               \
  ROW(angle, degrees, "deg", 0.017453292519943295)                              \
  ROW(duration, seconds, "s",   1.0)                                            \
  ROW(duration, minutes, "min", 60.0)                                           \
  ROW(duration, hours,   "h",   3600.0)                                         \
  ROW(duration, days,    "d",   86400.0)                                        \
  ROW(duration, weeks,   "wk",  604800.0)                                       \
  ROW(rate, per_second, "1/s", 1.0)                                             \
  ROW(rate, per_hour,   "1/h", 1.0 / 3600.0)                                    \
  ROW(rate, per_day,    "1/d", 1.0 / 86400.0)                                   \
  ROW(velocity, metres_per_second,      "m/s",  1.0)                            \
  ROW(velocity, centimetres_per_second, "cm/s", 1e-2)                           \
  ROW(velocity, millimetres_per_day,    "mm/d", 1e-3 / 86400.0)                 \
  ROW(velocity, feet_per_second,        "ft/s", 0.3048)                         \
  ROW(acceleration, metres_per_second_squared, "m/s2", 1.0)                     \
  ROW(flow_rate, cubic_metres_per_second,     "m3/s",  1.0)                     \
  ROW(flow_rate, cubic_metres_per_hour,       "m3/h",  1.0 / 3600.0)            \
  ROW(flow_rate, litres_per_second,           "L/s",   1e-3)                    \
  ROW(flow_rate, litres_per_minute,           "L/min", 1e-3 / 60.0)             \
  ROW(flow_rate, litres_per_hour,             "L/h",   1e-3 / 3600.0)           \
  ROW(flow_rate, litres_per_day,              "L/d",   1e-3 / 86400.0)          \
  ROW(flow_rate, us_gallons_per_minute,       "US gpm", 3.785411784e-3 / 60.0)  \
  ROW(flow_rate, us_gallons_per_hour,         "US gph", 3.785411784e-3 / 3600.0) \
  ROW(flow_rate, us_gallons_per_day,          "US gpd", 3.785411784e-3 / 86400.0) \
  ROW(flow_rate, imperial_gallons_per_minute, "imp gpm", 4.54609e-3 / 60.0)     \
  ROW(flow_rate, imperial_gallons_per_hour,   "imp gph", 4.54609e-3 / 3600.0)   \
  ROW(flow_rate, imperial_gallons_per_day,    "imp gpd", 4.54609e-3 / 86400.0)  \
  ROW(flow_rate, cubic_feet_per_second,       "ft3/s", 0.028316846592)          \
  ROW(hydraulic_resistance, seconds_per_square_metre, "s/m2", 1.0)              \
  ROW(mass_flow, kilograms_per_second, "kg/s", 1.0)                             \
  ROW(mass_flow, kilograms_per_hour,   "kg/h", 1.0 / 3600.0)                    \
  ROW(mass_flow, kilograms_per_day,    "kg/d", 1.0 / 86400.0)                   \
  ROW(mass_flow, grams_per_hour,       "g/h",  1e-3 / 3600.0)                   \
  ROW(mass_flow, grams_per_day,        "g/d",  1e-3 / 86400.0)                  \
  ROW(mass_flow, milligrams_per_hour,  "mg/h", 1e-6 / 3600.0)                   \
  ROW(mass_flow, pounds_per_hour,      "lb/h", 0.45359237 / 3600.0)             \
  ROW(mass_flux, kilograms_per_square_metre_second, "kg/(m2 s)", 1.0)           \
  ROW(mass_flux, kilograms_per_square_metre_hour,   "kg/(m2 h)", 1.0 / 3600.0)  \
  ROW(mass_flux, grams_per_square_metre_day,        "g/(m2 d)",  1e-3 / 86400.0) \
  ROW(mass, kilograms,  "kg", 1.0)                                              \
  ROW(mass, grams,      "g",  1e-3)                                             \
  ROW(mass, milligrams, "mg", 1e-6)                                             \
  ROW(mass, tonnes,     "t",  1e3)                                              \
  ROW(mass, pounds,     "lb", 0.45359237)                                       \
  ROW(mass, ounces,     "oz", 0.028349523125)                                   \
  ROW(mass_density, kilograms_per_cubic_metre, "kg/m3", 1.0)                    \
  ROW(mass_density, grams_per_litre,           "g/L",   1.0)                    \
  ROW(mass_density, milligrams_per_litre,      "mg/L",  1e-3)                   \
  ROW(mass_density, micrograms_per_litre,      "ug/L",  1e-6)                   \
  ROW(mass_density, grams_per_millilitre,      "g/mL",  1e3)                    \
  ROW(mass_density, pounds_per_cubic_foot,     "lb/ft3", 0.45359237 / 0.028316846592) \
  ROW(mass_per_area, kilograms_per_square_metre, "kg/m2", 1.0)                  \
  ROW(force, newtons,       "N",   1.0)                                         \
  ROW(force, kilonewtons,   "kN",  1e3)                                         \
  ROW(force, pounds_force,  "lbf", 4.4482216152605)                             \
  ROW(line_load, newtons_per_metre, "N/m", 1.0)                                 \
  ROW(line_load, millinewtons_per_metre, "mN/m", 1e-3)                          \
  ROW(energy, joules,         "J",   1.0)                                       \
  ROW(energy, kilojoules,     "kJ",  1e3)                                       \
  ROW(energy, kilowatt_hours, "kWh", 3.6e6)                                     \
  ROW(energy, watt_hours,     "Wh",  3.6e3)                                     \
  ROW(power, watts,       "W",  1.0)                                            \
  ROW(power, kilowatts,   "kW", 1e3)                                            \
  ROW(power, horsepower,  "hp", 745.69987158227022)                             \
  ROW(power, btu_per_hour, "Btu/h", 1055.05585262 / 3600.0)                     \
  ROW(pressure, pascals,      "Pa",  1.0)                                       \
  ROW(pressure, hectopascals, "hPa", 1e2)                                       \
  ROW(pressure, kilopascals,  "kPa", 1e3)                                       \
  ROW(pressure, megapascals,  "MPa", 1e6)                                       \
  ROW(pressure, gigapascals,  "GPa", 1e9)                                       \
  ROW(pressure, bars,         "bar", 1e5)                                       \
  ROW(pressure, decibars,     "dbar", 1e4)                                      \
  ROW(pressure, atmospheres,  "atm", 101325.0)                                  \
  ROW(pressure, psi,          "psi", 4.4482216152605 / 0.00064516)              \
  ROW(pressure, psf,          "psf", 4.4482216152605 / 0.09290304)              \
  ROW(temperature_coefficient, per_kelvin,         "1/K", 1.0)                  \
  ROW(temperature_coefficient, percent_per_kelvin, "%/K", 1e-2)                 \
  ROW(specific_energy, joules_per_kilogram,     "J/kg",  1.0)                   \
  ROW(specific_energy, kilojoules_per_kilogram, "kJ/kg", 1e3)                   \
  ROW(specific_heat_capacity, joules_per_kilogram_kelvin, "J/(kg K)", 1.0)      \
  ROW(heat_capacity, joules_per_kelvin, "J/K", 1.0)                             \
  ROW(heat_flux, watts_per_square_metre, "W/m2", 1.0)                           \
  ROW(thermal_conductivity, watts_per_metre_kelvin, "W/(m K)", 1.0)             \
  ROW(thermal_transmittance, watts_per_square_metre_kelvin, "W/(m2 K)", 1.0)    \
  ROW(thermal_resistance, square_metre_kelvins_per_watt, "m2 K/W", 1.0)         \
  ROW(heat_loss_coefficient, watts_per_kelvin, "W/K", 1.0)                      \
  ROW(dynamic_viscosity, pascal_seconds, "Pa s", 1.0)                           \
  ROW(dynamic_viscosity, millipascal_seconds, "mPa s", 1e-3)                    \
  ROW(kinematic_viscosity, square_metres_per_second, "m2/s", 1.0)               \
  ROW(electrical_conductivity, siemens_per_metre,           "S/m",   1.0)       \
  ROW(electrical_conductivity, millisiemens_per_centimetre, "mS/cm", 0.1)       \
  ROW(electrical_conductivity, microsiemens_per_centimetre, "uS/cm", 1e-4)      \
  ROW(electric_current, amperes,      "A",  1.0)                                \
  ROW(electric_current, milliamperes, "mA", 1e-3)                               \
  ROW(voltage, volts, "V", 1.0)                                                 \
  ROW(specific_volume, cubic_metres_per_kilogram, "m3/kg", 1.0)                 \
  ROW(amount_concentration, moles_per_cubic_metre,  "mol/m3",  1.0)             \
  ROW(amount_concentration, millimoles_per_litre,   "mmol/L",  1.0)             \
  ROW(amount_content, moles_per_kilogram,      "mol/kg",  1.0)                  \
  ROW(amount_content, micromoles_per_kilogram, "umol/kg", 1e-6)
// clang-format on
