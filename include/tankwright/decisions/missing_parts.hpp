// SPDX-License-Identifier: BSL-1.0
/// @file
/// Parts that a plan does not have and that may make a finding hold: a check valve, a dehumidifier, a second drain, one
/// of the candidate pumps. Machinery of `would_hold.hpp`.
#pragma once

#include <string>
#include <string_view>
#include <tankwright/decisions/cure.hpp>
#include <tankwright/plan/build.hpp>
#include <vector>

namespace tankwright::decisions::detail {

/// One key of a part that is added, as `plan::set` takes it.
struct key_of_part {
  std::string_view name;
  std::string_view value;
};

/// A part that may be missing. %v in the words is its size, %p the element that it is added to.
struct part_row {
  std::string_view absent;  ///< pattern of the path that is not there: "plumbing.return[].check_valve"
  std::string_view words;
  std::string_view sized{};  ///< key that comes in sizes; its sizes are those of its description
  key_of_part others[3]{};   ///< keys beside it; of a flag none: it is set to true
};

/// In the order in which they are tried. What is only a key without a value (a siphon break, a cover over a surface, a
/// heater) is found by the search for keys.
inline constexpr part_row every_part[] = {
    {"plumbing.return[].check_valve", "put a check valve into the %p"},
    {"plumbing.trunk.check_valve", "put a check valve behind the pump"},
    {"plumbing.pump.check_valve", "put a check valve behind the return pump"},
    {"plumbing.further_pump[].check_valve", "put a check valve behind the %p"},
    {"room.dehumidifier",
     "add a dehumidifier of %v by its label",
     "capacity",
     {{"set_point", "50 %"}, {"rated_at", "80 F, 60 %"}}},
    {"life.power_cut.battery_air", "keep air stones on a battery that reach a KLa of %v", "kla"},
};

/// A part that a plan does not have, in what it comes in: from the least to the most.
struct missing_part {
  std::string words;                           ///< with %v for the size
  std::vector<std::vector<change>> options{};  ///< keys to set, that of the size first
};

/// What may be added to a plan: the rows of `every_part` that are absent, another drain like each that is there, each
/// candidate pump in place of the return pump.
///
/// @param build the plan
/// @return      parts with their keys; none that the plan has
/// @throws      nothing but std::bad_alloc
[[nodiscard]] std::vector<missing_part> missing_parts(const plan::build& build);

/// A plan with some keys set.
///
/// @param build   the plan
/// @param changes keys and their texts
/// @return        the plan with them
/// @throws        invalid_input, text_error for a key that cannot be set so
[[nodiscard]] plan::build with_changes(const plan::build& build, const std::vector<change>& changes);

}  // namespace tankwright::decisions::detail

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/missing_parts.ipp>
#endif
