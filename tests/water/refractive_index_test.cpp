// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/refractive_index.hpp>

#include <string>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence agree{"tankwright::water::refractive_index_quan_fry", kind::property,
                     "within 2.5e-5 of Millard and Seaver in sodium light"};
const evidence rounding{"tankwright::water::refractive_index_millard_seaver", kind::identity,
                        "the same formula in long double"};
const evidence there_and_back{"tankwright::water::salinity_from_refractive_index", kind::property, "there and back"};
const evidence solves{"tankwright::water::salinity_from_refractive_index", kind::identity,
                      "the index is linear in salinity: halfway between two waters lies half their salinity"};

tww::lit_seawater sample(double s, double t, double nm = 589.26) {
  return {.salinity = practical_salinity{s}, .temperature = celsius(t), .wavelength = nanometres(nm)};
}

// Some rows go past salinity 35, where Quan and Fry end.
const std::map<std::string, row_handler> handlers{
    {"tankwright::water::refractive_index_millard_seaver",
     [](const reference_row& row) {
       return tww::refractive_index_millard_seaver(sample(row["S"], row["t"], row["nm"])).value();
     }},
    {"tankwright::water::refractive_index_quan_fry", [](const reference_row& row) {
       return tww::refractive_index_quan_fry(sample(row["S"], row["t"], row["nm"]), extrapolate).value();
     }}};
}  // namespace

TEST_CASE("refractive_index: reference table") { check_rows(reference_rows("water/refractive_index.csv"), handlers); }

TEST_CASE("refractive_index: pure water against IAPWS") {
  check_rows(live_rows("water_refractive_index.csv"), handlers);
}

TEST_CASE("refractive_index: two formulas, rounding, and the way back") {
  for (double s = 0.0; s <= 35.0; s += 2.5) {
    for (double t = 0.0; t <= 30.0; t += 2.5) {
      const auto n = tww::refractive_index_millard_seaver(sample(s, t));
      TW_CHECK(agree, tww::refractive_index_quan_fry(sample(s, t)), n, tolerance{.absolute = 2.5e-5});
      const long double t_long = static_cast<long double>(in_celsius(celsius(t)));
      const long double l = static_cast<long double>(in_nanometres(nanometres(589.26))) * 1e-3L;
      const long double oracle = tww::detail::millard_seaver_water(t_long, l) +
                                 static_cast<long double>(s) * tww::detail::millard_seaver_per_salinity(t_long, l);
      TW_CHECK(rounding, n.value(), static_cast<double>(oracle), relative(1e-15));
      TW_CHECK(there_and_back, tww::salinity_from_refractive_index({.index = n, .temperature = celsius(t)}),
               practical_salinity{s}, tolerance{.absolute = 1e-11});
    }
  }
  const double low = tww::refractive_index_millard_seaver(sample(30.0, 20.0)).value();
  const double high = tww::refractive_index_millard_seaver(sample(40.0, 20.0)).value();
  const tww::refractive_index middle{0.5 * (low + high)};
  TW_CHECK(solves, tww::salinity_from_refractive_index({.index = middle, .temperature = celsius(20.0)}),
           practical_salinity{35.0}, tolerance{.absolute = 1e-11});
}

TEST_CASE("refractive_index: edges of the ranges") {
  check_edges(tww::millard_seaver_salinity_limits, [](double s, range_policy policy) {
    return tww::refractive_index_millard_seaver(sample(s, 20.0), policy);
  });
  check_edges(tww::millard_seaver_temperature_limits, [](double t, range_policy policy) {
    return tww::refractive_index_millard_seaver(sample(35.0, t), policy);
  });
  check_edges(tww::millard_seaver_wavelength_limits, [](double nm, range_policy policy) {
    return tww::refractive_index_millard_seaver(sample(35.0, 20.0, nm), policy);
  });
  check_edges(tww::quan_fry_salinity_limits,
              [](double s, range_policy policy) { return tww::refractive_index_quan_fry(sample(s, 20.0), policy); });
  check_edges(tww::quan_fry_temperature_limits,
              [](double t, range_policy policy) { return tww::refractive_index_quan_fry(sample(35.0, t), policy); });
  check_edges(tww::quan_fry_wavelength_limits, [](double nm, range_policy policy) {
    return tww::refractive_index_quan_fry(sample(35.0, 20.0, nm), policy);
  });
  const auto salinity = [](double n, range_policy policy = range_policy::published) {
    return tww::salinity_from_refractive_index({.index = tww::refractive_index{n}, .temperature = celsius(20.0)},
                                               policy);
  };
  for (const double wrong : {1.19, 1.61, 35.0, 0.0, -1.0}) CHECK_THROWS_AS((void)salinity(wrong), invalid_input);
  CHECK_THROWS_AS((void)salinity(1.3420), out_of_range);
  CHECK_NOTHROW((void)salinity(1.3420, extrapolate));
  try {
    (void)salinity(1.3325, extrapolate);
    FAIL("less than pure water was accepted");
  } catch (const out_of_range& e) {
    CHECK(std::string{e.what()}.find("refractive index = 1.3325 is less than that of pure water at 20 degC, 1.33298") !=
          std::string::npos);
  }
}
