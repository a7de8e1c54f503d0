// SPDX-License-Identifier: BSL-1.0
// mistake: a practical salinity where an absolute salinity is expected
// says: practical_salinity
// page: 4
#include <tankwright/water/density.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  (void)tw::water::practical_from_absolute(tw::practical_salinity{35.0});
#else
  (void)tw::water::practical_from_absolute(tw::absolute_salinity::from_grams_per_kilogram(35.2));
#endif
}
