// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the engines take of the section [plumbing]: a circuit, the display's edge, the sump, and each way that water
/// comes down when the pump stops.
#pragma once

#include <optional>
#include <string>
#include <tankwright/plan/plumbing.hpp>
#include <tankwright/plumbing/circuit.hpp>
#include <tankwright/plumbing/drain.hpp>
#include <tankwright/plumbing/power_cut.hpp>
#include <tankwright/plumbing/restart.hpp>
#include <vector>

namespace tankwright::plan {

/// A return as the power cut sees it; its flow comes from the circuit's outlet of the same label.
struct return_outlet {
  std::string label;
  required<length> below_edge;           ///< top of the opening below the overflow edge; negative above it
  std::optional<length> siphon_break{};  ///< hole below the overflow edge; counts only where it lies above the opening
  tankwright::plumbing::pipe_run pipe;
  bool check_valve = false;
  std::optional<length> nozzle{};   ///< bore of the opening, where it is not that of the pipe
  std::optional<length> to_sand{};  ///< along the jet
  std::optional<length> to_wall{};
};

/// Everything that moves the water.
struct plumbing_inputs {
  tankwright::plumbing::circuit circuit{};     ///< sources, pumps, runs and outlets; empty without a pump
  tankwright::plumbing::display_tank display;  ///< surface, edge, box, drain pipes that run full
  std::optional<length> edge_to_rim{};         ///< room over the overflow edge
  std::vector<tankwright::plumbing::drain> drains{};
  tankwright::plumbing::sump sump;
  required<length> edge_above_floor;  ///< overflow edge above the floor of the sump
  std::size_t drains_into = 0;        ///< chamber that the drains end in, from 0
  std::vector<return_outlet> returns{};
  std::vector<tankwright::plumbing::shared_pipe> shared_pipes{};  ///< trunks of the returns, which empty too
  proportion area_uncertainty;                                    ///< of all areas: that of the display's surface
  length level_uncertainty;  ///< of all levels and depths: that of the running level
  length reserve;            ///< height to keep free below the rims of sump and display
  std::optional<tankwright::plumbing::pump_inlet> inlet{};
  std::optional<head> npsh_required{};
  std::optional<length> surge{};  ///< as it was seen
  std::optional<rate> wanted_turnover{};

  /// Whether there is a flow to compute: a pump, and somewhere for its water to go.
  [[nodiscard]] bool has_circuit() const noexcept { return !circuit.pumps.empty() && !circuit.outlets.empty(); }
};

/// How well areas of display and sump are known, where an engine takes one number for all of them.
///
/// @param s the section
/// @return  the doubt of the display's surface, as a part of it; the usual one where nobody gave one
/// @throws  nothing
/// @accuracy exact
/// @source  this library
[[nodiscard]] proportion doubt_of_areas(const plumbing_section& s);

/// How well levels and depths are known, where an engine takes one number for all of them.
///
/// @param s the section
/// @return  the doubt of the running level [m]; the usual one where nobody gave one
/// @throws  nothing
/// @accuracy exact
/// @source  this library
[[nodiscard]] length doubt_of_levels(const plumbing_section& s);

/// The section as the engines take it.
///
/// @param s a section that `validate` accepts
/// @return  circuit, edge, sump and outlets
/// @throws  invalid_input, out_of_range (names the key that is missing, or what the standard of a nominal size lacks)
/// @accuracy exact
/// @source  this library
[[nodiscard]] plumbing_inputs inputs_of(const plumbing_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/inputs/plumbing_inputs.ipp>
#endif
