// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <tankwright/decisions/moving_in/feed_today.hpp>
#include <tankwright/decisions/moving_in/filter_later.hpp>
#include <tankwright/decisions/moving_in/filter_today.hpp>
#include <tankwright/decisions/moving_in/grown_up.hpp>
#include <tankwright/decisions/moving_in/hardness_unattended.hpp>
#include <tankwright/decisions/moving_in/skimmer_cup_days.hpp>
#include <tankwright/decisions/moving_in/timetable.hpp>
#include <tankwright/decisions/moving_in/transport_bags.hpp>
#include <tankwright/life/transport.hpp>
#include <tankwright/plan/validate.hpp>

#include "decisions/asked.hpp"
#include "decisions/moving_in_plan.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

evidence by_hand(const char* answer) { return {answer, kind::identity, "worked by hand"}; }

/// The plan of the moving-in day with its water.
plan::build settled() {
  plan::build build = moving_in();
  give(build, {{"water.temperature", "25 °C"}, {"water.new_water", "2000 L"}});
  return build;
}

}  // namespace

TEST_CASE("feed today: what the filter takes over what the food asks for, at most all of it") {
  const plan::build build = settled();
  const auto f = answered(decisions::feed_today, build);
  const auto today = answered(decisions::filter_today, build);
  const evidence hand = by_hand("tankwright::decisions::answer_feed_today");
  TW_CHECK(hand, number(f, "share"), std::min(1.0, number(today, "takes") / number(today, "needed")), relative(1e-9));
  TW_HOLDS(hand, band(f, "share").low <= number(f, "share"));
  CHECK(f.verdict == verdict::for_information);
  CHECK(asked(decisions::feed_today, plan::build{}).empty());
}

TEST_CASE("grown: food as the use of oxygen, against the mature filter") {
  plan::build build = settled();
  const double each = plan::get_si(build, "life.animals[1].each");
  plan::set_si(build, "life.animals[1].adult_mass", each * 16.0);
  const auto f = answered(decisions::grown_up, build);
  const auto later = answered(decisions::filter_later, build);
  const evidence hand = by_hand("tankwright::decisions::answer_grown_up");
  if (build.life->animals.size() == 1) TW_CHECK(hand, number(f, "times"), std::pow(16.0, 0.8), relative(1e-9));
  TW_CHECK(hand, number(f, "needed"), number(later, "needed") * number(f, "times"), relative(1e-9));
  TW_CHECK(hand, number(f, "left"), number(later, "takes") - number(f, "needed"), relative(1e-9));
  plan::build same = settled();
  plan::set_si(same, "life.animals[1].adult_mass", each);
  TW_CHECK(hand, number(answered(decisions::grown_up, same), "times"), 1.0, relative(1e-12));
  plan::set_si(same, "life.animals[1].adult_mass", each * 1e6);
  judged(answered(decisions::grown_up, same), verdict::does_not_hold, "left");
  CHECK(asked(decisions::grown_up, moving_in()).empty());
}

TEST_CASE("bags: oxygen, temperature, and what opening frees") {
  plan::build build;
  give(build, {{"life.bag[1].label", "eels"},
               {"life.bag[1].animals", "200 g"},
               {"life.bag[1].water", "4 L"},
               {"life.bag[1].gas", "8 L"},
               {"life.bag[1].oxygen_use", "300"},
               {"life.bag[1].closed_for", "10 h"},
               {"life.bag[1].filled_at", "25 °C"},
               {"life.bag[1].surroundings", "10 °C"},
               {"life.bag[1].time_constant", "20 h"},
               {"life.bag[1].lowest", "18 °C"}});
  CHECK(plan::validate(build).empty());
  const auto f = answered(decisions::transport_bags, build);
  const evidence hand = by_hand("tankwright::decisions::answer_transport_bags");
  // 10.1 g in the gas and 32.2 mg in each litre of water, used at 60 mg/h until 5 of those 32.2 are left.
  const double held = 0.969 * 0.008 * 0.031998 / (8.205736608e-5 * 298.15) + 0.004 * 32.2e-3;
  TW_CHECK(hand, number(f, "lasts", "eels"), held * (1.0 - 5.0 / 32.2) / 60e-6 * 3600.0, relative(0.01));
  TW_CHECK(hand, number(f, "temperature", "eels"), 273.15 + 10.0 + 15.0 * std::exp(-0.5), within(1e-9));
  TW_CHECK(hand, number(f, "warm", "eels"), 10.0 + 15.0 * std::exp(-0.5) - 18.0, relative(1e-9));
  CHECK(f.verdict == verdict::holds);
  judged(answered(decisions::transport_bags, build, {{"life.bag[1].lowest", "22 °C"}}), verdict::does_not_hold, "warm",
         "eels");
  judged(answered(decisions::transport_bags, build,
                  {{"life.bag[1].oxygen", "21 %"}, {"life.bag[1].closed_for", "40 h"}, {"life.bag[1].lowest", "5 °C"}}),
         verdict::does_not_hold, "oxygen", "eels");
  const auto still = answered(decisions::transport_bags, build, {{"life.bag[1].oxygen_use", "0"}});
  CHECK(still.find("lasts", "eels") == nullptr);
}

TEST_CASE("skimmer cup: room over what comes in a day") {
  plan::build build;
  give(build, {{"life.skimmer.room", "2 L"}, {"life.skimmer.fills", "0.25 L/d"}, {"life.skimmer.unattended", "5 d"}});
  const auto f = answered(decisions::skimmer_cup_days, build);
  TW_CHECK(by_hand("tankwright::decisions::answer_skimmer_cup_days"), number(f, "left"), 3.0 * 86400.0,
           relative(1e-12));
  CHECK(f.verdict == verdict::holds);
  judged(answered(decisions::skimmer_cup_days, build, {{"life.skimmer.unattended", "8 d"}}), verdict::does_not_hold,
         "left");
}

TEST_CASE("alkalinity and calcium unattended: even falls, and water changes") {
  const evidence hand = by_hand("tankwright::decisions::answer_hardness_unattended");
  plan::build build;
  give(build, {{"life.drift.unattended", "10 d"},
               {"life.drift.alkalinity_now", "8"},
               {"life.drift.alkalinity_lowest", "6.5"},
               {"life.drift.alkalinity_a_day", "0.1"},
               {"life.drift.calcium_now", "420 mg/L"},
               {"life.drift.calcium_lowest", "400 mg/L"}});
  const auto f = answered(decisions::hardness_unattended, build);
  TW_CHECK(hand, number(f, "alkalinity"), 7.0, relative(1e-12));
  TW_CHECK(hand, number(f, "calcium"), 0.420 - 7.1468e-3, relative(1e-5));
  TW_CHECK(hand, number(f, "lasts"), 15.0 * 86400.0, relative(1e-9));
  CHECK(f.verdict == verdict::holds);
  judged(answered(decisions::hardness_unattended, build, {{"life.drift.unattended", "15 d"}}), verdict::does_not_hold,
         "alkalinity_left");  // exactly there does not hold
  const auto changed = answered(decisions::hardness_unattended, build,
                                {{"life.drift.water_change", "50 %"}, {"life.drift.every", "5 d"}});
  TW_CHECK(hand, number(changed, "alkalinity"), 8.0 - 0.75, relative(1e-9));
}

TEST_CASE("timetable: from what the filter takes to the whole, and a day by which it is wanted") {
  plan::build build = settled();
  give(build, {{"life.timetable.start", "50 %"},
               {"life.timetable.step", "25 %"},
               {"life.timetable.rest", "60 d"},
               {"life.ammonia_below", "5 mg/L"}});
  const auto f = answered(decisions::timetable, build);
  const evidence hand = by_hand("tankwright::decisions::answer_timetable");
  // Two steps after two rests, longer than any film takes to double.
  TW_CHECK(hand, number(f, "last"), 120.0 * 86400.0, relative(1e-9));
  TW_CHECK(hand, number(f, "steps"), 3.0, within(0.0));
  CHECK(f.note.find("from day 60") != std::string::npos);
  judged(answered(decisions::timetable, build, {{"life.timetable.ready_by", "100 d"}, {"life.timetable.start", "1 %"}}),
         verdict::does_not_hold, "left");
  const auto whole = answered(decisions::timetable, build, {{"life.timetable.start", "100 %"}});
  TW_CHECK(hand, number(whole, "last"), 0.0, within(0.0));
  CHECK(asked(decisions::timetable, moving_in()).empty());
}
