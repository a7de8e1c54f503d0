// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/floor.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

double read(pressure p, const std::string& unit) { return unit == "kPa" ? in_kilopascals(p) : in_psf(p); }

}  // namespace

TEST_CASE("floor: reference table") {
  check_rows(reference_rows("vessel/floor.csv"),
             {{"tankwright::vessel::living_rooms",
               [](const reference_row& row) { return read(vs::living_rooms.value, row.unit); }},
              {"tankwright::vessel::sleeping_rooms",
               [](const reference_row& row) { return read(vs::sleeping_rooms.value, row.unit); }},
              {"tankwright::vessel::load_on_floor", [](const reference_row& row) {
                 const area plan = square_feet(row["area"]);
                 return read(
                     vs::load_on_floor(
                         {.total = pounds_per_cubic_foot(row["rho"]) * (feet(row["depth"]) * plan), .footprint = plan})
                         .spread,
                     row.unit);
               }}});
}

TEST_CASE("floor: footprint, feet and the code's live load") {
  const evidence statics{"tankwright::vessel::load_on_floor", kind::identity, "m g / A"};
  const auto r =
      vs::load_on_floor({.total = tonnes(2.5), .footprint = square_metres(2), .bearing = square_metres(0.05)});
  TW_CHECK(statics, r.weight, newtons(2500 * 9.80665), relative(1e-14));
  TW_CHECK(statics, r.spread, pascals(1250 * 9.80665), relative(1e-14));
  TW_CHECK(statics, r.under_feet, pascals(50'000 * 9.80665), relative(1e-14));
  TW_CHECK(statics, r.times_code, 1250 * 9.80665 / in_pascals(psf(40)), relative(1e-14));
  const auto flat =
      vs::load_on_floor({.total = kilograms(100), .footprint = square_metres(1), .code = vs::sleeping_rooms});
  TW_CHECK(statics, flat.under_feet, flat.spread, relative(1e-15));
  CHECK(flat.code.value == psf(30));
  CHECK(r.caution.text.find("licensed engineer") != std::string_view::npos);
}

TEST_CASE("floor: impossible loads are refused by name") {
  const auto load = [](double m, double a, double feet) {
    return vs::load_on_floor(
        {.total = kilograms(m), .footprint = square_metres(a), .bearing = square_metres(feet), .label = "display"});
  };
  check_edges({"display: total mass", "kg", vs::detail::possible_mass_from_zero},
              [&](double x, range_policy) { return load(x, 1, 1); });
  check_edges({"display: footprint", "m2", vs::detail::possible_area},
              [&](double x, range_policy) { return load(1, x, x); });
  check_edges({"display: bearing area", "m2", {1e-6, 1.0}}, [&](double x, range_policy) { return load(1, 1, x); });
  auto nothing = vs::living_rooms;
  nothing.value = psf(0);
  CHECK_THROWS_AS((void)vs::load_on_floor({.total = kilograms(1), .footprint = square_metres(1), .code = nothing}),
                  invalid_input);
}
