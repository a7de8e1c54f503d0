// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/jet.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twp = tankwright::plumbing;

TEST_CASE("jet: reference table") {
  const auto coefficient = [](const reference_row& row) {
    return twp::velocity_coefficient({.drive = metres(row["H"]), .fall = metres(row["y"]), .reach = metres(row["x"])});
  };
  const auto height = [](const reference_row& row) {
    const water::liquid water{.density = kilograms_per_cubic_metre(row["rho"]), .viscosity = millipascal_seconds(1.0)};
    return in_metres(twp::jet_height(gauge_pressure{kilopascals(row["p"])}, water));
  };
  check_rows(reference_rows("plumbing/jet.csv"), {{"tankwright::plumbing::velocity_coefficient", coefficient},
                                                  {"tankwright::plumbing::jet_height", height}});
}

TEST_CASE("jet: the reach is the ballistics of Torricelli's jet, and the coefficient comes back") {
  const evidence ballistics{"tankwright::plumbing::jet_reach", kind::identity,
                            "V t with V = Cv sqrt(2 g h), y = g t^2/2"};
  const evidence back{"tankwright::plumbing::velocity_coefficient", kind::identity, "inverse of jet_reach"};
  for (const double h : {0.05, 0.6}) {
    for (const double y : {0.1, 1.2}) {
      const twp::free_jet jet{.drive = metres(h), .fall = metres(y), .velocity_coefficient = 0.97};
      const double v = 0.97 * std::sqrt(2 * 9.80665 * h);
      TW_CHECK(ballistics, twp::jet_reach(jet), metres(v * std::sqrt(2 * y / 9.80665)), relative(1e-14));
      TW_CHECK(back, twp::velocity_coefficient({.drive = metres(h), .fall = metres(y), .reach = twp::jet_reach(jet)}),
               0.97, relative(1e-14));
    }
  }
}

TEST_CASE("jet: edges of the ranges") {
  check_edges(twp::jet_drive_limits,
              [](double h, range_policy) { return twp::jet_reach({.drive = metres(h), .fall = metres(1.0)}); });
  check_edges(twp::velocity_coefficient_limits, [](double c, range_policy) {
    return twp::jet_reach({.drive = metres(1.0), .fall = metres(1.0), .velocity_coefficient = c});
  });
}
