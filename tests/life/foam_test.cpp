// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/foam.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {
const evidence contact{"tankwright::life::foam_contact_of", kind::identity,
                       "50 L at 1500 L/h: 120 s; 1500 L/h on 1000 L: 1.5/h"};

twl::foam_contact of(double litres_in_column, double flow, double salinity,
                     range_policy policy = range_policy::published) {
  return twl::foam_contact_of({.water_in_column = litres(litres_in_column),
                               .flow = litres_per_hour(flow),
                               .net = litres(1000.0),
                               .salinity = practical_salinity{salinity},
                               .temperature = celsius(25.0)},
                              policy);
}
}  // namespace

TEST_CASE("foam: reference table") {
  const auto surface = [](const reference_row& row) {
    return raw(twl::bubble_surface(fraction(row["phi"]), millimetres(row["d"])));
  };
  const auto salt = [](const reference_row&) { return twl::foam_salt_limits.published.low; };
  check_rows(reference_rows("life/foam.csv"),
             {{"tankwright::life::bubble_surface", surface}, {"tankwright::life::foam_salt_limits", salt}});
}

TEST_CASE("foam: contact and passes, with the rule that the verdicts rest on") {
  const auto good = of(50.0, 1500.0, 35.0);
  TW_CHECK(contact, good.time, seconds(120.0), relative(1e-14));
  TW_CHECK(contact, good.passes, per_hour(1.5), relative(1e-14));
  CHECK(good.long_enough);
  CHECK(good.often_enough);
  CHECK(good.rule.find("from memory") != std::string_view::npos);
  CHECK(good.caution.text.find("erratic") != std::string_view::npos);
  CHECK_FALSE(of(20.0, 1500.0, 35.0).long_enough);
  CHECK_FALSE(of(50.0, 900.0, 35.0).often_enough);
}

TEST_CASE("foam: bad input") {
  CHECK_THROWS_AS((void)of(50.0, 1500.0, 14.0), out_of_range);  // 14.2 g/L
  (void)of(50.0, 1500.0, 16.0);
  (void)of(50.0, 1500.0, 5.0, extrapolate);
  CHECK_THROWS_AS((void)of(0.0, 1500.0, 35.0), invalid_input);
  CHECK_THROWS_AS((void)of(50.0, 0.0, 35.0), invalid_input);
  CHECK_THROWS_AS((void)twl::bubble_surface(fraction(1.0), millimetres(1.0)), invalid_input);
  CHECK_THROWS_AS((void)twl::bubble_surface(fraction(0.1), millimetres(0.0)), invalid_input);
}

TEST_CASE("foam: verdicts at the ends of the rules: a minute and a half, once an hour") {
  CHECK(of(50.0, 2000.0, 35.0).long_enough);  // 90 s
  CHECK_FALSE(of(50.0, 2001.0, 35.0).long_enough);
  CHECK(of(50.0, 1000.0, 35.0).often_enough);
  CHECK_FALSE(of(50.0, 999.5, 35.0).often_enough);
}

TEST_CASE("foam: what is taken and what is refused") {
  const auto with_net = [](double net) {
    return twl::foam_contact_of({.water_in_column = litres(50.0),
                                 .flow = litres_per_hour(100.0),
                                 .net = litres(net),
                                 .salinity = practical_salinity{35.0},
                                 .temperature = celsius(25.0)});
  };
  check_ranges("life::foam_contact_of",
               {TW_RANGE("water in the column", 1e-6, 1e10, of(x, 100.0, 35.0)),
                TW_RANGE("flow", 1e-6, 1e10, of(50.0, x, 35.0)), TW_RANGE("net volume", 1e-3, 1e10, with_net(x))});
  check_ranges(
      "life::bubble_surface",
      {{"gas share", 0.0, 1.0, [](double x) { (void)twl::bubble_surface(fraction(x), millimetres(1.0)); }, false, true},
       TW_RANGE("bubble diameter", 1e-6, 1e3, twl::bubble_surface(fraction(0.1), millimetres(x)))});
}
