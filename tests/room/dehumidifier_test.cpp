// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/dehumidifier.hpp>

#include <array>

#include "room/samples.hpp"
#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twr = tankwright::room;

namespace {
double output(const reference_row& row) {
  if (row.text("curve") == "water removal") return twr::detail::water_removal_curve<double>(row["t"], row["RH"]);
  if (row.text("curve") == "energy factor") return twr::detail::energy_factor_curve<double>(row["t"], row["RH"]);
  const twr::dehumidifier unit{.capacity = kilograms_per_day(1.0),
                               .rated_at = {"26.7 C, 60 %", celsius(26.7), relative_humidity::from_percent(60.0)}};
  return in_kilograms_per_day(
      twr::dehumidifier_output(unit, celsius(row["t"]), relative_humidity::from_percent(row["RH"])).removal.central);
}
}  // namespace

TEST_CASE("dehumidifier: reference table") {
  check_rows(reference_rows("room/dehumidifier.csv"), {{"tankwright::room::dehumidifier_output", output}});
}

TEST_CASE("dehumidifier: the label holds at its own rating point") {
  const evidence label{"tankwright::room::dehumidifier_output", kind::identity,
                       "capacity and power at the rating point are the label's"};
  const twr::rating_point& cool = twr::rated_73F_60;
  const twr::dehumidifier by_curve{.capacity = kilograms_per_day(20.0), .rated_at = cool, .electrical = watts(320.0)};
  const auto there = twr::dehumidifier_output(by_curve, cool.temperature, cool.humidity);
  TW_CHECK(label, in_kilograms_per_day(there.removal.central), 20.0, relative(1e-12));
  TW_CHECK(label, there.electrical, watts(320.0), relative(1e-12));
  // 80 F is 26.67 degC, where the curve is 0.03 K away from its own rating point, 26.7 degC.
  const twr::dehumidifier m{.capacity = kilograms_per_day(20.0), .electrical = watts(320.0)};
  const auto d = twr::dehumidifier_output(m, fahrenheit(80.0), relative_humidity::from_percent(60.0));
  TW_CHECK(label, in_kilograms_per_day(d.removal.central), 20.0, relative(1e-3));

  const evidence heat{"tankwright::room::dehumidifier_output", kind::identity,
                      "heat = latent heat of the water + electricity"};
  const double latent = in_joules_per_kilogram(water::latent_heat_of_water(celsius(24.0)));
  const auto at = twr::dehumidifier_output(m, celsius(24.0), relative_humidity::from_percent(55.0));
  TW_CHECK(heat, at.heat_to_room.central.value(), at.removal.central.value() * latent + at.electrical.value(),
           relative(1e-14));
  CHECK(at.removal.low < at.removal.central);
  CHECK(at.removal.central < at.removal.high);
}

TEST_CASE("dehumidifier: a label at 30 degC and 80 % promises more than a cooler, drier room gets") {
  const evidence guide{"tankwright::room::dehumidifier_output", kind::published,
                       "a supplier's guide: 10, 16 and 50 L a day at 30 degC, 80 % are 5.6, 8 and 30 at 27 degC, 60 %"};
  for (const auto& [promised, gets] : {std::pair{10.0, 5.6}, {16.0, 8.0}, {50.0, 30.0}}) {
    const twr::dehumidifier m{.capacity = kilograms_per_day(promised), .rated_at = twr::rated_30C_80};
    const auto d = twr::dehumidifier_output(m, celsius(27.0), relative_humidity::from_percent(60.0)).removal;
    TW_HOLDS(guide, in_kilograms_per_day(d.low) < gets && gets < in_kilograms_per_day(d.high));
  }
}

TEST_CASE("dehumidifier: re-rating of 2019") {
  // 30 pints a day at 80 F became 20 at 65 F; 50 became 30 to 35.
  const evidence rerated{"tankwright::room::dehumidifier_output", kind::published,
                         "US Department of Energy 2019: 0.60 to 0.71 of the capacity at 80 F, 60 %"};
  const twr::dehumidifier old_label{.capacity = kilograms_per_day(30.0)};
  const twr::dehumidifier new_label{.capacity = kilograms_per_day(20.0), .rated_at = twr::rated_65F_60};
  const auto a =
      twr::dehumidifier_output(old_label, celsius(24.0), relative_humidity::from_percent(55.0)).removal.central;
  const auto b =
      twr::dehumidifier_output(new_label, celsius(24.0), relative_humidity::from_percent(55.0)).removal.central;
  TW_CHECK(rerated, b / a, 1.0, tolerance{.absolute = 0.05});
  // The curve, 2.7 K past its end, agrees with the published re-rating, and its band there holds all of it.
  const twr::dehumidifier plain{.capacity = kilograms_per_day(1.0)};
  const auto cold = twr::dehumidifier_output(plain, fahrenheit(65.0), relative_humidity::from_percent(60.0)).removal;
  TW_CHECK(rerated, in_kilograms_per_day(cold.central), 0.655, tolerance{.absolute = 0.055});
  TW_HOLDS(rerated, in_kilograms_per_day(cold.low) < 0.60 && in_kilograms_per_day(cold.high) > 0.714);
}

TEST_CASE("dehumidifier: no cliff at any temperature or humidity, and bands in order") {
  const evidence smooth{"tankwright::room::dehumidifier_output", kind::property,
                        "a step of 1e-6 K, or of 1e-6 of humidity, moves nothing by more than 1e-5 of the label"};
  const evidence ordered{"tankwright::room::dehumidifier_output", kind::property, "low <= central <= high"};
  const evidence colder{"tankwright::room::dehumidifier_output", kind::property,
                        "a colder room never gets more out of a machine, from 37 degC down"};
  const twr::dehumidifier m{.capacity = kilograms_per_day(1.0), .electrical = watts(300.0)};
  const auto at = [&](double t, double h) {
    return twr::dehumidifier_output(m, celsius(t), relative_humidity::from_fraction(h));
  };
  const auto numbers = [](const twr::dehumidifier_duty& d) {
    return std::array{in_kilograms_per_day(d.removal.low), in_kilograms_per_day(d.removal.central),
                      in_kilograms_per_day(d.removal.high), d.electrical.value() / 300.0};
  };
  const auto near = [&](const twr::dehumidifier_duty& a, const twr::dehumidifier_duty& b) {
    const auto x = numbers(a), y = numbers(b);
    for (std::size_t i = 0; i < x.size(); ++i) {
      if (!(std::fabs(x[i] - y[i]) <= 1e-5)) return false;
    }
    return true;
  };
  for (const double t : {-5.0, 0.0, 5.0, 10.0, 15.0, 18.0, 21.0, 24.0, 32.22, 35.0, 38.0, 42.0}) {
    for (const double h : {0.1, 0.25, 0.3, 0.4, 0.55, 0.8, 0.9, 0.999}) {
      TW_HOLDS(smooth, near(at(t - 1e-6, h), at(t + 1e-6, h)));
      TW_HOLDS(smooth, near(at(t, h - 1e-6), at(t, h + 1e-6)));
      const auto d = at(t, h);
      TW_HOLDS(ordered, d.removal.low.value() >= 0.0 && d.removal.low <= d.removal.central &&
                            d.removal.central <= d.removal.high);
      TW_HOLDS(ordered, d.heat_to_room.low <= d.heat_to_room.central && d.heat_to_room.central <= d.heat_to_room.high);
    }
  }
  for (const double h : {0.4, 0.6, 0.8}) {
    double before = 1e9;
    for (double t = 37.0; t >= -10.0; t -= 0.5) {
      const double now = at(t, h).removal.central.value();
      TW_HOLDS(colder, now <= before);
      before = now;
    }
  }
  // What a machine without defrosting does below 15 degC: nothing that could be relied on.
  CHECK(at(14.9, 0.6).removal.low.value() == 0.0);
  CHECK(at(14.9, 0.6).removal.central.value() > 0.0);
  CHECK(at(4.9, 0.6).removal.central.value() == 0.0);
  CHECK(at(4.9, 0.6).removal.high.value() > 0.0);
  CHECK(at(-0.1, 0.6).removal.high.value() == 0.0);
}

TEST_CASE("dehumidifier: edges and mistakes") {
  const twr::dehumidifier m{.label = "dryer", .capacity = kilograms_per_day(20.0)};
  const auto at = [&](double t, double h, range_policy policy = range_policy::published) {
    return twr::dehumidifier_output(m, celsius(t), relative_humidity::from_fraction(h), policy);
  };
  CHECK(message_of([&] { (void)at(50.0, 0.5); }) ==
        "tankwright::room::dehumidifier_output: dryer: temperature = 50 degC is outside the published range -30 to "
        "45 degC (this library, around the curve of EnergyPlus); pass tankwright::extrapolate to go past it");
  CHECK_THROWS_AS((void)at(24.0, 1.2, extrapolate), invalid_input);
  CHECK_THROWS_AS((void)at(std::nan(""), 0.5, extrapolate), invalid_input);
  CHECK(at(19.0, 0.5).removal.central < at(21.0, 0.5).removal.central);
  CHECK(at(0.0, 0.1).removal.central.value() == 0.0);
  CHECK_THROWS_AS((void)twr::dehumidifier_output({.capacity = kilograms_per_day(0.0)}, celsius(24.0),
                                                 relative_humidity::from_percent(50.0)),
                  invalid_input);
  CHECK_THROWS_AS((void)twr::dehumidifier_output({.capacity = kilograms_per_day(5.0), .electrical = watts(-1.0)},
                                                 celsius(24.0), relative_humidity::from_percent(50.0)),
                  invalid_input);
  const auto shared = [&](double share) {
    return twr::dehumidifier_output(
        {.capacity = kilograms_per_day(5.0),
         .rated_at = {"of its label", celsius(24.0), relative_humidity::from_percent(60.0), share}},
        celsius(24.0), relative_humidity::from_percent(50.0));
  };
  CHECK(shared(0.02).removal.central == shared(0.01).removal.central / 2.0);
  CHECK(message_of([&] { (void)shared(0.0099); }) ==
        "tankwright::room::dehumidifier_output: dehumidifier: share of the rating point = 0.0099 is not possible; "
        "expected 0.01 to 10");
  for (const double bad : {2e-308, 10.01, -0.5, std::nan("")}) CHECK_THROWS_AS((void)shared(bad), invalid_input);
  CHECK_THROWS_AS(
      (void)twr::dehumidifier_output({.capacity = kilograms_per_day(5.0),
                                      .rated_at = {"cold", celsius(10.0), relative_humidity::from_percent(60.0)}},
                                     celsius(24.0), relative_humidity::from_percent(50.0)),
      invalid_input);
}
