// SPDX-License-Identifier: BSL-1.0
// Two thousand plans at random around the demo: whatever they say, the report is sound, and what physics says is
// monotone is. TANKWRIGHT_SEED draws others.
#include "decisions/random_plans.hpp"

#include <cmath>
#include <cstdlib>
#include <ctime>
#include <iterator>
#include <map>
#include <optional>
#include <tankwright/decisions/assess.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

std::uint64_t seed() {
  const char* given = std::getenv("TANKWRIGHT_SEED");
  return given ? std::strtoull(given, nullptr, 10) : 20261129;
}

/// What is wrong with a finding by itself; empty: nothing.
std::string fault_of(const decisions::finding& f) {
  for (const auto& n : f.numbers) {
    const std::string name = std::string{n.id} + (n.place.empty() ? "" : "@" + n.place) + " ";
    if (!(std::isfinite(n.value.low) && std::isfinite(n.value.central) && std::isfinite(n.value.high))) {
      return name + "is not finite";
    }
    if (!(n.value.low <= n.value.central && n.value.central <= n.value.high)) return name + "has a band out of order";
    if (n.value.quantity.empty()) return name + "has no quantity";
  }
  if (f.verdict == verdict::not_enough_known) {
    return f.note.empty() && f.measure_next.empty() ? "not enough known, and not said why" : "";
  }
  const auto* m = f.margin();
  if (!m) {
    if (f.verdict == verdict::holds || f.verdict == verdict::thin_margin) return "judged without a margin";
    if (f.verdict == verdict::does_not_hold && f.happens.empty() && f.note.empty()) return "does not hold: why not?";
    return "";
  }
  if (f.verdict != decisions::judge(m->value, f.useful)) {
    return "says " + std::string{words(f.verdict)} + " of a margin of " + std::to_string(m->value.central);
  }
  for (const auto& n : f.numbers) {
    if (n.as == decisions::role::margin && f.verdict == verdict::holds && !(n.value.low > 0.0)) {
      return "holds, and a margin is not positive: " + std::string{n.id};
    }
  }
  return "";
}

/// A level of the course of a power cut, and what a restart finds after it, is good to 0.2 mm (`plumbing::power_cut`);
/// by half of that two courses may differ.
double good_to(std::string_view finding, std::string_view number) {
  return finding.starts_with("sump.") && (number == "left" || number == "lowest") ? 1e-4 : 0.0;
}

double scale_of(const amount& a) {
  return std::fmax(std::fabs(a.central), std::fmax(std::fabs(a.high - a.central), std::fabs(a.central - a.low)));
}

/// A key, and what happens to a number when it grows.
struct monotone_pair {
  const char* key;
  const char* finding;
  const char* number;
  int sign;  ///< 1: the number grows or stays, -1: it falls or stays
};

// Places: the first number of that id, unless after an "@".
constexpr monotone_pair monotone_pairs[] = {
    // water on the floor
    {"plumbing.return[1].below_edge", "sump.power_cut", "left", -1},
    {"plumbing.return[1].siphon_break", "sump.power_cut", "left", -1},
    {"plumbing.sump.running_level", "sump.power_cut", "left", -1},
    {"plumbing.sump.rim", "sump.power_cut", "left", 1},
    {"plumbing.sump.rim", "sump.power_cut", "spare", 1},
    {"plumbing.sump.chamber[3].area", "sump.power_cut", "left", 1},
    {"plumbing.overflow.surface", "sump.power_cut", "down", 1},
    {"plumbing.box.falls_by", "sump.power_cut", "down", 1},
    {"plumbing.box.area", "sump.power_cut", "down", 1},
    {"plumbing.overflow.width", "plumbing.overflow", "head", -1},
    {"plumbing.edge_to_rim", "plumbing.overflow", "left", 1},
    {"plumbing.reserve", "sump.outlet_depth", "most", -1},
    {"plumbing.sump.rim", "sump.running_level", "most", 1},
    {"room.top_off.reservoir", "sump.top_off_stuck", "left", -1},
    {"plumbing.pump_inlet.above_floor", "sump.restart", "left", -1},
    {"plumbing.sump.running_level", "sump.restart", "lowest", 1},
    {"plumbing.edge_to_rim", "plumbing.drains_blocked", "left", 1},
    {"plumbing.overflow.surface", "plumbing.drains_blocked", "over", -1},
    {"plumbing.sump.running_level", "plumbing.drains_blocked", "delivered", 1},
    {"room.top_off.reservoir", "plumbing.drains_blocked", "left", -1},
    {"plumbing.drain[1].bore", "plumbing.surge", "held_up", -1},
    // flow
    {"plumbing.pump.speed", "plumbing.flow", "total", 1},
    {"plumbing.lift", "plumbing.flow", "total", -1},
    {"plumbing.return[1].loss", "plumbing.flow", "total", -1},
    {"plumbing.return[1].length", "plumbing.flow", "total", -1},
    {"plumbing.return[1].bore", "plumbing.flow", "total", 1},
    {"plumbing.trunk.length", "plumbing.flow", "total", -1},
    {"plumbing.trunk.bore", "plumbing.flow", "total", 1},
    {"plumbing.drain[1].bore", "plumbing.drains", "carry", 1},
    {"plumbing.drain[1].drop", "plumbing.drains", "carry", 1},
    {"plumbing.drain[2].inlet_head", "plumbing.drains", "carry", 1},
    {"plumbing.drain[1].length", "plumbing.drains", "carry", -1},
    // what holds it, and what is in it
    {"vessel.panel[1].thickness", "vessel.panels", "stress_left", 1},
    {"vessel.panel[1].height", "vessel.panels", "push", 1},
    {"vessel.lid[1].thickness", "vessel.lids", "sag", -1},
    {"vessel.lid[1].span", "vessel.lids", "sag", 1},
    {"vessel.floor.tank_and_stand", "vessel.floor", "load", 1},
    {"vessel.floor.built_for", "vessel.floor", "left", 1},
    {"vessel.rock[1].dry_mass", "vessel.water", "net", -1},
    {"vessel.water_level", "vessel.water", "net", 1},
    {"vessel.sand[1].deep_end", "vessel.water", "net", -1},
    {"vessel.brace.depth", "vessel.brace", "sag", -1},
    {"vessel.view.nearest_rock", "vessel.view", "clearance", 1},
    // salt
    {"water.older_tank.hydrometer", "salt.target", "salinity", 1},
    {"water.trial_batch.reached", "salt.mix", "mix", -1},
    {"water.match_within", "salt.match", "left", 1},
    {"water.ph", "water.ammonia", "part", 1},
    {"water.ammonia_nitrogen", "water.ammonia", "free", 1},
    // room
    {"room.display.covered", "room.evaporation", "evaporation", -1},
    {"room.winter.outdoor_humidity", "room.humidity", "humidity", 1},
    {"room.moisture[1].rate", "room.humidity", "humidity", 1},
    {"room.appliance[1].power", "room.heater", "needed", -1},
    {"room.heating.heater", "room.heater_sticks", "settles", 1},
    {"room.heating.heater", "room.heater", "left", 1},
    {"room.heating.outage.lasts", "room.outage", "coldest", -1},
    {"room.heating.outage.lowest", "room.outage", "left", -1},
    {"room.top_off.reservoir", "room.reservoir", "lasts", 1},
    {"room.top_off.free_volume", "room.stuck", "free", 1},
    {"room.price_per_kwh", "room.running", "year_cost", 1},
    // animals
    {"life.food[1].amount", "life.load", "nitrogen", 1},
    {"life.food[1].protein", "life.load", "nitrogen", 1},
    {"life.surface[2].volume", "life.filter_later", "takes", 1},
    {"life.moved_rock.moved", "life.filter_today", "takes", 1},
    {"life.food[1].amount", "life.filter_later", "left", -1},
    {"life.ph", "life.free_ammonia", "part", 1},
    {"life.animals[1].count", "life.power_cut", "animals_use", 1},
    {"life.animals[1].each", "life.power_cut", "bare", -1},
    {"life.animals[2].count", "life.power_cut", "left", -1},
    {"life.power_cut.battery_air.kla", "life.power_cut", "aided", 1},
    {"life.circulation.treatment[1].flow", "life.circulation", "time", -1},
    {"life.arrivals.ammonia_nitrogen", "life.arrivals", "opened", 1},
    {"life.alkalinity.now", "life.alkalinity", "lasts", 1},
    {"life.room.run", "life.room", "crossing", 1},
};
static_assert(std::size(monotone_pairs) >= 40);

const decisions::number* of(const std::vector<decisions::finding>& all, const char* id) {
  for (const auto& f : all) {
    if (const auto* n = f.find(id)) return n;
  }
  return nullptr;
}

/// The number falls where it should grow, or the other way round; how it was then.
std::optional<std::string> broken(const plan::build& build, const monotone_pair& pair, double factor, int& compared) {
  double before = 0.0;
  try {
    before = plan::get_si(build, pair.key);
  } catch (const invalid_input&) {
    return std::nullopt;  // it has no such table
  }
  if (!(std::fabs(before) > 0.0)) return std::nullopt;
  const bool whole = std::string_view{pair.key}.ends_with(".count");
  const double step_up = whole ? std::ceil(factor * before) : factor * std::fabs(before);
  int up = 1;
  plan::build more = build;
  plan::set_si(more, pair.key, before + step_up);
  if (!plan::validate(more).empty()) {
    plan::set_si(more, pair.key, before - step_up);
    up = -1;
    if (!plan::validate(more).empty()) return std::nullopt;
  }
  const auto a = decisions::assess_one(build, pair.finding), b = decisions::assess_one(more, pair.finding);
  const auto* x = of(a, pair.number);
  const auto* y = of(b, pair.number);
  if (!x || !y || x->place != y->place) return std::nullopt;
  ++compared;
  const double step = up * pair.sign * (y->value.central - x->value.central);
  if (step >= -std::fmax(1e-5 * scale_of(x->value), good_to(pair.finding, pair.number)))
    return std::nullopt;  // what is followed in time is good to some 1e-6
  return std::string{pair.key} + " from " + std::to_string(before) + " by " + std::to_string(factor) + ": " +
         pair.finding + "." + pair.number + " from " + std::to_string(x->value.central) + " by " +
         std::to_string(pair.sign * step) + (x->place.empty() ? "" : " at " + x->place);
}

/// What counts whole things, or asks on which side of a day something lies: it steps, and rightly.
constexpr std::string_view steps_rightly[] = {
    "hold.days.finer",            // a test has a whole number of readings
    "life.start_up.ammonia_end",  // a water change falls before the last sample, or after it
    "life.start_up.nitrate",      // the same
    "life.acclimation.steps",     // whole steps
};

/// Numbers that jump when a key moves by a millionth of itself.
std::string jump_of(const plan::build& build, const std::string& path, const decisions::assessment& before) {
  plan::build moved = build;
  const double x = plan::get_si(build, path);
  if (x == 0.0) return "";
  plan::set_si(moved, path, x * (1.0 + 1e-6));
  if (!plan::validate(moved).empty()) return "";
  const auto after = decisions::assess(moved);
  if (after.findings.size() != before.findings.size()) return "another finding";
  for (std::size_t i = 0; i < after.findings.size(); ++i) {
    const auto& f = before.findings[i];
    const auto& g = after.findings[i];
    if (f.numbers.size() != g.numbers.size()) continue;  // "not within a week", "no answer": a number has no place
    for (std::size_t j = 0; j < f.numbers.size(); ++j) {
      const auto& a = f.numbers[j];
      const auto& b = g.numbers[j];
      if (a.id != b.id || a.place != b.place) continue;
      const std::string name = std::string{f.id} + "." + std::string{a.id};
      if (std::find(std::begin(steps_rightly), std::end(steps_rightly), name) != std::end(steps_rightly)) continue;
      double scale = std::fmax(scale_of(a.value), scale_of(b.value));
      for (const auto& n : f.numbers) {  // a small difference of large numbers moves with these
        if (n.value.quantity == a.value.quantity) scale = std::fmax(scale, 0.01 * scale_of(n.value));
      }
      for (const auto& [p, q] : {std::pair{a.value.low, b.value.low}, std::pair{a.value.central, b.value.central},
                                 std::pair{a.value.high, b.value.high}}) {
        if (std::fabs(p - q) > 1e-3 * scale) {
          return name + " " + a.place + " from " + std::to_string(p) + " to " + std::to_string(q);
        }
      }
    }
  }
  return "";
}

/// The keys of a plan that somebody can still choose, and that are given.
class chosen_keys final : public plan::walker {
 public:
  std::vector<std::string> all{};

 private:
  void number(const plan::key_info& key, plan::value_base& v) override {
    if (v.given() && !key.whole && key.set_by == plan::chosen) all.push_back(path(key.name));
  }
  void numbers(const plan::key_info&, plan::values_base&) override {}
  void one_of(const plan::key_info&, plan::word_base&, std::span<const std::string_view>) override {}
  void yes_or_no(const plan::key_info&, plan::flag&) override {}
  void text(const plan::key_info&, std::string&) override {}
  void rating(const plan::key_info&, plan::composite&) override {}
};

const evidence sound{"tankwright::decisions::assess", kind::property, "random plans"};

/// Counts what is wrong, and says the first of each kind.
class complaints {
 public:
  void add(const std::string& kind, const std::string& what) {
    if (++count_[kind] <= 3) MESSAGE(kind, ": ", what);
  }
  [[nodiscard]] std::size_t kinds() const noexcept { return count_.size(); }
  [[nodiscard]] std::string said() const {
    std::string all;
    for (const auto& [kind, n] : count_) all += kind + " (" + std::to_string(n) + ")\n";
    return all;
  }

 private:
  std::map<std::string, int> count_{};
};

}  // namespace

TEST_CASE("random plans: sound numbers, verdicts by the one rule, bounded work, nothing thrown") {
  MESSAGE("seed ", seed());
  plan_source source{shipped_plan("demo.toml"), seed()};
  complaints wrong;
  double slowest = 0.0;
  std::string slow;
  for (int i = 0; i < 2000; ++i) {
    const drawn_plan drawn = source.next();
    const std::string where = "plan " + std::to_string(i) + ": " + drawn.said;
    const std::clock_t begin = std::clock();
    try {
      const auto all = decisions::assess(drawn.build);
      for (const auto& f : all.findings) {
        if (const std::string fault = fault_of(f); !fault.empty()) {
          wrong.add(std::string{f.id}, fault + "; " + f.note + "; " + where);
        }
      }
    } catch (const std::exception& thrown) {
      wrong.add("thrown", std::string{thrown.what()} + "; " + where);
    }
    const double took = static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC;
    if (took > slowest) slowest = took, slow = where;
  }
  MESSAGE(source.refused(), " more were refused; the slowest took ", slowest, " s: ", slow);
  TW_HOLDS(sound, wrong.kinds() == 0);
  CHECK_MESSAGE(wrong.kinds() == 0, wrong.said());
  CHECK(slowest < 2.0);
}

TEST_CASE("random plans: what is monotone in the world is monotone here") {
  MESSAGE("seed ", seed(), ", ", std::size(monotone_pairs), " pairs");
  plan_source source{shipped_plan("demo.toml"), seed() + 1};
  complaints wrong;
  std::map<std::string, int> compared;
  for (int i = 0; i < 2000; ++i) {
    const drawn_plan drawn = source.next();
    for (int k = 0; k < 4; ++k) {
      const auto& pair = monotone_pairs[static_cast<std::size_t>(i * 4 + k) % std::size(monotone_pairs)];
      const double factor = std::pow(10.0, -4.0 + 3.5 * source.even());
      int& count = compared[std::string{pair.key} + " " + pair.finding + "." + pair.number];
      if (const auto how = broken(drawn.build, pair, factor, count)) {
        wrong.add(std::string{pair.key} + " " + pair.finding + "." + pair.number,
                  *how + "; plan " + std::to_string(i) + ": " + drawn.said);
      }
    }
  }
  for (const auto& one : compared) {
    CHECK_MESSAGE(one.second >= 20, one.first, " was compared ", one.second, " times");
  }
  TW_HOLDS(sound, wrong.kinds() == 0);
  CHECK_MESSAGE(wrong.kinds() == 0, wrong.said());
}

TEST_CASE("random plans: no number jumps when a chosen key moves by a millionth of itself") {
  MESSAGE("seed ", seed());
  plan_source source{shipped_plan("demo.toml"), seed() + 2};
  complaints wrong;
  for (int i = 0; i < 500; ++i) {
    const drawn_plan drawn = source.next();
    chosen_keys keys;
    plan::look_at(keys, drawn.build);
    const auto before = decisions::assess(drawn.build);
    for (int k = 0; k < 4; ++k) {
      const std::string& path =
          keys.all[static_cast<std::size_t>(source.even() * static_cast<double>(keys.all.size()))];
      if (const std::string jump = jump_of(drawn.build, path, before); !jump.empty()) {
        wrong.add(jump.substr(0, jump.find(' ')),
                  jump + " by " + path + "; plan " + std::to_string(i) + ": " + drawn.said);
      }
    }
  }
  TW_HOLDS(sound, wrong.kinds() == 0);
  CHECK_MESSAGE(wrong.kinds() == 0, wrong.said());
}
