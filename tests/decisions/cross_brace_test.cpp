// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/closing/cross_brace.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence by_hand{"tankwright::decisions::answer_cross_brace", kind::identity, "a beam by hand"};

}  // namespace

TEST_CASE("cross-brace: pull, bending and sag by hand") {
  const auto f = answered(decisions::cross_brace, lagoon());
  // The rail carries rho g H^2/6; one brace in the middle of it 5/4 of the load on half the rail.
  const double rail = 1023.343 * 9.80665 * 0.85 * 0.85 / 6.0;
  const double pull = 1.25 * rail * 1.2;
  TW_CHECK(by_hand, number(f, "pull"), pull, relative(1e-6));
  TW_CHECK(by_hand, number(f, "tributary"), rail * 1.2, relative(1e-6));
  // Two lights of 12 kg at 0.3 m from either end, and the bar's own weight.
  const double own = 0.045 * 0.09 * 600.0 * 9.80665, light = 12.0 * 9.80665;
  const double moment = light * 0.3 + own / 8.0;
  const double modulus = 0.045 * 0.09 * 0.09 / 6.0, inertia = 0.045 * 0.09 * 0.09 * 0.09 / 12.0;
  TW_CHECK(by_hand, number(f, "stress"), pull / (0.045 * 0.09) + moment / modulus, relative(1e-5));
  // Sag without the pull, which hardly straightens it: P a (3 L^2 - 4 a^2)/(24 E I) + 5 w L^4/(384 E I).
  TW_CHECK(by_hand, number(f, "sag"), (light * 0.3 * (3.0 - 0.36) / 24.0 + 5.0 * own / 384.0) / (10e9 * inertia),
           relative(5e-3));
  TW_CHECK(by_hand, number(f, "joint_left"), 1.0 - pull / 2000.0, relative(1e-4));
  judged(f, verdict::thin_margin, "joint_left", "fixing of brace");
  CHECK(f.consequence == decisions::consequence::injury);
}

TEST_CASE("cross-brace: fixing and bar on each side of what they hold, and at it") {
  judged(answered(decisions::cross_brace, lagoon(), {{"vessel.brace.joint", "2.1 kN"}}), verdict::holds, "joint_left");
  judged(answered(decisions::cross_brace, lagoon(), {{"vessel.brace.joint", "1.8 kN"}}), verdict::does_not_hold,
         "joint_left");
  const double pull = number(answered(decisions::cross_brace, lagoon()), "pull");
  plan::build exact = lagoon();
  plan::set_si(exact, "vessel.brace.joint", pull);
  judged(answered(decisions::cross_brace, exact), verdict::does_not_hold, "joint_left");
  judged(
      answered(decisions::cross_brace, lagoon(), {{"vessel.brace.joint", "9 kN"}, {"vessel.brace.allowable", "1 MPa"}}),
      verdict::does_not_hold, "stress_left", "brace");
}

TEST_CASE("cross-brace: an unknown fixing is not enough known, unless the bar itself breaks") {
  plan::build build = lagoon();
  plan::clear(build, "vessel.brace.joint");
  const auto f = answered(decisions::cross_brace, build);
  CHECK(f.verdict == verdict::not_enough_known);
  CHECK_FALSE(f.measure_next.empty());
  judged(answered(decisions::cross_brace, build, {{"vessel.brace.depth", "15 mm"}}), verdict::does_not_hold,
         "stress_left");
  plan::clear(build, "vessel.brace");
  CHECK(asked(decisions::cross_brace, build).empty());
}
