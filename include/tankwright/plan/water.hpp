// SPDX-License-Identifier: BSL-1.0
/// @file
/// The water of a plan: what is made, what it must match, what instruments read. The key [water].
#pragma once

#include <optional>
#include <string>
#include <tankwright/core/units.hpp>
#include <tankwright/plan/reading.hpp>

namespace tankwright::plan {

/// A trial batch, which tells the yield of a mix.
struct trial_batch {
  value<mass> mix{};
  value<mass> fresh_water{};
  value<practical_salinity> reached{};
  value<practical_salinity> reading_error = by_default(practical_salinity{1.0});
  std::string note{};
};

/// [water]
struct water_section {
  value<tankwright::temperature> temperature{};
  value<volume> new_water{};
  value<proportion> new_water_uncertainty = by_default(percent(0.0));
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
  std::string note{};
};

void describe(visitor& key, trial_batch& s);
void describe(visitor& key, water_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/water.ipp>
#endif
