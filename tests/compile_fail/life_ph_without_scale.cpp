// SPDX-License-Identifier: BSL-1.0
// mistake: a pH without its scale in a water sample that is to be matched
// says: could not convert|no viable conversion|cannot convert
#include <tankwright/life/transfer.hpp>
namespace tw = tankwright;
void attempt() {
  const auto total = tw::water::total_ammonia::from_nitrogen(tw::milligrams_per_litre(0.2));
#ifdef MISTAKE
  const tw::water::ammonia_sample bag{
      .total = total, .ph = 7.8, .salinity = tw::practical_salinity{35.0}, .temperature = tw::celsius(25.0)};
#else
  const tw::water::ammonia_sample bag{.total = total,
                                      .ph = tw::water::ph_nbs{7.8},
                                      .salinity = tw::practical_salinity{35.0},
                                      .temperature = tw::celsius(25.0)};
#endif
  (void)tw::life::match_waters({.bag = bag, .tank = bag});
}
