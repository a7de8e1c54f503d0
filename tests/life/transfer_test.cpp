// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/transfer.hpp>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

const evidence differences{"tankwright::life::match_waters", kind::identity, "tank less bag"};
const evidence both_ph{
    "tankwright::life::match_waters", kind::published,
    "Clegg and Whitfield 1995 in ammFrac of the package wql: free fraction .0440 at pH 8 and .0282 at pH "
    "7.8 (free scale), 25 degC, S 35"};
const evidence first_day{"tankwright::life::balance_of_moved_rock", kind::identity,
                         "4 g/d proven, half moved, 3 g/d new: 1 g/d short, 0.5 mg/L a day in 2000 L"};
const evidence more_rock{"tankwright::life::balance_of_moved_rock", kind::property, "more rock, less shortfall"};

water::ammonia_sample water_of(double s, double t, water::ph_reading ph, double tan) {
  return {.total = water::total_ammonia::from_nitrogen(milligrams_per_litre(tan)),
          .ph = ph,
          .salinity = practical_salinity{s},
          .temperature = celsius(t)};
}
twl::rock_balance move(double share, double new_load) {
  const auto load = [](double g) { return twl::nitrogen_load::from_nitrogen(grams_per_day(g)); };
  return twl::balance_of_moved_rock(
      {.proven = load(4.0), .share_moved = fraction(share), .new_load = load(new_load), .net = litres(2000.0)});
}

}  // namespace

TEST_CASE("transfer: do the waters match") {
  const auto bag = water_of(35.0, 25.0, water::ph_free{7.8}, 1.0);
  const auto tank = water_of(35.5, 25.5, water::ph_free{8.0}, 0.0);
  const auto found = twl::match_waters({.bag = bag, .tank = tank});
  TW_CHECK(differences, found.salinity, 0.5, relative(1e-14));
  TW_CHECK(differences, found.temperature, celsius_steps(0.5), within(celsius_steps(1e-12)));
  TW_CHECK(differences, found.ph, 0.2, relative(1e-14));
  TW_CHECK(both_ph, found.ammonia_as_is.central.as_nitrogen(), milligrams_per_litre(0.0282),
           within(milligrams_per_litre(0.00005)));
  TW_CHECK(both_ph, found.ammonia_at_tank_ph.central.as_nitrogen(), milligrams_per_litre(0.0440),
           within(milligrams_per_litre(0.00005)));
  CHECK(found.salinity_matches);
  CHECK(found.temperature_matches);
  CHECK_FALSE(found.ammonia_safe);  // 0.05 mg/L is reached at the tank's pH, within the band
  CHECK(found.caution.text.find("veterinarian") != std::string_view::npos);
  CHECK_FALSE(
      twl::match_waters({.bag = water_of(32.0, 25.0, water::ph_free{8.0}, 0.0), .tank = tank}).salinity_matches);
  CHECK_FALSE(
      twl::match_waters({.bag = water_of(35.0, 23.0, water::ph_free{8.0}, 0.0), .tank = tank}).temperature_matches);
  CHECK_FALSE(twl::match_waters({.bag = water_of(35.0, 25.0, water::ph_free{7.2}, 0.0), .tank = tank}).ph_matches);
  CHECK(twl::match_waters({.bag = water_of(35.0, 25.0, water::ph_free{7.2}, 0.0), .tank = tank}).ammonia_safe);
}

TEST_CASE("transfer: moved rock against load") {
  const auto half = move(0.5, 3.0);
  TW_CHECK(first_day, half.carried.as_nitrogen(), grams_per_day(2.0), relative(1e-14));
  TW_CHECK(first_day, half.shortfall.as_nitrogen(), grams_per_day(1.0), relative(1e-14));
  TW_CHECK(first_day, half.share_needed, 0.75, relative(1e-14));
  TW_CHECK(first_day, half.daily_rise.as_nitrogen(), milligrams_per_litre(0.5), relative(1e-14));
  CHECK(half.caution.text.find("Measure") != std::string_view::npos);
  CHECK(move(0.75, 3.0).shortfall.as_nitrogen() <= grams_per_day(1e-12));
  CHECK(move(1.0, 3.0).shortfall.as_nitrogen() == grams_per_day(0.0));
  for (int percents = 1; percents <= 100; ++percents) {
    TW_HOLDS(more_rock, move(0.01 * percents, 3.0).shortfall <= move(0.01 * (percents - 1), 3.0).shortfall);
  }
}

TEST_CASE("transfer: bad input") {
  const auto tank = water_of(35.0, 25.0, water::ph_total{8.0}, 0.0);
  CHECK_THROWS_WITH_AS(
      (void)twl::match_waters({.bag = water_of(35.0, 25.0, water::ph_nbs{7.5}, 1.0), .tank = tank}),
      "tankwright::life::match_waters: pH = 7.5 is on another scale than the tank's pH: measure both with one "
      "probe",
      invalid_input);
  CHECK_THROWS_AS((void)twl::match_waters({.bag = water_of(35.0, 25.0, water::ph_total{8.0}, -1.0), .tank = tank}),
                  invalid_input);
  CHECK_THROWS_AS((void)twl::match_waters({.bag = tank, .tank = tank, .limits = {.salinity = -1.0}}), invalid_input);
  const auto brine = water_of(41.0, 25.0, water::ph_total{8.0}, 0.0);
  CHECK_THROWS_AS((void)twl::match_waters({.bag = brine, .tank = tank}), out_of_range);
  (void)twl::match_waters({.bag = brine, .tank = tank}, extrapolate);
  CHECK_THROWS_AS((void)move(1.1, 3.0), invalid_input);
  CHECK_THROWS_AS((void)move(0.5, -3.0), invalid_input);
}

TEST_CASE("transfer: a match is a match up to the limit itself, whichever way") {
  const auto matched = [](double ds, double dt, double dph) {
    return twl::match_waters({.bag = water_of(34.0, 25.0, water::ph_free{8.0}, 0.0),
                              .tank = water_of(34.0 + ds, 25.0 + dt, water::ph_free{8.0 + dph}, 0.0),
                              .limits = {.salinity = 0.5, .temperature = celsius_steps(2.0), .ph = 0.25}});
  };
  for (const double sign : {1.0, -1.0}) {
    CHECK(matched(sign * 0.5, 0.0, 0.0).salinity_matches);
    CHECK_FALSE(matched(sign * 0.5001, 0.0, 0.0).salinity_matches);
    CHECK(matched(0.0, sign * 2.0, 0.0).temperature_matches);
    CHECK_FALSE(matched(0.0, sign * 2.001, 0.0).temperature_matches);
    CHECK(matched(0.0, 0.0, sign * 0.25).ph_matches);
    CHECK_FALSE(matched(0.0, 0.0, sign * 0.2501).ph_matches);
  }
}

TEST_CASE("transfer: limits of which nothing is said, and the ammonia at either pH") {
  const auto tank = water_of(35.0, 25.0, water::ph_free{8.0}, 0.0);
  const auto by_salinity = [&](double s) {
    return twl::match_waters({.bag = water_of(s, 25.0, water::ph_free{8.0}, 0.0), .tank = tank}).salinity_matches;
  };
  CHECK(by_salinity(34.0));  // 1 of salinity, a kelvin, 0.2 of pH, 0.05 mg/L of free ammonia
  CHECK_FALSE(by_salinity(33.9995));
  const auto by_temperature = [&](double t) {
    return twl::match_waters({.bag = water_of(35.0, t, water::ph_free{8.0}, 0.0), .tank = tank}).temperature_matches;
  };
  CHECK(by_temperature(24.0));
  CHECK_FALSE(by_temperature(23.9995));
  const auto by_ph = [&](double ph) {
    return twl::match_waters({.bag = water_of(35.0, 25.0, water::ph_free{ph}, 0.0), .tank = tank}).ph_matches;
  };
  CHECK(by_ph(7.80001));
  CHECK_FALSE(by_ph(7.7999));
  // A bag that is safe as it is, and not once opened; and one that is the other way round.
  const auto safe = [](double bag_ph, double tank_ph, double tan) {
    return twl::match_waters({.bag = water_of(35.0, 25.0, water::ph_free{bag_ph}, tan),
                              .tank = water_of(35.0, 25.0, water::ph_free{tank_ph}, 0.0)});
  };
  const auto shipped = safe(7.0, 8.2, 1.0), fouled = safe(8.2, 7.0, 1.0);
  CHECK(in_milligrams_per_litre(shipped.ammonia_as_is.high.as_ammonia()) < 0.05);
  CHECK(in_milligrams_per_litre(shipped.ammonia_at_tank_ph.high.as_ammonia()) > 0.05);
  CHECK_FALSE(shipped.ammonia_safe);
  CHECK_FALSE(fouled.ammonia_safe);
  CHECK(safe(7.0, 7.0, 1.0).ammonia_safe);
  // The high end at the very limit is still safe: harm is above it.
  auto pair = twl::water_pair{.bag = water_of(35.0, 25.0, water::ph_free{8.0}, 1.0), .tank = tank};
  const auto level = twl::match_waters(pair).ammonia_as_is.high;
  pair.limits.ammonia = level;
  CHECK(twl::match_waters(pair).ammonia_safe);
  pair.limits.ammonia = water::free_ammonia::from_ammonia(level.as_ammonia() * 0.9999);
  CHECK_FALSE(twl::match_waters(pair).ammonia_safe);
}

TEST_CASE("transfer: what is taken and what is refused") {
  const auto tank = water_of(35.0, 25.0, water::ph_total{8.0}, 0.0);
  const auto limited = [&](const twl::match_limits& limits) {
    return twl::match_waters({.bag = tank, .tank = tank, .limits = limits});
  };
  const auto bad_tank = [&](double s, double t, double ph, double tan) {
    return twl::match_waters({.bag = tank, .tank = water_of(s, t, water::ph_total{ph}, tan)});
  };
  CHECK_THROWS_AS((void)bad_tank(41.0, 25.0, 8.0, 0.0), out_of_range);
  CHECK_THROWS_AS((void)bad_tank(35.0, 25.0, 8.0, -1.0), invalid_input);
  check_ranges("life::match_waters",
               {TW_RANGE("salinity limit", 0.0, 100.0, limited({.salinity = x})),
                TW_RANGE("temperature limit", 0.0, 100.0, limited({.temperature = kelvin_steps(x)})),
                TW_RANGE("pH limit", 0.0, 14.0, limited({.ph = x})),
                TW_RANGE("ammonia limit", 0.0, 1e6,
                         limited({.ammonia = water::free_ammonia::from_ammonia(milligrams_per_litre(x))}))});
  const auto moved = [](double proven, double share, double new_load, double net) {
    const auto load = [](double g) { return twl::nitrogen_load::from_nitrogen(grams_per_day(g)); };
    return twl::balance_of_moved_rock(
        {.proven = load(proven), .share_moved = fraction(share), .new_load = load(new_load), .net = litres(net)});
  };
  check_ranges("life::balance_of_moved_rock", {TW_RANGE("proven load", 1e-6, 1e9, moved(x, 0.5, 1.0, 1e3)),
                                               TW_RANGE("share moved", 0.0, 1.0, moved(4.0, x, 1.0, 1e3)),
                                               TW_RANGE("new load", 0.0, 1e9, moved(4.0, 0.5, x, 1e3)),
                                               TW_RANGE("net volume", 1e-3, 1e10, moved(4.0, 0.5, 1.0, x))});
}
