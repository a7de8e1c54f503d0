// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/ammonia.hpp>

#include <type_traits>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

// A total is not a free concentration, one pH scale is not another, and a bare number is neither.
static_assert(!std::is_convertible_v<tww::total_ammonia, tww::free_ammonia>);
static_assert(!std::is_convertible_v<mass_concentration, tww::total_ammonia>);
static_assert(!std::is_convertible_v<tww::ph_nbs, tww::ph_total>);
static_assert(!std::is_convertible_v<double, tww::ph_reading>);
static_assert(!std::is_constructible_v<tww::ph_reading, double>);

namespace {
const evidence half{"tankwright::water::free_ammonia_fraction", kind::identity, "half is free where pH = pK*"};
const evidence nbs_is_free{"tankwright::water::free_ammonia_fraction", kind::identity,
                           "NBS is taken as the free scale"};
const evidence band{"tankwright::water::free_ammonia_fraction", kind::property, "the band holds the centre"};
const evidence grows{"tankwright::water::free_ammonia_fraction", kind::property, "grows with pH and warmth"};
const evidence sample_product{"tankwright::water::free_ammonia_in", kind::identity, "is the free part of the total"};
const evidence masses{"tankwright::water::total_ammonia", kind::identity, "IUPAC masses, there and back"};

tww::ph_reading ph_of(const reference_row& row) {
  if (row.has("pH_T")) return tww::ph_total{row["pH_T"]};
  return tww::ph_free{row["pH_F"]};
}
}  // namespace

TEST_CASE("ammonia: reference table") {
  check_rows(reference_rows("water/ammonia.csv"),
             {{"tankwright::water::free_ammonia_fraction",
               [](const reference_row& row) {
                 return tww::free_ammonia_fraction(ph_of(row), practical_salinity{row["S"]}, celsius(row["t"]))
                     .central.value();
               }},
              {"tankwright::water::free_ammonia_fraction_fresh",
               [](const reference_row& row) {
                 return tww::free_ammonia_fraction_fresh(tww::ph_nbs{row["pH"]}, celsius(row["t"])).value();
               }},
              {"tankwright::water::total_ammonia", [](const reference_row& row) {
                 const auto total = tww::total_ammonia::from_nitrogen(milligrams_per_litre(row["N"]));
                 return in_milligrams_per_litre(total.as_ammonia());
               }}});
}

TEST_CASE("ammonia: half is free where pH is pK*, and the band holds the centre") {
  for (double s = 0.0; s <= 40.0; s += 5.0) {
    for (double t = 0.0; t <= 39.0; t += 3.0) {
      const practical_salinity sp{s};
      const auto on_free = tww::ammonium_pka_free(sp, celsius(t));
      TW_CHECK(half, tww::free_ammonia_fraction(on_free, sp, celsius(t)).central, fraction(0.5), relative(1e-15));
      TW_CHECK(half, tww::free_ammonia_fraction(tww::ammonium_pka_total(sp, celsius(t)), sp, celsius(t)).central,
               fraction(0.5), relative(1e-15));
      for (double ph = 6.0; ph <= 9.5; ph += 0.5) {
        const auto nbs = tww::free_ammonia_fraction(tww::ph_nbs{ph}, sp, celsius(t));
        const auto free = tww::free_ammonia_fraction(tww::ph_free{ph}, sp, celsius(t));
        TW_CHECK(nbs_is_free, nbs.central, free.central, tolerance{});
        TW_HOLDS(band, nbs.low < free.low && free.low < free.central);
        TW_HOLDS(band, free.central < free.high && free.high < nbs.high);
        TW_HOLDS(grows, tww::free_ammonia_fraction(tww::ph_nbs{ph + 0.01}, sp, celsius(t)).central > nbs.central);
        TW_HOLDS(grows, tww::free_ammonia_fraction(tww::ph_nbs{ph}, sp, celsius(t + 0.1)).central > nbs.central);
      }
    }
  }
}

TEST_CASE("ammonia: a sample from the kit to the animals") {
  const auto result = tww::free_ammonia_in({.total = tww::total_ammonia::from_nitrogen(milligrams_per_litre(0.5)),
                                            .ph = tww::ph_nbs{8.2},
                                            .salinity = practical_salinity{35.0},
                                            .temperature = celsius(25.0)});
  for (const auto& [c, f] : {std::pair{result.concentration.low, result.fraction.low},
                             std::pair{result.concentration.central, result.fraction.central},
                             std::pair{result.concentration.high, result.fraction.high}}) {
    TW_CHECK(sample_product, c.as_nitrogen(), milligrams_per_litre(0.5 * f.value()), relative(1e-15));
  }
  CHECK(result.concentration.reason == result.fraction.reason);
  CHECK_FALSE(result.caution.text.empty());
}

TEST_CASE("ammonia: as nitrogen, as NH3 and as NH4+") {
  const auto total = tww::total_ammonia::from_nitrogen(milligrams_per_litre(14.0067));
  TW_CHECK(masses, total.as_ammonia(), milligrams_per_litre(17.03052), relative(1e-15));
  TW_CHECK(masses, total.as_ammonium(), milligrams_per_litre(18.03846), relative(1e-15));
  TW_CHECK(masses, tww::total_ammonia::from_ammonia(milligrams_per_litre(17.03052)).as_nitrogen(),
           milligrams_per_litre(14.0067), relative(1e-15));
  TW_CHECK(masses, tww::total_ammonia::from_ammonium(milligrams_per_litre(18.03846)).as_nitrogen(),
           milligrams_per_litre(14.0067), relative(1e-15));
  CHECK(tww::total_ammonia::from_nitrogen(milligrams_per_litre(0.2)) >
        tww::total_ammonia::from_ammonia(milligrams_per_litre(0.2)));
}

TEST_CASE("ammonia: edges of the ranges") {
  const auto sample = [](double total, double ph, double s, double t, range_policy policy) {
    return tww::free_ammonia_in({.total = tww::total_ammonia::from_nitrogen(milligrams_per_litre(total)),
                                 .ph = tww::ph_nbs{ph},
                                 .salinity = practical_salinity{s},
                                 .temperature = celsius(t)},
                                policy);
  };
  check_edges(tww::total_ammonia_limits, [&](double x, range_policy policy) { return sample(x, 8.2, 35, 25, policy); });
  check_edges(tww::ph_limits, [&](double x, range_policy policy) { return sample(0.5, x, 35, 25, policy); });
  check_edges(tww::ammonia_salinity_limits,
              [&](double x, range_policy policy) { return sample(0.5, 8, x, 25, policy); });
  check_edges(tww::ammonia_temperature_limits,
              [&](double x, range_policy policy) { return sample(0.5, 8, 35, x, policy); });
  check_edges(tww::ph_limits, [](double x, range_policy policy) {
    return tww::free_ammonia_fraction_fresh(tww::ph_nbs{x}, celsius(20.0), policy);
  });
  check_edges(tww::ammonia_fresh_temperature_limits, [](double t, range_policy policy) {
    return tww::free_ammonia_fraction_fresh(tww::ph_nbs{7.0}, celsius(t), policy);
  });
}
