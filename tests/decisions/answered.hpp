// SPDX-License-Identifier: BSL-1.0
/// @file
/// A decision answered from a plan that is filled by path, and its numbers by their ids.
#pragma once

#include <doctest/doctest.h>

#include <tankwright/decisions/decision.hpp>
#include <tankwright/decisions/situation.hpp>
#include <vector>

#include "plan/mistakes.hpp"

namespace tankwright::testing {

/// The plan with some keys changed.
[[nodiscard]] inline plan::build changed(plan::build build, key_texts keys) {
  give(build, keys);
  return build;
}

/// Every finding of one decision; the plan must be sound.
[[nodiscard]] inline std::vector<decisions::finding> all_answered(const plan::build& build,
                                                                  const decisions::decision& d) {
  REQUIRE_MESSAGE(plan::validate(build).empty(), mistakes_of(build));
  const decisions::situation s{build};
  decisions::answers out;
  out.run(d, s);
  return out.take();
}

/// The finding of a decision that the plan asks for; whatever it is, its caution and its bands are sound.
[[nodiscard]] inline decisions::finding answered(const plan::build& build, const decisions::decision& d) {
  auto all = all_answered(build, d);
  REQUIRE_MESSAGE(all.size() == 1, d.id, " has ", all.size(), " findings");
  decisions::finding f = std::move(all.front());
  CHECK(f.id == d.id);
  CHECK(f.caution == d.caution);
  for (const decisions::number& n : f.numbers) {
    INFO(f.id, ".", n.id, " ", n.place);
    CHECK(n.value.low <= n.value.central);
    CHECK(n.value.central <= n.value.high);
    CHECK_FALSE(n.value.quantity.empty());
  }
  if (f.margin()) {
    const decisions::verdict v = decisions::judge(f.margin()->value, f.useful);
    CHECK_MESSAGE(f.verdict == decisions::worse_of(v, f.verdict), f.id);
  } else {
    CHECK_MESSAGE((f.verdict == decisions::verdict::for_information ||
                   f.verdict == decisions::verdict::not_enough_known), f.id, " is judged without a margin");
  }
  if (f.verdict == decisions::verdict::not_enough_known) CHECK_FALSE((f.measure_next.empty() && f.note.empty()));
  return f;
}

/// A number of a finding by its id, and its place where there are several.
[[nodiscard]] inline amount number_of(const decisions::finding& f, std::string_view id, std::string_view place = {}) {
  const decisions::number* n = f.find(id, place);
  REQUIRE_MESSAGE(n, f.id, " has no number ", id, " ", place);
  return n->value;
}

}  // namespace tankwright::testing
