// SPDX-License-Identifier: BSL-1.0
// Start-up: what is taken and what is refused, what is filled in when nothing is said, and the ledger by hand.
#include <cmath>

#include <tankwright/life/start_up.hpp>

#include "support/check.hpp"
#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

const std::string simulate = "tankwright::life::simulate_start_up";

twl::nitrogen_load load(double grams) { return twl::nitrogen_load::from_nitrogen(grams_per_day(grams)); }
water::total_ammonia ammonia(double mg) { return water::total_ammonia::from_nitrogen(milligrams_per_litre(mg)); }
twl::nitrite_level nitrite(double mg) { return twl::nitrite_level::from_nitrogen(milligrams_per_litre(mg)); }
twl::nitrate_level nitrate(double mg) { return twl::nitrate_level::from_nitrogen(milligrams_per_litre(mg)); }

/// A hundredth of a day with one of everything, in 1000 L; nothing lives in it.
twl::start_up plain() {
  return {.label = "plan",
          .net = litres(1000.0),
          .temperature = celsius(25.0),
          .oxygen = milligrams_per_litre(6.5),
          .ammonia = ammonia(1.0),
          .seedings = {{.when = {.at = days(0.0)}, .added = twl::bacteria{}}},
          .loads = {{.from = days(0.0), .load = load(0.0)}},
          .doses = {{.when = {.at = days(0.0)}, .rise = ammonia(0.0)}},
          .water_changes = {{.when = {.at = days(0.0)}, .part = fraction(0.0)}},
          .horizon = days(0.01),
          .every = days(0.01)};
}

template <class Change>
range_of varied(const char* argument, double low, double high, Change change) {
  return {"plan: " + std::string{argument}, low, high, [change](double x) {
            auto plan = plain();
            change(plan, x);
            (void)twl::simulate_start_up(plan);
          }};
}

double mg(mass m) { return in_milligrams(m); }

}  // namespace

TEST_CASE("start-up ranges: what is taken and what is refused") {
  using plan = twl::start_up;
  check_ranges(
      "life::simulate_start_up",
      {varied("net volume", 1e-3, 1e10, [](plan& p, double x) { p.net = litres(x); }),
       {"plan: temperature", -5.0, 100.0,
        [](double x) {
          auto p = plain();
          p.temperature = celsius(x);
          (void)twl::simulate_start_up(p, extrapolate);
        }},
       varied("temperature", 5.0, 35.0, [](plan& p, double x) { p.temperature = celsius(x); }),
       varied("oxygen", 0.0, 1e6, [](plan& p, double x) { p.oxygen = milligrams_per_litre(x); }),
       varied("horizon", 1e-3, 3650.0,
              [](plan& p, double x) {
                p.horizon = days(x);
                p.every = days(1e5);
              }),
       varied("interval of the samples", 1e-3, 1e5, [](plan& p, double x) { p.every = days(x); }),
       varied("ammonia", 0.0, 1e6, [](plan& p, double x) { p.ammonia = ammonia(x); }),
       varied("nitrite", 0.0, 1e6, [](plan& p, double x) { p.nitrite = nitrite(x); }),
       varied("nitrate", 0.0, 1e6, [](plan& p, double x) { p.nitrate = nitrate(x); }),
       varied("ammonia limit", 1e-6, 1e6, [](plan& p, double x) { p.ammonia_limit = ammonia(x); }),
       varied("nitrite limit", 1e-6, 1e6, [](plan& p, double x) { p.nitrite_limit = nitrite(x); }),
       varied("ammonia oxidisers of a seeding", 0.0, 1e9,
              [](plan& p, double x) {
                p.seedings[0].added = twl::bacteria{grams(x), {}};
              }),
       varied("nitrite oxidisers of a seeding", 0.0, 1e9,
              [](plan& p, double x) {
                p.seedings[0].added = twl::bacteria{{}, grams(x)};
              }),
       varied("rise by an ammonia dose", 0.0, 1e6, [](plan& p, double x) { p.doses[0].rise = ammonia(x); }),
       varied("part of a water change", 0.0, 1.0, [](plan& p, double x) { p.water_changes[0].part = fraction(x); }),
       varied("nitrogen load", 0.0, 1e9, [](plan& p, double x) { p.loads[0].load = load(x); }),
       varied("time of a load", 0.0, 1e5, [](plan& p, double x) { p.loads[0].from = days(x); }),
       varied("time of a seeding", 0.0, 1e5, [](plan& p, double x) { p.seedings[0].when.at = days(x); }),
       varied("time of an ammonia dose", 0.0, 1e5, [](plan& p, double x) { p.doses[0].when.at = days(x); }),
       varied("time of a water change", 0.0, 1e5, [](plan& p, double x) { p.water_changes[0].when.at = days(x); }),
       varied("interval of a seeding", 0.0, 1e5, [](plan& p, double x) { p.seedings[0].when.every = days(x); }),
       varied("interval of a seeding", 1e-3, 1e5, [](plan& p, double x) {
         p.seedings[0].when.times = 2;
         p.seedings[0].when.every = days(x);
       })});
  const auto samples = [](double count) {
    auto p = plain();
    p.horizon = days(101.0);
    p.every = days(101.0 / count);
    p.oxygen = milligrams_per_litre(0.0);
    return twl::simulate_start_up(p);
  };
  CHECK(samples(10.0).samples.size() == 11);
  CHECK(samples(2000.0).samples.size() == 2001);
  CHECK_THROWS_AS((void)samples(1.00001e5), invalid_input);
  // 117 days are 216 times 13 hours, which come out a digit short of them: still one sample at the end.
  auto rounded = plain();
  rounded.horizon = days(117.0);
  rounded.every = hours(13.0);
  rounded.oxygen = milligrams_per_litre(0.0);
  CHECK(twl::simulate_start_up(rounded).samples.size() == 217);
  CHECK(in_days(twl::simulate_start_up(rounded).samples.back().at) == 117.0);
  const auto times = [](int count) {
    auto p = plain();
    p.doses[0].when.times = count;
    p.doses[0].when.every = days(1.0);
    return twl::simulate_start_up(p);
  };
  CHECK_THROWS_AS((void)times(0), invalid_input);
  CHECK_NOTHROW((void)times(1));
  CHECK_NOTHROW((void)times(100000));
  CHECK_THROWS_AS((void)times(100001), invalid_input);
  for (const bool first : {true, false}) {
    auto p = plain();
    (first ? p.ammonia_oxidisers : p.nitrite_oxidisers).yield = 0.0;
    try {
      (void)twl::simulate_start_up(p);
      CHECK(false);
    } catch (const invalid_input& e) {
      CHECK(e.details().argument == (first ? "ammonia oxidisers: yield" : "nitrite oxidisers: yield"));
      CHECK(e.details().function == simulate);
    }
  }
}

TEST_CASE("start-up ranges: the ledger of a tank in which nothing lives, by hand") {
  const evidence by_hand{simulate, kind::identity, "doses, loads and water changes added up by hand"};
  auto p = plain();
  p.ammonia = ammonia(1.0);
  p.nitrite = nitrite(2.0);
  p.nitrate = nitrate(5.0);
  p.horizon = days(10.0);
  p.every = days(1.0);
  // 2 g/d from day 2: 2 mg/L a day. 3 mg/L on days 1, 4 and 7. Half changed on day 5 and on day 8, before the sample.
  p.loads = {{.from = days(2.0), .load = load(2.0)}};
  p.doses = {{.when = {.at = days(1.0), .every = days(3.0), .times = 3}, .rise = ammonia(3.0)}};
  p.water_changes = {{.when = {.at = days(5.0), .every = days(3.0), .times = 2}, .part = fraction(0.5)}};
  p.seedings = {};
  const auto found = twl::simulate_start_up(p);
  const double wanted[] = {1.0, 4.0, 4.0, 6.0, 11.0, 6.5, 8.5, 13.5, 7.75, 9.75, 11.75};
  REQUIRE(found.samples.size() == 11);
  for (std::size_t i = 0; i < 11; ++i) {
    TW_CHECK(by_hand, in_days(found.samples[i].at), static_cast<double>(i), within(1e-12));
    TW_CHECK(by_hand, in_milligrams_per_litre(found.samples[i].ammonia.as_nitrogen()), wanted[i], relative(1e-9));
    const double part = i < 5 ? 1.0 : i < 8 ? 0.5 : 0.25;
    TW_CHECK(by_hand, in_milligrams_per_litre(found.samples[i].nitrite.as_nitrogen()), 2.0 * part, relative(1e-9));
    TW_CHECK(by_hand, in_milligrams_per_litre(found.samples[i].nitrate.as_nitrogen()), 5.0 * part, relative(1e-9));
  }
  const auto& all = found.summary;
  CHECK(all.label == "plan");
  TW_CHECK(by_hand, in_milligrams_per_litre(all.ammonia.level.as_nitrogen()), 15.5, relative(1e-9));  // before day 8
  TW_CHECK(by_hand, in_days(all.ammonia.at), 8.0, relative(1e-9));
  TW_CHECK(by_hand, in_milligrams_per_litre(all.nitrite.level.as_nitrogen()), 2.0, relative(1e-12));
  TW_CHECK(by_hand, in_days(all.nitrite.at), 0.0, within(0.0));
  // In 1000 L: 8 at first, 9 dosed, 16 by the load; out go half of 20 and half of 19.
  TW_CHECK(by_hand, mg(all.nitrogen_added), 1000.0 * (8.0 + 9.0 + 16.0), relative(1e-9));
  TW_CHECK(by_hand, mg(all.nitrogen_removed), 1000.0 * (0.5 * (13.0 + 7.0) + 0.5 * (15.5 + 3.5)), relative(1e-9));
  TW_CHECK(by_hand, mg(all.nitrogen_oxidised), 0.0, within(1e-6));
  CHECK_FALSE(all.clear_since);
  CHECK_FALSE(all.caution.text.empty());
}

TEST_CASE("start-up ranges: what is filled in when nothing is said") {
  const twl::start_up unsaid{.net = litres(100.0), .temperature = celsius(25.0), .oxygen = milligrams_per_litre(6.5)};
  CHECK(unsaid.label == "start-up");
  CHECK(compare(in_days(unsaid.horizon), 60.0, relative(1e-14)).good);
  CHECK(compare(in_days(unsaid.every), 0.25, relative(1e-14)).good);
  CHECK(unsaid.ammonia == ammonia(0.0));
  CHECK(unsaid.nitrite == nitrite(0.0));
  CHECK(unsaid.nitrate == nitrate(0.0));
  CHECK(unsaid.ammonia_limit == ammonia(0.1));
  CHECK(unsaid.nitrite_limit == nitrite(0.1));
  CHECK(unsaid.ammonia_oxidisers.yield.get() == twl::ammonia_oxidisers_2014.yield.get());
  CHECK(unsaid.nitrite_oxidisers.yield.get() == twl::nitrite_oxidisers_2014.yield.get());
  CHECK(twl::schedule{.at = days(1.0)}.times == 1);
  // Clear from the start: nothing was ever there.
  const auto clear = twl::simulate_start_up(unsaid).summary;
  REQUIRE(clear.clear_since);
  CHECK(in_days(*clear.clear_since) == 0.0);
  CHECK(clear.ammonia.level == ammonia(0.0));
  // At the limit is still clear; above it is not.
  auto p = plain();
  p.ammonia = ammonia(0.1);
  p.ammonia_limit = ammonia(0.1);
  CHECK(twl::simulate_start_up(p).summary.clear_since);
  p.ammonia = ammonia(0.1001);
  CHECK_FALSE(twl::simulate_start_up(p).summary.clear_since);
  p.ammonia = ammonia(0.05);
  p.nitrite = nitrite(0.1001);
  CHECK_FALSE(twl::simulate_start_up(p).summary.clear_since);
}

TEST_CASE("start-up ranges: what cannot be followed is given up, with the time that it got to") {
  const twl::detail::nitrogen_cycle<double> broken{{1.2, 0.5, 0.15, 0.1}, {1.2, 0.2, 0.05, 0.1}, std::nan("")};
  twl::detail::start_up_run run{broken, {1.0, 0.1, 0.0, 0.1, 0.0}, {.limit = 0.1}, {.limit = 0.1}};
  try {
    run.run_until("tankwright::test", 1.0);
    CHECK(false);
  } catch (const no_convergence& e) {
    CHECK(e.details().argument == "time");
    CHECK(e.details().value == 0.0);
  }
}

TEST_CASE("start-up ranges: ways that come out the same stay in the order given") {
  std::vector<twl::start_up> ways{plain(), plain(), plain()};
  ways[0].label = "b";
  ways[1].label = "a";
  ways[2].label = "c";
  ways[2].ammonia = ammonia(0.5);
  const auto ranked = twl::compare_start_ups(ways);
  CHECK(ranked[0].label == "c");
  CHECK(ranked[1].label == "b");
  CHECK(ranked[2].label == "a");
}
