// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/nitrogen.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

const evidence proportional{"tankwright::life::nitrogen_from_feed", kind::property,
                            "proportional to food and to protein"};
const evidence round_trip{"tankwright::life::nitrate_level", kind::property, "from and to the ion"};
const evidence between{"tankwright::life::needs_of_nitrification", kind::published,
                       "Gujer and Jenkins 1974: 4.32 g O2/g N lies within the band"};
const evidence electrons{"tankwright::life::needs_of_nitrification", kind::identity,
                         "oxygen with growth = oxygen without, less what the cells hold"};
const evidence lasts_longer{"tankwright::life::time_alkalinity_lasts", kind::property,
                            "ordered band; more water, or less used, lasts longer"};
const evidence ordered{"tankwright::life::needs_of_nitrification", kind::property, "low <= central <= high, rising"};

twl::feed_nitrogen of_feed(double kilograms, double protein) {
  return twl::nitrogen_from_feed({.food = kilograms_per_day(kilograms), .protein = fraction(protein)});
}

const estimate<mass_flow>& part_of(const twl::nitrification_needs& needs, const std::string& what) {
  return what == "oxygen"       ? needs.oxygen
         : what == "alkalinity" ? needs.alkalinity
         : what == "cells"      ? needs.cells
                                : needs.carbon_dioxide;
}

}  // namespace

TEST_CASE("nitrogen: reference table") {
  const auto from_feed = [](const reference_row& row) {
    const auto made = of_feed(row["food"], row["protein"]);
    return in_kilograms_per_day((row.has("bound") ? made.bound : made.ammonia.central).as_nitrogen());
  };
  const auto rule = [](const reference_row&) { return twl::ammonia_nitrogen_per_protein; };
  const auto ammonium = [](const reference_row& row) {
    return in_milligrams_per_litre(water::total_ammonia::from_nitrogen(milligrams_per_litre(row["N"])).as_ammonium());
  };
  const auto nitrite = [](const reference_row& row) {
    return in_milligrams_per_litre(twl::nitrite_level::from_nitrogen(milligrams_per_litre(row["N"])).as_ion());
  };
  const auto nitrate = [](const reference_row& row) {
    return in_milligrams_per_litre(twl::nitrate_level::from_nitrogen(milligrams_per_litre(row["N"])).as_ion());
  };
  const auto needs = [](const reference_row& row) {
    if (row.has("cells")) return row["N"] * twl::detail::oxygen_per_oxidised_nitrogen(row["cells"]);
    const auto all = twl::needs_of_nitrification(twl::nitrogen_load::from_nitrogen(grams_per_day(row["N"])));
    const auto& part = part_of(all, row.text("what"));
    return in_grams_per_day(row.text("end") == "low" ? part.low : part.high);
  };
  const auto bicarbonate = [](const reference_row& row) {
    const auto level = [](double number) { return water::alkalinity::from_milligrams_caco3_per_litre(number); };
    return in_grams(
        water::alkalinity_to_add({.volume = litres(row["V"]), .from = level(0.0), .target = level(row["rise"])})
            .sodium_bicarbonate);
  };
  const auto lasts = [](const reference_row& row) {
    const auto level = water::alkalinity::from_milliequivalents_per_litre;
    const auto left = twl::time_alkalinity_lasts({.load = twl::nitrogen_load::from_nitrogen(grams_per_day(row["load"])),
                                                  .net = litres(row["V"]),
                                                  .now = level(row["now"]),
                                                  .lowest = level(row["lowest"])});
    return in_days(left.lasts.value().central);
  };
  check_rows(reference_rows("life/nitrogen.csv"), {{"tankwright::water::alkalinity_to_add", bicarbonate},
                                                   {"tankwright::life::time_alkalinity_lasts", lasts},
                                                   {"tankwright::life::nitrogen_from_feed", from_feed},
                                                   {"tankwright::life::ammonia_nitrogen_per_protein", rule},
                                                   {"tankwright::water::total_ammonia", ammonium},
                                                   {"tankwright::life::nitrite_level", nitrite},
                                                   {"tankwright::life::nitrate_level", nitrate},
                                                   {"tankwright::life::needs_of_nitrification", needs}});
}

TEST_CASE("nitrogen: levels keep what they were made from, and cannot be mixed") {
  const auto kit = milligrams_per_litre(310.0);
  TW_CHECK(round_trip, twl::nitrate_level::from_ion(kit).as_ion(), kit, relative(1e-15));
  TW_CHECK(round_trip, twl::nitrate_level::from_ion(kit).as_nitrogen(), milligrams_per_litre(70.03),
           within(milligrams_per_litre(0.005)));
  CHECK(twl::nitrite_level::from_nitrogen(milligrams_per_litre(1.0)) <
        twl::nitrite_level::from_nitrogen(milligrams_per_litre(2.0)));
  static_assert(!std::is_convertible_v<twl::nitrite_level, twl::nitrate_level>);
  static_assert(!std::is_convertible_v<mass_concentration, twl::nitrite_level>);
  static_assert(!std::is_convertible_v<mass_flow, twl::nitrogen_load>);
}

TEST_CASE("nitrogen: feed") {
  const auto one = of_feed(0.1, 0.5);
  TW_HOLDS(proportional,
           std::fabs(raw(of_feed(0.2, 0.5).bound.as_nitrogen()) / raw(one.bound.as_nitrogen()) - 2.0) < 1e-14);
  TW_HOLDS(proportional,
           std::fabs(raw(of_feed(0.1, 0.25).bound.as_nitrogen()) / raw(one.bound.as_nitrogen()) - 0.5) < 1e-14);
  CHECK(one.ammonia.low < one.ammonia.central);
  CHECK(one.ammonia.central < one.ammonia.high);
  CHECK(one.ammonia.high < one.bound);
  CHECK(one.caution.text.find("sharks") != std::string_view::npos);
  check_edges(twl::food_limits, [](double x, range_policy) { return of_feed(x * 1e-3, 0.5); });
  check_edges(twl::protein_limits, [](double x, range_policy) { return of_feed(0.1, x); });
}

TEST_CASE("nitrogen: what nitrification needs") {
  const auto needs = twl::needs_of_nitrification(twl::nitrogen_load::from_nitrogen(grams_per_day(1.0)));
  TW_HOLDS(between, in_grams_per_day(needs.oxygen.low) <= 4.32 && 4.32 <= in_grams_per_day(needs.oxygen.high));
  // Ebeling et al.: 0.976 of the nitrogen becomes nitrate, the rest is in 0.197 g of cells.
  const double cells = in_grams_per_day(needs.cells.high);
  TW_CHECK(electrons, in_grams_per_day(needs.oxygen.low),
           0.976 * twl::detail::oxygen_per_oxidised_nitrogen(cells / 0.976), relative(2e-3));
  for (const auto* band : {&needs.oxygen, &needs.alkalinity, &needs.carbon_dioxide, &needs.cells}) {
    TW_HOLDS(ordered, band->low <= band->central && band->central <= band->high);
  }
  CHECK(needs.caution.text.find("alkalinity") != std::string_view::npos);
  check_edges(twl::nitrogen_load_limits, [](double x, range_policy) {
    return twl::needs_of_nitrification(twl::nitrogen_load::from_nitrogen(grams_per_day(x)));
  });
}

TEST_CASE("nitrogen: how long the alkalinity lasts") {
  const auto level = water::alkalinity::from_milliequivalents_per_litre;
  const auto of = [&](double load, double net, double now, double lowest) {
    return twl::time_alkalinity_lasts({.load = twl::nitrogen_load::from_nitrogen(grams_per_day(load)),
                                       .net = litres(net),
                                       .now = level(now),
                                       .lowest = level(lowest)});
  };
  const auto found = of(1.5, 2000.0, 2.6, 2.0);
  TW_HOLDS(lasts_longer, found.lasts->low <= found.lasts->central && found.lasts->central < found.lasts->high);
  TW_HOLDS(lasts_longer, of(1.5, 4000.0, 2.6, 2.0).lasts->low > found.lasts->low);
  TW_HOLDS(lasts_longer, found.daily_fall.low < found.daily_fall.central);
  CHECK_FALSE(of(0.0, 2000.0, 2.6, 2.0).lasts.has_value());
  CHECK(found.caution.text.find("Measure") != std::string_view::npos);
  CHECK_THROWS_AS((void)of(1.5, 2000.0, 1.9, 2.0), invalid_input);
  CHECK_THROWS_AS((void)of(-1.5, 2000.0, 2.6, 2.0), invalid_input);
  CHECK_THROWS_AS((void)of(1.5, 0.0, 2.6, 2.0), invalid_input);
  CHECK_THROWS_AS((void)of(1.5, 2000.0, 2.6, -2.0), invalid_input);
}

TEST_CASE("nitrogen: bands and needs against the equations, by hand") {
  const evidence rule{"tankwright::life::nitrogen_from_feed", kind::from_memory,
                      "Timmons and Ebeling 2007: 0.092 F PC, 25 % either way; 0.16 g of nitrogen in a gram of protein"};
  const auto fed = twl::nitrogen_from_feed({.food = grams_per_day(100.0), .protein = fraction(0.5)});
  TW_CHECK(rule, fed.ammonia.low.as_nitrogen(), grams_per_day(0.75 * 4.6), relative(1e-12));
  TW_CHECK(rule, fed.ammonia.central.as_nitrogen(), grams_per_day(4.6), relative(1e-12));
  TW_CHECK(rule, fed.ammonia.high.as_nitrogen(), grams_per_day(1.25 * 4.6), relative(1e-12));
  TW_CHECK(rule, fed.bound.as_nitrogen(), grams_per_day(8.0), relative(1e-12));
  CHECK_FALSE(fed.ammonia.reason.empty());
  // NH4+ + 1.83 O2 + 1.97 HCO3- -> 0.0244 C5H7O2N + 0.976 NO3- + 1.86 CO2, for 14.007 g of nitrogen; O2 31.998, CO2
  // 44.009, C5H7O2N 113.116, an equivalent of CaCO3 half of 100.086 g (C 12.011, H 1.008, N 14.007, O 15.999, Ca 40.078).
  const evidence equation{"tankwright::life::needs_of_nitrification", kind::identity,
                          "stoichiometry by IUPAC weights, by hand"};
  const auto needs = twl::needs_of_nitrification(twl::nitrogen_load::from_nitrogen(grams_per_day(14.007)));
  TW_CHECK(equation, needs.oxygen.low, grams_per_day(1.83 * 31.998), relative(1e-12));
  TW_CHECK(equation, needs.oxygen.central, grams_per_day(2.0 * 31.998), relative(1e-12));
  TW_CHECK(equation, needs.oxygen.high, grams_per_day(2.0 * 31.998), relative(1e-12));
  TW_CHECK(equation, needs.alkalinity.low, grams_per_day(1.97 * 50.043), relative(1e-5));
  TW_CHECK(equation, needs.alkalinity.central, grams_per_day(2.0 * 50.043), relative(1e-5));
  TW_CHECK(equation, needs.alkalinity.high, grams_per_day(2.0 * 50.043), relative(1e-5));
  TW_CHECK(equation, needs.carbon_dioxide.low, grams_per_day(1.86 * 44.009), relative(1e-12));
  TW_CHECK(equation, needs.carbon_dioxide.central, grams_per_day(2.0 * 44.009), relative(1e-12));
  TW_CHECK(equation, needs.carbon_dioxide.high, grams_per_day(2.0 * 44.009), relative(1e-12));
  TW_CHECK(equation, needs.cells.low, grams_per_day(0.0), within(grams_per_day(0.0)));
  TW_CHECK(equation, needs.cells.central, grams_per_day(0.0244 * 113.116), relative(1e-12));
  TW_CHECK(equation, needs.cells.high, grams_per_day(0.0244 * 113.116), relative(1e-12));
  for (const auto* band : {&needs.oxygen, &needs.alkalinity, &needs.carbon_dioxide, &needs.cells}) {
    CHECK_FALSE(band->reason.empty());
  }
  TW_CHECK(equation, twl::detail::oxygen_per_oxidised_nitrogen(0.1),
           2.0 * 31.998 / 14.007 - 0.1 * 5.0 * 31.998 / 113.116, relative(1e-12));
  TW_CHECK(round_trip, twl::nitrite_level::from_nitrogen(milligrams_per_litre(14.007)).as_ion(),
           milligrams_per_litre(46.005), relative(1e-12));  // 14.007 + 2 x 15.999
  TW_CHECK(round_trip, twl::nitrate_level::from_nitrogen(milligrams_per_litre(14.007)).as_ion(),
           milligrams_per_litre(62.004), relative(1e-12));
}

TEST_CASE("nitrogen: the fall of the alkalinity and its band, by hand") {
  const evidence fall{"tankwright::life::time_alkalinity_lasts", kind::identity,
                      "1.97 to 2 equivalents a mole, by hand"};
  const auto level = water::alkalinity::from_milliequivalents_per_litre;
  const auto of = [&](double grams_a_day, double now, double lowest, double net = 100.0) {
    return twl::time_alkalinity_lasts({.load = twl::nitrogen_load::from_nitrogen(grams_per_day(grams_a_day)),
                                       .net = litres(net),
                                       .now = level(now),
                                       .lowest = level(lowest)});
  };
  // 1.4007 g a day into 100 L: 1 mmol/L a day.
  const auto found = of(1.4007, 2.5, 1.5);
  TW_CHECK(fall, in_milliequivalents_per_litre(found.daily_fall.low), 1.97, relative(1e-12));
  TW_CHECK(fall, in_milliequivalents_per_litre(found.daily_fall.central), 2.0, relative(1e-12));
  TW_CHECK(fall, in_milliequivalents_per_litre(found.daily_fall.high), 2.0, relative(1e-12));
  TW_CHECK(fall, found.lasts->low, days(0.5), relative(1e-12));
  TW_CHECK(fall, found.lasts->central, days(0.5), relative(1e-12));
  TW_CHECK(fall, found.lasts->high, days(1.0 / 1.97), relative(1e-12));
  CHECK_FALSE(found.daily_fall.reason.empty());
  CHECK_FALSE(found.lasts->reason.empty());
  CHECK(of(1.4007, 2.0, 2.0).lasts->central == days(0.0));  // all of it is used: an answer
  const auto load = [](double x) { return twl::nitrogen_load::from_nitrogen(grams_per_day(x)); };
  CHECK(load(1.0) == load(1.0));
  CHECK_FALSE(load(1.0) == load(2.0));
  CHECK(load(1.0) < load(2.0));
  const auto nitrite = [](double x) { return twl::nitrite_level::from_nitrogen(milligrams_per_litre(x)); };
  CHECK(nitrite(1.0) == nitrite(1.0));
  CHECK_FALSE(nitrite(1.0) == nitrite(2.0));
  check_ranges("life::time_alkalinity_lasts", {TW_RANGE("nitrogen load", 0.0, 1e9, of(x, 2.5, 1.5)),
                                               TW_RANGE("net volume", 1e-3, 1e10, of(1.0, 2.5, 1.5, x)),
                                               TW_RANGE("alkalinity now", 0.0, 1e4, of(1.0, x, 0.0)),
                                               TW_RANGE("lowest alkalinity", 0.0, 1e4, of(1.0, 1e4, x))});
  const auto feed = [](double grams_a_day, double protein) {
    return twl::nitrogen_from_feed({.food = grams_per_day(grams_a_day), .protein = fraction(protein)});
  };
  check_ranges("life::nitrogen_from_feed",
               {TW_RANGE("food", 0.0, 1e9, feed(x, 0.5)), TW_RANGE("protein", 0.0, 1.0, feed(1.0, x))});
  check_ranges("life::needs_of_nitrification",
               {TW_RANGE("nitrogen load", 0.0, 1e9, twl::needs_of_nitrification(load(x)))});
}

TEST_CASE("nitrogen: alkalinity that no water has is told from more than this water has") {
  const auto said = [](double now, double lowest) -> std::string {
    const auto level = water::alkalinity::from_milliequivalents_per_litre;
    try {
      (void)twl::time_alkalinity_lasts({.load = twl::nitrogen_load::from_nitrogen(grams_per_day(1.0)),
                                        .net = litres(100.0),
                                        .now = level(now),
                                        .lowest = level(lowest)});
    } catch (const invalid_input& e) {
      return e.what();
    }
    return {};
  };
  CHECK(said(1e4, 1.00001e4).find("is not possible") != std::string::npos);
  CHECK(said(2.0, 2.1).ends_with("is above what the water has"));
}
