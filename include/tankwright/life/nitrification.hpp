// SPDX-License-Identifier: BSL-1.0
/// @file
/// What can rock, sand and media take away, today and when mature, and at what ammonia level does a load settle? Areal
/// rates of nitrification, sea and fresh water, with temperature and ammonia.
///
/// An area is the wet surface that carries a film: protected surface of media times its volume
/// (`litres(30) * square_metres_per_cubic_metre(500)`), grains of the upper sand, the outside of rock.
#pragma once

#include <cmath>
#include <optional>
#include <span>
#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/nitrogen.hpp>
#include <tankwright/life/ranges.hpp>

namespace tankwright::life {

inline constexpr citation nijhof_bovendeur_1990{
    "Nijhof M., Bovendeur J.", 1990,
    "Fixed film nitrification characteristics in sea-water recirculation fish culture systems",
    "Aquaculture 87:133-143, abstract"};
inline constexpr citation zhu_chen_2002{"Zhu S., Chen S.", 2002,
                                        "The impact of temperature on nitrification rate in fixed film biofilters",
                                        "Aquacultural Engineering 26:221-237, abstract"};
inline constexpr citation malone_pfeiffer_2006{
    "Malone R.F., Pfeiffer T.J.", 2006,
    "Rating fixed film nitrifying biofilters used in recirculating aquaculture systems",
    "Aquacultural Engineering 34:389-402, abstract"};

/// How the rate follows the ammonia below the plateau.
enum class film_order {
  linear,       ///< in proportion (Malone and Pfeiffer 2006): the safe side at low levels
  square_root,  ///< half order (Nijhof and Bovendeur 1990)
};

/// A mature film of nitrifying bacteria.
struct film {
  required<mass_flux> plateau;                   ///< largest rate, nitrogen per area and time
  required<tankwright::temperature> plateau_at;  ///< temperature of that rate
  /// Ammonia from which the rate no longer rises (Malone and Pfeiffer 2006).
  water::total_ammonia plateau_from = water::total_ammonia::from_nitrogen(milligrams_per_litre(1.0));
  film_order order = film_order::linear;
  double per_kelvin_on_plateau = 1.01108;  ///< [1] limited by oxygen: +1.108 % a kelvin (Zhu and Chen 2002)
  double per_kelvin_below = 1.04275;       ///< [1] limited by ammonia: +4.275 % a kelvin (Zhu and Chen 2002)
};

/// The largest rates that Nijhof and Bovendeur (1990) measured at 24 degC.
inline constexpr film seawater_film{.plateau = grams_per_square_metre_day(0.28), .plateau_at = celsius(24.0)};
inline constexpr film freshwater_film{.plateau = grams_per_square_metre_day(0.69), .plateau_at = celsius(24.0)};

/// How far films of different filters lie from the central rate: design rates of 0.2 to 1.0 g/(m2 d) in warm fresh
/// water (from memory) against the 0.69 measured.
inline constexpr double film_lowest = 0.2 / 0.69;
inline constexpr double film_highest = 1.0 / 0.69;

inline constexpr caution film_caution{
    "Catalogue rates are for a mature film at 1 mg/L of ammonia nitrogen and more. A display must run below 0.1 mg/L, "
    "where the rate is about in proportion: at 0.1 mg/L it needs ten times the catalogue's area, below that more. "
    "Never judge a filter by "
    "calculation alone; measure ammonia and nitrite."};

inline constexpr limits film_temperature_limits{"temperature", "degC", possible_water, celsius_range(10.0, 30.0),
                                                "this library, around the 20 and 24 degC of the measurements"};
inline constexpr limits film_area_limits{"area", "m2", {0.0, 1e9}};
inline constexpr limits film_seeded_limits{"share seeded", "", zero_to_one};

/// The water that a film works in.
struct film_water {
  required<water::total_ammonia> ammonia;
  required<tankwright::temperature> temperature;
  tankwright::life::film film = seawater_film;
};

/// A surface that carries a film.
struct filter_surface {
  std::string_view label = "surface";
  required<area> wet;                 ///< protected, not nominal
  proportion seeded = fraction(1.0);  ///< share of the mature film that is there today; 0 for new dry media
};

namespace detail {

inline void check_film(std::string_view here, const film& f) {
  core::check(here, {"largest rate of the film", "g/(m2 d)", {1e-6, 1e6}}, in_grams_per_square_metre_day(f.plateau));
  core::check(here, {"temperature of the film's rate", "degC", possible_water}, in_celsius(f.plateau_at));
  core::check(here, {"start of the film's plateau", "mg/L", some_level},
              in_milligrams_per_litre(f.plateau_from.as_nitrogen()));
  core::check(here, {"film's rate per kelvin", "", {0.5, 2.0}}, f.per_kelvin_on_plateau);
  core::check(here, {"film's rate per kelvin", "", {0.5, 2.0}}, f.per_kelvin_below);
}

/// Rate [kg/(m^2 s)] on the plateau at a temperature.
inline double film_plateau(const film& f, temperature t) noexcept {
  return f.plateau->value() * std::pow(f.per_kelvin_on_plateau, t.value() - f.plateau_at->value());
}

/// Rate [kg/(m^2 s)] that the slope below the plateau would have where the plateau starts at the reference temperature.
inline double film_slope(const film& f, temperature t) noexcept {
  return f.plateau->value() * std::pow(f.per_kelvin_below, t.value() - f.plateau_at->value());
}

inline void check_film_water(std::string_view here, const film_water& in, range_policy policy) {
  core::check(here, {"ammonia", "mg/L", possible_level}, in_milligrams_per_litre(in.ammonia->as_nitrogen()));
  core::check(here, film_temperature_limits, in_celsius(in.temperature), policy);
  check_film(here, in.film);
}

inline double film_rate(const film_water& in) noexcept {
  const double s = in.ammonia->as_nitrogen() / in.film.plateau_from.as_nitrogen();
  const double rising = film_slope(in.film, in.temperature) * (in.film.order == film_order::linear ? s : std::sqrt(s));
  return std::fmin(rising, film_plateau(in.film, in.temperature));
}

/// Areas, whole and as far as they are seeded, m^2.
struct film_areas {
  double mature = 0.0;
  double today = 0.0;
};
inline film_areas sum_of_areas(std::string_view here, std::span<const filter_surface> surfaces) {
  film_areas sum;
  for (const filter_surface& s : surfaces) {
    core::check_element(here, s.label, film_area_limits, in_square_metres(s.wet));
    core::check_element(here, s.label, film_seeded_limits, s.seeded.value());
    sum.mature += s.wet->value();
    sum.today += s.wet->value() * s.seeded.value();
  }
  return sum;
}

inline constexpr std::string_view film_reason = "mature films of different filters vary from a third to one and a half";

/// The band of a rate around its central value.
template <class Q>
[[nodiscard]] constexpr estimate<Q> film_band(const Q& central) {
  return {central * film_lowest, central, central * film_highest, film_reason};
}

}  // namespace detail

/// Nitrogen that a square metre of mature film oxidises.
///
///   r = min( r0 th_S^(T - T_ref) g(S/S_0),  r0 th_O^(T - T_ref) ),   g(x) = x or sqrt(x)
///
/// @param in     ammonia >= 0, temperature 10 to 30 degC, film (seawater by default)
/// @param policy `extrapolate` to go past these temperatures
/// @return       nitrogen per area and time [kg/(m^2 s)] with its band
/// @throws       invalid_input, out_of_range
/// @accuracy     a third to one and a half times the central value between filters
/// @source       Nijhof and Bovendeur 1990; Zhu and Chen 2002; Malone and Pfeiffer 2006; band from memory
[[nodiscard]] inline estimate<mass_flux> nitrification_rate(const film_water& in,
                                                            range_policy policy = range_policy::published) {
  detail::check_film_water("tankwright::life::nitrification_rate", in, policy);
  return detail::film_band(mass_flux::from_value(detail::film_rate(in)));
}

/// What a filter takes away.
struct filter_capacity {
  estimate<nitrogen_load> today;
  estimate<nitrogen_load> mature;
  tankwright::caution caution;
};

/// Nitrogen that all surfaces together oxidise: as far as they are seeded today, and when mature.
///
///   sum(A) r,   today sum(A seeded) r
///
/// @param surfaces areas >= 0, share seeded 0 to 1, each
/// @param in       ammonia >= 0, temperature 10 to 30 degC, film (seawater by default)
/// @param policy   `extrapolate` to go past these temperatures
/// @return         nitrogen per time, today and mature, with bands and the caution
/// @throws         invalid_input, out_of_range (names the surface)
/// @accuracy       as nitrification_rate
/// @source         as nitrification_rate
[[nodiscard]] inline filter_capacity capacity_of(std::span<const filter_surface> surfaces, const film_water& in,
                                                 range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::life::capacity_of";
  detail::check_film_water(here, in, policy);
  const auto areas = detail::sum_of_areas(here, surfaces);
  const auto load = [&](double square_metres) {
    return map_rising(detail::film_band(mass_flow::from_value(square_metres * detail::film_rate(in))),
                      nitrogen_load::from_nitrogen);
  };
  return {load(areas.today), load(areas.mature), film_caution};
}

/// Area of mature film that a load needs.
///
///   A = P / r
///
/// @param load   nitrogen >= 0
/// @param in     ammonia level to hold > 0, temperature 10 to 30 degC, film (seawater by default)
/// @param policy `extrapolate` to go past these temperatures
/// @return       area [m^2] with its band; divide by the protected surface of a medium for its volume
/// @throws       invalid_input, out_of_range
/// @accuracy     as nitrification_rate
/// @source       as nitrification_rate
[[nodiscard]] inline estimate<area> film_area_for(nitrogen_load load, const film_water& in,
                                                  range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::life::film_area_for";
  core::check(here, nitrogen_load_limits, in_grams_per_day(load.as_nitrogen()));
  detail::check_film_water(here, in, policy);
  core::check(here, {"ammonia", "mg/L", some_level}, in_milligrams_per_litre(in.ammonia->as_nitrogen()));
  return map_falling(nitrification_rate(in, policy), [&](mass_flux rate) -> area { return load.as_nitrogen() / rate; });
}

/// A load on a filter as it is today.
struct filter_load {
  required<nitrogen_load> load;
  required<std::span<const filter_surface>> surfaces;  ///< of an array that outlives the call
  required<tankwright::temperature> temperature;
  tankwright::life::film film = seawater_film;
};

/// Where the ammonia settles. An empty level: the load is more than the filter can take at any level, ammonia rises for
/// as long as it lasts.
struct settled_ammonia {
  std::optional<water::total_ammonia> low;  ///< with the best films
  std::optional<water::total_ammonia> central;
  std::optional<water::total_ammonia> high;  ///< with the poorest films
  estimate<double> share_of_capacity;        ///< [1] load over what the plateau can take; above one it cannot hold
  tankwright::caution caution;
};

/// The ammonia level at which a filter, as it is today, keeps up with a load.
///
///   P = sum(A seeded) r(S), solved for S
///
/// @param on     load >= 0; surfaces of which at least one is seeded; temperature 10 to 30 degC; film
/// @param policy `extrapolate` to go past these temperatures
/// @return       level with the best, the central and the poorest film, empty where no level balances the load; the
///               share of the capacity; and the caution
/// @throws       invalid_input, out_of_range (names the surface)
/// @accuracy     as nitrification_rate
/// @source       as nitrification_rate
[[nodiscard]] inline settled_ammonia steady_ammonia(const filter_load& on,
                                                    range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::life::steady_ammonia";
  core::check(here, nitrogen_load_limits, in_grams_per_day(on.load->as_nitrogen()));
  core::check(here, film_temperature_limits, in_celsius(on.temperature), policy);
  detail::check_film(here, on.film);
  const double today = detail::sum_of_areas(here, on.surfaces).today;
  core::check(here, {"seeded area of all surfaces", "m2", {1e-9, 1e12}}, today);
  const double rate_needed = on.load->as_nitrogen().value() / today;
  const double plateau = detail::film_plateau(on.film, on.temperature);
  const double slope = detail::film_slope(on.film, on.temperature);
  const auto level = [&](double quality) -> std::optional<water::total_ammonia> {
    if (rate_needed > plateau * quality) return std::nullopt;
    const double x = rate_needed / (slope * quality);
    return water::total_ammonia::from_nitrogen(on.film.plateau_from.as_nitrogen() *
                                               (on.film.order == film_order::linear ? x : x * x));
  };
  const double share = rate_needed / plateau;
  return {level(film_highest),
          level(1.0),
          level(film_lowest),
          {share / film_highest, share, share / film_lowest, detail::film_reason},
          film_caution};
}

/// Surface of the grains in a volume of sand or gravel. Only the upper, breathing layer nitrifies.
///
///   a = 6 (1 - n) / d
///
/// @param grain diameter of the grains d > 0
/// @param pores porosity n, 0 to below 1
/// @return      surface per volume of the bed [1/m]
/// @throws      invalid_input
/// @accuracy    exact for equal spheres; real grains have more
/// @source      geometry
[[nodiscard]] inline specific_surface grain_surface(length grain, porosity pores) {
  constexpr std::string_view here = "tankwright::life::grain_surface";
  core::check(here, {"grain diameter", "mm", {1e-6, 1e4}}, in_millimetres(grain));
  core::check(here, {"porosity", "", zero_to_below_one}, pores.value());
  return specific_surface::from_value(6.0 * (1.0 - pores.value()) / grain.value());
}

/// Rock as it is bought, by the kilogram.
struct loose_rock {
  required<mass> dry;
  required<length> piece;          ///< mean diameter of its pieces
  required<mass_density> density;  ///< dry, of a piece with its pores
  double roughness = 2.0;          ///< [1] its wet outside over that of a ball as large
};

inline constexpr limits rock_mass_limits{"mass of rock", "kg", {0.0, 1e9}};
inline constexpr limits rock_piece_limits{"diameter of a piece", "m", {1e-3, 10.0}};
inline constexpr limits rock_density_limits{"density of rock", "kg/m3", {50.0, 5000.0}};
inline constexpr limits rock_roughness_limits{"roughness", "", {1.0, 100.0}};

/// Wet outside of rock, which carries its film; the pores inside breathe too little to be counted.
///
///   A = r 6 m / (rho d)
///
/// @param rock dry mass m, 0 to 1e9 kg; diameter of a piece d, 1 mm to 10 m; density rho, 50 to 5000 kg/m^3; roughness
///             r, 1 to 100
/// @return     area [m^2]
/// @throws     invalid_input
/// @accuracy   exact for equal balls at roughness 1; twice that is common practice for pitted rock, no source, within a
///             factor of two
/// @source     geometry
[[nodiscard]] inline area rock_surface(const loose_rock& rock) {
  constexpr std::string_view here = "tankwright::life::rock_surface";
  core::check(here, rock_mass_limits, rock.dry->value());
  core::check(here, rock_piece_limits, rock.piece->value());
  core::check(here, rock_density_limits, rock.density->value());
  core::check(here, rock_roughness_limits, rock.roughness);
  return area::from_value(rock.roughness * 6.0 * rock.dry->value() / (rock.density->value() * rock.piece->value()));
}

}  // namespace tankwright::life
