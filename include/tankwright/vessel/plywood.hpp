// SPDX-License-Identifier: BSL-1.0
/// @file
/// How far apart may the frames behind a plywood wall stand? Plywood is not the same in both directions, so plate
/// tables flatter it; it is reckoned as a strip that spans from frame to frame. Its strength and stiffness per metre
/// of width come from the maker or a panel standard, by the direction of the face grain: there is no default.
#pragma once

#include <string>
#include <string_view>

#include <tankwright/core/citation.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/vessel/cautions.hpp>
#include <tankwright/vessel/detail/check.hpp>

namespace tankwright::vessel {

/// Stiffness E I of a sheet per metre of width, N m^2/m.
using rigidity_per_width = moment;

inline constexpr citation nds_wood{"American Wood Council", 2018, "National Design Specification for Wood Construction",
                                   "load duration factor, creep factor of wood structural panels",
                                   standing::from_memory};

/// Permanent load: what remains of a strength that is published for ten years of load; and how much more a panel sags
/// in the end than at first (NDS, from memory).
inline constexpr double wood_permanent_load_factor = 0.90;
inline constexpr double wood_panel_creep_factor = 2.0;

/// How the sheet runs over the frames.
enum class strip_spans : bool {
  one,            ///< from one frame to the next, and ends there
  three_or_more,  ///< runs through
};

/// A strip of sheet one metre wide, from frame to frame.
struct sheet_strip {
  required<length> spacing;  ///< of the frames, centre to centre
  required<pressure> load;   ///< of the water at the worst height of the strip
  required<strip_spans> spans;
  required<moment_per_width> bending_capacity;          ///< published, for normal (ten-year) load duration, dry
  required<rigidity_per_width> rigidity;                ///< published
  double duration_factor = wood_permanent_load_factor;  ///< [1]
  double creep_factor = wood_panel_creep_factor;        ///< [1]
  std::string label = "sheet";
};

struct strip_result {
  moment_per_width moment;
  moment_per_width capacity;  ///< with the duration factor
  double utilisation;         ///< [1]
  length sag;
  length long_term_sag;
  double span_over_sag;  ///< [1] long-term
  tankwright::caution caution;
};

/// Bending and sag of a sheet between frames.
///
///   one span: M = q l^2/8, y = 5 q l^4/(384 EI);   three or more: M = q l^2/10, y = 0.00688 q l^4/(EI)
///
/// @param strip spacing [m] > 0; load [Pa] >= 0; capacity [N m/m] and rigidity [N m^2/m] > 0; duration factor above 0
///              to 1; creep factor from 1
/// @return      moment, capacity, utilisation, sag now and later
/// @throws      invalid_input (names the label)
/// @accuracy    exact for one and for three equal spans under even load; wet wood is weaker and softer than published
/// @source      Euler-Bernoulli beam theory; factors: NDS (from memory)
[[nodiscard]] inline strip_result strip_between_frames(const sheet_strip& strip) {
  constexpr std::string_view here = "tankwright::vessel::strip_between_frames";
  const double l = strip.spacing->value(), q = strip.load->value();
  core::check_element(here, strip.label, detail::positive_length("spacing"), l);
  core::check_element(here, strip.label, {"load", "Pa", detail::possible_pressure}, q);
  core::check_element(here, strip.label, {"bending capacity", "N m/m", {1e-9, 1e12}}, strip.bending_capacity->value());
  core::check_element(here, strip.label, {"rigidity", "N m2/m", {1e-9, 1e15}}, strip.rigidity->value());
  core::check_element(here, strip.label, {"duration factor", "", {0.01, 1.0}}, strip.duration_factor);
  core::check_element(here, strip.label, {"creep factor", "", {1.0, 100.0}}, strip.creep_factor);
  const bool one = strip.spans.get() == strip_spans::one;
  // Three spans: 0.1 q l^2 over the inner frames; the end span sags most, at 0.446 l.
  constexpr double three_spans_sag = 0.00688421328;
  const double moment = q * l * l / (one ? 8.0 : 10.0);
  const double sag = (one ? 5.0 / 384.0 : three_spans_sag) * q * l * l * l * l / strip.rigidity->value();
  const double capacity = strip.bending_capacity->value() * strip.duration_factor;
  return {moment_per_width::from_value(moment),
          moment_per_width::from_value(capacity),
          moment / capacity,
          length::from_value(sag),
          length::from_value(sag * strip.creep_factor),
          l / std::fmax(sag * strip.creep_factor, 1e-15 * l),  // without load: no sag to speak of
          structural_caution};
}

}  // namespace tankwright::vessel
