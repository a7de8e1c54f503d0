// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/top_off.hpp>
#include <tankwright/water/drift.hpp>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {
/// 1000 kg of water.
twr::reservoir_request tonne(double lowest, double free_litres) {
  const auto rho = water::density(practical_salinity{35.0}, celsius(25.0));
  return {.water = seawater(25.0),
          .volume = kilograms(1000.0) / rho,
          .lowest = practical_salinity{lowest},
          .free_volume = litres(free_litres)};
}
const estimate<mass_flow> six_kilograms{kilograms_per_day(4.0), kilograms_per_day(6.0), kilograms_per_day(9.0), "test"};
}  // namespace

TEST_CASE("top-off: reference table") {
  // A row by mass: kilograms of salt water, kilograms evaporated in a day.
  const auto dry = [](const reference_row& row) {
    const temperature t = celsius(25.0);
    const practical_salinity s{row["S"]};
    const auto drifted = water::drift(
        {.volume = kilograms(row["kg"]) / water::density(s, t),
         .salinity = s,
         .temperature = t,
         .evaporation = kilograms(row["evaporated"]) / water::density(practical_salinity{0.0}, t) / days(1.0),
         .top_off = litres_per_day(0.0)},
        days(1.0));
    return drifted.salinity.value();
  };
  const auto over = [](const reference_row& row) {
    return twr::stuck_valve({.water = seawater(25.0, row["S"]),
                             .volume = litres(row["L"]),
                             .lowest = practical_salinity{30.0},
                             .free_volume = litres(100.0),
                             .fresh_water = celsius(25.0)},
                            litres(row["added"]))
        .salinity.value();
  };
  check_rows(reference_rows("room/top_off.csv"),
             {{"tankwright::water::drift", dry}, {"tankwright::room::stuck_valve", over}});
}

TEST_CASE("top-off: litres a day, days of a reservoir, and the level of the return chamber") {
  const evidence litres_a_day{"tankwright::room::top_off_rate", kind::library,
                              "water of 20 degC: 998.2071 kg/m3 (IAPWS-95, as in the CRC Handbook)"};
  const auto rate = twr::top_off_rate(six_kilograms);
  TW_CHECK(litres_a_day, in_litres_per_day(rate.central), 6.0 / 0.9982071, relative(1e-6));
  CHECK(rate.low < rate.central);

  const evidence lasts{"tankwright::room::reservoir_lasts", kind::identity,
                       "rate times time is the reservoir; the high rate empties it first"};
  const auto time = twr::reservoir_lasts(litres(40.0), rate);
  TW_CHECK(lasts, in_litres(time.low * rate.high), 40.0, relative(1e-13));
  TW_CHECK(lasts, in_litres(time.central * rate.central), 40.0, relative(1e-13));
  CHECK(time.low < time.high);

  const evidence level{"tankwright::room::return_level", kind::identity, "6 L/d from 0.27 m2 is 22.2 mm/d"};
  const estimate<flow_rate> six{litres_per_day(4.0), litres_per_day(6.0), litres_per_day(9.0), ""};
  const auto fall = twr::return_level({.surface = square_metres(0.27),
                                       .top_off = six,
                                       .running_level = centimetres(25.0),
                                       .lowest_level = centimetres(15.0)});
  TW_CHECK(level, in_millimetres_per_day(fall.fall.central), 6.0 / 0.27, relative(1e-12));
  TW_CHECK(level, in_days(fall.until_lowest.central), 100.0 / (6.0 / 0.27), relative(1e-12));
  TW_CHECK(level, in_days(fall.until_lowest.low), 100.0 / (9.0 / 0.27), relative(1e-12));
}

TEST_CASE("top-off: the largest reservoir, and a stuck valve") {
  const evidence largest{"tankwright::room::largest_reservoir", kind::identity,
                         "when all of it has run in, the salinity is the lowest allowed"};
  const evidence stuck{"tankwright::room::stuck_valve", kind::identity,
                       "conservation of salt; spilling against small steps"};
  const auto roomy = tonne(33.0, 500.0);
  const auto by_salt = twr::largest_reservoir(roomy);
  CHECK(by_salt.governed_by == "salinity");
  TW_CHECK(largest, twr::stuck_valve(roomy, by_salt.largest).salinity.value(), 33.0, relative(1e-12));
  CHECK(twr::stuck_valve(roomy, 1.01 * by_salt.largest).too_fresh);
  CHECK(!twr::stuck_valve(roomy, 0.99 * by_salt.largest).too_fresh);

  const auto tight = tonne(33.0, 25.0);
  const auto by_volume = twr::largest_reservoir(tight);
  CHECK(by_volume.governed_by == "free volume");
  TW_CHECK(largest, by_volume.largest, litres(25.0), relative(1e-15));
  const auto flood = twr::stuck_valve(tight, litres(60.0));
  TW_CHECK(stuck, in_litres(flood.overflow), 35.0, relative(1e-12));
  CHECK(twr::stuck_valve(tight, by_volume.largest).overflow.value() == 0.0);
  // In small steps: fill to the rim, then every gram that comes in pushes a gram of mixed water out.
  const double fresh = in_kilograms_per_cubic_metre(water::density(practical_salinity{0.0}, celsius(20.0)));
  const double full = 1000.0 + 0.025 * fresh;
  double salt = 35.0 * 1000.0;
  const double step = 0.035 * fresh / 100000.0;
  for (int i = 0; i < 100000; ++i) salt -= step * (salt - 0.5 * step * salt / full) / full;
  TW_CHECK(stuck, flood.salinity.value(), salt / full, relative(1e-9));
  CHECK(!flood.caution.text.empty());
}

TEST_CASE("top-off: mistakes") {
  CHECK_THROWS_AS((void)twr::stuck_valve(tonne(33.0, 50.0), litres(-1.0)), invalid_input);
  CHECK_THROWS_AS((void)twr::stuck_valve(tonne(33.0, -50.0), litres(1.0)), invalid_input);
  auto hot = tonne(33.0, 50.0);
  hot.fresh_water = celsius(60.0);
  CHECK_THROWS_AS((void)twr::stuck_valve(hot, litres(1.0)), out_of_range);
  CHECK_THROWS_AS((void)twr::largest_reservoir(tonne(0.0, 50.0)), invalid_input);
  CHECK_THROWS_AS(
      (void)twr::reservoir_lasts(litres(40.0), {litres_per_day(0.0), litres_per_day(0.0), litres_per_day(0.0), ""}),
      invalid_input);
  CHECK(message_of([] {
          (void)twr::largest_reservoir(tonne(36.0, 10.0));
        }).ends_with("lowest salinity = 36 is above that of the system, 35"));
  const estimate<flow_rate> six{litres_per_day(4.0), litres_per_day(6.0), litres_per_day(9.0), ""};
  CHECK(message_of([&] {
          (void)twr::return_level({.surface = square_metres(0.27),
                                   .top_off = six,
                                   .running_level = centimetres(10.0),
                                   .lowest_level = centimetres(15.0)});
        }).ends_with("lowest level = 0.15 m is above the running level, 0.1 m"));
  CHECK_THROWS_AS((void)twr::return_level({.surface = square_metres(0.0),
                                           .top_off = six,
                                           .running_level = centimetres(25.0),
                                           .lowest_level = centimetres(15.0)}),
                  invalid_input);
}
