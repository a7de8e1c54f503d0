// SPDX-License-Identifier: BSL-1.0
/// @file
/// What instruments and kits read, as several sections of a plan give it: a salinity in one of five ways, ammonia in
/// one of three ways of counting, a pH with its scale.
#pragma once

#include <string>
#include <tankwright/core/units.hpp>
#include <tankwright/plan/description.hpp>
#include <tankwright/plan/gravity_scale_text.hpp>
#include <tankwright/water/ph.hpp>
#include <tankwright/water/refractometer_scale.hpp>

namespace tankwright::plan {

/// What a hydrometer is made of.
enum class hydrometer_body { glass, plastic };

/// A hydrometer that is at hand.
struct hydrometer {
  gravity_scale_text scale{};
  word<hydrometer_body> body = word_by_default(hydrometer_body::glass);
  value<double> division = by_default(0.001);
  std::string note{};
};

/// A refractometer that is at hand.
struct refractometer {
  word<tankwright::water::refractometer_scale> scale{};
  word<tankwright::water::temperature_compensation> compensation{};
  value<double> division = by_default(1.0);
  std::string note{};
};

/// A salinity: known, or read with one of four instruments.
struct salinity_reading {
  value<practical_salinity> known{};  ///< key "practical_salinity"
  value<double> hydrometer{};         ///< as shown
  value<double> refractometer{};      ///< as shown, parts per thousand
  value<electrical_conductivity> conductivity{};
  value<electrical_conductivity> compensated_conductivity{};
  value<tankwright::temperature> temperature{};
  instrument_scale scale{};
  word<hydrometer_body> body = word_by_default(hydrometer_body::glass);
  word<tankwright::water::temperature_compensation> compensation{};
  value<double> division{};  ///< of hydrometer or refractometer
  value<temperature_coefficient> coefficient{};
  std::string note{};
};

/// Total ammonia as the kit counts it: one of the three at most.
struct ammonia_reading {
  value<mass_concentration> as_nitrogen{};  ///< key "ammonia_nitrogen"
  value<mass_concentration> as_ammonia{};   ///< key "ammonia"
  value<mass_concentration> as_ammonium{};  ///< key "ammonium"

  [[nodiscard]] bool given() const noexcept { return as_nitrogen.given() || as_ammonia.given() || as_ammonium.given(); }
};

/// A pH and its scale, the keys "ph" and "ph_scale".
struct ph_with_scale {
  value<double> ph{};
  word<tankwright::water::ph_reading::scale> scale{};
};

void describe(visitor& key, hydrometer& s);
void describe(visitor& key, refractometer& s);
void describe(visitor& key, salinity_reading& s);
/// The keys of `ammonia_reading` in the table that has it; with `needed`, one of them must be given.
void describe_ammonia(visitor& key, ammonia_reading& r, bool needed = false);
/// The keys of `ph_with_scale` in the table that has it.
void describe_ph(visitor& key, ph_with_scale& r, bool needed = false);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/reading.ipp>
#endif
