// SPDX-License-Identifier: BSL-1.0
#include <array>
#include <boost/math/distributions/students_t.hpp>
#include <random>
#include <tankwright/commissioning/hold_plan.hpp>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twc = tankwright::commissioning;

namespace {

evidence about(std::string_view function, kind rests_on, std::string_view source) {
  return {"tankwright::commissioning::" + std::string{function}, rests_on, std::string{source}};
}

const twc::hold_plan plan{
    .surface = square_metres(2.0), .resolution = millimetres(1.0), .readings_per_day = 24.0, .pan = false};

}  // namespace

TEST_CASE("hold plan: reference rows") {
  check_rows(
      reference_rows("commissioning/hold_plan.csv"),
      {{"tankwright::commissioning::leak_through_hole", [](const reference_row& row) {
          return in_litres_per_hour(twc::leak_through_hole(
              {.diameter = millimetres(row["d_mm"]), .depth = metres(row["h_m"]), .discharge_coefficient = row["Cd"]}));
        }}});
}

TEST_CASE("hold plan: the smallest leak is two quantiles of the standard error") {
  // 49 hourly readings of 1 mm over 48 h: standard error 0.0699854 mm/d by res/sqrt(12)/sqrt(Sxx), here from the sum
  // itself.
  double sxx = 0.0;
  for (int i = 0; i < 49; ++i) sxx += (i / 24.0 - 1.0) * (i / 24.0 - 1.0);
  const double error = 1.0 / std::sqrt(12.0) / std::sqrt(sxx);
  const boost::math::students_t t47{47.0};
  TW_CHECK(about("smallest_leak_seen", kind::identity, "standard error of evenly spaced readings, by its own sum"),
           twc::smallest_leak_seen(plan, hours(48.0)),
           square_metres(2.0) * millimetres_per_day(2.0 * quantile(t47, 0.95) * error), relative(1e-9));
}

TEST_CASE("hold plan: days and gauge are the inverses of the smallest leak") {
  const flow_rate leak = litres_per_day(0.75);
  const auto days_needed = twc::days_to_see(plan, leak);
  REQUIRE(days_needed);
  const auto inverse_days = about("days_to_see", kind::identity, "inverse of smallest_leak_seen");
  TW_HOLDS(inverse_days, twc::smallest_leak_seen(plan, *days_needed) <= leak);
  TW_HOLDS(inverse_days, twc::smallest_leak_seen(plan, *days_needed - hours(1.0)) > leak);

  const auto gauge = twc::gauge_to_see(plan, days(2.0), leak);
  REQUIRE(gauge);
  twc::hold_plan finer = plan;
  finer.resolution = *gauge;
  TW_CHECK(about("gauge_to_see", kind::identity, "inverse of smallest_leak_seen"),
           twc::smallest_leak_seen(finer, days(2.0)), leak, relative(1e-9));
}

TEST_CASE("hold plan: what evaporation hides no number of days brings back, and a pan does") {
  twc::hold_plan unsure = plan;
  unsure.evaporation = {millimetres_per_day(2.0), millimetres_per_day(3.5), millimetres_per_day(5.0), "correlation"};
  CHECK_FALSE(twc::days_to_see(unsure, litres_per_day(2.0)));
  CHECK_FALSE(twc::gauge_to_see(unsure, days(7.0), litres_per_day(2.0)));
  unsure.pan = true;
  CHECK(twc::days_to_see(unsure, litres_per_day(2.0)));
  const auto order = about("days_to_see", kind::property, "a smaller leak takes longer");
  TW_HOLDS(order, *twc::days_to_see(unsure, litres_per_day(0.2)) > *twc::days_to_see(unsure, litres_per_day(2.0)));
}

TEST_CASE("hold plan: stages of a fill") {
  const std::array depths{metres(0.25), metres(0.5), metres(1.0)};
  const auto stages = twc::hold_stages(plan, depths, litres_per_day(2.0));
  REQUIRE(stages.size() == 3);
  TW_CHECK(about("hold_stages", kind::identity, "flow through a hole goes with the root of the depth"), stages[0].leak,
           litres_per_day(1.0), relative(1e-12));
  TW_HOLDS(about("hold_stages", kind::property, "the shallow stage takes longest"),
           *stages[0].days_needed > *stages[2].days_needed);
  const std::array falling{metres(0.5), metres(0.25)};
  CHECK_THROWS_AS((void)twc::hold_stages(plan, falling, litres_per_day(2.0)), invalid_input);
}

TEST_CASE("hold plan: bad input") {
  twc::hold_plan bad = plan;
  bad.readings_per_day = 0.0;
  CHECK_THROWS_WITH_AS(
      (void)twc::days_to_see(bad, litres_per_day(1.0)),
      "tankwright::commissioning::days_to_see: readings per day = 0 1/d is not possible; expected more than 0 1/d",
      invalid_input);
  CHECK_THROWS_AS((void)twc::days_to_see(plan, litres_per_day(0.0)), invalid_input);
  CHECK_THROWS_AS((void)twc::smallest_leak_seen(plan, days(0.0)), invalid_input);
  CHECK_THROWS_AS((void)twc::leak_through_hole({.diameter = metres(0.0), .depth = metres(1.0)}), invalid_input);
}
