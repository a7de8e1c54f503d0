// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/water_hammer.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twp = tankwright::plumbing;

namespace {

water::liquid of_density(mass_density rho) { return {.density = rho, .viscosity = millipascal_seconds(1.0)}; }

/// The wave speed of a row: either of a pipe in SI, or of PVC by its dimension ratio, where the wave in free water runs
/// at a0 and so the water has the density K/a0^2.
velocity speed_of(const reference_row& row, mass_density& rho) {
  if (row.has("a0")) {
    const pressure k = psi(row["K"]);
    rho = kilograms_per_cubic_metre(k.value() / std::pow(feet_per_second(row["a0"]).value(), 2));
    return twp::wave_speed({.bore = twp::pipe_bore{millimetres(row["D/t"])},
                            .wall = millimetres(1.0),
                            .modulus = psi(row["E"]),
                            .bulk_modulus = k},
                           of_density(rho));
  }
  rho = kilograms_per_cubic_metre(row["rho"]);
  return twp::wave_speed({.bore = twp::pipe_bore{metres(row["D"])},
                          .wall = metres(row["t"]),
                          .modulus = pascals(row["E"]),
                          .bulk_modulus = pascals(row["K"])},
                         of_density(rho));
}

}  // namespace

TEST_CASE("water hammer: reference table") {
  const auto wave = [](const reference_row& row) {
    mass_density rho;
    const velocity a = speed_of(row, rho);
    return row.has("a0") ? in_feet_per_second(a) : in_metres_per_second(a);
  };
  const auto surge = [](const reference_row& row) {
    if (row.id == "WH-df13.4") {  // 30 ft3/s in a pipe of 2 ft radius
      const velocity v = cubic_feet_per_second(row["Q"]) / (3.14159265358979 * feet(row["r"]) * feet(row["r"]));
      const mass_density rho = pounds_per_cubic_foot(row["rho"] * 32.17404856);
      return in_psi(twp::surge_on_closure({.wave_speed = feet_per_second(row["a"]), .change = v, .pipe = feet(0.0)},
                                          of_density(rho))
                        .pressure_rise);
    }
    mass_density rho;
    const velocity a = speed_of(row, rho);
    const bool american = row.has("a0");
    const velocity v = american ? feet_per_second(row["V"]) : metres_per_second(row["V"]);
    const auto s = twp::surge_on_closure({.wave_speed = a, .change = v, .pipe = metres(1.0)}, of_density(rho));
    return american ? in_feet(s.rise) / 2.31 : in_metres(s.rise);  // 2.31 ft of fresh water to the psi
  };
  check_rows(reference_rows("plumbing/water_hammer.csv"),
             {{"tankwright::plumbing::wave_speed", wave}, {"tankwright::plumbing::surge_on_closure", surge}});
}

TEST_CASE("water hammer: rise of pressure and of head are one; the pipe sets the time") {
  const evidence one{"tankwright::plumbing::surge_on_closure", kind::identity, "dp = rho g dh; t = 2 L/a"};
  const evidence rigid{"tankwright::plumbing::wave_speed", kind::identity,
                       "rigid pipe: the speed of sound sqrt(K/rho)"};
  const auto sea = of_density(kilograms_per_cubic_metre(1023.0));
  const auto s = twp::surge_on_closure(
      {.wave_speed = metres_per_second(450.0), .change = metres_per_second(1.5), .pipe = metres(3.0)}, sea);
  TW_CHECK(one, s.pressure_rise, pascals(s.rise.value() * 1023.0 * 9.80665), relative(1e-14));
  TW_CHECK(one, s.rapid, seconds(6.0 / 450.0), relative(1e-14));
  CHECK(s.caution.text.find("slowly") != std::string_view::npos);
  TW_CHECK(rigid, twp::wave_speed({.bore = twp::pipe_bore{metres(0.05)}, .wall = metres(0.003), .restraint = 0.0}, sea),
           metres_per_second(std::sqrt(2.2e9 / 1023.0)), relative(1e-14));
}

TEST_CASE("water hammer: edges of the ranges") {
  const auto sea = of_density(kilograms_per_cubic_metre(1023.0));
  check_edges(twp::wall_limits, [&](double wall, range_policy) {
    return twp::wave_speed({.bore = twp::pipe_bore{metres(0.05)}, .wall = metres(wall)}, sea);
  });
  check_edges(twp::velocity_change_limits, [&](double v, range_policy) {
    return twp::surge_on_closure(
        {.wave_speed = metres_per_second(450.0), .change = metres_per_second(v), .pipe = metres(3.0)}, sea);
  });
}
