// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/submerged_jet.hpp>

#include <numbers>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twp = tankwright::plumbing;

namespace {

const evidence speed{"tankwright::plumbing::jet_speed_at", kind::identity, "6.2 D/x of the speed at the opening"};
const evidence reach{"tankwright::plumbing::jet_reaches", kind::identity, "inverse of jet_speed_at, worked by hand"};
const evidence friction{"tankwright::plumbing::friction_velocity_that_moves", kind::identity,
                        "Shields parameter worked by hand"};
const evidence stream{"tankwright::plumbing::speed_that_moves", kind::identity, "law of the wall worked by hand"};

/// 1 m/s out of 20 mm.
twp::submerged_jet jet() {
  return {.bore = twp::pipe_bore{millimetres(20.0)},
          .flow = flow_rate::from_value(0.25 * std::numbers::pi * 0.02 * 0.02)};
}

}  // namespace

TEST_CASE("submerged jet: the speed falls with the distance, and the reach is its inverse") {
  const auto at = twp::jet_speed_at(jet(), metres(1.24));
  TW_CHECK(speed, at.central, metres_per_second(0.10), relative(1e-12));
  TW_CHECK(speed, at.low, metres_per_second(5.8 * 0.02 / 1.24), relative(1e-12));
  TW_CHECK(speed, at.high, metres_per_second(6.5 * 0.02 / 1.24), relative(1e-12));
  TW_CHECK(speed, twp::jet_speed_at(jet(), millimetres(50.0)).central, metres_per_second(1.0), relative(1e-12));
  TW_CHECK(reach, twp::jet_reaches(jet(), metres_per_second(0.10)).central, metres(1.24), relative(1e-12));
  TW_CHECK(reach, twp::jet_reaches(jet(), metres_per_second(2.0)).high, metres(0.0), within(metres(0.0)));
}

TEST_CASE("submerged jet: sand of 0.2 mm in the sea at 10 degrees, as in Soulsby's handbook") {
  // Soulsby 1997, ex. 6.2 (recalled): D* 4.06, threshold stress 0.176 N/m2; sea at 10 degC, 35, quartz.
  const water::liquid sea{.density = kilograms_per_cubic_metre(1027.0), .viscosity = pascal_seconds(1027.0 * 1.36e-6)};
  const twp::loose_grains sand{.size = millimetres(0.2), .density = kilograms_per_cubic_metre(2650.0)};
  const double u = twp::friction_velocity_that_moves(sand, sea).value();
  const evidence handbook{"tankwright::plumbing::friction_velocity_that_moves", kind::from_memory,
                          "Soulsby 1997, threshold stress of 0.2 mm sand"};
  TW_CHECK(handbook, 1027.0 * u * u, 0.176, within(0.0005));
  const double s = 2650.0 / 1027.0, g = 9.80665;
  const double d_star = 0.0002 * std::cbrt(g * (s - 1.0) / (1.36e-6 * 1.36e-6));
  const double theta = 0.30 / (1.0 + 1.2 * d_star) + 0.055 * (1.0 - std::exp(-0.020 * d_star));
  TW_CHECK(friction, u, std::sqrt(theta * g * (s - 1.0) * 0.0002), relative(1e-12));
  TW_CHECK(stream, twp::speed_that_moves(sand, sea).central.value(), u / 0.4 * std::log(0.05 * 12.0 / 0.0002),
           relative(1e-12));
}

TEST_CASE("submerged jet: order and edges") {
  const auto sea = water::seawater(practical_salinity{35.0}, celsius(25.0));
  double before = 0.0;
  for (const double d : {0.1, 0.3, 1.0, 3.0, 10.0}) {  // coarser sand needs a faster stream
    const auto moves = twp::speed_that_moves({.size = millimetres(d)}, sea);
    TW_HOLDS(stream, moves.central.value() > before);
    TW_HOLDS(stream, (moves.low <= moves.central && moves.central <= moves.high));
    before = moves.central.value();
  }
  // The kernel in long double.
  for (const double d_star : {0.5, 4.06, 60.0}) {
    TW_CHECK(friction, twp::kernel::threshold_of_motion(d_star),
             static_cast<double>(twp::kernel::threshold_of_motion<long double>(d_star)), relative(1e-14));
  }
  check_edges(twp::jet_bore_limits, [](double d, range_policy) {
    return twp::jet_reaches({.bore = twp::pipe_bore{metres(d)}, .flow = litres_per_hour(100.0)},
                            metres_per_second(0.1));
  });
  check_edges(twp::jet_flow_limits, [](double q, range_policy) {
    return twp::jet_speed_at({.bore = twp::pipe_bore{metres(0.02)}, .flow = flow_rate::from_value(q)}, metres(1.0));
  });
  check_edges(twp::jet_distance_limits, [](double x, range_policy) { return twp::jet_speed_at(jet(), metres(x)); });
  check_edges(twp::jet_speed_limits,
              [](double u, range_policy) { return twp::jet_reaches(jet(), metres_per_second(u)); });
  check_edges(twp::grain_size_limits,
              [&](double d, range_policy) { return twp::speed_that_moves({.size = metres(d)}, sea); });
  CHECK_THROWS_AS(
      (void)twp::speed_that_moves({.size = metres(0.001), .density = kilograms_per_cubic_metre(1000.0)}, sea),
      invalid_input);
}

TEST_CASE("submerged jet: as fast as at its opening it is up to the end of its core") {
  // 2 m/s out of 30 mm, asked for 2 m/s and half of it: 6.2 bores and 12.4 bores.
  const flow_rate q = flow_rate::from_value(2.0 * (0.25 * std::numbers::pi * 0.03 * 0.03));
  const twp::submerged_jet fast{.bore = twp::pipe_bore{metres(0.03)}, .flow = q};
  const double u0 = q.value() / (0.25 * std::numbers::pi * 0.03 * 0.03);
  TW_CHECK(reach, twp::jet_reaches(fast, metres_per_second(u0)).central, metres(6.2 * 0.03), relative(1e-12));
  TW_CHECK(reach, twp::jet_reaches(fast, metres_per_second(std::nextafter(u0, 9.0))).central, metres(0.0), tolerance{});
  TW_CHECK(reach, twp::jet_reaches(fast, metres_per_second(0.5 * u0)).central, metres(12.4 * 0.03), relative(1e-12));
}

TEST_CASE("submerged jet: grains are aragonite unless said otherwise, and no grain is denser than osmium") {
  const auto sea = water::seawater(practical_salinity{35.0}, celsius(25.0));
  const auto moves = [&](twp::loose_grains grains) { return twp::friction_velocity_that_moves(grains, sea); };
  TW_CHECK(friction, moves({.size = millimetres(1.0)}),
           moves({.size = millimetres(1.0), .density = kilograms_per_cubic_metre(2800.0)}), tolerance{});
  CHECK_NOTHROW((void)moves({.size = millimetres(1.0), .density = kilograms_per_cubic_metre(22999.0)}));
  CHECK_THROWS_AS((void)moves({.size = millimetres(1.0), .density = kilograms_per_cubic_metre(23001.0)}),
                  invalid_input);
}
