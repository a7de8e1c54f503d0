// SPDX-License-Identifier: BSL-1.0
// mistake: a volume where a flow is expected
// says: conver|no matching function
// page: 2
#include <tankwright/core.hpp>
namespace tw = tankwright;
tw::volume in_an_hour(tw::flow_rate flow) { return flow * tw::hours(1.0); }
void attempt() {
#ifdef MISTAKE
  (void)in_an_hour(tw::litres(40.0));
#else
  (void)in_an_hour(tw::litres_per_hour(40.0));
#endif
}
