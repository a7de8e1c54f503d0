// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/build.hpp>

// Keys read as a list: name, value and what is said of it.
// clang-format off

namespace tankwright::plan {

TANKWRIGHT_INLINE void describe(visitor& key, build& b) {
  key("format", b.format, {.means = "form of this file; leave it out, or write 1", .limits = {1.0, newest_format},
                           .whole = true});
  key("title", b.title, {.means = "heading of the report"});
  key("units", b.units, {"si", "us"}, {.means = "units of the report"});
  key("vessel", b.vessel, {.means = "the display: what it is, what is in it and on it"});
  key("hold", b.hold, {.means = "the leak test of the first fill"});
  key("plumbing", b.plumbing, {.means = "overflow, pump, returns, drains and sump"});
  key("water", b.water, {.means = "the water that is made, and what it must match"});
  key("room", b.room, {.means = "the room: its air, its heat, its top-off"});
  key("life", b.life, {.means = "the animals, and what keeps them alive"});
  describe_note(key, b.note);
}

}  // namespace tankwright::plan
