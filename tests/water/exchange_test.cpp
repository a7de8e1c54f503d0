// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/exchange.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence enough{"tankwright::water::changes_to_leave", kind::identity, "this many are enough, one fewer is not"};
const evidence back{"tankwright::water::time_to_leave", kind::identity, "inverse of left_after_flow"};
const evidence closed{"tankwright::water::concentration_after", kind::identity, "closed form in extended precision"};
const evidence no_way_out{"tankwright::water::concentration_after", kind::identity, "without a way out: C0 + P t/V"};
const evidence flow_left{"tankwright::water::concentration_after", kind::identity,
                         "without production: left_after_flow"};
const evidence limit{"tankwright::water::concentration_after", kind::property, "tends to where it settles"};
const evidence settles{"tankwright::water::settled_concentration", kind::identity, "what comes in goes out"};
const evidence periodic{"tankwright::water::settled_saw_tooth", kind::identity,
                        "peak p/f, trough p (1 - f)/f without treatment"};
const evidence pulses{"tankwright::water::settled_saw_tooth", kind::identity, "doses: peak (m/V)/(1 - exp(-k T))"};
const evidence repeated{"tankwright::water::settled_saw_tooth", kind::identity,
                        "the limit of many rounds, step by step"};

double left_after_flow(const reference_row& row) {
  const double left =
      tww::left_after_flow(
          {.volume = litres(500.0), .flow = litres_per_hour(100.0), .time = hours(5.0 * row["volumes"])})
          .value();
  return row.has("replaced") ? 1.0 - left : left;
}
}  // namespace

TEST_CASE("exchange: reference table") {
  check_rows(
      reference_rows("water/exchange.csv"),
      {{"tankwright::water::left_after_flow", left_after_flow},
       {"tankwright::water::left_after_changes", [](const reference_row& row) {
          return tww::left_after_changes({.part = fraction(row["part"]), .times = static_cast<int>(row["times"])})
              .value();
        }}});
}

TEST_CASE("exchange: how many changes, how long a flow") {
  for (const double part : {0.05, 0.1, 0.25, 0.5, 0.9, 1.0}) {
    for (const double left : {0.9, 0.5, 0.1, 0.01, 1e-6}) {
      const int times = tww::changes_to_leave({.part = fraction(part), .left = fraction(left)});
      TW_HOLDS(enough, tww::left_after_changes({.part = fraction(part), .times = times}).value() <= left * (1 + 1e-9));
      TW_HOLDS(enough, tww::left_after_changes({.part = fraction(part), .times = times - 1}).value() > left);
      const duration time =
          tww::time_to_leave({.volume = litres(800.0), .flow = litres_per_hour(60.0), .left = fraction(left)});
      TW_CHECK(back, tww::left_after_flow({.volume = litres(800.0), .flow = litres_per_hour(60.0), .time = time}),
               fraction(left), relative(1e-14));
    }
  }
  CHECK(tww::changes_to_leave({.part = percent(10.0), .left = fraction(1.0)}) == 0);
  CHECK(tww::changes_to_leave({.part = percent(50.0), .left = fraction(0.125)}) == 3);
}

TEST_CASE("exchange: a substance that is made, diluted and cleared") {
  // 2000 L, of which 3/4 are cleared and 1/4 renewed every hour.
  const long double k = 1.0L;
  for (const double made : {0.0, 5.0}) {
    for (const double start : {0.0, 2.0}) {
      for (const double inflow : {0.0, 0.4}) {
        const tww::mixed_substance tank{.volume = litres(2000.0),
                                        .start = milligrams_per_litre(start),
                                        .made = grams_per_day(made),
                                        .new_water = litres_per_hour(500.0),
                                        .in_new_water = milligrams_per_litre(inflow),
                                        .cleared = litres_per_hour(1500.0)};
        for (const double h : {0.0, 1e-9, 0.5, 3.0, 50.0}) {
          const long double gain = static_cast<long double>(made) / 48.0L + 0.25L * static_cast<long double>(inflow);
          const long double expected = static_cast<long double>(start) * std::exp(-k * static_cast<long double>(h)) -
                                       gain / k * std::expm1(-k * static_cast<long double>(h));
          TW_CHECK(closed, tww::concentration_after(tank, hours(h)),
                   milligrams_per_litre(static_cast<double>(expected)),
                   (tolerance{.absolute = 1e-18, .relative = 1e-13}));
        }
        const mass_concentration end = tww::settled_concentration(tank);
        TW_CHECK(settles, end * litres_per_hour(2000.0), tank.made + tank.in_new_water * tank.new_water,
                 (tolerance{.absolute = 1e-24, .relative = 1e-14}));
        TW_CHECK(limit, tww::concentration_after(tank, hours(60.0)), end,
                 (tolerance{.absolute = 1e-18, .relative = 1e-13}));
      }
    }
    TW_CHECK(
        no_way_out,
        tww::concentration_after(
            {.volume = litres(2000.0), .start = milligrams_per_litre(2.0), .made = grams_per_day(made)}, hours(12.0)),
        milligrams_per_litre(2.0 + made / 4.0), relative(1e-14));
  }
  const double left =
      tww::left_after_flow({.volume = litres(800.0), .flow = litres_per_hour(40.0), .time = hours(7.0)}).value();
  TW_CHECK(flow_left,
           tww::concentration_after({.volume = litres(800.0),
                                     .start = milligrams_per_litre(10.0),
                                     .new_water = litres_per_hour(40.0),
                                     .in_new_water = milligrams_per_litre(2.0)},
                                    hours(7.0)),
           milligrams_per_litre(2.0 + 8.0 * left), relative(1e-14));
}

TEST_CASE("exchange: the saw-tooth of a routine") {
  // 2 g/d into 2000 L is 1 mg/L a day, 7 mg/L a week.
  tww::change_routine weekly{.volume = litres(2000.0),
                             .every = days(7.0),
                             .part = fraction(0.2),
                             .made = grams_per_day(2.0),
                             .in_new_water = milligrams_per_litre(1.0)};
  const auto plain = tww::settled_saw_tooth(weekly);
  TW_CHECK(periodic, plain.before_change, milligrams_per_litre(1.0 + 7.0 / 0.2), relative(1e-14));
  TW_CHECK(periodic, plain.after_change, milligrams_per_litre(1.0 + 7.0 * 0.8 / 0.2), relative(1e-14));
  weekly.cleared = litres_per_hour(8.0);
  const auto treated = tww::settled_saw_tooth(weekly);
  mass_concentration level{};
  for (int week = 0; week < 200; ++week) {
    level = tww::concentration_after(
        {.volume = weekly.volume, .start = level, .made = weekly.made, .cleared = weekly.cleared}, days(7.0));
    if (week == 199) TW_CHECK(repeated, treated.before_change, level, relative(1e-12));
    level = level * 0.8 + weekly.in_new_water * 0.2;
  }
  TW_CHECK(repeated, treated.after_change, level, relative(1e-12));
  // Food once a day, no water changes: 2 g at once into 2000 L, half of the water cleared a day.
  const auto fed = tww::settled_saw_tooth({.volume = litres(2000.0),
                                           .every = days(1.0),
                                           .part = fraction(0.0),
                                           .dose = grams(2.0),
                                           .cleared = litres_per_day(1000.0)});
  TW_CHECK(pulses, fed.after_change, milligrams_per_litre(1.0 / (1.0 - std::exp(-0.5))), relative(1e-14));
  TW_CHECK(pulses, fed.before_change, milligrams_per_litre(1.0 / (std::exp(0.5) - 1.0)), relative(1e-14));
  // A trickle of treatment: the share gone in a round is 1e-12, and not lost in rounding.
  const auto trickle = tww::settled_saw_tooth({.volume = litres(1.0),
                                               .every = days(1.0),
                                               .part = fraction(0.0),
                                               .dose = grams(1.0),
                                               .cleared = litres_per_day(1e-12)});
  TW_CHECK(pulses, trickle.after_change, grams_per_litre(1e12), relative(1e-11));
}

TEST_CASE("exchange: edges of the ranges") {
  check_edges(tww::changed_part_limits, [](double x, range_policy) {
    (void)tww::changes_to_leave({.part = fraction(x), .left = fraction(0.5)});
    return tww::left_after_changes({.part = fraction(x), .times = 3});
  });
  CHECK_THROWS_AS((void)tww::left_after_changes({.part = fraction(0.1), .times = -1}), invalid_input);
  check_edges(tww::part_left_limits, [](double x, range_policy) {
    (void)tww::time_to_leave({.volume = litres(1.0), .flow = litres_per_hour(1.0), .left = fraction(x)});
    return tww::changes_to_leave({.part = fraction(0.1), .left = fraction(x)});
  });
  check_edges(tww::exchange_volume_limits, [](double x, range_policy) {
    (void)tww::time_to_leave({.volume = litres(x), .flow = litres_per_hour(1.0), .left = fraction(0.5)});
    return tww::left_after_flow({.volume = litres(x), .flow = litres_per_hour(1.0), .time = hours(1.0)});
  });
  check_edges(tww::exchange_flow_limits, [](double x, range_policy) {
    return tww::left_after_flow({.volume = litres(1.0), .flow = litres_per_hour(x), .time = hours(1.0)});
  });
  check_edges(tww::exchange_time_limits, [](double x, range_policy) {
    return tww::left_after_flow({.volume = litres(1.0), .flow = litres_per_hour(1.0), .time = hours(x)});
  });
  CHECK_THROWS_AS(
      (void)tww::time_to_leave({.volume = litres(1.0), .flow = litres_per_hour(0.0), .left = fraction(0.5)}),
      invalid_input);
  const auto tank = [](auto change) {
    tww::mixed_substance m{.volume = litres(100.0), .cleared = litres_per_hour(1.0)};
    change(m);
    (void)tww::settled_concentration(m);
    return tww::concentration_after(m, hours(1.0));
  };
  using substance = tww::mixed_substance;
  check_edges(tww::exchange_volume_limits,
              [&](double x, range_policy) { return tank([&](substance& m) { m.volume = litres(x); }); });
  check_edges(tww::made_limits,
              [&](double x, range_policy) { return tank([&](substance& m) { m.made = grams_per_day(x); }); });
  check_edges(tww::new_water_limits,
              [&](double x, range_policy) { return tank([&](substance& m) { m.new_water = litres_per_hour(x); }); });
  check_edges(tww::cleared_limits, [&](double x, range_policy) {
    return tank([&](substance& m) {
      m.new_water = litres_per_hour(1.0);
      m.cleared = litres_per_hour(x);
    });
  });
  check_edges(tww::detail::renamed(tww::concentration_limits, "concentration at the start"),
              [&](double x, range_policy) { return tank([&](substance& m) { m.start = milligrams_per_litre(x); }); });
  check_edges(
      tww::detail::renamed(tww::concentration_limits, "concentration in the new water"),
      [&](double x, range_policy) { return tank([&](substance& m) { m.in_new_water = milligrams_per_litre(x); }); });
  check_edges(tww::exchange_time_limits,
              [](double x, range_policy) { return tww::concentration_after({.volume = litres(1.0)}, hours(x)); });
  CHECK_THROWS_AS((void)tww::settled_concentration({.volume = litres(1.0), .made = grams_per_day(1.0)}), invalid_input);
  const auto routine = [](double interval, double part, double dose) {
    return tww::settled_saw_tooth(
        {.volume = litres(100.0), .every = days(interval), .part = fraction(part), .dose = grams(dose)});
  };
  check_edges(tww::change_interval_limits, [&](double x, range_policy) { return routine(x, 0.1, 1.0); });
  check_edges(tww::dose_limits, [&](double x, range_policy) { return routine(1.0, 0.1, x); });
  CHECK_THROWS_AS((void)routine(1.0, -0.1, 1.0), invalid_input);
  CHECK_THROWS_AS((void)routine(1.0, 0.0, 1.0), invalid_input);
}
