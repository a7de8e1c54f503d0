// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/item.hpp>

#include "some_items.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

TEST_CASE("item: equipment is its own volume") {
  const evidence thing{"tankwright::vessel::equipment", kind::identity, "its own volume"};
  const auto pump = vs::equipment({.outside = litres(3), .mass = kilograms(4)});
  TW_CHECK(thing, pump.solids.central.value(), litres(3), relative(1e-15));
  TW_CHECK(thing, pump.envelope.central.value(), litres(3), relative(1e-15));
  TW_CHECK(thing, pump.pores.central.value(), litres(0), tolerance{});
  TW_CHECK(thing, pump.dry_mass.central, kilograms(4), relative(1e-15));
  check_item(thing, pump);
  CHECK_THROWS_WITH_AS(
      (void)vs::equipment({.outside = litres(-1), .mass = kilograms(1), .label = "heater"}),
      "tankwright::vessel::equipment: heater: volume = -0.001 m3 is not possible; expected 0 to 1e+09 m3",
      invalid_input);
  CHECK_THROWS_AS((void)vs::equipment({.outside = litres(1), .mass = kilograms(std::nan(""))}), invalid_input);
}

TEST_CASE("item: one that was made by hand is refused by the name of what cannot be") {
  const auto refused = [](double solids, double pores, double envelope, double dry) {
    const auto band = [](double x) { return vs::detail::exactly(x); };
    const auto thing =
        vs::detail::make_item("heater", band(solids), band(pores), band(envelope), band(dry), "made by hand");
    try {
      (void)vs::weight_of(thing, sea);
    } catch (const invalid_input& e) {
      return std::string{e.what()};
    }
    return std::string{"accepted"};
  };
  const std::string here = "tankwright::vessel::weight_of: heater: ";
  CHECK(refused(1, 1, 1, 1) == "accepted");
  CHECK(refused(-1, 1, 1, 1).starts_with(here + "solids"));
  CHECK(refused(1, -1, 1, 1).starts_with(here + "pores"));
  CHECK(refused(1, 1, -1, 1).starts_with(here + "envelope"));
  CHECK(refused(1, 1, 1, -1).starts_with(here + "dry mass"));
  // Of several values that cannot be the low one is named.
  auto thing = vs::equipment({.outside = litres(1), .mass = kilograms(1), .label = "heater"});
  thing.solids = vs::detail::quantities<vs::solid_volume>({-2, -1, 1}, "made by hand");
  CHECK_THROWS_WITH_AS((void)vs::weight_of(thing, sea), doctest::Contains("heater: solids = -2 m3"), invalid_input);
}

TEST_CASE("item: weights follow Archimedes") {
  const evidence weight{"tankwright::vessel::weight_of", kind::identity, "Archimedes"};
  // 2 L of solids at 2830 kg/m3 with 1.5 L of pores.
  const auto litre_band = [](double v) { return vs::detail::exactly(1e-3 * v); };
  const auto rock = vs::detail::make_item("rock", litre_band(2), litre_band(1.5), litre_band(3.5),
                                          vs::detail::exactly(5.66), "known");
  const auto w = vs::weight_of(rock, sea);
  TW_CHECK(weight, w.dry.central, kilograms(5.66), relative(1e-15));
  TW_CHECK(weight, w.submerged.central, kilograms(5.66 - 2.047), relative(1e-14));
  TW_CHECK(weight, w.wet.central, kilograms(5.66 + 1.5 * 1.0235), relative(1e-14));
  const auto foam = vs::equipment({.outside = litres(2), .mass = kilograms(0.1)});
  CHECK(vs::weight_of(foam, sea).submerged.high < kilograms(0));  // floats
  CHECK_THROWS_AS((void)vs::weight_of(foam, kilograms_per_cubic_metre(0)), invalid_input);
  CHECK_THROWS_AS((void)vs::weight_of(foam, kilograms_per_cubic_metre(std::nan(""))), invalid_input);
}
