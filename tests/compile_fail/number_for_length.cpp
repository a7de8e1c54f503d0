// SPDX-License-Identifier: BSL-1.0
// mistake: a bare number where a length is expected
// says: conver
#include <tankwright/core.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  const tw::length height = 0.75;
  (void)height;
#else
  const tw::length height = tw::metres(0.75);
  (void)height;
#endif
}
