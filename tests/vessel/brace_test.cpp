// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/brace.hpp>

#include <tankwright/core/units.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

TEST_CASE("brace: reference table") {
  const auto rails = [](const reference_row& row) {
    return vs::rails_of({.height = metres(row["H"]),
                         .level = metres(row["H"]),
                         .water_density = kilograms_per_cubic_metre(row["rho"])});
  };
  check_rows(reference_rows("vessel/brace.csv"),
             {{"tankwright::vessel::rails_of",
               [&](const reference_row& row) {
                 return in_newtons_per_metre(row.text("give") == "top" ? rails(row).top : rails(row).bottom);
               }},
              {"tankwright::vessel::pull_of_braces", [&](const reference_row& row) {
                 return in_newtons(vs::pull_of_braces({.rail = metres(row["rail"]),
                                                       .braces = static_cast<int>(row["braces"]),
                                                       .load = rails(row).top})
                                       .largest);
               }}});
}

TEST_CASE("brace: the rails take all of the push, and the water's moment") {
  const evidence statics{"tankwright::vessel::rails_of", kind::identity, "forces and moments balance"};
  for (const double level : {0.0, 0.4, 1.0, 1.3}) {
    const auto rails =
        vs::rails_of({.height = metres(1), .level = metres(level), .water_density = kilograms_per_cubic_metre(1000)});
    const auto push = vs::push_on({.width = metres(1),
                                   .height = metres(1),
                                   .level = metres(level),
                                   .water_density = kilograms_per_cubic_metre(1000)});
    TW_CHECK(statics, rails.top + rails.bottom, push.force / metres(1), relative(1e-14));
    TW_CHECK(statics, rails.top, push.about_lower_edge / (metres(1) * metres(1)), relative(1e-14));
  }
}

TEST_CASE("brace: continuous rails") {
  const evidence continuous{"tankwright::vessel::pull_of_braces", kind::identity,
                            "reactions of continuous beams: 5/4; 11/10; 8/7, 13/14"};
  const auto pull = [](int braces) {
    return vs::pull_of_braces({.rail = metres(braces + 1.0), .braces = braces, .load = newtons_per_metre(1000)});
  };
  TW_CHECK(continuous, pull(1).largest, newtons(1250), relative(1e-12));
  TW_CHECK(continuous, pull(1).by_tributary_length, newtons(1000), relative(1e-12));
  TW_CHECK(continuous, pull(2).braces[0], newtons(1100), relative(1e-12));
  TW_CHECK(continuous, pull(2).braces[1], newtons(1100), relative(1e-12));
  TW_CHECK(continuous, pull(3).braces[0], newtons(8000.0 / 7), relative(1e-12));
  TW_CHECK(continuous, pull(3).braces[1], newtons(13000.0 / 14), relative(1e-12));
  CHECK(pull(20).braces.size() == 20);
  CHECK(pull(1).caution.text.find("licensed engineer") != std::string_view::npos);
  check_edges(vs::detail::positive_length("rail"), [](double x, range_policy) {
    return vs::pull_of_braces({.rail = metres(x), .braces = 1, .load = newtons_per_metre(1)});
  });
  check_edges({"load", "N/m", vs::detail::possible_force_from_zero}, [](double x, range_policy) {
    return vs::pull_of_braces({.rail = metres(1), .braces = 1, .load = newtons_per_metre(x)});
  });
  CHECK_THROWS_AS((void)pull(0), invalid_input);
  CHECK_THROWS_AS((void)pull(21), invalid_input);
  CHECK_THROWS_AS(
      (void)vs::rails_of({.height = metres(0), .level = metres(1), .water_density = kilograms_per_cubic_metre(1000)}),
      invalid_input);
}
