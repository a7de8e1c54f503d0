// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/oxygen_use.hpp>

#include <cmath>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

const evidence scaling{"tankwright::life::oxygen_use", kind::identity, "formula in extended precision"};
const evidence warmer{"tankwright::life::oxygen_use", kind::identity, "ten kelvin more: q10 times as much"};
const evidence rule{"tankwright::life::oxygen_for_feed", kind::identity, "1 kg/d of feed: 0.4, 0.45, 0.5 kg/d"};

twl::animals fish(double kilograms_each) {
  return {.label = "fish",
          .each = kilograms(kilograms_each),
          .count = 5.0,
          .measured = twl::specific_oxygen_use::from_milligrams_per_kilogram_hour(300.0),
          .measured_at_mass = kilograms(0.5),
          .measured_at = celsius(25.0)};
}

}  // namespace

TEST_CASE("oxygen use: reference table") {
  const auto use = [](const reference_row& row) {
    const bool routine = row.text("activity") == "routine";
    const twl::animals group{.each = kilograms(row["each"]),
                             .measured = twl::specific_oxygen_use::from_milligrams_per_kilogram_hour(row["measured"]),
                             .measured_at_mass = kilograms(row["at_mass"]),
                             .measured_at = celsius(25.0),
                             .mass_exponent = row["exponent"],
                             .activity = routine ? twl::routine_over_standard : row["activity"]};
    const double found = twl::in_milligrams_per_kilogram_hour(twl::oxygen_use(group, celsius(25.0)).per_mass);
    return routine ? found / row["measured"] : found;
  };
  const auto carbon_dioxide = [](const reference_row& row) {
    return in_milligrams_per_hour(twl::carbon_dioxide_for(milligrams_per_hour(row["O2"]), row["RQ"]));
  };
  check_rows(reference_rows("life/oxygen_use.csv"), {{"tankwright::life::oxygen_use", use},
                                                     {"tankwright::life::routine_over_standard", use},
                                                     {"tankwright::life::carbon_dioxide_for", carbon_dioxide}});
}

TEST_CASE("oxygen use: scaling with mass, temperature and activity") {
  for (const double each : {0.1, 0.5, 3.0}) {
    for (const double t : {15.0, 25.0, 28.0}) {
      auto group = fish(each);
      group.activity = 1.8;
      const long double per_mass = 300.0L * std::pow(static_cast<long double>(each) / 0.5L, -0.2L) *
                                   std::pow(2.5L, (static_cast<long double>(t) - 25.0L) / 10.0L) * 1.8L;
      TW_CHECK(scaling, twl::oxygen_use(group, celsius(t)).use,
               milligrams_per_hour(static_cast<double>(per_mass * static_cast<long double>(each) * 5.0L)),
               relative(1e-12));
    }
  }
  auto shark = fish(2.0);
  shark.q10 = twl::sandbar_shark_q10;
  TW_CHECK(warmer, twl::oxygen_use(shark, celsius(30.0)).use / twl::oxygen_use(shark, celsius(20.0)).use, 2.9,
           relative(1e-12));
  CHECK(twl::oxygen_use(shark, celsius(20.0)).caution.text.find("veterinarian") != std::string_view::npos);
}

TEST_CASE("oxygen use: the rule by feed") {
  const auto band = twl::oxygen_for_feed(kilograms_per_day(1.0));
  TW_CHECK(rule, band.low, kilograms_per_day(0.40), relative(1e-14));
  TW_CHECK(rule, band.central, kilograms_per_day(0.45), relative(1e-14));
  TW_CHECK(rule, band.high, kilograms_per_day(0.50), relative(1e-14));
}

TEST_CASE("oxygen use: bad input names the animals") {
  auto group = fish(-0.1);
  group.label = "garden eels";
  CHECK_THROWS_WITH_AS(
      (void)twl::oxygen_use(group, celsius(25.0)),
      "tankwright::life::oxygen_use: garden eels: mass of one animal = -0.1 kg is not possible; expected "
      "1e-08 to 1000000 kg",
      invalid_input);
  const auto broken = [](auto change) {
    auto one = fish(1.0);
    change(one);
    CHECK_THROWS_AS((void)twl::oxygen_use(one, celsius(25.0)), invalid_input);
  };
  broken([](twl::animals& a) { a.count = -1.0; });
  broken([](twl::animals& a) { a.q10 = 0.5; });
  broken([](twl::animals& a) { a.mass_exponent = 3.0; });
  broken([](twl::animals& a) { a.activity = -1.0; });
  broken([](twl::animals& a) { a.measured_at_mass = kilograms(0.0); });
  broken([](twl::animals& a) { a.measured = twl::specific_oxygen_use::from_milligrams_per_kilogram_hour(-1.0); });
  CHECK_THROWS_AS((void)twl::oxygen_use(fish(1.0), kelvins(0.0)), invalid_input);
  CHECK_THROWS_AS((void)twl::oxygen_for_feed(grams_per_day(-1.0)), invalid_input);
  CHECK_THROWS_AS((void)twl::carbon_dioxide_for(grams_per_day(-1.0)), invalid_input);
  CHECK_THROWS_AS((void)twl::carbon_dioxide_for(grams_per_day(1.0), -1.0), invalid_input);
}

TEST_CASE("oxygen use: carbon dioxide mole for mole, and what is filled in when nothing is said") {
  const evidence moles{"tankwright::life::carbon_dioxide_for", kind::identity, "32 g of O2 for 44 g of CO2, by hand"};
  TW_CHECK(moles, twl::carbon_dioxide_for(milligrams_per_hour(31.998), 0.8), milligrams_per_hour(0.8 * 44.009),
           relative(1e-12));
  TW_CHECK(moles, twl::carbon_dioxide_for(milligrams_per_hour(31.998)), milligrams_per_hour(44.009), relative(1e-12));
  // One animal, as measured: mass and temperature of the measurement.
  const twl::animals unsaid{.each = kilograms(2.0),
                            .measured = twl::specific_oxygen_use::from_milligrams_per_kilogram_hour(150.0),
                            .measured_at_mass = kilograms(1.0),
                            .measured_at = celsius(20.0)};
  // 2 kg x 150 x 2^-0.2 x 2.5 for ten kelvin.
  TW_CHECK(scaling, twl::oxygen_use(unsaid, celsius(30.0)).use, milligrams_per_hour(300.0 * std::pow(2.0, -0.2) * 2.5),
           relative(1e-12));
  TW_CHECK(scaling, twl::in_milligrams_per_kilogram_hour(twl::oxygen_use(unsaid, celsius(30.0)).per_mass),
           150.0 * std::pow(2.0, -0.2) * 2.5, relative(1e-12));
  CHECK_FALSE(twl::oxygen_for_feed(grams_per_day(1.0)).reason.empty());
  CHECK_FALSE(twl::oxygen_use(unsaid, celsius(30.0)).caution.text.empty());
}

TEST_CASE("oxygen use: what is taken and what is refused") {
  const auto use = [](auto change, double x) {
    auto one = fish(1.0);
    change(one, x);
    return twl::oxygen_use(one, celsius(25.0));
  };
  const auto each = [](auto& a, double x) { a.each = kilograms(x); };
  const auto at_mass = [](auto& a, double x) { a.measured_at_mass = kilograms(x); };
  const auto count = [](auto& a, double x) { a.count = x; };
  const auto measured = [](auto& a, double x) {
    a.measured = twl::specific_oxygen_use::from_milligrams_per_kilogram_hour(x);
  };
  const auto at = [](auto& a, double x) { a.measured_at = celsius(x); };
  const auto exponent = [](auto& a, double x) { a.mass_exponent = x; };
  const auto q10 = [](auto& a, double x) { a.q10 = x; };
  const auto activity = [](auto& a, double x) { a.activity = x; };
  check_ranges("life::oxygen_use",
               {TW_RANGE("fish: mass of one animal", 1e-8, 1e6, use(each, x)),
                TW_RANGE("fish: mass of the measured animal", 1e-8, 1e6, use(at_mass, x)),
                TW_RANGE("fish: count", 0.0, 1e9, use(count, x)),
                TW_RANGE("fish: measured oxygen use", 0.0, 1e7, use(measured, x)),
                TW_RANGE("fish: temperature of the measurement", -5.0, 100.0, use(at, x)),
                TW_RANGE("fish: temperature", -5.0, 100.0, twl::oxygen_use(fish(1.0), celsius(x))),
                TW_RANGE("fish: mass exponent", 0.0, 2.0, use(exponent, x)),
                TW_RANGE("fish: q10", 1.0, 10.0, use(q10, x)), TW_RANGE("fish: activity", 0.0, 1e3, use(activity, x))});
  check_ranges("life::oxygen_for_feed", {TW_RANGE("dry feed", 0.0, 1e9, twl::oxygen_for_feed(grams_per_day(x)))});
  check_ranges("life::carbon_dioxide_for",
               {TW_RANGE("oxygen used", 0.0, 1e15, twl::carbon_dioxide_for(milligrams_per_hour(x))),
                TW_RANGE("respiratory quotient", 0.0, 2.0, twl::carbon_dioxide_for(milligrams_per_hour(1.0), x))});
}
