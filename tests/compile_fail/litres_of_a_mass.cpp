// SPDX-License-Identifier: BSL-1.0
// mistake: reading litres from a mass
// says: conver|no matching function
#include <tankwright/core.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  (void)tw::in_litres(tw::kilograms(1.0));
#else
  (void)tw::in_litres(tw::cubic_metres(1.0));
#endif
}
