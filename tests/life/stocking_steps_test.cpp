// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/stocking_steps.hpp>

#include <cmath>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

const evidence step{"tankwright::life::ammonia_of_step", kind::identity, "integral of load less growing capacity"};
const evidence dates{"tankwright::life::stocking_dates", kind::identity, "worked by hand"};

twl::nitrogen_load nitrogen(double a_day) { return twl::nitrogen_load::from_nitrogen(grams_per_day(a_day)); }

twl::stocking_question question() {
  return {.whole = nitrogen(2.0),
          .start = fraction(0.25),
          .step = fraction(0.25),
          .rest = days(7.0),
          .growth = per_day(0.1),
          .net = litres(2000.0),
          .below = water::total_ammonia::from_nitrogen(milligrams_per_litre(5.0))};
}

}  // namespace

TEST_CASE("stocking steps: what is left over is the area between load and capacity") {
  const auto a = twl::ammonia_of_step(
      {.before = nitrogen(1.0), .after = nitrogen(2.0), .growth = per_day(0.1), .net = litres(1000.0)});
  // Summed in small steps: 2 g/d less 1 g/d e^(0.1 t) until they meet.
  double sum = 0.0;
  const double until = std::log(2.0) / 0.1, dt = until / 200000.0;
  for (int i = 0; i < 200000; ++i) sum += (2.0 - std::exp(0.1 * (i + 0.5) * dt)) * dt;
  TW_CHECK(step, in_days(a.catches_up), until, relative(1e-12));
  TW_CHECK(step, in_milligrams_per_litre(a.left_over.as_nitrogen()), sum, relative(1e-8));  // g in 1000 L
  const auto none = twl::ammonia_of_step(
      {.before = nitrogen(1.0), .after = nitrogen(1.0), .growth = per_day(0.1), .net = litres(1000.0)});
  TW_CHECK(step, none.left_over.as_nitrogen().value(), 0.0, within(0.0));
  // The two forms of the kernel meet, against long double.
  for (const double x : {1.00005, 1.0000999, 1.000101, 1.001, 3.0}) {
    TW_CHECK(step, twl::kernel::left_over(1.0, x, 0.1),
             static_cast<double>(twl::kernel::left_over<long double>(1.0L, static_cast<long double>(x), 0.1L)),
             relative(1e-7));
  }
}

TEST_CASE("stocking steps: steps that leave little over come as planned") {
  const auto all = twl::stocking_dates(question());
  REQUIRE(all.size() == 4);  // a quarter on the first day, and three steps
  TW_CHECK(dates, all[0].share.value(), 0.25, within(0.0));
  TW_CHECK(dates, in_days(all[1].on), 7.0, relative(1e-12));
  // From a quarter to a half it catches up in ln 2/0.1 = 6.9 days: the rest is longer.
  TW_CHECK(dates, in_days(all[2].on), 14.0, relative(1e-12));
  TW_CHECK(dates, in_days(all[3].on), 21.0, relative(1e-12));
  TW_CHECK(dates, all[3].share.value(), 1.0, within(1e-15));
  // 1 g/d (ln 2 - 1) + 0.5 g/d over 0.1/d in 2000 L.
  TW_CHECK(dates, in_milligrams_per_litre(all[1].left_over.as_nitrogen()), (std::log(2.0) - 1.0 + 0.5) / 0.1 / 2.0,
           relative(1e-9));
}

TEST_CASE("stocking steps: a low level makes them smaller, and none leaves more over") {
  auto ask = question();
  ask.below = water::total_ammonia::from_nitrogen(milligrams_per_litre(0.1));
  const auto all = twl::stocking_dates(ask);
  TW_HOLDS(dates, all.size() > 4);
  for (std::size_t i = 1; i < all.size(); ++i) {
    TW_HOLDS(dates, in_milligrams_per_litre(all[i].left_over.as_nitrogen()) <= 0.1 * (1.0 + 1e-9));
    TW_HOLDS(dates, all[i].on > all[i - 1].on);
    TW_HOLDS(dates, all[i].share.value() > all[i - 1].share.value());
  }
  TW_CHECK(dates, all.back().share.value(), 1.0, within(1e-15));
  auto slow = ask;
  slow.growth = per_day(0.05);
  TW_HOLDS(dates, twl::stocking_dates(slow).back().on > all.back().on);
  auto whole = question();
  whole.start = fraction(1.0);
  TW_HOLDS(dates, twl::stocking_dates(whole).size() == 1);
  auto never = question();
  never.below = water::total_ammonia::from_nitrogen(milligrams_per_litre(1e-8));
  CHECK_THROWS_AS((void)twl::stocking_dates(never), no_convergence);
}

TEST_CASE("stocking steps: edges of the ranges") {
  const auto with = [](auto change) {
    auto ask = question();
    ask.start = fraction(0.9);
    change(ask);
    return twl::stocking_dates(ask);
  };
  check_edges(twl::step_share_limits, [&](double x, range_policy) {
    return with([&](auto& a) {
      a.start = fraction(x);
      a.step = fraction(1.0);
      a.below = water::total_ammonia::from_nitrogen(milligrams_per_litre(1e6));
    });
  });
  check_edges(twl::step_rest_limits, [&](double x, range_policy) { return with([&](auto& a) { a.rest = days(x); }); });
  CHECK_THROWS_AS((void)with([](auto& a) { a.growth = per_day(0.0); }), invalid_input);
  CHECK_THROWS_AS((void)with([](auto& a) { a.net = litres(0.0); }), invalid_input);
  CHECK_THROWS_AS((void)with([](auto& a) { a.whole = nitrogen(0.0); }), invalid_input);
  CHECK_THROWS_AS((void)twl::ammonia_of_step(
                      {.before = nitrogen(2.0), .after = nitrogen(1.0), .growth = per_day(0.1), .net = litres(1.0)}),
                  invalid_input);
}
