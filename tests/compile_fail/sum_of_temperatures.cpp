// SPDX-License-Identifier: BSL-1.0
// mistake: adding two temperatures
// says: no match|invalid operands|no type named|incomplete
#include <tankwright/core.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  const tw::temperature sum = tw::celsius(20.0) + tw::celsius(5.0);
  (void)sum;
#else
  const tw::temperature sum = tw::celsius(20.0) + tw::celsius_steps(5.0);
  (void)sum;
#endif
}
