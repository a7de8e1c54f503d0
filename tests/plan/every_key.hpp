// SPDX-License-Identifier: BSL-1.0
/// @file
/// Walks over every key that the descriptions know: paths that can be set, plans drawn at random, and what a plan holds
/// as texts.
#pragma once

#include <cmath>
#include <random>
#include <string>
#include <tankwright/plan/keys.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/plan/walk.hpp>
#include <tankwright/text/quantity.hpp>
#include <utility>
#include <vector>

namespace tankwright::testing {

/// "plumbing.return[].below_edge" as a path that can be set in an empty plan: "plumbing.return[1].below_edge".
[[nodiscard]] inline std::string first_of_each(std::string path) {
  for (auto at = path.find("[]"); at != std::string::npos; at = path.find("[]", at)) path.insert(at + 1, "1");
  return path;
}

/// What a plan holds: (path, text) of every key that was given, in order.
class key_text_walker final : public plan::walker {
 public:
  std::vector<std::pair<std::string, std::string>> all{};

 private:
  void add(const plan::key_info& key, const plan::leaf& here) {
    if (std::string text = plan::text_at(here); !text.empty()) all.emplace_back(path(key.name), std::move(text));
  }
  void number(const plan::key_info& key, plan::value_base& v) override { add(key, {.key = key, .number = &v}); }
  void numbers(const plan::key_info& key, plan::values_base& v) override { add(key, {.key = key, .numbers = &v}); }
  void one_of(const plan::key_info& key, plan::word_base& w, std::span<const std::string_view> words) override {
    add(key, {.key = key, .word = &w, .words = words});
  }
  void yes_or_no(const plan::key_info& key, plan::flag& f) override { add(key, {.key = key, .yes = &f}); }
  void text(const plan::key_info& key, std::string& t) override { add(key, {.key = key, .text = &t}); }
  void rating(const plan::key_info& key, plan::composite& c) override { add(key, {.key = key, .rating = &c}); }
};

[[nodiscard]] inline std::vector<std::pair<std::string, std::string>> texts_of(const plan::build& build) {
  key_text_walker walk;
  plan::look_at(walk, build);
  return std::move(walk.all);
}

/// A number of a plan that was given.
struct given_number {
  std::string path;
  double si;
  double half_width;
  friend bool operator==(const given_number&, const given_number&) = default;
};

/// Every number that was given, in order.
class number_walker final : public plan::walker {
 public:
  std::vector<given_number> all{};

 private:
  void add(const plan::key_info& key, const plan::value_base& v) {
    if (v.given()) all.push_back({path(key.name), v.si(), v.doubt().given ? v.doubt().half_width : -1.0});
  }
  void number(const plan::key_info& key, plan::value_base& v) override { add(key, v); }
  void numbers(const plan::key_info& key, plan::values_base& v) override {
    for (const auto& item : v.items) add(key, item);
  }
  void one_of(const plan::key_info&, plan::word_base&, std::span<const std::string_view>) override {}
  void yes_or_no(const plan::key_info&, plan::flag&) override {}
  void text(const plan::key_info&, std::string&) override {}
  void rating(const plan::key_info&, plan::composite&) override {}
};

[[nodiscard]] inline std::vector<given_number> numbers_of(const plan::build& build) {
  number_walker walk;
  plan::look_at(walk, build);
  return std::move(walk.all);
}

/// Fills a plan with what the descriptions allow, at random; each key by itself, so that keys may contradict each other.
class random_filler final : public plan::visitor {
 public:
  explicit random_filler(std::uint64_t seed, double share = 0.6) : engine_{seed}, share_{share} {}

 private:
  [[nodiscard]] double uniform() { return std::uniform_real_distribution<double>{0.0, 1.0}(engine_); }
  [[nodiscard]] bool chance() { return uniform() < share_; }
  [[nodiscard]] double within(const plan::key_info& key) {
    double x = key.low > 0.0 && key.high / key.low > 100.0
                   ? std::exp(std::log(key.low) + uniform() * (std::log(key.high) - std::log(key.low)))
                   : key.low + uniform() * (key.high - key.low);
    x = std::fmin(key.high, std::fmax(key.low, x));
    return key.whole ? std::floor(x) : x;
  }
  /// Any double between the limits, or a number as people write it: few digits, in a unit of one of the systems, with a
  /// doubt or between two numbers. A written number may be refused as text; then any double is taken.
  void draw(const plan::key_info& key, plan::value_base& v) {
    const double si = within(key), drawn = uniform();
    const bool doubt = uniform() < 0.2;
    if (drawn > 0.4) {
      const amount shown{key.quantity, si, si, si};
      const auto system = uniform() < 0.5 ? text::unit_system::si : text::unit_system::us;
      const auto unit = text::everyday_unit(shown, system);
      const text::digits digits = text::significant(1 + static_cast<int>(5.0 * uniform()));
      std::string written = text::in(shown, unit, digits);
      const double form = uniform();
      if (form < 0.15) written += " +/- " + text::of(10.0 * uniform(), text::significant(2)) + " %";
      if (form > 0.85 && si > 0.0) {  // "30 mm .. 40 mm"
        const double above = si * (1.0 + 0.1 * uniform());
        written += " .. " + text::in(amount{key.quantity, above, above, above}, unit, text::significant(9));
      }
      try {
        plan::give_quantity(v, key.quantity, written);
        if (v.si() >= key.low && v.si() <= key.high && !key.whole) return;  // rounding may leave the limits
      } catch (const text_error&) {
      }
    }
    v.give(si, {}, {doubt ? 0.01 * std::fabs(key.high - key.low) * uniform() : 0.0, doubt});
  }
  void number(const plan::key_info& key, plan::value_base& v) override {
    if (chance()) draw(key, v);
  }
  void numbers(const plan::key_info& key, plan::values_base& v) override {
    for (int left = static_cast<int>(4.0 * uniform()); left > 0; --left) draw(key, v.items.emplace_back());
  }
  void one_of(const plan::key_info&, plan::word_base& w, std::span<const std::string_view> words) override {
    if (chance()) w.give(static_cast<int>(uniform() * static_cast<double>(words.size())));
  }
  void yes_or_no(const plan::key_info&, plan::flag& f) override {
    if (chance()) f = uniform() < 0.5;
  }
  void text(const plan::key_info&, std::string& t) override {
    static constexpr std::string_view some[] = {"left", "right", "a.b", "2", "x[1]", " spaced ", "right", "Größe", "#"};
    if (chance()) t = some[static_cast<std::size_t>(uniform() * std::size(some))];
  }
  void rating(const plan::key_info&, plan::composite& c) override {
    if (chance()) c.read(c.example());
  }
  void table(const plan::key_info&, plan::table_ref& t) override {
    if (!chance()) return;
    t.create();
    t.visit(*this);
  }
  void tables(const plan::key_info&, plan::tables_ref& t) override {
    for (int left = static_cast<int>(4.0 * uniform()); left > 0; --left) {
      t.add();
      t.visit(t.size() - 1, *this);
    }
  }
  std::mt19937_64 engine_;
  double share_;
};

[[nodiscard]] inline plan::build random_plan(std::uint64_t seed, double share = 0.6) {
  plan::build build;
  random_filler fill{seed, share};
  describe(fill, build);
  return build;
}

}  // namespace tankwright::testing
