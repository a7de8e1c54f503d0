// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <tankwright/decisions/figures/hold_figures.hpp>
#include <tankwright/decisions/first_fill/leak.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence by_hand{"tankwright::decisions::answer_leak", kind::identity, "least squares by hand"};
const evidence drawn{"tankwright::decisions::figures_of", kind::identity, "least squares by hand"};
const evidence evaporated{"tankwright::decisions::case_of", kind::identity, "a latent heat and a humidity by hand"};

/// 2 m2 of water, read every 12 hours for `days` with a pan by a gauge of 0.1 mm; falls `fall` mm/d beyond the pan.
plan::build falling(double fall, int days) {
  plan::build build;
  give(build, {{"hold.surface", "2 m²"}, {"hold.depth", "0.75 m"}, {"hold.resolution", "0.1 mm"}});
  for (int i = 0; i <= 2 * days; ++i) {
    build.hold->times.add(43200.0 * i);
    build.hold->levels.add(0.75 - 1e-3 * (fall + 2.0) * i / 2.0);
    build.hold->pan.add(0.06 - 1e-3 * i);
  }
  return build;
}

}  // namespace

TEST_CASE("leak: a proven leak does not hold, whatever a reservoir might lose") {
  // 0.4 L/d where a reservoir of 1500 L may lose 0.75 L/d.
  plan::build build = falling(0.2, 5);
  give(build, {{"hold.criterion", "AWWA D110"}, {"hold.capacity", "1500 L"}});
  const auto f = answered(decisions::leak, build);
  TW_CHECK(by_hand, number(f, "leak"), 0.2e-3 * 2.0 / 86400.0, relative(1e-9));
  TW_CHECK(by_hand, number(f, "fall"), 0.2e-3 / 86400.0, relative(1e-9));
  TW_CHECK(by_hand, number(f, "criterion"), 0.0005 * 1.5 / 86400.0, relative(1e-12));
  TW_CHECK(by_hand, number(f, "lasted"), 5.0 * 86400.0, relative(1e-14));
  judged(f, verdict::does_not_hold, "unproven");
  CHECK(f.happens.find("0.4 L/d") != std::string::npos);
  CHECK(f.consequence == decisions::consequence::flood);
}

TEST_CASE("leak: excluded where one that matters would have shown, undecided where it may hide") {
  const auto tight = answered(decisions::leak, falling(0.0, 7));
  judged(tight, verdict::holds, "unproven");
  TW_HOLDS(by_hand, tight.find("leak")->value.high < number(tight, "matters"));
  TW_CHECK(by_hand, number(tight, "matters"), 1e-3 / 86400.0, relative(1e-12));  // a litre a day
  // The same days with a gauge of a centimetre show nothing.
  const auto coarse = answered(decisions::leak, falling(0.0, 7), {{"hold.resolution", "10 mm"}});
  CHECK(coarse.verdict == verdict::not_enough_known);
  CHECK_FALSE(coarse.measure_next.empty());
  // A smaller leak matters: these days do not exclude it.
  CHECK(answered(decisions::leak, falling(0.0, 7), {{"hold.leak", "0.01 L/d"}}).verdict == verdict::not_enough_known);
}

TEST_CASE("leak: too few readings and a level that rises are not enough known") {
  const auto begun =
      answered(decisions::leak, falling(0.5, 1),
               {{"hold.times", "0 h, 12 h"}, {"hold.levels", "750 mm, 749 mm"}, {"hold.pan", "60 mm, 60 mm"}});
  CHECK(begun.verdict == verdict::not_enough_known);
  CHECK(begun.note.find("too few") != std::string::npos);
  const auto rising = answered(decisions::leak, falling(-1.0, 7));
  CHECK(rising.verdict == verdict::not_enough_known);
  CHECK(rising.note.find("topped it up") != std::string::npos);
}

TEST_CASE("leak: without a pan the air of the room says what evaporates") {
  plan::build build = falling(0.0, 7);
  build.hold->pan.items.clear();
  const auto no_air = answered(decisions::leak, build);
  TW_CHECK(by_hand, number(no_air, "evaporation"), 0.0, within(metres_per_second(1e-18)));
  const auto f =
      answered(decisions::leak, build,
               {{"hold.air_temperature", "20 °C"}, {"hold.air_humidity", "50 %"}, {"hold.water_temperature", "20 °C"}});
  // A still surface of a room at 20 degC and 50 %: 1 to 3 mm a day (pools at rest, common practice).
  TW_HOLDS(evaporated, number(f, "evaporation") > 0.5e-3 / 86400.0 && number(f, "evaporation") < 4e-3 / 86400.0);
  TW_HOLDS(evaporated, number(f, "leak") < number(no_air, "leak"));
  CHECK_FALSE(f.measure_next.empty());
}

TEST_CASE("leak: the picture has the readings, the fitted line and a tight tank") {
  const auto figures = decisions::figures_of(decisions::case_of(plan::inputs_of(*falling(0.2, 5).hold)));
  REQUIRE(figures.size() == 1);
  CHECK(figures[0].id == "hold.leak");
  REQUIRE(figures[0].curves.size() == 3);
  CHECK(figures[0].curves[2].x.size() == 11);
  TW_CHECK(drawn, figures[0].curves[0].y.front() - figures[0].curves[0].y.back(), 1e-3,
           relative(1e-9));  // 5 d of 0.2 mm/d
  TW_CHECK(drawn, figures[0].curves[2].y.back(), 0.0, within(metres(1e-15)));
  TW_CHECK(drawn, figures[0].curves[1].y.front(), figures[0].curves[1].y.back(), within(metres(1e-15)));  // with a pan
  plan::build planned;
  give(planned, {{"hold.surface", "2 m²"}, {"hold.planned.resolution", "1 mm"}});
  CHECK(asked(decisions::leak, planned).empty());
  CHECK(asked(decisions::leak, {}).empty());
}
