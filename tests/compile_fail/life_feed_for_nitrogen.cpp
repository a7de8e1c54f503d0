// SPDX-License-Identifier: BSL-1.0
// mistake: the mass of feed where the nitrogen that comes of it is expected
// says: could not convert|no viable conversion
#include <tankwright/life/nitrogen.hpp>
namespace tw = tankwright;
void attempt() {
#ifdef MISTAKE
  (void)tw::life::needs_of_nitrification(tw::grams_per_day(40.0));
#else
  (void)tw::life::needs_of_nitrification(
      tw::life::nitrogen_from_feed({.food = tw::grams_per_day(40.0), .protein = tw::fraction(0.45)}).ammonia.central);
#endif
}
