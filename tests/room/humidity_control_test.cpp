// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/humidity_control.hpp>

#include "room/samples.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {
twr::humidity_ratio ratio(double value) { return twr::humidity_ratio::from_kilograms_per_kilogram(value); }
relative_humidity humid(double percent_number) { return relative_humidity::from_percent(percent_number); }

double load(const reference_row& row) {
  twr::tank_room r = cellar(row["room"], air_of(row["outdoor"], row["outdoor_RH"]), row["n"]);
  r.room.volume = cubic_metres(row["V"]);
  r.water = seawater(row["water"], row["S"]);
  r.surfaces[0].area = square_metres(row["area"]);
  return in_kilograms_per_day(twr::dehumidifier_for(r, humid(row["target"])).load.central);
}
double dry_air(const reference_row& row) {
  const twr::air wanted =
      twr::air_from(twr::air_of_humidity_ratio{.temperature = celsius(25.0), .ratio = ratio(row["xr"])});
  twr::tank_room r =
      cellar(25.0, twr::air_from(twr::air_of_humidity_ratio{.temperature = celsius(5.0), .ratio = ratio(row["xm"])}));
  r.surfaces.clear();
  r.sources = {{.label = "process", .rate = kilograms_per_hour(row["G"])}};
  return in_kilograms_per_hour(twr::ventilation_for(r, wanted.humidity).dry_air.central);
}
}  // namespace

TEST_CASE("humidity control: reference table") {
  check_rows(reference_rows("room/humidity_control.csv"),
             {{"tankwright::room::dehumidifier_for", load}, {"tankwright::room::ventilation_for", dry_air}});
}

TEST_CASE("humidity control: what is bought holds the humidity") {
  const evidence holds{"tankwright::room::dehumidifier_for", kind::identity,
                       "humidity_balance with the rated machine rests at the target, duty 1"};
  const evidence vents{"tankwright::room::ventilation_for", kind::identity,
                       "humidity_balance with these air changes rests at the target"};
  for (const double target : {45.0, 55.0, 65.0}) {
    twr::tank_room r = cellar(24.0, air_of(28, 60));
    const auto size = twr::dehumidifier_for(r, humid(target));
    CHECK(size.needed);
    r.dehumidifier =
        twr::controlled_dehumidifier{.machine = {.capacity = size.rated.central}, .set_point = humid(target)};
    const auto held = twr::humidity_balance(r).central;
    TW_CHECK(holds, in_percent(held.air.humidity.get()), target, relative(1e-9));
    TW_CHECK(holds, held.duty.value(), 1.0, relative(1e-9));
    CHECK(size.rated.low <= size.rated.central);
    CHECK(size.suggested >= 1.25 * size.rated.central);
    CHECK(size.suggested >= size.rated.high);

    twr::tank_room winter = cellar(22.0, air_of(2, 80));
    const auto air = twr::ventilation_for(winter, humid(target));
    winter.room.air_changes = air.air_changes.central;
    TW_CHECK(vents, in_percent(twr::humidity_balance(winter).central.air.humidity.get()), target, relative(1e-9));
    TW_CHECK(vents, in_cubic_metres_per_hour(air.outdoor_air.central), in_per_hour(air.air_changes.central) * 150.0,
             relative(1e-12));
  }
  // A cold room is dried too, in a band that tells how little of a label is sure.
  const auto cold = twr::dehumidifier_for(cellar(19.0, air_of(18, 80)), humid(55.0));
  CHECK(cold.needed);
  CHECK(cold.share_of_label.low < 0.6 * cold.share_of_label.central);
  CHECK(cold.share_of_label.central <
        twr::dehumidifier_for(cellar(22.0, air_of(18, 80)), humid(55.0)).share_of_label.central);
  // A dry winter room needs none.
  const auto none = twr::dehumidifier_for(cellar(22.0, air_of(-10, 80), 2.0), humid(60.0));
  CHECK(!none.needed);
  CHECK(none.load.high.value() < 0.0);
  CHECK(none.rated.high.value() == 0.0);
}

TEST_CASE("humidity control: mistakes") {
  CHECK(message_of([] {
          (void)twr::ventilation_for(cellar(24.0, air_of(28, 60)), humid(50.0));
        }).ends_with("ventilation cannot dry it; a dehumidifier can"));
  CHECK_THROWS_AS((void)twr::dehumidifier_for(cellar(24.0, air_of(28, 60)), relative_humidity::from_fraction(55.0)),
                  invalid_input);
  CHECK(message_of([] {
          (void)twr::dehumidifier_for(cellar(24.0, air_of(28, 60)), humid(20.0));
        }).ends_with("hardly anything to remove at 24 degC: it is too dry or too cold for one"));
  CHECK_THROWS_AS((void)twr::dehumidifier_for(cellar(6.0, air_of(28, 60)), humid(40.0)), out_of_range);
  CHECK_THROWS_AS(
      (void)twr::ventilation_for(cellar(24.0, air_of(5, 60)), relative_humidity::from_percent(std::nan(""))),
      invalid_input);
}
