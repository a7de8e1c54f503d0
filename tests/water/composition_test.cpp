// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/composition.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence sums_to_one{"tankwright::water::concentration_of", kind::identity, "the mass fractions sum to one"};
const evidence as_reference{"tankwright::water::weigh_recipe", kind::property,
                            "the recipe holds the salt of reference seawater within 0.01 %"};
const evidence balance{"tankwright::water::weigh_recipe", kind::identity, "salts and water make the seawater"};

// A cubic metre over its density is a kilogram: the recipe's own unit.
tww::recipe_amounts for_a_kilogram() {
  const auto rho = tww::density(practical_salinity{35.0}, celsius(25.0));
  return tww::weigh_recipe(
      {.volume = kilograms(1.0) / rho, .target = practical_salinity{35.0}, .temperature = celsius(25.0)});
}
}  // namespace

TEST_CASE("composition: reference table") {
  check_rows(reference_rows("water/composition.csv"),
             {{"tankwright::water::weigh_recipe",
               [](const reference_row& row) {
                 const auto amounts = for_a_kilogram();
                 if (row.text("what") == "anhydrous") return in_grams(amounts.anhydrous);
                 if (row.text("what") == "weighed") return in_grams(amounts.weighed);
                 if (row.text("what") == "yield") return in_grams(amounts.anhydrous) / in_grams(amounts.weighed);
                 return in_grams(amounts.salts[static_cast<std::size_t>(row["what"])]);
               }},
              {"tankwright::water::concentration_of", [](const reference_row& row) {
                 const practical_salinity s{row["S_P"]};
                 const auto what = static_cast<tww::constituent>(static_cast<int>(row["constituent"]));
                 return 1e3 * (tww::concentration_of(what, s, celsius(25.0)) / tww::density(s, celsius(25.0))).value();
               }}});
}

TEST_CASE("composition: sums") {
  double sum = 0.0;
  for (std::size_t i = 0; i < tww::reference_composition.size(); ++i) {
    CHECK(static_cast<std::size_t>(tww::reference_composition[i].what) == i);
    sum += tww::reference_composition[i].mass_fraction;
  }
  TW_CHECK(sums_to_one, sum, 1.0, tolerance{.absolute = 5e-8});
  const auto amounts = for_a_kilogram();
  TW_CHECK(as_reference, amounts.anhydrous, grams(35.16504), relative(1e-4));
  TW_CHECK(balance, amounts.weighed + amounts.water, kilograms(1.0), relative(1e-15));
  CHECK_FALSE(amounts.caution.text.empty());
  const auto half =
      tww::weigh_recipe({.volume = litres(40.0), .target = practical_salinity{17.5}, .temperature = celsius(25.0)});
  TW_CHECK(balance, half.weighed + half.water, tww::density(practical_salinity{17.5}, celsius(25.0)) * litres(40.0),
           relative(1e-15));
}

TEST_CASE("composition: edges of the ranges") {
  check_edges(tww::practical_salinity_limits, [](double s, range_policy policy) {
    return tww::concentration_of(tww::constituent::calcium, practical_salinity{s}, celsius(25.0), policy);
  });
  check_edges(tww::water_volume_limits, [](double x, range_policy policy) {
    return tww::weigh_recipe({.volume = litres(x), .target = practical_salinity{35.0}, .temperature = celsius(25.0)},
                             policy);
  });
  check_edges(tww::practical_salinity_limits, [](double s, range_policy policy) {
    return tww::weigh_recipe({.volume = litres(1.0), .target = practical_salinity{s}, .temperature = celsius(25.0)},
                             policy);
  });
}
