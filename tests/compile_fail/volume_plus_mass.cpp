// SPDX-License-Identifier: BSL-1.0
// mistake: adding a mass to a volume
// says: no match|invalid operands|incomplete|no type named
#include <tankwright/core.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  const auto sum = tw::litres(1.0) + tw::kilograms(1.0);
  (void)sum;
#else
  const auto sum = tw::litres(1.0) + tw::millilitres(1.0);
  (void)sum;
#endif
}
