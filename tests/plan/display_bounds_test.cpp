// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <numbers>
#include <tankwright/plan/rules/display_bounds.hpp>

#include "plan/lagoon.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

const evidence bounds{"tankwright::plan::validate", kind::identity, "geometry by hand"};
const evidence sump{"tankwright::plan::validate", kind::identity, "geometry by hand"};

}  // namespace

TEST_CASE("display bounds: a box measured inside") {
  const auto d = plan::rules::bounds_of(lagoon());
  REQUIRE(d);
  TW_CHECK(bounds, d->rim.most, metres(0.85), relative(1e-15));
  TW_CHECK(bounds, d->wall.most, metres(2.4), relative(1e-15));
  TW_CHECK(bounds, d->line.most, metres(2.6), relative(1e-15));  // 5, 12, 13
  TW_CHECK(bounds, d->over_walls.slack, metres(0.3), relative(1e-15));
  TW_CHECK(bounds, d->around.most, metres(6.8), relative(1e-15));
  TW_CHECK(bounds, d->floor().most, square_metres(2.4), relative(1e-15));
  TW_CHECK(bounds, d->floor().slack, square_metres(0.072), relative(1e-14));
  TW_CHECK(bounds, d->capacity().most, litres(2040.0), relative(1e-14));
  TW_CHECK(bounds, d->surface_at(metres(9.0)).most, square_metres(2.4), relative(1e-15));
  TW_CHECK(bounds, d->surface_at(metres(std::nan(""))).most, square_metres(2.4), relative(1e-15));
  CHECK(d->rim.path == "vessel.height");
  CHECK(d->wall.path == "vessel.length");
}

TEST_CASE("display bounds: outside measures lose their walls; round and bowed ones have other lines") {
  plan::build build = lagoon();
  give(build,
       {{"vessel.measured", "outside"}, {"vessel.wall_thickness", "20 mm"}, {"vessel.floor_thickness", "30 mm"}});
  auto d = plan::rules::bounds_of(build);
  REQUIRE(d);
  TW_CHECK(bounds, d->rim.most, metres(0.82), relative(1e-14));
  TW_CHECK(bounds, d->wall.most, metres(2.36), relative(1e-14));
  TW_CHECK(bounds, d->over_walls.slack, metres(0.04), relative(1e-14));

  plan::build round;
  give(round, {{"vessel.shape", "cylinder"}, {"vessel.diameter", "1.2 m"}, {"vessel.height", "1 m"}});
  d = plan::rules::bounds_of(round);
  REQUIRE(d);
  TW_CHECK(bounds, d->around.most, metres(1.2 * std::numbers::pi), relative(1e-14));
  TW_CHECK(bounds, d->floor().most, square_metres(0.36 * std::numbers::pi), relative(1e-14));
  CHECK(d->line.path == "vessel.diameter");

  plan::build bowed;
  give(bowed, {{"vessel.shape", "bow front"},
               {"vessel.length", "1.2 m"},
               {"vessel.width", "0.6 m"},
               {"vessel.bow", "0.3 m"},
               {"vessel.height", "0.6 m"}});
  d = plan::rules::bounds_of(bowed);
  REQUIRE(d);
  TW_CHECK(bounds, d->line.most, metres(1.5), relative(1e-14));  // 0.9, 1.2, 1.5
  TW_HOLDS(bounds, d->wall.most > metres(1.2) && d->around.most > metres(3.6));
}

TEST_CASE("display bounds: none where the outline is not known or not possible") {
  CHECK_FALSE(plan::rules::bounds_of({}));
  for (const std::string_view path : {"vessel.length", "vessel.width", "vessel.height"}) {
    plan::build build = lagoon();
    plan::clear(build, path);
    CHECK_FALSE_MESSAGE(plan::rules::bounds_of(build), path);
    plan::set_si(build, path, -1.0);
    CHECK_FALSE_MESSAGE(plan::rules::bounds_of(build), path);
  }
}

TEST_CASE("sump bounds: chambers together, and what they hold") {
  plan::build build;
  give_overflow(build);
  give(build, {{"plumbing.sump.chamber[1].gear", "0.04 m²"}});
  auto s = plan::rules::sump_bounds_of(build);
  REQUIRE(s);
  TW_CHECK(sump, s->floor().most, square_metres(0.54), relative(1e-14));
  TW_CHECK(sump, s->capacity().most, litres(225.0), relative(1e-14));
  TW_CHECK(sump, s->running_level->most, metres(0.25), relative(1e-15));
  TW_CHECK(sump, plan::rules::tanks_hold(plan::rules::bounds_of(lagoon()), s), litres(2265.0), relative(1e-14));
  plan::clear(build, "plumbing.sump.rim");
  CHECK_FALSE(plan::rules::sump_bounds_of(build));
  CHECK_FALSE(plan::rules::sump_bounds_of({}));
}
