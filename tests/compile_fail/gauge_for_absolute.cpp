// SPDX-License-Identifier: BSL-1.0
// mistake: a gauge pressure where an absolute pressure is expected
// says: gauge_pressure
// page: 6
#include <tankwright/core.hpp>
namespace tw = tankwright;
tw::absolute_pressure above_vacuum(tw::absolute_pressure p) { return p; }
void attempt() {
#ifdef MISTAKE
  (void)above_vacuum(tw::gauge_pressure{tw::kilopascals(20.0)});
#else
  (void)above_vacuum(tw::absolute_pressure{tw::kilopascals(121.3)});
#endif
}
