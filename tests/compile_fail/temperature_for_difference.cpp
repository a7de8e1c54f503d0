// SPDX-License-Identifier: BSL-1.0
// mistake: a temperature where a difference is expected
// says: conver
// page: 9
#include <tankwright/core.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  const tw::temperature_difference warmer = tw::celsius(5.0);
  (void)warmer;
#else
  const tw::temperature_difference warmer = tw::celsius_steps(5.0);
  (void)warmer;
#endif
}
