// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/keys.hpp>
#include <tankwright/plan/walk.hpp>
#include <tankwright/text/written.hpp>

namespace tankwright::plan {

namespace detail {

class key_lister final : public walker {
 public:
  key_lister() noexcept : walker{true} {}
  key_list all{};

  void alternatives(std::initializer_list<std::string_view> names, bool needed) override {
    all.rules.push_back({path(), names, false, needed});
  }
  void together(std::initializer_list<std::string_view> names) override {
    all.rules.push_back({path(), names, true, false});
  }

 private:
  key_row& row(const key_info& key, key_kind kind) {
    return all.keys.emplace_back(key_row{path(key.name), path(), kind, key});
  }
  void number(const key_info& key, value_base& v) override {
    key_row& r = row(key, key_kind::number);
    if (v.has_default()) r.otherwise = text::write_exactly(v.default_si(), {}, key.quantity);
  }
  void numbers(const key_info& key, values_base&) override { row(key, key_kind::numbers); }
  void one_of(const key_info& key, word_base& w, std::span<const std::string_view> words) override {
    key_row& r = row(key, key_kind::word);
    r.words.assign(words.begin(), words.end());
    if (w.has_default()) r.otherwise = words[static_cast<std::size_t>(w.index())];
  }
  void yes_or_no(const key_info& key, flag& f) override {
    row(key, key_kind::flag).otherwise = f.default_value() ? "true" : "false";
  }
  void text(const key_info& key, std::string&) override { row(key, key_kind::text); }
  void rating(const key_info& key, composite& c) override { row(key, key_kind::rating).example = c.example(); }
  void enter(const key_info& key) override {
    std::string own = path();
    const bool list = own.ends_with("[]");
    const auto point = own.rfind('.');
    std::string above = point == std::string::npos ? std::string{} : own.substr(0, point);
    all.keys.push_back({std::move(own), std::move(above), list ? key_kind::tables : key_kind::table, key});
  }
};

}  // namespace detail

TANKWRIGHT_INLINE key_list all_keys() {
  detail::key_lister lister;
  build blank;
  describe(lister, blank);
  return std::move(lister.all);
}

}  // namespace tankwright::plan
