// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/mass_concentration.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence there_and_back{"tankwright::water::salinity_from_mass_concentration", kind::property, "there and back"};
}  // namespace

TEST_CASE("mass_concentration: random states against the TEOS-10 toolbox") {
  check_rows(live_rows("water_mass_concentration.csv"),
             {{"tankwright::water::mass_concentration_from_salinity",
               [](const reference_row& row) {
                 return in_grams_per_litre(
                     tww::mass_concentration_from_salinity(practical_salinity{row["S_P"]}, celsius(row["t90"])));
               }},
              {"tankwright::water::salinity_from_mass_concentration", [](const reference_row& row) {
                 return tww::salinity_from_mass_concentration(grams_per_litre(row["c"]), celsius(row["t90"])).value();
               }}});
}

TEST_CASE("mass_concentration: there and back") {
  for (double s = 0.0; s <= 42.0; s += 0.5) {
    for (double t = 0.0; t <= 40.0; t += 5.0) {
      const auto c = tww::mass_concentration_from_salinity(practical_salinity{s}, celsius(t));
      TW_CHECK(there_and_back, tww::salinity_from_mass_concentration(c, celsius(t), extrapolate), practical_salinity{s},
               relative(1e-14));
    }
  }
}

TEST_CASE("mass_concentration: edges of the ranges") {
  check_edges(tww::practical_salinity_limits, [](double s, range_policy policy) {
    return tww::mass_concentration_from_salinity(practical_salinity{s}, celsius(25.0), policy);
  });
  check_edges(tww::mass_concentration_limits, [](double c, range_policy) {
    return tww::salinity_from_mass_concentration(grams_per_litre(c), celsius(25.0), extrapolate);
  });
  CHECK_THROWS_AS((void)tww::salinity_from_mass_concentration(grams_per_litre(50.0), celsius(25.0)), out_of_range);
  CHECK_THROWS_AS((void)tww::salinity_from_mass_concentration(grams_per_litre(36.0), celsius(-3.0)), out_of_range);
}
