// SPDX-License-Identifier: BSL-1.0
#include <cmath>

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
  // Bone-dry air outside, and next to none inside: the difference carries nothing.
  CHECK(message_of([] {
          (void)twr::ventilation_for(cellar(24.0, air_of(5, 0)), relative_humidity::from_fraction(1e-307));
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

TEST_CASE("humidity control: both ends of what is bought, by the public functions") {
  const evidence dryer{"tankwright::room::dehumidifier_for", kind::identity,
                       "evaporation, sources and ventilation at the target, over what is left of a label"};
  const evidence vents{"tankwright::room::ventilation_for", kind::identity,
                       "evaporation and sources over what a change of air carries out"};
  for (const double target : {50.0, 70.0}) {
    for (const bool moving : {false, true}) {
      twr::tank_room r = cellar(24.0, air_of(16, 70), 0.4);
      r.sources = {{.label = "people", .rate = grams_per_hour(90.0)},
                   {.label = "drying", .rate = grams_per_hour(30.0)}};
      if (moving) r.surfaces[0].agitation = twr::lively;
      const auto e = twr::evaporation({.water = r.water, .air = air_of(24.0, target), .surfaces = r.surfaces}).rate;
      const double per_pascal = 150.0 / (287.042 * 297.15);
      const double p = target / 100.0 * in_pascals(twr::saturation_pressure(celsius(24.0)));
      const double carried =
          per_pascal * (0.621945 * p - (101325.0 - p) * twr::humidity_ratio_of(r.room.outdoor).value());  // of a change
      const double sources = 0.12 / 3600.0;
      const auto load = [&](mass_flow evaporated) { return evaporated.value() + sources - 0.4 / 3600.0 * carried; };
      const auto share =
          twr::dehumidifier_output({.capacity = kilograms_per_second(1.0), .rated_at = twr::rated_73F_60},
                                   celsius(24.0), humid(target))
              .removal;
      const auto size = twr::dehumidifier_for(r, humid(target), twr::rated_73F_60);
      const double latent = in_joules_per_kilogram(water::latent_heat_of_water(celsius(24.0)));
      const auto check = [&](mass_flow found, mass_flow rated, power heat, mass_flow evaporated) {
        const double wanted = load(evaporated), removed = std::fmax(wanted, 0.0);
        TW_CHECK(dryer, found.value(), wanted, (tolerance{.absolute = 1e-14, .relative = 1e-9}));
        TW_CHECK(dryer, rated.value(), removed / share.central.value(), relative(1e-9));
        TW_CHECK(dryer, heat.value(), removed * latent, relative(1e-9));
      };
      check(size.load.low, size.rated.low, size.latent_heat_to_room.low, e.low);
      check(size.load.central, size.rated.central, size.latent_heat_to_room.central, e.central);
      check(size.load.high, size.rated.high, size.latent_heat_to_room.high, e.high);
      TW_CHECK(dryer, size.share_of_label.low, share.low.value(), relative(1e-12));
      TW_CHECK(dryer, size.share_of_label.central, share.central.value(), relative(1e-12));
      TW_CHECK(dryer, size.share_of_label.high, share.high.value(), relative(1e-12));
      TW_CHECK(dryer, size.suggested.value(), std::fmax(1.25 * size.rated.central.value(), size.rated.high.value()),
               relative(1e-14));
      CHECK(size.load.reason == (moving ? twr::agitated_band : twr::still_band));
      CHECK(size.share_of_label.reason == share.reason);
      CHECK_FALSE(size.caution.text.empty());

      r.room.air_changes = per_hour(3.0);  // what there is already is of no matter
      const auto air = twr::ventilation_for(r, humid(target));
      const double dry = per_pascal * (101325.0 - p);
      const auto compare_air = [&](rate changes, flow_rate outdoor, mass_flow dry_air, mass_flow evaporated) {
        const double wanted = (evaporated.value() + sources) / carried;
        TW_CHECK(vents, changes.value(), wanted, relative(1e-9));
        TW_CHECK(vents, outdoor.value(), wanted * 150.0, relative(1e-9));
        TW_CHECK(vents, dry_air.value(), wanted * dry, relative(1e-9));
      };
      compare_air(air.air_changes.low, air.outdoor_air.low, air.dry_air.low, e.low);
      compare_air(air.air_changes.central, air.outdoor_air.central, air.dry_air.central, e.central);
      compare_air(air.air_changes.high, air.outdoor_air.high, air.dry_air.high, e.high);
      CHECK(air.dry_air.reason == (moving ? twr::agitated_band : twr::still_band));
      CHECK_FALSE(air.caution.text.empty());
    }
  }
}
