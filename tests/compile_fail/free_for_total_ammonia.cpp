// SPDX-License-Identifier: BSL-1.0
// mistake: free ammonia where the kit's total is expected
// says: could not convert|no viable conversion|no known conversion|no matching
#include <tankwright/water/ammonia.hpp>
namespace tw = tankwright;
namespace water = tankwright::water;
void report(water::total_ammonia) {}

void attempt() {
#ifdef MISTAKE
  report(water::free_ammonia::from_ammonia(tw::milligrams_per_litre(0.5)));
#else
  report(water::total_ammonia::from_ammonia(tw::milligrams_per_litre(0.5)));
#endif
}
