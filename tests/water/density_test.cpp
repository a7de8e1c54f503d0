// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/density.hpp>

#include <vector>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence batch_is_scalar{"tankwright::water::density", kind::property, "batch equals scalar"};
const evidence rounding{"tankwright::water::density", kind::identity, "the same formula in long double"};
const evidence there_and_back{"tankwright::water::salinity_from_density", kind::property, "there and back"};
const evidence grows{"tankwright::water::density", kind::property, "grows with salinity"};
}  // namespace

TEST_CASE("density: reference table") {
  const auto density = [](const reference_row& row) {
    return in_kilograms_per_cubic_metre(tww::density(practical_salinity{row["S_P"]}, celsius(row["t90"])));
  };
  check_rows(reference_rows("water/density.csv"), {{"tankwright::water::density", density}});
}

TEST_CASE("density: random states against the TEOS-10 toolbox") {
  const auto density = [](const reference_row& row) {
    return in_kilograms_per_cubic_metre(
        tww::density(absolute_salinity::from_grams_per_kilogram(row["SA"]), celsius(row["t90"])));
  };
  const auto salinity = [](const reference_row& row) {
    return tww::salinity_from_density(kilograms_per_cubic_metre(row["rho"]), celsius(row["t90"])).value();
  };
  check_rows(live_rows("water_density.csv"),
             {{"tankwright::water::density", density}, {"tankwright::water::salinity_from_density", salinity}});
}

TEST_CASE("density: rounding, batch and order over the whole range") {
  std::vector<practical_salinity> s;
  std::vector<temperature> t;
  for (double sp = 0.0; sp <= 42.0; sp += 0.7) {
    for (double tc = -6.0; tc <= 80.0; tc += 4.3) {
      s.emplace_back(sp);
      t.push_back(celsius(tc));
    }
  }
  std::vector<mass_density> batch(s.size());
  tww::density(s, t, batch, extrapolate);  // supercooled water too
  for (std::size_t i = 0; i < s.size(); ++i) {
    const mass_density scalar = tww::density(s[i], t[i], extrapolate);
    TW_CHECK(batch_is_scalar, batch[i], scalar, relative(4e-16));
    const long double sa = 35.16504L / 35.0L * static_cast<long double>(s[i].value());
    const long double oracle = tww::kernel::density_teos10<long double>(sa, static_cast<long double>(in_celsius(t[i])));
    TW_CHECK(rounding, scalar, mass_density::from_value(static_cast<double>(oracle)), relative(1e-15));
    if (s[i].value() < 41.0 && in_celsius(t[i]) >= 0.0) {
      TW_HOLDS(grows, tww::density(practical_salinity{s[i].value() + 0.001}, t[i]) > scalar);
    }
  }
}

TEST_CASE("density: edges of the ranges") {
  check_edges(tww::practical_salinity_limits,
              [](double s, range_policy policy) { return tww::density(practical_salinity{s}, celsius(25.0), policy); });
  check_edges(tww::absolute_salinity_limits, [](double s, range_policy policy) {
    return tww::density(absolute_salinity::from_grams_per_kilogram(s), celsius(25.0), policy);
  });
  // A brine of 120 g/kg is liquid at -6 degC, water of salinity 35 is not.
  check_edges(tww::gibbs_temperature_limits, [](double t, range_policy policy) {
    return tww::density(absolute_salinity::from_grams_per_kilogram(120.0), celsius(t), policy);
  });
  limits above_ice = tww::gibbs_temperature_limits;
  above_ice.published.low = in_celsius(tww::freezing_point(practical_salinity{35.0}));
  check_edges(above_ice,
              [](double t, range_policy policy) { return tww::density(practical_salinity{35.0}, celsius(t), policy); });
}

TEST_CASE("density: the salinity behind a density") {
  for (double s = 0.0; s <= 42.0; s += 0.7) {
    for (double t = 0.0; t <= 40.0; t += 4.0) {
      const mass_density rho = tww::density(practical_salinity{s}, celsius(t));
      TW_CHECK(there_and_back, tww::salinity_from_density(rho, celsius(t)), practical_salinity{s},
               (tolerance{.absolute = 4e-13, .relative = 1e-12}));
    }
  }
  const auto salinity = [](double rho, range_policy policy = range_policy::published) {
    return tww::salinity_from_density(kilograms_per_cubic_metre(rho), celsius(25.0), policy);
  };
  CHECK_THROWS_AS((void)salinity(997.0), out_of_range);
  CHECK_THROWS_AS((void)salinity(997.0, extrapolate), out_of_range);  // no water is fresher than pure
  CHECK_THROWS_AS((void)salinity(1040.0), out_of_range);
  CHECK(salinity(1040.0, extrapolate).value() > 42.0);
  CHECK_THROWS_AS((void)tww::salinity_from_density(kilograms_per_cubic_metre(1.0264), celsius(25.0)), invalid_input);
}

TEST_CASE("density: a bad element of a batch throws before anything is written") {
  const std::vector<practical_salinity> s{practical_salinity{35.0}, practical_salinity{43.0}};
  const std::vector<temperature> t{celsius(20.0), celsius(20.0)};
  std::vector<mass_density> result(2, kilograms_per_cubic_metre(-1.0));
  CHECK_THROWS_AS(tww::density(s, t, result), out_of_range);
  CHECK(result[0] == kilograms_per_cubic_metre(-1.0));
  tww::density(s, t, result, extrapolate);
  CHECK(result[1] > result[0]);
  std::vector<mass_density> short_result(1);
  CHECK_THROWS_AS(tww::density(s, t, short_result), invalid_input);

  const std::vector<practical_salinity> cold(2, practical_salinity{35.0});
  CHECK_NOTHROW(tww::density(cold, std::vector{celsius(20.0), celsius(-1.5)}, result));
  CHECK_THROWS_AS(tww::density(cold, std::vector{celsius(20.0), celsius(-2.0)}, result), out_of_range);
}
