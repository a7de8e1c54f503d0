// SPDX-License-Identifier: BSL-1.0
#include <string>
#include <tankwright/core/units.hpp>
#include <tankwright/plan/leaf_text.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

evidence about(const char* function) {
  return {std::string{"tankwright::plan::"} + function, kind::identity, "by hand"};
}

plan::key_info length_key() { return {.name = "run", .means = "a run", .quantity = "length"}; }

}  // namespace

TEST_CASE("a quantity with its unit and its doubt, there and back") {
  plan::value<length> v;
  const auto read = [&](std::string_view text) { plan::give_quantity(v, "length", text); };
  const auto written = [&] { return plan::quantity_text(v, "length"); };
  TW_HOLDS(about("quantity_text"), written().empty());
  read("35 mm");
  TW_CHECK(about("give_quantity"), v.get(), metres(0.035), relative(1e-15));
  TW_HOLDS(about("quantity_text"), written() == "35 mm" && v.unit() == "mm" && !v.doubt().given);
  read("35 mm +/- 5 mm");
  TW_CHECK(about("give_quantity"), v.doubt().half_width, 0.005, relative(1e-15));
  TW_HOLDS(about("quantity_text"), written() == "35 mm +/- 5 mm");
  read("35 mm ± 10 %");
  TW_CHECK(about("give_quantity"), v.doubt().half_width, 0.0035, relative(1e-12));
  read("30 mm .. 40 mm");
  TW_CHECK(about("give_quantity"), v.get(), metres(0.035), relative(1e-15));
  TW_CHECK(about("give_quantity"), v.doubt().half_width, 0.005, relative(1e-12));
  read("1 3/8 in");
  TW_CHECK(about("give_quantity"), v.get(), metres(1.375 * 0.0254), relative(1e-15));
  for (const std::string_view wrong :
       {"", "35", "35 kg", "mm", "35 mm +/- -5 mm", "40 mm .. 30 mm", "35 mm 3", "nan"}) {
    CAPTURE(wrong);
    const plan::value<length> before = v;
    CHECK_THROWS_AS(read(wrong), text_error);
    TW_HOLDS(about("give_quantity"), v == before);
  }
  plan::value<temperature> t;
  plan::give_quantity(t, "temperature", "77 °F +/- 1 K");
  TW_CHECK(about("give_quantity"), t.get(), celsius(25.0), relative(1e-14));
  TW_CHECK(about("give_quantity"), t.doubt().half_width, 1.0, relative(1e-14));
}

TEST_CASE("words: those of the list, and the nearest is said") {
  enum class side { left, right };
  plan::word<side> w;
  const std::string_view words[] = {"left", "right"};
  const plan::leaf here{.key = {.name = "side", .means = "a side"}, .word = &w, .words = words};
  plan::give_word(here, "right");
  TW_HOLDS(about("give_word"), *w == side::right);
  TW_HOLDS(about("text_at"), plan::text_at(here) == "right");
  CHECK_THROWS_WITH_AS(plan::give_word(here, "rigth"),
                       "\"rigth\" is not known here; did you mean \"right\"?; expected \"left\", \"right\"",
                       text_error);
  CHECK_THROWS_AS(plan::give_word(here, ""), text_error);
  CHECK_THROWS_AS(plan::give_word(here, "Right"), text_error);
  TW_HOLDS(about("give_word"), *w == side::right);
}

TEST_CASE("flags and texts") {
  plan::flag f;
  const plan::leaf yes{.key = {.name = "on", .means = "on"}, .yes = &f};
  TW_HOLDS(about("text_at"), plan::text_at(yes).empty());
  plan::give_text(yes, "true");
  TW_HOLDS(about("give_text"), f && plan::text_at(yes) == "true");
  CHECK_THROWS_AS(plan::give_text(yes, "yes"), text_error);
  std::string t;
  const plan::leaf text{.key = {.name = "title", .means = "a title"}, .text = &t};
  plan::give_text(text, "a, b \"c\"");
  TW_HOLDS(about("give_text"), t == "a, b \"c\"" && plan::text_at(text) == t);
}

TEST_CASE("a list is replaced when all of it can be read, and only then; one element can be set") {
  plan::values<length> list;
  const plan::leaf here{.key = length_key(), .numbers = &list};
  plan::give_text(here, "1 m, 20 cm , 3 mm +/- 1 mm");
  TW_HOLDS(about("give_text"), list.size() == 3);
  TW_CHECK(about("give_text"), list[1], metres(0.2), relative(1e-15));
  TW_HOLDS(about("text_at"), plan::text_at(here) == "1 m, 20 cm, 3 mm +/- 1 mm");
  CHECK_THROWS_AS(plan::give_text(here, "1 m, 2 kg"), text_error);
  CHECK_THROWS_AS(plan::give_text(here, "1 m,, 2 m"), text_error);
  TW_HOLDS(about("give_text"), list.size() == 3);
  plan::leaf second = here;
  second.element = 2;
  plan::give_text(second, "5 m");
  TW_HOLDS(about("text_at"), plan::text_at(second) == "5 m" && list.size() == 3);
  second.element = 4;
  plan::give_text(second, "6 m");
  TW_HOLDS(about("give_text"), list.size() == 4 && plan::text_at(second) == "6 m");
}
