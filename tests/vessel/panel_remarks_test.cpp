// SPDX-License-Identifier: BSL-1.0
#include <algorithm>
#include <cmath>
#include <tankwright/vessel/panel_remarks.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

vs::panel pane(double millimetres_thick, const vs::panel_material& material = vs::annealed_glass) {
  return {.width = metres(2.4),
          .height = metres(0.8),
          .thickness = millimetres(millimetres_thick),
          .edges = vs::panel_edges::all_supported,
          .material = material};
}

const vs::remark* find(const std::vector<vs::remark>& all, vs::panel_remark about) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const auto& r) { return r.about == about; });
  return found == all.end() ? nullptr : &*found;
}

bool says(const vs::panel& p, vs::panel_remark about) { return find(vs::unusual_in(p), about) != nullptr; }

}  // namespace

TEST_CASE("panel remarks: 45 MPa for glass, 1.9 mm and 19 cm do not pass without remark") {
  // Issue 12, item 30.
  auto strong = pane(18.2);
  strong.material = [] {
    auto m = vs::annealed_glass;
    m.allowable.value = megapascals(45.0);
    return m;
  }();
  const auto remarks = vs::unusual_in(strong);
  REQUIRE(remarks.size() == 1);
  CHECK(remarks[0].about == vs::panel_remark::allowable_above_usual);
  CHECK(remarks[0].value == 45e6);
  CHECK(remarks[0].text.find("45 MPa is an unusually high allowable stress for annealed glass") == 0);
  CHECK(says(pane(1.9), vs::panel_remark::thinner_than_sold));
  CHECK(says(pane(190), vs::panel_remark::thicker_than_sold));
  CHECK(says(pane(190), vs::panel_remark::thick_for_its_size));
  const auto thick = vs::unusual_in(pane(190));
  CHECK(find(thick, vs::panel_remark::thicker_than_sold)->text.find("190 mm is unusually thick for annealed glass") ==
        0);
}

TEST_CASE("panel remarks: a usual panel draws none, the name of a size does") {
  const evidence usual{"tankwright::vessel::unusual_in", kind::common_practice, "panels as they are built"};
  TW_HOLDS(usual, vs::unusual_in(pane(18.2)).empty());
  TW_HOLDS(usual, vs::unusual_in(pane(30.5, vs::cast_acrylic)).empty());
  const auto named = vs::unusual_in(pane(19));
  REQUIRE(named.size() == 1);
  CHECK(named[0].about == vs::panel_remark::nominal_thickness);
  CHECK(named[0].text.find("may be as thin as 18 mm") != std::string::npos);
  TW_HOLDS(usual, vs::unusual_in(pane(19, vs::cast_acrylic)).empty());
}

TEST_CASE(
    "panel remarks: the allowable stresses that the library offers are usual, and the ends are those of the sources") {
  const evidence ends{"tankwright::vessel::unusual_in", kind::from_memory,
                      "EN 16612, 45 MPa x 0.29/1.8 = 7.25 MPa; acrylic 5 to 6 MPa"};
  for (const auto& allowable : vs::annealed_glass_allowables) {
    auto p = pane(18.2);
    p.allowable = allowable;
    TW_HOLDS(ends, vs::unusual_in(p).empty());
  }
  for (const auto& edge : vs::annealed_glass_edges) {
    auto p = pane(18.2);
    p.allowable = vs::for_permanent_load(edge);
    TW_HOLDS(ends, vs::unusual_in(p).empty());
  }
  TW_CHECK(ends, vs::usual_panels[0].allowable.high, 45e6 * 0.29 / 1.8, relative(0.01));
  for (const auto& q : {vs::cast_acrylic_long_term_stress.low, vs::cast_acrylic_long_term_stress.high}) {
    TW_HOLDS(ends, vs::usual_panels[1].allowable.contains(q.value()));
  }
  // An independent condition on the thickness: the sizes of float glass are usual, a step beyond them is not.
  const evidence sizes{"tankwright::vessel::unusual_in", kind::published,
                       "ASTM E1300 Table 4: 2.92 and 24.61 mm are the least of 3 and 25 mm"};
  TW_HOLDS(sizes, vs::usual_panels[0].thickness.contains(0.00292));
  TW_HOLDS(sizes, vs::usual_panels[0].thickness.contains(0.02461));
}

TEST_CASE("panel remarks: the other slips") {
  auto soft = vs::annealed_glass;
  soft.modulus = gigapascals(7.17);
  CHECK(says(pane(18.2, soft), vs::panel_remark::modulus_unusual));
  auto heavy = vs::cast_acrylic;
  heavy.density = kilograms_per_cubic_metre(2500);
  CHECK(says(pane(30, heavy), vs::panel_remark::density_unusual));
  auto odd = vs::cast_acrylic;
  odd.poisson = 0.22;
  CHECK(says(pane(30, odd), vs::panel_remark::poisson_unusual));
  auto weak = vs::annealed_glass;
  weak.allowable.value = kilopascals(50);  // MPa meant
  CHECK(says(pane(18.2, weak), vs::panel_remark::allowable_below_usual));
  auto large = pane(18.2);
  large.width = metres(7);
  CHECK(says(large, vs::panel_remark::large_pane));
  // As large as panes are made, as thick as a tenth of the shorter side: no remark yet.
  const auto sized = [](double w, double h, double t) {
    auto p = pane(1e3 * t);
    p.width = metres(w);
    p.height = metres(h);
    p.thickness = metres(t);
    return p;
  };
  const auto more = [](double x) { return std::nextafter(x, 10.0); };
  CHECK_FALSE(says(sized(6, 3.21, 0.02), vs::panel_remark::large_pane));
  CHECK(says(sized(more(6), 3.21, 0.02), vs::panel_remark::large_pane));
  CHECK(says(sized(6, more(3.21), 0.02), vs::panel_remark::large_pane));
  CHECK_FALSE(says(sized(2, 3, 0.2), vs::panel_remark::thick_for_its_size));
  CHECK(says(sized(2, 3, more(0.2)), vs::panel_remark::thick_for_its_size));
  // A material of another name: only what the size alone tells.
  auto own = vs::annealed_glass;
  own.name = "polycarbonate";
  own.allowable.value = megapascals(20);
  own.density = kilograms_per_cubic_metre(1200);
  CHECK(vs::unusual_in(pane(19, own)).empty());
}

TEST_CASE("panel remarks: impossible panels are refused as by the panel itself") {
  auto p = pane(18.2);
  p.width = metres(std::nan(""));
  CHECK_THROWS_AS((void)vs::unusual_in(p), invalid_input);
  CHECK_THROWS_AS((void)vs::unusual_in(pane(900)), invalid_input);
}
