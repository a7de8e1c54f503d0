// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/adjust.hpp>

#include <cmath>
#include <utility>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence up_and_down{"tankwright::water::raise_salinity", kind::property, "what is added can be diluted again"};
const evidence nothing{"tankwright::water::raise_salinity", kind::identity, "no step, nothing to add"};
const evidence all_new{"tankwright::water::replace_to_reach", kind::identity, "to reach the replacement, replace all"};
const evidence from_fresh{"tankwright::water::raise_salinity", kind::identity, "from fresh water, as new water"};

struct state {
  double litre = 1000.0, from = 33.0, target = 35.0, t = 25.0, yield = 0.9, replacement = 0.0;
};
tww::mix_to_add raise(const state& x, range_policy policy = range_policy::published) {
  return tww::raise_salinity({.volume = litres(x.litre),
                              .from = practical_salinity{x.from},
                              .target = practical_salinity{x.target},
                              .temperature = celsius(x.t),
                              .mix_yield = fraction(x.yield)},
                             policy);
}
tww::water_to_add lower(const state& x, range_policy policy = range_policy::published) {
  return tww::lower_salinity({.volume = litres(x.litre),
                              .from = practical_salinity{x.from},
                              .target = practical_salinity{x.target},
                              .temperature = celsius(x.t)},
                             policy);
}
tww::water_to_replace replace(const state& x, range_policy policy = range_policy::published) {
  return tww::replace_to_reach({.volume = litres(x.litre),
                                .from = practical_salinity{x.from},
                                .target = practical_salinity{x.target},
                                .replacement = practical_salinity{x.replacement},
                                .temperature = celsius(x.t)},
                               policy);
}
}  // namespace

TEST_CASE("adjust: reference table") {
  check_rows(reference_rows("water/adjust.csv"),
             {{"tankwright::water::lower_salinity", [](const reference_row& row) {
                 const auto rho = tww::density(practical_salinity{row["from"]}, celsius(row["t90"]));
                 return in_kilograms(lower({.litre = in_litres(kilograms(row["kg"]) / rho),
                                            .from = row["from"],
                                            .target = row["target"],
                                            .t = row["t90"]})
                                         .fresh_water_mass);
               }}});
}

TEST_CASE("adjust: balances with the densities of the TEOS-10 toolbox") {
  const auto upwards = [](const reference_row& row) {
    return state{row["L"], row["low"], row["high"], row["t90"], row["yield"]};
  };
  const auto downwards = [](const reference_row& row) { return state{row["L"], row["high"], row["low"], row["t90"]}; };
  check_rows(live_rows("water_adjust.csv"),
             {{"tankwright::water::raise_salinity",
               [&](const reference_row& row) { return in_kilograms(raise(upwards(row)).mix); }},
              {"tankwright::water::lower_salinity",
               [&](const reference_row& row) { return in_litres(lower(downwards(row)).fresh_water); }},
              {"tankwright::water::replace_to_reach", [&](const reference_row& row) {
                 const auto step = replace(downwards(row));
                 return in_litres(row.text("what") == "out" ? step.taken_out : step.put_in);
               }}});
}

TEST_CASE("adjust: up and down again, no step, all of it") {
  for (const double from : {5.0, 20.0, 33.0}) {
    for (const double target : {34.0, 36.0, 41.0}) {
      const auto up = raise({.from = from, .target = target, .yield = 1.0});
      const auto down = lower({.litre = in_litres(up.finished), .from = target, .target = from});
      // The salt that was added, diluted to the first salinity, needs this much water.
      const double grams_per_kilogram = in_grams_per_kilogram(tww::absolute_from_practical(practical_salinity{from}));
      TW_CHECK(up_and_down, down.fresh_water_mass, up.mix * (1000.0 / grams_per_kilogram - 1.0), relative(1e-12));
    }
    TW_CHECK(nothing, raise({.from = from, .target = from}).mix, kilograms(0.0), tolerance{});
    TW_CHECK(nothing, lower({.from = from, .target = from}).fresh_water, litres(0.0), tolerance{});
    TW_CHECK(nothing, replace({.from = from, .target = from}).put_in, litres(0.0), tolerance{});
    TW_CHECK(all_new, replace({.from = from, .target = 40.0, .replacement = 40.0}).part, fraction(1.0),
             relative(1e-15));
    TW_CHECK(all_new, replace({.from = from, .target = 40.0, .replacement = 40.0}).put_in, litres(1000.0),
             relative(1e-14));
  }
  const auto new_water = tww::salt_for_new_water({.volume = litres(1000.0),
                                                  .target = practical_salinity{35.0},
                                                  .temperature = celsius(25.0),
                                                  .mix_yield = fraction(0.9)});
  TW_CHECK(from_fresh, raise({.from = 0.0, .target = 35.0}).mix, new_water.mix, relative(1e-14));
  CHECK_FALSE(raise({}).caution.text.empty());
}

TEST_CASE("adjust: the wrong direction is named, with the right function") {
  CHECK_THROWS_WITH_AS((void)raise({.from = 36.0, .target = 35.0}),
                       "tankwright::water::raise_salinity: target = 35 is below the present salinity, 36; use "
                       "lower_salinity or replace_to_reach",
                       invalid_input);
  CHECK_THROWS_WITH_AS((void)lower({.from = 34.0, .target = 35.0}),
                       "tankwright::water::lower_salinity: target = 35 is above the present salinity, 34; use "
                       "raise_salinity or replace_to_reach",
                       invalid_input);
  CHECK_THROWS_WITH_AS(
      (void)replace({.from = 34.0, .target = 35.0, .replacement = 34.5}),
      "tankwright::water::replace_to_reach: target = 35 does not lie between the present salinity, 34, "
      "and that of the replacement, 34.5",
      invalid_input);
  CHECK_THROWS_AS((void)lower({.from = 34.0, .target = 0.0}), invalid_input);
  CHECK_THROWS_AS((void)replace({.from = 34.0, .target = 35.0, .replacement = 34.0}), invalid_input);
  CHECK_NOTHROW((void)replace({.from = 34.0, .target = 34.0, .replacement = 34.0}));
  CHECK_THROWS_AS((void)raise({.yield = 0.03}), invalid_input);
}

TEST_CASE("adjust: edges of the ranges") {
  const auto all = [](const state& x, range_policy policy) {
    (void)raise(x, policy);
    (void)replace({x.litre, x.from, x.target, x.t, x.yield, x.target}, policy);
    return lower({x.litre, x.target, x.from, x.t}, policy);
  };
  check_edges(tww::water_volume_limits, [&](double x, range_policy policy) { return all({.litre = x}, policy); });
  for (const double t : {-3.0, 80.1}) {
    CHECK_THROWS_AS((void)raise({.t = t}), out_of_range);
    CHECK_THROWS_AS((void)lower({.from = 36.0, .t = t}), out_of_range);
    CHECK_THROWS_AS((void)replace({.from = 36.0, .t = t}), out_of_range);
  }
  CHECK_THROWS_WITH_AS(
      (void)lower({.from = 35.0, .target = 43.0}),
      doctest::Contains("tankwright::water::lower_salinity: target = 43 is outside the published range"), out_of_range);
  CHECK_THROWS_WITH_AS((void)lower({.from = 35.0, .target = -0.1}),
                       doctest::Contains("tankwright::water::lower_salinity: target = -0.1 is not possible"),
                       invalid_input);
  for (const auto& [s, target] : {std::pair{-0.1, 35.0}, std::pair{35.0, -0.1}, std::pair{std::nan(""), 35.0}}) {
    CHECK_THROWS_AS((void)raise({.from = s, .target = target}), invalid_input);
    CHECK_THROWS_AS((void)lower({.from = s, .target = target}), invalid_input);
    CHECK_THROWS_AS((void)replace({.from = s, .target = target}), invalid_input);
  }
  CHECK_THROWS_WITH_AS(
      (void)raise({.target = 42.1}),
      "tankwright::water::raise_salinity: target = 42.1 is outside the published range 0 to 42 (PSS-78, "
      "UNESCO 1981); pass tankwright::extrapolate to go past it",
      out_of_range);
  CHECK_THROWS_AS((void)lower({.from = 42.1}), out_of_range);
  CHECK_THROWS_AS((void)replace({.from = 36.0, .target = 38.0, .replacement = 42.1}), out_of_range);
  CHECK_NOTHROW((void)replace({.from = 36.0, .target = 38.0, .replacement = 42.1}, extrapolate));
}
