// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/exchange/json.hpp>
#include <tankwright/exchange/read.hpp>
#include <tankwright/exchange/toml.hpp>
#include <tankwright/plan/leaf_text.hpp>
#include <tankwright/plan/names.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/plan/validate.hpp>
#include <tankwright/text/written.hpp>

namespace tankwright::exchange {

namespace detail {

/// What was said wrongly: the path, the node, and the key it was probably meant for.
struct misread {
  std::string path;
  std::string reason;
  const node* at;
  std::string meant{};  ///< path of the key that the mistake hides, so that it is not called missing too
};

[[nodiscard]] inline std::string words_of(node::kind kind) {
  switch (kind) {
    case node::kind::table:
      return "a table";
    case node::kind::list:
      return "a list";
    case node::kind::text:
      return "a text";
    case node::kind::number:
      return "a number";
    case node::kind::flag:
      return "true or false";
    case node::kind::other:
      break;
  }
  return "something else";
}

/// Reads one table of the document into one struct of the plan.
class table_reader final : public plan::visitor {
 public:
  table_reader(const node& table, std::string path, std::vector<misread>& wrong)
      : table_{&table}, path_{std::move(path)}, wrong_{&wrong} {}

  /// Refuse the keys that nobody asked for.
  void finish() {
    for (const auto& [name, value] : table_->entries) {
      if (std::find(known_.begin(), known_.end(), name) != known_.end()) continue;
      refuse_unknown(name, value);
    }
  }
  void renamed(std::string_view old_name, std::string_view name) override { renamed_.emplace_back(old_name, name); }
  void replaced(std::string_view old_name, std::string_view by) override { replaced_.emplace_back(old_name, by); }

 private:
  void refuse_unknown(const std::string& name, const node& value) {
    for (const auto& [old_name, new_name] : renamed_) {
      if (name == old_name) {
        return wrong_->push_back({full(name), "is called " + new_name + " now", &value, full(new_name)});
      }
    }
    for (const auto& [old_name, by] : replaced_) {
      if (name == old_name) return wrong_->push_back({full(name), "is no key any more; " + by, &value});
    }
    const std::string nearest = plan::nearest_name(name, known_);
    std::string reason = "is not a key " + (path_.empty() ? std::string{"of a plan"} : "of " + path_);
    if (!nearest.empty())
      return wrong_->push_back({full(name), reason + "; did you mean " + nearest + "?", &value, full(nearest)});
    reason += "; known here: ";
    for (std::size_t i = 0; i < known_.size(); ++i) reason += (i ? ", " : "") + known_[i];
    wrong_->push_back({full(name), reason, &value});
  }
  [[nodiscard]] std::string full(std::string_view name) const {
    return path_.empty() ? std::string{name} : path_ + "." + std::string{name};
  }
  const node* find(const plan::key_info& key) {
    known_.emplace_back(key.name);
    return table_->find(key.name);
  }
  void wrong(const plan::key_info& key, const node& at, std::string reason) {
    wrong_->push_back({full(key.name), std::move(reason), &at});
  }
  /// Run `read`; what it cannot read is wrong at the node.
  template <class Read>
  void attempt(const std::string& path, const node& at, Read read) {
    try {
      read();
    } catch (const text_error& mistake) {
      std::string reason = mistake.what();
      const std::string& function = mistake.details().function;
      if (reason.starts_with(function + ": ")) reason.erase(0, function.size() + 2);
      wrong_->push_back({path, std::move(reason), &at});
    }
  }
  [[nodiscard]] static std::string example_of(const plan::key_info& key) {
    const std::string_view all = text::example_of(key.quantity);
    return "\"" + std::string{all.substr(0, all.find(" or "))} + "\"";
  }
  /// One quantity: text with a unit, or a number of what has none.
  void give(const plan::key_info& key, const std::string& path, const node& at, plan::value_base& v) {
    if (at.is == node::kind::text) {
      return attempt(path, at, [&] { plan::give_quantity(v, key.quantity, at.text); });
    }
    if (at.is != node::kind::number) {
      wrong_->push_back(
          {path, "must be a quantity in quotation marks, such as " + example_of(key) + ", not " + words_of(at.is),
           &at});
      return;
    }
    if (key.quantity == "number" || key.quantity == "practical_salinity") return v.give(at.number);
    attempt(path, at, [&] { plan::give_quantity(v, key.quantity, text::of(at.number, text::significant(17))); });
  }

  void number(const plan::key_info& key, plan::value_base& v) override {
    if (const node* at = find(key)) give(key, full(key.name), *at, v);
  }
  void numbers(const plan::key_info& key, plan::values_base& v) override {
    const node* at = find(key);
    if (!at) return;
    if (at->is != node::kind::list)
      return wrong(key, *at, "must be a list in square brackets, not " + words_of(at->is));
    for (std::size_t i = 0; i < at->items.size(); ++i) {
      give(key, full(key.name) + "[" + std::to_string(i + 1) + "]", at->items[i], v.items.emplace_back());
    }
  }
  void one_of(const plan::key_info& key, plan::word_base& w, std::span<const std::string_view> words) override {
    const node* at = find(key);
    if (!at) return;
    if (at->is != node::kind::text)
      return wrong(key, *at, "must be a word in quotation marks, not " + words_of(at->is));
    attempt(full(key.name), *at, [&] { plan::give_word({.key = key, .word = &w, .words = words}, at->text); });
  }
  void yes_or_no(const plan::key_info& key, plan::flag& f) override {
    const node* at = find(key);
    if (!at) return;
    if (at->is != node::kind::flag) return wrong(key, *at, "must be true or false, without quotation marks");
    f = at->flag;
  }
  void text(const plan::key_info& key, std::string& t) override {
    const node* at = find(key);
    if (!at) return;
    if (at->is != node::kind::text)
      return wrong(key, *at, "must be a text in quotation marks, not " + words_of(at->is));
    t = at->text;
  }
  void rating(const plan::key_info& key, plan::composite& c) override {
    const node* at = find(key);
    if (!at) return;
    if (at->is != node::kind::text) {
      return wrong(key, *at, "must be a text such as \"" + std::string{c.example()} + "\", not " + words_of(at->is));
    }
    attempt(full(key.name), *at, [&] { c.read(at->text); });
  }
  void table(const plan::key_info& key, plan::table_ref& t) override {
    const node* at = find(key);
    if (!at) return;
    if (at->is == node::kind::list && at->items.size() == 1 && at->items.front().is == node::kind::table) {
      return wrong(key, *at, "is one table; write [" + full(key.name) + "], in single brackets");
    }
    if (at->is != node::kind::table)
      return wrong(key, *at, "must be a table, [" + full(key.name) + "], not " + words_of(at->is));
    t.create();
    table_reader inside{*at, full(key.name), *wrong_};
    t.visit(inside);
    inside.finish();
  }
  void tables(const plan::key_info& key, plan::tables_ref& t) override {
    const node* at = find(key);
    if (!at) return;
    if (at->is == node::kind::table) {
      return wrong(key, *at, "is a list; write [[" + plain(key.name) + "]], once for each");
    }
    if (at->is != node::kind::list) {
      return wrong(key, *at, "must be written as [[" + plain(key.name) + "]], once for each, not " + words_of(at->is));
    }
    for (std::size_t i = 0; i < at->items.size(); ++i) {
      const node& item = at->items[i];
      const std::string path = full(key.name) + "[" + selector(*at, i) + "]";
      if (item.is != node::kind::table) {
        wrong_->push_back({path, "must be written as [[" + plain(key.name) + "]], once for each", &item});
        continue;
      }
      t.add();
      table_reader inside{item, path, *wrong_};
      t.visit(t.size() - 1, inside);
      inside.finish();
    }
  }
  /// The path as a header has it: without the labels of elements.
  [[nodiscard]] std::string plain(std::string_view name) const {
    std::string all;
    bool inside = false;
    for (const char c : full(name)) {
      if (c == '[') inside = true;
      if (!inside) all += c;
      if (c == ']') inside = false;
    }
    return all;
  }
  /// As `plan::selector_of`, from the document.
  [[nodiscard]] static std::string selector(const node& list, std::size_t at) {
    const auto label = [&](std::size_t i) -> std::string_view {
      const node* l = list.items[i].find("label");
      if (!l) l = list.items[i].find("name");
      return l && l->is == node::kind::text ? std::string_view{l->text} : std::string_view{};
    };
    const std::string_view own = label(at);
    bool usable = !own.empty() && own.find_first_not_of("0123456789") != std::string_view::npos &&
                  own.find_first_of("[]") == std::string_view::npos;
    for (std::size_t i = 0; usable && i < list.items.size(); ++i) usable = i == at || label(i) != own;
    return usable ? std::string{own} : std::to_string(at + 1);
  }

  const node* table_;
  std::string path_;
  std::vector<misread>* wrong_;
  std::vector<std::string> known_{};
  std::vector<std::pair<std::string, std::string>> renamed_{};
  std::vector<std::pair<std::string, std::string>> replaced_{};
};

/// Where a path stands in a document: the node, or the last one on the way that is there; and its pointer.
struct place {
  const node* at;
  std::string pointer;
};
[[nodiscard]] inline place place_of(const node& root, std::string_view path) {
  place here{&root, {}};
  if (path.empty()) return here;
  std::vector<plan::path_step> steps;
  try {
    steps = plan::steps_of(path);
  } catch (const error&) {
    return here;  // a key of the file that is no name of a plan
  }
  const auto escaped = [](std::string_view name) {
    std::string all;
    for (const char c : name) all += c == '~' ? "~0" : c == '/' ? "~1" : std::string(1, c);
    return all;
  };
  for (const plan::path_step& step : steps) {
    const node* next = here.at->find(step.name);
    if (!next) return here;
    here = {next, here.pointer + "/" + escaped(step.name)};
    if (step.selector.empty()) continue;
    std::size_t index = next->items.size();
    for (std::size_t i = 0; i < next->items.size() && index == next->items.size(); ++i) {
      for (const char* name : {"label", "name"}) {
        const node* label = next->items[i].find(name);
        if (label && label->text == step.selector) index = i;
      }
    }
    const bool digits = step.selector.find_first_not_of("0123456789") == std::string::npos && step.selector.size() < 7;
    if (index == next->items.size() && digits) index = std::stoul(step.selector) - 1;
    if (index >= next->items.size()) return here;
    here = {&next->items[index], here.pointer + "/" + std::to_string(index)};
  }
  return here;
}

/// Whether a mistake is only the shadow of one that was found while reading.
[[nodiscard]] inline bool is_shadow(const plan::mistake& m, const std::vector<misread>& wrong) {
  for (const misread& w : wrong) {
    for (const std::string& known : {w.path, w.meant}) {
      if (known.empty()) continue;
      if (known == m.path || known == m.clashes) return true;
      const bool inside = known.size() > m.path.size() && known.starts_with(m.path) &&
                          (m.path.empty() || known[m.path.size()] == '.' || known[m.path.size()] == '[');
      if (inside) return true;
    }
  }
  return false;
}

}  // namespace detail

TANKWRIGHT_INLINE reading read_plan(std::string_view text, notation in) {
  reading result;
  node root;
  try {
    root = in == notation::json ? document_from_json(text) : document_from_toml(text);
  } catch (const syntax_error& mistake) {
    result.mistakes.push_back({{{}, mistake.what(), {}}, mistake.line()});
    return result;
  }
  if (root.entries.empty()) {
    result.mistakes.push_back({{{}, "the plan is empty", {}}, 1});
    return result;
  }
  if (const node* form = root.find("format"); form && form->number > plan::newest_format) {
    result.mistakes.push_back({{"format",
                                "this plan is of form " + text::of(form->number) + "; this version reads forms up to " +
                                    text::of(plan::newest_format) + ". Take a newer version of the program",
                                {}},
                               form->line,
                               "/format"});
    return result;
  }
  std::vector<detail::misread> wrong;
  detail::table_reader reader{root, {}, wrong};
  describe(reader, result.build);
  reader.finish();
  for (const detail::misread& w : wrong) {
    located_mistake m{{w.path, w.reason, {}}, w.at->line};
    if (in == notation::json) m.pointer = detail::place_of(root, w.path).pointer;
    result.mistakes.push_back(std::move(m));
  }
  for (plan::mistake& found : plan::validate(result.build)) {
    if (detail::is_shadow(found, wrong)) continue;
    const detail::place here = detail::place_of(root, found.path);
    located_mistake m{std::move(found), here.at->line};
    if (in == notation::json) m.pointer = here.pointer;
    if (!m.what.clashes.empty()) m.clashes_line = detail::place_of(root, m.what.clashes).at->line;
    result.mistakes.push_back(std::move(m));
  }
  std::stable_sort(result.mistakes.begin(), result.mistakes.end(),
                   [](const auto& a, const auto& b) { return a.line < b.line; });
  return result;
}

namespace detail {

/// A text that people read: of a very long one its beginning and its end, cut between characters.
[[nodiscard]] inline std::string clipped(const std::string& text) {
  constexpr std::size_t most = 1000, first = 600, last = 300;
  if (text.size() <= most) return text;
  const auto inside = [&](std::size_t at) { return (static_cast<unsigned char>(text[at]) & 0xc0) == 0x80; };
  std::size_t until = first, from = text.size() - last;
  while (until > 0 && inside(until)) --until;
  while (from < text.size() && inside(from)) ++from;
  return text.substr(0, until) + " ... " + text.substr(from);
}

}  // namespace detail

TANKWRIGHT_INLINE std::string line_of(const located_mistake& m, std::string_view name) {
  std::string line{name};
  line += ":";
  if (m.line > 0) line += std::to_string(m.line) + ":";
  line += " ";
  if (!m.pointer.empty()) {
    line += detail::clipped(m.pointer) + ": ";
  } else if (!m.what.path.empty()) {
    line += detail::clipped(m.what.path) + ": ";
  }
  line += detail::clipped(m.what.reason);
  if (!m.what.clashes.empty()) {
    line += " (" + detail::clipped(m.what.clashes);
    if (m.clashes_line > 0) line += ", line " + std::to_string(m.clashes_line);
    line += ")";
  }
  std::string shown;
  constexpr const char* digits = "0123456789abcdef";
  for (const char c : line) {
    const auto byte = static_cast<unsigned char>(c);
    if (byte < 0x20 || byte == 0x7f) {
      shown += "\\x";
      shown += digits[byte / 16];
      shown += digits[byte % 16];
    } else {
      shown += c;
    }
  }
  return shown;
}

}  // namespace tankwright::exchange
