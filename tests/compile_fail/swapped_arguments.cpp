// SPDX-License-Identifier: BSL-1.0
// mistake: salinity and temperature exchanged
// says: no matching function
#include <tankwright/water/density.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  (void)tw::water::density(tw::celsius(25.0), tw::practical_salinity{35.0});
#else
  (void)tw::water::density(tw::practical_salinity{35.0}, tw::celsius(25.0));
#endif
}
