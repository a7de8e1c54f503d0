// SPDX-License-Identifier: BSL-1.0
// mistake: a porosity where another fraction is expected
// says: conver
#include <tankwright/core.hpp>
namespace tw = tankwright;

void attempt() {
#ifdef MISTAKE
  const tw::proportion part = tw::porosity{0.4};
  (void)part;
#else
  const tw::proportion part = tw::fraction(0.4);
  (void)part;
#endif
}
