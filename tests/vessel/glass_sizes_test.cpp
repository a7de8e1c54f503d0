// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/glass_sizes.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

TEST_CASE("glass sizes: reference table") {
  const auto size = [](double nominal) -> const vs::float_glass_size& {
    for (const auto& s : vs::float_glass_sizes) {
      if (in_millimetres(s.nominal) == nominal) return s;
    }
    throw std::runtime_error{"no such size"};
  };
  check_rows(reference_rows("vessel/glass_sizes.csv"),
             {{"tankwright::vessel::float_glass_sizes",
               [&](const reference_row& row) {
                 const auto& s = size(row["nominal"]);
                 return in_millimetres(row.text("standard") == "EN" ? s.least_en : s.least_astm);
               }},
              {"tankwright::vessel::least_thickness", [](const reference_row& row) {
                 return in_millimetres(*vs::least_thickness(millimetres(row["nominal"])));
               }}});
}

TEST_CASE("glass sizes: thinnest first, and never thicker than their name") {
  const evidence order{"tankwright::vessel::least_thickness", kind::property,
                       "sizes rise and are not above their names"};
  length before{};
  for (const auto& s : vs::float_glass_sizes) {
    TW_HOLDS(order, s.nominal > before);
    TW_HOLDS(order, *vs::least_thickness(s.nominal) < s.nominal);
    TW_HOLDS(order, *vs::least_thickness(s.nominal) > before * 0.9);
    before = s.nominal;
  }
}

TEST_CASE("glass sizes: what is not a size has no least thickness") {
  CHECK_FALSE(vs::least_thickness(millimetres(18.2)));
  CHECK_FALSE(vs::least_thickness(millimetres(30)));
  CHECK_FALSE(vs::least_thickness(millimetres(18.96) - millimetres(0.02)));
  CHECK(vs::least_thickness(millimetres(19.04)));
  CHECK(vs::least_thickness(millimetres(10.0499)));
  CHECK_FALSE(vs::least_thickness(millimetres(10.05002)));  // a name holds to within 0.05 mm
  // Half an inch is the 12 mm sheet, not 12.7 mm.
  CHECK(vs::least_thickness(inches(0.5)) == vs::least_thickness(millimetres(12)));
  CHECK(vs::least_thickness(inches(0.375)) == millimetres(9.02));
  check_edges(vs::detail::positive_length("nominal thickness"),
              [](double t, range_policy) { return vs::least_thickness(metres(t)); });
}
