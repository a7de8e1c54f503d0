// SPDX-License-Identifier: BSL-1.0
// mistake: taking a bare number out of a length
// says: conver
#include <tankwright/core.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  const double height = tw::metres(0.75);
  (void)height;
#else
  const double height = tw::in_metres(tw::metres(0.75));
  (void)height;
#endif
}
