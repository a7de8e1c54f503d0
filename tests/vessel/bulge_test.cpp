// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/bulge.hpp>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

TEST_CASE("bulge: what a straight edge cannot show is left out") {
  // Issue 12, item 29: "go on only when it bulges no more than" 8.5e-5 mm.
  CHECK_FALSE(vs::bulge_to_see({.expected = millimetres(8.5e-5)}).expected);
  const evidence shown{"tankwright::vessel::bulge_to_see", kind::identity, "the definition: from the resolution up"};
  const auto half = vs::bulge_to_see({.expected = millimetres(0.5)});
  REQUIRE(half.expected);
  TW_CHECK(shown, *half.expected, millimetres(0.5), relative(1e-15));
  TW_CHECK(shown, half.stop_at, millimetres(1.0), relative(1e-15));
  TW_CHECK(shown, vs::bulge_to_see({.expected = metres(0)}).stop_at, millimetres(0.1), relative(1e-15));
  CHECK_FALSE(half.caution.text.empty());
  // At the resolution itself, a step to either side, and with a coarser gauge.
  CHECK(vs::bulge_to_see({.expected = millimetres(0.1)}).expected);
  CHECK(vs::bulge_to_see({.expected = millimetres(0.100001)}).expected);
  CHECK_FALSE(vs::bulge_to_see({.expected = millimetres(0.099999)}).expected);
  CHECK_FALSE(vs::bulge_to_see({.expected = millimetres(0.4), .gauge = vs::straight_edge_by_eye}).expected);
  // Where to stop does not jump there.
  TW_CHECK((evidence{"tankwright::vessel::bulge_to_see", kind::property, "continuous"}),
           vs::bulge_to_see({.expected = millimetres(0.099999)}).stop_at,
           vs::bulge_to_see({.expected = millimetres(0.100001)}).stop_at, relative(1e-4));
}

TEST_CASE("bulge: the gauges") {
  const auto practice = [](const vs::bulge_gauge& gauge, double mm) {
    TW_CHECK((evidence{"tankwright::vessel::bulge_to_see", kind::common_practice, std::string{gauge.source}}),
             gauge.resolution, millimetres(mm), relative(1e-15));
    CHECK(gauge.read_as == standing::common_practice);
  };
  practice(vs::straight_edge_with_feelers, 0.1);
  practice(vs::straight_edge_by_eye, 0.5);
  practice(vs::dial_indicator, 0.02);
}

TEST_CASE("bulge: impossible input") {
  check_edges(vs::detail::length_from_zero("expected bulge"),
              [](double x, range_policy) { return vs::bulge_to_see({.expected = metres(x)}); });
  check_edges({"resolution of the gauge", "m", {1e-7, 1.0}}, [](double x, range_policy) {
    vs::bulge_gauge gauge = vs::dial_indicator;
    gauge.resolution = metres(x);
    return vs::bulge_to_see({.expected = millimetres(1), .gauge = gauge});
  });
}
