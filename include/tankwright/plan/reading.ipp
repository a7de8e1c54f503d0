// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/reading.hpp>
#include <tankwright/plan/usual.hpp>

// Keys read as a list: name, value and what is said of it.
// clang-format off

namespace tankwright::plan {

namespace detail {

// How well instruments are usually known: common practice, no source.
inline constexpr double hydrometer_doubt = 0.0005;    ///< half a division of 0.001, a whole one of a good hydrometer
inline constexpr double refractometer_doubt = 1.0;    ///< one division
inline const usual_doubt probe_doubt = known_within(percent(1.0));
inline const usual_doubt kit_doubt = known_within(percent(20.0));
inline constexpr double ph_doubt = 0.1;               ///< an ordinary probe after a calibration

inline const range_of<double> gravities{0.5, 2.0};
inline const range_of<double> gravity_divisions{0.00001, 0.05};
inline const range_of<double> refractometer_divisions{0.01, 20.0};
inline const range_of<electrical_conductivity> conductivities{millisiemens_per_centimetre(0.0),
                                                              millisiemens_per_centimetre(1000.0)};
inline const range_of<mass_concentration> concentrations{milligrams_per_litre(0.0), milligrams_per_litre(10000.0)};

}  // namespace detail

TANKWRIGHT_INLINE void describe(visitor& key, hydrometer& s) {
  key("scale", s.scale, {.means = "the two temperatures printed on it", .needed = true});
  key("body", s.body, {"glass", "plastic"}, {.means = "what it is made of"});
  key("division", s.division, {.means = "smallest division of its scale", .limits = detail::gravity_divisions});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, refractometer& s) {
  key("scale", s.scale, {"seawater", "sodium chloride"},
      {.means = "the salt that its scale is made for, as its manual says", .needed = true});
  key("compensation", s.compensation, {"none", "automatic"},
      {.means = "whether it allows for the temperature by itself; automatic is marked ATC", .needed = true});
  key("division", s.division, {.means = "smallest division of its scale, in parts per thousand",
                               .limits = detail::refractometer_divisions});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, salinity_reading& s) {
  key("practical_salinity", s.known, {.means = "practical salinity, where it is known", .limits = usual::salinity,
                                      .doubt = usual::read_salinity});
  key("hydrometer", s.hydrometer, {.means = "specific gravity that a hydrometer shows", .limits = detail::gravities,
                                   .doubt = detail::hydrometer_doubt});
  key("refractometer", s.refractometer, {.means = "parts per thousand that a refractometer shows",
                                         .limits = {0.0, 280.0}, .doubt = detail::refractometer_doubt});
  key("conductivity", s.conductivity, {.means = "conductivity that a probe shows without compensation",
                                       .limits = detail::conductivities, .doubt = detail::probe_doubt});
  key("compensated_conductivity", s.compensated_conductivity,
      {.means = "conductivity that a meter shows which refers it to 25 °C", .limits = detail::conductivities,
       .doubt = detail::probe_doubt});
  key("temperature", s.temperature, {.means = "of the water, or of the prism of a refractometer, when it was read",
                                     .limits = usual::liquid_water, .doubt = usual::thermometer});
  key("scale", s.scale, {.means = "of the instrument: the temperatures on a hydrometer (\"60F/60F\"), or \"seawater\" "
                                  "or \"sodium chloride\" for a refractometer"});
  key("body", s.body, {"glass", "plastic"}, {.means = "what the hydrometer is made of"});
  key("compensation", s.compensation, {"none", "automatic"},
      {.means = "whether the refractometer allows for the temperature by itself; automatic is marked ATC"});
  key("division", s.division, {.means = "smallest division of the instrument; 0.001 of a hydrometer and 1 of a "
                                        "refractometer where it is not given",
                               .limits = {0.00001, 20.0}});
  key("coefficient", s.coefficient, {.means = "temperature coefficient that the meter is set to",
                                     .limits = {percent_per_kelvin(0.0), percent_per_kelvin(10.0)}});
  describe_note(key, s.note);
  key.alternatives({"practical_salinity", "hydrometer", "refractometer", "conductivity", "compensated_conductivity"},
                   true);
  key.together({"compensated_conductivity", "coefficient"});
}

TANKWRIGHT_INLINE void describe_ammonia(visitor& key, ammonia_reading& r, bool needed) {
  key("ammonia_nitrogen", r.as_nitrogen, {.means = "total ammonia where the kit counts it as nitrogen",
                                          .limits = detail::concentrations, .doubt = detail::kit_doubt});
  key("ammonia", r.as_ammonia, {.means = "total ammonia where the kit counts it as NH3",
                                .limits = detail::concentrations, .doubt = detail::kit_doubt});
  key("ammonium", r.as_ammonium, {.means = "total ammonia where the kit counts it as NH4",
                                  .limits = detail::concentrations, .doubt = detail::kit_doubt});
  key.alternatives({"ammonia_nitrogen", "ammonia", "ammonium"}, needed);
}

TANKWRIGHT_INLINE void describe_ph(visitor& key, ph_with_scale& r, bool needed) {
  key("ph", r.ph, {.means = "pH of the water", .limits = {0.0, 14.0}, .needed = needed, .doubt = detail::ph_doubt});
  key("ph_scale", r.scale, {"total", "free", "nbs"},
      {.means = "scale of the pH: nbs for a probe on ordinary buffers", .needed = needed});
  key.together({"ph", "ph_scale"});
}

}  // namespace tankwright::plan
