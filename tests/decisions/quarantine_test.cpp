// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <tankwright/decisions/moving_in/filter_today.hpp>
#include <tankwright/decisions/moving_in/quarantine.hpp>
#include <tankwright/life/levels.hpp>
#include <tankwright/life/nitrification.hpp>
#include <tankwright/plan/validate.hpp>
#include <tankwright/water/salt_mix.hpp>

#include "decisions/asked.hpp"
#include "decisions/moving_in_plan.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence by_hand{"tankwright::decisions::answer_quarantine", kind::identity, "worked by hand"};

/// 200 L, a half changed every second day for 20 days; 10 g/d of wet food with 11 % of protein: 0.176 g/d of nitrogen.
plan::build waiting() {
  plan::build b;
  with(b, {{"life.quarantine.volume", "200 L"},
           {"life.quarantine.lasts", "20 d"},
           {"life.quarantine.part", "50 %"},
           {"life.quarantine.every", "2 d"},
           {"life.quarantine.food[1].amount", "10 g/d"},
           {"life.quarantine.food[1].protein", "11 %"},
           {"life.quarantine.food[1].kind", "wet"}});
  return b;
}

/// The highest level, as milligrams per litre of nitrogen.
double highest(const decisions::finding& f) { return 1e3 * number(f, "highest"); }

}  // namespace

TEST_CASE("quarantine: ammonia before the tenth change, by hand") {
  CHECK(plan::validate(waiting()).empty());
  const auto f = answered(decisions::quarantine, waiting());
  // 0.16 x 0.11 x 10 g/d for two days in 200 L is 1.76 mg/L a change.
  TW_CHECK(by_hand, highest(f), 1.76 * (1.0 - std::pow(0.5, 10.0)) / 0.5, relative(1e-9));
  judged(f, verdict::does_not_hold, "left");
  TW_CHECK(by_hand, number(f, "changes"), 10.0, within(0.0));
  TW_CHECK(by_hand, number(f, "new_water"), 1.2, relative(1e-9));  // 200 L and ten times 100 L
  // A twentieth of the food holds a level of 0.25 mg/L: 0.17583 mg/L; at that level itself it does not.
  const key_texts little = {{"life.quarantine.food[1].amount", "0.5 g/d"}, {"life.ammonia_below", "0.25 mg/L"}};
  const auto fed_less = answered(decisions::quarantine, waiting(), little);
  TW_CHECK(by_hand, 1e3 * number(fed_less, "left"), 0.25 - 0.05 * 3.516562500, relative(1e-8));
  CHECK(fed_less.verdict == verdict::holds);
  plan::build at_level = changed(waiting(), little);
  plan::set_si(at_level, "life.ammonia_below", number(fed_less, "highest"));
  judged(answered(decisions::quarantine, at_level), verdict::does_not_hold, "left");
  CHECK(asked(decisions::quarantine, moving_in()).empty());
}

TEST_CASE("quarantine: a weekly meal comes at once; the free part at its pH; the mix") {
  const auto weekly = answered(decisions::quarantine, waiting(), {{"life.quarantine.food[1].every", "7 d"}});
  // In the mean the same, and one meal of a week more: 1.232 g in 200 L.
  TW_CHECK(by_hand, highest(weekly), 3.516562500 + 6.16, relative(1e-9));
  const auto f = answered(decisions::quarantine, waiting(),
                          {{"life.quarantine.ph", "7.9"},
                           {"life.quarantine.ph_scale", "nbs"},
                           {"water.temperature", "25 °C"},
                           {"water.new_water", "500 L"}});
  CHECK(number(f, "free") > 0.02 * number(f, "highest"));  // some hundredths are free at 7.9 and 25 degC
  CHECK(number(f, "free") < 0.10 * number(f, "highest"));
  TW_CHECK(by_hand, number(f, "free_left"), number(f, "free_limit") - number(f, "free"), relative(1e-9));
  CHECK(number(f, "mix") > 1.2 * 35.0);  // kilograms for 1200 L of 35 g/kg, more for the yield
  CHECK(number(f, "mix") < 1.2 * 35.0 * 1.3);
  const auto without_ph = answered(decisions::quarantine, waiting());
  CHECK(without_ph.find("free") == nullptr);
  CHECK(without_ph.measure_next.front().find("pH") != std::string::npos);
}

TEST_CASE("quarantine: a seeded sponge takes in proportion to the level to stay below") {
  const key_texts sponge = {{"life.quarantine.surface[1].area", "2 m2"},
                            {"life.quarantine.surface[1].seeded", "50 %"},
                            {"life.ammonia_below", "0.5 mg/L"}};
  const auto f = answered(decisions::quarantine, waiting(), sponge);
  const double level = 0.5;  // mg/L
  const double rate = in_grams_per_square_metre_day(
      life::nitrification_rate(
          {.ammonia = water::total_ammonia::from_nitrogen(milligrams_per_litre(level)), .temperature = celsius(25.0)})
          .central);
  const double k = 1.0 * rate * 1e3 / (level * 200.0);  // 1/d, of one square metre that works
  double c = 0.0, top = 0.0;
  for (int change = 0; change < 10; ++change) {
    c = 0.88 / k + (c - 0.88 / k) * std::exp(-2.0 * k);  // 0.88 mg/L a day
    top = std::fmax(top, c);
    c *= 0.5;
  }
  TW_CHECK(by_hand, highest(f), top, relative(1e-9));
  TW_HOLDS(by_hand, highest(f) < highest(answered(decisions::quarantine, waiting())));
}

TEST_CASE("rock by the kilogram counts as a surface of the filter") {
  plan::build build = moving_in();
  with(build, {{"water.temperature", "25 °C"}, {"water.new_water", "2000 L"}});
  const auto before = answered(decisions::filter_today, build);
  const std::size_t n = build.life->surface.size() + 1;
  const std::string at = "life.surface[" + std::to_string(n) + "].";
  // 60 kg in pieces of 0.1 m, of 1500 kg/m3: 2 x 6 x 60/(1500 x 0.1) = 4.8 m2, a quarter of it seeded.
  plan::build rock = build, area = build;
  plan::set(rock, at + "rock", "60 kg");
  plan::set(rock, at + "piece", "0.1 m");
  plan::set(rock, at + "seeded", "25 %");
  plan::set(area, at + "area", "4.8 m2");
  plan::set(area, at + "seeded", "25 %");
  CHECK(plan::validate(rock).empty());
  const evidence same{"tankwright::plan::inputs_of", kind::identity, "the same as its area, worked by hand"};
  TW_CHECK(same, number(answered(decisions::filter_today, rock), "takes"),
           number(answered(decisions::filter_today, area), "takes"), relative(1e-12));
  TW_HOLDS(same, number(answered(decisions::filter_today, rock), "takes") > number(before, "takes"));
  plan::clear(rock, at + "piece");
  CHECK_FALSE(plan::validate(rock).empty());
}
