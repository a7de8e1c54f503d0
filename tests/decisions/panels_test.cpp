// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <numbers>
#include <tankwright/decisions/first_fill/panels.hpp>

#include "decisions/asked.hpp"
#include "decisions/navier.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence by_series{"tankwright::decisions::answer_panels", kind::identity, "Navier's double series, in the test"};

}  // namespace

TEST_CASE("panels: stress, bulge and push of the lagoon's windows by Navier's series") {
  const auto f = answered(decisions::panels, lagoon());
  const double rho = 1023.343;  // S 35, 25 degC: UNESCO 1983 tables, kg/m3
  const plate front{2.2, 0.65, 0.0182, 71.7e9, 0.22};
  const auto bent = front.under_water(rho);
  TW_CHECK(by_series, number(f, "stress", "front window"), bent.stress, relative(2e-3));
  TW_CHECK(by_series, number(f, "used", "front window"), bent.stress / 5e6, relative(2e-3));
  TW_CHECK(by_series, number(f, "bulge", "front window"), bent.deflection, relative(2e-3));
  TW_CHECK(by_series, number(f, "push", "front window"), 0.5 * rho * 9.80665 * 0.65 * 0.65 * 2.2, relative(1e-4));
  // Acrylic creeps: the long-term modulus is 1.35 GPa.
  const auto creeping = plate{0.8, 0.65, 0.025, 1.35e9, 0.38}.under_water(rho);
  TW_CHECK(by_series, number(f, "stress", "end window"), creeping.stress, relative(2e-3));
  TW_CHECK(by_series, number(f, "bulge", "end window"), creeping.deflection, relative(2e-3));
  judged(f, verdict::holds, "stress_left", "front window");
  TW_CHECK(by_series, f.margin()->value.central, 1.0 - bent.stress / 5e6, within(fraction(2e-3)));
  CHECK(f.consequence == decisions::consequence::injury);
  CHECK_FALSE(f.caution.empty());
}

TEST_CASE("panels: the verdict on each side of the allowable stress, and at it") {
  const auto stress = number(answered(decisions::panels, lagoon()), "stress", "front window");
  const auto with = [&](double times) {
    plan::build build = lagoon();
    plan::set_si(build, "vessel.panel[1].allowable", stress * times);
    return answered(decisions::panels, build);
  };
  judged(with(1.2), verdict::holds, "stress_left");
  judged(with(1.05), verdict::thin_margin, "stress_left", "front window");
  judged(with(0.999), verdict::does_not_hold, "stress_left", "front window");
  const auto at_it = with(1.0);
  CHECK(number(at_it, "stress_left", "front window") == 0.0);
  judged(at_it, verdict::does_not_hold, "stress_left", "front window");
  CHECK(with(0.8).happens.find("The front window bears 125 % of the stress") == 0);
}

TEST_CASE("panels: acrylic is judged by its bulge too, and past the theory nobody knows") {
  // The bulge grows with the third power of 25 mm over the thickness.
  const auto f = answered(decisions::panels, lagoon(), {{"vessel.panel[2].thickness", "16.8 mm"}});
  judged(f, verdict::thin_margin, "bulge_left", "end window");
  judged(answered(decisions::panels, lagoon(), {{"vessel.panel[2].thickness", "16 mm"}}), verdict::does_not_hold,
         "bulge_left", "end window");
  // A glass window that bulges by more than half its thickness within its stress: not enough known.
  const auto thin = answered(decisions::panels, lagoon(),
                             {{"vessel.panel[1].thickness", "3 mm"}, {"vessel.panel[1].allowable", "900 MPa"}});
  CHECK(thin.verdict >= verdict::not_enough_known);
  CHECK_FALSE(thin.measure_next.empty());
}

TEST_CASE("panels: what is unusual is said, and a panel outside the theory does not silence the others") {
  const auto strong = answered(decisions::panels, lagoon(), {{"vessel.panel[1].allowable", "45 MPa"}});
  CHECK(strong.note.find("front window: 45 MPa is an unusually high allowable stress") != std::string::npos);
  const auto nominal = answered(decisions::panels, lagoon(), {{"vessel.panel[1].thickness", "19 mm"}});
  CHECK(nominal.note.find("the sheet may be as thin as") != std::string::npos);
  const auto strip = answered(decisions::panels, lagoon(), {{"vessel.panel[1].height", "0.15 m"}});
  CHECK(strip.verdict == verdict::not_enough_known);
  CHECK(strip.find("stress", "front window") == nullptr);
  CHECK(strip.find("stress", "end window") != nullptr);
}

TEST_CASE("panels: over a free top the water runs out; without panels they are asked for; without a display nothing") {
  const auto open = answered(decisions::panels, lagoon(),
                             {{"vessel.panel[1].edges", "top free"}, {"vessel.panel[1].lower_edge", "0 m"}});
  TW_CHECK(by_series, number(open, "push", "front window"), 0.5 * 1023.343 * 9.80665 * 0.65 * 0.65 * 2.2,
           relative(1e-4));
  plan::build bare = lagoon();
  plan::clear(bare, "vessel.panel");
  const auto f = answered(decisions::panels, bare);
  CHECK(f.verdict == verdict::not_enough_known);
  CHECK_FALSE(f.measure_next.empty());
  CHECK_FALSE(f.caution.empty());
  CHECK(asked(decisions::panels, {}).empty());
}
