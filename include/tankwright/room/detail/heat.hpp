// SPDX-License-Identifier: BSL-1.0
/// @file
/// The heat balance of a tank on raw numbers: what it loses at a water temperature, under air that may itself change.
#pragma once

#include <algorithm>
#include <cmath>
#include <optional>

#include <tankwright/numerics/root.hpp>
#include <tankwright/room/evaporation.hpp>
#include <tankwright/water/heat.hpp>

namespace tankwright::room::detail {

/// Stefan-Boltzmann constant [W/(m^2 K^4)], exact since the SI of 2019 to the digits given.
template <class T>
inline constexpr T stefan_boltzmann = T(5.670374419e-8L);
/// Emissivity of a water surface.
template <class T>
inline constexpr T water_emissivity = T(0.95L);
/// Psychrometric constant over air pressure [1/K] (FAO-56, eq. 8).
template <class T>
inline constexpr T psychrometric_constant = T(0.000665L);

/// The three ends of the evaporation band, and the parts that do not depend on it [W].
struct heat_parts {
  conductances<double> evaporation;
  conductances<double> convection;
  conductances<double> make_up;
  double radiation;
  double covers;
  double walls;
};

struct heat_model {
  double activity{};              ///< water activity
  double air{};                   ///< K
  double vapour{};                ///< Pa
  double total{};                 ///< Pa
  std::optional<double> radiant;  ///< surroundings of the open water [K]; as the air when not given
  std::optional<double> make_up;  ///< K; as the air when not given
  wet_areas areas;
  double open_area = 0.0;          ///< m^2, radiating
  double cover_conductance = 0.0;  ///< W/K
  double walls_to_air = 0.0;       ///< W/K
  double walls_elsewhere = 0.0;    ///< W/K
  double walls_inflow = 0.0;       ///< W at 0 K: sum of U A T of those walls
  double gains = 0.0;              ///< W
  double specific_heat{};          ///< of the make-up [J/(kg K)]

  [[nodiscard]] heat_parts parts(double kelvin) const noexcept { return parts(kelvin, air, vapour); }
  /// Under other air than the model's, for a room that drifts: its temperature [K] and vapour pressure [Pa].
  [[nodiscard]] heat_parts parts(double kelvin, double air_now, double vapour_now) const noexcept {
    const drives d = drives_at(kelvin, air_now, vapour_now);
    const conductances<double> k = evaporation_conductances(d.surface);
    const auto part = [&](double by) {
      return conductances<double>{k.low * areas.low * by, k.central * areas.central * by, k.high * areas.high * by};
    };
    return {.evaporation = part(d.evaporation),
            .convection = part(d.convection),
            .make_up = part(d.make_up),
            .radiation = d.radiation,
            .covers = d.covers,
            .walls = d.walls};
  }

  /// What has to be put in to hold the temperature, at the three ends of the band [W], and at one.
  [[nodiscard]] conductances<double> net(double kelvin) const noexcept { return net_of(parts(kelvin)); }
  [[nodiscard]] double net(double kelvin, double conductances<double>::*end) const noexcept {
    return net(kelvin, air, vapour, end);
  }
  [[nodiscard]] double net(double kelvin, double air_now, double vapour_now,
                           double conductances<double>::*end) const noexcept {
    const drives d = drives_at(kelvin, air_now, vapour_now);
    const double by = evaporation_conductance(d.surface, end) * area_of(areas, end);
    return by * d.evaporation + by * d.convection + by * d.make_up + (d.radiation + d.covers + d.walls - gains);
  }
  [[nodiscard]] conductances<double> net_of(const heat_parts& p) const noexcept {
    const double sharp = p.radiation + p.covers + p.walls - gains;
    return {p.evaporation.low + p.convection.low + p.make_up.low + sharp,
            p.evaporation.central + p.convection.central + p.make_up.central + sharp,
            p.evaporation.high + p.convection.high + p.make_up.high + sharp};
  }

 private:
  /// Flows of heat by what evaporates per Pa [W/(kg/(s Pa))], and those that it does not change [W].
  struct drives {
    across<double> surface;
    double evaporation;
    double convection;
    double make_up;
    double radiation;
    double covers;
    double walls;
  };

  [[nodiscard]] drives drives_at(double kelvin, double air_now, double vapour_now) const noexcept {
    const across<double> s{kelvin, air_now, vapour_pressure_at(kelvin, activity), vapour_now, total};
    const double difference = s.at_water - vapour_now;
    const double latent = water::kernel::latent_heat_of_water(kelvin - 273.15);
    const double warmer = kelvin - air_now;
    const double refill = specific_heat * (kelvin - make_up.value_or(air_now));
    const double t2 = kelvin * kelvin;
    const double r = radiant.value_or(air_now);
    return {.surface = s,
            .evaporation = latent * difference,
            // Evaporation per Pa times the latent heat times gamma is the conductance for heat: Bowen's ratio without
            // the division by a difference that may vanish.
            .convection = latent * psychrometric_constant<double> * total * warmer,
            .make_up = refill * std::max(difference, 0.0),  // what condenses is not made up
            .radiation = water_emissivity<double> * stefan_boltzmann<double> * open_area * (t2 * t2 - r * r * r * r),
            .covers = cover_conductance * warmer,
            .walls = walls_to_air * warmer + walls_elsewhere * kelvin - walls_inflow};
  }
};

inline constexpr double coldest_settled = 271.15;  ///< [K]

/// Where the water settles without further heat, below a temperature [K] at which it loses some. Its loss rises with
/// its temperature, so there is one such point.
[[nodiscard]] inline double settled_temperature(std::string_view function, const heat_model& m,
                                                double conductances<double>::*end, double hottest) {
  const auto net_at = [&](double kelvin) { return m.net(kelvin, end); };
  return numerics::bracketed_root<double>(function, "temperature", net_at, coldest_settled, hottest,
                                          {.absolute = 1e-9});
}

}  // namespace tankwright::room::detail
