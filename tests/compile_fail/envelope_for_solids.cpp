// SPDX-License-Identifier: BSL-1.0
// mistake: the outline of a rock taken for the water it displaces
// says: conver|no match
#include <tankwright/vessel/rock.hpp>
namespace tw = tankwright;
namespace vessel = tankwright::vessel;
void attempt() {
  const auto rock = vessel::rock_by_mass({.dry_mass = tw::kilograms(20)});
#ifdef MISTAKE
  const vessel::solid_volume displaced = rock.envelope.central;
#else
  const vessel::solid_volume displaced = rock.solids.central;
#endif
  (void)displaced;
}
