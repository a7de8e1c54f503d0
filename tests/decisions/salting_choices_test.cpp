// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <tankwright/decisions/salting/instrument_check.hpp>
#include <tankwright/decisions/salting/mixing_schedule.hpp>
#include <tankwright/decisions/salting/moved_water.hpp>
#include <tankwright/decisions/salting/unknown_instrument.hpp>
#include <tankwright/decisions/salting/weighed_salinity.hpp>
#include <tankwright/water/brine.hpp>
#include <tankwright/water/hydrometer.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

evidence by_hand(const char* answer) { return {answer, kind::identity, "worked by hand"}; }

/// A thousand litres to be made in a vat of 300 litres.
plan::build to_mix() {
  plan::build build;
  give(build, {{"water.temperature", "20 °C"},
               {"water.new_water", "1000 L"},
               {"water.target", "35"},
               {"water.mix_yield", "85 %"},
               {"water.schedule.unit_rate", "200 L/d"},
               {"water.schedule.recovery", "25 %"},
               {"water.schedule.vat", "300 L"},
               {"water.schedule.dissolve", "24 h"},
               {"water.schedule.ready_in", "10 d"}});
  return build;
}

}  // namespace

TEST_CASE("schedule: four batches, the unit's days and the days of dissolving") {
  const evidence hand = by_hand("tankwright::decisions::answer_mixing_schedule");
  const auto f = answered(decisions::mixing_schedule, to_mix());
  TW_CHECK(hand, number(f, "batches"), 4.0, within(0.0));
  TW_CHECK(hand, number(f, "makes"), 0.25, relative(1e-12));
  // Of 1000 L at 1024.76 kg/m3, 35.165 g/kg over 0.85 is mix; the rest is fresh water of 998.2 kg/m3.
  const double mix = 1024.763 * 35.16504e-3 / 0.85, fresh = (1024.763 - mix) / 998.2067;
  TW_CHECK(hand, 4.0 * number(f, "mix"), mix, relative(1e-5));
  TW_CHECK(hand, number(f, "purify"), fresh / 0.2 * 86400.0, relative(1e-5));
  TW_CHECK(hand, number(f, "ready"), (fresh / 0.2 + 4.0) * 86400.0, relative(1e-5));
  TW_CHECK(hand, band(f, "ready").low, (fresh / 0.2 + 1.0) * 86400.0, relative(1e-5));
  TW_CHECK(hand, number(f, "fed"), 4.0 * fresh, relative(1e-5));
  TW_CHECK(hand, number(f, "waste"), 3.0 * fresh, relative(1e-5));
  CHECK(f.verdict == verdict::holds);
  judged(answered(decisions::mixing_schedule, to_mix(), {{"water.schedule.ready_in", "6 d"}}), verdict::does_not_hold,
         "left");
  // Purified water that is there already, and a vat as large as all of it.
  const auto stored = answered(decisions::mixing_schedule, to_mix(),
                               {{"water.schedule.stored", "2000 L"}, {"water.schedule.vat", "1000 L"}});
  TW_CHECK(hand, number(stored, "ready"), 86400.0, relative(1e-12));
  TW_CHECK(hand, number(stored, "batches"), 1.0, within(0.0));
  const auto none = answered(decisions::mixing_schedule, to_mix(), {{"water.moved.volume", "1200 L"}});
  CHECK(none.note.find("nothing is to be mixed") != std::string::npos);
}

TEST_CASE("moved water: salt is conserved, and the blend is judged") {
  const evidence hand = by_hand("tankwright::decisions::answer_moved_water");
  plan::build build = to_mix();
  give(build, {{"water.moved.volume", "250 L"}, {"water.moved.practical_salinity", "33"}});
  const auto f = answered(decisions::moved_water, build);
  TW_CHECK(hand, number(f, "new"), 0.75, relative(1e-12));
  // By mass: 250 L at 33 and 750 L at 35, whose densities are 1023.24 and 1024.76 kg/m3.
  const double a = 250.0 * 1023.24, b = 750.0 * 1024.763;
  TW_CHECK(hand, number(f, "blend"), (33.0 * a + 35.0 * b) / (a + b), within(1e-4));
  CHECK(f.verdict == verdict::holds);  // 0.4995 off, 0.5 allowed: barely
  judged(answered(decisions::moved_water, build, {{"water.match_within", "0.4"}}), verdict::does_not_hold, "left");
  judged(answered(decisions::moved_water, build, {{"water.match_within", "0.6"}}), verdict::holds, "left");
  judged(answered(decisions::moved_water, build, {{"water.moved.practical_salinity", "20"}}), verdict::does_not_hold,
         "left");
  const auto same = answered(decisions::moved_water, to_mix(), {{"water.moved.volume", "250 L"}});
  TW_CHECK(hand, number(same, "left"), 0.5, within(1e-9));
}

TEST_CASE("instrument check: in purified water, and in a standard as dense as the sea") {
  const evidence hand = by_hand("tankwright::decisions::answer_instrument_check");
  plan::build build = to_mix();
  give(build, {{"water.hydrometer.scale", "20C/20C"}, {"water.hydrometer.division", "0.0005"}});
  const auto f = answered(decisions::instrument_check, build);
  TW_CHECK(hand, number(f, "fresh"), 1.0, within(1e-9));                     // at the temperature of its scale
  TW_CHECK(hand, number(f, "standard"), 1024.763 / 998.2067, within(4e-6));  // EOS-80 by hand
  // 3.7 % by the printed table: 1024.8 lies between 2 % (1012.5) and 4 % (1026.8).
  const double share = 0.02 + 0.02 * (1024.763 - 1012.5) / (1026.8 - 1012.5);
  TW_CHECK(hand, number(f, "salt"), share / (1.0 - share), within(2e-4));
  CHECK(f.verdict == verdict::for_information);
  CHECK(asked(decisions::instrument_check, to_mix()).empty());
}

TEST_CASE("unknown instrument: a band of two without checks, a fraction of it with them") {
  const evidence hand = by_hand("tankwright::decisions::answer_unknown_instrument");
  plan::build build = to_mix();
  give(build, {{"water.unknown_instrument.reading", "1.0265"},
               {"water.unknown_instrument.temperature", "20 °C"},
               {"water.unknown_instrument.division", "0.00001"}});
  const auto before = answered(decisions::unknown_instrument, build);
  CHECK(band(before, "salinity").high - band(before, "salinity").low > 1.5);
  // It shows 0.999 in purified water and 1.0256 in a standard of 35 g in 965 g of water (1023.2 kg/m3 by the table).
  give(build, {{"water.unknown_instrument.in_fresh_water", "0.999"},
               {"water.unknown_instrument.in_standard", "1.0256"},
               {"water.unknown_instrument.standard_salt", "35 g"},
               {"water.unknown_instrument.standard_water", "965 g"}});
  const auto after = answered(decisions::unknown_instrument, build);
  const double rho = 998.2067 + (1.0265 - 0.999) / (1.0256 - 0.999) * (1023.21 - 998.2067);
  const double slope = (1024.763 - 998.2067) / 35.0;  // kg/m3 for each 1 of salinity, nearly even
  TW_CHECK(hand, number(after, "salinity"), 35.0 + (rho - 1024.763) / slope, within(0.1));
  CHECK(answered(decisions::unknown_instrument, build, {{"water.match_within", "2"}}).verdict == verdict::holds);
  judged(answered(decisions::unknown_instrument, build, {{"water.unknown_instrument.reading", "1.018"}}),
         verdict::does_not_hold, "left");
  // A division widens it, and two points that are one are refused.
  const auto coarse = answered(decisions::unknown_instrument, build, {{"water.unknown_instrument.division", "0.001"}});
  CHECK(band(coarse, "salinity").low < number(after, "salinity") - 0.5);
  CHECK(answered(decisions::unknown_instrument, build, {{"water.unknown_instrument.in_standard", "0.999"}}).verdict ==
        verdict::not_enough_known);
}

TEST_CASE("weighed: a litre of seawater on a scale in air") {
  const evidence hand = by_hand("tankwright::decisions::answer_weighed_salinity");
  plan::build build = to_mix();
  // 1024.763 kg/m3 less the air, over the conventional weights.
  const double shown = (1024.763 - 1.2) / (1.0 - 1.2 / 8000.0);
  give(build, {{"water.weighed.volume", "1 L +/- 0.02 %"},
               {"water.weighed.empty", "250 g +/- 0.05 g"},
               {"water.weighed.full", "1.27 kg +/- 0.05 g"},
               {"water.weighed.temperature", "20 °C"}});
  plan::set_si(build, "water.weighed.full", 0.25 + shown * 1e-3);
  const auto f = answered(decisions::weighed_salinity, build);
  TW_CHECK(hand, number(f, "salinity"), 35.0, within(0.006));  // EOS-80 by hand, 0.004 kg/m3
  CHECK(f.verdict == verdict::holds);
  // 0.1 % of volume is 1.3 in salinity: then nothing is proven.
  CHECK(answered(decisions::weighed_salinity, build, {{"water.weighed.volume", "1 L +/- 0.1 %"}}).verdict ==
        verdict::thin_margin);
  judged(answered(decisions::weighed_salinity, build, {{"water.weighed.full", "1.270 kg"}}), verdict::does_not_hold,
         "left");
  CHECK(answered(decisions::weighed_salinity, build, {{"water.weighed.full", "0.260 kg"}}).verdict ==
        verdict::not_enough_known);
}
