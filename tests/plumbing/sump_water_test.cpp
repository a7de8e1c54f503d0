// SPDX-License-Identifier: BSL-1.0
/// @file
/// The pieces that sumps and power cuts are worked out with, one by one.
#include <tankwright/plumbing/detail/sump_water.hpp>

#include <algorithm>
#include <cmath>
#include <random>

#include "plumbing/plain_power_cut.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;
using tp::detail::baffle_passage;
using tp::detail::band_side;

namespace {

const evidence passes_by_hand{"tankwright::plumbing::running_levels", kind::identity,
                              "orifice, Rehbock and Villemonte written again"};
const evidence slopes{"tankwright::plumbing::power_cut", kind::identity, "slopes by differences"};
const evidence shapes{"tankwright::plumbing::water_in_sump", kind::identity, "worked by hand"};
const evidence rest{"tankwright::plumbing::pour_into_sump", kind::identity, "worked by hand"};

/// What a side of the band says of a baffle.
struct side_numbers {
  band_side side;
  double cd;  // of the gap
};
const side_numbers sides[] = {{band_side::central, 0.61}, {band_side::least, 0.55}, {band_side::most, 0.80}};

tp::baffle made(double crest, double width, double gap, double thickness = 0.0) {
  return {.crest = metres(crest), .width = metres(width), .gap = metres(gap), .thickness = metres(thickness)};
}

/// Under the gap: within 0.02 mm of equal levels the parabola that meets the law in value and slope.
double under(double cd, const tp::baffle& b, double up, double down) {
  const double fall = up - down, least = 2e-5;
  const double q = cd * b.gap.value() * b.width->value() * std::sqrt(2.0 * plain::g * std::max(fall, least));
  return fall >= least ? q : q * (fall / least) * (1.5 - 0.5 * fall / least);
}

/// Over the crest: what the public formula passes freely, times Villemonte's share, whose last hundredth is a parabola.
double over(band_side side, const tp::baffle& b, double up, double down) {
  const double h = up - b.crest->value(), h_down = down - b.crest->value();
  if (h <= 0.0) return 0.0;
  const tp::full_width_edge edge{.width = b.width, .crest_height = b.crest, .thickness = b.thickness};
  const auto flow = tp::flow_over(edge, metres(h), extrapolate).flow;
  const double free = (side == band_side::central ? flow.central
                       : side == band_side::least ? flow.low
                                                  : flow.high)
                          .value();
  if (h_down <= 0.0) return free;
  const double x = 1.0 - std::pow(h_down / h, 1.5);
  if (x >= 0.01) return free * std::pow(x, 0.385);
  return free * std::pow(0.01, 0.385) * (x / 0.01) * (1.615 - 0.615 * x / 0.01);
}

struct levels_of_two {
  double up, down;
};

}  // namespace

TEST_CASE("sump water: what passes a baffle, and how it changes with both levels, by the formulas") {
  // Free and drowned, by 3 mm and 30 mm, under the crest, and close to level on both sides of where the curves turn.
  const levels_of_two levels[] = {
      {0.332, 0.20}, {0.303, 0.29},    {0.332, 0.315},    {0.304, 0.3015}, {0.332, 0.33192}, {0.332, 0.331},
      {0.28, 0.20},  {0.28, 0.279988}, {0.28, 0.2799812}, {0.332, 0.3319}, {0.45, 0.40},     {0.306, 0.3059},
      {0.3045, 0.3}, {0.312, 0.3},     {0.301, 0.2},      {0.361, 0.35},   {0.318, 0.1},     {0.301, 0.3004}};
  const tp::baffle baffles[] = {made(0.30, 0.45, 0.0), made(0.30, 0.35, 0.025), made(0.30, 0.6, 0.0, 0.02),
                                made(0.30, 0.25, 0.04, 0.012)};
  for (const side_numbers& s : sides) {
    for (const tp::baffle& b : baffles) {
      const baffle_passage passage{b, s.side};
      const auto flow = [&](double up, double down) { return under(s.cd, b, up, down) + over(s.side, b, up, down); };
      for (const levels_of_two& two : levels) {
        const double up = two.up, down = two.down;
        CAPTURE(up);
        CAPTURE(down);
        CAPTURE(b.gap.value());
        const auto p = passage(up, down);
        TW_CHECK(passes_by_hand, p.flow, flow(up, down), relative(1e-12));
        if (down == 0.3) continue;  // where the next level comes to the crest the slope has a bend
        const double step = 1e-3 * std::min(up - down, 1e-3);
        const double by_up = (flow(up + step, down) - flow(up - step, down)) / (2.0 * step);
        const double by_down = (flow(up, down + step) - flow(up, down - step)) / (2.0 * step);
        TW_CHECK(slopes, p.by_up, by_up, (tolerance{1e-12, 2e-5}));
        TW_CHECK(slopes, p.by_down, by_down, (tolerance{1e-12, 2e-5}));
      }
    }
  }
}

TEST_CASE("sump water: at equal levels nothing passes, and the gap is steep and not infinitely so") {
  const tp::baffle b = made(0.30, 0.35, 0.025);
  const baffle_passage passage{b, band_side::central};
  for (const double level : {0.25, 0.33}) {
    const auto p = passage(level, level);
    TW_CHECK(passes_by_hand, p.flow, 0.0, tolerance{});
    CHECK(std::isfinite(p.by_up));
    CHECK(p.by_up > 0.0);
    CHECK(p.by_down < 0.0);
  }
  // 1.5 Q(0.02 mm)/0.02 mm, of the gap alone.
  const double least = 0.61 * 0.025 * 0.35 * std::sqrt(2.0 * plain::g * 2e-5);
  TW_CHECK(slopes, passage(0.25, 0.25).by_up, 1.5 * least / 2e-5, relative(1e-12));
  TW_CHECK(passes_by_hand, passage(0.25, 0.25 - 1e-5).flow, 0.625 * least, relative(1e-9));
  // What is higher behind than before passes nothing: who asks gives the higher level first.
  TW_CHECK(passes_by_hand, passage(0.25, 0.26).flow, 0.0, tolerance{});
  // Without a gap and below the crest there is nothing.
  const auto dry = baffle_passage{made(0.30, 0.35, 0.0), band_side::central}(0.29, 0.1);
  TW_CHECK(passes_by_hand, dry.flow, 0.0, tolerance{});
  TW_CHECK(passes_by_hand, dry.by_up, 0.0, tolerance{});
  TW_CHECK(passes_by_hand, dry.by_down, 0.0, tolerance{});
}

TEST_CASE("sump water: a passage that was not made passes nothing") {
  const baffle_passage nothing;
  TW_CHECK(passes_by_hand, nothing.crest(), 0.0, tolerance{});
  TW_CHECK(passes_by_hand, nothing.under(), 0.0, tolerance{});
}

TEST_CASE("sump water: the level before a baffle is the one that passes the flow") {
  const evidence inverse{"tankwright::plumbing::running_levels", kind::identity,
                         "what passes at that level is the flow"};
  constexpr unsigned seed = 20261130;
  MESSAGE("seed ", seed);
  std::mt19937 random{seed};
  const auto uniform = [&](double a, double b) { return std::uniform_real_distribution<double>{a, b}(random); };
  int under_alone = 0, drowned = 0;
  for (int i = 0; i < 3000; ++i) {
    const tp::baffle b = made(uniform(0.1, 0.4), uniform(0.1, 1.0), i % 3 == 0 ? uniform(0.002, 0.06) : 0.0);
    const side_numbers& s = sides[i % 3 == 0 ? (i / 3) % 3 : i % 3];
    const baffle_passage passage{b, s.side};
    const double q = std::pow(10.0, uniform(-5.0, -1.5)), next = uniform(0.0, 0.5);
    const double level = tp::detail::level_before(passage, q, next);
    CAPTURE(q);
    CAPTURE(next);
    CAPTURE(b.crest->value());
    CAPTURE(b.gap.value());
    REQUIRE(level >= next);
    if (level <= b.crest->value()) {  // by the gap alone, whose law is taken as it is to the last fall
      TW_CHECK(inverse, level - next, std::pow(q / passage.under(), 2.0), within(1e-15));
    } else {  // a level is a double: by one step of it the flow moves by its slope
      const auto p = passage(level, next);
      TW_CHECK(inverse, p.flow, q, (tolerance{4e-15 * p.by_up, 1e-11}));
    }
    under_alone += level <= b.crest->value();
    drowned += next > b.crest->value();
  }
  CHECK(under_alone > 200);
  CHECK(drowned > 500);
}

TEST_CASE("sump water: one level in many chambers, with walls as they are") {
  // 0.2 m2 at the floor and 0.4 m2 at 0.4 m, 0.05 m2 of gear in it; beside it 0.1 m2.
  tp::sump plan{.rim = metres(0.4), .running_level = metres(0.1), .chambers = {}, .baffles = {made(0.30, 0.4, 0.0)}};
  plan.chambers.push_back(
      {.label = "leaning",
       .horizontal_area = tp::area_profile{{metres(0.0), square_metres(0.2)}, {metres(0.4), square_metres(0.4)}},
       .gear = square_metres(0.05)});
  plan.chambers.push_back({.label = "upright", .horizontal_area = square_metres(0.1)});
  const tp::detail::sump_shape shape{plan};
  CHECK_FALSE(shape.upright(0));
  CHECK(shape.upright(1));
  TW_CHECK(shapes, shape.least_area(0), 0.15, relative(1e-14));
  TW_CHECK(shapes, shape.least_area(1), 0.1, relative(1e-14));
  TW_CHECK(shapes, shape.free_area(0, 0.2), 0.25, relative(1e-14));
  // V = 0.15 z + 0.25 z^2 and 0.1 z: at 0.2 m 40 L and 20 L, at 1 m (0.4 m2 above the profile) 330 L and 100 L.
  TW_CHECK(shapes, shape.below(0, 0.2), 0.040, relative(1e-14));
  TW_CHECK(shapes, shape.below_all(0.2), 0.060, relative(1e-14));
  TW_CHECK(shapes, shape.level("here", 0, 1, 0.060), 0.2, relative(1e-14));
  TW_CHECK(shapes, shape.level("here", 0, 0, 0.040), 0.2, relative(1e-14));
  TW_CHECK(shapes, shape.level("here", 1, 1, 0.020), 0.2, relative(1e-14));
  TW_CHECK(shapes, shape.below(0, 1.0), 0.15 * 0.4 + 0.25 * 0.16 + 0.35 * 0.6, relative(1e-14));
  TW_CHECK(shapes, shape.level("here", 0, 0, 0.310), 1.0, relative(1e-14));
  TW_CHECK(shapes, shape.level("here", 0, 1, 0.0), 0.0, tolerance{});
  TW_CHECK(shapes, shape.level("here", 0, 0, 1e-6), 1e-6 / 0.15, relative(2e-5));  // a film
  // What is taken out of an empty chamber is told as a level below the floor, at the area of the floor.
  TW_CHECK(shapes, shape.level("here", 0, 0, -0.015), -0.1, relative(1e-14));
  TW_CHECK(shapes, shape.crest(0), 0.30, tolerance{});
  CHECK(shape.first_joined(1) == 1);
  plan.baffles[0].gap = metres(0.0004);
  CHECK(shape.crest(0) < -1e300);
  CHECK(shape.first_joined(1) == 0);
}

TEST_CASE(
    "sump water: between two crests of the same height water goes downstream, and what comes to the crest stays") {
  const auto settled = [](std::vector<double> crests, std::vector<double> water) {
    tp::sump plan{.rim = metres(1.0), .running_level = metres(0.1), .chambers = {}, .baffles = {}};
    for (std::size_t i = 0; i < water.size(); ++i) {
      plan.chambers.push_back({.label = "c", .horizontal_area = square_metres(0.5)});
    }
    for (const double crest : crests) plan.baffles.push_back(made(crest, 0.4, 0.0));
    std::vector<double> levels(water.size());
    const double highest = tp::detail::settle("here", tp::detail::sump_shape{plan}, 1.0, water, levels);
    TW_CHECK(rest, highest, *std::max_element(levels.begin(), levels.end()), tolerance{});
    return levels;
  };
  const auto check = [](const std::vector<double>& got, std::vector<double> expected) {
    for (std::size_t i = 0; i < expected.size(); ++i) TW_CHECK(rest, got[i], expected[i], within(1e-15));
  };
  // 0.25 m2 are 0.5 m of water; crests of 0.25 m.
  check(settled({0.25, 0.25}, {0.0, 0.25, 0.0}), {0.0, 0.25, 0.25});
  check(settled({0.25, 0.25}, {0.0, 0.1875, 0.0}), {0.0, 0.25, 0.125});
  check(settled({0.25, 0.25}, {0.125, 0.125, 0.125}), {0.25, 0.25, 0.25});
  check(settled({0.25, 0.25}, {0.125, 0.1875, 0.125}), {0.25 + 0.125 / 3.0, 0.25 + 0.125 / 3.0, 0.25 + 0.125 / 3.0});
  // The last chamber is filled to the last drop: the first stays at its crest.
  check(settled({0.25}, {0.25, 0.0}), {0.25, 0.25});
  check(settled({0.25}, {0.125, 0.0}), {0.25, 0.0});
  // Upstream over the lower of two.
  check(settled({0.25, 0.5}, {0.0, 0.1875, 0.0}), {0.125, 0.25, 0.0});
  // All areas smaller by a part: the same water stands higher.
  tp::sump one{.rim = metres(1.0), .running_level = metres(0.1), .chambers = {}, .baffles = {}};
  one.chambers.push_back({.label = "c", .horizontal_area = square_metres(0.5)});
  std::vector<double> water{0.1}, levels{0.0};
  TW_CHECK(rest, tp::detail::settle("here", tp::detail::sump_shape{one}, 0.8, water, levels), 0.25, relative(1e-14));
  // A sump below its own floor has no water to stand high.
  water = {-0.1};
  TW_CHECK(rest, tp::detail::settle("here", tp::detail::sump_shape{one}, 1.0, water, levels), 0.0, tolerance{});
}

TEST_CASE("sump water: a litre a second runs over the crests, and a head of 50 mm is one that was measured") {
  const evidence running{"tankwright::plumbing::running_levels", kind::identity, "Rehbock by halving"};
  tp::sump plan{.rim = metres(0.5), .running_level = metres(0.1), .chambers = {}, .baffles = {made(0.30, 0.4, 0.0)}};
  for (int i = 0; i < 2; ++i) plan.chambers.push_back({.label = "c", .horizontal_area = square_metres(0.5)});
  const auto level = [&](double q, double crest) {
    plan.baffles[0].crest = metres(crest);
    return plain::level_for({crest, 0.4, 0.0}, q, 0.1);
  };
  double levels[2];
  for (const double q : {0.001, 0.002, 0.009}) {
    const double expected = level(q, 0.30);
    const bool beyond = tp::detail::run(plan, 0, q, band_side::central, 0.0, levels);
    TW_CHECK(running, levels[0], expected, relative(1e-12));
    CHECK(beyond == (expected < 0.33));  // Rehbock measured from 30 mm on
  }
  // 50 mm over a crest of 0.3 m; the level itself, 0.65 m, would be more than the crest is high.
  CHECK_FALSE(tp::detail::run(plan, 0, 0.009, band_side::central, 0.0, levels));
  // Before the chamber of the drains nothing flows: a gap of half a millimetre levels it with the next.
  plan.baffles[0].gap = metres(0.0005);
  (void)tp::detail::run(plan, 1, 0.002, band_side::central, 0.0, levels);
  TW_CHECK(running, levels[0], 0.1, tolerance{});
  plan.baffles[0].gap = metres(0.0);
  (void)tp::detail::run(plan, 1, 0.002, band_side::central, 0.0, levels);
  TW_CHECK(running, levels[0], 0.3, tolerance{});
  // A running level that is moved moves the last chamber alone.
  (void)tp::detail::run(plan, 0, 0.002, band_side::central, 0.004, levels);
  TW_CHECK(running, levels[1], 0.104, relative(1e-14));
  TW_CHECK(running, levels[0], level(0.002, 0.30), relative(1e-12));
}
