// SPDX-License-Identifier: BSL-1.0
// mistake: a Celsius quantity made with Boost.Units alone (it would be read as 25 K)
// says: celsius
// page: 3
#include <boost/units/systems/temperature/celsius.hpp>
#include <tankwright/water/density.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  (void)tw::water::density(tw::practical_salinity{35.0}, 25.0 * boost::units::celsius::degree);
#else
  (void)tw::water::density(tw::practical_salinity{35.0}, tw::celsius(25.0));
#endif
}
