// SPDX-License-Identifier: BSL-1.0
/// @file
/// Plans drawn at random around one that is sound: each given number moved a little, within what it can be chosen from,
/// or to anywhere within its limits; words and flags turned, tables left out. Only what `validate` accepts counts.
#pragma once

#include <algorithm>
#include <cmath>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <tankwright/exchange/read.hpp>
#include <tankwright/plan/keys.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/plan/validate.hpp>
#include <tankwright/plan/walk.hpp>
#include <vector>

namespace tankwright::testing {

/// A plan that ships, by the name of its file.
[[nodiscard]] inline plan::build shipped_plan(const char* name) {
  std::ifstream in{std::string{TANKWRIGHT_SOURCE_DIR} + "/examples/commission/" + name, std::ios::binary};
  const std::string text{std::istreambuf_iterator<char>{in}, {}};
  return exchange::read_plan(text, exchange::notation::toml).build;
}

/// Moves what a plan says. With `share` every given number is moved.
class plan_shaker final : public plan::walker {
 public:
  plan_shaker(std::mt19937_64& engine, double share, double wild) : engine_{&engine}, share_{share}, wild_{wild} {}
  std::string said{};  ///< what was moved

 private:
  [[nodiscard]] double even() { return std::uniform_real_distribution<double>{0.0, 1.0}(*engine_); }
  [[nodiscard]] double bell() { return std::normal_distribution<double>{}(*engine_); }

  [[nodiscard]] double moved(const plan::key_info& key, double x) {
    const double how = even();
    if (how < wild_) {  // anywhere
      const bool decades = key.low > 0.0 && key.high / key.low > 100.0;
      x = decades ? key.low * std::pow(key.high / key.low, even()) : key.low + even() * (key.high - key.low);
    } else if (!key.sizes.empty() && how < 0.6) {
      x = key.sizes[static_cast<std::size_t>(even() * static_cast<double>(key.sizes.size()))];
    } else if (key.searched && key.choose_high > key.choose_low && how < 0.6) {
      x = key.choose_low + even() * (key.choose_high - key.choose_low);
    } else if (key.quantity == "temperature") {
      x += 4.0 * bell();
    } else if (key.quantity == "practical_salinity") {
      x += 2.0 * bell();
    } else if (x > 0.0) {
      x *= std::exp(0.25 * bell());
    } else {
      x += 0.02 * bell();
    }
    x = std::clamp(x, key.low, key.high);
    return key.whole ? std::round(x) : x;
  }
  void number(const plan::key_info& key, plan::value_base& v) override {
    if (!v.given() || even() >= share_) return;
    v.move_to(moved(key, v.si()));
    said += path(key.name) + " = " + std::to_string(v.si()) + "; ";
  }
  void numbers(const plan::key_info& key, plan::values_base& v) override {
    if (even() >= share_) return;
    const double factor = std::exp(0.25 * bell());
    for (auto& item : v.items) item.move_to(std::clamp(item.si() * factor, key.low, key.high));
    if (v.size() > 0) said += path(key.name) + " times " + std::to_string(factor) + "; ";
  }
  void one_of(const plan::key_info& key, plan::word_base& w, std::span<const std::string_view> words) override {
    if (!w.given() || even() >= share_) return;
    w.give(static_cast<int>(even() * static_cast<double>(words.size())));
    said += path(key.name) + " = " + std::string{words[static_cast<std::size_t>(w.index())]} + "; ";
  }
  void yes_or_no(const plan::key_info& key, plan::flag& f) override {
    if (even() >= share_) return;
    f = !f;
    said += path(key.name) + " turned; ";
  }
  void text(const plan::key_info&, std::string&) override {}
  void rating(const plan::key_info&, plan::composite&) override {}

  std::mt19937_64* engine_;
  double share_, wild_;
};

/// A sound plan drawn at random, and what was done to the one it came from.
struct drawn_plan {
  plan::build build;
  std::string said{};
};

/// Draws plans around one.
class plan_source {
 public:
  plan_source(plan::build around, std::uint64_t seed) : around_{std::move(around)}, engine_{seed} {
    for (const auto& row : plan::all_keys().keys) {
      const bool table = row.kind == plan::key_kind::table, list = row.kind == plan::key_kind::tables;
      const bool nested = row.path.find("[]") != std::string::npos;
      if ((table || list) && !row.about.needed && !nested) optional_.push_back(row.path + (list ? "[1]" : ""));
    }
  }

  /// The next that `validate` accepts; the more often one is refused, the less is moved.
  [[nodiscard]] drawn_plan next() {
    for (int attempt = 0;; ++attempt) {
      drawn_plan drawn{around_};
      const double share = (0.02 + 0.2 * even()) / (1.0 + 0.3 * attempt);
      plan_shaker shake{engine_, share, even() < 0.3 ? 0.15 : 0.0};
      describe(shake, drawn.build);
      drawn.said = std::move(shake.said);
      for (const std::string& path : optional_) {
        if (even() >= 0.02) continue;
        try {
          plan::clear(drawn.build, path);
          drawn.said += "no " + path + "; ";
        } catch (const invalid_input&) {  // it has none
        }
      }
      if (plan::validate(drawn.build).empty()) return drawn;
      ++refused_;
    }
  }
  [[nodiscard]] double even() { return std::uniform_real_distribution<double>{0.0, 1.0}(engine_); }
  [[nodiscard]] int refused() const noexcept { return refused_; }

 private:
  plan::build around_;
  std::mt19937_64 engine_;
  std::vector<std::string> optional_{};
  int refused_ = 0;
};

}  // namespace tankwright::testing
