// SPDX-License-Identifier: BSL-1.0
#include <string>
#include <tankwright/plan/names.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {
const evidence apart{"tankwright::plan::letters_apart", kind::identity,
                     "the restricted edit distance, counted by hand"};
const evidence nearest{"tankwright::plan::nearest_name", kind::identity, "by hand"};
}  // namespace

TEST_CASE("letters apart: added, dropped, changed, swapped") {
  const auto is = [](std::string_view a, std::string_view b, std::size_t n) {
    CAPTURE(a);
    CAPTURE(b);
    TW_HOLDS(apart, plan::letters_apart(a, b) == n);
    TW_HOLDS(apart, plan::letters_apart(b, a) == n);
  };
  is("width", "width", 0);
  is("", "", 0);
  is("", "abc", 3);
  is("widht", "width", 1);   // swapped
  is("widh", "width", 1);    // dropped
  is("widths", "width", 1);  // added
  is("wadth", "width", 1);   // changed
  is("kitten", "sitting", 3);
  is("ca", "abc", 3);  // the restricted distance: no letter is touched twice
  const std::string long_word(1000, 'a');
  is(long_word, std::string(1000, 'b'), 64);  // the first 64 letters count: the work is bounded
}

TEST_CASE("letters apart: never more than the longer word, and a triangle with a third word") {
  const evidence property{"tankwright::plan::letters_apart", kind::property, "bounds of an edit distance"};
  const std::string_view words[] = {"", "a", "ab", "ba", "abc", "width", "height", "run_multiple", "running_level"};
  for (const auto a : words) {
    for (const auto b : words) {
      const std::size_t d = plan::letters_apart(a, b);
      TW_HOLDS(property, d <= std::max(a.size(), b.size()));
      TW_HOLDS(property, d + std::min(a.size(), b.size()) >= std::max(a.size(), b.size()));
      TW_HOLDS(property, (d == 0) == (a == b));
    }
  }
}

TEST_CASE("the nearest name, where one is near") {
  const std::string known[] = {"width", "height", "water_level", "run"};
  const auto near = [&](std::string_view written) { return plan::nearest_name(written, known); };
  TW_HOLDS(nearest, near("widht") == "width");
  TW_HOLDS(nearest, near("heigth") == "height");
  TW_HOLDS(nearest, near("waterlevel") == "water_level");
  TW_HOLDS(nearest, near("rim") == "");  // two of three letters differ
  TW_HOLDS(nearest, near("rum") == "run");
  TW_HOLDS(nearest, near("something else") == "");
  TW_HOLDS(nearest, plan::nearest_name("width", {}).empty());
}
