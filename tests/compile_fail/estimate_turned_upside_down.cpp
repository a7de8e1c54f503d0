// SPDX-License-Identifier: BSL-1.0
// mistake: an end of an estimate set by itself, which could put its low above its high
// says: no viable overloaded|read-only|const|discards qualifiers
#include <tankwright/core.hpp>
namespace tw = tankwright;

void attempt() {
  tw::estimate<tw::length> height{tw::metres(1.0), tw::metres(2.0), tw::metres(3.0), "tape"};
#ifdef MISTAKE
  height.low = tw::metres(5.0);
#else
  height = {tw::metres(5.0), height.central, height.high, height.reason};
#endif
}
