// SPDX-License-Identifier: BSL-1.0
// mistake: a bare number where the yield of a mix is expected
// says: a field was given another quantity, unit or type
#include <tankwright/water/salt_mix.hpp>
namespace tw = tankwright;
namespace water = tankwright::water;

void attempt() {
#ifdef MISTAKE
  (void)water::salt_for_new_water({.volume = tw::litres(2150),
                                   .target = tw::practical_salinity{35.0},
                                   .temperature = tw::celsius(24.0),
                                   .mix_yield = 0.87});
#else
  (void)water::salt_for_new_water({.volume = tw::litres(2150),
                                   .target = tw::practical_salinity{35.0},
                                   .temperature = tw::celsius(24.0),
                                   .mix_yield = tw::fraction(0.87)});
#endif
}
