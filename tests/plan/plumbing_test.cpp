// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plan/inputs/plumbing_inputs.hpp>
#include <tankwright/plan/validate.hpp>

#include <doctest/doctest.h>

#include "plan/basin.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

/// The one mistake of a plan: its path.
std::string refused_at(key_texts changes) {
  plan::build build = basin();
  give(build, changes);
  const auto mistakes = plan::validate(build);
  REQUIRE_MESSAGE(mistakes.size() == 1, mistakes.size());
  return mistakes.front().path;
}

}  // namespace

TEST_CASE("plumbing section: the words of an outlet mean what they say") {
  plan::build build = basin();
  plan::set(build, "plumbing.return[1].kind", "open");
  plan::set(build, "plumbing.return[1].below_edge", "-10 mm");
  CHECK(plan::inputs_of(*build.plumbing).circuit.outlets.front().kind == plumbing::outlet_kind::open);
  CHECK(plan::get(build, "plumbing.return[1].kind") == "open");
  plan::set(build, "plumbing.return[1].kind", "submerged");
  CHECK(plan::inputs_of(*build.plumbing).circuit.outlets.front().kind == plumbing::outlet_kind::submerged);
}

TEST_CASE("plumbing section: what a plan says reaches the engines") {
  plan::build build = basin();
  plan::set(build, "plumbing.return[1].siphon_break", "6 mm");
  plan::set(build, "plumbing.return[1].check_valve", "true");
  plan::set(build, "plumbing.drain[1].runs_full", "true");
  const auto in = plan::inputs_of(*build.plumbing);
  CHECK(in.returns.front().siphon_break == millimetres(6.0));
  CHECK(in.returns.front().check_valve);
  CHECK(in.drains.front().runs_full);
  CHECK(in.display.drains.size() == 1);
  CHECK(in.drains_into == 0);
  CHECK(in.edge_above_floor.get() == metres(1.45));
  CHECK(in.circuit.sources.front().level.get() == millimetres(250.0));
  CHECK(!in.surge.has_value());
}

TEST_CASE("plumbing section: keys that cannot all be true") {
  CHECK(plan::validate(basin()).empty());
  CHECK(refused_at({{"plumbing.return[1].below_edge", "2 m"}}) == "plumbing.return[return].below_edge");
  CHECK(refused_at({{"plumbing.return[1].kind", "open"}}) == "plumbing.return[return].kind");
  CHECK(refused_at({{"plumbing.return[1].below_edge", "-60 mm"}}) == "plumbing.return[return].below_edge");
  CHECK(refused_at({{"plumbing.pump.heads", "4 m, 3 m, 3 m"}}) == "plumbing.pump.heads[3]");
  CHECK(refused_at({{"plumbing.pump.flows", "0 L/h, 5000 L/h"}}) == "plumbing.pump.heads");
  CHECK(refused_at({{"plumbing.sump.running_level", "460 mm"}}) == "plumbing.sump.running_level");
  CHECK(refused_at({{"plumbing.sump.chamber[1].gear", "0.9 m2"}}) == "plumbing.sump.chamber[pump].gear");
  CHECK(refused_at({{"plumbing.drains_into", "2"}}) == "plumbing.drains_into");
  CHECK(refused_at({{"plumbing.drain[1].drop", "2 m"}}) == "plumbing.drain[drain].drop");
  CHECK(refused_at({{"plumbing.drain[1].inlet_head", "1 m"}}) == "plumbing.drain[drain].inlet_head");
  CHECK(refused_at({{"plumbing.lift", "0.2 m"}, {"plumbing.drain[1].drop", "0.15 m"}}) == "plumbing.lift");
  CHECK(refused_at({{"plumbing.reserve", "0.5 m"}}) == "plumbing.reserve");
  plan::build build = basin();
  plan::clear(build, "plumbing.return[1].bore");
  give(build, {{"plumbing.return[1].nominal", "1.75"}, {"plumbing.return[1].schedule", "40"}});
  REQUIRE(plan::validate(build).size() == 1);
  CHECK(plan::validate(build).front().path == "plumbing.return[return].nominal");
}
