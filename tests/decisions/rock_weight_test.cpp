// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/bottom/rock_weight.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence by_hand{"tankwright::decisions::answer_rock_weight", kind::identity, "Archimedes by hand"};

}  // namespace

TEST_CASE("rock weight: dry, wet and under water by Archimedes") {
  const auto f = answered(decisions::rock_weight, lagoon());
  const double grain = vessel::reef_rock.grain_density.central.value();
  TW_CHECK(by_hand, number(f, "dry"), 60.2, relative(1e-14));
  // The arch hung in the same water: what the scale read then.
  TW_CHECK(by_hand, number(f, "down", "arch"), 9.1, relative(1e-3));
  TW_CHECK(by_hand, number(f, "down", "outcrops"), 46.0 * (1.0 - 1023.343 / grain), relative(1e-5));
  TW_CHECK(by_hand, number(f, "submerged"), 9.1 + 46.0 * (1.0 - 1023.343 / grain), relative(1e-3));
  TW_CHECK(by_hand, number(f, "keeps_out"), 46.0 / grain + 5.1 / 1023.343, relative(1e-5));
  judged(f, verdict::holds, "down", "arch");
}

TEST_CASE("rock weight: rock full of air may float, and heavy rock does not hold it down") {
  plan::build build = lagoon();
  give(build, {{"vessel.rock[1].flooded_pores", "0 %"}});
  const auto f = answered(decisions::rock_weight, build);
  judged(f, verdict::thin_margin, "down", "outcrops");
  CHECK_FALSE(f.note.empty());
  give(build, {{"vessel.rock[1].kind", "branch tips"},
               {"vessel.rock[3].label", "anchor"},
               {"vessel.rock[3].dry_mass", "200 kg"},
               {"vessel.rock[3].submerged_mass", "120 kg"}});
  const auto tips = answered(decisions::rock_weight, build);
  CHECK(tips.verdict != verdict::holds);
  CHECK(tips.margin()->place == "outcrops");
  plan::clear(build, "vessel.rock");
  CHECK(asked(decisions::rock_weight, build).empty());
}

TEST_CASE("rock weight: what weighs nothing under water does not hold") {
  const auto f = answered(decisions::rock_weight, lagoon(), {{"vessel.rock[2].submerged_mass", "0 kg"}});
  // All of its dry mass is carried by the water it hung in, which is that of the display.
  TW_CHECK(by_hand, number(f, "down", "arch"), 0.0, within(kilograms(0.02)));
  CHECK(f.verdict != verdict::holds);
}
