// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/plumbing/backup_power.hpp>
#include <tankwright/decisions/plumbing/circuit_load.hpp>
#include <tankwright/decisions/plumbing/residual_current.hpp>

#include "decisions/asked.hpp"
#include "plan/mistakes.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

evidence by_hand(const char* answer) { return {answer, kind::identity, "worked by hand"}; }

/// A circuit of 230 V and 10 A with a pump of 80 VA, a heater of 600 W and an air pump of 5 W.
plan::build wired() {
  plan::build build;
  give(build, {{"room.volume", "60 m3"},
               {"room.circuit[1].label", "wall"},
               {"room.circuit[1].voltage", "230 V"},
               {"room.circuit[1].breaker", "10 A"},
               {"room.circuit[1].trips_at", "30 mA"},
               {"room.appliance[1].label", "pump"},
               {"room.appliance[1].power", "64 W"},
               {"room.appliance[1].power_factor", "0.8"},
               {"room.appliance[1].circuit", "wall"},
               {"room.appliance[1].leakage", "0.5 mA"},
               {"room.appliance[2].label", "heater"},
               {"room.appliance[2].power", "600 W"},
               {"room.appliance[2].circuit", "wall"},
               {"room.appliance[2].leakage", "1.5 mA"},
               {"room.appliance[3].label", "air pump"},
               {"room.appliance[3].power", "5 W"},
               {"room.appliance[3].kept_as", "1"},
               {"room.appliance[1].kept_as", "2"},
               {"room.backup.capacity", "480 Wh"},
               {"room.backup.lasts", "12 h"}});
  return build;
}

}  // namespace

TEST_CASE("circuits: volt-amperes over volts against 80 % of the breaker, on both sides and empty") {
  const evidence hand = by_hand("tankwright::decisions::answer_circuit_load");
  const auto f = answered(decisions::circuit_load, wired());
  TW_CHECK(hand, number(f, "current", "wall"), 680.0 / 230.0, relative(1e-12));
  TW_CHECK(hand, number(f, "left", "wall"), 8.0 - 680.0 / 230.0, relative(1e-12));
  CHECK(f.verdict == verdict::holds);
  CHECK(f.note.find("On no circuit of the plan: air pump") != std::string::npos);
  judged(answered(decisions::circuit_load, wired(), {{"room.appliance[2].power", "2000 W"}}), verdict::does_not_hold,
         "left", "wall");
  plan::build empty = wired();
  give(empty,
       {{"room.circuit[2].label", "spare"}, {"room.circuit[2].voltage", "120 V"}, {"room.circuit[2].breaker", "15 A"}});
  TW_CHECK(hand, number(answered(decisions::circuit_load, empty), "left", "spare"), 12.0, relative(1e-12));
}

TEST_CASE("circuits: what is plugged into a circuit that is not there is a mistake") {
  plan::build build = wired();
  give(build, {{"room.appliance[1].circuit", "wal"}});
  CHECK(mistakes_of(build).find("room.appliance[pump].circuit: wal is no circuit of the plan") != std::string::npos);
  build = wired();
  give(build,
       {{"room.circuit[2].label", "wall"}, {"room.circuit[2].voltage", "120 V"}, {"room.circuit[2].breaker", "15 A"}});
  CHECK(mistakes_of(build).find("wall is the label of two circuits") != std::string::npos);
}

TEST_CASE("residual current: leakages against 30 % of the rating, on both sides and none") {
  const evidence hand = by_hand("tankwright::decisions::answer_residual_current");
  const auto f = answered(decisions::residual_current, wired());
  TW_CHECK(hand, number(f, "leakage", "wall"), 0.002, relative(1e-12));
  TW_CHECK(hand, number(f, "left", "wall"), 0.009 - 0.002, relative(1e-12));
  CHECK(f.verdict == verdict::holds);
  // A class A of 5 mA carries 1.5 mA only.
  judged(answered(decisions::residual_current, wired(), {{"room.circuit[1].trips_at", "5 mA"}}), verdict::does_not_hold,
         "left", "wall");
  plan::build bare = wired();
  for (const char* key : {"room.appliance[1].circuit", "room.appliance[2].circuit"}) plan::clear(bare, key);
  TW_CHECK(hand, number(answered(decisions::residual_current, bare), "left", "wall"), 0.009, relative(1e-12));
  // What nobody has measured has the band of its standard.
  plan::build unknown = wired();
  plan::clear(unknown, "room.appliance[2].leakage");
  TW_CHECK(hand, band(answered(decisions::residual_current, unknown), "leakage", "wall").high, 0.00125,
           relative(1e-12));
}

TEST_CASE("backup: half of a battery through its inverter, what comes first first") {
  const evidence hand = by_hand("tankwright::decisions::answer_backup_power");
  const auto f = answered(decisions::backup_power, wired());
  TW_CHECK(hand, number(f, "lasts", "air pump"), 480.0 * 0.5 * 0.85 / 5.0 * 3600.0, relative(1e-12));
  TW_CHECK(hand, number(f, "lasts", "pump"), 480.0 * 0.5 * 0.85 / 69.0 * 3600.0, relative(1e-12));
  TW_CHECK(hand, number(f, "left"), (40.8 - 12.0) * 3600.0, relative(1e-12));
  CHECK(f.verdict == verdict::holds);
  judged(answered(decisions::backup_power, wired(), {{"room.backup.capacity", "100 Wh"}}), verdict::does_not_hold,
         "left");
  // Exactly empty when help comes does not hold.
  judged(answered(decisions::backup_power, wired(), {{"room.backup.lasts", "40.8 h"}}), verdict::does_not_hold, "left");
  const auto weak = answered(decisions::backup_power, wired(), {{"room.backup.generator", "50 W"}});
  CHECK(weak.verdict == verdict::thin_margin);
  TW_CHECK(hand, number(weak, "generator_left"), -19.0, relative(1e-12));
  plan::build none = wired();
  for (const char* key : {"room.appliance[1].kept_as", "room.appliance[3].kept_as"}) plan::clear(none, key);
  CHECK(answered(decisions::backup_power, none).verdict == verdict::not_enough_known);
}
