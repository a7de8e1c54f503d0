// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/closing/lid_sag.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence by_hand{"tankwright::decisions::answer_lid_sag", kind::identity, "a strip by hand"};

/// One dry acrylic lid.
plan::build one_lid() {
  plan::build build = lagoon();
  plan::clear(build, "vessel.lid[2]");
  plan::clear(build, "vessel.lid[1].moisture_strain");
  return build;
}

/// 5 q L^4/(384 E I) of a metre's width of acrylic, 0.48 m by 8 mm, after years at 1.35 GPa.
const double sag =
    5.0 * (1190.0 * 9.80665 * 0.008) * 0.48 * 0.48 * 0.48 * 0.48 / (384.0 * 1.35e9 * 0.008 * 0.008 * 0.008 / 12.0);

}  // namespace

TEST_CASE("lid sag: sag after years, bow from damp and stress by hand") {
  const auto f = answered(decisions::lid_sag, lagoon());
  const double bow = 0.001 / 0.008 * 0.48 * 0.48 / 8.0;
  TW_CHECK(by_hand, number(f, "down", "acrylic lids"), sag + bow, relative(1e-12));
  TW_CHECK(by_hand, number(f, "bow", "acrylic lids"), bow, relative(1e-13));
  TW_CHECK(by_hand, number(f, "allowed", "acrylic lids"), 0.002, relative(1e-14));
  TW_CHECK(by_hand, number(f, "sag_left", "acrylic lids"), 1.0 - (sag + bow) / 0.002, relative(1e-11));
  const double stress = 6.0 * (2500.0 * 9.80665 * 0.006) * 0.48 * 0.48 / 8.0 / (0.006 * 0.006);
  TW_CHECK(by_hand, number(f, "used", "glass lid"), stress / 5e6, relative(1e-12));
  judged(f, verdict::does_not_hold, "sag_left", "acrylic lids");
  CHECK(f.note.find("damp") != std::string::npos);
}

TEST_CASE("lid sag: the verdict on each side of what is allowed, and at it") {
  const auto allowed = [](double times) {
    plan::build build = one_lid();
    plan::set_si(build, "vessel.lid_span_over_sag", 0.48 / (times * sag));
    return answered(decisions::lid_sag, build);
  };
  judged(allowed(1.2), verdict::holds, "sag_left");  // the band of the creep modulus ends 12.5 % above
  judged(allowed(1.05), verdict::thin_margin, "sag_left");
  judged(allowed(0.99), verdict::does_not_hold, "sag_left");
  const auto broken = answered(decisions::lid_sag, one_lid(), {{"vessel.lid[1].allowable", "0.2 MPa"}});
  judged(broken, verdict::does_not_hold, "stress_left", "acrylic lids");
  plan::build none = one_lid();
  plan::clear(none, "vessel.lid");
  CHECK(asked(decisions::lid_sag, none).empty());
}

TEST_CASE("lid sag: exactly as much as is allowed does not hold") {
  plan::build build = one_lid();
  give(build, {{"vessel.lid[1].material", "annealed glass"}});
  const double down = number(answered(decisions::lid_sag, build), "down");
  plan::set_si(build, "vessel.lid_span_over_sag", 0.48 / down);
  const auto f = answered(decisions::lid_sag, build);
  TW_CHECK(by_hand, number(f, "sag_left"), 0.0, within(fraction(1e-15)));
  CHECK((number(f, "sag_left") > 0.0) == (f.verdict != verdict::does_not_hold));
}
