// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the house feed it? The current of what hangs on a circuit, what all of it leaks to earth through one
/// protection, and how long a battery keeps some of it running.
#pragma once

#include <span>
#include <string>
#include <tankwright/core/citation.hpp>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/labelled.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/core/validity.hpp>

namespace tankwright::room {

inline constexpr citation nec_continuous_load{"NFPA", 2023, "NFPA 70: National Electrical Code",
                                              "210.19, 210.20: circuits at 125 % of a continuous load",
                                              standing::from_memory};
inline constexpr citation iec_60364_residual{"IEC", 2019, "IEC 60364-5-53: protection, isolation, switching",
                                             "531.3.2: leakage in service at most 0.3 of the rated residual current",
                                             standing::from_memory};
inline constexpr citation iec_60335_leakage{
    "IEC", 2010, "IEC 60335-1: household appliances",
    "13.2: leakage 0.25 mA of class II, 0.75 mA of portable class I, 3.5 mA of stationary motors",
    standing::from_memory};

inline constexpr caution supply_caution{
    "Electricity beside salt water kills. A licensed electrician checks circuits, earthing, residual-current "
    "protection and any generator by local codes; plugs hang in drip loops above the water. Never feed a house socket "
    "from a generator, never run one indoors, and charge batteries where their gas can leave."};

/// What a device leaks to earth where nobody has measured it: most far less than their standard allows.
inline constexpr estimate<electric_current> usual_leakage{milliamperes(0.02), milliamperes(0.20), milliamperes(0.75),
                                                          "0.25 mA (double insulated) to 0.75 mA (earthed) are allowed "
                                                          "and most leak less; a chiller that is built in may leak "
                                                          "3.5 mA: give it by itself; from memory"};

/// Part of the rated residual current that may flow in service without nuisance (IEC), and at which it may trip
/// already.
inline constexpr double leakage_share = 0.3;
inline constexpr double tripping_share = 0.5;

/// Something that is plugged in.
struct plugged_in {
  std::string label = "device";
  required<power> draws;
  double power_factor = 1.0;  ///< [1] real power over apparent power
};

/// A battery with its inverter.
struct stored_energy {
  required<energy> capacity;  ///< new and full
  proportion usable = fraction(0.5);
  proportion inverter = fraction(0.85);  ///< part of it that comes out; 1 without an inverter
};

inline constexpr limits supply_voltage_limits{"voltage", "V", {1e-6, 1e6}};
inline constexpr limits drawn_power_limits{"power", "W", {0.0, 1e9}};
inline constexpr limits power_factor_limits{"power factor", "", above_zero_to_one};
inline constexpr limits leakage_limits{"leakage", "A", {0.0, 1e6}};
inline constexpr limits stored_energy_limits{"capacity", "J", {0.0, 1e15}};
inline constexpr limits usable_limits{"usable part", "", zero_to_one};

/// Current of all that is on one circuit at once.
///
///   I = sum of P/(U pf), as if all were in phase
///
/// @param all     each draws [W] 0 to 1e9; power factor above 0 to 1
/// @param supply  U [V] above 0
/// @return        current [A]
/// @throws        invalid_input (names the device)
/// @accuracy      an upper limit where power factors differ; motors take 3 to 8 times as much for a moment,
///                from memory
/// @source        definition of the power factor
[[nodiscard]] inline electric_current current_of(std::span<const plugged_in> all, voltage supply) {
  constexpr std::string_view here = "tankwright::room::current_of";
  core::check(here, supply_voltage_limits, supply.value());
  double sum = 0.0;
  for (const plugged_in& one : all) {
    core::check_element(here, one.label, drawn_power_limits, one.draws->value());
    core::check_element(here, one.label, power_factor_limits, one.power_factor);
    sum += one.draws->value() / one.power_factor;
  }
  return electric_current::from_value(sum / supply.value());
}

/// What all devices behind one protection leak to earth together.
///
///   I = sum of I_i, as if all were in phase
///
/// @param all leakage of each [A] 0 to 1e6, with its band
/// @return    current [A] with its band
/// @throws    invalid_input
/// @accuracy  that of the parts; salt creep on a plug adds to it any day
/// @source    Kirchhoff's law
[[nodiscard]] inline estimate<electric_current> leakage_of(std::span<const estimate<electric_current>> all) {
  constexpr std::string_view here = "tankwright::room::leakage_of";
  double low = 0.0, central = 0.0, high = 0.0;
  std::string_view reason{};
  for (const auto& one : all) {
    core::check(here, leakage_limits, one.low.value());
    core::check(here, leakage_limits, one.high.value());
    low += one.low.value();
    central += one.central.value();
    high += one.high.value();
    if (!one.reason.empty()) reason = one.reason;
  }
  const auto amps = [](double i) { return electric_current::from_value(i); };
  return {amps(low), amps(central), amps(high), reason};
}

/// How long a battery feeds a load.
///
///   t = C u eta/P
///
/// @param from capacity C [J] >= 0; usable part u and part through the inverter eta, 0 to 1
/// @param load P [W] > 0
/// @return     time [s]; low end: a battery of some years, 70 %; high end: new, 110 %
/// @throws     invalid_input (names the argument, its value and the limits)
/// @accuracy   the band, common practice without a source: age, cold, and for lead how fast it is drawn
/// @source     conservation of energy
[[nodiscard]] inline estimate<duration> battery_feeds(const stored_energy& from, power load) {
  constexpr std::string_view here = "tankwright::room::battery_feeds";
  core::check(here, stored_energy_limits, from.capacity->value());
  core::check(here, usable_limits, from.usable.value());
  core::check(here, usable_limits, from.inverter.value());
  core::check(here, {"load", "W", positive}, load.value());
  const double t = from.capacity->value() * from.usable.value() * from.inverter.value() / load.value();
  return {duration::from_value(0.7 * t), duration::from_value(t), duration::from_value(1.1 * t),
          "age and cold of the battery, and how fast it is drawn; common practice, no source"};
}

}  // namespace tankwright::room
