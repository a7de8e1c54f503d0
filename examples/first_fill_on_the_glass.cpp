// SPDX-License-Identifier: BSL-1.0
// What does the first fill put on a front panel of 2.40 m by 0.80 m, 19 mm glass held on all four edges, and what would
// it do without the frame along its top?
#include <cstdio>
#include <vector>

#include <tankwright/vessel.hpp>

namespace tw = tankwright;
namespace vessel = tankwright::vessel;

int main() {
  // [panel]
  vessel::panel front{.width = tw::metres(2.40),
                      .height = tw::metres(0.80),
                      .thickness = tw::millimetres(18.2),  // the least that is sold as 19 mm
                      .edges = vessel::panel_edges::all_supported,
                      .material = vessel::annealed_glass,
                      .label = "front"};
  const tw::mass_density seawater = tw::kilograms_per_cubic_metre(1025.0);
  // [/panel]

  // [stages]
  const std::vector<tw::length> levels{tw::metres(0.2), tw::metres(0.4), tw::metres(0.6), tw::metres(0.74),
                                       front.height};  // to the brim: the depth to design for
  const auto stages = vessel::first_fill(front, levels, seawater);
  // [/stages]
  std::printf("level   at the bottom    push  acts at  stress  utilisation  bulge\n");
  for (const auto& [level, p] : stages) {
    std::printf("%4.2f m    %6.2f kPa  %5.2f kN   %4.2f m  %3.1f MPa         %3.0f %%  %.1f mm\n", tw::in_metres(level),
                tw::in_kilopascals(p.at_bottom), tw::in_kilonewtons(p.force), tw::in_metres(p.centre),
                tw::in_megapascals(p.stress), 100.0 * p.utilisation, tw::in_millimetres(p.deflection));
  }
  const auto& full = stages.back().panel;
  std::printf("held against %.1f MPa (%.*s); that stress is reached at a thickness of %.1f mm\n",
              tw::in_megapascals(full.allowable.value), static_cast<int>(full.allowable.name.size()),
              full.allowable.name.data(), tw::in_millimetres(full.thickness_needed));

  // [frame]
  const auto rails = vessel::rails_of({.height = front.height, .level = front.height, .water_density = seawater});
  const auto brace = vessel::pull_of_braces({.rail = front.width, .braces = 1, .load = rails.top});
  // [/frame]
  std::printf("\nthe rail along the top carries %.0f N/m, and one brace in its middle pulls with %.0f N\n",
              tw::in_newtons_per_metre(rails.top), tw::in_newtons(brace.largest));

  // [rimless]
  front.edges = vessel::panel_edges::top_free;
  const auto rimless = vessel::water_on(front, {.level = front.height, .water_density = seawater});
  // [/rimless]
  std::printf("without the frame: %.1f MPa, %.0f %%, a bulge of %.1f mm;\n", tw::in_megapascals(rimless.stress),
              100.0 * rimless.utilisation, tw::in_millimetres(rimless.deflection));
  std::printf("worst %.2f m from a side, %.2f m above the bottom, where it twists\n",
              tw::in_metres(rimless.governing.from_side), tw::in_metres(rimless.governing.from_below));
  if (rimless.beyond_small_deflection) {
    std::printf("%.*s\n", static_cast<int>(rimless.note.size()), rimless.note.data());
  }
  std::printf("\n%.*s\n", static_cast<int>(full.caution.text.size()), full.caution.text.data());
}
