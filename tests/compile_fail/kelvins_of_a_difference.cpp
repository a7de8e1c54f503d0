// SPDX-License-Identifier: BSL-1.0
// mistake: reading a point on the scale from a difference
// says: conver|no matching function
#include <tankwright/core.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  (void)tw::in_celsius(tw::celsius_steps(5.0));
#else
  (void)tw::in_celsius_steps(tw::celsius_steps(5.0));
#endif
}
