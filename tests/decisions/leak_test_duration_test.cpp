// SPDX-License-Identifier: BSL-1.0
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <tankwright/decisions/first_fill/leak_test_duration.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence by_hand{"tankwright::decisions::answer_leak_test_duration", kind::identity,
                       "standard error of even readings and Boost.Math's Student t, in the test"};

plan::build planned() {
  plan::build build;
  give(build, {{"hold.surface", "2.4 m²"},
               {"hold.planned.leak", "0.5 L/d"},
               {"hold.planned.resolution", "0.5 mm"},
               {"hold.planned.readings_per_day", "2"},
               {"hold.planned.pan", "true"}});
  return build;
}

/// Smallest leak [L/d] that `days` of readings twice a day find by a gauge of `step` [mm] and a pan.
double smallest(double days, double step) {
  const double n = 2.0 * days + 1.0;
  double sxx = 0.0;
  for (int i = 0; i < static_cast<int>(n); ++i) sxx += std::pow(i / 2.0 - days / 2.0, 2);
  const double error =
      std::sqrt(2.0) * std::fmax(step / std::sqrt(12.0) / std::sqrt(sxx), step / (std::sqrt(3.0) * days));
  return 2.4 * 2.0 * quantile(boost::math::students_t{n - 2.0}, 0.95) * error;
}

}  // namespace

TEST_CASE("leak test duration: the days that find the leak, and no fewer") {
  const auto f = answered(decisions::leak_test_duration, planned());
  const double days = number(f, "days") / 86400.0;
  TW_HOLDS(by_hand, smallest(days, 0.5) <= 0.5 && smallest(days - 0.5, 0.5) > 0.5);
  TW_CHECK(by_hand, number(f, "leak"), 0.5e-3 / 86400.0, relative(1e-12));
  TW_CHECK(by_hand, smallest(days / 2.0, 1e3 * number(f, "finer")), 0.5, relative(1e-6));
  CHECK(f.verdict == verdict::for_information);
}

TEST_CASE("leak test duration: the leak of [hold] is the one to find, else a litre a day") {
  plan::build build = planned();
  plan::clear(build, "hold.planned.leak");
  TW_CHECK(by_hand, number(answered(decisions::leak_test_duration, build), "leak"), 1e-3 / 86400.0, relative(1e-12));
  give(build, {{"hold.leak", "0.25 L/d"}});
  TW_CHECK(by_hand, number(answered(decisions::leak_test_duration, build), "leak"), 0.25e-3 / 86400.0, relative(1e-12));
}

TEST_CASE("leak test duration: where evaporation hides the leak, no days are enough") {
  const auto f = answered(decisions::leak_test_duration, planned(),
                          {{"hold.planned.pan", "false"}, {"hold.planned.evaporation", "3 mm/d"}});
  CHECK(f.verdict == verdict::not_enough_known);
  CHECK(f.find("days") == nullptr);
  CHECK_FALSE(f.measure_next.empty());
  plan::build none = planned();
  plan::clear(none, "hold.planned");
  CHECK(asked(decisions::leak_test_duration, none).empty());
}
