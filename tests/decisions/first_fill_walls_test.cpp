// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <numbers>
#include <tankwright/decisions/first_fill/bulkhead_holes.hpp>
#include <tankwright/decisions/first_fill/corner_joints.hpp>
#include <tankwright/decisions/first_fill/drips.hpp>
#include <tankwright/decisions/first_fill/gaskets.hpp>
#include <tankwright/decisions/first_fill/plywood_walls.hpp>
#include <tankwright/decisions/first_fill/silicone_seams.hpp>
#include <tankwright/decisions/first_fill/tested_parts.hpp>
#include <tankwright/decisions/first_fill/top_rails.hpp>

#include "decisions/asked.hpp"
#include "plan/mistakes.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

evidence by_hand(const char* answer) { return {answer, kind::identity, "worked by hand"}; }
/// Seawater of 35 at 25 degC on a metre of height, Pa: 1023.34 kg/m3.
constexpr double metre_of_sea = 1023.343 * 9.80665;

/// The lagoon, 0.85 m high inside, with plywood, a rail, a corner, a seam and a hole.
plan::build of_wood() {
  plan::build build = lagoon();
  give(build, {{"vessel.plywood[1].label", "back wall"},   {"vessel.plywood[1].spacing", "0.40 m"},
               {"vessel.plywood[1].thickness", "18 mm"},   {"vessel.plywood[1].strength", "9 MPa"},
               {"vessel.plywood[1].modulus", "7 GPa"},     {"vessel.plywood[1].spans", "three or more"},
               {"vessel.plywood[1].span_over_sag", "150"}, {"vessel.top_rail[1].label", "front rail"},
               {"vessel.top_rail[1].breadth", "45 mm"},    {"vessel.top_rail[1].depth", "120 mm"},
               {"vessel.top_rail[1].modulus", "11 GPa"},   {"vessel.top_rail[1].allowable", "8 MPa"},
               {"vessel.joint[1].label", "left corner"},   {"vessel.joint[1].wall_width", "1.00 m"},
               {"vessel.joint[1].screw_diameter", "5 mm"}, {"vessel.joint[1].penetration", "40 mm"},
               {"vessel.joint[1].spacing", "100 mm"},      {"vessel.joint[1].gravity", "0.50"},
               {"vessel.seam[1].label", "window"},         {"vessel.seam[1].pane_width", "0.40 m"},
               {"vessel.seam[1].lower_edge", "0.20 m"},    {"vessel.seam[1].bite", "12 mm"},
               {"vessel.bulkhead[1].label", "drain hole"}, {"vessel.bulkhead[1].hole", "60 mm"},
               {"vessel.bulkhead[1].height", "0.70 m"},    {"vessel.bulkhead[1].to_edge", "150 mm"},
               {"vessel.bulkhead[1].thickness", "15 mm"}});
  return build;
}

}  // namespace

TEST_CASE("plywood: bending and sag of the lowest strip, on both sides") {
  const evidence hand = by_hand("tankwright::decisions::answer_plywood_walls");
  const auto f = answered(decisions::plywood_walls, of_wood());
  const double q = metre_of_sea * 0.85, l = 0.4, t = 0.018;
  const double used = q * l * l / 10.0 / (9e6 * t * t / 6.0 * 0.9);
  TW_CHECK(hand, number(f, "used", "back wall"), used, relative(1e-5));
  TW_CHECK(hand, number(f, "sag", "back wall"), 2.0 * 0.00688421 * q * l * l * l * l / (7e9 * t * t * t / 12.0),
           relative(1e-5));
  CHECK(f.verdict == verdict::holds);
  judged(answered(decisions::plywood_walls, of_wood(), {{"vessel.plywood[1].spacing", "0.9 m"}}),
         verdict::does_not_hold, "sag_left", "back wall");
  // A strip above the rim carries nothing.
  const auto dry = answered(decisions::plywood_walls, of_wood(), {{"vessel.plywood[1].lower_edge", "0.85 m"}});
  TW_CHECK(hand, number(dry, "used", "back wall"), 0.0, within(1e-12));
  CHECK(asked(decisions::plywood_walls, lagoon()).empty());
}

TEST_CASE("rails: one brace in the middle of two spans") {
  const evidence hand = by_hand("tankwright::decisions::answer_top_rails");
  const auto f = answered(decisions::top_rails, of_wood());  // length, height and one brace from [vessel.brace]
  const double q = metre_of_sea * 0.85 * 0.85 / 6.0, l = 1.2;
  const double w = 0.045 * 0.12 * 0.12 / 6.0, i = 0.045 * 0.12 * 0.12 * 0.12 / 12.0;
  TW_CHECK(hand, number(f, "stress", "front rail"), q * l * l / 8.0 / w, relative(1e-5));
  TW_CHECK(hand, number(f, "sag", "front rail"), q * std::pow(l, 4) / (184.6 * 11e9 * i), relative(1e-3));
  TW_CHECK(hand, number(f, "at_ends", "front rail"), 3.0 / 8.0 * q * l, relative(1e-5));
  CHECK(f.verdict == verdict::holds);
  // Without the brace: q l^2/8 over 2.4 m, and 5 q l^4/(384 EI).
  const auto free = answered(decisions::top_rails, of_wood(), {{"vessel.top_rail[1].braces", "0"}});
  TW_CHECK(hand, number(free, "stress", "front rail"), q * 2.4 * 2.4 / 8.0 / w, relative(1e-5));
  judged(free, verdict::does_not_hold, "sag_left", "front rail");
  plan::build bare = of_wood();
  plan::clear(bare, "vessel.brace");
  CHECK(answered(decisions::top_rails, bare).verdict == verdict::not_enough_known);
}

TEST_CASE("corners: screws by the wood code against half the wall; glue beside them is not added") {
  const evidence hand = by_hand("tankwright::decisions::answer_corner_joints");
  const auto f = answered(decisions::corner_joints, of_wood());
  const double pull = metre_of_sea * 0.85 * 0.5;
  const double screw = 2850.0 * 4.4482216152605 / 0.00064516 * 0.25 * 0.005 * 0.040 * 0.9;
  TW_CHECK(hand, number(f, "pull", "left corner"), pull, relative(1e-5));
  TW_CHECK(hand, number(f, "screw", "left corner"), screw, relative(1e-9));
  TW_CHECK(hand, number(f, "left", "left corner"), 1.0 - pull / (screw / 0.1), relative(1e-4));
  CHECK(f.verdict == verdict::holds);
  judged(answered(decisions::corner_joints, of_wood(), {{"vessel.joint[1].spacing", "400 mm"}}), verdict::does_not_hold,
         "left", "left corner");
  const auto glued = answered(decisions::corner_joints, of_wood(),
                              {{"vessel.joint[1].glue_width", "40 mm"}, {"vessel.joint[1].glue_shear", "0.35 MPa"}});
  TW_CHECK(hand, number(glued, "holds", "left corner"), 0.35e6 * 0.04, relative(1e-9));
  plan::build none = of_wood();
  for (const char* key : {"screw_diameter", "penetration", "spacing", "gravity"})
    plan::clear(none, std::string{"vessel.joint[1]."} + key);
  CHECK(answered(decisions::corner_joints, none).verdict == verdict::not_enough_known);
}

TEST_CASE("seams: stress against a band that the trade does not agree on") {
  const evidence hand = by_hand("tankwright::decisions::answer_silicone_seams");
  const auto f = answered(decisions::silicone_seams, of_wood(), {{"vessel.seam[1].bite", "30 mm"}});
  // 44 kPa: three times what facades allow, a fifth of what tanks do.
  const double in_it = metre_of_sea * 0.65 * 0.2 / 0.030;
  TW_CHECK(hand, number(f, "stress", "window"), in_it, relative(1e-5));
  TW_CHECK(hand, number(f, "left", "window"), 1.0 - in_it / 54e3, relative(1e-4));
  CHECK(f.verdict == verdict::thin_margin);
  judged(answered(decisions::silicone_seams, of_wood(), {{"vessel.seam[1].bite", "12 mm"}}), verdict::does_not_hold,
         "left", "window");
  CHECK(answered(decisions::silicone_seams, of_wood(), {{"vessel.seam[1].bite", "150 mm"}}).verdict == verdict::holds);
}

TEST_CASE("seams: faces that move by more than a quarter of the silicone between them tear it; equal does not hold") {
  const evidence class_25{"tankwright::decisions::answer_silicone_seams", kind::from_memory,
                          "sealants of class 25 take a quarter of the joint, ASTM C920 (from memory)"};
  const auto moving = [](const char* gap, const char* movement) {
    return answered(
        decisions::silicone_seams, of_wood(),
        {{"vessel.seam[1].bite", "150 mm"}, {"vessel.seam[1].gap", gap}, {"vessel.seam[1].movement", movement}});
  };
  const auto f = moving("6 mm", "0.5 mm");
  TW_CHECK(class_25, number(f, "may_move", "window"), 0.0015, relative(1e-9));
  TW_CHECK(class_25, number(f, "movement", "window"), 0.001, relative(1e-9));
  CHECK(f.verdict == verdict::holds);
  judged(moving("6 mm", "1.5 mm"), verdict::does_not_hold, "movement", "window");
  CHECK(moving("6 mm", "1.45 mm").verdict == verdict::thin_margin);
  refused(of_wood(), {{"vessel.seam[1].gap", "6 mm"}}, "vessel.seam[window].gap", "movement");
}

TEST_CASE("holes: two diameters from the edge, the push of the water, toughened glass") {
  const evidence hand = by_hand("tankwright::decisions::answer_bulkhead_holes");
  const auto f = answered(decisions::bulkhead_holes, of_wood());
  TW_CHECK(hand, number(f, "left", "drain hole"), 0.15 - 0.12, relative(1e-9));
  TW_CHECK(hand, number(f, "push", "drain hole"), metre_of_sea * 0.15 * std::numbers::pi * 0.03 * 0.03, relative(1e-5));
  CHECK(f.verdict == verdict::holds);
  judged(answered(decisions::bulkhead_holes, of_wood(), {{"vessel.bulkhead[1].to_edge", "120 mm"}}),
         verdict::does_not_hold, "left", "drain hole");  // zero does not hold
  const auto acrylic = answered(decisions::bulkhead_holes, of_wood(), {{"vessel.bulkhead[1].pane", "acrylic"}});
  TW_CHECK(hand, number(acrylic, "needed", "drain hole"), 0.09, relative(1e-9));
  const auto hard = answered(decisions::bulkhead_holes, of_wood(), {{"vessel.bulkhead[1].toughened", "true"}});
  CHECK(hard.verdict == verdict::does_not_hold);
  CHECK(hard.happens.find("shatters") != std::string::npos);
}

TEST_CASE("gaskets: a fifth of the thickness against the unevenness; equal does not hold") {
  const evidence squeeze{"tankwright::decisions::answer_gaskets", kind::identity,
                         "from 10 to 30 % of its thickness, by hand; the two from memory of makers' handbooks"};
  const auto with_gasket = [](const char* gasket, const char* unevenness) {
    return answered(decisions::gaskets, of_wood(),
                    {{"vessel.bulkhead[1].gasket", gasket}, {"vessel.bulkhead[1].unevenness", unevenness}});
  };
  const auto f = with_gasket("4 mm", "0.5 mm");
  TW_CHECK(squeeze, number(f, "takes"), 0.0008, relative(1e-9));
  TW_CHECK(squeeze, number(f, "left"), 0.0003, relative(1e-9));
  CHECK(f.verdict == verdict::holds);
  judged(with_gasket("4 mm", "0.8 mm"), verdict::does_not_hold, "left");
  CHECK(with_gasket("4 mm", "0.75 mm").verdict == verdict::thin_margin);
  CHECK(asked(decisions::gaskets, of_wood()).empty());
  refused(of_wood(), {{"vessel.bulkhead[1].gasket", "4 mm"}}, "vessel.bulkhead[drain hole].gasket", "unevenness");
}

TEST_CASE("drips: ten drops a minute are 0.72 litres a day, and the sum is judged") {
  const evidence hand = by_hand("tankwright::decisions::answer_drips");
  plan::build build;
  give(build, {{"hold.surface", "2.4 m2"},
               {"hold.drip[1].label", "seam"},
               {"hold.drip[1].drops", "10"},
               {"hold.drip[1].over", "1 min"}});
  CHECK(plan::validate(build).empty());
  const auto f = answered(decisions::drips, build);
  TW_CHECK(hand, number(f, "leak", "seam"), 10 * 0.05e-6 / 60.0, relative(1e-12));
  CHECK(f.verdict == verdict::thin_margin);  // twice as large a drop would be 1.6 litres
  const auto measured = answered(decisions::drips, build, {{"hold.drip[1].drop", "0.05 mL"}});
  TW_CHECK(hand, number(measured, "left"), 1e-3 / 86400.0 - 10 * 0.05e-6 / 60.0, relative(1e-9));
  CHECK(measured.verdict == verdict::holds);
  const auto two =
      answered(decisions::drips, build,
               {{"hold.drip[2].label", "union"}, {"hold.drip[2].drops", "30"}, {"hold.drip[2].over", "60 s"}});
  TW_CHECK(hand, number(two, "all"), 40 * 0.05e-6 / 60.0, relative(1e-12));
  judged(two, verdict::does_not_hold, "left");
}

TEST_CASE("parts: the display is tight and the sump is not") {
  plan::build build;
  test_for_leaks(build);
  give(build,
       {{"hold.part[1].label", "sump"},
        {"hold.part[1].surface", "0.9 m2"},
        {"hold.part[1].depth", "0.3 m"},
        {"hold.part[1].levels", "300 mm, 297 mm, 294.5 mm, 292 mm, 289 mm, 286.5 mm, 284 mm, 281.5 mm, 279 mm"}});
  CHECK(plan::validate(build).empty());
  const evidence hand = by_hand("tankwright::decisions::answer_tested_parts");
  const auto f = answered(decisions::tested_parts, build);
  // The sump falls 21 mm in four days, the pan beside it 13: 8 mm over 0.9 m2 are 1.8 L a day.
  TW_CHECK(hand, number(f, "leak", "sump"), 0.008 / 4.0 * 0.9 / 86400.0, relative(0.08));
  judged(f, verdict::does_not_hold, "unproven", "sump");
  TW_CHECK(hand, number(f, "total"), number(f, "leak", "display") + number(f, "leak", "sump"), relative(1e-9));
  plan::build bad = build;
  give(bad, {{"hold.part[1].levels", "300 mm, 297 mm"}});
  CHECK(mistakes_of(bad).find("hold.part[sump].levels: has 2 entries, times has 9") != std::string::npos);
  plan::build alone;
  test_for_leaks(alone);
  CHECK(asked(decisions::tested_parts, alone).empty());
}
