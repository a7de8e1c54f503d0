// SPDX-License-Identifier: BSL-1.0
// mistake: the volume of a filter medium where its wet area is expected
// says: a field was given another quantity, unit or type
#include <tankwright/life/nitrification.hpp>
namespace tw = tankwright;
void attempt() {
#ifdef MISTAKE
  const tw::life::filter_surface media{.label = "media", .wet = tw::litres(30.0)};
#else
  const tw::life::filter_surface media{.label = "media",
                                       .wet = tw::litres(30.0) * tw::square_metres_per_cubic_metre(500.0)};
#endif
  (void)media;
}
