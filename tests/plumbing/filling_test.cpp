// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/filling.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {
constexpr double pi = 3.14159265358979323846;
}

TEST_CASE("filling: stages by hand") {
  const evidence stages{"tankwright::plumbing::fill_stages", kind::identity, "volume over flow, by hand"};
  // 2.4 m2 at 12 L/min: 0.25 m = 600 L in 50 min; a hold of 24 h; 0.60 m = 840 L more in 70 min.
  const auto fill = tp::fill_stages({.vessel = square_metres(2.4),
                                     .flow = litres_per_minute(12.0),
                                     .stops = {{"lower seam", metres(0.25), hours(24.0)}, {"window", metres(0.60)}}});
  REQUIRE(fill.size() == 2);
  CHECK(fill[0].label == "lower seam");
  TW_CHECK(stages, fill[0].added, litres(600.0), relative(1e-14));
  TW_CHECK(stages, fill[0].reached, minutes(50.0), relative(1e-14));
  TW_CHECK(stages, fill[0].resumed, minutes(50.0 + 1440.0), relative(1e-14));
  TW_CHECK(stages, fill[1].added, litres(840.0), relative(1e-14));
  TW_CHECK(stages, fill[1].in_vessel, litres(1440.0), relative(1e-14));
  TW_CHECK(stages, fill[1].reached, minutes(50.0 + 1440.0 + 70.0), relative(1e-14));
}

TEST_CASE("filling: the volume of each shape, full") {
  const evidence full{"tankwright::plumbing::fill_stages", kind::identity, "volume of a sphere, a cone, a cylinder"};
  const auto volume_of = [](const tp::any_vessel& v, length top) {
    return tp::fill_stages({.vessel = v, .flow = litres_per_minute(10.0), .stops = {{"top", top}}})[0].in_vessel;
  };
  TW_CHECK(full, volume_of(tp::bowl{metres(0.5)}, metres(1.0)), cubic_metres(pi / 6.0), relative(1e-14));
  TW_CHECK(full, volume_of(tp::bowl{metres(0.5)}, metres(0.5)), cubic_metres(pi / 12.0), relative(1e-14));
  TW_CHECK(full, volume_of(tp::cone{metres(1.5), metres(0.5)}, metres(1.5)), cubic_metres(pi / 8.0), relative(1e-14));
  TW_CHECK(full, volume_of(tp::lying_cylinder{metres(1.0), metres(2.0)}, metres(1.0)), cubic_metres(pi / 2.0),
           relative(1e-14));
  TW_CHECK(full, volume_of(tp::lying_cylinder{metres(1.0), metres(2.0)}, metres(0.5)), cubic_metres(pi / 4.0),
           relative(1e-14));
  const tp::area_profile leaning{{metres(0.0), square_metres(1.0)}, {metres(0.6), square_metres(1.6)}};
  TW_CHECK(full, volume_of(leaning, metres(0.6)), cubic_metres(0.78), relative(1e-14));
  TW_CHECK(full, volume_of(leaning, metres(0.8)), cubic_metres(1.10), relative(1e-14));
}

TEST_CASE("filling: a profile's height for a volume is the inverse of its volume below a height") {
  const evidence inverse{"tankwright::plumbing::area_profile", kind::identity, "filled_by(below(z)) = z"};
  const tp::area_profile profile{{metres(0.0), square_metres(1.0)},
                                 {metres(0.3), square_metres(1.4)},
                                 {metres(0.3), square_metres(0.9)},
                                 {metres(0.5), square_metres(0.9)},
                                 {metres(0.7), square_metres(0.4)}};
  const tolerance rounding{.absolute = 1e-15, .relative = 1e-14};
  for (double z = 0.0; z < 1.0; z += 0.013) {
    TW_CHECK(inverse, profile.filled_by(profile.below(metres(z))), metres(z), rounding);
  }
  TW_CHECK(inverse, profile.at(metres(0.15)), square_metres(1.2), relative(1e-14));
  TW_CHECK(inverse, profile.at(metres(0.3)), square_metres(0.9), relative(1e-14));
}

TEST_CASE("filling: what cannot be is refused, naming the stop") {
  const auto fill = [](std::vector<tp::fill_stop> stops, flow_rate flow = litres_per_minute(12.0)) {
    return tp::fill_stages({.vessel = tp::bowl{metres(0.5)}, .flow = flow, .stops = std::move(stops)});
  };
  CHECK_THROWS_WITH_AS((void)fill({{"first", metres(0.3)}, {"second", metres(0.2)}}),
                       "tankwright::plumbing::fill_stages: second is not above the stop before it", invalid_input);
  CHECK_THROWS_WITH_AS((void)fill({{"brim", metres(1.3)}}),
                       "tankwright::plumbing::fill_stages: brim stands above the vessel", invalid_input);
  CHECK_THROWS_WITH_AS((void)fill({{"first", metres(0.0)}}),
                       "tankwright::plumbing::fill_stages: first: level = 0 m is not possible; expected more than 0 m",
                       invalid_input);
  CHECK_THROWS_AS((void)fill({{"first", metres(0.3), seconds(-1.0)}}), invalid_input);
  CHECK_THROWS_AS((void)fill({{"first", metres(0.3)}}, litres_per_minute(0.0)), invalid_input);
  CHECK(fill({}).empty());
}

TEST_CASE("filling: the hose goes on at once unless a hold is given, and half a millimetre is a stop") {
  const evidence stages{"tankwright::plumbing::fill_stages", kind::identity, "volume over flow, by hand"};
  // A tank on its side, 0.6 m across and 2 m long, half full: pi/8 0.36 2 = 0.09 pi m3.
  const auto fill = tp::fill_stages({.vessel = tp::lying_cylinder{metres(0.6), metres(2.0)},
                                     .flow = litres_per_minute(12.0),
                                     .stops = {{"half", metres(0.3)}, {"full", metres(0.6)}}});
  TW_CHECK(stages, fill[0].in_vessel, cubic_metres(0.09 * pi), relative(1e-13));
  TW_CHECK(stages, fill[1].in_vessel, cubic_metres(0.18 * pi), relative(1e-13));
  TW_CHECK(stages, fill[1].resumed, fill[1].reached, tolerance{});
  const auto low = tp::fill_stages(
      {.vessel = square_metres(2.0), .flow = litres_per_minute(12.0), .stops = {{"wet", millimetres(0.5)}}});
  TW_CHECK(stages, low[0].added, litres(1.0), relative(1e-13));
  TW_CHECK(stages, low[0].reached, seconds(5.0), relative(1e-13));
  CHECK_THROWS_WITH_AS((void)tp::fill_stages({.vessel = square_metres(2.0),
                                              .flow = litres_per_minute(12.0),
                                              .stops = {{"first", metres(0.3)}, {"second", metres(0.3)}}}),
                       "tankwright::plumbing::fill_stages: second is not above the stop before it", invalid_input);
}
