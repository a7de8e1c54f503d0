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
