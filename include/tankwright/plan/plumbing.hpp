// SPDX-License-Identifier: BSL-1.0
/// @file
/// The plumbing of a plan: overflow, pump, returns, drains, sump. The key [plumbing].
#pragma once

#include <string>
#include <tankwright/core/units.hpp>
#include <tankwright/plan/pipe.hpp>
#include <tankwright/plumbing/outlet_kind.hpp>
#include <vector>

namespace tankwright::plan {

/// Where the display runs over: a full edge, or a comb where `gaps` is given.
struct overflow {
  value<area> surface{};
  value<length> crest_height{};
  value<length> width{};
  value<length> thickness = by_default(metres(0.0));
  value<double> gaps{};
  value<length> gap_width{};
  value<length> tooth_width{};
  value<length> gap_height{};
  std::string note{};
};

/// A box behind the overflow that runs empty when the pump stops.
struct overflow_box {
  value<tankwright::area> area{};
  value<length> falls_by{};
  std::string note{};
};

/// A return pump by points of its curve.
struct pump {
  std::string label{};
  values<flow_rate> flows{};
  values<length> heads{};
  value<double> speed = by_default(1.0);
  value<tankwright::power> power{};
  flag check_valve{};
  std::string note{};
};

/// What the report calls a pump: its label, or "pump", which only the return pump may go by.
///
/// @param p  a pump of the plan
/// @return   its name; the return pump's appliance in the room and the returns that it feeds may go by it too
/// @throws   nothing but std::bad_alloc
/// @accuracy not a computation
/// @source   none: a convention of this library
[[nodiscard]] inline std::string label_of(const pump& p) { return p.label.empty() ? "pump" : p.label; }

/// A pump that may be bought in place of the return pump.
struct candidate_pump {
  std::string label{};
  values<flow_rate> flows{};
  values<length> heads{};
  value<double> speed = by_default(1.0);
  value<tankwright::power> power{};
  value<double> price{};
  std::string note{};
};

/// The pipe that all returns of the return pump share.
struct trunk {
  plan::pipe pipe{};
  value<double> side_by_side = by_default(1.0);
  flag check_valve{};
  std::string note{};
};

/// A return into the display.
struct return_pipe {
  std::string label{};
  std::string fed_by{};  ///< label of a further pump; empty: the return pump
  plan::pipe pipe{};
  word<tankwright::plumbing::outlet_kind> kind = word_by_default(tankwright::plumbing::outlet_kind::submerged);
  value<length> below_edge{};
  value<length> siphon_break{};
  flag check_valve{};
  value<length> nozzle{};
  value<length> to_sand{};
  value<length> to_wall{};
  std::string note{};
};

/// A drain from the overflow to the sump.
struct drain_pipe {
  std::string label{};
  plan::pipe pipe{};
  value<length> drop{};
  value<length> inlet_head{};
  flag strainer{};
  flag runs_full{};
  std::string note{};
};

struct chamber {
  std::string label{};
  value<tankwright::area> area{};
  value<tankwright::area> gear = by_default(square_metres(0.0));
  std::string note{};
};

struct baffle {
  value<length> crest{};
  value<length> width{};
  value<length> gap = by_default(metres(0.0));
  value<length> thickness = by_default(metres(0.0));
  std::string note{};
};

struct sump {
  value<length> rim{};
  value<length> running_level{};
  std::vector<plan::chamber> chamber{};
  std::vector<plan::baffle> baffle{};
  std::string note{};
};

struct pump_inlet {
  value<length> above_floor{};
  plan::bore bore{};
  value<length> npsh_required{};
  std::string note{};
};

/// [plumbing]
struct plumbing_section {
  value<length> lift{};
  value<rate> wanted_turnover{};
  value<length> edge_to_rim{};
  value<length> reserve = by_default(millimetres(20.0));
  value<length> surge{};
  value<double> drains_into = by_default(1.0);
  std::optional<plan::overflow> overflow{};
  std::optional<plan::overflow_box> box{};
  std::optional<plan::pump> pump{};
  std::vector<plan::pump> further_pump{};
  std::vector<plan::candidate_pump> candidate{};
  std::optional<plan::trunk> trunk{};
  std::vector<plan::return_pipe> returns{};  ///< key "return"
  std::vector<plan::drain_pipe> drain{};
  std::optional<plan::sump> sump{};
  std::optional<plan::pump_inlet> pump_inlet{};
  std::string note{};
};

void describe(visitor& key, overflow& s);
void describe(visitor& key, overflow_box& s);
void describe(visitor& key, pump& s);
void describe(visitor& key, candidate_pump& s);
void describe(visitor& key, trunk& s);
void describe(visitor& key, return_pipe& s);
void describe(visitor& key, drain_pipe& s);
void describe(visitor& key, chamber& s);
void describe(visitor& key, baffle& s);
void describe(visitor& key, sump& s);
void describe(visitor& key, pump_inlet& s);
void describe(visitor& key, plumbing_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/plumbing.ipp>
#endif
