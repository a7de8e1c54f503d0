// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/conductivity_meter.hpp>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence to_25{"tankwright::water::referred_to_25", kind::identity,
                     "at salinity 35 the conductivity at 25 degC is that of PSS-78"};
const evidence to_25_close{
    "tankwright::water::referred_to_25", kind::property,
    "the salinity read from it is within 0.012 (32 to 38, 18 to 30 degC) or 0.031 (30 to 40, 15 to 35)"};
const evidence from_25{"tankwright::water::raw_conductivity", kind::identity, "undoes referred_to_25"};
const evidence linear_undone{"tankwright::water::raw_conductivity", kind::identity, "undoes linearly_compensated"};
const evidence linear{"tankwright::water::linearly_compensated", kind::identity,
                      "2 %/K at 30 degC: 1.1 times the reading is the conductivity"};
const evidence salinity_behind{"tankwright::water::salinity_from_conductivity", kind::property,
                               "from a compensated reading as from the raw conductivity"};
}  // namespace

TEST_CASE("conductivity_meter: referred to 25 degC along the curve of seawater") {
  for (double s = 30.0; s <= 40.0; s += 0.5) {
    for (double tc = 15.0; tc <= 35.0; tc += 0.5) {
      const temperature t = celsius(tc);
      const auto c = tww::conductivity_from_salinity(practical_salinity{s}, t);
      const auto at_25 = tww::referred_to_25(c, t);
      TW_CHECK(from_25, tww::raw_conductivity(at_25, t), c, relative(4e-16));
      const bool near = s >= 32.0 && s <= 38.0 && tc >= 18.0 && tc <= 30.0;
      TW_CHECK(to_25_close, tww::salinity_from_conductivity(at_25), practical_salinity{s},
               tolerance{.absolute = near ? 0.012 : 0.031});
    }
  }
  for (double tc = -1.0; tc <= 35.0; tc += 1.5) {
    const auto c = tww::conductivity_from_salinity(practical_salinity{35.0}, celsius(tc));
    TW_CHECK(to_25, tww::referred_to_25(c, celsius(tc)).value(),
             tww::conductivity_from_salinity(practical_salinity{35.0}, celsius(25.0)), relative(1e-15));
  }
}

TEST_CASE("conductivity_meter: linear compensation is done and undone") {
  const temperature t = celsius(30.0);
  const auto c = tww::conductivity_from_salinity(practical_salinity{35.0}, t);
  const auto reading = tww::linearly_compensated(c, t, percent_per_kelvin(2.0));
  TW_CHECK(linear, reading.shown.get() * 1.1, c, relative(4e-16));
  TW_CHECK(linear_undone, tww::raw_conductivity(reading), c, relative(4e-16));
  TW_CHECK(salinity_behind, tww::salinity_from_conductivity(reading), practical_salinity{35.0}, relative(1e-14));
  // Taken for the conductivity at 25 degC, the same reading would be 0.02 out at 30 degC and 0.1 at 20 degC.
  const auto cool = tww::linearly_compensated(tww::conductivity_from_salinity(practical_salinity{35.0}, celsius(20.0)),
                                              celsius(20.0), percent_per_kelvin(2.0));
  CHECK(tww::salinity_from_conductivity(tww::conductivity_at_25{cool.shown}).value() > 35.1);
}

TEST_CASE("conductivity_meter: edges of the ranges") {
  const auto c = millisiemens_per_centimetre(50.0);
  check_edges(tww::conductivity_limits, [](double x, range_policy) {
    return tww::referred_to_25(millisiemens_per_centimetre(x), celsius(20.0));
  });
  check_edges(tww::conductivity_limits, [](double x, range_policy) {
    return tww::linearly_compensated(millisiemens_per_centimetre(x), celsius(20.0), percent_per_kelvin(2.0));
  });
  check_edges(tww::pss78_temperature_limits,
              [&](double t, range_policy policy) { return tww::referred_to_25(c, celsius(t), policy); });
  check_edges(tww::pss78_temperature_limits, [&](double t, range_policy policy) {
    return tww::raw_conductivity(tww::conductivity_at_25{c}, celsius(t), policy);
  });
  check_edges(tww::compensation_limits, [&](double a, range_policy) {
    const bool taken_for_percent = a > 0.0 && a < tww::least_compensation;  // refused, and not for the range
    return tww::linearly_compensated(c, celsius(-2.0), percent_per_kelvin(taken_for_percent ? 0.0 : a));
  });
  CHECK_THROWS_AS((void)tww::linearly_compensated(c, celsius(20.0), percent_per_kelvin(0.0999)), invalid_input);
  CHECK_NOTHROW((void)tww::linearly_compensated(c, celsius(20.0), percent_per_kelvin(tww::least_compensation)));
  // A coefficient typed as a number per kelvin instead of percent: 2 is 200 %/K.
  CHECK_THROWS_AS((void)tww::linearly_compensated(c, celsius(20.0), per_kelvin(2.0)), invalid_input);
  const auto at_40 = tww::compensated_reading{
      .shown = c, .water = celsius(20.0), .coefficient = percent_per_kelvin(2.0), .reference = celsius(40.0)};
  CHECK_THROWS_AS((void)tww::raw_conductivity(at_40), invalid_input);
}
