// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/refractometer.hpp>

#include <string>
#include <vector>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
using tww::refractometer_scale;
using tww::temperature_compensation;

const evidence sea_scale{"tankwright::water::refractometer_reading", kind::identity,
                         "a seawater scale at 20 degC shows the salinity"};
const evidence sea_scale_back{"tankwright::water::salinity_from_refractometer", kind::identity,
                              "a seawater scale at 20 degC shows the salinity"};
const evidence pure{"tankwright::water::refractometer_reading", kind::identity, "pure water at 20 degC reads 0"};
const evidence warm{"tankwright::water::refractometer_reading", kind::property,
                    "without compensation, five kelvin too warm read about three too low"};
const evidence there_and_back{"tankwright::water::salinity_from_refractometer", kind::property, "there and back"};
const evidence band{"tankwright::water::salinity_from_refractometer", kind::property, "the band holds the value"};

const std::vector<tww::refractometer> instruments{
    {.scale = refractometer_scale::seawater, .compensation = temperature_compensation::none},
    {.scale = refractometer_scale::seawater, .compensation = temperature_compensation::automatic},
    {.scale = refractometer_scale::sodium_chloride, .compensation = temperature_compensation::none},
    {.scale = refractometer_scale::sodium_chloride,
     .compensation = temperature_compensation::automatic,
     .division = 0.5}};
}  // namespace

TEST_CASE("refractometer: reference table") {
  check_rows(reference_rows("water/refractometer.csv"),
             {{"tankwright::water::refractometer_reading", [](const reference_row& row) {
                 CHECK(row.text("scale") == "sodium_chloride");
                 return tww::refractometer_reading(practical_salinity{row["S_P"]}, celsius(row["t90"]), instruments[2]);
               }}});
}

TEST_CASE("refractometer: what the scales show, and the way back") {
  for (const auto& instrument : instruments) {
    const bool sea = instrument.scale == refractometer_scale::seawater;
    TW_CHECK(pure, tww::refractometer_reading(practical_salinity{0.0}, celsius(20.0), instrument), 0.0, tolerance{});
    for (double s = 12.0; s <= 42.0; s += 2.0) {
      for (double t = 10.0; t <= 30.0; t += 2.5) {
        const double reading = tww::refractometer_reading(practical_salinity{s}, celsius(t), instrument);
        const auto found = tww::salinity_from_refractometer(
            {.reading = reading, .prism = celsius(t), .instrument = instrument}, extrapolate);
        TW_CHECK(there_and_back, found.central, practical_salinity{s}, tolerance{.absolute = 1e-11});
        TW_HOLDS(band, found.low < found.central && found.central < found.high);
        if (sea && (t == 20.0 || instrument.compensation == temperature_compensation::automatic)) {
          TW_CHECK(sea_scale, reading, s, tolerance{.absolute = 1e-11});
          TW_CHECK(sea_scale_back, found.central.value(), reading, tolerance{.absolute = 1e-11});
        }
      }
    }
  }
  const double at_25 = tww::refractometer_reading(practical_salinity{35.0}, celsius(25.0), instruments[0]);
  TW_HOLDS(warm, at_25 > 31.8 && at_25 < 32.2);
}

TEST_CASE("refractometer: the band") {
  const auto at = [](double t, std::size_t which) {
    return tww::salinity_from_refractometer({.reading = 35.0, .prism = celsius(t), .instrument = instruments[which]});
  };
  const auto width = [](const estimate<practical_salinity>& e) { return e.high.value() - e.low.value(); };
  CHECK(std::fabs(width(at(20.0, 1)) - 1.0) < 1e-9);  // one division
  CHECK(width(at(28.0, 1)) > width(at(20.0, 1)) + 0.5);
  CHECK(width(at(20.0, 2)) > 1.4);
  CHECK(at(20.0, 2).central.value() < 34.0);  // kitchen salt reads high
  const auto fresh =
      tww::salinity_from_refractometer({.reading = 0.0, .prism = celsius(20.0), .instrument = instruments[1]});
  CHECK(fresh.low.value() == 0.0);
}

TEST_CASE("refractometer: edges of the ranges") {
  check_edges(tww::practical_salinity_limits, [](double s, range_policy policy) {
    return tww::refractometer_reading(practical_salinity{s}, celsius(20.0), instruments[0], policy);
  });
  check_edges(tww::prism_temperature_limits, [](double t, range_policy policy) {
    return tww::refractometer_reading(practical_salinity{35.0}, celsius(t), instruments[0], policy);
  });
  check_edges(tww::compensated_temperature_limits, [](double t, range_policy policy) {
    return tww::refractometer_reading(practical_salinity{35.0}, celsius(t), instruments[1], policy);
  });
  check_edges(tww::refractometer_division_limits, [](double division, range_policy policy) {
    tww::refractometer instrument = instruments[1];
    instrument.division = division;
    return tww::salinity_from_refractometer({.reading = 35.0, .prism = celsius(20.0), .instrument = instrument},
                                            policy);
  });
  check_edges(tww::refractometer_reading_limits, [](double reading, range_policy) {
    return tww::salinity_from_refractometer({.reading = reading, .prism = celsius(20.0), .instrument = instruments[1]},
                                            extrapolate);
  });
  try {
    (void)tww::salinity_from_refractometer({.reading = 50.0, .prism = celsius(20.0), .instrument = instruments[1]});
    FAIL("salinity 50 was accepted");
  } catch (const out_of_range& e) {
    CHECK(std::string{e.what()} ==
          "tankwright::water::salinity_from_refractometer: reading = 50 ppt means practical salinity 50 with the prism "
          "at "
          "20 degC, outside 0 to 42");
  }
  CHECK_THROWS_AS((void)tww::salinity_from_refractometer(
                      {.reading = 0.0, .prism = celsius(10.0), .instrument = instruments[0]}, extrapolate),
                  out_of_range);
}
