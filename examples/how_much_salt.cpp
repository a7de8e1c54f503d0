// SPDX-License-Identifier: BSL-1.0
// How much salt for 2 150 L of new water at 24 degC to match a tank whose hydrometer (60F/60F) reads 1.0245 at 26 degC?
#include <cstdio>

#include <tankwright/water.hpp>

namespace tw = tankwright;
namespace water = tankwright::water;

int main() {
  // [target]
  const auto tank = water::salinity_from_hydrometer(
      {.reading = 1.0245, .water = tw::celsius(26.0), .instrument = {.scale = water::scale_60f_60f}});
  // [/target]
  std::printf("the tank to match: practical salinity %.1f (%.1f to %.1f)\n\n", tank.central.value(), tank.low.value(),
              tank.high.value());

  const tw::volume new_water = tw::litres(2150.0);
  const tw::temperature warmth = tw::celsius(24.0);

  // How much to buy, before anything is known about the mix.
  // [buy]
  const auto guess =
      water::salt_for_new_water_unmeasured({.volume = new_water, .target = tank.central, .temperature = warmth});
  // [/buy]
  std::printf("of a mix that nobody has measured: %.0f to %.0f kg\n", tw::in_kilograms(guess.mix.low),
              tw::in_kilograms(guess.mix.high));

  // A trial batch in a bucket: 400 g of the mix in 10.0 kg of fresh water, measured when clear.
  // [trial]
  const auto yield = water::measured_yield({.mix = tw::grams(400.0),
                                            .fresh_water = tw::kilograms(10.0),
                                            .reached = tw::practical_salinity(34.1),
                                            .reading_error = tw::practical_salinity(0.7)});
  // [/trial]
  std::printf("the trial batch: %.0f %% of it is salt (%.0f to %.0f)\n\n", tw::in_percent(yield.central),
              tw::in_percent(yield.low), tw::in_percent(yield.high));

  // [salt]
  const auto batch = water::salt_for_new_water(
      {.volume = new_water, .target = tank.central, .temperature = warmth, .mix_yield = yield.central});
  // [/salt]
  std::printf("weigh out %.1f kg of mix for %.0f L of fresh water; it makes %.0f L of seawater\n",
              tw::in_kilograms(batch.mix), tw::in_litres(batch.fresh_water), tw::in_litres(batch.finished));
  std::printf("start with %.0f kg, let it clear, and measure: it is enough when\n", 0.9 * tw::in_kilograms(batch.mix));
  std::printf("  the same hydrometer shows      %.4f at %.0f degC\n",
              water::hydrometer_reading(tank.central, warmth, {.scale = water::scale_60f_60f}), tw::in_celsius(warmth));
  std::printf("  a raw conductivity probe shows %.1f mS/cm\n\n",
              tw::in_millisiemens_per_centimetre(water::conductivity_from_salinity(tank.central, warmth)));

  const auto finished = water::salt_for_finished_volume(
      {.volume = new_water, .target = tank.central, .temperature = warmth, .mix_yield = yield.central});
  std::printf("(for %.0f L of finished seawater: %.1f kg in %.0f L of fresh water)\n\n", tw::in_litres(new_water),
              tw::in_kilograms(finished.mix), tw::in_litres(finished.fresh_water));
  std::printf("%.*s\n", static_cast<int>(batch.caution.text.size()), batch.caution.text.data());
}
