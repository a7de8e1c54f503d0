// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/salt_mix.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence salt{"tankwright::water::salt_for_finished_volume", kind::identity, "the mix brings its yield of salt"};
const evidence two_ways{"tankwright::water::salt_for_new_water", kind::identity, "new and finished water agree"};
const evidence band{"tankwright::water::salt_for_new_water_unmeasured", kind::identity,
                    "the batches at the ends of the band"};
const evidence trial_back{"tankwright::water::measured_yield", kind::identity,
                          "the batch that was made with this yield"};
const evidence trial_band{"tankwright::water::measured_yield", kind::property, "the band is that of the reading"};

tww::salt_batch new_water(const reference_row& row) {
  const double yield = row.has("yield") ? row["yield"] : 1.0;
  return tww::salt_for_new_water({.volume = litres(row.has("L") ? row["L"] : 1000.0),
                                  .target = practical_salinity{row["S_P"]},
                                  .temperature = celsius(row["t90"]),
                                  .mix_yield = fraction(yield)});
}
tww::salt_batch finished_water(const reference_row& row) {
  const double yield = row.has("yield") ? row["yield"] : 1.0;
  return tww::salt_for_finished_volume({.volume = litres(row.has("L") ? row["L"] : 1000.0),
                                        .target = practical_salinity{row["S_P"]},
                                        .temperature = celsius(row["t90"]),
                                        .mix_yield = fraction(yield)});
}
double new_water_value(const reference_row& row) {
  const auto batch = new_water(row);
  const std::string what = row.text("what");
  if (what == "mix") return in_kilograms(batch.mix);
  if (what == "finished") return in_litres(batch.finished);
  if (what == "litres per litre") return in_litres(batch.finished) / in_litres(batch.fresh_water);
  if (what == "mix for 1000 kg") return 1e3 * in_kilograms(batch.mix) / in_kilograms(batch.fresh_water_mass);
  const double grams_of_salt = in_grams(batch.anhydrous_salt);
  return what == "salt per litre poured" ? grams_of_salt / in_litres(batch.fresh_water)
                                         : grams_of_salt / in_kilograms(batch.fresh_water_mass);
}
double finished_water_value(const reference_row& row) {
  const auto batch = finished_water(row);
  if (row.text("what") == "mix") return in_kilograms(batch.mix);
  if (row.text("what") == "water") return in_litres(batch.fresh_water);
  return in_grams(batch.anhydrous_salt) / in_litres(batch.finished);
}
}  // namespace

TEST_CASE("salt mix: reference table, and balances with the densities of the TEOS-10 toolbox") {
  const std::map<std::string, row_handler> handlers{
      {"tankwright::water::salt_for_new_water", new_water_value},
      {"tankwright::water::salt_for_finished_volume", finished_water_value}};
  check_rows(reference_rows("water/salt_mix.csv"), handlers);
  check_rows(live_rows("water_salt_mix.csv"), handlers);
}

TEST_CASE("salt mix: salt is conserved, and the two questions have one answer") {
  for (const double s : {0.0, 2.0, 15.0, 35.0, 42.0}) {
    for (const double y : {0.5, 0.85, 0.92, 1.0}) {
      for (const double t : {2.0, 15.0, 25.0, 35.0}) {
        const auto finished = tww::salt_for_finished_volume({.volume = litres(2150.0),
                                                             .target = practical_salinity{s},
                                                             .temperature = celsius(t),
                                                             .mix_yield = fraction(y)});
        TW_CHECK(salt, finished.anhydrous_salt, finished.mix * y, relative(1e-14));
        TW_CHECK(salt, finished.fresh_water_mass + finished.mix, finished.finished_mass, relative(1e-14));
        TW_CHECK(salt, finished.finished, litres(2150.0), relative(1e-14));
        const auto poured = tww::salt_for_new_water({.volume = finished.fresh_water,
                                                     .target = practical_salinity{s},
                                                     .temperature = celsius(t),
                                                     .mix_yield = fraction(y)});
        TW_CHECK(two_ways, poured.mix, finished.mix, relative(1e-13));
        TW_CHECK(two_ways, poured.finished, litres(2150.0), relative(1e-14));
        CHECK_FALSE(poured.caution.text.empty());
        if (s == 0.0) continue;
        const auto yield = tww::measured_yield({.mix = poured.mix,
                                                .fresh_water = poured.fresh_water_mass,
                                                .reached = practical_salinity{s},
                                                .reading_error = practical_salinity{0.5}});
        TW_CHECK(trial_back, yield.central, fraction(y), relative(1e-13));
        TW_HOLDS(trial_band, yield.low < yield.central && yield.central <= yield.high && yield.high <= fraction(1.0));
        TW_CHECK(trial_band, yield.low, fraction(y * (1.0 - 0.5 / s)), relative(1e-12));
      }
    }
  }
}

TEST_CASE("salt mix: a mix that nobody has measured") {
  const auto batches = tww::salt_for_new_water_unmeasured(
      {.volume = litres(2150.0), .target = practical_salinity{35.0}, .temperature = celsius(24.0)});
  const auto at = [](double y) {
    return tww::salt_for_new_water({.volume = litres(2150.0),
                                    .target = practical_salinity{35.0},
                                    .temperature = celsius(24.0),
                                    .mix_yield = fraction(y)});
  };
  TW_CHECK(band, batches.mix.low, at(1.0).mix, tolerance{});
  TW_CHECK(band, batches.mix.central, at(0.92).mix, tolerance{});
  TW_CHECK(band, batches.mix.high, at(0.85).mix, tolerance{});
  TW_CHECK(band, batches.finished.low, at(1.0).finished, tolerance{});
  TW_CHECK(band, batches.finished_mass.high, at(0.85).finished_mass, tolerance{});
  TW_CHECK(band, batches.fresh_water, litres(2150.0), relative(1e-15));
  CHECK(batches.mix.low < batches.mix.central);
  CHECK_FALSE(batches.mix.reason.empty());
}

TEST_CASE("salt mix: mistakes are named") {
  const auto make = [](double volume, double s, double t, double y) {
    return tww::salt_for_new_water({.volume = litres(volume),
                                    .target = practical_salinity{s},
                                    .temperature = celsius(t),
                                    .mix_yield = fraction(y)});
  };
  CHECK_THROWS_WITH_AS((void)make(0.0, 35.0, 24.0, 0.87),
                       "tankwright::water::salt_for_new_water: volume = 0 L is not possible; expected more than 0 L",
                       invalid_input);
  CHECK_THROWS_WITH_AS(
      (void)make(2150.0, 35.0, 24.0, 87.0),
      "tankwright::water::salt_for_new_water: mix yield = 87 is not possible; expected more than 0 and at most 1",
      invalid_input);
  CHECK_THROWS_AS((void)make(2150.0, 35.0, 24.0, 0.0), invalid_input);
  CHECK_THROWS_AS((void)make(2150.0, 35.0, 24.0, 0.03), invalid_input);  // poorer than the water is to be
  CHECK_THROWS_AS((void)make(2150.0, 35.0, -3.0, 0.87), out_of_range);   // ice
  CHECK_THROWS_AS((void)make(2150.0, 43.0, 24.0, 0.87), out_of_range);
  const auto trial = [](double mix, double water, double reached, double error) {
    return tww::measured_yield({.mix = grams(mix),
                                .fresh_water = kilograms(water),
                                .reached = practical_salinity{reached},
                                .reading_error = practical_salinity{error}});
  };
  CHECK_THROWS_WITH_AS((void)trial(370.0, 10.0, 38.0, 1.0),
                       "tankwright::water::measured_yield: salinity reached = 38 would make the yield of the mix "
                       "1.07004909; a yield lies above 0 and at most at 1: check the scale, the reading and its "
                       "temperature, and that the water was fresh",
                       invalid_input);
  CHECK_THROWS_AS((void)trial(370.0, 10.0, 0.0, 1.0), invalid_input);
  CHECK_THROWS_AS((void)trial(370.0, 10.0, 33.0, -1.0), invalid_input);
}

TEST_CASE("salt mix: edges of the ranges") {
  const auto both = [](double volume, double s, double t, double y, range_policy policy) {
    (void)tww::salt_for_new_water({.volume = litres(volume),
                                   .target = practical_salinity{s},
                                   .temperature = celsius(t),
                                   .mix_yield = fraction(y)},
                                  policy);
    return tww::salt_for_finished_volume({.volume = litres(volume),
                                          .target = practical_salinity{s},
                                          .temperature = celsius(t),
                                          .mix_yield = fraction(y)},
                                         policy);
  };
  check_edges(tww::water_volume_limits, [&](double x, range_policy policy) { return both(x, 35, 24, 0.87, policy); });
  limits target = tww::practical_salinity_limits;
  target.argument = "target";
  check_edges(target, [&](double x, range_policy policy) { return both(100, x, 24, 0.87, policy); });
  check_edges(tww::mix_yield_limits, [&](double x, range_policy policy) { return both(100, 0, 24, x, policy); });
  check_edges({"temperature", "degC", above_absolute_zero_celsius, celsius_range(0.0, 80.0)},
              [&](double x, range_policy policy) { return both(100, 0, x, 0.87, policy); });
  const auto trial = [](double mix, double water, double reached, range_policy policy) {
    return tww::measured_yield(
        {.mix = kilograms(mix), .fresh_water = kilograms(water), .reached = practical_salinity{reached}}, policy);
  };
  CHECK_NOTHROW((void)trial(1.0, 10.0, 42.0, range_policy::published));
  CHECK_THROWS_AS((void)trial(1.0, 10.0, 42.1, range_policy::published), out_of_range);
  CHECK_NOTHROW((void)trial(1.0, 10.0, 42.1, extrapolate));
  CHECK_THROWS_AS((void)trial(0.0, 10.0, 35.0, extrapolate), invalid_input);
  CHECK_THROWS_AS((void)trial(1.0, 0.0, 35.0, extrapolate), invalid_input);
}
