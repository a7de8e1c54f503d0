// SPDX-License-Identifier: BSL-1.0
// mistake: comparing a practical with an absolute salinity
// says: no match|invalid operands
#include <tankwright/core.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  (void)(tw::practical_salinity{35.0} < tw::absolute_salinity::from_grams_per_kilogram(35.2));
#else
  (void)(tw::practical_salinity{35.0} < tw::practical_salinity{35.2});
#endif
}
