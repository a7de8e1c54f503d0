// SPDX-License-Identifier: BSL-1.0
// mistake: a required field left out
// says: required field was left out
// page: 8
#include <tankwright/core.hpp>
namespace tw = tankwright;
struct batch_of_salt {
  tw::required<tw::volume> volume;
  tw::required<tw::practical_salinity> target;
  tw::required<tw::proportion> mix_yield;
};
void weigh(const batch_of_salt&) {}
void attempt() {
#ifdef MISTAKE
  weigh({.volume = tw::litres(2150), .target = tw::practical_salinity{35.0}});
#else
  weigh({.volume = tw::litres(2150), .target = tw::practical_salinity{35.0}, .mix_yield = tw::fraction(0.87)});
#endif
}
