// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/weighed_volume.hpp>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

TEST_CASE("weighed volume: printed factors of water on a scale in air") {
  // ISO 8655-6, Z in uL/mg at 1013 hPa, in a reproduction: what a milligram on the scale is in microlitres.
  const evidence iso{"tankwright::water::density_by_weighing", kind::published,
                     "ISO 8655-6, factors Z, in a reproduction"};
  for (const auto& [t, z] : {std::pair{15.0, 1.0020}, {20.0, 1.0029}, {25.0, 1.0040}, {30.0, 1.0054}}) {
    const auto rho = tww::density_by_weighing({.volume = litres(1.0), .shown = kilograms(1.0 / z)});
    // Half a digit of Z is 0.05 kg/m3; water and its air differ by 0.03 in 0.05 of that.
    TW_CHECK(iso, rho.central.value(), tww::density(practical_salinity{0.0}, celsius(t)).value(), within(0.09));
  }
}

TEST_CASE("weighed volume: the balance of a body in air, by hand, and its band") {
  const evidence hand{"tankwright::water::density_by_weighing", kind::identity, "rho V - rho_a V = m (1 - rho_a/8000)"};
  const tww::weighed_volume flask{
      .volume = litres(2.0), .shown = kilograms(2.05), .volume_error = fraction(0.001), .scale_error = grams(2.0)};
  const double v = 0.002;
  const auto by_hand = [&](double m, double volume) { return (m * (1.0 - 1.2 / 8000.0) + 1.2 * volume) / volume; };
  const auto rho = tww::density_by_weighing(flask);
  TW_CHECK(hand, rho.central.value(), by_hand(2.05, v), relative(1e-12));
  TW_CHECK(hand, rho.low.value(), by_hand(2.048, v * 1.001), relative(1e-12));
  TW_CHECK(hand, rho.high.value(), by_hand(2.052, v * 0.999), relative(1e-12));
  // Forgotten, the air would make seawater a kilogram lighter.
  TW_HOLDS(hand, rho.central.value() - 1025.0 > 1.0);
}

TEST_CASE("weighed volume: edges of the ranges") {
  const auto of = [](double litres_, double kg, double e, double d, double air) {
    return tww::density_by_weighing({.volume = litres(litres_),
                                     .shown = kilograms(kg),
                                     .volume_error = fraction(e),
                                     .scale_error = kilograms(d),
                                     .air = kilograms_per_cubic_metre(air)});
  };
  check_edges(tww::flask_volume_limits, [&](double x, range_policy) { return of(x, 1.0, 0.0, 0.0, 1.2); });
  check_edges(tww::flask_mass_limits, [&](double x, range_policy) { return of(1.0, x, 0.0, 0.0, 1.2); });
  check_edges(tww::flask_error_limits, [&](double x, range_policy) { return of(1.0, 1.0, x, 0.0, 1.2); });
  check_edges(tww::scale_error_limits, [&](double x, range_policy) { return of(1.0, 1.0, 0.0, x, 1.2); });
  check_edges(tww::flask_air_limits, [&](double x, range_policy) { return of(1.0, 1.0, 0.0, 0.0, x); });
}
