// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/surface_tension.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence two_scales{"tankwright::water::surface_tension_of", kind::identity, "S_A = u_PS S_P"};
const evidence ordered{"tankwright::water::surface_tension_of", kind::property, "grows with salt, falls with warmth"};

absolute_salinity grams_per_kilogram(double s) { return absolute_salinity::from_grams_per_kilogram(s); }

double tension(const reference_row& row) {
  const auto s = grams_per_kilogram(row.has("S_A") ? row["S_A"] : row["S"] * (row.has("T") ? 1e3 : 1.0));
  const auto t = row.has("T") ? kelvins(row["T"]) : celsius(row["t90"]);
  return in_millinewtons_per_metre(tww::surface_tension_of(s, t));
}
}  // namespace

TEST_CASE("surface tension: reference table and random states against IAPWS") {
  check_rows(reference_rows("water/surface_tension.csv"), {{"tankwright::water::surface_tension_of", tension}});
  check_rows(live_rows("water_surface_tension.csv"), {{"tankwright::water::surface_tension_of", tension}});
}

TEST_CASE("surface tension: the two salinity scales and order") {
  for (double s = 0.0; s <= 41.0; s += 2.0) {
    for (double t = 1.0; t <= 91.0; t += 5.0) {
      const practical_salinity sp{s};
      const auto sigma = tww::surface_tension_of(sp, celsius(t));
      TW_CHECK(two_scales, sigma, tww::surface_tension_of(tww::absolute_from_practical(sp), celsius(t)),
               relative(1e-15));
      TW_HOLDS(ordered, tww::surface_tension_of(practical_salinity{s + 0.5}, celsius(t)) > sigma);
      TW_HOLDS(ordered, tww::surface_tension_of(sp, celsius(t + 0.5)) < sigma);
    }
  }
}

TEST_CASE("surface tension: edges of the ranges") {
  check_edges(tww::surface_tension_salinity_limits, [](double s, range_policy policy) {
    return tww::surface_tension_of(grams_per_kilogram(s), celsius(25.0), policy);
  });
  check_edges(tww::practical_salinity_limits, [](double s, range_policy policy) {
    return tww::surface_tension_of(practical_salinity{s}, celsius(25.0), policy);
  });
  check_edges(tww::surface_tension_temperature_limits, [](double t, range_policy policy) {
    return tww::surface_tension_of(practical_salinity{35.0}, celsius(t), policy);
  });
}
