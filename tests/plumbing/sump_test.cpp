// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/sump.hpp>

#include <algorithm>
#include <random>

#include "support/edges.hpp"
#include "support/reference.hpp"
#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

tp::baffle over(double crest) { return {.crest = metres(crest), .width = metres(0.4)}; }
tp::baffle under(double gap) { return {.crest = metres(0.38), .width = metres(0.4), .gap = metres(gap)}; }

/// Chambers with vertical walls, a rim at 0.4 m, a pump chamber at 0.1 m.
tp::sump sump_of(std::vector<double> areas, std::vector<tp::baffle> baffles, double running = 0.1) {
  static const char* const names[] = {"drains", "skimmer", "refuge", "pump"};
  tp::sump s{.rim = metres(0.4), .running_level = metres(running), .chambers = {}, .baffles = std::move(baffles)};
  for (std::size_t i = 0; i < areas.size(); ++i) {
    s.chambers.push_back(
        {.label = i + 1 == areas.size() ? "pump" : names[i], .horizontal_area = square_metres(areas[i])});
  }
  return s;
}

std::vector<length> levels_of(std::initializer_list<double> numbers) {
  std::vector<length> levels;
  for (const double z : numbers) levels.push_back(metres(z));
  return levels;
}

tp::sump_at_rest pour(const tp::sump& s, std::vector<length> levels, double litre, std::size_t into = 0) {
  return tp::pour_into_sump({.sump = s, .levels = std::move(levels), .added = litres(litre), .into = into});
}

const evidence by_hand{"tankwright::plumbing::pour_into_sump", kind::identity, "worked by hand"};
const evidence running_by_hand{"tankwright::plumbing::running_levels", kind::identity, "worked by hand"};

void check_levels(const tp::sump_at_rest& got, std::initializer_list<double> expected) {
  REQUIRE(got.levels.size() == expected.size());
  std::size_t i = 0;
  for (const double z : expected) TW_CHECK(by_hand, got.levels[i++], metres(z), within(metres(1e-12)));
}

}  // namespace

TEST_CASE("sump: reference table") {
  const auto level = [](const reference_row& row) {
    const tp::sump s = sump_of({row["a0"], row["a1"], row["a2"]}, {over(row["c0"]), over(row["c1"])});
    const auto after = pour(s, levels_of({row["z0"], row["z1"], row["z2"]}), row["litres"]);
    return after.levels[static_cast<std::size_t>(row["chamber"])].value();
  };
  check_rows(reference_rows("plumbing/sump.csv"), {{"tankwright::plumbing::pour_into_sump", level}});
}

TEST_CASE("sump: pours by hand") {
  // Second baffle higher than the first: 0.1 m2 each, crests 0.20 and 0.30, levels 0.20 0.20 0.10.
  const tp::sump rising = sump_of({0.1, 0.1, 0.1}, {over(0.20), over(0.30)});
  // 15 L: the first two are level at the lower crest already, and rise together by 0.015/0.2.
  check_levels(pour(rising, levels_of({0.20, 0.20, 0.10}), 15.0), {0.275, 0.275, 0.10});
  // 45 L: 20 L bring them to 0.30; 20 L more bring the third from 0.10 to 0.30; the last 5 L lift all by 0.005/0.3.
  check_levels(pour(rising, levels_of({0.20, 0.20, 0.10}), 45.0), {0.95 / 3.0, 0.95 / 3.0, 0.95 / 3.0});

  // Into the last chamber: it fills to the crest and then runs back upstream.
  const tp::sump two = sump_of({0.1, 0.1}, {over(0.25)});
  // 10 L: 5 L bring it from 0.20 to 0.25; the other 5 L lift the empty-standing first chamber from 0.10 to 0.15.
  check_levels(pour(two, levels_of({0.10, 0.20}), 10.0, 1), {0.15, 0.25});
  // With the first at its crest the 5 L lift both by 0.005/0.2.
  check_levels(pour(two, levels_of({0.25, 0.20}), 10.0, 1), {0.275, 0.275});

  // Heads over the crests run off first: 0.31 and 0.26 over crests of 0.30 and 0.25 hold 0.01 x 0.12 + 0.01 x 0.25
  // = 3.7 L more than at rest; the third takes them and the 5 L: 0.15 + 0.0087/0.18.
  const tp::sump three = sump_of({0.12, 0.25, 0.18}, {over(0.30), over(0.25)});
  check_levels(pour(three, levels_of({0.31, 0.26, 0.15}), 5.0), {0.30, 0.25, 0.15 + 0.0087 / 0.18});

  // A gap at the floor joins two chambers: 6 L into the first lift both by 0.006/0.15.
  const tp::sump joined = sump_of({0.1, 0.05, 0.1}, {under(0.03), over(0.25)});
  check_levels(pour(joined, levels_of({0.20, 0.20, 0.10}), 6.0), {0.24, 0.24, 0.10});
  // Different levels on both sides of a gap settle: (0.1 x 0.26 + 0.05 x 0.20)/0.15 = 0.24.
  check_levels(pour(joined, levels_of({0.26, 0.20, 0.10}), 0.0), {0.24, 0.24, 0.10});
  // 12 L: 1.5 L to the crest at 0.25 (from 0.24), 10.5 L on into the last.
  check_levels(pour(joined, levels_of({0.24, 0.24, 0.10}), 12.0), {0.25, 0.25, 0.205});

  // Over the rim: one chamber of 0.1 m2, 0.35 m, 10 L: the walls would have to be 0.05 m higher, 5 L are on the floor.
  const auto flood = pour(sump_of({0.1}, {}), levels_of({0.35}), 10.0);
  check_levels(flood, {0.45});
  TW_CHECK(by_hand, flood.margin, metres(-0.05), within(metres(1e-15)));
  TW_CHECK(by_hand, flood.over_the_rim, litres(5.0), within(litres(1e-10)));
}

TEST_CASE("sump: gear and leaning walls by hand") {
  const evidence volume_by_hand{"tankwright::plumbing::water_in_sump", kind::identity, "worked by hand"};
  const evidence capacity{"tankwright::plumbing::sump_capacity", kind::identity, "worked by hand"};
  tp::sump s = sump_of({0.1, 0.25}, {over(0.25)});
  s.chambers[1].gear = square_metres(0.05);
  // 0.1 x 0.25 + 0.2 x 0.15 = 55 L; to the rim 0.1 x 0.4 + 0.2 x 0.4 = 120 L.
  TW_CHECK(volume_by_hand, tp::water_in_sump(s, levels_of({0.25, 0.15})), litres(55.0), relative(1e-14));
  TW_CHECK(capacity, tp::sump_capacity(s), litres(120.0), relative(1e-14));
  check_levels(pour(s, levels_of({0.25, 0.15}), 10.0), {0.25, 0.20});

  // Walls that lean out: A = 0.2 + 0.5 z (0.2 m2 at the floor, 0.4 m2 at 0.4 m). V = 0.2 z + 0.25 z^2: 0.1 m holds 22.5
  // L, 0.3 m 82.5 L.
  tp::sump leaning = sump_of({0.1}, {});
  leaning.chambers[0].horizontal_area =
      tp::area_profile{{metres(0.0), square_metres(0.2)}, {metres(0.4), square_metres(0.4)}};
  TW_CHECK(volume_by_hand, tp::water_in_sump(leaning, levels_of({0.1})), litres(22.5), relative(1e-14));
  check_levels(pour(leaning, levels_of({0.1}), 60.0), {0.3});
}

TEST_CASE("sump: running levels by hand") {
  const flow_rate q = litres_per_second(2.0);
  const tp::sump three = sump_of({0.12, 0.25, 0.18}, {over(0.30), over(0.25)}, 0.15);
  const auto run = tp::running_levels(three, q);
  REQUIRE(run.chambers.size() == 3);
  CHECK(run.chambers[0].label == "drains");
  TW_CHECK(running_by_hand, run.chambers[2].level.high, metres(0.15), tolerance{});
  for (const std::size_t i : {0u, 1u}) {
    const double crest = three.baffles[i].crest->value();
    const auto head = [&](length level) { return metres(level.value() - crest); };
    const tp::full_width_edge edge{.width = metres(0.4), .crest_height = metres(crest)};
    TW_CHECK(running_by_hand, tp::flow_over(edge, head(run.chambers[i].level.central)).flow.central, q,
             relative(1e-12));
    TW_CHECK(running_by_hand, tp::flow_over(edge, head(run.chambers[i].level.high)).flow.low, q, relative(1e-12));
    TW_CHECK(running_by_hand, tp::flow_over(edge, head(run.chambers[i].level.low)).flow.high, q, relative(1e-12));
  }
  CHECK(run.extrapolated);  // 19 mm
  TW_CHECK(running_by_hand, run.water,
           tp::water_in_sump(three, {run.chambers[0].level.central, run.chambers[1].level.central, metres(0.15)}),
           relative(1e-14));

  // Under a baffle: v = 0.002/(0.61 x 0.03 x 0.4) = 0.273224 m/s, v^2/2g = 3.8062 mm.
  const auto gap = tp::running_levels(sump_of({0.1, 0.1}, {under(0.03)}, 0.2), q);
  TW_CHECK(running_by_hand, gap.chambers[0].level.central, metres(0.2038062), within(metres(1e-7)));

  // A drowned baffle: crest 0.24 before one of 0.25. Villemonte's share of the free flow is what passes.
  const tp::sump drowned = sump_of({0.12, 0.25, 0.18}, {over(0.24), over(0.25)}, 0.15);
  const auto back = tp::running_levels(drowned, q);
  const double h1 = back.chambers[0].level.central.value() - 0.24, h2 = back.chambers[1].level.central.value() - 0.24;
  CHECK(h2 > 0.01);
  CHECK(h1 > h2);
  const flow_rate passed = tp::flow_over(tp::full_width_edge{metres(0.4), metres(0.24)}, metres(h1)).flow.central *
                           tp::submerged_share({metres(h1), metres(h2)}).value();
  TW_CHECK(running_by_hand, passed, q, relative(1e-11));

  // No flow: every chamber stands at its crest.
  const auto still = tp::running_levels(three, litres_per_second(0.0));
  TW_CHECK(running_by_hand, still.chambers[0].level.high, metres(0.30), tolerance{});
  TW_CHECK(running_by_hand, still.chambers[1].level.high, metres(0.25), tolerance{});
}

TEST_CASE("sump: evaporation lowers the last chamber alone") {
  const evidence loss{"tankwright::plumbing::level_after_evaporation", kind::identity, "worked by hand"};
  // 9 L out of 0.18 m2 are 50 mm.
  const tp::sump three = sump_of({0.12, 0.25, 0.18}, {over(0.30), over(0.25)}, 0.15);
  TW_CHECK(loss, tp::level_after_evaporation({three, litres(9.0)}), metres(0.10), relative(1e-14));
  // Joined under a baffle, two chambers carry it: 0.25 + 0.18 m2, 8.6 L are 20 mm.
  const tp::sump joined = sump_of({0.12, 0.25, 0.18}, {over(0.30), under(0.03)}, 0.15);
  TW_CHECK(loss, tp::level_after_evaporation({joined, litres(8.6)}), metres(0.13), relative(1e-14));
  CHECK_THROWS_WITH_AS(
      (void)tp::level_after_evaporation({three, litres(28.0)}),
      "tankwright::plumbing::level_after_evaporation: pump: evaporated = 28 L is more than the chamber "
      "holds, 27 L",
      invalid_input);
  CHECK_THROWS_AS((void)tp::level_after_evaporation({three, litres(-1.0)}), invalid_input);
}

TEST_CASE("sump: random sumps keep their water, rest, and do not mind the order of pouring") {
  const evidence conserved{"tankwright::plumbing::pour_into_sump", kind::property, "volume conserved to 1e-12"};
  const evidence rests{"tankwright::plumbing::pour_into_sump", kind::property,
                       "at rest: nothing stands above a crest alone"};
  const evidence order{"tankwright::plumbing::pour_into_sump", kind::property, "two pours are one"};
  const evidence rises{"tankwright::plumbing::pour_into_sump", kind::property, "more water, no level lower"};
  const evidence sweeps{"tankwright::plumbing::pour_into_sump", kind::property,
                        "another way: small portions, each let run until nothing moves"};
  constexpr unsigned seed = 20260801;
  MESSAGE("seed ", seed);
  std::mt19937 random{seed};
  const auto uniform = [&](double a, double b) { return std::uniform_real_distribution<double>{a, b}(random); };
  for (int trial = 0; trial < 2000; ++trial) {
    const auto n = static_cast<std::size_t>(1 + random() % 7);
    tp::sump s{.rim = metres(0.4), .running_level = metres(0.0), .chambers = {}, .baffles = {}};
    std::vector<length> levels;
    for (std::size_t i = 0; i < n; ++i) {
      tp::area_profile plan = square_metres(uniform(0.02, 0.3));
      if (trial % 3 == 0) {
        plan = tp::area_profile{{metres(0.0), square_metres(uniform(0.05, 0.3))},
                                {metres(0.2), square_metres(uniform(0.05, 0.3))},
                                {metres(0.2), square_metres(uniform(0.05, 0.3))}};
      }
      s.chambers.push_back({.label = "c", .horizontal_area = plan, .gear = square_metres(trial % 2 ? 0.01 : 0.0)});
      levels.push_back(metres(uniform(0.0, 0.4)));
      if (i + 1 < n) {
        const bool gap = random() % 5 == 0;
        s.baffles.push_back(
            {.crest = metres(uniform(0.05, 0.4)), .width = metres(0.3), .gap = metres(gap ? 0.02 : 0.0)});
      }
    }
    const double litre = uniform(0.0, 150.0);
    const auto into = static_cast<std::size_t>(random() % n);
    const auto after = pour(s, levels, litre, into);
    const volume before = tp::water_in_sump(s, levels);
    TW_CHECK(conserved, tp::water_in_sump(s, after.levels), before + litres(litre), relative(1e-12));
    for (std::size_t i = 0; i + 1 < n; ++i) {
      const double a = after.levels[i].value(), b = after.levels[i + 1].value();
      const double crest = s.baffles[i].gap.value() > 0.0 ? -1.0 : s.baffles[i].crest->value();
      const bool calm = std::fabs(a - b) < 1e-12 || std::max(a, b) < crest + 1e-12;
      TW_HOLDS(rests, calm);
    }
    // In two pours. Equal barriers on both sides could part the water either way, but random crests are never equal.
    const auto half = pour(s, levels, 0.4 * litre, into);
    const bool in_range =
        std::all_of(half.levels.begin(), half.levels.end(), [](length z) { return z.value() <= 0.4; });
    if (in_range) {
      const auto rest = pour(s, half.levels, 0.6 * litre, into);
      for (std::size_t i = 0; i < n; ++i) {
        TW_CHECK(order, rest.levels[i], after.levels[i], within(metres(1e-11)));
        TW_HOLDS(rises, after.levels[i].value() >= half.levels[i].value() - 1e-12);
      }
    }
    // Another way, for vertical walls: pour a little at a time into the sump at rest, and after each let water move
    // over the crests by small parts until nothing moves.
    if (trial % 39 == 1 && in_range) {
      std::vector<double> z;
      for (const length& level : half.levels) z.push_back(level.value());
      const auto area = [&](std::size_t i) {
        return s.chambers[i].horizontal_area.at(metres(0.0)).value() - s.chambers[i].gear.value();
      };
      constexpr int portions = 500;
      const double portion = 0.6e-3 * litre / portions;
      for (int k = 0; k < portions; ++k) {
        z[into] += portion / area(into);
        for (double moved = 1.0; moved > 1e-12;) {
          moved = 0.0;
          for (std::size_t i = 0; i + 1 < n; ++i) {
            const double crest = s.baffles[i].gap.value() > 0.0 ? -1.0 : s.baffles[i].crest->value();
            const std::size_t up = z[i] > z[i + 1] ? i : i + 1, down = i + i + 1 - up;
            const double head = z[up] - std::max(crest, z[down]);
            if (head <= 0.0) continue;
            const double part = 0.4 * head * std::min(area(up), area(down));
            z[up] -= part / area(up);
            z[down] += part / area(down);
            moved += part;
          }
        }
      }
      // A portion may part over two crests that lie closer together than its own height.
      for (std::size_t i = 0; i < n; ++i) TW_CHECK(sweeps, after.levels[i], metres(z[i]), within(millimetres(1.0)));
    }
  }
}

TEST_CASE("sump: a chamber that runs over its rim is an answer") {
  // 18.615 mm by Rehbock, solved by hand: 0.3186150 m.
  const evidence rehbock{"tankwright::plumbing::running_levels", kind::identity, "Rehbock by hand"};
  tp::sump s = sump_of({0.12, 0.25, 0.18}, {over(0.30), over(0.25)}, 0.15);
  s.rim = metres(0.31);
  const auto running = tp::running_levels(s, litres_per_second(2.0));
  TW_CHECK(rehbock, running.margin.central, metres(0.31 - 0.3186150), within(metres(1e-7)));
  CHECK(running.margin.low < running.margin.central);
  CHECK(running.margin.central < running.margin.high);
}

TEST_CASE("sump: chambers before the drains carry nothing") {
  const evidence unused{"tankwright::plumbing::running_levels", kind::identity, "at rest, by hand"};
  tp::sump s = sump_of({0.12, 0.25, 0.18}, {over(0.30), over(0.25)}, 0.15);
  const auto all = tp::running_levels(s, litres_per_second(2.0));
  const auto second = tp::running_levels(s, litres_per_second(2.0), 1);
  CHECK(all.chambers[0].level.central > metres(0.30));
  TW_CHECK(unused, second.chambers[0].level.central, metres(0.30),
           tolerance{});  // full to its crest, and no head over it
  TW_CHECK(unused, second.chambers[1].level.central, all.chambers[1].level.central, tolerance{});
  // Joined by a gap it stands with the next, and where the next stands above the crest too.
  s.baffles[0].gap = metres(0.02);
  TW_CHECK(unused, tp::running_levels(s, litres_per_second(2.0), 1).chambers[0].level.central,
           second.chambers[1].level.central, tolerance{});
  s.baffles[0].gap = metres(0.0);
  s.baffles[0].crest = metres(0.24);
  TW_CHECK(unused, tp::running_levels(s, litres_per_second(2.0), 1).chambers[0].level.central,
           second.chambers[1].level.central, tolerance{});
  CHECK_THROWS_WITH_AS((void)tp::running_levels(s, litres_per_second(2.0), 3),
                       "tankwright::plumbing::running_levels: drains_into = 3 is not a chamber; they count from 0",
                       invalid_input);
}

TEST_CASE("sump: what cannot be is refused by the name of the element") {
  const auto message = [](const tp::sump& s) {
    try {
      (void)tp::running_levels(s, litres_per_second(2.0));
    } catch (const invalid_input& e) {
      return std::string{e.what()};
    }
    return std::string{"accepted"};
  };
  const std::string here = "tankwright::plumbing::running_levels: ";
  const tp::sump good = sump_of({0.12, 0.25, 0.18}, {over(0.30), over(0.25)}, 0.15);
  CHECK(message(good) == "accepted");
  tp::sump s = good;
  s.baffles[0].crest = metres(0.45);
  CHECK(message(s) ==
        here + "baffle between drains and skimmer: crest = 0.45 m stands higher than the rim of the sump, 0.4 m");
  s = good;
  s.running_level = metres(0.28);
  CHECK(message(s) ==
        here + "pump: running level = 0.28 m stands above the crest of the baffle between skimmer and pump, 0.25 m");
  s = good;
  s.chambers[1].horizontal_area = square_metres(0.0);
  CHECK(message(s) ==
        here + "skimmer: horizontal area = 0 m2 is not possible; expected more than 0 and at most 1000000 m2");
  s = good;
  s.chambers[1].gear = square_metres(0.25);
  CHECK(message(s) == here + "skimmer: free horizontal area = 0 m2 is not possible; expected 1e-06 to 10000 m2");
  s = good;
  s.chambers[1].label = "";
  s.chambers[1].gear = square_metres(-0.1);
  CHECK(message(s) == here + "chamber 2: gear = -0.1 m2 is not possible; expected 0 to 10000 m2");
  for (const double floor : {0.001, -0.001}) {
    s = good;
    s.chambers[1].horizontal_area =
        tp::area_profile{{metres(floor), square_metres(0.25)}, {metres(0.4), square_metres(0.3)}};
    CHECK(message(s).find("skimmer has a plan profile that does not start at the floor") != std::string::npos);
  }
  s = good;
  s.running_level = metres(-0.01);
  CHECK(message(s) == here + "pump: running level = -0.01 m is not possible; expected 0 to 20 m");
  s = good;
  s.baffles.pop_back();
  CHECK(message(s) == here + "sump: number of baffles = 1 does not go with 3 chambers; expected one less");
  s = good;
  s.baffles[1].gap = metres(0.3);
  CHECK(message(s) == here + "baffle between skimmer and pump: gap = 0.3 m is not below the crest, 0.25 m");
  s = good;
  s.baffles[1].width = metres(0.0);
  CHECK(message(s) == here + "baffle between skimmer and pump: width = 0 m is not possible; expected 0.001 to 100 m");
  s = sump_of({0.12}, {}, 0.45);
  CHECK(message(s) == here + "pump: running level = 0.45 m stands above the rim of the sump, 0.4 m");
  s = sump_of({}, {});
  CHECK(message(s) == here + "sump has no chambers");
  // The last chamber lies behind the baffle before the one with a gap.
  s = sump_of({0.12, 0.25, 0.18}, {over(0.20), under(0.03)}, 0.22);
  CHECK(message(s) ==
        here + "pump: running level = 0.22 m stands above the crest of the baffle between drains and skimmer, 0.2 m");

  CHECK_THROWS_WITH_AS((void)pour(good, levels_of({0.41, 0.25, 0.15}), 1.0),
                       "tankwright::plumbing::pour_into_sump: drains: level = 0.41 m stands above the rim, 0.4 m",
                       invalid_input);
  CHECK_THROWS_WITH_AS(
      (void)pour(good, levels_of({0.30, 0.25}), 1.0),
      "tankwright::plumbing::pour_into_sump: number of levels = 2 differs from the number of chambers, 3",
      invalid_input);
  CHECK_THROWS_AS((void)pour(good, levels_of({0.30, -0.25, 0.1}), 1.0), invalid_input);
  CHECK_THROWS_AS((void)pour(good, levels_of({0.30, 0.25, 0.1}), -1.0), invalid_input);
  CHECK_THROWS_AS((void)pour(good, levels_of({0.30, 0.25, 0.1}), 1.0, 3), invalid_input);
  CHECK_THROWS_AS((void)tp::running_levels(good, litres_per_second(-1.0)), invalid_input);
  CHECK_THROWS_AS((void)tp::water_in_sump(good, levels_of({0.30, 0.25})), invalid_input);
}

TEST_CASE("sump: heights that are just possible are taken") {
  const auto runs = [](const tp::sump& s) { (void)tp::running_levels(s, litres_per_second(0.1)); };
  // A crest as high as the rim, a level at the rim, a pump chamber at its crest.
  CHECK_NOTHROW(runs(sump_of({0.1, 0.1}, {over(0.40)})));
  CHECK_NOTHROW(runs(sump_of({0.1}, {}, 0.40)));
  CHECK_NOTHROW(runs(sump_of({0.1, 0.1}, {over(0.25)}, 0.25)));
  const auto rest = pour(sump_of({0.1, 0.1}, {over(0.40)}), levels_of({0.40, 0.10}), 0.0);
  TW_CHECK(by_hand, rest.over_the_rim, litres(0.0), tolerance{});
  // Joined from the first chamber on, by whatever gap, no crest lies before the pump.
  CHECK_NOTHROW(runs(sump_of({0.1, 0.1}, {under(0.03)}, 0.39)));
  tp::sump narrow = sump_of({0.1, 0.1}, {under(0.0005)}, 0.39);
  CHECK_NOTHROW((void)tp::sump_capacity(narrow));
}

TEST_CASE("sump: a baffle that cannot be built is refused by its name, whatever it is") {
  const auto message = [](double crest, double gap, double thickness) {
    tp::sump s = sump_of({0.1, 0.1}, {over(crest)});
    s.baffles[0].gap = metres(gap);
    s.baffles[0].thickness = metres(thickness);
    return message_of<invalid_input>([&] { (void)tp::sump_capacity(s); });
  };
  const std::string here = "tankwright::plumbing::sump_capacity: baffle between drains and pump: ";
  CHECK(message(0.0, 0.0, 0.0) == here + "crest = 0 m is not possible; expected 0.001 to 20 m");
  CHECK(message(0.3, -0.01, 0.0) == here + "gap = -0.01 m is not possible; expected 0 to 20 m");
  CHECK(message(0.3, 0.0, -0.01) == here + "thickness = -0.01 m is not possible; expected 0 to 10 m");
  CHECK(message(0.3, 0.3, 0.0) == here + "gap = 0.3 m is not below the crest, 0.3 m");
  CHECK(message(0.4, 0.4, 0.0) == here + "gap = 0.4 m is not below the crest, 0.4 m");
}

TEST_CASE("sump: every question refuses in its own name") {
  const tp::sump good = sump_of({0.1, 0.1}, {over(0.3)});
  tp::sump bad = good;
  bad.rim = metres(0.0);
  check_refusals({
      TW_REFUSED("plumbing::water_in_sump", "sump: rim", tp::water_in_sump(bad, levels_of({0.1, 0.1}))),
      TW_REFUSED("plumbing::sump_capacity", "sump: rim", tp::sump_capacity(bad)),
      TW_REFUSED("plumbing::pour_into_sump", "sump: rim", pour(bad, levels_of({0.1, 0.1}), 1.0)),
      TW_REFUSED("plumbing::level_after_evaporation", "sump: rim", tp::level_after_evaporation({bad, litres(1.0)})),
      TW_REFUSED("plumbing::water_in_sump", "drains: level", tp::water_in_sump(good, levels_of({-0.25, 0.1}))),
      TW_REFUSED("plumbing::water_in_sump", "pump: level", tp::water_in_sump(good, levels_of({0.25, -0.1}))),
  });
}

TEST_CASE("sump: all but the last drop may evaporate, and the last one too") {
  const evidence loss{"tankwright::plumbing::level_after_evaporation", kind::identity, "worked by hand"};
  const tp::sump s = sump_of({0.5}, {}, 0.25);  // 125 L
  TW_CHECK(loss, tp::level_after_evaporation({s, litres(125.0)}), metres(0.0), tolerance{});
  TW_CHECK(loss, tp::level_after_evaporation({s, litres(124.5)}), metres(0.001), within(metres(1e-12)));
  CHECK_THROWS_AS((void)tp::level_after_evaporation({s, litres(125.5)}), invalid_input);
}

TEST_CASE("sump: what is poured goes into the first chamber unless said otherwise") {
  const tp::sump two = sump_of({0.1, 0.1}, {over(0.25)});
  const tp::sump_pour into_first{.sump = two, .levels = levels_of({0.1, 0.1}), .added = litres(5.0)};
  check_levels(tp::pour_into_sump(into_first), {0.15, 0.10});
}

TEST_CASE("sump: the last chamber runs at its level without a band, and a baffle is sharp unless said otherwise") {
  const tp::sump three = sump_of({0.12, 0.25, 0.18}, {over(0.30), over(0.25)}, 0.15);
  // 0.02 L/s stand about 0.9 mm over 0.4 m: a baffle of 1 mm would not be sharp there.
  const flow_rate q = litres_per_second(0.02);
  const auto run = tp::running_levels(three, q);
  TW_CHECK(running_by_hand, run.chambers[2].level.low, metres(0.15), tolerance{});
  TW_CHECK(running_by_hand, run.chambers[2].level.central, metres(0.15), tolerance{});
  TW_CHECK(running_by_hand, run.chambers[2].level.high, metres(0.15), tolerance{});
  const tp::full_width_edge sharp{.width = metres(0.4), .crest_height = metres(0.25), .thickness = metres(0.0)};
  const length head = metres(run.chambers[1].level.central.value() - 0.25);
  TW_CHECK(running_by_hand, tp::flow_over(sharp, head).flow.central, q, relative(1e-9));
}
