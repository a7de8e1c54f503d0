// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/submerged_jet.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(submerged_jet, "submerged_jet", "Does the return reach the far end, and does it dig the sand?") {
  using namespace tankwright;
  const double d = s.given("D", "bore of the nozzle", 26.2, 1, "mm", worked::range_of(plumbing::jet_bore_limits, 1e3));
  const double q = s.given("Q", "flow", 2400, 0, "L/h");
  const double x =
      s.given("x", "distance along the tank", 1.80, 2, "m", worked::range_of(plumbing::jet_distance_limits));
  const double u = s.given("u1", "speed that still counts", 0.10, 2, "m/s");
  const double grain =
      s.given("d", "grains of aragonite, 2800 kg/m3", 1.0, 1, "mm", worked::range_of(plumbing::grain_size_limits, 1e3));
  s.given("Seawater of 1024 kg/m3 and 0.96 mPa s.");
  s.wanted("The speed there, how far the jet reaches, and the speed at which the sand begins to move.");
  const plumbing::submerged_jet jet{.bore = plumbing::pipe_bore{millimetres(d)}, .flow = litres_per_hour(q)};
  const water::liquid water{.density = kilograms_per_cubic_metre(1024.0), .viscosity = millipascal_seconds(0.96)};
  const plumbing::loose_grains sand{.size = millimetres(grain)};
  const auto at = plumbing::jet_speed_at(jet, metres(x));
  const auto reach = plumbing::jet_reaches(jet, metres_per_second(u));
  const auto moves = plumbing::speed_that_moves(sand, water);
  s.step("u0", "speed in the nozzle = 4 Q/(pi D^2)",
         in_metres_per_second(plumbing::jet_speed_at(jet, millimetres(1.0)).central), 2, "m/s");
  s.step("us", "friction velocity that moves the grains",
         in_metres_per_second(plumbing::friction_velocity_that_moves(sand, water)), 4, "m/s");
  s.result("u", "speed on the axis at x = 6.2 D/x u0", in_metres_per_second(at.central), 3, "m/s");
  s.result("X", "reaches with u1", in_metres(reach.central), 2, "m");
  s.result("near", "with 5.8 for 6.2", in_metres(reach.low), 2, "m");
  s.result("far", "with 6.5 for 6.2", in_metres(reach.high), 2, "m");
  s.result("um", "the sand moves from", in_metres_per_second(moves.central), 2, "m/s");
  s.result("slow", "and perhaps from", in_metres_per_second(moves.low), 2, "m/s");
  s.means(
      "It reaches the far end, and there it has a third of the speed that would lift the sand. A nozzle of half the "
      "bore reaches twice as far with the same water, for sixteen times the head.");
}
