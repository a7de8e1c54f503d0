// SPDX-License-Identifier: BSL-1.0
// Every rule of [hold], with a plan that breaks it and one at its edge.
#include "plan/mistakes.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

plan::build tested() {
  plan::build build = lagoon();
  test_for_leaks(build);
  return build;
}

}  // namespace

TEST_CASE("hold rules: a sound test passes, alone or in its display, done, planned or begun") {
  accepted(tested(), {});
  plan::build alone;
  test_for_leaks(alone);
  accepted(alone, {});
  plan::clear(alone, "hold.planned");
  accepted(alone, {});
  accepted(alone, {{"hold.times", "0 h, 12 h"},
                   {"hold.levels", "800 mm, 799 mm"},
                   {"hold.pan", "60 mm, 60 mm"},
                   {"hold.water", "20 °C, 20 °C"}});  // two readings so far
}

TEST_CASE("hold rules: the series stand side by side, in order") {
  refused(tested(), {{"hold.levels", "800 mm, 799 mm"}}, "hold.levels", "has 2 entries, times has 9", "hold.times");
  refused(tested(), {{"hold.pan", "60 mm"}}, "hold.pan", "has 1 entries, times has 9", "hold.times");
  refused(tested(), {{"hold.water", "19 °C"}}, "hold.water", "has 1 entries, times has 9", "hold.times");
  refused(tested(), {{"hold.reader", "1, 2"}}, "hold.reader", "has 2 entries, times has 9", "hold.times");
  refused(tested(), {{"hold.times", "0 h, 12 h, 24 h, 36 h, 48 h, 48 h, 72 h, 84 h, 96 h"}}, "hold.times[6]",
          "2 d is not later than the reading before it, 2 d", "hold.times[5]");
  accepted(tested(), {{"hold.times", "0 h, 12 h, 24 h, 36 h, 48 h, 48 h, 72 h, 84 h, 96 h"},
                      {"hold.reader", "1, 1, 1, 1, 1, 2, 2, 2, 2"}});  // two people at one time
  plan::build half = tested();
  plan::clear(half, "hold.levels");
  refused(half, {}, "hold.times", "needs levels beside it");
}

TEST_CASE("hold rules: what readings need, and what they can show") {
  plan::build no_depth = tested();
  plan::clear(no_depth, "hold.depth");
  refused(no_depth, {}, "hold.depth", "is missing: readings need it", "hold.times");
  plan::build no_step = tested();
  plan::clear(no_step, "hold.resolution");
  refused(no_step, {}, "hold.resolution", "is missing: readings need it", "hold.times");
  refused(tested(), {{"hold.levels[4]", "795 cm"}}, "hold.levels", "is more than the water is deep, 0.8 m",
          "hold.depth");
  refused(tested(), {{"hold.pan[4]", "570 cm"}}, "hold.pan", "is more than the water is deep, 0.8 m", "hold.depth");
  refused(tested(), {{"hold.resolution", "1 m"}}, "hold.resolution", "is more than the water is deep", "hold.depth");
  refused(tested(), {{"hold.criterion", "BS 5337"}}, "hold.capacity", "is missing: a criterion needs it",
          "hold.criterion");
  accepted(tested(), {{"hold.criterion", "BS 5337"}, {"hold.capacity", "1920 L"}});
  refused(tested(), {{"hold.air_temperature", "20 °C"}}, "hold.air_temperature", "needs air_humidity beside it");
  plan::build nothing;
  give(nothing, {{"hold.surface", "2 m²"}});
  refused(nothing, {}, "hold", "needs the readings of a test");
}

TEST_CASE("hold rules: one leak that would matter") {
  refused(tested(), {{"hold.leak", "1 L/d"}}, "hold.planned.leak", "is given beside the leak of [hold]", "hold.leak");
}

TEST_CASE("hold rules: the test is of this display") {
  refused(tested(), {{"hold.surface", "24 m²"}}, "hold.surface", "24 m² is more than the display has, 2.4 m²",
          "vessel.length");
  accepted(tested(), {{"hold.surface", "2.47 m²"}});
  refused(tested(), {{"hold.depth", "0.90 m"}}, "hold.depth", "is above the rim of the display, 0.85 m",
          "vessel.height");
  refused(tested(), {{"hold.capacity", "19200 L"}}, "hold.capacity",
          "is more than the display holds up to its rim, 2040 L", "vessel.height");
}
