// SPDX-License-Identifier: BSL-1.0
// mistake: a dimension measured outside given for one between the inner faces
// says: a field was given another quantity, unit or type
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/shape.hpp>
namespace tw = tankwright;
namespace vessel = tankwright::vessel;
void attempt() {
  const vessel::inside side{tw::inches(24)};
#ifdef MISTAKE
  (void)vessel::box({.length = vessel::outside{tw::inches(48)}, .width = side, .height = side});
#else
  const tw::length panel = tw::inches(0.5);
  const auto length =
      vessel::inside_of({.measured = vessel::outside{tw::inches(48)}, .near_panel = panel, .far_panel = panel});
  (void)vessel::box({.length = length, .width = side, .height = side});
#endif
}
