// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/estimate.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

TEST_CASE("estimate: a rising and a falling function keep the order of the band") {
  constexpr estimate<flow_rate> leak{litres_per_day(2.0), litres_per_day(4.0), litres_per_day(8.0), "gauge reading"};
  const evidence rising{"tankwright::map_rising", kind::identity, "image of an interval under a monotone function"};
  const evidence falling{"tankwright::map_falling", kind::identity, "image of an interval under a monotone function"};

  const auto lost = map_rising(leak, [](flow_rate q) { return volume{q * days(3.0)}; });
  TW_CHECK(rising, lost.low, litres(6.0), relative(1e-15));
  TW_CHECK(rising, lost.central, litres(12.0), relative(1e-15));
  TW_CHECK(rising, lost.high, litres(24.0), relative(1e-15));
  CHECK(lost.reason == "gauge reading");

  const auto lasts = map_falling(leak, [](flow_rate q) { return duration{litres(16.0) / q}; });
  TW_CHECK(falling, lasts.low, days(2.0), relative(1e-15));
  TW_CHECK(falling, lasts.central, days(4.0), relative(1e-15));
  TW_CHECK(falling, lasts.high, days(8.0), relative(1e-15));
  CHECK(lasts.reason == "gauge reading");
}
