// SPDX-License-Identifier: BSL-1.0
// mistake: an absolute pressure where a gauge pressure is expected
// says: absolute_pressure
#include <tankwright/core.hpp>
namespace tw = tankwright;
tw::gauge_pressure above_air(tw::gauge_pressure p) { return p; }
void attempt() {
#ifdef MISTAKE
  (void)above_air(tw::standard_atmosphere);
#else
  (void)above_air(tw::gauge_pressure{tw::kilopascals(20.0)});
#endif
}
