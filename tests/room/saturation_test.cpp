// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/saturation.hpp>

#include <cmath>
#include <vector>

#include "support/edges.hpp"
#include "support/reference.hpp"
#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {
const evidence rounding{"tankwright::room::saturation_pressure", kind::identity, "the same formula in long double"};
const evidence derivative{"tankwright::room::saturation_pressure", kind::identity,
                          "slope and curvature against differences in long double"};
const evidence order{"tankwright::room::saturation_pressure", kind::property,
                     "rises with temperature, through 0.01 degC too"};
const evidence batch_is_scalar{"tankwright::room::saturation_pressure", kind::property, "batch equals scalar"};
const evidence round_trip{"tankwright::room::saturation_temperature", kind::identity, "inverse of saturation_pressure"};

double saturation_pressure(const reference_row& row) {
  if (row.text("want") == "slope") {
    const double p = in_pascals(twr::saturation_pressure(celsius(row["t"])));
    return p * twr::detail::ln_saturation(in_kelvins(celsius(row["t"]))).slope;
  }
  return in_pascals(twr::saturation_pressure(celsius(row["t"])));
}
}  // namespace

TEST_CASE("saturation: reference table") {
  check_rows(reference_rows("room/saturation.csv"), {{"tankwright::room::saturation_pressure", saturation_pressure}});
}

TEST_CASE("saturation: random states against IAPWS") {
  const auto temperature_of = [](const reference_row& row) {
    return in_celsius(twr::saturation_temperature(pascals(row["p"])));
  };
  check_rows(live_rows("room_saturation.csv"), {{"tankwright::room::saturation_pressure", saturation_pressure},
                                                {"tankwright::room::saturation_temperature", temperature_of}});
}

TEST_CASE("saturation: rounding, slopes, inverse and batch over the whole range") {
  std::vector<temperature> t;
  for (double c = -100.0; c <= 200.0; c += 0.37) t.push_back(celsius(c));
  for (const double c : {-1e-9, 0.0, 0.01 - 1e-9, 0.01, 0.01 + 1e-9, 200.0}) t.push_back(celsius(c));
  std::vector<pressure> batch(t.size());
  twr::saturation_pressure(t, batch);
  for (std::size_t i = 0; i < t.size(); ++i) {
    const pressure p = twr::saturation_pressure(t[i]);
    CHECK(batch[i] == p);
    record_property(batch_is_scalar, batch[i] == p);
    const auto k = static_cast<long double>(in_kelvins(t[i]));
    TW_CHECK(rounding, in_pascals(p), static_cast<double>(twr::detail::saturation_pressure(k)), relative(2e-14));
    TW_CHECK(round_trip, in_kelvins(twr::saturation_temperature(p, extrapolate)), in_kelvins(t[i]),
             tolerance{.absolute = 1e-11});

    const auto ln = [&](long double at) {
      return in_celsius(t[i]) < 0.01 ? twr::detail::ln_saturation_over_ice(at)
                                     : tankwright::water::kernel::ln_saturation_hyland_wexler(at);
    };
    const long double h = 1e-3L;
    const double slope = static_cast<double>((ln(k + h).value - ln(k - h).value) / (2 * h));
    const double curvature = static_cast<double>((ln(k + h).slope - ln(k - h).slope) / (2 * h));
    const auto at = twr::detail::ln_saturation(in_kelvins(t[i]));
    TW_CHECK(derivative, at.slope, slope, relative(1e-9));
    TW_CHECK(derivative, at.curvature, curvature, relative(1e-8));
    if (in_celsius(t[i]) < 199.0) {
      TW_HOLDS(order, twr::saturation_pressure(kelvins(in_kelvins(t[i]) + 1e-6)) > p);
    }
  }
}

TEST_CASE("saturation: ice and water meet at the triple point") {
  const evidence meet{"tankwright::room::saturation_pressure", kind::property, "continuous at the triple point"};
  const double below = in_pascals(twr::saturation_pressure(kelvins(std::nextafter(273.16, 0.0))));
  TW_CHECK(meet, below, in_pascals(twr::saturation_pressure(kelvins(273.16))), relative(1e-8));
}

TEST_CASE("saturation: edges of the ranges") {
  check_edges(twr::saturation_temperature_limits,
              [](double t, range_policy policy) { return twr::saturation_pressure(celsius(t), policy); });
  check_edges(twr::vapour_pressure_limits,
              [](double p, range_policy policy) { return twr::saturation_temperature(pascals(p), policy); });
  CHECK_THROWS_AS((void)twr::saturation_temperature(gigapascals(1e9), extrapolate), invalid_input);

  const std::vector<temperature> t{celsius(20.0), celsius(201.0)};
  std::vector<pressure> result(2, pascals(-1.0));
  CHECK_THROWS_AS(twr::saturation_pressure(t, result), out_of_range);
  CHECK(result[0] == pascals(-1.0));
  twr::saturation_pressure(t, result, extrapolate);
  CHECK(result[1] > result[0]);
  check_refused([&] { twr::saturation_pressure(t, {}); },
                [](const error& e) { CHECK(std::string{e.what()}.ends_with("the first span, 2")); });
  std::vector<pressure> too_short(1);
  CHECK_THROWS_AS(twr::saturation_pressure(t, too_short), invalid_input);
}

TEST_CASE("saturation: the first guess is Magnus' curve, and as good as it says") {
  // Over water 610.78 Pa exp(17.27 t/(237.3 + t)) (Tetens 1930; FAO-56 eq. 11), over ice 21.875 and 265.5 (Murray
  // 1967), from memory.
  for (const double t : {0.5, 5.0, 20.0, 100.0}) {
    const double guess = twr::detail::saturation_temperature_guess(std::log(610.78) + 17.27 * t / (237.3 + t));
    CHECK(std::fabs(guess - 273.15 - t) < 2e-4);
  }
  for (const double t : {-0.5, -5.0, -30.0, -90.0}) {
    const double guess = twr::detail::saturation_temperature_guess(std::log(610.78) + 21.875 * t / (265.5 + t));
    CHECK(std::fabs(guess - 273.15 - t) < 2e-4);
  }
  const auto off = [](double t) {
    const double ln_p = twr::detail::ln_saturation(t + 273.15).value;
    return std::fabs(twr::detail::saturation_temperature_guess(ln_p) - 273.15 - t);
  };
  for (double t = -100.0; t <= 200.0; t += 0.5) CHECK(off(t) < (t >= 0.0 && t <= 45.0 ? 0.03 : 3.0));
}
