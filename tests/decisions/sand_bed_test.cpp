// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/bottom/sand_bed.hpp>

#include <cmath>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence by_hand{"tankwright::decisions::answer_sand_bed", kind::identity, "phase relations by hand"};

}  // namespace

TEST_CASE("sand bed: mass, depth, displacement and slope by hand") {
  const auto f = answered(decisions::sand_bed, lagoon());
  // 2.4 m2 of 0.16 m; aragonite grains of 2850 kg/m3 with 0.45 of pores, as `vessel/grains.hpp` gives them.
  const double grains = 2.4 * 0.16 * (1.0 - vessel::aragonite_sand.pores.central.value());
  const double density = vessel::aragonite_sand.grain_density.central.value();
  TW_CHECK(by_hand, number(f, "dry"), grains * density, relative(1e-13));
  TW_CHECK(by_hand, number(f, "keeps_out"), grains, relative(1e-13));
  TW_CHECK(by_hand, number(f, "submerged"), grains * (density - 1023.343), relative(1e-5));
  TW_CHECK(by_hand, number(f, "depth"), 0.16, relative(1e-13));
  TW_CHECK(by_hand, number(f, "slope", "sand"), std::atan(0.16), relative(1e-14));
  judged(f, verdict::holds, "left", "sand");
}

TEST_CASE("sand bed: a slope on each side of its angle of repose, and at it") {
  const double at_rest = 0.16 / std::tan(33.0 * std::acos(-1.0) / 180.0);
  const auto with_run = [&](double run) {
    plan::build build = lagoon();
    plan::set_si(build, "vessel.sand[1].run", run);
    return answered(decisions::sand_bed, build);
  };
  judged(with_run(1.01 * at_rest), verdict::holds, "left");
  judged(with_run(0.99 * at_rest), verdict::does_not_hold, "left");
  plan::build exact = lagoon();
  give(exact, {{"vessel.sand[1].run", "0.16 m"}});
  plan::set_si(exact, "vessel.sand[1].repose", std::atan2(0.24 - 0.08, 0.16));
  judged(answered(decisions::sand_bed, exact), verdict::does_not_hold, "left");
  // Of two beds the steeper one decides.
  const auto two = answered(decisions::sand_bed, lagoon(),
                            {{"vessel.sand[2].shallow_end", "0 m"},
                             {"vessel.sand[2].deep_end", "0.2 m"},
                             {"vessel.sand[2].run", "0.2 m"},
                             {"vessel.sand[2].area", "0.2 m²"}});
  judged(two, verdict::does_not_hold, "left", "sand 2");
}

TEST_CASE("sand bed: sold by the bag, a part of a bag is a whole one") {
  plan::build build = lagoon();
  plan::clear(build, "vessel.sand[1]");
  give(build, {{"vessel.sand[1].mass", "150 kg"}, {"vessel.sand[1].bag", "20 kg"}});
  // 150/20 = 7.5
  TW_CHECK(by_hand, number(answered(decisions::sand_bed, build), "bags"), 8.0, relative(0.0));
  give(build, {{"vessel.sand[1].mass", "160 kg"}});
  TW_CHECK(by_hand, number(answered(decisions::sand_bed, build), "bags"), 8.0, relative(0.0));
  give(build, {{"vessel.sand[1].mass", "160.1 kg"}});
  TW_CHECK(by_hand, number(answered(decisions::sand_bed, build), "bags"), 9.0, relative(0.0));
}

TEST_CASE("sand bed: a level bed has nothing to judge, and without sand nothing is asked") {
  plan::build build = lagoon();
  plan::clear(build, "vessel.sand[1]");
  CHECK(asked(decisions::sand_bed, build).empty());
  give(build, {{"vessel.sand[1].mass", "150 kg"}});
  const auto f = answered(decisions::sand_bed, build);
  TW_CHECK(by_hand, number(f, "dry"), 150.0, relative(1e-15));
  CHECK(f.verdict == verdict::for_information);
}
