// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/dimensions.hpp>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {
const evidence two_panels{"tankwright::vessel::inside_of", kind::identity, "outside less two panels"};
}  // namespace

TEST_CASE("dimensions: the panels lie between outside and inside") {
  const auto inner =
      vs::inside_of({.measured = vs::outside{inches(96)}, .near_panel = inches(0.75), .far_panel = inches(0.75)});
  TW_CHECK(two_panels, inner.value(), inches(94.5), relative(1e-15));
  const auto open_top = vs::inside_of(
      {.measured = vs::outside{millimetres(750)}, .near_panel = millimetres(25), .far_panel = millimetres(0)});
  TW_CHECK(two_panels, open_top.value(), millimetres(725), relative(1e-15));
  CHECK(inner > open_top);
  CHECK(open_top == vs::inside{millimetres(725)});
  CHECK_FALSE(inner == open_top);
}

TEST_CASE("dimensions: impossible measures") {
  check_edges(vs::detail::positive_length("outside dimension"), [](double x, range_policy) {
    return vs::inside_of({.measured = vs::outside{metres(x)}, .near_panel = metres(0.0), .far_panel = metres(0.0)});
  });
  for (const double bad : {-0.01, std::nan(""), HUGE_VAL}) {
    CHECK_THROWS_AS(
        (void)vs::inside_of({.measured = vs::outside{metres(1)}, .near_panel = metres(bad), .far_panel = metres(0)}),
        invalid_input);
    CHECK_THROWS_AS(
        (void)vs::inside_of({.measured = vs::outside{metres(1)}, .near_panel = metres(0), .far_panel = metres(bad)}),
        invalid_input);
  }
  CHECK_THROWS_WITH_AS(
      (void)vs::inside_of(
          {.measured = vs::outside{millimetres(20)}, .near_panel = millimetres(10), .far_panel = millimetres(10)}),
      "tankwright::vessel::inside_of: outside dimension = 0.02 m leaves nothing between panels of "
      "0.01 m and 0.01 m",
      invalid_input);
}
