// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/sump.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(sump, "sump", "How high does the water stand in the three chambers while the pump runs?") {
  using namespace tankwright;
  const double q = s.given("Q", "flow", 10000, 0, "L/h");
  const double a1 = s.given("A1", "horizontal area of the drains' chamber", 0.24, 2, "m2",
                            worked::range_of(plumbing::free_area_limits));
  const double a2 = s.given("A2", "of the skimmer's, without the skimmer", 0.32, 2, "m2",
                            worked::range_of(plumbing::free_area_limits));
  const double a3 = s.given("A3", "of the pump's", 0.30, 2, "m2", worked::range_of(plumbing::free_area_limits));
  const double c1 = s.given("c1", "crest of the first baffle above the floor", 320, 0, "mm",
                            worked::range_of(plumbing::crest_limits, 1000.0));
  const double c2 =
      s.given("c2", "crest of the second", 280, 0, "mm", worked::range_of(plumbing::crest_limits, 1000.0));
  const double b = s.given("b", "width of both", 580, 0, "mm", worked::range_of(plumbing::baffle_width_limits, 1000.0));
  const double z3 = s.given("z3", "level in the pump's chamber", 250, 0, "mm",
                            worked::range_of(plumbing::running_level_limits, 1000.0));
  const double rim =
      s.given("rim", "lowest point of the rim", 450, 0, "mm", worked::range_of(plumbing::rim_limits, 1000.0));
  s.wanted("The other two levels, and the water in the sump.");
  const plumbing::sump plan{.rim = millimetres(rim),
                            .running_level = millimetres(z3),
                            .chambers = {{.label = "drains", .horizontal_area = square_metres(a1)},
                                         {.label = "skimmer", .horizontal_area = square_metres(a2)},
                                         {.label = "pump", .horizontal_area = square_metres(a3)}},
                            .baffles = {{.crest = millimetres(c1), .width = millimetres(b)},
                                        {.crest = millimetres(c2), .width = millimetres(b)}}};
  const auto found = plumbing::running_levels(plan, litres_per_hour(q));
  const double z1 = in_millimetres(found.chambers[0].level.central),
               z2 = in_millimetres(found.chambers[1].level.central);
  s.step("h2", "head over the second crest, Rehbock", z2 - c2, 0, "mm");
  s.step("h1", "head over the first crest, Rehbock", z1 - c1, 0, "mm");
  s.result("z2", "level in the skimmer's chamber = c2 + h2", z2, 0, "mm");
  s.result("z1", "level in the drains' chamber = c1 + h1", z1, 0, "mm");
  s.result("W", "water in the sump = A1 z1 + A2 z2 + A3 z3", in_litres(found.water), 0, "L");
  s.result("room", "below the rim, at the highest level", rim - z1, 0, "mm");
  s.means(
      "The second chamber stands below the first crest, so the first one falls freely. The room that is left is not "
      "the room for a "
      "power cut: that water comes on top, and the page on the power cut counts it.");
}
