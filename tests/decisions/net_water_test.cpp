// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/bottom/net_water.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence by_hand{"tankwright::decisions::answer_net_water", kind::identity, "volumes by hand"};

}  // namespace

TEST_CASE("net water: gross less grains, rock and pumps; free water less the pores too") {
  const auto f = answered(decisions::net_water, lagoon());
  const double n = vessel::aragonite_sand.pores.central.value(), r = vessel::reef_rock.pores.central.value();
  const double sand = 2.4 * 0.16;
  const double rock = 46.0 / vessel::reef_rock.grain_density.central.value() + 5.1 / 1023.343;
  TW_CHECK(by_hand, number(f, "gross"), 1.92, relative(1e-13));
  TW_CHECK(by_hand, number(f, "kept_out"), sand * (1.0 - n) + rock + 0.003, relative(1e-5));
  TW_CHECK(by_hand, number(f, "net"), 1.92 - sand * (1.0 - n) - rock - 0.003, relative(1e-5));
  TW_CHECK(by_hand, number(f, "pores"), sand * n + rock * r / (1.0 - r), relative(1e-5));
  TW_CHECK(by_hand, number(f, "free"), 1.92 - sand - rock / (1.0 - r) - 0.003, relative(1e-5));
  CHECK(f.verdict == verdict::for_information);
  CHECK(f.find("total") == nullptr);
}

TEST_CASE("net water: with the sump where it is known, and a bare display is told what is missing") {
  plan::build build = lagoon();
  give_overflow(build);
  plan::clear(build, "plumbing.pump");  // still water: 0.25 m in the last chamber; the first holds up to its baffle
  const auto f = answered(decisions::net_water, build);
  const double sump = number(f, "total") - number(f, "net");
  TW_HOLDS(by_hand, sump > 0.3 * 0.25 && sump < 0.54 * 0.45);
  plan::build bare;
  give(bare,
       {{"vessel.length", "2 m"}, {"vessel.width", "1 m"}, {"vessel.height", "1 m"}, {"vessel.water_level", "0.5 m"}});
  const auto empty = answered(decisions::net_water, bare);
  TW_CHECK(by_hand, number(empty, "net"), 1.0, relative(1e-14));
  CHECK(empty.measure_next.size() == 2);
  CHECK(asked(decisions::net_water, {}).empty());
}
