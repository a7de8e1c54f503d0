// SPDX-License-Identifier: BSL-1.0
// mistake: a bare number where an alkalinity is expected
// says: a field was given another quantity, unit or type
#include <tankwright/water/alkalinity.hpp>
namespace tw = tankwright;
namespace water = tankwright::water;

void attempt() {
#ifdef MISTAKE
  (void)water::alkalinity_to_add({.volume = tw::litres(500), .from = 2.1, .target = 2.6});
#else
  (void)water::alkalinity_to_add({.volume = tw::litres(500),
                                  .from = water::alkalinity::from_milliequivalents_per_litre(2.1),
                                  .target = water::alkalinity::from_milliequivalents_per_litre(2.6)});
#endif
}
