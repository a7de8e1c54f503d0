// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <numbers>
#include <tankwright/decisions/plumbing/drain_noise.hpp>
#include <tankwright/decisions/plumbing/fittings_cost.hpp>
#include <tankwright/decisions/plumbing/jet_reach.hpp>
#include <tankwright/decisions/plumbing/pump_choice.hpp>
#include <tankwright/decisions/plumbing/pump_suction.hpp>
#include <tankwright/decisions/plumbing/return_flow.hpp>
#include <tankwright/decisions/power_cut/dry_floor.hpp>

#include "decisions/asked.hpp"
#include "plan/basin.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

evidence by_hand(const char* answer) { return {answer, kind::identity, "worked by hand"}; }
constexpr double g = 9.80665;
constexpr double pi = std::numbers::pi;

/// A basin whose pump has two rivals, and a display whose turnover is wanted.
plan::build with_rivals() {
  plan::build build = lagoon();
  build.plumbing = basin().plumbing;
  give(build, {{"plumbing.wanted_turnover", "2 1/h"},
               {"plumbing.candidate[1].label", "large"},
               {"plumbing.candidate[1].flows", "0 L/h, 5000 L/h, 10000 L/h"},
               {"plumbing.candidate[1].heads", "4 m, 3 m, 1 m"},
               {"plumbing.candidate[1].power", "120 W"},
               {"plumbing.candidate[2].label", "small"},
               {"plumbing.candidate[2].flows", "0 L/h, 2000 L/h, 4000 L/h"},
               {"plumbing.candidate[2].heads", "3 m, 2 m, 0.5 m"},
               {"plumbing.candidate[2].power", "40 W"}});
  return build;
}

}  // namespace

TEST_CASE("fittings: four elbows, a ball valve and an entrance, by Crane's n and the bore") {
  const auto f = answered(decisions::fittings_cost, basin(),
                          {{"plumbing.return[1].loss", "0"},
                           {"plumbing.return[1].elbows", "4"},
                           {"plumbing.return[1].ball_valves", "1"},
                           {"plumbing.return[1].entrances", "1"}});
  // Friction of rough steel of 0.0018 in in 57 mm, by hand.
  const double turbulent = 0.25 / std::pow(std::log10(0.0018 * 0.0254 / (3.7 * 0.057)), 2.0);
  const evidence crane = by_hand("tankwright::decisions::answer_fittings_cost");
  TW_CHECK(crane, number(f, "loss", "return pipe"), (4 * 30 + 3) * turbulent + 0.5, relative(1e-9));
  TW_CHECK(crane, band(f, "loss", "return pipe").high, (4 * 30 * 1.3 + 3 * 1.5) * turbulent + 0.5 * 1.15,
           relative(1e-9));
  const evidence sum{"tankwright::plan::loss_of", kind::identity, "worked by hand"};
  TW_CHECK(sum, band(f, "loss", "return pipe").low, (4 * 30 * 0.7 + 3 * 0.5) * turbulent + 0.5 * 0.85, relative(1e-9));
  const double flow = number(answered(decisions::return_flow, basin(),
                                      {{"plumbing.return[1].loss", "0"},
                                       {"plumbing.return[1].elbows", "4"},
                                       {"plumbing.return[1].ball_valves", "1"},
                                       {"plumbing.return[1].entrances", "1"}}),
                             "total");
  const double v = flow / (0.25 * pi * 0.057 * 0.057);
  TW_CHECK(crane, number(f, "head", "return pipe"), number(f, "loss", "return pipe") * v * v / (2 * g), relative(1e-9));
  CHECK(f.verdict == verdict::for_information);
  CHECK(asked(decisions::fittings_cost, basin()).empty());
}

TEST_CASE("fittings: counted ones and a sum given beside them add up") {
  const auto both = answered(decisions::fittings_cost, basin(), {{"plumbing.return[1].elbows", "2"}});
  const auto counted = answered(decisions::fittings_cost, basin(),
                                {{"plumbing.return[1].loss", "0"}, {"plumbing.return[1].elbows", "2"}});
  TW_CHECK(by_hand("tankwright::decisions::answer_fittings_cost"), number(both, "loss"), number(counted, "loss") + 5.0,
           relative(1e-12));
}

TEST_CASE("pumps: each as if it were the return pump, the cheaper of two that do") {
  const auto f = answered(decisions::pump_choice, with_rivals());
  const auto as_pump = answered(decisions::return_flow, with_rivals());  // the first rival is the same pump
  const evidence same = by_hand("tankwright::decisions::answer_pump_choice");
  TW_CHECK(same, number(f, "flow", "large"), number(as_pump, "total"), relative(1e-9));
  TW_CHECK(same, number(f, "cut", "large"), number(answered(decisions::dry_floor, with_rivals()), "left"),
           relative(1e-9));
  CHECK(f.note.find("The best of them: large") == 0);  // the small one does not bring the wanted flow
  CHECK(f.verdict == verdict::holds);
  const auto less = answered(decisions::pump_choice, with_rivals(), {{"plumbing.wanted_turnover", "0.5 1/h"}});
  CHECK(less.note.find("The best of them: small") == 0);
  TW_CHECK(same, number(less, "more"), number(less, "flow", "small") - number(less, "wanted"), relative(1e-9));
}

TEST_CASE("pumps: none that brings enough, none that stays dry; the cost of a year") {
  const auto more = answered(decisions::pump_choice, with_rivals(), {{"plumbing.wanted_turnover", "20 1/h"}});
  judged(more, verdict::does_not_hold, "more");
  const auto wet = answered(decisions::pump_choice, with_rivals(),
                            {{"plumbing.return[1].below_edge", "300 mm"}, {"plumbing.sump.chamber[1].area", "0.3 m2"}});
  CHECK(wet.verdict == verdict::does_not_hold);
  CHECK(wet.happens.find("runs over") != std::string::npos);
  plan::build priced = with_rivals();
  give(priced, {{"room.volume", "60 m3"}, {"room.price_per_kwh", "0.25"}});
  TW_CHECK(by_hand("tankwright::decisions::answer_pump_choice"),
           number(answered(decisions::pump_choice, priced), "cost", "small"), 0.040 * 8766.0 * 0.25, relative(1e-12));
  CHECK(asked(decisions::pump_choice, basin()).empty());
}

TEST_CASE("drain noise: the drain number below 0.3, on both sides and at rest") {
  const double flow = number(answered(decisions::return_flow, basin()), "total");
  const auto f = answered(decisions::drain_noise, basin());
  const double j = flow / (0.25 * pi * 0.01 * std::sqrt(g * 0.1));
  TW_CHECK(by_hand("tankwright::decisions::answer_drain_noise"), number(f, "number", "drain"), j, relative(1e-9));
  TW_CHECK(by_hand("tankwright::decisions::answer_drain_noise"), number(f, "left", "drain"), 0.3 - j, relative(1e-9));
  const auto narrow = answered(decisions::drain_noise, basin(), {{"plumbing.drain[1].bore", "57 mm"}});
  judged(narrow, verdict::does_not_hold, "left");
  // A siphon that takes all of it leaves the other at rest.
  const auto still = answered(decisions::drain_noise, basin(),
                              {{"plumbing.drain[1].runs_full", "true"},
                               {"plumbing.drain[2].label", "second"},
                               {"plumbing.drain[2].bore", "57 mm"},
                               {"plumbing.drain[2].length", "1.3 m"},
                               {"plumbing.drain[2].drop", "0.95 m"},
                               {"plumbing.drain[2].inlet_head", "80 mm"}});
  TW_CHECK(by_hand("tankwright::decisions::answer_drain_noise"), number(still, "number", "second"), 0.0, within(0.0));
  CHECK(still.verdict == verdict::holds);
  const auto alone = answered(decisions::drain_noise, basin(), {{"plumbing.drain[1].runs_full", "true"}});
  CHECK(alone.verdict == verdict::for_information);
}

TEST_CASE("suction: water over the inlet against a vortex, and the head that is left") {
  const key_texts inlet = {{"plumbing.pump_inlet.above_floor", "30 mm"}, {"plumbing.pump_inlet.bore", "80 mm"}};
  plan::build build = basin();
  give(build, inlet);
  const auto f = answered(decisions::pump_suction, build);
  const evidence hand = by_hand("tankwright::decisions::answer_pump_suction");
  TW_CHECK(hand, number(f, "over"), 0.22, relative(1e-12));
  TW_CHECK(hand, number(f, "vortex"), 0.22 - number(f, "needed"), relative(1e-9));
  CHECK(f.verdict == verdict::holds);
  const auto shallow = answered(decisions::pump_suction, build, {{"plumbing.sump.running_level", "32 mm"}});
  judged(shallow, verdict::does_not_hold, "vortex");
  // 10.1 m of air less 0.3 m of vapour and the level: 5 m are there, 12 m are not.
  const auto head = answered(decisions::pump_suction, build, {{"plumbing.pump_inlet.npsh_required", "5 m"}});
  TW_CHECK(hand, number(head, "npsh"), (101325.0 - 3110.0) / (1023.3 * g) + 0.22, within(0.05));
  judged(answered(decisions::pump_suction, build, {{"plumbing.pump_inlet.npsh_required", "12 m"}}),
         verdict::does_not_hold, "suction");
  CHECK(asked(decisions::pump_suction, basin()).empty());
}

TEST_CASE("jets: 6.2 D/x at the sand, against what moves it; a wide opening, a long way, nothing to dig") {
  plan::build build = lagoon();
  build.plumbing = basin().plumbing;
  give(build, {{"plumbing.return[1].nozzle", "30 mm"},
               {"plumbing.return[1].to_sand", "0.8 m"},
               {"plumbing.return[1].to_wall", "2 m"},
               {"vessel.sand[1].grain", "1 mm"}});
  const double flow = number(answered(decisions::return_flow, build), "total");
  const double u0 = flow / (0.25 * pi * 0.03 * 0.03);
  const evidence hand = by_hand("tankwright::decisions::answer_jet_reach");
  const auto f = answered(decisions::jet_reach, build);
  TW_CHECK(hand, number(f, "at_sand", "return"), 6.2 * 0.03 / 0.8 * u0, relative(1e-9));
  TW_CHECK(hand, number(f, "at_wall", "return"), 6.2 * 0.03 / 2.0 * u0, relative(1e-9));
  TW_CHECK(hand, number(f, "reach", "return"), 6.2 * 0.03 * u0 / 0.1, relative(1e-9));
  judged(f, verdict::does_not_hold, "left", "return");
  CHECK(answered(decisions::jet_reach, build,
                 {{"plumbing.return[1].nozzle", "57 mm"}, {"plumbing.return[1].to_sand", "8 m"}})
            .verdict == verdict::holds);
  plan::build plain = build;
  plan::clear(plain, "vessel.sand[1].grain");
  CHECK(answered(decisions::jet_reach, plain).verdict == verdict::not_enough_known);
  CHECK(asked(decisions::jet_reach, basin()).empty());
}
