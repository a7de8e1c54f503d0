// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <numbers>
#include <tankwright/plan/inputs/vessel_inputs.hpp>

#include "plan/lagoon.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence shapes{"tankwright::plan::shape_of", kind::identity, "geometry by hand"};
const evidence items{"tankwright::plan::item_of", kind::identity, "phase relations by hand"};
const evidence slopes{"tankwright::plan::slope_of", kind::wiring, "as given"};
const evidence inputs{"tankwright::plan::inputs_of", kind::wiring, "as given"};

}  // namespace

TEST_CASE("vessel inputs: the shape between the inner faces") {
  plan::build build = lagoon();
  TW_CHECK(shapes, plan::shape_of(*build.vessel).capacity(), litres(2040.0), relative(1e-14));
  give(build,
       {{"vessel.measured", "outside"}, {"vessel.wall_thickness", "20 mm"}, {"vessel.floor_thickness", "30 mm"}});
  TW_CHECK(shapes, plan::shape_of(*build.vessel).capacity(), cubic_metres(2.36 * 0.96 * 0.82), relative(1e-13));
  plan::build round;
  give(round, {{"vessel.shape", "cylinder"}, {"vessel.diameter", "1 m"}, {"vessel.height", "0.8 m"}});
  TW_CHECK(shapes, plan::shape_of(*round.vessel).capacity(), cubic_metres(std::numbers::pi / 4.0 * 0.8),
           relative(1e-13));
  plan::build bowed;  // a bow of half its chord is half a disc
  give(bowed, {{"vessel.shape", "bow front"},
               {"vessel.length", "1 m"},
               {"vessel.width", "0.5 m"},
               {"vessel.bow", "0.5 m"},
               {"vessel.height", "1 m"}});
  TW_CHECK(shapes, plan::shape_of(*bowed.vessel).capacity(), cubic_metres(0.5 + std::numbers::pi / 8.0),
           relative(1e-12));
  plan::clear(build, "vessel.wall_thickness");
  CHECK_THROWS_AS((void)plan::shape_of(*build.vessel), invalid_input);
}

TEST_CASE("vessel inputs: sand, rock and equipment") {
  const plan::build build = lagoon();
  const auto shape = plan::shape_of(*build.vessel);
  const auto sand = plan::item_of(build.vessel->sand[0], shape, "sand");
  TW_CHECK(items, sand.envelope.central.value(), cubic_metres(2.4 * 0.16), relative(1e-13));
  const auto arch = plan::item_of(build.vessel->rock[1], shape, "arch");
  TW_CHECK(items, arch.solids.central.value(), cubic_metres(5.1 / 1023.343), relative(1e-5));  // S 35, 25 degC
  TW_CHECK(items, plan::item_of(build.vessel->equipment[0], "pumps").envelope.central.value(), litres(3.0),
           relative(1e-15));
  plan::rock raised;
  raised.level_before = metres(0.50);
  raised.level_after = metres(0.52);
  TW_CHECK(items, plan::item_of(raised, shape, "raised").solids.central.value(), litres(48.0), relative(1e-12));
  const auto slope = plan::slope_of(build.vessel->sand[0]);
  REQUIRE(slope);
  TW_CHECK(slopes, slope->run.get(), metres(1.0), relative(1e-15));
  TW_CHECK(slopes, slope->repose, degrees(33.0), relative(1e-15));
  CHECK_FALSE(plan::slope_of(plan::sand{}));
}

TEST_CASE("vessel inputs: the whole section, with what is taken where nothing is said") {
  plan::build build = lagoon();
  auto in = plan::inputs_of(*build.vessel);
  CHECK(in.items().size() == 4);
  CHECK(in.stages.size() == 4);
  CHECK(in.panels[1].panel.material->name == vessel::cast_acrylic.name);
  TW_CHECK(inputs, in.panels[0].lower_edge, metres(0.2), relative(1e-15));
  TW_CHECK(inputs, in.floor->code.value, kilopascals(10.0), relative(1e-15));
  TW_CHECK(inputs, in.brace->material.modulus, gigapascals(10.0), relative(1e-15));
  TW_CHECK(inputs, in.brace->on_it[1].load.get(), newtons(12.0 * 9.80665), relative(1e-14));
  TW_CHECK(inputs, in.view->rock.panel_index.value(), 1.52, relative(1e-15));
  CHECK(in.lids[0].moisture_strain == 0.001);
  give(build, {{"vessel.panel[1].allowable", "4 MPa"}});
  for (const std::string_view path : {"vessel.stages", "vessel.floor.built_for", "vessel.panel[1].label"}) {
    plan::clear(build, path);
  }
  in = plan::inputs_of(*build.vessel);
  TW_CHECK(inputs, in.stages[0], metres(0.2), relative(1e-14));
  TW_CHECK(inputs, in.floor->code.value, psf(40.0), relative(1e-15));
  TW_CHECK(inputs, in.panels[0].panel.material->allowable.value, megapascals(4.0), relative(1e-15));
  CHECK(in.panels[0].panel.label == "panel 1");
  plan::clear(build, "vessel.height");
  CHECK_THROWS_AS((void)plan::inputs_of(*build.vessel), invalid_input);
}
