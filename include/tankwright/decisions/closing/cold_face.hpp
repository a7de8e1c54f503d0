// SPDX-License-Identifier: BSL-1.0
/// @file
/// A pane against dripping, a wall against mould, in the winter air of the room.
#pragma once

#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/room/condensation.hpp>

namespace tankwright::decisions::detail {

struct cold_face {
  room::building_element element;
  relative_humidity at_its_face;  ///< that must not be reached
  const char* limit;              ///< words of the humidity that makes it
};

/// The humidity of the room against the one that a cold face stands.
inline void judge_cold_face(finding& f, const solved_season& winter, const cold_face& face) {
  const relative_humidity highest = room::highest_humidity(face.element, face.at_its_face);
  const estimate<relative_humidity> settled = winter.settles_at();
  const room::surface_verdict seen = room::judge_surface(face.element, winter.humidity.central.air);
  f.answer("humidity", "humidity of the room in winter", settled);
  f.limit("highest", face.limit, highest);
  f.margin("below", "points below that", points_below(highest, settled), useful_humidity);
  f.detail("face", "its inside face", seen.surface);
  f.detail("dew_point", "dew point of the room", seen.dew_point);
  f.detail("outdoors", "outdoors", face.element.outside.get());
  f.source(room::iso_13788).source(room::ashrae_2017);
}

}  // namespace tankwright::decisions::detail
