// SPDX-License-Identifier: BSL-1.0
// What refusals say, word by word: function, thing, argument, number with its unit, and what is expected.
#include <string>
#include <tankwright/vessel.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

const mass_density fresh = kilograms_per_cubic_metre(1000.0);

/// What a call is refused with, without "tankwright::vessel::".
template <class Call>
std::string said(Call call) {
  try {
    (void)call();
  } catch (const invalid_input& e) {
    const std::string text = e.what(), start = "tankwright::vessel::";
    return text.starts_with(start) ? text.substr(start.size()) : "not of this folder: " + text;
  }
  return "accepted";
}

}  // namespace

TEST_CASE("refusal texts: how many braces") {
  for (const int braces : {0, 21}) {
    CHECK(said([&] {
            return vs::pull_of_braces({.rail = metres(1), .braces = braces, .load = newtons_per_metre(1)});
          }) == "pull_of_braces: number of braces = " + std::to_string(braces) + " is not possible; expected 1 to 20");
  }
}

TEST_CASE("refusal texts: of several values of an estimate that are impossible the low one is named") {
  const auto drip = [](double low, double central) {
    return said([&] {
      return vs::drip_rate({.drops = 3,
                            .over = seconds(60),
                            .drop = {cubic_metres(low), cubic_metres(central), cubic_metres(3e-8), "spoon"}});
    });
  };
  CHECK(drip(1e-10, 2e-10).starts_with("drip_rate: drip: volume of a drop = 1e-10 m3 is not possible"));
  CHECK(drip(1e-8, 2e-8) == "accepted");
}

TEST_CASE("refusal texts: units") {
  const auto thing = vs::equipment({.outside = litres(1), .mass = kilograms(1)});
  CHECK(said([&] { return vs::weight_of(thing, kilograms_per_cubic_metre(0)); }) ==
        "weight_of: equipment: water density = 0 kg/m3 is not possible; expected 0.01 to 30000 kg/m3");
}
