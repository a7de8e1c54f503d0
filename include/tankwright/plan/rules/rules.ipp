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
  rules::book book{all};
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

TANKWRIGHT_INLINE std::string rules::said(double si, std::string_view quantity) {
  std::string_view unit = text::everyday_unit(amount{quantity, si, si, si}, text::unit_system::si);
  if (quantity == "length") unit = "m";
  if (quantity == "area") unit = "m²";
  if (quantity == "volume") unit = "L";
  if (quantity == "duration") unit = "d";
  return text::in(amount{quantity, si, si, si}, unit, text::significant(6));
}

TANKWRIGHT_INLINE void rules::book::clash(const std::string& path, double value, std::string_view is_past, double most,
                                          const std::string& other, std::string_view quantity) {
  refuse(path, said(value, quantity) + " " + std::string{is_past} + " " + said(most, quantity), other);
}

}  // namespace tankwright::plan
