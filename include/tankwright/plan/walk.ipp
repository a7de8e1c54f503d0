// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/walk.hpp>

namespace tankwright::plan {

namespace detail {

/// Picks the text key "label" or "name" out of one table, and looks at nothing else.
class label_picker final : public visitor {
 public:
  std::string label{};

 private:
  void number(const key_info&, value_base&) override {}
  void numbers(const key_info&, values_base&) override {}
  void one_of(const key_info&, word_base&, std::span<const std::string_view>) override {}
  void yes_or_no(const key_info&, flag&) override {}
  void text(const key_info& key, std::string& t) override {
    if (label.empty() && (key.name == "label" || key.name == "name")) label = t;
  }
  void rating(const key_info&, composite&) override {}
  void table(const key_info&, table_ref&) override {}
  void tables(const key_info&, tables_ref&) override {}
};

}  // namespace detail

TANKWRIGHT_INLINE std::string label_of(tables_ref& list, std::size_t at) {
  detail::label_picker pick;
  list.visit(at, pick);
  return pick.label;
}

TANKWRIGHT_INLINE std::string selector_of(tables_ref& list, std::size_t at) {
  const std::string label = label_of(list, at);
  bool usable = !label.empty() && label.find_first_not_of("0123456789") != std::string::npos &&
                label.find_first_of("[]") == std::string::npos;
  for (std::size_t i = 0; usable && i < list.size(); ++i) {
    if (i != at && label_of(list, i) == label) usable = false;
  }
  return usable ? label : std::to_string(at + 1);
}

TANKWRIGHT_INLINE std::string walker::path() const {
  std::string all;
  for (const frame& f : frames_) {
    if (!all.empty()) all += '.';
    all += f.name;
    if (f.list && !blank_) all += "[" + selector_of(*f.list, f.at) + "]";
    if (f.list && blank_) all += "[]";
  }
  return all;
}

TANKWRIGHT_INLINE std::string walker::path(std::string_view name) const {
  std::string all = path();
  if (!all.empty()) all += '.';
  all += name;
  return all;
}

TANKWRIGHT_INLINE void walker::table(const key_info& key, table_ref& t) {
  if (!blank_ && !t.present()) return missing(key);
  frames_.push_back({key.name});
  enter(key);
  blank_ ? t.visit_blank(*this) : t.visit(*this);
  leave(key);
  frames_.pop_back();
}

TANKWRIGHT_INLINE void walker::tables(const key_info& key, tables_ref& t) {
  const std::size_t size = blank_ ? 1 : t.size();
  list(key, size);
  for (std::size_t i = 0; i < size; ++i) {
    frames_.push_back({key.name, &t, i});
    enter(key);
    blank_ ? t.visit_blank(*this) : t.visit(i, *this);
    leave(key);
    frames_.pop_back();
  }
}

}  // namespace tankwright::plan
