// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/alkalinity.hpp>

#include <type_traits>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;
using tww::alkalinity;

static_assert(!std::is_convertible_v<double, alkalinity>);
static_assert(!std::is_constructible_v<alkalinity, double>);

namespace {
const evidence there_and_back{"tankwright::water::alkalinity", kind::property, "round trips of the units"};
const evidence rounded{"tankwright::water::alkalinity", kind::common_practice, "1 meq/L = 50 mg/L CaCO3 = 2.8 dKH"};
const evidence by_mass{"tankwright::water::alkalinity", kind::identity, "times density"};
const evidence reaches{"tankwright::water::alkalinity_to_add", kind::identity,
                       "84.0066 g of NaHCO3 hold one equivalent"};
}  // namespace

TEST_CASE("alkalinity: reference table") {
  check_rows(reference_rows("water/alkalinity.csv"),
             {{"tankwright::water::alkalinity",
               [](const reference_row& row) {
                 const alkalinity a = row.has("meq") ? alkalinity::from_milliequivalents_per_litre(row["meq"])
                                                     : alkalinity::from_degrees_kh(row["dKH"]);
                 if (row.unit == "dKH") return in_degrees_kh(a);
                 return row.unit == "meq/L" ? in_milliequivalents_per_litre(a) : in_milligrams_caco3_per_litre(a);
               }},
              {"tankwright::water::alkalinity_to_add", [](const reference_row& row) {
                 const auto dose = tww::alkalinity_to_add(
                     {.volume = litres(row["volume"]),
                      .from = alkalinity::from_milligrams_caco3_per_litre(100.0),
                      .target = alkalinity::from_milligrams_caco3_per_litre(100.0 + row["CaCO3"])});
                 return in_grams(row.unit == "g NaHCO3" ? dose.sodium_bicarbonate : dose.sodium_carbonate);
               }}});
}

TEST_CASE("alkalinity: units, there and back") {
  for (double x = 0.1; x < 6.0; x += 0.37) {
    const auto a = alkalinity::from_milliequivalents_per_litre(x);
    for (const auto& factors : {tww::exact_masses, tww::rounded_factors}) {
      TW_CHECK(there_and_back,
               in_milliequivalents_per_litre(alkalinity::from_degrees_kh(in_degrees_kh(a, factors), factors)), x,
               relative(1e-15));
      TW_CHECK(there_and_back,
               in_milliequivalents_per_litre(
                   alkalinity::from_milligrams_caco3_per_litre(in_milligrams_caco3_per_litre(a, factors), factors)),
               x, relative(1e-15));
    }
    TW_CHECK(rounded, in_milligrams_caco3_per_litre(a, tww::rounded_factors), in_milligrams_caco3_per_litre(a),
             relative(1.5e-3));
    TW_CHECK(rounded, in_degrees_kh(a, tww::rounded_factors), in_degrees_kh(a), relative(1.5e-3));
    const mass_density rho = kilograms_per_cubic_metre(1023.3);
    TW_CHECK(by_mass, in_milliequivalents_per_litre(alkalinity::from_milliequivalents_per_kilogram(x, rho)), x * 1.0233,
             relative(1e-15));
    TW_CHECK(by_mass, in_milliequivalents_per_kilogram(alkalinity::from_milliequivalents_per_kilogram(x, rho), rho), x,
             relative(1e-15));
  }
  // The rounded degree is 17.86 mg/L of CaCO3.
  const auto degree = alkalinity::from_degrees_kh(1.0, tww::rounded_factors);
  TW_CHECK(rounded, in_milligrams_caco3_per_litre(degree, tww::rounded_factors), 17.86, tolerance{.absolute = 0.005});
}

TEST_CASE("alkalinity: what to add") {
  const auto meq = alkalinity::from_milliequivalents_per_litre;
  const auto dose = tww::alkalinity_to_add({.volume = litres(1000.0), .from = meq(2.0), .target = meq(3.0)});
  TW_CHECK(reaches, dose.sodium_bicarbonate, grams(84.0066), relative(1e-14));
  TW_CHECK(reaches, dose.sodium_carbonate, grams(52.9942), relative(1e-14));
  CHECK_FALSE(dose.caution.text.empty());
  CHECK(in_grams(
            tww::alkalinity_to_add({.volume = litres(9.0), .from = meq(2.0), .target = meq(2.0)}).sodium_bicarbonate) ==
        0.0);
  CHECK_THROWS_WITH_AS(
      (void)tww::alkalinity_to_add({.volume = litres(9.0), .from = meq(3.0), .target = meq(2.0)}),
      "tankwright::water::alkalinity_to_add: target = 2 meq/L is below what the water has, 3 meq/L; alkalinity is "
      "lowered by changing water, not by adding something",
      invalid_input);
}

TEST_CASE("alkalinity: edges of the ranges") {
  const auto meq = alkalinity::from_milliequivalents_per_litre;
  check_edges(tww::water_volume_limits, [&](double x, range_policy) {
    return tww::alkalinity_to_add({.volume = litres(x), .from = meq(2.0), .target = meq(3.0)});
  });
  check_edges(tww::alkalinity_limits, [&](double x, range_policy) {
    return tww::alkalinity_to_add({.volume = litres(1.0), .from = meq(x), .target = meq(x)});
  });
}

TEST_CASE("alkalinity: read in each of its units") {
  // 1 meq/L is 50.04 mg/L of calcium carbonate, and 2.8 degrees of carbonate hardness (17.86 mg/L each).
  const auto by = [](const char* reader, const char* source) {
    return evidence{std::string{"tankwright::water::"} + reader, kind::published, source};
  };
  const auto level = alkalinity::from_milliequivalents_per_litre(2.5);
  TW_CHECK(by("in_milliequivalents_per_litre", "the number that it is made of"), in_milliequivalents_per_litre(level),
           2.5, relative(1e-15));
  TW_CHECK(by("in_degrees_kh", "1 meq/L is 2.80 dKH, as kits print it"), in_degrees_kh(level), 7.0, within(0.0125));
  TW_CHECK(by("in_milligrams_caco3_per_litre", "1 meq/L is 50.0 mg/L of CaCO3, as kits print it"),
           in_milligrams_caco3_per_litre(level), 125.0, within(0.125));
  const evidence mass{"tankwright::water::in_milliequivalents_per_kilogram", kind::identity, "by the density, by hand"};
  TW_CHECK(mass, in_milliequivalents_per_kilogram(level, kilograms_per_cubic_metre(1250.0)), 2.0, relative(1e-15));
}
