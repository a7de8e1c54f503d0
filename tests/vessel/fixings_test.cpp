// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/fixings.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

TEST_CASE("fixings: reference table") {
  check_rows(reference_rows("vessel/fixings.csv"),
             {{"tankwright::vessel::blow_off",
               [](const reference_row& row) {
                 return in_newtons(vs::blow_off({.depth = metres(row["h"]),
                                                 .diameter = millimetres(row["D"]),
                                                 .water_density = kilograms_per_cubic_metre(row["rho"])})
                                       .blow_off);
               }},
              {"tankwright::vessel::gasket_force",
               [](const reference_row& row) {
                 auto material = vs::hard_elastomer;
                 material.factor = row["m"];
                 material.seating = megapascals(row["y"]);
                 const auto r = vs::gasket_force({.mean_diameter = millimetres(row["G"]),
                                                  .effective_width = millimetres(row["b"]),
                                                  .pressure = pascals(row["P"]),
                                                  .material = material});
                 return in_newtons(row.text("give") == "seat" ? r.to_seat : r.in_service);
               }},
              {"tankwright::vessel::uplift_of", [](const reference_row& row) {
                 return in_newtons(vs::uplift_of({.horizontal_area = square_metres(row["A"]),
                                                  .flood_depth = metres(row["h"]),
                                                  .mass_of_sump = kilograms(row["m"]),
                                                  .water_density = kilograms_per_cubic_metre(row["rho"])})
                                       .net_up);
               }}});
}

TEST_CASE("fixings: a gasket without a factor holds the water alone, and seats on its own area") {
  const evidence water_only{"tankwright::vessel::gasket_force", kind::identity,
                            "m = 0: pressure times the area within G"};
  const evidence ring{"tankwright::vessel::gasket_force", kind::identity, "seating stress times the area of the ring"};
  const vs::gasket_material plain{"plain", 0.0, kilopascals(100), standing::common_practice, ""};
  const auto r = vs::gasket_force({.mean_diameter = millimetres(80),
                                   .effective_width = millimetres(4),
                                   .pressure = kilopascals(18),
                                   .material = plain});
  TW_CHECK(water_only, r.in_service, newtons(18e3 * std::numbers::pi * 0.0016), relative(1e-14));
  const double outer = 0.042, inner = 0.038;  // a ring of mean diameter 80 mm, 4 mm wide
  TW_CHECK(ring, r.to_seat, newtons(1e5 * std::numbers::pi * (outer * outer - inner * inner)), relative(1e-13));
  CHECK(r.governing == r.to_seat);
  CHECK(r.caution.text.find("threefold") != std::string_view::npos);
  const auto soft = vs::gasket_force({.mean_diameter = millimetres(80),
                                      .effective_width = millimetres(4),
                                      .pressure = kilopascals(18),
                                      .material = vs::soft_elastomer});
  CHECK(soft.governing == soft.in_service);
}

TEST_CASE("fixings: impossible fittings are refused by name") {
  const auto hole = [](double h, double d, double rho) {
    return vs::blow_off(
        {.depth = metres(h), .diameter = metres(d), .water_density = kilograms_per_cubic_metre(rho), .label = "drain"});
  };
  check_edges(vs::detail::length_from_zero("drain: depth"), [&](double x, range_policy) { return hole(x, 0.1, 1000); });
  check_edges(vs::detail::positive_length("drain: diameter"), [&](double x, range_policy) { return hole(1, x, 1000); });
  check_edges({"drain: water density", "kg/m3", vs::detail::possible_density},
              [&](double x, range_policy) { return hole(1, 0.1, x); });
  const auto gasket = [](double g, double b, double p, double m, double y) {
    return vs::gasket_force({.mean_diameter = metres(g),
                             .effective_width = metres(b),
                             .pressure = pascals(p),
                             .material = vs::gasket_material{"", m, pascals(y), standing::from_memory, ""},
                             .label = "ring"});
  };
  check_edges({"ring: effective width", "m", {0.0, 0.1, edge::open, edge::open}},
              [&](double x, range_policy) { return gasket(0.1, x, 1, 1, 1); });
  check_edges({"ring: pressure", "Pa", vs::detail::possible_pressure},
              [&](double x, range_policy) { return gasket(0.1, 0.01, x, 1, 1); });
  check_edges({"ring: gasket factor", "", {0.0, 100.0}},
              [&](double x, range_policy) { return gasket(0.1, 0.01, 1, x, 1); });
  check_edges({"ring: seating stress", "Pa", vs::detail::possible_pressure},
              [&](double x, range_policy) { return gasket(0.1, 0.01, 1, 1, x); });
  CHECK_THROWS_AS((void)gasket(0, 0.01, 1, 1, 1), invalid_input);
  const auto sump = [](double a, double h, double m, double rho) {
    return vs::uplift_of({.horizontal_area = square_metres(a),
                          .flood_depth = metres(h),
                          .mass_of_sump = kilograms(m),
                          .water_density = kilograms_per_cubic_metre(rho)});
  };
  CHECK(sump(0.5, 0.01, 20, 1000).net_up < newtons(0));
  check_edges({"sump: horizontal area", "m2", vs::detail::possible_area},
              [&](double x, range_policy) { return sump(x, 1, 1, 1000); });
  check_edges(vs::detail::length_from_zero("sump: flood depth"),
              [&](double x, range_policy) { return sump(1, x, 1, 1000); });
  check_edges({"sump: mass", "kg", vs::detail::possible_mass_from_zero},
              [&](double x, range_policy) { return sump(1, 1, x, 1000); });
  check_edges({"sump: water density", "kg/m3", vs::detail::possible_density},
              [&](double x, range_policy) { return sump(1, 1, 1, x); });
}

TEST_CASE("gaskets: what a soft one bridges is a fifth of it") {
  const evidence squeeze{"tankwright::vessel::gasket_takes_up", kind::identity,
                         "from 10 to 30 % of its thickness, by hand; the two from memory of makers' handbooks"};
  TW_CHECK(squeeze, vs::gasket_takes_up(millimetres(3.0)), millimetres(0.6), relative(1e-12));
  TW_CHECK(squeeze, vs::gasket_takes_up(millimetres(1.5)), millimetres(0.3), relative(1e-12));
  CHECK_THROWS_AS((void)vs::gasket_takes_up(millimetres(0.0)), invalid_input);
  CHECK_THROWS_AS((void)vs::gasket_takes_up(millimetres(std::nan(""))), invalid_input);
}
