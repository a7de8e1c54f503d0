// SPDX-License-Identifier: BSL-1.0
/// @file
/// The water of a plan: what is made, what it must match, what instruments read. The key [water].
#pragma once

#include <optional>
#include <string>
#include <tankwright/core/units.hpp>
#include <tankwright/plan/reading.hpp>
#include <vector>

namespace tankwright::plan {

/// A trial batch, which tells the yield of a mix.
struct trial_batch {
  value<mass> mix{};
  value<mass> fresh_water{};
  value<practical_salinity> reached{};
  std::string note{};
};

/// How the water is made: batch by batch.
struct mixing_schedule {
  value<flow_rate> unit_rate{};
  value<proportion> recovery{};
  value<volume> stored = by_default(litres(0.0));
  value<volume> vat{};
  value<duration> dissolve = by_default(hours(24.0));
  value<duration> ready_in{};
  std::string note{};
};

/// Water that comes over from the older tank.
struct moved_water {
  value<volume> amount{};  ///< key "volume"
  value<practical_salinity> salinity{};
  std::string note{};
};

/// An instrument for specific gravity whose scale nobody knows, and what it shows in waters that somebody does.
struct unknown_instrument {
  std::string label{};
  value<double> reading{};
  value<temperature> at{};  ///< key "temperature"
  value<double> in_fresh_water{};
  value<double> in_standard{};
  value<mass> standard_salt{};
  value<mass> standard_water{};
  value<double> division = by_default(0.001);
  std::string note{};
};

/// A known volume of the water on a scale.
struct weighed_sample {
  value<tankwright::volume> volume{};
  value<mass> full{};
  value<mass> empty{};
  value<temperature> at{};  ///< key "temperature"
  std::string note{};
};

/// Something that goes into all the water.
struct dose {
  std::string label{};
  value<mass_concentration> rise{};
  value<mass_concentration> stock{};
  std::string note{};
};

/// [water]
struct water_section {
  value<tankwright::temperature> temperature{};
  value<volume> new_water{};
  value<proportion> mix_yield{};
  value<practical_salinity> target{};
  value<practical_salinity> match_within = by_default(practical_salinity{0.5});
  flag probe{};
  ammonia_reading ammonia{};
  ph_with_scale ph{};
  value<absolute_pressure> air_pressure = by_default(standard_atmosphere);
  std::optional<plan::trial_batch> trial_batch{};
  std::optional<salinity_reading> older_tank{};
  std::optional<salinity_reading> now{};
  std::optional<plan::hydrometer> hydrometer{};
  std::optional<plan::refractometer> refractometer{};
  std::optional<mixing_schedule> schedule{};
  std::optional<moved_water> moved{};
  std::optional<plan::unknown_instrument> unknown_instrument{};
  std::optional<weighed_sample> weighed{};
  std::vector<plan::dose> dose{};
  std::string note{};
};

void describe(visitor& key, trial_batch& s);
void describe(visitor& key, mixing_schedule& s);
void describe(visitor& key, moved_water& s);
void describe(visitor& key, unknown_instrument& s);
void describe(visitor& key, weighed_sample& s);
void describe(visitor& key, dose& s);
void describe(visitor& key, water_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/water.ipp>
#endif
