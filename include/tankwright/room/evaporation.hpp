// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much water leaves the open surfaces? The estimate of the library, low, central and high, over display, sump
/// chambers and weirs, with covers, moving water and moving air.
#pragma once

#include <algorithm>
#include <limits>
#include <string>
#include <vector>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/labelled.hpp>
#include <tankwright/room/evaporation_laws.hpp>

namespace tankwright::room {

inline constexpr citation npirc_2016{
    "Muleta M.", 2016, "Effectiveness of pool covers to reduce evaporation from swimming pools",
    "National Pool Industry Research Center, Cal Poly; outdoor pools, as reported in the trade press",
    standing::secondary};

/// What covers water, and the part of the evaporation that it holds back where it lies: the most that was measured.
struct cover_material {
  std::string_view name;
  proportion effectiveness;
};
inline constexpr cover_material rigid_lid{"lid", fraction(0.9)};  ///< VDI 2089: 0.7 m/h in place of 7 m/h
inline constexpr cover_material foam_cover{"foam", fraction(0.959)};
inline constexpr cover_material bubble_cover{"bubble sheet", fraction(0.949)};
inline constexpr cover_material track_cover{"solid track cover", fraction(0.939)};
inline constexpr cover_material floating_discs{"floating discs", fraction(0.501)};
inline constexpr cover_material liquid_monolayer{"liquid monolayer", fraction(0.144)};

/// How many times a still surface evaporates. Splashing is not all: weirs, trickling media and foam also add area.
class agitation : public core::scalar<agitation> {
  using scalar::scalar;
};
inline constexpr agitation still_surface{1.0};
inline constexpr agitation gently_moving{1.3};  ///< ASHRAE 0.65 / 0.5
inline constexpr agitation lively{1.55};        ///< Smith et al. 1998: 40 to 70 % over quiet
inline constexpr agitation splashing{2.0};      ///< ASHRAE 1.0 / 0.5

/// One piece of open water.
struct wet_surface {
  std::string label = "surface";
  required<tankwright::area> area;  ///< all the wet area, also of the film on a weir
  room::agitation agitation = still_surface;
  velocity air_speed = metres_per_second(0.1);  ///< over the water; up to 0.1 m/s is a quiet room
  proportion covered = fraction(0.0);           ///< the part of the area under the cover; gaps are not covered
  cover_material cover = rigid_lid;
};

/// Water, air, and where they meet.
struct evaporating_water {
  tank_water water;
  room::air air;
  std::vector<wet_surface> surfaces;
};

struct surface_evaporation {
  std::string label;
  estimate<mass_flow> rate;
  estimate<mass_flux> per_area;
};

struct evaporation_estimate {
  estimate<mass_flow> rate;  ///< of all surfaces; the bands add up, because they have one cause
  std::vector<surface_evaporation> surfaces;
  bool condenses;  ///< the air is so moist that vapour condenses on the water: the rates are negative
};

inline constexpr limits area_limits{"area", "m2", possible_area};
inline constexpr limits agitation_limits{
    "agitation", "", {1.0, 100.0}, {1.0, 3.0}, "activity factors of pools, 1.5 over 0.5 (ASHRAE); Smith et al. 1998"};
inline constexpr limits room_air_speed_limits{
    "air speed", "m/s", {0.0, 100.0}, {0.0, 1.0}, "air in rooms; wind is another matter"};
inline constexpr limits covered_limits{"covered part", "", zero_to_one};
inline constexpr limits cover_effectiveness_limits{"effectiveness of the cover", "", zero_to_one};

inline constexpr std::string_view still_band =
    "published correlations for quiet indoor water lie within a third of Shah's, whose own mean deviation is 18 %; the "
    "low end is at most VDI 2089, the high end at least Smith et al. 1994 in moving air, and covers may leak twice as "
    "much";
inline constexpr std::string_view agitated_band =
    "moving water: half up or down, because the factor for agitation is a habit of pool design; otherwise as for still "
    "water";
inline constexpr std::string_view condensing_band =
    "vapour condenses on the water: the correlations were measured on evaporation and are used backwards here";

namespace detail {

/// The share of each surface in low, central and high evaporation [m^2 of still, open water].
struct wet_areas {
  double low = 0.0;
  double central = 0.0;
  double high = 0.0;
  bool agitated = false;
};

/// Smith et al. 1994: how air faster than that of a quiet room, 0.1 m/s, speeds up the evaporation.
template <class T>
[[nodiscard]] constexpr T wind_factor(T speed) noexcept {
  constexpr T quiet = T(0.1L);
  return (T(30.6L) + T(32.1L) * (speed > quiet ? speed : quiet)) / (T(30.6L) + T(32.1L) * quiet);
}

[[nodiscard]] inline wet_areas checked_areas(std::string_view function, const wet_surface& s, range_policy policy) {
  core::check_element(function, s.label, area_limits, s.area.get().value());
  core::check_element(function, s.label, agitation_limits, s.agitation.value(), policy);
  core::check_element(function, s.label, room_air_speed_limits, s.air_speed.value(), policy);
  core::check_element(function, s.label, covered_limits, s.covered.value());
  core::check_element(function, s.label, cover_effectiveness_limits, s.cover.effectiveness.value());
  const double bare = s.area.get().value() * s.agitation.value() * wind_factor(s.air_speed.value());
  const double held = s.covered.value() * s.cover.effectiveness.value();
  const double leak = s.covered.value() * (1.0 - s.cover.effectiveness.value());
  const double open = 1.0 - held;
  // From still to moving water the band opens from 35 to 50 %.
  const double widening = 0.15 * std::min(1.0, (s.agitation.value() - 1.0) / (gently_moving.value() - 1.0));
  return {.low = bare * open * (1.0 - widening / 0.65),
          .central = bare * open,
          .high = bare * std::min(1.0, open + leak) * (1.0 + widening / 1.35),
          .agitated = widening > 0.0};
}

[[nodiscard]] inline wet_areas checked_areas(std::string_view function, const std::vector<wet_surface>& surfaces,
                                             range_policy policy) {
  wet_areas sum;
  for (const wet_surface& s : surfaces) {
    const wet_areas one = checked_areas(function, s, policy);
    sum.low += one.low;
    sum.central += one.central;
    sum.high += one.high;
    sum.agitated = sum.agitated || one.agitated;
  }
  return sum;
}

/// Evaporation per area and vapour pressure difference [kg/(m^2 s Pa)] of still, open water.
template <class T>
struct conductances {
  T low;
  T central;
  T high;
};
template <class T>
[[nodiscard]] inline conductances<T> evaporation_conductances(const across<T>& s) noexcept {
  const T shah = shah_conductance(s);
  const T vdi = vdi_conductance(s, T(7));
  const T smith = smith_conductance(s, T(0.1L));
  constexpr T per_second = T(1) / T(3600);
  return {per_second * std::min(vdi, T(0.65L) * shah), per_second * shah,
          per_second * std::max(smith, T(1.35L) * shah)};
}
/// One end of them alone, and of the areas.
template <class T>
[[nodiscard]] inline T evaporation_conductance(const across<T>& s, T conductances<T>::*end) noexcept {
  const T shah = shah_conductance(s);
  constexpr T per_second = T(1) / T(3600);
  if (end == &conductances<T>::low) return per_second * std::min(vdi_conductance(s, T(7)), T(0.65L) * shah);
  if (end == &conductances<T>::central) return per_second * shah;
  return per_second * std::max(smith_conductance(s, T(0.1L)), T(1.35L) * shah);
}
[[nodiscard]] inline double area_of(const wet_areas& areas, double conductances<double>::*end) noexcept {
  return end == &conductances<double>::low       ? areas.low
         : end == &conductances<double>::central ? areas.central
                                                 : areas.high;
}

/// The band of what the two ends of the evaporation lead to. Which of them is the lower one depends on the case, and
/// where a law of evaporation gives way to another the middle may lie beyond both.
template <class Q>
[[nodiscard]] constexpr estimate<Q> band_of(double a, double central, double b, std::string_view reason) {
  return {Q::from_value(std::min({a, central, b})), Q::from_value(central), Q::from_value(std::max({a, central, b})),
          reason};
}

/// Low to high of a rate that is negative when it condenses.
template <class Q>
[[nodiscard]] inline estimate<Q> signed_estimate(double low, double central, double high, double difference,
                                                 bool agitated) {
  const std::string_view why = difference < 0.0 ? condensing_band : agitated ? agitated_band : still_band;
  return band_of<Q>(low * difference, central * difference, high * difference, why);
}

}  // namespace detail

/// Evaporation from the open surfaces of a system, with its band.
///
///   central  Shah's correlation times area, agitation, air speed and what the covers let through
///   low      0.65 of it, or VDI 2089 for unoccupied pools where that is less
///   high     1.35 of it, or Smith et al. 1994 at 0.1 m/s where that is more; covers leak twice as much
///   covers   1 - covered part * effectiveness;   air speed above 0.1 m/s: (30.6 + 32.1 V) / (30.6 + 3.21)
///   moving water opens the band to 0.5 and 1.5
///
/// @param w      water: surface temperature 7 to 94 degC, practical salinity 0 to 42; air at the tank: 6 to 35 degC,
///               relative humidity 0.28 to 0.95; surfaces: area [m^2] >= 0, agitation 1 to 3, air speed 0 to 1 m/s,
///               covered part 0 to 1
/// @param policy `extrapolate` to go past these ranges
/// @return       mass per time [kg/s], in all and for each surface; negative, and so marked, where vapour condenses
/// @throws       invalid_input, out_of_range (names the surface, the argument, its value and the limits)
/// @accuracy     the band; the correlations spread threefold over the same still water
/// @source       Shah 2014; VDI 2089-1; Smith, Lof and Jones 1994; for the covers Muleta 2016
[[nodiscard]] inline evaporation_estimate evaporation(const evaporating_water& w,
                                                      range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::evaporation";
  const detail::across<double> s = detail::checked(here, open_water{w.water, w.air}, policy);
  detail::check_law(here, about(evaporation_law::shah), s, w.air.humidity.get().value(), policy);
  const auto k = detail::evaporation_conductances(s);
  const double difference = s.at_water - s.in_air;

  evaporation_estimate result{.rate = {}, .surfaces = {}, .condenses = difference < 0.0};
  result.surfaces.reserve(w.surfaces.size());
  detail::wet_areas sum;
  for (const wet_surface& surface : w.surfaces) {
    const detail::wet_areas a = detail::checked_areas(here, surface, policy);
    const double area = std::max(surface.area.get().value(), std::numeric_limits<double>::min());  // 0: nothing over it
    result.surfaces.push_back(
        {.label = surface.label,
         .rate = detail::signed_estimate<mass_flow>(k.low * a.low, k.central * a.central, k.high * a.high, difference,
                                                    a.agitated),
         .per_area = detail::signed_estimate<mass_flux>(k.low * a.low / area, k.central * a.central / area,
                                                        k.high * a.high / area, difference, a.agitated)});
    sum = {sum.low + a.low, sum.central + a.central, sum.high + a.high, sum.agitated || a.agitated};
  }
  result.rate = detail::signed_estimate<mass_flow>(k.low * sum.low, k.central * sum.central, k.high * sum.high,
                                                   difference, sum.agitated);
  return result;
}

}  // namespace tankwright::room
