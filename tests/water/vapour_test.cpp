// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/vapour.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence activity_rounding{"tankwright::water::water_activity", kind::identity,
                                 "the same formula in long double"};
const evidence no_salt{"tankwright::water::water_activity", kind::identity, "fresh water has activity one"};
const evidence witting{"tankwright::water::water_activity_witting", kind::identity, "1 - 0.000537 S"};
const evidence rounding{"tankwright::water::vapour_pressure", kind::identity, "the same formula in long double"};
const evidence ordered{"tankwright::water::vapour_pressure", kind::property, "grows with warmth, falls with salt"};

absolute_salinity grams_per_kilogram(double s) { return absolute_salinity::from_grams_per_kilogram(s); }

double activity(const reference_row& row) {
  const practical_salinity s{row["S_P"]};
  return (row.has("t90") ? tww::water_activity(s, celsius(row["t90"])) : tww::water_activity(s)).value();
}
double default_pressure(const reference_row& row) {
  const double s = row["S_P"];
  const temperature t = celsius(row["t90"]);
  return in_pascals(s == 0.0 ? tww::vapour_pressure(t) : tww::vapour_pressure(practical_salinity{s}, t));
}
double iapws_pressure(const reference_row& row) { return in_pascals(tww::vapour_pressure_iapws(kelvins(row["T"]))); }
double nayar_pressure(const reference_row& row) {
  return in_pascals(tww::vapour_pressure_nayar(grams_per_kilogram(row["S_A"]), celsius(row["t90"])));
}
double weiss_price_pressure(const reference_row& row) {
  return in_pascals(tww::vapour_pressure_weiss_price(practical_salinity{row["S_P"]}, celsius(row["t90"])));
}
double osmotic(const reference_row& row) {
  return tww::osmotic_coefficient(grams_per_kilogram(row["S_A"]), celsius(row["t90"]));
}
}  // namespace

TEST_CASE("vapour: reference table") {
  check_rows(reference_rows("water/vapour.csv"), {{"tankwright::water::vapour_pressure", default_pressure},
                                                  {"tankwright::water::vapour_pressure_iapws", iapws_pressure},
                                                  {"tankwright::water::vapour_pressure_nayar", nayar_pressure},
                                                  {"tankwright::water::water_activity", activity},
                                                  {"tankwright::water::osmotic_coefficient", osmotic}});
}

TEST_CASE("vapour: random states against TEOS-10 and IAPWS") {
  check_rows(live_rows("water_vapour_activity.csv"),
             {{"tankwright::water::water_activity", activity},
              {"tankwright::water::water_activity_witting", [](const reference_row& row) {
                 return tww::water_activity_witting(practical_salinity{row["S_P"]}).value();
               }}});
  check_rows(live_rows("water_vapour_pressure.csv"),
             {{"tankwright::water::vapour_pressure", default_pressure},
              {"tankwright::water::vapour_pressure_iapws", iapws_pressure},
              {"tankwright::water::vapour_pressure_nayar", nayar_pressure},
              {"tankwright::water::vapour_pressure_weiss_price", weiss_price_pressure}});
}

TEST_CASE("vapour: rounding, limits and order") {
  TW_CHECK(no_salt, tww::water_activity(practical_salinity{0.0}), fraction(1.0), tolerance{});
  TW_CHECK(no_salt, tww::water_activity(practical_salinity{0.0}, celsius(24.0)), fraction(1.0), tolerance{});
  TW_CHECK(witting, tww::water_activity_witting(practical_salinity{20.0}), fraction(0.98926), relative(1e-15));
  for (double t = 0.0; t <= 79.0; t += 1.3) {
    const auto exact = tww::kernel::saturation_hyland_wexler(static_cast<long double>(in_kelvins(celsius(t))));
    TW_CHECK(rounding, tww::vapour_pressure(celsius(t)), pascals(static_cast<double>(exact)), relative(1e-14));
    TW_HOLDS(ordered, tww::vapour_pressure(celsius(t + 0.01)) > tww::vapour_pressure(celsius(t)));
    for (double s = 0.0; s <= 41.0; s += 2.05) {
      const auto oracle = tww::detail::water_activity_teos10(35.16504L / 35.0L * static_cast<long double>(s),
                                                             static_cast<long double>(in_celsius(celsius(t))));
      TW_CHECK(activity_rounding, tww::water_activity(practical_salinity{s}, celsius(t)),
               fraction(static_cast<double>(oracle)), relative(1e-15));
      TW_HOLDS(ordered, tww::vapour_pressure(practical_salinity{s + 0.01}, celsius(t)) <
                            tww::vapour_pressure(practical_salinity{s}, celsius(t)));
    }
  }
}

TEST_CASE("vapour: edges of the ranges") {
  const auto salinity = [](auto function) {
    return [function](double s, range_policy policy) { return function(practical_salinity{s}, policy); };
  };
  check_edges(tww::practical_salinity_limits,
              salinity([](practical_salinity s, range_policy policy) { return tww::water_activity(s, policy); }));
  check_edges(tww::practical_salinity_limits, salinity([](practical_salinity s, range_policy policy) {
                return tww::vapour_pressure(s, celsius(25.0), policy);
              }));
  check_edges(tww::witting_salinity_limits, salinity([](practical_salinity s, range_policy policy) {
                return tww::water_activity_witting(s, policy);
              }));
  check_edges(tww::weiss_price_salinity_limits, salinity([](practical_salinity s, range_policy policy) {
                return tww::vapour_pressure_weiss_price(s, celsius(25.0), policy);
              }));
  check_edges(tww::gibbs_temperature_limits, [](double t, range_policy policy) {
    return tww::water_activity(practical_salinity{35.0}, celsius(t), policy);
  });
  check_edges(tww::hyland_wexler_temperature_limits,
              [](double t, range_policy policy) { return tww::vapour_pressure(celsius(t), policy); });
  check_edges(tww::iapws_saturation_temperature_limits,
              [](double t, range_policy policy) { return tww::vapour_pressure_iapws(celsius(t), policy); });
  check_edges(tww::weiss_price_temperature_limits, [](double t, range_policy policy) {
    return tww::vapour_pressure_weiss_price(practical_salinity{35.0}, celsius(t), policy);
  });
  check_edges(tww::nayar_temperature_limits, [](double t, range_policy policy) {
    return tww::vapour_pressure_nayar(grams_per_kilogram(35.0), celsius(t), policy);
  });
  check_edges(tww::nayar_salinity_limits, [](double s, range_policy policy) {
    return tww::vapour_pressure_nayar(grams_per_kilogram(s), celsius(25.0), policy);
  });
  check_edges(tww::osmotic_salinity_limits, [](double s, range_policy policy) {
    return tww::osmotic_coefficient(grams_per_kilogram(s), celsius(25.0), policy);
  });
  check_edges(tww::osmotic_temperature_limits, [](double t, range_policy policy) {
    return tww::osmotic_coefficient(grams_per_kilogram(35.0), celsius(t), policy);
  });
}
