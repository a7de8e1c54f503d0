// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/plan/value.hpp>
#include <type_traits>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using plan::by_default;
using plan::value;
using plan::values;

namespace {
const evidence about{"tankwright::plan::by_default", kind::identity, "by hand"};
enum class side { left, right };
}  // namespace

TEST_CASE("a value is unknown, given, or taken by default; and can be taken back") {
  value<length> v;
  TW_HOLDS(about, !v.given() && !v.known() && !v);
  CHECK_THROWS_AS((void)v.get(), invalid_input);
  TW_HOLDS(about, !v.maybe().has_value());
  TW_CHECK(about, v.value_or(metres(3.0)), metres(3.0), relative(0.0));
  v = millimetres(35.0);
  TW_HOLDS(about, v.given() && v.known() && !v.has_default());
  TW_CHECK(about, *v, metres(0.035), relative(1e-15));
  v.clear();
  TW_HOLDS(about, !v.known());

  value<length> d = by_default(metres(1.0));
  TW_HOLDS(about, !d.given() && d.known() && d.has_default());
  TW_CHECK(about, d.get(), metres(1.0), relative(0.0));
  d = metres(2.0);
  TW_HOLDS(about, d.given() && d.default_si() == 1.0);
  d.clear();
  TW_CHECK(about, d.get(), metres(1.0), relative(0.0));
}

TEST_CASE("a wrong quantity does not compile, a temperature is a point") {
  static_assert(std::is_constructible_v<value<length>, length>);
  static_assert(!std::is_constructible_v<value<length>, volume>);
  static_assert(!std::is_constructible_v<value<length>, double>);
  static_assert(!std::is_constructible_v<value<temperature>, temperature_difference>);
  const value<temperature> t = celsius(25.0);
  TW_CHECK(about, t.si(), 298.15, relative(1e-15));
}

TEST_CASE("a search moves a number, and unit and doubt stay") {
  value<length> v;
  v.give(0.035, "mm", {0.005, true});
  v.move_to(0.040);
  TW_HOLDS(about, v.si() == 0.040 && v.unit() == "mm" && v.doubt().half_width == 0.005);
  v = metres(1.0);  // somebody says it anew: nothing is left of what was known before
  TW_HOLDS(about, v.unit().empty() && !v.doubt().given);
}

TEST_CASE("values are equal by their number and doubt, whatever unit they were written in; unknown ones are equal") {
  value<length> a, b;
  TW_HOLDS(about, a == b);
  a.give(1.0, "m");
  TW_HOLDS(about, !(a == b));
  b.give(1.0, "mm");
  TW_HOLDS(about, a == b);
  b.give(1.0, "mm", {0.1, true});
  TW_HOLDS(about, !(a == b));
}

TEST_CASE("a list of quantities") {
  values<length> list{metres(1.0), metres(2.0)};
  TW_HOLDS(about, list.given() && list.size() == 2);
  TW_CHECK(about, list[1], metres(2.0), relative(0.0));
  TW_HOLDS(about, list.get().size() == 2);
  values<length> same{std::vector<length>{metres(1.0), metres(2.0)}};
  TW_HOLDS(about, list == same);
  list.add(3.0);
  TW_HOLDS(about, !(list == same));
  TW_HOLDS(about, !values<length>{}.given());
}

TEST_CASE("a word, and a flag") {
  plan::word<side> w;
  TW_HOLDS(about, !w.known());
  CHECK_THROWS_AS((void)w.get(), invalid_input);
  TW_HOLDS(about, w.value_or(side::right) == side::right);
  w = side::right;
  TW_HOLDS(about, w.given() && *w == side::right && w.index() == 1);
  w.clear();
  TW_HOLDS(about, !w.known());
  plan::word<side> d = plan::word_by_default(side::right);
  TW_HOLDS(about, !d.given() && *d == side::right);
  d = side::left;
  d.clear();
  TW_HOLDS(about, *d == side::right);

  plan::flag f;
  TW_HOLDS(about, !f && !f.given());
  f = true;
  TW_HOLDS(about, f && f.given());
  plan::flag on = plan::flag::by_default(true);
  TW_HOLDS(about, on && !on.given() && on.default_value());
  on = false;
  TW_HOLDS(about, !on && on.given());
  on.clear();
  TW_HOLDS(about, on && !on.given());
}
