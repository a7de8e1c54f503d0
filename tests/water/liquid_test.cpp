// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/liquid.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence parts{"tankwright::water::seawater", kind::identity, "is its density and its viscosity"};
}  // namespace

TEST_CASE("liquid: reference table") {
  check_rows(reference_rows("water/liquid.csv"),
             {{"tankwright::water::seawater", [](const reference_row& row) {
                 const practical_salinity s{row["S_A"] * 35.0 / 35.16504};  // one row lies past the practical scale
                 return in_kilograms_per_cubic_metre(tww::seawater(s, celsius(row["t90"]), extrapolate).density);
               }}});
}

TEST_CASE("liquid: fresh water against IAPWS R12-08 and IAPWS-95") {
  const auto density = [](const reference_row& row) {
    return in_kilograms_per_cubic_metre(tww::fresh_water(celsius(row["t90"])).density);
  };
  const auto kinematic = [](const reference_row& row) {
    return in_square_metres_per_second(tww::kinematic_viscosity_of(tww::fresh_water(celsius(row["t90"]))));
  };
  check_rows(live_rows("water_liquid.csv"),
             {{"tankwright::water::fresh_water", density}, {"tankwright::water::kinematic_viscosity_of", kinematic}});
}

TEST_CASE("liquid: seawater is its density and its viscosity") {
  for (double s = 0.0; s <= 42.0; s += 3.0) {
    for (double t = 0.0; t <= 40.0; t += 2.5) {
      const practical_salinity sp{s};
      const tww::liquid sea = tww::seawater(sp, celsius(t));
      TW_CHECK(parts, sea.density.get(), tww::density(sp, celsius(t)), relative(0.0));
      TW_CHECK(parts, sea.viscosity.get(), tww::viscosity(sp, celsius(t)), relative(0.0));
    }
  }
}

TEST_CASE("liquid: edges of the ranges") {
  check_edges(tww::practical_salinity_limits, [](double s, range_policy policy) {
    return tww::seawater(practical_salinity{s}, celsius(25.0), policy);
  });
  CHECK_THROWS_AS((void)tww::fresh_water(celsius(-0.1)), out_of_range);
  CHECK_THROWS_AS((void)tww::fresh_water(celsius(80.1)), out_of_range);
  CHECK_THROWS_AS((void)tww::fresh_water(kelvins(0.0)), invalid_input);
  CHECK_NOTHROW((void)tww::fresh_water(celsius(90.0), extrapolate));
  check_edges(tww::liquid_density_limits, [](double rho, range_policy) {
    return tww::kinematic_viscosity_of({.density = kilograms_per_cubic_metre(rho), .viscosity = pascal_seconds(1e-3)});
  });
  check_edges(tww::liquid_viscosity_limits, [](double mu, range_policy) {
    return tww::kinematic_viscosity_of({.density = kilograms_per_cubic_metre(1e3), .viscosity = pascal_seconds(mu)});
  });
}
