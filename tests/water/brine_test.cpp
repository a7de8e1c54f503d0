// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/brine.hpp>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {

tww::salt_standard per_cent(double share) {
  return {.salt = kilograms(share / 100.0), .water = kilograms(1.0 - share / 100.0)};
}

}  // namespace

TEST_CASE("brine: printed densities of sodium chloride at 20 and 18 degrees") {
  const evidence table{"tankwright::water::brine_density", kind::published,
                       "Poradnik fizykochemiczny, WNT 1974, in a reproduction: 20 degC"};
  // Per cent of the mass; kg/m3. The row of 2 % prints 1012.2 beside 20.250 kg/m3 of salt, which is 1012.5.
  for (const auto& [share, rho] : {std::pair{1.0, 1005.3}, {2.0, 1012.5}, {4.0, 1026.8}, {6.0, 1041.3}}) {
    TW_CHECK(table, tww::brine_density(per_cent(share), celsius(20.0)).value(), rho, within(0.1));
  }
  const evidence other{"tankwright::water::brine_density", kind::published,
                       "table of aqueous solutions at 18 degC, Cracow University of Technology: 5 % is 1.0345"};
  TW_CHECK(other, tww::brine_density(per_cent(5.0), celsius(18.0)).value(), 1034.5, within(0.2));
  const evidence recalled{"tankwright::water::brine_density", kind::from_memory,
                          "International Critical Tables: 4 % at 10 and 25 degC"};
  TW_CHECK(recalled, tww::brine_density(per_cent(4.0), celsius(10.0)).value(), 1029.2, within(0.1));
  TW_CHECK(recalled, tww::brine_density(per_cent(4.0), celsius(25.0)).value(), 1025.3, within(0.1));
}

TEST_CASE("brine: the standard is as dense as the seawater it stands for") {
  const evidence back{"tankwright::water::salt_for_standard", kind::identity,
                      "density of the solution is that of the sea"};
  for (const double s : {0.0, 10.0, 35.0, 40.0}) {
    for (const double t : {10.0, 20.0, 28.0}) {
      const double salt = tww::salt_for_standard(practical_salinity{s}, celsius(t)).value();
      TW_CHECK(back, tww::brine_density({.salt = kilograms(salt), .water = kilograms(1.0)}, celsius(t)),
               tww::density(practical_salinity{s}, celsius(t)), within(kilograms_per_cubic_metre(1e-9)));
    }
  }
  TW_CHECK(back, tww::kernel::brine_over_water(0.035, 23.0),
           static_cast<double>(tww::kernel::brine_over_water<long double>(0.035L, 23.0L)), relative(1e-14));
}

TEST_CASE("brine: edges of the ranges") {
  check_edges(tww::standard_water_limits, [](double m, range_policy) {
    return tww::brine_density({.salt = kilograms(0.0), .water = kilograms(m)}, celsius(20.0));
  });
  check_edges(tww::brine_temperature_limits,
              [](double t, range_policy p) { return tww::brine_density(per_cent(3.0), celsius(t), p); });
  CHECK_THROWS_AS((void)tww::brine_density(per_cent(27.0), celsius(20.0), extrapolate), invalid_input);
  CHECK_THROWS_AS((void)tww::brine_density(per_cent(6.1), celsius(20.0)), out_of_range);
  CHECK_NOTHROW((void)tww::brine_density(per_cent(6.1), celsius(20.0), extrapolate));
  CHECK_THROWS_AS((void)tww::brine_density({.salt = kilograms(-1.0), .water = kilograms(1.0)}, celsius(20.0)),
                  invalid_input);
  CHECK_THROWS_AS((void)tww::salt_for_standard(practical_salinity{43.0}, celsius(20.0)), out_of_range);
}
