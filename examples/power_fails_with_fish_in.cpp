// SPDX-License-Identifier: BSL-1.0
// The power fails at night in a 2 000 L display with pipefish and garden eels. How long does the oxygen last: with the
// surface alone, and with a battery air pump? How strong must the air be?
#include <cstdio>
#include <span>

#include <tankwright/life.hpp>
#include <tankwright/water.hpp>

namespace tw = tankwright;
namespace life = tankwright::life;

namespace {

void tell(const char* how, const life::oxygen_countdown& cut) {
  if (cut.time) {
    std::printf("%-24s %.1f h to 4 mg/L: plan for %.1f h\n", how, tw::in_hours(*cut.time), tw::in_hours(*cut.plan_for));
  } else {
    std::printf("%-24s stays above 4 mg/L for as long as it runs\n", how);
  }
}

}  // namespace

int main() {
  const tw::volume net = tw::litres(2000.0);
  const tw::temperature water = tw::celsius(25.0);
  const auto saturation = tw::water::oxygen_saturation_concentration(tw::practical_salinity{35.0}, water);

  // [use]
  const auto fish = life::oxygen_use({.label = "fish",
                                      .each = tw::kilograms(0.05),
                                      .count = 120.0,
                                      .measured = life::specific_oxygen_use::from_milligrams_per_kilogram_hour(300.0),
                                      .measured_at_mass = tw::kilograms(0.1),
                                      .measured_at = tw::celsius(24.0)},
                                     water);
  const auto feed = life::nitrogen_from_feed({.food = tw::grams_per_day(60.0), .protein = tw::fraction(0.45)});
  const auto filter = life::needs_of_nitrification(feed.ammonia.central);
  const tw::mass_flow use = fish.use + filter.oxygen.central;
  // [/use]
  std::printf("saturation %.2f mg/L; fish use %.0f mg/h, the filter %.0f mg/h\n\n",
              tw::in_milligrams_per_litre(saturation), tw::in_milligrams_per_hour(fish.use),
              tw::in_milligrams_per_hour(filter.oxygen.central));

  // [cut]
  const life::aeration ways[] = {
      {.label = "surface", .surface = tw::square_metres(3.0), .transfer = life::still_surface_transfer},
      {.label = "battery air", .bubbles = tw::per_hour(0.5), .alpha = tw::fraction(0.7)},
  };
  const auto lasts = [&](std::size_t first_ways) {
    const auto in = life::aeration_rate({.net = net, .temperature = water, .ways = std::span{ways}.first(first_ways)});
    return life::time_to_oxygen_limit(
        {.tank = {.net = net, .use = use, .saturation = saturation, .aeration = in}, .start = saturation * 0.95});
  };
  tell("the surface alone:", lasts(1));
  tell("with the battery air:", lasts(2));
  // [/cut]

  const auto needed =
      life::aeration_to_keep({.net = net, .use = use, .saturation = saturation}, tw::milligrams_per_litre(5.0));
  std::printf("to hold 5 mg/L all ways in must have a KLa of %.2f 1/h together\n\n", tw::in_per_hour(needed));

  const auto caution = lasts(1).caution.text;
  std::printf("%.*s\n%.*s\n", static_cast<int>(caution.size()), caution.data(),
              static_cast<int>(fish.caution.text.size()), fish.caution.text.data());
}
