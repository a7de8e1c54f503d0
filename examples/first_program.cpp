// SPDX-License-Identifier: BSL-1.0
#include <cstdio>
#include <tankwright/tankwright.hpp>
// [program]
namespace tw = tankwright;

int main() {
  const auto tank = tw::water::salinity_from_hydrometer(
      {.reading = 1.0245, .water = tw::celsius(26), .instrument = {.scale = tw::water::scale_60f_60f}});
  const auto batch = tw::water::salt_for_new_water({.volume = tw::litres(2150),
                                                    .target = tank.central,
                                                    .temperature = tw::celsius(24),
                                                    .mix_yield = tw::percent(87)});
  std::printf("the older tank: salinity %.1f (%.1f to %.1f)\n", tank.central.value(), tank.low.value(),
              tank.high.value());
  std::printf("weigh out %.1f kg of mix; makes %.0f L\n", tw::in_kilograms(batch.mix), tw::in_litres(batch.finished));
}
// [/program]
