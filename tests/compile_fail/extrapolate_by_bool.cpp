// SPDX-License-Identifier: BSL-1.0
// mistake: asking for extrapolation with a bare true
// says: conver|no matching function
#include <tankwright/water/density.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  (void)tw::water::density(tw::practical_salinity{43.0}, tw::celsius(25.0), true);
#else
  (void)tw::water::density(tw::practical_salinity{43.0}, tw::celsius(25.0), tw::extrapolate);
#endif
}
