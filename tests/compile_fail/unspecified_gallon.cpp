// SPDX-License-Identifier: BSL-1.0
// mistake: gallons without saying which
// says: gallons
// page: 7
#include <tankwright/core.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  (void)tw::gallons(300.0);
#else
  (void)tw::us_gallons(300.0);
#endif
}
