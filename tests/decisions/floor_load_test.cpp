// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/bottom/floor_load.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence by_hand{"tankwright::decisions::answer_floor_load", kind::identity, "weights by hand"};
const evidence code{"tankwright::decisions::answer_floor_load", kind::published, "IRC Table R301.5: 40 and 30 psf"};

/// A tank of water alone: 2 m by 1 m by 0.5 m, and a stand of 2 m2.
plan::build water_tank() {
  plan::build build;
  give(build, {{"vessel.length", "2 m"},
               {"vessel.width", "1 m"},
               {"vessel.height", "0.6 m"},
               {"vessel.water_level", "0.5 m"},
               {"vessel.floor.tank_and_stand", "200 kg"},
               {"vessel.floor.footprint", "2 m²"},
               {"vessel.floor.sump_below", "false"}});
  return build;
}

const double load = (1023.343 + 200.0) * 9.80665 / 2.0;  // a cubic metre of seawater

}  // namespace

TEST_CASE("floor load: all that stands on it over its footprint, against the code") {
  const auto f = answered(decisions::floor_load, water_tank(), {{"vessel.floor.bearing", "0.1 m²"}});
  TW_CHECK(by_hand, number(f, "mass"), 1223.343, relative(1e-6));
  TW_CHECK(by_hand, number(f, "load"), load, relative(1e-6));
  TW_CHECK(by_hand, number(f, "under_feet"), load * 20.0, relative(1e-6));
  TW_CHECK(code, number(f, "code"), 40.0 * 47.88025898, relative(1e-8));
  TW_CHECK(by_hand, number(f, "times_code"), load / (40.0 * 47.88025898), relative(1e-6));
  TW_CHECK(by_hand, number(f, "left"), 40.0 * 47.88025898 - load, relative(1e-5));
  judged(f, verdict::does_not_hold, "left");
  const auto bedroom = answered(decisions::floor_load, water_tank(), {{"vessel.floor.room", "sleeping"}});
  TW_CHECK(code, number(bedroom, "code"), 30.0 * 47.88025898, relative(1e-8));
}

TEST_CASE("floor load: the verdict on each side of what it is built for, and at it") {
  const auto built_for = [](double pascals_of) {
    plan::build build = water_tank();
    plan::set_si(build, "vessel.floor.built_for", pascals_of);
    return answered(decisions::floor_load, build);
  };
  judged(built_for(1.12 * load), verdict::holds, "left");
  judged(built_for(1.05 * load), verdict::thin_margin, "left");
  judged(built_for(0.999 * load), verdict::does_not_hold, "left");
  const double exact = number(built_for(1e4), "load");
  judged(built_for(exact), verdict::does_not_hold, "left");
  CHECK(built_for(load / 1.5).happens.find("1.5 times the load") != std::string::npos);
}

TEST_CASE("floor load: the sump's water stands on it where it stands below, and a missing floor is asked for") {
  plan::build build = lagoon();
  const auto without = answered(decisions::floor_load, build);
  CHECK(without.note.find("sump's water is not in it") != std::string::npos);
  give_overflow(build);
  plan::clear(build, "plumbing.pump");
  const auto with = answered(decisions::floor_load, build);
  CHECK(with.note.find("sump's water is not in it") == std::string::npos);
  TW_HOLDS(by_hand, number(with, "mass") > number(without, "mass") + 70.0);
  const auto elsewhere = answered(decisions::floor_load, build, {{"vessel.floor.sump_below", "false"}});
  TW_CHECK(by_hand, number(elsewhere, "mass"), number(without, "mass"), relative(1e-12));
  plan::clear(build, "vessel.floor");
  const auto f = answered(decisions::floor_load, build);
  CHECK(f.verdict == verdict::not_enough_known);
  CHECK_FALSE(f.caution.empty());
  CHECK(asked(decisions::floor_load, {}).empty());
}
