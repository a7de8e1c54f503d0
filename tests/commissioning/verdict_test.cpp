// SPDX-License-Identifier: BSL-1.0
#include <tankwright/commissioning/finding.hpp>
#include <tankwright/commissioning/salinity_reading.hpp>
#include <tankwright/commissioning/verdict.hpp>

#include <cmath>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twc = tankwright::commissioning;

TEST_CASE("verdicts have words of their own") {
  const evidence about{"tankwright::commissioning::words", kind::identity, "the words as documented"};
  TW_HOLDS(about, twc::words(twc::verdict::holds) == "holds");
  TW_HOLDS(about, twc::words(twc::verdict::thin_margin) == "thin margin");
  TW_HOLDS(about, twc::words(twc::verdict::does_not_hold) == "does not hold");
  TW_HOLDS(about, twc::words(twc::verdict::not_enough_known) == "not enough known");
  TW_HOLDS(about, twc::words(twc::verdict::for_information) == "for information");
}

TEST_CASE("a margin holds by its whole band, and is thin when only its centre is safe") {
  const evidence about{"tankwright::commissioning::verdict_of_margin", kind::identity, "the definition, case by case"};
  const auto says = [](double low, double central, double high, double thin) {
    return twc::verdict_of_margin(estimate<length>{metres(low), metres(central), metres(high), ""}, metres(thin));
  };
  TW_HOLDS(about, says(0.02, 0.05, 0.08, 0.0) == twc::verdict::holds);
  TW_HOLDS(about, says(0.02, 0.05, 0.08, 0.03) == twc::verdict::thin_margin);
  TW_HOLDS(about, says(-0.01, 0.05, 0.08, 0.0) == twc::verdict::thin_margin);
  TW_HOLDS(about, says(-0.05, -0.01, 0.03, 0.0) == twc::verdict::does_not_hold);
  TW_HOLDS(about, says(0.0, 0.0, 0.0, 0.0) == twc::verdict::holds);
  TW_HOLDS(about, says(std::nan(""), 0.05, 0.08, 0.0) == twc::verdict::not_enough_known);
}

TEST_CASE("a salinity reading is what its instrument's function says") {
  const evidence about{"tankwright::commissioning::salinity_of", kind::identity, "the same calls by hand"};
  const water::hydrometer_observation seen{
      .reading = 1.0245, .water = celsius(26.0), .instrument = {.scale = water::scale_60f_60f}};
  TW_CHECK(about, twc::salinity_of(seen).central, water::salinity_from_hydrometer(seen).central, relative(1e-15));
  const twc::probe_observation probe{.shown = millisiemens_per_centimetre(53.0), .water = celsius(25.0)};
  TW_CHECK(about, twc::salinity_of(probe).central,
           water::salinity_from_conductivity(millisiemens_per_centimetre(53.0), celsius(25.0)), relative(1e-15));
  CHECK(twc::salinity_of(probe).low < twc::salinity_of(probe).central);
  TW_CHECK(about, twc::salinity_of(practical_salinity{33.0}).high, practical_salinity{33.0}, relative(1e-15));
  CHECK_THROWS_AS((void)twc::salinity_of(practical_salinity{43.0}), out_of_range);
}
