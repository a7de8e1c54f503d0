// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/oxygen_use.hpp>
#include <tankwright/plan/description.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/room/air.hpp>
#include <tankwright/text/written.hpp>

#include "plan/basin.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {
evidence made(const char* function) { return {function, kind::property, "as described"}; }
}  // namespace

TEST_CASE("description: usual doubts and defaults are what they are made of") {
  TW_CHECK(made("tankwright::plan::known_within"), plan::known_within(percent(3.0)).size, 0.03, relative(1e-15));
  TW_CHECK(made("tankwright::plan::known_within_factor"), plan::known_within_factor(2.0).size, 2.0, relative(1e-15));
  enum class letter { a, b };
  const auto word = plan::word_by_default(letter::b);
  TW_HOLDS(made("tankwright::plan::word_by_default"), (!word.given() && word.get() == letter::b));
}

TEST_CASE("description: a path finds the key it names, with what is said of it") {
  plan::build build = basin();
  bool found = false;
  plan::at_path(build, "plumbing.return[return].below_edge", false, [&](const plan::leaf& here) {
    found = here.number && here.key.quantity == "length" && here.key.set_by == plan::set_by::chosen;
  });
  TW_HOLDS(made("tankwright::plan::at_path"), found);
}

TEST_CASE("description: examples and SI units of quantities can be read back") {
  TW_HOLDS(made("tankwright::text::example_of"), text::read_written(text::example_of("length"), "length").si == 2.40);
  TW_HOLDS(made("tankwright::text::si_unit"), text::si_unit("flow_rate") == "m3/s");
  TW_CHECK(made("tankwright::room::in_grams_per_kilogram"),
           room::in_grams_per_kilogram(room::humidity_ratio::from_grams_per_kilogram(8.0)), 8.0, relative(1e-14));
  TW_CHECK(made("tankwright::life::in_milligrams_per_kilogram_hour"),
           life::in_milligrams_per_kilogram_hour(life::specific_oxygen_use::from_milligrams_per_kilogram_hour(180.0)), 180.0, relative(1e-14));
}
