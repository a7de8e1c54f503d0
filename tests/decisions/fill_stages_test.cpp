// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/first_fill/fill_stages.hpp>

#include "decisions/asked.hpp"
#include "decisions/navier.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence by_hand{"tankwright::decisions::answer_fill_stages", kind::identity, "rho g h by hand"};

}  // namespace

TEST_CASE("fill stages: pressure, and the stress of a panel that is full") {
  // A panel of its own from the floor, full at the last stage: the same plate as in panels_test, by Navier's series.
  plan::build build = lagoon();
  give(build, {{"vessel.stages", "0.4 m, 0.65 m"}, {"vessel.panel[1].lower_edge", "0 m"}});
  const auto f = answered(decisions::fill_stages, build);
  TW_CHECK(by_hand, number(f, "pressure", "stage 1"), 1023.343 * 9.80665 * 0.4, relative(1e-5));
  TW_CHECK(by_hand, number(f, "level", "stage 2"), 0.65, relative(1e-15));
  const auto full = plate{2.2, 0.65, 0.0182, 71.7e9, 0.22}.under_water(1023.343);
  TW_CHECK(by_hand, number(f, "stress", "stage 2, front window"), full.stress, relative(2e-3));
  TW_CHECK(by_hand, number(f, "bulge", "stage 2, front window"), full.deflection, relative(2e-3));
  TW_CHECK(by_hand, number(f, "stop", "stage 2, front window"), 2.0 * full.deflection, relative(2e-3));
  CHECK(f.verdict == decisions::verdict::for_information);
  CHECK_FALSE(f.caution.empty());
}

TEST_CASE("fill stages: a bulge that a straight edge cannot show is left out") {
  const auto f = answered(decisions::fill_stages, lagoon());
  CHECK(f.find("bulge", "stage 2, front window") == nullptr);  // 0.009 mm
  CHECK(f.find("stop", "stage 2, front window") != nullptr);
  for (const auto& n : f.numbers) {
    if (n.id == "bulge") CHECK(n.value.central >= 1e-4);
  }
}

TEST_CASE("fill stages: the quarters of the water level where none are given, and nothing without panels") {
  plan::build build = lagoon();
  plan::clear(build, "vessel.stages");
  const auto f = answered(decisions::fill_stages, build);
  for (int i = 1; i <= 4; ++i) {
    TW_CHECK(by_hand, number(f, "level", "stage " + std::to_string(i)), 0.2 * i, relative(1e-14));
  }
  plan::clear(build, "vessel.panel");
  CHECK(asked(decisions::fill_stages, build).empty());
}
