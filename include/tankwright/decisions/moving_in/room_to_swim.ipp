// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/room_to_swim.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/life/levels.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_room_to_swim(const situation& s, answers& out) {
  if (!s.plan().life) return;
  bool asked = false;
  for (const plan::animal_kind& kind : s.plan().life->animals) asked = asked || kind.adult;
  if (!asked) return;
  finding& f = out.ask(room_to_swim);
  const life_case& c = s.life();
  f.source(life::husbandry_practice);
  if (!c.in.room) {
    f.unknown("measure the longest straight run free of obstacles, and the clear width there");
    return;
  }
  const plan::swim_run& room = *c.in.room;
  const plan::animal_inputs* tightest = nullptr;
  double least = HUGE_VAL;
  const auto clearance = [&](const plan::animal_inputs& kind) {
    return life::swim_clearance({.animal = *kind.adult,
                                 .run = room.run,
                                 .width = room.width,
                                 .speed = kind.speed,
                                 .run_multiple = kind.run_multiple,
                                 .width_multiple = kind.width_multiple});
  };
  for (const plan::animal_inputs& kind : c.in.animals) {
    if (!kind.adult) continue;
    const auto has = clearance(kind);
    const double ratio = std::fmin(room.run / has.run_wanted, room.width / has.width_wanted);
    if (!(ratio < least)) continue;
    least = ratio;
    tightest = &kind;
  }
  const auto has = clearance(*tightest);
  f.answer("run", "straight run, in body lengths", has.run_in_lengths, "run");
  f.answer("width", "clear width, in body lengths", has.width_in_lengths, "width");
  f.limit("run_wanted", "run asked for", has.run_wanted, "run");
  f.limit("width_wanted", "width asked for", has.width_wanted, "width");
  f.margin("run_left", "run to spare", length{room.run - has.run_wanted}, length{}, "run");
  f.margin("width_left", "width to spare", length{room.width - has.width_wanted}, length{}, "width");
  f.detail("crossing", "crossing the run at routine speed takes", has.crossing);
  f.note = "Tightest for the " + tightest->label + ". " + std::string{has.rule};
}

}  // namespace tankwright::decisions
