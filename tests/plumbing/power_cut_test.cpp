// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/power_cut.hpp>

#include <random>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

const evidence by_hand{"tankwright::plumbing::power_cut", kind::identity, "worked by hand"};
const evidence property{"tankwright::plumbing::power_cut", kind::property, "random systems"};

tp::pipe_run pipe(const char* label, double bore_mm, double metre) {
  return {.label = label, .bore = tp::pipe_bore{millimetres(bore_mm)}, .length = metres(metre)};
}

/// 1 m2 of water over a standpipe of 100 mm, whose weir formula gives round numbers: 6000 L/h stand
/// (6000/3600 x 7500/100)^(2/3) = 25 mm high over its rim. A box of 0.05 m2 that falls by 100 mm, 1.5 m of drain of 40
/// mm.
tp::display_tank display() {
  return {.surface = square_metres(1.0),
          .edge = tp::standpipe{tp::pipe_bore{millimetres(100.0)}},
          .box = tp::overflow_box{.plan = square_metres(0.05), .falls_by = millimetres(100.0)},
          .drains = {pipe("drain", 40.0, 1.5)}};
}

/// Its one return ends 10 mm below the rim of the standpipe.
std::vector<tp::return_line> returns(double depth_mm = 10.0) {
  return {{.label = "return A",
           .flow = litres_per_hour(6000.0),
           .outlet_below_edge = millimetres(depth_mm),
           .pipe = pipe("return A", 30.0, 2.0)}};
}

tp::sump one_chamber(double area = 0.5, double running = 0.25) {
  return {.rim = metres(0.4),
          .running_level = metres(running),
          .chambers = {{.label = "sump", .plan = square_metres(area)}}};
}

tp::sump three_chambers(double running) {
  return {.rim = metres(0.4),
          .running_level = metres(running),
          .chambers = {{.label = "drains", .plan = square_metres(0.12)},
                       {.label = "skimmer", .plan = square_metres(0.25)},
                       {.label = "pump", .plan = square_metres(0.18)}},
          .baffles = {{.crest = metres(0.30), .width = metres(0.4)}, {.crest = metres(0.25), .width = metres(0.4)}}};
}

/// Everything known exactly.
tp::power_cut_input sharp(tp::display_tank d, tp::sump s, std::vector<tp::return_line> r) {
  return {.display = std::move(d),
          .sump = std::move(s),
          .returns = std::move(r),
          .area_uncertainty = percent(0.0),
          .level_uncertainty = metres(0.0)};
}

volume litres_in(const tp::sump& s, const std::vector<tp::chamber_level>& levels) {
  std::vector<length> central;
  for (const auto& c : levels) central.push_back(c.level.central);
  return tp::water_in_sump(s, central);
}

}  // namespace

TEST_CASE("power cut: one chamber by hand") {
  const auto cut = tp::power_cut(sharp(display(), one_chamber(), returns()));
  // 1 m2 x 25 mm = 25 L; 1 m2 x 10 mm = 10 L; 0.05 m2 x 100 mm = 5 L; pi/4 0.04^2 1.5 = 1.884956 L;
  // pi/4 0.03^2 2 = 1.413717 L. Together 43.298672 L on 0.5 m2: 86.597345 mm, from 250 to 336.597345 mm.
  TW_CHECK(by_hand, cut.head_over_edge.central, millimetres(25.0), relative(1e-12));
  TW_CHECK(by_hand, cut.falls.over_edge.central, litres(25.0), relative(1e-12));
  TW_CHECK(by_hand, cut.falls.back_siphon.central, litres(10.0), relative(1e-12));
  TW_CHECK(by_hand, cut.falls.box.central, litres(5.0), relative(1e-12));
  TW_CHECK(by_hand, cut.falls.drain_pipes, litres(1.884956), within(litres(1e-6)));
  TW_CHECK(by_hand, cut.falls.return_pipes, litres(1.413717), within(litres(1e-6)));
  TW_CHECK(by_hand, cut.falls.total.central, litres(43.298672), within(litres(1e-6)));
  TW_CHECK(by_hand, cut.settled[0].level.central, millimetres(336.597345), within(millimetres(1e-6)));
  TW_CHECK(by_hand, cut.margin.central, millimetres(63.402655), within(millimetres(1e-6)));
  TW_CHECK(by_hand, cut.spare.central, litres(31.701328), within(litres(1e-6)));
  CHECK(cut.settled[0].label == "sump");
  CHECK_FALSE(cut.extrapolated);
  CHECK(cut.caution.text.find("Test it with real water before trusting a number") != std::string_view::npos);
  CHECK(cut.caution.text.find("residual-current protection and a licensed electrician") != std::string_view::npos);

  // The rise is the same from any level, and 1 m2 of display carries one litre a millimetre. The band of the standpipe
  // is 15 %: with 0.85 of the flow the water stands 25 mm x 0.85^(-2/3) = 27.860979 mm high, 2.860979 L more.
  const double worse = 25.0 * std::pow(0.85, -2.0 / 3.0) - 25.0;
  TW_CHECK(by_hand, cut.margin.low, millimetres(63.402655 - 2.0 * worse), within(millimetres(1e-6)));
  TW_CHECK(by_hand, *cut.highest_safe_running_level, millimetres(250.0 + 63.402655 - 2.0 * worse),
           within(millimetres(1e-6)));
  TW_CHECK(by_hand, *cut.deepest_safe_outlet, millimetres(10.0 + 31.701328 - worse), within(millimetres(1e-6)));
}

TEST_CASE("power cut: three chambers by hand") {
  // 31.884956 L come down the drain into the first chamber, 11.413717 L back through the return into the last. The
  // heads over the baffles, 16.359150 and 16.341812 mm by Rehbock at 0.4 m, hold 0.12 and 0.25 m2 of them: 1.963098 and
  // 4.085453 L, which run off too. The last chamber takes all, 49.347224 L, from 50 mm.
  //   0.18 m2 to its crest at 250 mm: 36 L; the other 13.347224 L lift it with the second, 0.43 m2: 31.040055 mm.
  const auto cut = tp::power_cut(sharp(display(), three_chambers(0.05), returns()));
  TW_CHECK(by_hand, cut.running[0].level.central, millimetres(316.359150), within(millimetres(1e-6)));
  TW_CHECK(by_hand, cut.running[1].level.central, millimetres(266.341812), within(millimetres(1e-6)));
  TW_CHECK(by_hand, cut.settled[0].level.central, millimetres(300.0), within(millimetres(1e-9)));
  TW_CHECK(by_hand, cut.settled[1].level.central, millimetres(281.040055), within(millimetres(1e-5)));
  TW_CHECK(by_hand, cut.settled[2].level.central, millimetres(281.040055), within(millimetres(1e-5)));
  CHECK(cut.extrapolated);  // 16 mm over the baffles
  // The highest water is that of the first chamber while the pump still runs.
  TW_CHECK(by_hand, cut.margin.central, millimetres(400.0 - 316.359150), within(millimetres(1e-6)));

  // From 150 mm all three make one: (131.548551 + 43.298672) L over 0.55 m2.
  const auto more = tp::power_cut(sharp(display(), three_chambers(0.15), returns()));
  for (const auto& c : more.settled)
    TW_CHECK(by_hand, c.level.central, millimetres(317.904042), within(millimetres(1e-5)));
  TW_CHECK(by_hand, more.margin.central, millimetres(82.095958), within(millimetres(1e-5)));
}

TEST_CASE("power cut: what the trade knows") {
  // A display that falls by 1 1/4 in needs 2 1/2 in of spare height in a sump of half its plan area.
  const evidence half{"tankwright::plumbing::power_cut", kind::common_practice,
                      "1 1/4 in off the display are 2 1/2 in in a sump of half its plan"};
  const double flow = 100.0 * std::pow(31.75, 1.5) / 7500.0;  // L/s over the standpipe of 100 mm at 1 1/4 in
  tp::display_tank bare{.surface = square_metres(1.0), .edge = display().edge};
  std::vector<tp::return_line> above{
      {.label = "return A", .flow = litres_per_second(flow), .outlet_below_edge = millimetres(-5.0)}};
  const auto cut = tp::power_cut(sharp(bare, one_chamber(0.5, 0.4 - 0.0635), above));
  TW_CHECK(half, cut.head_over_edge.central, inches(1.25), relative(1e-12));
  TW_CHECK(half, cut.settled[0].level.central - cut.running[0].level.central, inches(2.5), relative(1e-12));
  TW_CHECK(half, cut.margin.central, metres(0.0), within(metres(1e-12)));

  // Outlets slightly above the drain edge: only the drains run back.
  const evidence above_edge{"tankwright::plumbing::power_cut", kind::common_practice,
                            "outlets slightly above the drain edge, so that only the drains run back"};
  TW_CHECK(above_edge, cut.falls.back_siphon.central, litres(0.0), tolerance{});
  TW_CHECK(above_edge, cut.falls.back_siphon.high, litres(0.0), tolerance{});
  // With levels known to 3 mm only, 2 mm above the edge is not above it in the worst case.
  auto near = sharp(bare, one_chamber(), above);
  near.returns[0].outlet_below_edge = millimetres(-2.0);
  near.level_uncertainty = millimetres(3.0);
  TW_CHECK(above_edge, tp::power_cut(near).falls.back_siphon.high, litres(1.0), relative(1e-12));
}

TEST_CASE("power cut: several returns and siphon breaks") {
  // The deepest opening counts: 40 mm with a break at 12 mm draws air at 12 mm; the other return, 20 mm, still runs.
  auto in = sharp(display(), one_chamber(), returns(40.0));
  in.returns[0].break_below_edge = millimetres(12.0);
  in.returns.push_back({.label = "return B", .flow = litres_per_hour(0.0), .outlet_below_edge = millimetres(20.0)});
  const auto cut = tp::power_cut(in);
  TW_CHECK(by_hand, cut.falls.back_siphon.central, litres(20.0), relative(1e-12));
  // When the break blocks, 20 L more come down: 40 mm on the sump's half square metre.
  TW_CHECK(by_hand, cut.margin_if_breaks_block, cut.margin.low - millimetres(40.0), within(metres(1e-12)));
  // A break below the outlet does nothing.
  in.returns[0].break_below_edge = millimetres(60.0);
  TW_CHECK(by_hand, tp::power_cut(in).falls.back_siphon.central, litres(40.0), relative(1e-12));
}

TEST_CASE("power cut: the two limits are where the worst case keeps the reserve") {
  const evidence limit{"tankwright::plumbing::power_cut", kind::identity,
                       "at the limit the worst margin is the reserve"};
  tp::power_cut_input in{
      .display = display(), .sump = three_chambers(0.15), .returns = returns(), .reserve = millimetres(15.0)};
  const auto cut = tp::power_cut(in);
  REQUIRE(cut.deepest_safe_outlet);
  auto deep = in;
  deep.returns[0].outlet_below_edge = *cut.deepest_safe_outlet;
  TW_CHECK(limit, tp::power_cut(deep).margin.low, in.reserve, within(metres(1e-12)));
  // The level limit is the crest here, unless more water comes down.
  TW_CHECK(limit, *cut.highest_safe_running_level, metres(0.25), tolerance{});
  auto full = in;
  full.display.surface = square_metres(2.0);
  const auto high = tp::power_cut(full);
  REQUIRE(high.highest_safe_running_level);
  full.sump.running_level = *high.highest_safe_running_level;
  CHECK(*high.highest_safe_running_level < metres(0.2));
  TW_CHECK(limit, tp::power_cut(full).margin.low, in.reserve, within(metres(1e-12)));
  // With chambers joined under a baffle before the pump.
  full.sump.baffles[1].gap = metres(0.03);
  full.sump.running_level = metres(0.1);
  const auto joined = tp::power_cut(full);
  REQUIRE(joined.highest_safe_running_level);
  full.sump.running_level = *joined.highest_safe_running_level;
  TW_CHECK(limit, tp::power_cut(full).margin.low, in.reserve, within(metres(1e-12)));
  // Too much water for the sump at any level: no answer instead of a wrong one.
  auto flood = in;
  flood.display.surface = square_metres(8.0);
  const auto none = tp::power_cut(flood);
  CHECK_FALSE(none.highest_safe_running_level);
  CHECK_FALSE(none.deepest_safe_outlet);
  TW_HOLDS(limit, none.margin.high.value() < 0.0);
  TW_HOLDS(limit, none.spare.high.value() < 0.0);
  // A reserve that reaches below the water of a running chamber.
  auto greedy = in;
  greedy.reserve = millimetres(90.0);
  CHECK_FALSE(tp::power_cut(greedy).highest_safe_running_level);
}

TEST_CASE("power cut: random systems keep their water and their bands in order") {
  constexpr unsigned seed = 20260802;
  MESSAGE("seed ", seed);
  std::mt19937 random{seed};
  const auto uniform = [&](double a, double b) { return std::uniform_real_distribution<double>{a, b}(random); };
  int floods = 0;
  for (int trial = 0; trial < 1000; ++trial) {
    const auto n = static_cast<std::size_t>(1 + random() % 5);
    tp::sump s{.rim = metres(0.5), .running_level = metres(0.0), .chambers = {}, .baffles = {}};
    double lowest = 0.4;
    for (std::size_t i = 0; i < n; ++i) {
      s.chambers.push_back(
          {.label = "chamber", .plan = square_metres(uniform(0.03, 0.3)), .gear = square_metres(0.005)});
      if (i + 1 == n) break;
      const bool gap = random() % 4 == 0;
      s.baffles.push_back({.crest = metres(uniform(0.15, 0.4)), .width = metres(0.4), .gap = metres(gap ? 0.04 : 0.0)});
      lowest = std::fmin(lowest, s.baffles.back().crest->value());
    }
    s.running_level = metres(uniform(0.02, lowest));
    tp::power_cut_input in{
        .display = {.surface = square_metres(uniform(0.3, 4.0)),
                    .edge = tp::full_width_edge{.width = metres(uniform(0.3, 1.5)), .crest_height = metres(0.5)}},
        .sump = s,
        .returns = {{.label = "A",
                     .flow = litres_per_hour(uniform(1000.0, 8000.0)),
                     .outlet_below_edge = millimetres(uniform(-20.0, 40.0)),
                     .pipe = pipe("A", 30.0, uniform(0.0, 3.0))}},
        .drains_into = random() % n};
    const auto cut = tp::power_cut(in);
    TW_CHECK(property, litres_in(s, cut.settled), litres_in(s, cut.running) + cut.falls.total.central, relative(1e-12));
    TW_HOLDS(property, (cut.margin.low <= cut.margin.central && cut.margin.central <= cut.margin.high));
    TW_HOLDS(property, (cut.spare.low <= cut.spare.central && cut.spare.central <= cut.spare.high));
    TW_HOLDS(property,
             (cut.falls.total.low <= cut.falls.total.central && cut.falls.total.central <= cut.falls.total.high));
    TW_HOLDS(property, cut.margin_if_breaks_block <= cut.margin.low);
    floods += cut.margin.central.value() < 0.0;
    if (cut.highest_safe_running_level) {
      auto at = in;
      at.sump.running_level = *cut.highest_safe_running_level;
      TW_HOLDS(property, tp::power_cut(at).margin.low.value() >= -1e-12);
    } else {
      auto empty = in;
      empty.sump.running_level = metres(0.0);
      TW_HOLDS(property, tp::power_cut(empty).margin.low.value() < 1e-12);
    }
    if (cut.deepest_safe_outlet) {
      auto at = in;
      at.returns[0].outlet_below_edge = *cut.deepest_safe_outlet;
      TW_HOLDS(property, tp::power_cut(at).margin.low.value() >= -1e-12);
      at.returns[0].outlet_below_edge = *cut.deepest_safe_outlet + millimetres(5.0);
      TW_HOLDS(property, tp::power_cut(at).margin.low.value() < 0.0);
    }
  }
  CHECK(floods > 50);
  CHECK(floods < 950);
}

TEST_CASE("power cut: what cannot be is refused by the name of the element") {
  const auto message = [](const tp::power_cut_input& in) {
    try {
      (void)tp::power_cut(in);
    } catch (const invalid_input& e) {
      return std::string{e.what()};
    }
    return std::string{"accepted"};
  };
  const std::string here = "tankwright::plumbing::power_cut: ";
  const auto good = sharp(display(), three_chambers(0.15), returns());
  CHECK(message(good) == "accepted");
  auto in = good;
  in.returns.clear();
  CHECK(message(in) == here + "display has no return lines: nothing runs over its edge");
  in = good;
  in.returns[0].pipe->bore = tp::pipe_bore{metres(0.0)};
  CHECK(message(in) == here + "return A: bore = 0 m is not possible; expected more than 0 m");
  in.returns[0].pipe->label = "";  // then the pipe goes by the name of its return
  CHECK(message(in) == here + "return A: bore = 0 m is not possible; expected more than 0 m");
  in = good;
  in.returns[0].flow = litres_per_hour(-3600.0);
  CHECK(message(in) == here + "return A: flow = -0.001 m3/s is not possible; expected at least 0 m3/s");
  in = good;
  in.display.surface = square_metres(0.0);
  CHECK(message(in) == here + "display: surface = 0 m2 is not possible; expected more than 0 m2");
  in = good;
  in.display.box->falls_by = metres(-0.1);
  CHECK(message(in) == here + "display: falls_by of the box = -0.1 m is not possible; expected at least 0 m");
  in = good;
  in.display.edge = tp::full_width_edge{.width = metres(0.0), .crest_height = metres(0.5)};
  CHECK(message(in) == here + "width = 0 m is not possible; expected more than 0 m");
  in = good;
  in.sump.baffles[1].crest = metres(0.41);
  CHECK(message(in) ==
        here + "baffle between skimmer and pump: crest = 0.41 m stands higher than the rim of the sump, 0.4 m");
  in = good;
  in.sump.baffles[0].crest = metres(0.39);
  CHECK(message(in).starts_with(here + "drains: level = 0.406"));
  CHECK(message(in).ends_with(" m stands above the rim, 0.4 m"));
  in = good;
  in.drains_into = 3;
  CHECK(message(in) == here + "drains_into = 3 is not a chamber; they count from 0");
  in = good;
  in.area_uncertainty = percent(100.0);
  CHECK(message(in) == here + "area_uncertainty = 1 is not possible; expected at least 0 and below 1");
  in = good;
  in.level_uncertainty = metres(-0.001);
  CHECK(message(in) == here + "level_uncertainty = -0.001 m is not possible; expected at least 0 m");
  in = good;
  in.returns[0].outlet_below_edge = metres(std::numeric_limits<double>::quiet_NaN());
  CHECK(message(in).starts_with(here + "return A: outlet_below_edge = nan m is not possible"));
}
