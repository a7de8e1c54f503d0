// SPDX-License-Identifier: BSL-1.0
/// @file
/// One decision asked of a plan, and its numbers by their ids.
#pragma once

#include <doctest/doctest.h>

#include <string_view>
#include <tankwright/decisions/decision.hpp>
#include <tankwright/decisions/situation.hpp>

#include "plan/lagoon.hpp"

namespace tankwright::testing {

/// The findings of one decision; none where the plan does not ask it.
[[nodiscard]] inline std::vector<decisions::finding> asked(const decisions::decision& d, const plan::build& build) {
  const decisions::situation s{build};
  decisions::answers out;
  out.run(d, s);
  return out.take();
}

/// Whatever a finding says: its caution is the decision's, its bands are in order, its verdict is that of its margin,
/// and what is not known says why.
inline void sound(const decisions::finding& f, const decisions::decision& d) {
  CHECK(f.id == d.id);
  CHECK(f.caution == d.caution);
  for (const decisions::number& n : f.numbers) {
    INFO(f.id, ".", n.id, " ", n.place);
    CHECK(n.value.low <= n.value.central);
    CHECK(n.value.central <= n.value.high);
    CHECK_FALSE(n.value.quantity.empty());
  }
  if (f.verdict == decisions::verdict::not_enough_known) {
    CHECK_FALSE((f.measure_next.empty() && f.note.empty()));
  } else if (f.margin()) {
    const decisions::verdict v = decisions::judge(f.margin()->value, f.useful);
    CHECK_MESSAGE(f.verdict == decisions::worse_of(v, f.verdict), f.id);
  } else {
    CHECK_MESSAGE(f.verdict == decisions::verdict::for_information, f.id, " is judged without a margin");
  }
}

/// The one finding of a decision that must be asked.
[[nodiscard]] inline decisions::finding answered(const decisions::decision& d, plan::build build,
                                                 key_texts changes = {}) {
  give(build, changes);
  auto all = asked(d, build);
  REQUIRE_MESSAGE(all.size() == 1, d.id, " has ", all.size(), " findings");
  sound(all.front(), d);
  return std::move(all.front());
}

/// The plan with some keys changed.
[[nodiscard]] inline plan::build changed(plan::build build, key_texts keys) {
  give(build, keys);
  return build;
}

/// A number with its band.
[[nodiscard]] inline amount band(const decisions::finding& f, std::string_view id, std::string_view place = {}) {
  const decisions::number* n = f.find(id, place);
  REQUIRE_MESSAGE(n != nullptr, f.id, ": ", id, " ", place, " note: ", f.note);
  return n->value;
}

/// The middle of a number, in SI.
[[nodiscard]] inline double number(const decisions::finding& f, std::string_view id, std::string_view place = {}) {
  const decisions::number* n = f.find(id, place);
  REQUIRE_MESSAGE(n != nullptr, f.id, ": ", id, " ", place, " note: ", f.note);
  return n->value.central;
}

/// The verdict of the margin that decides, and that it has the sign that the verdict says.
inline void judged(const decisions::finding& f, decisions::verdict expected, std::string_view margin,
                   std::string_view place = {}) {
  CHECK_MESSAGE(f.verdict == expected, f.id, ": ", decisions::words(f.verdict), " ", f.note);
  REQUIRE(f.margin() != nullptr);
  CHECK(f.margin()->id == margin);
  if (!place.empty()) CHECK(f.margin()->place == place);
  CHECK((f.margin()->value.central > 0.0) == (expected != decisions::verdict::does_not_hold));
  CHECK(f.happens.empty() == (expected != decisions::verdict::does_not_hold));
}

}  // namespace tankwright::testing
