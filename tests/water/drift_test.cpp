// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/drift.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence steady{"tankwright::water::drift", kind::property, "fresh top-off that keeps up keeps the salinity"};
const evidence closes{"tankwright::water::evaporation_from_readings", kind::identity, "what drift took away"};

struct state {
  double litre = 1000.0, s = 35.0, t = 25.0, lost = 10.0, brought = 0.0, s_in = 0.0;
};
tww::drifting_system system_of(const state& x) {
  return {.volume = litres(x.litre),
          .salinity = practical_salinity{x.s},
          .temperature = celsius(x.t),
          .evaporation = litres_per_day(x.lost),
          .top_off = litres_per_day(x.brought),
          .top_off_salinity = practical_salinity{x.s_in}};
}
tww::drifting_system system_of(const reference_row& row) {
  return system_of(state{row["L"], row["S_P"], row["t90"], row["lost"], row["brought"], row["S_in"]});
}
}  // namespace

TEST_CASE("drift: balances with the densities of the TEOS-10 toolbox") {
  check_rows(live_rows("water_drift.csv"),
             {{"tankwright::water::drift",
               [](const reference_row& row) {
                 return tww::drift(system_of(row), days(row["days"]), extrapolate).salinity.value();
               }},
              {"tankwright::water::time_to_salinity",
               [](const reference_row& row) {
                 return in_days(tww::time_to_salinity(system_of(row), practical_salinity{row["reached"]}, extrapolate));
               }},
              {"tankwright::water::evaporation_from_readings", [](const reference_row& row) {
                 return in_litres(tww::evaporation_from_readings({.volume = litres(row["L"]),
                                                                  .first = practical_salinity{row["S_P"]},
                                                                  .second = practical_salinity{row["second"]},
                                                                  .temperature = celsius(row["t90"])})
                                      .volume);
               }}});
}

TEST_CASE("drift: steady top-off, a failed one, and back from the readings") {
  const auto kept = tww::drift(system_of(state{.brought = 10.0}), days(400.0));
  TW_CHECK(steady, kept.salinity, practical_salinity{35.0}, relative(1e-14));
  TW_CHECK(steady, kept.volume, litres(1000.0), relative(1e-14));
  TW_HOLDS(steady,
           tww::drift(system_of(state{.brought = 10.0, .s_in = 1.0}), days(30.0)).salinity > practical_salinity{35.0});
  const auto dried = tww::drift(system_of(state{}), days(5.0));
  const auto gone = tww::evaporation_from_readings({.volume = litres(1000.0),
                                                    .first = practical_salinity{35.0},
                                                    .second = dried.salinity,
                                                    .temperature = celsius(25.0)});
  TW_CHECK(closes, gone.volume, litres(50.0), relative(1e-12));
  TW_CHECK(closes, gone.mass, litres(50.0) * tww::density(practical_salinity{0.0}, celsius(25.0)), relative(1e-12));
  CHECK(in_seconds(tww::time_to_salinity(system_of(state{}), practical_salinity{35.0})) == 0.0);
  CHECK_FALSE(kept.caution.text.empty());
}

TEST_CASE("drift: what cannot be is named") {
  CHECK_THROWS_WITH_AS((void)tww::drift(system_of(state{}), days(200.0)),
                       "tankwright::water::drift: time = 200 d is too long: the system is dry after 102.637385 d",
                       invalid_input);
  CHECK_THROWS_AS((void)tww::drift(system_of(state{}), days(50.0)), out_of_range);  // past S 42
  CHECK_THROWS_AS((void)tww::time_to_salinity(system_of(state{}), practical_salinity{34.0}), invalid_input);
  CHECK_THROWS_AS((void)tww::time_to_salinity(system_of(state{.lost = 0.0}), practical_salinity{36.0}), invalid_input);
  CHECK_THROWS_WITH_AS((void)tww::evaporation_from_readings({.volume = litres(1000.0),
                                                             .first = practical_salinity{35.0},
                                                             .second = practical_salinity{34.0},
                                                             .temperature = celsius(25.0)}),
                       "tankwright::water::evaporation_from_readings: second reading = 34 is not above the first, 35: "
                       "evaporation only raises salinity",
                       invalid_input);
}

TEST_CASE("drift: edges of the ranges") {
  const auto both = [](const state& x, range_policy policy) {
    (void)tww::drift(system_of(x), days(0.0), policy);
    return tww::time_to_salinity(system_of(x), practical_salinity{x.s}, policy);
  };
  check_edges(tww::water_volume_limits, [&](double x, range_policy policy) { return both({.litre = x}, policy); });
  check_edges(tww::practical_salinity_limits, [&](double x, range_policy policy) { return both({.s = x}, policy); });
  check_edges(tww::top_off_salinity_limits, [&](double x, range_policy policy) { return both({.s_in = x}, policy); });
  check_edges(tww::evaporation_limits, [&](double x, range_policy policy) { return both({.lost = x}, policy); });
  check_edges(tww::top_off_limits, [&](double x, range_policy policy) { return both({.brought = x}, policy); });
  check_edges(tww::drift_time_limits, [&](double x, range_policy policy) {
    return tww::drift(system_of(state{.brought = 10.0}), days(x), policy);
  });
  const auto readings = [](double litre, double first, double second, double t) {
    return tww::evaporation_from_readings({.volume = litres(litre),
                                           .first = practical_salinity{first},
                                           .second = practical_salinity{second},
                                           .temperature = celsius(t)});
  };
  CHECK_NOTHROW((void)readings(100.0, 0.0, 42.0, 80.0));
  CHECK_THROWS_AS((void)readings(0.0, 35.0, 36.0, 25.0), invalid_input);
  CHECK_THROWS_AS((void)readings(100.0, -1.0, 36.0, 25.0), invalid_input);
  CHECK_THROWS_AS((void)readings(100.0, 35.0, 42.1, 25.0), out_of_range);
  for (const double t : {-3.0, 80.1}) {
    CHECK_THROWS_AS((void)readings(100.0, 35.0, 36.0, t), out_of_range);
    CHECK_THROWS_AS((void)both({.t = t}, range_policy::published), out_of_range);
  }
}
