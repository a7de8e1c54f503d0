// SPDX-License-Identifier: BSL-1.0
// mistake: a temperature difference where a temperature is expected
// says: no matching function|could not convert|no viable
#include <tankwright/water/density.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  (void)tw::water::density(tw::practical_salinity{35.0}, tw::celsius_steps(5.0));
#else
  (void)tw::water::density(tw::practical_salinity{35.0}, tw::celsius(5.0));
#endif
}
