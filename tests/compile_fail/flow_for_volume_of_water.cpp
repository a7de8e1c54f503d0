// SPDX-License-Identifier: BSL-1.0
// mistake: a flow where the volume of water is expected
// says: a field was given another quantity, unit or type
#include <tankwright/water/exchange.hpp>
namespace tw = tankwright;
namespace water = tankwright::water;

void attempt() {
#ifdef MISTAKE
  (void)water::left_after_flow(
      {.volume = tw::litres_per_hour(800), .flow = tw::litres_per_hour(40), .time = tw::hours(7)});
#else
  (void)water::left_after_flow({.volume = tw::litres(800), .flow = tw::litres_per_hour(40), .time = tw::hours(7)});
#endif
}
