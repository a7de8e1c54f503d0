// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/friction_cross_checks.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twp = tankwright::plumbing;

namespace {

twp::reynolds_number re_of(const reference_row& row) { return twp::reynolds_number{row["Re"]}; }
twp::relative_roughness e_of(const reference_row& row) { return twp::relative_roughness{row["eD"]}; }

evidence near_colebrook(const char* function) {
  return {std::string{"tankwright::plumbing::"} + function, kind::property,
          "distance from Colebrook-White as its source states"};
}

}  // namespace

TEST_CASE("other friction formulas: reference table") {
  check_rows(reference_rows("plumbing/friction_cross_checks.csv"),
             {{"tankwright::plumbing::friction_factor_haaland",
               [](const reference_row& row) { return twp::friction_factor_haaland(re_of(row), e_of(row)).value(); }},
              {"tankwright::plumbing::friction_factor_churchill",
               [](const reference_row& row) { return twp::friction_factor_churchill(re_of(row), e_of(row)).value(); }},
              {"tankwright::plumbing::friction_factor_serghides",
               [](const reference_row& row) { return twp::friction_factor_serghides(re_of(row), e_of(row)).value(); }},
              {"tankwright::plumbing::friction_factor_blasius",
               [](const reference_row& row) { return twp::friction_factor_blasius(re_of(row)).value(); }},
              {"tankwright::plumbing::head_loss_hazen_williams", [](const reference_row& row) {
                 const bool si = row.id == "HW-SI";
                 const twp::pipe_run run{.bore = twp::pipe_bore{si ? metres(row["d"]) : inches(row["d"])},
                                         .length = si ? metres(row["L"]) : feet(row["L"])};
                 const auto flow = si ? cubic_metres_per_second(row["Q"]) : us_gallons_per_minute(row["Q"]);
                 const head h = twp::head_loss_hazen_williams(run, flow, twp::hazen_williams_c{row["C"]});
                 return si ? in_metres(h) : in_feet(h);
               }}});
}

TEST_CASE("other friction formulas: as close to Colebrook-White as they are said to be") {
  for (double re = 4e3; re <= 1e8; re *= 1.3) {
    for (const double e : {0.0, 1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 5e-2}) {
      const twp::reynolds_number r{re};
      const twp::relative_roughness rough{e};
      const auto f = twp::friction_factor(r, rough);
      TW_CHECK(near_colebrook("friction_factor_haaland"), twp::friction_factor_haaland(r, rough), f, relative(0.015));
      TW_CHECK(near_colebrook("friction_factor_churchill"), twp::friction_factor_churchill(r, rough), f,
               relative(0.032));
      TW_CHECK(near_colebrook("friction_factor_serghides"), twp::friction_factor_serghides(r, rough), f,
               relative(e > 0.0 ? 0.0037 : 0.005));
      if (e == 0.0 && re <= 1e5) {
        TW_CHECK(near_colebrook("friction_factor_blasius"), twp::friction_factor_blasius(r), f, relative(0.03));
      }
    }
  }
}

TEST_CASE("other friction formulas: edges of the ranges") {
  const twp::relative_roughness rough{1e-4};
  check_edges(twp::reynolds_haaland_limits, [&](double re, range_policy policy) {
    return twp::friction_factor_haaland(twp::reynolds_number{re}, rough, policy);
  });
  check_edges(twp::reynolds_churchill_limits, [&](double re, range_policy policy) {
    return twp::friction_factor_churchill(twp::reynolds_number{re}, rough, policy);
  });
  check_edges(twp::reynolds_serghides_limits, [&](double re, range_policy policy) {
    return twp::friction_factor_serghides(twp::reynolds_number{re}, rough, policy);
  });
  check_edges(twp::reynolds_blasius_limits, [&](double re, range_policy policy) {
    return twp::friction_factor_blasius(twp::reynolds_number{re}, policy);
  });
  check_edges(twp::hazen_williams_c_limits, [&](double c, range_policy) {
    return twp::head_loss_hazen_williams({.bore = twp::pipe_bore{inches(2.067)}, .length = feet(100.0)},
                                         us_gallons_per_minute(30.0), twp::hazen_williams_c{c});
  });
}
