// SPDX-License-Identifier: BSL-1.0
/// @file
/// Every key that a plan gives, as text. Machinery of `would_hold.hpp`.
#pragma once

#include <string>
#include <tankwright/plan/build.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/plan/walk.hpp>
#include <utility>
#include <vector>

namespace tankwright::decisions::detail {

/// Writes down every key that was given, in the order of the descriptions.
class given_keys final : public plan::walker {
 public:
  std::vector<std::pair<std::string, std::string>> all{};

 private:
  void put(const plan::leaf& here) {
    if (std::string text = plan::text_at(here); !text.empty()) all.emplace_back(path(here.key.name), std::move(text));
  }
  void number(const plan::key_info& key, plan::value_base& v) override { put({.key = key, .number = &v}); }
  void numbers(const plan::key_info& key, plan::values_base& v) override { put({.key = key, .numbers = &v}); }
  void one_of(const plan::key_info& key, plan::word_base& w, std::span<const std::string_view> words) override {
    put({.key = key, .word = &w, .words = words});
  }
  void yes_or_no(const plan::key_info& key, plan::flag& f) override { put({.key = key, .yes = &f}); }
  void text(const plan::key_info& key, std::string& t) override { put({.key = key, .text = &t}); }
  void rating(const plan::key_info& key, plan::composite& c) override { put({.key = key, .rating = &c}); }
};

[[nodiscard]] inline std::vector<std::pair<std::string, std::string>> given_in(const plan::build& build) {
  given_keys keys;
  plan::look_at(keys, build);
  return std::move(keys.all);
}

}  // namespace tankwright::decisions::detail
