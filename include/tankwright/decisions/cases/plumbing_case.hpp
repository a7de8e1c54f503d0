// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the decisions about the plumbing and the power cut start from: the circuit at the ends and in the middle of its
/// losses, the levels of the running sump, the power cut.
#pragma once

#include <optional>
#include <string>
#include <tankwright/decisions/system_state.hpp>
#include <tankwright/plan/inputs/plumbing_inputs.hpp>
#include <tankwright/plumbing/power_cut.hpp>
#include <tankwright/water/liquid.hpp>

namespace tankwright::decisions {

/// The circuit at the three ends of its loss coefficients.
struct circuit_band {
  plumbing::circuit_solution least;
  plumbing::circuit_solution central;
  plumbing::circuit_solution most;

  /// One number of it with its band.
  template <class Of>
  [[nodiscard]] auto band(Of of) const -> estimate<decltype(of(central))> {
    const auto a = of(least), c = of(central), b = of(most);
    return {std::min({a, c, b}), c, std::max({a, c, b}), "the loss coefficients of the fittings"};
  }
};

/// The circuit at the three ends of its losses; worked out once where they are known exactly, as in samples.
///
/// @param circuit sources, pumps, runs and outlets
/// @param liquid  the water
/// @return        the least, central and most flow
/// @throws        as `plumbing::operating_point`
[[nodiscard]] circuit_band circuit_band_of(const plumbing::circuit& circuit, const water::liquid& liquid);

struct plumbing_case {
  plan::plumbing_inputs in;
  water::liquid liquid;
  std::optional<circuit_band> circuit{};  ///< none without a pump or returns, or where it cannot be solved
  std::string why_no_circuit{};           ///< what kept it from being solved
  std::optional<plumbing::power_cut_input> cut_input{};  ///< where water comes down
  std::optional<plumbing::power_cut_answer> cut{};
  std::string why_no_cut{};

  [[nodiscard]] const circuit_band& solved() const;  ///< throws what kept it from being solved
};

/// Circuit and power cut of a plan's plumbing.
///
/// @param s     a section that `validate` accepts
/// @param water its temperature and salinity, for density and viscosity
/// @return      the case; what could not be worked out is missing in it, and why
/// @throws      invalid_input, out_of_range (from `plan::inputs_of`)
[[nodiscard]] plumbing_case case_of(const plan::plumbing_section& s, const water_basis& water);

/// Water, surface and flow for the other sections.
///
/// @param state gets flow, sump_water, sump_surface, and display_surface where it has none
/// @param c     the plumbing
/// @throws      invalid_input (a sump whose running levels cannot be worked out)
void add_to(system_state& state, const plumbing_case& c);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/cases/plumbing_case.ipp>
#endif
