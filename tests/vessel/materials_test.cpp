// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/materials.hpp>

#include <vector>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

TEST_CASE("materials: reference table") {
  check_rows(reference_rows("vessel/materials.csv"),
             {{"tankwright::vessel::glass_load_duration_factor",
               [](const reference_row& row) { return vs::glass_load_duration_factor(seconds(row["d"])); }},
              {"tankwright::vessel::glass_permanent_load_factor",
               [](const reference_row&) { return vs::glass_permanent_load_factor; }},
              {"tankwright::vessel::glass_stress_for_breakage",
               [](const reference_row& row) {
                 return in_megapascals(vs::glass_stress_for_breakage({.breakage_probability = fraction(row["P"]),
                                                                      .stressed_area = square_metres(row["A"]),
                                                                      .lasting = seconds(row["d"])}));
               }},
              {"tankwright::vessel::annealed_glass_allowables",
               [](const reference_row& row) {
                 return in_megapascals(vs::annealed_glass_allowables[static_cast<std::size_t>(row["which"])].value);
               }},
              {"tankwright::vessel::cast_acrylic_long_term_stress",
               [](const reference_row&) { return in_megapascals(vs::cast_acrylic_long_term_stress.central); }},
              {"tankwright::vessel::cast_acrylic",
               [](const reference_row&) { return in_gigapascals(vs::cast_acrylic.long_term_modulus.central); }}});
}

TEST_CASE("materials: loads one after another") {
  const evidence one{"tankwright::vessel::glass_equivalent_load", kind::identity, "one load: over its duration factor"};
  const evidence printed{"tankwright::vessel::glass_equivalent_load", kind::published,
                         "ASTM E1300-12a Table X4.1: 1 kPa for a year does as much as 1/0.36 kPa for 3 s"};
  const evidence sum{"tankwright::vessel::glass_equivalent_load", kind::identity, "the sum of the spells"};
  const vs::load_spell year{.load = kilopascals(1), .lasting = days(365)},
      gust{.load = kilopascals(2), .lasting = seconds(3)};
  const auto alone = vs::glass_equivalent_load(std::vector{year});
  TW_CHECK(one, alone, kilopascals(1.0 / vs::glass_load_duration_factor(days(365))), relative(1e-14));
  TW_CHECK(printed, kilopascals(1) / alone, 0.36, tolerance{.absolute = 0.005});
  TW_CHECK(sum, vs::glass_equivalent_load(std::vector{year, gust}), alone + kilopascals(2), relative(1e-14));
  CHECK(vs::glass_equivalent_load({}) == pascals(0));
  CHECK_THROWS_AS((void)vs::glass_equivalent_load(std::vector{vs::load_spell{.load = pascals(-1), .lasting = days(1)}}),
                  invalid_input);
  CHECK_THROWS_AS((void)vs::glass_equivalent_load(std::vector{vs::load_spell{.load = pascals(1), .lasting = days(0)}}),
                  invalid_input);
}

TEST_CASE("materials: breakage stress keeps the table's durations and falls with the area") {
  const evidence by_time{"tankwright::vessel::glass_stress_for_breakage", kind::published,
                         "ASTM E1300-12a Table X4.1: the ratio of two durations"};
  const evidence by_area{"tankwright::vessel::glass_stress_for_breakage", kind::identity, "area to the power -1/7"};
  const auto stress = [](double p, double a, double d) {
    return vs::glass_stress_for_breakage(
        {.breakage_probability = fraction(p), .stressed_area = square_metres(a), .lasting = seconds(d)});
  };
  TW_CHECK(by_time, stress(0.008, 1, 31536000) / stress(0.008, 1, 3), 0.36, tolerance{.absolute = 0.005});
  TW_CHECK(by_time, stress(0.008, 1, 86400) / stress(0.008, 1, 3), 0.53, tolerance{.absolute = 0.005});
  TW_CHECK(by_area, stress(0.008, 128, 3) * 2.0, stress(0.008, 1, 3), relative(1e-13));
  TW_CHECK(by_area, stress(0.128, 16, 3), stress(0.008, 1, 3), relative(1e-13));
  check_edges(vs::detail::breakage_limits, [&](double x, range_policy) { return stress(x, 1, 3); });
  check_edges(vs::detail::stressed_area_limits, [&](double x, range_policy) { return stress(0.1, x, 3); });
  check_edges(vs::detail::spell_limits, [&](double x, range_policy) { return stress(0.1, 1, x); });
}

TEST_CASE("materials: the factor for duration is applied once") {
  const evidence once{"tankwright::vessel::for_permanent_load", kind::published,
                      "ASTM E1300-12a Table X4.1, beyond 1 year: 0.31"};
  const auto polished = vs::for_permanent_load(vs::annealed_glass_edges[2]);
  TW_CHECK(once, polished.value, megapascals(6.2), relative(1e-14));
  CHECK(polished.basis == vs::load_basis::permanent);
  CHECK_THROWS_WITH_AS(
      (void)vs::for_permanent_load(polished),
      "tankwright::vessel::for_permanent_load: polished edge: allowable stress = 6200000 Pa is for a permanent load "
      "already; the factor for duration is applied once",
      invalid_input);
  auto nothing = vs::annealed_glass_edges[0];
  nothing.value = pascals(0);
  CHECK_THROWS_AS((void)vs::for_permanent_load(nothing), invalid_input);
}

TEST_CASE("materials: edges of the durations") {
  check_edges(vs::detail::load_duration_limits,
              [](double d, range_policy policy) { return vs::glass_load_duration_factor(seconds(d), policy); });
}

TEST_CASE("materials: breakage stress by the flaw parameter") {
  const evidence flaw{"tankwright::vessel::glass_stress_for_breakage", kind::from_memory,
                      "ASTM E1300-12a Eq X6.1 by hand, k = 2.86e-53 m^12/N^7 from memory"};
  TW_CHECK(flaw,
           vs::glass_stress_for_breakage(
               {.breakage_probability = fraction(0.008), .stressed_area = square_metres(1), .lasting = seconds(3)}),
           pascals(std::pow(0.008 / 2.86e-53, 1.0 / 7.0)), relative(1e-12));
}
