// SPDX-License-Identifier: BSL-1.0
// mistake: an absolute Celsius quantity made with Boost.Units
// says: celsius
#include <boost/units/systems/temperature/celsius.hpp>
#include <tankwright/water/density.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  (void)tw::water::density(tw::practical_salinity{35.0},
                           25.0 * boost::units::absolute<boost::units::celsius::temperature>());
#else
  (void)tw::water::density(tw::practical_salinity{35.0}, tw::celsius(25.0));
#endif
}
