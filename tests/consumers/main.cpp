// SPDX-License-Identifier: BSL-1.0
// What a user's first program looks like; built against an installed and against an embedded tankwright.
#include <cstdio>
#include <tankwright/tankwright.hpp>

namespace tw = tankwright;

int main() {
  const tw::mass_density rho = tw::water::density(tw::practical_salinity{35.0}, tw::celsius(25.0));
  std::printf("%.3f kg/m3\n", tw::in_kilograms_per_cubic_metre(rho));
  return 0;
}
