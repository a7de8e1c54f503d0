// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the builder can still set: one key, or the same key of every element of a list. Machinery of `would_hold.hpp`.
#pragma once

#include <algorithm>
#include <cmath>
#include <string>
#include <tankwright/decisions/cure_words.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/plan/walk.hpp>
#include <vector>

namespace tankwright::decisions::detail {

/// Something that the builder can set: one key, or the same key of every element of a list.
struct handle {
  std::string path;
  plan::key_info key;
  std::vector<plan::value_base*> numbers;
  std::vector<double> was{};  ///< as the plan has them

  void set(double si) const {
    for (plan::value_base* v : numbers) v->move_to(si);
  }
  [[nodiscard]] bool known() const noexcept { return numbers.front()->known(); }
  [[nodiscard]] double now() const noexcept { return numbers.front()->si(); }
  /// What it is, as text; of a list that differs, the values in turn.
  [[nodiscard]] std::string text() const {
    std::string all;
    for (const plan::value_base* v : numbers) {
      plan::value_base shown = *v;
      if (v->known() && !v->given()) shown.move_to(v->si());
      const std::string one = plan::quantity_text(shown, key.quantity);
      if (all != one) all += (all.empty() ? "" : ", ") + one;
    }
    return all;
  }
  /// How much of a change a value is, as a part of what can be chosen. Something new is as much as all of it.
  [[nodiscard]] double change_to(double x) const noexcept {
    if (was.empty()) return 1.0;
    const double span = key.sizes.empty() ? key.choose_high - key.choose_low : std::fmax(std::fabs(was.front()), 1e-12);
    double sum = 0.0;
    for (const double before : was) sum += std::fabs(x - before) / span;
    return sum;
  }
  /// How finely it can be set.
  [[nodiscard]] double step() const noexcept {
    if (key.step > 0.0) return key.step;
    return std::pow(10.0, std::floor(std::log10((key.choose_high - key.choose_low) / 100.0)));
  }
  /// The values that a search tries: what is sold, or a grid over what can be chosen.
  [[nodiscard]] std::vector<double> candidates(std::size_t grid) const {
    if (!key.sizes.empty()) return {key.sizes.begin(), key.sizes.end()};
    std::vector<double> all;
    const double low = key.choose_low, high = key.choose_high;
    const bool by_factors = low > 0.0 && high > 50.0 * low;
    for (std::size_t i = 0; i <= grid; ++i) {
      const double part = static_cast<double>(i) / static_cast<double>(grid);
      double x = by_factors ? low * std::pow(high / low, part) : low + part * (high - low);
      if (was.empty() && key.step > 0.0) {  // something new comes on a step at once
        x = std::clamp(std::round(x / key.step) * key.step, low, high);
        if (!all.empty() && x <= all.back()) continue;
      }
      all.push_back(x);
    }
    return all;
  }
};

/// Finds what can be chosen, in the order of the plan; then the same keys over their lists.
class handle_finder final : public plan::walker {
 public:
  std::vector<handle> all{};

  void add_lists() {
    std::vector<handle> lists;
    for (const handle& one : all) {
      const std::string pattern = pattern_of(one.path);
      if (pattern == one.path) continue;
      auto found = std::find_if(lists.begin(), lists.end(), [&](const handle& l) { return l.path == pattern; });
      if (found == lists.end()) found = lists.insert(lists.end(), {pattern, one.key, {}, {}});
      found->numbers.push_back(one.numbers.front());
      if (!one.was.empty()) found->was.push_back(one.was.front());
    }
    for (handle& l : lists) {
      if (l.numbers.size() > 1) all.push_back(std::move(l));
    }
  }

 private:
  void number(const plan::key_info& key, plan::value_base& v) override {
    if (key.set_by == plan::set_by::chosen && key.searched)
      all.push_back({path(key.name), key, {&v}, v.known() ? std::vector<double>{v.si()} : std::vector<double>{}});
  }
  void numbers(const plan::key_info&, plan::values_base&) override {}
  void one_of(const plan::key_info&, plan::word_base&, std::span<const std::string_view>) override {}
  void yes_or_no(const plan::key_info&, plan::flag&) override {}
  void text(const plan::key_info&, std::string&) override {}
  void rating(const plan::key_info&, plan::composite&) override {}
};

}  // namespace tankwright::decisions::detail
