// SPDX-License-Identifier: BSL-1.0
// mistake: an absolute salinity where a practical salinity is expected
// says: absolute_salinity
#include <tankwright/water/density.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  (void)tw::water::absolute_from_practical(tw::absolute_salinity::from_grams_per_kilogram(35.2));
#else
  (void)tw::water::absolute_from_practical(tw::practical_salinity{35.0});
#endif
}
