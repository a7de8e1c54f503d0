// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/lid.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

vs::lid acrylic(double thickness_mm, double span) {
  return {.span = metres(span), .thickness = millimetres(thickness_mm), .material = vs::cast_acrylic, .label = "cover"};
}

}  // namespace

TEST_CASE("lid: reference table") {
  check_rows(reference_rows("vessel/lid.csv"),
             {{"tankwright::vessel::sag_of", [](const reference_row& row) {
                 vs::panel_material m = vs::cast_acrylic;
                 m.modulus = gigapascals(row["E"]);
                 m.density = kilograms_per_cubic_metre(row["rho"]);
                 vs::lid lid{.span = metres(row["L"]), .thickness = millimetres(row["t"]), .material = m};
                 if (row.has("strain")) lid.moisture_strain = row["strain"];
                 const auto r = vs::sag_of(lid);
                 return in_millimetres(row.text("give") == "bow" ? r.moisture_bow : r.sag);
               }}});
}

TEST_CASE("lid: long-term sag, stress and extra load") {
  const evidence strip{"tankwright::vessel::sag_of", kind::identity, "5 q L4 / 384 E I, q L2/8 over t2/6"};
  auto lid = acrylic(12, 0.6);
  lid.extra = pascals(60);
  const double q = 1190 * 9.80665 * 0.012 + 60, i = std::pow(0.012, 3) / 12;
  const auto r = vs::sag_of(lid);
  TW_CHECK(strip, r.load, pascals(q), relative(1e-14));
  TW_CHECK(strip, r.sag, metres(5 * q * std::pow(0.6, 4) / (384 * 3e9 * i)), relative(1e-14));
  TW_CHECK(strip, r.long_term_sag.high, metres(5 * q * std::pow(0.6, 4) / (384 * 1.2e9 * i)), relative(1e-14));
  TW_CHECK(strip, r.long_term_sag.low, metres(5 * q * std::pow(0.6, 4) / (384 * 1.5e9 * i)), relative(1e-14));
  TW_CHECK(strip, r.stress, pascals(6 * q * 0.36 / 8 / (0.012 * 0.012)), relative(1e-14));
  TW_CHECK(strip, r.utilisation, r.stress / megapascals(5), relative(1e-14));
  TW_CHECK(strip, r.span_over_sag, 0.6 / r.long_term_sag.central.value(), relative(1e-14));
  CHECK(r.moisture_bow == metres(0));
  TW_CHECK(strip, vs::sag_of(acrylic(12, 0.6)).load, pascals(1190 * 9.80665 * 0.012), relative(1e-14));  // by itself
  CHECK(r.caution.text.find("licensed engineer") != std::string_view::npos);
}

TEST_CASE("lid: impossible lids are refused by name") {
  CHECK_NOTHROW((void)vs::sag_of(acrylic(12, 1000)));
  for (const double bad : {0.0, -1.0, std::nan(""), 1e100}) {
    CHECK_THROWS_AS((void)vs::sag_of(acrylic(bad, 1)), invalid_input);
    CHECK_THROWS_AS((void)vs::sag_of(acrylic(12, bad)), invalid_input);
  }
  check_edges({"cover: extra load", "Pa", vs::detail::possible_pressure}, [](double x, range_policy) {
    auto lid = acrylic(12, 1);
    lid.extra = pascals(x);
    return vs::sag_of(lid);
  });
  check_edges({"cover: moisture strain", "", {0.0, 0.05}}, [](double x, range_policy) {
    auto lid = acrylic(12, 1);
    lid.moisture_strain = x;
    return vs::sag_of(lid);
  });
  CHECK_THROWS_WITH_AS((void)vs::sag_of(acrylic(1000, 0.5)),
                       "tankwright::vessel::sag_of: cover: thickness = 1 m is not less than the span, 0.5 m: that is a "
                       "block, not a lid",
                       invalid_input);
  auto soft = acrylic(12, 1);
  vs::panel_material none = vs::cast_acrylic;
  none.modulus = pascals(0);
  soft.material = none;
  CHECK_THROWS_AS((void)vs::sag_of(soft), invalid_input);
}
