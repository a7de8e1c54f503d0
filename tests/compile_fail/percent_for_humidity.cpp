// SPDX-License-Identifier: BSL-1.0
// mistake: a percentage where a relative humidity is expected
// says: conver
#include <tankwright/core.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  const tw::relative_humidity damp = tw::percent(60.0);
  (void)damp;
#else
  const tw::relative_humidity damp = tw::relative_humidity::from_percent(60.0);
  (void)damp;
#endif
}
