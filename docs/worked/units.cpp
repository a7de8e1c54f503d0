// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/units.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(units, "units", "An American pump and a continental tank") {
  using namespace tankwright;
  const double q = s.given("q", "pump, on its box", 2600, 0, "US gph");
  const double h = s.given("h", "its head", 15, 0, "ft");
  const double v = s.given("v", "tank", 500, 0, "US gal");
  const double t = s.given("t", "kept at", 76, 0, "°F");
  s.wanted("The same in litres, metres and degrees Celsius.");
  s.result("Q", "flow = q 231 x 0.0254^3 m3", in_litres_per_hour(us_gallons_per_hour(q)), -1, "L/h");
  s.result("H", "head = h 0.3048", in_metres(feet(h)), 2, "m");
  s.result("V", "volume", in_litres(us_gallons(v)), 0, "L");
  s.result("T", "temperature = (t - 32)/1.8", in_celsius(fahrenheit(t)), 1, "°C");
  s.compare("Vimp", "had the gallons been imperial ones", in_litres(imperial_gallons(v)), 0, "L");
  s.means("A fifth of the volume hangs on the word before \"gallon\". Write the whole name, on drawings too.");
}
