// SPDX-License-Identifier: BSL-1.0
#include <array>
#include <boost/math/distributions/students_t.hpp>
#include <tankwright/vessel/leak_test_planning.hpp>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

evidence about(std::string_view function, kind rests_on, std::string_view source) {
  return {"tankwright::vessel::" + std::string{function}, rests_on, std::string{source}};
}

const vs::leak_test_plan plan{
    .surface = square_metres(2.0), .resolution = millimetres(1.0), .readings_per_day = 24.0, .pan = false};

}  // namespace

TEST_CASE("leak test planning: reference rows") {
  check_rows(
      reference_rows("vessel/leak_test_planning.csv"),
      {{"tankwright::vessel::leak_through_hole", [](const reference_row& row) {
          return in_litres_per_hour(vs::leak_through_hole(
              {.diameter = millimetres(row["d_mm"]), .depth = metres(row["h_m"]), .discharge_coefficient = row["Cd"]}));
        }}});
}

TEST_CASE("leak test planning: the smallest leak is two quantiles of the standard error") {
  // 49 hourly readings with a scatter of 0.2 mm over 48 h, the gauge so fine that it does not count.
  double sxx = 0.0;
  for (int i = 0; i < 49; ++i) sxx += (i / 24.0 - 1.0) * (i / 24.0 - 1.0);
  const double error = 0.2 / std::sqrt(sxx);
  const boost::math::students_t t47{47.0};
  TW_CHECK(about("minimum_detectable_leak", kind::identity, "standard error of evenly spaced readings, by its own sum"),
           vs::minimum_detectable_leak({.surface = square_metres(2.0),
                                        .resolution = micrometres(0.1),
                                        .scatter = millimetres(0.2),
                                        .readings_per_day = 24.0},
                                       hours(48.0)),
           square_metres(2.0) * millimetres_per_day(2.0 * quantile(t47, 0.95) * error), relative(1e-6));
  // A gauge of 1 mm that the level does not pass by a step knows the fall to one step either way, however often it is
  // read; with 3 mm/d of evaporation for certain it passes six of them.
  const auto rounding = about("minimum_detectable_leak", kind::identity, "a rectangle of one step either way");
  TW_CHECK(rounding, vs::minimum_detectable_leak(plan, hours(48.0)),
           square_metres(2.0) * millimetres_per_day(2.0 * quantile(t47, 0.95) / (2.0 * std::sqrt(3.0))),
           relative(1e-9));
  auto falling = plan;
  falling.evaporation = {millimetres_per_day(3.0), millimetres_per_day(3.0), millimetres_per_day(3.0), ""};
  TW_CHECK(rounding, vs::minimum_detectable_leak(falling, hours(48.0)),
           square_metres(2.0) * millimetres_per_day(2.0 * quantile(t47, 0.95) / std::sqrt(12.0) / std::sqrt(sxx)),
           relative(1e-9));
}

TEST_CASE("leak test planning: days and gauge are the inverses of the smallest leak") {
  const flow_rate leak = litres_per_day(0.75);
  const auto required = vs::required_duration(plan, leak);
  REQUIRE(required);
  const auto inverse_days = about("required_duration", kind::identity, "inverse of minimum_detectable_leak");
  TW_HOLDS(inverse_days, vs::minimum_detectable_leak(plan, *required) <= leak);
  TW_HOLDS(inverse_days, vs::minimum_detectable_leak(plan, *required - hours(1.0)) > leak);

  const auto gauge = vs::required_resolution(plan, days(2.0), leak);
  REQUIRE(gauge);
  vs::leak_test_plan finer = plan;
  finer.resolution = *gauge;
  TW_CHECK(about("required_resolution", kind::identity, "inverse of minimum_detectable_leak"),
           vs::minimum_detectable_leak(finer, days(2.0)), leak, relative(1e-9));
}

TEST_CASE("leak test planning: what evaporation hides no number of days brings back, and a pan does") {
  vs::leak_test_plan unsure = plan;
  unsure.evaporation = {millimetres_per_day(2.0), millimetres_per_day(3.5), millimetres_per_day(5.0), "correlation"};
  CHECK_FALSE(vs::required_duration(unsure, litres_per_day(2.0)));
  CHECK_FALSE(vs::required_resolution(unsure, days(7.0), litres_per_day(2.0)));
  unsure.pan = true;
  CHECK(vs::required_duration(unsure, litres_per_day(2.0)));
  const auto order = about("required_duration", kind::property, "a smaller leak takes longer");
  TW_HOLDS(order,
           *vs::required_duration(unsure, litres_per_day(0.2)) > *vs::required_duration(unsure, litres_per_day(2.0)));
}

TEST_CASE("leak test planning: stages of a fill") {
  const std::array depths{metres(0.25), metres(0.5), metres(1.0)};
  const auto stages = vs::leak_test_stages(plan, depths, litres_per_day(2.0));
  REQUIRE(stages.size() == 3);
  TW_CHECK(about("leak_test_stages", kind::identity, "flow through a hole goes with the root of the depth"),
           stages[0].leak, litres_per_day(1.0), relative(1e-12));
  TW_HOLDS(about("leak_test_stages", kind::property, "the shallow stage takes longest"),
           *stages[0].required > *stages[2].required);
  const std::array falling{metres(0.5), metres(0.25)};
  CHECK_THROWS_AS((void)vs::leak_test_stages(plan, falling, litres_per_day(2.0)), invalid_input);
}

TEST_CASE("leak test planning: bad input") {
  vs::leak_test_plan bad = plan;
  bad.readings_per_day = 0.0;
  CHECK_THROWS_WITH_AS(
      (void)vs::required_duration(bad, litres_per_day(1.0)),
      "tankwright::vessel::required_duration: readings per day = 0 1/d is not possible; expected 0.01 to 1000000 1/d",
      invalid_input);
  CHECK_THROWS_AS((void)vs::required_duration(plan, litres_per_day(0.0)), invalid_input);
  CHECK_THROWS_AS((void)vs::minimum_detectable_leak(plan, days(0.0)), invalid_input);
  CHECK_THROWS_AS((void)vs::leak_through_hole({.diameter = metres(0.0), .depth = metres(1.0)}), invalid_input);
}

TEST_CASE("leak test planning: the first number of readings that will do, however often the gauge is read") {
  const auto first = about("required_duration", kind::property, "one number of readings after the other");
  for (const double a_day : {0.25, 4.0}) {
    for (const double surface : {0.3, 3.0}) {
      for (const double scatter : {0.0, 2.0}) {  // mm
        const vs::leak_test_plan one{.surface = square_metres(surface),
                                     .resolution = millimetres(1.0),
                                     .scatter = millimetres(scatter),
                                     .readings_per_day = a_day};
        const auto found_in = [&](int steps) { return vs::minimum_detectable_leak(one, days(steps / a_day)); };
        for (const int enough : {2, 3, 5, 17, 60}) {
          for (const double part : {1.0 + 1e-9, 1.0 - 1e-4}) {
            const flow_rate leak = found_in(enough) * part;
            int steps = 2;
            while (found_in(steps) > leak) ++steps;
            CAPTURE(a_day);
            CAPTURE(enough);
            const auto required = vs::required_duration(one, leak);
            REQUIRE(required);
            TW_CHECK(first, in_days(*required), steps / a_day, relative(1e-12));
          }
        }
      }
    }
  }
}

TEST_CASE("leak test planning: a leak just as large as can be found is found") {
  const flow_rate in_two_days = vs::minimum_detectable_leak(plan, days(2.0));
  CHECK(vs::required_duration(plan, in_two_days) == days(2.0));
  const auto by = [](length resolution) {
    auto other = plan;
    other.resolution = resolution;
    return vs::required_resolution(plan, days(2.0), vs::minimum_detectable_leak(other, days(2.0)));
  };
  CHECK(by(metres(1.0)) == metres(1.0));
  REQUIRE(by(metres(1e-9)));  // the finest gauge there is
  TW_CHECK(about("required_resolution", kind::identity, "inverse of minimum_detectable_leak"), *by(metres(1e-9)),
           metres(1e-9), relative(1e-9));
  CHECK(vs::leak_test_stages(plan, {}, in_two_days).empty());
}
