// SPDX-License-Identifier: BSL-1.0
// A lagoon 2.40 m by 0.90 m, filled to 0.74 m: sand from 8 cm at the front to 22 cm at the back, and some rock.
// How many kilograms of sand, how much water is left, and what does it all weigh?
#include <cstdio>

#include <tankwright/vessel.hpp>

namespace tw = tankwright;
namespace vessel = tankwright::vessel;

int main() {
  // Measured outside, of 19 mm panels with an open top.
  // [tank]
  const tw::length panel = tw::millimetres(19);
  const auto less_two_panels = [&](vessel::outside measured) {
    return vessel::inside_of({.measured = measured, .near_panel = panel, .far_panel = panel});
  };
  const auto display = vessel::box({.length = less_two_panels(vessel::outside{tw::millimetres(2438)}),
                                    .width = less_two_panels(vessel::outside{tw::millimetres(938)}),
                                    .height = vessel::inside{tw::millimetres(800)},
                                    .label = "lagoon"});
  const tw::length water_line = tw::millimetres(740);
  // [/tank]

  // [sand]
  const auto slope = vessel::sloped_bed(
      {.shallow_end = tw::centimetres(8), .deep_end = tw::centimetres(22), .run = tw::centimetres(90)});
  const auto sand = vessel::sand_bed(
      {.floor = vessel::plan_area(display, tw::metres(0)), .depth = slope.mean_depth, .sand = vessel::aragonite_sand});
  // [/sand]
  std::printf("sand: %.0f kg dry (%.0f to %.0f), on a slope of %.0f degrees%s\n",
              tw::in_kilograms(sand.dry_mass.central), tw::in_kilograms(sand.dry_mass.low),
              tw::in_kilograms(sand.dry_mass.high), tw::in_degrees(slope.slope),
              slope.steeper_than_repose ? ": it will not stay" : "");

  // One piece hung under the scale in seawater, the others only weighed dry.
  // [rock]
  const tw::mass_density seawater = tw::kilograms_per_cubic_metre(1025.0);
  const auto arch = vessel::rock_weighed_under_water({.dry_mass = tw::kilograms(14.2),
                                                      .submerged_mass = tw::kilograms(9.1),
                                                      .water_density = seawater,
                                                      .label = "arch"});
  const auto rubble = vessel::rock_by_mass({.dry_mass = tw::kilograms(22), .label = "rubble"});
  const auto pump = vessel::equipment({.outside = tw::litres(2.5), .mass = tw::kilograms(3.1), .label = "wave pump"});
  // [/rock]
  for (const auto* rock : {&arch, &rubble}) {
    const auto weight = vessel::weight_of(*rock, seawater);
    std::printf("%s: displaces %.1f L (%.1f to %.1f), weighs %.1f kg dry and %.1f kg under water\n",
                rock->label.c_str(), tw::in_litres(rock->solids.central.value()),
                tw::in_litres(rock->solids.low.value()), tw::in_litres(rock->solids.high.value()),
                tw::in_kilograms(weight.dry.central), tw::in_kilograms(weight.submerged.central));
  }

  // [water]
  const vessel::item items[]{sand, arch, rubble, pump};
  const auto content = vessel::water_in(
      {.gross = vessel::filled_volume(display, water_line), .items = items, .water_density = seawater});
  // [/water]
  const auto litres = [](const char* name, const auto& band) {
    std::printf("%-28s %5.0f L (%.0f to %.0f)\n", name, tw::in_litres(band.central.value()),
                tw::in_litres(band.low.value()), tw::in_litres(band.high.value()));
  };
  std::printf("\n%-28s %5.0f L\n", "empty, to the water line", tw::in_litres(content.gross));
  litres("water in it: salt, dosing", content.net);
  litres("water that moves: oxygen", content.free);
  litres("water in the pores", content.pores);
  std::printf("%-28s %5.0f kg (%.0f to %.0f), without the tank itself\n\n", "on the floor",
              tw::in_kilograms(content.on_the_floor.central), tw::in_kilograms(content.on_the_floor.low),
              tw::in_kilograms(content.on_the_floor.high));
  std::printf("%.*s\n", static_cast<int>(content.caution.text.size()), content.caution.text.data());
}
