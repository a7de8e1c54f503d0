// SPDX-License-Identifier: BSL-1.0
// Laws that are known only within a band: each reason that an engine gives belongs to one, and bands that rest on a law
// hold 95 % of plain random draws.
#include <array>
#include <cmath>
#include <fstream>
#include <iterator>
#include <map>
#include <random>
#include <set>
#include <string>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/bands.hpp>
#include <tankwright/decisions/first_screen.hpp>
#include <tankwright/decisions/laws.hpp>
#include <tankwright/decisions/measure_first.hpp>
#include <tankwright/decisions/shares.hpp>
#include <tankwright/exchange/read.hpp>

#include "decisions/asked.hpp"
#include "decisions/drawn.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

plan::build example(const std::string& name) {
  std::ifstream file{std::string{TANKWRIGHT_SOURCE_DIR} + "/examples/commission/" + name + ".toml"};
  const std::string text{std::istreambuf_iterator<char>{file}, {}};
  const auto read = exchange::read_plan(text, exchange::notation::toml);
  REQUIRE(read.usable());
  return read.build;
}

}  // namespace

TEST_CASE("laws: every band of the examples belongs to a law, and every law is named once") {
  const evidence listed{"tankwright::decisions::law_of", kind::property, "every band of the four example plans"};
  std::size_t bands = 0;
  for (const char* name : {"demo", "demo_us", "demo_flood", "demo_plywood_us"}) {
    for (const auto& f : decisions::assess(example(name)).findings) {
      for (const auto& n : f.numbers) {
        if (n.value.is_sharp()) continue;
        ++bands;
        CHECK_MESSAGE(decisions::law_of(n.value.reason) != nullptr, f.id, ": ", n.value.reason);
        TW_HOLDS(listed, decisions::law_of(n.value.reason) != nullptr);
      }
    }
  }
  CHECK(bands > 200);
  std::set<std::string_view> ids, reasons;
  const evidence ended{"tankwright::decisions::all_laws", kind::property, "each id once, each with its sentence"};
  const evidence found{"tankwright::decisions::law_with", kind::property, "each id finds its own law"};
  for (const decisions::law& one : decisions::all_laws()) {
    TW_HOLDS(ended, (ids.insert(one.id).second && !one.says.empty()));
    TW_HOLDS(found, decisions::law_with(one.id) == &one);
  }
  TW_HOLDS(found, decisions::law_with("no such law") == nullptr);
  for (const auto& one : decisions::every_band_of_law) {
    CHECK_MESSAGE(reasons.insert(one.reason).second, one.reason);
    CHECK_MESSAGE(ids.contains(one.law), one.law);
  }
  CHECK(decisions::law_of("no such reason") == nullptr);
  CHECK(decisions::law_of("") == nullptr);
}

TEST_CASE("laws: bands that rest on a law hold 95 % of plain random draws") {
  const evidence promise{"tankwright::decisions::assess_with_doubts", kind::identity, "plain random draws"};
  const plan::build build = example("demo");
  const auto judged = decisions::assess_with_doubts(build);
  const auto shares = decisions::shares_of(build, judged);
  struct one {
    const decisions::finding* banded;
    const decisions::number* number;
    const decisions::decision* asked;
    double answered = 0.0, inside = 0.0;
  };
  std::vector<one> all;
  for (const auto& of : shares) {  // those of which a law makes more than half
    const auto& most = of.shares.front();
    const auto* f = judged.all.find(of.id);
    if (!most.of_law || most.part < 0.5 || all.size() == 6) continue;
    for (const auto* d : decisions::all_decisions()) {
      if (d->id == of.id) all.push_back({f, f->find(of.number_id, of.place), d});
    }
  }
  REQUIRE(all.size() >= 2);
  drawn_plan draws{build};
  std::mt19937_64 random{20261130};
  std::uniform_real_distribution<double> even{0.0, 1.0};
  std::normal_distribution<double> normal{0.0, 1.0};
  constexpr int count = 3000;
  for (int i = 0; i < count; ++i) {
    std::vector<double> u(draws.doubts().size());
    for (double& x : u) x = even(random);
    draws.move_to(u);
    std::map<std::string_view, double> side;  // of each law
    for (const decisions::law& l : decisions::all_laws()) {
      side[l.id] = l.by == decisions::spread::standard_error ? normal(random) : 2.0 * even(random) - 1.0;
    }
    for (one& o : all) {
      const auto answers = asked(*o.asked, draws.plan());
      if (answers.empty()) continue;
      const auto* n = answers.front().find(o.number->id, o.number->place);
      if (!n) continue;
      const amount& a = n->value;
      const decisions::law* by = decisions::law_of(a.reason);
      const double s = by ? side.at(by->id) : 0.0;
      const double x = a.central + s * (s < 0.0 ? a.central - a.low : a.high - a.central);
      o.answered += 1.0;
      o.inside += x >= o.number->value.low && x <= o.number->value.high;
    }
  }
  for (const one& o : all) {
    const double coverage = o.inside / o.answered;
    const std::string said =
        std::string{o.banded->id} + " holds " + std::to_string(100.0 * coverage) + " % of its draws";
    MESSAGE(said);
    CHECK_MESSAGE(std::fabs(coverage - 0.95) <= 0.02, said);
    TW_CHECK(promise, coverage, 0.95, within(0.02));  // a standard error of 0.004
  }
}

TEST_CASE("laws: shares and what to measure first name a law by its id, and say it") {
  const plan::build build = example("demo");
  const auto judged = decisions::assess_with_doubts(build);
  int laws = 0;
  for (const auto& of : decisions::shares_of(build, judged)) {
    for (const auto& s : of.shares) {
      if (!s.of_law) continue;
      ++laws;
      const decisions::law* l = decisions::law_with(s.what);
      CHECK_MESSAGE(l != nullptr, s.what);
      if (l) CHECK(s.says == l->says);
    }
  }
  CHECK(laws > 10);
}
