// SPDX-License-Identifier: BSL-1.0
// Random plans there and back: through TOML and through JSON they come back equal, to the last bit of each number, and
// give the same report, byte for byte, or the same mistakes. TANKWRIGHT_ROUND_TRIPS says how many plans of each kind (100;
// continuous integration: 1000), TANKWRIGHT_SEED where they begin.
#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <random>
#include <regex>
#include <sstream>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/exchange.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/plan/validate.hpp>
#include <tankwright/text/written.hpp>

#include "plan/every_key.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace te = tankwright::exchange;

namespace {

evidence there_and_back(const char* function) { return {function, kind::property, "random plans there and back"}; }

[[nodiscard]] std::uint64_t from_environment(const char* name, std::uint64_t otherwise) {
  const char* said = std::getenv(name);
  return said ? std::strtoull(said, nullptr, 10) : otherwise;
}

/// All that a plan holds, to the bit: each table, each key with what was given. Two plans are equal when this is.
class picture_walker final : public plan::walker {
 public:
  std::string all{};

 private:
  void say(const plan::key_info& key, const std::string& what) { all += path(key.name) + " = " + what + "\n"; }
  [[nodiscard]] static std::string bits(const plan::value_base& v) {
    const auto of = [](double x) { return std::to_string(std::bit_cast<std::uint64_t>(x == 0.0 ? 0.0 : x)); };
    return of(v.si()) + (v.doubt().given ? "+/-" + of(v.doubt().half_width) : "");
  }
  void number(const plan::key_info& key, plan::value_base& v) override {
    if (v.given()) say(key, bits(v));
  }
  void numbers(const plan::key_info& key, plan::values_base& v) override {
    for (const auto& item : v.items) say(key, bits(item));
  }
  void one_of(const plan::key_info& key, plan::word_base& w, std::span<const std::string_view>) override {
    if (w.given()) say(key, std::to_string(w.index()));
  }
  void yes_or_no(const plan::key_info& key, plan::flag& f) override {
    if (f.given()) say(key, f ? "yes" : "no");
  }
  void text(const plan::key_info& key, std::string& t) override {
    if (!t.empty()) say(key, t);
  }
  void rating(const plan::key_info& key, plan::composite& c) override {
    if (c.given()) say(key, c.write());
  }
  void enter(const plan::key_info&) override { all += "[" + path() + "]\n"; }
};

[[nodiscard]] std::string picture_of(const plan::build& build) {
  picture_walker walk;
  plan::look_at(walk, build);
  return std::move(walk.all);
}

/// The lines that only one of two pictures has.
void show_difference(const std::string& which, const std::string& a, const std::string& b) {
  const auto lines = [](const std::string& text) {
    std::vector<std::string> all;
    std::istringstream in{text};
    for (std::string line; std::getline(in, line);) all.push_back(line);
    std::sort(all.begin(), all.end());
    return all;
  };
  const auto one = lines(a), other = lines(b);
  std::vector<std::string> differ;
  std::set_symmetric_difference(one.begin(), one.end(), other.begin(), other.end(), std::back_inserter(differ));
  for (const auto& line : differ) MESSAGE(which, ": ", line);
}

/// The mistakes, whatever their order. Of a quantity, number and unit are left out: where no number in the unit it was
/// given in is the same double, a file has it in SI.
[[nodiscard]] std::vector<std::string> lines_of(const std::vector<plan::mistake>& all) {
  static const std::regex quantity{"-?[0-9][0-9.e+-]* ?(US |imp )?[^ ;,)]*( gauge| abs)?"};
  std::vector<std::string> lines;
  for (const plan::mistake& m : all) {
    lines.push_back(m.path + ": " + std::regex_replace(m.reason, quantity, "#") + " (" + m.clashes + ")");
  }
  std::sort(lines.begin(), lines.end());
  return lines;
}
[[nodiscard]] std::vector<std::string> lines_of(const std::vector<te::located_mistake>& all) {
  std::vector<plan::mistake> plain;
  for (const te::located_mistake& m : all) plain.push_back(m.what);
  return lines_of(plain);
}

[[nodiscard]] std::string report_of(const plan::build& build) {
  return te::report_to_json(decisions::assess(build), {}, {.indent = 0});
}

/// What the plans of one kind were.
struct tally {
  int plans = 0, assessed = 0;
  std::size_t mistakes = 0, keys = 0;
  bool toml = true, json = true, read = true, reports = true;  // all of them so far

  /// One row of the ledger for each, however many plans there were.
  void record() const {
    TW_HOLDS(there_and_back("tankwright::exchange::to_toml"), toml);
    TW_HOLDS(there_and_back("tankwright::exchange::to_json"), json);
    TW_HOLDS(there_and_back("tankwright::exchange::read_plan"), read);
    TW_HOLDS(there_and_back("tankwright::exchange::report_to_json"), reports);
  }
};

void there_and_back(const plan::build& build, const std::string& which, tally& count) {
  const std::string picture = picture_of(build);
  ++count.plans;
  count.keys += static_cast<std::size_t>(std::count(picture.begin(), picture.end(), '\n'));
  const auto mistakes = plan::validate(build);
  const std::string report = mistakes.empty() ? report_of(build) : std::string{};
  count.assessed += mistakes.empty();
  count.mistakes += mistakes.size();
  const std::string toml = te::to_toml(build), json = te::to_json(build);
  const te::reading from_toml = te::read_plan(toml, te::notation::toml);
  const te::reading from_json = te::read_plan(json, te::notation::json);
  if (picture.empty()) return;  // an empty file, which is refused as such
  const bool same_toml = picture_of(from_toml.build) == picture, same_json = picture_of(from_json.build) == picture;
  if (!same_toml) show_difference(which + ", TOML", picture, picture_of(from_toml.build));
  if (!same_json) show_difference(which + ", JSON", picture, picture_of(from_json.build));
  count.toml = count.toml && same_toml;
  count.json = count.json && same_json;
  const auto wanted = lines_of(mistakes);
  for (const te::reading* back : {&from_toml, &from_json}) {
    const auto said = lines_of(back->mistakes);
    if (said != wanted) {
      std::vector<std::string> differ;
      std::set_symmetric_difference(wanted.begin(), wanted.end(), said.begin(), said.end(), std::back_inserter(differ));
      for (const auto& line : differ) MESSAGE(which, ": ", line);
    }
    count.read = count.read && said == wanted;
    if (mistakes.empty() && report_of(back->build) != report) {
      MESSAGE(which, ": another report");
      count.reports = false;
    }
  }
  // What was read is written the same, in the same units, from either.
  const bool same_units = te::to_toml(from_json.build) == te::to_toml(from_toml.build);
  if (!same_units) MESSAGE(which, ": written in other units");
  count.toml = count.toml && same_units;
}

/// A plan that ships, with numbers moved a little, written as people write them, doubted, and parts left out.
class varied final : public plan::visitor {
 public:
  explicit varied(std::uint64_t seed) : engine_{seed} {}

 private:
  [[nodiscard]] double uniform() { return std::uniform_real_distribution<double>{0.0, 1.0}(engine_); }
  void move(const plan::key_info& key, plan::value_base& v) {
    if (!v.given() || uniform() < 0.5) return;
    const bool whole = key.whole || key.quantity == "temperature";
    const double si = whole ? v.si() : std::fmin(key.high, v.si() * (0.998 + 0.004 * uniform()));
    const double drawn = uniform();
    if (drawn < 0.3) return v.give(si, v.unit(), v.doubt());  // any double
    const auto system = drawn < 0.6 ? text::unit_system::us : text::unit_system::si;
    const amount shown{key.quantity, si, si, si};
    std::string written = text::in(shown, text::everyday_unit(shown, system), text::significant(4));
    if (uniform() < 0.3 && key.quantity != "temperature") written += " +/- 3 %";
    try {
      plan::give_quantity(v, key.quantity, written);
    } catch (const text_error&) {  // 100.1 %
    }
  }
  void number(const plan::key_info& key, plan::value_base& v) override { move(key, v); }
  void numbers(const plan::key_info& key, plan::values_base& v) override {
    for (auto& item : v.items) move(key, item);
  }
  void one_of(const plan::key_info&, plan::word_base&, std::span<const std::string_view>) override {}
  void yes_or_no(const plan::key_info&, plan::flag&) override {}
  void text(const plan::key_info& key, std::string& t) override {
    static constexpr std::string_view some[] = {"a \"quoted\" \\ one", "two\nlines\tof it", "Größe ½ # no comment"};
    if (key.name == "note" && uniform() < 0.3) t = some[static_cast<std::size_t>(uniform() * std::size(some))];
  }
  void rating(const plan::key_info&, plan::composite&) override {}
  void table(const plan::key_info& key, plan::table_ref& t) override {
    if (!t.present()) return;
    if (!key.needed && uniform() < 0.05) return t.remove();
    t.visit(*this);
  }
  void tables(const plan::key_info&, plan::tables_ref& t) override {
    for (std::size_t i = 0; i < t.size(); ++i) t.visit(i, *this);
  }
  std::mt19937_64 engine_;
};

[[nodiscard]] plan::build shipped(const char* name) {
  std::ifstream in{std::string{TANKWRIGHT_SOURCE_DIR} + "/examples/commission/" + name, std::ios::binary};
  const std::string text{std::istreambuf_iterator<char>{in}, {}};
  return te::read_plan(text, te::notation::toml).build;
}

}  // namespace

TEST_CASE("round trip: random plans drawn from the descriptions come back equal from TOML and JSON") {
  const auto seed = from_environment("TANKWRIGHT_SEED", 20261129),
             count = from_environment("TANKWRIGHT_ROUND_TRIPS", 100);
  tally all;
  for (std::uint64_t i = 0; i < count; ++i) {
    const double share = 0.1 + 0.8 * static_cast<double>(i % 7) / 6.0;
    there_and_back(random_plan(seed + i, share), "drawn plan, seed " + std::to_string(seed + i), all);
  }
  MESSAGE(all.plans, " plans drawn, seed ", seed, ": ", all.keys, " keys, ", all.mistakes, " mistakes, ", all.assessed,
          " assessed");
  all.record();
  CHECK(all.keys > 20 * count);
}

TEST_CASE("round trip: variations of the plans that ship come back equal and give the same report, byte for byte") {
  const auto seed = from_environment("TANKWRIGHT_SEED", 20261129),
             count = from_environment("TANKWRIGHT_ROUND_TRIPS", 100);
  const plan::build plans[] = {shipped("demo.toml"), shipped("demo_us.toml"), shipped("demo_flood.toml")};
  tally all;
  for (std::uint64_t i = 0; i < count; ++i) {
    plan::build build = plans[i % 3];
    varied vary{seed + i};
    describe(vary, build);
    there_and_back(build, "varied plan, seed " + std::to_string(seed + i), all);
  }
  MESSAGE(all.plans, " plans varied, seed ", seed, ": ", all.keys, " keys, ", all.mistakes, " mistakes, ", all.assessed,
          " assessed");
  all.record();
  CHECK(static_cast<std::uint64_t>(all.assessed) > count / 4);  // the comparison of reports is no empty one
}
