// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the decisions about the water start from: the salinity to be reached, the yield of the mix, the water so far.
#pragma once

#include <optional>
#include <tankwright/core/estimate.hpp>
#include <tankwright/decisions/once.hpp>
#include <tankwright/decisions/system_state.hpp>
#include <tankwright/plan/inputs/water_inputs.hpp>

namespace tankwright::decisions {

/// The section [water]. A reading that its instrument's formula refuses goes wrong for the decisions that ask for it.
class water_case {
 public:
  explicit water_case(plan::water_inputs inputs) : in{std::move(inputs)} {}
  plan::water_inputs in;

  /// Of the older tank, or as chosen, or that of natural seawater.
  [[nodiscard]] const estimate<practical_salinity>& target() const;
  /// As given, by the trial batch, or what dry mixes usually yield.
  [[nodiscard]] const estimate<proportion>& mix_yield() const;
  /// Of the new water so far; only where the plan gives it.
  [[nodiscard]] const estimate<practical_salinity>& now() const;
  /// Whether anybody has measured or told the yield.
  [[nodiscard]] bool knows_yield() const noexcept { return in.mix_yield || in.trial; }

 private:
  once<estimate<practical_salinity>> target_{};
  once<estimate<proportion>> mix_yield_{};
  once<estimate<practical_salinity>> now_{};
};

/// The case of a section.
///
/// @param s a section that `validate` accepts
/// @return  its inputs; readings are worked out when they are asked for
/// @throws  invalid_input (from `plan::inputs_of`)
/// @accuracy exact
/// @source  this library
[[nodiscard]] water_case case_of(const plan::water_section& s);

/// Temperature, salinity and air for the other sections. Where the reading of the older tank is refused, the salinity
/// is that of natural seawater, and salt.target says why.
///
/// @param c the water
/// @return  what it is like
/// @throws  nothing
/// @accuracy that of the reading
/// @source  this library
[[nodiscard]] water_basis basis_of(const water_case& c);

/// Without a vessel, the display holds what the sump does not of the water to be made.
///
/// @param state gets the display's water, where it has none
/// @param c     the water
/// @throws      nothing
/// @accuracy    exact
/// @source      this library
void add_display_from(system_state& state, const water_case& c);

/// The seawater to be made: as given, otherwise what the system holds.
///
/// @param c     the water
/// @param state what the other sections hold
/// @return      the volume; none where nothing tells it
/// @throws      nothing
/// @accuracy    exact
/// @source      this library
[[nodiscard]] std::optional<estimate<volume>> water_to_make(const water_case& c, const system_state& state);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/cases/water_case.ipp>
#endif
