// SPDX-License-Identifier: BSL-1.0
/// @file
/// The moisture balance of a room on raw numbers, in the vapour pressure p of its air.
///
/// Dry air of density (P - p)/(R T) comes in with n changes an hour at the outdoor humidity ratio W_o and leaves with
/// that of the room, W = eps p/(P - p). So ventilation takes out n V (eps p - (P - p) W_o)/(R T), a straight line in p;
/// what is left of sources and sinks, F, moves the air by V eps/(R T) dp/dt = F (P - p)/P. That is exact for ideal
/// gases at constant pressure and temperature: the rest of F leaves with the air that the vapour pushes out.
#pragma once

#include <tankwright/numerics/root.hpp>
#include <tankwright/room/dehumidifier.hpp>
#include <tankwright/room/evaporation.hpp>

namespace tankwright::room::detail {

struct moisture_model {
  across<double> surface;            ///< in_air is set at each call
  double wet_area{};                 ///< m^2 of still, open water
  band_end end = band_end::central;  ///< of the evaporation
  double volume{};
  double changes{};     ///< 1/s
  double outdoor{};     ///< kg/kg
  double source = 0.0;  ///< kg/s
  double saturation{};  ///< Pa
  double capacity{};    ///< of the machine at 26.7 degC, 60 %; 0: none
  double set_point{};   ///< vapour pressure [Pa] above which the machine runs

  [[nodiscard]] double total() const noexcept { return surface.total; }
  /// Volume over R T: kg of dry air per Pa.
  [[nodiscard]] double per_pascal() const noexcept { return volume / (dry_air_gas_constant<double> * surface.air); }
  [[nodiscard]] double vapour_mass(double p) const noexcept { return molar_mass_ratio<double> * per_pascal() * p; }
  [[nodiscard]] double evaporation(double p) const noexcept {
    across<double> s = surface;
    s.in_air = p;
    const double difference = s.at_water - p;
    if (end == band_end::central) return wet_area * shah_conductance(s) / 3600.0 * difference;
    const auto k = evaporation_conductances(s);
    return wet_area * (end == band_end::low ? k.low : k.high) * difference;
  }
  /// Carried out by ventilation, net of what comes in.
  [[nodiscard]] double ventilation(double p) const noexcept {
    return changes * per_pascal() * (molar_mass_ratio<double> * p - (total() - p) * outdoor);
  }
  /// The wettest room has the weakest machine of its label.
  [[nodiscard]] double removal(double p) const noexcept {
    const band_end machine = end == band_end::low ? band_end::high : end == band_end::high ? band_end::low : end;
    return capacity * capacity_share(surface.air - 273.15, p / saturation, machine);
  }
  /// Gain of the air without the machine.
  [[nodiscard]] double gain(double p) const noexcept { return source + evaporation(p) - ventilation(p); }
};

/// Where the air settles.
struct settled_air {
  double vapour;
  double machine = 0.0;     ///< kg/s removed
  double condensing = 0.0;  ///< kg/s that the air cannot hold
};

[[nodiscard]] inline settled_air settle(std::string_view function, const moisture_model& m) {
  const double top = m.saturation;
  const auto root = [&](auto f, double low, double high) {
    return numerics::bracketed_root<double>(function, "vapour pressure", f, low, high, {.absolute = 1e-9});
  };
  const auto idle = [&](double p) { return m.gain(p); };
  const auto running = [&](double p) { return m.gain(p) - m.removal(p); };
  const double wanted = idle(m.set_point);
  if (wanted <= 0.0) return {root(idle, 0.0, m.set_point)};  // bone-dry air loses nothing
  if (running(m.set_point) <= 0.0) return {m.set_point, wanted};
  const double excess = running(top);
  if (excess >= 0.0) return {top, m.removal(top), excess};
  const double p = root(running, m.set_point, top);
  return {p, m.removal(p)};
}

}  // namespace tankwright::room::detail
