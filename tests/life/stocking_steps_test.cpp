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
    TW_HOLDS(dates, all[i].left_over <= ask.below.get());
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

TEST_CASE("stocking steps: what is taken and what is refused") {
  const auto with = [](auto change, double x) {
    auto ask = question();
    ask.start = fraction(0.9);
    change(ask, x);
    return twl::stocking_dates(ask);
  };
  // The loads are refused in kilograms a second.
  const auto whole = [](auto& a, double x) { a.whole = twl::nitrogen_load::from_nitrogen(mass_flow::from_value(x)); };
  const auto start = [](auto& a, double x) { a.start = fraction(x); };
  const auto width = [](auto& a, double x) { a.step = fraction(x); };
  const auto rest = [](auto& a, double x) { a.rest = days(x); };
  const auto growth = [](auto& a, double x) { a.growth = per_day(x); };
  const auto net = [](auto& a, double x) { a.net = litres(x); };
  const auto below = [](auto& a, double x) { a.below = water::total_ammonia::from_nitrogen(milligrams_per_litre(x)); };
  check_ranges("life::stocking_dates",
               {TW_RANGE("whole load", 1e-30, 1e15, with(whole, x)), TW_RANGE("share", 1e-30, 1.0, with(start, x)),
                TW_RANGE("share", 1e-30, 1.0, with(width, x)), TW_RANGE("rest", 0.0, 36500.0, with(rest, x)),
                TW_RANGE("growth", 1e-6, 1e3, with(growth, x)), TW_RANGE("net volume", 1e-3, 1e10, with(net, x)),
                TW_RANGE("ammonia", 1e-9, 1e6, with(below, x))});
  const auto one = [](double before, double after, double mu, double v) {
    return twl::ammonia_of_step({.before = twl::nitrogen_load::from_nitrogen(mass_flow::from_value(before)),
                                 .after = twl::nitrogen_load::from_nitrogen(mass_flow::from_value(after)),
                                 .growth = per_day(mu),
                                 .net = litres(v)});
  };
  check_ranges("life::ammonia_of_step", {TW_RANGE("load before", 1e-30, 1e15, one(x, 1e15, 0.1, 1.0)),
                                         TW_RANGE("load after", 1.0, 1e15, one(1.0, x, 0.1, 1.0)),
                                         TW_RANGE("growth", 1e-6, 1e3, one(1.0, 2.0, x, 1.0)),
                                         TW_RANGE("net volume", 1e-3, 1e10, one(1.0, 2.0, 0.1, x))});
}

TEST_CASE("stocking steps: dates of small steps, written a second time") {
  auto ask = question();
  ask.below = water::total_ammonia::from_nitrogen(milligrams_per_litre(0.3));
  ask.rest = days(2.0);
  const auto found = twl::stocking_dates(ask);
  // 2 g/d in 2000 L: a step from share a to b leaves (b (ln(b/a) - 1) + a)/0.1 mg/L over.
  const auto left = [](double a, double b) { return (b * (std::log(b / a) - 1.0) + a) / 0.1; };
  double share = 0.25, day = 2.0;
  std::size_t i = 0;
  TW_CHECK(dates, in_days(found[0].on), 0.0, within(0.0));
  TW_CHECK(dates, found[0].left_over.as_nitrogen().value(), 0.0, within(0.0));
  while (share < 1.0) {
    ++i;
    REQUIRE(i < found.size());
    double to = share;
    for (double h = 0.25; h > 1e-13; h *= 0.5) {
      while (to + h <= std::fmin(1.0, share + 0.25) && left(share, to + h) <= 0.3) to += h;
    }
    TW_CHECK(dates, found[i].share.value(), to, relative(1e-9));
    TW_CHECK(dates, in_days(found[i].on), day, relative(1e-9));
    TW_CHECK(dates, in_milligrams_per_litre(found[i].left_over.as_nitrogen()), left(share, to),
             (tolerance{.absolute = 1e-9}));
    day += std::fmax(2.0, std::log(to / share) / 0.1);
    share = to;
  }
  CHECK(found.size() == i + 1);
}

TEST_CASE("stocking steps: what a small step leaves over, by its series") {
  // With d = 1 - a/b: b/mu (d^2/2 + d^3/3 + d^4/4 + ...), the sum of -ln(1 - d) - d.
  for (const double d : {1e-7, 1e-5, 0.5e-4, 0.99e-4, 1.01e-4, 1e-3}) {
    const double series = d * d * (0.5 + d * (1.0 / 3.0 + d * (0.25 + d * (0.2 + d / 6.0))));
    TW_CHECK(step, twl::kernel::left_over(3.0 * (1.0 - d), 3.0, 0.2), 15.0 * series,
             relative(1e-15 / d + (d < 1e-4 ? 1e-12 : 1e-6)));
    // In extended precision the difference of the two forms is seen to 1e-7 of the last term.
    const long double dl = static_cast<long double>(d);
    const long double exact =
        dl * dl * (0.5L + dl * (1.0L / 3.0L + dl * (0.25L + dl * (0.2L + dl * (1.0L / 6.0L + dl / 7.0L)))));
    if (d < 1e-4) {
      TW_CHECK(step, static_cast<double>(twl::kernel::left_over<long double>(3.0L * (1.0L - dl), 3.0L, 0.2L)),
               static_cast<double>(15.0L * exact), relative(2e-12));
    }
  }
}

TEST_CASE("stocking steps: twice the water thins out what is left over, and four hundred steps are the most") {
  const auto left = [](double net) {
    return twl::ammonia_of_step(
               {.before = nitrogen(1.0), .after = nitrogen(2.0), .growth = per_day(0.1), .net = litres(net)})
        .left_over.as_nitrogen();
  };
  // 2 g/d (ln 2 - 1) + 1 g/d over 0.1/d, in 2500 L.
  TW_CHECK(step, in_milligrams_per_litre(left(2500.0)), (2.0 * (std::log(2.0) - 1.0) + 1.0) / 0.1 / 2.5,
           relative(1e-12));
  auto ask = question();
  ask.step = fraction(1.0 / 512.0);
  ask.start = fraction(112.0 / 512.0);
  CHECK(twl::stocking_dates(ask).size() == 401);  // the first day, and four hundred steps
  ask.start = fraction(111.0 / 512.0);
  CHECK_THROWS_AS((void)twl::stocking_dates(ask), no_convergence);
}
