// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the engines take of the section [water].
#pragma once

#include <optional>
#include <tankwright/plan/inputs/reading_inputs.hpp>
#include <tankwright/plan/water.hpp>
#include <tankwright/water/salt_mix.hpp>

namespace tankwright::plan {

/// The water of the new display, and the tank it is to match. What is not given is not asked.
struct water_inputs {
  std::optional<estimate<volume>> new_water{};  ///< seawater to be made
  required<tankwright::temperature> temperature;
  std::optional<proportion> mix_yield{};  ///< as given
  std::optional<water::trial_batch> trial{};
  std::optional<salinity_input> older_tank{};
  std::optional<practical_salinity> target{};
  std::optional<salinity_input> now{};
  practical_salinity match_within{0.5};
  std::optional<water::hydrometer> hydrometer{};
  std::optional<water::refractometer> refractometer{};
  bool probe = false;
  std::optional<water::total_ammonia> ammonia{};
  std::optional<water::ph_reading> ph{};
  absolute_pressure air = standard_atmosphere;
};

/// The section as the engines take it.
///
/// @param s a section that `validate` accepts
/// @return  volumes, readings and instruments; nothing is computed from the readings yet
/// @throws  invalid_input (names what is missing)
/// @accuracy exact
/// @source  this library
[[nodiscard]] water_inputs inputs_of(const water_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/inputs/water_inputs.ipp>
#endif
