// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/salinity.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence to_absolute{"tankwright::water::absolute_from_practical", kind::published,
                           "Millero et al. 2008, eq. 6.11: S_R(35) = 35.16504 g/kg"};
const evidence to_practical{"tankwright::water::practical_from_absolute", kind::published,
                            "Millero et al. 2008, eq. 6.11: S_R(35) = 35.16504 g/kg"};
const evidence there_and_back{"tankwright::water::practical_from_absolute", kind::property, "round trip"};
}  // namespace

TEST_CASE("salinity: reference table") {
  check_rows(reference_rows("water/salinity.csv"),
             {{"tankwright::water::absolute_from_practical", [](const reference_row& row) {
                 return in_grams_per_kilogram(tww::absolute_from_practical(practical_salinity{row["S_P"]}));
               }}});
}

TEST_CASE("salinity: the defining point and the round trip") {
  const auto standard = absolute_salinity::from_grams_per_kilogram(35.16504);
  TW_CHECK(to_absolute, tww::absolute_from_practical(practical_salinity{35.0}), standard, relative(1e-15));
  TW_CHECK(to_practical, tww::practical_from_absolute(standard), practical_salinity{35.0}, relative(1e-15));
  for (double s = 0.0; s <= 42.0; s += 0.25) {
    const practical_salinity here{s};
    TW_CHECK(there_and_back, tww::practical_from_absolute(tww::absolute_from_practical(here)), here, relative(4e-16));
  }
}

TEST_CASE("salinity: edges of the ranges") {
  check_edges(tww::practical_salinity_limits, [](double s, range_policy policy) {
    return tww::absolute_from_practical(practical_salinity{s}, policy);
  });
  check_edges({"absolute salinity", "g/kg", tww::absolute_salinity_limits.possible}, [](double s, range_policy) {
    return tww::practical_from_absolute(absolute_salinity::from_grams_per_kilogram(s), extrapolate);
  });
  CHECK_THROWS_AS((void)tww::practical_from_absolute(absolute_salinity::from_grams_per_kilogram(42.3)), out_of_range);
}
