// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much stress may a panel carry, and for how long? Stiffness and allowable stress of glass and acrylic as data,
/// each with how well it is known, and the factors for the duration of the load.
///
/// These are defaults to look at and to replace: copy a material, change a field.
#pragma once

#include <cmath>
#include <optional>
#include <span>
#include <string>
#include <string_view>

#include <tankwright/core/citation.hpp>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/detail/check.hpp>

namespace tankwright::vessel {

inline constexpr citation astm_e1300{"ASTM", 2012, "E1300-12a, Load resistance of glass in buildings",
                                     "Table X4.1, eqs. X5.1 and X6.1; section 1.2 excludes aquariums"};

/// How long the load lasts for which an allowable stress is meant.
enum class load_basis : bool {
  short_term,  ///< 3 seconds: a gust of wind
  permanent,   ///< years: a tank
};

/// A stress that a material may carry, and what that rests on.
struct allowable_stress {
  std::string_view name;
  stress value;
  load_basis basis;
  standing read_as;
  std::string_view source;
};

/// How far a panel may bulge, as a part of its span.
struct deflection_limit {
  double span_over_deflection;  ///< [1]
  standing read_as;
  std::string_view source;
  std::optional<length> at_most{};  ///< however long the span
};

/// Edges that hold glass may give by 1/175 of their length, and by no more than 3/4 in (International Building Code
/// 2403.3); used for the pane itself, which has to be as flat as its edges.
inline constexpr deflection_limit glass_deflection_limit{
    175.0, standing::secondary, "IBC 2403.3, edges that hold glass, used by analogy", millimetres(19.1)};
/// Acrylic creeps: what counts is the bulge after years, which pulls at the joints and is seen. No source.
inline constexpr deflection_limit acrylic_deflection_limit{100.0, standing::common_practice,
                                                           "after years; what joints and eyes put up with"};

/// What plates and sheets are made of.
struct panel_material {
  std::string_view name;
  stress modulus;                      ///< Young's modulus, load of minutes
  estimate<stress> long_term_modulus;  ///< apparent modulus after about ten years of load
  double poisson;                      ///< [1] Poisson's ratio, 0 to 0.5
  mass_density density;
  allowable_stress allowable;  ///< for a tank: a permanent load
  standing read_as;            ///< of the numbers above it
  std::string_view source;
  deflection_limit bulge = glass_deflection_limit;  ///< for the bulge after years
};

/// Allowable stresses for annealed glass under a permanent load. The library's default is the first.
inline constexpr allowable_stress annealed_glass_allowables[]{
    {"default of the library", megapascals(5.0), load_basis::permanent, standing::common_practice,
     "rounded from the next two"},
    {"practice: strength over 3.8", megapascals(19.2 / 3.8), load_basis::permanent, standing::from_memory,
     "19.2 MPa over a factor of 3.8"},
    {"ASTM E1300 surface stress, permanent", megapascals(23.3 * 0.31), load_basis::permanent, standing::from_memory,
     "23.3 MPa for 3 s times 0.31; the upper end of what codes give"},
    {"EN 16612, permanent", megapascals(45.0 * 0.29 / 1.8), load_basis::permanent, standing::from_memory,
     "45 MPa times k_mod 0.29 over 1.8"},
};

/// Stresses at the edge of annealed glass for 3 s. The free top edge of an open tank is the place that governs.
inline constexpr allowable_stress annealed_glass_edges[]{
    {"clean-cut edge", megapascals(16.6), load_basis::short_term, standing::from_memory, "ASTM E1300"},
    {"seamed edge", megapascals(18.3), load_basis::short_term, standing::from_memory, "ASTM E1300"},
    {"polished edge", megapascals(20.0), load_basis::short_term, standing::from_memory, "ASTM E1300"},
};

/// Long-term stress of cast acrylic; the default is the low end of the range. A bonded joint carries about half.
inline constexpr estimate<stress> cast_acrylic_long_term_stress{megapascals(5.0), megapascals(5.5), megapascals(6.0),
                                                                "practice, parent sheet, from memory"};

/// Toughened glass is left out on purpose: it cannot be drilled or cut, and shatters whole.
inline constexpr panel_material annealed_glass{
    "annealed glass",
    gigapascals(71.7),
    {gigapascals(71.7), gigapascals(71.7), gigapascals(71.7), "glass does not creep"},
    0.22,
    kilograms_per_cubic_metre(2500.0),
    annealed_glass_allowables[0],
    standing::from_memory,
    "ASTM E1300 and EN 572"};

inline constexpr panel_material cast_acrylic{
    "cast acrylic",
    gigapascals(3.0),
    {gigapascals(1.2), gigapascals(1.35), gigapascals(1.5), "apparent creep modulus after about ten years"},
    0.38,
    kilograms_per_cubic_metre(1190.0),
    {"long-term design stress, parent sheet", cast_acrylic_long_term_stress.low, load_basis::permanent,
     standing::from_memory, "practice, 5 to 6 MPa"},
    standing::from_memory,
    "practice at 23 degC; stiffness falls by 1.5 to 2 % per kelvin",
    acrylic_deflection_limit};

namespace detail {

/// Table X4.1 runs from 3 s to the row "beyond 1 year", 0.31, which the formula reaches after 13 years.
inline constexpr limits load_duration_limits{
    "duration of load", "s", possible_duration, {3.0, 13.0 * 365.0 * 86400.0}, "ASTM E1300-12a"};
inline constexpr limits spell_limits{"duration of load", "s", possible_duration};
inline constexpr limits breakage_limits{"breakage probability", "", {1e-9, 1.0, edge::closed, edge::open}};
inline constexpr limits stressed_area_limits{"stressed area", "m2", possible_area};
inline constexpr limits allowable_limits{"allowable stress", "Pa", possible_strength};
inline constexpr limits poisson_limits{"Poisson ratio", "", {0.0, 0.5}};

/// All numbers of a material, whether or not the question needs each.
inline void check_material(std::string_view here, const std::string& label, const panel_material& m) {
  core::check_element(here, label, {"density", "kg/m3", possible_density}, m.density.value());
  core::check_element(here, label, poisson_limits, m.poisson);
  core::check_element(here, label, {"Young's modulus", "Pa", possible_modulus}, m.modulus.value());
  check_estimate(here, label, {"long-term modulus", "Pa", possible_modulus}, m.long_term_modulus);
  core::check_element(here, label, allowable_limits, m.allowable.value.value());
  core::check_element(here, label, {"span over deflection", "", {1.0, 1e6}}, m.bulge.span_over_deflection);
  if (m.bulge.at_most) {
    core::check_element(here, label, {"largest deflection", "m", {1e-6, 1e3}}, m.bulge.at_most->value());
  }
}

inline constexpr double static_fatigue = 16.0;  // n of eq. X5.1

[[nodiscard]] inline double duration_factor(double seconds) noexcept {
  return std::pow(3.0 / seconds, 1.0 / static_fatigue);
}

}  // namespace detail

/// The factor for a load that stays: the last row of the table of `glass_load_duration_factor`, "beyond 1 year".
inline constexpr double glass_permanent_load_factor = 0.31;

/// How much of its 3-second strength annealed glass keeps under a load that lasts.
///
///   f = (3 s / d)^(1/16)
///
/// @param lasting duration d of the load [s], 3 s to 13 years (where the factor reaches that of a permanent load)
/// @param policy  `extrapolate` to go past these
/// @return        [1] factor, 1 and less
/// @throws        invalid_input, out_of_range
/// @accuracy      0.005 against the printed table
/// @source        ASTM E1300-12a, Table X4.1
[[nodiscard]] inline double glass_load_duration_factor(duration lasting,
                                                       range_policy policy = range_policy::published) {
  core::check("tankwright::vessel::glass_load_duration_factor", detail::load_duration_limits, lasting.value(), policy);
  return detail::duration_factor(lasting.value());
}

/// A pressure that acted for a while.
struct load_spell {
  required<pressure> load;
  required<duration> lasting;
};

/// The 3-second load that harms annealed glass as much as several loads one after another.
///
///   q3 = sum of q_i (d_i / 3 s)^(1/16)
///
/// @param spells loads [Pa] >= 0 and their durations [s] > 0; up to 100 000
/// @return       equivalent load [Pa]
/// @throws       invalid_input
/// @accuracy     exact for the formula
/// @source       ASTM E1300-12a, eq. X5.1
[[nodiscard]] inline pressure glass_equivalent_load(std::span<const load_spell> spells) {
  constexpr std::string_view here = "tankwright::vessel::glass_equivalent_load";
  core::check(here, {"number of spells", "", {0.0, 1e5}}, static_cast<double>(spells.size()));
  double sum = 0.0;
  for (const load_spell& s : spells) {
    core::check(here, {"load", "Pa", detail::possible_pressure}, s.load->value());
    core::check(here, detail::spell_limits, s.lasting->value());
    sum += s.load->value() / detail::duration_factor(s.lasting->value());
  }
  return pressure::from_value(sum);
}

/// A pane for which a surface stress is wanted.
struct breakage_question {
  required<proportion> breakage_probability;  ///< of a pane under that stress; 0.008 is usual in buildings
  required<area> stressed_area;               ///< of the whole pane, as if all of it were at the highest stress
  required<duration> lasting;
};

/// Allowable surface stress of annealed glass from a probability of breakage.
///
///   sigma = (P_b / (k (d/3)^(7/16) A))^(1/7),   k = 2.86e-53 m^12/N^7
///
/// @param question probability from 1e-9 to below 1; area [m^2] > 0; duration [s] > 0
/// @return         allowable stress [Pa]
/// @throws         invalid_input
/// @accuracy       the form is as printed, k is from memory; the strength of real glass scatters by tens of per cent
/// @source         ASTM E1300-12a, eq. X6.1
[[nodiscard]] inline stress glass_stress_for_breakage(const breakage_question& question) {
  constexpr std::string_view here = "tankwright::vessel::glass_stress_for_breakage";
  const double p = question.breakage_probability->value(), a = question.stressed_area->value();
  const double d = question.lasting->value();
  core::check(here, detail::breakage_limits, p);
  core::check(here, detail::stressed_area_limits, a);
  core::check(here, detail::spell_limits, d);
  constexpr double k = 2.86e-53;  // flaw parameter, from memory; 1.365e-29 in^12/lbf^7
  return stress::from_value(std::pow(p / (k * a), 1.0 / 7.0) * detail::duration_factor(d));
}

/// A 3-second allowable stress of glass turned into that for a tank. The factor must be applied once, so a stress that
/// already is for a permanent load is refused.
///
///   sigma_permanent = 0.31 sigma_3s
///
/// @param short_term an allowable stress with basis `short_term`
/// @return           the same with basis `permanent`
/// @throws           invalid_input
/// @accuracy         of the factor, 0.005
/// @source           ASTM E1300-12a, Table X4.1, "beyond 1 year"
[[nodiscard]] inline allowable_stress for_permanent_load(const allowable_stress& short_term) {
  constexpr std::string_view here = "tankwright::vessel::for_permanent_load";
  core::check_element(here, short_term.name, detail::allowable_limits, short_term.value.value());
  if (short_term.basis == load_basis::permanent) {
    detail::refuse_of(here, short_term.name, "allowable stress", short_term.value.value(), "Pa",
                      "is for a permanent load already; the factor for duration is applied once");
  }
  allowable_stress lasting = short_term;
  lasting.value = short_term.value * glass_permanent_load_factor;
  lasting.basis = load_basis::permanent;
  return lasting;
}

}  // namespace tankwright::vessel
