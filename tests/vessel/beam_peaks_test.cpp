// SPDX-License-Identifier: BSL-1.0
// Where a beam bends most when the places to look at lie close together or between the loads; supports that all but
// touch; and the words of refusals.
#include <cmath>
#include <string>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/beam.hpp>
#include <utility>
#include <vector>

#include "support/check.hpp"
#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

const evidence statics{"tankwright::vessel::bend", kind::identity, "moments by hand"};

vs::beam plank(double span, std::vector<vs::beam_support> supports) {
  return {.span = metres(span),
          .section = vs::rectangular_section({.breadth = millimetres(50), .depth = millimetres(150)}),
          .modulus = gigapascals(10),
          .supports = std::move(supports),
          .label = "plank"};
}
vs::beam_support pin(double x) { return {.at = metres(x)}; }
vs::spread_load spread(double first, double last, double from, double to) {
  return {
      .at_start = newtons_per_metre(first), .at_end = newtons_per_metre(last), .from = metres(from), .to = metres(to)};
}

}  // namespace

TEST_CASE("beam peaks: a couple of forces close to the end") {
  // P down at a and up at b turn the beam by P (b - a), which the reaction R = P (b - a)/l holds at the left end. Between a
  // and the end the moment rises to R a; at b it is R b - P (b - a), the largest there is.
  const double p = 700, l = 2, a = 0.0004, b = 0.0012;
  auto beam = plank(l, {pin(0), pin(l)});
  beam.points = {{.load = newtons(p), .at = metres(a)}, {.load = newtons(-p), .at = metres(b)}};
  const auto r = vs::bend(beam);
  TW_CHECK(statics, r.reactions[0].up, newtons(p * (b - a) / l), relative(1e-9));
  TW_CHECK(statics, r.largest_moment.value(), -p * (b - a) * (1 - b / l), relative(1e-9));
  TW_CHECK(statics, r.moment_at, metres(b), relative(1e-12));
}

TEST_CASE("beam peaks: a load that changes its sign between its ends") {
  // Load q = w (1 - 2 x/l) on two supports: V = w l (1/6 - s + s^2) is the same at both ends and zero at
  // s = (1 -+ 1/sqrt 3)/2; M = w l^2 s (1 - s) (1 - 2 s)/6, +-w l^2/(36 sqrt 3) there.
  const double w = 900, l = 2.4;
  auto even = plank(l, {pin(0), pin(l)});
  even.spreads = {spread(w, -w, 0, l)};
  TW_CHECK(statics, std::fabs(vs::bend(even).largest_moment.value()), w * l * l / (36 * std::sqrt(3.0)),
           relative(1e-12));
  // Where the largest moment stands is the same for the weight of a hair.
  for (const double tiny : {1e-5, -1e-5}) {
    even.spreads = {spread(tiny, -tiny, 0, l)};
    TW_CHECK(statics, std::fabs(vs::bend(even).largest_moment.value()), 1e-5 * l * l / (36 * std::sqrt(3.0)),
             relative(1e-12));
  }
  // The same load on the first half of the span and an even tenth of it on the second, given as two loads that lie on one
  // another: of u = 0 to 1 after the first support V = R - u + u^2 with R = 1/12 + 1/40, zero twice; the second place,
  // u = (1 + sqrt(1 - 4 R))/2, has the largest moment.
  auto two = plank(4, {pin(1), pin(3)});
  two.spreads = {spread(1, -3, 1, 3), spread(1.1, 3.1, 2, 3)};
  const double reaction = 1.0 / 12 + 1.0 / 40, u = (1 + std::sqrt(1 - 4 * reaction)) / 2;
  const auto r = vs::bend(two);
  TW_CHECK(statics, r.reactions[0].up, newtons(reaction), relative(1e-12));
  TW_CHECK(statics, r.largest_moment.value(), reaction * u - u * u / 2 + u * u * u / 3, relative(1e-12));
  TW_CHECK(statics, r.moment_at, metres(1 + u), relative(1e-7));
}

TEST_CASE("beam peaks: nothing pulls on a beam unless it is said") {
  auto beam = plank(2, {pin(0), pin(2)});
  beam.spreads = {spread(100, 100, 0, 2)};
  const auto r = vs::bend(beam);
  CHECK(r.axial == pascals(0));
  CHECK(r.combined == r.bending);
}

TEST_CASE("beam peaks: supports that all but touch hold a beam, supports that are one do not") {
  // The second one takes the moment of a load at the free end: R2 d = P l. What 1 - d loses in a double is 3e-4 of it.
  const auto held = [](double apart) {
    auto beam = plank(1, {pin(0), pin(apart)});
    beam.points = {{.load = newtons(1), .at = metres(1)}};
    return vs::bend(beam);
  };
  TW_CHECK(statics, held(1e-13).reactions[1].up.value() * 1e-13, 1.0, relative(1e-3));
  CHECK(message_of<invalid_input>([&] { (void)held(1e-14); }) ==
        "tankwright::vessel::bend: plank: number of supports = 2 cannot hold the beam: it needs two supports, or one "
        "that is "
        "fixed");
}

TEST_CASE("beam peaks: what is refused, word by word") {
  const std::string start = "tankwright::vessel::bend: plank: ";
  const auto section = [](auto change) {
    return message_of<invalid_input>([&] {
      auto beam = plank(2, {pin(0), pin(2)});
      vs::beam_section other = beam.section;
      change(other);
      beam.section = other;
      (void)vs::bend(beam);
    });
  };
  CHECK(section([](auto& s) { s.area = square_metres(0); }) ==
        start + "area = 0 m2 is not possible; expected 1e-12 to 1000000 m2");
  CHECK(section([](auto& s) { s.second_moment = metres_to_the_fourth(0); }) ==
        start + "second moment of area = 0 m4 is not possible; expected more than 0 and at most 1e+12 m4");
  CHECK(section([](auto& s) { s.extreme_fibre = metres(2000); }) ==
        start + "extreme fibre = 2000 m is not possible; expected 1e-09 to 1000 m");
  std::vector<vs::beam_support> many;
  for (int i = 0; i <= 30; ++i) many.push_back(pin(i / 16.0));
  CHECK(message_of<invalid_input>([&] { (void)vs::bend(plank(2, many)); }) ==
        start + "number of supports = 31 is not possible; expected 0 to 30");
  auto loaded = plank(2, {pin(0), pin(2)});
  loaded.points.assign(301, {.load = newtons(1), .at = metres(1)});
  CHECK(message_of<invalid_input>([&] { (void)vs::bend(loaded); }) ==
        start + "number of loads = 301 is not possible; expected 0 to 300");
  // A solved beam that somebody changed: no terms are a straight line, too many or strange ones are no beam's.
  const auto solved = vs::bend(plank(2, {pin(0), pin(2)}));
  auto other = solved;
  other.solved.curve.terms.clear();
  CHECK(vs::along(other, metres(1)).moment.value() == 0.0);
  other.solved.curve.terms.assign(100'001, {0.0, 3, 0.0});
  CHECK(message_of<invalid_input>([&] { (void)vs::along(other, metres(1)); }) ==
        "tankwright::vessel::along: terms of the beam = 100001 is not possible; expected 0 to 100000");
  other.solved.curve.terms.assign(1, {0.0, 6, 0.0});
  CHECK(message_of<invalid_input>([&] { (void)vs::along(other, metres(1)); }) ==
        "tankwright::vessel::along: power of a term = 6 is not possible; expected 0 to 5");
}
