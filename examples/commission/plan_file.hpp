// SPDX-License-Identifier: BSL-1.0
/// @file
/// A plan in a TOML file: quantities are text with their units, "2.40 m" or "95 in". The keys are documented in
/// docs/guides/plan-file.md.
#pragma once

#include <string>
#include <string_view>

#include "toml_section.hpp"

#include <tankwright/commissioning/assess.hpp>
#include <tankwright/text/quantity.hpp>

namespace plan_file {

/// What a file holds: the plan, and the units its report is to be in.
struct plan {
  tankwright::commissioning::plan build;
  tankwright::text::unit_system units = tankwright::text::unit_system::si;
};

/// Read a plan; throws `plan_error` with one line that names file, line and key.
[[nodiscard]] plan read_file(const std::string& path);
[[nodiscard]] plan read_text(std::string_view text, const std::string& name);

/// [vessel]
[[nodiscard]] tankwright::commissioning::vessel_plan read_vessel(section& in);
/// [hold]
[[nodiscard]] tankwright::commissioning::hold_section read_hold(section& in);
/// [plumbing]
[[nodiscard]] tankwright::commissioning::plumbing_plan read_plumbing(section& in);
/// [water]
[[nodiscard]] tankwright::commissioning::water_plan read_water(section& in);
/// [room]
[[nodiscard]] tankwright::commissioning::room_plan read_room(section& in);
/// [life]
[[nodiscard]] tankwright::commissioning::life_plan read_life(section& in);

/// Refuse keys that are each possible and cannot all be true, in one section or across sections. `top` is the whole
/// file, `build` what was read from it.
void refuse_contradictions(section top, const tankwright::commissioning::plan& build);

/// Total ammonia as the kit counts it (ammonia_nitrogen, ammonia or ammonium), and pH with its scale, in any table.
[[nodiscard]] std::optional<tankwright::water::total_ammonia> read_ammonia(section& in);
[[nodiscard]] std::optional<tankwright::water::ph_reading> read_ph(section& in);

}  // namespace plan_file
