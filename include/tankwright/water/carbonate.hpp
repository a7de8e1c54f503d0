// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does breath do to the pH of a closed water? Carbon dioxide between water and gas at a fixed alkalinity.
#pragma once

#include <cmath>
#include <tankwright/core/citation.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/core/validity.hpp>
#include <tankwright/numerics/root.hpp>

namespace tankwright::water {

inline constexpr citation lueker_2000{"Lueker T.J., Dickson A.G., Keeling C.D.", 2000,
                                      "Ocean pCO2 calculated from dissolved inorganic carbon, alkalinity, and "
                                      "equations for K1 and K2",
                                      "Mar. Chem. 70:105-119", standing::from_memory};
inline constexpr citation weiss_1974{"Weiss R.F.", 1974,
                                     "Carbon dioxide in water and seawater: the solubility of a non-ideal gas",
                                     "Mar. Chem. 2:203-215", standing::from_memory};

inline constexpr limits carbonate_salinity_limits{"practical salinity", "", {0.0, 50.0}, {19.0, 43.0}, "Lueker 2000"};
inline constexpr limits carbonate_temperature_limits{"temperature", "degC", celsius_range(-2.0, 45.0),
                                                     celsius_range(2.0, 35.0), "Lueker 2000"};
inline constexpr limits carbonate_alkalinity_limits{"alkalinity", "meq/L", {0.01, 100.0}};
inline constexpr limits carbonate_ph_limits{"pH", "", {4.0, 10.0}};
inline constexpr limits carbonate_gas_limits{"gas over water", "", {0.0, 1e6}};
inline constexpr limits carbonate_added_limits{"carbon dioxide", "mmol/L", {0.0, 1e4}};

/// Constants of carbonic acid in seawater on the total scale, as negative logarithms, and the solubility of its gas.
struct carbonate_constants {
  double pk1;         ///< [1]
  double pk2;         ///< [1]
  double solubility;  ///< [mol/(L atm)] K0, mol/(L atm) with a kilogram of seawater for 1/1.025 L
};

namespace kernel {

/// pK1, pK2 (Lueker 2000) and ln K0 (Weiss 1974) of seawater: s practical salinity, t [K].
template <class T>
struct carbonate_numbers {
  T pk1, pk2, ln_k0;
};
template <class T>
[[nodiscard]] inline carbonate_numbers<T> carbonate_of(T s, T t) noexcept {
  using std::log;
  const T hundred = t / T(100);
  return {T(3633.86L) / t - T(61.2172L) + T(9.67770L) * log(t) - T(0.011555L) * s + T(0.0001152L) * s * s,
          T(471.78L) / t + T(25.9290L) - T(3.16967L) * log(t) - T(0.01781L) * s + T(0.0001122L) * s * s,
          T(93.4517L) / hundred - T(60.2409L) + T(23.3585L) * log(hundred) +
              s * (T(0.023517L) - T(0.023656L) * hundred + T(0.0047036L) * hundred * hundred)};
}

}  // namespace kernel

/// Constants of carbonic acid in seawater.
///
///   pK1, pK2 on the total scale by mol/kg; ln K0 in mol/(kg atm)
///
/// @param s      practical salinity, 19 to 43
/// @param t      temperature, 2 to 35 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       pK1, pK2 and K0
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.006 in pK1, 0.011 in pK2
/// @source       Lueker, Dickson and Keeling 2000; Weiss 1974 (both from memory)
[[nodiscard]] inline carbonate_constants carbonate_in(practical_salinity s, temperature t,
                                                      range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::carbonate_in";
  core::check(here, carbonate_salinity_limits, s.value(), policy);
  core::check(here, carbonate_temperature_limits, in_celsius(t), policy);
  const auto k = kernel::carbonate_of(s.value(), in_kelvins(t));
  return {k.pk1, k.pk2, std::exp(k.ln_k0)};
}

/// Water with some gas over it, closed.
struct closed_water {
  required<double> ph;          ///< [1] total scale, before
  required<double> alkalinity;  ///< [meq/L]; it stays
  required<practical_salinity> salinity;
  required<tankwright::temperature> temperature;
  double gas_over_water = 0.0;  ///< [1] volume of gas over volume of water; without carbon dioxide at first
};

struct breathed_water {
  double ph;                          ///< [1] total scale, after
  mass_concentration carbon_dioxide;  ///< dissolved gas, CO2
  double partial_pressure;            ///< [atm] of carbon dioxide, in atmospheres
};

/// pH of a closed water after breath has gone into it.
///
///   A = [HCO3] + 2 [CO3];   DIC(H) + g pCO2(H)/(R T) = DIC_0 + added;   pCO2 = [CO2]/K0
///
/// @param closed pH before 4 to 10, total scale; alkalinity 0.01 to 100 meq/L; salinity 19 to 43; temperature 2 to 35
///               degC; gas over water 0 to 1e6
/// @param added  carbon dioxide [mmol/L] for each litre of water, 0 to 10 000
/// @param policy `extrapolate` to go past these ranges
/// @return       pH, dissolved carbon dioxide, its partial pressure
/// @throws       invalid_input, out_of_range, no_convergence
/// @accuracy     0.05 in pH; borate is left out, which makes the pH some hundredths low; all is taken as in equilibrium
/// @source       definition of alkalinity; Lueker et al. 2000; Weiss 1974
[[nodiscard]] inline breathed_water ph_after_breath(const closed_water& closed, double added,
                                                    range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::ph_after_breath";
  constexpr double kilogram_per_litre = 1.0247, gas_constant = 0.082057366;  // L atm/(mol K)
  core::check(here, carbonate_ph_limits, closed.ph.get());
  core::check(here, carbonate_alkalinity_limits, closed.alkalinity.get());
  core::check(here, carbonate_gas_limits, closed.gas_over_water);
  core::check(here, carbonate_added_limits, added);
  const carbonate_constants k = carbonate_in(closed.salinity, closed.temperature, policy);
  const double k1 = std::pow(10.0, -k.pk1), k2 = std::pow(10.0, -k.pk2), alkalinity = closed.alkalinity.get();
  const double per_atm = k.solubility * kilogram_per_litre * 1e3;  // mmol/(L atm)
  const double gas = closed.gas_over_water * 1e3 / (gas_constant * in_kelvins(closed.temperature));
  const auto dissolved = [&](double ph) {  // CO2, mmol/L
    const double h = std::pow(10.0, -ph);
    return alkalinity / (1.0 + 2.0 * k2 / h) * h / k1;
  };
  const auto inorganic = [&](double ph) {
    const double h = std::pow(10.0, -ph), bicarbonate = alkalinity / (1.0 + 2.0 * k2 / h);
    return dissolved(ph) + bicarbonate + bicarbonate * k2 / h;
  };
  const double all = inorganic(closed.ph) + added;
  const auto over = [&](double ph) { return inorganic(ph) + gas * dissolved(ph) / per_atm - all; };
  // The gas takes some of what was dissolved, so that the pH may rise at first.
  const double ph = numerics::bracketed_root<double>(here, "pH", over, 2.0, 12.0, {.relative = 1e-12});
  const double carbon_dioxide = dissolved(ph);
  return {ph, milligrams_per_litre(carbon_dioxide * 44.009), carbon_dioxide / per_atm};
}

}  // namespace tankwright::water
