// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the decisions about the vessel start from: what is built, the density of the water, and what is left of it
/// beside sand, rock and equipment.
#pragma once

#include <optional>
#include <string>
#include <tankwright/decisions/system_state.hpp>
#include <tankwright/plan/inputs/vessel_inputs.hpp>
#include <tankwright/vessel/displacement.hpp>

namespace tankwright::decisions {

struct vessel_case {
  plan::vessel_inputs in;
  std::optional<mass_density> water_density{};  ///< none where the water is outside the range of its formula
  std::string why_no_density{};
  std::optional<vessel::water_content> content{};  ///< none where it does not fit
  std::string why_no_content{};

  [[nodiscard]] mass_density density() const;                   ///< throws what kept it from being worked out
  [[nodiscard]] const vessel::water_content& contents() const;  ///< throws what kept it from being worked out
};

/// The section [vessel], worked out.
///
/// @param s     a section that `validate` accepts
/// @param water its temperature and salinity, for its density
/// @return      the case; what could not be worked out is missing in it, and why
/// @throws      invalid_input, out_of_range (from `plan::inputs_of`)
/// @accuracy    the band of the items
/// @source      as `vessel/displacement.hpp`
[[nodiscard]] vessel_case case_of(const plan::vessel_section& s, const water_basis& water);

/// What the display adds to the shared state: its water net of sand, rock and equipment, its surface and depth.
///
/// @param state gets display_water and solids (or why there are none), display_surface and display_depth
/// @param c     the display
/// @throws      nothing but std::bad_alloc
/// @accuracy    the band of the items
/// @source      geometry; Archimedes
void add_to(system_state& state, const vessel_case& c);

/// A structure that has less than this part of its strength left has a thin margin. Common practice, no source.
inline constexpr proportion least_strength_left = percent(10.0);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/cases/vessel_case.ipp>
#endif
