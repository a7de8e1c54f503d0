// SPDX-License-Identifier: BSL-1.0
/// @file
/// The room, drawn: its humidity over a day that starts at the limit, and its water without power.
#pragma once

#include <tankwright/decisions/cases/room_case.hpp>
#include <tankwright/decisions/figure.hpp>
#include <vector>

namespace tankwright::decisions {

/// The pictures of the section [room]: room.humidity where a season can be solved, room.outage where the plan asks for
/// it and gives what it needs.
///
///   `room::humidity_course` over a day from the limit; `room::temperature_course_of` to twice the power cut
///
/// @param c the room
/// @return  relative humidity [1] and water temperature [K] over time [s]; what a formula refuses is left out
/// @throws  nothing but std::bad_alloc
/// @accuracy as its parts
/// @source  the sources of `room/humidity_course.hpp` and `room/temperature_course.hpp`
[[nodiscard]] std::vector<figure> figures_of(const room_case& c);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/figures/room_figures.ipp>
#endif
