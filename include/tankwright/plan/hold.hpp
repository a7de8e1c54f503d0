// SPDX-License-Identifier: BSL-1.0
/// @file
/// The leak test of a plan: as done, as planned, or both. The key [hold].
#pragma once

#include <optional>
#include <string>
#include <tankwright/core/units.hpp>
#include <tankwright/plan/description.hpp>
#include <vector>

namespace tankwright::plan {

/// What a reservoir may lose, for those who want to be held against it.
enum class reservoir_criterion { awwa_d110, awwa_1978, bs_5337, aci_350_class_025 };

/// A leak test that is still to be done. The key [hold.planned].
struct planned_leak_test {
  value<flow_rate> leak{};
  value<length> resolution{};
  value<length> scatter = by_default(metres(0.0));
  value<double> readings_per_day = by_default(4.0);
  flag pan{};
  value<velocity> evaporation{};
  std::string note{};
};

/// Drops counted under a seam or a fitting.
struct counted_drip {
  std::string label{};
  value<double> drops{};
  value<duration> over{};
  value<volume> drop{};
  std::string note{};
};

/// A part that is tested at the same time, shut off from the others: the sump, a return.
struct tested_part {
  std::string label{};
  value<area> surface{};
  value<length> depth{};
  values<length> levels{};
  values<length> pan{};
  std::string note{};
};

/// [hold]
struct hold_section {
  value<area> surface{};
  value<volume> capacity{};
  value<length> depth{};
  value<length> resolution{};
  value<flow_rate> leak{};
  word<reservoir_criterion> criterion{};
  values<duration> times{};
  values<length> levels{};
  values<length> pan{};
  values<temperature> water{};
  values<double> reader{};
  value<practical_salinity> salinity = by_default(practical_salinity{0.0});
  value<proportion> confidence = by_default(percent(95.0));
  value<temperature> water_temperature{};
  value<temperature> air_temperature{};
  value<relative_humidity> air_humidity{};
  std::vector<counted_drip> drip{};
  std::vector<tested_part> part{};
  std::optional<planned_leak_test> planned{};
  std::string note{};
};

void describe(visitor& key, planned_leak_test& s);
void describe(visitor& key, counted_drip& s);
void describe(visitor& key, tested_part& s);
void describe(visitor& key, hold_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/hold.ipp>
#endif
