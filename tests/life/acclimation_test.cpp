// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/acclimation.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

const evidence inverse{"tankwright::life::time_to_share", kind::property, "round trip with share_of_tank_water"};
const evidence mixture{"tankwright::life::mixed_at", kind::identity, "half of each"};
const evidence pace{"tankwright::life::gentle_flow", kind::identity,
                    "3 of salinity at 0.5 an hour in 20 L: 20 L in 6 h"};
const evidence never_faster{"tankwright::life::gentle_flow", kind::property, "no hour changes more than the pace"};

twl::drip drip_of(const reference_row& row) {
  return {.start = litres(row["V"]),
          .flow = litres_per_minute(row["Q"]),
          .vessel = row.text("vessel") == "filling" ? twl::drip_vessel::filling : twl::drip_vessel::overflowing};
}
twl::water_step step(double s0, double s1, double t0, double t1) {
  return {.salinity_from = practical_salinity{s0},
          .salinity_to = practical_salinity{s1},
          .temperature_from = celsius(t0),
          .temperature_to = celsius(t1)};
}

}  // namespace

TEST_CASE("acclimation: reference table") {
  const auto salinity = [](const reference_row& row) {
    const auto share = twl::share_of_tank_water(drip_of(row), minutes(row["t"]));
    return twl::mixed_at(step(row["from"], row["to"], 25.0, 25.0), share).salinity.value();
  };
  const auto time = [](const reference_row& row) {
    return in_minutes(twl::time_to_share(drip_of(row), fraction(1.0 - row["left"])));
  };
  const auto changed = [](const reference_row& row) {
    return 1.0 - water::left_after_changes({.part = fraction(row["f"]), .times = static_cast<int>(row["n"])}).value();
  };
  check_rows(reference_rows("life/acclimation.csv"), {{"tankwright::life::share_of_tank_water", salinity},
                                                      {"tankwright::life::time_to_share", time},
                                                      {"tankwright::water::left_after_changes", changed}});
}

TEST_CASE("acclimation: times and shares are each other's inverse") {
  for (const auto vessel : {twl::drip_vessel::filling, twl::drip_vessel::overflowing}) {
    const twl::drip how{.start = litres(20.0), .flow = litres_per_minute(0.1), .vessel = vessel};
    for (double p = 0.0; p < 0.995; p += 0.01) {
      TW_CHECK(inverse, twl::share_of_tank_water(how, twl::time_to_share(how, fraction(p))), fraction(p),
               (tolerance{.absolute = 1e-15, .relative = 1e-13}));
    }
  }
}

TEST_CASE("acclimation: mixtures and pace") {
  const auto half = twl::mixed_at(step(32.0, 35.0, 22.0, 26.0), fraction(0.5));
  TW_CHECK(mixture, half.salinity, practical_salinity{33.5}, relative(1e-15));
  TW_CHECK(mixture, half.temperature, celsius(24.0), relative(1e-15));

  const auto slow = [](double s0, double s1, double t0, double t1) {
    return twl::gentle_flow({.start = litres(20.0), .step = step(s0, s1, t0, t1), .salinity_per_hour = 0.5});
  };
  TW_CHECK(pace, slow(32.0, 35.0, 25.0, 25.0), litres_per_hour(20.0 / 6.0), relative(1e-14));
  TW_CHECK(pace, slow(35.0, 32.0, 25.0, 25.0), litres_per_hour(20.0 / 6.0), relative(1e-14));
  TW_CHECK(pace, slow(35.0, 35.0, 20.0, 24.0), litres_per_hour(5.0), relative(1e-12));  // a kelvin an hour
  for (const auto vessel : {twl::drip_vessel::filling, twl::drip_vessel::overflowing}) {
    const twl::drip how{.start = litres(20.0), .flow = slow(32.0, 35.0, 25.0, 25.0), .vessel = vessel};
    for (double h = 0.0; h < 20.0; h += 0.5) {
      const double in_an_hour = 3.0 * (twl::share_of_tank_water(how, hours(h + 1.0)).value() -
                                       twl::share_of_tank_water(how, hours(h)).value());
      TW_HOLDS(never_faster, in_an_hour <= 0.5);
    }
  }
}

TEST_CASE("acclimation: bad input") {
  const auto share = [](double v, double q, double t) {
    return twl::share_of_tank_water({.start = litres(v), .flow = litres_per_minute(q)}, minutes(t));
  };
  check_edges(twl::start_volume_limits, [&](double x, range_policy) { return share(x, 0.1, 10.0); });
  check_edges(twl::drip_flow_limits, [&](double x, range_policy) { return share(20.0, x, 10.0); });
  check_edges({"time", "min", not_negative}, [&](double x, range_policy) { return share(20.0, 0.1, x); });
  CHECK_THROWS_AS((void)twl::time_to_share({.start = litres(20.0), .flow = litres_per_minute(0.0)}, fraction(0.5)),
                  invalid_input);
  CHECK_THROWS_AS((void)twl::mixed_at(step(-1.0, 35.0, 25.0, 25.0), fraction(0.5)), invalid_input);
  CHECK_THROWS_AS((void)twl::mixed_at(step(32.0, 35.0, -300.0, 25.0), fraction(0.5)), invalid_input);
  CHECK_THROWS_AS((void)twl::mixed_at(step(32.0, 35.0, 25.0, 25.0), fraction(1.1)), invalid_input);
  const auto flow = [](double v, double s1, double per_hour) {
    return twl::gentle_flow({.start = litres(v), .step = step(32.0, s1, 25.0, 25.0), .salinity_per_hour = per_hour});
  };
  CHECK_THROWS_AS((void)flow(20.0, 32.0, 0.5), invalid_input);
  CHECK_THROWS_AS((void)flow(20.0, 35.0, 0.0), invalid_input);
  CHECK_THROWS_AS((void)flow(0.0, 35.0, 0.5), invalid_input);
}

TEST_CASE("acclimation: the vessel fills up when nothing is said, and a kelvin an hour is gentle") {
  const twl::drip unsaid{.start = litres(10.0), .flow = litres_per_minute(1.0)};
  CHECK(compare(twl::share_of_tank_water(unsaid, minutes(10.0)).value(), 0.5, relative(1e-14)).good);
  const twl::gentle_drip drip{.start = litres(10.0), .step = step(35.0, 35.0, 20.0, 21.0), .salinity_per_hour = 1.0};
  CHECK(compare(drip.temperature_per_hour.value(), 1.0, relative(1e-14)).good);
  // The slower of the two paces counts: 2 of salinity at 1/h and 6 K at 1 K/h, then 4 of salinity and 1 K.
  const auto flow = [](double s1, double t1) {
    return twl::gentle_flow({.start = litres(12.0), .step = step(30.0, s1, 20.0, t1), .salinity_per_hour = 1.0});
  };
  TW_CHECK(pace, flow(32.0, 26.0), litres_per_hour(2.0), relative(1e-12));
  TW_CHECK(pace, flow(34.0, 21.0), litres_per_hour(3.0), relative(1e-12));
  TW_CHECK(pace, flow(34.0, 19.0), litres_per_hour(3.0), relative(1e-12));
}

TEST_CASE("acclimation: what is taken and what is refused") {
  const auto share = [](double v, double q, double t) {
    return twl::share_of_tank_water({.start = litres(v), .flow = litres_per_minute(q)}, minutes(t));
  };
  check_ranges("life::share_of_tank_water",
               {TW_RANGE("volume at the start", 1e-3, 1e7, share(x, 0.1, 1.0)),
                TW_RANGE("flow", 0.0, 1e6, share(1.0, x, 1.0)), TW_RANGE("time", 0.0, 1e8, share(1.0, 0.1, x))});
  const auto time = [](double v, double q, double p) {
    return twl::time_to_share({.start = litres(v), .flow = litres_per_minute(q)}, fraction(p));
  };
  check_ranges("life::time_to_share",
               {TW_RANGE("volume at the start", 1e-3, 1e7, time(x, 0.1, 0.5)),
                TW_RANGE("flow", 1e-8, 1e6, time(1.0, x, 0.5)),
                {"share of tank water", 0.0, 1.0, [&](double x) { (void)time(1.0, 0.1, x); }, false, true}});
  check_ranges("life::mixed_at",
               {TW_RANGE("share of tank water", 0.0, 1.0, twl::mixed_at(step(32.0, 35.0, 22.0, 26.0), fraction(x))),
                TW_RANGE("salinity before", 0.0, 400.0, twl::mixed_at(step(x, 35.0, 22.0, 26.0), fraction(0.5))),
                TW_RANGE("salinity after", 0.0, 400.0, twl::mixed_at(step(32.0, x, 22.0, 26.0), fraction(0.5))),
                TW_RANGE("temperature before", -5.0, 100.0, twl::mixed_at(step(32.0, 35.0, x, 26.0), fraction(0.5))),
                TW_RANGE("temperature after", -5.0, 100.0, twl::mixed_at(step(32.0, 35.0, 22.0, x), fraction(0.5)))});
  const auto flow = [](double v, double per_hour, double kelvin, double s = 32.0) {
    return twl::gentle_flow({.start = litres(v),
                             .step = step(s, 35.0, 25.0, 26.0),
                             .salinity_per_hour = per_hour,
                             .temperature_per_hour = kelvin_steps(kelvin)});
  };
  check_ranges("life::gentle_flow", {TW_RANGE("volume at the start", 1e-3, 1e7, flow(x, 0.5, 1.0)),
                                     TW_RANGE("salinity per hour", 1e-30, 1e15, flow(1.0, x, 1.0)),
                                     TW_RANGE("temperature per hour", 1e-30, 1e15, flow(1.0, 0.5, x)),
                                     TW_RANGE("salinity before", 0.0, 400.0, flow(1.0, 0.5, 1.0, x))});
}

TEST_CASE("acclimation: half a kelvin an hour is half the flow, and the same water is no step") {
  const auto flow = [](double kelvin_per_hour, double t1) {
    return twl::gentle_flow({.start = litres(20.0),
                             .step = step(35.0, 35.0, 20.0, t1),
                             .salinity_per_hour = 1.0,
                             .temperature_per_hour = kelvin_steps(kelvin_per_hour)});
  };
  TW_CHECK(pace, flow(0.5, 24.0), litres_per_hour(2.5), relative(1e-12));
  TW_CHECK(pace, flow(2.0, 24.0), litres_per_hour(10.0), relative(1e-12));
  try {
    (void)flow(1.0, 20.0);
    CHECK(false);
  } catch (const invalid_input& e) {
    CHECK(e.details().argument == "step");
    CHECK(e.details().value == 0.0);
  }
}
