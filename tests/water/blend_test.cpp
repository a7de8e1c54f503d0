// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/blend.hpp>

#include <array>
#include <vector>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence one{"tankwright::water::blend", kind::identity, "one water alone, and the same water in parts"};
const evidence heat{"tankwright::water::blend", kind::identity, "equal waters meet half way in temperature"};
const evidence between{"tankwright::water::blend", kind::property, "between the extremes"};

tww::portion litres_of(double litre, double s, double t) {
  return {.volume = litres(litre), .salinity = practical_salinity{s}, .temperature = celsius(t)};
}
double from_row(const reference_row& row) {
  if (row.has("kg1")) {
    const std::array waters{
        tww::weighed_portion{.mass = kilograms(row["kg1"]), .salinity = practical_salinity{row["S1"]}},
        tww::weighed_portion{.mass = kilograms(row["kg2"]), .salinity = practical_salinity{row["S2"]}}};
    return tww::blend(waters).value();
  }
  const std::array waters{litres_of(row["L1"], row["S1"], row["t90"]), litres_of(row["L2"], row["S2"], row["t90"])};
  return tww::blend(waters).salinity.value();
}
}  // namespace

TEST_CASE("blend: reference table") {
  check_rows(reference_rows("water/blend.csv"), {{"tankwright::water::blend", from_row}});
}

TEST_CASE("blend: one water, equal waters, and many") {
  const std::array alone{litres_of(120.0, 33.0, 21.0)};
  const auto same = tww::blend(alone);
  TW_CHECK(one, same.salinity, practical_salinity{33.0}, relative(1e-15));
  TW_CHECK(one, same.temperature, celsius(21.0), relative(1e-15));
  TW_CHECK(one, same.volume, litres(120.0), relative(1e-14));

  const auto fifty_kilograms = [](double t) {
    const tww::portion litre = litres_of(1.0, 35.0, t);
    return litres_of(in_litres(kilograms(50.0) / tww::density(litre.salinity, litre.temperature)), 35.0, t);
  };
  const std::array equal_mass{fifty_kilograms(20.0), fifty_kilograms(30.0)};
  // The specific heats differ by 0.14 %: half way within a few millikelvin.
  TW_CHECK(heat, tww::blend(equal_mass).temperature, celsius(25.0), within(kelvin_steps(0.005)));

  std::vector<tww::portion> many;
  for (int i = 0; i <= 40; ++i) many.push_back(litres_of(1.0 + i, i, 10.0 + 0.5 * i));
  const auto mixed = tww::blend(many);
  TW_HOLDS(between, mixed.salinity > practical_salinity{0.0} && mixed.salinity < practical_salinity{40.0});
  TW_HOLDS(between, in_celsius(mixed.temperature) > 10.0 && in_celsius(mixed.temperature) < 30.0);
  many.push_back(litres_of(0.0, 35.0, 25.0));
  TW_CHECK(one, tww::blend(many).salinity, mixed.salinity, tolerance{});
}

TEST_CASE("blend: mistakes are named by their label") {
  const std::array too_salty{litres_of(10.0, 35.0, 25.0), tww::portion{.label = "old tank",
                                                                       .volume = litres(900.0),
                                                                       .salinity = practical_salinity{45.0},
                                                                       .temperature = celsius(25.0)}};
  CHECK_THROWS_WITH_AS(
      (void)tww::blend(too_salty),
      "tankwright::water::blend: old tank: practical salinity = 45 is outside the published range 0 to "
      "42 (PSS-78, UNESCO 1981); pass tankwright::extrapolate to go past it",
      out_of_range);
  CHECK_NOTHROW((void)tww::blend(too_salty, extrapolate));
  CHECK_THROWS_AS((void)tww::blend(std::span<const tww::portion>{}), invalid_input);
  const std::array empty{litres_of(0.0, 35.0, 25.0)};
  CHECK_THROWS_AS((void)tww::blend(empty), invalid_input);
  const std::array negative{
      tww::weighed_portion{.label = "bucket", .mass = kilograms(-1.0), .salinity = practical_salinity{35.0}}};
  CHECK_THROWS_WITH_AS((void)tww::blend(negative),
                       "tankwright::water::blend: bucket: mass = -1 kg is not possible; expected at least 0 kg",
                       invalid_input);
}

TEST_CASE("blend: edges of the ranges") {
  const auto both = [](double litre, double s, double t, range_policy policy) {
    const std::array waters{litres_of(1.0, 35.0, 25.0), litres_of(litre, s, t)};
    return tww::blend(waters, policy);
  };
  check_edges(tww::portion_volume_limits, [&](double x, range_policy policy) { return both(x, 35, 25, policy); });
  check_edges(tww::practical_salinity_limits, [&](double x, range_policy policy) { return both(5, x, 25, policy); });
  check_edges({"temperature", "degC", above_absolute_zero_celsius, celsius_range(0.0, 80.0)},
              [&](double x, range_policy policy) { return both(5, 0, x, policy); });
  check_edges(tww::portion_mass_limits, [](double x, range_policy policy) {
    const std::array waters{tww::weighed_portion{.mass = kilograms(1.0), .salinity = practical_salinity{35.0}},
                            tww::weighed_portion{.mass = kilograms(x), .salinity = practical_salinity{30.0}}};
    return tww::blend(waters, policy);
  });
}
