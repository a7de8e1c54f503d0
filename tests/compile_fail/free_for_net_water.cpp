// SPDX-License-Identifier: BSL-1.0
// mistake: the water that moves taken for all the water there is to salt
// says: conver|no match
#include <tankwright/vessel/displacement.hpp>
#include <vector>
namespace tw = tankwright;
namespace vessel = tankwright::vessel;
void attempt() {
  const std::vector<vessel::item> items;
  const auto content = vessel::water_in(
      {.gross = tw::litres(800), .items = items, .water_density = tw::kilograms_per_cubic_metre(1025)});
#ifdef MISTAKE
  const vessel::net_volume to_salt = content.free.central;
#else
  const vessel::net_volume to_salt = content.net.central;
#endif
  (void)to_salt;
}
