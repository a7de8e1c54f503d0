// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/acclimation.hpp>
#include <tankwright/life/transfer.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(transfer, "transfer", "A bag of pipefish: how fast may the tank's water drip in?") {
  using namespace tankwright;
  const double v =
      s.given("V0", "water of the bag, in a bucket", 12, 0, "L", worked::range_of(life::start_volume_limits));
  const double s1 = s.given("S1", "its salinity", 32.5, 1);
  const double s2 = s.given("S2", "salinity of the tank", 35.0, 1);
  const double t1 = s.given("t1", "temperature of the bag", 22.5, 1, "°C");
  const double t2 = s.given("t2", "temperature of the tank", 24.0, 1, "°C");
  const double p = s.given("p", "salinity may change in an hour by", 1.0, 1, "1/h");
  s.wanted("The largest drip, and the time to nine tenths of the way.");
  const auto flow = life::gentle_flow({.start = litres(v),
                                       .step = {.salinity_from = practical_salinity{s1},
                                                .salinity_to = practical_salinity{s2},
                                                .temperature_from = celsius(t1),
                                                .temperature_to = celsius(t2)},
                                       .salinity_per_hour = p});
  const auto filling = life::time_to_share({.start = litres(v), .flow = flow}, percent(90.0));
  const auto over =
      life::time_to_share({.start = litres(v), .flow = flow, .vessel = life::drip_vessel::overflowing}, percent(90.0));
  s.step("Qs", "by the salinity = V0 p/(S2 - S1)", v * p / (s2 - s1), 1, "L/h");
  s.step("Qt", "by the temperature, 1 K an hour = V0/(t2 - t1)", v / (t2 - t1), 1, "L/h");
  s.result("Q", "drip = the smaller", in_litres_per_hour(flow), 1, "L/h");
  s.result("Tfill", "to nine tenths, bucket fills = 9 V0/Q", in_hours(filling), 0, "h");
  s.result("Tover", "bucket overflows = V0/Q ln 10", in_hours(over), 1, "h");
  s.means(
      "A bucket that fills takes a day and a hundred litres; one that overflows takes six hours. After a long journey "
      "do neither: match the "
      "tank's water in advance and move them at once.");
  s.caution(life::transfer_caution);
}
