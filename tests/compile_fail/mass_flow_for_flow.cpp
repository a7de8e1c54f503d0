// SPDX-License-Identifier: BSL-1.0
// mistake: a mass per time where a volume per time is expected
// says: conver|no matching function
#include <tankwright/core.hpp>
namespace tw = tankwright;
tw::volume in_an_hour(tw::flow_rate flow) { return flow * tw::hours(1.0); }
void attempt() {
#ifdef MISTAKE
  (void)in_an_hour(tw::kilograms_per_hour(40.0));
#else
  (void)in_an_hour(tw::litres_per_hour(40.0));
#endif
}
