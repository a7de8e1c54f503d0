// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/hydrometer.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence there_and_back{"tankwright::water::salinity_from_hydrometer", kind::property, "there and back"};
const evidence band{"tankwright::water::salinity_from_hydrometer", kind::property,
                    "the band is that of half a division either way"};
const evidence at_home{"tankwright::water::hydrometer_reading", kind::identity,
                       "at the temperature of its scale the reading is the specific gravity"};
const evidence at_home_true{"tankwright::water::specific_gravity_from_hydrometer", kind::identity,
                            "at the temperature of its scale the reading is the specific gravity"};
const evidence true_band{"tankwright::water::specific_gravity_from_hydrometer", kind::property,
                         "the band holds the reading"};
const evidence falls{"tankwright::water::hydrometer_reading", kind::property,
                     "falls with the temperature of the water above 10 degC for glass"};

double reading_of(const reference_row& row) {
  tww::hydrometer instrument{.scale = row.has("sample_C")
                                          ? tww::gravity_scale{celsius(row["sample_C"]), celsius(row["reference_C"])}
                                          : tww::scale_60f_60f};
  instrument.body.expansion = per_kelvin(row["expansion"]);
  return tww::hydrometer_reading(practical_salinity{row["S_P"]}, celsius(row["t90"]), instrument);
}

double salinity_of(const reference_row& row) {
  tww::hydrometer instrument{.scale = tww::gravity_scale{celsius(row["sample_C"]), celsius(row["reference_C"])}};
  instrument.body.expansion = per_kelvin(row["expansion"]);
  return tww::salinity_from_hydrometer(
             {.reading = row["reading"], .water = celsius(row["t90"]), .instrument = instrument})
      .central.value();
}

const std::vector<tww::hydrometer> instruments{{.scale = tww::scale_60f_60f},
                                               {.scale = tww::scale_25_25, .body = tww::hydrometer_plastic},
                                               {.scale = tww::scale_20_4, .division = 0.0005}};
}  // namespace

TEST_CASE("hydrometer: reference table") {
  check_rows(reference_rows("water/hydrometer.csv"), {{"tankwright::water::hydrometer_reading", reading_of},
                                                      {"tankwright::water::hydrometer_glass", [](const reference_row&) {
                                                         return in_per_kelvin(tww::hydrometer_glass.expansion);
                                                       }}});
}

TEST_CASE("hydrometer: random states against the TEOS-10 toolbox") {
  check_rows(live_rows("water_hydrometer.csv"), {{"tankwright::water::hydrometer_reading", reading_of},
                                                 {"tankwright::water::salinity_from_hydrometer", salinity_of}});
}

TEST_CASE("hydrometer: there and back, with the band") {
  for (const auto& instrument : instruments) {
    const tww::gravity_scale& scale = instrument.scale;
    for (double s = 2.0; s <= 40.0; s += 1.0) {
      const practical_salinity here{s};
      TW_CHECK(at_home, tww::hydrometer_reading(here, scale.sample, instrument),
               tww::specific_gravity_from_salinity(here, scale).value(), relative(4e-16));
      for (double t = 0.0; t <= 35.0; t += 3.5) {
        const double reading = tww::hydrometer_reading(here, celsius(t), instrument);
        if (t > 10.0 && instrument.body.name == "glass") {
          TW_HOLDS(falls, tww::hydrometer_reading(here, celsius(t + 1.0), instrument) < reading);
        }
        const auto found =
            tww::salinity_from_hydrometer({.reading = reading, .water = celsius(t), .instrument = instrument});
        TW_CHECK(there_and_back, found.central, here, (tolerance{.absolute = 5e-13, .relative = 1e-12}));
        const double low = tww::hydrometer_reading(found.low, celsius(t), instrument);
        const double high = tww::hydrometer_reading(found.high, celsius(t), instrument, extrapolate);
        TW_CHECK(band, high - low, instrument.division, tolerance{.absolute = 1e-14});
      }
    }
    const double reading = 1.0245;
    const auto found =
        tww::specific_gravity_from_hydrometer({.reading = reading, .water = scale.sample, .instrument = instrument});
    TW_CHECK(at_home_true, found.central.value(), reading, relative(6e-16));
    TW_HOLDS(true_band, found.low.value() < reading && reading < found.high.value());
  }
}

TEST_CASE("hydrometer: the band ends where seawater does") {
  const tww::hydrometer instrument{.scale = tww::scale_25_25, .division = 0.002};
  const auto fresh =
      tww::salinity_from_hydrometer({.reading = 1.0005, .water = celsius(25.0), .instrument = instrument});
  CHECK(fresh.low.value() == 0.0);
  CHECK(fresh.central > fresh.low);
  const auto salty =
      tww::salinity_from_hydrometer({.reading = 1.0315, .water = celsius(25.0), .instrument = instrument});
  CHECK(salty.high.value() > 42.0);
}

TEST_CASE("hydrometer: edges of the ranges") {
  const auto read = [](double reading, double t, double division, double expansion, range_policy policy) {
    tww::hydrometer instrument{.scale = tww::scale_25_25, .division = division};
    instrument.body.expansion = per_kelvin(expansion);
    return tww::salinity_from_hydrometer({.reading = reading, .water = celsius(t), .instrument = instrument}, policy);
  };
  check_edges(tww::division_limits,
              [&](double division, range_policy policy) { return read(1.025, 25.0, division, 25e-6, policy); });
  check_edges(tww::body_expansion_limits,
              [&](double expansion, range_policy policy) { return read(1.025, 25.0, 0.001, expansion, policy); });
  limits above_ice = tww::gibbs_temperature_limits;
  above_ice.published.low = in_celsius(tww::freezing_point(practical_salinity{35.0}));
  check_edges(above_ice, [](double t, range_policy policy) {
    return tww::hydrometer_reading(practical_salinity{35.0}, celsius(t), {.scale = tww::scale_25_25}, policy);
  });
  for (const double wrong : {1024.5, 35.0, -1.0, 0.0}) {
    CHECK_THROWS_AS((void)read(wrong, 25.0, 0.001, 25e-6, range_policy::published), invalid_input);
  }
  CHECK_THROWS_AS((void)read(1.04, 25.0, 0.001, 25e-6, range_policy::published), out_of_range);
  CHECK_NOTHROW((void)read(1.04, 25.0, 0.001, 25e-6, extrapolate));
  CHECK_THROWS_AS((void)read(0.995, 25.0, 0.001, 25e-6, extrapolate), out_of_range);
}
