// SPDX-License-Identifier: BSL-1.0
// mistake: a volume where a length is expected
// says: conver|no matching function
// page: 1
#include <tankwright/core.hpp>
namespace tw = tankwright;
tw::area square(tw::length side) { return side * side; }
void attempt() {
#ifdef MISTAKE
  (void)square(tw::litres(40.0));
#else
  (void)square(tw::centimetres(40.0));
#endif
}
