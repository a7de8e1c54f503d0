// SPDX-License-Identifier: BSL-1.0
// mistake: a pH without its scale
// says: could not convert|no viable conversion|no known conversion|no matching
#include <tankwright/water/ammonia.hpp>
namespace tw = tankwright;
namespace water = tankwright::water;

void attempt() {
#ifdef MISTAKE
  (void)water::free_ammonia_fraction(8.2, tw::practical_salinity{35.0}, tw::celsius(25.0));
#else
  (void)water::free_ammonia_fraction(water::ph_nbs{8.2}, tw::practical_salinity{35.0}, tw::celsius(25.0));
#endif
}
