// SPDX-License-Identifier: BSL-1.0
/// @file
/// Will the lid sag? A cover that lies on two edges, under its own weight and what stands on it, now and after years;
/// and the bow of an acrylic lid that is wet below and dry above, which is usually the larger.
#pragma once

#include <string>
#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/cautions.hpp>
#include <tankwright/vessel/detail/check.hpp>
#include <tankwright/vessel/materials.hpp>

namespace tankwright::vessel {

/// A flat cover that lies on two opposite edges.
struct lid {
  required<length> span;  ///< clear, between the edges
  required<length> thickness;
  required<panel_material> material;
  pressure extra = pascals(0.0);  ///< spread on it, beside its own weight
  double moisture_strain = 0.0;   ///< [1] how much longer the wet face grows than the dry one; about 1e-3 for acrylic
  std::string label = "lid";
};

struct lid_result {
  pressure load;
  length sag;                      ///< short term
  estimate<length> long_term_sag;  ///< after years
  length moisture_bow;             ///< upwards or downwards, towards the wet face's side
  tankwright::stress stress;
  allowable_stress allowable;
  double utilisation;    ///< [1]
  double span_over_sag;  ///< [1] long-term, central; common limits: 360 for live, 240 for total load (from memory)
  tankwright::caution caution;
};

/// Sag, bow and stress of a lid on two edges.
///
///   sag = 5 q L^4 / (384 E t^3/12),  sigma = 6 (q L^2/8) / t^2,  bow = (strain/t) L^2 / 8
///
/// @param lid span and thickness [m] > 0, the thickness below the span; material; extra load [Pa] >= 0; moisture
///            strain, 0 to 0.05
/// @return    load [Pa], sags and bow [m], stress [Pa]
/// @throws    invalid_input (names the label)
/// @accuracy  exact for a strip; a lid that also rests on its ends sags less. The long-term modulus is known to 10 to
///            15 %
/// @source    Euler-Bernoulli beam theory
[[nodiscard]] inline lid_result sag_of(const lid& lid) {
  constexpr std::string_view here = "tankwright::vessel::sag_of";
  const double l = lid.span->value(), t = lid.thickness->value();
  const panel_material& m = lid.material;
  core::check_element(here, lid.label, detail::positive_length("span"), l);
  core::check_element(here, lid.label, detail::positive_length("thickness"), t);
  if (t >= l) {
    detail::refuse_of(here, lid.label, "thickness", t, "m",
                      "is not less than the span, " + core::number_text(l) + " m: that is a block, not a lid");
  }
  core::check_element(here, lid.label, {"extra load", "Pa", detail::possible_pressure}, lid.extra.value());
  core::check_element(here, lid.label, {"moisture strain", "", {0.0, 0.05}}, lid.moisture_strain);
  detail::check_material(here, lid.label, m);
  const double q = m.density.value() * standard_gravity.value() * t + lid.extra.value();
  const auto sag = [&](tankwright::stress modulus) {
    return length::from_value(5.0 * q * l * l * l * l / (384.0 * modulus.value() * t * t * t / 12.0));
  };
  const double stress = 6.0 * (q * l * l / 8.0) / (t * t);
  const auto later = map_falling(m.long_term_modulus, sag);
  return {pressure::from_value(q),
          sag(m.modulus),
          later,
          length::from_value(lid.moisture_strain / t * l * l / 8.0),
          tankwright::stress::from_value(stress),
          m.allowable,
          stress / m.allowable.value.value(),
          l / later.central.value(),
          structural_caution};
}

}  // namespace tankwright::vessel
