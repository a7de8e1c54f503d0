// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plan/inputs/life_inputs.hpp>

#include "decisions/moving_in_plan.hpp"
#include "plan/mistakes.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence inputs{"tankwright::plan::inputs_of", kind::wiring, "the keys by hand"};
const evidence rule{"tankwright::plan::load_of", kind::from_memory,
                    "Timmons and Ebeling 2007: 0.092 of protein, 0.16 for wet"};

plan::life_inputs of(const plan::build& b) { return plan::inputs_of(*b.life); }

}  // namespace

TEST_CASE("[life]: the plan of the tests has no mistake") { accepted(moving_in(), {}); }

TEST_CASE("[life]: keys that cannot all be true") {
  const plan::build b = moving_in();
  refused(b, {{"life.moved_rock.moved", "41 kg"}}, "life.moved_rock.moved",
          "moves, which is more than there was, 40 kg", "life.moved_rock.of");
  accepted(b, {{"life.moved_rock.moved", "40 kg"}});
  refused(b, {{"life.moved_rock.food[1].amount", "0 g/d"}, {"life.moved_rock.food[2].protein", "0 %"}},
          "life.moved_rock.food", "is nothing");
  refused(b, {{"life.moved_rock.nitrogen", "0.5 g/d"}}, "life.moved_rock.food", "is given beside nitrogen",
          "life.moved_rock.nitrogen");
  refused(b, {{"life.alkalinity.lowest", "8.1"}}, "life.alkalinity.lowest", "is above what the water has now",
          "life.alkalinity.now");
  accepted(b, {{"life.alkalinity.lowest", "8"}});
  refused(b, {{"life.arrivals.ph_scale", "total"}}, "life.arrivals.ph_scale", "measure both with one probe",
          "life.ph_scale");
  refused(b, {{"life.room.width", "2.1 m"}}, "life.room.width", "they may be exchanged", "life.room.run");
  accepted(b, {{"life.room.width", "2 m"}});
  refused(b, {{"life.animals[1].adult", "38 cm"}, {"life.animals[2].name", "x"}}, "life.animals[x].each", "is missing");
}

TEST_CASE("[life]: steps in order, and nothing after the end of the forecast") {
  const plan::build b = moving_in();
  refused(b, {{"life.start_up.animals[2].on", "0 d"}}, "life.start_up.animals[2].on", "is not after the step before it",
          "life.start_up.animals[1].on");
  constexpr std::string_view end = "life.start_up.horizon";
  refused(b, {{"life.start_up.animals[2].on", "61 d"}}, "life.start_up.animals[2].on", "after the end of the forecast",
          end);
  refused(b, {{"life.start_up.rock_on", "61 d"}}, "life.start_up.rock_on", "after the end of the forecast", end);
  refused(b, {{"life.start_up.culture[1].first", "61 d"}}, "life.start_up.culture[1].first", "after the end", end);
  refused(b, {{"life.start_up.ammonia_dose[1].rise", "1 mg/L"}, {"life.start_up.ammonia_dose[1].first", "61 d"}},
          "life.start_up.ammonia_dose[1].first", "after the end", end);
  refused(b, {{"life.start_up.water_change[1].part", "10 %"}, {"life.start_up.water_change[1].first", "61 d"}},
          "life.start_up.water_change[1].first", "after the end", end);
  refused(b, {{"life.start_up.horizon", "20 d"}}, "life.start_up.animals[2].on", "28 d is after", end);
  accepted(b, {{"life.start_up.horizon", "20 d"}, {"life.forecast", "false"}});  // nobody looks
  accepted(b, {{"life.start_up.rock_on", "60 d"}});
}

TEST_CASE("[life]: what lives in the display is not larger than it") {
  plan::build b = moving_in();
  with(b, {{"vessel.length", "2.4 m"},
           {"vessel.width", "1 m"},
           {"vessel.height", "0.85 m"},
           {"vessel.water_level", "0.8 m"}});
  accepted(b, {});
  plan::clear(b, "life.surface[sand].area");
  with(b, {{"life.surface[sand].bed", "2.2 m2"},
           {"life.surface[sand].breathing_depth", "4 mm"},
           {"life.surface[sand].grain", "1.2 mm"}});
  accepted(b, {});
  refused(b, {{"life.surface[sand].bed", "2.6 m2"}}, "life.surface[sand].bed",
          "of sand is more than the floor of display and sump", "vessel.length");
  refused(b, {{"life.surface[sand].breathing_depth", "0.86 m"}}, "life.surface[sand].breathing_depth",
          "of sand is above the rim", "vessel.height");
  refused(b, {{"life.surface[media].volume", "2100 L"}}, "life.surface[media].volume",
          "of media is more than display and sump hold", "vessel.height");
  refused(b, {{"life.room.run", "2.7 m"}}, "life.room.run", "is longer than the display inside", "vessel.length");
}

TEST_CASE("[life]: what must be given together, and one of several ways") {
  const plan::build b = moving_in();
  refused(b, {{"life.surface[3].name", "bed"}}, "life.surface[bed]", "needs one of area, volume, bed, rock");
  refused(b, {{"life.surface[3].name", "bed"}, {"life.surface[3].bed", "1 m2"}}, "life.surface[bed].bed",
          "needs grain beside it");
  refused(b, {{"life.surface[3].name", "m"}, {"life.surface[3].volume", "1 L"}}, "life.surface[m].volume",
          "needs specific_surface beside it");
  refused(b, {{"life.arrivals.ammonia", "1 mg/L"}}, "life.arrivals.ammonia", "is given beside ammonia_nitrogen",
          "life.arrivals.ammonia_nitrogen");
  plan::build speechless = b;
  plan::clear(speechless, "life.animals[1].speed");
  refused(speechless, {}, "life.animals[garden eels].adult", "needs speed beside it");
}

TEST_CASE("the load of food: the rule, what is wet counted whole") {
  const std::vector<plan::meal> meals{
      {"dry", {.food = grams_per_day(40.0), .protein = percent(45.0)}, plan::food_kind::dry, days(1.0)},
      {"wet", {.food = grams_per_day(100.0), .protein = percent(18.0)}, plan::food_kind::wet, days(7.0)}};
  const auto load = plan::load_of(meals);
  TW_CHECK(rule, load.central.as_nitrogen(), grams_per_day(0.092 * 18.0 + 0.16 * 18.0), relative(1e-12));
  TW_CHECK(rule, load.low.as_nitrogen(), grams_per_day(0.75 * 0.092 * 36.0), relative(1e-12));
  TW_CHECK(rule, load.high.as_nitrogen(), grams_per_day(1.25 * 0.092 * 18.0 + 0.16 * 18.0), relative(1e-12));
  TW_HOLDS(rule, plan::load_of({}).high.as_nitrogen().value() == 0.0);
}

TEST_CASE("[life] as the engines take it") {
  plan::build b = moving_in();
  plan::life_inputs in = of(b);
  TW_HOLDS(inputs, in.filter.food.size() == 2 && in.filter.food[1].label == "granulate");
  TW_HOLDS(inputs, in.filter.food[0].every == days(1.0));
  TW_CHECK(inputs, in.filter.rock->share, fraction(0.75), relative(1e-15));
  TW_CHECK(inputs, in.filter.surfaces[1].wet, square_metres(15.0), relative(1e-12));
  TW_CHECK(inputs, in.filter.survives, percent(50.0), relative(1e-15));
  TW_CHECK(inputs, in.filter.free_below.as_ammonia(), micrograms_per_litre(35.0), relative(1e-12));
  TW_HOLDS(inputs, in.weeks.animals.size() == 2 && in.weeks.cultures[0].when.times == 6);
  TW_CHECK(inputs, in_degrees_kh(in.alkalinity->now), 8.0, relative(1e-12));
  TW_HOLDS(inputs, in.ph->on() == water::ph_reading::scale::nbs && in.ph->value() == 8.1);
  TW_CHECK(inputs, in.arrivals->bag.total->as_nitrogen(), milligrams_per_litre(1.2), relative(1e-12));
  TW_HOLDS(inputs, in.arrivals->drip_into == life::drip_vessel::overflowing);
  TW_CHECK(inputs, in.power_cut.start, percent(85.0), relative(1e-12));
  TW_HOLDS(inputs, in.power_cut.help_within.has_value() && in.power_cut.battery->runs.has_value());
  TW_HOLDS(inputs, in.animals[0].adult.has_value() && in.animals[0].run_multiple == 3.0);

  // A bed of sand: 6 (1 - n)/d of its breathing volume. The other units of alkalinity. A measured load.
  plan::clear(b, "life.surface[sand].area");
  plan::clear(b, "life.moved_rock.food");
  with(b, {{"life.surface[sand].bed", "2 m2"},
           {"life.surface[sand].breathing_depth", "5 mm"},
           {"life.surface[sand].grain", "1 mm"},
           {"life.alkalinity.unit", "mg/L CaCO3"},
           {"life.alkalinity.now", "143"},
           {"life.alkalinity.lowest", "100"},
           {"life.moved_rock.nitrogen", "0.5 g/d"}});
  in = of(b);
  TW_CHECK(inputs, in.filter.surfaces[0].wet, square_metres(2.0 * 0.005 * 6.0 * 0.6 / 0.001), relative(1e-12));
  TW_CHECK(inputs, in_milliequivalents_per_litre(in.alkalinity->now), 143.0 / (100.0869 / 2.0), relative(1e-12));
  TW_CHECK(inputs, in.filter.rock->proven.high.as_nitrogen(), grams_per_day(0.5), relative(1e-12));
  plan::set(b, "life.alkalinity.unit", "meq/L");
  TW_CHECK(inputs, in_milliequivalents_per_litre(of(b).alkalinity->lowest), 100.0, relative(1e-12));
}

TEST_CASE("[life]: the levels to stay below are those of the library, until somebody says otherwise") {
  const plan::life_section s{};
  TW_CHECK(inputs, s.free_ammonia_below.get(), life::free_ammonia_four_days.level.as_ammonia(), relative(1e-12));
  TW_CHECK(inputs, s.ammonia_below.get(), life::total_ammonia_limit.level.as_nitrogen(), relative(1e-12));
}
