// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <limits>
#include <numbers>
#include <tankwright/plumbing/priming.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

evidence by_hand(const char* function) { return {function, kind::identity, "by hand"}; }

const water::liquid sea{.density = kilograms_per_cubic_metre(1023.3), .viscosity = millipascal_seconds(0.96)};

tp::drain siphon(double bore_mm) {
  return {.pipe = {.label = "siphon",
                   .bore = tp::pipe_bore{millimetres(bore_mm)},
                   .length = metres(1.3),
                   .fittings = tp::known_loss(2.0)},
          .drop = metres(0.95),
          .inlet_head = millimetres(80.0),
          .runs_full = true};
}

/// J* = 0.3 of a bore in metres: 0.3 (pi/4) d^2.5 sqrt(g).
double quiet(double d) { return 0.3 * 0.25 * std::numbers::pi * std::pow(d, 2.5) * std::sqrt(9.80665); }

}  // namespace

TEST_CASE("priming: with air in its middle a siphon carries what a quiet pipe does") {
  const auto carried = tp::carried_while_priming(siphon(57.0), sea);
  TW_CHECK(by_hand("tankwright::plumbing::carried_while_priming"), carried.central.value(), quiet(0.057),
           relative(1e-9));
  TW_CHECK(by_hand("tankwright::plumbing::carried_while_priming"), carried.low.value(), 0.8 * quiet(0.057),
           relative(1e-9));
  CHECK(carried.high >= carried.central);
  // A drain that does not run full carries at once what it always does.
  tp::drain gravity = siphon(57.0);
  gravity.runs_full = false;
  const auto always = tp::drain_mode_for(gravity, flow_rate{}, sea);
  CHECK(tp::carried_while_priming(gravity, sea).central == std::min(always.full.central, always.inlet.central));
  // Water that hardly covers the top lets less in than the pipe would carry.
  tp::drain shallow = siphon(57.0);
  shallow.inlet_head = millimetres(5.0);
  CHECK(tp::carried_while_priming(shallow, sea).central < carried.central);
}

TEST_CASE("priming: the volume held up is flow less what is taken, for half a minute") {
  const auto q = [](double m3) { return flow_rate::from_value(m3); };
  const estimate<flow_rate> flow{q(0.0020), q(0.0022), q(0.0024), "test"};
  const auto held = tp::held_up_while_priming({siphon(57.0)}, flow, sea);
  TW_CHECK(by_hand("tankwright::plumbing::held_up_while_priming"), held.held_up.central.value(),
           30.0 * (0.0022 - quiet(0.057)), relative(1e-9));
  TW_CHECK(by_hand("tankwright::plumbing::held_up_while_priming"), held.held_up.high.value(),
           30.0 * (0.0024 - 0.8 * quiet(0.057)), relative(1e-9));
  CHECK(held.held_up.low <= held.held_up.central);
  // Enough drains hold nothing up; none hold everything up.
  CHECK(tp::held_up_while_priming({siphon(110.0), siphon(110.0)}, flow, sea).held_up.high.value() == 0.0);
  TW_CHECK(by_hand("tankwright::plumbing::held_up_while_priming"),
           tp::held_up_while_priming({}, flow, sea, seconds(10.0)).held_up.central.value(), 0.022, relative(1e-12));
  CHECK_THROWS_AS((void)tp::held_up_while_priming({}, flow, sea, seconds(-1.0)), invalid_input);
  CHECK_THROWS_AS((void)tp::held_up_while_priming({}, flow, sea, seconds(std::numeric_limits<double>::quiet_NaN())),
                  invalid_input);
}

TEST_CASE("priming: from J* = 1 on the flow sweeps the air out by itself") {
  // At J* = 1 to the last digit it does: some bore has such a flow.
  int found = 0;
  for (double bore = 40.0; bore < 42.0; bore += 0.01) {
    const flow_rate q = tp::flow_at_drain_number(siphon(bore).pipe.bore, 1.0);
    if (tp::drain_number(siphon(bore).pipe.bore, q) != 1.0) continue;
    ++found;
    TW_HOLDS(by_hand("tankwright::plumbing::primes_itself"), tp::primes_itself(siphon(bore), q));
  }
  CHECK(found > 0);
  const double at_one = quiet(0.04) / 0.3;
  TW_HOLDS(by_hand("tankwright::plumbing::primes_itself"),
           tp::primes_itself(siphon(40.0), flow_rate::from_value(at_one * (1.0 + 1e-9))));
  TW_HOLDS(by_hand("tankwright::plumbing::primes_itself"),
           !tp::primes_itself(siphon(40.0), flow_rate::from_value(at_one * (1.0 - 1e-9))));
}

TEST_CASE("priming: each of the limits in turn sets what is carried") {
  // Quiet, at the top, as a full siphon; the high end is that of a tall stack or of the quiet pipe.
  for (const double head : {2.0, 20.0, 60.0, 300.0}) {
    for (const double drop : {0.0005, 0.02, 0.95}) {
      for (const double bore : {20.0, 57.0, 160.0}) {
        auto d = siphon(bore);
        d.inlet_head = millimetres(head);
        d.drop = metres(drop);
        const auto all = tp::drain_mode_for(d, flow_rate{}, sea);
        const double q = quiet(bore * 1e-3), stack = tp::stack_capacity(d.pipe.bore).value();
        const auto least = [](double a, double b, double c) { return std::fmin(a, std::fmin(b, c)); };
        const double central = least(q, all.inlet.central.value(), all.full.central.value());
        const auto got = tp::carried_while_priming(d, sea);
        TW_CHECK(by_hand("tankwright::plumbing::carried_while_priming"), got.central.value(), central, relative(1e-9));
        TW_CHECK(by_hand("tankwright::plumbing::carried_while_priming"), got.low.value(),
                 least(0.8 * q, all.inlet.low.value(), all.full.low.value()), relative(1e-9));
        TW_CHECK(by_hand("tankwright::plumbing::carried_while_priming"), got.high.value(),
                 std::fmax(central, least(std::fmax(q, stack), all.inlet.high.value(), all.full.high.value())),
                 relative(1e-9));
      }
    }
  }
  const auto q = [](double m3) { return flow_rate::from_value(m3); };
  const auto carried = tp::carried_while_priming(siphon(57.0), sea);
  const auto two = tp::held_up_while_priming({siphon(57.0), siphon(57.0)},
                                             estimate<flow_rate>{q(0.003), q(0.004), q(0.005), ""}, sea);
  TW_CHECK(by_hand("tankwright::plumbing::held_up_while_priming"), two.taken.low.value(), 2.0 * carried.low.value(),
           relative(1e-12));
  TW_CHECK(by_hand("tankwright::plumbing::held_up_while_priming"), two.taken.central.value(),
           2.0 * carried.central.value(), relative(1e-12));
  TW_CHECK(by_hand("tankwright::plumbing::held_up_while_priming"), two.taken.high.value(), 2.0 * carried.high.value(),
           relative(1e-12));
  TW_CHECK(by_hand("tankwright::plumbing::held_up_while_priming"), two.held_up.low.value(),
           30.0 * std::fmax(0.003 - 2.0 * carried.high.value(), 0.0), relative(1e-12));
  TW_CHECK(by_hand("tankwright::plumbing::held_up_while_priming"), two.held_up.high.value(),
           30.0 * (0.005 - 2.0 * carried.low.value()), relative(1e-12));
  CHECK(two.caution.text == tp::drain_caution.text);
  CHECK_NOTHROW((void)tp::held_up_while_priming({}, q(0.001), sea, seconds(86400.0)));
  CHECK_THROWS_AS((void)tp::held_up_while_priming({}, q(0.001), sea, seconds(86401.0)), invalid_input);
}
