// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/viscosity.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence rounding{"tankwright::water::viscosity", kind::identity, "the same formula in long double"};
const evidence two_scales{"tankwright::water::viscosity", kind::identity, "S_A = u_PS S_P"};
const evidence ordered{"tankwright::water::viscosity", kind::property, "grows with salt, falls with warmth"};
const evidence second_opinion{"tankwright::water::viscosity_millero", kind::property,
                              "within the 1.5 % of Sharqawy et al."};

absolute_salinity grams_per_kilogram(double s) { return absolute_salinity::from_grams_per_kilogram(s); }

// The printed points are on IPTS-68.
temperature from_t68(double t68) { return celsius(t68 / 1.00024); }
}  // namespace

TEST_CASE("viscosity: reference table") {
  const auto sharqawy = [](const reference_row& row) {
    return in_pascal_seconds(tww::viscosity(grams_per_kilogram(row["S_A"]), celsius(row["t90"])));
  };
  const auto millero = [](const reference_row& row) {
    return in_pascal_seconds(tww::viscosity_millero(practical_salinity{row["S_P"]}, from_t68(row["t68"])));
  };
  check_rows(reference_rows("water/viscosity.csv"),
             {{"tankwright::water::viscosity", sharqawy}, {"tankwright::water::viscosity_millero", millero}});
}

TEST_CASE("viscosity: pure water against IAPWS R12-08") {
  const auto pure = [](const reference_row& row) {
    return in_pascal_seconds(tww::viscosity(grams_per_kilogram(0.0), celsius(row["t90"])));
  };
  check_rows(live_rows("water_viscosity.csv"), {{"tankwright::water::viscosity", pure}});
}

TEST_CASE("viscosity: rounding, the two salinity scales and order over the whole range") {
  for (double s = 0.0; s <= 150.0; s += 2.5) {
    for (double t = 0.0; t <= 179.0; t += 3.1) {
      const dynamic_viscosity mu = tww::viscosity(grams_per_kilogram(s), celsius(t));
      const auto oracle = tww::detail::viscosity_sharqawy(static_cast<long double>(s) * 1e-3L,
                                                          static_cast<long double>(in_celsius(celsius(t))));
      TW_CHECK(rounding, mu, pascal_seconds(static_cast<double>(oracle)), relative(2e-15));
      if (s > 0.0) TW_HOLDS(ordered, tww::viscosity(grams_per_kilogram(s - 0.1), celsius(t)) < mu);
      TW_HOLDS(ordered, tww::viscosity(grams_per_kilogram(s), celsius(t + 0.1)) < mu);
    }
  }
  for (double s = 0.0; s <= 42.0; s += 1.5) {
    const practical_salinity sp{s};
    TW_CHECK(two_scales, tww::viscosity(sp, celsius(24.0)),
             tww::viscosity(tww::absolute_from_practical(sp), celsius(24.0)), relative(1e-15));
  }
}

TEST_CASE("viscosity: the second opinion stays close") {
  for (double s = 0.0; s <= 40.0; s += 2.0) {
    for (double t = 5.0; t <= 25.0; t += 1.0) {
      const practical_salinity sp{s};
      TW_CHECK(second_opinion, tww::viscosity_millero(sp, celsius(t)), tww::viscosity(sp, celsius(t)), relative(0.015));
    }
  }
}

TEST_CASE("viscosity: edges of the ranges") {
  check_edges(tww::practical_salinity_limits, [](double s, range_policy policy) {
    return tww::viscosity(practical_salinity{s}, celsius(25.0), policy);
  });
  check_edges(tww::viscosity_salinity_limits, [](double s, range_policy policy) {
    return tww::viscosity(grams_per_kilogram(s), celsius(25.0), policy);
  });
  check_edges(tww::viscosity_temperature_limits, [](double t, range_policy policy) {
    return tww::viscosity(practical_salinity{35.0}, celsius(t), policy);
  });
  check_edges(tww::viscosity_millero_salinity_limits, [](double s, range_policy policy) {
    return tww::viscosity_millero(practical_salinity{s}, celsius(20.0), policy);
  });
  check_edges(tww::viscosity_millero_temperature_limits, [](double t, range_policy policy) {
    return tww::viscosity_millero(practical_salinity{35.0}, celsius(t), policy);
  });
}
