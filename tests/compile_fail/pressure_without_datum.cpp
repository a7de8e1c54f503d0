// SPDX-License-Identifier: BSL-1.0
// mistake: a pressure whose zero is not said
// says: conver|no matching function
#include <tankwright/core.hpp>
namespace tw = tankwright;
tw::absolute_pressure above_vacuum(tw::absolute_pressure p) { return p; }
void attempt() {
#ifdef MISTAKE
  (void)above_vacuum(tw::kilopascals(101.3));
#else
  (void)above_vacuum(tw::absolute_pressure{tw::kilopascals(101.3)});
#endif
}
