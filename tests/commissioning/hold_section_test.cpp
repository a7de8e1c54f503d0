// SPDX-License-Identifier: BSL-1.0
#include <tankwright/commissioning/hold_section.hpp>

#include <algorithm>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twc = tankwright::commissioning;

namespace {

const evidence by_hand{"tankwright::commissioning::assess_hold", kind::identity, "the same calls by hand"};

vessel::leak_test falling(double mm_per_day) {
  vessel::leak_test test{.surface = square_metres(2.4), .depth = metres(0.8),
                      .resolution = millimetres(0.5)};
  for (int i = 0; i <= 8; ++i) {
    const double wobble = i % 2 == 0 ? 0.2 : -0.2;
    test.readings.push_back({.at = hours(12.0 * i), .level = millimetres(800.0 - mm_per_day * 0.5 * i + wobble)});
  }
  return test;
}

double number(const twc::finding& f, std::string_view label) {
  const auto found = std::find_if(f.numbers.begin(), f.numbers.end(), [&](const auto& e) { return e.label == label; });
  REQUIRE_MESSAGE(found != f.numbers.end(), label);
  return found->value.central;
}

}  // namespace

TEST_CASE("hold section: the findings are the parts called by hand") {
  twc::hold_section section{.done = falling(3.0)};
  section.air = room::air{.temperature = celsius(20.0), .humidity = relative_humidity::from_percent(55.0)};
  section.water = celsius(19.0);
  const auto all = twc::assess_hold(section);
  REQUIRE(all.size() == 1);

  // By hand: evaporation of a square metre of fresh water at 19 degC, as a fall.
  const auto flux = room::evaporation({.water = {.temperature = celsius(19.0), .salinity = practical_salinity{0.0}},
                                       .air = *section.air,
                                       .surfaces = {{.label = "one", .area = square_metres(1.0)}}})
                        .rate;
  const double rho = in_kilograms_per_cubic_metre(water::density(practical_salinity{0.0}, celsius(19.0)));
  vessel::leak_test test = *section.done;
  test.evaporation = map_rising(flux, [&](mass_flow m) { return metres_per_second(in_kilograms_per_second(m) / rho); });
  const auto result = vessel::read_leak_test(test);
  TW_CHECK(by_hand, number(all[0], "leak"), in_cubic_metres_per_second(result.leak.central), relative(1e-12));
  TW_CHECK(by_hand, number(all[0], "leak that matters"), in_cubic_metres_per_second(result.leak_that_matters),
           relative(1e-15));
  CHECK((all[0].says == twc::verdict::does_not_hold) == (result.answer == vessel::leak_answer::proven));
  CHECK_FALSE(all[0].before_acting.empty());
  CHECK_FALSE(all[0].sources.empty());
  CHECK_FALSE(all[0].measure_next.empty());  // no pan, no water temperature
  const auto figures = twc::figures_of(section);
  REQUIRE(figures.size() == 1);
  CHECK(figures[0].id == all[0].id);
  CHECK(figures[0].curves[2].x.size() == 9);
}

TEST_CASE("hold section: a planned test, and one that cannot see its leak") {
  vessel::leak_test_plan plan{.surface = square_metres(2.4), .resolution = millimetres(0.5), .pan = true};
  twc::hold_section section{.planned = plan, .leak_to_see = litres_per_day(0.5)};
  auto all = twc::assess_hold(section);
  REQUIRE(all.size() == 1);
  TW_CHECK(by_hand, number(all[0], "days of readings"),
           in_seconds(*vessel::required_duration(plan, litres_per_day(0.5))), relative(1e-15));
  CHECK_FALSE(all[0].before_acting.empty());

  section.planned->pan = false;
  section.planned->evaporation = {millimetres_per_day(2.0), millimetres_per_day(3.0), millimetres_per_day(4.0), "guess"};
  all = twc::assess_hold(section);
  CHECK(all[0].says == twc::verdict::not_enough_known);
  CHECK_FALSE(all[0].measure_next.empty());
  CHECK(twc::assess_hold({}).empty());
}
