// SPDX-License-Identifier: BSL-1.0
// mistake: a concentration of ammonia that does not say what was weighed
// says: no matching|private|protected|could not convert|calling a
#include <tankwright/water/ammonia.hpp>
namespace tw = tankwright;
namespace water = tankwright::water;

void attempt() {
#ifdef MISTAKE
  (void)water::total_ammonia{tw::milligrams_per_litre(0.5)};
#else
  (void)water::total_ammonia::from_nitrogen(tw::milligrams_per_litre(0.5));
#endif
}
