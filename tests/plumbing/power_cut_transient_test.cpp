// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/power_cut_transient.hpp>

#include <algorithm>
#include <random>

#include <tankwright/plumbing/emptying.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

const evidence closed{"tankwright::plumbing::power_cut_transient", kind::identity, "closed form"};
const evidence conserved{"tankwright::plumbing::power_cut_transient", kind::property, "volume conserved to 1e-12"};
const evidence ends{"tankwright::plumbing::power_cut_transient", kind::property, "ends at the levels of power_cut"};

const water::liquid sea{kilograms_per_cubic_metre(1023.3), millipascal_seconds(0.96)};

tp::pipe_run pipe(const char* label, double bore_mm, double metre, double k) {
  return {.label = label,
          .bore = tp::pipe_bore{millimetres(bore_mm)},
          .length = metres(metre),
          .fittings = tp::known_loss(k)};
}

tp::power_cut_transient_input lagoon() {
  return {.system = {.display = {.surface = square_metres(2.16),
                                 .edge = tp::full_width_edge{.width = metres(0.8), .crest_height = metres(0.55)},
                                 .box = tp::overflow_box{.horizontal_area = square_metres(0.06),
                                                         .falls_by = millimetres(120.0)},
                                 .drains = {pipe("main drain", 40.9, 1.2, 1.0)}},
                     .sump = {.rim = metres(0.45),
                              .running_level = metres(0.20),
                              .chambers = {{.label = "drains", .horizontal_area = square_metres(0.12)},
                                           {.label = "skimmer",
                                            .horizontal_area = square_metres(0.25),
                                            .gear = square_metres(0.02)},
                                           {.label = "pump", .horizontal_area = square_metres(0.18)}},
                              .baffles = {{.crest = metres(0.30), .width = metres(0.4)},
                                          {.crest = metres(0.25), .width = metres(0.4)}}},
                     .returns = {{.label = "return A",
                                  .flow = litres_per_hour(5000.0),
                                  .outlet_below_edge = millimetres(10.0),
                                  .pipe = pipe("return A", 34.0, 2.0, 4.0)},
                                 {.label = "return B",
                                  .flow = litres_per_hour(3000.0),
                                  .outlet_below_edge = millimetres(-30.0),
                                  .pipe = pipe("return B", 26.0, 2.0, 4.0)}},
                     .edge_above_floor = metres(1.6),
                     .water = sea}};
}

/// Display, pipes and sump together at one sample.
double total_water(const tp::power_cut_transient_input& in, const tp::power_cut_history& history, std::size_t sample) {
  std::vector<length> levels;
  for (const auto& c : history.chambers) levels.push_back(c.level[sample]);
  return in.system.display.surface->value() * history.display[sample].value() + history.under_way[sample].value() +
         history.on_the_floor[sample].value() + tp::water_in_sump(in.system.sump, levels).value();
}

}  // namespace

TEST_CASE("transient: the display falls over its edge as the closed form says") {
  // A standpipe of 100 mm is a plain weir up to 50 mm: Q = C h^1.5, so 1/sqrt(h) = 1/sqrt(h0) + C t/(2 A). 25 mm at
  // first.
  auto in = lagoon();
  in.system.display = {.surface = square_metres(1.0), .edge = tp::standpipe{tp::pipe_bore{millimetres(100.0)}}};
  in.system.returns = {{.label = "return A", .flow = litres_per_hour(6000.0), .outlet_below_edge = millimetres(-30.0)}};
  const auto history = tp::power_cut_transient(in);
  const double c = 100.0 * std::pow(1000.0, 1.5) / 7500.0 * 1e-3;
  REQUIRE(history.time.size() == 121);
  for (std::size_t i = 0; i < history.time.size(); i += 4) {
    const double root = 1.0 / std::sqrt(0.025) + c * history.time[i].value() / 2.0;
    TW_CHECK(closed, history.display[i], metres(1.0 / (root * root)), relative(2e-3));
  }
}

TEST_CASE("transient: a back-siphon is two tanks that level") {
  // Losses alone, no flow before: from 1.6 m less 0.2 m down by 100 mm of the display, up by what the sump gains. Two
  // tanks of 2 and 0.5 m2 level through a/sqrt(sum of K + 1).
  auto in = lagoon();
  in.system.display = {.surface = square_metres(2.0), .edge = in.system.display.edge};
  in.system.sump.chambers = {{.label = "sump", .horizontal_area = square_metres(0.5)}};
  in.system.sump.baffles.clear();
  in.system.sump.rim = metres(0.9);
  in.system.returns = {{.label = "return A",
                        .flow = litres_per_hour(0.0),
                        .outlet_below_edge = millimetres(100.0),
                        .pipe = pipe("return A", 34.0, 0.0, 5.0)}};
  in.sample_every = seconds(2.0);
  const auto history = tp::power_cut_transient(in);
  const tp::levelling task{.first = square_metres(2.0),
                           .second = square_metres(0.5),
                           .opening = tp::outlet_through(tp::resisting_pipe{tp::pipe_bore{millimetres(34.0)}, 6.0}),
                           .from = metres(1.4),
                           .to = metres(1.4)};
  int compared = 0;
  for (std::size_t i = 1; i < history.time.size() && history.display[i].value() > -0.0999; ++i, ++compared) {
    auto until = task;
    until.to = metres(1.6) + history.display[i] - history.chambers[0].level[i];
    TW_CHECK(closed, tp::levelling_time(until), history.time[i], relative(1e-4));
  }
  CHECK(compared > 10);
  TW_CHECK(ends, history.display.back(), metres(-0.1), within(metres(1e-6)));
}

TEST_CASE("transient: water is kept, and it ends where the power cut says") {
  const auto in = lagoon();
  const auto history = tp::power_cut_transient(in);
  const auto cut = tp::power_cut(in.system);
  const double before = total_water(in, history, 0);
  for (std::size_t i = 0; i < history.time.size(); ++i) {
    TW_CHECK(conserved, total_water(in, history, i), before, relative(1e-12));
  }
  TW_CHECK(conserved, history.under_way.front(), cut.falls.box.central + cut.falls.drain_pipes + cut.falls.return_pipes,
           relative(1e-12));
  for (std::size_t i = 0; i < 3; ++i) {
    TW_CHECK(ends, history.chambers[i].level.front(), cut.running[i].level.central, relative(1e-12));
    TW_CHECK(ends, history.chambers[i].level.back(), cut.settled[i].level.central, within(millimetres(0.05)));
  }
  CHECK(history.chambers[1].label == "skimmer");
  CHECK(history.chambers[1].peak >= history.chambers[1].level.back());
  length highest{};
  for (const auto& c : history.chambers) highest = std::max(highest, c.peak);
  TW_CHECK(ends, in.system.sump.rim.get() - highest, cut.margin.central, within(millimetres(0.2)));
  for (const auto& v : history.on_the_floor) CHECK(v == litres(0.0));
  CHECK(history.caution.text == tp::power_cut_caution.text);
}

TEST_CASE("transient: random systems") {
  constexpr unsigned seed = 20260803;
  MESSAGE("seed ", seed);
  std::mt19937 random{seed};
  const auto uniform = [&](double a, double b) { return std::uniform_real_distribution<double>{a, b}(random); };
  int ran = 0;
  for (int trial = 0; trial < 40; ++trial) {
    auto in = lagoon();
    const auto n = static_cast<std::size_t>(1 + random() % 4);
    tp::sump& s = in.system.sump;
    s.chambers.clear();
    s.baffles.clear();
    double lowest = 0.4;
    for (std::size_t i = 0; i < n; ++i) {
      tp::area_profile plan = square_metres(uniform(0.04, 0.3));
      if (trial % 10 == 3) {
        plan = tp::area_profile{{metres(0.0), square_metres(uniform(0.05, 0.2))},
                                {metres(0.5), square_metres(uniform(0.1, 0.3))}};
      }
      s.chambers.push_back({.label = "chamber", .horizontal_area = plan});
      if (i + 1 == n) break;
      s.baffles.push_back(
          {.crest = metres(uniform(0.15, 0.40)), .width = metres(0.4), .gap = metres(random() % 4 == 0 ? 0.05 : 0.0)});
      lowest = std::fmin(lowest, s.baffles.back().crest->value());
    }
    s.running_level = metres(uniform(0.03, lowest));
    s.rim = metres(0.45);
    in.system.display.surface = square_metres(uniform(0.3, 3.0));
    if (trial % 2) in.system.display.box.reset();
    in.system.returns[0].outlet_below_edge = millimetres(uniform(-5.0, 30.0));
    in.until = minutes(20.0);
    in.sample_every = seconds(60.0);
    const tp::power_cut_history history = tp::power_cut_transient(in);
    ++ran;
    const double before = total_water(in, history, 0);
    for (std::size_t i = 0; i < history.time.size(); ++i) {
      TW_CHECK(conserved, total_water(in, history, i), before, relative(1e-12));
    }
    const auto cut = tp::power_cut(in.system);
    for (std::size_t i = 0; i < n; ++i) {
      TW_CHECK(ends, history.chambers[i].level.back(), cut.settled[i].level.central, within(millimetres(0.5)));
      CHECK(history.chambers[i].peak <= in.system.sump.rim.get());
    }
  }
  CHECK(ran == 40);
}

TEST_CASE("transient: above the rim water leaves, and holds no siphon back") {
  // 2 m2 fall by 100 mm into 0.25 m2: 800 mm of imagined wall would hold back half of the head. The siphon's head ends at
  // the rim instead, 0.3 m: the last of its 200 L comes when the display has fallen, as two tanks say from then on.
  const evidence flood{"tankwright::plumbing::power_cut_transient", kind::identity, "volumes by hand, closed form"};
  auto in = lagoon();
  in.system.display = {.surface = square_metres(2.0), .edge = in.system.display.edge};
  in.system.sump = {.rim = metres(0.3),
                    .running_level = metres(0.2),
                    .chambers = {{.label = "sump", .horizontal_area = square_metres(0.25)}}};
  in.system.returns = {{.label = "return A",
                        .flow = litres_per_hour(0.0),
                        .outlet_below_edge = millimetres(100.0),
                        .pipe = pipe("return A", 34.0, 0.0, 5.0)}};
  in.sample_every = seconds(2.0);
  in.until = minutes(4.0);
  const auto history = tp::power_cut_transient(in);
  TW_CHECK(flood, history.on_the_floor.back(), litres(175.0), within(litres(0.01)));
  TW_CHECK(flood, history.chambers[0].level.back(), metres(0.3), within(metres(1e-12)));
  TW_CHECK(flood, history.chambers[0].peak, metres(0.3), within(metres(1e-12)));
  // From the moment that it is full: A dz/dt = -a sqrt(2 g (1.3 + z)/6), so the root of the height falls evenly.
  const double a = 0.25 * 3.14159265358979323846 * 0.034 * 0.034 * std::sqrt(2.0 * 9.80665 / 6.0);
  std::size_t full = 0;
  while (history.on_the_floor[full] == litres(0.0)) ++full;
  const double start = std::sqrt(1.3 + history.display[full].value());
  int compared = 0;
  for (std::size_t i = full; i < history.time.size() && history.display[i].value() > -0.0995; ++i, ++compared) {
    const double root = start - a * (history.time[i] - history.time[full]).value() / (2.0 * 2.0);
    TW_CHECK(flood, history.display[i], metres(root * root - 1.3), within(millimetres(0.05)));
  }
  CHECK(compared > 20);
  const auto cut = tp::power_cut(in.system);
  TW_CHECK(flood, cut.on_the_floor.central, litres(175.0), within(litres(0.01)));
  TW_CHECK(flood, cut.margin.central, metres(0.3 - 0.2 - 0.8), within(millimetres(0.1)));
}

TEST_CASE("transient: what cannot be is refused by name") {
  const auto message = [](const tp::power_cut_transient_input& in) {
    try {
      (void)tp::power_cut_transient(in);
    } catch (const invalid_input& e) {
      return std::string{e.what()};
    }
    return std::string{"accepted"};
  };
  const std::string here = "tankwright::plumbing::power_cut_transient: ";
  auto in = lagoon();
  in.system.returns[0].pipe.reset();
  CHECK(message(in) == here + "return A has no pipe: how fast it siphons back is not known");
  in = lagoon();
  in.system.returns[0].pipe->valve = tp::flow_coefficient::from_kv(0.0);  // holds its water back
  CHECK(message(in) == "accepted");
  CHECK(tp::power_cut_transient(in).display.back() > length{});
  in = lagoon();
  in.system.edge_above_floor = metres(0.0);
  CHECK(message(in) == here + "edge_above_floor = 0 m is not possible; expected more than 0 and at most 50 m");
  in = lagoon();
  in.sample_every = seconds(0.0);
  CHECK(message(in) == here + "sample_every = 0 s is not possible; expected more than 0 and at most 1000000 s");
  in = lagoon();
  in.sample_every = seconds(1e-6);
  CHECK(message(in) == here + "number of samples = 600000000 is not possible; expected 0 to 100000");
  in = lagoon();
  in.until = seconds(-1.0);
  CHECK(message(in) == here + "until = -1 s is not possible; expected more than 0 and at most 1000000 s");
  in = lagoon();
  in.system.sump.running_level = metres(0.26);
  CHECK(message(in).starts_with(here + "pump: running level = 0.26 m stands above the crest"));
}

TEST_CASE("transient: the peak is when it was first reached, from the moment the power fails") {
  // Nothing runs and nothing siphons: all stands still, and its peak is that of the beginning.
  auto still = lagoon();
  for (auto& r : still.system.returns) {
    r.flow = flow_rate{};
    r.outlet_below_edge = millimetres(-30.0);
    r.pipe.reset();
  }
  still.system.display.box.reset();
  still.system.display.drains.clear();
  still.until = seconds(10.0);
  still.sample_every = seconds(1.0);
  const auto history = tp::power_cut_transient(still);
  REQUIRE(history.time.size() == 11);
  TW_CHECK(ends, history.time.front(), seconds(0.0), tolerance{});
  for (const auto& c : history.chambers) {
    TW_CHECK(ends, c.peak_at, seconds(0.0), tolerance{});
    TW_CHECK(ends, c.peak, c.level.front(), tolerance{});
  }
  // A chamber that only falls has its peak at the beginning too: the first one, whose drain holds next to nothing.
  auto in = lagoon();
  in.system.sump.chambers[2].horizontal_area = square_metres(2.0);
  in.system.display.drains.clear();
  in.system.display.box.reset();
  in.until = seconds(60.0);
  in.sample_every = seconds(1.0);
  const auto fall = tp::power_cut_transient(in);
  TW_CHECK(ends, fall.chambers[0].peak, fall.chambers[0].level.front(), tolerance{});
  TW_CHECK(ends, fall.chambers[0].peak_at, seconds(0.0), tolerance{});
  CHECK(fall.chambers[0].level.back() < fall.chambers[0].level.front());
}
