// SPDX-License-Identifier: BSL-1.0
#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence shared{"tankwright::decisions::add_to", kind::identity, "volumes by hand"};
const evidence made{"tankwright::decisions::case_of", kind::identity, "volumes by hand"};

}  // namespace

TEST_CASE("vessel case: the state gets the water net of sand, rock and equipment") {
  plan::build build;  // 2 m by 1 m by 0.5 m of water; 0.1 m of sand with 0.45 of pores is 0.11 m3 of grains
  give(build, {{"vessel.length", "2 m"},
               {"vessel.width", "1 m"},
               {"vessel.height", "0.6 m"},
               {"vessel.water_level", "0.5 m"},
               {"vessel.sand[1].depth", "0.1 m"},
               {"vessel.equipment[1].volume", "10 L"},
               {"vessel.equipment[1].mass", "5 kg"}});
  const decisions::situation s{build};
  const double pores = vessel::aragonite_sand.pores.central.value();
  const double grains = 0.2 * (1.0 - pores);
  REQUIRE(s.state().display_water);
  TW_CHECK(shared, s.state().display_water->central, cubic_metres(1.0 - grains - 0.01), relative(1e-13));
  TW_CHECK(shared, *s.state().display_surface, square_metres(2.0), relative(1e-14));
  TW_CHECK(shared, *s.state().display_depth, metres(0.5), relative(1e-15));
  TW_CHECK(made, s.vessel().contents().gross, cubic_metres(1.0), relative(1e-14));
  CHECK(s.state().why_no_display.empty());
  CHECK_FALSE(s.state().sump_water);
}

TEST_CASE("vessel case: what cannot be worked out is missing and says why, the rest is there") {
  decisions::water_basis brine;
  brine.salinity = practical_salinity{250.0};  // outside the range of the density
  const auto c = decisions::case_of(*lagoon().vessel, brine);
  CHECK_THROWS_AS((void)c.density(), out_of_range);
  CHECK_THROWS_AS((void)c.contents(), error);
  decisions::system_state state;
  decisions::add_to(state, c);
  CHECK_FALSE(state.display_water);
  CHECK_FALSE(state.why_no_display.empty());
  TW_CHECK(shared, *state.display_surface, square_metres(2.4), relative(1e-14));
}
