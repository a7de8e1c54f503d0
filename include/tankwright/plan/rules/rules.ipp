// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/rules/hold.ipp>
#include <tankwright/plan/rules/life.ipp>
#include <tankwright/plan/rules/plumbing.ipp>
#include <tankwright/plan/rules/room.ipp>
#include <tankwright/plan/rules/rules.hpp>
#include <tankwright/plan/rules/vessel.ipp>
#include <tankwright/plan/rules/water.ipp>

namespace tankwright::plan {

TANKWRIGHT_INLINE void hold_rules(const build& build, std::vector<mistake>& all) {
  rules::book book{all, *build.units};
  if (!build.vessel && !build.hold && !build.plumbing && !build.water && !build.room && !build.life) {
    book.refuse({}, "nothing to assess; expected a table such as [water]");
  }
  rules::hold_vessel(build, book);
  rules::hold_leak_test(build, book);
  rules::hold_plumbing(build, book);
  rules::hold_water(build, book);
  rules::hold_room(build, book);
  rules::hold_life(build, book);
}

}  // namespace tankwright::plan
