// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/refractive_index.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(refractive_index, "refractive_index", "How strongly does seawater bend light?") {
  using namespace tankwright;
  const double sp = s.given("S", "practical salinity", 35, 0, "", "0 to 43");
  const double t = s.given("t", "temperature", 24, 0, "°C", "0 to 30");
  s.wanted("The index in yellow light, and what a unit of salinity makes of it.");
  const auto n = [&](double x) {
    return water::refractive_index_millard_seaver({practical_salinity{x}, celsius(t)}).value();
  };
  s.step("n0", "pure water at t", n(0.0), 4);
  s.result("n", "seawater of S", n(sp), 4);
  s.result("dn", "for one unit of salinity = (n - n0)/S", 1e4 * (n(sp) - n(0.0)) / sp, 2, "1e-4");
  s.means(
      "An instrument that tells salinity to half a unit must tell the index in its fourth digit: that is why a "
      "fingerprint or a warm "
      "prism spoils it.");
}
