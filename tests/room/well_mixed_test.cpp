// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/well_mixed.hpp>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {
twr::humidity_ratio ratio(double value) { return twr::humidity_ratio::from_kilograms_per_kilogram(value); }
twr::well_mixed_room room_of(const reference_row& row) {
  twr::well_mixed_room r{.dry_air = kilograms_per_hour(row["V"] * row["n"] * row["rho_da"]),
                         .outdoor = ratio(row["Wo"]),
                         .source = kilograms_per_hour(row["G"])};
  if (row.has("kA")) {
    r.transfer = kilograms_per_hour(row["kA"]);
    r.surface = ratio(row["Ww"]);
  }
  return r;
}
}  // namespace

TEST_CASE("well mixed: reference table") {
  const auto settled = [](const reference_row& row) { return twr::settled_humidity_ratio(room_of(row)).value(); };
  const auto after = [](const reference_row& row) {
    return twr::humidity_ratio_after(
               room_of(row),
               {.ratio = ratio(row["W0"]), .dry_air = kilograms(row["V"] * row["rho_da"]), .time = hours(row["t"])})
        .value();
  };
  check_rows(reference_rows("room/well_mixed.csv"), {{"tankwright::room::settled_humidity_ratio", settled},
                                                     {"tankwright::room::humidity_ratio_after", after}});
}

TEST_CASE("well mixed: after one time constant 63 % of the way is done") {
  const evidence tau{"tankwright::room::humidity_time_constant", kind::identity, "1 - 1/e of the way after tau"};
  const twr::well_mixed_room r{.dry_air = kilograms_per_hour(88.5),
                               .outdoor = ratio(0.004),
                               .source = kilograms_per_hour(0.2),
                               .transfer = kilograms_per_hour(38.7),
                               .surface = ratio(0.0201)};
  const duration t = twr::humidity_time_constant(r, kilograms(177.0));
  TW_CHECK(tau, in_hours(t), 177.0 / (88.5 + 38.7), relative(1e-14));
  const double end = twr::settled_humidity_ratio(r).value();
  const double then =
      twr::humidity_ratio_after(r, {.ratio = ratio(0.006), .dry_air = kilograms(177.0), .time = t}).value();
  TW_CHECK(tau, (then - 0.006) / (end - 0.006), 1.0 - std::exp(-1.0), relative(1e-12));
}

TEST_CASE("well mixed: bad input") {
  CHECK(message_of([] {
          (void)twr::settled_humidity_ratio(
              {.dry_air = kilograms_per_hour(0.0), .outdoor = ratio(0.004), .source = kilograms_per_hour(0.4)});
        }) ==
        "tankwright::room::settled_humidity_ratio: dry-air flow = 0 kg/s lets nothing out: with a source the air only "
        "gets "
        "wetter, until it is saturated");
  CHECK_THROWS_AS(
      (void)twr::settled_humidity_ratio(
          {.dry_air = kilograms_per_hour(50.0), .outdoor = ratio(0.004), .source = kilograms_per_hour(-2.0)}),
      invalid_input);
  CHECK_THROWS_AS((void)twr::settled_humidity_ratio({.dry_air = kilograms_per_hour(-1.0), .outdoor = ratio(0.004)}),
                  invalid_input);
  CHECK_THROWS_AS(
      (void)twr::settled_humidity_ratio({.dry_air = kilograms_per_hour(std::nan("")), .outdoor = ratio(0.004)}),
      invalid_input);
  const twr::well_mixed_room r{.dry_air = kilograms_per_hour(88.5), .outdoor = ratio(0.004)};
  CHECK_THROWS_AS((void)twr::humidity_time_constant(r, kilograms(0.0)), invalid_input);
  CHECK_THROWS_AS(
      (void)twr::humidity_ratio_after(r, {.ratio = ratio(0.006), .dry_air = kilograms(177.0), .time = hours(-1.0)}),
      invalid_input);
}
