// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/hydrostatic.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {
const mass_density sea = kilograms_per_cubic_metre(1025.0);
}

TEST_CASE("hydrostatic: reference table") {
  check_rows(reference_rows("vessel/hydrostatic.csv"),
             {{"tankwright::vessel::hydrostatic_pressure",
               [](const reference_row& row) {
                 if (row.unit == "psi") {
                   return in_psi(vs::hydrostatic_pressure(feet(row["h"]), pounds_per_cubic_foot(row["rho"])));
                 }
                 return in_pascals(vs::hydrostatic_pressure(metres(row["h"]), kilograms_per_cubic_metre(row["rho"])));
               }},
              {"tankwright::vessel::push_on", [](const reference_row& row) {
                 return in_newtons(vs::push_on({.width = metres(row["W"]),
                                                .height = metres(row["H"]),
                                                .level = metres(row["level"]),
                                                .water_density = kilograms_per_cubic_metre(row["rho"])})
                                       .force);
               }}});
}

TEST_CASE("hydrostatic: force, centre and moment are integrals of the pressure") {
  const evidence integral{"tankwright::vessel::push_on", kind::identity, "the pressure summed over 20 000 strips"};
  for (const double level : {0.0, 0.3, 1.2, 1.5, 10.0}) {
    const auto push =
        vs::push_on({.width = metres(2), .height = metres(1.2), .level = metres(level), .water_density = sea});
    double force = 0, turning = 0;
    constexpr int n = 20'000;
    for (int i = 0; i < n; ++i) {
      const double y = 1.2 * (i + 0.5) / n;
      const double part = 1025.0 * 9.80665 * std::fmax(level - y, 0.0) * 2.0 * 1.2 / n;
      force += part;
      turning += part * y;
    }
    TW_CHECK(integral, push.force, newtons(force), relative(1e-8));
    TW_CHECK(integral, push.about_lower_edge.value(), turning, relative(1e-7));
    if (level > 0) TW_CHECK(integral, push.centre, metres(turning / force), relative(1e-7));
    CHECK(push.caution.text.find("licensed engineer") != std::string_view::npos);
  }
  CHECK(vs::push_on({.width = metres(2), .height = metres(1), .level = metres(0), .water_density = sea}).centre ==
        metres(0));
  // A film of a tenth of a millimetre pushes with less than a newton: its centre is a third of its height all the same.
  TW_CHECK(integral,
           vs::push_on({.width = metres(2), .height = metres(1), .level = metres(1e-4), .water_density = sea}).centre,
           metres(1e-4 / 3.0), relative(1e-12));
}

TEST_CASE("hydrostatic: impossible walls") {
  check_edges(vs::detail::length_from_zero("depth"),
              [](double x, range_policy) { return vs::hydrostatic_pressure(metres(x), sea); });
  check_edges(vs::detail::water_density_limits,
              [](double x, range_policy) { return vs::hydrostatic_pressure(metres(1), kilograms_per_cubic_metre(x)); });
  const auto wall = [](double w, double h, double level, double rho) {
    return vs::push_on({.width = metres(w),
                        .height = metres(h),
                        .level = metres(level),
                        .water_density = kilograms_per_cubic_metre(rho),
                        .label = "left"});
  };
  check_edges(vs::detail::positive_length("left: width"), [&](double x, range_policy) { return wall(x, 1, 1, 1000); });
  check_edges(vs::detail::positive_length("left: height"), [&](double x, range_policy) { return wall(1, x, 1, 1000); });
  check_edges(vs::detail::length_from_zero("left: level"), [&](double x, range_policy) { return wall(1, 1, x, 1000); });
  check_edges({"left: water density", "kg/m3", vs::detail::possible_density},
              [&](double x, range_policy) { return wall(1, 1, 1, x); });
}
