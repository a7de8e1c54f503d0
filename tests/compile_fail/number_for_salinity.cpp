// SPDX-License-Identifier: BSL-1.0
// mistake: a bare number where a salinity is expected
// says: no matching function
// page: 5
#include <tankwright/water/density.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  (void)tw::water::density(35.0, tw::celsius(25.0));
#else
  (void)tw::water::density(tw::practical_salinity{35.0}, tw::celsius(25.0));
#endif
}
