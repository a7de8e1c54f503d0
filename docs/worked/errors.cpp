// SPDX-License-Identifier: BSL-1.0
#include <string>
#include <tankwright/water/density.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(errors, "errors", "What happens when a salinity lies past the published range?") {
  using namespace tankwright;
  const double sp = s.given("S", "practical salinity, of a mixing vat", 43, 0, "",
                            worked::range_of(water::practical_salinity_limits));
  const double t = s.given("t", "temperature", 25, 0, "°C");
  s.wanted("The density, and what the library says of the range.");
  std::string said = "nothing";
  try {
    (void)water::density(practical_salinity{sp}, celsius(t));
  } catch (const out_of_range& e) {
    said = e.what();
  }
  s.result("rho", "density, asked for with extrapolate",
           water::density(practical_salinity{sp}, celsius(t), extrapolate).value(), 1, "kg/m3");
  s.means("Without extrapolate it says: " + said +
          ". One word in one call is the way past, and it stands in the program for the next "
          "reader to see.");
}
